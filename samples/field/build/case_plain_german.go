package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// An electrician, a planner, a school caretaker and a site manager.
var plainGerman = []typed.Case{
	typed.Case{File: "plain/Aufmass Hallenbad.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Aufmaß")
		p.Put("A1", `
Hallenbad Eschbruck, ELA-Anlage 100 V
Auftrag 23-0417, Aufmaß vom 14.09.
||
Bereich|Raum|Lautsprecher|Stk|Watt|Ausgang|Regler
Schwimmhalle|Längsseite Nord|Druckkammer|4|15|V1/1|
Schwimmhalle|Längsseite Süd|Druckkammer|4|15|V1/1|
Schwimmhalle|Sprungturm|Druckkammer|2|10|V1/1|
Nichtschwimmer|Becken|Wandgehäuse|4|6|V1/2|
Nichtschwimmer|Wärmebank|Wandgehäuse|2|6|V1/2|
Umkleiden|Herren|Decke|5|3|V2/1|LR1
Umkleiden|Damen|Decke|5|3|V2/1|LR1
Umkleiden|Duschen|Decke feuchtraum|4|3|V2/1|
Eingang|Kassenhalle|Decke|4|6|V2/2|LR2
Eingang|Personalraum|Decke|1|3|V2/2|
Eingang|Schwimmmeister|Wandgehäuse|1|3|V2/2|LR3
||
Ausgang|Nennleistung W
V1/1|240
V1/2|120
V2/1|120
V2/2|60
||
Regler|belastbar bis W
LR1|35
LR2|35
LR3|5
`)
		p.Bold("A1", "A4:G4", "A17:B17", "A23:B23")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("23-0417", "Hallenbad Eschbruck", "plain list with two small tables below: outputs and controls")
		t.Speakers("sheet=Aufmaß; tap_v=100; line_v=100; zone=Schwimmhalle; amplifier=V1; channel=1", `rows|room|count|tap_w
5|Längsseite Nord|4|15
6|Längsseite Süd|4|15
7|Sprungturm|2|10`)
		t.Speakers("sheet=Aufmaß; tap_v=100; line_v=100; zone=Nichtschwimmer; amplifier=V1; channel=2", `rows|room|count|tap_w
8|Becken|4|6
9|Wärmebank|2|6`)
		t.Speakers("sheet=Aufmaß; tap_v=100; line_v=100; zone=Umkleiden; amplifier=V2; channel=1", `rows|room|count|tap_w|control
10|Herren|5|3|LR1
11|Damen|5|3|LR1
12|Duschen|4|3|`)
		t.Speakers("sheet=Aufmaß; tap_v=100; line_v=100; zone=Eingang; amplifier=V2; channel=2", `rows|room|count|tap_w|control
13|Kassenhalle|4|6|LR2
14|Personalraum|1|3|
15|Schwimmmeister|1|3|LR3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|240|140
V1|2|120|36
V2|1|120|42
V2|2|60|30`)
		t.Amplifiers("", `amplifier|load_w
V1|176
V2|72`)
		t.Controls("", `control|rated_w|load_w
LR1|35|30
LR2|35|24
LR3|5|3`)
	}},

	{File: "plain/Raumbuch Theater Beschallung.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Raumbuch")
		p.Put("A1", `
Kammertheater Hohenlinz||||Projekt-Nr. 1906
Raumbuch Teil 5: Ruf- und Mithöranlage, 100-V-Technik
||
Raum-Nr.|Raumbezeichnung|Rufbereich|Anzahl LS|Leistung je LS [W]|Linie|Lautstärkesteller
U.01|Unterbühne|Bühne|2|6|L1|
U.02|Maschinenraum|Bühne|1|10|L1|
'0.01|Foyer|Publikum|8|6|L2|
'0.02|Garderobenhalle|Publikum|6|3|L2|
'0.03|Kassenraum|Publikum|1|3|L2|LS-K
'0.11|Künstlergarderobe 1|Künstler|1|3|L3|LS-11
'0.12|Künstlergarderobe 2|Künstler|1|3|L3|LS-12
'0.13|Künstlergarderobe 3|Künstler|1|3|L3|LS-13
'0.14|Stimmzimmer|Künstler|1|6|L3|LS-14
'0.15|Flur Künstler|Künstler|4|1.5|L3|
'1.01|Werkstatt|Technik|2|10|L4|
'1.02|Schnürboden|Technik|3|6|L4|
'1.03|Lichtregie|Technik|1|3|L4|LS-R
`)
		p.Bold("A1", "A4:G4")
		q := p.Sheet("Verstärker")
		q.Put("A1", `
Linie|Verstärker|Kanal|Nennleistung [W]
L1|ENA 1|1|60
L2|ENA 1|2|120
L3|ENA 2|1|60
L4|ENA 2|2|60
`)
		q.Bold("A1:D1")
		r := p.Sheet("Steller")
		r.Put("A1", `
Alle Lautstärkesteller 10 W, mit Pflichtrufrelais
||
Bezeichnung|Raum-Nr.|Belastbarkeit [W]
LS-K|'0.03|10
LS-11|'0.11|10
LS-12|'0.12|10
LS-13|'0.13|10
LS-14|'0.14|10
LS-R|'1.03|10
`)
		r.Bold("A3:C3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("1906", "Kammertheater Hohenlinz", "room data; amplifier and channel by line on a second sheet, controls on a third")
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; zone=Bühne; amplifier=ENA 1; channel=1", `rows|room|count|tap_w
5|Unterbühne|2|6
6|Maschinenraum|1|10`)
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; zone=Publikum; amplifier=ENA 1; channel=2", `rows|room|count|tap_w|control
7|Foyer|8|6|
8|Garderobenhalle|6|3|
9|Kassenraum|1|3|LS-K`)
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; zone=Künstler; amplifier=ENA 2; channel=1", `rows|room|count|tap_w|control
10|Künstlergarderobe 1|1|3|LS-11
11|Künstlergarderobe 2|1|3|LS-12
12|Künstlergarderobe 3|1|3|LS-13
13|Stimmzimmer|1|6|LS-14
14|Flur Künstler|4|1.5|`)
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; zone=Technik; amplifier=ENA 2; channel=2", `rows|room|count|tap_w|control
15|Werkstatt|2|10|
16|Schnürboden|3|6|
17|Lichtregie|1|3|LS-R`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
ENA 1|1|60|22
ENA 1|2|120|69
ENA 2|1|60|21
ENA 2|2|60|41`)
		t.Amplifiers("", `amplifier|load_w
ENA 1|91
ENA 2|62`)
		t.Controls("rated_w=10", `control|load_w
LS-K|3
LS-11|3
LS-12|3
LS-13|3
LS-14|6
LS-R|3`)
	}},

	{File: "plain/Schule Lautsprecher.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Grundschule Am Lindenhang;;;;
Lautsprecheranlage, Verstärker im Sekretariat 120 Watt, 100-Volt-Technik;;;;
;;;;
Nr.;Raum;Lautspr.;Watt;Bemerkung
1;Klasse 1a;1;3;
2;Klasse 1b;1;3;
3;Klasse 2a;1;3;
4;Klasse 2b;1;3;
5;Klasse 3;1;3;
6;Klasse 4;1;3;brummt ein wenig
7;Lehrerzimmer;1;3;Regler R1 (6 Watt)
8;Musikraum;2;6;Regler R2 (20 Watt)
9;Flur unten;3;1,5;
10;Flur oben;3;1,5;
11;Turnhalle;4;6;Regler R3 (36 Watt)
12;Pausenhof;2;10;nur Nordseite
13;Heizungskeller;1;3;2019 abgebaut
;Summe ohne Nr. 13;21;;86 Watt
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Grundschule Am Lindenhang", "caretaker's list; the one amplifier in the heading, controls with ratings in remarks, one taken down")
		t.Speakers("tap_v=100; line_v=100", `rows|tag|room|count|tap_w|control
5|1|Klasse 1a|1|3|
6|2|Klasse 1b|1|3|
7|3|Klasse 2a|1|3|
8|4|Klasse 2b|1|3|
9|5|Klasse 3|1|3|
10|6|Klasse 4|1|3|
11|7|Lehrerzimmer|1|3|R1
12|8|Musikraum|2|6|R2
13|9|Flur unten|3|1.5|
14|10|Flur oben|3|1.5|
15|11|Turnhalle|4|6|R3
16|12|Pausenhof|2|10|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|120|86`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|120|86`)
		t.Controls("", `control|rated_w|load_w
R1|6|3
R2|20|12
R3|36|24`)
		t.Left("", `17|removed|taken down in 2019
18|total|sum`)
	}},

	{File: "plain/7714 Nachtrag 2.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Nachtrag 2")
		p.Put("A1", `
Botanischer Garten Mohnau, Nachtrag 2 zu Auftrag 7714
Alle Linien 100 V
||
Bereich|Ort|Stand|Stk.|Bauart|Abgriff|Verst./Kanal|Vermerk
Palmenhaus|Rundweg|bleibt|6|Wand|6 W|A/1|
"|Eingang|bleibt|2|Wand|6 W|A/1|
"|Empore|neu|2|Wand|6 W|A/1|montiert KW 18
Farnhaus|Steg|entfällt|4|Wand|3 W|A/2|demontiert KW 18
"|Steg|neu|3|Wand|6 W|A/2|montiert KW 18
"|Teich|bleibt|2|Horn|10 W|A/2|
Freigelände|Alpinum|bleibt|3|Horn|15 W|B/1|
"|Staudenbeete|neu|4|Horn|15 W|B/1|kommt erst mit Bauabschnitt 3
Kasse|Kassenraum|bleibt|2|Decke|3 W|B/2|
"|Windfang|bleibt|1|Decke|1,5 W|B/2|
"|Garderobe|neu|2|Decke|3 W|B/2|montiert KW 19
||
Verstärker|Kanal|Leistung
A|1|120 W
A|2|120 W
B|1|120 W
B|2|60 W
||
Regler LR1 (20 W) sitzt vor allen Lautsprechern der Kasse.
`)
		p.Bold("A1", "A4:H4", "A17:C17")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("7714", "Botanischer Garten Mohnau", "change order: stays, goes, new and later; ditto marks; a control in a sentence below")
		t.Speakers("sheet=Nachtrag 2; tap_v=100; line_v=100; zone=Palmenhaus; amplifier=A; channel=1", `rows|room|count|tap_w
5|Rundweg|6|6
6|Eingang|2|6
7|Empore|2|6`)
		t.Speakers("sheet=Nachtrag 2; tap_v=100; line_v=100; zone=Farnhaus; amplifier=A; channel=2", `rows|room|count|tap_w
9|Steg|3|6
10|Teich|2|10`)
		t.Speakers("sheet=Nachtrag 2; tap_v=100; line_v=100; zone=Freigelände; amplifier=B; channel=1", `rows|room|count|tap_w
11|Alpinum|3|15`)
		t.Speakers("sheet=Nachtrag 2; tap_v=100; line_v=100; zone=Kasse; amplifier=B; channel=2; control=LR1", `rows|room|count|tap_w
13|Kassenraum|2|3
14|Windfang|1|1.5
15|Garderobe|2|3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A|1|120|60
A|2|120|38
B|1|120|45
B|2|60|13.5`)
		t.Amplifiers("", `amplifier|load_w
A|98
B|58.5`)
		t.Controls("", `control|zone|rated_w|load_w
LR1|Kasse|20|13.5`)
		t.Left("Nachtrag 2", `8|removed|goes
12|future|comes with section 3`)
	}},
}
