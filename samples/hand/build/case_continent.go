package main

import "lineaudit/samples/typed"

// continent are the awkward lists in other languages: states, several values in one cell, dittos, pairs of circuits, mixed voltages.
func continent() []typed.Case {
	return []typed.Case{
		{File: "Planetarium Mooswalde/Umbau Foyer.xls", Kind: "schedule", Saved: "xls", Book: book("Umbau", `
Planetarium Mooswalde - Umbau Foyer, ELA-Lautsprecher|||||||
Auftrags-Nr. 4471, 100-V-Linie||||||Stand 05/2017|
|||||||
Pos.|Ort|Typ|Stck.|Abgriff|Kanal|Maßnahme|Bem.
1|Foyer|Decke 6 W|6|3 W|1|Bestand|
2|Foyer Säule|Decke 6 W|2|3 W|1|entfällt|
3|Garderobe|Decke 6 W|3|1,5 W|1|neu|
4|Kasse|Decke 6 W|2|1,5 W|1|versetzt|aus Pos. 2
5|Windfang|Wand 10 W|1|5 W|2|neu|
6|Vorplatz|Horn 15 W|2|7,5 W|2|Bestand|bisher 15 W
7|Fahrradkeller|Wand 10 W|1|5 W|2|später|Leerrohr vorhanden
8|Lager|Decke 6 W|4|||Reserve|
9|Sternwartenverein|Decke 6 W|4||Pächter|bauseits|
|||||||
Verstärker: 2 Kanäle je 60 W|||||||
`, bold("A1", "A4:H4")), Truth: func(t *typed.Truth) {
			t.Is("4471", "Planetarium Mooswalde", "states in a column of measures: stays, falls away, new, moved, later, reserve, by others")
			t.Speakers("tap_v=100; line_v=100; sheet=Umbau", `
rows|tag|room|model|count|tap_w|channel|status|note
5|1|Foyer|Decke 6 W|6|3|1|installed|
6|2|Foyer Säule|Decke 6 W|2|3|1|removed|
7|3|Garderobe|Decke 6 W|3|1.5|1|installed|
8|4|Kasse|Decke 6 W|2|1.5|1|installed|
9|5|Windfang|Wand 10 W|1|5|2|installed|
10|6|Vorplatz|Horn 15 W|2|7.5|2|installed|the 15 W are the old tap
11|7|Fahrradkeller|Wand 10 W|1|5|2|future|
12|8|Lager|Decke 6 W|4|||spare|
`)
			t.Channels("line_v=100; rated_w=60", `
channel|load_w
1|25.5
2|20
`)
			t.Amplifiers("", "rated_w|load_w|note\n120|45.5|unnamed")
			t.Left("Umbau", "13|by others|the tenant's")
		}},

		{File: "Bootshaus Grauwehr/Zonenblatt.xlsx", Kind: "schedule", Book: book("Zonen", `
Bootshaus Grauwehr - Zonenblatt (100 V)

Zone|Bereich|Lautsprecher und Abgriff|Summe|Ausgang|zulässig
1|Bootshalle|6 x 10 W Säule|60 W|1|60 W
2|Umkleiden, Flur|8 x 1,5 W Decke + 2 x 3 W Decke|18 W|2|60 W
3|Werkstatt|2 x 6 W Wand|12 W|2|60 W
4|Steg, Zufahrt|4 x 15 W Horn + 1 x 7,5 W Horn|67,5 W|3|60 W
`, bold("A1", "A3:F3")), Truth: func(t *typed.Truth) {
			t.Is("", "Bootshaus Grauwehr", "count, tap and kind in one cell, two groups in some; the output is over its rating")
			t.Speakers("tap_v=100; line_v=100; sheet=Zonen", `
rows|zone|room|model|count|tap_w|channel
4|1|Bootshalle|Säule|6|10|1
5|2|Umkleiden, Flur|Decke|8|1.5|2
5|2|Umkleiden, Flur|Decke|2|3|2
6|3|Werkstatt|Wand|2|6|2
7|4|Steg, Zufahrt|Horn|4|15|3
7|4|Steg, Zufahrt|Horn|1|7.5|3
`)
			t.Channels("line_v=100; rated_w=60", `
channel|load_w|note
1|60|exactly its rating
2|30|
3|67.5|over its rating
`)
		}},

		{File: "Patinoire de Vaubrière/SSS lignes A et B.ods", Kind: "schedule", Saved: "ods", Book: book("Lignes", `
Patinoire de Vaubrière - système de sonorisation de sécurité||||||||
Répartition des haut-parleurs sur les lignes A et B (100 V)||||||||
||||Nombre de HP||Puissance (W)||
Zone|Local|Type|Prise (W)|Ligne A|Ligne B|Ligne A|Ligne B|Obs.
ZD1|Piste|Projecteur|20|5|5|100|100|
ZD2|Gradins|Projecteur|10|6|6|60|60|
ZD3|Hall|Plafonnier|3|6|6|18|18|
ZD3|Sanitaires|Plafonnier|1,5|3|2|4,5|3|
ZD4|Locaux techniques|Pavillon|7,5|2|2|15|15|
|Total|||22|21|197,5|196|
Ampli 1 (240 W) : toutes les lignes A - Ampli 2 (240 W) : toutes les lignes B||||||||
`, merged("E3:F3", "G3:H3"), bold("A1", "A3:I4")), Truth: func(t *typed.Truth) {
			t.Is("", "Patinoire de Vaubrière", "a row's loudspeakers are counted on line A and on line B; the watts beside are sums; an amplifier a letter")
			t.Speakers("tap_v=100; line_v=100; sheet=Lignes", `
rows|zone|room|model|count|tap_w|amplifier
5|ZD1|Piste|Projecteur|5|20|Ampli 1
5|ZD1|Piste|Projecteur|5|20|Ampli 2
6|ZD2|Gradins|Projecteur|6|10|Ampli 1
6|ZD2|Gradins|Projecteur|6|10|Ampli 2
7|ZD3|Hall|Plafonnier|6|3|Ampli 1
7|ZD3|Hall|Plafonnier|6|3|Ampli 2
8|ZD3|Sanitaires|Plafonnier|3|1.5|Ampli 1
8|ZD3|Sanitaires|Plafonnier|2|1.5|Ampli 2
9|ZD4|Locaux techniques|Pavillon|2|7.5|Ampli 1
9|ZD4|Locaux techniques|Pavillon|2|7.5|Ampli 2
`)
			t.Channels("line_v=100; rated_w=240", `
amplifier|load_w
Ampli 1|197.5
Ampli 2|196
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
Ampli 1|240|197.5
Ampli 2|240|196
`)
			t.Left("Lignes", "10|total|right")
		}},

		{File: "Jardin des Estives/sono parc.csv", Kind: "schedule", Bytes: ansi(`
Jardin des Estives;Sono du parc;;;;
Ligne 100 V;Ampli unique 240 W;;;;
;;;;;
Emplacement;HP;Qté;Réglage;Câble;Long. (m)
Allée des tilleuls;borne 20 W;6;10 W;2x2,5;180
Roseraie;borne 20 W;4;10 W;idem;95
Labyrinthe;idem;3;idem;idem;140
Kiosque;colonne 30 W;2;15 W;2x1,5;60
Embarcadère;pavillon 30 W;2;20 W;2x4;260
Embarcadère (réserve);pavillon 30 W;1;;;
Entrée;idem;1;7,5 W;2x1,5;35
`), Truth: func(t *typed.Truth) {
			t.Is("", "Jardin des Estives", "'idem' stands for the cell above, a reserve lies between; a cable to each place from the one amplifier")
			t.Speakers("tap_v=100; line_v=100", `
rows|room|model|count|tap_w|status|note
5|Allée des tilleuls|borne 20 W|6|10|installed|
6|Roseraie|borne 20 W|4|10|installed|
7|Labyrinthe|borne 20 W|3|10|installed|
8|Kiosque|colonne 30 W|2|15|installed|
9|Embarcadère|pavillon 30 W|2|20|installed|
10|Embarcadère (réserve)|pavillon 30 W|1||spare|
11|Entrée|pavillon 30 W|1|7.5|installed|
`)
			t.Channels("line_v=100", "rated_w|load_w\n240|207.5")
			t.Amplifiers("", "rated_w|load_w|note\n240|207.5|unnamed")
			t.Lines("material=copper", `
zone|length_m|area_mm2
Allée des tilleuls|180|2.5
Roseraie|95|2.5
Labyrinthe|140|2.5
Kiosque|60|1.5
Embarcadère|260|4
Entrée|35|1.5
`)
		}},

		{File: "Jardín Botánico Fuentelar/Invernaderos por tomas.xlsx", Kind: "schedule", Saved: "xlsx", Book: book("Tomas", `
JARDÍN BOTÁNICO DE FUENTELAR - INVERNADEROS
Número de altavoces por toma (línea de 100 V)

Recinto|Línea|1,5 W|3 W|6 W|10 W|15 W|Carga (W)|Etapa
Tropical|1|||4|6||84|E-1 canal 1
Desértico|2|||2|4||52|E-1 canal 2
Semillero|2||3||||9|E-1 canal 2
Aulas|3|2|8||||27|E-2 canal 1
Aseos|3|4|||||6|E-2 canal 1
Exterior|4|||||5|75|E-2 canal 2
Suma||6|11|6|10|5|253|

Etapa E-1: 2 x 120 W. Etapa E-2: 2 x 60 W.
`, bold("A1", "A4:I4")), Truth: func(t *typed.Truth) {
			t.Is("", "Jardín Botánico de Fuentelar", "matrix of counts by tap, the output at the end; two ratings in one line")
			t.Speakers("tap_v=100; line_v=100; sheet=Tomas", `
rows|room|count|tap_w|amplifier|channel
5|Tropical|4|6|E-1|1
5|Tropical|6|10|E-1|1
6|Desértico|2|6|E-1|2
6|Desértico|4|10|E-1|2
7|Semillero|3|3|E-1|2
8|Aulas|2|1.5|E-2|1
8|Aulas|8|3|E-2|1
9|Aseos|4|1.5|E-2|1
10|Exterior|5|15|E-2|2
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w|note
E-1|1|120|84|
E-1|2|120|61|52 + 9
E-2|1|60|33|
E-2|2|60|75|over its rating
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
E-1|240|145
E-2|120|108
`)
			t.Left("Tomas", "11|total|right")
		}},

		{File: "Pista de hielo Robleda/reforma vestuarios.csv", Kind: "schedule", Bytes: ansi(`
PISTA DE HIELO DE ROBLEDA;;;;;;
Reforma de vestuarios - altavoces;;;;Obra 15/206;;
;;;;;;
Ref;Local;Tipo;Cant.;Potencia;Línea;Estado
A1;Vestuario 1;Techo;2;3 W;L1;existente
A2;Vestuario 2;Techo;2;3 W;L1;existente
A3;Vestuario 3;Techo;2;3 W;L1;nuevo
A4;Árbitros;Techo;1;1,5 W;L1;nuevo
A5;Pasillo antiguo;Techo;3;3 W;L1;a retirar
A6;Pasillo;Techo;4;1,5 W;L1;nuevo
A7;Grada;Bocina;4;15 W;L2;existente
A8;Grada ampliación;Bocina;2;15 W;L2;fase futura
A9;Almacén;Techo;2;;;repuesto
;;;;;;
Línea L1: etapa 1, 60 W;;;;;;
Línea L2: etapa 2, 60 W;;;;;;
Todas las líneas a 100 V;;;;;;
`), Truth: func(t *typed.Truth) {
			t.Is("15/206", "Pista de hielo de Robleda", "states: existing, new, to be taken out, later, spare; lines and their amplifiers in sentences")
			t.Speakers("tap_v=100; line_v=100", `
rows|tag|room|model|count|tap_w|amplifier|channel|status
5|A1|Vestuario 1|Techo|2|3|etapa 1|L1|installed
6|A2|Vestuario 2|Techo|2|3|etapa 1|L1|installed
7|A3|Vestuario 3|Techo|2|3|etapa 1|L1|installed
8|A4|Árbitros|Techo|1|1.5|etapa 1|L1|installed
9|A5|Pasillo antiguo|Techo|3|3|etapa 1|L1|removed
10|A6|Pasillo|Techo|4|1.5|etapa 1|L1|installed
11|A7|Grada|Bocina|4|15|etapa 2|L2|installed
12|A8|Grada ampliación|Bocina|2|15|etapa 2|L2|future
13|A9|Almacén|Techo|2||||spare
`)
			t.Channels("line_v=100; rated_w=60", `
amplifier|channel|load_w
etapa 1|L1|25.5
etapa 2|L2|60
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
etapa 1|60|25.5
etapa 2|60|60
`)
		}},

		{File: "Palaghiaccio Valsolina/quadro amplificatori.xls", Kind: "schedule", Saved: "xls", Book: book("Quadro", `
Palaghiaccio di Valsolina - quadro amplificatori e diffusori|||||
Linee a 100 V|||||
AMPLIFICATORE 1 - 120 W|||||
Locale|Diffusore|Pezzi|W cad.|W tot.|Note
Atrio|plafoniera|6|3|18|
Corridoio|"|5|1,5|7,5|
Spogliatoi|"|8|"|12|
Infermeria|"|1|"|1,5|regolatore 6 W
Totale||20||39|
AMPLIFICATORE 2 - 240 W|||||
Locale|Diffusore|Pezzi|W cad.|W tot.|Note
Pista est|tromba|6|20|120|
Pista ovest|"|5|"|100|
Totale||11||220|
AMPLIFICATORE 3 - 60 W|||||
Locale|Diffusore|Pezzi|W cad.|W tot.|Note
Piazzale|tromba|2|15|30|
Biglietteria esterna|"|1|7,5|7,5|
Totale||3||37,5|
`, bold("A1", "A3", "A10", "A15")), Truth: func(t *typed.Truth) {
			t.Is("", "Palaghiaccio di Valsolina", "a section an amplifier with its rating in the title, ditto marks, a control in a note without a name")
			t.Speakers("tap_v=100; line_v=100; sheet=Quadro", `
rows|room|model|count|tap_w|amplifier|note
5|Atrio|plafoniera|6|3|AMPLIFICATORE 1|
6|Corridoio|plafoniera|5|1.5|AMPLIFICATORE 1|
7|Spogliatoi|plafoniera|8|1.5|AMPLIFICATORE 1|
8|Infermeria|plafoniera|1|1.5|AMPLIFICATORE 1|unnamed control of 6 W
12|Pista est|tromba|6|20|AMPLIFICATORE 2|
13|Pista ovest|tromba|5|20|AMPLIFICATORE 2|
17|Piazzale|tromba|2|15|AMPLIFICATORE 3|
18|Biglietteria esterna|tromba|1|7.5|AMPLIFICATORE 3|
`)
			t.Channels("line_v=100", `
amplifier|rated_w|load_w
AMPLIFICATORE 1|120|39
AMPLIFICATORE 2|240|220
AMPLIFICATORE 3|60|37.5
`)
			t.Controls("note=unnamed", "zone|rated_w|load_w\nInfermeria|6|1.5")
			t.Amplifiers("", `
amplifier|rated_w|load_w
AMPLIFICATORE 1|120|39
AMPLIFICATORE 2|240|220
AMPLIFICATORE 3|60|37.5
`)
			t.Left("Quadro", "9|total|right\n11|header|repeated\n14|total|right\n16|header|repeated\n19|total|right")
		}},

		{File: "Plantentuin Oosterwold/oud en nieuw systeem.xlsx", Kind: "schedule", Book: book("Systemen", `
Plantentuin Oosterwold - oude (70 V) en nieuwe (100 V) omroep

|||Luidspreker||||Lijn||
Nr.|Plaats|Systeem|Type|Stuks|Aftakking|Spanning|Versterker|Kanaal|Opm.
1|Palmenkas|nieuw|Projector|6|10 W|100 V|N1|1|
2|Vlinderkas|nieuw|Projector|4|10 W|100 V|N1|2|
3|Winkel|nieuw|Inbouw|4|3 W|100 V|N1|2|regelaar VR-W 15 W
4|Kantoor|nieuw|Inbouw|3|1,5 W|100 V|N1|2|
5|Oude kas|oud|Zuil|4|8 W|70 V|O1|1|
6|Werkplaats|oud|Zuil|2|4 W|70 V|O1|1|
7|Erf|oud|Hoorn|2|15 W|70 V|O1|2|

N1: 2 x 120 W (100 V)
O1: 2 x 60 W (70 V)
`, merged("D3:G3", "H3:I3"), bold("A1", "A3:J4")), Truth: func(t *typed.Truth) {
			t.Is("", "Plantentuin Oosterwold", "two systems of two voltages in one list under two header rows; a named control in a remark")
			t.Speakers("tap_v=100; line_v=100; sheet=Systemen; amplifier=N1", `
rows|tag|room|model|count|tap_w|channel|control
5|1|Palmenkas|Projector|6|10|1|
6|2|Vlinderkas|Projector|4|10|2|
7|3|Winkel|Inbouw|4|3|2|VR-W
8|4|Kantoor|Inbouw|3|1.5|2|
`)
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=Systemen; amplifier=O1", `
rows|tag|room|model|count|tap_w|channel
9|5|Oude kas|Zuil|4|8|1
10|6|Werkplaats|Zuil|2|4|1
11|7|Erf|Hoorn|2|15|2
`)
			t.Channels("", `
amplifier|channel|line_v|rated_w|load_w
N1|1|100|120|60
N1|2|100|120|56.5
O1|1|70.7|60|40
O1|2|70.7|60|30
`)
			t.Controls("", "control|zone|rated_w|load_w\nVR-W|Winkel|15|12")
			t.Amplifiers("", `
amplifier|rated_w|load_w
N1|240|116.5
O1|120|70
`)
		}},
	}
}
