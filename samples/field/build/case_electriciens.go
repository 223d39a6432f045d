package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// electriciens are four people in France.
var electriciens = []typed.Case{
	// Thierry, electrician: everything by feeder, units typed into every cell, a table of feeders below with section and length.
	{File: "nautisme/base nautique Etang Vert liste HP.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Liste HP")
		p.Put("A1", `
Base nautique de l'Étang Vert||||Affaire 14-221
Liste HP ligne 100V
|
Départ|Local|Nb HP|Réglage|P totale|Atténuateur|Calibre att.
D1|Accueil|3|3 W|9 W|AT1|12 W
|Bureau|1|1,5 W|1,5 W|AT2|6 W
|Vestiaires H|2|3 W|6 W|néant|
|Vestiaires F|2|3 W|6 W|néant|
D2|Hangar à bateaux|4|6 W|24 W|AT3|36 W
|Atelier|2|6 W|12 W|néant|
D3|Ponton|4|15 W|60 W|néant|
|Mise à l'eau|2|15 W|30 W|néant|
|Tour d'arrivée|1|7,5 W|7,5 W|néant|
|
Départ|Ampli|P ampli|Section|Longueur
D1|A|60 W|1,5 mm²|55 m
D2|B|60 W|1,5 mm²|40 m
D3|C|120 W|2,5 mm²|160 m
`)
		p.Bold("A1", "A4:G4", "A15:E15")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("14-221", "Base nautique de l'Étang Vert", "feeders in the first row of each only, tied to amplifiers and cables in a table below; units and decimal commas in the cells; néant for no control")
		t.Speakers("sheet=Liste HP; tap_v=100; line_v=100; amplifier=A; channel=D1", `rows|room|count|tap_w|control
5|Accueil|3|3|AT1
6|Bureau|1|1.5|AT2
7|Vestiaires H|2|3|
8|Vestiaires F|2|3|`)
		t.Speakers("sheet=Liste HP; tap_v=100; line_v=100; amplifier=B; channel=D2", `rows|room|count|tap_w|control
9|Hangar à bateaux|4|6|AT3
10|Atelier|2|6|`)
		t.Speakers("sheet=Liste HP; tap_v=100; line_v=100; amplifier=C; channel=D3", `rows|room|count|tap_w
11|Ponton|4|15
12|Mise à l'eau|2|15
13|Tour d'arrivée|1|7.5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A|D1|60|22.5
B|D2|60|36
C|D3|120|97.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|60|22.5
B|60|36
C|120|97.5`)
		t.Controls("", `control|rated_w|load_w
AT1|12|9
AT2|6|1.5
AT3|36|24`)
		t.Lines("", `line|length_m|area_mm2
D1|55|1.5
D2|40|1.5
D3|160|2.5`)
	}},

	// Élodie, design office: an export of her own workbook in the old code page, a semicolon inside a quoted room, controls as sentences.
	{File: "jardins/8812_Montarvel_HP_indC.csv", Kind: "schedule", Bytes: text(`
Jardin alpin de Montarvel;;;;;;;
Affaire n° 8812;Indice C;;;;;;
Sonorisation 100 V;;;;;;;
;;;;;;;
Rep.;Local;Qté;P unit. (W);Ligne;Câble;L (m);Obs.
HP01;"Accueil; caisse";3;3;L1;2x1,5;28;
HP02;Sanitaires;2;1,5;L1;2x1,5;35;
HP03;Bureau;1;1,5;L1;2x1,5;31;
HP04;Salle de conférence;6;3;L2;2x1,5;47;
HP05;Salle de conférence, arrière;2;3;L2;2x1,5;58;
HP06;Atelier;1;6;L2;2x1,5;64;
HP07;Rocaille;4;7,5;L3;2x2,5;110;
HP08;Étang;3;7,5;L3;2x2,5;145;
HP09;Belvédère;2;15;L3;2x4;230;
HP10;Serre froide;2;3;L2;;;en attente, serre non construite
;;;;;;;
Ligne;Ampli;P (W);;;;;
L1;AMP 1;60;;;;;
L2;AMP 1;60;;;;;
L3;AMP 2;120;;;;;
;;;;;;;
Potentiomètre PT1 (12 W) : HP01;;;;;;;
Potentiomètre PT2 (36 W) : HP04 et HP05;;;;;;;
`), Truth: func(t *typed.Truth) {
		t.Is("8812", "Jardin alpin de Montarvel", "Windows-1252, semicolon inside quotes, two tables and two sentences in one text file; one item waits for its building")
		t.Revision("C", false)
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP 1; channel=L1", `rows|tag|room|count|tap_w|control
6|HP01|Accueil; caisse|3|3|PT1
7|HP02|Sanitaires|2|1.5|
8|HP03|Bureau|1|1.5|`)
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP 1; channel=L2", `rows|tag|room|count|tap_w|control|status
9|HP04|Salle de conférence|6|3|PT2|installed
10|HP05|Salle de conférence, arrière|2|3|PT2|installed
11|HP06|Atelier|1|6||installed
15|HP10|Serre froide|2|3||future`)
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP 2; channel=L3", `rows|tag|room|count|tap_w
12|HP07|Rocaille|4|7.5
13|HP08|Étang|3|7.5
14|HP09|Belvédère|2|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP 1|L1|60|13.5
AMP 1|L2|60|30
AMP 2|L3|120|82.5`)
		t.Amplifiers("", `amplifier|load_w
AMP 1|43.5
AMP 2|82.5`)
		t.Controls("", `control|rated_w|load_w
PT1|12|9
PT2|36|24`)
		t.Lines("", `line|to|length_m|area_mm2
L1|HP01|28|1.5
L1|HP02|35|1.5
L1|HP03|31|1.5
L2|HP04|47|1.5
L2|HP05|58|1.5
L2|HP06|64|1.5
L3|HP07|110|2.5
L3|HP08|145|2.5
L3|HP09|230|4`)
		t.Left("", `15|future|en attente`)
	}},

	// Nadia, stage manager of a railway museum: she only ever adds up watts a room, so the tap has to be divided out.
	{File: "musees/Musée du Rail puissances par local.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Feuille1")
		p.Put("A1", `
Musée du Rail de Vaubreuil||réf. MRV-2021-3
Puissance par local (total du local), ligne 100 V
|
Local|HP|Total W|Remarque
Ampli 1 (240 W) : expositions
Rotonde|8|48|sur AT1
Galerie des locomotives|10|60|
Salle noire (film)|4|24|sur AT2
Couloir de la rotonde|2|6|sur AT1
Ampli 2 (120 W) : accueil et extérieur
Accueil|4|12|sur AT3
Librairie|3|4.5|sur AT3
Bureaux|4|6|
Quai|3|45|
Parking|2|30|
|
AT1 = 60 W   AT2 = 36 W   AT3 = 24 W
Dans un même local tous les HP sont réglés pareil.
`)
		p.Bold("A1", "A4:D4", "A5", "A10")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("MRV-2021-3", "Musée du Rail de Vaubreuil", "only the total a room is given, the tap is total by number; amplifiers as titles; controls in the remarks, their ratings in one cell")
		t.Speakers("sheet=Feuille1; tap_v=100; line_v=100; amplifier=1", `rows|room|count|tap_w|control
6|Rotonde|8|6|AT1
7|Galerie des locomotives|10|6|
8|Salle noire (film)|4|6|AT2
9|Couloir de la rotonde|2|3|AT1`)
		t.Speakers("sheet=Feuille1; tap_v=100; line_v=100; amplifier=2", `rows|room|count|tap_w|control
11|Accueil|4|3|AT3
12|Librairie|3|1.5|AT3
13|Bureaux|4|1.5|
14|Quai|3|15|
15|Parking|2|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
1|240|138
2|120|97.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
1|240|138
2|120|97.5`)
		t.Controls("", `control|rated_w|load_w
AT1|60|54
AT2|36|24
AT3|24|16.5`)
		t.Left("Feuille1", `5|title|amplifier
10|title|amplifier`)
	}},

	// Gilles, heating engineer of the same museum: radiators with watts, feeders and thermostats.
	{File: "musees/Musée du Rail convecteurs.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Chauffage")
		p.Put("A1", `
Musée du Rail de Vaubreuil - chauffage électrique|||||réf. MRV-2020-7
|
Local|Appareil|Nb|Puissance unitaire (W)|Puissance totale (W)|Départ|Thermostat|Câble
Accueil|panneau rayonnant|2|1500|3000|D1|T1|3G2,5
Librairie|convecteur|2|1000|2000|D1|T1|3G2,5
Bureaux|convecteur|4|750|3000|D2|T2|3G2,5
Sanitaires|sèche-serviettes|2|500|1000|D2|T3|3G1,5
Atelier|aérotherme|1|6000|6000|D3|T4|5G4
Réserve|convecteur|2|1000|2000|D4|T5|3G2,5
Total||13||17000
`)
		p.Bold("A1", "A3:H3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("MRV-2020-7", "Musée du Rail de Vaubreuil", "heaters with watts, numbers, feeders and thermostats")
		t.Left("Chauffage", `4|heater|panneau rayonnant
5|heater|convecteur
6|heater|convecteur
7|heater|sèche-serviettes
8|heater|aérotherme
9|heater|convecteur`)
	}},
}
