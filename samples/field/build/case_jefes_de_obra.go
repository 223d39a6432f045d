package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// jefesDeObra run works in Spain and Latin America.
var jefesDeObra = []typed.Case{
	{File: "espana/2108 Planetario La Loma.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Megafonía")
		p.Put("A1", `
PLANETARIO LA LOMA - MEGAFONÍA LÍNEA 100 V
Obra 2108

Ref.|Elemento|Ubicación|Uds.|W|Línea|Obs.
A1|Altavoz mural|Sala de cúpula|8|10|L1
A2|Altavoz techo|Cabina|1|3|L1|tras AT-1
AT-1|Atenuador|Cabina|1|6|L1
A3|Altavoz techo|Vestíbulo|6|6|L2|tras AT-2
A4|Altavoz techo|Taquilla|1|1.5|L2
AT-2|Atenuador|Mostrador|1|50|L2
A5|Altavoz techo|Aseos|4|1.5|L2
A6|Altavoz techo|Aula|4|6|L3|tras AT-3
AT-3|Atenuador|Aula|1|30|L3
A7|Altavoz techo|Taller|3|6|L3|tras AT-4
AT-4|Atenuador|Taller|1|20|L3
A8|Bocina|Explanada|3|15|L4
A9|Bocina|Aparcamiento|2|15|L4
A10|Altavoz techo|Repuesto en almacén|2|6

Etapa de 4 líneas: L1 120 W, L2 120 W, L3 60 W, L4 120 W
`)
		p.Bold("A1", "A4:G4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2108", "Planetario La Loma", "controls are rows of the same list; what hangs on them is a remark; ratings of the lines in a sentence")
		t.Speakers("sheet=Megafonía; tap_v=100; line_v=100; channel=L1", `rows|tag|room|count|tap_w|control
5|A1|Sala de cúpula|8|10|
6|A2|Cabina|1|3|AT-1`)
		t.Speakers("sheet=Megafonía; tap_v=100; line_v=100; channel=L2", `rows|tag|room|count|tap_w|control
8|A3|Vestíbulo|6|6|AT-2
9|A4|Taquilla|1|1.5|
11|A5|Aseos|4|1.5|`)
		t.Speakers("sheet=Megafonía; tap_v=100; line_v=100; channel=L3", `rows|tag|room|count|tap_w|control
12|A6|Aula|4|6|AT-3
14|A7|Taller|3|6|AT-4`)
		t.Speakers("sheet=Megafonía; tap_v=100; line_v=100; channel=L4", `rows|tag|room|count|tap_w
16|A8|Explanada|3|15
17|A9|Aparcamiento|2|15`)
		t.Speakers("sheet=Megafonía; status=spare", `rows|tag|count|tap_w
18|A10|2|6`)
		t.Channels("line_v=100", `channel|rated_w|load_w
L1|120|83
L2|120|43.5
L3|60|42
L4|120|75`)
		t.Controls("", `control|rated_w|load_w
AT-1|6|3
AT-2|50|36
AT-3|30|24
AT-4|20|18`)
		t.Left("Megafonía", `7|control|an attenuator
10|control|an attenuator
13|control|an attenuator
15|control|an attenuator
18|device|spare in the store`)
	}},

	{File: "america/Voceo El Capulin.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Levantamiento")
		p.Put("A1", `
JARDIN BOTANICO EL CAPULIN
Voceo 70 V, levantamiento mayo 2018

Zona|Lugar|Bocina|Cant|Tap W|Total W||Ampli|Canal|W
1|Acceso|trompeta|2|15|30||AMP-1|1|100
1|Taquilla|plafón|1|2|2||AMP-1|2|100
1|Pasillo|plafón|6|4|24||AMP-2|1|250
2|Invernadero húmedo|trompeta|4|7.5|30
2|Invernadero seco|trompeta|3|7.5|22.5||Zona|Ampli|Canal
3|Lago norte|trompeta|5|15|75||1|AMP-1|1
3|Lago sur|trompeta|5|15|75||2|AMP-1|2
3|Embarcadero|trompeta|2|15|30||3|AMP-2|1

Cable zona 1: 40 m calibre 16 AWG
Cable zona 2: 85 m calibre 14 AWG
Cable zona 3: 220 m calibre 12 AWG
`)
		p.Bold("A1", "A4:F4", "H4:J4", "H9:J9")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "JARDIN BOTANICO EL CAPULIN", "70 V; two small tables to the right of the list, cables in sentences below")
		t.Speakers("sheet=Levantamiento; tap_v=70.7; line_v=70.7; zone=1; amplifier=AMP-1; channel=1", `rows|room|count|tap_w
5|Acceso|2|15
6|Taquilla|1|2
7|Pasillo|6|4`)
		t.Speakers("sheet=Levantamiento; tap_v=70.7; line_v=70.7; zone=2; amplifier=AMP-1; channel=2", `rows|room|count|tap_w
8|Invernadero húmedo|4|7.5
9|Invernadero seco|3|7.5`)
		t.Speakers("sheet=Levantamiento; tap_v=70.7; line_v=70.7; zone=3; amplifier=AMP-2; channel=1", `rows|room|count|tap_w
10|Lago norte|5|15
11|Lago sur|5|15
12|Embarcadero|2|15`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
AMP-1|1|100|56
AMP-1|2|100|52.5
AMP-2|1|250|180`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP-1||108.5
AMP-2|250|180`)
		t.Lines("", `zone|length_m|area_mm2
1|40|1.31
2|85|2.08
3|220|3.31`)
	}},

	{File: "espana/Pista Valdenieves estado final.csv", Kind: "schedule", Bytes: text(`
PISTA DE HIELO VALDENIEVES;;;;;;;;
Megafonía 100 V, estado final tras la reforma;;;;;;;;expte. 77/19
;;;;;;;;
Zona;Situación;Tipo;Estado;Ud;Potencia;Canal;Atenuador;Pot. aten.
Pista;Fondo norte;bocina;EXIST.;4;15 W;1;;
Pista;Fondo sur;bocina;EXIST.;4;15 W;1;;
Pista;Marcador;bocina;ANULADO;2;15 W;1;;
Pista;Banquillos;mural;NUEVO;2;6 W;1;A1;15 W
Gradas;Lateral este;columna;NUEVO;5;10 W;2;;
Gradas;Lateral oeste;columna;NUEVO;5;10 W;2;;
Gradas;Ampliación fase 2;columna;PREVISTO;4;10 W;2;;
Vestíbulo;Acceso;techo;EXIST.;4;3 W;3;A2;20 W
Vestíbulo;Alquiler de patines;techo;EXIST.;3;3 W;3;A3;12 W
Vestíbulo;Oficina;techo;NUEVO;1;1,5 W;3;A4;6 W
Vestuarios;Vestuarios 1-6;techo;EXIST.;12;1,5 W;4;;
Vestuarios;Enfermería;techo;EXIST.;1;3 W;4;;
;;;;;;;;
Etapas: canal 1 y 2 de 240 W, canal 3 y 4 de 60 W;;;;;;;;
`), Truth: func(t *typed.Truth) {
		t.Is("77/19", "PISTA DE HIELO VALDENIEVES", "states in words of a works office; ratings of two pairs of channels in one sentence")
		t.Speakers("tap_v=100; line_v=100; zone=Pista; channel=1", `rows|room|count|tap_w|control|status
5|Fondo norte|4|15||installed
6|Fondo sur|4|15||installed
7|Marcador|2|15||removed
8|Banquillos|2|6|A1|installed`)
		t.Speakers("tap_v=100; line_v=100; zone=Gradas; channel=2", `rows|room|count|tap_w|status
9|Lateral este|5|10|installed
10|Lateral oeste|5|10|installed
11|Ampliación fase 2|4|10|future`)
		t.Speakers("tap_v=100; line_v=100; zone=Vestíbulo; channel=3", `rows|room|count|tap_w|control
12|Acceso|4|3|A2
13|Alquiler de patines|3|3|A3
14|Oficina|1|1.5|A4`)
		t.Speakers("tap_v=100; line_v=100; zone=Vestuarios; channel=4", `rows|room|count|tap_w
15|Vestuarios 1-6|12|1.5
16|Enfermería|1|3`)
		t.Channels("line_v=100", `channel|rated_w|load_w
1|240|132
2|240|100
3|60|22.5
4|60|21`)
		t.Controls("", `control|rated_w|load_w
A1|15|12
A2|20|12
A3|12|9
A4|6|1.5`)
		t.Left("", `7|device|dropped
11|device|a later phase`)
	}},

	{File: "america/Museo Ferroviario Llanquen.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Hoja1")
		p.Put("A1", `
Museo Ferroviario Llanquén
Sistema de parlantes, línea de 100 volts

Parlantes|Recinto|Tipo|Toma
LP-01 a LP-06|Hall central (P1)|cielo|6 W
LP-07 a LP-08|Boletería (P2)|cielo|3W
LP-09 a LP-14|Andén 1|corneta|15 w
LP-15 a LP-18|Andén 2|corneta|15 w
LP-19|Cabina de señales|muro|6W
LP-20 a LP-23|Sala de maquetas (P3)|cielo|3 W
LP-24 a LP-25|Taller|corneta|10 W
LP-26|Bodega|corneta|10 W
26 parlantes en total

AMP1 (240 W): Andén 1, Andén 2, Cabina de señales
AMP2 (120 W): Hall central, Boletería, Sala de maquetas, Taller, Bodega
P = perilla de volumen. P1 de 50 W, P2 de 6 W, P3 de 20 W
`)
		p.Bold("A1", "A4:D4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Museo Ferroviario Llanquén", "counts only as ranges of tags; controls in brackets behind the place; amplifiers list their places in sentences")
		t.Speakers("sheet=Hoja1; tap_v=100; line_v=100; amplifier=AMP2", `rows|room|count|tap_w|control
5|Hall central|6|6|P1
6|Boletería|2|3|P2
10|Sala de maquetas|4|3|P3
11|Taller|2|10|
12|Bodega|1|10|`)
		t.Speakers("sheet=Hoja1; tap_v=100; line_v=100; amplifier=AMP1", `rows|room|count|tap_w
7|Andén 1|6|15
8|Andén 2|4|15
9|Cabina de señales|1|6`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP1|240|156
AMP2|120|84`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP1|240|156
AMP2|120|84`)
		t.Controls("", `control|rated_w|load_w
P1|50|36
P2|6|6
P3|20|12`)
		t.Left("Hoja1", `13|total|count
15|note|amplifier
16|note|amplifier
17|note|controls`)
	}},

	{File: "espana/Piscina Las Norias altavoces.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Altavoces")
		p.Put("A1", `
Piscina de verano Las Norias
Posición del conmutador: 1 = 20 W, 2 = 10 W, 3 = 5 W, 4 = 2,5 W (línea de 100 V)

Nº|Lugar|Tipo|Cant.|Pos.|Zona|Obs.
1|Vaso grande norte|columna|4|1|A
2|Vaso grande sur|columna|4|1|A
3|Vaso infantil|columna|2|2|A
4|Solárium|columna|3|2|B
5|Césped|columna|4|2|B|una orientada a la valla
6|Taquilla|caja|1|4|C
7|Entrada|caja|2|3|C
8|Vestuario mujeres|caja|4|4|C
9|Vestuario hombres|caja|4|4|C
10|Botiquín|caja|1|4|C|regulador propio de 6 W

Zona|Etapa|W
A|E1|240
B|E2|120
C|E3|60
`)
		p.Bold("A1", "A4:G4", "A16:C16")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Piscina de verano Las Norias", "taps are positions of the switch, explained in a line above the list")
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=A; amplifier=E1", `rows|tag|room|count|tap_w
5|1|Vaso grande norte|4|20
6|2|Vaso grande sur|4|20
7|3|Vaso infantil|2|10`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=B; amplifier=E2", `rows|tag|room|count|tap_w
8|4|Solárium|3|10
9|5|Césped|4|10`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=C; amplifier=E3", `rows|tag|room|count|tap_w
10|6|Taquilla|1|2.5
11|7|Entrada|2|5
12|8|Vestuario mujeres|4|2.5
13|9|Vestuario hombres|4|2.5
14|10|Botiquín|1|2.5`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
E1|240|180
E2|120|70
E3|60|35`)
		t.Amplifiers("", `amplifier|rated_w|load_w
E1|240|180
E2|120|70
E3|60|35`)
		t.Controls("note=unnamed", `zone|rated_w|load_w
Botiquín|6|2.5`)
	}},

	{File: "america/picadero.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Sector;Lugar;Cant.;W c/u;Amplificador;W amplif.;Control vol.;W control
Picadero;Largo norte;4;15;A;240;;
Picadero;Largo sur;4;15;A;240;;
Picadero;Palco de jueces;2;6;A;240;V1;15
Caballerizas;Pasillo 1;5;7,5;B;120;;
Caballerizas;Pasillo 2;5;7,5;B;120;;
Caballerizas;Monturero;2;3;B;120;V2;15
Recepción;Mesa de entrada;2;3;C;60;V3;6
Recepción;Aula;4;6;C;60;V4;36
Recepción;Enfermería;1;3;C;60;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "plain text file, the ratings of amplifier and control repeated in each row; no line voltage")
		t.Speakers("zone=Picadero; amplifier=A", `rows|room|count|tap_w|control
2|Largo norte|4|15|
3|Largo sur|4|15|
4|Palco de jueces|2|6|V1`)
		t.Speakers("zone=Caballerizas; amplifier=B", `rows|room|count|tap_w|control
5|Pasillo 1|5|7.5|
6|Pasillo 2|5|7.5|
7|Monturero|2|3|V2`)
		t.Speakers("zone=Recepción; amplifier=C", `rows|room|count|tap_w|control
8|Mesa de entrada|2|3|V3
9|Aula|4|6|V4
10|Enfermería|1|3|`)
		t.Channels("", `amplifier|rated_w|load_w
A|240|132
B|120|81
C|60|33`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|240|132
B|120|81
C|60|33`)
		t.Controls("", `control|rated_w|load_w
V1|15|12
V2|15|6
V3|6|6
V4|36|24`)
	}},

	{File: "espana/Alumbrado emergencia museo.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Emergencias")
		p.Put("A1", `
Museo del Esparto - Alumbrado de emergencia, revisión anual
Expte. 31/22

Nº|Local|Aparato|Uds.|W|Lúmenes|Circuito|Autonomía|Resultado
1|Vestíbulo|techo empotrado|4|6|200|C1|1 h|correcto
2|Taquilla|techo empotrado|1|6|150|C1|1 h|correcto
3|Sala 1|pared|6|8|300|C1|1 h|2 baterías agotadas
4|Sala 2|pared|6|8|300|C2|1 h|correcto
5|Escalera|pared|3|6|150|C2|1 h|correcto
6|Taller|estanca|2|11|350|C3|1 h|correcto
7|Almacén|estanca|2|11|350|C3|1 h|sustituir
|Total||24|188

Cuadro general: C1 10 A, C2 10 A, C3 16 A. Cable 2x1,5 mm²
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "a list of emergency luminaires with watts, counts, rooms and circuits")
	}},
}
