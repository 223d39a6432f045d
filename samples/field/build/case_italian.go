package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// An Italian electrician: one sheet with merged titles, units in the cells, a list by line.
var italian = []typed.Case{
	{File: "Commessa 318 - Pista Lagospino.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Elenco diffusori")
		p.Put("A1", `
ELENCO DIFFUSORI - Palaghiaccio Lagospino
Commessa n. 318 - Impianto a tensione costante 100 V

Linea|Zona|Modello|Q.tà|Presa|Potenza tot.|Attenuatore|Sezione cavo|Lunghezza
L1|Pista lato nord|TR-30|5|15 W|75 W|-|2x2,5 mmq|110 m
L2|Pista lato sud|TR-30|5|15 W|75 W|-|2x2,5 mmq|95 m
L3|Spogliatoi|PL-6|8|3 W|24 W|-|2x1,5 mmq|60 m
L3|Infermeria|PL-6|1|1,5 W|1,5 W|AT1 - 6 W|2x1,5 mmq|60 m
L4|Atrio|PL-6|6|6 W|36 W|AT2 - 40 W|2x1,5 mmq|48 m
L4|Noleggio pattini|PL-6|4|3 W|12 W|AT3 - 12 W|2x1,5 mmq|48 m
L4|Biglietteria|PL-6|2|3 W|6 W|AT4 - 6 W|2x1,5 mmq|48 m
L5|Gradinata|CL-40|8|20 W|160 W|-|2x4 mmq|130 m
L6|Piazzale esterno|TR-30|3|30 W|90 W|-|2x4 mmq|165 m
L6|Deposito|TR-30|1|7,5 W|7,5 W|-|2x4 mmq|165 m

Amplificatore|Uscita|Linea|Potenza
AMP 1|1|L1|120 W
AMP 1|2|L2|120 W
AMP 2|1|L3|60 W
AMP 2|2|L4|60 W
AMP 3|1|L5|240 W
AMP 3|2|L6|120 W
`)
		p.Merge("A1:I1", "A2:I2")
		p.Bold("A1:I1", "A4:I4", "A16:D16")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("318", "Palaghiaccio Lagospino", "two tables on one sheet joined by lines; units in the cells; rating of the attenuator behind its name")
		t.Speakers("sheet=Elenco diffusori; tap_v=100; line_v=100", `rows|zone|model|count|tap_w|control|amplifier|channel
5|Pista lato nord|TR-30|5|15||AMP 1|1
6|Pista lato sud|TR-30|5|15||AMP 1|2
7|Spogliatoi|PL-6|8|3||AMP 2|1
8|Infermeria|PL-6|1|1.5|AT1|AMP 2|1
9|Atrio|PL-6|6|6|AT2|AMP 2|2
10|Noleggio pattini|PL-6|4|3|AT3|AMP 2|2
11|Biglietteria|PL-6|2|3|AT4|AMP 2|2
12|Gradinata|CL-40|8|20||AMP 3|1
13|Piazzale esterno|TR-30|3|30||AMP 3|2
14|Deposito|TR-30|1|7.5||AMP 3|2`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP 1|1|120|75
AMP 1|2|120|75
AMP 2|1|60|25.5
AMP 2|2|60|54
AMP 3|1|240|160
AMP 3|2|120|97.5`)
		t.Amplifiers("", `amplifier|load_w
AMP 1|150
AMP 2|79.5
AMP 3|257.5`)
		t.Controls("", `control|rated_w|load_w
AT1|6|1.5
AT2|40|36
AT3|12|12
AT4|6|6`)
		t.Lines("", `line|length_m|area_mm2
L1|110|2.5
L2|95|2.5
L3|60|1.5
L4|48|1.5
L5|130|4
L6|165|4`)
	}},

	{File: "Commessa 342 - Orto botanico.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Orto botanico Valmerena")
		p.Put("A1", `
Commessa|342
Sito|Orto botanico Valmerena
Tensione di linea|100 V

AMPLIFICATORE A - 1 uscita da 240 W
Sigla|Locale|Diffusore|Presa W|Regolatore
D01|Serra grande|Proiettore|10|RV1
D02|Serra grande|Proiettore|10|RV1
D03|Serra grande|Proiettore|10|RV1
D04|Serra grande|Proiettore|10|RV1
D05|Serra piccola|Proiettore|5|RV2
D06|Serra piccola|Proiettore|5|RV2
D07|Serra dei cactus|Proiettore|5|RV2
D08|Vialetto est|Tromba|15|
D09|Vialetto est|Tromba|15|
D10|Vialetto ovest|Tromba|15|
D11|Vialetto ovest|Tromba|15|
|||Totale 115|

AMPLIFICATORE B - 1 uscita da 60 W
Sigla|Locale|Diffusore|Presa W|Regolatore
D12|Biglietteria|Plafoniera|3|RV3
D13|Atrio|Plafoniera|6|RV4
D14|Atrio|Plafoniera|6|RV4
D15|Atrio|Plafoniera|6|RV4
D16|Biblioteca|Plafoniera|1.5|RV5
D17|Biblioteca|Plafoniera|1.5|RV5
D18|Laboratorio semi|Plafoniera|3|RV6
D19|Laboratorio semi|Plafoniera|3|RV6
D20|Magazzino|Plafoniera|3|
D21|Officina|Proiettore|10|
|||Totale 43|

REGOLATORI DI VOLUME
Regolatore|Potenza max
RV1|40 W
RV2|12 W
RV3|6 W
RV4|25 W
RV5|6 W
RV6|6 W
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("342", "Orto botanico Valmerena", "a section an amplifier, its rating in the title; controls in a third table")
		t.Speakers("sheet=Orto botanico Valmerena; tap_v=100; line_v=100; amplifier=A", `rows|tag|room|model|tap_w|control
7..10|D01..|Serra grande|Proiettore|10|RV1
11..12|D05..|Serra piccola|Proiettore|5|RV2
13|D07|Serra dei cactus|Proiettore|5|RV2
14..15|D08..|Vialetto est|Tromba|15|
16..17|D10..|Vialetto ovest|Tromba|15|`)
		t.Speakers("sheet=Orto botanico Valmerena; tap_v=100; line_v=100; amplifier=B", `rows|tag|room|model|tap_w|control
22|D12|Biglietteria|Plafoniera|3|RV3
23..25|D13..|Atrio|Plafoniera|6|RV4
26..27|D16..|Biblioteca|Plafoniera|1.5|RV5
28..29|D18..|Laboratorio semi|Plafoniera|3|RV6
30|D20|Magazzino|Plafoniera|3|
31|D21|Officina|Proiettore|10|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|240|115
B|60|43`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|240|115
B|60|43`)
		t.Controls("", `control|rated_w|load_w
RV1|40|40
RV2|12|15
RV3|6|3
RV4|25|18
RV5|6|3
RV6|6|6`)
		t.Left("Orto botanico Valmerena", `5|title|amplifier A
18|subtotal|sum of amplifier A
20|title|amplifier B
21|header|repeated
32|subtotal|sum of amplifier B`)
	}},
}
