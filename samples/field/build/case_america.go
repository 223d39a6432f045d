package main

import "lineaudit/samples/typed"

// america is an integrator's engineer: capitals, 70 V, feet and gauges, own sheets for amplifiers and controls.
func america() []typed.Case {
	return []typed.Case{
		{File: "22-318/SPKR SCHED REV B.xlsx", Kind: "schedule", Book: sheets("SPKR SCHED", `
SPEAKER SCHEDULE|||||||PROJECT: WINTERTHORN CONSERVATORY
|||||||JOB NO: 22-318
|||||||REV: B   7/29/22

TAG|RM|DESCRIPTION|QTY|TAP (70V)|ZONE|AMP-CH|V/C
S1|101 LOBBY|8" CLG|4|7.5|Z1|A1-1|VC-1
S2|102 ORCHID HALL|8" CLG|8|3.75|Z1|A1-1|
S3|103 CLASSRM|8" CLG|4|3.75|Z2|A1-2|VC-2
S4|104 OFFICE|8" CLG|2|1.88|Z2|A1-2|
S5|EXT TERRACE WALK|HORN|3|15|Z3|A2-1|
`, "AMPS", `
AMP|WATTS/CH|CHANNELS|LOCATION
A1|125|2|IDF
A2|250|2|IDF
`, "VC", `
VC|RATED
VC-1|35W
VC-2|10W
`), Truth: func(t *typed.Truth) {
			t.Is("22-318", "WINTERTHORN CONSERVATORY", "an earlier revision of the next file")
			t.Revision("B", true)
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=SPKR SCHED", `
rows|tag|room|zone|model|count|tap_w|amplifier|channel|control
6|S1|101 LOBBY|Z1|8" CLG|4|7.5|A1|1|VC-1
7|S2|102 ORCHID HALL|Z1|8" CLG|8|3.75|A1|1|
8|S3|103 CLASSRM|Z2|8" CLG|4|3.75|A1|2|VC-2
9|S4|104 OFFICE|Z2|8" CLG|2|1.88|A1|2|
10|S5|EXT TERRACE WALK|Z3|HORN|3|15|A2|1|
`)
			t.Channels("line_v=70.7", "amplifier|channel|rated_w|load_w\nA1|1|125|60\nA1|2|125|18.76\nA2|1|250|45\nA2|2|250|0")
			t.Amplifiers("", "amplifier|rated_w|load_w\nA1|250|78.76\nA2|500|45")
			t.Controls("", "control|rated_w|load_w\nVC-1|35|30\nVC-2|10|15")
		}},

		{File: "22-318/SPKR SCHED REV C.xlsx", Kind: "schedule", Book: sheets("SPKR SCHED", `
SPEAKER SCHEDULE|||||||PROJECT: WINTERTHORN CONSERVATORY
|||||||JOB NO: 22-318
|||||||REV: C   9/12/22

TAG|RM|DESCRIPTION|QTY|TAP (70V)|ZONE|AMP-CH|V/C
S1|101 LOBBY|8" CLG|4|7.5|Z1|A1-1|VC-1
S2|102 ORCHID HALL|8" CLG|10|3.75|Z1|A1-1|
S3|103 CLASSRM|8" CLG|4|3.75|Z2|A1-2|VC-2
S4|104 OFFICE|8" CLG|2|1.88|Z2|A1-2|
S5|EXT TERRACE WALK|HORN|3|15|Z3|A2-1|
S6|EXT DOCK|HORN|2|30|Z3|A2-1|
S7|105 GREENHSE|8" CLG (FUTURE)|6|3.75|Z4|A2-2|
`, "AMPS", `
AMP|WATTS/CH|CHANNELS|LOCATION
A1|125|2|IDF
A2|250|2|IDF
`, "VC", `
VC|RATED
VC-1|35W
VC-2|10W
`), Truth: func(t *typed.Truth) {
			t.Is("22-318", "WINTERTHORN CONSERVATORY", "title block at the right; amplifiers and controls on sheets of their own; a future row")
			t.Revision("C", false)
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=SPKR SCHED", `
rows|tag|room|zone|model|count|tap_w|amplifier|channel|control|status
6|S1|101 LOBBY|Z1|8" CLG|4|7.5|A1|1|VC-1|installed
7|S2|102 ORCHID HALL|Z1|8" CLG|10|3.75|A1|1||installed
8|S3|103 CLASSRM|Z2|8" CLG|4|3.75|A1|2|VC-2|installed
9|S4|104 OFFICE|Z2|8" CLG|2|1.88|A1|2||installed
10|S5|EXT TERRACE WALK|Z3|HORN|3|15|A2|1||installed
11|S6|EXT DOCK|Z3|HORN|2|30|A2|1||installed
12|S7|105 GREENHSE|Z4|8" CLG|6|3.75|A2|2||future
`)
			t.Channels("line_v=70.7", "amplifier|channel|rated_w|load_w\nA1|1|125|67.5\nA1|2|125|18.76\nA2|1|250|105\nA2|2|250|0")
			t.Amplifiers("", "amplifier|rated_w|load_w\nA1|250|86.26\nA2|500|105")
			t.Controls("", "control|rated_w|load_w\nVC-1|35|30\nVC-2|10|15")
		}},

		{File: "22-351/dock runs.csv", Kind: "schedule", Bytes: text(`
"DOCK & SLIP PA - HOME RUNS",,,,,
"Job no. 22-351",,,70V,,
RUN,TO,SPKRS,TAP EA,AWG,LENGTH (FT)
R-1,Main dock,6,15,14,420
R-2,Fuel dock,2,15,16,180
R-3,Harbor office,3,5,16,95
R-4,Boat shed,4,10,16,150
R-5,Gate,1,15,16,310
,,,,,
"Amp: one 250W / 70V output, all runs land on it",,,,,
`), Truth: func(t *typed.Truth) {
			t.Is("22-351", "DOCK & SLIP", "a list of home runs in feet and gauges is the loudspeaker list")
			t.Speakers("tap_v=70.7; line_v=70.7", `
rows|room|count|tap_w
4|Main dock|6|15
5|Fuel dock|2|15
6|Harbor office|3|5
7|Boat shed|4|10
8|Gate|1|15
`)
			t.Channels("line_v=70.7", "rated_w|load_w\n250|190")
			t.Amplifiers("note=unnamed", "rated_w|load_w\n250|190")
			t.Lines("material=copper; note=home run", `
line|to|length_m|area_mm2
R-1|Main dock|128.016|2.081
R-2|Fuel dock|54.864|1.309
R-3|Harbor office|28.956|1.309
R-4|Boat shed|45.72|1.309
R-5|Gate|94.488|1.309
`)
		}},

		{File: "19-077/Rink retrofit.xlsx", Kind: "schedule", Book: sheets("Sheet1", `
Ice Pavilion Retrofit - Job 19-077
Ckt|Area|Devices|Load|Amp
1|Main ice N|6 @ 25W|150W|Amp 1 (400W)
2|Main ice S|6 @ 25W|150W|Amp 1 (400W)
3|Practice ice|8 @ 15W|120W|Amp 2 (200W)
4|Lobby|10 @ 5W|50W|Amp 2 (200W)
5|Lockers|12 @ 2.5W|30W|Amp 3 (100W)
6|Mezzanine|4 @ 5W|20W|Amp 3 (100W)
7|Machine bay|2 @ 10W|20W|Amp 3 (100W)

All 70V. Each amp has a single output.
`), Truth: func(t *typed.Truth) {
			t.Is("19-077", "Ice Pavilion", "count and tap in one cell; the rating behind the amplifier's name; circuits share an output")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=Sheet1", `
rows|zone|count|tap_w|amplifier
3|Main ice N|6|25|Amp 1
4|Main ice S|6|25|Amp 1
5|Practice ice|8|15|Amp 2
6|Lobby|10|5|Amp 2
7|Lockers|12|2.5|Amp 3
8|Mezzanine|4|5|Amp 3
9|Machine bay|2|10|Amp 3
`)
			t.Channels("line_v=70.7", "amplifier|rated_w|load_w\nAmp 1|400|300\nAmp 2|200|170\nAmp 3|100|70")
			t.Amplifiers("", "amplifier|rated_w|load_w\nAmp 1|400|300\nAmp 2|200|170\nAmp 3|100|70")
		}},
	}
}
