package main

import (
	"lineaudit/samples/typed"

	"github.com/xuri/excelize/v2"
)

// tecnici is an Italian installer of public address who keeps a workbook a job.
var tecnici = []typed.Case{
	{File: "tecnici/Commessa 214 Orto botanico.xlsx", Kind: "schedule", Book: sheets("Diffusori", `
Commessa 214/12|Orto botanico di Pratoverde||||||
Rif.|Ambiente|Diffusore|Q.tà|Presa|Zona|Regolatore|Note
D1|Ingresso|da incasso|4|3 W|Z1|RV1|
D2|Bookshop|da incasso|3|3 W|Z1|RV1|
D3|Serra calda|a tromba|4|15 W|Z2||
D4|Serra fredda|a tromba|3|7,5 W|Z2||
D5|Viale dei tigli|a colonna|6|10 W|Z3||
D6|Aula didattica|a parete|2|6 W|Z1|RV2|
D7|Magazzino|a tromba|1|7,5 W|Z2||
`, "Amplificatori", `
Zona|Amplificatore|Potenza|Uscita
Z1|A1|60 W|100 V
Z2|A2|120 W|100 V
Z3|A3|120 W|100 V
`, "Regolatori", `
Sigla|Posizione|Potenza
RV1|banco ingresso|20 W
RV2|Aula didattica|20 W
`), Truth: func(t *typed.Truth) {
		t.Is("214/12", "Orto botanico di Pratoverde", "Italian and tidy, three sheets joined by zone and control")
		t.Speakers("tap_v=100; line_v=100; sheet=Diffusori", `
rows|tag|room|model|count|tap_w|zone|amplifier|control
3|D1|Ingresso|da incasso|4|3|Z1|A1|RV1
4|D2|Bookshop|da incasso|3|3|Z1|A1|RV1
5|D3|Serra calda|a tromba|4|15|Z2|A2|
6|D4|Serra fredda|a tromba|3|7.5|Z2|A2|
7|D5|Viale dei tigli|a colonna|6|10|Z3|A3|
8|D6|Aula didattica|a parete|2|6|Z1|A1|RV2
9|D7|Magazzino|a tromba|1|7.5|Z2|A2|
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nA1|60|33\nA2|120|90\nA3|120|60")
		t.Amplifiers("", "amplifier|rated_w|load_w\nA1|60|33\nA2|120|90\nA3|120|60")
		t.Controls("rated_w=20", "control|load_w\nRV1|21\nRV2|12")
	}},

	{File: "tecnici/Palaghiaccio Monterovo verifica.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Verifica 2019")
		p.Put("A1", `
PALAGHIACCIO MONTEROVO - VERIFICA IMPIANTO DIFFUSIONE SONORA|||||||
Contratto n. 2019-31|||data: 12/09/2019||||
Impianto a 100 V, 2 amplificatori: finale A da 250 W (pista), finale B da 120 W (servizi)|||||||
|||||||
Zona|Tipo|N.|W cad.|W tot.|Finale|Reg. volume|Esito verifica
Pista lato curva nord|tromba|4|20|80|A||ok
Pista lato curva sud|tromba|4|20|80|A||ok
Tribuna|colonna|4|10|40|A||ok
Noleggio pattini|plafoniera|4|3|12|B|sì, 12 W|ok
Spogliatoi 1-6|plafoniera|12|1,5|18|B|no|una muta, sostituita
Sala stampa|plafoniera|2|6|12|B|sì, 30 W|ok
Infermeria|plafoniera|1|3|3|B|sì, 5 W|regolatore rumoroso
Sala compressori|tromba|2|15|30|B|no|ok
Totale||33||275|||
`)
		p.Merge("A1:H1", "A3:H3")
		p.Bold("A5:H5", "A14:H14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2019-31", "Palaghiaccio Monterovo", "whether there is a control and of how many watts in one cell; ratings of amplifiers in the title")
		t.Speakers("tap_v=100; line_v=100; sheet=Verifica 2019", `
rows|zone|model|count|tap_w|amplifier|note
6|Pista lato curva nord|tromba|4|20|A|
7|Pista lato curva sud|tromba|4|20|A|
8|Tribuna|colonna|4|10|A|
9|Noleggio pattini|plafoniera|4|3|B|unnamed control
10|Spogliatoi 1-6|plafoniera|12|1.5|B|
11|Sala stampa|plafoniera|2|6|B|unnamed control
12|Infermeria|plafoniera|1|3|B|unnamed control
13|Sala compressori|tromba|2|15|B|
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nA|250|200\nB|120|75")
		t.Amplifiers("", "amplifier|rated_w|load_w\nA|250|200\nB|120|75")
		t.Controls("note=unnamed", "zone|rated_w|load_w\nNoleggio pattini|12|12\nSala stampa|30|12\nInfermeria|5|3")
		t.Left("Verifica 2019", "14|total|Totale")
	}},

	{File: "tecnici/Piscina Fontelaghi tabella.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Tabella")
		p.Put("A1", `
Piscina comunale Fontelaghi - commessa 266/17||||||
Linea|1|2|3|4||
Descrizione|Vasca grande|Vasca piccola|Spogliatoi|Ingresso||
Diffusore|tromba 20 W|tromba 20 W|incasso 6 W|incasso 6 W||
Numero diffusori|10|4|14|6||
Presa trasformatore (W)|20|10|1,5|3||
Potenza linea (W)|200|40|21|18||
Amplificatore|PA1|PA2|PA2|PA3||
Potenza amplificatore (W)|250|120|120|60||
Regolatore di volume|-|-|-|RV1 (30 W)||
Cavo (mm²)|2x2,5|2x2,5|2x1,5|2x1,5||
Lunghezza (m)|130|90|75|40||
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("266/17", "Piscina comunale Fontelaghi", "a table that runs across, a column a line; two lines on one amplifier")
		t.Speakers("sheet=Tabella", `
rows|zone|count|tap_w|model|amplifier|channel|control
B|Vasca grande|10|20|tromba 20 W|PA1|1|
C|Vasca piccola|4|10|tromba 20 W|PA2|2|
D|Spogliatoi|14|1.5|incasso 6 W|PA2|3|
E|Ingresso|6|3|incasso 6 W|PA3|4|RV1
`)
		t.Channels("", "amplifier|channel|rated_w|load_w\nPA1|1|250|200\nPA2|2||40\nPA2|3||21\nPA3|4|60|18")
		t.Amplifiers("", "amplifier|rated_w|load_w\nPA1|250|200\nPA2|120|61\nPA3|60|18")
		t.Controls("", "control|rated_w|load_w\nRV1|30|18")
		t.Lines("note=one length a line", "line|length_m|area_mm2\n1|130|2.5\n2|90|2.5\n3|75|1.5\n4|40|1.5")
	}},
}
