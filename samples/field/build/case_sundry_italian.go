package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

var sundryItalian = []typed.Case{
	// A theatre's electrician copies his notebook as he wrote it, with ditto marks; one transformer he could not see.
	{File: "sundry/teatro rilievo foglio 1.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Foglio1")
		p.Put("A1", `
Teatro comunale di Roccamerla, rilievo diffusori
100 V. Ampl. A da 120 W per la sala, ampl. B da 60 W per i servizi

Posto|Pezzi|Tipo|Presa|Ampl.|Attenuatore
Platea sinistra|3|colonna|10 W|A
Platea destra|3|"|"|"
Palchi I ordine|8|parete|1,5 W|"
Palchi II ordine|8|"|"|"
Loggione|4|"|3 W|"
Foyer|4|incasso|3 W|B|AT 1
Guardaroba|2|"|1,5 W|"|"
Biglietteria|1|"|"|"|AT 2
Camerini|6|"|"|"|senza
Retropalco|2|tromba|non leggibile|"|senza

AT 1 regge 24 W, AT 2 regge 5 W
Trombe del retropalco: trasformatore girato verso il muro, da rivedere a scena smontata
`)
		p.Bold("A1", "A4:F4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Teatro comunale di Roccamerla", "ditto marks in four columns; ratings in sentences; one tap that could not be read")
		t.Speakers("sheet=Foglio1; tap_v=100; line_v=100; amplifier=A", `rows|room|count|tap_w
5|Platea sinistra|3|10
6|Platea destra|3|10
7|Palchi I ordine|8|1.5
8|Palchi II ordine|8|1.5
9|Loggione|4|3`)
		t.Speakers("sheet=Foglio1; tap_v=100; line_v=100; amplifier=B", `rows|room|count|tap_w|control
10|Foyer|4|3|AT 1
11|Guardaroba|2|1.5|AT 1
12|Biglietteria|1|1.5|AT 2
13|Camerini|6|1.5|
14|Retropalco|2||`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w|load_min_w
A|120|96|
B|60||25.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|120|96
B|60|`)
		t.Controls("", `control|rated_w|load_w
AT 1|24|15
AT 2|5|1.5`)
		t.Asks("Foglio1", `14|asked|tap of the horns behind the stage`)
	}},

	// A surveyor in a town's works office states what is installed in the library, floor by floor with sums.
	{File: "sundry/LP 1177 biblioteca consistenza.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Consistenza")
		p.Put("A1", `
Biblioteca civica di Altavena, consistenza dell'impianto di diffusione sonora
Pratica LP 1177
Centrale CD con uscite U1, U2 e U3 da 80 W ciascuna, linea a 100 V

PIANO TERRA, uscita U1
Ambiente|Diffusori n.|Presa W|Totale W|Regolatore
Atrio|4|3|12
Banco prestiti|2|1.5|3|RG1
Emeroteca|6|1.5|9|RG2
Servizi igienici|2|1.5|3
Sommano|14||27

PRIMO PIANO, uscita U2
Ambiente|Diffusori n.|Presa W|Totale W|Regolatore
Sala di lettura|10|1.5|15|RG3
Sala ragazzi|4|3|12|RG4
Corridoio|4|3|12
Sommano|18||39

INTERRATO, uscita U3
Ambiente|Diffusori n.|Presa W|Totale W|Regolatore
Deposito compatto|6|6|36
Magazzino|2|6|12
Carico e scarico|1|15|15
Sommano|9||63

Regolatori: RG1 da 5 W, gli altri da 20 W
`)
		p.Merge("A5:E5", "A13:E13", "A20:E20")
		p.Bold("A1", "A5", "A6:E6", "A11:E11", "A13", "A14:E14", "A18:E18", "A20", "A21:E21", "A25:E25")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("LP 1177", "Biblioteca civica di Altavena", "a table a floor with the output in its title and a sum below; ratings of outputs and controls in sentences")
		t.Speakers("sheet=Consistenza; tap_v=100; line_v=100; zone=PIANO TERRA; amplifier=CD; channel=U1; note=floor as zone", `rows|room|count|tap_w|control
7|Atrio|4|3|
8|Banco prestiti|2|1.5|RG1
9|Emeroteca|6|1.5|RG2
10|Servizi igienici|2|1.5|`)
		t.Speakers("sheet=Consistenza; tap_v=100; line_v=100; zone=PRIMO PIANO; amplifier=CD; channel=U2; note=floor as zone", `rows|room|count|tap_w|control
15|Sala di lettura|10|1.5|RG3
16|Sala ragazzi|4|3|RG4
17|Corridoio|4|3|`)
		t.Speakers("sheet=Consistenza; tap_v=100; line_v=100; zone=INTERRATO; amplifier=CD; channel=U3; note=floor as zone", `rows|room|count|tap_w
22|Deposito compatto|6|6
23|Magazzino|2|6
24|Carico e scarico|1|15`)
		t.Channels("line_v=100; rated_w=80", `amplifier|channel|load_w
CD|U1|27
CD|U2|39
CD|U3|63`)
		t.Amplifiers("", `amplifier|load_w
CD|129`)
		t.Controls("", `control|rated_w|load_w
RG1|5|3
RG2|20|9
RG3|20|15
RG4|20|12`)
		t.Left("Consistenza", `11|total|sum of the floor
18|total|sum of the floor
25|total|sum of the floor`)
	}},

	// A wholesaler's branch lists the loudspeakers on its shelves with the taps they can be set to; nothing is installed anywhere.
	{File: "sundry/listino interno diffusori.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Listino")
		p.Put("A1", `
Listino interno, diffusori e accessori per linea 100 V, valido da gennaio
Prezzi netti in euro, trasporto escluso

Codice|Descrizione|Prese selezionabili W|Conf. pezzi|Giacenza|Scaffale|Prezzo
D-010|Diffusore da incasso 130 mm|6 / 3 / 1,5|2|48|C4|14.5
D-011|Diffusore da incasso 165 mm|10 / 6 / 3|2|30|C4|19.2
D-020|Diffusore da parete, bianco|6 / 3 / 1,5|1|22|C5|17.8
D-021|Diffusore da parete, nero|6 / 3 / 1,5|1|9|C5|17.8
D-030|Colonna per interni|20 / 10 / 5|1|6|D1|61
D-040|Tromba, resina|15 / 10 / 5|1|14|D2|43.5
D-041|Tromba, alluminio|30 / 15|1|4|D2|72
R-001|Attenuatore da 12 W|||25|A2|11.9
R-002|Attenuatore da 30 W|||18|A2|15.4
A-120|Amplificatore 120 W, una uscita|||3|E1|310
A-240|Amplificatore 240 W, una uscita|||2|E1|455
K-015|Cavo 2 x 1,5 mm², matassa da 100 m|||11|F1|58
`)
		p.Bold("A1", "A4:G4")
		p.Format("0.00", "G5:G16")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "a price and stock list of 100 V goods: selectable taps, stock and shelves, no place and no line")
	}},
}
