package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// French: project folders of a consulting office, contractors and a maintenance firm; a caretaker and an apprentice.
var ledgersFrench = []typed.Case{
	typed.Case{File: "ledgers/A1809 Jardin/A1809-SON-02 ind C.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Page de garde")
		p.Put("B2", `
Jardin botanique de Sauvelade
Sonorisation ligne 100 V, carnet des haut-parleurs
||
Affaire|A1809
Document|A1809-SON-02
Indice|C
||
Ind.|Date|Modification|Visa
A|04/09/2018|Première diffusion|pm
B|22/10/2018|Ajout de l'orangerie|pm
C|14/01/2019|Atténuateur de la librairie porté à 24 W|cd
`)
		p.Bold("B2", "B9:E9")
		l := p.Sheet("Légende")
		l.Put("A1", `
Repère|Matériel|Indice de protection|Teinte
PLF|Plafonnier transformateur 6 W|IP20|blanc
PRJ|Projecteur de son transformateur 20 W|IP65|gris
CHM|Haut-parleur champignon 15 W|IP66|vert
ATT|Atténuateur encastré|IP20|blanc
||
Puissances réglées : voir carnet. Puissances de la légende : maximum du transformateur.
`)
		l.Bold("A1:D1")
		s := p.Sheet("Carnet HP")
		s.Put("A1", `
N°|Local|Désignation|Repère|Qté|Réglage (W)|Total (W)|Ligne|Plan
1|A01|Hall d'accueil|PLF|6|3|18|LIG-1|E101
2|A02|Billetterie|PLF|1|1.5|1.5|LIG-1|E101
3|A03|Librairie|PLF|4|3|12|LIG-1|E101
4|A04|Salle d'étude|PLF|3|1.5|4.5|LIG-1|E101
5|B01|Grande serre|PRJ|6|10|60|LIG-2|E102
6|B02|Serre aux fougères|PRJ|3|10|30|LIG-2|E102
7|B03|Orangerie|PRJ|4|5|20|LIG-3|E103
8|B04|Rempotage|PLF|2|3|6|LIG-3|E103
9|C01|Roseraie|CHM|8|7.5|60|LIG-4|E104
10|C02|Allée des tilleuls|CHM|6|7.5|45|LIG-4|E104
11|C03|Parking|CHM|3|15|45|LIG-5|E104
||Total||46||302||
`)
		s.Bold("A1:I1", "A13:I13")
		b := p.Sheet("Baie")
		b.Put("A1", `
Amplificateur|U|Sortie|Ligne|Secteur|Puissance nominale|Adresse IP
AMP-A|8|1|Ligne 1|Accueil|60 W|172.16.3.11
AMP-A|8|2|Ligne 2|Serres|120 W|172.16.3.11
AMP-A|8|3|Ligne 3|Orangerie|60 W|172.16.3.11
AMP-B|11|1|Ligne 4|Jardins|240 W|172.16.3.12
AMP-B|11|2|Ligne 5|Parking|60 W|172.16.3.12
`)
		b.Bold("A1:G1")
		a := p.Sheet("Atténuateurs")
		a.Put("A1", `
Repère|Emplacement|N° HP commandés|Puissance
ATT1|Librairie, derrière la caisse|3|24 W
ATT2|Salle d'étude|4|12 W
ATT3|Orangerie, porte est|7|35 W
ATT4|Rempotage|8|12 W
`)
		a.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("A1809", "Jardin botanique de Sauvelade", "consulting office; five sheets, LIG-1 in the list is Ligne 1 in the rack, which alone names the sectors, maxima of transformers in the legend, controls by loudspeaker number")
		t.Revision("C", false)
		t.Speakers("sheet=Carnet HP; tap_v=100; line_v=100; zone=Accueil; amplifier=AMP-A; channel=1", `rows|tag|room|model|count|tap_w|control
2|1|Hall d'accueil|PLF|6|3|
3|2|Billetterie|PLF|1|1.5|
4|3|Librairie|PLF|4|3|ATT1
5|4|Salle d'étude|PLF|3|1.5|ATT2`)
		t.Speakers("sheet=Carnet HP; tap_v=100; line_v=100; zone=Serres; amplifier=AMP-A; channel=2", `rows|tag|room|model|count|tap_w
6|5|Grande serre|PRJ|6|10
7|6|Serre aux fougères|PRJ|3|10`)
		t.Speakers("sheet=Carnet HP; tap_v=100; line_v=100; zone=Orangerie; amplifier=AMP-A; channel=3", `rows|tag|room|model|count|tap_w|control
8|7|Orangerie|PRJ|4|5|ATT3
9|8|Rempotage|PLF|2|3|ATT4`)
		t.Speakers("sheet=Carnet HP; tap_v=100; line_v=100; zone=Jardins; amplifier=AMP-B; channel=1", `rows|tag|room|model|count|tap_w
10|9|Roseraie|CHM|8|7.5
11|10|Allée des tilleuls|CHM|6|7.5`)
		t.Speakers("sheet=Carnet HP; tap_v=100; line_v=100; zone=Parking; amplifier=AMP-B; channel=2", `rows|tag|room|model|count|tap_w
12|11|Parking|CHM|3|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP-A|1|60|36
AMP-A|2|120|90
AMP-A|3|60|26
AMP-B|1|240|105
AMP-B|2|60|45`)
		t.Amplifiers("", `amplifier|load_w
AMP-A|152
AMP-B|150`)
		t.Controls("", `control|rated_w|load_w
ATT1|24|12
ATT2|12|4.5
ATT3|35|20
ATT4|12|6`)
		t.Left("Carnet HP", `13|total|sums`)
	}},

	{File: "ledgers/chantier 7043/7043 Théâtre DOE sono.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("HP")
		p.Put("A1", `
Théâtre des Trois Écluses|||||
Chantier 7043 - DOE - appels et rappels de scène, 100 V
||
Repère|Niveau|Emplacement|Type|Prise|Commande
HP01|R-1|Loge 1|plafonnier|3 W|PL1
HP02|R-1|Loge 2|plafonnier|3 W|PL2
HP03|R-1|Loge 3|plafonnier|3 W|PL3
HP04|R-1|Loge collective|plafonnier|3 W|PL4
HP05|R-1|Loge collective|plafonnier|3 W|PL4
HP06|R-1|Couloir loges|plafonnier|1,5 W|
HP07|R-1|Couloir loges|plafonnier|1,5 W|
HP08|R-1|Costumes|coffret|3 W|
HP09|RDC|Hall|plafonnier|6 W|
HP10|RDC|Hall|plafonnier|6 W|
HP11|RDC|Hall|plafonnier|6 W|
HP12|RDC|Vestiaire|plafonnier|3 W|
HP13|RDC|Régisseur|coffret|3 W|PL5
HP14|R+1|Foyer|plafonnier|6 W|
HP15|R+1|Foyer|plafonnier|6 W|
HP16|R+1|Couloir balcon|plafonnier|3 W|
HP17|R+1|Bureau|plafonnier|1,5 W|
`)
		p.Bold("A1", "A4:F4")
		q := p.Sheet("Ampli")
		q.Put("A1", `
Amplificateur|Voie|Alimente|P. max|N° de série
AP1|1|Sous-sol (R-1)|60 W|41-2207
AP1|2|Rez-de-chaussée|60 W|41-2207
AP1|3|Étage|60 W|41-2207
`)
		q.Bold("A1:E1")
		c := p.Sheet("Câbles")
		c.Put("A1", `
Câble|De|Vers|Section|Longueur
C1|AP1 voie 1|HP 01|2x1,5 mm²|42 m
C2|AP1 voie 2|HP 09|2x1,5 mm²|31 m
C3|AP1 voie 3|HP 14|2x2,5 mm²|68 m
`)
		c.Bold("A1:E1")
		d := p.Sheet("Commandes")
		d.Put("A1", `
Potentiomètres de ligne, tous avec relais de priorité
Repère|Local|Puissance
PL 1|Loge 1|5 W
PL 2|Loge 2|5 W
PL 3|Loge 3|5 W
PL 4|Loge collective|10 W
PL 5|Régisseur|5 W
`)
		d.Bold("A2:C2")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("7043", "Théâtre des Trois Écluses", "contractor's as-built; levels short in the list and in words in the rack, controls PL1 and PL 1, cables by loudspeaker")
		t.Speakers("sheet=HP; tap_v=100; line_v=100; zone=R-1; amplifier=AP1; channel=1", `rows|tag|room|tap_w|control
5|HP01|Loge 1|3|PL1
6|HP02|Loge 2|3|PL2
7|HP03|Loge 3|3|PL3
8|HP04|Loge collective|3|PL4
9|HP05|Loge collective|3|PL4
10|HP06|Couloir loges|1.5|
11|HP07|Couloir loges|1.5|
12|HP08|Costumes|3|`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; zone=RDC; amplifier=AP1; channel=2", `rows|tag|room|tap_w|control
13|HP09|Hall|6|
14|HP10|Hall|6|
15|HP11|Hall|6|
16|HP12|Vestiaire|3|
17|HP13|Régisseur|3|PL5`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; zone=R+1; amplifier=AP1; channel=3", `rows|tag|room|tap_w
18|HP14|Foyer|6
19|HP15|Foyer|6
20|HP16|Couloir balcon|3
21|HP17|Bureau|1.5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AP1|1|60|21
AP1|2|60|24
AP1|3|60|16.5`)
		t.Amplifiers("", `amplifier|load_w
AP1|61.5`)
		t.Controls("", `control|rated_w|load_w
PL1|5|3
PL2|5|3
PL3|5|3
PL4|10|6
PL5|5|3`)
		t.Lines("", `line|from|to|length_m|area_mm2
C1|AP1 voie 1|HP 01|42|1.5
C2|AP1 voie 2|HP 09|31|1.5
C3|AP1 voie 3|HP 14|68|2.5`)
	}},

	{File: "ledgers/maintenance/Gare de Brémontel visite 2020.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Visite")
		p.Put("A1", `
Rapport|V20-318
Site|Gare de Brémontel
Date|07/10/2020
Système|deux amplificateurs, ligne 100 V
||
N°|Constat|Suite donnée
1|Pavillon au bout du quai 2 arraché|déposé, non remplacé
2|Grille rouillée quai 1|devis à faire
3|Réglage salle d'attente trop fort|repassé de 6 W à 3 W (liste à jour)
`)
		p.Bold("A6:C6")
		s := p.Sheet("Diffuseurs")
		s.Put("A1", `
Zone|Lieu|Nature|Nbre|W|État
Quai 1|Abri|pavillon|3|10|bon
Quai 1|Bout de quai|pavillon|2|15|grille rouillée
Quai 2|Abri|pavillon|3|10|bon
Quai 2|Bout de quai, côté nord|pavillon|1|15|bon
Quai 2|Bout de quai, côté sud|pavillon|1|15|déposé
Passage souterrain|Milieu|coffret|4|6|bon
Hall|Guichets|plafonnier|6|6|bon
Hall|Salle d'attente|plafonnier|4|3|bon
Hall|Consigne|plafonnier|2|3|bon
Service|Chef de service|plafonnier|1|3|bon
Service|Réfectoire|plafonnier|2|3|bon
Service|Local à vélos|pavillon|1|5|bon
`)
		s.Bold("A1:F1")
		m := p.Sheet("Mesures")
		m.Put("A1", `
Ampli / voie|Zone|Puissance voie|Impédance 1 kHz|Isolement|Avis
'1.1|Quai n° 1|120 W|164 ohms|> 20 Mohms|correct
'1.2|Quai n° 2|120 W|220 ohms|> 20 Mohms|correct
'1.3|Souterrain|60 W|412 ohms|6 Mohms|à suivre
'2.1|Hall voyageurs|120 W|182 ohms|> 20 Mohms|correct
'2.2|Locaux de service|60 W|705 ohms|> 20 Mohms|correct
`)
		m.Bold("A1:F1")
		r := p.Sheet("Réglages de volume")
		r.Put("A1", `
Repère|Agit sur|Puissance
RV1|Salle d'attente|20 W
RV2|Chef de service|6 W
RV3|Réfectoire|12 W
`)
		r.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("V20-318", "Gare de Brémontel", "maintenance record; amplifier and output as 1.2 on the sheet of measurements, zones spelt otherwise there, one horn taken down, controls by room")
		t.Speakers("sheet=Diffuseurs; tap_v=100; line_v=100; zone=Quai 1; amplifier=1; channel=1", `rows|room|count|tap_w
2|Abri|3|10
3|Bout de quai|2|15`)
		t.Speakers("sheet=Diffuseurs; tap_v=100; line_v=100; zone=Quai 2; amplifier=1; channel=2", `rows|room|count|tap_w
4|Abri|3|10
5|Bout de quai, côté nord|1|15`)
		t.Speakers("sheet=Diffuseurs; tap_v=100; line_v=100; zone=Passage souterrain; amplifier=1; channel=3", `rows|room|count|tap_w
7|Milieu|4|6`)
		t.Speakers("sheet=Diffuseurs; tap_v=100; line_v=100; zone=Hall; amplifier=2; channel=1", `rows|room|count|tap_w|control
8|Guichets|6|6|
9|Salle d'attente|4|3|RV1
10|Consigne|2|3|`)
		t.Speakers("sheet=Diffuseurs; tap_v=100; line_v=100; zone=Service; amplifier=2; channel=2", `rows|room|count|tap_w|control
11|Chef de service|1|3|RV2
12|Réfectoire|2|3|RV3
13|Local à vélos|1|5|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
1|1|120|60
1|2|120|45
1|3|60|24
2|1|120|54
2|2|60|14`)
		t.Amplifiers("", `amplifier|load_w
1|129
2|68`)
		t.Controls("", `control|rated_w|load_w
RV1|20|12
RV2|6|3
RV3|12|6`)
		t.Left("Diffuseurs", `6|removed|taken down, not replaced`)
	}},

	{File: "ledgers/devis/D-3406 piscine.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("DPGF")
		p.Put("A1", `
Piscine de la Combe-Noire, lot 12 sonorisation, devis D-3406
||
Art.|Désignation|U|Qté|PU HT|Total HT
'12.1|Haut-parleur étanche|u|16|92|1472
'12.2|Plafonnier|u|13|37|481
'12.3|Pavillon|u|4|81|324
'12.4|Réglage de volume|u|3|44|132
'12.5|Amplificateur quatre voies|u|1|1650|1650
'12.6|Câblage|ens|1|2900|2900
|Total HT||||6959
`)
		p.Bold("A1", "A3:F3", "A10:F10")
		s := p.Sheet("Répartition")
		s.Put("A1", `
|Répartition par local|||Ligne 100 V||
Voie|Local|Matériel|Nombre|W unitaire|W installés
1|Bassin sportif|étanche|8|15|120
1|Bassin ludique|étanche|4|15|60
1|Pataugeoire|étanche|2|7,5|15
|Sous-total voie 1||14||195
2|Vestiaires collectifs|plafonnier|4|3|12
2|Cabines|plafonnier|3|3|9
2|Douches|étanche|2|3,75|7,5
|Sous-total voie 2||9||28,5
3|Accueil|plafonnier|3|3|9
3|Bureau du chef de bassin|plafonnier|1|1,5|1,5
3|Salle de repos|plafonnier|2|3|6
|Sous-total voie 3||6||16,5
4|Solarium|pavillon|3|15|45
4|Local à poubelles|pavillon|1|7,5|7,5
|Sous-total voie 4||4||52,5
|Total||33||292,5
`)
		s.Bold("A2:F2", "A6:F6", "A10:F10", "A14:F14", "A17:F18")
		v := p.Sheet("Voies et réglages")
		v.Put("A1", `
Voie|Désignation|Puissance de la voie
1|Bassins|250 W
2|Vestiaires|60 W
3|Accueil et bureaux|60 W
4|Extérieur|120 W
||
Réglage|Local|Puissance
RG-A|Accueil|20 W
RG-B|Bureau chef de bassin|5 W
RG-C|Salle repos|12 W
||
Variante non chiffrée : deux pavillons de 15 W au toboggan
`)
		v.Bold("A1:C1", "A7:C7")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("D-3406", "Piscine de la Combe-Noire", "contractor's bid; prices of the same things, subtotals, outputs of one unnamed amplifier as the joining key, rooms of the controls written a little differently, an option")
		t.Speakers("sheet=Répartition; tap_v=100; line_v=100; zone=Bassins; channel=1", `rows|room|count|tap_w
3|Bassin sportif|8|15
4|Bassin ludique|4|15
5|Pataugeoire|2|7.5`)
		t.Speakers("sheet=Répartition; tap_v=100; line_v=100; zone=Vestiaires; channel=2", `rows|room|count|tap_w
7|Vestiaires collectifs|4|3
8|Cabines|3|3
9|Douches|2|3.75`)
		t.Speakers("sheet=Répartition; tap_v=100; line_v=100; zone=Accueil et bureaux; channel=3", `rows|room|count|tap_w|control
11|Accueil|3|3|RG-A
12|Bureau du chef de bassin|1|1.5|RG-B
13|Salle de repos|2|3|RG-C`)
		t.Speakers("sheet=Répartition; tap_v=100; line_v=100; zone=Extérieur; channel=4", `rows|room|count|tap_w
15|Solarium|3|15
16|Local à poubelles|1|7.5`)
		t.Channels("line_v=100", `channel|rated_w|load_w
1|250|195
2|60|28.5
3|60|16.5
4|120|52.5`)
		t.Amplifiers("", `amplifier|load_w
|292.5`)
		t.Controls("", `control|rated_w|load_w
RG-A|20|9
RG-B|5|1.5
RG-C|12|6`)
		t.Left("Répartition", `6|total|subtotal
10|total|subtotal
14|total|subtotal
17|total|subtotal
18|total|sum`)
		t.Left("DPGF", `4|price|same devices as in the list
5|price|same devices as in the list
6|price|same devices as in the list`)
		t.Left("Voies et réglages", `12|future|option without price`)
	}},

	{File: "ledgers/gardien/haut-parleurs patinoire.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Feuil1")
		p.Put("A1", `
Patinoire du Val-Ferret-le-Haut : les haut-parleurs
Endroit|Combien|Watts|Bouton de volume|Remarque
Piste côté tribune|4|15|non|
Piste côté vestiaires|4|15|non|
Banc des joueurs|2|5|non|
Table de marque|1|5|B1|
Gradins|6|6|non|un peu sourd
Entrée|2|3|non|
Caisse|1|1,5|B2|
Location patins|3|3|B3|
Affûtage|1|3|non|
Vestiaire 1|1|3|non|
Vestiaire 2|1|3|non|
Vestiaire 3|1|3|non|
Vestiaire 4|1|3|non|
Infirmerie|1|1,5|B4|
Garage surfaceuse|1|10|non|repeint
Total|30|||
||
Un seul ampli de 360 W dans mon bureau, ligne 100 V
B1 : 10 W, B2 et B4 : 5 W, B3 : 20 W
`)
		p.Bold("A1", "A2:E2")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Patinoire du Val-Ferret-le-Haut", "plain caretaker's list, amplifier and ratings of the knobs in sentences at the foot")
		t.Speakers("sheet=Feuil1; tap_v=100; line_v=100", `rows|room|count|tap_w|control
3|Piste côté tribune|4|15|
4|Piste côté vestiaires|4|15|
5|Banc des joueurs|2|5|
6|Table de marque|1|5|B1
7|Gradins|6|6|
8|Entrée|2|3|
9|Caisse|1|1.5|B2
10|Location patins|3|3|B3
11|Affûtage|1|3|
12|Vestiaire 1|1|3|
13|Vestiaire 2|1|3|
14|Vestiaire 3|1|3|
15|Vestiaire 4|1|3|
16|Infirmerie|1|1.5|B4
17|Garage surfaceuse|1|10|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|360|214`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|360|214`)
		t.Controls("", `control|rated_w|load_w
B1|10|5
B2|5|1.5
B3|20|9
B4|5|1.5`)
		t.Left("Feuil1", `18|total|sum`)
	}},

	{File: "ledgers/apprenti/releve mediatheque.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Relevé médiathèque de Lormaison;;;;;
Repère;Niveau;Pièce;Modèle;W;Départ
M1;0;Hall;plafond;6;A/1
M2;0;Hall;plafond;6;A/1
M3;0;Prêt;plafond;3;A/1
M4;0;Presse;plafond;3;A/1
M5;0;Presse;plafond;3;A/1
M6;0;Heure du conte;coffret;5;A/2
M7;0;Heure du conte;coffret;5;A/2
M8;1;Adultes;plafond;3;B/1
M9;1;Adultes;plafond;3;B/1
M10;1;Adultes;plafond;3;B/1
M11;1;Musique;plafond;3;B/1
M12;1;Salle de travail;plafond;1,5;B/1
M13;1;Bureau;plafond;pas vu;B/2
M14;1;Bureau;plafond;1,5;B/2
M15;1;Réserve;coffret;5;B/2
;;;;;
Ampli A : 2 x 120 W;;;;;
Ampli B : 2 x 60 W;;;;;
ligne 100 V partout, M13 : je n'avais pas la grande échelle;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Médiathèque de Lormaison", "plain apprentice's list, outputs as A/2, ratings of outputs as 2 x 120 W at the foot, one tap not seen")
		t.Speakers("tap_v=100; line_v=100; zone=0; amplifier=A; channel=1; note=level as zone", `rows|tag|room|tap_w
3|M1|Hall|6
4|M2|Hall|6
5|M3|Prêt|3
6|M4|Presse|3
7|M5|Presse|3`)
		t.Speakers("tap_v=100; line_v=100; zone=0; amplifier=A; channel=2; note=level as zone", `rows|tag|room|tap_w
8|M6|Heure du conte|5
9|M7|Heure du conte|5`)
		t.Speakers("tap_v=100; line_v=100; zone=1; amplifier=B; channel=1; note=level as zone", `rows|tag|room|tap_w
10|M8|Adultes|3
11|M9|Adultes|3
12|M10|Adultes|3
13|M11|Musique|3
14|M12|Salle de travail|1.5`)
		t.Speakers("tap_v=100; line_v=100; zone=1; amplifier=B; channel=2; note=level as zone", `rows|tag|room|tap_w
15|M13|Bureau|
16|M14|Bureau|1.5
17|M15|Réserve|5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w|load_min_w
A|1|120|21|
A|2|120|10|
B|1|60|13.5|
B|2|60||6.5`)
		t.Amplifiers("", `amplifier|load_w
A|31
B|`)
		t.Asks("", `15|asked|tap that was not seen`)
	}},
}
