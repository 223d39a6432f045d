package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// errandsGerman are a drawing office, a facility manager and an electrician on a platform.
var errandsGerman = []typed.Case{
	{File: "errands/Bestand/Botanischer Garten Ellerau B-2207.xlsx", Kind: "schedule", Book: func() *excelize.File {
		c := typed.NewBook("Deckblatt")
		c.Put("A1", `
Bestandsunterlagen Beschallung
||
Objekt|Botanischer Garten Ellerau
Auftrag|B-2207
Anlage|100-V-Technik, Gestell GE1 im Besucherhaus
Stand|nach Umbau Palmenhaus
`)
		c.Bold("A1")
		p := c.Sheet("Lautsprecher")
		p.Put("A1", `
Linie|Bereich|Ort|Art|Stk.|Abgriff [W]|Steller
L1|Palmenhaus|Umgang|Säule|4|10|
L1|Palmenhaus|Galerie|Säule|2|10|
L2|Kakteenhaus|Mittelweg|Wand|6|6|LR1
L2|Orchideenhaus|Eingang|Wand|2|6|LR2
L2|Orchideenhaus|Vitrinen|Wand|4|3|LR2
L3|Freigelände|Rosengarten|Pilz|5|6|
L3|Freigelände|Heidehang|Pilz|4|6|
L3|Freigelände|Teich|Pilz|3|6|
L4|Besucherhaus|Kasse|Decke|2|3|LR3
L4|Besucherhaus|Lehrraum|Decke|4|3|LR4
L4|Besucherhaus|WC|Decke|2|1.5|
`)
		p.Bold("A1:G1")
		q := c.Sheet("Verstärker")
		q.Put("A1", `
Linie|Verstärker|Ausgang|Nennleistung
L1|V1|1|120 W
L2|V1|2|120 W
L3|V2|1|120 W
L4|V2|2|60 W
||
Lautstärkesteller|Belastbarkeit
LR1|36 W
LR2|36 W
LR3|12 W
LR4|12 W
`)
		q.Bold("A1:D1", "A7:B7")
		r := c.Sheet("Leitungen")
		r.Put("A1", `
Linie|von|nach|Kabel|Länge m
L1|GE1|Palmenhaus|2 x 2,5 mm²|85
L2|GE1|Kakteenhaus|2 x 2,5 mm²|110
L2|Kakteenhaus|Orchideenhaus|2 x 1,5 mm²|40
L3|GE1|Freigelände|2 x 4 mm²|260
L4|GE1|Besucherhaus|2 x 1,5 mm²|25
`)
		r.Bold("A1:E1")
		return c.File
	}, Truth: func(t *typed.Truth) {
		t.Is("B-2207", "Botanischer Garten Ellerau", "cover sheet, then loudspeakers, outputs and cables joined by line numbers; controls rated in a small table below the amplifiers")
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V1; channel=1; zone=Palmenhaus", `rows|room|count|tap_w
2|Umgang|4|10
3|Galerie|2|10`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V1; channel=2", `rows|zone|room|count|tap_w|control
4|Kakteenhaus|Mittelweg|6|6|LR1
5|Orchideenhaus|Eingang|2|6|LR2
6|Orchideenhaus|Vitrinen|4|3|LR2`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V2; channel=1; zone=Freigelände", `rows|room|count|tap_w
7|Rosengarten|5|6
8|Heidehang|4|6
9|Teich|3|6`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V2; channel=2; zone=Besucherhaus", `rows|room|count|tap_w|control
10|Kasse|2|3|LR3
11|Lehrraum|4|3|LR4
12|WC|2|1.5|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|120|60
V1|2|120|60
V2|1|120|72
V2|2|60|21`)
		t.Amplifiers("", `amplifier|load_w
V1|120
V2|93`)
		t.Controls("", `control|rated_w|load_w
LR1|36|36
LR2|36|24
LR3|12|6
LR4|12|12`)
		t.Lines("note=from-to runs", `line|from|to|length_m|area_mm2
L1|GE1|Palmenhaus|85|2.5
L2|GE1|Kakteenhaus|110|2.5
L2|Kakteenhaus|Orchideenhaus|40|1.5
L3|GE1|Freigelände|260|4
L4|GE1|Besucherhaus|25|1.5`)
	}},

	{File: "errands/Stadtwerke/Hallenbad Quellental ELA.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("ELA")
		p.Put("A1", `
Hallenbad Quellental, ELA-Anlage (100 V)
||
Pos.|Raum|Anzahl|Leistung je Lautsprecher|Gesamt|Verstärker/Kreis|Regler
1|Schwimmhalle Längsseite|6|15 W|90 W|V1/1|
2|Schwimmhalle Sprungturm|2|15 W|30 W|V1/1|
3|Lehrschwimmbecken|4|6 W|24 W|V1/2|R1
4|Planschbecken|3|6 W|18 W|V1/2|R1
5|Umkleide Damen|4|3 W|12 W|V2/1|
6|Umkleide Herren|4|3 W|12 W|V2/1|
7|Sammelumkleide|2|3 W|6 W|V2/1|
8|Eingangshalle|5|3 W|15 W|V2/2|R2
9|Kasse|1|1,5 W|1,5 W|V2/2|R3
10|Technikkeller|2|6 W|12 W|V2/2|
|Summe|33||220,5 W
||
V1: 2 x 240 W, V2: 2 x 60 W
Regler R1 60 W, R2 24 W, R3 6 W
`)
		p.Bold("A1", "A3:G3", "B14:E14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Hallenbad Quellental", "plain; taps with W as text and a decimal comma, output as amplifier/circuit, ratings of outputs and controls in two closing lines")
		t.Speakers("sheet=ELA; tap_v=100; line_v=100; amplifier=V1", `rows|room|count|tap_w|channel|control
4|Schwimmhalle Längsseite|6|15|1|
5|Schwimmhalle Sprungturm|2|15|1|
6|Lehrschwimmbecken|4|6|2|R1
7|Planschbecken|3|6|2|R1`)
		t.Speakers("sheet=ELA; tap_v=100; line_v=100; amplifier=V2", `rows|room|count|tap_w|channel|control
8|Umkleide Damen|4|3|1|
9|Umkleide Herren|4|3|1|
10|Sammelumkleide|2|3|1|
11|Eingangshalle|5|3|2|R2
12|Kasse|1|1.5|2|R3
13|Technikkeller|2|6|2|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|240|120
V1|2|240|42
V2|1|60|30
V2|2|60|28.5`)
		t.Amplifiers("", `amplifier|load_w
V1|162
V2|58.5`)
		t.Controls("", `control|rated_w|load_w
R1|60|42
R2|24|15
R3|6|1.5`)
		t.Left("ELA", `14|total|sum`)
	}},

	{File: "errands/Messung/Bahnhof Kranichsee.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Bahnhof Kranichsee, Beschallung;;;;
Verstärker 250 W, 100-V-Linie, eine Linie;;;;
;;;;
Lautsprecher;Standort;Anzapfung W;gemessen V;Befund
LS 01;Bahnsteig 1 Mast 3;10;98;i. O.
LS 02;Bahnsteig 1 Mast 5;10;98;i. O.
LS 03;Bahnsteig 1 Mast 7;10;97;i. O.
LS 04;Bahnsteig 2 Mast 4;10;97;i. O.
LS 05;Bahnsteig 2 Mast 6;10;97;Gehäuse lose
LS 06;Bahnsteig 2 Mast 8;10;96;i. O.
LS 07;Unterführung Nord;5;;zerstört, ausgebaut, Ersatz nicht vorgesehen
LS 08;Unterführung Süd;5;97;i. O.
LS 09;Warteraum;3;97;mit LS 10 am Wandregler 12 W
LS 10;Warteraum;3;97;mit LS 09 am Wandregler 12 W
LS 11;Schalter;1,5;98;i. O.
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Bahnhof Kranichsee", "CSV of a measuring tour, measured volts beside taps; one output without a name, a control without a name in the remarks, one loudspeaker taken out")
		t.Speakers("tap_v=100; line_v=100", `rows|tag|room|tap_w|note
5|LS 01|Bahnsteig 1 Mast 3|10|
6|LS 02|Bahnsteig 1 Mast 5|10|
7|LS 03|Bahnsteig 1 Mast 7|10|
8|LS 04|Bahnsteig 2 Mast 4|10|
9|LS 05|Bahnsteig 2 Mast 6|10|
10|LS 06|Bahnsteig 2 Mast 8|10|
12|LS 08|Unterführung Süd|5|
13|LS 09|Warteraum|3|unnamed
14|LS 10|Warteraum|3|unnamed
15|LS 11|Schalter|1.5|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
||250|72.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|250|72.5`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|12|6`)
		t.Left("", `11|removed|taken out`)
	}},
}
