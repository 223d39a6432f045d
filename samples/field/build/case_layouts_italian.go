package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// layoutsItalian are four hands that write Italian.
var layoutsItalian = []typed.Case{
	// An installer's delivery list; what feeds the lines he wrote in two sentences below.
	{File: "layouts/orto botanico elenco.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Orto botanico di Rocca Salvina;;;;;
Elenco diffusori, commessa 57/18;;;;;
Zona;Locale;Diffusore;Q.tà;Presa W;Linea
Serre;Serra calda;proiettore;4;10;1
Serre;Serra fredda;proiettore;4;10;1
Serre;Vivaio;proiettore;2;6;1
Giardino;Viale dei tigli;tromba;6;15;2
Giardino;Laghetto;tromba;2;15;2
Palazzina;Atrio;soffitto;4;3;3
Palazzina;Aula didattica;soffitto;4;3;3
Palazzina;Erbario;soffitto;3;1,5;3
;;Totale;29;;
;;;;;
"Note: impianto a 100 V. Linea 1 e linea 2 sull'amplificatore A, due uscite da 120 W; linea 3 sull'amplificatore B da 60 W.";;;;;
Nell'aula didattica regolatore RV1 da 24 W.;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("57/18", "Orto botanico di Rocca Salvina", "plain list; the amplifiers, the voltage, the ratings and the one control in sentences below")
		t.Speakers("tap_v=100; line_v=100; zone=Serre; amplifier=A; channel=1", `rows|room|count|tap_w
4|Serra calda|4|10
5|Serra fredda|4|10
6|Vivaio|2|6`)
		t.Speakers("tap_v=100; line_v=100; zone=Giardino; amplifier=A; channel=2", `rows|room|count|tap_w
7|Viale dei tigli|6|15
8|Laghetto|2|15`)
		t.Speakers("tap_v=100; line_v=100; zone=Palazzina; amplifier=B; channel=3", `rows|room|count|tap_w|control
9|Atrio|4|3|
10|Aula didattica|4|3|RV1
11|Erbario|3|1.5|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A|1|120|92
A|2|120|120
B|3|60|28.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A||212
B|60|28.5`)
		t.Controls("", `control|rated_w|load_w
RV1|24|12`)
		t.Left("", `12|total|sum`)
	}},

	// The town's technical office counts what is in the swimming pool before a tender: a small table per area with its subtotal.
	{File: "layouts/Piscina censimento.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Impianto")
		p.Put("A1", `
Piscina comunale di Acquafredda - censimento diffusori
Un solo amplificatore, 4 uscite da 120 W, linea 100 V

VASCA GRANDE - uscita 1
Posizione|Modello|N.|W|W tot.
Lato tribuna|tromba|4|15|60
Lato vetrata|tromba|2|15|30
Subtotale||6||90

VASCA BAMBINI - uscita 2
Posizione|Modello|N.|W|W tot.
Bordo vasca|proiettore|4|6|24
Gradini|proiettore|2|3|6
Subtotale||6||30

SPOGLIATOI - uscita 3 - regolatore R1 da 36 W
Posizione|Modello|N.|W|W tot.
Uomini|soffitto|4|3|12
Donne|soffitto|4|3|12
Corridoio|soffitto|2|1.5|3
Subtotale||10||27

INGRESSO - uscita 4
Posizione|Modello|N.|W|W tot.
Biglietteria|soffitto|2|3|6
Atrio|soffitto|5|6|30
Subtotale||7||36

TOTALE GENERALE||29||183
`)
		p.Merge("A4:E4", "A10:E10", "A16:E16", "A23:E23")
		p.Bold("A1", "A4", "A10", "A16", "A23", "A29:E29")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Piscina comunale di Acquafredda", "four small tables one below another under merged titles that name the area, its output and once a control; subtotals; one amplifier without a name")
		t.Speakers("sheet=Impianto; tap_v=100; line_v=100; zone=VASCA GRANDE; channel=1; note=area title as zone", `rows|room|count|tap_w
6|Lato tribuna|4|15
7|Lato vetrata|2|15`)
		t.Speakers("sheet=Impianto; tap_v=100; line_v=100; zone=VASCA BAMBINI; channel=2; note=area title as zone", `rows|room|count|tap_w
12|Bordo vasca|4|6
13|Gradini|2|3`)
		t.Speakers("sheet=Impianto; tap_v=100; line_v=100; zone=SPOGLIATOI; channel=3; control=R1; note=area title as zone", `rows|room|count|tap_w
18|Uomini|4|3
19|Donne|4|3
20|Corridoio|2|1.5`)
		t.Speakers("sheet=Impianto; tap_v=100; line_v=100; zone=INGRESSO; channel=4; note=area title as zone", `rows|room|count|tap_w
25|Biglietteria|2|3
26|Atrio|5|6`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
|1|120|90
|2|120|30
|3|120|27
|4|120|36`)
		t.Amplifiers("", `amplifier|load_w
|183`)
		t.Controls("", `control|zone|rated_w|load_w
R1|SPOGLIATOI|36|27`)
		t.Left("Impianto", `
8|total|subtotal
14|total|subtotal
21|total|subtotal
27|total|subtotal
29|total|grand total`)
	}},

	// A project engineer's test record for a theatre: the lines with the measured impedance, the loudspeakers by tag behind.
	{File: "layouts/verbale prove teatro.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Verbale")
		p.Put("A1", `
Teatro di Borgo Sereno - impianto cercapersone e annunci a 100 V
Verbale di prova del 14/10, ordine 8830

Linea|Uscita|W uscita|N. diffusori|W calcolati|Z attesa ohm|Z misurata ohm|Esito
L1|PA1/1|120|5|30|333|341|positivo
L2|PA1/2|120|4|12|833|860|positivo
L3|PA2/1|60|4|10.5|952|975|positivo

Regolatore RV1 (24 W) su L2, provato sui diffusori D06 e D07
`)
		p.Bold("A1", "A4:H4")
		q := p.Sheet("Diffusori")
		q.Put("A1", `
Sigla|Locale|Presa W|Linea
D01|Foyer|6|L1
D02|Foyer|6|L1
D03|Foyer|6|L1
D04|Scalone|6|L1
D05|Scalone|6|L1
D06|Camerino 1|3|L2
D07|Camerino 2|3|L2
D08|Corridoio camerini|3|L2
D09|Corridoio camerini|3|L2
D10|Sartoria|3|L3
D11|Laboratorio scene|3|L3
D12|Regia|1.5|L3
D13|Portineria|3|L3
`)
		q.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("8830", "Teatro di Borgo Sereno", "test record by line in front (sums and impedances, no loudspeakers), the loudspeakers by tag on a second sheet, a control in a sentence that acts on two tags")
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; amplifier=PA1; channel=1", `rows|tag|room|tap_w
2..4|D01..|Foyer|6
5..6|D04..|Scalone|6`)
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; amplifier=PA1; channel=2", `rows|tag|room|tap_w|control
7|D06|Camerino 1|3|RV1
8|D07|Camerino 2|3|RV1
9..10|D08..|Corridoio camerini|3|`)
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; amplifier=PA2; channel=1", `rows|tag|room|tap_w
11|D10|Sartoria|3
12|D11|Laboratorio scene|3
13|D12|Regia|1.5
14|D13|Portineria|3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
PA1|1|120|30
PA1|2|120|12
PA2|1|60|10.5`)
		t.Amplifiers("", `amplifier|load_w
PA1|42
PA2|10.5`)
		t.Controls("", `control|rated_w|load_w
RV1|24|6`)
		t.Left("Verbale", `
5|total|a tested line, its loudspeakers are on the other sheet
6|total|a tested line
7|total|a tested line`)
	}},

	// An apprentice wrote down for his foreman what hangs on every line: a column a line, a cell a loudspeaker.
	{File: "layouts/deposito cosa c'è sulle linee.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Foglio1")
		p.Put("A1", `
Deposito autobus di Pianalta, cosa c'è su ogni linea (100 V)

Linea 1|Linea 2|Linea 3|Linea 4
ampli A, 240 W|ampli B, 120 W|ampli C, 60 W|ampli D, 60 W
Piazzale nord, tromba 30 W|Officina, tromba 10 W|Sala autisti, soffitto 6 W|Ufficio turni, soffitto 3 W
Piazzale nord, tromba 30 W|Officina, tromba 10 W|Sala autisti, soffitto 6 W|Ufficio turni, soffitto 3 W
Piazzale sud, tromba 30 W|Officina, tromba 10 W|Spogliatoio, soffitto 3 W|Portineria, soffitto 1,5 W
Rampa, tromba 15 W|Lavaggio, tromba 10 W|Spogliatoio, soffitto 3 W|
|Gommista, tromba 10 W|Corridoio, soffitto 1,5 W|
tot. 105 W|tot. 50 W|tot. 19,5 W|tot. 7,5 W
`)
		p.Bold("A3:D3", "A10:D10")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Deposito autobus di Pianalta", "a column a line with its amplifier below the header, a cell a loudspeaker with room, kind and tap in words, sums at the foot")
		t.Speakers("sheet=Foglio1; tap_v=100; line_v=100; amplifier=A; channel=1", `rows|room|tap_w
5..6|Piazzale nord|30
7|Piazzale sud|30
8|Rampa|15`)
		t.Speakers("sheet=Foglio1; tap_v=100; line_v=100; amplifier=B; channel=2", `rows|room|tap_w
5..7|Officina|10
8|Lavaggio|10
9|Gommista|10`)
		t.Speakers("sheet=Foglio1; tap_v=100; line_v=100; amplifier=C; channel=3", `rows|room|tap_w
5..6|Sala autisti|6
7..8|Spogliatoio|3
9|Corridoio|1.5`)
		t.Speakers("sheet=Foglio1; tap_v=100; line_v=100; amplifier=D; channel=4", `rows|room|tap_w
5..6|Ufficio turni|3
7|Portineria|1.5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A|1|240|105
B|2|120|50
C|3|60|19.5
D|4|60|7.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|240|105
B|120|50
C|60|19.5
D|60|7.5`)
		t.Left("Foglio1", `10|total|sums`)
	}},
}
