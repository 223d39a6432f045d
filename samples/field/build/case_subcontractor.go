package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// An Irish electrical subcontractor: a sheet a building, ditto marks, as-installed lists with what was taken out.
var subcontractor = []typed.Case{
	{File: "5521 Glendarrow/PA as installed.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Glasshouses")
		p.Put("A1", `
Contract 5521 - Glendarrow Botanic Gardens - Glasshouses
Fed from AMP1 (240 W, 100 V line)

No.|Area|Fitting|Qty|Tapped at|Watts|Control
1|Palm house|Projector 20 W|6|10 W|60|-
2|"|"|2|5 W|10|-
3|Fernery|"|4|5 W|20|VC1 (24 W)
4|Cactus house|"|3|5 W|15|VC2 (24 W)
5|Lobby|Ceiling 6 W|2|3 W|6|-
|||Total||111|
`)
		v := p.Sheet("Visitor centre")
		v.Put("A1", `
Contract 5521 - Glendarrow Botanic Gardens - Visitor centre
Fed from AMP2 (120 W, 100 V line)

No.|Area|Fitting|Qty|Tapped at|Watts|Control
1|Reception|Ceiling 6 W|4|6 W|24|VC3 (36 W)
2|Bookshop|"|3|3 W|9|VC4 (12 W)
3|Film room|"|4|6 W|24|VC5 (24 W)
4|Corridor|"|6|1.5 W|9|-
5|Toilets|"|4|1.5 W|6|-
6|Stores|"|1|3 W|3|-
|||Total||75|
`)
		g := p.Sheet("Grounds")
		g.Put("A1", `
Contract 5521 - Glendarrow Botanic Gardens - Grounds
Fed from AMP3 (240 W, 100 V line)

No.|Area|Fitting|Qty|Tapped at|Watts|Control
1|Walled garden|Garden pillar 20 W|5|20 W|100|-
2|Arboretum path|"|5|20 W|100|-
3|Car park|Horn 30 W|2|15 W|30|-
4|Gate lodge|"|1|7.5 W|7.5|-
|||Total||237.5|
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5521", "Glendarrow Botanic Gardens", "a sheet a building, its amplifier in a title line, ditto marks, totals")
		t.Speakers("sheet=Glasshouses; tap_v=100; line_v=100; amplifier=AMP1", `rows|room|model|count|tap_w|control
5|Palm house|Projector 20 W|6|10|
6|Palm house|Projector 20 W|2|5|
7|Fernery|Projector 20 W|4|5|VC1
8|Cactus house|Projector 20 W|3|5|VC2
9|Lobby|Ceiling 6 W|2|3|`)
		t.Speakers("sheet=Visitor centre; tap_v=100; line_v=100; amplifier=AMP2; model=Ceiling 6 W", `rows|room|count|tap_w|control
5|Reception|4|6|VC3
6|Bookshop|3|3|VC4
7|Film room|4|6|VC5
8|Corridor|6|1.5|
9|Toilets|4|1.5|
10|Stores|1|3|`)
		t.Speakers("sheet=Grounds; tap_v=100; line_v=100; amplifier=AMP3", `rows|room|model|count|tap_w
5|Walled garden|Garden pillar 20 W|5|20
6|Arboretum path|Garden pillar 20 W|5|20
7|Car park|Horn 30 W|2|15
8|Gate lodge|Horn 30 W|1|7.5`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP1|240|111
AMP2|120|75
AMP3|240|237.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP1|240|111
AMP2|120|75
AMP3|240|237.5`)
		t.Controls("", `control|rated_w|load_w
VC1|24|20
VC2|24|15
VC3|36|24
VC4|12|9
VC5|24|24`)
		t.Left("Glasshouses", `10|total|watts of the sheet`)
		t.Left("Visitor centre", `11|total|watts of the sheet`)
		t.Left("Grounds", `9|total|watts of the sheet`)
	}},

	{File: "5534 Rathcarrick/rink circuits.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Contract 5534,Rathcarrick Ice Rink,,,,
PA loudspeakers as installed,100 V line,,,,
,,,,,
Ref,Location,Type,Qty,Tap W,Total W
CIRCUIT 1,,,,,
1.1,Ice north barrier,Horn,4,10,40
1.2,Ice south barrier,Horn,4,10,40
1.3,Timekeepers,Wall box,2,5,10
CIRCUIT 2,,,,,
2.1,Terrace lower,Column,5,15,75
2.2,Terrace upper,Column,3,15,45
CIRCUIT 3,,,,,
3.1,Entrance,Ceiling,4,6,24
3.2,Skate exchange,Ceiling,5,3,15
3.3,Team rooms,Ceiling,6,3,18
3.4,Medical room,Ceiling,1,1.5,1.5
CIRCUIT 4,,,,,
4.1,Plant yard,Horn,2,15,30
4.2,Vehicle bay,Horn,1,7.5,7.5
4.3,Car park,Horn,3,15,45
,,,,,
Circuit,Amplifier,Output,Output W,Cable,Length m
CIRCUIT 1,AMP A,1,120,2 x 2.5 mm2,88
CIRCUIT 2,AMP A,2,120,2 x 2.5 mm2,104
CIRCUIT 3,AMP B,1,60,2 x 1.5 mm2,57
CIRCUIT 4,AMP B,2,60,2 x 1.5 mm2,143
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("5534", "Rathcarrick Ice Rink", "circuits as section titles, joined to a table of outputs and cables below")
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP A; channel=1", `rows|room|model|count|tap_w
6|Ice north barrier|Horn|4|10
7|Ice south barrier|Horn|4|10
8|Timekeepers|Wall box|2|5`)
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP A; channel=2", `rows|room|model|count|tap_w
10|Terrace lower|Column|5|15
11|Terrace upper|Column|3|15`)
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP B; channel=1", `rows|room|model|count|tap_w
13|Entrance|Ceiling|4|6
14|Skate exchange|Ceiling|5|3
15|Team rooms|Ceiling|6|3
16|Medical room|Ceiling|1|1.5`)
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP B; channel=2", `rows|room|model|count|tap_w
18|Plant yard|Horn|2|15
19|Vehicle bay|Horn|1|7.5
20|Car park|Horn|3|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP A|1|120|90
AMP A|2|120|120
AMP B|1|60|58.5
AMP B|2|60|82.5`)
		t.Amplifiers("", `amplifier|load_w
AMP A|210
AMP B|141`)
		t.Lines("", `line|length_m|area_mm2
CIRCUIT 1|88|2.5
CIRCUIT 2|104|2.5
CIRCUIT 3|57|1.5
CIRCUIT 4|143|1.5`)
		t.Left("", `5|title|circuit 1
9|title|circuit 2
12|title|circuit 3
17|title|circuit 4`)
	}},

	{File: "5560 Lisnabreen/boathouse speakers.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Schedule")
		p.Put("A1", `
Contract:|5560|||System:|100 V line
Site:|Lisnabreen Boathouse|||Amplifier:|one, AMP1, 4 outputs of 60 W

Ref|Room|Fitting|Tap|Output|Status|Comment
S1|Boat hall|Wall box|10 W|1|New 2019|
S2|Boat hall|Wall box|10 W|1|New 2019|
S3|Boat hall|Wall box|10 W|1|New 2019|
S4|Boat hall|Wall box|10 W|1|New 2019|
S5|Oar racks|Wall box|5 W|1|Existing|
S6|Gym|Wall box|10 W|2|New 2019|
S7|Gym|Wall box|10 W|2|New 2019|
S8|Club hall|Ceiling|6 W|2|Existing|
S9|Club hall|Ceiling|6 W|2|Existing|
S10|Club hall|Ceiling|6 W|2|Existing|
S11|Club hall|Ceiling|6 W|2|Removed 2019|ceiling lowered
S12|Changing A|Ceiling|3 W|3|Existing|
S13|Changing A|Ceiling|3 W|3|Existing|
S14|Changing B|Ceiling|3 W|3|Existing|
S15|Changing B|Ceiling|3 W|3|Existing|
S16|Lobby|Ceiling|3 W|3|Existing|
S17|Slipway|Horn|15 W|4|New 2019|
S18|Slipway|Horn|15 W|4|New 2019|
S19|Pontoon|Horn|15 W|4|New 2019|
S20|Pontoon|Horn|15 W|4|Removed 2019|rusted through
S21|Judges' box|Horn|5 W|4|Existing|
S22|-|Horn|-|-|Spare|left with the caretaker
`)
		p.Colour("D9D9D9", "A15:G15", "A24:G24")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5560", "Lisnabreen Boathouse", "states with a year; one amplifier named and rated in the title block")
		t.Speakers("sheet=Schedule; tap_v=100; line_v=100; amplifier=AMP1; channel=1; model=Wall box", `rows|tag|room|tap_w
5..8|S1..|Boat hall|10
9|S5|Oar racks|5`)
		t.Speakers("sheet=Schedule; tap_v=100; line_v=100; amplifier=AMP1; channel=2", `rows|tag|room|model|tap_w|status
10..11|S6..|Gym|Wall box|10|installed
12..14|S8..|Club hall|Ceiling|6|installed
15|S11|Club hall|Ceiling|6|removed`)
		t.Speakers("sheet=Schedule; tap_v=100; line_v=100; amplifier=AMP1; channel=3; model=Ceiling; tap_w=3", `rows|tag|room
16..17|S12..|Changing A
18..19|S14..|Changing B
20|S16|Lobby`)
		t.Speakers("sheet=Schedule; tap_v=100; line_v=100; amplifier=AMP1; channel=4; model=Horn", `rows|tag|room|tap_w|status
21..22|S17..|Slipway|15|installed
23|S19|Pontoon|15|installed
24|S20|Pontoon|15|removed
25|S21|Judges' box|5|installed`)
		t.Speakers("sheet=Schedule; status=spare; model=Horn", `rows|tag
26|S22`)
		t.Channels("line_v=100; amplifier=AMP1; rated_w=60", `channel|load_w
1|45
2|38
3|15
4|50`)
		t.Amplifiers("", `amplifier|load_w
AMP1|148`)
	}},

	{File: "5571 Knockfern/planetarium O&M loudspeakers.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("O&M 7.2")
		p.Put("A1", `
O&M manual, section 7.2 - public address
Contract|5571
Site|Knockfern Planetarium
Line|100 V; every room has its own cable from the rack

Room|Loudspeakers|||Cable||Control||Amplifier|
|Type|No.|Tap (W)|mm²|m|Ref.|Max W|Ref.|Output
Foyer|Ceiling|6|6|1.5|38|VC1|50|A1|1
Ticket office|Ceiling|1|3|1.5|44|VC2|10|A1|1
Dome, outer ring|Ceiling|10|3|1.5|66|VC3|36|A1|2
Dome control desk|Ceiling|1|1.5|1.5|72|-|-|A1|2
Space gallery|Projector|6|10|2.5|91|VC4|60|A2|1
Moon room|Projector|2|5|1.5|103|VC5|10|A2|1
Lecture theatre|Column|4|15|2.5|47|VC6|60|A2|2
Staff corridor|Ceiling|5|1.5|1.5|59|-|-|A3|1
Workshop|Projector|1|5|1.5|35|-|-|A3|1
Entrance steps|Horn|2|15|2.5|112|-|-|A3|2
Coach park|Horn|3|15|2.5|148|-|-|A3|2

Amplifiers: A1 and A2 are 2 x 120 W, A3 is 2 x 60 W.
`)
		p.Merge("A6:A7", "B6:D6", "E6:F6", "G6:H6", "I6:J6")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5571", "Knockfern Planetarium", "two header rows, groups of columns under merged headings; ratings in one sentence")
		t.Speakers("sheet=O&M 7.2; tap_v=100; line_v=100", `rows|room|model|count|tap_w|control|amplifier|channel
8|Foyer|Ceiling|6|6|VC1|A1|1
9|Ticket office|Ceiling|1|3|VC2|A1|1
10|Dome, outer ring|Ceiling|10|3|VC3|A1|2
11|Dome control desk|Ceiling|1|1.5||A1|2
12|Space gallery|Projector|6|10|VC4|A2|1
13|Moon room|Projector|2|5|VC5|A2|1
14|Lecture theatre|Column|4|15|VC6|A2|2
15|Staff corridor|Ceiling|5|1.5||A3|1
16|Workshop|Projector|1|5||A3|1
17|Entrance steps|Horn|2|15||A3|2
18|Coach park|Horn|3|15||A3|2`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A1|1|120|39
A1|2|120|31.5
A2|1|120|70
A2|2|120|60
A3|1|60|12.5
A3|2|60|75`)
		t.Amplifiers("", `amplifier|load_w
A1|70.5
A2|130
A3|87.5`)
		t.Controls("", `control|rated_w|load_w
VC1|50|36
VC2|10|3
VC3|36|30
VC4|60|60
VC5|10|10
VC6|60|60`)
		t.Lines("", `to|length_m|area_mm2
Foyer|38|1.5
Ticket office|44|1.5
Dome, outer ring|66|1.5
Dome control desk|72|1.5
Space gallery|91|2.5
Moon room|103|1.5
Lecture theatre|47|2.5
Staff corridor|59|1.5
Workshop|35|1.5
Entrance steps|112|2.5
Coach park|148|2.5`)
	}},
}
