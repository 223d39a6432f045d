package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// branchesItalian are branch offices of the same firm, in Italian.
var branchesItalian = []typed.Case{
	// a maintenance man's one-sheet list; one tap he could not read
	{File: "branches/filiale Nord/Teatro Arsenio elenco diffusori.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Foglio1")
		p.Put("A1", `
TEATRO ARSENIO DI COLLEVENTO - IMPIANTO CHIAMATA ARTISTI E FOYER
Elenco diffusori al 12/03/2015 - linea 100 V - rif. contratto M/344
||
Zona|Locale|Diffusore|Q.tà|W cad.|Uscita ampli|Regolatore
Foyer|Foyer platea|incasso|6|6|1|
Foyer|Foyer galleria|incasso|4|6|1|
Foyer|Guardaroba|incasso|2|3|1|
Camerini|Camerini 1-6|plafoniera|6|1,5|2|R1 (20 W)
Camerini|Camerone coro|plafoniera|2|3|2|R2 (20 W)
Camerini|Sala trucco|plafoniera|1|1,5|2|R3 (20 W)
Palco|Retropalco dx|cassa|1|10|3|
Palco|Retropalco sx|cassa|1|10|3|
Palco|Sottopalco|cassa|2|non leggibile|3|
Palco|Graticcia|tromba|1|15|3|
Uffici|Direzione|incasso|1|1,5|4|
Uffici|Biglietteria|incasso|2|3|4|
||
Amplificatore a 4 uscite da 120 W ciascuna, marca e sigla non rilevate
`)
		p.Bold("A1", "A4:G4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("M/344", "TEATRO ARSENIO DI COLLEVENTO", "plain; decimal commas; an amplifier without a name with four outputs; one tap that could not be read; control ratings in brackets")
		t.Speakers("sheet=Foglio1; tap_v=100; line_v=100; zone=Foyer; channel=1", `rows|room|count|tap_w
5|Foyer platea|6|6
6|Foyer galleria|4|6
7|Guardaroba|2|3`)
		t.Speakers("sheet=Foglio1; tap_v=100; line_v=100; zone=Camerini; channel=2", `rows|room|count|tap_w|control
8|Camerini 1-6|6|1.5|R1
9|Camerone coro|2|3|R2
10|Sala trucco|1|1.5|R3`)
		t.Speakers("sheet=Foglio1; tap_v=100; line_v=100; zone=Palco; channel=3", `rows|room|count|tap_w
11|Retropalco dx|1|10
12|Retropalco sx|1|10
13|Sottopalco|2|
14|Graticcia|1|15`)
		t.Speakers("sheet=Foglio1; tap_v=100; line_v=100; zone=Uffici; channel=4", `rows|room|count|tap_w
15|Direzione|1|1.5
16|Biglietteria|2|3`)
		t.Channels("line_v=100; rated_w=120", `amplifier|channel|load_w|load_min_w
|1|66|
|2|16.5|
|3||35
|4|7.5|`)
		t.Amplifiers("", `amplifier|rated_w
|480`)
		t.Controls("", `control|rated_w|load_w
R1|20|9
R2|20|6
R3|20|1.5`)
		t.Asks("Foglio1", `13|asked|tap of the two boxes under the stage`)
	}},

	// matrix of rooms against type codes, the taps in a key
	{File: "branches/filiale Nord/Scuola Belmonte matrice locali.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Matrice")
		p.Put("A1", `
Scuola media di Belmonte Inferiore|||||
Diffusione sonora 100 V - quantità per locale|||||
||
Locale|Linea|DS3|DS6|DP6|TR15
Atrio|L1||4||
Corridoio piano terra|L1|5|||
Aule 1A-1D|L1|4|||
Corridoio piano primo|L2|5|||
Aule 2A-2E|L2|5|||
Biblioteca|L2||2||
Palestra|L3|||6|
Spogliatoi|L3|2|||
Cortile|L4||||3
Campo sportivo|L4||||2
||
Legenda
DS3|diffusore da soffitto, presa 3 W
DS6|diffusore da soffitto, presa 6 W
DP6|diffusore da parete, presa 6 W
TR15|tromba, presa 15 W
`)
		p.Bold("A1", "A4:F4", "A16")
		q := p.Sheet("Amplificatori")
		q.Put("A1", `
Linea|Amplificatore|Potenza
L1|A1|120 W
L2|A2|60 W
L3|A3|60 W
L4|A4|120 W
`)
		q.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Scuola media di Belmonte Inferiore", "matrix of rooms against type codes; taps in the key below; an amplifier a line on a second sheet")
		t.Speakers("sheet=Matrice; tap_v=100; line_v=100; amplifier=A1", `rows|room|count|tap_w
5|Atrio|4|6
6|Corridoio piano terra|5|3
7|Aule 1A-1D|4|3`)
		t.Speakers("sheet=Matrice; tap_v=100; line_v=100; amplifier=A2", `rows|room|count|tap_w
8|Corridoio piano primo|5|3
9|Aule 2A-2E|5|3
10|Biblioteca|2|6`)
		t.Speakers("sheet=Matrice; tap_v=100; line_v=100; amplifier=A3", `rows|room|count|tap_w
11|Palestra|6|6
12|Spogliatoi|2|3`)
		t.Speakers("sheet=Matrice; tap_v=100; line_v=100; amplifier=A4", `rows|room|count|tap_w
13|Cortile|3|15
14|Campo sportivo|2|15`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|120|51
A2|60|42
A3|60|42
A4|120|75`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|120|51
A2|60|42
A3|60|42
A4|120|75`)
		t.Left("Matrice", `17|key|type DS3
18|key|type DS6
19|key|type DP6
20|key|type TR15`)
	}},

	// a zone register in a text file, each zone its amplifier and attenuator
	{File: "branches/filiale Sud/registro_zone_deposito_tram.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
COMMESSA;SITO;ZONA;DESCRIZIONE;TIPO;N.;TAP W;TOT W;AMPL.;POT. AMPL. W;ATTEN.;POT. ATT. W;TENSIONE
2010-77;Deposito tram Fontanile;01;Rimessa binari 1-4;TROMBA;8;15;120;AMPL1;240;;;100 V
2010-77;Deposito tram Fontanile;01;Rimessa binari 5-6;TROMBA;4;15;60;AMPL1;240;;;100 V
2010-77;Deposito tram Fontanile;02;Officina;PROIETTORE;4;10;40;AMPL2;120;;;100 V
2010-77;Deposito tram Fontanile;02;Lavaggio;TROMBA;2;10;20;AMPL2;120;;;100 V
2010-77;Deposito tram Fontanile;03;Sala conducenti;PLAFONIERA;3;3;9;AMPL3;60;ATT03;24;100 V
2010-77;Deposito tram Fontanile;03;Sala riposo;PLAFONIERA;2;3;6;AMPL3;60;ATT03;24;100 V
2010-77;Deposito tram Fontanile;04;Spogliatoi;PLAFONIERA;4;1,5;6;AMPL3;60;;;100 V
2010-77;Deposito tram Fontanile;04;Corridoio;PLAFONIERA;5;1,5;7,5;AMPL3;60;;;100 V
2010-77;Deposito tram Fontanile;05;Ufficio movimento;PLAFONIERA;2;3;6;AMPL3;60;ATT05;12;100 V
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("2010-77", "Deposito tram Fontanile", "plain flat list; job, site, ratings and voltage repeated in every row")
		t.Speakers("tap_v=100; line_v=100; zone=01; amplifier=AMPL1; tap_w=15", `rows|room|count
2|Rimessa binari 1-4|8
3|Rimessa binari 5-6|4`)
		t.Speakers("tap_v=100; line_v=100; zone=02; amplifier=AMPL2; tap_w=10", `rows|room|count
4|Officina|4
5|Lavaggio|2`)
		t.Speakers("tap_v=100; line_v=100; amplifier=AMPL3", `rows|zone|room|count|tap_w|control
6|03|Sala conducenti|3|3|ATT03
7|03|Sala riposo|2|3|ATT03
8|04|Spogliatoi|4|1.5|
9|04|Corridoio|5|1.5|
10|05|Ufficio movimento|2|3|ATT05`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMPL1|240|180
AMPL2|120|60
AMPL3|60|34.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMPL1|240|180
AMPL2|120|60
AMPL3|60|34.5`)
		t.Controls("", `control|zone|rated_w|load_w
ATT03|03|24|15
ATT05|05|12|6`)
	}},
}
