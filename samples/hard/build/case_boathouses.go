package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// boathouses are English workbooks of the boathouses.
func boathouses() []typed.Case {
	return []typed.Case{
		{File: "boathouses/B3 heads list p1-2.xlsx", Kind: "schedule", Book: boathouse3, Truth: boathouse3Truth},
		{File: "boathouses/B12 zones across.ods", Kind: "schedule", Book: boathouse12, Saved: "ods", Truth: boathouse12Truth},
		{File: "boathouses/Boathouse 7 spkr taps.xlsx", Kind: "schedule", Book: boathouse7, Truth: boathouse7Truth},
		{File: "boathouses/B5 cables.xlsx", Kind: "schedule", Book: boathouse5, Truth: boathouse5Truth},
		{File: "boathouses/B4 mixed volts.xlsx", Kind: "schedule", Book: boathouse4, Saved: "xlsx", Truth: boathouse4Truth},
		{File: "boathouses/B6 pivot.xlsx", Kind: "schedule", Book: boathouse6, Truth: boathouse6Truth},
	}
}

// Three header rows with merged cells and units, page footers, repeated headers, sums carried forward.
func boathouse3() *excelize.File {
	p := typed.NewBook("Heads")
	head := `
DEVICE|||DRIVE||FED BY||HOME RUN
Ref|Bay|Pattern|Each|Line|Frame|Way|Dist.|Pair
|||W|V|||ft|AWG
`
	p.Put("A1", "Boathouse 3 - heads list|||||||Rev 4\nJob EQ-0933")
	p.Put("A5", head)
	p.Put("A8", `
B301|Slip|Tansy 8|5|70|F1|A|60|16
B302|Slip|Tansy 8|5|70|F1|A|85|16
B303|Slip|Tansy 8|5|70|F1|A|110|16
B304|Slip|Tansy 8|5|70|F1|A|135|16
B305|Racking|Sleet horn|7.5|70|F1|B|40|16
B306|Racking|Sleet horn|7.5|70|F1|B|55|16
B307|Racking|Tansy 8|2.5|70|F1|B|70|16
B308|Racking|Tansy 8|2.5|70|F1|B|90|16
|Carried forward||40
page 1 of 2
`)
	p.Put("A19", head)
	p.Put("A22", `
|Brought forward||40
B309|Workshop|Sleet horn|10|70|F1|C|75|14
B310|Workshop|Sleet horn|10|70|F1|C|95|14
B311|Workshop|Tansy 8|5|70|F1|C|100|14
B312|Workshop|Tansy 8|5|70|F1|C|120|14
B313|Office|Tansy 8|1|70|F1|C|30|14
B314|Office|Tansy 8|1|70|F1|C|45|14
|TOTAL||72
page 2 of 2

F1 = 3 x 60W at 70V
`)
	for _, r := range []string{"5", "19"} {
		p.Merge("A"+r+":C"+r, "D"+r+":E"+r, "F"+r+":G"+r, "H"+r+":I"+r)
	}
	return p.File
}

func boathouse3Truth(t *typed.Truth) {
	t.Is("EQ-0933", "Boathouse 3", "three header rows, merged groups and a units row, repeated after a page foot; carried and brought forward; the fed-by frame's rating in a note")
	t.Revision("4", false)
	t.Speakers("sheet=Heads; tap_v=70.7; line_v=70.7; amplifier=F1", `
rows|tag|room|model|tap_w|channel
8..11|B301..B304|Slip|Tansy 8|5|A
12..13|B305..B306|Racking|Sleet horn|7.5|B
14..15|B307..B308|Racking|Tansy 8|2.5|B
23..24|B309..B310|Workshop|Sleet horn|10|C
25..26|B311..B312|Workshop|Tansy 8|5|C
27..28|B313..B314|Office|Tansy 8|1|C
`)
	t.Channels("line_v=70.7; rated_w=60; amplifier=F1", "channel|load_w\nA|20\nB|20\nC|32")
	t.Amplifiers("", "amplifier|rated_w|load_w\nF1|180|72")
	t.Lines("material=copper; area_mm2=1.3087; note=home run of each head", `
from|to|length_m|area_mm2
F1 A|B301|18.288|1.3087
F1 A|B302|25.908|1.3087
F1 A|B303|33.528|1.3087
F1 A|B304|41.148|1.3087
F1 B|B305|12.192|1.3087
F1 B|B306|16.764|1.3087
F1 B|B307|21.336|1.3087
F1 B|B308|27.432|1.3087
F1 C|B309|22.86|2.0809
F1 C|B310|28.956|2.0809
F1 C|B311|30.48|2.0809
F1 C|B312|36.576|2.0809
F1 C|B313|9.144|2.0809
F1 C|B314|13.716|2.0809
`)
	t.Left("Heads", `
16|total|carried forward
17|note|page foot
19|header|repeated
20|header|
21|header|units
22|total|brought forward: counts nothing twice
29|total|72 W, right
30|note|page foot
32|amplifier|
`)
}

// Zones across, properties down, with a sum column and a zone that is not built.
func boathouse12() *excelize.File {
	p := typed.NewBook("Zones")
	p.Put("A1", `
Boathouse 12
Job EQ-1190

|Slipway|Boat hall|Loft|Gangway|All
Heads|4|10|6|3|23
Pattern|Sleet horn|Tansy 8|Tansy 8|Sleet horn
Each drawing|7.5 W|5 W|2.5 W|10 W
Together|30 W|50 W|15 W|30 W|125 W
Rack way and its watts|1, 60 W|2, 60 W|2, 60 W|-
Wall knob|none|KB-2, 50 W|KB-3, 20 W|none
Run from rack|45 m|60 m|82 m|130 m
Core|2 x 1.5|2 x 1.5|2 x 1.5|2 x 2.5
Fitted?|yes|yes|yes|no - next season
Line|100 V for all
`)
	p.Bold("B4:F4", "A5:A14")
	return p.File
}

func boathouse12Truth(t *typed.Truth) {
	t.Is("EQ-1190", "Boathouse 12", "transposed: zones across, a sum column that is no zone, one zone not built yet; rating inside the channel and the control cell")
	t.Speakers("sheet=Zones; tap_v=100; line_v=100", `
rows|zone|count|model|tap_w|channel|control|status|note
B|Slipway|4|Sleet horn|7.5|1||installed|
C|Boat hall|10|Tansy 8|5|2|KB-2|installed|
D|Loft|6|Tansy 8|2.5|2|KB-3|installed|
E|Gangway|3|Sleet horn|10|||future|not built, fed by nothing
`)
	t.Channels("line_v=100; rated_w=60", "channel|load_w|note\n1|30|\n2|65|50+15: over its rating")
	t.Controls("", "control|zone|rated_w|load_w\nKB-2|Boat hall|50|50\nKB-3|Loft|20|15")
	t.Lines("material=copper; note=cores and mm²; metal not stated", `
zone|length_m|area_mm2
Slipway|45|1.5
Boat hall|60|1.5
Loft|82|1.5
Gangway|130|2.5
`)
	t.Left("Zones", "F|total|sum column: 23 heads and 125 W with the gangway")
	t.Asks("Zones", "E|assumed|the gangway is future: left out of the load")
}

// A United States list whose fractions became days: 1/2 is 2 January, 1/4 is 4 January.
func boathouse7() *excelize.File {
	p := typed.NewBook("Taps")
	p.Put("A1", `
Boathouse 7|||Job EQ-0412
70 V

Spkr|Area|Tap W|Ckt|Run ft|Wire
S1|Lockers||1|60|'16/2
S2|Lockers||1|80|'16/2
S3|Lockers|1|1|95|'16/2
S4|Hall|1|1|115|'16/2
S5|Hall|2|1|130|'16/2
S6|Toilets||1|150|'16/2
S7|Toilets||1|165|'16/2
S8|Steps|'1/2|2|70|'18/2
S9|Steps|0.5|2|85|'18/2
S10|Dock|2|2|120|'18/2
S11|Dock|1 1/2|2|140|'18/2

Amp: 2 ckts, 20 W each
`)
	p.Date("C5", 2011, 1, 2, "d-mmm")
	p.Date("C6", 2011, 1, 2, "d-mmm")
	p.Date("C10", 2011, 1, 4, "d-mmm")
	p.Date("C11", 2011, 1, 4, "d-mmm")
	p.Format("# ?/?", "C13")
	return p.File
}

func boathouse7Truth(t *typed.Truth) {
	t.Is("EQ-0412", "Boathouse 7", "taps 1/2 and 1/4 turned into 2 and 4 January (month first: no day could be read otherwise as a usual tap list 1/4, 1/2, 1, 2); a fraction format; text fractions")
	t.Speakers("sheet=Taps; tap_v=70.7; line_v=70.7", `
rows|tag|room|tap_w|channel|note
5..6|S1..S2|Lockers|0.5|1|date 2 January
7|S3|Lockers|1|1|
8|S4|Hall|1|1|
9|S5|Hall|2|1|
10..11|S6..S7|Toilets|0.25|1|date 4 January
12|S8|Steps|0.5|2|text 1/2
13|S9|Steps|0.5|2|number shown as 1/2
14|S10|Dock|2|2|
15|S11|Dock|1.5|2|one and a half
`)
	t.Channels("line_v=70.7; rated_w=20", "channel|load_w|note\n1|5.5|0.5+0.5+1+1+2+0.25+0.25\n2|4.5|0.5+0.5+2+1.5")
	t.Lines("material=copper; note=one growing length a spkr from the amplifier along each circuit: assumed", `
to|length_m|area_mm2
S1|18.288|1.3087
S2|24.384|1.3087
S3|28.956|1.3087
S4|35.052|1.3087
S5|39.624|1.3087
S6|45.72|1.3087
S7|50.292|1.3087
S8|21.336|0.8230
S9|25.908|0.8230
S10|36.576|0.8230
S11|42.672|0.8230
`)
	t.Asks("Taps", "5-6|assumed|0.5 W recovered from a date\n10-11|assumed|0.25 W recovered from a date")
}

// Cables from end to end on a sheet of their own: a chain with a branch, feet and inches.
func boathouse5() *excelize.File {
	p := typed.NewBook("Heads")
	p.Put("A1", `
Boathouse 5
Job EQ-0505

Head|Where|Setting, W|Way
S1|Slip head|7.5|1
S2|Slip foot|7.5|1
S3|Bay 1|5|1
S4|Bay 2|5|1
S5|Bay 3|5|2
S6|Bay 4|5|2
S7|Loft|2.5|2
`)
	q := p.Sheet("Cables")
	q.Put("A1", `
Boathouse 5 cables

Cbl|Ex|On to|Lg|Stuff
C1|Rack way 1|S1|85'-6"|'14/2
C2|S1|S2|40'|'16/2
C3|S1|S3|62'-0"|'16/2
C4|S3|S4|18'|'16/2
C5|Rack way 2|S5|120'|#14
C6|S5|S6|18'|#14 CCA
C7|S6|S7|33'-9"|'18-2
C8|Rack way 3|coil in ceiling|25'|'16/2
`)
	r := p.Sheet("Rack")
	r.Put("A1", `
Amp RB5

Way|V|Watts good for
1|70|60
2|70|60
3|70|60
`)
	return p.File
}

func boathouse5Truth(t *typed.Truth) {
	t.Is("EQ-0505", "Boathouse 5", "three sheets joined by way and tag; 'Ex' and 'On to' are from and to; a branch at S1; feet-inches; CCA on one piece; a coil that feeds nothing")
	t.Speakers("sheet=Heads; tap_v=70.7; line_v=70.7; amplifier=RB5", `
rows|tag|room|tap_w|channel
5|S1|Slip head|7.5|1
6|S2|Slip foot|7.5|1
7|S3|Bay 1|5|1
8|S4|Bay 2|5|1
9|S5|Bay 3|5|2
10|S6|Bay 4|5|2
11|S7|Loft|2.5|2
`)
	t.Channels("line_v=70.7; rated_w=60; amplifier=RB5", "channel|load_w|note\n1|25|\n2|12.5|\n3|0|only a coil: no load, or none shown")
	t.Amplifiers("", "amplifier|load_w\nRB5|37.5")
	t.Lines("material=copper", `
line|from|to|length_m|area_mm2|material|note
C1|Rack way 1|S1|26.0604|2.0809|copper|85 ft 6 in
C2|S1|S2|12.192|1.3087|copper|branch
C3|S1|S3|18.8976|1.3087|copper|
C4|S3|S4|5.4864|1.3087|copper|
C5|Rack way 2|S5|36.576|2.0809|copper|
C6|S5|S6|5.4864|2.0809|copper-clad aluminium|
C7|S6|S7|10.287|0.8230|copper|18-2 is gauge and cores
C8|Rack way 3|coil in ceiling|7.62|1.3087|copper|loose end
`)
}

// Two line voltages, taps stamped for either.
func boathouse4() *excelize.File {
	p := typed.NewBook("B4")
	p.Put("A1", `
Boathouse 4 (old part and new part)
Job EQ-0404
Amp 1 = 70 V, 120 W.  Amp 2 = 100 V, 120 W.

Head|Where|As stamped|Off
1|Old slip|5W/70V|Amp 1
2|Old slip|5W/70V|Amp 1
3|Old hall|10W@100V|Amp 1
4|Old hall|10W@100V|Amp 1
5|New hall|5W@70 / 10W@100|Amp 2
6|New hall|5W@70 / 10W@100|Amp 2
7|New hall|5W/70V|Amp 2
8|Store|0.5W 25V|Amp 1
9|Office|6W @100V|Amp 2
`)
	return p.File
}

func boathouse4Truth(t *typed.Truth) {
	t.Is("EQ-0404", "Boathouse 4", "taps with their voltage in one cell: 100 V taps on 70 V, a 70 V tap on 100 V, a 25 V tap on 70 V, one terminal with both; amplifiers only in the title block")
	t.Speakers("sheet=B4", `
rows|tag|room|tap_w|tap_v|line_v|amplifier|note
6..7|1..2|Old slip|5|70.7|70.7|1|
8..9|3..4|Old hall|10|100|70.7|1|draws 5 W
10..11|5..6|New hall|10|100|100|2|one terminal, 5 W at 70 V or 10 W at 100 V: the same load either way
12|7|New hall|5|70.7|100|2|draws 10 W
13|8|Store|0.5|25|70.7|1|draws 4 W
14|9|Office|6|100|100|2|
`)
	t.Channels("rated_w=120", `
amplifier|line_v|load_w|note
1|70.7|24|5+5+5+5+4
2|100|36|10+10+10+6
`)
	t.Amplifiers("rated_w=120", "amplifier|load_w\n1|24\n2|36")
}

// What a pivot table leaves behind.
func boathouse6() *excelize.File {
	p := typed.NewBook("Sheet4")
	p.Put("A1", `
Boathouse 6 heads (70 V line), job EQ-0606

Sum of Heads||||
Zone|Kind|Set W|Way|Total
Bay A|Sleet horn|10|1|2
|Tansy 8|5|1|4
Bay A Total||||6
Bay B|Tansy 8|2.5|2|8
||5|2|2
Bay B Total||||10
(blank)|(blank)|(blank)|(blank)|1
(blank) Total||||1
Grand Total||||17
`)
	return p.File
}

func boathouse6Truth(t *typed.Truth) {
	t.Is("EQ-0606", "Boathouse 6", "pivot table: labels not repeated, group totals, (blank), Grand Total; the count stands under Total")
	t.Speakers("sheet=Sheet4; tap_v=70.7; line_v=70.7", `
rows|zone|model|count|tap_w|channel|note
5|Bay A|Sleet horn|2|10|1|
6|Bay A|Tansy 8|4|5|1|zone carried down
8|Bay B|Tansy 8|8|2.5|2|
9|Bay B|Tansy 8|2|5|2|zone and kind carried down
`)
	t.Channels("line_v=70.7", "channel|load_w\n1|40\n2|30")
	t.Left("Sheet4", `
7|total|
10|total|
11|other|one head of which nothing is known
12|total|
13|total|
`)
	t.Asks("Sheet4", "11|asked|one head without zone, kind, watts and way")
}
