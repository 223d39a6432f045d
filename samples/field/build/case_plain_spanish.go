package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A facility manager, an apprentice, a consultant and the office of an installer.
var plainSpanish = []typed.Case{
	typed.Case{File: "plain/inventario estacion.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Estación de autobuses de Robledal - inventario de megafonía (100 V);;;;;;;
Código;Equipo;Zona;Ubicación;Cantidad;Potencia por unidad;Amplificador;Observaciones
AMP-1;Amplificador;;Sala técnica;1;240 W;;
AMP-2;Amplificador;;Sala técnica;1;120 W;;
MIC-1;Micrófono de avisos;;Taquilla;1;;;
ALT-01;Altavoz bocina;Dársenas;Dársenas 1 a 6;6;10 W;AMP-1;
ALT-02;Altavoz bocina;Dársenas;Dársenas 7 a 12;6;10 W;AMP-1;
ALT-03;Altavoz bocina;Dársenas;Entrada de autobuses;2;15 W;AMP-1;pintados en 2020
ALT-04;Altavoz de techo;Vestíbulo;Taquillas;4;3 W;AMP-2;
ALT-05;Altavoz de techo;Vestíbulo;Puertas;4;6 W;AMP-2;
ALT-06;Altavoz de techo;Sala de espera;Fondo;4;3 W;AMP-2;
ALT-07;Altavoz de techo;Sala de espera;Ventanas;4;3 W;AMP-2;
ALT-08;Altavoz de pared;Consigna;Mostrador;1;3 W;AMP-2;
ALT-09;Altavoz de techo;Aseos;Pasillo;2;1,5 W;AMP-2;
REG-1;Regulador de volumen;Sala de espera;Junto a la puerta;1;36 W;AMP-2;regula toda la sala de espera
ALT-10;Altavoz de techo;;Almacén, en caja;3;3 W;;repuesto
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Estación de autobuses de Robledal", "asset register: amplifiers, control and microphone as rows among the loudspeakers, spares in a box")
		t.Speakers("tap_v=100; line_v=100; zone=Dársenas; amplifier=AMP-1", `rows|tag|room|count|tap_w
6|ALT-01|Dársenas 1 a 6|6|10
7|ALT-02|Dársenas 7 a 12|6|10
8|ALT-03|Entrada de autobuses|2|15`)
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP-2", `rows|tag|zone|room|count|tap_w|control
9|ALT-04|Vestíbulo|Taquillas|4|3|
10|ALT-05|Vestíbulo|Puertas|4|6|
11|ALT-06|Sala de espera|Fondo|4|3|REG-1
12|ALT-07|Sala de espera|Ventanas|4|3|REG-1
13|ALT-08|Consigna|Mostrador|1|3|
14|ALT-09|Aseos|Pasillo|2|1.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP-1|240|150
AMP-2|120|66`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP-1|240|150
AMP-2|120|66`)
		t.Controls("", `control|zone|rated_w|load_w
REG-1|Sala de espera|36|24`)
		t.Left("", `3|amplifier|
4|amplifier|
5|microphone|
15|control|
16|spare|in a box`)
	}},

	{File: "plain/altavoces cocheras.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Hoja1")
		p.Put("A1", `
Cocheras de Peñalta, lo que he visto con la escalera
||
nº|sitio|altavoz|toma|salida
1|Nave, puerta 1|bocina|15 W|1
2|Nave, puerta 2|"|"|"
3|Nave, puerta 3|"|"|"
4|Nave, foso|"|10 W|"
5|Nave, foso|"|"|"
6|Taller|caja|6 W|"
7|Taller|"|"|"
8|Oficina jefe|techo|3 W|2
9|Oficina tráfico|"|"|"
10|Oficina tráfico|"|"|"
11|Comedor|"|"|"
12|Comedor|"|"|"
13|Pasillo|"|1,5 W|"
14|Pasillo|"|"|"
||
El amplificador es de 2 x 120 W, salidas de 100 V.
`)
		p.Bold("A3:E3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Cocheras de Peñalta", "apprentice's list, a row a loudspeaker, ditto marks for kind, tap and output; rating in a sentence below")
		t.Speakers("sheet=Hoja1; tap_v=100; line_v=100", `rows|tag|room|tap_w|channel
4|1|Nave, puerta 1|15|1
5|2|Nave, puerta 2|15|1
6|3|Nave, puerta 3|15|1
7|4|Nave, foso|10|1
8|5|Nave, foso|10|1
9|6|Taller|6|1
10|7|Taller|6|1
11|8|Oficina jefe|3|2
12|9|Oficina tráfico|3|2
13|10|Oficina tráfico|3|2
14|11|Comedor|3|2
15|12|Comedor|3|2
16|13|Pasillo|1.5|2
17|14|Pasillo|1.5|2`)
		t.Channels("line_v=100", `channel|rated_w|load_w
1|120|77
2|120|18`)
		t.Amplifiers("", `amplifier|load_w
|95`)
	}},

	{File: "plain/P-305 biblioteca megafonia.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Cuadro")
		p.Put("A1", `
BIBLIOTECA MUNICIPAL DE TORREMAYOR
Proyecto P-305. Cuadro de megafonía, línea de 100 V
||
ZONA|SALA|ALTAVOCES|||AMPLIFICACIÓN|||CONTROL|
||Tipo|Uds.|W/ud.|Equipo|Canal|W canal|Ref.|W
Acceso|Vestíbulo|empotrado|6|6|ET-1|1|120||
|Préstamo|empotrado|4|3|ET-1|1|120|AV-1|15
|Guardarropa|empotrado|1|3|ET-1|1|120||
Lectura|Sala general|empotrado|12|3|ET-1|2|120|AV-2|60
|Hemeroteca|empotrado|4|3|ET-1|2|120|AV-3|20
|Fonoteca|caja|2|6|ET-1|2|120|AV-4|20
Infantil|Cuentos|empotrado|4|3|ET-2|1|60|AV-5|20
|Taller|caja|2|6|ET-2|1|60||
Servicios|Depósito de libros|bocina|3|10|ET-2|2|60||
|Oficinas|empotrado|5|1.5|ET-2|2|60||
`)
		p.Merge("C4:E4", "F4:H4", "I4:J4", "A6:A8", "A9:A11", "A12:A13", "A14:A15")
		p.Bold("A1", "A4:J5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("P-305", "BIBLIOTECA MUNICIPAL DE TORREMAYOR", "headings in two rows with merged groups, zones merged down, W under three groups")
		t.Speakers("sheet=Cuadro; tap_v=100; line_v=100; zone=Acceso; amplifier=ET-1; channel=1", `rows|room|count|tap_w|control
6|Vestíbulo|6|6|
7|Préstamo|4|3|AV-1
8|Guardarropa|1|3|`)
		t.Speakers("sheet=Cuadro; tap_v=100; line_v=100; zone=Lectura; amplifier=ET-1; channel=2", `rows|room|count|tap_w|control
9|Sala general|12|3|AV-2
10|Hemeroteca|4|3|AV-3
11|Fonoteca|2|6|AV-4`)
		t.Speakers("sheet=Cuadro; tap_v=100; line_v=100; zone=Infantil; amplifier=ET-2; channel=1", `rows|room|count|tap_w|control
12|Cuentos|4|3|AV-5
13|Taller|2|6|`)
		t.Speakers("sheet=Cuadro; tap_v=100; line_v=100; zone=Servicios; amplifier=ET-2; channel=2", `rows|room|count|tap_w
14|Depósito de libros|3|10
15|Oficinas|5|1.5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
ET-1|1|120|51
ET-1|2|120|60
ET-2|1|60|24
ET-2|2|60|37.5`)
		t.Amplifiers("", `amplifier|load_w
ET-1|111
ET-2|61.5`)
		t.Controls("", `control|rated_w|load_w
AV-1|15|12
AV-2|60|36
AV-3|20|12
AV-4|20|12
AV-5|20|12`)
	}},

	{File: "plain/registro de obras.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Obras")
		p.Put("A1", `
Registro de megafonías instaladas, todas a 100 V
||
Obra|Centro|Zona|Altavoces|Cantidad|W|Amplificador|W amplificador|Atenuador|W atenuador
1401|Piscina La Salina|Vaso grande|bocina|6|15|A|240||
1401|Piscina La Salina|Vaso chico|caja|4|6|A|240||
1401|Piscina La Salina|Vestuarios|techo|8|3|B|60|R1|36
1401|Piscina La Salina|Entrada|techo|3|3|B|60||
1417|Teatro Encinares|Vestíbulo|techo|8|6|A|120|R1|60
1417|Teatro Encinares|Camerinos|techo|6|3|A|120||
1417|Teatro Encinares|Talleres|caja|3|10|B|120||
1417|Teatro Encinares|Entrada|techo|2|3|B|120|R2|12
1432|Colegio Monteviejo|Aulas|caja|14|3|A|120||
1432|Colegio Monteviejo|Gimnasio|bocina|4|10|A|120|R1|50
1432|Colegio Monteviejo|Patio|bocina|3|15|B|60||
`)
		p.Bold("A1", "A3:J3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("1401", "Piscina La Salina", "register of three jobs in one table; amplifiers and controls have the same names in each")
		t.Speakers("sheet=Obras; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|control
4|Vaso grande|6|15|A|
5|Vaso chico|4|6|A|
6|Vestuarios|8|3|B|R1
7|Entrada|3|3|B|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|240|114
B|60|33`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|240|114
B|60|33`)
		t.Controls("", `control|zone|rated_w|load_w
R1|Vestuarios|36|24`)
		t.Also("1417", "Teatro Encinares", "second job of the register")
		t.Speakers("sheet=Obras; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|control
8|Vestíbulo|8|6|A|R1
9|Camerinos|6|3|A|
10|Talleres|3|10|B|
11|Entrada|2|3|B|R2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|120|66
B|120|36`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|120|66
B|120|36`)
		t.Controls("", `control|zone|rated_w|load_w
R1|Vestíbulo|60|48
R2|Entrada|12|6`)
		t.Also("1432", "Colegio Monteviejo", "third job of the register")
		t.Speakers("sheet=Obras; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|control
12|Aulas|14|3|A|
13|Gimnasio|4|10|A|R1
14|Patio|3|15|B|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|120|82
B|60|45`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|120|82
B|60|45`)
		t.Controls("", `control|zone|rated_w|load_w
R1|Gimnasio|50|40`)
	}},
}
