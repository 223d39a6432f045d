package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// installers are English, with an estimator, a facility manager, a service engineer and a consultant among them.
var installers = []typed.Case{
	{File: "withy/Withy Lock PA.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Speakers")
		p.Put("A1", `
Withy Lock Boathouse|||||Job 2217
PA speaker list, 100V, as fitted
||
Ref|Where|Speaker|Tapped at|Zone|Amp output|Vol control
SP1|Boat hall N|cabinet|10 W|Z1|1|
SP2|Boat hall S|cabinet|10 W|Z1|1|
SP3|Boat hall loft|cabinet|5 W|Z1|1|
SP4|Changing men|ceiling|2.5 W|Z2|2|VC-A
SP5|Changing ladies|ceiling|2.5 W|Z2|2|VC-A
SP6|Showers|ceiling, sealed|2.5 W|Z2|2|VC-A
SP7|Club room|ceiling|5 W|Z3|2|VC-B
SP8|Club room|ceiling|5 W|Z3|2|VC-B
SP9|Club room|ceiling|5 W|Z3|2|VC-B
SP10|Race office|ceiling|2.5 W|Z3|2|
SP11|Landing stage|horn|15 W|Z4|1|
SP12|Landing stage|horn|15 W|Z4|1|
SP13|Trailer park|horn|15 W|Z4|1|
`)
		p.Bold("A1", "A4:G4")
		q := p.Sheet("Amp + VCs")
		q.Put("A1", `
Mixer amp in race office, 2 outputs, 100 V
||
Output|Watts|Feeds
1|120|Z1, Z4
2|60|Z2, Z3
||
Vol control|Rated|Where
VC-A|12 W|corridor outside changing
VC-B|24 W|club room door
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2217", "Withy Lock Boathouse", "plain; the amplifier has no name, taps have their unit in the cell")
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; zone=Z1; channel=1", `rows|tag|room|tap_w
5|SP1|Boat hall N|10
6|SP2|Boat hall S|10
7|SP3|Boat hall loft|5`)
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; zone=Z2; channel=2; control=VC-A", `rows|tag|room|tap_w
8|SP4|Changing men|2.5
9|SP5|Changing ladies|2.5
10|SP6|Showers|2.5`)
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; zone=Z3; channel=2", `rows|tag|room|tap_w|control
11|SP7|Club room|5|VC-B
12|SP8|Club room|5|VC-B
13|SP9|Club room|5|VC-B
14|SP10|Race office|2.5|`)
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; zone=Z4; channel=1", `rows|tag|room|tap_w
15|SP11|Landing stage|15
16|SP12|Landing stage|15
17|SP13|Trailer park|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
|1|120|70
|2|60|25`)
		t.Amplifiers("", `amplifier|load_w
|95`)
		t.Controls("", `control|rated_w|load_w
VC-A|12|7.5
VC-B|24|15`)
	}},

	{File: "takeoffs/Frostfield rink PA takeoff.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("TO")
		p.Put("A1", `
Frostfield Ice Rink - PA rework|||||Bid 19-077
70V distributed, taps per drawing PA-2
||
Qty|Description|Tap|Ext. W|Mount|Remarks
FOYER - amp B (60 W)
4|8" ceiling|4 W|16|T-bar|on VC-1 (25 W)
2|surface box|4 W|8|wall|
RINK - amp A (250 W)
10|horn|16 W|160|truss|
1|horn|8 W|8|timekeeper's box|
SKATE RENTAL - amp B
3|8" ceiling|2 W|6|T-bar|on VC-2 (10 W)
1|8" ceiling|2 W|2|stock room|
LOCKER ROOMS - amp B
8|8" ceiling|1 W|8|T-bar|
2|surface box|2 W|4|corridor|
||
Total|||212
||
Home run|Length|Cable
Foyer|140 ft|16/2
Rink|310 ft|12/2
Skate rental|95 ft|18/2
Locker rooms|220 ft|16/2
`)
		p.Bold("A1", "A4:F4", "A5", "A8", "A11", "A14", "A18:D18", "A20:C20")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("19-077", "Frostfield Ice Rink", "areas are titles that name the amplifier, its watts once; controls with ratings in the remarks; feet and gauges")
		t.Speakers("sheet=TO; tap_v=70.7; line_v=70.7; zone=Foyer; amplifier=B", `rows|count|tap_w|control
6|4|4|VC-1
7|2|4|`)
		t.Speakers("sheet=TO; tap_v=70.7; line_v=70.7; zone=Rink; amplifier=A", `rows|count|tap_w
9|10|16
10|1|8`)
		t.Speakers("sheet=TO; tap_v=70.7; line_v=70.7; zone=Skate rental; amplifier=B", `rows|count|tap_w|control
12|3|2|VC-2
13|1|2|`)
		t.Speakers("sheet=TO; tap_v=70.7; line_v=70.7; zone=Locker rooms; amplifier=B", `rows|count|tap_w
15|8|1
16|2|2`)
		t.Channels("line_v=70.7", `amplifier|rated_w|load_w
A|250|168
B|60|44`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|250|168
B|60|44`)
		t.Controls("", `control|rated_w|load_w
VC-1|25|16
VC-2|10|6`)
		t.Lines("note=home run", `zone|length_m|area_mm2
Foyer|42.672|1.309
Rink|94.488|3.309
Skate rental|28.956|0.823
Locker rooms|67.056|1.309`)
		t.Left("TO", `5|title|area
8|title|area
11|title|area
14|title|area
18|total|sum`)
	}},

	{File: "saltings/Loudspeakers for the insurers.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Sheet1")
		p.Put("A1", `
Loudspeakers at Saltings Lido
Written down for the insurers, May
||
Where|What is there|Volume knob
Turnstiles|2 ceiling speakers at 3 W|K1
Ticket office|1 ceiling speaker at 3 W|K1
Pool side, deep end|4 horns at 15 W|none
Pool side, shallow end|4 horns at 15 W|none
Paddling pool|2 horns at 7.5 W|none
Changing rooms, ladies|3 ceiling speakers at 3 W|K2
Changing rooms, gents|3 ceiling speakers at 3 W|K2
Sun terrace|2 box speakers at 10 W|K3
First aid|1 ceiling speaker at 1.5 W|none
Plant room|nothing, too noisy|
||
The whole lot runs off one 240 W amplifier in the plant room (100 volt line).
Knob K1 is marked 12 W, knobs K2 and K3 are marked 24 W.
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Saltings Lido", "count, kind and watts in one cell; amplifier and ratings of the knobs in two sentences")
		t.Speakers("sheet=Sheet1; tap_v=100; line_v=100", `rows|room|count|tap_w|control
5|Turnstiles|2|3|K1
6|Ticket office|1|3|K1
7|Pool side, deep end|4|15|
8|Pool side, shallow end|4|15|
9|Paddling pool|2|7.5|
10|Changing rooms, ladies|3|3|K2
11|Changing rooms, gents|3|3|K2
12|Sun terrace|2|10|K3
13|First aid|1|1.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|183.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|183.5`)
		t.Controls("", `control|rated_w|load_w
K1|12|9
K2|24|18
K3|24|20`)
		t.Left("Sheet1", `14|none|no loudspeaker there`)
	}},

	{File: "service/88120 orchid houses.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Visit")
		p.Put("A1", `
Service sheet|Hartsmoor Botanic Garden, Orchid Houses|||Call 88120
Both amps 100 V, 120 W each
||
Line|Amp|Z measured, 1 kHz
L1|1|262 ohm
L2|2|655 ohm
||
Line|Speaker|House|Tap found (W)|Tap left (W)|Remarks
L1|101|Cool orchids|6|6|ok
L1|102|Cool orchids|6|6|ok
L1|103|Warm orchids|10|6|was too loud
L1|104|Warm orchids|6|6|ok
L1|105|Propagation|6|3|turned down as asked
L1|106|Porch|6||taken down, bracket rotten
L1|107|Potting shed|10|10|horn, ok
L2|201|Seminar room|3|3|behind VC1
L2|202|Seminar room|3|3|behind VC1
L2|203|Seed bank|3|1.5|behind VC2
L2|204|Seed bank|3|1.5|behind VC2
L2|205|Corridor|6|6|ok
||
VC1 is a 10 W, VC2 a 5 W.
Left 2 new 6 W ceiling speakers in the stores.
`)
		p.Strike("A14:F14")
		p.Bold("A4:C4", "A8:F8")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("88120", "Hartsmoor Botanic Garden, Orchid Houses", "taps as found and as left, a struck-out loudspeaker, controls in the remarks, impedances measured")
		t.Speakers("sheet=Visit; tap_v=100; line_v=100; amplifier=1; channel=L1", `rows|tag|room|tap_w
9|101|Cool orchids|6
10|102|Cool orchids|6
11|103|Warm orchids|6
12|104|Warm orchids|6
13|105|Propagation|3
15|107|Potting shed|10`)
		t.Speakers("sheet=Visit; tap_v=100; line_v=100; amplifier=2; channel=L2", `rows|tag|room|tap_w|control
16|201|Seminar room|3|VC1
17|202|Seminar room|3|VC1
18|203|Seed bank|1.5|VC2
19|204|Seed bank|1.5|VC2
20|205|Corridor|6|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
1|L1|120|37
2|L2|120|15`)
		t.Amplifiers("", `amplifier|rated_w|load_w
1|120|37
2|120|15`)
		t.Controls("", `control|rated_w|load_w
VC1|10|6
VC2|5|3`)
		t.Left("Visit", `5|measurement|impedance of a line
6|measurement|impedance of a line
14|removed|struck out, taken down
23|note|left in the stores`)
	}},

	{File: "consultant/5140-PA-SCH-01.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Quantities")
		p.Put("A1", `
Museum of Ropemaking|||Public address, loudspeaker quantities
Project 5140|||Revision P2|||100 V line
||
Room|Zone|Ceiling|Ceiling|Wall|Horn|Room total
||1.5 W|3 W|6 W|15 W|W
Entrance hall|A||4|||12
Cloakroom|A|2||||3
Ropewalk|B|||10||60
Ropewalk gallery|B||3|||9
Tar store|B|||2||12
Education room|C||4|||12
Library|C|2||||3
Yard|D||||3|45
Quay|D||||2|30
Total||4|11|12|5|186
`)
		p.Bold("A1", "A4:G5", "A15:G15")
		q := p.Sheet("Outputs")
		q.Put("A1", `
Zone|Amplifier|Output|Rated (W)|Attenuator|Attenuator (W)
A|PA1|1|30|ATT-A|20
B|PA1|2|120||
C|PA1|3|30|ATT-C|20
D|PA2|1|120||
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5140", "Museum of Ropemaking", "matrix of counts under two header rows; outputs and attenuators by zone on a second sheet")
		t.Revision("P2", false)
		t.Speakers("sheet=Quantities; tap_v=100; line_v=100; zone=A; amplifier=PA1; channel=1; control=ATT-A", `rows|room|count|tap_w
6|Entrance hall|4|3
7|Cloakroom|2|1.5`)
		t.Speakers("sheet=Quantities; tap_v=100; line_v=100; zone=B; amplifier=PA1; channel=2", `rows|room|count|tap_w
8|Ropewalk|10|6
9|Ropewalk gallery|3|3
10|Tar store|2|6`)
		t.Speakers("sheet=Quantities; tap_v=100; line_v=100; zone=C; amplifier=PA1; channel=3; control=ATT-C", `rows|room|count|tap_w
11|Education room|4|3
12|Library|2|1.5`)
		t.Speakers("sheet=Quantities; tap_v=100; line_v=100; zone=D; amplifier=PA2; channel=1", `rows|room|count|tap_w
13|Yard|3|15
14|Quay|2|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
PA1|1|30|15
PA1|2|120|81
PA1|3|30|15
PA2|1|120|75`)
		t.Amplifiers("", `amplifier|load_w
PA1|111
PA2|75`)
		t.Controls("", `control|zone|rated_w|load_w
ATT-A|A|20|15
ATT-C|C|20|15`)
		t.Left("Quantities", `15|total|sums`)
	}},
}
