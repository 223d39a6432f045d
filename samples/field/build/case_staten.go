package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// The Dutch files: an installer, a service man, a Flemish bill of quantities and depot, a museum's rack, and a sheet of hours.
var staten = []typed.Case{
	{File: "werken/20310 Sporthal De Meerkoet.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Luidsprekers")
		p.Put("A1", `
Werk 20310|Sporthal De Meerkoet, omroep 100V

Nr|Zone|Ruimte|Type|Stand W|Versterker|Regelaar
LS01|Zaal|Zaaldeel 1|hoorn|15|V1
LS02|Zaal|Zaaldeel 1|hoorn|15|V1
LS03|Zaal|Zaaldeel 1|hoorn|15|V1
LS04|Zaal|Zaaldeel 1|hoorn|15|V1
LS05|Zaal|Zaaldeel 2|hoorn|15|V1
LS06|Zaal|Zaaldeel 2|hoorn|15|V1
LS07|Zaal|Zaaldeel 2|hoorn|15|V1
LS08|Zaal|Zaaldeel 2|hoorn|15|V1
LS09|Zaal|Zaaldeel 3|hoorn|15|V1
LS10|Zaal|Zaaldeel 3|hoorn|15|V1
LS11|Zaal|Zaaldeel 3|hoorn|15|V1
LS12|Zaal|Zaaldeel 3|hoorn|15|V1
LS13|Zaal|Tribune|opbouw|6|V1
LS14|Zaal|Tribune|opbouw|6|V1
LS15|Zaal|Tribune|opbouw|6|V1
LS16|Zaal|Tribune|opbouw|6|V1
LS17|Zaal|Tribune|opbouw|6|V1
LS18|Kleedruimten|Kleedkamer 1|inbouw|3|V2
LS19|Kleedruimten|Kleedkamer 2|inbouw|3|V2
LS20|Kleedruimten|Kleedkamer 3|inbouw|3|V2
LS21|Kleedruimten|Kleedkamer 4|inbouw|3|V2
LS22|Kleedruimten|Kleedkamer 5|inbouw|3|V2
LS23|Kleedruimten|Kleedkamer 6|inbouw|3|V2
LS24|Kleedruimten|Gang|inbouw|1.5|V2
LS25|Kleedruimten|Gang|inbouw|1.5|V2
LS26|Kleedruimten|Gang|inbouw|1.5|V2
LS27|Kleedruimten|Gang|inbouw|1.5|V2
LS28|Entree|Hal|inbouw|3|V2|VR1
LS29|Entree|Hal|inbouw|3|V2|VR1
LS30|Entree|Hal|inbouw|3|V2|VR1
LS31|Entree|Hal|inbouw|3|V2|VR1
LS32|Entree|Beheerder|inbouw|1.5|V2|VR2
LS33|Entree|Vergaderruimte|inbouw|3|V2|VR3
LS34|Entree|Vergaderruimte|inbouw|3|V2|VR3
`)
		p.Bold("A1:B1", "A3:G3")
		q := p.Sheet("Centrale")
		q.Put("A1", `
Versterker|Vermogen W
V1|250
V2|120

Regelaar|Belastbaar tot
VR1|24 W
VR2|6 W
VR3|12 W
`)
		q.Bold("A1:B1", "A5:B5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("20310", "Sporthal De Meerkoet", "plain, a row a loudspeaker; amplifiers and controls in two small tables on a second sheet")
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; zone=Zaal; amplifier=V1", `rows|tag|room|tap_w|control
4..7|LS01..|Zaaldeel 1|15|
8..11|LS05..|Zaaldeel 2|15|
12..15|LS09..|Zaaldeel 3|15|
16..20|LS13..|Tribune|6|`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; zone=Kleedruimten; amplifier=V2", `rows|tag|room|tap_w|control
21|LS18|Kleedkamer 1|3|
22|LS19|Kleedkamer 2|3|
23|LS20|Kleedkamer 3|3|
24|LS21|Kleedkamer 4|3|
25|LS22|Kleedkamer 5|3|
26|LS23|Kleedkamer 6|3|
27..30|LS24..|Gang|1.5|`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; zone=Entree; amplifier=V2", `rows|tag|room|tap_w|control
31..34|LS28..|Hal|3|VR1
35|LS32|Beheerder|1.5|VR2
36..37|LS33..|Vergaderruimte|3|VR3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
V1|250|210
V2|120|43.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|250|210
V2|120|43.5`)
		t.Controls("", `control|rated_w|load_w
VR1|24|12
VR2|6|1.5
VR3|12|6`)
	}},

	{File: "service/opname zwembad.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Opname omroep zwembad De Kroosduiker;;;;
Ruimte;Luidsprekers;Aftakking;Lijn;Bijzonderheden
Entree;4 st inbouw;3W;1;
Kassa;1 st inbouw;1,5W;1;volumeregelaar 5W
Wedstrijdbad;8 st hoorn;15W;2;
Recreatieabd;6 st hoorn;10W;2;
Peuterbad;2 st opbouw;6W;2;
Kleedhokken;6 st inbouw;1,5W;1;
Douches;4 st inbouw;1,5W;1;
EHBO;1 st inbouw;1,5W;1;volumeregelaar 5W
Personeel;2 st inbouw;3W;1;volumeregelaar 10W
Ligweide;4 st hoorn;10W;3;
Machinekamer;1 st hoorn;10W;3;
;;;;
Versterkerkast: lijn 1 = 30W, lijn 2 = 240W, lijn 3 = 120W, alles 100V;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "zwembad De Kroosduiker", "pieces and kind in one cell, watts stuck to numbers; lines of one unnamed cabinet rated in a sentence below and the first overloaded, unnamed controls in remarks")
		t.Speakers("tap_v=100; line_v=100; channel=1", `rows|room|count|tap_w
3|Entree|4|3
4|Kassa|1|1.5
8|Kleedhokken|6|1.5
9|Douches|4|1.5
10|EHBO|1|1.5
11|Personeel|2|3`)
		t.Speakers("tap_v=100; line_v=100; channel=2", `rows|room|count|tap_w
5|Wedstrijdbad|8|15
6|Recreatieabd|6|10
7|Peuterbad|2|6`)
		t.Speakers("tap_v=100; line_v=100; channel=3", `rows|room|count|tap_w
12|Ligweide|4|10
13|Machinekamer|1|10`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
|1|30|36
|2|240|192
|3|120|50`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Kassa|5|1.5
|EHBO|5|1.5
|Personeel|10|6`)
	}},

	{File: "vlaanderen/Meetstaat bibliotheek deel 68.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("deel 68")
		p.Put("A1", `
Bestek 2023/112, bibliotheek Het Wilgenhof
Meetstaat deel 68: omroepinstallatie

Art.|Omschrijving|Aard|Eenh.|Hoev.|EP|Totaal
'68.1|Luidsprekers 100 V
'68.1.1|Plafondluidspreker ingesteld op 3 W, leeszaal|FH|st|12
'68.1.2|Plafondluidspreker ingesteld op 1,5 W, jeugdafdeling|FH|st|6
'68.1.3|Plafondluidspreker ingesteld op 1,5 W, sanitair|FH|st|3
'68.1.4|Wandluidspreker ingesteld op 6 W, polyvalente zaal|FH|st|4
'68.1.5|Hoornluidspreker ingesteld op 10 W, fietsenstalling (vereiste optie, niet in het totaal)|FH|st|2
'68.2|Volumeregelaars
'68.2.1|Volumeregelaar 50 W, leeszaal|FH|st|1
'68.2.2|Volumeregelaar 12 W, jeugdafdeling|FH|st|1
'68.2.3|Volumeregelaar 36 W, polyvalente zaal|FH|st|1
'68.3|Versterking
'68.3.1|Mengversterker 120 W / 100 V, in de berging|FH|st|1
'68.4|Bekabeling
'68.4.1|Luidsprekerkabel 2 x 1,5 mm², berging naar leeszaal|VH|m|35
'68.4.2|Luidsprekerkabel 2 x 1,5 mm², berging naar jeugdafdeling|VH|m|22
'68.4.3|Luidsprekerkabel 2 x 1,5 mm², berging naar polyvalente zaal|VH|m|40
|Totaal excl. btw
`)
		p.Bold("A1", "A4:G4", "A5:B5", "A11:B11", "A15:B15", "A17:B17", "B21")
		p.Format("0.00", "E18:E20")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2023/112", "bibliotheek Het Wilgenhof", "unpriced bill of quantities; kind, tap and room in one sentence, an option, unnamed controls and amplifier, cables as articles")
		t.Speakers("sheet=deel 68; tap_v=100; line_v=100", `rows|room|count|tap_w
6|leeszaal|12|3
7|jeugdafdeling|6|1.5
8|sanitair|3|1.5
9|polyvalente zaal|4|6`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|120|73.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|120|73.5`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|leeszaal|50|36
|jeugdafdeling|12|9
|polyvalente zaal|36|24`)
		t.Lines("", `from|to|length_m|area_mm2
berging|leeszaal|35|1.5
berging|jeugdafdeling|22|1.5
berging|polyvalente zaal|40|1.5`)
		t.Left("deel 68", `10|optional|option, not in the total
21|total|no sum yet`)
	}},

	{File: "vlaanderen/stelplaats Vosseberg.txt", Kind: "schedule", Bytes: func() []byte {
		return typed.Unicode16(typed.DOS(`
STELPLAATS VOSSEBERG	omroep 100 V
opgemaakt door ploeg 3, 4/11

kring	lokaal	stuks	W elk	versterker	regelaar	kabel	lengte m
1	loods A	6	20	PA1 240 W		2x2,5	140
1	loods B	4	20	PA1		idem	95
2	wasstraat	2	15	PA2 120 W		2x2,5	120
2	werkputten	4	6	PA2		2x1,5	80
2	magazijn	1	10	PA2		idem	65
3	refter	4	3	PA3 60 W	RG1 24 W	2x1,5	30
3	planning	1	1,5	PA3	RG2 6 W	idem	18
3	kleedkamer	2	3	PA3		idem	22,5
3	gang	3	1,5	PA3		idem	12
	totaal	27					582,5
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "STELPLAATS VOSSEBERG", "tabs in UTF-16; ratings beside the name where an amplifier or control is first written, idem under cables")
		t.Speakers("tap_v=100; line_v=100; amplifier=PA1; channel=1", `rows|room|count|tap_w
5|loods A|6|20
6|loods B|4|20`)
		t.Speakers("tap_v=100; line_v=100; amplifier=PA2; channel=2", `rows|room|count|tap_w
7|wasstraat|2|15
8|werkputten|4|6
9|magazijn|1|10`)
		t.Speakers("tap_v=100; line_v=100; amplifier=PA3; channel=3", `rows|room|count|tap_w|control
10|refter|4|3|RG1
11|planning|1|1.5|RG2
12|kleedkamer|2|3|
13|gang|3|1.5|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
PA1|1|240|200
PA2|2|120|64
PA3|3|60|24`)
		t.Amplifiers("", `amplifier|rated_w|load_w
PA1|240|200
PA2|120|64
PA3|60|24`)
		t.Controls("", `control|rated_w|load_w
RG1|24|12
RG2|6|1.5`)
		t.Lines("note=one length a room", `zone|length_m|area_mm2
loods A|140|2.5
loods B|95|2.5
wasstraat|120|2.5
werkputten|80|1.5
magazijn|65|1.5
refter|30|1.5
planning|18|1.5
kleedkamer|22.5|1.5
gang|12|1.5`)
		t.Left("", `14|total|pieces and metres`)
	}},

	{File: "revisie/Museum Touwslagerij revisie 2.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Luidsprekers")
		p.Put("A1", `
Nr.|Bouwdeel|Ruimte|Stuks|Stand|Uitgang|Status
1|Oudbouw|Hal|4|3 W|'1.1|gereed
2|Oudbouw|Garderobe|2|1,5 W|'1.1|gereed
3|Oudbouw|Laadperron|2|10 W|'1.1|gereed
4|Oudbouw|Zaal 1|6|3 W|'1.2|gereed
5|Oudbouw|Zaal 2|6|3 W|'1.2|gereed
6|Oudbouw|Zaal 3|4|3 W|'1.2|vervallen
7|Nieuwbouw|Atrium|8|6 W|'2.1|gereed
8|Nieuwbouw|Depot|3|3 W|'2.1|gereed
9|Nieuwbouw|Kantoren|5|1,5 W|'2.1|gereed
10|Nieuwbouw|Auditorium|6|6 W|'2.2|gereed
11|Nieuwbouw|Zaal 7|4|3 W|'2.2|fase 2, nog niet gemonteerd
`)
		p.Bold("A1:G1")
		p.Filtered("A1:G12", "B", "Nieuwbouw", 2, 3, 4, 5, 6, 7)
		q := p.Sheet("Rek")
		q.Put("A1", `
Museum De Oude Touwslagerij, revisie 2, opdracht M-3391
Alle uitgangen 100 V

Positie|Versterker|Uitgang|Max. W|Aangesloten W|Regelaar
HE 12|Versterker 1|'1.1|120|35
||'1.2|120|36
HE 14|Versterker 2|'2.1|120|64,5
||'2.2|60|36|VR-A 50 W
`)
		q.Bold("A1", "A4:F4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("M-3391", "Museum De Oude Touwslagerij", "a filter left on hides half the rows; outputs such as 1.2 are amplifier and output, their ratings and one control on a second sheet; states in a column")
		t.Revision("2", false)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; zone=Oudbouw; amplifier=1; channel=1", `rows|room|count|tap_w
2|Hal|4|3
3|Garderobe|2|1.5
4|Laadperron|2|10`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; zone=Oudbouw; amplifier=1; channel=2", `rows|room|count|tap_w
5|Zaal 1|6|3
6|Zaal 2|6|3`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; zone=Nieuwbouw; amplifier=2; channel=1", `rows|room|count|tap_w
8|Atrium|8|6
9|Depot|3|3
10|Kantoren|5|1.5`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; zone=Nieuwbouw; amplifier=2; channel=2; control=VR-A", `rows|room|count|tap_w
11|Auditorium|6|6`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
1|1|120|35
1|2|120|36
2|1|120|64.5
2|2|60|36`)
		t.Amplifiers("", `amplifier|load_w
1|71
2|100.5`)
		t.Controls("", `control|rated_w|load_w
VR-A|50|36`)
		t.Left("Luidsprekers", `7|removed|dropped
12|future|phase 2, not yet fitted`)
	}},

	{File: "werken/urenstaat week 46.csv", Kind: "not-a-schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Urenstaat week 46;;;;;
Datum;Werk;Zone;Omschrijving;Aantal man;Uren
11-11;20344 stationshal;perron 1;luidsprekers ophangen;2;7,5
12-11;20344 stationshal;perron 2;luidsprekers ophangen;2;8
13-11;20344 stationshal;hal;versterkerkast 240 W plaatsen;2;4
13-11;20344 stationshal;hal;kabel trekken 2 x 2,5;2;4
14-11;20351 manege;rijbaan;volumeregelaar vervangen;1;1,5
14-11;20351 manege;stallen;storing zoeken 100V-lijn;1;3
15-11;magazijn;;opruimen;1;2
;;;totaal;;30
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "a fitter's hours; speaks of loudspeakers, zones and a control, but lists work and hours only")
	}},
}
