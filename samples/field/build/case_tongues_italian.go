package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// tonguesItalian are a comune in Ticino, an Italian comune with a theatre, and a school's list of emergency lights.
var tonguesItalian = []typed.Case{
	{File: "tongues/ticino/palazzo comunale altop.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Elenco")
		p.Put("A1", `
Comune di Valmoresca - Palazzo comunale
Elenco altoparlanti per l'Ufficio tecnico, inc. 2019.33, linea 100 V

Piano|Locale|Altop.|W cad.|W tot.|Regol.|Amplif./usc.|Oss.
PT|Atrio|4|3|12||A/1|
PT|Cancelleria|2|1.5|3|RV1, 12 W|A/1|
PT|Sportello|2|1.5|3|RV2, 12 W|A/1|
1P|Sala patriziale|6|6|36|RV3, 60 W|A/2|
1P|Sala del Municipio|4|6|24|RV4, 60 W|A/2|
1P|Corridoio|3|1.5|4.5||A/1|
2P|Ufficio tecnico|2|1.5|3||A/3|
2P|Archivio storico|2|1.5|3||A/3|
Est.|Autorimessa|2|10|20||A/3|
Est.|Rampa|1|10|||A/3|smontato a marzo, in deposito
|Totale|27||108.5|||senza rampa

L'amplif. A ha 3 uscite da 80 W cad. (a nuovo costava Fr. 2'480.-)
`)
		p.Bold("A1", "A4:H4", "B15:E15")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2019.33", "Comune di Valmoresca - Palazzo comunale", "plain; control and its rating in one cell, output as A/1, rated in a sentence; one dismounted and left out of the total")
		t.Speakers("sheet=Elenco; tap_v=100; line_v=100; amplifier=A; channel=1", `rows|room|count|tap_w|control
5|Atrio|4|3|
6|Cancelleria|2|1.5|RV1
7|Sportello|2|1.5|RV2
10|Corridoio|3|1.5|`)
		t.Speakers("sheet=Elenco; tap_v=100; line_v=100; amplifier=A; channel=2", `rows|room|count|tap_w|control
8|Sala patriziale|6|6|RV3
9|Sala del Municipio|4|6|RV4`)
		t.Speakers("sheet=Elenco; tap_v=100; line_v=100; amplifier=A; channel=3", `rows|room|count|tap_w
11|Ufficio tecnico|2|1.5
12|Archivio storico|2|1.5
13|Autorimessa|2|10`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A|1|80|22.5
A|2|80|60
A|3|80|26`)
		t.Amplifiers("", `amplifier|load_w
A|108.5`)
		t.Controls("", `control|rated_w|load_w
RV1|12|3
RV2|12|3
RV3|60|36
RV4|60|24`)
		t.Left("Elenco", `14|removed|dismounted
15|total|sums`)
	}},

	{File: "tongues/teatro/diffusione sonora teatro.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Diffusori")
		p.Put("A1", `
Comune di Borgo Selcina - Teatro comunale
Determina n. 118 del 21.05.2014, stato finale

Ambiente|Diffusori|Presa|Linea|Note
Foyer|n. 6 da incasso|3 W|1|attenuatore AT1 in biglietteria
Biglietteria|n. 1 da incasso|1,5 W|1|
Guardaroba|n. 2 da incasso|1,5 W|1|
Platea|n. 4 a colonna|10 W|2|
Galleria|n. 4 a colonna|10 W|2|
Camerini 1-6|n. 6 da incasso|1,5 W|3|un solo attenuatore, AT2, in corridoio per tutti e sei
Sala prove|n. 2 da parete|6 W|3|attenuatore AT3
Corridoio camerini|n. 3 da incasso|1,5 W|3|
Sottopalco|n. 1 a tromba|10 W|3|dismesso
Falegnameria|n. 2 a tromba|10 W|3|
Magazzino|n. 2 da incasso|||di scorta
`)
		p.Bold("A1", "A4:E4")
		q := p.Sheet("Centrale")
		q.Put("A1", `
Linea|Amplificatore|Canale|Potenza|Tensione
1|AMP 1|1|60 W|100 V
2|AMP 2|1|120 W|100 V
3|AMP 2|2|120 W|100 V

Attenuatore|Potenza
AT1|24 W
AT2|12 W
AT3|24 W
`)
		q.Bold("A1:E1", "A6:B6")
		r := p.Sheet("Cavi")
		r.Put("A1", `
Linea|Da|A|Cavo|ml
1|AMP 1|Foyer|FG7OR 2x1,5|42
2|AMP 2|Platea|FG7OR 2x2,5|58
3|AMP 2|Camerini 1-6|FG7OR 2x1,5|36,5
`)
		r.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("118", "Comune di Borgo Selcina - Teatro comunale", "counts as n. 6; controls named in remarks, one for six dressing rooms; lines to channels and cables on other sheets; one out of use, two in stock")
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; amplifier=AMP 1; channel=1", `rows|room|count|tap_w|control
5|Foyer|6|3|AT1
6|Biglietteria|1|1.5|
7|Guardaroba|2|1.5|`)
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; amplifier=AMP 2; channel=1", `rows|room|count|tap_w
8|Platea|4|10
9|Galleria|4|10`)
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; amplifier=AMP 2; channel=2", `rows|room|count|tap_w|control
10|Camerini 1-6|6|1.5|AT2
11|Sala prove|2|6|AT3
12|Corridoio camerini|3|1.5|
14|Falegnameria|2|10|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP 1|1|60|22.5
AMP 2|1|120|80
AMP 2|2|120|45.5`)
		t.Amplifiers("", `amplifier|load_w
AMP 1|22.5
AMP 2|125.5`)
		t.Controls("", `control|rated_w|load_w
AT1|24|18
AT2|12|9
AT3|24|12`)
		t.Lines("", `line|from|to|length_m|area_mm2
1|AMP 1|Foyer|42|1.5
2|AMP 2|Platea|58|2.5
3|AMP 2|Camerini 1-6|36.5|1.5`)
		t.Left("Diffusori", `13|removed|out of use
15|spare|in stock`)
	}},

	{File: "tongues/scuola/verifica lampade emergenza.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Verifica")
		p.Put("A1", `
Scuola media di Pian Ferrato - lampade di emergenza
Verifica semestrale del 14.01.2020, ditta incaricata commessa 77/20

Locale|Lampade|W cad.|Linea|Quadro|Autonomia|Esito
Atrio|4|8|E1|QG|1 h|ok
Corridoio piano terra|6|8|E1|QG|1 h|ok
Palestra|6|11|E2|QP|1 h|2 batterie da sostituire
Spogliatoi|4|8|E2|QP|1 h|ok
Aula magna|4|11|E3|Q1|1 h 30|ok
Scala nord|3|8|E3|Q1|1 h|ok
Biblioteca|2|8|E3|Q1|1 h|lampada bruciata
Totale|29|||||
`)
		p.Bold("A1", "A4:G4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("77/20", "Scuola media di Pian Ferrato", "emergency lights with count, watts, line and panel a room, no loudspeaker")
		t.Left("Verifica", `5|other|lights
6|other|lights
7|other|lights
8|other|lights
9|other|lights
10|other|lights
11|other|lights
12|total|lights`)
	}},
}
