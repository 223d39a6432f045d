package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// patternsGerman are an ice rink's technician, an electrician's office, a caretaker and a museum association.
var patternsGerman = []typed.Case{
	{File: "patterns/Abnahme/Eishalle Typenmatrix.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Mengen")
		p.Put("A1", `
Eishalle Rauschbrunn, Beschallung 100 V, Stand Abnahme
Auftrag 24-0713
||
Bereich|Decke||Wand|Trichter|Summe|Summe|Verstärker|Regler
|3 W|6 W|6 W|15 W|Stück|Watt||
Foyer|6||||6|18|V2|LR1 (24 W)
Kasse|2||||2|6|V2|
Schuhverleih||4|2||6|36|V2|LR2 (50 W)
Eisfläche||||8|8|120|V1|
Tribüne Ost|||6||6|36|V1|
Tribüne West|||6|2|8|66|V1|
Umkleiden|8||||8|24|V2|LR3 (20 W)
Technik|||1||1|6|V2|
Summe|16|4|15|10|45|312||
||
V1 = 360 W, V2 = 240 W, je ein Ausgang
`)
		p.Merge("B4:C4", "A4:A5", "H4:H5", "I4:I5")
		p.Bold("A1", "A4:I5", "A14:I14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("24-0713", "Eishalle Rauschbrunn", "matrix of areas by kinds with the tap in the second header row; ratings of the amplifiers in a note below, of the controls in brackets; LR3 too small")
		t.Speakers("sheet=Mengen; tap_v=100; line_v=100; amplifier=V2", `rows|zone|count|tap_w|control
6|Foyer|6|3|LR1
7|Kasse|2|3|
8|Schuhverleih|4|6|LR2
8|Schuhverleih|2|6|LR2
12|Umkleiden|8|3|LR3
13|Technik|1|6|`)
		t.Speakers("sheet=Mengen; tap_v=100; line_v=100; amplifier=V1", `rows|zone|count|tap_w
9|Eisfläche|8|15
10|Tribüne Ost|6|6
11|Tribüne West|6|6
11|Tribüne West|2|15`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
V1|360|222
V2|240|90`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|360|222
V2|240|90`)
		t.Controls("", `control|rated_w|load_w
LR1|24|18
LR2|50|36
LR3|20|24`)
		t.Left("Mengen", `14|total|sums
16|note|ratings`)
	}},

	{File: "patterns/Schule/Linienbuch.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Lautsprecher")
		p.Put("A1", `
Linie|Geschoss|Raum||Lautsprecher|||Regler
||Nr.|Bezeichnung|Art|Stk|W|
1|EG|'001|Aula|Wand|4|10|
||'002|Eingang|Decke|2|3|
||'003|Hausmeister|Decke|1|1.5|R1
2|EG|'010|Werkraum|Decke|4|6|R2
||'011|Flur|Decke|6|3|
|1. OG|'101|Lehrerzimmer|Decke|2|3|R3
||'102|Klasse 5a|Decke|2|3|
||'103|Klasse 5b|Decke|2|3|
3|Außen||Schulhof|Horn|3|15|
|||Fahrradstand|Horn|1|15|
`)
		p.Merge("A1:A2", "B1:B2", "C1:D1", "E1:G1", "H1:H2", "A3:A5", "B3:B5", "A6:A10", "B6:B7", "B8:B10", "A11:A12", "B11:B12")
		p.Bold("A1:H2")
		q := p.Sheet("Verstärker")
		q.Put("A1", `
Linie|Endstufe|Ausgang|Nennleistung|Spannung|Bemerkung
1|ES 1|A|125 W|100 V|
2|ES 1|B|125 W|100 V|
3|ES 2|A|125 W|100 V|
|ES 2|B|125 W|100 V|frei
||
Regler: R1 5 W, R2 36 W, R3 12 W
`)
		q.Bold("A1:F1")
		r := p.Sheet("Kabel")
		r.Put("A1", `
Linie|von|nach|Querschnitt|Länge (m)
1|ES 1 A|Aula|2 x 2,5 mm²|35
1|Aula|Eingang|2 x 1,5 mm²|18
1|Eingang|Hausmeister|2 x 1,5 mm²|12
2|ES 1 B|Werkraum|2 x 1,5 mm²|40
2|Werkraum|Flur|2 x 1,5 mm²|15
2|Flur|Lehrerzimmer|2 x 1,5 mm²|25
3|ES 2 A|Schulhof|2 x 2,5 mm²|80
3|Schulhof|Fahrradstand|2 x 2,5 mm²|45
`)
		r.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "line and floor once in merged cells on the left, two header rows; amplifier outputs and cable runs by line on other sheets; a free output")
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=ES 1; channel=A", `rows|room|count|tap_w|control
3|Aula|4|10|
4|Eingang|2|3|
5|Hausmeister|1|1.5|R1`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=ES 1; channel=B", `rows|room|count|tap_w|control
6|Werkraum|4|6|R2
7|Flur|6|3|
8|Lehrerzimmer|2|3|R3
9|Klasse 5a|2|3|
10|Klasse 5b|2|3|`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=ES 2; channel=A", `rows|room|count|tap_w
11|Schulhof|3|15
12|Fahrradstand|1|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
ES 1|A|125|47.5
ES 1|B|125|60
ES 2|A|125|60
ES 2|B|125|0`)
		t.Amplifiers("", `amplifier|load_w
ES 1|107.5
ES 2|60`)
		t.Controls("", `control|rated_w|load_w
R1|5|1.5
R2|36|24
R3|12|6`)
		t.Lines("", `line|from|to|length_m|area_mm2
1|ES 1 A|Aula|35|2.5
1|Aula|Eingang|18|1.5
1|Eingang|Hausmeister|12|1.5
2|ES 1 B|Werkraum|40|1.5
2|Werkraum|Flur|15|1.5
2|Flur|Lehrerzimmer|25|1.5
3|ES 2 A|Schulhof|80|2.5
3|Schulhof|Fahrradstand|45|2.5`)
	}},

	{File: "patterns/Bad/ELA Aufnahme Hausmeister.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Tabelle1")
		p.Put("A1", `
Hallenbad Lauterweiher, ELA 100 V, aufgenommen vom Hausmeister
||
Halle: Verstärker V1, 240 W|||||Freigelände: Verstärker V2, 120 W
Ort|Stück|Watt je|Regler||Ort|Stück|Watt je|Regler
Schwimmhalle|8|10|||Liegewiese|4|15|
Nichtschwimmer|4|6|||Sprungturm|2|15|
Umkleide Damen|3|3|RG1||Kasse außen|1|6|RG4
Umkleide Herren|3|3|RG1||Kinderbecken|2|6|
Duschen|4|3|||Fahrradplatz|1|15|
Eingang|2|6|RG2||||
Schwimmmeister|1|3|RG3||||
Summe|25||149 W||Summe|10||123 W
||
RG1 hat 24 W, RG2 12 W, RG3 5 W, RG4 10 W
`)
		p.Bold("A3", "F3", "A4:D4", "F4:I4", "A12:I12")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Hallenbad Lauterweiher", "two tables side by side, an amplifier each in the title; the second one overloaded; ratings of the controls in a note below")
		t.Speakers("sheet=Tabelle1; tap_v=100; line_v=100; amplifier=V1; zone=Halle; note=title as zone", `rows|room|count|tap_w|control
5|Schwimmhalle|8|10|
6|Nichtschwimmer|4|6|
7|Umkleide Damen|3|3|RG1
8|Umkleide Herren|3|3|RG1
9|Duschen|4|3|
10|Eingang|2|6|RG2
11|Schwimmmeister|1|3|RG3`)
		t.Speakers("sheet=Tabelle1; tap_v=100; line_v=100; amplifier=V2; zone=Freigelände; note=title as zone", `rows|room|count|tap_w|control
5|Liegewiese|4|15|
6|Sprungturm|2|15|
7|Kasse außen|1|6|RG4
8|Kinderbecken|2|6|
9|Fahrradplatz|1|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
V1|240|149
V2|120|123`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|240|149
V2|120|123`)
		t.Controls("", `control|rated_w|load_w
RG1|24|18
RG2|12|12
RG3|5|3
RG4|10|6`)
		t.Left("Tabelle1", `12|total|sums of both tables
14|note|ratings`)
	}},

	{File: "patterns/Museum/5531 Zonenblätter.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Zonen")
		p.Put("A1", `
Salinenmuseum Steinbrunn, Auftrag 5531
Ein Verstärker mit 4 Ausgängen zu je 60 W, 100 V
||
Zone: Dauerausstellung||Ausgang 1
Nr.|Raum|Abgriff
'1.01|Saal A|6 W
'1.02|Saal A|6 W
'1.03|Saal B|6 W
'1.04|Saal B|6 W
||
Zone: Sonderausstellung||Ausgang 2
Nr.|Raum|Abgriff
'2.01|Saal C|6 W
'2.02|Saal C|6 W
'2.03|Saal C|6 W
'2.04|Kabinett|3 W
||
Zone: Eingang||Ausgang 3
Nr.|Raum|Abgriff
'3.01|Foyer|3 W
'3.02|Foyer|3 W
'3.03|Kasse|1,5 W
||
Ausgang 4 ist nicht belegt
`)
		p.Bold("A1", "A4:C4", "A11:C11", "A18:C18")
		q := p.Sheet("Regler und Leitungen")
		q.Put("A1", `
Zone|Regler|Regler W|sitzt in|regelt
Sonderausstellung|RS|24|Aufsicht|ganze Zone
Eingang|RK|5|Kasse|nur Kasse
||
Zone|Leitung|m
Dauerausstellung|2 x 1,5 mm²|65
Sonderausstellung|2 x 1,5 mm²|48
Eingang|2 x 0,75 mm²|22
`)
		q.Bold("A1:E1", "A5:C5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5531", "Salinenmuseum Steinbrunn", "a block a zone with its own small header; an amplifier without a name, rated by its outputs in a sentence; controls and cables of the zones on a second sheet; a control for one room only")
		t.Speakers("sheet=Zonen; tap_v=100; line_v=100; zone=Dauerausstellung; channel=1", `rows|tag|room|tap_w
6|1.01|Saal A|6
7|1.02|Saal A|6
8|1.03|Saal B|6
9|1.04|Saal B|6`)
		t.Speakers("sheet=Zonen; tap_v=100; line_v=100; zone=Sonderausstellung; channel=2; control=RS", `rows|tag|room|tap_w
13|2.01|Saal C|6
14|2.02|Saal C|6
15|2.03|Saal C|6
16|2.04|Kabinett|3`)
		t.Speakers("sheet=Zonen; tap_v=100; line_v=100; zone=Eingang; channel=3", `rows|tag|room|tap_w|control
20|3.01|Foyer|3|
21|3.02|Foyer|3|
22|3.03|Kasse|1.5|RK`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
|1|60|24
|2|60|21
|3|60|7.5
|4|60|0`)
		t.Amplifiers("", `amplifier|load_w
|52.5`)
		t.Controls("", `control|zone|rated_w|load_w
RS|Sonderausstellung|24|21
RK|Eingang|5|1.5`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Dauerausstellung|65|1.5
Sonderausstellung|48|1.5
Eingang|22|0.75`)
		t.Left("Zonen", `24|note|output not used`)
	}},
}
