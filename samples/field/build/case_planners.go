package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A planner with a school's training: merged headings, a sheet for each kind of thing.
var planner = []typed.Case{
	{File: "planning/FB-210 loudspeaker schedule.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Loudspeakers")
		p.Put("A1", `
Loudspeaker schedule
Project|Fenwater Botanical Garden
Project no.|FB-210|||Rev.|P2
||
Loudspeaker||||Location||Tap||Connection
Tag|Type|Mounting|Qty|Room no.|Room|W|V|Amplifier|Output|Control
LS-01|CL-6|ceiling|4|G01|Entrance hall|3|100|AMP-1|1|VC-01
LS-02|CL-6|ceiling|2|G02|Ticket desk|1.5|100|AMP-1|1|VC-02
LS-03|CL-6|ceiling|3|G03|Cloakroom|1.5|100|AMP-1|1
LS-04|CL-6|ceiling|6|G04|Lecture room|3|100|AMP-1|2|VC-03
LS-05|WL-8|wall|2|G04|Lecture room|6|100|AMP-1|2|VC-03
LS-06|CL-6|ceiling|2|G05|Seed library|1.5|100|AMP-1|2|VC-04
LS-07|PR-10|surface|4|G10|Palm house|10|100|AMP-2|1
LS-08|PR-10|surface|2|G11|Fern house|10|100|AMP-2|1
LS-09|PR-10|surface|2|G12|Orchid house|5|100|AMP-2|1|VC-05
LS-10|HN-15|pole|3|X01|Forecourt|15|100|AMP-2|2
LS-11|HN-15|pole|2|X02|Rose walk|15|100|AMP-2|2
LS-12|HN-15|pole|1|X03|Service yard|7.5|100|AMP-2|2
`)
		p.Merge("A1:K1", "A5:D5", "E5:F5", "G5:H5", "I5:K5")
		p.Bold("A1", "A5:K6")
		a := p.Sheet("Amplifiers")
		a.Put("A1", `
Amplifier||Outputs
Tag|Rack|Number|W each
AMP-1|R1|2|120
AMP-2|R1|2|120
`)
		a.Merge("A1:B1", "C1:D1")
		c := p.Sheet("Controls")
		c.Put("A1", `
Control||Location||
Tag|Rating W|Room no.|Room|Height mm
VC-01|20|G01|Entrance hall|1400
VC-02|6|G02|Ticket desk|1400
VC-03|35|G04|Lecture room|1400
VC-04|6|G05|Seed library|1400
VC-05|20|G12|Orchid house|1400
`)
		c.Merge("A1:B1", "C1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("FB-210", "Fenwater Botanical Garden", "merged headings of two rows on every sheet")
		t.Revision("P2", false)
		t.Speakers("sheet=Loudspeakers; tap_v=100; line_v=100", `rows|tag|model|count|room|tap_w|amplifier|channel|control
7|LS-01|CL-6|4|Entrance hall|3|AMP-1|1|VC-01
8|LS-02|CL-6|2|Ticket desk|1.5|AMP-1|1|VC-02
9|LS-03|CL-6|3|Cloakroom|1.5|AMP-1|1|
10|LS-04|CL-6|6|Lecture room|3|AMP-1|2|VC-03
11|LS-05|WL-8|2|Lecture room|6|AMP-1|2|VC-03
12|LS-06|CL-6|2|Seed library|1.5|AMP-1|2|VC-04
13|LS-07|PR-10|4|Palm house|10|AMP-2|1|
14|LS-08|PR-10|2|Fern house|10|AMP-2|1|
15|LS-09|PR-10|2|Orchid house|5|AMP-2|1|VC-05
16|LS-10|HN-15|3|Forecourt|15|AMP-2|2|
17|LS-11|HN-15|2|Rose walk|15|AMP-2|2|
18|LS-12|HN-15|1|Service yard|7.5|AMP-2|2|`)
		t.Channels("line_v=100; rated_w=120", `amplifier|channel|load_w
AMP-1|1|19.5
AMP-1|2|33
AMP-2|1|70
AMP-2|2|82.5`)
		t.Amplifiers("", `amplifier|load_w
AMP-1|52.5
AMP-2|152.5`)
		t.Controls("", `control|rated_w|load_w
VC-01|20|12
VC-02|6|3
VC-03|35|30
VC-04|6|3
VC-05|20|10`)
	}},

	{File: "planning/LB-044 room schedule.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Rooms")
		p.Put("A1", `
Room schedule, public address|||||||
Project no. LB-044, Lakehead Boathouses|||||||
100 V lines. The table gives numbers of loudspeakers.
||
|||Type of loudspeaker and tap
No.|Room|Zone|CL-6, 1.5 W|CL-6, 3 W|WL-8, 6 W|HN-15, 15 W
1|Slipway|Z1||||3
2|Boat hall|Z1|||4|
3|Oar store|Z1|2|||
4|Lobby|Z2||4||
5|Crew room|Z2||6|1|
6|Changing A|Z2|3||||
7|Changing B|Z2|3||||
8|Chart room|Z2||2||
9|Jetty|Z3||||2
10|Landing stage|Z3|||2|1
||
Zone|Amplifier|Output|Rated W
Z1|A1|1|125
Z2|A1|2|125
Z3|A2|1|60
`)
		p.Merge("A1:G1", "A2:G2", "D5:G5")
		p.Bold("A1", "A5:G6", "A18:D18")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("LB-044", "Lakehead Boathouses", "matrix of rooms and types; the zones' outputs stand below")
		t.Speakers("sheet=Rooms; tap_v=100; line_v=100; zone=Z1; amplifier=A1; channel=1", `rows|room|count|model|tap_w
7|Slipway|3|HN-15|15
8|Boat hall|4|WL-8|6
9|Oar store|2|CL-6|1.5`)
		t.Speakers("sheet=Rooms; tap_v=100; line_v=100; zone=Z2; amplifier=A1; channel=2", `rows|room|count|model|tap_w
10|Lobby|4|CL-6|3
11|Crew room|6|CL-6|3
11|Crew room|1|WL-8|6
12|Changing A|3|CL-6|1.5
13|Changing B|3|CL-6|1.5
14|Chart room|2|CL-6|3`)
		t.Speakers("sheet=Rooms; tap_v=100; line_v=100; zone=Z3; amplifier=A2; channel=1", `rows|room|count|model|tap_w
15|Jetty|2|HN-15|15
16|Landing stage|2|WL-8|6
16|Landing stage|1|HN-15|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A1|1|125|72
A1|2|125|51
A2|1|60|57`)
		t.Amplifiers("", `amplifier|load_w
A1|123
A2|57`)
	}},
}

// A facilities manager keeps one register of all the trust's sites.
var facilities = []typed.Case{
	{File: "facilities/PA register 2023.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("PA register")
		p.Put("A1", `
Register of public address loudspeakers, all sites
||
Job|Site|Area|Loudspeaker|No. off|Tap W|Line V|Amplifier|Amp rating W|Volume control|Control rating W|Checked
1101|Alder Mere Boathouse|Boat hall|HN-15|4|7.5|100|A1|60|||Mar 23
1101|Alder Mere Boathouse|Changing rooms|CL-6|4|3|100|A1|60|VC1|20|Mar 23
1101|Alder Mere Boathouse|Duty office|CL-6|1|1.5|100|A1|60|VC2|6|Mar 23
1101|Alder Mere Boathouse|Pontoon|HN-15|2|7.5|100|A1|60|||Mar 23
1102|Sallow Lane Planetarium|Foyer|CL-6|6|3|100|A1|120|VC1|35|Apr 23
1102|Sallow Lane Planetarium|Dome gangway|CL-6|8|1.5|100|A1|120|||Apr 23
1102|Sallow Lane Planetarium|Exhibition|CL-6|4|6|100|A1|120|VC2|35|Apr 23
1102|Sallow Lane Planetarium|Plant room|HN-15|1|15|100|A1|120|||Apr 23
1103|Greywater Ice Rink|Rink|PR-20|8|20|100|A1|240|||May 23
1103|Greywater Ice Rink|Skate hire|CL-6|4|3|100|A2|60|VC1|20|May 23
1103|Greywater Ice Rink|Lockers|CL-6|6|3|100|A2|60|VC2|20|May 23
1103|Greywater Ice Rink|Entrance|WL-8|2|6|100|A2|60|||May 23
1104|Thornby Botanical Garden|Palm house|PR-10|4|10|100|A1|120|||May 23
1104|Thornby Botanical Garden|Cactus house|PR-10|2|10|100|A1|120|||May 23
1104|Thornby Botanical Garden|Seminar room|CL-6|4|1.5|100|A1|120|VC1|20|May 23
1104|Thornby Botanical Garden|Gate|HN-15|1|15|100|A1|120|||May 23
`)
		p.Bold("A1", "A3:L3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("1101", "Alder Mere Boathouse", "four jobs in one table; ratings repeated on each row")
		t.Speakers("sheet=PA register; tap_v=100; line_v=100; amplifier=A1", `rows|zone|model|count|tap_w|control
4|Boat hall|HN-15|4|7.5|
5|Changing rooms|CL-6|4|3|VC1
6|Duty office|CL-6|1|1.5|VC2
7|Pontoon|HN-15|2|7.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|60|58.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|60|58.5`)
		t.Controls("", `control|zone|rated_w|load_w
VC1|Changing rooms|20|12
VC2|Duty office|6|1.5`)
		t.Also("1102", "Sallow Lane Planetarium", "second job of the register")
		t.Speakers("sheet=PA register; tap_v=100; line_v=100; amplifier=A1", `rows|zone|model|count|tap_w|control
8|Foyer|CL-6|6|3|VC1
9|Dome gangway|CL-6|8|1.5|
10|Exhibition|CL-6|4|6|VC2
11|Plant room|HN-15|1|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|120|69`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|120|69`)
		t.Controls("", `control|zone|rated_w|load_w
VC1|Foyer|35|18
VC2|Exhibition|35|24`)
		t.Also("1103", "Greywater Ice Rink", "third job of the register")
		t.Speakers("sheet=PA register; tap_v=100; line_v=100", `rows|zone|model|count|tap_w|amplifier|control
12|Rink|PR-20|8|20|A1|
13|Skate hire|CL-6|4|3|A2|VC1
14|Lockers|CL-6|6|3|A2|VC2
15|Entrance|WL-8|2|6|A2|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|240|160
A2|60|42`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|240|160
A2|60|42`)
		t.Controls("", `control|zone|rated_w|load_w
VC1|Skate hire|20|12
VC2|Lockers|20|18`)
		t.Also("1104", "Thornby Botanical Garden", "fourth job of the register")
		t.Speakers("sheet=PA register; tap_v=100; line_v=100; amplifier=A1", `rows|zone|model|count|tap_w|control
16|Palm house|PR-10|4|10|
17|Cactus house|PR-10|2|10|
18|Seminar room|CL-6|4|1.5|VC1
19|Gate|HN-15|1|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|120|81`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|120|81`)
		t.Controls("", `control|zone|rated_w|load_w
VC1|Seminar room|20|6`)
	}},

	{File: "facilities/asset list planetarium.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Asset no.,Site,Space,Category,Description,Quantity,Power,Fed from,Condition
PA-001,Hollin Hill Planetarium,Plant room,Amplifier,100 V mixer amplifier,1,240 W,,good
PA-002,Hollin Hill Planetarium,Ticket hall,Volume control,wall control,1,20 W,PA-001,good
PA-003,Hollin Hill Planetarium,Library,Volume control,wall control,1,12 W,PA-001,good
PA-010,Hollin Hill Planetarium,Ticket hall,Loudspeaker,ceiling CL-6,6,3 W,PA-002,good
PA-011,Hollin Hill Planetarium,Library,Loudspeaker,ceiling CL-6,4,1.5 W,PA-003,good
PA-012,Hollin Hill Planetarium,Corridor west,Loudspeaker,ceiling CL-6,5,3 W,PA-001,good
PA-013,Hollin Hill Planetarium,Corridor east,Loudspeaker,ceiling CL-6,5,3 W,PA-001,fair
PA-014,Hollin Hill Planetarium,Dome,Loudspeaker,wall WL-8,8,6 W,PA-001,good
PA-015,Hollin Hill Planetarium,Workshop,Loudspeaker,horn HN-15,1,15 W,PA-001,good
PA-016,Hollin Hill Planetarium,South lawn,Loudspeaker,horn HN-15,2,15 W,PA-001,fair
PA-017,Hollin Hill Planetarium,Telescope deck,Loudspeaker,horn HN-15,1,15 W,PA-001,removed 2021
PA-018,Hollin Hill Planetarium,Store,Loudspeaker,ceiling CL-6,3,,,spare
PA-019,Hollin Hill Planetarium,Office,Loudspeaker,ceiling CL-6,1,1.5 W,PA-001,good
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Hollin Hill Planetarium", "amplifier, controls and loudspeakers in one list of assets, joined by the asset that feeds them")
		t.Speakers("tap_v=100; line_v=100; amplifier=PA-001", `rows|tag|room|model|count|tap_w|control
5|PA-010|Ticket hall||6|3|PA-002
6|PA-011|Library||4|1.5|PA-003
7|PA-012|Corridor west||5|3|
8|PA-013|Corridor east||5|3|
9|PA-014|Dome||8|6|
10|PA-015|Workshop||1|15|
11|PA-016|South lawn||2|15|
14|PA-019|Office||1|1.5|`)
		t.Speakers("tap_v=100; line_v=100; amplifier=PA-001; status=removed", `rows|tag|room|count|tap_w
12|PA-017|Telescope deck|1|15`)
		t.Speakers("status=spare", `rows|tag|count
13|PA-018|3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
PA-001|240|148.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
PA-001|240|148.5`)
		t.Controls("", `control|rated_w|load_w
PA-002|20|18
PA-003|12|6`)
		t.Left("", `2|amplifier|the amplifier
3|control|a control
4|control|a control`)
	}},
}

// An electrician lists cables and loads by circuit.
var electrician = []typed.Case{
	{File: "electrical/PA circuits ice rink.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("PA circuits")
		p.Put("A1", `
Coldharbour Ice Rink|||Job 7731
PA circuits, 100 V, all from amplifier rack in plant room
||
Circuit|Amplifier|Channel|Serves|Cable|Length m|No. of speakers|Tap W|Load W
SP1|1|1|Rink north side|2x2.5|95|6|10|60
SP2|1|1|Rink south side|2x2.5|110|6|10|60
SP3|1|2|Rink east end|2x2.5|70|2|10|20
SP4|1|2|Rink west end|2x2.5|130|2|10|20
SP5|2|1|Changing 1|2x1.5|45|3|3|9
SP6|2|1|Changing 2|2x1.5|52|3|3|9
SP7|2|1|Officials|2x1.5|60|2|1.5|3
SP8|2|2|Foyer|2x1.5|40|8|3|24
SP9|2|2|Skate hire|2x1.5|35|4|3|12
SP10|2|2|Stairs|2x1.5|30|2|3|6
|||||Total|38||223
||
Amplifier 1: 2 x 240 W
Amplifier 2: 2 x 60 W
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("7731", "Coldharbour Ice Rink", "a row a circuit, cable and load together; ratings in lines below")
		t.Speakers("sheet=PA circuits; tap_v=100; line_v=100", `rows|room|amplifier|channel|count|tap_w
5|Rink north side|1|1|6|10
6|Rink south side|1|1|6|10
7|Rink east end|1|2|2|10
8|Rink west end|1|2|2|10
9|Changing 1|2|1|3|3
10|Changing 2|2|1|3|3
11|Officials|2|1|2|1.5
12|Foyer|2|2|8|3
13|Skate hire|2|2|4|3
14|Stairs|2|2|2|3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
1|1|240|120
1|2|240|40
2|1|60|21
2|2|60|42`)
		t.Amplifiers("", `amplifier|load_w
1|160
2|63`)
		t.Lines("", `line|length_m|area_mm2
SP1|95|2.5
SP2|110|2.5
SP3|70|2.5
SP4|130|2.5
SP5|45|1.5
SP6|52|1.5
SP7|60|1.5
SP8|40|1.5
SP9|35|1.5
SP10|30|1.5`)
		t.Left("PA circuits", `15|total|sum of numbers and loads`)
	}},

	{File: "electrical/Withern boathouse speaker wiring.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Withern Boathouse,,,,,,
Job no. 7755,,,,,,
Speaker wiring 100V line,,,,,,
,,,,,,
From,To,Cable,Metres,Speaker,W,Control
AMP out 1,LS1,1.5 mm2,18,horn,15,
LS1,LS2,1.5 mm2,12,horn,15,
LS2,LS3,1.5 mm2,12,horn,15,
LS3,LS4,1.5 mm2,14,horn,7.5,
AMP out 2,VC1,1.5 mm2,22,,,
VC1,LS5,0.75 mm2,4,ceiling,3,VC1
LS5,LS6,0.75 mm2,5,ceiling,3,VC1
LS6,LS7,0.75 mm2,5,ceiling,3,VC1
AMP out 2,LS8,1.5 mm2,31,ceiling,1.5,
LS8,LS9,1.5 mm2,6,ceiling,1.5,
LS9,LS10,1.5 mm2,6,ceiling,1.5,
,,,,,,
AMP: two outputs 60 W each,,,,,,
VC1 in crew room 12 W,,,,,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("7755", "Withern Boathouse", "from-to wiring list; each row's loudspeaker is the cable's far end")
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP", `rows|tag|tap_w|channel|control
6|LS1|15|1|
7|LS2|15|1|
8|LS3|15|1|
9|LS4|7.5|1|
11|LS5|3|2|VC1
12|LS6|3|2|VC1
13|LS7|3|2|VC1
14|LS8|1.5|2|
15|LS9|1.5|2|
16|LS10|1.5|2|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP|1|60|52.5
AMP|2|60|13.5`)
		t.Amplifiers("", `amplifier|load_w
AMP|66`)
		t.Controls("", `control|rated_w|load_w
VC1|12|9`)
		t.Lines("", `from|to|length_m|area_mm2
AMP out 1|LS1|18|1.5
LS1|LS2|12|1.5
LS2|LS3|12|1.5
LS3|LS4|14|1.5
AMP out 2|VC1|22|1.5
VC1|LS5|4|0.75
LS5|LS6|5|0.75
LS6|LS7|5|0.75
AMP out 2|LS8|31|1.5
LS8|LS9|6|1.5
LS9|LS10|6|1.5`)
		t.Left("", `10|segment|a cable to the control, no loudspeaker`)
	}},
}

// A broadcast engineer turned installer thinks from the amplifier outwards.
var broadcaster = []typed.Case{
	{File: "rack sheets/Tarn Hall planetarium.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Rack 1")
		p.Put("A1", `
TARN HALL PLANETARIUM  -  rack sheet, job 88-14
All outputs 100 V
||
PA1|2 outputs, 160 W each
Output|Destination|L/S type|Qty|Tap W|Sum W|Atten.
1|Dome cove|WL-8|8|10|80
1|Dome entrance|CL-6|4|3|12|AT1
1|Projection room|CL-6|1|1.5|1.5|AT2
2|Exhibition, lower|CL-6|10|6|60|AT3
2|Exhibition, upper|CL-6|6|6|36|AT4
||
PA2|2 outputs, 80 W each
Output|Destination|L/S type|Qty|Tap W|Sum W|Atten.
1|Foyer|CL-6|6|6|36|AT5
1|Cloaks|CL-6|3|1.5|4.5
2|Offices|CL-6|5|1.5|7.5|AT6
2|Loading bay|HN-15|2|15|30
2|Approach road|HN-15|2|15|30
||
Attenuators
Ref|Rated W|Where
AT1|20|Dome entrance
AT2|6|Projection room
AT3|60|Exhibition, lower
AT4|35|Exhibition, upper
AT5|60|Foyer
AT6|12|Offices
`)
		p.Bold("A1", "A4", "A12", "A20")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("88-14", "TARN HALL PLANETARIUM", "a block an amplifier, its rating in the block's title")
		t.Speakers("sheet=Rack 1; tap_v=100; line_v=100; amplifier=PA1", `rows|channel|zone|model|count|tap_w|control
6|1|Dome cove|WL-8|8|10|
7|1|Dome entrance|CL-6|4|3|AT1
8|1|Projection room|CL-6|1|1.5|AT2
9|2|Exhibition, lower|CL-6|10|6|AT3
10|2|Exhibition, upper|CL-6|6|6|AT4`)
		t.Speakers("sheet=Rack 1; tap_v=100; line_v=100; amplifier=PA2", `rows|channel|zone|model|count|tap_w|control
14|1|Foyer|CL-6|6|6|AT5
15|1|Cloaks|CL-6|3|1.5|
16|2|Offices|CL-6|5|1.5|AT6
17|2|Loading bay|HN-15|2|15|
18|2|Approach road|HN-15|2|15|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
PA1|1|160|93.5
PA1|2|160|96
PA2|1|80|40.5
PA2|2|80|67.5`)
		t.Amplifiers("", `amplifier|load_w
PA1|189.5
PA2|108`)
		t.Controls("", `control|zone|rated_w|load_w
AT1|Dome entrance|20|12
AT2|Projection room|6|1.5
AT3|Exhibition, lower|60|60
AT4|Exhibition, upper|35|36
AT5|Foyer|60|36
AT6|Offices|12|7.5`)
		t.Left("Rack 1", `4|title|amplifier and its rating
12|title|amplifier and its rating`)
	}},

	{File: "rack sheets/Moss End garden.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Moss End Botanical Garden,,,,,,,
Job 88-21,,,,,,,
Mono amplifiers: one output each and its circuits joined on the strip,,,,,,,
Amp,Rated W,Line V,Circuit,Destination,L/S,Tap W,Total W
A,120,100,A1,Temperate house,4,10,40
,,,A2,Alpine house,3,5,15
,,,A3,Potting shed,1,5,5
,,,A4,Bothy,2,2.5,5
B,120,100,B1,Main gate,2,15,30
,,,B2,East gate,1,15,15
,,,B3,Car park,3,15,45
C,60,100,C1,Herbarium,6,2.5,15
,,,C2,Library,4,1.25,5
,,,C3,Stair,2,2.5,5
,,,C4,Meeting room,4,2.5,10
Total,300,,,,32,,190
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("88-21", "Moss End Botanical Garden", "the amplifier stands once over its circuits, which share its one rated output")
		t.Speakers("tap_v=100; line_v=100; amplifier=A", `rows|zone|count|tap_w
5|Temperate house|4|10
6|Alpine house|3|5
7|Potting shed|1|5
8|Bothy|2|2.5`)
		t.Speakers("tap_v=100; line_v=100; amplifier=B", `rows|zone|count|tap_w
9|Main gate|2|15
10|East gate|1|15
11|Car park|3|15`)
		t.Speakers("tap_v=100; line_v=100; amplifier=C", `rows|zone|count|tap_w
12|Herbarium|6|2.5
13|Library|4|1.25
14|Stair|2|2.5
15|Meeting room|4|2.5`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|120|65
B|120|90
C|60|35`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|120|65
B|120|90
C|60|35`)
		t.Left("", `16|total|sums`)
	}},
}
