package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Nine English-writing hands: British, American, Canadian, Australian.
var siteHands = []typed.Case{
	// Trev, lead installer of a small British firm, fills in the as-fitted list on the Friday of handover because the last payment waits for it.
	{File: "handed in/7714 rink as fitted.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Speakers")
		p.Put("A1", `
Skellow Ice Rink - PA as fitted
Job|7714|||100V line
||
Ref|Location|Zone|Type|Qty|Tap (W)|Amp.ch|VC
S1|North barrier|Rink|horn|5|15|1.1|
S2|South barrier|Rink|horn|5|15|1.1|
S3|Scoreboard end|Rink|horn|2|10|1.1|
S4|Tiers|Seating|wall box|8|6|1.2|
S5|Tier stairs|Seating|wall box|2|3|1.2|
S6|Skate hire|Foyer|ceiling|4|3|1.3|VC1
S7|Foyer|Foyer|ceiling|6|3|1.3|VC2
S8|Ticket desk|Foyer|ceiling|1|1.5|1.3|VC3
S9|Corridor|Changing|ceiling|5|3|1.4|
S10|Team room A|Changing|ceiling|2|3|1.4|VC4
S11|Team room B|Changing|ceiling|2|3|1.4|VC5
S12|Ice plant|Changing|horn|1|10|1.4|
`)
		p.Bold("A1", "A4:H4")
		q := p.Sheet("Amps")
		q.Put("A1", `
Amp|Ch|Feeds|Rated W|Cable|Run (m)
1|1|Rink|240|2.5mm² 2 core|140
1|2|Seating|120|2.5mm² 2 core|85
1|3|Foyer|60|1.5mm² 2 core|40
1|4|Changing|60|1.5mm² 2 core|65
`)
		q.Bold("A1:F1")
		r := p.Sheet("VCs")
		r.Put("A1", `
VC|Where fitted|Rating
VC1|Behind skate hire counter|24W
VC2|Foyer, by cleaner's cupboard|24W
VC3|Ticket desk|6W
VC4|Team room A|12W
VC5|Team room B|12W
`)
		r.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("7714", "Skellow Ice Rink", "plain; amplifier and channel in one number, outputs with cables and controls on sheets of their own")
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; amplifier=1", `rows|tag|room|zone|count|tap_w|channel|control
5|S1|North barrier|Rink|5|15|1|
6|S2|South barrier|Rink|5|15|1|
7|S3|Scoreboard end|Rink|2|10|1|
8|S4|Tiers|Seating|8|6|2|
9|S5|Tier stairs|Seating|2|3|2|
10|S6|Skate hire|Foyer|4|3|3|VC1
11|S7|Foyer|Foyer|6|3|3|VC2
12|S8|Ticket desk|Foyer|1|1.5|3|VC3
13|S9|Corridor|Changing|5|3|4|
14|S10|Team room A|Changing|2|3|4|VC4
15|S11|Team room B|Changing|2|3|4|VC5
16|S12|Ice plant|Changing|1|10|4|`)
		t.Channels("line_v=100; amplifier=1", `channel|rated_w|load_w
1|240|170
2|120|54
3|60|31.5
4|60|37`)
		t.Amplifiers("", `amplifier|load_w
1|292.5`)
		t.Controls("", `control|rated_w|load_w
VC1|24|12
VC2|24|18
VC3|6|1.5
VC4|12|6
VC5|12|6`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Rink|140|2.5
Seating|85|2.5
Foyer|40|1.5
Changing|65|1.5`)
	}},

	// Maureen, site manager of an English primary school, writes down what is where for the colleague who takes over at Easter.
	{File: "handed in/PA speakers (Maureen).xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("PA")
		p.Put("A1", `
PA speakers, Harrowfold Primary
Amp is in the office cupboard, 120 watts, 100 volt line. Everything hangs on the one line.
||
Where|How many|Watts each|What sort|Volume knob|
Main entrance|1|3|round ceiling|no
Front office|1|1.5|round ceiling|yes, 6 W
Hall|4|6|box on wall|yes, 36 W|knob is by the stage door
Dining room|2|6|box on wall|yes, 12 W
Reception class|1|3|round ceiling|no
Year 1|1|3|round ceiling|no
Year 2|1|3|round ceiling|no
Year 3|1|3|round ceiling|no|goes quiet when it is cold
Library|2|3|round ceiling|yes, 6 W
Top corridor|2|3|round ceiling|no
Playground|2|10|horn|no|mind the wasps
Boiler house|1|10|horn|no
Total
`)
		p.Formula("B17", "SUM(B5:B16)")
		p.Bold("A1", "A4:E4", "A17:B17")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Harrowfold Primary", "plain list of a caretaker; one amplifier in a sentence, controls without a name, known by their rating")
		t.Speakers("sheet=PA; tap_v=100; line_v=100", `rows|room|count|tap_w|note
5|Main entrance|1|3|
6|Front office|1|1.5|unnamed
7|Hall|4|6|unnamed
8|Dining room|2|6|unnamed
9|Reception class|1|3|
10|Year 1|1|3|
11|Year 2|1|3|
12|Year 3|1|3|
13|Library|2|3|unnamed
14|Top corridor|2|3|
15|Playground|2|10|
16|Boiler house|1|10|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|120|94.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|120|94.5`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|6|1.5
|36|24
|12|12
|6|6`)
		t.Left("PA", `17|total|count of all`)
	}},

	// Priya, facilities assistant of a British maritime museum, exports part of the asset register for the insurer's renewal.
	{File: "handed in/asset_export_AV.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Asset ID,Class,Description,Location,Tap,Connected to,Condition,Year
AV-0401,Amplifier,"Two outputs, 120 W each, 100 V line",Comms room,,,Good,2016
AV-0402,Volume control,Wall plate 36 W,Lecture room,,AV-0401 out 2,Good,2016
AV-0403,Loudspeaker,Ceiling,Entrance hall,3 W,AV-0401 out 1,Good,2016
AV-0404,Loudspeaker,Ceiling,Entrance hall,3 W,AV-0401 out 1,Good,2016
AV-0405,Loudspeaker,Ceiling,Shop,3 W,AV-0401 out 1,Good,2016
AV-0406,Loudspeaker,Ceiling,Shop,3 W,AV-0401 out 1,Grille dented,2016
AV-0407,Loudspeaker,Ceiling,Cloakroom,1.5 W,AV-0401 out 1,Good,2016
AV-0408,Loudspeaker,Wall cabinet,Ropewalk gallery,6 W,AV-0401 out 1,Good,2016
AV-0409,Loudspeaker,Wall cabinet,Ropewalk gallery,6 W,AV-0401 out 1,Good,2016
AV-0410,Loudspeaker,Wall cabinet,Ropewalk gallery,6 W,AV-0401 out 1,Good,2016
AV-0411,Loudspeaker,Wall cabinet,Sail loft gallery,6 W,AV-0401 out 1,Good,2018
AV-0412,Loudspeaker,Wall cabinet,Sail loft gallery,6 W,AV-0401 out 1,Good,2018
AV-0413,Loudspeaker,Wall cabinet,Lecture room,6 W,AV-0402,Good,2016
AV-0414,Loudspeaker,Wall cabinet,Lecture room,6 W,AV-0402,Good,2016
AV-0415,Loudspeaker,Wall cabinet,Lecture room,6 W,AV-0402,Good,2016
AV-0416,Loudspeaker,Wall cabinet,Lecture room,6 W,AV-0402,Good,2016
AV-0417,Loudspeaker,Ceiling,Upper landing,3 W,AV-0401 out 2,Good,2016
AV-0418,Loudspeaker,Ceiling,Reading room,1.5 W,AV-0401 out 2,Good,2016
AV-0419,Loudspeaker,Horn,Loading bay,10 W,AV-0401 out 2,Weathered,2011
AV-0420,Loudspeaker,Horn,Courtyard,10 W,AV-0401 out 2,Weathered,2011
AV-0421,Loudspeaker,Ceiling,Store 3 shelf D,,not connected,"Spare, boxed",2018
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "plain register, one row an asset; amplifier and control are rows of the same table, four loudspeakers name the control as what feeds them")
		t.Speakers("tap_v=100; line_v=100; amplifier=AV-0401; channel=1", `rows|tag|room|tap_w
4|AV-0403|Entrance hall|3
5|AV-0404|Entrance hall|3
6|AV-0405|Shop|3
7|AV-0406|Shop|3
8|AV-0407|Cloakroom|1.5
9..11|AV-0408..|Ropewalk gallery|6
12..13|AV-0411..|Sail loft gallery|6`)
		t.Speakers("tap_v=100; line_v=100; amplifier=AV-0401; channel=2", `rows|tag|room|tap_w|control
14..17|AV-0413..|Lecture room|6|AV-0402
18|AV-0417|Upper landing|3|
19|AV-0418|Reading room|1.5|
20|AV-0419|Loading bay|10|
21|AV-0420|Courtyard|10|`)
		t.Channels("line_v=100; amplifier=AV-0401", `channel|rated_w|load_w
1|120|43.5
2|120|48.5`)
		t.Amplifiers("", `amplifier|load_w
AV-0401|92`)
		t.Controls("", `control|rated_w|load_w
AV-0402|36|24`)
		t.Left("", `2|amplifier|
3|control|
22|spare|boxed, on a shelf`)
	}},

	// Dale, estimator of an electrical contractor in the Midwest, takes the counts off one drawing the night before the bid is due.
	{File: "handed in/Bid 24-118 paging takeoff.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Takeoff")
		p.Put("A1", `
Lindstrand Natatorium - paging takeoff (70V)
Bid 24-118|||dwg AV-3
||
Zone|Area|Type|Qty|Tap W|Ext W|Vol Ctl
Z1|Pool deck east|surface|6|7.5|45|
Z1|Pool deck west|surface|6|7.5|45|
Z2|Bleachers|horn|4|15|60|
Z3|Lobby|ceiling|8|2.5|20|1 @ 35W
Z3|Ticket office|ceiling|1|1.25|1.25|
Z4|Locker room M|ceiling|4|2.5|10|
Z4|Locker room W|ceiling|4|2.5|10|
Z4|Family changing|ceiling|3|1.25|3.75|
Z5|Wet classroom|ceiling|4|5|20|1 @ 35W
Z5|Coaches office|ceiling|2|1.25|2.5|1 @ 10W
Total||| 42||217.5
||
Amp|Ch|Zone|Rated W @70V
PA-1|1|Z1|150
PA-1|2|Z2|150
PA-1|3|Z3|60
PA-1|4|Z4|60
PA-2|1|Z5|60
||
Home runs to rack||
Zone|Ft|Cable
Z1|310|14/2
Z2|265|14/2
Z3|140|16/2
Z4|180|16/2
Z5|225|16/2
`)
		p.Bold("A1", "A4:G4", "A15:F15", "A17:D17", "A24", "A25:C25")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("24-118", "Lindstrand Natatorium", "plain takeoff; outputs and home runs (feet, AWG) in small tables below, controls as a count with a rating")
		t.Speakers("sheet=Takeoff; tap_v=70.7; line_v=70.7", `rows|zone|room|count|tap_w|amplifier|channel|note
5|Z1|Pool deck east|6|7.5|PA-1|1|
6|Z1|Pool deck west|6|7.5|PA-1|1|
7|Z2|Bleachers|4|15|PA-1|2|
8|Z3|Lobby|8|2.5|PA-1|3|unnamed
9|Z3|Ticket office|1|1.25|PA-1|3|
10|Z4|Locker room M|4|2.5|PA-1|4|
11|Z4|Locker room W|4|2.5|PA-1|4|
12|Z4|Family changing|3|1.25|PA-1|4|
13|Z5|Wet classroom|4|5|PA-2|1|unnamed
14|Z5|Coaches office|2|1.25|PA-2|1|unnamed`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
PA-1|1|150|90
PA-1|2|150|60
PA-1|3|60|21.25
PA-1|4|60|23.75
PA-2|1|60|22.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
PA-1||195
PA-2|60|22.5`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Z3|35|20
|Z5|35|20
|Z5|10|2.5`)
		t.Lines("note=home run", `zone|length_m|area_mm2
Z1|94.488|2.081
Z2|80.772|2.081
Z3|42.672|1.309
Z4|54.864|1.309
Z5|68.58|1.309`)
		t.Left("Takeoff", `15|total|sums`)
	}},

	// Renee, project engineer of an American integrator, makes an amp loading sheet that the field crew tapes inside the rack door.
	{File: "handed in/R1 amp loading.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Rack R1")
		p.Put("A1", `
Bellwether Conservatory - rack R1 amp loading
Project 20-447. All lines 70.7V
||
AMP 1 CH A - 250W - PALM HOUSE
Device|Location|Qty|Tap|Load|Notes
Rock spkr|North path|6|15W|90W
Rock spkr|South path|4|15W|60W
Pole horn|Service door|1|7.5W|7.5W
|||Ch load|157.5W
||
AMP 1 CH B - 250W - FERN HOUSE
Device|Location|Qty|Tap|Load|Notes
Rock spkr|Creek walk|6|7.5W|45W
Surface|Potting bench|2|7.5W|15W|thru VC-1 (35W)
|||Ch load|60W
||
AMP 2 CH A - 125W - VISITOR CENTER
Device|Location|Qty|Tap|Load|Notes
Clg 8"|Lobby|8|5W|40W|thru VC-2 (100W)
Clg 8"|Classroom|4|5W|20W|thru VC-3 (35W)
Clg 4"|Restrooms|4|2.5W|10W
|||Ch load|70W
||
AMP 2 CH B - 125W - NOT USED
`)
		p.Merge("A4:F4", "A11:F11", "A17:F17", "A24:F24")
		p.Bold("A1", "A4", "A11", "A17", "A24")
		p.Colour("D9E1F2", "A5:F5", "A12:F12", "A18:F18")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("20-447", "Bellwether Conservatory", "a section an output; amplifier, output, rating and area in its title; controls with rating in remarks; an output not used")
		t.Speakers("sheet=Rack R1; tap_v=70.7; line_v=70.7; zone=PALM HOUSE; amplifier=AMP 1; channel=A; note=area as zone", `rows|room|count|tap_w
6|North path|6|15
7|South path|4|15
8|Service door|1|7.5`)
		t.Speakers("sheet=Rack R1; tap_v=70.7; line_v=70.7; zone=FERN HOUSE; amplifier=AMP 1; channel=B; note=area as zone", `rows|room|count|tap_w|control
13|Creek walk|6|7.5|
14|Potting bench|2|7.5|VC-1`)
		t.Speakers("sheet=Rack R1; tap_v=70.7; line_v=70.7; zone=VISITOR CENTER; amplifier=AMP 2; channel=A; note=area as zone", `rows|room|count|tap_w|control
19|Lobby|8|5|VC-2
20|Classroom|4|5|VC-3
21|Restrooms|4|2.5|`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
AMP 1|A|250|157.5
AMP 1|B|250|60
AMP 2|A|125|70
AMP 2|B|125|0`)
		t.Amplifiers("", `amplifier|load_w
AMP 1|217.5
AMP 2|70`)
		t.Controls("", `control|rated_w|load_w
VC-1|35|15
VC-2|100|40
VC-3|35|20`)
		t.Left("Rack R1", `9|total|sum of the output
15|total|sum of the output
22|total|sum of the output`)
	}},

	// Hank, chief technician of a university planetarium, lists for the change order which speakers the contractor shall re-tap.
	{File: "handed in/CO-07 retap list.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("CO-07")
		p.Put("A1", `
Ostrander Planetarium - Change Order 07, paging speakers re-tapped
Project P-2231. 70V. Everything is on PA-2 ch 1 (100W).
Completed 8/14, walked with contractor. NC = no change.
||
Tag|Location|Type|Was (W)|Now (W)|Remarks
S-01|Dome gallery N|wall|5|2.5|too loud before show
S-02|Dome gallery E|wall|5|2.5|"
S-03|Dome gallery S|wall|5|2.5|"
S-04|Dome gallery W|wall|5|2.5|"
S-05|Lobby|ceiling|2.5|NC|
S-06|Lobby|ceiling|2.5|NC|
S-07|Gift counter|ceiling|5|1.25|
S-08|Star lab|ceiling|5|REMOVED|lab is now storage
S-09|Exhibit hall|wall|5|10|
S-10|Exhibit hall|wall|5|10|
S-11|Exhibit hall|wall|-|10|ADDED
S-12|Loading dock|horn|10|NC|
S-13|Projector room|ceiling|2.5|1.25|behind VC-1 (10W)
S-14|Classroom|ceiling|2.5|5|behind VC-2 (10W)
S-15|Classroom|ceiling|2.5|5|behind VC-2 (10W)
||
Line load|||62.5|67.5
`)
		p.Bold("A1", "A5:F5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("P-2231", "Ostrander Planetarium", "taps before and after a change order; one loudspeaker removed, one added, three not changed")
		t.Speakers("sheet=CO-07; tap_v=70.7; line_v=70.7; amplifier=PA-2; channel=1", `rows|tag|room|tap_w|control
6|S-01|Dome gallery N|2.5|
7|S-02|Dome gallery E|2.5|
8|S-03|Dome gallery S|2.5|
9|S-04|Dome gallery W|2.5|
10|S-05|Lobby|2.5|
11|S-06|Lobby|2.5|
12|S-07|Gift counter|1.25|
14|S-09|Exhibit hall|10|
15|S-10|Exhibit hall|10|
16|S-11|Exhibit hall|10|
17|S-12|Loading dock|10|
18|S-13|Projector room|1.25|VC-1
19|S-14|Classroom|5|VC-2
20|S-15|Classroom|5|VC-2`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
PA-2|1|100|67.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
PA-2|100|67.5`)
		t.Controls("", `control|rated_w|load_w
VC-1|10|1.25
VC-2|10|10`)
		t.Left("CO-07", `13|removed|
22|total|line load before and after`)
	}},
}
