package main

import "lineaudit/samples/typed"

// germany is a planning office: a drawing head, positions, abbreviations with a legend, lines told on another sheet.
func germany() []typed.Case {
	return []typed.Case{
		{File: "P-2214 Planetarium/LS-Liste.xlsx", Kind: "schedule", Book: sheets("LS-Liste", `
Planungsbüro|Objekt:|Planetarium Sternmoos||Auftrag-Nr.:|P-2214
|Gewerk:|Elektroakustik||Index:|c
|Inhalt:|Lautsprecherliste 100 V||Datum:|03.05.2019

Pos.|Raum-Nr.|Raum|LS-Typ|Stk.|P/Stk. [W]|P ges. [W]|Linie|Steller
1|'0.01|Windfang|EB|2|1,5|3|L1|
2|'0.02|Kassenhalle|EB|8|3|24|L1|LST1
3|'0.03|Ausstellung|EB|12|3|36|L2|LST2
4|'0.04|Garderobe|EB|4|1,5|6|L1|
5|'1.01|Kuppelumgang|WA|6|6|36|L3|
6|'1.02|Seminar|EB|6|3|18|L3|LST3
7|'1.03|Büro|EB|2|1,5|3|L3|
8|'-1.01|Technik|WA|1|6|6|L2|
|||Summe|41||132

Lautstärkesteller: LST1 30 W, LST2 30 W, LST3 30 W
EB = Einbaulautsprecher, WA = Wandaufbau
`, "Verstärker", `
Linie|Verstärker|Nennleistung
L1|V1 Ausg. 1|60 W
L2|V1 Ausg. 2|60 W
L3|V2|120 W
`), Truth: func(t *typed.Truth) {
			t.Is("P-2214", "Planetarium Sternmoos", "drawing head; the lines' outputs on another sheet; a control over its rating")
			t.Revision("c", false)
			t.Speakers("tap_v=100; line_v=100; sheet=LS-Liste", `
rows|room|model|count|tap_w|amplifier|channel|control
6|Windfang|EB|2|1.5|V1|1|
7|Kassenhalle|EB|8|3|V1|1|LST1
8|Ausstellung|EB|12|3|V1|2|LST2
9|Garderobe|EB|4|1.5|V1|1|
10|Kuppelumgang|WA|6|6|V2||
11|Seminar|EB|6|3|V2||LST3
12|Büro|EB|2|1.5|V2||
13|Technik|WA|1|6|V1|2|
`)
			t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nV1|1|60|33\nV1|2|60|42\nV2||120|57")
			t.Amplifiers("", "amplifier|rated_w|load_w\nV1|120|75\nV2|120|57")
			t.Controls("", "control|rated_w|load_w\nLST1|30|24\nLST2|30|36\nLST3|30|18")
			t.Left("LS-Liste", "14|total|right")
		}},

		{File: "P-2230 Eishalle/Kabelzugliste.csv", Kind: "schedule", Bytes: text(`
Eishalle Dornmoos - Kabelzugliste Beschallung;;;;;;
Auftrag P-2230;;;Index a;;;
;;;;;;
Ltg.;Start;Ziel;Typ;Länge/m;LS am Ziel;Abgriff/W
W1;V1.1;LS 1;NYM-J 3x2,5;38,5;Horn;20
W2;LS 1;LS 2;NYM-J 3x2,5;14;Horn;20
W3;LS 2;LS 3;NYM-J 3x2,5;14;Horn;20
W4;V1.2;LS 4;NYM-J 3x1,5;22;Decke;6
W5;LS 4;LS 5;NYM-J 3x1,5;6,5;Decke;6
W6;LS 5;LS 6;NYM-J 3x1,5;6,5;Decke;6
W7;V2.1;LS 7;NYM-J 3x1,5;51;Projektor;10
W8;LS 7;LS 8;NYM-J 3x1,5;12;Projektor;10
;;;;;;
V1: 2 x 120 W, V2: 1 x 60 W, alles 100 V;;;;;;
`), Truth: func(t *typed.Truth) {
			t.Is("P-2230", "Eishalle Dornmoos", "a cable pulling list from output to loudspeaker to loudspeaker; V1.1 is output 1 of V1")
			t.Revision("a", false)
			t.Speakers("tap_v=100; line_v=100", `
rows|tag|model|tap_w|amplifier|channel
5..7|LS 1..|Horn|20|V1|1
8..10|LS 4..|Decke|6|V1|2
11..12|LS 7..|Projektor|10|V2|1
`)
			t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nV1|1|120|60\nV1|2|120|18\nV2|1|60|20")
			t.Amplifiers("", "amplifier|rated_w|load_w\nV1|240|78\nV2|60|20")
			t.Lines("material=copper", `
line|from|to|length_m|area_mm2
W1|V1.1|LS 1|38.5|2.5
W2|LS 1|LS 2|14|2.5
W3|LS 2|LS 3|14|2.5
W4|V1.2|LS 4|22|1.5
W5|LS 4|LS 5|6.5|1.5
W6|LS 5|LS 6|6.5|1.5
W7|V2.1|LS 7|51|1.5
W8|LS 7|LS 8|12|1.5
`)
		}},

		{File: "P-2119 Tropenhaus/Raumbuch ELA.xlsx", Kind: "schedule", Book: sheets("Raumbuch ELA", `
Tropenhaus Bruchlohe, ELA - Raumbuch Teil 4
Projekt 2119, Stand 11.02.2020

Zone|Raum|Lautsprecher|Anz.|Trafoanzapfung|VST/Ausg.|Ausg.-Leistung|Bemerkung
Z1 Besucher|Tropenhalle|Kugel|6|10 W|'1/1|120 W|
Z1 Besucher|Farnhalle|Kugel|4|10 W|'1/1|120 W|
Z1 Besucher|Eingang|Decke|4|6 W|'1/1|120 W|
Z2 Schule|Grünes Klassenzimmer|Decke|4|6 W|'1/2|60 W|Regler R1 (30 W)
Z2 Schule|Werkraum|Decke|2|6 W|'1/2|60 W|
Z3 Personal|Gärtnerei|Wand|2|3 W|'2/1|60 W|
Z3 Personal|Umkleide|Decke|2|3 W|'2/1|60 W|Regler R2 (10 W)
Z3 Personal|Heizraum|Druckkammer|1|15 W|'2/1|60 W|
Z3 Personal|Lager|Wand|1|3 W|'2/1|60 W|entfällt

alle Linien 100 V
`), Truth: func(t *typed.Truth) {
			t.Is("2119", "Tropenhaus Bruchlohe", "the controls stand in the remarks, with their ratings; a row that is dropped; an output over its rating")
			t.Speakers("tap_v=100; line_v=100; sheet=Raumbuch ELA", `
rows|zone|room|model|count|tap_w|amplifier|channel|control|status
5|Z1 Besucher|Tropenhalle|Kugel|6|10|1|1||installed
6|Z1 Besucher|Farnhalle|Kugel|4|10|1|1||installed
7|Z1 Besucher|Eingang|Decke|4|6|1|1||installed
8|Z2 Schule|Grünes Klassenzimmer|Decke|4|6|1|2|R1|installed
9|Z2 Schule|Werkraum|Decke|2|6|1|2||installed
10|Z3 Personal|Gärtnerei|Wand|2|3|2|1||installed
11|Z3 Personal|Umkleide|Decke|2|3|2|1|R2|installed
12|Z3 Personal|Heizraum|Druckkammer|1|15|2|1||installed
13|Z3 Personal|Lager|Wand|1|3|2|1||removed
`)
			t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\n1|1|120|124\n1|2|60|36\n2|1|60|27")
			t.Amplifiers("", "amplifier|rated_w|load_w\n1|180|160\n2|60|27")
			t.Controls("", "control|rated_w|load_w\nR1|30|24\nR2|10|6")
		}},
	}
}

// austria is an electrician who writes as he speaks.
func austria() []typed.Case {
	return []typed.Case{
		{File: "Bootshaus Hinterau/LS Bestand.xlsx", Kind: "schedule", Book: sheets("Tabelle1", `
Bootshaus Hinterau - Lautsprecher wie angeschlossen
(Auftrag 160412)

Nr|wo|Watt eingestellt|Regler|Strang
1|Stiege|3|-|1
2|Umkleide H|3|Regler Umkleide|1
3|Umkleide D|3|Regler Umkleide|1
4|Schulungsraum|6|Regler Schulung|1
5|Schulungsraum|6|Regler Schulung|1
6|Steg|15|-|2
7|Steg|15|-|2
8|Steg Ende|15|-|2
9|Einfahrt|10|-|2

Verstärker im Kammerl: Strang 1 = 60 W, Strang 2 = 60 W, 100 Volt
Regler sind alle 12 Watt
`), Truth: func(t *typed.Truth) {
			t.Is("160412", "Bootshaus Hinterau", "strings for outputs; a dash for no control; one rating for all controls")
			t.Speakers("tap_v=100; line_v=100; sheet=Tabelle1", `
rows|tag|room|tap_w|control|channel
5|1|Stiege|3||1
6|2|Umkleide H|3|Regler Umkleide|1
7|3|Umkleide D|3|Regler Umkleide|1
8..9|4..|Schulungsraum|6|Regler Schulung|1
10..11|6..|Steg|15||2
12|8|Steg Ende|15||2
13|9|Einfahrt|10||2
`)
			t.Channels("line_v=100; rated_w=60", "channel|load_w\n1|21\n2|55")
			t.Amplifiers("note=unnamed", "rated_w|load_w\n120|76")
			t.Controls("rated_w=12", "control|load_w\nRegler Umkleide|6\nRegler Schulung|12")
		}},

		{File: "Eislaufplatz Krähmoos/Beschallung.csv", Kind: "schedule", Bytes: text(`
Eislaufplatz Krähmoos→→→→→
Beschallung 100V, Verstärker 1 = 250 W (Platz), Verstärker 2 = 125 W (Gebäude)→→→→→
→→→→→
Stk→Lautsprecher→Ort→a Watt→zusammen→Verst.
8→Horn→Platz→20→160→1
4→Horn→Tribüne→20→80→1
6→Einbau→Garderobe→2,5→15→2
2→Einbau→Kassa→2,5→5→2
3→Aufbau→WC Gang→1,25→3,75→2
1→Horn→Eismaschine→10→10→2
2→Horn→Parkplatz→10→20→2
→→→Summe→293,75→
`), Truth: func(t *typed.Truth) {
			t.Is("", "Eislaufplatz Krähmoos", "tabs, decimal commas; watts each and together; amplifiers in the sentence above")
			t.Speakers("tap_v=100; line_v=100", `
rows|room|model|count|tap_w|amplifier
5|Platz|Horn|8|20|1
6|Tribüne|Horn|4|20|1
7|Garderobe|Einbau|6|2.5|2
8|Kassa|Einbau|2|2.5|2
9|WC Gang|Aufbau|3|1.25|2
10|Eismaschine|Horn|1|10|2
11|Parkplatz|Horn|2|10|2
`)
			t.Channels("line_v=100", "amplifier|rated_w|load_w\n1|250|240\n2|125|53.75")
			t.Amplifiers("", "amplifier|rated_w|load_w\n1|250|240\n2|125|53.75")
			t.Left("", "12|total|right")
		}},
	}
}
