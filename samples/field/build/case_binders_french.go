package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// French hands: a drawing office with prices, a maintenance man, a contractor's works under way.
var bindersFrench = []typed.Case{

	{File: "binders/planetarium/DOE sono Roquevive.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Page de garde")
		p.Put("A1", `
DOSSIER DES OUVRAGES EXÉCUTÉS
Sonorisation de service
Planétarium de Roquevive
Affaire n° 2019-346
Indice B
`)
		p.Bold("A1")
		s := p.Sheet("Haut-parleurs")
		s.Put("A1", `
Zone 1 : Coupole|||
Repère|Local|Type|Prise (W)
HP101|Salle, gradin A|enceinte murale|10
HP102|Salle, gradin A|enceinte murale|10
HP103|Salle, gradin B|enceinte murale|10
HP104|Salle, gradin B|enceinte murale|10
HP105|Régie|plafonnier|1.5
||
Zone 2 : Hall|||
Repère|Local|Type|Prise (W)
HP201|Accueil|plafonnier|3
HP202|Accueil|plafonnier|3
HP203|Exposition|plafonnier|6
HP204|Exposition|plafonnier|6
HP205|Exposition|plafonnier|6
HP206|Sanitaires|plafonnier|1.5
||
Zone 3 : Terrasse d'observation|||
Repère|Local|Type|Prise (W)
HP301|Terrasse|projecteur|15
HP302|Terrasse|projecteur|15
HP303|Escalier|projecteur|7.5
`)
		s.Merge("A1:D1", "A9:D9", "A18:D18")
		s.Bold("A1", "A9", "A18")
		b := p.Sheet("Baie")
		b.Put("A1", `
Amplificateur à quatre sorties, ligne 100 V
||
Sortie|Zone desservie|Puissance de la sortie (W)
1|1|120
2|2|60
3|3|60
4|libre|60
`)
		b.Bold("A3:C3")
		a := p.Sheet("Atténuateurs")
		a.Put("A1", `
Repère|Emplacement|Puissance (W)|Commande
AT1|Régie|6|HP105
AT2|Banque d'accueil|12|HP201, HP202
`)
		a.Bold("A1:D1")
		c := p.Sheet("Bordereau")
		c.Put("A1", `
N°|Désignation|U|Qté|PU HT|Total HT
1|Enceinte murale 10 W|u|4|96|384
2|Plafonnier 6 W|u|7|41|287
3|Projecteur de son 15 W|u|3|118|354
4|Plafonnier 6 W, fourni en secours|u|1|41|41
5|Atténuateur|u|2|35|70
6|Amplificateur|u|1|1290|1290
||||Total|2426
`)
		c.Bold("A1:F1", "E8:F8")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2019-346", "Planétarium de Roquevive", "zones as numbered titles, an amplifier without a name and four outputs, one of them free; attenuators by tags; prices with a spare")
		t.Revision("B", false)
		t.Speakers("sheet=Haut-parleurs; tap_v=100; line_v=100; zone=1; channel=1; note=title above the rows, zone 1 or Coupole", `rows|tag|room|tap_w|control
3|HP101|Salle, gradin A|10|
4|HP102|Salle, gradin A|10|
5|HP103|Salle, gradin B|10|
6|HP104|Salle, gradin B|10|
7|HP105|Régie|1.5|AT1`)
		t.Speakers("sheet=Haut-parleurs; tap_v=100; line_v=100; zone=2; channel=2; note=title above the rows, zone 2 or Hall", `rows|tag|room|tap_w|control
11|HP201|Accueil|3|AT2
12|HP202|Accueil|3|AT2
13|HP203|Exposition|6|
14|HP204|Exposition|6|
15|HP205|Exposition|6|
16|HP206|Sanitaires|1.5|`)
		t.Speakers("sheet=Haut-parleurs; tap_v=100; line_v=100; zone=3; channel=3; note=title above the rows, zone 3 or Terrasse d'observation", `rows|tag|room|tap_w
20|HP301|Terrasse|15
21|HP302|Terrasse|15
22|HP303|Escalier|7.5`)
		t.Channels("line_v=100", `channel|rated_w|load_w
1|120|41.5
2|60|25.5
3|60|37.5`)
		t.Amplifiers("", `amplifier|load_w
|104.5`)
		t.Controls("", `control|rated_w|load_w
AT1|6|1.5
AT2|12|6`)
		t.Left("Bordereau", `2|price|the loudspeakers of the list again
3|price|the loudspeakers of the list again
4|price|the loudspeakers of the list again
5|spare|supplied as a spare
8|total|price`)
	}},

	{File: "binders/piscine/releve haut-parleurs piscine.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Latin1(typed.DOS(`
Local;Nbre HP;Prise W;Ampli;Sortie;Variateur;Var. W;Observations
Grand bassin;6;15;A;1;;;
Pataugeoire;2;7,5;A;1;;;
Plongeoir;1;15;A;1;;;HS, à remplacer
Vestiaires collectifs;4;3;A;2;;;
Vestiaires publics;6;3;A;2;;;
Douches;2;3;A;2;;;étanches
Caisse;1;1,5;B;;V1;6;
Hall;4;3;B;;V2;20;
Infirmerie;1;1,5;B;;V3;6;
Bureau chef de bassin;1;1,5;B;;V4;6;
Local technique;1;6;B;;;;
;29;;;;;;
;;;;;;;
Relevé fait par le service technique. Ampli A : 2 sorties de 120 W. Ampli B : 60 W. Tout en 100 V.;;;;;;;
Piscine municipale du Clos-Béal, demande 887;;;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("887", "Piscine municipale du Clos-Béal", "plain; ratings and voltage in the closing line; one faulty loudspeaker still hanging")
		t.Speakers("tap_v=100; line_v=100; amplifier=A; channel=1", `rows|room|count|tap_w
2|Grand bassin|6|15
3|Pataugeoire|2|7.5
4|Plongeoir|1|15`)
		t.Speakers("tap_v=100; line_v=100; amplifier=A; channel=2", `rows|room|count|tap_w
5|Vestiaires collectifs|4|3
6|Vestiaires publics|6|3
7|Douches|2|3`)
		t.Speakers("tap_v=100; line_v=100; amplifier=B", `rows|room|count|tap_w|control
8|Caisse|1|1.5|V1
9|Hall|4|3|V2
10|Infirmerie|1|1.5|V3
11|Bureau chef de bassin|1|1.5|V4
12|Local technique|1|6|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A|1|120|120
A|2|120|36
B||60|22.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A||156
B|60|22.5`)
		t.Controls("", `control|rated_w|load_w
V1|6|1.5
V2|20|12
V3|6|1.5
V4|6|1.5`)
		t.Left("", `13|total|count of pieces`)
	}},

	{File: "binders/ecole/Chantier école des Tilleuls suivi.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Suivi pose")
		p.Put("A1", `
École des Tilleuls, diffusion des annonces, chantier 5108
Suivi de pose au 14/11
||
N°|Salle|Ligne|Puissance HP|Fait
1|Préau|L1|10 W|oui
2|Préau|L1|10 W|oui
3|Cour|L1|15 W|oui
4|Cour|L1|15 W|oui
5|Portail|L1|15 W|supprimé par le maître d'ouvrage
6|Couloir RdC|L2|6 W|oui
7|Couloir RdC|L2|6 W|oui
8|Classe 1|L2|3 W|oui
9|Classe 2|L2|3 W|oui
10|Classe 3|L2|3 W|oui
11|Couloir étage|L3|6 W|oui
12|Classe 4|L3|3 W|oui
13|Classe 5|L3|3 W|oui
14|Salle de motricité|L3|6 W|oui
15|Salle des maîtres|L3|1,5 W|oui
`)
		p.Strike("A9:D9")
		p.Bold("A1", "A4:E4")
		l := p.Sheet("Lignes")
		l.Put("A1", `
Lignes 100 V
||
Ligne|Départ|Ampli|W ampli|Câble|Long. m|1er HP
L1|baie du bureau|AMP1|120|2 x 2,5|64|1
L2|baie du bureau|AMP2|60|2 x 1,5|28|6
L3|baie du bureau|AMP3|60|2 x 1,5|41|11
`)
		l.Bold("A3:G3")
		v := p.Sheet("Potentiomètres")
		v.Put("A1", `
Rep.|Salle|HP n°|W
P1|Salle de motricité|14|12
P2|Salle des maîtres|15|5
`)
		v.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5108", "École des Tilleuls", "list, lines and potentiometers joined by line numbers and loudspeaker numbers; one row struck out and dropped")
		t.Speakers("sheet=Suivi pose; tap_v=100; line_v=100; amplifier=AMP1", `rows|tag|room|tap_w
5|1|Préau|10
6|2|Préau|10
7|3|Cour|15
8|4|Cour|15`)
		t.Speakers("sheet=Suivi pose; tap_v=100; line_v=100; amplifier=AMP2", `rows|tag|room|tap_w
10|6|Couloir RdC|6
11|7|Couloir RdC|6
12|8|Classe 1|3
13|9|Classe 2|3
14|10|Classe 3|3`)
		t.Speakers("sheet=Suivi pose; tap_v=100; line_v=100; amplifier=AMP3", `rows|tag|room|tap_w|control
15|11|Couloir étage|6|
16|12|Classe 4|3|
17|13|Classe 5|3|
18|14|Salle de motricité|6|P1
19|15|Salle des maîtres|1.5|P2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP1|120|50
AMP2|60|21
AMP3|60|19.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP1|120|50
AMP2|60|21
AMP3|60|19.5`)
		t.Controls("", `control|rated_w|load_w
P1|12|6
P2|5|1.5`)
		t.Lines("from=baie du bureau", `line|to|length_m|area_mm2
L1|1|64|2.5
L2|6|28|1.5
L3|11|41|1.5`)
		t.Left("Suivi pose", `9|removed|struck out, dropped by the client`)
	}},
}
