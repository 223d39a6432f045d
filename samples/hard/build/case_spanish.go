package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// spanish are the schedules of a Spanish-speaking foundation.
func spanish() []typed.Case {
	return []typed.Case{
		{File: "es/Invernadero presupuesto.xlsx", Kind: "schedule", Book: invernadero, Truth: invernaderoTruth},
		{File: "es/Planetario sectores.csv", Kind: "schedule", Bytes: planetario, Truth: planetarioTruth},
		{File: "es/Pista de hielo cuadro.xls", Kind: "schedule", Book: pista, Saved: "xls", Truth: pistaTruth},
	}
}

// A priced bill with sentences, full stops for thousands and commas for decimals.
func invernadero() *excelize.File {
	p := typed.NewBook("Cap 9")
	p.Put("A1", `
PATRONATO VALDORRIO - INVERNADEROS|||||Obra PV-118
CAPÍTULO 9. MEGAFONÍA

Partida|Resumen|Ud|Medición|Precio|Importe
'9.1|Difusor de techo 6 W, línea de 100 V, puesto a 3 W, en galería de orquídeas, salida 1 de la etapa MG|u|'22,00|'38,50|'847,00
'9.2|Ídem puesto a 1,5 W, en pasillos, salida 1|u|'14,00|'38,50|'539,00
'9.3|Columna intemperie 20 W puesta a 10 W, en nave de palmeras, salida 2|u|'9,00|'96,00|'864,00
'9.4|Bocina 30 W puesta a 15 W, en muelle de carga, salida 2|u|'2,00|'74,00|'148,00
'9.5|Mando mural de 30 W para los difusores de los pasillos|u|'1,00|'33,00|'33,00
'9.6|Etapa MG de 2 x 120 W en 100 V|u|'1,00|'1.150,00|'1.150,00
'9.7|Manguera 2x1,5 mm² para la salida 1|m|'1.240,00|'1,10|'1.364,00
'9.8|Manguera 2x2,5 mm² para la salida 2|m|'185,50|'1,60|'296,80
'9.9|Partida alzada de puesta en marcha|pa|'1,00|'600,00|'600,00
|TOTAL CAPÍTULO 9||||'5.841,80
`)
	return p.File
}

func invernaderoTruth(t *typed.Truth) {
	t.Is("PV-118", "Patronato Valdorrio - invernaderos", "Spanish bill: '22,00' is 22 pieces, '1.240,00' is 1240 m; 'ídem'; rated beside set watts; 'muelle de carga' is a loading dock")
	t.Speakers("sheet=Cap 9; tap_v=100; line_v=100; amplifier=MG", `
rows|zone|count|tap_w|channel|control|note
5|galería de orquídeas|22|3|1||
6|pasillos|14|1.5|1|9.5|control named only by its item number
7|nave de palmeras|9|10|2||
8|muelle de carga|2|15|2||
`)
	t.Channels("line_v=100; rated_w=120; amplifier=MG", "channel|load_w|note\n1|87|66+21\n2|120|90+30: exactly its rating")
	t.Amplifiers("", "amplifier|rated_w|load_w\nMG|240|207")
	t.Controls("", "control|zone|rated_w|load_w\n9.5|pasillos|30|21")
	t.Lines("material=copper; note=the quantity of an item: all cable of the output, not one run", `
line|to|length_m|area_mm2
9.7|salida 1|1240|1.5
9.8|salida 2|185.5|2.5
`)
	t.Left("Cap 9", "9|control|\n10|amplifier|\n11|cable|\n12|cable|\n13|other|\n14|total|money")
	t.Asks("Cap 9", "11|assumed|1240 m is the cable bought, not the distance to the farthest loudspeaker")
}

// Sections by sector with the control in the title; UTF-8 without a mark, semicolons.
func planetario() []byte {
	return []byte(typed.DOS(`
Planetario de Valdorrio;;;;Obra PV-131
Todo en 100 V;;;;

SECTOR A - SALA (etapa E1, salida 1, 120 W);;;;
ref;sitio;cuántos;a (W);con mando
A-1;cúpula;12;6;no
A-2;pasillo de sala;6;3;"MA (25 W)"
A-3;cabina;1;1,5;ídem
suma A;;19;91,5;

SECTOR B - VESTÍBULO (etapa E1, salida 2, 120 W);;;;
ref;sitio;cuántos;a (W);con mando
B-1;taquilla;2;3;no
B-2;exposición;10;5;"MB (50 W)"
B-3;exposición, vitrinas;4;1,5;ídem
B-4;exposición (de repuesto);2;5;-
suma B;;16;62;

SECTOR C - AZOTEA (sin etapa todavía);;;;
ref;sitio;cuántos;a (W);con mando
C-1;terraza de telescopios;4;15;no
`))
}

func planetarioTruth(t *typed.Truth) {
	t.Is("PV-131", "Planetario de Valdorrio", "sections by sector with amplifier, way and rating in the title; 'ídem' in the control column; spares inside a section that its sum leaves out; a sector without an amplifier")
	t.Speakers("tap_v=100; line_v=100; amplifier=E1", `
rows|tag|room|zone|count|tap_w|channel|control|status|amplifier|note
6|A-1|cúpula|SECTOR A - SALA|12|6|1||installed|E1|
7|A-2|pasillo de sala|SECTOR A - SALA|6|3|1|MA|installed|E1|
8|A-3|cabina|SECTOR A - SALA|1|1.5|1|MA|installed|E1|
13|B-1|taquilla|SECTOR B - VESTÍBULO|2|3|2||installed|E1|
14|B-2|exposición|SECTOR B - VESTÍBULO|10|5|2|MB|installed|E1|
15|B-3|exposición, vitrinas|SECTOR B - VESTÍBULO|4|1.5|2|MB|installed|E1|
16|B-4|exposición|SECTOR B - VESTÍBULO|2|5|2||spare|E1|
21|C-1|terraza de telescopios|SECTOR C - AZOTEA|4|15|||future||no amplifier yet: installed without a channel is as good
`)
	t.Channels("line_v=100; rated_w=120; amplifier=E1", "channel|load_w|note\n1|91.5|72+18+1.5\n2|62|6+50+6")
	t.Amplifiers("", "amplifier|rated_w|load_w|note\nE1||153.5|")
	t.Controls("", "control|rated_w|load_w|note\nMA|25|19.5|18+1.5\nMB|50|56|50+6: over its rating")
	t.Left("", "4|title|\n9|total|right\n11|title|\n17|total|right, without the spares\n19|title|")
	t.Asks("", "21|assumed|sector C has no amplifier yet: not in any load")
}

// Rooms by kinds, the tap in the second header row, the way in a row of its own below.
func pista() *excelize.File {
	p := typed.NewBook("Cuadro")
	p.Put("A1", `
Pista de hielo - cuadro de altavoces|||||PV-126

|Bocina|Columna|Techo|Techo|
|15 W|10 W|3 W|1,5 W|suman
Pista|8||||8
Grada|2|10|||12
Vestuarios|||6|4|10
Taquilla||||2|2
Alquiler|||4||4
suman|10|10|10|6|36

recinto|va a|aguanta
Pista + Grada|E-1|300 W
Vestuarios|E-2|60 W
Taquilla, Alquiler|E-3|15 W
tensión de línea||100 V
`)
	p.Merge("D3:E3", "A3:A4")
	return p.File
}

func pistaTruth(t *typed.Truth) {
	t.Is("PV-126", "Pista de hielo", "matrix: the tap stands under the kind in a second header row, one kind with two taps; a table below sends several rooms to one output; line voltage in its last row")
	t.Speakers("sheet=Cuadro; tap_v=100; line_v=100", `
rows|zone|model|count|tap_w|channel
5|Pista|Bocina|8|15|E-1
6|Grada|Bocina|2|15|E-1
6|Grada|Columna|10|10|E-1
7|Vestuarios|Techo|6|3|E-2
7|Vestuarios|Techo|4|1.5|E-2
8|Taquilla|Techo|2|1.5|E-3
9|Alquiler|Techo|4|3|E-3
`)
	t.Channels("line_v=100; note=E-1 may as well be read as an amplifier of one output", `
channel|rated_w|load_w
E-1|300|250
E-2|60|24
E-3|15|15
`)
	t.Left("Cuadro", "10|total|right")
}
