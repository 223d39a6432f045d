package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// installatore is an Italian installer: a table a line, as he wired it.
var installatore = []typed.Case{
	{File: "impianti/Piscina comunale Roccachiara.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Linee")
		p.Put("A1", `
PISCINA COMUNALE DI ROCCACHIARA||||||
Impianto diffusione sonora 100 V - Commessa 118/20
|
LINEA 1 - VASCA - Amplificatore 1 (240 W)
Locale|Diffusori|Presa W|Totale W|Attenuatore|Cavo mmq|Metri
Vasca lato A|5|15|75||2x2,5|55
Vasca lato B|5|15|75||2x2,5|70
Totale linea 1|10||150
|
LINEA 2 - SERVIZI - Amplificatore 2 (120 W)
Locale|Diffusori|Presa W|Totale W|Attenuatore|Cavo mmq|Metri
Atrio|6|6|36|ATT. 1 (50 W)|2x1,5|40
Biglietteria|1|3|3|ATT. 1 (50 W)|2x1,5|8
Spogliatoio uomini|4|3|12|ATT. 2 (24 W)|2x1,5|35
Spogliatoio donne|4|3|12|ATT. 3 (24 W)|2x1,5|38
Infermeria|1|1,5|1,5||2x1,5|22
Totale linea 2|16||64,5
|
LINEA 3 - ESTERNO - Amplificatore 2 (120 W)
Locale|Diffusori|Presa W|Totale W|Attenuatore|Cavo mmq|Metri
Prato|4|10|40||2x2,5|95
Totale linea 3|4||40
|
N.B. Attenuatori con bypass di emergenza 24 V
`)
		p.Bold("A4", "A10", "A19")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("118/20", "Piscina comunale di Roccachiara", "line, place, amplifier and rating in headings over small tables; two lines on one amplifier")
		t.Speakers("tap_v=100; line_v=100; sheet=Linee", `
rows|zone|room|count|tap_w|amplifier|channel|control
6|VASCA|Vasca lato A|5|15|Amplificatore 1|LINEA 1|
7|VASCA|Vasca lato B|5|15|Amplificatore 1|LINEA 1|
12|SERVIZI|Atrio|6|6|Amplificatore 2|LINEA 2|ATT. 1
13|SERVIZI|Biglietteria|1|3|Amplificatore 2|LINEA 2|ATT. 1
14|SERVIZI|Spogliatoio uomini|4|3|Amplificatore 2|LINEA 2|ATT. 2
15|SERVIZI|Spogliatoio donne|4|3|Amplificatore 2|LINEA 2|ATT. 3
16|SERVIZI|Infermeria|1|1.5|Amplificatore 2|LINEA 2|
21|ESTERNO|Prato|4|10|Amplificatore 2|LINEA 3|
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nAmplificatore 1|LINEA 1|240|150\nAmplificatore 2|LINEA 2||64.5\nAmplificatore 2|LINEA 3||40")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAmplificatore 1|240|150\nAmplificatore 2|120|104.5")
		t.Controls("", "control|rated_w|load_w\nATT. 1|50|39\nATT. 2|24|12\nATT. 3|24|12")
		t.Lines("note=one length a room", "zone|length_m|area_mm2\nVasca lato A|55|2.5\nVasca lato B|70|2.5\nAtrio|40|1.5\nBiglietteria|8|1.5\nSpogliatoio uomini|35|1.5\nSpogliatoio donne|38|1.5\nInfermeria|22|1.5\nPrato|95|2.5")
		t.Left("Linee", "8|subtotal|\n17|subtotal|\n22|subtotal|\n24|note|")
	}},

	{File: "impianti/planetario.csv", Kind: "schedule", Bytes: text(`
Planetario di Montelume;;;;;;
Commessa 131/21;;;;;;
;;;;;;
Zona;Locale;Q.tà;Modello;Regolazione;Canale;Regolatore di volume
1;Cupola;8;Cassa a parete;10W;CH1;
2;Ingresso;4;Plafoniera;6W;CH2;REG-2
2;Bookshop;2;Plafoniera;6W;CH2;REG-2
3;Corridoio;5;Plafoniera;1,5W;CH3;
3;Aula didattica;4;Plafoniera;3W;CH3;REG-3
4;Terrazza;3;Tromba;15W;CH4;
4;Terrazza;1;Tromba;15W;CH4;predisposizione
;;;;;;
Amplificatore: 4 canali da 80W 100V;;;;;;
REG-2: 35W, REG-3: 20W;;;;;;
`), Truth: func(t *typed.Truth) {
		t.Is("131/21", "Planetario di Montelume", "units in cells; amplifier and ratings of controls in notes; a provision in the column of controls")
		t.Speakers("tap_v=100; line_v=100", `
rows|zone|room|count|model|tap_w|channel|control|status
5|1|Cupola|8|Cassa a parete|10|CH1||installed
6|2|Ingresso|4|Plafoniera|6|CH2|REG-2|installed
7|2|Bookshop|2|Plafoniera|6|CH2|REG-2|installed
8|3|Corridoio|5|Plafoniera|1.5|CH3||installed
9|3|Aula didattica|4|Plafoniera|3|CH3|REG-3|installed
10|4|Terrazza|3|Tromba|15|CH4||installed
11|4|Terrazza|1|Tromba|15|CH4||future
`)
		t.Channels("line_v=100; rated_w=80", "channel|load_w\nCH1|80\nCH2|36\nCH3|19.5\nCH4|45")
		t.Amplifiers("note=unnamed", "amplifier|rated_w|load_w\n|320|180.5")
		t.Controls("", "control|zone|rated_w|load_w\nREG-2|2|35|36\nREG-3|3|20|12")
	}},

	{File: "impianti/Palaghiaccio Valfredda.ods", Kind: "schedule", Saved: "ods", Book: sheets("Diffusori", `
PALAGHIACCIO VALFREDDA||||||||
Elenco diffusori - Commessa 140/22||||||||
|
Sigla|Posizione|Tipo|Potenza (W)|Presa (W)|Linea|Controllo|Stato
D1-D8|Pista|Tromba|30|15|LA||in servizio
D9-D14|Tribuna|Colonna|20|20|LB||in servizio
D15-D18|Noleggio pattini|Plafone|6|6|LC|C1|in servizio
D19-D20|Cassa|Plafone|6|3|LC|C1|in servizio
D21|Pronto soccorso|Plafone|6|1,5|LC||in servizio
D22-D23|Vecchia cabina|Plafone|6|6|LC||rimossi
D24|Magazzino|Plafone|6||||scorta
`, "Amplificatori", `
Linea|Amplificatore|Potenza|Uscita
LA|AMP 1|240 W|100 V
LB|AMP 2|120 W|70 V
LC|AMP 3|60 W|100 V
|
La linea LB è a 70 V: le prese indicate sono quelle a 70 V.
C1: attenuatore da 36 W con relè di priorità
`), Truth: func(t *typed.Truth) {
		t.Is("140/22", "Palaghiaccio Valfredda", "ranges of tags as counts; power and tap; lines to amplifiers of different voltage on the second sheet; states")
		t.Speakers("sheet=Diffusori", `
rows|tag|room|count|model|tap_w|amplifier|channel|control|tap_v|line_v|status
5|D1-D8|Pista|8|Tromba|15|AMP 1|LA||100|100|installed
6|D9-D14|Tribuna|6|Colonna|20|AMP 2|LB||70.7|70.7|installed
7|D15-D18|Noleggio pattini|4|Plafone|6|AMP 3|LC|C1|100|100|installed
8|D19-D20|Cassa|2|Plafone|3|AMP 3|LC|C1|100|100|installed
9|D21|Pronto soccorso|1|Plafone|1.5|AMP 3|LC||100|100|installed
10|D22-D23|Vecchia cabina|2|Plafone|6|AMP 3|LC||100|100|removed
`)
		t.Channels("", "amplifier|channel|line_v|rated_w|load_w\nAMP 1|LA|100|240|120\nAMP 2|LB|70.7|120|120\nAMP 3|LC|100|60|31.5")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAMP 1|240|120\nAMP 2|120|120\nAMP 3|60|31.5")
		t.Controls("", "control|rated_w|load_w\nC1|36|30")
		t.Left("Diffusori", "11|spare|")
	}},
}
