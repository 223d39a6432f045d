package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// tradesItalian are an estimator, a pool's technician, a commissioning engineer, a school's electrician, a stable's electrician and a rink's manager, in Italian.
var tradesItalian = []typed.Case{
	// Un preventivista offre l'impianto di un teatro: voci, opzioni non comprese, apparecchi con il nome nella descrizione.
	{File: "offerte/88-24 Teatro Montalbara.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Offerta")
		p.Put("A1", `
Offerta 88/24. Teatro comunale di Montalbara, diffusione sonora a 100 V
||
Voce|Descrizione|Ambiente|Q.tà|Presa W|Linea|Prezzo €|Importo €
A|DIFFUSORI
A.1|Colonna sonora|Platea|6|15|1|180|1080
A.2|Diffusore da parete|Loggione|6|6|1|62|372
A.3|Diffusore da incasso|Atrio|6|3|2|38|228
A.4|Diffusore da incasso|Corridoi palchi|10|1.5|2|38|380
A.5|Diffusore da incasso|Camerini|8|1.5|3|38|304
A.6|Tromba|Carico scene|1|10|3|75|75
|Totale diffusori||37||||2439
B|OPZIONI, non comprese, eventuale seconda fase
B.1|Diffusore da incasso|Sala prove|4|3|3|38|152
B.2|Tromba|Cortile|2|10|3|75|150
C|APPARECCHI
C.1|Amplificatore AM1 da 240 W, linea 1|Locale tecnico|1|||720|720
C.2|Amplificatore AM2 da 60 W, linea 2|Locale tecnico|1|||310|310
C.3|Amplificatore AM3 da 60 W, linea 3|Locale tecnico|1|||310|310
C.4|Attenuatore AT1 da 24 W|Atrio|1|||46|46
C.5|Attenuatore AT2 da 24 W|Camerini|1|||46|46
|Totale apparecchi|||||| 1432
`)
		p.Bold("A1", "A3:H3", "A4:B4", "A12:B12", "A15:B15", "B11:H11", "B21:H21")
		p.Format("#,##0.00", "G5:H10", "G13:H14", "G16:H20")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("88/24", "Teatro comunale di Montalbara", "offer in sections; amplifiers and controls are items whose descriptions carry name, rating and line; options not included")
		t.Speakers("sheet=Offerta; tap_v=100; line_v=100; amplifier=AM1", `rows|room|count|tap_w
5|Platea|6|15
6|Loggione|6|6`)
		t.Speakers("sheet=Offerta; tap_v=100; line_v=100; amplifier=AM2", `rows|room|count|tap_w|control
7|Atrio|6|3|AT1
8|Corridoi palchi|10|1.5|`)
		t.Speakers("sheet=Offerta; tap_v=100; line_v=100; amplifier=AM3", `rows|room|count|tap_w|control
9|Camerini|8|1.5|AT2
10|Carico scene|1|10|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AM1|240|126
AM2|60|33
AM3|60|22`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AM1|240|126
AM2|60|33
AM3|60|22`)
		t.Controls("", `control|rated_w|load_w
AT1|24|18
AT2|24|12`)
		t.Left("Offerta", `11|total|sums
13|future|option, not included
14|future|option, not included
21|total|sum of the prices`)
	}},

	// Il tecnico di una piscina conta i diffusori per presa; nell'atrio ce ne sono di due prese.
	{File: "piscina/diffusori per presa.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Prese")
		p.Put("A1", `
Piscina di Valmorella, numero di diffusori per presa (linea 100 V)
||
Ambiente|Uscita|1,5 W|3 W|6 W|10 W|Totale W|Regolatore
Vasca grande|A1.1||||8|80
Vasca piccola|A1.1|||4||24
Tribuna|A1.2|||6||36|RG1
Spogliatoi donne|A1.3|6||||9|RG2
Spogliatoi uomini|A1.3|6||||9|RG2
Docce|A1.3|4||||6
Atrio|A1.4||4|1||18
Uffici|A1.4||2|||6|RG3
Locale filtri|A1.4||||2|20
Totale||16|6|11|10|208
||
A1: quattro uscite da 120 W
RG1 60 W, RG2 36 W, RG3 12 W
`)
		p.Bold("A1", "A3:H3", "A13:G13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Piscina di Valmorella", "matrix: taps across with decimal comma, one place with two taps; ratings in notes below")
		t.Speakers("sheet=Prese; tap_v=100; line_v=100; amplifier=A1", `rows|room|count|tap_w|channel|control
4|Vasca grande|8|10|1|
5|Vasca piccola|4|6|1|
6|Tribuna|6|6|2|RG1
7|Spogliatoi donne|6|1.5|3|RG2
8|Spogliatoi uomini|6|1.5|3|RG2
9|Docce|4|1.5|3|
10|Atrio|4|3|4|
10|Atrio|1|6|4|
11|Uffici|2|3|4|RG3
12|Locale filtri|2|10|4|`)
		t.Channels("line_v=100; amplifier=A1", `channel|rated_w|load_w
1|120|104
2|120|36
3|120|24
4|120|44`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|480|208`)
		t.Controls("", `control|rated_w|load_w
RG1|60|36
RG2|36|18
RG3|12|6`)
		t.Left("Prese", `13|total|sums`)
	}},

	// Un collaudatore misura le linee di un museo: una riga per linea con tutto quello che serve.
	{File: "collaudi/verbale 56 museo.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Verbale")
		p.Put("A1", `
Verbale di collaudo n. 56, Museo della Carta di Valcarta
Tensione di linea 100 V
||
Linea|Ambiente|N. diffusori|Presa W|Carico W|Misurato W|Amplificatore|Uscita|Potenza uscita W|Attenuatore|Portata att. W|Cavo mm²|Lunghezza m|Esito
L1|Galleria piano terra|10|6|60|61.2|AMP1|1|120|AT1|100|2.5|86.5|positivo
L2|Galleria primo piano|8|6|48|48.9|AMP1|2|120|AT2|60|2.5|104|positivo
L3|Atrio|6|3|18|18.4|AMP2|1|60|||1.5|32|positivo
L4|Laboratori|5|3|15|15.3|AMP2|2|60|AT3|24|1.5|47.5|positivo
L5|Deposito|3|10|30|30.6|AMP2|3|60|||1.5|71|positivo
L6|Uffici|4|1.5|6|6.1|AMP2|4|60|AT4|12|1.5|58|positivo
L7|Cortile|2|15|30|29.8|AMP3|1|60|||2.5|120|positivo
L8|Aula didattica|4|3|12|12.2|AMP3|2|60|AT5|24|1.5|39|positivo
`)
		p.Bold("A1", "A4:N4")
		p.Format("0.0", "D5:F12", "L5:M12")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Museo della Carta di Valcarta", "plain: one wide row a line, with measured watts beside the calculated ones")
		t.Speakers("sheet=Verbale; tap_v=100; line_v=100; note=place of the line as zone", `rows|zone|count|tap_w|amplifier|channel|control
5|Galleria piano terra|10|6|AMP1|1|AT1
6|Galleria primo piano|8|6|AMP1|2|AT2
7|Atrio|6|3|AMP2|1|
8|Laboratori|5|3|AMP2|2|AT3
9|Deposito|3|10|AMP2|3|
10|Uffici|4|1.5|AMP2|4|AT4
11|Cortile|2|15|AMP3|1|
12|Aula didattica|4|3|AMP3|2|AT5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|1|120|60
AMP1|2|120|48
AMP2|1|60|18
AMP2|2|60|15
AMP2|3|60|30
AMP2|4|60|6
AMP3|1|60|30
AMP3|2|60|12`)
		t.Amplifiers("", `amplifier|load_w
AMP1|108
AMP2|69
AMP3|42`)
		t.Controls("", `control|zone|rated_w|load_w
AT1|Galleria piano terra|100|60
AT2|Galleria primo piano|60|48
AT3|Laboratori|24|15
AT4|Uffici|12|6
AT5|Aula didattica|24|12`)
		t.Lines("note=one length a zone", `line|zone|length_m|area_mm2
L1|Galleria piano terra|86.5|2.5
L2|Galleria primo piano|104|2.5
L3|Atrio|32|1.5
L4|Laboratori|47.5|1.5
L5|Deposito|71|1.5
L6|Uffici|58|1.5
L7|Cortile|120|2.5
L8|Aula didattica|39|1.5`)
	}},

	// L'elettricista di una scuola fa il sopralluogo piano per piano; il secondo piano carica troppo il suo amplificatore.
	{File: "scuola/sopralluogo Collerive.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Sopralluogo")
		p.Put("A1", `
Scuola media di Collerive, sopralluogo impianto voce. Linee a 100 V
||
PIANO TERRA, amplificatore AP1 da 120 W
Locale|Diffusori|Presa (W)|Osservazioni
Portineria|1|3|
Atrio|4|6|
Palestra|4|10|volume con RG1, che sta in portineria
Spogliatoi|2|3|
||
PRIMO PIANO, amplificatore AP2 da 60 W
Locale|Diffusori|Presa (W)|Osservazioni
Aule da 1 a 6|6|3|uno per aula
Corridoio|3|3|
Sala professori|1|3|volume con RG2 accanto alla porta
Biblioteca|2|3|volume con RG3
||
SECONDO PIANO, amplificatore AP3 da 60 W
Locale|Diffusori|Presa (W)|Osservazioni
Aule da 7 a 12|6|3|uno per aula
Corridoio|3|3|
Aula magna|6|6|volume con RG4 sul palco
Laboratorio|2|3|
||
Portata dei regolatori: RG1 60 W, RG2 6 W, RG3 12 W, RG4 60 W
`)
		p.Bold("A1", "A3", "A10", "A17")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Scuola media di Collerive", "floors as titles with amplifier and rating, heads repeated; controls in remarks, their ratings in one sentence; one amplifier is overloaded")
		t.Speakers("sheet=Sopralluogo; tap_v=100; line_v=100; zone=PIANO TERRA; amplifier=AP1; note=floor as zone", `rows|room|count|tap_w|control
5|Portineria|1|3|
6|Atrio|4|6|
7|Palestra|4|10|RG1
8|Spogliatoi|2|3|`)
		t.Speakers("sheet=Sopralluogo; tap_v=100; line_v=100; zone=PRIMO PIANO; amplifier=AP2; note=floor as zone", `rows|room|count|tap_w|control
12|Aule da 1 a 6|6|3|
13|Corridoio|3|3|
14|Sala professori|1|3|RG2
15|Biblioteca|2|3|RG3`)
		t.Speakers("sheet=Sopralluogo; tap_v=100; line_v=100; zone=SECONDO PIANO; amplifier=AP3; note=floor as zone", `rows|room|count|tap_w|control
19|Aule da 7 a 12|6|3|
20|Corridoio|3|3|
21|Aula magna|6|6|RG4
22|Laboratorio|2|3|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AP1|120|73
AP2|60|36
AP3|60|69`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AP1|120|73
AP2|60|36
AP3|60|69`)
		t.Controls("", `control|rated_w|load_w
RG1|60|40
RG2|6|3
RG3|12|6
RG4|60|36`)
	}},

	// L'elettricista di un circolo ippico tiene la distinta delle tratte; i diffusori stanno in fondo a ogni tratta.
	{File: "ippico/tratte Prato Lungo.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Unicode16(typed.DOS(`
Circolo ippico Prato Lungo, distinta delle tratte							
Amplificatore AX a 100 V: uscita 1 da 120 W, uscita 2 da 60 W							
							
Tratta	Da	A	Metri	Sezione	Diffusori in A	Presa	Note
T1	AX uscita 1	Maneggio coperto	45,5	2,5 mm²	6	10 W	
T2	Maneggio coperto	Tribunetta	18	2,5 mm²	2	6 W	
T3	Tribunetta	Campo esterno	62	2,5 mm²	2	15 W	metà tratta interrata
T4	AX uscita 2	Segreteria	12	1,5 mm²	2	3 W	
T5	Segreteria	Sala soci	9,5	1,5 mm²	4	3 W	questi 4 con attenuatore AT1 da 24 W
T6	Sala soci	Scuderia A	38	1,5 mm²	4	3 W	
T7	Scuderia A	Scuderia B	22	1,5 mm²	4	3 W	
T8	Scuderia B	Selleria	6	1,5 mm²	1	1,5 W	
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Circolo ippico Prato Lungo", "cable list as Unicode text with tabs: the loudspeakers hang at the far end of each run, the output is told only where a chain starts")
		t.Speakers("tap_v=100; line_v=100; amplifier=AX; channel=1", `rows|room|count|tap_w
5|Maneggio coperto|6|10
6|Tribunetta|2|6
7|Campo esterno|2|15`)
		t.Speakers("tap_v=100; line_v=100; amplifier=AX; channel=2", `rows|room|count|tap_w|control
8|Segreteria|2|3|
9|Sala soci|4|3|AT1
10|Scuderia A|4|3|
11|Scuderia B|4|3|
12|Selleria|1|1.5|`)
		t.Channels("line_v=100; amplifier=AX", `channel|rated_w|load_w
1|120|102
2|60|43.5`)
		t.Amplifiers("", `amplifier|load_w
AX|145.5`)
		t.Controls("", `control|rated_w|load_w
AT1|24|12`)
		t.Lines("note=from-to", `line|from|to|length_m|area_mm2
T1|AX uscita 1|Maneggio coperto|45.5|2.5
T2|Maneggio coperto|Tribunetta|18|2.5
T3|Tribunetta|Campo esterno|62|2.5
T4|AX uscita 2|Segreteria|12|1.5
T5|Segreteria|Sala soci|9.5|1.5
T6|Sala soci|Scuderia A|38|1.5
T7|Scuderia A|Scuderia B|22|1.5
T8|Scuderia B|Selleria|6|1.5`)
	}},

	// Il responsabile di un palaghiaccio tiene lo stesso elenco dal 2009: barra quello che smonta, aggiunge in fondo.
	{File: "palaghiaccio/elenco dal 2009.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Elenco")
		p.Put("A1", `
Palaghiaccio di Valgelina, diffusori. Barrato = smontato
Finali a 100 V: P1 240 W, P2 120 W, P3 60 W
||
Posizione|Tipo|Pezzi|W cad.|Finale|Regolatore|Anno||Regolatore|W max|Dove si trova
Pista, lato spogliatoi|tromba|4|15|P1||2009||RG1|24|Cassa
Pista, lato parcheggio|tromba|4|15|P1||2009||RG2|36|Corridoio spogliatoi
Tribuna bassa|cassa|6|6|P2||2009||RG3|6|Cabina giudici
Tribuna alta|cassa|4|6|P2||2009
Cassa|incasso|2|3|P3|RG1|2009
Noleggio pattini|incasso|4|3|P3|RG1|2009
Spogliatoi 1-4|incasso|8|1.5|P3|RG2|2009
Infermeria|incasso|1|1.5|P3||2011
Officina|tromba|1|10|P3||2011
Tribuna alta|colonna|2|20|P2||2019
Cabina giudici|incasso|1|3|P2|RG3|2019
Garage macchina del ghiaccio|tromba|1|10|P3||2022
`)
		p.Bold("A1", "A4:G4", "I4:K4")
		p.Strike("A8:G8", "A13:G13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Palaghiaccio di Valgelina", "living list: two rows struck through, a place twice (old and new), controls in a table on the right, ratings in a sentence")
		t.Speakers("sheet=Elenco; tap_v=100; line_v=100", `rows|room|count|tap_w|amplifier|control
5|Pista, lato spogliatoi|4|15|P1|
6|Pista, lato parcheggio|4|15|P1|
7|Tribuna bassa|6|6|P2|
9|Cassa|2|3|P3|RG1
10|Noleggio pattini|4|3|P3|RG1
11|Spogliatoi 1-4|8|1.5|P3|RG2
12|Infermeria|1|1.5|P3|
14|Tribuna alta|2|20|P2|
15|Cabina giudici|1|3|P2|RG3
16|Garage macchina del ghiaccio|1|10|P3|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
P1|240|120
P2|120|79
P3|60|41.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
P1|240|120
P2|120|79
P3|60|41.5`)
		t.Controls("", `control|rated_w|load_w
RG1|24|18
RG2|36|12
RG3|6|3`)
		t.Left("Elenco", `8|removed|struck through
13|removed|struck through`)
	}},
}
