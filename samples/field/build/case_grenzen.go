package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Files of border firms, in two languages each.
var grenzen = []typed.Case{
	{File: "grenze/Schleusenmuseum sluismuseum.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("LS-lijst")
		p.Put("A1", `
Sluismuseum / Schleusenmuseum Drie Kolken||||||Auftrag 5518

Zone|Raum / ruimte|Stk / st|Leistung / vermogen per st|Versterker|Regler / regelaar|Opmerking / Bemerkung
Maschinenhaus|Pumpensaal|6|6 W|V1
|Galerie|4|6 W|V1||opbouw
|werkplaats|2|10 W|V1||hoorn
Ausstellung|Saal 1|6|3 W|V2|R1
|Saal 2|6|3 W|V2|R1
|filmzaal|4|3 W|V2|R2
|Saal 3|4|3 W|V2||entfällt
Eingang|Kasse|1|1,5 W|V2|R3
|garderobe|2|1,5 W|V2
|Vorplatz|2|10 W|V1||Hoorn, pas monteren na herbestrating
`)
		p.Merge("A4:A6", "A7:A10", "A11:A13")
		p.Bold("A1", "A3:G3")
		q := p.Sheet("Kabel")
		q.Put("A1", `
van / von|naar / nach|Typ|m
V1|Pumpensaal|2x2,5|60
Pumpensaal|Galerie|2x2,5|24
Galerie|werkplaats|2x2,5|31
V2|R1|2x1,5|18
R1|Saal 1|2x1,5|12
Saal 1|Saal 2|2x1,5|15,5
V2|R2|2x1,5|22
R2|filmzaal|2x1,5|9
V2|garderobe|2x1,5|27
garderobe|R3|2x1,5|6
R3|Kasse|2x1,5|3,5
`)
		q.Bold("A1:D1")
		r := p.Sheet("Schrank-kast")
		r.Put("A1", `
V1|120 W|100 V
V2|120 W|100 V

R1|60 W
R2|24 W
R3|5 W
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5518", "Sluismuseum / Schleusenmuseum Drie Kolken", "German and Dutch mixed in headers, rooms and remarks; zones in merged cells; one row dropped in German, one to be fitted later in Dutch; amplifiers and controls on a sheet without headers")
		t.Speakers("sheet=LS-lijst; tap_v=100; line_v=100; zone=Maschinenhaus; amplifier=V1", `rows|room|count|tap_w
4|Pumpensaal|6|6
5|Galerie|4|6
6|werkplaats|2|10`)
		t.Speakers("sheet=LS-lijst; tap_v=100; line_v=100; zone=Ausstellung; amplifier=V2", `rows|room|count|tap_w|control
7|Saal 1|6|3|R1
8|Saal 2|6|3|R1
9|filmzaal|4|3|R2`)
		t.Speakers("sheet=LS-lijst; tap_v=100; line_v=100; zone=Eingang; amplifier=V2", `rows|room|count|tap_w|control
11|Kasse|1|1.5|R3
12|garderobe|2|1.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
V1|120|80
V2|120|52.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|120|80
V2|120|52.5`)
		t.Controls("", `control|rated_w|load_w
R1|60|36
R2|24|12
R3|5|1.5`)
		t.Lines("", `from|to|length_m|area_mm2
V1|Pumpensaal|60|2.5
Pumpensaal|Galerie|24|2.5
Galerie|werkplaats|31|2.5
V2|R1|18|1.5
R1|Saal 1|12|1.5
Saal 1|Saal 2|15.5|1.5
V2|R2|22|1.5
R2|filmzaal|9|1.5
V2|garderobe|27|1.5
garderobe|R3|6|1.5
R3|Kasse|3.5|1.5`)
		t.Left("LS-lijst", `10|removed|dropped
13|future|to be fitted after the paving is renewed`)
	}},

	{File: "grenze/Dépôt-Depot Mergelbach.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("HP-LS")
		p.Put("A1", `
Dépôt de trams / Tramdepot Mergelbach, haut-parleurs / Lautsprecher, 100 V

Rez / Erdgeschoss
Lieu / Ort|Nbre / Anz.|W pce / Stk|Ampli / Verst.|Réglage / Regler|Remarque / Bem.
Remise voies 1-4|8|10|1
Remise voies 5-8|8|10|1
Waschanlage|2|15|1
Atelier|4|6|2
Schlosserei|2|6|2||Horn
Magasin|1|6|2||idem

Étage / Obergeschoss
Lieu / Ort|Nbre / Anz.|W pce / Stk|Ampli / Verst.|Réglage / Regler|Remarque / Bem.
Dienstraum|3|3|3|a
Salle de repos|2|3|3|b
Corridor|4|1.5|3
Garderoben|4|1.5|3
Bureau chef|1|1.5|3|c
Archives|1|3|3||démonté

Ampli 1: 240 W, Ampli 2: 120 W, Ampli 3: 60 W
Régleurs a et b: 12 W, c: 6 W
`)
		p.Bold("A1", "A3", "A4:F4", "A12", "A13:F13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Dépôt de trams / Tramdepot Mergelbach", "French and German mixed row by row; floors as titles in both languages, controls named by single letters, ratings in sentences below, one loudspeaker taken down")
		t.Speakers("sheet=HP-LS; tap_v=100; line_v=100; zone=Rez / Erdgeschoss; note=floor as zone", `rows|room|count|tap_w|amplifier
5|Remise voies 1-4|8|10|1
6|Remise voies 5-8|8|10|1
7|Waschanlage|2|15|1
8|Atelier|4|6|2
9|Schlosserei|2|6|2
10|Magasin|1|6|2`)
		t.Speakers("sheet=HP-LS; tap_v=100; line_v=100; zone=Étage / Obergeschoss; amplifier=3; note=floor as zone", `rows|room|count|tap_w|control
14|Dienstraum|3|3|a
15|Salle de repos|2|3|b
16|Corridor|4|1.5|
17|Garderoben|4|1.5|
18|Bureau chef|1|1.5|c`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
1|240|190
2|120|42
3|60|28.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
1|240|190
2|120|42
3|60|28.5`)
		t.Controls("", `control|rated_w|load_w
a|12|9
b|12|6
c|6|1.5`)
		t.Left("HP-LS", `19|removed|taken down`)
	}},
}
