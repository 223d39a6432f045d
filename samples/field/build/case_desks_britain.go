package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// desksBritain: a school caretaker, an estimator, a service engineer and a theatre electrician.
var desksBritain = []typed.Case{
	{File: "desks/Tannoy list Hatherwell.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Sheet1")
		p.Put("A1", `
Hatherwell School - tannoy speakers and where they are
Amp is in the office cupboard, 240 watt, 100 volt line. One circuit all the way round.
||
Where|How many|Set to (watts)|Notes
Front hall|2|6|
Office corridor|3|3|
Staff room|1|3|own volume knob, 6W type
Library|4|3|own volume knob by the door, 24W type
Main hall|4|15|the tall ones
Hall stage|2|6|
Dining hall|6|6|
Science corridor|4|3|
Music room|2|3|
PE store|1|6|key 14
Playground|3|15|horns
Boiler house|1|10|horn
Workshop|1|3|
`)
		p.Bold("A1", "A4:D4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Hatherwell School", "caretaker's list; one amplifier without a name in a sentence; two volume knobs in remarks, rated, without names")
		t.Speakers("sheet=Sheet1; tap_v=100; line_v=100", `rows|room|count|tap_w|note
5|Front hall|2|6|
6|Office corridor|3|3|
7|Staff room|1|3|unnamed
8|Library|4|3|unnamed
9|Main hall|4|15|
10|Hall stage|2|6|
11|Dining hall|6|6|
12|Science corridor|4|3|
13|Music room|2|3|
14|PE store|1|6|
15|Playground|3|15|
16|Boiler house|1|10|
17|Workshop|1|3|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|226`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|226`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|6|3
|24|12`)
	}},

	{File: "desks/tenders/E2291 Coldbrook Baths section W.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Section W")
		p.Put("A1", `
Coldbrook Baths - refurbishment|||||Job E/2291
Section W - public address, 100 V line
||
Item|Description|Qty|Unit|Rate £|Total £
W1|Amplifier PA1, four outputs, each 125 W at 100 V|1|nr|1480|1480
|Output 1 - Pool hall
W2|Horn loudspeaker, pool surround, tapped at 10 W|6|nr|62|372
W3|Column loudspeaker, spectator seating, tapped at 20 W|3|nr|110|330
|Output 2 - Changing village
W4|Ceiling loudspeaker IP65, cubicles, tapped at 3 W|10|nr|38|380
W5|Ditto, showers, tapped at 1.5 W|4|nr|38|152
W6|Ditto, family change, tapped at 3 W|2|nr|38|76
|Output 3 - Front of house
W7|Ceiling loudspeaker, reception, tapped at 6 W|4|nr|29|116
W8|Ditto, corridor, tapped at 3 W|5|nr|29|145
W9|Attenuator VC1, 36 W, at reception desk, for item W7|1|nr|41|41
|Output 4 - Gym
W10|Cabinet loudspeaker, gym floor, tapped at 12 W|6|nr|54|324
W11|Attenuator VC2, 100 W, for item W10|1|nr|48|48
W12|Ceiling loudspeaker, stretch area, tapped at 6 W|2|nr|29|58
|Carried to summary||||3522
`)
		p.Bold("A1", "A2", "A4:F4", "B6", "B9", "B13", "B17", "B21:F21")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("E/2291", "Coldbrook Baths", "priced bill of quantities; outputs and zones as titles, taps inside descriptions, 'Ditto', attenuators that point to items")
		t.Speakers("sheet=Section W; tap_v=100; line_v=100; amplifier=PA1; channel=1; zone=Pool hall; note=area as zone", `rows|tag|count|tap_w
7|W2|6|10
8|W3|3|20`)
		t.Speakers("sheet=Section W; tap_v=100; line_v=100; amplifier=PA1; channel=2; zone=Changing village; note=area as zone", `rows|tag|count|tap_w
10|W4|10|3
11|W5|4|1.5
12|W6|2|3`)
		t.Speakers("sheet=Section W; tap_v=100; line_v=100; amplifier=PA1; channel=3; zone=Front of house; note=area as zone", `rows|tag|count|tap_w|control
14|W7|4|6|VC1
15|W8|5|3|`)
		t.Speakers("sheet=Section W; tap_v=100; line_v=100; amplifier=PA1; channel=4; zone=Gym; note=area as zone", `rows|tag|count|tap_w|control
18|W10|6|12|VC2
20|W12|2|6|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
PA1|1|125|120
PA1|2|125|42
PA1|3|125|39
PA1|4|125|84`)
		t.Amplifiers("", `amplifier|load_w
PA1|285`)
		t.Controls("", `control|rated_w|load_w
VC1|36|24
VC2|100|72`)
		t.Left("Section W", `5|amplifier|the amplifier's own item
16|control|attenuator
19|control|attenuator
21|total|sum in pounds`)
	}},

	{File: "desks/service/Thornmere depot annual.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Annual service sheet - public address,,,,,,,,
Site: Thornmere Tram Depot,,,Contract: M/0457,,,,,
100 V line,,,Engineer: R.T.,,,,,
,,,,,,,,
Cct,Area,Amp,Amp W,Spkrs,Tap W,Z meas (ohm),Ins (Mohm),Result
1,Running shed roads 1-4,A1,240,12,15,54,>20,Pass
2,Running shed roads 5-8,A2,240,12,15,57,>20,Pass
3,Paint shop,A3,120,6,10,171,18,Pass
4,Wheel lathe,A4,120,4,15,165,>20,Pass
5,Offices and mess room,A5,120,14,3,240,>20,Pass
6,Yard,A6,240,9,20,53,0.4,FAIL see note
7,Stores,A7,60,5,6,330,>20,Pass
,,,,,,,,
"Note: cct 6, water in the joint box at the gate. Left in service, repair quoted separately.",,,,,,,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("M/0457", "Thornmere Tram Depot", "service record; measured impedance and insulation beside the taps, a failed circuit that stays in service")
		t.Speakers("tap_v=100; line_v=100", `rows|zone|amplifier|channel|count|tap_w
6|Running shed roads 1-4|A1|1|12|15
7|Running shed roads 5-8|A2|2|12|15
8|Paint shop|A3|3|6|10
9|Wheel lathe|A4|4|4|15
10|Offices and mess room|A5|5|14|3
11|Yard|A6|6|9|20
12|Stores|A7|7|5|6`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A1|1|240|180
A2|2|240|180
A3|3|120|60
A4|4|120|60
A5|5|120|42
A6|6|240|180
A7|7|60|30`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|240|180
A2|240|180
A3|120|60
A4|120|60
A5|120|42
A6|240|180
A7|60|30`)
		t.Left("", `14|note|remark on circuit 6`)
	}},

	{File: "desks/get-in dimmer patch.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Patch")
		p.Put("A1", `
Corn Hall Theatre - dimmer patch, autumn tour
Rack|Dimmer|Ch|Position|Lantern|Qty|W each|Load W|Note
A|1|11|FOH bridge|profile 25|2|1000|2000|
A|2|12|FOH bridge|profile 25|2|1000|2000|
A|3|13|FOH bridge|fresnel|2|650|1300|
A|4|21|LX bar 1|fresnel|2|1000|2000|colour L201
A|5|22|LX bar 1|PC|3|500|1500|
A|6|23|LX bar 1|par 64|2|1000|2000|
B|1|31|LX bar 2|par 64|2|1000|2000|
B|2|32|LX bar 2|flood|4|500|2000|pairs
B|3|33|Booms SL|profile 36|2|575|1150|
B|4|34|Booms SR|profile 36|2|575|1150|
B|5|41|Cyc|flood|3|625|1875|
B|6|99|House lights|||||on own panel
||||Total|26||18975|
`)
		p.Bold("A1", "A2:I2")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Corn Hall Theatre", "stage lanterns on dimmer racks: watts, channels and racks, but no loudspeaker")
	}},
}
