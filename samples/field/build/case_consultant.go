package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A consultant: one sheet a subject, title blocks, tags that join the sheets, metric, 100 V.
var consultant = []typed.Case{
	{File: "C1127 planetarium/C1127-SCH-610 rev C1.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Cover")
		p.Put("B2", `
Public Address - Device Schedules

Project|High Combe Planetarium
Project no.|C1127
Document|C1127-SCH-610
Revision|C1
Line voltage|100 V

Sheet|Contents
610.1|Loudspeakers
610.2|Amplifiers
610.3|Local controls
610.4|Cables
`)
		s := p.Sheet("610.1 Loudspeakers")
		s.Put("A1", `
High Combe Planetarium - Loudspeaker schedule

Ref.|Level|Room no.|Room name|Zone|Loudspeaker type|Mounting|Tapping (W)|Local control|Cable ref.
LS-001|L0|0.01|Entrance hall|Z1|Ceiling, type A|Recessed|6|-|C-101
LS-002|L0|0.01|Entrance hall|Z1|Ceiling, type A|Recessed|6|-|C-101
LS-003|L0|0.01|Entrance hall|Z1|Ceiling, type A|Recessed|6|-|C-101
LS-004|L0|0.01|Entrance hall|Z1|Ceiling, type A|Recessed|6|-|C-101
LS-005|L0|0.02|Ticket desk|Z1|Ceiling, type A|Recessed|3|LC-01|C-101
LS-006|L0|0.04|Meteorite gallery|Z2|Wall, type B|Surface|10|LC-02|C-102
LS-007|L0|0.04|Meteorite gallery|Z2|Wall, type B|Surface|10|LC-02|C-102
LS-008|L0|0.04|Meteorite gallery|Z2|Wall, type B|Surface|10|LC-02|C-102
LS-009|L0|0.04|Meteorite gallery|Z2|Wall, type B|Surface|10|LC-02|C-102
LS-010|L0|0.05|Clock room|Z2|Ceiling, type A|Recessed|3|LC-03|C-102
LS-011|L0|0.05|Clock room|Z2|Ceiling, type A|Recessed|3|LC-03|C-102
LS-012|L1|1.01|Dome foyer|Z3|Ceiling, type A|Recessed|6|LC-04|C-103
LS-013|L1|1.01|Dome foyer|Z3|Ceiling, type A|Recessed|6|LC-04|C-103
LS-014|L1|1.01|Dome foyer|Z3|Ceiling, type A|Recessed|6|LC-04|C-103
LS-015|L1|1.01|Dome foyer|Z3|Ceiling, type A|Recessed|6|LC-04|C-103
LS-016|L1|1.03|Projector room|Z3|Ceiling, type A|Recessed|1.5|-|C-103
LS-017|L1|1.04|Lecture room|Z3|Wall, type B|Surface|10|LC-05|C-103
LS-018|L1|1.04|Lecture room|Z3|Wall, type B|Surface|10|LC-05|C-103
LS-019|RF|R.01|Roof terrace|Z4|Horn, type C|Surface|15|-|C-104
LS-020|RF|R.01|Roof terrace|Z4|Horn, type C|Surface|15|-|C-104
LS-021|RF|R.01|Roof terrace|Z4|Horn, type C|Surface|15|-|C-104
LS-022|RF|R.02|Telescope shed|Z4|Horn, type C|Surface|5|-|C-104
`)
		a := p.Sheet("610.2 Amplifiers")
		a.Put("A1", `
High Combe Planetarium - Amplifier schedule

Amplifier|Channel|Rated output (W)|Zone served
AMP-1|1|60|Z1
AMP-1|2|60|Z2
AMP-1|3|60|Z3
AMP-1|4|60|Z4
`)
		c := p.Sheet("610.3 Local controls")
		c.Put("A1", `
High Combe Planetarium - Local volume controls

Ref.|Room|Max. connected load (W)|Override
LC-01|Ticket desk|6|24 V relay
LC-02|Meteorite gallery|50|24 V relay
LC-03|Clock room|6|24 V relay
LC-04|Dome foyer|25|24 V relay
LC-05|Lecture room|25|24 V relay
`)
		k := p.Sheet("610.4 Cables")
		k.Put("A1", `
High Combe Planetarium - Cable schedule

Cable ref.|From|To|Cores x CSA (mm²)|Length (m)|Remarks
C-101|AMP-1/1|Zone Z1|2 x 1.5|64|
C-102|AMP-1/2|Zone Z2|2 x 1.5|82|
C-103|AMP-1/3|Zone Z3|2 x 1.5|71|
C-104|AMP-1/4|Zone Z4|2 x 2.5|118|UV-resistant sheath on roof
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("C1127", "High Combe Planetarium", "four sheets joined by references")
		t.Revision("C1", false)
		t.Speakers("sheet=610.1 Loudspeakers; tap_v=100; line_v=100; amplifier=AMP-1; channel=1; zone=Z1; model=Ceiling, type A", `rows|tag|room|tap_w|control
4..7|LS-001..|Entrance hall|6|
8|LS-005|Ticket desk|3|LC-01`)
		t.Speakers("sheet=610.1 Loudspeakers; tap_v=100; line_v=100; amplifier=AMP-1; channel=2; zone=Z2", `rows|tag|room|model|tap_w|control
9..12|LS-006..|Meteorite gallery|Wall, type B|10|LC-02
13..14|LS-010..|Clock room|Ceiling, type A|3|LC-03`)
		t.Speakers("sheet=610.1 Loudspeakers; tap_v=100; line_v=100; amplifier=AMP-1; channel=3; zone=Z3", `rows|tag|room|model|tap_w|control
15..18|LS-012..|Dome foyer|Ceiling, type A|6|LC-04
19|LS-016|Projector room|Ceiling, type A|1.5|
20..21|LS-017..|Lecture room|Wall, type B|10|LC-05`)
		t.Speakers("sheet=610.1 Loudspeakers; tap_v=100; line_v=100; amplifier=AMP-1; channel=4; zone=Z4; model=Horn, type C", `rows|tag|room|tap_w
22..24|LS-019..|Roof terrace|15
25|LS-022|Telescope shed|5`)
		t.Channels("line_v=100; amplifier=AMP-1; rated_w=60", `channel|load_w
1|27
2|46
3|45.5
4|50`)
		t.Amplifiers("", `amplifier|load_w
AMP-1|168.5`)
		t.Controls("", `control|rated_w|load_w
LC-01|6|3
LC-02|50|40
LC-03|6|6
LC-04|25|24
LC-05|25|20`)
		t.Lines("", `line|zone|from|to|length_m|area_mm2
C-101|Z1|AMP-1/1|Zone Z1|64|1.5
C-102|Z2|AMP-1/2|Zone Z2|82|1.5
C-103|Z3|AMP-1/3|Zone Z3|71|1.5
C-104|Z4|AMP-1/4|Zone Z4|118|2.5`)
	}},

	{File: "C1163 rowing/C1163-SCH-02.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Room matrix")
		p.Put("A1", `
Project:|C1163 Tarn Head Boathouse
Schedule:|02 - quantities per room
System:|100 V line

Room|Circuit|Type L1|Type L2|Type L3|Total
Boat bay 1|CCT 1|||2|2
Boat bay 2|CCT 1|||2|2
Boat bay 3|CCT 1|||2|2
Rigging shop|CCT 1||2||2
Foyer|CCT 2|6|||6
Trophy corridor|CCT 2|4|||4
Ergometer room|CCT 2||4||4
Changing east|CCT 3|3|||3
Changing west|CCT 3|3|||3
First aid|CCT 3|1|||1
Race control|CCT 3|1|1||2
Pontoon|CCT 4|||4|4
Start hut|CCT 4||1||1
Total||18|8|10|36
`)
		p.Bold("A5:F5", "A19:F19")
		y := p.Sheet("Types")
		y.Put("A1", `
Type|Description|Tap to be used|Rated power
L1|Recessed ceiling loudspeaker, 165 mm|3 W|6 W
L2|Surface wall cabinet|6 W|10 W
L3|Weatherproof horn|15 W|30 W
`)
		c := p.Sheet("Circuits")
		c.Put("A1", `
Circuit|Amplifier|Output|Output rating|Cable|Route length
CCT 1|PA-A|1|125 W|2c 2.5 mm²|96 m
CCT 2|PA-A|2|125 W|2c 1.5 mm²|54 m
CCT 3|PA-B|1|60 W|2c 1.5 mm²|61 m
CCT 4|PA-B|2|125 W|2c 4 mm²|210 m
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("C1163", "Tarn Head Boathouse", "rooms by types, the taps in a sheet of types, the outputs in a sheet of circuits")
		t.Speakers("sheet=Room matrix; tap_v=100; line_v=100; amplifier=PA-A; channel=1", `rows|room|model|count|tap_w
6|Boat bay 1|L3|2|15
7|Boat bay 2|L3|2|15
8|Boat bay 3|L3|2|15
9|Rigging shop|L2|2|6`)
		t.Speakers("sheet=Room matrix; tap_v=100; line_v=100; amplifier=PA-A; channel=2", `rows|room|model|count|tap_w
10|Foyer|L1|6|3
11|Trophy corridor|L1|4|3
12|Ergometer room|L2|4|6`)
		t.Speakers("sheet=Room matrix; tap_v=100; line_v=100; amplifier=PA-B; channel=1", `rows|room|model|count|tap_w
13|Changing east|L1|3|3
14|Changing west|L1|3|3
15|First aid|L1|1|3
16|Race control|L1|1|3
16|Race control|L2|1|6`)
		t.Speakers("sheet=Room matrix; tap_v=100; line_v=100; amplifier=PA-B; channel=2", `rows|room|model|count|tap_w
17|Pontoon|L3|4|15
18|Start hut|L2|1|6`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
PA-A|1|125|102
PA-A|2|125|54
PA-B|1|60|30
PA-B|2|125|66`)
		t.Amplifiers("", `amplifier|load_w
PA-A|156
PA-B|96`)
		t.Lines("", `line|length_m|area_mm2
CCT 1|96|2.5
CCT 2|54|1.5
CCT 3|61|1.5
CCT 4|210|4`)
		t.Left("Room matrix", `19|total|counts of types`)
	}},
}
