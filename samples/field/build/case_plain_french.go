package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// An installer's drawing office, a design office, a service technician, and a stage electrician with another kind of list.
var plainFrench = []typed.Case{
	typed.Case{File: "plain/DOE gare de Valbrune.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Liste HP")
		p.Put("A1", `
Gare de Valbrune - sonorisation - DOE
Affaire 18-226 - lignes 100 V
||
Repère|Zone|Emplacement|Type|Réglage (W)|Ampli|Voie
HP01|Quai 1|Mât 1|pavillon|10|AMP1|1
HP02|Quai 1|Mât 2|pavillon|10|AMP1|1
HP03|Quai 1|Mât 3|pavillon|10|AMP1|1
HP04|Quai 1|Mât 4|pavillon|10|AMP1|1
HP05|Quai 2|Mât 1|pavillon|10|AMP1|2
HP06|Quai 2|Mât 2|pavillon|10|AMP1|2
HP07|Quai 2|Mât 3|pavillon|15|AMP1|2
HP08|Hall|Guichets|plafond|3|AMP2|1
HP09|Hall|Guichets|plafond|3|AMP2|1
HP10|Hall|Entrée|plafond|6|AMP2|1
HP11|Hall|Entrée|plafond|6|AMP2|1
HP12|Salle d'attente|Côté quai|plafond|3|AMP2|2
HP13|Salle d'attente|Côté parvis|plafond|3|AMP2|2
HP14|Souterrain|Escalier quai 1|encastré|6|AMP2|3
HP15|Souterrain|Couloir|encastré|6|AMP2|3
HP16|Souterrain|Escalier quai 2|encastré|6|AMP2|3
`)
		p.Bold("A1", "A4:G4")
		q := p.Sheet("Amplis")
		q.Put("A1", `
Ampli|Voie|Puissance (W)|Zone desservie
AMP1|1|120|Quai 1
AMP1|2|120|Quai 2
AMP2|1|60|Hall
AMP2|2|60|Salle d'attente
AMP2|3|60|Souterrain
`)
		q.Bold("A1:D1")
		r := p.Sheet("Câbles")
		r.Put("A1", `
N°|De|Vers|Section (mm²)|Longueur (m)
C01|Baie|HP01|2.5|60
C02|HP01|HP02|2.5|25
C03|HP02|HP03|2.5|25
C04|HP03|HP04|2.5|25
C05|Baie|HP05|2.5|95
C06|HP05|HP06|2.5|25
C07|HP06|HP07|2.5|30
C08|Baie|HP08|1.5|12
C09|HP08|HP09|1.5|4
C10|HP09|HP10|1.5|14
C11|HP10|HP11|1.5|5
C12|Baie|HP12|1.5|22
C13|HP12|HP13|1.5|8
C14|Baie|HP14|1.5|40
C15|HP14|HP15|1.5|18
C16|HP15|HP16|1.5|18
`)
		r.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("18-226", "Gare de Valbrune", "plain as-built list, a row a loudspeaker, with sheets of amplifiers and of cables from-to")
		t.Speakers("sheet=Liste HP; tap_v=100; line_v=100; zone=Quai 1; amplifier=AMP1; channel=1; tap_w=10", `rows|tag|room
5|HP01|Mât 1
6|HP02|Mât 2
7|HP03|Mât 3
8|HP04|Mât 4`)
		t.Speakers("sheet=Liste HP; tap_v=100; line_v=100; zone=Quai 2; amplifier=AMP1; channel=2", `rows|tag|room|tap_w
9|HP05|Mât 1|10
10|HP06|Mât 2|10
11|HP07|Mât 3|15`)
		t.Speakers("sheet=Liste HP; tap_v=100; line_v=100; zone=Hall; amplifier=AMP2; channel=1", `rows|tag|room|tap_w
12|HP08|Guichets|3
13|HP09|Guichets|3
14|HP10|Entrée|6
15|HP11|Entrée|6`)
		t.Speakers("sheet=Liste HP; tap_v=100; line_v=100; zone=Salle d'attente; amplifier=AMP2; channel=2; tap_w=3", `rows|tag|room
16|HP12|Côté quai
17|HP13|Côté parvis`)
		t.Speakers("sheet=Liste HP; tap_v=100; line_v=100; zone=Souterrain; amplifier=AMP2; channel=3; tap_w=6", `rows|tag|room
18|HP14|Escalier quai 1
19|HP15|Couloir
20|HP16|Escalier quai 2`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|1|120|40
AMP1|2|120|35
AMP2|1|60|18
AMP2|2|60|6
AMP2|3|60|18`)
		t.Amplifiers("", `amplifier|load_w
AMP1|75
AMP2|42`)
		t.Lines("note=from-to run", `line|from|to|area_mm2|length_m
C01|Baie|HP01|2.5|60
C02|HP01|HP02|2.5|25
C03|HP02|HP03|2.5|25
C04|HP03|HP04|2.5|25
C05|Baie|HP05|2.5|95
C06|HP05|HP06|2.5|25
C07|HP06|HP07|2.5|30
C08|Baie|HP08|1.5|12
C09|HP08|HP09|1.5|4
C10|HP09|HP10|1.5|14
C11|HP10|HP11|1.5|5
C12|Baie|HP12|1.5|22
C13|HP12|HP13|1.5|8
C14|Baie|HP14|1.5|40
C15|HP14|HP15|1.5|18
C16|HP15|HP16|1.5|18`)
	}},

	{File: "plain/Patinoire quantités HP.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Quantités")
		p.Put("A1", `
Patinoire du Val d'Orme - dossier 2019-57
Nombre de haut-parleurs par local, ligne 100 V
||
Local|Voie|Plafond 3 W|Plafond 6 W|Projecteur 10 W|Pavillon 15 W
Piste|V1||||8
Gradins|V2|||6|2
Coursives|V2||6||
Hall|V3|4|4||
Vestiaires|V3|6|||
Location de patins|V4|2||1|
Infirmerie|V4|1|||
Bureaux|V4|4|||
Total||17|10|7|10
||
Amplificateur 4 voies : V1 = 240 W, V2 = 120 W, V3 = 60 W, V4 = 60 W
`)
		p.Bold("A1", "A4:F4", "A13:F13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2019-57", "Patinoire du Val d'Orme", "matrix of rooms and kinds with the tap in the heading; ratings of the outputs in one sentence; one output overloaded")
		t.Speakers("sheet=Quantités; tap_v=100; line_v=100", `rows|room|count|tap_w|channel
5|Piste|8|15|V1
6|Gradins|6|10|V2
6|Gradins|2|15|V2
7|Coursives|6|6|V2
8|Hall|4|3|V3
8|Hall|4|6|V3
9|Vestiaires|6|3|V3
10|Location de patins|2|3|V4
10|Location de patins|1|10|V4
11|Infirmerie|1|3|V4
12|Bureaux|4|3|V4`)
		t.Channels("line_v=100", `channel|rated_w|load_w
V1|240|120
V2|120|126
V3|60|54
V4|60|31`)
		t.Amplifiers("", `amplifier|load_w
|331`)
		t.Left("Quantités", `13|total|sums`)
	}},

	{File: "plain/visite musee batellerie.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Latin1(typed.DOS(`
Musée de la Batellerie;;;;;;
Visite de maintenance n° 4471 - sono 100 V;;;;;;
Salle;Haut-parleurs;Nb;Prise (W);Ampli;Atténuateur;Constat
Accueil;plafond;3;3;A1;AT1;RAS
Vestiaire;plafond;1;1,5;A1;;RAS
Salle des cordages;colonne;4;10;A1;;RAS
Salle des moteurs;colonne;4;10;A1;;un HP faible, prise resserrée
Passerelle;encastré;2;6;A1;;RAS
Auditorium;colonne;2;20;A2;AT2;RAS
Atelier enfants;plafond;4;3;A2;AT3;RAS
Réserve;plafond;2;?;A2;;local fermé à clé, prise non vue
Ponton;pavillon;2;15;A2;;à surveiller, oxydation
;;;;;;
Ampli;Puissance;;;;;
A1;120 W;;;;;
A2;120 W;;;;;
;;;;;;
Atténuateur;Puissance admissible;;;;;
AT1;12 W;;;;;
AT2;50 W;;;;;
AT3;12 W;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("4471", "Musée de la Batellerie", "plain service visit with two small tables below; one control exactly full; one tap not seen")
		t.Speakers("tap_v=100; line_v=100; amplifier=A1", `rows|room|count|tap_w|control
4|Accueil|3|3|AT1
5|Vestiaire|1|1.5|
6|Salle des cordages|4|10|
7|Salle des moteurs|4|10|
8|Passerelle|2|6|`)
		t.Speakers("tap_v=100; line_v=100; amplifier=A2", `rows|room|count|tap_w|control
9|Auditorium|2|20|AT2
10|Atelier enfants|4|3|AT3
11|Réserve|2||
12|Ponton|2|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w|load_min_w
A1|120|102.5|
A2|120||82`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|120|102.5
A2|120|`)
		t.Controls("", `control|rated_w|load_w
AT1|12|9
AT2|50|40
AT3|12|12`)
		t.Asks("", `11|asked|tap in the store, which was locked`)
	}},

	{File: "plain/Theatre gradateurs.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Patch")
		p.Put("A1", `
Théâtre des Tilleuls - patch lumière salle et scène
||
Zone|Emplacement|Projecteur|Qté|Puissance (W)|Gradateur|Voie
Face|Perche 1|PC|6|1000|G1|1
Face|Perche 2|découpe|4|1000|G1|2
Contre|Perche 5|PAR|12|500|G1|3
Latéral|Jardin|PC|3|650|G2|1
Latéral|Cour|PC|3|650|G2|2
Salle|Plafonniers|applique|18|60|G2|3
Salle|Escaliers|balise|24|5|G2|4
Foyer|Vestiaire|applique|6|40|G2|5
||
Gradateur|Puissance par voie
G1|5 kW
G2|3 kW
`)
		p.Bold("A1", "A3:G3", "A13:B13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Théâtre des Tilleuls", "stage and house lights on dimmers: zones, watts and channels, but no loudspeakers")
	}},
}
