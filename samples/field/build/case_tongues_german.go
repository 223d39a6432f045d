package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// tonguesGerman are an Austrian town hall's house technician, a Swiss lift firm and a German fire-brigade college.
var tonguesGerman = []typed.Case{
	{File: "tongues/rathaus/Durchsage Bestand Feber.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Bestand")
		p.Put("A1", `
Stadtgemeinde Hollerbrunn, Rathaus - Durchsageanlage
Bestandsaufnahme Feber 2021, Haustechnik||||||AZ 841-3/2021

Raum|LS Stk.|Type|Anzapfung W|Regler|Endstufe|Anm.
Parterre, Foyer|4|Decke|3|R1|1|
Parterre, Bürgerservice|3|Decke|1,5|R2|1|
Parterre, Meldeamt|2|Decke|1,5|R2|1|gleicher Regler wie Bürgerservice
Mezzanin, Gang|5|Decke|1,5||1|
1. Stock, Sitzungssaal|6|Wand|6|R3|2|
1. Stock, Standesamt|2|Wand|3|R4|2|
1. Stock, Gang|4|Decke|1,5||2|
2. Stock, Bauamt|3|Decke|1,5||2|Kasten davor
2. Stock, Archiv|1|Decke|1,5||2|heuer im Jänner demontiert (Wasserschaden)
Hof, Einfahrt|1|Horn|10||2|
Stiege 2|3|Decke|?||2|abgehängte Decke, bin nicht dazugekommen

Endstufe 1 hat 60 W, Endstufe 2 120 W, beide 100 V
R1 und R3 je 50 W, R2 und R4 je 20 W lt. Typenschild
`)
		p.Bold("A1", "A4:G4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("841-3/2021", "Stadtgemeinde Hollerbrunn, Rathaus", "plain; ratings of amplifiers and controls in two sentences below (je); decimal commas as text; one taken down this year, one tap not reached")
		t.Speakers("sheet=Bestand; tap_v=100; line_v=100; amplifier=1", `rows|room|count|tap_w|control
5|Parterre, Foyer|4|3|R1
6|Parterre, Bürgerservice|3|1.5|R2
7|Parterre, Meldeamt|2|1.5|R2
8|Mezzanin, Gang|5|1.5|`)
		t.Speakers("sheet=Bestand; tap_v=100; line_v=100; amplifier=2", `rows|room|count|tap_w|control
9|1. Stock, Sitzungssaal|6|6|R3
10|1. Stock, Standesamt|2|3|R4
11|1. Stock, Gang|4|1.5|
12|2. Stock, Bauamt|3|1.5|
14|Hof, Einfahrt|1|10|
15|Stiege 2|3||`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w|load_min_w
1|60|27|
2|120||62.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
1|60|27
2|120|`)
		t.Controls("", `control|rated_w|load_w
R1|50|12
R2|20|7.5
R3|50|36
R4|20|6`)
		t.Left("Bestand", `13|removed|taken down after water damage`)
		t.Asks("Bestand", `15|asked|tap in staircase 2`)
	}},

	{File: "tongues/lifte/23.0481 Liftvorplätze.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Lautsprecher")
		p.Put("A1", `
Auftrag 23.0481||||Zeughaus-Bibliothek Gründlisau
Durchsage Liftvorplätze, Lifte A / B / C. Linien 100 V

Lift|Standort|Stk|Abgriff|Abschwächer|Ausgang|Bem.
A|UG2 Liftvorplatz|2|3 W||V1.1|
A|UG1 Liftvorplatz|2|3 W||V1.1|
A|EG Liftvorplatz|4|6 W|AS1|V1.1|
A|1.OG Liftvorplatz|2|3 W|AS2|V1.1|
B|EG Anlieferung|2|6 W||V1.2|
B|UG1 Magazin|3|3 W||V1.2|
B|1.OG Buchbinderei|2|6 W|AS3|V1.2|
C|EG Liftvorplatz|2|3 W||V2.1|ausgebaut, Lift C stillgelegt
C|DG Maschinenraum|1|10 W||V2.1|bleibt
A|Kabine|1|8 Ohm||-|hängt am Notrufgerät, nicht auf der Linie
B|Kabine|1|8 Ohm||-|dito
`)
		p.Bold("A1", "A4:G4")
		q := p.Sheet("Verstärker")
		q.Put("A1", `
Verstärker|Ausgang|Leistung
V1|1|80 W
V1|2|80 W
V2|1|60 W

Abschwächer|Leistung|Montage
AS1|30 W|AP neben Rufknopf
AS2|10 W|UP
AS3|20 W|UP
`)
		q.Bold("A1:C1", "A6:C6")
		r := p.Sheet("Regierapport")
		r.Put("A1", `
Datum|Monteur|Arbeit|Std.|Ansatz Fr.|Betrag Fr.
12.06.23|Bt|Demontage Lift C, Lautsprecher retour Lager|4.25|118.-|501.50
13.06.23|Bt / Rl|Abgriffe nachgestellt|17|118.-|2'006.-
14.06.23|Rl|Messung Linien|3.5|118.-|413.-
||Total exkl. MWST|||2'920.50
`)
		r.Bold("A1:F1", "C5:F5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("23.0481", "Zeughaus-Bibliothek Gründlisau", "output as V1.1; ratings on a second sheet; two cabin loudspeakers of 8 ohms off the line; one pair taken out; hours and francs on a third sheet")
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V1; channel=1", `rows|room|count|tap_w|control
5|UG2 Liftvorplatz|2|3|
6|UG1 Liftvorplatz|2|3|
7|EG Liftvorplatz|4|6|AS1
8|1.OG Liftvorplatz|2|3|AS2`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V1; channel=2", `rows|room|count|tap_w|control
9|EG Anlieferung|2|6|
10|UG1 Magazin|3|3|
11|1.OG Buchbinderei|2|6|AS3`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V2; channel=1", `rows|room|count|tap_w
13|DG Maschinenraum|1|10`)
		t.Speakers("sheet=Lautsprecher; low_ohm=8; note=low impedance, on the emergency call unit", `rows|room|count|tap_w
14|Kabine|1|
15|Kabine|1|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|80|42
V1|2|80|33
V2|1|60|10`)
		t.Amplifiers("", `amplifier|load_w
V1|75
V2|10`)
		t.Controls("", `control|rated_w|load_w
AS1|30|24
AS2|10|6
AS3|20|12`)
		t.Left("Lautsprecher", `12|removed|taken out`)
		t.Left("Regierapport", `2|other|hours
3|other|hours
4|other|hours
5|total|francs`)
	}},

	{File: "tongues/feuerwehrschule/ELA Stand 11-2019.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Landesfeuerwehrschule Tannried - ELA;;;Stand 11/2019;;;Vorgang 37-F/19
;;;;;;
Linie;Bereich;Ltspr.;Stufe;LR (Typ);Endst.;Bemerkung
1;Fahrzeughalle Tor 1-6;6 Druckkammer;15 W;;ES 1;
1;Waschhalle;2 Druckkammer;15 W;;ES 1;Korrosion
2;Lehrsaal 1;4 Decke;6 W;LR 1 (35 W);ES 2;
2;Lehrsaal 2;4 Decke;6 W;LR 2 (35 W);ES 2;
2;Funkübungsraum;2 Decke;3 W;LR 3 (12 W);ES 2;
2;Flur Lehrsäle;5 Decke;1,5 W;ohne;ES 2;
3;Umkleiden;6 Decke;3 W;ohne;ES 3;
3;Atemschutzwerkstatt;2 Kugel;6 W;ohne;ES 3;
3;Schlauchturm Fuß;1 Druckkammer;10 W;ohne;ES 3;
3;Schlauchturm Kopf;1 Druckkammer;10 W;ohne;ES 3;bei Turmsanierung 2018 abgeklemmt und abgebaut
4;Übungshof Nord;3 Druckkammer;30 W;;ES 4;
4;Übungshof Süd;3 Druckkammer;30 W;;ES 4;
4;Brandhaus;1 Druckkammer;n. ablesbar;;ES 4;Stufenschalter verrußt
;Gerätewart, Regal 4;2 Decke;;;;Reserve
;;;;;;
ES 1 bis ES 3 je 125 W, ES 4 250 W, alle 100 V. Alle LR mit Pflichtrufrelais 24 V.;;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("37-F/19", "Landesfeuerwehrschule Tannried", "kind and count in one cell; control's rating in brackets; amplifiers of a range rated in a sentence; one tap under soot; one taken down, one spare; 24 V of the relays")
		t.Speakers("tap_v=100; line_v=100; amplifier=ES 1; channel=1", `rows|room|count|tap_w
4|Fahrzeughalle Tor 1-6|6|15
5|Waschhalle|2|15`)
		t.Speakers("tap_v=100; line_v=100; amplifier=ES 2; channel=2", `rows|room|count|tap_w|control
6|Lehrsaal 1|4|6|LR 1
7|Lehrsaal 2|4|6|LR 2
8|Funkübungsraum|2|3|LR 3
9|Flur Lehrsäle|5|1.5|`)
		t.Speakers("tap_v=100; line_v=100; amplifier=ES 3; channel=3", `rows|room|count|tap_w
10|Umkleiden|6|3
11|Atemschutzwerkstatt|2|6
12|Schlauchturm Fuß|1|10`)
		t.Speakers("tap_v=100; line_v=100; amplifier=ES 4; channel=4", `rows|room|count|tap_w
14|Übungshof Nord|3|30
15|Übungshof Süd|3|30
16|Brandhaus|1|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w|load_min_w
ES 1|1|125|120|
ES 2|2|125|61.5|
ES 3|3|125|40|
ES 4|4|250||180`)
		t.Amplifiers("", `amplifier|rated_w|load_w
ES 1|125|120
ES 2|125|61.5
ES 3|125|40
ES 4|250|`)
		t.Controls("", `control|rated_w|load_w
LR 1|35|24
LR 2|35|24
LR 3|12|6`)
		t.Left("", `13|removed|disconnected and taken down
17|spare|on the shelf`)
		t.Asks("", `16|asked|tap in the fire house`)
	}},
}
