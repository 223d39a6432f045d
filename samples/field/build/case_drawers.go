package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// drawers keep tables beside drawings: design technicians and a building information modeller.
var drawers = []typed.Case{
	{File: "drawing office/PA-SK-104 schedule.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("SK-104")
		p.Put("A1", `
Drg PA-SK-104||||||Proj|J2093
Foxmere Garden Pavilions||||||Line|100 V
||||||||
Location||Loudspeaker||||Local control||Source
Block|Room|Type|Off|Tap||Tag|Rating|
||||W|dB||W|Amp/Ch
A|Palm court|P1|6|10|96||  |1/1
A|Gallery|C1|8|3|92|LC1|36|1/2
A|Gallery lobby|C1|2|3|90|LC2|12|1/2
B|Seed room|C1|4|1.5|88|LC3|6|1/3
B|Potting|H1|2|15|104|||1/3
B|Yard|H1|2|15|104|||1/4
B|Future kiosk|C1|2|3|90|||1/4
`)
		p.Merge("A4:B4", "C4:F4", "G4:H4", "E5:F5", "C5:C6", "D5:D6", "A5:A6", "B5:B6")
		p.Sheet("AMP").Put("A1", `
Amplifier 1, 4 channels
Ch|W
1|60
2|60
3|60
4|60
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("J2093", "Foxmere", "three rows of headers, merged; a column of sound levels beside the watts; the amplifier named in the title of its list")
		t.Speakers("sheet=SK-104; tap_v=100; line_v=100; amplifier=1", `
rows|room|count|tap_w|channel|control|status
7|Palm court|6|10|1||installed
8|Gallery|8|3|2|LC1|installed
9|Gallery lobby|2|3|2|LC2|installed
10|Seed room|4|1.5|3|LC3|installed
11|Potting|2|15|3||installed
12|Yard|2|15|4||installed
13|Future kiosk|2|3|4||future
`)
		t.Channels("line_v=100; amplifier=1; rated_w=60", "channel|load_w\n1|60\n2|30\n3|36\n4|30")
		t.Amplifiers("", "amplifier|rated_w|load_w\n1|240|156")
		t.Controls("", "control|rated_w|load_w\nLC1|36|24\nLC2|12|6\nLC3|6|6")
	}},

	{File: "drawing office/All on one sheet.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Sheet1")
		p.Put("A1", `
Project 715 - Stonecross Observatory - public address||
Constant voltage 100 V||
`)
		p.Put("A4", `
TABLE 1 - LOUDSPEAKERS||||
Zone|Room|No|Tap|Control
1|Dome|4|6 W|
1|Gallery|4|3 W|VC/1
2|Classroom 1|4|6 W|VC/2
2|Classroom 2|4|6 W|VC/3
3|Terrace|3|15 W|
`)
		p.Put("G4", `
TABLE 2 - AMPLIFIER CHANNELS||
Channel|Zone|W
CH1|1|60
CH2|2|60
CH3|3|60
`)
		p.Put("G11", `
TABLE 3 - CONTROLS|
Control|W
VC/1|10
VC/2|36
VC/3|20
`)
		p.Put("A14", `
TABLE 4 - CABLES TO ZONES|||
Zone|Cable|Length
1|1.5 mm²|35 m
2|1.5 mm²|60 m
3|2.5 mm²|110 m
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("715", "Stonecross Observatory", "four tables on one sheet, two beside each other; zones join them")
		t.Speakers("sheet=Sheet1; tap_v=100; line_v=100", `
rows|zone|room|count|tap_w|channel|control
6|1|Dome|4|6|CH1|
7|1|Gallery|4|3|CH1|VC/1
8|2|Classroom 1|4|6|CH2|VC/2
9|2|Classroom 2|4|6|CH2|VC/3
10|3|Terrace|3|15|CH3|
`)
		t.Channels("line_v=100; rated_w=60", "channel|load_w\nCH1|36\nCH2|48\nCH3|45")
		t.Controls("", "control|rated_w|load_w\nVC/1|10|12\nVC/2|36|24\nVC/3|20|24")
		t.Lines("note=one length", "zone|length_m|area_mm2\n1|35|1.5\n2|60|1.5\n3|110|2.5")
	}},

	{File: "drawing office/TAP MATRIX R3.xlsx", Kind: "schedule", Book: sheets("MATRIX", `
BIRCHFIELD CONSERVATORY   PROJ 2217-04   70.7V SYSTEM

|QTY BY TAP|||||||
ROOM|1.25W|2.5W|5W|10W|CIRCUIT|ATTEN|RATED
101 VESTIBULE||2|||P1||
102 PALM HALL|||6|4|P1||
103 ORCHID||4|2||P2|AT-1|50W
104 GIFT||6|||P2|AT-2|10W
105 MEETING|4||||P2|AT-3|10W
106 MECH||||1|P1||
TOTAL QTY|4|12|8|5|||

CIRCUIT|AMP WATTS|||
P1|125|||
P2|60|||
`), Truth: func(t *typed.Truth) {
		t.Is("2217-04", "BIRCHFIELD CONSERVATORY", "a matrix of counts by tap with circuit, attenuator and rating columns behind the taps")
		t.Speakers("sheet=MATRIX; tap_v=70.7; line_v=70.7", `
rows|room|count|tap_w|channel|control
5|101 VESTIBULE|2|2.5|P1|
6|102 PALM HALL|6|5|P1|
6|102 PALM HALL|4|10|P1|
7|103 ORCHID|4|2.5|P2|AT-1
7|103 ORCHID|2|5|P2|AT-1
8|104 GIFT|6|2.5|P2|AT-2
9|105 MEETING|4|1.25|P2|AT-3
10|106 MECH|1|10|P1|
`)
		t.Channels("line_v=70.7", "channel|rated_w|load_w\nP1|125|85\nP2|60|40")
		t.Controls("", "control|rated_w|load_w\nAT-1|50|20\nAT-2|10|15\nAT-3|10|5")
		t.Left("MATRIX", "11|total|counts by tap")
	}},

	{File: "drawing office/zones as sheets.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Index")
		p.Put("A1", `
River Leam Boathouses, job 8842
All 100 V line

Zone|Name|Amp|Ch|Amp W|Cable run m|Size mm2
1|Clubroom|A|1|60|28|1.5
2|Boat bays|A|2|60|45|1.5
3|Towpath|B|1|120|190|2.5
`)
		p = p.Sheet("Zone 1")
		p.Put("A1", `
Zone 1 Clubroom

Tag|Where|Type|Tap W|Vol
1.01|Clubroom|ceiling|6|VC1.1
1.02|Clubroom|ceiling|6|VC1.1
1.03|Clubroom|ceiling|6|VC1.1
1.04|Kitchenette|ceiling|3|VC1.2
|||21|
VC1.1 is 24 W, VC1.2 is 6 W
`)
		p = p.Sheet("Zone 2")
		p.Put("A1", `
Zone 2 Boat bays

Tag|Where|Type|Tap W|Vol
2.01|Bay 1|cabinet|10|-
2.02|Bay 2|cabinet|10|-
2.03|Bay 3|cabinet|10|-
2.04|Repair bay|cabinet|10|VC2.1
|||40|
VC2.1 is 24 W
`)
		p = p.Sheet("Zone 3")
		p.Put("A1", `
Zone 3 Towpath

Tag|Where|Type|Tap W|Vol
3.01|Post 1|horn|15|-
3.02|Post 2|horn|15|-
3.03|Post 3|horn|15|-
3.04|Post 4|horn|15|-
3.05|Post 5|horn|15|- (future)
|||75|
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("8842", "River Leam", "an index sheet with outputs and cables, one sheet a zone, sums without a word, ratings in a last line")
		t.Speakers("tap_v=100; line_v=100; status=installed", `
sheet|rows|zone|tag|room|tap_w|amplifier|channel|control|status
Zone 1|4|1|1.01|Clubroom|6|A|1|VC1.1|installed
Zone 1|5|1|1.02|Clubroom|6|A|1|VC1.1|installed
Zone 1|6|1|1.03|Clubroom|6|A|1|VC1.1|installed
Zone 1|7|1|1.04|Kitchenette|3|A|1|VC1.2|installed
Zone 2|4|2|2.01|Bay 1|10|A|2||installed
Zone 2|5|2|2.02|Bay 2|10|A|2||installed
Zone 2|6|2|2.03|Bay 3|10|A|2||installed
Zone 2|7|2|2.04|Repair bay|10|A|2|VC2.1|installed
Zone 3|4|3|3.01|Post 1|15|B|1||installed
Zone 3|5|3|3.02|Post 2|15|B|1||installed
Zone 3|6|3|3.03|Post 3|15|B|1||installed
Zone 3|7|3|3.04|Post 4|15|B|1||installed
Zone 3|8|3|3.05|Post 5|15|B|1||future
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nA|1|60|21\nA|2|60|40\nB|1|120|60")
		t.Amplifiers("", "amplifier|rated_w|load_w\nA|120|61\nB|120|60")
		t.Controls("", "control|rated_w|load_w\nVC1.1|24|18\nVC1.2|6|3\nVC2.1|24|10")
		t.Lines("note=one length", "zone|length_m|area_mm2\n1|28|1.5\n2|45|1.5\n3|190|2.5")
		t.Left("Zone 1", "8|total|\n9|note|")
	}},

	{File: "drawing office/PA sked typo.txt", Kind: "schedule", Bytes: text(`
Prj 33-9 Linden Crossing Zamboni Bldg & Rink→→→→→→
70v→→→→→→
Rm→Spkr typ→Qnty→Wattage→Vol cntrl→Zn→Ampl
Rink E→hrn→4→30w→→1→#1
Rink W→hrn→4→30w→→1→#1
Bleechers→wall mnt→6→15w→→2→#2
Skate rentl→ceilng→2→5w→VC1→3→#3
Loby→ceilng→8→5w→VC2→3→#3
Rest rms→ceilng→4→2.5w→→3→#3
Tot→→28→→→→
→→→→→→
Ampl #1 = 250w, #2 = 125w, #3 = 100w→→→→→→
VC1 = 10w, VC2 = 35w→→→→→→
`), Truth: func(t *typed.Truth) {
		t.Is("33-9", "Linden Crossing", "misspelled words and shortened headers, tabs, ratings in two lines below")
		t.Speakers("tap_v=70.7; line_v=70.7", `
rows|room|zone|count|tap_w|control|amplifier
4|Rink E|1|4|30||#1
5|Rink W|1|4|30||#1
6|Bleechers|2|6|15||#2
7|Skate rentl|3|2|5|VC1|#3
8|Loby|3|8|5|VC2|#3
9|Rest rms|3|4|2.5||#3
`)
		t.Channels("line_v=70.7", "amplifier|rated_w|load_w\n#1|250|240\n#2|125|90\n#3|100|60")
		t.Amplifiers("", "amplifier|rated_w|load_w\n#1|250|240\n#2|125|90\n#3|100|60")
		t.Controls("", "control|rated_w|load_w\nVC1|10|10\nVC2|35|40")
		t.Left("", "10|total|counts")
	}},

	{File: "revisions/8120 alpine house rev 1.xlsx", Kind: "schedule", Book: sheets("Sched", `
Project no. 8120|Alpine House, Dunmorrow Gardens
Revision|1
Line voltage|100 V

Room|Qty|Tap W|VC|VC W|Amp|Amp W
Display|6|6|||A1|60
Rock bank|4|6|||A1|60
Frames|2|3|V1|6|A1|60
`), Truth: func(t *typed.Truth) {
		t.Is("8120", "Alpine House", "replaced by revision 2")
		t.Revision("1", true)
		t.Speakers("sheet=Sched; tap_v=100; line_v=100; amplifier=A1", `
rows|room|count|tap_w|control
6|Display|6|6|
7|Rock bank|4|6|
8|Frames|2|3|V1
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nA1|60|66")
		t.Amplifiers("", "amplifier|rated_w|load_w\nA1|60|66")
		t.Controls("", "control|rated_w|load_w\nV1|6|6")
	}},
	{File: "revisions/8120 alpine house rev 2.xlsx", Kind: "schedule", Book: sheets("Sched", `
Project no. 8120|Alpine House, Dunmorrow Gardens
Revision|2
Line voltage|100 V

Room|Qty|Tap W|VC|VC W|Amp|Amp W
Display|6|6|||A1|120
Rock bank|4|6|||A1|120
Frames|2|3|V1|12|A1|120
Tufa wall|2|6|V1|12|A1|120
`), Truth: func(t *typed.Truth) {
		t.Is("8120", "Alpine House", "the newer revision")
		t.Revision("2", false)
		t.Speakers("sheet=Sched; tap_v=100; line_v=100; amplifier=A1", `
rows|room|count|tap_w|control
6|Display|6|6|
7|Rock bank|4|6|
8|Frames|2|3|V1
9|Tufa wall|2|6|V1
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nA1|120|78")
		t.Amplifiers("", "amplifier|rated_w|load_w\nA1|120|78")
		t.Controls("", "control|rated_w|load_w\nV1|12|18")
	}},
}
