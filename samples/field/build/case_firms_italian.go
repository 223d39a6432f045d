package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Four people who write Italian: a theatre electrician, a maintenance firm, a design studio, the works office of a tram depot.
var firmsItalian = []typed.Case{

	// Il capo elettricista di un teatro tiene l'elenco delle chiamate di scena e barra quello che ha smontato.
	{File: "teatro/chiamate di scena.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Chiamate")
		p.Put("A1", `
Teatro dei Carpini, chiamate di scena
Linee a 100 V, finali nel locale dimmer
||
Finale|Uscita|Dove|Pezzi|Presa W|Potenziometro|Note
F1|1|Corridoio camerini|3|3||
F1|1|Camerino A|1|1.5|POT A|
F1|1|Camerino B|1|1.5|POT B|
F1|1|Camerino C|1|1.5|POT C|
F1|2|Palco destra|1|10||tromba
F1|2|Palco sinistra|1|10||tromba
F1|2|Graticcia|2|6||
F1|2|Sottopalco|2|6||smontati per la buca nuova
F1|2|Buca, parete di fondo|1|6||messo al posto dei due sotto il palco
F2|1|Ridotto|6|3|POT R|
F2|1|Biglietteria|1|3||
F2|1|Guardaroba|2|1.5||
||
F1 ha due uscite da 60 W, F2 una sola da 120 W
POT A, POT B e POT C sono da 5 W, POT R da 30 W
`)
		p.Bold("A1", "A4:G4")
		p.Strike("A12:G12")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Teatro dei Carpini", "plain; one row struck out and replaced by the next, ratings in two sentences")
		t.Speakers("sheet=Chiamate; tap_v=100; line_v=100; amplifier=F1; channel=1", `rows|room|count|tap_w|control
5|Corridoio camerini|3|3|
6|Camerino A|1|1.5|POT A
7|Camerino B|1|1.5|POT B
8|Camerino C|1|1.5|POT C`)
		t.Speakers("sheet=Chiamate; tap_v=100; line_v=100; amplifier=F1; channel=2", `rows|room|count|tap_w
9|Palco destra|1|10
10|Palco sinistra|1|10
11|Graticcia|2|6
13|Buca, parete di fondo|1|6`)
		t.Speakers("sheet=Chiamate; tap_v=100; line_v=100; amplifier=F2; channel=1", `rows|room|count|tap_w|control
14|Ridotto|6|3|POT R
15|Biglietteria|1|3|
16|Guardaroba|2|1.5|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
F1|1|60|13.5
F1|2|60|38
F2|1|120|24`)
		t.Amplifiers("", `amplifier|load_w
F1|51.5
F2|24`)
		t.Controls("", `control|rated_w|load_w
POT A|5|1.5
POT B|5|1.5
POT C|5|1.5
POT R|30|18`)
		t.Left("Chiamate", `12|removed|struck out, taken down`)
	}},

	// Una ditta di manutenzione verbalizza la prova delle linee di una stazione, carico teorico e misurato.
	{File: "verbali/verbale 318 Valrovere.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Verbale")
		p.Put("A1", `
Stazione di Valrovere|||||||Ordine di lavoro 318
Verbale di prova delle linee, tensione costante 100 V, centrale con 6 uscite
||
Uscita|Zona|N. altop.|Tipo|Taratura (W)|Carico teorico (W)|Carico misurato (W)|Potenza uscita (W)|Esito
1|Binario 1|10|tromba|10|100|104|150|positivo
2|Binari 2 e 3|12|tromba|10|120|101|150|due unità mute, da riparare
3|Sottopasso|6|a parete|5|30|31|80|positivo
4|Atrio|8|a soffitto|6|48|49|80|positivo
5|Sala d'attesa|4|a soffitto|3|12|12|80|attenuatore AT5 (24 W) positivo
6|Uffici movimento|3|a soffitto|1.5|4.5|4|80|attenuatore AT6 (12 W) gracchia
Totale||43|||314.5|301|620|
||
Misure eseguite con impedenzimetro a 1 kHz, attenuatori al massimo.
`)
		p.Format(`0.0" W"`, "E5:G10")
		p.Bold("A1", "A4:I4", "A11:I11")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("318", "Stazione di Valrovere", "test record with loads computed and measured; two mute horns still hang there; attenuators in the result")
		t.Speakers("sheet=Verbale; tap_v=100; line_v=100", `rows|zone|count|tap_w|channel|control
5|Binario 1|10|10|1|
6|Binari 2 e 3|12|10|2|
7|Sottopasso|6|5|3|
8|Atrio|8|6|4|
9|Sala d'attesa|4|3|5|AT5
10|Uffici movimento|3|1.5|6|AT6`)
		t.Channels("line_v=100", `channel|rated_w|load_w
1|150|100
2|150|120
3|80|30
4|80|48
5|80|12
6|80|4.5`)
		t.Amplifiers("", `amplifier|load_w
|314.5`)
		t.Controls("", `control|zone|rated_w|load_w
AT5|Sala d'attesa|24|12
AT6|Uffici movimento|12|4.5`)
		t.Left("Verbale", `11|total|sums`)
	}},

	// Uno studio di progettazione elenca i locali con le sigle; la potenza impiegata sta nella legenda.
	{File: "progetto/IS-07 diffusione sonora.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Locali")
		p.Put("A1", `
Piscina comunale Ca' dei Salici, progetto definitivo, tavola IS-07
||
Piano|Locale|Sigla|Q.tà|Linea|Regolatore
Terra|Atrio|DS|6|L1|
Terra|Cassa|DS|1|L1|R1
Terra|Spogliatoio uomini|DU|3|L1|
Terra|Spogliatoio donne|DU|3|L1|
Terra|Vasca grande|PS|6|L2|
Terra|Vasca bambini|PS|2|L2|R2
Primo|Gradinata|PS|4|L3|
Primo|Sala corsi|DS|4|L3|R3
Primo|Direzione|DU|1|L3|R4
Esterno|Solarium|TE|3|L4|
Esterno|Ingresso carraio|TE|1|L4|
`)
		p.Bold("A1", "A3:F3")
		q := p.Sheet("Legenda")
		q.Put("A1", `
Sigla|Descrizione|Potenza impiegata|Potenza massima
DS|Diffusore da controsoffitto|3 W|6 W
DU|Diffusore stagno da incasso|1,5 W|6 W
PS|Proiettore di suono IP65|10 W|20 W
TE|Tromba esponenziale|15 W|30 W
||
Regolatore|Portata W
R1|5
R2|36
R3|24
R4|5
||
Linea|Canale|Potenza canale W|Cavo|Lunghezza m
L1|1|60|2x1,5 mm²|55
L2|2|120|2x2,5 mm²|70
L3|3|60|2x1,5 mm²|48
L4|4|120|2x2,5 mm²|110
||
Amplificatore AMP-P a 4 canali, linee a 100 V
`)
		q.Bold("A1:D1", "A7:B7", "A13:E13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Piscina comunale Ca' dei Salici", "codes whose tap stands in a legend beside the largest power; controls and channels as further tables of the legend")
		t.Speakers("sheet=Locali; tap_v=100; line_v=100; amplifier=AMP-P; channel=1", `rows|room|count|tap_w|control
4|Atrio|6|3|
5|Cassa|1|3|R1
6|Spogliatoio uomini|3|1.5|
7|Spogliatoio donne|3|1.5|`)
		t.Speakers("sheet=Locali; tap_v=100; line_v=100; amplifier=AMP-P; channel=2", `rows|room|count|tap_w|control
8|Vasca grande|6|10|
9|Vasca bambini|2|10|R2`)
		t.Speakers("sheet=Locali; tap_v=100; line_v=100; amplifier=AMP-P; channel=3", `rows|room|count|tap_w|control
10|Gradinata|4|10|
11|Sala corsi|4|3|R3
12|Direzione|1|1.5|R4`)
		t.Speakers("sheet=Locali; tap_v=100; line_v=100; amplifier=AMP-P; channel=4", `rows|room|count|tap_w
13|Solarium|3|15
14|Ingresso carraio|1|15`)
		t.Channels("line_v=100; amplifier=AMP-P", `channel|rated_w|load_w
1|60|30
2|120|80
3|60|53.5
4|120|60`)
		t.Amplifiers("", `amplifier|load_w
AMP-P|223.5`)
		t.Controls("", `control|rated_w|load_w
R1|5|3
R2|36|20
R3|24|12
R4|5|1.5`)
		t.Lines("note=one length a line", `line|length_m|area_mm2
L1|55|1.5
L2|70|2.5
L3|48|1.5
L4|110|2.5`)
	}},

	// L'ufficio tecnico di un deposito tranviario fa un quadro di locali e uscite, con numero per watt in ogni casella.
	{File: "deposito/quadro trombe e diffusori.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Quadro")
		p.Put("A1", `
Deposito tranviario di Roncaro, altoparlanti per locale e per uscita
Nelle caselle: numero x watt. Impianto a 100 V, un solo amplificatore
||
Locale|Uscita 1|Uscita 2|Uscita 3|Uscita 4|Regolatore
Rimessa nord|6x15||||
Rimessa sud|6x15||||
Officina||4x10|||
Torneria||2x10|||
Lavaggio carrozze||2x15|||
Uffici piano terra|||5x3||RV A, 20 W
Uffici primo piano|||6x1,5||RV B, 12 W
Spogliatoi|||4x3||
Piazzale|2x15|||3x30|
Portineria e cancello|||1x3|1x30|
Watt per uscita|210|90|39|120|
Potenza nominale W|240|120|60|240|
`)
		p.Bold("A1", "A4:F4", "A15:F16")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Deposito tranviario di Roncaro", "matrix of rooms by outputs with count times watts in the cells, two rooms on two outputs each, loads and ratings as last rows")
		t.Speakers("sheet=Quadro; tap_v=100; line_v=100", `rows|room|count|tap_w|channel|control
5|Rimessa nord|6|15|1|
6|Rimessa sud|6|15|1|
7|Officina|4|10|2|
8|Torneria|2|10|2|
9|Lavaggio carrozze|2|15|2|
10|Uffici piano terra|5|3|3|RV A
11|Uffici primo piano|6|1.5|3|RV B
12|Spogliatoi|4|3|3|
13|Piazzale|2|15|1|
13|Piazzale|3|30|4|
14|Portineria e cancello|1|3|3|
14|Portineria e cancello|1|30|4|`)
		t.Channels("line_v=100", `channel|rated_w|load_w
1|240|210
2|120|90
3|60|39
4|240|120`)
		t.Amplifiers("", `amplifier|load_w
|459`)
		t.Controls("", `control|rated_w|load_w
RV A|20|15
RV B|12|9`)
		t.Left("Quadro", `15|total|watts an output
16|amplifier|ratings of the outputs`)
	}},
}
