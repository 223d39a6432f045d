package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A designer of voice alarm: every area on two circuits, A and B.
var alarmDesigner = []typed.Case{
	{File: "VA-77 Penhallow/VA loudspeakers P2.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Loudspeakers")
		p.Put("A1", `
Voice alarm system - loudspeaker schedule
Project|VA-77|Penhallow Ice Rink|Revision|P2|100 V

Device|Area|Evacuation zone|Circuit|Type|Tap W
VA/001|Foyer|EZ1|1A|Ceiling|6
VA/002|Foyer|EZ1|1B|Ceiling|6
VA/003|Foyer|EZ1|1A|Ceiling|6
VA/004|Foyer|EZ1|1B|Ceiling|6
VA/005|Foyer|EZ1|1A|Ceiling|6
VA/006|Skate hire|EZ1|1B|Ceiling|3
VA/007|Skate hire|EZ1|1A|Ceiling|3
VA/008|Skate hire|EZ1|1B|Ceiling|3
VA/009|Ice hall|EZ2|2A|Horn|20
VA/010|Ice hall|EZ2|2B|Horn|20
VA/011|Ice hall|EZ2|2A|Horn|20
VA/012|Ice hall|EZ2|2B|Horn|20
VA/013|Ice hall|EZ2|2A|Horn|20
VA/014|Ice hall|EZ2|2B|Horn|20
VA/015|Stand|EZ2|2A|Column|15
VA/016|Stand|EZ2|2B|Column|15
VA/017|Stand|EZ2|2A|Column|15
VA/018|Stand|EZ2|2B|Column|15
VA/019|Changing 1|EZ3|3A|Ceiling|3
VA/020|Changing 1|EZ3|3B|Ceiling|3
VA/021|Changing 2|EZ3|3A|Ceiling|3
VA/022|Changing 2|EZ3|3B|Ceiling|3
VA/023|Passage|EZ3|3A|Ceiling|1.5
VA/024|Passage|EZ3|3B|Ceiling|1.5
VA/025|Plant room|EZ3|3A|Horn|10
VA/026|Plant room|EZ3|3B|Horn|10
`)
		c := p.Sheet("Circuits")
		c.Put("A1", `
Circuit|Amplifier|Output|Rated output W|Cable|Length m
1A|AMP-1|1|60|2c 1.5 mm² fire resistant|62
1B|AMP-2|1|60|2c 1.5 mm² fire resistant|66
2A|AMP-1|2|120|2c 2.5 mm² fire resistant|128
2B|AMP-2|2|120|2c 2.5 mm² fire resistant|134
3A|AMP-1|3|60|2c 1.5 mm² fire resistant|81
3B|AMP-2|3|60|2c 1.5 mm² fire resistant|85
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("VA-77", "Penhallow Ice Rink", "A and B circuits alternate; title block in one row")
		t.Revision("P2", false)
		t.Speakers("sheet=Loudspeakers; tap_v=100; line_v=100; zone=EZ1; amplifier=AMP-1; channel=1; model=Ceiling", `rows|tag|room|tap_w
5|VA/001|Foyer|6
7|VA/003|Foyer|6
9|VA/005|Foyer|6
11|VA/007|Skate hire|3`)
		t.Speakers("sheet=Loudspeakers; tap_v=100; line_v=100; zone=EZ1; amplifier=AMP-2; channel=1; model=Ceiling", `rows|tag|room|tap_w
6|VA/002|Foyer|6
8|VA/004|Foyer|6
10|VA/006|Skate hire|3
12|VA/008|Skate hire|3`)
		t.Speakers("sheet=Loudspeakers; tap_v=100; line_v=100; zone=EZ2; amplifier=AMP-1; channel=2", `rows|tag|room|model|tap_w
13|VA/009|Ice hall|Horn|20
15|VA/011|Ice hall|Horn|20
17|VA/013|Ice hall|Horn|20
19|VA/015|Stand|Column|15
21|VA/017|Stand|Column|15`)
		t.Speakers("sheet=Loudspeakers; tap_v=100; line_v=100; zone=EZ2; amplifier=AMP-2; channel=2", `rows|tag|room|model|tap_w
14|VA/010|Ice hall|Horn|20
16|VA/012|Ice hall|Horn|20
18|VA/014|Ice hall|Horn|20
20|VA/016|Stand|Column|15
22|VA/018|Stand|Column|15`)
		t.Speakers("sheet=Loudspeakers; tap_v=100; line_v=100; zone=EZ3; amplifier=AMP-1; channel=3", `rows|tag|room|model|tap_w
23|VA/019|Changing 1|Ceiling|3
25|VA/021|Changing 2|Ceiling|3
27|VA/023|Passage|Ceiling|1.5
29|VA/025|Plant room|Horn|10`)
		t.Speakers("sheet=Loudspeakers; tap_v=100; line_v=100; zone=EZ3; amplifier=AMP-2; channel=3", `rows|tag|room|model|tap_w
24|VA/020|Changing 1|Ceiling|3
26|VA/022|Changing 2|Ceiling|3
28|VA/024|Passage|Ceiling|1.5
30|VA/026|Plant room|Horn|10`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP-1|1|60|21
AMP-2|1|60|18
AMP-1|2|120|90
AMP-2|2|120|90
AMP-1|3|60|17.5
AMP-2|3|60|17.5`)
		t.Amplifiers("", `amplifier|load_w
AMP-1|128.5
AMP-2|125.5`)
		t.Lines("", `line|length_m|area_mm2
1A|62|1.5
1B|66|1.5
2A|128|2.5
2B|134|2.5
3A|81|1.5
3B|85|1.5`)
	}},

	{File: "VA-81 Trevarth/VA-81 area sheet.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Areas")
		p.Put("A1", `
Voice alarm area sheet|Project VA-81|Trevarth Planetarium||100 V line

Area|Type|A circuit||B circuit||Amplifier outputs
||Qty|Tap W|Qty|Tap W|A|B
Entrance|Ceiling|4|6|4|6|AMP1-1|AMP2-1
Cloakroom|Ceiling|1|3|1|3|AMP1-1|AMP2-1
Dome|Column|5|10|5|10|AMP1-2|AMP2-2
Ring corridor|Ceiling|8|3|8|3|AMP1-3|AMP2-3
Meteor hall|Cabinet|3|10|3|10|AMP1-4|AMP2-4
Bookstall|Ceiling|2|3|1|3|AMP1-4|AMP2-4
Lecture hall|Column|2|15|2|15|AMP1-5|AMP2-5
Plant level|Horn|2|10|2|10|AMP1-6|AMP2-6
Stair 1|Cabinet|2|5|2|5|AMP1-6|AMP2-6
Stair 2|Cabinet|2|5|2|5|AMP1-6|AMP2-6

Each amplifier has six outputs of 60 W.
`)
		p.Merge("A3:A4", "B3:B4", "C3:D3", "E3:F3", "G3:H3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("VA-81", "Trevarth Planetarium", "both circuits of an area in one row, under merged headings")
		t.Speakers("sheet=Areas; tap_v=100; line_v=100; amplifier=AMP1", `rows|room|model|count|tap_w|channel
5|Entrance|Ceiling|4|6|1
6|Cloakroom|Ceiling|1|3|1
7|Dome|Column|5|10|2
8|Ring corridor|Ceiling|8|3|3
9|Meteor hall|Cabinet|3|10|4
10|Bookstall|Ceiling|2|3|4
11|Lecture hall|Column|2|15|5
12|Plant level|Horn|2|10|6
13|Stair 1|Cabinet|2|5|6
14|Stair 2|Cabinet|2|5|6`)
		t.Speakers("sheet=Areas; tap_v=100; line_v=100; amplifier=AMP2", `rows|room|model|count|tap_w|channel
5|Entrance|Ceiling|4|6|1
6|Cloakroom|Ceiling|1|3|1
7|Dome|Column|5|10|2
8|Ring corridor|Ceiling|8|3|3
9|Meteor hall|Cabinet|3|10|4
10|Bookstall|Ceiling|1|3|4
11|Lecture hall|Column|2|15|5
12|Plant level|Horn|2|10|6
13|Stair 1|Cabinet|2|5|6
14|Stair 2|Cabinet|2|5|6`)
		t.Channels("line_v=100; rated_w=60", `amplifier|channel|load_w
AMP1|1|27
AMP1|2|50
AMP1|3|24
AMP1|4|36
AMP1|5|30
AMP1|6|40
AMP2|1|27
AMP2|2|50
AMP2|3|24
AMP2|4|33
AMP2|5|30
AMP2|6|40`)
		t.Amplifiers("", `amplifier|load_w
AMP1|207
AMP2|204`)
	}},

	{File: "VA-90 Carnmoor/VA-90_circuit_loads.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Project,VA-90 Carnmoor Botanical Garden,,,,,,,,
System,Voice alarm 100 V,,,,,,,,
Zone,Circuit,Amplifier,Output,Rated (W),Loudspeaker type,Quantity,Tap (W),Load (W),Load + 20 % reserve (W)
1 Glasshouse,1A,M1,1,120,Projector,4,10,40,48
1 Glasshouse,1B,M2,1,120,Projector,4,10,40,48
2 Entrance,2A,M1,2,60,Ceiling,5,6,30,36
2 Entrance,2B,M2,2,60,Ceiling,5,6,30,36
3 Offices,3A,M1,3,60,Ceiling,7,3,21,25.2
3 Offices,3B,M2,3,60,Ceiling,6,3,18,21.6
4 Stores,4A,M1,4,60,Cabinet,3,5,15,18
4 Stores,4B,M2,4,60,Cabinet,3,5,15,18
5 Terrace,5A,M1,5,60,Horn,3,15,45,54
5 Terrace,5B,M2,5,60,Horn,4,15,60,72
6 Plant,6A,M1,6,60,Horn,2,7.5,15,18
6 Plant,6B,M2,6,60,Horn,2,7.5,15,18
,,,,,Total,48,,344,412.8
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("VA-90", "Carnmoor Botanical Garden", "a row a circuit; load and load with a reserve side by side")
		t.Speakers("tap_v=100; line_v=100", `rows|zone|model|count|tap_w|amplifier|channel
4|1 Glasshouse|Projector|4|10|M1|1
5|1 Glasshouse|Projector|4|10|M2|1
6|2 Entrance|Ceiling|5|6|M1|2
7|2 Entrance|Ceiling|5|6|M2|2
8|3 Offices|Ceiling|7|3|M1|3
9|3 Offices|Ceiling|6|3|M2|3
10|4 Stores|Cabinet|3|5|M1|4
11|4 Stores|Cabinet|3|5|M2|4
12|5 Terrace|Horn|3|15|M1|5
13|5 Terrace|Horn|4|15|M2|5
14|6 Plant|Horn|2|7.5|M1|6
15|6 Plant|Horn|2|7.5|M2|6`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
M1|1|120|40
M2|1|120|40
M1|2|60|30
M2|2|60|30
M1|3|60|21
M2|3|60|18
M1|4|60|15
M2|4|60|15
M1|5|60|45
M2|5|60|60
M1|6|60|15
M2|6|60|15`)
		t.Amplifiers("", `amplifier|load_w
M1|166
M2|178`)
		t.Left("", `16|total|all circuits`)
	}},
}
