package main

import (
	"lineaudit/samples/typed"

	"github.com/xuri/excelize/v2"
)

// callouts are the sheets of a technician who services public address by contract and keeps one list a site on his laptop.
var callouts = []typed.Case{
	{File: "callouts/C2011-37 Penrick ice hall.xlsx", Kind: "schedule", Book: sheets("Speakers", `
Penrick Ice Hall - PA as surveyed 14/03/2011|||||||
Job no. C2011-37|||System 100V line||||Surveyed RT

Line|Area|Speaker|Qty|Tap (W)|Total (W)|Vol. control|Remarks
L1|Rink, north side|Horn|6|15|90||
L1|Rink, south side|Horn|6|15|90||one horn rusty, still OK
L2|Foyer|Ceiling 6"|8|3|24|VC1|
L2|Skate hire|Ceiling 6"|4|3|12|VC2|
L2|Changing rooms 1-4|Ceiling 6"|8|1.5|12||2 per room
L3|Plant corridor|Cabinet|3|6|18||
L3|Office|Cabinet|1|3|3|VC3|
||||Total|249||

Line|Amp|Rated|
L1|A1|250 W|
L2|A2|60 W|
L3|A3|30 W|

VC1 24 W, VC2 and VC3 12 W each
`), Truth: func(t *typed.Truth) {
		t.Is("C2011-37", "Penrick Ice Hall", "an amplifier a line in a small table below; the ratings of the controls in a sentence")
		t.Speakers("tap_v=100; line_v=100; sheet=Speakers", `
rows|amplifier|channel|room|model|count|tap_w|control
5|A1|L1|Rink, north side|Horn|6|15|
6|A1|L1|Rink, south side|Horn|6|15|
7|A2|L2|Foyer|Ceiling 6"|8|3|VC1
8|A2|L2|Skate hire|Ceiling 6"|4|3|VC2
9|A2|L2|Changing rooms 1-4|Ceiling 6"|8|1.5|
10|A3|L3|Plant corridor|Cabinet|3|6|
11|A3|L3|Office|Cabinet|1|3|VC3
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nA1|L1|250|180\nA2|L2|60|48\nA3|L3|30|21")
		t.Amplifiers("", "amplifier|rated_w|load_w\nA1|250|180\nA2|60|48\nA3|30|21")
		t.Controls("", "control|rated_w|load_w\nVC1|24|24\nVC2|12|12\nVC3|12|3")
		t.Left("Speakers", "12|total|the sum")
	}},

	{File: "callouts/C2014-112 Dunwater baths.csv", Kind: "schedule", Bytes: text(`
C2014-112,Dunwater Swimming Baths,,,,,
Visit,3 Feb 2014,,,,,
Amp,240W 100V mixer amp in pool office,,,,,
,,,,,,
Where,What,No.,Set to,Zone,Notes,
Main pool,column,8,10W,1,2 nr on east wall re-tapped from 20W 2014,
Learner pool,column,2,10W,1,,
Poolside office,wall spkr,1,3W,1,,
Reception,clg spkr,4,3W,2,on 12W vol ctrl behind desk,
Viewing room,clg spkr,6,3W,2,on 24W vol ctrl,
Changing village,clg spkr,10,1.5W,2,,
Fitness room,clg spkr,4,6W,3,no vol ctrl - has own music,
Fitness store,clg spkr,1,6W,3,disconnected,
,,,,,,
All zones come off the one amp through the 3 way zone selector,,,,,,
`), Truth: func(t *typed.Truth) {
		t.Is("C2014-112", "Dunwater Swimming Baths", "controls without names in notes; one amplifier in the title block; a loudspeaker disconnected")
		t.Speakers("tap_v=100; line_v=100", `
rows|room|model|count|tap_w|zone|note
6|Main pool|column|8|10|1|
7|Learner pool|column|2|10|1|
8|Poolside office|wall spkr|1|3|1|
9|Reception|clg spkr|4|3|2|unnamed control
10|Viewing room|clg spkr|6|3|2|unnamed control
11|Changing village|clg spkr|10|1.5|2|
12|Fitness room|clg spkr|4|6|3|
`)
		t.Speakers("tap_v=100; line_v=100; status=removed", "rows|room|model|count|tap_w|zone\n13|Fitness store|clg spkr|1|6|3")
		t.Channels("line_v=100", "rated_w|load_w\n240|172")
		t.Amplifiers("note=unnamed", "rated_w|load_w\n240|172")
		t.Controls("note=unnamed", "zone|rated_w|load_w\nReception|12|12\nViewing room|24|18")
	}},

	{File: "callouts/C2017-058 Hallow Tor observatory.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("LS")
		p.Put("A1", `
Hallow Tor Observatory   job C2017-058||||||
LS ref|Location|Type|W|Cct|VC ref|
1|Entrance lobby|C6|6|1|-|
2|Entrance lobby|C6|6|1|-|
3|Gift counter|C6|3|1|V1|
4|Gift counter|C6|3|1|V1|
5|Lecture theatre|W10|10|2|V2|
6|Lecture theatre|W10|10|2|V2|
7|Lecture theatre|W10|10|2|V2|
8|Lecture theatre|W10|10|2|V2|
9|Dome|W10|5|2|-|
10|Dome|W10|5|2|-|
11|Car park|H15|15|3|-|
12|Car park|H15|15|3|-|spare horn in store, not counted
`)
		p = p.Sheet("Circuits")
		p.Put("A1", `
Cct|Amp|Amp W|Cable|Length to last LS
1|1|60|1.5 mm² twin|45 m
2|2|60|1.5 mm² twin|80 m
3|3|30|2.5 mm² SWA|140 m
`)
		p = p.Sheet("VCs")
		p.Put("A1", `
VC ref|Position|W|Box
V1|Gift counter|12|25 mm
V2|Lecture theatre, by lectern|30|47 mm

All amps 100 volt line output
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("C2017-058", "Hallow Tor Observatory", "three sheets joined by circuit and control; W means tap, amplifier and control in turn")
		t.Speakers("tap_v=100; line_v=100; sheet=LS", `
rows|tag|room|model|tap_w|amplifier|channel|control
3..4|1..|Entrance lobby|C6|6|1|1|
5..6|3..|Gift counter|C6|3|1|1|V1
7..10|5..|Lecture theatre|W10|10|2|2|V2
11..12|9..|Dome|W10|5|2|2|
13..14|11..|Car park|H15|15|3|3|
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\n1|1|60|18\n2|2|60|50\n3|3|30|30")
		t.Amplifiers("", "amplifier|rated_w|load_w\n1|60|18\n2|60|50\n3|30|30")
		t.Controls("", "control|rated_w|load_w\nV1|12|6\nV2|30|40")
		t.Lines("note=to the last loudspeaker", "line|length_m|area_mm2\n1|45|1.5\n2|80|1.5\n3|140|2.5")
	}},
}
