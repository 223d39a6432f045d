package main

import "lineaudit/samples/typed"

// mantenedores is a Spanish maintenance firm: forms of a yearly round, printed and filled in.
var mantenedores = []typed.Case{
	{File: "mantenimiento/Piscina municipal Los Sauces.xlsx", Kind: "schedule", Book: sheets("Ficha", `
FICHA DE MANTENIMIENTO - MEGAFONÍA|||||||||
Instalación:|Piscina municipal Los Sauces|||Expediente:|M-2023/077
Etapa de potencia:|ETP1, 4 x 120 W, línea de 100 V
|
Canal|Zona|Ubicación|Altavoces|Modelo|Toma (W)|Total (W)|Atenuador|Pot. atenuador (W)|Estado
1|Vaso grande|Vaso de 25 m|8|Bocina|10|80|||Correcto
2|Vaso pequeño|Vaso de enseñanza|4|Bocina|7,5|30|||Correcto
3|Vestuarios|Vestuario femenino|6|Techo|3|18|AT-1|30|Correcto
3|Vestuarios|Vestuario masculino|6|Techo|3|18|AT-1|30|Correcto
4|Entrada|Taquilla|1|Techo|3|3|AT-2|6|Correcto
4|Entrada|Vestíbulo|5|Techo|6|30|AT-3|36|1 altavoz sustituido
4|Entrada|Porche|2|Bocina|10|20|||Retirados en 2022
TOTAL|||32|||199
|
Observaciones: los atenuadores AT-1 y AT-3 llevan relé de prioridad a 24 V. Falta en AT-2.
`), Truth: func(t *typed.Truth) {
		t.Is("M-2023/077", "Piscina municipal Los Sauces", "a form with states; a control over two rooms of one zone; a removed row; a total that still counts it")
		t.Speakers("tap_v=100; line_v=100; sheet=Ficha; amplifier=ETP1", `
rows|channel|zone|room|count|model|tap_w|control|status
6|1|Vaso grande|Vaso de 25 m|8|Bocina|10||installed
7|2|Vaso pequeño|Vaso de enseñanza|4|Bocina|7.5||installed
8|3|Vestuarios|Vestuario femenino|6|Techo|3|AT-1|installed
9|3|Vestuarios|Vestuario masculino|6|Techo|3|AT-1|installed
10|4|Entrada|Taquilla|1|Techo|3|AT-2|installed
11|4|Entrada|Vestíbulo|5|Techo|6|AT-3|installed
12|4|Entrada|Porche|2|Bocina|10||removed
`)
		t.Channels("line_v=100; amplifier=ETP1; rated_w=120", "channel|load_w\n1|80\n2|30\n3|36\n4|33")
		t.Amplifiers("", "amplifier|rated_w|load_w\nETP1|480|179")
		t.Controls("", "control|rated_w|load_w\nAT-1|30|36\nAT-2|6|3\nAT-3|36|30")
		t.Left("Ficha", "13|total|\n15|note|")
	}},

	{File: "mantenimiento/Jardin botanico inventario.csv", Kind: "schedule", Bytes: text(`
Jardín Botánico El Madroñal;;;;;;;;
Inventario de megafonía 2021 - Expediente M-2021/019;;;;;;;;
;;;;;;;;
N.º;Lugar;Tipo;Uds.;Pot. por altavoz;Pot. conjunto;Línea;Mando de volumen;Observaciones
1;Invernadero tropical;Proyector;4;20 W;80 W;L1;;
2;Invernadero desértico;Proyector;2;10 W;20 W;L1;;
3;Tienda;Empotrado;4;6 W;24 W;L2;Mando tienda 30 W;
4;Almacén de tienda;Empotrado;1;3 W;3 W;L2;Mando tienda 30 W;
5;Aula;Empotrado;4;3 W;12 W;L2;Mando aula 12 W;
6;Paseo norte;Seta;6;7,5 W;45 W;L3;;
7;Paseo sur;Seta;4;7,5 W;30 W;L3;;pendiente de instalar
8;Repuesto en almacén;Empotrado;2;6 W;;;;
;;;;;;;;
Amplificador AMP-1 de 120 W: L1. Amplificador AMP-2 de 60 W: L2. Amplificador AMP-3 de 120 W: L3. Líneas de 100 V.;;;;;;;;
`), Truth: func(t *typed.Truth) {
		t.Is("M-2021/019", "Jardín Botánico El Madroñal", "controls with ratings in one cell; amplifiers and lines in sentences; pending and spare loudspeakers")
		t.Speakers("tap_v=100; line_v=100", `
rows|room|model|count|tap_w|amplifier|channel|control|status
5|Invernadero tropical|Proyector|4|20|AMP-1|L1||installed
6|Invernadero desértico|Proyector|2|10|AMP-1|L1||installed
7|Tienda|Empotrado|4|6|AMP-2|L2|Mando tienda|installed
8|Almacén de tienda|Empotrado|1|3|AMP-2|L2|Mando tienda|installed
9|Aula|Empotrado|4|3|AMP-2|L2|Mando aula|installed
10|Paseo norte|Seta|6|7.5|AMP-3|L3||installed
11|Paseo sur|Seta|4|7.5|AMP-3|L3||future
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nAMP-1|L1|120|100\nAMP-2|L2|60|39\nAMP-3|L3|120|45")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAMP-1|120|100\nAMP-2|60|39\nAMP-3|120|45")
		t.Controls("", "control|rated_w|load_w\nMando tienda|30|27\nMando aula|12|12")
		t.Left("", "12|spare|in the store\n14|note|")
	}},

	{File: "mantenimiento/Pista de hielo revision anual.xlsx", Kind: "schedule", Book: sheets("Altavoces", `
PISTA DE HIELO VALDENIEVE - REVISIÓN ANUAL||||||||
Exp. M-2022/051||||||||
|
Zona|Nº altavoces|Potencia|Impedancia medida|Salida|Atenuador|Cable|Metros|Resultado
Pista lado A|6|20 W|84 Ω|AMP1 / 1||2 x 2,5|60|OK
Pista lado B|6|20 W|82 Ω|AMP1 / 2||2 x 2,5|85|OK
Gradas|10|10 W|101 Ω|AMP2 / 1||2 x 2,5|50|OK
Alquiler de patines|4|6 W|415 Ω|AMP2 / 2|ATN 1|2 x 1,5|30|OK
Botiquín|1|3 W|3,3 kΩ|AMP2 / 2||2 x 1,5|25|OK
Oficina|2|3 W|1,65 kΩ|AMP2 / 2|ATN 2|2 x 1,5|40|ruido en el mando
`, "Equipos", `
Equipo|Salidas|W por salida|Tensión
AMP1|2|160|100 V
AMP2|2|120|100 V
|
Atenuador|Zona|W máx.
ATN 1|Alquiler de patines|24
ATN 2|Oficina|10
`), Truth: func(t *typed.Truth) {
		t.Is("M-2022/051", "Pista de hielo Valdenieve", "amplifier and output in one cell; watts per output; measured impedance; controls in a second table")
		t.Speakers("tap_v=100; line_v=100; sheet=Altavoces", `
rows|zone|count|tap_w|amplifier|channel|control
5|Pista lado A|6|20|AMP1|1|
6|Pista lado B|6|20|AMP1|2|
7|Gradas|10|10|AMP2|1|
8|Alquiler de patines|4|6|AMP2|2|ATN 1
9|Botiquín|1|3|AMP2|2|
10|Oficina|2|3|AMP2|2|ATN 2
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nAMP1|1|160|120\nAMP1|2|160|120\nAMP2|1|120|100\nAMP2|2|120|33")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAMP1|320|240\nAMP2|240|133")
		t.Controls("", "control|zone|rated_w|load_w\nATN 1|Alquiler de patines|24|24\nATN 2|Oficina|10|6")
		t.Lines("note=one length a zone", "zone|length_m|area_mm2\nPista lado A|60|2.5\nPista lado B|85|2.5\nGradas|50|2.5\nAlquiler de patines|30|1.5\nBotiquín|25|1.5\nOficina|40|1.5")
	}},
}
