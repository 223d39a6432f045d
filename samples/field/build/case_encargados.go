package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// encargados are contractors' offices, a maintenance man and an electrician, in Spanish and Italian.
var encargados = []typed.Case{
	{File: "obras/611 Pista Valdenieve.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Altavoces")
		p.Put("A1", `
Pista de hielo Valdenieve|||||Obra 611
Línea de 100 V
||
Zona|Ubicación|Altavoz|Uds|W/ud|W total
Pista|Lado norte|bocina|4|15|60
Pista|Lado sur|bocina|4|15|60
Gradas|Grada baja|caja|6|6|36
Gradas|Grada alta|caja|4|6|24
Vestíbulo|Taquilla|techo|1|3|3
Vestíbulo|Entrada|techo|4|3|12
Vestuarios|Pasillo|techo|3|1.5|4.5
Vestuarios|Vestuario 1|techo|2|1.5|3
Vestuarios|Vestuario 2|techo|2|1.5|3
||Total|30||205.5
`)
		p.Bold("A1", "A4:F4", "C14:F14")
		q := p.Sheet("Etapas y cables")
		q.Put("A1", `
Zona|Etapa|Salida|W salida|Regulador|W regulador|Cable|Metros
Pista|E1|1|240|||2 x 2,5 mm²|130
Gradas|E1|2|120|RV1|100|2 x 2,5 mm²|75
Vestíbulo|E2|1|60|RV2|24|2 x 1,5 mm²|30
Vestuarios|E2|1|60|||2 x 1,5 mm²|55
`)
		q.Bold("A1:H1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("611", "Pista de hielo Valdenieve", "plain; outputs, controls and cables by zone on a second sheet")
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Pista; amplifier=E1; channel=1", `rows|room|count|tap_w
5|Lado norte|4|15
6|Lado sur|4|15`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Gradas; amplifier=E1; channel=2; control=RV1", `rows|room|count|tap_w
7|Grada baja|6|6
8|Grada alta|4|6`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Vestíbulo; amplifier=E2; channel=1; control=RV2", `rows|room|count|tap_w
9|Taquilla|1|3
10|Entrada|4|3`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Vestuarios; amplifier=E2; channel=1", `rows|room|count|tap_w
11|Pasillo|3|1.5
12|Vestuario 1|2|1.5
13|Vestuario 2|2|1.5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
E1|1|240|120
E1|2|120|60
E2|1|60|25.5`)
		t.Amplifiers("", `amplifier|load_w
E1|180
E2|25.5`)
		t.Controls("", `control|zone|rated_w|load_w
RV1|Gradas|100|60
RV2|Vestíbulo|24|15`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Pista|130|2.5
Gradas|75|2.5
Vestíbulo|30|1.5
Vestuarios|55|1.5`)
		t.Left("Altavoces", `14|total|sums`)
	}},

	{File: "mantenimiento/parte 2207 museo.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Parte")
		p.Put("A1", `
Museo de las Redes, megafonía
Parte 2207. Etapa única de 120 W, línea de 100 V
||
Planta baja
Sala|Altavoces|Toma|Nota
Entrada|2 de techo|3 W|(1)
Guardarropa|2 de techo|1,5 W|(1)
Sala de redes|6 de pared|6 W|
Almacén|1 bocina|no se ve|(3)
||
Planta primera
Sala|Altavoces|Toma|Nota
Sala de barcas|4 de pared|6 W|(2)
Mirador|2 de pared|3 W|(2)
Aula|4 de techo|3 W|
||
(1) con regulador RG1 de 20 W
(2) con regulador RG2 de 36 W
(3) la toma queda detrás del estante, volver con escalera
`)
		p.Bold("A1", "A4", "A11")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2207", "Museo de las Redes", "floors as titles, counts in words of the cell, controls by numbered notes, one tap that could not be seen")
		t.Speakers("sheet=Parte; tap_v=100; line_v=100; zone=Planta baja; note=floor as zone", `rows|room|count|tap_w|control
6|Entrada|2|3|RG1
7|Guardarropa|2|1.5|RG1
8|Sala de redes|6|6|
9|Almacén|1||`)
		t.Speakers("sheet=Parte; tap_v=100; line_v=100; zone=Planta primera; note=floor as zone", `rows|room|count|tap_w|control
13|Sala de barcas|4|6|RG2
14|Mirador|2|3|RG2
15|Aula|4|3|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_min_w
|120|87`)
		t.Amplifiers("", `amplifier|rated_w
|120`)
		t.Controls("", `control|rated_w|load_w
RG1|20|9
RG2|36|30`)
		t.Asks("Parte", `9|asked|tap of the horn in the store`)
	}},

	{File: "impianti/serra diffusori.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Serra tropicale di Valgelsa - commessa 412;;;;;
Locale;Diffusori;Potenza presa;Totale W;Amplificatore;Attenuatore
Serra grande;6 da parete;6 W;36;A (120 W);
Serra palme;4 da parete;6 W;24;A;
Vivaio;2 trombe;10 W;20;A;
Ingresso;3 da soffitto;3 W;9;B (60 W);AT1 (12 W)
Biglietteria;1 da soffitto;1,5 W;1,5;B;AT2 (5 W)
Sala studio;4 da soffitto;3 W;12;B;AT3 (24 W)
Sala riunioni;2 da soffitto;3 W;6;B;AT3
Deposito;1 tromba;10 W;10;B;
Totale;;;118,5;;
;;;;;
Linee a 100 V;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("412", "Serra tropicale di Valgelsa", "count and kind in one cell; ratings in brackets where an amplifier or a control is first named")
		t.Speakers("tap_v=100; line_v=100; amplifier=A", `rows|room|count|tap_w
3|Serra grande|6|6
4|Serra palme|4|6
5|Vivaio|2|10`)
		t.Speakers("tap_v=100; line_v=100; amplifier=B", `rows|room|count|tap_w|control
6|Ingresso|3|3|AT1
7|Biglietteria|1|1.5|AT2
8|Sala studio|4|3|AT3
9|Sala riunioni|2|3|AT3
10|Deposito|1|10|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|120|80
B|60|38.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|120|80
B|60|38.5`)
		t.Controls("", `control|rated_w|load_w
AT1|12|9
AT2|5|1.5
AT3|24|18`)
		t.Left("", `11|total|sum`)
	}},

	{File: "impianti/Planetario linee.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Linea 1")
		p.Put("A1", `
Planetario di Monte Brullo, commessa 905/B
Linea 1, amplificatore AM1, 120 W, 100 V
Attenuatore AT1 da 60 W in testa alla linea
||
Pos.|Locale|Tipo|Potenza
'1.1|Cupola|parete|6 W
'1.2|Cupola|parete|6 W
'1.3|Cupola|parete|6 W
'1.4|Cupola|parete|6 W
'1.5|Corridoio|soffitto|3 W
`)
		q := p.Sheet("Linea 2")
		q.Put("A1", `
Planetario di Monte Brullo, commessa 905/B
Linea 2, amplificatore AM2, 60 W, 100 V
Attenuatore AT2 da 12 W solo per 2.3 e 2.4
||
Pos.|Locale|Tipo|Potenza
'2.1|Atrio|soffitto|3 W
'2.2|Atrio|soffitto|3 W
'2.3|Aula|soffitto|3 W
'2.4|Aula|soffitto|3 W
'2.5|Ufficio|soffitto|1,5 W
`)
		r := p.Sheet("Linea 3")
		r.Put("A1", `
Planetario di Monte Brullo, commessa 905/B
Linea 3, amplificatore AM3, 120 W, 100 V
Senza attenuatore
||
Pos.|Locale|Tipo|Potenza
'3.1|Piazzale|tromba|15 W
'3.2|Piazzale|tromba|15 W
'3.3|Parcheggio|tromba|15 W
'3.4|Parcheggio (da montare, fase 2)|tromba|15 W
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("905/B", "Planetario di Monte Brullo", "a sheet a line; amplifier and attenuator in sentences above, one for the whole line, one for two positions; one loudspeaker of a later phase")
		t.Speakers("sheet=Linea 1; tap_v=100; line_v=100; amplifier=AM1; channel=1; control=AT1", `rows|tag|room|tap_w
6|1.1|Cupola|6
7|1.2|Cupola|6
8|1.3|Cupola|6
9|1.4|Cupola|6
10|1.5|Corridoio|3`)
		t.Speakers("sheet=Linea 2; tap_v=100; line_v=100; amplifier=AM2; channel=2", `rows|tag|room|tap_w|control
6|2.1|Atrio|3|
7|2.2|Atrio|3|
8|2.3|Aula|3|AT2
9|2.4|Aula|3|AT2
10|2.5|Ufficio|1.5|`)
		t.Speakers("sheet=Linea 3; tap_v=100; line_v=100; amplifier=AM3; channel=3", `rows|tag|room|tap_w
6|3.1|Piazzale|15
7|3.2|Piazzale|15
8|3.3|Parcheggio|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AM1|1|120|27
AM2|2|60|13.5
AM3|3|120|45`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AM1|120|27
AM2|60|13.5
AM3|120|45`)
		t.Controls("", `control|rated_w|load_w
AT1|60|27
AT2|12|6`)
		t.Left("Linea 3", `9|future|to be fitted in phase 2`)
	}},
}
