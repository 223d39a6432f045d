package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// The French files: a bid, a survey, a Belgian station, a Swiss garden's caretaker, two from Quebec, a theatre's sheet, and a list of lamps.
var releves = []typed.Case{
	{File: "affaires/23-077 Médiathèque DQE lot 12.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Lot 12 sono")
		p.Put("A1", `
Opération 23-077||||||
Médiathèque des Ormeaux, lot 12 courants faibles, sonorisation||||||

N°|Désignation|Zone|U|Qté|PU HT|Total HT
'12.1|Haut-parleur plafonnier ligne 100 V, réglé sur 3 W|Accueil|u|4|38|152
'12.2|Idem|Espace adultes|u|10|38|380
'12.3|Idem mais réglé sur 1,5 W|Espace enfants|u|6|38|228
'12.4|Haut-parleur plafonnier ligne 100 V, réglé sur 6 W|Auditorium|u|4|44|176
'12.5|Projecteur de son étanche, réglé sur 10 W|Parvis|u|2|95|190
'12.6|Atténuateur encastré 36 W|Espace adultes|u|1|31|31
'12.7|Atténuateur encastré 12 W|Espace enfants|u|1|28|28
'12.8|Atténuateur encastré 36 W|Auditorium|u|1|31|31
'12.9|Amplificateur 120 W, ligne 100 V|Local technique|u|1|540|540
'12.10|Coffret 19 pouces 6U|Local technique|u|1|140|140
'12.11|Câblage, essais et mise en service|Ensemble|ens|1|1350|1350
|Total HT|||||3246
`)
		p.Bold("A1", "A4:G4", "B16:G16")
		p.Format("#,##0.00", "F5:G16")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("23-077", "Médiathèque des Ormeaux", "priced bill; kind and tap in one sentence, one row only says the same again, unnamed controls and amplifier among the rows")
		t.Speakers("sheet=Lot 12 sono; tap_v=100; line_v=100", `rows|zone|count|tap_w
5|Accueil|4|3
6|Espace adultes|10|3
7|Espace enfants|6|1.5
8|Auditorium|4|6
9|Parvis|2|10`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|120|95`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|120|95`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Espace adultes|36|30
|Espace enfants|12|9
|Auditorium|36|24`)
		t.Left("Lot 12 sono", `14|other|cabinet
15|other|cabling and tests
16|total|sum of money`)
	}},

	{File: "maintenance/releve piscine Val Tournis.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Relevé sonorisation;Piscine du Val Tournis;;;
;;;;
Local;HP;Prise;Ampli;Observations
Hall d'accueil;4 plafond;3 W;A1;
Caisse;1 plafond;1,5 W;A1;atténuateur 6 W
Vestiaires F;4 plafond;1,5 W;A1;
Vestiaires H;4 plafond;1,5 W;A1;
Grand bassin;6 pavillons;15 W;A2;
Petit bassin;3 pavillons;10 W;A2;
Pataugeoire;2 enceintes;6 W;A2;
Infirmerie;1 plafond;1,5 W;A1;atténuateur 6 W
Salle MNS;1 plafond;3 W;A1;déposé le mois dernier
Local filtration;1 enceinte;illisible;A1;à revoir, étiquette rongée par le chlore
;;;;
A1 = 60 W, A2 = 240 W, lignes en 100 V;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Piscine du Val Tournis", "Windows-1252; count and kind in one cell, unnamed controls in remarks, one tap illegible, one loudspeaker taken down, ratings of amplifiers below")
		t.Speakers("tap_v=100; line_v=100; amplifier=A1", `rows|room|count|tap_w
4|Hall d'accueil|4|3
5|Caisse|1|1.5
6|Vestiaires F|4|1.5
7|Vestiaires H|4|1.5
11|Infirmerie|1|1.5
13|Local filtration|1|`)
		t.Speakers("tap_v=100; line_v=100; amplifier=A2", `rows|room|count|tap_w
8|Grand bassin|6|15
9|Petit bassin|3|10
10|Pataugeoire|2|6`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w|load_min_w
A1|60||27
A2|240|132|`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|60|
A2|240|132`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Caisse|6|1.5
|Infirmerie|6|1.5`)
		t.Left("", `12|removed|taken down last month`)
		t.Asks("", `13|asked|tap in the filter room`)
	}},

	{File: "belgique/Gare de Brûlecourt as-built.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("HP")
		p.Put("A1", `
Repère|Zone|Emplacement|Nbre|W par HP|Ligne
HP1|Quai 1|abri|2|6|L1
HP2|Quai 1|mâts|6|10|L1
HP3|Quai 2|abri|2|6|L2
HP4|Quai 2|mâts|6|10|L2
HP5|Couloir sous voies|plafond|5|3|L3
HP6|Couloir sous voies|rampe|2|6|L3
HP7|Bâtiment|salle d'attente|4|3|L4
HP8|Bâtiment|guichets|2|1.5|L4
HP9|Bâtiment|bureau|1|1.5|L4
HP10|Bâtiment|toilettes|2|1.5|L4
`)
		p.Bold("A1:F1")
		q := p.Sheet("Lignes 100 V")
		q.Put("A1", `
Ligne|Ampli|Sortie|W sortie|Régleur|W régleur
L1|AMP 1|1|120
L2|AMP 1|2|120
L3|AMP 2|1|60
L4|AMP 2|2|60|VR4|15
`)
		q.Bold("A1:F1")
		r := p.Sheet("Câbles")
		r.Put("A1", `
Gare de Brûlecourt, dossier 1180, carnet de câbles as-built

N°|De|Vers|Section mm²|Longueur (m)
C101|AMP 1|HP1|2x2,5|45
C102|HP1|HP2|2x2,5|120
C103|AMP 1|HP3|2x2,5|70
C104|HP3|HP4|2x2,5|115
C105|AMP 2|HP5|2x1,5|55
C106|HP5|HP6|2x1,5|20
C107|AMP 2|VR4|2x1,5|8
C108|VR4|HP7|2x1,5|18
C109|HP7|HP8|2x1,5|12
C110|HP8|HP9|2x1,5|6.5
C111|HP8|HP10|2x1,5|15
`)
		r.Bold("A1", "A3:E3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("1180", "Gare de Brûlecourt", "three sheets joined by lines and tags; voltage only in a sheet's name, the site only above the cables, a control for a whole line and overloaded by it")
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=AMP 1; channel=1; zone=Quai 1", `rows|tag|room|count|tap_w
2|HP1|abri|2|6
3|HP2|mâts|6|10`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=AMP 1; channel=2; zone=Quai 2", `rows|tag|room|count|tap_w
4|HP3|abri|2|6
5|HP4|mâts|6|10`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=AMP 2; channel=1; zone=Couloir sous voies", `rows|tag|room|count|tap_w
6|HP5|plafond|5|3
7|HP6|rampe|2|6`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=AMP 2; channel=2; zone=Bâtiment; control=VR4", `rows|tag|room|count|tap_w
8|HP7|salle d'attente|4|3
9|HP8|guichets|2|1.5
10|HP9|bureau|1|1.5
11|HP10|toilettes|2|1.5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP 1|1|120|72
AMP 1|2|120|72
AMP 2|1|60|27
AMP 2|2|60|19.5`)
		t.Amplifiers("", `amplifier|load_w
AMP 1|144
AMP 2|46.5`)
		t.Controls("", `control|rated_w|load_w
VR4|15|19.5`)
		t.Lines("", `from|to|length_m|area_mm2
AMP 1|HP1|45|2.5
HP1|HP2|120|2.5
AMP 1|HP3|70|2.5
HP3|HP4|115|2.5
AMP 2|HP5|55|1.5
HP5|HP6|20|1.5
AMP 2|VR4|8|1.5
VR4|HP7|18|1.5
HP7|HP8|12|1.5
HP8|HP9|6.5|1.5
HP8|HP10|15|1.5`)
	}},

	{File: "suisse/jardin botanique concierge.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Jardin botanique des Combettes;;;;;
Haut-parleurs d'appel (100 V), liste du concierge;;;;;
;;;;;
Secteur;Endroit;Nbre;Puiss. pce;Ampli;Remarque
Serres;Serre froide;4;6 W;P1;
;Serre chaude;6;6 W;P1;
;Couloir des semis;2;3 W;P1;
Pavillon;Réception;2;3 W;P2;réglage mural R1
;Salle de cours;4;3 W;P2;réglage mural R2
;Herbier;1;1.5 W;P2;réglage mural R3
;Vestiaire jardiniers;1;1.5 W;P2;
Extérieur;Rocaille;3;10 W;P1;
;Étang;2;10 W;P1;
;Parking;2;10 W;P1;
;;;;;
R1 12 W / R2 24 W / R3 6 W;;;;;
P1 240 W / P2 60 W;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Jardin botanique des Combettes", "areas named once and blank below; ratings of controls and amplifiers in two lines at the foot")
		t.Speakers("tap_v=100; line_v=100; zone=Serres; amplifier=P1", `rows|room|count|tap_w
5|Serre froide|4|6
6|Serre chaude|6|6
7|Couloir des semis|2|3`)
		t.Speakers("tap_v=100; line_v=100; zone=Pavillon; amplifier=P2", `rows|room|count|tap_w|control
8|Réception|2|3|R1
9|Salle de cours|4|3|R2
10|Herbier|1|1.5|R3
11|Vestiaire jardiniers|1|1.5|`)
		t.Speakers("tap_v=100; line_v=100; zone=Extérieur; amplifier=P1", `rows|room|count|tap_w
12|Rocaille|3|10
13|Étang|2|10
14|Parking|2|10`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
P1|240|136
P2|60|21`)
		t.Amplifiers("", `amplifier|rated_w|load_w
P1|240|136
P2|60|21`)
		t.Controls("", `control|rated_w|load_w
R1|12|6
R2|24|12
R3|6|1.5`)
	}},

	{File: "quebec/2016-31 aréna tel que construit.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Haut-parleurs")
		p.Put("A1", `
Aréna du Grand-Détour, tel que construit||||||Projet 2016-31
Réseau 70 V

Zone|Local|Qté|Type|Tap (W)|Ampli|Canal|Contrôle de volume
Glace|Côté est|5|cornet|30|AMP-1|1
Glace|Côté ouest|5|cornet|30|AMP-1|1
Gradins|Sections A à D|8|boîte|10|AMP-1|2
Gradins|Sections E à H|8|boîte|10|AMP-1|2
Hall|Entrée|4|plafond|5|AMP-2|1
Hall|Billetterie|1|plafond|2.5|AMP-2|1|CV-1
Hall|Bureau du gérant|1|plafond|2.5|AMP-2|1|CV-2
Vestiaires|Chambres des joueurs|4|plafond|5|AMP-2|2
Vestiaires|Corridor|6|plafond|2.5|AMP-2|2
Vestiaires|Chambre des arbitres|1|plafond|2.5|AMP-2|2|CV-3
|Total|43
`)
		p.Bold("A1", "A4:H4", "B15:C15")
		q := p.Sheet("Amplis et volumes")
		q.Put("A1", `
Ampli|Canal|W à 70 V||Volume|W
AMP-1|1|400||CV-1|10
AMP-1|2|200||CV-2|10
AMP-2|1|60||CV-3|10
AMP-2|2|60
`)
		q.Bold("A1:F1")
		r := p.Sheet("Filage")
		r.Put("A1", `
De|À|Calibre|Longueur (pi)
AMP-1|Côté est|12 AWG|210
Côté est|Côté ouest|12 AWG|130
AMP-1|Sections A à D|14 AWG|165
Sections A à D|Sections E à H|14 AWG|150
AMP-2|Entrée|16 AWG|80
Entrée|CV-1|18 AWG|35
Entrée|CV-2|18 AWG|60
AMP-2|Corridor|16 AWG|110
Corridor|CV-3|18 AWG|25
`)
		r.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2016-31", "Aréna du Grand-Détour", "70 V, feet and gauges; outputs and controls side by side on the second sheet, cables on the third")
		t.Speakers("sheet=Haut-parleurs; tap_v=70.7; line_v=70.7; zone=Glace; amplifier=AMP-1; channel=1", `rows|room|count|tap_w
5|Côté est|5|30
6|Côté ouest|5|30`)
		t.Speakers("sheet=Haut-parleurs; tap_v=70.7; line_v=70.7; zone=Gradins; amplifier=AMP-1; channel=2", `rows|room|count|tap_w
7|Sections A à D|8|10
8|Sections E à H|8|10`)
		t.Speakers("sheet=Haut-parleurs; tap_v=70.7; line_v=70.7; zone=Hall; amplifier=AMP-2; channel=1", `rows|room|count|tap_w|control
9|Entrée|4|5|
10|Billetterie|1|2.5|CV-1
11|Bureau du gérant|1|2.5|CV-2`)
		t.Speakers("sheet=Haut-parleurs; tap_v=70.7; line_v=70.7; zone=Vestiaires; amplifier=AMP-2; channel=2", `rows|room|count|tap_w|control
12|Chambres des joueurs|4|5|
13|Corridor|6|2.5|
14|Chambre des arbitres|1|2.5|CV-3`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
AMP-1|1|400|300
AMP-1|2|200|160
AMP-2|1|60|25
AMP-2|2|60|37.5`)
		t.Amplifiers("", `amplifier|load_w
AMP-1|460
AMP-2|62.5`)
		t.Controls("", `control|rated_w|load_w
CV-1|10|2.5
CV-2|10|2.5
CV-3|10|2.5`)
		t.Lines("", `from|to|length_m|area_mm2
AMP-1|Côté est|64.008|3.309
Côté est|Côté ouest|39.624|3.309
AMP-1|Sections A à D|50.292|2.081
Sections A à D|Sections E à H|45.72|2.081
AMP-2|Entrée|24.384|1.309
Entrée|CV-1|10.668|0.823
Entrée|CV-2|18.288|0.823
AMP-2|Corridor|33.528|1.309
Corridor|CV-3|7.62|0.823`)
		t.Left("Haut-parleurs", `15|total|pieces`)
	}},

	{File: "quebec/ecole secondaire interphone.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(`École secondaire du Ruisseau-Vert,interphone général,70 volts,,,
Local,Bloc,Nb HP,Watts/HP,Atténuateur,Circuit
Entrée principale,A,2,"2,5",,1
Corridor,A,6,"2,5",,1
A-101,A,1,1,,1
A-102,A,1,1,,1
A-103,A,1,1,,1
Secrétariat,A,1,1,AT-S (10 W),1
Gymnase,B,4,10,AT-G (50 W),2
Vestiaire garçons,B,2,"2,5",,2
Vestiaire filles,B,2,"2,5",,2
Agora,C,6,5,,1
Bibliothèque,C,4,"2,5",AT-B (25 W),2
Quai des autobus,Ext.,3,15,,2
,,,,,
"Un seul ampli, 250 W, pour les deux circuits",,,,,
`)
	}, Truth: func(t *typed.Truth) {
		t.Is("", "École secondaire du Ruisseau-Vert", "70 V; commas with quoted decimal commas, ratings of controls in brackets, two circuits on one unnamed amplifier of which only the frame is rated")
		t.Speakers("tap_v=70.7; line_v=70.7; zone=A; channel=1", `rows|room|count|tap_w|control
3|Entrée principale|2|2.5|
4|Corridor|6|2.5|
5|A-101|1|1|
6|A-102|1|1|
7|A-103|1|1|
8|Secrétariat|1|1|AT-S`)
		t.Speakers("tap_v=70.7; line_v=70.7; zone=B; channel=2", `rows|room|count|tap_w|control
9|Gymnase|4|10|AT-G
10|Vestiaire garçons|2|2.5|
11|Vestiaire filles|2|2.5|`)
		t.Speakers("tap_v=70.7; line_v=70.7; zone=C", `rows|room|count|tap_w|control|channel
12|Agora|6|5||1
13|Bibliothèque|4|2.5|AT-B|2`)
		t.Speakers("tap_v=70.7; line_v=70.7; zone=Ext.; channel=2", `rows|room|count|tap_w
14|Quai des autobus|3|15`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
|1||54
|2||105`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|250|159`)
		t.Controls("", `control|rated_w|load_w
AT-S|10|1
AT-G|50|40
AT-B|25|10`)
	}},

	{File: "affaires/Théâtre Corderie fiche service.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Fiche")
		p.Put("A1", `
Théâtre de la Corderie-Basse, sonorisation de service (ligne 100 V)

Zone|Hall|Foyer haut|Loges|Coulisses|Atelier décors|Bureaux
Type de HP|plafond|plafond|plafond|mural|pavillon|plafond
Nombre|6|8|7|4|2|5
Réglage par HP (W)|3|3|1.5|6|10|1.5
Total (W)|18|24|10.5|24|20|7.5
Ampli|A1|A1|A2|A2|A2|A1
Sortie|1|2|1|1|2|1
Atténuateur||ATT 1|ATT 2|||ATT 3
Tenue att. (W)||36|24|||12
Câble (mm²)|2x1,5|2x1,5|2x1,5|2x1,5|2x2,5|2x1,5
Longueur (m)|25|40|62|35|80|28

Sorties de A1 et A2 : 60 W chacune
`)
		p.Bold("A1", "A3:A13", "B3:G3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Théâtre de la Corderie-Basse", "table turned on its side, a column a zone; outputs rated in a sentence below")
		t.Speakers("sheet=Fiche; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|channel|control
B|Hall|6|3|A1|1|
C|Foyer haut|8|3|A1|2|ATT 1
D|Loges|7|1.5|A2|1|ATT 2
E|Coulisses|4|6|A2|1|
F|Atelier décors|2|10|A2|2|
G|Bureaux|5|1.5|A1|1|ATT 3`)
		t.Channels("line_v=100; rated_w=60", `amplifier|channel|load_w
A1|1|25.5
A1|2|24
A2|1|34.5
A2|2|20`)
		t.Amplifiers("", `amplifier|load_w
A1|49.5
A2|54.5`)
		t.Controls("", `control|zone|rated_w|load_w
ATT 1|Foyer haut|36|24
ATT 2|Loges|24|10.5
ATT 3|Bureaux|12|7.5`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Hall|25|1.5
Foyer haut|40|1.5
Loges|62|1.5
Coulisses|35|1.5
Atelier décors|80|2.5
Bureaux|28|1.5`)
	}},

	{File: "maintenance/Eclairage halle sportive.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Luminaires")
		p.Put("A1", `
Halle sportive des Trois Ponts, éclairage, relevé pour remplacement LED

Zone|Local|Luminaire|Qté|W unitaire|W total|Circuit|Variateur
Salle|Aire de jeu|projecteur à décharge|24|400|9600|C1
Salle|Gradins|tube fluo double|12|116|1392|C2
Vestiaires|Vestiaires 1 à 4|tube fluo étanche|8|58|464|C3
Vestiaires|Couloir|hublot|6|26|156|C3
Hall|Entrée|plafonnier|8|36|288|C4|V1 (500 W)
Hall|Secrétariat|plafonnier|2|36|72|C4
Hall|Salle de réunion|plafonnier|4|36|144|C4|V2 (300 W)
Extérieur|Parking|lampadaire|5|150|750|C5
||Total|69||12866

Tableau général 230 V, disjoncteurs 16 A
`)
		p.Bold("A1", "A3:H3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Halle sportive des Trois Ponts", "lamps with watts, circuits and dimmers; no loudspeaker")
	}},
}
