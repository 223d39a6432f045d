package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// branchesSpanish are branch offices of the same firm, in Spanish.
var branchesSpanish = []typed.Case{
	// a list by lines with titles, in a text file of an old program
	{File: "branches/delegación Sur/embarcadero_altavoces.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
EMBARCADERO DE RIVALTA;;;;
Megafonía 100 V. Relación de altavoces;;;;
;;;;
LINEA 1 - ETAPA 1 (120 W);;;;
Ref.;Ubicación;Modelo;Cant.;Pot. W
1.1;Pantalán A;Bocina;3;15
1.2;Pantalán B;Bocina;3;15
1.3;Grúa;Bocina;1;15
;;;;
LINEA 2 - ETAPA 2 (60 W);;;;
Ref.;Ubicación;Modelo;Cant.;Pot. W
2.1;Taquilla;Empotrable;1;3
2.2;Sala de espera;Empotrable;6;3
2.3;Aseos;Empotrable;2;1,5
2.4;Oficina capitanía;Caja;1;3
;;;;
LINEA 3 - ETAPA 3 (60 W);;;;
Ref.;Ubicación;Modelo;Cant.;Pot. W
3.1;Hangar de botes;Caja;4;6
3.2;Taller;Caja;2;6
3.3;Taller de velas;Caja;1;6
;;;;
Oficina capitanía lleva atenuador AT-1 de 6 W;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "EMBARCADERO DE RIVALTA", "a title a line with its amplifier and rating, headings repeated; a control in a sentence at the foot")
		t.Speakers("tap_v=100; line_v=100; amplifier=ETAPA 1; tap_w=15", `rows|tag|room|count
6|1.1|Pantalán A|3
7|1.2|Pantalán B|3
8|1.3|Grúa|1`)
		t.Speakers("tap_v=100; line_v=100; amplifier=ETAPA 2", `rows|tag|room|count|tap_w|control
12|2.1|Taquilla|1|3|
13|2.2|Sala de espera|6|3|
14|2.3|Aseos|2|1.5|
15|2.4|Oficina capitanía|1|3|AT-1`)
		t.Speakers("tap_v=100; line_v=100; amplifier=ETAPA 3; tap_w=6", `rows|tag|room|count
19|3.1|Hangar de botes|4
20|3.2|Taller|2
21|3.3|Taller de velas|1`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
ETAPA 1|120|105
ETAPA 2|60|27
ETAPA 3|60|42`)
		t.Amplifiers("", `amplifier|rated_w|load_w
ETAPA 1|120|105
ETAPA 2|60|27
ETAPA 3|60|42`)
		t.Controls("", `control|rated_w|load_w
AT-1|6|3`)
	}},

	// loudspeakers, amplifiers and attenuators on three sheets, joined by zone numbers
	{File: "branches/delegación Norte/OT 9054 Museo del Ferrocarril.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Altavoces")
		p.Put("A1", `
Nº|Zona|Sala|Tipo altavoz|Unidades|Potencia unitaria (W)|Potencia total (W)
1|Z01|Andén cubierto|Columna|6|15|90
2|Z02|Locomotoras|Columna|4|15|60
3|Z02|Coches|Caja mural|5|6|30
4|Z03|Maquetas|Techo|6|3|18
5|Z03|Tienda de entradas|Techo|2|3|6
6|Z04|Audiovisual|Caja mural|4|6|24
7|Z05|Oficinas|Techo|4|1.5|6
8|Z05|Biblioteca|Techo|3|1.5|4.5
9|Z05|Sala de juntas|Techo|2|3|6
|||Total|36||244.5
`)
		p.Bold("A1:G1", "D11:G11")
		q := p.Sheet("Amplificadores")
		q.Put("A1", `
OT 9054 - Museo del Ferrocarril de Altomira
Sistema de 100 V
||
Amplificador|Canal|Potencia canal (W)|Zona
AMP-A|CH1|120|Z01
AMP-A|CH2|120|Z02
AMP-B|CH1|60|Z03
AMP-B|CH2|60|Z04
AMP-B|CH3|60|Z05
AMP-B|CH4|60|reserva
`)
		q.Bold("A1", "A4:D4")
		r := p.Sheet("Atenuadores")
		r.Put("A1", `
Atenuador|Para sala|Zona|W máx.
AT04|Audiovisual|Z04|36
AT05|Sala de juntas|Z05|12
`)
		r.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("9054", "Museo del Ferrocarril de Altomira", "plain; three sheets joined by zone, one control for one room of a zone; one output in reserve")
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Z01; amplifier=AMP-A; channel=CH1", `rows|room|count|tap_w
2|Andén cubierto|6|15`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Z02; amplifier=AMP-A; channel=CH2", `rows|room|count|tap_w
3|Locomotoras|4|15
4|Coches|5|6`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Z03; amplifier=AMP-B; channel=CH1; tap_w=3", `rows|room|count
5|Maquetas|6
6|Tienda de entradas|2`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Z04; amplifier=AMP-B; channel=CH2; control=AT04", `rows|room|count|tap_w
7|Audiovisual|4|6`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Z05; amplifier=AMP-B; channel=CH3", `rows|room|count|tap_w|control
8|Oficinas|4|1.5|
9|Biblioteca|3|1.5|
10|Sala de juntas|2|3|AT05`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w|note
AMP-A|CH1|120|90|
AMP-A|CH2|120|90|
AMP-B|CH1|60|24|
AMP-B|CH2|60|24|
AMP-B|CH3|60|16.5|
AMP-B|CH4|60|0|in reserve`)
		t.Amplifiers("", `amplifier|load_w
AMP-A|180
AMP-B|64.5`)
		t.Controls("", `control|zone|rated_w|load_w
AT04|Z04|36|24
AT05|Z05|12|6`)
		t.Left("Altavoces", `11|total|sums`)
	}},

	// a register of small jobs, each with one amplifier
	{File: "branches/delegación Norte/registro instalaciones pequeñas 2008-2012.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Registro")
		p.Put("A1", `
Registro de instalaciones pequeñas (megafonía 100 V)
||
Expte.|Instalación|Local|Altavoces|W c/u|Amplificador|W ampl.
08/113|Colegio Las Encinas|Patio|2|15|Armario secretaría|120
08/113|Colegio Las Encinas|Pasillo planta baja|6|3|Armario secretaría|120
08/113|Colegio Las Encinas|Pasillo planta alta|6|3|Armario secretaría|120
08/113|Colegio Las Encinas|Biblioteca escolar|4|3|Armario secretaría|120
10/027|Cuadras de Peñablanca|Pista cubierta|4|10|Amplificador guadarnés|60
10/027|Cuadras de Peñablanca|Boxes|6|1.5|Amplificador guadarnés|60
10/027|Cuadras de Peñablanca|Guadarnés|1|3|Amplificador guadarnés|60
12/201|Piscina Los Tilos|Vaso grande|4|15|Amplificador socorrista|120
12/201|Piscina Los Tilos|Vaso infantil|2|10|Amplificador socorrista|120
12/201|Piscina Los Tilos|Vestuarios|4|3|Amplificador socorrista|120
12/201|Piscina Los Tilos|Botiquín|1|3|Amplificador socorrista|120
`)
		p.Bold("A1", "A3:G3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("08/113", "Colegio Las Encinas", "a register of three jobs, one amplifier each, its rating repeated in every row")
		t.Speakers("sheet=Registro; tap_v=100; line_v=100; amplifier=Armario secretaría", `rows|room|count|tap_w
4|Patio|2|15
5|Pasillo planta baja|6|3
6|Pasillo planta alta|6|3
7|Biblioteca escolar|4|3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
Armario secretaría|120|78`)
		t.Amplifiers("", `amplifier|rated_w|load_w
Armario secretaría|120|78`)
		t.Also("10/027", "Cuadras de Peñablanca", "second job of the register")
		t.Speakers("sheet=Registro; tap_v=100; line_v=100; amplifier=Amplificador guadarnés", `rows|room|count|tap_w
8|Pista cubierta|4|10
9|Boxes|6|1.5
10|Guadarnés|1|3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
Amplificador guadarnés|60|52`)
		t.Amplifiers("", `amplifier|rated_w|load_w
Amplificador guadarnés|60|52`)
		t.Also("12/201", "Piscina Los Tilos", "third job of the register")
		t.Speakers("sheet=Registro; tap_v=100; line_v=100; amplifier=Amplificador socorrista", `rows|room|count|tap_w
11|Vaso grande|4|15
12|Vaso infantil|2|10
13|Vestuarios|4|3
14|Botiquín|1|3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
Amplificador socorrista|120|95`)
		t.Amplifiers("", `amplifier|rated_w|load_w
Amplificador socorrista|120|95`)
	}},

	// emergency luminaires, with zones and watts, from the same archive
	{File: "branches/delegación Sur/Luminarias emergencia pabellón.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Emergencias")
		p.Put("A1", `
Pabellón de Torrequemada - luminarias de emergencia, revisión anual
||
Nº|Zona|Ubicación|Tipo|Cant.|W|Circuito|Autonomía
1|Pista|Puerta norte|Estanca|2|8|C1|1 h
2|Pista|Puerta sur|Estanca|2|8|C1|1 h
3|Gradas|Vomitorio 1|Superficie|1|6|C2|1 h
4|Gradas|Vomitorio 2|Superficie|1|6|C2|1 h
5|Vestuarios|Pasillo|Empotrada|4|6|C3|1 h
6|Vestuarios|Árbitros|Empotrada|1|6|C3|1 h, batería cambiada
7|Almacén|Puerta|Superficie|1|8|C3|no enciende
|||Total|12|||
`)
		p.Bold("A1", "A3:H3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Pabellón de Torrequemada", "emergency luminaires with zones, circuits and watts; no loudspeaker")
	}},
}
