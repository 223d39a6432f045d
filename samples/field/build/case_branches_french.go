package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// branchesFrench are branch offices of the same firm, in French.
var branchesFrench = []typed.Case{
	// récolement by a project engineer, one sheet
	{File: "branches/agence Ouest/DOE médiathèque Brévent - liste HP.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("HP")
		p.Put("A1", `
MEDIATHEQUE DU BREVENT||||||Affaire 2016-048
Liste des haut-parleurs après récolement - lignes 100 V
||
Rep.|Niveau|Local|Type de HP|Nb|Réglage transfo (W)|Pot.|Ampli / voie
HP1|RDC|Sas d'entrée|plafonnier|1|3||A1 / 1
HP2|RDC|Accueil|plafonnier|4|6||A1 / 1
HP3|RDC|Presse|plafonnier|3|3|P1|A1 / 1
HP4|RDC|Jeunesse|plafonnier|6|3|P2|A1 / 2
HP5|RDC|Heure du conte|plafonnier|2|3|P2|A1 / 2
HP6|R+1|Adultes|plafonnier|8|3||A2 / 1
HP7|R+1|Salle de travail|plafonnier|2|1.5|P3|A2 / 1
HP8|R+1|Bureaux|plafonnier|4|1.5|P4|A2 / 1
HP9|R+2|Auditorium|colonne|4|20||A2 / 2
HP10|R+2|Régie|plafonnier|1|6||A2 / 2
HP11|ext.|Parvis|pavillon|2|15||A2 / 2
||
Amplis : A1 = 2 x 60 W, A2 = 2 x 120 W
Potentiomètres : P1, P3 et P4 12 W, P2 36 W
`)
		p.Bold("A1", "A4:H4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2016-048", "MEDIATHEQUE DU BREVENT", "plain; ratings of amplifiers and controls in two sentences at the foot")
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=A1; channel=1", `rows|tag|room|count|tap_w|control
5|HP1|Sas d'entrée|1|3|
6|HP2|Accueil|4|6|
7|HP3|Presse|3|3|P1`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=A1; channel=2; control=P2", `rows|tag|room|count|tap_w
8|HP4|Jeunesse|6|3
9|HP5|Heure du conte|2|3`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=A2; channel=1", `rows|tag|room|count|tap_w|control
10|HP6|Adultes|8|3|
11|HP7|Salle de travail|2|1.5|P3
12|HP8|Bureaux|4|1.5|P4`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=A2; channel=2", `rows|tag|room|count|tap_w
13|HP9|Auditorium|4|20
14|HP10|Régie|1|6
15|HP11|Parvis|2|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A1|1|60|36
A1|2|60|24
A2|1|120|33
A2|2|120|116`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|120|60
A2|240|149`)
		t.Controls("", `control|rated_w|load_w
P1|12|9
P2|36|24
P3|12|3
P4|12|6`)
	}},

	// a price form of a consultant; cables on a second sheet
	{File: "branches/agence Centre/DPGF lot 12 halle aux grains.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("DPGF")
		p.Put("A1", `
HALLE AUX GRAINS DE VAUBRAY - Lot 12 Courants faibles|||||
DPGF sonorisation 100 V|||||
||
Art.|Désignation des ouvrages|U|Qté|P.U. HT|Montant HT
'12.1|Haut-parleurs||||
'12.1.1|Projecteur de son, réglé à 10 W - Grande halle|U|10||
'12.1.2|Projecteur de son, réglé à 6 W - Coursive|U|6||
'12.1.3|HP encastré, réglé à 3 W - Accueil|U|4||
'12.1.4|HP encastré, réglé à 3 W - Salle d'exposition|U|8||
'12.1.5|HP encastré, réglé à 1,5 W - Sanitaires|U|3||
'12.2|Amplificateurs||||
'12.2.1|AMP1, 1 sortie 240 W, pour Grande halle et Coursive|U|1||
'12.2.2|AMP2, 1 sortie 60 W, pour Accueil, Salle d'exposition et Sanitaires|U|1||
'12.3|Commandes||||
'12.3.1|Atténuateur ATT1, 50 W - Salle d'exposition|U|1||
||Total HT|||
`)
		p.Bold("A1", "A4:F4", "A5:B5", "A11:B11", "A14:B14")
		q := p.Sheet("Câbles")
		q.Put("A1", `
Article|De|Vers|Section|ml
'12.4.1|AMP1|Grande halle|2 x 2,5 mm²|90
'12.4.2|Grande halle|Coursive|2 x 2,5 mm²|45
'12.4.3|AMP2|Accueil|2 x 1,5 mm²|20
'12.4.4|Accueil|Salle d'exposition|2 x 1,5 mm²|35
'12.4.5|Accueil|Sanitaires|2 x 1,5 mm²|15
`)
		q.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "HALLE AUX GRAINS DE VAUBRAY", "a price form: type, tap and place inside the description; which amplifier feeds which place stands in the amplifier's item")
		t.Speakers("sheet=DPGF; tap_v=100; line_v=100; amplifier=AMP1", `rows|room|count|tap_w
6|Grande halle|10|10
7|Coursive|6|6`)
		t.Speakers("sheet=DPGF; tap_v=100; line_v=100; amplifier=AMP2", `rows|room|count|tap_w|control
8|Accueil|4|3|
9|Salle d'exposition|8|3|ATT1
10|Sanitaires|3|1.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP1|240|136
AMP2|60|40.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP1|240|136
AMP2|60|40.5`)
		t.Controls("", `control|rated_w|load_w
ATT1|50|24`)
		t.Lines("", `line|from|to|length_m|area_mm2
12.4.1|AMP1|Grande halle|90|2.5
12.4.2|Grande halle|Coursive|45|2.5
12.4.3|AMP2|Accueil|20|1.5
12.4.4|Accueil|Salle d'exposition|35|1.5
12.4.5|Accueil|Sanitaires|15|1.5`)
		t.Left("DPGF", `12|amplifier|AMP1
13|amplifier|AMP2
15|control|ATT1
16|total|total of prices`)
	}},

	// an export of the maintenance data base, loudspeakers only, outputs as codes
	{File: "branches/agence Est/GMAO_equipements_SONO_gare.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Latin1(typed.DOS(`
CODE_SITE;CODE_EQUIP;FAMILLE;LIBELLE;LOCALISATION;ZONE_SONO;PUISSANCE_W;TENSION_V;AMPLI;VOIE;ETAT
GAR07;SON-HP-001;HAUT-PARLEUR;HP pavillon quai 1;Quai 1 nord;QUAI 1;15;100;AMP-01;1;EN SERVICE
GAR07;SON-HP-002;HAUT-PARLEUR;HP pavillon quai 1;Quai 1 centre;QUAI 1;15;100;AMP-01;1;EN SERVICE
GAR07;SON-HP-003;HAUT-PARLEUR;HP pavillon quai 1;Quai 1 sud;QUAI 1;15;100;AMP-01;1;EN SERVICE
GAR07;SON-HP-004;HAUT-PARLEUR;HP pavillon quai 2;Quai 2 nord;QUAI 2;15;100;AMP-01;2;EN SERVICE
GAR07;SON-HP-005;HAUT-PARLEUR;HP pavillon quai 2;Quai 2 centre;QUAI 2;15;100;AMP-01;2;DEPOSE
GAR07;SON-HP-006;HAUT-PARLEUR;HP pavillon quai 2;Quai 2 sud;QUAI 2;10;100;AMP-01;2;EN SERVICE
GAR07;SON-HP-007;HAUT-PARLEUR;HP plafond;Hall voyageurs;HALL;6;100;AMP-02;1;EN SERVICE
GAR07;SON-HP-008;HAUT-PARLEUR;HP plafond;Hall voyageurs;HALL;6;100;AMP-02;1;EN SERVICE
GAR07;SON-HP-009;HAUT-PARLEUR;HP plafond;Hall voyageurs;HALL;6;100;AMP-02;1;EN SERVICE
GAR07;SON-HP-010;HAUT-PARLEUR;HP plafond;Salle d'attente;HALL;3;100;AMP-02;1;EN SERVICE
GAR07;SON-HP-011;HAUT-PARLEUR;HP plafond;Guichet;HALL;1,5;100;AMP-02;1;EN SERVICE
GAR07;SON-HP-012;HAUT-PARLEUR;HP mural;Passage souterrain;SOUTERRAIN;6;100;AMP-02;2;EN SERVICE
GAR07;SON-HP-013;HAUT-PARLEUR;HP mural;Passage souterrain;SOUTERRAIN;6;100;AMP-02;2;EN SERVICE
GAR07;SON-AM-001;AMPLIFICATEUR;AMP-01 2x120 W;Local technique;;;;;;EN SERVICE
GAR07;SON-AM-002;AMPLIFICATEUR;AMP-02 2x60 W;Local technique;;;;;;EN SERVICE
GAR07;SON-MI-001;MICROPHONE;Pupitre d'appel;Guichet;;;;;;EN SERVICE
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "GAR07", "plain export; amplifiers and a microphone in the same table, ratings in their labels; one horn dismantled")
		t.Speakers("tap_v=100; line_v=100; zone=QUAI 1; amplifier=AMP-01; channel=1; tap_w=15", `rows|tag|room
2|SON-HP-001|Quai 1 nord
3|SON-HP-002|Quai 1 centre
4|SON-HP-003|Quai 1 sud`)
		t.Speakers("tap_v=100; line_v=100; zone=QUAI 2; amplifier=AMP-01; channel=2", `rows|tag|room|tap_w
5|SON-HP-004|Quai 2 nord|15
7|SON-HP-006|Quai 2 sud|10`)
		t.Speakers("tap_v=100; line_v=100; zone=HALL; amplifier=AMP-02; channel=1", `rows|tag|room|tap_w
8|SON-HP-007|Hall voyageurs|6
9|SON-HP-008|Hall voyageurs|6
10|SON-HP-009|Hall voyageurs|6
11|SON-HP-010|Salle d'attente|3
12|SON-HP-011|Guichet|1.5`)
		t.Speakers("tap_v=100; line_v=100; zone=SOUTERRAIN; amplifier=AMP-02; channel=2; tap_w=6", `rows|tag|room
13|SON-HP-012|Passage souterrain
14|SON-HP-013|Passage souterrain`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP-01|1|120|45
AMP-01|2|120|25
AMP-02|1|60|22.5
AMP-02|2|60|12`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP-01|240|70
AMP-02|120|34.5`)
		t.Left("", `6|removed|dismantled
15|amplifier|AMP-01
16|amplifier|AMP-02
17|other|microphone`)
	}},

	// a zone list with the loudspeakers as text, several kinds in a cell
	{File: "branches/agence Centre/Jardin botanique - zones.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Zones")
		p.Put("A1", `
Jardin botanique de Sorlande|||||
Tableau des zones de diffusion, ligne 100 V - affaire 7731|||||
||
N°|Zone|Haut-parleurs|Total zone|Sortie ampli|Réglage de volume
1|Grande serre|6 x 10 W + 2 x 6 W|72 W|1|non
2|Serre froide|4 x 6 W|24 W|2|non
3|Orangerie|4 x 6 W + 4 x 3 W|36 W|3|VOL 3, 50 W
4|Billetterie|2 x 3 W|6 W|4|VOL 4, 12 W
5|Pépinière|3 x 10 W|30 W|5|non
6|Allées|8 x 6 W|48 W|6|non
||
Ampli unique 6 sorties, 80 W par sortie
`)
		p.Bold("A1", "A4:F4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("7731", "Jardin botanique de Sorlande", "zone list; counts and taps as text, two kinds in one cell; an amplifier without a name with six outputs, rated at the foot")
		t.Speakers("sheet=Zones; tap_v=100; line_v=100", `rows|zone|count|tap_w|channel|control
5|Grande serre|6|10|1|
5|Grande serre|2|6|1|
6|Serre froide|4|6|2|
7|Orangerie|4|6|3|VOL 3
7|Orangerie|4|3|3|VOL 3
8|Billetterie|2|3|4|VOL 4
9|Pépinière|3|10|5|
10|Allées|8|6|6|`)
		t.Channels("line_v=100; rated_w=80", `amplifier|channel|load_w
|1|72
|2|24
|3|36
|4|6
|5|30
|6|48`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|480|216`)
		t.Controls("", `control|zone|rated_w|load_w
VOL 3|Orangerie|50|36
VOL 4|Billetterie|12|6`)
	}},
}
