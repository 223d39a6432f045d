package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// tradesOffices are people who write about a system that others built: an asset officer, an estimator, a loss adjuster, an apprentice, a rink technician, a consultant.
var tradesOffices = []typed.Case{
	// An asset officer of a museum exports the sound class of the register: every thing has a number, also the volume controls.
	{File: "assets/Brine Museum class 74 sound.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Asset no.,Class,Description,Room,Tapping,Supplied by,Condition
PA-001,Amplifier,"Mixer amplifier, 240 W, 100 V line",Plant room 2,,,Good
PA-002,Amplifier,"Power amplifier, 120 W, 100 V line",Plant room 2,,,Good
PA-010,Loudspeaker,Ceiling,Entrance hall,6 W,PA-001,Good
PA-011,Loudspeaker,Ceiling,Entrance hall,6 W,PA-001,Good
PA-012,Loudspeaker,Wall,Salt gallery,6 W,PA-001 via PA-030,Good
PA-013,Loudspeaker,Wall,Salt gallery,6 W,PA-001 via PA-030,Good
PA-014,Loudspeaker,Wall,Salt gallery,6 W,PA-001 via PA-030,Grille dented
PA-015,Loudspeaker,Wall,Salt gallery,6 W,PA-001 via PA-030,Good
PA-016,Loudspeaker,Ceiling,Mining gallery,3 W,PA-001 via PA-030,Good
PA-017,Loudspeaker,Ceiling,Mining gallery,3 W,PA-001 via PA-030,Good
PA-018,Loudspeaker,Ceiling,Mining gallery,3 W,PA-001 via PA-030,Good
PA-019,Loudspeaker,Ceiling,Lecture room,3 W,PA-002 via PA-031,Good
PA-020,Loudspeaker,Ceiling,Lecture room,3 W,PA-002 via PA-031,Good
PA-021,Loudspeaker,Ceiling,Lecture room,3 W,PA-002 via PA-031,Good
PA-022,Loudspeaker,Ceiling,Lecture room,3 W,PA-002 via PA-031,Good
PA-023,Loudspeaker,Horn,Loading bay,15 W,PA-002,Fair
PA-024,Loudspeaker,Ceiling,Education room,3 W,PA-002,Good
PA-025,Loudspeaker,Ceiling,Education room,3 W,PA-002,Good
PA-026,Loudspeaker,Horn,Courtyard,15 W,PA-002,Removed and disposed of 2021
PA-027,Loudspeaker,Ceiling,Plant room 2,3 W,,"In store, not connected"
PA-030,Volume control,Rotary 60 W,Salt gallery,,PA-001,Good
PA-031,Volume control,Rotary 24 W,Lecture room,,PA-002,Knob missing
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "register of assets: amplifiers, loudspeakers and controls in one list, joined by asset numbers; one disposed of, one in store")
		t.Speakers("tap_v=100; line_v=100; amplifier=PA-001", `rows|tag|room|tap_w|control
4..5|PA-010..|Entrance hall|6|
6..9|PA-012..|Salt gallery|6|PA-030
10..12|PA-016..|Mining gallery|3|PA-030`)
		t.Speakers("tap_v=100; line_v=100; amplifier=PA-002", `rows|tag|room|tap_w|control
13..16|PA-019..|Lecture room|3|PA-031
17|PA-023|Loading bay|15|
18..19|PA-024..|Education room|3|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
PA-001|240|45
PA-002|120|33`)
		t.Amplifiers("", `amplifier|rated_w|load_w
PA-001|240|45
PA-002|120|33`)
		t.Controls("", `control|rated_w|load_w
PA-030|60|33
PA-031|24|12`)
		t.Left("", `20|removed|disposed of
21|spare|in store, not connected`)
	}},

	// A second-year apprentice counts what hangs along the platforms before the tender; the taps are known by the kind.
	{File: "junction/speaker count tuesday.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Count")
		p.Put("A1", `
Speaker count, Thornmere Junction station
||
Where|Horn 15W|Column 10W|Ceiling 3W|How many
Platform 1|6|2||8
Platform 2|6|2||8
Footbridge|||4|4
Booking hall||2|5|7
Waiting room|||3|3
Subway|2||2|4
Toilets|||4|4
All|14|6|18|38
||
All on the one amp in the relay room, 360 watts, 100 volt line.
The waiting room has its own volume knob, 12 W written on it. No others.
Watts are what the tap is set to, checked one of each kind in every place.
`)
		p.Bold("A1", "A3:E3", "A11:E11")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Thornmere Junction station", "matrix of places and kinds, tap in the head of the column; the amplifier and an unnamed control in notes below")
		t.Speakers("sheet=Count; tap_v=100; line_v=100; tap_w=15", `rows|room|count
4|Platform 1|6
5|Platform 2|6
9|Subway|2`)
		t.Speakers("sheet=Count; tap_v=100; line_v=100; tap_w=10", `rows|room|count
4|Platform 1|2
5|Platform 2|2
7|Booking hall|2`)
		t.Speakers("sheet=Count; tap_v=100; line_v=100; tap_w=3", `rows|room|count|note
6|Footbridge|4|
7|Booking hall|5|
8|Waiting room|3|unnamed
9|Subway|2|
10|Toilets|4|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|360|324`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|360|324`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|12|9`)
		t.Left("Count", `11|total|sums`)
	}},

	// An estimator of an electrical contractor prices a library; everything is an item with a unit and a rate.
	{File: "estimates/Q3318 Garrowick library PA.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Bill")
		p.Put("A1", `
Enquiry Q3318||Garrowick Library, public address
||
Item|Description|Location|Qty|Unit|Rate|Amount
|LOUDSPEAKERS (100 V line)
'2.01|Recessed ceiling loudspeaker, tapped 3 W|Reading room|8|nr|41|328
'2.02|ditto|Children's library|6|nr|41|246
'2.03|ditto but tapped 1.5 W|Staff corridor|5|nr|41|205
'2.04|Cabinet loudspeaker, tapped 6 W|Lending hall|6|nr|52|312
'2.05|ditto|Stack level|4|nr|52|208
'2.06|Weatherproof horn, tapped 10 W|Delivery yard|2|nr|88|176
'2.07|Ceiling loudspeaker 3 W, loose, as spares for the client||2|nr|30|60
|AMPLIFIER
'3.01|Rack amplifier, 240 W, one 100 V output|Comms cupboard|1|nr|640|640
|VOLUME CONTROLS
'4.01|Flush volume control, 36 W|Reading room|1|nr|46|46
'4.02|ditto, 24 W|Children's library|1|nr|44|44
|SUNDRIES
'5.01|Steel trunking 50 x 50, fixed to soffit|Stack level|60|m|19|1140
'5.02|Testing and handing over||1|item|450|450
||||||3855
`)
		p.Bold("A3:G3", "B4", "B12", "B14", "B17")
		p.Format("#,##0.00", "F5:G20")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("Q3318", "Garrowick Library", "bill of quantities: taps in descriptions, ditto, prices beside counts, controls without names by location, loose spares")
		t.Speakers("sheet=Bill; tap_v=100; line_v=100", `rows|room|count|tap_w|note
5|Reading room|8|3|unnamed
6|Children's library|6|3|unnamed
7|Staff corridor|5|1.5|
8|Lending hall|6|6|
9|Stack level|4|6|
10|Delivery yard|2|10|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|129.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|129.5`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|36|24
|24|18`)
		t.Left("Bill", `11|spare|loose spares
18|other|trunking
20|total|sum of the prices`)
	}},

	// A loss adjuster goes through a flooded boathouse: what was there, what is written off, what still hangs.
	{File: "claims/24-117 Ottersby boathouse.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Sound")
		p.Put("A1", `
Loss report 24/117
Ottersby boathouse. Public address equipment, seen 12 February
||
Item|Location|Description|Tapping|Before flood|Written off|In place now|Remarks
1|Boat bay 1|Wall cabinet|6 W|4|4|0|Under water, taken down
2|Boat bay 2|Wall cabinet|6 W|4|2|2|The two on the high beam stayed dry
3|Ergometer room|Ceiling|3 W|6|0|6|
4|Changing rooms|Ceiling|1.5 W|6|0|6|
5|Slipway|Horn|15 W|3|1|2|
6|Race office|Ceiling|3 W|2|0|2|Via 12 W volume control VC-RO, works
7|Stair|Ceiling|1.5 W|2|0|2|
8|Loft|Horn|15 W|1|0|1|Boxed spare, never fitted
|Total|||28|7|21
||
The amplifier (240 W, 100 V line) stands on the upper landing, stayed dry and was tested. No claim.
`)
		p.Bold("A1", "A4:H4", "B13:G13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Ottersby boathouse", "three columns of counts: before, written off, in place now; a boxed spare in remarks; amplifier without a name in a sentence")
		t.Speakers("sheet=Sound; tap_v=100; line_v=100", `rows|room|count|tap_w|control
6|Boat bay 2|2|6|
7|Ergometer room|6|3|
8|Changing rooms|6|1.5|
9|Slipway|2|15|
10|Race office|2|3|VC-RO
11|Stair|2|1.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|78`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|78`)
		t.Controls("", `control|rated_w|load_w
VC-RO|12|6`)
		t.Left("Sound", `5|removed|none in place any more
12|spare|boxed, never fitted
13|total|sums`)
	}},

	// A rink technician prints cards, one a line, and tapes them to the doors of the amplifier rack.
	{File: "rink/rack door cards.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Cards")
		p.Put("A1", `
LINE 1|||LINE 2|||LINE 3
feeds|Rink, west side||feeds|Rink, east side||feeds|Stand
amp|Amp 1||amp|Amp 2||amp|Amp 3
amp size|240 W||amp size|240 W||amp size|120 W
volume|none||volume|none||volume|VC1 (60 W)
speaker|set to||speaker|set to||speaker|set to
Horn W1|15 W||Horn E1|15 W||Box S1|6 W
Horn W2|15 W||Horn E2|15 W||Box S2|6 W
Horn W3|15 W||Horn E3|15 W||Box S3|6 W
Horn W4|15 W||Horn E4|15 W||Box S4|6 W
|||Horn E5, ice machine|10 W||Box S5|6 W
||
LINE 4|||LINE 5
feeds|Skate hire||feeds|Changing rooms
amp|Amp 4 output 1||amp|Amp 4 output 2
amp size|120 W this output||amp size|120 W this output
volume|VC2 (24 W)||volume|VC3 (36 W)
speaker|set to||speaker|set to
Ceiling H1|3 W||Ceiling C1|1.5 W
Ceiling H2|3 W||Ceiling C2|1.5 W
Ceiling H3|3 W||Ceiling C3|1.5 W
Ceiling H4|3 W||Ceiling C4|1.5 W
|||Ceiling C5|1.5 W
|||Ceiling C6|1.5 W
||
All lines 100 V. Hollowbrook ice rink, cards to be renewed when anything is changed
`)
		p.Bold("A1", "D1", "G1", "A13", "D13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Hollowbrook ice rink", "cards side by side and below each other, each a line with its amplifier, its control and its loudspeakers")
		t.Speakers("sheet=Cards; tap_v=100; line_v=100; zone=Rink, west side; amplifier=Amp 1", `rows|tap_w
7..10|15`)
		t.Speakers("sheet=Cards; tap_v=100; line_v=100; zone=Rink, east side; amplifier=Amp 2", `rows|tap_w
7..10|15
11|10`)
		t.Speakers("sheet=Cards; tap_v=100; line_v=100; zone=Stand; amplifier=Amp 3; control=VC1", `rows|tap_w
7..11|6`)
		t.Speakers("sheet=Cards; tap_v=100; line_v=100; zone=Skate hire; amplifier=Amp 4; channel=1; control=VC2", `rows|tap_w
19..22|3`)
		t.Speakers("sheet=Cards; tap_v=100; line_v=100; zone=Changing rooms; amplifier=Amp 4; channel=2; control=VC3", `rows|tap_w
19..24|1.5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
Amp 1||240|60
Amp 2||240|70
Amp 3||120|30
Amp 4|1|120|12
Amp 4|2|120|9`)
		t.Amplifiers("", `amplifier|rated_w|load_w
Amp 1|240|60
Amp 2|240|70
Amp 3|120|30
Amp 4||21`)
		t.Controls("", `control|zone|rated_w|load_w
VC1|Stand|60|30
VC2|Skate hire|24|12
VC3|Changing rooms|36|9`)
	}},

	// A consultant fills in room data sheets: a room a column, because the architect's form is so.
	{File: "consultant/Hollin Moss room data.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Room data")
		p.Put("A1", `
Hollin Moss Planetarium. Room data, sound. Revision C
Room|Dome|Foyer|Lecture room|Workshop|Control room|Observation deck
Room number|'0.01|'0.02|'0.10|'0.11|'1.01|'1.05
Loudspeaker|wall box|ceiling|ceiling|wall box|ceiling|horn
Quantity|8|6|4|2|1|3
Tap, W|10|3|3|6|1.5|10
Room total, W|80|18|12|12|1.5|30
Volume control|none|VC1, 24 W|VC2, 24 W|none|none|none
Amplifier / channel|A/1|A/2|A/2|A/3|A/3|A/4
Cable|2.5 mm²|1.5 mm²|1.5 mm²|1.5 mm²|1.5 mm²|2.5 mm²
Run from rack, ft|120|85|140|60|40|210
||
Amplifier A has four channels of 120 W each, 100 V line.
`)
		p.Bold("A1", "A2:G2")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Hollin Moss Planetarium", "transposed: a room a column; feet; rating of the channels in a sentence below")
		t.Revision("C", false)
		t.Speakers("sheet=Room data; tap_v=100; line_v=100; amplifier=A", `rows|room|count|tap_w|channel|control
B|Dome|8|10|1|
C|Foyer|6|3|2|VC1
D|Lecture room|4|3|2|VC2
E|Workshop|2|6|3|
F|Control room|1|1.5|3|
G|Observation deck|3|10|4|`)
		t.Channels("line_v=100; amplifier=A", `channel|rated_w|load_w
1|120|80
2|120|30
3|120|13.5
4|120|30`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|480|153.5`)
		t.Controls("", `control|rated_w|load_w
VC1|24|18
VC2|24|12`)
		t.Lines("note=one length a room (room as zone), from the rack", `zone|length_m|area_mm2
Dome|36.576|2.5
Foyer|25.908|1.5
Lecture room|42.672|1.5
Workshop|18.288|1.5
Control room|12.192|1.5
Observation deck|64.008|2.5`)
	}},
}
