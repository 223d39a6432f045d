package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Hands in Ontario, New South Wales and Alberta.
var commonwealth = []typed.Case{
	// Farid, project engineer in Ontario, issues the device list of a bus depot for construction, room numbers as on the plans.
	{File: "handed in/1140-C PA devices IFC.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Devices")
		p.Put("A1", `
Ashgrove Bus Depot - PA devices, issued for construction 2021-06-02
Project no. 1140-C
||
Room no.|Room name|Type|Qty|Tap (W @ 70 V)|Zone|Volume control
101|Vestibule|C1|2|1|PZ-1|
102|Dispatch|C1|2|1|PZ-1|VC-102
103|Drivers' lounge|C1|4|2|PZ-1|VC-103
104|Lockers|C1|3|2|PZ-1|
105|Training room|C1|4|4|PZ-1|VC-105
110|Service bays 1 to 6|H1|6|15|PZ-2|
111|Service bays 7 to 12|H1|6|15|PZ-2|
112|Parts counter|W1|2|4|PZ-2|VC-112
113|Paint booth|H2|1|15|PZ-2|
120|Storage lanes 1 to 4|H1|8|7.5|PZ-3|
121|Storage lanes 5 to 8|H1|8|7.5|PZ-3|
122|Wash lane|H2|2|15|PZ-3|
130|Yard|H2|4|30|PZ-4|
131|Gatehouse|W1|1|4|PZ-4|VC-131
||
Notes
1. Volume controls are rated 10 W, VC-105 is rated 35 W.
2. C1 ceiling, W1 wall box, H1 horn, H2 weatherproof horn.
`)
		p.Bold("A1", "A4:G4", "A20")
		q := p.Sheet("Amplifiers")
		q.Put("A1", `
Amplifier|Channel|Zone|Output (W)
PA-A|1|PZ-2|300
PA-A|2|PZ-3|300
PA-B|1|PZ-1|150
PA-B|2|PZ-4|150
`)
		q.Bold("A1:D1")
		r := p.Sheet("Cable")
		r.Put("A1", `
Cable|Zone|Length (m)|AWG
C-201|PZ-1|70|16
C-202|PZ-2|145|12
C-203|PZ-3|160|12
C-204|PZ-4|210|14
`)
		r.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("1140-C", "Ashgrove Bus Depot", "plain; zones join three sheets, ratings of the controls in a note with one exception, metres with AWG")
		t.Speakers("sheet=Devices; tap_v=70.7; line_v=70.7; zone=PZ-1; amplifier=PA-B; channel=1", `rows|room|count|tap_w|control
5|Vestibule|2|1|
6|Dispatch|2|1|VC-102
7|Drivers' lounge|4|2|VC-103
8|Lockers|3|2|
9|Training room|4|4|VC-105`)
		t.Speakers("sheet=Devices; tap_v=70.7; line_v=70.7; zone=PZ-2; amplifier=PA-A; channel=1", `rows|room|count|tap_w|control
10|Service bays 1 to 6|6|15|
11|Service bays 7 to 12|6|15|
12|Parts counter|2|4|VC-112
13|Paint booth|1|15|`)
		t.Speakers("sheet=Devices; tap_v=70.7; line_v=70.7; zone=PZ-3; amplifier=PA-A; channel=2", `rows|room|count|tap_w
14|Storage lanes 1 to 4|8|7.5
15|Storage lanes 5 to 8|8|7.5
16|Wash lane|2|15`)
		t.Speakers("sheet=Devices; tap_v=70.7; line_v=70.7; zone=PZ-4; amplifier=PA-B; channel=2", `rows|room|count|tap_w|control
17|Yard|4|30|
18|Gatehouse|1|4|VC-131`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
PA-A|1|300|203
PA-A|2|300|150
PA-B|1|150|34
PA-B|2|150|124`)
		t.Amplifiers("", `amplifier|load_w
PA-A|353
PA-B|158`)
		t.Controls("", `control|zone|rated_w|load_w
VC-102|PZ-1|10|2
VC-103|PZ-1|10|8
VC-105|PZ-1|35|16
VC-112|PZ-2|10|8
VC-131|PZ-4|10|4`)
		t.Lines("note=one length a zone", `line|zone|length_m|area_mm2
C-201|PZ-1|70|1.309
C-202|PZ-2|145|3.309
C-203|PZ-3|160|3.309
C-204|PZ-4|210|2.081`)
	}},

	// Shayne, maintenance sparky in New South Wales, keeps the yearly line test of a boathouse as the regatta committee asks for it.
	{File: "handed in/Tarrawonga line test 2023.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Tarrawonga Boathouse PA - yearly line test 12/02/2023,,,,,,,,
"Amp 4 x 60 W, 100 V, each line has its own output",,,,,,,,
,,,,,,,,
Line,Area,Type,Qty,Tap W,Connected W,Line ohms (1 kHz),Megger,Remarks
1,Boat bay 1,horn,2,10,20,243,>200M,
1,Boat bay 2,horn,2,10,20,,,
2,Erg room,box,4,5,20,318,>200M,"Att A, 30 W"
2,Change rooms,ceiling,4,2.5,10,,,
3,Pontoon,horn,3,15,45,177,38M,"salt in the gland, cleaned"
3,Umpires' stand,horn,1,10,10,,,
4,Meeting room,ceiling,4,2.5,10,371,>200M,"Att B, 15 W"
4,Kitchenette,ceiling,1,1.25,1.25,,,
4,Trophy hall,ceiling,4,2.5,10,,,
4,Stairs,ceiling,2,2.5,5,,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Tarrawonga Boathouse", "test record; lines are the outputs of one amplifier, measured values once a line, controls in remarks")
		t.Speakers("tap_v=100; line_v=100", `rows|channel|room|count|tap_w|control
5|1|Boat bay 1|2|10|
6|1|Boat bay 2|2|10|
7|2|Erg room|4|5|Att A
8|2|Change rooms|4|2.5|
9|3|Pontoon|3|15|
10|3|Umpires' stand|1|10|
11|4|Meeting room|4|2.5|Att B
12|4|Kitchenette|1|1.25|
13|4|Trophy hall|4|2.5|
14|4|Stairs|2|2.5|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
|1|60|40
|2|60|30
|3|60|55
|4|60|26.25`)
		t.Amplifiers("", `amplifier|load_w
|151.25`)
		t.Controls("", `control|rated_w|load_w
Att A|30|20
Att B|15|10`)
	}},

	// Colleen, lighting designer's assistant in Alberta, lists the foyer fixtures of a theatre for the dimmer supplier: no loudspeaker in it.
	{File: "handed in/foyer dimming schedule.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Dimming")
		p.Put("A1", `
Prairie Lantern Theatre - foyer fixtures on dimmers
Job 3306||||120 V
||
Zone|Location|Fixture|Qty|W each|Total W|Dimmer|Channel|Wall station
F1|Main foyer, perimeter|downlight LED|14|12|168|D1|1|WS-1
F1|Main foyer, centre|pendant|6|28|168|D1|2|WS-1
F2|Stair to balcony|step light|22|3|66|D1|3|WS-1
F2|Balcony landing|downlight LED|8|12|96|D1|4|WS-2
F3|Cloakroom|downlight LED|6|12|72|D2|1|
F3|Box office|downlight LED|4|12|48|D2|2|WS-3
F4|Gallery wall|track head|18|15|270|D2|3|WS-4
F4|Gallery cases|strip|9|10|90|D2|4|WS-4
Total|||87||978
||
Dimmer|Channels|Rating per channel (W)|Panel
D1|4|600|LP-2 cct 11
D2|4|600|LP-2 cct 13
`)
		p.Bold("A1", "A4:I4", "A13:F13", "A15:D15")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "lights on dimmers: zones, watts and channels, but no loudspeakers")
		t.Left("Dimming", `5|light|
6|light|
7|light|
8|light|
9|light|
10|light|
11|light|
12|light|
13|total|`)
	}},
}
