package main

import (
	"lineaudit/samples/typed"

	"github.com/xuri/excelize/v2"
)

// riggers is an American contractor for sound in public halls.
var riggers = []typed.Case{
	{File: "riggers/Tallgrass Aquatic 16-0417.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("SPKR SCHED")
		p.Put("A1", `
TALLGRASS AQUATIC CENTER||||||||
PROJECT NO. 16-0417||||SPEAKER SCHEDULE - AS-BUILT||||
ALL LINES 70V UNLESS NOTED||||||||

ZONE|SPEAKER ID|ROOM|TYPE|QTY|TAP (W)|WATTS|AMP/CH|NOTES
ZONE 1 - NATATORIUM||||||||
1|S-101 thru S-108|NATATORIUM|SURFACE 8"|8|30|240|A1-1|
1|S-109|TIMING BOOTH|CEILING 8"|1|5|5|A1-1|
|||||SUBTOTAL|245||
ZONE 2 - LOBBY||||||||
2|S-201 thru S-206|MAIN LOBBY|CEILING 8"|6|5|30|A1-2|ATT-1 35W
2|S-207 thru S-210|RENTAL STORAGE|CEILING 8"|4|2.5|10|A1-2|
2|S-211|TICKET WINDOW|CEILING 4"|1|1.25|1.25|A1-2|ATT-2 10W
|||||SUBTOTAL|41.25||
ZONE 3 - LOCKERS||||||||
3|S-301 thru S-306|MEN'S LOCKERS|CEILING 8"|6|2.5|15|A2-1|
3|S-307 thru S-312|WOMEN'S LOCKERS|CEILING 8"|6|2.5|15|A2-1|
3|S-313|FAMILY CHANGE|CEILING 8"|1|2.5|2.5|A2-1|
|||||SUBTOTAL|32.5||
ZONE 4 - EXTERIOR||||||||
4|S-401 thru S-404|OUTDOOR LAP POOL|HORN|4|15|60|A2-2|ADD ALTERNATE NO. 2 - NOT INSTALLED
4|S-405 thru S-407|DROP-OFF|HORN|3|15|45|A2-2|
|||||SUBTOTAL|45||

AMP|CH|WATTS @ 70V
A1|1|300
A1|2|150
A2|1|150
A2|2|150
`)
		p.Merge("A6:I6", "A10:I10", "A15:I15", "A20:I20")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("16-0417", "Tallgrass Aquatic Center", "US zones as title rows, subtotals, an alternate not installed, attenuators in notes")
		t.Speakers("tap_v=70.7; line_v=70.7; sheet=SPKR SCHED", `
rows|zone|tag|room|model|count|tap_w|amplifier|channel|control
7|1|S-101 thru S-108|NATATORIUM|SURFACE 8"|8|30|A1|1|
8|1|S-109|TIMING BOOTH|CEILING 8"|1|5|A1|1|
11|2|S-201 thru S-206|MAIN LOBBY|CEILING 8"|6|5|A1|2|ATT-1
12|2|S-207 thru S-210|RENTAL STORAGE|CEILING 8"|4|2.5|A1|2|
13|2|S-211|TICKET WINDOW|CEILING 4"|1|1.25|A1|2|ATT-2
16|3|S-301 thru S-306|MEN'S LOCKERS|CEILING 8"|6|2.5|A2|1|
17|3|S-307 thru S-312|WOMEN'S LOCKERS|CEILING 8"|6|2.5|A2|1|
18|3|S-313|FAMILY CHANGE|CEILING 8"|1|2.5|A2|1|
22|4|S-405 thru S-407|DROP-OFF|HORN|3|15|A2|2|
`)
		t.Speakers("tap_v=70.7; line_v=70.7; sheet=SPKR SCHED; status=future", `
rows|zone|tag|room|model|count|tap_w|amplifier|channel
21|4|S-401 thru S-404|OUTDOOR LAP POOL|HORN|4|15|A2|2
`)
		t.Channels("line_v=70.7", "amplifier|channel|rated_w|load_w\nA1|1|300|245\nA1|2|150|41.25\nA2|1|150|32.5\nA2|2|150|45")
		t.Amplifiers("", "amplifier|load_w\nA1|286.25\nA2|77.5")
		t.Controls("", "control|rated_w|load_w\nATT-1|35|30\nATT-2|10|1.25")
		t.Left("SPKR SCHED", "9|total|subtotal\n14|total|subtotal\n19|total|subtotal\n23|total|subtotal\n6|title|zone\n10|title|zone\n15|title|zone\n20|title|zone")
	}},

	{File: "riggers/Fairmount planetarium cable pull.csv", Kind: "schedule", Bytes: text(`
"Fairmount Planetarium - job 18-0932 - 70.7V distributed system"
"Pull list / device list, rev C 5/9/18"

Cable No.,From,To,Wire,Ft,Speaker,Tap
SP1-1,AMP1 CH1,LS1,14/2,120,8" ceiling,4W
SP1-2,LS1,LS2,16/2,25,8" ceiling,4W
SP1-3,LS2,LS3,16/2,25,8" ceiling,4W
SP1-4,LS3,LS4,16/2,25,8" ceiling,4W
SP2-1,AMP1 CH2,VC-A,14/2,90,,
SP2-2,VC-A,LS5,16/2,30,wall box,8W
SP2-3,LS5,LS6,16/2,20,wall box,8W
SP2-4,LS6,LS7,16/2,20,wall box,8W
SP3-1,AMP2 CH1,LS8,12/2,310,paging horn,15W
SP3-2,LS8,LS9,12/2,85,paging horn,15W

AMP1: 2 x 60 W    AMP2: 1 x 60 W
VC-A: 35 W attenuator, Star Theater lobby
`), Truth: func(t *typed.Truth) {
		t.Is("18-0932", "Fairmount Planetarium", "a pull list whose pieces end at loudspeakers; ratings in notes at the bottom")
		t.Revision("C", false)
		t.Speakers("tap_v=70.7; line_v=70.7", `
rows|tag|model|tap_w|amplifier|channel|control
5..8|LS1..|8" ceiling|4|AMP1|1|
10..12|LS5..|wall box|8|AMP1|2|VC-A
13..14|LS8..|paging horn|15|AMP2|1|
`)
		t.Channels("line_v=70.7; rated_w=60", "amplifier|channel|load_w\nAMP1|1|16\nAMP1|2|24\nAMP2|1|30")
		t.Amplifiers("", "amplifier|load_w\nAMP1|40\nAMP2|30")
		t.Controls("", "control|rated_w|load_w\nVC-A|35|24")
		t.Lines("", `
line|from|to|length_m|area_mm2
SP1-1|AMP1 CH1|LS1|36.576|2.0809
SP1-2|LS1|LS2|7.62|1.3087
SP1-3|LS2|LS3|7.62|1.3087
SP1-4|LS3|LS4|7.62|1.3087
SP2-1|AMP1 CH2|VC-A|27.432|2.0809
SP2-2|VC-A|LS5|9.144|1.3087
SP2-3|LS5|LS6|6.096|1.3087
SP2-4|LS6|LS7|6.096|1.3087
SP3-1|AMP2 CH1|LS8|94.488|3.3088
SP3-2|LS8|LS9|25.908|3.3088
`)
	}},

	{File: "riggers/Cedar Slough conservatory.xlsx", Kind: "schedule", Book: sheets("Counts", `
Cedar Slough Conservatory, Job 21-1106. Number of speakers per room at each tap, 70V||||||||
||TAP SETTING|||||
ROOM|AMP CH|2W|4W|8W|16W|ROOM TOTAL W|VOL CONTROL
Palm House|1|||6|2|80|
Fern Room|1||4|||16|VC1 (25W)
Orchid Room|2||6|||24|VC2 (25W)
Gallery|2|8||||16|
Restrooms|2|4||||8|
Desert House|3|||4||32|
Terrace|3||||4|64|
TOTALS||12|10|10|6|240|

CH 1, 2, 3 = 100 W EACH, 4-CHANNEL AMPLIFIER IN CLOSET 104, CH 4 SPARE
`), Truth: func(t *typed.Truth) {
		t.Is("21-1106", "Cedar Slough Conservatory", "a matrix of rooms by tap; ratings of three channels in one sentence")
		t.Speakers("tap_v=70.7; line_v=70.7; sheet=Counts", `
rows|room|channel|count|tap_w|control
4|Palm House|1|6|8|
4|Palm House|1|2|16|
5|Fern Room|1|4|4|VC1
6|Orchid Room|2|6|4|VC2
7|Gallery|2|8|2|
8|Restrooms|2|4|2|
9|Desert House|3|4|8|
10|Terrace|3|4|16|
`)
		t.Channels("line_v=70.7; rated_w=100", "channel|load_w\n1|96\n2|48\n3|96")
		t.Controls("rated_w=25", "control|load_w\nVC1|16\nVC2|24")
		t.Left("Counts", "11|total|totals")
	}},
}
