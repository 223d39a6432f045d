package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A Spanish municipality's technical service: an inventory by building, full words, totals below.
var spanish = []typed.Case{
	{File: "Inventario/Exp 77-09 Pista de hielo.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Inventario")
		p.Put("A1", `
Servicio técnico municipal - Inventario de megafonía
Instalación:|Pista de hielo Los Alisares
Expediente:|77/09
Tensión de línea:|100 V

Código|Dependencia|Zona|Altavoz|Montaje|Uds.|Toma (W)|Potencia (W)|Estado
ALT-01|Pista, fondo norte|Pista|Bocina de 30 W|Superficie|3|15|45|En servicio
ALT-02|Pista, fondo sur|Pista|Bocina de 30 W|Superficie|3|15|45|En servicio
ALT-03|Grada este|Grada|Columna de 40 W|Superficie|4|20|80|En servicio
ALT-04|Grada oeste|Grada|Columna de 40 W|Superficie|4|20|80|En servicio
ALT-05|Vestíbulo|Público|Altavoz de techo|Empotrado|6|6|36|En servicio
ALT-06|Taquilla|Público|Altavoz de techo|Empotrado|1|3|3|En servicio
ALT-07|Alquiler de patines|Público|Altavoz de techo|Empotrado|4|3|12|En servicio
ALT-08|Vestuario 1|Vestuarios|Altavoz de techo|Empotrado|2|3|6|En servicio
ALT-09|Vestuario 2|Vestuarios|Altavoz de techo|Empotrado|2|3|6|En servicio
ALT-10|Vestuario 3|Vestuarios|Altavoz de techo|Empotrado|2|3|6|Retirado
ALT-11|Botiquín|Vestuarios|Altavoz de techo|Empotrado|1|1,5|1,5|En servicio
ALT-12|Sala de máquinas|Vestuarios|Bocina de 30 W|Superficie|1|7,5|7,5|En servicio
ALT-13|Aparcamiento|Exterior|Bocina de 30 W|Superficie|4|15|60|En servicio
ALT-14|Almacén|-|Altavoz de techo|-|5|||Repuesto
`)
		e := p.Sheet("Etapas")
		e.Put("A1", `
Etapas de potencia

Etapa|Salida|Zona|Potencia nominal (W)
E1|1|Pista|120
E1|2|Grada|240
E2|1|Público|60
E2|2|Vestuarios|60
E2|3|Exterior|60
`)
		a := p.Sheet("Atenuadores")
		a.Put("A1", `
Atenuadores de pared

Atenuador|Dependencia que regula|Potencia máxima (W)
AT-1|Vestíbulo|36
AT-2|Taquilla|6
AT-3|Alquiler de patines|10
AT-4|Botiquín|6
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("77/09", "Pista de hielo Los Alisares", "zones joined to amplifiers, controls joined by the room they regulate; one removed, spares")
		t.Speakers("sheet=Inventario; tap_v=100; line_v=100", `rows|tag|room|zone|model|count|tap_w|amplifier|channel|control|status
7|ALT-01|Pista, fondo norte|Pista|Bocina de 30 W|3|15|E1|1||installed
8|ALT-02|Pista, fondo sur|Pista|Bocina de 30 W|3|15|E1|1||installed
9|ALT-03|Grada este|Grada|Columna de 40 W|4|20|E1|2||installed
10|ALT-04|Grada oeste|Grada|Columna de 40 W|4|20|E1|2||installed
11|ALT-05|Vestíbulo|Público|Altavoz de techo|6|6|E2|1|AT-1|installed
12|ALT-06|Taquilla|Público|Altavoz de techo|1|3|E2|1|AT-2|installed
13|ALT-07|Alquiler de patines|Público|Altavoz de techo|4|3|E2|1|AT-3|installed
14|ALT-08|Vestuario 1|Vestuarios|Altavoz de techo|2|3|E2|2||installed
15|ALT-09|Vestuario 2|Vestuarios|Altavoz de techo|2|3|E2|2||installed
16|ALT-10|Vestuario 3|Vestuarios|Altavoz de techo|2|3|E2|2||removed
17|ALT-11|Botiquín|Vestuarios|Altavoz de techo|1|1.5|E2|2|AT-4|installed
18|ALT-12|Sala de máquinas|Vestuarios|Bocina de 30 W|1|7.5|E2|2||installed
19|ALT-13|Aparcamiento|Exterior|Bocina de 30 W|4|15|E2|3||installed`)
		t.Speakers("sheet=Inventario; status=spare", `rows|tag|room|model|count
20|ALT-14|Almacén|Altavoz de techo|5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
E1|1|120|90
E1|2|240|160
E2|1|60|51
E2|2|60|21
E2|3|60|60`)
		t.Amplifiers("", `amplifier|load_w
E1|250
E2|132`)
		t.Controls("", `control|rated_w|load_w
AT-1|36|36
AT-2|6|3
AT-3|10|12
AT-4|6|1.5`)
	}},

	{File: "Inventario/Exp 31-12 Embarcadero.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Expediente;31/12;;;;;;;
Instalación;Embarcadero de Peñarrubia de la Laguna;;;;;;;
;;;;;;;;
Orden;Ubicación;Tipo de altavoz;Cantidad;Toma de potencia;Línea;Etapa;Salida;Observaciones
1;Muelle principal;Bocina exponencial;4;15 W;100 V;E1;1;
2;Muelle de remo;Bocina exponencial;3;15 W;100 V;E1;1;
3;Rampa;Bocina exponencial;2;10 W;100 V;E1;1;
4;Hangar de piraguas;Proyector de sonido;4;10 W;100 V;E1;2;
5;Taller;Proyector de sonido;2;5 W;100 V;E1;2;
6;Gimnasio;Proyector de sonido;4;10 W;100 V;E1;2;
7;Recepción;Techo 6 W;3;3 W;100 V;E2;1;
8;Aula de vela;Techo 6 W;4;3 W;100 V;E2;1;
9;Pasillo;Techo 6 W;5;1,5 W;100 V;E2;1;
10;Vestuario femenino;Techo 6 W;3;3 W;100 V;E2;1;
11;Vestuario masculino;Techo 6 W;3;3 W;100 V;E2;1;
12;Torre de jueces;Techo 6 W;1;6 W;100 V;E2;1;
;;;;;;;;
Etapa E1: 2 salidas de 120 W;;;;;;;;
Etapa E2: 1 salida de 60 W;;;;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("31/12", "Embarcadero de Peñarrubia de la Laguna", "line voltage in a column; ratings in sentences below")
		t.Speakers("tap_v=100; line_v=100", `rows|room|model|count|tap_w|amplifier|channel
5|Muelle principal|Bocina exponencial|4|15|E1|1
6|Muelle de remo|Bocina exponencial|3|15|E1|1
7|Rampa|Bocina exponencial|2|10|E1|1
8|Hangar de piraguas|Proyector de sonido|4|10|E1|2
9|Taller|Proyector de sonido|2|5|E1|2
10|Gimnasio|Proyector de sonido|4|10|E1|2
11|Recepción|Techo 6 W|3|3|E2|1
12|Aula de vela|Techo 6 W|4|3|E2|1
13|Pasillo|Techo 6 W|5|1.5|E2|1
14|Vestuario femenino|Techo 6 W|3|3|E2|1
15|Vestuario masculino|Techo 6 W|3|3|E2|1
16|Torre de jueces|Techo 6 W|1|6|E2|1`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
E1|1|120|125
E1|2|120|90
E2|1|60|52.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
E1||215
E2|60|52.5`)
	}},
}
