package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A Dutch installer: lists by group, metric, semicolons and decimal commas in text files.
var dutch = []typed.Case{
	{File: "NL/2014-083 ijshal Kromveen.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Luidsprekers")
		p.Put("A1", `
Werk:|2014-083
Locatie:|IJshal Kromveen
Lijnspanning:|100 V

Nr.|Ruimte|Groep|Type luidspreker|Aantal|Aftakking (W)|Totaal (W)|Volumeregelaar|Opmerking
1|IJsvloer noord|G1|Hoorn 30W|4|15|60||
2|IJsvloer zuid|G1|Hoorn 30W|4|15|60||
3|Tribune|G2|Zuil 40W|6|10|60||
4|Spelersbank|G2|Opbouw 10W|2|5|10||
5|Entreehal|G3|Plafond 6W|8|3|24|VR1|
6|Kassa|G3|Plafond 6W|1|1,5|1,5|VR2|
7|Schaatsverhuur|G3|Plafond 6W|4|3|12|VR3|
8|Kleedkamer 1|G4|Plafond 6W|2|3|6||
9|Kleedkamer 2|G4|Plafond 6W|2|3|6||
10|Kleedkamer 3|G4|Plafond 6W|2|3|6||
11|Kleedkamer 4|G4|Plafond 6W|2|3|6||
12|EHBO|G4|Plafond 6W|1|3|3|VR4|
13|Machinekamer|G4|Hoorn 30W|1|7,5|7,5||
14|Terrein|G4|Hoorn 30W|2|15|30||toekomstig, nog niet gemonteerd
|||Totaal||||262|
`)
		// the last row is a total: it stands in the column of the totals
		v := p.Sheet("Versterkers")
		v.Put("A1", `
Versterker|Uitgang|Groep|Vermogen (W)|Kabel|Lengte (m)
V1|1|G1|240|2x2,5 mm²|85
V1|2|G2|120|2x2,5 mm²|60
V2|1|G3|60|2x1,5 mm²|45
V2|2|G4|60|2x1,5 mm²|70
`)
		r := p.Sheet("Volumeregelaars")
		r.Put("A1", `
Regelaar|Ruimte|Max. belasting (W)
VR1|Entreehal|35
VR2|Kassa|6
VR3|Schaatsverhuur|12
VR4|EHBO|6
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2014-083", "IJshal Kromveen", "groups joined to a sheet of amplifiers; decimal commas as text")
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100", `rows|room|zone|amplifier|channel|model|count|tap_w|control|status
6|IJsvloer noord|G1|V1|1|Hoorn 30W|4|15||installed
7|IJsvloer zuid|G1|V1|1|Hoorn 30W|4|15||installed
8|Tribune|G2|V1|2|Zuil 40W|6|10||installed
9|Spelersbank|G2|V1|2|Opbouw 10W|2|5||installed
10|Entreehal|G3|V2|1|Plafond 6W|8|3|VR1|installed
11|Kassa|G3|V2|1|Plafond 6W|1|1.5|VR2|installed
12|Schaatsverhuur|G3|V2|1|Plafond 6W|4|3|VR3|installed
13|Kleedkamer 1|G4|V2|2|Plafond 6W|2|3||installed
14|Kleedkamer 2|G4|V2|2|Plafond 6W|2|3||installed
15|Kleedkamer 3|G4|V2|2|Plafond 6W|2|3||installed
16|Kleedkamer 4|G4|V2|2|Plafond 6W|2|3||installed
17|EHBO|G4|V2|2|Plafond 6W|1|3|VR4|installed
18|Machinekamer|G4|V2|2|Hoorn 30W|1|7.5||installed
19|Terrein|G4|V2|2|Hoorn 30W|2|15||future`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|240|120
V1|2|120|70
V2|1|60|37.5
V2|2|60|34.5`)
		t.Amplifiers("", `amplifier|load_w
V1|190
V2|72`)
		t.Controls("", `control|rated_w|load_w
VR1|35|24
VR2|6|1.5
VR3|12|12
VR4|6|3`)
		t.Lines("", `zone|length_m|area_mm2
G1|85|2.5
G2|60|2.5
G3|45|1.5
G4|70|1.5`)
		t.Left("Luidsprekers", `20|total|sum of what is connected`)
	}},

	{File: "NL/2016-021 hortus.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte("\ufeff" + typed.DOS(`
Werknummer;2016-021;;;;;;
Object;Hortus De Lage Wierde;;;;;;
Systeem;100 volt;;;;;;
;;;;;;;
Versterker;Kanaal;Vermogen;Ruimte;Luidspreker;Aantal;Stand;Regelaar
A;1;120 W;Palmenkas;PB-10;6;5 W;R1 (50 W)
A;1;120 W;Varenkas;PB-10;4;5 W;R2 (50 W)
A;1;120 W;Tropische kas;PB-10;4;10 W;R3 (50 W)
A;2;120 W;Ontvangst;CL-6;5;3 W;R4 (25 W)
A;2;120 W;Winkel;CL-6;4;3 W;R4 (25 W)
A;2;120 W;Gang;CL-6;6;1,5 W;geen
A;2;120 W;Leslokaal;CL-6;2;6 W;R5 (12 W)
B;1;60 W;Bomentuin;TZ-20;2;20 W;geen
B;1;60 W;Rozentuin;TZ-20;1;10 W;geen
B;2;60 W;Zaadzolder;CL-6;3;1,5 W;geen
B;2;60 W;Werkkas;PB-10;3;10 W;R6 (35 W)
B;2;60 W;Potloods;PB-10;2;;geen
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("2016-021", "Hortus De Lage Wierde", "ratings of channel and control in the row; one tap not filled in")
		t.Speakers("tap_v=100; line_v=100", `rows|amplifier|channel|room|model|count|tap_w|control
6|A|1|Palmenkas|PB-10|6|5|R1
7|A|1|Varenkas|PB-10|4|5|R2
8|A|1|Tropische kas|PB-10|4|10|R3
9|A|2|Ontvangst|CL-6|5|3|R4
10|A|2|Winkel|CL-6|4|3|R4
11|A|2|Gang|CL-6|6|1.5|
12|A|2|Leslokaal|CL-6|2|6|R5
13|B|1|Bomentuin|TZ-20|2|20|
14|B|1|Rozentuin|TZ-20|1|10|
15|B|2|Zaadzolder|CL-6|3|1.5|
16|B|2|Werkkas|PB-10|3|10|R6
17|B|2|Potloods|PB-10|2||`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w|load_min_w
A|1|120|90|
A|2|120|48|
B|1|60|50|
B|2|60||34.5`)
		t.Amplifiers("", `amplifier|load_w
A|138
B|`)
		t.Controls("", `control|rated_w|load_w
R1|50|30
R2|50|20
R3|50|40
R4|25|27
R5|12|12
R6|35|30`)
		t.Asks("", `17|asked|the tap of the two in the potting shed`)
	}},
}
