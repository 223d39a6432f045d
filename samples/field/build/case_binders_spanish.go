package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Spanish hands: an installer's book with tests, a museum's transposed sheet, a contract change, a lighting panel.
var bindersSpanish = []typed.Case{

	{File: "binders/biblioteca/Megafonia biblioteca Arcediano.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Portada")
		p.Put("A1", `
MEGAFONÍA
Biblioteca provincial del Arcediano
Expediente|EX-0442/17
Instalador|taller propio
Red|100 V
`)
		p.Bold("A1")
		s := p.Sheet("Altavoces")
		s.Put("A1", `
Etiqueta|Zona|Sala|Tipo|Potencia seleccionada (W)
B-01|Sótano|Depósito|superficie|6
B-02|Sótano|Depósito|superficie|6
B-03|Sótano|Muelle de carga|bocina|10
B-04|Público|Vestíbulo|empotrado|3
B-05|Público|Vestíbulo|empotrado|3
B-06|Público|Préstamo|empotrado|1.5
B-07|Público|Hemeroteca|empotrado|1.5
B-08|Público|Hemeroteca|empotrado|1.5
B-09|Público|Infantil|empotrado|3
B-10|Público|Infantil|empotrado|3
B-11|Salón de actos|Platea|columna|20
B-12|Salón de actos|Platea|columna|20
B-13|Salón de actos|Camerino|empotrado|3
B-14|Oficinas|Dirección|empotrado|1.5
B-15|Oficinas|Catalogación|empotrado|3
B-16|Oficinas|Pasillo|empotrado|3
`)
		s.Bold("A1:E1")
		a := p.Sheet("Armario")
		a.Put("A1", `
Posición|Equipo|Potencia nominal|Zona conectada
1|Etapa ET-1, salida 1|60 W|Sótano
1|Etapa ET-1, salida 2|60 W|Público
2|Etapa ET-2, salida 1|120 W|Salón de actos
2|Etapa ET-2, salida 2|60 W|Oficinas
3|Fuente de alimentación|150 W|
`)
		a.Bold("A1:D1")
		r := p.Sheet("Reguladores")
		r.Put("A1", `
Regulador|Potencia|Altavoces
RV-A|12 W|B-09 y B-10
RV-B|60 W|B-11, B-12
RV-C|5 W|B-14
`)
		r.Bold("A1:C1")
		m := p.Sheet("Pruebas")
		m.Put("A1", `
Zona|Nivel medido dB|Z medida ohm|Resultado
Sótano|82|450|correcto
Público|68|605|correcto
Salón de actos|85|232|correcto
Oficinas|66|1320|correcto
`)
		m.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("EX-0442/17", "Biblioteca provincial del Arcediano", "outputs inside the name of the equipment, a power supply with watts in the rack, regulators by tags, test record")
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Sótano; amplifier=ET-1; channel=1", `rows|tag|room|tap_w
2|B-01|Depósito|6
3|B-02|Depósito|6
4|B-03|Muelle de carga|10`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Público; amplifier=ET-1; channel=2", `rows|tag|room|tap_w|control
5|B-04|Vestíbulo|3|
6|B-05|Vestíbulo|3|
7|B-06|Préstamo|1.5|
8|B-07|Hemeroteca|1.5|
9|B-08|Hemeroteca|1.5|
10|B-09|Infantil|3|RV-A
11|B-10|Infantil|3|RV-A`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Salón de actos; amplifier=ET-2; channel=1", `rows|tag|room|tap_w|control
12|B-11|Platea|20|RV-B
13|B-12|Platea|20|RV-B
14|B-13|Camerino|3|`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Oficinas; amplifier=ET-2; channel=2", `rows|tag|room|tap_w|control
15|B-14|Dirección|1.5|RV-C
16|B-15|Catalogación|3|
17|B-16|Pasillo|3|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
ET-1|1|60|22
ET-1|2|60|16.5
ET-2|1|120|43
ET-2|2|60|7.5`)
		t.Amplifiers("", `amplifier|load_w
ET-1|38.5
ET-2|50.5`)
		t.Controls("", `control|rated_w|load_w
RV-A|12|6
RV-B|60|40
RV-C|5|1.5`)
		t.Left("Armario", `6|equipment|power supply`)
		t.Left("Pruebas", `2|test|measured
3|test|measured
4|test|measured
5|test|measured`)
	}},

	{File: "binders/museo/sonido museo del hierro.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Resumen")
		p.Put("A1", `
Museo del Hierro, avisos y ambiente (100 V)|
||
Zona|Claustro|Sala de fraguas|Torre|Tienda|Taller|Almacén
Nº de altavoces|6|8|2|3|4|2
Toma por altavoz (W)|10|6|15|3|6|6
Carga (W)|60|48|30|9|24|12
Etapa|ET1|ET2|ET3|ET4|ET4|ET4
Potencia etapa (W)|120|60|60|60|60|60
Regulador||RG-1||RG-2|RG-3|
Potencia regulador (W)||60||12|36|
Cable (mm²)|2.5|2.5|1.5|1.5|1.5|1.5
Longitud desde armario (m)|70|45|90|20|33|38
`)
		p.Bold("A1", "A3:A12")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Museo del Hierro", "a table that runs across: a column a zone; three zones share an amplifier")
		t.Speakers("sheet=Resumen; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|control
B|Claustro|6|10|ET1|
C|Sala de fraguas|8|6|ET2|RG-1
D|Torre|2|15|ET3|
E|Tienda|3|3|ET4|RG-2
F|Taller|4|6|ET4|RG-3
G|Almacén|2|6|ET4|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
ET1|120|60
ET2|60|48
ET3|60|30
ET4|60|45`)
		t.Amplifiers("", `amplifier|rated_w|load_w
ET1|120|60
ET2|60|48
ET3|60|30
ET4|60|45`)
		t.Controls("", `control|zone|rated_w|load_w
RG-1|Sala de fraguas|60|48
RG-2|Tienda|12|9
RG-3|Taller|36|24`)
		t.Lines("note=home run, one a zone", `zone|length_m|area_mm2
Claustro|70|2.5
Sala de fraguas|45|2.5
Torre|90|1.5
Tienda|20|1.5
Taller|33|1.5
Almacén|38|1.5`)
	}},

	{File: "binders/estacion/Modificado 2 estacion Valtueja.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Mediciones")
		p.Put("A1", `
Estación de autobuses de Valtueja
Megafonía, modificado nº 2 (obra 1906)
||
Línea|Situación|Elemento|Contrato|Modif. 2|Toma
1|Dársenas 1 a 6|proyector de sonido|6|6|10 W
"|Dársenas 7 a 12|proyector de sonido|6|4|10 W
"|Marquesina|proyector de sonido|2|0|10 W
2|Sala de espera|altavoz de techo|6|8|3 W
"|Taquillas|altavoz de techo|2|2|1,5 W
"|Aseos|altavoz de techo|2|2|1,5 W
3|Consigna|altavoz de techo|1|1|3 W
"|Oficinas|altavoz de techo|4|3|3 W
"|Cochera|proyector de sonido|2|2|15 W
||
Vale la columna Modif. 2; lo de contrato queda sin efecto.
`)
		p.Bold("A1:A2", "A4:F4")
		l := p.Sheet("Líneas")
		l.Put("A1", `
Línea|Amplificador (100 V)|Potencia|Manguera|Metros
1|AMP-A|240 W|2x2,5|115
2|AMP-B|60 W|2x1,5|40
3|AMP-C|60 W|2x1,5|72
`)
		l.Bold("A1:E1")
		q := p.Sheet("Precios")
		q.Put("A1", `
Partida|Ud.|Cantidad|Precio|Importe
Proyector de sonido|ud|12|87.5|1050
Altavoz de techo|ud|16|24|384
Amplificador 240 W|ud|1|620|620
Amplificador 60 W|ud|2|310|620
Manguera 2x2,5|m|115|1.9|218.5
Manguera 2x1,5|m|112|1.4|156.8
Total||||3049.3
`)
		q.Bold("A1:E1", "A8:E8")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("1906", "Estación de autobuses de Valtueja", "two columns of quantities, of which a sentence says that the second holds; one quantity of none; ditto marks for the line; prices")
		t.Speakers("sheet=Mediciones; tap_v=100; line_v=100; amplifier=AMP-A", `rows|room|count|tap_w
5|Dársenas 1 a 6|6|10
6|Dársenas 7 a 12|4|10`)
		t.Speakers("sheet=Mediciones; tap_v=100; line_v=100; amplifier=AMP-B", `rows|room|count|tap_w
8|Sala de espera|8|3
9|Taquillas|2|1.5
10|Aseos|2|1.5`)
		t.Speakers("sheet=Mediciones; tap_v=100; line_v=100; amplifier=AMP-C", `rows|room|count|tap_w
11|Consigna|1|3
12|Oficinas|3|3
13|Cochera|2|15`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP-A|240|100
AMP-B|60|30
AMP-C|60|42`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP-A|240|100
AMP-B|60|30
AMP-C|60|42`)
		t.Lines("note=one length a line", `line|length_m|area_mm2
1|115|2.5
2|40|1.5
3|72|1.5`)
		t.Left("Mediciones", `7|none|quantity zero since the change`)
		t.Left("Precios", `2|price|the quantities again
3|price|the quantities again
8|total|price`)
	}},

	{File: "binders/teatro/cuadro alumbrado teatro.csv", Kind: "not-a-schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Teatro Peñarrubia - cuadro CA-3 alumbrado;;;;;
Circuito;Zona;Punto de luz;Uds;W/ud;W total
C1;Platea;aplique led;14;6;84
C1;Platea;baliza de escalón;32;1,5;48
C2;Anfiteatro;aplique led;10;6;60
C3;Vestíbulo;downlight;18;10;180
C3;Taquilla;downlight;2;10;20
C4;Camerinos;espejo con lámparas;6;30;180
C4;Pasillo camerinos;downlight;5;10;50
C5;Escenario;luz de servicio;8;15;120
;;;;Total;742
Interruptores de 10 A, línea 230 V;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Teatro Peñarrubia", "lighting circuits: zones, pieces and watts, no loudspeaker anywhere")
	}},
}
