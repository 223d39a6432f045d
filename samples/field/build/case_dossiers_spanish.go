package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A maintenance firm, an inspector and a school electrician, in Spanish.
var dossiersSpanish = []typed.Case{

	{File: "dossiers/contratos/Jardín Las Albercas.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Altavoces")
		p.Put("A1", `
Jardín Botánico Las Albercas|||||Contrato MN-58
Cód.|Zona|Punto|Tipo|W|Línea|Reg.|Estado
JB-01|Invernadero|Palmeras|proyector|10|LA||en servicio
JB-02|Invernadero|Palmeras|proyector|10|LA||en servicio
JB-03|Invernadero|Cactus|proyector|6|LA||en servicio
JB-04|Umbráculo|Paseo|proyector|6|LA||en servicio
JB-05|Umbráculo|Paseo|proyector|6|LA||en servicio
JB-06|Aulas|Aula 1|techo|3|LB|R-1|en servicio
JB-07|Aulas|Aula 1|techo|3|LB|R-1|en servicio
JB-08|Aulas|Aula 2|techo|3|LB|R-2|en servicio
JB-09|Aulas|Aula 2|techo|3|LB|R-2|en servicio
JB-10|Herbario|Sala|techo|1.5|LB|R-3|en servicio
JB-11|Paseo central|Farola 4|columna|15|LC||en servicio
JB-12|Paseo central|Farola 9|columna|15|LC||en servicio
JB-13|Paseo central|Farola 14|columna|15|LC||en servicio
JB-14|Estanque|Embarcadero|columna|15|LC||en servicio
JB-15|Estanque|Isla|columna|15|LC||pendiente de montar
`)
		p.Bold("A1", "A2:H2")
		e := p.Sheet("Etapas")
		e.Put("A1", `
Etapa|Canal|Línea|Potencia|Tensión|Cable|Longitud
ET1|1|LA|120 W|100 V|2 x 2,5 mm²|140 m
ET1|2|LB|60 W|100 V|2 x 1,5 mm²|85 m
ET2|1|LC|240 W|100 V|2 x 4 mm²|310 m
`)
		e.Bold("A1:G1")
		r := p.Sheet("Reguladores")
		r.Put("A1", `
Reg.|Lugar|W máx.
R-1|Aula 1|12
R-2|Aula 2|12
R-3|Herbario|5
`)
		r.Bold("A1:C1")
		v := p.Sheet("Visitas")
		v.Put("A1", `
Año|Trabajo hecho
2019|JB-03 cambiado por otro igual
2021|Limpieza de bornes en las farolas
2023|JB-15 en almacén, falta la canalización hasta la isla
`)
		v.Bold("A1:B1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("MN-58", "Jardín Botánico Las Albercas", "four sheets: list by line, amplifiers with cables, controls, visits; one loudspeaker still to be fitted")
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100", `rows|tag|zone|room|tap_w|amplifier|channel|control
3|JB-01|Invernadero|Palmeras|10|ET1|1|
4|JB-02|Invernadero|Palmeras|10|ET1|1|
5|JB-03|Invernadero|Cactus|6|ET1|1|
6|JB-04|Umbráculo|Paseo|6|ET1|1|
7|JB-05|Umbráculo|Paseo|6|ET1|1|
8|JB-06|Aulas|Aula 1|3|ET1|2|R-1
9|JB-07|Aulas|Aula 1|3|ET1|2|R-1
10|JB-08|Aulas|Aula 2|3|ET1|2|R-2
11|JB-09|Aulas|Aula 2|3|ET1|2|R-2
12|JB-10|Herbario|Sala|1.5|ET1|2|R-3
13|JB-11|Paseo central|Farola 4|15|ET2|1|
14|JB-12|Paseo central|Farola 9|15|ET2|1|
15|JB-13|Paseo central|Farola 14|15|ET2|1|
16|JB-14|Estanque|Embarcadero|15|ET2|1|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
ET1|1|120|38
ET1|2|60|13.5
ET2|1|240|60`)
		t.Amplifiers("", `amplifier|rated_w|load_w
ET1||51.5
ET2|240|60`)
		t.Controls("", `control|rated_w|load_w
R-1|12|6
R-2|12|6
R-3|5|1.5`)
		t.Lines("note=one length a line", `line|length_m|area_mm2
LA|140|2.5
LB|85|1.5
LC|310|4`)
		t.Left("Altavoces", `17|future|still to be fitted`)
		t.Left("Visitas", `2|log|work done
3|log|work done
4|log|work done`)
	}},

	{File: "dossiers/inspecciones/Acta 1180-24.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Acta")
		p.Put("A1", `
Acta 1180/24 - Estación de autobuses Puente Hondo, altavoces
Un solo amplificador de 240 W con una línea de 100 V. Vale lo comprobado, no el plano.

Dependencia|Según plano|Comprobado|Observaciones
Andenes 1 a 4|4 x 10 W|4 x 10 W|
Andenes 5 a 8|4 x 10 W|3 x 10 W|el cuarto se retiró tras un golpe
Vestíbulo|6 x 6 W|6 x 6 W|por regulador RG-A de 60 W, en conserjería
Taquillas|2 x 1,5 W|2 x 3 W|por regulador RG-B de 10 W
Sala de espera|4 x 3 W|4 x 3 W|también por RG-A
Consigna|1 x 6 W|no existe|
Aseos|2 x 1,5 W|2 x 1,5 W|
Cochera|2 x 15 W|2 x 15 W|bocinas
Oficina||1 x 1,5 W|no figura en el plano
`)
		p.Bold("A1", "A4:D4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("1180/24", "Estación de autobuses Puente Hondo", "drawn against checked, count and tap in one cell; the checked value counts; one row does not exist; controls in remarks")
		t.Speakers("sheet=Acta; tap_v=100; line_v=100", `rows|room|count|tap_w|control
5|Andenes 1 a 4|4|10|
6|Andenes 5 a 8|3|10|
7|Vestíbulo|6|6|RG-A
8|Taquillas|2|3|RG-B
9|Sala de espera|4|3|RG-A
11|Aseos|2|1.5|
12|Cochera|2|15|
13|Oficina|1|1.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|158.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|158.5`)
		t.Controls("", `control|rated_w|load_w
RG-A|60|48
RG-B|10|6`)
		t.Left("Acta", `10|not fitted|does not exist`)
	}},

	{File: "dossiers/escuela/bocinas Los Almendros.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Hoja1")
		p.Put("A1", `
Voceo escuela Los Almendros, todo en 70 V
Planta|Lugar|Bocinas|W c/u|Ampli y salida|Atenuador|Nota
Baja|Dirección|1|1|Ampli 1 sal. 1|AT-1 (5 W)
íd.|Sala de maestros|2|2|íd.|AT-2 (10 W)
íd.|Pasillo|4|2|íd.
íd.|Salones 1 a 6|6|2|íd.||una por salón
íd.|Patio|2|15|Ampli 1 sal. 2
íd.|Cancha|2|15|íd.
Alta|Salones 7 a 12|6|2|Ampli 2 sal. 1||una por salón
íd.|Pasillo|4|2|íd.
íd.|Laboratorio|2|4|íd.|AT-3 (10 W)
íd.|Biblioteca|4|4|íd.|AT-4 (35 W)
íd.|Salón de cómputo|2|4|íd.||quitadas en la remodelación
Azotea|Torre|1|30|Ampli 2 sal. 2||a futuro, solo está el tubo

Ampli 1: dos salidas de 120 W
Ampli 2: dos salidas de 60 W
`)
		p.Bold("A1", "A2:G2")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "escuela Los Almendros", "ditto words for floor and output; control ratings in brackets, output ratings in two sentences below; one row removed, one of the future")
		t.Speakers("sheet=Hoja1; tap_v=70.7; line_v=70.7; zone=Baja; note=floor as zone; amplifier=Ampli 1", `rows|room|count|tap_w|channel|control
3|Dirección|1|1|1|AT-1
4|Sala de maestros|2|2|1|AT-2
5|Pasillo|4|2|1|
6|Salones 1 a 6|6|2|1|
7|Patio|2|15|2|
8|Cancha|2|15|2|`)
		t.Speakers("sheet=Hoja1; tap_v=70.7; line_v=70.7; zone=Alta; note=floor as zone; amplifier=Ampli 2; channel=1", `rows|room|count|tap_w|control
9|Salones 7 a 12|6|2|
10|Pasillo|4|2|
11|Laboratorio|2|4|AT-3
12|Biblioteca|4|4|AT-4`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
Ampli 1|1|120|25
Ampli 1|2|120|60
Ampli 2|1|60|44
Ampli 2|2|60|0`)
		t.Amplifiers("", `amplifier|load_w
Ampli 1|85
Ampli 2|44`)
		t.Controls("", `control|rated_w|load_w
AT-1|5|1
AT-2|10|4
AT-3|10|8
AT-4|35|16`)
		t.Left("Hoja1", `13|removed|taken out in the refurbishment
14|future|only the conduit is there`)
	}},
}
