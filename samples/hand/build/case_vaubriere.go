package main

import "lineaudit/samples/typed"

// vaubriere are more lists of the French-speaking foundation.
func vaubriere() []typed.Case {
	return []typed.Case{
		{File: "Jardin des Estives/Serres - HP et atténuateurs.csv", Kind: "schedule", Bytes: ansi(`
Jardin botanique des Estives - sonorisation des serres;;;;;;
Ligne 100 V - mise à jour du 12/05/2010;;;;;;
;;;;;;
N° HP;Emplacement;Type HP;Réglage;Atténuateur;Zone;Obs.
1;Grande serre, entrée;Colonne;10 W;;Serres;
2;Grande serre, bassin;Colonne;10 W;;Serres;
3;Grande serre, fond;Colonne;10 W;;Serres;
4;Serre tempérée;Encastré;3 W;AT1;Serres;
5;Serre tempérée;Encastré;3 W;AT1;Serres;
6;Boutique;Encastré;3 W;AT2;Accueil;
7;Boutique;Encastré;3 W;AT2;Accueil;
8;Accueil;Encastré;3 W;;Accueil;
9;Accueil;Encastré;1,5 W;;Accueil;remplacé en 2009
10;Sanitaires;Encastré;1,5 W;;Accueil;
;;;;;;
Zone Serres : ampli 1, 60 W;;;;;;
Zone Accueil : ampli 2, 30 W;;;;;;
AT1 et AT2 : 6 W maxi;;;;;;
`), Truth: func(t *typed.Truth) {
			t.Is("", "Jardin botanique des Estives", "plain: a row a loudspeaker; amplifiers by zone and the controls' rating in sentences below")
			t.Speakers("tap_v=100; line_v=100", `
rows|tag|zone|room|model|tap_w|control|amplifier
5|1|Serres|Grande serre, entrée|Colonne|10||ampli 1
6|2|Serres|Grande serre, bassin|Colonne|10||ampli 1
7|3|Serres|Grande serre, fond|Colonne|10||ampli 1
8..9|4..|Serres|Serre tempérée|Encastré|3|AT1|ampli 1
10..11|6..|Accueil|Boutique|Encastré|3|AT2|ampli 2
12|8|Accueil|Accueil|Encastré|3||ampli 2
13|9|Accueil|Accueil|Encastré|1.5||ampli 2
14|10|Accueil|Sanitaires|Encastré|1.5||ampli 2
`)
			t.Channels("line_v=100", `
amplifier|rated_w|load_w
ampli 1|60|36
ampli 2|30|12
`)
			t.Controls("rated_w=6", `
control|zone|load_w
AT1|Serres|6
AT2|Accueil|6
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
ampli 1|60|36
ampli 2|30|12
`)
		}},

		{File: "Hangar à bateaux Ternay-le-Lac/carnet de câbles.xlsx", Kind: "schedule", Saved: "xlsx", Book: book("Carnet", `
HANGAR À BATEAUX - CARNET DE CÂBLES SONO
Affaire 10-338|||||||Folio 1/1
|||||||
Repère câble|Tenant|Aboutissant|Section|Longueur (ml)|HP|P réglée (W)|Observations
CS1|Ampli S1|HP1|2x1,5²|35|plafonnier|6|
CS2|HP1|HP2|2x1,5²|8|plafonnier|6|
CS3|HP2|HP3|2x1,5²|8|plafonnier|3|
CS4|Ampli S2|HP4|2x2,5²|110|pavillon|20|ponton
CS5|HP4|HP5|2x2,5²|45|pavillon|20|ponton
CS6|Ampli S3|HP6|2x1,5²|28|colonne|10|halle
CS7|HP6|HP7|2x1,5²|15|colonne|10|halle
CS8|HP7|HP8|2x1,5²|15|colonne|10|halle

Ampli 3 sorties 100 V - 60 W par sortie
`, bold("A1", "A4:H4")), Truth: func(t *typed.Truth) {
			t.Is("10-338", "Hangar à bateaux", "the cable book is the loudspeaker list; from and to are Tenant and Aboutissant, the area ends in a bare ²")
			t.Speakers("tap_v=100; line_v=100; sheet=Carnet", `
rows|tag|model|tap_w|channel
5..6|HP1..|plafonnier|6|S1
7|HP3|plafonnier|3|S1
8..9|HP4..|pavillon|20|S2
10..12|HP6..|colonne|10|S3
`)
			t.Channels("line_v=100; rated_w=60", `
channel|load_w
S1|15
S2|40
S3|30
`)
			t.Amplifiers("", "rated_w|load_w|note\n180|85|unnamed")
			t.Lines("material=copper", `
line|from|to|length_m|area_mm2
CS1|Ampli S1|HP1|35|1.5
CS2|HP1|HP2|8|1.5
CS3|HP2|HP3|8|1.5
CS4|Ampli S2|HP4|110|2.5
CS5|HP4|HP5|45|2.5
CS6|Ampli S3|HP6|28|1.5
CS7|HP6|HP7|15|1.5
CS8|HP7|HP8|15|1.5
`)
		}},

		{File: "Planétarium d'Aubresin/DPGF lot sono.ods", Kind: "schedule", Saved: "ods", Book: book("DPGF", `
PLANÉTARIUM D'AUBRESIN - LOT 14 SONORISATION - DPGF|||||
|||||
Art.|Désignation|U|Qté|P.U.|Total
14.1|ZONE 1 - HALL ET BILLETTERIE||||
14.1.1|HP de plafond 6 W, réglé sur 3 W|u|8|45|360
14.1.2|HP de plafond 6 W, réglé sur 1,5 W (sanitaires)|u|4|45|180
14.1.3|Potentiomètre de réglage 12 W, billetterie (sur 2 HP du 14.1.1)|u|1|30|30
14.2|ZONE 2 - EXPOSITION||||
14.2.1|Enceinte murale 20 W, réglée sur 10 W|u|6|90|540
14.3|ZONE 3 - EXTÉRIEUR||||
14.3.1|Projecteur de son 20 W, réglé sur 20 W|u|3|120|360
14.4|BAIE||||
14.4.1|Amplificateur 100 V, 3 x 60 W, une sortie par zone|u|1|800|800
14.4.2|Câble 2x1,5 mm²|ml|420|1.2|504
|TOTAL HT||||2774
`, bold("A1", "A3:F3", "A4:B4", "A8:B8", "A10:B10", "A12:B12")), Truth: func(t *typed.Truth) {
			t.Is("", "Planétarium d'Aubresin", "a bill in sections, one a zone; rated watts beside the set watts; one output a zone told by the amplifier's item; a control for two of the eight")
			t.Speakers("tap_v=100; line_v=100; sheet=DPGF", `
rows|zone|count|tap_w|channel|note
5|ZONE 1 - HALL ET BILLETTERIE|8|3|1|two of them behind the control of item 14.1.3
6|ZONE 1 - HALL ET BILLETTERIE|4|1.5|1|
9|ZONE 2 - EXPOSITION|6|10|2|
11|ZONE 3 - EXTÉRIEUR|3|20|3|
`)
			t.Channels("line_v=100; rated_w=60", `
channel|load_w|note
1|30|24 + 6
2|60|exactly its rating
3|60|exactly its rating
`)
			t.Controls("", "control|zone|rated_w|load_w|note\n14.1.3|billetterie|12|6|unnamed")
			t.Amplifiers("", "rated_w|load_w|note\n180|150|unnamed")
			t.Left("DPGF", "4|title|\n7|control|\n8|title|\n10|title|\n12|title|\n13|amplifier|\n14|cable|\n15|total|money")
		}},
	}
}
