package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// tonguesSpanish are four contractors: Mexican, Argentine, Colombian, Spanish.
var tonguesSpanish = []typed.Case{
	{File: "tongues/presupuestos/P-2208 Museo de la Sal.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("P-2208")
		p.Put("A1", `
Presupuesto P-2208|||Museo de la Sal, Cuatro Palmas
Voceo y música ambiental, línea de 70 V. Precios en M.N.

Partida|Área|Concepto|Cant.|Tap|Circuito|P.U.|Importe
1|Vestíbulo|bocina de plafón 8"|6 pzas.|4 W|C1|$1,250.00|$7,500.00
2|Sala permanente|bocina de plafón 8"|10 pzas.|4 W|C1|$1,250.00|$12,500.00
3|Sala temporal|bocina de plafón 8"|4 pzas.|4 W|C1|$1,250.00|$5,000.00
4|Taller infantil|bocina de pared|3 pzas.|2.5 W|C2|$980.00|$2,940.00
5|Taquilla|bocina de pared|1 pza.|1.25 W|C2|$980.00|$980.00
6|Patio de salinas|trompeta|3 pzas.|15 W|C3|$1,640.00|$4,920.00
7|Estacionamiento|trompeta|2 pzas.|15 W|C3|$1,640.00|$3,280.00
8|Sala temporal|control de volumen AT-1, 35 W|1 pza.|||$690.00|$690.00
9|Taller infantil|control de volumen AT-2, 10 W|1 pza.|||$690.00|$690.00
10|Rack|amplificador A-1, 120 W|1 pza.||C1|$9,800.00|$9,800.00
11|Rack|amplificador A-2, 60 W|1 pza.||C2|$7,200.00|$7,200.00
12|Rack|amplificador A-3, 120 W|1 pza.||C3|$9,800.00|$9,800.00
13|Charola y tubería|cable 2 x 16 AWG|85 m||C1|$28.00|$2,380.00
14|Charola y tubería|cable 2 x 16 AWG|60 m||C2|$28.00|$1,680.00
15|Tubería|cable 2 x 14 AWG|140 m||C3|$38.00|$5,320.00
||||||Subtotal|$74,680.00
||||||IVA 16 %|$11,948.80
||||||Total|$86,628.80

No incluye obra civil ni andamios. Vigencia 15 días.
`)
		p.Bold("A1", "A4:H4", "G20:H22")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("P-2208", "Museo de la Sal, Cuatro Palmas", "a quotation: loudspeakers, controls, amplifiers and cable as items of one list, controls by their area, prices and taxes; bocina is any loudspeaker")
		t.Speakers("sheet=P-2208; tap_v=70.7; line_v=70.7; amplifier=A-1", `rows|room|count|tap_w|control
5|Vestíbulo|6|4|
6|Sala permanente|10|4|
7|Sala temporal|4|4|AT-1`)
		t.Speakers("sheet=P-2208; tap_v=70.7; line_v=70.7; amplifier=A-2", `rows|room|count|tap_w|control
8|Taller infantil|3|2.5|AT-2
9|Taquilla|1|1.25|`)
		t.Speakers("sheet=P-2208; tap_v=70.7; line_v=70.7; amplifier=A-3", `rows|room|count|tap_w
10|Patio de salinas|3|15
11|Estacionamiento|2|15`)
		t.Channels("line_v=70.7", `amplifier|rated_w|load_w
A-1|120|80
A-2|60|8.75
A-3|120|75`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A-1|120|80
A-2|60|8.75
A-3|120|75`)
		t.Controls("", `control|rated_w|load_w
AT-1|35|16
AT-2|10|7.5`)
		t.Lines("note=one length a circuit", `line|length_m|area_mm2
C1|85|1.31
C2|60|1.31
C3|140|2.08`)
		t.Left("P-2208", `20|total|prices
21|total|tax
22|total|prices`)
	}},

	{File: "tongues/relevamientos/OT3391_estacion.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Latin1(typed.DOS(`
OT 3391 - Estación Ceibal Chico - audio;;;;;
Relevado 04/11/15, cuadrilla 2. Todo en 100 V;;;;;
;;;;;
Sector;Parlantes;Pot. c/u;Línea;Llave vol.;Obs.
Andén 1;8 bocinas;7,5 W;L1;;andan todas
Andén 2;8 bocinas;7,5 W;L1;;2 medio roncas
Hall;5 bafles;5 W;L2;LV1;
Boletería;1 bafle;2,5 W;L2;LV2;
Sala de espera;3 bafles;5 W;L2;LV3;
Baños;2 empotrados;2,5 W;L2;;
Oficina del jefe;1 bafle;2,5 W;L2;LV4;
Paso bajo nivel;4 bocinas;7,5 W;L3;;
Playa de maniobras;2 bocinas;s/d;L3;;caja soldada, no se pudo abrir
Kiosco viejo;1 bafle;5 W;L2;;lo sacaron junto con el kiosco
;;;;;
Línea;Amplif.;Potencia;Cable;Mts.;
L1;nº 1;240 W;2 x 2,5 mm2;310;
L2;nº 2;120 W;2 x 1,5 mm2;95;
L3;nº 3;120 W;2 x 2,5 mm2;180;
;;;;;
LV1 y LV3 son de 30 W, LV2 y LV4 de 6 W;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("3391", "Estación Ceibal Chico", "count and kind in one cell; lines to amplifiers in a second table; volume switches rated in a sentence; s/d is not known; one taken out with its kiosk")
		t.Speakers("tap_v=100; line_v=100; amplifier=nº 1", `rows|room|count|tap_w
5|Andén 1|8|7.5
6|Andén 2|8|7.5`)
		t.Speakers("tap_v=100; line_v=100; amplifier=nº 2", `rows|room|count|tap_w|control
7|Hall|5|5|LV1
8|Boletería|1|2.5|LV2
9|Sala de espera|3|5|LV3
10|Baños|2|2.5|
11|Oficina del jefe|1|2.5|LV4`)
		t.Speakers("tap_v=100; line_v=100; amplifier=nº 3", `rows|room|count|tap_w
12|Paso bajo nivel|4|7.5
13|Playa de maniobras|2|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w|load_min_w
nº 1|240|120|
nº 2|120|50|
nº 3|120||30`)
		t.Amplifiers("", `amplifier|rated_w|load_w
nº 1|240|120
nº 2|120|50
nº 3|120|`)
		t.Controls("", `control|rated_w|load_w
LV1|30|25
LV2|6|2.5
LV3|30|15
LV4|6|2.5`)
		t.Lines("note=one length a line", `line|length_m|area_mm2
L1|310|2.5
L2|95|1.5
L3|180|2.5`)
		t.Left("", `14|removed|taken out with the kiosk`)
		t.Asks("", `13|asked|tap in the shunting yard`)
	}},

	{File: "tongues/actas/Acta parcial 2 contrato 045.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Acta 2")
		p.Put("A1", `
ACTA DE RECIBO PARCIAL No. 2 - CONTRATO 045 DE 2020
Biblioteca municipal de Valle Alisal. Sistema de perifoneo, línea de 70 V

Ítem|Descripción|Espacio|Und|Cant. contratada|Cant. instalada|Tap (W)|Línea|Observación
'1.1|Parlante de techo|Piso 1, sala infantil|Und|6|6|2|L1|
'1.2|Parlante de techo|Piso 1, hemeroteca|Und|8|7|2|L1|se eliminó uno por viga
'1.3|Parlante de techo|Piso 1, recepción|Und|3|3|1|L1|
'1.4|Parlante de techo|Piso 2, sala general|Und|10|12|2|L2|dos de más, orden de interventoría
'1.5|Parlante de techo|Piso 2, sala de sistemas|Und|4|4|1|L2|
'1.6|Cabina de pared|Piso 3, auditorio|Und|6|6|8|L3|
'1.7|Cabina de pared|Piso 3, camerino|Und|2|0|4|L3|no se ejecuta
'1.8|Corneta|Terraza|Und|2|2|15|L4|
'2.1|Potenciómetro 35 W|Piso 1, sala infantil|Und|1|1||L1|
'2.2|Potenciómetro 50 W|Piso 3, auditorio|Und|1|1||L3|
'3.1|Amplificador A1, 2 canales de 120 W|Cuarto técnico|Und|1|1|||canal 1 a L1, canal 2 a L2
'3.2|Amplificador A2, 2 canales de 120 W|Cuarto técnico|Und|1|1|||canal 1 a L3, canal 2 a L4

Para constancia se firma a los 9 días del mes de diciembre de 2020
`)
		p.Bold("A1", "A4:I4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("045", "Biblioteca municipal de Valle Alisal", "an acceptance record: contracted beside installed quantities, one item not carried out; unnamed controls by their room; channel to line in the amplifiers' remarks")
		t.Speakers("sheet=Acta 2; tap_v=70.7; line_v=70.7; amplifier=A1; channel=1", `rows|room|count|tap_w|note
5|Piso 1, sala infantil|6|2|unnamed
6|Piso 1, hemeroteca|7|2|
7|Piso 1, recepción|3|1|`)
		t.Speakers("sheet=Acta 2; tap_v=70.7; line_v=70.7; amplifier=A1; channel=2", `rows|room|count|tap_w
8|Piso 2, sala general|12|2
9|Piso 2, sala de sistemas|4|1`)
		t.Speakers("sheet=Acta 2; tap_v=70.7; line_v=70.7; amplifier=A2; channel=1", `rows|room|count|tap_w|note
10|Piso 3, auditorio|6|8|unnamed`)
		t.Speakers("sheet=Acta 2; tap_v=70.7; line_v=70.7; amplifier=A2; channel=2", `rows|room|count|tap_w
12|Terraza|2|15`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
A1|1|120|29
A1|2|120|28
A2|1|120|48
A2|2|120|30`)
		t.Amplifiers("", `amplifier|load_w
A1|57
A2|78`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Piso 1, sala infantil|35|12
|Piso 3, auditorio|50|48`)
		t.Left("Acta 2", `11|removed|not carried out, none installed`)
	}},

	{File: "tongues/megafonia/24-017 relacion altavoces.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Relación")
		p.Put("A1", `
Obra 24/017 - Piscina municipal de Robledal Alto
Megafonía 100 V. Relación de altavoces s/plano IE-07

Ref.|Dependencia|Tipo|Toma|Línea|Regul.|Estado
ALT-01|Vaso grande|proyector|10 W|M1||ok
ALT-02|"|"|"|"||ok
ALT-03|"|"|"|"||ok
ALT-04|"|"|"|"||ok
ALT-05|Vaso infantil|proyector|5 W|M1||ok
ALT-06|"|"|"|"||ok
ALT-07|Vestuario fem.|techo|3 W|M2|RV-1|ok
ALT-08|Vestuario masc.|techo|3 W|M2|RV-2|ok
ALT-09|Pasillo pies descalzos|techo|1,5 W|M2||ok
ALT-10|"|"|"|"||ok
ALT-11|Gimnasio|caja|6 W|M3|RV-3|ok
ALT-12|"|"|"|"|"|ok
ALT-13|Sala monitores|techo|3 W|M3||pte. de montar
ALT-14|Ludoteca|techo|3 W|M3||anulado s/DF
ALT-15|Grada|caja|6 W|M3||ok

M1: etapa E1 salida 1, 120 W
M2: etapa E1 salida 2, 120 W
M3: etapa E2 (una sola salida), 60 W
RV-1 y RV-2 de 12 W, RV-3 de 24 W
`)
		p.Bold("A1", "A4:G4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("24/017", "Piscina municipal de Robledal Alto", "a row a loudspeaker with ditto marks, also for the control; lines to outputs in sentences below; one still to be fitted, one cancelled")
		t.Speakers("sheet=Relación; tap_v=100; line_v=100; amplifier=E1; channel=1", `rows|tag|room|tap_w
5..8|ALT-01..|Vaso grande|10
9..10|ALT-05..|Vaso infantil|5`)
		t.Speakers("sheet=Relación; tap_v=100; line_v=100; amplifier=E1; channel=2", `rows|tag|room|tap_w|control
11|ALT-07|Vestuario fem.|3|RV-1
12|ALT-08|Vestuario masc.|3|RV-2
13..14|ALT-09..|Pasillo pies descalzos|1.5|`)
		t.Speakers("sheet=Relación; tap_v=100; line_v=100; amplifier=E2", `rows|tag|room|tap_w|control
15..16|ALT-11..|Gimnasio|6|RV-3
19|ALT-15|Grada|6|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
E1|1|120|50
E1|2|120|9
E2||60|18`)
		t.Amplifiers("", `amplifier|rated_w|load_w
E1||59
E2|60|18`)
		t.Controls("", `control|rated_w|load_w
RV-1|12|3
RV-2|12|3
RV-3|24|12`)
		t.Left("Relación", `17|future|to be fitted
18|removed|cancelled`)
	}},
}
