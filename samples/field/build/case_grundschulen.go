package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A master electrician and an estimator in German; a facility office, a site manager, a drawing office and an insurer's expert in French.
var grundschulen = []typed.Case{
	{File: "revision/88-1305 Eissporthalle.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("ELA")
		p.Put("A1", `
Eissporthalle Dornkamp, Revisionsunterlagen ELA
Auftrag 88-1305, 100-V-Anlage
||
Linie 1: Eisfläche (Verstärker A, Ausgang 1, 240 W)
Nr.|Stück|Einbauort|Abgriff|Bemerkung
'1.1|4|Bande Nord|15 W
'1.2|4|Bande Süd|15 W
'1.3|2|Zeitnehmer|6 W|über Regler R1 (24 W)
|10|Summe|132 W
||
Linie 2: Tribüne (Verstärker A, Ausgang 2, 240 W)
Nr.|Stück|Einbauort|Abgriff|Bemerkung
'2.1|8|Rang unten|10 W
'2.2|6|Rang oben|10 W
'2.3|2|Pressekabine|3 W|über Regler R2 (12 W)
|16|Summe|146 W
||
Linie 3: Kabinen und Foyer (Verstärker B, Ausgang 1, 120 W)
Nr.|Stück|Einbauort|Abgriff|Bemerkung
'3.1|6|Kabinengang|3 W
'3.2|4|Umkleide Heim|1,5 W
'3.3|4|Umkleide Gäste|1,5 W
'3.4|5|Foyer|6 W
'3.5|1|Windfang|6 W|nur Leitung gelegt, LS kommt im nächsten Jahr
|19|Summe|60 W|ohne 3.5
`)
		p.Bold("A1", "A4", "A11", "A18", "A9:D9", "A16:D16", "A25:D25")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("88-1305", "Eissporthalle Dornkamp", "a titled section a line, with amplifier, output and rating in the title; sums between; controls in remarks; one loudspeaker of the coming year")
		t.Speakers("sheet=ELA; tap_v=100; line_v=100; zone=Eisfläche; amplifier=A; channel=1; note=title as zone", `rows|room|count|tap_w|control
6|Bande Nord|4|15|
7|Bande Süd|4|15|
8|Zeitnehmer|2|6|R1`)
		t.Speakers("sheet=ELA; tap_v=100; line_v=100; zone=Tribüne; amplifier=A; channel=2; note=title as zone", `rows|room|count|tap_w|control
13|Rang unten|8|10|
14|Rang oben|6|10|
15|Pressekabine|2|3|R2`)
		t.Speakers("sheet=ELA; tap_v=100; line_v=100; zone=Kabinen und Foyer; amplifier=B; channel=1; note=title as zone", `rows|room|count|tap_w
20|Kabinengang|6|3
21|Umkleide Heim|4|1.5
22|Umkleide Gäste|4|1.5
23|Foyer|5|6`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A|1|240|132
A|2|240|146
B|1|120|60`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|480|278
B|120|60`)
		t.Controls("", `control|rated_w|load_w
R1|24|12
R2|12|6`)
		t.Left("ELA", `9|total|sum of line 1
16|total|sum of line 2
24|future|only the cable is there
25|total|sum of line 3`)
	}},

	{File: "angebote/3391 Mengengerüst.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Mengen")
		p.Put("A1", `
Stadtbücherei Lohwinkel, Mengengerüst Lautsprecher (100 V)
BV 3391
||
||Stückzahl je Abgriff
Raum|Ausgang|1,5 W|3 W|6 W|10 W|Stück|Watt|Steller
Eingang|1||4|||4|12
Ausleihe|1||6|||6|18
Büros|1|5||||5|7.5|S1
Magazin|1|4||||4|6
Anlieferung|1||||1|1|10
Lesesaal|2|||8||8|48|S2
Kinderbücherei|2|2|4|||6|15|S3
Vortragsraum|2||2|4||6|30|S4
Summe||11|16|12|1|40|146.5
||
Verstärker 2 x 120 W
S1 und S3 24 W, S2 und S4 60 W
`)
		p.Merge("C4:F4")
		p.Bold("A1", "A5:I5", "A14:I14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("3391", "Stadtbücherei Lohwinkel", "matrix of rooms by tap, two taps in some rooms; outputs of an unnamed amplifier; ratings of controls in a sentence")
		t.Speakers("sheet=Mengen; tap_v=100; line_v=100; channel=1", `rows|room|count|tap_w|control
6|Eingang|4|3|
7|Ausleihe|6|3|
8|Büros|5|1.5|S1
9|Magazin|4|1.5|
10|Anlieferung|1|10|`)
		t.Speakers("sheet=Mengen; tap_v=100; line_v=100; channel=2", `rows|room|count|tap_w|control
11|Lesesaal|8|6|S2
12|Kinderbücherei|2|1.5|S3
12|Kinderbücherei|4|3|S3
13|Vortragsraum|2|3|S4
13|Vortragsraum|4|6|S4`)
		t.Channels("line_v=100; rated_w=120", `channel|load_w
1|53.5
2|93`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|146.5`)
		t.Controls("", `control|rated_w|load_w
S1|24|7.5
S2|60|48
S3|24|15
S4|60|30`)
		t.Left("Mengen", `14|total|sums`)
	}},

	{File: "exploitation/sono_mediatheque.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Affaire;Zone;Local;Type de HP;Qté;Réglage HP (W);Total (W);Ampli;Voie;Puissance voie en 100 V (W)
2014-077;Accueil;Hall d'entrée;plafonnier;4;3;12;A1;1;120
2014-077;Accueil;Banque de prêt;plafonnier;2;3;6;A1;1;120
2014-077;Accueil;Sanitaires;plafonnier;3;1,5;4,5;A1;1;120
2014-077;Lecture;Salle adultes;plafonnier;8;3;24;A1;2;120
2014-077;Lecture;Salle jeunesse;plafonnier;6;3;18;A1;2;120
2014-077;Lecture;Salon presse;enceinte murale;2;6;12;A1;2;120
2014-077;Réserves;Magasin 1;enceinte murale;2;6;12;A2;1;60
2014-077;Réserves;Magasin 2;enceinte murale;2;6;12;A2;1;60
2014-077;Réserves;Quai de livraison;trompe;1;10;10;A2;1;60
2014-077;Auditorium;Salle;colonne;4;10;40;A2;2;60
2014-077;Auditorium;Régie;plafonnier;1;1,5;1,5;A2;2;60
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("2014-077", "", "plain; one line a room, everything in columns, Windows-1252 and decimal commas; the voltage only in the header of the last column")
		t.Speakers("tap_v=100; line_v=100; zone=Accueil; amplifier=A1; channel=1", `rows|room|count|tap_w
2|Hall d'entrée|4|3
3|Banque de prêt|2|3
4|Sanitaires|3|1.5`)
		t.Speakers("tap_v=100; line_v=100; zone=Lecture; amplifier=A1; channel=2", `rows|room|count|tap_w
5|Salle adultes|8|3
6|Salle jeunesse|6|3
7|Salon presse|2|6`)
		t.Speakers("tap_v=100; line_v=100; zone=Réserves; amplifier=A2; channel=1", `rows|room|count|tap_w
8|Magasin 1|2|6
9|Magasin 2|2|6
10|Quai de livraison|1|10`)
		t.Speakers("tap_v=100; line_v=100; zone=Auditorium; amplifier=A2; channel=2", `rows|room|count|tap_w
11|Salle|4|10
12|Régie|1|1.5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A1|1|120|22.5
A1|2|120|54
A2|1|60|34
A2|2|60|41.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|240|76.5
A2|120|75.5`)
	}},

	{File: "chantiers/5120 HP et réserves.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("OPR")
		p.Put("A1", `
Théâtre du Canal Neuf, chantier 5120
Haut-parleurs de service (ligne 100 V), état au 18/06 et réserves
||
Local|Nb HP|Prise|Sortie|Posé|Réserve / remarque
Hall|4|6 W|A|oui
Billetterie|1|3 W|A|oui
Galerie haute|6|3 W|A|oui|potentiomètre AT1 (36 W) monté à l'envers, à reprendre
Loges 1 à 4|4|1,5 W|B|oui
Couloir des loges|3|3 W|B|oui|une grille rayée, à changer
Plateau cour|1|10 W|B|oui
Plateau jardin|1|10 W|B|non|échafaudage en place, pose après démontage
Atelier|2|6 W|B|oui
Cintres|2|6 W|B|non|HP pas encore livrés
||
Ampli 2 x 60 W, sorties A et B
AT1 : règle la galerie haute seulement
`)
		p.Bold("A1", "A4:F4")
		p.Colour("FFF2CC", "A11:F11", "A13:F13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5120", "Théâtre du Canal Neuf", "snag list with what is fitted and what is not yet; a control named in a snag; outputs of an unnamed amplifier")
		t.Speakers("sheet=OPR; tap_v=100; line_v=100; channel=A", `rows|room|count|tap_w|control
5|Hall|4|6|
6|Billetterie|1|3|
7|Galerie haute|6|3|AT1`)
		t.Speakers("sheet=OPR; tap_v=100; line_v=100; channel=B", `rows|room|count|tap_w
8|Loges 1 à 4|4|1.5
9|Couloir des loges|3|3
10|Plateau cour|1|10
12|Atelier|2|6`)
		t.Channels("line_v=100; rated_w=60", `channel|load_w
A|45
B|37`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|120|82`)
		t.Controls("", `control|rated_w|load_w
AT1|36|18`)
		t.Left("OPR", `11|future|not fitted yet
13|future|not delivered yet`)
	}},

	{File: "DOE/Muséum carnet de câbles.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("HP")
		p.Put("A1", `
Repère|Local|Puiss. réglée
HP-01|Galerie des fossiles|6 W
HP-02|Galerie des fossiles|6 W
HP-03|Galerie des fossiles|6 W
HP-04|Escalier|3 W
HP-05|Salle des oiseaux|6 W
HP-06|Salle des oiseaux|6 W
HP-07|Atelier enfants|3 W
HP-08|Cour|15 W
HP-09|Cour|15 W
HP-10|Porche|10 W
`)
		p.Bold("A1:C1")
		q := p.Sheet("Câbles")
		q.Put("A1", `
Câble|Tenant|Aboutissant|Section|Longueur
C01|Baie AMP1 sortie 1|HP-01|2 x 1,5 mm²|42 m
C02|HP-01|HP-02|2 x 1,5 mm²|9 m
C03|HP-02|HP-03|2 x 1,5 mm²|9 m
C04|HP-03|HP-04|2 x 1,5 mm²|16 m
C05|Baie AMP1 sortie 2|HP-05|2 x 1,5 mm²|55 m
C06|HP-05|HP-06|2 x 1,5 mm²|8 m
C07|HP-06|HP-07|2 x 1,5 mm²|21 m
C08|Baie AMP2 sortie 1|HP-08|2 x 2,5 mm²|80 m
C09|HP-08|HP-09|2 x 2,5 mm²|35 m
C10|HP-09|HP-10|2 x 2,5 mm²|28 m
`)
		q.Bold("A1:E1")
		r := p.Sheet("Amplis")
		r.Put("A1", `
Muséum de Talvert - DOE sonorisation
Lignes 100 V
||
Ampli|Sortie|Puissance|HP desservis
AMP1|1|120 W|HP-01 à HP-04
AMP1|2|120 W|HP-05 à HP-07
AMP2|1|60 W|HP-08 à HP-10
`)
		r.Bold("A1", "A4:D4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Muséum de Talvert", "loudspeakers by tag, a daisy chain of cables from tag to tag, and the amplifier outputs by range of tags on a third sheet")
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=AMP1; channel=1", `rows|tag|room|tap_w
2|HP-01|Galerie des fossiles|6
3|HP-02|Galerie des fossiles|6
4|HP-03|Galerie des fossiles|6
5|HP-04|Escalier|3`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=AMP1; channel=2", `rows|tag|room|tap_w
6|HP-05|Salle des oiseaux|6
7|HP-06|Salle des oiseaux|6
8|HP-07|Atelier enfants|3`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=AMP2; channel=1", `rows|tag|room|tap_w
9|HP-08|Cour|15
10|HP-09|Cour|15
11|HP-10|Porche|10`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|1|120|21
AMP1|2|120|15
AMP2|1|60|40`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP1|240|36
AMP2|60|40`)
		t.Lines("note=from-to run", `line|from|to|length_m|area_mm2
C01|Baie AMP1 sortie 1|HP-01|42|1.5
C02|HP-01|HP-02|9|1.5
C03|HP-02|HP-03|9|1.5
C04|HP-03|HP-04|16|1.5
C05|Baie AMP1 sortie 2|HP-05|55|1.5
C06|HP-05|HP-06|8|1.5
C07|HP-06|HP-07|21|1.5
C08|Baie AMP2 sortie 1|HP-08|80|2.5
C09|HP-08|HP-09|35|2.5
C10|HP-09|HP-10|28|2.5`)
	}},

	{File: "sinistres/inventaire piscine des Aulnes.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Inventaire")
		p.Put("A1", `
Piscine des Aulnes - dégât des eaux du 3 février
Dossier sinistre 19-30655 - inventaire de la sonorisation
||
N°|Désignation|Emplacement|Quantité|Réglage|Valeur unit. €|Valeur €|Constat
1|Amplificateur 240 W, ligne 100 V, une sortie|Local technique|1||620|620|en place, à contrôler
2|Enceinte étanche|Grand bassin|6|10 W|145|870|en place, oxydée
3|Enceinte étanche|Petit bassin|4|6 W|145|580|en place
4|Enceinte étanche|Pataugeoire|2|6 W|145|290|en place
5|Haut-parleur de plafond|Vestiaires|6|3 W|48|288|en place
6|Haut-parleur de plafond|Accueil|3|3 W|48|144|en place
7|Haut-parleur de plafond|Infirmerie|1|1,5 W|48|48|en place
8|Haut-parleur de plafond|Bureau|2||48|96|déposés avant le sinistre, dans un carton
9|Trompe|Solarium|2|15 W|110|220|en place
10|Atténuateur 12 W, marqué V1|Accueil (agit sur le HP de l'infirmerie)|1||35|35|en place
11|Atténuateur 24 W, marqué V2|Accueil (agit sur les HP de l'accueil)|1||38|38|en place
12|Microphone de comptoir|Accueil|1||160|160|détruit
||||||3389
`)
		p.Bold("A1", "A4:H4", "G17")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Piscine des Aulnes", "an insurer's inventory with values; amplifier, controls and a microphone among the loudspeakers; two taken down")
		t.Speakers("sheet=Inventaire; tap_v=100; line_v=100", `rows|room|count|tap_w|control
6|Grand bassin|6|10|
7|Petit bassin|4|6|
8|Pataugeoire|2|6|
9|Vestiaires|6|3|
10|Accueil|3|3|V2
11|Infirmerie|1|1.5|V1
13|Solarium|2|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|154.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|154.5`)
		t.Controls("", `control|rated_w|load_w
V1|12|1.5
V2|24|9`)
		t.Left("Inventaire", `5|amplifier|
12|removed|taken down, in a box
14|control|
15|control|
16|other|microphone
17|total|sum of values`)
	}},
}
