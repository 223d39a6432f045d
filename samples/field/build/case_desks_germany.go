package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// desksGermany: an electrician, a service firm, a garden's planner, a museum's facility man and a lighting list.
var desksGermany = []typed.Case{
	{File: "desks/Aufmaß/Hallenbad Aufmaß ELA.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Aufmaß")
		p.Put("A1", `
Aufmaß Nr. 3||Auftrag 24-0816
Hallenbad Lindenau, ELA 100 V
||
Raum|Lautsprecher|Stück|eingest. W|Kreis|Bemerkung
Schwimmhalle Süd|Druckkammer|4|15|1|
Schwimmhalle Nord|Druckkammer|3|15|1|
Nichtschwimmer|Tonsäule|2|10|1|
Umkleide Damen|Decke|6|1.5|2|
Umkleide Herren|Decke|6|1.5|2|
Duschen|Decke FR|4|3|2|Feuchtraum
Föhnplätze|Decke|2|3|2|
Foyer|Decke|4|6|3|
Kasse|Decke|1|3|3|Regler 6 W unter der Theke
Aufenthaltsraum|Decke|5|6|3|Regler 36 W neben Tür
Schwimmmeister|Wand|1|3|3|
Technik UG|Druckkammer|1|10|3|
||
Verstärker (3 Ausgänge): Kreis 1 = 240 W, Kreis 2 = 60 W, Kreis 3 = 120 W
Leitung NYM 3x2,5, nach Rolle abgerechnet
`)
		p.Bold("A1", "A4:F4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("24-0816", "Hallenbad Lindenau", "electrician's measured list; ratings of the outputs in a line at the foot, two controls without names in remarks")
		t.Speakers("sheet=Aufmaß; tap_v=100; line_v=100; channel=1", `rows|room|count|tap_w
5|Schwimmhalle Süd|4|15
6|Schwimmhalle Nord|3|15
7|Nichtschwimmer|2|10`)
		t.Speakers("sheet=Aufmaß; tap_v=100; line_v=100; channel=2", `rows|room|count|tap_w
8|Umkleide Damen|6|1.5
9|Umkleide Herren|6|1.5
10|Duschen|4|3
11|Föhnplätze|2|3`)
		t.Speakers("sheet=Aufmaß; tap_v=100; line_v=100; channel=3", `rows|room|count|tap_w|note
12|Foyer|4|6|
13|Kasse|1|3|unnamed
14|Aufenthaltsraum|5|6|unnamed
15|Schwimmmeister|1|3|
16|Technik UG|1|10|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
|1|240|125
|2|60|36
|3|120|70`)
		t.Amplifiers("", `amplifier|load_w
|231`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|6|3
|36|30`)
	}},

	{File: "desks/Wartung/Prüfprotokoll Bhf Altmoor.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Protokoll")
		p.Put("A1", `
Prüfprotokoll Beschallungsanlage|||||||Wartungsvertrag WV 1187
Bahnhof Altmoor|||||||100 V
||
Linie|Bereich|Verst.|Nennleistung Verst. [W]|LS soll|LS ist|W je LS|gemessen [W]|Befund
1|Bahnsteig 1|V1|240|12|12|15|183|i. O.
2|Bahnsteig 2/3|V2|240|14|13|15|199|1 LS demontiert (Dachsanierung)
3|Unterführung|V3|120|8|8|6|49|i. O.
4|Empfangshalle|V4|120|10|10|6|58|i. O.
5|Reisezentrum|V5|60|6|6|3|18|i. O., Regler R5 (20 W) kratzt
6|Wartesaal|V6|60|4|4|6|25|i. O.
7|Busvorplatz|V7|120|5|5|15|77|i. O.
8|Personalräume|V8|60|9|8|3|24|1 LS fehlt seit Umbau, entfällt
|Summe||1020|68|66||633|
||
geprüft: H. W.
`)
		p.Bold("A1", "A4:I4", "B13:I13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("WV 1187", "Bahnhof Altmoor", "service record; counts planned and found, measured watts beside set ones, a control in a remark")
		t.Speakers("sheet=Protokoll; tap_v=100; line_v=100", `rows|zone|amplifier|channel|count|tap_w|control
5|Bahnsteig 1|V1|1|12|15|
6|Bahnsteig 2/3|V2|2|13|15|
7|Unterführung|V3|3|8|6|
8|Empfangshalle|V4|4|10|6|
9|Reisezentrum|V5|5|6|3|R5
10|Wartesaal|V6|6|4|6|
11|Busvorplatz|V7|7|5|15|
12|Personalräume|V8|8|8|3|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|240|180
V2|2|240|195
V3|3|120|48
V4|4|120|60
V5|5|60|18
V6|6|60|24
V7|7|120|75
V8|8|60|24`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|240|180
V2|240|195
V3|120|48
V4|120|60
V5|60|18
V6|60|24
V7|120|75
V8|60|24`)
		t.Controls("", `control|zone|rated_w|load_w
R5|Reisezentrum|20|18`)
		t.Left("Protokoll", `13|total|sums`)
	}},

	{File: "desks/Leuchtenliste Stadtbibliothek.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Leuchten")
		p.Put("A1", `
Stadtbibliothek Rehfelden - Leuchtenliste|||||||Projekt 2207
Raum|Bezeichnung|Leuchte|Stk.|W/Stk.|W ges.|Stromkreis|Dimmer
0.01|Windfang|Einbau rund|2|9|18|1F3|
0.02|Ausleihe|Pendel|8|32|256|1F3|D1
0.03|Lesesaal|Pendel|14|32|448|1F4|D2
0.04|Kinderecke|Einbau rund|6|12|72|1F4|D3
0.05|Büro|Rasterleuchte|4|36|144|1F5|
0.06|Teeküche|Unterbau|1|8|8|1F5|
0.07|WC|Einbau rund|5|9|45|1F5|
1.01|Galerie|Stromschiene 3~, Strahler|18|15|270|2F1|D4
1.02|Magazin|Feuchtraumleuchte|12|28|336|2F2|
1.03|Treppe|Wandleuchte|6|10|60|2F2|
||Summe|76||1657||
`)
		p.Bold("A1", "A2:H2")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2207", "Stadtbibliothek Rehfelden", "light fittings by room with watts, circuits and dimmers; no loudspeaker")
	}},

	{File: "desks/Garten/Kabelliste Beschallung.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Kabelliste")
		p.Put("A1", `
Botanischer Garten Wiesental, Projekt BG-52
Kabel-Nr.|von|nach|Typ|Querschnitt mm²|Länge m
K01|PV1.1|L01|NYY-J|2.5|64
K02|L01|L02|NYY-J|2.5|22
K03|L02|L03|NYY-J|2.5|22
K04|L03|L04|NYY-J|2.5|31
K05|PV1.2|RG1|NYM-J|1.5|8
K06|RG1|L05|NYM-J|1.5|14
K07|L05|L06|NYM-J|1.5|9
K08|PV1.2|L07|NYM-J|1.5|41
K09|PV2.1|L08|NYY-J|4|128
K10|L08|L09|NYY-J|4|35
`)
		p.Bold("A1", "A2:F2")
		q := p.Sheet("Lautsprecher")
		q.Put("A1", `
LS-Nr.|Standort|Ausführung|Anz.|Leistung W (100 V)
L01|Palmenhaus West|Kugel|1|10
L02|Palmenhaus Mitte|Kugel|1|10
L03|Palmenhaus Ost|Kugel|1|10
L04|Farnhaus|Kugel|1|6
L05|Seminarraum vorn|Einbau|2|3
L06|Seminarraum hinten|Einbau|2|3
L07|Kasse|Einbau|1|3
L08|Rosengarten|Pilz|4|15
L09|Teichufer|Pilz|3|15
`)
		q.Bold("A1:E1")
		r := p.Sheet("Zentrale")
		r.Put("A1", `
Gerät|Ausgang|Leistung W|Bemerkung
PV1|1|120|
PV1|2|60|
PV2|1|240|
RG1||20|Lautstärkeregler Seminarraum
`)
		r.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("BG-52", "Botanischer Garten Wiesental", "from-to cable list; what feeds a loudspeaker and what is behind the control follows from the cables only")
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=PV1; channel=1", `rows|tag|room|tap_w
2|L01|Palmenhaus West|10
3|L02|Palmenhaus Mitte|10
4|L03|Palmenhaus Ost|10
5|L04|Farnhaus|6`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=PV1; channel=2", `rows|tag|room|count|tap_w|control
6|L05|Seminarraum vorn|2|3|RG1
7|L06|Seminarraum hinten|2|3|RG1
8|L07|Kasse|1|3|`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=PV2; channel=1", `rows|tag|room|count|tap_w
9|L08|Rosengarten|4|15
10|L09|Teichufer|3|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
PV1|1|120|36
PV1|2|60|15
PV2|1|240|105`)
		t.Amplifiers("", `amplifier|load_w
PV1|51
PV2|105`)
		t.Controls("", `control|rated_w|load_w
RG1|20|12`)
		t.Lines("", `line|from|to|length_m|area_mm2
K01|PV1.1|L01|64|2.5
K02|L01|L02|22|2.5
K03|L02|L03|22|2.5
K04|L03|L04|31|2.5
K05|PV1.2|RG1|8|1.5
K06|RG1|L05|14|1.5
K07|L05|L06|9|1.5
K08|PV1.2|L07|41|1.5
K09|PV2.1|L08|128|4
K10|L08|L09|35|4`)
	}},

	{File: "desks/Bestand Uhrenmuseum quer.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Bestand")
		p.Put("A1", `
Uhrenmuseum Karlsbrück, Bestand Durchsageanlage, ein Verstärker mit 7 Ausgängen, 100 V
||
Linie|1|2|3|4|5|6|7
Raum|Eingang|Garderobe|Turmuhren|Taschenuhren|Werkstatt|Vortragssaal|Hof
Lautsprecher|Decke|Decke|Säule|Wand|Wand|Säule|Horn
Anzahl|3|2|4|6|2|4|2
Abgriff W|3|1.5|12|6|6|12|20
Regler|||||LR5|LR6|
Regler max. W|||||12|50|
Ausgang W|30|30|60|60|30|60|60
`)
		p.Bold("A1", "A3:A10")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Uhrenmuseum Karlsbrück", "runs across: a column a line, an output for each")
		t.Speakers("sheet=Bestand; tap_v=100; line_v=100", `rows|channel|room|count|tap_w|control
B|1|Eingang|3|3|
C|2|Garderobe|2|1.5|
D|3|Turmuhren|4|12|
E|4|Taschenuhren|6|6|
F|5|Werkstatt|2|6|LR5
G|6|Vortragssaal|4|12|LR6
H|7|Hof|2|20|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
|1|30|9
|2|30|3
|3|60|48
|4|60|36
|5|30|12
|6|60|48
|7|60|40`)
		t.Amplifiers("", `amplifier|load_w
|196`)
		t.Controls("", `control|rated_w|load_w
LR5|12|12
LR6|50|48`)
	}},
}
