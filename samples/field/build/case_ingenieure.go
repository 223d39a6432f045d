package main

import (
	"lineaudit/samples/typed"

	"github.com/xuri/excelize/v2"
)

// ingenieure is a German planning office for electrical installations.
var ingenieure = []typed.Case{
	{File: "ingenieure/Schwimmhalle Altenried LS-Liste.csv", Kind: "schedule", Bytes: text(`
Projekt;2015-083;;;;;;;
Objekt;Schwimmhalle Altenried;;;;;;;
Anlage;ELA, 100 V;;;;;;;
;;;;;;;;
Pos.;Raum-Nr.;Raumbezeichnung;LS-Typ;Anz.;Leistung je LS;Leistung ges.;LS-Kreis;Lautstärkeregler
1;0.01;Eingangshalle;DLS;6;3,0 W;18,0 W;LK 1;
2;0.02;Kasse;DLS;1;1,5 W;1,5 W;LK 1;LSR 1 / 5 W
3;0.03;Umkleide Damen;DLS;8;1,5 W;12,0 W;LK 1;
4;0.04;Umkleide Herren;DLS;8;1,5 W;12,0 W;LK 1;
5;0.10;Schwimmhalle;TS;10;20,0 W;200,0 W;LK 2;
6;0.11;Lehrbecken;TS;4;10,0 W;40,0 W;LK 3;
7;0.12;Schwimmmeister;WLS;1;3,0 W;3,0 W;LK 3;LSR 2 / 5 W
8;0.13;Ruheraum;DLS;4;1,5 W;6,0 W;LK 3;LSR 3 / 10 W
;;;Summe;42;;292,5 W;;
;;;;;;;;
LK 1: Verstärker V1, 60 W;;;;;;;;
LK 2: Verstärker V2, 240 W;;;;;;;;
LK 3: Verstärker V3, 60 W;;;;;;;;
DLS = Deckenlautsprecher, TS = Tonsäule, WLS = Wandlautsprecher, LSR = Lautstärkeregler;;;;;;;;
`), Truth: func(t *typed.Truth) {
		t.Is("2015-083", "Schwimmhalle Altenried", "German list with circuits told below, name and rating of a control in one cell, a legend")
		t.Speakers("tap_v=100; line_v=100", `
rows|room|model|count|tap_w|amplifier|channel|control
6|Eingangshalle|DLS|6|3|V1|LK 1|
7|Kasse|DLS|1|1.5|V1|LK 1|LSR 1
8|Umkleide Damen|DLS|8|1.5|V1|LK 1|
9|Umkleide Herren|DLS|8|1.5|V1|LK 1|
10|Schwimmhalle|TS|10|20|V2|LK 2|
11|Lehrbecken|TS|4|10|V3|LK 3|
12|Schwimmmeister|WLS|1|3|V3|LK 3|LSR 2
13|Ruheraum|DLS|4|1.5|V3|LK 3|LSR 3
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nV1|LK 1|60|43.5\nV2|LK 2|240|200\nV3|LK 3|60|49")
		t.Amplifiers("", "amplifier|rated_w|load_w\nV1|60|43.5\nV2|240|200\nV3|60|49")
		t.Controls("", "control|rated_w|load_w\nLSR 1|5|1.5\nLSR 2|5|3\nLSR 3|10|6")
		t.Left("", "14|total|Summe")
	}},

	{File: "ingenieure/Gewächshäuser Moorwiesen.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Lautsprecher")
		p.Put("A1", `
Botanischer Garten Moorwiesen - Gewächshäuser, Projekt 2019-014|||||||
Bauteil / Raum|Lautsprecher|||Linie A|Linie B|Bemerkung|
|Typ|Abgriff [W]|Stk.|W|W||
Haus 1 Tropen|||||||
Eingang|Projektor 20|10|2|20|||
Mittelgang|Projektor 20|10|6|30|30|abwechselnd A/B, je 3 Stück|
Haus 2 Sukkulenten|||||||
Halle|Projektor 20|6|4|12|12|je 2 Stück|
Haus 3 Verwaltung|||||||
Flur|Decke 6W|3|5|15|||
Büro Leitung|Decke 6W|1,5|1|1,5||LR 5 W|
Besprechung|Decke 6W|3|2|6||LR 12 W|
Technik|Decke 6W|6|1||6||
|||Summe|84,5|48||
`)
		p.Merge("B2:D2", "A2:A3", "G2:G3")
		p = p.Sheet("Zentrale")
		p.Put("A1", `
Linie|Endstufe|Nennleistung|Ausgang
A|ES 1|120 W|100 V
B|ES 2|120 W|100 V
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2019-014", "Botanischer Garten Moorwiesen", "A/B lines with watts a line; a row split on both lines; unnamed controls in remarks")
		t.Speakers("tap_v=100; line_v=100; sheet=Lautsprecher", `
rows|zone|room|model|count|tap_w|amplifier|channel|note
5|Haus 1 Tropen|Eingang|Projektor 20|2|10|ES 1|A|
6|Haus 1 Tropen|Mittelgang|Projektor 20|3|10|ES 1|A|
6|Haus 1 Tropen|Mittelgang|Projektor 20|3|10|ES 2|B|
8|Haus 2 Sukkulenten|Halle|Projektor 20|2|6|ES 1|A|
8|Haus 2 Sukkulenten|Halle|Projektor 20|2|6|ES 2|B|
10|Haus 3 Verwaltung|Flur|Decke 6W|5|3|ES 1|A|
11|Haus 3 Verwaltung|Büro Leitung|Decke 6W|1|1.5|ES 1|A|unnamed control
12|Haus 3 Verwaltung|Besprechung|Decke 6W|2|3|ES 1|A|unnamed control
13|Haus 3 Verwaltung|Technik|Decke 6W|1|6|ES 2|B|
`)
		t.Channels("line_v=100; rated_w=120", "amplifier|channel|load_w\nES 1|A|84.5\nES 2|B|48")
		t.Amplifiers("rated_w=120", "amplifier|load_w\nES 1|84.5\nES 2|48")
		t.Controls("note=unnamed", "zone|rated_w|load_w\nBüro Leitung|5|1.5\nBesprechung|12|6")
		t.Left("Lautsprecher", "14|total|Summe\n4|title|Haus\n7|title|Haus\n9|title|Haus")
	}},

	{File: "ingenieure/2021-102 Bootshäuser Kabelliste.xlsx", Kind: "schedule", Book: sheets("Lautsprecherliste", `
Projekt 2021-102|Bootshäuser am Steinsee|||||
LS-Nr.|Ort|Fabrikat/Typ|Anzapfung|Linie|Regler|geliefert
LS 01|Steg|Horn 30|15 W|1|-|ja
LS 02|Steg|Horn 30|15 W|1|-|ja
LS 03|Steg|Horn 30|15 W|1|-|ja
LS 04|Halle Nord|Säule 20|10 W|2|-|ja
LS 05|Halle Nord|Säule 20|10 W|2|-|ja
LS 06|Halle Süd|Säule 20|10 W|2|-|ja
LS 07|Clubraum|Wand 6|3 W|2|R1|ja
LS 08|Clubraum|Wand 6|3 W|2|R1|ja
LS 09|Werkstatt|Wand 6|6 W|2|-|ja
LS 10|Reserve|Horn 30|||-|Lager
`, "Kabelliste", `
Kabel-Nr.|von|nach|Typ|Querschnitt|Länge [m]
K1|Zentrale V1/1|LS 01|NYY-J|2x2,5|85
K2|LS 01|LS 02|NYY-J|2x2,5|30
K3|LS 02|LS 03|NYY-J|2x2,5|30
K4|Zentrale V1/2|LS 09|NYM-J|3x1,5|20
K5|LS 09|LS 04|NYM-J|3x1,5|35
K6|LS 04|LS 05|NYM-J|3x1,5|12
K7|LS 05|LS 06|NYM-J|3x1,5|18
K8|LS 09|R1|NYM-J|5x1,5|25
K9|R1|LS 07|NYM-J|3x1,5|8
K10|LS 07|LS 08|NYM-J|3x1,5|6
`, "Verstärker", `
Bezeichnung|Kanal|Linie|Leistung|Spannung
V1|1|1|125 W|100 V
V1|2|2|125 W|100 V

Regler R1: 10 W, mit Pflichtempfangsrelais
`), Truth: func(t *typed.Truth) {
		t.Is("2021-102", "Bootshäuser am Steinsee", "loudspeakers, cables and amplifier on three sheets; one in store as a spare")
		t.Speakers("tap_v=100; line_v=100; sheet=Lautsprecherliste; amplifier=V1", `
rows|tag|room|model|tap_w|channel|control
3..5|LS 01..|Steg|Horn 30|15|1|
6..7|LS 04..|Halle Nord|Säule 20|10|2|
8|LS 06|Halle Süd|Säule 20|10|2|
9..10|LS 07..|Clubraum|Wand 6|3|2|R1
11|LS 09|Werkstatt|Wand 6|6|2|
`)
		t.Speakers("sheet=Lautsprecherliste; status=spare", "rows|tag|room|model\n12|LS 10|Reserve|Horn 30")
		t.Channels("line_v=100; rated_w=125; amplifier=V1", "channel|load_w\n1|45\n2|42")
		t.Amplifiers("", "amplifier|rated_w|load_w\nV1|250|87")
		t.Controls("", "control|rated_w|load_w\nR1|10|6")
		t.Lines("", `
line|from|to|length_m|area_mm2
K1|V1/1|LS 01|85|2.5
K2|LS 01|LS 02|30|2.5
K3|LS 02|LS 03|30|2.5
K4|V1/2|LS 09|20|1.5
K5|LS 09|LS 04|35|1.5
K6|LS 04|LS 05|12|1.5
K7|LS 05|LS 06|18|1.5
K8|LS 09|R1|25|1.5
K9|R1|LS 07|8|1.5
K10|LS 07|LS 08|6|1.5
`)
	}},
}
