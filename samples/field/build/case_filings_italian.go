package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

var filingsItalian = []typed.Case{

	{File: "filings/collaudi/118-19 orto botanico.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Verbale di collaudo diffusione sonora;;;;;
Orto botanico di Rocca Fiordaliso;;Commessa;118/19;;
;;;;;
Amplificatore U1 da 240 W, linea a 100 V;;;;;
Locale;Diffusori;Presa W;Carico W;Attenuatore;Esito
Serra calda;6;10;60;;ok
Serra fredda;4;10;40;;ok
Viale delle ninfee;5;15;75;;uno gracchiava, sostituito
Totale linea;15;;175;;Z = 57 ohm
;;;;;
Amplificatore U2 da 120 W, linea a 100 V;;;;;
Locale;Diffusori;Presa W;Carico W;Attenuatore;Esito
Ingresso;3;3;9;;ok
Bottega;2;3;6;AT1 da 12 W;ok
Aula didattica;4;6;24;AT2 da 50 W;ok
Uffici;3;1,5;4,5;AT3 da 6 W;ok
Totale linea;12;;43,5;;Z = 230 ohm
;;;;;
Firma del tecnico;;;Firma del committente;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("118/19", "Orto botanico di Rocca Fiordaliso", "test record in two blocks, amplifier in the title of each, ratings of controls behind their names, sums and measured ohms")
		t.Speakers("tap_v=100; line_v=100; amplifier=U1", `rows|room|count|tap_w
6|Serra calda|6|10
7|Serra fredda|4|10
8|Viale delle ninfee|5|15`)
		t.Speakers("tap_v=100; line_v=100; amplifier=U2", `rows|room|count|tap_w|control
13|Ingresso|3|3|
14|Bottega|2|3|AT1
15|Aula didattica|4|6|AT2
16|Uffici|3|1.5|AT3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
U1|240|175
U2|120|43.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
U1|240|175
U2|120|43.5`)
		t.Controls("", `control|rated_w|load_w
AT1|12|6
AT2|50|24
AT3|6|4.5`)
		t.Left("", `9|total|sum
17|total|sum`)
	}},

	{File: "filings/preventivi/P-77 istituto Colle Tortora.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Diffusori")
		p.Put("A1", `
Istituto tecnico Colle Tortora
Preventivo|P-77/21||Impianto a 100 V
||
Ambiente|Numero diffusori per presa||||Linea|Regolatore
|1,5 W|3 W|6 W|10 W||
Atrio|||4||L1|
Corridoio||6|||L1|
Segreteria|1||||L1|R1 (5 W)
Presidenza|1||||L1|R2 (5 W)
Biblioteca||4|2||L2|R3 (50 W)
Aula magna||||6|L2|
Laboratorio|2|2|||L2|
Palestra||||4|L3|
Spogliatoi||4|||L3|
Cortile||||3|L3|
Totale|4|16|6|13||
||
L1, L2 e L3 sono le uscite di un solo amplificatore da 3 x 120 W
`)
		p.Merge("A1:G1", "B4:E4", "A4:A5", "F4:F5", "G4:G5")
		p.Bold("A1", "A4:G5", "A16:E16")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("P-77/21", "Istituto tecnico Colle Tortora", "matrix of rooms by tap under a merged title; three outputs of one amplifier without a name")
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100", `rows|room|count|tap_w|channel|control
6|Atrio|4|6|L1|
7|Corridoio|6|3|L1|
8|Segreteria|1|1.5|L1|R1
9|Presidenza|1|1.5|L1|R2
10|Biblioteca|4|3|L2|R3
10|Biblioteca|2|6|L2|R3
11|Aula magna|6|10|L2|
12|Laboratorio|2|1.5|L2|
12|Laboratorio|2|3|L2|
13|Palestra|4|10|L3|
14|Spogliatoi|4|3|L3|
15|Cortile|3|10|L3|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
|L1|120|45
|L2|120|93
|L3|120|82`)
		t.Amplifiers("", `amplifier|load_w
|220`)
		t.Controls("", `control|rated_w|load_w
R1|5|1.5
R2|5|1.5
R3|50|24`)
		t.Left("Diffusori", `16|total|sums`)
	}},

	{File: "filings/impianti/2077 rimessa tram.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Diffusori")
		p.Put("A1", `
Rimessa tranviaria di Pian Sereno|||Commessa|2077
||
Sigla|Zona|Posizione|Q.tà|W cad.|Linea|Vol.
DA|Binari|campata 1-4|8|15|1/1|
DB|Binari|campata 5-8|8|15|1/2|
DC|Officina|fossa|2|10|2/1|
DD|Officina|banco|4|10|2/1|V1
DE|Uffici|corridoio|5|3|2/2|
DF|Uffici|sala controllo|2|3|2/2|V2
DG|Uffici|spogliatoio|4|3|2/2|
DH|Piazzale|cancello|2|15|2/3|
||
Linea 1/2 = amplificatore 1, uscita 2. Linee a 100 V.
`)
		p.Bold("A1", "A3:G3")
		q := p.Sheet("Centrale")
		q.Put("A1", `
Unità rack|Apparecchio|Uscite|W per uscita
U1-U3|microfono e lettore||
U4-U6|Amplificatore 1|2|240
U7-U8|Amplificatore 2|3|60
U9|ventilazione||
||
Regolatore|Luogo|W
V1|banco officina|50
V2|sala controllo|12
`)
		q.Bold("A1:D1", "A7:C7")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2077", "Rimessa tranviaria di Pian Sereno", "lines written 1/2 and explained in a note; rack list with watts an output and the controls below it on a second sheet")
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100", `rows|zone|tag|room|count|tap_w|amplifier|channel|control
4|Binari|DA|campata 1-4|8|15|1|1|
5|Binari|DB|campata 5-8|8|15|1|2|
6|Officina|DC|fossa|2|10|2|1|
7|Officina|DD|banco|4|10|2|1|V1
8|Uffici|DE|corridoio|5|3|2|2|
9|Uffici|DF|sala controllo|2|3|2|2|V2
10|Uffici|DG|spogliatoio|4|3|2|2|
11|Piazzale|DH|cancello|2|15|2|3|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
1|1|240|120
1|2|240|120
2|1|60|60
2|2|60|33
2|3|60|30`)
		t.Amplifiers("", `amplifier|load_w
1|240
2|123`)
		t.Controls("", `control|rated_w|load_w
V1|50|40
V2|12|6`)
	}},
}
