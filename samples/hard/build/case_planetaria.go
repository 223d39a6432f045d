package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// planetaria are English workbooks of the planetarium.
func planetaria() []typed.Case {
	return []typed.Case{
		{File: "planetarium/Kelderby tick sheet.xlsx", Kind: "schedule", Book: ticks, Saved: "xlsx", Truth: ticksTruth},
		{File: "planetarium/Dome marked up.xlsx", Kind: "schedule", Book: markedUp, Truth: markedUpTruth},
		{File: "planetarium/tender reply lot 4.xlsx", Kind: "schedule", Book: tender, Truth: tenderTruth},
		{File: "planetarium/Cinema & paging.xlsx", Kind: "schedule", Book: cinema, Truth: cinemaTruth},
		{File: "planetarium/VA circuits A-B.xlsx", Kind: "schedule", Book: voiceAlarm, Saved: "xlsx", Truth: voiceAlarmTruth},
	}
}

// A column for each tap, with a mark under the one that is set.
func ticks() *excelize.File {
	p := typed.NewBook("Ticks")
	p.Put("A1", `
Kelderby Planetarium - ceiling units as set
100 volt, one amp "K" with two ways: way 1 = dome floor, way 2 = foyer
Job EQ-1210

No|Position|Way|Set at||||Remarks
|||1.5 W|3 W|6 W|10 W
1|Dome floor 0°|1|||X
2|Dome floor 45°|1|||X
3|Dome floor 90°|1||x
4|Dome floor 135°|1||✓
5|Dome floor 180°|1|||X
6|Dome floor 225°|1|||X
7|Dome floor 270°|1||X
8|Dome floor 315°|1||||X|new unit, set high
9|Foyer left|2|X
10|Foyer right|2|X
11|Foyer desk|2|X|X|||?
12|Lobby|2|||||could not reach
13|Coats|2||●
14|Stair|2|-|X|-|-
`)
	p.Merge("D5:G5", "A5:A6", "B5:B6", "C5:C6", "H5:H6")
	return p.File
}

func ticksTruth(t *typed.Truth) {
	t.Is("EQ-1210", "Kelderby Planetarium", "a column for each tap with X, x, ✓ or ● under the one set; dashes are empty; one unit with two marks and one with none")
	t.Speakers("sheet=Ticks; tap_v=100; line_v=100; amplifier=K", `
rows|tag|room|tap_w|channel|note
7|1|Dome floor 0°|6|1|
8|2|Dome floor 45°|6|1|
9|3|Dome floor 90°|3|1|
10|4|Dome floor 135°|3|1|
11|5|Dome floor 180°|6|1|
12|6|Dome floor 225°|6|1|
13|7|Dome floor 270°|3|1|
14|8|Dome floor 315°|10|1|
15|9|Foyer left|1.5|2|
16|10|Foyer right|1.5|2|
17|11|Foyer desk||2|two marks: 1.5 or 3 W
18|12|Lobby||2|no mark: 1.5 to 10 W
19|13|Coats|3|2|
20|14|Stair|3|2|
`)
	t.Channels("line_v=100; amplifier=K", "channel|load_w|load_min_w|load_max_w|note\n1|43|43|43|\n2||12|22|9 known, 1.5 to 3 and 1.5 to 10 open")
	t.Asks("Ticks", "17|asked|two taps are marked\n18|asked|no tap is marked")
}

// Strike-through of a cell, of part of a cell and of a row; a row hidden by hand; another sheet with a filter left on.
func markedUp() *excelize.File {
	p := typed.NewBook("Dome")
	p.Put("A1", `
Dome, marked up after the visit|||||Job EQ-1301
Amp DOME: chan. 1 60 W, chan. 2 60 W, both 100 V

Unit|Block|Kind|Tapping|Chan.|Remark
D1|N|Marl 20|10 W|1
D2|NE|Marl 20||1|turned down
D3|E|Marl 20|10 W|1|gone, projector hoist
D4|SE|Marl 20|10 W|1
D5|S|Marl 20|10 W|1
D6|SW|Marl 20|10 W|1
D7|W|Marl 20|20 W|1|now 10 W
D8|NW|Marl 20||1
`)
	p.Corrected("D6", "10 W", " 5 W")
	p.Corrected("D12", "20 W 15 W", " 10 W")
	p.Strike("A7:F7", "D11")
	p.Hide(9)
	q := p.Sheet("Foyer")
	q.Put("A1", `
Foyer

Unit|Floor|Kind|Tapping|Chan.
F1|0|Sedge 6|3 W|2
F2|0|Sedge 6|3 W|2
F3|1|Sedge 6|1.5 W|2
F4|1|Sedge 6|1.5 W|2
F5|0|Sedge 6|3 W|2
F6|1|Sedge 6|1.5 W|2
`)
	q.Filtered("A3:E9", "B", "1", 4, 5, 8)
	return p.File
}

func markedUpTruth(t *typed.Truth) {
	t.Is("EQ-1301", "", "a tap struck out with the new one typed behind it, one with two old values struck, a cell struck with the new value in the remark, a row struck, a row hidden by hand, rows hidden by a filter")
	t.Speakers("tap_v=100; line_v=100; amplifier=DOME", `
sheet|rows|tag|room|model|tap_w|channel|note
Dome|5|D1|N|Marl 20|10|1|
Dome|6|D2|NE|Marl 20|5|1|10 W struck, 5 W typed behind
Dome|8|D4|SE|Marl 20|10|1|
Dome|10|D6|SW|Marl 20|10|1|
Dome|11|D7|W|Marl 20|10|1|20 W struck, the remark has the new tap
Dome|12|D8|NW|Marl 20|10|1|20 W and 15 W struck
Foyer|4|F1||Sedge 6|3|2|hidden by the filter: counts
Foyer|5|F2||Sedge 6|3|2|hidden by the filter: counts
Foyer|6|F3||Sedge 6|1.5|2|
Foyer|7|F4||Sedge 6|1.5|2|
Foyer|8|F5||Sedge 6|3|2|hidden by the filter: counts
Foyer|9|F6||Sedge 6|1.5|2|
`)
	t.Channels("line_v=100; rated_w=60; amplifier=DOME", "channel|load_w|note\n1|55|65 W with the hidden row, over the rating\n2|13.5|")
	t.Amplifiers("", "amplifier|rated_w|load_w\nDOME|120|68.5")
	t.Left("Dome", "7|struck|the whole row\n9|hidden|by hand")
	t.Asks("Dome", "9|asked|D5 is hidden by hand: with it chan. 1 carries 65 W of 60 W")
}

// A bidder's table: the taps are ranges and lists, the choice is left open.
func tender() *excelize.File {
	p := typed.NewBook("Lot 4")
	p.Put("A1", `
Kelderby Planetarium, lot 4: sound|||||Job EQ-1333

Pos|We offer|pcs|Power stages|for area|Price each|Price
1|Flush ceiling unit 100 V|24|6/3/1.5 W|Foyer ring|52.00|1248.00
2|Wall column 100 V|8|20 W - 40 W|Dome rim|140.00|1120.00
3|Weather horn 100 V|2|30/15/7.5 W|Roof terrace|99.00|198.00
4|Amplifier 2 x 240 W, 100 V; output 1 for Foyer ring and Roof terrace, output 2 for Dome rim|1|||780.00|780.00
5|Loudspeaker cable 2 x 2.5 mm²|300 m|||1.20|360.00
|||||Sum|3706.00
`)
	return p.File
}

func tenderTruth(t *typed.Truth) {
	t.Is("EQ-1333", "Kelderby Planetarium", "bid: tap lists and a range, no choice; output 1 is sound for every choice (51 to 204 of 240 W), output 2 is open (160 to 320 of 240 W); cable under pcs with its unit")
	t.Speakers("sheet=Lot 4; tap_v=100; line_v=100", `
rows|model|zone|count|channel|note
4|Flush ceiling unit 100 V|Foyer ring|24|1|1.5 to 6 W
5|Wall column 100 V|Dome rim|8|2|20 to 40 W
6|Weather horn 100 V|Roof terrace|2|1|7.5 to 30 W
`)
	t.Channels("line_v=100; rated_w=240", "channel|load_min_w|load_max_w|note\n1|51|204|24x1.5 + 2x7.5 to 24x6 + 2x30\n2|160|320|8x20 to 8x40")
	t.Amplifiers("", "rated_w|note\n480|2 x 240 W, unnamed")
	t.Left("Lot 4", "7|amplifier|\n8|cable|300 m are no pieces\n9|total|price")
	t.Asks("Lot 4", "5|asked|which tap for the wall columns: decides output 2\n4|assumed|any tap will do on output 1: need not be asked")
}

// Low-impedance loudspeakers on outputs of their own, and one that strayed onto the line.
func cinema() *excelize.File {
	p := typed.NewBook("All units")
	p.Put("A1", `
Show sound and paging||||Job EQ-1345

Unit|Use|Load as seen|Amp ch
SH-L|Show left|8Ω|CH1
SH-R|Show right|4Ω|CH2
SH-S|Show sub|8Ω|CH1
P1|Paging seats|6 W tap|CH3
P2|Paging seats|6 W tap|CH3
P3|Paging seats|6 W tap|CH3
P4|Paging booth|8Ω, no xfmr|CH3
P5|Paging foyer|3 W tap|CH4
P6|Paging foyer|3 W tap|CH4
P7|Paging terrace|bypassed (Lo-Z)|CH4
P8|Paging stair|tap 3|CH4

CH1|250W@4Ω
CH2|250W@4Ω
CH3|120W@70V
CH4|120W@70V
`)
	return p.File
}

func cinemaTruth(t *typed.Truth) {
	t.Is("EQ-1345", "", "low-impedance units on low-impedance outputs are in order; an 8 ohm unit and a bypassed transformer on 70 V outputs are not; 'tap 3' may be 3 W or the third tap")
	t.Speakers("sheet=All units", `
rows|tag|room|tap_w|tap_v|line_v|channel|low_ohm|note
4|SH-L|Show left||||CH1|8|its own output: no fault
5|SH-R|Show right||||CH2|4|
6|SH-S|Show sub||||CH1|8|
7..9|P1..P3|Paging seats|6|70.7|70.7|CH3||
10|P4|Paging booth|||70.7|CH3|8|on the line without a transformer
11..12|P5..P6|Paging foyer|3|70.7|70.7|CH4||
13|P7|Paging terrace|||70.7|CH4||transformer bypassed: low impedance, ohms unknown
14|P8|Paging stair|3|70.7|70.7|CH4||3 W by its neighbours: to be assumed aloud
`)
	t.Channels("", `
channel|line_v|rated_w|load_w|load_min_w|note
CH1|||||250 W at 4 ohm is no line rating
CH2|||||
CH3|70.7|120|18|18|without P4
CH4|70.7|120||9|without P7
`)
	t.Asks("All units", "14|assumed|'tap 3' taken as 3 W\n13|asked|P7 is bypassed on a 70 V line")
}

// Two circuits a room: one row is two groups on two amplifiers.
func voiceAlarm() *excelize.File {
	p := typed.NewBook("VA")
	p.Put("A1", `
Kelderby Planetarium - voice alarm loudspeakers|||||||Job EQ-1360
100 V. A circuits on amplifier VA1, B circuits on amplifier VA2, both 250 W a circuit. All controls with relay.

Evac. area|Each|on A|circuit|on B|circuit|Load A|Load B
Dome|6 W|20|A1|20|B1|120|120
Foyer|3 W|8|A2|7|B2|24|21
Back of house|1.5 W|6|A2|6|B2|9|9
Plant|10 W|2|A3|-|-|20|0
Roof|15 W|-|-|3|B3|0|45
Together||36||36||173|195
`)
	return p.File
}

func voiceAlarmTruth(t *typed.Truth) {
	t.Is("EQ-1360", "Kelderby Planetarium", "interleaved A and B circuits: two counts and two circuits on one row; two areas have one circuit only; emergency use is stated")
	t.Speakers("sheet=VA; tap_v=100; line_v=100", `
rows|zone|count|tap_w|amplifier|channel
5|Dome|20|6|VA1|A1
5|Dome|20|6|VA2|B1
6|Foyer|8|3|VA1|A2
6|Foyer|7|3|VA2|B2
7|Back of house|6|1.5|VA1|A2
7|Back of house|6|1.5|VA2|B2
8|Plant|2|10|VA1|A3
9|Roof|3|15|VA2|B3
`)
	t.Channels("line_v=100; rated_w=250", `
amplifier|channel|load_w
VA1|A1|120
VA1|A2|33
VA1|A3|20
VA2|B1|120
VA2|B2|30
VA2|B3|45
`)
	t.Amplifiers("", "amplifier|load_w\nVA1|173\nVA2|195")
	t.Left("VA", "10|total|36, 36, 173, 195: right")
}
