package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// German: project folders of a planning office, contractors and a maintenance firm; a list of luminaires; a caretaker and an apprentice.
var ledgersGerman = []typed.Case{
	typed.Case{File: "ledgers/P0917 Hallenbad/P0917 ELA Lautsprecherliste Index B.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Deckblatt")
		p.Put("A1", `
Hallenbad Obersulm-Rieden
ELA-Anlage, Ausführungsplanung
||
Projekt-Nr.|P0917
Unterlage|Lautsprecher- und Verstärkerliste
Index|B
Linienspannung|100 V
||
Index|Datum|Änderung|gez.
-|12.01.2018|Ersterstellung|he
A|20.02.2018|Sauna ergänzt|he
B|06.03.2018|Regler Gymnastik von 12 W auf 24 W|kl
`)
		p.Bold("A1", "A9:D9")
		l := p.Sheet("Legende")
		l.Put("A1", `
Kürzel|Bedeutung|Schutzart|Farbe
DL|Deckenlautsprecher 6 W|IP20|weiß
DF|Deckenlautsprecher feuchtraumgeeignet 6 W|IP54|weiß
TK|Tonsäule 20 W|IP65|lichtgrau
DR|Druckkammerlautsprecher 15 W|IP66|grau
LR|Lautstärkeregler unter Putz|IP20|weiß
||
Die Leistungen der Legende sind Nennwerte, eingestellt wird nach Liste.
`)
		l.Bold("A1:D1")
		s := p.Sheet("Lautsprecher")
		s.Put("A1", `
Pos.|Raum-Nr.|Raumbezeichnung|Typ|Anzahl|Anzapfung [W]|Summe [W]|Linie|Plan
1|E.01|Eingangshalle|DL|6|3|18|L1|E-20
2|E.02|Kasse|DL|1|1.5|1.5|L1|E-20
3|E.03|Cafeteria|DL|4|3|12|L1|E-20
4|E.04|Umkleide Damen|DF|5|1.5|7.5|L2|E-20
5|E.05|Umkleide Herren|DF|5|1.5|7.5|L2|E-20
6|E.06|Duschen Damen|DF|2|1.5|3|L2|E-20
7|E.07|Duschen Herren|DF|2|1.5|3|L2|E-20
8|E.10|Schwimmhalle|TK|8|20|160|L3|E-21
9|E.11|Lehrschwimmbecken|TK|2|10|20|L3|E-21
10|E.12|Schwimmmeister|DL|1|1.5|1.5|L3|E-21
11|O.01|Sauna Ruheraum|DL|4|1.5|6|L4|E-22
12|O.02|Gymnastik|DL|4|3|12|L4|E-22
13|A.01|Liegewiese|DR|4|15|60|L5|E-23
||Gesamt||48||312||
`)
		s.Bold("A1:I1", "A15:I15")
		v := p.Sheet("Verstärker")
		v.Put("A1", `
Verstärker|HE|Ausgang|Linie|Bereich|Nennleistung [W]
V1|20|1|Linie 1|Eingang|60
V1|20|2|Linie 2|Umkleiden|60
V2|23|1|Linie 3|Schwimmhalle|240
V3|26|1|Linie 4|Obergeschoss|60
V3|26|2|Linie 5|Außen|120
`)
		v.Bold("A1:F1")
		r := p.Sheet("Regler")
		r.Put("A1", `
Bez.|Typ|Montageort|wirkt auf Pos.|Belastbarkeit
R1|LR|Theke Cafeteria|3|24 W
R2|LR|Schwimmmeister|10|6 W
R3|LR|O.01 neben Tür|11|12 W
R4|LR|O.02 neben Tür|12|24 W
`)
		r.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("P0917", "Hallenbad Obersulm-Rieden", "planning office; five sheets, L1 in the list is Linie 1 in the rack, areas only there, nominal ratings in the legend that are not the taps, controls by position number")
		t.Revision("B", false)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; zone=Eingang; amplifier=V1; channel=1", `rows|tag|room|model|count|tap_w|control
2|1|Eingangshalle|DL|6|3|
3|2|Kasse|DL|1|1.5|
4|3|Cafeteria|DL|4|3|R1`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; zone=Umkleiden; amplifier=V1; channel=2", `rows|tag|room|model|count|tap_w
5|4|Umkleide Damen|DF|5|1.5
6|5|Umkleide Herren|DF|5|1.5
7|6|Duschen Damen|DF|2|1.5
8|7|Duschen Herren|DF|2|1.5`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; zone=Schwimmhalle; amplifier=V2; channel=1", `rows|tag|room|model|count|tap_w|control
9|8|Schwimmhalle|TK|8|20|
10|9|Lehrschwimmbecken|TK|2|10|
11|10|Schwimmmeister|DL|1|1.5|R2`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; zone=Obergeschoss; amplifier=V3; channel=1", `rows|tag|room|model|count|tap_w|control
12|11|Sauna Ruheraum|DL|4|1.5|R3
13|12|Gymnastik|DL|4|3|R4`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; zone=Außen; amplifier=V3; channel=2", `rows|tag|room|model|count|tap_w
14|13|Liegewiese|DR|4|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|60|31.5
V1|2|60|21
V2|1|240|181.5
V3|1|60|18
V3|2|120|60`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1||52.5
V2|240|181.5
V3||78`)
		t.Controls("", `control|rated_w|load_w
R1|24|12
R2|6|1.5
R3|12|6
R4|24|12`)
		t.Left("Lautsprecher", `15|total|sums`)
	}},

	{File: "ledgers/Bf Talheim/Bf Talheim ELA Bestand + Kabel.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Lautsprecher")
		p.Put("A1", `
Bahnhof Talheim Süd, Beschallung, Bestandsunterlage
Auftrag 4-31077|||Stand 08/2020
||
Bereich|Standort|Bauart|Stück|je W|Regler
Bahnsteig 1|Mast 1 bis 6|Druckkammer|6|10|
Bahnsteig 1|Treppenabgang|Druckkammer|1|5|
Bahnsteig 2|Mast 7 bis 12|Druckkammer|6|10|
Bahnsteig 2|Aufzug|Druckkammer|1|5|
Unterführung|Nord|Wandgehäuse|3|6|
Unterführung|Süd|Wandgehäuse|3|6|
Empfangsgebäude|Schalterhalle|Decke|8|6|
Empfangsgebäude|Wartebereich|Decke|4|3|LR 1
Empfangsgebäude|Reisezentrum|Decke|4|3|LR 2
Empfangsgebäude|WC-Vorraum|Decke|1|1,5|
Betriebsräume|Aufsicht|Decke|1|3|LR 3
Betriebsräume|Pausenraum|Decke|2|3|LR 4
Betriebsräume|Flur|Decke|3|1,5|
`)
		p.Bold("A1", "A4:F4")
		s := p.Sheet("Schrank 19 Zoll")
		s.Put("A1", `
Einschub|Bezeichnung|Kanal|Leistung an 100 V|versorgt|Seriennr.
1|Endstufe E1|A|120 W|Bstg. 1|0037-11
2|Endstufe E1|B|120 W|Bstg. 2|0037-11
3|Endstufe E2|A|60 W|Unterf.|0037-12
4|Endstufe E2|B|120 W|EG (Empfangsgeb.)|0037-12
5|Endstufe E3|A|60 W|Betriebsr.|0037-15
||
Regler
Nr.|Belastbarkeit|Ort
LR1|20 W|Schalter 2
LR2|20 W|Reisezentrum
LR3|6 W|Aufsicht
LR4|10 W|Pausenraum
`)
		s.Bold("A1:F1", "A8", "A9:C9")
		k := p.Sheet("Kabelliste")
		k.Put("A1", `
Kabel|von|nach|Bereich|Typ|Länge m
K101|E1/A|Mast 1|Bahnsteig 1|2 x 2,5 mm²|185
K102|E1/B|Mast 7|Bahnsteig 2|2 x 2,5 mm²|210
K103|E2/A|Unterführung Nord|Unterführung|2 x 1,5 mm²|95
K104|E2/B|Schalterhalle|Empfangsgebäude|2 x 1,5 mm²|40
K105|E3/A|Aufsicht|Betriebsräume|2 x 1,5 mm²|28,5
`)
		k.Bold("A1:F1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("4-31077", "Bahnhof Talheim Süd", "contractor's as-built; areas shortened in the rack, controls LR 1 and LR1, a cable list, decimal commas as text")
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; zone=Bahnsteig 1; amplifier=Endstufe E1; channel=A", `rows|room|count|tap_w
5|Mast 1 bis 6|6|10
6|Treppenabgang|1|5`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; zone=Bahnsteig 2; amplifier=Endstufe E1; channel=B", `rows|room|count|tap_w
7|Mast 7 bis 12|6|10
8|Aufzug|1|5`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; zone=Unterführung; amplifier=Endstufe E2; channel=A", `rows|room|count|tap_w
9|Nord|3|6
10|Süd|3|6`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; zone=Empfangsgebäude; amplifier=Endstufe E2; channel=B", `rows|room|count|tap_w|control
11|Schalterhalle|8|6|
12|Wartebereich|4|3|LR 1
13|Reisezentrum|4|3|LR 2
14|WC-Vorraum|1|1.5|`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; zone=Betriebsräume; amplifier=Endstufe E3; channel=A", `rows|room|count|tap_w|control
15|Aufsicht|1|3|LR 3
16|Pausenraum|2|3|LR 4
17|Flur|3|1.5|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
Endstufe E1|A|120|65
Endstufe E1|B|120|65
Endstufe E2|A|60|36
Endstufe E2|B|120|73.5
Endstufe E3|A|60|13.5`)
		t.Amplifiers("", `amplifier|load_w
Endstufe E1|130
Endstufe E2|109.5
Endstufe E3|13.5`)
		t.Controls("", `control|rated_w|load_w
LR 1|20|12
LR 2|20|12
LR 3|6|3
LR 4|10|6`)
		t.Lines("", `line|zone|from|to|length_m|area_mm2
K101|Bahnsteig 1|E1/A|Mast 1|185|2.5
K102|Bahnsteig 2|E1/B|Mast 7|210|2.5
K103|Unterführung|E2/A|Unterführung Nord|95|1.5
K104|Empfangsgebäude|E2/B|Schalterhalle|40|1.5
K105|Betriebsräume|E3/A|Aufsicht|28.5|1.5`)
	}},

	{File: "ledgers/Wartung/2021-06 Torfmuseum Prüfprotokoll.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Protokoll")
		p.Put("A1", `
Wartungsprotokoll Nr.|W-6120
Objekt|Torfmuseum Hagenmoor
Datum|15.06.2021
Anlage|1 Verstärker, 3 Ausgänge, 100 V
||
Ausgang|Leistung|Impedanz gemessen|Isolation|Ergebnis
1|120 W|134 Ohm|> 10 MOhm|i. O.
2|60 W|412 Ohm|> 10 MOhm|i. O.
3|60 W|480 Ohm|2 MOhm|beobachten
||
Mängel
1|LS 14 ohne Funktion, abgebaut und nicht ersetzt
2|LS 20 Gitter lose, befestigt
`)
		p.Bold("A6:E6", "A11")
		s := p.Sheet("Hörprobe")
		s.Put("A1", `
LS|Saal|Stufe W|Ausg.|Regler|Hörprobe
LS 01|Foyer|6|1||gut
LS 02|Foyer|6|1||gut
LS 03|Foyer|6|1||gut
LS 04|Foyer|6|1||gut
LS 05|Saal 1|10|1|R1|gut
LS 06|Saal 1|10|1|R1|gut
LS 07|Saal 1|10|1|R1|gut
LS 08|Saal 1|10|1|R1|leise
LS 09|Saal 2|5|1|R2|gut
LS 10|Saal 2|5|1|R2|gut
LS 11|Kino|6|2|R3|gut
LS 12|Kino|6|2|R3|gut
LS 13|Kino|6|2|R3|gut
LS 14|Kino|6|2|R3|defekt, abgebaut
LS 15|Garderobe|3|2||gut
LS 16|Shop|3|2|R4|gut
LS 17|Büro|1,5|3||gut
LS 18|Werkstatt|3|3||gut
LS 19|Lager|6|3||gut
LS 20|Hof|10|3||Gitter lose
`)
		s.Bold("A1:F1")
		r := p.Sheet("Regler")
		r.Put("A1", `
Regler|Saal|Typ / Leistung|Hörprobe
R 1|Saal 1|Übertrager-Regler 50 W|i. O.
R 2|Saal 2|Übertrager-Regler 20 W|i. O.
R 3|Kino|Übertrager-Regler 35 W|kratzt nicht mehr
R 4|Shop|Übertrager-Regler 5 W|i. O.
`)
		r.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("W-6120", "Torfmuseum Hagenmoor", "maintenance record, one loudspeaker a row, outputs of one unnamed amplifier on the record sheet with measured impedances, one loudspeaker taken down, rating of controls behind their kind")
		t.Speakers("sheet=Hörprobe; tap_v=100; line_v=100; channel=1", `rows|tag|room|tap_w|control
2|LS 01|Foyer|6|
3|LS 02|Foyer|6|
4|LS 03|Foyer|6|
5|LS 04|Foyer|6|
6|LS 05|Saal 1|10|R1
7|LS 06|Saal 1|10|R1
8|LS 07|Saal 1|10|R1
9|LS 08|Saal 1|10|R1
10|LS 09|Saal 2|5|R2
11|LS 10|Saal 2|5|R2`)
		t.Speakers("sheet=Hörprobe; tap_v=100; line_v=100; channel=2", `rows|tag|room|tap_w|control
12|LS 11|Kino|6|R3
13|LS 12|Kino|6|R3
14|LS 13|Kino|6|R3
16|LS 15|Garderobe|3|
17|LS 16|Shop|3|R4`)
		t.Speakers("sheet=Hörprobe; tap_v=100; line_v=100; channel=3", `rows|tag|room|tap_w
18|LS 17|Büro|1.5
19|LS 18|Werkstatt|3
20|LS 19|Lager|6
21|LS 20|Hof|10`)
		t.Channels("line_v=100", `channel|rated_w|load_w
1|120|74
2|60|24
3|60|20.5`)
		t.Amplifiers("", `amplifier|load_w
|118.5`)
		t.Controls("", `control|rated_w|load_w
R1|50|40
R2|20|10
R3|35|18
R4|5|3`)
		t.Left("Hörprobe", `15|removed|defective, taken down and not replaced`)
	}},

	{File: "ledgers/Angebote/AN-2290 Reithalle Preisblatt.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Mengen")
		p.Put("A1", `
AN-2290|Reithalle Vörder Heide, Beschallung 100 V
||
Kreis 1: Reitbahn, Verstärker PA1 (240 W)
Lfd.|Einbauort|Gerät|Menge|Einstellung
'1.1|Bande lange Seite links|Horn|3|15 W
'1.2|Bande lange Seite rechts|Horn|3|15 W
'1.3|Bande kurze Seiten|Horn|2|15 W
'1.4|Richterturm|Wandbox|1|5 W
|Summe Kreis 1||9|
||
Kreis 2: Tribüne und Reiterstube, Verstärker PA2 (120 W)
Lfd.|Einbauort|Gerät|Menge|Einstellung
'2.1|Tribüne unten|Wandbox|4|10 W
'2.2|Tribüne oben|Wandbox|3|10 W
'2.3|Reiterstube|Einbau|4|3 W
'2.4|Meldestelle|Einbau|1|3 W
|Summe Kreis 2||12|
||
Kreis 3: Stallungen, Verstärker PA3 (60 W)
Lfd.|Einbauort|Gerät|Menge|Einstellung
'3.1|Stallgasse Ost|Wandbox|3|5 W
'3.2|Stallgasse West|Wandbox|3|5 W
'3.3|Sattelkammer|Einbau|2|1,5 W
'3.4|Schmiede|Horn|1|7,5 W
|Summe Kreis 3||9|
`)
		p.Bold("A1:B1", "A3", "A11", "A19", "A9:E9", "A17:E17", "A25:E25")
		q := p.Sheet("Regler + Leitungen")
		q.Put("A1", `
Lautstärkeregler
Nr.|für Pos.|Ort|max.
LSR-1|2.3|Reiterstube|20 W
LSR-2|2.4|Meldestelle|6 W
LSR-3|3.3|Sattelkammer|6 W
||
Leitungen je Kreis
Kreis|Leitung|m
1|2x2,5|240
2|2x1,5|110
3|2x1,5|165
`)
		for i, at := range []string{"B3", "B4", "B5"} { // positions as text
			typed.Must(q.File.SetCellStr(q.Name, at, []string{"2.3", "2.4", "3.3"}[i]))
		}
		q.Bold("A1", "A2:D2", "A7", "A8:C8")
		r := p.Sheet("Preise")
		r.Put("A1", `
Artikel|EP €|Menge|GP €
Hornlautsprecher|88|9|792
Wandbox|64|14|896
Einbaulautsprecher|31|7|217
Lautstärkeregler|42|3|126
Verstärker 240/120/60|1980|1|1980
Montage pauschal|3400|1|3400
Angebotssumme netto|||7411
`)
		r.Bold("A1:D1", "A8:D8")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("AN-2290", "Reithalle Vörder Heide", "contractor's bid; circuits with their amplifiers in titles, subtotals, controls by position on a second sheet, prices of the same things on a third")
		t.Speakers("sheet=Mengen; tap_v=100; line_v=100; zone=Reitbahn; amplifier=PA1; note=area as zone", `rows|tag|room|count|tap_w
5|1.1|Bande lange Seite links|3|15
6|1.2|Bande lange Seite rechts|3|15
7|1.3|Bande kurze Seiten|2|15
8|1.4|Richterturm|1|5`)
		t.Speakers("sheet=Mengen; tap_v=100; line_v=100; zone=Tribüne und Reiterstube; amplifier=PA2; note=area as zone", `rows|tag|room|count|tap_w|control
13|2.1|Tribüne unten|4|10|
14|2.2|Tribüne oben|3|10|
15|2.3|Reiterstube|4|3|LSR-1
16|2.4|Meldestelle|1|3|LSR-2`)
		t.Speakers("sheet=Mengen; tap_v=100; line_v=100; zone=Stallungen; amplifier=PA3; note=area as zone", `rows|tag|room|count|tap_w|control
21|3.1|Stallgasse Ost|3|5|
22|3.2|Stallgasse West|3|5|
23|3.3|Sattelkammer|2|1.5|LSR-3
24|3.4|Schmiede|1|7.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
PA1|240|125
PA2|120|85
PA3|60|40.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
PA1|240|125
PA2|120|85
PA3|60|40.5`)
		t.Controls("", `control|rated_w|load_w
LSR-1|20|12
LSR-2|6|3
LSR-3|6|3`)
		t.Lines("note=one length a zone", `line|zone|length_m|area_mm2
1|Reitbahn|240|2.5
2|Tribüne und Reiterstube|110|1.5
3|Stallungen|165|1.5`)
		t.Left("Mengen", `9|total|sum of circuit 1
17|total|sum of circuit 2
25|total|sum of circuit 3`)
		t.Left("Preise", `2|price|same devices as in the list
3|price|same devices as in the list
4|price|same devices as in the list`)
	}},

	{File: "ledgers/Betriebshof/Leuchten und Dimmer Depot.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Leuchtenliste")
		p.Put("A1", `
Straßenbahndepot Wendlingstraße, Leuchtenliste
Auftrag 88-412
||
Pos.|Raum|Leuchte|Anzahl|je W|Stromkreis|Dimmer
1|Halle Gleis 1|Hallenstrahler LED|12|120|UV1.1|
2|Halle Gleis 2|Hallenstrahler LED|12|120|UV1.2|
3|Waschhalle|Feuchtraumleuchte|8|36|UV1.3|
4|Werkstatt|Feuchtraumleuchte|10|36|UV1.4|
5|Sandlager|Feuchtraumleuchte|4|36|UV1.4|
6|Fahrerraum|Einbaupaneel|6|30|UV2.1|D1
7|Schulungsraum|Einbaupaneel|9|30|UV2.2|D2
8|Leitstelle|Einbaupaneel|4|30|UV2.3|D3
9|Flur|Downlight|11|12|UV2.4|
10|Hof|Mastleuchte|6|80|UV3.1|
||Summe|82|||
`)
		p.Bold("A1", "A4:G4")
		q := p.Sheet("Dimmer")
		q.Put("A1", `
Dimmer|Ort|Belastbarkeit W|Einbau
D1|Fahrerraum|400|UP
D2|Schulungsraum|600|UP
D3|Leitstelle|400|UP
`)
		q.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("88-412", "Straßenbahndepot Wendlingstraße", "luminaires and dimmers with watts, circuits and counts, no loudspeakers")
	}},

	{File: "ledgers/Hausmeister/Lautsprecher Schule.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Tabelle1")
		p.Put("A1", `
Lautsprecher Grundschule Eichbühl (Stand Herbstferien)
||
Raum|Stück|Watt|Regler|Bemerkung
Pausenhalle|4|6|nein|
Treppenhaus unten|1|3|nein|
Treppenhaus oben|1|3|nein|
Klasse 1a|1|3|nein|
Klasse 1b|1|3|nein|
Klasse 2a|1|3|nein|hängt schief
Klasse 2b|1|3|nein|
Klasse 3a|1|3|nein|
Klasse 3b|1|3|nein|
Klasse 4a|1|3|nein|
Klasse 4b|1|3|nein|neu 2019
Musikraum|2|3|R1 12 W|
Lehrerzimmer|1|3|R2 6 W|
Sekretariat|1|1,5|R3 6 W|
Rektorat|1|1,5|R4 6 W|
Turnhalle|4|10|R5 50 W|Ballschutz
Schulhof|3|15|nein|
Heizraum|1|3|nein|
||
Verstärker steht im Sekretariat, 240 W, Linie 100 V, alles an einem Ausgang
`)
		p.Bold("A1", "A3:E3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Grundschule Eichbühl", "plain caretaker's list, controls with their rating in one cell, amplifier in a sentence")
		t.Speakers("sheet=Tabelle1; tap_v=100; line_v=100", `rows|room|count|tap_w|control
4|Pausenhalle|4|6|
5|Treppenhaus unten|1|3|
6|Treppenhaus oben|1|3|
7|Klasse 1a|1|3|
8|Klasse 1b|1|3|
9|Klasse 2a|1|3|
10|Klasse 2b|1|3|
11|Klasse 3a|1|3|
12|Klasse 3b|1|3|
13|Klasse 4a|1|3|
14|Klasse 4b|1|3|
15|Musikraum|2|3|R1
16|Lehrerzimmer|1|3|R2
17|Sekretariat|1|1.5|R3
18|Rektorat|1|1.5|R4
19|Turnhalle|4|10|R5
20|Schulhof|3|15|
21|Heizraum|1|3|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|154`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|154`)
		t.Controls("", `control|rated_w|load_w
R1|12|6
R2|6|3
R3|6|1.5
R4|6|1.5
R5|50|40`)
	}},

	{File: "ledgers/Azubi/Aufnahme Stadtbuecherei.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Aufnahme Stadtbücherei Rosental;Azubi 2. Lj.;;;
Nr;Geschoss;Ort;Typ;Watt
1;UG;Magazin;Aufbau;3
2;UG;Magazin;Aufbau;3
3;UG;Technik;Aufbau;3
4;EG;Windfang;Decke;1,5
5;EG;Ausleihe;Decke;3
6;EG;Ausleihe;Decke;3
7;EG;Ausleihe;Decke;3
8;EG;Zeitschriften;Decke;3
9;EG;Kinderecke;Decke;1,5
10;EG;Kinderecke;Decke;1,5
11;EG;WC;Decke;1,5
12;OG;Sachbuch;Decke;3
13;OG;Sachbuch;Decke;3
14;OG;Romane;Decke;3
15;OG;Lesesaal;Decke;1,5
16;OG;Lesesaal;Decke;1,5
17;OG;Vortragsraum;Säule;10
18;OG;Vortragsraum;Säule;10
;;;;
Verstärker hat drei Ausgänge: 1 = UG, 2 = EG, 3 = OG;;;;
100-Volt-Technik;;;;
Regler nur im Vortragsraum (36 W, steht LR drauf);;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Stadtbücherei Rosental", "plain apprentice's list, floors as zones, outputs without rating and the one control in sentences at the foot")
		t.Speakers("tap_v=100; line_v=100; zone=UG; channel=1", `rows|tag|room|tap_w
3|1|Magazin|3
4|2|Magazin|3
5|3|Technik|3`)
		t.Speakers("tap_v=100; line_v=100; zone=EG; channel=2", `rows|tag|room|tap_w
6|4|Windfang|1.5
7|5|Ausleihe|3
8|6|Ausleihe|3
9|7|Ausleihe|3
10|8|Zeitschriften|3
11|9|Kinderecke|1.5
12|10|Kinderecke|1.5
13|11|WC|1.5`)
		t.Speakers("tap_v=100; line_v=100; zone=OG; channel=3", `rows|tag|room|tap_w|control
14|12|Sachbuch|3|
15|13|Sachbuch|3|
16|14|Romane|3|
17|15|Lesesaal|1.5|
18|16|Lesesaal|1.5|
19|17|Vortragsraum|10|LR
20|18|Vortragsraum|10|LR`)
		t.Channels("line_v=100", `channel|load_w
1|9
2|18
3|32`)
		t.Amplifiers("", `amplifier|load_w
|59`)
		t.Controls("", `control|rated_w|load_w
LR|36|20`)
	}},
}
