package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// An installer, a surveying apprentice and a municipal maintenance crew, in Dutch.
var dossiersDutch = []typed.Case{

	{File: "dossiers/beheer/Botenhuis De Waterlinie.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Begane grond")
		p.Put("A1", `
Ruimte|Aantal|Aftakking|Groep|Volumeregelaar|Opmerking
Botenloods 1|4|10 W|1
Botenloods 2|4|10 W|1
Werkplaats|2|6 W|1
Kleedkamer heren|2|3 W|2
Kleedkamer dames|2|3 W|2
Ergometerzaal|4|6 W|2|naast de deur, 35 W
Hal|2|3 W|2
Steiger|2|15 W|3||hoorns
`)
		p.Bold("A1:F1")
		v := p.Sheet("Verdieping")
		v.Put("A1", `
Ruimte|Aantal|Aftakking|Groep|Volumeregelaar|Opmerking
Bestuurskamer|2|3 W|4|naast de deur, 10 W
Vergaderzaal|4|3 W|4|naast de deur, 20 W
Gang|2|1,5 W|4
Balkon|2|10 W|4
Zolder|1|6 W|4||vervallen, luidspreker is verwijderd
`)
		v.Bold("A1:F1")
		k := p.Sheet("Versterkers en kabels")
		k.Put("A1", `
Botenhuis De Waterlinie - omroep, werk 88.021

Groep|Versterker|Uitgang|Vermogen|Kabel|Lengte
1|V1|1|120 W|2 x 2,5 mm²|60 m
2|V1|2|60 W|2 x 1,5 mm²|45 m
3|V2|1|60 W|2 x 2,5 mm²|95 m
4|V2|2|60 W|2 x 1,5 mm²|55 m

Alle uitgangen 100 V.
`)
		k.Bold("A1", "A3:F3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("88.021", "Botenhuis De Waterlinie", "three sheets: floors, and the amplifier and cable of each group on the last, as are job and voltage; controls without a name in three rooms")
		t.Speakers("sheet=Begane grond; tap_v=100; line_v=100", `rows|room|count|tap_w|amplifier|channel|note
2|Botenloods 1|4|10|V1|1|
3|Botenloods 2|4|10|V1|1|
4|Werkplaats|2|6|V1|1|
5|Kleedkamer heren|2|3|V1|2|
6|Kleedkamer dames|2|3|V1|2|
7|Ergometerzaal|4|6|V1|2|unnamed
8|Hal|2|3|V1|2|
9|Steiger|2|15|V2|1|`)
		t.Speakers("sheet=Verdieping; tap_v=100; line_v=100; amplifier=V2; channel=2", `rows|room|count|tap_w|note
2|Bestuurskamer|2|3|unnamed
3|Vergaderzaal|4|3|unnamed
4|Gang|2|1.5|
5|Balkon|2|10|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|120|92
V1|2|60|42
V2|1|60|30
V2|2|60|41`)
		t.Amplifiers("", `amplifier|load_w
V1|134
V2|71`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Ergometerzaal|35|24
|Bestuurskamer|10|6
|Vergaderzaal|20|12`)
		t.Lines("note=one length a group", `line|length_m|area_mm2
1|60|2.5
2|45|1.5
3|95|2.5
4|55|1.5`)
		t.Left("Verdieping", `6|removed|taken down`)
	}},

	{File: "dossiers/opname/Spoorwegmuseum uitgangen.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Spoorwegmuseum De Oude Wissel - opname omroep;;;;;
Versterker in de meterkast met 4 uitgangen van elk 60 W, 100 V;;;;;
;;;;;
Ruimte;Uitgang 1;Uitgang 2;Uitgang 3;Uitgang 4;Bijzonderheden
Entree;4 x 3 W;;;;
Kassa;1 x 1,5 W;;;;regelaar R1 (5 W)
Locloods noord;;4 x 6 W;;;
Locloods zuid;;4 x 6 W;;;
Werkplaats;;;2 x 6 W;;
Perron;;;3 x 10 W;;
Filmzaal;;;;4 x 3 W;regelaar R2 (20 W)
Leslokaal;;;;2 x 3 W;regelaar R3 (10 W)
Gang;2 x 1,5 W;;;2 x 1,5 W;
Seinhuis;;;1 x 6 W;;is weggehaald
Totaal;16,5 W;48 W;42 W;21 W;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Spoorwegmuseum De Oude Wissel", "matrix of rooms against the outputs of one amplifier without a name; count and tap in the cell; one row taken away")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|channel|control
5|Entree|4|3|1|
6|Kassa|1|1.5|1|R1
7|Locloods noord|4|6|2|
8|Locloods zuid|4|6|2|
9|Werkplaats|2|6|3|
10|Perron|3|10|3|
11|Filmzaal|4|3|4|R2
12|Leslokaal|2|3|4|R3
13|Gang|2|1.5|1|
13|Gang|2|1.5|4|`)
		t.Channels("line_v=100", `channel|rated_w|load_w
1|60|16.5
2|60|48
3|60|42
4|60|21`)
		t.Amplifiers("", `amplifier|load_w
|127.5`)
		t.Controls("", `control|rated_w|load_w
R1|5|1.5
R2|20|12
R3|10|6`)
		t.Left("", `14|removed|taken away
15|total|sums`)
	}},

	{File: "dossiers/onderhoud/Gemeentedepot.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Lijst")
		p.Put("A1", `
Gemeentedepot Kievitsveld - luidsprekers, 100 V
Nr.|Gebouw|Plaats|W per stuk|Lijn|Opm.
LS01 t/m LS04|Garage|wand west|10|1
LS05 t/m LS08|Garage|wand oost|10|1
LS09|Garage|wasplaats|15|1
LS10, LS11|Magazijn|stellingen|6|2
LS12|Magazijn|balie|3|2
LS13 t/m LS16|Kantoor|gang|1,5|3
LS17, LS18|Kantoor|overlegruimte|3|3
LS19|Kantoor|receptie|1,5|3
LS20, LS21|Terrein|lichtmast 2|30|4
LS22|Terrein|lichtmast 5|30|4|nog te plaatsen, mast komt in het voorjaar
`)
		p.Bold("A1", "A2:F2")
		k := p.Sheet("Kast")
		k.Put("A1", `
Plaats|Apparaat|Lijn
1|Versterker VA (120 W)|1
2|Versterker VB (60 W)|2
3|Versterker VC (60 W)|3
4|Versterker VD (120 W)|4

Regelaars buiten de kast:
RA (20 W) overlegruimte
RB (5 W) receptie
`)
		k.Bold("A1:C1")
		m := p.Sheet("Meting")
		m.Put("A1", `
Lijn|Impedantie Ω|Isolatie|Akkoord
1|104|goed|ja
2|668|goed|ja
3|742|goed|ja
4|165|goed|ja
`)
		m.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Gemeentedepot Kievitsveld", "ranges of numbers stand for the count; rating in brackets behind the amplifier's name; controls in two sentences; a sheet of measurements; one loudspeaker of the future")
		t.Speakers("sheet=Lijst; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|amplifier|channel|control
3|Garage|wand west|4|10|VA|1|
4|Garage|wand oost|4|10|VA|1|
5|Garage|wasplaats|1|15|VA|1|
6|Magazijn|stellingen|2|6|VB|2|
7|Magazijn|balie|1|3|VB|2|
8|Kantoor|gang|4|1.5|VC|3|
9|Kantoor|overlegruimte|2|3|VC|3|RA
10|Kantoor|receptie|1|1.5|VC|3|RB
11|Terrein|lichtmast 2|2|30|VD|4|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
VA|1|120|95
VB|2|60|15
VC|3|60|13.5
VD|4|120|60`)
		t.Amplifiers("", `amplifier|rated_w|load_w
VA|120|95
VB|60|15
VC|60|13.5
VD|120|60`)
		t.Controls("", `control|rated_w|load_w
RA|20|6
RB|5|1.5`)
		t.Left("Lijst", `12|future|still to be fitted`)
		t.Left("Meting", `2|measurement|test of a line
3|measurement|test of a line
4|measurement|test of a line
5|measurement|test of a line`)
	}},
}
