package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A drawing office, a caretaker and an apprentice, in French.
var dossiersFrench = []typed.Case{

	{File: "dossiers/affaires/22-118 Planétarium.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Page de garde")
		p.Put("B3", `
Planétarium des Hauts-Prés
Sonorisation - carnet des matériels
Affaire|22-118
Indice|B
Distribution|ligne 100 V
`)
		p.Bold("B3")
		r := p.Sheet("RdC")
		r.Put("A1", `
Repère|Local|Type|Réglage (W)|Ampli/voie|Atténuateur
HP01|Hall d'accueil|plafonnier|6|A1/1|AT1
HP02|Hall d'accueil|plafonnier|6|A1/1|AT1
HP03|Hall d'accueil|plafonnier|6|A1/1|AT1
HP04|Billetterie|plafonnier|1,5|A1/1|AT2
HP05|Vestiaire|plafonnier|3|A1/1
HP06|Sanitaires|plafonnier|1,5|A1/1
HP07|Atelier|projecteur|10|A1/2
HP08|Local technique|projecteur|10|A1/2
`)
		r.Bold("A1:F1")
		e := p.Sheet("Étage")
		e.Put("A1", `
Repère|Local|Type|Réglage (W)|Ampli/voie|Atténuateur
HP11|Coupole|colonne|20|A2/1
HP12|Coupole|colonne|20|A2/1
HP13|Coupole|colonne|20|A2/1
HP14|Coupole|colonne|20|A2/1
HP15|Salle d'exposition|plafonnier|6|A2/2|AT3
HP16|Salle d'exposition|plafonnier|6|A2/2|AT3
HP17|Salle d'exposition|plafonnier|6|A2/2|AT3
HP18|Bureau|plafonnier|1,5|A2/2|AT4
`)
		e.Bold("A1:F1")
		a := p.Sheet("Baie")
		a.Put("A1", `
Ampli|Voie|Puissance
A1|1|60 W
A1|2|60 W
A2|1|120 W
A2|2|60 W

Atténuateur|Local|Puissance max.
AT1|Hall d'accueil|30 W
AT2|Billetterie|5 W
AT3|Salle d'exposition|24 W
AT4|Bureau|5 W
`)
		a.Bold("A1:C1", "A7:C7")
		c := p.Sheet("Câbles")
		c.Put("A1", `
Départ|Arrivée|Section|Longueur
A1/1|HP01|2 x 1,5 mm²|18 m
A1/2|HP07|2 x 1,5 mm²|32 m
A2/1|HP11|2 x 2,5 mm²|41 m
A2/2|HP15|2 x 1,5 mm²|37 m
`)
		c.Bold("A1:D1")
		b := p.Sheet("Bordereau")
		b.Put("A1", `
N°|Désignation|Qté|PU HT
1|Haut-parleur plafonnier|10|38,50
2|Projecteur de son|2|71,00
3|Colonne 20 W|4|149,00
4|Atténuateur|4|22,00
5|Amplificateur|2|640,00
`)
		b.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("22-118", "Planétarium des Hauts-Prés", "six sheets: cover with voltage, floors, rack with controls below, cables, and a bill that counts the same loudspeakers again")
		t.Revision("B", false)
		t.Speakers("sheet=RdC; tap_v=100; line_v=100; amplifier=A1", `rows|tag|room|tap_w|channel|control
2|HP01|Hall d'accueil|6|1|AT1
3|HP02|Hall d'accueil|6|1|AT1
4|HP03|Hall d'accueil|6|1|AT1
5|HP04|Billetterie|1.5|1|AT2
6|HP05|Vestiaire|3|1|
7|HP06|Sanitaires|1.5|1|
8|HP07|Atelier|10|2|
9|HP08|Local technique|10|2|`)
		t.Speakers("sheet=Étage; tap_v=100; line_v=100; amplifier=A2", `rows|tag|room|tap_w|channel|control
2|HP11|Coupole|20|1|
3|HP12|Coupole|20|1|
4|HP13|Coupole|20|1|
5|HP14|Coupole|20|1|
6|HP15|Salle d'exposition|6|2|AT3
7|HP16|Salle d'exposition|6|2|AT3
8|HP17|Salle d'exposition|6|2|AT3
9|HP18|Bureau|1.5|2|AT4`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A1|1|60|24
A1|2|60|20
A2|1|120|80
A2|2|60|19.5`)
		t.Amplifiers("", `amplifier|load_w
A1|44
A2|99.5`)
		t.Controls("", `control|rated_w|load_w
AT1|30|18
AT2|5|1.5
AT3|24|18
AT4|5|1.5`)
		t.Lines("", `from|to|length_m|area_mm2
A1/1|HP01|18|1.5
A1/2|HP07|32|1.5
A2/1|HP11|41|2.5
A2/2|HP15|37|1.5`)
		t.Left("Bordereau", `2|price|counted again
3|price|counted again
4|price|counted again
5|price|controls
6|price|amplifiers`)
	}},

	{File: "dossiers/mediatheque/relevé gardien.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Médiathèque du Vieux-Canal - relevé des haut-parleurs fait par le gardien;;;
;;;
Salle;Nombre;Watts;Observations
Accueil;2;3;
Prêt adultes;6;3;réglé par V1 derrière la banque
Prêt jeunesse;4;3;réglé par V2 près de la porte
Salle de conte;2;1,5;sur V2 aussi
Salle de lecture;8;1,5;réglé par V3
Auditorium;4;6;
Réserve;1;10;pavillon
Parking;2;10;déposés pour le ravalement, pas reposés
Couloir;3;1,5;
;;;
Ampli de 120 W dans le placard du hall, sortie 100 volts, une seule ligne pour tout;;;
Puissance des réglages : V1 35 W, V2 20 W, V3 35 W;;;
Trois haut-parleurs de rechange dans l'armoire;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Médiathèque du Vieux-Canal", "controls in remarks, all ratings and the spares in sentences below; Windows text; one row taken down")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|control
4|Accueil|2|3|
5|Prêt adultes|6|3|V1
6|Prêt jeunesse|4|3|V2
7|Salle de conte|2|1.5|V2
8|Salle de lecture|8|1.5|V3
9|Auditorium|4|6|
10|Réserve|1|10|
12|Couloir|3|1.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|120|89.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|120|89.5`)
		t.Controls("", `control|rated_w|load_w
V1|35|18
V2|20|15
V3|35|12`)
		t.Left("", `11|removed|taken down, not put back
16|spare|three in the cupboard`)
	}},

	{File: "dossiers/musee/Batellerie tableau.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("HP")
		p.Put("A1", `
Musée de la Batellerie - haut-parleurs par salle

Salle|Entrée|Boutique|Salle 1|Salle 2|Salle 3|Réserves|Cour
Nombre|2|2|4|4|3|1|2
Prise W|3|1.5|6|6|3|10|15
Total W|6|3|24|24|9|10|30
Potentiomètre||PT1|PT2||PT3
Puissance pot. W||5|60||12
Sortie ampli|1|1|2|2|2|3|3

Ampli 100 V à 3 sorties : sortie 1 60 W, sortie 2 120 W, sortie 3 60 W
`)
		p.Merge("D7:E7", "D8:E8")
		p.Bold("A3:A9", "B3:H3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Musée de la Batellerie", "transposed; a merged control over two rooms; one amplifier without a name, its three outputs rated in a sentence")
		t.Speakers("sheet=HP; tap_v=100; line_v=100", `rows|room|count|tap_w|channel|control
B|Entrée|2|3|1|
C|Boutique|2|1.5|1|PT1
D|Salle 1|4|6|2|PT2
E|Salle 2|4|6|2|PT2
F|Salle 3|3|3|2|PT3
G|Réserves|1|10|3|
H|Cour|2|15|3|`)
		t.Channels("line_v=100", `channel|rated_w|load_w
1|60|9
2|120|57
3|60|40`)
		t.Amplifiers("", `amplifier|load_w
|106`)
		t.Controls("", `control|rated_w|load_w
PT1|5|3
PT2|60|48
PT3|12|9`)
	}},

	{File: "dossiers/halle/éclairage.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Luminaires")
		p.Put("A1", `
Halle aux Grains - relevé de l'éclairage
Tableau TD2, départs 230 V

Zone|Local|Luminaires|W/pièce|W total|Départ|Variateur
Halle|Travée 1|8|58|464|D1
Halle|Travée 2|8|58|464|D1
Halle|Travée 3|8|58|464|D2
Scène|Rampe|6|20|120|D3|VA1 (300 W)
Scène|Coulisses|4|20|80|D3
Bureaux|Accueil|3|36|108|D4|VA2 (200 W)
Bureaux|Réunion|4|36|144|D4|VA3 (200 W)
Extérieur|Parvis|5|70|350|D5
Total||46||2194
`)
		p.Bold("A1", "A4:G4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Halle aux Grains", "a lighting list: zones, pieces, watts, circuits and dimmers, but no loudspeaker")
	}},
}
