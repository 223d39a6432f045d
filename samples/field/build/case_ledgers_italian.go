package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// ledgersItalian are workbooks of an engineer's office, contractors and maintenance firms, and lists of a caretaker and an apprentice, in Italian.
var ledgersItalian = []typed.Case{
	{File: "ledgers/B14_EVAC_elenchi_rev3.xlsx", Kind: "schedule", Book: func() *excelize.File {
		c := typed.NewBook("Copertina")
		c.Put("B3", `
STUDIO TECNICO - IMPIANTI SPECIALI
Commessa|B14
Oggetto|Biblioteca civica di Montaldo, diffusione sonora
Elaborato|Elenchi componenti
Revisione|3
||
Linee altoparlanti a tensione costante 100 V
`)
		c.Bold("B3", "B5")
		p := c.Sheet("Diffusori")
		p.Put("A1", `
Elenco diffusori||||||Presa trasformatore|
Cod. locale|Denominazione|Zona|Tipo|N.|Colore|W per diff.|W tot.
'0.01|Atrio|ZD1|plafone|6|bianco|3|18
'0.02|Prestiti e ritorni|ZD1|plafone|4|bianco|3|12
'0.03|Emeroteca|ZD1|plafone|6|bianco|1,5|9
'0.04|Servizi|ZD1|plafone|2|bianco|1,5|3
'1.01|Sala lettura grande|ZD2|colonna|6|antracite|10|60
'1.02|Sala ragazzi|ZD2|parete|4|bianco|6|24
'1.03|Corridoio|ZD2|plafone|3|bianco|3|9
'2.01|Sala conferenze|ZD3|parete|6|nero|6|36
'2.02|Uffici|ZD3|plafone|4|bianco|1,5|6
'-1.01|Deposito libri|ZD4|tromba|3|grigio|15|45
'-1.02|Rampa|ZD4|tromba|1|grigio|15|15
||||45|||237
`)
		p.Bold("A1:H1", "A2:H2")
		p.Merge("G1:H1")
		a := c.Sheet("Armadio")
		a.Put("A1", `
Armadio AR1, locale tecnico -1.05
||
Amplificatore|Canale|Zona diffusione|Potenza canale|Prodotto cod.|Indirizzo
A1|'1.1|ZD 1|120 W|AP-4120|192.168.8.21
A1|'1.2|ZD 2|120 W||
A1|'1.3|ZD 3|120 W||
A1|'1.4|ZD 4|120 W||
||
Attenuatori
Sigla|Locale|Potenza|Altezza cm
AT.1|'0.03 Emeroteca|20 W|120
AT.2|'1.02 S. ragazzi|50 W|120
AT.3|'2.01 S. conferenze|50 W|140
AT.4|'2.02 Uffici|10 W|140
`)
		a.Bold("A1", "A3:F3", "A9", "A10:D10")
		k := c.Sheet("Cavi")
		k.Put("A1", `
Cavo n.|Da|A zona|Tipo|Lunghezza m
C101|AR1|ZD1|2x1,5 mm² rame FG29|42
C102|AR1|ZD2|2x2,5 mm² rame FG29|64
C103|AR1|ZD3|2x2,5 mm² rame FG29|81
C104|AR1|ZD4|2x1,5 mm² rame FG29|30
`)
		k.Bold("A1:E1")
		return c.File
	}, Truth: func(t *typed.Truth) {
		t.Is("B14", "Biblioteca civica di Montaldo", "four sheets; two header rows; output 1.1 of A1 is its output 1; zones ZD1 and ZD 1; attenuators by room number and a shortened name; total without a word")
		t.Revision("3", false)
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; zone=ZD1; amplifier=A1; channel=1", `rows|room|count|tap_w|control
3|Atrio|6|3|
4|Prestiti e ritorni|4|3|
5|Emeroteca|6|1.5|AT.1
6|Servizi|2|1.5|`)
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; zone=ZD2; amplifier=A1; channel=2", `rows|room|count|tap_w|control
7|Sala lettura grande|6|10|
8|Sala ragazzi|4|6|AT.2
9|Corridoio|3|3|`)
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; zone=ZD3; amplifier=A1; channel=3", `rows|room|count|tap_w|control
10|Sala conferenze|6|6|AT.3
11|Uffici|4|1.5|AT.4`)
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; zone=ZD4; amplifier=A1; channel=4", `rows|room|count|tap_w
12|Deposito libri|3|15
13|Rampa|1|15`)
		t.Channels("line_v=100; rated_w=120; amplifier=A1", `channel|load_w
1|42
2|93
3|42
4|60`)
		t.Amplifiers("", `amplifier|load_w
A1|237`)
		t.Controls("", `control|zone|rated_w|load_w
AT.1|ZD1|20|9
AT.2|ZD2|50|24
AT.3|ZD3|50|36
AT.4|ZD3|10|6`)
		t.Lines("material=copper; note=home run; from=AR1", `line|zone|length_m|area_mm2
C101|ZD1|42|1.5
C102|ZD2|64|2.5
C103|ZD3|81|2.5
C104|ZD4|30|1.5`)
		t.Left("Diffusori", `14|total|sum`)
	}},

	{File: "ledgers/Offerta 88-21 palaghiaccio.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Computo")
		p.Put("A1", `
Palaghiaccio di Rocca Vernassa - offerta 88-21
Pos.|Descrizione|Ubicazione|U.M.|Q.tà|P.U. €|Importo €
|Zona A - Pista
A.1|Tromba bidirezionale 20 W|Lato tribuna|cad|5|112|560
A.2|Tromba bidirezionale 20 W|Lato panchine|cad|5|112|560
|Zona B - Tribuna
B.1|Cassa acustica 30 W|Settore alto|cad|4|94|376
B.2|Cassa acustica 30 W|Settore basso|cad|4|94|376
|Zona C - Servizi
C.1|Plafoniera 6 W|Biglietteria|cad|2|19|38
C.2|Plafoniera 6 W|Noleggio pattini|cad|6|19|114
C.3|Plafoniera 6 W|Spogliatoio casa|cad|3|19|57
C.4|Plafoniera 6 W|Spogliatoio ospiti|cad|3|19|57
C.5|Plafoniera 6 W|Infermeria|cad|1|19|19
||||||2157
`)
		p.Bold("A1", "A2:G2", "B3", "B6", "B9")
		q := p.Sheet("Tarature")
		q.Put("A1", `
Tarature e collegamenti (linea 100 V)
Pos.|Presa da usare|Uscita centrale
A1|15 W|U1
A2|15 W|U1
B1|20 W|U2
B2|10 W|U2
C1|3 W|U3
C2|3 W|U3
C3|1,5 W|U3
C4|1,5 W|U3
C5|1,5 W|U3
`)
		q.Bold("A1", "A2:C2")
		r := p.Sheet("Centrale")
		r.Put("A1", `
Centrale da rack, una sola unità, uscite:
U1|240 W
U2|240 W
U3|60 W
U4|60 W|libera
||
Attenuatori compresi nell'offerta
Pos.|Potenza|Per
D.1|10 W|C.1 Biglietteria
D.2|24 W|C.2 Noleggio
`)
		r.Bold("A1", "A7", "A8:C8")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("88-21", "Palaghiaccio di Rocca Vernassa", "priced bill of quantities with nominal watts; taps and outputs on a second sheet by position A1 for A.1; central unit without a name")
		t.Speakers("sheet=Computo; tap_v=100; line_v=100; zone=Zona A - Pista; channel=U1", `rows|tag|room|count|tap_w
4|A.1|Lato tribuna|5|15
5|A.2|Lato panchine|5|15`)
		t.Speakers("sheet=Computo; tap_v=100; line_v=100; zone=Zona B - Tribuna; channel=U2", `rows|tag|room|count|tap_w
7|B.1|Settore alto|4|20
8|B.2|Settore basso|4|10`)
		t.Speakers("sheet=Computo; tap_v=100; line_v=100; zone=Zona C - Servizi; channel=U3", `rows|tag|room|count|tap_w|control
10|C.1|Biglietteria|2|3|D.1
11|C.2|Noleggio pattini|6|3|D.2
12|C.3|Spogliatoio casa|3|1.5|
13|C.4|Spogliatoio ospiti|3|1.5|
14|C.5|Infermeria|1|1.5|`)
		t.Channels("line_v=100", `channel|rated_w|load_w|note
U1|240|150|
U2|240|120|
U3|60|34.5|
U4|60|0|free`)
		t.Amplifiers("", `amplifier|load_w
|304.5`)
		t.Controls("", `control|rated_w|load_w
D.1|10|6
D.2|24|18`)
		t.Left("Computo", `15|total|sum of the prices`)
	}},

	{File: "ledgers/altoparlanti_scuola.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
piano;posto;quanti;watt;linea
terra;ingresso;2;3;1
terra;corridoio aule;5;3;1
terra;palestra;4;10;2
terra;mensa;4;6;1
primo;corridoio aule;6;3;3
primo;sala insegnanti;1;3;3
primo;aula magna;4;6;3
cortile;trombe;2;15;2
;;;;
linea 1 amplificatore grigio 60 W;;;;
linea 2 amplificatore nero 120 W;;;;
linea 3 amplificatore vecchio 60 W;;;;
tutte e tre a 100 volt. In aula magna c'è la manopola (35 W);;;;
il bidello, sett. 2016;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "caretaker's plain list by floor; three amplifiers named by their looks below the list; one control without a name")
		t.Speakers("tap_v=100; line_v=100; amplifier=amplificatore grigio; channel=1", `rows|zone|room|count|tap_w|note
2|terra|ingresso|2|3|floor as zone
3|terra|corridoio aule|5|3|floor as zone
5|terra|mensa|4|6|floor as zone`)
		t.Speakers("tap_v=100; line_v=100; amplifier=amplificatore nero; channel=2", `rows|zone|room|count|tap_w|note
4|terra|palestra|4|10|floor as zone
9|cortile|trombe|2|15|area as zone`)
		t.Speakers("tap_v=100; line_v=100; amplifier=amplificatore vecchio; channel=3", `rows|zone|room|count|tap_w|note
6|primo|corridoio aule|6|3|floor as zone
7|primo|sala insegnanti|1|3|floor as zone
8|primo|aula magna|4|6|unnamed`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
amplificatore grigio|1|60|45
amplificatore nero|2|120|70
amplificatore vecchio|3|60|45`)
		t.Amplifiers("", `amplifier|rated_w|load_w
amplificatore grigio|60|45
amplificatore nero|120|70
amplificatore vecchio|60|45`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|35|24`)
	}},

	{File: "ledgers/Verbale manutenzione teatro 3306.xlsx", Kind: "schedule", Book: func() *excelize.File {
		c := typed.NewBook("Verbale")
		c.Put("A1", `
Verbale di manutenzione periodica n. 3306
Cliente / impianto:|Teatro comunale di Castelbruno, chiamata e diffusione nei locali
Centrale:|amplificatore a 6 uscite, 100 V
Esito:|positivo con riserva, vedi foglio Anomalie
`)
		c.Bold("A1")
		p := c.Sheet("Controllo diffusori")
		p.Put("A1", `
Uscita 1 - Camerini
Locale|q.tà|W presa|Manopola|funz.
Camerino 1|1|3|MV1|ok
Camerino 2|1|3|MV2|ok
Camerini 3-6|4|3||ok
Sartoria|2|3||ok
||
Uscita 2 - Palcoscenico
Locale|q.tà|W presa|Manopola|funz.
Quinte destre|2|10||ok
Quinte sinistre|2|10||ok
Sottopalco|2|6||ok
Graticcia|2|10||KO
||
Uscita 3 - Foyer
Locale|q.tà|W presa|Manopola|funz.
Foyer platea|8|6|MV3|ok
Foyer galleria|6|6|MV3|ok
Guardaroba|2|3||ok
||
Uscita 4 - Uffici
Locale|q.tà|W presa|Manopola|funz.
Direzione|1|1,5|MV4|ok
Segreteria|2|1,5||ok
`)
		p.Bold("A1", "A2:E2", "A8", "A9:E9", "A15", "A16:E16", "A21", "A22:E22")
		m := c.Sheet("Misure")
		m.Put("A1", `
Uscita|Z nominale ohm|Z misurata ohm|Potenza nom. uscita
1|417|402|60 W
2|139|145|120 W
3|111|118|120 W
4|2222|2100|60 W
5|-|-|60 W
6|-|-|60 W
||
Manopole (regolatori a trasformatore)
MV1|6 W
MV2|6 W
MV3|100 W
MV4|6 W
`)
		m.Bold("A1:D1", "A9")
		n := c.Sheet("Anomalie")
		n.Put("A1", `
N.|Dove|Cosa|Provvedimento
1|Graticcia|entrambi i diffusori muti, cavo tranciato|ripristinare cavo alla prossima visita
2|Camerino 2|manopola dura|lubrificata
`)
		n.Bold("A1:D1")
		return c.File
	}, Truth: func(t *typed.Truth) {
		t.Is("3306", "Teatro comunale di Castelbruno", "sections an output; ratings of outputs on the sheet of measurements; unnamed amplifier; two mute loudspeakers that are still installed")
		t.Speakers("sheet=Controllo diffusori; tap_v=100; line_v=100; zone=Camerini; channel=1", `rows|room|count|tap_w|control
3|Camerino 1|1|3|MV1
4|Camerino 2|1|3|MV2
5|Camerini 3-6|4|3|
6|Sartoria|2|3|`)
		t.Speakers("sheet=Controllo diffusori; tap_v=100; line_v=100; zone=Palcoscenico; channel=2", `rows|room|count|tap_w|note
10|Quinte destre|2|10|
11|Quinte sinistre|2|10|
12|Sottopalco|2|6|
13|Graticcia|2|10|mute, cable cut; still installed`)
		t.Speakers("sheet=Controllo diffusori; tap_v=100; line_v=100; zone=Foyer; channel=3", `rows|room|count|tap_w|control
17|Foyer platea|8|6|MV3
18|Foyer galleria|6|6|MV3
19|Guardaroba|2|3|`)
		t.Speakers("sheet=Controllo diffusori; tap_v=100; line_v=100; zone=Uffici; channel=4", `rows|room|count|tap_w|control
23|Direzione|1|1.5|MV4
24|Segreteria|2|1.5|`)
		t.Channels("line_v=100", `channel|rated_w|load_w|note
1|60|24|
2|120|72|
3|120|90|
4|60|4.5|
5|60|0|unused
6|60|0|unused`)
		t.Amplifiers("", `amplifier|load_w
|190.5`)
		t.Controls("", `control|zone|rated_w|load_w
MV1|Camerini|6|3
MV2|Camerini|6|3
MV3|Foyer|100|84
MV4|Uffici|6|1.5`)
	}},

	{File: "ledgers/Luci emergenza museo civico.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Elenco lampade")
		p.Put("A1", `
Museo civico di Pieve Alta - lampade di emergenza
Registro controlli semestrali
||
N.|Zona|Locale|Tipo lampada|W|Q.tà|Circuito|Autonomia|Esito
1|A|Atrio|LED SE|6|3|L1|1 h|ok
2|A|Biglietteria|LED SA|3|1|L1|1 h|ok
3|A|Scala nord|LED SE|6|4|L1|1 h|ok
4|B|Sala ceramiche|fluorescente|8|4|L2|1 h|batteria
5|B|Sala arazzi|fluorescente|8|4|L2|1 h|ok
6|B|Corridoio|LED SA|3|2|L2|1 h|ok
7|C|Depositi|LED SE|6|5|L3|3 h|ok
8|C|Locale tecnico|LED SE|6|1|L3|3 h|ok
|||||24
`)
		p.Bold("A1", "A4:I4")
		q := p.Sheet("Quadri")
		q.Put("A1", `
Circuito|Quadro|Interruttore|Cavo|m
L1|QE1|10 A|3x1,5 mm²|45
L2|QE1|10 A|3x1,5 mm²|62
L3|QE2|6 A|3x1,5 mm²|28
`)
		q.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Museo civico di Pieve Alta", "emergency luminaires with zones, watts, circuits and cables; no loudspeakers")
	}},

	{File: "ledgers/compito apprendista scuderie.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Foglio1")
		p.Put("A1", `
scuderie di Prato Cervino, rilievo fatto il 9/11 con il capo
||
diffusore n°|dove|che tipo|presa|appeso a
1|box 1-10|tromba|7,5 W|ampli stalle
2|box 11-20|tromba|7,5 W|"
3|box 21-30|tromba|7,5 W|"
4|selleria|parete|5 W|"
5|fienile|tromba|15 W|"
6|maneggio coperto|tromba|15 W|ampli maneggio
7|maneggio coperto|tromba|15 W|"
8|maneggio coperto|tromba|15 W|"
9|maneggio coperto|tromba|15 W|"
10|campo esterno|tromba|30 W|"
11|campo esterno|tromba|30 W|"
12|segreteria|soffitto|2,5 W|ampli stalle
13|club ippico, aula|soffitto|5 W|"
14|club ippico, aula|soffitto|5 W|"

ampli stalle = 120 W, ampli maneggio = 240 W, tutti e due usati sul morsetto 100 V
in aula c'è un regolatore ma non c'è scritto quanti watt
`)
		p.Bold("A3:E3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "scuderie di Prato Cervino", "apprentice's list, a row a loudspeaker, ditto marks for the amplifier, control without name and rating")
		t.Speakers("sheet=Foglio1; tap_v=100; line_v=100; amplifier=ampli stalle", `rows|tag|room|tap_w|note
4|1|box 1-10|7.5|
5|2|box 11-20|7.5|
6|3|box 21-30|7.5|
7|4|selleria|5|
8|5|fienile|15|
15|12|segreteria|2.5|
16|13|club ippico, aula|5|unnamed
17|14|club ippico, aula|5|unnamed`)
		t.Speakers("sheet=Foglio1; tap_v=100; line_v=100; amplifier=ampli maneggio", `rows|tag|room|tap_w
9|6|maneggio coperto|15
10|7|maneggio coperto|15
11|8|maneggio coperto|15
12|9|maneggio coperto|15
13|10|campo esterno|30
14|11|campo esterno|30`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
ampli stalle|120|55
ampli maneggio|240|120`)
		t.Amplifiers("", `amplifier|rated_w|load_w
ampli stalle|120|55
ampli maneggio|240|120`)
		t.Controls("note=unnamed", `control|load_w
|10`)
		t.Asks("Foglio1", `20|asked|rating of the control in the club room`)
	}},

	{File: "ledgers/1507 Autostazione come costruito.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Matrice locali")
		p.Put("A1", `
Autostazione di Borgo Tre Ponti, lavoro 1507 - come costruito
Quantità per locale e presa (linea 100 V)
||
Locale|Zona|Plafone 1,5 W|Plafone 3 W|Parete 6 W|Tromba 15 W|Totale pezzi
Stalli 1-6|Piazzale||||6|6
Stalli 7-12|Piazzale||||6|6
Pensilina taxi|Piazzale|||2||2
Sala d'attesa|Fabbricato||8|2||10
Biglietteria|Fabbricato||3|||3
Servizi igienici|Fabbricato|4||||4
Sottopasso|Sottopasso||2|6||8
Rampe|Sottopasso||||2|2
Officina|Deposito|||2|2|4
Spogliatoi|Deposito|2|1|||3
Totale||6|14|12|16|48
`)
		p.Bold("A1", "A4:G4", "A15:G15")
		q := p.Sheet("Linee")
		q.Put("A1", `
Zona|Amplif.|Potenza|Cavo|Sezione|Lunghezza|Note
PIAZZALE|AMP1|360 W|CV1|2x4|180 m|in cavidotto
FABBRICATO|AMP2|120 W|CV2|2x1,5|55 m|
SOTTOPASSO|AMP3|120 W|CV3|2x2,5|95 m|
DEPOSITO|AMP4|120 W|CV4|2x2,5|110 m|
`)
		q.Bold("A1:G1")
		r := p.Sheet("Regolatori")
		r.Put("A1", `
Sigla|Dove|Watt|Chiave
R.1|Biglietteria|12|sì
R.2|Spogliatoi|10|no
`)
		r.Bold("A1:C1")
		s := p.Sheet("Registro modifiche")
		s.Put("A1", `
Data|Modifica|Firma
06/2015|Prima stesura|LB
09/2015|Aggiunta pensilina taxi (2 parete), già riportata|LB
01/2016|AMP1 sostituito: da 240 a 360 W|GT
`)
		s.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("1507", "Autostazione di Borgo Tre Ponti", "matrix of rooms and taps; amplifiers and cables by zone in capitals; controls by room; a log of changes already made, with an old rating")
		t.Speakers("sheet=Matrice locali; tap_v=100; line_v=100; zone=Piazzale; amplifier=AMP1", `rows|room|count|tap_w
5|Stalli 1-6|6|15
6|Stalli 7-12|6|15
7|Pensilina taxi|2|6`)
		t.Speakers("sheet=Matrice locali; tap_v=100; line_v=100; zone=Fabbricato; amplifier=AMP2", `rows|room|count|tap_w|control
8|Sala d'attesa|8|3|
8|Sala d'attesa|2|6|
9|Biglietteria|3|3|R.1
10|Servizi igienici|4|1.5|`)
		t.Speakers("sheet=Matrice locali; tap_v=100; line_v=100; zone=Sottopasso; amplifier=AMP3", `rows|room|count|tap_w
11|Sottopasso|2|3
11|Sottopasso|6|6
12|Rampe|2|15`)
		t.Speakers("sheet=Matrice locali; tap_v=100; line_v=100; zone=Deposito; amplifier=AMP4", `rows|room|count|tap_w|control
13|Officina|2|6|
13|Officina|2|15|
14|Spogliatoi|2|1.5|R.2
14|Spogliatoi|1|3|R.2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP1|360|192
AMP2|120|51
AMP3|120|72
AMP4|120|48`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP1|360|192
AMP2|120|51
AMP3|120|72
AMP4|120|48`)
		t.Controls("", `control|zone|rated_w|load_w
R.1|Fabbricato|12|9
R.2|Deposito|10|6`)
		t.Lines("note=one length a zone", `line|zone|length_m|area_mm2
CV1|Piazzale|180|4
CV2|Fabbricato|55|1.5
CV3|Sottopasso|95|2.5
CV4|Deposito|110|2.5`)
		t.Left("Matrice locali", `15|total|sums`)
	}},
}
