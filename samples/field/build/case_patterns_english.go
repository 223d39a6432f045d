package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// patternsEnglish are a drawing office, a yard manager, a volunteer and a caretaker.
var patternsEnglish = []typed.Case{
	{File: "patterns/as built/WG-118 loudspeaker matrix.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Rooms x lines")
		p.Put("A1", `
Wendlebury Botanical Garden
Job WG-118, as built. Number of loudspeakers by room and line, 100 V
||
Room|L1|L2|L3|L4|Total
Palm House|6||||6
Fern House||8|||8
Orchid Corridor||4|2||6
Shop|||6||6
Ticket Hall|||4||4
Potting Shed||||2|2
Compost Yard||||4|4
Loudspeakers|6|12|12|6|36
Tap, W each|10|6|3|15|
Load, W|60|72|36|90|258
Amplifier / output|PA1/1|PA1/2|PA2/1|PA2/2|
Output rated, W|120|120|60|120|
Cable, mm²|2.5|2.5|1.5|2.5|
Cable length, m|140|95|60|210|505
`)
		p.Bold("A1", "A4:F4", "A12:F12")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("WG-118", "Wendlebury Botanical Garden", "matrix of rooms by lines; taps, amplifiers, ratings and cables in rows below the counts")
		t.Speakers("sheet=Rooms x lines; tap_v=100; line_v=100; tap_w=10; amplifier=PA1; channel=1", `rows|room|count
5|Palm House|6`)
		t.Speakers("sheet=Rooms x lines; tap_v=100; line_v=100; tap_w=6; amplifier=PA1; channel=2", `rows|room|count
6|Fern House|8
7|Orchid Corridor|4`)
		t.Speakers("sheet=Rooms x lines; tap_v=100; line_v=100; tap_w=3; amplifier=PA2; channel=1", `rows|room|count
7|Orchid Corridor|2
8|Shop|6
9|Ticket Hall|4`)
		t.Speakers("sheet=Rooms x lines; tap_v=100; line_v=100; tap_w=15; amplifier=PA2; channel=2", `rows|room|count
10|Potting Shed|2
11|Compost Yard|4`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
PA1|1|120|60
PA1|2|120|72
PA2|1|60|36
PA2|2|120|90`)
		t.Amplifiers("", `amplifier|load_w
PA1|132
PA2|126`)
		t.Lines("note=one length a line", `line|length_m|area_mm2
L1|140|2.5
L2|95|2.5
L3|60|1.5
L4|210|2.5`)
		t.Left("Rooms x lines", `12|total|counts of the lines
13|note|taps of the lines
14|total|loads of the lines
15|note|amplifiers
16|note|ratings
17|note|cable
18|note|cable`)
	}},

	{File: "patterns/asset register/stables PA.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("PA assets")
		p.Put("A1", `
Tag|Item|Location|Setting|Fed by|Serves
AM1|Amplifier, 120 W, 100 V line|Tack room|||Indoor school, gallery, ring
VC1|Volume control 50 W|School office||AM1|LS01 to LS06
LS01|Cabinet speaker|Indoor school|6 W|VC1|
LS02|Cabinet speaker|Indoor school|6 W|VC1|
LS03|Cabinet speaker|Indoor school|6 W|VC1|
LS04|Cabinet speaker|Indoor school|6 W|VC1|
LS05|Cabinet speaker|Gallery|3 W|VC1|
LS06|Cabinet speaker|Gallery|3 W|VC1|
LS07|Horn speaker|Collecting ring|15 W|AM1|
LS08|Horn speaker|Collecting ring|15 W|AM1|
LS09|Horn speaker|Collecting ring|15 W|AM1|taken down 2019, bracket still there
AM2|Amplifier, 60 W, 100 V line|Tack room|||Stable blocks, barn
VC2|Volume control 12 W|Block A feed room||AM2|LS10 and LS11
LS10|Ceiling speaker|Block A|3 W|VC2|
LS11|Ceiling speaker|Block A|3 W|VC2|
LS12|Ceiling speaker|Block B|3 W|AM2|
LS13|Ceiling speaker|Block B|3 W|AM2|
LS14|Ceiling speaker|Farrier|1.5 W|AM2|
LS15|Cabinet speaker|Hay barn|6 W|AM2|
`)
		p.Bold("A1:F1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "one row a device: amplifiers and volume controls stand among the loudspeakers, Fed by and Serves columns; one horn taken down")
		t.Speakers("sheet=PA assets; tap_v=100; line_v=100; amplifier=AM1; control=VC1", `rows|tag|room|tap_w
4..7|LS01..|Indoor school|6
8..9|LS05..|Gallery|3`)
		t.Speakers("sheet=PA assets; tap_v=100; line_v=100; amplifier=AM1", `rows|tag|room|tap_w
10..11|LS07..|Collecting ring|15`)
		t.Speakers("sheet=PA assets; tap_v=100; line_v=100; amplifier=AM2", `rows|tag|room|tap_w|control
15..16|LS10..|Block A|3|VC2
17..18|LS12..|Block B|3|
19|LS14|Farrier|1.5|
20|LS15|Hay barn|6|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AM1|120|60
AM2|60|19.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AM1|120|60
AM2|60|19.5`)
		t.Controls("", `control|rated_w|load_w
VC1|50|30
VC2|12|6`)
		t.Left("PA assets", `2|other|amplifier
3|other|volume control
12|removed|taken down
13|other|amplifier
14|other|volume control`)
	}},

	{File: "patterns/boathouse/zone sheets.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Boat hall")
		p.Put("A1", `
Zone|Boat hall
Fed from|Amp A output 1
Volume control|none
Cable|2.5 mm² twin, 85 m
||
No.|Position|Type|Tap
1-1|over slip door|cabinet|6 W
1-2|over slip door|cabinet|6 W
1-3|rack bay 2|cabinet|6 W
1-4|rack bay 4|cabinet|6 W
1-5|rack bay 6|cabinet|6 W
1-6|workbench|cabinet|3 W
`)
		q := p.Sheet("Ergo room")
		q.Put("A1", `
Zone|Ergo room
Fed from|Amp A output 2
Volume control|VC1, 50 W, beside the door
Cable|1.5 mm² twin, 30 m
||
No.|Position|Type|Tap
2-1|window side|ceiling|6 W
2-2|window side|ceiling|6 W
2-3|wall side|ceiling|6 W
2-4|wall side|ceiling|6 W
`)
		r := p.Sheet("Crew rooms")
		r.Put("A1", `
Zone|Crew rooms
Fed from|Amp B
Volume control|VC2, 24 W, committee room, for 3-4 and 3-5 only
Cable|1.5 mm² twin, 45 m
||
No.|Position|Type|Tap
3-1|corridor|ceiling|3 W
3-2|changing 1|ceiling|3 W
3-3|changing 2|ceiling|3 W
3-4|committee room|ceiling|3 W
3-5|committee room|ceiling|3 W
3-6|coach's office|ceiling|1.5 W
`)
		s := p.Sheet("Pontoon")
		s.Put("A1", `
Zone|Pontoon
Fed from|Amp A output 2
Volume control|none
Cable|2.5 mm² armoured, 120 m
||
No.|Position|Type|Tap
4-1|boathouse gable|horn|15 W
4-2|lamp post|horn|15 W
`)
		u := p.Sheet("Rack")
		u.Put("A1", `
Amplifier|A|B
Outputs|2|1
Rated, each output|120 W|60 W
Line|100 V|100 V
Fitted|2016|2011
`)
		for _, z := range []typed.Page{p, q, r, s} {
			z.Bold("A1:A4", "A6:D6")
		}
		u.Bold("A1:A5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "a sheet a zone with a form above a small list; amplifiers across on the last sheet; a control for two of six loudspeakers")
		t.Speakers("sheet=Boat hall; tap_v=100; line_v=100; zone=Boat hall; amplifier=A; channel=1", `rows|tag|tap_w
7|1-1|6
8|1-2|6
9|1-3|6
10|1-4|6
11|1-5|6
12|1-6|3`)
		t.Speakers("sheet=Ergo room; tap_v=100; line_v=100; zone=Ergo room; amplifier=A; channel=2; control=VC1", `rows|tag|tap_w
7|2-1|6
8|2-2|6
9|2-3|6
10|2-4|6`)
		t.Speakers("sheet=Crew rooms; tap_v=100; line_v=100; zone=Crew rooms; amplifier=B", `rows|tag|room|tap_w|control
7|3-1|corridor|3|
8|3-2|changing 1|3|
9|3-3|changing 2|3|
10|3-4|committee room|3|VC2
11|3-5|committee room|3|VC2
12|3-6|coach's office|1.5|`)
		t.Speakers("sheet=Pontoon; tap_v=100; line_v=100; zone=Pontoon; amplifier=A; channel=2", `rows|tag|tap_w
7|4-1|15
8|4-2|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A|1|120|33
A|2|120|54
B||60|16.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A||87
B|60|16.5`)
		t.Controls("", `control|rated_w|load_w
VC1|50|24
VC2|24|6`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Boat hall|85|2.5
Ergo room|30|1.5
Crew rooms|45|1.5
Pontoon|120|2.5`)
	}},

	{File: "patterns/library/dimmer circuits.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Circuits")
		p.Put("A1", `
Coldharbour Library, reading lamps and spotlights
Dimmer rack D1, 6 channels of 1000 W, 230 V
||
Room|Ch 1|Ch 2|Ch 3|Ch 4|Total
Reading room|12|6|||18
Stacks|||20||20
Map room||4||3|7
Stairs|||6||6
Lamps|12|10|26|3|51
W each|40|35|18|50|
Load, W|480|350|468|150|1448
MCB|C10|C10|C10|C6|
Cable, mm²|2.5|2.5|2.5|1.5|
`)
		p.Bold("A4:F4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Coldharbour Library", "lamps on dimmer channels, in the same kind of matrix: no loudspeakers")
	}},
}
