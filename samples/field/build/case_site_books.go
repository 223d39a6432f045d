package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// siteBooks are workbooks of a hall's manager, a maintenance firm, a school district, a depot's contractor, an insurer,
// a drawing office, a library's designer, an arena's integrator and a pool's electrician; the last only looks like one.
var siteBooks = []typed.Case{
	{File: "halls/Telok Merbau devices and circuits.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Devices")
		p.Put("A1", `
Tag|Floor|Space|Type|Tap (W)|Circuit
S01|1|Main hall|column|15|C1
S02|1|Main hall|column|15|C1
S03|1|Main hall|column|15|C1
S04|1|Main hall|column|15|C1
S05|1|Foyer|ceiling|6|C2
S06|1|Foyer|ceiling|6|C2
S07|1|Foyer|ceiling|6|C2
S08|1|Toilets|ceiling|3|C2
S09|2|Gallery|wall|6|C3
S10|2|Gallery|wall|6|C3
S11|2|Meeting room 1|ceiling|3|C4
S12|2|Meeting room 2|ceiling|3|C4
S13|2|Office|ceiling|1.5|C4
S14|1|Car porch|horn|10|C5
S15|1|Car porch|horn|10|C5
`)
		p.Bold("A1:F1")
		q := p.Sheet("Circuits")
		q.Put("A1", `
Telok Merbau Community Hall - PA circuits, 100 V
||
Circuit|Serves|Amp|Output|Rated W|Attenuator|Att. W|Cable|Length m
C1|Main hall|A|1|120|||2C x 2.5 mm²|65
C2|Foyer and toilets|A|2|60|||2C x 1.5 mm²|48
C3|Gallery|B|1|60|AT1|24|2C x 1.5 mm²|55
C4|Meeting rooms, office|B|2|60|AT2|10|2C x 1.5 mm²|72
C5|Car porch|B|3|60|||2C x 2.5 mm²|90
`)
		q.Bold("A1", "A3:I3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Telok Merbau Community Hall", "devices on one sheet, circuits on the other, joined by circuit numbers")
		t.Speakers("sheet=Devices; tap_v=100; line_v=100; amplifier=A; channel=1; room=Main hall; tap_w=15", `rows|tag
2..5|S01..S04`)
		t.Speakers("sheet=Devices; tap_v=100; line_v=100; amplifier=A; channel=2", `rows|tag|room|tap_w
6..8|S05..S07|Foyer|6
9|S08|Toilets|3`)
		t.Speakers("sheet=Devices; tap_v=100; line_v=100; amplifier=B; channel=1; control=AT1", `rows|tag|room|tap_w
10..11|S09..S10|Gallery|6`)
		t.Speakers("sheet=Devices; tap_v=100; line_v=100; amplifier=B; channel=2; control=AT2", `rows|tag|room|tap_w
12|S11|Meeting room 1|3
13|S12|Meeting room 2|3
14|S13|Office|1.5`)
		t.Speakers("sheet=Devices; tap_v=100; line_v=100; amplifier=B; channel=3; room=Car porch; tap_w=10", `rows|tag
15..16|S14..S15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A|1|120|60
A|2|60|21
B|1|60|12
B|2|60|7.5
B|3|60|20`)
		t.Amplifiers("", `amplifier|load_w
A|81
B|39.5`)
		t.Controls("", `control|rated_w|load_w
AT1|24|12
AT2|10|7.5`)
		t.Lines("note=one length a circuit", `line|length_m|area_mm2
C1|65|2.5
C2|48|1.5
C3|55|1.5
C4|72|1.5
C5|90|2.5`)
	}},

	{File: "maintenance/visits spring.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Visits")
		p.Put("A1", `
PA maintenance visits, spring. All sites 100 V, one amplifier a site
||
Job|Site|Area|Spkrs|Tap W|Amp|Attenuator|Seen|Finding
J401|Penhallow Mill Museum|Wheel floor|4|6|120 W||4 March|ok
J401|Penhallow Mill Museum|Stone floor|4|6|120 W||4 March|ok
J401|Penhallow Mill Museum|Entrance|2|3|120 W|AT1, 12 W|4 March|attenuator scratchy, cleaned
J402|Brindle Road Baths|Pool hall|8|10|240 W||11 March|ok
J402|Brindle Road Baths|Changing|6|3|240 W||11 March|one grille missing
J402|Brindle Road Baths|Reception|2|3|240 W|AT1, 12 W|11 March|ok
J402|Brindle Road Baths|Plant room|1|10|240 W||11 March|taken away as scrap, not replaced
J403|Thistledown School|Hall|4|10|120 W||19 March|ok
J403|Thistledown School|Corridors|10|3|120 W||19 March|ok
J403|Thistledown School|Yard|2|15|120 W||19 March|ok
J403|Thistledown School|Staff room|1|1.5|120 W|AT1, 5 W|19 March|ok
J404|Gasworks Street Bus Depot|Bays|8|10|120 W||2 April|two cleaned of soot
J404|Gasworks Street Bus Depot|Canteen|4|3|120 W|AT1, 24 W|2 April|ok
J404|Gasworks Street Bus Depot|Office|2|1.5|120 W||2 April|ok
`)
		p.Bold("A1", "A3:I3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("J401", "Penhallow Mill Museum", "register of four jobs in one list; every job has its own AT1; the amplifier is only its watts; one loudspeaker scrapped, by its finding")
		t.Speakers("sheet=Visits; tap_v=100; line_v=100", `rows|room|count|tap_w|control
4|Wheel floor|4|6|
5|Stone floor|4|6|
6|Entrance|2|3|AT1`)
		t.Channels("line_v=100", `rated_w|load_w
120|54`)
		t.Amplifiers("", `rated_w|load_w
120|54`)
		t.Controls("", `control|rated_w|load_w
AT1|12|6`)
		t.Also("J402", "Brindle Road Baths", "second job of the register")
		t.Speakers("sheet=Visits; tap_v=100; line_v=100", `rows|room|count|tap_w|control
7|Pool hall|8|10|
8|Changing|6|3|
9|Reception|2|3|AT1`)
		t.Channels("line_v=100", `rated_w|load_w
240|104`)
		t.Amplifiers("", `rated_w|load_w
240|104`)
		t.Controls("", `control|rated_w|load_w
AT1|12|6`)
		t.Also("J403", "Thistledown School", "third job of the register")
		t.Speakers("sheet=Visits; tap_v=100; line_v=100", `rows|room|count|tap_w|control
11|Hall|4|10|
12|Corridors|10|3|
13|Yard|2|15|
14|Staff room|1|1.5|AT1`)
		t.Channels("line_v=100", `rated_w|load_w
120|101.5`)
		t.Amplifiers("", `rated_w|load_w
120|101.5`)
		t.Controls("", `control|rated_w|load_w
AT1|5|1.5`)
		t.Also("J404", "Gasworks Street Bus Depot", "fourth job of the register")
		t.Speakers("sheet=Visits; tap_v=100; line_v=100", `rows|room|count|tap_w|control
15|Bays|8|10|
16|Canteen|4|3|AT1
17|Office|2|1.5|`)
		t.Channels("line_v=100", `rated_w|load_w
120|95`)
		t.Amplifiers("", `rated_w|load_w
120|95`)
		t.Controls("", `control|rated_w|load_w
AT1|24|12`)
		t.Left("Visits", `10|removed|scrapped, not replaced`)
	}},

	{File: "room data/Prairie Bend paging by room.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Rooms")
		p.Put("A1", `
Prairie Bend Elementary - paging by room (70V)
||
Room|Use|Wing|Speaker|Qty|Tap (W)|Amp|Ch|Vol ctl
101|Classroom|A|8" ceiling|2|1|Amp 1|1|
102|"|"|"|"|"|"|"|
103|"|"|"|"|"|"|"|
104|"|"|"|"|"|"|"|
A hall|Corridor|"|"|6|2|"|"|
201|Classroom|B|"|2|1|"|2|
202|"|"|"|"|"|"|"|
203|Music|"|"|4|2|"|"|VC-203, 10W
B hall|Corridor|"|"|6|2|"|"|
Gym|Gym|C|horn|4|15|Amp 2|1|
Auditorium|Assembly|"|wall box|6|7.5|"|2|VC-AUD, 100W
Stage|"|"|"|2|"|"|"|"
||
Amp 1 = 2 x 60W, Amp 2 = 2 x 100W
`)
		p.Bold("A1", "A3:I3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Prairie Bend Elementary", "room data with ditto marks for counts, taps, amplifiers, channels and one control; ratings in a line below; inches beside the kind")
		t.Speakers("sheet=Rooms; tap_v=70.7; line_v=70.7; zone=A; amplifier=Amp 1; channel=1", `rows|room|count|tap_w
4|101|2|1
5|102|2|1
6|103|2|1
7|104|2|1
8|A hall|6|2`)
		t.Speakers("sheet=Rooms; tap_v=70.7; line_v=70.7; zone=B; amplifier=Amp 1; channel=2", `rows|room|count|tap_w|control
9|201|2|1|
10|202|2|1|
11|203|4|2|VC-203
12|B hall|6|2|`)
		t.Speakers("sheet=Rooms; tap_v=70.7; line_v=70.7; zone=C; amplifier=Amp 2", `rows|room|count|tap_w|channel|control
13|Gym|4|15|1|
14|Auditorium|6|7.5|2|VC-AUD
15|Stage|2|7.5|2|VC-AUD`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
Amp 1|1|60|20
Amp 1|2|60|24
Amp 2|1|100|60
Amp 2|2|100|60`)
		t.Amplifiers("", `amplifier|load_w
Amp 1|44
Amp 2|120`)
		t.Controls("", `control|rated_w|load_w
VC-203|10|8
VC-AUD|100|60`)
	}},

	{File: "as built/D-1147 Ironbark tram depot.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Speakers")
		p.Put("A1", `
Ironbark Tram Depot - speaker register (as built)
Contract D-1147, 100V line
Tag|Building|Location|Type|Tap W|Line|Atten.
LS-101|Shed 1|Road 1 north|horn|15|PA1-A|
LS-102|Shed 1|Road 1 south|horn|15|PA1-A|
LS-103|Shed 1|Road 2 north|horn|15|PA1-A|
LS-104|Shed 1|Road 2 south|horn|15|PA1-A|
LS-105|Shed 1|Pit office|ceiling|3|PA1-A|AT-1
LS-201|Shed 2|Wheel lathe|horn|20|PA1-B|
LS-202|Shed 2|Wash road|horn|20|PA1-B|
LS-203|Shed 2|Stores counter|cabinet|5|PA1-B|
LS-301|Admin|Foyer|ceiling|3|PA2|
LS-302|Admin|Corridor|ceiling|3|PA2|
LS-303|Admin|Corridor|ceiling|3|PA2|
LS-304|Admin|Meal room|ceiling|3|PA2|AT-2
LS-305|Admin|Meal room|ceiling|3|PA2|AT-2
LS-306|Admin|Drivers' sign-on|ceiling|6|PA2|
LS-401|Yard|Yard gate|horn|20|PA2|
`)
		p.Bold("A1", "A3:G3")
		q := p.Sheet("Lines")
		q.Put("A1", `
Line|Amplifier|Output|Rating|Cable|Length
PA1-A|PA1|A|250 W|4 mm² twin|240 m
PA1-B|PA1|B|250 W|4 mm² twin|185 m
PA2|PA2||120 W|1.5 mm² twin|160 m
`)
		q.Bold("A1:F1")
		r := p.Sheet("Attenuators")
		r.Put("A1", `
Tag|Rating|Location
AT-1|6 W|Pit office
AT-2|10 W|Meal room
`)
		r.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("D-1147", "Ironbark Tram Depot", "plain: one row a loudspeaker; lines, attenuators and cables on further sheets; units in the cells")
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; amplifier=PA1; channel=A", `rows|tag|room|tap_w|control
4|LS-101|Road 1 north|15|
5|LS-102|Road 1 south|15|
6|LS-103|Road 2 north|15|
7|LS-104|Road 2 south|15|
8|LS-105|Pit office|3|AT-1`)
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; amplifier=PA1; channel=B", `rows|tag|room|tap_w
9|LS-201|Wheel lathe|20
10|LS-202|Wash road|20
11|LS-203|Stores counter|5`)
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; amplifier=PA2", `rows|tag|room|tap_w|control
12|LS-301|Foyer|3|
13|LS-302|Corridor|3|
14|LS-303|Corridor|3|
15|LS-304|Meal room|3|AT-2
16|LS-305|Meal room|3|AT-2
17|LS-306|Drivers' sign-on|6|
18|LS-401|Yard gate|20|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
PA1|A|250|63
PA1|B|250|45
PA2||120|41`)
		t.Amplifiers("", `amplifier|rated_w|load_w
PA1||108
PA2|120|41`)
		t.Controls("", `control|rated_w|load_w
AT-1|6|3
AT-2|10|6`)
		t.Lines("note=one length a line", `line|length_m|area_mm2
PA1-A|240|4
PA1-B|185|4
PA2|160|1.5`)
	}},

	{File: "insurance/mining museum PA equipment.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Schedule B")
		p.Put("A1", `
Schedule B: electronic equipment, public address (100 V)
Insured: Boekenhout Museum of Mining
||
Item|Building|Room|Description|Qty|Set at (W)|Fed by|Each (R)|Insured (R)
1|Main house|Entrance hall|Ceiling loudspeaker|6|3|Amp 1|950|5700
2|Main house|Mineral gallery|Ceiling loudspeaker|10|3|Amp 1|950|9500
3|Main house|Lecture room|Wall loudspeaker|4|6|Amp 1, through VC1|1400|5600
4|Main house|Lecture room|Volume control VC1, 30 W|1||Amp 1|620|620
5|Main house|Control room|Amplifier, Amp 1, 120 W|1|||11800|11800
6|Main house|Control room|Desk microphone|2|||2300|4600
7|Headgear yard|Winder shed|Horn loudspeaker|4|15|Amp 2|1750|7000
8|Headgear yard|Cage queue|Horn loudspeaker|2|15|Amp 2|1750|3500
9|Headgear yard|Change house|Ceiling loudspeaker|2|3|Amp 2|950|1900
10|Headgear yard|Winder shed|Amplifier, Amp 2, 120 W|1|||11800|11800
||||||Total||62020
`)
		p.Bold("A1", "A4:I4", "G15:I15")
		p.Format("#,##0", "H5:I15")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Boekenhout Museum of Mining", "an insurer's inventory: amplifiers, microphones and a control among the loudspeakers, sums insured beside the watts, the control inside the text of what feeds it")
		t.Speakers("sheet=Schedule B; tap_v=100; line_v=100; amplifier=Amp 1", `rows|room|count|tap_w|control
5|Entrance hall|6|3|
6|Mineral gallery|10|3|
7|Lecture room|4|6|VC1`)
		t.Speakers("sheet=Schedule B; tap_v=100; line_v=100; amplifier=Amp 2", `rows|room|count|tap_w
11|Winder shed|4|15
12|Cage queue|2|15
13|Change house|2|3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
Amp 1|120|72
Amp 2|120|96`)
		t.Amplifiers("", `amplifier|rated_w|load_w
Amp 1|120|72
Amp 2|120|96`)
		t.Controls("", `control|rated_w|load_w
VC1|30|24`)
		t.Left("Schedule B", `8|other|volume control
9|other|amplifier
10|other|microphones
14|other|amplifier
15|total|sums insured`)
	}},

	{File: "drawings/M-611C pool PA devices.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("M-611")
		p.Put("A1", `
Drawing M-611|Rev C||Marlpit Lane Swimming Pool
Public address device schedule, 100 V
||
Device|Grid|Space|Mounting|Tap|Zone|Circuit|Rev note
SP1|B2|Pool hall|wall, 3.5 m|15 W|Z1|A/1|
SP2|B6|Pool hall|wall, 3.5 m|15 W|Z1|A/1|
SP3|D2|Pool hall|wall, 3.5 m|15 W|Z1|A/1|
SP4|D6|Pool hall|wall, 3.5 m|15 W|Z1|A/1|
SP5|E4|Learner pool|wall, 2.8 m|6 W|Z1|A/1|added rev B
SP6|E6|Learner pool|wall, 2.8 m|6 W|Z1|A/1|omitted rev C
SP7|F1|Spectator seating|wall, 2.8 m|6 W|Z2|A/2|
SP8|F3|Spectator seating|wall, 2.8 m|6 W|Z2|A/2|
SP9|G1|Foyer|ceiling|3 W|Z3|A/3|
SP10|G2|Foyer|ceiling|3 W|Z3|A/3|
SP11|G4|Changing, male|ceiling|3 W|Z3|A/3|
SP12|G5|Changing, female|ceiling|3 W|Z3|A/3|
SP13|H1|Staff room|ceiling|1.5 W|Z3|A/3|local attenuator LA1, 5 W
SP14|H2|Plant room|horn|10 W|Z4|A/4|
||
Amplifier A in plant room: 4 outputs of 120 W.
`)
		p.Bold("A1:D1", "A4:H4")
		p.Strike("A10:G10")
		p.Hide(10)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Marlpit Lane Swimming Pool", "drawing office: heights in metres beside taps in watts, an omitted device struck out in a hidden row, a control and its rating in the revision notes")
		t.Revision("C", false)
		t.Speakers("sheet=M-611; tap_v=100; line_v=100; zone=Z1; amplifier=A; channel=1", `rows|tag|room|tap_w
5..8|SP1..SP4|Pool hall|15
9|SP5|Learner pool|6`)
		t.Speakers("sheet=M-611; tap_v=100; line_v=100; zone=Z2; amplifier=A; channel=2", `rows|tag|room|tap_w
11..12|SP7..SP8|Spectator seating|6`)
		t.Speakers("sheet=M-611; tap_v=100; line_v=100; zone=Z3; amplifier=A; channel=3", `rows|tag|room|tap_w|control
13..14|SP9..SP10|Foyer|3|
15|SP11|Changing, male|3|
16|SP12|Changing, female|3|
17|SP13|Staff room|1.5|LA1`)
		t.Speakers("sheet=M-611; tap_v=100; line_v=100; zone=Z4; amplifier=A; channel=4", `rows|tag|room|tap_w
18|SP14|Plant room|10`)
		t.Channels("line_v=100; amplifier=A; rated_w=120", `channel|load_w
1|66
2|12
3|13.5
4|10`)
		t.Amplifiers("", `amplifier|load_w
A|101.5`)
		t.Controls("", `control|rated_w|load_w
LA1|5|1.5`)
		t.Left("M-611", `10|removed|omitted in revision C, struck out and hidden`)
	}},

	{File: "design/Bramble Ridge library zones.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Zones")
		p.Put("A1", `
Bramble Ridge Public Library - paging zones, 70V
||
Zone|1|2|3|4|5|6
Area|Stacks|Children|Reading room|Lobby|Study rooms|Staff
Speaker|ceiling|ceiling|pendant|ceiling|ceiling|ceiling
Quantity|16|8|10|6|4|5
Tap (W)|2|2|4|4|1|1
Load (W)|32|16|40|24|4|5
Amp - channel|A-1|A-2|A-3|A-4|B-1|B-2
Channel rating (W)|60|60|60|60|30|30
Volume control|none|VC2|VC3|none|VC5|none
VC rating (W)||35|50||10|
Home run (ft)|220|140|165|60|190|205
Cable|16 AWG|16 AWG|14 AWG|16 AWG|18 AWG|18 AWG
`)
		p.Bold("A1", "A3:A14", "B3:G3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Bramble Ridge Public Library", "transposed: a column a zone; outputs as A-1; controls and ratings in rows of their own; home runs in feet")
		t.Speakers("sheet=Zones; tap_v=70.7; line_v=70.7", `rows|zone|room|count|tap_w|amplifier|channel|control
B|1|Stacks|16|2|A|1|
C|2|Children|8|2|A|2|VC2
D|3|Reading room|10|4|A|3|VC3
E|4|Lobby|6|4|A|4|
F|5|Study rooms|4|1|B|1|VC5
G|6|Staff|5|1|B|2|`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
A|1|60|32
A|2|60|16
A|3|60|40
A|4|60|24
B|1|30|4
B|2|30|5`)
		t.Amplifiers("", `amplifier|load_w
A|112
B|9`)
		t.Controls("", `control|zone|rated_w|load_w
VC2|2|35|16
VC3|3|50|40
VC5|5|10|4`)
		t.Lines("note=home run", `zone|length_m|area_mm2
1|67.056|1.309
2|42.672|1.309
3|50.292|2.081
4|18.288|1.309
5|57.912|0.823
6|62.484|0.823`)
	}},

	{File: "integrator/P-3150 arena PA.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Speakers")
		p.Put("A1", `
Frostmere Arena, project P-3150, 70 V paging
||
Zone|Location|Type|Qty|Tap
Ice|Over ice|horn|12|16 W
Ice|Penalty boxes|wall|2|8 W
Stands|North stand|wall|8|8 W
Stands|South stand|wall|8|8 W
Lobby|Main lobby|ceiling|8|4 W
Lobby|Skate desk|ceiling|2|4 W
Rooms|Change rooms 1-4|ceiling|8|4 W
Rooms|Officials|ceiling|1|2 W
Rooms|First aid|ceiling|1|4 W
`)
		p.Bold("A1", "A3:E3")
		r := p.Sheet("Channels and runs")
		r.Put("A1", `
Zone|Amp|Ch|Rated (W)|Vol. control|Run|Wire
Ice|PA1|1|300||310 ft|12 AWG
Stands|PA1|2|300||95 m|12 AWG
Lobby|PA2|1|60|VC1 (50 W)|120 ft|16 AWG
Rooms|PA2|2|60||45 m|16 AWG
`)
		r.Bold("A1:G1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("P-3150", "Frostmere Arena", "plain; channels on a second sheet, feet and metres mixed in one column")
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Ice; amplifier=PA1; channel=1", `rows|room|count|tap_w
4|Over ice|12|16
5|Penalty boxes|2|8`)
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Stands; amplifier=PA1; channel=2", `rows|room|count|tap_w
6|North stand|8|8
7|South stand|8|8`)
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Lobby; amplifier=PA2; channel=1; control=VC1", `rows|room|count|tap_w
8|Main lobby|8|4
9|Skate desk|2|4`)
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Rooms; amplifier=PA2; channel=2", `rows|room|count|tap_w
10|Change rooms 1-4|8|4
11|Officials|1|2
12|First aid|1|4`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
PA1|1|300|208
PA1|2|300|128
PA2|1|60|40
PA2|2|60|38`)
		t.Amplifiers("", `amplifier|load_w
PA1|336
PA2|78`)
		t.Controls("", `control|zone|rated_w|load_w
VC1|Lobby|50|40`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Ice|94.488|3.309
Stands|95|3.309
Lobby|36.576|1.309
Rooms|45|1.309`)
	}},

	{File: "electrical/Bandicoot Bay aquatic PA.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("PA load")
		p.Put("A1", `
Bandicoot Bay Aquatic Centre - PA load check
All lines run at 100 V. The pendants came from the States and are marked for 70 V: on our line they draw twice the mark.
||
Area|Speaker|No.|Tap mark W|Marked for|Line|Draw W|Attenuator
Competition pool|pendant|8|7.5|70 V|L1|120|
Competition pool|horn|2|15|100 V|L1|30|
Leisure pool|pendant|6|7.5|70 V|L2|90|
Leisure pool|wall|4|6|100 V|L2|24|
Toddlers' pool|pendant|2|3.75|70 V|L2|15|
Foyer|ceiling|6|3|100 V|L3|18|
Swim club room|ceiling|4|3|100 V|L3|12|AT1
Gym|wall|4|10|100 V|L4|40|AT2
||||||349|
`)
		p.Bold("A1", "A4:H4", "G13")
		q := p.Sheet("Lines")
		q.Put("A1", `
Line|Amplifier|Amp W|Cable mm²|Length m
L1|Amp 1|240|2.5|130
L2|Amp 2|240|2.5|95
L3|Amp 3|60|1.5|60
L4|Amp 4|60|1.5|75
||
AT1 = 20 W, AT2 = 60 W
`)
		q.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Bandicoot Bay Aquatic Centre", "taps marked for 70 V on a 100 V line draw twice their mark; amplifiers and ratings by line on a second sheet")
		t.Speakers("sheet=PA load; tap_v=70.7; line_v=100", `rows|room|count|tap_w|amplifier
5|Competition pool|8|7.5|Amp 1
7|Leisure pool|6|7.5|Amp 2
9|Toddlers' pool|2|3.75|Amp 2`)
		t.Speakers("sheet=PA load; tap_v=100; line_v=100", `rows|room|count|tap_w|amplifier|control
6|Competition pool|2|15|Amp 1|
8|Leisure pool|4|6|Amp 2|
10|Foyer|6|3|Amp 3|
11|Swim club room|4|3|Amp 3|AT1
12|Gym|4|10|Amp 4|AT2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
Amp 1|240|150
Amp 2|240|129
Amp 3|60|30
Amp 4|60|40`)
		t.Amplifiers("", `amplifier|rated_w|load_w
Amp 1|240|150
Amp 2|240|129
Amp 3|60|30
Amp 4|60|40`)
		t.Controls("", `control|rated_w|load_w
AT1|20|12
AT2|60|40`)
		t.Lines("note=one length a line", `line|length_m|area_mm2
L1|130|2.5
L2|95|2.5
L3|60|1.5
L4|75|1.5`)
		t.Left("PA load", `13|total|sum of the draw`)
	}},

	{File: "heating/Ferncliff boathouse heat trace.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Heat trace")
		p.Put("A1", `
Ferncliff Boathouse - heat trace circuits, 240 V
||
Zone|Line|Cable|W/ft|Length (ft)|Watts|Panel - ckt|Controller|Controller (W)
Dock|Water supply|self-regulating|5|180|900|P1-2|TC1|3000
Dock|Fire line|self-regulating|8|140|1120|P1-4|TC1|3000
Roof|North gutter|self-regulating|8|95|760|P1-6|TC2|2500
Roof|South gutter|self-regulating|8|95|760|P1-8|TC2|2500
Shop|Drain|constant|5|60|300|P1-10|none|
Locker rooms|Pipe chase|self-regulating|5|110|550|P1-12|TC3|1500
Slip|Ramp mat|constant|10|120|1200|P1-14|TC4|2000
||||Total|5590
`)
		p.Bold("A1", "A3:I3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Ferncliff Boathouse", "heating cables: zones, watts, lines, controllers with a rating and feet, but no loudspeaker")
	}},
}
