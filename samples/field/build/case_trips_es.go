package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Seven Spanish hands: an estimator, an apprentice and a council's electrician in Spain, an installer in Mexico, a maintenance firm in Argentina,
// an engineer in Chile and a school's caretaker in Colombia.
var tripsEs = []typed.Case{

	{File: "ofertas/OF-1807 biblioteca.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Oferta")
		p.Put("A1", `
Oferta OF-1807|||Biblioteca pública Los Almendros
Megafonía en línea de 100 V
||
Salida|Zona|Sala|Altavoces|Tipo|W por altavoz|W
S1|Planta baja|Vestíbulo|4|techo|6|24
S1|Planta baja|Préstamo|4|techo|3|12
S1|Planta baja|Hemeroteca|5|techo|3|15
S2|Infantil|Sala infantil|6|techo|3|18
S2|Infantil|Taller|2|techo|3|6
S3|Planta primera|Sala de lectura|10|techo|1.5|15
S3|Planta primera|Pasillo|4|techo|1.5|6
S4|Salón de actos|Salón de actos|4|columna|10|40
Total|||39|||136
||
Central CM1 de 4 salidas, 240 W en total
Salón de actos con atenuador AT-1 de 50 W junto a la mesa
`)
		p.Bold("A1", "A4:G4", "A13:G13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("OF-1807", "Biblioteca pública Los Almendros", "plain; one frame whose outputs are not rated, its rating and the one attenuator in sentences below")
		t.Speakers("sheet=Oferta; tap_v=100; line_v=100; zone=Planta baja; amplifier=CM1; channel=S1", `rows|room|count|tap_w
5|Vestíbulo|4|6
6|Préstamo|4|3
7|Hemeroteca|5|3`)
		t.Speakers("sheet=Oferta; tap_v=100; line_v=100; zone=Infantil; amplifier=CM1; channel=S2", `rows|room|count|tap_w
8|Sala infantil|6|3
9|Taller|2|3`)
		t.Speakers("sheet=Oferta; tap_v=100; line_v=100; zone=Planta primera; amplifier=CM1; channel=S3", `rows|room|count|tap_w
10|Sala de lectura|10|1.5
11|Pasillo|4|1.5`)
		t.Speakers("sheet=Oferta; tap_v=100; line_v=100; zone=Salón de actos; amplifier=CM1; channel=S4; control=AT-1", `rows|room|count|tap_w
12|Salón de actos|4|10`)
		t.Channels("amplifier=CM1; line_v=100", `channel|load_w
S1|51
S2|24
S3|21
S4|40`)
		t.Amplifiers("", `amplifier|rated_w|load_w
CM1|240|136`)
		t.Controls("", `control|zone|rated_w|load_w
AT-1|Salón de actos|50|40`)
		t.Left("Oferta", `13|total|sums`)
	}},

	{File: "ordenes/OT 3390 planetario.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Planetario Cerro de las Liebres,,,,,,
Orden de trabajo 3390,,,,,,
,,,,,,
Área,No. de bocinas,Tap,Amplificador,Control de volumen,Cable,Metros
Domo,8,15W,Ampli 1,,cal. 14 AWG,60
Sala de espera,6,5W,Ampli 2,VC-1 (50W),cal. 16 AWG,35
Taquilla,2,2.5W,Ampli 2,,cal. 18 AWG,20
Sala de meteoritos,4,5W,Ampli 2,VC-2 (35W),cal. 16 AWG,45
Aula 1,2,2.5W,Ampli 2,VC-3 (10W),cal. 18 AWG,50
Aula 2,2,2.5W,Ampli 2,VC-4 (10W),cal. 18 AWG,58
Baños,4,1.25W,Ampli 2,,cal. 18 AWG,40
Explanada,4,15W,Ampli 3,,cal. 14 AWG,95
Estacionamiento,2,15W,Ampli 3,,cal. 14 AWG,140
,,,,,,
Ampli 1,250W a 70V,,,,,
Ampli 2,120W a 70V,,,,,
Ampli 3,120W a 70V,,,,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("3390", "Planetario Cerro de las Liebres", "plain; 70 V, gauges and metres, amplifiers with their ratings in three lines below")
		t.Speakers("tap_v=70.7; line_v=70.7", `rows|zone|count|tap_w|amplifier|control
5|Domo|8|15|Ampli 1|
6|Sala de espera|6|5|Ampli 2|VC-1
7|Taquilla|2|2.5|Ampli 2|
8|Sala de meteoritos|4|5|Ampli 2|VC-2
9|Aula 1|2|2.5|Ampli 2|VC-3
10|Aula 2|2|2.5|Ampli 2|VC-4
11|Baños|4|1.25|Ampli 2|
12|Explanada|4|15|Ampli 3|
13|Estacionamiento|2|15|Ampli 3|`)
		t.Channels("line_v=70.7", `amplifier|rated_w|load_w
Ampli 1|250|120
Ampli 2|120|70
Ampli 3|120|90`)
		t.Amplifiers("", `amplifier|rated_w|load_w
Ampli 1|250|120
Ampli 2|120|70
Ampli 3|120|90`)
		t.Controls("", `control|zone|rated_w|load_w
VC-1|Sala de espera|50|30
VC-2|Sala de meteoritos|35|20
VC-3|Aula 1|10|5
VC-4|Aula 2|10|5`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Domo|60|2.081
Sala de espera|35|1.309
Taquilla|20|0.823
Sala de meteoritos|45|1.309
Aula 1|50|0.823
Aula 2|58|0.823
Baños|40|0.823
Explanada|95|2.081
Estacionamiento|140|2.081`)
		t.Left("", `15|amplifier|rating
16|amplifier|rating
17|amplifier|rating`)
	}},

	{File: "mantenimiento/terminal relevamiento.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Relevamiento")
		p.Put("A1", `
Terminal de ómnibus Paso del Ceibo
Relevamiento de megafonía, OT 7715
||
AMPLIFICADOR 1 (150 W, línea de 100 V): hall y boleterías
Lugar|Parlante|Cant.|Toma|Estado
Hall central|embutido|8|5 W|bien
Boleterías 1 a 6|ídem|6|2,5 W|bien
Boleterías 7 a 10|ídem|4|ídem|uno con zumbido
Oficina de informes|de pared|1|5 W|bien, con potenciómetro de 10 W
||
AMPLIFICADOR 2 (250 W, línea de 100 V): plataformas
Lugar|Parlante|Cant.|Toma|Estado
Plataformas 1 a 5|corneta|5|15 W|bien
Plataformas 6 a 10|ídem|5|ídem|bien
Plataforma 11|ídem|1|ídem|a instalar cuando termine la obra
Playa de maniobras|ídem|2|20 W|bien
||
AMPLIFICADOR 3 (60 W, línea de 100 V): depósito y oficinas
Lugar|Parlante|Cant.|Toma|Estado
Depósito de encomiendas|corneta|2|15 W|bien
Oficinas|embutido|4|2,5 W|bien, con perilla P1 de 20 W
Sala de choferes|ídem|2|ídem|misma perilla P1
Archivo|ídem|1|no se pudo ver|bajo llave
`)
		p.Bold("A1", "A4", "A11", "A18")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("7715", "Terminal de ómnibus Paso del Ceibo", "a section an amplifier, its rating in the title; ditto words, controls in remarks, one still to be fitted, one tap that could not be seen")
		t.Speakers("sheet=Relevamiento; tap_v=100; line_v=100; amplifier=AMPLIFICADOR 1", `rows|room|count|tap_w|note
6|Hall central|8|5|
7|Boleterías 1 a 6|6|2.5|
8|Boleterías 7 a 10|4|2.5|
9|Oficina de informes|1|5|unnamed`)
		t.Speakers("sheet=Relevamiento; tap_v=100; line_v=100; amplifier=AMPLIFICADOR 2", `rows|room|count|tap_w
13|Plataformas 1 a 5|5|15
14|Plataformas 6 a 10|5|15
16|Playa de maniobras|2|20`)
		t.Speakers("sheet=Relevamiento; tap_v=100; line_v=100; amplifier=AMPLIFICADOR 3", `rows|room|count|tap_w|control
20|Depósito de encomiendas|2|15|
21|Oficinas|4|2.5|P1
22|Sala de choferes|2|2.5|P1
23|Archivo|1||`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w|load_min_w
AMPLIFICADOR 1|150|70|
AMPLIFICADOR 2|250|190|
AMPLIFICADOR 3|60||45`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMPLIFICADOR 1|150|70
AMPLIFICADOR 2|250|190
AMPLIFICADOR 3|60|`)
		t.Controls("", `control|rated_w|load_w|note
|10|5|unnamed
P1|20|15|`)
		t.Left("Relevamiento", `15|future|to be fitted after the works`)
		t.Asks("Relevamiento", `23|asked|tap of the loudspeaker in the archive`)
	}},

	{File: "proyectos/PT-208 piscina.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Memoria")
		p.Put("A1", `
Piscina temperada Los Coligües, proyecto PT-208, distribución en 100 V
||
Zona|Z1|Z2|Z3|Z4|Z5|Z6
Recinto|Nave piscina|Graderías|Camarines damas|Camarines varones|Hall|Administración
Parlantes|8|6|4|4|5|2
Derivación (W)|20|10|3|3|6|3
Carga (W)|160|60|12|12|30|6
Amplificador|AMP-1|AMP-1|AMP-2|AMP-2|AMP-2|AMP-2
Canal|1|2|1|1|2|2
Potencia del canal (W)|240|120|60|60|60|60
Atenuador|||AT-3|AT-4||AT-6
Potencia del atenuador (W)|||15|15||10
Cable|2 x 2,5 mm²|2 x 2,5 mm²|2 x 1,5 mm²|2 x 1,5 mm²|2 x 1,5 mm²|2 x 1,5 mm²
Largo (m)|85|110|60|72|40|55
`)
		p.Bold("A1", "A3:A14", "B3:G3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("PT-208", "Piscina temperada Los Coligües", "table that runs across: a column a zone")
		t.Speakers("sheet=Memoria; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|amplifier|channel|control
B|Z1|Nave piscina|8|20|AMP-1|1|
C|Z2|Graderías|6|10|AMP-1|2|
D|Z3|Camarines damas|4|3|AMP-2|1|AT-3
E|Z4|Camarines varones|4|3|AMP-2|1|AT-4
F|Z5|Hall|5|6|AMP-2|2|
G|Z6|Administración|2|3|AMP-2|2|AT-6`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP-1|1|240|160
AMP-1|2|120|60
AMP-2|1|60|24
AMP-2|2|60|36`)
		t.Amplifiers("", `amplifier|load_w
AMP-1|220
AMP-2|60`)
		t.Controls("", `control|zone|rated_w|load_w
AT-3|Z3|15|12
AT-4|Z4|15|12
AT-6|Z6|10|6`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Z1|85|2.5
Z2|110|2.5
Z3|60|1.5
Z4|72|1.5
Z5|40|1.5
Z6|55|1.5`)
	}},

	{File: "colegio/inventario sonido sede B.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Sonido")
		p.Put("A1", `
Colegio Los Guaduales, sede B
Inventario de sonido, línea de 70 V
||
Amplificador|Zona|Salón|Parlantes|Vatios c/u|Control de volumen
Amplificador principal⏎240 W|Primaria|Salones 101 a 106|6|2.5|
|Primaria|Corredor|4|5|
|Bachillerato|Salones 201 a 208|8|2.5|
|Bachillerato|Corredor|4|5|
|Patio|Patio central|4|15|
Amplificador aula múltiple⏎120 W|Aula múltiple|Aula múltiple|4|10|VC aula 60 W
|Aula múltiple|Camerinos|2|2.5|
|Biblioteca|Biblioteca|6|2.5|VC biblioteca 30 W
|Biblioteca|Sala de lectura|2|2.5|VC biblioteca
`)
		p.Merge("A5:A9", "A10:A13")
		p.Bold("A1", "A4:F4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Colegio Los Guaduales", "amplifiers in merged cells with their rating on a second line of the cell; control ratings behind the name")
		t.Speakers("sheet=Sonido; tap_v=70.7; line_v=70.7; amplifier=Amplificador principal", `rows|zone|room|count|tap_w
5|Primaria|Salones 101 a 106|6|2.5
6|Primaria|Corredor|4|5
7|Bachillerato|Salones 201 a 208|8|2.5
8|Bachillerato|Corredor|4|5
9|Patio|Patio central|4|15`)
		t.Speakers("sheet=Sonido; tap_v=70.7; line_v=70.7; amplifier=Amplificador aula múltiple", `rows|zone|room|count|tap_w|control
10|Aula múltiple|Aula múltiple|4|10|VC aula
11|Aula múltiple|Camerinos|2|2.5|
12|Biblioteca|Biblioteca|6|2.5|VC biblioteca
13|Biblioteca|Sala de lectura|2|2.5|VC biblioteca`)
		t.Channels("line_v=70.7", `amplifier|rated_w|load_w
Amplificador principal|240|135
Amplificador aula múltiple|120|65`)
		t.Amplifiers("", `amplifier|rated_w|load_w
Amplificador principal|240|135
Amplificador aula múltiple|120|65`)
		t.Controls("", `control|rated_w|load_w
VC aula|60|40
VC biblioteca|30|20`)
	}},

	{File: "levantamientos/caballerizas.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Hoja1")
		p.Put("A1", `
Caballerizas de Monteverde, levantamiento
Un solo amplificador, 120 W, 100 V, en el guadarnés
||
Nº|Dónde|Qué hay|Toma puesta|¿Suena?
1|Picadero cubierto, pilar 1|bocina|10 W|sí
2|Picadero cubierto, pilar 2|bocina|10 W|sí
3|Picadero cubierto, pilar 3|bocina|10 W|sí, flojo
4|Picadero cubierto, pilar 4|bocina retirada, queda el cable||
5|Pasillo de boxes A|caja|3 W|sí
6|Pasillo de boxes A|caja|3 W|sí
7|Pasillo de boxes B|caja|3 W|sí
8|Pasillo de boxes B|caja|3 W|sí
9|Guadarnés|caja|3 W|sí, con atenuador de 6 W
10|Oficina del veterinario|techo|1,5 W|sí, con atenuador de 4 W
11|Pista exterior|bocina|15 W|sí
12|Pista exterior|bocina|15 W|sí
13|Portón de entrada|bocina|muy alta, no llego a leerla|sí
14|Almacén|caja de repuesto, sin montar||
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Caballerizas de Monteverde", "survey with states: one taken down, one spare, one tap not read; attenuators without a name in the remarks; one amplifier without a name")
		t.Speakers("sheet=Hoja1; tap_v=100; line_v=100", `rows|tag|room|tap_w|note
5|1|Picadero cubierto, pilar 1|10|
6|2|Picadero cubierto, pilar 2|10|
7|3|Picadero cubierto, pilar 3|10|
9|5|Pasillo de boxes A|3|
10|6|Pasillo de boxes A|3|
11|7|Pasillo de boxes B|3|
12|8|Pasillo de boxes B|3|
13|9|Guadarnés|3|unnamed
14|10|Oficina del veterinario|1.5|unnamed
15|11|Pista exterior|15|
16|12|Pista exterior|15|
17|13|Portón de entrada||`)
		t.Channels("line_v=100", `amplifier|rated_w|load_min_w
|120|76.5`)
		t.Amplifiers("", `amplifier|rated_w
|120`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|6|3
|4|1.5`)
		t.Left("Hoja1", `8|removed|horn taken down
18|spare|not fitted`)
		t.Asks("Hoja1", `17|asked|tap of the horn at the gate`)
	}},

	{File: "cocheras/alumbrado por zonas.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Alumbrado")
		p.Put("A1", `
Cocheras de tranvías del Arenal, alumbrado, expediente 118
||
Zona|Local|Luminaria|Uds|W/ud|W total|Circuito|Regulador
Nave|Vías 1 a 4|campana LED|12|150|1800|C1|
Nave|Vías 5 a 8|campana LED|12|150|1800|C2|
Nave|Fosos|estanca|16|36|576|C3|
Taller|Bancos|estanca|8|36|288|C4|
Taller|Almacén|estanca|4|36|144|C4|
Oficinas|Despachos|panel|10|34|340|C5|R1 (500 W)
Oficinas|Pasillo|downlight|6|12|72|C6|
Vestuarios|Vestuario 1|downlight|6|12|72|C6|
Vestuarios|Vestuario 2|downlight|6|12|72|C6|
|Total||80||5164||
`)
		p.Bold("A1", "A3:H3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("118", "Cocheras de tranvías del Arenal", "luminaires with zones, watts, circuits and a dimmer; no loudspeaker")
	}},
}
