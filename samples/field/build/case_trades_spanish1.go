package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Four people who write Spanish: an installer, a project engineer, an electrician, a maintenance head.
var tradesSpanish1 = []typed.Case{

	// Spain: an installer hands over a bus station, a row a loudspeaker, the rack on a second sheet.
	{File: "entregas/19-233 estación Villarmeda.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Altavoces")
		p.Put("A1", `
Estación de autobuses de Villarmeda|||Obra 19/233
Ref.|Situación|Tipo|Toma 100 V|Línea
ALT-01|Andén 1|Bocina|10 W|E1.1
ALT-02|Andén 2|Bocina|10 W|E1.1
ALT-03|Andén 3|Bocina|10 W|E1.1
ALT-04|Andén 4|Bocina|10 W|E1.1
ALT-05|Andén 5|Bocina|10 W|E1.1
ALT-06|Andén 6|Bocina|10 W|E1.1
ALT-07|Sala de espera|Techo|6 W|E1.2
ALT-08|Sala de espera|Techo|6 W|E1.2
ALT-09|Sala de espera|Techo|6 W|E1.2
ALT-10|Sala de espera|Techo|6 W|E1.2
ALT-11|Taquillas|Techo|3 W|E1.2
ALT-12|Taquillas|Techo|3 W|E1.2
ALT-13|Consigna|Techo|3 W|E2.1
ALT-14|Consigna|Techo|3 W|E2.1
ALT-15|Oficina|Techo|1,5 W|E2.1
ALT-16|Aseos|Techo|3 W|E2.1
`)
		p.Bold("A1", "A2:E2")
		q := p.Sheet("Armario")
		q.Put("A1", `
Etapa|Salida|Potencia|Línea|Destino|Cable|Metros
E1|1|120 W|E1.1|Andenes|2x2,5 mm²|140
E1|2|120 W|E1.2|Sala de espera y taquillas|2x1,5 mm²|60
E2|1|60 W|E2.1|Consigna, oficina y aseos|2x1,5 mm²|75
E2|2|60 W||libre||
||
Atenuador|Mando de|Potencia
AT1|Sala de espera|36 W
AT2|Oficina|5 W
`)
		q.Bold("A1:G1", "A7:C7")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("19/233", "Estación de autobuses de Villarmeda", "plain; a row a loudspeaker, lines such as E1.2 explained by the rack sheet, attenuators by room, one output free")
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; amplifier=E1; channel=1; tap_w=10", `rows|tag|room
3|ALT-01|Andén 1
4|ALT-02|Andén 2
5|ALT-03|Andén 3
6|ALT-04|Andén 4
7|ALT-05|Andén 5
8|ALT-06|Andén 6`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; amplifier=E1; channel=2", `rows|tag|room|tap_w|control
9..12|ALT-07..|Sala de espera|6|AT1
13..14|ALT-11..|Taquillas|3|`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; amplifier=E2; channel=1", `rows|tag|room|tap_w|control
15..16|ALT-13..|Consigna|3|
17|ALT-15|Oficina|1.5|AT2
18|ALT-16|Aseos|3|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
E1|1|120|60
E1|2|120|30
E2|1|60|10.5
E2|2|60|0`)
		t.Amplifiers("", `amplifier|load_w
E1|90
E2|10.5`)
		t.Controls("", `control|rated_w|load_w
AT1|36|24
AT2|5|1.5`)
		t.Lines("note=one length a line", `line|length_m|area_mm2
E1.1|140|2.5
E1.2|60|1.5
E2.1|75|1.5`)
	}},

	// Mexico: a project engineer's schedule for the bid drawings of a planetarium, two rows of headings, ratings in the notes.
	{File: "proyectos/P-2218 cédula de sonido.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("CÉDULA")
		p.Put("A1", `
PLANETARIO CERRO TEPOZÁN||||||||PROY. P-2218
CÉDULA DE SONIDO AMBIENTAL, LÍNEA DE 70.7 V
||
ÁREA|BOCINAS|||AMPLIFICADOR||CONTROL DE VOLUMEN||ALIMENTADOR
|CANT.|MONTAJE|TAP (W)|CLAVE|CANAL|CLAVE|CAP. (W)|CALIBRE|LONG. (m)
VESTÍBULO|6|PLAFÓN|5|AMP-1|1|CV-1|50|2 x 14 AWG|38
SALA DE EXPOSICIÓN A|8|PLAFÓN|5|AMP-1|2|CV-2|50|2 x 14 AWG|52
SALA DE EXPOSICIÓN B|8|PLAFÓN|5|AMP-1|2|CV-3|50|2 x 14 AWG|66
PASILLO DEL DOMO|10|MURO|2.5|AMP-2|1|||2 x 14 AWG|70
TALLER INFANTIL|4|PLAFÓN|5|AMP-2|2|CV-4|35|2 x 16 AWG|41
OFICINAS|6|PLAFÓN|1.25|AMP-2|2|CV-5|10|2 x 16 AWG|47
SANITARIOS|4|PLAFÓN|2.5|AMP-2|2|||2 x 16 AWG|29
EXPLANADA|4|TROMPETA|15|AMP-3|1|||2 x 12 AWG|95
TOTAL|50||||||||438
||
NOTAS
1. AMP-1 Y AMP-2 SON DE DOS CANALES, 125 W POR CANAL.
2. AMP-3 ES DE UN CANAL, 125 W.
3. LA TRAYECTORIA DE CADA ALIMENTADOR SE AJUSTARÁ EN OBRA.
`)
		p.Merge("A1:H1", "A2:J2", "A4:A5", "B4:D4", "E4:F4", "G4:H4", "I4:J4")
		p.Bold("A1:J2", "A4:J5", "A14:J14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("P-2218", "PLANETARIO CERRO TEPOZÁN", "two rows of headings with CLAVE twice; channel ratings in numbered notes; wire gauges")
		t.Speakers("sheet=CÉDULA; tap_v=70.7; line_v=70.7", `rows|zone|count|tap_w|amplifier|channel|control
6|VESTÍBULO|6|5|AMP-1|1|CV-1
7|SALA DE EXPOSICIÓN A|8|5|AMP-1|2|CV-2
8|SALA DE EXPOSICIÓN B|8|5|AMP-1|2|CV-3
9|PASILLO DEL DOMO|10|2.5|AMP-2|1|
10|TALLER INFANTIL|4|5|AMP-2|2|CV-4
11|OFICINAS|6|1.25|AMP-2|2|CV-5
12|SANITARIOS|4|2.5|AMP-2|2|
13|EXPLANADA|4|15|AMP-3|1|`)
		t.Channels("line_v=70.7; rated_w=125", `amplifier|channel|load_w
AMP-1|1|30
AMP-1|2|80
AMP-2|1|25
AMP-2|2|37.5
AMP-3|1|60`)
		t.Amplifiers("", `amplifier|load_w
AMP-1|110
AMP-2|62.5
AMP-3|60`)
		t.Controls("", `control|zone|rated_w|load_w
CV-1|VESTÍBULO|50|30
CV-2|SALA DE EXPOSICIÓN A|50|40
CV-3|SALA DE EXPOSICIÓN B|50|40
CV-4|TALLER INFANTIL|35|20
CV-5|OFICINAS|10|7.5`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
VESTÍBULO|38|2.081
SALA DE EXPOSICIÓN A|52|2.081
SALA DE EXPOSICIÓN B|66|2.081
PASILLO DEL DOMO|70|2.081
TALLER INFANTIL|41|1.309
OFICINAS|47|1.309
SANITARIOS|29|1.309
EXPLANADA|95|3.309`)
		t.Left("CÉDULA", `14|total|sums`)
	}},

	// Argentina: the electrician of a riding club, one sheet saved as CSV, the wall attenuators by room below.
	{File: "electricista/bafles caballerizas.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Bafles en las caballerizas del Club Hípico Monte Aráoz;;;;
Potencia de 180 W con salida de 100 V, una sola línea para todo;;;;
;;;;
Lugar;Cant.;Derivación;Total W;Obs.
Boxes fila norte;6;5 W;30;
Boxes fila sur;6;5 W;30;
Picadero cubierto;4;10 W;40;
Herrería;1;5 W;5;
Veterinaria;2;2,5 W;5;
Guadarnés;2;2,5 W;5;
Secretaría;1;1,25 W;1,25;
Pista de arena;2;15 W;30;en las columnas del portón
Suma;24;;146,25;
;;;;
Atenuadores de pared;;;;
Picadero cubierto;60 W;;;
Veterinaria;10 W;;;
Secretaría;5 W;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Club Hípico Monte Aráoz", "plain; one amplifier and one line in a sentence, attenuators without names by room in a short list below")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|note
5|Boxes fila norte|6|5|
6|Boxes fila sur|6|5|
7|Picadero cubierto|4|10|unnamed
8|Herrería|1|5|
9|Veterinaria|2|2.5|unnamed
10|Guadarnés|2|2.5|
11|Secretaría|1|1.25|unnamed
12|Pista de arena|2|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|180|146.25`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|180|146.25`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Picadero cubierto|60|40
|Veterinaria|10|5
|Secretaría|5|1.25`)
		t.Left("", `13|total|sums
16|other|an attenuator
17|other|an attenuator
18|other|an attenuator`)
	}},

	// Chile: the maintenance head of a library reports a change of taps that has been carried out, before and after.
	{File: "solicitudes/SC 7 parlantes biblioteca.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Cambio")
		p.Put("A1", `
Biblioteca de Quebrada Honda
Solicitud de cambio N° 7: potencia de los parlantes. Ejecutada el 12 de mayo.
Amplificador de 120 W, línea de 100 V, salida única
||
Recinto|Parlantes|Potencia antes (W)|Potencia ahora (W)|Motivo
Hall|4|6|3|muy fuerte para el mesón
Sala infantil|4|3|sin cambio|
Sala de lectura|8|6|1,5|reclamos de lectores
Hemeroteca|4|3|1,5|reclamos de lectores
Préstamo|2|3|sin cambio|
Depósito de libros|2|6|10|no se escuchaba
Estacionamiento|4|6|10|no se escuchaba
Sala de reuniones|2|3|retirados|tiene equipo propio
||
Carga antes: 144 W. Carga ahora: 108 W.
Control de volumen CV1, 30 W: sala de lectura y hemeroteca. Los otros recintos no tienen.
`)
		p.Bold("A1", "A5:E5")
		p.Colour("FFF2CC", "D6:D13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Biblioteca de Quebrada Honda", "taps before and after a change that has been carried out; 'sin cambio' keeps the old one, one room taken down; control in a sentence")
		t.Speakers("sheet=Cambio; tap_v=100; line_v=100", `rows|room|count|tap_w|control
6|Hall|4|3|
7|Sala infantil|4|3|
8|Sala de lectura|8|1.5|CV1
9|Hemeroteca|4|1.5|CV1
10|Préstamo|2|3|
11|Depósito de libros|2|10|
12|Estacionamiento|4|10|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|120|108`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|120|108`)
		t.Controls("", `control|rated_w|load_w
CV1|30|18`)
		t.Left("Cambio", `13|removed|taken down, the room has its own equipment`)
	}},
}
