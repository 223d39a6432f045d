package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// The first half of the German files: an estimator, a caretaker, a test engineer, a consultant, two Austrian electricians.
var angebote = []typed.Case{
	{File: "angebote/AN 24-118 Hallenbad.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Angebot")
		p.Put("A1", `
Angebot AN 24-118
Beschallung Hallenbad Moosgrund, 100-V-Technik

Pos.|Menge|Einh.|Bezeichnung|EP €|GP €
'01|||Schwimmhalle
'01.01|8|Stk|Druckkammerlautsprecher, angezapft auf 15 W, Längswände|189|1512
'01.02|4|Stk|Wandlautsprecher, angezapft auf 10 W, Nichtschwimmerbecken|96|384
'02|||Umkleiden
'02.01|10|Stk|Deckeneinbaulautsprecher 6 W, Anzapfung 3 W, Sammelumkleide|42|420
'02.02|6|Stk|Deckeneinbaulautsprecher 6 W, Anzapfung 1,5 W, Duschen|42|252
'02.03|1|Stk|Lautstärkeregler 50 W für Umkleiden, AP|58|58
'03|||Foyer
'03.01|5|Stk|Deckeneinbaulautsprecher 6 W, Anzapfung 3 W, Kassenbereich|42|210
'03.02|1|Stk|Lautstärkeregler 20 W für Foyer, UP|49|49
'03.03|4|Stk|Bedarfsposition: Deckeneinbaulautsprecher 6 W, Anzapfung 3 W, Wartebereich|42|nur EP
'04|||Zentrale
'04.01|1|Stk|Mischverstärker 240 W mit 100-V-Ausgang|780|780
'04.02|1|Stk|Wandschrank 19 Zoll, 12 HE|310|310
'04.03|1|psch|Leitungsnetz komplett liefern und verlegen|2150|2150
'04.04|1|psch|Inbetriebnahme und Einweisung|390|390
|||Summe netto||6515
`)
		p.Bold("A1", "A4:F4", "D5", "D8", "D12", "D16", "D21:F21")
		p.Format("#,##0.00", "E5:F14", "E17:F21")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("AN 24-118", "Hallenbad Moosgrund", "priced offer; zones as numbered titles, size and tap in one sentence, an optional position, unnamed controls by zone, one unnamed amplifier")
		t.Speakers("sheet=Angebot; tap_v=100; line_v=100; zone=Schwimmhalle", `rows|room|count|tap_w
6|Längswände|8|15
7|Nichtschwimmerbecken|4|10`)
		t.Speakers("sheet=Angebot; tap_v=100; line_v=100; zone=Umkleiden", `rows|room|count|tap_w
9|Sammelumkleide|10|3
10|Duschen|6|1.5`)
		t.Speakers("sheet=Angebot; tap_v=100; line_v=100; zone=Foyer", `rows|room|count|tap_w
13|Kassenbereich|5|3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|214`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|214`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Umkleiden|50|39
|Foyer|20|15`)
		t.Left("Angebot", `15|optional|Bedarfsposition, not in the sum
18|other|cabinet
19|other|lump sum for cables
20|other|commissioning
21|total|sum of money`)
	}},

	{File: "hausmeister/Durchsage Haus B.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Lautsprecher Durchsage Haus B (nach dem Umbau);;;;
Stock;Raum;Stück;Watt je Stück;Regler
EG;Flur Nord;4;3;
EG;Flur Süd;4;3;
EG;Aula;6;6;R1
EG;Werkraum;1;3;R2
EG;Hausmeister;1;1,5;R3
1. OG;Flur;6;3;
1. OG;Lehrerzimmer;2;1,5;R4
1. OG;Klassen 101-108;8;1,5;
2. OG;Flur;6;3;
2. OG;Physik;1;3;
2. OG;Klassen 201-206;6;1,5;
Hof;Hofseite;2;10;
Hof;Eingang Turnhalle;1;10;
;zusammen;48;;
;;;;
Verstärker 240 W an 100 V, eine Leitung für alles;;;;
R1 60 W, R2 und R3 je 6 W, R4 12 W;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Haus B", "Windows-1252; floors as a column, ratings of controls in a sentence below, one unnamed amplifier")
		t.Speakers("tap_v=100; line_v=100; zone=EG; note=floor as zone", `rows|room|count|tap_w|control
3|Flur Nord|4|3|
4|Flur Süd|4|3|
5|Aula|6|6|R1
6|Werkraum|1|3|R2
7|Hausmeister|1|1.5|R3`)
		t.Speakers("tap_v=100; line_v=100; zone=1. OG; note=floor as zone", `rows|room|count|tap_w|control
8|Flur|6|3|
9|Lehrerzimmer|2|1.5|R4
10|Klassen 101-108|8|1.5|`)
		t.Speakers("tap_v=100; line_v=100; zone=2. OG; note=floor as zone", `rows|room|count|tap_w
11|Flur|6|3
12|Physik|1|3
13|Klassen 201-206|6|1.5`)
		t.Speakers("tap_v=100; line_v=100; zone=Hof; note=area as zone", `rows|room|count|tap_w
14|Hofseite|2|10
15|Eingang Turnhalle|1|10`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|157.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|157.5`)
		t.Controls("", `control|rated_w|load_w
R1|60|36
R2|6|3
R3|6|1.5
R4|12|3`)
		t.Left("", `16|total|pieces`)
	}},

	{File: "protokolle/Linienmessung Theater 7741.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Lautsprecher")
		p.Put("A1", `
Theater am Birkenwall, ELA-Anlage 100 V|||||Auftrag 7741

Linie|Raum|Typ|Anzahl|Abgriff (W)|Regler
L1|Foyer unten|Decke|8|3
L1|Garderobe|Decke|4|3|R1 (24 W)
L1|Kassenhalle|Decke|3|1.5
L2|Foyer oben|Decke|6|3
L2|Wandelgang|Wand|4|6
L3|Künstlergarderoben|Decke|6|1.5
L3|Probebühne|Wand|2|6|R2 (24 W)
L3|Maske|Decke|1|1.5|R3 (6 W)
L4|Werkstatt|Horn|2|10
L4|Magazin|Horn|1|10
`)
		p.Bold("A1", "A3:F3")
		q := p.Sheet("Messung")
		q.Put("A1", `
Messung der Linien am 14.09.2021, 1 kHz, Regler voll auf

Linie|Verstärker|Ausgang|Nennleistung (W)|Z gemessen (Ohm)|P aus Messung (W)|Soll (W)|Isolation (MOhm)|Befund
L1|V1|A|60|246|40.7|40.5|> 20|i. O.
L2|V1|B|60|232|43.1|42|> 20|i. O.
L3|V2|A|60|429|23.3|22.5|> 20|i. O.
L4|V2|B|60|312|32.1|30|14|i. O.
`)
		q.Bold("A3:I3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("7741", "Theater am Birkenwall", "test record; lines joined to outputs on a second sheet, measured watts that are not the load, ratings of controls in brackets")
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V1; channel=A", `rows|room|count|tap_w|control
4|Foyer unten|8|3|
5|Garderobe|4|3|R1
6|Kassenhalle|3|1.5|`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V1; channel=B", `rows|room|count|tap_w
7|Foyer oben|6|3
8|Wandelgang|4|6`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V2; channel=A", `rows|room|count|tap_w|control
9|Künstlergarderoben|6|1.5|
10|Probebühne|2|6|R2
11|Maske|1|1.5|R3`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V2; channel=B", `rows|room|count|tap_w
12|Werkstatt|2|10
13|Magazin|1|10`)
		t.Channels("line_v=100; rated_w=60", `amplifier|channel|load_w
V1|A|40.5
V1|B|42
V2|A|22.5
V2|B|30`)
		t.Amplifiers("", `amplifier|load_w
V1|82.5
V2|52.5`)
		t.Controls("", `control|rated_w|load_w
R1|24|12
R2|24|12
R3|6|1.5`)
	}},

	{File: "planung/Raumbuch Salzmuseum ELA.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Raumbuch")
		p.Put("A1", `
Salzmuseum Querlingen, Raumbuch Gewerk ELA
Projekt 2019-044, Stand 03.06.2019

Raum-Nr.|Bezeichnung|Fläche|Decken-LS||Wand-LS||Steller|Linie
||m²|Stk.|W/Stk.|Stk.|W/Stk.
'0.01|Eingangshalle|112|6|3|2|6||1
'0.02|Kasse|48|4|1.5|||S1|1
'0.03|Sudhaus|260|||8|10||2
'0.04|WC-Anlage|32|3|1.5||||1
'1.01|Ausstellung A|210|10|3||||3
'1.02|Ausstellung B|185|8|3|2|6||3
'1.03|Museumspädagogik|64|4|3|||S2|3
'1.04|Vortragsraum|96|4|3|2|6|S3|3
|Summe|1007|39||14

Linie|Verstärker|Leistung (W)
1|V1|120
2|V2|120
3|V3|240

Linien 100 V. Steller S1 und S2 je 20 W, S3 35 W.
`)
		p.Merge("A4:A5", "B4:B5", "D4:E4", "F4:G4", "H4:H5", "I4:I5")
		p.Bold("A1", "A4:I5", "B14:F14", "A16:C16")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2019-044", "Salzmuseum Querlingen", "room data; two kinds of loudspeaker a row under a header of two rows, lines given to amplifiers below, ratings of controls in a sentence")
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; amplifier=V1; channel=1", `rows|room|count|tap_w|control
6|Eingangshalle|6|3|
6|Eingangshalle|2|6|
7|Kasse|4|1.5|S1
9|WC-Anlage|3|1.5|`)
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; amplifier=V2; channel=2", `rows|room|count|tap_w
8|Sudhaus|8|10`)
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; amplifier=V3; channel=3", `rows|room|count|tap_w|control
10|Ausstellung A|10|3|
11|Ausstellung B|8|3|
11|Ausstellung B|2|6|
12|Museumspädagogik|4|3|S2
13|Vortragsraum|4|3|S3
13|Vortragsraum|2|6|S3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|120|40.5
V2|2|120|80
V3|3|240|102`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|120|40.5
V2|120|80
V3|240|102`)
		t.Controls("", `control|rated_w|load_w
S1|20|6
S2|20|12
S3|35|24`)
		t.Left("Raumbuch", `14|total|area and pieces`)
	}},

	{File: "oesterreich/Eishalle Kaltenegg ELA.txt", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Eishalle Kaltenegg, ELA Bestand
100 V, V1 = 240 W (Halle), V2 = 120 W (Nebenräume)

Bereich	Ort	Stk	W/Stk	Verst	Regler
Halle	Bande Nord	4	20	V1	
Halle	Bande Süd	4	20	V1	
Halle	Tribüne	6	6	V1	
Nebenräume	Kassa	1	3	V2	P1 6 W
Nebenräume	Foyer	4	3	V2	
Nebenräume	Kabinen 1-4	4	6	V2	
Nebenräume	Kabinengang	5	1,5	V2	
Nebenräume	Eismeister	1	1,5	V2	P2 6 W
Nebenräume	Maschinenraum	1	10	V2	

Kabel	von	nach	Type	m
K1	V1	Bande Nord	2x2,5	85
K2	Bande Nord	Bande Süd	2x2,5	62
K3	V1	Tribüne	2x1,5	48
K4	V2	Foyer	2x1,5	30
K5	Foyer	Kassa	2x1,5	12
K6	V2	Kabinengang	2x1,5	40
K7	Kabinengang	Kabinen 1-4	2x1,5	25,5
K8	Kabinengang	Eismeister	2x1,5	9
K9	V2	Maschinenraum	2x1,5	33
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Eishalle Kaltenegg", "tabs; two tables in one text, ratings of amplifiers in the second line, name and rating of a control in one cell")
		t.Speakers("tap_v=100; line_v=100; zone=Halle; amplifier=V1", `rows|room|count|tap_w
5|Bande Nord|4|20
6|Bande Süd|4|20
7|Tribüne|6|6`)
		t.Speakers("tap_v=100; line_v=100; zone=Nebenräume; amplifier=V2", `rows|room|count|tap_w|control
8|Kassa|1|3|P1
9|Foyer|4|3|
10|Kabinen 1-4|4|6|
11|Kabinengang|5|1.5|
12|Eismeister|1|1.5|P2
13|Maschinenraum|1|10|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
V1|240|196
V2|120|58`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|240|196
V2|120|58`)
		t.Controls("", `control|rated_w|load_w
P1|6|3
P2|6|1.5`)
		t.Lines("", `from|to|length_m|area_mm2
V1|Bande Nord|85|2.5
Bande Nord|Bande Süd|62|2.5
V1|Tribüne|48|1.5
V2|Foyer|30|1.5
Foyer|Kassa|12|1.5
V2|Kabinengang|40|1.5
Kabinengang|Kabinen 1-4|25.5|1.5
Kabinengang|Eismeister|9|1.5
V2|Maschinenraum|33|1.5`)
	}},

	{File: "oesterreich/Aufnahme Bücherei.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Aufnahme")
		p.Put("A1", `
Bücherei Steinriegel, Aufnahme vor Ort 17.5.
Verstärker im Kammerl Parterre: 120 W, 100 V, nur ein Ausgang

Geschoß|Raum|Stk.|Type|eingestellt auf|Anmerkung
Parterre|Windfang|1|Einbau|1,5 W
"|Ausleihe|4|"|3 W|Regler 24 W bei der Theke
"|Zeitschriften|3|"|"|hängt am selben Regler wie Ausleihe
"|Garderobe|1|"|1,5 W
1. Stock|Lesesaal|6|Aufbau|3 W
"|Kinderecke|2|Einbau|1,5 W|eigener Regler 12 W
"|Büro|1|"|"|eigener Regler 6 W
2. Stock|Archiv|2|Aufbau|?|Abdeckung verklebt, Anzapfung nicht abgelesen
"|Gang|3|"|3 W
"|Stiegenhaus|2|"|"|abmontiert, liegen im Kammerl
`)
		p.Bold("A4:F4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Bücherei Steinriegel", "survey with ditto marks in several columns; unnamed controls in remarks, one of them for two rows; a tap not read, a row taken down")
		t.Speakers("sheet=Aufnahme; tap_v=100; line_v=100; zone=Parterre; note=floor as zone", `rows|room|count|tap_w
5|Windfang|1|1.5
6|Ausleihe|4|3
7|Zeitschriften|3|3
8|Garderobe|1|1.5`)
		t.Speakers("sheet=Aufnahme; tap_v=100; line_v=100; zone=1. Stock; note=floor as zone", `rows|room|count|tap_w
9|Lesesaal|6|3
10|Kinderecke|2|1.5
11|Büro|1|1.5`)
		t.Speakers("sheet=Aufnahme; tap_v=100; line_v=100; zone=2. Stock; note=floor as zone", `rows|room|count|tap_w
12|Archiv|2|
13|Gang|3|3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_min_w
|120|55.5`)
		t.Amplifiers("", `amplifier|rated_w
|120`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|24|21
|12|3
|6|1.5`)
		t.Left("Aufnahme", `14|removed|taken down, lying in the store`)
		t.Asks("Aufnahme", `12|asked|tap of the two in the archive`)
	}},
}
