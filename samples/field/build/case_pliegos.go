package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

var pliegos = []typed.Case{
	// A one-man installer in Spain: the list he leaves in the rack door when the job is done.
	{File: "fin de obra/jardin Rovaldea.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Hoja1")
		p.Put("A1", `
JARDÍN BOTÁNICO DE ROVALDEA. MEGAFONÍA
Fin de obra 18/023
||
Nº|Zona|Tipo de altavoz|Cant.|Toma|Línea|Atenuador
1|Taquillas|techo 6"|2|3 W|L1|At. 1
2|Tienda|techo 6"|4|3 W|L1|At. 2
3|Aseos|techo 6"|3|1,5 W|L1|
4|Umbráculo|columna|4|10 W|L2|
5|Invernadero cálido|proyector|6|10 W|L2|At. 3
6|Invernadero frío|proyector|4|10 W|L2|At. 3
7|Rosaleda|seta|8|15 W|L3|
8|Estanque|seta|5|15 W|L3|
9|Sendero alto|bocina|3|20 W|L4|
10|Aparcamiento|bocina|2|20 W|L4|
||
Amplificador de 4 x 240 W a 100 V, una salida por línea (L1 a L4)
At. 1 y At. 2 son de 20 W, At. 3 es de 100 W
`)
		p.Bold("A1", "A4:G4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("18/023", "Jardín Botánico de Rovaldea", "plain; one amplifier without a name, ratings in two lines below the list")
		t.Speakers("sheet=Hoja1; tap_v=100; line_v=100", `rows|zone|count|tap_w|channel|control
5|Taquillas|2|3|L1|At. 1
6|Tienda|4|3|L1|At. 2
7|Aseos|3|1.5|L1|
8|Umbráculo|4|10|L2|
9|Invernadero cálido|6|10|L2|At. 3
10|Invernadero frío|4|10|L2|At. 3
11|Rosaleda|8|15|L3|
12|Estanque|5|15|L3|
13|Sendero alto|3|20|L4|
14|Aparcamiento|2|20|L4|`)
		t.Channels("line_v=100; rated_w=240", `channel|load_w
L1|22.5
L2|140
L3|195
L4|100`)
		t.Amplifiers("", `amplifier|load_w
|457.5`)
		t.Controls("", `control|zone|rated_w|load_w
At. 1|Taquillas|20|6
At. 2|Tienda|20|12
At. 3||100|100`)
	}},

	// The head of maintenance of a Mexican museum: his own list, a line a loudspeaker, saved as CSV for the people who take over.
	{File: "mantto/bocinas museo del agua.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Clave,Zona,Sala,Montaje,Tap a 70 V (W),Amplificador,Canal,Control,Control W
BOC-01,Acceso,Vestíbulo,plafón,4,AMP-1,1,,
BOC-02,Acceso,Vestíbulo,plafón,4,AMP-1,1,,
BOC-03,Acceso,Vestíbulo,plafón,4,AMP-1,1,,
BOC-04,Acceso,Vestíbulo,plafón,4,AMP-1,1,,
BOC-05,Acceso,Taquilla,plafón,2,AMP-1,1,CV-1,10
BOC-06,Acceso,Guardarropa,plafón,2,AMP-1,1,,
BOC-07,Salas permanentes,Sala 1 El Pozo,muro,8,AMP-1,2,CV-2,50
BOC-08,Salas permanentes,Sala 1 El Pozo,muro,8,AMP-1,2,CV-2,50
BOC-09,Salas permanentes,Sala 1 El Pozo,muro,8,AMP-1,2,CV-2,50
BOC-10,Salas permanentes,Sala 2 La Noria,muro,8,AMP-1,2,CV-3,50
BOC-11,Salas permanentes,Sala 2 La Noria,muro,8,AMP-1,2,CV-3,50
BOC-12,Salas permanentes,Sala 2 La Noria,muro,8,AMP-1,2,CV-3,50
BOC-13,Salas permanentes,Sala 3 El Acueducto,muro,8,AMP-1,2,CV-4,50
BOC-14,Salas permanentes,Sala 3 El Acueducto,muro,8,AMP-1,2,CV-4,50
BOC-15,Jardín,Fuente norte,corneta,15,AMP-2,1,,
BOC-16,Jardín,Fuente sur,corneta,15,AMP-2,1,,
BOC-17,Jardín,Explanada,corneta,15,AMP-2,1,,
BOC-18,Talleres,Taller infantil,plafón,4,AMP-2,2,CV-5,25
BOC-19,Talleres,Taller infantil,plafón,4,AMP-2,2,CV-5,25
BOC-20,Talleres,Bodega,plafón,1,AMP-2,2,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "plain; a line a loudspeaker, the control and its watts on every line, no amplifier rating")
		t.Speakers("tap_v=70.7; line_v=70.7; zone=Acceso; amplifier=AMP-1; channel=1", `rows|tag|room|tap_w|control
2..5|BOC-01..|Vestíbulo|4|
6|BOC-05|Taquilla|2|CV-1
7|BOC-06|Guardarropa|2|`)
		t.Speakers("tap_v=70.7; line_v=70.7; zone=Salas permanentes; amplifier=AMP-1; channel=2; tap_w=8", `rows|tag|room|control
8..10|BOC-07..|Sala 1 El Pozo|CV-2
11..13|BOC-10..|Sala 2 La Noria|CV-3
14..15|BOC-13..|Sala 3 El Acueducto|CV-4`)
		t.Speakers("tap_v=70.7; line_v=70.7; zone=Jardín; amplifier=AMP-2; channel=1; tap_w=15", `rows|tag|room
16|BOC-15|Fuente norte
17|BOC-16|Fuente sur
18|BOC-17|Explanada`)
		t.Speakers("tap_v=70.7; line_v=70.7; zone=Talleres; amplifier=AMP-2; channel=2", `rows|tag|room|tap_w|control
19..20|BOC-18..|Taller infantil|4|CV-5
21|BOC-20|Bodega|1|`)
		t.Channels("line_v=70.7", `amplifier|channel|load_w
AMP-1|1|20
AMP-1|2|64
AMP-2|1|45
AMP-2|2|9`)
		t.Amplifiers("", `amplifier|load_w
AMP-1|84
AMP-2|54`)
		t.Controls("", `control|zone|rated_w|load_w
CV-1|Acceso|10|2
CV-2|Salas permanentes|50|24
CV-3|Salas permanentes|50|24
CV-4|Salas permanentes|50|16
CV-5|Talleres|25|8`)
	}},

	// A technician of an Argentine maintenance firm, who walked a station with a clipboard and typed it up in the evening.
	{File: "relevamientos/Cañada Larga.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Relevamiento")
		p.Put("A1", `
Relevamiento de sonido - Estación Cañada Larga
OT 5518
Hay un solo amplificador, de 250 W, línea de 100 V
||
Lugar|Parlantes|Pot. c/u|Obs.
ANDÉN 1
Cabecera norte|3 bocinas|10 W|una oxidada, anda
Cabecera sur|3 bocinas|'"|
Refugio|2 columnas|5 W|
ANDÉN 2
Cabecera norte|3 bocinas|10 W|
Cabecera sur|2 bocinas|'"|son 2 nomás
Refugio|2 columnas|5 W|
EDIFICIO
Hall|6 de techo|3 W|
Boletería|1 de techo|1,5 W|con atenuador de 5 W al lado de la puerta
Sala de espera|4 de techo|3 W|con atenuador de 20 W
Oficina del jefe|1 de techo|1,5 W|con atenuador de 5 W
Baños|4 de techo|1,5 W|sin atenuador
Depósito|1 bocina|10 W|desconectada del todo, cables aislados
`)
		p.Bold("A1", "A5:D5", "A6", "A10", "A14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5518", "Estación Cañada Larga", "areas as titles between rows, counts in words, ditto marks for watts, controls without names in remarks, one horn disconnected")
		t.Speakers("sheet=Relevamiento; tap_v=100; line_v=100; zone=ANDÉN 1; note=title as zone", `rows|room|count|tap_w
7|Cabecera norte|3|10
8|Cabecera sur|3|10
9|Refugio|2|5`)
		t.Speakers("sheet=Relevamiento; tap_v=100; line_v=100; zone=ANDÉN 2; note=title as zone", `rows|room|count|tap_w
11|Cabecera norte|3|10
12|Cabecera sur|2|10
13|Refugio|2|5`)
		t.Speakers("sheet=Relevamiento; tap_v=100; line_v=100; zone=EDIFICIO", `rows|room|count|tap_w|note
15|Hall|6|3|title as zone
16|Boletería|1|1.5|unnamed
17|Sala de espera|4|3|unnamed
18|Oficina del jefe|1|1.5|unnamed
19|Baños|4|1.5|title as zone`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|250|169`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|250|169`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Boletería|5|1.5
|Sala de espera|20|12
|Oficina del jefe|5|1.5`)
		t.Left("Relevamiento", `20|removed|disconnected, its cables insulated`)
	}},

	// An estimator of a Chilean electrical contractor: the bill of quantities of a bid for a pool.
	{File: "propuestas/PISCINA QUEBRADA HONDA audio.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Itemizado")
		p.Put("A1", `
PROPUESTA N° 3341 - PISCINA TEMPERADA QUEBRADA HONDA
ESPECIALIDAD: AUDIO
||
ÍTEM|DESCRIPCIÓN|UN.|CANT.|P. UNIT. $|TOTAL $
1|HALL DE ACCESO
1.1|Parlante de cielo, tap 3W en 100V|un|6|28900|173400
1.2|Control de volumen de 30W para los parlantes del hall|un|1|24500|24500
1.3|Cable 2x1,5mm2|m|45|950|42750
2|PISCINA
2.1|Parlante bocina IP66, tap 15W en 100V|un|8|64900|519200
2.2|Cable 2x2,5mm2|m|140|1450|203000
3|CAMARINES
3.1|Parlante de cielo, tap 1,5W en 100V|un|8|28900|231200
3.2|Cable 2x1,5mm2|m|60|950|57000
4|OFICINAS
4.1|Parlante de cielo, tap 1,5W en 100V|un|4|28900|115600
4.2|Control de volumen de 12W para los parlantes de oficinas|un|1|21900|21900
4.3|Cable 2x1,5mm2|m|30|950|28500
5|SALA TÉCNICA
5.1|Amplificador de 240W, una salida 100V|un|1|389000|389000
||
|COSTO DIRECTO||||1806050
`)
		p.Format("#,##0", "E6:F22")
		p.Bold("A1", "A4:F4", "A5:B5", "A9:B9", "A12:B12", "A15:B15", "A19:B19", "B22")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("3341", "Piscina Temperada Quebrada Honda", "plain bill of quantities: taps, control ratings and the amplifier in the descriptions, areas as numbered chapters")
		t.Speakers("sheet=Itemizado; tap_v=100; line_v=100", `rows|zone|count|tap_w|note
6|HALL DE ACCESO|6|3|unnamed
10|PISCINA|8|15|title as zone
13|CAMARINES|8|1.5|title as zone
16|OFICINAS|4|1.5|unnamed`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|156`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|156`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|HALL DE ACCESO|30|18
|OFICINAS|12|6`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
HALL DE ACCESO|45|1.5
PISCINA|140|2.5
CAMARINES|60|1.5
OFICINAS|30|1.5`)
		t.Left("Itemizado", `22|total|direct cost`)
	}},

	// A draughtswoman in Spain: the lists that go with her drawings of a bus depot, one sheet a kind of thing.
	{File: "planos/Cocheras Montalbar - listados.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Altavoces")
		p.Put("A1", `
Ref.|Dependencia|Uds.|Toma W|Circuito|Atenuador
ALT-01|Nave de lavado|4|20|C1|
ALT-02|Nave de reparación|6|20|C1|
ALT-03|Almacén de recambios|3|10|C2|AT-01
ALT-04|Oficina de tráfico|4|3|C3|AT-02
ALT-05|Sala de conductores|6|3|C3|AT-03
ALT-06|Vestuario hombres|2|1.5|C3|
ALT-07|Vestuario mujeres|2|1.5|C3|
ALT-08|Control de accesos|1|3|C3|AT-04
ALT-09|Playa norte|5|30|C4|
ALT-10|Playa sur|5|30|C4|
`)
		p.Bold("A1:F1")
		q := p.Sheet("Amplificación")
		q.Put("A1", `
Circuito|Equipo|Salida|W a 100 V
C1|AM1|A|250
C2|AM1|B|250
C3|AM2|A|60
C4|AM3|A|480
`)
		q.Bold("A1:D1")
		r := p.Sheet("Atenuadores")
		r.Put("A1", `
Ref.|W|Dependencia
AT-01|60|Almacén de recambios
AT-02|20|Oficina de tráfico
AT-03|20|Sala de conductores
AT-04|5|Control de accesos
`)
		r.Bold("A1:C1")
		s := p.Sheet("Cables")
		s.Put("A1", `
Cable|Origen|Destino|Tipo|Longitud (m)
W01|AM1 A|ALT-01|2x4 mm²|62
W02|ALT-01|ALT-02|2x4 mm²|38
W03|AM1 B|AT-01|2x2,5 mm²|41
W04|AT-01|ALT-03|2x2,5 mm²|12
W05|AM2 A|AT-02|2x1,5 mm²|20
W06|AT-02|ALT-04|2x1,5 mm²|9
W07|AM2 A|AT-03|2x1,5 mm²|26
W08|AT-03|ALT-05|2x1,5 mm²|14
W09|AM2 A|ALT-06|2x1,5 mm²|33
W10|ALT-06|ALT-07|2x1,5 mm²|8
W11|AM2 A|AT-04|2x1,5 mm²|47
W12|AT-04|ALT-08|2x1,5 mm²|4
W13|AM3 A|ALT-09|2x4 mm²|95
W14|ALT-09|ALT-10|2x4 mm²|80
`)
		s.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "plain; loudspeakers, outputs, controls and cables on four sheets joined by circuit and tag")
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100", `rows|tag|room|count|tap_w|amplifier|channel|control
2|ALT-01|Nave de lavado|4|20|AM1|A|
3|ALT-02|Nave de reparación|6|20|AM1|A|
4|ALT-03|Almacén de recambios|3|10|AM1|B|AT-01
5|ALT-04|Oficina de tráfico|4|3|AM2|A|AT-02
6|ALT-05|Sala de conductores|6|3|AM2|A|AT-03
7|ALT-06|Vestuario hombres|2|1.5|AM2|A|
8|ALT-07|Vestuario mujeres|2|1.5|AM2|A|
9|ALT-08|Control de accesos|1|3|AM2|A|AT-04
10|ALT-09|Playa norte|5|30|AM3|A|
11|ALT-10|Playa sur|5|30|AM3|A|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AM1|A|250|200
AM1|B|250|30
AM2|A|60|39
AM3|A|480|300`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AM1||230
AM2|60|39
AM3|480|300`)
		t.Controls("", `control|zone|rated_w|load_w
AT-01|Almacén de recambios|60|30
AT-02|Oficina de tráfico|20|12
AT-03|Sala de conductores|20|18
AT-04|Control de accesos|5|3`)
		t.Lines("", `line|from|to|length_m|area_mm2
W01|AM1 A|ALT-01|62|4
W02|ALT-01|ALT-02|38|4
W03|AM1 B|AT-01|41|2.5
W04|AT-01|ALT-03|12|2.5
W05|AM2 A|AT-02|20|1.5
W06|AT-02|ALT-04|9|1.5
W07|AM2 A|AT-03|26|1.5
W08|AT-03|ALT-05|14|1.5
W09|AM2 A|ALT-06|33|1.5
W10|ALT-06|ALT-07|8|1.5
W11|AM2 A|AT-04|47|1.5
W12|AT-04|ALT-08|4|1.5
W13|AM3 A|ALT-09|95|4
W14|ALT-09|ALT-10|80|4`)
	}},

	// A Colombian contractor's project engineer: the annex of a change order, contract quantities beside the new ones.
	{File: "contratos/114-2019 otrosí 2 anexo.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Anexo")
		p.Put("A1", `
BIBLIOTECA PÚBLICA DE ALTOVALLE - SONIDO
Contrato 114-2019, otrosí No. 2
Línea de 70 V. Las celdas vacías del otrosí quedan como en el contrato.
||
Ítem|Espacio|Según contrato||Según otrosí No. 2||Control|Motivo
||Cant.|W|Cant.|W||
1|Sala de lectura|12|5|10|5|C-1 (100 W)|se corre la estantería
2|Hemeroteca|6|5|||C-2 (50 W)|
3|Sala infantil|6|2.5||5|C-3 (50 W)|piden más nivel
4|Auditorio|8|10|||C-4 (100 W)|
5|Fonoteca|2|2.5|0|||se elimina el espacio
6|Pasillos|10|2.5|12|||
7|Depósito de libros|4|2.5|0|||pasa al archivo externo
8|Restauración|||2|5||espacio nuevo
9|Oficinas|6|2.5|||C-5 (25 W)|
10|Plazoleta|4|10|4|15||cornetas más grandes
|Total altavoces|58||54|||
||
Amplificador de 500 W, una sola salida, no cambia
`)
		p.Merge("A5:A6", "B5:B6", "C5:D5", "E5:F5", "G5:G6", "H5:H6")
		p.Bold("A1", "A5:H6", "B17:F17")
		p.Strike("A11:H11", "A13:H13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("114-2019", "Biblioteca Pública de Altovalle", "change order: old and new counts and taps side by side, an empty new cell keeps the old value, nought takes the room out")
		t.Speakers("sheet=Anexo; tap_v=70.7; line_v=70.7", `rows|room|count|tap_w|control
7|Sala de lectura|10|5|C-1
8|Hemeroteca|6|5|C-2
9|Sala infantil|6|5|C-3
10|Auditorio|8|10|C-4
12|Pasillos|12|2.5|
14|Restauración|2|5|
15|Oficinas|6|2.5|C-5
16|Plazoleta|4|15|`)
		t.Channels("line_v=70.7", `amplifier|rated_w|load_w
|500|305`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|500|305`)
		t.Controls("", `control|zone|rated_w|load_w
C-1|Sala de lectura|100|50
C-2|Hemeroteca|50|30
C-3|Sala infantil|50|30
C-4|Auditorio|100|80
C-5|Oficinas|25|15`)
		t.Left("Anexo", `11|removed|taken out by the change order
13|removed|taken out by the change order
17|total|pieces`)
	}},

	// The technical head of a municipal theatre in Uruguay: a sheet laid across so that it fits on the door of the rack.
	{File: "teatro/avisos de escena.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Puerta del rack")
		p.Put("A1", `
Teatro Municipal Larroba, llamado a escena
Todo en 100 V
||
Zona|Vestíbulo|Pasillo platea|Pasillo tertulia|Escalera|Camerinos|Taller|Foso|Oficina
Parlantes|4|3|3|2|8|2|1|1
Potencia de cada uno (W)|3|3|3|3|1.5|6|6|1.5
Potencia total (W)|12|9|9|6|12|12|6|1.5
Etapa|E1|E1|E1|E1|E2|E2|E2|E2
Regulador|R1||||R2|R3||R4
Regulador (W)|20||||20|20||5
Cable desde la etapa (m)|25|40|60|30|70|35|20|45
Sección (mm²)|1.5|1.5|1.5|1.5|2.5|1.5|1.5|1.5
||
E1 es la etapa de 120 W, E2 la de 60 W
`)
		p.Bold("A1", "A4:I4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Teatro Municipal Larroba", "table across, a column a zone")
		t.Speakers("sheet=Puerta del rack; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|control
B|Vestíbulo|4|3|E1|R1
C|Pasillo platea|3|3|E1|
D|Pasillo tertulia|3|3|E1|
E|Escalera|2|3|E1|
F|Camerinos|8|1.5|E2|R2
G|Taller|2|6|E2|R3
H|Foso|1|6|E2|
I|Oficina|1|1.5|E2|R4`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
E1|120|36
E2|60|31.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
E1|120|36
E2|60|31.5`)
		t.Controls("", `control|zone|rated_w|load_w
R1|Vestíbulo|20|12
R2|Camerinos|20|12
R3|Taller|20|12
R4|Oficina|5|1.5`)
		t.Lines("note=home run", `zone|from|length_m|area_mm2
Vestíbulo|E1|25|1.5
Pasillo platea|E1|40|1.5
Pasillo tertulia|E1|60|1.5
Escalera|E1|30|1.5
Camerinos|E2|70|2.5
Taller|E2|35|1.5
Foso|E2|20|1.5
Oficina|E2|45|1.5`)
	}},
}
