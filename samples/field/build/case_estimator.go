package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// An estimator: bid sheets with items, units and prices, sections by area.
var estimator = []typed.Case{
	{File: "bids/B-0691 Heron Quay boathouse.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Bid")
		p.Put("A1", `
Bid no.|B-0691
Job|Heron Quay Boathouse, public address, 70.7 V
Prepared for|The trust's buildings office

Item|Description|Qty|Unit|Tap W|Fed from|Unit price|Extended
1|BOAT BAYS
1.1|Weatherproof horn, bay 1|3|ea|10|A1-1|118|354
1.2|Weatherproof horn, bay 2|3|ea|10|A1-1|118|354
1.3|Weatherproof horn, bay 3|2|ea|10|A1-1|118|236
|Subtotal boat bays|||||||944
2|CREW AREAS
2.1|Ceiling loudspeaker, crew room, behind VC-1|6|ea|4|A1-2|62|372
2.2|Ceiling loudspeaker, locker rooms|8|ea|2|A1-2|62|496
2.3|Ceiling loudspeaker, hall|4|ea|4|A1-2|62|248
2.4|Wall volume control VC-1, crew room, 35 W|1|ea||A1-2|71|71
|Subtotal crew areas|||||||1187
3|WATERFRONT
3.1|Column loudspeaker, pontoon|4|ea|20|A2-1|240|960
3.2|Weatherproof horn, launch|2|ea|15|A2-1|118|236
3.3|Weatherproof horn, spare, to stores|1|ea|||118|118
|Subtotal waterfront|||||||1314
4|RACK
4.1|Power amplifier A1, 2 x 125 W at 70.7 V|1|ea|||980|980
4.2|Power amplifier A2, 1 x 125 W at 70.7 V|1|ea|||760|760
4.3|Equipment rack and shelf|1|lot|||640|640
|Subtotal rack|||||||2380
|TOTAL|||||||5825
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("B-0691", "Heron Quay Boathouse", "bid with sections, prices, subtotals; amplifiers and a control as items; place in the description")
		t.Speakers("sheet=Bid; tap_v=70.7; line_v=70.7", `rows|zone|count|tap_w|amplifier|channel|control
7|BOAT BAYS|3|10|A1|1|
8|BOAT BAYS|3|10|A1|1|
9|BOAT BAYS|2|10|A1|1|
12|CREW AREAS|6|4|A1|2|VC-1
13|CREW AREAS|8|2|A1|2|
14|CREW AREAS|4|4|A1|2|
18|WATERFRONT|4|20|A2|1|
19|WATERFRONT|2|15|A2|1|`)
		t.Speakers("sheet=Bid; status=spare", `rows|count
20|1`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
A1|1|125|80
A1|2|125|56
A2|1|125|110`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1||136
A2|125|110`)
		t.Controls("", `control|rated_w|load_w
VC-1|35|24`)
		t.Left("Bid", `6|title|section
10|subtotal|prices
11|title|section
15|other|a volume control
16|subtotal|prices
17|title|section
21|subtotal|prices
22|title|section
23|other|an amplifier
24|other|an amplifier
25|other|a rack
26|subtotal|prices
27|total|prices`)
	}},

	{File: "bids/B-0704 planetarium refit.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Takeoff")
		p.Put("A1", `
Bid no. B-0704|Skerry Point Planetarium
All devices 70.7 V

Room|Drawing|Ceiling 8 in. @ 2 W|Ceiling 8 in. @ 4 W|Wall @ 5 W|Horn @ 15 W|Load W|Amp|Output
Lobby|AV-1|0|8|0|0|32|A|1
Cloaks|AV-1|3|0|0|0|6|A|1
Exhibit hall north|AV-1|0|10|2|0|50|A|2
Exhibit hall south|AV-1|0|10|2|0|50|A|2
Dome corridor|AV-2|8|0|0|0|16|B|1
Classroom 1|AV-2|0|4|0|0|16|B|1
Classroom 2|AV-2|0|4|0|0|16|B|1
Offices|AV-2|9|0|0|0|18|B|1
Roof deck|AV-3|0|0|0|4|60|B|2
Loading dock|AV-3|0|0|1|1|20|B|2
Totals||20|36|5|5|284||

Amp|Output|Watts
A|1|60
A|2|120
B|1|60
B|2|120
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("B-0704", "Skerry Point Planetarium", "rooms by types, the tap in the header of each type, loads of rooms beside")
		t.Speakers("sheet=Takeoff; tap_v=70.7; line_v=70.7", `rows|room|count|tap_w|amplifier|channel
5|Lobby|8|4|A|1
6|Cloaks|3|2|A|1
7|Exhibit hall north|10|4|A|2
7|Exhibit hall north|2|5|A|2
8|Exhibit hall south|10|4|A|2
8|Exhibit hall south|2|5|A|2
9|Dome corridor|8|2|B|1
10|Classroom 1|4|4|B|1
11|Classroom 2|4|4|B|1
12|Offices|9|2|B|1
13|Roof deck|4|15|B|2
14|Loading dock|1|5|B|2
14|Loading dock|1|15|B|2`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
A|1|60|38
A|2|120|100
B|1|60|66
B|2|120|80`)
		t.Amplifiers("", `amplifier|load_w
A|138
B|146`)
		t.Left("Takeoff", `15|total|counts and watts`)
	}},
}
