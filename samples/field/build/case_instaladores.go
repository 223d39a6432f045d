package main

import (
	"lineaudit/samples/typed"

	"github.com/xuri/excelize/v2"
)

// instaladores is a small Spanish firm; the same man measures, fits and types.
var instaladores = []typed.Case{
	{File: "instaladores/Expediente 88-2013 pista de hielo.xlsx", Kind: "schedule", Book: sheets("Megafonía", `
PISTA DE HIELO VALDENIEVE|||||||
Expediente 88/2013|||Línea de 100 V||||

Línea|Zona|Altavoz|Uds.|Toma (W)|W total|Regulador|Observaciones
1|Pista|Bocina|10|15|150||
1|Grada|Bocina|6|10|60||
2|Vestíbulo|Techo|8|3|24|RV1|
2|Alquiler de patines|Techo|3|3|9|RV2|
2|Vestuarios|Techo|8|1,5|12||
3|Museo|Techo|10|3|30|RV3|
3|Sala de máquinas|Bocina|2|10|20||
||||TOTAL|305||

ETAPAS DE POTENCIA
Línea 1: 240 W
Línea 2: 60 W
Línea 3: 60 W
REGULADORES
RV1 40 W
RV2 6 W
RV3 40 W
`), Truth: func(t *typed.Truth) {
		t.Is("88/2013", "Pista de hielo Valdenieve", "Spanish list with ratings of lines and controls as short notes below")
		t.Speakers("tap_v=100; line_v=100; sheet=Megafonía", `
rows|channel|zone|model|count|tap_w|control
5|1|Pista|Bocina|10|15|
6|1|Grada|Bocina|6|10|
7|2|Vestíbulo|Techo|8|3|RV1
8|2|Alquiler de patines|Techo|3|3|RV2
9|2|Vestuarios|Techo|8|1.5|
10|3|Museo|Techo|10|3|RV3
11|3|Sala de máquinas|Bocina|2|10|
`)
		t.Channels("line_v=100", "channel|rated_w|load_w\n1|240|210\n2|60|45\n3|60|50")
		t.Controls("", "control|rated_w|load_w\nRV1|40|24\nRV2|6|9\nRV3|40|30")
		t.Left("Megafonía", "12|total|TOTAL")
	}},

	{File: "instaladores/Jardin botanico la Umbria.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Altavoces por linea")
		p.Put("A1", `
Jardín botánico La Umbría - obra 2016/12||||||
||||||
LÍNEA 1 - AMPLIFICADOR 1 (120 W)||||||
Ref|Situación|Modelo|Cantidad|Potencia|Total|Atenuador
1.1|Entrada|Exterior|2|10 W|20 W|
1.2|Taquilla|Empotrado|1|3 W|3 W|AT-1 (5 W)
1.3|Tienda de semillas|Empotrado|4|3 W|12 W|AT-2 (10 W)
1.4|Paseo central|Exterior|5|10 W|50 W|
||||Suma|85 W|
||||||
LÍNEA 2 - AMPLIFICADOR 2 (240 W)||||||
Ref|Situación|Modelo|Cantidad|Potencia|Total|Atenuador
2.1|Invernadero grande|Exterior|8|15 W|120 W|
2.2|Invernadero pequeño|Exterior|4|10 W|40 W|
2.3|Vivero|Exterior|4|10 W|40 W|
||||Suma|200 W|
||||||
LÍNEA 3 - AMPLIFICADOR 3 (60 W)||||||
Ref|Situación|Modelo|Cantidad|Potencia|Total|Atenuador
3.1|Aula|Empotrado|2|6 W|12 W|AT-3 (20 W)
3.2|Biblioteca|Empotrado|2|3 W|6 W|AT-4 (10 W)
3.3|Aparcamiento|Exterior|2|15 W|30 W|
||||Suma|48 W|
||||||
Todos los amplificadores con salida de 100 V||||||
`)
		p.Merge("A3:G3", "A11:G11", "A18:G18")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2016/12", "Jardín botánico La Umbría", "a block a line, whose title tells line, amplifier and rating; names and ratings of controls in one cell")
		t.Speakers("tap_v=100; line_v=100; sheet=Altavoces por linea", `
rows|tag|room|model|count|tap_w|amplifier|channel|control
5|1.1|Entrada|Exterior|2|10|AMPLIFICADOR 1|LÍNEA 1|
6|1.2|Taquilla|Empotrado|1|3|AMPLIFICADOR 1|LÍNEA 1|AT-1
7|1.3|Tienda de semillas|Empotrado|4|3|AMPLIFICADOR 1|LÍNEA 1|AT-2
8|1.4|Paseo central|Exterior|5|10|AMPLIFICADOR 1|LÍNEA 1|
13|2.1|Invernadero grande|Exterior|8|15|AMPLIFICADOR 2|LÍNEA 2|
14|2.2|Invernadero pequeño|Exterior|4|10|AMPLIFICADOR 2|LÍNEA 2|
15|2.3|Vivero|Exterior|4|10|AMPLIFICADOR 2|LÍNEA 2|
20|3.1|Aula|Empotrado|2|6|AMPLIFICADOR 3|LÍNEA 3|AT-3
21|3.2|Biblioteca|Empotrado|2|3|AMPLIFICADOR 3|LÍNEA 3|AT-4
22|3.3|Aparcamiento|Exterior|2|15|AMPLIFICADOR 3|LÍNEA 3|
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nAMPLIFICADOR 1|LÍNEA 1|120|85\nAMPLIFICADOR 2|LÍNEA 2|240|200\nAMPLIFICADOR 3|LÍNEA 3|60|48")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAMPLIFICADOR 1|120|85\nAMPLIFICADOR 2|240|200\nAMPLIFICADOR 3|60|48")
		t.Controls("", "control|rated_w|load_w\nAT-1|5|3\nAT-2|10|12\nAT-3|20|12\nAT-4|10|6")
		t.Left("Altavoces por linea", "9|total|Suma\n16|total|Suma\n23|total|Suma")
	}},

	{File: "instaladores/embarcadero revision.csv", Kind: "schedule", Bytes: text(`
Casetas de remo del Embarcadero de Sotolar;;;;;;
Ref. obra 1904;Revisión de mayo;;;;;
;;;;;;
N.º;Ubicación;Tipo;Línea;Ajuste anterior;Ajuste actual;Nota
1;Pantalán norte;bocina;A;30 W;15 W;
2;Pantalán norte;bocina;A;30 W;15 W;
3;Pantalán sur;bocina;A;30 W;15 W;
4;Pantalán sur;bocina;A;30 W;;retirada, pendiente de reponer
5;Nave de barcas 1;proyector;A;10 W;10 W;
6;Nave de barcas 1;proyector;A;10 W;10 W;
7;Nave de barcas 2;proyector;B;10 W;10 W;
8;Nave de barcas 2;proyector;B;10 W;10 W;
9;Gimnasio;techo;B;6 W;3 W;con regulador R1 de 10 W
10;Gimnasio;techo;B;6 W;3 W;con regulador R1 de 10 W
11;Vestuario;techo;B;3 W;1,5 W;
12;Oficina;techo;B;3 W;3 W;con regulador R2 de 5 W
;;;;;;
Amplificador: 2 canales de 60 W a 100 V (canal 1 = línea A, canal 2 = línea B);;;;;;
`), Truth: func(t *typed.Truth) {
		t.Is("1904", "Casetas de remo del Embarcadero de Sotolar", "tap before and now; controls named and rated in notes; which channel is which line, told below")
		t.Speakers("tap_v=100; line_v=100", `
rows|tag|room|model|channel|tap_w|control
5..6|1..|Pantalán norte|bocina|A|15|
7|3|Pantalán sur|bocina|A|15|
9..10|5..|Nave de barcas 1|proyector|A|10|
11..12|7..|Nave de barcas 2|proyector|B|10|
13..14|9..|Gimnasio|techo|B|3|R1
15|11|Vestuario|techo|B|1.5|
16|12|Oficina|techo|B|3|R2
`)
		t.Speakers("tap_v=100; line_v=100; status=removed", "rows|tag|room|model|channel\n8|4|Pantalán sur|bocina|A")
		t.Channels("line_v=100; rated_w=60", "channel|load_w\nA|65\nB|30.5")
		t.Controls("", "control|rated_w|load_w\nR1|10|6\nR2|5|3")
	}},
}
