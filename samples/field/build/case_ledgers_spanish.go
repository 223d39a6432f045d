package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// ledgersSpanish are workbooks of a consultant, contractors and a maintenance firm, and lists of a caretaker and an apprentice, in Spanish.
var ledgersSpanish = []typed.Case{
	{File: "ledgers/PL-118 Megafonía planetario.xlsx", Kind: "schedule", Book: func() *excelize.File {
		c := typed.NewBook("Portada")
		c.Put("B2", `
PLANETARIO CERRO LOBO
Proyecto de ejecución. Instalación de megafonía
||
Expediente|PL-118
Línea|100 V
||
Rev.|Fecha|Descripción|Dibujado
0|12/02/2018|Primera emisión|JMR
1|03/05/2018|Se añade aparcamiento|JMR
2|21/06/2018|Atenuadores en aula y tienda|ACP
`)
		c.Bold("B2", "B8:E8")
		l := c.Sheet("Leyenda")
		l.Put("A1", `
Leyenda de tipos
Tipo|Descripción|Pot. máx. (W)|Toma empleada (W)|Color
A|Altavoz empotrado en techo, 6"|6|3|blanco
B|Caja de pared|30|15|negro
C|Bocina exterior IP65|50|30|gris
`)
		l.Bold("A1", "A2:E2")
		p := c.Sheet("Altavoces")
		p.Put("A1", `
Relación de altavoces
Las tomas, según tipo (ver Leyenda)

Plano|Zona|Recinto|Tipo|Uds.|Altura (m)|Circuito
ME-03|Cúpula|Sala de proyección|B|8|4.2|C-01
ME-03|Cúpula|Deambulatorio|A|6|2.8|C-01
ME-03|Cúpula|Cabina de proyección|A|1|2.6|C-01
ME-01|Acogida|Vestíbulo|A|10|3.4|C-02
ME-01|Acogida|Taquilla|A|1|2.6|C-02
ME-01|Acogida|Tienda|A|4|2.6|C-02
ME-02|Exposición|Sala de meteoritos|A|8|3|C-03
ME-02|Exposición|Sala de relojes de sol|A|6|3|C-03
ME-02|Exposición|Aula taller|B|2|2.5|C-03
ME-04|Exterior|Terraza de telescopios|C|2|3.5|C-04
ME-04|Exterior|Aparcamiento|C|2|5|C-04
||Total||50
`)
		p.Bold("A1", "A4:G4", "C16:E16")
		a := c.Sheet("Amplificadores")
		a.Put("A1", `
Rack RK-1, planta sótano

Equipo|Salida|Circuito|Pot. salida (W)|IP|U
AMP-1|1|C1|240|10.20.4.11|12
AMP-1|2|C2|240||
AMP-2|1|C3|160|10.20.4.12|9
AMP-2|2|C4|160||

Atenuadores

Ref.|Recinto|Pot. (W)|Caja
VC-1|Aula-taller|36|universal
VC-2|Tienda|24|universal
VC-3|Cabina proyección|10|superficie
`)
		a.Bold("A1", "A3:F3", "A9", "A11:D11")
		k := c.Sheet("Cables")
		k.Put("A1", `
Cables de altavoz, cobre, libre de halógenos
Circuito|Zona|Sección|Longitud (m)|Bandeja
C.1|Cúpula|2x2,5 mm²|65|B-2
C.2|Acogida|2x1,5 mm²|48|B-1
C.3|Exposición|2x1,5 mm²|72|B-1
C.4|Exterior|2x4 mm²|140|tubo PE
`)
		k.Bold("A1", "A2:E2")
		return c.File
	}, Truth: func(t *typed.Truth) {
		t.Is("PL-118", "PLANETARIO CERRO LOBO", "five sheets; taps by type from the legend; circuits written C-01, C1, C.1; attenuators by room with slightly other names")
		t.Revision("2", false)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Cúpula; amplifier=AMP-1; channel=1", `rows|room|model|count|tap_w|control
5|Sala de proyección|B|8|15|
6|Deambulatorio|A|6|3|
7|Cabina de proyección|A|1|3|VC-3`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Acogida; amplifier=AMP-1; channel=2", `rows|room|model|count|tap_w|control
8|Vestíbulo|A|10|3|
9|Taquilla|A|1|3|
10|Tienda|A|4|3|VC-2`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Exposición; amplifier=AMP-2; channel=1", `rows|room|model|count|tap_w|control
11|Sala de meteoritos|A|8|3|
12|Sala de relojes de sol|A|6|3|
13|Aula taller|B|2|15|VC-1`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Exterior; amplifier=AMP-2; channel=2", `rows|room|model|count|tap_w
14|Terraza de telescopios|C|2|30
15|Aparcamiento|C|2|30`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP-1|1|240|141
AMP-1|2|240|45
AMP-2|1|160|72
AMP-2|2|160|120`)
		t.Amplifiers("", `amplifier|load_w
AMP-1|186
AMP-2|192`)
		t.Controls("", `control|zone|rated_w|load_w
VC-1|Exposición|36|30
VC-2|Acogida|24|12
VC-3|Cúpula|10|3`)
		t.Lines("material=copper; note=one length a zone", `line|zone|length_m|area_mm2
C.1|Cúpula|65|2.5
C.2|Acogida|48|1.5
C.3|Exposición|72|1.5
C.4|Exterior|140|4`)
		t.Left("Altavoces", `16|total|number of loudspeakers`)
	}},

	{File: "ledgers/0733 Estación Fuentelprado.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Medición")
		p.Put("A1", `
Estación de Fuentelprado. Oferta 0733. Megafonía 100 V
||
Zona|Dependencia|Elemento|Cód. art.|Cant.|W|W total
1|Andén 1, marquesina|Proyector|PR-20|12|10|120
1|Andén 1, extremo norte|Bocina|BC-15|2|15|30
|Subtotal zona 1|||14||150
2|Andén 2, marquesina|Proyector|PR-20|12|10|120
2|Paso inferior|Altavoz antivandálico|AV-06|4|6|24
|Subtotal zona 2|||16||144
3|Vestíbulo|Altavoz techo|AT-06|10|6|60
3|Sala de espera|Altavoz techo|AT-06|4|3|12
3|Aseos|Altavoz techo|AT-06|2|1.5|3
|Subtotal zona 3|||16||75
4|Gabinete de circulación|Altavoz techo|AT-06|1|1.5|1.5
4|Taquillas|Altavoz techo|AT-06|2|1.5|3
|Subtotal zona 4|||3||4.5
|TOTAL|||49||373.5
`)
		p.Bold("A1", "A3:G3", "B6:G6", "B9:G9", "B13:G13", "B16:G16", "B17:G17")
		q := p.Sheet("Central")
		q.Put("A1", `
Armario de megafonía, cuarto de comunicaciones
||
Zonas
Nº|Nombre|Etapa|Canal|Sección cable|m
Z1|Andén 1|EP1|A|2x2,5 mm²|210
Z2|Andén 2|EP1|B|2x2,5 mm²|245
Z3|Edificio, público|EP2|A|2x1,5 mm²|60
Z4|Edificio, servicio|EP2|B|2x1,5 mm²|35
||
Etapas
Ref.|Configuración|Peso kg
EP1|2 x 240 W|14,5
EP2|2 x 120 W|11,2
||
El regulador RV-1 (6 W) va en taquillas; los demás recintos, sin regulador.
`)
		q.Bold("A1", "A3", "A10")
		r := p.Sheet("Precios")
		r.Put("A1", `
Partida|Cód. art.|Descripción|Ud.|Cant.|Precio|Importe
MG.01|PR-20|Proyector de sonido 20 W|ud|24|78.5|1884
MG.02|BC-15|Bocina 15 W|ud|2|64|128
MG.03|AV-06|Altavoz antivandálico 6 W|ud|4|51.2|204.8
MG.04|AT-06|Altavoz de techo 6 W|ud|19|22.4|425.6
MG.05||Etapa 2 x 240 W|ud|1|1140|1140
MG.06||Etapa 2 x 120 W|ud|1|860|860
MG.07||Regulador 6 W empotrable|ud|1|31|31
|||||Total|4673.4
`)
		r.Bold("A1:G1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("0733", "Estación de Fuentelprado", "zones 1 and Z1 joined over two sheets; ratings as 2 x 240 W; subtotals; a price sheet that repeats the quantities; one control in a sentence")
		t.Speakers("sheet=Medición; tap_v=100; line_v=100; zone=1; amplifier=EP1; channel=A", `rows|room|count|tap_w|model
4|Andén 1, marquesina|12|10|PR-20
5|Andén 1, extremo norte|2|15|BC-15`)
		t.Speakers("sheet=Medición; tap_v=100; line_v=100; zone=2; amplifier=EP1; channel=B", `rows|room|count|tap_w|model
7|Andén 2, marquesina|12|10|PR-20
8|Paso inferior|4|6|AV-06`)
		t.Speakers("sheet=Medición; tap_v=100; line_v=100; zone=3; amplifier=EP2; channel=A", `rows|room|count|tap_w|model
10|Vestíbulo|10|6|AT-06
11|Sala de espera|4|3|AT-06
12|Aseos|2|1.5|AT-06`)
		t.Speakers("sheet=Medición; tap_v=100; line_v=100; zone=4; amplifier=EP2; channel=B", `rows|room|count|tap_w|control|model
14|Gabinete de circulación|1|1.5||AT-06
15|Taquillas|2|1.5|RV-1|AT-06`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
EP1|A|240|150
EP1|B|240|144
EP2|A|120|75
EP2|B|120|4.5`)
		t.Amplifiers("", `amplifier|load_w
EP1|294
EP2|79.5`)
		t.Controls("", `control|zone|rated_w|load_w
RV-1|4|6|3`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
1|210|2.5
2|245|2.5
3|60|1.5
4|35|1.5`)
		t.Left("Medición", `6|total|subtotal
9|total|subtotal
13|total|subtotal
16|total|subtotal
17|total|sum`)
		t.Left("Precios", `2|other|priced quantity of loudspeakers that are listed elsewhere
3|other|priced quantity of loudspeakers that are listed elsewhere
4|other|priced quantity of loudspeakers that are listed elsewhere
5|other|priced quantity of loudspeakers that are listed elsewhere`)
	}},

	{File: "ledgers/Revisión anual piscina 2019-44.xlsx", Kind: "schedule", Book: func() *excelize.File {
		c := typed.NewBook("Acta")
		c.Put("A1", `
ACTA DE REVISIÓN ANUAL
Instalación:|Piscina cubierta Las Acacias
Orden de trabajo:|2019-44
Técnicos:|R. y M.
Fecha:|14/10/2019
||
Etapa única de 240 W, con dos salidas en paralelo a 100 V. Salida 1: vaso. Salida 2: resto.
`)
		c.Bold("A1")
		p := c.Sheet("Altavoces")
		p.Put("A1", `
Línea|Nº|Sitio|Toma|Estado|Observaciones
1 Vaso|'1.1|Playa norte|10 W|bien|
1 Vaso|'1.2|Playa norte|10 W|bien|
1 Vaso|'1.3|Playa norte|10 W|bien|tornillos oxidados, cambiados
1 Vaso|'1.4|Playa sur|10 W|bien|
1 Vaso|'1.5|Playa sur|10 W|retirado|cono roto, pendiente de presupuesto
1 Vaso|'1.6|Playa sur|10 W|bien|
1 Vaso|'1.7|Grada|10 W|bien|
1 Vaso|'1.8|Grada|10 W|bien|
2 Resto|'2.1|Vestíbulo|3 W|bien|
2 Resto|'2.2|Vestíbulo|3 W|bien|
2 Resto|'2.3|Vestuario fem.|3 W|bien|
2 Resto|'2.4|Vestuario masc.|3 W|bien|
2 Resto|'2.5|Gimnasio|6 W|bien|
2 Resto|'2.6|Gimnasio|6 W|bien|distorsiona algo
2 Resto|'2.7|Botiquín|1,5 W|bien|
|R1|Cuarto técnico|10 W|repuesto|en caja, sin estrenar
`)
		p.Bold("A1:F1")
		m := c.Sheet("Medidas")
		m.Put("A1", `
Medidas en el armario
||
Línea|Impedancia (ohm)|Aislamiento (Mohm)|Potencia calculada (W)|Resultado
Vaso|143|>20|70|correcto
Resto|392|>20|25,5|correcto
||
Reguladores de volumen
Sitio|Ref.|W|Prueba
Gimnasio|V1|24|correcto
Botiquín|V2|6|mando suelto, fijado
`)
		m.Bold("A1", "A3:E3", "A7", "A8:D8")
		return c.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2019-44", "Piscina cubierta Las Acacias", "one loudspeaker taken down, one spare; amplifier in a sentence on the cover; test values that are no taps; controls on the sheet of measurements")
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=1 Vaso; channel=1; tap_w=10", `rows|tag|room
2|1.1|Playa norte
3|1.2|Playa norte
4|1.3|Playa norte
5|1.4|Playa sur
7|1.6|Playa sur
8|1.7|Grada
9|1.8|Grada`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=2 Resto; channel=2", `rows|tag|room|tap_w|control
10|2.1|Vestíbulo|3|
11|2.2|Vestíbulo|3|
12|2.3|Vestuario fem.|3|
13|2.4|Vestuario masc.|3|
14|2.5|Gimnasio|6|V1
15|2.6|Gimnasio|6|V1
16|2.7|Botiquín|1.5|V2`)
		t.Channels("line_v=100", `channel|load_w
1|70
2|25.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|95.5`)
		t.Controls("", `control|zone|rated_w|load_w
V1|2 Resto|24|12
V2|2 Resto|6|1.5`)
		t.Left("Altavoces", `6|removed|taken down, cone broken
17|spare|in its box`)
	}},

	{File: "ledgers/altavoces del instituto.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Altavoces del instituto;;;;
(lo apunto yo, el conserje, curso 2014-15);;;;
;;;;
Dónde está;Cuántos;Vatios;Llave de volumen;Cosas
Pasillo bajo;6;3;;
Pasillo primero;6;3;;
Pasillo segundo;5;3;;falta uno desde la obra, no estaba nunca
Patio (bocinas);3;15;;la de la pista suena rajada
Gimnasio;2;15;sí, de 50 W;
Biblioteca;4;3;sí, de 20 W;
Sala de profesores;2;3;sí, de 20 W;
Salón de actos;4;6;;tiene su equipo aparte, pero estos son del timbre
Comedor;4;6;;
Conserjería;1;1,5;;
;;;;
Todo va a un amplificador de 240 W a 100 V que está en conserjería;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "caretaker's plain list; controls without names in a column; the only amplifier in the last line")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|note
5|Pasillo bajo|6|3|
6|Pasillo primero|6|3|
7|Pasillo segundo|5|3|
8|Patio (bocinas)|3|15|
9|Gimnasio|2|15|unnamed
10|Biblioteca|4|3|unnamed
11|Sala de profesores|2|3|unnamed
12|Salón de actos|4|6|
13|Comedor|4|6|
14|Conserjería|1|1.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|193.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|193.5`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Gimnasio|50|30
|Biblioteca|20|12
|Sala de profesores|20|6`)
	}},

	{File: "ledgers/Jardín botánico EPA-62 as built.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("ALTAVOCES")
		p.Put("A1", `
JARDÍN BOTÁNICO DE PEÑARRUBIA|||||||EPA-62
Documentación final de obra: altavoces|||||||Rev. C
||
Etiqueta|Nº serie|Emplazamiento|Tipo|Toma a 100 V|Línea|Fecha montaje
INV-01|44-1207|Invernadero tropical|columna|20 W|L1|04-03
INV-02|44-1208|Invernadero tropical|columna|20 W|L1|04-03
INV-03|44-1215|Invernadero tropical|columna|20 W|L1|04-03
INV-04|44-1219|Invernadero desértico|columna|20 W|L1|05-03
INV-05|44-1220|Invernadero desértico|columna|20 W|L1|05-03
CAM-01|51-0033|Camino de las encinas|seta|10 W|L2|11-03
CAM-02|51-0034|Camino de las encinas|seta|10 W|L2|11-03
CAM-03|51-0035|Camino de las encinas|seta|10 W|L2|11-03
CAM-04|51-0041|Estanque|seta|10 W|L2|11-03
CAM-05|51-0042|Estanque|seta|10 W|L2|12-03
CAM-06|51-0043|Rosaleda|seta|5 W|L2|12-03
CAM-07|51-0044|Rosaleda|seta|5 W|L2|12-03
EDI-01||Recepción|techo|3 W|L3|20-03
EDI-02||Recepción|techo|3 W|L3|20-03
EDI-03||Sala de semillas|techo|3 W|L3|20-03
EDI-04||Sala de semillas|techo|3 W|L3|20-03
EDI-05||Herbario|techo|1,5 W|L3|21-03
`)
		p.Bold("A1", "A4:G4")
		q := p.Sheet("RACK")
		q.Put("A1", `
Línea|Amplificador|Salida|W|Destino
L-1|AM 01|S1|240|Invernaderos
L-2|AM 01|S2|240|Caminos
L-3|AM 02|S1|60|Edificio
-|AM 02|S2|60|reserva
`)
		q.Bold("A1:E1")
		r := p.Sheet("MANDOS")
		r.Put("A1", `
Mando|W|Actúa sobre|Situado en
M-1|10|EDI-03 y EDI-04|Sala de semillas, junto a puerta
M-2|5|EDI-05|Herbario
`)
		r.Bold("A1:D1")
		s := p.Sheet("CABLES")
		s.Put("A1", `
Cable|De|A|Manguera|Metros
W1|AM01-S1|INV-01|RV-K 2x4|55
W2|INV-01|INV-02|RV-K 2x4|12
W3|INV-02|INV-03|RV-K 2x4|12
W4|INV-03|INV-04|RV-K 2x4|38
W5|INV-04|INV-05|RV-K 2x4|14
W6|AM01-S2|CAM-01|RV-K 2x6|120
W7|AM02-S1|EDI-01|H07Z 2x1,5|18
`)
		s.Bold("A1:E1")
		v := p.Sheet("CAMBIOS")
		v.Put("A1", `
Rev.|Fecha|Cambio
A|02-04|Emisión
B|15-04|CAM-06 y CAM-07 bajan de 10 a 5 W por queja de vecinos
C|30-04|Se corrige el cable W6 a 2x6
`)
		v.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("EPA-62", "JARDÍN BOTÁNICO DE PEÑARRUBIA", "five sheets joined by lines L1 and L-1 and by tags; cables from-to; a reserve output; a log of changes already made; serial numbers and dates to be ignored")
		t.Revision("C", false)
		t.Speakers("sheet=ALTAVOCES; tap_v=100; line_v=100; amplifier=AM 01; channel=S1; tap_w=20", `rows|tag|room
5|INV-01|Invernadero tropical
6|INV-02|Invernadero tropical
7|INV-03|Invernadero tropical
8|INV-04|Invernadero desértico
9|INV-05|Invernadero desértico`)
		t.Speakers("sheet=ALTAVOCES; tap_v=100; line_v=100; amplifier=AM 01; channel=S2", `rows|tag|room|tap_w
10|CAM-01|Camino de las encinas|10
11|CAM-02|Camino de las encinas|10
12|CAM-03|Camino de las encinas|10
13|CAM-04|Estanque|10
14|CAM-05|Estanque|10
15|CAM-06|Rosaleda|5
16|CAM-07|Rosaleda|5`)
		t.Speakers("sheet=ALTAVOCES; tap_v=100; line_v=100; amplifier=AM 02; channel=S1", `rows|tag|room|tap_w|control
17|EDI-01|Recepción|3|
18|EDI-02|Recepción|3|
19|EDI-03|Sala de semillas|3|M-1
20|EDI-04|Sala de semillas|3|M-1
21|EDI-05|Herbario|1.5|M-2`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w|note
AM 01|S1|240|100|
AM 01|S2|240|60|
AM 02|S1|60|13.5|
AM 02|S2|60|0|reserve`)
		t.Amplifiers("", `amplifier|load_w
AM 01|160
AM 02|13.5`)
		t.Controls("", `control|rated_w|load_w
M-1|10|6
M-2|5|1.5`)
		t.Lines("", `line|from|to|length_m|area_mm2
W1|AM01-S1|INV-01|55|4
W2|INV-01|INV-02|12|4
W3|INV-02|INV-03|12|4
W4|INV-03|INV-04|38|4
W5|INV-04|INV-05|14|4
W6|AM01-S2|CAM-01|120|6
W7|AM02-S1|EDI-01|18|1.5`)
	}},

	{File: "ledgers/practicas semana 3 cocheras.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Hoja1")
		p.Put("A1", `
Practicas semana 3 - Cocheras de autobuses de Torrelino
lo que he ido contando con Manolo

sitio|altavoz|tiene puesto|zona del ampli
taller, foso 1|bocina|15w|1
taller, foso 2|bocina|15w|1
taller, foso 3|bocina|15w|1
taller, pintura|bocina|15w|1
lavado|bocina|10w|1
nave, lado calle|bocina|30w|2
nave, fondo|bocina|30w|2
nave, surtidor|bocina|15w|2
oficina trafico|techo|3w|3
oficina trafico|techo|3w|3
sala conductores|techo|6w|3
sala conductores|techo|6w|3
vestuario|techo|3w|3
pasillo|techo|no pude abrirlo|3

el ampli pone 360W 100V, 3 zonas. en sala conductores hay un mando de 24w
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Cocheras de autobuses de Torrelino", "apprentice's list, a row a loudspeaker, one tap not seen; amplifier and control in a sentence below")
		t.Speakers("sheet=Hoja1; tap_v=100; line_v=100; zone=1; channel=1", `rows|room|tap_w
5|taller, foso 1|15
6|taller, foso 2|15
7|taller, foso 3|15
8|taller, pintura|15
9|lavado|10`)
		t.Speakers("sheet=Hoja1; tap_v=100; line_v=100; zone=2; channel=2", `rows|room|tap_w
10|nave, lado calle|30
11|nave, fondo|30
12|nave, surtidor|15`)
		t.Speakers("sheet=Hoja1; tap_v=100; line_v=100; zone=3; channel=3", `rows|room|tap_w|note
13|oficina trafico|3|
14|oficina trafico|3|
15|sala conductores|6|unnamed
16|sala conductores|6|unnamed
17|vestuario|3|
18|pasillo||`)
		t.Channels("line_v=100", `channel|load_w|load_min_w
1|70|
2|75|
3||21`)
		t.Amplifiers("", `amplifier|rated_w
|360`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|3|24|12`)
		t.Asks("Hoja1", `18|asked|tap of the loudspeaker in the corridor`)
	}},

	{File: "ledgers/Museo Minero MM-09 mediciones.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Planta sótano")
		p.Put("A1", `
Museo Minero de Arroyofrío (obra MM-09)|||Planta sótano
Local|Nombre|Nº altavoces|W cada uno|Línea
S.01|Galería reproducida|8|6|4
S.02|Cuadra de mulas|2|6|4
S.03|Polvorín|1|6|4
S.04|Sala de bombas|2|10|4
|Suma|13||
`)
		p.Bold("A1", "A2:E2")
		q := p.Sheet("Planta baja")
		q.Put("A1", `
Museo Minero de Arroyofrío (obra MM-09)|||Planta baja
Local|Nombre|Nº altavoces|W cada uno|Línea
B.01|Zaguán|4|3|1
B.02|Sala de lampistería|6|3|1
B.03|Sala de maquetas|6|3|1
B.04|Sala de minerales|8|3|2
B.05|Auditorio|6|6|2
B.06|Aseos|3|1.5|1
|Suma|33||
`)
		q.Bold("A1", "A2:E2")
		r := p.Sheet("Planta alta")
		r.Put("A1", `
Museo Minero de Arroyofrío (obra MM-09)|||Planta alta
Local|Nombre|Nº altavoces|W cada uno|Línea
A.01|Archivo|2|3|3
A.02|Despachos|5|1.5|3
A.03|Sala de reuniones|2|3|3
A.04|Balconada|2|10|3
|Suma|11||
`)
		r.Bold("A1", "A2:E2")
		s := p.Sheet("Cuadro de etapas")
		s.Put("A1", `
Líneas de 100 V

Línea nº|Etapa|Pot. etapa
1|Etapa I|60 W
2|Etapa II|120 W
3|Etapa III|60 W
4|Etapa IV|120 W

Potenciómetros de línea
Local|Marca en plano|W
B05|P1|50
A03|P2|12
A02|P3|12
`)
		s.Bold("A1", "A3:C3", "A9", "A10:C10")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("MM-09", "Museo Minero de Arroyofrío", "a sheet a floor, one sheet of amplifiers and controls; rooms B.05 and B05; one line spread over two rooms lists")
		t.Speakers("sheet=Planta sótano; tap_v=100; line_v=100; zone=Planta sótano; amplifier=Etapa IV; channel=4; note=floor as zone", `rows|room|count|tap_w
3|Galería reproducida|8|6
4|Cuadra de mulas|2|6
5|Polvorín|1|6
6|Sala de bombas|2|10`)
		t.Speakers("sheet=Planta baja; tap_v=100; line_v=100; zone=Planta baja; note=floor as zone", `rows|room|count|tap_w|control|amplifier|channel
3|Zaguán|4|3||Etapa I|1
4|Sala de lampistería|6|3||Etapa I|1
5|Sala de maquetas|6|3||Etapa I|1
6|Sala de minerales|8|3||Etapa II|2
7|Auditorio|6|6|P1|Etapa II|2
8|Aseos|3|1.5||Etapa I|1`)
		t.Speakers("sheet=Planta alta; tap_v=100; line_v=100; zone=Planta alta; amplifier=Etapa III; channel=3; note=floor as zone", `rows|room|count|tap_w|control
3|Archivo|2|3|
4|Despachos|5|1.5|P3
5|Sala de reuniones|2|3|P2
6|Balconada|2|10|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
Etapa I|1|60|52.5
Etapa II|2|120|60
Etapa III|3|60|39.5
Etapa IV|4|120|86`)
		t.Amplifiers("", `amplifier|rated_w|load_w
Etapa I|60|52.5
Etapa II|120|60
Etapa III|60|39.5
Etapa IV|120|86`)
		t.Controls("", `control|rated_w|load_w
P1|50|36
P2|12|6
P3|12|7.5`)
		t.Left("Planta sótano", `7|total|sum`)
		t.Left("Planta baja", `9|total|sum`)
		t.Left("Planta alta", `7|total|sum`)
	}},
}
