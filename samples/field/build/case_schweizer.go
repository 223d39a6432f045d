package main

import (
	"lineaudit/samples/typed"

	"github.com/xuri/excelize/v2"
)

// schweizer is a firm in a bilingual town: headings in two languages, rooms in either.
var schweizer = []typed.Case{
	{File: "schweizer/Auftrag 3312 Hallenbad.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Liste")
		p.Put("A1", `
Hallenbad / Piscine couverte Brüggwil||||||||
Auftrag / Mandat 3312||||100 V|||||
Nr.|Raum / Local|Typ / Type|Anz. / Nb.|Abgriff / Prise W|Total W|Linie / Ligne|Regler / Régl.|Bem. / Rem.
1|Eingang / Entrée|DL6|4|3|12|1|R1|
2|Kasse / Caisse|DL6|1|1.5|1.5|1|R2|
3|Garderobe H / Vestiaire H|DL6|6|1.5|9|1||
4|Garderobe D / Vestiaire F|DL6|6|1.5|9|1||
5|Schwimmhalle / Bassin|TS30|8|20|160|2||
6|Planschbecken / Pataugeoire|TS30|2|10|20|3||
7|Technik / Technique|H15|2|10|20|3||
8|Liegewiese / Pelouse|H15|4|15|60|4||nur Sommer / été seulement

Linie / Ligne|Verstärker / Ampli|Leistung / Puissance
1|V1|60 W
2|V2|240 W
3|V3|60 W
4|V4|60 W

Regler / Réglage|Leistung / Puissance|
R1|20 W|
R2|4 W|
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("3312", "Hallenbad / Piscine couverte Brüggwil", "headings and rooms in two languages; amplifiers and controls in small tables below")
		t.Speakers("tap_v=100; line_v=100; sheet=Liste", `
rows|tag|room|model|count|tap_w|amplifier|channel|control
4|1|Eingang / Entrée|DL6|4|3|V1|1|R1
5|2|Kasse / Caisse|DL6|1|1.5|V1|1|R2
6|3|Garderobe H / Vestiaire H|DL6|6|1.5|V1|1|
7|4|Garderobe D / Vestiaire F|DL6|6|1.5|V1|1|
8|5|Schwimmhalle / Bassin|TS30|8|20|V2|2|
9|6|Planschbecken / Pataugeoire|TS30|2|10|V3|3|
10|7|Technik / Technique|H15|2|10|V3|3|
11|8|Liegewiese / Pelouse|H15|4|15|V4|4|
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nV1|1|60|31.5\nV2|2|240|160\nV3|3|60|40\nV4|4|60|60")
		t.Amplifiers("", "amplifier|rated_w|load_w\nV1|60|31.5\nV2|240|160\nV3|60|40\nV4|60|60")
		t.Controls("", "control|rated_w|load_w\nR1|20|12\nR2|4|1.5")
	}},

	{File: "schweizer/Auftrag 3358 Sternwarte Messprotokoll.csv", Kind: "schedule", Bytes: text(`
Messprotokoll ELA;Auftrag 3358;Sternwarte Hohenfluh;;;
;;;;;
Linie;Räume;Lautsprecher;berechnet;gemessen (1 kHz);Verstärkerausgang
L1;Foyer, Garderobe;6 DL à 3 W + 2 DL à 1,5 W;21 W;22 W;V1/1 (60 W)
L2;Vortragssaal;4 Boxen à 10 W, über Regler R1 (40 W);40 W;41 W;V1/2 (60 W)
L3;Kuppel;2 Boxen à 5 W;10 W;10 W;V2/1 (30 W)
L4;Terrasse;2 Horn à 15 W;30 W;31 W;V2/2 (30 W)
;;;;;
Netzspannung 231 V, Linienspannung 100 V;;;;;
`), Truth: func(t *typed.Truth) {
		t.Is("3358", "Sternwarte Hohenfluh", "a record of measurements: several kinds of loudspeakers in one cell, output and rating in another")
		t.Speakers("tap_v=100; line_v=100", `
rows|room|model|count|tap_w|amplifier|channel|control
4|Foyer, Garderobe|DL|6|3|V1|1|
4|Foyer, Garderobe|DL|2|1.5|V1|1|
5|Vortragssaal|Boxen|4|10|V1|2|R1
6|Kuppel|Boxen|2|5|V2|1|
7|Terrasse|Horn|2|15|V2|2|
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nV1|1|60|21\nV1|2|60|40\nV2|1|30|10\nV2|2|30|30")
		t.Amplifiers("", "amplifier|load_w\nV1|61\nV2|40")
		t.Controls("", "control|rated_w|load_w\nR1|40|40")
	}},

	{File: "schweizer/3390 Eisfeld Uferpark Revision.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Revision 2022")
		p.Put("A1", `
Auftrag 3390 - Eisfeld Uferpark - Revisionsunterlagen||||||||
Amplificateurs: V1 = 2 x 120 W, V2 = 1 x 60 W (sorties 100 V)||||||||

Zone|HP-Nr.|Emplacement|Type|Leistung eingestellt|vorher|Verst./Ausg.|Regler|Remarque
Z1|101|Eisfeld Nord|Horn|15|30|V1.1||
Z1|102|Eisfeld Nord|Horn|15|30|V1.1||
Z1|103|Eisfeld Süd|Horn|15|30|V1.1||
Z1|104|Eisfeld Süd|Horn|15|30|V1.1||
Z2|201|Tribüne|Säule|20|20|V1.2||
Z2|202|Tribüne|Säule|20|20|V1.2||
Z2|203|Tribüne|Säule||20|V1.2||démonté
Z3|301|Kasse|Decke|3|3|V2.1|R301 (5 W)|
Z3|302|Vermietung|Decke|6|6|V2.1|R302 (10 W)|pas assez fort
Z3|303|Vermietung|Decke|6|6|V2.1|R302 (10 W)|
Z3|304|Garderobe|Decke|3|3|V2.1||
Z3|305|Garderobe|Decke|3|3|V2.1||
`)
		p.Strike("F5:F8")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("3390", "Eisfeld Uferpark", "German and French mixed; what was set before beside what is set now; output told with a point")
		t.Speakers("tap_v=100; line_v=100; sheet=Revision 2022", `
rows|zone|tag|room|model|tap_w|amplifier|channel|control
5..6|Z1|101..|Eisfeld Nord|Horn|15|V1|1|
7..8|Z1|103..|Eisfeld Süd|Horn|15|V1|1|
9..10|Z2|201..|Tribüne|Säule|20|V1|2|
12|Z3|301|Kasse|Decke|3|V2|1|R301
13..14|Z3|302..|Vermietung|Decke|6|V2|1|R302
15..16|Z3|304..|Garderobe|Decke|3|V2|1|
`)
		t.Speakers("tap_v=100; line_v=100; sheet=Revision 2022; status=removed", "rows|zone|tag|room|model|amplifier|channel\n11|Z2|203|Tribüne|Säule|V1|2")
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nV1|1|120|60\nV1|2|120|40\nV2|1|60|21")
		t.Amplifiers("", "amplifier|rated_w|load_w\nV1|240|100\nV2|60|21")
		t.Controls("", "control|rated_w|load_w\nR301|5|3\nR302|10|12")
	}},
}
