package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// English hands: a commissioning engineer, an estimator in feet, a caretaker, a survey.
var bindersEnglish = []typed.Case{

	{File: "binders/kestrel pool/Kestrel Pool PA as fitted.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Front sheet")
		p.Put("A1", `
AS FITTED RECORD
Site|Kestrel Lane Swimming Pool
Job no.|P-2218
System|Public address, all speaker lines 100 V
Drawn up by|site engineer
Checked|office
||
Sheets: Speakers, Rack, Attenuators, Cables
`)
		p.Bold("A1")
		s := p.Sheet("Speakers")
		s.Put("A1", `
Ref|Area|Position|Type|Tap (W)
S01|Pool hall|North wall|horn|15
S02|Pool hall|North wall|horn|15
S03|Pool hall|South wall|horn|15
S04|Pool hall|South wall|horn|15
S05|Pool hall|Deep end|horn|15
S06|Pool hall|Shallow end|horn|15
S07|Teaching pool|East wall|cabinet|10
S08|Teaching pool|East wall|cabinet|10
S09|Teaching pool|West wall|cabinet|10
S10|Teaching pool|West wall|cabinet|10
S11|Changing|Ladies|ceiling|3
S12|Changing|Ladies|ceiling|3
S13|Changing|Gents|ceiling|3
S14|Changing|Gents|ceiling|3
S15|Changing|Family|ceiling|3
S16|Changing|Corridor|ceiling|6
S17|Reception|Desk|ceiling|1.5
S18|Reception|Waiting|ceiling|3
S19|Reception|Waiting|ceiling|3
`)
		s.Bold("A1:E1")
		r := p.Sheet("Rack")
		r.Put("A1", `
Amplifier|Output|Area served|Rated output (W)
Amp 1|1|Pool hall|120
Amp 1|2|Teaching pool|60
Amp 2|1|Changing|60
Amp 2|2|Reception|60
`)
		r.Bold("A1:D1")
		a := p.Sheet("Attenuators")
		a.Put("A1", `
Ref|Area controlled|Fitted|Rating (W)
AT1|Reception|behind desk|12
AT2|Teaching pool|teachers' store|60
`)
		a.Bold("A1:D1")
		c := p.Sheet("Cables")
		c.Put("A1", `
Cable|From|To|Area|Type|Length (m)
C1|Rack|S01|Pool hall|2-core 2.5 mm²|48
C2|Rack|S07|Teaching pool|2-core 2.5 mm²|62
C3|Rack|S11|Changing|2-core 1.5 mm²|35
C4|Rack|AT1|Reception|2-core 1.5 mm²|18
`)
		c.Bold("A1:F1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("P-2218", "Kestrel Lane Swimming Pool", "five sheets joined by the area; voltage on the front sheet only")
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; zone=Pool hall; amplifier=Amp 1; channel=1; tap_w=15", `rows|tag|room
2|S01|North wall
3|S02|North wall
4|S03|South wall
5|S04|South wall
6|S05|Deep end
7|S06|Shallow end`)
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; zone=Teaching pool; amplifier=Amp 1; channel=2; control=AT2; tap_w=10", `rows|tag|room
8|S07|East wall
9|S08|East wall
10|S09|West wall
11|S10|West wall`)
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; zone=Changing; amplifier=Amp 2; channel=1", `rows|tag|room|tap_w
12|S11|Ladies|3
13|S12|Ladies|3
14|S13|Gents|3
15|S14|Gents|3
16|S15|Family|3
17|S16|Corridor|6`)
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; zone=Reception; amplifier=Amp 2; channel=2; control=AT1", `rows|tag|room|tap_w
18|S17|Desk|1.5
19|S18|Waiting|3
20|S19|Waiting|3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
Amp 1|1|120|90
Amp 1|2|60|40
Amp 2|1|60|21
Amp 2|2|60|7.5`)
		t.Amplifiers("", `amplifier|load_w
Amp 1|130
Amp 2|28.5`)
		t.Controls("", `control|zone|rated_w|load_w
AT1|Reception|12|7.5
AT2|Teaching pool|60|40`)
		t.Lines("from=Rack", `line|zone|to|length_m|area_mm2
C1|Pool hall|S01|48|2.5
C2|Teaching pool|S07|62|2.5
C3|Changing|S11|35|1.5
C4|Reception|AT1|18|1.5`)
	}},

	{File: "binders/estimating/3071 Brackwater Museum take-off.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Bid summary")
		p.Put("A1", `
Brackwater Museum of Tides - paging and background system
Estimate 3071, 70 V distributed
||
Item|Qty|Unit price|Extended
Ceiling speaker 8 in. w/ transformer|20|88|1760
Surface speaker|6|112|672
Horn|4|141|564
Amplifier 2 x 120 W|1|940|940
Amplifier 1 x 60 W|1|410|410
Wall volume control|2|46|92
Speaker wire, per ft|635|0.38|241.3
Labor, hr|52|74|3848
||Total|8527.3
`)
		p.Bold("A1", "A4:D4", "C13:D13")
		q := p.Sheet("Takeoff")
		q.Put("A1", `
Line|Room|Qty|Device|Tap, W|Watts
1|Lobby|6|Ceiling spkr|5|30
1|Gift counter|2|Ceiling spkr|2.5|5
1|Cloakroom|1|Ceiling spkr|2.5|2.5
2|Tide hall|6|Surface spkr|10|60
2|Wave tank|2|Ceiling spkr|5|10
3|Classroom A|4|Ceiling spkr|2.5|10
3|Classroom B|4|Ceiling spkr|2.5|10
3|Staff corridor|1|Ceiling spkr|2.5|2.5
3|Classroom A|1|VC-1 volume control, 35 W, Classroom A speakers||
3|Classroom B|1|VC-2 volume control, 35 W, Classroom B speakers||
1|Loading dock|2|Horn|7.5|15
2|Jetty|2|Horn|15|30
||30|||175
`)
		q.Bold("A1:F1", "C14:F14")
		r := p.Sheet("Amps and wire")
		r.Put("A1", `
Line|Amp|Channel|Amp watts per channel|Wire|Run, ft
1|PA-1|A|120|16 AWG|210
2|PA-1|B|120|14 AWG|275
3|PA-2|1|60|18 AWG|150
`)
		r.Bold("A1:F1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("3071", "Brackwater Museum of Tides", "price sheet first, volume controls as rows of the take-off, lines out of order, wire in feet and gauges on the sheet of amplifiers")
		t.Speakers("sheet=Takeoff; tap_v=70.7; line_v=70.7; amplifier=PA-1; channel=A", `rows|room|count|tap_w
2|Lobby|6|5
3|Gift counter|2|2.5
4|Cloakroom|1|2.5
12|Loading dock|2|7.5`)
		t.Speakers("sheet=Takeoff; tap_v=70.7; line_v=70.7; amplifier=PA-1; channel=B", `rows|room|count|tap_w
5|Tide hall|6|10
6|Wave tank|2|5
13|Jetty|2|15`)
		t.Speakers("sheet=Takeoff; tap_v=70.7; line_v=70.7; amplifier=PA-2; channel=1", `rows|room|count|tap_w|control
7|Classroom A|4|2.5|VC-1
8|Classroom B|4|2.5|VC-2
9|Staff corridor|1|2.5|`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
PA-1|A|120|52.5
PA-1|B|120|100
PA-2|1|60|22.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
PA-1||152.5
PA-2|60|22.5`)
		t.Controls("", `control|rated_w|load_w
VC-1|35|10
VC-2|35|10`)
		t.Lines("note=one length a line", `line|length_m|area_mm2
1|64.008|1.309
2|83.82|2.081
3|45.72|0.823`)
		t.Left("Takeoff", `10|control|volume control
11|control|volume control
14|total|sums`)
		t.Left("Bid summary", `5|price|quantities of the take-off again
6|price|quantities of the take-off again
7|price|quantities of the take-off again
13|total|price`)
	}},

	{File: "binders/stables/tannoy list.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Harrow Lea Stables - speakers for the yard manager,,,,
"One amplifier in the tack room, 120 W, 100 volt line",,,,
,,,,
Where,How many,What,Set to,Volume knob
Top yard,2,horn,10 W,no
Bottom yard,2,horn,10 W,no
Indoor school,4,cabinet,10 W,knob K1 (60 W)
Gallery,2,cabinet,5 W,knob K1
Tack room,1,cabinet,2.5 W,no
Feed store,1,cabinet,2.5 W,no
Office,1,cabinet,2.5 W,knob K2 (6 W)
Muck heap,1,horn,,taken down in March - bracket only
,,,,
Spare horn in the hay loft,1,horn,10 W,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Harrow Lea Stables", "one amplifier in a sentence; knobs with ratings where first named; one taken down, one spare")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|control
5|Top yard|2|10|
6|Bottom yard|2|10|
7|Indoor school|4|10|K1
8|Gallery|2|5|K1
9|Tack room|1|2.5|
10|Feed store|1|2.5|
11|Office|1|2.5|K2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|120|97.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|120|97.5`)
		t.Controls("", `control|rated_w|load_w
K1|60|50
K2|6|2.5`)
		t.Left("", `12|removed|taken down
14|spare|in the hay loft`)
	}},

	{File: "binders/stations/Oxmoor Halt survey.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Survey")
		p.Put("A1", `
Oxmoor Halt station: speaker survey, ref. SV/118
Single 100 V amplifier in ticket office, no label, 4 outputs of 60 W each
||
OUTPUT 1 - PLATFORM 1
Post|Spkr|Tap|Remarks
1|horn|6 W|
2|horn|6 W|
3|horn|6 W|front dented, works
4|horn|6 W|
5|horn|6 W|
OUTPUT 2 - PLATFORM 2
Post|Spkr|Tap|Remarks
11|horn|6 W|
12|horn|6 W|
13|horn|10 W|set higher because of the fan
14|horn|6 W|
OUTPUT 3 - BUILDING
Room|Spkr|Tap|Remarks
Waiting room|2 no. cabinets|3 W|
Booking hall|3 no. cabinets|3 W|
Parcels|1 no. cabinet|6 W|
OUTPUT 4 - CYCLE SHED
Room|Spkr|Tap|Remarks
Shed|2 no. horns|10 W|
Footpath|1 no. horn|10 W|
`)
		p.Bold("A1", "A4", "A11", "A17", "A22")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("SV/118", "Oxmoor Halt station", "sections by output and platform, an unnamed amplifier with four outputs, header row repeated with other names")
		t.Speakers("sheet=Survey; tap_v=100; line_v=100; zone=PLATFORM 1; channel=1; note=section title as zone", `rows|tap_w
6..10|6`)
		t.Speakers("sheet=Survey; tap_v=100; line_v=100; zone=PLATFORM 2; channel=2; note=section title as zone", `rows|tap_w
13|6
14|6
15|10
16|6`)
		t.Speakers("sheet=Survey; tap_v=100; line_v=100; zone=BUILDING; channel=3; note=section title as zone", `rows|room|count|tap_w
19|Waiting room|2|3
20|Booking hall|3|3
21|Parcels|1|6`)
		t.Speakers("sheet=Survey; tap_v=100; line_v=100; zone=CYCLE SHED; channel=4; note=section title as zone", `rows|room|count|tap_w
24|Shed|2|10
25|Footpath|1|10`)
		t.Channels("line_v=100; rated_w=60", `channel|load_w
1|30
2|28
3|21
4|30`)
		t.Amplifiers("", `amplifier|load_w
|109`)
	}},
}
