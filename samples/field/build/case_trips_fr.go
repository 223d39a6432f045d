package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Seven French hands: a Belgian electrician, a Swiss sports department, an electrician and a consultant in Québec, and a design office, an apprentice
// and a maintenance firm in France.
var tripsFr = []typed.Case{

	{File: "chantiers/2318 piscine HP as-built.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Piscine communale du Val d'Orneau;;;;;;;
Chantier 2318 - sono ligne 100 V - état as-built;;;;;;;
;;;;;;;
Zone;Local;Nbre;Type de HP;Réglage (W);Total (W);Potentiomètre;Remarque
Z1;Bassin 25 m;8;projecteur;10;80;;
Z1;Plongeoir;2;projecteur;10;20;;
Z1;Pataugeoire;3;encastré;6;18;P1;
Z2;Vestiaires collectifs;4;encastré;3;12;P2;
Z2;Cabines;6;encastré;1,5;9;P2;
Z2;Sanitaires;2;encastré;1,5;3;;pas de réglage local
Z3;Hall et caisse;4;encastré;3;12;P3;
Z3;Salle du club;2;mural;6;12;P4;
Z3;Bureau du chef de bassin;1;mural;3;3;P5;
Total;;32;;;169;;
;;;;;;;
Zone;Ampli;Puissance ampli (W);;;;;
Z1;A1;240;;;;;
Z2;A2;60;;;;;
Z3;A3;60;;;;;
;;;;;;;
Potentiomètre;Puissance (W);;;;;;
P1;30;;;;;;
P2;30;;;;;;
P3;24;;;;;;
P4;24;;;;;;
P5;6;;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("2318", "Piscine communale du Val d'Orneau", "plain; amplifiers and controls in further tables below the list")
		t.Speakers("tap_v=100; line_v=100; zone=Z1; amplifier=A1", `rows|room|count|tap_w|control
5|Bassin 25 m|8|10|
6|Plongeoir|2|10|
7|Pataugeoire|3|6|P1`)
		t.Speakers("tap_v=100; line_v=100; zone=Z2; amplifier=A2", `rows|room|count|tap_w|control
8|Vestiaires collectifs|4|3|P2
9|Cabines|6|1.5|P2
10|Sanitaires|2|1.5|`)
		t.Speakers("tap_v=100; line_v=100; zone=Z3; amplifier=A3", `rows|room|count|tap_w|control
11|Hall et caisse|4|3|P3
12|Salle du club|2|6|P4
13|Bureau du chef de bassin|1|3|P5`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|240|118
A2|60|24
A3|60|27`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|240|118
A2|60|24
A3|60|27`)
		t.Controls("", `control|rated_w|load_w
P1|30|18
P2|30|21
P3|24|12
P4|24|12
P5|6|3`)
		t.Left("", `14|total|sum`)
	}},

	{File: "inventaire/Patinoire sonorisation.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Extrait SO")
		p.Put("A1", `
Patinoire des Prés-Ronds, inventaire technique, chapitre SO (sonorisation)
Service des sports, état au 14.03.2016. Réseau 100 V.
||
N° inv.|Objet|Emplacement|Puissance|Raccordé à|Mise en service|État
SO-01|Amplificateur|Local technique|240 W||2009|bon
SO-02|Amplificateur|Local technique|120 W||2009|bon
SO-10|Régulateur de volume|Local des arbitres|10 W|SO-02|2009|bon
SO-11|Régulateur de volume|Salle de théorie|30 W|SO-02|2009|bouton dur
SO-20|Haut-parleur à pavillon|Piste, pilier nord 1|20 W|SO-01|2009|bon
SO-21|Haut-parleur à pavillon|Piste, pilier nord 2|20 W|SO-01|2009|bon
SO-22|Haut-parleur à pavillon|Piste, pilier sud 1|20 W|SO-01|2009|bon
SO-23|Haut-parleur à pavillon|Piste, pilier sud 2|20 W|SO-01|2014|bon
SO-24|Haut-parleur à pavillon|Gradins est|20 W|SO-01|2009|bon
SO-25|Haut-parleur à pavillon|Gradins ouest|20 W|SO-01|2009|rouille sur l'étrier
SO-30|Haut-parleur de plafond|Hall d'entrée|6 W|SO-02|2009|bon
SO-31|Haut-parleur de plafond|Hall d'entrée|6 W|SO-02|2009|bon
SO-32|Haut-parleur de plafond|Caisse|3 W|SO-02|2009|bon
SO-33|Haut-parleur de plafond|Local des arbitres|3 W|SO-10|2009|bon
SO-34|Haut-parleur de plafond|Salle de théorie|6 W|SO-11|2009|bon
SO-35|Haut-parleur de plafond|Salle de théorie|6 W|SO-11|2009|bon
SO-36|Haut-parleur de plafond|Vestiaire 3|3 W|SO-02|2009|déposé en 2015, plafond refait
SO-40|Microphone d'appel|Caisse||SO-02|2011|bon
`)
		p.Bold("A1", "A4:G4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Patinoire des Prés-Ronds", "asset register with amplifiers, controls and loudspeakers in one list, joined by inventory number; one taken down")
		t.Speakers("sheet=Extrait SO; tap_v=100; line_v=100; amplifier=SO-01; tap_w=20", `rows|tag|room
9|SO-20|Piste, pilier nord 1
10|SO-21|Piste, pilier nord 2
11|SO-22|Piste, pilier sud 1
12|SO-23|Piste, pilier sud 2
13|SO-24|Gradins est
14|SO-25|Gradins ouest`)
		t.Speakers("sheet=Extrait SO; tap_v=100; line_v=100; amplifier=SO-02", `rows|tag|room|tap_w|control
15|SO-30|Hall d'entrée|6|
16|SO-31|Hall d'entrée|6|
17|SO-32|Caisse|3|
18|SO-33|Local des arbitres|3|SO-10
19|SO-34|Salle de théorie|6|SO-11
20|SO-35|Salle de théorie|6|SO-11`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
SO-01|240|120
SO-02|120|30`)
		t.Amplifiers("", `amplifier|rated_w|load_w
SO-01|240|120
SO-02|120|30`)
		t.Controls("", `control|rated_w|load_w
SO-10|10|3
SO-11|30|12`)
		t.Left("Extrait SO", `5|amplifier|register row
6|amplifier|register row
7|control|register row
8|control|register row
21|removed|taken down in 2015
22|other|microphone`)
	}},

	{File: "projets/19-077 gare.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Haut-parleurs")
		p.Put("A1", `
Gare intermodale de Rivière-aux-Cailles, projet 19-077
Réseau 70 V, circuit = ampli.canal
||
No|Pièce|Qté|Tap (W)|Circuit|Contrôle vol.
H-1|Quai A|6|15|'1.1|
H-2|Quai B|6|15|'1.2|
H-3|Marquise des taxis|2|15|'1.2|
H-4|Salle d'attente|10|5|'2.1|
H-5|Billetterie|2|2.5|'2.1|CV-1
H-6|Bureau du chef de gare|1|2.5|'2.1|CV-2
H-7|Salle des chauffeurs|4|2.5|'2.2|CV-3
H-8|Corridor de service|5|1.25|'2.2|
H-9|Toilettes publiques|4|1.25|'2.2|
||
Contrôles de volume : CV-1 et CV-2 = 10 W, CV-3 = 35 W
`)
		p.Bold("A4:F4")
		q := p.Sheet("Amplis")
		q.Put("A1", `
Ampli|Canal|Watts (70 V)|Dessert
1|1|150|Quai A
1|2|150|Quai B et taxis
2|1|75|Côté public
2|2|75|Côté employés
`)
		q.Bold("A1:D1")
		r := p.Sheet("Filage")
		r.Put("A1", `
Circuit|De|À|Calibre|Longueur (pi)
'1.1|Local tech.|Quai A|16 AWG|420
'1.2|Local tech.|Quai B|14 AWG|610
'2.1|Local tech.|Salle d'attente|16 AWG|180
'2.2|Local tech.|Corridor de service|18 AWG|235
`)
		r.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("19-077", "Gare intermodale de Rivière-aux-Cailles", "plain; 70 V, feet and gauges; amplifiers and wiring on sheets of their own, control ratings in a line below")
		t.Speakers("sheet=Haut-parleurs; tap_v=70.7; line_v=70.7", `rows|tag|room|count|tap_w|amplifier|channel|control
5|H-1|Quai A|6|15|1|1|
6|H-2|Quai B|6|15|1|2|
7|H-3|Marquise des taxis|2|15|1|2|
8|H-4|Salle d'attente|10|5|2|1|
9|H-5|Billetterie|2|2.5|2|1|CV-1
10|H-6|Bureau du chef de gare|1|2.5|2|1|CV-2
11|H-7|Salle des chauffeurs|4|2.5|2|2|CV-3
12|H-8|Corridor de service|5|1.25|2|2|
13|H-9|Toilettes publiques|4|1.25|2|2|`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
1|1|150|90
1|2|150|120
2|1|75|57.5
2|2|75|21.25`)
		t.Amplifiers("", `amplifier|load_w
1|210
2|78.75`)
		t.Controls("", `control|rated_w|load_w
CV-1|10|5
CV-2|10|2.5
CV-3|35|10`)
		t.Lines("from=Local tech.; note=home run", `line|to|length_m|area_mm2
1.1|Quai A|128.016|1.309
1.2|Quai B|185.928|2.081
2.1|Salle d'attente|54.864|1.309
2.2|Corridor de service|71.628|0.823`)
	}},

	{File: "etudes/DPGF lot 14 mediatheque.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("DPGF")
		p.Put("A1", `
Médiathèque de Saint-Aubry
DPGF, lot 14 courants faibles, chapitre 14.3 sonorisation (ligne 100 V)
||
Art.|Désignation|U|Qté|P.U. HT|Total HT
'14.3.1|Amplificateur 240 W, une ligne 100 V, en baie|U|1|1180|1180
'14.3.2|Rez-de-chaussée
'14.3.2.1|Haut-parleur plafonnier, prise 3 W, accueil|U|4|62|248
'14.3.2.2|Haut-parleur plafonnier, prise 3 W, salle jeunesse|U|6|62|372
'14.3.2.3|Haut-parleur mural, prise 6 W, salle d'exposition|U|4|88|352
'14.3.2.4|Atténuateur 30 W, salle d'exposition|U|1|41|41
'14.3.3|Étage
'14.3.3.1|Haut-parleur plafonnier, prise 3 W, salle adultes|U|12|62|744
'14.3.3.2|Haut-parleur plafonnier, prise 1,5 W, salle de travail|U|3|62|186
'14.3.3.3|Atténuateur 12 W, salle de travail|U|1|41|41
'14.3.3.4|Haut-parleur plafonnier, prise 1,5 W, circulations|U|5|62|310
'14.3.4|Câble 2 x 1,5 mm², pose comprise|ml|380|2.9|1102
'14.3.5|Mise en service et essais|F|1|450|450
|Total HT||||5026
`)
		p.Bold("A1", "A4:F4", "A6:B6", "A11:B11", "B18:F18")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Médiathèque de Saint-Aubry", "bill of quantities: tap and room inside the description, attenuators without a name by room, one amplifier without a name, prices")
		t.Speakers("sheet=DPGF; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|note
7|Rez-de-chaussée|accueil|4|3|floor as zone
8|Rez-de-chaussée|salle jeunesse|6|3|floor as zone
9||salle d'exposition|4|6|unnamed`)
		t.Speakers("sheet=DPGF; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|note
12|Étage|salle adultes|12|3|floor as zone
13||salle de travail|3|1.5|unnamed
15|Étage|circulations|5|1.5|floor as zone`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|102`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|102`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|30|24
|12|4.5`)
		t.Left("DPGF", `5|amplifier|item of the bill
10|control|item of the bill
14|control|item of the bill
16|cable|item of the bill
17|other|commissioning
18|total|price`)
	}},

	{File: "atelier/fiche 2021-03 jardin.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Contrôle")
		p.Put("A1", `
Jardin botanique de la Combe Verte
Contrôle annuel sono 100 V, fiche 2021-03
||
Ligne|Lieu|Nb HP|Position transfo|Écoute|Z ligne mesurée (Ω)|Remarque
L1|Grande serre|6|10 W|OK|126|
"|Serre des cactus|2|10 W|OK||un fil resserré
L2|Serre aux orchidées|4|6 W|OK|329|
"|Sas|1|3 W|OK||
"|Laboratoire|2|1,5 W|OK||derrière potentiomètre 6 W
L3|Allée des palmiers|5|15 W|OK|84|
"|Entrée du public|2|15 W|OK||
"|Parking|1|15 W|grésille||membrane à surveiller
||
Sortie ampli|Ligne|W sortie|V mesurés
1|L1|120|98
2|L2|60|99
3|L3|240|98
`)
		p.Bold("A1", "A4:G4", "A14:D14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2021-03", "Jardin botanique de la Combe Verte", "test record with ditto marks, impedances and measured volts; one amplifier without a name, three outputs; a potentiometer in a remark")
		t.Speakers("sheet=Contrôle; tap_v=100; line_v=100; channel=1", `rows|room|count|tap_w
5|Grande serre|6|10
6|Serre des cactus|2|10`)
		t.Speakers("sheet=Contrôle; tap_v=100; line_v=100; channel=2", `rows|room|count|tap_w|note
7|Serre aux orchidées|4|6|
8|Sas|1|3|
9|Laboratoire|2|1.5|unnamed`)
		t.Speakers("sheet=Contrôle; tap_v=100; line_v=100; channel=3", `rows|room|count|tap_w
10|Allée des palmiers|5|15
11|Entrée du public|2|15
12|Parking|1|15`)
		t.Channels("line_v=100", `channel|rated_w|load_w
1|120|80
2|60|30
3|240|120`)
		t.Amplifiers("", `amplifier|load_w
|230`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|6|3`)
	}},

	{File: "entretien/contrat 0556 ecole.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Visite")
		p.Put("A1", `
École des Trois Tilleuls, visite d'entretien, contrat 0556
Sono en ligne 100 V. Bâtiment A sur l'ampli A (120 W), bâtiment B sur l'ampli B (120 W).
||
Bâtiment|Local|Nombre de HP réglés sur||||Total W|Potentiomètre
||1,5 W|3 W|6 W|10 W||
A|Préau||||4|40|
A|Hall||4|||12|
A|Classes 1 à 6|6||||9|
A|Salle de musique|||2||12|PM1 (20 W)
A|Bibliothèque||4|||12|PM2 (20 W)
B|Gymnase||||4|40|
B|Gradins|||2||12|
B|Vestiaires|4||||6|
B|Salle des maîtres|1|1|||4.5|PM3 (10 W)
Total||11|9|4|8|147.5|
`)
		p.Merge("C4:F4", "A4:A5", "B4:B5", "G4:G5", "H4:H5")
		p.Bold("A1", "A4:H5", "A15:H15")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("0556", "École des Trois Tilleuls", "matrix of rooms and taps under a heading of two rows; amplifiers in a sentence, control ratings in brackets")
		t.Speakers("sheet=Visite; tap_v=100; line_v=100; zone=A; amplifier=A", `rows|room|count|tap_w|control
6|Préau|4|10|
7|Hall|4|3|
8|Classes 1 à 6|6|1.5|
9|Salle de musique|2|6|PM1
10|Bibliothèque|4|3|PM2`)
		t.Speakers("sheet=Visite; tap_v=100; line_v=100; zone=B; amplifier=B", `rows|room|count|tap_w|control
11|Gymnase|4|10|
12|Gradins|2|6|
13|Vestiaires|4|1.5|
14|Salle des maîtres|1|1.5|PM3
14|Salle des maîtres|1|3|PM3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|120|85
B|120|62.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|120|85
B|120|62.5`)
		t.Controls("", `control|rated_w|load_w
PM1|20|12
PM2|20|12
PM3|10|4.5`)
		t.Left("Visite", `15|total|sums`)
	}},

	{File: "consultants/4471 theatre rev 2.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Haut-parleurs")
		p.Put("A1", `
Théâtre du Vieux-Moulin, dossier 4471, rév. 2
Distribution 70,7 V
||
Étiq.|Zone|Local|Niveau|Type|Tap|Notes
S01|Z1|Foyer|1|plafond 4 po|5 W|
S02|Z1|Foyer|1|plafond 4 po|5 W|
S03|Z1|Foyer|1|plafond 4 po|5 W|
S04|Z1|Vestiaire|1|plafond 4 po|2,5 W|
S05|Z2|Coulisse cour|1|mural|7,5 W|
S06|Z2|Coulisse jardin|1|mural|7,5 W|
S07|Z2|Passerelle|3|mural|7,5 W|retiré à la rév. 2
S08|Z3|Loge 1|S1|plafond 4 po|1,25 W|
S09|Z3|Loge 2|S1|plafond 4 po|1,25 W|
S10|Z3|Loge 3|S1|plafond 4 po|1,25 W|
S11|Z3|Corridor des loges|S1|plafond 4 po|2,5 W|
S12|Z4|Quai de déchargement|1|cornet|15 W|
S13|Z4|Atelier de décors|1|cornet||modifié à la rév. 2
`)
		p.Corrected("F17", "7,5 W", " 15 W")
		p.Strike("A11:G11")
		p.Bold("A4:G4")
		q := p.Sheet("Zones")
		q.Put("A1", `
Zone|Description|Ampli / canal|Contrôle de volume|Capacité
Z1|Foyer|AMP-1 / 1|CV-A|50 W
Z2|Scène|AMP-1 / 2||
Z3|Loges|AMP-1 / 3|CV-B|20 W
Z4|Service|AMP-1 / 4||
`)
		q.Bold("A1:E1")
		r := p.Sheet("Bâti")
		r.Put("A1", `
Unités|Appareil|Description
1-2|AMP-1|amplificateur, 4 canaux de 60 W à 70,7 V
3|MIX-1|console d'appel
4|PS-1|barre d'alimentation
`)
		r.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("4471", "Théâtre du Vieux-Moulin", "three sheets joined by zone and amplifier; a struck-out loudspeaker and a tap corrected inside its cell")
		t.Revision("2", false)
		t.Speakers("sheet=Haut-parleurs; tap_v=70.7; line_v=70.7; zone=Z1; amplifier=AMP-1; channel=1; control=CV-A", `rows|tag|room|tap_w
5|S01|Foyer|5
6|S02|Foyer|5
7|S03|Foyer|5
8|S04|Vestiaire|2.5`)
		t.Speakers("sheet=Haut-parleurs; tap_v=70.7; line_v=70.7; zone=Z2; amplifier=AMP-1; channel=2", `rows|tag|room|tap_w
9|S05|Coulisse cour|7.5
10|S06|Coulisse jardin|7.5`)
		t.Speakers("sheet=Haut-parleurs; tap_v=70.7; line_v=70.7; zone=Z3; amplifier=AMP-1; channel=3; control=CV-B", `rows|tag|room|tap_w
12|S08|Loge 1|1.25
13|S09|Loge 2|1.25
14|S10|Loge 3|1.25
15|S11|Corridor des loges|2.5`)
		t.Speakers("sheet=Haut-parleurs; tap_v=70.7; line_v=70.7; zone=Z4; amplifier=AMP-1; channel=4", `rows|tag|room|tap_w
16|S12|Quai de déchargement|15
17|S13|Atelier de décors|15`)
		t.Channels("amplifier=AMP-1; line_v=70.7; rated_w=60", `channel|load_w
1|17.5
2|15
3|6.25
4|30`)
		t.Amplifiers("", `amplifier|load_w
AMP-1|68.75`)
		t.Controls("", `control|zone|rated_w|load_w
CV-A|Z1|50|17.5
CV-B|Z3|20|6.25`)
		t.Left("Haut-parleurs", `11|removed|struck out, taken out in revision 2`)
	}},
}
