package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// utf16 is a text file as "Unicode text" is saved.
func utf16(block string) func() []byte {
	return func() []byte { return typed.Unicode16(typed.DOS(block)) }
}

// at puts a further block on the sheet.
func at(cell, block string) touch { return func(p typed.Page) { p.Put(cell, block) } }

func lineCircuits() []typed.Case {
	return []typed.Case{
		{File: "Moose Hollow/zone card.xlsx", Kind: "schedule", Book: book("Zones", `
MOOSE HOLLOW ICE ARENA||||
Sound system zone card - 70 V||||

|ZONE 1|ZONE 2|ZONE 3|ZONE 4
Area|Main rink|Lobby & skate shop|Locker rooms|Parking lot
Speaker|Arena horn|8" ceiling|8" ceiling|Paging horn
How many|8|12|10|3
Tapped at|30 W|5 W|2.5 W|15 W
Total load|240 W|60 W|25 W|45 W
Amplifier|A1|A1|A2|A2
Amp channel|1|2|1|2
Channel rated|400 W|400 W|100 W|100 W
Volume control||VC-2||
Control rated||100 W||
Cable|12 AWG|16 AWG|16 AWG|14 AWG
Run (ft)|310|180|225|400
`, bold("A1:A2", "B4:E4", "A5:A16")), Truth: func(t *typed.Truth) {
			t.Is("", "Moose Hollow Ice Arena", "plain: transposed, a zone a column")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=Zones", `
rows|zone|room|model|count|tap_w|control|amplifier|channel
B|ZONE 1|Main rink|Arena horn|8|30||A1|1
C|ZONE 2|Lobby & skate shop|8" ceiling|12|5|VC-2|A1|2
D|ZONE 3|Locker rooms|8" ceiling|10|2.5||A2|1
E|ZONE 4|Parking lot|Paging horn|3|15||A2|2
`)
			t.Channels("line_v=70.7", `
amplifier|channel|rated_w|load_w
A1|1|400|240
A1|2|400|60
A2|1|100|25
A2|2|100|45
`)
			t.Controls("", "control|zone|rated_w|load_w\nVC-2|ZONE 2|100|60")
			t.Amplifiers("", "amplifier|rated_w|load_w\nA1|800|300\nA2|200|70")
			t.Lines("material=copper", `
zone|length_m|area_mm2
ZONE 1|94.488|3.3088
ZONE 2|54.864|1.3087
ZONE 3|68.58|1.3087
ZONE 4|121.92|2.0809
`)
		}},

		{File: "Tolverne/PA as installed.xlsx", Kind: "schedule", Book: book("PA", `
Tolverne Boathouse|||||
PA as installed, June 2016|||||

Speaker|Position|Type|Tap (W @ 100 V)|Zone|Vol. control
1|Slipway|horn|15|Outside|
2|Slipway|horn|15|Outside|
3|Pontoon|horn|15|Outside|
4|Boat hall|column|10|Boat hall|
5|Boat hall|column|10|Boat hall|
6|Boat hall|column|10|Boat hall|
7|Workshop|cabinet|6|Boat hall|V1
8|Changing, men|ceiling|1.5|Clubhouse|
9|Changing, women|ceiling|1.5|Clubhouse|
10|Committee room|ceiling|3|Clubhouse|V2
11|Committee room|ceiling|3|Clubhouse|V2
12|Corridor|ceiling|1.5|Clubhouse|
13|Gallery|cabinet|6|Clubhouse|V3
14|Gallery|cabinet|6|Clubhouse|V3
`, at("H4", `
Zone|Amp output|Output W|Cable mm²|Cable m
Outside|1|120|2.5|85
Boat hall|2|60|1.5|60
Clubhouse|3|60|1.5|48
`), at("N4", `
Vol. control|Rated W|Fixed at
V1|6|Workshop bench
V2|12|Committee room door
V3|10|Gallery
`), bold("A1:A2", "A4:P4")), Truth: func(t *typed.Truth) {
			t.Is("", "Tolverne Boathouse", "plain: three tables side by side, joined by zone and by control")
			t.Speakers("tap_v=100; line_v=100; sheet=PA", `
rows|tag|room|model|tap_w|zone|control|channel
5..6|1..|Slipway|horn|15|Outside||1
7|3|Pontoon|horn|15|Outside||1
8..10|4..|Boat hall|column|10|Boat hall||2
11|7|Workshop|cabinet|6|Boat hall|V1|2
12|8|Changing, men|ceiling|1.5|Clubhouse||3
13|9|Changing, women|ceiling|1.5|Clubhouse||3
14..15|10..|Committee room|ceiling|3|Clubhouse|V2|3
16|12|Corridor|ceiling|1.5|Clubhouse||3
17..18|13..|Gallery|cabinet|6|Clubhouse|V3|3
`)
			t.Channels("line_v=100", `
channel|rated_w|load_w
1|120|45
2|60|36
3|60|22.5
`)
			t.Controls("", `
control|zone|rated_w|load_w
V1|Boat hall|6|6
V2|Clubhouse|12|6
V3|Clubhouse|10|12
`)
			t.Amplifiers("", "rated_w|load_w|note\n240|103.5|unnamed")
			t.Lines("material=copper", `
zone|length_m|area_mm2
Outside|85|2.5
Boat hall|60|1.5
Clubhouse|48|1.5
`)
		}},

		{File: "Ottermoor/OP-VA-004 circuit schedule.xlsx", Kind: "schedule", Book: book("Circuits", `
OTTERMOOR PLANETARIUM|||||||||
Voice alarm - loudspeaker circuit schedule, A and B circuits interleaved|||||||||
Doc. no.|OP-VA-004||Rev.|C2|||||
All loudspeakers 100 V line|||||||||

Circuit ref|VA zone|Area covered|L/S qty|Tapping each (W)|Circuit load (W)|Amplifier|Amp rating (W)|Cable|Length (m)
VA1-A|1|Foyer and stairs|7|3|21|PA1-A|120|2c x 1.5 mm² fire resistant|96
VA1-B|1|Foyer and stairs|7|3|21|PA1-B|120|2c x 1.5 mm² fire resistant|104
VA2-A|2|Dome auditorium|6|10|60|PA2-A|120|2c x 1.5 mm² fire resistant|118
VA2-B|2|Dome auditorium|6|10|60|PA2-B|120|2c x 1.5 mm² fire resistant|121
VA3-A|3|Exhibition floor|12|6|72|PA3-A|120|2c x 2.5 mm² fire resistant|165
VA3-B|3|Exhibition floor|11|6|66|PA3-B|120|2c x 2.5 mm² fire resistant|158
VA4-A|4|Offices and plant|9|1.5|13.5|PA4-A|60|2c x 1.5 mm² fire resistant|140
VA4-B|4|Offices and plant|9|1.5|13.5|PA4-B|60|2c x 1.5 mm² fire resistant|133
Total|||67||327||||

Signed off at commissioning, see certificate OP-VA-009||||||||||
`, bold("A1:A2", "A6:J6", "A15:F15")), Truth: func(t *typed.Truth) {
			t.Is("", "Ottermoor Planetarium", "plain: voice alarm, one row an A or B circuit, each on its own amplifier (PA1-A may be amplifier PA1-A or output A of PA1); one length a circuit")
			t.Revision("C2", false)
			t.Speakers("tap_v=100; line_v=100; sheet=Circuits", `
rows|zone|room|count|tap_w|channel
7|1|Foyer and stairs|7|3|PA1-A
8|1|Foyer and stairs|7|3|PA1-B
9|2|Dome auditorium|6|10|PA2-A
10|2|Dome auditorium|6|10|PA2-B
11|3|Exhibition floor|12|6|PA3-A
12|3|Exhibition floor|11|6|PA3-B
13|4|Offices and plant|9|1.5|PA4-A
14|4|Offices and plant|9|1.5|PA4-B
`)
			t.Channels("line_v=100", `
channel|rated_w|load_w
PA1-A|120|21
PA1-B|120|21
PA2-A|120|60
PA2-B|120|60
PA3-A|120|72
PA3-B|120|66
PA4-A|60|13.5
PA4-B|60|13.5
`)
			t.Lines("material=copper", `
line|zone|length_m|area_mm2
VA1-A|1|96|1.5
VA1-B|1|104|1.5
VA2-A|2|118|1.5
VA2-B|2|121|1.5
VA3-A|3|165|2.5
VA3-B|3|158|2.5
VA4-A|4|140|1.5
VA4-B|4|133|1.5
`)
			t.Left("Circuits", "15|total|right")
		}},

		{File: "office/PA register 1998-2003.csv", Kind: "schedule", Bytes: utf16(`
Job no.	Site	Year	Area	Qty	Speaker	Tap	Line	Amp output	Output W	Remarks
L98-031	Thornbeck Ice Rink	1998	Ice pad	6	Horn	30W	100V	1	300	
L98-031	Thornbeck Ice Rink	1998	Seating	10	Column	10W	100V	2	120	
L98-031	Thornbeck Ice Rink	1998	Foyer	4	Ceiling	6W	100V	3	60	
L99-008	Marl Quay Boathouse	1999	Boat bays	4	Horn	15W	100V	1	100	
L99-008	Marl Quay Boathouse	1999	Changing	4	Ceiling	3W	100V	2	30	
L01-017	Ellerby Walled Garden	2001	Glasshouses	6	Column	6W	100V	1	60	
L01-017	Ellerby Walled Garden	2001	Gatehouse	3	Ceiling	3W	100V	1	60	
L01-017	Ellerby Walled Garden	2001	Orchard	5	Horn	15W	100V	2	120	
L03-002	Thornbeck Ice Rink	2003	Curling hall	6	Column	20W	100V	1	120	separate rack, not the 1998 one
L03-002	Thornbeck Ice Rink	2003	Curling hall foyer	2	Ceiling	3W	100V	2	60	
`), Truth: func(t *typed.Truth) {
			t.Is("L98-031", "Thornbeck Ice Rink", "plain: a register of jobs, the job in the first column; tab-separated UTF-16; one site has two jobs that do not replace one another")
			common := "tap_v=100; line_v=100"
			t.Speakers(common, `
rows|zone|model|count|tap_w|channel
2|Ice pad|Horn|6|30|1
3|Seating|Column|10|10|2
4|Foyer|Ceiling|4|6|3
`)
			t.Channels("line_v=100", "channel|rated_w|load_w\n1|300|180\n2|120|100\n3|60|24")
			t.Also("L99-008", "Marl Quay Boathouse", "second job")
			t.Speakers(common, `
rows|zone|model|count|tap_w|channel
5|Boat bays|Horn|4|15|1
6|Changing|Ceiling|4|3|2
`)
			t.Channels("line_v=100", "channel|rated_w|load_w\n1|100|60\n2|30|12")
			t.Also("L01-017", "Ellerby Walled Garden", "third job")
			t.Speakers(common, `
rows|zone|model|count|tap_w|channel
7|Glasshouses|Column|6|6|1
8|Gatehouse|Ceiling|3|3|1
9|Orchard|Horn|5|15|2
`)
			t.Channels("line_v=100", "channel|rated_w|load_w\n1|60|45\n2|120|75")
			t.Also("L03-002", "Thornbeck Ice Rink", "fourth job, a separate rack")
			t.Speakers(common, `
rows|zone|model|count|tap_w|channel
10|Curling hall|Column|6|20|1
11|Curling hall foyer|Ceiling|2|3|2
`)
			t.Channels("line_v=100", "channel|rated_w|load_w\n1|120|120\n2|60|6")
		}},

		{File: "Copperleaf/16-044 Speaker Schedule Rev 1.xlsx", Kind: "schedule", Book: book("Schedule", `
COPPERLEAF PLANETARIUM|||||||
Project No.:|16-044||Rev.:|1|Date:|2016-05-02|
Issue:|For construction||||||

Tag|Room|Speaker|Qty|Tap|Zone|Amp|Ch.
SP-A|Lobby|6" ceiling|6|5W|1|AMP1|1
SP-B|Theater entry|6" ceiling|4|5W|1|AMP1|1
SP-C|Exhibit gallery|6" ceiling|10|5W|2|AMP1|2
SP-D|Gift shop|6" ceiling|4|2.5W|3|AMP1|3
SP-E|Offices|6" ceiling|8|1.25W|3|AMP1|3
SP-F|Observing deck|Horn|2|15W|4|AMP1|4

Amp schedule||||||||
AMP1|4-channel 70V amplifier, 60 watts per channel||||||
`, bold("A1", "A5:H5")), Truth: func(t *typed.Truth) {
			t.Is("16-044", "Copperleaf Planetarium", "plain: the first revision of a pair; rating per channel in words")
			t.Revision("1", true)
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=Schedule; amplifier=AMP1", `
rows|tag|room|model|count|tap_w|zone|channel
6|SP-A|Lobby|6" ceiling|6|5|1|1
7|SP-B|Theater entry|6" ceiling|4|5|1|1
8|SP-C|Exhibit gallery|6" ceiling|10|5|2|2
9|SP-D|Gift shop|6" ceiling|4|2.5|3|3
10|SP-E|Offices|6" ceiling|8|1.25|3|3
11|SP-F|Observing deck|Horn|2|15|4|4
`)
			t.Channels("line_v=70.7; amplifier=AMP1; rated_w=60", `
channel|load_w
1|50
2|50
3|20
4|30
`)
			t.Amplifiers("amplifier=AMP1", "rated_w|load_w\n240|150")
		}},

		{File: "Copperleaf/16-044 Speaker Schedule Rev 2 AS BUILT.xlsx", Kind: "schedule", Book: book("Schedule", `
COPPERLEAF PLANETARIUM|||||||
Project No.:|16-044||Rev.:|2|Date:|2016-11-21|
Issue:|Record (as built)||||||

Tag|Room|Speaker|Qty|Tap|Zone|Amp|Ch.
SP-A|Lobby|6" ceiling|6|5W|1|AMP1|1
SP-B|Theater entry|6" ceiling|4|5W|1|AMP1|1
SP-C|Exhibit gallery|6" ceiling|12|5W|2|AMP1|2
SP-D|Gift shop|6" ceiling|4|2.5W|3|AMP1|3
SP-E|Offices|6" ceiling|8|1.25W|3|AMP1|3
SP-F|Observing deck|Horn|3|15W|4|AMP1|4

Amp schedule||||||||
AMP1|4-channel 70V amplifier, 60 watts per channel||||||
`, bold("A1", "A5:H5")), Truth: func(t *typed.Truth) {
			t.Is("16-044", "Copperleaf Planetarium", "plain: the second revision of a pair, as built")
			t.Revision("2", false)
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=Schedule; amplifier=AMP1", `
rows|tag|room|model|count|tap_w|zone|channel
6|SP-A|Lobby|6" ceiling|6|5|1|1
7|SP-B|Theater entry|6" ceiling|4|5|1|1
8|SP-C|Exhibit gallery|6" ceiling|12|5|2|2
9|SP-D|Gift shop|6" ceiling|4|2.5|3|3
10|SP-E|Offices|6" ceiling|8|1.25|3|3
11|SP-F|Observing deck|Horn|3|15|4|4
`)
			t.Channels("line_v=70.7; amplifier=AMP1; rated_w=60", `
channel|load_w
1|50
2|60
3|20
4|45
`)
			t.Amplifiers("amplifier=AMP1", "rated_w|load_w\n240|175")
		}},

		{File: "Brackenholt/AV-SCH-02 general notes and schedule.xlsx", Kind: "schedule", Book: func() *excelize.File {
			p := typed.NewBook("AV-SCH-02")
			p.Put("B2", `
BRACKENHOLT ICE RINK
REFURBISHMENT - PUBLIC ADDRESS
SHEET AV-SCH-02

GENERAL NOTES
1. This sheet is to be read with drawings AV-101 to AV-105.
2. The contractor shall set every transformer tapping as scheduled and record any departure from it.
3. Loudspeaker lines are 100 V. Cable colours as the specification, section W11.
4. Loudspeakers over the ice to be fixed to secondary steelwork with a safety bond.
5. Do not scale.
`)
			p.Put("F30", `
Ref.|Location|Description|No. off|Tapping|Zone|Rack amp.|Line out
A|Over ice pad|Horn, two-way|8|20 W|PAD|RA1|1
B|Seating, north|Line column|6|15 W|STANDS|RA1|2
C|Seating, south|Line column|6|15 W|STANDS|RA1|2
D|Skate exchange|Surface cabinet|4|6 W|FRONT|RA2|1
E|Ticket hall|Recessed|6|3 W|FRONT|RA2|1
F|Team rooms 1-4|Recessed, vandal resistant|8|1.5 W|BACK|RA2|2
G|First aid|Recessed|1|1.5 W|BACK|RA2|2
H|Ice machine bay|Horn|1|10 W|BACK|RA2|2
`)
			p.Put("F41", `
Rack amp.|Outputs|Each output
RA1|2|250 W
RA2|2|125 W
`)
			p.Bold("B2:B4", "B6", "F30:M30", "F41:H41")
			return p.File
		}, Truth: func(t *typed.Truth) {
			t.Is("", "Brackenholt Ice Rink", "a consultant's sheet: notes first, the header in row 30 of column F; outputs rated by frame")
			t.Speakers("tap_v=100; line_v=100; sheet=AV-SCH-02", `
rows|tag|room|model|count|tap_w|zone|amplifier|channel
31|A|Over ice pad|Horn, two-way|8|20|PAD|RA1|1
32|B|Seating, north|Line column|6|15|STANDS|RA1|2
33|C|Seating, south|Line column|6|15|STANDS|RA1|2
34|D|Skate exchange|Surface cabinet|4|6|FRONT|RA2|1
35|E|Ticket hall|Recessed|6|3|FRONT|RA2|1
36|F|Team rooms 1-4|Recessed, vandal resistant|8|1.5|BACK|RA2|2
37|G|First aid|Recessed|1|1.5|BACK|RA2|2
38|H|Ice machine bay|Horn|1|10|BACK|RA2|2
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
RA1|1|250|160
RA1|2|250|180
RA2|1|125|42
RA2|2|125|23.5
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nRA1|500|340\nRA2|250|65.5")
		}},

		{File: "office/price list 2012.xlsx", Kind: "not-a-schedule", Book: book("Trade prices", `
TRADE PRICE LIST - VALID FROM 1 MARCH 2012|||||
Code|Description|Pack|Trade|10+|50+
21-0061|Ceiling loudspeaker 6 W, 100 V line, tappings 6/3/1.5/0.75 W|1|18.40|17.10|15.95
21-0102|Wall cabinet loudspeaker 10 W, 100 V line|1|31.00|28.80|26.90
21-0155|Horn 15 W, 100 V line, grey|1|44.75|41.60|38.80
21-0300|Volume control 24 W, single gang|1|14.20|13.20|12.30
21-0302|Volume control 60 W, double gang|1|26.80|24.90|23.20
21-0410|Mixer amplifier 120 W, 100 V line|1|219.00|204.00|190.00
21-0411|Mixer amplifier 240 W, 100 V line|1|318.00|296.00|276.00
21-0500|Cable 2 core 1.5 mm2, 100 m drum|1|52.00|48.40|45.00
Carriage extra on orders under 150.00|||||
`, bold("A1", "A2:F2")), Truth: stranger("a price list of loudspeakers, controls and amplifiers")},

		{File: "Brackenholt/RA 07 ladder work.xlsx", Kind: "not-a-schedule", Book: book("RA07", `
Risk assessment no.|RA 07|||||
Site|Brackenholt Ice Rink|||||
Task|Replacing horn loudspeakers above the ice pad, 100 V line|||||

No.|Hazard|Who|L|S|Rating|Control measure
1|Fall from tower|Fitters|2|5|10|Trained staff only, outriggers on plywood
2|Falling loudspeaker, 8 kg|Fitters, public|2|4|8|Safety bond on before bracket is loosened, rink closed
3|100 V line live during test|Fitters|2|3|6|Amplifier channel isolated and tagged
4|Slip on ice|Fitters|4|3|12|Matting, ice cleats
5|Noise at test|All|3|2|6|Tone kept under 85 dB(A)
Highest rating||||| 12|
`, bold("A5:G5")), Truth: stranger("a risk assessment whose columns are called rating and control")},
	}
}
