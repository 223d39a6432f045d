package main

import "lineaudit/samples/typed"

// britain is a facilities manager: plain words, sentences for the amplifiers.
func britain() []typed.Case {
	return []typed.Case{
		{File: "Brackenholt/Palm House speakers.xlsx", Kind: "schedule", Book: sheets("Palm House", `
Brackenholt Botanical Garden - Palm House & shop speakers
Last checked 14/03/2016
Amp 1 (rack in boiler room) is 120W, Amp 2 (under the till) is 60W. Both 100V line, one output each.

No.|Where|What it is|Set at|Amp|Knob on wall
1|Palm House north|Column|20W|1|
2|Palm House south|Column|20W|1|
3|Palm House gallery|Small cabinet|6W|1|
4|Palm House gallery|Small cabinet|6W|1|
5|Fern House|Small cabinet|6W|1|A
6|Fern House|Small cabinet|6W|1|A
7|Shop|Ceiling|3W|2|B
8|Shop|Ceiling|3W|2|B
9|Shop|Ceiling|3W|2|B
10|Ticket desk|Ceiling|1.5W|2|

Knob A is a 12W one, knob B 10W.
`), Truth: func(t *typed.Truth) {
			t.Is("", "Brackenholt Botanical Garden", "plain words; amplifiers in a sentence above, knobs in one below")
			t.Speakers("tap_v=100; line_v=100; sheet=Palm House", `
rows|tag|room|model|tap_w|amplifier|control
6|1|Palm House north|Column|20|1|
7|2|Palm House south|Column|20|1|
8..9|3..|Palm House gallery|Small cabinet|6|1|
10..11|5..|Fern House|Small cabinet|6|1|A
12..14|7..|Shop|Ceiling|3|2|B
15|10|Ticket desk|Ceiling|1.5|2|
`)
			t.Channels("line_v=100", "amplifier|rated_w|load_w\n1|120|64\n2|60|10.5")
			t.Amplifiers("", "amplifier|rated_w|load_w\n1|120|64\n2|60|10.5")
			t.Controls("", "control|zone|rated_w|load_w\nA|Fern House|12|12\nB|Shop|10|9")
		}},

		{File: "Brackenholt/Boathouse PA.csv", Kind: "schedule", Bytes: text(`
Boathouse and jetty PA,,,,,
(100 volt system - one amp 240w),,,,,
Location,Type,How many,Tapping (W),Total (W),Notes
Jetty,horn,4,15,60,
Slipway,horn,2,15,30,one replaced 2014
Canoe store,cabinet,2,6,12,
Changing,ceiling,6,3,18,volume control by door (25W)
Training room,ceiling,4,3,12,
Old hut,horn,1,15,,"taken down, kept in store"
Total,,,,132,
`), Truth: func(t *typed.Truth) {
			t.Is("", "Boathouse", "comma file; control without a name and a removed horn told in the notes")
			t.Speakers("tap_v=100; line_v=100", `
rows|room|model|count|tap_w|note
4|Jetty|horn|4|15|
5|Slipway|horn|2|15|
6|Canoe store|cabinet|2|6|
7|Changing|ceiling|6|3|unnamed control
8|Training room|ceiling|4|3|
`)
			t.Speakers("tap_v=100; line_v=100; status=removed", "rows|room|model|count|tap_w\n9|Old hut|horn|1|15")
			t.Channels("line_v=100", "rated_w|load_w\n240|132")
			t.Amplifiers("note=unnamed", "rated_w|load_w\n240|132")
			t.Controls("note=unnamed", "zone|rated_w|load_w\nChanging|25|18")
			t.Left("", "10|total|right")
		}},

		{File: "Marlbeck Rink/PA by amp.xlsx", Kind: "schedule", Book: sheets("Rink", `
Marlbeck Ice Rink - public address
Job 4417|||Rev 2

Speaker|Area|Watts|Wall control
AMP A - 240 W - feeds rink and stands
R1|Rink barrier east|30|
R2|Rink barrier west|30|
R3|Stand|15|
R4|Stand|15|
R5|Stand|15|
AMP B - 120 W - feeds the rest
R6|Skate hire|6|VC1
R7|Skate hire|6|VC1
R8|Changing 1|6|VC2
R9|Changing 2|6|VC2
R10|Plant room|10|

VC1 12 W, VC2 10 W
All 100 V.
`), Truth: func(t *typed.Truth) {
			t.Is("4417", "Marlbeck Ice Rink", "a line for each amplifier heads its loudspeakers; controls below; one over its rating")
			t.Revision("2", false)
			t.Speakers("tap_v=100; line_v=100; sheet=Rink", `
rows|tag|zone|tap_w|amplifier|control
6|R1|Rink barrier east|30|A|
7|R2|Rink barrier west|30|A|
8..10|R3..|Stand|15|A|
12..13|R6..|Skate hire|6|B|VC1
14|R8|Changing 1|6|B|VC2
15|R9|Changing 2|6|B|VC2
16|R10|Plant room|10|B|
`)
			t.Channels("line_v=100", "amplifier|rated_w|load_w\nA|240|105\nB|120|34")
			t.Amplifiers("", "amplifier|rated_w|load_w\nA|240|105\nB|120|34")
			t.Controls("", "control|rated_w|load_w\nVC1|12|12\nVC2|10|12")
		}},

		{File: "Brackenholt/Boat hire 2016.csv", Kind: "not-a-schedule", Bytes: text(`
Boat hire - week 22,,,
Boat,Type,Trips,Total
1,rowing,14,168
2,rowing,11,132
3,canoe,9,81
4,pedalo,17,221
Total,,51,602
`), Truth: func(t *typed.Truth) { t.Is("", "", "takings of boats") }},
	}
}
