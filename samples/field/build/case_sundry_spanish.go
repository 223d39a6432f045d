package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

var sundrySpanish = []typed.Case{
	// A self-employed installer hands the pool her certificate of completion, exported as CSV.
	{File: "sundry/CFO-0388 piscina.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Piscina cubierta Las Veguillas;;;;;;
Certificado final;CFO-0388;;;;;
;;;;;;
Zona;Altavoces;Tipo;Toma W;Suma W;Etapa;Salida
Vaso grande;8;bocina;10;80;ET-1;1
Vaso infantil;3;bocina;5;15;ET-1;1
Gradas;6;proyector;5;30;ET-1;2
Recepción;2;techo;3;6;ET-2;1
Vestuario mujeres;4;techo;1,5;6;ET-2;1
Vestuario hombres;4;techo;1,5;6;ET-2;1
Gimnasio;4;proyector;10;40;ET-2;2
Sala de monitores;1;techo;3;3;ET-2;2
;;;;;;
Etapa;Salida;Nominal W;Medido W;;;
ET-1;1;120;97;;;
ET-1;2;60;31;;;
ET-2;1;60;19;;;
ET-2;2;60;44;;;
;;;;;;
Línea de 100 V. Potenciómetros: PT1 (50 W) en el gimnasio y PT2 (10 W) en la sala de monitores;;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("CFO-0388", "Piscina cubierta Las Veguillas", "plain; measured watts beside the nominal ones; controls by room in a sentence at the end")
		t.Speakers("tap_v=100; line_v=100; amplifier=ET-1", `rows|zone|count|tap_w|channel
5|Vaso grande|8|10|1
6|Vaso infantil|3|5|1
7|Gradas|6|5|2`)
		t.Speakers("tap_v=100; line_v=100; amplifier=ET-2", `rows|zone|count|tap_w|channel|control
8|Recepción|2|3|1|
9|Vestuario mujeres|4|1.5|1|
10|Vestuario hombres|4|1.5|1|
11|Gimnasio|4|10|2|PT1
12|Sala de monitores|1|3|2|PT2`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
ET-1|1|120|95
ET-1|2|60|30
ET-2|1|60|18
ET-2|2|60|43`)
		t.Amplifiers("", `amplifier|load_w
ET-1|125
ET-2|61`)
		t.Controls("", `control|rated_w|load_w
PT1|50|40
PT2|10|3`)
	}},

	// A maintenance firm's register: every contract in one list, amplifiers of all of them on the next sheet.
	{File: "sundry/registro mantenimiento sonido.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Altavoces")
		p.Put("A1", `
Contrato|Centro|Lugar|Uds.|W (a 100 V)|Etapa|Última revisión|Observaciones
M-114|Biblioteca de Fuentealta|Sala de lectura|6|1,5|E1|03/2021|
M-114|Biblioteca de Fuentealta|Sala infantil|3|3|E1|03/2021|
M-114|Biblioteca de Fuentealta|Depósito de libros|2|3|E1|03/2021|una rejilla suelta, suena bien
M-114|Biblioteca de Fuentealta|Vestíbulo|4|3|E1|03/2021|
M-129|Cuadras municipales La Yesera|Picadero cubierto|4|15|E1|05/2021|
M-129|Cuadras municipales La Yesera|Pasillo de boxes|6|6|E1|05/2021|
M-129|Cuadras municipales La Yesera|Guadarnés|1|3|E2|05/2021|
M-129|Cuadras municipales La Yesera|Pista exterior|4|20|E2|05/2021|2 cambiadas en garantía
M-131|Cocheras de Ribamonte|Nave 1|8|10|E1|06/2021|
M-131|Cocheras de Ribamonte|Nave 2|8|10|E2|06/2021|
M-131|Cocheras de Ribamonte|Oficina de tráfico|2|3|E2|06/2021|
`)
		p.Bold("A1:H1")
		q := p.Sheet("Etapas")
		q.Put("A1", `
Contrato|Etapa|Potencia W|Nº de serie
M-114|E1|60|00418
M-129|E1|120|00522
M-129|E2|120|00523
M-131|E1|120|00617
M-131|E2|120|00618
`)
		q.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("M-114", "Biblioteca de Fuentealta", "a register of three contracts, amplifier names used again in each; ratings on a second sheet")
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; amplifier=E1", `rows|room|count|tap_w
2|Sala de lectura|6|1.5
3|Sala infantil|3|3
4|Depósito de libros|2|3
5|Vestíbulo|4|3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
E1|60|36`)
		t.Amplifiers("", `amplifier|rated_w|load_w
E1|60|36`)
		t.Also("M-129", "Cuadras municipales La Yesera", "the second contract of the register; a remark about two replaced pieces changes no count")
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100", `rows|room|count|tap_w|amplifier
6|Picadero cubierto|4|15|E1
7|Pasillo de boxes|6|6|E1
8|Guadarnés|1|3|E2
9|Pista exterior|4|20|E2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
E1|120|96
E2|120|83`)
		t.Amplifiers("", `amplifier|rated_w|load_w
E1|120|96
E2|120|83`)
		t.Also("M-131", "Cocheras de Ribamonte", "the third contract of the register")
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100", `rows|room|count|tap_w|amplifier
10|Nave 1|8|10|E1
11|Nave 2|8|10|E2
12|Oficina de tráfico|2|3|E2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
E1|120|80
E2|120|86`)
		t.Amplifiers("", `amplifier|rated_w|load_w
E1|120|80
E2|120|86`)
	}},

	// A project engineer sets the rooms of a museum side by side, as her calculation sheet runs.
	{File: "sundry/17-052 museo cálculo.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Líneas")
		p.Put("A1", `
Museo del Azafrán, expediente 17/052. Megafonía en línea de 100 V

Sala|Entrada|Tienda|Secadero|Molino|Archivo|Patio
Altavoces|4|2|6|4|2|3
Modelo|techo|techo|columna|columna|techo|bocina
Toma, W|3|3|6|12|1.5|15
Carga, W|12|6|36|48|3|45
Amplificador|AM-1|AM-1|AM-1|AM-1|AM-2|AM-2
Canal|1|1|2|3|1|2
Potencia del canal, W|60|60|60|120|60|60
Atenuador|no|AT-1|no|AT-2|AT-3|no
Potencia del atenuador, W||10||100|5
Cable desde el rack, m|25|32|60|75|48|90
Sección, mm²|1.5|1.5|2.5|2.5|1.5|2.5
`)
		p.Bold("A1", "A3:A14", "B3:G3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("17/052", "Museo del Azafrán", "a transposed table: a column a room, the rating of a channel repeated in each")
		t.Speakers("sheet=Líneas; tap_v=100; line_v=100; amplifier=AM-1", `rows|room|count|tap_w|channel|control
B|Entrada|4|3|1|
C|Tienda|2|3|1|AT-1
D|Secadero|6|6|2|
E|Molino|4|12|3|AT-2`)
		t.Speakers("sheet=Líneas; tap_v=100; line_v=100; amplifier=AM-2", `rows|room|count|tap_w|channel|control
F|Archivo|2|1.5|1|AT-3
G|Patio|3|15|2|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AM-1|1|60|18
AM-1|2|60|36
AM-1|3|120|48
AM-2|1|60|3
AM-2|2|60|45`)
		t.Amplifiers("", `amplifier|load_w
AM-1|102
AM-2|48`)
		t.Controls("", `control|rated_w|load_w
AT-1|10|6
AT-2|100|48
AT-3|5|3`)
		t.Lines("note=home runs, one length a room", `zone|length_m|area_mm2
Entrada|25|1.5
Tienda|32|1.5
Secadero|60|2.5
Molino|75|2.5
Archivo|48|1.5
Patio|90|2.5`)
	}},
}
