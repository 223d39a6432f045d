package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// layoutsSpanish are four hands that write Spanish.
var layoutsSpanish = []typed.Case{
	// The head of maintenance of a bus station wants it all on one printed page: three lists side by side.
	{File: "layouts/megafonía estación.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Megafonía")
		p.Put("A1", `
Estación de autobuses de Peñalonga, megafonía (línea de 100 V)

Zona|Altavoz|Uds.|Toma (W)|Salida||Salida|Etapa|W nominal||Atenuador|Zona|W
Andenes 1-6|bocina|6|10|1||1|E1|120||AT1|Sala de espera|36
Andenes 7-12|bocina|6|10|2||2|E1|120||AT2|Oficinas|24
Vestíbulo|techo|7|6|3||3|E2|60
Sala de espera|techo|6|3|4||4|E2|60
Taquillas|techo|4|1.5|3
Oficinas|techo|3|3|4
Aseos|techo|4|1.5|3
Consigna|caja|2|6|4
`)
		p.Bold("A1", "A3:E3", "G3:I3", "K3:M3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Estación de autobuses de Peñalonga", "three lists side by side on the same rows: loudspeakers, outputs, attenuators by zone")
		t.Speakers("sheet=Megafonía; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|channel|control
4|Andenes 1-6|6|10|E1|1|
5|Andenes 7-12|6|10|E1|2|
6|Vestíbulo|7|6|E2|3|
7|Sala de espera|6|3|E2|4|AT1
8|Taquillas|4|1.5|E2|3|
9|Oficinas|3|3|E2|4|AT2
10|Aseos|4|1.5|E2|3|
11|Consigna|2|6|E2|4|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
E1|1|120|60
E1|2|120|60
E2|3|60|54
E2|4|60|39`)
		t.Amplifiers("", `amplifier|load_w
E1|120
E2|93`)
		t.Controls("", `control|zone|rated_w|load_w
AT1|Sala de espera|36|18
AT2|Oficinas|24|9`)
	}},

	// The project office of a new library writes a room data sheet per room, for all trades; the sound is one section of it.
	{File: "layouts/fichas de sala biblioteca.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Sala 1")
		p.Put("A1", `
FICHA DE SALA|Sala de lectura
Superficie|210 m²|Altura|3,40 m

ELECTRICIDAD
Enchufes|14
Luminarias|18 de 36 W

MEGAFONÍA (línea de 100 V)
Altavoces|8 de techo
Toma de cada altavoz|3 W
Línea|L1
Atenuador|AT1, 36 W
`)
		q := p.Sheet("Sala 2")
		q.Put("A1", `
FICHA DE SALA|Hemeroteca
Superficie|95 m²|Altura|3,40 m

ELECTRICIDAD
Enchufes|8
Luminarias|9 de 36 W

MEGAFONÍA (línea de 100 V)
Altavoces|4 de techo
Toma de cada altavoz|1,5 W
Línea|L1
Atenuador|no lleva
`)
		r := p.Sheet("Sala 3")
		r.Put("A1", `
FICHA DE SALA|Sala infantil
Superficie|120 m²|Altura|3,40 m

ELECTRICIDAD
Enchufes|10
Luminarias|12 de 36 W

MEGAFONÍA (línea de 100 V)
Altavoces|6 de techo
Toma de cada altavoz|3 W
Línea|L2
Atenuador|AT2, 30 W
`)
		s := p.Sheet("Sala 4")
		s.Put("A1", `
FICHA DE SALA|Depósito de libros
Superficie|160 m²|Altura|2,80 m

ELECTRICIDAD
Enchufes|4
Luminarias|10 de 18 W

MEGAFONÍA (línea de 100 V)
Altavoces|2 de superficie
Toma de cada altavoz|6 W
Línea|L2
Atenuador|no lleva
`)
		u := p.Sheet("Rack")
		u.Put("A1", `
Biblioteca de Fuensola, expediente 2019/44

Línea|Etapa|Potencia
L1|ET1|120 W
L2|ET2|60 W
`)
		for _, one := range []typed.Page{p, q, r, s} {
			one.Bold("A1:B1", "A4", "A8")
		}
		u.Bold("A1", "A3:C3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2019/44", "Biblioteca de Fuensola", "a room data sheet per room, label and value, luminaires with watts in another section, lines and amplifiers on a last sheet")
		t.Speakers("tap_v=100; line_v=100; rows=9", `sheet|room|count|tap_w|amplifier|channel|control
Sala 1|Sala de lectura|8|3|ET1|L1|AT1
Sala 2|Hemeroteca|4|1.5|ET1|L1|
Sala 3|Sala infantil|6|3|ET2|L2|AT2
Sala 4|Depósito de libros|2|6|ET2|L2|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
ET1|L1|120|30
ET2|L2|60|30`)
		t.Amplifiers("", `amplifier|rated_w|load_w
ET1|120|30
ET2|60|30`)
		t.Controls("", `control|rated_w|load_w
AT1|36|24
AT2|30|18`)
		for _, sheet := range []string{"Sala 1", "Sala 2", "Sala 3", "Sala 4"} {
			t.Left(sheet, `6|other|luminaires`)
		}
	}},

	// A consultant balances the outputs of a school: rooms down, outputs across, number times tap in the cells.
	{File: "layouts/reparto salidas instituto.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Reparto")
		p.Put("A1", `
Instituto Torreblanca - reparto de altavoces por salida, sistema de 100 V
En cada celda: nº de altavoces x vatios de la toma

Local|E1-1|E1-2|E2-1|E2-2|Atenuador
W nominal|120|120|60|60|
Pistas deportivas|4x15|||||
Porche|2x10|||||
Gimnasio||4x10||||
Salón de actos||6x6||||
Pasillo norte|||6x3|||
Pasillo sur|||6x3|||
Conserjería|||1x1,5|||
Biblioteca||||4x3|AT1 24 W
Sala de profesores||||2x3|AT2 12 W
Carga W|80|76|37.5|18|
`)
		p.Bold("A1", "A4:F4", "A15:E15")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Instituto Torreblanca", "matrix rooms by outputs with count x tap in the cells, the ratings of the outputs as a row under the header, the loads as a row at the end")
		t.Speakers("sheet=Reparto; tap_v=100; line_v=100", `rows|room|count|tap_w|amplifier|channel|control
6|Pistas deportivas|4|15|E1|1|
7|Porche|2|10|E1|1|
8|Gimnasio|4|10|E1|2|
9|Salón de actos|6|6|E1|2|
10|Pasillo norte|6|3|E2|1|
11|Pasillo sur|6|3|E2|1|
12|Conserjería|1|1.5|E2|1|
13|Biblioteca|4|3|E2|2|AT1
14|Sala de profesores|2|3|E2|2|AT2`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
E1|1|120|80
E1|2|120|76
E2|1|60|37.5
E2|2|60|18`)
		t.Amplifiers("", `amplifier|load_w
E1|156
E2|55.5`)
		t.Controls("", `control|rated_w|load_w
AT1|24|12
AT2|12|6`)
		t.Left("Reparto", `
5|amplifier|ratings of the outputs
15|total|loads of the outputs`)
	}},

	// An electrician's yearly check of the emergency lights of a swimming pool: zones, units, watts, circuits, but no loudspeaker.
	{File: "layouts/revisión emergencias piscina.csv", Kind: "not-a-schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Piscina cubierta Los Sauces;;;;;;
Revisión anual del alumbrado de emergencia, parte 1184;;;;;;
;;;;;;
Zona;Ubicación;Uds.;W;Lúmenes;Circuito;Autonomía
Vaso grande;Lado ventanal;4;8;400;CE1;correcta
Vaso grande;Lado gradas;4;8;400;CE1;correcta
Vaso pequeño;Pared norte;2;6;200;CE1;correcta
Vestuarios;Pasillo;3;6;200;CE2;correcta
Vestuarios;Hombres;2;6;200;CE2;40 min, cambiar batería
Vestuarios;Mujeres;2;6;200;CE2;correcta
Vestíbulo;Salida;2;8;400;CE3;correcta
Sala de máquinas;Puerta;1;6;200;CE3;correcta
Total;;20;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("1184", "Piscina cubierta Los Sauces", "emergency luminaires with zones, units, watts and circuits")
		t.Left("", `
5|other|luminaires
6|other|luminaires
7|other|luminaires
8|other|luminaires
9|other|luminaires
10|other|luminaires
11|other|luminaires
12|other|luminaires
13|total|sum`)
	}},
}
