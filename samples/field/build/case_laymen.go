package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

var laymen = []typed.Case{
	// The caretaker of a village hall, for a new committee that does not know what hangs where.
	{File: "hall/speakers in the hall.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Sheet1")
		p.Put("A1", `
Harrowmere Hall - where the speakers are
||
Where|How many|Dial on the back set to|Knob on the wall?
Main hall, left wall|3|6 watts|big knob by the stage, 50 watts
Main hall, right wall|3|6 watts|same knob
Stage|2|6 watts|no
Committee room|2|3 watts|own knob, 10 watts
Kitchen|1|1.5 watts|own knob, 10 watts
Corridor|3|1.5 watts|no
Ladies|1|1.5 watts|no
Gents|1|1.5 watts|no
Store|1|can't see, too high up|no
Car park|1|10 watts|no
||
The amplifier in the cupboard says 100V LINE 120W on the front. All the speakers are on the one pair of wires.
There is another speaker in the boiler room, still in its box.
`)
		p.Bold("A3:D3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Harrowmere Hall", "plain words of a layman; controls as knobs without a name, one over two rows; one tap that could not be seen; a spare in a sentence")
		t.Speakers("sheet=Sheet1; tap_v=100; line_v=100", `rows|room|count|tap_w|note
4|Main hall, left wall|3|6|unnamed
5|Main hall, right wall|3|6|unnamed
6|Stage|2|6|
7|Committee room|2|3|unnamed
8|Kitchen|1|1.5|unnamed
9|Corridor|3|1.5|
10|Ladies|1|1.5|
11|Gents|1|1.5|
12|Store|1||
13|Car park|1|10|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_min_w
|120|73`)
		t.Amplifiers("", `amplifier|rated_w
|120`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
||50|36
|Committee room|10|6
|Kitchen|10|1.5`)
		t.Left("Sheet1", `16|spare|in its box in the boiler room`)
		t.Asks("Sheet1", `12|asked|setting of the loudspeaker in the store`)
	}},

	// An insurer's surveyor: the schedule of fixed equipment of a swimming bath, for the sums insured.
	{File: "cover/Lanthorn Baths fixed equipment.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Schedule B")
		p.Put("A1", `
SCHEDULE B - FIXED EQUIPMENT
Premises: Lanthorn Street Baths
Survey ref: S/7741
||
Item|Location|Description|Qty|Sum insured £|Surveyor's remark
1|Pool hall|Timing clock, digital, 40 W|1|2400|
2|Pool hall|Loudspeaker, column, 100 V line, set to 20 W|6|1500|
3|Pool hall|Loudspeaker, horn, 100 V line, 15 / 7.5 / 3.75 W|4|880|setting not seen, 5 m up
4|Entrance hall|Loudspeaker, ceiling, 100 V line, set to 3 W|4|260|
5|Entrance hall|Ticket printer, 60 W|1|350|
6|Changing rooms|Loudspeaker, ceiling, 100 V line, set to 1.5 W|8|520|on a wall volume control, 24 W
7|Plant room|Circulation pump, 2.2 kW|2|5200|
8|Staff room|Loudspeaker, wall, 100 V line, set to 3 W|1|65|on a wall volume control, 6 W
9|Office|Loudspeaker, wall, 100 V line, set to 3 W|1|65|
10|Office|Public address amplifier, 240 W, 100 V line|1|780|all loudspeakers on one output
11|Office|Desk microphone|1|120|
12|Store|Loudspeaker, column, 100 V line|2|500|boxed, not connected
||||12640|
`)
		p.Bold("A1", "A5:F5", "E18")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("S/7741", "Lanthorn Street Baths", "loudspeakers among clocks and pumps, taps in descriptions, one row with the plate's settings only, controls in remarks, spares in the store, total without a word")
		t.Speakers("sheet=Schedule B; tap_v=100; line_v=100", `rows|room|count|tap_w|note
7|Pool hall|6|20|
8|Pool hall|4||
9|Entrance hall|4|3|
11|Changing rooms|8|1.5|unnamed
13|Staff room|1|3|unnamed
14|Office|1|3|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_min_w
|240|150`)
		t.Amplifiers("", `amplifier|rated_w
|240`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Changing rooms|24|12
|Staff room|6|3`)
		t.Left("Schedule B", `6|other|clock
10|other|printer
12|other|pump
16|other|microphone
17|spare|boxed, not connected
18|total|sum insured`)
		t.Asks("Schedule B", `8|asked|which of the three settings the horns are on`)
	}},

	// An electrician who looks after a depot: his circuit chart, made as he makes those of distribution boards.
	{File: "boards/Gillmoor PA circuit chart.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("PA")
		p.Put("A1", `
Gillmoor Depot - PA circuit chart|||||||Job E-2291
||
Cct|Serving|Points||Cable||Test||Fed from|Remarks
||No.|W each @ 100 V|mm²|m|IR MΩ|Pol.||
1|Workshop bays 1-3|6|15|2.5|85|'>200|✓|Amp A o/p 1|
2|Workshop bays 4-6|6|15|2.5|110|'>200|✓|Amp A o/p 2|
3|Paint store|2|15|2.5|60|150|✓|Amp A o/p 3|
4|Mess room|4|3|1.5|40|'>200|✓|Amp B o/p 1|V/C by door, 24 W
5|Offices ground floor|6|1.5|1.5|52|'>200|✓|Amp B o/p 2|V/C in corridor, 12 W, does all six
6|Offices first floor|6|1.5|1.5|66|'>200|✓|Amp B o/p 3|
7|Gatehouse|1|3|1.5|95|180|✓|Amp B o/p 4|V/C at desk, 6 W
8|Yard|4|30|4|160|45|✓|Amp C|
9|Spare|||||||Amp A o/p 4|
||
Amp A 4 x 125 W, Amp B 4 x 60 W, Amp C 240 W
`)
		p.Merge("A3:A4", "B3:B4", "C3:D3", "E3:F3", "G3:H3", "I3:I4", "J3:J4")
		p.Bold("A1", "A3:J4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("E-2291", "Gillmoor Depot", "two header rows with groups, insulation tests, controls in remarks, amplifier ratings in a sentence, a spare way")
		t.Speakers("sheet=PA; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|channel|note
5|Workshop bays 1-3|6|15|Amp A|1|
6|Workshop bays 4-6|6|15|Amp A|2|
7|Paint store|2|15|Amp A|3|
8|Mess room|4|3|Amp B|1|unnamed
9|Offices ground floor|6|1.5|Amp B|2|unnamed
10|Offices first floor|6|1.5|Amp B|3|
11|Gatehouse|1|3|Amp B|4|unnamed
12|Yard|4|30|Amp C||`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
Amp A|1|125|90
Amp A|2|125|90
Amp A|3|125|30
Amp B|1|60|12
Amp B|2|60|9
Amp B|3|60|9
Amp B|4|60|3
Amp C||240|120`)
		t.Amplifiers("", `amplifier|rated_w|load_w
Amp A||210
Amp B||33
Amp C|240|120`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Mess room|24|12
|Offices ground floor|12|9
|Gatehouse|6|3`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Workshop bays 1-3|85|2.5
Workshop bays 4-6|110|2.5
Paint store|60|2.5
Mess room|40|1.5
Offices ground floor|52|1.5
Offices first floor|66|1.5
Gatehouse|95|1.5
Yard|160|4`)
		t.Left("PA", `13|spare|spare way without loudspeakers`)
	}},

	// A facilities clerk of an American ice rink: the asset register, a line an asset whatever it is.
	{File: "facilities/ice rink PA assets.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Asset ID,Asset Type,Location,Watts,Connected To,Status,Comment
AMP-01,Amplifier,Mechanical Room,,,In service,"2 channels, 70V, 300 W each"
AMP-02,Amplifier,Front Office,100,,In service,"70V, single output"
VC-01,Volume Control,Skate Rental,35,AMP-02,In service,
VC-02,Volume Control,Skate Sharpening,35,AMP-02,In service,
SPK-001,Speaker,Rink North Side,32,AMP-01 ch 1,In service,
SPK-002,Speaker,Rink North Side,32,AMP-01 ch 1,In service,
SPK-003,Speaker,Rink North Side,32,AMP-01 ch 1,In service,
SPK-004,Speaker,Rink South Side,32,AMP-01 ch 1,In service,grille dented
SPK-005,Speaker,Rink South Side,32,AMP-01 ch 1,In service,
SPK-006,Speaker,Rink South Side,32,AMP-01 ch 1,In service,
SPK-007,Speaker,Bleachers,16,AMP-01 ch 2,In service,
SPK-008,Speaker,Bleachers,16,AMP-01 ch 2,In service,
SPK-009,Speaker,Bleachers,16,AMP-01 ch 2,In service,
SPK-010,Speaker,Bleachers,16,AMP-01 ch 2,In service,
SPK-011,Speaker,Penalty Boxes,16,AMP-01 ch 2,In service,
SPK-012,Speaker,Penalty Boxes,16,AMP-01 ch 2,Disposed,hit by puck
SPK-013,Speaker,Skate Rental,4,VC-01,In service,
SPK-014,Speaker,Skate Rental,4,VC-01,In service,
SPK-015,Speaker,Skate Sharpening,4,VC-02,In service,
SPK-016,Speaker,Lobby,4,AMP-02,In service,
SPK-017,Speaker,Lobby,4,AMP-02,In service,
SPK-018,Speaker,Lobby,4,AMP-02,In service,
SPK-019,Speaker,Locker Room 1,2,AMP-02,In service,
SPK-020,Speaker,Locker Room 2,2,AMP-02,In service,
SPK-021,Speaker,Storage Cage,,,In storage,same as lobby
MIC-01,Microphone,Front Office,,,In service,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "asset register: amplifiers, controls and loudspeakers in one list, joined by what each is connected to; one disposed of, one in storage")
		t.Speakers("tap_v=70.7; line_v=70.7; amplifier=AMP-01", `rows|tag|room|tap_w|channel
6..8|SPK-001..|Rink North Side|32|1
9..11|SPK-004..|Rink South Side|32|1
12..15|SPK-007..|Bleachers|16|2
16|SPK-011|Penalty Boxes|16|2`)
		t.Speakers("tap_v=70.7; line_v=70.7; amplifier=AMP-02", `rows|tag|room|tap_w|control
18..19|SPK-013..|Skate Rental|4|VC-01
20|SPK-015|Skate Sharpening|4|VC-02
21..23|SPK-016..|Lobby|4|
24|SPK-019|Locker Room 1|2|
25|SPK-020|Locker Room 2|2|`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
AMP-01|1|300|192
AMP-01|2|300|80
AMP-02||100|28`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP-01||272
AMP-02|100|28`)
		t.Controls("", `control|zone|rated_w|load_w
VC-01|Skate Rental|35|8
VC-02|Skate Sharpening|35|4`)
		t.Left("", `17|removed|disposed of
26|spare|in storage
27|other|microphone`)
	}},
}
