package main

import (
	"strings"

	"lineaudit/samples/typed"
)

// tabbed turns bars into tabs.
func tabbed(text string) string { return strings.ReplaceAll(text, "|", "\t") }

// textLists are lists saved as text: an installer, estimators, a school's office, a rack builder, a cabling gang, a railway tester, a depot.
var textLists = []typed.Case{
	{File: "as fitted/BH2214 boathouse PA.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Kestrel Reach Boathouse - PA as fitted,,,,,,,
Job BH2214,,,,100V line,,,
,,,,,,,
Ref,Zone,Location,Type,Qty,Tap W,Amp,Vol control
LS1,Boat hall,Bays 1-3,Projector,3,10,AMP1,
LS2,Boat hall,Bays 4-6,Projector,3,10,AMP1,
LS3,Boat hall,Workshop,Cabinet,2,6,AMP1,
LS4,Outside,Slipway,Horn,2,15,AMP1,
LS5,Outside,Pontoon,Horn,1,15,AMP1,
LS6,Clubhouse,Clubroom,Ceiling,6,6,AMP2,VC1
LS7,Clubhouse,Galley,Ceiling,1,3,AMP2,
LS8,Clubhouse,Changing (M),Ceiling,2,3,AMP2,
LS9,Clubhouse,Changing (F),Ceiling,2,3,AMP2,
LS10,Clubhouse,Corridor,Ceiling,2,1.5,AMP2,
LS11,Clubhouse,Gym,Cabinet,4,6,AMP2,VC2
,,,,,,,
Amp,Rating W,Position,,,,,
AMP1,240,"Office rack, top",,,,,
AMP2,120,"Office rack, below AMP1",,,,,
,,,,,,,
Vol control,Rating W,Position,,,,,
VC1,50,Clubroom by door,,,,,
VC2,30,Gym by switch plate,,,,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("BH2214", "Kestrel Reach Boathouse", "plain; amplifiers and volume controls in small tables below the list")
		t.Speakers("tap_v=100; line_v=100; zone=Boat hall; amplifier=AMP1", `rows|tag|room|count|tap_w
5|LS1|Bays 1-3|3|10
6|LS2|Bays 4-6|3|10
7|LS3|Workshop|2|6`)
		t.Speakers("tap_v=100; line_v=100; zone=Outside; amplifier=AMP1", `rows|tag|room|count|tap_w
8|LS4|Slipway|2|15
9|LS5|Pontoon|1|15`)
		t.Speakers("tap_v=100; line_v=100; zone=Clubhouse; amplifier=AMP2", `rows|tag|room|count|tap_w|control
10|LS6|Clubroom|6|6|VC1
11|LS7|Galley|1|3|
12|LS8|Changing (M)|2|3|
13|LS9|Changing (F)|2|3|
14|LS10|Corridor|2|1.5|
15|LS11|Gym|4|6|VC2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP1|240|117
AMP2|120|78`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP1|240|117
AMP2|120|78`)
		t.Controls("", `control|rated_w|load_w
VC1|50|36
VC2|30|24`)
	}},

	{File: "bids/24-118 rink takeoff.txt", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(tabbed(`
Bid 24-118|Tamarack Ice Rink|paging + music|70V

Zone|Space|Type|Qty|Tap|Watts|HR ft|Wire
1|Main ice north|Horn|6|16W|96|210|12/2
1|Main ice south|Horn|6|16W|96|260|12/2
1|Bleachers|Surface|8|8W|64|180|14/2
2|Lobby|Ceiling|6|4W|24|60|16/2
2|Skate rental|Ceiling|4|4W|16|85|16/2
2|Pro counter|Ceiling|2|2W|4|90|16/2
3|Locker 1|Ceiling|2|2W|4|140|18/2
3|Locker 2|Ceiling|2|2W|4|155|18/2
3|Locker 3|Ceiling|2|2W|4|170|18/2
3|Ref room|Ceiling|1|1W|1|150|18/2
TOTAL|||39||313|1500|

Amp ch|Zone|Watts avail
1|1|400
2|2|120
3|3|60

ALTERNATE 1 - not in base price
|Outdoor pad|Horn|4|16W|64
`)))
	}, Truth: func(t *typed.Truth) {
		t.Is("24-118", "Tamarack Ice Rink", "plain take-off, tab-separated; home runs in feet with 12/2 for two cores of 12 AWG; channels of an amplifier without a name; an alternate outside the price")
		t.Speakers("tap_v=70.7; line_v=70.7; zone=1; channel=1", `rows|room|count|tap_w
4|Main ice north|6|16
5|Main ice south|6|16
6|Bleachers|8|8`)
		t.Speakers("tap_v=70.7; line_v=70.7; zone=2; channel=2", `rows|room|count|tap_w
7|Lobby|6|4
8|Skate rental|4|4
9|Pro counter|2|2`)
		t.Speakers("tap_v=70.7; line_v=70.7; zone=3; channel=3", `rows|room|count|tap_w
10|Locker 1|2|2
11|Locker 2|2|2
12|Locker 3|2|2
13|Ref room|1|1`)
		t.Channels("line_v=70.7", `channel|rated_w|load_w
1|400|256
2|120|44
3|60|13`)
		t.Lines("note=home run", `zone|to|length_m|area_mm2
1|Main ice north|64.008|3.309
1|Main ice south|79.248|3.309
1|Bleachers|54.864|2.081
2|Lobby|18.288|1.309
2|Skate rental|25.908|1.309
2|Pro counter|27.432|1.309
3|Locker 1|42.672|0.823
3|Locker 2|47.244|0.823
3|Locker 3|51.816|0.823
3|Ref room|45.72|0.823`)
		t.Left("", `14|total|sums
22|future|alternate, not in the base price`)
	}},

	{File: "registers/school AV assets 2023.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Asset No,Description,Location,Qty,Max W,Tapped W,PA Zone,Connected to,Remarks
PA-001,Power amplifier 240W 100V line,General Office rack,1,,,,,
PA-002,Power amplifier 120W 100V line,General Office rack,1,,,,,
PA-003,Paging microphone,General Office,1,,,,PA-001,
PA-004,Wall attenuator 24W,Staff Room,1,,,,PA-002,
PA-005,Wall attenuator 6W,Principal's Office,1,,,,PA-002,
PA-010,Horn speaker,Parade Square,4,30,15,Z1,PA-001,
PA-011,Column speaker,Canteen,4,20,10,Z1,PA-001,
PA-012,Box speaker,Block A corridors L1-L4,12,6,3,Z2,PA-001,
PA-013,Box speaker,Block B corridors L1-L3,9,6,3,Z2,PA-001,
PA-014,Box speaker,Block B L2 store,1,6,3,Z2,PA-001,"Condemned, taken down 14/1"
PA-015,Ceiling speaker,Staff Room,6,6,3,Z3,PA-002,through PA-004
PA-016,Ceiling speaker,Principal's Office,1,6,1.5,Z3,PA-002,through PA-005
PA-017,Ceiling speaker,Library,8,6,3,Z3,PA-002,
PA-018,Ceiling speaker,AV store,5,6,,,,"Spare, in carton"
CC-001,CCTV camera,Main gate,2,12,,,,
CC-002,CCTV camera,Canteen,2,12,,,,
CK-001,Slave clock,Canteen,1,,,,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "an asset register: amplifiers, attenuators, cameras and loudspeakers in one list with their own ratings in the text; maximum and tapped watts side by side; one taken down, one lot in a carton")
		t.Speakers("tap_v=100; line_v=100; amplifier=PA-001", `rows|tag|zone|room|count|tap_w
7|PA-010|Z1|Parade Square|4|15
8|PA-011|Z1|Canteen|4|10
9|PA-012|Z2|Block A corridors L1-L4|12|3
10|PA-013|Z2|Block B corridors L1-L3|9|3`)
		t.Speakers("tap_v=100; line_v=100; amplifier=PA-002; zone=Z3", `rows|tag|room|count|tap_w|control
12|PA-015|Staff Room|6|3|PA-004
13|PA-016|Principal's Office|1|1.5|PA-005
14|PA-017|Library|8|3|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
PA-001|240|163
PA-002|120|43.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
PA-001|240|163
PA-002|120|43.5`)
		t.Controls("", `control|rated_w|load_w
PA-004|24|18
PA-005|6|1.5`)
		t.Left("", `11|removed|condemned, taken down
15|spare|spares in a carton
16|other|camera
17|other|camera
18|other|clock`)
	}},

	{File: "racks/planetarium rack 1.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(strings.TrimPrefix(`
Larkspur Planetarium - rack 1 amplifier list - 70.7 V
Unit,Output,Rating (W),Area,Speakers on line,Load (W),Wire,Run (ft)
PA-1,1,300,Dome ring,16 x 10 W,160,14 AWG,190
PA-1,2,300,Lobby and coat check,10 x 5 W + 2 x 2.5 W,55,16 AWG,120
PA-2,1,150,Classrooms,"6 x 5 W, 6 x 2.5 W",45,16 AWG,240
PA-2,2,150,Offices,9 x 1 W,9,18 AWG,165
PA-3,1,150,Roof deck,4 x 15 W,60,14 AWG,210
PA-3,2,150,spare,,,,

"Lobby and coat check go through wall control VC-L (100 W), classrooms through VC-C (50 W). Offices and dome have none."
`, "\n"))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Larkspur Planetarium", "rack list; groups of loudspeakers as sums inside one cell; controls and their ratings in a sentence below; runs in feet")
		t.Speakers("tap_v=70.7; line_v=70.7", `rows|zone|count|tap_w|amplifier|channel|control
3|Dome ring|16|10|PA-1|1|
4|Lobby and coat check|10|5|PA-1|2|VC-L
4|Lobby and coat check|2|2.5|PA-1|2|VC-L
5|Classrooms|6|5|PA-2|1|VC-C
5|Classrooms|6|2.5|PA-2|1|VC-C
6|Offices|9|1|PA-2|2|
7|Roof deck|4|15|PA-3|1|`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
PA-1|1|300|160
PA-1|2|300|55
PA-2|1|150|45
PA-2|2|150|9
PA-3|1|150|60`)
		t.Amplifiers("", `amplifier|load_w
PA-1|215
PA-2|54
PA-3|60`)
		t.Controls("", `control|zone|rated_w|load_w
VC-L|Lobby and coat check|100|55
VC-C|Classrooms|50|45`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Dome ring|57.912|2.081
Lobby and coat check|36.576|1.309
Classrooms|73.152|1.309
Offices|50.292|0.823
Roof deck|64.008|2.081`)
		t.Left("", `8|spare|spare output`)
	}},

	{File: "cabling/5517 pool PA cables.tsv", Kind: "schedule", Bytes: func() []byte {
		return []byte(tabbed(strings.TrimPrefix(`
Kowhai Street Pools|PA cable list|job 5517
100V lines. Lengths measured on site incl. tails

Cable|From|To|Type|m
C1|Amp A|LS1|2C 2.5mm2|28
C2|LS1|LS2|2C 2.5mm2|12
C3|LS2|LS3|2C 2.5mm2|12
C4|LS3|LS4|2C 2.5mm2|14.5
C5|Amp B|VC1|2C 1.5mm2|6
C6|VC1|LS5|2C 1.5mm2|9
C7|LS5|LS6|2C 1.5mm2|7
C8|Amp B|LS7|2C 1.5mm2|22
C9|LS7|LS8|2C 1.5mm2|8
C10|LS8|LS9|2C 1.5mm2|8

Spkr|Where|Tap
LS1|Main pool, shallow end|10W
LS2|Main pool, east side|10W
LS3|Main pool, deep end|10W
LS4|Learners' pool|6W
LS5|Reception|3W
LS6|Reception|3W
LS7|Change rooms, men|3W
LS8|Change rooms, women|3W
LS9|Family change|1.5W

Amp A 120W, Amp B 60W, both in plant room. VC1 is the 12W wall control at reception.
`, "\n")))
	}, Truth: func(t *typed.Truth) {
		t.Is("5517", "Kowhai Street Pools", "cable list from device to device; amplifier and control of a loudspeaker follow from the cables only; ratings in a sentence")
		t.Speakers("tap_v=100; line_v=100; amplifier=Amp A", `rows|tag|room|tap_w
17|LS1|Main pool, shallow end|10
18|LS2|Main pool, east side|10
19|LS3|Main pool, deep end|10
20|LS4|Learners' pool|6`)
		t.Speakers("tap_v=100; line_v=100; amplifier=Amp B", `rows|tag|room|tap_w|control
21|LS5|Reception|3|VC1
22|LS6|Reception|3|VC1
23|LS7|Change rooms, men|3|
24|LS8|Change rooms, women|3|
25|LS9|Family change|1.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
Amp A|120|36
Amp B|60|13.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
Amp A|120|36
Amp B|60|13.5`)
		t.Controls("", `control|rated_w|load_w
VC1|12|6`)
		t.Lines("", `line|from|to|length_m|area_mm2
C1|Amp A|LS1|28|2.5
C2|LS1|LS2|12|2.5
C3|LS2|LS3|12|2.5
C4|LS3|LS4|14.5|2.5
C5|Amp B|VC1|6|1.5
C6|VC1|LS5|9|1.5
C7|LS5|LS6|7|1.5
C8|Amp B|LS7|22|1.5
C9|LS7|LS8|8|1.5
C10|LS8|LS9|8|1.5`)
	}},

	{File: "tests/Ballyfennel PA lines 12-03-19.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
PA line test record,,,,,,,,,,
Station: Ballyfennel Junction,,,Date: 12/03/2019,,,100 V line,,,,
,,,,,,,,,,
Line,Amp / output,Rated W,Area,Speakers,Tap W,Calc W,Attenuator,Meas. ohm,Insul. Mohm,Result
L1,A/1,120,Platform 1 north,8,10,80,,128,>20,Pass
L2,A/2,120,Platform 1 south,8,10,80,,131,>20,Pass
L3,A/3,120,Platform 2,12,6,72,,142,8,Pass
L4,A/4,120,Footbridge,4,6,24,,420,>20,Pass
L5,B/1,120,Concourse,14,6,84,,122,>20,Pass
L6,B/2,120,Waiting room,6,3,18,,425,>20,Pass
L6,B/2,120,Toilets,4,1.5,6,,,,
L7,B/3,120,Ticket office,3,1.5,4.5,AT7 (6 W),2300,>20,Pass
L8,B/4,120,Car park,4,15,60,,170,2,Pass - retest after rain
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Ballyfennel Junction", "test record: measured ohms of the line beside the taps are no impedance of a loudspeaker; outputs as A/1; a line in two rows")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|amplifier|channel|control
5|Platform 1 north|8|10|A|1|
6|Platform 1 south|8|10|A|2|
7|Platform 2|12|6|A|3|
8|Footbridge|4|6|A|4|
9|Concourse|14|6|B|1|
10|Waiting room|6|3|B|2|
11|Toilets|4|1.5|B|2|
12|Ticket office|3|1.5|B|3|AT7
13|Car park|4|15|B|4|`)
		t.Channels("line_v=100; rated_w=120", `amplifier|channel|load_w
A|1|80
A|2|80
A|3|72
A|4|24
B|1|84
B|2|24
B|3|4.5
B|4|60`)
		t.Amplifiers("", `amplifier|load_w
A|256
B|172.5`)
		t.Controls("", `control|rated_w|load_w
AT7|6|4.5`)
	}},

	{File: "lists/Rooikrans depot speakers.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Rooikrans Bus Depot: PA loudspeaker list;;;;;;;;;
Job 8830;;Line 100 V;;;;;;;
;;;;;;;;;
No;Area;Loudspeaker;Qty;Tap (W);Amp;Amp (W);Attenuator;Cable (mm²);Length (m)
1;Workshop bays;horn;6;15;AMP1;240;;2,5;85
2;Wash bay;horn;2;15;AMP1;240;;2,5;40
3;Fuel island;horn;2;7,5;AMP1;240;;2,5;62
4;Stores;cabinet;4;5;AMP1;240;;1,5;37,5
5;Dispatch office;ceiling;3;2,5;AMP2;60;;1,5;18
6;Canteen;ceiling;8;2,5;AMP2;60;;1,5;31
7;Drivers' rest room;ceiling;4;1,25;AMP2;60;VC1 (10 W);1,5;26,5
8;Ablutions;ceiling;2;1,25;AMP2;60;;1,5;29
9;Foyer;ceiling;4;2,5;AMP2;60;;1,5;15
;;Total;35;;;;;;344
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("8830", "Rooikrans Bus Depot", "plain; semicolons, decimal commas and Windows-1252 in English")
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP1", `rows|room|count|tap_w
5|Workshop bays|6|15
6|Wash bay|2|15
7|Fuel island|2|7.5
8|Stores|4|5`)
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP2", `rows|room|count|tap_w|control
9|Dispatch office|3|2.5|
10|Canteen|8|2.5|
11|Drivers' rest room|4|1.25|VC1
12|Ablutions|2|1.25|
13|Foyer|4|2.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP1|240|155
AMP2|60|45`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP1|240|155
AMP2|60|45`)
		t.Controls("", `control|rated_w|load_w
VC1|10|5`)
		t.Lines("note=one length an area", `zone|length_m|area_mm2
Workshop bays|85|2.5
Wash bay|40|2.5
Fuel island|62|2.5
Stores|37.5|1.5
Dispatch office|18|1.5
Canteen|31|1.5
Drivers' rest room|26.5|1.5
Ablutions|29|1.5
Foyer|15|1.5`)
		t.Left("", `14|total|sums`)
	}},

	{File: "punch lists/1903-C paging speakers.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
PUNCH LIST - PAGING SPEAKER TAPS,,,,,,,
Cottonwood Middle School,Proj 1903-C,,,70V,,,
No.,Room,Wing,Qty,Found (W),Per dwg (W),Left at (W),Remarks
1,101,East,2,1/2,1,1,retapped
2,102,East,2,1,1,1,ok
3,103,East,2,2,1,1,retapped
4,104,East,2,1,1,1,ok
5,Hall E,East,6,2,2,2,ok
6,114,East,2,,1,,"locked, no key, tap not seen"
7,201,West,2,1,1,1,ok
8,202,West,2,1/2,1,1,retapped
9,Hall W,West,6,1,2,2,retapped
10,Media center,West,8,2,2,2,"ok, thru VC at desk (35 W)"
11,118,West,2,,1,,"not hung yet, tile missing, GC to call"
12,Gym,Gym,4,15,15,15,ok
13,Bus loop,Gym,2,7.5,15,15,retapped
,,,,,,,
Amp 1 ch 1 = East wing (100 W),,,,,,,
Amp 1 ch 2 = West wing (100 W),,,,,,,
Amp 2 = Gym and bus loop (250 W),,,,,,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("1903-C", "Cottonwood Middle School", "three taps side by side (found, per drawing, left at), one of them 1/2; one room locked, one pair not hung; outputs by wing below; a control without a name")
		t.Speakers("tap_v=70.7; line_v=70.7; zone=East; amplifier=Amp 1; channel=1", `rows|room|count|tap_w
4|101|2|1
5|102|2|1
6|103|2|1
7|104|2|1
8|Hall E|6|2
9|114|2|`)
		t.Speakers("tap_v=70.7; line_v=70.7; zone=West; amplifier=Amp 1; channel=2", `rows|room|count|tap_w
10|201|2|1
11|202|2|1
12|Hall W|6|2
13|Media center|8|2`)
		t.Speakers("tap_v=70.7; line_v=70.7; zone=Gym; amplifier=Amp 2", `rows|room|count|tap_w
15|Gym|4|15
16|Bus loop|2|15`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w|load_min_w
Amp 1|1|100||20
Amp 1|2|100|32|
Amp 2||250|90|`)
		t.Amplifiers("", `amplifier|rated_w|load_w
Amp 1||
Amp 2|250|90`)
		t.Controls("", `control|rated_w|load_w|note
|35|16|unnamed`)
		t.Left("", `14|future|not hung yet`)
		t.Asks("", `9|asked|tap of the pair in the locked room`)
	}},

	{File: "lighting/Orrery gallery circuits.csv", Kind: "not-a-schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Museum of Tides - gallery lighting circuits,,,,,,,
230 V,,,,,,,
Circuit,Zone,Fitting,Qty,W each,Total W,Dimmer / ch,Cable mm2
1L1,Entrance,downlight,8,10,80,D1/1,1.5
1L2,Entrance,wall washer,4,20,80,D1/2,1.5
1L3,Tide tables,track spot,12,15,180,D1/3,2.5
1L4,Harbour model,track spot,10,15,150,D1/4,2.5
2L1,Knots and nets,downlight,9,10,90,D2/1,1.5
2L2,Lamp room,cove strip,6,30,180,D2/2,2.5
2L3,Stair,bulkhead,4,12,48,D2/3,1.5
2L4,Spare,,,,,D2/4,
,,Total,53,,808,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Museum of Tides", "lighting circuits: zones, watts each and dimmer channels, but no loudspeaker")
	}},
}
