package main

import "lineaudit/samples/typed"

// gardenTexts are English text files of the gardens.
func gardenTexts() []typed.Case {
	return []typed.Case{
		{File: "gardens/arboretum loop.csv", Kind: "schedule", Bytes: arboretum, Truth: arboretumTruth},
		{File: "gardens/Kiosk export.csv", Kind: "schedule", Bytes: kiosk, Truth: kioskTruth},
		{File: "gardens/maze_heads.csv", Kind: "schedule", Bytes: maze, Truth: mazeTruth},
	}
}

// Inch marks and foot marks as a hand types them, never quoted; each length and each wire in its own unit.
func arboretum() []byte {
	return []byte(typed.DOS(`
Arboretum walk - heads and their own runs
Job EQ-0688,70V,copper unless it says CCA

Head,Pattern,Drive,Run from rack,Wire,Ch
A1,6.5" flush,5W,120',16/2,A1.1
A2,6.5" flush,5W,36 m,16/2,A1.1
A3,8" pendant,10W,85'-6",#14,A1.1
A4,8" pendant,10W,0.12km,14-2 CCA,A1.1
A5,4" rock,2.5 W,25m,2x1.5mm²,A1.2
A6,4" rock,2.5 W,82 ft,2C 1.5,A1.2
A7,4" rock,2.5 W,90ft,18 AWG OFC,A1.2
A8,12" horn,7.5W,150',16/2,A1.2
,,,,,
A1: 2 x 60W @70V,,,,,
`))
}

func arboretumTruth(t *typed.Truth) {
	t.Is("EQ-0688", "Arboretum walk", "unquoted inch marks inside cells and after a foot mark; ft, m and km in one column; AWG and mm² in one column; A1 is a head and an amplifier")
	t.Speakers("tap_v=70.7; line_v=70.7; amplifier=A1", `
rows|tag|model|tap_w|channel|note
5|A1|6.5" flush|5|1|
6|A2|6.5" flush|5|1|
7|A3|8" pendant|10|1|
8|A4|8" pendant|10|1|
9|A5|4" rock|2.5|2|
10|A6|4" rock|2.5|2|
11|A7|4" rock|2.5|2|
12|A8|12" horn|7.5|2|
`)
	t.Channels("line_v=70.7; rated_w=60; amplifier=A1", `
channel|load_w|note
1|30|
2|15|
`)
	t.Amplifiers("", "amplifier|rated_w|load_w|note\nA1|120|45|the line below the table is the amplifier, not a head")
	t.Lines("note=a run of its own for each head", `
from|to|length_m|area_mm2|material
A1.1|A1|36.576|1.3087|copper
A1.1|A2|36|1.3087|copper
A1.1|A3|26.0604|2.0809|copper
A1.1|A4|120|2.0809|copper-clad aluminium
A1.2|A5|25|1.5|copper
A1.2|A6|24.9936|1.5|copper
A1.2|A7|27.432|0.8230|copper
A1.2|A8|45.72|1.3087|copper
`)
	t.Left("", "14|amplifier|2 x 60 W at 70 V")
}

// Unicode text of a spreadsheet program: circled numbers, non-breaking spaces, line breaks in the headers, stars that lead to notes.
func kiosk() []byte {
	return typed.Unicode16(typed.DOS("\nGARDEN HEADS⍽- EXPORT\t\t\t\tJob⍽EQ-0970\t\n" +
		"\"Zone⏎no.\"\t\"Heads⏎in it\"\tKind\t\"Set⏎to\"\t\"Amp⏎& way\"\t␠\n" +
		"①\t4\tSedge 6␠\t3⍽W*\tG1 – 1\t\n" +
		"②\t␠6\tSedge⍽6\t1.5⍽W*\tG1 – 1␠\t\n" +
		"③\t10␠␠\tMarl 20\t10⍽W**\tG1⍽–⍽2\t\n" +
		"④\t2\tMarl 20\t5 W *\tG1 – 2\t\n" +
		"\t\t\t\t\t\n" +
		"* on the 100⍽V line   ** re-set at the last visit, was 5 W\t\t\t\t\t\n" +
		"① Lobby ② Ticket barrier ③ Tool library ④ Seed vault\t\t\t\t\t\n" +
		"G1: 2⍽×⍽120⍽W\t\t\t\t\t\n"))
}

func kioskTruth(t *typed.Truth) {
	t.Is("EQ-0970", "", "UTF-16 with tabs; circled zone numbers with their names in a legend; non-breaking spaces, footnote stars, an old value in a footnote, line breaks in headers")
	t.Speakers("tap_v=100; line_v=100; amplifier=G1", `
rows|zone|count|model|tap_w|channel|note
3|1|4|Sedge 6|3|1|zone 1 is the Lobby
4|2|6|Sedge 6|1.5|1|Ticket barrier
5|3|10|Marl 20|10|2|Tool library; the footnote's 5 W is the old tap
6|4|2|Marl 20|5|2|Seed vault
`)
	t.Channels("line_v=100; rated_w=120; amplifier=G1", "channel|load_w|note\n1|21|12+9\n2|110|100+10")
	t.Amplifiers("", "amplifier|rated_w|load_w\nG1|240|131")
	t.Left("", "8|note|\n9|legend|\n10|amplifier|")
}

// A list by three hands: the unit is in the head of the second block only, wording drifts, the first block has milliwatts.
func maze() []byte {
	return typed.Windows1252(typed.DOS(`
HEDGE MAZE;;;;;
JOB EQ-0345;LINE 70.7V;;;;
;;;;;
SPIKE;CORNER;mW;LEG;FT;GA.
1;NW;500;A;40;18
2;NW;500;A;60;18
3;NE;1000;A;85;18
4;NE;1000;A;110;18
5;CENTRE;2000;A;150;18
;;;;;
SPIKE;CORNER;WATT;LEG;METRES;SQ MM
6;SE;0.5;B;20;1.0
7;SE;.5;B;26;1.0
8;SW;1;B;31;1.0
9;SW;1;B;38;1.0
10;TOWER;2 1/2;B;55;1.0
;;;;;
LEGS A+B BOTH OFF THE 20 WATT AMP;;;;;
`))
}

func mazeTruth(t *typed.Truth) {
	t.Is("EQ-0345", "Hedge maze", "two tables below each other, mW then W, ft and gauge then m and mm²; a leading dot; 2 1/2; legs are lines of one 20 W amplifier")
	t.Speakers("tap_v=70.7; line_v=70.7", `
rows|tag|room|tap_w|channel|note
5|1|NW|0.5|A|500 mW
6|2|NW|0.5|A|
7|3|NE|1|A|
8|4|NE|1|A|
9|5|CENTRE|2|A|
12|6|SE|0.5|B|
13|7|SE|0.5|B|.5
14|8|SW|1|B|
15|9|SW|1|B|
16|10|TOWER|2.5|B|2 1/2 is two and a half
`)
	t.Channels("line_v=70.7; note=a leg of one amplifier, without a rating of its own", "channel|load_w\nA|5\nB|5.5")
	t.Amplifiers("", "amplifier|rated_w|load_w|note\n|20|10.5|one unnamed amplifier, 20 W, carries both legs")
	t.Lines("from=amplifier; note=length taken from the amplifier; nothing says from where: assumed", `
to|length_m|area_mm2|material
1|12.192|0.8230|copper
2|18.288|0.8230|copper
3|25.908|0.8230|copper
4|33.528|0.8230|copper
5|45.72|0.8230|copper
6|20|1|copper
7|26|1|copper
8|31|1|copper
9|38|1|copper
10|55|1|copper
`)
	t.Left("", "11|header|second header in other words")
	t.Asks("", "4-16|assumed|copper; lengths from the amplifier (they grow along each leg)")
}
