package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

var filingsFrench = []typed.Case{

	{File: "filings/belgique/registre sonorisation.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Registre")
		p.Put("A1", `
Registre des sonorisations / Register geluidsinstallaties
mise à jour 02/2020
||
Dossier|Site|Zone|Local / Lokaal|HP|Nb / Aantal|W|Ampli|Réglage
B-1012|Bibliothèque de Vaux-le-Saule|Rez|Accueil|plafond|2|3|A1 (120 W)|VR1 (12 W)
B-1012||Rez|Prêt|plafond|6|6|A1|
B-1012||Étage|Lecture|mural|8|3|A1|VR2 (50 W)
B-1012||Étage|Bureau|plafond|1|1.5|A1|
||
B-1020|Zwembad Molenkouter|Bad|Zwemzaal|hoorn|6|10|A1 (240 W)|
B-1020||Bad|Kinderbad|muur|2|6|A1|
B-1020||Inkom|Kassa|plafond|1|3|A2 (60 W)|VR1 (5 W)
B-1020||Inkom|Gang|plafond|4|3|A2|
B-1020||Kleedkamers|Kleedkamer 1-3|plafond|6|1.5|A2|VR2 (12 W)
||
B-1033|Dépôt de trams de la Genette|Halle|Voies 1 à 4|pavillon|8|15|A1 (240 W)|
B-1033||Halle|Fosse|pavillon|2|15|A1|
B-1033||Social|Vestiaire|plafond|3|3|A1|VR1 (12 W)
B-1033||Social|Salle de repos|plafond|4|3|A1|VR2 (24 W)
||
Toutes les lignes sont en 100 V / alle lijnen 100 V
`)
		p.Bold("A1", "A4:I4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("B-1012", "Bibliothèque de Vaux-le-Saule", "Belgian register of three jobs in two languages; the same amplifier and control names in every job, ratings in brackets where first named")
		t.Speakers("sheet=Registre; tap_v=100; line_v=100; amplifier=A1", `rows|zone|room|count|tap_w|control
5|Rez|Accueil|2|3|VR1
6|Rez|Prêt|6|6|
7|Étage|Lecture|8|3|VR2
8|Étage|Bureau|1|1.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|120|67.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|120|67.5`)
		t.Controls("", `control|rated_w|load_w
VR1|12|6
VR2|50|24`)
		t.Also("B-1020", "Zwembad Molenkouter", "second job, Dutch words")
		t.Speakers("sheet=Registre; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|amplifier|control
10|Bad|Zwemzaal|6|10|A1|
11|Bad|Kinderbad|2|6|A1|
12|Inkom|Kassa|1|3|A2|VR1
13|Inkom|Gang|4|3|A2|
14|Kleedkamers|Kleedkamer 1-3|6|1.5|A2|VR2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|240|72
A2|60|24`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|240|72
A2|60|24`)
		t.Controls("", `control|rated_w|load_w
VR1|5|3
VR2|12|9`)
		t.Also("B-1033", "Dépôt de trams de la Genette", "third job")
		t.Speakers("sheet=Registre; tap_v=100; line_v=100; amplifier=A1", `rows|zone|room|count|tap_w|control
16|Halle|Voies 1 à 4|8|15|
17|Halle|Fosse|2|15|
18|Social|Vestiaire|3|3|VR1
19|Social|Salle de repos|4|3|VR2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|240|171`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|240|171`)
		t.Controls("", `control|rated_w|load_w
VR1|12|9
VR2|24|12`)
	}},

	{File: "filings/etudes/20.118 DQE gare routiere.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("DQE")
		p.Put("A1", `
Gare routière des Aulnettes
Affaire|'20.118
DQE lot sonorisation, lignes 100 V
N°|Désignation|U|Qté|P.U. HT|Total HT
1|Hall voyageurs (sortie 1)
'1.1|HP de plafond 20 W réglé sur 6 W|u|8|64|512
'1.2|HP mural 10 W réglé sur 3 W|u|2|58|116
'1.3|Câble 2 x 2,5 mm²|ml|120|3.1|372
2|Quais (sortie 2)
'2.1|Projecteur de son 30 W réglé sur 15 W|u|6|142|852
'2.2|Colonne 40 W réglée sur 20 W|u|2|210|420
'2.3|Câble 2 x 2,5 mm²|ml|260|3.1|806
3|Locaux du personnel (sortie 3)
'3.1|HP de plafond 6 W réglé sur 1,5 W|u|4|41|164
'3.2|Atténuateur 12 W pour les 4 HP du 3.1|u|1|37|37
'3.3|Câble 2 x 1,5 mm²|ml|65|2.4|156
4|Baie
'4.1|Amplificateur 4 x 120 W / 100 V|u|1|1480|1480
'4.2|Baie 12 U|u|1|390|390
|Total HT||||5305
`)
		p.Bold("A1", "A4:F4", "A5:B5", "A9:B9", "A13:B13", "A17:B17", "B20:F20")
		p.Format("#,##0.00 €", "E6:F20")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("20.118", "Gare routière des Aulnettes", "bill of quantities: area and output as titles, nominal watts and set watts in the description, money beside them, cable in metres, one amplifier and one attenuator without names")
		t.Speakers("sheet=DQE; tap_v=100; line_v=100; zone=Hall voyageurs; channel=1; note=area as zone", `rows|count|tap_w
6|8|6
7|2|3`)
		t.Speakers("sheet=DQE; tap_v=100; line_v=100; zone=Quais; channel=2; note=area as zone", `rows|count|tap_w
10|6|15
11|2|20`)
		t.Speakers("sheet=DQE; tap_v=100; line_v=100; channel=3; note=unnamed", `rows|count|tap_w
14|4|1.5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
|1|120|54
|2|120|130
|3|120|6`)
		t.Amplifiers("", `amplifier|load_w
|190`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Locaux du personnel|12|6`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Hall voyageurs|120|2.5
Quais|260|2.5
Locaux du personnel|65|1.5`)
		t.Left("DQE", `8|cable|not a loudspeaker
12|cable|not a loudspeaker
15|control|not a loudspeaker
16|cable|not a loudspeaker
18|amplifier|not a loudspeaker
19|other|rack
20|total|money`)
	}},

	{File: "filings/doe/H0451 haras DOE ind B.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("HP")
		p.Put("A1", `
Haras de la Courbelière - DOE sonorisation
Affaire|H0451|||Indice|B
||
Repère|Bâtiment|Local|Modèle|Réglage W|Ligne
HP01|Manège|Piste|trompe|15|L1
HP02|Manège|Piste|trompe|15|L1
HP03|Manège|Piste|trompe|15|L1
HP04|Manège|Piste|trompe|15|L1
HP05|Manège|Tribune|enceinte|6|L1
HP06|Manège|Tribune|enceinte|6|L1
HP07|Écurie A|Allée|enceinte|6|L2
HP08|Écurie A|Allée|enceinte|6|L2
HP09|Écurie A|Allée|enceinte|6|L2
HP10|Écurie A|Allée|enceinte|6|L2
HP11|Écurie B|Allée|enceinte|6|L2
HP12|Écurie B|Allée|enceinte|6|L2
HP13|Écurie B|Sellerie|plafond|3|L2
HP14|Accueil|Hall|plafond|3|L3
HP15|Accueil|Hall|plafond|3|L3
HP16|Accueil|Bureau|plafond|1.5|L3
HP17|Accueil|Salle de réunion|plafond|3|L3
HP18|Extérieur|Parking|trompe|15|L4
HP19|Extérieur|Paddock|trompe|15|L4
||
Ind.|Date|Objet
A|12/03/2014|première diffusion
B|30/06/2014|HP18 et HP19 ajoutés
`)
		p.Bold("A1", "A4:F4", "A25:C25")
		q := p.Sheet("Lignes")
		q.Put("A1", `
Lignes 100 V
Ligne|Ampli|Sortie|P sortie (W)|Atténuateur|P att. (W)|Section (mm²)|Longueur (m)
L1|AMP1|A|120|AT1|100|2.5|95
L2|AMP1|B|120|||1.5|140
L3|AMP2|A|60|AT2|20|1.5|35
L4|AMP2|B|60|||2.5|180
`)
		q.Bold("A2:H2")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("H0451", "Haras de la Courbelière", "as-built, a row a loudspeaker; outputs A and B, attenuators and cables by line on a second sheet, revision table at the foot")
		t.Revision("B", false)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; zone=Manège; amplifier=AMP1; channel=A; control=AT1", `rows|tag|room|tap_w
5..8|HP01..|Piste|15
9..10|HP05..|Tribune|6`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; amplifier=AMP1; channel=B", `rows|zone|tag|room|tap_w
11..14|Écurie A|HP07..|Allée|6
15..16|Écurie B|HP11..|Allée|6
17|Écurie B|HP13|Sellerie|3`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; zone=Accueil; amplifier=AMP2; channel=A; control=AT2", `rows|tag|room|tap_w
18..19|HP14..|Hall|3
20|HP16|Bureau|1.5
21|HP17|Salle de réunion|3`)
		t.Speakers("sheet=HP; tap_v=100; line_v=100; zone=Extérieur; amplifier=AMP2; channel=B", `rows|tag|room|tap_w
22|HP18|Parking|15
23|HP19|Paddock|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|A|120|72
AMP1|B|120|39
AMP2|A|60|10.5
AMP2|B|60|30`)
		t.Amplifiers("", `amplifier|load_w
AMP1|111
AMP2|40.5`)
		t.Controls("", `control|rated_w|load_w
AT1|100|72
AT2|20|10.5`)
		t.Lines("note=one length a line", `line|length_m|area_mm2
L1|95|2.5
L2|140|1.5
L3|35|1.5
L4|180|2.5`)
		t.Left("HP", `26|revision|revision table
27|revision|revision table`)
	}},
}
