package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// English: project folders of a consultant, contractors, an estimator and a maintenance firm; a caretaker and an apprentice.
var ledgersEnglish = []typed.Case{
	typed.Case{File: "ledgers/2214 Harrow Mere/2214-AV-SCH-003_C.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Cover")
		p.Put("B2", `
Harrow Mere Planetarium
Public address and voice messages
Loudspeaker schedule
||
Document|2214-AV-SCH-003
Project no.|2214
Revision|C
||
Rev|Date|By|Description
A|02/03/2019|LT|First issue
B|17/05/2019|LT|Shop added
C|09/07/2019|MK|Controls moved to the corridor side
`)
		p.Bold("B2", "B4", "B10:E10")
		l := p.Sheet("Legend")
		l.Put("A1", `
Type|Description|Finish|Mounting
C6|Ceiling loudspeaker, 6 W transformer|RAL 9010|in tile
W10|Wall cabinet, 10 W transformer|RAL 9005|2.6 m
H15|Re-entrant horn, 15 W transformer|grey|4.0 m
||
All circuits 100 V line. Taps are those in the schedule, not the size of the transformer.
`)
		l.Bold("A1:D1")
		s := p.Sheet("Loudspeakers")
		s.Put("A1", `
Ref|Room no.|Room|Type|Qty|Tap (W)|Circuit|Drawing
LS-01|'0.01|Entrance hall|C6|6|3|PA-01|2214-E-101
LS-02|'0.02|Ticket desk|C6|1|1.5|PA-01|2214-E-101
LS-03|'0.03|Shop|C6|4|3|PA-01|2214-E-101
LS-04|'0.04|Cloakroom|C6|2|1.5|PA-01|2214-E-101
LS-05|'0.10|Dome, inner ring|W10|8|10|PA-02|2214-E-102
LS-06|'0.11|Dome gallery|W10|6|5|PA-02|2214-E-102
LS-07|'0.12|Operator|C6|1|1.5|PA-02|2214-E-102
LS-08|'1.01|Classroom 1|C6|4|3|PA-03|2214-E-111
LS-09|'1.02|Classroom 2|C6|4|3|PA-03|2214-E-111
LS-10|'1.03|Library|C6|3|1.5|PA-03|2214-E-111
LS-11|'1.04|Staff room|C6|2|1.5|PA-03|2214-E-111
LS-12|E.01|Car park|H15|3|15|PA-04|2214-E-120
LS-13|E.02|Terrace|H15|2|7.5|PA-04|2214-E-120
`)
		s.Bold("A1:H1")
		r := p.Sheet("Rack R1")
		r.Put("A1", `
Unit|U|Output|Circuit|Zone|Rated output (W)|IP address
AMP 1|12|1|PA 1|Public areas|120|10.4.1.21
AMP 1|12|2|PA 2|Dome|250|10.4.1.21
AMP 2|15|1|PA 3|First floor|120|10.4.1.22
AMP 2|15|2|PA 4|Externals|120|10.4.1.22
`)
		r.Bold("A1:G1")
		c := p.Sheet("Controls")
		c.Put("A1", `
Ref|Room|Serves|Circuit|Rating|Height
VC-1|0.03 Shop|LS 03|PA 1|24 W|1400
VC-2|1.01 Classroom 1|LS 08|PA 3|24 W|1400
VC-3|1.02 Classroom 2|LS 09|PA 3|24 W|1400
VC-4|1.04 Staff room|LS 11|PA 3|12 W|1400
`)
		c.Bold("A1:F1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2214", "Harrow Mere Planetarium", "consultant's book of five sheets; circuits PA-01 in the list are PA 1 in the rack, which alone names the zones; controls by loudspeaker reference")
		t.Revision("C", false)
		t.Speakers("sheet=Loudspeakers; tap_v=100; line_v=100; zone=Public areas; amplifier=AMP 1; channel=1", `rows|tag|room|model|count|tap_w|control
2|LS-01|Entrance hall|C6|6|3|
3|LS-02|Ticket desk|C6|1|1.5|
4|LS-03|Shop|C6|4|3|VC-1
5|LS-04|Cloakroom|C6|2|1.5|`)
		t.Speakers("sheet=Loudspeakers; tap_v=100; line_v=100; zone=Dome; amplifier=AMP 1; channel=2", `rows|tag|room|model|count|tap_w
6|LS-05|Dome, inner ring|W10|8|10
7|LS-06|Dome gallery|W10|6|5
8|LS-07|Operator|C6|1|1.5`)
		t.Speakers("sheet=Loudspeakers; tap_v=100; line_v=100; zone=First floor; amplifier=AMP 2; channel=1", `rows|tag|room|model|count|tap_w|control
9|LS-08|Classroom 1|C6|4|3|VC-2
10|LS-09|Classroom 2|C6|4|3|VC-3
11|LS-10|Library|C6|3|1.5|
12|LS-11|Staff room|C6|2|1.5|VC-4`)
		t.Speakers("sheet=Loudspeakers; tap_v=100; line_v=100; zone=Externals; amplifier=AMP 2; channel=2", `rows|tag|room|model|count|tap_w
13|LS-12|Car park|H15|3|15
14|LS-13|Terrace|H15|2|7.5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP 1|1|120|34.5
AMP 1|2|250|111.5
AMP 2|1|120|31.5
AMP 2|2|120|60`)
		t.Amplifiers("", `amplifier|load_w
AMP 1|146
AMP 2|91.5`)
		t.Controls("", `control|rated_w|load_w
VC-1|24|12
VC-2|24|12
VC-3|24|12
VC-4|12|3`)
	}},

	{File: "ledgers/19-088 Pinder Falls/19-088 sound submittal r2.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Submittal")
		p.Put("A1", `
Job|19-088
Project|Pinder Falls Ice Rink
Scope|Paging and music, device submittal
Distribution|70 V
Submittal rev|2
||
Change order log
CO|Date|What|Amount
1|3/4/19|Added horn in resurfacer bay (now on sheet Devices)|$412.00
2|3/29/19|Lobby speakers re-tapped from 4W to 2W (now on sheet Devices)|$0.00
`)
		p.Bold("A7", "A8:D8")
		s := p.Sheet("Devices")
		s.Put("A1", `
Tag|Area|Location|Device|Qty|Tap|Ext. watts|Color
S1|RINK|North boards|Horn|4|16W|64|White
S2|RINK|South boards|Horn|4|16W|64|White
S3|RINK|Scorer table|Horn|1|8W|8|White
||Subtotal rink||9||136|
S4|LOBBY|Ticket window|Ceiling|1|2W|2|White
S5|LOBBY|Main lobby|Ceiling|8|2W|16|White
S6|LOBBY|Skate rental|Ceiling|3|2W|6|White
||Subtotal lobby||12||24|
S7|LOCKERS|Corridor|Ceiling|5|1W|5|White
S8|LOCKERS|Room A|Ceiling|2|2W|4|White
S9|LOCKERS|Room B|Ceiling|2|2W|4|White
||Subtotal lockers||9||13|
S10|SERVICE|Resurfacer bay|Horn|1|8W|8|Gray
S11|SERVICE|Compressor room|Horn|2|8W|16|Gray
||Subtotal service||3||24|
||Grand total||33||197|
`)
		s.Bold("A1:H1", "A5:H5", "A9:H9", "A13:H13", "A16:H17")
		a := p.Sheet("Amps + attenuators")
		a.Put("A1", `
Rack AR-1
Amp|Channel|Feeds|Channel rating
A1|1|Rink|250W
A1|2|Lobby|60W
A2|1|Locker rooms|60W
A2|2|Service|60W
||
Attenuators
Tag|Where|Feeds|Rating
AT-1|Ticket office|Lobby, all speakers|35W
AT-2|Locker corridor|S8, S9|10W
`)
		a.Bold("A1", "A2:D2", "A8", "A9:D9")
		h := p.Sheet("Home runs")
		h.Put("A1", `
Run|Area|From|To|Cable|Length
HR-1|Rink|A1 ch 1|S1|12/2|310 ft
HR-2|Lobby|A1 ch 2|AT-1|16/2|95 ft
HR-3|Lockers|A2 ch 1|S7|16/2|140 ft
HR-4|Service|A2 ch 2|S10|14/2|180 ft
`)
		h.Bold("A1:F1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("19-088", "Pinder Falls Ice Rink", "contractor's submittal; subtotals, a change log whose changes are already in the list, areas spelt differently in the rack, feet and gauges")
		t.Revision("2", false)
		t.Speakers("sheet=Devices; tap_v=70.7; line_v=70.7; zone=RINK; amplifier=A1; channel=1", `rows|tag|room|count|tap_w
2|S1|North boards|4|16
3|S2|South boards|4|16
4|S3|Scorer table|1|8`)
		t.Speakers("sheet=Devices; tap_v=70.7; line_v=70.7; zone=LOBBY; amplifier=A1; channel=2; control=AT-1", `rows|tag|room|count|tap_w
6|S4|Ticket window|1|2
7|S5|Main lobby|8|2
8|S6|Skate rental|3|2`)
		t.Speakers("sheet=Devices; tap_v=70.7; line_v=70.7; zone=LOCKERS; amplifier=A2; channel=1", `rows|tag|room|count|tap_w|control
10|S7|Corridor|5|1|
11|S8|Room A|2|2|AT-2
12|S9|Room B|2|2|AT-2`)
		t.Speakers("sheet=Devices; tap_v=70.7; line_v=70.7; zone=SERVICE; amplifier=A2; channel=2", `rows|tag|room|count|tap_w
14|S10|Resurfacer bay|1|8
15|S11|Compressor room|2|8`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
A1|1|250|136
A1|2|60|24
A2|1|60|13
A2|2|60|24`)
		t.Amplifiers("", `amplifier|load_w
A1|160
A2|37`)
		t.Controls("", `control|rated_w|load_w
AT-1|35|24
AT-2|10|8`)
		t.Lines("", `line|zone|from|to|length_m|area_mm2
HR-1|Rink|A1 ch 1|S1|94.488|3.309
HR-2|Lobby|A1 ch 2|AT-1|28.956|1.309
HR-3|Lockers|A2 ch 1|S7|42.672|1.309
HR-4|Service|A2 ch 2|S10|54.864|2.081`)
		t.Left("Devices", `5|total|subtotal
9|total|subtotal
13|total|subtotal
16|total|subtotal
17|total|grand total`)
		t.Left("Submittal", `9|log|already in the list
10|log|already in the list`)
	}},

	{File: "ledgers/Cranley Moor/TR-1187 test record.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Visit")
		p.Put("A1", `
Test record|TR-1187
Site|Cranley Moor station
Visit|11 Nov 2021, night possession
System|100 V line, two amplifiers in the relay room
||
Found|Done
Horn at the ramp end of platform 2 torn off, bracket left|taken down, line made good
Waiting room control stiff|cleaned
`)
		p.Bold("A6:B6")
		q := p.Sheet("Line tests")
		q.Put("A1", `
Line|Amp|Output|Output rating W|Z at 1 kHz, ohm|Insulation, Mohm|Result
1|Amp A|1|120|248|> 20|pass
2|Amp A|2|120|396|> 20|pass
3|Amp B|1|60|410|> 20|pass
4|Amp B|2|60|1300|8|pass, watch
`)
		q.Bold("A1:G1")
		s := p.Sheet("Loudspeakers by line")
		s.Put("A1", `
L1 Platform 1
Pos|Where|Unit|Tap|Remark
'1/1|Ramp end|horn|10 W|
'1/2|Under canopy|horn|10 W|
'1/3|Under canopy|horn|10 W|
'1/4|Footbridge stair|horn|5 W|
'1/5|Help point|horn|5 W|
||
L2 Platform 2
Pos|Where|Unit|Tap|Remark
'2/1|Ramp end|horn|10 W|removed this visit
'2/2|Under canopy|horn|10 W|
'2/3|Under canopy|horn|10 W|
'2/4|Footbridge stair|horn|5 W|
||
L3 Booking hall and waiting room
Pos|Where|Unit|Tap|Remark
'3/1|Booking hall|ceiling|6 W|
'3/2|Booking hall|ceiling|6 W|
'3/3|Booking hall|ceiling|6 W|
'3/4|Waiting room|ceiling|3 W|via VC1, 12 W
'3/5|Waiting room|ceiling|3 W|via VC1
||
L4 Staff
Pos|Where|Unit|Tap|Remark
'4/1|Supervisor|ceiling|3 W|via VC2, 6 W
'4/2|Mess room|ceiling|3 W|
'4/3|Ticket office|ceiling|1.5 W|
`)
		s.Bold("A1", "A9", "A16", "A24")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("TR-1187", "Cranley Moor station", "test record; outputs on the sheet of tests joined by line number, lines as titles, one horn removed, controls in remarks")
		t.Speakers("sheet=Loudspeakers by line; tap_v=100; line_v=100; zone=Platform 1; amplifier=Amp A; channel=1; note=area as zone", `rows|tag|room|tap_w
3|1/1|Ramp end|10
4|1/2|Under canopy|10
5|1/3|Under canopy|10
6|1/4|Footbridge stair|5
7|1/5|Help point|5`)
		t.Speakers("sheet=Loudspeakers by line; tap_v=100; line_v=100; zone=Platform 2; amplifier=Amp A; channel=2; note=area as zone", `rows|tag|room|tap_w
12|2/2|Under canopy|10
13|2/3|Under canopy|10
14|2/4|Footbridge stair|5`)
		t.Speakers("sheet=Loudspeakers by line; tap_v=100; line_v=100; zone=Booking hall and waiting room; amplifier=Amp B; channel=1; note=area as zone", `rows|tag|room|tap_w|control
18|3/1|Booking hall|6|
19|3/2|Booking hall|6|
20|3/3|Booking hall|6|
21|3/4|Waiting room|3|VC1
22|3/5|Waiting room|3|VC1`)
		t.Speakers("sheet=Loudspeakers by line; tap_v=100; line_v=100; zone=Staff; amplifier=Amp B; channel=2; note=area as zone", `rows|tag|room|tap_w|control
26|4/1|Supervisor|3|VC2
27|4/2|Mess room|3|
28|4/3|Ticket office|1.5|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
Amp A|1|120|40
Amp A|2|120|25
Amp B|1|60|24
Amp B|2|60|7.5`)
		t.Amplifiers("", `amplifier|load_w
Amp A|65
Amp B|31.5`)
		t.Controls("", `control|rated_w|load_w
VC1|12|6
VC2|6|3`)
		t.Left("Loudspeakers by line", `11|removed|removed this visit`)
	}},

	{File: "ledgers/bids/Q-5531 price build-up.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Price")
		p.Put("A1", `
Quotation Q-5531|||
Tarnside School, hall block paging|||
||
Item|Qty|Rate|Amount
Ceiling loudspeakers|18|38.5|693
Wall cabinets|12|61|732
Horns|4|74|296
Volume controls|4|29|116
Amplifier, four outputs|1|940|940
Cable and containment|1|1850|1850
Labour|1|2600|2600
Total excl. tax|||7227
`)
		p.Bold("A1", "A4:D4", "A12:D12")
		s := p.Sheet("Device schedule")
		s.Put("A1", `
Q-5531 device schedule
Taps as in the headings, 100 V line
Zone|Room|Ceiling, 3 W|Wall cabinet, 6 W|Horn, 15 W|Volume control
1|Main hall||8||VC1 (100 W)
1|Stage||2||
1|Dining hall|6|||
1|Kitchen|2|||
2|Ground floor corridor|5|||
2|Room G1|2|||VC2 (12 W)
2|Room G2|2|||VC3 (12 W)
2|Music room||2||VC4 (24 W)
2|Office|1|||
3|Playground|||3|
3|Bin yard|||1|
|Totals|18|12|4|4
`)
		s.Bold("A1", "A3:F3", "A15:F15")
		n := p.Sheet("Basis of price")
		n.Put("A1", `
1|One amplifier with four outputs of 120 W each. Output 1 feeds zone 1, output 2 zone 2, output 3 zone 3, output 4 is left spare.
2|Prices hold for 60 days.
3|Scaffold for the playground horns by others.
4|Option, not in this price: 2 wall cabinets at 6 W in the sports hut.
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("Q-5531", "Tarnside School", "estimator's build-up; a matrix of counts under headings with taps, a price sheet with the same things, the outputs of an unnamed amplifier in a sentence, an option")
		t.Speakers("sheet=Device schedule; tap_v=100; line_v=100; zone=1; channel=1", `rows|room|count|tap_w|control
4|Main hall|8|6|VC1
5|Stage|2|6|
6|Dining hall|6|3|
7|Kitchen|2|3|`)
		t.Speakers("sheet=Device schedule; tap_v=100; line_v=100; zone=2; channel=2", `rows|room|count|tap_w|control
8|Ground floor corridor|5|3|
9|Room G1|2|3|VC2
10|Room G2|2|3|VC3
11|Music room|2|6|VC4
12|Office|1|3|`)
		t.Speakers("sheet=Device schedule; tap_v=100; line_v=100; zone=3; channel=3", `rows|room|count|tap_w
13|Playground|3|15
14|Bin yard|1|15`)
		t.Channels("line_v=100", `channel|rated_w|load_w|note
1|120|84|
2|120|42|
3|120|60|
4|120|0|spare output`)
		t.Amplifiers("", `amplifier|load_w
|186`)
		t.Controls("", `control|rated_w|load_w
VC1|100|48
VC2|12|6
VC3|12|6
VC4|24|12`)
		t.Left("Device schedule", `15|total|sums`)
		t.Left("Price", `5|price|same devices as in the schedule
6|price|same devices as in the schedule
7|price|same devices as in the schedule`)
		t.Left("Basis of price", `4|future|option not in the price`)
	}},

	{File: "ledgers/1742 Ashcombe/1742 as fitted.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Job")
		p.Put("A1", `
Job|1742
Client|Ashcombe Livery Stables
Status|as fitted, rev 2
Drawings|1742-01 to 1742-04
Note|100 volt line throughout
`)
		r := p.Sheet("Rack")
		r.Put("A1", `
Amplifier|Way|Goes to|Max. W|Fuse|Breaker
M1|1|Blk A|60|T3.15|DB2/7
M1|2|Blk B|60|T3.15|DB2/7
P1|1|Yard & school|240|T6.3|DB2/8
`)
		r.Bold("A1:F1")
		a := p.Sheet("Block A")
		a.Put("A1", `
No.|Position|Fitting|Set at
A-01|Boxes 1-4|cabinet|5W
A-02|Boxes 5-8|cabinet|5W
A-03|Boxes 9-12|cabinet|5W
A-04|Tack room|ceiling|2.5W
A-05|Feed room|ceiling|2.5W
A-06|Office|ceiling|2.5W
||
Control VC1 in the office, 10 W, works A-06 only
`)
		b := p.Sheet("Block B")
		b.Put("A1", `
No.|Position|Fitting|Set at
B-01|Boxes 13-16|cabinet|5W
B-02|Boxes 17-20|cabinet|5W
B-03|Foaling box|cabinet|1.25W
B-04|Farrier|cabinet|5W
B-05|Wash bay|horn|5W
||
Control VC2 at the foaling box, 5 W, works B-03 only
`)
		y := p.Sheet("Yard + school")
		y.Put("A1", `
No.|Position|Fitting|Set at
Y-01|Yard, north gable|1 horn|15W
Y-02|Yard, south gable|1 horn|15W
Y-03|Riding school, long side|2 horns|10W each
Y-04|Riding school, short side|2 horns|10W each
Y-05|Horse walker|1 horn|5W
Y-06|Judge's hut|1 cabinet|2.5W
||
No controls out here
`)
		for _, q := range []typed.Page{a, b, y} {
			q.Bold("A1:D1")
		}
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("1742", "Ashcombe Livery Stables", "electrician's as-fitted book; a sheet a block without the block in its rows, rack says Blk A, controls in a sentence below each list")
		t.Revision("2", false)
		t.Speakers("sheet=Block A; tap_v=100; line_v=100; zone=Block A; amplifier=M1; channel=1; note=sheet as zone", `rows|tag|room|tap_w|control
2|A-01|Boxes 1-4|5|
3|A-02|Boxes 5-8|5|
4|A-03|Boxes 9-12|5|
5|A-04|Tack room|2.5|
6|A-05|Feed room|2.5|
7|A-06|Office|2.5|VC1`)
		t.Speakers("sheet=Block B; tap_v=100; line_v=100; zone=Block B; amplifier=M1; channel=2; note=sheet as zone", `rows|tag|room|tap_w|control
2|B-01|Boxes 13-16|5|
3|B-02|Boxes 17-20|5|
4|B-03|Foaling box|1.25|VC2
5|B-04|Farrier|5|
6|B-05|Wash bay|5|`)
		t.Speakers("sheet=Yard + school; tap_v=100; line_v=100; zone=Yard + school; amplifier=P1; channel=1; note=sheet as zone", `rows|tag|room|count|tap_w
2|Y-01|Yard, north gable|1|15
3|Y-02|Yard, south gable|1|15
4|Y-03|Riding school, long side|2|10
5|Y-04|Riding school, short side|2|10
6|Y-05|Horse walker|1|5
7|Y-06|Judge's hut|1|2.5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
M1|1|60|22.5
M1|2|60|21.25
P1|1|240|77.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
M1||43.75
P1|240|77.5`)
		t.Controls("", `control|rated_w|load_w
VC1|10|2.5
VC2|5|1.25`)
	}},

	{File: "ledgers/caretakers/library speakers.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Sheet1")
		p.Put("A1", `
Thornley Library, speakers, counted by me on Tuesday
Where|How many|Watts (plug at the back)|Wall knob|Looks
Front hall|4|3|none|fine
Loans desk|2|1.5|K1|fine
Reading room|6|3|K2|one grille bent
Newspaper corner|2|3|K2|fine
Children's corner|3|3|K3|sticky
Stairs|1|1.5|none|fine
Local history|2|1.5|K4|fine
Study booths|4|0.75|none|fine
Meeting room|4|3|K5|fine
Staff kitchen|1|1.5|K6|fine
Workroom|2|1.5|none|fine
Toilets passage|1|1.5|none|dusty
Loading door|1|6|none|fine
All together|33|||
||
Amplifier in the cupboard under the stairs: 120 W, everything is on the 100 V terminals
The knobs all say 12 W except K2 which says 36 W
`)
		p.Bold("A2:E2")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Thornley Library", "plain caretaker's list; amplifier and the ratings of the knobs in two sentences at the foot")
		t.Speakers("sheet=Sheet1; tap_v=100; line_v=100", `rows|room|count|tap_w|control
3|Front hall|4|3|
4|Loans desk|2|1.5|K1
5|Reading room|6|3|K2
6|Newspaper corner|2|3|K2
7|Children's corner|3|3|K3
8|Stairs|1|1.5|
9|Local history|2|1.5|K4
10|Study booths|4|0.75|
11|Meeting room|4|3|K5
12|Staff kitchen|1|1.5|K6
13|Workroom|2|1.5|
14|Toilets passage|1|1.5|
15|Loading door|1|6|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|120|79.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|120|79.5`)
		t.Controls("", `control|rated_w|load_w
K1|12|3
K2|36|24
K3|12|9
K4|12|3
K5|12|12
K6|12|1.5`)
		t.Left("Sheet1", `16|total|sum`)
	}},

	{File: "ledgers/apprentice/boathouse walk round.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Skelmere Boathouse walk round with Dan's ladder,,,,
no,place,kind,tap,zone
1,Boat bay 1,horn,7.5W,Bays
2,",,",horn,7.5W,Bays
3,Boat bay 2,horn,7.5W,Bays
4,",,",horn,7.5W,Bays
5,Boat bay 3,horn,7.5W,Bays
6,Repair bench,box,5W,Bays
7,Oar store,box,2.5W,Bays
8,Changing men,ceiling,2.5W,Inside
9,Changing women,ceiling,2.5W,Inside
10,Passage,ceiling,1.25W,Inside
11,Ergo room,box,5W,Inside
12,",,",box,5W,Inside
13,Club office,ceiling,1.25W,Inside
14,Landing stage left,horn,15W,Water
15,Landing stage right,horn,15W,Water
16,Balcony,horn,7.5W,Water
17,Flagpole,horn,15W,Water
,,,,
Bays = amp output 1 (60W),,,,
Inside = output 2 (30W),,,,
Water = output 3 (120W),,,,
all 100V,,,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Skelmere Boathouse", "plain apprentice's list, one loudspeaker a row, ditto marks; outputs of one unnamed amplifier by zone at the foot")
		t.Speakers("tap_v=100; line_v=100; zone=Bays; channel=1", `rows|tag|room|tap_w
3|1|Boat bay 1|7.5
4|2|Boat bay 1|7.5
5|3|Boat bay 2|7.5
6|4|Boat bay 2|7.5
7|5|Boat bay 3|7.5
8|6|Repair bench|5
9|7|Oar store|2.5`)
		t.Speakers("tap_v=100; line_v=100; zone=Inside; channel=2", `rows|tag|room|tap_w
10|8|Changing men|2.5
11|9|Changing women|2.5
12|10|Passage|1.25
13|11|Ergo room|5
14|12|Ergo room|5
15|13|Club office|1.25`)
		t.Speakers("tap_v=100; line_v=100; zone=Water; channel=3", `rows|tag|room|tap_w
16|14|Landing stage left|15
17|15|Landing stage right|15
18|16|Balcony|7.5
19|17|Flagpole|15`)
		t.Channels("line_v=100", `channel|rated_w|load_w
1|60|45
2|30|17.5
3|120|52.5`)
		t.Amplifiers("", `amplifier|load_w
|115`)
	}},
}
