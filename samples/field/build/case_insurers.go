package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A facility office, a maintenance firm, a contractor's change order and a test record in English; a caretaker and a planning office in German.
var insurers = []typed.Case{
	{File: "facilities/depot emergency lights.csv", Kind: "not-a-schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Tollgate Bus Depot,,,,,,
Emergency lighting register 2023,,,,,,
Ref,Zone,Location,Fitting,Qty,W each,Circuit
EL01,Z1,Inspection pits,Twin spot,6,10,DB2/L1
EL02,Z1,Wash bay,Bulkhead,4,6,DB2/L1
EL03,Z1,Tyre store,Bulkhead,2,6,DB2/L1
EL04,Z2,Canteen,Downlight,8,3,DB1/L4
EL05,Z2,Locker room,Downlight,4,3,DB1/L4
EL06,Z2,Stairs,Bulkhead,3,6,DB1/L4
EL07,Z2,Offices,Downlight,12,3,DB1/L5
EL08,Z3,Fuel island,Bulkhead,2,10,DB3/L2
EL09,Z3,Yard exit,Exit sign,1,3,DB3/L2
,,,Total,42,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "emergency lighting with zones, quantities and watts; no loudspeaker in it")
	}},

	{File: "service/PA contracts east.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("East")
		p.Put("A1", `
PA service contracts, eastern round (all 100 V line)
||
Contract|Site|Zone|Speakers|Amplifier|Rating|Volume control|Last visit
C-0881|Larkmoor Ice Rink|Ice pad|8 x 15 W|A1|240 W||Feb
C-0881|Larkmoor Ice Rink|Seating|10 x 6 W|A2|120 W|VC1 (100 W)|Feb
C-0881|Larkmoor Ice Rink|Skate hire|4 x 3 W|A3|60 W|VC2 (24 W)|Feb
C-0912|Fennside Stables|Indoor school|6 x 10 W|A1|120 W||Mar
C-0912|Fennside Stables|Stable block|8 x 3 W|A2|60 W|VC1 (36 W)|Mar
C-0940|Quayle Hall|Main hall|6 x 6 W|A1|60 W|VC1 (50 W)|May
C-0940|Quayle Hall|Side rooms|4 x 1.5 W|A1|60 W||May
C-0940|Quayle Hall|Car park|1 x 15 W|A1|60 W||May
`)
		p.Bold("A1", "A3:H3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("C-0881", "Larkmoor Ice Rink", "register of three contracts; amplifiers and controls of the same name in each; count and tap in one cell")
		t.Speakers("sheet=East; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|control
4|Ice pad|8|15|A1|
5|Seating|10|6|A2|VC1
6|Skate hire|4|3|A3|VC2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|240|120
A2|120|60
A3|60|12`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|240|120
A2|120|60
A3|60|12`)
		t.Controls("", `control|rated_w|load_w
VC1|100|60
VC2|24|12`)
		t.Also("C-0912", "Fennside Stables", "second contract of the register")
		t.Speakers("sheet=East; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|control
7|Indoor school|6|10|A1|
8|Stable block|8|3|A2|VC1`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|120|60
A2|60|24`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|120|60
A2|60|24`)
		t.Controls("", `control|rated_w|load_w
VC1|36|24`)
		t.Also("C-0940", "Quayle Hall", "third contract of the register")
		t.Speakers("sheet=East; tap_v=100; line_v=100; amplifier=A1", `rows|zone|count|tap_w|control
9|Main hall|6|6|VC1
10|Side rooms|4|1.5|
11|Car park|1|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|60|57`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|60|57`)
		t.Controls("", `control|rated_w|load_w
VC1|50|36`)
	}},

	{File: "contracts/2217 Hollin Museum CO-2.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("CO-2")
		p.Put("A1", `
Hollin County Museum - Job 2217 - Change Order No. 2
70V speakers. CO-2 work is complete. Blank under CO-2 = no change from contract.
||
||Contract||CO-2
Zone|Room|Qty|Tap (W)|Qty|Tap (W)|Reason
Z1|Lobby|6|4
Z1|Ticketing|1|2||1|too loud at the window
Z2|Gallery 1|4|4|6||two added
Z2|Gallery 2|4|4||2|owner request
Z2|Film Room|2|8|0||omitted, room taken out
Z3|Loading Dock|1|15
Z3|Workshop|0||2|7.5|new under CO-2
||
Zone|Amplifier|Power (W)|Attenuator|Atten. rating (W)
Z1|AMP-1|60
Z2|AMP-2|60|VC-2|50
Z3|AMP-3|60
`)
		p.Merge("C4:D4", "E4:F4")
		p.Bold("A1", "A4:G5", "A14:E14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2217", "Hollin County Museum", "change order done: quantity and tap before and after under a merged header, blank means unchanged, one room omitted, one new")
		t.Speakers("sheet=CO-2; tap_v=70.7; line_v=70.7; zone=Z1; amplifier=AMP-1", `rows|room|count|tap_w
6|Lobby|6|4
7|Ticketing|1|1`)
		t.Speakers("sheet=CO-2; tap_v=70.7; line_v=70.7; zone=Z2; amplifier=AMP-2; control=VC-2", `rows|room|count|tap_w
8|Gallery 1|6|4
9|Gallery 2|4|2`)
		t.Speakers("sheet=CO-2; tap_v=70.7; line_v=70.7; zone=Z3; amplifier=AMP-3", `rows|room|count|tap_w
11|Loading Dock|1|15
12|Workshop|2|7.5`)
		t.Channels("line_v=70.7", `amplifier|rated_w|load_w
AMP-1|60|25
AMP-2|60|32
AMP-3|60|30`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP-1|60|25
AMP-2|60|32
AMP-3|60|30`)
		t.Controls("", `control|zone|rated_w|load_w
VC-2|Z2|50|32`)
		t.Left("CO-2", `10|removed|omitted under CO-2, quantity 0`)
	}},

	{File: "tests/TS-07 line test.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
"Marlcombe Theatre - backstage paging, line test record",,,,,,,,,
Sheet TS-07,,,,,,,,,
"100 V line. Amplifier RACK-A is 4 x 120 W, one line to each output",,,,,,,,,
,,,,,,,,,
Line,Output,Feeds,Speakers,Tapping (W),Load calc (W),Z calc (ohm),Z meas (ohm),Cable run (m),Result
L1,RACK-A/1,Dressing rooms,8,1.5,12,556,545,95,pass
L1,RACK-A/1,Green corridor,4,1.5,6,,,,
L2,RACK-A/2,Stage left,2,6,12,417,404,30,pass
L2,RACK-A/2,Stage right,2,6,12,,,,
L3,RACK-A/3,Scene dock,2,10,20,500,490,60,pass
L4,RACK-A/4,Workshop,3,6,18,476,460,110,pass
L4,RACK-A/4,Wardrobe,1,3,3,,,,
,,,,,,,,,
Z and cable run are for the whole line and written on its first row,,,,,,,,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Marlcombe Theatre", "test record with calculated and measured impedances beside the loads; output written amplifier/number; ratings of outputs in a sentence")
		t.Speakers("tap_v=100; line_v=100; amplifier=RACK-A", `rows|room|count|tap_w|channel
6|Dressing rooms|8|1.5|1
7|Green corridor|4|1.5|1
8|Stage left|2|6|2
9|Stage right|2|6|2
10|Scene dock|2|10|3
11|Workshop|3|6|4
12|Wardrobe|1|3|4`)
		t.Channels("line_v=100; amplifier=RACK-A; rated_w=120", `channel|load_w
1|18
2|24
3|20
4|21`)
		t.Amplifiers("", `amplifier|rated_w|load_w
RACK-A|480|83`)
		t.Lines("note=one length a line, written on its first row", `line|length_m
L1|95
L2|30
L3|60
L4|110`)
	}},

	{File: "hausmeister/ELA Grundschule.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
ELA Grundschule Erlenau;;;;
aufgenommen Herbst 2017;;;;
Zentrale im Sekretariat: 1 Verstärker 240 W, 100-V-Technik;;;;
;;;;
Raum;Stück;Watt je LS;Regler;Bemerkung
Klasse 1a;1;3;LR1;
Klasse 1b;1;3;LR2;
Klasse 2a;1;3;LR3;
Klasse 2b;1;3;LR4;
Musikraum;2;6;LR5;
Lehrerzimmer;1;3;LR6;
Sekretariat;1;1,5;;
Flur EG;4;1,5;;
Flur OG;4;1,5;;einer brummt
Turnhalle;4;10;;Ballschutz
Umkleiden;2;3;;
Keller;0;;;kein Lautsprecher
Pausenhof;2;15;;Druckkammer
;;;;
LR1 bis LR4 und LR6: je 6 W;;;;
LR5: 24 W;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Grundschule Erlenau", "plain; Windows-1252, decimal commas; ratings of a range of controls below; one room without loudspeakers")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|control
6|Klasse 1a|1|3|LR1
7|Klasse 1b|1|3|LR2
8|Klasse 2a|1|3|LR3
9|Klasse 2b|1|3|LR4
10|Musikraum|2|6|LR5
11|Lehrerzimmer|1|3|LR6
12|Sekretariat|1|1.5|
13|Flur EG|4|1.5|
14|Flur OG|4|1.5|
15|Turnhalle|4|10|
16|Umkleiden|2|3|
18|Pausenhof|2|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|116.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|116.5`)
		t.Controls("", `control|rated_w|load_w
LR1|6|3
LR2|6|3
LR3|6|3
LR4|6|3
LR5|24|12
LR6|6|3`)
		t.Left("", `17|none|room without loudspeakers`)
	}},

	{File: "planung/2019-44 Raumbuch ELA.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Raumbuch")
		p.Put("A1", `
Botanischer Garten Weidrichshain|||||||Projekt 2019-44
Raumbuch Beschallung, Ausführungsplanung, Index b
||
Bereich|Raum-Nr.|Raum|LS-Typ|Anz.|P / LS [W]|Linie|Regler
Palmenhaus|A.01|Palmenhalle|Tonsäule|6|10|L1
Palmenhaus|A.02|Galerie|Wand-LS|4|6|L1
Sukkulentenhaus|B.01|Schauraum|Wand-LS|6|6|L2|
Sukkulentenhaus|B.02|Anzucht|Wand-LS|2|3|L2|
Eingangsgebäude|C.01|Kasse|Decken-LS|1|1.5|L3|R1
Eingangsgebäude|C.02|Foyer|Decken-LS|8|3|L3|
Eingangsgebäude|C.03|Seminarraum|Decken-LS|4|6|L3|R2
Eingangsgebäude|C.04|WC|Decken-LS|2|1.5|L3|
Freigelände|D.01|Rosengarten|Pilz-LS|8|10|L4|
Freigelände|D.02|Arboretum|Pilz-LS|5|10|L4|
`)
		p.Bold("A1", "A4:H4")
		q := p.Sheet("Linien")
		q.Put("A1", `
Linie|Verstärker|Ausgang|P nenn [W]|U [V]|Kabel|Länge [m]
L1|V1|1|120|100|NYM-J 3x1,5|80
L2|V1|2|120|100|NYM-J 3x1,5|115
L3|V2|1|120|100|NYM-J 3x1,5|60
L4|V2|2|120|100|NYY-J 3x2,5|340
`)
		q.Bold("A1:G1")
		r := p.Sheet("Regler")
		r.Put("A1", `
Regler|Einbauort|P max [W]
R1|C.01 neben Tür|5
R2|C.03 Medienschrank|35
`)
		r.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2019-44", "Botanischer Garten Weidrichshain", "three sheets joined by line and control; one output is overloaded")
		t.Revision("b", false)
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; zone=Palmenhaus; amplifier=V1; channel=1", `rows|room|count|tap_w
5|Palmenhalle|6|10
6|Galerie|4|6`)
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; zone=Sukkulentenhaus; amplifier=V1; channel=2", `rows|room|count|tap_w
7|Schauraum|6|6
8|Anzucht|2|3`)
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; zone=Eingangsgebäude; amplifier=V2; channel=1", `rows|room|count|tap_w|control
9|Kasse|1|1.5|R1
10|Foyer|8|3|
11|Seminarraum|4|6|R2
12|WC|2|1.5|`)
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; zone=Freigelände; amplifier=V2; channel=2; tap_w=10", `rows|room|count
13|Rosengarten|8
14|Arboretum|5`)
		t.Channels("line_v=100; rated_w=120", `amplifier|channel|load_w
V1|1|84
V1|2|42
V2|1|52.5
V2|2|130`)
		t.Amplifiers("rated_w=240", `amplifier|load_w
V1|126
V2|182.5`)
		t.Controls("", `control|rated_w|load_w
R1|5|1.5
R2|35|24`)
		t.Lines("note=one length a line", `line|length_m|area_mm2
L1|80|1.5
L2|115|1.5
L3|60|1.5
L4|340|2.5`)
	}},
}
