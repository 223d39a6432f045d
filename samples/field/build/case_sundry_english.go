package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

var sundryEnglish = []typed.Case{
	// An electrician on nights who re-wired the pool's loudspeakers one by one and hands the office his list.
	{File: "sundry/natatorium as-built.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("As built")
		p.Put("A1", `
Millrace Natatorium - speakers as built
Job 18-244|||70 V system

Spkr|Where|Style|Tap W|Fed from|Ch|Vol ctrl
S1|Pool deck north|horn|16|Amp 1|1|
S2|Pool deck north|horn|16|Amp 1|1|
S3|Pool deck south|horn|16|Amp 1|1|
S4|Pool deck south|horn|16|Amp 1|1|
S5|Bleachers|surface|8|Amp 1|2|VC-1
S6|Bleachers|surface|8|Amp 1|2|VC-1
S7|Bleachers|surface|8|Amp 1|2|VC-1
S8|Bleachers top row|surface|4|Amp 1|2|VC-1
S9|Lobby|ceiling|4|Amp 2|1|VC-2
S10|Lobby|ceiling|4|Amp 2|1|VC-2
S11|Ticket window|ceiling|2|Amp 2|1|
S12|Men's lockers|ceiling|2|Amp 2|1|
S13|Women's lockers|ceiling|2|Amp 2|1|
S14|Filter room|horn|8|Amp 2|1|

Amp 1 = 2 x 100 W, Amp 2 = 1 x 60 W
VC-1 is a 35 W control, VC-2 a 10 W
`)
		p.Bold("A1", "A4:G4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("18-244", "Millrace Natatorium", "plain; ratings of amplifiers and controls in two sentences below")
		t.Speakers("sheet=As built; tap_v=70.7; line_v=70.7; amplifier=Amp 1; channel=1; tap_w=16", `rows|tag|room
5..6|S1..|Pool deck north
7..8|S3..|Pool deck south`)
		t.Speakers("sheet=As built; tap_v=70.7; line_v=70.7; amplifier=Amp 1; channel=2; control=VC-1", `rows|tag|room|tap_w
9..11|S5..|Bleachers|8
12|S8|Bleachers top row|4`)
		t.Speakers("sheet=As built; tap_v=70.7; line_v=70.7; amplifier=Amp 2; channel=1", `rows|tag|room|tap_w|control
13..14|S9..|Lobby|4|VC-2
15|S11|Ticket window|2|
16|S12|Men's lockers|2|
17|S13|Women's lockers|2|
18|S14|Filter room|8|`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
Amp 1|1|100|64
Amp 1|2|100|28
Amp 2|1|60|22`)
		t.Amplifiers("", `amplifier|rated_w|load_w
Amp 1|200|92
Amp 2|60|22`)
		t.Controls("", `control|rated_w|load_w
VC-1|35|28
VC-2|10|8`)
	}},

	// A caretaker about to retire writes down for the next one what is in the hall; knobs have no names.
	{File: "sundry/hall speakers for next caretaker.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Tallow Street Hall - loudspeakers - for whoever has the keys next,,,
"One amplifier (240 watt, 100 volt line) in the cupboard behind the stage, everything hangs on the same pair of wires",,,
,,,
Room,Speakers,Set at (watts),Can you turn it down?
"Main hall, left wall",4,10,no
"Main hall, right wall",4,10,no
Balcony,2,10,"yes, knob at the top of the stairs, says 36 W"
Committee room,2,3,"yes, knob by the door, says 12 W"
Kitchen,1,3,no
Corridor,3,1.5,no
Gents,1,1.5,no
Ladies,1,1.5,no
"Car park, horn on the gable",1,15,no
Under the stage,2,,"old ones lying there, not connected to anything"
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Tallow Street Hall", "plain; two knobs without names, rated in a remark; two old loudspeakers that hang on nothing")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|note
5|Main hall, left wall|4|10|
6|Main hall, right wall|4|10|
7|Balcony|2|10|unnamed
8|Committee room|2|3|unnamed
9|Kitchen|1|3|
10|Corridor|3|1.5|
11|Gents|1|1.5|
12|Ladies|1|1.5|
13|Car park, horn on the gable|1|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|131.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|131.5`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|36|20
|12|6`)
		t.Left("", `14|spare|not connected to anything`)
	}},

	// A quantity surveyor's bill for a station tender: amplifier outputs in the item titles, cable and spares among the items.
	{File: "sundry/tenders/Bill 7 public address.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Bill 7")
		p.Put("A1", `
BILL NO. 7 - PUBLIC ADDRESS
Eddersley Junction station||||Tender ref|ET/0917
All loudspeakers to be 100 V line. Rates exclude VAT.
Item|Description|Unit|Qty|Rate|Amount
'7.1|Platform 1: loudspeaker line from amplifier PA1 output 1 (250 W)
a|Projector loudspeaker on lamp column, tapped at 10 W|nr|12|84|1008
b|Projector loudspeaker in waiting shelter, tapped at 5 W|nr|2|84|168
c|Cable 2 core 2.5 mm² LSZH, rack to end of line|m|165|3.2|528
'7.2|Platform 2: loudspeaker line from amplifier PA1 output 2 (250 W)
a|Projector loudspeaker on lamp column, tapped at 10 W|nr|14|84|1176
b|Cable 2 core 2.5 mm² LSZH, rack to end of line|m|210|3.2|672
'7.3|Booking hall: loudspeaker line from amplifier PA2 (120 W)
a|Ceiling loudspeaker in concourse, tapped at 3 W|nr|10|31|310
b|Ceiling loudspeaker in toilets, tapped at 1.5 W|nr|4|31|124
c|Ceiling loudspeaker in ticket office, tapped at 3 W, on attenuator AT1|nr|2|31|62
d|Attenuator AT1, wall mounted, 15 W|nr|1|38|38
e|Cable 2 core 1.5 mm² LSZH, rack to end of line|m|95|2.6|247
'7.4|Spares, to be handed over boxed
a|Projector loudspeaker|nr|2|84|168
b|Ceiling loudspeaker|nr|2|31|62
|Carried to summary||||4563
`)
		p.Bold("A1", "A4:F4", "A5:B5", "A9:B9", "A12:B12", "A18:B18", "B21:F21")
		p.Format("#,##0.00", "E6:F8", "E10:F11", "E13:F17", "E19:F20")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("ET/0917", "Eddersley Junction station", "a bill of quantities: taps in the descriptions, zone, amplifier and rating in the title of each item group; boxed spares")
		t.Speakers("sheet=Bill 7; tap_v=100; line_v=100; zone=Platform 1; amplifier=PA1; channel=1; note=title as zone", `rows|count|tap_w
6|12|10
7|2|5`)
		t.Speakers("sheet=Bill 7; tap_v=100; line_v=100; zone=Platform 2; amplifier=PA1; channel=2; note=title as zone", `rows|count|tap_w
10|14|10`)
		t.Speakers("sheet=Bill 7; tap_v=100; line_v=100; zone=Booking hall; amplifier=PA2; note=title as zone", `rows|count|tap_w|control
13|10|3|
14|4|1.5|
15|2|3|AT1`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
PA1|1|250|130
PA1|2|250|140
PA2||120|42`)
		t.Amplifiers("", `amplifier|rated_w|load_w
PA1||270
PA2|120|42`)
		t.Controls("", `control|rated_w|load_w
AT1|15|6`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Platform 1|165|2.5
Platform 2|210|2.5
Booking hall|95|1.5`)
		t.Left("Bill 7", `19|spare|boxed
20|spare|boxed
21|total|sum of amounts`)
	}},

	// A commissioning engineer's record of the day the lines were measured: two header rows, one line in two rows, a fault put right.
	{File: "sundry/line test planetarium.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Line test")
		p.Put("A1", `
Kestwick Planetarium, contract KP-306
Line test record. 100 V lines. Rack amplifiers AR1 (4 x 125 W) and AR2 (2 x 60 W)

Line|||Feed||Loudspeakers|||Ohms at 1 kHz||
No|Area served||Amp|Out|Qty|Tap W|W|calc|meas|Result
L1|Dome, lower ring||AR1|1|8|10|80|125|121|pass
L2|Dome, upper ring||AR1|2|8|6|48|208|205|pass
L3|Foyer||AR1|3|6|3|18|333|329|pass
|||||2|6|12
L4|Shop and ticket desk||AR1|4|5|3|15|667|660|pass
L5|Classroom||AR2|1|4|6|24|417|open|fail. Joint above door remade, then 412, pass
L6|Courtyard||AR2|2|2|15|30|333|336|pass
|||||35||227
`)
		p.Merge("A4:C4", "D4:E4", "F4:H4", "I4:J4", "A8:A9", "B8:C9", "D8:D9", "E8:E9", "I8:I9", "J8:J9", "K8:K9")
		p.Bold("A1", "A4:K5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("KP-306", "Kestwick Planetarium", "two header rows with merged cells, a line over two rows, measured ohms beside the watts, a failed test put right")
		t.Speakers("sheet=Line test; tap_v=100; line_v=100; amplifier=AR1", `rows|zone|count|tap_w|channel
6|Dome, lower ring|8|10|1
7|Dome, upper ring|8|6|2
8|Foyer|6|3|3
9|Foyer|2|6|3
10|Shop and ticket desk|5|3|4`)
		t.Speakers("sheet=Line test; tap_v=100; line_v=100; amplifier=AR2", `rows|zone|count|tap_w|channel
11|Classroom|4|6|1
12|Courtyard|2|15|2`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AR1|1|125|80
AR1|2|125|48
AR1|3|125|30
AR1|4|125|15
AR2|1|60|24
AR2|2|60|30`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AR1|500|173
AR2|120|54`)
		t.Left("Line test", `13|total|sums without a word`)
	}},

	// A museum's lighting technician lists the drivers of the showcase lamps; zones, outputs, watts and dimmers, but no sound.
	{File: "sundry/showcase drivers.csv", Kind: "not-a-schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Museum of Rope and Sail,Showcase lighting,,,,,
,,,,,,
Gallery,Case,Lamps,W each,Driver,Output,Dimmer
Rope walk,C1,6,3,D1 (60 W),1,DM1
Rope walk,C2,6,3,D1,2,DM1
Rope walk,C3,4,3,D1,3,DM1
Sail loft,C4,8,1.5,D2 (60 W),1,DM2
Sail loft,C5,8,1.5,D2,2,DM2
Sail loft,C6 (tall),10,3,D2,3,
Figureheads,C7,4,6,D3 (100 W),1,DM3
Figureheads,C8,4,6,D3,2,DM3
Stair,Handrail strip,12,1.5,D3,3,
Total,,62,,,,
,,,,,,
All drivers 24 V DC. Warm white 2700 K. Spare lamps: drawer 4.,,,,,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "LED lamps and their drivers with outputs, watts and dimmers; the word loudspeaker does not occur")
	}},
}
