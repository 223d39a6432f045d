package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Four people who write Spanish: the head of maintenance of a bus station, a drafter, an estimator, an apprentice.
var firmsSpanish = []typed.Case{

	// El jefe de mantenimiento de una estación de autobuses lo tiene todo en una hoja, las etapas y los mandos al lado.
	{File: "mantenimiento/megafonia estacion.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Hoja1")
		p.Put("A1", `
Estación de autobuses Tejeda del Río, megafonía
Todo en línea de 100 V
||
Circuito|Dependencia|Uds.|Vatios c/u|Mando
C1|Dársenas 1 a 6|6|10|
C1|Dársenas 7 a 12|6|10|
C2|Vestíbulo|8|6|
C2|Taquillas|3|3|M1
C2|Consigna|1|3|
C3|Oficinas|4|1.5|M2
C3|Sala de conductores|2|3|M3
C3|Aseos|4|1.5|
C4|Aparcamiento|3|15|
C4|Taller|2|15|
`)
		p.Put("G4", `
Circuito|Etapa|Salida|W de la salida
C1|ET1|1|240
C2|ET1|2|120
C3|ET2|1|60
C4|ET2|2|120
||
Mando|W
M1|12
M2|12
M3|24
`)
		p.Bold("A1", "A4:E4", "G4:J4", "G10:H10")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Estación de autobuses Tejeda del Río", "plain list with the outputs and the controls as small tables beside it")
		t.Speakers("sheet=Hoja1; tap_v=100; line_v=100; amplifier=ET1; channel=1", `rows|room|count|tap_w
5|Dársenas 1 a 6|6|10
6|Dársenas 7 a 12|6|10`)
		t.Speakers("sheet=Hoja1; tap_v=100; line_v=100; amplifier=ET1; channel=2", `rows|room|count|tap_w|control
7|Vestíbulo|8|6|
8|Taquillas|3|3|M1
9|Consigna|1|3|`)
		t.Speakers("sheet=Hoja1; tap_v=100; line_v=100; amplifier=ET2; channel=1", `rows|room|count|tap_w|control
10|Oficinas|4|1.5|M2
11|Sala de conductores|2|3|M3
12|Aseos|4|1.5|`)
		t.Speakers("sheet=Hoja1; tap_v=100; line_v=100; amplifier=ET2; channel=2", `rows|room|count|tap_w
13|Aparcamiento|3|15
14|Taller|2|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
ET1|1|240|120
ET1|2|120|60
ET2|1|60|18
ET2|2|120|75`)
		t.Amplifiers("", `amplifier|load_w
ET1|180
ET2|93`)
		t.Controls("", `control|rated_w|load_w
M1|12|9
M2|12|6
M3|24|6`)
	}},

	// Una delineante pone en el plano un cuadro con los locales en columnas.
	{File: "planos/ME-14 cuadro de altavoces.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Cuadro")
		p.Put("A1", `
Museo del Esparto. Plano ME-14. Cuadro de altavoces
||
Local|Vestíbulo|Sala 1|Sala 2|Sala 3|Auditorio|Taller|Almacén|Claustro
Tipo|techo|pared|pared|pared|columna|techo|bocina|proyector
Uds.|4|6|6|4|8|2|1|4
Toma (W)|3|3|3|3|6|6|10|15
Potencia instalada (W)|12|18|18|12|48|12|10|60
Salida|1|2|2|3|3|1|1|4
Atenuador||AT1||AT2|AT3|||
Potencia del atenuador (W)||30||24|100|||
||
Amplificador único de 4 salidas de 120 W, línea de 100 V
`)
		p.Bold("A1", "A3:A10", "B3:I3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Museo del Esparto", "transposed: a room a column, outputs not in order of rooms")
		t.Speakers("sheet=Cuadro; tap_v=100; line_v=100", `rows|room|count|tap_w|channel|control
B|Vestíbulo|4|3|1|
C|Sala 1|6|3|2|AT1
D|Sala 2|6|3|2|
E|Sala 3|4|3|3|AT2
F|Auditorio|8|6|3|AT3
G|Taller|2|6|1|
H|Almacén|1|10|1|
I|Claustro|4|15|4|`)
		t.Channels("line_v=100; rated_w=120", `channel|load_w
1|34
2|36
3|60
4|60`)
		t.Amplifiers("", `amplifier|load_w
|190`)
		t.Controls("", `control|rated_w|load_w
AT1|30|18
AT2|24|12
AT3|100|48`)
	}},

	// El estudio de presupuestos de una instaladora mide por partidas; el modelo dice lo que aguanta el altavoz, la última columna a qué se ajusta.
	{File: "ofertas/2024-118 mediciones megafonía.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Cap 09")
		p.Put("A1", `
Biblioteca Encina Alta|||||Oferta 2024/118
Capítulo 09, megafonía en línea de 100 V. Mediciones
||
Partida|Descripción|Ubicación|Ud|Medición|Ajustado a
'09.01|Altavoz de techo de 6 W||||
||Sala general|ud|10|3 W
||Hemeroteca|ud|4|1,5 W
||Sala infantil|ud|4|3 W
||Aseos|ud|4|0,75 W
|||Total 09.01|22|
'09.02|Proyector de sonido de 20 W||||
||Vestíbulo|ud|2|10 W
||Salón de actos|ud|4|20 W
|||Total 09.02|6|
'09.03|Bocina de exterior de 15 W||||
||Entrada|ud|1|7,5 W
||Muelle de carga|ud|1|15 W
|||Total 09.03|2|
'09.04|Atenuador de pared de 24 W||||
||Sala infantil|ud|1|
'09.05|Atenuador de pared de 100 W||||
||Salón de actos|ud|1|
'09.06|Amplificador de 240 W, una salida||||
||Rack planta baja|ud|1|
'09.07|Puesta en marcha y medidas|||1|
`)
		p.Bold("A1", "A4:F4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2024/118", "Biblioteca Encina Alta", "bill of quantities: largest watts in the item, tap in the last column, attenuators without names as items, by room")
		t.Speakers("sheet=Cap 09; tap_v=100; line_v=100", `rows|room|count|tap_w|note
6|Sala general|10|3|
7|Hemeroteca|4|1.5|
8|Sala infantil|4|3|unnamed
9|Aseos|4|0.75|
12|Vestíbulo|2|10|
13|Salón de actos|4|20|unnamed
16|Entrada|1|7.5|
17|Muelle de carga|1|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|173.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|173.5`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|24|12
|100|80`)
		t.Left("Cap 09", `10|total|item 09.01
14|total|item 09.02
18|total|item 09.03
20|control|attenuator
22|control|attenuator
24|amplifier|amplifier`)
	}},

	// El aprendiz de una oficina de electricistas pasa a limpio lo que apuntó en el colegio.
	{File: "taller/colegio retamas.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("colegio")
		p.Put("A1", `
Colegio Las Retamas (lo que apunté el martes)
||
Edificio|Sitio|Altavozes|Puesto a|Se regula con|Amplificador
Primaria|Pasillo bajo|4|3 W||el de secretaría
id.|Aulas 1 a 6|6|1,5 W|P1|id.
id.|Sala de usos|4|6 W|P2|id.
Infantil|Aulas|3|1,5 W||id.
id.|Zona de juegos|2|10 W (bocinas)||id.
Gimnasio|Cancha|4|15 W (bocinas)||el del gimnasio
id.|Vestuarios|2|3 W|P3|id.
id.|Almacén|1|3 W||id.
|Total|26|||
||
el de secretaría pone 120 W y 100 V, el del gimnasio igual
P1 pone 12 W, P2 pone 36 W, P3 no pone nada
`)
		p.Bold("A3:F3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Colegio Las Retamas", "ditto marks in two columns, of which one runs across buildings; kinds in the cell of the tap; one control without rating")
		t.Speakers("sheet=colegio; tap_v=100; line_v=100; amplifier=el de secretaría; zone=Primaria", `rows|room|count|tap_w|control
4|Pasillo bajo|4|3|
5|Aulas 1 a 6|6|1.5|P1
6|Sala de usos|4|6|P2`)
		t.Speakers("sheet=colegio; tap_v=100; line_v=100; amplifier=el de secretaría; zone=Infantil", `rows|room|count|tap_w
7|Aulas|3|1.5
8|Zona de juegos|2|10`)
		t.Speakers("sheet=colegio; tap_v=100; line_v=100; amplifier=el del gimnasio; zone=Gimnasio", `rows|room|count|tap_w|control
9|Cancha|4|15|
10|Vestuarios|2|3|P3
11|Almacén|1|3|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
el de secretaría|120|69.5
el del gimnasio|120|69`)
		t.Amplifiers("", `amplifier|rated_w|load_w
el de secretaría|120|69.5
el del gimnasio|120|69`)
		t.Controls("", `control|rated_w|load_w
P1|12|9
P2|36|24
P3||6`)
		t.Left("colegio", `12|total|sum`)
	}},
}
