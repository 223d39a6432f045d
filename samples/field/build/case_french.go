package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A French project office: cartouche, two-row headers, carnet de câbles.
var french = []typed.Case{
	{File: "Affaire 2209/2209 Jardin de Valbrune - carnet sono.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Haut-parleurs")
		p.Put("A1", `
Affaire n°|2209||Indice|B
Site|Jardin botanique de Valbrune||Tension|100 V

Repère|Local|Zone|Haut-parleur||Réglage (W)|Atténuateur
|||Type|Pose||
HP01|Grande serre|Z01|Projecteur|Saillie|10|
HP02|Grande serre|Z01|Projecteur|Saillie|10|
HP03|Grande serre|Z01|Projecteur|Saillie|10|
HP04|Grande serre|Z01|Projecteur|Saillie|10|
HP05|Serre froide|Z01|Projecteur|Saillie|5|
HP06|Serre froide|Z01|Projecteur|Saillie|5|
HP07|Accueil|Z02|Plafonnier|Encastré|3|AT-01
HP08|Accueil|Z02|Plafonnier|Encastré|3|AT-01
HP09|Accueil|Z02|Plafonnier|Encastré|3|AT-01
HP10|Librairie|Z02|Plafonnier|Encastré|3|AT-02
HP11|Librairie|Z02|Plafonnier|Encastré|3|AT-02
HP12|Herbier|Z02|Plafonnier|Encastré|1,5|AT-03
HP13|Herbier|Z02|Plafonnier|Encastré|1,5|AT-03
HP14|Salle d'étude|Z02|Plafonnier|Encastré|6|AT-04
HP15|Salle d'étude|Z02|Plafonnier|Encastré|6|AT-04
HP16|Allée des tilleuls|Z03|Borne|Au sol|20|
HP17|Allée des tilleuls|Z03|Borne|Au sol|20|
HP18|Allée des tilleuls|Z03|Borne|Au sol|20|
HP19|Roseraie|Z03|Borne|Au sol|20|
HP20|Verger|Z03|Borne|Au sol|20|
HP21|Quai de livraison|Z04|Pavillon|Saillie|15|
HP22|Cour de service|Z04|Pavillon|Saillie|15|
HP23|Chaufferie|Z04|Pavillon|Saillie|7,5|
`)
		p.Merge("D4:E4", "A4:A5", "B4:B5", "C4:C5", "F4:F5", "G4:G5")
		a := p.Sheet("Amplificateurs")
		a.Put("A1", `
Amplificateur|Sortie|Zone|Puissance nominale
AMP1|S1|Z01|120 W
AMP1|S2|Z02|120 W
AMP2|S1|Z03|120 W
AMP2|S2|Z04|60 W
`)
		b := p.Sheet("Atténuateurs")
		b.Put("A1", `
Repère|Local|Puissance admissible (W)
AT-01|Accueil|12
AT-02|Librairie|6
AT-03|Herbier|6
AT-04|Salle d'étude|10
`)
		c := p.Sheet("Carnet de câbles")
		c.Put("A1", `
Repère câble|Tenant|Aboutissant|Type|Section|Longueur (m)
W01|AMP1 S1|Z01|Cuivre souple|2x1,5 mm²|72
W02|AMP1 S2|Z02|Cuivre souple|2x1,5 mm²|58
W03|AMP2 S1|Z03|Cuivre rigide|2x4 mm²|195
W04|AMP2 S2|Z04|Cuivre souple|2x1,5 mm²|104
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2209", "Jardin botanique de Valbrune", "header of two rows with merged cells; four sheets")
		t.Revision("B", false)
		t.Speakers("sheet=Haut-parleurs; tap_v=100; line_v=100; zone=Z01; amplifier=AMP1; channel=S1; model=Projecteur", `rows|tag|room|tap_w
6..9|HP01..|Grande serre|10
10..11|HP05..|Serre froide|5`)
		t.Speakers("sheet=Haut-parleurs; tap_v=100; line_v=100; zone=Z02; amplifier=AMP1; channel=S2; model=Plafonnier", `rows|tag|room|tap_w|control
12..14|HP07..|Accueil|3|AT-01
15..16|HP10..|Librairie|3|AT-02
17..18|HP12..|Herbier|1.5|AT-03
19..20|HP14..|Salle d'étude|6|AT-04`)
		t.Speakers("sheet=Haut-parleurs; tap_v=100; line_v=100; zone=Z03; amplifier=AMP2; channel=S1; model=Borne", `rows|tag|room|tap_w
21..23|HP16..|Allée des tilleuls|20
24|HP19|Roseraie|20
25|HP20|Verger|20`)
		t.Speakers("sheet=Haut-parleurs; tap_v=100; line_v=100; zone=Z04; amplifier=AMP2; channel=S2; model=Pavillon", `rows|tag|room|tap_w
26|HP21|Quai de livraison|15
27|HP22|Cour de service|15
28|HP23|Chaufferie|7.5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|S1|120|50
AMP1|S2|120|30
AMP2|S1|120|100
AMP2|S2|60|37.5`)
		t.Amplifiers("", `amplifier|load_w
AMP1|80
AMP2|137.5`)
		t.Controls("", `control|rated_w|load_w
AT-01|12|9
AT-02|6|6
AT-03|6|3
AT-04|10|12`)
		t.Lines("material=copper", `line|zone|from|to|length_m|area_mm2
W01|Z01|AMP1 S1|Z01|72|1.5
W02|Z02|AMP1 S2|Z02|58|1.5
W03|Z03|AMP2 S1|Z03|195|4
W04|Z04|AMP2 S2|Z04|104|1.5`)
	}},

	{File: "Affaire 2231/2231_planetarium_HP.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Affaire;2231 - Planétarium de Hautecombe-sur-Orme;;;;;;;;
Ligne;100 V;;;;;;;;
Zone;Local;Type;Quantité;Puissance réglée (W);Puissance totale (W);Ampli;Sortie;Puissance sortie (W);Observation
1;Hall;Plafonnier;8;3;24;A1;1;60;
1;Vestiaire;Plafonnier;2;3;6;A1;1;60;
2;Salle ronde;Colonne;6;10;60;A1;2;120;
2;Régie;Plafonnier;1;1,5;1,5;A1;2;120;
3;Bureaux;Plafonnier;10;1,5;15;A2;1;60;
3;Bibliothèque;Plafonnier;4;3;12;A2;1;60;
4;Coursive;Projecteur;5;5;25;A2;2;60;
4;Toiture;Pavillon;2;15;30;A2;2;60;coffret étanche
5;Parvis;Projecteur;4;10;40;A2;3;60;
5;Archives;Plafonnier;3;1,5;4,5;A2;3;60;
6;Atelier;Plafonnier;2;6;12;A2;4;60;
;;Total;47;;230;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("2231", "Planétarium de Hautecombe-sur-Orme", "one row a group, western Windows text")
		t.Speakers("tap_v=100; line_v=100", `rows|zone|room|model|count|tap_w|amplifier|channel
4|1|Hall|Plafonnier|8|3|A1|1
5|1|Vestiaire|Plafonnier|2|3|A1|1
6|2|Salle ronde|Colonne|6|10|A1|2
7|2|Régie|Plafonnier|1|1.5|A1|2
8|3|Bureaux|Plafonnier|10|1.5|A2|1
9|3|Bibliothèque|Plafonnier|4|3|A2|1
10|4|Coursive|Projecteur|5|5|A2|2
11|4|Toiture|Pavillon|2|15|A2|2
12|5|Parvis|Projecteur|4|10|A2|3
13|5|Archives|Plafonnier|3|1.5|A2|3
14|6|Atelier|Plafonnier|2|6|A2|4`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A1|1|60|30
A1|2|120|61.5
A2|1|60|27
A2|2|60|55
A2|3|60|44.5
A2|4|60|12`)
		t.Amplifiers("", `amplifier|load_w
A1|91.5
A2|138.5`)
		t.Left("", `15|total|sum of all groups`)
	}},
}
