package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// foremen are five people in Britain.
var foremen = []typed.Case{
	// Des, electrical foreman: one cell for number, watts and kind, ditto all the way down, the amplifiers in a sentence.
	{File: "lidos/Hembury Lido PA as fitted.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Sheet1")
		p.Put("A1", `
HEMBURY LIDO - PA AS FITTED
Job 2217    100v line    Des 14/6
|
Area|Fittings|Watts total|Fed from|Vol control|Cable from rack
Turnstiles|2 x 3W ceiling|6|Amp 1 output 1||22m 1.5mm
Ticket office|1 x 1.5W ceiling|1.5|ditto|AT1 (6W)|18m 1.5mm
Changing, ladies|4 x 3W ceiling|12|ditto||31m 1.5mm
Changing, gents|4no 3W ceiling|12|ditto||36m 1.5mm
Swim teachers|2 x 1.5W ceiling|3|ditto|AT2 (6W)|40m 1.5mm
Poolside north|5 x 15W horn|75|Amp 1 output 2||85m 2.5mm
Poolside south|5 x 15W horn (pole 7 replaced)|75|ditto||110m 2.5mm
Paddling pool|1 x 10W horn|10|ditto||64m 2.5mm
Sun terrace|4 x 10W column|40|Amp 2||72m 2.5mm
Boiler house|1x10W horn|10|ditto||48m 1.5mm
||244.5
|
Amp 1 is 240W a side (2 outputs). Amp 2 is the old 120W mixer amp.
Meggered all OK before connecting.
`)
		p.Bold("A1", "A4:F4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2217", "Hembury Lido", "number, tap and kind in one cell; ditto; ratings of the amplifiers in a sentence; control with its rating in brackets")
		t.Speakers("sheet=Sheet1; tap_v=100; line_v=100; amplifier=1; channel=1", `rows|room|count|tap_w|control
5|Turnstiles|2|3|
6|Ticket office|1|1.5|AT1
7|Changing, ladies|4|3|
8|Changing, gents|4|3|
9|Swim teachers|2|1.5|AT2`)
		t.Speakers("sheet=Sheet1; tap_v=100; line_v=100; amplifier=1; channel=2", `rows|room|count|tap_w
10|Poolside north|5|15
11|Poolside south|5|15
12|Paddling pool|1|10`)
		t.Speakers("sheet=Sheet1; tap_v=100; line_v=100; amplifier=2", `rows|room|count|tap_w
13|Sun terrace|4|10
14|Boiler house|1|10`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
1|1|240|34.5
1|2|240|160
2||120|50`)
		t.Amplifiers("", `amplifier|rated_w|load_w
1||194.5
2|120|50`)
		t.Controls("", `control|rated_w|load_w
AT1|6|1.5
AT2|6|3`)
		t.Lines("", `zone|length_m|area_mm2
Turnstiles|22|1.5
Ticket office|18|1.5
Changing, ladies|31|1.5
Changing, gents|36|1.5
Swim teachers|40|1.5
Poolside north|85|2.5
Poolside south|110|2.5
Paddling pool|64|2.5
Sun terrace|72|2.5
Boiler house|48|1.5`)
		t.Left("Sheet1", `15|total|sum of watts`)
	}},

	// Priya, a consultant's assistant: one column a zone, because the drawing has its zones from left to right.
	{File: "consultants/7740 Larkfell Planetarium line loads P03.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Line loads")
		p.Put("A1", `
Larkfell Planetarium
Project no. 7740 - voice and background sound - line load sheet, revision P03
|
Zone|Z1|Z2|Z3|Z4|Z5|Z6|Z7
Area|Foyer|Dome⏎walkway|Shop|Offices|Toilets|Car park|Plant room
Loudspeaker|ceiling|surface|ceiling|ceiling|ceiling|horn|horn
Quantity|6|10|4|5|4|3|1
Tap (W)|3|6|3|1.5|1.5|15|10
Zone load (W)|18|60|12|7.5|6|45|10
Line voltage|100|100|100|100|100|100|100
Amplifier|AMP1|AMP1|AMP1|AMP2|AMP2|AMP2|AMP2
Channel|1|2|3|1|1|2|2
Channel rating (W)|60|125|60|60|60|60|60
Attenuator|ATT1|none|ATT3|ATT4|none|none|none
Attenuator rating (W)|24|-|12|12|-|-|-
Cable length (m)|45|80|52|30|38|125|41
Conductor (mm2)|1.5|2.5|1.5|1.5|1.5|2.5|1.5
|
Allow 20% headroom on every channel.
`)
		p.Bold("A1", "A4:A17", "B4:H4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("7740", "Larkfell Planetarium", "transposed: one column a zone; ratings of channels and controls in the same columns")
		t.Revision("P03", false)
		t.Speakers("sheet=Line loads; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|amplifier|channel|control
B|Z1|Foyer|6|3|AMP1|1|ATT1
C|Z2|Dome walkway|10|6|AMP1|2|
D|Z3|Shop|4|3|AMP1|3|ATT3
E|Z4|Offices|5|1.5|AMP2|1|ATT4
F|Z5|Toilets|4|1.5|AMP2|1|
G|Z6|Car park|3|15|AMP2|2|
H|Z7|Plant room|1|10|AMP2|2|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|1|60|18
AMP1|2|125|60
AMP1|3|60|12
AMP2|1|60|13.5
AMP2|2|60|55`)
		t.Amplifiers("", `amplifier|load_w
AMP1|90
AMP2|68.5`)
		t.Controls("", `control|zone|rated_w|load_w
ATT1|Z1|24|18
ATT3|Z3|12|12
ATT4|Z4|12|7.5`)
		t.Lines("", `zone|length_m|area_mm2
Z1|45|1.5
Z2|80|2.5
Z3|52|1.5
Z4|30|1.5
Z5|38|1.5
Z6|125|2.5
Z7|41|1.5`)
	}},

	// Mr Tully, caretaker of the rink, who keeps the list that the installer left and strikes out what goes.
	{File: "rinks/Coldharbour rink speakers (Tully).ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Speakers")
		p.Put("A1", `
Coldharbour Ice Rink|||||Job 1189
Speaker list, 100V line, kept by J Tully
|
Spkr|Where|Type|Set at (W)|Line|Remarks
1|Rink side 1|projector|20|A|
2|Rink side 2|projector|20|A|
3|Rink side 3|projector|20|A|taken down 2019, hit by puck
4|Rink side 4|projector|20|A|
5|Rink side 5|projector|20|A|
6|Rink side 6|projector|20|A|
7|Penalty box|cabinet|5|A|
8|Skate hire|ceiling|3|B|
9|Skate hire|ceiling|3|B|
10|Lockers|ceiling|3|B|
11|Lockers|ceiling|3|B|
12|First aid|ceiling|1.5|B|
13|Entrance|ceiling|3|B|
14|Entrance|ceiling|3|B|
15|Old ticket hatch|cabinet|5|B|gone, bricked up
16|Timekeepers|cabinet|5|C|
17|Timekeepers|cabinet|5|C|
18|Ice machine shed|horn|10|C|
|
Line A - 240 watt amp, bottom of rack
Line B - 60 watt amp
Line C - 30 watt amp
|
Knob in skate hire (12 watt) does 8 and 9. Knob in first aid (3 watt) does 12.
`)
		p.Strike("A7:F7", "A19:F19")
		p.Bold("A1", "A4:F4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("1189", "Coldharbour Ice Rink", "rows struck out with a remark; knobs without names in a sentence, by loudspeaker numbers; lines are amplifiers")
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; channel=A; tap_w=20", `rows|tag|room|status
5|1|Rink side 1|installed
6|2|Rink side 2|installed
7|3|Rink side 3|removed
8|4|Rink side 4|installed
9|5|Rink side 5|installed
10|6|Rink side 6|installed`)
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; channel=A", `rows|tag|room|tap_w
11|7|Penalty box|5`)
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; channel=B", `rows|tag|room|tap_w|control|status
12|8|Skate hire|3||installed
13|9|Skate hire|3||installed
14|10|Lockers|3||installed
15|11|Lockers|3||installed
16|12|First aid|1.5||installed
17|13|Entrance|3||installed
18|14|Entrance|3||installed
19|15|Old ticket hatch|5||removed`)
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; channel=C", `rows|tag|room|tap_w
20|16|Timekeepers|5
21|17|Timekeepers|5
22|18|Ice machine shed|10`)
		t.Channels("line_v=100", `channel|rated_w|load_w
A|240|105
B|60|19.5
C|30|20`)
		t.Controls("", `control|rated_w|load_w|note
|12|6|unnamed
|3|1.5|unnamed`)
		t.Left("Speakers", `7|removed|struck out, taken down
19|removed|struck out, gone`)
	}},

	// Karen, service engineer: a visit sheet per line with the impedance she measured, the loudspeakers below each.
	{File: "service/SV-0931 Ferrybank boathouse visit.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Visit")
		p.Put("A1", `
Service visit SV-0931||||Engineer|KM
Ferrybank Boathouse||||Line|100V
|
LINE 1|Slipway and pontoon|Measured @ 1kHz|133 ohm|Amp rating|120 W
Qty|Item|Tapping|Total|OK?|Comment
3|horn, slipway|15 W|45|ok|
1|horn, crane|15 W|15|ok|gland replaced
2|column, pontoon|7.5 W|15|ok|
||Line total|75
|
LINE 2|Boat halls|Measured @ 1kHz|252 ohm|Amp rating|60 W
Qty|Item|Tapping|Total|OK?|Comment
4|cabinet, hall 1|6 W|24|ok|
2|cabinet, hall 2|6 W|12|1 buzzing|cone torn, still connected
1|cabinet, oar store|3 W|3|ok|on VC-A
||Line total|39
|
LINE 3|Clubroom and changing|Measured @ 1kHz|560 ohm|Amp rating|60 W
Qty|Item|Tapping|Total|OK?|Comment
3|ceiling, clubroom|3 W|9|ok|on VC-B
4|ceiling, changing|1.5 W|6|ok|
1|ceiling, office|1.5 W|1.5|ok|on VC-C
||Line total|16.5
|
Attenuators fitted: VC-A 6 W (oar store), VC-B 12 W (clubroom), VC-C 3 W (office)
Left in van stock: 2 spare ceiling, 3 W
`)
		p.Bold("A1", "A4:F5", "A11:F12", "A18:F19")
		p.Corrected("C15", "6 W ", "3 W")
		p.Colour("DDDDDD", "A4:F4", "A11:F11", "A18:F18")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("SV-0931", "Ferrybank Boathouse", "a block a line with its measured impedance and the amplifier's rating in the title; control in the comment; ratings in a sentence")
		t.Speakers("sheet=Visit; tap_v=100; line_v=100; zone=Slipway and pontoon; channel=1", `rows|count|tap_w
6|3|15
7|1|15
8|2|7.5`)
		t.Speakers("sheet=Visit; tap_v=100; line_v=100; zone=Boat halls; channel=2", `rows|count|tap_w|control
13|4|6|
14|2|6|
15|1|3|VC-A`)
		t.Speakers("sheet=Visit; tap_v=100; line_v=100; zone=Clubroom and changing; channel=3", `rows|count|tap_w|control
20|3|3|VC-B
21|4|1.5|
22|1|1.5|VC-C`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
|1|120|75
|2|60|39
|3|60|16.5`)
		t.Controls("", `control|rated_w|load_w
VC-A|6|3
VC-B|12|9
VC-C|3|1.5`)
		t.Left("Visit", `9|total|line total
16|total|line total
23|total|line total
26|note|spares in the van`)
	}},

	// Alun, museum technician, careful, thinks in controls: each heading is an attenuator and what stands below hangs on it.
	{File: "museums/Slate Quarry Museum - sound.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("By attenuator")
		p.Put("A1", `
Slate Quarry Museum, sound in the galleries (ref SQM/14)
Line 100 V. Everything is fed from the 4-output amplifier in the store, 120 W an output.
|
Output 1
Attenuator AT1, 36 W
Winding house|wall|3|at|6 W
Winding house stairs|wall|1|at|3 W
Attenuator AT2, 12 W
Film room|ceiling|4|at|3 W
No attenuator
Lobby|ceiling|2|at|3 W
Output 2
Attenuator AT3, 36 W
Splitting shed|horn|2|at|15 W
No attenuator
Yard|horn|3|at|15 W
Output 3
Attenuator AT4, 24 W
Quarryman's cottage 1|wall|1|at|1.5 W
Quarryman's cottage 2|wall|1|at|1.5 W
Quarryman's cottage 3|wall|1|at|1.5 W
Schoolroom|ceiling|4|at|3 W
|
Output 4 is not used.
`)
		p.Bold("A1", "A4", "A12", "A17")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("SQM/14", "Slate Quarry Museum", "no header row; outputs and attenuators are headings, one inside the other, and No attenuator ends one")
		t.Speakers("sheet=By attenuator; tap_v=100; line_v=100; channel=1", `rows|room|count|tap_w|control
6|Winding house|3|6|AT1
7|Winding house stairs|1|3|AT1
9|Film room|4|3|AT2
11|Lobby|2|3|`)
		t.Speakers("sheet=By attenuator; tap_v=100; line_v=100; channel=2", `rows|room|count|tap_w|control
14|Splitting shed|2|15|AT3
16|Yard|3|15|`)
		t.Speakers("sheet=By attenuator; tap_v=100; line_v=100; channel=3", `rows|room|count|tap_w|control
19|Quarryman's cottage 1|1|1.5|AT4
20|Quarryman's cottage 2|1|1.5|AT4
21|Quarryman's cottage 3|1|1.5|AT4
22|Schoolroom|4|3|AT4`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
|1|120|39
|2|120|75
|3|120|16.5`)
		t.Controls("", `control|rated_w|load_w
AT1|36|21
AT2|12|12
AT3|36|30
AT4|24|16.5`)
	}},
}
