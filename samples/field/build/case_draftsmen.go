package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// draftsmen are four people in the United States.
var draftsmen = []typed.Case{
	// Marcus, draftsman of a sound contractor: capitals, marks, a sheet for speakers, one for amplifiers, one for wire.
	{File: "planetariums/21-1180 PRAIRIE STAR SPKR SCHED.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("SPKR")
		p.Put("A1", `
PRAIRIE STAR PLANETARIUM||||PROJ NO 21-1180
70V SPEAKER SCHEDULE
MARK|RM|ROOM NAME|TYPE|TAP|CKT|VC
S-01|100|LOBBY|A|5W|A1-1|VC-1
S-02|100|LOBBY|A|5W|A1-1|VC-1
S-03|100|LOBBY|A|5W|A1-1|VC-1
S-04|100|LOBBY|A|5W|A1-1|VC-1
S-05|101|TICKETS|A|2.5W|A1-1|
S-06|102|GIFT SHOP|A|5W|A1-1|VC-2
S-07|102|GIFT SHOP|A|5W|A1-1|VC-2
S-08|110|EXHIBITS|B|10W|A1-2|
S-09|110|EXHIBITS|B|10W|A1-2|
S-10|110|EXHIBITS|B|10W|A1-2|
S-11|110|EXHIBITS|B|10W|A1-2|
S-12|112|CLASSROOM|A|5W|A1-2|VC-3
S-13|112|CLASSROOM|A|5W|A1-2|VC-3
S-14|115|RESTROOMS|A|2.5W|A1-2|
S-15|115|RESTROOMS|A|2.5W|A1-2|
S-16|EXT|PLAZA|C|16W|A2-1|
S-17|EXT|PLAZA|C|16W|A2-1|
S-18|EXT|BUS DROP|C|16W|A2-1|
|
TYPE A = 6" CLG   TYPE B = SURFACE MT   TYPE C = HORN
`)
		a := p.Sheet("AMPS & VC")
		a.Put("A1", `
AMP|CH|RATED @ 70V|NOTES
A1|1|60 W|
A1|2|60 W|
A2|1|120 W|
A2|2|120 W|SPARE CH
|
VC|RATING|LOCATION
VC-1|35 W|100 LOBBY
VC-2|10 W|102 GIFT SHOP
VC-3|10 W|112 CLASSROOM
`)
		w := p.Sheet("WIRE")
		w.Put("A1", `
CKT|FROM|TO|FT|WIRE
A1-1|RACK|VC-1|85|2C 16 AWG
A1-1|RACK|S-05|110|2C 16 AWG
A1-2|RACK|S-08|140|2C 16 AWG
A2-1|RACK|S-16|260|2C 12 AWG
A2-1|S-17|S-18|95|2C 14 AWG
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("21-1180", "PRAIRIE STAR PLANETARIUM", "a tag a row; circuits A1-1 are amplifier and channel; a channel without load; feet and gauges")
		t.Speakers("sheet=SPKR; tap_v=70.7; line_v=70.7; amplifier=A1; channel=1", `rows|tag|room|tap_w|control
4..7|S-01..|LOBBY|5|VC-1
8|S-05|TICKETS|2.5|
9..10|S-06..|GIFT SHOP|5|VC-2`)
		t.Speakers("sheet=SPKR; tap_v=70.7; line_v=70.7; amplifier=A1; channel=2", `rows|tag|room|tap_w|control
11..14|S-08..|EXHIBITS|10|
15..16|S-12..|CLASSROOM|5|VC-3
17..18|S-14..|RESTROOMS|2.5|`)
		t.Speakers("sheet=SPKR; tap_v=70.7; line_v=70.7; amplifier=A2; channel=1", `rows|tag|room|tap_w
19..20|S-16..|PLAZA|16
21|S-18|BUS DROP|16`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
A1|1|60|32.5
A1|2|60|55
A2|1|120|48
A2|2|120|0`)
		t.Amplifiers("", `amplifier|load_w
A1|87.5
A2|48`)
		t.Controls("", `control|rated_w|load_w
VC-1|35|20
VC-2|10|10
VC-3|10|10`)
		t.Lines("", `line|from|to|length_m|area_mm2
A1-1|RACK|VC-1|25.908|1.309
A1-1|RACK|S-05|33.528|1.309
A1-2|RACK|S-08|42.672|1.309
A2-1|RACK|S-16|79.248|3.309
A2-1|S-17|S-18|28.956|2.081`)
	}},

	// Denise, acoustical consultant: she counts by tap setting, one column a tap, because that is how the supplier asks.
	{File: "consultants/Tamarack Arboretum tap count.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Tap count")
		p.Put("A1", `
Tamarack Arboretum - Visitor Center paging (our no. 0643-C)
Number of loudspeakers at each transformer tap. 70.7 V system.
|
||Loudspeakers at tap of|||||
Circuit|Space|1 W|2 W|4 W|8 W|16 W|Circuit watts
C1|Lobby|||4|||
|Vestibule||2||||
|Coat room|1|||||21
C2|Auditorium|||8|2||
|Control booth|1|||||49
C3|Greenhouse east|||||3|
|Greenhouse west|||1||3|100
C4|Parking|||||2|
|Trailhead||||1||40
Total|28|2|2|13|3|8|210
|
Circuits C1 and C2: 60 W channels. Circuits C3 and C4: 125 W channels. All four on one amplifier, AMP-1.
Local volume controls: VC-A in Lobby (lobby loudspeakers only), 25 W. VC-B in Auditorium, 50 W, auditorium loudspeakers only.
`)
		p.Merge("C4:G4", "A6:A8", "A9:A10", "A11:A12", "A13:A14")
		p.Bold("A1", "A4:H5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("0643-C", "Tamarack Arboretum", "matrix of spaces and taps, merged circuits, channels and controls in sentences")
		t.Speakers("sheet=Tap count; tap_v=70.7; line_v=70.7; amplifier=AMP-1; channel=C1", `rows|room|count|tap_w|control
6|Lobby|4|4|VC-A
7|Vestibule|2|2|
8|Coat room|1|1|`)
		t.Speakers("sheet=Tap count; tap_v=70.7; line_v=70.7; amplifier=AMP-1; channel=C2", `rows|room|count|tap_w|control
9|Auditorium|8|4|VC-B
9|Auditorium|2|8|VC-B
10|Control booth|1|1|`)
		t.Speakers("sheet=Tap count; tap_v=70.7; line_v=70.7; amplifier=AMP-1; channel=C3", `rows|room|count|tap_w
11|Greenhouse east|3|16
12|Greenhouse west|1|4
12|Greenhouse west|3|16`)
		t.Speakers("sheet=Tap count; tap_v=70.7; line_v=70.7; amplifier=AMP-1; channel=C4", `rows|room|count|tap_w
13|Parking|2|16
14|Trailhead|1|8`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
AMP-1|C1|60|21
AMP-1|C2|60|49
AMP-1|C3|125|100
AMP-1|C4|125|40`)
		t.Amplifiers("", `amplifier|load_w
AMP-1|210`)
		t.Controls("", `control|rated_w|load_w
VC-A|25|16
VC-B|50|48`)
		t.Left("Tap count", `15|total|sums`)
	}},

	// Luis, facilities supervisor of the skating trust: a list through two projects, with letters for what stays, goes and comes.
	{File: "rinks/Glacier Hollow Skating Pavilion PA phase 2.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("PA")
		p.Put("A1", `
Glacier Hollow Skating Pavilion
Public address, 70 volt|||Work order 55-209
E = existing, stays   N = new this summer   X = existing, demo   F = phase 3, not funded
|
E/N/X/F|Speaker|Qty|Watts ea.|Watts|Amp ch.|Volume control
E|Ice, overhead horns|6|20|120|RACK 1 CH 1|
X|Ice, old corner cabinets|4|10|40|RACK 1 CH 1|
N|Ice, corner horns|4|20|80|RACK 1 CH 2|
N|Team benches|2|5|10|RACK 1 CH 2|
E|Lobby ceiling|5|4|20|RACK 2 CH 1|V-1
N|Lobby addition ceiling|3|4|12|RACK 2 CH 1|V-1
E|Skate rental|2|4|8|RACK 2 CH 1|V-2
E|Office|1|2|2|RACK 2 CH 1|V-3
E|Locker rooms|8|2|16|RACK 2 CH 2|
X|Locker room 5|2|2|4|RACK 2 CH 2|
F|Dryland training|6|4|24|RACK 2 CH 2|
N|Resurfacer bay|1|10|10|RACK 2 CH 2|
|
Rack 1: 200 W per channel
Rack 2: 60 W per channel
V-1 35 W, V-2 10 W, V-3 5 W
`)
		p.Bold("A1", "A5:G5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("55-209", "Glacier Hollow Skating Pavilion", "letters for status with a legend above; ratings of racks and controls in single lines below")
		t.Speakers("sheet=PA; tap_v=70.7; line_v=70.7; amplifier=RACK 1; channel=1", `rows|room|count|tap_w|status
6|Ice, overhead horns|6|20|installed
7|Ice, old corner cabinets|4|10|removed`)
		t.Speakers("sheet=PA; tap_v=70.7; line_v=70.7; amplifier=RACK 1; channel=2", `rows|room|count|tap_w
8|Ice, corner horns|4|20
9|Team benches|2|5`)
		t.Speakers("sheet=PA; tap_v=70.7; line_v=70.7; amplifier=RACK 2; channel=1", `rows|room|count|tap_w|control
10|Lobby ceiling|5|4|V-1
11|Lobby addition ceiling|3|4|V-1
12|Skate rental|2|4|V-2
13|Office|1|2|V-3`)
		t.Speakers("sheet=PA; tap_v=70.7; line_v=70.7; amplifier=RACK 2; channel=2", `rows|room|count|tap_w|status
14|Locker rooms|8|2|installed
15|Locker room 5|2|2|removed
16|Dryland training|6|4|future
17|Resurfacer bay|1|10|installed`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
RACK 1|1|200|120
RACK 1|2|200|90
RACK 2|1|60|42
RACK 2|2|60|26`)
		t.Amplifiers("", `amplifier|load_w
RACK 1|210
RACK 2|68`)
		t.Controls("", `control|rated_w|load_w
V-1|35|32
V-2|10|8
V-3|5|2`)
		t.Left("PA", `7|removed|X: demo
15|removed|X: demo
16|future|F: not funded`)
	}},

	// June, lighting designer at the planetarium: dimmers, zones and watts, and no loudspeaker anywhere.
	{File: "planetariums/Prairie Star cove and house lights.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Dimmer schedule")
		p.Put("A1", `
PRAIRIE STAR PLANETARIUM - HOUSE AND COVE LIGHTING||||PROJ NO 21-1180
Dimmer schedule, 120 V
|
Zone|Location|Fixture|Qty|Watts ea.|Total W|Dimmer|Dimmer rating W|Wall control|Circuit|Run ft|Wire
1|Cove, red|strip|24|50|1200|D1|2400|WC-1|1|90|12 AWG
2|Cove, blue|strip|24|50|1200|D2|2400|WC-1|2|90|12 AWG
3|Aisle|step light|16|7|112|D3|600|WC-1|3|120|12 AWG
4|Console|gooseneck|2|20|40|D4|600|WC-2|4|45|12 AWG
5|Lobby|downlight|12|75|900|D5|2400|WC-3|5|70|12 AWG
6|Exhibits|track head|18|50|900|D6|2400|WC-3|6|110|10 AWG
Total||||| 4352
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("21-1180", "PRAIRIE STAR PLANETARIUM", "dimmers and lamps in a layout like that of loudspeakers")
		t.Left("Dimmer schedule", `5|lamp|strip
6|lamp|strip
7|lamp|step light
8|lamp|gooseneck
9|lamp|downlight
10|lamp|track head`)
	}},
}
