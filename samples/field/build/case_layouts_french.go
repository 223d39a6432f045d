package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// layoutsFrench are four hands that write French.
var layoutsFrench = []typed.Case{
	// An electrician counted the loudspeakers of a museum by the setting of their transformer, before replacing the amplifiers.
	{File: "layouts/comptage HP musée.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Comptage")
		p.Put("A1", `
Musée du Textile de Valombre - comptage des haut-parleurs, ligne 100 V

|Nombre de HP réglés sur||||Charge|
Zone|1,5 W|3 W|6 W|10 W|W|Ampli
Accueil||4|||12|A1
Vestiaire|2||||3|A1
Salle des métiers|||8||48|A1
Salle des soies||6|2||30|A1
Atelier pédagogique||4|||12|A2
Bureaux|5||||7.5|A2
Réserve||||2|20|A2
Cour||||4|40|A2
Total|7|14|10|6|172.5|

A1 : 120 W
A2 : 120 W
`)
		p.Merge("B3:E3")
		p.Bold("A1", "A3:G4", "A13:G13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Musée du Textile de Valombre", "matrix zones by taps, two header rows, the ratings of the amplifiers in lines below")
		t.Speakers("sheet=Comptage; tap_v=100; line_v=100; amplifier=A1", `rows|zone|count|tap_w
5|Accueil|4|3
6|Vestiaire|2|1.5
7|Salle des métiers|8|6
8|Salle des soies|6|3
8|Salle des soies|2|6`)
		t.Speakers("sheet=Comptage; tap_v=100; line_v=100; amplifier=A2", `rows|zone|count|tap_w
9|Atelier pédagogique|4|3
10|Bureaux|5|1.5
11|Réserve|2|10
12|Cour|4|10`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|120|93
A2|120|79.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|120|93
A2|120|79.5`)
		t.Left("Comptage", `13|total|sums`)
	}},

	// A maintenance firm fills one form a zone, one below another, during the yearly visit to a stud farm.
	{File: "layouts/0952 fiches zones.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Fiches")
		p.Put("A1", `
Haras de Brévanne|||Dossier 0952
Sonorisation, ligne 100 V, une fiche par zone

FICHE 1
Zone|Manège couvert|Ampli|AP1
Puissance ampli|120 W|Atténuateur|sans
Type HP|Nombre|Prise W|Total W
Projecteur|4|15|60
Colonne|2|10|20

FICHE 2
Zone|Carrière|Ampli|AP2
Puissance ampli|240 W|Atténuateur|sans
Type HP|Nombre|Prise W|Total W
Pavillon|6|30|180

FICHE 3
Zone|Écuries|Ampli|AP3
Puissance ampli|120 W|Atténuateur|ATT1, 60 W
Type HP|Nombre|Prise W|Total W
Projecteur|6|6|36
Plafonnier|2|3|6

FICHE 4
Zone|Sellerie et bureaux|Ampli|AP4
Puissance ampli|60 W|Atténuateur|ATT2, 36 W
Type HP|Nombre|Prise W|Total W
Plafonnier|6|3|18
`)
		p.Bold("A1", "A4", "A11", "A17", "A24")
		p.Colour("E8F0E0", "A4:D4", "A11:D11", "A17:D17", "A24:D24")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("0952", "Haras de Brévanne", "a form a zone, labels and values in pairs, a small table under each; the attenuator is that of the whole zone")
		t.Speakers("sheet=Fiches; tap_v=100; line_v=100; zone=Manège couvert; amplifier=AP1", `rows|count|tap_w
8|4|15
9|2|10`)
		t.Speakers("sheet=Fiches; tap_v=100; line_v=100; zone=Carrière; amplifier=AP2", `rows|count|tap_w
15|6|30`)
		t.Speakers("sheet=Fiches; tap_v=100; line_v=100; zone=Écuries; amplifier=AP3; control=ATT1", `rows|count|tap_w
21|6|6
22|2|3`)
		t.Speakers("sheet=Fiches; tap_v=100; line_v=100; zone=Sellerie et bureaux; amplifier=AP4; control=ATT2", `rows|count|tap_w
28|6|3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AP1|120|80
AP2|240|180
AP3|120|42
AP4|60|18`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AP1|120|80
AP2|240|180
AP3|120|42
AP4|60|18`)
		t.Controls("", `control|zone|rated_w|load_w
ATT1|Écuries|60|42
ATT2|Sellerie et bureaux|36|18`)
	}},

	// The installer left a sheet per amplifier in the folder of a coach station: a row an output, the loudspeakers written out in a cell.
	{File: "layouts/gare routière amplis.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Ampli 1")
		p.Put("A1", `
Gare routière de Montclar - Ampli 1 (4 voies de 120 W, 100 V)

Voie|Zone|Haut-parleurs|Charge W|Atténuateur
1|Quais A et B|8 projecteurs à 10 W|80|
2|Quais C et D|8 projecteurs à 10 W|80|
3|Hall|6 plafonniers à 6 W + 2 colonnes à 10 W|56|
4|Salle d'attente|4 plafonniers à 3 W|12|AT1 (20 W)
`)
		q := p.Sheet("Ampli 2")
		q.Put("A1", `
Gare routière de Montclar - Ampli 2 (2 voies de 60 W, 100 V)

Voie|Zone|Haut-parleurs|Charge W|Atténuateur
1|Guichets|3 plafonniers à 1,5 W|4.5|AT2 (6 W)
2|Locaux chauffeurs|5 plafonniers à 3 W + 1 plafonnier à 1,5 W|16.5|AT3 (24 W)
`)
		r := p.Sheet("Ampli 3")
		r.Put("A1", `
Gare routière de Montclar - Ampli 3 (2 voies de 120 W, 100 V)

Voie|Zone|Haut-parleurs|Charge W|Atténuateur
1|Parking|6 pavillons à 15 W|90|
2|libre|||
`)
		p.Bold("A1", "A3:E3")
		q.Bold("A1", "A3:E3")
		r.Bold("A1", "A3:E3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Gare routière de Montclar", "a sheet an amplifier, its outputs rated in the title, the loudspeakers of an output in one cell, two kinds joined by a plus; a free output")
		t.Speakers("sheet=Ampli 1; tap_v=100; line_v=100; amplifier=Ampli 1", `rows|zone|count|tap_w|channel|control
4|Quais A et B|8|10|1|
5|Quais C et D|8|10|2|
6|Hall|6|6|3|
6|Hall|2|10|3|
7|Salle d'attente|4|3|4|AT1`)
		t.Speakers("sheet=Ampli 2; tap_v=100; line_v=100; amplifier=Ampli 2", `rows|zone|count|tap_w|channel|control
4|Guichets|3|1.5|1|AT2
5|Locaux chauffeurs|5|3|2|AT3
5|Locaux chauffeurs|1|1.5|2|AT3`)
		t.Speakers("sheet=Ampli 3; tap_v=100; line_v=100; amplifier=Ampli 3", `rows|zone|count|tap_w|channel
4|Parking|6|15|1`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
Ampli 1|1|120|80
Ampli 1|2|120|80
Ampli 1|3|120|56
Ampli 1|4|120|12
Ampli 2|1|60|4.5
Ampli 2|2|60|16.5
Ampli 3|1|120|90
Ampli 3|2|120|0`)
		t.Amplifiers("", `amplifier|load_w
Ampli 1|228
Ampli 2|21
Ampli 3|90`)
		t.Controls("", `control|zone|rated_w|load_w
AT1|Salle d'attente|20|12
AT2|Guichets|6|4.5
AT3|Locaux chauffeurs|24|16.5`)
		t.Left("Ampli 3", `5|empty|free output`)
	}},

	// The office of a small firm keeps one register for all the jobs of the quarter; names of amplifiers repeat from job to job.
	{File: "layouts/registre T2.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Latin1(typed.DOS(`
Affaire;Site;Local;HP;Qté;Prise (W);Ampli;P. ampli (W);Ligne (V);Remarque
24-031;Patinoire des Aulnes;Piste;projecteur;6;15;A;120;100;
24-031;Patinoire des Aulnes;Gradins;colonne;4;10;B;120;100;
24-031;Patinoire des Aulnes;Vestiaires;plafonnier;6;3;B;120;100;
24-031;Patinoire des Aulnes;Infirmerie;plafonnier;1;1,5;B;120;100;
24-035;Planétarium du Roc Gris;Accueil;plafonnier;4;3;A;60;100;
24-035;Planétarium du Roc Gris;Couloir;plafonnier;5;1,5;A;60;100;
24-035;Planétarium du Roc Gris;Parvis;projecteur;2;10;A;60;100;déposés le 12/04
24-035;Planétarium du Roc Gris;Salle 2;plafonnier;2;3;A;60;100;
24-038;École de Pontmarel;Préau;projecteur;3;6;A;120;100;
24-038;École de Pontmarel;Cour;pavillon;4;15;A;120;100;
24-038;École de Pontmarel;Salle des maîtres;plafonnier;2;3;A;120;100;atténuateur AT1, 12 W
24-038;École de Pontmarel;Gymnase;projecteur;4;10;B;60;100;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("24-031", "Patinoire des Aulnes", "register of three jobs, amplifier names repeat; one row removed and one control, both in the remarks")
		t.Speakers("tap_v=100; line_v=100; amplifier=A", `rows|room|count|tap_w
2|Piste|6|15`)
		t.Speakers("tap_v=100; line_v=100; amplifier=B", `rows|room|count|tap_w
3|Gradins|4|10
4|Vestiaires|6|3
5|Infirmerie|1|1.5`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|120|90
B|120|59.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|120|90
B|120|59.5`)
		t.Also("24-035", "Planétarium du Roc Gris", "second job of the register")
		t.Speakers("tap_v=100; line_v=100; amplifier=A", `rows|room|count|tap_w
6|Accueil|4|3
7|Couloir|5|1.5
9|Salle 2|2|3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|60|25.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|60|25.5`)
		t.Left("", `8|removed|taken down`)
		t.Also("24-038", "École de Pontmarel", "third job of the register")
		t.Speakers("tap_v=100; line_v=100; amplifier=A", `rows|room|count|tap_w|control
10|Préau|3|6|
11|Cour|4|15|
12|Salle des maîtres|2|3|AT1`)
		t.Speakers("tap_v=100; line_v=100; amplifier=B", `rows|room|count|tap_w
13|Gymnase|4|10`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|120|84
B|60|40`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|120|84
B|60|40`)
		t.Controls("", `control|rated_w|load_w
AT1|12|6`)
	}},
}
