package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Four more who write Spanish: a works supervisor, a museum caretaker, a draughtsman, a maintenance firm.
var tradesSpanish2 = []typed.Case{

	// Colombia: the works supervisor's certificate for a museum, rooms down and amplifier channels across.
	{File: "interventoría/acta 4 museo del telar.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Acta 4")
		p.Put("A1", `
Museo del Telar, contrato 118-2021
Acta 4. Parlantes instalados por canal, línea de 70 V
||
Espacio|A1 canal 1|A1 canal 2|A2 canal 1|A2 canal 2
Potencia del canal|120 W|120 W|60 W|60 W
Taquilla|2 x 3 W
Vestíbulo|4 x 6 W
Sala 1|6 x 6 W
Sala 2||6 x 6 W
Sala 3||6 x 6 W
Corredor|4 x 3 W|4 x 3 W
Auditorio|||6 x 5 W
Talleres|||4 x 3 W
Jardín interior||||2 x 15 W
Parqueadero||||1 x 15 W
Suma|78 W|84 W|42 W|45 W
||
Atenuadores: AT-1 de 50 W en el auditorio, AT-2 de 25 W en los talleres.
`)
		p.Bold("A1", "A4:E4", "A16:E16")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("118-2021", "Museo del Telar", "matrix of rooms and channels, count and tap in the cell, a row with ratings under the headings; controls in a sentence")
		t.Speakers("sheet=Acta 4; tap_v=70.7; line_v=70.7; amplifier=A1; channel=1", `rows|room|count|tap_w
6|Taquilla|2|3
7|Vestíbulo|4|6
8|Sala 1|6|6
11|Corredor|4|3`)
		t.Speakers("sheet=Acta 4; tap_v=70.7; line_v=70.7; amplifier=A1; channel=2", `rows|room|count|tap_w
9|Sala 2|6|6
10|Sala 3|6|6
11|Corredor|4|3`)
		t.Speakers("sheet=Acta 4; tap_v=70.7; line_v=70.7; amplifier=A2; channel=1", `rows|room|count|tap_w|control
12|Auditorio|6|5|AT-1
13|Talleres|4|3|AT-2`)
		t.Speakers("sheet=Acta 4; tap_v=70.7; line_v=70.7; amplifier=A2; channel=2", `rows|room|count|tap_w
14|Jardín interior|2|15
15|Parqueadero|1|15`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
A1|1|120|78
A1|2|120|84
A2|1|60|42
A2|2|60|45`)
		t.Amplifiers("", `amplifier|load_w
A1|162
A2|87`)
		t.Controls("", `control|rated_w|load_w
AT-1|50|30
AT-2|25|12`)
		t.Left("Acta 4", `5|other|ratings of the channels
16|total|sums`)
	}},

	// Spain: the caretaker of a museum writes down floor by floor what hangs where, for the firm that will look after it.
	{File: "conserjería/altavoces museo del corcho.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Hoja1")
		p.Put("A1", `
Altavoces del Museo del Corcho (para la empresa de mantenimiento)
El amplificador está en conserjería y tiene 3 salidas a 100 V, de 80 W cada una.
||
Sala|Altavoces|Vatios cada uno|Observaciones
Planta baja (salida 1)
Entrada|2|3|
Taquilla|1|1.5|tiene un regulador de 5 W en la mesa
Sala del alcornoque|6|6|
Planta primera (salida 2)
Sala de máquinas|6|6|regulador RG1, de 60 W
Sala de tapones|4|6|también con el RG1
Pasillo|3|3|
Biblioteca|2|3|desmontados en enero, guardados en el armario
Sótano (salida 3)
Almacén|2|10|
Taller|2|10|
Muelle de carga|1|15|es una bocina
`)
		p.Bold("A1", "A5", "A9", "A14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Museo del Corcho", "floors as titles that name the output of the one amplifier; controls and a dismantled pair in the remarks")
		t.Speakers("sheet=Hoja1; tap_v=100; line_v=100; zone=Planta baja; channel=1", `rows|room|count|tap_w|note
6|Entrada|2|3|floor as zone
7|Taquilla|1|1.5|unnamed
8|Sala del alcornoque|6|6|floor as zone`)
		t.Speakers("sheet=Hoja1; tap_v=100; line_v=100; zone=Planta primera; channel=2; note=floor as zone", `rows|room|count|tap_w|control
10|Sala de máquinas|6|6|RG1
11|Sala de tapones|4|6|RG1
12|Pasillo|3|3|`)
		t.Speakers("sheet=Hoja1; tap_v=100; line_v=100; zone=Sótano; channel=3; note=floor as zone", `rows|room|count|tap_w
15|Almacén|2|10
16|Taller|2|10
17|Muelle de carga|1|15`)
		t.Channels("line_v=100; rated_w=80", `amplifier|channel|load_w
|1|43.5
|2|69
|3|55`)
		t.Amplifiers("", `amplifier|load_w
|167.5`)
		t.Controls("", `control|zone|rated_w|load_w|note
|Planta baja|5|1.5|unnamed
RG1|Planta primera|60|60|`)
		t.Left("Hoja1", `13|removed|dismantled in January, kept in the cupboard`)
	}},

	// Peru: a draughtsman takes the loudspeakers and the cable lengths of a botanical garden off his own drawing.
	{File: "planos/IE-07 metrado parlantes.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Metrado")
		p.Put("A1", `
Jardín botánico de Cerro Pelado, plano IE-07
||
Ambiente|Zona|Cantidad|Tipo|Potencia c/u (W)|Parcial (W)
Invernadero de orquídeas|Z1|6|Adosado|10|60
Invernadero de cactus|Z1|4|Adosado|10|40
Palmeral|Z1|6|Columna|15|90
Boletería|Z2|1|Empotrado|3|3
Sala de interpretación|Z2|6|Empotrado|6|36
Corredor de ingreso|Z2|6|Empotrado|3|18
Vivero|Z3|3|Adosado|6|18
Taller de injertos|Z3|2|Adosado|3|6
Oficinas|Z3|4|Empotrado|1.5|6
|||||277
`)
		p.Bold("A1", "A3:F3")
		q := p.Sheet("Zonas")
		q.Put("A1", `
Zona|Amplificador|Potencia (W)|Línea (V)|Cable|Metrado (m)|Atenuador|Atenuador (W)
Z1|AMP-1|240|100|2 x 2,5 mm²|165|no lleva|
Z2|AMP-2|120|100|2 x 2,5 mm²|90|AT-01|100
Z3|AMP-3|60|100|2 x 1,5 mm²|48|AT-02|36
||
Los atenuadores van al inicio de la línea y regulan la zona completa.
`)
		q.Bold("A1:H1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Jardín botánico de Cerro Pelado", "plain; amplifier, cable and one attenuator for the whole zone on a second sheet, joined by zone")
		t.Speakers("sheet=Metrado; tap_v=100; line_v=100; zone=Z1; amplifier=AMP-1", `rows|room|count|tap_w
4|Invernadero de orquídeas|6|10
5|Invernadero de cactus|4|10
6|Palmeral|6|15`)
		t.Speakers("sheet=Metrado; tap_v=100; line_v=100; zone=Z2; amplifier=AMP-2; control=AT-01", `rows|room|count|tap_w
7|Boletería|1|3
8|Sala de interpretación|6|6
9|Corredor de ingreso|6|3`)
		t.Speakers("sheet=Metrado; tap_v=100; line_v=100; zone=Z3; amplifier=AMP-3; control=AT-02", `rows|room|count|tap_w
10|Vivero|3|6
11|Taller de injertos|2|3
12|Oficinas|4|1.5`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP-1|240|190
AMP-2|120|57
AMP-3|60|30`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP-1|240|190
AMP-2|120|57
AMP-3|60|30`)
		t.Controls("", `control|zone|rated_w|load_w
AT-01|Z2|100|57
AT-02|Z3|36|30`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Z1|165|2.5
Z2|90|2.5
Z3|48|1.5`)
		t.Left("Metrado", `13|total|sum`)
	}},

	// Costa Rica: a maintenance firm keeps one register for all its contracts; amplifiers and controls bear the same names in each.
	{File: "contratos/registro de parlantes.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Registro")
		p.Put("A1", `
Contrato|Cliente|Lugar|Parlantes|Montaje|Toma (W)|Línea|Ampli|Salida|W salida|Control de volumen
C-311|Escuela Los Guayacanes|Pabellón A, pasillo|6|cielo|5|70 V|A|1|120|
C-311|Escuela Los Guayacanes|Pabellón B, pasillo|6|cielo|5|70 V|A|1|120|
C-311|Escuela Los Guayacanes|Dirección|2|cielo|2.5|70 V|A|1|120|VOL1 (10 W)
C-311|Escuela Los Guayacanes|Gimnasio|4|corneta|15|70 V|A|2|120|
C-314|Piscina Río Manso|Piscina|4|corneta|15|100 V|A|1|120|
C-314|Piscina Río Manso|Graderías|6|pared|6|100 V|A|1|120|VOL1 (60 W)
C-314|Piscina Río Manso|Camerinos|4|cielo|3|100 V|A|2|60|
C-314|Piscina Río Manso|Recepción|2|cielo|3|100 V|A|2|60|VOL2 (10 W)
C-320|Museo de la Carreta|Sala principal|8|cielo|5|70 V|B|1|60|
C-320|Museo de la Carreta|Sala de video|4|cielo|2.5|70 V|B|1|60|VOL1 (20 W)
C-320|Museo de la Carreta|Bodega|1|cielo|1.25|70 V|B|1|60|
`)
		p.Bold("A1:K1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("C-311", "Escuela Los Guayacanes", "plain register of three contracts; amplifier A and control VOL1 recur in other contracts, line voltages differ")
		t.Speakers("sheet=Registro; tap_v=70.7; line_v=70.7; amplifier=A", `rows|room|count|tap_w|channel|control
2|Pabellón A, pasillo|6|5|1|
3|Pabellón B, pasillo|6|5|1|
4|Dirección|2|2.5|1|VOL1
5|Gimnasio|4|15|2|`)
		t.Channels("line_v=70.7; amplifier=A; rated_w=120", `channel|load_w
1|65
2|60`)
		t.Amplifiers("", `amplifier|load_w
A|125`)
		t.Controls("", `control|rated_w|load_w
VOL1|10|5`)
		t.Also("C-314", "Piscina Río Manso", "second contract of the register")
		t.Speakers("sheet=Registro; tap_v=100; line_v=100; amplifier=A", `rows|room|count|tap_w|channel|control
6|Piscina|4|15|1|
7|Graderías|6|6|1|VOL1
8|Camerinos|4|3|2|
9|Recepción|2|3|2|VOL2`)
		t.Channels("line_v=100; amplifier=A", `channel|rated_w|load_w
1|120|96
2|60|18`)
		t.Amplifiers("", `amplifier|load_w
A|114`)
		t.Controls("", `control|rated_w|load_w
VOL1|60|36
VOL2|10|6`)
		t.Also("C-320", "Museo de la Carreta", "third contract of the register")
		t.Speakers("sheet=Registro; tap_v=70.7; line_v=70.7; amplifier=B; channel=1", `rows|room|count|tap_w|control
10|Sala principal|8|5|
11|Sala de video|4|2.5|VOL1
12|Bodega|1|1.25|`)
		t.Channels("line_v=70.7; amplifier=B", `channel|rated_w|load_w
1|60|51.25`)
		t.Amplifiers("", `amplifier|load_w
B|51.25`)
		t.Controls("", `control|rated_w|load_w
VOL1|20|10`)
	}},
}
