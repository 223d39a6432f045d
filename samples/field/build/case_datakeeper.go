package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A keeper of data in the trust's estates office: identifiers, one fact in one place, units in their own row, text exports.
var dataKeeper = []typed.Case{
	{File: "estate data/dunnock_tables.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("job")
		p.Put("A1", `
field|value
job|E-401
site|Dunnock Lake Botanical Garden
line_voltage|100 V
`)
		r := p.Sheet("rooms")
		r.Put("A1", `
room_id|room
R01|Mediterranean house
R02|Rain forest house
R03|Reception
R04|Bookshop
R05|Seminar room
R06|Potting yard
R07|Herb garden
`)
		a := p.Sheet("circuits")
		a.Put("A1", `
circuit_id|amplifier|channel|rated_w|cable_mm2|cable_m
C1|AMP1|1|120|2.5|85
C2|AMP1|2|120|1.5|40
C3|AMP2|1|60|2.5|150
`)
		c := p.Sheet("controls")
		c.Put("A1", `
control_id|room_id|max_w
V1|R03|24
V2|R04|10
V3|R05|24
`)
		s := p.Sheet("loudspeakers")
		s.Put("A1", `
loudspeaker_id|room_id|circuit_id|control_id|model|tap_w
LS01|R01|C1||PJ20|10
LS02|R01|C1||PJ20|10
LS03|R01|C1||PJ20|10
LS04|R01|C1||PJ20|10
LS05|R02|C1||PJ20|20
LS06|R02|C1||PJ20|20
LS07|R02|C1||PJ20|20
LS08|R02|C1||PJ20|20
LS09|R03|C2|V1|CL6|6
LS10|R03|C2|V1|CL6|6
LS11|R03|C2|V1|CL6|6
LS12|R04|C2|V2|CL6|3
LS13|R04|C2|V2|CL6|3
LS14|R05|C2|V3|CL6|6
LS15|R05|C2|V3|CL6|6
LS16|R05|C2|V3|CL6|6
LS17|R05|C2|V3|CL6|6
LS18|R06|C3||HN15|15
LS19|R06|C3||HN15|7.5
LS20|R07|C3||HN15|15
LS21|R07|C3||HN15|15
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("E-401", "Dunnock Lake Botanical Garden", "tables joined by identifiers, rooms by number")
		t.Speakers("sheet=loudspeakers; tap_v=100; line_v=100; amplifier=AMP1; channel=1; model=PJ20", `rows|tag|tap_w
2..5|LS01..|10
6..9|LS05..|20`)
		t.Speakers("sheet=loudspeakers; tap_v=100; line_v=100; amplifier=AMP1; channel=2; model=CL6", `rows|tag|tap_w|control
10..12|LS09..|6|V1
13..14|LS12..|3|V2
15..18|LS14..|6|V3`)
		t.Speakers("sheet=loudspeakers; tap_v=100; line_v=100; amplifier=AMP2; channel=1; model=HN15", `rows|tag|tap_w
19|LS18|15
20|LS19|7.5
21..22|LS20..|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|1|120|120
AMP1|2|120|48
AMP2|1|60|52.5`)
		t.Amplifiers("", `amplifier|load_w
AMP1|168
AMP2|52.5`)
		t.Controls("", `control|rated_w|load_w
V1|24|18
V2|10|6
V3|24|24`)
		t.Lines("", `line|length_m|area_mm2
C1|85|2.5
C2|40|1.5
C3|150|2.5`)
	}},

	{File: "estate data/garganey_zones.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("zones")
		p.Put("A1", `
Job E-407|Garganey Boathouses

Zone|Count|Tap|Line voltage|Control|Control max|Amplifier|Channel|Channel max|Cable area|Cable length
text|pcs|W|V|text|W|text|-|W|mm²|m
Bay 1|3|10|100|VR-1|50|AMP-A|1|120|2.5|44
Bay 2|3|10|100|VR-2|50|AMP-A|1|120|2.5|58
Bay 3|2|10|100|VR-3|50|AMP-A|1|120|2.5|71
Club room|6|6|100|VR-4|36|AMP-A|2|60|1.5|36
Trophy room|3|3|100|VR-5|6|AMP-A|2|60|1.5|41
Changing|8|3|100|||AMP-B|1|60|1.5|52
Coaching office|1|1.5|100|VR-6|6|AMP-B|1|60|1.5|29
Slipway|3|15|100|||AMP-B|2|120|2.5|97
Landing|2|15|100|||AMP-B|2|120|2.5|120
Regatta tower|1|30|100|||AMP-B|2|120|2.5|240
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("E-407", "Garganey Boathouses", "units in a row below the header")
		t.Speakers("sheet=zones; tap_v=100; line_v=100", `rows|zone|count|tap_w|control|amplifier|channel
5|Bay 1|3|10|VR-1|AMP-A|1
6|Bay 2|3|10|VR-2|AMP-A|1
7|Bay 3|2|10|VR-3|AMP-A|1
8|Club room|6|6|VR-4|AMP-A|2
9|Trophy room|3|3|VR-5|AMP-A|2
10|Changing|8|3||AMP-B|1
11|Coaching office|1|1.5|VR-6|AMP-B|1
12|Slipway|3|15||AMP-B|2
13|Landing|2|15||AMP-B|2
14|Regatta tower|1|30||AMP-B|2`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP-A|1|120|80
AMP-A|2|60|45
AMP-B|1|60|25.5
AMP-B|2|120|105`)
		t.Amplifiers("", `amplifier|load_w
AMP-A|125
AMP-B|130.5`)
		t.Controls("", `control|zone|rated_w|load_w
VR-1|Bay 1|50|30
VR-2|Bay 2|50|30
VR-3|Bay 3|50|20
VR-4|Club room|36|36
VR-5|Trophy room|6|9
VR-6|Coaching office|6|1.5`)
		t.Lines("", `zone|length_m|area_mm2
Bay 1|44|2.5
Bay 2|58|2.5
Bay 3|71|2.5
Club room|36|1.5
Trophy room|41|1.5
Changing|52|1.5
Coaching office|29|1.5
Slipway|97|2.5
Landing|120|2.5
Regatta tower|240|2.5`)
	}},

	{File: "estate data/teal_rink_export.txt", Kind: "schedule", Bytes: func() []byte {
		return typed.Unicode16(typed.DOS(`
Job	Site	Device	Class	Room	Tap (W)	System (V)	Amplifier	Channel	Volume control	State
E-412	Teal Street Ice Rink	D-001	Loudspeaker, horn	Ice hall	15	100	AMP-1	1		in use
E-412	Teal Street Ice Rink	D-002	Loudspeaker, horn	Ice hall	15	100	AMP-1	1		in use
E-412	Teal Street Ice Rink	D-003	Loudspeaker, horn	Ice hall	15	100	AMP-1	1		in use
E-412	Teal Street Ice Rink	D-004	Loudspeaker, horn	Ice hall	15	100	AMP-1	1		in use
E-412	Teal Street Ice Rink	D-005	Loudspeaker, horn	Ice hall	15	100	AMP-1	1		removed
E-412	Teal Street Ice Rink	D-006	Loudspeaker, ceiling	Hall	6	100	AMP-1	2	VC-1	in use
E-412	Teal Street Ice Rink	D-007	Loudspeaker, ceiling	Hall	6	100	AMP-1	2	VC-1	in use
E-412	Teal Street Ice Rink	D-008	Loudspeaker, ceiling	Hall	6	100	AMP-1	2	VC-1	in use
E-412	Teal Street Ice Rink	D-009	Loudspeaker, ceiling	Skate loan	3	100	AMP-1	2	VC-2	in use
E-412	Teal Street Ice Rink	D-010	Loudspeaker, ceiling	Skate loan	3	100	AMP-1	2	VC-2	in use
E-412	Teal Street Ice Rink	D-011	Loudspeaker, ceiling	Changing 1	3	100	AMP-1	2		in use
E-412	Teal Street Ice Rink	D-012	Loudspeaker, ceiling	Changing 2	3	100	AMP-1	2		in use
E-412	Teal Street Ice Rink	D-013	Loudspeaker, ceiling	Changing 3	3	100	AMP-1	2		planned
E-412	Teal Street Ice Rink	D-014	Loudspeaker, column	Stand	20	100	AMP-2	1		in use
E-412	Teal Street Ice Rink	D-015	Loudspeaker, column	Stand	20	100	AMP-2	1		in use
E-412	Teal Street Ice Rink	D-016	Loudspeaker, column	Stand	20	100	AMP-2	1		in use
E-412	Teal Street Ice Rink	D-017	Loudspeaker, ceiling	Store						spare
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("E-412", "Teal Street Ice Rink", "Unicode text with tabs; no ratings anywhere")
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP-1; channel=1; tap_w=15", `rows|tag|room|status
2..5|D-001..|Ice hall|installed
6|D-005|Ice hall|removed`)
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP-1; channel=2", `rows|tag|room|tap_w|control|status
7..9|D-006..|Hall|6|VC-1|installed
10..11|D-009..|Skate loan|3|VC-2|installed
12|D-011|Changing 1|3||installed
13|D-012|Changing 2|3||installed
14|D-013|Changing 3|3||future`)
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP-2; channel=1; tap_w=20", `rows|tag|room
15..17|D-014..|Stand`)
		t.Speakers("status=spare", `rows|tag|room
18|D-017|Store`)
		t.Channels("line_v=100", `amplifier|channel|load_w
AMP-1|1|60
AMP-1|2|30
AMP-2|1|60`)
		t.Amplifiers("", `amplifier|load_w
AMP-1|90
AMP-2|60`)
		t.Controls("", `control|load_w
VC-1|18
VC-2|6`)
	}},

	{File: "estate data/wigeon_reuse.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("reuse")
		p.Put("A1", `
job|E-418
site|Wigeon Hill Arboretum
remark|Loudspeakers of the old 70.7 V system were moved to the new 100 V lines. Tap and tap voltage are what is printed on the transformer.

id|place|model|tap (W)|tap voltage (V)|line voltage (V)|amplifier|output
W1|Lodge|CL8|2.5|70.7|100|AMP1|1
W2|Lodge|CL8|2.5|70.7|100|AMP1|1
W3|Lodge|CL8|2.5|70.7|100|AMP1|1
W4|Beech path|GP20|10|100|100|AMP1|1
W5|Beech path|GP20|10|100|100|AMP1|1
W6|Larch ride|HN20|5|70.7|100|AMP1|2
W7|Larch ride|HN20|5|70.7|100|AMP1|2
W8|Larch ride|HN20|10|100|100|AMP1|2
W9|Pine ride|HN20|10|100|100|AMP1|2
W10|Pine ride|HN20|10|100|100|AMP1|2
W11|Yard|HN20|15|100|100|AMP1|2
W12|Tool store|CL8|1|70.7|100|AMP1|2

amplifier|output|rating (W)
AMP1|1|60
AMP1|2|60
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("E-418", "Wigeon Hill Arboretum", "taps for another voltage than the line's")
		t.Speakers("sheet=reuse; line_v=100; amplifier=AMP1; channel=1", `rows|tag|room|model|tap_w|tap_v
6..8|W1..|Lodge|CL8|2.5|70.7
9..10|W4..|Beech path|GP20|10|100`)
		t.Speakers("sheet=reuse; line_v=100; amplifier=AMP1; channel=2; model=HN20", `rows|tag|room|tap_w|tap_v
11..12|W6..|Larch ride|5|70.7
13|W8|Larch ride|10|100
14..15|W9..|Pine ride|10|100
16|W11|Yard|15|100`)
		t.Speakers("sheet=reuse; line_v=100; amplifier=AMP1; channel=2", `rows|tag|room|model|tap_w|tap_v
17|W12|Tool store|CL8|1|70.7`)
		t.Channels("line_v=100; amplifier=AMP1", `channel|rated_w|load_w
1|60|35
2|60|67`)
		t.Amplifiers("", `amplifier|load_w
AMP1|102`)
	}},
}
