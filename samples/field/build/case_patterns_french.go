package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// patternsFrench are a maintenance firm, a consultant who likes forms and a project engineer.
var patternsFrench = []typed.Case{
	{File: "patterns/maintenance/3307 piscine.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Relevé")
		p.Put("A1", `
Piscine des Trois Étangs, sonorisation 100 V, dossier 3307
||
AMPLI A, 2 sorties de 120 W
Sortie|Local|HP|Prise W|Total sortie|Atténuateur
1|Grand bassin|6|10|90 W|
|Pataugeoire|4|6||
|Plongeoir|1|6||
2|Vestiaires hommes|4|3|33 W|AT1 (30 W)
|Vestiaires femmes|4|3||AT1
|Couloir|3|3||
||
AMPLI B, 1 sortie de 60 W
Local|HP|Prise W|Atténuateur|Remarque
Accueil|2|3|AT2 (12 W)|
Bureau|1|1.5||prévu, pas encore posé
Infirmerie|1|1.5|AT3 (6 W)|
Parvis|2|15||
`)
		p.Bold("A1", "A3", "A4:F4", "A12", "A13:E13")
		p.Merge("A5:A7", "A8:A10")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("3307", "Piscine des Trois Étangs", "a table an amplifier, the second with other columns; the sum of an output stands in its first row; one loudspeaker not yet fitted")
		t.Speakers("sheet=Relevé; tap_v=100; line_v=100; amplifier=A; channel=1", `rows|room|count|tap_w
5|Grand bassin|6|10
6|Pataugeoire|4|6
7|Plongeoir|1|6`)
		t.Speakers("sheet=Relevé; tap_v=100; line_v=100; amplifier=A; channel=2", `rows|room|count|tap_w|control
8|Vestiaires hommes|4|3|AT1
9|Vestiaires femmes|4|3|AT1
10|Couloir|3|3|`)
		t.Speakers("sheet=Relevé; tap_v=100; line_v=100; amplifier=B", `rows|room|count|tap_w|control
14|Accueil|2|3|AT2
16|Infirmerie|1|1.5|AT3
17|Parvis|2|15|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A|1|120|90
A|2|120|33
B||60|37.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A||123
B|60|37.5`)
		t.Controls("", `control|rated_w|load_w
AT1|30|24
AT2|12|6
AT3|6|1.5`)
		t.Left("Relevé", `15|future|planned, not yet fitted`)
	}},

	{File: "patterns/fiches/planétarium fiches de zone.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Fiche 1")
		p.Put("A1", `
Zone|Hall d'accueil
Haut-parleurs|6 plafonniers, prise 3 W
Amplificateur|AMP 1, sortie 1
Puissance de la sortie|120 W
Atténuateur|ATT 1, 36 W, à la caisse
Câble|2 x 1,5 mm², 40 m
Tension de ligne|100 V
`)
		q := p.Sheet("Fiche 2")
		q.Put("A1", `
Zone|Coupole
Haut-parleurs|8 enceintes murales, prise 10 W
Amplificateur|AMP 1, sortie 2
Puissance de la sortie|120 W
Atténuateur|aucun
Câble|2 x 2,5 mm², 75 m
Tension de ligne|100 V
`)
		r := p.Sheet("Fiche 3")
		r.Put("A1", `
Zone|Salle d'exposition
Haut-parleurs|4 plafonniers, prise 3 W
Haut-parleurs|2 enceintes murales, prise 6 W
Amplificateur|AMP 2, sortie unique
Puissance de la sortie|60 W
Atténuateur|ATT 2, 36 W, bureau du médiateur
Câble|2 x 1,5 mm², 55 m
Tension de ligne|100 V
`)
		s := p.Sheet("Fiche 4")
		s.Put("A1", `
Zone|Terrasse
Haut-parleurs|2 pavillons, prise 15 W
Amplificateur|AMP 1, sortie 1
Puissance de la sortie|120 W
Atténuateur|aucun
Câble|2 x 2,5 mm², 110 m
Tension de ligne|100 V
`)
		p.Bold("A1:A7")
		q.Bold("A1:A7")
		r.Bold("A1:A8")
		s.Bold("A1:A7")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "a form a zone on its own sheet, field and value; count, kind and tap in one cell; two zones share an output")
		t.Speakers("sheet=Fiche 1; tap_v=100; line_v=100; amplifier=AMP 1; channel=1; control=ATT 1", `rows|zone|count|tap_w
2|Hall d'accueil|6|3`)
		t.Speakers("sheet=Fiche 2; tap_v=100; line_v=100; amplifier=AMP 1; channel=2", `rows|zone|count|tap_w
2|Coupole|8|10`)
		t.Speakers("sheet=Fiche 3; tap_v=100; line_v=100; amplifier=AMP 2; control=ATT 2", `rows|zone|count|tap_w
2|Salle d'exposition|4|3
3|Salle d'exposition|2|6`)
		t.Speakers("sheet=Fiche 4; tap_v=100; line_v=100; amplifier=AMP 1; channel=1", `rows|zone|count|tap_w
2|Terrasse|2|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP 1|1|120|48
AMP 1|2|120|80
AMP 2||60|24`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP 1||128
AMP 2|60|24`)
		t.Controls("", `control|zone|rated_w|load_w
ATT 1|Hall d'accueil|36|18
ATT 2|Salle d'exposition|36|24`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Hall d'accueil|40|1.5
Coupole|75|2.5
Salle d'exposition|55|1.5
Terrasse|110|2.5`)
	}},

	{File: "patterns/gare/DOE sonorisation.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("HP")
		p.Put("A1", `
Gare de Vaux-les-Aulnes, dossier des ouvrages exécutés
Zone|Emplacement|Haut-parleurs||||Atténuateur
||Type|Nombre|Puissance||Repère
||||par HP (W)|totale (W)|
Quai 1|Abri nord|pavillon|2|15|30|
Quai 1|Abri sud|pavillon|2|15|30|
Quai 1|Marquise|projecteur|6|6|36|
Quai 2|Abri|pavillon|2|15|30|
Quai 2|Escalier|projecteur|2|6|12|
Hall|Guichets|plafonnier|2|1.5|3|AT-1
Hall|Salle d'attente|plafonnier|4|3|12|AT-2
Hall|Passage|plafonnier|6|3|18|
Souterrain|Couloir|colonne|4|10|40|
Total|||30||211|
`)
		p.Merge("A2:A4", "B2:B4", "C2:F2", "C3:C4", "D3:D4", "E3:F3", "G3:G4")
		p.Bold("A1", "A2:G4", "A14:G14")
		q := p.Sheet("Baie")
		q.Put("A1", `
Repère|Appareil|Puissance|Alimente
AMP-1 S1|amplificateur, sortie 1|120 W|Quai 1
AMP-1 S2|amplificateur, sortie 2|120 W|Quai 2 et Souterrain
AMP-2|amplificateur, une sortie|60 W|Hall
AT-1|atténuateur mural|6 W|Guichets
AT-2|atténuateur mural|24 W|Salle d'attente
||
Toutes les lignes en 100 V
`)
		q.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Gare de Vaux-les-Aulnes", "three header rows; outputs of the amplifiers only on the second sheet, by what each one feeds")
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=AMP-1; channel=S1; zone=Quai 1", `rows|room|count|tap_w
5|Abri nord|2|15
6|Abri sud|2|15
7|Marquise|6|6`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=AMP-1; channel=S2", `rows|zone|room|count|tap_w
8|Quai 2|Abri|2|15
9|Quai 2|Escalier|2|6
13|Souterrain|Couloir|4|10`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=AMP-2; zone=Hall", `rows|room|count|tap_w|control
10|Guichets|2|1.5|AT-1
11|Salle d'attente|4|3|AT-2
12|Passage|6|3|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP-1|S1|120|96
AMP-1|S2|120|82
AMP-2||60|33`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP-1||178
AMP-2|60|33`)
		t.Controls("", `control|rated_w|load_w
AT-1|6|3
AT-2|24|12`)
		t.Left("HP", `14|total|sums`)
	}},
}
