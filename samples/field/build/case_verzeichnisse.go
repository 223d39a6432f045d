package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// The second half of the German files: two Swiss offices, a garden's planner, a project engineer with a change order.
var verzeichnisse = []typed.Case{
	{File: "schweiz/Planetarium Leuchtegg LS-Liste C.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("LS-Liste")
		p.Put("A1", `
Planetarium Leuchtegg, Lautsprecherliste|||Rev. C
Anlage 100 V

Endstufe 1, Ausgang A (120 W): Foyer und Kasse
Nr.|Raum|Typ|Trafo|Lautstärkesteller
LS 01-06|Foyer|Einbau|je 6 W|
LS 07|Kasse|Einbau|3 W|LST 1 (10 W)
LS 08-09|Garderobe|Einbau|je 3 W

Endstufe 1, Ausgang B (120 W): Kuppel und Nebenräume
Nr.|Raum|Typ|Trafo|Lautstärkesteller
LS 10-15|Umgang Kuppel|Aufbau|je 6 W
LS 16|Regie|Einbau|1.5 W|LST 2 (6 W)
LS 17|Sitzungszimmer|Einbau|3 W|LST 3 (6 W)

Endstufe 2, Ausgang A (60 W): Aussenanlage
Nr.|Raum|Typ|Trafo|Lautstärkesteller
LS 18-19|Zugang Sternwarte|Horn|je 10 W
LS 20|Parkplatz|Horn|15 W

Reserve im Magazin
LS 21-22|||je 6 W|nicht montiert
`)
		p.Bold("A1", "A4", "A10", "A16", "A21")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Planetarium Leuchtegg", "sections titled with amplifier, output, rating and area; counts only as ranges of numbers; spares under a title of their own")
		t.Revision("C", false)
		t.Speakers("sheet=LS-Liste; tap_v=100; line_v=100; zone=Foyer und Kasse; amplifier=Endstufe 1; channel=A; note=zone from the title above", `rows|tag|room|count|tap_w|control
6||Foyer|6|6|
7|LS 07|Kasse|1|3|LST 1
8||Garderobe|2|3|`)
		t.Speakers("sheet=LS-Liste; tap_v=100; line_v=100; zone=Kuppel und Nebenräume; amplifier=Endstufe 1; channel=B; note=zone from the title above", `rows|tag|room|count|tap_w|control
12||Umgang Kuppel|6|6|
13|LS 16|Regie|1|1.5|LST 2
14|LS 17|Sitzungszimmer|1|3|LST 3`)
		t.Speakers("sheet=LS-Liste; tap_v=100; line_v=100; zone=Aussenanlage; amplifier=Endstufe 2; channel=A; note=zone from the title above", `rows|tag|room|count|tap_w
18||Zugang Sternwarte|2|10
19|LS 20|Parkplatz|1|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
Endstufe 1|A|120|45
Endstufe 1|B|120|40.5
Endstufe 2|A|60|35`)
		t.Amplifiers("", `amplifier|rated_w|load_w
Endstufe 2|60|35`)
		t.Amplifiers("", `amplifier|load_w
Endstufe 1|85.5`)
		t.Controls("", `control|rated_w|load_w
LST 1|10|3
LST 2|6|1.5
LST 3|6|3`)
		t.Left("LS-Liste", `22|spare|spares in the store, not mounted`)
	}},

	{File: "schweiz/Inventar Gemeinde Beschallung.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Latin1(typed.DOS(`
Inventar Beschallung Gemeinde Tannwil;;;;;;;
Obj.-Nr.;Objekt;Raum;Typ;Anz.;W pro Stk.;Verstärker;Bemerkung
4101;Schulhaus Rebacker;Korridor EG;Decke;5;3;120 W;
4101;Schulhaus Rebacker;Korridor OG;Decke;5;3;120 W;
4101;Schulhaus Rebacker;Lehrerzimmer;Decke;2;1.5;120 W;Regler 10 W
4101;Schulhaus Rebacker;Pausenplatz;Horn;2;15;120 W;
4102;Turnhalle Rebacker;Halle;Wand;8;10;240 W;
4102;Turnhalle Rebacker;Geräteraum;Wand;1;6;240 W;
4102;Turnhalle Rebacker;Garderoben;Decke;4;3;240 W;Regler 20 W
4102;Turnhalle Rebacker;Eingang;Decke;2;3;240 W;
4110;Bibliothek Tannwil;Ausleihe;Decke;6;3;60 W;Regler 30 W
4110;Bibliothek Tannwil;Lesezimmer;Decke;4;1.5;60 W;
4110;Bibliothek Tannwil;Vorplatz;Horn;1;10;60 W;2022 demontiert
4115;Werkhof Tannwil;Einstellhalle;Horn;3;10;60 W;
4115;Werkhof Tannwil;Büro;Decke;1;1.5;60 W;Regler 6 W
;;;;;;;
Je Objekt ein Verstärker mit einer Linie, überall 100 V;;;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("4101", "Schulhaus Rebacker", "register of four objects, one unnamed amplifier each, its rating in every row; unnamed controls in remarks; ISO-8859-1, decimal points as in Switzerland")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w
3|Korridor EG|5|3
4|Korridor OG|5|3
5|Lehrerzimmer|2|1.5
6|Pausenplatz|2|15`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|120|63`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|120|63`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|10|3`)

		t.Also("4102", "Turnhalle Rebacker", "second object of the register")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w
7|Halle|8|10
8|Geräteraum|1|6
9|Garderoben|4|3
10|Eingang|2|3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|104`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|104`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|20|12`)

		t.Also("4110", "Bibliothek Tannwil", "third object of the register, a horn taken down")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w
11|Ausleihe|6|3
12|Lesezimmer|4|1.5`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|60|24`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|60|24`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|30|18`)
		t.Left("", `13|removed|taken down in 2022`)

		t.Also("4115", "Werkhof Tannwil", "fourth object of the register")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w
14|Einstellhalle|3|10
15|Büro|1|1.5`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|60|31.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|60|31.5`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|6|1.5`)
	}},

	{File: "planung/Garten Ahrenwiese Verteilung.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Verteilung")
		p.Put("A1", `
Botanischer Garten Ahrenwiese: Lautsprecher, Stückzahl je Leistungsstufe (100 V)

Bereich|Verstärker/ Ausgang|1,5 W|3 W|6 W|10 W|Summe W
Palmenhaus|VS1/1|||8|2|68
Kakteenhaus|VS1/2||4|2||24
Orchideenhaus|VS1/2|2|4|||15
Eingang und Kasse|VS2/1|3|2|||10.5
Seminarraum|VS2/1||4|||12
Betriebshof|VS2/1|2|||1|13
Freigelände Nord|VS2/2||||4|40
Freigelände Süd|VS2/2||||3|30
Stück||7|14|10|10|212.5

VS1 und VS2 haben je 2 Ausgänge zu 120 W.
Steller: ST1 (20 W) im Seminarraum, ST2 (12 W) für Eingang und Kasse.
`)
		p.Bold("A1", "A3:G3", "A12:G12")
		q := p.Sheet("Leitungen")
		q.Put("A1", `
Bereich|Leitung|Länge m|im Graben
Palmenhaus|2 x 2,5 mm²|145|ja
Kakteenhaus|2 x 1,5 mm²|60|nein
Orchideenhaus|2 x 1,5 mm²|72|nein
Eingang und Kasse|2 x 1,5 mm²|35|nein
Seminarraum|2 x 1,5 mm²|28|nein
Betriebshof|2 x 2,5 mm²|110|ja
Freigelände Nord|2 x 4 mm²|230|ja
Freigelände Süd|2 x 4 mm²|195|ja
`)
		q.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Botanischer Garten Ahrenwiese", "matrix of counts by tap and area; outputs written with a stroke; one sentence names both controls; cables by area on a second sheet")
		t.Speakers("sheet=Verteilung; tap_v=100; line_v=100; zone=Palmenhaus; amplifier=VS1; channel=1", `rows|count|tap_w
4|8|6
4|2|10`)
		t.Speakers("sheet=Verteilung; tap_v=100; line_v=100; zone=Kakteenhaus; amplifier=VS1; channel=2", `rows|count|tap_w
5|4|3
5|2|6`)
		t.Speakers("sheet=Verteilung; tap_v=100; line_v=100; zone=Orchideenhaus; amplifier=VS1; channel=2", `rows|count|tap_w
6|2|1.5
6|4|3`)
		t.Speakers("sheet=Verteilung; tap_v=100; line_v=100; zone=Eingang und Kasse; amplifier=VS2; channel=1; control=ST2", `rows|count|tap_w
7|3|1.5
7|2|3`)
		t.Speakers("sheet=Verteilung; tap_v=100; line_v=100; zone=Seminarraum; amplifier=VS2; channel=1; control=ST1", `rows|count|tap_w
8|4|3`)
		t.Speakers("sheet=Verteilung; tap_v=100; line_v=100; zone=Betriebshof; amplifier=VS2; channel=1", `rows|count|tap_w
9|2|1.5
9|1|10`)
		t.Speakers("sheet=Verteilung; tap_v=100; line_v=100; zone=Freigelände Nord; amplifier=VS2; channel=2", `rows|count|tap_w
10|4|10`)
		t.Speakers("sheet=Verteilung; tap_v=100; line_v=100; zone=Freigelände Süd; amplifier=VS2; channel=2", `rows|count|tap_w
11|3|10`)
		t.Channels("line_v=100; rated_w=120", `amplifier|channel|load_w
VS1|1|68
VS1|2|39
VS2|1|35.5
VS2|2|70`)
		t.Amplifiers("", `amplifier|load_w
VS1|107
VS2|105.5`)
		t.Controls("", `control|zone|rated_w|load_w
ST1|Seminarraum|20|12
ST2|Eingang und Kasse|12|10.5`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Palmenhaus|145|2.5
Kakteenhaus|60|1.5
Orchideenhaus|72|1.5
Eingang und Kasse|35|1.5
Seminarraum|28|1.5
Betriebshof|110|2.5
Freigelände Nord|230|4
Freigelände Süd|195|4`)
		t.Left("Verteilung", `12|total|pieces and watts`)
	}},

	{File: "nachtraege/Bf Querfeld LS-Liste NT3.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("LS-Liste")
		p.Put("A1", `
Bahnhof Querfeld, Lautsprecherliste, Nachtrag 3 eingearbeitet
Altes ist durchgestrichen

Zone|Ort|Anz.|Leistung|Verst./Kanal|Bemerkung
Bstg 1|Masten|6|10 W|A/1
Bstg 1|Dach||6 W|A/1|NT3: zwei Stück mehr
Bstg 2|Masten|6|10 W|A/2
Bstg 2|Dach|8||A/2|NT3: umgeklemmt
Bstg 2|Treppenabgang|2|6 W|A/2|NT3: entfällt
Halle|Empfangshalle|10|3 W|B/1|Steller H1 (60 W)
Halle|Schalterraum|4|1,5 W|B/1|Steller H2
Halle|WC|2|1,5 W|B/1
Unterführung|Decke|6|6 W|B/2|NT3: neu
Unterführung|Rampe|2|6 W|B/2|NT3: neu
Vorplatz|Bussteig|3|10 W|B/2|erst mit NT4, noch nicht beauftragt

Verstärker A: 2 x 240 W, Verstärker B: 2 x 120 W, alles 100 V
`)
		p.Bold("A1", "A4:F4")
		p.Corrected("C6", "6", " 8")
		p.Corrected("D8", "10 W", " 6 W")
		p.Strike("A9:E9")
		p.Note("F11", "H2 ist die kleine Ausführung, 10 W")
		p.Colour("DDEBF7", "A13:F14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Bahnhof Querfeld", "change order: a count and a tap struck out within their cells and retyped, a row struck out, a row of a later order; the rating of H2 only in a comment on its cell; frames rated by their outputs in a sentence")
		t.Speakers("sheet=LS-Liste; tap_v=100; line_v=100; zone=Bstg 1; amplifier=A; channel=1", `rows|room|count|tap_w
5|Masten|6|10
6|Dach|8|6`)
		t.Speakers("sheet=LS-Liste; tap_v=100; line_v=100; zone=Bstg 2; amplifier=A; channel=2", `rows|room|count|tap_w
7|Masten|6|10
8|Dach|8|6`)
		t.Speakers("sheet=LS-Liste; tap_v=100; line_v=100; zone=Halle; amplifier=B; channel=1", `rows|room|count|tap_w|control
10|Empfangshalle|10|3|H1
11|Schalterraum|4|1.5|H2
12|WC|2|1.5|`)
		t.Speakers("sheet=LS-Liste; tap_v=100; line_v=100; zone=Unterführung; amplifier=B; channel=2", `rows|room|count|tap_w
13|Decke|6|6
14|Rampe|2|6`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A|1|240|108
A|2|240|108
B|1|120|39
B|2|120|48`)
		t.Amplifiers("", `amplifier|load_w
A|216
B|87`)
		t.Controls("", `control|rated_w|load_w
H1|60|30
H2|10|6`)
		t.Left("LS-Liste", `9|removed|struck out, dropped by the change order
15|future|comes with a later order`)
	}},
}
