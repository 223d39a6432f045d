package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Four people who write Dutch: the manager of a pool, an installer, a municipal inspector, a lighting technician.
var firmsDutch = []typed.Case{

	// De beheerder van een zwembad schrijft op wat er hangt.
	{File: "zwembad/omroep lisdodde.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Zwembad De Lisdodde, wat er aan boxen hangt;;;;
Waar;Hoeveel;Staat op (W);Groep;Draaiknop
Wedstrijdbad;6;20;1;
Recreatiebad;4;20;1;
Peuterbad;1;6;1;knop 1
Kleedkamers dames;3;3;2;
Kleedkamers heren;3;3;2;
Kleedhokjes;4;3;2;
Douches;2;6;2;
Hal;4;6;3;
Kassa;1;1,5;3;knop 2
Badmeesters;1;3;3;knop 3
Fietsenstalling;1;10;3;
;;;;
De versterker heeft drie uitgangen: groep 1 is 240 W, groep 2 en groep 3 zijn 60 W. Het is een 100 V-installatie.;;;;
De knoppen zijn allemaal 12 W.;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Zwembad De Lisdodde", "plain; ratings of outputs and controls in two sentences below")
		t.Speakers("tap_v=100; line_v=100; channel=1", `rows|room|count|tap_w|control
3|Wedstrijdbad|6|20|
4|Recreatiebad|4|20|
5|Peuterbad|1|6|knop 1`)
		t.Speakers("tap_v=100; line_v=100; channel=2", `rows|room|count|tap_w
6|Kleedkamers dames|3|3
7|Kleedkamers heren|3|3
8|Kleedhokjes|4|3
9|Douches|2|6`)
		t.Speakers("tap_v=100; line_v=100; channel=3", `rows|room|count|tap_w|control
10|Hal|4|6|
11|Kassa|1|1.5|knop 2
12|Badmeesters|1|3|knop 3
13|Fietsenstalling|1|10|`)
		t.Channels("line_v=100", `channel|rated_w|load_w
1|240|206
2|60|42
3|60|38.5`)
		t.Amplifiers("", `amplifier|load_w
|286.5`)
		t.Controls("", `control|rated_w|load_w
knop 1|12|6
knop 2|12|1.5
knop 3|12|3`)
	}},

	// Een installateur levert een sporthal op: luidsprekers, kast en kabels op drie bladen.
	{File: "oplevering/24.0316 sporthal.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Luidsprekers")
		p.Put("A1", `
Sporthal De Berkenlaan|||||Werk 24.0316
Lsp. nr.|Ruimte|Soort|Stuks|Aftakking|Lijn
1 t/m 6|Zaal 1|hoorn|6|15 W|'1.1
7 t/m 10|Zaal 2|hoorn|4|15 W|'1.2
11 t/m 14|Tribune|zuil|4|10 W|'1.2
15 t/m 18|Hal|plafond|4|3 W|'2.1
'19|Beheerder|opbouw|1|1,5 W|'2.1
20 t/m 23|Kleedkamers|plafond|4|3 W|'2.2
24 en 25|Scheidsrechters|plafond|2|1,5 W|'2.2
26 t/m 29|Bestuurskamer|plafond|4|3 W|'2.2
'30|Buitendeur|hoorn|1|10 W|'2.2
`)
		p.Bold("A1", "A2:F2")
		q := p.Sheet("Kast")
		q.Put("A1", `
HE|Apparaat|Uitgang|Lijn|Vermogen
'1-2|Eindversterker 1|1|'1.1|120 W
|Eindversterker 1|2|'1.2|120 W
'4-5|Eindversterker 2|1|'2.1|60 W
|Eindversterker 2|2|'2.2|60 W
||
Alle lijnen 100 V
Volumeregelaars: VR1 (hal, 24 W), VR2 (bestuurskamer, 24 W), VR3 (beheerder, 6 W)
`)
		q.Bold("A1:E1")
		r := p.Sheet("Kabels")
		r.Put("A1", `
Lijn|Van|Naar|Meter|Kabel
'1.1|Kast|Zaal 1|45|2x2,5 mm²
'1.2|Kast|Zaal 2|60|2x2,5 mm²
'1.2|Zaal 2|Tribune|18|2x2,5 mm²
'2.1|Kast|Hal|22|2x1,5 mm²
'2.2|Kast|Kleedkamers|38|2x1,5 mm²
'2.2|Kleedkamers|Bestuurskamer|27|2x1,5 mm²
`)
		r.Format(`0" m"`, "D2:D7")
		r.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("24.0316", "Sporthal De Berkenlaan", "plain; lines such as 1.2 join the list to the rack, volume controls by room in a sentence of the rack")
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; amplifier=Eindversterker 1", `rows|room|count|tap_w|channel
3|Zaal 1|6|15|1
4|Zaal 2|4|15|2
5|Tribune|4|10|2`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; amplifier=Eindversterker 2", `rows|room|count|tap_w|channel|control
6|Hal|4|3|1|VR1
7|Beheerder|1|1.5|1|VR3
8|Kleedkamers|4|3|2|
9|Scheidsrechters|2|1.5|2|
10|Bestuurskamer|4|3|2|VR2
11|Buitendeur|1|10|2|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
Eindversterker 1|1|120|90
Eindversterker 1|2|120|100
Eindversterker 2|1|60|13.5
Eindversterker 2|2|60|37`)
		t.Amplifiers("", `amplifier|load_w
Eindversterker 1|190
Eindversterker 2|50.5`)
		t.Controls("", `control|rated_w|load_w
VR1|24|12
VR2|24|12
VR3|6|1.5`)
		t.Lines("note=from-to run", `line|from|to|length_m|area_mm2
1.1|Kast|Zaal 1|45|2.5
1.2|Kast|Zaal 2|60|2.5
1.2|Zaal 2|Tribune|18|2.5
2.1|Kast|Hal|22|1.5
2.2|Kast|Kleedkamers|38|1.5
2.2|Kleedkamers|Bestuurskamer|27|1.5`)
	}},

	// Een inspecteur van de gemeente loopt een ijsbaan na, verdieping voor verdieping.
	{File: "gemeente/4471 conditiemeting omroep.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Inspectie")
		p.Put("A1", `
IJsbaan De Vlierstroom|||Opdracht 4471
Conditiemeting omroepinstallatie, 100 V, versterker met vier uitgangen
||
BEGANE GROND
Ruimte|Luidsprekers|Vermogen per stuk|Uitgang|Bevinding
Ingang|4 plafond|3 W|3|goed
Schaatsverhuur|4 plafond|6 W|3|goed, regelaar R1 (36 W) werkt
Kluisjes|3 plafond|3 W|3|roosters los
Baan, binnenbocht|8 hoorn|15 W|1|goed
Baan, buitenbocht|8 hoorn|15 W|2|twee verroest, wel in bedrijf
Machinekamer|1 hoorn|10 W|2|goed
||
VERDIEPING
Ruimte|Luidsprekers|Vermogen per stuk|Uitgang|Bevinding
Tribune west|4 zuil|10 W|4|goed
Tribune oost|4 zuil|10 W|4|vervallen, in 2021 met de tribune gesloopt
Juryhok|1 opbouw|3 W|4|regelaar R2 (6 W) stroef
Vergaderzaal|4 plafond|3 W|4|goed, regelaar R3 (24 W) werkt
||
Uitgang 1 en 2 leveren elk 240 W, uitgang 3 en 4 elk 120 W.
`)
		p.Bold("A1", "A4:E5", "A13:E14")
		p.Merge("A4:E4", "A13:E13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("4471", "IJsbaan De Vlierstroom", "floors as titles, kind and count in one cell, controls and one demolished row in the findings, ratings of outputs below")
		t.Speakers("sheet=Inspectie; tap_v=100; line_v=100; zone=BEGANE GROND; note=floor as zone", `rows|room|count|tap_w|channel|control
6|Ingang|4|3|3|
7|Schaatsverhuur|4|6|3|R1
8|Kluisjes|3|3|3|
9|Baan, binnenbocht|8|15|1|
10|Baan, buitenbocht|8|15|2|
11|Machinekamer|1|10|2|`)
		t.Speakers("sheet=Inspectie; tap_v=100; line_v=100; zone=VERDIEPING; note=floor as zone", `rows|room|count|tap_w|channel|control
15|Tribune west|4|10|4|
17|Juryhok|1|3|4|R2
18|Vergaderzaal|4|3|4|R3`)
		t.Channels("line_v=100", `channel|rated_w|load_w
1|240|120
2|240|130
3|120|45
4|120|55`)
		t.Amplifiers("", `amplifier|load_w
|350`)
		t.Controls("", `control|rated_w|load_w
R1|36|24
R2|6|3
R3|24|12`)
		t.Left("Inspectie", `16|removed|demolished with the stand`)
	}},

	// De belichter van een schouwburg houdt zijn dimmers bij: kringen, kanalen, watts en regelaars, maar geen luidsprekers.
	{File: "schouwburg/dimmerlijst.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Dimmers")
		p.Put("A1", `
Schouwburg De Elzenhof, dimmerlijst zaal en foyer
||
Kring|Dimmerkast|Uitgang|Ruimte|Stuks|W per lamp|Totaal W|Regelaar
1|D1|1|Zaal, kroonluchters|6|300|1800|zaallicht
2|D1|2|Zaal, wandarmen|24|40|960|zaallicht
3|D1|3|Balkon|18|40|720|zaallicht
4|D1|4|Orkestbak, lessenaars|30|15|450|bak
5|D2|1|Foyer, spots|16|50|800|knop foyer
6|D2|2|Foyer, schijnwerper|4|100|400|knop foyer
7|D2|3|Gang links|8|25|200|
8|D2|4|Gang rechts|8|25|200|
9|D2|5|Garderobe|6|25|150|
Totaal||||120||5680|
||
Dimmerkast D1 en D2: 2,3 kW per uitgang, 230 V
`)
		p.Bold("A1", "A3:H3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Schouwburg De Elzenhof", "lamps on dimmers with circuits, outputs, watts and controls, at 230 V; no loudspeakers")
	}},
}
