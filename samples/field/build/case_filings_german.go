package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

var filingsGerman = []typed.Case{

	{File: "filings/hausmeister/Lautsprecher Schule.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Lautsprecher")
		p.Put("A1", `
Lautsprecher Grundschule am Erlenhang
Stand Oktober 2022, aufgeschrieben vom Hausmeister
||
Raum|Anzahl|eingestellt|Regler|Bemerkung
Erdgeschoss
Aula|4|6 W|R1|
Flur|3|3 W||
Sekretariat|1|1,5 W|R2|
Lehrerzimmer|2|3 W|R3|
Obergeschoss
Flur|3|3 W||
Klasse 1a|1|3 W||
Klasse 1b|1|3 W||
Klasse 2a|1|3 W||
Klasse 2b|1|||nach Wasserschaden ausgebaut
Musikraum|2|6 W|R4|
Außen
Pausenhof|2|15 W||Trichter
Giebel Turnhalle|1|15 W||Trichter
||
Verstärker steht im Sekretariat, 120 W, 100 Volt, alles an einer Leitung
Regler: R1 50 W, R2 5 W, R3 10 W, R4 20 W
`)
		p.Bold("A1", "A4:E4", "A5", "A10", "A17")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Grundschule am Erlenhang", "caretaker's list, floors as titles, one amplifier without a name in a sentence, one loudspeaker taken out")
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; zone=Erdgeschoss; note=floor as zone", `rows|room|count|tap_w|control
6|Aula|4|6|R1
7|Flur|3|3|
8|Sekretariat|1|1.5|R2
9|Lehrerzimmer|2|3|R3`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; zone=Obergeschoss; note=floor as zone", `rows|room|count|tap_w|control
11|Flur|3|3|
12|Klasse 1a|1|3|
13|Klasse 1b|1|3|
14|Klasse 2a|1|3|
16|Musikraum|2|6|R4`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; zone=Außen; note=area as zone", `rows|room|count|tap_w
18|Pausenhof|2|15
19|Giebel Turnhalle|1|15`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|120|115.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|120|115.5`)
		t.Controls("", `control|rated_w|load_w
R1|50|24
R2|5|1.5
R3|10|6
R4|20|12`)
		t.Left("Lautsprecher", `15|removed|taken out`)
	}},

	{File: "filings/schweiz/2314 Bot Garten.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Lautsprecher")
		p.Put("A1", `
Botanischer Garten Rütiwil / Jardin botanique
Auftrag / Mandat|2314|||Datum|3.5.2017
||
Pos.|Zone|Ort / Lieu|Typ|Anz.|Leistung⏎[W]|Linie / Ligne|Regler
1|Palmenhaus|Eingang|Projektor|2|10|L1|
2|Palmenhaus|Galerie|Projektor|4|10|L1|
3|Orangerie|Saal|Säule|4|20|L2|LR1
4|Orangerie|Vestiaire|Deckenlautsprecher|2|3|L2|
5|Orangerie|Office|Deckenlautsprecher|1|3|L2|LR2
6|Verwaltung|Empfang / Réception|Deckenlautsprecher|2|3|L3|LR3
7|Verwaltung|Korridor EG|Deckenlautsprecher|4|1.5|L3|
8|Verwaltung|Sitzungszimmer|Deckenlautsprecher|2|6|L3|LR4
9|Aussen|Weiher|Pilzlautsprecher|6|6|L4|
10|Aussen|Parkplatz|Horn|2|15|L4|
|||Total|29
`)
		p.Merge("A1:H1", "B2:D2")
		p.Bold("A1", "A4:H4", "D15:E15")
		q := p.Sheet("Linien")
		q.Put("A1", `
Alle Linien 100 V / toutes les lignes en 100 V
Linie / Ligne|Verstärker|Ausgang / Sortie|P Ausgang [W]|Kabel|Länge [m]
L1|V1|1|120|2 x 2.5 mm²|85
L2|V1|2|120|2 x 2.5 mm²|60
L3|V2|1|120|2 x 1.5 mm²|40
L4|V2|2|120|2 x 2.5 mm²|210
`)
		q.Bold("A2:F2")
		r := p.Sheet("Regler")
		r.Put("A1", `
Regler / Atténuateur|Ort / Lieu|P [W]
LR1|Orangerie, Saal|100
LR2|Orangerie, Office|6
LR3|Réception|12
LR4|Sitzungszimmer|24
`)
		r.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2314", "Botanischer Garten Rütiwil", "Swiss office with both languages; loudspeakers, lines and controls on three sheets joined by line and tag")
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|control|amplifier|channel
5|Palmenhaus|Eingang|2|10||V1|1
6|Palmenhaus|Galerie|4|10||V1|1
7|Orangerie|Saal|4|20|LR1|V1|2
8|Orangerie|Vestiaire|2|3||V1|2
9|Orangerie|Office|1|3|LR2|V1|2
10|Verwaltung|Empfang / Réception|2|3|LR3|V2|1
11|Verwaltung|Korridor EG|4|1.5||V2|1
12|Verwaltung|Sitzungszimmer|2|6|LR4|V2|1
13|Aussen|Weiher|6|6||V2|2
14|Aussen|Parkplatz|2|15||V2|2`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|120|60
V1|2|120|89
V2|1|120|24
V2|2|120|66`)
		t.Amplifiers("", `amplifier|load_w
V1|149
V2|90`)
		t.Controls("", `control|rated_w|load_w
LR1|100|80
LR2|6|3
LR3|12|6
LR4|24|12`)
		t.Lines("note=one length a line", `line|length_m|area_mm2
L1|85|2.5
L2|60|2.5
L3|40|1.5
L4|210|2.5`)
		t.Left("Lautsprecher", `15|total|count of all`)
	}},

	{File: "filings/elektro/17-0834 Kabelliste Hallenbad.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Kabelliste ELA Hallenbad Wiesengrund;;;;;;;;
Auftrag 17-0834;;;Bearb. Ho;;;;;
;;;;;;;;
Kabel;von;nach;Typ;Länge m;Anz. LS;W je LS;Summe W;Verst./Ausg.
W01;ELA-Schrank;Schwimmhalle Nord;NYM-J 3x2,5;48;4;15;60;V1/1
W02;Schwimmhalle Nord;Schwimmhalle Süd;NYM-J 3x2,5;35;4;15;60;V1/1
W03;ELA-Schrank;Lehrbecken;NYM-J 3x1,5;52;3;6;18;V1/2
W04;Lehrbecken;Planschbecken;NYM-J 3x1,5;22,5;2;6;12;V1/2
W05;ELA-Schrank;Foyer;NYM-J 3x1,5;18;4;3;12;V2/1
W06;Foyer;Kasse;NYM-J 3x1,5;9;1;1,5;1,5;V2/1
W07;ELA-Schrank;Umkleide Herren;NYM-J 3x1,5;41;3;3;9;V2/2
W08;Umkleide Herren;Umkleide Damen;NYM-J 3x1,5;12;3;3;9;V2/2
W09;Umkleide Damen;Personal;NYM-J 3x1,5;26;1;1,5;1,5;V2/2
W10;ELA-Schrank;Liegewiese;NYY-J 3x2,5;95;3;15;45;V3/1
;;;Summe;358,5;28;;228;
;;;;;;;;
Verstärker: V1 2 x 240 W, V2 2 x 60 W, V3 1 x 120 W, alles 100 V;;;;;;;;
In Kasse und Personal je ein Lautstärkeregler 6 W;;;;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("17-0834", "Hallenbad Wiesengrund", "electrician's cable list that carries the loudspeakers at the far end of each cable; two controls without names in a sentence")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|amplifier|channel|note
5|Schwimmhalle Nord|4|15|V1|1|
6|Schwimmhalle Süd|4|15|V1|1|
7|Lehrbecken|3|6|V1|2|
8|Planschbecken|2|6|V1|2|
9|Foyer|4|3|V2|1|
10|Kasse|1|1.5|V2|1|unnamed
11|Umkleide Herren|3|3|V2|2|
12|Umkleide Damen|3|3|V2|2|
13|Personal|1|1.5|V2|2|unnamed
14|Liegewiese|3|15|V3|1|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|240|120
V1|2|240|30
V2|1|60|13.5
V2|2|60|19.5
V3|1|120|45`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1||150
V2||33
V3|120|45`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Kasse|6|1.5
|Personal|6|1.5`)
		t.Lines("", `line|from|to|length_m|area_mm2
W01|ELA-Schrank|Schwimmhalle Nord|48|2.5
W02|Schwimmhalle Nord|Schwimmhalle Süd|35|2.5
W03|ELA-Schrank|Lehrbecken|52|1.5
W04|Lehrbecken|Planschbecken|22.5|1.5
W05|ELA-Schrank|Foyer|18|1.5
W06|Foyer|Kasse|9|1.5
W07|ELA-Schrank|Umkleide Herren|41|1.5
W08|Umkleide Herren|Umkleide Damen|12|1.5
W09|Umkleide Damen|Personal|26|1.5
W10|ELA-Schrank|Liegewiese|95|2.5`)
		t.Left("", `15|total|sums`)
	}},

	{File: "filings/bestand/Objekt 0077 Seilereimuseum.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Bestand")
		p.Put("A1", `
||Museum für Seilerei Brunnhagen
||Bestand Beschallung, Objekt 0077
||
Inv.-Nr.|Baujahr|Geschoss|Raum|Gerät|Stück|Watt|Ausgang|Regler
10021|2004|EG|Foyer|Einbaulautsprecher|4|6|1|
10022|2004|"|Garderobe|"|2|3|"|
10023|2004|"|Museumsladen|"|3|3|"|S1
10024|2011|"|Seilbahn 1|Wandlautsprecher|5|6|2|
10025|2011|"|Seilbahn 2|"|5|6|"|
10030|2011|1. OG|Ausstellung|Wandlautsprecher|6|6|3|S2
10031|2011|"|Vortragsraum|"|4|10|"|S3
10032|2011|"|Büro|Einbaulautsprecher|1|1.5|"|S4
10040|2018|Hof|Innenhof|Druckkammerlautsprecher|2|15|2|
||
10050|2004|EG|Garderobe|Verstärker, 3 Ausgänge zu je 120 W, 100 V|1||1 bis 3|
10051|2004|EG|Museumsladen|Lautstärkeregler|1|12||S1
10052|2011|1. OG|Ausstellung|Lautstärkeregler|1|50||S2
10053|2011|1. OG|Vortragsraum|Lautstärkeregler|1|50||S3
10054|2011|1. OG|Büro|Lautstärkeregler|1|6||S4
||
||grün = Eigentum des Fördervereins
`)
		p.Bold("C1", "A4:I4")
		p.Colour("CCFFCC", "C10:I11", "C21")
		typed.Must(p.File.SetColVisible(p.Name, "A:B", false))
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("0077", "Museum für Seilerei Brunnhagen", "asset list with hidden columns of inventory numbers, ditto marks, the amplifier and the controls as rows of the same list, one amplifier without a name with three outputs")
		t.Speakers("sheet=Bestand; tap_v=100; line_v=100", `rows|room|count|tap_w|channel|control
5|Foyer|4|6|1|
6|Garderobe|2|3|1|
7|Museumsladen|3|3|1|S1
8|Seilbahn 1|5|6|2|
9|Seilbahn 2|5|6|2|
10|Ausstellung|6|6|3|S2
11|Vortragsraum|4|10|3|S3
12|Büro|1|1.5|3|S4
13|Innenhof|2|15|2|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
|1|120|39
|2|120|90
|3|120|77.5`)
		t.Amplifiers("", `amplifier|load_w
|206.5`)
		t.Controls("", `control|rated_w|load_w
S1|12|9
S2|50|36
S3|50|40
S4|6|1.5`)
		t.Left("Bestand", `15|amplifier|not a loudspeaker
16|control|not a loudspeaker
17|control|not a loudspeaker
18|control|not a loudspeaker
19|control|not a loudspeaker`)
	}},
}
