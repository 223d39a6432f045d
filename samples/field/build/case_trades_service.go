package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// tradesService are a commissioning engineer, a project manager and a caretaker in English; a drawing office, a rack builder and a maintenance man in German.
var tradesService = []typed.Case{
	// A commissioning engineer hands over a swimming pool: what hangs on each line, and what was measured.
	{File: "commissioning/Asherby Baths line tests.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("1 Loudspeakers")
		p.Put("A1", `
Asherby Baths, contract 20417. Commissioning record, part 1
||
Line|Location|Type|Qty|Tap (W)|Load (W)
L1|Main pool, north wall|column|4|15|60
L1|Main pool, south wall|column|4|15|60
L2|Learner pool|column|3|10|30
L2|Diving pit|column|2|10|20
L3|Changing village|ceiling|12|1.5|18
L3|Showers|ceiling, sealed|6|1.5|9
L4|Reception|ceiling|4|3|12
L4|Offices|ceiling|3|3|9
L4|Staff room|ceiling|1|3|3
L5|Plant basement|horn|3|10|30
|||42||251
`)
		p.Bold("A1", "A3:F3")
		q := p.Sheet("2 Line tests")
		q.Put("A1", `
Asherby Baths, contract 20417. Commissioning record, part 2
All lines 100 V. Impedance at 1 kHz, amplifier disconnected
||
Line|Amplifier|Output|Output rating (W)|Volume control|Design load (W)|Impedance (ohm)|Load by impedance (W)|Result
L1|PA1|1|240|none|120|82|122|Pass
L2|PA1|2|120|VC1, 60 W|50|198|50.5|Pass
L3|PA2|1|60|VC2, 36 W|27|362|27.6|Pass
L4|PA2|2|60|VC3, 36 W|24|410|24.4|Pass
L5|PA2|3|60|none|30|323|31|Pass
`)
		q.Bold("A1", "A4:I4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("20417", "Asherby Baths", "test record: loudspeakers by line on one sheet, amplifiers, controls and measured values on another")
		t.Speakers("sheet=1 Loudspeakers; tap_v=100; line_v=100; amplifier=PA1; channel=1", `rows|room|count|tap_w
4|Main pool, north wall|4|15
5|Main pool, south wall|4|15`)
		t.Speakers("sheet=1 Loudspeakers; tap_v=100; line_v=100; amplifier=PA1; channel=2; control=VC1", `rows|room|count|tap_w
6|Learner pool|3|10
7|Diving pit|2|10`)
		t.Speakers("sheet=1 Loudspeakers; tap_v=100; line_v=100; amplifier=PA2; channel=1; control=VC2", `rows|room|count|tap_w
8|Changing village|12|1.5
9|Showers|6|1.5`)
		t.Speakers("sheet=1 Loudspeakers; tap_v=100; line_v=100; amplifier=PA2; channel=2; control=VC3", `rows|room|count|tap_w
10|Reception|4|3
11|Offices|3|3
12|Staff room|1|3`)
		t.Speakers("sheet=1 Loudspeakers; tap_v=100; line_v=100; amplifier=PA2; channel=3", `rows|room|count|tap_w
13|Plant basement|3|10`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
PA1|1|240|120
PA1|2|120|50
PA2|1|60|27
PA2|2|60|24
PA2|3|60|30`)
		t.Amplifiers("", `amplifier|load_w
PA1|170
PA2|81`)
		t.Controls("", `control|rated_w|load_w
VC1|60|50
VC2|36|27
VC3|36|24`)
		t.Left("1 Loudspeakers", `14|total|sums`)
	}},

	// A project manager closes a change order: what was there before, and how it was left.
	{File: "changes/CO-07 Aldmere School as left.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("CO-07")
		p.Put("A1", `
Aldmere School, hall block. Change order CO-07, as left 14 March
||
Location|Before||As left||Volume control|Amp channel
|Qty|Tap W|Qty|Tap W||
Assembly hall|4|10|6|10||A1.1
Stage|2|10|2|6|VC5|A1.1
Gallery|0||2|6||A1.1
Music room 1|2|6|2|3|VC6|A1.2
Music room 2|2|6|2|3|VC7|A1.2
Practice rooms|0||4|1.5||A1.2
Corridor|3|3|3|1.5||A1.2
Cloakroom|2|3|0||removed|
Playground|1|15|2|15||A1.3
Bicycle shed|1|15|0||removed|
||
VC5 is 24 W, VC6 and VC7 are 12 W each.
A1 gives 120 W on each of its three channels, 100 V line.
`)
		p.Merge("A3:A4", "B3:C3", "D3:E3", "F3:F4", "G3:G4")
		p.Bold("A1", "A3:G4")
		p.Colour("DDDDDD", "B5:C14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Aldmere School", "before and as left side by side under a head of two rows; ratings in sentences below; two places where nothing is left")
		t.Speakers("sheet=CO-07; tap_v=100; line_v=100; amplifier=A1", `rows|room|count|tap_w|control|channel
5|Assembly hall|6|10||1
6|Stage|2|6|VC5|1
7|Gallery|2|6||1
8|Music room 1|2|3|VC6|2
9|Music room 2|2|3|VC7|2
10|Practice rooms|4|1.5||2
11|Corridor|3|1.5||2
13|Playground|2|15||3`)
		t.Channels("line_v=100; amplifier=A1", `channel|rated_w|load_w
1|120|84
2|120|22.5
3|120|30`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|360|136.5`)
		t.Controls("", `control|rated_w|load_w
VC5|24|12
VC6|12|6
VC7|12|6`)
		t.Left("CO-07", `12|removed|nothing left
14|removed|nothing left`)
	}},

	// A caretaker of a corn hall writes down for the one who comes after what hangs on each output; no heads, only lines.
	{File: "corn hall/speakers floor by floor.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Speakers")
		p.Put("A1", `
Wexholt Corn Hall: speakers, floor by floor
The amplifier is in the cupboard behind the ticket office. Four outputs of 60 W each, 100 V line
||
GROUND FLOOR, output 1
Ticket office|1 ceiling|3 W
Entrance|4 ceiling|3 W
Cloakroom|2 ceiling|1.5 W
Passage to yard|1 horn|10 W
||
HALL, output 2
Floor of the hall|6 wall|6 W|on the 60 W volume control by the stage door
Under balcony|4 wall|3 W|on the same volume control
||
FIRST FLOOR, output 3
Balcony|4 wall|6 W
Committee room|2 ceiling|3 W|own volume control, 12 W
Records room|1 ceiling|1.5 W
||
BACKSTAGE, output 4
Dressing room A|1 ceiling|1.5 W
Dressing room B|1 ceiling|1.5 W
Scene dock|2 horn|10 W
Stairs|2 ceiling|1.5 W|one of them at the top landing
`)
		p.Bold("A1", "A4", "A10", "A14", "A19")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Wexholt Corn Hall", "no column heads; titles carry area and output of an amplifier without a name; unnamed controls in remarks, one for two rows")
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; zone=GROUND FLOOR; channel=1; note=floor as zone", `rows|room|count|tap_w
5|Ticket office|1|3
6|Entrance|4|3
7|Cloakroom|2|1.5
8|Passage to yard|1|10`)
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; zone=HALL; channel=2; note=unnamed, area as zone", `rows|room|count|tap_w
11|Floor of the hall|6|6
12|Under balcony|4|3`)
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; zone=FIRST FLOOR; channel=3", `rows|room|count|tap_w|note
15|Balcony|4|6|floor as zone
16|Committee room|2|3|unnamed, floor as zone
17|Records room|1|1.5|floor as zone`)
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; zone=BACKSTAGE; channel=4; note=area as zone", `rows|room|count|tap_w
20|Dressing room A|1|1.5
21|Dressing room B|1|1.5
22|Scene dock|2|10
23|Stairs|2|1.5`)
		t.Channels("line_v=100", `channel|rated_w|load_w
1|60|28
2|60|48
3|60|31.5
4|60|26`)
		t.Amplifiers("", `amplifier|load_w
|133.5`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|60|48
|12|6`)
	}},

	// Ein Zeichenbüro führt Lautsprecher, Linien, Steller und Kabel in vier Blättern mit Nummern.
	{File: "planung/Erlenried Beschallung.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Lautsprecher")
		p.Put("A1", `
Botanischer Garten Erlenried, Projekt 5120
||
LS-Nr.|Standort|Bauart|Anzapfung W|Linie
LS01|Palmenhaus|Tonsäule|10|L1
LS02|Palmenhaus|Tonsäule|10|L1
LS03|Palmenhaus|Tonsäule|10|L1
LS04|Palmenhaus|Tonsäule|10|L1
LS05|Sukkulentenhaus|Wandgehäuse|6|L2
LS06|Sukkulentenhaus|Wandgehäuse|6|L2
LS07|Sukkulentenhaus|Wandgehäuse|6|L2
LS08|Sukkulentenhaus|Wandgehäuse|6|L2
LS09|Eingang|Decke|3|L3
LS10|Eingang|Decke|3|L3
LS11|Kasse|Decke|3|L3
LS12|Seminarraum|Decke|3|L3
LS13|Seminarraum|Decke|3|L3
`)
		p.Bold("A1", "A3:E3")
		q := p.Sheet("Linien")
		q.Put("A1", `
Linie|Verstärker|Ausgang|Leistung W|Spannung|Last W
L1|V1|1|120|100 V|40
L2|V1|2|120|100 V|24
L3|V2|1|60|100 V|15
`)
		q.Bold("A1:F1")
		r := p.Sheet("Steller")
		r.Put("A1", `
Steller|Belastbarkeit W|wirkt auf
ST1|60|LS05 bis LS08
ST2|24|LS12 und LS13
`)
		r.Bold("A1:C1")
		s := p.Sheet("Kabel")
		s.Put("A1", `
Kabel|von|nach|Querschnitt mm²|Länge m
K01|V1.1|LS01|2.5|65
K02|LS01|LS02|2.5|14
K03|LS02|LS03|2.5|14
K04|LS03|LS04|2.5|14
K05|V1.2|ST1|1.5|48
K06|ST1|LS05|1.5|6.5
K07|LS05|LS06|1.5|11
K08|LS06|LS07|1.5|11
K09|LS07|LS08|1.5|11
K10|V2.1|LS09|1.5|22
K11|LS09|LS10|1.5|8
K12|LS10|LS11|1.5|9.5
K13|LS11|ST2|1.5|17.5
K14|ST2|LS12|1.5|5
K15|LS12|LS13|1.5|4.5
`)
		s.Bold("A1:E1")
		s.Format("0.0", "D2:E16")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5120", "Botanischer Garten Erlenried", "four sheets joined by tags: loudspeakers, lines, controls with what they act on, cable runs")
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V1; channel=1", `rows|tag|room|tap_w
4..7|LS01..|Palmenhaus|10`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V1; channel=2; control=ST1", `rows|tag|room|tap_w
8..11|LS05..|Sukkulentenhaus|6`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V2; channel=1", `rows|tag|room|tap_w|control
12..13|LS09..|Eingang|3|
14|LS11|Kasse|3|
15..16|LS12..|Seminarraum|3|ST2`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|120|40
V1|2|120|24
V2|1|60|15`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1||64
V2|60|15`)
		t.Controls("", `control|rated_w|load_w
ST1|60|24
ST2|24|6`)
		t.Lines("note=from-to", `line|from|to|area_mm2|length_m
K01|V1.1|LS01|2.5|65
K02|LS01|LS02|2.5|14
K03|LS02|LS03|2.5|14
K04|LS03|LS04|2.5|14
K05|V1.2|ST1|1.5|48
K06|ST1|LS05|1.5|6.5
K07|LS05|LS06|1.5|11
K08|LS06|LS07|1.5|11
K09|LS07|LS08|1.5|11
K10|V2.1|LS09|1.5|22
K11|LS09|LS10|1.5|8
K12|LS10|LS11|1.5|9.5
K13|LS11|ST2|1.5|17.5
K14|ST2|LS12|1.5|5
K15|LS12|LS13|1.5|4.5`)
	}},

	// Ein Schrankbauer übergibt den Schrank eines Theaters: Höheneinheiten, Geräte, Ausgänge und was daran hängt.
	{File: "schrankbau/Lindrode Schrankbelegung.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Schrank")
		p.Put("A1", `
Stadttheater Lindrode, ELA-Schrank im Dimmerraum, Auftrag S-233
Alle Ausgänge 100 V
||
HE|Gerät|Ausgang|Nennleistung|Bereich|Lautsprecher|Anzapfung|Last
'40|Lüftereinheit
38-39|Verstärker V1|1|240 W|Zuschauerraum|8|15 W|120 W
||2|240 W|Rang|8|10 W|80 W
36-37|Verstärker V2|1|120 W|Foyer EG|10|3 W|30 W
||2|120 W|Foyer OG|8|3 W|24 W
34-35|Verstärker V3|1|60 W|Garderoben|12|1,5 W|18 W
||2|60 W|Werkstatt|4|6 W|24 W
||3|60 W|nicht belegt
||4|60 W|Ladehof|2|10 W|20 W
'33|Blindplatte
31-32|Durchsagegerät
'30|Netzverteilung
||
Regler|Ort|Belastbarkeit|wirkt auf
R1|Kasse|60 W|Foyer EG
R2|Treppe OG|36 W|Foyer OG
R3|Inspizientenpult|36 W|Garderoben
`)
		p.Merge("A6:A7", "B6:B7", "A8:A9", "B8:B9", "A10:A13", "B10:B13")
		p.Bold("A1", "A4:H4", "A18:D18")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("S-233", "Stadttheater Lindrode", "rack list by height units with merged frames, other devices between, one free output; controls in a second table by area")
		t.Speakers("sheet=Schrank; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|channel|control
6|Zuschauerraum|8|15|V1|1|
7|Rang|8|10|V1|2|
8|Foyer EG|10|3|V2|1|R1
9|Foyer OG|8|3|V2|2|R2
10|Garderoben|12|1.5|V3|1|R3
11|Werkstatt|4|6|V3|2|
13|Ladehof|2|10|V3|4|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|240|120
V1|2|240|80
V2|1|120|30
V2|2|120|24
V3|1|60|18
V3|2|60|24
V3|3|60|0
V3|4|60|20`)
		t.Amplifiers("", `amplifier|load_w
V1|200
V2|54
V3|62`)
		t.Controls("", `control|zone|rated_w|load_w
R1|Foyer EG|60|30
R2|Foyer OG|36|24
R3|Garderoben|36|18`)
		t.Left("Schrank", `5|other|fans
12|other|free output
14|other|blank plate
15|other|announcement unit
16|other|mains`)
	}},

	// Der Techniker einer Wartungsfirma war zur Jahreswartung in der Eishalle; der Verstärker hat keinen Namen, nur Kreise.
	{File: "wartung/2023-118 Eishalle.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Wartungsprotokoll 2023-118;Eishalle Kaltenweiher;;;;
Verstärker im Regieraum, 4 Kreise zu je 120 W, 100 V;;;;;
;;;;;
Kreis;Standort;Stück;Bauart;Abgriff;Befund
1;Eisfläche Nord;4;Horn;10 W;i. O.
1;Eisfläche Süd;4;Horn;10 W;i. O.
2;Tribüne;6;Tonsäule;10 W;i. O., eine Halterung nachgezogen
2;Sprecherkabine;1;Einbau;3 W;Regler R1 (6 W) schwergängig, gereinigt
3;Kabinengang;5;Einbau;1,5 W;i. O.
3;Kabine Heim;2;Einbau;3 W;i. O.
3;Kabine Gast;2;Einbau;3 W;Abdeckung fehlt, spielt
3;Schiedsrichter;1;Einbau;3 W;bei Umbau demontiert
4;Parkplatz;2;Horn;15 W;i. O.
4;Maschinenhaus;1;Horn;15 W;i. O.
-;Lager Regieraum;2;Einbau;3 W;Reserve, nicht angeschlossen
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Eishalle Kaltenweiher", "plain maintenance record in Windows-1252: states in the findings, circuits of an amplifier without a name, one control in a finding")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|channel|control
5|Eisfläche Nord|4|10|1|
6|Eisfläche Süd|4|10|1|
7|Tribüne|6|10|2|
8|Sprecherkabine|1|3|2|R1
9|Kabinengang|5|1.5|3|
10|Kabine Heim|2|3|3|
11|Kabine Gast|2|3|3|
13|Parkplatz|2|15|4|
14|Maschinenhaus|1|15|4|`)
		t.Channels("line_v=100", `channel|rated_w|load_w
1|120|80
2|120|63
3|120|19.5
4|120|45`)
		t.Amplifiers("", `amplifier|load_w
|207.5`)
		t.Controls("", `control|rated_w|load_w
R1|6|3`)
		t.Left("", `12|removed|taken down
15|spare|not connected`)
	}},
}
