package main

import "lineaudit/samples/typed"

// soundBooks are workbooks of other shapes: a sheet an amplifier, a sheet a floor, zones side by side, outputs across.
var soundBooks = []typed.Case{
	{File: "books/Willowbank rack by amplifier.xlsx", Kind: "schedule", Book: sheets("Index", `
Willowbank Botanic Garden, job 2270
One sheet for each amplifier. All 100 V line.
`, "PA-1", `
Amplifier PA-1|||Rating 250 W|||Rack position U12
Zone|Speaker|Qty|Tap (W)|Load (W)|Local control
Palm court|projector|10|10|100|
Fern walk|projector|6|10|60|
Seed vault|ceiling|4|3|12|VC-11 (15 W)
Total|||| 172
`, "PA-2", `
Amplifier PA-2|||Rating 120 W|||Rack position U14
Zone|Speaker|Qty|Tap (W)|Load (W)|Local control
Museum store|ceiling|8|3|24|VC-21 (20 W)
Lecture hall|column|4|15|60|VC-22 (100 W)
Cloaks|ceiling|2|1.5|3|
Total|||| 87
`, "PA-3", `
Amplifier PA-3|||Rating 120 W|||Rack position U16
Zone|Speaker|Qty|Tap (W)|Load (W)|Local control
Standby for PA-1 or PA-2, no loudspeakers of its own
`), Truth: func(t *typed.Truth) {
		t.Is("2270", "Willowbank Botanic Garden", "a sheet an amplifier, its rating above the table; controls with ratings in the row; a standby amplifier's sheet without loudspeakers")
		t.Speakers("tap_v=100; line_v=100; sheet=PA-1; amplifier=PA-1", `
rows|zone|model|count|tap_w|control
3|Palm court|projector|10|10|
4|Fern walk|projector|6|10|
5|Seed vault|ceiling|4|3|VC-11
`)
		t.Speakers("tap_v=100; line_v=100; sheet=PA-2; amplifier=PA-2", `
rows|zone|model|count|tap_w|control
3|Museum store|ceiling|8|3|VC-21
4|Lecture hall|column|4|15|VC-22
5|Cloaks|ceiling|2|1.5|
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nPA-1|250|172\nPA-2|120|87")
		t.Amplifiers("", "amplifier|rated_w|load_w\nPA-1|250|172\nPA-2|120|87")
		t.Controls("", "control|zone|rated_w|load_w\nVC-11|Seed vault|15|12\nVC-21|Museum store|20|24\nVC-22|Lecture hall|100|60")
		t.Left("PA-1", "6|total|")
		t.Left("PA-2", "6|total|")
	}},

	{File: "books/ELA Planetarium Kaltwies nach Geschossen.ods", Kind: "schedule", Saved: "ods", Book: sheets("UG", `
Planetarium Kaltwies, Auftrag 5530-K, Untergeschoss
Raum-Nr.|Raum|LS-Nr.|Typ|Leistung|Kreis|Regler
U.01|Lager|U1|Wand|3 W|2|
U.02|Technik|U2|Wand|3 W|2|
U.05|Museumsdepot|U3|Wand|6 W|2|
`, "EG", `
Planetarium Kaltwies, Auftrag 5530-K, Erdgeschoss
Raum-Nr.|Raum|LS-Nr.|Typ|Leistung|Kreis|Regler
E.01|Foyer|E1|Decke|6 W|1|RG1
E.01|Foyer|E2|Decke|6 W|1|RG1
E.01|Foyer|E3|Decke|6 W|1|RG1
E.02|Kasse|E4|Decke|1,5 W|1|
E.03|Garderobe|E5|Decke|3 W|1|
`, "OG", `
Planetarium Kaltwies, Auftrag 5530-K, Obergeschoss
Raum-Nr.|Raum|LS-Nr.|Typ|Leistung|Kreis|Regler
O.01|Kuppel|O1|Säule|20 W|3|
O.01|Kuppel|O2|Säule|20 W|3|
O.02|Seminar|O3|Decke|6 W|1|RG2
O.02|Seminar|O4|Decke|6 W|1|RG2
`, "Verstärker", `
Kreis|Verstärker|Leistung|Spannung
1|V1|60 W|100 V
2|V2|60 W|100 V
3|V3|120 W|100 V
Regler RG1: 20 W, RG2: 10 W
`), Truth: func(t *typed.Truth) {
		t.Is("5530-K", "Planetarium Kaltwies", "a sheet a floor; one of amplifiers by circuit; ratings of controls in a line below")
		t.Speakers("tap_v=100; line_v=100; sheet=UG; amplifier=V2; model=Wand", "rows|tag|room|tap_w\n3|U1|Lager|3\n4|U2|Technik|3\n5|U3|Museumsdepot|6")
		t.Speakers("tap_v=100; line_v=100; sheet=EG; amplifier=V1; model=Decke", `
rows|tag|room|tap_w|control
3..5|E1..|Foyer|6|RG1
6|E4|Kasse|1.5|
7|E5|Garderobe|3|
`)
		t.Speakers("tap_v=100; line_v=100; sheet=OG", `
rows|tag|room|model|tap_w|amplifier|control
3..4|O1..|Kuppel|Säule|20|V3|
5..6|O3..|Seminar|Decke|6|V1|RG2
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nV1|60|34.5\nV2|60|12\nV3|120|40")
		t.Amplifiers("", "amplifier|rated_w|load_w\nV1|60|34.5\nV2|60|12\nV3|120|40")
		t.Controls("", "control|zone|rated_w|load_w\nRG1|Foyer|20|18\nRG2|Seminar|10|12")
	}},

	{File: "books/Gannet Pier zones side by side.xlsx", Kind: "schedule", Book: sheets("Zones", `
Gannet Pier - speaker zones (70.7 V)|||||||||||||
Zone 1: Pier deck||||Zone 2: Arcade museum||||Zone 3: Landing|||
Amp channel 1 (200 W)||||Amp channel 2 (100 W)||||Amp channel 3 (100 W)|||
Speaker|Qty|Tap||Speaker|Qty|Tap||Speaker|Qty|Tap
horn|6|15 W||ceiling|8|2.5 W||horn|4|15 W
column|4|20 W||ceiling|4|5 W||column|1|20 W
||||cabinet|2|10 W|||
`), Truth: func(t *typed.Truth) {
		t.Is("", "Gannet Pier", "three tables side by side, each under its zone and its channel")
		t.Speakers("tap_v=70.7; line_v=70.7; sheet=Zones", `
rows|zone|channel|model|count|tap_w
5|Pier deck|1|horn|6|15
5|Arcade museum|2|ceiling|8|2.5
5|Landing|3|horn|4|15
6|Pier deck|1|column|4|20
6|Arcade museum|2|ceiling|4|5
6|Landing|3|column|1|20
7|Arcade museum|2|cabinet|2|10
`)
		t.Channels("line_v=70.7", "channel|rated_w|load_w\n1|200|170\n2|100|60\n3|100|80")
	}},

	{File: "books/Tarnfold herbarium outputs across.csv", Kind: "schedule", Bytes: text(`
Tarnfold Herbarium and Lock,,,,,,
Loudspeaker by amplifier channel (tap watts in the column of its channel),,,,,,
Job 3090,,,,,,
Loudspeaker,Room,PA1 CH1,PA1 CH2,PA2 CH1,PA2 CH2,Remarks
01,Herbarium,6,,,,
02,Herbarium,6,,,,
03,Press room,,3,,,
04,Press room,,3,,,
05,Lock bridge,,,15,,horn
06,Lock bridge,,,15,,horn
07,Lock chamber,,,,30,horn
08,Lock chamber,,,,30,horn
09,Toll office,,3,,,
Total,,12,9,30,60,
Rating,,60,60,120,120,
Line,,100 V,100 V,100 V,100 V,
`), Truth: func(t *typed.Truth) {
		t.Is("3090", "Tarnfold Herbarium and Lock", "channels across, loudspeakers down, watts where they meet; totals and ratings below")
		t.Speakers("tap_v=100; line_v=100", `
rows|tag|room|tap_w|amplifier|channel
5..6|01..|Herbarium|6|PA1|CH1
7..8|03..|Press room|3|PA1|CH2
9..10|05..|Lock bridge|15|PA2|CH1
11..12|07..|Lock chamber|30|PA2|CH2
13|09|Toll office|3|PA1|CH2
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nPA1|CH1|60|12\nPA1|CH2|60|9\nPA2|CH1|120|30\nPA2|CH2|120|60")
		t.Amplifiers("", "amplifier|rated_w|load_w\nPA1|120|21\nPA2|240|90")
		t.Left("", "14|total|\n15|note|\n16|note|")
	}},

	{File: "books/Ohm taps Cormorant Boathouse.xlsx", Kind: "schedule", Book: sheets("Speakers", `
Cormorant Boathouse 100 V line - transformer taps in ohms|||||||Job 3104
The speakers here are marked by primary impedance, not by watts.

Speaker|Location|Primary tap|Amp|Pad
1|Boat rack A|1000 ohm|1|
2|Boat rack B|1000 ohm|1|
3|Boat rack C|1 kohm|1|
4|Race office|2000 ohm|1|P1
5|Race office|2000 ohm|1|P1
6|Trophy store|5 kohm|1|
7|Jetty|500 ohm|2|
8|Jetty|500 ohm|2|
9|Jetty|500 ohm|2|

Amp 1 60 W, amp 2 60 W. Pad P1 is good for 10 W.
`), Truth: func(t *typed.Truth) {
		t.Is("3104", "Cormorant Boathouse", "taps as primary impedance at 100 V")
		t.Speakers("tap_v=100; line_v=100; sheet=Speakers", `
rows|tag|room|tap_w|amplifier|control
5|1|Boat rack A|10|1|
6|2|Boat rack B|10|1|
7|3|Boat rack C|10|1|
8..9|4..|Race office|5|1|P1
10|6|Trophy store|2|1|
11..13|7..|Jetty|20|2|
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\n1|60|42\n2|60|60")
		t.Amplifiers("", "amplifier|rated_w|load_w\n1|60|42\n2|60|60")
		t.Controls("", "control|zone|rated_w|load_w\nP1|Race office|10|10")
	}},

	{File: "books/Thistle Ground mixed systems.xlsx", Kind: "schedule", Book: sheets("Systems", `
Thistle Ground Museum of Navigation|||||Ref 3118
Four systems on one site, do not mix them

System|Amplifier|Line|Amp W|Area|Loudspeakers|Tap (W)|Control|Control W
1 Grounds|GA|100 V|240|Lock gates|8 horns|15||
1 Grounds|GA|100 V|240|Tow path|6 horns|7.5||
2 Galleries|GB|70.7 V|120|Chart gallery|10 ceiling|5|K1|60
2 Galleries|GB|70.7 V|120|Compass gallery|8 ceiling|5|K2|35
3 Offices|GC|25 V|30|Office corridor|6 ceiling|1|K3|10
3 Offices|GC|25 V|30|Conservation store|4 ceiling|2||
4 Film room|GD|8 ohm|100|Film room|2 cabinets|||
`), Truth: func(t *typed.Truth) {
		t.Is("3118", "Thistle Ground Museum of Navigation", "100, 70.7 and 25 V and 8 ohm on one site")
		t.Speakers("tap_v=100; line_v=100; sheet=Systems; amplifier=GA; zone=1 Grounds; model=horns", "rows|room|count|tap_w\n5|Lock gates|8|15\n6|Tow path|6|7.5")
		t.Speakers("tap_v=70.7; line_v=70.7; sheet=Systems; amplifier=GB; zone=2 Galleries; model=ceiling", "rows|room|count|tap_w|control\n7|Chart gallery|10|5|K1\n8|Compass gallery|8|5|K2")
		t.Speakers("tap_v=25; line_v=25; sheet=Systems; amplifier=GC; zone=3 Offices; model=ceiling", "rows|room|count|tap_w|control\n9|Office corridor|6|1|K3\n10|Conservation store|4|2|")
		t.Speakers("sheet=Systems; amplifier=GD; zone=4 Film room; model=cabinets; low_ohm=8", "rows|room|count\n11|Film room|2")
		t.Channels("", "amplifier|line_v|rated_w|load_w\nGA|100|240|165\nGB|70.7|120|90\nGC|25|30|14\nGD||100|0")
		t.Amplifiers("", "amplifier|rated_w|load_w\nGA|240|165\nGB|120|90\nGC|30|14")
		t.Controls("", "control|zone|rated_w|load_w\nK1|Chart gallery|60|50\nK2|Compass gallery|35|40\nK3|Office corridor|10|6")
	}},
}
