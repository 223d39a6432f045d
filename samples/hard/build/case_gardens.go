package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// gardens are English workbooks of the glasshouses and walks.
func gardens() []typed.Case {
	return []typed.Case{
		{File: "gardens/PA sched Palm Ho.xlsx", Kind: "schedule", Book: palmHouse, Truth: palmHouseTruth},
		{File: "gardens/Arid House bill 6.xls", Kind: "schedule", Book: aridBill, Saved: "xls", Truth: aridBillTruth},
		{File: "gardens/glasshouses by kind.xlsx", Kind: "schedule", Book: byKind, Truth: byKindTruth},
		{File: "gardens/Nursery - what hangs on what.xls", Kind: "schedule", Book: nursery, Saved: "xls", Truth: nurseryTruth},
		{File: "gardens/Fern Valley marks.xlsx", Kind: "schedule", Book: fernMarks, Saved: "xlsx", Truth: fernMarksTruth},
		{File: "gardens/Rose garden (colours).xlsx", Kind: "schedule", Book: roseColours, Truth: roseColoursTruth},
		{File: "gardens/Bulb store calc.xlsx", Kind: "schedule", Book: bulbCalc, Truth: bulbCalcTruth},
	}
}

// The header stands at F30, a title block and a list of controls stand left of it.
func palmHouse() *excelize.File {
	p := typed.NewBook("Sheet1")
	p.Put("B2", `
ELLERQUAY TRUST
Thornwater Garden - Palm House

Job|EQ-1107
Line|100V
Issued|for maintenance
`)
	p.Put("B30", `
KNOBS
K1|North door|20W max
K2|Plant room|50W max

A knob carries every head marked with it.
Heads = loudspeakers.
`)
	p.Put("F30", `
Head|Where it hangs|Pattern|Set to|Feeds off|Knob
H1|North door, left|Sedge 6|6W|PA1/1|K1
H2|North door, right|Sedge 6|6W|PA1/1|K1
H3|Path A|Sedge 6|3W|PA1/1|K1
H4|Path A|Sedge 6|3W|PA1/1|K1
H5|Path B|Marl 20|10W|PA1/2|K2
H6|Path B|Marl 20|10W|PA1/2|K2
H7|Path C|Marl 20|10W|PA1/2|K2
H8|Gallery|Marl 20|5W|PA1/2|-
H9|Gallery|Marl 20|5W|PA1/2|-
H10|Pump pit|Sedge 6|1.5W|PA1/1|-

PA1: two outputs, 60W each
`)
	p.Bold("B2", "F30:K30", "B30")
	return p.File
}

func palmHouseTruth(t *typed.Truth) {
	t.Is("EQ-1107", "Thornwater Garden - Palm House", "header at F30; a list of controls and a legend beside the table; line voltage only in the title block")
	t.Speakers("sheet=Sheet1; tap_v=100; line_v=100; amplifier=PA1", `
rows|tag|room|model|tap_w|channel|control|note
31|H1|North door, left|Sedge 6|6|1|K1|
32|H2|North door, right|Sedge 6|6|1|K1|
33|H3|Path A|Sedge 6|3|1|K1|
34|H4|Path A|Sedge 6|3|1|K1|
35|H5|Path B|Marl 20|10|2|K2|
36|H6|Path B|Marl 20|10|2|K2|
37|H7|Path C|Marl 20|10|2|K2|
38|H8|Gallery|Marl 20|5|2||a dash: no control
39|H9|Gallery|Marl 20|5|2||
40|H10|Pump pit|Sedge 6|1.5|1||
`)
	t.Channels("line_v=100; rated_w=60; amplifier=PA1", `
channel|load_w|note
1|19.5|6+6+3+3+1.5
2|40|3x10 + 2x5
`)
	t.Amplifiers("", "amplifier|rated_w|load_w\nPA1|120|59.5")
	t.Controls("", `
control|rated_w|load_w|note
K1|20|18|rating in the list beside the table
K2|50|30|
`)
}

// A bill of quantities: everything that matters is inside sentences.
func aridBill() *excelize.File {
	p := typed.NewBook("Bill 6")
	p.Put("A1", `
THORNWATER GARDEN - ARID HOUSE EXTENSION
BILL No. 6 - SOUND|||||Job EQ-1320

Item|Description|Unit|Qty|Rate|Amount
A|The Contractor shall allow for all scaffold, attendance and making good.|note
|Loudspeakers (all 100 V line)
B|Ceiling loudspeaker 6 W, flush, complete with line transformer, set to 3 W, in Arid House entrance; connected to amplifier A, output 1|nr|14|48.5|679
C|Ditto, but set to 1.5 W, in corridor|nr|9|48.5|436.5
D|Column loudspeaker 20 W, weatherproof, set to 10 W, on glazing bars of main span; amplifier A, output 2|nr|6|131|786
E|Horn loudspeaker 15 W, at full power, to service yard; amplifier A, output 2|nr|2|95|190
|Amplifier and control
F|Power amplifier "A", two outputs of 120 W at 100 V|nr|1|640|640
G|Wall volume control, 36 W, with override relay, for the corridor loudspeakers (item C)|nr|1|38|38
|Cable
H|Two-core cable 1.5 mm², amplifier to furthest loudspeaker of output 1|m|85|1.9|161.5
I|Ditto, 2.5 mm², output 2|m|120|2.6|312
J|Spare ceiling loudspeaker as item B, handed over boxed|nr|2|48.5|97
K|Testing and commissioning|sum|1|900|900
|To collection||||4240
`)
	p.Format(`"£"#,##0.00`, "E7:F22")
	p.Bold("A1:B2", "A4:F4", "B6", "B11", "B14")
	return p.File
}

func aridBillTruth(t *typed.Truth) {
	t.Is("EQ-1320", "Thornwater Garden - Arid House extension", "bill of quantities with prices: tap, place and output inside sentences; rated watts beside the set watts; ditto; cable in metres under Qty")
	t.Speakers("sheet=Bill 6; tap_v=100; line_v=100; amplifier=A", `
rows|zone|count|tap_w|channel|control|status|amplifier|note
7|Arid House entrance|14|3|1||installed|A|6 W is the rated power
8|corridor|9|1.5|1|G|installed|A|amplifier and output from the item above; the control has only its item letter
9|main span|6|10|2||installed|A|
10|service yard|2|15|2||installed|A|at full power: the rated 15 W
17||2||||spare||boxed; its row must not count
`)
	t.Channels("line_v=100; rated_w=120; amplifier=A", `
channel|load_w|note
1|55.5|14x3 + 9x1.5
2|90|6x10 + 2x15
`)
	t.Amplifiers("", "amplifier|rated_w|load_w\nA|240|145.5")
	t.Controls("", "control|zone|rated_w|load_w|note\nG|corridor|36|13.5|named only by its item letter")
	t.Lines("", `
line|from|length_m|area_mm2|material|note
H|A.1|85|1.5|copper|output 1; metal not stated
I|A.2|120|2.5|copper|output 2
`)
	t.Left("Bill 6", `
5|note|preliminaries
12|amplifier|not a loudspeaker
13|control|
15|cable|quantity is metres
16|cable|
18|other|commissioning sum
19|total|
`)
}

// Houses down, kinds with their setting across, counts in the cells; the amplifier below.
func byKind() *excelize.File {
	p := typed.NewBook("Count")
	p.Put("A1", `
Thornwater Garden - glasshouses, heads by kind|||||||Job EQ-1044
100V

House|Flush 6W set 3W|Pendant 10W set 5W|Column 20W set 10W|Horn 15W set 7.5W|Heads|Load|Amp way
Palm|4|2|-||6|22|G1.1
Fern|6||1||7|28|G1.1
Alpine||8|||8|40|G1.2
Orchid|10||||10|30|G1.3
Lily|0|4|2||6|40|G1.2
Yard||||3|3|22.5|G1.4
All|20|14|3|3|40|182.5

G1|4 x 60 W
`)
	p.Bold("A4:H4", "A11:H11")
	return p.File
}

func byKindTruth(t *typed.Truth) {
	t.Is("EQ-1044", "Thornwater Garden - glasshouses", "matrix: rated and set watts in the column heads, counts in the cells, dash, blank and zero; row and column sums; one truth row a filled cell")
	t.Speakers("sheet=Count; tap_v=100; line_v=100; amplifier=G1", `
rows|zone|count|tap_w|channel|note
5|Palm|4|3|1|
5|Palm|2|5|1|
6|Fern|6|3|1|
6|Fern|1|10|1|
7|Alpine|8|5|2|
8|Orchid|10|3|3|
9|Lily|4|5|2|the 0 under Flush is no loudspeaker
9|Lily|2|10|2|
10|Yard|3|7.5|4|
`)
	t.Channels("line_v=100; rated_w=60; amplifier=G1", `
channel|load_w|note
1|50|22+28
2|80|40+40: over its rating
3|30|
4|22.5|
`)
	t.Amplifiers("", "amplifier|rated_w|load_w|note\nG1|240|182.5|4 x 60 W")
	t.Left("Count", "11|total|sums of rows and columns, all right")
}

// Sections by amplifier output, controls as titles inside them, what they carry is indented.
func nursery() *excelize.File {
	p := typed.NewBook("List")
	p.Put("A1", `
Thornwater nursery - what hangs on what
job no EQ-0850

AMPLIFIER 1, output A - 120 W, 100 V
Ref|Spot|Kind|At
P1|Potting bench|Sedge 6|3 W
P2|Potting bench|Sedge 6|3 W
P3|Door|Sedge 6|6 W
Volume control VC-1 (10 W), Seed room - carries all that is indented
␠␠␠P4|Seed room|Sedge 6|3 W
␠␠␠P5|Seed room|Sedge 6|3 W
␠␠␠P6|Seed store|Sedge 6|1.5 W
Sub-total A|||19.5 W

AMPLIFIER 1, output B - 120 W, 100 V
Ref|Spot|Kind|At
P7|Tunnel 1|Marl 20|10 W
P8|Tunnel 1|Marl 20|10 W
Volume control VC-2 (40 W), Tunnel 2 - carries all that is indented
␠␠␠P9|Tunnel 2|Marl 20|20 W
␠␠␠P10|Tunnel 2|Marl 20|20 W
␠␠␠P11|Tunnel 2|Marl 20|10 W
P12|Gate|Marl 20|5 W
Sub-total B|||75 W
Sum of amplifier 1|||98.5 W
`)
	p.Bold("A1", "A4", "A15", "A9", "A19")
	return p.File
}

func nurseryTruth(t *typed.Truth) {
	t.Is("EQ-0850", "Thornwater nursery", "sections by amplifier output, controls as titles, membership by indent (three blanks typed); P12 is out of the control again; the grand total is wrong by 4 W")
	t.Speakers("sheet=List; tap_v=100; line_v=100; amplifier=1", `
rows|tag|room|model|tap_w|channel|control|note
6|P1|Potting bench|Sedge 6|3|A||
7|P2|Potting bench|Sedge 6|3|A||
8|P3|Door|Sedge 6|6|A||
10|P4|Seed room|Sedge 6|3|A|VC-1|
11|P5|Seed room|Sedge 6|3|A|VC-1|
12|P6|Seed store|Sedge 6|1.5|A|VC-1|
17|P7|Tunnel 1|Marl 20|10|B||
18|P8|Tunnel 1|Marl 20|10|B||
20|P9|Tunnel 2|Marl 20|20|B|VC-2|
21|P10|Tunnel 2|Marl 20|20|B|VC-2|
22|P11|Tunnel 2|Marl 20|10|B|VC-2|
23|P12|Gate|Marl 20|5|B||not indented: not behind VC-2
`)
	t.Channels("line_v=100; rated_w=120; amplifier=1", `
channel|load_w|note
A|19.5|3+3+6+3+3+1.5
B|75|20+50+5
`)
	t.Amplifiers("", "amplifier|rated_w|load_w|note\n1|240|94.5|the file says 98.5 W")
	t.Controls("", `
control|zone|rated_w|load_w|note
VC-1|Seed room|10|7.5|
VC-2|Tunnel 2|40|50|over its rating
`)
	t.Left("List", `
4|title|amplifier output
9|control|title of a section
13|total|right
15|title|
16|header|repeated
19|control|
24|total|right
25|total|98.5 stated, 94.5 summed: total-mismatch
`)
}

// Many marks in one cell, counts in names, three small tables below each other.
func fernMarks() *excelize.File {
	p := typed.NewBook("Marks")
	p.Put("A1", `
Fern Valley - marks and settings
Job EQ-0777||System|100 V

Marks|What|Dial|Line|Knob
LS-01…LS-08|Bollard head|6 W|L1
LS-09 to 12|Bollard head|6 W|L1|K1
S101-S104, S106|Rock head|10W ea.|L2
P1/2/3|Pole horn|15 W|L2
|Sedge 6 (x4)|3 W|L3|K2
R1 & R2|Rotunda column|20 W|L3
LS-20..LS-24 less LS-22|Bollard head|6 W|L1
Q1-Q3|Pole horn, 2 per mark|7.5 W|L2
|6 no. path lights - not ours|-|-

Line|Amp way|Good for
L1|Amp 1 way 1|120 W
L2|Amp 1 way 2|120 W
L3|Amp 1 way 3|60 W

Knob|Good for
K1|20 W
K2|15 W
`)
	return p.File
}

func fernMarksTruth(t *typed.Truth) {
	t.Is("EQ-0777", "Fern Valley", "ranges, lists and gaps of tags in one cell, counts in the name, channels and ratings in tables below; saved by LibreOffice")
	t.Speakers("sheet=Marks; tap_v=100; line_v=100; amplifier=1", `
rows|tag|model|count|tap_w|channel|control|note
5|LS-01…LS-08|Bollard head|8|6|1||
6|LS-09 to 12|Bollard head|4|6|1|K1|
7|S101-S104, S106|Rock head|5|10|2||a gap in the range
8|P1/2/3|Pole horn|3|15|2||no fraction, no date
9||Sedge 6|4|3|3|K2|count in the name
10|R1 & R2|Rotunda column|2|20|3||
11|LS-20..LS-24 less LS-22|Bollard head|4|6|1||five less one
12|Q1-Q3|Pole horn|6|7.5|2||three marks of two
`)
	t.Channels("line_v=100; amplifier=1", `
channel|rated_w|load_w|note
1|120|96|8x6 + 4x6 + 4x6
2|120|140|5x10 + 3x15 + 6x7.5: over its rating
3|60|52|4x3 + 2x20
`)
	t.Amplifiers("", "amplifier|load_w\n1|288")
	t.Controls("", "control|rated_w|load_w|note\nK1|20|24|over its rating\nK2|15|12|")
	t.Left("Marks", "13|by others|path lights, not loudspeakers")
}

// The setting is told by colour alone.
func roseColours() *excelize.File {
	p := typed.NewBook("Beds")
	p.Put("A1", `
Rose garden|||Job EQ-0931

Head|Bed|Way|Seen
R1|North|1|yes
R2|North|1|yes
R3|North|1|yes
R4|Pergola|1|yes
R5|Pergola|1|yes
R6|South|2|yes
R7|South|2|yes
R8|South|2|no

Colour = watts on the 100 V line|3
|6
|10
Amp 40 W a way
`)
	p.Colour("92D050", "A4:A5", "B13")
	p.Colour("FFFF00", "A6:A8", "A11", "B14")
	p.Colour("FF7070", "A9:A10", "B15")
	return p.File
}

func roseColoursTruth(t *typed.Truth) {
	t.Is("EQ-0931", "Rose garden", "the tap is the colour of the tag, the legend below names the watts; a reader without colour must ask for the taps and can bound them by 3 to 10 W")
	t.Speakers("sheet=Beds; tap_v=100; line_v=100; note=tap by colour", `
rows|tag|room|channel
4..6|R1..R3|North|1
7..8|R4..R5|Pergola|1
9..11|R6..R8|South|2
`)
	t.Channels("line_v=100; rated_w=40", `
channel|load_min_w|load_max_w|note
1|15|50|five heads; 24 W to who reads the colours
2|9|30|three heads; 26 W to who reads the colours
`)
	t.Asks("Beds", "4-11|asked|no column of taps: the watts are told by colour alone")
}

// Formulas that no program has calculated yet.
func bulbCalc() *excelize.File {
	p := typed.NewBook("Calc")
	p.Put("A1", `
Bulb store|||||Job EQ-1400
70 V

Spot|Heads|W apiece|W here|Amp way
Sorting|6|5||B/1
Cold room|4|2.5||B/1
Loading dock|2|||B/2
Office|1|1||B/2
All
`)
	for _, f := range [][2]string{{"D5", "B5*C5"}, {"D6", "B6*C6"}, {"C7", "C5*3"}, {"D7", "B7*C7"}, {"D8", "B8*C8"}, {"B9", "SUM(B5:B8)"}, {"D9", "SUM(D5:D8)"}} {
		p.Formula(f[0], f[1])
	}
	p.Put("A11", "Amp B: 2 x 60 W")
	return p.File
}

func bulbCalcTruth(t *typed.Truth) {
	t.Is("EQ-1400", "Bulb store", "formulas without stored values: totals can be done without, one tap cannot")
	t.Speakers("sheet=Calc; tap_v=70.7; line_v=70.7; amplifier=B", `
rows|zone|count|tap_w|channel|note
5|Sorting|6|5|1|
6|Cold room|4|2.5|1|
7|Loading dock|2||2|the tap is a formula without a stored value: not zero, not 5
8|Office|1|1|2|
`)
	t.Channels("line_v=70.7; rated_w=60; amplifier=B", `
channel|load_w|load_min_w|note
1|40|40|
2||1|at least the office
`)
	t.Left("Calc", "9|total|formulas without stored values")
	t.Asks("Calc", "7|asked|tap of the loading dock: formula without a stored value")
}
