package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// boathouseLists are lists of boathouses that are hard for other reasons than their tables.
func boathouseLists() []typed.Case {
	return []typed.Case{
		{File: "boathouses/B2 primaries.csv", Kind: "schedule", Bytes: boathouse2, Truth: boathouse2Truth},
		{File: "boathouses/B8 pasted.xlsx", Kind: "schedule", Book: boathouse8, Truth: boathouse8Truth},
		{File: "boathouses/B9/EQ-0909 heads.xlsx", Kind: "schedule", Book: func() *excelize.File { return boathouse9(false) }, Truth: boathouse9OldTruth},
		{File: "boathouses/B9/EQ-0909 heads as fitted (2).xlsx", Kind: "schedule", Book: func() *excelize.File { return boathouse9(true) }, Truth: boathouse9Truth},
		{File: "boathouses/B1 school line.xls", Kind: "schedule", Book: boathouse1, Saved: "xls", Truth: boathouse1Truth},
	}
}

// Taps told as the impedance of the transformer's primary.
func boathouse2() []byte {
	return []byte(typed.DOS(`
Boathouse 2 - transformer primaries read at the bench, 1 kHz
Job EQ-0233|100 V line||

Unit|Bay|Primary|Way
1|Slip|1000 Ω|1
2|Slip|1000 Ω|1
3|Slip|2k|1
4|Hall|2k0|1
5|Hall|500R|2
6|Hall|500R|2
7|Loft|4000 ohm|2
8|Loft|8 ohm (no transformer!)|2
9|Loft|4k|2

Amp EB2|way 1 40 W|way 2 60 W|
`))
}

func boathouse2Truth(t *typed.Truth) {
	t.Is("EQ-0233", "Boathouse 2", "bars between the cells; taps as primary impedance in four spellings (100 x 100 / Z watts); one loudspeaker without a transformer on the line")
	t.Speakers("tap_v=100; line_v=100; amplifier=EB2", `
rows|tag|room|tap_w|channel|low_ohm|note
5|1|Slip|10|1||1000 ohm
6|2|Slip|10|1||
7|3|Slip|5|1||2k
8|4|Hall|5|1||2k0
9|5|Hall|20|2||500R
10|6|Hall|20|2||
11|7|Loft|2.5|2||
12|8|Loft||2|8|low impedance on the line: kept out of the sum
13|9|Loft|2.5|2||
`)
	t.Channels("line_v=100; amplifier=EB2", "channel|rated_w|load_w|note\n1|40|30|\n2|60|45|without unit 8")
	t.Amplifiers("", "amplifier|load_w|note\nEB2|75|without unit 8")
	t.Left("", "15|amplifier|")
}

// A page pasted from a drawing: one column of text, its columns held apart by blanks.
func boathouse8() *excelize.File {
	p := typed.NewBook("Sheet1")
	for i, line := range []string{
		"BOATHOUSE 8 - LOUDSPEAKERS                         EQ-0808",
		"Line voltage 100 V",
		"",
		"Ref    Location          Model       Tap      Zone   Amp",
		"LS-1   Slipway north     Sleet horn  7.5 W    Z1     A1-1",
		"LS-2   Slipway south     Sleet horn  7.5 W    Z1     A1-1",
		"LS-3   Boat store        Tansy 8     5 W      Z1     A1-1",
		"LS-4   Boat store        Tansy 8     5 W      Z1     A1-1",
		"LS-5   Changing room     Tansy 8     2.5 W    Z2     A1-2",
		"LS-6   Changing room     Tansy 8     2.5 W    Z2     A1-2",
		"LS-7   Training room     Tansy 8     5 W      Z2     A1-2",
		"LS-8   Balcony           Sleet horn  10 W     Z2     A1-2",
		"",
		"Total connected: Z1 25 W, Z2 20 W",
		"A1 = 2 x 30 W",
	} {
		if line != "" {
			at, err := excelize.CoordinatesToCellName(1, i+1)
			typed.Must(err)
			typed.Must(p.File.SetCellValue(p.Name, at, line))
		}
	}
	return p.File
}

func boathouse8Truth(t *typed.Truth) {
	t.Is("EQ-0808", "Boathouse 8", "everything in column A, columns held apart by blanks; A1-1 is amplifier and channel, LS-1 is a tag")
	t.Speakers("sheet=Sheet1; tap_v=100; line_v=100; amplifier=A1", `
rows|tag|room|model|tap_w|zone|channel
5|LS-1|Slipway north|Sleet horn|7.5|Z1|1
6|LS-2|Slipway south|Sleet horn|7.5|Z1|1
7|LS-3|Boat store|Tansy 8|5|Z1|1
8|LS-4|Boat store|Tansy 8|5|Z1|1
9|LS-5|Changing room|Tansy 8|2.5|Z2|2
10|LS-6|Changing room|Tansy 8|2.5|Z2|2
11|LS-7|Training room|Tansy 8|5|Z2|2
12|LS-8|Balcony|Sleet horn|10|Z2|2
`)
	t.Channels("line_v=100; rated_w=30; amplifier=A1", "channel|load_w\n1|25\n2|20")
	t.Amplifiers("", "amplifier|rated_w|load_w\nA1|60|45")
	t.Left("Sheet1", "14|total|right for both zones\n15|amplifier|")
}

// The same job twice: as drawn, and as fitted a year later. Nothing is called a revision.
func boathouse9(fitted bool) *excelize.File {
	p := typed.NewBook("Heads")
	p.Put("A1", `
Ellerquay Trust|Boathouse 9
Works order|EQ-0909
`)
	head := "No.|Station|Dialled to|Runs off"
	if fitted {
		p.Put("A3", "Sheet|as fitted, 14 May 2018 - replaces the sheet of 2 March 2017")
		p.Put("A5", head+`
1|Pontoon|7.5 W|X/1
2|Pontoon|7.5 W|X/1
3|Shed|2.5 W|X/1
4|Shed|2.5 W|X/1
5|Shed|2.5 W|X/1
6|Gallery|5 W|X/2
7|Gallery|5 W|X/2
8|Crew stair|1 W|X/2

X: 30 W each side, 100 V
`)
	} else {
		p.Put("A3", "Sheet|as drawn, 2 March 2017")
		p.Put("A5", head+`
1|Pontoon|15 W|X/1
2|Pontoon|15 W|X/1
3|Shed|5 W|X/1
4|Shed|5 W|X/1
5|Shed|5 W|X/1
6|Gallery|5 W|X/2
7|Gallery|5 W|X/2

X: 30 W each side, 100 V
`)
	}
	return p.File
}

func boathouse9OldTruth(t *typed.Truth) {
	t.Is("EQ-0909", "Boathouse 9", "superseded by the sheet as fitted; the two are told apart by their dates and by 'as drawn' and 'as fitted', no revision letter")
	t.Revision("as drawn, 2 March 2017", true)
	t.Speakers("sheet=Heads; tap_v=100; line_v=100; amplifier=X", `
rows|tag|room|tap_w|channel
6..7|1..2|Pontoon|15|1
8..10|3..5|Shed|5|1
11..12|6..7|Gallery|5|2
`)
	t.Channels("line_v=100; rated_w=30; amplifier=X", "channel|load_w|note\n1|45|over its rating, on paper that no longer counts\n2|10|")
	t.Amplifiers("", "amplifier|rated_w|load_w\nX|60|55")
}

func boathouse9Truth(t *typed.Truth) {
	t.Is("EQ-0909", "Boathouse 9", "the newer of two sheets of one works order; '(2)' in the name is a copy mark, not a revision")
	t.Revision("as fitted, 14 May 2018", false)
	t.Speakers("sheet=Heads; tap_v=100; line_v=100; amplifier=X", `
rows|tag|room|tap_w|channel
6..7|1..2|Pontoon|7.5|1
8..10|3..5|Shed|2.5|1
11..12|6..7|Gallery|5|2
13|8|Crew stair|1|2
`)
	t.Channels("line_v=100; rated_w=30; amplifier=X", "channel|load_w\n1|22.5\n2|11")
	t.Amplifiers("", "amplifier|rated_w|load_w\nX|60|33.5")
}

// A 25 V line, a wall selector in ohms, and a talk-back microphone in the list.
func boathouse1() *excelize.File {
	p := typed.NewBook("Blad1")
	p.Put("A1", `
BOATHOUSE 1 (TEACHING BOATHOUSE) - SPEECH LINE||||||JOB EQ-0101
25 VOLT SYSTEM, ONE 50 WATT BOOSTER, ALL ON ONE PAIR

NR|ROOM|UNIT|QTY|STRAPPED AT|W TOTAL|REMARK
1|TEACHING ROOM|8 IN. UNIT|4|1 W|4|
2|WORKSHOP|HORN|3|4 W|12|
3|CORRIDOR|8 IN. UNIT|6|1/2 W|3|
4|OFFICE|DESK UNIT|1|1/4 W|.25|
5|OFFICE|TALK-BACK MIC|1|-|-|NOT A SPEAKER
6|YARD|HORN|2|8 W|16|
7|STORE|8 IN. UNIT|2|1 W|2|LOOSE ON SHELF
|||19||37.25|

FARTHEST UNIT 240 FT FROM BOOSTER, #18 PAIR
`)
	return p.File
}

func boathouse1Truth(t *typed.Truth) {
	t.Is("EQ-0101", "Boathouse 1", "25 V line; all capitals; a microphone between the loudspeakers; units on a shelf that the sum counts (37.25 W); 8 IN. is a size")
	t.Speakers("sheet=Blad1; tap_v=25; line_v=25", `
rows|zone|model|count|tap_w|status|note
5|TEACHING ROOM|8 IN. UNIT|4|1|installed|
6|WORKSHOP|HORN|3|4|installed|
7|CORRIDOR|8 IN. UNIT|6|0.5|installed|
8|OFFICE|DESK UNIT|1|0.25|installed|
10|YARD|HORN|2|8|installed|
11|STORE|8 IN. UNIT|2|1|spare|loose on a shelf: not connected, though the sum has it
`)
	t.Channels("line_v=25; rated_w=50", "load_w|note\n35.25|4+12+3+0.25+16; one booster with one output")
	t.Amplifiers("", "amplifier|rated_w|load_w|note\n|50|35.25|unnamed booster")
	t.Lines("", "from|length_m|area_mm2|material|note\nbooster|73.152|0.8230|copper|240 ft to the farthest unit; one pair carries everything")
	t.Left("Blad1", "9|other|a microphone\n12|total|19 pieces with the microphone; 37.25 W with the two on the shelf: differs from the load")
	t.Asks("Blad1", "11|assumed|two units loose on a shelf are left out; the sum counts them")
}
