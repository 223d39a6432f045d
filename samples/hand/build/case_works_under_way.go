package main

import "lineaudit/samples/typed"

func worksUnderWay() []typed.Case {
	return []typed.Case{
		{File: "Sedge Water/PA 2018-03 tender.xlsx", Kind: "schedule", Book: book("PA", `
Sedge Water Boathouse||||||
Job no.|SW-18-02|||Date|12 March 2018|
Status|Tender|||||

Speaker ref|Where|Type|Quantity|Tap setting (watts)|Amplifier output|Comments
1|Boat bays|Cabinet|6|10|1|
2|Gym|Cabinet|3|6|2|
3|Changing|Ceiling|6|1.5|2|
4|Landing stage|Horn|3|15|3|
Amplifier: three outputs of 120 W, 100 V line||||||
`, bold("A1", "A5:G5")), Truth: func(t *typed.Truth) {
			t.Is("SW-18-02", "Sedge Water Boathouse", "the tender issue of a list, replaced by the one as fitted; no revision letter, only status and date")
			t.Revision("", true)
			t.Speakers("tap_v=100; line_v=100; sheet=PA", `
rows|tag|room|model|count|tap_w|channel
6|1|Boat bays|Cabinet|6|10|1
7|2|Gym|Cabinet|3|6|2
8|3|Changing|Ceiling|6|1.5|2
9|4|Landing stage|Horn|3|15|3
`)
			t.Channels("line_v=100; rated_w=120", "channel|load_w\n1|60\n2|27\n3|45")
			t.Amplifiers("", "rated_w|load_w|note\n360|132|unnamed")
		}},

		{File: "Sedge Water/PA 2018-11 as fitted.xlsx", Kind: "schedule", Book: book("PA", `
Sedge Water Boathouse||||||
Job no.|SW-18-02|||Date|19 November 2018|
Status|As fitted|||||

Speaker ref|Where|Type|Quantity|Tap setting (watts)|Amplifier output|Comments
1|Boat bays|Cabinet|6|10|1|
2|Gym|Cabinet|4|6|2|one more than tendered
3|Changing|Ceiling|6|1.5|2|
4|Landing stage|Horn|3|30|3|turned up at handover
5|Race office|Ceiling|2|3|2|added
Amplifier: three outputs of 120 W, 100 V line||||||
`, bold("A1", "A5:G5")), Truth: func(t *typed.Truth) {
			t.Is("SW-18-02", "Sedge Water Boathouse", "the list as fitted, which replaces the tender issue")
			t.Speakers("tap_v=100; line_v=100; sheet=PA", `
rows|tag|room|model|count|tap_w|channel
6|1|Boat bays|Cabinet|6|10|1
7|2|Gym|Cabinet|4|6|2
8|3|Changing|Ceiling|6|1.5|2
9|4|Landing stage|Horn|3|30|3
10|5|Race office|Ceiling|2|3|2
`)
			t.Channels("line_v=100; rated_w=120", "channel|load_w\n1|60\n2|39\n3|90")
			t.Amplifiers("", "rated_w|load_w|note\n360|189|unnamed")
		}},

		{File: "Copperleaf/classroom intercom 25V.xlsx", Kind: "schedule", Book: book("25V", `
COPPERLEAF PLANETARIUM - CLASSROOM WING||||||
25 VOLT INTERCOM SPEAKERS||||||
WO 2003-118||||||

RM|USE|SPEAKER|QTY|TAP @ 25V|ZONE|CONSOLE OUTPUT
C1|CLASSROOM|8 IN BAFFLE|1|1/2 W|W|1
C2|CLASSROOM|8 IN BAFFLE|1|1/2 W|W|1
C3|CLASSROOM|8 IN BAFFLE|1|1/2 W|W|1
C4|LAB|8 IN BAFFLE|2|1 W|W|1
HALL|CORRIDOR|8 IN BAFFLE|4|1 W|H|2
YARD|BUS YARD|HORN|2|4 W|H|2
OFC|OFFICE|8 IN BAFFLE|1|1/4 W|W|1

CONSOLE OUTPUTS 15 WATTS EACH AT 25V||||||
`, bold("A1:A3", "A5:G5")), Truth: func(t *typed.Truth) {
			t.Is("2003-118", "Copperleaf Planetarium", "a 25 V line; taps of 1/2 and 1/4 W; the job is a work order")
			t.Speakers("tap_v=25; line_v=25; sheet=25V", `
rows|tag|room|model|count|tap_w|zone|channel
6|C1|CLASSROOM|8 IN BAFFLE|1|0.5|W|1
7|C2|CLASSROOM|8 IN BAFFLE|1|0.5|W|1
8|C3|CLASSROOM|8 IN BAFFLE|1|0.5|W|1
9|C4|LAB|8 IN BAFFLE|2|1|W|1
10|HALL|CORRIDOR|8 IN BAFFLE|4|1|H|2
11|YARD|BUS YARD|HORN|2|4|H|2
12|OFC|OFFICE|8 IN BAFFLE|1|0.25|W|1
`)
			t.Channels("line_v=25; rated_w=15", "channel|load_w\n1|3.75\n2|12")
		}},

		{File: "Moose Hollow/counts by room.xlsx", Kind: "schedule", Book: book("Counts", `
MOOSE HOLLOW ICE ARENA|||||||
Speaker counts by room, 70V|||||||

Room|Clg 2.5W|Clg 5W|Horn 15W|Horn 30W|Zone|Amp|Ch
Rink A||||8|1|A1|1
Lobby||9|||2|A1|2
Skate rental||4|||2|A1|2
Tickets|1||||2|A1|2
Lockers 1-4|8||||3|A2|1
Refs|1||||3|A2|1
Resurfacer bay|||1||4|A2|2
Parking|||3||4|A2|2
Total|10|13|4|8|||

A1: 2 x 300W @ 70V
A2: 2 x 100W @ 70V
`, bold("A1", "A4:H4", "A13:H13")), Truth: func(t *typed.Truth) {
			t.Is("", "Moose Hollow Ice Arena", "matrix with kind and tap in the head of each column, zone and output at the end of the row")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=Counts", `
rows|room|model|count|tap_w|zone|amplifier|channel
5|Rink A|Horn|8|30|1|A1|1
6|Lobby|Clg|9|5|2|A1|2
7|Skate rental|Clg|4|5|2|A1|2
8|Tickets|Clg|1|2.5|2|A1|2
9|Lockers 1-4|Clg|8|2.5|3|A2|1
10|Refs|Clg|1|2.5|3|A2|1
11|Resurfacer bay|Horn|1|15|4|A2|2
12|Parking|Horn|3|15|4|A2|2
`)
			t.Channels("line_v=70.7", `
amplifier|channel|rated_w|load_w
A1|1|300|240
A1|2|300|67.5
A2|1|100|22.5
A2|2|100|60
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nA1|600|307.5\nA2|200|82.5")
			t.Left("Counts", "13|total|right")
		}},

		{File: "Ottermoor/asset export loudspeakers.xls", Kind: "schedule", Bytes: plain(`
<html><head><meta http-equiv="Content-Type" content="text/html; charset=utf-8"><title>export</title></head><body>
<table border="1">
<tr><th>Asset ID</th><th>Site</th><th>Location</th><th>Asset type</th><th>Tap (W)</th><th>Line voltage</th><th>PA zone</th><th>Amplifier</th><th>Channel</th></tr>
<tr><td>OP-10021</td><td>Ottermoor Planetarium</td><td>Foyer</td><td>Ceiling loudspeaker</td><td>3</td><td>100</td><td>Public</td><td>P1</td><td>1</td></tr>
<tr><td>OP-10022</td><td>Ottermoor Planetarium</td><td>Foyer</td><td>Ceiling loudspeaker</td><td>3</td><td>100</td><td>Public</td><td>P1</td><td>1</td></tr>
<tr><td>OP-10023</td><td>Ottermoor Planetarium</td><td>Box office</td><td>Ceiling loudspeaker</td><td>1.5</td><td>100</td><td>Public</td><td>P1</td><td>1</td></tr>
<tr><td>OP-10030</td><td>Ottermoor Planetarium</td><td>Exhibition</td><td>Cabinet loudspeaker</td><td>6</td><td>100</td><td>Exhibition</td><td>P1</td><td>2</td></tr>
<tr><td>OP-10031</td><td>Ottermoor Planetarium</td><td>Exhibition</td><td>Cabinet loudspeaker</td><td>6</td><td>100</td><td>Exhibition</td><td>P1</td><td>2</td></tr>
<tr><td>OP-10032</td><td>Ottermoor Planetarium</td><td>Model room</td><td>Cabinet loudspeaker</td><td>6</td><td>100</td><td>Exhibition</td><td>P1</td><td>2</td></tr>
<tr><td>OP-10040</td><td>Ottermoor Planetarium</td><td>Roof deck</td><td>Horn loudspeaker</td><td>15</td><td>100</td><td>External</td><td>P1</td><td>3</td></tr>
<tr><td>OP-10041</td><td>Ottermoor Planetarium</td><td>Roof deck</td><td>Horn loudspeaker</td><td>15</td><td>100</td><td>External</td><td>P1</td><td>3</td></tr>
</table></body></html>
`), Truth: func(t *typed.Truth) {
			t.Is("", "Ottermoor Planetarium", "an export of an asset system: an HTML table that calls itself .xls; outputs without ratings")
			t.Speakers("tap_v=100; line_v=100; amplifier=P1", `
rows|tag|room|model|tap_w|zone|channel
2..3|OP-10021..|Foyer|Ceiling loudspeaker|3|Public|1
4|OP-10023|Box office|Ceiling loudspeaker|1.5|Public|1
5..6|OP-10030..|Exhibition|Cabinet loudspeaker|6|Exhibition|2
7|OP-10032|Model room|Cabinet loudspeaker|6|Exhibition|2
8..9|OP-10040..|Roof deck|Horn loudspeaker|15|External|3
`)
			t.Channels("line_v=100; amplifier=P1", "channel|load_w\n1|7.5\n2|18\n3|30")
		}},

		{File: "Hartsmere/FM devices register.csv", Kind: "schedule", Bytes: utf8(`
FM device register;Hartsmere Gardens;;;;;;
Exported;02/11/2021;;;;;;
;;;;;;;
Device no.;Trade;Description;Location;Setting;Connected to;Rating;State
0101;PA;Amplifier, 2 outputs;Rack room;;;2 x 120 W, 100 V;in use
0102;PA;Volume control;Shop;;PA output 1;12 W;in use
0103;PA;Loudspeaker, ceiling;Shop;3 W;Volume control 0102;;in use
0104;PA;Loudspeaker, ceiling;Shop;3 W;Volume control 0102;;in use
0105;PA;Loudspeaker, ceiling;Entrance hall;3 W;PA output 1;;in use
0106;PA;Loudspeaker, ceiling;Entrance hall;3 W;PA output 1;;in use
0107;LTG;Luminaire, LED;Entrance hall;14 W;DB1/4;;in use
0108;LTG;Luminaire, LED;Shop;14 W;DB1/4;;in use
0109;PA;Loudspeaker, horn;Lake terrace;15 W;PA output 2;;in use
0110;PA;Loudspeaker, horn;Car park;30 W;PA output 2;;in use
0111;PA;Loudspeaker, horn;Car park;30 W;PA output 2;;removed 2020
0112;FIRE;Sounder;Entrance hall;;Fire panel loop 1;;in use
0113;PA;Microphone;Ticket desk;;Mixer input 1;;in use
`), Truth: func(t *typed.Truth) {
			t.Is("", "Hartsmere Gardens", "a register of devices of several trades: amplifier, control and loudspeakers are rows of one table and refer to one another; luminaires, a sounder and a microphone are among them")
			t.Speakers("tap_v=100; line_v=100", `
rows|tag|room|model|tap_w|control|channel|status
7|0103|Shop|Loudspeaker, ceiling|3|0102|1|installed
8|0104|Shop|Loudspeaker, ceiling|3|0102|1|installed
9|0105|Entrance hall|Loudspeaker, ceiling|3||1|installed
10|0106|Entrance hall|Loudspeaker, ceiling|3||1|installed
13|0109|Lake terrace|Loudspeaker, horn|15||2|installed
14|0110|Car park|Loudspeaker, horn|30||2|installed
15|0111|Car park|Loudspeaker, horn|30||2|removed
`)
			t.Channels("line_v=100; rated_w=120", "channel|load_w\n1|12\n2|45")
			t.Controls("", "control|rated_w|load_w\n0102|12|6")
			t.Left("", "5|other device|amplifier\n6|other device|control\n11|other device|luminaire\n12|other device|luminaire\n15|removed|\n16|other device|sounder\n17|other device|microphone")
		}},

		{File: "Thornbeck/PA maintenance log.xlsx", Kind: "not-a-schedule", Book: book("Log", `
Thornbeck Ice Rink - PA maintenance log||||
Date|Zone|Reported|Action|Hours
04/02/2019|Ice pad|Crackle on horn 3|Transformer replaced, tap 30 W as before|2
11/03/2019|Seating|No sound|Fuse of amplifier 2 replaced|0.5
20/05/2019|Foyer|Too loud|Volume control turned down|0.25
02/09/2019|All|Annual test|All lines pass|4
`, bold("A1", "A2:E2")), Truth: stranger("a log of repairs that mentions taps and amplifiers")},

		{File: "central/insurance list AV 2020.csv", Kind: "not-a-schedule", Bytes: plain(`
Insurance list - audio visual equipment 2020,,,,
Site,Item,Quantity,Serial nos.,Value new
Ottermoor Planetarium,Loudspeaker 100 V,26,various,3120.00
Ottermoor Planetarium,Amplifier 4 x 60 W,2,00417 00418,1450.00
Thornbeck Ice Rink,Loudspeaker horn 30 W,12,various,2160.00
Thornbeck Ice Rink,Projector,1,88123,980.00
Total,,41,,7710.00
`), Truth: stranger("a list of equipment and its value for an insurer; quantities, but nothing of taps or circuits")},
	}
}
