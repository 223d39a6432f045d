package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

var maitrise = []typed.Case{
	// The assistant of a small electrical firm in Anjou types the hand-over file from the fitter's marked-up plan, one row a loudspeaker.
	{File: "doe/Piscine de la Grève HP.xlsx", Kind: "schedule", Book: func() *excelize.File {
		c := typed.NewBook("Page de garde")
		c.Put("B3", `
DOSSIER DES OUVRAGES EXÉCUTÉS

Opération|Piscine de la Grève
Lot|14 courants faibles
Affaire|'23-118
Objet|Sonorisation, lignes 100 V
Indice|B
`)
		c.Bold("B3", "B5:B9")
		p := c.Sheet("HP")
		p.Put("A1", `
Repère|Zone|Local|Type|Prise (W)|Ampli|Ligne|Potentiomètre
HP01|Accueil|Hall|plafonnier|6|A1|L1|
HP02|Accueil|Hall|plafonnier|6|A1|L1|
HP03|Accueil|Hall|plafonnier|6|A1|L1|
HP04|Accueil|Caisse|plafonnier|3|A1|L1|P1
HP05|Accueil|Bureau MNS|plafonnier|1.5|A1|L1|P2
HP06|Accueil|Infirmerie|plafonnier|1.5|A1|L1|P3
HP07|Grand bassin|Plage nord|projecteur|20|A2|L2|
HP08|Grand bassin|Plage nord|projecteur|20|A2|L2|
HP09|Grand bassin|Plage nord|projecteur|20|A2|L2|
HP10|Grand bassin|Plage sud|projecteur|20|A2|L2|
HP11|Grand bassin|Plage sud|projecteur|20|A2|L2|
HP12|Grand bassin|Plage sud|projecteur|20|A2|L2|
HP13|Petit bassin|Petit bassin|projecteur|10|A2|L3|
HP14|Petit bassin|Petit bassin|projecteur|10|A2|L3|
HP15|Petit bassin|Pataugeoire|projecteur|10|A2|L3|
HP16|Vestiaires|Vestiaire femmes|plafonnier|3|A1|L4|
HP17|Vestiaires|Vestiaire femmes|plafonnier|3|A1|L4|
HP18|Vestiaires|Vestiaire hommes|plafonnier|3|A1|L4|
HP19|Vestiaires|Vestiaire hommes|plafonnier|3|A1|L4|
HP20|Petit bassin|Gradins|colonne|15|A2|L3|
HP21|Petit bassin|Gradins|colonne|15|A2|L3|
`)
		p.Bold("A1:H1")
		q := p.Sheet("Amplis et potentiomètres")
		q.Put("A1", `
Ampli|Puissance|Lignes|Emplacement
A1|2 x 120 W|L1, L4|baie, local technique
A2|2 x 240 W|L2, L3|baie, local technique

Potentiomètre|Local|Puissance max
P1|Caisse|6 W
P2|Bureau MNS|6 W
P3|Infirmerie|6 W
`)
		q.Bold("A1:D1", "A5:C5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("23-118", "Piscine de la Grève", "plain; job and voltage on a cover sheet, a row a loudspeaker, amplifiers and potentiometers on a third sheet")
		t.Revision("B", false)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; zone=Accueil; amplifier=A1; channel=L1", `rows|tag|room|tap_w|control
2..4|HP01..|Hall|6|
5|HP04|Caisse|3|P1
6|HP05|Bureau MNS|1.5|P2
7|HP06|Infirmerie|1.5|P3`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; zone=Grand bassin; amplifier=A2; channel=L2", `rows|tag|room|tap_w
8..10|HP07..|Plage nord|20
11..13|HP10..|Plage sud|20`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; zone=Petit bassin; amplifier=A2; channel=L3", `rows|tag|room|tap_w
14..15|HP13..|Petit bassin|10
16|HP15|Pataugeoire|10
21..22|HP20..|Gradins|15`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; zone=Vestiaires; amplifier=A1; channel=L4", `rows|tag|room|tap_w
17..18|HP16..|Vestiaire femmes|3
19..20|HP18..|Vestiaire hommes|3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A1|L1|120|24
A1|L4|120|12
A2|L2|240|120
A2|L3|240|60`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|240|36
A2|480|180`)
		t.Controls("", `control|rated_w|load_w
P1|6|3
P2|6|1.5
P3|6|1.5`)
	}},

	// A quantity surveyor of a Belgian design office draws up the summary of quantities that bidders fill in with prices.
	{File: "metre/biblio art 67.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Commune de Grandpreux;;;;;;;;
Bibliothèque communale - métré récapitulatif;;;;;;;;
Dossier 2019/44 - art. 67 Sonorisation en ligne 100 V;;;;;;;;
;;;;;;;;
N°;Libellé;Local;U;QF;Réglage (W);Zone;PU (€);Total (€)
67.11;Haut-parleur encastré;Salle de lecture;pc;8;3;Z1;;
67.12;Haut-parleur encastré;Section jeunesse;pc;4;3;Z2;;
67.13;Haut-parleur encastré;Hall d'entrée;pc;3;6;Z3;;
67.14;Haut-parleur encastré;Toilettes;pc;2;1,5;Z3;;
67.15;Haut-parleur apparent;Réserve;pc;2;3;Z3;;
67.16;Haut-parleur apparent;Auditoire;pc;4;10;Z4;;
67.21;Amplificateur AMP1, 4 x 60 W, sorties Z1, Z2, Z3 et Z4;Local serveur;pc;1;;;;
67.31;Atténuateur AT1 36 W;Salle de lecture;pc;1;;Z1;;
67.32;Atténuateur AT2 24 W;Section jeunesse;pc;1;;Z2;;
67.33;Atténuateur AT3 60 W;Auditoire;pc;1;;Z4;;
67.41;Câble 2 x 1,5 mm²;;m;65;;Z1;;
67.42;Câble 2 x 1,5 mm²;;m;40;;Z2;;
67.43;Câble 2 x 1,5 mm²;;m;55;;Z3;;
67.44;Câble 2 x 2,5 mm²;;m;80;;Z4;;
67.51;Mise en service et mesure d'impédance;;PG;1;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("2019/44", "Bibliothèque communale", "plain Belgian bill of quantities; loudspeakers, amplifier, attenuators and cables are items of one list, prices left blank")
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP1", `rows|zone|room|count|tap_w|channel|control
6|Z1|Salle de lecture|8|3|Z1|AT1
7|Z2|Section jeunesse|4|3|Z2|AT2
8|Z3|Hall d'entrée|3|6|Z3|
9|Z3|Toilettes|2|1.5|Z3|
10|Z3|Réserve|2|3|Z3|
11|Z4|Auditoire|4|10|Z4|AT3`)
		t.Channels("line_v=100; amplifier=AMP1; rated_w=60", `channel|load_w
Z1|24
Z2|12
Z3|27
Z4|40`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP1|240|103`)
		t.Controls("", `control|zone|rated_w|load_w
AT1|Z1|36|24
AT2|Z2|24|12
AT3|Z4|60|40`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Z1|65|1.5
Z2|40|1.5
Z3|55|1.5
Z4|80|2.5`)
		t.Left("", `20|other|commissioning`)
	}},

	// The caretaker of a school in Vaud was asked by the commune what hangs in his buildings; he walked round with a ladder.
	{File: "commune/College des Tilleuls HP.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Feuil1")
		p.Put("A1", `
Collège des Tilleuls, gong et annonces
Relevé du concierge pour la commune, octobre 2016
1 ampli de 250 W au secrétariat, ligne 100 V

Bâtiment|Local|Nbre de HP|Réglé sur|Potentiomètre
A|Corridor rez|4|6 W|non
|Corridor 1er|4|6 W|non
|Salle des maîtres|2|3 W|oui, 10 W
|Classes 1 à 8|8|1,5 W|non
|Aula|6|6 W|oui, 50 W
B|Corridor|3|6 W|non
|Classes 11 à 16|6|1,5 W|non
|Travaux manuels|1|6 W|non
Halle|Halle de gym|4|15 W|oui, 100 W
|Vestiaires|4|3 W|non
Préau|Préau couvert|2|10 W|non
Total||44||
`)
		p.Merge("A6:A10", "A11:A13", "A14:A15")
		p.Bold("A1", "A5:E5", "A17:C17")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Collège des Tilleuls", "buildings in merged cells, the only amplifier in a sentence, a potentiometer without a name where the row says yes")
		t.Speakers("sheet=Feuil1; tap_v=100; line_v=100; zone=A", `rows|room|count|tap_w|note
6|Corridor rez|4|6|
7|Corridor 1er|4|6|
8|Salle des maîtres|2|3|unnamed
9|Classes 1 à 8|8|1.5|
10|Aula|6|6|unnamed`)
		t.Speakers("sheet=Feuil1; tap_v=100; line_v=100; zone=B", `rows|room|count|tap_w
11|Corridor|3|6
12|Classes 11 à 16|6|1.5
13|Travaux manuels|1|6`)
		t.Speakers("sheet=Feuil1; tap_v=100; line_v=100; zone=Halle", `rows|room|count|tap_w|note
14|Halle de gym|4|15|unnamed
15|Vestiaires|4|3|`)
		t.Speakers("sheet=Feuil1; tap_v=100; line_v=100; zone=Préau", `rows|room|count|tap_w
16|Préau couvert|2|10`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|250|227`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|250|227`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|A|10|6
|A|50|36
|Halle|100|60`)
		t.Left("Feuil1", `17|total|sum`)
	}},

	// A Quebec electrical foreman hands in the as-built list of an arena; he types in capitals and measures in feet.
	{File: "tel que construit/2104 ARENA.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("HAUT-PARLEURS")
		p.Put("A1", `
ARÉNA DES ÉRABLES - SONO 70 V - TEL QUE CONSTRUIT
PROJET 2104

MODÈLE|ZONE|ENDROIT|QTÉ|TAP|AMPLI-CANAL|VOLUME
CORNET|GLACE|CÔTÉ NORD|4|30 W|AMP1-A|
CORNET|GLACE|CÔTÉ SUD|4|30 W|AMP1-A|
COLONNE|ESTRADES|EST|6|15 W|AMP1-B|
COLONNE|ESTRADES|OUEST|5|15 W|AMP1-B|
PLAFOND|HALL|ENTRÉE|4|5 W|AMP2-A|VOL-1
PLAFOND|HALL|BILLETTERIE|1|2.5 W|AMP2-A|VOL-2
PLAFOND|CHAMBRES|CHAMBRE 1|2|2.5 W|AMP2-B|VOL-3
PLAFOND|CHAMBRES|CHAMBRE 2|2|2.5 W|AMP2-B|VOL-4
PLAFOND|CHAMBRES|CHAMBRE 3|2|2.5 W|AMP2-B|VOL-5
PLAFOND|CHAMBRES|CHAMBRE 4|2|2.5 W|AMP2-B|VOL-6
PLAFOND|CHAMBRES|ARBITRES|1|2.5 W|AMP2-B|
CORNET|GARAGE|SURFACEUSE|1|7.5 W|AMP2-B|

AMP1 = 2 X 300 W, AMP2 = 2 X 60 W
VOL-1 = 35 W, VOL-2 À VOL-6 = 10 W CHACUN
`)
		p.Bold("A1", "A4:G4")
		q := p.Sheet("FILAGE")
		q.Put("A1", `
CÂBLE|DE|À|CALIBRE|LONGUEUR (PI)
C1|AMP1-A|GLACE|2C #12 AWG|310
C2|AMP1-B|ESTRADES|2C #14 AWG|265
C3|AMP2-A|HALL|2C #16 AWG|140
C4|AMP2-B|CHAMBRES|2C #16 AWG|190
C5|AMP2-B|GARAGE|2C #16 AWG|95
`)
		q.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2104", "ARÉNA DES ÉRABLES", "plain; 70 V, feet and AWG, ratings of amplifiers and of a range of controls in two lines below")
		t.Speakers("sheet=HAUT-PARLEURS; tap_v=70.7; line_v=70.7", `rows|model|zone|room|count|tap_w|amplifier|channel|control
5|CORNET|GLACE|CÔTÉ NORD|4|30|AMP1|A|
6|CORNET|GLACE|CÔTÉ SUD|4|30|AMP1|A|
7|COLONNE|ESTRADES|EST|6|15|AMP1|B|
8|COLONNE|ESTRADES|OUEST|5|15|AMP1|B|
9|PLAFOND|HALL|ENTRÉE|4|5|AMP2|A|VOL-1
10|PLAFOND|HALL|BILLETTERIE|1|2.5|AMP2|A|VOL-2
11|PLAFOND|CHAMBRES|CHAMBRE 1|2|2.5|AMP2|B|VOL-3
12|PLAFOND|CHAMBRES|CHAMBRE 2|2|2.5|AMP2|B|VOL-4
13|PLAFOND|CHAMBRES|CHAMBRE 3|2|2.5|AMP2|B|VOL-5
14|PLAFOND|CHAMBRES|CHAMBRE 4|2|2.5|AMP2|B|VOL-6
15|PLAFOND|CHAMBRES|ARBITRES|1|2.5|AMP2|B|
16|CORNET|GARAGE|SURFACEUSE|1|7.5|AMP2|B|`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
AMP1|A|300|240
AMP1|B|300|165
AMP2|A|60|22.5
AMP2|B|60|30`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP1|600|405
AMP2|120|52.5`)
		t.Controls("", `control|rated_w|load_w
VOL-1|35|20
VOL-2|10|2.5
VOL-3|10|5
VOL-4|10|5
VOL-5|10|5
VOL-6|10|5`)
		t.Lines("", `line|zone|from|to|length_m|area_mm2
C1|GLACE|AMP1-A|GLACE|94.488|3.309
C2|ESTRADES|AMP1-B|ESTRADES|80.772|2.081
C3|HALL|AMP2-A|HALL|42.672|1.309
C4|CHAMBRES|AMP2-B|CHAMBRES|57.912|1.309
C5|GARAGE|AMP2-B|GARAGE|28.956|1.309`)
	}},

	// The equipment manager of a transport authority keeps one register of all stations, a contract number each, and exports it for the yearly tender.
	{File: "patrimoine/registre gares.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(`N° affaire;Gare;Emplacement;Nb HP;Prise (W);Ligne (V);Ampli;P ampli (W);Observation
S14;Pontrevel;Quai 1;8;5;100;A1;120;
S14;Pontrevel;Quai 2;8;5;100;A1;120;
S14;Pontrevel;Hall;4;3;100;A2;60;
S14;Pontrevel;Guichet;1;1,5;100;A2;60;
S14;Pontrevel;Passage souterrain;3;5;100;A2;60;ajoutés en 2019
S22;Valbruyère;Quai unique;6;5;100;A1;60;
S22;Valbruyère;Hall;2;3;100;A1;60;
S22;Valbruyère;Ancienne consigne;2;3;100;A1;60;déposés en 05/2021
S22;Valbruyère;Parvis;2;10;100;A1;60;prévus en 2024, pas encore posés
S31;Les Essarts-Moulins;Quai A;10;5;100;A1;120;
S31;Les Essarts-Moulins;Quai B;10;5;100;A1;120;
S31;Les Essarts-Moulins;Abri vélos;1;10;100;A1;120;
S31;Les Essarts-Moulins;Magasin;2;5;;;;stock de rechange
`)
	}, Truth: func(t *typed.Truth) {
		t.Is("S14", "Pontrevel", "a register of three stations; the same amplifier names in each; dismantled, planned and spare ones by remark")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|amplifier
2|Quai 1|8|5|A1
3|Quai 2|8|5|A1
4|Hall|4|3|A2
5|Guichet|1|1.5|A2
6|Passage souterrain|3|5|A2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|120|80
A2|60|28.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|120|80
A2|60|28.5`)
		t.Also("S22", "Valbruyère", "two rows that are not installed")
		t.Speakers("tap_v=100; line_v=100; amplifier=A1", `rows|room|count|tap_w
7|Quai unique|6|5
8|Hall|2|3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|60|36`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|60|36`)
		t.Left("", `9|removed|dismantled 05/2021
10|future|planned for 2024`)
		t.Also("S31", "Les Essarts-Moulins", "spares in the store")
		t.Speakers("tap_v=100; line_v=100; amplifier=A1", `rows|room|count|tap_w
11|Quai A|10|5
12|Quai B|10|5
13|Abri vélos|1|10`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|120|110`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|120|110`)
		t.Left("", `14|spare|stock`)
	}},
}
