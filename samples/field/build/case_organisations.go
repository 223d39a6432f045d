package main

import (
	"strings"

	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// organisations are documents in English of large bodies: a consultancy's schedules, a database export, a council's asset register, test sheets of a
// voice alarm firm, an estimator's take-off, a university's room book, a drawing office's riser sheet and a facilities contractor's service visit.
var organisations = []typed.Case{
	{File: "en/consultancy/AV-SCH-0021 C02.xlsx", Kind: "schedule", Book: func() *excelize.File {
		c := typed.NewBook("Cover")
		c.Put("A1", `
Tarnwater Museum
Public address, schedules
Document|AV-SCH-0021
Revision|C02
Status|Issued for construction

Notes
1|All lines are 100 V.
2|Where no tap is scheduled the default tap of the type applies (sheet Types).
3|Phase 2 items are shown for information and are not part of this contract.
`)
		c.Bold("A1:A2", "A7")
		p := c.Sheet("Loudspeakers")
		p.Put("A1", `
Loudspeaker schedule

PA zone|Room||Loudspeaker|||Volume|Remarks
|No.|Name|Type|Qty|Tap (W)|control|
Z01|'G.01|Entrance Hall|LS-A|6|||
Z01|'G.02|Cloaks|LS-A|2|1.5||
Z01|'G.03|Shop|LS-A|4||VC-01|
Z02|'G.10|Boat Gallery|LS-B|8|||
Z02|'G.11|Rope Gallery|LS-B|4|5||
Z03|'1.01|Lecture Room|LS-C|2||VC-02|
Z03|'1.02|Learning Studio|LS-A|4||VC-03|
Z04|'1.10|Stores Corridor|LS-A|3|1.5||
Z04|'1.11|Plant Room|LS-D|1|||
Z05|Ext.|Quayside|LS-D|4|||
Z05|Ext.|Slipway|LS-D|2|||Phase 2
|||Total this contract|38|||
`)
		p.Merge("B3:C3", "D3:F3", "A3:A4", "H3:H4")
		p.Bold("A1", "A3:H4", "D16:E16")
		q := c.Sheet("Types")
		q.Put("A1", `
Type|Description|Mounting|Max. power (W)|Default tap (W)
LS-A|Ceiling loudspeaker|Recessed|6|3
LS-B|Cabinet loudspeaker|Surface|20|10
LS-C|Column loudspeaker|Surface|30|20
LS-D|Horn loudspeaker|Surface|15|7.5
`)
		q.Bold("A1:E1")
		r := c.Sheet("Amplifiers")
		r.Put("A1", `
Amplifier|Channel|PA zone|Rated output (W)|Design load (W)
AMP-01|1|Z01|125|33
AMP-01|2|Z02|125|100
AMP-02|1|Z03|125|52
AMP-02|2|Z04|125|12
AMP-03|1|Z05|125|30
`)
		r.Bold("A1:E1")
		s := c.Sheet("Volume controls")
		s.Put("A1", `
Ref.|Location|Rating (W)
VC-01|Shop|24
VC-02|Lecture Room|100
VC-03|Learning Studio|24
`)
		s.Bold("A1:C1")
		return c.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Tarnwater Museum", "formal schedules of five sheets: the tap is that of the type unless one is scheduled; greatest power beside it; header of two rows; an item of phase 2; line voltage in the notes of the cover")
		t.Revision("C02", false)
		t.Speakers("sheet=Loudspeakers; tap_v=100; line_v=100; zone=Z01; amplifier=AMP-01; channel=1; model=LS-A", `rows|room|count|tap_w|control
5|Entrance Hall|6|3|
6|Cloaks|2|1.5|
7|Shop|4|3|VC-01`)
		t.Speakers("sheet=Loudspeakers; tap_v=100; line_v=100; zone=Z02; amplifier=AMP-01; channel=2; model=LS-B", `rows|room|count|tap_w
8|Boat Gallery|8|10
9|Rope Gallery|4|5`)
		t.Speakers("sheet=Loudspeakers; tap_v=100; line_v=100; zone=Z03; amplifier=AMP-02; channel=1", `rows|room|model|count|tap_w|control
10|Lecture Room|LS-C|2|20|VC-02
11|Learning Studio|LS-A|4|3|VC-03`)
		t.Speakers("sheet=Loudspeakers; tap_v=100; line_v=100; zone=Z04; amplifier=AMP-02; channel=2", `rows|room|model|count|tap_w
12|Stores Corridor|LS-A|3|1.5
13|Plant Room|LS-D|1|7.5`)
		t.Speakers("sheet=Loudspeakers; tap_v=100; line_v=100; zone=Z05; amplifier=AMP-03; channel=1; model=LS-D", `rows|room|count|tap_w
14|Quayside|4|7.5`)
		t.Channels("line_v=100; rated_w=125", `amplifier|channel|load_w
AMP-01|1|33
AMP-01|2|100
AMP-02|1|52
AMP-02|2|12
AMP-03|1|30`)
		t.Amplifiers("", `amplifier|load_w
AMP-01|133
AMP-02|64
AMP-03|30`)
		t.Controls("", `control|rated_w|load_w
VC-01|24|12
VC-02|100|40
VC-03|24|12`)
		t.Left("Loudspeakers", `15|future|phase 2, not part of this contract
16|total|sum`)
	}},

	{File: "en/export/stn07_pa_assets.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
"asset_id","asset_class","parent_id","site","zone","location","tap_watt","line_volt","rated_watt","op_status"
"10020","RACK","","STN07","EQR","Equipment room","","","","IN SERVICE"
"10021","PA_AMP","10020","STN07","EQR","Equipment room","","100","240","IN SERVICE"
"10022","PA_AMP","10020","STN07","EQR","Equipment room","","100","120","IN SERVICE"
"10023","PA_AMP","10020","STN07","EQR","Equipment room","","100","240","STANDBY"
"10031","PA_ATTN","10022","STN07","TICKET HALL","Ticket office","","","36","IN SERVICE"
"10101","PA_LS","10021","STN07","PLATFORM 1","Column 3","10","100","","IN SERVICE"
"10102","PA_LS","10021","STN07","PLATFORM 1","Column 7","10","100","","IN SERVICE"
"10103","PA_LS","10021","STN07","PLATFORM 1","Column 11","10","100","","IN SERVICE"
"10104","PA_LS","10021","STN07","PLATFORM 2","Column 4","10","100","","IN SERVICE"
"10105","PA_LS","10021","STN07","PLATFORM 2","Column 8","10","100","","IN SERVICE"
"10106","PA_LS","10021","STN07","PLATFORM 2","Column 12","10","100","","DECOMMISSIONED"
"10107","PA_LS","10021","STN07","PLATFORM 2","Column 12","5","100","","IN SERVICE"
"10108","PA_LS","10022","STN07","TICKET HALL","Main door","6","100","","IN SERVICE"
"10109","PA_LS","10022","STN07","TICKET HALL","Ticket machines","6","100","","IN SERVICE"
"10110","PA_LS","10031","STN07","TICKET HALL","Ticket office","3","100","","IN SERVICE"
"10111","PA_LS","10031","STN07","TICKET HALL","Ticket office","3","100","","IN SERVICE"
"10112","PA_LS","10022","STN07","SUBWAY","North stair","6","100","","IN SERVICE"
"10113","PA_LS","10022","STN07","SUBWAY","South stair","6","100","","IN SERVICE"
"10114","PA_LS","","STN07","STORES","Shelf B2","6","100","","STOCK"
"10201","PA_MIC","10020","STN07","TICKET HALL","Ticket office","","","","IN SERVICE"
"10301","HELP_POINT","","STN07","PLATFORM 1","Column 5","","","","IN SERVICE"
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "STN07", "database export: what hangs on what by parent id, two loudspeakers behind an attenuator; states; other classes of asset; an amplifier on standby")
		t.Speakers("tap_v=100; line_v=100; amplifier=10021", `rows|tag|zone|room|tap_w
7|10101|PLATFORM 1|Column 3|10
8|10102|PLATFORM 1|Column 7|10
9|10103|PLATFORM 1|Column 11|10
10|10104|PLATFORM 2|Column 4|10
11|10105|PLATFORM 2|Column 8|10
13|10107|PLATFORM 2|Column 12|5`)
		t.Speakers("tap_v=100; line_v=100; amplifier=10022", `rows|tag|zone|room|tap_w|control
14|10108|TICKET HALL|Main door|6|
15|10109|TICKET HALL|Ticket machines|6|
16|10110|TICKET HALL|Ticket office|3|10031
17|10111|TICKET HALL|Ticket office|3|10031
18|10112|SUBWAY|North stair|6|
19|10113|SUBWAY|South stair|6|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w|note
10021|240|55|
10022|120|30|
10023|240|0|on standby`)
		t.Amplifiers("", `amplifier|rated_w|load_w|note
10021|240|55|
10022|120|30|
10023|240|0|on standby`)
		t.Controls("", `control|rated_w|load_w
10031|36|6`)
		t.Left("", `12|removed|decommissioned
20|spare|in stock
21|other|microphone
22|other|help point`)
	}},

	{File: "en/council/asset register extract.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Site code,Site,Asset ref,Asset type,Location,Qty,Detail,Condition
L03,Ashwether Library,L03/AV/01,PA amplifier,Comms cupboard,1,"120 W, 100 V line",B
L03,Ashwether Library,L03/AV/02,Loudspeaker ceiling,Lending area,6,3 W tap,B
L03,Ashwether Library,L03/AV/03,Loudspeaker ceiling,Children's library,4,3 W tap,B
L03,Ashwether Library,L03/AV/04,Loudspeaker ceiling,Reading room,2,1.5 W tap,C
L03,Ashwether Library,L03/AV/05,Volume control,Reading room,1,12 W,C
L03,Ashwether Library,L03/ME/01,Extract fan,Toilets,2,40 W,B
H11,Millcombe Hall,H11/AV/01,PA amplifier,Stage left cupboard,1,"60 W, 100 V line",C
H11,Millcombe Hall,H11/AV/02,Loudspeaker wall,Main hall,4,6 W tap,B
H11,Millcombe Hall,H11/AV/03,Loudspeaker wall,Meeting room,2,3 W tap,B
H11,Millcombe Hall,H11/AV/04,Loudspeaker ceiling,Foyer,2,3 W tap,B
H11,Millcombe Hall,H11/EL/01,Emergency luminaire,Foyer,3,8 W,B
S02,Weir Lane Baths,S02/AV/01,PA amplifier,Plant room office,1,"240 W, 100 V line",B
S02,Weir Lane Baths,S02/AV/02,Loudspeaker horn,Main pool,6,15 W tap,C
S02,Weir Lane Baths,S02/AV/03,Loudspeaker horn,Teaching pool,2,10 W tap,C
S02,Weir Lane Baths,S02/AV/04,Loudspeaker ceiling,Changing village,8,1.5 W tap,B
S02,Weir Lane Baths,S02/AV/05,Loudspeaker ceiling,Staff room,1,tap not recorded,C
S02,Weir Lane Baths,S02/AV/06,Volume control,Staff room,1,6 W,C
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("L03", "Ashwether Library", "a council's register of three sites, amplifiers, loudspeakers and controls each a row, other assets with watts among them; a control known by its room")
		t.Speakers("tap_v=100; line_v=100; amplifier=L03/AV/01", `rows|tag|room|count|tap_w|control
3|L03/AV/02|Lending area|6|3|
4|L03/AV/03|Children's library|4|3|
5|L03/AV/04|Reading room|2|1.5|L03/AV/05`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
L03/AV/01|120|33`)
		t.Amplifiers("", `amplifier|rated_w|load_w
L03/AV/01|120|33`)
		t.Controls("", `control|zone|rated_w|load_w
L03/AV/05|Reading room|12|3`)
		t.Also("H11", "Millcombe Hall", "second site of the register")
		t.Speakers("tap_v=100; line_v=100; amplifier=H11/AV/01", `rows|tag|room|count|tap_w
9|H11/AV/02|Main hall|4|6
10|H11/AV/03|Meeting room|2|3
11|H11/AV/04|Foyer|2|3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
H11/AV/01|60|36`)
		t.Amplifiers("", `amplifier|rated_w|load_w
H11/AV/01|60|36`)
		t.Also("S02", "Weir Lane Baths", "third site of the register; one tap was not recorded")
		t.Speakers("tap_v=100; line_v=100; amplifier=S02/AV/01", `rows|tag|room|count|tap_w|control
14|S02/AV/02|Main pool|6|15|
15|S02/AV/03|Teaching pool|2|10|
16|S02/AV/04|Changing village|8|1.5|
17|S02/AV/05|Staff room|1||S02/AV/06`)
		t.Channels("line_v=100", `amplifier|rated_w|load_min_w
S02/AV/01|240|122`)
		t.Amplifiers("", `amplifier|rated_w
S02/AV/01|240`)
		t.Controls("", `control|zone|rated_w|load_w
S02/AV/06|Staff room|6|`)
		t.Asks("", `17|asked|tap that was not recorded`)
		t.Left("", `7|other|extract fan
12|other|emergency luminaire`)
	}},

	{File: "en/voice alarm/VA test sheets Larkfield.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Rack 1")
		p.Put("A1", `
Voice alarm commissioning test sheet
Site|Larkfield Hall|Contract|V-7719
Rack|1|Line|100 V
Amplifiers|PA1 and PA2, 2 channels of 150 W each

Cct|Amp / ch|Area covered|Loudspeakers|Calc. W|Meas. ohm|Meas. W|Ins. Mohm|Result
1A|PA1/1|Auditorium stalls|12 @ 3 W + 2 @ 6 W|48|204|49|>20|Pass
1B|PA1/2|Auditorium circle|10 @ 3 W|30|341|29|>20|Pass
2A|PA2/1|Foyer|8 @ 3 W|24|410|24|>20|Pass
2B|PA2/2|Dressing rooms|6 @ 1.5 W|9|1020|10|15|Pass
`)
		p.Bold("A1", "A6:I6")
		q := p.Sheet("Rack 2")
		q.Put("A1", `
Voice alarm commissioning test sheet
Site|Larkfield Hall|Contract|V-7719
Rack|2|Line|100 V
Amplifiers|PA3 and PA4, 2 channels of 150 W each

Cct|Amp / ch|Area covered|Loudspeakers|Calc. W|Meas. ohm|Meas. W|Ins. Mohm|Result
3A|PA3/1|Workshop|4 @ 6 W|24|412|24|>20|Pass *
3B|PA3/2|Loading bay|2 @ 10 W|20|498|20|>20|Pass
4A|PA4/1|Offices|5 @ 1.5 W + 1 @ 3 W|10.5|940|11|>20|Pass
4B|PA4/2|Spare|none|0|||>20|n/a

* one unit was found on 3 W, set to 6 W on the day, retest passed
`)
		q.Bold("A1", "A6:I6")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("V-7719", "Larkfield Hall", "test sheets, one a rack: count and tap in one cell, two sets in some; calculated and measured watts; ratings of the channels above; a tap set right by a footnote; a spare circuit")
		t.Speakers("sheet=Rack 1; tap_v=100; line_v=100", `rows|zone|amplifier|channel|count|tap_w
7|Auditorium stalls|PA1|1|12|3
7|Auditorium stalls|PA1|1|2|6
8|Auditorium circle|PA1|2|10|3
9|Foyer|PA2|1|8|3
10|Dressing rooms|PA2|2|6|1.5`)
		t.Speakers("sheet=Rack 2; tap_v=100; line_v=100", `rows|zone|amplifier|channel|count|tap_w
7|Workshop|PA3|1|4|6
8|Loading bay|PA3|2|2|10
9|Offices|PA4|1|5|1.5
9|Offices|PA4|1|1|3`)
		t.Channels("line_v=100; rated_w=150", `amplifier|channel|load_w
PA1|1|48
PA1|2|30
PA2|1|24
PA2|2|9
PA3|1|24
PA3|2|20
PA4|1|10.5
PA4|2|0`)
		t.Amplifiers("", `amplifier|load_w
PA1|78
PA2|33
PA3|44
PA4|10.5`)
		t.Left("Rack 2", `10|other|spare circuit without loudspeakers`)
	}},

	{File: "en/estimating/bid 24-117 takeoff.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Takeoff")
		p.Put("A1", `
Rowan Lake Ice Rink, bid 24-117
70V overhead paging take-off

Sheet|Area|Item|Qty|Wire (ft)|Remarks
T1.1|Rink bowl|S2|8|420|
T1.1|Bleachers|S3|6|260|
T1.1|Lobby|S1|6|180|
T1.1|Lobby|VC-A|1||
T1.1|Skate rental|S1|2|60|
T1.2|Locker rooms 1-4|S1|4|210|one each
T1.2|Corridor|S1|5|150|
T1.2|Office|S1|1|40|
T1.2|Office|VC-B|1||
T1.2|Skate sharpening|S1|2|70|alternate 1, not in base bid
T2.1|Parking drive|S2|3|380|
|Total wire|||1770|

One amplifier for all, 300 W
`)
		p.Bold("A1", "A4:F4", "B16:E16")
		q := p.Sheet("Legend")
		q.Put("A1", `
Item|What|Tap
S1|8 in. ceiling speaker w/ back can|2.5 W
S2|Weatherproof horn|15 W
S3|Wall box|5 W
VC-A|Volume control, 35 W|
VC-B|Volume control, 10 W|
Wire|16 AWG pair|
`)
		q.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("24-117", "Rowan Lake Ice Rink", "take-off: symbols whose taps and ratings stand in a legend; controls as rows; wire in feet; an alternate outside the bid")
		t.Speakers("sheet=Takeoff; tap_v=70.7; line_v=70.7", `rows|zone|model|count|tap_w|control
5|Rink bowl|S2|8|15|
6|Bleachers|S3|6|5|
7|Lobby|S1|6|2.5|VC-A
9|Skate rental|S1|2|2.5|
10|Locker rooms 1-4|S1|4|2.5|
11|Corridor|S1|5|2.5|
12|Office|S1|1|2.5|VC-B
15|Parking drive|S2|3|15|`)
		t.Channels("line_v=70.7", `amplifier|rated_w|load_w
|300|240`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|300|240`)
		t.Controls("", `control|zone|rated_w|load_w
VC-A|Lobby|35|15
VC-B|Office|10|2.5`)
		t.Lines("note=one length a zone; area_mm2=1.31", `zone|length_m
Rink bowl|128.016
Bleachers|79.248
Lobby|54.864
Skate rental|18.288
Locker rooms 1-4|64.008
Corridor|45.72
Office|12.192
Parking drive|115.824`)
		t.Left("Takeoff", `14|future|alternate, not in the bid
16|total|feet of wire`)
	}},

	{File: "en/university/Hollin Building room book.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Room book")
		p.Put("A1", `
Fernleigh University, Estates
Room book, Hollin Building, issue 4

Room||||Services||Public address||||Remarks
No.|Name|Area m²|Persons|Lighting W|Heating W|Zone|Speakers|Tap W|Attenuator W|
'0.01|Entrance foyer|120|60|900|6000|PA1|6|3||
'0.02|Porters' lodge|18|2|150|1200|PA1|1|1.5|6|
'0.03|Lecture theatre A|210|180|2600|9000|PA2|8|6|100|
'0.04|Plant room|40|0|200|0|PA1|1|6||horn
'1.01|Seminar room 1|55|24|600|2500|PA3|2|3|12|
'1.02|Seminar room 2|55|24|600|2500|PA3|2|3|12|
'1.03|Store|12|0|80|0||0|||no PA
'1.04|Corridor|60|0|420|1800|PA3|4|1.5||
'2.01|Reading room|180|90|2200|8000|PA4|6|3|36|
'2.02|Office|20|3|220|1500|PA4|1|1.5|6|
'2.03|Print room|14|1|160|600|PA4|1|1.5||deleted, now part of 2.04
'2.04|Open office|95|16|1100|4200|PA4|4|1.5|12|
`)
		p.Merge("A4:D4", "E4:F4", "G4:J4")
		p.Bold("A1:A2", "A4:K5")
		p.Strike("A16:K16")
		q := p.Sheet("PA zones")
		q.Put("A1", `
Zone|Amplifier|Output|Rating W|Line V
PA1|AMP 1|1|120|100
PA2|AMP 1|2|120|100
PA3|AMP 2|1|60|100
PA4|AMP 2|2|60|100
`)
		q.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Hollin Building", "room book with areas, persons, watts of light and heat beside the loudspeakers; attenuators without names, one a room; a room struck out, a room without any")
		t.Speakers("sheet=Room book; tap_v=100; line_v=100; zone=PA1; amplifier=AMP 1; channel=1", `rows|room|count|tap_w|note
6|Entrance foyer|6|3|
7|Porters' lodge|1|1.5|under an attenuator of 6 W without a name
9|Plant room|1|6|`)
		t.Speakers("sheet=Room book; tap_v=100; line_v=100; zone=PA2; amplifier=AMP 1; channel=2", `rows|room|count|tap_w|note
8|Lecture theatre A|8|6|under an attenuator of 100 W without a name`)
		t.Speakers("sheet=Room book; tap_v=100; line_v=100; zone=PA3; amplifier=AMP 2; channel=1", `rows|room|count|tap_w|note
10|Seminar room 1|2|3|under an attenuator of 12 W without a name
11|Seminar room 2|2|3|under an attenuator of 12 W without a name
13|Corridor|4|1.5|`)
		t.Speakers("sheet=Room book; tap_v=100; line_v=100; zone=PA4; amplifier=AMP 2; channel=2", `rows|room|count|tap_w|note
14|Reading room|6|3|under an attenuator of 36 W without a name
15|Office|1|1.5|under an attenuator of 6 W without a name
17|Open office|4|1.5|under an attenuator of 12 W without a name`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP 1|1|120|25.5
AMP 1|2|120|48
AMP 2|1|60|18
AMP 2|2|60|25.5`)
		t.Amplifiers("", `amplifier|load_w
AMP 1|73.5
AMP 2|43.5`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|PA1|6|1.5
|PA2|100|48
|PA3|12|6
|PA3|12|6
|PA4|36|18
|PA4|6|1.5
|PA4|12|6`)
		t.Left("Room book", `12|other|no loudspeakers in the store
16|removed|struck out`)
	}},

	{File: "en/drawing office/library riser sheet.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Risers")
		p.Put("A1", `
Central Library, book tower. Loudspeakers by level and riser, 100 V
Level|North riser|South riser|Core
|AMP N, 240 W|AMP S, 240 W|AMP C, 60 W
L6|4 x 3 W|6 x 3 W|2 x 1.5 W
L5|8 x 3 W|8 x 3 W|2 x 1.5 W
L4|8 x 3 W|none|2 x 1.5 W
L3|6 x 3 W|8 x 3 W|2 x 1.5 W
L2|6 x 3 W|4 x 6 W|2 x 1.5 W
L1|4 x 6 W|4 x 6 W|2 x 1.5 W
G|2 x 6 W + 4 x 3 W|4 x 6 W|2 x 3 W
B|none|2 x 6 W, via VC-B (24 W)|1 x 6 W
Total|144 W|150 W|30 W

Riser|Cable|Length m
North riser|2 x 2.5 mm²|62
South riser|2 x 2.5 mm²|58
Core|2 x 1.5 mm²|55
`)
		p.Bold("A1", "A2:D3", "A12:D12", "A14:C14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Central Library, book tower", "riser sheet: levels down, risers across, count and tap in the cells; amplifiers with ratings in the second header row; one cell with two taps, one with a control")
		t.Speakers("sheet=Risers; tap_v=100; line_v=100; amplifier=AMP N; note=floor as zone", `rows|zone|count|tap_w
4|L6|4|3
5|L5|8|3
6|L4|8|3
7|L3|6|3
8|L2|6|3
9|L1|4|6
10|G|2|6
10|G|4|3`)
		t.Speakers("sheet=Risers; tap_v=100; line_v=100; amplifier=AMP S; note=floor as zone", `rows|zone|count|tap_w|control
4|L6|6|3|
5|L5|8|3|
7|L3|8|3|
8|L2|4|6|
9|L1|4|6|
10|G|4|6|
11|B|2|6|VC-B`)
		t.Speakers("sheet=Risers; tap_v=100; line_v=100; amplifier=AMP C; note=floor as zone", `rows|zone|count|tap_w
4|L6|2|1.5
5|L5|2|1.5
6|L4|2|1.5
7|L3|2|1.5
8|L2|2|1.5
9|L1|2|1.5
10|G|2|3
11|B|1|6`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP N|240|144
AMP S|240|150
AMP C|60|30`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP N|240|144
AMP S|240|150
AMP C|60|30`)
		t.Controls("", `control|rated_w|load_w
VC-B|24|12`)
		t.Lines("note=one length a riser", `line|length_m|area_mm2
North riser|62|2.5
South riser|58|2.5
Core|55|1.5`)
		t.Left("Risers", `12|total|sums`)
	}},

	{File: "en/facilities/equestrian visit 2.txt", Kind: "schedule", Bytes: func() []byte {
		return []byte(strings.ReplaceAll(typed.DOS(`
Hawthornbeck Equestrian Centre, PA service visit 2 of 4
Line 100V|Amp 1 = arena and yard, 240W|Amp 2 = indoors, 120W

Item|Amp|Location|Type|As found W|As left W|Comment
1|1|Arena north|horn|15|15|
2|1|Arena south|horn|15|15|
3|1|Arena east|horn|30|15|too loud for the judges, tapped down
4|1|Yard block A|horn|10|10|
5|1|Yard block B|horn|dead|10|new driver fitted
6|1|Yard block C|horn|10|10|
7|1|Lorry park|horn|10|-|taken down, bracket rusted through
8|2|Tack room|ceiling|3|3|
9|2|Viewing gallery|cabinet|6|6|on VC1, 24W
10|2|Viewing gallery|cabinet|6|6|on VC1
11|2|Secretary|ceiling|3|1.5|on VC2, 6W
12|2|Corridor|ceiling|3|3|
13|2|Feed store|horn|?|?|locked, not seen this visit
`), "|", "\t"))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Hawthornbeck Equestrian Centre", "service visit: taps as found and as left, those as left hold; one horn taken down, one not seen; controls with ratings in comments; amplifiers in a line above")
		t.Speakers("tap_v=100; line_v=100; amplifier=Amp 1", `rows|room|tap_w
5|Arena north|15
6|Arena south|15
7|Arena east|15
8|Yard block A|10
9|Yard block B|10
10|Yard block C|10`)
		t.Speakers("tap_v=100; line_v=100; amplifier=Amp 2", `rows|room|tap_w|control
12|Tack room|3|
13|Viewing gallery|6|VC1
14|Viewing gallery|6|VC1
15|Secretary|1.5|VC2
16|Corridor|3|
17|Feed store||`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w|load_min_w
Amp 1|240|75|
Amp 2|120||19.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
Amp 1|240|75
Amp 2|120|`)
		t.Controls("", `control|rated_w|load_w
VC1|24|12
VC2|6|1.5`)
		t.Left("", `11|removed|taken down`)
		t.Asks("", `17|asked|tap of the horn that was not seen`)
	}},
}
