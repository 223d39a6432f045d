package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// heizungsbauer are a planner, a service technician, a caretaker and a heating engineer, in German.
var heizungsbauer = []typed.Case{
	{File: "planung/Raumbuch Reithalle.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Lautsprecher")
		p.Put("A1", `
Reithalle Lindengrund|||||Projekt 24-118
ELA-Anlage 100 V|||||Raumbuch Lautsprecher
||
Raum-Nr.|Raum|Linie|Anzahl|Typ|W je LS|W gesamt|Lautstärkeregler
'0.01|Reitbahn Nord|L1|4|Tonsäule|20|80|
'0.02|Reitbahn Süd|L1|4|Tonsäule|20|80|
|Summe L1|||||160
'0.05|Foyer|L2|4|Decke|3|12|LR1
'0.06|Sattelkammer|L2|1|Decke|3|3|
'0.07|Umkleide Damen|L2|2|Decke|1.5|3|
'0.08|Umkleide Herren|L2|2|Decke|1.5|3|
'1.01|Tribüne|L2|6|Wand|6|36|LR2
|Summe L2|||||57
'0.12|Stallgasse|L3|5|Horn|10|50|
'0.13|Hof|L3|2|Horn|15|30|
|Summe L3|||||80
`)
		p.Bold("A1", "A4:H4", "B7:G7", "B13:G13", "B16:G16")
		q := p.Sheet("Verstärker")
		q.Put("A1", `
Verstärker|Linie|Leistung W|Belegung W
V1|L1|250|160
V2|L2|120|57
V2|L3|120|80
||
Regler|Leistung W|Montageort
LR1|20|Foyer neben Kasse
LR2|60|Tribüne Aufgang
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("24-118", "Reithalle Lindengrund", "plain, subtotals a line between the rows; the lines' amplifiers on a second sheet")
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V1; channel=L1", `rows|room|count|tap_w
5|Reitbahn Nord|4|20
6|Reitbahn Süd|4|20`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V2; channel=L2", `rows|room|count|tap_w|control
8|Foyer|4|3|LR1
9|Sattelkammer|1|3|
10|Umkleide Damen|2|1.5|
11|Umkleide Herren|2|1.5|
12|Tribüne|6|6|LR2`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V2; channel=L3", `rows|room|count|tap_w
14|Stallgasse|5|10
15|Hof|2|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|L1|250|160
V2|L2|120|57
V2|L3|120|80`)
		t.Amplifiers("", `amplifier|load_w
V1|160
V2|137`)
		t.Controls("", `control|rated_w|load_w
LR1|20|12
LR2|60|36`)
		t.Left("Lautsprecher", `7|total|line
13|total|line
16|total|line`)
	}},

	{File: "wartung/7031_Planetarium.csv", Kind: "schedule", Bytes: text(`
Planetarium Hohenlerch;;;;;
Auftrag 7031, Wartung ELA 100 V;;;;;
;;;;;
Linie 1 an Verstärker A (60 W), gemessen 310 Ohm;;;;;
Nr;Ort;Bauart;Anz;Watt;Bemerkung
1;Kassenhalle;Decke;4;3;über R1 (20 W)
2;Garderobe;Decke;2;1,5;
3;Flur EG;Decke;5;3;
4;Büro;Decke;1;1,5;über R2 (5 W)
;;;;;
Linie 2 an Verstärker B (120 W), gemessen 130 Ohm;;;;;
Nr;Ort;Bauart;Anz;Watt;Bemerkung
5;Kuppelsaal links;Wand;4;6;
6;Kuppelsaal rechts;Wand;4;6;
7;Vorplatz;Horn;2;15;
8;Terrasse;Horn;1;15;abgeklemmt, defekt
`), Truth: func(t *typed.Truth) {
		t.Is("7031", "Planetarium Hohenlerch", "line, amplifier, its watts and the measured impedance in one title; controls in the remarks; one loudspeaker disconnected")
		t.Speakers("tap_v=100; line_v=100; amplifier=A; channel=1", `rows|tag|room|count|tap_w|control
6|1|Kassenhalle|4|3|R1
7|2|Garderobe|2|1.5|
8|3|Flur EG|5|3|
9|4|Büro|1|1.5|R2`)
		t.Speakers("tap_v=100; line_v=100; amplifier=B; channel=2", `rows|tag|room|count|tap_w
13|5|Kuppelsaal links|4|6
14|6|Kuppelsaal rechts|4|6
15|7|Vorplatz|2|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A|1|60|31.5
B|2|120|78`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|60|31.5
B|120|78`)
		t.Controls("", `control|rated_w|load_w
R1|20|12
R2|5|1.5`)
		t.Left("", `4|title|line
11|title|line
16|removed|disconnected, faulty`)
	}},

	{File: "hallenwart/Lautsprecher Eishalle.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Tabelle1")
		p.Put("A1", `
Lautsprecher Eishalle Ochsenweiher
Beide Verstärker stehen im Kassenraum, alles 100 Volt
||
Verstärker|Wo|Stück|je Watt|Drehregler
groß, 240 W|Eisfläche Ost|4|15|ohne
|Eisfläche West|4|15|ohne
|Strafbank|1|5|ohne
klein, 60 W|Kasse|1|3|im Kassenraum, 10 W
|Eingang|2|3|
|Schlittschuhverleih|3|3|am Tresen, 20 W
|Umkleide 1|2|1.5|ohne
|Umkleide 2|2|1.5|ohne
|WC|2|1.5|ohne
|Werkstatt|1|5|an der Tür, 10 W
`)
		p.Merge("A5:A7", "A8:A14", "E8:E9")
		p.Bold("A1", "A4:E4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Eishalle Ochsenweiher", "amplifiers are called large and small, controls have a place and a rating but no name; merged down")
		t.Speakers("sheet=Tabelle1; tap_v=100; line_v=100; amplifier=groß", `rows|room|count|tap_w
5|Eisfläche Ost|4|15
6|Eisfläche West|4|15
7|Strafbank|1|5`)
		t.Speakers("sheet=Tabelle1; tap_v=100; line_v=100; amplifier=klein", `rows|room|count|tap_w
8|Kasse|1|3
9|Eingang|2|3
10|Schlittschuhverleih|3|3
11|Umkleide 1|2|1.5
12|Umkleide 2|2|1.5
13|WC|2|1.5
14|Werkstatt|1|5`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
groß|240|125
klein|60|32`)
		t.Amplifiers("", `amplifier|rated_w|load_w
groß|240|125
klein|60|32`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|10|9
|20|9
|10|5`)
	}},

	{File: "planung/Heizflaechen Reithalle.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Heizflächen")
		p.Put("A1", `
Reithalle Lindengrund|||||Projekt 24-118
Heizflächen und Stellantriebe 24 V
||
Raum-Nr.|Raum|Strang|Anzahl|Heizkörper|W je Stück|W gesamt|Regler
'0.05|Foyer|S1|2|Platte 22|1450|2900|R1
'0.06|Sattelkammer|S1|1|Platte 11|620|620|R2
'0.07|Umkleide Damen|S2|2|Röhren|980|1960|R3
'0.08|Umkleide Herren|S2|2|Röhren|980|1960|R4
'1.01|Tribüne|S3|4|Strahlplatte|1200|4800|R5
|Summe|||||12240
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("24-118", "", "radiators with watts, risers and controllers")
	}},
}
