package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// patternsSpanish are a caretaker's list, a railway contractor and a theatre electrician.
var patternsSpanish = []typed.Case{
	{File: "patterns/biblioteca/lista megafonia.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
L1;Sala de lectura;8 altavoces de techo;3 W;
L1;Mostrador;2 altavoces de techo;1,5 W;RV1 de 6 W
L1;Hemeroteca;4 altavoces de techo;3 W;RV2 de 20 W
L1;Aseos;2 altavoces de techo;1,5 W;
L2;Sala infantil;4 altavoces de pared;6 W;RV3 de 36 W
L2;Taller;2 altavoces de pared;6 W;
L2;Salón de actos;4 altavoces de pared;6 W;RV4 de 20 W
L2;Jardín;1 bocina;15 W;
;;;;
Etapa con dos salidas de 80 W a 100 V: L1 en la salida 1, L2 en la salida 2;;;;
RV = regulador de volumen;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "a list without a header; the amplifier has no name and two outputs, told in a note below; RV4 too small")
		t.Speakers("tap_v=100; line_v=100; channel=1", `rows|room|count|tap_w|control
1|Sala de lectura|8|3|
2|Mostrador|2|1.5|RV1
3|Hemeroteca|4|3|RV2
4|Aseos|2|1.5|`)
		t.Speakers("tap_v=100; line_v=100; channel=2", `rows|room|count|tap_w|control
5|Sala infantil|4|6|RV3
6|Taller|2|6|
7|Salón de actos|4|6|RV4
8|Jardín|1|15|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
|1|80|42
|2|80|75`)
		t.Amplifiers("", `amplifier|load_w
|117`)
		t.Controls("", `control|rated_w|load_w
RV1|6|3
RV2|20|12
RV3|36|24
RV4|20|24`)
		t.Left("", `10|note|amplifier
11|note|abbreviation`)
	}},

	{File: "patterns/estación/reparto por etapas.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Reparto")
		p.Put("A1", `
Estación de Peñarrubia, altavoces por zona y etapa (línea de 100 V)
||
Zona|E1|E2|E3|Total W
Andén 1|8 x 10 W|||80
Andén 2|8 x 10 W|||80
Vestíbulo||10 x 3 W||30
Sala de espera||6 x 3 W||18
Taquillas||2 x 1,5 W||3
Paso inferior|2 x 6 W|4 x 6 W||36
Aparcamiento|||4 x 15 W|60
Cocheras|||2 x 15 W|30
Total W|172|75|90|337
`)
		p.Bold("A1", "A3:E3", "A12:E12")
		q := p.Sheet("Etapas")
		q.Put("A1", `
Etapa|Potencia|Armario|Sirve a|Cable|Metros
E1|240 W|1|andenes y parte del paso|2 x 2,5 mm²|180
E2|120 W|1|edificio y parte del paso|2 x 1,5 mm²|95
E3|120 W|2|exteriores|2 x 2,5 mm²|250
`)
		q.Bold("A1:F1")
		r := p.Sheet("Reguladores")
		r.Put("A1", `
Regulador|Potencia|Zona que regula|Situado en
RV-1|36 W|Vestíbulo|Información
RV-2|24 W|Sala de espera|Información
RV-3|5 W|Taquillas|Taquilla 1
`)
		r.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Estación de Peñarrubia", "matrix of zones by amplifiers with count and tap in each cell; one zone on two amplifiers; ratings, cables and controls on two other sheets")
		t.Speakers("sheet=Reparto; tap_v=100; line_v=100; amplifier=E1", `rows|zone|count|tap_w
4|Andén 1|8|10
5|Andén 2|8|10
9|Paso inferior|2|6`)
		t.Speakers("sheet=Reparto; tap_v=100; line_v=100; amplifier=E2", `rows|zone|count|tap_w|control
6|Vestíbulo|10|3|RV-1
7|Sala de espera|6|3|RV-2
8|Taquillas|2|1.5|RV-3
9|Paso inferior|4|6|`)
		t.Speakers("sheet=Reparto; tap_v=100; line_v=100; amplifier=E3", `rows|zone|count|tap_w
10|Aparcamiento|4|15
11|Cocheras|2|15`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
E1|240|172
E2|120|75
E3|120|90`)
		t.Amplifiers("", `amplifier|rated_w|load_w
E1|240|172
E2|120|75
E3|120|90`)
		t.Controls("", `control|zone|rated_w|load_w
RV-1|Vestíbulo|36|30
RV-2|Sala de espera|24|18
RV-3|Taquillas|5|3`)
		t.Lines("note=one length an amplifier", `from|length_m|area_mm2
E1|180|2.5
E2|95|1.5
E3|250|2.5`)
		t.Left("Reparto", `12|total|sums`)
	}},

	{File: "patterns/teatro/avisos por dependencias.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Avisos")
		p.Put("A1", `
Teatro Municipal de Olmeda, megafonía de avisos
||
Dependencia|Planta|Alt.|W
Vestíbulo|Baja|6|3
Guardarropa|Baja|1|1.5
Taquilla|Baja|1|1.5
Pasillo de camerinos|Sótano|4|3
Camerino 1|Sótano|1|1.5
Camerino 2|Sótano|1|1.5
Camerino 3|Sótano|1|1.5
Sala de ensayo|Primera|4|6
Salón de descanso|Primera|4|3
Oficina|Primera|1|1.5
||
NOTAS
1. Un solo amplificador de 120 W, línea de 100 V.
2. Reguladores en camerino 1 (RC1), camerino 2 (RC2) y camerino 3 (RC3), de 3 W cada uno.
3. Regulador en la sala de ensayo (RE), de 20 W.
4. Los W son los de la toma de cada altavoz. Los demás altavoces van sin regulador.
`)
		p.Bold("A1", "A3:D3", "A15")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Teatro Municipal de Olmeda", "one row a room with counts; the amplifier and the controls, by room, only in notes below; RE too small")
		t.Speakers("sheet=Avisos; tap_v=100; line_v=100", `rows|room|count|tap_w|control
4|Vestíbulo|6|3|
5|Guardarropa|1|1.5|
6|Taquilla|1|1.5|
7|Pasillo de camerinos|4|3|
8|Camerino 1|1|1.5|RC1
9|Camerino 2|1|1.5|RC2
10|Camerino 3|1|1.5|RC3
11|Sala de ensayo|4|6|RE
12|Salón de descanso|4|3|
13|Oficina|1|1.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|120|75`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|120|75`)
		t.Controls("", `control|rated_w|load_w
RC1|3|1.5
RC2|3|1.5
RC3|3|1.5
RE|20|24`)
		t.Left("Avisos", `16|note|amplifier
17|note|controls
18|note|control
19|note|what the taps mean`)
	}},
}
