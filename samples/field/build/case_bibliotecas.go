package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A town's technician and an engineering office in Spanish; a museum's technician and a contractor in Italian; a maintenance firm and an electrician in Dutch.
var bibliotecas = []typed.Case{
	{File: "partes/biblioteca 88-21.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Biblioteca municipal de Torrelinde, parte 88/21;;;;;;
N.º;Zona;Sala;Altavoz;Toma (W);Línea;Atenuador
1;Adultos;Sala de lectura;techo;3;L1;AT1
2;Adultos;Sala de lectura;techo;3;L1;AT1
3;Adultos;Sala de lectura;techo;3;L1;AT1
4;Adultos;Sala de lectura;techo;3;L1;AT1
5;Adultos;Hemeroteca;techo;3;L1;
6;Adultos;Hemeroteca;techo;3;L1;
7;Infantil;Sala de cuentos;techo;1,5;L2;AT2
8;Infantil;Sala de cuentos;techo;1,5;L2;AT2
9;Infantil;Pasillo;techo;1,5;L2;
10;Administración;Dirección;pared;1,5;L2;AT3
11;Administración;Sala de juntas;pared;3;L2;AT4
12;Administración;Vestíbulo;pared;6;L2;
13;Exterior;Entrada;bocina;10;L2;
;;;;;;
L1 = etapa E1, salida 1, 60 W, línea de 100 V;;;;;;
L2 = etapa E1, salida 2, 60 W, línea de 100 V;;;;;;
AT1 es de 24 W, AT2 de 12 W, AT3 y AT4 de 5 W;;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("88/21", "Biblioteca municipal de Torrelinde", "plain; one row a loudspeaker; lines, outputs and ratings of controls in sentences below")
		t.Speakers("tap_v=100; line_v=100; zone=Adultos; amplifier=E1; channel=1; tap_w=3; room=Sala de lectura; control=AT1", `rows
3..6`)
		t.Speakers("tap_v=100; line_v=100; zone=Adultos; amplifier=E1; channel=1; tap_w=3; room=Hemeroteca", `rows
7..8`)
		t.Speakers("tap_v=100; line_v=100; amplifier=E1; channel=2", `rows|zone|room|tap_w|control
9|Infantil|Sala de cuentos|1.5|AT2
10|Infantil|Sala de cuentos|1.5|AT2
11|Infantil|Pasillo|1.5|
12|Administración|Dirección|1.5|AT3
13|Administración|Sala de juntas|3|AT4
14|Administración|Vestíbulo|6|
15|Exterior|Entrada|10|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
E1|1|60|18
E1|2|60|25`)
		t.Amplifiers("", `amplifier|rated_w|load_w
E1|120|43`)
		t.Controls("", `control|rated_w|load_w
AT1|24|12
AT2|12|3
AT3|5|1.5
AT4|5|3`)
	}},

	{File: "proyectos/733 Peñalera zonas.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Zonas")
		p.Put("A1", `
Jardín botánico de Peñalera
Proyecto 733, megafonía en línea de 100 V
||
Zona|Composición|Carga (W)|Etapa|Salida|W por salida|Regulador
Invernadero tropical|6 x 10 W|60|E1|1|120
Invernadero desértico|4 x 6 W + 2 x 3 W|30|E1|2|120|RV1 de 60 W
Orquidiario|4 x 6 W|24|E1|3|120
Aulas|3 x 3 W + 1 x 1,5 W|10.5|E2|1|60|RV2 de 24 W
Taquillas|2 x 1,5 W|3|E2|2|60
Rosaleda|8 x 15 W|120|E3|1|240
Paseo central|6 x 15 W|90|E3|2|240
Total||337.5
`)
		p.Bold("A1", "A4:G4", "A12:C12")
		q := p.Sheet("Acometidas")
		q.Put("A1", `
Zona|Sección (mm²)|Longitud (m)
Invernadero tropical|2.5|140
Invernadero desértico|2.5|165
Orquidiario|1.5|90
Aulas|1.5|60
Taquillas|1.5|35
Rosaleda|4|310
Paseo central|4|270
`)
		q.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("733", "Jardín botánico de Peñalera", "count and tap in one cell, two kinds joined by a plus in two zones; cables by zone on a second sheet")
		t.Speakers("sheet=Zonas; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|channel|control
5|Invernadero tropical|6|10|E1|1|
6|Invernadero desértico|4|6|E1|2|RV1
6|Invernadero desértico|2|3|E1|2|RV1
7|Orquidiario|4|6|E1|3|
8|Aulas|3|3|E2|1|RV2
8|Aulas|1|1.5|E2|1|RV2
9|Taquillas|2|1.5|E2|2|
10|Rosaleda|8|15|E3|1|
11|Paseo central|6|15|E3|2|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
E1|1|120|60
E1|2|120|30
E1|3|120|24
E2|1|60|10.5
E2|2|60|3
E3|1|240|120
E3|2|240|90`)
		t.Amplifiers("", `amplifier|rated_w|load_w
E1|360|114
E2|120|13.5
E3|480|210`)
		t.Controls("", `control|zone|rated_w|load_w
RV1|Invernadero desértico|60|30
RV2|Aulas|24|10.5`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Invernadero tropical|140|2.5
Invernadero desértico|165|2.5
Orquidiario|90|1.5
Aulas|60|1.5
Taquillas|35|1.5
Rosaleda|310|4
Paseo central|270|4`)
		t.Left("Zonas", `12|total|sum`)
	}},

	{File: "controlli/giro ottobre museo.txt", Kind: "schedule", Bytes: func() []byte {
		return typed.Unicode16(typed.DOS(`
Museo della Carta di Roccavento
Giro di controllo dei diffusori, 7 ottobre 2020
Amplificatore unico da 240 W, linea a 100 V

Locale	Quanti	Presa	Attenuatore	Esito
Biglietteria	1	1,5 W	-	ok
Guardaroba	2	1,5 W	-	ok
Sala 1	4	6 W	A1	ok
Sala 2	4	6 W	A2	uno muto
Sala 3	4	6 W	A3	ok
Scala	2	3 W	-	ok
Laboratorio	3	6 W	A4	ok
Deposito carte	?	?	-	chiuso, chiave non trovata
Sala proiezioni	6	6 W	A5	ok
Cortile	2	15 W	-	ok
Bagni	2	1,5 W	-	ok

Gli attenuatori A1, A2, A3 e A5 sono da 50 W, A4 da 24 W
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Museo della Carta di Roccavento", "a round of checks in tabs and UTF-16; one closed room of which nothing is known; ratings in a sentence")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|control
6|Biglietteria|1|1.5|
7|Guardaroba|2|1.5|
8|Sala 1|4|6|A1
9|Sala 2|4|6|A2
10|Sala 3|4|6|A3
11|Scala|2|3|
12|Laboratorio|3|6|A4
13|Deposito carte|||
14|Sala proiezioni|6|6|A5
15|Cortile|2|15|
16|Bagni|2|1.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_min_w
|240|169.5`)
		t.Amplifiers("", `amplifier|rated_w
|240`)
		t.Controls("", `control|rated_w|load_w
A1|50|24
A2|50|24
A3|50|24
A4|24|18
A5|50|36`)
		t.Asks("", `13|asked|number and taps of the loudspeakers in the closed store`)
	}},

	{File: "commesse/1180 scuderie consuntivo.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Diffusori")
		p.Put("A1", `
Scuderie di Valmarenza, commessa 1180, stato a fine lavori
||
Zona|Locale|Tipo|N.|Presa W|Ampl.|Uscita|Note
Maneggio|Maneggio coperto|tromba|6|15|AMP1|1
Maneggio|Tribunetta|parete|2||AMP1|1|abbassati su richiesta
Scuderia|Box 1-12|parete|4|6|AMP1|2
Scuderia|Box 13-24|parete|4|6|AMP1|2
Scuderia|Selleria|parete|1|3|AMP1|2
Servizi|Spogliatoi|soffitto|2|3|AMP2|1
Servizi|Ufficio|soffitto|1|1.5|AMP2|1|attenuatore AT1
Servizi|Infermeria|soffitto|1|1.5|AMP2|1
Servizi|Aula|soffitto|4|3|AMP2|1|attenuatore AT2
Esterno|Tondino|tromba|2|10|AMP2|2
Esterno|Parcheggio|tromba|2|10|AMP2|2
||
Righe barrate: non eseguite
`)
		p.Bold("A1", "A3:H3")
		p.Corrected("E5", "6 ", "3")
		p.Strike("A11:H11", "A14:H14")
		q := p.Sheet("Centrale")
		q.Put("A1", `
Ampl.|Uscita|Potenza W|Linea V
AMP1|1|120|100
AMP1|2|120|100
AMP2|1|60|100
AMP2|2|60|100
||
Attenuatore|Potenza W
AT1|5
AT2|24
`)
		q.Bold("A1:D1", "A7:B7")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("1180", "Scuderie di Valmarenza", "two rows struck out as not carried out, a tap corrected inside its cell, controls in notes; two tables on the second sheet")
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|amplifier|channel|control
4|Maneggio|Maneggio coperto|6|15|AMP1|1|
5|Maneggio|Tribunetta|2|3|AMP1|1|
6|Scuderia|Box 1-12|4|6|AMP1|2|
7|Scuderia|Box 13-24|4|6|AMP1|2|
8|Scuderia|Selleria|1|3|AMP1|2|
9|Servizi|Spogliatoi|2|3|AMP2|1|
10|Servizi|Ufficio|1|1.5|AMP2|1|AT1
12|Servizi|Aula|4|3|AMP2|1|AT2
13|Esterno|Tondino|2|10|AMP2|2|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|1|120|96
AMP1|2|120|51
AMP2|1|60|19.5
AMP2|2|60|20`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP1|240|147
AMP2|120|39.5`)
		t.Controls("", `control|rated_w|load_w
AT1|5|1.5
AT2|24|12`)
		t.Left("Diffusori", `11|removed|struck out: not carried out
14|removed|struck out: not carried out`)
	}},

	{File: "onderhoud/24-0617 Oeverdonk.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Beurt juni")
		p.Put("A1", `
Zwembad Oeverdonk, onderhoud omroep
Order 24-0617
||
Ruimte|Aantal LS|Aftakking|Groep|Volumeregelaar||Groep|Versterker|Uitgang|Vermogen
Wedstrijdbad|6|15 W|1|||1|V1|1|240 W
Doelgroepenbad|4|6 W|1|VR1||2|V1|2|240 W
Tribune|6|6 W|2|||3|V2|1|60 W
Kleedruimte dames|3|3 W|3
Kleedruimte heren|3|3 W|3|||Volumeregelaar|Vermogen
Gang|4|1,5 W|3|||VR1|36 W
Receptie|1|3 W|3|VR2||VR2|6 W
Personeelskamer|2|3 W|3|VR3||VR3|12 W
Technische ruimte|1|6 W|2
Fietsenstalling|2|10 W|2
||
Alle lijnen 100 V. Alle luidsprekers gehoord en in orde.
`)
		p.Bold("A1", "A4:E4", "G4:J4", "G9:H9")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("24-0617", "Zwembad Oeverdonk", "three tables side by side on one sheet, joined by group and control")
		t.Speakers("sheet=Beurt juni; tap_v=100; line_v=100; amplifier=V1; channel=1", `rows|room|count|tap_w|control
5|Wedstrijdbad|6|15|
6|Doelgroepenbad|4|6|VR1`)
		t.Speakers("sheet=Beurt juni; tap_v=100; line_v=100; amplifier=V1; channel=2", `rows|room|count|tap_w
7|Tribune|6|6
13|Technische ruimte|1|6
14|Fietsenstalling|2|10`)
		t.Speakers("sheet=Beurt juni; tap_v=100; line_v=100; amplifier=V2; channel=1", `rows|room|count|tap_w|control
8|Kleedruimte dames|3|3|
9|Kleedruimte heren|3|3|
10|Gang|4|1.5|
11|Receptie|1|3|VR2
12|Personeelskamer|2|3|VR3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|240|114
V1|2|240|62
V2|1|60|33`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|480|176
V2|60|33`)
		t.Controls("", `control|rated_w|load_w
VR1|36|24
VR2|6|3
VR3|12|6`)
	}},

	{File: "werken/5503 tramremise groepen.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Groepen")
		p.Put("A1", `
Tramremise Haagbeek, omroep 100 V
Werk 5503
||
Groep|Versterker|Ruimte|Stuks|W/st|Kabel|Lengte (m)|Opmerking
1|OV1 (120 W)|Hal spoor 1-4|6|10|2 x 2,5 mm²|70
||Hal spoor 5-8|4|10
||Werkput|2|6
2|OV2 (60 W)|Schaftlokaal|2|3|2 x 1,5 mm²|45|regelaar bij de deur, 12 W
||Kantoor|1|1.5
||Gang|3|1.5
||Wasruimte|2|3
3|OV3 (120 W)|Expositie|8|6|2 x 1,5 mm²|90|regelaar in de vitrinekast, 60 W
||Filmzaal|4|6||||regelaar naast het scherm, 36 W
||Ingang|2|3
||Totaal|34
`)
		p.Merge("A5:A7", "B5:B7", "F5:F7", "G5:G7", "A8:A11", "B8:B11", "F8:F11", "G8:G11", "A12:A14", "B12:B14", "F12:F14", "G12:G14")
		p.Bold("A1", "A4:H4", "C15:D15")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5503", "Tramremise Haagbeek", "merged cells down a group for amplifier and cable; controls without names in remarks, each of one room")
		t.Speakers("sheet=Groepen; tap_v=100; line_v=100; amplifier=OV1", `rows|room|count|tap_w
5|Hal spoor 1-4|6|10
6|Hal spoor 5-8|4|10
7|Werkput|2|6`)
		t.Speakers("sheet=Groepen; tap_v=100; line_v=100; amplifier=OV2", `rows|room|count|tap_w|note
8|Schaftlokaal|2|3|unnamed
9|Kantoor|1|1.5|
10|Gang|3|1.5|
11|Wasruimte|2|3|`)
		t.Speakers("sheet=Groepen; tap_v=100; line_v=100; amplifier=OV3", `rows|room|count|tap_w|note
12|Expositie|8|6|unnamed
13|Filmzaal|4|6|unnamed
14|Ingang|2|3|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
OV1|120|112
OV2|60|18
OV3|120|78`)
		t.Amplifiers("", `amplifier|rated_w|load_w
OV1|120|112
OV2|60|18
OV3|120|78`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|12|6
|60|48
|36|24`)
		t.Lines("note=one length a group", `line|length_m|area_mm2
1|70|2.5
2|45|1.5
3|90|1.5`)
		t.Left("Groepen", `15|total|sum`)
	}},
}
