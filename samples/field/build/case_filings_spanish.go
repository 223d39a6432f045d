package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

var filingsSpanish = []typed.Case{

	{File: "filings/avisos/3308 estacion listado.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Listado")
		p.Put("A1", `
Estación de Peñarrubla - listado de altavoces
Aviso|3308||Técnico|R.
||
Nº|Zona|Sitio|Altavoz|Toma|Etapa|Salida|Potenc.
1|Andenes|Andén 1|bocina|T4 (15W)|E1|1|
2|íd.|Andén 1|íd.|T4 (15W)|E1|1|
3|íd.|Andén 2|íd.|T4 (15W)|E1|1|
4|íd.|Andén 2|íd.|T4 (15W)|E1|1|
5|Vestíbulo|Taquillas|techo|T2 (3W)|E1|2|P1
6|íd.|Taquillas|íd.|T2 (3W)|E1|2|P1
7|íd.|Sala de espera|íd.|T3 (6W)|E1|2|
8|íd.|Sala de espera|íd.|T3 (6W)|E1|2|
9|íd.|Sala de espera|íd.|T3 (6W)|E1|2|
10|íd.|Consigna|íd.|T1 (1,5W)|E1|2|P2
11|Oficinas|Despacho jefe|techo|T1 (1,5W)|E1|2|P3
12|íd.|Pasillo|íd.|T2 (3W)|E1|2|
13|íd.|Almacén|repuesto, en su caja||||
||
E1: 2 salidas de 120 W, línea de 100 V
P1 de 12 W, P2 y P3 de 6 W
`)
		p.Bold("A1", "A4:H4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("3308", "Estación de Peñarrubla", "a row a loudspeaker with tap number and watts, ditto words, a spare in its box, ratings in two sentences below")
		t.Speakers("sheet=Listado; tap_v=100; line_v=100; amplifier=E1; channel=1; zone=Andenes", `rows|room|tap_w
5..6|Andén 1|15
7..8|Andén 2|15`)
		t.Speakers("sheet=Listado; tap_v=100; line_v=100; amplifier=E1; channel=2", `rows|zone|room|tap_w|control
9..10|Vestíbulo|Taquillas|3|P1
11..13|Vestíbulo|Sala de espera|6|
14|Vestíbulo|Consigna|1.5|P2
15|Oficinas|Despacho jefe|1.5|P3
16|Oficinas|Pasillo|3|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
E1|1|120|60
E1|2|120|30`)
		t.Amplifiers("", `amplifier|load_w
E1|90`)
		t.Controls("", `control|rated_w|load_w
P1|12|6
P2|6|1.5
P3|6|1.5`)
		t.Left("Listado", `17|spare|in its box`)
	}},

	{File: "filings/proyectos/22-06 mediciones piscina.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Mediciones")
		p.Put("A1", `
Piscina municipal de Fuentelarga|||||||Rev.|Fecha|Motivo
Proyecto 22-06|||||||0|10/02/2022|primera
Megafonía, línea de 100 V|||||||1|05/05/2022|taquilla añadida
||
Zona|Local|Altavoz||||Etapa||Cable||Observaciones
||Modelo|Uds|W/ud|W total|Equipo|Salida|mm²|m|
Vaso grande|Playa norte|BOC-15|4|15|60|ET1|1|2.5|60|
Vaso grande|Playa sur|BOC-15|4|15|60|ET1|1|2.5|45|
Subtotal|||8||120||||105|
Vaso infantil|Playa|BOC-10|3|10|30|ET1|2|2.5|38|
Subtotal|||3||30||||38|
Vestuarios|Masculino|TEC-6|3|3|9|ET2|1|1.5|52|atenuador A-1, 12 W
Vestuarios|Femenino|TEC-6|3|3|9|ET2|1|1.5|14|atenuador A-2, 12 W
Vestuarios|Monitores|TEC-6|1|1.5|1.5|ET2|1|1.5|8|
Subtotal|||7||19.5||||74|
Acceso|Taquilla|TEC-6|1|3|3|ET2|2|1.5|20|atenuador A-3, 5 W
Acceso|Vestíbulo|TEC-6|4|3|12|ET2|2|1.5|25|
Subtotal|||5||15||||45|
Total|||23||184.5||||262|
||
ET1 de 2 x 240 W, ET2 de 2 x 60 W
`)
		p.Merge("A5:A6", "B5:B6", "C5:F5", "G5:H5", "I5:J5", "K5:K6")
		p.Bold("A1", "A5:K6", "A9:K9", "A11:K11", "A15:K15", "A18:K18", "A19:K19")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("22-06", "Piscina municipal de Fuentelarga", "two header lines with merged titles, subtotals a zone, model numbers that look like watts, controls in the remarks, a revision table beside the title")
		t.Revision("1", false)
		t.Speakers("sheet=Mediciones; tap_v=100; line_v=100", `rows|zone|room|model|count|tap_w|amplifier|channel|control
7|Vaso grande|Playa norte|BOC-15|4|15|ET1|1|
8|Vaso grande|Playa sur|BOC-15|4|15|ET1|1|
10|Vaso infantil|Playa|BOC-10|3|10|ET1|2|
12|Vestuarios|Masculino|TEC-6|3|3|ET2|1|A-1
13|Vestuarios|Femenino|TEC-6|3|3|ET2|1|A-2
14|Vestuarios|Monitores|TEC-6|1|1.5|ET2|1|
16|Acceso|Taquilla|TEC-6|1|3|ET2|2|A-3
17|Acceso|Vestíbulo|TEC-6|4|3|ET2|2|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
ET1|1|240|120
ET1|2|240|30
ET2|1|60|19.5
ET2|2|60|15`)
		t.Amplifiers("", `amplifier|load_w
ET1|150
ET2|34.5`)
		t.Controls("", `control|rated_w|load_w
A-1|12|9
A-2|12|9
A-3|5|3`)
		t.Lines("note=one length a row", `zone|length_m|area_mm2
Vaso grande|60|2.5
Vaso grande|45|2.5
Vaso infantil|38|2.5
Vestuarios|52|1.5
Vestuarios|14|1.5
Vestuarios|8|1.5
Acceso|20|1.5
Acceso|25|1.5`)
		t.Left("Mediciones", `9|total|subtotal
11|total|subtotal
15|total|subtotal
18|total|subtotal
19|total|total`)
	}},

	{File: "filings/obras/540 Teatro Almenillas.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Altavoces")
		p.Put("A1", `
Teatro Las Almenillas, obra 540
||
Ref.|Recinto|Tipo|W|Circuito
A-01|Sala|columna|10|C1
A-02|Sala|columna|10|C1
A-03|Sala|columna|10|C1
A-04|Sala|columna|10|C1
A-05|Sala|columna|10|C1
A-06|Sala|columna|10|C1
A-07|Vestíbulo|techo|6|C2
A-08|Vestíbulo|techo|6|C2
A-09|Vestíbulo|techo|6|C2
A-10|Vestíbulo|techo|6|C2
A-11|Taquilla|techo|3|C2
A-12|Taquilla|techo|3|C2
A-13|Camerino 1|techo|3|C3
A-14|Camerino 2|techo|3|C3
A-15|Camerino 3|techo|3|C3
A-16|Camerino 4|techo|3|C3
A-17|Regiduría|mural|1.5|C3
A-18|Foso|mural|6|C3
A-19|Foso|mural|6|C3
`)
		p.Bold("A1", "A3:E3")
		q := p.Sheet("Etapas")
		q.Put("A1", `
Etapa|Canal|W a 100 V|Circuito
E-1|1|120|C1
E-1|2|120|C2
E-2|1|60|C3
`)
		q.Bold("A1:D1")
		r := p.Sheet("Atenuadores")
		r.Put("A1", `
Atenuador|W|Altavoces
AT-1|50|A-07 a A-10
AT-2|12|A-11, A-12
AT-3|24|A-13 a A-16
`)
		r.Bold("A1:C1")
		s := p.Sheet("Cables")
		s.Put("A1", `
Circuito|Desde|Hasta|Sección|Metros
C1|Rack|Sala|2 x 2,5 mm²|55
C2|Rack|Vestíbulo|2 x 1,5 mm²|48
C3|Rack|Camerino 1|2 x 1,5 mm²|70
C3|Camerino 4|Foso|2 x 1,5 mm²|22
`)
		s.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("540", "Teatro Las Almenillas", "four sheets: loudspeakers by tag, circuits joined to outputs, attenuators that list their loudspeakers as ranges of tags, cables by circuit")
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; amplifier=E-1; channel=1", `rows|tag|room|tap_w
4..9|A-01..|Sala|10`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; amplifier=E-1; channel=2", `rows|tag|room|tap_w|control
10..13|A-07..|Vestíbulo|6|AT-1
14..15|A-11..|Taquilla|3|AT-2`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; amplifier=E-2; channel=1", `rows|tag|room|tap_w|control
16|A-13|Camerino 1|3|AT-3
17|A-14|Camerino 2|3|AT-3
18|A-15|Camerino 3|3|AT-3
19|A-16|Camerino 4|3|AT-3
20|A-17|Regiduría|1.5|
21..22|A-18..|Foso|6|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
E-1|1|120|60
E-1|2|120|30
E-2|1|60|25.5`)
		t.Amplifiers("", `amplifier|load_w
E-1|90
E-2|25.5`)
		t.Controls("", `control|rated_w|load_w
AT-1|50|24
AT-2|12|6
AT-3|24|12`)
		t.Lines("", `line|from|to|length_m|area_mm2
C1|Rack|Sala|55|2.5
C2|Rack|Vestíbulo|48|1.5
C3|Rack|Camerino 1|70|1.5
C3|Camerino 4|Foso|22|1.5`)
	}},
}
