package main

import (
	"strings"

	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// These are documents in Italian: an installer, a drawing office and an ice rink's project engineer in Ticino, a works manager, a railway's patrol,
// a botanical garden's matrix, a voice alarm acceptance and an apprentice at the rack.
var impiantiLocali = []typed.Case{
	{File: "it/museo/Diffusori Museo Tre Ruote.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Piano terra")
		p.Put("A1", `
Museo delle Tre Ruote - diffusione sonora a 100 V
Piano terra

Sigla|Locale|Diffusore|Presa (W)|Zona
D01|Atrio|a plafone|6|Z1
D02|Atrio|a plafone|6|Z1
D03|Biglietteria|a plafone|1.5|Z1
D04|Sala 1|a parete|6|Z2
D05|Sala 1|a parete|6|Z2
D06|Sala 2|a parete|6|Z2
D07|Guardaroba|a plafone|3|Z1
`)
		p.Bold("A1", "A4:E4")
		q := p.Sheet("Piano primo")
		q.Put("A1", `
Museo delle Tre Ruote - diffusione sonora a 100 V
Piano primo

Sigla|Locale|Diffusore|Presa (W)|Zona
D08|Sala 3|a parete|10|Z3
D09|Sala 3|a parete|10|Z3
D10|Sala 4|a parete|6|Z3
D11|Sala conferenze|a parete|6|Z4
D12|Sala conferenze|a parete|6|Z4
D13|Ufficio 1|a plafone|1.5|Z5
D14|Ufficio 2|a plafone|1.5|Z5
`)
		q.Bold("A1", "A4:E4")
		r := p.Sheet("Amplificatori")
		r.Put("A1", `
Zona|Amplificatore|Potenza|Attenuatore
Z1|AMP1|120 W|
Z2|AMP2|120 W|
Z3|AMP3|60 W|
Z4|AMP4|60 W|ATT4, 24 W
Z5|AMP5|30 W|ATT5, 6 W
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Museo delle Tre Ruote", "plain, a sheet a floor; amplifiers and attenuators by zone on a third sheet")
		t.Speakers("sheet=Piano terra; tap_v=100; line_v=100", `rows|tag|room|tap_w|zone|amplifier
5|D01|Atrio|6|Z1|AMP1
6|D02|Atrio|6|Z1|AMP1
7|D03|Biglietteria|1.5|Z1|AMP1
8|D04|Sala 1|6|Z2|AMP2
9|D05|Sala 1|6|Z2|AMP2
10|D06|Sala 2|6|Z2|AMP2
11|D07|Guardaroba|3|Z1|AMP1`)
		t.Speakers("sheet=Piano primo; tap_v=100; line_v=100", `rows|tag|room|tap_w|zone|amplifier|control
5|D08|Sala 3|10|Z3|AMP3|
6|D09|Sala 3|10|Z3|AMP3|
7|D10|Sala 4|6|Z3|AMP3|
8|D11|Sala conferenze|6|Z4|AMP4|ATT4
9|D12|Sala conferenze|6|Z4|AMP4|ATT4
10|D13|Ufficio 1|1.5|Z5|AMP5|ATT5
11|D14|Ufficio 2|1.5|Z5|AMP5|ATT5`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP1|120|16.5
AMP2|120|18
AMP3|60|26
AMP4|60|12
AMP5|30|3`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP1|120|16.5
AMP2|120|18
AMP3|60|26
AMP4|60|12
AMP5|30|3`)
		t.Controls("", `control|zone|rated_w|load_w
ATT4|Z4|24|12
ATT5|Z5|6|3`)
	}},

	{File: "it/scuola/2231 lista altoparlanti.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte("\ufeff" + typed.DOS(`
Scuola media Valmorbia;;;;;;
Incarico 2231, lista altoparlanti a 100 V, stato esecuzione;;;;;;
Piano;Locale;Tipo;Pezzi;Presa W;Linea;Regolatore
Seminterrato;Palestra;tromba;4;15;L4;
Seminterrato;Spogliatoi;soffitto;4;3;L4;RV4
Pianterreno;Atrio;soffitto;6;3;L1;
Pianterreno;Corridoio;soffitto;8;1.5;L1;
Pianterreno;Aula magna;parete;4;10;L3;RV3
Pianterreno;Aula docenti;soffitto;2;1.5;L1;RV1
1° piano;Corridoio;soffitto;8;1.5;L2;
1° piano;Aule 101-106;soffitto;6;1.5;L2;
1° piano;Biblioteca;soffitto;4;1.5;L2;RV2
Esterno;Piazzale;tromba;3;15;L5;
;;;;;;
Linea;Amplificatore;Potenza;Cavo;Lunghezza m;;
L1;V1 canale 1;60 W;2 x 1.5 mm2;95;;
L2;V1 canale 2;60 W;2 x 1.5 mm2;110;;
L3;V2 canale 1;60 W;2 x 2.5 mm2;60;;
L4;V2 canale 2;120 W;2 x 2.5 mm2;140;;
L5;V3;60 W;2 x 2.5 mm2;70;;
;;;;;;
Regolatore;Potenza;;;;;
RV1;6 W;;;;;
RV2;12 W;;;;;
RV3;50 W;;;;;
RV4;24 W;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("2231", "Scuola media Valmorbia", "plain; three tables below one another, joined by line and control; an amplifier with one output beside such with two")
		t.Speakers("tap_v=100; line_v=100; note=floor as zone", `rows|zone|room|count|tap_w|control|amplifier|channel
4|Seminterrato|Palestra|4|15||V2|2
5|Seminterrato|Spogliatoi|4|3|RV4|V2|2
6|Pianterreno|Atrio|6|3||V1|1
7|Pianterreno|Corridoio|8|1.5||V1|1
8|Pianterreno|Aula magna|4|10|RV3|V2|1
9|Pianterreno|Aula docenti|2|1.5|RV1|V1|1
10|1° piano|Corridoio|8|1.5||V1|2
11|1° piano|Aule 101-106|6|1.5||V1|2
12|1° piano|Biblioteca|4|1.5|RV2|V1|2
13|Esterno|Piazzale|3|15||V3|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|60|33
V1|2|60|27
V2|1|60|40
V2|2|120|72
V3||60|45`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1||60
V2||112
V3|60|45`)
		t.Controls("", `control|rated_w|load_w
RV1|6|3
RV2|12|6
RV3|50|40
RV4|24|12`)
		t.Lines("note=one length a line", `line|length_m|area_mm2
L1|95|1.5
L2|110|1.5
L3|60|2.5
L4|140|2.5
L5|70|2.5`)
	}},

	{File: "it/piscina/Variante 2 raffronto.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Variante 2")
		p.Put("A1", `
Piscina comunale di Valfredda
Commessa 1174 - Variante n. 2, quadro di raffronto diffusori (linee a 100 V)

Pos.|Locale|Diffusore e presa|Contratto|Variante 1|Variante 2|Linea
1|Vasca grande|tromba, presa 15 W|4|6|6|L1
2|Vasca piccola|tromba, presa 10 W|2|2|3|L1
3|Tribuna|colonna, presa 20 W|2|2|2|L1
4|Atrio|da incasso, presa 3 W|4|4|4|L2
5|Spogliatoio uomini|da incasso, presa 3 W|2|3|3|L2
6|Spogliatoio donne|da incasso, presa 3 W|2|3|3|L2
7|Corridoio|da incasso, presa 1,5 W|3|3|5|L2
8|Infermeria|da incasso, presa 1,5 W|1|1|0|L2
9|Solarium|tromba, presa 15 W|0|0|2|L3
10|Parcheggio|tromba, presa 10 W|2|0|0|L3
||Totale pezzi|22|24|28|

Linea|Amplificatore|Potenza|Note
L1|Finale 1|240 W|
L2|Finale 2|60 W|
L3|Finale 3|60 W|nuovo in variante 2
||
Sostituisce il quadro della variante 1
`)
		p.Bold("A1:A2", "A4:G4", "C15:F15", "A17:D17")
		p.Colour("FFF2CC", "F4:F15")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("1174", "Piscina comunale di Valfredda", "change order: counts of contract, first and second variation side by side, only the last ones hold; rows that came to nought")
		t.Speakers("sheet=Variante 2; tap_v=100; line_v=100; amplifier=Finale 1", `rows|room|count|tap_w
5|Vasca grande|6|15
6|Vasca piccola|3|10
7|Tribuna|2|20`)
		t.Speakers("sheet=Variante 2; tap_v=100; line_v=100; amplifier=Finale 2", `rows|room|count|tap_w
8|Atrio|4|3
9|Spogliatoio uomini|3|3
10|Spogliatoio donne|3|3
11|Corridoio|5|1.5`)
		t.Speakers("sheet=Variante 2; tap_v=100; line_v=100; amplifier=Finale 3", `rows|room|count|tap_w
13|Solarium|2|15`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
Finale 1|240|160
Finale 2|60|37.5
Finale 3|60|30`)
		t.Amplifiers("", `amplifier|rated_w|load_w
Finale 1|240|160
Finale 2|60|37.5
Finale 3|60|30`)
		t.Left("Variante 2", `12|removed|none left in variation 2
14|removed|none left since variation 1
15|total|sums`)
	}},

	{File: "it/stazione/giro di controllo.tsv", Kind: "schedule", Bytes: func() []byte {
		return []byte(strings.ReplaceAll(typed.Marks.Replace(`N.|Zona|Posizione|Diffusore|Presa|Linea|Esito
1|Marciapiede 1|palo 1|tromba|10W|1|ok
2|Marciapiede 1|palo 2|tromba|10W|1|ok
3|Marciapiede 1|palo 3|tromba|10W|1|muta, cavo staccato, ricollegata
4|Marciapiede 1|palo 4|tromba|10W|1|gracchia, abbassata alla presa 5W
5|Marciapiede 2|palo 5|tromba|10W|2|ok
6|Marciapiede 2|palo 6|tromba|10W|2|ok
7|Marciapiede 2|palo 7|tromba|10W|2|smontata, palo abbattuto
8|Marciapiede 2|palo 8|tromba|10W|2|ok
9|Atrio|soffitto nord|plafoniera|6W|3|ok
10|Atrio|soffitto sud|plafoniera|6W|3|ok
11|Sala d'attesa|soffitto|plafoniera|3W|3|troppo forte, messa a 1,5W
12|Sottopasso|lato binari|parete|6W|4|ok
13|Sottopasso|lato binari|parete|6W|4|ok
14|Sottopasso|lato strada|parete|?|4|presa non leggibile, da verificare

Linee a 100 V. Linea 1: finale F1 da 120 W. Linea 2: finale F2 da 120 W. Linee 3 e 4: finale F3 da 60 W
`), "|", "\t"))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "patrol: remarks say that taps were changed, that one horn was taken down and that one tap cannot be read; two lines on one amplifier")
		t.Speakers("tap_v=100; line_v=100; zone=Marciapiede 1; amplifier=F1; channel=1", `rows|room|tap_w|note
2|palo 1|10|
3|palo 2|10|
4|palo 3|10|
5|palo 4|5|the remark lowers it from 10 W`)
		t.Speakers("tap_v=100; line_v=100; zone=Marciapiede 2; amplifier=F2; channel=2", `rows|room|tap_w
6|palo 5|10
7|palo 6|10
9|palo 8|10`)
		t.Speakers("tap_v=100; line_v=100; amplifier=F3; channel=3", `rows|zone|room|tap_w|note
10|Atrio|soffitto nord|6|
11|Atrio|soffitto sud|6|
12|Sala d'attesa|soffitto|1.5|the remark lowers it from 3 W`)
		t.Speakers("tap_v=100; line_v=100; zone=Sottopasso; amplifier=F3; channel=4", `rows|room|tap_w
13|lato binari|6
14|lato binari|6
15|lato strada|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w|load_min_w
F1|1|120|35|
F2|2|120|30|
F3|3||13.5|
F3|4|||12`)
		t.Amplifiers("", `amplifier|rated_w|load_w
F1|120|35
F2|120|30
F3|60|`)
		t.Left("", `8|removed|taken down, its post is gone`)
		t.Asks("", `15|asked|tap that cannot be read`)
	}},

	{File: "it/orto/Orto botanico matrice prese.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Matrice")
		p.Put("A1", `
Orto botanico di Pratolungo - numero di diffusori per locale e per presa (linee a 100 V)

Locale|Zona|1,5 W|3 W|6 W|10 W|15 W|Totale W
Serra calda|Serre|||6|2||56
Serra fredda|Serre|||4|||24
Semenzaio|Serre||2||||6
Ingresso|Accoglienza|1|4||||13.5
Biglietteria|Accoglienza|2|||||3
Viale dei tigli|Giardino||||2|4|80
Laghetto|Giardino|||2|3||42
Aula didattica|Aule||4||||12
Erbario|Aule|2|2||||9
Totale pezzi||5|12|12|7|4|245.5

Zona|Amplificatore|W|Attenuatore
Serre|AMP A|120|
Accoglienza|AMP B|60|AT-B (24 W)
Giardino|AMP C|240|
Aule|AMP D|60|AT-D (50 W)
`)
		p.Bold("A1", "A3:H3", "A13:H13", "A15:D15")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Orto botanico di Pratolungo", "matrix of rooms and taps; two rows with two taps and more; amplifiers and attenuators by zone below")
		t.Speakers("sheet=Matrice; tap_v=100; line_v=100; zone=Serre; amplifier=AMP A", `rows|room|count|tap_w
4|Serra calda|6|6
4|Serra calda|2|10
5|Serra fredda|4|6
6|Semenzaio|2|3`)
		t.Speakers("sheet=Matrice; tap_v=100; line_v=100; zone=Accoglienza; amplifier=AMP B; control=AT-B", `rows|room|count|tap_w
7|Ingresso|1|1.5
7|Ingresso|4|3
8|Biglietteria|2|1.5`)
		t.Speakers("sheet=Matrice; tap_v=100; line_v=100; zone=Giardino; amplifier=AMP C", `rows|room|count|tap_w
9|Viale dei tigli|2|10
9|Viale dei tigli|4|15
10|Laghetto|2|6
10|Laghetto|3|10`)
		t.Speakers("sheet=Matrice; tap_v=100; line_v=100; zone=Aule; amplifier=AMP D; control=AT-D", `rows|room|count|tap_w
11|Aula didattica|4|3
12|Erbario|2|1.5
12|Erbario|2|3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP A|120|86
AMP B|60|16.5
AMP C|240|122
AMP D|60|21`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP A|120|86
AMP B|60|16.5
AMP C|240|122
AMP D|60|21`)
		t.Controls("", `control|zone|rated_w|load_w
AT-B|Accoglienza|24|16.5
AT-D|Aule|50|21`)
		t.Left("Matrice", `13|total|sums of columns`)
	}},

	{File: "it/ghiaccio/Pista Valdorso altoparlanti e cavi.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Altoparlanti")
		p.Put("A1", `
Sigla|Locale|Modello|Presa|Circuito
AP-101|Pista, lato ovest|tromba 30 W|15 W|C1
AP-102|Pista, lato ovest|tromba 30 W|15 W|C1
AP-103|Pista, lato est|tromba 30 W|15 W|C1
AP-104|Pista, lato est|tromba 30 W|15 W|C1
AP-201|Tribuna|colonna 20 W|10 W|C2
AP-202|Tribuna|colonna 20 W|10 W|C2
AP-203|Tribuna|colonna 20 W|10 W|C2
AP-301|Spogliatoio 1|incasso 6 W|3 W|C3
AP-302|Spogliatoio 2|incasso 6 W|3 W|C3
AP-303|Corridoio|incasso 6 W|1.5 W|C3
AP-304|Cassa|incasso 6 W|1.5 W|C3
`)
		q := p.Sheet("Circuiti")
		q.Put("A1", `
Circuito|Amplificatore|Uscita|Potenza uscita|Tensione|Regolatore
C1|AV-1|1|120 W|100 V|
C2|AV-1|2|60 W|100 V|
C3|AV-2|1|60 W|100 V|RV-3 (24 W), per tutto il circuito
`)
		r := p.Sheet("Cavi")
		r.Put("A1", `
Cavo|Da|A|Sezione|Lunghezza
W101|AV-1 uscita 1|AP-101|2 x 2.5 mm²|45 m
W102|AP-101|AP-102|2 x 2.5 mm²|18 m
W103|AP-102|AP-103|2 x 2.5 mm²|30 m
W104|AP-103|AP-104|2 x 2.5 mm²|18 m
W201|AV-1 uscita 2|AP-201|2 x 2.5 mm²|60 m
W202|AP-201|AP-202|2 x 1.5 mm²|12 m
W203|AP-202|AP-203|2 x 1.5 mm²|12 m
W301|AV-2 uscita 1|RV-3|2 x 1.5 mm²|25 m
W302|RV-3|AP-301|2 x 1.5 mm²|4 m
W303|AP-301|AP-302|2 x 1.5 mm²|6 m
W304|AP-302|AP-303|2 x 1.5 mm²|9 m
W305|AP-303|AP-304|2 x 1.5 mm²|14 m
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "loudspeakers, circuits and cables joined by tags; the greatest power stands in the model, the tap beside it; cables from loudspeaker to loudspeaker")
		t.Speakers("sheet=Altoparlanti; tap_v=100; line_v=100; amplifier=AV-1; channel=1", `rows|tag|room|tap_w
2|AP-101|Pista, lato ovest|15
3|AP-102|Pista, lato ovest|15
4|AP-103|Pista, lato est|15
5|AP-104|Pista, lato est|15`)
		t.Speakers("sheet=Altoparlanti; tap_v=100; line_v=100; amplifier=AV-1; channel=2; room=Tribuna", `rows|tag|tap_w
6..8|AP-201..AP-203|10`)
		t.Speakers("sheet=Altoparlanti; tap_v=100; line_v=100; amplifier=AV-2; channel=1; control=RV-3", `rows|tag|room|tap_w
9|AP-301|Spogliatoio 1|3
10|AP-302|Spogliatoio 2|3
11|AP-303|Corridoio|1.5
12|AP-304|Cassa|1.5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AV-1|1|120|60
AV-1|2|60|30
AV-2|1|60|9`)
		t.Amplifiers("", `amplifier|load_w
AV-1|90
AV-2|9`)
		t.Controls("", `control|rated_w|load_w
RV-3|24|9`)
		t.Lines("note=from-to", `line|from|to|length_m|area_mm2
W101|AV-1 uscita 1|AP-101|45|2.5
W102|AP-101|AP-102|18|2.5
W103|AP-102|AP-103|30|2.5
W104|AP-103|AP-104|18|2.5
W201|AV-1 uscita 2|AP-201|60|2.5
W202|AP-201|AP-202|12|1.5
W203|AP-202|AP-203|12|1.5
W301|AV-2 uscita 1|RV-3|25|1.5
W302|RV-3|AP-301|4|1.5
W303|AP-301|AP-302|6|1.5
W304|AP-302|AP-303|9|1.5
W305|AP-303|AP-304|14|1.5`)
	}},

	{File: "it/teatro/verbale EVAC 56C.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Collaudo")
		p.Put("A1", `
Verbale di collaudo EVAC - Teatro comunale di Rocca Serena - rif. 56/C
Linee doppie A e B a 100 V, diffusori alternati

Zona|Linea A||||Linea B
|Uscita|N. diff.|Presa|Z mis. (ohm)|Uscita|N. diff.|Presa|Z mis. (ohm)
Platea|U1.1|8|6 W|205|U1.2|8|6 W|210
Palchi|U1.3|10|3 W|330|U1.4|9|3 W|372
Foyer|U2.1|5|6 W|331|U2.2|5|6 W|335
Palcoscenico|U2.3|2|15 W|335|U2.4|2|15 W|n.m.
Camerini|U3.1|6|1,5 W|1100|U3.2|6|1,5 W|1105
Scale|U3.3|4|3 W|830|U3.4|3|3 W|1100
Totale||35||||33
||
Finali U1, U2 e U3: quattro uscite da 125 W ciascuno
n.m. = non misurata, linea accessibile solo dalla graticcia
`)
		p.Merge("B4:E4", "F4:I4")
		p.Bold("A1", "A4:I5", "A12:I12")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("56/C", "Teatro comunale di Rocca Serena", "acceptance of a voice alarm: lines A and B beside one another, so that each row holds two sets of loudspeakers; measured impedances; output rating in a sentence below")
		t.Speakers("sheet=Collaudo; tap_v=100; line_v=100", `rows|zone|amplifier|channel|count|tap_w
6|Platea|U1|1|8|6
6|Platea|U1|2|8|6
7|Palchi|U1|3|10|3
7|Palchi|U1|4|9|3
8|Foyer|U2|1|5|6
8|Foyer|U2|2|5|6
9|Palcoscenico|U2|3|2|15
9|Palcoscenico|U2|4|2|15
10|Camerini|U3|1|6|1.5
10|Camerini|U3|2|6|1.5
11|Scale|U3|3|4|3
11|Scale|U3|4|3|3`)
		t.Channels("line_v=100; rated_w=125", `amplifier|channel|load_w
U1|1|48
U1|2|48
U1|3|30
U1|4|27
U2|1|30
U2|2|30
U2|3|30
U2|4|30
U3|1|9
U3|2|9
U3|3|12
U3|4|9`)
		t.Amplifiers("", `amplifier|load_w
U1|153
U2|120
U3|39`)
		t.Left("Collaudo", `12|total|sums`)
	}},

	{File: "it/deposito/armadio ampli.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Armadio megafonia deposito tram Colle Basso, tutte linee 100V;;;;
Posto;Tipo;Pz.;W;Note
AMPLI 1, 2 canali da 120W;;;;
Can. 1;;;;
Officina fosse;tr.;4;15;
Officina banchi;tr.;2;15;
Can. 2;;;;
Rimessa binari 1-3;tr.;3;10;
Rimessa binari 4-6;tr.;3;10;
Lavaggio;tr.;1;10;
AMPLI 2, 2 canali da 60W;;;;
Can. 1;;;;
Uffici;plaf.;6;1,5;c. regolatore R1 da 12W
Sala turni;plaf.;2;3;c. regolatore R2 da 12W
Spogliatoi;plaf.;4;1,5;
Can. 2;;;;
Ingresso;plaf.;2;3;
Portineria;plaf.;1;3;c. regolatore R3 da 6W
;;;;
tr. = tromba, plaf. = plafoniera, W di ogni pezzo;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Deposito tram Colle Basso", "an apprentice's list from the rack: amplifiers and outputs as titles, abbreviations explained below, controls with ratings in notes")
		t.Speakers("tap_v=100; line_v=100; amplifier=AMPLI 1; channel=1", `rows|room|count|tap_w
5|Officina fosse|4|15
6|Officina banchi|2|15`)
		t.Speakers("tap_v=100; line_v=100; amplifier=AMPLI 1; channel=2", `rows|room|count|tap_w
8|Rimessa binari 1-3|3|10
9|Rimessa binari 4-6|3|10
10|Lavaggio|1|10`)
		t.Speakers("tap_v=100; line_v=100; amplifier=AMPLI 2; channel=1", `rows|room|count|tap_w|control
13|Uffici|6|1.5|R1
14|Sala turni|2|3|R2
15|Spogliatoi|4|1.5|`)
		t.Speakers("tap_v=100; line_v=100; amplifier=AMPLI 2; channel=2", `rows|room|count|tap_w|control
17|Ingresso|2|3|
18|Portineria|1|3|R3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMPLI 1|1|120|90
AMPLI 1|2|120|70
AMPLI 2|1|60|21
AMPLI 2|2|60|9`)
		t.Amplifiers("", `amplifier|load_w
AMPLI 1|160
AMPLI 2|30`)
		t.Controls("", `control|rated_w|load_w
R1|12|9
R2|12|6
R3|6|3`)
	}},
}
