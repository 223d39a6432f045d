package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// french are the schedules of a French-speaking foundation.
func french() []typed.Case {
	return []typed.Case{
		{File: "fr/Serres releve HP.csv", Kind: "schedule", Bytes: serres, Truth: serresTruth},
		{File: "fr/Planetarium comptage par prise.ods", Kind: "schedule", Book: comptage, Saved: "ods", Truth: comptageTruth},
		{File: "fr/Patinoire en travers.fods", Kind: "schedule", Book: patinoire, Saved: "fods", Truth: patinoireTruth},
		{File: "fr/Embarcadere.xls", Kind: "schedule", Book: embarcadere, Saved: "html", Truth: embarcadereTruth},
	}
}

// A survey in ISO-8859-1: ½, idem, raised 2, decimal commas.
func serres() []byte {
	return typed.Latin1(typed.DOS(`
Fondation Orvelle - serres, relevé des HP;;;;;;;Affaire FO-310
Ligne 100 V;;;;;;;
;;;;;;;
N°;Endroit;Fabrication;Nb HP;Chacun à;Piloté par;Fil;Distance
1;Serre chaude;Roseau 20;6;10 W;A-1;2×1,5²;45 m
2;Serre froide;idem;4;7,5 W;A-1;2×1,5²;62 m
3;Couloir;Mousse 6;8;½ W;A-2;2×0,75²;30 ml
4;Bureau;idem;1;¾ W;idem;idem;12 ml
5;Billetterie;idem;2;1,5 W;idem;idem;18 ml
6;Parvis;Cor 15;3;15 W;A-3 (à venir);2×2,5²;80 m
7;Bassin;Roseau 20;2;déposés;A-1;;
;;;;;;;
A : 3 voies de 120 W;;;;;;;
Att. du couloir : 6 W, tous les HP du n° 3;;;;;;;
`))
}

func serresTruth(t *typed.Truth) {
	t.Is("FO-310", "serres", "ISO-8859-1 with ½ and ¾; 'idem' repeats the cell above; 2×1,5² is two cores of 1.5 mm²; ml is metres; a way to come, removed units; a control in a sentence below")
	t.Speakers("tap_v=100; line_v=100; amplifier=A", `
rows|tag|zone|model|count|tap_w|channel|control|status|note
5|1|Serre chaude|Roseau 20|6|10|1||installed|
6|2|Serre froide|Roseau 20|4|7.5|1||installed|
7|3|Couloir|Mousse 6|8|0.5|2|Att. du couloir|installed|behind the unnamed control of the corridor
8|4|Bureau|Mousse 6|1|0.75|2||installed|
9|5|Billetterie|Mousse 6|2|1.5|2||installed|
10|6|Parvis|Cor 15|3|15|3||future|
11|7|Bassin|Roseau 20|2||1||removed|
`)
	t.Channels("line_v=100; rated_w=120; amplifier=A", "channel|load_w|note\n1|90|60+30\n2|7.75|4+0.75+3\n3|0|to come")
	t.Amplifiers("", "amplifier|rated_w|load_w\nA|360|97.75")
	t.Controls("", "control|zone|rated_w|load_w\nAtt. du couloir|Couloir|6|4")
	t.Lines("material=copper; note=metal not stated", `
zone|length_m|area_mm2
Serre chaude|45|1.5
Serre froide|62|1.5
Couloir|30|0.75
Bureau|12|0.75
Billetterie|18|0.75
Parvis|80|2.5
`)
	t.Left("", "13|amplifier|\n14|control|")
}

// Counts under a column for each tap; sections by amplifier way.
func comptage() *excelize.File {
	p := typed.NewBook("Comptage")
	p.Put("A1", `
Planétarium d'Orvelle - comptage des HP par prise du transfo|||||||FO-322

Endroit|Nombre de HP réglés à||||HP|Charge
|1,5 W|3 W|6 W|10 W||
AMPLI A, VOIE 1 - 120 W, 100 V
Coupole bas|||6|2|8|56 W
Coupole haut|||4||4|24 W
AMPLI A, VOIE 2 - 120 W, 100 V
Hall|2|8|||10|27 W
Boutique|4||||4|6 W
Réserve|2||||2|3 W
AMPLI B, VOIE 1 - 60 W, 100 V
Terrasse||||7|7|70 W
Ensemble|8|8|10|9|35|186 W
HP en caisse (secours)||2|||2
`)
	p.Merge("B3:E3", "A3:A4", "F3:F4", "G3:G4", "A5:G5", "A8:G8", "A12:G12")
	return p.File
}

func comptageTruth(t *typed.Truth) {
	t.Is("FO-322", "Planétarium d'Orvelle", "counts under a column for each tap; sections by amplifier way; 'Réserve' is a store room, not a spare; spares are 'en caisse (secours)' under the sum")
	t.Speakers("sheet=Comptage; tap_v=100; line_v=100", `
rows|zone|count|tap_w|amplifier|channel|status|note
6|Coupole bas|6|6|A|1|installed|
6|Coupole bas|2|10|A|1|installed|
7|Coupole haut|4|6|A|1|installed|
9|Hall|2|1.5|A|2|installed|
9|Hall|8|3|A|2|installed|
10|Boutique|4|1.5|A|2|installed|
11|Réserve|2|1.5|A|2|installed|a room: it counts
13|Terrasse|7|10|B|1|installed|
15||2|3|||spare|boxed
`)
	t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w|note
A|1|120|80|
A|2|120|36|
B|1|60|70|over its rating
`)
	t.Amplifiers("", "amplifier|load_w\nA|116\nB|70")
	t.Left("Comptage", "5|title|\n8|title|\n12|title|\n14|total|35 pieces, 186 W: right")
}

// Zones across, properties down, in flat OpenDocument.
func patinoire() *excelize.File {
	p := typed.NewBook("Patinoire")
	p.Put("B2", `
Patinoire du lac d'Orvelle||||FO-307
Sono 100 V, un ampli 4 x 60 W (A1)

|Piste|Gradins|Vestiaires|Affûtage|Total
Enceintes|6|8|10|3|27
Genre|Cor 15|Roseau 20|Mousse 6|Mousse 6
Réglées à (W)|7,5|5|1,5|3
Soit (W)|45|40|15|9|109
Branchées sur|A1 s1|A1 s2|A1 s3|A1 s3
Molette|-|-|M1 : 20 W|M2 : 6 W
Remarque|||deux en panne, à compter|local loué, à nous
`)
	return p.File
}

func patinoireTruth(t *typed.Truth) {
	t.Is("FO-307", "Patinoire du lac d'Orvelle", "transposed from B5 in flat OpenDocument; decimal commas; controls with ratings in one cell; remarks that change nothing; a sum column")
	t.Speakers("sheet=Patinoire; tap_v=100; line_v=100; amplifier=A1", `
rows|zone|model|count|tap_w|channel|control|note
C|Piste|Cor 15|6|7.5|1||
D|Gradins|Roseau 20|8|5|2||
E|Vestiaires|Mousse 6|10|1.5|3|M1|two are out of order but counted
F|Affûtage|Mousse 6|3|3|3|M2|
`)
	t.Channels("line_v=100; rated_w=60; amplifier=A1", "channel|load_w|note\n1|45|\n2|40|\n3|24|15+9\n4|0|nothing on it")
	t.Amplifiers("", "amplifier|rated_w|load_w\nA1|240|109")
	t.Controls("", "control|zone|rated_w|load_w|note\nM1|Vestiaires|20|15|\nM2|Affûtage|6|9|over its rating")
	t.Left("Patinoire", "G|total|27 pieces, 109 W: right")
}

// Controls as title rows, saved as a page by LibreOffice under a name that says workbook.
func embarcadere() *excelize.File {
	p := typed.NewBook("Liste")
	p.Put("A1", `
Embarcadère, liste des points sonores|||FO-341
70 V

Point|Lieu|Cran|Voie
P1|Ponton nord|5 W|Y1
P2|Ponton nord|5 W|Y1
P3|Ponton sud|5 W|Y1
derrière atténuateur T1, 12 W :
P4|Local rames|2,5 W|Y1
P5|Local rames|2,5 W|Y1
P6|Local voiles|2,5 W|Y1
P7|Local voiles|2,5 W|Y1
sans atténuateur :
P8|Guichet|1,25 W|Y2
P9|Guichet|1,25 W|Y2
P10|Quai|10 W|Y2

Y = ampli du local technique, deux voies de 40 W
`)
	return p.File
}

func embarcadereTruth(t *typed.Truth) {
	t.Is("FO-341", "Embarcadère", "titles switch a control on and off for the rows that follow; tap under 'Cran', no unit in the header; Y1 is way 1 of amplifier Y; an HTML table of LibreOffice named .xls")
	t.Speakers("tap_v=70.7; line_v=70.7; amplifier=Y", `
rows|tag|room|tap_w|channel|control
5..6|P1..P2|Ponton nord|5|1|
7|P3|Ponton sud|5|1|
9..10|P4..P5|Local rames|2.5|1|T1
11..12|P6..P7|Local voiles|2.5|1|T1
14..15|P8..P9|Guichet|1.25|2|
16|P10|Quai|10|2|
`)
	t.Channels("line_v=70.7; rated_w=40; amplifier=Y", "channel|load_w\n1|25\n2|12.5")
	t.Amplifiers("", "amplifier|rated_w|load_w\nY|80|37.5")
	t.Controls("", "control|rated_w|load_w\nT1|12|10")
	t.Left("", "8|control|title\n13|title|ends the control\n18|amplifier|")
}
