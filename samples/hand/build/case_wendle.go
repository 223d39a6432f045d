package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// wendle are more lists of the British sites: loads by zone, cables, registers, circuits, states.
func wendle() []typed.Case {
	return []typed.Case{
		{File: "Penholt Ice Arena/PA zone loads.xlsx", Kind: "schedule", Saved: "xlsx", Book: book("Zone loads", `
Penholt Ice Arena
PA zone loads - 100 volt line

Zone|Description|No. of speakers|Tapping each|Zone load|Amp no.|Amp output|% used
1|Main arena|16|15W|240W|1|250W|96%
2|Changing rooms 1 to 6|12|3W|36W|2|60W|60%
3|Concourse|10|6W|60W|3|120W|50%
4|Skate hire and shop|5|3W|15W|4|30W|50%
5|Offices|6|1.5W|9W|4|30W|30%
6|Car park|3|15W|45W|5|60W|75%
|Total|52||405W
`, bold("A4:H4")), Truth: func(t *typed.Truth) {
			t.Is("", "Penholt Ice Arena", "plain: a zone a row with count, tap and load; zones 4 and 5 share amplifier 4, whose output stands twice")
			t.Speakers("tap_v=100; line_v=100; sheet=Zone loads", `
rows|zone|room|count|tap_w|amplifier
5|1|Main arena|16|15|1
6|2|Changing rooms 1 to 6|12|3|2
7|3|Concourse|10|6|3
8|4|Skate hire and shop|5|3|4
9|5|Offices|6|1.5|4
10|6|Car park|3|15|5
`)
			t.Channels("line_v=100", `
amplifier|rated_w|load_w|note
1|250|240|
2|60|36|
3|120|60|
4|30|24|15 + 9
5|60|45|
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
1|250|240
2|60|36
3|120|60
4|30|24
5|60|45
`)
			t.Left("Zone loads", "11|total|right")
		}},

		{File: "Stanner Quay/Speakers and cables.xls", Kind: "schedule", Saved: "xls", Book: book("Loudspeakers", `
Stanner Quay Boathouse|||||
PA and music, 100V line. Contract 5120|||||

LS|Position|Model|Tap W|Amp|O/P
LS1|Boat store north|Cabinet 10|5|AMP1|1
LS2|Boat store mid|Cabinet 10|5|AMP1|1
LS3|Boat store south|Cabinet 10|5|AMP1|1
LS4|Repair bay|Cabinet 10|10|AMP1|1
LS5|Crew room|Ceiling 6|3|AMP1|2
LS6|Crew room|Ceiling 6|3|AMP1|2
LS7|Kit store|Ceiling 6|1.5|AMP1|2
LS8|Hard standing|Horn 20|20|AMP1|3
LS9|Landing stage|Horn 20|20|AMP1|3
`, bold("A4:F4"), and("Cables", `
Cable schedule||||||
|||||Length|
Cable No|From|To|Cable type|Cores|CSA|(m)
SQ01|AMP1 O/P 1|LS1|LSF|2|1.5 mm²|18
SQ02|LS1|LS2|LSF|2|1.5 mm²|12
SQ03|LS2|LS3|LSF|2|1.5 mm²|12
SQ04|LS3|LS4|LSF|2|1.5 mm²|9
SQ05|AMP1 O/P 2|LS5|LSF|2|1.0 mm²|25
SQ06|LS5|LS6|LSF|2|1.0 mm²|6
SQ07|LS6|LS7|LSF|2|1.0 mm²|14
SQ08|AMP1 O/P 3|LS8|SWA|2|2.5 mm²|85
SQ09|LS8|LS9|SWA|2|2.5 mm²|60
`), and("Rack", `
Item|Description|Qty|Notes
1|Mixer amplifier AMP1, 3 outputs of 60 W at 100 V|1|
2|CD player|1|
3|Fist microphone|1|at counter
`)), Truth: func(t *typed.Truth) {
			t.Is("5120", "Stanner Quay Boathouse", "plain: loudspeakers, cables from-to and rack contents on three sheets")
			t.Speakers("tap_v=100; line_v=100; sheet=Loudspeakers; amplifier=AMP1", `
rows|tag|room|model|tap_w|channel
5|LS1|Boat store north|Cabinet 10|5|1
6|LS2|Boat store mid|Cabinet 10|5|1
7|LS3|Boat store south|Cabinet 10|5|1
8|LS4|Repair bay|Cabinet 10|10|1
9..10|LS5..|Crew room|Ceiling 6|3|2
11|LS7|Kit store|Ceiling 6|1.5|2
12|LS8|Hard standing|Horn 20|20|3
13|LS9|Landing stage|Horn 20|20|3
`)
			t.Channels("line_v=100; amplifier=AMP1; rated_w=60", `
channel|load_w
1|25
2|7.5
3|40
`)
			t.Amplifiers("amplifier=AMP1", "rated_w|load_w\n180|72.5")
			t.Lines("material=copper", `
line|from|to|length_m|area_mm2
SQ01|AMP1 O/P 1|LS1|18|1.5
SQ02|LS1|LS2|12|1.5
SQ03|LS2|LS3|12|1.5
SQ04|LS3|LS4|9|1.5
SQ05|AMP1 O/P 2|LS5|25|1
SQ06|LS5|LS6|6|1
SQ07|LS6|LS7|14|1
SQ08|AMP1 O/P 3|LS8|85|2.5
SQ09|LS8|LS9|60|2.5
`)
		}},

		{File: "register of PA installs 2006-2012.csv", Kind: "schedule", Bytes: ansi(`
Job,Site,Location,Speakers,Type,Tap W,Line,Amp ref,Amp W,Engineer
4107,Wendle Boathouse,Boat hall,8,cabinet,6,100V,A1,60,RJ
4107,Wendle Boathouse,Office,2,ceiling,1.5,100V,A1,60,RJ
4107,Wendle Boathouse,Slipway,2,horn,10,100V,A2,30,RJ
4388,Calder Fold Arboretum,Lodge,4,ceiling,3,100V,A1,30,RJ
4388,Calder Fold Arboretum,Bird hide,1,cabinet,3,100V,A1,30,RJ
4388,Calder Fold Arboretum,Car park,4,horn,15,100V,A2,60,TS
4612,Ostrey Planetarium,Foyer,10,ceiling,3,70V,1,35,TS
4612,Ostrey Planetarium,Dome lobby,4,cabinet,5,70V,2,35,TS
4612,Ostrey Planetarium,Workshop,2,horn,7.5,70V,2,35,TS
4790,Harrowmere Botanic Garden,Alpine house,6,cabinet,5,100V,PA,120,RJ
4790,Harrowmere Botanic Garden,Lily house,4,cabinet,10,100V,PA,120,RJ
4790,Harrowmere Botanic Garden,Walled garden,8,column,10,100V,PA,120,TS
`), Truth: func(t *typed.Truth) {
			t.Is("4107", "Wendle Boathouse", "a register of four jobs; amplifier A1 exists in two of them, a line voltage a row")
			t.Speakers("tap_v=100; line_v=100", `
rows|room|model|count|tap_w|amplifier
2|Boat hall|cabinet|8|6|A1
3|Office|ceiling|2|1.5|A1
4|Slipway|horn|2|10|A2
`)
			t.Channels("line_v=100", `
amplifier|rated_w|load_w
A1|60|51
A2|30|20
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
A1|60|51
A2|30|20
`)
			t.Also("4388", "Calder Fold Arboretum", "a job of the register")
			t.Speakers("tap_v=100; line_v=100", `
rows|room|model|count|tap_w|amplifier
5|Lodge|ceiling|4|3|A1
6|Bird hide|cabinet|1|3|A1
7|Car park|horn|4|15|A2
`)
			t.Channels("line_v=100", `
amplifier|rated_w|load_w
A1|30|15
A2|60|60
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
A1|30|15
A2|60|60
`)
			t.Also("4612", "Ostrey Planetarium", "a job of the register")
			t.Speakers("tap_v=70.7; line_v=70.7", `
rows|room|model|count|tap_w|amplifier
8|Foyer|ceiling|10|3|1
9|Dome lobby|cabinet|4|5|2
10|Workshop|horn|2|7.5|2
`)
			t.Channels("line_v=70.7", `
amplifier|rated_w|load_w
1|35|30
2|35|35
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
1|35|30
2|35|35
`)
			t.Also("4790", "Harrowmere Botanic Garden", "a job of the register")
			t.Speakers("tap_v=100; line_v=100; amplifier=PA", `
rows|room|model|count|tap_w
11|Alpine house|cabinet|6|5
12|Lily house|cabinet|4|10
13|Walled garden|column|8|10
`)
			t.Channels("line_v=100", "amplifier|rated_w|load_w|note\nPA|120|150|over its rating")
			t.Amplifiers("", "amplifier|rated_w|load_w\nPA|120|150")
		}},

		{File: "Ravensmoor/VA circuits.xlsx", Kind: "schedule", Book: book("Circuits", `
RAVENSMOOR ICE RINK - VOICE ALARM||||||||
Loudspeaker circuit schedule, 100V line, dual interleaved circuits||||||||
|||Circuit A|||Circuit B||
Zone|Area|LS type|Qty|Tap (W)|Load (W)|Qty|Tap (W)|Load (W)
VA1|Arena bowl|Projector|8|10|80|8|10|80
VA2|Concourse|Ceiling|6|3|18|5|3|15
VA3|Changing|Ceiling|6|1.5|9|6|1.5|9
VA4|Plant|Horn|2|7.5|15|1|7.5|7.5
Total|||22||122|20||111.5

VA rack: amplifier A, 250 W, feeds all A circuits; amplifier B, 250 W, feeds all B circuits.
`, merged("D3:F3", "G3:I3"), bold("A1", "A3:I4", "A9:I9")), Truth: func(t *typed.Truth) {
			t.Is("", "Ravensmoor Ice Rink", "two header rows; a row holds the loudspeakers of circuit A and of circuit B, on an amplifier each, named in a sentence")
			t.Speakers("tap_v=100; line_v=100; sheet=Circuits", `
rows|zone|room|model|count|tap_w|amplifier
5|VA1|Arena bowl|Projector|8|10|A
5|VA1|Arena bowl|Projector|8|10|B
6|VA2|Concourse|Ceiling|6|3|A
6|VA2|Concourse|Ceiling|5|3|B
7|VA3|Changing|Ceiling|6|1.5|A
7|VA3|Changing|Ceiling|6|1.5|B
8|VA4|Plant|Horn|2|7.5|A
8|VA4|Plant|Horn|1|7.5|B
`)
			t.Channels("line_v=100", `
amplifier|rated_w|load_w
A|250|122
B|250|111.5
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
A|250|122
B|250|111.5
`)
			t.Left("Circuits", "9|total|right")
		}},

		{File: "Harrowmere/Palm House alterations.xlsx", Kind: "schedule", Book: book("Alterations", `
Harrowmere Botanic Garden
Palm House PA alterations - schedule of loudspeakers (100V)
Ref: HBG-PA-22

No.|Position|Loudspeaker|Tap|Amplifier|Status
1|North apse, high|Column 20|10W|PA2|Existing - retain
2|North apse, low|Column 20|10W|PA2|Existing - retain
3|South apse, high|Column 20|20W|PA2|Existing - retap from 10W
4|South apse, low|Column 20|10W|PA2|Existing - remove
5|Gallery stair|Cabinet 6|3W|PA2|New
6|Gallery|Cabinet 6|6W|PA2|New
7|Gallery|Cabinet 6|6W|PA2|New
8|Cycad bed|Rock 15|7.5W|PA2|Future phase
9|Stores|Column 20|||Spare, boxed
10|Terrace|Horn 15|15W|PA3|Existing - by tenant, not on our system
11|Potting shed|Cabinet 6|3W|PA3|New
12|Potting shed|Cabinet 6|1.5W|PA3|New

PA2: 80W. PA3: 30W.
`, bold("A1:A2", "A5:F5")), Truth: func(t *typed.Truth) {
			t.Is("", "Harrowmere Botanic Garden", "states in words: retain, retap, remove, new, future, spare, another's")
			t.Speakers("tap_v=100; line_v=100; sheet=Alterations", `
rows|tag|room|model|tap_w|amplifier|status|note
6|1|North apse, high|Column 20|10|PA2|installed|
7|2|North apse, low|Column 20|10|PA2|installed|
8|3|South apse, high|Column 20|20|PA2|installed|20 W is the new tap
9|4|South apse, low|Column 20|10|PA2|removed|
10|5|Gallery stair|Cabinet 6|3|PA2|installed|
11..12|6..|Gallery|Cabinet 6|6|PA2|installed|
13|8|Cycad bed|Rock 15|7.5|PA2|future|
14|9|Stores|Column 20|||spare|
16|11|Potting shed|Cabinet 6|3|PA3|installed|
17|12|Potting shed|Cabinet 6|1.5|PA3|installed|
`)
			t.Channels("line_v=100", `
amplifier|rated_w|load_w|note
PA2|80|55|10 + 10 + 20 + 3 + 6 + 6
PA3|30|4.5|without the tenant's horn
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
PA2|80|55
PA3|30|4.5
`)
			t.Left("Alterations", "15|by others|the tenant's horn is on another system")
		}},

		{File: "Calder Fold/Lodge PA.txt", Kind: "schedule", Bytes: func() []byte {
			return typed.Unicode16(typed.DOS(`
Calder Fold Arboretum - Lodge PA speakers (100V line)

Spkr	Room	Make/type	W set	VC	Amp zone
1	Hall	6in ceiling	3	-	1
2	Hall	6in ceiling	3	-	1
3	Reading room	6in ceiling	1.5	VC A	1
4	Reading room	6in ceiling	1.5	VC A	1
5	Reading room	6in ceiling	1.5	VC A	1
6	Stair	6in ceiling	0.75	-	1
7	Yard	horn	7.5	-	2
8	Yard	horn	7.5	-	2
9	Seed bank	cabinet	6	VC B	2

VC A and VC B are 6 W controls, VC B is on the landing
Amp: 2 zones, 30W per zone
`))
		}, Truth: func(t *typed.Truth) {
			t.Is("", "Calder Fold Arboretum", "plain: saved as Unicode text with tabs; controls and amplifier in sentences below")
			t.Speakers("tap_v=100; line_v=100", `
rows|tag|zone|room|model|tap_w|control|channel
4|1|1|Hall|6in ceiling|3||1
5|2|1|Hall|6in ceiling|3||1
6..8|3..|1|Reading room|6in ceiling|1.5|VC A|1
9|6|1|Stair|6in ceiling|0.75||1
10..11|7..|2|Yard|horn|7.5||2
12|9|2|Seed bank|cabinet|6|VC B|2
`)
			t.Channels("line_v=100; rated_w=30", `
channel|load_w
1|11.25
2|21
`)
			t.Controls("rated_w=6", `
control|zone|load_w
VC A|1|4.5
VC B|2|6
`)
			t.Amplifiers("", "rated_w|load_w|note\n60|32.25|unnamed")
		}},

		{File: "Ostrey Planetarium/Speaker numbers across.ods", Kind: "schedule", Saved: "ods", Book: ostreyAcross, Truth: func(t *typed.Truth) {
			t.Is("", "Ostrey Planetarium", "transposed: a column a room, the row heads at the left, the sum at the right")
			t.Speakers("tap_v=100; line_v=100; sheet=Sheet1; amplifier=A", `
rows|room|model|count|tap_w|channel|control
B|Foyer|Flush 6|8|3|1|
C|Shop|Flush 6|3|3|1|VC1
D|Dome ante-room|Flush 6|4|1.5|1|VC2
E|Library|Box 10|2|5|2|
F|Observatory deck|Horn 15|2|15|2|
G|Basement|Box 10|3|5|2|
`)
			t.Channels("line_v=100; amplifier=A; rated_w=60", `
channel|load_w
1|39
2|55
`)
			t.Controls("", `
control|zone|rated_w|load_w
VC1|Shop|10|9
VC2|Dome ante-room|6|6
`)
			t.Amplifiers("amplifier=A", "rated_w|load_w\n120|94")
		}},
	}
}

func ostreyAcross() *excelize.File {
	p := typed.NewBook("Sheet1")
	p.Put("A1", `
Ostrey Planetarium 100 V PA
Amplifier A, 2 x 60 W

Room|Foyer|Shop|Dome ante-room|Library|Observatory deck|Basement|Total
Speaker|Flush 6|Flush 6|Flush 6|Box 10|Horn 15|Box 10|
Number|8|3|4|2|2|3|22
Tapping W|3|3|1.5|5|15|5|
Load W|24|9|6|10|30|15|94
Volume control||VC1 10W|VC2 6W||||
Amplifier channel|1|1|1|2|2|2|
`)
	p.Bold("A4:H4", "A5:A10")
	return p.File
}
