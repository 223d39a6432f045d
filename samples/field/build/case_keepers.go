package main

import (
	"lineaudit/samples/typed"

	"github.com/xuri/excelize/v2"
)

// hausmeister keeps the papers of a municipal hall.
var hausmeister = []typed.Case{
	{File: "Hausmeister/Eisstadion Grünau Lautsprecher.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Tabelle1")
		p.Put("A1", `
Eisstadion Grünau||||||
Lautsprecherübersicht, Stand Okt. 2020||||||
||||||
Ort|Anzahl|Art|Watt eingestellt|hängt an|lauter/leiser|Bemerkungen
Eisfläche Längsseite A|6|Druckkammer|15|Verst. 1|–|
Eisfläche Längsseite B|6|Druckkammer|15|Verst. 1|–|
Strafbank|2|Kompaktbox|5|Verst. 2|Drehknopf 10 W|
Sprecherkabine|1|Kompaktbox|3|Verst. 2|Drehknopf 5 W|
Umkleide 1–4|8|Decke|1,5|Verst. 2|–|1x defekt (Umkl. 3), noch dran
Foyer|5|Decke|3|Verst. 2|Drehknopf 20 W|
Außen Eingang|2|Druckkammer|10|Verst. 2|–|im Winter aus
||||||
Verstärker 1: 240 W, Verstärker 2: 120 W, jeweils 100-V-Ausgang||||||
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Eisstadion Grünau", "a caretaker's German words for taps, feeds and controls")
		t.Speakers("tap_v=100; line_v=100; sheet=Tabelle1", `
rows|room|count|model|tap_w|amplifier|note
5|Eisfläche Längsseite A|6|Druckkammer|15|Verst. 1|
6|Eisfläche Längsseite B|6|Druckkammer|15|Verst. 1|
7|Strafbank|2|Kompaktbox|5|Verst. 2|unnamed control
8|Sprecherkabine|1|Kompaktbox|3|Verst. 2|unnamed control
9|Umkleide 1–4|8|Decke|1.5|Verst. 2|
10|Foyer|5|Decke|3|Verst. 2|unnamed control
11|Außen Eingang|2|Druckkammer|10|Verst. 2|
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nVerst. 1|240|180\nVerst. 2|120|60")
		t.Amplifiers("", "amplifier|rated_w|load_w\nVerst. 1|240|180\nVerst. 2|120|60")
		t.Controls("note=unnamed", "zone|rated_w|load_w\nStrafbank|10|10\nSprecherkabine|5|3\nFoyer|20|15")
	}},

	{File: "Hausmeister/Angebot 4711 Sternwarte Umbau.csv", Kind: "schedule", Bytes: text(`
Angebot Nr. 4711;;;;;
BV: Sternwarte Hochstein, Umbau Beschallung;;;;;
;;;;;
Pos;Menge;Einh;Bezeichnung;Zone;Hinweis
1.1;8;St;Deckenlautsprecher 6 W, 100 V, Abgriff 3 W;Foyer;
1.2;4;St;Wandlautsprecher 10 W, 100 V, Abgriff 5 W;Seminar;
1.3;2;St;Trichterlautsprecher 15 W, 100 V, Abgriff 15 W;Dachterrasse;
1.4;1;St;Trichterlautsprecher 15 W, 100 V;Ersatz;Lager
2.1;1;St;Lautstärkeregler 30 W;Seminar;
3.1;1;St;Mischverstärker 60 W, 100 V;Foyer;
3.2;1;St;Mischverstärker 60 W, 100 V;Seminar + Dachterrasse;
4.1;210;m;Leitung NYM-J 3x1,5;;
5.1;1;psch;Inbetriebnahme;;
`), Truth: func(t *typed.Truth) {
		t.Is("4711", "Sternwarte Hochstein", "a quotation in German; zones of loudspeakers, controls and amplifiers; one spare")
		t.Speakers("tap_v=100; line_v=100", `
rows|tag|zone|count|tap_w|amplifier|control
5|1.1|Foyer|8|3|3.1|
6|1.2|Seminar|4|5|3.2|2.1
7|1.3|Dachterrasse|2|15|3.2|
`)
		t.Speakers("status=spare", "rows|tag|count\n8|1.4|1")
		t.Channels("line_v=100; rated_w=60", "amplifier|load_w\n3.1|24\n3.2|50")
		t.Controls("note=named only by its item", "control|zone|rated_w|load_w\n2.1|Seminar|30|20")
		t.Left("", "9|control|no loudspeaker\n10|amplifier|no loudspeaker\n11|amplifier|no loudspeaker\n12|cable|no loudspeaker\n13|other|work")
	}},
}

// syndic is a French-speaking office in charge of several public buildings.
var syndic = []typed.Case{
	{File: "syndic/Jardin des Aubépines - sono.xlsx", Kind: "schedule", Book: sheets("Zones", `
Jardin botanique des Aubépines - marché 2021-58|||||
Zone|Nom|Ampli|Sortie|P. ampli|Remarque
Z1|Allées|AMP A|1|120 W|
Z2|Serres|AMP A|2|120 W|
Z3|Accueil|AMP B|1|60 W|

Tension de ligne : 100 V
`, "HP", `
Zone|Emplacement|Quantité|Modèle|Prise
Z1|Allée nord|5|borne|10 W
Z1|Allée sud|5|borne|10 W
Z2|Serre chaude|4|projecteur|10 W
Z2|Serre froide|4|projecteur|5 W
Z2|Bouturage|1|projecteur|5 W
Z3|Hall|6|plafonnier|3 W
Z3|Salle animation|4|plafonnier|3 W
Z3|Bureau|1|plafonnier|1,5 W
`, "Atténuateurs", `
N°|Zone|Emplacement|Puissance
1|Z3|Salle animation|24 W
2|Z3|Bureau|6 W
`), Truth: func(t *typed.Truth) {
		t.Is("2021-58", "Jardin botanique des Aubépines", "zones, loudspeakers and attenuators on three sheets; the attenuators are joined by place")
		t.Speakers("tap_v=100; line_v=100; sheet=HP", `
rows|zone|room|count|model|tap_w|amplifier|channel|control
2|Z1|Allée nord|5|borne|10|AMP A|1|
3|Z1|Allée sud|5|borne|10|AMP A|1|
4|Z2|Serre chaude|4|projecteur|10|AMP A|2|
5|Z2|Serre froide|4|projecteur|5|AMP A|2|
6|Z2|Bouturage|1|projecteur|5|AMP A|2|
7|Z3|Hall|6|plafonnier|3|AMP B|1|
8|Z3|Salle animation|4|plafonnier|3|AMP B|1|1
9|Z3|Bureau|1|plafonnier|1.5|AMP B|1|2
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nAMP A|1|120|100\nAMP A|2|120|65\nAMP B|1|60|31.5")
		t.Amplifiers("", "amplifier|load_w\nAMP A|165\nAMP B|31.5")
		t.Controls("", "control|rated_w|load_w\n1|24|12\n2|6|1.5")
	}},

	{File: "syndic/Releve bassin nautique.csv", Kind: "schedule", Bytes: text(`
Bassin nautique de Fontvive;;;;;
OS 3381 - relevé des lignes HP;;;;;
;;;;;
Ligne;Composition;W total;Ampli;Section;Longueur
L1;10 projecteurs 10 W;100 W;A1 (120 W);2 x 2,5 mm²;120 m
L2;4 projecteurs 10 W + 2 projecteurs 5 W;50 W;A2 (60 W);2 x 1,5 mm²;75 m
L3;12 plafonniers 3 W;36 W;A3 (60 W);2 x 1,5 mm²;60 m
L4;6 plafonniers 1,5 W derrière atténuateur 12 W;9 W;A3 (60 W);2 x 1,5 mm²;45 m
;;;;;
Toutes lignes en 100 V;;;;;
`), Truth: func(t *typed.Truth) {
		t.Is("3381", "Bassin nautique de Fontvive", "lines with what hangs on them in words, a control in one; two lines on one amplifier")
		t.Speakers("tap_v=100; line_v=100", `
rows|count|model|tap_w|amplifier|channel|note
5|10|projecteurs|10|A1|L1|
6|4|projecteurs|10|A2|L2|
6|2|projecteurs|5|A2|L2|
7|12|plafonniers|3|A3|L3|
8|6|plafonniers|1.5|A3|L4|unnamed control
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nA1|L1|120|100\nA2|L2|60|50\nA3|L3||36\nA3|L4||9")
		t.Amplifiers("", "amplifier|rated_w|load_w\nA1|120|100\nA2|60|50\nA3|60|45")
		t.Controls("note=unnamed", "rated_w|load_w\n12|9")
		t.Lines("note=one length a line", "line|length_m|area_mm2\nL1|120|2.5\nL2|75|1.5\nL3|60|1.5\nL4|45|1.5")
	}},
}
