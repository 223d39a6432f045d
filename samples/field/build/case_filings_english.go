package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

var filingsEnglish = []typed.Case{

	{File: "filings/service/Linnet Road rink speaker list.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Speakers")
		p.Put("A4", `
SPEAKER AND VOLUME CONTROL LIST
Site|Linnet Road Ice Rink||||Job no.|S-4471
Visited by|T.K.||||Date|14-Mar-2019
||
ID|Area|Location|Speaker|Qty|Tap|Line|Amp|Vol. control
||||pcs|W|V||
S1-S4|Rink|North boards|horn|4|15|70|A|
S5-S8|Rink|South boards|horn|4|15|70|A|
S9-S10|Rink|Scorer's box|8" ceiling|2|5|70|A|VC1
||
S11-S14|Lobby|Entrance|8" ceiling|4|5|70|B|VC2
S15-S16|Lobby|Skate hire|8" ceiling|2|2.5|70|B|VC3
S17|Lobby|Ticket window|wall box|1|1.25|70|B|
||
S18-S20|Changing rooms|Rooms 1 to 3|8" ceiling|3|2.5|70|B|
S21|Plant|Compressor room|horn|1|7.5|70|B|
||
|||Total|21
||
Notes
1. Amp A is the 240 W mixer amplifier in the hire office, amp B the 60 W booster below it.
2. VC1 and VC2 are 50 W, VC3 is 10 W.
3. Yellow = cone replaced on this visit.
`)
		p.Merge("A1:I3", "A4:I4")
		p.Bold("A4", "A8:I9", "D21:E21")
		p.Colour("FFFF66", "A12:D12", "A16:D16")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("S-4471", "Linnet Road Ice Rink", "plain; empty rows for a logo, units under the header, ratings in notes at the bottom, a colour that means nothing electrical")
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Rink; amplifier=A", `rows|tag|room|count|tap_w|control
10|S1-S4|North boards|4|15|
11|S5-S8|South boards|4|15|
12|S9-S10|Scorer's box|2|5|VC1`)
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; amplifier=B", `rows|zone|tag|room|count|tap_w|control
14|Lobby|S11-S14|Entrance|4|5|VC2
15|Lobby|S15-S16|Skate hire|2|2.5|VC3
16|Lobby|S17|Ticket window|1|1.25|
18|Changing rooms|S18-S20|Rooms 1 to 3|3|2.5|
19|Plant|S21|Compressor room|1|7.5|`)
		t.Channels("line_v=70.7", `amplifier|rated_w|load_w
A|240|130
B|60|41.25`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|240|130
B|60|41.25`)
		t.Controls("", `control|rated_w|load_w
VC1|50|10
VC2|50|20
VC3|10|5`)
		t.Left("Speakers", `21|total|count of all`)
	}},

	{File: "filings/canada/19-227 Riviere-aux-Pins.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Speakers - HP")
		p.Put("A1", `
Rivière-aux-Pins Station / Gare de Rivière-aux-Pins
Project / Projet|19-227||70 V
||
Zone|Room / Local|Type|Qty / Qté|Tap / Prise (W)|VC / Atténuateur|Remarks / Remarques
Z1|Concourse / Hall|ceiling / plafond|10|5||
Z1|Ticket office / Guichets|ceiling / plafond|2|2.5|VC-1 (10 W)|
Z2|Platform 1 / Quai 1|horn / pavillon|6|15||
Z2|Platform 2 / Quai 2|horn / pavillon|6|15||
Z3|Waiting room / Salle d'attente|ceiling / plafond|4|5|VC-2 (35 W)|
Z3|Corridor|ceiling / plafond|3|2.5||
Z4|Staff room / Personnel|ceiling / plafond|2|1.25|VC-3 (10 W)|
Z4|Storage / Dépôt|horn / pavillon|1|7.5||noisy / bruyant
Z5|Parking / Stationnement|horn / pavillon|4|15||
`)
		p.Bold("A1", "A4:G4")
		q := p.Sheet("Amps")
		q.Put("A1", `
Amp|Output / Sortie|W|Zones
A1|1|250|Z2
A1|2|250|Z1, Z5
A2|1|60|Z3
A2|2|60|Z4
`)
		q.Bold("A1:D1")
		r := p.Sheet("Cable")
		r.Put("A1", `
Cable|From / De|To / À|AWG|Length (ft) / Longueur (pi)
C-01|A1-2|Z1|14|185
C-02|A1-1|Z2|12|420
C-03|A2-1|Z3|16|130
C-04|A2-2|Z4|16|95
C-05|Z1|Z5|14|260
`)
		r.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("19-227", "Rivière-aux-Pins Station", "bilingual headers and cells; zones joined to outputs on a second sheet, two zones on one output, cables in feet and AWG on a third")
		t.Speakers("sheet=Speakers - HP; tap_v=70.7; line_v=70.7", `rows|zone|room|count|tap_w|control|amplifier|channel
5|Z1|Concourse / Hall|10|5||A1|2
6|Z1|Ticket office / Guichets|2|2.5|VC-1|A1|2
7|Z2|Platform 1 / Quai 1|6|15||A1|1
8|Z2|Platform 2 / Quai 2|6|15||A1|1
9|Z3|Waiting room / Salle d'attente|4|5|VC-2|A2|1
10|Z3|Corridor|3|2.5||A2|1
11|Z4|Staff room / Personnel|2|1.25|VC-3|A2|2
12|Z4|Storage / Dépôt|1|7.5||A2|2
13|Z5|Parking / Stationnement|4|15||A1|2`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
A1|1|250|180
A1|2|250|115
A2|1|60|27.5
A2|2|60|10`)
		t.Amplifiers("", `amplifier|load_w
A1|295
A2|37.5`)
		t.Controls("", `control|zone|rated_w|load_w
VC-1|Z1|10|5
VC-2|Z3|35|20
VC-3|Z4|10|2.5`)
		t.Lines("", `line|from|to|length_m|area_mm2
C-01|A1-2|Z1|56.388|2.081
C-02|A1-1|Z2|128.016|3.309
C-03|A2-1|Z3|39.624|1.309
C-04|A2-2|Z4|28.956|1.309
C-05|Z1|Z5|79.248|2.081`)
	}},

	{File: "filings/bids/Q-3380 planetarium take-off.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Take-off")
		p.Put("A1", `
Loudspeaker schedule for tender
Project|Halley Street Planetarium||Ref|Q-3380||Rev|C
100 V line throughout
||
Zone|Amp output|Type A|Type B|Type C|Type D|Qty|Load
||ceiling 6"|ceiling 8"|cabinet|horn||
||3 W|6 W|10 W|15 W|No.|W
Dome|'1.1|||8||8|80
Foyer|'1.2|4|6|||10|48
Shop|'1.2|3||||3|9
Galleries|'2.1||12|2||14|92
Education room|'2.2|2|2|||4|18
Staff corridor|'2.3|5||||5|15
Car park|'2.4||||4|4|60
Totals||14|20|10|4|48|322
||
Amp 1: two outputs of 120 W. Amp 2: four outputs of 125 W.
Attenuators: VA1 Shop 12 W, VA2 Education room 24 W.
Our price is based on the taps shown. Final setting by others.
`)
		p.Merge("A1:H1", "A5:A7", "B5:B7")
		p.Bold("A1", "A5:H7", "A15:H15")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("Q-3380", "Halley Street Planetarium", "matrix of zones by type, tap in the third header line; outputs such as 1.2, amplifiers and attenuators in sentences below")
		t.Revision("C", false)
		t.Speakers("sheet=Take-off; tap_v=100; line_v=100", `rows|zone|model|count|tap_w|control|amplifier|channel
8|Dome|Type C|8|10||1|1
9|Foyer|Type A|4|3||1|2
9|Foyer|Type B|6|6||1|2
10|Shop|Type A|3|3|VA1|1|2
11|Galleries|Type B|12|6||2|1
11|Galleries|Type C|2|10||2|1
12|Education room|Type A|2|3|VA2|2|2
12|Education room|Type B|2|6|VA2|2|2
13|Staff corridor|Type A|5|3||2|3
14|Car park|Type D|4|15||2|4`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
1|1|120|80
1|2|120|57
2|1|125|92
2|2|125|18
2|3|125|15
2|4|125|60`)
		t.Amplifiers("", `amplifier|load_w
1|137
2|185`)
		t.Controls("", `control|zone|rated_w|load_w
VA1|Shop|12|9
VA2|Education room|24|18`)
		t.Left("Take-off", `15|total|sums`)
	}},

	{File: "filings/service/WO60518 line test.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Line test record,,,,,,
Kestrel Lane Bus Depot,,Work order,60518,70 V lines,,
Amplifier DA-1: four outputs of 60 W,,,,,,
,,,,,,
Output,Area,Speakers,Tap,Calc. W,Ohms at 1 kHz,Remarks
1,Wash bay,3,T3 (6W),18,165,ok
1,Fuel lane,2,T3 (6W),12,,
2,Dispatch office,2,T2 (3W),6,275,10 W volume knob by door
2,Drivers' room,4,T2 (3W),12,,35 W volume knob by door
3,Shed 1,4,T4 (12W),48,102,ok
4,Shed 2,4,20W (100V),40,114,"100 V horns, half power on our line"
4,Locker hall,2,T1 (1.5W),3,,
,Total,21,,139,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("60518", "Kestrel Lane Bus Depot", "tap number with its watts, ohms once an output, two knobs without names in the remarks, horns tapped for 100 V on a 70 V line")
		t.Speakers("line_v=70.7; tap_v=70.7; amplifier=DA-1", `rows|zone|count|tap_w|tap_v|channel|note
6|Wash bay|3|6|70.7|1|
7|Fuel lane|2|6|70.7|1|
8|Dispatch office|2|3|70.7|2|unnamed
9|Drivers' room|4|3|70.7|2|unnamed
10|Shed 1|4|12|70.7|3|
11|Shed 2|4|20|100|4|
12|Locker hall|2|1.5|70.7|4|`)
		t.Channels("line_v=70.7; amplifier=DA-1", `channel|rated_w|load_w
1|60|30
2|60|18
3|60|48
4|60|43`)
		t.Amplifiers("", `amplifier|load_w
DA-1|139`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Dispatch office|10|6
|Drivers' room|35|12`)
		t.Left("", `13|total|sums`)
	}},
}
