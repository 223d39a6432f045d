package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// siteEngineers are four people in India and South Africa.
var siteEngineers = []typed.Case{
	// Mr Raghavan, site engineer in Karnataka: a bill-of-quantities table with item numbers, merged cells and a header in two rows.
	{File: "gardens/Nandivana Botanical Garden PA system as built.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("AS BUILT")
		p.Put("A1", `
NANDIVANA BOTANICAL GARDEN
PUBLIC ADDRESS SYSTEM (100 V LINE) - AS BUILT STATEMENT|||||||||W.O. NO. NBG/PA/118
|
Sl. No.|Zone|Location|Speaker||Load in watts||Amplifier|Vol. control|
|||Type|Nos.|Tap setting|Total||No.|Rating
1|Zone-1|Main gate|Horn|2|15|30|AMP-01 (125 W)||
2||Ticket counter|Wall mount|3|3|9||VC-01|10 W
3||Cloak room|Wall mount|1|3|3|||
4|Zone-2|Glass house|Column|4|10|40|AMP-02 (125 W)||
5||Bonsai court|Column|2|10|20|||
6||Seminar hall|Ceiling|6|3|18||VC-02|20 W
7|Zone-3|Lotus pond|Horn|4|15|60|AMP-03 (250 W)||
8||Rose garden|Horn|4|15|60|||
9||Nursery office|Ceiling|2|1.5|3||VC-03|5 W
||Grand total||28||243|||
|
CABLE: 2C x 1.5 sq.mm armoured. Zone-1 - 85 mtrs, Zone-2 - 140 mtrs, Zone-3 - 320 mtrs (2C x 2.5 sq.mm).
Prepared by: site engineer          Checked by:
`)
		p.Merge("D4:E4", "F4:G4", "I4:J4", "A4:A5", "B4:B5", "C4:C5", "H4:H5", "B6:B8", "B9:B11", "B12:B14", "H6:H8", "H9:H11", "H12:H14")
		p.Bold("A1", "A2", "A4:J5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("NBG/PA/118", "NANDIVANA BOTANICAL GARDEN", "header in two rows, merged zones and amplifiers with their rating in brackets, cables in a sentence, one of them unlike the others")
		t.Speakers("sheet=AS BUILT; tap_v=100; line_v=100; zone=Zone-1; amplifier=AMP-01", `rows|tag|room|count|tap_w|control
6|1|Main gate|2|15|
7|2|Ticket counter|3|3|VC-01
8|3|Cloak room|1|3|`)
		t.Speakers("sheet=AS BUILT; tap_v=100; line_v=100; zone=Zone-2; amplifier=AMP-02", `rows|tag|room|count|tap_w|control
9|4|Glass house|4|10|
10|5|Bonsai court|2|10|
11|6|Seminar hall|6|3|VC-02`)
		t.Speakers("sheet=AS BUILT; tap_v=100; line_v=100; zone=Zone-3; amplifier=AMP-03", `rows|tag|room|count|tap_w|control
12|7|Lotus pond|4|15|
13|8|Rose garden|4|15|
14|9|Nursery office|2|1.5|VC-03`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP-01|125|42
AMP-02|125|78
AMP-03|250|123`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP-01|125|42
AMP-02|125|78
AMP-03|250|123`)
		t.Controls("", `control|zone|rated_w|load_w
VC-01|Zone-1|10|9
VC-02|Zone-2|20|18
VC-03|Zone-3|5|3`)
		t.Lines("", `zone|length_m|area_mm2
Zone-1|85|1.5
Zone-2|140|1.5
Zone-3|320|2.5`)
		t.Left("AS BUILT", `15|total|grand total`)
	}},

	// Farida, maintenance engineer at a rink in Maharashtra: some ceiling speakers could not be reached, so she leaves the tap open.
	{File: "rinks/Himgiri ice rink speaker audit.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Audit")
		p.Put("A1", `
Himgiri Ice Rink - speaker audit, 100V PA
Maint. ref: HIR-M-052
|
Sr|Location|Found at site|Amp/Ch|Remark
1|Rink hall north|4 nos. horn, tap 15 W|A/1|
2|Rink hall south|4 nos. horn, tap 15 W|A/1|one horn loose, tightened
3|Spectator stand|3 nos. column, tap 10 W|A/2|
4|Entry foyer|4 nos. ceiling, tap 3 W|B/1|through AT-1
5|Shoe counter|2 nos. ceiling, tap 3 W|B/1|through AT-1
6|Corridor GF|5 nos. ceiling, tap not visible|B/1|false ceiling sealed
7|Coach room|1 no. wall, tap 3 W|B/2|through AT-2
8|Music booth|1 no. wall, tap 6 W|B/2|through AT-2
9|Compressor room|1 no. horn, tap 7.5 W|B/2|
|
Amp A: 120 W per ch. Amp B: 60 W per ch.
AT-1 rated 20 W, AT-2 rated 12 W.
Item 6 to be checked at next shutdown.
`)
		p.Bold("A1", "A4:E4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("HIR-M-052", "Himgiri Ice Rink", "number, kind and tap in one cell; controls in the remarks; one tap could not be seen, so a channel is open")
		t.Speakers("sheet=Audit; tap_v=100; line_v=100; amplifier=A", `rows|tag|room|count|tap_w|channel
5|1|Rink hall north|4|15|1
6|2|Rink hall south|4|15|1
7|3|Spectator stand|3|10|2`)
		t.Speakers("sheet=Audit; tap_v=100; line_v=100; amplifier=B", `rows|tag|room|count|tap_w|channel|control
8|4|Entry foyer|4|3|1|AT-1
9|5|Shoe counter|2|3|1|AT-1
10|6|Corridor GF|5||1|
11|7|Coach room|1|3|2|AT-2
12|8|Music booth|1|6|2|AT-2
13|9|Compressor room|1|7.5|2|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w|load_min_w
A|1|120|120|
A|2|120|30|
B|1|60||18
B|2|60|16.5|`)
		t.Amplifiers("", `amplifier|load_w
A|150
B|`)
		t.Controls("", `control|rated_w|load_w
AT-1|20|18
AT-2|12|9`)
		t.Asks("Audit", `10|asked|tap not seen`)
	}},

	// Pieter, sound technician in the Free State: semicolons and decimal commas out of his own database, a gauge of cable per row.
	{File: "riding/export_speakers_Rietvlei.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
job_no;site;spk_id;area;qty;tap_w;line_v;amp;amp_ch;ch_w;vol_ctl;vol_ctl_w;cable_mm2;cable_m;state
0417;Rietvlei Riding Hall;1;Arena long side A;4;15;100;P1;1;120;;;2,5;70;in
0417;Rietvlei Riding Hall;2;Arena long side B;3;15;100;P1;1;120;;;2,5;95;in
0417;Rietvlei Riding Hall;3;Collecting ring;2;7,5;100;P1;2;120;;;2,5;120;in
0417;Rietvlei Riding Hall;4;Stables;6;3;100;P1;2;120;;;1,5;66;in
0417;Rietvlei Riding Hall;5;Grooms' kitchenette;1;1,5;100;P1;2;120;;;1,5;20;out
0417;Rietvlei Riding Hall;6;Judges' box;1;3;100;P2;1;60;VK1;6;1,5;44;in
0417;Rietvlei Riding Hall;7;Members' gallery;4;6;100;P2;1;60;VK2;24;1,5;38;in
0417;Rietvlei Riding Hall;8;Office;2;1,5;100;P2;1;60;VK3;6;1,5;15;in
0417;Rietvlei Riding Hall;9;Vet room;1;1,5;100;P2;1;60;;;1,5;27;planned
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("0417", "Rietvlei Riding Hall", "an export with everything in every row; states in, out and planned; decimal commas")
		t.Speakers("tap_v=100; line_v=100; amplifier=P1; channel=1", `rows|tag|room|count|tap_w
2|1|Arena long side A|4|15
3|2|Arena long side B|3|15`)
		t.Speakers("tap_v=100; line_v=100; amplifier=P1; channel=2", `rows|tag|room|count|tap_w|status
4|3|Collecting ring|2|7.5|installed
5|4|Stables|6|3|installed
6|5|Grooms' kitchenette|1|1.5|removed`)
		t.Speakers("tap_v=100; line_v=100; amplifier=P2; channel=1", `rows|tag|room|count|tap_w|control|status
7|6|Judges' box|1|3|VK1|installed
8|7|Members' gallery|4|6|VK2|installed
9|8|Office|2|1.5|VK3|installed
10|9|Vet room|1|1.5||future`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
P1|1|120|105
P1|2|120|33
P2|1|60|30`)
		t.Amplifiers("", `amplifier|load_w
P1|138
P2|30`)
		t.Controls("", `control|rated_w|load_w
VK1|6|3
VK2|24|24
VK3|6|3`)
		t.Left("", `6|removed|state out
10|future|state planned`)
	}},

	// Nomsa, stage manager of a museum hall in KwaZulu-Natal: 100 V loudspeakers and a pair of low-impedance ones in the same list.
	{File: "museums/Umgeni Museum sound schedule.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Sound schedule")
		p.Put("A1", `
Umgeni Natural History Museum: sound schedule. Our ref UM/SND/3
|
Gallery|Speakers|W per speaker (100 V tap)|Wired to
FOYER: amp 1, one output of 120 W
Entrance|4 ceiling|3|volume control VC 1
Cloakroom|1 ceiling|1.5|direct
Bookshop|2 ceiling|3|volume control VC 2
Ramp|2 wall|6|direct
WHALE HALL: amp 2, one output of 120 W
Floor|6 wall|6|direct
Balcony|4 wall|6|volume control VC 3
Discovery room|3 ceiling|3|volume control VC 4
LECTURE THEATRE: amp 3, stereo, 2 x 150 W into 8 ohm
Stage left|1 full range, 8 ohm|none|direct
Stage right|1 full range, 8 ohm|none|direct
|
Volume controls: VC 1 20 W, VC 2 6 W, VC 3 36 W, VC 4 10 W.
`)
		p.Bold("A3:D3", "A4", "A9", "A13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("UM/SND/3", "Umgeni Natural History Museum", "area titles name amplifier and rating; number and kind in one cell; a stereo pair of 8 ohms is no part of the 100 V lines")
		t.Speakers("sheet=Sound schedule; tap_v=100; line_v=100; zone=FOYER; amplifier=1", `rows|room|count|tap_w|control
5|Entrance|4|3|VC 1
6|Cloakroom|1|1.5|
7|Bookshop|2|3|VC 2
8|Ramp|2|6|`)
		t.Speakers("sheet=Sound schedule; tap_v=100; line_v=100; zone=WHALE HALL; amplifier=2", `rows|room|count|tap_w|control
10|Floor|6|6|
11|Balcony|4|6|VC 3
12|Discovery room|3|3|VC 4`)
		t.Speakers("sheet=Sound schedule; zone=LECTURE THEATRE; low_ohm=8", `rows|room
14|Stage left
15|Stage right`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
1|120|31.5
2|120|69`)
		t.Amplifiers("", `amplifier|rated_w|load_w
1|120|31.5
2|120|69`)
		t.Controls("", `control|rated_w|load_w
VC 1|20|12
VC 2|6|6
VC 3|36|24
VC 4|10|9`)
		t.Left("Sound schedule", `4|title|area and amplifier
9|title|area and amplifier
13|title|area and amplifier`)
	}},
}
