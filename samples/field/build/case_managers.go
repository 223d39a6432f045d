package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// managers are three people in Ireland.
var managers = []typed.Case{
	// Gráinne, yard manager, no technician: whole sentences, one a line, typed as she walked round with the installer.
	{File: "riding/Kilcarrow riding hall - what the sound man told me.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Sound")
		p.Put("A1", `
Kilcarrow Riding Hall - loudspeakers, what we have and what each is set to
It is a 100 volt system. One amplifier, 240 watts, called A1, with one line out to everything.
|
Main arena, long sides: 6 horns, all at 15 W
Main arena, judge's end: 2 more horns but only at 7.5 W
Warm-up ring - 3 horns set to 15 W each
Gallery, 4 cabinets at 6 W
Tack room, one cabinet, 3 W
Stable blocks A and B: 2 horns each at 7.5 W (4 in all)
Secretary's office - 1 ceiling speaker, 1.5 W
The old horn on the scoreboard (20 W) was taken down last spring and is in the shed.
|
The gallery has a volume knob, V1, rated 36 W.
The office has one too, V2, rated 5 W.
Nothing else has a knob.
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Kilcarrow Riding Hall", "sentences only, one a row in one column; the knobs by room in further sentences")
		t.Speakers("sheet=Sound; tap_v=100; line_v=100; amplifier=A1", `rows|room|count|tap_w|control
4|Main arena, long sides|6|15|
5|Main arena, judge's end|2|7.5|
6|Warm-up ring|3|15|
7|Gallery|4|6|V1
8|Tack room|1|3|
9|Stable blocks A and B|4|7.5|
10|Secretary's office|1|1.5|V2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|240|208.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|240|208.5`)
		t.Controls("", `control|rated_w|load_w
V1|36|24
V2|5|1.5`)
		t.Left("Sound", `11|removed|old horn, in the shed`)
	}},

	// Fergal, contracts manager of an electrical firm: tab-separated out of his job costing, revision B, new items marked by the revision.
	{File: "riverside/R4417 Lough Derra visitor mooring spkr sched.txt", Kind: "schedule", Bytes: func() []byte {
		return typed.Unicode16(typed.DOS(`
Job no.	R4417
Site	Lough Derra Boathouse
Issue	B	21/02/2022
System	100V
Item	Location	Description	No off	Tap W	Zone	Amp	Way	VC	VC rating W	Rev
010	Reception	ceiling spkr 6in	2	3	1	PA-1	1	VC1	12	A
020	Reception store	ceiling spkr 6in	1	3	1	PA-1	1			A
030	Dry room	IP wall spkr	2	6	2	PA-1	1			A
040	Lecture room	ceiling spkr 6in	4	3	3	PA-1	2	VC2	12	A
050	Lecture room (lobby)	ceiling spkr 6in	1	1.5	3	PA-1	2	VC2	12	B
060	Workshop	wall spkr	2	6	4	PA-1	2	VC3	24	A
070	Quay	horn 30W	4	15	5	PA-2	1			A
080	Slip	horn 30W	2	15	5	PA-2	1			A
090	Ferry shelter	horn 15W	1	7.5	5	PA-2	1			B
100	Stock for client	ceiling spkr 6in	2							A	spares, not fixed

Amps	Ways	W per way
PA-1	2	60
PA-2	1	120
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("R4417", "Lough Derra Boathouse", "tabs in UTF-16; columns of control and rating repeated a row; a nominal power in the description beside the tap; spares as the last row")
		t.Revision("B", false)
		t.Speakers("tap_v=100; line_v=100; amplifier=PA-1; channel=1", `rows|tag|room|count|tap_w|zone|control
6|010|Reception|2|3|1|VC1
7|020|Reception store|1|3|1|
8|030|Dry room|2|6|2|`)
		t.Speakers("tap_v=100; line_v=100; amplifier=PA-1; channel=2", `rows|tag|room|count|tap_w|zone|control
9|040|Lecture room|4|3|3|VC2
10|050|Lecture room (lobby)|1|1.5|3|VC2
11|060|Workshop|2|6|4|VC3`)
		t.Speakers("tap_v=100; line_v=100; amplifier=PA-2; channel=1; zone=5", `rows|tag|room|count|tap_w
12|070|Quay|4|15
13|080|Slip|2|15
14|090|Ferry shelter|1|7.5`)
		t.Speakers("status=spare", `rows|tag|count
15|100|2`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
PA-1|1|60|21
PA-1|2|60|25.5
PA-2|1|120|97.5`)
		t.Amplifiers("", `amplifier|load_w
PA-1|46.5
PA-2|97.5`)
		t.Controls("", `control|rated_w|load_w
VC1|12|6
VC2|12|13.5
VC3|24|12`)
		t.Left("", `15|spare|stock for client, not fixed`)
	}},

	// Sinéad, estates officer, one sheet for everything in two halves side by side, because it then prints on one page.
	{File: "gardens/Ballynoe glasshouses speakers one page.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("A4 landscape")
		p.Put("A1", `
Ballynoe Botanic Garden|||||||Estates ref BBG-77
100 V line. All from amplifier in the potting office
|
LEFT HAND SIDE OF RACK: AMP L (120 W)|||||||RIGHT HAND SIDE OF RACK: AMP R (120 W)
Glasshouse|Nr|W each|W total|Control|||Glasshouse|Nr|W each|W total|Control
Palm house|6|6|36|L1|||Orangery|4|6|24|R1
Fern house|4|3|12|L2|||Cactus house|3|3|9|R2
Alpine house|2|3|6|none|||Propagation|2|3|6|none
Orchid house|4|3|12|L3|||Shop|4|1.5|6|R3
Corridor|3|1.5|4.5|none|||Gate lodge|1|1.5|1.5|none
Total|19||70.5||||Total|14||46.5
|
Controls|W||||||Controls|W
L1|36||||||R1|24
L2|12||||||R2|12
L3|12||||||R3|12
`)
		p.Merge("A4:E4", "H4:L4")
		p.Bold("A1", "A4:L5", "A13:I13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("BBG-77", "Ballynoe Botanic Garden", "two tables side by side, each headed by its amplifier; controls below each half")
		t.Speakers("sheet=A4 landscape; tap_v=100; line_v=100; amplifier=L", `rows|room|count|tap_w|control
6|Palm house|6|6|L1
7|Fern house|4|3|L2
8|Alpine house|2|3|
9|Orchid house|4|3|L3
10|Corridor|3|1.5|`)
		t.Speakers("sheet=A4 landscape; tap_v=100; line_v=100; amplifier=R", `rows|room|count|tap_w|control
6|Orangery|4|6|R1
7|Cactus house|3|3|R2
8|Propagation|2|3|
9|Shop|4|1.5|R3
10|Gate lodge|1|1.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
L|120|70.5
R|120|46.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
L|120|70.5
R|120|46.5`)
		t.Controls("", `control|rated_w|load_w
L1|36|36
L2|12|12
L3|12|12
R1|24|24
R2|12|9
R3|12|6`)
		t.Left("A4 landscape", `11|total|sums of both halves`)
	}},
}
