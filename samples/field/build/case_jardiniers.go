package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// jardiniers are a design office, a gardener who keeps the list himself and an installer's papers as built, in French.
var jardiniers = []typed.Case{
	{File: "etudes/Patinoire des Aulnes.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Répartition")
		p.Put("A1", `
Patinoire des Aulnes||||Dossier 2031
Sonorisation 100 V, répartition des haut-parleurs par ligne
||
Local|Type|Ligne 1|Ligne 2|Ligne 3
Piste côté tribune|pavillon|4 x 15 W||
Piste côté rue|pavillon|4 x 15 W||
Banc des pénalités|enceinte|1 x 10 W||
Tribune|enceinte||8 x 6 W|
Loge presse|plafond||2 x 3 W|
Hall|plafond|||6 x 3 W
Caisse|plafond|||1 x 1,5 W
Location de patins|plafond|||4 x 3 W
Vestiaires|plafond|||8 x 1,5 W
Total||130 W|54 W|43,5 W
Ampli||240 W|120 W|60 W
Atténuateur||sans|AT1, 80 W|sans
`)
		p.Bold("A1", "A4:E4", "A14:E14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2031", "Patinoire des Aulnes", "matrix of rooms by lines with count and watts in a cell; amplifier and attenuator of each line in rows below")
		t.Speakers("sheet=Répartition; tap_v=100; line_v=100; channel=1", `rows|room|count|tap_w
5|Piste côté tribune|4|15
6|Piste côté rue|4|15
7|Banc des pénalités|1|10`)
		t.Speakers("sheet=Répartition; tap_v=100; line_v=100; channel=2; control=AT1", `rows|room|count|tap_w
8|Tribune|8|6
9|Loge presse|2|3`)
		t.Speakers("sheet=Répartition; tap_v=100; line_v=100; channel=3", `rows|room|count|tap_w
10|Hall|6|3
11|Caisse|1|1.5
12|Location de patins|4|3
13|Vestiaires|8|1.5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
|1|240|130
|2|120|54
|3|60|43.5`)
		t.Controls("", `control|rated_w|load_w
AT1|80|54`)
		t.Left("Répartition", `14|total|sums of the lines
15|amplifier|rating of each line
16|control|attenuator of each line`)
	}},

	{File: "jardins/hp_serres.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Latin1(typed.DOS(`
Serres de Montbrelle;haut-parleurs au 1er mars;;;;
Zone;Local;Type;Nb;W pièce;Obs.
1;Serre chaude;enceinte;4;5;
1;Serre froide;enceinte;4;5;
2;Accueil;plafond;3;3;sur AT1 (20 W)
2;Librairie;plafond;2;3;sur AT1
2;Bureau;plafond;1;1,5;sur AT2 (5 W)
3;Pépinière;pavillon;2;10;
3;Quai de livraison;pavillon;1;10;
4;Amphithéâtre;mural;4;6;sur AT3 (36 W)
4;Amphithéâtre, sas;plafond;1;3;
;;;;;
Zones 1 et 3 : ampli A1, 120 W;;;;;
Zones 2 et 4 : ampli A2, 60 W;;;;;
Lignes 100 V;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Serres de Montbrelle", "amplifiers by zone in sentences below; a control's rating is said only at its first mention")
		t.Speakers("tap_v=100; line_v=100; zone=1; amplifier=A1", `rows|room|count|tap_w
3|Serre chaude|4|5
4|Serre froide|4|5`)
		t.Speakers("tap_v=100; line_v=100; zone=2; amplifier=A2", `rows|room|count|tap_w|control
5|Accueil|3|3|AT1
6|Librairie|2|3|AT1
7|Bureau|1|1.5|AT2`)
		t.Speakers("tap_v=100; line_v=100; zone=3; amplifier=A1", `rows|room|count|tap_w
8|Pépinière|2|10
9|Quai de livraison|1|10`)
		t.Speakers("tap_v=100; line_v=100; zone=4; amplifier=A2", `rows|room|count|tap_w|control
10|Amphithéâtre|4|6|AT3
11|Amphithéâtre, sas|1|3|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|120|70
A2|60|43.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|120|70
A2|60|43.5`)
		t.Controls("", `control|zone|rated_w|load_w
AT1|2|20|15
AT2|2|5|1.5
AT3|4|36|24`)
	}},

	{File: "etudes/DOE Musee du Halage.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("HP")
		p.Put("A1", `
Musée du Halage|||||DOE indice B
Affaire M-0912, ligne 100 V
||
Zone|Local|Repère|Type|Qté|Réglage W
Z1 Accueil|Hall|HP1|plafond|4|3
|Billetterie|HP2|plafond|1|3
|Vestiaire|HP3|plafond|2|1.5
Z2 Expositions|Salle des cordes|HP4|mural|6|6
|Salle des bateaux|HP5|mural|4|6
|Salle vidéo (supprimée)|HP6|mural|2|6
|Mezzanine|HP7|plafond|3|3
Z3 Extérieur|Cour|HP8|pavillon|2|15
|Quai|HP9|pavillon|2|15
`)
		p.Merge("A5:A7", "A8:A11", "A12:A13")
		p.Hide(10)
		p.Bold("A1", "A4:F4")
		q := p.Sheet("Lignes")
		q.Put("A1", `
Zone|Ampli|Sortie|Puissance W|Atténuateur|Att. W|Câble mm²|Longueur m
Z1 Accueil|A1|1|60|AT1|30|2 x 1,5|35
Z2 Expositions|A1|2|120|AT2|100|2 x 2,5|80
Z3 Extérieur|A2|1|120|||2 x 2,5|115
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("M-0912", "Musée du Halage", "zones merged down; a hidden row of a room that is gone; outputs, attenuators and lengths by zone on a second sheet")
		t.Revision("B", false)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; zone=Z1 Accueil; amplifier=A1; channel=1; control=AT1", `rows|tag|room|count|tap_w
5|HP1|Hall|4|3
6|HP2|Billetterie|1|3
7|HP3|Vestiaire|2|1.5`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; zone=Z2 Expositions; amplifier=A1; channel=2; control=AT2", `rows|tag|room|count|tap_w
8|HP4|Salle des cordes|6|6
9|HP5|Salle des bateaux|4|6
11|HP7|Mezzanine|3|3`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; zone=Z3 Extérieur; amplifier=A2; channel=1", `rows|tag|room|count|tap_w
12|HP8|Cour|2|15
13|HP9|Quai|2|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A1|1|60|18
A1|2|120|69
A2|1|120|60`)
		t.Amplifiers("", `amplifier|load_w
A1|87
A2|60`)
		t.Controls("", `control|zone|rated_w|load_w
AT1|Z1 Accueil|30|18
AT2|Z2 Expositions|100|69`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Z1 Accueil|35|1.5
Z2 Expositions|80|2.5
Z3 Extérieur|115|2.5`)
		t.Left("HP", `10|removed|hidden, the room is gone`)
	}},
}
