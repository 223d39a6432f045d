package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// rinkBooks are workbooks of the ice rinks about amplifiers, controls and several jobs.
func rinkBooks() []typed.Case {
	return []typed.Case{
		{File: "rinks/rack build.ods", Kind: "schedule", Book: rackBuild, Saved: "ods", Truth: rackBuildTruth},
		{File: "rinks/small jobs book.xlsx", Kind: "schedule", Book: smallJobs, Saved: "xlsx", Truth: smallJobsTruth},
		{File: "rinks/Curling club list.xlsx", Kind: "schedule", Book: clubList, Truth: clubListTruth},
		{File: "rinks/Outdoor pad cable pulls.xlsx", Kind: "schedule", Book: pulls, Truth: pullsTruth},
	}
}

// Ratings of every notation: per channel, shared, in ohms, strapped, bridged.
func rackBuild() *excelize.File {
	p := typed.NewBook("Rack")
	p.Put("A1", `
Silverlow Ice Rink - rack 1|||Job EQ-0720

U|Box|What it gives|All together
4|AX1|4 x 250W @70V|800 W
7|AX2|2 x 250W @ 4 ohm (no line kit fitted)
9|AX3|2 x 120 W, strapped to one 240 W @ 100V
11|AX4|ch 1+2 bridged 500 W @ 70V; ch 3 and ch 4 250 W each @ 70V
`)
	q := p.Sheet("Feeds")
	q.Put("A1", `
What goes where

From|Goes to|Heads|Each (W unless marked)
AX1-1|Main ice N|16|15
AX1-2|Main ice S|16|15
AX1-3|Boards|12|20
AX1-4|Skate hire|20|3
AX3|Grandstand|10|20
AX4-1+2|Outdoor pad|20|20
AX4-3|Car park|8|15
AX2-L|Ice show subs|2|4 ohm
AX2-R|Ice show tops|2|8 ohm
`)
	return p.File
}

func rackBuildTruth(t *typed.Truth) {
	t.Is("EQ-0720", "Silverlow Ice Rink", "4 x 250 W with a limit of 800 W for the frame; a low-impedance amplifier beside line amplifiers (no fault: its own channels); strapped and bridged pairs; AX3 named without a channel")
	t.Speakers("sheet=Feeds", `
rows|zone|count|tap_w|tap_v|line_v|amplifier|channel|low_ohm|note
4|Main ice N|16|15|70.7|70.7|AX1|1||
5|Main ice S|16|15|70.7|70.7|AX1|2||
6|Boards|12|20|70.7|70.7|AX1|3||
7|Skate hire|20|3|70.7|70.7|AX1|4||
8|Grandstand|10|20|100|100|AX3|||the strapped pair is the only output
9|Outdoor pad|20|20|70.7|70.7|AX4|1+2||bridged
10|Car park|8|15|70.7|70.7|AX4|3||
11|Ice show subs|2||||AX2|L|4|low impedance on its own low-impedance output
12|Ice show tops|2||||AX2|R|8|
`)
	t.Channels("", `
amplifier|channel|line_v|rated_w|load_w|note
AX1|1|70.7|250|240|
AX1|2|70.7|250|240|
AX1|3|70.7|250|240|
AX1|4|70.7|250|60|
AX2|L||||250 W at 4 ohm is no line rating
AX2|R||||
AX3||100|240|200|strapped pair
AX4|1+2|70.7|500|400|bridged pair
AX4|3|70.7|250|120|
AX4|4|70.7|250|0|
`)
	t.Amplifiers("", "amplifier|rated_w|load_w|note\nAX1|800|780|the frame gives 800 W, not 1000\nAX3|240|200|\nAX4||520|")
}

// A sheet a job, each by another hand.
func smallJobs() *excelize.File {
	p := typed.NewBook("0551 toll hut")
	p.Put("A1", `
JOB EQ-0551|Lake toll hut
70V

where|how many|tap
Window|1|2.5
Queue rail|3|5
Amp: 30 watts
`)
	q := p.Sheet("0552 start tower")
	q.Put("A1", `
EQ-0552 Start tower (regatta lake)

Unit|On|Strap|Amp out
T1|Tower N|15W|ST-1
T2|Tower S|15W|ST-1
T3|Judges' cabin|1.5W|ST-2
T4|Finish post|10W|ST-2
T5|Finish post|10W|ST-2

ST: 2 x 40W, 100V
`)
	r := p.Sheet("0553 pump house")
	r.Put("C4", `
Job no.|EQ-0553
Place|Pump house
System|100 V, amp 20 W

Fitting|Pieces|Watts/pc|Together
Horn, weatherproof|2|7.5|15
Flush|3|1.5|4.5
|5||19.5
`)
	s := p.Sheet("to do")
	s.Put("A1", `
ring about EQ-0551 window unit
order 3 knobs
measure pump house line (19.5 W?)
`)
	return p.File
}

func smallJobsTruth(t *typed.Truth) {
	t.Is("EQ-0551", "Lake toll hut", "a sheet a job, each of its own make; no zone word, no channel")
	t.Speakers("sheet=0551 toll hut; tap_v=70.7; line_v=70.7", "rows|room|count|tap_w\n5|Window|1|2.5\n6|Queue rail|3|5")
	t.Channels("line_v=70.7; rated_w=30", "load_w|note\n17.5|one amplifier, one output")
	t.Amplifiers("", "rated_w|load_w\n30|17.5")
	t.Also("EQ-0552", "Start tower", "job and site in one title")
	t.Speakers("sheet=0552 start tower; tap_v=100; line_v=100; amplifier=ST", `
rows|tag|room|tap_w|channel
4|T1|Tower N|15|1
5|T2|Tower S|15|1
6|T3|Judges' cabin|1.5|2
7|T4|Finish post|10|2
8|T5|Finish post|10|2
`)
	t.Channels("line_v=100; rated_w=40; amplifier=ST", "channel|load_w\n1|30\n2|21.5")
	t.Amplifiers("", "amplifier|rated_w|load_w\nST|80|51.5")
	t.Also("EQ-0553", "Pump house", "table at C8 under a title block; the total row has no word")
	t.Speakers("sheet=0553 pump house; tap_v=100; line_v=100", "rows|model|count|tap_w\n9|Horn, weatherproof|2|7.5\n10|Flush|3|1.5")
	t.Channels("line_v=100; rated_w=20", "load_w|note\n19.5|within 20 W")
	t.Amplifiers("", "rated_w|load_w\n20|19.5")
	t.Left("0553 pump house", "11|total|no word, only sums")
	t.Left("to do", "1-3|note|a sheet of reminders")
}

// A tree told by a column of parents; controls stand among the loudspeakers, one behind another.
func clubList() *excelize.File {
	p := typed.NewBook("Club")
	p.Put("A1", `
Curling club rooms|||Job EQ-0722
70 V, one amp of two ways, 2 x 60 W = A1

Ref|Item|W|Hangs on
VC-1|Wall knob, lounge|35|A1/1
VC-2|Wall knob, committee room (part of lounge)|10|VC-1
L1|Sedge 6|3|VC-1
L2|Sedge 6|3|VC-1
L3|Sedge 6|3|VC-1
L4|Sedge 6|6|VC-1
L5|Sedge 6|6|VC-2
L6|Sedge 6|6|VC-2
L7|Sedge 6|3|A1/1
L8|Marl 20|10|A1/2
L9|Marl 20|10|A1/2
L10|Marl 20|10|VC-3
L11|Marl 20|10|VC-3
VC-3|Wall knob, trophy hall|20|A1/2
`)
	p.Note("C8", "was 6 W before the ceiling was lowered")
	return p.File
}

func clubListTruth(t *typed.Truth) {
	t.Is("EQ-0722", "Curling club rooms", "controls among the loudspeakers under one watt column (their rating, not a tap), joined by a parent column; VC-2 is behind VC-1; VC-3 is listed after what it carries; an old tap in a comment")
	t.Speakers("sheet=Club; tap_v=70.7; line_v=70.7; amplifier=A1", `
rows|tag|model|tap_w|control|channel|note
7|L1|Sedge 6|3|VC-1|1|
8|L2|Sedge 6|3|VC-1|1|the comment tells the old tap
9|L3|Sedge 6|3|VC-1|1|
10|L4|Sedge 6|6|VC-1|1|
11|L5|Sedge 6|6|VC-2|1|
12|L6|Sedge 6|6|VC-2|1|
13|L7|Sedge 6|3||1|
14|L8|Marl 20|10||2|
15|L9|Marl 20|10||2|
16|L10|Marl 20|10|VC-3|2|
17|L11|Marl 20|10|VC-3|2|
`)
	t.Channels("line_v=70.7; rated_w=60; amplifier=A1", "channel|load_w\n1|30\n2|40")
	t.Amplifiers("", "amplifier|rated_w|load_w\nA1|120|70")
	t.Controls("", `
control|zone|rated_w|load_w|upstream|note
VC-1|lounge|35|27||15 of its own and 12 through VC-2
VC-2|committee room|10|12|VC-1|over its rating, in series
VC-3|trophy hall|20|20||exactly its rating
`)
	t.Left("Club", "5|control|\n6|control|\n18|control|")
}

// Loudspeakers with the length from the previous one, units per cell, and a reel of another trade in between.
func pulls() *excelize.File {
	p := typed.NewBook("Pulls")
	p.Put("A1", `
Outdoor pad - as pulled|||||Job EQ-0728
All off amp OP way 1, 70 V, 120 W. First length of a string is from the amp, the others from the head before.

Head|Setting|String|Since last|Wire
OP1|15 W|S1|180 ft|'14/2
OP2|15 W|S1|45 ft|'14/2
OP3|15 W|S1|45 ft|'16/2
OP4|15 W|S1|14 m|'16/2
OP5|15 W|S2|60 m|2 x 2,5 mm²
OP6|7.5 W|S2|15 m|2 x 1,5 mm²
OP7|7.5 W|S2|50'-6"|2 x 1,5 mm²
-|flood light|-|30 m|3 x 2,5 mm²
String 1 total|60 W||
String 2 total|30 W||
`)
	return p.File
}

func pullsTruth(t *typed.Truth) {
	t.Is("EQ-0728", "", "two strings on one way, lengths from the previous head with a unit in each cell; a flood light among the heads; two totals")
	t.Speakers("sheet=Pulls; tap_v=70.7; line_v=70.7; amplifier=OP; channel=1", `
rows|tag|tap_w
5..9|OP1..OP5|15
10..11|OP6..OP7|7.5
`)
	t.Channels("line_v=70.7; rated_w=120; amplifier=OP", "channel|load_w|note\n1|90|5x15 + 2x7.5")
	t.Amplifiers("", "amplifier|load_w\nOP|90")
	t.Lines("material=copper; note=from the head before", `
line|from|to|length_m|area_mm2
S1|OP 1|OP1|54.864|2.0809
S1|OP1|OP2|13.716|2.0809
S1|OP2|OP3|13.716|1.3087
S1|OP3|OP4|14|1.3087
S2|OP 1|OP5|60|2.5
S2|OP5|OP6|15|1.5
S2|OP6|OP7|15.3924|1.5
`)
	t.Left("Pulls", "12|other|a flood light and its cable\n13|total|60 W, right\n14|total|30 W, right")
}
