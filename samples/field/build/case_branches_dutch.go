package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// branchesDutch are branch offices of the same firm, in Dutch.
var branchesDutch = []typed.Case{
	// as-built list; a row struck out at the last change
	{File: "branches/vestiging Zuid/Luidsprekerlijst sporthal Veenrade as-built.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Luidsprekers")
		p.Put("A1", `
Sporthal Veenrade|||||Projectnr. 60218
Luidsprekerlijst as-built, omroep 100 V|||||
||
Nr.|Ruimte|Type|Aant.|Aftakking|Versterker|Volumeregelaar
1|Zaal 1|klankzuil|4|20 W|VS1|
2|Zaal 2|klankzuil|4|20 W|VS1|
3|Zaal 3|klankzuil|2|20 W|VS1|
4|Tribune|opbouw|6|6 W|VS2|
5|Entree|inbouw|3|3 W|VS2|
6|Gang kleedkamers|inbouw|4|3 W|VS2|
7|Kleedkamers 1 t/m 8|inbouw|8|1,5 W|VS2|
8|Beheerder|inbouw|1|1,5 W|VS2|VR1
9|Vergaderkamer|inbouw|2|3 W|VS2|VR2
10|Berging|opbouw|1|6 W|VS2|
11|Fietsenstalling|hoorn|1|10 W|VS2|
||
VS1 240 W, VS2 120 W. VR1 en VR2 zijn 12 W.
Doorgehaald = vervallen bij verbouwing 2013
`)
		p.Bold("A1", "A4:G4")
		p.Strike("A14:G14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("60218", "Sporthal Veenrade", "plain as-built list; ratings in a sentence at the foot; one row struck out, and the foot says what that means")
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; amplifier=VS1; tap_w=20", `rows|room|count
5|Zaal 1|4
6|Zaal 2|4
7|Zaal 3|2`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; amplifier=VS2", `rows|room|count|tap_w|control
8|Tribune|6|6|
9|Entree|3|3|
10|Gang kleedkamers|4|3|
11|Kleedkamers 1 t/m 8|8|1.5|
12|Beheerder|1|1.5|VR1
13|Vergaderkamer|2|3|VR2
15|Fietsenstalling|1|10|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
VS1|240|200
VS2|120|86.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
VS1|240|200
VS2|120|86.5`)
		t.Controls("", `control|rated_w|load_w
VR1|12|1.5
VR2|12|6`)
		t.Left("Luidsprekers", `14|removed|struck out, dropped at the rebuilding`)
	}},

	// group list and cables, two sheets
	{File: "branches/vestiging Noord/Groepenlijst + kabels zwembad De Wetering.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Groepen")
		p.Put("A1", `
Zwembad De Wetering, omroepinstallatie||||||
Werkorder 44-1187||||||
||
Groep|Omschrijving|Luidsprekers (st.)|Vermogen per st. (W)|Groep totaal (W)|Versterker/uitgang|Vermogen uitgang (W)
G1|Wedstrijdbad|8|15|120|V1/1|150
G2|Recreatiebad|6|10|60|V1/2|150
G3|Kleedruimte|10|3|30|V2/1|60
G4|Receptie en hal|5|3|15|V2/2|60
G5|Ligweide|4|15|60|V3/1|120
G6|Technische ruimte|2|6|12|V3/2|120
|Totaal|35||297||
||
Alle groepen 100 V. G4 via volumeregelaar VR-4 (24 W).
`)
		p.Bold("A1", "A4:G4", "B11:G11")
		q := p.Sheet("Kabels")
		q.Put("A1", `
Kabelnr.|Van|Naar groep|Doorsnede|Lengte
K01|V1/1|G1|2x2,5 mm2|85 m
K02|V1/2|G2|2x2,5 mm2|60 m
K03|V2/1|G3|2x1,5 mm2|45 m
K04|V2/2|G4|2x1,5 mm2|25 m
K05|V3/1|G5|2x4 mm2|140 m
K06|V3/2|G6|2x1,5 mm2|12 m
`)
		q.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("44-1187", "Zwembad De Wetering", "plain group list, a row a group; voltage and the one control in a sentence below; home runs on a second sheet")
		t.Speakers("sheet=Groepen; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|amplifier|channel|control
5|G1|Wedstrijdbad|8|15|V1|1|
6|G2|Recreatiebad|6|10|V1|2|
7|G3|Kleedruimte|10|3|V2|1|
8|G4|Receptie en hal|5|3|V2|2|VR-4
9|G5|Ligweide|4|15|V3|1|
10|G6|Technische ruimte|2|6|V3|2|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|150|120
V1|2|150|60
V2|1|60|30
V2|2|60|15
V3|1|120|60
V3|2|120|12`)
		t.Amplifiers("", `amplifier|load_w
V1|180
V2|45
V3|72`)
		t.Controls("", `control|zone|rated_w|load_w
VR-4|G4|24|15`)
		t.Lines("note=home run", `line|zone|from|to|length_m|area_mm2
K01|G1|V1/1|G1|85|2.5
K02|G2|V1/2|G2|60|2.5
K03|G3|V2/1|G3|45|1.5
K04|G4|V2/2|G4|25|1.5
K05|G5|V3/1|G5|140|4
K06|G6|V3/2|G6|12|1.5`)
		t.Left("Groepen", `11|total|sums`)
	}},

	// an export of the facility system, a row a loudspeaker, attributes in capitals
	{File: "branches/vestiging Noord/FMIS_export_elementen_4521.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
OBJECT;ELEMENTNR;NLSFB;OMSCHRIJVING;BOUWLAAG;RUIMTENR;RUIMTENAAM;AANTAL;AFTAKKING_W;LIJN_V;VERSTERKER;REGELAAR;REGELAAR_W;STATUS
Stadsarchief Oudmeer;ELA-001;64.1;Plafondluidspreker;BG;0.01;Hal;3;6;100;OV-1;;;actief
Stadsarchief Oudmeer;ELA-002;64.1;Plafondluidspreker;BG;0.03;Studiezaal;6;3;100;OV-1;REG-01;36;actief
Stadsarchief Oudmeer;ELA-003;64.1;Plafondluidspreker;BG;0.04;Balie;1;1,5;100;OV-1;REG-02;6;actief
Stadsarchief Oudmeer;ELA-004;64.1;Wandluidspreker;BG;0.09;Expeditie;2;6;100;OV-1;;;actief
Stadsarchief Oudmeer;ELA-005;64.1;Plafondluidspreker;1e;1.01;Gang;4;3;100;OV-2;;;actief
Stadsarchief Oudmeer;ELA-006;64.1;Plafondluidspreker;1e;1.02;Kantoor;2;1,5;100;OV-2;REG-03;12;actief
Stadsarchief Oudmeer;ELA-007;64.1;Plafondluidspreker;1e;1.03;Restauratieatelier;3;3;100;OV-2;REG-04;24;actief
Stadsarchief Oudmeer;ELA-008;64.1;Wandluidspreker;-1;K.01;Depot A;4;6;100;OV-2;;;actief
Stadsarchief Oudmeer;ELA-009;64.1;Wandluidspreker;-1;K.02;Depot B;4;6;100;OV-2;;;verwijderd
Stadsarchief Oudmeer;ELA-010;64.1;Hoornluidspreker;BG;;Binnenplaats;1;15;100;OV-1;;;actief
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Stadsarchief Oudmeer", "plain export; ratings of the controls in the loudspeaker rows, none of the amplifiers; one row removed")
		t.Speakers("tap_v=100; line_v=100; amplifier=OV-1", `rows|tag|room|count|tap_w|control
2|ELA-001|Hal|3|6|
3|ELA-002|Studiezaal|6|3|REG-01
4|ELA-003|Balie|1|1.5|REG-02
5|ELA-004|Expeditie|2|6|
11|ELA-010|Binnenplaats|1|15|`)
		t.Speakers("tap_v=100; line_v=100; amplifier=OV-2", `rows|tag|room|count|tap_w|control
6|ELA-005|Gang|4|3|
7|ELA-006|Kantoor|2|1.5|REG-03
8|ELA-007|Restauratieatelier|3|3|REG-04
9|ELA-008|Depot A|4|6|`)
		t.Channels("line_v=100", `amplifier|load_w
OV-1|64.5
OV-2|48`)
		t.Amplifiers("", `amplifier|load_w
OV-1|64.5
OV-2|48`)
		t.Controls("", `control|rated_w|load_w
REG-01|36|18
REG-02|6|1.5
REG-03|12|3
REG-04|24|9`)
		t.Left("", `10|removed|verwijderd`)
	}},

	// fire detectors by groups, from the same archive
	{File: "branches/vestiging Zuid/Melderlijst museum.csv", Kind: "not-a-schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Brandmeldinstallatie Museum Lakenstraat;;;;;
Melderlijst per groep, jaarlijkse controle;;;;;
Groep;Melder;Ruimte;Type;Adres;Resultaat
1;1/1;Hal;rook, optisch;001;goed
1;1/2;Kassa;rook, optisch;002;goed
1;1/3;Garderobe;rook, optisch;003;vervuild, vervangen
2;2/1;Zaal 1;rook, optisch;011;goed
2;2/2;Zaal 2;rook, optisch;012;goed
2;2/3;Zaal 3;rook, optisch;013;goed
3;3/1;Depot;thermisch;021;goed
3;3/2;Werkplaats;thermisch;022;goed
4;4/1;Uitgang achter;handmelder;031;goed
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Museum Lakenstraat", "fire detectors by groups; no loudspeaker, no watts")
	}},
}
