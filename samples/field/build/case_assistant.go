package main

import (
	"lineaudit/samples/typed"

	"github.com/xuri/excelize/v2"
)

// assistant works for a consultant and makes neat tables of what the consultant scribbles.
var assistant = []typed.Case{
	{File: "assistant/2208 Wharfside Planetarium - LS schedule rev P3.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("LS Schedule")
		p.Put("A1", `
Wharfside Planetarium|||||||||
Project 2208|Doc 2208-AV-SCH-003|Rev P3|||||||
||||||||||
Loudspeaker reference|Level|Space|Mounting|Rated power /W|Tap /W|Line voltage /V|Line reference|Amplifier reference|Local attenuation
LS-00-01|00|Ticketing|Ceiling|10|5|100|L-01|AMP-01|None
LS-00-02|00|Ticketing|Ceiling|10|5|100|L-01|AMP-01|None
LS-00-03|00|Exhibition A|Pendant|20|10|100|L-02|AMP-01|ATT-01
LS-00-04|00|Exhibition A|Pendant|20|10|100|L-02|AMP-01|ATT-01
LS-00-05|00|Exhibition A|Pendant|20|10|100|L-02|AMP-01|ATT-01
LS-00-06|00|Exhibition B|Pendant|20|10|100|L-02|AMP-01|ATT-02
LS-00-07|00|Exhibition B|Pendant|20|5|100|L-02|AMP-01|ATT-02
LS-01-01|01|Dome foyer|Ceiling|10|2.5|100|L-03|AMP-02|None
LS-01-02|01|Dome foyer|Ceiling|10|2.5|100|L-03|AMP-02|None
LS-01-03|01|Control room|Wall|10|1.25|100|L-03|AMP-02|ATT-03
LS-01-04|01|Terrace|Horn|15|15|100|L-04|AMP-02|None
LS-01-05|01|Terrace|Horn|15|15|100|L-04|AMP-02|None

Attenuators: ATT-01 36 W; ATT-02 12 W; ATT-03 6 W. AMP-01 2 x 60 W, AMP-02 2 x 30 W.
`)
		p.Strike("A9:J9")
		p.Note("A9", "omitted at P2")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2208", "Wharfside Planetarium", "units in headings; one struck out; ratings in a sentence")
		t.Revision("P3", false)
		t.Speakers("tap_v=100; line_v=100; sheet=LS Schedule", `
rows|tag|room|tap_w|amplifier|channel|control
5..6|LS-00-01..|Ticketing|5|AMP-01|L-01|
7..8|LS-00-03..|Exhibition A|10|AMP-01|L-02|ATT-01
10|LS-00-06|Exhibition B|10|AMP-01|L-02|ATT-02
11|LS-00-07|Exhibition B|5|AMP-01|L-02|ATT-02
12..13|LS-01-01..|Dome foyer|2.5|AMP-02|L-03|
14|LS-01-03|Control room|1.25|AMP-02|L-03|ATT-03
15..16|LS-01-04..|Terrace|15|AMP-02|L-04|
`)
		t.Speakers("tap_v=100; line_v=100; sheet=LS Schedule; status=removed", "rows|tag|room|tap_w|amplifier|channel|control\n9|LS-00-05|Exhibition A|10|AMP-01|L-02|ATT-01")
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nAMP-01|L-01|60|10\nAMP-01|L-02|60|35\nAMP-02|L-03|30|6.25\nAMP-02|L-04|30|30")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAMP-01|120|45\nAMP-02|60|36.25")
		t.Controls("", "control|rated_w|load_w\nATT-01|36|20\nATT-02|12|15\nATT-03|6|1.25")
	}},

	{File: "assistant/2231 Sandhurst Lane ice rink - room data.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("RDS")
		p.Put("A1", `
2231 Sandling Lane Ice Rink - public address room data||||||
|Rink|Seating|Entrance|Cloakroom|First aid|Plant
Loudspeaker type|Horn|Column|Ceiling|Ceiling|Ceiling|Horn
Quantity|8|6|5|2|1|2
Tap setting (W)|20|15|3|3|1.5|10
Total (W)|160|90|15|6|1.5|20
Amplifier zone|1|2|3|3|3|3
Volume control|None|None|VC-1, 20 W|None|VC-2, 5 W|None
Remarks|Weatherproof|||||Mute with fire alarm
||||||
Amplifier zones|1|2|3||||
Rated power (W)|240|120|60||||
Line voltage (V)|100|100|100||||
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2231", "Sandling Lane Ice Rink", "room data running across, and a smaller table of zones below, across too")
		t.Speakers("tap_v=100; line_v=100; sheet=RDS", `
rows|room|model|count|tap_w|channel|control
B|Rink|Horn|8|20|1|
C|Seating|Column|6|15|2|
D|Entrance|Ceiling|5|3|3|VC-1
E|Cloakroom|Ceiling|2|3|3|
F|First aid|Ceiling|1|1.5|3|VC-2
G|Plant|Horn|2|10|3|
`)
		t.Channels("line_v=100", "channel|rated_w|load_w\n1|240|160\n2|120|90\n3|60|42.5")
		t.Controls("", "control|rated_w|load_w\nVC-1|20|15\nVC-2|5|1.5")
	}},

	{File: "assistant/2240 swimming halls types.csv", Kind: "schedule", Bytes: text(`
Project 2240,Kelsall Swimming Halls,,,,,,
,,,,,,,
Type,Description,Taps available (W),,,,,
LS1,Ceiling loudspeaker 165 mm,"6 / 3 / 1.5",,,,,
LS2,Sound column IP55,"30 / 20 / 10",,,,,
LS3,Horn IP66,"15 / 7.5",,,,,
,,,,,,,
Room,LS1 qty,LS1 tap,LS2 qty,LS2 tap,LS3 qty,LS3 tap,PA circuit
Competition pool,,,10,20,,,A
Diving pit,,,4,10,,,B
Lobby,8,3,,,,,C
Corridor,6,1.5,,,,,C
Filter plant,,,,,4,7.5,B
Lawn,,,,,4,15,D
,,,,,,,
"Circuits: A 250 W, B 125 W, C 60 W, D 60 W, all 100 V",,,,,,,
`), Truth: func(t *typed.Truth) {
		t.Is("2240", "Kelsall Swimming Halls", "types with their taps above, quantity and tap of each type as columns below")
		t.Speakers("tap_v=100; line_v=100", `
rows|room|model|count|tap_w|channel
9|Competition pool|LS2|10|20|A
10|Diving pit|LS2|4|10|B
11|Lobby|LS1|8|3|C
12|Corridor|LS1|6|1.5|C
13|Filter plant|LS3|4|7.5|B
14|Lawn|LS3|4|15|D
`)
		t.Channels("line_v=100", "channel|rated_w|load_w\nA|250|200\nB|125|70\nC|60|33\nD|60|60")
		t.Left("", "4|type|a type\n5|type|a type\n6|type|a type")
	}},
}
