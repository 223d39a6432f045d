package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Four people who write English: a head of stage electrics, a railway maintenance contractor, a caretaker, an estimator.
var firmsEnglish = []typed.Case{

	// The head of stage electrics of a theatre, so that the relief crew knows which feed does what.
	{File: "theatre/backstage calls, who feeds what.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Calls")
		p.Put("A1", `
Cobnut Theatre, backstage calls and front of house
For the relief crew. It is all 100 V line, racked in the dimmer room.
||
Feed|Comes off|Where|How many|Set to (W)|Pot|What it is
F1|PA1 o/p 1|Dressing room 1|1|1.5|P1|box on wall
F1|PA1 o/p 1|Dressing room 2|1|1.5|P2|box on wall
F1|PA1 o/p 1|Dressing room 3 (chorus)|2|3|P3|box on wall
F1|PA1 o/p 1|Green room|2|3|P4|ceiling
F1|PA1 o/p 1|Corridor, both ends|2|3||ceiling
F2|PA1 o/p 2|Wardrobe|1|1.5|P5|box on wall
F2|PA1 o/p 2|Scene dock|2|10||horn
F2|PA1 o/p 2|Fly floor SL|1|6||box on wall
F2|PA1 o/p 2|Fly floor SR|1|6||box on wall
F3|PA2|Foyer|6|3|P6|ceiling
F3|PA2|Circle landing|4|3|P7|ceiling
F3|PA2|Box office|1|1.5||ceiling
F3|PA2|Loos|4|0.75||ceiling
||
PA1 is the two-way job, 60 W a way. PA2 is the 120 W with the one output.
P1, P2 and P5 are 5 W pots, P3 and P4 are 12 W, P6 and P7 are 24 W.
`)
		p.Bold("A1", "A4:G4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Cobnut Theatre", "plain; output written into one cell with its amplifier, ratings of amplifiers and pots in sentences below")
		t.Speakers("sheet=Calls; tap_v=100; line_v=100; amplifier=PA1; channel=1", `rows|room|count|tap_w|control
5|Dressing room 1|1|1.5|P1
6|Dressing room 2|1|1.5|P2
7|Dressing room 3 (chorus)|2|3|P3
8|Green room|2|3|P4
9|Corridor, both ends|2|3|`)
		t.Speakers("sheet=Calls; tap_v=100; line_v=100; amplifier=PA1; channel=2", `rows|room|count|tap_w|control
10|Wardrobe|1|1.5|P5
11|Scene dock|2|10|
12|Fly floor SL|1|6|
13|Fly floor SR|1|6|`)
		t.Speakers("sheet=Calls; tap_v=100; line_v=100; amplifier=PA2", `rows|room|count|tap_w|control
14|Foyer|6|3|P6
15|Circle landing|4|3|P7
16|Box office|1|1.5|
17|Loos|4|0.75|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
PA1|1|60|21
PA1|2|60|33.5
PA2||120|34.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
PA1||54.5
PA2|120|34.5`)
		t.Controls("", `control|rated_w|load_w
P1|5|1.5
P2|5|1.5
P3|12|6
P4|12|6
P5|5|1.5
P6|24|18
P7|24|12`)
	}},

	// A railway maintenance contractor keeps the asset register of a station; circuits and their feeds are on a sheet of their own.
	{File: "rail/RM-3307 asset register PA.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("PA assets")
		p.Put("A1", `
Sallowmere Junction|||||Contract RM-3307
Station PA, asset register, six-monthly inspection
||
Asset|Type|Position|Area|Circuit|Tapped at|Inspected|Condition
SP-001|Projector|Column 2|Platform 1|CCT 1|10W|'12/03|OK
SP-002|Projector|Column 4|Platform 1|CCT 1|10W|'12/03|OK
SP-003|Projector|Column 6|Platform 1|CCT 1|10W|'12/03|OK
SP-004|Projector|Column 8|Platform 1|CCT 1|10W|'12/03|Bird's nest, cleared
SP-005|Projector|Column 10|Platform 1|CCT 1|10W|'12/03|OK
SP-006|Projector|Column 12|Platform 1|CCT 1|10W|'12/03|OK
SP-007|Projector|Column 1|Platform 2|CCT 2|10W|'12/03|OK
SP-008|Projector|Column 3|Platform 2|CCT 2|10W|'12/03|OK
SP-009|Projector|Column 5|Platform 2|CCT 2|10W|'12/03|Bracket rusty
SP-010|Projector|Column 7|Platform 2|CCT 2|10W|'12/03|OK
SP-011|Cabinet|Shelter|Platform 2|CCT 2|6W|'12/03|OK
SP-012|Cabinet|North stair|Subway|CCT 3|6W|'13/03|OK
SP-013|Cabinet|South stair|Subway|CCT 3|6W|'13/03|OK
SP-014|Ceiling|By window 1|Booking hall|CCT 4|3W|'13/03|OK
SP-015|Ceiling|By window 2|Booking hall|CCT 4|3W|'13/03|OK
SP-016|Ceiling|Doors|Booking hall|CCT 4|3W|'13/03|Grille loose
SP-017|Ceiling|Centre|Waiting room|CCT 4|3W|'13/03|OK
SP-018|Projector|Shelf|Lamp room|none|10W||Spare, boxed, not connected
SP-019|Projector|Column 9|Platform 2|CCT 2|10W||Taken down with the canopy, scrapped
`)
		p.Bold("A1", "A4:H4")
		q := p.Sheet("Circuits")
		q.Put("A1", `
Circuit|Supplied from|Rated output|Cable|Route length
CCT 1|Booster A, o/p 1|120 W|2c 2.5 mm²|310 m
CCT 2|Booster A, o/p 2|120 W|2c 2.5 mm²|265 m
CCT 3|Booster B, o/p 1|60 W|2c 1.5 mm²|140 m
CCT 4|Booster B, o/p 2|60 W|2c 1.5 mm²|45 m
||
All circuits 100 V line. No local volume controls at this station.
`)
		q.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("RM-3307", "Sallowmere Junction", "one asset a row; circuits lead to boosters on the second sheet; a boxed spare and one scrapped")
		t.Speakers("sheet=PA assets; tap_v=100; line_v=100; zone=Platform 1; tap_w=10; amplifier=Booster A; channel=1", `rows|tag
5..10|SP-001..`)
		t.Speakers("sheet=PA assets; tap_v=100; line_v=100; zone=Platform 2; amplifier=Booster A; channel=2", `rows|tag|tap_w
11..14|SP-007..|10
15|SP-011|6`)
		t.Speakers("sheet=PA assets; tap_v=100; line_v=100; amplifier=Booster B; channel=1", `rows|tag|zone|tap_w
16..17|SP-012..|Subway|6`)
		t.Speakers("sheet=PA assets; tap_v=100; line_v=100; amplifier=Booster B; channel=2", `rows|tag|zone|tap_w
18..20|SP-014..|Booking hall|3
21|SP-017|Waiting room|3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
Booster A|1|120|60
Booster A|2|120|46
Booster B|1|60|12
Booster B|2|60|12`)
		t.Amplifiers("", `amplifier|load_w
Booster A|106
Booster B|24`)
		t.Lines("note=one length a circuit", `line|length_m|area_mm2
CCT 1|310|2.5
CCT 2|265|2.5
CCT 3|140|1.5
CCT 4|45|1.5`)
		t.Left("PA assets", `22|spare|boxed, not connected
23|removed|taken down and scrapped`)
	}},

	// A school caretaker, because the engineer asked on the phone what there is.
	{File: "school/tannoy speakers.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
"Teasel Lane Primary, tannoy, walked round at half term",,,,
,,,,
Place,Speakers,Watts it is set to,Knob,Amp
Main entrance,2,3,,office
Office,1,1.5,yes,office
Head's room,1,1.5,yes,office
Infant corridor,4,3,,office
Infant classrooms,4,1.5,,office
Junior corridor,4,3,,office
Library,2,3,yes,office
Playground,2,15,,office
Hall,4,6,yes,hall
Hall store,1,3,,hall
Kitchen,1,6,,hall
Back gate,1,15,,hall
,,,,
The office amp says 120 W on the back. The one in the hall cupboard says 60 W. Both say 100 V line.,,,,
I can not see a number on any of the knobs.,,,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Teasel Lane Primary", "plain; knobs without name or rating, amplifiers by where they stand, their ratings in a sentence")
		t.Speakers("tap_v=100; line_v=100; amplifier=office", `rows|room|count|tap_w|note
4|Main entrance|2|3|
5|Office|1|1.5|unnamed
6|Head's room|1|1.5|unnamed
7|Infant corridor|4|3|
8|Infant classrooms|4|1.5|
9|Junior corridor|4|3|
10|Library|2|3|unnamed
11|Playground|2|15|`)
		t.Speakers("tap_v=100; line_v=100; amplifier=hall", `rows|room|count|tap_w|note
12|Hall|4|6|unnamed
13|Hall store|1|3|
14|Kitchen|1|6|
15|Back gate|1|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
office|120|75
hall|60|48`)
		t.Amplifiers("", `amplifier|rated_w|load_w
office|120|75
hall|60|48`)
		t.Controls("note=unnamed", `control|load_w
|1.5
|1.5
|6
|24`)
	}},

	// An American estimator counts loudspeakers off the drawings for a bid: one column a tap.
	{File: "bids/26-118 speaker takeoff.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Takeoff")
		p.Put("A1", `
Tamarack Branch Library, speaker takeoff|||||||Bid 26-118
Counts off sheets T-201 thru T-204. 70V system.
||
|||8" ceiling, qty at tap|||Horn, qty at tap||
Ch|Zone|Room|1W|2W|4W|7.5W|15W|Attenuator
1|Adult|Stacks|||10|||
1|Adult|Reading room||6||||VC-1 35W
1|Adult|Periodicals||4||||
2|Children|Story corner|2|4||||VC-2 35W
2|Children|Picture books||6||||
2|Children|Restrooms|4|||||
3|Staff|Workroom||3||||VC-3 10W
3|Staff|Offices|5|||||
3|Staff|Break room||2||||VC-4 10W
4|Outside|Book drop drive|||||2|
4|Outside|Loading dock||||1||
|Total||11|25|10|1|2|
||
Amp: one 4-channel, 125W a channel
`)
		p.Merge("D4:F4", "G4:H4")
		p.Bold("A1", "A4:I5", "A17:I17")
		q := p.Sheet("Home runs")
		q.Put("A1", `
Run|Zone|Feet from rack|Wire (AWG/cond.)
HR-1|Adult|180|'14/2
HR-2|Children|95|'16/2
HR-3|Staff|60|'16/2
HR-4|Outside|240|'14/2
`)
		q.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("26-118", "Tamarack Branch Library", "matrix of counts by tap, one row with two taps behind one attenuator; feet and AWG")
		t.Speakers("sheet=Takeoff; tap_v=70.7; line_v=70.7; zone=Adult; channel=1", `rows|room|count|tap_w|control
6|Stacks|10|4|
7|Reading room|6|2|VC-1
8|Periodicals|4|2|`)
		t.Speakers("sheet=Takeoff; tap_v=70.7; line_v=70.7; zone=Children; channel=2", `rows|room|count|tap_w|control
9|Story corner|2|1|VC-2
9|Story corner|4|2|VC-2
10|Picture books|6|2|
11|Restrooms|4|1|`)
		t.Speakers("sheet=Takeoff; tap_v=70.7; line_v=70.7; zone=Staff; channel=3", `rows|room|count|tap_w|control
12|Workroom|3|2|VC-3
13|Offices|5|1|
14|Break room|2|2|VC-4`)
		t.Speakers("sheet=Takeoff; tap_v=70.7; line_v=70.7; zone=Outside; channel=4", `rows|room|count|tap_w
15|Book drop drive|2|15
16|Loading dock|1|7.5`)
		t.Channels("line_v=70.7; rated_w=125", `channel|load_w
1|60
2|26
3|15
4|37.5`)
		t.Amplifiers("", `amplifier|load_w
|138.5`)
		t.Controls("", `control|rated_w|load_w
VC-1|35|12
VC-2|35|10
VC-3|10|6
VC-4|10|4`)
		t.Lines("note=home run", `line|zone|length_m|area_mm2
HR-1|Adult|54.864|2.081
HR-2|Children|28.956|1.309
HR-3|Staff|18.288|1.309
HR-4|Outside|73.152|2.081`)
		t.Left("Takeoff", `17|total|counts by tap`)
	}},
}
