package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// An inspector of a test firm: every line walked from the amplifier to its end, piece by piece.
var inspector = []typed.Case{
	{File: "inspections/I-208 Selbourne fern garden.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Line walk")
		p.Put("A1", `
Inspection no.|I-208
Site|Selbourne Fern Garden
Line voltage|100 V
All cable two-core copper

Line|From|To|Length (m)|Size (mm²)|Loudspeaker at the end|Tap (W)
L1|AMP1 out 1|LS1|42|2.5|Projector|10
L1|LS1|LS2|12|2.5|Projector|10
L1|LS2|LS3|12|2.5|Projector|10
L1|LS3|LS4|12|2.5|Projector|10
L1|LS4|LS5|18|1.5|Projector|5
L1|LS5|LS6|15|1.5|Projector|5
L2|AMP1 out 2|LS7|25|1.5|Ceiling|6
L2|LS7|LS8|4|1.5|Ceiling|6
L2|LS8|LS9|4|1.5|Ceiling|6
L2|LS9|LS10|4|1.5|Ceiling|6
L2|LS10|LS11|9|1.5|Ceiling|3
L2|LS11|LS12|6|1.5|Ceiling|3
L3|AMP2 out 1|LS13|130|4|Pillar|20
L3|LS13|LS14|25|4|Pillar|20
L3|LS14|LS15|25|4|Pillar|20
L3|LS15|LS16|25|2.5|Pillar|20
L4|AMP2 out 2|LS17|60|2.5|Horn|15
L4|LS17|LS18|35|2.5|Horn|15
L4|LS18|LS19|20|2.5|Horn|7.5

Amplifier|Output|Line|Rated (W)
AMP1|1|L1|60
AMP1|2|L2|60
AMP2|1|L3|120
AMP2|2|L4|60
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("I-208", "Selbourne Fern Garden", "a row a piece of cable with the loudspeaker at its end")
		t.Speakers("sheet=Line walk; tap_v=100; line_v=100; amplifier=AMP1; channel=1; model=Projector", `rows|tag|tap_w
7..10|LS1..|10
11..12|LS5..|5`)
		t.Speakers("sheet=Line walk; tap_v=100; line_v=100; amplifier=AMP1; channel=2; model=Ceiling", `rows|tag|tap_w
13..16|LS7..|6
17..18|LS11..|3`)
		t.Speakers("sheet=Line walk; tap_v=100; line_v=100; amplifier=AMP2; channel=1; model=Pillar", `rows|tag|tap_w
19..22|LS13..|20`)
		t.Speakers("sheet=Line walk; tap_v=100; line_v=100; amplifier=AMP2; channel=2; model=Horn", `rows|tag|tap_w
23..24|LS17..|15
25|LS19|7.5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|1|60|50
AMP1|2|60|30
AMP2|1|120|80
AMP2|2|60|37.5`)
		t.Amplifiers("", `amplifier|load_w
AMP1|80
AMP2|117.5`)
		t.Lines("material=copper", `line|from|to|length_m|area_mm2
L1|AMP1 out 1|LS1|42|2.5
L1|LS1|LS2|12|2.5
L1|LS2|LS3|12|2.5
L1|LS3|LS4|12|2.5
L1|LS4|LS5|18|1.5
L1|LS5|LS6|15|1.5
L2|AMP1 out 2|LS7|25|1.5
L2|LS7|LS8|4|1.5
L2|LS8|LS9|4|1.5
L2|LS9|LS10|4|1.5
L2|LS10|LS11|9|1.5
L2|LS11|LS12|6|1.5
L3|AMP2 out 1|LS13|130|4
L3|LS13|LS14|25|4
L3|LS14|LS15|25|4
L3|LS15|LS16|25|2.5
L4|AMP2 out 2|LS17|60|2.5
L4|LS17|LS18|35|2.5
L4|LS18|LS19|20|2.5`)
	}},

	{File: "inspections/I-214 Mereside rink.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Loudspeakers")
		p.Put("A1", `
Inspection no.|I-214|Mereside Ice Rink|100 V

Tag|Position|Type|Tap found (W)|Cable run|Amplifier output|Finding
H1|North stand|Horn|15|R1|A/1|OK
H2|North stand|Horn|15|R1|A/1|OK
H3|North stand|Horn|15|R1|A/1|Bracket corroded
H4|South stand|Horn|15|R1|A/1|OK
H5|South stand|Horn|15|R1|A/1|OK
C1|Entrance|Ceiling|6|R2|A/2|OK
C2|Entrance|Ceiling|6|R2|A/2|OK
C3|Entrance|Ceiling|6|R2|A/2|Grille missing
C4|Skate loan|Ceiling|3|R2|A/2|OK
C5|Skate loan|Ceiling|3|R2|A/2|OK
C6|Changing 1|Ceiling|3|R3|B/1|OK
C7|Changing 2|Ceiling|3|R3|B/1|OK
C8|Changing 3|Ceiling|3|R3|B/1|OK
C9|Changing 4|Ceiling|not accessible|R3|B/1|Locked, not inspected
H6|Service yard|Horn|7.5|R4|B/2|OK
H7|Service yard|Horn|7.5|R4|B/2|OK
K1|Bleachers|Column|20|R5|C/1|OK
K2|Bleachers|Column|20|R5|C/1|OK
K3|Bleachers|Column|20|R5|C/1|OK
K4|Bleachers|Column|10|R5|C/1|Set lower than its neighbours
`)
		r := p.Sheet("Cable runs")
		r.Put("A1", `
Run|From|To (last loudspeaker)|Length (m)|Conductor (mm²)|Insulation resistance (Mohm)
R1|A/1|H5|96|2.5|200
R2|A/2|C5|44|1.5|200
R3|B/1|C9|63|1.5|180
R4|B/2|H7|71|1.5|35
R5|C/1|K4|88|4|200
`)
		a := p.Sheet("Amplifiers")
		a.Put("A1", `
Amplifier|Output|Marked rating (W)|Impedance measured (ohm)
A|1|120|131
A|2|60|402
B|1|60|790
B|2|60|655
C|1|120|140
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("I-214", "Mereside Ice Rink", "taps found, one not accessible; findings in words; runs and readings on other sheets")
		t.Speakers("sheet=Loudspeakers; tap_v=100; line_v=100", `rows|tag|room|model|tap_w|amplifier|channel
4..6|H1..|North stand|Horn|15|A|1
7..8|H4..|South stand|Horn|15|A|1
9..11|C1..|Entrance|Ceiling|6|A|2
12..13|C4..|Skate loan|Ceiling|3|A|2
14|C6|Changing 1|Ceiling|3|B|1
15|C7|Changing 2|Ceiling|3|B|1
16|C8|Changing 3|Ceiling|3|B|1
17|C9|Changing 4|Ceiling||B|1
18..19|H6..|Service yard|Horn|7.5|B|2
20..22|K1..|Bleachers|Column|20|C|1
23|K4|Bleachers|Column|10|C|1`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w|load_min_w
A|1|120|75|
A|2|60|24|
B|1|60||9
B|2|60|15|
C|1|120|70|`)
		t.Amplifiers("", `amplifier|load_w
A|99
B|
C|70`)
		t.Lines("", `line|from|length_m|area_mm2
R1|A/1|96|2.5
R2|A/2|44|1.5
R3|B/1|63|1.5
R4|B/2|71|1.5
R5|C/1|88|4`)
		t.Asks("Loudspeakers", `17|asked|the tap in the locked changing room`)
	}},

	{File: "inspections/I-219 Withen boathouse.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Inspection no.;I-219;;;;;;;
Site;Withen Boathouse;;;;;;;
Line voltage;100 V;;;;;;;
;;;;;;;;
Amplifier;Output;Rated W;Item;Room;Type;Tap W;Volume control;Control max W
A1;1;60;1;Boat bay west;Cabinet;10;;
A1;1;60;2;Boat bay west;Cabinet;10;;
A1;1;60;3;Boat bay east;Cabinet;10;;
A1;1;60;4;Boat bay east;Cabinet;10;;
A1;1;60;5;Paint shop;Cabinet;5;;
A1;2;60;6;Training hall;Cabinet;10;VC1;24
A1;2;60;7;Training hall;Cabinet;10;VC1;24
A1;2;60;8;Training hall;Cabinet;10;VC1;24
A1;2;60;9;Kit room;Ceiling;3;VC2;6
A1;2;60;10;Kit room;Ceiling;3;VC2;6
A1;2;60;11;Landing;Ceiling;3;;
A2;1;120;12;Pontoon;Horn;15;;
A2;1;120;13;Pontoon;Horn;15;;
A2;1;120;14;Pontoon;Horn;15;;
A2;1;120;15;Start tower;Horn;30;;
A2;1;120;16;Finish tower;Horn;30;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("I-219", "Withen Boathouse", "flat inspection list, amplifier first, semicolons with English words")
		t.Speakers("tap_v=100; line_v=100", `rows|room|model|tap_w|amplifier|channel|control
6..7|Boat bay west|Cabinet|10|A1|1|
8..9|Boat bay east|Cabinet|10|A1|1|
10|Paint shop|Cabinet|5|A1|1|
11..13|Training hall|Cabinet|10|A1|2|VC1
14..15|Kit room|Ceiling|3|A1|2|VC2
16|Landing|Ceiling|3|A1|2|
17..19|Pontoon|Horn|15|A2|1|
20|Start tower|Horn|30|A2|1|
21|Finish tower|Horn|30|A2|1|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A1|1|60|45
A1|2|60|39
A2|1|120|105`)
		t.Amplifiers("", `amplifier|load_w
A1|84
A2|105`)
		t.Controls("", `control|rated_w|load_w
VC1|24|30
VC2|6|6`)
	}},
}
