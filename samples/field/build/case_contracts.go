package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// An installer, a consultant, an estimator, an asset clerk, an electrical contractor and an apprentice, in English.
var contracts = []typed.Case{
	{File: "handover/4471 Brackwater Pool.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Brackwater Pool - PA as fitted,,,,,,,
Job no. 4471,,,,,,,
,,,,,,,
Amp,Output,Zone,Location,Type,No. off,Tap W,Vol control
1,A,Pool hall,North wall,horn,4,15,
1,A,Pool hall,South wall,horn,4,15,
1,A,Pool hall,Diving end,horn,2,15,
1,B,Teaching pool,Long wall,cabinet,4,6,VC1
1,B,Teaching pool,Spectators,ceiling,6,3,VC1
2,A,Changing,Male,ceiling,3,3,
2,A,Changing,Female,ceiling,3,3,
2,A,Changing,Corridor,ceiling,4,1.5,
2,B,Front of house,Reception,ceiling,2,3,VC2
2,B,Front of house,Foyer,ceiling,5,3,
2,B,Front of house,Outside door,horn,1,10,
,,,,,,,
"Amp 1: 240 W per output, 100 V line",,,,,,,
"Amp 2: 120 W per output, 100 V line",,,,,,,
"VC1 rated 60 W, in pool office",,,,,,,
"VC2 rated 12 W, under reception desk",,,,,,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("4471", "Brackwater Pool", "plain; ratings of outputs and volume controls in lines below the list")
		t.Speakers("tap_v=100; line_v=100; zone=Pool hall; amplifier=1; channel=A; tap_w=15", `rows|room|count
5|North wall|4
6|South wall|4
7|Diving end|2`)
		t.Speakers("tap_v=100; line_v=100; zone=Teaching pool; amplifier=1; channel=B; control=VC1", `rows|room|count|tap_w
8|Long wall|4|6
9|Spectators|6|3`)
		t.Speakers("tap_v=100; line_v=100; zone=Changing; amplifier=2; channel=A", `rows|room|count|tap_w
10|Male|3|3
11|Female|3|3
12|Corridor|4|1.5`)
		t.Speakers("tap_v=100; line_v=100; zone=Front of house; amplifier=2; channel=B", `rows|room|count|tap_w|control
13|Reception|2|3|VC2
14|Foyer|5|3|
15|Outside door|1|10|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
1|A|240|150
1|B|240|42
2|A|120|24
2|B|120|31`)
		t.Amplifiers("", `amplifier|rated_w|load_w
1|480|192
2|240|55`)
		t.Controls("", `control|rated_w|load_w
VC1|60|42
VC2|12|6`)
	}},

	{File: "consultants/20-118 Aldermere room data.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Room data")
		p.Put("A1", `
Aldermere Planetarium: public address, room data
Project 20-118, issue P3
||
Room no.|G01|G02|G03|'101|'102|'103|'104
Room name|Foyer|Ticket desk|Exhibition|Dome|Control room|Lecture room|Plant
Loudspeaker type|C1|C1|W2|W4|C1|W2|none
Quantity|6|1|8|12|1|4|0
Tapping, W|3|1.5|6|10|1.5|6|
Amplifier|A1|A1|A1|A2|A2|A2|
Output|1|1|2|1|2|2|
Attenuator|AT-01||||AT-02|AT-03|
Attenuator rating, W|36||||5|36|
`)
		p.Bold("A1", "A4:A12", "B4:H4")
		q := p.Sheet("Rack")
		q.Put("A1", `
Amplifier|Outputs|W per output|Line
A1|2|120|100 V
A2|2|250|100 V
`)
		q.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("20-118", "Aldermere Planetarium", "rooms run across the sheet; one room without loudspeakers; amplifier ratings on a second sheet")
		t.Revision("P3", false)
		t.Speakers("sheet=Room data; tap_v=100; line_v=100", `rows|room|count|tap_w|amplifier|channel|control
B|Foyer|6|3|A1|1|AT-01
C|Ticket desk|1|1.5|A1|1|
D|Exhibition|8|6|A1|2|
E|Dome|12|10|A2|1|
F|Control room|1|1.5|A2|2|AT-02
G|Lecture room|4|6|A2|2|AT-03`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A1|1|120|19.5
A1|2|120|48
A2|1|250|120
A2|2|250|25.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|240|67.5
A2|500|145.5`)
		t.Controls("", `control|rated_w|load_w
AT-01|36|18
AT-02|5|1.5
AT-03|36|24`)
		t.Left("Room data", `H|none|room without loudspeakers`)
	}},

	{File: "tenders/Bill 5 Stonebeck Library.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Bill 5")
		p.Put("A1", `
Stonebeck Public Library: public address installation
Bill no. 5, tender ref. T/309
||
Item|Description|Qty|Unit|Rate|Amount
A|Loudspeakers for 100 V line, complete with transformer
A1|Ceiling loudspeaker, tapped 3 W, to lending hall|8|nr|38|304
A2|Ditto, to entrance|2|nr|38|76
A3|Ditto but tapped 1.5 W, to reference library|6|nr|38|228
A4|Ditto but tapped 1.5 W, to stack rooms|4|nr|38|152
A5|Wall loudspeaker, tapped 6 W, to lecture hall|4|nr|52|208
A6|Horn loudspeaker, tapped 10 W, to loading bay|1|nr|61|61
A7|Ceiling loudspeaker, loose, to be handed over as spare|2|nr|38|76
B|Equipment
B1|Mixer amplifier, 120 W, 100 V, one output, feeding all loudspeakers of section A|1|nr|410|410
B2|Volume control VC1, 36 W, serving the lecture hall only|1|nr|29|29
C|Cable
C1|Cable 2 x 1.5 mm² in trunking|260|m|2.4|624
||||Carried to summary|2168
`)
		p.Bold("A1", "A4:F4", "A5:B5", "A13:B13", "A16:B16")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("T/309", "Stonebeck Public Library", "bill of quantities: room and tap in the description, dittos, a spare, amplifier and control as items, prices")
		t.Speakers("sheet=Bill 5; tap_v=100; line_v=100", `rows|room|count|tap_w|control
6|lending hall|8|3|
7|entrance|2|3|
8|reference library|6|1.5|
9|stack rooms|4|1.5|
10|lecture hall|4|6|VC1
11|loading bay|1|10|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|120|79`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|120|79`)
		t.Controls("", `control|rated_w|load_w
VC1|36|24`)
		t.Left("Bill 5", `12|spare|loose, handed over as spare
14|amplifier|equipment
15|control|equipment
17|cable|a quantity of cable
18|total|sum of money`)
	}},

	{File: "assets/wexcombe_pa_assets.txt", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Asset ID	Class	Station	Area	Position	Setting	Fed from	Condition	Last seen
WXJ-PA-001	Amplifier	Wexcombe Junction	Equipment room	PA1, 2 x 240 W, 100 V		Mains	Good	14/03/2022
WXJ-PA-002	Amplifier	Wexcombe Junction	Equipment room	PA2, 1 x 120 W, 100 V		Mains	Fair	14/03/2022
WXJ-LS-001	Loudspeaker	Wexcombe Junction	Platform 1	Column 2	10 W	PA1 output 1	Good	14/03/2022
WXJ-LS-002	Loudspeaker	Wexcombe Junction	Platform 1	Column 5	10 W	PA1 output 1	Good	14/03/2022
WXJ-LS-003	Loudspeaker	Wexcombe Junction	Platform 1	Column 8	10 W	PA1 output 1	Fair	14/03/2022
WXJ-LS-004	Loudspeaker	Wexcombe Junction	Platform 1	Column 11	10 W	PA1 output 1	Good	14/03/2022
WXJ-LS-005	Loudspeaker	Wexcombe Junction	Platform 2	Column 2	10 W	PA1 output 2	Good	14/03/2022
WXJ-LS-006	Loudspeaker	Wexcombe Junction	Platform 2	Column 5	10 W	PA1 output 2	Good	14/03/2022
WXJ-LS-007	Loudspeaker	Wexcombe Junction	Platform 2	Shelter	5 W	PA1 output 2	Good	14/03/2022
WXJ-LS-008	Loudspeaker	Wexcombe Junction	Platform 2	Old signal box	10 W	PA1 output 2	Removed 2019	02/07/2019
WXJ-LS-009	Loudspeaker	Wexcombe Junction	Booking hall	Ceiling A	2.5 W	PA2	Good	14/03/2022
WXJ-LS-010	Loudspeaker	Wexcombe Junction	Booking hall	Ceiling B	2.5 W	PA2	Good	14/03/2022
WXJ-LS-011	Loudspeaker	Wexcombe Junction	Booking hall	Ceiling C	2.5 W	PA2	Poor	14/03/2022
WXJ-LS-012	Loudspeaker	Wexcombe Junction	Waiting room	Ceiling	2.5 W	PA2	Good	15/03/2022
WXJ-LS-013	Loudspeaker	Wexcombe Junction	Subway	North end	5 W	PA2	Good	15/03/2022
WXJ-LS-014	Loudspeaker	Wexcombe Junction	Subway	South end	5 W	PA2	Good	15/03/2022
WXJ-LS-015	Loudspeaker	Wexcombe Junction	Equipment room	Shelf	-	-	Spare	15/03/2022
WXJ-MC-001	Microphone	Wexcombe Junction	Booking hall	Counter		PA1	Good	15/03/2022
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Wexcombe Junction", "asset register in tabs: amplifiers, a microphone and loudspeakers in one list, one removed, one spare")
		t.Speakers("tap_v=100; line_v=100; zone=Platform 1; amplifier=PA1; channel=1; tap_w=10", `rows|tag
4..7|WXJ-LS-001..`)
		t.Speakers("tap_v=100; line_v=100; zone=Platform 2; amplifier=PA1; channel=2", `rows|tag|tap_w
8|WXJ-LS-005|10
9|WXJ-LS-006|10
10|WXJ-LS-007|5`)
		t.Speakers("tap_v=100; line_v=100; amplifier=PA2", `rows|tag|zone|tap_w
12|WXJ-LS-009|Booking hall|2.5
13|WXJ-LS-010|Booking hall|2.5
14|WXJ-LS-011|Booking hall|2.5
15|WXJ-LS-012|Waiting room|2.5
16|WXJ-LS-013|Subway|5
17|WXJ-LS-014|Subway|5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
PA1|1|240|40
PA1|2|240|25
PA2||120|20`)
		t.Amplifiers("", `amplifier|rated_w|load_w
PA1|480|65
PA2|120|20`)
		t.Left("", `2|amplifier|
3|amplifier|
11|removed|removed 2019
18|spare|on a shelf
19|other|microphone`)
	}},

	{File: "contracts/Tallgrass Elementary sound.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Spkrs")
		p.Put("A1", `
Tallgrass Elementary School - Job 16-0254|||||
70V distributed sound - speaker list
Zone|Room|Spkr|Qty|Tap|V.C.
1|Gymnasium|Horn|4|15W|
1|Gym Storage|Horn|1|7.5W|
2|Main Corridor|Ceiling 8"|9|2W|
2|Lobby|Ceiling 8"|4|2W|
2|Restrooms|Ceiling 4"|2|1W|
3|Library|Ceiling 8"|6|4W|VC-A
3|Music Room|Wall|2|4W|VC-B
3|Art Room|Ceiling 8"|2|4W|VC-C
4|Playground|Horn|3|15W|
4|Bus Loop|Horn|2|15W|
`)
		p.Bold("A1", "A3:F3")
		q := p.Sheet("Rack + runs")
		q.Put("A1", `
Zone|Amp|Ch|Ch Power|Home Run|Cable|Ft
1|AMP-1|1|125W|HR-1|14/2|210
2|AMP-1|2|125W|HR-2|16/2|340
3|AMP-2|1|60W|HR-3|16/2|165
4|AMP-2|2|60W|HR-4|14/2|425
||
V.C. = 35W wall plate, all three
`)
		q.Bold("A1:G1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("16-0254", "Tallgrass Elementary School", "zones by number join the rack and the home runs, in feet and gauges; one sentence rates three volume controls; one output is overloaded")
		t.Speakers("sheet=Spkrs; tap_v=70.7; line_v=70.7; zone=1; amplifier=AMP-1; channel=1", `rows|room|count|tap_w
4|Gymnasium|4|15
5|Gym Storage|1|7.5`)
		t.Speakers("sheet=Spkrs; tap_v=70.7; line_v=70.7; zone=2; amplifier=AMP-1; channel=2", `rows|room|count|tap_w
6|Main Corridor|9|2
7|Lobby|4|2
8|Restrooms|2|1`)
		t.Speakers("sheet=Spkrs; tap_v=70.7; line_v=70.7; zone=3; amplifier=AMP-2; channel=1; tap_w=4", `rows|room|count|control
9|Library|6|VC-A
10|Music Room|2|VC-B
11|Art Room|2|VC-C`)
		t.Speakers("sheet=Spkrs; tap_v=70.7; line_v=70.7; zone=4; amplifier=AMP-2; channel=2; tap_w=15", `rows|room|count
12|Playground|3
13|Bus Loop|2`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
AMP-1|1|125|67.5
AMP-1|2|125|28
AMP-2|1|60|40
AMP-2|2|60|75`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP-1|250|95.5
AMP-2|120|115`)
		t.Controls("rated_w=35", `control|load_w
VC-A|24
VC-B|8
VC-C|8`)
		t.Lines("note=home run", `line|zone|length_m|area_mm2
HR-1|1|64.008|2.081
HR-2|2|103.632|1.309
HR-3|3|50.292|1.309
HR-4|4|129.54|2.081`)
	}},

	{File: "surveys/boathouse monday.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("monday")
		p.Put("A1", `
Ferrand Lock boathouse - what's there
one amp in office cupboard, 100 v line, label says 240 w
||
room|how many|what|tap (w)|knob?|remark
boat bay 1|2|horn|10|no
boat bay 2|2|"|"|no
boat bay 3|2|"|"|no|one hanging crooked, plays ok
workshop|1|"|15|no
gym|4|square box|6|yes, 36w|knob by the door
changing boys|2|round ceiling|3|no
changing girls|2|"|"|no
corridor|3|"|"|no
committee room|2|"|"|yes, 12w|knob behind curtain
stairs|1|"|1.5|no
landing|1|"|?|no|couldn't get the cover off
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Ferrand Lock boathouse", "an apprentice's survey with ditto marks, knobs without names and one unknown tap")
		t.Speakers("sheet=monday; tap_v=100; line_v=100", `rows|room|count|tap_w|note
5|boat bay 1|2|10|
6|boat bay 2|2|10|
7|boat bay 3|2|10|
8|workshop|1|15|
9|gym|4|6|unnamed
10|changing boys|2|3|
11|changing girls|2|3|
12|corridor|3|3|
13|committee room|2|3|unnamed
14|stairs|1|1.5|
15|landing|1||`)
		t.Channels("line_v=100", `amplifier|rated_w|load_min_w
|240|127.5`)
		t.Amplifiers("", `amplifier|rated_w
|240`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|36|24
|12|6`)
		t.Asks("monday", `15|asked|tap of the loudspeaker on the landing`)
	}},
}
