package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// surveys were typed up by people who had walked the buildings: an electrician, a sound hire technician, a harbour carpenter, a safety officer.
var surveys = []typed.Case{
	{File: "walked/Tarn boathouse survey.xlsx", Kind: "schedule", Book: sheets("Survey", `
Site survey - Tarn Head Boathouse||||Job 6031
Walked with ladder 4 March. 100V line throughout.

Rm|What's there|No. off|Set to|Atten?|Comes off
Workshop|6" ceiling, white|4|6W|none|Amp L
Club room|ditto|6|3W|yes - AT1, 36W rotary by door|Amp L
Changing M|wall cab|2|3W|AT2, 24W|Amp L
Changing F|wall cab|2|3W|AT2, same one as Changing M|Amp L
Pontoon|horn|3|15W|none|Amp R
Loft|6" ceiling|2|couldn't reach|none|Amp L

Amp L is a 120W mixer amp with one output. Amp R is a 60W.
`), Truth: func(t *typed.Truth) {
		t.Is("6031", "Tarn Head Boathouse", "a survey in a tradesman's words: a tap nobody could see, attenuators told in their cells, amplifiers below")
		t.Speakers("sheet=Survey; tap_v=100; line_v=100", `
rows|room|count|tap_w|control|amplifier
5|Workshop|4|6||Amp L
6|Club room|6|3|AT1|Amp L
7|Changing M|2|3|AT2|Amp L
8|Changing F|2|3|AT2|Amp L
9|Pontoon|3|15||Amp R
10|Loft|2|||Amp L
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w|load_min_w\nAmp L|120||54\nAmp R|60|45|")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAmp L|120|\nAmp R|60|45")
		t.Controls("", "control|rated_w|load_w\nAT1|36|18\nAT2|24|12")
		t.Asks("Survey", "10|asked|the tap that could not be reached")
	}},

	{File: "walked/Pier end.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Pier")
		p.Put("B2", `
Gullhaven Pier|||Our ref|P/418
Public address - what is fixed where|||Date|12/05/2016
Volts on the line|100|
`)
		p.Put("E20", `
Post / bay|Type|Watts|Feed|Remarks
Bay 1|horn|10|Booth amp 1|
Bay 2|horn|10|Booth amp 1|
Bay 3|horn|10|Booth amp 1|
Bay 4|horn|10|Booth amp 1|removed after storm, not replaced
Bay 5|horn|10|Booth amp 1|
Shelter N|cabinet|5|Booth amp 1|
Shelter S|cabinet|5|Booth amp 1|
Landing stage|horn|20|Booth amp 2|
Landing stage|horn|20|Booth amp 2|
Ticket hut|cabinet|2.5|Booth amp 2|on volume control VC (12 W) behind the counter

Booth amp 1: 80 W. Booth amp 2: 60 W.
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("P/418", "Gullhaven Pier", "the table begins far down and far right; a row removed and a control in the remarks")
		t.Speakers("sheet=Pier; tap_v=100; line_v=100", `
rows|room|tap_w|amplifier|status|control
21|Bay 1|10|Booth amp 1|installed|
22|Bay 2|10|Booth amp 1|installed|
23|Bay 3|10|Booth amp 1|installed|
24|Bay 4|10|Booth amp 1|removed|
25|Bay 5|10|Booth amp 1|installed|
26|Shelter N|5|Booth amp 1|installed|
27|Shelter S|5|Booth amp 1|installed|
28|Landing stage|20|Booth amp 2|installed|
29|Landing stage|20|Booth amp 2|installed|
30|Ticket hut|2.5|Booth amp 2|installed|VC
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nBooth amp 1|80|50\nBooth amp 2|60|42.5")
		t.Amplifiers("", "amplifier|rated_w|load_w\nBooth amp 1|80|50\nBooth amp 2|60|42.5")
		t.Controls("note=unnamed", "control|rated_w|load_w\nVC|12|2.5")
	}},

	{File: "walked/lock cottages.csv", Kind: "schedule", Bytes: text(`
"Staircase locks at Hollin Cut - tannoy as we found it"
"Ref: HC-09","100 volt","all off one 30W amplifier in Lock House"

"Where","Spkrs","Each","Wire run from Lock House"
"Top lock","2","5W","40 yds bell wire"
"Middle lock","2","5W","95m of 1.5mm"
"Bottom lock","2","5W","160m of 1.5mm"
"Lock House","1","1W","-"
"Workshop","1","2W (not connected)","-"
`), Truth: func(t *typed.Truth) {
		t.Is("HC-09", "Hollin Cut", "one amplifier in a line of the title; a loudspeaker that is not connected; cables in words")
		t.Speakers("tap_v=100; line_v=100", `
rows|room|count|tap_w|status
5|Top lock|2|5|installed
6|Middle lock|2|5|installed
7|Bottom lock|2|5|installed
8|Lock House|1|1|installed
9|Workshop|1|2|removed
`)
		t.Channels("line_v=100", "rated_w|load_w\n30|31")
		t.Amplifiers("note=unnamed", "rated_w|load_w\n30|31")
		t.Lines("note=one length", "to|length_m|area_mm2\nMiddle lock|95|1.5\nBottom lock|160|1.5")
	}},

	{File: "walked/Herbarium annex check.xlsx", Kind: "schedule", Book: sheets("Check", `
HERBARIUM ANNEX, EASTERLEIGH GARDENS
Voice alarm check - project 90-17
System voltage: 100 V   Amplifiers: VA1 and VA2, 2 outputs of 120 W each

Speaker no.|Floor|Position|Tap|Output|OK
SP1|G|Mounting room|6 W|VA1-A|y
SP2|G|Mounting room|6 W|VA2-A|y
SP3|G|Corridor|3 W|VA1-A|y
SP4|G|Corridor|3 W|VA2-A|y
SP5|1|Specimen store|1,5 W|VA1-B|y
SP6|1|Specimen store|1,5 W|VA2-B|n - no sound, to be replaced
SP7|1|Freezer lobby|10 W|VA1-B|y
SP8|1|Freezer lobby|10 W|VA2-B|y
`), Truth: func(t *typed.Truth) {
		t.Is("90-17", "Easterleigh Gardens", "amplifiers named in a sentence of the title, two outputs each; a comma among points; a loudspeaker that fails still hangs on the line")
		t.Speakers("sheet=Check; tap_v=100; line_v=100", `
rows|tag|room|tap_w|amplifier|channel
6|SP1|Mounting room|6|VA1|A
7|SP2|Mounting room|6|VA2|A
8|SP3|Corridor|3|VA1|A
9|SP4|Corridor|3|VA2|A
10|SP5|Specimen store|1.5|VA1|B
11|SP6|Specimen store|1.5|VA2|B
12|SP7|Freezer lobby|10|VA1|B
13|SP8|Freezer lobby|10|VA2|B
`)
		t.Channels("line_v=100; rated_w=120", "amplifier|channel|load_w\nVA1|A|9\nVA1|B|11.5\nVA2|A|9\nVA2|B|11.5")
		t.Amplifiers("rated_w=240", "amplifier|load_w\nVA1|20.5\nVA2|20.5")
	}},

	{File: "walked/Glasshouse row.xlsx", Kind: "schedule", Book: sheets("Glasshouses", `
Job|GH-220|Client|Oxbarrow Gardens|Line|100V
Amp|GH-A|Output|250W|Model|4-zone mixer amp (one power stage)

House|Spkr type|Qty|Tap W|Total W|Vol ctrl
Cactus|5" surface|4|6|24|
Fern|5" surface|6|6|36|VC1
Fern annexe|5" surface|2|6|12|VC1
Alpine|5" surface|2|3|6|
Propagation|horn|2|15|30|VC2
Potting shed|horn|1|15|15|VC2
Orangery|5" surface|8|6|48|VC3
Total||25||171|

VC1 and VC2 = 50W type, VC3 = 24W type
Potting shed horn is a spare, in its box on the shelf
`), Truth: func(t *typed.Truth) {
		t.Is("GH-220", "", "ratings of the controls in one note, and a note that calls a row of the table a spare")
		t.Speakers("sheet=Glasshouses; tap_v=100; line_v=100; amplifier=GH-A", `
rows|room|count|tap_w|control|status
5|Cactus|4|6||installed
6|Fern|6|6|VC1|installed
7|Fern annexe|2|6|VC1|installed
8|Alpine|2|3||installed
9|Propagation|2|15|VC2|installed
10|Potting shed|1|15|VC2|spare
11|Orangery|8|6|VC3|installed
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nGH-A|250|156")
		t.Amplifiers("", "amplifier|rated_w|load_w\nGH-A|250|156")
		t.Controls("", "control|rated_w|load_w\nVC1|50|48\nVC2|50|30\nVC3|24|48")
		t.Left("Glasshouses", "12|total|the sum")
	}},

	{File: "walked/planetarium dome.xlsx", Kind: "schedule", Book: sheets("Dome", `
DOME & FOYER PAGING||||||
Hallowmoor Planetarium, works order 2231, as seen 9 Nov, 100 V
|N wall|E wall|S wall|W wall|Foyer|Box office
Speakers|3|3|3|3|8|1
Tap (W)|10|10|10|10|6|3
Attenuator|||||VR-F 50W|VR-B 6W
Amplifier|1|1|1|1|2|2
Cable (m)|22|31|44|52|18|60
Cable mm²|1.5|1.5|1.5|1.5|2.5|1.5
`, "Amps", `
No.|Make of thing|Watts @100V
1|power amp|180
2|mixer amp|60
`), Truth: func(t *typed.Truth) {
		t.Is("2231", "Hallowmoor Planetarium", "a table on its side, ratings of controls in their cells, amplifiers by number")
		t.Speakers("sheet=Dome; tap_v=100; line_v=100", `
rows|zone|count|tap_w|amplifier|control
B|N wall|3|10|1|
C|E wall|3|10|1|
D|S wall|3|10|1|
E|W wall|3|10|1|
F|Foyer|8|6|2|VR-F
G|Box office|1|3|2|VR-B
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\n1|180|120\n2|60|51")
		t.Amplifiers("", "amplifier|rated_w|load_w\n1|180|120\n2|60|51")
		t.Controls("", "control|rated_w|load_w\nVR-F|50|48\nVR-B|6|3")
		t.Lines("note=one length", `
zone|length_m|area_mm2
N wall|22|1.5
E wall|31|1.5
S wall|44|1.5
W wall|52|1.5
Foyer|18|2.5
Box office|60|1.5
`)
	}},

	{File: "walked/rink stands count.xlsx", Kind: "schedule", Book: sheets("Count", `
Coldbrook Ice Rink - horns and boxes counted from the ice
Job no|7702||Line voltage|100V

|||taps found
Stand|Amp|2.5W|5W|10W|20W
North stand|A|||6|
South stand|A|||6|2
East end|B||4||
West end|B||4||1
Skate hire|C|5|||
First aid|C|1|1||
Totals||6|9|12|3

Amps A and B 160W, amp C 30W
`), Truth: func(t *typed.Truth) {
		t.Is("7702", "Coldbrook Ice Rink", "a matrix of stands and taps with counts, ratings of three amplifiers in one sentence")
		t.Speakers("sheet=Count; tap_v=100; line_v=100", `
rows|zone|count|tap_w|amplifier
6|North stand|6|10|A
7|South stand|6|10|A
7|South stand|2|20|A
8|East end|4|5|B
9|West end|4|5|B
9|West end|1|20|B
10|Skate hire|5|2.5|C
11|First aid|1|2.5|C
11|First aid|1|5|C
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nA|160|160\nB|160|60\nC|30|20")
		t.Amplifiers("", "amplifier|rated_w|load_w\nA|160|160\nB|160|60\nC|30|20")
		t.Left("Count", "12|total|sums")
	}},
}
