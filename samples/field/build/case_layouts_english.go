package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// layoutsEnglish are four hands that write English.
var layoutsEnglish = []typed.Case{
	// A maintenance technician prints cards for the inside of the rack door, one per amplifier.
	{File: "layouts/Boathouse rack cards.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Cards")
		p.Put("A1", `
Riverbend Rowing Boathouse - PA cards for the rack door
Job MR-0348, everything 100 V line

AMP 1|Rating|4 x 60 W
Out|Feeds|Speakers|Tap W|Total W|Local volume
1|Boat bays north|4 horn|10|40|
2|Boat bays south|4 horn|10|40|
3|Workshop|3 box|6|18|VC1 (35 W)
4|not used

AMP 2|Rating|2 x 120 W
Out|Feeds|Speakers|Tap W|Total W|Local volume
1|Training hall|8 box|6|48|VC2 (100 W)
2|Changing rooms|6 ceiling|3|18|

AMP 3|Rating|1 x 120 W
Out|Feeds|Speakers|Tap W|Total W|Local volume
1|Landing stage|4 horn|15|60|
1|Slipway|2 horn|15|30|
`)
		p.Bold("A1", "A4:C4", "A11:C11", "A16:C16")
		p.Colour("DDDDDD", "A5:F5", "A12:F12", "A17:F17")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("MR-0348", "Riverbend Rowing Boathouse", "a card per amplifier one below another, its rating in the card's title; count and kind in one cell; an output not used")
		t.Speakers("sheet=Cards; tap_v=100; line_v=100; amplifier=AMP 1", `rows|zone|count|tap_w|channel|control
6|Boat bays north|4|10|1|
7|Boat bays south|4|10|2|
8|Workshop|3|6|3|VC1`)
		t.Speakers("sheet=Cards; tap_v=100; line_v=100; amplifier=AMP 2", `rows|zone|count|tap_w|channel|control
13|Training hall|8|6|1|VC2
14|Changing rooms|6|3|2|`)
		t.Speakers("sheet=Cards; tap_v=100; line_v=100; amplifier=AMP 3; channel=1", `rows|zone|count|tap_w
18|Landing stage|4|15
19|Slipway|2|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP 1|1|60|40
AMP 1|2|60|40
AMP 1|3|60|18
AMP 1|4|60|0
AMP 2|1|120|48
AMP 2|2|120|18
AMP 3|1|120|90`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP 1||98
AMP 2||66
AMP 3|120|90`)
		t.Controls("", `control|zone|rated_w|load_w
VC1|Workshop|35|18
VC2|Training hall|100|48`)
		t.Left("Cards", `9|empty|output not used`)
	}},

	// An estimator counts from the floor plan, one column a room because the sheet of the sound bid is laid out like that.
	{File: "layouts/bid 24-117 takeoff.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Cedar Hollow Middle School - paging takeoff from sheet A-201,,,,,,,
Bid 24-117,,,,,,,
,,,,,,,
Room,Commons,Gym,Library,Main office,Corridor A,Corridor B,TOTAL
Speaker,ceiling,horn,ceiling,ceiling,ceiling,ceiling,
Qty,8,4,6,2,7,6,33
Tap W @70V,5,15,2.5,1,2.5,2.5,
Total W,40,60,15,2,17.5,15,149.5
Volume control,,,VC-L 35W,VC-O 10W,,,
Amp channel,1,2,3,3,4,4,
,,,,,,,
"Amp: (1) four channel, 120 W per channel at 70V",,,,,,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("24-117", "Cedar Hollow Middle School", "transposed: a column a room, a total column; one amplifier without a name in a note below")
		t.Speakers("tap_v=70.7; line_v=70.7", `rows|room|count|tap_w|channel|control
B|Commons|8|5|1|
C|Gym|4|15|2|
D|Library|6|2.5|3|VC-L
E|Main office|2|1|3|VC-O
F|Corridor A|7|2.5|4|
G|Corridor B|6|2.5|4|`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
|1|120|40
|2|120|60
|3|120|17
|4|120|32.5`)
		t.Amplifiers("", `amplifier|load_w
|149.5`)
		t.Controls("", `control|rated_w|load_w
VC-L|35|15
VC-O|10|2`)
		t.Left("", `H|total|column of totals`)
	}},

	// A drawing office hands over an as-built: speakers by tag, circuits on a second sheet, the rack as an elevation on a third.
	{File: "layouts/PLN-06 as built.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Speakers")
		p.Put("A1", `
Tag|Room|Type|Tap (W)|Circuit
LS-01|Foyer|ceiling|5|C1
LS-02|Foyer|ceiling|5|C1
LS-03|Foyer|ceiling|5|C1
LS-04|Foyer|ceiling|5|C1
LS-05|Ticket desk|ceiling|2|C1
LS-06|Gallery north|surface|5|C2
LS-07|Gallery north|surface|5|C2
LS-08|Gallery north|surface|5|C2
LS-09|Gallery south|surface|5|C2
LS-10|Gallery south|surface|5|C2
LS-11|Classroom|ceiling|2.5|C3
LS-12|Classroom|ceiling|2.5|C3
LS-13|Staff room|ceiling|1.25|C3
LS-14|Forecourt|horn|15|C4
LS-15|Forecourt|horn|15|C4
`)
		p.Bold("A1:E1")
		q := p.Sheet("Circuits")
		q.Put("A1", `
Circuit|Zone|Fed from|Cable|Home run (ft)
C1|Entrance|AMP-A out 1|16 AWG|140
C2|Exhibits|AMP-A out 2|16 AWG|210
C3|Education|AMP-B out 1|18 AWG|95
C4|Outdoors|AMP-B out 2|14 AWG|320

Attenuator|Where|Acts on|Size
AT-1|Ticket desk|LS-05 only|5 W
AT-2|Classroom|LS-11 and LS-12|10 W
`)
		q.Bold("A1:E1", "A7:D7")
		r := p.Sheet("Rack PR-1")
		r.Put("A1", `
Kestrel Hill Planetarium, project PLN-06, rack PR-1, front elevation
U|Unit|Data
12|Power sequencer|15 A
11|Paging mixer|8 in
10|vent|
9-8|AMP-A|2 x 120 W, 70 V out
7|vent|
6-5|AMP-B|2 x 60 W, 70 V out
4-1|blank panel|
`)
		r.Bold("A1", "A2:C2")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("PLN-06", "Kestrel Hill Planetarium", "loudspeakers joined to circuits on a second sheet and amplifiers in a rack elevation on a third; attenuators by tag; feet and AWG")
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Entrance; amplifier=AMP-A; channel=1", `rows|tag|room|tap_w|control
2..5|LS-01..|Foyer|5|
6|LS-05|Ticket desk|2|AT-1`)
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Exhibits; amplifier=AMP-A; channel=2", `rows|tag|room|tap_w
7..9|LS-06..|Gallery north|5
10..11|LS-09..|Gallery south|5`)
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Education; amplifier=AMP-B; channel=1", `rows|tag|room|tap_w|control
12..13|LS-11..|Classroom|2.5|AT-2
14|LS-13|Staff room|1.25|`)
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Outdoors; amplifier=AMP-B; channel=2", `rows|tag|room|tap_w
15..16|LS-14..|Forecourt|15`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
AMP-A|1|120|22
AMP-A|2|120|25
AMP-B|1|60|6.25
AMP-B|2|60|30`)
		t.Amplifiers("", `amplifier|load_w
AMP-A|47
AMP-B|36.25`)
		t.Controls("", `control|rated_w|load_w
AT-1|5|2
AT-2|10|5`)
		t.Lines("note=home run", `line|zone|length_m|area_mm2
C1|Entrance|42.672|1.309
C2|Exhibits|64.008|1.309
C3|Education|28.956|0.823
C4|Outdoors|97.536|2.081`)
	}},

	// The stores clerk of a depot saved a page of the old plant system as text, for the man who comes to quote for repairs.
	{File: "layouts/depot pa listing.txt", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
NORTHFIELD TRAM DEPOT          PA EQUIPMENT BY LOCATION            PAGE 1
                               100 VOLT LINES                12-MAR-2009

LOCATION            TYPE       QTY  TAP W  TOT W  AMP  VOL CTL
------------------  ---------  ---  -----  -----  ---  ----------
RUNNING SHED EAST   HORN         6   15.0   90.0  1
RUNNING SHED WEST   HORN         6   15.0   90.0  1
WASH PLANT          HORN         2   10.0   20.0  1
PAINT SHOP          HORN         4   10.0   40.0  2
WHEEL LATHE         HORN         2   10.0   20.0  2
STORES              BOX          3    6.0   18.0  2
CREW ROOM           CEILING      4    3.0   12.0  3    VC1 24 W
TRAINING ROOM       CEILING      4    1.5    6.0  3    VC2 12 W
CONTROL ROOM        CEILING      2    1.5    3.0  3
CORRIDOR            CEILING      3    1.5    4.5  3
------------------  ---------  ---  -----  -----
TOTAL                           36         303.5

AMPLIFIERS
AMP  RATING W  POSITION
1    240       RACK TOP
2    120       RACK MIDDLE
3    60        RACK BOTTOM
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "NORTHFIELD TRAM DEPOT", "a printout with fixed columns, rules of dashes, a second small table of amplifiers below")
		t.Speakers("tap_v=100; line_v=100; amplifier=1", `rows|room|count|tap_w
6|RUNNING SHED EAST|6|15
7|RUNNING SHED WEST|6|15
8|WASH PLANT|2|10`)
		t.Speakers("tap_v=100; line_v=100; amplifier=2", `rows|room|count|tap_w
9|PAINT SHOP|4|10
10|WHEEL LATHE|2|10
11|STORES|3|6`)
		t.Speakers("tap_v=100; line_v=100; amplifier=3", `rows|room|count|tap_w|control
12|CREW ROOM|4|3|VC1
13|TRAINING ROOM|4|1.5|VC2
14|CONTROL ROOM|2|1.5|
15|CORRIDOR|3|1.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
1|240|200
2|120|78
3|60|25.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
1|240|200
2|120|78
3|60|25.5`)
		t.Controls("", `control|rated_w|load_w
VC1|24|12
VC2|12|6`)
		t.Left("", `17|total|sums`)
	}},
}
