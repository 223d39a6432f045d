package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// hauswarte are electricians and caretakers of Germany, Austria and Switzerland.
var hauswarte = []typed.Case{
	{File: "baeder/Freibad Sonnleite ELA 2024.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("ELA")
		p.Put("A1", `
Freibad Sonnleite - ELA-Anlage, Lautsprecherliste|||||Auftrag 24-117
Stand 12.03.2024, aufgenommen bei der Wartung, alles 100 V

Pos.|Ort|Typ|Stck|eingest. W|Summe W|Bemerkung
Zone 1 Eingang (Verstärker V1 Kanal 1, 120 W)
1|Kassenhalle|Decke|4|6|24|LSR 1 hinter dem Tresen, 35 W
2|Kassenraum|Decke|1|1.5|1.5|LSR 2, 5 W
3|Vorplatz|Horn|2|15|30
Zone 2 Umkleiden (Verstärker V1 Kanal 2, 120 W)
4|Umkleide Damen|Decke|6|3|18
5|Umkleide Herren|Decke|6|3|18
6|Sammelumkleide|Decke|3|3|9|LSR 3, 12 W
7|Sanitätsraum|Wand|1|3|3|LSR 4, 5 W
Zone 3 Becken (Verstärker V2, 240 W)
8|Schwimmerbecken|Horn|6|15|90|2 Stck am Maststumpf, neu verschraubt
9|Sprungturm|Horn|1|30|30
10|Nichtschwimmer|Horn|3|15|45
11|Planschbecken|Säule|2|6|12|Gehäuse vergilbt, i.O.
|Gesamt||35||280.5
`)
		p.Bold("A1", "A4:G4", "A5", "A9", "A14", "A19:G19")
		b := p.Sheet("Bestellung")
		b.Put("A1", `
Material für die Reparatur im April

Menge|Artikel|für
2|Horn 15 W|Ersatz Schwimmerbecken, auf Lager legen
1|Lautstärkeregler 35 W|Tresen, kratzt
50 m|Leitung 2x1,5|Vorplatz
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("24-117", "Freibad Sonnleite", "zones with their output as titles in the list; controls and their ratings in the remarks, beside remarks of other kinds; a second sheet orders spare parts")
		t.Speakers("sheet=ELA; tap_v=100; line_v=100; zone=Zone 1 Eingang; amplifier=V1; channel=1", `rows|tag|room|count|tap_w|control
6|1|Kassenhalle|4|6|LSR 1
7|2|Kassenraum|1|1.5|LSR 2
8|3|Vorplatz|2|15|`)
		t.Speakers("sheet=ELA; tap_v=100; line_v=100; zone=Zone 2 Umkleiden; amplifier=V1; channel=2", `rows|tag|room|count|tap_w|control
10|4|Umkleide Damen|6|3|
11|5|Umkleide Herren|6|3|
12|6|Sammelumkleide|3|3|LSR 3
13|7|Sanitätsraum|1|3|LSR 4`)
		t.Speakers("sheet=ELA; tap_v=100; line_v=100; zone=Zone 3 Becken; amplifier=V2", `rows|tag|room|count|tap_w
15|8|Schwimmerbecken|6|15
16|9|Sprungturm|1|30
17|10|Nichtschwimmer|3|15
18|11|Planschbecken|2|6`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|120|55.5
V1|2|120|48
V2||240|177`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1||103.5
V2|240|177`)
		t.Controls("", `control|rated_w|load_w
LSR 1|35|24
LSR 2|5|1.5
LSR 3|12|9
LSR 4|5|3`)
		t.Left("ELA", `5|title|zone and its output
9|title|zone and its output
14|title|zone and its output
19|total|sums`)
		t.Left("Bestellung", `4|order|material for the store
5|order|material
6|order|material`)
	}},

	{File: "museen/Bergmuseum Hochleiten Durchsage.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Tabelle1")
		p.Put("A1", `
Bergmuseum Hochleiten - Durchsage und Hintergrundmusik
erstellt Juni 2019, Haustechnik

Raum|Lautsprecher (Stk x W)|Lautstärkesteller|Ausgang
Erdgeschoß
Foyer|6x3|36 W|1
Kassa|1x1,5|6 W|1
Garderobe|2x1,5|-|1
WC-Gang|2x1,5|-|1
1. Stock
Saal Bergbau|6x3|36 W|2
Saal Tracht|4x3|20 W|2
Stiegenhaus|2x3|-|2
Dachgeschoß
Sonderausstellung|8x3|36 W|3
Werkstatt|1x6|12 W|3
Depot (Lautsprecher abgeklemmt)|2x3|-|3

Verstärker im Keller: 4 Ausgänge zu je 120 W, 100 V. Ausgang 4 ist frei.
Durchsage geht überall hin, Musik nur EG und 1. Stock.
`)
		p.Bold("A1", "A5", "A10", "A14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Bergmuseum Hochleiten", "count and tap in one cell; controls without a name, only their rating; the amplifier in a sentence")
		t.Speakers("sheet=Tabelle1; tap_v=100; line_v=100", `rows|room|count|tap_w|channel
6|Foyer|6|3|1
7|Kassa|1|1.5|1
8|Garderobe|2|1.5|1
9|WC-Gang|2|1.5|1
11|Saal Bergbau|6|3|2
12|Saal Tracht|4|3|2
13|Stiegenhaus|2|3|2
15|Sonderausstellung|8|3|3
16|Werkstatt|1|6|3`)
		t.Channels("line_v=100", `channel|rated_w|load_w
1|120|25.5
2|120|36
3|120|30`)
		t.Amplifiers("", `amplifier|load_w
|91.5`)
		t.Controls("note=unnamed", `zone|rated_w|load_w
Foyer|36|18
Kassa|6|1.5
Saal Bergbau|36|18
Saal Tracht|20|12
Sonderausstellung|36|24
Werkstatt|12|6`)
		t.Left("Tabelle1", `5|title|floor
10|title|floor
14|title|floor
17|device|disconnected
19|note|the amplifier`)
	}},

	{File: "reitanlagen/Reithalle Pruefliste Lautsprecher.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Latin1(typed.DOS(`
"Nr";"Gebäude";"Standort";"Bauart";"Watt";"Linie";"Regler";"Zustand";"Prüfdatum"
"1";"Reithalle";"Bande Nord 1";"Horn";"15";"L1";"";"i.O.";"14.02.2023"
"2";"Reithalle";"Bande Nord 2";"Horn";"15";"L1";"";"i.O.";"14.02.2023"
"3";"Reithalle";"Bande Süd 1";"Horn";"15";"L1";"";"i.O.";"14.02.2023"
"4";"Reithalle";"Bande Süd 2";"Horn";"15";"L1";"";"ausgebaut";"14.02.2023"
"5";"Reithalle";"Richterkabine";"Decke";"1,5";"L1";"LR-A";"i.O.";"14.02.2023"
"6";"Reithalle";"Tribüne links";"Säule";"20";"L1";"";"i.O.";"14.02.2023"
"7";"Reithalle";"Tribüne rechts";"Säule";"20";"L1";"";"i.O., leise";"14.02.2023"
"8";"Stall";"Stallgasse West vorn";"Horn";"10";"L2";"";"i.O.";"15.02.2023"
"9";"Stall";"Stallgasse West hinten";"Horn";"10";"L2";"";"i.O.";"15.02.2023"
"10";"Stall";"Stallgasse Ost vorn";"Horn";"10";"L2";"";"i.O.";"15.02.2023"
"11";"Stall";"Stallgasse Ost hinten";"Horn";"10";"L2";"";"neu 2022";"15.02.2023"
"12";"Stall";"Sattelkammer";"Decke";"3";"L2";"LR-B";"i.O.";"15.02.2023"
"13";"Stall";"Sattelkammer";"Decke";"3";"L2";"LR-B";"i.O.";"15.02.2023"
"14";"Stall";"Büro";"Decke";"3";"L2";"LR-C";"Regler kratzt";"15.02.2023"
"15";"";"Lager";"Horn";"15";"";"";"Ersatz";""
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "export of a database, one row a loudspeaker, states in words; no rating and no line voltage anywhere")
		t.Speakers("channel=L1", `rows|tag|room|tap_w|control
2|1|Bande Nord 1|15|
3|2|Bande Nord 2|15|
4|3|Bande Süd 1|15|
6|5|Richterkabine|1.5|LR-A
7|6|Tribüne links|20|
8|7|Tribüne rechts|20|`)
		t.Speakers("channel=L1; status=removed", `rows|tag|room|tap_w
5|4|Bande Süd 2|15`)
		t.Speakers("channel=L2", `rows|tag|room|tap_w|control
9|8|Stallgasse West vorn|10|
10|9|Stallgasse West hinten|10|
11|10|Stallgasse Ost vorn|10|
12|11|Stallgasse Ost hinten|10|
13|12|Sattelkammer|3|LR-B
14|13|Sattelkammer|3|LR-B
15|14|Büro|3|LR-C`)
		t.Speakers("status=spare", `rows|tag|room|tap_w
16|15|Lager|15`)
		t.Channels("", `channel|load_w
L1|86.5
L2|49`)
		t.Controls("", `control|load_w
LR-A|1.5
LR-B|6
LR-C|3`)
		t.Left("", `5|device|taken out
16|device|spare in the store`)
	}},

	{File: "gaerten/Schauhaeuser Lindental.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Beschallung")
		p.Put("A1", `
Schauhäuser Lindental - Beschallung (100 V)

Haus|Palmenhaus|Kakteenhaus|Orchideenhaus|Eingang|Verwaltung|Freiland
Art|Wandbox|Wandbox|Wandbox|Einbau|Einbau|Horn
Stück|6|4|2|2|3|5
je W|6|6|3|3|1.5|15
zusammen W|36|24|6|6|4.5|75
Regler|R1 (50 W)|R2 (30 W)|-|R3 (10 W)|-|-
Verstärker|A|A|A|A|A|B
Kabellänge m|60|45|80|20|35|210
Querschnitt mm²|1.5|1.5|1.5|1.5|0.75|2.5

Verstärker A hat 120 W, Verstärker B auch 120 W. Beide stehen im Heizraum.
Im Freiland bitte nie lauter als 15 W je Horn stellen, Nachbarn!
`)
		p.Bold("A1", "A3:A11", "B3:G3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Schauhäuser Lindental", "a house a column; controls with their rating in brackets; amplifiers in a sentence")
		t.Speakers("sheet=Beschallung; tap_v=100; line_v=100", `rows|room|count|tap_w|control|amplifier
B|Palmenhaus|6|6|R1|A
C|Kakteenhaus|4|6|R2|A
D|Orchideenhaus|2|3||A
E|Eingang|2|3|R3|A
F|Verwaltung|3|1.5||A
G|Freiland|5|15||B`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|120|76.5
B|120|75`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|120|76.5
B|120|75`)
		t.Controls("", `control|rated_w|load_w
R1|50|36
R2|30|24
R3|10|6`)
		t.Lines("", `zone|length_m|area_mm2
Palmenhaus|60|1.5
Kakteenhaus|45|1.5
Orchideenhaus|80|1.5
Eingang|20|1.5
Verwaltung|35|0.75
Freiland|210|2.5`)
	}},

	{File: "seen/Bootshaus Seeried Messprotokoll.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Messprotokoll")
		p.Put("A1", `
Bootshaus Seeried|||||Auftrag 90412
Messprotokoll ELA 100 V|||||3.5.2021, Messbrücke 1 kHz

Linie|Standort|Typ|Anz.|je W|total W
1|Bootshalle|Trichter|4|10|40
1|Vordach|Trichter|2|10|20
2|Garderobe D|Decke|2|3|6
2|Garderobe H|Decke|2|3|6
2|Krafttraining|Wand|2|6|12
2|Schulungsraum|Decke|4|3|12
3|Steg|Trichter|3|15|45

Linie|Verstärker W|Last gerechnet W|Z soll Ohm|Z gemessen Ohm|Befund
1|120|60|167|171|i.O.
2|60|36|278|190|zu tief, vermutlich ein Abgriff falsch. Schulungsraum kontrollieren!
3|120|45|222|>2000|Leitung unterbrochen, Steg saniert Mai 21

Im Schulungsraum und im Krafttraining je ein Lautstärkeregler 20 W neben der Türe.
`)
		p.Bold("A1:A2", "A4:F4", "A13:F13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("90412", "Bootshaus Seeried", "a measuring report: list, then a table of lines with nominal and measured impedance; unnamed controls in a sentence")
		t.Speakers("sheet=Messprotokoll; tap_v=100; line_v=100", `rows|channel|room|count|tap_w
5|1|Bootshalle|4|10
6|1|Vordach|2|10
7|2|Garderobe D|2|3
8|2|Garderobe H|2|3
9|2|Krafttraining|2|6
10|2|Schulungsraum|4|3
11|3|Steg|3|15`)
		t.Channels("line_v=100", `channel|rated_w|load_w
1|120|60
2|60|36
3|120|45`)
		t.Controls("note=unnamed", `zone|rated_w|load_w
Schulungsraum|20|12
Krafttraining|20|12`)
		t.Left("Messprotokoll", `14|measured|impedance of a line
15|measured|impedance of a line
16|measured|impedance of a line`)
	}},
}
