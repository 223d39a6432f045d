package main

import (
	"time"

	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// rinks are English lists of the ice rinks.
func rinks() []typed.Case {
	return []typed.Case{
		{File: "rinks/register of heads.csv", Kind: "schedule", Bytes: register, Truth: registerTruth},
		{File: "rinks/Silverlow sheets.xlsx", Kind: "schedule", Book: silverlow, Truth: silverlowTruth},
		{File: "rinks/Practice Pad panel.xlsx", Kind: "schedule", Book: panel, Truth: panelTruth},
		{File: "rinks/Curling sheet.xls", Kind: "schedule", Book: curling, Saved: "xls", Truth: curlingTruth},
		{File: "rinks/SPKR_BLOCKS.CSV", Kind: "schedule", Bytes: blocks, Truth: blocksTruth},
		{File: "rinks/Silverlow phase 2.xlsx", Kind: "schedule", Book: phase2, Truth: phase2Truth},
	}
}

// A register of several jobs: ditto marks of three kinds, blanks that carry down, dittos across different columns.
func register() []byte {
	return []byte("\ufeff" + typed.DOS(`
"Ellerquay Trust - heads register, all ice and boat sites",,,,,,,,
,,,,,,,,
Works no.,Premises,Part of premises,Heads,Kind,Set W each,V,Off amp / way,Remark
EQ-0801,Silverlow Ice Rink,Main ice,12,Sleet horn,15,100,1/1,
"""","""",Main ice boards,8,Frost column,20,100,1/2,
"""","""",Skate hire,6,Sedge 6,3,100,2/1,
as above,as above,Lockers,4,as above,1.5,"""","""",
EQ-0802,Boathouse 5,Slip,4,Sleet horn,10,70,1/1,
do.,do.,Bays,10,Tansy 8,5,70,do.,
do.,do.,Crew room,6,Tansy 8,2.5,70,1/2,behind a wall knob of 35W
EQ-0803,Silverlow Practice Pad,Pad,8,Frost column,20,100,1/1,two more in store
,,Benches,6,Sedge 6,3,100,1/1,
,,Benches,2,Sedge 6,3,100,1/1,in store only
EQ-0804,Boathouse 10,Whole house,9,Tansy 8,5,70,1/1,amp is a 60W
EQ-0804,Boathouse 10,Jetty,3,Sleet horn,7.5,70,1/1,
,,,,,,,,
TOTAL,,,78,,,,,
`))
}

func registerTruth(t *typed.Truth) {
	t.Is("EQ-0801", "Silverlow Ice Rink", "register of four jobs; job and site by ditto mark, 'do.', 'as above' and blanks; 'as above' under Kind means Sedge 6; amp 1 way 1 exists in every job")
	t.Speakers("line_v=100; tap_v=100", `
rows|zone|count|model|tap_w|amplifier|channel|note
4|Main ice|12|Sleet horn|15|1|1|
5|Main ice boards|8|Frost column|20|1|2|
6|Skate hire|6|Sedge 6|3|2|1|
7|Lockers|4|Sedge 6|1.5|2|1|kind, volts and way from above
`)
	t.Channels("line_v=100", "amplifier|channel|load_w\n1|1|180\n1|2|160\n2|1|24")
	t.Amplifiers("", "amplifier|load_w\n1|340\n2|24")
	t.Also("EQ-0802", "Boathouse 5", "a control only in a remark")
	t.Speakers("line_v=70.7; tap_v=70.7; amplifier=1", `
rows|zone|count|model|tap_w|channel|note
8|Slip|4|Sleet horn|10|1|
9|Bays|10|Tansy 8|5|1|
10|Crew room|6|Tansy 8|2.5|2|behind an unnamed knob of 35 W
`)
	t.Channels("line_v=70.7; amplifier=1", "channel|load_w\n1|90\n2|15")
	t.Amplifiers("", "amplifier|load_w\n1|105")
	t.Controls("note=unnamed", "zone|rated_w|load_w\nCrew room|35|15")
	t.Also("EQ-0803", "Silverlow Practice Pad", "spares on a row of their own and in a remark")
	t.Speakers("line_v=100; tap_v=100; amplifier=1; channel=1", `
rows|zone|count|model|tap_w|status|note
11|Pad|8|Frost column|20|installed|the two in the remark are not among the eight
12|Benches|6|Sedge 6|3|installed|
13|Benches|2|Sedge 6|3|spare|
`)
	t.Channels("line_v=100; amplifier=1", "channel|load_w|note\n1|178|160+18")
	t.Amplifiers("", "amplifier|load_w\n1|178")
	t.Also("EQ-0804", "Boathouse 10", "the amplifier's rating in a remark")
	t.Speakers("line_v=70.7; tap_v=70.7; amplifier=1; channel=1", `
rows|zone|count|model|tap_w
14|Whole house|9|Tansy 8|5
15|Jetty|3|Sleet horn|7.5
`)
	t.Channels("line_v=70.7; amplifier=1", "channel|rated_w|load_w|note\n1|60|67.5|45+22.5: over its rating")
	t.Amplifiers("", "amplifier|rated_w|load_w\n1|60|67.5")
	t.Left("", "17|total|78 heads of all jobs, spares included")
	t.Asks("", "11|assumed|'two more in store' are spares besides the eight")
}

// A sheet a zone, the rack on its own sheet with zone names of another hand, an old sheet hidden.
func silverlow() *excelize.File {
	p := typed.NewBook("Cover")
	p.Put("B2", `
ELLERQUAY TRUST
Silverlow Ice Rink

Job:|EQ-0715
Line:|100 V throughout
`)
	z1 := p.Sheet("Z1")
	z1.Put("A1", `
ZONE 1 - MAIN ICE

Mark|Kind|Taps|Set|Behind
ZI-1|Sleet horn|30/15/7.5|15
ZI-2|Sleet horn|30/15/7.5|15
ZI-3|Sleet horn|30/15/7.5|15
ZI-4|Sleet horn|30/15/7.5|15
ZI-5|Frost column|40/20/10|20
ZI-6|Frost column|40/20/10|20
`)
	z2 := p.Sheet("Z2")
	z2.Put("A1", `
ZONE 2 - SKATE HIRE & LOCKERS

Mark|Kind|Taps|Set|Behind
SH-1|Sedge 6|6/3/1.5|3|VC SH
SH-2|Sedge 6|6/3/1.5|3|VC SH
SH-3|Sedge 6|6/3/1.5|3|VC SH
LK-1|Sedge 6|6/3/1.5|1.5
LK-2|Sedge 6|6/3/1.5|1.5
`)
	z3 := p.Sheet("Z3")
	z3.Put("A1", `
ZONE 3 - SPECTATORS

Mark|Kind|Taps|Set|Behind
SP-1|Frost column|40/20/10|10|VC SP
SP-2|Frost column|40/20/10|10|VC SP
SP-3|Frost column|40/20/10|10|VC SP
SP-4|Frost column|40/20/10|10|VC SP
SP-5|Frost column|40/20/10|10|VC SP
SP-6|Frost column|40/20/10|10|VC SP
`)
	old := p.Sheet("Z3 before refit")
	old.Put("A1", `
ZONE 3 - SPECTATORS

Mark|Kind|Taps|Set|Behind
SP-1|Frost column|40/20/10|20|VC SP
SP-2|Frost column|40/20/10|20|VC SP
SP-3|Frost column|40/20/10|20|VC SP
SP-4|Frost column|40/20/10|20|VC SP
`)
	typed.Must(p.File.SetSheetVisible("Z3 before refit", false))
	r := p.Sheet("Rack")
	r.Put("A1", `
Rack by the plant room

Way|Serves|Amp|Good for
A|1 - Main ice|Amp 1|125 W
B|2 skate hire/lockers|Amp 1|125 W
A|Z-03 Spectators|Amp 2|60 W
B|spare|Amp 2|60 W

Knob|In zone|Good for
VC SH|Zone 02|10 W
VC SP|Zone 03|60 W
`)
	return p.File
}

func silverlowTruth(t *typed.Truth) {
	t.Is("EQ-0715", "Silverlow Ice Rink", "a sheet a zone without a zone column; the rack names the zones three other ways; tap list beside the tap; a hidden sheet with old taps")
	t.Speakers("tap_v=100; line_v=100", `
sheet|rows|tag|zone|model|tap_w|control|amplifier|channel
Z1|4..7|ZI-1..ZI-4|ZONE 1 - MAIN ICE|Sleet horn|15||1|A
Z1|8..9|ZI-5..ZI-6|ZONE 1 - MAIN ICE|Frost column|20||1|A
Z2|4..6|SH-1..SH-3|ZONE 2 - SKATE HIRE & LOCKERS|Sedge 6|3|VC SH|1|B
Z2|7..8|LK-1..LK-2|ZONE 2 - SKATE HIRE & LOCKERS|Sedge 6|1.5||1|B
Z3|4..9|SP-1..SP-6|ZONE 3 - SPECTATORS|Frost column|10|VC SP|2|A
`)
	t.Channels("line_v=100", "amplifier|channel|rated_w|load_w|note\n1|A|125|100|\n1|B|125|12|\n2|A|60|60|exactly its rating: passes\n2|B|60|0|spare way")
	t.Amplifiers("", "amplifier|load_w\n1|112\n2|60")
	t.Controls("", "control|zone|rated_w|load_w|note\nVC SH|ZONE 2 - SKATE HIRE & LOCKERS|10|9|\nVC SP|ZONE 3 - SPECTATORS|60|60|exactly its rating")
	t.Left("Z3 before refit", "4-7|hidden|the sheet is hidden: old taps, the same tags")
}

// A panel schedule: odd ways left, even ways right, an empty column between.
func panel() *excelize.File {
	p := typed.NewBook("Panel")
	p.Put("A1", `
PANEL AMP-P   (8 ways, 70 V, 60 W a way)||||||||||Job EQ-0926

Way|Serves|Heads|Each|Load||Way|Serves|Heads|Each|Load
1|Pad north boards|6|5|30||2|Pad south boards|6|5|30
3|Benches|8|2.5|20||4|Skate sharpening|2|2.5|5
5|Ticket hall|6|5|30||6|spare way
7|Referee + coaches|3|1|3||8|Car park horns|4|15|60
Total||23||83||Total||12||95
`)
	return p.File
}

func panelTruth(t *typed.Truth) {
	t.Is("EQ-0926", "", "panel-schedule look: two tables with equal headers side by side, odd ways left and even ways right; a spare way; bare watts")
	t.Speakers("sheet=Panel; tap_v=70.7; line_v=70.7; amplifier=AMP-P", `
rows|zone|count|tap_w|channel
4|Pad north boards|6|5|1
5|Benches|8|2.5|3
6|Ticket hall|6|5|5
7|Referee + coaches|3|1|7
4|Pad south boards|6|5|2
5|Skate sharpening|2|2.5|4
7|Car park horns|4|15|8
`)
	t.Channels("line_v=70.7; rated_w=60; amplifier=AMP-P", `
channel|load_w|note
1|30|
2|30|
3|20|
4|5|
5|30|
6|0|spare way
7|3|
8|60|exactly its rating
`)
	t.Amplifiers("", "amplifier|load_w\nAMP-P|178")
	t.Left("Panel", "8|total|both halves right")
}

// A list with day-first settings: gauges and amplifier ways turned into days.
func curling() *excelize.File {
	p := typed.NewBook("Curling")
	p.Put("A1", `
Silverlow curling hall||||Job EQ-0718
All 100 V. Two amps, 2 ways each of 40 W.

LS|Place|Tap|Amp/way|Cable|m
1|Sheet A|10 W|||35
2|Sheet A|10 W|||48
3|Sheet B|10 W|||35
4|Sheet B|15 W|||48
5|Sheet C|10 W|||52
6|Sheet C|10 W|||65
7|Viewing gallery|5 W|||22
8|Viewing gallery|5 W|||28
9|Stair|2.5 W|'2/2||14
`)
	way := map[string][2]int{"D5": {1, 1}, "D6": {1, 1}, "D7": {1, 2}, "D8": {1, 2}, "D9": {2, 1}, "D10": {2, 1}, "D11": {2, 2}, "D12": {2, 2}}
	for row := 5; row <= 13; row++ {
		at, err := excelize.CoordinatesToCellName(4, row)
		typed.Must(err)
		if w, ok := way[at]; ok {
			p.Date(at, 2014, time.Month(w[1]), w[0], "dd-mmm")
		}
		at, err = excelize.CoordinatesToCellName(5, row)
		typed.Must(err)
		if row < 9 {
			p.Date(at, 2014, 2, 14, "dd-mmm") // 14/2
		} else {
			p.Date(at, 2014, 2, 16, "dd-mmm") // 16/2
		}
	}
	return p.File
}

func curlingTruth(t *typed.Truth) {
	t.Is("EQ-0718", "Silverlow curling hall", "amplifier/way and gauge cells turned into dates by a day-first program: 16/2 shows 16-Feb, which fixes the order, so 01-Feb is amp 1 way 2 and 02-Jan is amp 2 way 1")
	t.Speakers("sheet=Curling; tap_v=100; line_v=100", `
rows|tag|room|tap_w|amplifier|channel|note
5..6|1..2|Sheet A|10|1|1|01-Jan is 1/1
7|3|Sheet B|10|1|2|01-Feb is 1/2
8|4|Sheet B|15|1|2|
9..10|5..6|Sheet C|10|2|1|02-Jan is 2/1
11..12|7..8|Viewing gallery|5|2|2|02-Feb is 2/2
13|9|Stair|2.5|2|2|text
`)
	t.Channels("line_v=100; rated_w=40", "amplifier|channel|load_w\n1|1|20\n1|2|25\n2|1|20\n2|2|12.5")
	t.Amplifiers("rated_w=80", "amplifier|load_w\n1|45\n2|32.5")
	t.Lines("material=copper; note=gauge recovered from a date", `
to|length_m|area_mm2
1|35|2.0809
2|48|2.0809
3|35|2.0809
4|48|2.0809
5|52|1.3087
6|65|1.3087
7|22|1.3087
8|28|1.3087
9|14|1.3087
`)
	t.Asks("Curling", "5-12|assumed|amplifier and way recovered from dates\n5-13|assumed|gauge 14/2 and 16/2 recovered from dates")
}

// The attribute extraction of a drawing program: a row a block, other blocks between, handles that look like numbers.
func blocks() []byte {
	return []byte(typed.DOS(`
HANDLE,BLOCKNAME,LAYER,X,Y,SPKRTAG,SPKRTYPE,TAPW,LINEV,PAZN,VCREF,AMPOUT
1A3F,TITLEBLK,0,0.0,0.0,,,,,,,
1A40,SPKR-CLG,E-PA,1203.50,884.20,R101,SEDGE6,3,70.7,RINK HIRE,VC1,A1A
1A41,SPKR-CLG,E-PA,1263.50,884.20,R102,SEDGE6,3,70.7,RINK HIRE,VC1,A1A
1A42,SPKR-CLG,E-PA,1323.50,884.20,R103,SEDGE6,3,70.7,RINK HIRE,VC1,A1A
1A43,SPKR-CLG,E-PA,1383.50,884.20,R104,SEDGE6,3,70.7,RINK HIRE,VC1,A1A
1A44,SPKR-CLG,E-PA,1443.50,884.20,R105,SEDGE6,1.5,70.7,RINK HIRE,,A1A
1E05,VC-WALL,E-PA,1450.00,850.00,VC1,VC 10W,,,RINK HIRE,,
1E06,JBOX,E-PA,1451.00,851.00,,,,,,,
2B10,SPKR-HRN,E-PA,200.00,100.00,R201,SLEET30,15,70.7,RINK ICE,,A1B
2B11,SPKR-HRN,E-PA,200.00,400.00,R202,SLEET30,15,70.7,RINK ICE,,A1B
2B12,SPKR-HRN,E-PA,200.00,700.00,R203,SLEET30,15,70.7,RINK ICE,,A1B
2B13,SPKR-HRN,E-PA,200.00,1000.00,R204,SLEET30,15,70.7,RINK ICE,,A1B
2B14,SPKR-COL,E-PA,900.00,1000.00,R205,FROST40,20,70.7,RINK ICE,,A1B
2B15,SPKR-COL,E-PA,900.00,100.00,R206,FROST40,20,70.7,RINK ICE,,A1B
3C01,AMP-RK,E-PA,30.00,30.00,A1,AMP 2X120W 70V,,,,,
3C02,NORTHARROW,0,0.00,1500.00,,,,,,,
`))
}

func blocksTruth(t *typed.Truth) {
	t.Is("", "", "drawing extraction in capitals: a row a block with title, box and arrow blocks between; 1E05 is no number; coordinates look like values; control and amplifier ratings in their type; no job named")
	t.Speakers("tap_v=70.7; line_v=70.7; amplifier=A1", `
rows|tag|model|zone|tap_w|control|channel
3..6|R101..R104|SEDGE6|RINK HIRE|3|VC1|A
7|R105|SEDGE6|RINK HIRE|1.5||A
10..13|R201..R204|SLEET30|RINK ICE|15||B
14..15|R205..R206|FROST40|RINK ICE|20||B
`)
	t.Channels("line_v=70.7; rated_w=120; amplifier=A1", "channel|load_w\nA|13.5\nB|100")
	t.Amplifiers("", "amplifier|model|rated_w|load_w\nA1|AMP 2X120W 70V|240|113.5")
	t.Controls("", "control|zone|rated_w|load_w|note\nVC1|RINK HIRE|10|12|over its rating")
	t.Left("", "2|other|title block\n8|control|\n9|other|junction box\n16|amplifier|\n17|other|north arrow")
}

// States of every kind in the words of a site.
func phase2() *excelize.File {
	p := typed.NewBook("Phase 2")
	p.Put("A1", `
Silverlow Ice Rink phase 2|||||Job EQ-0819
100 V, ch 1 and ch 2 are 60 W each (amp IR)

Head|Area|Set W|Ch|State
101|Ice A|15|1|new
102|Ice A|15|1|new
103|Ice A|15|1|exist.
104|Ice A|15|1|exist., keep
105|Ice A|15|1|exist., taken down
106|Ice B|15|1|phase 3 (wired only)
107|Ice B|15|1|phase 3 (wired only)
108|Ice B|10|1|omit
109|Kiosk|6|2|N.I.C.
110|Kiosk|6|2|by tenant
111|Lockers|3|2|moved here from 103B
112|Lockers|3|2|new
-|Store|3|-|boxed, 2 off
113|Lockers|3|2|new, not yet commissioned
Heads fitted|8
`)
	return p.File
}

func phase2Truth(t *typed.Truth) {
	t.Is("EQ-0819", "Silverlow Ice Rink", "states in free words: what is taken down, omitted, boxed, of a later phase or of others draws nothing; what was moved here or waits for commissioning does")
	t.Speakers("sheet=Phase 2; tap_v=100; line_v=100; amplifier=IR", `
rows|tag|zone|tap_w|channel|status|count|amplifier|note
5|101|Ice A|15|1|installed|1|IR|
6|102|Ice A|15|1|installed|1|IR|
7|103|Ice A|15|1|installed|1|IR|existing counts
8|104|Ice A|15|1|installed|1|IR|
9|105|Ice A|15|1|removed|1|IR|
10|106|Ice B|15|1|future|1|IR|
11|107|Ice B|15|1|future|1|IR|
12|108|Ice B|10|1|removed|1|IR|omitted: listing it as left out is as good
15|111|Lockers|3|2|installed|1|IR|moved to here
16|112|Lockers|3|2|installed|1|IR|
17||Store|3||spare|2||two boxed ones
18|113|Lockers|3|2|installed|1|IR|not commissioned is still connected
`)
	t.Channels("line_v=100; rated_w=60; amplifier=IR", "channel|load_w|note\n1|60|4x15: exactly its rating\n2|9|")
	t.Amplifiers("", "amplifier|load_w\nIR|69")
	t.Left("Phase 2", "13|by others|\n14|by others|\n19|total|8 fitted; the rows fitted are 7: count-mismatch")
}
