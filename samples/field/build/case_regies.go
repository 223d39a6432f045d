package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

var regies = []typed.Case{
	// A Belgian contractor's project engineer follows up the remarks of the provisional acceptance: what was planned, what was found, what was done.
	{File: "chantier/18-207 suivi PV reception.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Suivi")
		p.Put("A1", `
Musée du Moulin Sec - sonorisation 100 V
Chantier 18/207 - suivi du PV de réception provisoire du 02/03

N°|Local|Prévu au marché|Voie|Constat du 02/03|Suite au 20/03
1|Accueil|4 x 3 W|A.1|conforme|
2|Vestiaire|2 x 3 W|A.1|conforme|
3|Salle des meules|6 x 6 W|A.2|5 x 6 W en place, un manque|6e HP posé le 14/03, 6 W
4|Salle des engrenages|4 x 6 W|A.2|4 x 10 W|remis sur 6 W le 14/03
5|Grenier à grains|4 x 6 W|B.1|4 x 3 W|accepté par le MO, restent sur 3 W
6|Cour|2 x 15 W|B.2|conforme|
7|Quai de chargement|2 x 15 W|B.2|non posés|supprimés du marché le 09/03
8|Salle d'expo temporaire|6 x 6 W|B.1|conforme, atténuateur manquant|AT1 (60 W) posé le 14/03
9|Atelier pédagogique|3 x 6 W|B.1|conforme, avec AT2 (24 W)|

Amplis : A = 2 x 120 W, B = 2 x 120 W
`)
		p.Bold("A1", "A4:F4")
		p.Dress(excelize.Style{Alignment: &excelize.Alignment{WrapText: true, Vertical: "top"}}, "E5:F13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("18/207", "Musée du Moulin Sec", "hard: planned, found and corrected states side by side; one tap lowered with consent, one group struck from the contract")
		t.Speakers("sheet=Suivi; tap_v=100; line_v=100", `rows|room|count|tap_w|amplifier|channel|control
5|Accueil|4|3|A|1|
6|Vestiaire|2|3|A|1|
7|Salle des meules|6|6|A|2|
8|Salle des engrenages|4|6|A|2|
9|Grenier à grains|4|3|B|1|
10|Cour|2|15|B|2|
12|Salle d'expo temporaire|6|6|B|1|AT1
13|Atelier pédagogique|3|6|B|1|AT2`)
		t.Channels("line_v=100; rated_w=120", `amplifier|channel|load_w
A|1|18
A|2|60
B|1|66
B|2|30`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|240|78
B|240|96`)
		t.Controls("", `control|rated_w|load_w
AT1|60|36
AT2|24|18`)
		t.Left("Suivi", `11|removed|never fitted, struck from the contract`)
	}},

	// A Swiss electrical planner counts loudspeakers on the plan into a grid of rooms and settings, with a strip of zones below it for the rack.
	{File: "planif/Jardin botanique grille HP.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Grille")
		p.Put("B1", `
Jardin botanique de Montalin, projet d'exécution, affaire 3320
Nombre de haut-parleurs par réglage, lignes 100 V

Local|Zone|1,5 W|3 W|6 W|10 W|Total pces
Entrée principale|Z1||4|2||6
Caisse|Z1|1||||1
WC|Z1|2||||2
Serre tropicale|Z2|||8||8
Serre méditerranéenne|Z2|||6||6
Serre froide|Z2||2|2||4
Jardin alpin|Z3||||6|6
Arboretum|Z3||||8|8
Salle de conférence|Z4||6|||6
Herbier|Z4|2|2|||4
Total||5|14|18|14|51

Zone|Ampli|Sortie|Puissance|Atténuateur|Puiss. att.
Z1|AM1|1|60 W|–|
Z2|AM1|2|120 W|–|
Z3|AM2|1|250 W|–|
Z4|AM2|2|60 W|RV1|36 W
`)
		p.Bold("B1", "B4:H4", "B15:H15", "B17:G17")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("3320", "Jardin botanique de Montalin", "a matrix of rooms and settings with two filled cells in some rows; zones joined to outputs in a second table below")
		t.Speakers("sheet=Grille; tap_v=100; line_v=100; zone=Z1; amplifier=AM1; channel=1", `rows|room|count|tap_w
5|Entrée principale|4|3
5|Entrée principale|2|6
6|Caisse|1|1.5
7|WC|2|1.5`)
		t.Speakers("sheet=Grille; tap_v=100; line_v=100; zone=Z2; amplifier=AM1; channel=2", `rows|room|count|tap_w
8|Serre tropicale|8|6
9|Serre méditerranéenne|6|6
10|Serre froide|2|3
10|Serre froide|2|6`)
		t.Speakers("sheet=Grille; tap_v=100; line_v=100; zone=Z3; amplifier=AM2; channel=1", `rows|room|count|tap_w
11|Jardin alpin|6|10
12|Arboretum|8|10`)
		t.Speakers("sheet=Grille; tap_v=100; line_v=100; zone=Z4; amplifier=AM2; channel=2; control=RV1", `rows|room|count|tap_w
13|Salle de conférence|6|3
14|Herbier|2|1.5
14|Herbier|2|3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AM1|1|60|28.5
AM1|2|120|102
AM2|1|250|140
AM2|2|60|27`)
		t.Amplifiers("", `amplifier|load_w
AM1|130.5
AM2|167`)
		t.Controls("", `control|zone|rated_w|load_w
RV1|Z4|36|27`)
		t.Left("Grille", `15|total|sums`)
	}},

	// The sound technician of a Quebec theatre keeps the backstage paging on one sheet pinned to the rack, one column a place.
	{File: "regie/rappel de scene.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Rappel")
		p.Put("A1", `
Salle Beaurivage - rappel de scène, ligne 70,7 V
Ampli 4 canaux de 100 W dans la régie

Zone|Hall|Balcon|Loge 1|Loge 2|Loge 3|Foyer des artistes|Atelier de décors|Débarcadère
Nb de HP|6|4|1|1|1|2|2|1
Tap par HP (W)|5|5|1.25|1.25|1.25|2.5|10|10
Contrôle de volume (W)|50||10|10|10|10||
Canal|1|1|2|2|2|2|3|4
Fil 16/2 (pi)|120|160|60|75|90|110|135|180
Dernier essai|12 sept.|12 sept.|12 sept.|12 sept.|12 sept.|12 sept.|14 sept.|14 sept.
`)
		p.Bold("A1", "A4:I4", "A5:A10")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Salle Beaurivage", "runs across: a column a zone; volume controls without names, wire in feet")
		t.Speakers("sheet=Rappel; tap_v=70.7; line_v=70.7", `rows|zone|count|tap_w|channel|note
B|Hall|6|5|1|unnamed
C|Balcon|4|5|1|
D|Loge 1|1|1.25|2|unnamed
E|Loge 2|1|1.25|2|unnamed
F|Loge 3|1|1.25|2|unnamed
G|Foyer des artistes|2|2.5|2|unnamed
H|Atelier de décors|2|10|3|
I|Débarcadère|1|10|4|`)
		t.Channels("line_v=70.7; rated_w=100", `amplifier|channel|load_w
|1|50
|2|8.75
|3|20
|4|10`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|400|88.75`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Hall|50|30
|Loge 1|10|1.25
|Loge 2|10|1.25
|Loge 3|10|1.25
|Foyer des artistes|10|5`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Hall|36.576|1.309
Balcon|48.768|1.309
Loge 1|18.288|1.309
Loge 2|22.86|1.309
Loge 3|27.432|1.309
Foyer des artistes|33.528|1.309
Atelier de décors|41.148|1.309
Débarcadère|54.864|1.309`)
	}},

	// A French lighting technician lists lamps and dimmers of a museum for relamping: watts, circuits and dimmer ratings, but no loudspeaker.
	{File: "relampage/musee eclairage.csv", Kind: "not-a-schedule", Bytes: func() []byte {
		return []byte(`Musée de la Batellerie;;;;;;
Relampage 2022, éclairage 230 V;;;;;;
;;;;;;
Salle;Type;Nb;W unitaire;Circuit;Variateur;W max variateur
Salle des cartes;spot LED sur rail;12;9;E1;V1;300
Salle des cartes;réglette;4;18;E2;;
Galerie des maquettes;spot LED sur rail;20;9;E3;V2;300
Galerie des maquettes;bandeau LED vitrine;8;14;E3;V2;
Hall;suspension;6;25;E4;V3;500
Couloir;encastré;10;12;E5;;
Réserves;réglette étanche;8;36;E6;;
Bureaux;dalle LED 600 x 600;9;32;E7;;
Sortie de secours;bloc autonome;7;3;BAES;;
Total;;84;;;;
`)
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "lamps with watts, circuits and dimmers: no loudspeaker in it")
	}},
}
