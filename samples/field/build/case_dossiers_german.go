package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Railway building services, a school caretaker, a master electrician and a maintenance firm, in German.
var dossiersGerman = []typed.Case{

	{File: "dossiers/bahn/Bf Niederquell ELA-Bestand.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Empfangsgebäude")
		p.Put("A1", `
Bahnhof Niederquell - ELA-Bestand
Empfangsgebäude

Lfd.|Raum|Anzahl|Leistung je Stück|Kreis|Bemerkung
1|Schalterhalle|6|6 W|K1|
2|Windfang|2|3 W|K1|
3|Fahrkartenschalter|1|1,5 W|K2|über LR 1
4|Warteraum|4|3 W|K2|über LR 2
5|Dienstraum|1|1,5 W|K2|über LR 3
6|Gepäckraum|2|6 W|K2|ausgebaut 2014
|Summe|14
`)
		p.Bold("A1", "A4:F4")
		q := p.Sheet("Bahnsteige")
		q.Put("A1", `
Bahnhof Niederquell - ELA-Bestand
Bahnsteige, Trichter an Masten

Bereich|Mast|Stück|je Stück|Kreis
Gleis 1|M1 bis M8|8|10 W|K3
Gleis 2/3|M11 bis M20|10|10 W|K4
Gleis 2/3|Aufgang|2|6 W|K4
Unterführung||4|6 W|K5
`)
		q.Bold("A1", "A4:E4")
		r := p.Sheet("Verstärker")
		r.Put("A1", `
Verstärker|Ausgang|Kreis|Nennleistung W|Kabel mm²|Länge m
V1|A|K1|60|2 x 1,5|40
V1|B|K2|60|2 x 1,5|65
V2|A|K3|120|2 x 2,5|180
V2|B|K4|120|2 x 2,5|210
V3||K5|60|2 x 1,5|70

alle Ausgänge 100 V
`)
		r.Bold("A1:F1")
		s := p.Sheet("Regler")
		s.Put("A1", `
Regler|Einbauort|Belastbarkeit
LR 1|Fahrkartenschalter|5 W
LR 2|Warteraum|20 W
LR 3|Dienstraum|5 W
`)
		s.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Bahnhof Niederquell", "a sheet a part of the station, amplifiers joined by circuit, controls in the remarks with ratings on a sheet of their own")
		t.Speakers("sheet=Empfangsgebäude; tap_v=100; line_v=100; amplifier=V1; zone=Empfangsgebäude; note=area as zone", `rows|room|count|tap_w|channel|control
5|Schalterhalle|6|6|A|
6|Windfang|2|3|A|
7|Fahrkartenschalter|1|1.5|B|LR 1
8|Warteraum|4|3|B|LR 2
9|Dienstraum|1|1.5|B|LR 3`)
		t.Speakers("sheet=Bahnsteige; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|amplifier|channel
5|Gleis 1||8|10|V2|A
6|Gleis 2/3||10|10|V2|B
7|Gleis 2/3|Aufgang|2|6|V2|B
8|Unterführung||4|6|V3|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|A|60|42
V1|B|60|15
V2|A|120|80
V2|B|120|112
V3||60|24`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1||57
V2||192
V3|60|24`)
		t.Controls("", `control|rated_w|load_w
LR 1|5|1.5
LR 2|20|12
LR 3|5|1.5`)
		t.Lines("note=one length a circuit", `line|length_m|area_mm2
K1|40|1.5
K2|65|1.5
K3|180|2.5
K4|210|2.5
K5|70|1.5`)
		t.Left("Empfangsgebäude", `10|removed|taken out in 2014
11|total|sum`)
	}},

	{File: "dossiers/schule/Erlengrund Zählung.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Zählung")
		p.Put("A1", `
Gesamtschule Am Erlengrund - Durchsage, Zählung der Lautsprecher (Stück je Anzapfung)
ein Verstärker im Sekretariat, 250 W, Ausgang 100 V

Raum|1,5 W|3 W|6 W|10 W|Lautstärkesteller
Aula|||6|2|S1 (75 W)
Bühne||2|||S1
Flur EG|4
Flur OG|4
Klassen 1 bis 8|8
Lehrerzimmer||2|||S2 (12 W)
Turnhalle|||4|2
Pausenhof||||3
Werkraum||2|1
Summe|16|6|11|7
`)
		p.Bold("A1", "A4:F4", "A14:E14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Gesamtschule Am Erlengrund", "matrix of rooms against taps; a control over two rooms; one amplifier without a name")
		t.Speakers("sheet=Zählung; tap_v=100; line_v=100", `rows|room|count|tap_w|control
5|Aula|6|6|S1
5|Aula|2|10|S1
6|Bühne|2|3|S1
7|Flur EG|4|1.5|
8|Flur OG|4|1.5|
9|Klassen 1 bis 8|8|1.5|
10|Lehrerzimmer|2|3|S2
11|Turnhalle|4|6|
11|Turnhalle|2|10|
12|Pausenhof|3|10|
13|Werkraum|2|3|
13|Werkraum|1|6|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|250|178`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|250|178`)
		t.Controls("", `control|rated_w|load_w
S1|75|62
S2|12|6`)
		t.Left("Zählung", `14|total|sums`)
	}},

	{File: "dossiers/halle/Eislaufhalle Kaltenmoos Aufmaß.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Aufmaß")
		p.Put("A1", `
Eislaufhalle Kaltenmoos - Aufmaß Lautsprecher, 100-V-Technik, Auftrag 40712

Eisfläche - Verstärker V1 (240 W)|||||Nebenräume - Verstärker V2 (120 W)
Pos|Ort|Stk|W/Stk||Pos|Ort|Stk|W/Stk|Regler
1|Längsseite Nord|4|20||11|Kassenhalle|4|3|
2|Längsseite Süd|4|20||12|Kasse|1|1,5|R1 (5 W)
3|Stirnseite|2|||13|Schlittschuhausgabe|3|3|R2 (12 W)
4|Spielerbank Heim|1|6||14|Umkleide 1|2|3|
5|Spielerbank Gast|1|6||15|Umkleide 2|2|3|
6|Zeitnehmer|1|6||16|Gang|5|1,5|
7|Strafbank|1|6

durchgestrichen = entfallen
`)
		p.Corrected("D7", "20", " 15")
		p.Strike("A11:D11")
		p.Merge("A3:D3", "F3:J3")
		p.Bold("A1", "A3", "F3", "A4:D4", "F4:J4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("40712", "Eislaufhalle Kaltenmoos", "two blocks side by side, the amplifier in the title of each; a tap corrected in its cell, a struck row")
		t.Speakers("sheet=Aufmaß; tap_v=100; line_v=100; zone=Eisfläche; note=area as zone; amplifier=V1", `rows|room|count|tap_w
5|Längsseite Nord|4|20
6|Längsseite Süd|4|20
7|Stirnseite|2|15
8|Spielerbank Heim|1|6
9|Spielerbank Gast|1|6
10|Zeitnehmer|1|6`)
		t.Speakers("sheet=Aufmaß; tap_v=100; line_v=100; zone=Nebenräume; note=area as zone; amplifier=V2", `rows|room|count|tap_w|control
5|Kassenhalle|4|3|
6|Kasse|1|1.5|R1
7|Schlittschuhausgabe|3|3|R2
8|Umkleide 1|2|3|
9|Umkleide 2|2|3|
10|Gang|5|1.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
V1|240|208
V2|120|42`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|240|208
V2|120|42`)
		t.Controls("", `control|rated_w|load_w
R1|5|1.5
R2|12|9`)
		t.Left("Aufmaß", `11|removed|struck through`)
	}},

	{File: "dossiers/wartung/Reitanlage Holmwiesen.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Deckblatt")
		p.Put("A1", `
Wartungsmappe Beschallung
Objekt:|Reitanlage Holmwiesen
Vertrag:|W-0319
Netz:|100-V-Linien
`)
		p.Bold("A1")
		l := p.Sheet("Lautsprecher")
		l.Put("A1", `
Nr.|Gebäude|Ort|Bauform|Trafo W|Linie|Regler|Stand
L 01|Reithalle|Bande A|Tonsäule|20|1
L 02|"|Bande C|"|20|1
L 03|"|Tribüne|"|10|1|P1
L 04|"|Tribüne|"|10|1|P1
L 05|"|Richterturm|Deckeneinbau|3|1|P2
L 06|Stall 1|Stallgasse|Wandgehäuse|6|2
L 07|"|Stallgasse|"|6|2
L 08|"|Sattelkammer|"|3|2
L 09|Stall 2|Stallgasse|"|6|2
L 10|"|Stallgasse|"|6|2
L 11|"|Schmiede|"|6|2||abgebaut 3/2022
L 12|Abreiteplatz|Mast 1|Trichter|15|3
L 13|"|Mast 2|"|15|3
L 14||Regal im Lager|Trichter|15|||Reserve, nicht angeschlossen
`)
		l.Bold("A1:H1")
		a := p.Sheet("Anlage")
		a.Put("A1", `
Verstärker|Ausgang|Linie|Nennleistung
VS1|1|1|120 W
VS1|2|2|60 W
VS2|1|3|60 W

Regler|Ort|Leistung
P1|Tribüne|30 W
P2|Richterturm|5 W
`)
		a.Bold("A1:D1", "A6:C6")
		m := p.Sheet("Prüfung 2021")
		m.Put("A1", `
Linie|Impedanz Ohm|Isolation MOhm|Befund
1|159|> 20|in Ordnung
2|278|> 20|in Ordnung
3|333|8|Mastdose gereinigt
`)
		m.Bold("A1:D1")
		c := p.Sheet("Änderungen")
		c.Put("A1", `
Datum|Änderung|in Liste
12.03.2022|Schmiede aufgegeben, L 11 abgebaut|ja
05.05.2022|L 08 von 6 W auf 3 W umgeklemmt|ja
`)
		c.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("W-0319", "Reitanlage Holmwiesen", "five sheets of a maintenance folder; ditto marks, lines joined to outputs, older measurements, changes already in the list; one removed, one spare")
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100", `rows|tag|zone|room|tap_w|amplifier|channel|control
2|L 01|Reithalle|Bande A|20|VS1|1|
3|L 02|Reithalle|Bande C|20|VS1|1|
4|L 03|Reithalle|Tribüne|10|VS1|1|P1
5|L 04|Reithalle|Tribüne|10|VS1|1|P1
6|L 05|Reithalle|Richterturm|3|VS1|1|P2
7|L 06|Stall 1|Stallgasse|6|VS1|2|
8|L 07|Stall 1|Stallgasse|6|VS1|2|
9|L 08|Stall 1|Sattelkammer|3|VS1|2|
10|L 09|Stall 2|Stallgasse|6|VS1|2|
11|L 10|Stall 2|Stallgasse|6|VS1|2|
13|L 12|Abreiteplatz|Mast 1|15|VS2|1|
14|L 13|Abreiteplatz|Mast 2|15|VS2|1|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
VS1|1|120|63
VS1|2|60|27
VS2|1|60|30`)
		t.Amplifiers("", `amplifier|rated_w|load_w
VS1||90
VS2|60|30`)
		t.Controls("", `control|rated_w|load_w
P1|30|20
P2|5|3`)
		t.Left("Lautsprecher", `12|removed|taken down
15|spare|not connected`)
		t.Left("Prüfung 2021", `2|measurement|test of a line
3|measurement|test of a line
4|measurement|test of a line`)
		t.Left("Änderungen", `2|change|already in the list
3|change|already in the list`)
	}},
}
