package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// tradesGerman are a site manager, an apprentice, a planner, a service firm and a lighting man, in German, and a railway volunteer in Italian.
var tradesGerman = []typed.Case{
	// Ein Bauleiter geht das zweite Mal durch das Depot: was er vorfand, was es sein soll, was behoben ist.
	{File: "bauleitung/Depot Hollerfeld Rundgang 2.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Rundgang 2")
		p.Put("A1", `
Straßenbahndepot Hollerfeld, Mängelliste ELA, Rundgang 2
100-V-Technik. EV1 (240 W) speist Halle 1 und Halle 2, EV2 (120 W) Verwaltung und Außen
||
Nr.|Bereich|Ort|Anz. LS|vorgefunden|soll|Bemerkung|behoben
1|Halle 1|Gleis 1 bis 3|6|15 W|15 W|in Ordnung|
2|Halle 1|Gleis 4 bis 6|6|10 W|15 W|alle sechs umgeklemmt|ja
3|Halle 2|Waschstraße|4|6 W|10 W|alle vier umgeklemmt|ja
4|Halle 2|Grube|2|6 W|6 W|in Ordnung|
5|Verwaltung|Flur|4|3 W|1,5 W|zu laut, muss noch umgeklemmt werden|nein
6|Verwaltung|Leitstelle|2|3 W|3 W|mit Steller ST1 (12 W), in Ordnung|
7|Verwaltung|Aufenthalt|3|3 W|3 W|mit Steller ST2 (12 W), in Ordnung|
8|Außen|Tor|1|15 W|15 W|in Ordnung|
9|Außen|Hof|1|fehlt|15 W|Horn noch nicht geliefert|nein
`)
		p.Bold("A1", "A4:H4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Straßenbahndepot Hollerfeld", "hard: snag list with tap found and tap wanted; which one holds depends on whether it was put right; amplifiers by area in a sentence, controls in remarks, one horn not delivered")
		t.Speakers("sheet=Rundgang 2; tap_v=100; line_v=100; amplifier=EV1", `rows|zone|room|count|tap_w
5|Halle 1|Gleis 1 bis 3|6|15
6|Halle 1|Gleis 4 bis 6|6|15
7|Halle 2|Waschstraße|4|10
8|Halle 2|Grube|2|6`)
		t.Speakers("sheet=Rundgang 2; tap_v=100; line_v=100; amplifier=EV2", `rows|zone|room|count|tap_w|control
9|Verwaltung|Flur|4|3|
10|Verwaltung|Leitstelle|2|3|ST1
11|Verwaltung|Aufenthalt|3|3|ST2
12|Außen|Tor|1|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
EV1|240|232
EV2|120|42`)
		t.Amplifiers("", `amplifier|rated_w|load_w
EV1|240|232
EV2|120|42`)
		t.Controls("", `control|rated_w|load_w
ST1|12|6
ST2|12|9`)
		t.Left("Rundgang 2", `13|future|not delivered yet`)
	}},

	// Ein Lehrling nimmt eine Bücherei auf, einen Lautsprecher nach dem anderen, und setzt Gänsefüßchen.
	{File: "lehre/Aufnahme Stadtbücherei.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Aufnahme")
		p.Put("A1", `
Stadtbücherei Mohrbeck, Aufnahme Lautsprecher
||
Nr.|Raum|Bauart|Watt|Verst.|Kanal|Regler
1|Lesesaal|Decke|6|A|1|R1
2|"|"|"|"|"|"
3|"|"|"|"|"|"
4|"|"|"|"|"|"
5|"|"|"|"|"|"
6|"|"|"|"|"|"
7|Galerie|Wand|6|A|1|R1
8|"|"|"|"|"|"
9|"|"|"|"|"|"
10|Kinderbücherei|Decke|3|A|2|R2
11|"|"|"|"|"|"
12|"|"|"|"|"|"
13|"|"|"|"|"|"
14|Vorlesezimmer|Decke|3|A|2|ohne
15|Eingang|Decke|3|A|3|ohne
16|"|"|"|"|"|"
17|"|"|"|"|"|"
18|Windfang|Decke|1,5|A|3|ohne
19|WC|Decke|1,5|A|3|ohne
20|Magazin|Horn|10|A|3|ohne
||
Vom Typenschild: Verstärker A, 3 Kanäle x 120 W, 100 V
Regler R1 60 W, Regler R2 24 W
`)
		p.Bold("A1", "A3:G3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Stadtbücherei Mohrbeck", "one loudspeaker a row with ditto marks in every column; ratings in two sentences below")
		t.Speakers("sheet=Aufnahme; tap_v=100; line_v=100; amplifier=A; channel=1; control=R1; tap_w=6", `rows|room
4..9|Lesesaal
10..12|Galerie`)
		t.Speakers("sheet=Aufnahme; tap_v=100; line_v=100; amplifier=A; channel=2; tap_w=3", `rows|room|control
13..16|Kinderbücherei|R2
17|Vorlesezimmer|`)
		t.Speakers("sheet=Aufnahme; tap_v=100; line_v=100; amplifier=A; channel=3", `rows|room|tap_w
18..20|Eingang|3
21|Windfang|1.5
22|WC|1.5
23|Magazin|10`)
		t.Channels("line_v=100; amplifier=A", `channel|rated_w|load_w
1|120|54
2|120|15
3|120|22`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|360|91`)
		t.Controls("", `control|rated_w|load_w
R1|60|54
R2|24|12`)
	}},

	// Ein Planer führt das Raumbuch einer Reitschule; die Steller stehen nur mit ihrer Belastbarkeit beim Raum.
	{File: "raumbuch/Tannwinkel Raumbuch ELA.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Raumbuch")
		p.Put("A1", `
Landesreitschule Tannwinkel|||||||
Raumbuch, Auszug Elektroakustik (100 V)
||
Gebäude|Raum-Nr.|Raum|Lautsprecher|||Steller|Verstärker-
|||Art|Stück|je W|belastbar W|kanal
Reithalle|R.01|Bahn|Horn|6|15||V1/1
|R.02|Tribüne|Wand|4|6|36|V1/1
|R.03|Richterstand|Wand|1|3|6|V1/1
Stallungen|S.01|Stallgasse Nord|Wand|4|6||V1/2
|S.02|Stallgasse Süd|Wand|4|6||V1/2
|S.03|Sattelkammer|Decke|2|1.5|6|V1/2
|S.04|Futterlager|Horn|1|10||V1/2
Haupthaus|H.01|Empfang|Decke|2|3|12|V2/1
|H.02|Schulungsraum|Decke|4|3|24|V2/1
|H.03|Umkleide Damen|Decke|2|1.5||V2/1
|H.04|Umkleide Herren|Decke|2|1.5||V2/1
|H.05|Flur|Decke|3|1.5||V2/1
||
V1: 2 Kanäle, 240 W je Kanal. V2: 1 Kanal, 60 W.
`)
		p.Merge("A4:A5", "B4:B5", "C4:C5", "D4:F4", "A6:A8", "A9:A12", "A13:A17")
		p.Bold("A1", "A4:H5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Landesreitschule Tannwinkel", "room book with a head of two rows, merged buildings, controls that are only a rating beside the room")
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; zone=Reithalle; amplifier=V1; channel=1", `rows|room|count|tap_w|note
6|Bahn|6|15|building as zone
7|Tribüne|4|6|unnamed, building as zone
8|Richterstand|1|3|unnamed, building as zone`)
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; zone=Stallungen; amplifier=V1; channel=2", `rows|room|count|tap_w|note
9|Stallgasse Nord|4|6|building as zone
10|Stallgasse Süd|4|6|building as zone
11|Sattelkammer|2|1.5|unnamed, building as zone
12|Futterlager|1|10|building as zone`)
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; zone=Haupthaus; amplifier=V2; channel=1", `rows|room|count|tap_w|note
13|Empfang|2|3|unnamed, building as zone
14|Schulungsraum|4|3|unnamed, building as zone
15|Umkleide Damen|2|1.5|building as zone
16|Umkleide Herren|2|1.5|building as zone
17|Flur|3|1.5|building as zone`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|240|117
V1|2|240|61
V2|1|60|28.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|480|178
V2|60|28.5`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|36|24
|6|3
|6|3
|12|6
|24|12`)
	}},

	// Eine Servicefirma für Bäder führt alle Anlagen eines Landkreises in einem Blatt, Namen fangen in jeder Anlage von vorn an.
	{File: "service/Anlagenbuch Bäder.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Anlagen")
		p.Put("A1", `
Anlagenbuch Bäder, Stand Herbst. Alle Anlagen 100 V
||
Anlage|Objekt|Bereich|LS|W je LS|W gesamt|Verst.|Ausg.|W Ausg.|Regler|W Regler|Vermerk
3041|Freibad Wiesengrund|Liegewiese|6|15|90|V1|1|240|||
3041|Freibad Wiesengrund|Becken|4|10|40|V1|2|120|||
3041|Freibad Wiesengrund|Kasse|2|3|6|V1|3|60|R1|12|
3041|Freibad Wiesengrund|Umkleiden|6|1.5|9|V1|3|60|||
3055|Hallenbad Nord|Schwimmhalle|8|10|80|V1|1|120|||
3055|Hallenbad Nord|Umkleiden|10|1.5|15|V1|2|60|||
3055|Hallenbad Nord|Foyer|4|3|12|V1|2|60|R1|24|
3055|Hallenbad Nord|Technik|1|10|10|V1|2|60|||
3060|Schulbad Lerchried|Becken|4|10|40|V1|1|120|||
3060|Schulbad Lerchried|Lehrerzimmer|1|3|3|V1|1|120|R1|6|
3060|Schulbad Lerchried|Gang|3|3|9|V1|1|120|||
3060|Schulbad Lerchried|Geräteraum|1|6||V1|1|120|||2019 ausgebaut
`)
		p.Bold("A1", "A3:L3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("3041", "Freibad Wiesengrund", "register of three installations; the same names of amplifiers and controls in each")
		t.Speakers("sheet=Anlagen; tap_v=100; line_v=100; amplifier=V1", `rows|zone|count|tap_w|channel|control
4|Liegewiese|6|15|1|
5|Becken|4|10|2|
6|Kasse|2|3|3|R1
7|Umkleiden|6|1.5|3|`)
		t.Channels("line_v=100; amplifier=V1", `channel|rated_w|load_w
1|240|90
2|120|40
3|60|15`)
		t.Amplifiers("", `amplifier|load_w
V1|145`)
		t.Controls("", `control|zone|rated_w|load_w
R1|Kasse|12|6`)
		t.Also("3055", "Hallenbad Nord", "second installation of the register")
		t.Speakers("sheet=Anlagen; tap_v=100; line_v=100; amplifier=V1", `rows|zone|count|tap_w|channel|control
8|Schwimmhalle|8|10|1|
9|Umkleiden|10|1.5|2|
10|Foyer|4|3|2|R1
11|Technik|1|10|2|`)
		t.Channels("line_v=100; amplifier=V1", `channel|rated_w|load_w
1|120|80
2|60|37`)
		t.Amplifiers("", `amplifier|load_w
V1|117`)
		t.Controls("", `control|zone|rated_w|load_w
R1|Foyer|24|12`)
		t.Also("3060", "Schulbad Lerchried", "third installation of the register; one loudspeaker taken out")
		t.Speakers("sheet=Anlagen; tap_v=100; line_v=100; amplifier=V1; channel=1", `rows|zone|count|tap_w|control
12|Becken|4|10|
13|Lehrerzimmer|1|3|R1
14|Gang|3|3|`)
		t.Channels("line_v=100; amplifier=V1", `channel|rated_w|load_w
1|120|52`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|120|52`)
		t.Controls("", `control|zone|rated_w|load_w
R1|Lehrerzimmer|6|3`)
		t.Left("Anlagen", `15|removed|taken out in 2019`)
	}},

	// Der Beleuchtungsmann eines Planetariums listet Leuchten, Dimmer und Kreise: sieht aus wie Lautsprecher, ist es nicht.
	{File: "licht/Planetarium Kuppelrand Leuchten.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Leuchten")
		p.Put("A1", `
Planetarium Sternrain, Leuchtenliste Kuppel und Nebenräume
||
Kreis|Bereich|Leuchte|Stück|W je Stück|W gesamt|Dimmer|Dimmer W|Leitung|Länge m
D1|Kuppelrand blau|LED-Leiste|24|15|360|DM1|600|3 x 1,5|48
D2|Kuppelrand weiß|LED-Leiste|24|15|360|DM1|600|3 x 1,5|48
D3|Stufenlicht|LED-Spot|36|1.5|54|DM2|300|3 x 1,5|65
D4|Foyer|Deckenleuchte|10|10|100|DM2|300|3 x 1,5|30
D5|Seminarraum|Deckenleuchte|6|20|120|ohne||3 x 1,5|42
D6|Technik|Wannenleuchte|4|36|144|ohne||3 x 1,5|18
N1|Fluchtwege|Sicherheitsleuchte|14|3|42|ohne||3 x 1,5 E30|120
`)
		p.Bold("A1", "A3:J3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "luminaires with watts, counts, circuits, dimmers and cable lengths")
		t.Left("Leuchten", `4|other|luminaires
5|other|luminaires
6|other|luminaires
7|other|luminaires
8|other|luminaires
9|other|luminaires
10|other|luminaires`)
	}},

	// Il volontario di una ferrovia museale numera i diffusori della stazione; l'amplificatore non ha nome, le linee hanno lettere.
	{File: "ferrovia/diffusori stazione.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Latin1(typed.DOS(`
Stazione museo di Pietramora;;;;;
L'amplificatore nell'ufficio movimento ha tre uscite a 100 V: linea A 120 W, linea B 60 W, linea C 60 W;;;;;
;;;;;
N.;Dove;Tipo;Watt;Linea;Note
1;Marciapiede 1;tromba;15;A;
2;Marciapiede 1;tromba;15;A;
3;Marciapiede 2;tromba;15;A;
4;Marciapiede 2;tromba;15;A;
5;Sottopasso;tromba;10;A;si sente poco, c'è umidità
6;Sala d'attesa;soffitto;3;B;regolatore dietro la porta, 12 W
7;Sala d'attesa;soffitto;3;B;stesso regolatore
8;Biglietteria;soffitto;1,5;B;
9;Atrio;parete;6;B;
10;Atrio;parete;6;B;
11;Rimessa;tromba;15;C;
12;Rimessa;tromba;15;C;
13;Officina;parete;6;C;
14;Deposito bagagli;soffitto;3;C;tolto, non c'è più
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Stazione museo di Pietramora", "plain list in Latin-1; lines with letters of an amplifier without a name, rated in a sentence; an unnamed control in remarks")
		t.Speakers("tap_v=100; line_v=100; channel=A", `rows|room|tap_w
5|Marciapiede 1|15
6|Marciapiede 1|15
7|Marciapiede 2|15
8|Marciapiede 2|15
9|Sottopasso|10`)
		t.Speakers("tap_v=100; line_v=100; channel=B", `rows|room|tap_w|note
10|Sala d'attesa|3|unnamed
11|Sala d'attesa|3|unnamed
12|Biglietteria|1.5|
13|Atrio|6|
14|Atrio|6|`)
		t.Speakers("tap_v=100; line_v=100; channel=C", `rows|room|tap_w
15|Rimessa|15
16|Rimessa|15
17|Officina|6`)
		t.Channels("line_v=100", `channel|rated_w|load_w
A|120|70
B|60|19.5
C|60|36`)
		t.Amplifiers("", `amplifier|load_w
|125.5`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|12|6`)
		t.Left("", `18|removed|taken away`)
	}},
}
