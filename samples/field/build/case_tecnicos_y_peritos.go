package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// tecnicosYPeritos are a maintenance man, an estimator, an engineer, a station office and a loss adjuster, in Spanish, and a fitter, in Italian.
var tecnicosYPeritos = []typed.Case{
	{File: "mantenimiento/orden 3391 jardin botanico.txt", Kind: "schedule", Bytes: func() []byte {
		return []byte(tabbed(typed.DOS(`
Orden de trabajo 3391|Jardín botánico de Peñafosca, revisión trimestral||||
Línea de 70 V|||||

Zona|Punto|Equipo|Toma|Amp.|Vol.
1|Invernadero tropical|4 columnas|7,5 W|A/1|
1|Invernadero desértico|4 columnas|7,5 W|A/1|
1|Estanque|2 bocinas|15 W|A/1|
2|Taquilla|1 techo|1,9 W|A/2|AT1
2|Tienda|3 techo|3,8 W|A/2|AT2
2|Aula taller|4 techo|3,8 W|A/2|AT3
2|Almacén de semillas|1 techo|ilegible|A/2|
3|Paseo de los tilos|6 setas|7,5 W|B/1|
3|Rosaleda|5 setas|7,5 W|B/1|
3|Mirador|1 bocina|15 W|B/1|
4|Herbario|2 techo|3,8 W|B/2|
4|Biblioteca|4 techo|1,9 W|B/2|AT4

Etapas A y B, cada una con dos salidas de 150 W
AT1 de 5 W, AT2 de 25 W, AT3 de 25 W, AT4 de 12 W
`)))
	}, Truth: func(t *typed.Truth) {
		t.Is("3391", "Jardín botánico de Peñafosca", "70 V; count inside the text, A/1 for amplifier and output, ratings in two lines at the end, one tap that cannot be read")
		t.Speakers("tap_v=70.7; line_v=70.7; zone=1; amplifier=A; channel=1", `rows|room|count|tap_w
5|Invernadero tropical|4|7.5
6|Invernadero desértico|4|7.5
7|Estanque|2|15`)
		t.Speakers("tap_v=70.7; line_v=70.7; zone=2; amplifier=A; channel=2", `rows|room|count|tap_w|control
8|Taquilla|1|1.9|AT1
9|Tienda|3|3.8|AT2
10|Aula taller|4|3.8|AT3
11|Almacén de semillas|1||`)
		t.Speakers("tap_v=70.7; line_v=70.7; zone=3; amplifier=B; channel=1", `rows|room|count|tap_w
12|Paseo de los tilos|6|7.5
13|Rosaleda|5|7.5
14|Mirador|1|15`)
		t.Speakers("tap_v=70.7; line_v=70.7; zone=4; amplifier=B; channel=2", `rows|room|count|tap_w|control
15|Herbario|2|3.8|
16|Biblioteca|4|1.9|AT4`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w|load_min_w
A|1|150|90|
A|2|150||28.5
B|1|150|97.5|
B|2|150|15.2|`)
		t.Amplifiers("", `amplifier|load_w
B|112.7`)
		t.Controls("", `control|rated_w|load_w
AT1|5|1.9
AT2|25|11.4
AT3|25|15.2
AT4|12|7.6`)
		t.Asks("", `11|asked|tap of the loudspeaker in the seed store`)
	}},

	{File: "presupuestos/2024-061 escuela de musica.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Presupuesto")
		p.Put("A1", `
Presupuesto 2024-061|Escuela de música Las Encinas
|Megafonía, línea de 100 V
||
Partida|Descripción|Ud|Cantidad|Precio €|Importe €
1|PLANTA BAJA
'1.1|Altavoz de techo en pasillo y vestíbulo, toma de 3 W|ud|8|38|304
'1.2|Altavoz de techo en aulas 1 a 4, toma de 6 W|ud|8|38|304
'1.3|Altavoz de techo en conserjería, toma de 1,5 W|ud|1|38|38
'1.4|Regulador RV-1 de 6 W para conserjería|ud|1|31|31
'1.5|Cable 2 x 1,5 mm²|m|180|1.9|342
2|PLANTA PRIMERA
'2.1|Altavoz de techo en pasillo, toma de 3 W|ud|5|38|190
'2.2|Altavoz de pared en salón de actos, toma de 10 W|ud|6|72|432
'2.3|Altavoz de techo en cabinas de estudio, toma de 1,5 W|ud|10|38|380
'2.4|Regulador RV-2 de 100 W para el salón de actos|ud|1|54|54
'2.5|Cable 2 x 2,5 mm²|m|140|2.6|364
'2.6|Variante no incluida: columna de 20 W en salón de actos en lugar de 2.2|ud|4|180|
3|CENTRAL
'3.1|Amplificador AM-1 de 120 W, para la planta baja|ud|1|640|640
'3.2|Amplificador AM-2 de 240 W, para la planta primera|ud|1|820|820
'3.3|Micrófono de sobremesa con llave|ud|1|95|95
|Total sin IVA||||3994
`)
		p.Bold("A1", "B1", "A4:F4", "A5:B5", "A11:B11", "A18:B18", "B22:F22")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2024-061", "Escuela de música Las Encinas", "a bill of quantities: room and tap inside the description, controls, cables and amplifiers as items, floors as chapters, an alternative that is not included")
		t.Speakers("sheet=Presupuesto; tap_v=100; line_v=100; zone=PLANTA BAJA; amplifier=AM-1; note=floor as zone", `rows|count|tap_w|control
6|8|3|
7|8|6|
8|1|1.5|RV-1`)
		t.Speakers("sheet=Presupuesto; tap_v=100; line_v=100; zone=PLANTA PRIMERA; amplifier=AM-2; note=floor as zone", `rows|count|tap_w|control
12|5|3|
13|6|10|RV-2
14|10|1.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AM-1|120|73.5
AM-2|240|90`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AM-1|120|73.5
AM-2|240|90`)
		t.Controls("", `control|rated_w|load_w
RV-1|6|1.5
RV-2|100|60`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
PLANTA BAJA|180|1.5
PLANTA PRIMERA|140|2.5`)
		t.Left("Presupuesto", `17|alternative|not included
21|other|microphone
22|total|price`)
	}},

	{File: "ingenieria/P-88 planetario.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Zonas")
		p.Put("A1", `
Proyecto P-88 Planetario Cerro Bermejo
Líneas de 100 V
||
Zona|Z1|Z2|Z3|Z4|Z5|Z6|Z7|Z8
Local|Cúpula|Vestíbulo|Taquilla|Exposición|Taller|Pasillo técnico|Explanada|Despacho
Unidades|12|6|1|8|4|3|4|2
Toma (W)|10|3|1.5|6|3|3|15|1.5
Carga (W)|120|18|1.5|48|12|9|60|3
Etapa|EP1|EP1|EP1|EP2|EP2|EP2|EP2|EP1
Canal|1|2|3|1|2|3|4|4
Potencia de canal (W)|250|125|125|125|125|125|125|125
Atenuador|-|AT2|AT3|-|AT5|-|-|AT8
Potencia del atenuador (W)|-|36|6|-|24|-|-|6
Cable (mm²)|2.5|1.5|1.5|1.5|1.5|1.5|2.5|1.5
Longitud (m)|110|45|30|70|40|55|85|25
`)
		p.Bold("A1", "A4:A15", "B4:I4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("P-88", "Planetario Cerro Bermejo", "a table that runs across: a zone a column, with its output, control and cable")
		t.Speakers("sheet=Zonas; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|amplifier|channel|control
B|Z1|Cúpula|12|10|EP1|1|
C|Z2|Vestíbulo|6|3|EP1|2|AT2
D|Z3|Taquilla|1|1.5|EP1|3|AT3
E|Z4|Exposición|8|6|EP2|1|
F|Z5|Taller|4|3|EP2|2|AT5
G|Z6|Pasillo técnico|3|3|EP2|3|
H|Z7|Explanada|4|15|EP2|4|
I|Z8|Despacho|2|1.5|EP1|4|AT8`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
EP1|1|250|120
EP1|2|125|18
EP1|3|125|1.5
EP1|4|125|3
EP2|1|125|48
EP2|2|125|12
EP2|3|125|9
EP2|4|125|60`)
		t.Amplifiers("", `amplifier|load_w
EP1|142.5
EP2|129`)
		t.Controls("", `control|zone|rated_w|load_w
AT2|Z2|36|18
AT3|Z3|6|1.5
AT5|Z5|24|12
AT8|Z8|6|3`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Z1|110|2.5
Z2|45|1.5
Z3|30|1.5
Z4|70|1.5
Z5|40|1.5
Z6|55|1.5
Z7|85|2.5
Z8|25|1.5`)
	}},

	{File: "estacion/Robledal altavoces.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Estación")
		p.Put("A1", `
Estación de Robledal, megafonía a 100 V
||
ANDÉN 1|||||ANDÉN 2
Punto|Uds|Toma W|Línea||Punto|Uds|Toma W|Línea
Marquesina norte|4|6|L1A||Marquesina|4|6|L2A
Marquesina sur|4|6|L1B||Farolas 1 a 6|6|10|L2A
Farolas 1 a 4|4|10|L1A||Escalera|2|6|L2B
Farolas 5 a 8|4|10|L1B||Ascensor|1|3|L2B
Ascensor|1|3|L1A||Refugio|2|3|L2B
||
EDIFICIO|||||ARMARIO DE MEGAFONÍA
Punto|Uds|Toma W|Línea||Etapa|Salida|W|Línea
Vestíbulo|6|3|L3||ET1|1|120|L1A
Taquillas|2|1.5|L3||ET1|2|120|L1B
Sala de espera|4|3|L3||ET2|1|120|L2A
Aseos|2|1.5|L3||ET2|2|60|L2B
Jefe de estación|1|1.5|L3||ET3|1|60|L3
||
La sala de espera lleva el regulador RG1 de 20 W.
`)
		p.Bold("A1", "A3:I4", "A11:I12")
		p.Colour("DDEBF7", "A3:D3", "F3:I3", "A11:D11", "F11:I11")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Estación de Robledal", "four tables on one sheet, two beside two: platforms, building and the amplifier cabinet; the one control in a sentence below")
		t.Speakers("sheet=Estación; tap_v=100; line_v=100; zone=ANDÉN 1; amplifier=ET1; note=area as zone", `rows|room|count|tap_w|channel
5|Marquesina norte|4|6|1
6|Marquesina sur|4|6|2
7|Farolas 1 a 4|4|10|1
8|Farolas 5 a 8|4|10|2
9|Ascensor|1|3|1`)
		t.Speakers("sheet=Estación; tap_v=100; line_v=100; zone=ANDÉN 2; amplifier=ET2; note=area as zone", `rows|room|count|tap_w|channel
5|Marquesina|4|6|1
6|Farolas 1 a 6|6|10|1
7|Escalera|2|6|2
8|Ascensor|1|3|2
9|Refugio|2|3|2`)
		t.Speakers("sheet=Estación; tap_v=100; line_v=100; zone=EDIFICIO; amplifier=ET3; channel=1; note=area as zone", `rows|room|count|tap_w|control
13|Vestíbulo|6|3|
14|Taquillas|2|1.5|
15|Sala de espera|4|3|RG1
16|Aseos|2|1.5|
17|Jefe de estación|1|1.5|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
ET1|1|120|67
ET1|2|120|64
ET2|1|120|84
ET2|2|60|21
ET3|1|60|37.5`)
		t.Amplifiers("", `amplifier|load_w
ET1|131
ET2|105
ET3|37.5`)
		t.Controls("", `control|rated_w|load_w
RG1|20|12`)
	}},

	{File: "seguros/peritaje 40-2213 club de remo.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Peritaje")
		p.Put("A1", `
Peritaje, expediente 40-2213|||Club de remo Las Nutrias, inundación de noviembre
Amplificador de 120 W en planta primera, línea de 100 V, sin daños
||
A) BIENES PERDIDOS Y RETIRADOS
Dependencia|Bien|Uds|Potencia|Valor €
Hangar de botes|Bocina|4|15 W|480
Vestuario|Altavoz de techo|4|3 W|152
Vestuario|Atenuador AT1|1|24 W|45
Taller|Altavoz de pared|2|6 W|130
||
B) BIENES NO AFECTADOS, EN SERVICIO
Dependencia|Bien|Uds|Potencia|Valor €
Sala de trofeos|Altavoz de techo|4|3 W|152
Sala de trofeos|Atenuador AT2|1|24 W|45
Gimnasio|Altavoz de pared|6|6 W|390
Gimnasio|Atenuador AT3|1|50 W|52
Secretaría|Altavoz de techo|1|1,5 W|38
Sala de juntas|Altavoz de techo|2|3 W|76
Pantalán|Bocina|2|15 W|240
||
C) REPOSICIÓN PROPUESTA, SIN ENCARGAR
Dependencia|Bien|Uds|Potencia|Valor €
Hangar de botes|Bocina|4|15 W|560
Vestuario|Altavoz de techo|4|3 W|168
`)
		p.Bold("A1", "A4", "A5:E5", "A11", "A12:E12", "A21", "A22:E22")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("40-2213", "Club de remo Las Nutrias", "a loss adjuster's list in three sections: lost and taken out, in service, proposed; controls as items of a room")
		t.Speakers("sheet=Peritaje; tap_v=100; line_v=100", `rows|room|count|tap_w|control
13|Sala de trofeos|4|3|AT2
15|Gimnasio|6|6|AT3
17|Secretaría|1|1.5|
18|Sala de juntas|2|3|
19|Pantalán|2|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|120|85.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|120|85.5`)
		t.Controls("", `control|rated_w|load_w
AT2|24|12
AT3|50|36`)
		t.Left("Peritaje", `6|removed|lost in the flood
7|removed|lost in the flood
9|removed|lost in the flood
23|future|proposed
24|future|proposed`)
	}},

	{File: "impianti/Museo della Torbiera come eseguito.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Diffusori")
		p.Put("A1", `
Museo della Torbiera, come eseguito
Commessa 77/A - impianto a 100 V
||
Sala|Diffusore|N.|Presa W|Uscita|Comando
Ingresso|soffitto|4|3|C1 / 1|
Biglietteria|soffitto|2|1.5|C1 / 1|P1
Sala 1|parete|6|6|C1 / 2|
Sala 2|parete|4|'6 *|C1 / 2|P2
Sala 3|parete|4|6|C1 / 2|P2
Sala video|parete|2|10|C2 / 1|
Aula didattica|soffitto|6|3|C2 / 1|P3
Scala|soffitto|3|3|C2 / 1|
Deposito|tromba|1|10|C2 / 1|
Chiostro|tromba|4|15|C2 / 2|P4
||
* in Sala 2 abbassati a 3 W al collaudo, su richiesta della direzione
`)
		p.Bold("A1", "A4:F4")
		q := p.Sheet("Quadro")
		q.Put("A1", `
Centrale|Uscita|Potenza
C1|1|60 W
C1|2|120 W
C2|1|120 W
C2|2|120 W
||
Comando|Potenza|Posizione
P1|6 W|banco biglietteria
P2|60 W|corridoio custodi
P3|36 W|aula didattica
P4|100 W|portineria
`)
		q.Bold("A1:C1", "A7:C7")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("77/A", "Museo della Torbiera", "a footnote lowers one tap; outputs and controls in two tables on the second sheet")
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; amplifier=C1", `rows|room|count|tap_w|channel|control
5|Ingresso|4|3|1|
6|Biglietteria|2|1.5|1|P1
7|Sala 1|6|6|2|
8|Sala 2|4|3|2|P2
9|Sala 3|4|6|2|P2`)
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; amplifier=C2", `rows|room|count|tap_w|channel|control
10|Sala video|2|10|1|
11|Aula didattica|6|3|1|P3
12|Scala|3|3|1|
13|Deposito|1|10|1|
14|Chiostro|4|15|2|P4`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
C1|1|60|15
C1|2|120|72
C2|1|120|57
C2|2|120|60`)
		t.Amplifiers("", `amplifier|load_w
C1|87
C2|117`)
		t.Controls("", `control|rated_w|load_w
P1|6|3
P2|60|36
P3|36|18
P4|100|60`)
	}},
}
