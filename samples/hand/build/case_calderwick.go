package main

import "lineaudit/samples/typed"

// calderwick are the lists of the British sites: installers, consultants, the trust's own facility team.
func calderwick() []typed.Case {
	return []typed.Case{
		{File: "Ravensmoor/LS schedule rev B.xlsx", Kind: "schedule", Book: book("LS Schedule", `
RAVENSMOOR ICE RINK
PUBLIC ADDRESS SYSTEM - LOUDSPEAKER SCHEDULE
Contract No.|C4417||Drawn|DM||Rev|B
System|100V line||Checked|||Date|Mar 2011

Zone|Area|Qty|Type|Tapping (W)|Total (W)|Amp|Output
1|North stand|6|Projector 20W|10|60|1|1
1|South stand|6|Projector 20W|10|60|1|1
2|Skate hire|4|Ceiling 6W|3|12|1|2
2|Lockers|3|Ceiling 6W|1.5|4.5|1|2
2|Entrance lobby|2|Ceiling 6W|3|6|1|2
3|Viewing lounge|6|Ceiling 6W|3|18|1|3
4|Plant room|1|Horn 15W|7.5|7.5|1|4
4|Ice resurfacer bay|2|Horn 15W|15|30|1|4
|TOTAL|30|||198

Amplifier 1: 4 x 120W @ 100V line, rack R1, plant room
Notes:
1. All tappings to be confirmed at commissioning.
2. Ceiling loudspeakers complete with fire dome where shown on drawing C4417/E/06.
`, bold("A1:A2", "A6:H6")), Truth: func(t *typed.Truth) {
			t.Is("C4417", "Ravensmoor Ice Rink", "plain: one row an area, one line under the table names the amplifier")
			t.Revision("B", false)
			t.Speakers("sheet=LS Schedule; tap_v=100; line_v=100; amplifier=1", `
rows|zone|room|model|count|tap_w|channel
7|1|North stand|Projector 20W|6|10|1
8|1|South stand|Projector 20W|6|10|1
9|2|Skate hire|Ceiling 6W|4|3|2
10|2|Lockers|Ceiling 6W|3|1.5|2
11|2|Entrance lobby|Ceiling 6W|2|3|2
12|3|Viewing lounge|Ceiling 6W|6|3|3
13|4|Plant room|Horn 15W|1|7.5|4
14|4|Ice resurfacer bay|Horn 15W|2|15|4
`)
			t.Channels("amplifier=1; line_v=100; rated_w=120", `
channel|load_w|note
1|120|exactly its rating
2|22.5|12 + 4.5 + 6
3|18|
4|37.5|7.5 + 30
`)
			t.Amplifiers("amplifier=1", "rated_w|load_w\n480|198")
			t.Left("LS Schedule", "15|total|right")
		}},

		{File: "Wendle Boathouse/PA assets 2019.csv", Kind: "schedule", Bytes: utf8(`
Asset No,Building,Floor,Room,Item,Tapped At,Zone,Amp Channel,Condition,Last Checked
WB-0101,Wendle Boathouse,Ground,Boat hall,Wall cabinet speaker,6W,Hall,A1,Good,12/02/2019
WB-0102,Wendle Boathouse,Ground,Boat hall,Wall cabinet speaker,6W,Hall,A1,Good,12/02/2019
WB-0103,Wendle Boathouse,Ground,Boat hall,Wall cabinet speaker,6W,Hall,A1,Fair,12/02/2019
WB-0104,Wendle Boathouse,Ground,Boat hall,Wall cabinet speaker,6W,Hall,A1,Good,12/02/2019
WB-0105,Wendle Boathouse,Ground,Workshop,Wall cabinet speaker,3W,Hall,A1,Good,12/02/2019
WB-0106,Wendle Boathouse,Ground,Crew changing,Ceiling speaker,1.5W,Changing,A2,Good,12/02/2019
WB-0107,Wendle Boathouse,Ground,Crew changing,Ceiling speaker,1.5W,Changing,A2,Poor - grille loose,12/02/2019
WB-0108,Wendle Boathouse,Ground,Showers,Ceiling speaker IP,1.5W,Changing,A2,Good,12/02/2019
WB-0109,Wendle Boathouse,First,Club room,Ceiling speaker,3W,Club,A2,Good,13/02/2019
WB-0110,Wendle Boathouse,First,Club room,Ceiling speaker,3W,Club,A2,Good,13/02/2019
WB-0111,Wendle Boathouse,First,Balcony,Horn,10W,Outside,A3,Good,13/02/2019
WB-0112,Wendle Boathouse,External,Slipway,Horn,15W,Outside,A3,Corroded,13/02/2019
WB-0113,Wendle Boathouse,External,Pontoon,Horn,15W,Outside,A3,Good,13/02/2019
WB-0114,Wendle Boathouse,Ground,Comms cupboard,Mixer amplifier 3 x 60W 100V,,,,Good,12/02/2019
WB-0115,Wendle Boathouse,Ground,Reception,Paging microphone,,,,Good,12/02/2019
`), Truth: func(t *typed.Truth) {
			t.Is("", "Wendle Boathouse", "plain: the facility team's asset list, a row a device; the amplifier and a microphone are assets too")
			t.Speakers("tap_v=100; line_v=100", `
rows|tag|zone|room|model|tap_w|channel
2..5|WB-0101..|Hall|Boat hall|Wall cabinet speaker|6|A1
6|WB-0105|Hall|Workshop|Wall cabinet speaker|3|A1
7..8|WB-0106..|Changing|Crew changing|Ceiling speaker|1.5|A2
9|WB-0108|Changing|Showers|Ceiling speaker IP|1.5|A2
10..11|WB-0109..|Club|Club room|Ceiling speaker|3|A2
12|WB-0111|Outside|Balcony|Horn|10|A3
13|WB-0112|Outside|Slipway|Horn|15|A3
14|WB-0113|Outside|Pontoon|Horn|15|A3
`)
			t.Channels("line_v=100; rated_w=60", `
channel|load_w
A1|27
A2|10.5
A3|40
`)
			t.Amplifiers("", "rated_w|load_w|note\n180|77.5|unnamed: A1 may as well be output 1 of A")
			t.Left("", "15|amplifier|\n16|other|microphone")
		}},

		{File: "Harrowmere/Glasshouse PA.xls", Kind: "schedule", Saved: "xls", Book: book("Speakers", `
Harrowmere Botanic Garden - Glasshouse PA (100V)
Job 7713

Spkr|Location|Type|W|V/C|Line
S1|Temperate house, door|LS-W6|6||1
S2|Temperate house, pool|LS-W6|6||1
S3|Temperate house, gallery|LS-W6|3||1
S4|Temperate house, gallery|LS-W6|3||1
S5|Orchid house|LS-C6|3|VC1|2
S6|Orchid house|LS-C6|3|VC1|2
S7|Orchid house|LS-C6|3|VC1|2
S8|Seed shop|LS-C6|1.5|VC2|2
S9|Seed shop|LS-C6|1.5|VC2|2
S10|Classroom|LS-W6|6|VC3|3
S11|Classroom|LS-W6|6|VC3|3
`, bold("A4:F4"), and("Volume controls", `
Ref|Position|Controls|Rating (W)
VC1|Orchid house, by door|S5 - S7|12
VC2|Seed shop counter|S8, S9|6
VC3|Classroom|S10, S11|10
`, bold("A1:D1")), and("Amp", `
Line|Amplifier|Output (W)|Speakers
1|PA1|30|S1 - S4
2|PA2|30|S5 - S9
3|PA3|30|S10, S11
`, bold("A1:D1"))), Truth: func(t *typed.Truth) {
			t.Is("7713", "Harrowmere Botanic Garden", "plain: three short lists joined by line and control")
			t.Speakers("tap_v=100; line_v=100; sheet=Speakers", `
rows|tag|room|model|tap_w|control|amplifier|channel
5|S1|Temperate house, door|LS-W6|6||PA1|1
6|S2|Temperate house, pool|LS-W6|6||PA1|1
7..8|S3..|Temperate house, gallery|LS-W6|3||PA1|1
9..11|S5..|Orchid house|LS-C6|3|VC1|PA2|2
12..13|S8..|Seed shop|LS-C6|1.5|VC2|PA2|2
14..15|S10..|Classroom|LS-W6|6|VC3|PA3|3
`)
			t.Channels("line_v=100; rated_w=30", `
amplifier|channel|load_w
PA1|1|18
PA2|2|12
PA3|3|12
`)
			t.Controls("", `
control|zone|rated_w|load_w|note
VC1|Orchid house|12|9|
VC2|Seed shop|6|3|
VC3|Classroom|10|12|over its rating
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
PA1|30|18
PA2|30|12
PA3|30|12
`)
		}},

		{File: "Ostrey Planetarium/Loudspeakers by floor.xlsx", Kind: "schedule", Book: book("LS", `
Ostrey Planetarium refurbishment|||||||||
Loudspeaker layout - design issue|||||||Project:|OP/119|
||Loudspeaker|||Load (W)||Fed from||
Ref.|Room|Type|No. off|Mounting|Each|Total|Amp|Ch.|Remarks
LOWER GROUND FLOOR|||||||||
L01|Cloakroom|C1|2|recessed|3|6|AMP-2|1|
L02|Workshop|W1|1|surface|6|6|AMP-2|1|
GROUND FLOOR|||||||||
G01|Foyer|C2|6|recessed|6|36|AMP-1|1|
G02|Tickets|C1|1|recessed|1.5|1.5|AMP-1|1|local att. ATT-1, 6 W
G03|Exhibition|P1|8|pendant|7.5|60|AMP-1|2|
G04|Corridor|C1|5|recessed|3|15|AMP-2|1|
FIRST FLOOR|||||||||
F01|Offices|C1|4|recessed|1.5|6|AMP-2|2|local att. ATT-2, 6 W
F02|Library|C1|3|recessed|1.5|4.5|AMP-2|2|
F03|Dome void|||||||||cinema system by others - not on 100 V line
F04|Terrace|H1|2|wall|10|20|AMP-2|2|
||||||155||

AMP-1 2 x 120 W / 100 V, AMP-2 2 x 60 W / 100 V
C1 6 W ceiling; C2 10 W ceiling; W1 6 W cabinet; P1 15 W pendant sphere; H1 15 W horn
`, merged("C3:E3", "F3:G3", "H3:I3", "A5:J5", "A8:J8", "A13:J13"), bold("A3:J4", "A5", "A8", "A13")), Truth: func(t *typed.Truth) {
			t.Is("OP/119", "Ostrey Planetarium", "two header rows with merged groups, a section a floor, controls in the remarks, a room of others, legend and amplifiers in sentences")
			t.Speakers("tap_v=100; line_v=100; sheet=LS; note=its section for a zone is as good", `
rows|tag|room|model|count|tap_w|control|amplifier|channel
6|L01|Cloakroom|C1|2|3||AMP-2|1
7|L02|Workshop|W1|1|6||AMP-2|1
9|G01|Foyer|C2|6|6||AMP-1|1
10|G02|Tickets|C1|1|1.5|ATT-1|AMP-1|1
11|G03|Exhibition|P1|8|7.5||AMP-1|2
12|G04|Corridor|C1|5|3||AMP-2|1
14|F01|Offices|C1|4|1.5|ATT-2|AMP-2|2
15|F02|Library|C1|3|1.5||AMP-2|2
17|F04|Terrace|H1|2|10||AMP-2|2
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w|note
AMP-1|1|120|37.5|
AMP-1|2|120|60|
AMP-2|1|60|27|6 + 6 + 15
AMP-2|2|60|30.5|6 + 4.5 + 20
`)
			t.Controls("", `
control|zone|rated_w|load_w
ATT-1|Tickets|6|1.5
ATT-2|Offices|6|6
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
AMP-1|240|97.5
AMP-2|120|57.5
`)
			t.Left("LS", "5|title|floor\n8|title|floor\n13|title|floor\n16|by others|low impedance\n18|total|right")
		}},
	}
}
