package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// elektromeister is a German master electrician: lists by circuit, decimal commas, his own abbreviations.
var elektromeister = []typed.Case{
	{File: "elektro/ELA Hallenbad Talwiesen.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("LS-Liste")
		p.Put("A1", `
ELA-Anlage Hallenbad Talwiesen|||||||||
Auftrag 20-318|||Stand: 04.11.2020|||gez. Br.
|
Kreis|Raum|Anz.|LS-Typ|Anzapfung|Summe|LS-Regler|Leitung|Länge|Bemerkung
1|Schwimmhalle|10|Druckkammer|10 W|100 W|-|2x2,5|65 m
2|Lehrbecken|4|Druckkammer|6 W|24 W|-|2x1,5|40 m
2|Kinderbecken|2|Druckkammer|6 W|12 W|-|2x1,5|25 m
3|Eingang|6|Deckeneinbau|3 W|18 W|LR1 Kasse|2x1,5|30 m
3|Kasse|1|Deckeneinbau|1,5 W|1,5 W|LR1 Kasse|2x1,5|5 m
4|Umkleide Damen|5|Feuchtraum|3 W|15 W|LR2|2x1,5|45 m|LR2 mit Pflichtrufrelais
4|Umkleide Herren|5|Feuchtraum|3 W|15 W|LR2|2x1,5|15 m
5|Sauna|4|Feuchtraum|1,5 W|6 W|LR3|2x1,5|55 m
5|Solarium|2|Deckeneinbau|1,5 W|3 W|LR3|2x1,5|10 m|demontiert 2019
6|Reserve||||||||
|
Verstärker V1: 250 W, 100 V, Kreise 1-3
Verstärker V2: 120 W, 100 V, Kreise 4-6
LR1 = 35 W, LR2 = 35 W, LR3 = 12 W
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("20-318", "Hallenbad Talwiesen", "circuits shared out to amplifiers in notes below; ratings of the controls in a note; a control over two rooms; a dismantled row")
		t.Speakers("tap_v=100; line_v=100; sheet=LS-Liste", `
rows|room|count|model|tap_w|amplifier|channel|control|status
5|Schwimmhalle|10|Druckkammer|10|V1|1||installed
6|Lehrbecken|4|Druckkammer|6|V1|2||installed
7|Kinderbecken|2|Druckkammer|6|V1|2||installed
8|Eingang|6|Deckeneinbau|3|V1|3|LR1|installed
9|Kasse|1|Deckeneinbau|1.5|V1|3|LR1|installed
10|Umkleide Damen|5|Feuchtraum|3|V2|4|LR2|installed
11|Umkleide Herren|5|Feuchtraum|3|V2|4|LR2|installed
12|Sauna|4|Feuchtraum|1.5|V2|5|LR3|installed
13|Solarium|2|Deckeneinbau|1.5|V2|5|LR3|removed
`)
		t.Channels("line_v=100", "amplifier|channel|load_w\nV1|1|100\nV1|2|36\nV1|3|19.5\nV2|4|30\nV2|5|6")
		t.Amplifiers("", "amplifier|rated_w|load_w\nV1|250|155.5\nV2|120|36")
		t.Controls("", "control|rated_w|load_w\nLR1|35|19.5\nLR2|35|30\nLR3|12|6")
		t.Lines("note=one length a row", "line|zone|length_m|area_mm2\n|Schwimmhalle|65|2.5\n|Lehrbecken|40|1.5\n|Kinderbecken|25|1.5\n|Eingang|30|1.5\n|Kasse|5|1.5\n|Umkleide Damen|45|1.5\n|Umkleide Herren|15|1.5\n|Sauna|55|1.5")
		t.Left("LS-Liste", "14|spare|Reserve")
	}},

	{File: "elektro/Lautsprecher Gewächshaus.csv", Kind: "schedule", Bytes: text(`
Botanischer Garten Lindenau;;;;;;;
Lautsprecherverzeichnis;;;;Auftrag 21-044;;;
;;;;;;;
Nr.;Ort;Bauart;Leistung [W];Verstärker;Linie;Lautstärkesteller;Bemerkung
1.1;Palmenhaus Süd;Tonsäule;20;VS1;L1;;
1.2;Palmenhaus Nord;Tonsäule;20;VS1;L1;;
1.3;Palmenhaus Galerie;Tonsäule;10;VS1;L1;;
2.1;Farnhaus;Kugel;10;VS1;L2;;
2.2;Farnhaus;Kugel;10;VS1;L2;;
3.1;Kassenraum;Einbau;3;VS2;L3;Steller Kasse (12 W);
3.2;Kassenraum;Einbau;3;VS2;L3;Steller Kasse (12 W);
3.3;Kassenraum;Einbau;3;VS2;L3;Steller Kasse (12 W);außer Betrieb, abgeklemmt
3.4;Seminarraum;Einbau;6;VS2;L3;Steller Seminar (30 W);
3.5;Seminarraum;Einbau;6;VS2;L3;Steller Seminar (30 W);
4.1;Freigelände;Pilz;7,5;VS2;L4;;geplant
4.2;Freigelände;Pilz;7,5;VS2;L4;;geplant
;;;;;;;
;;Summe L1;50;;;;
;;Summe L2;20;;;;
;;Summe L3;18;;;;
VS1 = 2 x 60 W, VS2 = 2 x 30 W, alles 100 V;;;;;;;
`), Truth: func(t *typed.Truth) {
		t.Is("21-044", "Botanischer Garten Lindenau", "one loudspeaker a row, controls with ratings in brackets, sums a line, planned and disconnected ones")
		t.Speakers("tap_v=100; line_v=100", `
rows|tag|room|model|tap_w|amplifier|channel|control|status
5|1.1|Palmenhaus Süd|Tonsäule|20|VS1|L1||installed
6|1.2|Palmenhaus Nord|Tonsäule|20|VS1|L1||installed
7|1.3|Palmenhaus Galerie|Tonsäule|10|VS1|L1||installed
8|2.1|Farnhaus|Kugel|10|VS1|L2||installed
9|2.2|Farnhaus|Kugel|10|VS1|L2||installed
10|3.1|Kassenraum|Einbau|3|VS2|L3|Steller Kasse|installed
11|3.2|Kassenraum|Einbau|3|VS2|L3|Steller Kasse|installed
12|3.3|Kassenraum|Einbau|3|VS2|L3|Steller Kasse|removed
13|3.4|Seminarraum|Einbau|6|VS2|L3|Steller Seminar|installed
14|3.5|Seminarraum|Einbau|6|VS2|L3|Steller Seminar|installed
15|4.1|Freigelände|Pilz|7.5|VS2|L4||future
16|4.2|Freigelände|Pilz|7.5|VS2|L4||future
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nVS1|L1|60|50\nVS1|L2|60|20\nVS2|L3|30|18\nVS2|L4|30|0")
		t.Amplifiers("", "amplifier|rated_w|load_w\nVS1|120|70\nVS2|60|18")
		t.Controls("", "control|rated_w|load_w\nSteller Kasse|12|6\nSteller Seminar|30|12")
		t.Left("", "18|subtotal|\n19|subtotal|\n20|subtotal|\n21|note|")
	}},

	{File: "elektro/Eishalle Wernsbach Bestand.ods", Kind: "schedule", Saved: "ods", Book: sheets("Lautsprecher", `
Eishalle Wernsbach - Bestandsaufnahme||||||
Auftrag 22-107||||||
|
LS-Linie|Bereich|Stück|Typ|W eingestellt|Regler|Bem.
A|Eisfläche West|6|Horn 30 W|15
A|Eisfläche Ost|6|Horn 30 W|15
B|Tribüne|8|Säule 20 W|10
C|Schlittschuhverleih|4|Einbau 6 W|3|Regler 1
C|Umkleiden 1-4|8|Einbau 6 W|1,5|Regler 2|je Umkleide 2 Stück
C|Sanitätsraum|1|Einbau 6 W|3|
D|Sprecherkabine|1|Wand 6 W|6|Regler 3
`, "Verstärker", `
Verstärkerschrank||||
|
Verst.|Ausg.|Leistung|Spannung|LS-Linie
Verst. 1|1|240 W|100 V|A
Verst. 2|1|120 W|100 V|B
Verst. 3|1|60 W|100 V|C
Verst. 3|2|60 W|100 V|D
`, "Regler", `
Regler|Ort|Belastbarkeit|Vorrang
Regler 1|Schlittschuhverleih|12 W|ja
Regler 2|Umkleiden 1-4|12 W|ja
Regler 3|Sprecherkabine|6 W|nein
`), Truth: func(t *typed.Truth) {
		t.Is("22-107", "Eishalle Wernsbach", "three sheets that join by line and control; the type names the loudspeaker's power, another column the tap")
		t.Speakers("tap_v=100; line_v=100; sheet=Lautsprecher", `
rows|room|count|model|tap_w|amplifier|channel|control
5|Eisfläche West|6|Horn 30 W|15|Verst. 1|1|
6|Eisfläche Ost|6|Horn 30 W|15|Verst. 1|1|
7|Tribüne|8|Säule 20 W|10|Verst. 2|1|
8|Schlittschuhverleih|4|Einbau 6 W|3|Verst. 3|1|Regler 1
9|Umkleiden 1-4|8|Einbau 6 W|1.5|Verst. 3|1|Regler 2
10|Sanitätsraum|1|Einbau 6 W|3|Verst. 3|1|
11|Sprecherkabine|1|Wand 6 W|6|Verst. 3|2|Regler 3
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nVerst. 1|1|240|180\nVerst. 2|1|120|80\nVerst. 3|1|60|27\nVerst. 3|2|60|6")
		t.Amplifiers("", "amplifier|load_w\nVerst. 1|180\nVerst. 2|80\nVerst. 3|33")
		t.Controls("", "control|rated_w|load_w\nRegler 1|12|12\nRegler 2|12|12\nRegler 3|6|6")
	}},
}
