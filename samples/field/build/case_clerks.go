package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Clerks and caretakers, each with a habit of their own.
var clerks = []typed.Case{
	{File: "estates/Oakmere gardens loudspeakers.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Loudspeakers")
		p.Put("A1", `
Oakmere Botanical Garden - loudspeakers (job 640)
All on the 100 V line
||
No.|Zone|Place|Kind of speaker|How many|Watts each
1|1|Entrance kiosk|ceiling|2|3
2|1|Entrance court|horn|2|15
3|2|Camellia house|box|4|5
4|2|Camellia porch|box|1|5
5|3|Lecture hall|ceiling|6|3
6|3|Lecture hall, back|box|2|6
7|4|Library|ceiling|4|1.5
8|4|Reading corner|ceiling|1|1.5
9|5|Nursery yard|horn|3|15
10|5|Compost yard|horn|1|15
||
Notes
Amplifier A, 120 W, feeds zones 1 and 5.
Amplifier B, 120 W, feeds zones 2, 3 and 4.
Volume control VC1, 30 W, is for zone 2.
Volume control VC2, 36 W, is for zone 3.
Volume control VC3, 10 W, is for zone 4.
Zones 1 and 5 have no volume control.
`)
		p.Bold("A1", "A4:F4", "A16")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("640", "Oakmere Botanical Garden", "amplifiers and controls are written as notes below the list, by zone")
		t.Speakers("sheet=Loudspeakers; tap_v=100; line_v=100", `rows|tag|zone|room|count|tap_w|amplifier|control
5|1|1|Entrance kiosk|2|3|A|
6|2|1|Entrance court|2|15|A|
7|3|2|Camellia house|4|5|B|VC1
8|4|2|Camellia porch|1|5|B|VC1
9|5|3|Lecture hall|6|3|B|VC2
10|6|3|Lecture hall, back|2|6|B|VC2
11|7|4|Library|4|1.5|B|VC3
12|8|4|Reading corner|1|1.5|B|VC3
13|9|5|Nursery yard|3|15|A|
14|10|5|Compost yard|1|15|A|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|120|96
B|120|62.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|120|96
B|120|62.5`)
		t.Controls("", `control|zone|rated_w|load_w
VC1|2|30|25
VC2|3|36|30
VC3|4|10|7.5`)
	}},

	{File: "waterland/botenhuis De Rietkraag.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Zone 1 Hal")
		p.Put("A1", `
Project 3308|Botenhuis De Rietkraag
Zone 1|Hal
Versterker|V1
Uitgang|1
Regelaar|R1
Lijn|100 V
||
Nr.|Plaats|Luidspreker|Aantal|Stand W
1|Ingang|plafond|2|3
2|Hal midden|plafond|4|3
3|Trap|wand|1|6
`)
		two := p.Sheet("Zone 2 Kleedkamers")
		two.Put("A1", `
Project 3308|Botenhuis De Rietkraag
Zone 2|Kleedkamers
Versterker|V1
Uitgang|1
Regelaar|geen
Lijn|100 V
||
Nr.|Plaats|Luidspreker|Aantal|Stand W
1|Kleedkamer dames|plafond|2|3
2|Kleedkamer heren|plafond|2|3
3|Douches|plafond|2|1.5
`)
		three := p.Sheet("Zone 3 Loods")
		three.Put("A1", `
Project 3308|Botenhuis De Rietkraag
Zone 3|Loods
Versterker|V1
Uitgang|2
Regelaar|geen
Lijn|100 V
||
Nr.|Plaats|Luidspreker|Aantal|Stand W
1|Loods noord|hoorn|2|7.5
2|Loods zuid|hoorn|2|7.5
3|Werkplaats|hoorn|1|7.5
4|Steiger|hoorn|2|15
`)
		last := p.Sheet("Versterker en regelaars")
		last.Put("A1", `
Versterker|Uitgang|Vermogen W
V1|1|60
V1|2|120
||
Regelaar|Zone|Vermogen W
R1|Zone 1|36
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("3308", "Botenhuis De Rietkraag", "a sheet a zone, each with the zone's output in its heading")
		t.Speakers("sheet=Zone 1 Hal; tap_v=100; line_v=100; zone=Zone 1; amplifier=V1; channel=1; control=R1", `rows|tag|room|count|tap_w
9|1|Ingang|2|3
10|2|Hal midden|4|3
11|3|Trap|1|6`)
		t.Speakers("sheet=Zone 2 Kleedkamers; tap_v=100; line_v=100; zone=Zone 2; amplifier=V1; channel=1", `rows|tag|room|count|tap_w
9|1|Kleedkamer dames|2|3
10|2|Kleedkamer heren|2|3
11|3|Douches|2|1.5`)
		t.Speakers("sheet=Zone 3 Loods; tap_v=100; line_v=100; zone=Zone 3; amplifier=V1; channel=2", `rows|tag|room|count|tap_w
9|1|Loods noord|2|7.5
10|2|Loods zuid|2|7.5
11|3|Werkplaats|1|7.5
12|4|Steiger|2|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|60|39
V1|2|120|67.5`)
		t.Amplifiers("", `amplifier|load_w
V1|106.5`)
		t.Controls("", `control|zone|rated_w|load_w
R1|Zone 1|36|24`)
	}},

	{File: "estates/planetarium Combe-Neuve.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Sonorisation")
		p.Put("A1", `
Planétarium de Combe-Neuve|||Affaire 18-405
Sonorisation ligne 100 V
||
Repère|Local|Type|Nb|Puissance unitaire (W)|Puissance totale (W)
Ampli A1 sortie 1, 120 W
HP01|Coupole, pourtour|mural|8|6|48
HP02|Coupole, sas|plafond|2|3|6
HP03|Régie|plafond|1|1.5|1.5
Ampli A1 sortie 2, 120 W
HP04|Hall|plafond|6|3|18
HP05|Caisse|plafond|1|1.5|1.5
HP06|Vestiaire|plafond|2|1.5|3
HP07|Salle d'exposition|plafond|8|3|24
HP08|Sanitaires|plafond|4|1.5|6
Ampli A2 sortie unique, 60 W
HP09|Parvis|pavillon|2|15|30
HP10|Quai de livraison|pavillon|1|15|15
|Total||35||153
||
Atténuateur|Haut-parleurs|Puissance (W)
AT1|HP03|6
AT2|HP04|20
AT3|HP07|36
`)
		p.Bold("A1", "A4:F4", "A5", "A9", "A15", "A20:C20")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("18-405", "Planétarium de Combe-Neuve", "outputs and their ratings as titles in the list; a table of controls names the loudspeakers")
		t.Speakers("sheet=Sonorisation; tap_v=100; line_v=100; amplifier=A1; channel=1", `rows|tag|room|count|tap_w|control
6|HP01|Coupole, pourtour|8|6|
7|HP02|Coupole, sas|2|3|
8|HP03|Régie|1|1.5|AT1`)
		t.Speakers("sheet=Sonorisation; tap_v=100; line_v=100; amplifier=A1; channel=2", `rows|tag|room|count|tap_w|control
10|HP04|Hall|6|3|AT2
11|HP05|Caisse|1|1.5|
12|HP06|Vestiaire|2|1.5|
13|HP07|Salle d'exposition|8|3|AT3
14|HP08|Sanitaires|4|1.5|`)
		t.Speakers("sheet=Sonorisation; tap_v=100; line_v=100; amplifier=A2", `rows|tag|room|count|tap_w
16|HP09|Parvis|2|15
17|HP10|Quai de livraison|1|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A1|1|120|55.5
A1|2|120|52.5
A2||60|45`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1||108
A2|60|45`)
		t.Controls("", `control|rated_w|load_w
AT1|6|1.5
AT2|20|18
AT3|36|24`)
		t.Left("Sonorisation", `5|title|output and its rating
9|title|output and its rating
15|title|output and its rating
18|total|sums`)
	}},

	{File: "waterland/ijsbaan luidsprekers.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
IJsbaan Noorderplas;;;;;;;;
Werknummer 3321;;;;;;;;
Omroep 100 V;;;;;;;;
;;;;;;;;
Ruimte;Luidspreker;Aantal;Tap (W);Totaal (W);Versterker;Volumeregelaar;Kabel;Lengte (m)
Baan noordzijde;hoorn;5;10;50;A;;2x2,5;120
Baan zuidzijde;hoorn;5;10;50;A;;2x2,5;145
Kluunplaats;hoorn;1;10;10;A;;2x1,5;60
Entree;plafond;4;3;12;B;VR1;2x1,5;25
Kassa;plafond;1;1,5;1,5;B;VR2;2x1,5;20
Schaatsverhuur;plafond;4;3;12;B;VR3;2x1,5;38
Kleedkamer 1;plafond;3;1,5;4,5;B;;2x1,5;47
Kleedkamer 2;plafond;3;1,5;4,5;B;;2x1,5;52
Machinekamer;hoorn;1;10;10;B;;2x1,5;66
;;;;;;;;
Versterker;Vermogen (W);;;;;;;
A;240;;;;;;;
B;60;;;;;;;
;;;;;;;;
Volumeregelaar;Vermogen (W);;;;;;;
VR1;12;;;;;;;
VR2;6;;;;;;;
VR3;20;;;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("3321", "IJsbaan Noorderplas", "list, amplifiers and controls one below the other in one text file")
		t.Speakers("tap_v=100; line_v=100; amplifier=A", `rows|room|count|tap_w
6|Baan noordzijde|5|10
7|Baan zuidzijde|5|10
8|Kluunplaats|1|10`)
		t.Speakers("tap_v=100; line_v=100; amplifier=B", `rows|room|count|tap_w|control
9|Entree|4|3|VR1
10|Kassa|1|1.5|VR2
11|Schaatsverhuur|4|3|VR3
12|Kleedkamer 1|3|1.5|
13|Kleedkamer 2|3|1.5|
14|Machinekamer|1|10|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|240|110
B|60|44.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|240|110
B|60|44.5`)
		t.Controls("", `control|rated_w|load_w
VR1|12|12
VR2|6|1.5
VR3|20|12`)
		t.Lines("", `zone|length_m|area_mm2
Baan noordzijde|120|2.5
Baan zuidzijde|145|2.5
Kluunplaats|60|1.5
Entree|25|1.5
Kassa|20|1.5
Schaatsverhuur|38|1.5
Kleedkamer 1|47|1.5
Kleedkamer 2|52|1.5
Machinekamer|66|1.5`)
	}},
}
