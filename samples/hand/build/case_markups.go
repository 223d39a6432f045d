package main

import (
	"strings"

	"lineaudit/samples/typed"
)

// markups are English lists that were changed after they were made, or typed in a hurry.
func markups() []typed.Case {
	return []typed.Case{
		{File: "Ravensmoor/as built mark-up.xlsx", Kind: "schedule", Book: book("As built", `
Ravensmoor Ice Rink - ticket hall and rink side, as built mark-up
100V line, amplifier A, 2 x 120W

LS|Place|Type|Tap|Ch|Remarks
1|Ticket hall|Ceiling|3 W|1|
2|Ticket hall|Ceiling|6 W|1|
3|Ticket hall|Ceiling|3 W|1|
4|Old kiosk|Ceiling|3 W|1|
5|Stair|Wall|6 W|1|moved from kiosk
6|Rink side A|Horn|30 W|2|
7|Rink side B|Horn|15 W|2|
8|Rink side C|Horn|15 W|2|
9|Rink side D|Horn|15 W|2|not installed - no containment
10|Rink end|Horn|30 W|2|added on site
`, bold("A1", "A4:F4"), struck("A8:F8"), func(p typed.Page) {
			p.Corrected("D6", "6 W", " 3 W")
			p.Corrected("D10", "30 W", " 15 W")
		}), Truth: func(t *typed.Truth) {
			t.Is("", "Ravensmoor Ice Rink", "two taps struck out with the new one typed behind, one row struck out, one not installed")
			t.Speakers("tap_v=100; line_v=100; sheet=As built; amplifier=A", `
rows|tag|room|model|tap_w|channel|status|note
5|1|Ticket hall|Ceiling|3|1|installed|
6|2|Ticket hall|Ceiling|3|1|installed|6 W is struck out
7|3|Ticket hall|Ceiling|3|1|installed|
8|4|Old kiosk|Ceiling|3|1|removed|struck out
9|5|Stair|Wall|6|1|installed|
10|6|Rink side A|Horn|15|2|installed|30 W is struck out
11|7|Rink side B|Horn|15|2|installed|
12|8|Rink side C|Horn|15|2|installed|
13|9|Rink side D|Horn|15|2|future|not installed
14|10|Rink end|Horn|30|2|installed|
`)
			t.Channels("amplifier=A; line_v=100; rated_w=120", `
channel|load_w
1|15
2|75
`)
			t.Amplifiers("amplifier=A", "rated_w|load_w\n240|90")
			t.Asks("As built", "6|assumed|the struck-out tap no longer counts\n8|assumed|the struck-out row is in no load")
		}},

		{File: "Penholt Ice Arena/6021 speakers rev A.xls", Kind: "schedule", Saved: "xls", Book: book("Speakers", `
Penholt Ice Arena|||||Job 6021
Speaker schedule, 100V line|||||Rev A, 12/01/2015

Item|Room|Qty|Type|Tap|Amp
1|Arena north|4|Horn|30W|1
2|Arena south|4|Horn|30W|1
3|Concourse|8|Ceiling|6W|2
4|Changing|6|Ceiling|3W|2
5|Plant|1|Horn|15W|2
Amp 1 - 240W, Amp 2 - 120W
`, bold("A4:F4")), Truth: func(t *typed.Truth) {
			t.Is("6021", "Penholt Ice Arena", "revision A, replaced by C")
			t.Revision("A", true)
			t.Speakers("tap_v=100; line_v=100; sheet=Speakers", `
rows|tag|room|model|count|tap_w|amplifier
5|1|Arena north|Horn|4|30|1
6|2|Arena south|Horn|4|30|1
7|3|Concourse|Ceiling|8|6|2
8|4|Changing|Ceiling|6|3|2
9|5|Plant|Horn|1|15|2
`)
			t.Channels("line_v=100", `
amplifier|rated_w|load_w|note
1|240|240|
2|120|81|48 + 18 + 15
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
1|240|240
2|120|81
`)
		}},

		{File: "Penholt Ice Arena/6021 speakers rev C.xls", Kind: "schedule", Saved: "xls", Book: book("Speakers", `
Penholt Ice Arena|||||Job 6021
Speaker schedule, 100V line|||||Rev C, 30/06/2015

Item|Room|Qty|Type|Tap|Amp
1|Arena north|4|Horn|20W|1
2|Arena south|4|Horn|20W|1
3|Concourse|8|Ceiling|6W|2
4|Changing|6|Ceiling|1.5W|2
5|Plant|1|Horn|15W|2
6|Scoreboard|2|Horn|15W|1
Amp 1 - 240W, Amp 2 - 120W
`, bold("A4:F4")), Truth: func(t *typed.Truth) {
			t.Is("6021", "Penholt Ice Arena", "revision C, the one that counts")
			t.Revision("C", false)
			t.Speakers("tap_v=100; line_v=100; sheet=Speakers", `
rows|tag|room|model|count|tap_w|amplifier
5|1|Arena north|Horn|4|20|1
6|2|Arena south|Horn|4|20|1
7|3|Concourse|Ceiling|8|6|2
8|4|Changing|Ceiling|6|1.5|2
9|5|Plant|Horn|1|15|2
10|6|Scoreboard|Horn|2|15|1
`)
			t.Channels("line_v=100", `
amplifier|rated_w|load_w
1|240|190
2|120|72
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
1|240|190
2|120|72
`)
		}},

		{File: "Wendle Boathouse/club rooms (from Word).csv", Kind: "schedule", Bytes: utf8(`
Room,Loudspeakers,Fed from,Local control
Boat hall,"4 no. wall cabinets
tapped 6W",Amp 1,none
Workshop,"2 no. wall cabinets
tapped 3W",Amp 1,none
Slipway,1 no. horn tapped 15W,Amp 1,none
Club room,"6 no. ceiling
tapped 3W","Amp 2
zone 1",VC1 - 24W
Committee room,2 no. ceiling tapped 1.5W,"Amp 2
zone 1",VC2 - 6W
Gym,"2 no. wall cabinets tapped 6W
1 no. ceiling tapped 3W","Amp 2
zone 2",none
,,,
"Amp 1: 60W, 100V. Amp 2: two zone, 30W per zone, 100V",,,
`), Truth: func(t *typed.Truth) {
			t.Is("", "Wendle Boathouse", "a table pasted from a letter: count, kind and tap in one cell over two lines, two kinds in one of them, output over two lines")
			t.Speakers("tap_v=100; line_v=100", `
rows|room|model|count|tap_w|amplifier|channel|control
2|Boat hall|wall cabinets|4|6|Amp 1||
3|Workshop|wall cabinets|2|3|Amp 1||
4|Slipway|horn|1|15|Amp 1||
5|Club room|ceiling|6|3|Amp 2|1|VC1
6|Committee room|ceiling|2|1.5|Amp 2|1|VC2
7|Gym|wall cabinets|2|6|Amp 2|2|
7|Gym|ceiling|1|3|Amp 2|2|
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
Amp 1||60|45
Amp 2|1|30|21
Amp 2|2|30|15
`)
			t.Controls("", `
control|zone|rated_w|load_w
VC1|Club room|24|18
VC2|Committee room|6|3
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
Amp 1|60|45
Amp 2|60|36
`)
		}},

		{File: "Harrowmere/what is where.csv", Kind: "schedule", Bytes: func() []byte { return []byte(strings.TrimPrefix(marksWhere, "\n")) }, Truth: func(t *typed.Truth) {
			t.Is("", "Harrowmere", "one column of sentences, headed by the outputs")
			t.Speakers("tap_v=100; line_v=100; amplifier=Amp 1", `
rows|room|model|count|tap_w|channel
4|Orchid house|ceilings|6|3|A
5|Lily pool|columns|2|10|A
6|Shop|ceilings|4|1.5|A
8|Terrace|horns|2|15|B
9|Bothy|cabinet|1|6|B
10|Yard|horn|1|7.5|B
`)
			t.Channels("amplifier=Amp 1; line_v=100; rated_w=60", `
channel|load_w
A|44
B|43.5
`)
			t.Amplifiers("amplifier=Amp 1", "rated_w|load_w\n120|87.5")
			t.Left("", "3|title|output\n7|title|output")
		}},

		{File: "Bluestem/voice evac spkr ckts.xlsx", Kind: "schedule", Book: book("FA-3", `
BLUESTEM BOTANICAL GARDEN - VISITOR CENTER|||||||
VOICE EVACUATION SPEAKER CIRCUITS|||||||
SPKR CKT|ADDR|ROOM|DEVICE|TAP (W)|CANDELA|STROBE mA|NOTES
S1|1-01|101 LOBBY|SPEAKER/STROBE|'1/2|75|176|
S1|1-02|101 LOBBY|SPEAKER/STROBE|'1/2|75|176|
S1|1-03|102 SHOP|SPEAKER/STROBE|'1/4|30|107|
S1|1-04|104 RESTROOM M|STROBE||15|66|NO SPEAKER
S1|1-05|105 RESTROOM W|STROBE||15|66|NO SPEAKER
S1|1-06|103 CORRIDOR|SPEAKER|'1/2|||
S1|1-07|103 CORRIDOR|SPEAKER|'1/2|||
S2|2-01|110 CLASSROOM|SPEAKER/STROBE|1|110|212|
S2|2-02|111 CLASSROOM|SPEAKER/STROBE|1|110|212|
S2|2-03|112 STORAGE|SPEAKER|'1/4|||
S2|2-04|EXTERIOR|SPEAKER, WP|2|||
S2|2-05|EXTERIOR|SPEAKER, WP|2|||
CKT S1 TOTAL: 2.25 W, CKT S2 TOTAL: 6.25 W|||||||
FACP AMPLIFIER: 25 W AT 70.7 VRMS PER SPEAKER CIRCUIT|||||||
`, bold("A1:A2", "A3:H3")), Truth: func(t *typed.Truth) {
			t.Is("", "Bluestem Botanical Garden", "fire alarm: fractions as taps, candela and milliamperes beside them, strobes without loudspeaker")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=FA-3", `
rows|tag|room|model|tap_w|channel
4..5|1-01..|101 LOBBY|SPEAKER/STROBE|0.5|S1
6|1-03|102 SHOP|SPEAKER/STROBE|0.25|S1
9..10|1-06..|103 CORRIDOR|SPEAKER|0.5|S1
11|2-01|110 CLASSROOM|SPEAKER/STROBE|1|S2
12|2-02|111 CLASSROOM|SPEAKER/STROBE|1|S2
13|2-03|112 STORAGE|SPEAKER|0.25|S2
14..15|2-04..|EXTERIOR|SPEAKER, WP|2|S2
`)
			t.Channels("line_v=70.7; rated_w=25", `
channel|load_w
S1|2.25
S2|6.25
`)
			t.Left("FA-3", "7|other|strobe only\n8|other|strobe only\n16|total|right\n17|amplifier|")
		}},

		{File: "Otter Landing/renovation speaker plan.xlsx", Kind: "schedule", Saved: "xlsx", Book: book("Plan", `
OTTER LANDING BOATHOUSE RENOVATION||||||
SPEAKER SCHEDULE||||||JOB 17-058
MARK|LOCATION|TYPE|QTY|TAP W|CH|WIRE
(E)S1|BAY 1|8" CLG|4|5|1|(E)
(E)S2|BAY 2|8" CLG|4|5|1|(E)
(R)S3|OLD OFFICE|8" CLG|2|5|1|-
(N)S4|ERG ROOM|SURF BOX|4|7.5|1|NEW 16/2
(RL)S5|HALL|8" CLG|3|2.5|2|NEW 16/2
(N)S6|LOCKER|8" CLG|6|2.5|2|NEW 16/2
(F)S7|DOCK C|HORN|2|15|3|-
(E)S8|DOCK A, B|HORN|4|15|3|(E)
(NIC)S9|MEETING RM TV|SOUNDBAR|1|-|-|BY OWNER

(E) EXISTING TO REMAIN  (N) NEW  (R) REMOVE  (RL) RELOCATED EXISTING  (F) FUTURE  (NIC) NOT IN CONTRACT
AMPLIFIER: 3 CH, 70V, 100W/CH
`, bold("A1:A2", "A3:G3")), Truth: func(t *typed.Truth) {
			t.Is("17-058", "Otter Landing Boathouse", "the state is a code before the mark, told by a legend below")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=Plan", `
rows|tag|room|model|count|tap_w|channel|status
4|S1|BAY 1|8" CLG|4|5|1|installed
5|S2|BAY 2|8" CLG|4|5|1|installed
6|S3|OLD OFFICE|8" CLG|2|5|1|removed
7|S4|ERG ROOM|SURF BOX|4|7.5|1|installed
8|S5|HALL|8" CLG|3|2.5|2|installed
9|S6|LOCKER|8" CLG|6|2.5|2|installed
10|S7|DOCK C|HORN|2|15|3|future
11|S8|DOCK A, B|HORN|4|15|3|installed
`)
			t.Channels("line_v=70.7; rated_w=100", `
channel|load_w
1|70
2|22.5
3|60
`)
			t.Amplifiers("", "rated_w|load_w|note\n300|152.5|unnamed")
			t.Left("Plan", "12|by others|no line, no watts")
		}},
	}
}

// marksWhere was typed into the first column of a sheet.
const marksWhere = `
Harrowmere PA - what is where (100V line)

Amp 1 ch A (60W)
Orchid house - 6 ceilings at 3W
Lily pool - 2 columns at 10W
Shop - 4 ceilings at 1.5W
Amp 1 ch B (60W)
Terrace - 2 horns at 15W
Bothy - 1 cabinet at 6W
Yard - 1 horn at 7.5W
`
