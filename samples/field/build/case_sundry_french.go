package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

var sundryFrench = []typed.Case{
	// The head of a garden's technical service keeps one sheet, with the lines and the attenuators to the right of the list.
	{File: "sundry/ST-58 sono jardin.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Sono")
		p.Put("A1", `
Jardin botanique de Valmorène, sonorisation 100 V
Fiche du service technique, dossier ST-58

Repère|Emplacement|Genre|Réglage W|Ligne|Att.
HP1|Allée des palmiers|rocher|10|L1
HP2|Allée des palmiers|rocher|10|L1
HP3|Allée des palmiers|rocher|10|L1
HP4|Bassin|rocher|5|L1
HP5|Bassin|rocher|5|L1
HP6|Serre froide|projecteur|10|L2
HP7|Serre froide|projecteur|10|L2
HP8|Serre chaude|projecteur|10|L2|AT1
HP9|Serre chaude|projecteur|10|L2|AT1
HP10|Accueil|plafonnier|3|L3|AT2
HP11|Accueil|plafonnier|3|L3|AT2
HP12|Boutique|plafonnier|3|L3|AT3
HP13|Vestiaire des jardiniers|plafonnier|1.5|L3
HP14|Portail|projecteur|15|L3
HP15|Ancien kiosque, démonté|projecteur|10|L3
`)
		p.Strike("A19:E19")
		p.Put("H4", `
Ligne|Ampli|Sortie|W maxi
L1|AMP 1|A|120
L2|AMP 1|B|120
L3|AMP 2|A|60

Atténuateur|W
AT1|36
AT2|12
AT3|6
`)
		p.Bold("A1", "A4:F4", "H4:K4", "H9:I9")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("ST-58", "Jardin botanique de Valmorène", "plain list; two small tables to its right give the output of each line and the rating of each attenuator; one struck row")
		t.Speakers("sheet=Sono; tap_v=100; line_v=100; amplifier=AMP 1; channel=A", `rows|tag|room|tap_w
5..7|HP1..|Allée des palmiers|10
8..9|HP4..|Bassin|5`)
		t.Speakers("sheet=Sono; tap_v=100; line_v=100; amplifier=AMP 1; channel=B; tap_w=10", `rows|tag|room|control
10..11|HP6..|Serre froide|
12..13|HP8..|Serre chaude|AT1`)
		t.Speakers("sheet=Sono; tap_v=100; line_v=100; amplifier=AMP 2; channel=A", `rows|tag|room|tap_w|control
14..15|HP10..|Accueil|3|AT2
16|HP12|Boutique|3|AT3
17|HP13|Vestiaire des jardiniers|1.5|
18|HP14|Portail|15|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP 1|A|120|40
AMP 1|B|120|40
AMP 2|A|60|25.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP 1||80
AMP 2|60|25.5`)
		t.Controls("", `control|rated_w|load_w
AT1|36|20
AT2|12|6
AT3|6|3`)
		t.Left("Sono", `19|removed|struck through, taken down`)
	}},

	// A consulting office's execution file for a station: tags as ranges, a cable book from-to, a rack sheet.
	{File: "sundry/24.117 gare carnet ind B.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Haut-parleurs")
		p.Put("A1", `
Affaire 24.117|Gare de Saint-Aubrin-les-Forges|||||Indice B
Repères|Zone|Implantation|Type|Qté|Prise (W)|Départ
HP 101 à 108|Quai A|candélabres|projecteur|8|6|AP1/1
HP 109 et 110|Quai A|abri|coffret|2|3|AP1/1
HP 201 à 210|Quai B|candélabres|projecteur|10|6|AP1/2
HP 301 à 306|Hall|plafond|encastré|6|3|AP2/1
HP 307|Hall|guichet|encastré|1|1,5|AP2/1
HP 308 à 310|Hall|sanitaires|encastré|3|1,5|AP2/1
HP 401 à 404|Souterrain|voûte|coffret|4|6|AP2/2
`)
		p.Bold("A1:G1", "A2:G2")
		q := p.Sheet("Câbles")
		q.Put("A1", `
N°|De|À|Long. (m)|Câble
W01|Baie sono|BD quai A|85|2 x 4 mm²
W02|BD quai A|HP 101|12|2 x 2,5 mm²
W03|HP 101|HP 110|140|2 x 2,5 mm²
W04|Baie sono|HP 201|110|2 x 4 mm²
W05|HP 201|HP 210|135|2 x 2,5 mm²
W06|Baie sono|HP 301|30|2 x 1,5 mm²
W07|HP 301|HP 310|45|2 x 1,5 mm²
W08|Baie sono|HP 401|60|2 x 2,5 mm²
W09|HP 401|HP 404|36|2 x 2,5 mm²
`)
		q.Bold("A1:E1")
		r := p.Sheet("Baie")
		r.Put("A1", `
Baie sono, local technique du hall, lignes 100 V
Ampli|Sortie|Puissance
AP1|1|120 W
AP1|2|120 W
AP2|1|60 W
AP2|2|60 W
`)
		r.Bold("A2:C2")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("24.117", "Gare de Saint-Aubrin-les-Forges", "tags as ranges with their count beside, outputs as AP1/1, cables from-to and outputs on sheets of their own")
		t.Revision("B", false)
		t.Speakers("sheet=Haut-parleurs; tap_v=100; line_v=100; amplifier=AP1", `rows|zone|count|tap_w|channel
3|Quai A|8|6|1
4|Quai A|2|3|1
5|Quai B|10|6|2`)
		t.Speakers("sheet=Haut-parleurs; tap_v=100; line_v=100; amplifier=AP2", `rows|zone|count|tap_w|channel
6|Hall|6|3|1
7|Hall|1|1.5|1
8|Hall|3|1.5|1
9|Souterrain|4|6|2`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AP1|1|120|54
AP1|2|120|60
AP2|1|60|24
AP2|2|60|24`)
		t.Amplifiers("", `amplifier|load_w
AP1|114
AP2|48`)
		t.Lines("note=from-to runs", `line|from|to|length_m|area_mm2
W01|Baie sono|BD quai A|85|4
W02|BD quai A|HP 101|12|2.5
W03|HP 101|HP 110|140|2.5
W04|Baie sono|HP 201|110|4
W05|HP 201|HP 210|135|2.5
W06|Baie sono|HP 301|30|1.5
W07|HP 301|HP 310|45|1.5
W08|Baie sono|HP 401|60|2.5
W09|HP 401|HP 404|36|2.5`)
	}},

	// An insurer's expert visits a theatre after a flood: what still works, what was taken down, what was replaced.
	{File: "sundry/SIN-20871 constat sono.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Constat")
		p.Put("A1", `
Théâtre municipal des Trois Saules|||||Dossier|SIN-20871
Dégât des eaux du 28 octobre, constat sur la sonorisation (ligne 100 V)
Amplificateur de 240 W en régie, une seule sortie, non touché

N°|Local|Matériel|Nb|Réglage|État|Valeur €
1|Foyer|haut-parleurs de plafond, sur atténuateur P1|6|3 W|en service
2|Foyer|atténuateur P1 de 30 W|1||en service
3|Escalier d'honneur|enceintes murales|2|6 W|en service
4|Dessous de scène|enceintes murales|3|6 W|noyées, déposées et évacuées|420
5|Couloir des loges|haut-parleurs de plafond|4|1,5 W|remplacés à l'identique le 4 novembre, en service|260
6|Loges 1 à 6|haut-parleurs de plafond|6|1,5 W|en service
7|Atelier décors|projecteurs|2|10 W|en service
8|Réserve|projecteur|1|10 W|oxydé, déposé, non remplacé|145
9|Régie|haut-parleur de plafond|1|3 W|en service
||||||825
`)
		p.Bold("A1", "A5:G5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("SIN-20871", "Théâtre municipal des Trois Saules", "states in words: taken down, replaced in kind; the control is an item among the loudspeakers; one amplifier in a sentence")
		t.Speakers("sheet=Constat; tap_v=100; line_v=100", `rows|room|count|tap_w|control
6|Foyer|6|3|P1
8|Escalier d'honneur|2|6|
10|Couloir des loges|4|1.5|
11|Loges 1 à 6|6|1.5|
12|Atelier décors|2|10|
14|Régie|1|3|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|68`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|68`)
		t.Controls("", `control|rated_w|load_w
P1|30|18`)
		t.Left("Constat", `9|removed|taken down
13|removed|taken down, not replaced`)
	}},
}
