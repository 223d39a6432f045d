package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A Canadian contractor: feet, gauge and 70 V, in English and in French.
var canadian = []typed.Case{
	{File: "birch narrows/paging rink.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Paging")
		p.Put("A1", `
Birch Narrows Ice Rink|||||Job: 2215
70 V paging|||||Rev: 1
||
Zone|Location|Speaker|Qty|Tap (W)|Total (W)|Amp|Ch|Home run (ft)|Wire (AWG)|VC|VC rating (W)
1|Ice, north boards|HRN-30|5|16|80|AMP1|1|260|14
2|Ice, south boards|HRN-30|5|16|80|AMP1|1|340|14
3|Main lobby|CLG-8|8|4|32|AMP1|2|95|16|VC-1|50
4|Ticket window|CLG-8|1|1|1|AMP1|2|80|18|VC-2|10
5|Skate rental|CLG-8|4|4|16|AMP1|2|150|16|VC-3|35
6|Dressing room 1|CLG-8|2|2|4|AMP2|1|175|18
7|Dressing room 2|CLG-8|2|2|4|AMP2|1|190|18
8|Dressing room 3|CLG-8|2|2|4|AMP2|1|205|18
9|Referees|CLG-8|1|1|1|AMP2|1|220|18|VC-4|10
10|Hallway|WBX-6|4|4|16|AMP2|1|180|16
11|Compressor room|HRN-30|1|16|16|AMP2|2|310|16
12|Parking lot|HRN-30|3|16|48|AMP2|2|480|12
||
Amp|Channels|Watts per channel
AMP1|2|250
AMP2|2|125
`)
		p.Bold("A1", "A4:L4", "A18:C18")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2215", "Birch Narrows Ice Rink", "a home run in feet and gauge on each row; amplifiers below")
		t.Revision("1", false)
		t.Speakers("sheet=Paging; tap_v=70.7; line_v=70.7", `rows|zone|room|model|count|tap_w|amplifier|channel|control
5|1|Ice, north boards|HRN-30|5|16|AMP1|1|
6|2|Ice, south boards|HRN-30|5|16|AMP1|1|
7|3|Main lobby|CLG-8|8|4|AMP1|2|VC-1
8|4|Ticket window|CLG-8|1|1|AMP1|2|VC-2
9|5|Skate rental|CLG-8|4|4|AMP1|2|VC-3
10|6|Dressing room 1|CLG-8|2|2|AMP2|1|
11|7|Dressing room 2|CLG-8|2|2|AMP2|1|
12|8|Dressing room 3|CLG-8|2|2|AMP2|1|
13|9|Referees|CLG-8|1|1|AMP2|1|VC-4
14|10|Hallway|WBX-6|4|4|AMP2|1|
15|11|Compressor room|HRN-30|1|16|AMP2|2|
16|12|Parking lot|HRN-30|3|16|AMP2|2|`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
AMP1|1|250|160
AMP1|2|250|49
AMP2|1|125|29
AMP2|2|125|64`)
		t.Amplifiers("", `amplifier|load_w
AMP1|209
AMP2|93`)
		t.Controls("", `control|zone|rated_w|load_w
VC-1|3|50|32
VC-2|4|10|1
VC-3|5|35|16
VC-4|9|10|1`)
		t.Lines("note=home run", `zone|length_m|area_mm2
1|79.248|2.0809
2|103.632|2.0809
3|28.956|1.3087
4|24.384|0.8230
5|45.72|1.3087
6|53.34|0.8230
7|57.912|0.8230
8|62.484|0.8230
9|67.056|0.8230
10|54.864|1.3087
11|94.488|1.3087
12|146.304|3.3088`)
	}},

	{File: "birch narrows/patinoire aux Aulnes.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Patinoire du lac aux Aulnes;;;;;;;;
Dossier 2231;;;;;;;;
Ligne 70 V;;;;;;;;
;;;;;;;;
Zone;Endroit;Haut-parleur;Quantité;Prise (W);Amplificateur;Sortie;Contrôle de volume;Remarque
1;Glace, côté estrade;porte-voix;4;15;A1;1;;
1;Glace, côté bancs;porte-voix;4;15;A1;1;;
2;Hall;plafond;6;4;A1;2;CV1;
2;Billetterie;plafond;1;1;A1;2;CV2;
2;Location de patins;plafond;3;4;A1;2;CV3;
3;Vestiaire 1;plafond;2;2;A1;2;;
3;Vestiaire 2;plafond;2;2;A1;2;;
3;Vestiaire 3;plafond;2;2;A1;2;;à venir, pas encore posé
4;Stationnement;porte-voix;2;15;A1;1;;
;;;;;;;;
A1: deux sorties de 200 W;;;;;;;;
CV1: 35 W;;;;;;;;
CV2: 10 W;;;;;;;;
CV3: 35 W;;;;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("2231", "Patinoire du lac aux Aulnes", "Canadian French; ratings in lines below; one row is still to come")
		t.Speakers("tap_v=70.7; line_v=70.7; amplifier=A1", `rows|zone|room|count|tap_w|channel|control
6|1|Glace, côté estrade|4|15|1|
7|1|Glace, côté bancs|4|15|1|
8|2|Hall|6|4|2|CV1
9|2|Billetterie|1|1|2|CV2
10|2|Location de patins|3|4|2|CV3
11|3|Vestiaire 1|2|2|2|
12|3|Vestiaire 2|2|2|2|
14|4|Stationnement|2|15|1|`)
		t.Speakers("tap_v=70.7; line_v=70.7; amplifier=A1; status=future", `rows|zone|room|count|tap_w|channel
13|3|Vestiaire 3|2|2|2`)
		t.Channels("line_v=70.7; rated_w=200", `amplifier|channel|load_w
A1|1|150
A1|2|45`)
		t.Amplifiers("", `amplifier|load_w
A1|195`)
		t.Controls("", `control|zone|rated_w|load_w
CV1|2|35|24
CV2|2|10|1
CV3|2|35|12`)
	}},
}

// A consultant issues a schedule twice.
var twoRevisions = []typed.Case{
	{File: "revisions/WH-510 PA schedule rev A.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Schedule")
		p.Put("A1", `
Project|Westholme Planetarium
Project number|WH-510
Revision|A
System|100 V line public address
||
Ref|Area|Type|Quantity|Tap setting (W)|Amplifier channel|Volume control|Remarks
1|Foyer|C1|6|3|AMP1/1|VC1
2|Cloakroom|C1|2|1.5|AMP1/1
3|Ticket desk|C1|1|1.5|AMP1/1|VC2
4|Gallery north|C1|6|3|AMP1/2|VC3
5|Gallery south|C1|6|3|AMP1/2|VC3
6|Dome perimeter|W1|8|6|AMP2/1
7|Dome entrance|C1|2|3|AMP2/1
8|Workshop|H1|1|15|AMP2/2
9|Delivery yard|H1|2|15|AMP2/2
10|Meeting room|C1|4|3|AMP1/1|VC4
`)
		p.Bold("A1:A4", "A6:H6")
		consultantSheets(p, "60")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("WH-510", "Westholme Planetarium", "first issue of two; amplifier and channel in one cell")
		t.Revision("A", true)
		t.Speakers("sheet=Schedule; tap_v=100; line_v=100", `rows|tag|room|model|count|tap_w|amplifier|channel|control
7|1|Foyer|C1|6|3|AMP1|1|VC1
8|2|Cloakroom|C1|2|1.5|AMP1|1|
9|3|Ticket desk|C1|1|1.5|AMP1|1|VC2
10|4|Gallery north|C1|6|3|AMP1|2|VC3
11|5|Gallery south|C1|6|3|AMP1|2|VC3
12|6|Dome perimeter|W1|8|6|AMP2|1|
13|7|Dome entrance|C1|2|3|AMP2|1|
14|8|Workshop|H1|1|15|AMP2|2|
15|9|Delivery yard|H1|2|15|AMP2|2|
16|10|Meeting room|C1|4|3|AMP1|1|VC4`)
		t.Channels("line_v=100; rated_w=60", `amplifier|channel|load_w
AMP1|1|34.5
AMP1|2|36
AMP2|1|54
AMP2|2|45`)
		t.Amplifiers("", `amplifier|load_w
AMP1|70.5
AMP2|99`)
		t.Controls("", `control|rated_w|load_w
VC1|20|18
VC2|6|1.5
VC3|36|36
VC4|20|12`)
	}},

	{File: "revisions/WH-510 PA schedule rev B.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Schedule")
		p.Put("A1", `
Project|Westholme Planetarium
Project number|WH-510
Revision|B
System|100 V line public address
||
Ref|Area|Type|Quantity|Tap setting (W)|Amplifier channel|Volume control|Remarks
1|Foyer|C1|6|3|AMP1/1|VC1
2|Cloakroom|C1|2|1.5|AMP1/1
3|Ticket desk|C1|1|1.5|AMP1/1|VC2
4|Gallery north|C1|6|1.5|AMP1/2|VC3|B: tap was 3
5|Gallery south|C1|6|1.5|AMP1/2|VC3|B: tap was 3
6|Dome perimeter|W1|10|6|AMP2/1||B: quantity was 8
7|Dome entrance|C1|2|3|AMP2/1
8|Workshop|H1|1|15|AMP2/2
9|Delivery yard|H1|2|15|AMP2/2
10|Meeting room|C1|4|3|AMP1/1|VC4
11|Roof walk|H1|2|15|AMP1/2||B: added
`)
		p.Bold("A1:A4", "A6:H6")
		consultantSheets(p, "120")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("WH-510", "Westholme Planetarium", "second issue; remarks name the values before")
		t.Revision("B", false)
		t.Speakers("sheet=Schedule; tap_v=100; line_v=100", `rows|tag|room|model|count|tap_w|amplifier|channel|control
7|1|Foyer|C1|6|3|AMP1|1|VC1
8|2|Cloakroom|C1|2|1.5|AMP1|1|
9|3|Ticket desk|C1|1|1.5|AMP1|1|VC2
10|4|Gallery north|C1|6|1.5|AMP1|2|VC3
11|5|Gallery south|C1|6|1.5|AMP1|2|VC3
12|6|Dome perimeter|W1|10|6|AMP2|1|
13|7|Dome entrance|C1|2|3|AMP2|1|
14|8|Workshop|H1|1|15|AMP2|2|
15|9|Delivery yard|H1|2|15|AMP2|2|
16|10|Meeting room|C1|4|3|AMP1|1|VC4
17|11|Roof walk|H1|2|15|AMP1|2|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|1|60|34.5
AMP1|2|60|48
AMP2|1|120|66
AMP2|2|120|45`)
		t.Amplifiers("", `amplifier|load_w
AMP1|82.5
AMP2|111`)
		t.Controls("", `control|rated_w|load_w
VC1|20|18
VC2|6|1.5
VC3|36|18
VC4|20|12`)
	}},
}

// consultantSheets adds the sheets that both issues share; the second amplifier grew between them.
func consultantSheets(p typed.Page, second string) {
	p.Sheet("Amplifiers").Put("A1", `
Amplifier|Channels|Rated output per channel (W)|Location
AMP1|2|60|Control room
AMP2|2|`+second+`|Control room
`)
	p.Sheet("Volume controls").Put("A1", `
Volume control|Area|Rating (W)
VC1|Foyer|20
VC2|Ticket desk|6
VC3|Galleries|36
VC4|Meeting room|20
`)
}

// A maintenance contractor walks from loudspeaker to loudspeaker with a list.
var maintenance = []typed.Case{
	{File: "maintenance/tap check Ferry Lane boathouse.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Tap check")
		p.Put("A1", `
Ferry Lane Boathouse|||Job no. M-77
Tap check, 100 V line. One amplifier 120 W, no volume controls.
||
Item|Where|Kind|Tap W as left|State|Remark
1|Boat hall 1|horn|7.5|working|
2|Boat hall 2|horn|7.5|working|rust on bracket
3|Boat hall 3|horn|7.5|working|
4|Boat hall 4|horn|7.5|working|was on 15, turned down
5|Rack aisle|horn|7.5|removed|bracket and back box left
6|Landing east|horn|15|working|
7|Landing west|horn|15|working|new 2022
8|Men's changing|ceiling|3|working|
9|Women's changing|ceiling|3|working|
10|Corridor|ceiling|1.5|working|
11|Corridor|ceiling|1.5|working|
12|Committee room|ceiling|1.5|working|
13|Committee room|ceiling|1.5|working|
14|Kit store|ceiling|3|removed|ceiling taken down
15|Shelf in the store|ceiling||spare|in its box
16|Lift lobby|ceiling|3|planned|wired, not fitted
`)
		p.Bold("A1", "A4:F4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("M-77", "Ferry Lane Boathouse", "state column; the one amplifier stands in the heading")
		t.Speakers("sheet=Tap check; tap_v=100; line_v=100", `rows|tag|room|tap_w
5|1|Boat hall 1|7.5
6|2|Boat hall 2|7.5
7|3|Boat hall 3|7.5
8|4|Boat hall 4|7.5
10|6|Landing east|15
11|7|Landing west|15
12|8|Men's changing|3
13|9|Women's changing|3
14|10|Corridor|1.5
15|11|Corridor|1.5
16|12|Committee room|1.5
17|13|Committee room|1.5`)
		t.Speakers("sheet=Tap check; tap_v=100; line_v=100; status=removed", `rows|tag|room|tap_w
9|5|Rack aisle|7.5
18|14|Kit store|3`)
		t.Speakers("sheet=Tap check; status=spare", `rows|tag
19|15`)
		t.Speakers("sheet=Tap check; tap_v=100; line_v=100; status=future", `rows|tag|room|tap_w
20|16|Lift lobby|3`)
		t.Channels("line_v=100", `rated_w|load_w
120|72`)
		t.Amplifiers("", `rated_w|load_w
120|72`)
	}},

	{File: "maintenance/Prüfliste Gewächshäuser.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Prüfliste")
		p.Put("A1", `
Botanischer Garten Lindenried||||Auftrag W-2017-19
Prüfliste Lautsprecher, 100-V-Technik
||
LS-Nr.|Haus|Typ|Anzapfung W|Linie|Zustand|Bemerkung
101|Tropenhaus|PL-10|10|1|i. O.|
102|Tropenhaus|PL-10|10|1|i. O.|
103|Tropenhaus|PL-10|10|1|i. O.|Feuchte im Gehäuse
104|Tropenhaus|PL-10|10|1|ausgebaut|
105|Farnhaus|PL-10|5|1|i. O.|
106|Farnhaus|PL-10|5|1|i. O.|
107|Kakteenhaus|PL-10|5|1|i. O.|
201|Eingang|DL-6|3|2|i. O.|
202|Eingang|DL-6|3|2|i. O.|
203|Kasse|DL-6|1.5|2|i. O.|
204|Vortragsraum|DL-6|3|2|i. O.|
205|Vortragsraum|DL-6|3|2|i. O.|
206|Vortragsraum|DL-6|3|2|i. O.|
207|Vortragsraum|DL-6|3|2|i. O.|
208|Lager|DL-6||2|Reserve|liegt im Schrank
209|Anbau|DL-6|3|2|geplant|
||
Linie|Verstärker|Ausgang|Nennleistung W
1|V1|1|120
2|V1|2|60
`)
		p.Bold("A1", "A4:G4", "A22:D22")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("W-2017-19", "Botanischer Garten Lindenried", "states in German; lines are joined to outputs in a table below")
		t.Speakers("sheet=Prüfliste; tap_v=100; line_v=100; amplifier=V1; channel=1", `rows|tag|room|model|tap_w
5..7|101..|Tropenhaus|PL-10|10
9..10|105..|Farnhaus|PL-10|5
11|107|Kakteenhaus|PL-10|5`)
		t.Speakers("sheet=Prüfliste; tap_v=100; line_v=100; amplifier=V1; channel=1; status=removed", `rows|tag|room|model|tap_w
8|104|Tropenhaus|PL-10|10`)
		t.Speakers("sheet=Prüfliste; tap_v=100; line_v=100; amplifier=V1; channel=2", `rows|tag|room|model|tap_w
12..13|201..|Eingang|DL-6|3
14|203|Kasse|DL-6|1.5
15..18|204..|Vortragsraum|DL-6|3`)
		t.Speakers("sheet=Prüfliste; status=spare", `rows|tag|model
19|208|DL-6`)
		t.Speakers("sheet=Prüfliste; tap_v=100; line_v=100; amplifier=V1; channel=2; status=future", `rows|tag|room|model|tap_w
20|209|Anbau|DL-6|3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|120|45
V1|2|60|19.5`)
		t.Amplifiers("", `amplifier|load_w
V1|64.5`)
	}},
}
