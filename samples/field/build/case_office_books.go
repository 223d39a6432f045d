package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// officeBooks are workbooks of a quantity surveyor, a theatre's chief electrician, a riser planner, a contractor with a change order,
// an apprentice on a survey, a drawing office and a consultant.
var officeBooks = []typed.Case{
	{File: "boq/Wattlebrook Library section 6.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("BOQ S6")
		p.Put("A1", `
Wattlebrook Library
Bill of Quantities - Section 6 Public Address (100 V line)
||
Item|Description|Unit|Qty|Rate $|Amount $
'6.1|LOUDSPEAKERS - GROUND FLOOR
6.1.1|Flush ceiling speaker tapped 3 W, foyer|No.|6|118|708
6.1.2|Flush ceiling speaker tapped 3 W, adult collection|No.|10|118|1180
6.1.3|Flush ceiling speaker tapped 1.5 W, amenities|No.|4|118|472
6.1.4|Weatherproof horn tapped 10 W, loading dock|No.|1|205|205
'6.2|LOUDSPEAKERS - FIRST FLOOR
6.2.1|Wall box speaker tapped 6 W, children's library|No.|4|162|648
6.2.2|Flush ceiling speaker tapped 3 W, study rooms|No.|8|118|944
6.2.3|Flush ceiling speaker tapped 1.5 W, staff room|No.|3|118|354
'6.3|AMPLIFIERS AND CONTROLS
6.3.1|Amplifier AMP-G, 120 W, for ground floor loudspeakers|No.|1|980|980
6.3.2|Amplifier AMP-F, 60 W, for first floor loudspeakers|No.|1|760|760
6.3.3|Wall attenuator 36 W, children's library|No.|1|96|96
'6.4|CABLE
6.4.1|2 core 1.5 mm² double insulated, ground floor|m|185|4.2|777
6.4.2|2 core 1.5 mm² double insulated, first floor|m|140|4.2|588
|Carried to summary||||7712
`)
		p.Bold("A1", "A4:F4", "A5:B5", "A10:B10", "A14:B14", "A18:B18", "B21:F21")
		p.Format("#,##0.00", "E6:F21")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Wattlebrook Library", "bill of quantities: tap and room inside the description, floors in section titles, money columns, one attenuator without a name")
		t.Speakers("sheet=BOQ S6; tap_v=100; line_v=100; zone=Ground floor; amplifier=AMP-G; note=floor as zone", `rows|room|count|tap_w
6|foyer|6|3
7|adult collection|10|3
8|amenities|4|1.5
9|loading dock|1|10`)
		t.Speakers("sheet=BOQ S6; tap_v=100; line_v=100; zone=First floor; amplifier=AMP-F; note=floor as zone", `rows|room|count|tap_w
11|children's library|4|6
12|study rooms|8|3
13|staff room|3|1.5`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP-G|120|64
AMP-F|60|52.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP-G|120|64
AMP-F|60|52.5`)
		t.Controls("", `control|rated_w|load_w|note
|36|24|unnamed`)
		t.Lines("note=one length a floor", `zone|length_m|area_mm2
Ground floor|185|1.5
First floor|140|1.5`)
		t.Left("BOQ S6", `15|other|amplifier
16|other|amplifier
17|other|attenuator
21|total|money`)
	}},

	{File: "theatre/Alder Lane show relay.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Backstage")
		p.Put("A1", `
Alder Lane Theatre - show relay and calls
Backstage, all on Amp 1 (120 W, 100 V)
||
Room|Speakers|Type|Watts each|Attenuator
Dressing room 1|1|wall|3|AT1
Dressing room 2|1|wall|3|AT2
Dressing room 3 (chorus)|2|wall|3|AT3
Green room|2|wall|3|AT4
Wardrobe|1|wall|1.5|AT5
Crew room|1|wall|3|AT6
Stage door|1|wall|1.5|none
Corridors|3|ceiling|1.5|none
Scene dock|2|horn|10|none
`)
		p.Bold("A1", "A4:E4")
		q := p.Sheet("Front of house")
		q.Put("A1", `
Alder Lane Theatre - foyer calls
Front of house, all on Amp 2 (120 W, 100 V)
||
Room|Speakers|Type|Watts each|Attenuator
Main foyer|6|ceiling|3|AT7
Circle foyer|4|ceiling|3|AT8
Box office|1|ceiling|1.5|AT9
Cloakroom|1|ceiling|1.5|none
Front steps|2|column|6|none
`)
		q.Bold("A1", "A4:E4")
		r := p.Sheet("Attenuators")
		r.Put("A1", `
No.|W|Fixed where|Fed from
AT1|5|DR1 by mirror|Amp 1
AT2|5|DR2 by mirror|Amp 1
AT3|10|DR3 by door|Amp 1
AT4|10|Green room|Amp 1
AT5|5|Wardrobe|Amp 1
AT6|5|Crew room|Amp 1
AT7|24|Main foyer, behind desk|AT10
AT8|24|Circle foyer|AT10
AT9|5|Box office|Amp 2
AT10|50|House manager's office|Amp 2
`)
		r.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Alder Lane Theatre", "a sheet an amplifier, ratings in the sheet's second line; attenuators on their own sheet, two of them behind a master that no loudspeaker row names")
		t.Speakers("sheet=Backstage; tap_v=100; line_v=100; amplifier=Amp 1", `rows|room|count|tap_w|control
5|Dressing room 1|1|3|AT1
6|Dressing room 2|1|3|AT2
7|Dressing room 3 (chorus)|2|3|AT3
8|Green room|2|3|AT4
9|Wardrobe|1|1.5|AT5
10|Crew room|1|3|AT6
11|Stage door|1|1.5|
12|Corridors|3|1.5|
13|Scene dock|2|10|`)
		t.Speakers("sheet=Front of house; tap_v=100; line_v=100; amplifier=Amp 2", `rows|room|count|tap_w|control
5|Main foyer|6|3|AT7
6|Circle foyer|4|3|AT8
7|Box office|1|1.5|AT9
8|Cloakroom|1|1.5|
9|Front steps|2|6|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
Amp 1|120|48.5
Amp 2|120|45`)
		t.Amplifiers("", `amplifier|rated_w|load_w
Amp 1|120|48.5
Amp 2|120|45`)
		t.Controls("", `control|rated_w|load_w|upstream
AT1|5|3|
AT2|5|3|
AT3|10|6|
AT4|10|6|
AT5|5|1.5|
AT6|5|3|
AT7|24|18|AT10
AT8|24|12|AT10
AT9|5|1.5|
AT10|50|30|`)
	}},

	{File: "risers/7731 Flint Hollow Museum riser.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Riser")
		p.Put("A1", `
FLINT HOLLOW MUSEUM - PAGING RISER SHEET
Job 7731|||70 V
||
Floor|TB|Area served|Spkrs|Tap (W)|Load (W)|Rack to TB (ft)|Pair|Amp-Ch|Remarks
4|TB-4|Offices|9|1|9|185|16 AWG|2-2|
||Archive reading rm|4|2|8||||
3|TB-3|Geology hall|12|4|48|150|14 AWG|2-1|VC-3 on column, hall only, 75 W
||Mezzanine|4|4|16||||
2|TB-2|River hall|14|4|56|115|14 AWG|1-2|VC-2 on column, hall only, 75 W
||Restrooms 2nd fl|4|1|4||||
1|TB-1|Main lobby|10|5|50|60|14 AWG|1-1|
||Group entrance|4|5|20||||
||Museum school|6|2|12||||VC-1 at door, 15 W
B|TB-B|Loading dock|2|15|30|90|12 AWG|2-3|
||Shop and crate store|6|5|30||||
||
Amp 1: 2 channels of 150 W. Amp 2: 4 channels of 100 W (ch 4 open)
`)
		p.Merge("A1:J1")
		for _, c := range []string{"A", "B", "G", "H", "I"} {
			p.Merge(c+"5:"+c+"6", c+"7:"+c+"8", c+"9:"+c+"10", c+"11:"+c+"13", c+"14:"+c+"15")
		}
		p.Bold("A1", "A4:J4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("7731", "FLINT HOLLOW MUSEUM", "riser sheet from the top floor down; floor, terminal block, run and output merged over several rows; outputs as 1-2; controls of single areas in the remarks")
		t.Speakers("sheet=Riser; tap_v=70.7; line_v=70.7; note=floor as zone", `rows|zone|room|count|tap_w|amplifier|channel|control
5|4|Offices|9|1|2|2|
6|4|Archive reading rm|4|2|2|2|
7|3|Geology hall|12|4|2|1|VC-3
8|3|Mezzanine|4|4|2|1|
9|2|River hall|14|4|1|2|VC-2
10|2|Restrooms 2nd fl|4|1|1|2|
11|1|Main lobby|10|5|1|1|
12|1|Group entrance|4|5|1|1|
13|1|Museum school|6|2|1|1|VC-1
14|B|Loading dock|2|15|2|3|
15|B|Shop and crate store|6|5|2|3|`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
1|1|150|82
1|2|150|60
2|1|100|64
2|2|100|17
2|3|100|60`)
		t.Amplifiers("", `amplifier|load_w
1|142
2|141`)
		t.Controls("", `control|rated_w|load_w
VC-3|75|48
VC-2|75|56
VC-1|15|12`)
		t.Lines("note=home run to the terminal block of the floor", `to|zone|length_m|area_mm2
TB-4|4|56.388|1.309
TB-3|3|45.72|2.081
TB-2|2|35.052|2.081
TB-1|1|18.288|2.081
TB-B|B|27.432|3.309`)
	}},

	{File: "changes/CO-07 school of navigation.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("CO-07")
		p.Put("A1", `
Change Order CO-07|||Saltbox Point School of Navigation
Job 2206, paging speakers, 70 V
||
Item|Area|Speaker|Contract||After this CO||Change W|Reason
|||Qty|Tap W|Qty|Tap W||
1|Lecture hall|ceiling|6|5|8|5|10|seating extended
2|Chart room|ceiling|4|2.5|4|5|10|too quiet
3|Radio lab|wall|2|5|0|0|-10|deleted, lab closed off
4|Seamanship loft|horn|2|10|2|10|0|no change
5|Net store|horn|0|0|1|10|10|new
6|Mess hall|ceiling|6|2.5|6|2.5|0|no change
7|Training dock|horn|2|15|3|15|15|second berth
|Total||22||24||35|
||
Amplifier channels after this CO
Channel|Rated W|Items
1|120|1, 2, 6
2|100|4, 5, 7
`)
		p.Merge("D4:E4", "F4:G4", "A4:A5", "B4:B5", "C4:C5", "H4:H5", "I4:I5")
		p.Bold("A1", "A4:I5", "A15", "A16:C16")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2206", "Saltbox Point School of Navigation", "change order: counts and taps before and after side by side under a two-row header, one item deleted; channels by item numbers below")
		t.Speakers("sheet=CO-07; tap_v=70.7; line_v=70.7; channel=1", `rows|room|count|tap_w
6|Lecture hall|8|5
7|Chart room|4|5
11|Mess hall|6|2.5`)
		t.Speakers("sheet=CO-07; tap_v=70.7; line_v=70.7; channel=2", `rows|room|count|tap_w
9|Seamanship loft|2|10
10|Net store|1|10
12|Training dock|3|15`)
		t.Channels("line_v=70.7", `channel|rated_w|load_w
1|120|75
2|100|75`)
		t.Left("CO-07", `8|removed|deleted by the change order
13|total|sums`)
	}},

	{File: "surveys/stables walkround.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Sheet1")
		p.Put("A1", `
Matai Flat Stables, speaker survey for quote
100v line, one old amp in tack room, says 120W on the back
||
where|how many|type|tap|vol control|notes
stable block A|4|horn|5w|no|
stable block B|4|horn|5w|no|1 has a birds nest in it, still goes
indoor arena|4|big horn|15|no|
arena gallery|2|box|6w|yes|knob says 12W
tack rm|1|ceilng|1.5w|yes|knob says 6W
office|1|ceilng|1.5w|yes|same knob as tack rm
wash down bay|1|horn|?|no|couldnt get the cover off
feed shed|3|horn|5w|no|
car pk|2|horn|10w|no|
back paddock|1|horn|10w|no|pole fell over, speaker is in the shed not connected
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Matai Flat Stables", "an apprentice's survey: lower case, typos, taps with and without w, knobs without names, one tap unseen, one horn down and disconnected; known load alone is above the amplifier")
		t.Speakers("sheet=Sheet1; tap_v=100; line_v=100", `rows|room|count|tap_w
5|stable block A|4|5
6|stable block B|4|5
7|indoor arena|4|15
8|arena gallery|2|6
9|tack rm|1|1.5
10|office|1|1.5
11|wash down bay|1|
12|feed shed|3|5
13|car pk|2|10`)
		t.Channels("line_v=100", `amplifier|rated_w|load_min_w
|120|150`)
		t.Amplifiers("", `amplifier|rated_w
|120`)
		t.Controls("", `control|zone|rated_w|load_w|note
|arena gallery|12|12|unnamed
|tack rm|6|3|unnamed`)
		t.Left("Sheet1", `14|removed|down and disconnected`)
		t.Asks("Sheet1", `11|asked|tap of the horn in the wash down bay`)
	}},

	{File: "drawings/Carrigmoyle PA-04 quantities.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("PA-04")
		p.Put("A1", `
Carrigmoyle Botanic Garden
PA loudspeaker quantities to drawing PA-04, 100 V line
||
Area|Horn 15 W|Column 10 W|Rock 6 W|Ceiling 3 W|Total W|Amp/output
Palm house||4|6||76|1/1
Fern house|||8||48|1/1
Alpine house||2|||20|1/2
Walled garden|2|2|||50|1/2
Great lawn|6||||90|2/1
Lime avenue|4||2||72|2/1
Visitor centre||||12|36|2/2
Seed library||||4|12|2/2
Herbarium||||3|9|2/2
Total|12|8|16|19|413|
||
Amplifiers 1 and 2: two outputs each, 240 W per output.
Seed library has attenuator AT1, 24 W.
`)
		p.Bold("A1", "A4:G4", "A14:G14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Carrigmoyle Botanic Garden", "a matrix of areas and kinds, taps in the column heads; outputs as 1/2; ratings and one attenuator in sentences")
		t.Speakers("sheet=PA-04; tap_v=100; line_v=100", `rows|room|count|tap_w|amplifier|channel|control
5|Palm house|4|10|1|1|
5|Palm house|6|6|1|1|
6|Fern house|8|6|1|1|
7|Alpine house|2|10|1|2|
8|Walled garden|2|15|1|2|
8|Walled garden|2|10|1|2|
9|Great lawn|6|15|2|1|
10|Lime avenue|4|15|2|1|
10|Lime avenue|2|6|2|1|
11|Visitor centre|12|3|2|2|
12|Seed library|4|3|2|2|AT1
13|Herbarium|3|3|2|2|`)
		t.Channels("line_v=100; rated_w=240", `amplifier|channel|load_w
1|1|124
1|2|70
2|1|162
2|2|57`)
		t.Amplifiers("", `amplifier|load_w
1|194
2|219`)
		t.Controls("", `control|rated_w|load_w
AT1|24|12`)
		t.Left("PA-04", `14|total|sums`)
	}},

	{File: "design/Sycamore Valley station PA-2.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Speakers")
		p.Put("A1", `
SYCAMORE VALLEY STATION - PUBLIC ADDRESS - SHEET PA-2
Zone|Location|Qty|Type|Tap @ 70V|Amp|Ch|Home run ft|AWG
Platform|Track 1 east|6|horn|15|AMP-1|1|320|12
Platform|Track 1 west|6|horn|15|AMP-1|1|410|12
Platform|Track 2|8|horn|15|AMP-1|2|360|12
Concourse|Main hall|10|pendant|8|AMP-2|1|150|14
Concourse|Ticketing|4|ceiling|4|AMP-2|1|95|16
Concourse|Restrooms|4|ceiling|2|AMP-2|1|110|16
Waiting|Waiting room|8|ceiling|4|AMP-2|2|130|16
Waiting|Baggage|2|ceiling|4|AMP-2|2|145|16
Back of house|Crew office|2|ceiling|1|AMP-2|3|80|18
Back of house|Dispatcher|1|ceiling|0.5|AMP-2|3|75|18
`)
		p.Merge("A1:I1")
		p.Bold("A1", "A2:I2")
		q := p.Sheet("Amps + VCs")
		q.Put("A1", `
Unit|Ch|Watts|Zone|Vol. control|VC watts
AMP-1|1|250|Platform||
AMP-1|2|250|Platform||
AMP-2|1|150|Concourse||
AMP-2|2|60|Waiting|VC-W|50
AMP-2|3|60|Back of house|VC-B|5
`)
		q.Bold("A1:F1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "SYCAMORE VALLEY STATION", "plain; ft and AWG in the header; controls of whole zones on the amplifier sheet")
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Platform; amplifier=AMP-1", `rows|room|count|tap_w|channel
3|Track 1 east|6|15|1
4|Track 1 west|6|15|1
5|Track 2|8|15|2`)
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Concourse; amplifier=AMP-2; channel=1", `rows|room|count|tap_w
6|Main hall|10|8
7|Ticketing|4|4
8|Restrooms|4|2`)
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Waiting; amplifier=AMP-2; channel=2; control=VC-W", `rows|room|count|tap_w
9|Waiting room|8|4
10|Baggage|2|4`)
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; zone=Back of house; amplifier=AMP-2; channel=3; control=VC-B", `rows|room|count|tap_w
11|Crew office|2|1
12|Dispatcher|1|0.5`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
AMP-1|1|250|180
AMP-1|2|250|120
AMP-2|1|150|104
AMP-2|2|60|40
AMP-2|3|60|2.5`)
		t.Amplifiers("", `amplifier|load_w
AMP-1|300
AMP-2|146.5`)
		t.Controls("", `control|zone|rated_w|load_w
VC-W|Waiting|50|40
VC-B|Back of house|5|2.5`)
		t.Lines("note=home run", `zone|to|length_m|area_mm2
Platform|Track 1 east|97.536|3.309
Platform|Track 1 west|124.968|3.309
Platform|Track 2|109.728|3.309
Concourse|Main hall|45.72|2.081
Concourse|Ticketing|28.956|1.309
Concourse|Restrooms|33.528|1.309
Waiting|Waiting room|39.624|1.309
Waiting|Baggage|44.196|1.309
Back of house|Crew office|24.384|0.823
Back of house|Dispatcher|22.86|0.823`)
	}},
}
