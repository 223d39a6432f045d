package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Four people who write French: a municipal technician, an estimator, a consultant, a draughting apprentice.
var tradesFrench1 = []typed.Case{

	// France: the technician of an ice rink leaves a sheet for the colleague who stands in during his leave.
	{File: "mairie/patinoire qui est sur quoi.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Sono")
		p.Put("A1", `
Sono de la patinoire du Vieux-Barrage, pour mon remplaçant
L'ampli est dans le local de la surfaceuse. Quatre sorties en 100 V, 120 W chacune.
||
Sortie|Où|Combien de HP|Réglés sur|Ça fait|Pour baisser le son
1|Piste, côté tribune|4|10 W|40 W|
1|Piste, côté vestiaires|4|10 W|40 W|
2|Tribune|6|6 W|36 W|bouton B1 (60 W) dans la cabine
3|Hall et caisse|3|3 W|9 W|bouton B2 (10 W) derrière la porte
3|Location de patins|2|3 W|6 W|
3|Infirmerie|1|1,5 W|1,5 W|
4|Vestiaires 1 à 4|4|3 W|12 W|
4|Couloir des vestiaires|3|3 W|9 W|
||
Ne jamais toucher au réglage derrière les HP de la piste, la nacelle est louée.
`)
		p.Bold("A1", "A4:F4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "patinoire du Vieux-Barrage", "plain; one amplifier without a name, four outputs rated in a sentence, two knobs with their ratings in the last column")
		t.Speakers("sheet=Sono; tap_v=100; line_v=100; channel=1", `rows|room|count|tap_w
5|Piste, côté tribune|4|10
6|Piste, côté vestiaires|4|10`)
		t.Speakers("sheet=Sono; tap_v=100; line_v=100; channel=2", `rows|room|count|tap_w|control
7|Tribune|6|6|B1`)
		t.Speakers("sheet=Sono; tap_v=100; line_v=100; channel=3", `rows|room|count|tap_w|control
8|Hall et caisse|3|3|B2
9|Location de patins|2|3|
10|Infirmerie|1|1.5|`)
		t.Speakers("sheet=Sono; tap_v=100; line_v=100; channel=4", `rows|room|count|tap_w
11|Vestiaires 1 à 4|4|3
12|Couloir des vestiaires|3|3`)
		t.Channels("line_v=100; rated_w=120", `amplifier|channel|load_w
|1|80
|2|36
|3|16.5
|4|21`)
		t.Amplifiers("", `amplifier|load_w
|153.5`)
		t.Controls("", `control|rated_w|load_w
B1|60|36
B2|10|9`)
	}},

	// Québec: an electrical contractor's estimator counts from the plans of a school, taps across, cable in feet.
	{File: "soumissions/23-118 école sono.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Relevé")
		p.Put("A1", `
École secondaire des Épinettes, agrandissement||||||Soum. 23-118
Sonorisation 70 V, relevé sur plans E-201 à E-203
||
Zone|Local|Plafond 2,5 W|Plafond 5 W|Cornet 15 W|Atténuateur|Fil (pi)
Z1|Gymnase|||6||310
Z1|Palestre||4|||140
Z2|Corridor 100|8||||220
Z2|Hall d'entrée||4||AT-1|85
Z3|Bibliothèque|10|||AT-2|190
Z3|Salle d'étude|4|||AT-3|75
Z3|Secrétariat|2|||AT-4|60
Z4|Cour|||3||260
|TOTAL|24|8|9||1340
||
Ampli|Zones desservies|Puissance
A-1|Z1|250 W
A-2|Z2 et Z3|125 W
A-3|Z4|60 W
||
Atténuateur|Capacité
AT-1|35 W
AT-2|35 W
AT-3|10 W
AT-4|10 W
||
Fil : 14 AWG pour Z1 et Z4, 16 AWG pour Z2 et Z3
`)
		p.Merge("A1:F1", "A2:F2")
		p.Bold("A1", "A4:G4", "B13:G13", "A15:C15", "A20:B20")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("23-118", "École secondaire des Épinettes, agrandissement", "taps are the headings of the count columns; amplifiers by zone, attenuator ratings and wire gauges below; feet")
		t.Speakers("sheet=Relevé; tap_v=70.7; line_v=70.7; zone=Z1; amplifier=A-1", `rows|room|count|tap_w
5|Gymnase|6|15
6|Palestre|4|5`)
		t.Speakers("sheet=Relevé; tap_v=70.7; line_v=70.7; zone=Z2; amplifier=A-2", `rows|room|count|tap_w|control
7|Corridor 100|8|2.5|
8|Hall d'entrée|4|5|AT-1`)
		t.Speakers("sheet=Relevé; tap_v=70.7; line_v=70.7; zone=Z3; amplifier=A-2", `rows|room|count|tap_w|control
9|Bibliothèque|10|2.5|AT-2
10|Salle d'étude|4|2.5|AT-3
11|Secrétariat|2|2.5|AT-4`)
		t.Speakers("sheet=Relevé; tap_v=70.7; line_v=70.7; zone=Z4; amplifier=A-3", `rows|room|count|tap_w
12|Cour|3|15`)
		t.Channels("line_v=70.7", `amplifier|rated_w|load_w
A-1|250|110
A-2|125|80
A-3|60|45`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A-1|250|110
A-2|125|80
A-3|60|45`)
		t.Controls("", `control|zone|rated_w|load_w
AT-1|Z2|35|20
AT-2|Z3|35|25
AT-3|Z3|10|10
AT-4|Z3|10|5`)
		t.Lines("note=one length a room", `zone|to|length_m|area_mm2
Z1|Gymnase|94.488|2.081
Z1|Palestre|42.672|2.081
Z2|Corridor 100|67.056|1.309
Z2|Hall d'entrée|25.908|1.309
Z3|Bibliothèque|57.912|1.309
Z3|Salle d'étude|22.86|1.309
Z3|Secrétariat|18.288|1.309
Z4|Cour|79.248|2.081`)
		t.Left("Relevé", `13|total|sums of the columns`)
	}},

	// Belgium: a consultant's table by room with a sheet each for lines, controls and types, as sent with the specification.
	{File: "bureau/2019-44 annexe HP.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("HP par local")
		p.Put("A1", `
Musée des Houillères du Bois-Lambert
Dossier 2019-44, indice B
||
Niveau|Local|Dénomination|Type|Nbre|W/HP|W|Ligne
0|'0.01|Accueil|P6|4|3|12|L1
0|'0.02|Boutique|P6|4|3|12|L1
0|'0.05|Vestiaire|P6|1|1.5|1.5|L1
0|'0.10|Salle des lampes|C10|6|6|36|L2
0|'0.11|Galerie reconstituée|E20|4|10|40|L2
1|'1.01|Auditorium|C10|8|6|48|L3
1|'1.02|Foyer|P6|4|3|12|L3
1|'1.05|Atelier pédagogique|P6|4|3|12|L3
-1|S.02|Réserve|E20|2|10|20|L4
-1|S.03|Quai de déchargement|E20|1|10|10|L4
||Total||38||203.5
`)
		p.Bold("A1", "A4:H4", "C15:G15")
		q := p.Sheet("Lignes")
		q.Put("A1", `
Ligne|Ampli|Sortie|P sortie (W)|Charge (W)|Câble|Longueur (m)
L1|AMP A|1|120|25.5|2x1,5 mm²|45
L2|AMP A|2|120|76|2x2,5 mm²|70
L3|AMP B|1|120|72|2x2,5 mm²|85
L4|AMP B|2|120|30|2x1,5 mm²|60
Tension de ligne : 100 V
`)
		q.Bold("A1:G1")
		r := p.Sheet("Régleurs")
		r.Put("A1", `
Repère|Locaux|Puissance max.
R1|0.01 et 0.02|36 W
R2|'1.01|60 W
R3|'1.05|20 W
`)
		r.Bold("A1:C1")
		s := p.Sheet("Types")
		s.Put("A1", `
Type|Description|Prises du transfo
P6|Plafonnier encastré Ø 165|6 / 3 / 1,5 W
C10|Coffret mural|10 / 6 / 3 W
E20|Projecteur de son IP66|20 / 10 / 5 W
`)
		s.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2019-44", "Musée des Houillères du Bois-Lambert", "plain; lines and controls on sheets of their own, controls by room number; a sheet of types lists the taps a transformer offers")
		t.Revision("B", false)
		t.Speakers("sheet=HP par local; tap_v=100; line_v=100; amplifier=AMP A; channel=1", `rows|room|count|tap_w|control
5|Accueil|4|3|R1
6|Boutique|4|3|R1
7|Vestiaire|1|1.5|`)
		t.Speakers("sheet=HP par local; tap_v=100; line_v=100; amplifier=AMP A; channel=2", `rows|room|count|tap_w
8|Salle des lampes|6|6
9|Galerie reconstituée|4|10`)
		t.Speakers("sheet=HP par local; tap_v=100; line_v=100; amplifier=AMP B; channel=1", `rows|room|count|tap_w|control
10|Auditorium|8|6|R2
11|Foyer|4|3|
12|Atelier pédagogique|4|3|R3`)
		t.Speakers("sheet=HP par local; tap_v=100; line_v=100; amplifier=AMP B; channel=2", `rows|room|count|tap_w
13|Réserve|2|10
14|Quai de déchargement|1|10`)
		t.Channels("line_v=100; rated_w=120", `amplifier|channel|load_w
AMP A|1|25.5
AMP A|2|76
AMP B|1|72
AMP B|2|30`)
		t.Amplifiers("", `amplifier|load_w
AMP A|101.5
AMP B|102`)
		t.Controls("", `control|rated_w|load_w
R1|36|24
R2|60|48
R3|20|12`)
		t.Lines("note=one length a line", `line|length_m|area_mm2
L1|45|1.5
L2|70|2.5
L3|85|2.5
L4|60|1.5`)
		t.Left("HP par local", `15|total|sums`)
	}},

	// Switzerland: an apprentice in a drawing office draws up the cable list from loudspeaker to loudspeaker; the taps are on a second sheet.
	{File: "dessin/7714 serre liste de câbles.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Câbles")
		p.Put("A1", `
Affaire 7714|Serre tempérée du jardin botanique de Prévonloz
||
N°|De|Vers|Section [mm²]|Long. [m]
C101|AMP1/1|HP11|2 x 1,5|28
C102|HP11|HP12|2 x 1,5|6
C103|HP12|HP13|2 x 1,5|15
C104|HP13|RV1|2 x 1,5|9
C105|RV1|HP14|2 x 1,5|5
C106|HP14|HP15|2 x 1,5|5
C201|AMP1/2|HP21|2 x 2,5|55
C202|HP21|HP22|2 x 2,5|12
C203|HP22|HP23|2 x 2,5|12
C204|HP23|HP24|2 x 2,5|12
C205|HP24|HP25|2 x 2,5|31
||
AMP1 : deux sorties 100 V de 60 W
RV1 : régulateur de volume 12 W, pour la salle de lecture
`)
		p.Bold("A1:B1", "A3:E3")
		q := p.Sheet("HP")
		q.Put("A1", `
Repère|Local|Prise [W]|Sortie
HP11|Entrée|6|AMP1/1
HP12|Entrée|6|AMP1/1
HP13|Salle des cactées|6|AMP1/1
HP14|Salle de lecture|3|AMP1/1
HP15|Salle de lecture|3|AMP1/1
HP21|Grande serre|10|AMP1/2
HP22|Grande serre|10|AMP1/2
HP23|Grande serre|10|AMP1/2
HP24|Grande serre|10|AMP1/2
HP25|Quai de livraison|10|AMP1/2
`)
		q.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("7714", "Serre tempérée du jardin botanique de Prévonloz", "cable list from tag to tag with a volume control in the chain; taps on the second sheet; ratings in two sentences")
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=AMP1; channel=1", `rows|tag|room|tap_w|control
2|HP11|Entrée|6|
3|HP12|Entrée|6|
4|HP13|Salle des cactées|6|
5|HP14|Salle de lecture|3|RV1
6|HP15|Salle de lecture|3|RV1`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=AMP1; channel=2", `rows|tag|room|tap_w
7..10|HP21..|Grande serre|10
11|HP25|Quai de livraison|10`)
		t.Channels("line_v=100; amplifier=AMP1; rated_w=60", `channel|load_w
1|24
2|50`)
		t.Amplifiers("", `amplifier|load_w
AMP1|74`)
		t.Controls("", `control|rated_w|load_w
RV1|12|6`)
		t.Lines("note=from-to", `line|from|to|length_m|area_mm2
C101|AMP1/1|HP11|28|1.5
C102|HP11|HP12|6|1.5
C103|HP12|HP13|15|1.5
C104|HP13|RV1|9|1.5
C105|RV1|HP14|5|1.5
C106|HP14|HP15|5|1.5
C201|AMP1/2|HP21|55|2.5
C202|HP21|HP22|12|2.5
C203|HP22|HP23|12|2.5
C204|HP23|HP24|12|2.5
C205|HP24|HP25|31|2.5`)
	}},
}
