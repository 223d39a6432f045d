package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A site caretaker: everyday words, remarks in sentences.
var caretaker = []typed.Case{
	{File: "from the caretaker/Gull Mere rink loudspeakers.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Sheet1")
		p.Put("A1", `
Loudspeakers at Gull Mere Ice Rink (100 volt)
I went round with the ladder in the first week of May and read the little switch on every one.

Where|How many|What kind|Switch set to|Amplifier|Line|Remarks
Rink, north side|4|Horn|15 W|1|A|All fine.
Rink, south side|4|Horn|15 W|1|A|The second from the left buzzes when it is cold.
Rink, penalty box|1|Horn|5 W|1|A|
Seats, upper row|6|Column|20 W|1|B|Need a long ladder.
Seats, lower row|4|Column|10 W|1|B|
Front hall|5|Ceiling|6 W|2|A|Behind knob K1 next to the cash desk.
Cash desk|1|Ceiling|3 W|2|A|Behind knob K1 as well.
Skate hire|3|Ceiling|3 W|2|A|Behind knob K2, under the counter.
Changing rooms 1 to 4|8|Ceiling|3 W|2|B|Two in each room.
First aid|1|Ceiling|1.5 W|2|B|Knob K3 on the wall.
My workshop|1|Horn|5 W|2|B|Too loud but I leave it.
Old bandstand|2|Horn|15 W|2|B|Both were taken down when the roof was painted and have not gone back up.
Ice machine garage|1|Horn|7.5 W|2|B|
Shelf in my workshop|3|Ceiling|||| Spare ones, still in their boxes.

What I could read on the amplifiers
Amplifier|Line|Watts on the label
1|A|240
1|B|240
2|A|60
2|B|60

What is written on the knobs
Knob|Watts
K1|36
K2|12
K3|6
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Gull Mere Ice Rink", "everyday words; controls, states only in the remarks; three tables on one sheet")
		t.Speakers("sheet=Sheet1; tap_v=100; line_v=100", `rows|room|model|count|tap_w|amplifier|channel|control|status
5|Rink, north side|Horn|4|15|1|A||installed
6|Rink, south side|Horn|4|15|1|A||installed
7|Rink, penalty box|Horn|1|5|1|A||installed
8|Seats, upper row|Column|6|20|1|B||installed
9|Seats, lower row|Column|4|10|1|B||installed
10|Front hall|Ceiling|5|6|2|A|K1|installed
11|Cash desk|Ceiling|1|3|2|A|K1|installed
12|Skate hire|Ceiling|3|3|2|A|K2|installed
13|Changing rooms 1 to 4|Ceiling|8|3|2|B||installed
14|First aid|Ceiling|1|1.5|2|B|K3|installed
15|My workshop|Horn|1|5|2|B||installed
16|Old bandstand|Horn|2|15|2|B||removed
17|Ice machine garage|Horn|1|7.5|2|B||installed`)
		t.Speakers("sheet=Sheet1; status=spare", `rows|room|model|count
18|Shelf in my workshop|Ceiling|3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
1|A|240|125
1|B|240|160
2|A|60|42
2|B|60|38`)
		t.Amplifiers("", `amplifier|load_w
1|285
2|80`)
		t.Controls("", `control|rated_w|load_w
K1|36|33
K2|12|9
K3|6|1.5`)
	}},

	{File: "from the caretaker/arboretum and glasshouses.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Place,Loudspeakers,Each set to,Amp,What I noticed
Bay tree house,4,5 watts,No. 1,"Fine, cleaned in April"
Cactus house,3,5 watts,No. 1,One has no grille any more
Water lily house,6,10 watts,No. 1,"Damp, the boxes rust"
Visitor entrance,5,3 watts,No. 1,
Long walk,6,15 watts,No. 2,The cable from the shed is about 200 m long
Pinetum,4,15 watts,No. 2,
Bird hide,1,15 watts,No. 2,I could not see the switch and took it from the drawing in the lid
Lower pond,2,7.5 watts,No. 2,
Tool shed,1,?,No. 2,Painted over; I cannot read the switch
Maple lawn,3,15 watts,No. 2,Not put up yet - posts are coming in the autumn
,,,,
"The plate on amplifier No. 1 says 120 W, 100 V.",,,,
"The plate on amplifier No. 2 says 250 W, 100 V.",,,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "no title block; one tap cannot be read; one group is not up yet; ratings in two sentences")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|amplifier|status
2|Bay tree house|4|5|No. 1|installed
3|Cactus house|3|5|No. 1|installed
4|Water lily house|6|10|No. 1|installed
5|Visitor entrance|5|3|No. 1|installed
6|Long walk|6|15|No. 2|installed
7|Pinetum|4|15|No. 2|installed
8|Bird hide|1|15|No. 2|installed
9|Lower pond|2|7.5|No. 2|installed
10|Tool shed|1||No. 2|installed
11|Maple lawn|3|15|No. 2|future`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w|load_min_w
No. 1|120|110|
No. 2|250||180`)
		t.Amplifiers("", `amplifier|rated_w|load_w
No. 1|120|110
No. 2|250|`)
		t.Asks("", `10|asked|the tap in the tool shed`)
	}},
}
