package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// branchesGerman are branch offices of the same firm, in German.
var branchesGerman = []typed.Case{
	// Bestandsliste, a row a loudspeaker, the amplifiers below
	{File: "branches/NL Ost/LS-Liste Planetarium Hohenlinde.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("LS-Liste")
		p.Put("A1", `
Planetarium Hohenlinde, ELA-Anlage 100 V|||||Auftrag 14/233
Lautsprecherliste, Bestand
||
LS-Nr.|Geschoss|Raum|Bauart|Leistung|Linie|Regler
LS01|UG|Technik|Wandgehäuse|3 W|1|
LS02|UG|Garderobe|Deckeneinbau|3 W|1|
LS03|UG|Garderobe|Deckeneinbau|3 W|1|
LS04|EG|Kasse|Deckeneinbau|1,5 W|1|LR1
LS05|EG|Foyer|Deckeneinbau|6 W|2|
LS06|EG|Foyer|Deckeneinbau|6 W|2|
LS07|EG|Foyer|Deckeneinbau|6 W|2|
LS08|EG|Kuppelsaal|Schallzeile|20 W|3|LR2
LS09|EG|Kuppelsaal|Schallzeile|20 W|3|LR2
LS10|EG|Kuppelsaal|Schallzeile|20 W|3|LR2
LS11|OG|Seminar|Deckeneinbau|3 W|2|
LS12|OG|Seminar|Deckeneinbau|3 W|2|
LS13|OG|Büro|Deckeneinbau|1,5 W|1|
LS14|außen|Vorplatz|Druckkammer|15 W|4|
LS15|außen|Vorplatz|Druckkammer|15 W|4|
||
Linie|Verstärker|Ausgang|Nennleistung|Last
1|V1|1|60 W|12 W
2|V1|2|60 W|24 W
3|V2|1|120 W|60 W
4|V2|2|120 W|30 W
||
LR1 = 6 W, LR2 = 100 W
`)
		p.Bold("A1", "A4:G4", "A21:E21")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("14/233", "Planetarium Hohenlinde", "plain; a row a loudspeaker; lines with their outputs in a table below, ratings of the controls in a sentence")
		t.Speakers("sheet=LS-Liste; tap_v=100; line_v=100; amplifier=V1; channel=1", `rows|tag|room|tap_w|control
5|LS01|Technik|3|
6|LS02|Garderobe|3|
7|LS03|Garderobe|3|
8|LS04|Kasse|1.5|LR1
17|LS13|Büro|1.5|`)
		t.Speakers("sheet=LS-Liste; tap_v=100; line_v=100; amplifier=V1; channel=2", `rows|tag|room|tap_w
9|LS05|Foyer|6
10|LS06|Foyer|6
11|LS07|Foyer|6
15|LS11|Seminar|3
16|LS12|Seminar|3`)
		t.Speakers("sheet=LS-Liste; tap_v=100; line_v=100; amplifier=V2; channel=1; control=LR2; tap_w=20", `rows|tag|room
12|LS08|Kuppelsaal
13|LS09|Kuppelsaal
14|LS10|Kuppelsaal`)
		t.Speakers("sheet=LS-Liste; tap_v=100; line_v=100; amplifier=V2; channel=2; tap_w=15", `rows|tag|room
18|LS14|Vorplatz
19|LS15|Vorplatz`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|60|12
V1|2|60|24
V2|1|120|60
V2|2|120|30`)
		t.Amplifiers("", `amplifier|load_w
V1|36
V2|90`)
		t.Controls("", `control|rated_w|load_w
LR1|6|1.5
LR2|100|60`)
	}},

	// Gruppenliste of a caretaker, a row a group
	{File: "branches/NL Süd/Gruppenliste Reitanlage.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Reitanlage Moosgrund;;;;;;;
Gruppenliste Beschallung (100-V-Technik), Stand Mai 2009;;;;;;;
;;;;;;;
Nr.;Gruppe;Anz. Lspr.;je Lspr. (W);Gesamt (W);Lautstärkesteller;Steller max. (W);Verstärker
1;Reithalle;8;12,5;100,0;;;Endstufe 1 (240 W)
2;Abreiteplatz;4;15,0;60,0;;;Endstufe 1
3;Stallgasse West;6;1,5;9,0;LS-W;20;Endstufe 2 (120 W)
4;Stallgasse Ost;6;1,5;9,0;LS-O;20;Endstufe 2
5;Sattelkammer;2;3,0;6,0;LS-K;10;Endstufe 2
6;Tribüne;5;6,0;30,0;;;Endstufe 2
7;Meldestelle;1;1,5;1,5;LS-M;5;Endstufe 2
8;Parkplatz;3;15,0;45,0;;;geplant, noch nicht montiert
;Summe ohne Nr. 8;32;;215,5;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Reitanlage Moosgrund", "plain group list; decimal commas; amplifier ratings in brackets; one group only planned")
		t.Speakers("tap_v=100; line_v=100; amplifier=Endstufe 1", `rows|zone|count|tap_w
5|Reithalle|8|12.5
6|Abreiteplatz|4|15`)
		t.Speakers("tap_v=100; line_v=100; amplifier=Endstufe 2", `rows|zone|count|tap_w|control
7|Stallgasse West|6|1.5|LS-W
8|Stallgasse Ost|6|1.5|LS-O
9|Sattelkammer|2|3|LS-K
10|Tribüne|5|6|
11|Meldestelle|1|1.5|LS-M`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
Endstufe 1|240|160
Endstufe 2|120|55.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
Endstufe 1|240|160
Endstufe 2|120|55.5`)
		t.Controls("", `control|zone|rated_w|load_w
LS-W|Stallgasse West|20|9
LS-O|Stallgasse Ost|20|9
LS-K|Sattelkammer|10|6
LS-M|Meldestelle|5|1.5`)
		t.Left("", `12|future|planned, not fitted
13|total|sum`)
	}},

	// Kabelliste with loads first, loudspeakers on a second sheet
	{File: "branches/NL West/AN 5120 Hallenbad Kabel + LS.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Kabelliste")
		p.Put("A1", `
Hallenbad Erlenwörth
Auftrag AN 5120 / Kabelliste ELA 100V
||
Kabel|von|nach|Typ|Länge [m]|Anschlusswert [W]
W101|EV1/1|Schwimmhalle|2x2,5|68|80
W102|EV1/2|Umkleiden|2x1,5|41|24
W103|EV2/1|Eingang|2x1,5|27|16,5
W104|EV2/2|Liegewiese|2x4|115|90
||
EV1: 2 x 120 W, EV2: 2 x 125 W
`)
		p.Bold("A1", "A4:F4")
		q := p.Sheet("Lautsprecher")
		q.Put("A1", `
Kabel|Raum|Typ|Stück|Watt|Bemerkung
W101|Becken Längsseite|Tonsäule|4|15|
W101|Becken Stirnseite|Tonsäule|2|10|
W102|Umkleide Damen|Decke|4|3|
W102|Umkleide Herren|Decke|3|3|
W102|Dusche|Feuchtraum|1|3|neu 2011
W103|Windfang|Decke|2|3|
W103|Kasse|Decke|1|1,5|Regler R1, 12 W
W103|Flur|Decke|3|3|
W104|Liegewiese|Horn|6|15|
`)
		q.Bold("A1:F1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("AN 5120", "Hallenbad Erlenwörth", "cable list with loads on the first sheet, loudspeakers by cable on the second; outputs as EV1/1, ratings in a sentence")
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=EV1; channel=1", `rows|room|count|tap_w
2|Becken Längsseite|4|15
3|Becken Stirnseite|2|10`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=EV1; channel=2", `rows|room|count|tap_w
4|Umkleide Damen|4|3
5|Umkleide Herren|3|3
6|Dusche|1|3`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=EV2; channel=1", `rows|room|count|tap_w|control
7|Windfang|2|3|
8|Kasse|1|1.5|R1
9|Flur|3|3|`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=EV2; channel=2", `rows|room|count|tap_w
10|Liegewiese|6|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
EV1|1|120|80
EV1|2|120|24
EV2|1|125|16.5
EV2|2|125|90`)
		t.Amplifiers("", `amplifier|rated_w|load_w
EV1|240|104
EV2|250|106.5`)
		t.Controls("", `control|rated_w|load_w
R1|12|1.5`)
		t.Lines("", `line|from|to|length_m|area_mm2
W101|EV1/1|Schwimmhalle|68|2.5
W102|EV1/2|Umkleiden|41|1.5
W103|EV2/1|Eingang|27|1.5
W104|EV2/2|Liegewiese|115|4`)
	}},

	// floor by floor, ditto marks, an electrician's register
	{File: "branches/NL Süd/Schule am Hag Lautsprecher je Stockwerk.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Tabelle1")
		p.Put("A1", `
Schule am Hag, Lautsprecheranlage (Gong und Durchsagen)
Zentrale: ein Verstärker 120 W, ein Lautsprecherkreis 100 V
||
Raum|Anzahl|Typ|Anzapfung
Untergeschoss
Werkraum|2|Wand|3 W
Heizung|1|Horn|6 W
Erdgeschoss
Aula|4|Wand|6 W
Pausengang|5|Decke|3 W
Lehrerzimmer|1|"|1,5 W
Sekretariat|1|"|"
1. Obergeschoss
Klasse 1a|1|Wand|1,5 W
Klasse 1b|1|"|"
Klasse 2a|1|"|"
Klasse 2b|1|"|"
Gang|3|Decke|3 W
Freigelände
Pausenhof|2|Horn|10 W
`)
		p.Bold("A1", "A4:D4", "A5", "A8", "A13", "A19")
		p.Merge("A5:D5", "A8:D8", "A13:D13", "A19:D19")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Schule am Hag", "floors as merged titles, ditto marks for type and tap, one amplifier without a name on one line")
		t.Speakers("sheet=Tabelle1; tap_v=100; line_v=100; zone=Untergeschoss; note=floor as zone", `rows|room|count|tap_w
6|Werkraum|2|3
7|Heizung|1|6`)
		t.Speakers("sheet=Tabelle1; tap_v=100; line_v=100; zone=Erdgeschoss; note=floor as zone", `rows|room|count|tap_w
9|Aula|4|6
10|Pausengang|5|3
11|Lehrerzimmer|1|1.5
12|Sekretariat|1|1.5`)
		t.Speakers("sheet=Tabelle1; tap_v=100; line_v=100; zone=1. Obergeschoss; note=floor as zone", `rows|room|count|tap_w
14|Klasse 1a|1|1.5
15|Klasse 1b|1|1.5
16|Klasse 2a|1|1.5
17|Klasse 2b|1|1.5
18|Gang|3|3`)
		t.Speakers("sheet=Tabelle1; tap_v=100; line_v=100; zone=Freigelände; note=area as zone", `rows|room|count|tap_w
20|Pausenhof|2|10`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|120|89`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|120|89`)
	}},
}
