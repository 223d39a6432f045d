package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// german are the schedules of a German-speaking foundation.
func german() []typed.Case {
	return []typed.Case{
		{File: "de/Eishalle Nordweiher Bestand.xls", Kind: "schedule", Book: nordweiher, Saved: "xls", Truth: nordweiherTruth},
		{File: "de/Gewaechshaus Stufen.csv", Kind: "schedule", Bytes: stufen, Truth: stufenTruth},
		{File: "de/Planetarium Sonnenried Kabel.ods", Kind: "schedule", Book: sonnenried, Saved: "ods", Truth: sonnenriedTruth},
		{File: "de/Orangerie drei Listen.xlsx", Kind: "schedule", Book: orangerie, Truth: orangerieTruth},
		{File: "de/Tropenhaus Korrektur.ods", Kind: "schedule", Book: tropenhaus, Saved: "ods", Truth: tropenhausTruth},
		{File: "de/Bootshaus LV.xlsx", Kind: "schedule", Book: bootshaus, Saved: "xlsx", Truth: bootshausTruth},
	}
}

// A row a group; decimal commas as text; repetition marks; the word for the control is short for three things.
func nordweiher() *excelize.File {
	p := typed.NewBook("Bestand")
	p.Put("A1", `
Stiftung Rabenquell|||||||Auftrag RQ-2201
Eishalle Nordweiher - Beschallung, aufgenommen vor Ort
Netz 100 V, Verstärker V1 mit 4 x 125 W

Lfd.|Abschnitt|Strahler|Stk|je W|zus. W|hängt an|Steller
1|Eisfläche Nord|Druckkammer Reif 30|8|15|120|V1/1
2|Eisfläche Süd|'"|8|15|120|V1/2
3|Umkleiden|Einbau Moos 6|12|'1,5|'18,0|V1/3|LS1 (20 W)
4|Schiedsrichter|dto.|2|'0,75|'1,5|V1/3
5|Kasse|dto.|4|3|12|V1/3|LS2 (10 W)
6|Tribüne|Säule Schilf 20|10|'7,5|'75,0|V1/4
Summe|||44||'346,5
Reserve im Lager||Säule Schilf 20|2
`)
	return p.File
}

func nordweiherTruth(t *typed.Truth) {
	t.Is("RQ-2201", "Eishalle Nordweiher", "decimal commas as text beside numbers, ditto marks, 'zus.' is the row sum; LS1 is a control here (Lautstärkesteller); spares under the sum")
	t.Speakers("sheet=Bestand; tap_v=100; line_v=100", `
rows|zone|model|count|tap_w|amplifier|channel|control|status
6|Eisfläche Nord|Druckkammer Reif 30|8|15|V1|1||installed
7|Eisfläche Süd|Druckkammer Reif 30|8|15|V1|2||installed
8|Umkleiden|Einbau Moos 6|12|1.5|V1|3|LS1|installed
9|Schiedsrichter|Einbau Moos 6|2|0.75|V1|3||installed
10|Kasse|Einbau Moos 6|4|3|V1|3|LS2|installed
11|Tribüne|Säule Schilf 20|10|7.5|V1|4||installed
13||Säule Schilf 20|2|||||spare
`)
	t.Channels("line_v=100; rated_w=125; amplifier=V1", "channel|load_w|note\n1|120|\n2|120|\n3|31.5|18+1.5+12\n4|75|")
	t.Amplifiers("", "amplifier|rated_w|load_w\nV1|500|346.5")
	t.Controls("", "control|zone|rated_w|load_w|note\nLS1|Umkleiden|20|18|\nLS2|Kasse|10|12|over its rating")
	t.Left("Bestand", "12|total|44 pieces, 346.5 W: right")
}

// The setting is a share of the rated power, as German transformers are marked.
func stufen() []byte {
	return typed.Windows1252(typed.DOS(`
Gewächshäuser Sonnenried;;;;;Auftrag RQ-2105
Stufe = Anteil der Nennlast am 100-V-Übertrager;;;;;
;;;;;
Nr;Haus;Bauform;Nennlast;Stufe;Ausg.
1;Eingang;Moos;6 W;1/2;K1
2;Eingang;Moos;6 W;1/2;K1
3;Tropen;Schilf;20 W;3/4;K1
4;Tropen;„;„;„;„
5;Tropen;„;„;1/4;„
6;Kakteen;Moos;6 W;1/1;K2
7;Kakteen;„;„;1/4;„
8;Kakteen;„;„;1/4;„
9;Palmen;Reif;30 W;1/2;K2
10;Palmen;Reif;30 W;aus;K2
;;;;;
Verstärker VG;K1: 60 W;K2: 30 W;;;
`))
}

func stufenTruth(t *typed.Truth) {
	t.Is("RQ-2105", "Gewächshäuser Sonnenried", "Windows-1252; taps are fractions of the rated power, so 1/2 is 3 W on a 6 W unit and 15 W on a 30 W unit; low German quotation mark as ditto; one unit switched off")
	t.Speakers("tap_v=100; line_v=100; amplifier=VG", `
rows|tag|zone|model|tap_w|channel|status|note
5..6|1..2|Eingang|Moos|3|K1|installed|1/2 of 6 W
7|3|Tropen|Schilf|15|K1|installed|3/4 of 20 W
8|4|Tropen|Schilf|15|K1|installed|ditto
9|5|Tropen|Schilf|5|K1|installed|1/4
10|6|Kakteen|Moos|6|K2|installed|1/1 is 6 W
11..12|7..8|Kakteen|Moos|1.5|K2|installed|
13|9|Palmen|Reif|15|K2|installed|1/2 of 30 W
14|10|Palmen|Reif|0|K2|installed|aus: the tap is off, it draws nothing (removed is as good)
`)
	t.Channels("line_v=100; amplifier=VG", "channel|rated_w|load_w|note\nK1|60|41|3+3+15+15+5\nK2|30|24|6+1.5+1.5+15: 80 %")
	t.Amplifiers("", "amplifier|load_w\nVG|65")
	t.Left("", "16|amplifier|")
	t.Asks("", "14|assumed|aus: switched off, draws nothing")
}

// Cables from end to end: areas, diameters, a pair count, decimal commas.
func sonnenried() *excelize.File {
	p := typed.NewBook("Lautsprecher")
	p.Put("A1", `
Planetarium Sonnenried||Projekt RQ-2310
100-V-Anlage

Kennung|Platz|eingest. auf|Versorgt aus
LS01|Kuppel N|10 W|Z1.1
LS02|Kuppel O|10 W|Z1.1
LS03|Kuppel S|10 W|Z1.1
LS04|Kuppel W|10 W|Z1.1
LS05|Foyer|2,5 W|Z1.2
LS06|Foyer|2,5 W|Z1.2
LS07|Werkstatt|6 W|Z1.2
LS08|Hof|15 W|Z1.3
`)
	q := p.Sheet("Strippen")
	q.Put("A1", `
Strippen, wie gezogen

Nr.|ab|bis|Weg (m)|Ader
W1|Z1.1|LS01|'22,5|NYM-O 2x1,5
W2|LS01|LS02|'8,0|NYM-O 2x1,5
W3|LS02|LS03|'8,0|NYM-O 2x1,5
W4|LS03|LS04|'8,0|NYM-O 2x1,5
W5|Z1.2|LS05|31|J-Y(St)Y 2x2x0,8
W6|LS05|LS06|'6,5|J-Y(St)Y 2x2x0,8
W7|LS06|LS07|14|J-Y(St)Y 2x2x0,8
W8|Z1.3|LS08|'0,12 km|NYY 2x2,5 mm²
W9|Z1.4|offen|30|NYM-O 2x1,5
`)
	r := p.Sheet("Zentrale")
	r.Put("A1", `
Zentrale Z1

Weg|gibt her
1|60 W
2|60 W
3|60 W
4|60 W
`)
	return p.File
}

func sonnenriedTruth(t *typed.Truth) {
	t.Is("RQ-2310", "Planetarium Sonnenried", "0,8 in 2x2x0,8 is a diameter (0.50 mm²), 1,5 in 2x1,5 an area; 'Weg' is a length on one sheet and an output on another; km in one cell; a cable that ends open")
	t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=Z1", `
rows|tag|room|tap_w|channel
5|LS01|Kuppel N|10|1
6|LS02|Kuppel O|10|1
7|LS03|Kuppel S|10|1
8|LS04|Kuppel W|10|1
9..10|LS05..LS06|Foyer|2.5|2
11|LS07|Werkstatt|6|2
12|LS08|Hof|15|3
`)
	t.Channels("line_v=100; rated_w=60; amplifier=Z1", "channel|load_w|note\n1|40|\n2|11|\n3|15|\n4|0|its cable ends open")
	t.Amplifiers("", "amplifier|load_w\nZ1|66")
	t.Lines("material=copper", `
line|from|to|length_m|area_mm2|note
W1|Z1.1|LS01|22.5|1.5|
W2|LS01|LS02|8|1.5|
W3|LS02|LS03|8|1.5|
W4|LS03|LS04|8|1.5|
W5|Z1.2|LS05|31|0.5027|diameter 0.8 mm, one pair used
W6|LS05|LS06|6.5|0.5027|
W7|LS06|LS07|14|0.5027|
W8|Z1.3|LS08|120|2.5|0.12 km
W9|Z1.4|offen|30|1.5|loose end
`)
}

// One zone is written four ways in three lists; two zones differ by one sign.
func orangerie() *excelize.File {
	p := typed.NewBook("Köpfe")
	p.Put("A1", `
Orangerie und Nebenhäuser||||RQ-2044

Bez.|sitzt in|W|Ber.
K01|Orangerie EG|6|1
K02|Orangerie EG|6|1
K03|Orangerie EG|6|1
K04|Orangerie EG|3|1
K05|Orangerie OG|3|2
K06|Orangerie OG|3|2
K07|Kalthaus|10|11
K08|Kalthaus|10|11
K09|Kalthaus|10|11
K10|Kasse|1.5|3
K11|Kasse|1.5|3
`)
	q := p.Sheet("Steller")
	q.Put("B2", `
Drehsteller|für|verträgt
D1|01 Orangerie (EG)|20 W
D2|02 Orangerie (OG)|10 W
D3|Bereich 11 Kalthaus|35 W
`)
	r := p.Sheet("Endstufen")
	r.Put("A1", `
Endstufen (100 V)

Endstufe|Abgang|Bereich|Watt
E1|a|B1 - Orangerie, Erdgeschoss|60
E1|b|B 2 - Orangerie Obergesch.|60
E2|a|B11 Kalthaus|60
E2|b|B-03 Kasse|60
`)
	return p.File
}

func orangerieTruth(t *typed.Truth) {
	t.Is("RQ-2044", "", "three lists with the zones as 1, 01, B1, 'Orangerie EG', 'Orangerie (EG)', 'Orangerie, Erdgeschoss'; 1 and 11 are not one zone; EG and OG are not one zone; controls by zone")
	t.Speakers("sheet=Köpfe; tap_v=100; line_v=100", `
rows|tag|zone|room|tap_w|control|amplifier|channel
4..6|K01..K03|1|Orangerie EG|6|D1|E1|a
7|K04|1|Orangerie EG|3|D1|E1|a
8..9|K05..K06|2|Orangerie OG|3|D2|E1|b
10..12|K07..K09|11|Kalthaus|10|D3|E2|a
13..14|K10..K11|3|Kasse|1.5||E2|b
`)
	t.Channels("line_v=100; rated_w=60", "amplifier|channel|load_w\nE1|a|21\nE1|b|6\nE2|a|30\nE2|b|3")
	t.Amplifiers("", "amplifier|load_w\nE1|27\nE2|33")
	t.Controls("", "control|zone|rated_w|load_w|note\nD1|1|20|21|over its rating\nD2|2|10|6|\nD3|11|35|30|")
}

// A list corrected by hand and saved as OpenDocument: struck parts must survive the way.
func tropenhaus() *excelize.File {
	p := typed.NewBook("Liste")
	p.Put("A1", `
Tropenhaus, rote Änderungen vom Umbau||||RQ-2077
Verstärker TR, 1 Ausgang, 100 V, 80 W

Nr.|Ort|eingestellt|Stk|Bemerkung
1|Becken||4|leiser gestellt
2|Steg|10 W|2
3|Höhle|6 W|3|entfallen
4|Treppe|3 W||drei mehr
5|Vogelflug|5 W|2
|||Köpfe gesamt 13|
`)
	p.Corrected("C5", "10 W", " 5 W")
	p.Corrected("D8", "2", " 5")
	p.Strike("A7:E7")
	p.Hide(9)
	return p.File
}

func tropenhausTruth(t *typed.Truth) {
	t.Is("RQ-2077", "Tropenhaus", "OpenDocument: a tap and a count struck inside the cell with the new one behind; a struck row; a row hidden by hand, without which the typed sum of heads is wrong")
	t.Speakers("sheet=Liste; tap_v=100; line_v=100; amplifier=TR", `
rows|tag|room|tap_w|count|note
5|1|Becken|5|4|10 W struck, 5 W behind
6|2|Steg|10|2|
8|4|Treppe|3|5|count 2 struck, 5 behind
`)
	t.Channels("line_v=100; rated_w=80; amplifier=TR", "load_w|note\n55|20+20+15; 65 W with the hidden row: within 80 W, but 81 %")
	t.Amplifiers("", "amplifier|rated_w|load_w\nTR|80|55")
	t.Left("Liste", "7|struck|\n9|hidden|by hand\n10|total|13 heads with the hidden row, 11 without")
	t.Asks("Liste", "9|asked|row hidden by hand: 55 W without, 65 W with; the typed sum counts it")
}

// A German bill of quantities: texts over several rows, quantities in the row of the item number.
func bootshaus() *excelize.File {
	p := typed.NewBook("LV")
	p.Put("A1", `
LEISTUNGSVERZEICHNIS Bootshaus Rabenquell, Titel 7 Beschallung|||||RQ-2150

OZ|Kurztext|Menge|ME|EP|GP
'07.01|Deckeneinbaustrahler, 6 W Übertrager 100 V, auf 3 W geschaltet,|18|St|'41,20|'741,60
|Montage in Umkleiden und Fluren (Linie 1)
'07.02|Tonsäule, 20 W Übertrager 100 V, auf 10 W geschaltet,|6|St|'112,00|'672,00
|Montage in der Bootshalle (Linie 2)
'07.03|wie vor, jedoch auf 20 W geschaltet, am Steg (Linie 2)|2|St|'112,00|'224,00
'07.04|Bedarfsposition: Trichter 15 W am Slip (Linie 3)|4|St|'75,00|nur EP
'07.05|Wandsteller 80 W für die Bootshalle|1|St|'52,00|'52,00
'07.06|Verstärker, 2 Linienausgänge je 120 W / 100 V|1|St|'815,00|'815,00
'07.07|Leitung 2 x 1,5 mm² verlegen, Linie 1|140|m|'2,10|'294,00
'07.08|Leitung 2 x 2,5 mm² verlegen, Linie 2|95|m|'2,80|'266,00
|Summe Titel 7||||'3.064,60
`)
	return p.File
}

func bootshausTruth(t *typed.Truth) {
	t.Is("RQ-2150", "Bootshaus Rabenquell", "German bill: texts that run on in the next row, 'wie vor', an optional item without a sum (not installed), money with full stops and commas, rated beside set watts")
	t.Speakers("sheet=LV; tap_v=100; line_v=100", `
rows|zone|count|tap_w|channel|control|status|note
4|Umkleiden und Flure|18|3|1||installed|place and line in the row below
6|Bootshalle|6|10|2|07.05|installed|
8|Steg|2|20|2||installed|as before, but 20 W
9|Slip|4|15|3||future|optional item, price only: not ordered
`)
	t.Channels("line_v=100", "channel|rated_w|load_w|note\n1|120|54|\n2|120|100|6x10 + 2x20\n3||0|optional only; the amplifier has two outputs")
	t.Amplifiers("", "rated_w|load_w|note\n240|154|unnamed")
	t.Controls("", "control|zone|rated_w|load_w|note\n07.05|Bootshalle|80|60|named only by its item number")
	t.Lines("material=copper; note=the quantity of an item: length of the whole line", `
line|to|length_m|area_mm2
07.07|Linie 1|140|1.5
07.08|Linie 2|95|2.5
`)
	t.Left("LV", "5|note|text of the row above\n7|note|text of the row above\n10|control|\n11|amplifier|\n12|cable|\n13|cable|\n14|total|money")
	t.Asks("LV", "9|assumed|the optional item is not installed")
}
