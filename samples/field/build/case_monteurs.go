package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// monteurs fit and keep systems in the Netherlands and Flanders.
var monteurs = []typed.Case{
	{File: "vlaanderen/Spinhuis omroep.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Blad1")
		p.Put("A1", `
Streekmuseum 't Spinhuis - omroepinstallatie
Mengversterker MV1, 240 W / 100 V, in de berging. Drie kringen (A, B, C) op dezelfde versterker.

Lokaal|Luidspreker|St.|W/st.|Kring|Verzwakker
Inkom|plafond|3|3|A|VZ1 (12W)
Vestiaire|"|2|3|"
Balie|"|1|1.5|"|VZ2 (6W)
Spinzaal|wand|6|6|B|VZ3 (60W)
Weefzaal|"|4|6|"|"
Trapzaal|"|2|6|"
Filmzaal|"|4|10|"|VZ4 (60W)
Binnenkoer|hoorn|2|15|C
Fietsenstalling|"|1|10|"
Leveringen|"|1|10|"
`)
		p.Bold("A1", "A4:F4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Streekmuseum 't Spinhuis", "ditto marks; three circuits on one amplifier whose rating stands in a sentence; two rooms on one control")
		t.Speakers("sheet=Blad1; tap_v=100; line_v=100; amplifier=MV1; channel=A", `rows|room|count|tap_w|control
5|Inkom|3|3|VZ1
6|Vestiaire|2|3|
7|Balie|1|1.5|VZ2`)
		t.Speakers("sheet=Blad1; tap_v=100; line_v=100; amplifier=MV1; channel=B", `rows|room|count|tap_w|control
8|Spinzaal|6|6|VZ3
9|Weefzaal|4|6|VZ3
10|Trapzaal|2|6|
11|Filmzaal|4|10|VZ4`)
		t.Speakers("sheet=Blad1; tap_v=100; line_v=100; amplifier=MV1; channel=C", `rows|room|count|tap_w
12|Binnenkoer|2|15
13|Fietsenstalling|1|10
14|Leveringen|1|10`)
		t.Channels("line_v=100", `amplifier|channel|load_w
MV1|A|16.5
MV1|B|112
MV1|C|50`)
		t.Amplifiers("", `amplifier|rated_w|load_w
MV1|240|178.5`)
		t.Controls("", `control|rated_w|load_w
VZ1|12|9
VZ2|6|1.5
VZ3|60|60
VZ4|60|40`)
	}},

	{File: "nederland/geluid De Wierde.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("geluid")
		p.Put("A1", `
Openluchtbad De Wierde, geluidsinstallatie zoals nagelopen in het voorjaar. Alles is 100 volt.

Groep 1 (versterker links, 120 W)
Kassa: 2 plafond op 3 W, volumeknop 12 W
Hal: 4 plafond 6W
Kleedkamers: 6 plafond op 3 W
Personeelsruimte: 1 plafond op 1,5 W, volumeknop 6 W
Groep 2 (versterker rechts, 240 W)
Bad diep: 4 hoorns op 15 W
Bad ondiep: ook 4 hoorns op 15 W
Glijbaan: 1 hoorn op 10 W
Ligweide: 3 hoorns op 15 W
Fietsenstalling: was 1 hoorn op 10 W, weggehaald 2015

Microfoon ligt bij de badmeester, sleutel van de kast hangt in de kassa.
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Openluchtbad De Wierde", "one column of short sentences: place, count, kind, tap, control")
		t.Speakers("sheet=geluid; tap_v=100; line_v=100; zone=Groep 1; amplifier=links", `rows|room|count|tap_w
4|Kassa|2|3
5|Hal|4|6
6|Kleedkamers|6|3
7|Personeelsruimte|1|1.5`)
		t.Speakers("sheet=geluid; tap_v=100; line_v=100; zone=Groep 2; amplifier=rechts", `rows|room|count|tap_w
9|Bad diep|4|15
10|Bad ondiep|4|15
11|Glijbaan|1|10
12|Ligweide|3|15`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
links|120|49.5
rechts|240|175`)
		t.Amplifiers("", `amplifier|rated_w|load_w
links|120|49.5
rechts|240|175`)
		t.Controls("note=unnamed", `zone|rated_w|load_w
Kassa|12|6
Personeelsruimte|6|1.5`)
		t.Left("geluid", `3|title|group and its amplifier
8|title|group and its amplifier
13|device|taken away
15|note|keys`)
	}},

	{File: "nederland/Kiekendief kabelstaat.txt", Kind: "schedule", Bytes: text(`
Roeiloods De Kiekendief	Omroep 100V	wnr 2240		

LS	Plaats	Type	W	Versterker
LS01	Loods voor	hoorn	10	V1
LS02	Loods midden	hoorn	10	V1
LS03	Loods achter	hoorn	10	V1
LS04	Werkplaats	wand	6	V1
LS05	Kleedkamer 1	plafond	3	V2
LS06	Kleedkamer 2	plafond	3	V2
LS07	Ergometerzaal	wand	10	V2
LS08	Ergometerzaal	wand	10	V2
LS09	Steiger	hoorn	15	V2

Van	Naar	Lengte m	Kabel	
V1	LS01	32	2x1,5	
LS01	LS02	14	2x1,5	
LS02	LS03	14	2x1,5	
LS03	LS04	9	2x1,5	
V2	LS05	26	2x2,5	
LS05	LS06	7	2x2,5	
LS06	RG1	12	2x1,5	
RG1	LS07	6	2x1,5	
LS07	LS08	8	2x1,5	
LS06	LS09	41	2x2,5	

RG1 = volumeregelaar ergometerzaal, 35 W				
V1 = 60 W, V2 = 120 W, beide in de meterkast				
`), Truth: func(t *typed.Truth) {
		t.Is("2240", "Roeiloods De Kiekendief", "tab file of list, cable runs from-to and two sentences; what hangs on the control can be seen from the cables or its room")
		t.Speakers("tap_v=100; line_v=100; amplifier=V1", `rows|tag|room|tap_w
4|LS01|Loods voor|10
5|LS02|Loods midden|10
6|LS03|Loods achter|10
7|LS04|Werkplaats|6`)
		t.Speakers("tap_v=100; line_v=100; amplifier=V2", `rows|tag|room|tap_w|control
8|LS05|Kleedkamer 1|3|
9|LS06|Kleedkamer 2|3|
10|LS07|Ergometerzaal|10|RG1
11|LS08|Ergometerzaal|10|RG1
12|LS09|Steiger|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
V1|60|36
V2|120|41`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|60|36
V2|120|41`)
		t.Controls("", `control|rated_w|load_w
RG1|35|20`)
		t.Lines("note=from-to runs", `from|to|length_m|area_mm2
V1|LS01|32|1.5
LS01|LS02|14|1.5
LS02|LS03|14|1.5
LS03|LS04|9|1.5
V2|LS05|26|2.5
LS05|LS06|7|2.5
LS06|RG1|12|1.5
RG1|LS07|6|1.5
LS07|LS08|8|1.5
LS06|LS09|41|2.5`)
	}},

	{File: "vlaanderen/2016-044 rijhal Ter Linde.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("LS - HP")
		p.Put("A1", `
Rijhal / Hall équestre Ter Linde
Dossier 2016-044

Lokaal / Local|Type|Aantal / Nombre|W|Zone|Versterker / Ampli|Regelaar / Atténuateur
Hal A / Hall A|hoorn / pavillon|6|15|1|A1
Tribune|kolom / colonne|3|20|1|A1
Jury|plafond|1|6|1|A1|ja / oui
Hal B / Hall B|hoorn / pavillon|4|15|2|A2
Stallen / Ecuries|hoorn / pavillon|6|7.5|2|A2
Zadelkamer / Sellerie|plafond|2|3|3|A3|ja / oui
Onthaal / Accueil|plafond|3|6|3|A3|ja / oui
Kleedkamers / Vestiaires|plafond|4|3|3|A3
Dierenarts / Vétérinaire|plafond|1|3|3|A3|ja / oui
Totaal / Total||30|300

Versterkers / Amplis (100 V): A1 240 W, A2 120 W, A3 60 W
Regelaars / Atténuateurs: één per lokaal / un par local, 36 W
`)
		p.Bold("A1", "A4:G4", "A14:D14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2016-044", "Rijhal / Hall équestre Ter Linde", "two languages in each cell; controls are a yes in a column, their rating stands in a sentence")
		t.Speakers("sheet=LS - HP; tap_v=100; line_v=100; zone=1; amplifier=A1", `rows|room|count|tap_w
5|Hal A / Hall A|6|15
6|Tribune|3|20
7|Jury|1|6`)
		t.Speakers("sheet=LS - HP; tap_v=100; line_v=100; zone=2; amplifier=A2", `rows|room|count|tap_w
8|Hal B / Hall B|4|15
9|Stallen / Ecuries|6|7.5`)
		t.Speakers("sheet=LS - HP; tap_v=100; line_v=100; zone=3; amplifier=A3", `rows|room|count|tap_w
10|Zadelkamer / Sellerie|2|3
11|Onthaal / Accueil|3|6
12|Kleedkamers / Vestiaires|4|3
13|Dierenarts / Vétérinaire|1|3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|240|156
A2|120|105
A3|60|39`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|240|156
A2|120|105
A3|60|39`)
		t.Controls("note=unnamed", `zone|rated_w|load_w
Jury|36|6
Zadelkamer / Sellerie|36|6
Onthaal / Accueil|36|18
Dierenarts / Vétérinaire|36|3`)
		t.Left("LS - HP", `14|total|sums`)
	}},

	{File: "nederland/Hortus Zevenhuis.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Luidsprekers")
		p.Put("A1", `
Hortus Zevenhuis|omroep 100 V

zone|ruimte|aantal|stand
Kas Tropen|Tropenkas laag|4|6 W
|Tropenkas brug|2|6 W
Kas Woestijn|Woestijnkas|3|6 W
Entree|Kassa|1|1,5 W
|Tentoonstelling|4|3 W
|Sluis|2|3 W
Educatie|Leslokaal|4|3 W
|Laboratorium|2|3 W
Buiten|Kruidentuin|4|7,5 W
|Bijenstal|1|7,5 W
`)
		m := p.Sheet("Matrix")
		m.Put("A1", `
Zone|Uitgang 1|Uitgang 2|Uitgang 3|Uitgang 4|Volumeregelaar
Vermogen W|120|60|60|60
Kas Tropen|x
Kas Woestijn|x
Entree||x|||VR-E 20 W
Educatie||x|||VR-O 35 W
Buiten|||x
Reserve||||x
`)
		p.Bold("A1", "A3:D3")
		m.Bold("A1:F1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Hortus Zevenhuis", "zones and outputs are crosses in a matrix on the second sheet, ratings in its first row; zones written once above their rows")
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; channel=1", `rows|zone|room|count|tap_w
4|Kas Tropen|Tropenkas laag|4|6
5|Kas Tropen|Tropenkas brug|2|6
6|Kas Woestijn|Woestijnkas|3|6`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; channel=2", `rows|zone|room|count|tap_w|control
7|Entree|Kassa|1|1.5|VR-E
8|Entree|Tentoonstelling|4|3|VR-E
9|Entree|Sluis|2|3|VR-E
10|Educatie|Leslokaal|4|3|VR-O
11|Educatie|Laboratorium|2|3|VR-O`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; channel=3; zone=Buiten", `rows|room|count|tap_w
12|Kruidentuin|4|7.5
13|Bijenstal|1|7.5`)
		t.Channels("line_v=100", `channel|rated_w|load_w
1|120|54
2|60|37.5
3|60|37.5`)
		t.Controls("", `control|zone|rated_w|load_w
VR-E|Entree|20|19.5
VR-O|Educatie|35|18`)
	}},

	{File: "nederland/7741 voorstel taps Het Zwerk.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("taps")
		p.Put("A1", `
Planetarium Het Zwerk - voorstel omzetten taps
opdracht 7741, 100 V, voor akkoord klant

Nr|Ruimte|Luidspreker|Aantal|W nu|W voorstel|Versterker
1|Koepel|wand|8|10|6|V1
2|Koepel|sub 8 ohm|1|laagohmig||eigen eindtrap
3|Voorhal|plafond|6|3|3|V2
4|Gang|plafond|4|3|1.5|V2
5|Garderobe|plafond|2|3|1.5|V2
6|Leeszaal|plafond|4|6|3|V2
7|Sterrenplein|hoorn|2|15|10|V1
|Totaal||27|170|107

V1 = 100 W, nu dus te zwaar (110 W), met voorstel 68 W.
V2 = 60 W, zit nu precies vol, met voorstel 39 W.
`)
		p.Bold("A1", "A4:G4", "B12:F12")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("7741", "Planetarium Het Zwerk", "taps as they are beside those proposed, a low-impedance loudspeaker among them; ratings in sentences full of other figures; V1 is overloaded")
		t.Speakers("sheet=taps; tap_v=100; line_v=100; amplifier=V1", `rows|tag|room|count|tap_w
5|1|Koepel|8|10
11|7|Sterrenplein|2|15`)
		t.Speakers("sheet=taps; low_ohm=8", `rows|tag|room|count
6|2|Koepel|1`)
		t.Speakers("sheet=taps; tap_v=100; line_v=100; amplifier=V2", `rows|tag|room|count|tap_w
7|3|Voorhal|6|3
8|4|Gang|4|3
9|5|Garderobe|2|3
10|6|Leeszaal|4|6`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
V1|100|110
V2|60|60`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|100|110
V2|60|60`)
		t.Left("taps", `12|total|sums
14|note|rating and sums
15|note|rating and sums`)
	}},
}
