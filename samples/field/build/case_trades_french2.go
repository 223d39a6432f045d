package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Four more who write French: a loss adjuster, a railway office, a bidder, a maintenance database.
var tradesFrench2 = []typed.Case{

	// France: a loss adjuster lists what the water in a theatre reached, with the state of each item.
	{File: "expertise/24-0871 inventaire sono.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Constat")
		p.Put("B2", `
Théâtre du Vieux-Lavoir, dégât des eaux|||||Sinistre 24-0871
Inventaire de la sonorisation d'appel (ligne 100 V), visite du 14 mars
||
Pos.|Local|Objet|Qté|Puissance prise|État constaté|Suite
1|Foyer du public|haut-parleur encastré|4|6 W|sec, en service|conserver
2|Vestiaire du public|haut-parleur encastré|2|3 W|sec, en service|conserver
3|Couloir des loges|haut-parleur encastré|4|3 W|sec, en service|conserver
4|Loges 1 à 3|haut-parleur mural|3|3 W|sec, en service|conserver
5|Atelier décor|projecteur de son|2|10 W|noyé, déposé le 11 mars|indemniser
6|Dessous de scène|haut-parleur mural|2|6 W|noyé, déposé le 11 mars|indemniser
7|Magasin|haut-parleur mural|2|6 W|neuf, en carton, jamais posé|pour mémoire
8|Régie|haut-parleur mural|1|1,5 W|éclaboussé, en service|conserver
9|Loges 1 à 3 et leur couloir|atténuateur AL, 36 W|1||sec, en service|conserver
10|Régie|amplificateur 120 W, une sortie|1||sec, en service|conserver
`)
		p.Bold("B2", "B5:H5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("24-0871", "Théâtre du Vieux-Lavoir", "states in a column of their own: drowned and taken down, new in its box; attenuator and amplifier are rows of the same list")
		t.Speakers("sheet=Constat; tap_v=100; line_v=100", `rows|room|count|tap_w|control
6|Foyer du public|4|6|
7|Vestiaire du public|2|3|
8|Couloir des loges|4|3|AL
9|Loges 1 à 3|3|3|AL
13|Régie|1|1.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|120|52.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|120|52.5`)
		t.Controls("", `control|rated_w|load_w
AL|36|21`)
		t.Left("Constat", `10|removed|drowned and taken down
11|removed|drowned and taken down
12|spare|new in its box, never fitted
14|other|the attenuator
15|other|the amplifier`)
	}},

	// Luxembourg: the technical office of a railway station keeps one card per amplifier, all on a sheet.
	{File: "gare/Wolkebierg fiches amplis.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Fiches")
		p.Put("A1", `
Gare de Wolkebierg, sonorisation voyageurs
||
FICHE 1|Quais
Amplificateur|AQ1, 240 W
Câble|2 x 2,5 mm², 180 m
Emplacement|HP|Prise|Régleur
Quai 1|8|10 W|
Quai 2|8|10 W|
||
FICHE 2|Bâtiment voyageurs
Amplificateur|AQ2, 120 W
Câble|2 x 1,5 mm², 95 m
Emplacement|HP|Prise|Régleur
Hall|6|6 W|
Salle d'attente|4|3 W|RG1 (24 W)
Guichets|3|1,5 W|RG2 (12 W)
Consigne|1|3 W|
||
FICHE 3|Souterrain
Amplificateur|AQ3, 60 W
Câble|2 x 1,5 mm², 120 m
Emplacement|HP|Prise|Régleur
Passage sous voies|6|3 W|
Abri vélos|2|5 W|
||
Tous les amplificateurs n'ont qu'une sortie, en 100 V.
`)
		p.Bold("A1", "A3:B3", "A10:B10", "A19:B19")
		p.Colour("DDE6F0", "A6:D6", "A13:D13", "A22:D22")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Gare de Wolkebierg", "a card an amplifier: its name, rating and cable in pairs above the loudspeakers, the area in the title of the card")
		t.Speakers("sheet=Fiches; tap_v=100; line_v=100; zone=Quais; amplifier=AQ1; note=title of the card as zone", `rows|room|count|tap_w
7|Quai 1|8|10
8|Quai 2|8|10`)
		t.Speakers("sheet=Fiches; tap_v=100; line_v=100; zone=Bâtiment voyageurs; amplifier=AQ2; note=title of the card as zone", `rows|room|count|tap_w|control
14|Hall|6|6|
15|Salle d'attente|4|3|RG1
16|Guichets|3|1.5|RG2
17|Consigne|1|3|`)
		t.Speakers("sheet=Fiches; tap_v=100; line_v=100; zone=Souterrain; amplifier=AQ3; note=title of the card as zone", `rows|room|count|tap_w
23|Passage sous voies|6|3
24|Abri vélos|2|5`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AQ1|240|160
AQ2|120|55.5
AQ3|60|28`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AQ1|240|160
AQ2|120|55.5
AQ3|60|28`)
		t.Controls("", `control|rated_w|load_w
RG1|24|12
RG2|12|4.5`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Quais|180|2.5
Bâtiment voyageurs|95|1.5
Souterrain|120|1.5`)
	}},

	// Senegal: a contractor fills in the bill of quantities for a swimming pool, everything told in the item texts.
	{File: "appels d'offres/AO 015-22 lot 6 DQE.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Lot 6")
		p.Put("A1", `
Piscine municipale de Keur Ndombo|||||AO 015/22
Lot 6, sonorisation 100 V : devis quantitatif et estimatif
||
N°|Désignation|U|Qté|PU (FCFA)|PT (FCFA)
'6.1|BASSIN (ampli AB de 240 W)
6.1.1|Projecteur de son étanche, réglé sur 15 W|u|8|62000|496000
6.1.2|Enceinte murale IP65, réglée sur 10 W|u|4|48000|192000
6.1.3|Câble 2x2,5 mm²|ml|160|950|152000
'6.2|GRADINS (ampli AG de 120 W)
6.2.1|Enceinte murale, réglée sur 10 W|u|6|41000|246000
6.2.2|Atténuateur AT1 de 100 W, pour tous les gradins|u|1|55000|55000
6.2.3|Câble 2x2,5 mm²|ml|90|950|85500
'6.3|VESTIAIRES (ampli AV de 60 W)
6.3.1|Plafonnier réglé sur 3 W, vestiaire dames|u|4|19500|78000
6.3.2|Plafonnier réglé sur 3 W, vestiaire hommes|u|4|19500|78000
6.3.3|Plafonnier réglé sur 1,5 W, bureau du maître-nageur|u|1|19500|19500
6.3.4|Atténuateur AT2 de 6 W, pour le bureau du maître-nageur|u|1|18000|18000
6.3.5|Câble 2x1,5 mm²|ml|70|620|43400
|TOTAL HT||||1463400
||
OPTION non comprise dans le total : abords de la pataugeoire
6.4.1|Projecteur de son étanche, réglé sur 15 W|u|4|62000|248000
`)
		p.Bold("A1", "A4:F4", "A5:B5", "A9:B9", "A13:B13", "B19:F19")
		p.Format("#,##0", "E6:F22")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("AO 015/22", "Piscine municipale de Keur Ndombo", "bill of quantities: tap, room and control inside the item texts, amplifier and rating in the section titles, prices beside; an option outside the total")
		t.Speakers("sheet=Lot 6; tap_v=100; line_v=100; zone=BASSIN; amplifier=AB; note=section title as zone", `rows|count|tap_w
6|8|15
7|4|10`)
		t.Speakers("sheet=Lot 6; tap_v=100; line_v=100; zone=GRADINS; amplifier=AG; control=AT1; note=section title as zone", `rows|count|tap_w
10|6|10`)
		t.Speakers("sheet=Lot 6; tap_v=100; line_v=100; zone=VESTIAIRES; amplifier=AV; note=section title as zone", `rows|room|count|tap_w|control
14|vestiaire dames|4|3|
15|vestiaire hommes|4|3|
16|bureau du maître-nageur|1|1.5|AT2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AB|240|160
AG|120|60
AV|60|25.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AB|240|160
AG|120|60
AV|60|25.5`)
		t.Controls("", `control|zone|rated_w|load_w
AT1|GRADINS|100|60
AT2|VESTIAIRES|6|1.5`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
BASSIN|160|2.5
GRADINS|90|2.5
VESTIAIRES|70|1.5`)
		t.Left("Lot 6", `19|total|sum of prices
22|future|an option that the total leaves out`)
	}},

	// France: the asset register of a tram depot, exported from the maintenance program as it stands.
	{File: "gmao/export_sono_depot.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Code;Libellé;Bâtiment;Local;Ligne;Réglage (W);Asservi à;Statut
AMP-02;Amplificateur 2 x 120 W, 100 V;Administration;Local baie;;;;En service
HP-0101;Haut-parleur plafond;Administration;Accueil;AMP-02/1;6;POT-03;En service
HP-0102;Haut-parleur plafond;Administration;Accueil;AMP-02/1;6;POT-03;En service
HP-0103;Haut-parleur plafond;Administration;Prise de service;AMP-02/1;6;;En service
HP-0104;Haut-parleur plafond;Administration;Prise de service;AMP-02/1;6;;En service
HP-0105;Haut-parleur plafond;Administration;Bureau exploitation;AMP-02/1;3;POT-04;En service
HP-0106;Haut-parleur plafond;Administration;Vestiaire;AMP-02/1;3;;En service
HP-0201;Projecteur de son;Remisage;Travée A;AMP-02/2;15;;En service
HP-0202;Projecteur de son;Remisage;Travée A;AMP-02/2;15;;En service
HP-0203;Projecteur de son;Remisage;Travée B;AMP-02/2;15;;En service
HP-0204;Projecteur de son;Remisage;Travée B;AMP-02/2;15;;Déposé
HP-0205;Haut-parleur mural;Atelier;Fosse 1;AMP-02/2;10;;En service
HP-0206;Haut-parleur mural;Atelier;Fosse 2;AMP-02/2;10;;En service
HP-0207;Projecteur de son;Atelier;Magasin;;15;;En stock
POT-03;Potentiomètre mural 20 W;Administration;Accueil;AMP-02/1;;;En service
POT-04;Potentiomètre mural 6 W;Administration;Bureau exploitation;AMP-02/1;;;En service
HOR-01;Horloge réceptrice;Administration;Accueil;;;;En service
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "plain export: amplifier, loudspeakers, volume controls and a clock in one list, told apart by code and text; states in the last column")
		t.Speakers("tap_v=100; line_v=100; zone=Administration; amplifier=AMP-02; channel=1; note=building as zone", `rows|tag|room|tap_w|control
3..4|HP-0101..|Accueil|6|POT-03
5..6|HP-0103..|Prise de service|6|
7|HP-0105|Bureau exploitation|3|POT-04
8|HP-0106|Vestiaire|3|`)
		t.Speakers("tap_v=100; line_v=100; zone=Remisage; amplifier=AMP-02; channel=2; note=building as zone", `rows|tag|room|tap_w
9..10|HP-0201..|Travée A|15
11|HP-0203|Travée B|15`)
		t.Speakers("tap_v=100; line_v=100; zone=Atelier; amplifier=AMP-02; channel=2; note=building as zone", `rows|tag|room|tap_w
13|HP-0205|Fosse 1|10
14|HP-0206|Fosse 2|10`)
		t.Channels("line_v=100; amplifier=AMP-02; rated_w=120", `channel|load_w
1|30
2|65`)
		t.Amplifiers("", `amplifier|load_w
AMP-02|95`)
		t.Controls("", `control|zone|rated_w|load_w
POT-03|Administration|20|12
POT-04|Administration|6|3`)
		t.Left("", `2|other|the amplifier
12|removed|taken down
15|spare|in stock
16|other|a volume control
17|other|a volume control
18|other|a clock`)
	}},
}
