package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// tradesmen are those who pulled the cables and filled the racks: British and American contractors, a commissioning engineer, a rack builder.
var tradesmen = []typed.Case{
	{File: "as built/Ashlar Lock control room.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("As built")
		p.Put("A1", `
ASHLAR LOCKS - PA SCHEDULE - AS BUILT
Contract 3390, red = changed on site, 100V

Ref|Location|Fitting|Nr|Tap|Circuit|Cable|m
L1|Upper gates|horn|2|15 W|C1|2.5mm² SWA|140
L2|Lower gates|horn|2|15 W|C1|2.5mm² SWA|260
L3|Control room|ceiling|2|1.5 W|C2|1.5mm²|15
L4|Visitor walk|bollard|5|6 W|C3|2.5mm² SWA|180
L5|Mess room|ceiling|1|3 W|C2|1.5mm²|30
L6|Dry dock|horn|3|15 W|C4|2.5mm² SWA|220

Circuit|Amp output|Watts
C1|PA1 / 1|120
C2|PA1 / 2|120
C3|PA1 / 3|120
C4|PA1 / 4|120
`)
		p.Corrected("E5", "15 W", " 30 W")
		p.Corrected("D8", "5", " 8")
		p.Corrected("G7", "1.5mm²", " 2.5mm²")
		p.Strike("A9:H9")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("3390", "Ashlar Locks", "redlines: the old value struck and the new one behind it, one row struck whole; outputs by circuit in a second table")
		t.Speakers("sheet=As built; tap_v=100; line_v=100; amplifier=PA1", `
rows|tag|room|count|tap_w|channel|status
5|L1|Upper gates|2|30|1|installed
6|L2|Lower gates|2|15|1|installed
7|L3|Control room|2|1.5|2|installed
8|L4|Visitor walk|8|6|3|installed
9|L5|Mess room|1|3|2|removed
10|L6|Dry dock|3|15|4|installed
`)
		t.Channels("line_v=100; amplifier=PA1; rated_w=120", "channel|load_w\n1|90\n2|3\n3|48\n4|45")
		t.Amplifiers("", "amplifier|rated_w|load_w\nPA1|480|186")
		t.Lines("note=one length", `
line|length_m|area_mm2
L1|140|2.5
L2|260|2.5
L3|15|2.5
L4|180|2.5
L6|220|2.5
`)
	}},

	{File: "racks/ICE2 room and rack.xlsx", Kind: "schedule", Book: sheets("ROOMS", `
JOB 18-55  TWIN RINKS AT MILL FORK
ROOM SHEET

RM NO|RM NAME|SPKR|QTY|TAP|HOME RUN
R100|RINK 1 NORTH|PENDANT|8|25W|HR-1
R100|RINK 1 SOUTH|PENDANT|8|25W|HR-2
R200|RINK 2 NORTH|PENDANT|8|25W|HR-3
R200|RINK 2 SOUTH|PENDANT|8|25W|HR-4
R110|PRO SHOP|CEILING|4|5W|HR-5
R111|LOCKER A-D|CEILING|8|2.5W|HR-6
R300|MEZZ|CEILING|6|5W|HR-7
R301|REFEREES|CEILING|1|2.5W|HR-7
`, "RACK", `
JOB 18-55 RACK SHEET   ALL OUTPUTS 70V
RU|DEVICE|OUTPUT|W|LANDS ON
20|AMP 1|A|400|HR-1, HR-2
20|AMP 1|B|400|HR-3, HR-4
18|AMP 2|A|60|HR-5, HR-6
18|AMP 2|B|60|HR-7
16|BLANK|||
14|PROCESSOR|||
`, "RUNS", `
RUN|AWG|FT
HR-1|14/2|210
HR-2|14/2|240
HR-3|14/2|330
HR-4|14/2|365
HR-5|18/2|90
HR-6|18/2|120
HR-7|18/2|155
`), Truth: func(t *typed.Truth) {
		t.Is("18-55", "MILL FORK", "rooms name a home run, the rack sheet says which two land on which output, a third sheet has gauges and feet")
		t.Speakers("sheet=ROOMS; tap_v=70.7; line_v=70.7", `
rows|room|count|tap_w|amplifier|channel
5|RINK 1 NORTH|8|25|AMP 1|A
6|RINK 1 SOUTH|8|25|AMP 1|A
7|RINK 2 NORTH|8|25|AMP 1|B
8|RINK 2 SOUTH|8|25|AMP 1|B
9|PRO SHOP|4|5|AMP 2|A
10|LOCKER A-D|8|2.5|AMP 2|A
11|MEZZ|6|5|AMP 2|B
12|REFEREES|1|2.5|AMP 2|B
`)
		t.Channels("line_v=70.7", "amplifier|channel|rated_w|load_w\nAMP 1|A|400|400\nAMP 1|B|400|400\nAMP 2|A|60|40\nAMP 2|B|60|32.5")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAMP 1|800|800\nAMP 2|120|72.5")
		t.Lines("note=home run", `
line|length_m|area_mm2
HR-1|64.008|2.081
HR-2|73.152|2.081
HR-3|100.584|2.081
HR-4|111.252|2.081
HR-5|27.432|0.823
HR-6|36.576|0.823
HR-7|47.244|0.823
`)
	}},

	{File: "handover/Museum store VCs.xlsx", Kind: "schedule", Book: sheets("Speakers", `
Job No.|MS-5508
Site|Thornbury Road Museum Store
Voltage|100V line

ID|Bay|Model|Tapping|Cct
1|Bay 1|Round 6"|3W|1
2|Bay 1|Round 6"|3W|1
3|Bay 2|Round 6"|3W|1
4|Bay 2|Round 6"|3W|1
5|Conservation|Round 6"|6W|2
6|Conservation|Round 6"|6W|2
7|Photo studio|Round 6"|6W|2
8|Loading|Horn|15W|2
`, "Volume controls", `
VC|Size|Controls speakers
VC-A|12W|1 to 4
VC-B|10W|5, 6
VC-C|10W|7
`, "Amplifier", `
Amplifier AMP1, 2 zones
Zone output|Rating|Feeds
1|40W|Cct 1
2|40W|Cct 2
`), Truth: func(t *typed.Truth) {
		t.Is("MS-5508", "Thornbury Road", "a list of controls says which loudspeakers each one serves, by number and range")
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; amplifier=AMP1", `
rows|tag|room|tap_w|channel|control
6|1|Bay 1|3|1|VC-A
7|2|Bay 1|3|1|VC-A
8|3|Bay 2|3|1|VC-A
9|4|Bay 2|3|1|VC-A
10|5|Conservation|6|2|VC-B
11|6|Conservation|6|2|VC-B
12|7|Photo studio|6|2|VC-C
13|8|Loading|15|2|
`)
		t.Channels("line_v=100; amplifier=AMP1; rated_w=40", "channel|load_w\n1|12\n2|33")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAMP1|80|45")
		t.Controls("", "control|rated_w|load_w\nVC-A|12|12\nVC-B|10|12\nVC-C|10|6")
	}},

	{File: "handover/Boat hall notes.xlsx", Kind: "schedule", Book: sheets("Sheet1", `
CEDAR POINT ROWING CENTER  job 41-207
70V SPEAKER LIST

Zone|Area|Type|Qty|W|Amp Ch|Notes
1|Boat hall|pendant|6|16|1|
1|Erg room|pendant|4|8|1|on 50W volume control by door (V1)
2|Lobby|ceiling|5|4|2|on V2, 25W
2|Offices|ceiling|6|2|2|each office pair on its own 10W control (3 pcs)
2|Hallway|ceiling|4|2|2|no control
3|Dock|horn|2|32|3|
3|Dock, far end|horn|1|32|3|NIC - by others, on their own amp

Amp: 4 ch x 125W @ 70V. Ch 4 not used.
`), Truth: func(t *typed.Truth) {
		t.Is("41-207", "CEDAR POINT", "controls in the notes: with a tag, with a tag and rating, three without tags; a horn of another trade")
		t.Speakers("sheet=Sheet1; tap_v=70.7; line_v=70.7", `
rows|zone|room|count|tap_w|channel|control|status|note
5|1|Boat hall|6|16|1||installed|
6|1|Erg room|4|8|1|V1|installed|
7|2|Lobby|5|4|2|V2|installed|
8|2|Offices|6|2|2||installed|three unnamed controls
9|2|Hallway|4|2|2||installed|
10|3|Dock|2|32|3||installed|
11|3|Dock, far end|1|32|||future|by others
`)
		t.Channels("line_v=70.7; rated_w=125", "channel|load_w\n1|128\n2|40\n3|64\n4|0")
		t.Amplifiers("note=unnamed", "rated_w|load_w\n500|232")
		t.Controls("", "control|rated_w|load_w\nV1|50|32\nV2|25|20")
	}},

	{File: "handover/Fernery zones.xlsx", Kind: "schedule", Book: sheets("PA", `
Contract: 1187 Larch Hill Fernery PA
100 V

Zone (local control)|Loudspeakers|Amp out
Z1 Fern house (no local vol.)|6 no. x 6W|A1
Z2 Grotto (vol. ctl VC2, 12 W)|4 no. x 3W|A1
Z3 Shop (vol. ctl VC3, 24 W)|6 no. x 6W|A2
Z4 Classroom (vol. ctl VC4, 12 W)|2 no. x 6W|A2
Z5 Yard (no local vol.)|2 no. x 15W|A3

Outputs A1, A2, A3: 60 W each
`), Truth: func(t *typed.Truth) {
		t.Is("1187", "Larch Hill", "control and rating in brackets behind the zone's name, count and tap in one cell, one note for three outputs")
		t.Speakers("sheet=PA; tap_v=100; line_v=100", `
rows|zone|count|tap_w|channel|control
5|Z1 Fern house|6|6|A1|
6|Z2 Grotto|4|3|A1|VC2
7|Z3 Shop|6|6|A2|VC3
8|Z4 Classroom|2|6|A2|VC4
9|Z5 Yard|2|15|A3|
`)
		t.Channels("line_v=100; rated_w=60", "channel|load_w\nA1|48\nA2|48\nA3|30")
		t.Controls("", "control|rated_w|load_w\nVC2|12|12\nVC3|24|36\nVC4|12|12")
	}},

	{File: "cables/Breakwater lights and horns.xlsx", Kind: "schedule", Book: sheets("Horns", `
Breakwater PA, job B/77, 100 V line, one line from amplifier BW1 (120 W)

Horn|Post|Tap
H1|Post 4|15W
H2|Post 9|15W
H3|Post 15|15W
H4|Post 21|20W
H5|Slip|10W
`, "Cable", `
Cable no.|From|To|Length m|Size
C1|BW1|H1|60|2 x 2.5mm²
C2|H1|H2|75|2 x 2.5mm²
C3|H2|H3|90|2 x 2.5mm²
C4|H3|H4|90|2 x 1.5mm²
C5|H1|H5|35|2 x 1.5mm²
`), Truth: func(t *typed.Truth) {
		t.Is("B/77", "Breakwater", "amplifier and rating in the title, cables from loudspeaker to loudspeaker on the second sheet")
		t.Speakers("sheet=Horns; tap_v=100; line_v=100; amplifier=BW1", `
rows|tag|room|tap_w
4|H1|Post 4|15
5|H2|Post 9|15
6|H3|Post 15|15
7|H4|Post 21|20
8|H5|Slip|10
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nBW1|120|75")
		t.Amplifiers("", "amplifier|rated_w|load_w\nBW1|120|75")
		t.Lines("", `
line|from|to|length_m|area_mm2
C1|BW1|H1|60|2.5
C2|H1|H2|75|2.5
C3|H2|H3|90|2.5
C4|H3|H4|90|1.5
C5|H1|H5|35|1.5
`)
	}},

	{File: "commissioning/Orchid centre test sheets.xlsx", Kind: "schedule", Book: sheets("Line 1", `
Orchid Centre - Line test|||Job|OC 66-2
Line|1|||
Amplifier|PA-1|Output|1|
Rated|120 W|Line volts|100 V|
Measured at 1 kHz|152 ohm|||

Room|Speaker|Qty|Tap set
Display house|5" cabinet|6|6 W
Cloud house|5" cabinet|4|6 W
Porch|5" cabinet|2|3 W
`, "Line 2", `
Orchid Centre - Line test|||Job|OC 66-2
Line|2|||
Amplifier|PA-1|Output|2|
Rated|120 W|Line volts|100 V|
Measured at 1 kHz|104 ohm|||

Room|Speaker|Qty|Tap set
Nursery 1|horn|2|15 W
Nursery 2|horn|2|15 W
Nursery 3|horn|2|15 W
`, "Line 3", `
Orchid Centre - Line test|||Job|OC 66-2
Line|3|||
Amplifier|PA-2|Output|1|
Rated|60 W|Line volts|100 V|
Measured at 1 kHz|301 ohm|||

Room|Speaker|Qty|Tap set
Meeting|ceiling|4|6 W
Lab|ceiling|3|3 W
`), Truth: func(t *typed.Truth) {
		t.Is("OC 66-2", "Orchid Centre", "a test sheet for each line, amplifier, output and rating as pairs above the table, a measured impedance")
		t.Speakers("tap_v=100; line_v=100", `
sheet|rows|room|count|tap_w|amplifier|channel
Line 1|8|Display house|6|6|PA-1|1
Line 1|9|Cloud house|4|6|PA-1|1
Line 1|10|Porch|2|3|PA-1|1
Line 2|8|Nursery 1|2|15|PA-1|2
Line 2|9|Nursery 2|2|15|PA-1|2
Line 2|10|Nursery 3|2|15|PA-1|2
Line 3|8|Meeting|4|6|PA-2|1
Line 3|9|Lab|3|3|PA-2|1
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nPA-1|1|120|66\nPA-1|2|120|90\nPA-2|1|60|33")
		t.Amplifiers("", "amplifier|rated_w|load_w\nPA-1|240|156\nPA-2|60|33")
	}},
}
