package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// caretakers are people who look after a building or a vessel, and an inspector, in English.
var caretakers = []typed.Case{
	{File: "caretakers/speaker list for whoever comes next.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
St Tamblin's and the Long Hall - where the loudspeakers are,,,,
"Amplifier is in the vestry cupboard. 100 volt, 120 watts, only one pair of wires goes out.",,,,

Where,Kind,How many,Set at,Volume knob
Nave north side,column,3,10W,no
Nave south side,column,3,10W,no
Chancel,column,2,5W,no
Lady chapel,small box,2,2.5W,by the door (25W knob)
Vestry,ceiling,1,1.25W,by the desk (5W knob)
Porch,horn,1,10W,no
Long Hall,small box,6,5W,stage left (50W knob)
Hall lobby,ceiling,1,2.5W,no
Hall corridor,ceiling,3,1.25W,no
Ringing room,small box,1,5W,no

Set at = where the screw on the back of the loudspeaker is turned to
Old list in the blue folder is wrong so throw it away
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "St Tamblin's and the Long Hall", "plain; one amplifier in a sentence, three knobs without names, rated in brackets")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|note
5|Nave north side|3|10|
6|Nave south side|3|10|
7|Chancel|2|5|
8|Lady chapel|2|2.5|unnamed
9|Vestry|1|1.25|unnamed
10|Porch|1|10|
11|Long Hall|6|5|unnamed
12|Hall lobby|1|2.5|
13|Hall corridor|3|1.25|
14|Ringing room|1|5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|120|127.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|120|127.5`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|25|5
|5|1.25
|50|30`)
	}},

	{File: "ship/BRAE HOLM PA as fitted.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("LS list")
		p.Put("A1", `
T.S. BRAE HOLM||||||Drg. E-1187
Public address, as fitted||||||Rev. C
||
No.|PA zone|Deck|Fr.|Compartment|Type|Tap W|LVC
101|Open decks|Boat|42|Boat deck P|horn|15|
102|Open decks|Boat|42|Boat deck S|horn|15|
103|Open decks|Main|18|Fore deck|horn|15|
104|Open decks|Main|88|After deck|horn|15|
201|Accommodation|Main|35|Classroom 1|bulkhead|3|LVC1
202|Accommodation|Main|39|Classroom 1|bulkhead|3|LVC1
203|Accommodation|Main|45|Classroom 2|bulkhead|3|LVC2
204|Accommodation|Main|51|Passage P|bulkhead|1.5|
205|Accommodation|Main|51|Passage S|bulkhead|1.5|
206|Accommodation|Upper|44|Sick bay|flush|1.5|LVC3
207|Accommodation|Upper|49|Chart room|flush|1.5|LVC4
301|Machinery|Lower|60|Engine room fwd|horn|10|
302|Machinery|Lower|72|Engine room aft|horn|10|
303|Machinery|Lower|79|Steering flat|horn|6|
304|Machinery|Lower|56|Workshop|bulkhead|6|
`)
		p.Bold("A1", "A4:H4")
		q := p.Sheet("Amps + LVC")
		q.Put("A1", `
Amplifier cabinet, radio room. All outputs 100 V
Amplifier|Feeds PA zone|Output W
AMP 1|Open decks|120
AMP 2|Accommodation|30
AMP 3|Machinery|60
||
Local volume controls (with over-ride relay)
LVC1|12 W
LVC2|6 W
LVC3|6 W
LVC4|6 W
`)
		r := p.Sheet("Cables")
		r.Put("A1", `
Cable|From|To|Cores|Length (m)
PA-101|AMP 1|JB 1|2 x 2.5 mm²|38
PA-102|AMP 2|JB 2|2 x 1.5 mm²|31
PA-103|AMP 3|JB 3|2 x 2.5 mm²|46
PA-104|JB 1|LS 104|2 x 1.5 mm²|52
PA-105|JB 2|LVC1|2 x 1.5 mm²|14
PA-106|JB 3|LS 303|2 x 1.5 mm²|22
`)
		r.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "T.S. BRAE HOLM", "a row a loudspeaker; frame numbers beside watts; amplifiers joined by zone on a second sheet, cables on a third")
		t.Revision("C", false)
		t.Speakers("sheet=LS list; tap_v=100; line_v=100; zone=Open decks; amplifier=AMP 1", `rows|tag|room|tap_w
5|101|Boat deck P|15
6|102|Boat deck S|15
7|103|Fore deck|15
8|104|After deck|15`)
		t.Speakers("sheet=LS list; tap_v=100; line_v=100; zone=Accommodation; amplifier=AMP 2", `rows|tag|room|tap_w|control
9|201|Classroom 1|3|LVC1
10|202|Classroom 1|3|LVC1
11|203|Classroom 2|3|LVC2
12|204|Passage P|1.5|
13|205|Passage S|1.5|
14|206|Sick bay|1.5|LVC3
15|207|Chart room|1.5|LVC4`)
		t.Speakers("sheet=LS list; tap_v=100; line_v=100; zone=Machinery; amplifier=AMP 3", `rows|tag|room|tap_w
16|301|Engine room fwd|10
17|302|Engine room aft|10
18|303|Steering flat|6
19|304|Workshop|6`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP 1|120|60
AMP 2|30|15
AMP 3|60|32`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP 1|120|60
AMP 2|30|15
AMP 3|60|32`)
		t.Controls("", `control|rated_w|load_w
LVC1|12|6
LVC2|6|3
LVC3|6|1.5
LVC4|6|1.5`)
		t.Lines("", `line|from|to|length_m|area_mm2
PA-101|AMP 1|JB 1|38|2.5
PA-102|AMP 2|JB 2|31|1.5
PA-103|AMP 3|JB 3|46|2.5
PA-104|JB 1|LS 104|52|1.5
PA-105|JB 2|LVC1|14|1.5
PA-106|JB 3|LS 303|22|1.5`)
	}},

	{File: "council/premises 0147 extract.txt", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Asset register extract	Premises 0147 Harrowmere Library	Printed 14/02/2022					
Asset	Class	Description	Location	Qty	Watts each	Parent	Condition
PA0001	PA	Amplifier 100V 120W	Staff office rack			-	B
PA0002	PA	Amplifier 100V 60W	Staff office rack			-	B
PA0003	PA	Volume control 24W	Enquiry desk	1		PA0001	A
PA0004	PA	Volume control 12W	Meeting room	1		PA0002	A
PA0005	PA	Loudspeaker ceiling	Lending library	12	3	PA0001	A
PA0006	PA	Loudspeaker ceiling	Enquiry desk	2	1.5	PA0003	A
PA0007	PA	Loudspeaker ceiling	Children's library	6	3	PA0003	B
PA0008	PA	Loudspeaker wall	Reading room	4	3	PA0002	C
PA0009	PA	Loudspeaker ceiling	Meeting room	4	1.5	PA0004	A
PA0010	PA	Loudspeaker horn	Goods entrance	1	10	PA0002	Disposed 09/2019
PA0011	PA	Loudspeaker wall	Goods entrance	1	6	PA0002	A
PA0012	PA	Loudspeaker wall	Stack, lower ground	3	6	PA0002	B
PA0013	PA	Paging microphone	Enquiry desk	1		PA0001	A
FE0020	FE	Extinguisher 6L water	Lending library	3			A
FE0021	FE	Extinguisher 2kg CO2	Staff office rack	1			A
HT0004	HT	Fan heater	Reading room	2	2000		B
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Harrowmere Library", "every thing an asset; loudspeakers hang on amplifiers and controls by the number of their parent; a disposed one, a heater with watts")
		t.Speakers("tap_v=100; line_v=100; amplifier=PA0001", `rows|tag|room|count|tap_w|control
7|PA0005|Lending library|12|3|
8|PA0006|Enquiry desk|2|1.5|PA0003
9|PA0007|Children's library|6|3|PA0003`)
		t.Speakers("tap_v=100; line_v=100; amplifier=PA0002", `rows|tag|room|count|tap_w|control
10|PA0008|Reading room|4|3|
11|PA0009|Meeting room|4|1.5|PA0004
13|PA0011|Goods entrance|1|6|
14|PA0012|Stack, lower ground|3|6|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
PA0001|120|57
PA0002|60|42`)
		t.Amplifiers("", `amplifier|rated_w|load_w
PA0001|120|57
PA0002|60|42`)
		t.Controls("", `control|rated_w|load_w
PA0003|24|21
PA0004|12|6`)
		t.Left("", `12|removed|disposed of in 2019
15|other|paging microphone
16|other|extinguisher
17|other|extinguisher
18|other|fan heater`)
	}},

	{File: "hire/H-2291 prep.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("PREP")
		p.Put("A1", `
PREP SHEET|H-2291|Tolliver Lake Ice Rink - winter carnival
Out Thu 12/5, back Mon 12/9. Everything on 70V
||
LOUDSPEAKERS
Qty|Item|Goes to|Tap|Amp/Ch
8|weather horn|Rink boards|15W|A/1
4|weather horn|Bleachers|15W|A/2
6|surface box|Skate rental|5W|B/1
2|surface box|First aid|2.5W|B/1
4|surface box|Warming tent|5W|B/2
2|weather horn|Ticket line|7.5W|B/2
1|weather horn|SPARE - case 4||
1|surface box|SPARE - case 4||
||
AMPS
Amp|Ch 1|Ch 2
A|200W|100W
B|60W|60W
||
IN-LINE ATTENUATORS
AT1|35W|Skate rental
AT2|10W|First aid
||
CABLE
Reel|Gauge|Length|Run
R1|12 AWG|300 ft|Amp A ch 1 - Rink boards
R2|12 AWG|250 ft|Amp A ch 2 - Bleachers
R3|16 AWG|150 ft|Amp B ch 1 - Skate rental, First aid
R4|16 AWG|200 ft|Amp B ch 2 - Warming tent, Ticket line
`)
		p.Bold("A1:C1", "A4", "A15", "A20", "A24")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("H-2291", "Tolliver Lake Ice Rink", "four titled tables on one sheet; spares without a place; ratings of outputs across; gauge and feet")
		t.Speakers("sheet=PREP; tap_v=70.7; line_v=70.7; amplifier=A", `rows|room|count|tap_w|channel
6|Rink boards|8|15|1
7|Bleachers|4|15|2`)
		t.Speakers("sheet=PREP; tap_v=70.7; line_v=70.7; amplifier=B", `rows|room|count|tap_w|channel|control
8|Skate rental|6|5|1|AT1
9|First aid|2|2.5|1|AT2
10|Warming tent|4|5|2|
11|Ticket line|2|7.5|2|`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
A|1|200|120
A|2|100|60
B|1|60|35
B|2|60|35`)
		t.Amplifiers("", `amplifier|load_w
A|180
B|70`)
		t.Controls("", `control|rated_w|load_w
AT1|35|30
AT2|10|5`)
		t.Lines("note=home run", `line|length_m|area_mm2
R1|91.44|3.309
R2|76.2|3.309
R3|45.72|1.309
R4|60.96|1.309`)
		t.Left("PREP", `12|spare|in a case
13|spare|in a case`)
	}},

	{File: "inspections/voice circuits annual.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
ANNUAL TEST OF VOICE CIRCUITS,,,,,,,,,
Building:,Pennacook Middle School,,,Inspection no.:,IR-0458,,,,
Line voltage:,70.7 V,,,Date:,11/08/2023,,,,
,,,,,,,,,
Amp,Ckt,Ckt rating (W),Area,Speakers,Tap (W),Calc. load (W),Measured (W),Result,Remarks
AMP-1,1,50,Corridor north,14,1,14,14.6,Pass,
AMP-1,1,50,Classrooms 101-108,16,0.5,8,8.3,Pass,
AMP-1,2,50,Corridor south,12,1,12,12.4,Pass,
AMP-1,2,50,Classrooms 109-116,16,0.5,8,8.1,Pass,
AMP-2,1,50,Gymnasium,8,4,32,33.5,Pass,
AMP-2,1,50,Locker rooms,6,1,6,6.2,Pass,
AMP-2,2,50,Auditorium,12,2,24,24.9,Pass,
AMP-2,2,50,Stage,4,2,8,6.1,FAIL,one speaker dead - replace
AMP-2,2,50,Library,8,1,8,8.4,Pass,
,,,Totals,96,,120,122.5,,
,,,,,,,,,
Measured with impedance meter at 1 kHz at the panel.,,,,,,,,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Pennacook Middle School", "test record: calculated and measured watts beside taps; a dead loudspeaker is still there")
		t.Speakers("tap_v=70.7; line_v=70.7; amplifier=AMP-1", `rows|zone|count|tap_w|channel
6|Corridor north|14|1|1
7|Classrooms 101-108|16|0.5|1
8|Corridor south|12|1|2
9|Classrooms 109-116|16|0.5|2`)
		t.Speakers("tap_v=70.7; line_v=70.7; amplifier=AMP-2", `rows|zone|count|tap_w|channel
10|Gymnasium|8|4|1
11|Locker rooms|6|1|1
12|Auditorium|12|2|2
13|Stage|4|2|2
14|Library|8|1|2`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
AMP-1|1|50|22
AMP-1|2|50|20
AMP-2|1|50|38
AMP-2|2|50|40`)
		t.Amplifiers("", `amplifier|load_w
AMP-1|42
AMP-2|78`)
		t.Left("", `15|total|sums`)
	}},

	{File: "theatre/show relay.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Show relay")
		p.Put("A1", `
Show relay and calls, Orrin Theatre|||
What is on the 100 V lines since the rewire in August|||
||
Dressing rooms: relay amp, output 1 (60 W)
Room|Speakers|Tap|Knob?
DR 1|1|3 W|yes
DR 2|1|3 W|yes
DR 3 (chorus)|2|3 W|yes
DR 4 (chorus)|2|3 W|yes
DR corridor|4|1.5 W|no
||
Working areas: relay amp, output 2 (60 W)
Room|Speakers|Tap|Knob?
Fly floor|2|6 W|no
Workshop|2|6 W|no
Wardrobe|1|3 W|yes
Band room|2|3 W|yes
Dock|1|10 W|no
||
Front of house: relay amp, output 3 (120 W)
Room|Speakers|Tap|Knob?
Box office|1|1.5 W|yes
Foyer|8|3 W|no
Circle stairs|4|3 W|no
Front steps|2|6 W|no
||
Every knob is the same 6 W attenuator except the band room's and those of DR 3 and DR 4, which are 12 W.
Each room has its own.
`)
		p.Bold("A1", "A4", "A12", "A20")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Orrin Theatre", "sections named after outputs; unnamed knobs by yes and no, their ratings in a footnote with exceptions")
		t.Speakers("sheet=Show relay; tap_v=100; line_v=100; amplifier=relay amp; channel=1", `rows|room|count|tap_w|note
6|DR 1|1|3|unnamed
7|DR 2|1|3|unnamed
8|DR 3 (chorus)|2|3|unnamed
9|DR 4 (chorus)|2|3|unnamed
10|DR corridor|4|1.5|`)
		t.Speakers("sheet=Show relay; tap_v=100; line_v=100; amplifier=relay amp; channel=2", `rows|room|count|tap_w|note
14|Fly floor|2|6|
15|Workshop|2|6|
16|Wardrobe|1|3|unnamed
17|Band room|2|3|unnamed
18|Dock|1|10|`)
		t.Speakers("sheet=Show relay; tap_v=100; line_v=100; amplifier=relay amp; channel=3", `rows|room|count|tap_w|note
22|Box office|1|1.5|unnamed
23|Foyer|8|3|
24|Circle stairs|4|3|
25|Front steps|2|6|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
relay amp|1|60|24
relay amp|2|60|43
relay amp|3|120|49.5`)
		t.Amplifiers("", `amplifier|load_w
relay amp|116.5`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|6|3
|6|3
|12|6
|12|6
|6|3
|12|6
|6|1.5`)
	}},
}
