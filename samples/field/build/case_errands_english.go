package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// errandsEnglish are a rink office, a consultant and a maintenance firm.
var errandsEnglish = []typed.Case{
	{File: "errands/rink office/Larchmere rink PA as-built.xlsx", Kind: "schedule", Book: func() *excelize.File {
		c := typed.NewBook("Cover")
		c.Put("A1", `
Larchmere Ice Rink
Public address system, as-built record
||
Job|24-118
Line voltage|70.7 V
Sheets|Speakers, Rack, Volume controls
Speakers in total|46
Filed by|rink office, after change-over of the rack
`)
		c.Bold("A1:A2")
		p := c.Sheet("Speakers")
		p.Put("A1", `
Zone|Location|Type|Qty|Tap W
Ice|Dasher boards, north side|horn|6|30
Ice|Dasher boards, south side|horn|6|30
Bleachers|Lower rows|wall box|8|10
Bleachers|Upper rows|wall box|6|10
Lobby|Ticket window|ceiling|1|2.5
Lobby|Main entrance|ceiling|5|5
Skate hire|Counter|ceiling|2|5
Skate hire|Bench area|ceiling|4|5
Locker rooms|Home|ceiling|2|2.5
Locker rooms|Visitors|ceiling|2|2.5
Locker rooms|Officials|ceiling|1|2.5
Offices|Manager|ceiling|1|1
Offices|Meeting room|ceiling|2|2.5
`)
		p.Bold("A1:E1")
		q := c.Sheet("Rack")
		q.Put("A1", `
Rack R1, in the resurfacer garage
||
Unit|Amp|Ch.|Rated W|Zone fed|Feeder (AWG/cond.)|Length (ft)
U4|AMP-1|1|500|Ice|12/2|210
U6|AMP-2|1|250|Bleachers|12/2|165
U6|AMP-2|2|250|Lobby|16/2|90
U8|AMP-3|1|60|Skate hire|16/2|120
U8|AMP-3|2|60|Locker rooms|16/2|140
U8|AMP-3|3|60|Offices|18/2|75
`)
		q.Bold("A1", "A3:G3")
		r := c.Sheet("Volume controls")
		r.Put("A1", `
Control|Zone controlled|Rating|Where
VC-1|Lobby|35 W|Beside the ticket window
VC-2|Skate hire|35 W|Behind the counter
VC-3|Offices|10 W|Meeting room door
`)
		r.Bold("A1:D1")
		return c.File
	}, Truth: func(t *typed.Truth) {
		t.Is("24-118", "Larchmere Ice Rink", "cover sheet with job and voltage; outputs, feeders (AWG, feet) and controls joined by zone names")
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Ice; amplifier=AMP-1; channel=1", `rows|room|count|tap_w
2|Dasher boards, north side|6|30
3|Dasher boards, south side|6|30`)
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Bleachers; amplifier=AMP-2; channel=1", `rows|room|count|tap_w
4|Lower rows|8|10
5|Upper rows|6|10`)
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Lobby; amplifier=AMP-2; channel=2; control=VC-1", `rows|room|count|tap_w
6|Ticket window|1|2.5
7|Main entrance|5|5`)
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Skate hire; amplifier=AMP-3; channel=1; control=VC-2", `rows|room|count|tap_w
8|Counter|2|5
9|Bench area|4|5`)
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Locker rooms; amplifier=AMP-3; channel=2", `rows|room|count|tap_w
10|Home|2|2.5
11|Visitors|2|2.5
12|Officials|1|2.5`)
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Offices; amplifier=AMP-3; channel=3; control=VC-3", `rows|room|count|tap_w
13|Manager|1|1
14|Meeting room|2|2.5`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
AMP-1|1|500|360
AMP-2|1|250|140
AMP-2|2|250|27.5
AMP-3|1|60|30
AMP-3|2|60|12.5
AMP-3|3|60|6`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP-1|500|360
AMP-2||167.5
AMP-3||48.5`)
		t.Controls("", `control|zone|rated_w|load_w
VC-1|Lobby|35|27.5
VC-2|Skate hire|35|30
VC-3|Offices|10|6`)
		t.Lines("note=one length a zone, feeder from the rack", `zone|length_m|area_mm2
Ice|64.008|3.31
Bleachers|50.292|3.31
Lobby|27.432|1.31
Skate hire|36.576|1.31
Locker rooms|42.672|1.31
Offices|22.86|0.823`)
	}},

	{File: "errands/consultant/0932 Thistlewick School handover.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Loudspeakers")
		p.Put("A1", `
Thistlewick School: sound system, 100 V line
Project 0932, issued for handover
||
Ref|Room|Circuit|Type|Tapping (W)
LS01|Main hall|1|column|20
LS02|Main hall|1|column|20
LS03|Main hall|1|column|20
LS04|Main hall|1|column|20
LS05|Stage|1|cabinet|10
LS06|Corridor A|2|ceiling|3
LS07|Corridor A|2|ceiling|3
LS08|Corridor A|2|ceiling|3
LS09|Library|2|ceiling|1.5
LS10|Library|2|ceiling|1.5
LS11|Staff room|2|ceiling|1.5
LS12|Gymnasium|3|horn|15
LS13|Gymnasium|3|horn|15
LS14|Changing room|3|ceiling|3
LS15|Playground|4|horn|15
LS16|Playground|4|horn|15
LS17|Bus turning circle|4|horn|15
LS18|Cycle shed|4|horn|not fitted, omitted by instruction 7
`)
		p.Bold("A1:A2", "A4:E4")
		q := p.Sheet("Amplifiers")
		q.Put("A1", `
Circuit|Amplifier|Output|Rating (W)
1|PA1|A|120
2|PA1|B|120
3|PA2|A|60
4|PA2|B|60
||
Attenuator|Loudspeakers|Rating (W)|Position
AT1|LS01 to LS04|100|Stage left
AT2|LS09, LS10|6|Issue desk
AT3|LS11|3|By the door
`)
		q.Bold("A1:D1", "A7:D7")
		r := p.Sheet("Test record")
		r.Put("A1", `
Circuit|Amplifier / output|Expected (W)|Impedance at 1 kHz (ohm)|Insulation (Mohm)|Result
1|PA1 / A|90|112|over 20|pass
2|PA1 / B|13.5|735|over 20|pass
3|PA2 / A|33|302|over 20|pass
4|PA2 / B|45|223|12|pass
||
Tested with all attenuators at full
`)
		r.Bold("A1:F1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("0932", "Thistlewick School", "circuits joined to outputs on a second sheet, attenuators by tags and a range of tags, a test record with loads that are not loudspeakers, one horn never fitted")
		t.Speakers("sheet=Loudspeakers; tap_v=100; line_v=100; amplifier=PA1; channel=A", `rows|tag|room|tap_w|control
5|LS01|Main hall|20|AT1
6|LS02|Main hall|20|AT1
7|LS03|Main hall|20|AT1
8|LS04|Main hall|20|AT1
9|LS05|Stage|10|`)
		t.Speakers("sheet=Loudspeakers; tap_v=100; line_v=100; amplifier=PA1; channel=B", `rows|tag|room|tap_w|control
10|LS06|Corridor A|3|
11|LS07|Corridor A|3|
12|LS08|Corridor A|3|
13|LS09|Library|1.5|AT2
14|LS10|Library|1.5|AT2
15|LS11|Staff room|1.5|AT3`)
		t.Speakers("sheet=Loudspeakers; tap_v=100; line_v=100; amplifier=PA2; channel=A", `rows|tag|room|tap_w
16|LS12|Gymnasium|15
17|LS13|Gymnasium|15
18|LS14|Changing room|3`)
		t.Speakers("sheet=Loudspeakers; tap_v=100; line_v=100; amplifier=PA2; channel=B", `rows|tag|room|tap_w
19|LS15|Playground|15
20|LS16|Playground|15
21|LS17|Bus turning circle|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
PA1|A|120|90
PA1|B|120|13.5
PA2|A|60|33
PA2|B|60|45`)
		t.Amplifiers("", `amplifier|load_w
PA1|103.5
PA2|78`)
		t.Controls("", `control|rated_w|load_w
AT1|100|80
AT2|6|3
AT3|3|1.5`)
		t.Left("Loudspeakers", `22|not fitted|omitted by instruction`)
		t.Left("Test record", `2|test|load of a circuit
3|test|load of a circuit
4|test|load of a circuit
5|test|load of a circuit`)
	}},

	{File: "errands/stations/Fennimore Junction list.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("PA")
		p.Put("B2", `
Fennimore Junction, public address
One rack amplifier, 4 outputs of 120 W each, 100 V
||
Area|Position|No.|Tap|Output|Volume control
Platform 1|Canopy|8|6 W|1|
Platform 1|Foot of the footbridge|2|10 W|1|
Platform 2|Canopy|8|6 W|2|
Platform 2|Ramp|2|10 W|2|
Concourse|Hall ceiling|6|6 W|3|VC1
Concourse|Left luggage|1|3 W|3|none
Waiting room|Ceiling|2|3 W|4|VC2
Ticket office|Ceiling|1|1.5 W|4|VC3
Mess room|Wall|1|3 W|4|VC4
||
VC1 is rated 50 W, VC2 12 W, VC3 and VC4 6 W each.
`)
		p.Bold("B2", "B5:G5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Fennimore Junction", "plain list that starts in B2; an amplifier without a name with four outputs rated in the title, control ratings in a closing sentence")
		t.Speakers("sheet=PA; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|channel|control
6|Platform 1|Canopy|8|6|1|
7|Platform 1|Foot of the footbridge|2|10|1|
8|Platform 2|Canopy|8|6|2|
9|Platform 2|Ramp|2|10|2|
10|Concourse|Hall ceiling|6|6|3|VC1
11|Concourse|Left luggage|1|3|3|
12|Waiting room|Ceiling|2|3|4|VC2
13|Ticket office|Ceiling|1|1.5|4|VC3
14|Mess room|Wall|1|3|4|VC4`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
|1|120|68
|2|120|68
|3|120|39
|4|120|10.5`)
		t.Amplifiers("", `amplifier|load_w
|185.5`)
		t.Controls("", `control|rated_w|load_w
VC1|50|36
VC2|12|6
VC3|6|1.5
VC4|6|3`)
	}},
}
