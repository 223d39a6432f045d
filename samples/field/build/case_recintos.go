package main

import (
	"strings"

	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// recintos are documents in Spanish: an electrician's file, a project engineer, a maintenance man, a museum's caretaker, an architect's quantities,
// a commissioning engineer, an insurer and a stage crew (Spain, Mexico, Argentina, Chile).
var recintos = []typed.Case{
	{File: "es/biblioteca/relacion altavoces.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Latin1(typed.DOS(`
Biblioteca Valdecorza;;;;;;
Relación de altavoces instalados, expte. 88/19;;;;;;
Amplificador de 240 W, salida de 100 V, con selector de 3 líneas;;;;;;
;;;;;;
Nº;Planta;Dependencia;Tipo;W;Línea;Atenuador
1;Baja;Vestíbulo;techo;3;1;
2;Baja;Vestíbulo;techo;3;1;
3;Baja;Préstamo;techo;3;1;R1
4;Baja;Hemeroteca;techo;1,5;1;R2
5;Baja;Hemeroteca;techo;1,5;1;R2
6;Primera;Sala general;techo;3;2;R3
7;Primera;Sala general;techo;3;2;R3
8;Primera;Sala general;techo;3;2;R3
9;Primera;Sala general;techo;3;2;R3
10;Primera;Sala infantil;pared;6;2;R4
11;Primera;Sala infantil;pared;6;2;R4
12;Segunda;Salón de actos;columna;20;3;
13;Segunda;Salón de actos;columna;20;3;
14;Segunda;Aseos;techo;1,5;3;
;;;;;;
R1 y R2 de 6 W, R3 y R4 de 24 W;;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("88/19", "Biblioteca Valdecorza", "plain, a row a loudspeaker; one amplifier with three lines that are not rated; ratings of the controls in a sentence below")
		t.Speakers("tap_v=100; line_v=100; zone=Baja; channel=1; note=floor as zone", `rows|room|tap_w|control
6|Vestíbulo|3|
7|Vestíbulo|3|
8|Préstamo|3|R1
9|Hemeroteca|1.5|R2
10|Hemeroteca|1.5|R2`)
		t.Speakers("tap_v=100; line_v=100; zone=Primera; channel=2; note=floor as zone", `rows|room|tap_w|control
11..14|Sala general|3|R3
15..16|Sala infantil|6|R4`)
		t.Speakers("tap_v=100; line_v=100; zone=Segunda; channel=3; note=floor as zone", `rows|room|tap_w
17..18|Salón de actos|20
19|Aseos|1.5`)
		t.Channels("line_v=100", `amplifier|channel|load_w
|1|12
|2|24
|3|41.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|77.5`)
		t.Controls("", `control|rated_w|load_w
R1|6|3
R2|6|3
R3|24|12
R4|24|12`)
	}},

	{File: "es/terminal/Cuadro de bocinas R2.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("BOCINAS")
		p.Put("A1", `
PROYECTO: TERMINAL CERRO PINTO|||||||REV. 2
CUADRO DE BOCINAS, SISTEMA DE VOCEO A 70 V

CIRCUITO|ZONA|LOCAL|BOCINA||DERIVACIÓN|POTENCIA|CONTROL DE
|||TIPO|CANT.|(W)|TOTAL (W)|VOLUMEN
C-1|Sala de espera|Sala norte|Plafón 8"|8|5|40|CV-1
C-1|Sala de espera|Sala sur|Plafón 8"|6|5|30|CV-1
C-2|Andenes|Andenes 1 a 4|Trompeta|4|15|60|
C-2|Andenes|Andenes 5 a 8|Trompeta|4|15|60|
C-3|Taquillas|Taquilla A|Plafón 4"|3|2.5|7.5|CV-2
C-3|Taquillas|Taquilla B|Plafón 4"|2|2.5|5|CV-2
C-3|Servicios|Sanitarios hombres|Plafón 4"|2|1|2|
C-3|Servicios|Sanitarios mujeres|Plafón 4"|2|1|2|
C-4|Paquetería|Mostrador|Plafón 8"|2|5|10|CV-3
C-4|Paquetería|Bodega|Trompeta|2|7.5|15|
C-4|Encierro|Encierro de autobuses|Trompeta|3|15|45|
|||TOTAL|38||276.5|
`)
		p.Merge("A4:A5", "B4:B5", "C4:C5", "D4:E4")
		p.Bold("A1:A2", "A4:H5", "D17:G17")
		q := p.Sheet("AMPLIFICADORES")
		q.Put("A1", `
EQUIPO|CANAL|POTENCIA|CIRCUITO|CARGA
AMP-1|A|125 W|C-1|70 W
AMP-1|B|125 W|C-2|120 W
AMP-2|A|125 W|C-3|16.5 W
AMP-2|B|125 W|C-4|70 W

CONTROL|LOCAL|CAPACIDAD
CV-1|Sala de espera|100 W
CV-2|Taquillas|35 W
CV-3|Mostrador|35 W
`)
		q.Bold("A1:E1", "A7:C7")
		r := p.Sheet("CABLEADO")
		r.Put("A1", `
CIRCUITO|DE|A|CABLE|LONGITUD (m)
C-1|Rack|Sala de espera|2x14 AWG|85
C-2|Rack|Andenes|2x12 AWG|140
C-3|Rack|Taquillas|2x16 AWG|40
C-3|Taquillas|Servicios|2x18 AWG|25
C-4|Rack|Paquetería|2x14 AWG|60
C-4|Paquetería|Encierro|2x14 AWG|45
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Terminal Cerro Pinto", "header of two rows; outputs and cables by circuit on other sheets; AWG")
		t.Revision("2", false)
		t.Speakers("sheet=BOCINAS; tap_v=70.7; line_v=70.7; zone=Sala de espera; amplifier=AMP-1; channel=A; control=CV-1", `rows|room|count|tap_w
6|Sala norte|8|5
7|Sala sur|6|5`)
		t.Speakers("sheet=BOCINAS; tap_v=70.7; line_v=70.7; zone=Andenes; amplifier=AMP-1; channel=B", `rows|room|count|tap_w
8|Andenes 1 a 4|4|15
9|Andenes 5 a 8|4|15`)
		t.Speakers("sheet=BOCINAS; tap_v=70.7; line_v=70.7; amplifier=AMP-2; channel=A", `rows|zone|room|count|tap_w|control
10|Taquillas|Taquilla A|3|2.5|CV-2
11|Taquillas|Taquilla B|2|2.5|CV-2
12|Servicios|Sanitarios hombres|2|1|
13|Servicios|Sanitarios mujeres|2|1|`)
		t.Speakers("sheet=BOCINAS; tap_v=70.7; line_v=70.7; amplifier=AMP-2; channel=B", `rows|zone|room|count|tap_w|control
14|Paquetería|Mostrador|2|5|CV-3
15|Paquetería|Bodega|2|7.5|
16|Encierro|Encierro de autobuses|3|15|`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
AMP-1|A|125|70
AMP-1|B|125|120
AMP-2|A|125|16.5
AMP-2|B|125|70`)
		t.Amplifiers("", `amplifier|load_w
AMP-1|190
AMP-2|86.5`)
		t.Controls("", `control|zone|rated_w|load_w
CV-1|Sala de espera|100|70
CV-2|Taquillas|35|12.5
CV-3||35|10`)
		t.Lines("note=from-to", `line|from|to|length_m|area_mm2
C-1|Rack|Sala de espera|85|2.08
C-2|Rack|Andenes|140|3.31
C-3|Rack|Taquillas|40|1.31
C-3|Taquillas|Servicios|25|0.823
C-4|Rack|Paquetería|60|2.08
C-4|Paquetería|Encierro|45|2.08`)
		t.Left("BOCINAS", `17|total|sums`)
	}},

	{File: "es/natatorio/relevamiento sonido.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Hoja1")
		p.Put("A1", `
Natatorio Laguna Parda
Relevamiento de parlantes, 14 de marzo
Una potencia de 180 W, línea de 100 V

Sector|Lugar|Parlante|Cant.|Transf. en|Llave de vol.
Pileta grande|Lateral calle|bocina|3|10 W|
"|Lateral vestuarios|"|3|"|
Pileta chica|Fondo|columna|2|"|
Gradas|Arriba|bocina|4|5 W|
Vestuarios|Hombres|embutido|2|2,5 W|LV1
"|Mujeres|"|2|"|LV2
"|Niños|"|1|"|LV2
Administración|Secretaría|"|1|1 W|LV3
"|Sala de profesores|"|1|"|LV3
Hall|Ingreso|embutido|3|2,5 W|
"|Guardarropa|"|1|no se ve, cielorraso cerrado|LV4

LV1, LV2 y LV3 son de 10 W, LV4 de 6 W
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Natatorio Laguna Parda", "ditto marks for sector, kind and tap; one tap that could not be seen; ratings of the volume switches in a sentence below")
		t.Speakers("sheet=Hoja1; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|control
6|Pileta grande|Lateral calle|3|10|
7|Pileta grande|Lateral vestuarios|3|10|
8|Pileta chica|Fondo|2|10|
9|Gradas|Arriba|4|5|
10|Vestuarios|Hombres|2|2.5|LV1
11|Vestuarios|Mujeres|2|2.5|LV2
12|Vestuarios|Niños|1|2.5|LV2
13|Administración|Secretaría|1|1|LV3
14|Administración|Sala de profesores|1|1|LV3
15|Hall|Ingreso|3|2.5|
16|Hall|Guardarropa|1||LV4`)
		t.Channels("line_v=100", `amplifier|rated_w|load_min_w
|180|122`)
		t.Amplifiers("", `amplifier|rated_w
|180`)
		t.Controls("", `control|rated_w|load_w
LV1|10|5
LV2|10|7.5
LV3|10|2
LV4|6|`)
		t.Asks("Hoja1", `16|asked|tap above the closed ceiling`)
	}},

	{File: "es/museo/catastro parlantes.txt", Kind: "schedule", Bytes: func() []byte {
		return typed.Unicode16(typed.DOS(strings.ReplaceAll(`
Código|Sector|Recinto|Tipo de parlante|Toma a 100 V (W)|Amplificador|Canal|Estado
MF-001|Nave de locomotoras|Costado norte|bocina|15|AM1|1|operativo
MF-002|Nave de locomotoras|Costado norte|bocina|15|AM1|1|operativo
MF-003|Nave de locomotoras|Costado sur|bocina|15|AM1|1|operativo
MF-004|Nave de locomotoras|Costado sur|bocina|15|AM1|1|dado de baja
MF-005|Nave de locomotoras|Costado sur|bocina|7,5|AM1|1|operativo (reemplaza a MF-004)
MF-006|Sala de coches|Pasillo|cielo|3|AM1|2|operativo
MF-007|Sala de coches|Pasillo|cielo|3|AM1|2|operativo
MF-008|Sala de coches|Coche salón|cielo|1,5|AM1|2|operativo
MF-009|Boletería|Acceso|cielo|3|AM2|1|operativo
MF-010|Boletería|Acceso|cielo|3|AM2|1|con falla, se escucha bajo
MF-011|Auditorio|Platea|columna|20|AM2|2|operativo
MF-012|Auditorio|Platea|columna|20|AM2|2|operativo
MF-013|Taller|Maestranza|bocina|15|AM2|1|proyectado
MF-014|Bodega|Repisa 3|cielo|6|||repuesto
`, "|", "\t")))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "Unicode text with tabs; states by row: in use, faulty, written off, planned, in store; outputs without a rating")
		t.Speakers("tap_v=100; line_v=100; zone=Nave de locomotoras; amplifier=AM1; channel=1", `rows|tag|room|tap_w
2|MF-001|Costado norte|15
3|MF-002|Costado norte|15
4|MF-003|Costado sur|15
6|MF-005|Costado sur|7.5`)
		t.Speakers("tap_v=100; line_v=100; zone=Sala de coches; amplifier=AM1; channel=2", `rows|tag|room|tap_w
7|MF-006|Pasillo|3
8|MF-007|Pasillo|3
9|MF-008|Coche salón|1.5`)
		t.Speakers("tap_v=100; line_v=100; zone=Boletería; amplifier=AM2; channel=1", `rows|tag|room|tap_w|note
10|MF-009|Acceso|3|
11|MF-010|Acceso|3|faulty, but there`)
		t.Speakers("tap_v=100; line_v=100; zone=Auditorio; amplifier=AM2; channel=2", `rows|tag|room|tap_w
12|MF-011|Platea|20
13|MF-012|Platea|20`)
		t.Channels("line_v=100", `amplifier|channel|load_w
AM1|1|52.5
AM1|2|7.5
AM2|1|6
AM2|2|40`)
		t.Amplifiers("", `amplifier|load_w
AM1|60
AM2|46`)
		t.Left("", `5|removed|written off, replaced by MF-005
14|future|planned
15|spare|in store`)
	}},

	{File: "es/teatro/07 Megafonía mediciones.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Cap 07")
		p.Put("A1", `
TEATRO MARJALADA
CAPÍTULO 07. MEGAFONÍA (línea de 100 V)

Código|Ud|Resumen|Comentario|Medición|Precio|Importe
'07.01|ud|Altavoz de techo 6 W/100 V, conectado en la toma de 3 W||14|38.5|539
|||Foyer planta baja|8||
|||Foyer planta primera|6||
'07.02|ud|Altavoz de pared 20 W/100 V, conectado en la toma de 10 W||8|54|432
|||Camerinos|4||
|||Pasillo de artistas|2||
|||Taller de escena|2||
'07.03|ud|Proyector de sonido 20 W/100 V, conectado en la toma de 10 W||4|72|288
|||Muelle de carga|1||
|||Soportal de entrada|3||
'07.04|ud|Atenuador AT-1 de 50 W, para camerinos||1|29|29
'07.05|ud|Atenuador AT-2 de 36 W, para foyer planta baja||1|29|29
'07.06|ud|Amplificador de 240 W, alimenta todos los altavoces||1|690|690
'07.07|m|Manguera 2 x 2,5 mm²||320|1.9|608
||TOTAL CAPÍTULO 07||||2615
`)
		p.Bold("A1:A2", "A4:G4", "A5:G5", "A8:G8", "A12:G12", "C19:G19")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Teatro Marjalada", "bill of quantities: the item carries tap and sum, the rows below it room and count; rated power beside the tap")
		t.Speakers("sheet=Cap 07; tap_v=100; line_v=100", `rows|room|count|tap_w|control
6|Foyer planta baja|8|3|AT-2
7|Foyer planta primera|6|3|
9|Camerinos|4|10|AT-1
10|Pasillo de artistas|2|10|
11|Taller de escena|2|10|
13|Muelle de carga|1|10|
14|Soportal de entrada|3|10|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|162`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|162`)
		t.Controls("", `control|rated_w|load_w
AT-1|50|40
AT-2|36|24`)
		t.Lines("note=quantity for the whole job and no run: leaving it out is right too", `length_m|area_mm2
320|2.5`)
		t.Left("Cap 07", `5|total|item, its quantity is split below
8|total|item, its quantity is split below
12|total|item, its quantity is split below
19|total|sum of the chapter`)
	}},

	{File: "es/estacion/acta de pruebas.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Acta")
		p.Put("A1", `
ACTA DE PRUEBAS DE LÍNEAS DE MEGAFONÍA
Estación de Cabezagorda. Tensión de línea 100 V

Línea|L1|L2|L3|L4|L5|L6
Zona|Andén 1|Andén 2|Vestíbulo|Paso inferior|Aparcamiento|Oficinas
Nº de altavoces|12|12|8|6|4|5
Toma (W)|6|6|6|6|15|1,5
Potencia de línea (W)|72|72|48|36|60|7,5
Etapa|ET1|ET1|ET1|ET1|ET2|ET2
Salida|1|2|3|4|1|2
Potencia de la salida (W)|125|125|125|125|125|125
Impedancia calculada (Ω)|139|139|208|278|167|1333
Impedancia medida (Ω)|142|140|210|281|168|1290
Cable, sección (mm²)|2,5|2,5|1,5|2,5|2,5|1,5
Cable, longitud (m)|190|205|60|120|150|45
Aislamiento (MΩ)|>20|>20|>20|>20|12|>20
Resultado|conforme|conforme|conforme|conforme|conforme|conforme
`)
		p.Bold("A1", "A4:G4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Estación de Cabezagorda", "test record that runs across, a column a line; impedances beside powers")
		t.Speakers("sheet=Acta; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|channel
B|Andén 1|12|6|ET1|1
C|Andén 2|12|6|ET1|2
D|Vestíbulo|8|6|ET1|3
E|Paso inferior|6|6|ET1|4
F|Aparcamiento|4|15|ET2|1
G|Oficinas|5|1.5|ET2|2`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
ET1|1|125|72
ET1|2|125|72
ET1|3|125|48
ET1|4|125|36
ET2|1|125|60
ET2|2|125|7.5`)
		t.Amplifiers("", `amplifier|load_w
ET1|228
ET2|67.5`)
		t.Lines("note=one length a line", `line|zone|length_m|area_mm2
L1|Andén 1|190|2.5
L2|Andén 2|205|2.5
L3|Vestíbulo|60|1.5
L4|Paso inferior|120|2.5
L5|Aparcamiento|150|2.5
L6|Oficinas|45|1.5`)
	}},

	{File: "es/seguros/planetario inspeccion.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Inspección de bienes asegurados: Planetario Sierra Clara,,,,
Folio 3391-B,,,,
Equipo de sonido ambiental (línea de 70 V),,,,
,,,,
Partida,Ubicación,Descripción,Cantidad,Valor de reposición
1,Domo,"Bocina de muro, derivación de 10 W",8,14400
2,Domo,"Bocina de muro, derivación de 5 W",4,7200
3,Vestíbulo,"Bocina de plafón, derivación de 5 W",6,5400
4,Salón de talleres,"Bocina de plafón, derivación de 2.5 W",4,3600
5,Salón de talleres,Control de volumen de 35 W,1,650
6,Tienda de recuerdos,"Bocina de plafón, derivación de 2.5 W",2,1800
7,Tienda de recuerdos,Control de volumen de 10 W,1,520
8,Terraza de telescopios,"Trompeta, derivación de 15 W",2,5200
9,Cuarto de equipo,"Amplificador A de 250 W, alimenta el domo",1,18500
10,Cuarto de equipo,"Amplificador B de 120 W, alimenta el resto",1,12900
11,Bodega,"Bocina de plafón en caja, sin instalar",3,2700
,,Suma,,72870
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("3391-B", "Planetario Sierra Clara", "an insurer's list: taps, ratings and what feeds what in descriptions; loudspeakers in their boxes; values in money; controls known by their room")
		t.Speakers("tap_v=70.7; line_v=70.7; amplifier=A", `rows|room|count|tap_w
6|Domo|8|10
7|Domo|4|5`)
		t.Speakers("tap_v=70.7; line_v=70.7; amplifier=B", `rows|room|count|tap_w|note
8|Vestíbulo|6|5|
9|Salón de talleres|4|2.5|under the control of row 10
11|Tienda de recuerdos|2|2.5|under the control of row 12
13|Terraza de telescopios|2|15|`)
		t.Channels("line_v=70.7", `amplifier|rated_w|load_w
A|250|100
B|120|75`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|250|100
B|120|75`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Salón de talleres|35|10
|Tienda de recuerdos|10|5`)
		t.Left("", `16|spare|in boxes, not installed
17|total|sum of values`)
	}},

	{File: "es/sala/planta de luces gira.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Planta")
		p.Put("A1", `
Teatro Las Garzas. Planta de luces, elenco invitado
Vara|Artefacto|Cant.|W|W total|Dimmer|Canal|Zona
1|elipsoidal|6|750|4500|1 a 6|1|Frente
1|fresnel|4|1000|4000|7 a 10|2|Frente
2|par 64|8|1000|8000|11 a 18|3|Contra
2|par 64|2|500|1000|19|4|Contra
3|panorama|4|500|2000|20 a 23|5|Ciclorama
3|fresnel|2|650|1300|24|6|Calle izq.
Piso|fresnel|2|650|1300|25|7|Calle der.
Sala|dicroica|12|50|600|26|8|Platea
Total||40||22700|||
||
Corte con atenuador de sala en cabina, 220 V
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Teatro Las Garzas", "stage lanterns with watts, dimmers, channels and zones")
	}},
}
