package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Two hands in Austria, two in Switzerland.
var alps = []typed.Case{
	// Ing. Leitgeb, Projektant in der Steiermark, gibt die Beschallung eines kleinen Bahnhofs an die Montagefirma: Lautsprecher, Verstärker, Kabel.
	{File: "handed in/18-077 Bahnhof Unterferntal.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Lautsprecher")
		p.Put("A1", `
Bahnhof Unterferntal, Beschallung 100 V
Projekt 18/077|||Stand Jänner 2018
||
LS-Nr.|Ort|Type|Zone|Abgriff [W]
LS01|Kassahalle|Einbau|Z1|3
LS02|Kassahalle|Einbau|Z1|3
LS03|Kassahalle|Einbau|Z1|3
LS04|Warteraum|Einbau|Z1|1.5
LS05|Warteraum|Einbau|Z1|1.5
LS06|WC-Gang|Einbau|Z1|1.5
LS07|Bahnsteig 1 Nord|Trichter|Z2|10
LS08|Bahnsteig 1 Mitte|Trichter|Z2|10
LS09|Bahnsteig 1 Süd|Trichter|Z2|10
LS10|Bahnsteig 2 Nord|Trichter|Z3|10
LS11|Bahnsteig 2 Mitte|Trichter|Z3|10
LS12|Bahnsteig 2 Süd|Trichter|Z3|10
LS13|Unterführung|Aufbau|Z4|6
LS14|Unterführung|Aufbau|Z4|6
LS15|Stiege Bahnsteig 2|Aufbau|Z4|6
LS16|Vorplatz|Trichter|Z5|15
LS17|Vorplatz|Trichter|Z5|15
LS18|Radabstellplatz|Trichter|Z5|10
`)
		p.Bold("A1", "A4:E4")
		q := p.Sheet("Verstärker")
		q.Put("A1", `
Verstärker|Kanal|Zone|Nennleistung [W]
V1|1|Z2|125
V1|2|Z3|125
V2|1|Z1|60
V2|2|Z4|60
V2|3|Z5|60
`)
		q.Bold("A1:D1")
		r := p.Sheet("Kabel")
		r.Put("A1", `
Kabel|von|nach|Querschnitt|Länge [m]
K1|V2/1|LS01|2 x 1,5 mm²|20
K2|LS01|LS02|2 x 1,5 mm²|5
K3|LS02|LS03|2 x 1,5 mm²|5
K4|LS03|LS04|2 x 1,5 mm²|9
K5|LS04|LS05|2 x 1,5 mm²|4
K6|LS05|LS06|2 x 1,5 mm²|11
K7|V1/1|LS07|2 x 2,5 mm²|55
K8|LS07|LS08|2 x 2,5 mm²|30
K9|LS08|LS09|2 x 2,5 mm²|30
K10|V1/2|LS10|2 x 2,5 mm²|82
K11|LS10|LS11|2 x 2,5 mm²|30
K12|LS11|LS12|2 x 2,5 mm²|30
K13|V2/2|LS13|2 x 1,5 mm²|40
K14|LS13|LS14|2 x 1,5 mm²|12
K15|LS14|LS15|2 x 1,5 mm²|18
K16|V2/3|LS16|2 x 1,5 mm²|28
K17|LS16|LS17|2 x 1,5 mm²|15
K18|LS17|LS18|2 x 1,5 mm²|22
`)
		r.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("18/077", "Bahnhof Unterferntal", "plain; loudspeakers one by one, outputs by zone and cables from piece to piece on their own sheets; no controls")
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100", `rows|tag|room|zone|tap_w|amplifier|channel
5..7|LS01..|Kassahalle|Z1|3|V2|1
8..9|LS04..|Warteraum|Z1|1.5|V2|1
10|LS06|WC-Gang|Z1|1.5|V2|1
11|LS07|Bahnsteig 1 Nord|Z2|10|V1|1
12|LS08|Bahnsteig 1 Mitte|Z2|10|V1|1
13|LS09|Bahnsteig 1 Süd|Z2|10|V1|1
14|LS10|Bahnsteig 2 Nord|Z3|10|V1|2
15|LS11|Bahnsteig 2 Mitte|Z3|10|V1|2
16|LS12|Bahnsteig 2 Süd|Z3|10|V1|2
17..18|LS13..|Unterführung|Z4|6|V2|2
19|LS15|Stiege Bahnsteig 2|Z4|6|V2|2
20..21|LS16..|Vorplatz|Z5|15|V2|3
22|LS18|Radabstellplatz|Z5|10|V2|3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|125|30
V1|2|125|30
V2|1|60|13.5
V2|2|60|18
V2|3|60|40`)
		t.Amplifiers("", `amplifier|load_w
V1|60
V2|71.5`)
		t.Lines("note=from-to run", `line|from|to|length_m|area_mm2
K1|V2/1|LS01|20|1.5
K2|LS01|LS02|5|1.5
K3|LS02|LS03|5|1.5
K4|LS03|LS04|9|1.5
K5|LS04|LS05|4|1.5
K6|LS05|LS06|11|1.5
K7|V1/1|LS07|55|2.5
K8|LS07|LS08|30|2.5
K9|LS08|LS09|30|2.5
K10|V1/2|LS10|82|2.5
K11|LS10|LS11|30|2.5
K12|LS11|LS12|30|2.5
K13|V2/2|LS13|40|1.5
K14|LS13|LS14|12|1.5
K15|LS14|LS15|18|1.5
K16|V2/3|LS16|28|1.5
K17|LS16|LS17|15|1.5
K18|LS17|LS18|22|1.5`)
	}},

	// Toni, Haustechniker eines Stadttheaters in Oberösterreich, hält fest, welcher Regler in welcher Garderobe hängt, weil dauernd einer zugedreht ist.
	{File: "handed in/Inspizientenruf Garderoben.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Ruf")
		p.Put("A1", `
Stadttheater Hollermühl, Inspizientenruf
Verstärker A, 2 Ausgänge je 120 W, 100 V
||
Raum|Stk.|Abgriff W|Regler (je 6 W)|Ausgang|Anmerkung
Garderobe 1 Damen|1|3|R1|A/1|
Garderobe 2 Damen|1|3|R2|A/1|
Garderobe 3 Herren|1|3|R3|A/1|
Sologarderobe 1|1|1.5|R4|A/1|
Sologarderobe 2|1|1.5|R5|A/1|
Maske|1|3|R6|A/1|
Schneiderei|1|3|R7|A/1|Knopf fehlt
Ballettsaal|2|3|R8|A/1|beide am selben Regler
Gang 1. Stock|3|3||A/1|
Unterbühne|2|6||A/2|
Hinterbühne|2|6||A/2|
Tischlerei|1|10||A/2|Horn, weil's dort laut ist
Malersaal|1|6|R9|A/2|
Portierloge|1|1.5|R10|A/2|
Probebühne|2|6|R11|A/2|R11 ist der große, 24 W
Kulissendepot|2|6||A/2|
`)
		p.Bold("A1", "A4:F4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Stadttheater Hollermühl", "plain; rating of the controls in the header with one exception in a remark, outputs in a sentence above")
		t.Speakers("sheet=Ruf; tap_v=100; line_v=100; amplifier=A; channel=1", `rows|room|count|tap_w|control
5|Garderobe 1 Damen|1|3|R1
6|Garderobe 2 Damen|1|3|R2
7|Garderobe 3 Herren|1|3|R3
8|Sologarderobe 1|1|1.5|R4
9|Sologarderobe 2|1|1.5|R5
10|Maske|1|3|R6
11|Schneiderei|1|3|R7
12|Ballettsaal|2|3|R8
13|Gang 1. Stock|3|3|`)
		t.Speakers("sheet=Ruf; tap_v=100; line_v=100; amplifier=A; channel=2", `rows|room|count|tap_w|control
14|Unterbühne|2|6|
15|Hinterbühne|2|6|
16|Tischlerei|1|10|
17|Malersaal|1|6|R9
18|Portierloge|1|1.5|R10
19|Probebühne|2|6|R11
20|Kulissendepot|2|6|`)
		t.Channels("line_v=100; amplifier=A", `channel|rated_w|load_w
1|120|33
2|120|65.5`)
		t.Amplifiers("", `amplifier|load_w
A|98.5`)
		t.Controls("", `control|rated_w|load_w
R1|6|3
R2|6|3
R3|6|3
R4|6|1.5
R5|6|1.5
R6|6|3
R7|6|3
R8|6|6
R9|6|6
R10|6|1.5
R11|24|12`)
	}},

	// Frau Zbinden, Elektroplanerin im Kanton Bern, stellt das Devis für die neue Rufanlage eines Tramdepots zusammen, nach Zonen gegliedert.
	{File: "handed in/Devis 5120 Tramdepot.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Devis")
		p.Put("A1", `
Tramdepot Sägegasse, Ersatz Rufanlage
Devis 5120|Alle Linien 100 V
||
Pos.|Beschreibung|Menge|Einh.|EP CHF|Betrag CHF
100|Zentrale
110|Verstärker VS1, vier Ausgänge zu 120 W|1|Stk|2480|2480
120|Wandschrank mit Schloss|1|Stk|640|640
200|Zone Werkstatt (VS1 Ausgang 1)
210|Hornlautsprecher, eingestellt auf 15 W|4|Stk|188|752
220|Wandlautsprecher, eingestellt auf 6 W, Lehrlingsecke|2|Stk|96|192
230|Lautstärkeregler LR1, 20 W, für Pos. 220|1|Stk|71|71
300|Zone Einstellhalle (VS1 Ausgang 2)
310|Hornlautsprecher, eingestellt auf 10 W|8|Stk|188|1504
320|Hornlautsprecher über den Toren, eingestellt auf 15 W|2|Stk|188|376
400|Zone Büros (VS1 Ausgang 3)
410|Einbaulautsprecher, eingestellt auf 3 W|7|Stk|58|406
420|Einbaulautsprecher Sitzungszimmer, eingestellt auf 3 W|2|Stk|58|116
430|Lautstärkeregler LR2, 12 W, für Pos. 420|1|Stk|66|66
500|Zone Areal (VS1 Ausgang 4)
510|Druckkammerlautsprecher, eingestellt auf 20 W|3|Stk|245|735
590|Eventualposition: Druckkammerlautsprecher bei der Waschanlage, eingestellt auf 20 W|1|Stk|245|per
600|Installation
610|Kabel 2 x 2.5 mm², alle Zonen|420|m|4.8|2016
|Total exkl. MWST||||9354
`)
		p.Bold("A1", "A4:F4", "A5:B5", "A8:B8", "A12:B12", "A15:B15", "A19:B19", "A22:B22", "B24:F24")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5120", "Tramdepot Sägegasse", "bill of quantities; zone and output in titles, taps in descriptions, controls as items that name the item behind them, an optional item")
		t.Speakers("sheet=Devis; tap_v=100; line_v=100; amplifier=VS1; zone=Werkstatt; channel=1; note=title as zone", `rows|count|tap_w|control
9|4|15|
10|2|6|LR1`)
		t.Speakers("sheet=Devis; tap_v=100; line_v=100; amplifier=VS1; zone=Einstellhalle; channel=2; note=title as zone", `rows|count|tap_w
13|8|10
14|2|15`)
		t.Speakers("sheet=Devis; tap_v=100; line_v=100; amplifier=VS1; zone=Büros; channel=3; note=title as zone", `rows|count|tap_w|control
16|7|3|
17|2|3|LR2`)
		t.Speakers("sheet=Devis; tap_v=100; line_v=100; amplifier=VS1; zone=Areal; channel=4; note=title as zone", `rows|count|tap_w
20|3|20`)
		t.Channels("line_v=100; amplifier=VS1", `channel|rated_w|load_w
1|120|72
2|120|110
3|120|27
4|120|60`)
		t.Amplifiers("", `amplifier|load_w
VS1|269`)
		t.Controls("", `control|rated_w|load_w
LR1|20|12
LR2|12|6`)
		t.Left("Devis", `6|amplifier|
7|other|cabinet
11|control|
18|control|
21|optional|not in the sum
23|cable|
24|total|`)
	}},

	// Herr Ammann, Hauswart im Thurgau, hat alle Lautsprecher seines Schulhauses gezählt, ein Strichlein je Sorte, und der Gemeinde abgegeben.
	{File: "handed in/Schulhaus Bächlerain Gong.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Gong")
		p.Put("A1", `
Schulhaus Bächlerain, Gong und Durchsage, Bestand Herbst 2016
Verstärker VS1, 240 W, 100 V, mit den Linien L1 bis L3
||
||Anzahl Lautsprecher||||
Linie|Raum|Decke 3 W|Decke 1.5 W|Wand 6 W|Horn 10 W|Regler
L1|Schulzimmer 1|1||||
L1|Schulzimmer 2|1||||
L1|Schulzimmer 3|1||||
L1|Schulzimmer 4|1||||
L1|Werken|||1||
L1|Lehrerzimmer||1|||R1, 6 W
L2|Aula|2||4||R2, 50 W
L2|Korridor EG|3||||
L2|Korridor OG|3||||
L2|Treppenhaus|||2||
L2|Bibliothek||2|||R3, 6 W
L3|Pausenplatz||||3|
L3|Turnhalle|||2|1|
L3|Velokeller||||1|
|Total Stück|12|3|9|5|
|Total Watt|36|4.5|54|50|
`)
		p.Merge("C4:F4")
		p.Bold("A1", "A4:G5", "B20:F21")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Schulhaus Bächlerain", "matrix: rooms down, kinds with taps across, two kinds in one room twice; lines without ratings of their own on one amplifier")
		t.Speakers("sheet=Gong; tap_v=100; line_v=100; amplifier=VS1; channel=L1", `rows|room|count|tap_w|control
6|Schulzimmer 1|1|3|
7|Schulzimmer 2|1|3|
8|Schulzimmer 3|1|3|
9|Schulzimmer 4|1|3|
10|Werken|1|6|
11|Lehrerzimmer|1|1.5|R1`)
		t.Speakers("sheet=Gong; tap_v=100; line_v=100; amplifier=VS1; channel=L2", `rows|room|count|tap_w|control
12|Aula|2|3|R2
12|Aula|4|6|R2
13|Korridor EG|3|3|
14|Korridor OG|3|3|
15|Treppenhaus|2|6|
16|Bibliothek|2|1.5|R3`)
		t.Speakers("sheet=Gong; tap_v=100; line_v=100; amplifier=VS1; channel=L3", `rows|room|count|tap_w|control
17|Pausenplatz|3|10|
18|Turnhalle|2|6|
18|Turnhalle|1|10|
19|Velokeller|1|10|`)
		t.Channels("line_v=100; amplifier=VS1", `channel|load_w
L1|19.5
L2|63
L3|62`)
		t.Amplifiers("", `amplifier|rated_w|load_w
VS1|240|144.5`)
		t.Controls("", `control|rated_w|load_w
R1|6|1.5
R2|50|30
R3|6|3`)
		t.Left("Gong", `20|total|count
21|total|watts`)
	}},
}
