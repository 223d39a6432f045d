package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Four people who write French: a council's works department, a design office, an installer, a loss adjuster.
var firmsFrench = []typed.Case{

	// Les services techniques d'une commune tiennent le suivi de trois bâtiments sur une feuille.
	{File: "mairie/parc sono communal.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Parc sono")
		p.Put("A1", `
Commune de Brivaux-les-Joncs, services techniques
Sonorisations fixes, lignes 100 V
||
Dossier|Bâtiment|Local|Nb HP|Réglage par HP|Ampli|Puissance ampli|Commande de volume
ST-041|Médiathèque|Accueil|4|3 W|A|60 W|
ST-041|Médiathèque|Salle de lecture|6|3 W|A|60 W|V1 (24 W)
ST-041|Médiathèque|Salle du conte|2|1,5 W|A|60 W|V2 (6 W)
ST-042|Gymnase des Saules|Aire de jeu|6|20 W|A|240 W|
ST-042|Gymnase des Saules|Gradins|4|10 W|A|240 W|
ST-042|Gymnase des Saules|Vestiaires|4|3 W|B|60 W|
ST-042|Gymnase des Saules|Bureau des clubs|2|3 W|B|60 W|V1 (12 W)
ST-043|Salle de la Ferronnerie|Grande salle|8|6 W|A|120 W|V1 (60 W)
ST-043|Salle de la Ferronnerie|Hall|3|3 W|A|120 W|
ST-043|Salle de la Ferronnerie|Loges|2|1,5 W|A|120 W|V2 (6 W)
`)
		p.Bold("A1", "A4:H4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("ST-041", "Médiathèque", "register of three buildings in which amplifiers and controls bear the same names")
		t.Speakers("sheet=Parc sono; tap_v=100; line_v=100; amplifier=A", `rows|room|count|tap_w|control
5|Accueil|4|3|
6|Salle de lecture|6|3|V1
7|Salle du conte|2|1.5|V2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|60|33`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|60|33`)
		t.Controls("", `control|rated_w|load_w
V1|24|18
V2|6|3`)
		t.Also("ST-042", "Gymnase des Saules", "second building of the register")
		t.Speakers("sheet=Parc sono; tap_v=100; line_v=100", `rows|room|count|tap_w|amplifier|control
8|Aire de jeu|6|20|A|
9|Gradins|4|10|A|
10|Vestiaires|4|3|B|
11|Bureau des clubs|2|3|B|V1`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|240|160
B|60|18`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|240|160
B|60|18`)
		t.Controls("", `control|rated_w|load_w
V1|12|6`)
		t.Also("ST-043", "Salle de la Ferronnerie", "third building of the register")
		t.Speakers("sheet=Parc sono; tap_v=100; line_v=100; amplifier=A", `rows|room|count|tap_w|control
12|Grande salle|8|6|V1
13|Hall|3|3|
14|Loges|2|1.5|V2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|120|60`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|120|60`)
		t.Controls("", `control|rated_w|load_w
V1|60|48
V2|6|3`)
	}},

	// Un bureau d'études joint au dossier de consultation le bilan de puissance des lignes.
	{File: "études/BE-1187 bilan de puissance.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Bilan")
		p.Put("A1", `
Jardin botanique des Ormeaux|||||||Affaire BE-1187
Bilan de puissance des lignes 100 V
||
Ligne|Zone|Étage de puissance|P. nominale (W)|Emplacement|Diffuseur|Qté|P. unitaire retenue (W)|P. totale (W)
L1|Serres|AMP1 / voie 1|120|Serre tropicale|projecteur|4|10|40
||||Serre désertique|projecteur|2|10|20
||||Sas|plafonnier|1|3|3
|||||Total L1|7||63
L2|Accueil|AMP1 / voie 2|60|Billetterie|plafonnier|2|3|6
||||Boutique|plafonnier|4|3|12
||||Sanitaires|plafonnier|2|1.5|3
|||||Total L2|8||21
L3|Parc|AMP2 / voie 1|240|Allée des érables|borne|6|15|90
||||Roseraie|borne|4|15|60
||||Parking|pavillon|2|20|40
|||||Total L3|12||190
||
Atténuateurs : AT1 (30 W) pour la boutique seulement, AT2 (100 W) pour la roseraie.
Réserve demandée sur chaque voie : 20 %.
`)
		p.Merge("A5:A8", "B5:B8", "C5:C8", "D5:D8", "A9:A12", "B9:B12", "C9:C12", "D9:D12", "A13:A16", "B13:B16", "C13:C16", "D13:D16")
		p.Bold("A1", "A4:I4", "F8:I8", "F12:I12", "F16:I16")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("BE-1187", "Jardin botanique des Ormeaux", "merged cells down each line, subtotals inside them, attenuators in a sentence by room")
		t.Speakers("sheet=Bilan; tap_v=100; line_v=100; zone=Serres; amplifier=AMP1; channel=1", `rows|room|count|tap_w
5|Serre tropicale|4|10
6|Serre désertique|2|10
7|Sas|1|3`)
		t.Speakers("sheet=Bilan; tap_v=100; line_v=100; zone=Accueil; amplifier=AMP1; channel=2", `rows|room|count|tap_w|control
9|Billetterie|2|3|
10|Boutique|4|3|AT1
11|Sanitaires|2|1.5|`)
		t.Speakers("sheet=Bilan; tap_v=100; line_v=100; zone=Parc; amplifier=AMP2; channel=1", `rows|room|count|tap_w|control
13|Allée des érables|6|15|
14|Roseraie|4|15|AT2
15|Parking|2|20|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|1|120|63
AMP1|2|60|21
AMP2|1|240|190`)
		t.Amplifiers("", `amplifier|load_w
AMP1|84
AMP2|190`)
		t.Controls("", `control|rated_w|load_w
AT1|30|12
AT2|100|60`)
		t.Left("Bilan", `8|total|line 1
12|total|line 2
16|total|line 3`)
	}},

	// Un installateur rend le dossier des ouvrages exécutés d'une patinoire : chaque HP avec le bout de câble qui y mène.
	{File: "DOE/23-417 repérage HP.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Chantier 23-417 Patinoire des Aulnes;;;;;;
Repère;Implantation;Prise du transfo (W);Départ;Arrive de;ml;Section mm²
D1-01;Piste, poteau 1;30;D1;baie;48;2x2,5
D1-02;Piste, poteau 3;30;D1;D1-01;12;2x2,5
D1-03;Piste, poteau 5;30;D1;D1-02;12;2x2,5
D1-04;Piste, poteau 7;30;D1;D1-03;12;2x2,5
D2-01;Gradins nord;10;D2;baie;36;2x2,5
D2-02;Gradins nord;10;D2;D2-01;9;2x2,5
D2-03;Gradins sud;10;D2;D2-02;22,5;2x2,5
D2-04;Gradins sud;10;D2;D2-03;9;2x2,5
RV1;Location patins, derrière le comptoir;;D3;baie;28;2x1,5
D3-01;Location patins;6;D3;RV1;6;2x1,5
D3-02;Location patins;6;D3;D3-01;7,5;2x1,5
D3-03;Caisse;3;D3;D3-02;8;2x1,5
D3-04;Infirmerie;3;D3;baie;41;2x1,5
;;;;;;
Baie : ampli AP1, 100 V. Départ D1 240 W, départs D2 et D3 120 W chacun.;;;;;;
RV1 : réglage de volume 24 W, commande D3-01 à D3-03.;;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("23-417", "Patinoire des Aulnes", "devices and from-to cables in one list, the control as a row of it; outputs and rating below")
		t.Speakers("tap_v=100; line_v=100; amplifier=AP1; channel=D1; tap_w=30", `rows|tag|room
3|D1-01|Piste, poteau 1
4|D1-02|Piste, poteau 3
5|D1-03|Piste, poteau 5
6|D1-04|Piste, poteau 7`)
		t.Speakers("tap_v=100; line_v=100; amplifier=AP1; channel=D2; tap_w=10", `rows|tag|room
7..8|D2-01..|Gradins nord
9..10|D2-03..|Gradins sud`)
		t.Speakers("tap_v=100; line_v=100; amplifier=AP1; channel=D3", `rows|tag|room|tap_w|control
12|D3-01|Location patins|6|RV1
13|D3-02|Location patins|6|RV1
14|D3-03|Caisse|3|RV1
15|D3-04|Infirmerie|3|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AP1|D1|240|120
AP1|D2|120|40
AP1|D3|120|18`)
		t.Amplifiers("", `amplifier|load_w
AP1|178`)
		t.Controls("", `control|rated_w|load_w
RV1|24|15`)
		t.Lines("note=from-to run", `from|to|length_m|area_mm2
baie|D1-01|48|2.5
D1-01|D1-02|12|2.5
D1-02|D1-03|12|2.5
D1-03|D1-04|12|2.5
baie|D2-01|36|2.5
D2-01|D2-02|9|2.5
D2-02|D2-03|22.5|2.5
D2-03|D2-04|9|2.5
baie|RV1|28|1.5
RV1|D3-01|6|1.5
D3-01|D3-02|7.5|1.5
D3-02|D3-03|8|1.5
baie|D3-04|41|1.5`)
		t.Left("", `11|control|volume control in the list of loudspeakers`)
	}},

	// L'expert d'un assureur dresse l'inventaire après un dégât des eaux.
	{File: "expertise/sinistre 55-2087 inventaire.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Inventaire")
		p.Put("A1", `
Planétarium de Haute-Bruyère
Dossier 55-2087, dégât des eaux. Inventaire de la sonorisation, constat sur place
||
N°|Niveau|Local|Matériel|Quantité|Puissance réglée|Raccordé sur|Constat
1|0|Accueil|haut-parleur encastré|4|3 W|sortie 1|sec, fonctionne
2|0|Salle d'exposition|haut-parleur encastré|8|3 W|sortie 1|sec, fonctionne
3|0|Vestiaire|haut-parleur encastré|1|1,5 W|sortie 1|grille tachée, fonctionne
4|1|Coupole|colonne|6|10 W|sortie 2|mouillées, toujours en place
5|1|Régie|haut-parleur mural|1|6 W|sortie 2|sec, fonctionne
6|1|Salle de cours|haut-parleur encastré|4|3 W|sortie 2|déposés le 4 mai et jetés
7|1|Couloir|haut-parleur encastré|3|3 W|sortie 2|sec, fonctionne
8|1|Réserve|haut-parleur encastré|2|3 W|non raccordés|neufs, en carton, rechange
9|0|Salle d'exposition|atténuateur mural 36 W|1||sortie 1|sec, règle les huit de la salle
10|0|Local technique|amplificateur 100 V, 2 x 120 W|1|||sec
`)
		p.Bold("A1", "A4:H4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("55-2087", "Planétarium de Haute-Bruyère", "insurer's inventory: wet but in place, thrown away, boxed spares; attenuator and amplifier without names as rows of the same list")
		t.Speakers("sheet=Inventaire; tap_v=100; line_v=100; channel=1", `rows|room|count|tap_w|note
5|Accueil|4|3|
6|Salle d'exposition|8|3|unnamed
7|Vestiaire|1|1.5|`)
		t.Speakers("sheet=Inventaire; tap_v=100; line_v=100; channel=2", `rows|room|count|tap_w
8|Coupole|6|10
9|Régie|1|6
11|Couloir|3|3`)
		t.Channels("line_v=100; rated_w=120", `channel|load_w
1|37.5
2|75`)
		t.Amplifiers("", `amplifier|load_w
|112.5`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|36|24`)
		t.Left("Inventaire", `10|removed|taken down and thrown away
12|spare|boxed, not connected
13|control|attenuator
14|amplifier|amplifier`)
	}},
}
