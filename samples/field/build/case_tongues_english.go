package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// tonguesEnglish are six people who write English: a council caretaker, a school district, a grounds contractor, a railway contractor, a parish secretary, a museum.
var tonguesEnglish = []typed.Case{
	{File: "tongues/council/Thornbeck Baths PA.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Sheet1")
		p.Put("A1", `
Swarfdale District Council - Property Services
PA speakers, Thornbeck Baths|||||job ref PS/0417
visited 14/3, DH + apprentice. 100v line. One amp in reception cupboard, 240w, single o/p feeds the lot

Where|What's there|No. off|Tapped at|Vol. pot?|Remarks
Main pool, long side|white horn|4no.|10w|no|
Main pool, shallow end|white horn|2no.|10w|no|one a bit crackly
Teaching pool|sq. ceiling|4no.|6w|by door|36w pot
Changing village|rnd ceiling|8no.|1.5w|no|
Reception|rnd ceiling|3no.|3w|behind desk|12w pot
Viewing gallery|cab on wall|2no.|6w|no|
Sauna corridor|rnd ceiling|2no.|3w|no|taken down when sauna went, hole plated over
Plant room|re-entrant|1no.|15w|no|deafening
Stores, top shelf|white horn|1no.|-|-|spare, still in box

makes 132w all in by my reckoning so plenty in hand
`)
		p.Bold("A5:F5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("PS/0417", "Thornbeck Baths", "plain; counts as 4no., unnamed pots by place with their rating among the remarks, one pair taken down, one spare, amplifier in a sentence")
		t.Speakers("sheet=Sheet1; tap_v=100; line_v=100", `rows|room|count|tap_w|note
6|Main pool, long side|4|10|
7|Main pool, shallow end|2|10|
8|Teaching pool|4|6|unnamed
9|Changing village|8|1.5|
10|Reception|3|3|unnamed
11|Viewing gallery|2|6|
13|Plant room|1|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|132`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|132`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Teaching pool|36|24
|Reception|12|9`)
		t.Left("Sheet1", `12|removed|taken down
14|spare|in its box on a shelf
16|total|a remark with the sum`)
	}},

	{File: "tongues/district/WO 24-1183 PAC paging.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Spkr Sched")
		p.Put("A1", `
HARLAN CREEK UNIFIED SCHOOL DIST - M&O ELECTRONICS SHOP
WO 24-1183|PERFORMING ARTS CENTER PAGING (70V)

Mark|Room|Qty|Tap|Ckt|Attn|E/N/D|See note
S1|101 Lobby|6|2W|C1|AT-1|N|
S1|102 Box office|1|1W|C1||N|
S2|110 Auditorium|8|5W|C2||E|1
S2|111 Stage left|1|5W|C2|AT-2|E|
S2|112 Stage right|1|5W|C2|AT-2|E|
S3|120 Scene shop|2|7.5W|C3||N|
S1|121 Dressing A|2|1W|C3|AT-3|N|
S1|122 Dressing B|2|1W|C3|AT-4|N|
S1|123 Green room|2|2W|C3|AT-5|D|2
S4|EXT Bus loop|3|15W|C4||N|
S4|EXT Loading dock|1|15W|C4||E|

E = exist. to remain   N = new   D = demo
Note 1: retap from 2-1/2W, tap shown is final
Note 2: demo w/ attenuator, patch gyp bd
`)
		p.Bold("A1", "A4:H4")
		q := p.Sheet("Ckts")
		q.Put("A1", `
Ckt|Amp|Ch|Watts/ch|Home run|Ft
C1|PA-1|A|60|16/2 AWG|140
C2|PA-1|B|60|16/2 AWG|210
C3|PA-2|A|60|18/2 AWG|95
C4|PA-2|B|60|14/2 AWG DB|310
`)
		q.Bold("A1:F1")
		r := p.Sheet("Attn")
		r.Put("A1", `
Tag|Size|Mtd
AT-1|35W|box office wall, 48" AFF
AT-2|10W|stage mgr desk
AT-3|10W|in rm
AT-4|10W|in rm
AT-5|10W|demo
`)
		r.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("24-1183", "Performing Arts Center", "circuits and attenuators joined from two sheets; E/N/D for existing, new, demolished; an old tap in a note; feet and AWG")
		t.Speakers("sheet=Spkr Sched; tap_v=70.7; line_v=70.7; amplifier=PA-1; channel=A", `rows|room|count|tap_w|control
5|101 Lobby|6|2|AT-1
6|102 Box office|1|1|`)
		t.Speakers("sheet=Spkr Sched; tap_v=70.7; line_v=70.7; amplifier=PA-1; channel=B", `rows|room|count|tap_w|control
7|110 Auditorium|8|5|
8|111 Stage left|1|5|AT-2
9|112 Stage right|1|5|AT-2`)
		t.Speakers("sheet=Spkr Sched; tap_v=70.7; line_v=70.7; amplifier=PA-2; channel=A", `rows|room|count|tap_w|control
10|120 Scene shop|2|7.5|
11|121 Dressing A|2|1|AT-3
12|122 Dressing B|2|1|AT-4`)
		t.Speakers("sheet=Spkr Sched; tap_v=70.7; line_v=70.7; amplifier=PA-2; channel=B", `rows|room|count|tap_w
14|EXT Bus loop|3|15
15|EXT Loading dock|1|15`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
PA-1|A|60|13
PA-1|B|60|50
PA-2|A|60|19
PA-2|B|60|60`)
		t.Amplifiers("", `amplifier|load_w
PA-1|63
PA-2|79`)
		t.Controls("", `control|rated_w|load_w
AT-1|35|12
AT-2|10|10
AT-3|10|2
AT-4|10|2`)
		t.Lines("note=home run", `line|length_m|area_mm2
C1|42.672|1.31
C2|64.008|1.31
C3|28.956|0.823
C4|94.488|2.08`)
		t.Left("Spkr Sched", `13|removed|demolished
17|legend|states
18|note|an old tap
19|note|on the demolished pair`)
		t.Left("Attn", `6|removed|attenuator demolished`)
	}},

	{File: "tongues/oval/5561-W ground PA winter service.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Ground PA")
		p.Put("A1", `
WIRRABILLA OVAL - GROUND PA, WINTER SERVICE|||||Job# 5561-W
All 100 volt line. Rack lives under the Western Stand, bottom shelf cops the hose so keep it up.

Amp|Line|Area|Spkrs|Tap|Notes
1 (250 watt)|1|Western Stand upper|horn x 6|15 watt|
1|1|Western Stand lower|horn x 4|15 watt|one bracket rusted, re-hung
2 (250 watt)|2|Northern Hill|column x 3|20 watt|repainted
2|2|Southern Hill|column x 3|20 watt|ditto
2|2|Scoreboard|horn x 1|30 watt|cocky nest pulled out of the bell, all good now
3 (125 watt)|3|Players race|ceiling x 2|5 watt|
3|3|Change rooms - home|ceiling x 4|5 watt|wall attenuator, 30 watt job
3|3|Change rooms - away|ceiling x 4|5 watt|has its own attenuator, same as home
3|3|Umpires|ceiling x 1|2.5 watt|
3|3|Timekeepers box|ceiling x 1|5 watt|gone - box was knocked down in Feb
4 (125 watt)|4|Turnstiles 1-6|horn x 6|10 watt|
4|4|Bus bay|horn x 2|10 watt|
4|4|Eastern gate|horn x 1|10 watt|not in yet, goes up when the gate's rebuilt next season

Next service Sept. Ring Macca for the scissor lift.
`)
		p.Bold("A1", "A4:F4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5561-W", "Wirrabilla Oval", "kind and count in one cell as horn x 6; rating in brackets at the first naming; two unnamed attenuators by remark, the second 'same as home'; something else pulled out; one gone, one not in yet")
		t.Speakers("sheet=Ground PA; tap_v=100; line_v=100; amplifier=1; channel=1", `rows|room|count|tap_w
5|Western Stand upper|6|15
6|Western Stand lower|4|15`)
		t.Speakers("sheet=Ground PA; tap_v=100; line_v=100; amplifier=2; channel=2", `rows|room|count|tap_w
7|Northern Hill|3|20
8|Southern Hill|3|20
9|Scoreboard|1|30`)
		t.Speakers("sheet=Ground PA; tap_v=100; line_v=100; amplifier=3; channel=3", `rows|room|count|tap_w|note
10|Players race|2|5|
11|Change rooms - home|4|5|unnamed
12|Change rooms - away|4|5|unnamed
13|Umpires|1|2.5|`)
		t.Speakers("sheet=Ground PA; tap_v=100; line_v=100; amplifier=4; channel=4", `rows|room|count|tap_w
15|Turnstiles 1-6|6|10
16|Bus bay|2|10`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
1|1|250|150
2|2|250|150
3|3|125|52.5
4|4|125|80`)
		t.Amplifiers("", `amplifier|rated_w|load_w
1|250|150
2|250|150
3|125|52.5
4|125|80`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Change rooms - home|30|20
|Change rooms - away|30|20`)
		t.Left("Ground PA", `14|removed|gone
17|future|not in yet`)
	}},

	{File: "tongues/railway/Chandavali Rd PA measurement.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("LS Details")
		p.Put("A1", `
Name of work: Provn. of PA system at Chandavali Road stn.
Agmt. No. 114/S&T/2017-18 dtd. 05.09.17
Speaker line voltage: 100V

S.No.|Location|Type of LS|Qty (Nos.)|Tapped (W)|LS line|Remarks
1|PF-1 shelter|Column 20W|12|10|L-1|
2|PF-1 open end, Dn side|Horn 25W|4|15|L-1|
3|PF-2 shelter|Column 20W|8|10|L-2|
4|PF-2 open end|Horn 25W|6|15|L-2|
5|FOB|Horn 25W|2|15|L-3|
6|Booking hall|Box 10W|6|5|L-4|thru V.C.-1
7|Waiting hall (2nd class)|Box 10W|4|5|L-4|thru V.C.-2
8|SM office|Box 10W|1|2.5|L-4|thru V.C.-3
9|PF-1 old GI poles|Horn 25W|5|15|-|dismantled & handed over to SSE stores
10|-|Horn 25W|2|-|-|supplied as spare
|Total||50|||
`)
		p.Bold("A1", "A5:G5", "B16:D16")
		q := p.Sheet("Amp Rack")
		q.Put("A1", `
Amplifier|Rating|LS line
AMP-1|250W RMS|L-1
AMP-2|250W RMS|L-2
AMP-3|120W RMS|L-3
AMP-4|120W RMS|L-4

Volume controller|Capacity
V.C.-1|40W
V.C.-2|40W
V.C.-3|10W
`)
		q.Bold("A1:C1", "A7:B7")
		r := p.Sheet("Cable")
		r.Put("A1", `
LS line|From|To|Cable|Length (Rmt)|Rate (Rs./Rmt)|Amount (Rs.)
L-1|AMP-1|PF-1 shelter|2C x 2.5 sqmm Cu armd.|320|186|59,520/-
L-2|AMP-2|PF-2 shelter|2C x 2.5 sqmm Cu armd.|410|186|76,260/-
L-3|AMP-3|FOB|2C x 2.5 sqmm Cu armd.|145|186|26,970/-
L-4|AMP-4|Booking hall|2C x 1.5 sqmm Cu FRLS|85|94|7,990/-
||||960||1,70,740/-
`)
		r.Bold("A1:G1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("114/S&T/2017-18", "Chandavali Road stn.", "the loudspeaker's own power in its type beside the tap; line to amplifier and cable on other sheets; dismantled and spare ones; rupees grouped in lakhs")
		t.Speakers("sheet=LS Details; tap_v=100; line_v=100; amplifier=AMP-1", `rows|room|count|tap_w
6|PF-1 shelter|12|10
7|PF-1 open end, Dn side|4|15`)
		t.Speakers("sheet=LS Details; tap_v=100; line_v=100; amplifier=AMP-2", `rows|room|count|tap_w
8|PF-2 shelter|8|10
9|PF-2 open end|6|15`)
		t.Speakers("sheet=LS Details; tap_v=100; line_v=100; amplifier=AMP-3", `rows|room|count|tap_w
10|FOB|2|15`)
		t.Speakers("sheet=LS Details; tap_v=100; line_v=100; amplifier=AMP-4", `rows|room|count|tap_w|control
11|Booking hall|6|5|V.C.-1
12|Waiting hall (2nd class)|4|5|V.C.-2
13|SM office|1|2.5|V.C.-3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP-1|250|180
AMP-2|250|170
AMP-3|120|30
AMP-4|120|52.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP-1|250|180
AMP-2|250|170
AMP-3|120|30
AMP-4|120|52.5`)
		t.Controls("", `control|rated_w|load_w
V.C.-1|40|30
V.C.-2|40|20
V.C.-3|10|2.5`)
		t.Lines("", `line|from|to|length_m|area_mm2|material
L-1|AMP-1|PF-1 shelter|320|2.5|copper
L-2|AMP-2|PF-2 shelter|410|2.5|copper
L-3|AMP-3|FOB|145|2.5|copper
L-4|AMP-4|Booking hall|85|1.5|copper`)
		t.Left("LS Details", `14|removed|dismantled
15|spare|supplied as spare
16|total|sums`)
		t.Left("Cable", `6|total|sums`)
	}},

	{File: "tongues/parish/hall speakers for insurance.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Parish of Kilbrannagh - sound in the hall and grounds (for the insurance),,,,
made out 22nd Feb. 2016,,,,

Place,Speakers,Set to,Volume knob,Comment
"Main hall, left",4 boxes,6 W,,
"Main hall, right",4 boxes,6 W,,
Stage,2 boxes,6 W,Knob 1,
Porch,1 ceiling one,3 W,Knob 2,
Meeting room,2 ceiling ones,3 W,Knob 3,
Kitchen,1 ceiling one,1½ W,Knob 3,off the same knob as the Meeting room
Tin shed,1 horn,can't make it out,,"label is gone with the damp, Declan to go up the ladder"
Car park,2 horns,15 W,,
Old balcony,2 boxes,6 W,,given to the school when the balcony came out

"Knob 1 has 24W printed on it, Knobs 2 and 3 have 12W each",,,,
"The amplifier is the 150 watt one in the press behind the stage, 100 volt, and every speaker is on the one pair of wires",,,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Parish of Kilbrannagh", "an amateur's list; counts in words of the cell, 1½ W, knobs rated in a sentence below, one tap that cannot be read, a pair given away")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|control
5|Main hall, left|4|6|
6|Main hall, right|4|6|
7|Stage|2|6|Knob 1
8|Porch|1|3|Knob 2
9|Meeting room|2|3|Knob 3
10|Kitchen|1|1.5|Knob 3
11|Tin shed|1||
12|Car park|2|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_min_w
|150|100.5`)
		t.Amplifiers("", `amplifier|rated_w
|150`)
		t.Controls("", `control|rated_w|load_w
Knob 1|24|12
Knob 2|12|3
Knob 3|12|7.5`)
		t.Left("", `13|removed|given away`)
		t.Asks("", `11|asked|tap of the horn in the shed`)
	}},

	{File: "tongues/museum/AV asset register.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Speakers")
		p.Put("A1", `
Museum of Tidewater History - AV asset register, 70 V ambience & paging
Updated 2023-11-06, Building Services|||||Proj. 2311-4

Asset ID|Qty|Gallery / room|Tap|Vol ctl|Amp-ch|Condition
SPK-101 to 106|6|Hall of Tides|8 W|VC-1|A1-1|good
SPK-107 to 110|4|Lobby|4 W|VC-2|A1-2|good
SPK-111|1|Coat check|2 W|-|A1-2|good
SPK-112 & 113|2|Washrooms|1 W|-|A1-2|fair
SPK-201 to 208|8|Boat gallery|8 W|VC-3|A2-1|good
SPK-209 to 212|4|Children's gallery|4 W|VC-4|A2-2|good, one grille dented
SPK-213|1|Hydro room|2 W|-|A2-2|good
SPK-214 & 215|2|Theatre lobby|4 W|-|A2-2|decommissioned 2022, disconnected at tee
SPK-301|1|Roof deck|n/k|-|A2-2|good; snowed in, tap to be read in spring
SPK-S1 to S3|3|Storage B12|-|-|-|attic stock
`)
		p.Bold("A1", "A4:G4")
		q := p.Sheet("Amps & vol ctls")
		q.Put("A1", `
Amp|Ch|W per ch|Rack
A1|1|100|R-1
A1|2|100|R-1
A2|1|100|R-2
A2|2|50|R-2

Vol ctl|Size|Colour
VC-1|100 W|ivory
VC-2|35 W|ivory
VC-3|100 W|black
VC-4|35 W|grey
`)
		q.Bold("A1:D1", "A7:C7")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2311-4", "Museum of Tidewater History", "asset ranges beside the quantity; amplifier and channel as A1-1; decommissioned and attic stock; one tap not known; ratings on a second sheet")
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; amplifier=A1; channel=1", `rows|room|count|tap_w|control
5|Hall of Tides|6|8|VC-1`)
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; amplifier=A1; channel=2", `rows|room|count|tap_w|control
6|Lobby|4|4|VC-2
7|Coat check|1|2|
8|Washrooms|2|1|`)
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; amplifier=A2; channel=1", `rows|room|count|tap_w|control
9|Boat gallery|8|8|VC-3`)
		t.Speakers("sheet=Speakers; tap_v=70.7; line_v=70.7; amplifier=A2; channel=2", `rows|room|count|tap_w|control
10|Children's gallery|4|4|VC-4
11|Hydro room|1|2|
13|Roof deck|1||`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w|load_min_w
A1|1|100|48|
A1|2|100|20|
A2|1|100|64|
A2|2|50||18`)
		t.Amplifiers("", `amplifier|load_w
A1|68`)
		t.Controls("", `control|rated_w|load_w
VC-1|100|48
VC-2|35|16
VC-3|100|64
VC-4|35|16`)
		t.Left("Speakers", `12|removed|decommissioned and disconnected
14|spare|attic stock`)
		t.Asks("Speakers", `13|asked|tap on the roof deck`)
	}},
}
