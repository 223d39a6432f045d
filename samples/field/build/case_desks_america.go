package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// desksAmerica: an apprentice, a consultant's drafter, a rink manager and a project engineer.
var desksAmerica = []typed.Case{
	{File: "desks/takeoff library T-201.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.Marks.Replace(`Tamarack Creek Branch Library,,,,,
Job 24-118 - spkr takeoff off T-201,,,by DJ,,
70V,,,,,
Zone,Rm,Room,Spkr,Qty,Tap W
1,101,Lobby,clg,4,5
1,102,Circulation Desk,clg,2,2.5
1,103,Vestibule,clg,1,2.5
2,110,Adult Stacks,clg,12,2.5
2,111,Reading Room,clg,6,2.5
2,112,Study A,clg,1,1.25
2,113,Study B,clg,1,1.25
3,120,Children's,clg,8,2.5
3,121,Story Room,clg,2,5
4,130,Staff Work,clg,3,2.5
4,131,Break,clg,1,2.5
4,132,Loading Dock,horn,1,7.5
,,,,,
Zone,Amp ch,Ch W,Home run ft,AWG,
1,1,60,85,16,
2,2,60,140,16,
3,3,60,165,16,
4,4,60,110,18,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("24-118", "Tamarack Creek Branch Library", "apprentice's takeoff; a second table below joins zones to the outputs of an amplifier without a name; feet and AWG")
		t.Speakers("tap_v=70.7; line_v=70.7; zone=1; channel=1", `rows|room|count|tap_w
5|Lobby|4|5
6|Circulation Desk|2|2.5
7|Vestibule|1|2.5`)
		t.Speakers("tap_v=70.7; line_v=70.7; zone=2; channel=2", `rows|room|count|tap_w
8|Adult Stacks|12|2.5
9|Reading Room|6|2.5
10|Study A|1|1.25
11|Study B|1|1.25`)
		t.Speakers("tap_v=70.7; line_v=70.7; zone=3; channel=3", `rows|room|count|tap_w
12|Children's|8|2.5
13|Story Room|2|5`)
		t.Speakers("tap_v=70.7; line_v=70.7; zone=4; channel=4", `rows|room|count|tap_w
14|Staff Work|3|2.5
15|Break|1|2.5
16|Loading Dock|1|7.5`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
|1|60|27.5
|2|60|47.5
|3|60|30
|4|60|17.5`)
		t.Amplifiers("", `amplifier|load_w
|122.5`)
		t.Lines("note=home run", `zone|length_m|area_mm2
1|25.908|1.309
2|42.672|1.309
3|50.292|1.309
4|33.528|0.823`)
	}},

	{File: "desks/AV6 schedules planetarium.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("AV6.01 LOUDSPEAKERS")
		p.Put("A1", `
LOUDSPEAKER SCHEDULE|||||||PROJECT NO. 19044
HALVORSEN RIDGE PLANETARIUM|||||||70.7V DISTRIBUTED
LOCATION||DEVICE||||FED FROM||
RM NO.|ROOM|TYPE|MOUNT|QTY|TAP (W)|AMP|CH|VC
100|VESTIBULE|S1|CLG|2|3.8|PA-1|A|
101|LOBBY|S1|CLG|8|7.5|PA-1|A|
102|TICKETS|S1|CLG|1|1.9|PA-1|A|VC-1
103|GIFT SHOP|S1|CLG|4|3.8|PA-1|A|VC-2
110|EXHIBIT HALL NORTH|S2|PENDANT|6|15|PA-1|B|
111|EXHIBIT HALL SOUTH|S2|PENDANT|5|15|PA-1|B|
120|CLASSROOM 1|S1|CLG|4|3.8|PA-2|A|VC-3
121|CLASSROOM 2|S1|CLG|4|3.8|PA-2|A|VC-4
122|CORRIDOR|S1|CLG|3|1.9|PA-2|A|
123|RESTROOMS|S1|CLG|2|1.9|PA-2|A|
EXT|COURTYARD|S3|WALL|4|15|PA-2|B|
`)
		p.Merge("A3:B3", "C3:F3", "G3:I3")
		p.Bold("A1", "A3:I3", "A4:I4")
		q := p.Sheet("AV6.02 AMPLIFIERS")
		q.Put("A1", `
AMPLIFIER SCHEDULE
MARK|CH|W/CH @ 70.7V|CONN. LOAD (W)|REMARKS
PA-1|A|150|84.7|
PA-1|B|250|165|
PA-2|A|150|39.9|
PA-2|B|100|60|PROVIDE HIGH PASS
`)
		q.Bold("A1", "A2:E2")
		r := p.Sheet("AV6.03 VOL CONTROLS")
		r.Put("A1", `
MARK|ROOM|RATING (W)|STEPS
VC-1|TICKETS|10|10
VC-2|GIFT SHOP|35|10
VC-3|CLASSROOM 1|35|10
VC-4|CLASSROOM 2|35|10
`)
		r.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("19044", "HALVORSEN RIDGE PLANETARIUM", "drawing office: banded headers, three sheets joined by marks")
		t.Speakers("sheet=AV6.01 LOUDSPEAKERS; tap_v=70.7; line_v=70.7; amplifier=PA-1; channel=A", `rows|room|count|tap_w|control
5|VESTIBULE|2|3.8|
6|LOBBY|8|7.5|
7|TICKETS|1|1.9|VC-1
8|GIFT SHOP|4|3.8|VC-2`)
		t.Speakers("sheet=AV6.01 LOUDSPEAKERS; tap_v=70.7; line_v=70.7; amplifier=PA-1; channel=B", `rows|room|count|tap_w
9|EXHIBIT HALL NORTH|6|15
10|EXHIBIT HALL SOUTH|5|15`)
		t.Speakers("sheet=AV6.01 LOUDSPEAKERS; tap_v=70.7; line_v=70.7; amplifier=PA-2; channel=A", `rows|room|count|tap_w|control
11|CLASSROOM 1|4|3.8|VC-3
12|CLASSROOM 2|4|3.8|VC-4
13|CORRIDOR|3|1.9|
14|RESTROOMS|2|1.9|`)
		t.Speakers("sheet=AV6.01 LOUDSPEAKERS; tap_v=70.7; line_v=70.7; amplifier=PA-2; channel=B", `rows|room|count|tap_w
15|COURTYARD|4|15`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
PA-1|A|150|84.7
PA-1|B|250|165
PA-2|A|150|39.9
PA-2|B|100|60`)
		t.Amplifiers("", `amplifier|load_w
PA-1|249.7
PA-2|99.9`)
		t.Controls("", `control|rated_w|load_w
VC-1|10|1.9
VC-2|35|15.2
VC-3|35|15.2
VC-4|35|15.2`)
	}},

	{File: "desks/facility/rink sound rack.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("rack")
		p.Put("A1", `
Copper Lake Ice Arena - sound rack, what feeds what (all 70 volt)
||
Top amp - "AMP 1" - 2 channels, 300 W each
Ch 1|Rink 1 ice|8 horns @ 30 W
Ch 2|Rink 1 bleachers|10 boxes @ 15 W
|Rink 1 penalty boxes|2 boxes @ 7.5 W
||
Middle amp - "AMP 2" - 2 channels, 300 W each
Ch 1|Rink 2 ice|8 horns @ 30 W
Ch 2|Rink 2 bleachers|6 boxes @ 15 W
||
Bottom amp - "AMP 3" - 1 channel, 120 W
Ch 1|Lobby|6 ceiling @ 5 W
|Skate rental|3 ceiling @ 5 W
|Locker rooms 1-4|4 ceiling @ 2.5 W|one in each room
|Locker room 5|1 ceiling @ 2.5 W|taken down 8/14, hole patched, not coming back
|Office|1 ceiling @ 2.5 W|wall volume 10 W
|Resurfacer garage|1 horn @ 15 W
`)
		p.Bold("A1", "A3", "A8", "A12")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Copper Lake Ice Arena", "rack list by amplifier: names and ratings in titles, channels only on first rows, count and tap in one text, one loudspeaker taken down, a volume control without a name")
		t.Speakers("sheet=rack; tap_v=70.7; line_v=70.7; amplifier=AMP 1", `rows|channel|room|count|tap_w
4|1|Rink 1 ice|8|30
5|2|Rink 1 bleachers|10|15
6|2|Rink 1 penalty boxes|2|7.5`)
		t.Speakers("sheet=rack; tap_v=70.7; line_v=70.7; amplifier=AMP 2", `rows|channel|room|count|tap_w
9|1|Rink 2 ice|8|30
10|2|Rink 2 bleachers|6|15`)
		t.Speakers("sheet=rack; tap_v=70.7; line_v=70.7; amplifier=AMP 3; channel=1", `rows|room|count|tap_w|note
13|Lobby|6|5|
14|Skate rental|3|5|
15|Locker rooms 1-4|4|2.5|
17|Office|1|2.5|unnamed
18|Resurfacer garage|1|15|`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
AMP 1|1|300|240
AMP 1|2|300|165
AMP 2|1|300|240
AMP 2|2|300|90
AMP 3|1|120|72.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP 1||405
AMP 2||330
AMP 3|120|72.5`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|10|2.5`)
		t.Left("rack", `16|removed|taken down`)
	}},

	{File: "desks/projects/CO-07 bus garage speakers.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("CO-07")
		p.Put("A1", `
Change Order 07 - Paging speakers|||||Project 3310
Sandhill Transit Bus Garage|||||70.7 V paging
||
Mark|Location|Circuit|Action|Qty|Tap was (W)|Tap now (W)|Reason
SP-1|Wash lane|P1|No change|2|15|15|
SP-2|Inspection bays 1-4|P1|Retap|4|15|7.5|RFI 22
SP-3|Inspection bays 5-8|P1|Retap|4|15|7.5|RFI 22
SP-4|Parts counter|P2|No change|1|5|5|
SP-5|Parts storage|P2|Delete|3|5|'-|Racking to ceiling
SP-6|Dispatch|P2|No change|2|2.5|2.5|
SP-7|Drivers' room|P2|Retap|4|5|2.5|Too loud
SP-8|Body shop|P3|No change|4|15|15|
SP-9|Tire shop|P3|Delete|2|15|'-|Bay is now storage
SP-10|Fuel island|P3|Add|3|'-|15|Owner request
SP-11|Yard gate|P3|Add|1|'-|30|Owner request
||
Circuit|Amp output rating (W)
P1|100
P2|60
P3|250
`)
		p.Bold("A1", "A4:H4", "A17:B17")
		p.Strike("A9:H9", "A13:H13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("3310", "Sandhill Transit Bus Garage", "change order: taps before and after, deletions struck out, additions; outputs named by circuit")
		t.Speakers("sheet=CO-07; tap_v=70.7; line_v=70.7; channel=P1", `rows|tag|room|count|tap_w
5|SP-1|Wash lane|2|15
6|SP-2|Inspection bays 1-4|4|7.5
7|SP-3|Inspection bays 5-8|4|7.5`)
		t.Speakers("sheet=CO-07; tap_v=70.7; line_v=70.7; channel=P2", `rows|tag|room|count|tap_w
8|SP-4|Parts counter|1|5
10|SP-6|Dispatch|2|2.5
11|SP-7|Drivers' room|4|2.5`)
		t.Speakers("sheet=CO-07; tap_v=70.7; line_v=70.7; channel=P3", `rows|tag|room|count|tap_w
12|SP-8|Body shop|4|15
14|SP-10|Fuel island|3|15
15|SP-11|Yard gate|1|30`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
|P1|100|90
|P2|60|20
|P3|250|135`)
		t.Amplifiers("", `amplifier|load_w
|245`)
		t.Left("CO-07", `9|removed|deleted by the change order
13|removed|deleted by the change order`)
	}},
}
