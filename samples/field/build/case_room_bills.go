package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// roomBills is an estimator of an American office: rooms as headings, item numbers, money, feet and gauges.
var roomBills = []typed.Case{
	{File: "bids/Takeoff 23-118 Millrace Boathouse.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Takeoff")
		p.Put("A1", `
TAKEOFF 23-118|MILLRACE BOATHOUSE - PAGING SYSTEM 70V|||||
Item|Description|Qty|Unit|Tap (W)|Ext. (W)|Unit $|Ext. $
1|ROOM 101 BOAT BAY - ZONE 1, AMP CH 1
1.01|Horn speaker, 15 W|6|ea|15|90|118.00|708.00
1.02|Cable 14 AWG 2C|220|ft|||0.62|136.40
2|ROOM 102 ROWING TANK - ZONE 2, AMP CH 2
2.01|Pendant speaker|8|ea|8|64|96.00|768.00
2.02|Ceiling speaker 4"|2|ea|2|4|41.00|82.00
2.03|Volume control VC-2, 100 W|1|ea|||74.00|74.00
2.04|Cable 16 AWG 2C|180|ft|||0.48|86.40
3|ROOM 103 ERG ROOM - ZONE 3, AMP CH 3
3.01|Ceiling speaker 8"|10|ea|4|40|52.00|520.00
3.02|Volume control VC-3, 50 W|1|ea|||61.00|61.00
3.03|Cable 16 AWG 2C|150|ft|||0.48|72.00
4|ROOM 104 DOCK - ZONE 4, AMP CH 4
4.01|Horn speaker, 30 W|3|ea|30|90|139.00|417.00
4.02|Cable 14 AWG 2C direct burial|310|ft|||1.15|356.50
5|HEAD END
5.01|4-channel amplifier A1, 120 W per channel, 70 V|1|ea|||1,890.00|1,890.00
5.02|Rack and fittings|1|lot|||450.00|450.00

|TOTAL||||288||5,621.30
`)
		p.Bold("A3:B3", "A6:B6", "A11:B11", "A15:B15", "A18:B18")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("23-118", "Millrace Boathouse", "a bill with rooms, zones and channels in headings; controls and cable as items; money; totals")
		t.Speakers("tap_v=70.7; line_v=70.7; sheet=Takeoff; amplifier=A1", `
rows|room|zone|channel|count|tap_w|control
4|BOAT BAY|ZONE 1|1|6|15|
7|ROWING TANK|ZONE 2|2|8|8|VC-2
8|ROWING TANK|ZONE 2|2|2|2|VC-2
12|ERG ROOM|ZONE 3|3|10|4|VC-3
16|DOCK|ZONE 4|4|3|30|
`)
		t.Channels("line_v=70.7; rated_w=120; amplifier=A1", "channel|load_w\n1|90\n2|68\n3|40\n4|90")
		t.Amplifiers("", "amplifier|rated_w|load_w\nA1|480|288")
		t.Controls("", "control|zone|rated_w|load_w\nVC-2|ZONE 2|100|68\nVC-3|ZONE 3|50|40")
		t.Lines("note=one length a zone", "zone|length_m|area_mm2\nZONE 1|67.056|2.081\nZONE 2|54.864|1.309\nZONE 3|45.72|1.309\nZONE 4|94.488|2.081")
		t.Left("Takeoff", "5|cable|\n10|cable|\n14|cable|\n17|cable|\n19|amplifier|\n20|other|\n22|total|")
	}},

	{File: "bids/Conservatory bid schedule.csv", Kind: "schedule", Bytes: text(`
Bid 24-031;Fernleigh Conservatory;;;;;;;
Constant voltage 70 V, single amplifier A1, 250 W;;;;;;;;
;;;;;;;;
Room No.;Room;Ceiling spkrs;Tap W;Horns;Tap W;Vol. control;Control W;Room total W
100;Lobby;6;4;;;VC100;35;24
101;Palm court;;;8;15;;;120
102;Cactus room;4;2;;;VC102;10;8
103;Classroom;6;4;;;VC103;35;24
104;Potting shed;;;2;7.5;;;15
105;Restroom corridor;4;1;;;;;4
;Total;20;;10;;;;195
`), Truth: func(t *typed.Truth) {
		t.Is("24-031", "Fernleigh Conservatory", "two kinds of loudspeakers side by side with their taps; room totals; semicolons")
		t.Speakers("tap_v=70.7; line_v=70.7; amplifier=A1", `
rows|room|count|tap_w|control
5|Lobby|6|4|VC100
6|Palm court|8|15|
7|Cactus room|4|2|VC102
8|Classroom|6|4|VC103
9|Potting shed|2|7.5|
10|Restroom corridor|4|1|
`)
		t.Channels("line_v=70.7; amplifier=A1", "rated_w|load_w\n250|195")
		t.Amplifiers("", "amplifier|rated_w|load_w\nA1|250|195")
		t.Controls("", "control|rated_w|load_w\nVC100|35|24\nVC102|10|8\nVC103|35|24")
		t.Left("", "11|total|")
	}},

	{File: "bids/Addendum 2 Starfield Observatory.xlsx", Kind: "schedule", Book: sheets("Spkr count", `
Starfield Observatory - Job 22-207 - Addendum 2||||||
70.7 V system, amplifier PA1: two 200 W channels||||||
||||||
Item|Room|Speakers @ tap|Total W|Ch|Volume control|Home run
1|Rotunda|8 @ 10 W|80|1||14 AWG 160 ft
2|Exhibit hall|8 @ 5 W, 2 @ 2.5 W|45|2|VC-A 50 W|16 AWG 95 ft
3|Gift shop|4 @ 2.5 W|10|2|VC-B 25 W|16 AWG 120 ft
4|Lecture room|6 @ 5 W|30|2|VC-C 35 W|16 AWG 140 ft
5|Dome walk|4 @ 15 W|60|1||14 AWG 230 ft
6|Parking|2 @ 15 W|30|1|FUTURE - conduit only|
|||||
|Total now||225||
`), Truth: func(t *typed.Truth) {
		t.Is("22-207", "Starfield Observatory", "counts and taps in one cell, two taps in one room; one row future; home runs with gauge and length in one cell")
		t.Speakers("tap_v=70.7; line_v=70.7; sheet=Spkr count; amplifier=PA1", `
rows|room|channel|count|tap_w|control|status
5|Rotunda|1|8|10||installed
6|Exhibit hall|2|8|5|VC-A|installed
6|Exhibit hall|2|2|2.5|VC-A|installed
7|Gift shop|2|4|2.5|VC-B|installed
8|Lecture room|2|6|5|VC-C|installed
9|Dome walk|1|4|15||installed
10|Parking|1|2|15||future
`)
		t.Channels("line_v=70.7; rated_w=200; amplifier=PA1", "channel|load_w\n1|140\n2|85")
		t.Amplifiers("", "amplifier|rated_w|load_w\nPA1|400|225")
		t.Controls("", "control|rated_w|load_w\nVC-A|50|45\nVC-B|25|10\nVC-C|35|30")
		t.Lines("note=home run", "zone|length_m|area_mm2\nRotunda|48.768|2.081\nExhibit hall|28.956|1.309\nGift shop|36.576|1.309\nLecture room|42.672|1.309\nDome walk|70.104|2.081")
		t.Left("Spkr count", "12|total|")
	}},
}
