package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// tonguesFrench are a Belgian municipal works department, a Quebec electrician and the technical services of a French village.
var tonguesFrench = []typed.Case{
	{File: "tongues/communale/sono maison communale.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Rez")
		p.Put("A1", `
Administration communale de Bellerive-sur-Honte - sono de la maison communale|||||BC 2022/114
rez-de-chaussée

Local|HP|Réglé sur|Ligne|Potar|Rem.
Hall d'entrée|4 pces|6 W|1||
Population / État civil|3 pces|3 W|1|P1|
Salle des mariages|6 pces|6 W|1|P2|un HP grésille
Bureau du bourgmestre|1 pce|1,5 W|1|P3|
Toilettes|2 pces|1,5 W|1||
Cour, côté Honte|2 trompes|15 W|3||
`)
		p.Bold("A1", "A4:F4")
		q := p.Sheet("Étage")
		q.Put("A1", `
premier étage

Local|HP|Réglé sur|Ligne|Potar|Rem.
Salle du conseil|8 pces|6 W|2|P4|
Échevinat|2 pces|3 W|2||
Service travaux|2 pces|3 W|2||
Couloir|5 pces|1,5 W|2||
Ancien guichet cadastre|2 pces|3 W|2||démontés, sont à la cave
`)
		q.Bold("A3:F3")
		r := p.Sheet("Local technique")
		r.Put("A1", `
Ligne|Ampli|Sortie|Puissance|Câble|Long.
1|Ampli 1|A|120 W|SVV 2 x 1,5 mm²|65 m
2|Ampli 1|B|120 W|SVV 2 x 1,5 mm²|80 m
3|Ampli 2|A|60 W|XVB 2 x 2,5 mm²|70 m

Tout est en 100 V. P1 fait 15 W, P2 et P4 70 W chacun (modèle double), P3 5 W.
`)
		r.Bold("A1:F1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2022/114", "Administration communale de Bellerive-sur-Honte", "a sheet a floor, lines joined from a third; counts in pièces; ratings of the controls in a sentence; a pair taken down")
		t.Speakers("sheet=Rez; tap_v=100; line_v=100; amplifier=Ampli 1; channel=A", `rows|room|count|tap_w|control
5|Hall d'entrée|4|6|
6|Population / État civil|3|3|P1
7|Salle des mariages|6|6|P2
8|Bureau du bourgmestre|1|1.5|P3
9|Toilettes|2|1.5|`)
		t.Speakers("sheet=Rez; tap_v=100; line_v=100; amplifier=Ampli 2; channel=A", `rows|room|count|tap_w
10|Cour, côté Honte|2|15`)
		t.Speakers("sheet=Étage; tap_v=100; line_v=100; amplifier=Ampli 1; channel=B", `rows|room|count|tap_w|control
4|Salle du conseil|8|6|P4
5|Échevinat|2|3|
6|Service travaux|2|3|
7|Couloir|5|1.5|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
Ampli 1|A|120|73.5
Ampli 1|B|120|67.5
Ampli 2|A|60|30`)
		t.Amplifiers("", `amplifier|load_w
Ampli 1|141
Ampli 2|30`)
		t.Controls("", `control|rated_w|load_w
P1|15|9
P2|70|36
P3|5|1.5
P4|70|48`)
		t.Lines("note=one length a line", `line|length_m|area_mm2
1|65|1.5
2|80|1.5
3|70|2.5`)
		t.Left("Étage", `8|removed|taken down, in the cellar`)
	}},

	{File: "tongues/arena/19-0447 relevé 70V.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Relevé")
		p.Put("A1", `
Ville de Sainte-Aurélie-du-Lac, aréna||||||Proj. 19-0447
Relevé sonorisation 70 V, fait le 2019-10-03 par l'équipe de soir

Local|H.-p.|Qté|Prise|CV|Sortie|Statut
Glace, bandes est|cornet|4|15 W||A1-1|exist.
Glace, bandes ouest|cornet|4|15 W||A1-1|exist.
Estrades|cornet|6|7,5 W||A1-2|neuf
Chambre des joueurs 1|plafond|2|2 W|CV-1|A2-1|exist.
Chambre des joueurs 2|plafond|2|2 W|CV-2|A2-1|exist.
Chambre des arbitres|plafond|1|1 W||A2-1|exist.
Billetterie|plafond|1|2 W|CV-3|A2-1|neuf
Hall d'entrée|plafond|5|2 W|CV-4|A2-2|neuf
Salle communautaire|colonne|4|5 W|CV-5|A2-2|exist.
Garage de la surfaceuse|cornet|1|5 W||A2-2|enlevé (givre)
Mezzanine|plafond|6|2 W||A2-2|à venir, phase 2

Filage||||
De|À|Calibre|Long. (pi)
A1-1|Glace, bandes est|2C #14|275
A1-2|Estrades|2C #14|190
A2-1|Chambre des joueurs 1|2C #18|120
A2-2|Hall d'entrée|2C #16|85

Ampli A1 : 2 x 150 W, ampli A2 : 2 x 75 W
Contrôles de volume : tous des 35 W sauf CV-5, 50 W
`)
		p.Bold("A1", "A4:G4", "A17", "A18:D18")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("19-0447", "Ville de Sainte-Aurélie-du-Lac, aréna", "Quebec words; statuses existing, new, taken away, to come; controls rated 'all but'; cable in feet with a gauge number in a second table")
		t.Speakers("sheet=Relevé; tap_v=70.7; line_v=70.7; amplifier=A1; channel=1", `rows|room|count|tap_w
5|Glace, bandes est|4|15
6|Glace, bandes ouest|4|15`)
		t.Speakers("sheet=Relevé; tap_v=70.7; line_v=70.7; amplifier=A1; channel=2", `rows|room|count|tap_w
7|Estrades|6|7.5`)
		t.Speakers("sheet=Relevé; tap_v=70.7; line_v=70.7; amplifier=A2; channel=1", `rows|room|count|tap_w|control
8|Chambre des joueurs 1|2|2|CV-1
9|Chambre des joueurs 2|2|2|CV-2
10|Chambre des arbitres|1|1|
11|Billetterie|1|2|CV-3`)
		t.Speakers("sheet=Relevé; tap_v=70.7; line_v=70.7; amplifier=A2; channel=2", `rows|room|count|tap_w|control
12|Hall d'entrée|5|2|CV-4
13|Salle communautaire|4|5|CV-5`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
A1|1|150|120
A1|2|150|45
A2|1|75|11
A2|2|75|30`)
		t.Amplifiers("", `amplifier|load_w
A1|165
A2|41`)
		t.Controls("", `control|rated_w|load_w
CV-1|35|4
CV-2|35|4
CV-3|35|2
CV-4|35|10
CV-5|50|20`)
		t.Lines("", `from|to|length_m|area_mm2
A1-1|Glace, bandes est|83.82|2.08
A1-2|Estrades|57.912|2.08
A2-1|Chambre des joueurs 1|36.576|0.823
A2-2|Hall d'entrée|25.908|1.31`)
		t.Left("Relevé", `14|removed|taken away
15|future|phase 2`)
	}},

	{File: "tongues/mairie/sono de rue 08-06-18.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Relevé rue")
		p.Put("A1", `
Commune de Saint-Aubrac-les-Saules - Services techniques
Sono de rue, relevé du 08/06/18||||dossier 2018-07
Armoire sous la halle : un ampli 4 x 120 W / 100 V, un départ par sortie

Départ|Emplacement|Nb|Transfo sur|Obs.
1|Place du Marché, candélabres 1 à 4|4|15 W|RAS
1|Halle|4|10 W|RAS
2|Rue Basse, candélabres 5 à 9|5|10 W|1 grille à revisser
2|Lavoir|1|5 W|RAS
3|Mairie, façade|2|20 W|RAS
3|Mairie, salle du conseil|4|5 W|potentiomètre mural 30 W
3|Mairie, accueil|2|2,5 W|idem mais 10 W
4|Salle polyvalente|6|10 W|RAS
4|Stade, tribune|2|20 W|HS, déposés le 12/04
|En service|28||

Départ|Câble|ml|Obs.
1|R2V 2x2,5²|180|
2|R2V 2x2,5²|240|dont 60 ml en façade
3|R2V 2x1,5²|45|
4|R2V 2x4²|390|
`)
		p.Bold("A1", "A5:E5", "B15:C15", "A17:D17")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2018-07", "Commune de Saint-Aubrac-les-Saules", "an amplifier without a name, departures as its outputs; two unnamed controls by remark, the second by idem; lamp posts counted in the place; a pair out of order and taken down; ml for metres")
		t.Speakers("sheet=Relevé rue; tap_v=100; line_v=100; channel=1", `rows|room|count|tap_w
6|Place du Marché, candélabres 1 à 4|4|15
7|Halle|4|10`)
		t.Speakers("sheet=Relevé rue; tap_v=100; line_v=100; channel=2", `rows|room|count|tap_w
8|Rue Basse, candélabres 5 à 9|5|10
9|Lavoir|1|5`)
		t.Speakers("sheet=Relevé rue; tap_v=100; line_v=100; channel=3", `rows|room|count|tap_w|note
10|Mairie, façade|2|20|
11|Mairie, salle du conseil|4|5|unnamed
12|Mairie, accueil|2|2.5|unnamed`)
		t.Speakers("sheet=Relevé rue; tap_v=100; line_v=100; channel=4", `rows|room|count|tap_w
13|Salle polyvalente|6|10`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
|1|120|100
|2|120|55
|3|120|65
|4|120|60`)
		t.Amplifiers("", `amplifier|load_w
|280`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Mairie, salle du conseil|30|20
|Mairie, accueil|10|5`)
		t.Lines("note=one length a departure", `line|length_m|area_mm2
1|180|2.5
2|240|2.5
3|45|1.5
4|390|4`)
		t.Left("Relevé rue", `14|removed|out of order, taken down
15|total|number in service`)
	}},
}
