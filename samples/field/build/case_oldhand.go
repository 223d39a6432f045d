package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// An old hand in a service firm: terse lists in feet and gauge, 70 V, a dash where there is nothing.
var oldHand = []typed.Case{
	{File: "4417 saltmere rink.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("List")
		p.Put("A1", `
Job 4417  Saltmere Ice Rink  70V  walked with the day man

Amp|Ch|Where|Spkr|Qty|Tap W|VC
A1|1|Rink N side|HN-20|4|10|-
||Rink S side|HN-20|4|10|-
||Rink E end|HN-20|1|5|-
||Rink W end|HN-20|1|5|-
|2|Skate hire|CL-8|3|2.5|VC1
||Lockers|CL-8|4|2.5|VC2
||Rink office|CL-8|1|1|VC3
A2|1|Lobby|CL-8|6|5|VC4
||Stair|WB-6|2|2.5|-
||Resurfacer bay|HN-20|1|5|-
||Store|CL-8|1|.5|-

A1  2 x 120 W
A2  1 x 60 W
VC1, VC2, VC3  10 W
VC4  35 W
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("4417", "Saltmere Ice Rink", "terse list; amplifier and channel stand once; ratings in lines below the list")
		t.Speakers("sheet=List; tap_v=70.7; line_v=70.7; amplifier=A1; channel=1", `rows|room|model|count|tap_w
4|Rink N side|HN-20|4|10
5|Rink S side|HN-20|4|10
6|Rink E end|HN-20|1|5
7|Rink W end|HN-20|1|5`)
		t.Speakers("sheet=List; tap_v=70.7; line_v=70.7; amplifier=A1; channel=2", `rows|room|model|count|tap_w|control
8|Skate hire|CL-8|3|2.5|VC1
9|Lockers|CL-8|4|2.5|VC2
10|Rink office|CL-8|1|1|VC3`)
		t.Speakers("sheet=List; tap_v=70.7; line_v=70.7; amplifier=A2; channel=1", `rows|room|model|count|tap_w|control
11|Lobby|CL-8|6|5|VC4
12|Stair|WB-6|2|2.5|
13|Resurfacer bay|HN-20|1|5|
14|Store|CL-8|1|0.5|`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
A1|1|120|90
A1|2|120|18.5
A2|1|60|40.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1||108.5
A2|60|40.5`)
		t.Controls("", `control|rated_w|load_w
VC1|10|7.5
VC2|10|10
VC3|10|1
VC4|35|30`)
	}},

	{File: "4502 withy pool.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
JOB 4502,WITHY POOL BOATHOUSES,70.7 V,,,,,,
ZONE,AMP,CH,TYPE,QTY,TAP,LOAD,FT,WIRE
Slip A,1,1,horn,6,15,90,220,14/2
Slip B,1,1,horn,4,15,60,310,14/2
Crew room,1,2,ceiling,4,4,16,85,18/2
Oar store,1,2,ceiling,6,2,12,140,18/2
Workshop,1,2,horn,2,7.5,15,160,18/2
Upper deck,2,1,column,4,20,80,240,12/2
Lower deck,2,1,column,4,20,80,265,12/2
Ticket hut,2,2,ceiling,1,1,1,400,18/2
Jetty,2,2,horn,3,7.5,22.5,450,14/2
Car park,2,2,horn,2,15,30,520,12/2
,,,,,,,,
AMP 1,2 ch,200 W/ch,,,,,,
AMP 2,2 ch,200 W/ch,,,,,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("4502", "WITHY POOL BOATHOUSES", "a row a zone with its own cable; ratings in a small block below")
		t.Speakers("tap_v=70.7; line_v=70.7", `rows|zone|amplifier|channel|model|count|tap_w
3|Slip A|1|1|horn|6|15
4|Slip B|1|1|horn|4|15
5|Crew room|1|2|ceiling|4|4
6|Oar store|1|2|ceiling|6|2
7|Workshop|1|2|horn|2|7.5
8|Upper deck|2|1|column|4|20
9|Lower deck|2|1|column|4|20
10|Ticket hut|2|2|ceiling|1|1
11|Jetty|2|2|horn|3|7.5
12|Car park|2|2|horn|2|15`)
		t.Channels("line_v=70.7; rated_w=200", `amplifier|channel|load_w
1|1|150
1|2|43
2|1|160
2|2|53.5`)
		t.Amplifiers("", `amplifier|load_w
1|193
2|213.5`)
		t.Lines("", `zone|length_m|area_mm2
Slip A|67.056|2.0809
Slip B|94.488|2.0809
Crew room|25.908|0.8230
Oar store|42.672|0.8230
Workshop|48.768|0.8230
Upper deck|73.152|3.3088
Lower deck|80.772|3.3088
Ticket hut|121.92|0.8230
Jetty|137.16|2.0809
Car park|158.496|3.3088`)
	}},

	{File: "4533 orchid and palm.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Sheet1")
		p.Put("A1", `
Job 4533|Lamberry Botanical Garden|70V
Amp 1, one output, 250 W

No|Room|Spkr|Tap
VC 1  35 W  Orchid house
1|Orchid N|CL-8|2.5
2|Orchid N|CL-8|2.5
3|Orchid S|CL-8|2.5
4|Orchid S|CL-8|2.5
5|Orchid porch|WB-6|5
VC 2  50 W  Palm house
6|Palm floor|WB-6|10
7|Palm floor|WB-6|10
8|Palm gallery|WB-6|5
9|Palm gallery|WB-6|5
10|Palm gallery|WB-6|5
VC 3  10 W  Seed room
11|Seed room|CL-8|1
12|Seed room|CL-8|1
13|Label room|CL-8|2.5
No VC
14|Cloister|HN-20|15
15|Cloister|HN-20|15
16|Yard|HN-20|15
17|Yard (out, box blanked)|HN-20|-

All wire 16/2, VC leads under 50 ft
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("4533", "Lamberry Botanical Garden", "controls as section titles; one loudspeaker taken out")
		t.Speakers("sheet=Sheet1; tap_v=70.7; line_v=70.7; amplifier=1", `rows|tag|room|model|tap_w|control
6|1|Orchid N|CL-8|2.5|VC 1
7|2|Orchid N|CL-8|2.5|VC 1
8|3|Orchid S|CL-8|2.5|VC 1
9|4|Orchid S|CL-8|2.5|VC 1
10|5|Orchid porch|WB-6|5|VC 1
12|6|Palm floor|WB-6|10|VC 2
13|7|Palm floor|WB-6|10|VC 2
14|8|Palm gallery|WB-6|5|VC 2
15|9|Palm gallery|WB-6|5|VC 2
16|10|Palm gallery|WB-6|5|VC 2
18|11|Seed room|CL-8|1|VC 3
19|12|Seed room|CL-8|1|VC 3
20|13|Label room|CL-8|2.5|VC 3
22|14|Cloister|HN-20|15|
23|15|Cloister|HN-20|15|
24|16|Yard|HN-20|15|`)
		t.Speakers("sheet=Sheet1; amplifier=1; status=removed", `rows|tag|model
25|17|HN-20`)
		t.Channels("line_v=70.7", `amplifier|rated_w|load_w
1|250|99.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
1|250|99.5`)
		t.Controls("", `control|zone|rated_w|load_w
VC 1|Orchid house|35|15
VC 2|Palm house|50|35
VC 3|Seed room|10|4.5`)
		t.Left("Sheet1", `5|title|control and its rating
11|title|control and its rating
17|title|control and its rating
21|title|no control from here on`)
	}},
}
