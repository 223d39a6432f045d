package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// chefDeChantier is a French site manager: notebooks of works, HP for loudspeakers, a lot of words.
var chefDeChantier = []typed.Case{
	{File: "chantiers/Carnet sono piscine des Aulnes.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Carnet HP")
		p.Put("A1", `
PISCINE DES AULNES - SONORISATION LIGNE 100 V
Affaire 19.046|||Indice C du 22/05/2019
|
Ligne|Zone|Local|HP||Puissance (W)||Atténuateur||Câble|
|||Type|Nb|Prise|Totale|Repère|P max|Section|Longueur
L1|Bassins|Grand bassin|Chambre de compression|8|15|120|||2 x 2,5 mm²|70 m
||Petit bassin|Chambre de compression|4|10|40|||2 x 2,5 mm²|30 m
L2|Accueil|Hall|Plafonnier|6|6|36|AT1|50 W|2 x 1,5 mm²|45 m
||Caisse|Plafonnier|1|3|3|AT1|50 W|2 x 1,5 mm²|10 m
L3|Vestiaires|Vestiaires femmes|Plafonnier étanche|6|3|18|AT2|24 W|2 x 1,5 mm²|55 m
||Vestiaires hommes|Plafonnier étanche|6|3|18|AT3|24 W|2 x 1,5 mm²|60 m
||Infirmerie|Plafonnier|1|1,5|1,5|||2 x 1,5 mm²|20 m
L4|Extérieur|Solarium|Projecteur|4|10|40|||à tirer|
Total||||36||276,5
|
Ampli A : 2 x 240 W (L1 et L2), ampli B : 2 x 120 W (L3 et L4).
L4 : prévue en tranche 2, HP non posés.
Les atténuateurs sont court-circuités par relais en cas d'évacuation.
`)
		p.Merge("D4:E4", "F4:G4", "H4:I4", "J4:K4", "A6:A7", "B6:B7", "A8:A9", "B8:B9", "A10:A12", "B10:B12")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("19.046", "Piscine des Aulnes", "merged cells, two rows of headings; amplifiers and their lines in a sentence; a line whose loudspeakers are not fitted yet")
		t.Revision("C", false)
		t.Speakers("tap_v=100; line_v=100; sheet=Carnet HP", `
rows|zone|room|model|count|tap_w|control|amplifier|channel|status
6|Bassins|Grand bassin|Chambre de compression|8|15||A|L1|installed
7|Bassins|Petit bassin|Chambre de compression|4|10||A|L1|installed
8|Accueil|Hall|Plafonnier|6|6|AT1|A|L2|installed
9|Accueil|Caisse|Plafonnier|1|3|AT1|A|L2|installed
10|Vestiaires|Vestiaires femmes|Plafonnier étanche|6|3|AT2|B|L3|installed
11|Vestiaires|Vestiaires hommes|Plafonnier étanche|6|3|AT3|B|L3|installed
12|Vestiaires|Infirmerie|Plafonnier|1|1.5||B|L3|installed
13|Extérieur|Solarium|Projecteur|4|10||B|L4|future
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nA|L1|240|160\nA|L2|240|39\nB|L3|120|37.5\nB|L4|120|0")
		t.Amplifiers("", "amplifier|rated_w|load_w\nA|480|199\nB|240|37.5")
		t.Controls("", "control|rated_w|load_w\nAT1|50|39\nAT2|24|18\nAT3|24|18")
		t.Lines("note=one length a row", "zone|length_m|area_mm2\nGrand bassin|70|2.5\nPetit bassin|30|2.5\nHall|45|1.5\nCaisse|10|1.5\nVestiaires femmes|55|1.5\nVestiaires hommes|60|1.5\nInfirmerie|20|1.5")
		t.Left("Carnet HP", "14|total|\n16|note|\n17|note|")
	}},

	{File: "chantiers/Reprise patinoire.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Latin1(typed.DOS(`
Patinoire de Valfroid;;;;;;;
Reprise des HP existants - affaire 21.103;;;;;;;
;;;;;;;
Repère HP;Emplacement;Type;Prise avant;Prise après;Ligne;Atténuateur;Observations
HP01;Piste nord;Pavillon;15 W;10 W;1;;
HP02;Piste nord;Pavillon;15 W;10 W;1;;
HP03;Piste sud;Pavillon;15 W;10 W;1;;
HP04;Piste sud;Pavillon;15 W;10 W;1;;HP remplacé
HP05;Gradins;Colonne;20 W;20 W;2;;
HP06;Gradins;Colonne;20 W;20 W;2;;
HP07;Location patins;Encastré;6 W;3 W;3;Location (15 W);
HP08;Location patins;Encastré;6 W;3 W;3;Location (15 W);
HP09;Infirmerie;Encastré;6 W;1,5 W;3;;
HP10;Ancien local caisse;Encastré;6 W;;3;;HP déposé
;;;;;;;
Ampli 1 : 120 W sur ligne 1 ; ampli 2 : 60 W sur ligne 2 ; ampli 3 : 30 W sur ligne 3. Tous en 100 V.;;;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("21.103", "Patinoire de Valfroid", "taps before and after; a control by its place with its rating; amplifiers and lines in a sentence; one taken down")
		t.Speakers("tap_v=100; line_v=100", `
rows|tag|room|model|tap_w|amplifier|channel|control|status
5..6|HP01..|Piste nord|Pavillon|10|Ampli 1|1||installed
7..8|HP03..|Piste sud|Pavillon|10|Ampli 1|1||installed
9..10|HP05..|Gradins|Colonne|20|Ampli 2|2||installed
11..12|HP07..|Location patins|Encastré|3|Ampli 3|3|Location|installed
13|HP09|Infirmerie|Encastré|1.5|Ampli 3|3||installed
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nAmpli 1|1|120|40\nAmpli 2|2|60|40\nAmpli 3|3|30|7.5")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAmpli 1|120|40\nAmpli 2|60|40\nAmpli 3|30|7.5")
		t.Controls("", "control|rated_w|load_w\nLocation|15|6")
		t.Left("", "14|removed|\n16|note|")
	}},

	{File: "chantiers/Serres DOE sono.xls", Kind: "schedule", Saved: "xls", Book: sheets("Nomenclature HP", `
JARDIN BOTANIQUE DE MONTROUSSE - SERRES
DOE SONORISATION||||||Affaire 22.017
|
Zone|Désignation|Qté|P. unitaire|P. totale|Ampli|Sortie|Réglage local
Z1|Grande serre - HP sphérique|6|20 W|120 W|AMP1|1|
Z1|Grande serre - HP sous galerie|4|6 W|24 W|AMP1|1|
Z2|Serre aux cactus - HP sphérique|3|10 W|30 W|AMP1|2|POT1
Z3|Boutique - HP encastré|4|6 W|24 W|AMP1|3|POT2
Z3|Boutique - HP réserve magasin (stock)|2|6 W||||
Z4|Bureaux - HP encastré|5|3 W|15 W|AMP1|4|POT3
`, "Amplis et réglages", `
Ampli|Sortie|P (W)|Tension
AMP1|1|200|100 V
AMP1|2|100|100 V
AMP1|3|100|100 V
AMP1|4|100|100 V
|
Réglage|Local|P. max|Priorité
POT1|Serre aux cactus|50 W|oui
POT2|Boutique|24 W|oui
POT3|Bureaux|12 W|non
`), Truth: func(t *typed.Truth) {
		t.Is("22.017", "Jardin botanique de Montrousse - Serres", "place and loudspeaker in one cell; two tables on the second sheet; two loudspeakers in stock")
		t.Speakers("tap_v=100; line_v=100; sheet=Nomenclature HP; amplifier=AMP1", `
rows|zone|count|tap_w|channel|control
5|Z1|6|20|1|
6|Z1|4|6|1|
7|Z2|3|10|2|POT1
8|Z3|4|6|3|POT2
10|Z4|5|3|4|POT3
`)
		t.Channels("line_v=100; amplifier=AMP1", "channel|rated_w|load_w\n1|200|144\n2|100|30\n3|100|24\n4|100|15")
		t.Amplifiers("", "amplifier|load_w\nAMP1|213")
		t.Controls("", "control|rated_w|load_w\nPOT1|50|30\nPOT2|24|24\nPOT3|12|15")
		t.Left("Nomenclature HP", "9|spare|in stock")
	}},
}
