package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A service engineer, an estimator, an American consultant and a retrofit technician.
var plainEnglish = []typed.Case{
	typed.Case{File: "plain/Tarn Lane pool PA check.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Tarn Lane Swimming Pool,,,,,,,
Annual PA check - contract M/3308,,,,,,,
Ref,Area,Location,Speaker,Qty,Tap W,Amp ch,Result
1,Pool hall,North wall,wet-area horn,3,15,A1,OK
2,Pool hall,South wall,wet-area horn,3,15,A1,OK
3,Pool hall,Diving end,wet-area horn,1,10,A1,OK
4,Learner pool,Window side,wall box,4,6,A2,OK
5,Learner pool,Steps,wall box,1,6,A2,buzzes at high level - re-tightened
6,Changing village,Dry side,ceiling,6,3,A3,OK
7,Changing village,Wet side,ceiling,6,3,A3,OK
8,Changing village,Family rooms,ceiling,4,1.5,A3,grille rusty
9,Foyer,Desk,ceiling,2,3,A4,OK
10,Foyer,Stairs,ceiling,2,3,A4,OK
11,Foyer,Viewing gallery,wall box,3,6,A4,OK
,,,,,,,
Amp channel,Rated W,Volume control,VC W,,,,
A1,240,none,,,,,
A2,120,VC2,60,,,,
A3,120,VC3,50,,,,
A4,60,VC4,36,,,,
,,,,,,,
All lines 100 V. Next check due in March.,,,,,,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("M/3308", "Tarn Lane Swimming Pool", "plain test record; channels and volume controls in a table below")
		t.Speakers("tap_v=100; line_v=100; zone=Pool hall; amplifier=A; channel=1", `rows|tag|room|count|tap_w
4|1|North wall|3|15
5|2|South wall|3|15
6|3|Diving end|1|10`)
		t.Speakers("tap_v=100; line_v=100; zone=Learner pool; amplifier=A; channel=2; control=VC2", `rows|tag|room|count|tap_w
7|4|Window side|4|6
8|5|Steps|1|6`)
		t.Speakers("tap_v=100; line_v=100; zone=Changing village; amplifier=A; channel=3; control=VC3", `rows|tag|room|count|tap_w
9|6|Dry side|6|3
10|7|Wet side|6|3
11|8|Family rooms|4|1.5`)
		t.Speakers("tap_v=100; line_v=100; zone=Foyer; amplifier=A; channel=4; control=VC4", `rows|tag|room|count|tap_w
12|9|Desk|2|3
13|10|Stairs|2|3
14|11|Viewing gallery|3|6`)
		t.Channels("line_v=100; amplifier=A", `channel|rated_w|load_w
1|240|100
2|120|30
3|120|42
4|60|30`)
		t.Amplifiers("", `amplifier|load_w
A|202`)
		t.Controls("", `control|rated_w|load_w
VC2|60|30
VC3|50|42
VC4|36|30`)
	}},

	{File: "plain/T-187 tram depot BoQ.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Bill 7")
		p.Put("A1", `
Hexley Tram Depot - Tender T-187
Bill 7: Public address, 100 V line. Cabling and containment by others.
||
Item|Description|Unit|Qty|Rate|Amount
A|RUNNING SHED (from amplifier PA1)
A1|Horn loudspeaker, tapped at 15 W|nr|8|62|496
A2|Horn loudspeaker, tapped at 10 W|nr|4|62|248
A3|Bracket for horn, galvanised|nr|12|4.5|54
B|OFFICES AND MESS ROOM (from amplifier PA2)
B1|Ceiling loudspeaker, tapped at 3 W|nr|9|21|189
B2|Ceiling loudspeaker, tapped at 1.5 W|nr|4|21|84
B3|Ceiling loudspeaker in mess room, tapped at 3 W|nr|4|21|84
B4|Attenuator ATT1, 15 W, for item B3|nr|1|28|28
C|YARD AND WASH ROAD (from amplifier PA3)
C1|Horn loudspeaker on lighting mast, tapped at 15 W|nr|5|88|440
C2|Wall box under canopy, tapped at 6 W|nr|3|34|102
D|EQUIPMENT ROOM
D1|Amplifier PA1, 240 W|nr|1|640|640
D2|Amplifier PA2, 60 W|nr|1|290|290
D3|Amplifier PA3, 120 W|nr|1|410|410
D4|Paging microphone with gong|nr|2|155|310
E|SPARES TO CLIENT'S STORE
E1|Horn loudspeaker, tapped at 15 W|nr|2|62|124
F|Testing, commissioning and record drawings|item|1|900|900
|Carried to summary||||4399
`)
		p.Bold("A1", "A4:F4", "A5:B5", "A9:B9", "A14:B14", "A17:B17", "A22:B22", "B25:F25")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("T-187", "Hexley Tram Depot", "bill of quantities: taps in descriptions, amplifiers in section titles and rated as items further down, spares")
		t.Speakers("sheet=Bill 7; tap_v=100; line_v=100; zone=RUNNING SHED; amplifier=PA1; note=area as zone", `rows|count|tap_w
6|8|15
7|4|10`)
		t.Speakers("sheet=Bill 7; tap_v=100; line_v=100; zone=OFFICES AND MESS ROOM; amplifier=PA2; note=area as zone", `rows|room|count|tap_w|control
10||9|3|
11||4|1.5|
12|mess room|4|3|ATT1`)
		t.Speakers("sheet=Bill 7; tap_v=100; line_v=100; zone=YARD AND WASH ROAD; amplifier=PA3; note=area as zone", `rows|count|tap_w
15|5|15
16|3|6`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
PA1|240|160
PA2|60|45
PA3|120|93`)
		t.Amplifiers("", `amplifier|rated_w|load_w
PA1|240|160
PA2|60|45
PA3|120|93`)
		t.Controls("", `control|rated_w|load_w
ATT1|15|12`)
		t.Left("Bill 7", `8|accessory|brackets
13|control|attenuator
18|amplifier|
19|amplifier|
20|amplifier|
21|microphone|
23|spare|for the client's store
24|service|testing
25|total|sum`)
	}},

	{File: "plain/20-114 speaker schedule.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Speakers")
		p.Put("A1", `
Juniper Hollow Science Museum
Project 20-114, paging, 70 V
||
Zone|Room|Speaker|Qty|Tap (W)|Total (W)
Lobby|Main lobby|8" ceiling|6|5|30
Lobby|Ticketing|8" ceiling|2|2.5|5
Exhibits|Earth hall|surface|8|10|80
Exhibits|Water hall|surface|6|10|60
Exhibits|Corridor 120|8" ceiling|4|5|20
Classrooms|Classroom A|8" ceiling|2|2.5|5
Classrooms|Classroom B|8" ceiling|2|2.5|5
Classrooms|Workshop|surface|2|5|10
Outdoor|Bus loop|horn|4|15|60
Outdoor|Courtyard|horn|3|7.5|22.5
Total|||39||297.5
`)
		p.Bold("A1", "A4:F4", "A15:F15")
		q := p.Sheet("Amps")
		q.Put("A1", `
Amp|Ch|Zone|Rating (W)|Volume control|VC rating (W)
AMP-1|1|Lobby|125|VC-L|50
AMP-1|2|Exhibits|250||
AMP-1|3|Classrooms|125|VC-C|25
AMP-1|4|Outdoor|125||
`)
		q.Bold("A1:F1")
		r := p.Sheet("Home runs")
		r.Put("A1", `
Zone|Length (ft)|Cable
Lobby|210|16 AWG
Exhibits|340|12 AWG
Classrooms|180|16 AWG
Outdoor|425|12 AWG
`)
		r.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("20-114", "Juniper Hollow Science Museum", "plain; channels, controls and cables by zone on further sheets; feet and AWG")
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Lobby; amplifier=AMP-1; channel=1; control=VC-L", `rows|room|count|tap_w
5|Main lobby|6|5
6|Ticketing|2|2.5`)
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Exhibits; amplifier=AMP-1; channel=2", `rows|room|count|tap_w
7|Earth hall|8|10
8|Water hall|6|10
9|Corridor 120|4|5`)
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Classrooms; amplifier=AMP-1; channel=3; control=VC-C", `rows|room|count|tap_w
10|Classroom A|2|2.5
11|Classroom B|2|2.5
12|Workshop|2|5`)
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Outdoor; amplifier=AMP-1; channel=4", `rows|room|count|tap_w
13|Bus loop|4|15
14|Courtyard|3|7.5`)
		t.Channels("line_v=70.7; amplifier=AMP-1", `channel|rated_w|load_w
1|125|35
2|250|160
3|125|20
4|125|82.5`)
		t.Amplifiers("", `amplifier|load_w
AMP-1|297.5`)
		t.Controls("", `control|zone|rated_w|load_w
VC-L|Lobby|50|35
VC-C|Classrooms|25|20`)
		t.Lines("note=home run, one length a zone", `zone|length_m|area_mm2
Lobby|64.008|1.31
Exhibits|103.632|3.31
Classrooms|54.864|1.31
Outdoor|129.54|3.31`)
		t.Left("Speakers", `15|total|sum`)
	}},

	{File: "plain/Brackenmoor retrofit.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Retrofit")
		p.Put("A1", `
Brackenmoor Planetarium - PA retrofit, job 5521
New amplifier AMP-A, two outputs of 120 W each. All lines now run at 70 V.
Old boxes stay up. Their taps are printed for the former 100 V line, so at 70 V each draws half of what is printed.
||
Room|Box|Qty|Tap W|Printed for|Output|Remarks
Dome|old wall box|8|10|100 V|1|
Dome|new wall box|2|7.5|70 V|1|
Ring corridor|old ceiling|6|6|100 V|2|
Foyer|old ceiling|4|6|100 V|2|
Foyer|new ceiling|2|3|70 V|2|
Lecture room|new ceiling|4|3|70 V|2|on VC1 (24 W)
Shop|old ceiling|2|3|100 V|2|
Workshop|old horn|1|10|100 V|2|taken down 12 May, not refitted
Roof deck|old horn|2|10|100 V|1|cable renewed
`)
		p.Bold("A1", "A5:G5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5521", "Brackenmoor Planetarium", "taps printed for 100 V on a 70 V line, mixed with new ones for 70 V; one taken down")
		t.Speakers("sheet=Retrofit; line_v=70.7; amplifier=AMP-A", `rows|room|count|tap_w|tap_v|channel|control
6|Dome|8|10|100|1|
7|Dome|2|7.5|70.7|1|
8|Ring corridor|6|6|100|2|
9|Foyer|4|6|100|2|
10|Foyer|2|3|70.7|2|
11|Lecture room|4|3|70.7|2|VC1
12|Shop|2|3|100|2|
14|Roof deck|2|10|100|1|`)
		t.Channels("line_v=70.7; amplifier=AMP-A", `channel|rated_w|load_w
1|120|65
2|120|51`)
		t.Amplifiers("", `amplifier|load_w
AMP-A|116`)
		t.Controls("", `control|rated_w|load_w
VC1|24|12`)
		t.Left("Retrofit", `13|removed|taken down`)
	}},
}
