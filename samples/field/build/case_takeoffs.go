package main

import (
	"lineaudit/samples/typed"

	"github.com/xuri/excelize/v2"
)

// takeoffs is a British estimator's desk: counts taken off drawings, priced later.
var takeoffs = []typed.Case{
	{File: "takeoffs/T1109 Quarrybank pool take-off.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Take-off")
		p.Put("A1", `
Tender T1109 - Quarrybank Swimming Pool - public address take off from drgs E-601 to E-604|||||||||
Drg|Room no.|Room name|Recessed c/w 6W txfmr @3W|Recessed c/w 6W txfmr @1.5W|20W projector @10W|20W projector @20W|Circuit|Vol control|Qty check
E-601|G01|Entrance|4||||PA1|VC 12W|4
E-601|G02|Reception office||1|||PA1||1
E-601|G05|Wet change||10|||PA1||10
E-602|G10|Pool hall||||8|PA2||8
E-602|G11|Learner pool|||4||PA3||4
E-602|G12|Spectators|||6||PA3||6
E-603|F01|Studio|4||||PA4|VC 24W|4
E-603|F02|Gym|8||||PA4|VC 24W|8
E-604|R01|Plant|||2||PA3||2
||TOTALS|16|11|12|8|||47

|Amplifiers||||||||
|PA1|60W||||||||
|PA2|240W||||||||
|PA3|240W||||||||
|PA4|60W||||||||
|All 100V line||||||||
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("T1109", "Quarrybank Swimming Pool", "types and taps as columns; a volume control in each room by its rating alone; amplifiers beside circuits below")
		t.Speakers("tap_v=100; line_v=100; sheet=Take-off", `
rows|room|count|tap_w|channel|note
3|Entrance|4|3|PA1|unnamed control
4|Reception office|1|1.5|PA1|
5|Wet change|10|1.5|PA1|
6|Pool hall|8|20|PA2|
7|Learner pool|4|10|PA3|
8|Spectators|6|10|PA3|
9|Studio|4|3|PA4|unnamed control
10|Gym|8|3|PA4|unnamed control
11|Plant|2|10|PA3|
`)
		t.Channels("line_v=100", "channel|rated_w|load_w\nPA1|60|28.5\nPA2|240|160\nPA3|240|120\nPA4|60|36")
		t.Controls("note=unnamed", "zone|rated_w|load_w\nEntrance|12|12\nStudio|24|12\nGym|24|24")
		t.Left("Take-off", "12|total|TOTALS")
	}},

	{File: "takeoffs/T1131 Aldermere gardens.csv", Kind: "schedule", Bytes: text(`
Tender ref,T1131,,,,
Project,Aldermere Botanical Gardens visitor facilities,,,,
,,,,,
Item,Description,Qty,Unit,Zone,Comment
A,PUBLIC ADDRESS,,,,
A1,"Ceiling loudspeaker, 100V, 6W, tapped at 3W",14,nr,1,
A2,"Ceiling loudspeaker, 100V, 6W, tapped at 1.5W",6,nr,1,
A3,"Column loudspeaker, 100V, 30W, tapped at 15W",8,nr,2,
A4,"Horn loudspeaker, 100V, 15W, tapped at 7.5W",4,nr,3,
A5,"Volume control, 100V, 24W with bypass relay",2,nr,1,one for 4 of A1 and one for 6 of A1 - see drawing
A6,"Amplifier, 100V, 120W",1,nr,1,
A7,"Amplifier, 100V, 240W",1,nr,2,
A8,"Amplifier, 100V, 60W",1,nr,3,
A9,"Paging microphone",1,nr,,
A10,"Twin 2.5mm LSF cable",640,m,,
B,TESTING,,,,
B1,"Test and commission",1,item,,
`), Truth: func(t *typed.Truth) {
		t.Is("T1131", "Aldermere Botanical Gardens", "a bill of quantities: everything in a sentence, an amplifier a zone, controls whose loudspeakers stand on a drawing")
		t.Speakers("tap_v=100; line_v=100", `
rows|tag|zone|amplifier|count|tap_w
6|A1|1|A6|14|3
7|A2|1|A6|6|1.5
8|A3|2|A7|8|15
9|A4|3|A8|4|7.5
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nA6|120|51\nA7|240|120\nA8|60|30")
		t.Left("", "10|control|no loudspeaker\n11|amplifier|no loudspeaker\n12|amplifier|no loudspeaker\n13|amplifier|no loudspeaker\n14|other|microphone\n15|cable|no loudspeaker\n17|other|testing")
	}},

	{File: "takeoffs/T1188 Rushford boat club rooms and kit.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Sheet1")
		p.Put("A1", `
T1188 Rushford Boathouses - PA enquiry|||||||
||||||Kit list|
Room|Speakers|Type|Watts each|Zone||Item|Qty
Boat bay 1|4|projector|10|A||2 zone mixer amp 2 x 120W 100V|1
Boat bay 2|4|projector|10|A||10W projector|14
Ergo room|6|projector|10|B||6W ceiling|11
Club office|1|ceiling|3|B||volume control 12W|2
Trophy room|6|ceiling|3|B||volume control 24W|1
Changing M|2|ceiling|1.5|B||gooseneck mic|1
Changing F|2|ceiling|1.5|B|||

Volume controls: club office 12W, trophy room 24W, third one spare
`)
		p.Merge("A1:H1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("T1188", "Rushford Boathouses", "a list of kit beside the list of rooms; controls told by room in a note below")
		t.Speakers("tap_v=100; line_v=100; sheet=Sheet1", `
rows|room|count|model|tap_w|zone|channel|note
4|Boat bay 1|4|projector|10|A|A|
5|Boat bay 2|4|projector|10|A|A|
6|Ergo room|6|projector|10|B|B|
7|Club office|1|ceiling|3|B|B|unnamed control
8|Trophy room|6|ceiling|3|B|B|unnamed control
9|Changing M|2|ceiling|1.5|B|B|
10|Changing F|2|ceiling|1.5|B|B|
`)
		t.Channels("line_v=100; rated_w=120", "channel|load_w\nA|80\nB|87")
		t.Controls("note=unnamed", "zone|rated_w|load_w\nClub office|12|3\nTrophy room|24|18")
	}},
}
