package main

import "lineaudit/samples/typed"

// france is a bureau d'études: a title block, marks, lines told on another sheet.
func france() []typed.Case {
	return []typed.Case{
		{File: "1847 Grande Serre/carnet HP.xlsx", Kind: "schedule", Book: sheets("Sonorisation", `
Bureau d'études courants faibles
Affaire n° :|1847|||Site :|Grande Serre de Valbrune
Document :|Carnet de haut-parleurs|||Indice :|B

Rep.|Local|Type HP|Qté|Prise 100 V (W)|P tot. (W)|N° ligne|Atténuateur
HP1|Hall|plafond|6|3|18|1|
HP2|Serre tropicale|projecteur|8|10|80|2|
HP3|Serre aride|projecteur|4|10|40|2|
HP4|Salle de cours|plafond|4|6|24|1|AT1
HP5|Vestiaires|plafond|6|1,5|9|3|AT2
HP6|Bureaux|plafond|5|1,5|7,5|3|
HP7|Extérieur|chambre de compression|2|15|30|4|
HP8|Orangerie|colonne|2|20|40|4|
|||Total||248,5

AT1 : 36 W ; AT2 : 6 W
`, "Amplis", `
Ligne|Amplificateur|Voie|Puissance voie
1|A1|1|60 W
2|A2|1|120 W
3|A1|2|60 W
4|A2|2|120 W
`), Truth: func(t *typed.Truth) {
			t.Is("1847", "Grande Serre de Valbrune", "lines joined to amplifier and way on another sheet; attenuators in a note; one over its rating")
			t.Revision("B", false)
			t.Speakers("tap_v=100; line_v=100; sheet=Sonorisation", `
rows|tag|room|model|count|tap_w|amplifier|channel|control
6|HP1|Hall|plafond|6|3|A1|1|
7|HP2|Serre tropicale|projecteur|8|10|A2|1|
8|HP3|Serre aride|projecteur|4|10|A2|1|
9|HP4|Salle de cours|plafond|4|6|A1|1|AT1
10|HP5|Vestiaires|plafond|6|1.5|A1|2|AT2
11|HP6|Bureaux|plafond|5|1.5|A1|2|
12|HP7|Extérieur|chambre de compression|2|15|A2|2|
13|HP8|Orangerie|colonne|2|20|A2|2|
`)
			t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nA1|1|60|42\nA1|2|60|16.5\nA2|1|120|120\nA2|2|120|70")
			t.Amplifiers("", "amplifier|rated_w|load_w\nA1|120|58.5\nA2|240|190")
			t.Controls("", "control|rated_w|load_w\nAT1|36|24\nAT2|6|9")
			t.Left("Sonorisation", "14|total|right")
		}},

		{File: "1902 Planétarium/lignes HP.csv", Kind: "schedule", Bytes: text(`
Planétarium de Montclaret;;;;;
Affaire 1902 - indice A;;;;;
Zone;Désignation;Nb;Puissance unitaire;Ampli;Observations
Accueil;HP encastré;8;3 W;Ampli 1;
Coupole;HP encastré;12;6 W;Ampli 1;
Exposition;enceinte saillie;6;10 W;Ampli 2;atténuateur 60 W
Atelier;HP encastré;4;3 W;Ampli 2;
Parvis;trompe;2;15 W;Ampli 2;
Locaux techniques;trompe;1;15 W;Ampli 2;à prévoir
;;;;;
Ampli 1 : 120 W - Ampli 2 : 120 W - ligne 100 V;;;;;
`), Truth: func(t *typed.Truth) {
			t.Is("1902", "Planétarium de Montclaret", "an attenuator without a name and a row still to come in the remarks")
			t.Revision("A", false)
			t.Speakers("tap_v=100; line_v=100", `
rows|zone|model|count|tap_w|amplifier|status|note
4|Accueil|HP encastré|8|3|Ampli 1|installed|
5|Coupole|HP encastré|12|6|Ampli 1|installed|
6|Exposition|enceinte saillie|6|10|Ampli 2|installed|unnamed control
7|Atelier|HP encastré|4|3|Ampli 2|installed|
8|Parvis|trompe|2|15|Ampli 2|installed|
9|Locaux techniques|trompe|1|15|Ampli 2|future|
`)
			t.Channels("line_v=100; rated_w=120", "amplifier|load_w\nAmpli 1|96\nAmpli 2|102")
			t.Amplifiers("rated_w=120", "amplifier|load_w\nAmpli 1|96\nAmpli 2|102")
			t.Controls("note=unnamed", "zone|rated_w|load_w\nExposition|60|60")
		}},
	}
}

// belgium is an installer who writes in the language of the site.
func belgium() []typed.Case {
	return []typed.Case{
		{File: "B-771/ijsbaan.xlsx", Kind: "schedule", Book: sheets("Blad1", `
Werf:|Kunstijsbaan Hazelmeer||Werfnr.:|B-771

Plaats|Aantal|Afname (W)|Versterker|Lijn|Kabel|m
Ijspiste|10|20|VS1|1|2x2,5|85
Tribune|6|10|VS1|2|2x2,5|60
Inkom|4|6|VS2|1|2x1,5|25
Kleedkamers|8|3|VS2|1|2x1,5|40
EHBO|1|3|VS2|2|2x1,5|30
Technische ruimte|2|10|VS2|2|2x1,5|35

VS1: 2 x 240 W, VS2: 2 x 60 W (100 V)
`), Truth: func(t *typed.Truth) {
			t.Is("B-771", "Kunstijsbaan Hazelmeer", "cable and metres behind each place; two places on one line")
			t.Speakers("tap_v=100; line_v=100; sheet=Blad1", `
rows|zone|count|tap_w|amplifier|channel
4|Ijspiste|10|20|VS1|1
5|Tribune|6|10|VS1|2
6|Inkom|4|6|VS2|1
7|Kleedkamers|8|3|VS2|1
8|EHBO|1|3|VS2|2
9|Technische ruimte|2|10|VS2|2
`)
			t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nVS1|1|240|200\nVS1|2|240|60\nVS2|1|60|48\nVS2|2|60|23")
			t.Amplifiers("", "amplifier|rated_w|load_w\nVS1|480|260\nVS2|120|71")
			t.Lines("material=copper", `
zone|length_m|area_mm2
Ijspiste|85|2.5
Tribune|60|2.5
Inkom|25|1.5
Kleedkamers|40|1.5
EHBO|30|1.5
Technische ruimte|35|1.5
`)
		}},

		{File: "23-104/hangar.xlsx", Kind: "schedule", Book: sheets("Feuil1", `
Hangar à bateaux du lac de Sorvaux / chantier 23-104

Qté|Quoi|Où|Réglage|Potentiomètre|Sortie
4|plafonnier|vestiaires|3W|P1|1
2|plafonnier|secrétariat|3W|P2|1
2|plafonnier|salle de réunion|6W|P3|1
3|trompe|ponton|15W||2
1|trompe|rampe|15W||2
2|coffret mural|atelier|10W||3

ampli 3 sorties : 60 W / 60 W / 30 W, 100V
potentiomètres : P1 et P2 12W, P3 6W
`), Truth: func(t *typed.Truth) {
			t.Is("23-104", "Hangar à bateaux du lac de Sorvaux", "ratings of three outputs in a row in a sentence; pots in another; one over its rating")
			t.Speakers("tap_v=100; line_v=100; sheet=Feuil1", `
rows|room|model|count|tap_w|control|channel
4|vestiaires|plafonnier|4|3|P1|1
5|secrétariat|plafonnier|2|3|P2|1
6|salle de réunion|plafonnier|2|6|P3|1
7|ponton|trompe|3|15||2
8|rampe|trompe|1|15||2
9|atelier|coffret mural|2|10||3
`)
			t.Channels("line_v=100", "channel|rated_w|load_w\n1|60|30\n2|60|60\n3|30|20")
			t.Amplifiers("note=unnamed", "rated_w|load_w\n150|110")
			t.Controls("", "control|rated_w|load_w\nP1|12|12\nP2|12|6\nP3|6|12")
		}},
	}
}
