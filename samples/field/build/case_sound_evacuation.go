package main

import "lineaudit/samples/typed"

// soundEvacuation is an installer of evacuation sound: A and B lines, end-of-line units, standards and battery columns.
var soundEvacuation = []typed.Case{
	{File: "evacuation/EV-61 Lantern Lock museum.xlsx", Kind: "schedule", Book: sheets("A-B lines", `
Evacuation sound - A/B line list|||||||
Building: Lantern Lock Museum|||||Contract EV-61
System voltage 100 V. All amplifiers 1 x 160 W, one standby amplifier AMP-S for both zones (N+1).

Line|Evac zone|Amplifier|Floor|Speakers|Type|Tap|Total W|EOL unit|EN 54-24 cert.|Cable|Length|Fire rating
1A|1|AMP-1|Ground|9|ceiling|6|54|EOL-20|yes|2x1.5|110 m|PH30
1B|1|AMP-2|Ground|8|ceiling|6|48|EOL-20|yes|2x1.5|105 m|PH30
2A|2|AMP-3|First|11|ceiling|6|66|EOL-20|yes|2x1.5|130 m|PH30
2B|2|AMP-4|First|11|ceiling|6|66|EOL-20|yes|2x1.5|125 m|PH30
-|-|AMP-S|standby

Alternate loudspeakers in each room are on A and B. EOL units draw nothing on the line.
`), Truth: func(t *typed.Truth) {
		t.Is("EV-61", "Lantern Lock Museum", "A and B lines with end-of-line units and standards; one rating for all amplifiers in a sentence")
		t.Speakers("tap_v=100; line_v=100; sheet=A-B lines; model=ceiling; tap_w=6", `
rows|zone|amplifier|count
6|1|AMP-1|9
7|1|AMP-2|8
8|2|AMP-3|11
9|2|AMP-4|11
`)
		t.Channels("line_v=100; rated_w=160", "amplifier|load_w\nAMP-1|54\nAMP-2|48\nAMP-3|66\nAMP-4|66")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAMP-1|160|54\nAMP-2|160|48\nAMP-3|160|66\nAMP-4|160|66")
		t.Lines("", "line|zone|length_m|area_mm2\n1A|1|110|1.5\n1B|1|105|1.5\n2A|2|130|1.5\n2B|2|125|1.5")
		t.Left("A-B lines", "10|note|standby amplifier")
	}},

	{File: "evacuation/EV-66 Rinkside.xlsx", Kind: "schedule", Book: sheets("Devices", `
Rinkside Arena - voice evacuation device list|||||EV-66 rev C

Device|Level|Area|Circuit|Setting W|Speaker type|Certificate|Tested
SPK 001|L0|Ice hall|A1|20|projector|EN 54-24|ok
SPK 002|L0|Ice hall|B1|20|projector|EN 54-24|ok
SPK 003|L0|Ice hall|A1|20|projector|EN 54-24|ok
SPK 004|L0|Ice hall|B1|20|projector|EN 54-24|ok
SPK 005|L0|Plant room|A1|10|horn|EN 54-24|ok
SPK 006|L1|Viewing gallery|A2|6|ceiling|EN 54-24|ok
SPK 007|L1|Viewing gallery|B2|6|ceiling|EN 54-24|ok
SPK 008|L1|Viewing gallery|A2|6|ceiling|EN 54-24|ok
SPK 009|L1|Meeting room|B2|3|ceiling|EN 54-24|ok
EOL A1|L0|Ice hall|A1||end-of-line|EN 54-16|ok
EOL B1|L0|Ice hall|B1||end-of-line|EN 54-16|ok
EOL A2|L1|Viewing gallery|A2||end-of-line|EN 54-16|ok
EOL B2|L1|Meeting room|B2||end-of-line|EN 54-16|ok
`, "Circuits", `
Circuit|Amp card|Card rating|Line voltage|Cable|Length m|Battery Ah share
A1|C1|250 W|100 V|FP 2x2.5|190|4.2
B1|C2|250 W|100 V|FP 2x2.5|185|4.2
A2|C3|100 W|100 V|FP 2x1.5|75|1.3
B2|C4|100 W|100 V|FP 2x1.5|80|1.3
`), Truth: func(t *typed.Truth) {
		t.Is("EV-66", "Rinkside Arena", "device list with end-of-line units as rows; circuits on a second sheet")
		t.Revision("C", false)
		t.Speakers("tap_v=100; line_v=100; sheet=Devices", `
rows|tag|room|model|tap_w|amplifier|channel
4|SPK 001|Ice hall|projector|20|C1|
5|SPK 002|Ice hall|projector|20|C2|
6|SPK 003|Ice hall|projector|20|C1|
7|SPK 004|Ice hall|projector|20|C2|
8|SPK 005|Plant room|horn|10|C1|
9|SPK 006|Viewing gallery|ceiling|6|C3|
10|SPK 007|Viewing gallery|ceiling|6|C4|
11|SPK 008|Viewing gallery|ceiling|6|C3|
12|SPK 009|Meeting room|ceiling|3|C4|
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nC1|250|50\nC2|250|40\nC3|100|12\nC4|100|9")
		t.Amplifiers("", "amplifier|rated_w|load_w\nC1|250|50\nC2|250|40\nC3|100|12\nC4|100|9")
		t.Lines("", "line|length_m|area_mm2\nA1|190|2.5\nB1|185|2.5\nA2|75|1.5\nB2|80|1.5")
		t.Left("Devices", "13|note|end-of-line unit\n14|note|end-of-line unit\n15|note|end-of-line unit\n16|note|end-of-line unit")
	}},

	{File: "evacuation/SAA Linienliste Gewächshäuser Eschenried.xls", Kind: "schedule", Saved: "xls", Book: sheets("Linien", `
SAA Linienliste - Gewächshäuser Eschenried|||||||||
Auftrags-Nr. SAA-209|||Stand 02/2021|||Norm: DIN EN 50849

Linie|Alarmbereich|Endstufe|Nennleistung|Raum|Anz. LS|Abgriff|Gesamt|Regler|EOL-Modul|Kabel|Länge
1A|Schauhäuser|ES1|250 W|Palmenhaus|6|10 W|60 W||E1|JE-H(St)H 2x2x0,8|180 m
||||Farnhaus|4|6 W|24 W||||
1B|Schauhäuser|ES2|250 W|Palmenhaus|6|10 W|60 W||E2|JE-H(St)H 2x2x0,8|175 m
||||Farnhaus|4|6 W|24 W||||
2A|Betriebshof|ES3|125 W|Werkstatt|3|10 W|30 W||E3|JE-H(St)H 2x2x0,8|95 m
||||Pausenraum|2|3 W|6 W|LR1 (12 W, 24-V-Pflichtruf)|||
2B|Betriebshof|ES4|125 W|Werkstatt|3|10 W|30 W||E4|JE-H(St)H 2x2x0,8|90 m

100-V-Technik, Leitungen A und B getrennt verlegt.
`), Truth: func(t *typed.Truth) {
		t.Is("SAA-209", "Gewächshäuser Eschenried", "German voice alarm: blanks below the line carry down; rating and override in the cell of the control")
		t.Speakers("tap_v=100; line_v=100; sheet=Linien", `
rows|zone|room|amplifier|count|tap_w|control
5|Schauhäuser|Palmenhaus|ES1|6|10|
6|Schauhäuser|Farnhaus|ES1|4|6|
7|Schauhäuser|Palmenhaus|ES2|6|10|
8|Schauhäuser|Farnhaus|ES2|4|6|
9|Betriebshof|Werkstatt|ES3|3|10|
10|Betriebshof|Pausenraum|ES3|2|3|LR1
11|Betriebshof|Werkstatt|ES4|3|10|
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nES1|250|84\nES2|250|84\nES3|125|36\nES4|125|30")
		t.Amplifiers("", "amplifier|rated_w|load_w\nES1|250|84\nES2|250|84\nES3|125|36\nES4|125|30")
		t.Controls("", "control|zone|rated_w|load_w\nLR1|Pausenraum|12|6")
	}},

	{File: "evacuation/EVAC Orto della Rocchetta.csv", Kind: "schedule", Bytes: text(`
Elenco linee EVAC;;;;;;;;;
Orto botanico della Rocchetta;;;Commessa 2290;;;;;;
;;;;;;;;;
Linea;Zona;Amplificatore;Potenza ampli (W);Diffusori;Tipo;Presa (W);Carico (W);Fine linea;Cavo;Lunghezza (m)
A1;Serra grande;F1;240;10;proiettore;10;100;FL1;2x2,5 mmq;160
B1;Serra grande;F2;240;10;proiettore;10;100;FL2;2x2,5 mmq;155
A2;Erbario;F3;120;7;plafoniera;6;42;FL3;2x1,5 mmq;70
B2;Erbario;F4;120;6;plafoniera;6;36;FL4;2x1,5 mmq;75
-;Riserva;F5;240;;;;;;;
;;;;;;;;;
Linee a 100 V. F5 subentra in caso di guasto.;;;;;;;;;
`), Truth: func(t *typed.Truth) {
		t.Is("2290", "Orto botanico della Rocchetta", "Italian evacuation lines with a standby amplifier")
		t.Speakers("tap_v=100; line_v=100", `
rows|zone|amplifier|count|model|tap_w
5|Serra grande|F1|10|proiettore|10
6|Serra grande|F2|10|proiettore|10
7|Erbario|F3|7|plafoniera|6
8|Erbario|F4|6|plafoniera|6
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nF1|240|100\nF2|240|100\nF3|120|42\nF4|120|36")
		t.Amplifiers("", "amplifier|rated_w|load_w\nF1|240|100\nF2|240|100\nF3|120|42\nF4|120|36")
		t.Lines("", "line|zone|length_m|area_mm2\nA1|Serra grande|160|2.5\nB1|Serra grande|155|2.5\nA2|Erbario|70|1.5\nB2|Erbario|75|1.5")
		t.Left("", "9|note|standby amplifier")
	}},
}
