package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// rackSheets is a rink's own electrician: capitals, one sheet a rack, controls called by the place they serve.
var rackSheets = []typed.Case{
	{File: "racks/Holm Lane racks.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Rack A")
		p.Put("A1", `
RACK A  PLANT ROOM 1 - HOLM LANE ICE RINK|||||||
AMP 1: 240W, 100V LINE, ONE OUTPUT

CCT|WHERE|NO OFF|SPEAKER|SET TO|TOTAL|VOL CONTROL|CABLE
A1|Rink side north|6|Horn|10W|60W|-|1.5mm SWA
A2|Rink side south|6|Horn|10W|60W|-|1.5mm SWA
A3|Skate hire|4|Ceiling|6W|24W|Skate hire 36W|1.0mm
|Changing rooms|4|Ceiling|3W|12W|Skate hire 36W|1.0mm
A4|Plant room|1|Horn|10W|10W|-|1.0mm

TOTAL|||||166W

FIRE PANEL RELAY: 24V GONE = SKATE HIRE CONTROL BYPASSED, FULL VOLUME
`)
		p.Note("E7", "was 3W, turned up for the hockey lot")
		q := p.Sheet("Rack B")
		q.Put("A1", `
RACK B  COMMENTATOR BOX - HOLM LANE ICE RINK|||||||
AMP 2: 2 x 120W, 100V LINE

OUT|WHERE|NO OFF|SPEAKER|SET TO|TOTAL|VOL CONTROL|REMARKS
1|Stand upper|8|Column|10W|80W|-
1|Stand lower|4|Column|5W|20W|-
2|Club room|6|Ceiling|6W|36W|Club room 50W
2|First aid|1|Ceiling|3W|3W|First aid 6W
2|Sharpening bay|2|Horn|5W||-|REMOVED 2019, TAILS MADE OFF

OUT 1 TOTAL|||||100W
OUT 2 TOTAL|||||39W
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Holm Lane Ice Rink", "one sheet a rack; circuits on one output; a control over two rooms; a blank for the circuit above; one row removed")
		t.Speakers("tap_v=100; line_v=100; sheet=Rack A; amplifier=AMP 1", `
rows|room|count|model|tap_w|control
5|Rink side north|6|Horn|10|
6|Rink side south|6|Horn|10|
7|Skate hire|4|Ceiling|6|Skate hire
8|Changing rooms|4|Ceiling|3|Skate hire
9|Plant room|1|Horn|10|
`)
		t.Speakers("tap_v=100; line_v=100; sheet=Rack B; amplifier=AMP 2", `
rows|room|channel|count|model|tap_w|control|status
5|Stand upper|1|8|Column|10||installed
6|Stand lower|1|4|Column|5||installed
7|Club room|2|6|Ceiling|6|Club room|installed
8|First aid|2|1|Ceiling|3|First aid|installed
9|Sharpening bay|2|2|Horn|5||removed
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nAMP 1||240|166\nAMP 2|1|120|100\nAMP 2|2|120|39")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAMP 1|240|166\nAMP 2|240|139")
		t.Controls("", "control|rated_w|load_w\nSkate hire|36|36\nClub room|50|36\nFirst aid|6|3")
		t.Left("Rack A", "11|total|")
		t.Left("Rack B", "11|total|\n12|total|")
	}},

	{File: "racks/Rack C curling hall.xls", Kind: "schedule", Saved: "xls", Book: sheets("Rack C", `
RACK C  CURLING HALL  BRACKHOLLOW|||||||
AMP 3: 4 x 60W, 70V LINE
SPEAKERS ARE THE OLD 100V ONES FROM THE BOATHOUSE - ON 70V THEY GIVE HALF OF WHAT THE LABEL SAYS

OUT|WHERE|NO OFF|SPEAKER|TAP (100V LABEL) W|W ON 70V|TOTAL W|VOL CONTROL|CONTROL W
1|Ice lanes 1 and 2|4|Cabinet|20|10|40
2|Ice lanes 3 and 4|4|Cabinet|20|10|40
3|Viewing gallery|6|Ceiling|6|3|18|Viewing|25
3|Stairs|2|Ceiling|3|1.5|3|Viewing|25
4|Lockers|3|Ceiling|6|3|9|Lockers|15
|
TOTAL||19||||110
`), Truth: func(t *typed.Truth) {
		t.Is("", "Curling Hall Brackhollow", "100 V loudspeakers on a 70 V line, with both powers; one control over two places")
		t.Speakers("tap_v=100; line_v=70.7; sheet=Rack C; amplifier=AMP 3", `
rows|room|channel|count|model|tap_w|control
6|Ice lanes 1 and 2|1|4|Cabinet|20|
7|Ice lanes 3 and 4|2|4|Cabinet|20|
8|Viewing gallery|3|6|Ceiling|6|Viewing
9|Stairs|3|2|Ceiling|3|Viewing
10|Lockers|4|3|Ceiling|6|Lockers
`)
		t.Channels("line_v=70.7; amplifier=AMP 3; rated_w=60", "channel|load_w\n1|40\n2|40\n3|21\n4|9")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAMP 3|240|110")
		t.Controls("", "control|rated_w|load_w\nViewing|25|21\nLockers|15|9")
		t.Left("Rack C", "12|total|")
	}},

	{File: "racks/Rack D boathouse.csv", Kind: "schedule", Bytes: text(`
RACK D,BOATHOUSE,,,,
AMP 4,120W,100V,MIXER AMP UNDER BENCH,,
AMP 5,60W,100V,IN CREW ROOM CUPBOARD,,
,,,,,
AMP,WHERE,QTY,TAP,VOL CONTROL,NOTES
4,Slipway,2,15W,,HORNS
4,Boat hall,6,10W,,HORNS ON TRUSSES
4,Workshop,2,6W,Workshop 12W,WAS 2 OFF 10W
5,Crew room,4,3W,Crew room 12W,
5,Office,1,1.5W,Office 5W,CONTROL DOES PASSAGE AS WELL
5,Passage,2,3W,Office 5W,
5,Jetty,2,15W,,FUTURE - DUCT ONLY
`), Truth: func(t *typed.Truth) {
		t.Is("", "Boathouse", "amplifiers listed above the table and called by their numbers in it; a control over two rooms")
		t.Speakers("tap_v=100; line_v=100", `
rows|room|amplifier|count|tap_w|control|status
6|Slipway|AMP 4|2|15||installed
7|Boat hall|AMP 4|6|10||installed
8|Workshop|AMP 4|2|6|Workshop|installed
9|Crew room|AMP 5|4|3|Crew room|installed
10|Office|AMP 5|1|1.5|Office|installed
11|Passage|AMP 5|2|3|Office|installed
12|Jetty|AMP 5|2|15||future
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nAMP 4|120|102\nAMP 5|60|19.5")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAMP 4|120|102\nAMP 5|60|19.5")
		t.Controls("", "control|rated_w|load_w\nWorkshop|12|12\nCrew room|12|12\nOffice|5|7.5")
	}},

	{File: "racks/Racks F G swim hall.xlsx", Kind: "schedule", Book: sheets("Rack F", `
RACK F - SWIM HALL PLANT|||||||
|
AMP 6   4 x 125W   CH 1+2 BRIDGED = 250W   100V|||||||
CH|AREA|SPKRS|TYPE|TAP|W|LOCAL CONTROL|CABLE RUN
1+2|Pool hall|12|Marine horn|15W|180|NONE|2.5mm, 85m
3|Learner pool|4|Marine horn|10W|40|NONE|2.5mm, 40m
4|Foyer|8|Ceiling|3W|24|FOYER 30W|1.5mm, 35m
4|Reception|2|Ceiling|3W|6|FOYER 30W|1.5mm, 10m
|
AMP 7   2 x 60W   100V|||||||
CH|AREA|SPKRS|TYPE|TAP|W|LOCAL CONTROL|CABLE RUN
1|Changing village|10|Ceiling IP54|3W|30|VILLAGE 35W|1.5mm, 60m
1|Group changing|3|Ceiling IP54|3W|9|VILLAGE 35W|1.5mm, 15m
2|Staff room|2|Ceiling|1.5W|3|STAFF 5W|1.0mm, 25m
2|SPARE
|
FIRE ALARM RELAY OVERRIDES FOYER, VILLAGE AND STAFF CONTROLS
`, "Rack G", `
RACK G - SPECTATOR STAND|||||||
|
AMP 8   250W   100V|||||||
CH|AREA|SPKRS|TYPE|TAP|W|LOCAL CONTROL|CABLE RUN
1|Stand left|6|Column|20W|120|NONE|2.5mm, 30m
1|Stand right|6|Column|20W|120|NONE|2.5mm, 45m
1|Press desk|1|Cabinet|6W|6|PRESS 10W|1.0mm, 8m
`), Truth: func(t *typed.Truth) {
		t.Is("", "Swim Hall", "amplifiers as headings over their own tables; a bridged pair; controls called by places; cable and length in one cell")
		t.Speakers("tap_v=100; line_v=100; sheet=Rack F", `
rows|room|amplifier|channel|count|model|tap_w|control
5|Pool hall|AMP 6|1+2|12|Marine horn|15|
6|Learner pool|AMP 6|3|4|Marine horn|10|
7|Foyer|AMP 6|4|8|Ceiling|3|FOYER
8|Reception|AMP 6|4|2|Ceiling|3|FOYER
12|Changing village|AMP 7|1|10|Ceiling IP54|3|VILLAGE
13|Group changing|AMP 7|1|3|Ceiling IP54|3|VILLAGE
14|Staff room|AMP 7|2|2|Ceiling|1.5|STAFF
`)
		t.Speakers("tap_v=100; line_v=100; sheet=Rack G; amplifier=AMP 8; channel=1", `
rows|room|count|model|tap_w|control
5|Stand left|6|Column|20|
6|Stand right|6|Column|20|
7|Press desk|1|Cabinet|6|PRESS
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nAMP 6|1+2|250|180\nAMP 6|3|125|40\nAMP 6|4|125|30\nAMP 7|1|60|39\nAMP 7|2|60|3\nAMP 8|1|250|246")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAMP 6|500|250\nAMP 7|120|42\nAMP 8|250|246")
		t.Controls("", "control|rated_w|load_w\nFOYER|30|30\nVILLAGE|35|39\nSTAFF|5|3\nPRESS|10|6")
		t.Left("Rack F", "15|note|a spare output")
	}},
}
