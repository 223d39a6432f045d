package main

import "lineaudit/samples/typed"

// fuentelar are more lists of the Spanish-speaking foundation.
func fuentelar() []typed.Case {
	return []typed.Case{
		{File: "Pista de hielo Robleda/megafonía por líneas.xlsx", Kind: "schedule", Book: book("Líneas", `
PISTA DE HIELO DE ROBLEDA
Instalación de megafonía - Líneas de altavoces 100 V
Proyecto: M-2009/14|||||Fecha: 02/2009

Amplificador|Salida|Potencia salida (W)|Línea|Local|Altavoces||Cable||
|||||Ud|Toma (W)|Sección (mm²)|Longitud (m)|Carga (W)
AMP-1|1|240|L1|Pista fondo norte|6|20|2,5|95|120
AMP-1|1|240|L2|Pista fondo sur|6|20|2,5|140|120
AMP-1|2|240|L3|Grada|10|10|2,5|80|100
AMP-2|1|60|L4|Vestuarios|8|1,5|1,5|60|12
AMP-2|1|60|L5|Pasillo|6|3|1,5|45|18
AMP-2|2|60|L6|Taquilla y hall|5|6|1,5|30|30
AMP-2|2|60|L7|Sala de máquinas|2|15|1,5|70|30
|||||43||||430
`, merged("A5:A6", "B5:B6", "C5:C6", "D5:D6", "E5:E6", "F5:G5", "H5:I5"), bold("A1:A2", "A5:J6")), Truth: func(t *typed.Truth) {
			t.Is("M-2009/14", "Pista de hielo de Robleda", "two header rows, merged downwards and across; two lines an output; one length a line")
			t.Speakers("tap_v=100; line_v=100; sheet=Líneas", `
rows|room|count|tap_w|amplifier|channel
7|Pista fondo norte|6|20|AMP-1|1
8|Pista fondo sur|6|20|AMP-1|1
9|Grada|10|10|AMP-1|2
10|Vestuarios|8|1.5|AMP-2|1
11|Pasillo|6|3|AMP-2|1
12|Taquilla y hall|5|6|AMP-2|2
13|Sala de máquinas|2|15|AMP-2|2
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w|note
AMP-1|1|240|240|exactly its rating
AMP-1|2|240|100|
AMP-2|1|60|30|
AMP-2|2|60|60|exactly its rating
`)
			t.Amplifiers("", `
amplifier|load_w
AMP-1|340
AMP-2|90
`)
			t.Lines("material=copper", `
line|zone|length_m|area_mm2
L1|Pista fondo norte|95|2.5
L2|Pista fondo sur|140|2.5
L3|Grada|80|2.5
L4|Vestuarios|60|1.5
L5|Pasillo|45|1.5
L6|Taquilla y hall|30|1.5
L7|Sala de máquinas|70|1.5
`)
			t.Left("Líneas", "14|total|right")
		}},

		{File: "Planetario Sierra Alba/altavoces mantenimiento.csv", Kind: "schedule", Bytes: utf8(`
Código;Planta;Estancia;Tipo de altavoz;Potencia seleccionada;Línea;Atenuador;Estado
ALT-001;Baja;Vestíbulo;Empotrado techo;6 W;1;;Correcto
ALT-002;Baja;Vestíbulo;Empotrado techo;6 W;1;;Correcto
ALT-003;Baja;Vestíbulo;Empotrado techo;6 W;1;;No suena
ALT-004;Baja;Tienda;Empotrado techo;3 W;1;AT-1 (10 W);Correcto
ALT-005;Baja;Tienda;Empotrado techo;3 W;1;AT-1 (10 W);Correcto
ALT-006;Baja;Taller didáctico;De superficie;6 W;2;AT-2 (10 W);Correcto
ALT-007;Baja;Taller didáctico;De superficie;6 W;2;AT-2 (10 W);Correcto
ALT-008;Primera;Biblioteca;Empotrado techo;1,5 W;2;;Correcto
ALT-009;Primera;Biblioteca;Empotrado techo;1,5 W;2;;Correcto
ALT-010;Primera;Terraza;Bocina exponencial;15 W;3;;Oxidado
ALT-011;Exterior;Aparcamiento;Bocina exponencial;15 W;3;;Correcto
ALT-012;Exterior;Aparcamiento;Bocina exponencial;7,5 W;3;;Correcto
ALT-013;Almacén;;Empotrado techo;;;;Repuesto
`), Truth: func(t *typed.Truth) {
			t.Is("", "", "plain: a maintenance list without title; the control's rating in brackets; no line voltage anywhere; one spare")
			t.Speakers("", `
rows|tag|room|model|tap_w|control|channel|note
2..4|ALT-001..|Vestíbulo|Empotrado techo|6||1|line voltage open
5..6|ALT-004..|Tienda|Empotrado techo|3|AT-1|1|line voltage open
7..8|ALT-006..|Taller didáctico|De superficie|6|AT-2|2|line voltage open
9..10|ALT-008..|Biblioteca|Empotrado techo|1.5||2|line voltage open
11|ALT-010|Terraza|Bocina exponencial|15||3|line voltage open
12|ALT-011|Aparcamiento|Bocina exponencial|15||3|line voltage open
13|ALT-012|Aparcamiento|Bocina exponencial|7.5||3|line voltage open
`)
			t.Speakers("status=spare", "rows|tag|model\n14|ALT-013|Empotrado techo")
			t.Channels("", `
channel|load_w|note
1|24|taps at the line's own voltage
2|15|taps at the line's own voltage
3|37.5|taps at the line's own voltage
`)
			t.Controls("rated_w=10", `
control|zone|load_w|note
AT-1|Tienda|6|
AT-2|Taller didáctico|12|over its rating
`)
		}},
	}
}
