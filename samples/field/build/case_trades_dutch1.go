package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Four people who write Dutch: a rink manager, a Belgian consultant, an engineer on Curaçao, a drawing office.
var tradesDutch1 = []typed.Case{

	// Netherlands: the manager of an ice rink keeps his own overview of the groups, controls' ratings underneath.
	{File: "beheer/Noorderkolk omroep groepen.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Groepen")
		p.Put("A1", `
Omroepinstallatie IJshal Noorderkolk, 100 V
||
Groep|Ruimte|Aantal|Soort|W per stuk|W totaal|Versterker|Regelaar
1|IJsvloer, lange zijde oost|5|hoorn|10|50|V1|
1|IJsvloer, lange zijde west|5|hoorn|10|50|V1|
2|Tribune|8|opbouw|6|48|V2|VR-A
2|Persruimte|1|inbouw|3|3|V2|VR-B
3|Hal|4|inbouw|6|24|V3|
3|Schaatsverhuur|3|inbouw|3|9|V3|VR-C
3|Kassa|1|inbouw|1,5|1,5|V3|VR-D
4|Kleedkamers 1 t/m 6|6|inbouw|3|18|V4|
4|Gang kleedkamers|4|inbouw|3|12|V4|
4|EHBO|1|inbouw|1,5|1,5|V4|
|Totaal|38|||217||
||
Versterkers: V1 240 W, V2 120 W, V3 60 W, V4 60 W
Regelaars: VR-A 60 W, VR-B 5 W, VR-C 12 W, VR-D 5 W
`)
		p.Bold("A1", "A3:H3", "B14:F14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "IJshal Noorderkolk", "plain; ratings of all amplifiers and all controls in two lines of text below")
		t.Speakers("sheet=Groepen; tap_v=100; line_v=100; zone=1; amplifier=V1", `rows|room|count|tap_w
4|IJsvloer, lange zijde oost|5|10
5|IJsvloer, lange zijde west|5|10`)
		t.Speakers("sheet=Groepen; tap_v=100; line_v=100; zone=2; amplifier=V2", `rows|room|count|tap_w|control
6|Tribune|8|6|VR-A
7|Persruimte|1|3|VR-B`)
		t.Speakers("sheet=Groepen; tap_v=100; line_v=100; zone=3; amplifier=V3", `rows|room|count|tap_w|control
8|Hal|4|6|
9|Schaatsverhuur|3|3|VR-C
10|Kassa|1|1.5|VR-D`)
		t.Speakers("sheet=Groepen; tap_v=100; line_v=100; zone=4; amplifier=V4", `rows|room|count|tap_w
11|Kleedkamers 1 t/m 6|6|3
12|Gang kleedkamers|4|3
13|EHBO|1|1.5`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
V1|240|100
V2|120|51
V3|60|34.5
V4|60|31.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|240|100
V2|120|51
V3|60|34.5
V4|60|31.5`)
		t.Controls("", `control|zone|rated_w|load_w
VR-A|2|60|48
VR-B|2|5|3
VR-C|3|12|9
VR-D|3|5|1.5`)
		t.Left("Groepen", `14|total|sums`)
	}},

	// Belgium: a consultant's measuring statement for a swimming pool, by room number, circuits on a second sheet.
	{File: "studie/2016.118 meetstaat geluid.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Lokalen")
		p.Put("A1", `
Dossier 2016.118|Gemeentelijk zwembad De Zilverbeek
Meetstaat luidsprekers, 100V-lijnen
||
Kring|Lokaal|Benaming|Type|Aantal|Verm./st.|Verm. tot.
K1|'0.20|Zwemhal|IP66 projector|8|15 W|120 W
K1|'0.21|Instructiebad|IP66 projector|4|10 W|40 W
K2|'0.01|Inkomhal|plafond|6|3 W|18 W
K2|'0.02|Onthaal|plafond|1|1,5 W|1,5 W
K2|'0.05|Vergaderzaal|plafond|4|3 W|12 W
K3|'0.11|Kleedcabines|plafond|12|3 W|36 W
K3|'0.12|Groepskleedkamer jongens|plafond|2|3 W|6 W
K3|'0.13|Groepskleedkamer meisjes|plafond|2|3 W|6 W
K4|'-1.01|Technische ruimte|wand|3|6 W|18 W
K4|'-1.02|Filterkelder|wand|2|6 W|12 W
||Algemeen totaal||44||269,5 W
`)
		p.Bold("A1:B1", "A4:G4", "C15:G15")
		q := p.Sheet("Kringen")
		q.Put("A1", `
Kring|Versterker|Uitgang|Vermogen uitgang|Kabel|Lengte
K1|VA|1|240 W|2x2,5 mm²|130 m
K2|VB|1|60 W|2x1,5 mm²|55 m
K3|VB|2|60 W|2x1,5 mm²|80 m
K4|VC|1|60 W|2x1,5 mm²|65 m
||
Volumeregelaars
Merkteken|Lokaal|Vermogen
R01|0.02 Onthaal|6 W
R02|0.05 Vergaderzaal|20 W
`)
		q.Bold("A1:F1", "A7", "A8:C8")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2016.118", "Gemeentelijk zwembad De Zilverbeek", "plain; circuits and controls by room number on the second sheet, two tables under each other there")
		t.Speakers("sheet=Lokalen; tap_v=100; line_v=100; amplifier=VA; channel=1", `rows|room|count|tap_w
5|Zwemhal|8|15
6|Instructiebad|4|10`)
		t.Speakers("sheet=Lokalen; tap_v=100; line_v=100; amplifier=VB; channel=1", `rows|room|count|tap_w|control
7|Inkomhal|6|3|
8|Onthaal|1|1.5|R01
9|Vergaderzaal|4|3|R02`)
		t.Speakers("sheet=Lokalen; tap_v=100; line_v=100; amplifier=VB; channel=2", `rows|room|count|tap_w
10|Kleedcabines|12|3
11|Groepskleedkamer jongens|2|3
12|Groepskleedkamer meisjes|2|3`)
		t.Speakers("sheet=Lokalen; tap_v=100; line_v=100; amplifier=VC; channel=1", `rows|room|count|tap_w
13|Technische ruimte|3|6
14|Filterkelder|2|6`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
VA|1|240|160
VB|1|60|31.5
VB|2|60|48
VC|1|60|30`)
		t.Amplifiers("", `amplifier|load_w
VA|160
VB|79.5
VC|30`)
		t.Controls("", `control|rated_w|load_w
R01|6|1.5
R02|20|12`)
		t.Lines("note=one length a circuit", `line|length_m|area_mm2
K1|130|2.5
K2|55|1.5
K3|80|1.5
K4|65|1.5`)
		t.Left("Lokalen", `15|total|sums`)
	}},

	// Curaçao: the project engineer tests a library's 70 V lines: amplifiers as titles, home runs in feet with their gauge in one cell.
	{File: "testrapporten/1107 bibliotheek Seru Blanku.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Test 70V")
		p.Put("A1", `
Project 1107, Openbare Bibliotheek Seru Blanku
Testrapport omroep 70 V
||
Ruimte|Speakers|Tap|Totaal|Gemeten ohm|Volume|Home run
AMP 1 (120 W)
Leeszaal begane grond|8|5 W|40 W|127|VC-1|210 ft 16 AWG
Jeugdafdeling|4|5 W|20 W|252|VC-2|145 ft 16 AWG
Balie|2|2,5 W|5 W|990||60 ft 18 AWG
AMP 2 (60 W)
Studiezaal verdieping|6|2,5 W|15 W|335|VC-3|260 ft 16 AWG
Kantoren|4|1,25 W|5 W|1010|VC-4|230 ft 18 AWG
Gang verdieping|4|2,5 W|10 W|505||240 ft 16 AWG
AMP 3 (60 W)
Parkeerterrein|2|15 W|30 W|170||410 ft 14 AWG
Laadperron|1|15 W|15 W|336||180 ft 14 AWG
||
VC-1 is 50 W, VC-2 en VC-3 zijn 25 W, VC-4 is 10 W
Alle lijnen goedgekeurd.
`)
		p.Bold("A1", "A4:G4", "A5", "A9", "A13")
		p.Merge("A5:G5", "A9:G9", "A13:G13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("1107", "Openbare Bibliotheek Seru Blanku", "amplifiers with their rating as titles; measured ohms beside the watts; feet and gauge in one cell; controls' ratings in a sentence")
		t.Speakers("sheet=Test 70V; tap_v=70.7; line_v=70.7; amplifier=AMP 1", `rows|room|count|tap_w|control
6|Leeszaal begane grond|8|5|VC-1
7|Jeugdafdeling|4|5|VC-2
8|Balie|2|2.5|`)
		t.Speakers("sheet=Test 70V; tap_v=70.7; line_v=70.7; amplifier=AMP 2", `rows|room|count|tap_w|control
10|Studiezaal verdieping|6|2.5|VC-3
11|Kantoren|4|1.25|VC-4
12|Gang verdieping|4|2.5|`)
		t.Speakers("sheet=Test 70V; tap_v=70.7; line_v=70.7; amplifier=AMP 3", `rows|room|count|tap_w
14|Parkeerterrein|2|15
15|Laadperron|1|15`)
		t.Channels("line_v=70.7", `amplifier|rated_w|load_w
AMP 1|120|65
AMP 2|60|30
AMP 3|60|45`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP 1|120|65
AMP 2|60|30
AMP 3|60|45`)
		t.Controls("", `control|rated_w|load_w
VC-1|50|40
VC-2|25|20
VC-3|25|15
VC-4|10|5`)
		t.Lines("note=home run", `to|length_m|area_mm2
Leeszaal begane grond|64.008|1.309
Jeugdafdeling|44.196|1.309
Balie|18.288|0.823
Studiezaal verdieping|79.248|1.309
Kantoren|70.104|0.823
Gang verdieping|73.152|1.309
Parkeerterrein|124.968|2.081
Laadperron|54.864|2.081`)
	}},

	// Netherlands: a drawing office sets its table of groups upright beside the plan, a column a group.
	{File: "tekenkamer/21.044 groepentabel.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Blad 3")
		p.Put("A1", `
Natuurmuseum Duinrand|||||werk 21.044
Luidsprekergroepen 100 V
||
Groep|G1|G2|G3|G4|G5|G6|G7|G8
Ruimte|Entree|Zaal Zee|Zaal Duin|Educatie|Magazijn|Gang|Voorplein|Depot
Aantal|4|8|6|4|3|6|2|4
Uitvoering|inbouw|opbouw|opbouw|inbouw|hoorn|inbouw|hoorn|opbouw
Aansluitwaarde p/st (W)|3|6|6|3|10|1.5|15|6
Totaal (W)|12|48|36|12|30|9|30|24
Versterker|V1|V1|V1|V2|V2|V2|V3|V3
Uitgang|1|2|3|1|2|3|1|2
Vermogen uitgang (W)|60|60|60|60|60|60|120|120
Volumeregelaar|VR1|||VR2||||
Belastbaarheid regelaar (W)|20|||20||||
Kabel (mm²)|2x1,5|2x2,5|2x2,5|2x1,5|2x1,5|2x1,5|2x2,5|
Lengte (m)|25|60|75|40|55|35|110|
Opmerking||||||||2e fase, nog niet gemonteerd
`)
		p.Bold("A1", "A4:I4", "A5:A17")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("21.044", "Natuurmuseum Duinrand", "transposed: a column a group, one group of a later phase by its remark")
		t.Speakers("sheet=Blad 3; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|amplifier|channel|control
B|G1|Entree|4|3|V1|1|VR1
C|G2|Zaal Zee|8|6|V1|2|
D|G3|Zaal Duin|6|6|V1|3|
E|G4|Educatie|4|3|V2|1|VR2
F|G5|Magazijn|3|10|V2|2|
G|G6|Gang|6|1.5|V2|3|
H|G7|Voorplein|2|15|V3|1|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|60|12
V1|2|60|48
V1|3|60|36
V2|1|60|12
V2|2|60|30
V2|3|60|9
V3|1|120|30
V3|2|120|0`)
		t.Amplifiers("", `amplifier|load_w
V1|96
V2|51
V3|30`)
		t.Controls("", `control|zone|rated_w|load_w
VR1|G1|20|12
VR2|G4|20|12`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
G1|25|1.5
G2|60|2.5
G3|75|2.5
G4|40|1.5
G5|55|1.5
G6|35|1.5
G7|110|2.5`)
		t.Left("Blad 3", `I|future|second phase, not yet fitted`)
	}},
}
