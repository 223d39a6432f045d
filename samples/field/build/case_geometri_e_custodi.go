package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// geometriECustodi are Italian: a surveyor, a theatre's caretaker, a station manager, a maintenance firm, a drawing office and a heating fitter.
var geometriECustodi = []typed.Case{
	{File: "rilievi/biblioteca civica.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Biblioteca civica di Montelupaia;;incarico n. 31;;;;
Vano;Destinazione;N. diff.;W cad.;W tot.;Linea;Note
T01;Atrio;4;3;12;L1;
T02;Accoglienza;1;1,5;1,5;L1;
T03;Emeroteca;6;3;18;L1;attenuatore AT1 da 24 W
T04;Sala ragazzi;4;3;12;L1;attenuatore AT2 da 15 W
T05;Magazzino;0;0;0;;nessun diffusore
T06;Cortile coperto;2;10;20;L1;trombe
101;Sala lettura;8;3;24;L2;
102;Sala studio;4;1,5;6;L2;
103;Fondo antico;2;1,5;3;L2;
104;Sala conferenze;4;6;24;L2;attenuatore AT3 da 36 W
;Totale;35;;120,5;;
;;;;;;
Amplificatore a 100 V nel vano T02: uscita 1 da 120 W per L1, uscita 2 da 120 W per L2;;;;;;
Cavo L1: 2x1,5 mmq, 145 m;;;;;;
Cavo L2: 2x1,5 mmq, 120 m;;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("31", "Biblioteca civica di Montelupaia", "controls in remarks, outputs and cables by line in sentences below; a room without loudspeakers")
		t.Speakers("tap_v=100; line_v=100; channel=1", `rows|room|count|tap_w|control
3|Atrio|4|3|
4|Accoglienza|1|1.5|
5|Emeroteca|6|3|AT1
6|Sala ragazzi|4|3|AT2
8|Cortile coperto|2|10|`)
		t.Speakers("tap_v=100; line_v=100; channel=2", `rows|room|count|tap_w|control
9|Sala lettura|8|3|
10|Sala studio|4|1.5|
11|Fondo antico|2|1.5|
12|Sala conferenze|4|6|AT3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
|1|120|63.5
|2|120|57`)
		t.Controls("", `control|rated_w|load_w
AT1|24|18
AT2|15|12
AT3|36|24`)
		t.Lines("", `line|length_m|area_mm2
L1|145|1.5
L2|120|1.5`)
		t.Left("", `7|other|no loudspeaker there
13|total|sums`)
	}},

	{File: "teatro/giro del custode.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.Marks.Replace(`Teatro comunale dei Filandari - altoparlanti visti nel giro,,,
dove,quanti,tacca,manopola
Atrio,4,3 W,
Biglietteria,1,"1,5 W",sì (6 W)
Guardaroba,2,3 W,
Platea sotto la galleria,6,6 W,
Galleria,4,6 W,
Corridoio palchi,8,3 W,sì (36 W)
Camerino 1,1,3 W,sì (6 W)
Camerino 2,1,3 W,sì (6 W)
Camerino 3,1,3 W,"no, tolta"
Sottopalco,2,6 W,
Graticcia,1,10 W ?,
Laboratorio,1,10 W,
,,,
"Amplificatore in regia: 240 W, uscita a 100 V",,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Teatro comunale dei Filandari", "controls without names in a yes/no column with their rating, one taken out; a tap with a question mark")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|note
3|Atrio|4|3|
4|Biglietteria|1|1.5|unnamed
5|Guardaroba|2|3|
6|Platea sotto la galleria|6|6|
7|Galleria|4|6|
8|Corridoio palchi|8|3|unnamed
9|Camerino 1|1|3|unnamed
10|Camerino 2|1|3|unnamed
11|Camerino 3|1|3|
12|Sottopalco|2|6|
13|Graticcia|1|10|
14|Laboratorio|1|10|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|144.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|144.5`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|6|1.5
|36|24
|6|3
|6|3`)
		t.Asks("", `13|assumed|tap of 10 W with a question mark`)
	}},

	{File: "stazione/Annunci Pontecavo.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Annunci")
		p.Put("A1", `
Stazione di Pontecavo - diffusori per gli annunci
La sigla dell'amplificatore ne porta la potenza: AF240-1 è da 240 W, AF120-3 da 120 W. Linee a 100 V.
||
Zona|Punto|Diffusore|Q.tà|Presa (W)|Amplificatore|Volume
Binario 1|Pensilina|tromba|6|10|AF240-1|
Binario 1|Testa marciapiede|tromba|4|15|AF240-1|
Binario 1|Sottopasso lato 1|parete|2|6|AF240-1|
Binari 2 e 3|Pensilina|tromba|8|10|AF240-2|
Binari 2 e 3|Sottopasso lato 2|parete|2|6|AF240-2|
Binari 2 e 3|Saletta|soffitto|2|3|AF240-2|V1 (12 W)
Fabbricato|Atrio|soffitto|8|3|AF120-3|
Fabbricato|Sala d'attesa|soffitto|6|3|AF120-3|V2 (30 W)
Fabbricato|Biglietteria|soffitto|2|1.5|AF120-3|V3 (6 W)
Fabbricato|Servizi|soffitto|3|1.5|AF120-3|
Fabbricato|Ufficio movimento|parete|1|3|AF120-3|V4 (6 W)
Piazzale|Fermata autobus|tromba|3|15|AF120-4|
Piazzale|Deposito bici|tromba|2|15|AF120-4|
`)
		p.Bold("A1", "A4:G4")
		p.Filtered("A4:G17", "A", "Fabbricato", 5, 6, 7, 8, 9, 10, 16, 17)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Stazione di Pontecavo", "plain list with a filter left on that shows one zone: all are installed; the amplifiers' ratings are in their names, as a sentence says")
		t.Speakers("sheet=Annunci; tap_v=100; line_v=100; zone=Binario 1; amplifier=AF240-1", `rows|room|count|tap_w
5|Pensilina|6|10
6|Testa marciapiede|4|15
7|Sottopasso lato 1|2|6`)
		t.Speakers("sheet=Annunci; tap_v=100; line_v=100; zone=Binari 2 e 3; amplifier=AF240-2", `rows|room|count|tap_w|control
8|Pensilina|8|10|
9|Sottopasso lato 2|2|6|
10|Saletta|2|3|V1`)
		t.Speakers("sheet=Annunci; tap_v=100; line_v=100; zone=Fabbricato; amplifier=AF120-3", `rows|room|count|tap_w|control
11|Atrio|8|3|
12|Sala d'attesa|6|3|V2
13|Biglietteria|2|1.5|V3
14|Servizi|3|1.5|
15|Ufficio movimento|1|3|V4`)
		t.Speakers("sheet=Annunci; tap_v=100; line_v=100; zone=Piazzale; amplifier=AF120-4", `rows|room|count|tap_w
16|Fermata autobus|3|15
17|Deposito bici|2|15`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AF240-1|240|132
AF240-2|240|98
AF120-3|120|52.5
AF120-4|120|75`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AF240-1|240|132
AF240-2|240|98
AF120-3|120|52.5
AF120-4|120|75`)
		t.Controls("", `control|zone|rated_w|load_w
V1|Binari 2 e 3|12|6
V2|Fabbricato|30|18
V3|Fabbricato|6|3
V4|Fabbricato|6|3`)
	}},

	{File: "manutenzione/rapporto 118-22.txt", Kind: "schedule", Bytes: func() []byte {
		return []byte(tabbed(typed.DOS(`
Rapporto di prova, commessa 118/22|Pista di pattinaggio di Vallombreda|||||
Impianto a 100 V|||||||

Linea|Zona|Diffusori|P nom.|Z misurata|Amplificatore|Attenuatore|Esito
1|Pista|8 x 15 W|120 W|83 ohm|FA1 uscita 1 (240 W)||positivo
2|Tribuna|10 x 6 W|60 W|165 ohm|FA1 uscita 2 (240 W)||positivo
3|Atrio|6 x 3 W + 1 x 1,5 W|19,5 W|510 ohm|FA2 uscita 1 (120 W)|A3 (36 W)|positivo
4|Spogliatoi|6 x 3 W + 4 x 1,5 W|24 W|415 ohm|FA2 uscita 2 (120 W)||positivo
5|Noleggio pattini|2 x 6 W|12 W|830 ohm|FA2 uscita 3 (120 W)|A5 (20 W)|positivo
6|Infermeria|1 x 3 W|3 W|3300 ohm|FA2 uscita 4 (120 W)|A6 (6 W)|positivo
7|Locale macchine|2 x 10 W|20 W|490 ohm|FA3 uscita 1 (120 W)||positivo
8|Piazzale|3 x 15 W|45 W|222 ohm|FA3 uscita 2 (120 W)||da rifare con asciutto
`)))
	}, Truth: func(t *typed.Truth) {
		t.Is("118/22", "Pista di pattinaggio di Vallombreda", "a test record, a line a row: counts and taps as products, two kinds in one cell; output and rating in one cell; measured ohms are no loudspeakers of low impedance")
		t.Speakers("tap_v=100; line_v=100; amplifier=FA1", `rows|zone|count|tap_w|channel
5|Pista|8|15|1
6|Tribuna|10|6|2`)
		t.Speakers("tap_v=100; line_v=100; amplifier=FA2", `rows|zone|count|tap_w|channel|control
7|Atrio|6|3|1|A3
7|Atrio|1|1.5|1|A3
8|Spogliatoi|6|3|2|
8|Spogliatoi|4|1.5|2|
9|Noleggio pattini|2|6|3|A5
10|Infermeria|1|3|4|A6`)
		t.Speakers("tap_v=100; line_v=100; amplifier=FA3", `rows|zone|count|tap_w|channel
11|Locale macchine|2|10|1
12|Piazzale|3|15|2`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
FA1|1|240|120
FA1|2|240|60
FA2|1|120|19.5
FA2|2|120|24
FA2|3|120|12
FA2|4|120|3
FA3|1|120|20
FA3|2|120|45`)
		t.Amplifiers("", `amplifier|load_w
FA1|180
FA2|58.5
FA3|65`)
		t.Controls("", `control|zone|rated_w|load_w
A3|Atrio|36|19.5
A5|Noleggio pattini|20|12
A6|Infermeria|6|3`)
	}},

	{File: "disegni/Serre rev2.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Diffusori")
		p.Put("A1", `
Serre comunali di Brughedo - impianto sonoro 100 V
Commessa 1914, elaborato E-14|||Rev. 2
||
Sigle|Zona|Modello|Presa|Linea|Att.
D01÷D06|Serra palme|DP-6|6 W|LA|
D07÷D10|Serra felci|DP-6|6 W|LA|AT1
D11÷D12|Orto didattico|TR-15|15 W|LB|
D13÷D20|Viale|FG-10|10 W|LB|
D21÷D24|Aula||3 W|LC|AT2
D25|Biglietteria|DS-6|1,5 W|LC|AT3
D26÷D29|Atrio|DS-6|3 W|LC|
D30÷D31|Erbario|DS-6|3 W|LC|
D32÷D35|Semenzaio|DP-6|6 W|LA|
D36÷D37|Fontana|TR-15|7,5 W|LB|
||
AT1 36 W, AT2 24 W, AT3 6 W
Rev. 2: semenzaio stralciato, presa dell'aula da 6 a 3 W
`)
		p.Put("C9", `
DS-6
`)
		p.Corrected("D9", "6 W ", "3 W")
		p.Strike("A13:F13")
		p.Bold("A1", "A4:F4")
		q := p.Sheet("Linee")
		q.Put("A1", `
Linea|Amplificatore|Uscita|Potenza|Cavo|Lunghezza
LA|AMP1|1|120 W|2 x 1,5 mm²|90 m
LB|AMP1|2|240 W|2 x 2,5 mm²|210 m
LC|AMP2|1|60 W|2 x 1,5 mm²|65 m
`)
		q.Bold("A1:F1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("1914", "Serre comunali di Brughedo", "counts from ranges of tags; a tap corrected inside its cell, a row struck through, both told in the revision note; models with numbers that are no taps")
		t.Revision("2", false)
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; amplifier=AMP1; channel=1", `rows|zone|model|count|tap_w|control
5|Serra palme|DP-6|6|6|
6|Serra felci|DP-6|4|6|AT1`)
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; amplifier=AMP1; channel=2", `rows|zone|model|count|tap_w
7|Orto didattico|TR-15|2|15
8|Viale|FG-10|8|10
14|Fontana|TR-15|2|7.5`)
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; amplifier=AMP2; channel=1", `rows|zone|model|count|tap_w|control
9|Aula|DS-6|4|3|AT2
10|Biglietteria|DS-6|1|1.5|AT3
11|Atrio|DS-6|4|3|
12|Erbario|DS-6|2|3|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|1|120|60
AMP1|2|240|125
AMP2|1|60|31.5`)
		t.Amplifiers("", `amplifier|load_w
AMP1|185
AMP2|31.5`)
		t.Controls("", `control|zone|rated_w|load_w
AT1|Serra felci|36|24
AT2|Aula|24|12
AT3|Biglietteria|6|1.5`)
		t.Lines("", `line|length_m|area_mm2
LA|90|1.5
LB|210|2.5
LC|65|1.5`)
		t.Left("Diffusori", `13|removed|struck through`)
	}},

	{File: "scuola/termoconvettori.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Elenco")
		p.Put("A1", `
Scuola media di Rivaspessa - termoconvettori elettrici
||
Zona|Locale|Apparecchio|N.|W cad.|W totali|Linea quadro|Termostato
Piano terra|Aula 1A|a parete|2|1500|3000|Q1.1|T1
Piano terra|Aula 1B|a parete|2|1500|3000|Q1.1|T2
Piano terra|Aula 1C|a parete|2|1500|3000|Q1.2|T3
Piano terra|Bidelleria|a pavimento|1|750|750|Q1.2|T4
Piano terra|Bagni|a parete|2|500|1000|Q1.2|
Piano primo|Aula 2A|a parete|2|1500|3000|Q2.1|T5
Piano primo|Aula 2B|a parete|2|1500|3000|Q2.1|T6
Piano primo|Aula musica|a parete|3|1500|4500|Q2.2|T7
Piano primo|Sala professori|a pavimento|2|750|1500|Q2.2|T8
||Totale|18||22750||
`)
		p.Bold("A1", "A3:H3", "C13:F13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Scuola media di Rivaspessa", "electric heaters with watts, zones, lines of the board and thermostats")
	}},
}
