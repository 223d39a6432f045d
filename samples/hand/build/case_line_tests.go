package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

func lineTests() []typed.Case {
	return []typed.Case{
		{File: "Ellerby/L01-017 loudspeakers issue A.csv", Kind: "schedule", Bytes: plain(`
Ellerby Walled Garden,,,,,,
Job no. L01-017,,,,,,
Issue A,,,,,,
100 volt line,,,,,,
Ref,Where,Kind,Qty,Watts tapped,Amp output,Remarks
1,Vine house,column,3,6,1,
2,Peach house,column,2,6,1,
3,Gatehouse,ceiling,3,3,1,
4,Orchard,horn,4,15,2,
5,Bothy,wall box,1,3,1,
Output 1 rated 60 W,,,,,,
Output 2 rated 120 W,,,,,,
`), Truth: func(t *typed.Truth) {
			t.Is("L01-017", "Ellerby Walled Garden", "the first issue of a list, replaced by issue C; outputs rated in two lines below")
			t.Revision("A", true)
			t.Speakers("tap_v=100; line_v=100", `
rows|tag|room|model|count|tap_w|channel
6|1|Vine house|column|3|6|1
7|2|Peach house|column|2|6|1
8|3|Gatehouse|ceiling|3|3|1
9|4|Orchard|horn|4|15|2
10|5|Bothy|wall box|1|3|1
`)
			t.Channels("line_v=100", "channel|rated_w|load_w\n1|60|42\n2|120|60")
		}},

		{File: "Ellerby/L01-017 loudspeakers issue C.csv", Kind: "schedule", Bytes: plain(`
Ellerby Walled Garden,,,,,,
Job no. L01-017,,,,,,
Issue C,,,,,,
100 volt line,,,,,,
Ref,Where,Kind,Qty,Watts tapped,Amp output,Remarks
1,Vine house,column,3,6,1,
2,Peach house,column,3,6,1,one added
3,Gatehouse,ceiling,3,3,1,
4,Orchard,horn,5,15,2,one added
5,Bothy,wall box,1,1.5,1,
Output 1 rated 60 W,,,,,,
Output 2 rated 120 W,,,,,,
`), Truth: func(t *typed.Truth) {
			t.Is("L01-017", "Ellerby Walled Garden", "the last issue of a list; outputs rated in two lines below")
			t.Revision("C", false)
			t.Speakers("tap_v=100; line_v=100", `
rows|tag|room|model|count|tap_w|channel
6|1|Vine house|column|3|6|1
7|2|Peach house|column|3|6|1
8|3|Gatehouse|ceiling|3|3|1
9|4|Orchard|horn|5|15|2
10|5|Bothy|wall box|1|1.5|1
`)
			t.Channels("line_v=100", "channel|rated_w|load_w\n1|60|46.5\n2|120|75")
		}},

		{File: "office/closed jobs 2009.xlsx", Kind: "schedule", Book: book("L09-004", `
Job|L09-004|||
Site|Thornbeck Ice Rink, juniors' hall|||
Amplifier|1 output, 120 W, 100 V line|||

Speaker|Where|How many|Tapped|Total
Column|Hall|6|10 W|60 W
Ceiling|Lobby|4|3 W|12 W
Ceiling|Changing|4|1.5 W|6 W
`, bold("A5:E5"), and("L09-011", `
Job|L09-011|||
Site|Marl Quay Boathouse, new store|||
Amplifier|1 output, 60 W, 100 V line|||

Speaker|Where|How many|Tapped|Total
Horn|Hardstanding|3|15 W|45 W
Cabinet|Store|2|6 W|12 W
`, bold("A5:E5")), and("L09-019", `
Job|L09-019|||
Site|Ottermoor Planetarium, school wing|||
Amplifier|1 output, 60 W, 100 V line|||

Speaker|Where|How many|Tapped|Total
Ceiling|Classroom A|4|3 W|12 W
Ceiling|Classroom B|4|3 W|12 W
Ceiling|Corridor|5|1.5 W|7.5 W
Cabinet|Packed-lunch hall|2|6 W|12 W
`, bold("A5:E5"))), Truth: func(t *typed.Truth) {
			t.Is("L09-004", "Thornbeck Ice Rink", "one sheet a job, three jobs; one amplifier with one output each, named in a title line")
			common := "tap_v=100; line_v=100; sheet="
			t.Speakers(common+"L09-004", "rows|room|model|count|tap_w\n6|Hall|Column|6|10\n7|Lobby|Ceiling|4|3\n8|Changing|Ceiling|4|1.5")
			t.Channels("line_v=100", "rated_w|load_w\n120|78")
			t.Also("L09-011", "Marl Quay Boathouse", "second sheet")
			t.Speakers(common+"L09-011", "rows|room|model|count|tap_w\n6|Hardstanding|Horn|3|15\n7|Store|Cabinet|2|6")
			t.Channels("line_v=100", "rated_w|load_w\n60|57")
			t.Also("L09-019", "Ottermoor Planetarium", "third sheet")
			t.Speakers(common+"L09-019", "rows|room|model|count|tap_w\n6|Classroom A|Ceiling|4|3\n7|Classroom B|Ceiling|4|3\n8|Corridor|Ceiling|5|1.5\n9|Packed-lunch hall|Cabinet|2|6")
			t.Channels("line_v=100", "rated_w|load_w\n60|43.5")
		}},

		{File: "Marl Quay/retained and new loudspeakers.xlsx", Kind: "schedule", Book: book("List", `
Marl Quay Boathouse||||||
New amplifier rack, 100 V lines. Units marked "old" stay up from the imported 70 V system.||||||

No.|Position|Unit|Qty|Tap (as the label says)|Amp output|Output rating
1|Boat bays|Horn, old|4|7.5 W @ 70 V|1|120 W
2|Slip, north|Horn, new|2|15 W @ 100 V|1|120 W
3|Changing|Ceiling, new|4|3 W @ 100 V|2|60 W
4|Gym|Cabinet, old|3|5 W @ 70 V|2|60 W
5|Stairs|Ceiling, new|2|1.5 W @ 100 V|2|60 W
`, bold("A1", "A4:G4")), Truth: func(t *typed.Truth) {
			t.Is("", "Marl Quay Boathouse", "70 V taps kept on a 100 V line, each tap with its own voltage")
			t.Speakers("line_v=100; sheet=List", `
rows|tag|room|model|count|tap_w|tap_v|channel
5|1|Boat bays|Horn, old|4|7.5|70.7|1
6|2|Slip, north|Horn, new|2|15|100|1
7|3|Changing|Ceiling, new|4|3|100|2
8|4|Gym|Cabinet, old|3|5|70.7|2
9|5|Stairs|Ceiling, new|2|1.5|100|2
`)
			t.Channels("line_v=100", "channel|rated_w|load_w|note\n1|120|90|60 + 30\n2|60|45|12 + 30 + 3")
		}},

		{File: "Ottermoor/dome and foyer loudspeakers.xlsx", Kind: "schedule", Book: book("Loudspeakers", `
OTTERMOOR PLANETARIUM|||||||
Loudspeakers, dome show system and public address|||||||
Project|OP-2013/4||||||

Ref|Position|Type|Qty|Feed|Set to|Amp|Output
DL1|Dome, left|Two-way|2|8 ohm|-|D1|1
DL2|Dome, right|Two-way|2|8 ohm|-|D1|2
DL3|Dome, rear|Two-way|2|8 ohm|-|D2|1
PF1|Foyer|Ceiling 165 mm|8|100 V|3 W|P1|1
PF2|Box office|Ceiling 165 mm|2|100 V|1.5 W|P1|1
PF3|Stairs|Ceiling 165 mm|4|100 V|3 W|P1|1
PX1|Exhibition|Cabinet|10|100 V|6 W|P1|2
PX2|Model room|Cabinet|3|100 V|6 W|P1|2
PR1|Roof deck|Horn|2|100 V|15 W|P1|3

Amp|Output|Rating
D1|1|300 W / 8 ohm
D1|2|300 W / 8 ohm
D2|1|300 W / 8 ohm
P1|1|60 W / 100 V
P1|2|120 W / 100 V
P1|3|60 W / 100 V
`, bold("A1", "A5:H5", "A16:C16")), Truth: func(t *typed.Truth) {
			t.Is("OP-2013/4", "Ottermoor Planetarium", "low-impedance loudspeakers of the dome beside 100 V ones; ratings with their load or voltage")
			t.Speakers("sheet=Loudspeakers; low_ohm=8", `
rows|tag|room|model|count|amplifier|channel
6|DL1|Dome, left|Two-way|2|D1|1
7|DL2|Dome, right|Two-way|2|D1|2
8|DL3|Dome, rear|Two-way|2|D2|1
`)
			t.Speakers("tap_v=100; line_v=100; sheet=Loudspeakers; amplifier=P1", `
rows|tag|room|model|count|tap_w|channel
9|PF1|Foyer|Ceiling 165 mm|8|3|1
10|PF2|Box office|Ceiling 165 mm|2|1.5|1
11|PF3|Stairs|Ceiling 165 mm|4|3|1
12|PX1|Exhibition|Cabinet|10|6|2
13|PX2|Model room|Cabinet|3|6|2
14|PR1|Roof deck|Horn|2|15|3
`)
			t.Channels("", `
amplifier|channel|line_v|rated_w|load_w|note
D1|1||||8 ohm
D1|2||||8 ohm
D2|1||||8 ohm
P1|1|100|60|39|
P1|2|100|120|78|
P1|3|100|60|30|
`)
			t.Amplifiers("amplifier=P1", "rated_w|load_w\n240|147")
		}},

		{File: "Thornbeck/PA line test 2020.xlsx", Kind: "schedule", Book: book("Line test", `
Thornbeck Ice Rink||||||||
Annual test of loudspeaker lines, 100 V||||||||
Tested on|14 January 2020|||||||
Meter|impedance bridge at 1 kHz|||||||

Line|Area|LS on line|Tap, each (W)|Design load (W)|Amp / output|Output (W)|Measured (ohm)|Result
1|Ice pad|6|30|180|A / 1|300|54|pass
2|Seating|10|10|100|A / 2|120|97|pass
3|Foyer|4|6|24|B / 1|60|410|pass
4|Changing rooms|12|1.5|18|B / 2|60|540|pass
5|Curling hall|6|20|120|C / 1|120|82|pass
6|Plant|1|15|15|C / 2|60|open circuit|FAIL - reported
`, bold("A1:A2", "A6:I6")), Truth: func(t *typed.Truth) {
			t.Is("", "Thornbeck Ice Rink", "plain: a line test sheet of a facility team, one row a line with measured impedance")
			t.Speakers("tap_v=100; line_v=100; sheet=Line test; note=the line as a section for a zone is as good", `
rows|room|count|tap_w|amplifier|channel
7|Ice pad|6|30|A|1
8|Seating|10|10|A|2
9|Foyer|4|6|B|1
10|Changing rooms|12|1.5|B|2
11|Curling hall|6|20|C|1
12|Plant|1|15|C|2
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
A|1|300|180
A|2|120|100
B|1|60|24
B|2|60|18
C|1|120|120
C|2|60|15
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nA|420|280\nB|120|42\nC|180|135")
		}},

		{File: "Saltgrass/AV601 loudspeaker schedule.xlsx", Kind: "schedule", Book: book("AV601", `
LOUDSPEAKER SCHEDULE||||||||
SALTGRASS BOTANICAL GARDEN - EDUCATION CENTER||||||||
||||||||
MARK|LOCATION||LOUDSPEAKER|||CIRCUIT||
|ROOM|ROOM|TYPE|QTY|TAP|ZONE|AMP|CH
|NO.|NAME|||(W)|||
LS-1|E101|VESTIBULE|CEILING|2|2.5|1|A-1|1
LS-2|E102|LOBBY|CEILING|8|5|1|A-1|1
LS-3|E103|CLASSROOM|CEILING|4|5|2|A-1|2
LS-4|E104|CLASSROOM|CEILING|4|5|3|A-1|3
LS-5|E105|LAB|SURFACE|4|5|4|A-1|4
LS-6|E106|CORRIDOR|CEILING|6|2.5|1|A-1|1
LS-7|E107|WORKROOM|CEILING|2|1.25|5|A-2|1
LS-8|E201|OFFICES|CEILING|9|1.25|5|A-2|1
LS-9|EXT|COURTYARD|HORN|4|15|6|A-2|2

NOTES:
1. ALL LOUDSPEAKERS 70V.
2. A-1: 4 CH, 200 W/CH @ 70V. A-2: 2 CH, 125 W/CH @ 70V.
3. PROVIDE 20% SPARE CAPACITY ON EACH CHANNEL.
`, bold("A1:A2", "A4:I6"), merged("A4:A6", "B4:C4", "D4:F4", "G4:I4")), Truth: func(t *typed.Truth) {
			t.Is("", "Saltgrass Botanical Garden", "plain: three header rows with merged group headings; ratings in a note")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=AV601", `
rows|tag|room|model|count|tap_w|zone|amplifier|channel
7|LS-1|VESTIBULE|CEILING|2|2.5|1|A-1|1
8|LS-2|LOBBY|CEILING|8|5|1|A-1|1
9|LS-3|CLASSROOM|CEILING|4|5|2|A-1|2
10|LS-4|CLASSROOM|CEILING|4|5|3|A-1|3
11|LS-5|LAB|SURFACE|4|5|4|A-1|4
12|LS-6|CORRIDOR|CEILING|6|2.5|1|A-1|1
13|LS-7|WORKROOM|CEILING|2|1.25|5|A-2|1
14|LS-8|OFFICES|CEILING|9|1.25|5|A-2|1
15|LS-9|COURTYARD|HORN|4|15|6|A-2|2
`)
			t.Channels("line_v=70.7", `
amplifier|channel|rated_w|load_w
A-1|1|200|60
A-1|2|200|20
A-1|3|200|20
A-1|4|200|20
A-2|1|125|13.75
A-2|2|125|60
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nA-1|800|120\nA-2|250|73.75")
		}},

		{File: "Vallefredda/sostituzione diffusori 2018.csv", Kind: "schedule", Bytes: ansi(`
Palaghiaccio Vallefredda - sostituzione diffusori;;;;;;;
Commessa 2018/033;;;;;;;
Linea 100 V;;;;;;;
;;;;;;;
Rif.;Locale;Diffusore nuovo;Q.tà;W impostati;Zona;Finale;Note
1;Atrio;incasso 20 cm;6;3;A;F1-1;
2;Biglietteria;incasso 20 cm;2;1,5;A;F1-1;
3;Spogliatoi;incasso IP54;10;1,5;B;F1-2;
4;Corridoio atleti;incasso 20 cm;5;1,5;B;F1-2;
5;Pista;tromba bidirezionale;8;20;C;F2-1;
6;Gradinate;colonna;8;10;D;F2-2;
7;Sala stampa;incasso 20 cm;4;3;D;F2-2;
;;Totale;43;;;;
;;;;;;;
Finale;Potenza (W);;;;;;
F1-1;120;;;;;;
F1-2;120;;;;;;
F2-1;240;;;;;;
F2-2;240;;;;;;
`), Truth: func(t *typed.Truth) {
			t.Is("2018/033", "Palaghiaccio Vallefredda", "plain: Italian text file with semicolons and decimal commas, outputs as F1-1")
			t.Speakers("tap_v=100; line_v=100", `
rows|tag|room|model|count|tap_w|zone|amplifier|channel
6|1|Atrio|incasso 20 cm|6|3|A|F1|1
7|2|Biglietteria|incasso 20 cm|2|1.5|A|F1|1
8|3|Spogliatoi|incasso IP54|10|1.5|B|F1|2
9|4|Corridoio atleti|incasso 20 cm|5|1.5|B|F1|2
10|5|Pista|tromba bidirezionale|8|20|C|F2|1
11|6|Gradinate|colonna|8|10|D|F2|2
12|7|Sala stampa|incasso 20 cm|4|3|D|F2|2
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
F1|1|120|21
F1|2|120|22.5
F2|1|240|160
F2|2|240|92
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nF1|240|43.5\nF2|480|252")
			t.Left("", "13|total|right")
		}},

		{File: "Valbreuil/orangerie HP.xls", Kind: "schedule", Saved: "xls", Book: book("HP", `
Site|Jardin botanique de Valbreuil||||||
Bâtiment|Orangerie||||||
Système|Ligne 100 V||||||

N° HP|Emplacement|Modèle|Prise (W)|Zone|Ligne|Potentiomètre|Observations
1|Nef, travée 1|Colonne|10|Nef|A1/1||
2|Nef, travée 2|Colonne|10|Nef|A1/1||
3|Nef, travée 3|Colonne|10|Nef|A1/1||
4|Nef, travée 4|Colonne|10|Nef|A1/1||
5|Sas|Plafonnier|1.5|Annexes|A1/2||
6|Office|Plafonnier|1.5|Annexes|A1/2||
7|Salon|Plafonnier|3|Annexes|A1/2|P1|
8|Salon|Plafonnier|3|Annexes|A1/2|P1|
9|Terrasse|Projecteur|10|Extérieur|A1/3||
10|Terrasse|Projecteur|10|Extérieur|A1/3||
11|Parvis|Pavillon|15|Extérieur|A1/3||

Ampli A1 : 3 sorties de 80 W sous 100 V|||||||
Potentiomètre P1 : 12 W|||||||
`, bold("A1:A3", "A5:H5")), Truth: func(t *typed.Truth) {
			t.Is("", "Jardin botanique de Valbreuil", "plain: French, one row a loudspeaker, amplifier and control in sentences below")
			t.Speakers("tap_v=100; line_v=100; sheet=HP; amplifier=A1", `
rows|tag|room|model|tap_w|zone|channel|control
6|1|Nef, travée 1|Colonne|10|Nef|1|
7|2|Nef, travée 2|Colonne|10|Nef|1|
8|3|Nef, travée 3|Colonne|10|Nef|1|
9|4|Nef, travée 4|Colonne|10|Nef|1|
10|5|Sas|Plafonnier|1.5|Annexes|2|
11|6|Office|Plafonnier|1.5|Annexes|2|
12..13|7..|Salon|Plafonnier|3|Annexes|2|P1
14..15|9..|Terrasse|Projecteur|10|Extérieur|3|
16|11|Parvis|Pavillon|15|Extérieur|3|
`)
			t.Channels("line_v=100; amplifier=A1; rated_w=80", "channel|load_w\n1|40\n2|9\n3|35")
			t.Controls("", "control|zone|rated_w|load_w\nP1|Annexes|12|6")
			t.Amplifiers("amplifier=A1", "rated_w|load_w\n240|84")
		}},

		{File: "Thornbeck/curling hall cable runs.xlsx", Kind: "schedule", Book: book("Speakers", `
Thornbeck Ice Rink - Curling hall|||||
Job|L03-002||||

Tag|Position|Type|Tap|Zone|Control
CH1|Sheet 1, home|Column|20 W|Hall|
CH2|Sheet 2, home|Column|20 W|Hall|
CH3|Sheet 3, home|Column|20 W|Hall|
CH4|Sheet 1, away|Column|20 W|Hall|
CH5|Sheet 2, away|Column|20 W|Hall|
CH6|Sheet 3, away|Column|20 W|Hall|
CF1|Foyer|Ceiling|3 W|Foyer|VC-F
CF2|Foyer|Ceiling|3 W|Foyer|VC-F
`, bold("A1", "A4:F4"), and("Cable runs", `
Cable|From|To|Type|Length
K1|PA2/1|JB1|2C 2.5|38 m
K2|JB1|CH1|2C 1.5|6 m
K3|CH1|CH2|2C 1.5|5 m
K4|CH2|CH3|2C 1.5|5 m
K5|JB1|CH4|2C 1.5|44 m
K6|CH4|CH5|2C 1.5|5 m
K7|CH5|CH6|2C 1.5|5 m
K8|PA2/2|VC-F|24/0.2 2 core|22 m
K9|VC-F|CF1|24/0.2 2 core|4 m
K10|CF1|CF2|24/0.2 2 core|6 m
`, bold("A1:E1")), and("Rack", `
Output|Rating|Zone
PA2/1|150 W @ 100 V|Hall
PA2/2|60 W @ 100 V|Foyer

Control|Rating
VC-F|12 W
`, bold("A1:C1", "A5:B5"))), Truth: func(t *typed.Truth) {
			t.Is("L03-002", "Thornbeck Ice Rink", "from-to cables with a junction box and a control in between, on a sheet of their own; strands times diameter")
			t.Speakers("tap_v=100; line_v=100; sheet=Speakers; amplifier=PA2", `
rows|tag|room|model|tap_w|zone|channel|control
5|CH1|Sheet 1, home|Column|20|Hall|1|
6|CH2|Sheet 2, home|Column|20|Hall|1|
7|CH3|Sheet 3, home|Column|20|Hall|1|
8|CH4|Sheet 1, away|Column|20|Hall|1|
9|CH5|Sheet 2, away|Column|20|Hall|1|
10|CH6|Sheet 3, away|Column|20|Hall|1|
11|CF1|Foyer|Ceiling|3|Foyer|2|VC-F
12|CF2|Foyer|Ceiling|3|Foyer|2|VC-F
`)
			t.Channels("line_v=100; amplifier=PA2", "channel|rated_w|load_w\n1|150|120\n2|60|6")
			t.Controls("", "control|zone|rated_w|load_w\nVC-F|Foyer|12|6")
			t.Amplifiers("amplifier=PA2", "rated_w|load_w\n210|126")
			t.Lines("material=copper", `
line|from|to|length_m|area_mm2
K1|PA2/1|JB1|38|2.5
K2|JB1|CH1|6|1.5
K3|CH1|CH2|5|1.5
K4|CH2|CH3|5|1.5
K5|JB1|CH4|44|1.5
K6|CH4|CH5|5|1.5
K7|CH5|CH6|5|1.5
K8|PA2/2|VC-F|22|0.754
K9|VC-F|CF1|4|0.754
K10|CF1|CF2|6|0.754
`)
		}},

		{File: "Saltgrass/punch walk 2010.xlsx", Kind: "schedule", Book: book("Walk", `
SALTGRASS BOTANICAL GARDEN - GREENHOUSE PUNCH WALK (70V SYSTEM)|||||
Walked by PM and foreman, all taps seen|||||

AREA|SPEAKERS|MODEL|ZONE|AMP-CH|OK?
Ticketing|(6) @ 5 W|ceiling|1|1-1|y
Gift shop|(4) 5/10W tapped 5|ceiling|1|1-1|y
Restrooms|4x 1.25W|ceiling|1|1-1|y
Fern house|3 ea @ 10W|surface|2|1-2|y
Desert house|(3) 30/15/7.5 → 15|horn|2|1-2|n, re-aim
Potting shed|(1) @ 1/2 W|ceiling|3|1-3|y
Nursery yard|2 ea @ 15W|horn|3|1-3|y

AMP 1 = 4 x 250W @70V, ch 4 spare
`, bold("A1", "A4:F4")), Truth: func(t *typed.Truth) {
			t.Is("", "Saltgrass Botanical Garden", "count and tap in one cell, in five notations; outputs as 1-3")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=Walk; amplifier=1", `
rows|room|model|count|tap_w|zone|channel
5|Ticketing|ceiling|6|5|1|1
6|Gift shop|ceiling|4|5|1|1
7|Restrooms|ceiling|4|1.25|1|1
8|Fern house|surface|3|10|2|2
9|Desert house|horn|3|15|2|2
10|Potting shed|ceiling|1|0.5|3|3
11|Nursery yard|horn|2|15|3|3
`)
			t.Channels("line_v=70.7; amplifier=1; rated_w=250", "channel|load_w\n1|55\n2|75\n3|30.5")
			t.Amplifiers("amplifier=1", "rated_w|load_w\n1000|160.5")
		}},

		{File: "Thornbeck/lighting schedule.xlsx", Kind: "not-a-schedule", Book: book("Lighting", `
Thornbeck Ice Rink|||||||
Luminaire schedule|||||||

Ref|Location|Luminaire|Qty|Watts each|Total W|Circuit|Control
L1|Ice pad|LED high bay|40|150|6000|DB2/L1|Dimmer 1
L2|Foyer|LED downlight|18|12|216|DB1/1|Switch
L3|Changing rooms|LED bulkhead|24|15|360|DB1/2|PIR
L4|Car park|LED floodlight|8|50|400|DB1/5|Photocell
L5|Plant room|LED batten|10|28|280|DB3/1|Switch
Total|||100||7256||
`, bold("A1:A2", "A4:H4")), Truth: stranger("a luminaire schedule: quantities, watts and circuits, but no loudspeaker")},

		{File: "Hartsmere/volunteer rota.csv", Kind: "not-a-schedule", Bytes: plain(`
Hartsmere Gardens volunteer rota,,,,,
Week,Zone,Mon,Tue,Wed,Notes
1,Entrance,2,2,1,use PA microphone for closing call
1,Glasshouses,3,3,3,
2,Entrance,2,2,2,
2,Grounds,4,4,4,speaker announcement at 16:45
Total,,11,11,10,
`), Truth: stranger("a rota with zones and counts")},

		{File: "Lindewaard/plantenlijst.ods", Kind: "not-a-schedule", Saved: "ods", Book: book("Planten", `
Hortus Lindewaard - plantenlijst kassen|||||
Nr.|Kas|Soort|Aantal|Hoogte (m)|Water per dag (l)
1|Palmenkas|dadelpalm|4|6,5|12
2|Palmenkas|dwergpalm|9|2|4
3|Varenkas|boomvaren|6|3|5
4|Vlinderkas|passiebloem|12|1,5|2
Totaal|||31||
`), Truth: stranger("a list of plants by glasshouse")},

		{File: "Sedge Water/rack and outputs only.xlsx", Kind: "schedule", Book: func() *excelize.File {
			p := typed.NewBook("Outputs")
			p.Put("A1", `
Sedge Water Boathouse|||||
New rack - how the outputs are loaded|||||

Amp|Output|Rated at 100 V|Feeds|Loudspeakers|Left free
M1|1|120 W|Boat bays and slip|4 horns at 15 W, 2 horns at 10 W|40 W
M1|2|60 W|Changing and stairs|4 ceiling at 3 W, 2 ceiling at 1.5 W|45 W
M2|1|120 W|Gym|3 cabinets at 10 W|90 W
M2|2|120 W|not connected||120 W
`)
			p.Bold("A1", "A4:F4")
			return p.File
		}, Truth: func(t *typed.Truth) {
			t.Is("", "Sedge Water Boathouse", "an output list whose loudspeakers are told in words in one cell, several kinds and taps a cell")
			t.Speakers("tap_v=100; line_v=100; sheet=Outputs", `
rows|zone|room|model|count|tap_w|amplifier|channel
5|Boat bays and slip||horns|4|15|M1|1
5|Boat bays and slip||horns|2|10|M1|1
6|Changing and stairs||ceiling|4|3|M1|2
6|Changing and stairs||ceiling|2|1.5|M1|2
7|Gym||cabinets|3|10|M2|1
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
M1|1|120|80
M1|2|60|15
M2|1|120|30
M2|2|120|0
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nM1|180|95\nM2|240|30")
		}},
	}
}
