package main

import (
	"lineaudit/samples/typed"

	"github.com/xuri/excelize/v2"
)

// bureau is a French design office and the installer that works after it.
var bureau = []typed.Case{
	{File: "bureau/Affaire 1407 Piscine des Tilleuls.xlsx", Kind: "schedule", Book: sheets("Sous-sol", `
Affaire 1407 - Piscine des Tilleuls||||||
Sonorisation - nomenclature des haut-parleurs, niveau sous-sol||||||
Repère|Local|Type|Qté|Puissance réglée (W)|Ligne|Atténuateur
HP 01 à 02|Chaufferie|Projecteur|2|10|L1|
HP 03 à 05|Galerie technique|Projecteur|3|6|L1|
`, "RdC", `
Affaire 1407 - Piscine des Tilleuls||||||
Sonorisation - nomenclature des haut-parleurs, rez-de-chaussée||||||
Repère|Local|Type|Qté|Puissance réglée (W)|Ligne|Atténuateur
HP 10 à 17|Hall bassins|Colonne|8|20|L2|
HP 18 à 21|Pataugeoire|Colonne|4|10|L2|
HP 22 à 27|Hall d'accueil|Plafonnier|6|3|L3|AT1
HP 28|Caisse|Plafonnier|1|1,5|L3|AT2
HP 29 à 36|Vestiaires|Plafonnier|8|1,5|L3|
`, "Etage", `
Affaire 1407 - Piscine des Tilleuls||||||
Sonorisation - nomenclature des haut-parleurs, étage||||||
Repère|Local|Type|Qté|Puissance réglée (W)|Ligne|Atténuateur
HP 40 à 43|Gradins|Colonne|4|20|L4|
HP 44 à 45|Salle de réunion|Plafonnier|2|6|L4|AT3
HP 46|Infirmerie|Plafonnier|1|3|L4|
`, "Baie", `
Baie de sonorisation (100 V)||||
Ampli|Voie|Ligne|Puissance nominale|Observation
AMP1|1|L1|60 W|
AMP2|1|L2|240 W|
AMP3|1|L3|60 W|
AMP4|1|L4|120 W|

Atténuateurs : AT1 30 W, AT2 5 W, AT3 15 W
`), Truth: func(t *typed.Truth) {
		t.Is("1407", "Piscine des Tilleuls", "a sheet a floor, the rack on another, ratings of attenuators in a sentence")
		t.Speakers("tap_v=100; line_v=100; sheet=Sous-sol; amplifier=AMP1; channel=1", `
rows|tag|room|model|count|tap_w
4|HP 01 à 02|Chaufferie|Projecteur|2|10
5|HP 03 à 05|Galerie technique|Projecteur|3|6
`)
		t.Speakers("tap_v=100; line_v=100; sheet=RdC; channel=1", `
rows|tag|room|model|count|tap_w|amplifier|control
4|HP 10 à 17|Hall bassins|Colonne|8|20|AMP2|
5|HP 18 à 21|Pataugeoire|Colonne|4|10|AMP2|
6|HP 22 à 27|Hall d'accueil|Plafonnier|6|3|AMP3|AT1
7|HP 28|Caisse|Plafonnier|1|1.5|AMP3|AT2
8|HP 29 à 36|Vestiaires|Plafonnier|8|1.5|AMP3|
`)
		t.Speakers("tap_v=100; line_v=100; sheet=Etage; amplifier=AMP4; channel=1", `
rows|tag|room|model|count|tap_w|control
4|HP 40 à 43|Gradins|Colonne|4|20|
5|HP 44 à 45|Salle de réunion|Plafonnier|2|6|AT3
6|HP 46|Infirmerie|Plafonnier|1|3|
`)
		t.Channels("line_v=100; channel=1", "amplifier|rated_w|load_w\nAMP1|60|38\nAMP2|240|200\nAMP3|60|31.5\nAMP4|120|95")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAMP1|60|38\nAMP2|240|200\nAMP3|60|31.5\nAMP4|120|95")
		t.Controls("", "control|rated_w|load_w\nAT1|30|18\nAT2|5|1.5\nAT3|15|12")
	}},

	{File: "bureau/DOE 1522 serre tropicale.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("DOE")
		p.Put("A1", `
DOE - Serre tropicale de Valombre||||||||
Affaire n° 1522|||||||Indice B du 12/06/2015|
||||||||
Zone|Désignation|HP||Réglage|Total|Ampli|Atténuateur|Remarques
||Nb|Modèle||||Rep. / puissance|
Zone 1|Grande nef|8|P20|10 W|80 W|A - voie 1||
|Passerelle|4|P20|5 W|20 W|A - voie 1|| 
|Bassin|2|P20|10 W|20 W|A - voie 1||
Zone 2|Accueil|4|E6|3 W|12 W|A - voie 2|P1 / 24 W|
|Boutique|4|E6|3 W|12 W|A - voie 2|P1 / 24 W|même potentiomètre que l'accueil
|Sanitaires|2|E6|1,5 W|3 W|A - voie 2||
Zone 3|Serre froide|6|P20|5 W|30 W|B - voie 1||
|Abri extérieur|2|P20|5 W|10 W|B - voie 1||déposés en 2017, câble en attente
|Atelier|2|P20|10 W|20 W|B - voie 1|P2 / 15 W|sous-dimensionné, à remplacer
||||||||
A : amplificateur 2 x 120 W 100 V||||||||
B : amplificateur 1 x 120 W 100 V||||||||
`)
		p.Merge("C4:D4", "A4:A5", "B4:B5", "E4:E5", "F4:F5", "G4:G5", "I4:I5", "A6:A8", "A9:A11", "A12:A14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("1522", "Serre tropicale de Valombre", "merged headings and zones; control and rating in one cell; some taken down")
		t.Revision("B", false)
		t.Speakers("tap_v=100; line_v=100; sheet=DOE", `
rows|zone|room|count|model|tap_w|amplifier|channel|control
6|Zone 1|Grande nef|8|P20|10|A|1|
7|Zone 1|Passerelle|4|P20|5|A|1|
8|Zone 1|Bassin|2|P20|10|A|1|
9|Zone 2|Accueil|4|E6|3|A|2|P1
10|Zone 2|Boutique|4|E6|3|A|2|P1
11|Zone 2|Sanitaires|2|E6|1.5|A|2|
12|Zone 3|Serre froide|6|P20|5|B|1|
14|Zone 3|Atelier|2|P20|10|B|1|P2
`)
		t.Speakers("tap_v=100; line_v=100; sheet=DOE; status=removed", "rows|zone|room|count|model|tap_w|amplifier|channel\n13|Zone 3|Abri extérieur|2|P20|5|B|1")
		t.Channels("line_v=100; rated_w=120", "amplifier|channel|load_w\nA|1|120\nA|2|27\nB|1|50")
		t.Amplifiers("", "amplifier|rated_w|load_w\nA|240|147\nB|120|50")
		t.Controls("", "control|rated_w|load_w\nP1|24|24\nP2|15|20")
	}},

	{File: "bureau/releve planetarium 1633.csv", Kind: "schedule", Bytes: text(`
Relevé sur site du 08/11/2016 - Planétarium de Sauvigny - dossier 1633
Ligne 100 volts - ampli unique 120 W, sorties non repérées

Lieu;Nombre;HP;Prise relevée;Etat;Volume
Coupole;6;enceinte bois;10 W;bon;
Couloir circulaire;5;HP plafond;2,5 W;bon;
Salle pédagogique;2;HP plafond;5 W;bon;potentiomètre mural 12 W
Billetterie;1;HP plafond;2,5 W;1 HS à remplacer;
Bureaux;3;HP plafond;2,5 W;bon;un potentiomètre de 6 W par bureau
Parvis;2;trompe;15 W;débranchées (plainte voisin);

Charge mesurée : 112 W
`), Truth: func(t *typed.Truth) {
		t.Is("1633", "Planétarium de Sauvigny", "a survey on site: one amplifier in a title, one control in each of three offices, horns taken off the line")
		t.Speakers("tap_v=100; line_v=100", `
rows|room|count|model|tap_w|note
5|Coupole|6|enceinte bois|10|
6|Couloir circulaire|5|HP plafond|2.5|
7|Salle pédagogique|2|HP plafond|5|unnamed control
8|Billetterie|1|HP plafond|2.5|
9|Bureaux|3|HP plafond|2.5|unnamed control
`)
		t.Speakers("tap_v=100; line_v=100; status=removed", "rows|room|count|model|tap_w\n10|Parvis|2|trompe|15")
		t.Channels("line_v=100", "rated_w|load_w\n120|92.5")
		t.Amplifiers("note=unnamed", "rated_w|load_w\n120|92.5")
		t.Controls("note=unnamed", "zone|rated_w|load_w\nSalle pédagogique|12|10")
	}},
}
