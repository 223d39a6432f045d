package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// desksItaly: a contractor's offer, a museum keeper, a design office, a maintenance man and an electrician.
var desksItaly = []typed.Case{
	{File: "desks/offerte/233-22 stazione.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Diffusori")
		p.Put("A1", `
Offerta 233/22 - Stazione di Borgo Lanza, diffusione sonora 100 V
Zona|Locale|Articolo|Q.tà|Presa (W)|Prezzo €|Importo €
Z1|Binario 1|proiettore sonoro|10|10|78|780
Z1|Pensilina|proiettore sonoro|4|10|78|312
Z2|Binario 2|proiettore sonoro|10|10|78|780
Z3|Atrio|colonna|2|20|145|290
Z3|Sala d'attesa|plafoniera|4|3|32|128
Z3|Biglietteria|plafoniera|2|3|32|64
Z4|Uffici|plafoniera|6|3|32|192
Z4|Spogliatoio|plafoniera|2|1.5|32|64
Z5|Sottopasso|antivandalo|8|6|54|432
|||48|||3042
`)
		p.Bold("A1", "A2:G2")
		q := p.Sheet("Centrale")
		q.Put("A1", `
Amplificatore|Uscita|Zona|Potenza (W)
AMP1|1|Z1|160
AMP1|2|Z2|160
AMP2|1|Z3|80
AMP2|2|Z4|80
AMP2|3|Z5|80
AMP2|4|riserva|80
`)
		q.Bold("A1:D1")
		r := p.Sheet("Attenuatori")
		r.Put("A1", `
Sigla|Locale|Potenza max (W)|Prezzo €
AT1|Sala d'attesa|24|26
AT2|Biglietteria|12|22
`)
		r.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("233/22", "Stazione di Borgo Lanza", "plain offer with prices; outputs by zone and attenuators by room on other sheets, a spare output")
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; zone=Z1; amplifier=AMP1; channel=1", `rows|room|count|tap_w
3|Binario 1|10|10
4|Pensilina|4|10`)
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; zone=Z2; amplifier=AMP1; channel=2", `rows|room|count|tap_w
5|Binario 2|10|10`)
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; zone=Z3; amplifier=AMP2; channel=1", `rows|room|count|tap_w|control
6|Atrio|2|20|
7|Sala d'attesa|4|3|AT1
8|Biglietteria|2|3|AT2`)
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; zone=Z4; amplifier=AMP2; channel=2", `rows|room|count|tap_w
9|Uffici|6|3
10|Spogliatoio|2|1.5`)
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; zone=Z5; amplifier=AMP2; channel=3", `rows|room|count|tap_w
11|Sottopasso|8|6`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|1|160|140
AMP1|2|160|100
AMP2|1|80|58
AMP2|2|80|21
AMP2|3|80|48
AMP2|4|80|0`)
		t.Amplifiers("", `amplifier|load_w
AMP1|240
AMP2|127`)
		t.Controls("", `control|rated_w|load_w
AT1|24|12
AT2|12|6`)
		t.Left("Diffusori", `12|total|sums`)
	}},

	{File: "desks/custode/casse museo della carta.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Foglio1")
		p.Put("A1", `
Museo della Carta di Valfiorita
Casse degli annunci, giro fatto il 12 marzo
||
Stanza|Casse|Watt ognuna|Dove
Ingresso|2|3|soffitto
Bookshop|2|3|soffitto, manopola da 10 W dietro la cassa
Sala macine|4|6|travi
Sala tini|4|6|travi
Sala torchi|3|6|parete
Archivio|1|1,5|sopra la porta
Laboratorio bambini|4|3|soffitto, manopola da 20 W alla porta
Corridoio|3|1,5|soffitto
Bagni|2|1,5|soffitto
Cortile|2|10|trombe
||
L'amplificatore è nello sgabuzzino: 240 W, uscita 100 V, una linea sola.
In magazzino ci sono ancora 2 casse nuove di scorta.
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Museo della Carta di Valfiorita", "keeper's list; the amplifier in a sentence below, decimal commas as text, two knobs without names, spares in a sentence")
		t.Speakers("sheet=Foglio1; tap_v=100; line_v=100", `rows|room|count|tap_w|note
5|Ingresso|2|3|
6|Bookshop|2|3|unnamed
7|Sala macine|4|6|
8|Sala tini|4|6|
9|Sala torchi|3|6|
10|Archivio|1|1.5|
11|Laboratorio bambini|4|3|unnamed
12|Corridoio|3|1.5|
13|Bagni|2|1.5|
14|Cortile|2|10|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|119`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|119`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|10|6
|20|12`)
		t.Left("Foglio1", `17|spare|two in store`)
	}},

	{File: "desks/studio/tabella prese biblioteca.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Tabella")
		p.Put("A1", `
Biblioteca civica di Pratorosso||||||Comm. 1804
Numero di altoparlanti per locale e per presa del trasformatore (linea 100 V)
||
Locale|1,5 W|3 W|6 W|10 W|Linea|Totale W
Atrio|||4||L1|24
Prestito|2|2|||L1|9
Sala lettura||8|4||L2|48
Emeroteca||4|||L2|12
Sala ragazzi||6|||L2|18
Sala conferenze|||6|2|L3|56
Regia|1||||L3|1.5
Uffici|4|1|||L4|9
Scale|3||||L4|4.5
Deposito libri||4||1|L4|22
Totale altoparlanti|10|25|14|3||204
||
Linea|Uscita amplificatore (W)
L1|60
L2|120
L3|120
L4|60
`)
		p.Bold("A1", "A4:G4", "A15:G15", "A17:B17")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("1804", "Biblioteca civica di Pratorosso", "matrix of rooms and taps; totals across and down; outputs of an amplifier without a name below")
		t.Speakers("sheet=Tabella; tap_v=100; line_v=100; channel=L1", `rows|room|count|tap_w
5|Atrio|4|6
6|Prestito|2|1.5
6|Prestito|2|3`)
		t.Speakers("sheet=Tabella; tap_v=100; line_v=100; channel=L2", `rows|room|count|tap_w
7|Sala lettura|8|3
7|Sala lettura|4|6
8|Emeroteca|4|3
9|Sala ragazzi|6|3`)
		t.Speakers("sheet=Tabella; tap_v=100; line_v=100; channel=L3", `rows|room|count|tap_w
10|Sala conferenze|6|6
10|Sala conferenze|2|10
11|Regia|1|1.5`)
		t.Speakers("sheet=Tabella; tap_v=100; line_v=100; channel=L4", `rows|room|count|tap_w
12|Uffici|4|1.5
12|Uffici|1|3
13|Scale|3|1.5
14|Deposito libri|4|3
14|Deposito libri|1|10`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
|L1|60|33
|L2|120|78
|L3|120|57.5
|L4|60|35.5`)
		t.Amplifiers("", `amplifier|load_w
|204`)
		t.Left("Tabella", `15|total|sums`)
	}},

	{File: "desks/manutenzione/scheda prova palaghiaccio.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Latin1(typed.DOS(`
PALAGHIACCIO DI CIMADORO;;;;;
Scheda di prova altoparlanti;;;Rapporto n. 88/2021;;
Impianto a 100 V;;;;;
N.;Posizione;Linea;Presa;Esito;Nota
ALT-01;Pista lato nord;1;15 W;OK;
ALT-02;Pista lato nord;1;15 W;OK;
ALT-03;Pista lato nord;1;15 W;OK;
ALT-04;Pista lato sud;1;15 W;OK;
ALT-05;Pista lato sud;1;15 W;KO;bobina interrotta, sostituito con uguale in giornata
ALT-06;Pista lato sud;1;15 W;OK;
ALT-07;Tribuna;2;10 W;OK;
ALT-08;Tribuna;2;10 W;OK;
ALT-09;Tribuna;2;10 W;OK;
ALT-10;Tribuna;2;illeggibile;OK;etichetta sbiadita, presa da verificare
ALT-11;Noleggio pattini;3;3 W;OK;
ALT-12;Noleggio pattini;3;3 W;OK;
ALT-13;Spogliatoio A;3;3 W;OK;
ALT-14;Spogliatoio B;3;3 W;OK;
ALT-15;Infermeria;3;1,5 W;OK;
ALT-16;Locale macchine;3;6 W;OK;
;;;;;
Linea;Amplificatore;Potenza nominale;;;
1;F1;120 W;;;
2;F2;60 W;;;
3;F3;60 W;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("88/2021", "PALAGHIACCIO DI CIMADORO", "test sheet, a row a loudspeaker; one replaced like for like the same day, one tap that cannot be read; amplifiers by line below")
		t.Speakers("tap_v=100; line_v=100; amplifier=F1; channel=1; tap_w=15", `rows|tag|room
5..7|ALT-01..|Pista lato nord
8..10|ALT-04..|Pista lato sud`)
		t.Speakers("tap_v=100; line_v=100; amplifier=F2; channel=2; room=Tribuna", `rows|tag|tap_w
11..13|ALT-07..|10
14|ALT-10|`)
		t.Speakers("tap_v=100; line_v=100; amplifier=F3; channel=3", `rows|tag|room|tap_w
15|ALT-11|Noleggio pattini|3
16|ALT-12|Noleggio pattini|3
17|ALT-13|Spogliatoio A|3
18|ALT-14|Spogliatoio B|3
19|ALT-15|Infermeria|1.5
20|ALT-16|Locale macchine|6`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w|load_min_w
F1|1|120|90|
F2|2|60||30
F3|3|60|19.5|`)
		t.Amplifiers("", `amplifier|rated_w|load_w
F1|120|90
F2|60|
F3|60|19.5`)
		t.Asks("", `14|asked|tap of ALT-10 that cannot be read`)
	}},

	{File: "desks/elettricista/teatro tratte cavi.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Tratte")
		p.Put("A1", `
Teatro dei Tigli, rifacimento annunci e chiamata||||||lavoro 57/19
Centrale AC1, 100 V: uscita 1 da 120 W, uscita 2 da 60 W, uscita 3 da 60 W
||
Cavo|Da|A|m|Sezione|Altoparlanti|W cad.
Uscita 1 - Sala
C1|AC1|Platea destra|38|2x2,5|3|10
C2|Platea destra|Platea sinistra|22|"|3|10
C3|Platea sinistra|Galleria|27|"|4|6
Uscita 2 - Foyer
C4|AC1|Foyer|45|2x1,5|4|6
C5|Foyer|Guardaroba|12|"|1|3
C6|Foyer|Scalone|18|"|2|3
Uscita 3 - Camerini
C7|AC1|Corridoio camerini|31|2x1,5|3|3
C8|Corridoio camerini|Camerini 1-4|16|"|4|1,5
C9|Corridoio camerini|Sartoria|9|"|1|3
C10|Sartoria|Sala prove|24|"|2|6
Totale m|||242|||
`)
		p.Bold("A1", "A4:G4", "A5", "A9", "A13")
		p.Merge("A5:G5", "A9:G9", "A13:G13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("57/19", "Teatro dei Tigli", "cable runs that also say how many loudspeakers hang at their far end; outputs as merged titles, ratings in a sentence, ditto marks")
		t.Speakers("sheet=Tratte; tap_v=100; line_v=100; amplifier=AC1; channel=1; zone=Sala; note=area as zone", `rows|room|count|tap_w
6|Platea destra|3|10
7|Platea sinistra|3|10
8|Galleria|4|6`)
		t.Speakers("sheet=Tratte; tap_v=100; line_v=100; amplifier=AC1; channel=2; zone=Foyer; note=area as zone", `rows|room|count|tap_w
10|Foyer|4|6
11|Guardaroba|1|3
12|Scalone|2|3`)
		t.Speakers("sheet=Tratte; tap_v=100; line_v=100; amplifier=AC1; channel=3; zone=Camerini; note=area as zone", `rows|room|count|tap_w
14|Corridoio camerini|3|3
15|Camerini 1-4|4|1.5
16|Sartoria|1|3
17|Sala prove|2|6`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AC1|1|120|84
AC1|2|60|33
AC1|3|60|30`)
		t.Amplifiers("", `amplifier|load_w
AC1|147`)
		t.Lines("", `line|from|to|length_m|area_mm2
C1|AC1|Platea destra|38|2.5
C2|Platea destra|Platea sinistra|22|2.5
C3|Platea sinistra|Galleria|27|2.5
C4|AC1|Foyer|45|1.5
C5|Foyer|Guardaroba|12|1.5
C6|Foyer|Scalone|18|1.5
C7|AC1|Corridoio camerini|31|1.5
C8|Corridoio camerini|Camerini 1-4|16|1.5
C9|Corridoio camerini|Sartoria|9|1.5
C10|Sartoria|Sala prove|24|1.5`)
		t.Left("Tratte", `18|total|metres`)
	}},
}
