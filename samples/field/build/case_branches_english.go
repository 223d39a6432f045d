package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// branchesEnglish are four branch offices of a maintenance firm, in English.
var branchesEnglish = []typed.Case{
	// a service engineer's one-sheet list, one amplifier that nobody named
	{File: "branches/branch Harl Street/30417 Cawdlow rink speakers.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Spkrs")
		p.Put("A1", `
Cawdlow Ice Rink - PA|||||Job 30417
Loudspeakers as found and left, annual service
Amplifier: rack mount, 4 outputs of 120 W each, 100 V line
||
No.|Where|Kind|Qty|Set at|O/P|Remarks
1|Rink, north wall|horn|4|15 W|1|
2|Rink, south wall|horn|3|15 W|1|
3|Skate hire|ceiling|4|3 W|2|
4|Skate hire queue|ceiling|2|3 W|2|
5|Changing A|surface box|2|3 W|2|
6|Changing B|surface box|2|3 W|2|
7|Spectators gallery|column|4|10 W|3|
8|Gallery stairs|surface box|1|6 W|3|grille loose, refixed
9|First aid|ceiling|1|1.5 W|4|
10|Office|ceiling|1|1.5 W|4|via VC-1 (6 W)
11|Resurfacer garage|horn|1|10 W|4|
12|Boiler room|horn|1|10 W|4|taken down 2019, not replaced
`)
		p.Bold("A1", "A5:G5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("30417", "Cawdlow Ice Rink", "plain; an amplifier without a name with four outputs rated in a line above; one control in a remark; one horn taken down")
		t.Speakers("sheet=Spkrs; tap_v=100; line_v=100; channel=1", `rows|room|count|tap_w
6|Rink, north wall|4|15
7|Rink, south wall|3|15`)
		t.Speakers("sheet=Spkrs; tap_v=100; line_v=100; channel=2", `rows|room|count|tap_w
8|Skate hire|4|3
9|Skate hire queue|2|3
10|Changing A|2|3
11|Changing B|2|3`)
		t.Speakers("sheet=Spkrs; tap_v=100; line_v=100; channel=3", `rows|room|count|tap_w
12|Spectators gallery|4|10
13|Gallery stairs|1|6`)
		t.Speakers("sheet=Spkrs; tap_v=100; line_v=100; channel=4", `rows|room|count|tap_w|control
14|First aid|1|1.5|
15|Office|1|1.5|VC-1
16|Resurfacer garage|1|10|`)
		t.Channels("line_v=100; rated_w=120", `amplifier|channel|load_w
|1|105
|2|30
|3|46
|4|13`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|480|194`)
		t.Controls("", `control|rated_w|load_w
VC-1|6|1.5`)
		t.Left("Spkrs", `17|removed|taken down 2019`)
	}},

	// an export of a facility data base, everything in one table with what feeds it
	{File: "branches/branch Penhallow/cafm_export_public_address.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
AssetID,AssetClass,Description,Level,Room,FedFrom,RatingW,TapW,Status,LastInspected
PA-0001,AMPLIFIER,"Power amplifier, 100 V",B1,B1.04 Plant,,240,,In service,2019-03-04
PA-0002,AMPLIFIER,"Power amplifier, 100 V",B1,B1.04 Plant,,120,,In service,2019-03-04
PA-0011,VOLUME CONTROL,"Wall attenuator",00,0.12 Reading room,PA-0001,36,,In service,2019-03-04
PA-0012,VOLUME CONTROL,"Wall attenuator",01,1.03 Lecture room,PA-0002,24,,In service,2019-03-04
PA-0101,LOUDSPEAKER,"Ceiling, 6 inch",00,0.01 Entrance,PA-0001,,6,In service,2019-03-05
PA-0102,LOUDSPEAKER,"Ceiling, 6 inch",00,0.01 Entrance,PA-0001,,6,In service,2019-03-05
PA-0103,LOUDSPEAKER,"Ceiling, 6 inch",00,0.02 Issue desk,PA-0001,,3,In service,2019-03-05
PA-0104,LOUDSPEAKER,"Wall box",00,0.12 Reading room,PA-0011,,6,In service,2019-03-05
PA-0105,LOUDSPEAKER,"Wall box",00,0.12 Reading room,PA-0011,,6,In service,2019-03-05
PA-0106,LOUDSPEAKER,"Wall box",00,0.12 Reading room,PA-0011,,6,In service,2019-03-05
PA-0107,LOUDSPEAKER,"Ceiling, 6 inch",01,1.01 Stacks,PA-0002,,3,In service,2019-03-06
PA-0108,LOUDSPEAKER,"Ceiling, 6 inch",01,1.01 Stacks,PA-0002,,3,In service,2019-03-06
PA-0109,LOUDSPEAKER,"Ceiling, 6 inch",01,1.02 Map room,PA-0002,,3,Disposed,2016-11-21
PA-0110,LOUDSPEAKER,"Ceiling, 6 inch",01,1.03 Lecture room,PA-0012,,6,In service,2019-03-06
PA-0111,LOUDSPEAKER,"Ceiling, 6 inch",01,1.03 Lecture room,PA-0012,,6,In service,2019-03-06
PA-0112,LOUDSPEAKER,"Ceiling, 6 inch",B1,B1.04 Plant,,,6,Spare in store,2019-03-06
PA-0113,LOUDSPEAKER,"Horn, weatherproof",00,Delivery yard,PA-0001,,15,In service,2019-03-06
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "an export: amplifiers, controls and loudspeakers in one table, joined by what feeds them; one disposed, one spare")
		t.Speakers("tap_v=100; line_v=100; amplifier=PA-0001", `rows|tag|room|tap_w|control
6|PA-0101|0.01 Entrance|6|
7|PA-0102|0.01 Entrance|6|
8|PA-0103|0.02 Issue desk|3|
9|PA-0104|0.12 Reading room|6|PA-0011
10|PA-0105|0.12 Reading room|6|PA-0011
11|PA-0106|0.12 Reading room|6|PA-0011
18|PA-0113|Delivery yard|15|`)
		t.Speakers("tap_v=100; line_v=100; amplifier=PA-0002", `rows|tag|room|tap_w|control
12|PA-0107|1.01 Stacks|3|
13|PA-0108|1.01 Stacks|3|
15|PA-0110|1.03 Lecture room|6|PA-0012
16|PA-0111|1.03 Lecture room|6|PA-0012`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
PA-0001|240|48
PA-0002|120|18`)
		t.Amplifiers("", `amplifier|rated_w|load_w
PA-0001|240|48
PA-0002|120|18`)
		t.Controls("", `control|rated_w|load_w
PA-0011|36|18
PA-0012|24|12`)
		t.Left("", `2|amplifier|PA-0001
3|amplifier|PA-0002
4|control|PA-0011
5|control|PA-0012
14|removed|disposed
17|spare|in store`)
	}},

	// a drawing office's matrix of rooms against types, outputs on a second sheet
	{File: "branches/branch Penhallow/Ottermere museum room matrix.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Rooms")
		p.Put("A1", `
OTTERMERE MUSEUM OF TIDES||||||Contract 8812
Loudspeakers per room (numbers), 100 V line
||
Room|Zone|Ceiling 3 W|Ceiling 6 W|Wall box 6 W|Horn 15 W|Room total W
Foyer|Z1|2|4|||30
Ticket desk|Z1|1||||3
Cloakroom|Z1|2||||6
Tide gallery|Z2||6|4||60
Chart room|Z2||4|||24
Film room|Z3|||4||24
School room|Z3|4||||12
Slipway|Z4||||2|30
Boat shed|Z4|||2|2|42
Total||9|14|10|4|231
`)
		p.Bold("A1", "A4:G4", "A14:G14")
		q := p.Sheet("Outputs")
		q.Put("A1", `
Zone|Amplifier|Output|Output W|Volume control|Control rating W
Z1|AMP1|A|120||
Z2|AMP1|B|120|VC2|100
Z3|AMP2|A|60|VC3|50
Z4|AMP2|B|120||
`)
		q.Bold("A1:F1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("8812", "OTTERMERE MUSEUM OF TIDES", "a matrix of rooms against types with the tap in the heading; outputs and controls by zone on a second sheet")
		t.Speakers("sheet=Rooms; tap_v=100; line_v=100; zone=Z1; amplifier=AMP1; channel=A", `rows|room|count|tap_w
5|Foyer|2|3
5|Foyer|4|6
6|Ticket desk|1|3
7|Cloakroom|2|3`)
		t.Speakers("sheet=Rooms; tap_v=100; line_v=100; zone=Z2; amplifier=AMP1; channel=B; control=VC2", `rows|room|count|tap_w
8|Tide gallery|6|6
8|Tide gallery|4|6
9|Chart room|4|6`)
		t.Speakers("sheet=Rooms; tap_v=100; line_v=100; zone=Z3; amplifier=AMP2; channel=A; control=VC3", `rows|room|count|tap_w
10|Film room|4|6
11|School room|4|3`)
		t.Speakers("sheet=Rooms; tap_v=100; line_v=100; zone=Z4; amplifier=AMP2; channel=B", `rows|room|count|tap_w
12|Slipway|2|15
13|Boat shed|2|6
13|Boat shed|2|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|A|120|39
AMP1|B|120|84
AMP2|A|60|36
AMP2|B|120|72`)
		t.Amplifiers("", `amplifier|load_w
AMP1|123
AMP2|108`)
		t.Controls("", `control|zone|rated_w|load_w
VC2|Z2|100|84
VC3|Z3|50|36`)
		t.Left("Rooms", `14|total|sums`)
	}},

	// a consultant's tender form, filled in by the estimator, 70 V, feet
	{File: "branches/branch Upper Fenwick/bid form 27 51 16 station.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Bid form")
		p.Put("A1", `
BID FORM - SECTION 27 51 16 PUBLIC ADDRESS|||||||
Project: Lindmoor Street Station, concourse and platforms|||||Project no. 1904-C||
All loudspeakers on 70 V lines||||||
||
Item|Description|Location|Zone|Unit|Quantity|Tap (watts)|Unit price|Amount
A|CEILING LOUDSPEAKERS
A.1|8" ceiling speaker w/ back can|Ticket hall|Concourse|EA|8|5||
A.2|8" ceiling speaker w/ back can|Waiting room|Concourse|EA|4|2.5||
A.3|8" ceiling speaker w/ back can|Staff corridor|Back of house|EA|3|1.25||
A.4|8" ceiling speaker w/ back can|Dispatch office|Back of house|EA|1|1.25||
B|HORNS
B.1|Weatherproof horn|Platform 1|Platform 1|EA|9|7.5||
B.2|Weatherproof horn|Platform 2|Platform 2|EA|9|7.5||
B.3|Weatherproof horn|Footbridge|Platform 2|EA|2|7.5||
B.4|Weatherproof horn|For owner's stock|--|EA|2|||
C|ATTENUATORS
C.1|AT-1, 10 W wall attenuator|Dispatch office, for A.4|Back of house|EA|1|||
C.2|AT-2, 35 W wall attenuator|Waiting room, for A.2|Concourse|EA|1|||
D|AMPLIFIERS
D.1|PA-1, two channel, 2 x 150 W|Comm. room||EA|1|||
D.2|PA-2, two channel, 2 x 100 W|Comm. room||EA|1|||
|||||||TOTAL|
`)
		p.Bold("A1", "A5:I5", "A6:B6", "A11:B11", "A16:B16", "A19:B19")
		q := p.Sheet("Cable")
		q.Put("A1", `
Run|From|To|Zone|AWG|Length (ft)|Load (W)
C-1|PA-1 ch 1|Ticket hall|Concourse|14|180|50
C-2|PA-1 ch 2|Platform 1|Platform 1|12|420|67.5
C-3|PA-2 ch 1|Platform 2|Platform 2|12|510|82.5
C-4|PA-2 ch 2|Staff corridor|Back of house|16|95|5
`)
		q.Bold("A1:G1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("1904-C", "Lindmoor Street Station", "a tender form with lettered sections; controls and amplifiers are items of the same table; outputs by zone in the cable sheet; feet and gauges; horns for stock")
		t.Speakers("sheet=Bid form; tap_v=70.7; line_v=70.7; zone=Concourse; amplifier=PA-1; channel=1", `rows|room|count|tap_w|control
7|Ticket hall|8|5|
8|Waiting room|4|2.5|AT-2`)
		t.Speakers("sheet=Bid form; tap_v=70.7; line_v=70.7; zone=Back of house; amplifier=PA-2; channel=2", `rows|room|count|tap_w|control
9|Staff corridor|3|1.25|
10|Dispatch office|1|1.25|AT-1`)
		t.Speakers("sheet=Bid form; tap_v=70.7; line_v=70.7; zone=Platform 1; amplifier=PA-1; channel=2", `rows|room|count|tap_w
12|Platform 1|9|7.5`)
		t.Speakers("sheet=Bid form; tap_v=70.7; line_v=70.7; zone=Platform 2; amplifier=PA-2; channel=1", `rows|room|count|tap_w
13|Platform 2|9|7.5
14|Footbridge|2|7.5`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
PA-1|1|150|50
PA-1|2|150|67.5
PA-2|1|100|82.5
PA-2|2|100|5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
PA-1|300|117.5
PA-2|200|87.5`)
		t.Controls("", `control|zone|rated_w|load_w
AT-1|Back of house|10|1.25
AT-2|Concourse|35|10`)
		t.Lines("", `line|zone|from|to|length_m|area_mm2
C-1|Concourse|PA-1 ch 1|Ticket hall|54.864|2.081
C-2|Platform 1|PA-1 ch 2|Platform 1|128.016|3.309
C-3|Platform 2|PA-2 ch 1|Platform 2|155.448|3.309
C-4|Back of house|PA-2 ch 2|Staff corridor|28.956|1.309`)
		t.Left("Bid form", `15|spare|owner's stock
17|control|AT-1
18|control|AT-2
20|amplifier|PA-1
21|amplifier|PA-2
22|total|total of prices`)
	}},
}
