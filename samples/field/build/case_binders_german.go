package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// German hands: a planner's book, a test record, a caretaker's CSV, an apprentice's matrix.
var bindersGerman = []typed.Case{

	{File: "binders/eishalle/ELA Eishalle Moorbach Bestand.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Deckblatt")
		p.Put("A1", `
Bestandsunterlagen ELA-Anlage
Objekt:|Eissporthalle Moorbach
Projekt-Nr.:|24-0917
Technik:|100-V-Linien, Zentrale im Technikraum EG
Stand:|Übergabe an den Betreiber
`)
		p.Bold("A1")
		s := p.Sheet("Lautsprecher")
		s.Put("A1", `
Linie|Raum|Bauart|Stück|Abgriff [W]|Summe [W]
L1|Eisfläche Nord|Druckkammer|4|15|60
L1|Eisfläche Süd|Druckkammer|4|15|60
L1|Spielerbank|Druckkammer|2|7.5|15
L2|Tribüne unten|Tonsäule|4|10|40
L2|Tribüne oben|Tonsäule|4|10|40
L3|Foyer|Einbau|5|3|15
L3|Kasse|Einbau|1|1.5|1.5
L3|Schlittschuhverleih|Einbau|2|3|6
L4|Umkleide 1|Einbau|1|3|3
L4|Umkleide 2|Einbau|1|3|3
L4|Umkleide 3|Einbau|1|3|3
L4|Schiedsrichter|Einbau|1|1.5|1.5
L4|Flur|Einbau|3|3|9
`)
		s.Bold("A1:F1")
		v := p.Sheet("Verstärker")
		v.Put("A1", `
Endstufe|Ausgang|Linie|Nennleistung [W]|Auslastung
V1|1|L1|250|54 %
V1|2|L2|250|32 %
V2|1|L3|120|19 %
V2|2|L4|120|16 %
`)
		v.Bold("A1:E1")
		r := p.Sheet("Regler")
		r.Put("A1", `
Bez.|Ort|Belastbarkeit|wirkt auf
R1|Kasse|35 W|ganze Linie L3
R2|Sprecherkabine|100 W|ganze Linie L2
`)
		r.Bold("A1:D1")
		k := p.Sheet("Kabel")
		k.Put("A1", `
Kabel-Nr.|Linie|von|nach|Typ|Länge [m]
W1|L1|Zentrale|Eisfläche Nord|2 x 4 mm²|85
W2|L2|Zentrale|Tribüne unten|2 x 2,5 mm²|60
W3|L3|Zentrale|Kasse|2 x 1,5 mm²|42
W4|L4|Zentrale|Umkleide 1|2 x 1,5 mm²|55
`)
		k.Bold("A1:F1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("24-0917", "Eissporthalle Moorbach", "five sheets joined by line numbers; regulators for whole lines")
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V1; channel=1", `rows|room|count|tap_w
2|Eisfläche Nord|4|15
3|Eisfläche Süd|4|15
4|Spielerbank|2|7.5`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V1; channel=2; control=R2", `rows|room|count|tap_w
5|Tribüne unten|4|10
6|Tribüne oben|4|10`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V2; channel=1; control=R1", `rows|room|count|tap_w
7|Foyer|5|3
8|Kasse|1|1.5
9|Schlittschuhverleih|2|3`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V2; channel=2", `rows|room|count|tap_w
10|Umkleide 1|1|3
11|Umkleide 2|1|3
12|Umkleide 3|1|3
13|Schiedsrichter|1|1.5
14|Flur|3|3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|250|135
V1|2|250|80
V2|1|120|22.5
V2|2|120|19.5`)
		t.Amplifiers("", `amplifier|load_w
V1|215
V2|42`)
		t.Controls("", `control|rated_w|load_w
R1|35|22.5
R2|100|80`)
		t.Lines("from=Zentrale", `line|to|length_m|area_mm2
W1|Eisfläche Nord|85|4
W2|Tribüne unten|60|2.5
W3|Kasse|42|1.5
W4|Umkleide 1|55|1.5`)
	}},

	{File: "binders/theater/Wartung Messprotokoll Linien.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Messung")
		p.Put("A1", `
Stadttheater Quellingen, Wartung 2. Halbjahr, Auftrag W-5530
||
Zone|Impedanz gemessen [Ohm]|Leistung gemessen [W]|Isolation [MOhm]|Befund
Saal|141|71|> 20|i. O.
Foyers|402|25|> 20|i. O.
Garderoben|660|15|> 20|i. O.
Werkstätten|265|38|3|Isolation gering, beobachten
`)
		p.Bold("A1", "A3:E3")
		s := p.Sheet("Lautsprecherliste")
		s.Put("A1", `
Nr.|Zone|Raum|Leistungsstufe 100 V
'01|Saal|Parkett links|10 W
'02|Saal|Parkett links|10 W
'03|Saal|Parkett rechts|10 W
'04|Saal|Parkett rechts|10 W
'05|Saal|Rang|15 W
'06|Saal|Rang|15 W
'07|Foyers|Hauptfoyer|6 W
'08|Foyers|Hauptfoyer|6 W
'09|Foyers|Rangfoyer|6 W
'10|Foyers|Garderobenhalle|6 W
'11|Garderoben|Solo 1|3 W
'12|Garderoben|Solo 2|3 W
'13|Garderoben|Chor|6 W
'14|Garderoben|Maske|3 W
'15|Werkstätten|Schreinerei|15 W
'16|Werkstätten|Schlosserei|15 W
'17|Werkstätten|Malsaal|6 W
`)
		s.Bold("A1:D1")
		v := p.Sheet("Gestell")
		v.Put("A1", `
HE|Gerät|Zone|Leistung
1-3|Leistungsverstärker LV1|Saal|120 W
4-6|Leistungsverstärker LV2|Foyers|60 W
7-9|Leistungsverstärker LV3|Garderoben|60 W
10-12|Leistungsverstärker LV4|Werkstätten|60 W
13|Sprechstellenanschluss||
14-15|Überwachungsfeld||
`)
		v.Bold("A1:D1")
		r := p.Sheet("Lautstärkesteller")
		r.Put("A1", `
Steller|hinter|für Lautsprecher Nr.|Leistung
LS-G1|Solo 1|11|6 W
LS-G2|Solo 2|12|6 W
LS-G3|Chor|13|12 W
LS-G4|Maske|14|6 W
`)
		r.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("W-5530", "Stadttheater Quellingen", "measured values on the first sheet are not ratings; list, rack and controls joined by zone and number; two-digit numbers as text")
		t.Speakers("sheet=Lautsprecherliste; tap_v=100; line_v=100; zone=Saal; amplifier=LV1", `rows|tag|room|tap_w
2|01|Parkett links|10
3|02|Parkett links|10
4|03|Parkett rechts|10
5|04|Parkett rechts|10
6|05|Rang|15
7|06|Rang|15`)
		t.Speakers("sheet=Lautsprecherliste; tap_v=100; line_v=100; zone=Foyers; amplifier=LV2; tap_w=6", `rows|tag|room
8|07|Hauptfoyer
9|08|Hauptfoyer
10|09|Rangfoyer
11|10|Garderobenhalle`)
		t.Speakers("sheet=Lautsprecherliste; tap_v=100; line_v=100; zone=Garderoben; amplifier=LV3", `rows|tag|room|tap_w|control
12|11|Solo 1|3|LS-G1
13|12|Solo 2|3|LS-G2
14|13|Chor|6|LS-G3
15|14|Maske|3|LS-G4`)
		t.Speakers("sheet=Lautsprecherliste; tap_v=100; line_v=100; zone=Werkstätten; amplifier=LV4", `rows|tag|room|tap_w
16|15|Schreinerei|15
17|16|Schlosserei|15
18|17|Malsaal|6`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
LV1|120|70
LV2|60|24
LV3|60|15
LV4|60|36`)
		t.Amplifiers("", `amplifier|rated_w|load_w
LV1|120|70
LV2|60|24
LV3|60|15
LV4|60|36`)
		t.Controls("", `control|rated_w|load_w
LS-G1|6|3
LS-G2|6|3
LS-G3|12|6
LS-G4|6|3`)
		t.Left("Messung", `4|test|measured line
5|test|measured line
6|test|measured line
7|test|measured line`)
		t.Left("Gestell", `6|equipment|paging connection
7|equipment|monitoring panel`)
	}},

	{File: "binders/bibliothek/durchsage_bibliothek.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Zone;Raum;Anzahl;Lautsprecher;Watt;Bemerkung
1;Magazin;3;Aufbau;6;
1;Magazin Flur;1;Aufbau;3;
2;Eingang;2;Decke;6;
2;Ausleihe;4;Decke;3;Regler hinter der Theke, 20 W
2;Zeitungen;2;Decke;1,5;hängt mit am Regler der Ausleihe
2;WC-Vorraum;1;Decke;1,5;
3;Lesesaal;6;Decke;1,5;
3;Gruppenraum;1;Decke;3;
3;Büro;1;Decke;1,5;
;;21;;;
;;;;;
"Stadtbücherei Ellerhude, Verstärker 60 W / 100 V im Büro";;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Stadtbücherei Ellerhude", "zones by number, a control without a name in remarks of two rows, amplifier in the last line")
		t.Speakers("tap_v=100; line_v=100; zone=1", `rows|room|count|tap_w
2|Magazin|3|6
3|Magazin Flur|1|3`)
		t.Speakers("tap_v=100; line_v=100; zone=2", `rows|room|count|tap_w|note
4|Eingang|2|6|
5|Ausleihe|4|3|unnamed
6|Zeitungen|2|1.5|unnamed
7|WC-Vorraum|1|1.5|`)
		t.Speakers("tap_v=100; line_v=100; zone=3", `rows|room|count|tap_w
8|Lesesaal|6|1.5
9|Gruppenraum|1|3
10|Büro|1|1.5`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|60|63`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|60|63`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|20|15`)
		t.Left("", `11|total|count of pieces`)
	}},

	{File: "binders/depot/Straßenbahndepot Matrix.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Matrix")
		p.Put("A1", `
Straßenbahndepot Nordring, Rufanlage 100 V, Auftrag 7741
Anzahl der Lautsprecher je Bereich und Leistungsstufe
||
Bereich|Verstärker|1,5 W|3 W|6 W|15 W|Stück
Wagenhalle|RV1 (120 W)||||6|6
Waschhalle|RV2 (60 W)|||2|2|4
Werkstatt|RV3 (60 W)|||5||5
Verwaltung|RV4 (60 W)|4|3|||7
Pausenräume|RV5 (30 W)|1|4|||5
Summe||5|7|7|8|27
||
Pausenräume mit Lautstärkeregler LR1, 20 W
`)
		p.Bold("A1", "A4:G4", "A10:G10")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("7741", "Straßenbahndepot Nordring", "a matrix of areas and taps, amplifier with its rating in a cell, regulator in a footnote")
		t.Speakers("sheet=Matrix; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|control
5|Wagenhalle|6|15|RV1|
6|Waschhalle|2|6|RV2|
6|Waschhalle|2|15|RV2|
7|Werkstatt|5|6|RV3|
8|Verwaltung|4|1.5|RV4|
8|Verwaltung|3|3|RV4|
9|Pausenräume|1|1.5|RV5|LR1
9|Pausenräume|4|3|RV5|LR1`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
RV1|120|90
RV2|60|42
RV3|60|30
RV4|60|15
RV5|30|13.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
RV1|120|90
RV2|60|42
RV3|60|30
RV4|60|15
RV5|30|13.5`)
		t.Controls("", `control|zone|rated_w|load_w
LR1|Pausenräume|20|13.5`)
		t.Left("Matrix", `10|total|sums`)
	}},
}
