package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// metiers are an apprentice, a maintenance firm, a project engineer, a pool's technician, a gardener and a stage hand, in French.
var metiers = []typed.Case{
	{File: "releves/école Saint-Orvin HP.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Feuil1")
		p.Put("A1", `
relevé HP école de Saint-Orvin
ampli dans la loge : 120 W, ligne 100 V, une seule sortie
||
Etage|Salle|Nb|HP|W|Bouton
RDC|Hall|4|plafonier|3|
"|Couloir A|5|"|1,5|
"|Préau|2|trompe|10|
"|Salle de motricité|2|colone|6|B1
"|Biblio|2|plafonier|1,5|B2
1er|Couloir B|5|"|1,5|
"|Salle 11|1|"|"|
"|Salle 12|1|"|"|
"|Salle 13|1|"|?|
"|Salle des maitres|1|"|1,5|B3
"|Atelier|2|cofret|3|
2eme|Couloir C|4|plafonier|1,5|
"|Archives|1|"|"|
||
salle 13 fermée à clé, HP vu par la vitre mais pas le réglage
écrit sur les boutons : B1 20 W, B2 et B3 5 W
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "école de Saint-Orvin", "an apprentice's survey: ditto marks, misspellings, one tap that could not be seen, control ratings in a sentence")
		t.Speakers("sheet=Feuil1; tap_v=100; line_v=100; note=floor as zone; zone=RDC", `rows|room|count|tap_w|control
5|Hall|4|3|
6|Couloir A|5|1.5|
7|Préau|2|10|
8|Salle de motricité|2|6|B1
9|Biblio|2|1.5|B2`)
		t.Speakers("sheet=Feuil1; tap_v=100; line_v=100; note=floor as zone; zone=1er", `rows|room|count|tap_w|control
10|Couloir B|5|1.5|
11|Salle 11|1|1.5|
12|Salle 12|1|1.5|
13|Salle 13|1||
14|Salle des maitres|1|1.5|B3
15|Atelier|2|3|`)
		t.Speakers("sheet=Feuil1; tap_v=100; line_v=100; note=floor as zone; zone=2eme", `rows|room|count|tap_w
16|Couloir C|4|1.5
17|Archives|1|1.5`)
		t.Channels("line_v=100", `amplifier|rated_w|load_min_w
|120|80`)
		t.Amplifiers("", `amplifier|rated_w
|120`)
		t.Controls("", `control|rated_w|load_w
B1|20|12
B2|5|3
B3|5|1.5`)
		t.Asks("Feuil1", `13|asked|tap in the locked room`)
	}},

	{File: "maintenance/parc HP contrats 2024.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte("\ufeff" + typed.DOS(`
Affaire;Site;Zone;Nb HP;P unitaire;Ampli;Potentiomètre;Etat au dernier passage
C-118;Gare routière de Lantelle;Quais;10;6 W;A (120 W);;OK
C-118;Gare routière de Lantelle;Hall;6;3 W;A;P1 (24 W);OK
C-118;Gare routière de Lantelle;Guichets;3;1,5 W;B (30 W);P2 (6 W);OK
C-118;Gare routière de Lantelle;Atelier;2;10 W;B;;déposés en février (travaux)
C-124;Dépôt des trams de Sarvaise;Remise;8;10 W;A (240 W);;OK
C-124;Dépôt des trams de Sarvaise;Fosses;4;10 W;A;;1 HP grésille, devis envoyé
C-124;Dépôt des trams de Sarvaise;Vestiaires;6;1,5 W;A;P1 (12 W);OK
C-124;Dépôt des trams de Sarvaise;Cour;2;15 W;A;;à poser en juin
C-131;Haras de Pommelin;Manège;6;10 W;A (120 W);;OK
C-131;Haras de Pommelin;Écuries;8;3 W;A;P1 (36 W);bouton dur
C-131;Haras de Pommelin;Sellerie;1;3 W;A;;OK
C-131;Haras de Pommelin;Carrière;4;10 W;A;;OK

Toutes les installations sont en ligne 100 V
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("C-118", "Gare routière de Lantelle", "register of three contracts: the same names A and P1 in each, ratings where first named, one lot taken down and one still to come")
		t.Speakers("tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|control
2|Quais|10|6|A|
3|Hall|6|3|A|P1
4|Guichets|3|1.5|B|P2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|120|78
B|30|4.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|120|78
B|30|4.5`)
		t.Controls("", `control|rated_w|load_w
P1|24|18
P2|6|4.5`)
		t.Also("C-124", "Dépôt des trams de Sarvaise", "second contract of the register")
		t.Speakers("tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|control
6|Remise|8|10|A|
7|Fosses|4|10|A|
8|Vestiaires|6|1.5|A|P1`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|240|129`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|240|129`)
		t.Controls("", `control|rated_w|load_w
P1|12|9`)
		t.Also("C-131", "Haras de Pommelin", "third contract of the register")
		t.Speakers("tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|control
10|Manège|6|10|A|
11|Écuries|8|3|A|P1
12|Sellerie|1|3|A|
13|Carrière|4|10|A|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|120|127`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|120|127`)
		t.Controls("", `control|rated_w|load_w
P1|36|24`)
		t.Left("", `5|removed|taken down for works
9|future|to be fitted in June`)
	}},

	{File: "gares/DOE sono Brévelle-Ville.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("HP")
		p.Put("A1", `
Repère|Emplacement|Type|Réglage|Ligne|Commande
HP01|Quai 1 côté ville|projecteur|10 W|L1|
HP02|Quai 1 milieu|projecteur|10 W|L1|
HP03|Quai 1 côté dépôt|projecteur|10 W|L1|
HP04|Quai 2 côté ville|projecteur|10 W|L2|
HP05|Quai 2 milieu|projecteur|10 W|L2|
HP06|Quai 2 côté dépôt|projecteur|10 W|L2|
HP07|Passage souterrain|encastré|6 W|L2|
HP08|Hall voyageurs|colonne|6 W|L3|
HP09|Hall voyageurs|colonne|6 W|L3|
HP10|Salle d'attente|plafonnier|3 W|L3|POT1
HP11|Salle d'attente|plafonnier|3 W|L3|POT1
HP12|Guichet|plafonnier|1,5 W|L3|POT2
HP13|Bureau chef de gare|plafonnier|1,5 W|L4|POT3
HP14|Local agents|plafonnier|1,5 W|L4|POT4
HP15|Vestiaire agents|plafonnier|1,5 W|L4|
HP16|Atelier|projecteur|6 W|L4|
`)
		p.Bold("A1:F1")
		q := p.Sheet("Lignes")
		q.Put("A1", `
Ligne|Zone diffusée|Ampli|Sortie|Câble|Longueur
L1|Quai 1|AMP1|1|2 x 2,5 mm²|210 m
L2|Quai 2|AMP1|2|2 x 2,5 mm²|265 m
L3|Hall|AMP2|1|2 x 1,5 mm²|80 m
L4|Service|AMP2|2|2 x 1,5 mm²|65 m
`)
		q.Bold("A1:F1")
		r := p.Sheet("Amplis et potentiomètres")
		r.Put("A1", `
Matériel|Nombre de sorties|Puissance
AMP1|2|120 W par sortie, 100 V
AMP2|2|60 W par sortie, 100 V
POT1||12 W
POT2||6 W
POT3||6 W
POT4||6 W
`)
		r.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Brévelle-Ville", "as built: loudspeakers joined to zone, amplifier and output through the line number; devices of two kinds in one list of ratings")
		t.Speakers("sheet=HP; tap_v=100; line_v=100; zone=Quai 1; amplifier=AMP1; channel=1", `rows|tag|room|tap_w
2|HP01|Quai 1 côté ville|10
3|HP02|Quai 1 milieu|10
4|HP03|Quai 1 côté dépôt|10`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; zone=Quai 2; amplifier=AMP1; channel=2", `rows|tag|room|tap_w
5|HP04|Quai 2 côté ville|10
6|HP05|Quai 2 milieu|10
7|HP06|Quai 2 côté dépôt|10
8|HP07|Passage souterrain|6`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; zone=Hall; amplifier=AMP2; channel=1", `rows|tag|room|tap_w|control
9|HP08|Hall voyageurs|6|
10|HP09|Hall voyageurs|6|
11|HP10|Salle d'attente|3|POT1
12|HP11|Salle d'attente|3|POT1
13|HP12|Guichet|1.5|POT2`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; zone=Service; amplifier=AMP2; channel=2", `rows|tag|room|tap_w|control
14|HP13|Bureau chef de gare|1.5|POT3
15|HP14|Local agents|1.5|POT4
16|HP15|Vestiaire agents|1.5|
17|HP16|Atelier|6|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|1|120|30
AMP1|2|120|36
AMP2|1|60|19.5
AMP2|2|60|10.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP1|240|66
AMP2|120|30`)
		t.Controls("", `control|rated_w|load_w
POT1|12|6
POT2|6|1.5
POT3|6|1.5
POT4|6|1.5`)
		t.Lines("note=one length a zone", `line|zone|length_m|area_mm2
L1|Quai 1|210|2.5
L2|Quai 2|265|2.5
L3|Hall|80|1.5
L4|Service|65|1.5`)
	}},

	{File: "piscine/fiche sono 100 V.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Sono")
		p.Put("A1", `
Piscine de la Lande Verte - sonorisation, lignes 100 V
||
Zone|Bassin sportif|Bassin ludique|Pataugeoire|Gradins|Vestiaires|Accueil|Bureaux|Pelouse
Nombre de HP|6|6|2|4|8|4|3|3
Type|projecteur|projecteur|coffret|coffret|plafonnier|plafonnier|plafonnier|projecteur
Réglage d'un HP (W)|15|10|6|10|3|1.5|1.5|15
Total (W)|90|60|12|40|24|6|4.5|45
Ampli|SA1|SA1|SA1|SA2|SA2|SA2|SA2|SA3
Puissance de l'ampli (W)|240|240|240|120|120|120|120|60
Variateur|||V1||V2|V3|V4|
Puissance du variateur (W)|||20||36|12|12|
Longueur de câble (m)|85|70|35|60|45|25|40|110
Section (mm²)|2.5|2.5|1.5|1.5|1.5|1.5|1.5|4
`)
		p.Bold("A1", "A3:I3", "A4:A13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Piscine de la Lande Verte", "transposed: a column a zone, with amplifier, control and cable below each other")
		t.Speakers("sheet=Sono; tap_v=100; line_v=100; amplifier=SA1", `rows|zone|count|tap_w|control
B|Bassin sportif|6|15|
C|Bassin ludique|6|10|
D|Pataugeoire|2|6|V1`)
		t.Speakers("sheet=Sono; tap_v=100; line_v=100; amplifier=SA2", `rows|zone|count|tap_w|control
E|Gradins|4|10|
F|Vestiaires|8|3|V2
G|Accueil|4|1.5|V3
H|Bureaux|3|1.5|V4`)
		t.Speakers("sheet=Sono; tap_v=100; line_v=100; amplifier=SA3", `rows|zone|count|tap_w
I|Pelouse|3|15`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
SA1|240|162
SA2|120|74.5
SA3|60|45`)
		t.Amplifiers("", `amplifier|rated_w|load_w
SA1|240|162
SA2|120|74.5
SA3|60|45`)
		t.Controls("", `control|rated_w|load_w
V1|20|12
V2|36|24
V3|12|6
V4|12|4.5`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Bassin sportif|85|2.5
Bassin ludique|70|2.5
Pataugeoire|35|1.5
Gradins|60|1.5
Vestiaires|45|1.5
Accueil|25|1.5
Bureaux|40|1.5
Pelouse|110|4`)
	}},

	{File: "jardin/Circuits allées et serres.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Éclairage")
		p.Put("A1", `
Jardin botanique de la Roche-Fauve
Éclairage des allées et des serres, 12 V
||
Zone|Emplacement|Nb|Lampe|P unitaire (W)|P totale (W)|Transfo|Sortie|Variateur
Serre tropicale|Allée centrale|10|spot encastré|6|60|T1|1|VR1
Serre tropicale|Bassin|4|projecteur immergé|10|40|T1|1|VR1
Serre aride|Massif d'agaves|8|spot piquet|3|24|T1|2|
Allée des fougères|Bordure|20|borne|1,5|30|T2|1|
Allée des fougères|Pont|2|projecteur|15|30|T2|1|
Orangerie|Entrée|4|applique|6|24|T2|2|VR2
Orangerie|Salle d'exposition|12|spot sur rail|6|72|T3|1|VR3
Pépinière|Tables|6|réglette|10|60|T3|2|
|||||340|||
||
Transfo|Puissance|Câble
T1|150 VA|2 x 4 mm²
T2|100 VA|2 x 4 mm²
T3|150 VA|2 x 2,5 mm²
`)
		p.Bold("A1", "A4:I4", "A15:C15")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Jardin botanique de la Roche-Fauve", "not loudspeakers: lamps on 12 V transformers with outputs, dimmers, watts and cables")
	}},

	{File: "theatre/HP de service par réglage.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Service")
		p.Put("A1", `
Théâtre du Moulin Vert : haut-parleurs de service, 100 V
Ampli AR : voies 1 et 2 de 120 W, voie 3 de 60 W
||
|||Nombre de HP réglés à|||||
Zone|Lieu|Voie|1,5 W|3 W|6 W|10 W|Total (W)|Atténuateur
Loges|Loges 1 à 6|1||6|||18|AL1 (36 W)
|Loges 7 à 12|1|6||||9|AL2 (12 W)
|Couloir des loges|1|4||||6|
Plateau|Coulisses|2|||4||24|
|Cintres|2|||2|1|22|
|Dessous|2||2|2||18|
|Quai de décor|2||||1|10|
Public|Grand escalier|3||4|||12|
|Hall|3|2|6|||21|AL3 (24 W)
|Billetterie|3|2||||3|AL4 (5 W)
Total|||14|18|8|2|143|
`)
		p.Merge("D4:G4", "A6:A8", "A9:A12", "A13:A15")
		p.Bold("A1", "A4:I5", "A16:I16")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Théâtre du Moulin Vert", "matrix of places by tap with counts in the cells, two taps in some rows; merged zones; ratings of the outputs in one sentence")
		t.Speakers("sheet=Service; tap_v=100; line_v=100; zone=Loges; amplifier=AR; channel=1", `rows|room|count|tap_w|control
6|Loges 1 à 6|6|3|AL1
7|Loges 7 à 12|6|1.5|AL2
8|Couloir des loges|4|1.5|`)
		t.Speakers("sheet=Service; tap_v=100; line_v=100; zone=Plateau; amplifier=AR; channel=2", `rows|room|count|tap_w
9|Coulisses|4|6
10|Cintres|2|6
10|Cintres|1|10
11|Dessous|2|3
11|Dessous|2|6
12|Quai de décor|1|10`)
		t.Speakers("sheet=Service; tap_v=100; line_v=100; zone=Public; amplifier=AR; channel=3", `rows|room|count|tap_w|control
13|Grand escalier|4|3|
14|Hall|2|1.5|AL3
14|Hall|6|3|AL3
15|Billetterie|2|1.5|AL4`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AR|1|120|33
AR|2|120|74
AR|3|60|36`)
		t.Amplifiers("", `amplifier|load_w
AR|143`)
		t.Controls("", `control|rated_w|load_w
AL1|36|18
AL2|12|9
AL3|24|21
AL4|5|3`)
		t.Left("Service", `16|total|sums`)
	}},
}
