package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// techniciens are six people who write French in Belgium, Québec and Switzerland.
var techniciens = []typed.Case{
	// Benoît, maintenance technician in the Condroz: four sheets, and nothing but the zone ties them together.
	{File: "bains/0455B Boisrenard sono.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("HP")
		p.Put("A1", `
Piscine de plein air Boisrenard
Dossier 0455 B - sono 100 V
|
Zone|Emplacement|HP|Qté|Puiss. (W)
Z1 Entrée|Guichet|plafond|1|1.5
|Hall|plafond|4|3
|Casiers|plafond|4|3
Z2 Bassins|Grand bassin|pavillon|6|15
|Pataugeoire|pavillon|2|7.5
Z3 Pelouse|Pelouse haute|colonne|3|10
|Pelouse basse|colonne|3|10
Z4 Service|Maîtres-nageurs|plafond|2|1.5
|Infirmerie|plafond|1|1.5
|Filtration|pavillon|1|10
`)
		p.Sheet("Rack").Put("A1", `
Ampli|Sortie|W|Zone desservie
AMP A|1|60|Z1
AMP A|2|60|Z4
AMP B|1|240|Z2 et Z3
`)
		p.Sheet("Régulateurs").Put("A1", `
Régulateur|Zone|Max.
R1|Z1|36 W
R4|Z4|24 W
`)
		p.Sheet("Câbles").Put("A1", `
Zone|Longueur|Câble
Z1|45 m|SVV 2x1,5
Z2|130 m|SVV 2x2,5
Z3|165 m|SVV 2x2,5
Z4|38 m|SVV 2x1,5
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("0455 B", "Piscine de plein air Boisrenard", "four sheets tied by the zone only, zones with and without their names, two zones on one output")
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=AMP A; channel=1; control=R1; zone=Z1 Entrée", `rows|room|count|tap_w
5|Guichet|1|1.5
6|Hall|4|3
7|Casiers|4|3`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=AMP B; channel=1", `rows|room|count|tap_w|zone
8|Grand bassin|6|15|Z2 Bassins
9|Pataugeoire|2|7.5|Z2 Bassins
10|Pelouse haute|3|10|Z3 Pelouse
11|Pelouse basse|3|10|Z3 Pelouse`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=AMP A; channel=2; control=R4; zone=Z4 Service", `rows|room|count|tap_w
12|Maîtres-nageurs|2|1.5
13|Infirmerie|1|1.5
14|Filtration|1|10`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP A|1|60|25.5
AMP A|2|60|14.5
AMP B|1|240|165`)
		t.Amplifiers("", `amplifier|load_w
AMP A|40
AMP B|165`)
		t.Controls("", `control|zone|rated_w|load_w
R1|Z1 Entrée|36|25.5
R4|Z4 Service|24|14.5`)
		t.Lines("", `zone|length_m|area_mm2
Z1 Entrée|45|1.5
Z2 Bassins|130|2.5
Z3 Pelouse|165|2.5
Z4 Service|38|1.5`)
	}},

	// Anne-Sophie, estimator near Gembloux: one regulator at the door of the glasshouses stands before two others.
	{File: "jardins/2231 Grandmesnil serres.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Serres")
		p.Put("A1", `
Jardin botanique de Grandmesnil|||Dossier 2231
Ligne 100 V
|
N°|Endroit|Haut-parleurs|Réglé par|Départ
1|Serre tropicale|6 appliques 6 W|R2|D1
2|Serre tempérée|4 appliques 6 W|R3|D1
3|Couloir des serres|3 plafonniers 3 W|R1|D1
4|Rucher|1 pavillon 10 W||D2
5|Verger|3 pavillons 10 W||D2
6|Accueil|2 plafonniers 3 W|R4|D3
7|Boutique|3 plafonniers 3 W|R5|D3
8|Sanitaires|2 plafonniers 1,5 W||D3
|
Régulateur|Pose|Charge max|Placé derrière
R1|sas des serres|100 W|
R2|serre tropicale|36 W|R1
R3|serre tempérée|36 W|R1
R4|accueil|10 W|
R5|boutique|6 W|
|
Départ|Ampli|Puissance
D1|AMP1|120 W
D2|AMP1|120 W
D3|AMP2|60 W
|
R5 est trop juste : à remplacer par un 12 W quand on y retourne.
`)
		p.Bold("A1", "A4:E4", "A14:D14", "A21:C21")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2231", "Jardin botanique de Grandmesnil", "two regulators stand behind a third one; one regulator is too small, its successor named in a remark; number, kind and tap in one cell; three tables on one sheet")
		t.Speakers("sheet=Serres; tap_v=100; line_v=100; amplifier=AMP1; channel=D1", `rows|tag|room|count|tap_w|control
5|1|Serre tropicale|6|6|R2
6|2|Serre tempérée|4|6|R3
7|3|Couloir des serres|3|3|R1`)
		t.Speakers("sheet=Serres; tap_v=100; line_v=100; amplifier=AMP1; channel=D2", `rows|tag|room|count|tap_w
8|4|Rucher|1|10
9|5|Verger|3|10`)
		t.Speakers("sheet=Serres; tap_v=100; line_v=100; amplifier=AMP2; channel=D3", `rows|tag|room|count|tap_w|control
10|6|Accueil|2|3|R4
11|7|Boutique|3|3|R5
12|8|Sanitaires|2|1.5|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|D1|120|69
AMP1|D2|120|40
AMP2|D3|60|18`)
		t.Amplifiers("", `amplifier|load_w
AMP1|109
AMP2|18`)
		t.Controls("", `control|rated_w|load_w|upstream
R1|100|69|
R2|36|36|R1
R3|36|24|R1
R4|10|6|
R5|6|9|`)
	}},

	// Josée, draughtswoman in Québec: titles of areas with the amplifier, a column for the state, feet, one gauge unlike the rest.
	{File: "arenas/19-0742 aréna Trois-Lacs sonorisation.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Sonorisation")
		p.Put("A1", `
Aréna des Trois-Lacs - sonorisation|||||Projet 19-0742
Lignes à 70 V. Fil no 16 AWG partout sauf indication contraire.
|
Local|Qté|H.-P.|Prise (W)|État|Contrôle de volume|Fil (pi)
PATINOIRE - ampli A (250 W)
Bandes est|5|cornet|20|existant||210
Bandes ouest|5|cornet|20|nouveau||265
Vieux coin sud|2|cornet|10|à enlever||
Banc des joueurs|2|boîte|5|nouveau||180
ACCUEIL - ampli B (60 W)
Hall|6|encastré|4|existant|CV-1 (35 W)|75
Location de patins|3|encastré|2.5|nouveau|CV-2 (10 W)|95
Administration|2|encastré|1.25|existant|CV-3 (5 W)|60
VESTIAIRES - ampli C (60 W)
Vestiaires 1 à 6|12|encastré|2.5|existant||140 (no 18)
Infirmerie|1|encastré|1.25|nouveau|CV-4 (5 W)|110
Salle d'entraînement|4|encastré|2.5|futur||
`)
		p.Merge("A5:G5", "A10:G10", "A14:G14")
		p.Bold("A1", "A4:G4", "A5", "A10", "A14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("19-0742", "Aréna des Trois-Lacs", "amplifiers in merged titles of areas; states; control with rating in brackets; feet, with one gauge beside its length")
		t.Speakers("sheet=Sonorisation; tap_v=70.7; line_v=70.7; zone=PATINOIRE; amplifier=A", `rows|room|count|tap_w|status
6|Bandes est|5|20|installed
7|Bandes ouest|5|20|installed
8|Vieux coin sud|2|10|removed
9|Banc des joueurs|2|5|installed`)
		t.Speakers("sheet=Sonorisation; tap_v=70.7; line_v=70.7; zone=ACCUEIL; amplifier=B", `rows|room|count|tap_w|control
11|Hall|6|4|CV-1
12|Location de patins|3|2.5|CV-2
13|Administration|2|1.25|CV-3`)
		t.Speakers("sheet=Sonorisation; tap_v=70.7; line_v=70.7; zone=VESTIAIRES; amplifier=C", `rows|room|count|tap_w|control|status
15|Vestiaires 1 à 6|12|2.5||installed
16|Infirmerie|1|1.25|CV-4|installed
17|Salle d'entraînement|4|2.5||future`)
		t.Channels("line_v=70.7", `amplifier|rated_w|load_w
A|250|210
B|60|34
C|60|31.25`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|250|210
B|60|34
C|60|31.25`)
		t.Controls("", `control|rated_w|load_w
CV-1|35|24
CV-2|10|7.5
CV-3|5|2.5
CV-4|5|1.25`)
		t.Lines("", `zone|length_m|area_mm2
Bandes est|64.008|1.309
Bandes ouest|80.772|1.309
Banc des joueurs|54.864|1.309
Hall|22.86|1.309
Location de patins|28.956|1.309
Administration|18.288|1.309
Vestiaires 1 à 6|42.672|0.823
Infirmerie|33.528|1.309`)
		t.Left("Sonorisation", `5|title|area and amplifier
8|removed|à enlever
10|title|area and amplifier
14|title|area and amplifier
17|future|futur`)
	}},

	// Pascal, building technician of the planetarium in Montréal: he left his filter on the upper floor when he saved.
	{File: "planetariums/Mont-Clair inventaire HP.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Inventaire")
		p.Put("A1", `
Planétarium du Mont-Clair|||||Projet 2020-PMC
Inventaire des haut-parleurs, 70 V
|
Niv.|Pièce|Code|Qté|W/HP|Circuit|Volume
1|Hall|HP-A|6|4|C1|CV1
1|Vestiaire|HP-A|2|2|C1|
1|Boutique|HP-A|3|4|C1|CV2
1|Toilettes|HP-A|4|2|C1|
2|Foyer de la coupole|HP-B|6|8|C2|
2|Coupole, sas|HP-A|2|4|C2|
2|Salle de classe|HP-A|4|4|C3|CV3
2|Bureaux|HP-A|5|1|C3|CV4
2|Régie|HP-A|1|2|C3|
`)
		p.Bold("A1", "A4:G4")
		p.Filtered("A4:G13", "A", "2", 5, 6, 7, 8)
		c := p.Sheet("Circuits")
		c.Put("A1", `
Circuit|Ampli|Capacité|Z mesurée (1 kHz)
C1|AMP-1|60 W|108 ohms
C2|AMP-1|60 W|91 ohms
C3|AMP-2|60 W|224 ohms
|
Volume|Capacité
CV1|35 W
CV2|10 W
CV3|25 W
CV4|5 W
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2020-PMC", "Planétarium du Mont-Clair", "a filter left on hides the lower floor, which is installed all the same; measured impedances beside the ratings")
		t.Speakers("sheet=Inventaire; tap_v=70.7; line_v=70.7; amplifier=AMP-1; channel=C1; model=HP-A", `rows|room|count|tap_w|control
5|Hall|6|4|CV1
6|Vestiaire|2|2|
7|Boutique|3|4|CV2
8|Toilettes|4|2|`)
		t.Speakers("sheet=Inventaire; tap_v=70.7; line_v=70.7; amplifier=AMP-1; channel=C2", `rows|room|count|tap_w|model
9|Foyer de la coupole|6|8|HP-B
10|Coupole, sas|2|4|HP-A`)
		t.Speakers("sheet=Inventaire; tap_v=70.7; line_v=70.7; amplifier=AMP-2; channel=C3; model=HP-A", `rows|room|count|tap_w|control
11|Salle de classe|4|4|CV3
12|Bureaux|5|1|CV4
13|Régie|1|2|`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
AMP-1|C1|60|48
AMP-1|C2|60|56
AMP-2|C3|60|23`)
		t.Amplifiers("", `amplifier|load_w
AMP-1|104
AMP-2|23`)
		t.Controls("", `control|rated_w|load_w
CV1|35|24
CV2|10|12
CV3|25|16
CV4|5|5`)
	}},

	// Luc, ice master in the canton of Vaud: rooms down, outputs across, "4 x 15" in the cells.
	{File: "patinoires/23-066 Patinoire de la Grève.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Plan de charge")
		p.Put("A1", `
Patinoire de la Grève - sonorisation 100 V - n° 23-066
Un seul ampli, 4 voies de 120 W. Dans les cases : nombre de HP x réglage en watts.
|
Local|Voie 1|Voie 2|Voie 3|Voie 4|Variateur
Piste, nord|4 x 15||||
Piste, sud|4 x 15||||
Gradins||6 x 6|||
Banc des pénalités||2 x 3|||
Hall d'entrée|||5 x 3||V1 (24 W)
Vestiaires|||8 x 1.5||
Infirmerie|||1 x 1.5||V2 (4 W)
Bureau|||2 x 1.5||V3 (6 W)
Parking||||2 x 15|
Garage surfaceuse||||1 x 10|
Total voie (W)|120|42|31.5|40
`)
		p.Bold("A1", "A4:F4", "A15:E15")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("23-066", "Patinoire de la Grève", "matrix of rooms and outputs with number x tap in the cells; the rating of the outputs in a sentence")
		t.Speakers("sheet=Plan de charge; tap_v=100; line_v=100", `rows|room|count|tap_w|channel|control
5|Piste, nord|4|15|1|
6|Piste, sud|4|15|1|
7|Gradins|6|6|2|
8|Banc des pénalités|2|3|2|
9|Hall d'entrée|5|3|3|V1
10|Vestiaires|8|1.5|3|
11|Infirmerie|1|1.5|3|V2
12|Bureau|2|1.5|3|V3
13|Parking|2|15|4|
14|Garage surfaceuse|1|10|4|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
|1|120|120
|2|120|42
|3|120|31.5
|4|120|40`)
		t.Controls("", `control|rated_w|load_w
V1|24|15
V2|4|1.5
V3|6|3`)
		t.Left("Plan de charge", `15|total|sums of the outputs`)
	}},

	// Mireille, secretary of the riding hall in the Jura: the new list in front, the old one kept behind it for safety.
	{File: "manege/Manège du Haut-Risoux sonorisation.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Etat 2024")
		p.Put("A1", `
Manège du Haut-Risoux - sonorisation|||Dossier 884-S
Etat au 12.03.2024, remplace la liste de 2017
|
No|Lieu|Haut-parleurs|Pos. transfo|Ampli|Potentiomètre
1|Grand manège, côté long|4 projecteurs|20 W|1|
2|Grand manège, petit côté|2 projecteurs|10 W|1|
3|Tribune|3 colonnes|12 W|1|P1, 50 W
4|Paddock|3 pavillons|15 W|2|
5|Ecuries|6 plafonniers|3 W|2|
6|Sellerie|1 plafonnier|1.5 W|2|P2, 5 W
7|Secrétariat|1 plafonnier|1.5 W|2|P3, 5 W
|
Ligne 100 V. Ampli 1: 240 W. Ampli 2: 120 W.
`)
		p.Bold("A1", "A4:F4")
		o := p.Sheet("Liste 2017 (périmée)")
		o.Put("A1", `
Manège du Haut-Risoux - sonorisation 2017, NE PLUS UTILISER
|
No|Lieu|Haut-parleurs|Pos. transfo|Ampli|Potentiomètre
1|Grand manège, côté long|4 projecteurs|10 W|1|
2|Grand manège, petit côté|2 projecteurs|10 W|1|
3|Tribune|2 colonnes|6 W|1|
4|Paddock|2 pavillons|15 W|1|
5|Ecuries|4 plafonniers|3 W|1|
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("884-S", "Manège du Haut-Risoux", "the superseded list of 2017 on a second sheet; number and kind in one cell, control and rating in one cell")
		t.Speakers("sheet=Etat 2024; tap_v=100; line_v=100; amplifier=1", `rows|tag|room|count|tap_w|control
5|1|Grand manège, côté long|4|20|
6|2|Grand manège, petit côté|2|10|
7|3|Tribune|3|12|P1`)
		t.Speakers("sheet=Etat 2024; tap_v=100; line_v=100; amplifier=2", `rows|tag|room|count|tap_w|control
8|4|Paddock|3|15|
9|5|Ecuries|6|3|
10|6|Sellerie|1|1.5|P2
11|7|Secrétariat|1|1.5|P3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
1|240|136
2|120|66`)
		t.Amplifiers("", `amplifier|rated_w|load_w
1|240|136
2|120|66`)
		t.Controls("", `control|rated_w|load_w
P1|50|36
P2|5|1.5
P3|5|1.5`)
		t.Left("Liste 2017 (périmée)", `4|superseded|list of 2017
5|superseded|list of 2017
6|superseded|list of 2017
7|superseded|list of 2017
8|superseded|list of 2017`)
	}},
}
