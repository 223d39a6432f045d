package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A maintenance electrician, a head custodian, a consultant and a project engineer, in English.
var dossiersEnglish = []typed.Case{

	{File: "dossiers/om/Linden Street Baths PA record.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Cover")
		p.Put("B2", `
Linden Street Baths
Public address - record of installation
Contract 7714
All lines 100 V
Issue C - loudspeaker in plant room added
`)
		p.Bold("B2")
		g := p.Sheet("Ground")
		g.Put("A1", `
Ref|Where|What|Watts|Line
G1|Entrance foyer|ceiling|3|L1
G2|Entrance foyer|ceiling|3|L1
G3|Ticket desk|ceiling|1.5|L1
G4|Pool hall north|column|20|L2
G5|Pool hall north|column|20|L2
G6|Pool hall south|column|20|L2
G7|Pool hall south|column|20|L2
G8|Learner pool|cabinet|10|L3
G9|Learner pool|cabinet|10|L3
G10|Plant room|horn|15|L3
`)
		g.Bold("A1:E1")
		f := p.Sheet("First")
		f.Put("A1", `
Ref|Where|What|Watts|Line
F1|Gallery|cabinet|6|L4
F2|Gallery|cabinet|6|L4
F3|Gallery|cabinet|6|L4
F4|Club room|ceiling|3|L4
F5|Club room|ceiling|3|L4
F6|Office|ceiling|1.5|L4
`)
		f.Bold("A1:E1")
		a := p.Sheet("Amps")
		a.Put("A1", `
Amplifier|Output|Feeds line|Rated W
A1|1|L1|60
A1|2|L2|120
A2|1|L3|60
A2|2|L4|60
`)
		a.Bold("A1:D1")
		v := p.Sheet("Vol controls")
		v.Put("A1", `
Control|Located|Loudspeakers|Rated
VC1|Ticket desk|G3|5 W
VC2|Club room|F4, F5|10 W
VC3|Office|F6|5 W
VC4|Learner pool|G8, G9|30 W
`)
		v.Bold("A1:D1")
		c := p.Sheet("Cable")
		c.Put("A1", `
Line|From|To|Cores x mm²|Run m
L1|A1|G1|2 x 1.5|22
L2|A1|G4|2 x 2.5|48
L3|A2|G8|2 x 2.5|55
L4|A2|F1|2 x 1.5|36
`)
		c.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("7714", "Linden Street Baths", "six sheets: floors, amplifiers by line, controls by loudspeaker reference, cables by line, voltage on the cover only")
		t.Revision("C", false)
		t.Speakers("sheet=Ground; tap_v=100; line_v=100", `rows|tag|room|tap_w|amplifier|channel|control
2|G1|Entrance foyer|3|A1|1|
3|G2|Entrance foyer|3|A1|1|
4|G3|Ticket desk|1.5|A1|1|VC1
5|G4|Pool hall north|20|A1|2|
6|G5|Pool hall north|20|A1|2|
7|G6|Pool hall south|20|A1|2|
8|G7|Pool hall south|20|A1|2|
9|G8|Learner pool|10|A2|1|VC4
10|G9|Learner pool|10|A2|1|VC4
11|G10|Plant room|15|A2|1|`)
		t.Speakers("sheet=First; tap_v=100; line_v=100; amplifier=A2; channel=2", `rows|tag|room|tap_w|control
2|F1|Gallery|6|
3|F2|Gallery|6|
4|F3|Gallery|6|
5|F4|Club room|3|VC2
6|F5|Club room|3|VC2
7|F6|Office|1.5|VC3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A1|1|60|7.5
A1|2|120|80
A2|1|60|35
A2|2|60|25.5`)
		t.Amplifiers("", `amplifier|load_w
A1|87.5
A2|60.5`)
		t.Controls("", `control|rated_w|load_w
VC1|5|1.5
VC2|10|6
VC3|5|1.5
VC4|30|20`)
		t.Lines("", `line|from|to|length_m|area_mm2
L1|A1|G1|22|1.5
L2|A1|G4|48|2.5
L3|A2|G8|55|2.5
L4|A2|F1|36|1.5`)
	}},

	{File: "dossiers/school/pa speakers by output.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Cedar Fork Middle School - PA speakers as written up by the head custodian,,,
"One amplifier in the office closet with four outputs, 250 W each, all 70 volt",,,
,,,
Output 1 - Classroom wing,,,"16 AWG, 340 ft to the last speaker"
Room,Speakers,Tap W,Remarks
Rm 101,1,2,
Rm 102,1,2,
Rm 103,1,2,
Hallway,4,1,
,,,
Output 2 - Gym,,,"14 AWG, 260 ft to the last speaker"
Room,Speakers,Tap W,Remarks
Gym floor,6,15,
Boys lockers,2,4,
Girls lockers,2,4,
,,,
Output 3 - Library,,,"16 AWG, 180 ft to the last speaker"
Room,Speakers,Tap W,Remarks
Reading room,6,4,wall knob by the desk (35 W)
Workroom,1,2,wall knob by the door (10 W)
Stacks,2,2,
,,,
Output 4 - Outside,,,"14 AWG, 410 ft to the last speaker"
Room,Speakers,Tap W,Remarks
Bus loop,3,15,
Ball field,2,30,taken down last summer - wire capped in the box
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Cedar Fork Middle School", "sections a section an output of one amplifier without a name; two wall controls without a name; cables in the section titles; one row removed")
		t.Speakers("tap_v=70.7; line_v=70.7; zone=Classroom wing; channel=1", `rows|room|count|tap_w
6|Rm 101|1|2
7|Rm 102|1|2
8|Rm 103|1|2
9|Hallway|4|1`)
		t.Speakers("tap_v=70.7; line_v=70.7; zone=Gym; channel=2", `rows|room|count|tap_w
13|Gym floor|6|15
14|Boys lockers|2|4
15|Girls lockers|2|4`)
		t.Speakers("tap_v=70.7; line_v=70.7; zone=Library; channel=3", `rows|room|count|tap_w|note
19|Reading room|6|4|unnamed
20|Workroom|1|2|unnamed
21|Stacks|2|2|`)
		t.Speakers("tap_v=70.7; line_v=70.7; zone=Outside; channel=4", `rows|room|count|tap_w
25|Bus loop|3|15`)
		t.Channels("line_v=70.7", `channel|rated_w|load_w
1|250|10
2|250|106
3|250|30
4|250|45`)
		t.Amplifiers("", `amplifier|load_w
|191`)
		t.Controls("note=unnamed; zone=Library", `control|rated_w|load_w
|35|24
|10|2`)
		t.Lines("note=to the last loudspeaker of the output", `zone|length_m|area_mm2
Classroom wing|103.632|1.309
Gym|79.248|2.081
Library|54.864|1.309
Outside|124.968|2.081`)
		t.Left("", `26|removed|taken down`)
	}},

	{File: "dossiers/surveys/Saltmere tram depot visit 2.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Visit 2")
		p.Put("A1", `
Survey 3381 - Saltmere tram depot, loudspeakers on the drawing against loudspeakers on the wall
Amplifier PA1, 240 W, one 100 V line (drawing and nameplate agree)

Area|Position|As drawn||As found||Surveyor's remark
||Qty|W|Qty|W|
Workshop|Column row A|4|10|4|10|agrees
Workshop|Column row B|4|10|4|15|taps have been turned up
Workshop|Pit 3|1|10|0||never fitted, box blanked off
Stabling|Road 1|3|15|3|15|agrees
Stabling|Road 2|3|15|2|15|the third is not there, bare bracket
Offices|Corridor|4|3|4|3|agrees; behind control VC1 at the counter (24 W)
Offices|Counter|1|1.5|2|1.5|second one added by depot staff, also behind VC1
Offices|Mess room|2|3|2|?|grilles painted shut, tap not seen
Wash plant|Gantry|2|15|2|15|agrees
`)
		p.Merge("C4:D4", "E4:F4")
		p.Bold("A1", "A4:G5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("3381", "Saltmere tram depot", "drawn against found under two header rows: what was found counts; one never fitted, one tap not seen")
		t.Speakers("sheet=Visit 2; tap_v=100; line_v=100; amplifier=PA1", `rows|zone|room|count|tap_w|control
6|Workshop|Column row A|4|10|
7|Workshop|Column row B|4|15|
9|Stabling|Road 1|3|15|
10|Stabling|Road 2|2|15|
11|Offices|Corridor|4|3|VC1
12|Offices|Counter|2|1.5|VC1
13|Offices|Mess room|2||
14|Wash plant|Gantry|2|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_min_w
PA1|240|220`)
		t.Amplifiers("", `amplifier|rated_w
PA1|240`)
		t.Controls("", `control|rated_w|load_w
VC1|24|15`)
		t.Left("Visit 2", `8|not fitted|none found`)
		t.Asks("Visit 2", `13|asked|tap in the mess room, 3 W on the drawing but not seen`)
	}},

	{File: "dossiers/projects/2291 Marlpit Playhouse.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Schedule")
		p.Put("A1", `
Marlpit Playhouse - paging loudspeakers|||||Job 2291
Tag|Type|Area|Space|Tap if not standard|Amp-Out|Attn|Remark
S-01|C|Front of house|Lobby east||P1-1|AT-1|
S-02|C|Front of house|Lobby east||P1-1|AT-1|
S-03|C|Front of house|Lobby west||P1-1|AT-1|
S-04|C|Front of house|Lobby west||P1-1|AT-1|
S-05|B|Front of house|Cloakroom||P1-1||
S-06|C|Front of house|Box office|2 W|P1-1||
S-07|B|Back of house|Stage door||P1-2||
S-08|C|Back of house|Green room||P1-2|AT-2|
S-09|C|Back of house|Green room||P1-2|AT-2|
S-10|B|Back of house|Corridor||P1-2||
S-11|W|Back of house|Crossover||P1-2||
S-12|W|Workshops|Paint shop||P2-1||
S-13|W|Workshops|Carpentry||P2-1||
S-14|H|Workshops|Loading dock||P2-1||
S-15|H|Workshops|Scenery yard||P2-1||phase 2, not in this contract
`)
		p.Bold("A1", "A2:H2")
		q := p.Sheet("Types")
		q.Put("A1", `
Type|Description|Standard tap at 70 V
C|ceiling, 8 inch|4 W
B|ceiling, 4 inch|1 W
W|wall cabinet|8 W
H|horn, weatherproof|15 W
`)
		q.Bold("A1:C1")
		r := p.Sheet("Rack")
		r.Put("A1", `
Amp|Out|Serves|Watts
P1|1|Front of house|120
P1|2|Back of house|120
P2|1|Workshops|60

Attenuator|Where|Watts
AT-1|Lobby|35
AT-2|Green room|10

All outputs are 70 V lines.
`)
		r.Bold("A1:D1", "A6:C6")
		s := p.Sheet("Prices")
		s.Put("A1", `
Type|Pieces|Unit price|Amount
C|7|64|448
B|3|41|123
W|3|88|264
H|1|112|112
Total|14||947
`)
		s.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2291", "Marlpit Playhouse", "tap from the type sheet unless the schedule says otherwise; rack with attenuators below; prices repeat the counts; one loudspeaker of a later phase")
		t.Speakers("sheet=Schedule; tap_v=70.7; line_v=70.7; zone=Front of house; amplifier=P1; channel=1", `rows|tag|room|tap_w|control
3|S-01|Lobby east|4|AT-1
4|S-02|Lobby east|4|AT-1
5|S-03|Lobby west|4|AT-1
6|S-04|Lobby west|4|AT-1
7|S-05|Cloakroom|1|
8|S-06|Box office|2|`)
		t.Speakers("sheet=Schedule; tap_v=70.7; line_v=70.7; zone=Back of house; amplifier=P1; channel=2", `rows|tag|room|tap_w|control
9|S-07|Stage door|1|
10|S-08|Green room|4|AT-2
11|S-09|Green room|4|AT-2
12|S-10|Corridor|1|
13|S-11|Crossover|8|`)
		t.Speakers("sheet=Schedule; tap_v=70.7; line_v=70.7; zone=Workshops; amplifier=P2; channel=1", `rows|tag|room|tap_w
14|S-12|Paint shop|8
15|S-13|Carpentry|8
16|S-14|Loading dock|15`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
P1|1|120|19
P1|2|120|18
P2|1|60|31`)
		t.Amplifiers("", `amplifier|rated_w|load_w
P1||37
P2|60|31`)
		t.Controls("", `control|rated_w|load_w
AT-1|35|16
AT-2|10|8`)
		t.Left("Schedule", `17|future|phase 2`)
		t.Left("Prices", `2|price|counted again
3|price|counted again
4|price|counted again
5|price|counted again
6|total|sum`)
	}},
}
