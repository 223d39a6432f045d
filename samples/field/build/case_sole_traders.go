package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// soleTraders are four people in Canada and Australia.
var soleTraders = []typed.Case{
	// Wendell, maintenance electrician in Ontario: imported horns whose transformers are printed for 100 V, on a 70 V line.
	{File: "rowing/Pine Narrows rowing club horns.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("horns & speakers")
		p.Put("A1", `
Pine Narrows Boathouse - paging  (W.O. 3361)
line = 70 V
|
where|what|how many|tap|zone|attenuator
Dock, upper|import horn|2|20 W @ 100 V|Dock|
Dock, lower|import horn|2|20 W @ 100 V|Dock|
Finish tower|import horn|1|10 W @ 100 V|Dock|
Shell bay 1|box|2|8 W|Bays|
Shell bay 2|box|2|8 W|Bays|
Ergo room|box|2|4 W|Bays|AT-1
Change rooms|ceiling|4|2 W|House|
Meeting room|ceiling|4|4 W|House|AT-2
Office|ceiling|1|2 W|House|AT-3
|
NOTE the import horns have their taps marked for 100 V, on our 70 V line they only take half of it.
|
zone|amp|amp W|cable|metres
Dock|Amp D|100|2/C 14 AWG|130
Bays|Amp B|60|2/C 16 AWG|48
House|Amp H|60|2/C 18 AWG|35
|
attenuator|max W
AT-1|10
AT-2|25
AT-3|5
`)
		p.Bold("A1", "A4:F4", "A17:E17", "A22:B22")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("3361", "Pine Narrows Boathouse", "taps marked for 100 V in the cell, on a 70 V line; zone to amplifier and cable in a second table, gauge and metres together")
		t.Speakers("sheet=horns & speakers; tap_v=100; line_v=70.7; zone=Dock; amplifier=D", `rows|room|count|tap_w
5|Dock, upper|2|20
6|Dock, lower|2|20
7|Finish tower|1|10`)
		t.Speakers("sheet=horns & speakers; tap_v=70.7; line_v=70.7; zone=Bays; amplifier=B", `rows|room|count|tap_w|control
8|Shell bay 1|2|8|
9|Shell bay 2|2|8|
10|Ergo room|2|4|AT-1`)
		t.Speakers("sheet=horns & speakers; tap_v=70.7; line_v=70.7; zone=House; amplifier=H", `rows|room|count|tap_w|control
11|Change rooms|4|2|
12|Meeting room|4|4|AT-2
13|Office|1|2|AT-3`)
		t.Channels("line_v=70.7", `amplifier|rated_w|load_w
D|100|45
B|60|40
H|60|26`)
		t.Amplifiers("", `amplifier|rated_w|load_w
D|100|45
B|60|40
H|60|26`)
		t.Controls("", `control|rated_w|load_w
AT-1|10|8
AT-2|25|16
AT-3|5|2`)
		t.Lines("", `zone|length_m|area_mm2
Dock|130|2.081
Bays|48|1.309
House|35|0.823`)
	}},

	// Mei, project coordinator in Vancouver: the list names no controls; the second sheet lists them with the loudspeakers each of them serves.
	{File: "museums/Tidewater Maritime Museum A-V 5107.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Loudspeakers")
		p.Put("A1", `
Tidewater Maritime Museum|||Project|5107
Loudspeaker list|||System|70.7 V
|
Loudspeaker|Space|Mounting|Tap|Channel
LS101-LS104|Entry hall|ceiling|3.75 W|1
LS105|Coat check|ceiling|1.9 W|1
LS106-LS107|Museum store|ceiling|3.75 W|1
LS201-LS206|Hall of Charts|surface|7.5 W|2
LS207-LS208|Wheelhouse|surface|7.5 W|2
LS209|Wheelhouse stair|ceiling|3.75 W|2
LS301-LS304|Theatre|ceiling|7.5 W|3
LS305|Projection|ceiling|1.9 W|3
LS401-LS402|Pier|horn|15 W|4
LS403|Dry dock|horn|15 W|4
`)
		c := p.Sheet("Controls and channels")
		c.Put("A1", `
Control|Serves|Wall plate in|Rating
VC-1|LS101 to LS104|Entry hall|25 W
VC-2|LS106, LS107|Museum store|10 W
VC-3|LS207 to LS209|Wheelhouse|35 W
VC-4|LS301 to LS304|Projection|35 W
|
Channel|Amplifier|W at 70 V
1|PA-1|60
2|PA-1|120
3|PA-2|60
4|PA-2|120
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5107", "Tidewater Maritime Museum", "ranges of tags; controls on a second sheet serve ranges; channels numbered through two amplifiers")
		t.Speakers("sheet=Loudspeakers; tap_v=70.7; line_v=70.7; amplifier=PA-1; channel=1", `rows|tag|room|count|tap_w|control
5|LS101-LS104|Entry hall|4|3.75|VC-1
6|LS105|Coat check|1|1.9|
7|LS106-LS107|Museum store|2|3.75|VC-2`)
		t.Speakers("sheet=Loudspeakers; tap_v=70.7; line_v=70.7; amplifier=PA-1; channel=2", `rows|tag|room|count|tap_w|control
8|LS201-LS206|Hall of Charts|6|7.5|
9|LS207-LS208|Wheelhouse|2|7.5|VC-3
10|LS209|Wheelhouse stair|1|3.75|VC-3`)
		t.Speakers("sheet=Loudspeakers; tap_v=70.7; line_v=70.7; amplifier=PA-2; channel=3", `rows|tag|room|count|tap_w|control
11|LS301-LS304|Theatre|4|7.5|VC-4
12|LS305|Projection|1|1.9|`)
		t.Speakers("sheet=Loudspeakers; tap_v=70.7; line_v=70.7; amplifier=PA-2; channel=4", `rows|tag|room|count|tap_w
13|LS401-LS402|Pier|2|15
14|LS403|Dry dock|1|15`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
PA-1|1|60|24.4
PA-1|2|120|63.75
PA-2|3|60|31.9
PA-2|4|120|45`)
		t.Amplifiers("", `amplifier|load_w
PA-1|88.15
PA-2|76.9`)
		t.Controls("", `control|rated_w|load_w
VC-1|25|15
VC-2|10|7.5
VC-3|35|18.75
VC-4|35|30`)
	}},

	// Trent, sole trader in Queensland: one register for three jobs of the winter, a job number at the start of every row.
	{File: "registers/Trent winter jobs speakers.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Register")
		p.Put("A1", `
All 100v line jobs winter
|
Job|Site|Spkrs|Spot|Tapped|Amp|Att|Att W
J81|Mangrove Walk Boathouse|4 horns|Boat ramp|10w|MA1|
J81||2 clg|Hire desk|3w|MA1|AT1|10
J81||3 boxes|Canoe racks|5w|MA1|
J84|Red Cliff Lido|6 horns|50m pool|15w|MA1|
J84||4 horns|Toddler pool|7.5w|MA1|
J84||4 clg|Change rooms|3w|MA2|AT1|20
J84||1 clg|First aid|1.5w|MA2|AT2|5
J90|Fig Tree Riding Hall|6 horns|Indoor arena|10w|MA1|
J90||2 boxes|Viewing deck|5w|MA1|AT1|10
J90||1 box|Tack room|3w|MA1|
|
Amps: J81 MA1 120w.  J84 MA1 240w, MA2 60w.  J90 MA1 120w.
`)
		p.Bold("A3:H3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("J81", "Mangrove Walk Boathouse", "three jobs in one list, the site in the first row of each, number and kind in one cell; they use the same names; amplifiers of all jobs in one sentence")
		t.Speakers("sheet=Register; tap_v=100; line_v=100; amplifier=MA1", `rows|room|count|tap_w|control
4|Boat ramp|4|10|
5|Hire desk|2|3|AT1
6|Canoe racks|3|5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
MA1|120|61`)
		t.Amplifiers("", `amplifier|rated_w|load_w
MA1|120|61`)
		t.Controls("", `control|rated_w|load_w
AT1|10|6`)
		t.Also("J84", "Red Cliff Lido", "second job of the register")
		t.Speakers("sheet=Register; tap_v=100; line_v=100", `rows|room|count|tap_w|amplifier|control
7|50m pool|6|15|MA1|
8|Toddler pool|4|7.5|MA1|
9|Change rooms|4|3|MA2|AT1
10|First aid|1|1.5|MA2|AT2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
MA1|240|120
MA2|60|13.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
MA1|240|120
MA2|60|13.5`)
		t.Controls("", `control|rated_w|load_w
AT1|20|12
AT2|5|1.5`)
		t.Also("J90", "Fig Tree Riding Hall", "third job of the register")
		t.Speakers("sheet=Register; tap_v=100; line_v=100; amplifier=MA1", `rows|room|count|tap_w|control
11|Indoor arena|6|10|
12|Viewing deck|2|5|AT1
13|Tack room|1|3|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
MA1|120|73`)
		t.Amplifiers("", `amplifier|rated_w|load_w
MA1|120|73`)
		t.Controls("", `control|rated_w|load_w
AT1|10|10`)
	}},

	// Bronwyn, commissioning technician in Victoria: she walks the cable, so every row is a piece of cable and the loudspeaker at its end.
	{File: "gardens/CW-2290 Wattle Gully conservatory cable walk.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Cable walk")
		p.Put("A1", `
Wattle Gully Conservatory, 100 V|||||Ref CW-2290
Walked from the rack outwards, leg by leg. 2C 1.5 mm2 unless it says otherwise.
|
Leg|From|To|Metres|Cable|At the far end|Tap W
1|Amp X out 1|S1|28||wall spkr|5
1|S1|S2|9||wall spkr|5
1|S2|S3|9||wall spkr|5
1|S3|S4|14||wall spkr|2.5
2|Amp X out 2|S5|61|2C 2.5 mm2|horn|15
2|S5|S6|32|2C 2.5 mm2|horn|15
2|S6|S7|30||horn|7.5
3|Amp Y|AT1|12||attenuator 24 W|
3|AT1|S8|6||clg spkr|3
3|S8|S9|5||clg spkr|3
3|S9|S10|5||clg spkr|3
3|S10|S11|7||clg spkr|1.5
|
Amp X 2 x 60 W, Amp Y 1 x 30 W
`)
		p.Bold("A4:G4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("CW-2290", "Wattle Gully Conservatory", "a row a piece of cable, the loudspeaker at its end; a control as one of the rows; the usual cable said once")
		t.Speakers("sheet=Cable walk; tap_v=100; line_v=100; amplifier=X; channel=1", `rows|tag|tap_w
5..7|S1..|5
8|S4|2.5`)
		t.Speakers("sheet=Cable walk; tap_v=100; line_v=100; amplifier=X; channel=2", `rows|tag|tap_w
9..10|S5..|15
11|S7|7.5`)
		t.Speakers("sheet=Cable walk; tap_v=100; line_v=100; amplifier=Y; control=AT1", `rows|tag|tap_w
13..15|S8..|3
16|S11|1.5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
X|1|60|17.5
X|2|60|37.5
Y||30|10.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
X||55
Y|30|10.5`)
		t.Controls("", `control|rated_w|load_w
AT1|24|10.5`)
		t.Lines("", `line|from|to|length_m|area_mm2
1|Amp X out 1|S1|28|1.5
1|S1|S2|9|1.5
1|S2|S3|9|1.5
1|S3|S4|14|1.5
2|Amp X out 2|S5|61|2.5
2|S5|S6|32|2.5
2|S6|S7|30|1.5
3|Amp Y|AT1|12|1.5
3|AT1|S8|6|1.5
3|S8|S9|5|1.5
3|S9|S10|5|1.5
3|S10|S11|7|1.5`)
		t.Left("Cable walk", `12|control|attenuator at the end of the cable`)
	}},
}
