package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// foreignContractors write English and speak another language at home.
var foreignContractors = []typed.Case{
	{File: "contractors/Boathouse Jezioro Wysokie as build.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("list")
		p.Put("A1", `
Boathouse Jezioro Wysokie||||||contract 2020/57
PA system 100 V - list of loudspeakers as build

Amplifier|Power|Lines
WZ1|2 x 120 W|line 1, line 2
WZ2|1 x 240 W|line 3

No.|Localisation|Kind|Pcs.|Power on tap|Line|Regulator
1|Entry hall|ceiling|4|3 W|1|RG1 / 20 W
2|Cash desk|ceiling|1|1,5 W|1|RG2 / 6 W
3|Changing room men|ceiling|4|3 W|1|none
4|Changing room women|ceiling|4|3 W|1|none
5|Boat hall left|horn|4|10 W|2|none
6|Boat hall right|horn|4|10 W|2|none
Boathouse Jezioro Wysokie - page 2
No.|Localisation|Kind|Pcs.|Power on tap|Line|Regulator
7|Workshop|horn|1|10 W|2|none
8|Gymnastic room|wall|4|6 W|2|RG3 / 35 W
9|Pier|horn|4|15 W|3|none
10|Start tower|horn|2|30 W|3|none
|Sum||32
`)
		p.Bold("A1:A2", "A4:C4", "A8:G8", "A16:G16")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2020/57", "Boathouse Jezioro Wysokie", "amplifiers above the list with their lines in words; the header comes again on page 2; control and rating in one cell")
		t.Speakers("sheet=list; tap_v=100; line_v=100; amplifier=WZ1; channel=1", `rows|tag|room|count|tap_w|control
9|1|Entry hall|4|3|RG1
10|2|Cash desk|1|1.5|RG2
11|3|Changing room men|4|3|
12|4|Changing room women|4|3|`)
		t.Speakers("sheet=list; tap_v=100; line_v=100; amplifier=WZ1; channel=2", `rows|tag|room|count|tap_w|control
13|5|Boat hall left|4|10|
14|6|Boat hall right|4|10|
17|7|Workshop|1|10|
18|8|Gymnastic room|4|6|RG3`)
		t.Speakers("sheet=list; tap_v=100; line_v=100; amplifier=WZ2; channel=3", `rows|tag|room|count|tap_w
19|9|Pier|4|15
20|10|Start tower|2|30`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
WZ1|1|120|37.5
WZ1|2|120|114
WZ2|3|240|120`)
		t.Amplifiers("", `amplifier|rated_w|load_w
WZ1||151.5
WZ2|240|120`)
		t.Controls("", `control|rated_w|load_w
RG1|20|12
RG2|6|1.5
RG3|35|24`)
		t.Left("list", `15|title|page
16|header|again
21|total|count`)
	}},

	{File: "contractors/Maritime museum channels.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Channels")
		p.Put("A1", `
Maritime Museum of Porto Velhinho - loudspeakers per channel (number x watt)

Room|CH1|CH2|CH3|CH4|Attenuator
Power of channel|125W|125W|125W|250W
Entrance|4x6||||ATT1 30W
Ticket office|1x3
Ropes hall||6x6|||ATT2 50W
Ships hall||8x6|||ATT3 50W
Auditory|||6x6||ATT4 50W
Library|||4x3||ATT5 12W
Dry dock||||6x15
Quay||||4x15
Total|27W|84W|48W|150W

All loudspeakers are for line 100V, in total 39 pcs.
`)
		p.Bold("A1", "A3:F3", "A13:E13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Maritime Museum of Porto Velhinho", "a matrix of rooms and channels with count and tap in one cell, the ratings of the channels in its first row")
		t.Speakers("sheet=Channels; tap_v=100; line_v=100", `rows|room|count|tap_w|channel|control
5|Entrance|4|6|1|ATT1
6|Ticket office|1|3|1|
7|Ropes hall|6|6|2|ATT2
8|Ships hall|8|6|2|ATT3
9|Auditory|6|6|3|ATT4
10|Library|4|3|3|ATT5
11|Dry dock|6|15|4|
12|Quay|4|15|4|`)
		t.Channels("line_v=100", `channel|rated_w|load_w
1|125|27
2|125|84
3|125|48
4|250|150`)
		t.Controls("", `control|rated_w|load_w
ATT1|30|24
ATT2|50|36
ATT3|50|48
ATT4|50|36
ATT5|12|12`)
		t.Left("Channels", `4|rating|of the channels
13|total|sums`)
	}},

	{File: "contractors/0916 Eislaufhalle PA schedule.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("PA")
		p.Put("A1", `
Eislaufhalle Grünau - PA schedule 100 V|||||ref. 0916

Zone 1 Eisfläche, fed by Amp 1 (2 x 250 W) ch. A
qty|place|type|W each|W|remark
8|Bande|horn|15|120
2|Punktrichter|ceiling|6|12
10|sum|||132

Zone 2 Tribüne, fed by Amp 1 ch. B
qty|place|type|W each|W|remark
6|Tribüne unten|column|10|60
4|Tribüne oben|column|10|40
2|Sprecherkabine|ceiling|3|6|VC1 12 W
12|sum|||106

Zone 3 Eingang, fed by Amp 2 (1 x 120 W)
qty|place|type|W each|W|remark
4|Foyer|ceiling|6|24|VC2 36 W
3|Verleih|ceiling|6|18|VC3 20 W
1|Kassa|ceiling|3|3
8|sum|||45

Zone 4 Garderoben, fed by Amp 2 also
qty|place|type|W each|W|remark
8|Garderobe 1-8|ceiling|3|24|one in each
2|Trainer|ceiling|3|6|VC4 6 W
10|sum|||30
`)
		p.Bold("A1", "A3", "A9", "A16", "A23")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("0916", "Eislaufhalle Grünau", "a block a zone with its own header and sum; English headings, German places; what feeds the zone is said in the block's title, the frame's outputs once only")
		t.Speakers("sheet=PA; tap_v=100; line_v=100; zone=Zone 1 Eisfläche; amplifier=Amp 1; channel=A", `rows|room|count|tap_w
5|Bande|8|15
6|Punktrichter|2|6`)
		t.Speakers("sheet=PA; tap_v=100; line_v=100; zone=Zone 2 Tribüne; amplifier=Amp 1; channel=B", `rows|room|count|tap_w|control
11|Tribüne unten|6|10|
12|Tribüne oben|4|10|
13|Sprecherkabine|2|3|VC1`)
		t.Speakers("sheet=PA; tap_v=100; line_v=100; zone=Zone 3 Eingang; amplifier=Amp 2", `rows|room|count|tap_w|control
18|Foyer|4|6|VC2
19|Verleih|3|6|VC3
20|Kassa|1|3|`)
		t.Speakers("sheet=PA; tap_v=100; line_v=100; zone=Zone 4 Garderoben; amplifier=Amp 2", `rows|room|count|tap_w|control
25|Garderobe 1-8|8|3|
26|Trainer|2|3|VC4`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
Amp 1|A|250|132
Amp 1|B|250|106
Amp 2||120|75`)
		t.Amplifiers("", `amplifier|rated_w|load_w
Amp 1||238
Amp 2|120|75`)
		t.Controls("", `control|rated_w|load_w
VC1|12|6
VC2|36|24
VC3|20|18
VC4|6|6`)
		t.Left("PA", `7|total|sum of a block
14|total|sum of a block
21|total|sum of a block
27|total|sum of a block`)
	}},

	{File: "contractors/Planetarium Zvezdni Hrib sound.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Sound")
		p.Put("A1", `
Planetarium Zvezdni Hrib, sound for public, 100 V

Nr|Where|Pieces|W/piece|Behind control|Amp
1|Dome entrance|2|6|VC0|A1
2|Foyer|6|6|VC0|A1
3|Cloak room|2|3|VC1|A1
4|Ticket desk|1|3|VC2|A1
5|Dome ring|8|10|-|A2
6|Dome technic|1|6|VC3|A2
7|Terrace|2|15|-|A2
8|Toilets|4|1.5|-|A1

Control|Rated W|Fed from
VC0|100|A1
VC1|12|VC0
VC2|6|VC0
VC3|12|A2

A1 is 120 W, A2 is 240 W. When foyer is off at VC0, the ticket desk is also off, this is wished.
`)
		p.Bold("A1", "A3:F3", "A13:C13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Planetarium Zvezdni Hrib", "controls behind a control, seen from the table of controls")
		t.Speakers("sheet=Sound; tap_v=100; line_v=100", `rows|tag|room|count|tap_w|control|amplifier
4|1|Dome entrance|2|6|VC0|A1
5|2|Foyer|6|6|VC0|A1
6|3|Cloak room|2|3|VC1|A1
7|4|Ticket desk|1|3|VC2|A1
8|5|Dome ring|8|10||A2
9|6|Dome technic|1|6|VC3|A2
10|7|Terrace|2|15||A2
11|8|Toilets|4|1.5||A1`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|120|63
A2|240|116`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|120|63
A2|240|116`)
		t.Controls("", `control|rated_w|load_w|upstream
VC0|100|57|
VC1|12|6|VC0
VC2|6|3|VC0
VC3|12|6|`)
	}},
}
