package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// errandsFrench are an estimator, a works manager of a pool and a storeman.
var errandsFrench = []typed.Case{
	{File: "errands/chiffrage/M-318 Médiathèque des Saules lot 14.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Haut-parleurs")
		p.Put("A1", `
Médiathèque des Saules, lot 14 courants faibles, affaire M-318
Sonorisation en ligne 100 V
||
Zone|Local|Désignation|Nb|P (W)|Atténuateur
Hall|Accueil|plafonnier|4|3|At. 1
Hall|Expositions|plafonnier|6|3|At. 1
Adultes|Fonds général|plafonnier|10|3|
Adultes|Presse|plafonnier|2|3|At. 2
Jeunesse|Albums|plafonnier|4|3|
Jeunesse|Heure du conte|enceinte murale|2|6|At. 3
Auditorium|Salle|colonne|4|15|
Auditorium|Foyer|plafonnier|3|3|At. 4
Services|Bureaux|plafonnier|5|1.5|
Services|Magasins|projecteur de son|2|10|
`)
		p.Bold("A1", "A4:F4")
		q := p.Sheet("Baie")
		q.Put("A1", `
Baie de sonorisation, local technique du rez-de-chaussée
||
Rep.|Matériel|Voie|Puissance|Zone
AMP A|ampli 2 voies|1|120 W|Hall
AMP A||2|120 W|Adultes
AMP B|ampli 2 voies|1|60 W|Jeunesse
AMP B||2|120 W|Auditorium
AMP C|ampli 1 voie|1|60 W|Services
||
Atténuateurs
At. 1|50 W
At. 2|12 W
At. 3|24 W
At. 4|12 W
`)
		q.Bold("A1", "A3:E3", "A10")
		r := p.Sheet("Prix")
		r.Put("A1", `
Poste|Désignation|U|Qté|PU HT|Total HT
14.1|Plafonnier 100 V, 6/3/1,5 W|U|34|48|1632
14.2|Enceinte murale 100 V, 12/6 W|U|2|85|170
14.3|Colonne 100 V, 30/15 W|U|4|260|1040
14.4|Projecteur de son 10 W|U|2|95|190
14.5|Atténuateur mural|U|4|60|240
14.6|Câble 2 x 1,5 mm²|ml|680|1.9|1292
14.7|Amplis A, B et C|ens|1|3900|3900
|Total HT||||8464
`)
		r.Bold("A1:F1", "B9:F9")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("M-318", "Médiathèque des Saules", "outputs joined by zone names, controls rated under the rack; a sheet of prices repeats the loudspeakers by kind with all their taps")
		t.Speakers("sheet=Haut-parleurs; tap_v=100; line_v=100; zone=Hall; amplifier=AMP A; channel=1; control=At. 1", `rows|room|count|tap_w
5|Accueil|4|3
6|Expositions|6|3`)
		t.Speakers("sheet=Haut-parleurs; tap_v=100; line_v=100; zone=Adultes; amplifier=AMP A; channel=2", `rows|room|count|tap_w|control
7|Fonds général|10|3|
8|Presse|2|3|At. 2`)
		t.Speakers("sheet=Haut-parleurs; tap_v=100; line_v=100; zone=Jeunesse; amplifier=AMP B; channel=1", `rows|room|count|tap_w|control
9|Albums|4|3|
10|Heure du conte|2|6|At. 3`)
		t.Speakers("sheet=Haut-parleurs; tap_v=100; line_v=100; zone=Auditorium; amplifier=AMP B; channel=2", `rows|room|count|tap_w|control
11|Salle|4|15|
12|Foyer|3|3|At. 4`)
		t.Speakers("sheet=Haut-parleurs; tap_v=100; line_v=100; zone=Services; amplifier=AMP C; channel=1", `rows|room|count|tap_w
13|Bureaux|5|1.5
14|Magasins|2|10`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP A|1|120|30
AMP A|2|120|36
AMP B|1|60|24
AMP B|2|120|69
AMP C|1|60|27.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP A||66
AMP B||93
AMP C|60|27.5`)
		t.Controls("", `control|rated_w|load_w
At. 1|50|30
At. 2|12|6
At. 3|24|12
At. 4|12|9`)
		t.Left("Prix", `2|price|bill of quantities
3|price|bill of quantities
4|price|bill of quantities
5|price|bill of quantities
9|total|sum`)
	}},

	{File: "errands/exploitation/Piscine du Grand Lavoir.xlsx", Kind: "schedule", Book: func() *excelize.File {
		c := typed.NewBook("Garde")
		c.Put("A1", `
Piscine du Grand Lavoir
Dossier d'exploitation, sonorisation
||
Affaire|PX-77
Réseau|100 V
||
Ligne|1|2|3|4
Ampli|A1|A2|A2|A3
Sortie|1|1|2|1
Puissance W|240|120|120|60
`)
		c.Bold("A1", "A7:A10")
		p := c.Sheet("HP")
		p.Put("A1", `
N°|Ligne|Emplacement|Nombre|W|Atténuateur
1|1|Bassin sportif, côté tribune|6|15|
2|1|Bassin sportif, côté vitrage|6|15|
3|1|Tribune|4|6|
4|2|Bassin d'apprentissage|4|6|AT-1 (60 W)
5|〃|Pataugeoire|3|6|AT-1
6|〃|Solarium|2|15|
7|3|Vestiaires collectifs 1|3|3|
8|〃|Vestiaires collectifs 2|3|3|
9|〃|Cabines|6|3|
10|〃|Douches|4|3|
11|4|Hall d'entrée|4|3|AT-2 (18 W)
12|〃|Caisse|1|1.5|AT-3 (3 W)
13|〃|Infirmerie|1|1.5|AT-4 (3 W)
`)
		p.Bold("A1:F1")
		q := c.Sheet("Câbles")
		q.Put("A1", `
Ligne|Tenant|Aboutissant|Section (mm²)|Longueur (m)
1|Baie|Bassin sportif|2 x 4|60
1|Bassin sportif|Tribune|2 x 2,5|35
2|Baie|Bassin d'apprentissage|2 x 2,5|45
2|Bassin d'apprentissage|Solarium|2 x 2,5|50
3|Baie|Vestiaires collectifs 1|2 x 1,5|40
4|Baie|Hall d'entrée|2 x 1,5|25
`)
		q.Bold("A1:E1")
		return c.File
	}, Truth: func(t *typed.Truth) {
		t.Is("PX-77", "Piscine du Grand Lavoir", "cover sheet with a table of lines and outputs that runs across; ditto marks for the line, control ratings where first named, cable runs by line number")
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=A1; channel=1", `rows|room|count|tap_w
2|Bassin sportif, côté tribune|6|15
3|Bassin sportif, côté vitrage|6|15
4|Tribune|4|6`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=A2; channel=1", `rows|room|count|tap_w|control
5|Bassin d'apprentissage|4|6|AT-1
6|Pataugeoire|3|6|AT-1
7|Solarium|2|15|`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=A2; channel=2", `rows|room|count|tap_w
8|Vestiaires collectifs 1|3|3
9|Vestiaires collectifs 2|3|3
10|Cabines|6|3
11|Douches|4|3`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=A3; channel=1", `rows|room|count|tap_w|control
12|Hall d'entrée|4|3|AT-2
13|Caisse|1|1.5|AT-3
14|Infirmerie|1|1.5|AT-4`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A1|1|240|204
A2|1|120|72
A2|2|120|48
A3|1|60|15`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|240|204
A2||120
A3|60|15`)
		t.Controls("", `control|rated_w|load_w
AT-1|60|42
AT-2|18|12
AT-3|3|1.5
AT-4|3|1.5`)
		t.Lines("note=from-to runs", `line|from|to|length_m|area_mm2
1|Baie|Bassin sportif|60|4
1|Bassin sportif|Tribune|35|2.5
2|Baie|Bassin d'apprentissage|45|2.5
2|Bassin d'apprentissage|Solarium|50|2.5
3|Baie|Vestiaires collectifs 1|40|1.5
4|Baie|Hall d'entrée|25|1.5`)
	}},

	{File: "errands/dépôt/tramways Ormoie relevé.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Dépôt de tramways de l'Ormoie;;;;;
Sonorisation 100 V, relevé du magasinier;;;;;
;;;;;
Repère;Local;Qté;Réglage;Reg. de volume;Remarque
Bâtiment A - ampli 1, 120 W;;;;;
A-1;Remisage voie 1;5;6 W;;
A-2;Remisage voie 2;5;6 W;;
A-3;Bureau du chef;1;1,5 W;V1 (3 W);
Bâtiment B - ampli 2, 120 W;;;;;
B-1;Atelier;6;10 W;;
B-2;Fosse;2;10 W;;une grille manque
B-3;Magasin;2;3 W;V2 (12 W);
B-4;Cabine de peinture;1;10 W;;déposé en mai, ne pas compter
Bâtiment C - ampli 3, 60 W;;;;;
C-1;Réfectoire;4;3 W;V3 (24 W);
C-2;Vestiaires;4;1,5 W;;
C-3;Salle de formation;2;3 W;V4 (12 W);
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Dépôt de tramways de l'Ormoie", "plain CSV; the title of each building names its amplifier and rating, one horn taken down")
		t.Speakers("tap_v=100; line_v=100; zone=Bâtiment A; amplifier=ampli 1; note=title of the building as zone", `rows|tag|room|count|tap_w|control
6|A-1|Remisage voie 1|5|6|
7|A-2|Remisage voie 2|5|6|
8|A-3|Bureau du chef|1|1.5|V1`)
		t.Speakers("tap_v=100; line_v=100; zone=Bâtiment B; amplifier=ampli 2; note=title of the building as zone", `rows|tag|room|count|tap_w|control
10|B-1|Atelier|6|10|
11|B-2|Fosse|2|10|
12|B-3|Magasin|2|3|V2`)
		t.Speakers("tap_v=100; line_v=100; zone=Bâtiment C; amplifier=ampli 3; note=title of the building as zone", `rows|tag|room|count|tap_w|control
15|C-1|Réfectoire|4|3|V3
16|C-2|Vestiaires|4|1.5|
17|C-3|Salle de formation|2|3|V4`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
ampli 1|120|61.5
ampli 2|120|86
ampli 3|60|24`)
		t.Amplifiers("", `amplifier|rated_w|load_w
ampli 1|120|61.5
ampli 2|120|86
ampli 3|60|24`)
		t.Controls("", `control|rated_w|load_w
V1|3|1.5
V2|12|6
V3|24|12
V4|12|6`)
		t.Left("", `13|removed|taken down in May`)
	}},
}
