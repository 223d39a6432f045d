package main

import (
	"strings"

	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// registrars keep English lists: a clerk's register, a rink's zone sheet, a cable schedule, a list kept through ten years, and luminaires.
var registrars = []typed.Case{
	{File: "registers/PA_ASSETS.txt", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(strings.ReplaceAll(`
JOB_NO|SITE|PLACE|SPK_TYPE|QTY|WATT_EA|AMP|AMP_WATT|VOL_CTRL|VC_WATT|LINE_V
4411|Fulmar Head Planetarium|Dome|wall|10|6|A1|120|||100
4411|Fulmar Head Planetarium|Foyer|ceiling|4|3|A2|60|VC1|20|100
4411|Fulmar Head Planetarium|Ticket desk|ceiling|1|3|A2|60|VC1|20|100
4411|Fulmar Head Planetarium|Lecture room|ceiling|6|1.5|A2|60|VC2|10|100
4411|Fulmar Head Planetarium|Workshop|box|1|6|A2|60|||100
4417|Brackmoor Riding Hall|Arena east|horn|3|15|A1|240|||100
4417|Brackmoor Riding Hall|Arena west|horn|3|15|A1|240|||100
4417|Brackmoor Riding Hall|Gallery|box|4|6|A1|240|VC1|36|100
4417|Brackmoor Riding Hall|Stables|horn|4|7.5|A1|240|||100
4417|Brackmoor Riding Hall|Tack room|ceiling|1|3|A1|240|VC2|6|100
4423|Lowmere Fern House|Fernery|box|4|5|A1|60|||100
4423|Lowmere Fern House|Palm court|box|3|5|A1|60|VC1|20|100
4423|Lowmere Fern House|Orchid corner|box|1|5|A1|60|VC1|20|100
`, "|", "\t")))
	}, Truth: func(t *typed.Truth) {
		t.Is("4411", "Fulmar Head Planetarium", "a register of three jobs, tabs between the fields; names of amplifiers and controls start again in each")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|amplifier|control
2|Dome|10|6|A1|
3|Foyer|4|3|A2|VC1
4|Ticket desk|1|3|A2|VC1
5|Lecture room|6|1.5|A2|VC2
6|Workshop|1|6|A2|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|120|60
A2|60|30`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|120|60
A2|60|30`)
		t.Controls("", `control|rated_w|load_w
VC1|20|15
VC2|10|9`)
		t.Also("4417", "Brackmoor Riding Hall", "second job of the register")
		t.Speakers("tap_v=100; line_v=100; amplifier=A1", `rows|room|count|tap_w|control
7|Arena east|3|15|
8|Arena west|3|15|
9|Gallery|4|6|VC1
10|Stables|4|7.5|
11|Tack room|1|3|VC2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|240|147`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|240|147`)
		t.Controls("", `control|rated_w|load_w
VC1|36|24
VC2|6|3`)
		t.Also("4423", "Lowmere Fern House", "third job of the register")
		t.Speakers("tap_v=100; line_v=100; amplifier=A1", `rows|room|count|tap_w|control
12|Fernery|4|5|
13|Palm court|3|5|VC1
14|Orchid corner|1|5|VC1`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|60|40`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|60|40`)
		t.Controls("", `control|rated_w|load_w
VC1|20|20`)
	}},

	{File: "rinks/Kingfisher zones.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Zones")
		p.Put("A1", `
Kingfisher Rink, zone sheet (job 730)
100 V, amps A 240 W and B 60 W
||
Zone|1|2|3|4|5|6
Name|Ice, north|Ice, south|Entrance|Skate hire|Changing|Coach stop
Speaker|horn|horn|ceiling|ceiling|ceiling|horn
How many|4|4|3|4|6|2
Tap (W)|15|15|6|3|3|15
Load (W)|60|60|18|12|18|30
Amp|A|A|B|B|B|A
Volume control|none|none|VC1|VC2|none|none
Control rating (W)|||24|20||
Cable to zone (m)|85|110|20|28|47|95
Cable|2 x 2.5 mm²|2 x 2.5 mm²|2 x 1.5 mm²|2 x 1.5 mm²|2 x 1.5 mm²|2 x 2.5 mm²
`)
		p.Bold("A1", "A4:A14", "B4:G4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("730", "Kingfisher Rink", "the table runs across: a column a zone")
		t.Speakers("sheet=Zones; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|amplifier|control
B|1|Ice, north|4|15|A|
C|2|Ice, south|4|15|A|
D|3|Entrance|3|6|B|VC1
E|4|Skate hire|4|3|B|VC2
F|5|Changing|6|3|B|
G|6|Coach stop|2|15|A|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|240|150
B|60|48`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|240|150
B|60|48`)
		t.Controls("", `control|zone|rated_w|load_w
VC1|3|24|18
VC2|4|20|12`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
1|85|2.5
2|110|2.5
3|20|1.5
4|28|1.5
5|47|1.5
6|95|2.5`)
	}},

	{File: "gannet/1907-GP cables.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Speakers")
		p.Put("A1", `
Gannet Point Museum - PA|||Ref 1907-GP
100 V line. AMP1 has 2 channels of 120 W.
||
Tag|Location|Type|Tap
LS1|Gallery 1|ceiling|6W
LS2|Gallery 1|ceiling|6W
LS3|Gallery 2|ceiling|6W
LS4|Gallery 3|ceiling|3W
LS5|Staff room|ceiling|3W
LS6|Office|ceiling|3W
LS7|Lighthouse stair|box|10W
LS8|Lantern room|box|10W
LS9|Forecourt|horn|15W
`)
		p.Bold("A1", "A4:D4")
		q := p.Sheet("Cables")
		q.Put("A1", `
Cable|From|To|Length (m)|Size (mm²)
C1|AMP1 ch 1|LS1|32|2 x 1.5
C2|LS1|LS2|9|2 x 1.5
C3|LS2|LS3|14|2 x 1.5
C4|LS3|LS4|12|2 x 1.5
C5|AMP1 ch 2|VC1|22|2 x 1.5
C6|VC1|LS5|6|2 x 1.5
C7|LS5|LS6|8|2 x 1.5
C8|AMP1 ch 2|LS7|40|2 x 2.5
C9|LS7|LS8|18|2 x 2.5
C10|LS8|LS9|65|2 x 2.5
||
VC1 = volume control in staff corridor, 10 W
`)
		q.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("1907-GP", "Gannet Point Museum", "channel and control of a loudspeaker follow only from the runs of the cables")
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; amplifier=AMP1; channel=1", `rows|tag|room|tap_w
5|LS1|Gallery 1|6
6|LS2|Gallery 1|6
7|LS3|Gallery 2|6
8|LS4|Gallery 3|3`)
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; amplifier=AMP1; channel=2", `rows|tag|room|tap_w|control
9|LS5|Staff room|3|VC1
10|LS6|Office|3|VC1
11|LS7|Lighthouse stair|10|
12|LS8|Lantern room|10|
13|LS9|Forecourt|15|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|1|120|21
AMP1|2|120|41`)
		t.Amplifiers("", `amplifier|load_w
AMP1|62`)
		t.Controls("", `control|rated_w|load_w
VC1|10|6`)
		t.Lines("note=from-to run", `line|from|to|length_m|area_mm2
C1|AMP1 ch 1|LS1|32|1.5
C2|LS1|LS2|9|1.5
C3|LS2|LS3|14|1.5
C4|LS3|LS4|12|1.5
C5|AMP1 ch 2|VC1|22|1.5
C6|VC1|LS5|6|1.5
C7|LS5|LS6|8|1.5
C8|AMP1 ch 2|LS7|40|2.5
C9|LS7|LS8|18|2.5
C10|LS8|LS9|65|2.5`)
	}},

	{File: "rinks/Old Tannery Rink kept list.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("List")
		p.Put("A1", `
Old Tannery Rink - speaker list
Ref 5522, 100 V, amp rack A1 (outputs 1 to 3, 120 W each)
||
Area|LS|W|Output|Remarks
Ice|LS-01|15|1|
|LS-02|15|1|
|LS-03|15|1|removed 2016, bracket left
|LS-04|15|1|
|LS-05|15|1|future, cable coiled at truss
Cloaks (via AT2)|LS-06|1.5|2|
|LS-07|1.5|2|
|LS-08|1.5|2|
Viewing lounge (via AT1)|LS-09|3|2|
|LS-10|3|2|replaced 2019
||3|2|spare, on shelf in rack room
Skate shop (via AT3)|LS-12|6|3|
|LS-13|6|3|
Office|LS-14|1.5|3|
Coach stop|LS-15|20|3|rusty
||
AT1 12 W, AT2 6 W, AT3 30 W
`)
		p.Merge("A1:E1", "A5:A9", "A10:A12", "A13:A15", "A16:A17")
		p.Bold("A1", "A4:E4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5522", "Old Tannery Rink", "areas are merged and name the attenuator in brackets, ratings in one line at the foot; removed, future and spare in the remarks")
		t.Speakers("sheet=List; tap_v=100; line_v=100; zone=Ice; amplifier=A1; channel=1", `rows|tag|tap_w
5|LS-01|15
6|LS-02|15
8|LS-04|15`)
		t.Speakers("sheet=List; tap_v=100; line_v=100; amplifier=A1; channel=2", `rows|tag|zone|tap_w|control
10|LS-06|Cloaks|1.5|AT2
11|LS-07|Cloaks|1.5|AT2
12|LS-08|Cloaks|1.5|AT2
13|LS-09|Viewing lounge|3|AT1
14|LS-10|Viewing lounge|3|AT1`)
		t.Speakers("sheet=List; tap_v=100; line_v=100; amplifier=A1; channel=3", `rows|tag|zone|tap_w|control
16|LS-12|Skate shop|6|AT3
17|LS-13|Skate shop|6|AT3
18|LS-14|Office|1.5|
19|LS-15|Coach stop|20|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A1|1|120|45
A1|2|120|10.5
A1|3|120|33.5`)
		t.Amplifiers("", `amplifier|load_w
A1|89`)
		t.Controls("", `control|rated_w|load_w
AT1|12|6
AT2|6|4.5
AT3|30|12`)
		t.Left("List", `7|removed|taken away in 2016
9|future|only its cable is there
15|spare|on a shelf`)
	}},

	{File: "registers/Emergency luminaires Withy Lock.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("EM lights")
		p.Put("A1", `
Withy Lock Boathouse - emergency luminaires, annual test
||
Fitting|Location|Type|W|Zone|Circuit|Dimmer|Duration test
EL01|Boat hall N|maintained|8|Z1|DB1/4|no|passed
EL02|Boat hall S|maintained|8|Z1|DB1/4|no|passed
EL03|Changing men|bulkhead|3|Z2|DB1/5|no|passed
EL04|Changing ladies|bulkhead|3|Z2|DB1/5|no|failed, battery
EL05|Club room|downlight|5|Z3|DB1/6|D2|passed
EL06|Club room|downlight|5|Z3|DB1/6|D2|passed
EL07|Landing stage|floodlight|20|Z4|DB1/7|no|passed
||
Total||7 fittings|52
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "emergency lights with watts, zones, circuits and dimmers")
	}},
}
