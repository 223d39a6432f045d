package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A Mexican integrator: Spanish words, 70 V, gauges and metres, memories of calculation.
var integrator = []typed.Case{
	{File: "Obra 0318/Memoria de sonido - Jardin Las Jarillas.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Bocinas")
		p.Put("A1", `
MEMORIA DE SONIDO AMBIENTAL
Obra:|'0318
Sitio:|Jardín botánico Las Jarillas
Sistema:|Línea de 70 V

Zona|Área|Modelo de bocina|Cantidad|Tap (W)|Carga (W)|Control de volumen|Calibre|Distancia (m)
1|Invernadero tropical|BP-15|6|10|60|CV-1|14 AWG|72
2|Invernadero seco|BP-15|4|7.5|30|CV-2|14 AWG|58
3|Taquilla y acceso|BT-8|3|2.5|7.5|CV-3|16 AWG|25
4|Tienda de semillas|BT-8|4|2.5|10|CV-4|16 AWG|31
5|Sala de exposición|BT-8|8|5|40|CV-5|16 AWG|44
6|Oficinas|BT-8|6|1|6|CV-6|16 AWG|52
7|Sendero norte|BJ-20|6|20|120|-|12 AWG|190
8|Sendero sur|BJ-20|5|20|100|-|12 AWG|215
9|Plaza del agua|BJ-20|4|10|40|-|12 AWG|130
10|Estacionamiento|TR-15|3|15|45|-|12 AWG|160
TOTAL|||49||458.5|||
`)
		a := p.Sheet("Amplificadores")
		a.Put("A1", `
Amplificador|Canal|Potencia por canal|Zonas
AMP-1|1|120 W|1, 2
AMP-1|2|120 W|3, 4, 5, 6
AMP-2|1|150 W|7
AMP-2|2|150 W|8
AMP-3|1|120 W|9, 10
`)
		c := p.Sheet("Controles")
		c.Put("A1", `
Control|Área|Capacidad (W)
CV-1|Invernadero tropical|50
CV-2|Invernadero seco|50
CV-3|Taquilla y acceso|10
CV-4|Tienda de semillas|10
CV-5|Sala de exposición|50
CV-6|Oficinas|10
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("0318", "Jardín botánico Las Jarillas", "lists of zones in one cell of the amplifier sheet; gauges and metres")
		t.Speakers("sheet=Bocinas; tap_v=70.7; line_v=70.7", `rows|zone|room|model|count|tap_w|control|amplifier|channel
7|1|Invernadero tropical|BP-15|6|10|CV-1|AMP-1|1
8|2|Invernadero seco|BP-15|4|7.5|CV-2|AMP-1|1
9|3|Taquilla y acceso|BT-8|3|2.5|CV-3|AMP-1|2
10|4|Tienda de semillas|BT-8|4|2.5|CV-4|AMP-1|2
11|5|Sala de exposición|BT-8|8|5|CV-5|AMP-1|2
12|6|Oficinas|BT-8|6|1|CV-6|AMP-1|2
13|7|Sendero norte|BJ-20|6|20||AMP-2|1
14|8|Sendero sur|BJ-20|5|20||AMP-2|2
15|9|Plaza del agua|BJ-20|4|10||AMP-3|1
16|10|Estacionamiento|TR-15|3|15||AMP-3|1`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
AMP-1|1|120|90
AMP-1|2|120|63.5
AMP-2|1|150|120
AMP-2|2|150|100
AMP-3|1|120|85`)
		t.Amplifiers("", `amplifier|load_w
AMP-1|153.5
AMP-2|220
AMP-3|85`)
		t.Controls("", `control|rated_w|load_w
CV-1|50|60
CV-2|50|30
CV-3|10|7.5
CV-4|10|10
CV-5|50|40
CV-6|10|6`)
		t.Lines("", `zone|length_m|area_mm2
1|72|2.0809
2|58|2.0809
3|25|1.3087
4|31|1.3087
5|44|1.3087
6|52|1.3087
7|190|3.3088
8|215|3.3088
9|130|3.3088
10|160|3.3088`)
		t.Left("Bocinas", `17|total|count and load`)
	}},

	{File: "Obra 0322/pista de hielo El Venado.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Latin1(typed.DOS(`
Obra,0322
Sitio,Pista de hielo El Venado
Voltaje,70.7 V

No.,Ubicación,Bocina,Tap,Amplificador,Canal,Control,Estatus
B-01,Pista lado A,Trompeta 30 W,15 W,AMP-1,1,,Instalada
B-02,Pista lado A,Trompeta 30 W,15 W,AMP-1,1,,Instalada
B-03,Pista lado A,Trompeta 30 W,15 W,AMP-1,1,,Instalada
B-04,Pista lado B,Trompeta 30 W,15 W,AMP-1,1,,Instalada
B-05,Pista lado B,Trompeta 30 W,15 W,AMP-1,1,,Instalada
B-06,Pista lado B,Trompeta 30 W,15 W,AMP-1,1,,Dañada y desmontada
B-07,Gradas,Columna 40 W,20 W,AMP-1,2,,Instalada
B-08,Gradas,Columna 40 W,20 W,AMP-1,2,,Instalada
B-09,Gradas,Columna 40 W,20 W,AMP-1,2,,Instalada
B-10,Gradas,Columna 40 W,20 W,AMP-1,2,,Instalada
B-11,Recepción,Plafón 8 W,5 W,AMP-2,1,CV-1,Instalada
B-12,Recepción,Plafón 8 W,5 W,AMP-2,1,CV-1,Instalada
B-13,Recepción,Plafón 8 W,5 W,AMP-2,1,CV-1,Instalada
B-14,Renta de patines,Plafón 8 W,2.5 W,AMP-2,1,CV-2,Instalada
B-15,Renta de patines,Plafón 8 W,2.5 W,AMP-2,1,CV-2,Instalada
B-16,Vestidor 1,Plafón 8 W,2.5 W,AMP-2,1,,Instalada
B-17,Vestidor 2,Plafón 8 W,2.5 W,AMP-2,1,,Instalada
B-18,Enfermería,Plafón 8 W,1 W,AMP-2,1,CV-3,Instalada
B-19,Cuarto de máquinas,Trompeta 30 W,7.5 W,AMP-2,1,,Por instalar
B-20,Bodega,Plafón 8 W,,,,,Refacción

Amplificador,Canal,Potencia
AMP-1,1,100 W
AMP-1,2,100 W
AMP-2,1,60 W

Control,Capacidad
CV-1,25 W
CV-2,10 W
CV-3,10 W
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("0322", "Pista de hielo El Venado", "Latin 1, lines of different length, states in Mexican Spanish")
		t.Speakers("tap_v=70.7; line_v=70.7; amplifier=AMP-1; channel=1; model=Trompeta 30 W; tap_w=15", `rows|tag|room|status
6..8|B-01..|Pista lado A|installed
9..10|B-04..|Pista lado B|installed
11|B-06|Pista lado B|removed`)
		t.Speakers("tap_v=70.7; line_v=70.7; amplifier=AMP-1; channel=2; model=Columna 40 W; tap_w=20", `rows|tag|room
12..15|B-07..|Gradas`)
		t.Speakers("tap_v=70.7; line_v=70.7; amplifier=AMP-2; channel=1", `rows|tag|room|model|tap_w|control|status
16..18|B-11..|Recepción|Plafón 8 W|5|CV-1|installed
19..20|B-14..|Renta de patines|Plafón 8 W|2.5|CV-2|installed
21|B-16|Vestidor 1|Plafón 8 W|2.5||installed
22|B-17|Vestidor 2|Plafón 8 W|2.5||installed
23|B-18|Enfermería|Plafón 8 W|1|CV-3|installed
24|B-19|Cuarto de máquinas|Trompeta 30 W|7.5||future`)
		t.Speakers("status=spare", `rows|tag|room|model
25|B-20|Bodega|Plafón 8 W`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
AMP-1|1|100|75
AMP-1|2|100|80
AMP-2|1|60|26`)
		t.Amplifiers("", `amplifier|load_w
AMP-1|155
AMP-2|26`)
		t.Controls("", `control|rated_w|load_w
CV-1|25|15
CV-2|10|5
CV-3|10|1`)
	}},

	{File: "Obra 0330/club de remo.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Matriz")
		p.Put("A1", `
Obra 0330|Club de remo Laguna Verde|Línea de 70 V

Área|Plafón BT-8|Bafle BP-15|Trompeta TR-15|Amplificador|Canal
Tap por bocina|2.5 W|7.5 W|15 W||
Recepción|4|||AMP-1|1
Pasillo|6|||AMP-1|1
Aula|4|||AMP-1|1
Vestidores damas|3|||AMP-1|1
Vestidores caballeros|3|||AMP-1|1
Gimnasio||4||AMP-1|2
Ergómetros||4||AMP-1|2
Hangar de botes||8||AMP-1|3
Taller de lanchas||3||AMP-1|4
Muelle|||4|AMP-2|1
Rampa|||2|AMP-2|1
Torre de jueces|1||2|AMP-2|2
Cantidad|21|19|8||
`)
		p.Put("A20", `
AMP-1|4 canales de 60 W
AMP-2|2 canales de 100 W
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("0330", "Club de remo Laguna Verde", "areas by types with the tap of each type in the second row")
		t.Speakers("sheet=Matriz; tap_v=70.7; line_v=70.7", `rows|room|count|tap_w|amplifier|channel
5|Recepción|4|2.5|AMP-1|1
6|Pasillo|6|2.5|AMP-1|1
7|Aula|4|2.5|AMP-1|1
8|Vestidores damas|3|2.5|AMP-1|1
9|Vestidores caballeros|3|2.5|AMP-1|1
10|Gimnasio|4|7.5|AMP-1|2
11|Ergómetros|4|7.5|AMP-1|2
12|Hangar de botes|8|7.5|AMP-1|3
13|Taller de lanchas|3|7.5|AMP-1|4
14|Muelle|4|15|AMP-2|1
15|Rampa|2|15|AMP-2|1
16|Torre de jueces|1|2.5|AMP-2|2
16|Torre de jueces|2|15|AMP-2|2`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
AMP-1|1|60|50
AMP-1|2|60|60
AMP-1|3|60|60
AMP-1|4|60|22.5
AMP-2|1|100|90
AMP-2|2|100|32.5`)
		t.Amplifiers("", `amplifier|load_w
AMP-1|192.5
AMP-2|122.5`)
		t.Left("Matriz", `4|header|taps of the types
17|total|counts of types`)
	}},
}
