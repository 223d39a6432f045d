package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Six Dutch hands: an installer, a museum's facility manager, a drawing office and a school's board in the Netherlands, and a consultant and an
// electrician in Flanders.
var tripsNl = []typed.Case{

	{File: "werken/20417 zwembad.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Luidsprekers")
		p.Put("A1", `
Zwembad De Rietkraag, werk 20417
Omroep, 100 V-lijn
||
Zone|Ruimte|Aantal|Trafostand (W)|Versterker|Regelaar
1|Wedstrijdbad|8|15|V1|
1|Recreatiebad|6|15|V1|
2|Peuterbad|3|6|V2|R1
2|Tribune|4|6|V2|
3|Kleedkamers dames|4|3|V3|
3|Kleedkamers heren|4|3|V3|
3|Gang|5|1.5|V3|
4|Entreehal|4|3|V4|R2
4|Kassa|1|1.5|V4|R3
4|Vergaderzaal|2|3|V4|R4
`)
		p.Bold("A1", "A4:F4")
		q := p.Sheet("Apparatuur")
		q.Put("A1", `
Versterker|Vermogen (W)||Regelaar|Vermogen (W)||Zone|Kabel|Lengte (m)
V1|360||R1|24||1|2x2,5 mm²|140
V2|60||R2|24||2|2x1,5 mm²|90
V3|60||R3|6||3|2x1,5 mm²|75
V4|30||R4|12||4|2x1,5 mm²|50
`)
		q.Bold("A1:I1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("20417", "Zwembad De Rietkraag", "plain list; three small tables side by side on the second sheet")
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|amplifier|control
5|1|Wedstrijdbad|8|15|V1|
6|1|Recreatiebad|6|15|V1|
7|2|Peuterbad|3|6|V2|R1
8|2|Tribune|4|6|V2|
9|3|Kleedkamers dames|4|3|V3|
10|3|Kleedkamers heren|4|3|V3|
11|3|Gang|5|1.5|V3|
12|4|Entreehal|4|3|V4|R2
13|4|Kassa|1|1.5|V4|R3
14|4|Vergaderzaal|2|3|V4|R4`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
V1|360|210
V2|60|42
V3|60|31.5
V4|30|19.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|360|210
V2|60|42
V3|60|31.5
V4|30|19.5`)
		t.Controls("", `control|rated_w|load_w
R1|24|18
R2|24|12
R3|6|1.5
R4|12|6`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
1|140|2.5
2|90|1.5
3|75|1.5
4|50|1.5`)
	}},

	{File: "studiebureau/meetstaat 27 omroep.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Latin1(typed.DOS(`
Bibliotheek Ter Wilgen, dossier B/2014/061;;;;;;;
Meetstaat hoofdstuk 27: omroep 100 V;;;;;;;
;;;;;;;
Post;Omschrijving;Lokaal;Zone;Aftakking;Eenh.;VH;EP
27.1;Versterker V1, 120 W;serverlokaal;1;;st;1;
27.2;Versterker V2, 60 W;serverlokaal;2;;st;1;
27.3;Versterker V3, 60 W;serverlokaal;3;;st;1;
27.10;Inbouwluidspreker;inkomhal;1;6 W;st;4;
27.11;Inbouwluidspreker;uitleenbalie;1;3 W;st;2;
27.12;Opbouwluidspreker;polyvalente zaal;1;10 W;st;4;
27.13;Inbouwluidspreker;leeszaal volwassenen;2;1,5 W;st;12;
27.14;Inbouwluidspreker;stille ruimte;2;0,75 W;st;3;
27.15;Inbouwluidspreker;jeugdafdeling;3;3 W;st;8;
27.16;Inbouwluidspreker;vertelhoek;3;1,5 W;st;2;
27.17;Inbouwluidspreker;personeelslokaal;3;1,5 W;st;1;
27.20;Volumeregelaar 60 W;polyvalente zaal;1;;st;1;
27.21;Volumeregelaar 12 W;vertelhoek;3;;st;1;
27.22;Volumeregelaar 6 W;personeelslokaal;3;;st;1;
27.30;Luidsprekerkabel 2 x 1,5 mm²;alle lokalen;;;m;420;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("B/2014/061", "Bibliotheek Ter Wilgen", "bill of quantities with amplifiers by zone, and volume controls without a name by room")
		t.Speakers("tap_v=100; line_v=100; zone=1; amplifier=V1", `rows|room|count|tap_w|note
8|inkomhal|4|6|
9|uitleenbalie|2|3|
10|polyvalente zaal|4|10|unnamed`)
		t.Speakers("tap_v=100; line_v=100; zone=2; amplifier=V2", `rows|room|count|tap_w
11|leeszaal volwassenen|12|1.5
12|stille ruimte|3|0.75`)
		t.Speakers("tap_v=100; line_v=100; zone=3; amplifier=V3", `rows|room|count|tap_w|note
13|jeugdafdeling|8|3|
14|vertelhoek|2|1.5|unnamed
15|personeelslokaal|1|1.5|unnamed`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
V1|120|70
V2|60|20.25
V3|60|28.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|120|70
V2|60|20.25
V3|60|28.5`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|60|40
|12|3
|6|1.5`)
		t.Left("", `5|amplifier|item of the bill
6|amplifier|item of the bill
7|amplifier|item of the bill
16|control|item of the bill
17|control|item of the bill
18|control|item of the bill
19|cable|item of the bill`)
	}},

	{File: "beheer/museum objectenlijst.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Objecten")
		p.Put("A1", `
Museum Het Getij, objectenlijst omroepinstallatie (100 V)
Uitgang A-2 is versterker A, uitgang 2
||
Code|Verd.|Ruimte|Soort|Stand|Uitgang|Opmerking
LS-001|0|Entree|inbouw|3 W|A-1|
LS-002|0|Entree|inbouw|3 W|A-1|
LS-003|0|Entree|inbouw|3 W|A-1|
LS-004|0|Entree|inbouw|3 W|A-1|achter banier
LS-005|0|Schelpenzaal|opbouw|6 W|A-1|
LS-006|0|Schelpenzaal|opbouw|6 W|A-1|
LS-007|0|Schelpenzaal|opbouw|6 W|A-1|
LS-008|0|Schelpenzaal|opbouw|6 W|A-1|
LS-009|0|Garderobe|inbouw|1,5 W|A-1|
LS-010|0|Garderobe|inbouw|1,5 W|A-1|
LS-011|1|Scheepsmodellen|opbouw|6 W|A-2|
LS-012|1|Scheepsmodellen|opbouw|6 W|A-2|
LS-013|1|Scheepsmodellen|opbouw|6 W|A-2|
LS-014|1|Scheepsmodellen|opbouw|6 W|A-2|
LS-015|1|Educatielokaal|inbouw|3 W|A-2|via regelaar VR-1
LS-016|1|Educatielokaal|inbouw|3 W|A-2|via regelaar VR-1
LS-017|1|Trappenhuis|opbouw|3 W|A-2|
LS-018|2|Depot|opbouw|6 W|B-1|
LS-019|2|Depot|opbouw|6 W|B-1|
LS-020|2|Restauratieatelier|inbouw|3 W|B-1|via regelaar VR-2
LS-021|2|Kantoor|inbouw|1,5 W|B-1|via regelaar VR-3
LS-022|buiten|Binnenplaats|hoorn|15 W|B-2|
LS-023|buiten|Binnenplaats|hoorn|15 W|B-2|vernieuwd 2018
`)
		p.Bold("A1", "A4:G4")
		q := p.Sheet("Rack en regelaars")
		q.Put("A1", `
Versterker|Uitgang|Vermogen|Keuring
A|1|60 W|2019
A|2|60 W|2019
B|1|40 W|2019
B|2|40 W|2019
||
Regelaar|Plaats|Vermogen
VR-1|Educatielokaal, bij deur|12 W
VR-2|Restauratieatelier|6 W
VR-3|Kantoor|6 W
`)
		q.Bold("A1:D1", "A7:C7")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Museum Het Getij", "plain register, a row a loudspeaker; controls in remarks, ratings on a second sheet")
		t.Speakers("sheet=Objecten; tap_v=100; line_v=100; amplifier=A; channel=1", `rows|tag|room|tap_w
5..8|LS-001..|Entree|3
9..12|LS-005..|Schelpenzaal|6
13..14|LS-009..|Garderobe|1.5`)
		t.Speakers("sheet=Objecten; tap_v=100; line_v=100; amplifier=A; channel=2", `rows|tag|room|tap_w|control
15..18|LS-011..|Scheepsmodellen|6|
19..20|LS-015..|Educatielokaal|3|VR-1
21|LS-017|Trappenhuis|3|`)
		t.Speakers("sheet=Objecten; tap_v=100; line_v=100; amplifier=B; channel=1", `rows|tag|room|tap_w|control
22..23|LS-018..|Depot|6|
24|LS-020|Restauratieatelier|3|VR-2
25|LS-021|Kantoor|1.5|VR-3`)
		t.Speakers("sheet=Objecten; tap_v=100; line_v=100; amplifier=B; channel=2", `rows|tag|room|tap_w
26..27|LS-022..|Binnenplaats|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A|1|60|39
A|2|60|33
B|1|40|16.5
B|2|40|30`)
		t.Amplifiers("", `amplifier|load_w
A|72
B|46.5`)
		t.Controls("", `control|rated_w|load_w
VR-1|12|6
VR-2|6|3
VR-3|6|1.5`)
	}},

	{File: "werven/5582 stelplaats.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Luidsprekers")
		p.Put("A1", `
Tramstelplaats Molenakker, werf 5582
Omroep 100 V. Versterker in dispatching: lus 1 = 120 W, lus 2 = 60 W
||
Nr|Plaats|Toestel|Stand (W)|Lus|Volumeregelaar
LS1|Loods spoor 1-2|hoorn|15|1|
LS2|Loods spoor 3-4|hoorn|15|1|
LS3|Loods spoor 5-6|hoorn|15|1|
LS4|Wasstraat|hoorn|20|1|
LS5|Werkplaats|hoorn|10|1|VR1
LS6|Magazijn|opbouwkast|5|2|
LS7|Dispatching|inbouw|2.5|2|VR2
LS8|Bestuurderslokaal|inbouw|2.5|2|VR3
LS9|Bestuurderslokaal|inbouw|2.5|2|VR3
LS10|Gang bureaus|inbouw|2.5|2|
LS11|Poort buiten|hoorn|15|2|
||
VR1 = 20 W, VR2 = 5 W, VR3 = 10 W
`)
		p.Bold("A4:F4")
		q := p.Sheet("Kabels")
		q.Put("A1", `
Kabel|Van|Naar|Sectie|Lengte
K1|rack|LS1|2 x 2,5 mm²|48 m
K2|LS1|LS2|2 x 2,5 mm²|22 m
K3|LS2|LS3|2 x 2,5 mm²|22 m
K4|LS3|LS4|2 x 2,5 mm²|35 m
K5|LS3|VR1|2 x 1,5 mm²|18 m
K6|VR1|LS5|2 x 1,5 mm²|9 m
K7|rack|LS6|2 x 1,5 mm²|40 m
K8|rack|VR2|2 x 1,5 mm²|4 m
K9|VR2|LS7|2 x 1,5 mm²|5 m
K10|rack|VR3|2 x 1,5 mm²|16 m
K11|VR3|LS8|2 x 1,5 mm²|6 m
K12|LS8|LS9|2 x 1,5 mm²|4 m
K13|rack|LS10|2 x 1,5 mm²|12 m
K14|LS6|LS11|2 x 1,5 mm²|55 m
`)
		q.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5582", "Tramstelplaats Molenakker", "list and cable list from-to; one amplifier without a name whose two loops are rated in a sentence, controls rated in a line below")
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; channel=1", `rows|tag|room|tap_w|control
5|LS1|Loods spoor 1-2|15|
6|LS2|Loods spoor 3-4|15|
7|LS3|Loods spoor 5-6|15|
8|LS4|Wasstraat|20|
9|LS5|Werkplaats|10|VR1`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; channel=2", `rows|tag|room|tap_w|control
10|LS6|Magazijn|5|
11|LS7|Dispatching|2.5|VR2
12|LS8|Bestuurderslokaal|2.5|VR3
13|LS9|Bestuurderslokaal|2.5|VR3
14|LS10|Gang bureaus|2.5|
15|LS11|Poort buiten|15|`)
		t.Channels("line_v=100", `channel|rated_w|load_w
1|120|75
2|60|30`)
		t.Amplifiers("", `amplifier|load_w
|105`)
		t.Controls("", `control|rated_w|load_w
VR1|20|10
VR2|5|2.5
VR3|10|5`)
		t.Lines("", `line|from|to|length_m|area_mm2
K1|rack|LS1|48|2.5
K2|LS1|LS2|22|2.5
K3|LS2|LS3|22|2.5
K4|LS3|LS4|35|2.5
K5|LS3|VR1|18|1.5
K6|VR1|LS5|9|1.5
K7|rack|LS6|40|1.5
K8|rack|VR2|4|1.5
K9|VR2|LS7|5|1.5
K10|rack|VR3|16|1.5
K11|VR3|LS8|6|1.5
K12|LS8|LS9|4|1.5
K13|rack|LS10|12|1.5
K14|LS6|LS11|55|1.5`)
	}},

	{File: "tekenkamer/88-214 rev C stijgleiding.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Kelder")
		p.Put("A1", `
Schouwburg De Linde, tek. 88-214, rev. C
Kelder, groep 1
||
Tag|Ruimte|Aansluiting (W)|Opm.
K1|Toneelkelder|6|
K2|Toneelkelder|6|
K3|Decoropslag|10|
K4|Orkestbak|3|vervalt, rev. C
K5|Gang kleedkamers|3|
`)
		p.Strike("A8:D8")
		p.Bold("A4:D4")
		q := p.Sheet("Begane grond")
		q.Put("A1", `
Schouwburg De Linde, tek. 88-214, rev. C
Begane grond, groep 2
||
Tag|Ruimte|Aansluiting (W)|Opm.
B1|Foyer|6|
B2|Foyer|6|
B3|Foyer|6|
B4|Garderobe|3|
B5|Kassa|1.5|was 3 W, gewijzigd rev. C
B6|Toneel links|6|
B7|Toneel rechts|6|
`)
		q.Bold("A4:D4")
		r := p.Sheet("Verdieping")
		r.Put("A1", `
Schouwburg De Linde, tek. 88-214, rev. C
Verdieping, groep 3
||
Tag|Ruimte|Aansluiting (W)|Opm.
V1|Balkonfoyer|6|
V2|Balkonfoyer|6|nieuw, rev. C
V3|Regie|3|
V4|Kleedkamer 21|1.5|
V5|Kleedkamer 22|1.5|
V6|Kleedkamer 23|1.5|
`)
		r.Bold("A4:D4")
		s := p.Sheet("Stijgleiding")
		s.Put("A1", `
Stijgleiding omroep 100 V
||
Groep|Versterker|Vermogen (W)|Kabel vanaf rack|Lengte (m)
1|VS1|60|2 x 1,5 mm²|30
2|VS2|120|2 x 2,5 mm²|45
3|VS3|60|2 x 1,5 mm²|65
||
Regelaar|Vermogen (W)|Geldt voor
R2|50|B1 t/m B3
R3|12|V4 t/m V6
R4|6|V3
`)
		s.Bold("A1", "A3:E3", "A8:C8")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("88-214", "Schouwburg De Linde", "a sheet a floor with its group in the title; amplifiers by group and controls by ranges of tags on another sheet; changes of revision C")
		t.Revision("C", false)
		t.Speakers("sheet=Kelder; tap_v=100; line_v=100; amplifier=VS1", `rows|tag|room|tap_w
5|K1|Toneelkelder|6
6|K2|Toneelkelder|6
7|K3|Decoropslag|10
9|K5|Gang kleedkamers|3`)
		t.Speakers("sheet=Begane grond; tap_v=100; line_v=100; amplifier=VS2", `rows|tag|room|tap_w|control
5|B1|Foyer|6|R2
6|B2|Foyer|6|R2
7|B3|Foyer|6|R2
8|B4|Garderobe|3|
9|B5|Kassa|1.5|
10|B6|Toneel links|6|
11|B7|Toneel rechts|6|`)
		t.Speakers("sheet=Verdieping; tap_v=100; line_v=100; amplifier=VS3", `rows|tag|room|tap_w|control
5|V1|Balkonfoyer|6|
6|V2|Balkonfoyer|6|
7|V3|Regie|3|R4
8|V4|Kleedkamer 21|1.5|R3
9|V5|Kleedkamer 22|1.5|R3
10|V6|Kleedkamer 23|1.5|R3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
VS1|60|25
VS2|120|34.5
VS3|60|19.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
VS1|60|25
VS2|120|34.5
VS3|60|19.5`)
		t.Controls("", `control|rated_w|load_w
R2|50|18
R3|12|4.5
R4|6|3`)
		t.Lines("from=rack; note=home run", `line|length_m|area_mm2
1|30|1.5
2|45|2.5
3|65|1.5`)
		t.Left("Kelder", `8|removed|struck out, dropped in revision C`)
	}},

	{File: "schoolbestuur/ventilatie lokalen.csv", Kind: "not-a-schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Basisschool De Eikelhof;;;;;;
Inventaris ventilatie 2022;;;;;;
Zone;Lokaal;Aantal units;Vermogen per unit (W);Stand;Kanaal;Regelaar
Onderbouw;Lokaal 1;1;85;2;K1;R1
Onderbouw;Lokaal 2;1;85;2;K1;R2
Onderbouw;Speellokaal;2;85;3;K2;R3
Bovenbouw;Lokaal 5;1;85;2;K3;R4
Bovenbouw;Lokaal 6;1;85;2;K3;R5
Bovenbouw;Aula;3;120;3;K4;R6
Algemeen;Toiletten;4;25;1;K5;
Algemeen;Berging;1;25;1;K5;
Totaal;;14;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Basisschool De Eikelhof", "ventilation units with zones, watts, positions, channels (ducts) and controls; no loudspeaker")
	}},
}
