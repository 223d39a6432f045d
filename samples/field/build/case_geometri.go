package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// geometri survey and draw in Italy and the Ticino.
var geometri = []typed.Case{
	{File: "italia/19-0331 Museo della Carta.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Diffusori")
		p.Put("A1", `
Museo della Carta - diffusione sonora 100 V
commessa 19/0331

N.|Locale|Tipo|Q.tà|Potenza W|Totale W|Uscita
PIANO TERRA
D1|Atrio|soffitto|4|6|24|AMP1-1
D2|Biglietteria|soffitto|1|3|3|AMP1-1
D3|Guardaroba|soffitto|2|3|6|AMP1-1
D4|Sala macchine|parete|6|10|60|AMP1-2
Totale piano terra|||13||93
PIANO PRIMO
D5|Sala 1|soffitto|4|6|24|AMP2-1
D6|Sala 2|soffitto|4|6|24|AMP2-1
D7|Sala 3|soffitto|3|6|18|AMP2-1
D8|Laboratorio didattico|soffitto|4|3|12|AMP2-2
D9|Uffici|soffitto|3|1.5|4.5|AMP2-2
Totale piano primo|||18||82.5
TOTALE|||31||175.5
`)
		a := p.Sheet("Amplificatori")
		a.Put("A1", `
Amplificatore|Uscita|Potenza W|Posizione
AMP1|1|60|locale quadri PT
AMP1|2|120|locale quadri PT
AMP2|1|120|ripostiglio P1
AMP2|2|60|ripostiglio P1
`)
		c := p.Sheet("Attenuatori")
		c.Put("A1", `
Attenuatore|Diffusori serviti|Potenza W
AT1|D1|36
AT2|D5, D6, D7|100
AT3|D8|20
AT4|D9|6
`)
		p.Bold("A1", "A4:G4", "A5", "A11", "A18:G18")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("19/0331", "Museo della Carta", "floors and subtotals in the list; the sheet of controls names the loudspeakers they serve")
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; amplifier=AMP1", `rows|tag|room|count|tap_w|channel|control
6|D1|Atrio|4|6|1|AT1
7|D2|Biglietteria|1|3|1|
8|D3|Guardaroba|2|3|1|
9|D4|Sala macchine|6|10|2|`)
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; amplifier=AMP2", `rows|tag|room|count|tap_w|channel|control
12|D5|Sala 1|4|6|1|AT2
13|D6|Sala 2|4|6|1|AT2
14|D7|Sala 3|3|6|1|AT2
15|D8|Laboratorio didattico|4|3|2|AT3
16|D9|Uffici|3|1.5|2|AT4`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|1|60|33
AMP1|2|120|60
AMP2|1|120|66
AMP2|2|60|16.5`)
		t.Amplifiers("", `amplifier|load_w
AMP1|93
AMP2|82.5`)
		t.Controls("", `control|rated_w|load_w
AT1|36|24
AT2|100|66
AT3|20|12
AT4|6|4.5`)
		t.Left("Diffusori", `5|title|floor
10|total|sums of a floor
11|title|floor
17|total|sums of a floor
18|total|sums`)
	}},

	{File: "italia/Orto botanico prese.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Prese")
		p.Put("A1", `
Orto botanico di Collefiorito - altoparlanti su linea 100 V
Presa: 1/1 = piena potenza di targa, 1/2 = metà, 1/4 = un quarto

Zona|Punto|Modello|Targa W|Presa|N.
A|Serra calda|tromba|30|'1/2|3
A|Serra fredda|tromba|30|'1/2|2
A|Vivaio|tromba|30|'1/1|1
B|Ingresso|plafoniera|6|'1/2|4
B|Erbario|plafoniera|6|'1/4|6
B|Aula|plafoniera|6|'1/1|4
C|Viale nord|tromba|30|'1/4|6
C|Viale sud|tromba|30|'1/4|6
C|Stagno|tromba|15|'1/1|2

Zona A: amplificatore AMP-A 120 W
Zona B: amplificatore AMP-B 60 W
Zona C: amplificatore AMP-C 160 W
Solo l'aula ha un attenuatore, da 36 W.
`)
		p.Bold("A1", "A4:F4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Orto botanico di Collefiorito", "taps are fractions of the full watts of the loudspeaker, explained in a line above the list")
		t.Speakers("sheet=Prese; tap_v=100; line_v=100; zone=A; amplifier=AMP-A", `rows|room|count|tap_w
5|Serra calda|3|15
6|Serra fredda|2|15
7|Vivaio|1|30`)
		t.Speakers("sheet=Prese; tap_v=100; line_v=100; zone=B; amplifier=AMP-B", `rows|room|count|tap_w
8|Ingresso|4|3
9|Erbario|6|1.5
10|Aula|4|6`)
		t.Speakers("sheet=Prese; tap_v=100; line_v=100; zone=C; amplifier=AMP-C", `rows|room|count|tap_w
11|Viale nord|6|7.5
12|Viale sud|6|7.5
13|Stagno|2|15`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP-A|120|105
AMP-B|60|45
AMP-C|160|120`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP-A|120|105
AMP-B|60|45
AMP-C|160|120`)
		t.Controls("note=unnamed", `zone|rated_w|load_w
Aula|36|24`)
	}},

	{File: "ticino/4417 Lido Riva Chiara.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Altoparlanti")
		p.Put("A1", `
Lido Riva Chiara - impianto 100 V / ELA 100 V|||||Commessa / Auftrag|4417

Pos.|Luogo|Tipo|Pz.|W|Uscita|Regolatore
Pos.|Ort|Typ|Stk.|W|Ausgang|Regler
1|Cassa / Kasse|incasso / Einbau|2|3|1|RV1
2|Atrio / Halle|incasso / Einbau|4|6|1|RV2
3|Spogliatoi D / Garderobe D|incasso / Einbau|6|3|1
4|Spogliatoi U / Garderobe H|incasso / Einbau|6|3|1
5|Piscina coperta / Hallenbad|colonna / Säule|6|20|2
6|Vasca bambini / Kinderbecken|colonna / Säule|2|10|2
7|Palestra / Gymnastik|parete / Wand|4|6|2|RV3
8|Spiaggia / Strand|tromba / Druckkammer|5|15|3
9|Pontile / Steg|tromba / Druckkammer|2|15|3

Uscita / Ausgang|1|2|3
W|120|250|120

Regolatore / Regler|RV1|RV2|RV3
W|10|35|35
`)
		p.Bold("A1", "A3:G4", "A15", "A18")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("4417", "Lido Riva Chiara", "two languages, the header in each of them; outputs and controls in small tables that run across")
		t.Speakers("sheet=Altoparlanti; tap_v=100; line_v=100; channel=1", `rows|tag|room|count|tap_w|control
5|1|Cassa / Kasse|2|3|RV1
6|2|Atrio / Halle|4|6|RV2
7|3|Spogliatoi D / Garderobe D|6|3|
8|4|Spogliatoi U / Garderobe H|6|3|`)
		t.Speakers("sheet=Altoparlanti; tap_v=100; line_v=100; channel=2", `rows|tag|room|count|tap_w|control
9|5|Piscina coperta / Hallenbad|6|20|
10|6|Vasca bambini / Kinderbecken|2|10|
11|7|Palestra / Gymnastik|4|6|RV3`)
		t.Speakers("sheet=Altoparlanti; tap_v=100; line_v=100; channel=3", `rows|tag|room|count|tap_w
12|8|Spiaggia / Strand|5|15
13|9|Pontile / Steg|2|15`)
		t.Channels("line_v=100", `channel|rated_w|load_w
1|120|66
2|250|164
3|120|105`)
		t.Controls("", `control|rated_w|load_w
RV1|10|6
RV2|35|24
RV3|35|24`)
		t.Left("Altoparlanti", `4|header|the header in German`)
	}},

	{File: "italia/Palaghiaccio Valfredda linee.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Altoparlanti")
		p.Put("A1", `
Palaghiaccio Valfredda - elenco altoparlanti (linee 100 V)

Linea|Posizione|Altoparlante|Qta|Presa W
L1|Pista lato A|tromba|5|15
L1|Pista lato B|tromba|5|15
L2|Tribuna bassa|colonna|6|10
L2|Tribuna alta|colonna|4|10
L3|Spogliatoi 1-4|soffitto|8|3
L3|Infermeria|soffitto|1|3
L3|Sala riunioni|soffitto|4|3
L4|Ingresso|soffitto|4|6
L4|Noleggio pattini|soffitto|3|6
L4|Piazzale|tromba|2|10
`)
		l := p.Sheet("Linee")
		l.Put("A1", `
Linea|Amplificatore|Potenza W|Da|A|Lungh. m|Sezione mm²|Carico W
L1|F1|240|Rack|Pista|165|4|150
L2|F2|240|Rack|Tribuna|90|2.5|100
L3|F3|60|Rack|Spogliatoi|70|1.5|39
L4|F4|60|Rack|Ingresso|55|1.5|62

Attenuatori a parete: A1 sala riunioni 20 W, A2 ingresso 36 W
L4 da alleggerire, F4 va in protezione col volume al massimo
`)
		p.Bold("A1", "A3:E3")
		l.Bold("A1:H1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Palaghiaccio Valfredda", "a sheet of lines with amplifier, its rating and the cable; controls in a sentence by their rooms; F4 is overloaded")
		t.Speakers("sheet=Altoparlanti; tap_v=100; line_v=100", `rows|room|count|tap_w|amplifier|control
4|Pista lato A|5|15|F1|
5|Pista lato B|5|15|F1|
6|Tribuna bassa|6|10|F2|
7|Tribuna alta|4|10|F2|
8|Spogliatoi 1-4|8|3|F3|
9|Infermeria|1|3|F3|
10|Sala riunioni|4|3|F3|A1
11|Ingresso|4|6|F4|A2
12|Noleggio pattini|3|6|F4|
13|Piazzale|2|10|F4|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
F1|240|150
F2|240|100
F3|60|39
F4|60|62`)
		t.Amplifiers("", `amplifier|rated_w|load_w
F1|240|150
F2|240|100
F3|60|39
F4|60|62`)
		t.Controls("", `control|rated_w|load_w
A1|20|12
A2|36|24`)
		t.Lines("note=home runs", `line|from|to|length_m|area_mm2
L1|Rack|Pista|165|4
L2|Rack|Tribuna|90|2.5
L3|Rack|Spogliatoi|70|1.5
L4|Rack|Ingresso|55|1.5`)
		t.Left("Linee", `7|note|controls
8|note|advice`)
	}},

	{File: "italia/Maneggio Fontanile rilievo.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Rilievo")
		p.Put("A1", `
Maneggio Fontanile
Impianto di diffusione 100 V - rilievo ottobre 2020

Zona|Punto|Tipo|N|W|Amplificatore|Stato|Note
Campo coperto|Lato lungo est|tromba|4|15|AMP1|in opera
Campo coperto|Lato lungo ovest|tromba|4|15|AMP1|in opera
Campo coperto|Giuria|soffitto|1|6|AMP1|in opera|potenziometro PT1 15 W
Stalle|Corridoio A|tromba|3|7.5|AMP2|in opera
Stalle|Corridoio B|tromba|3|7.5|AMP2|in opera|griglie da pulire
Stalle|Corridoio C|tromba|3|7.5|AMP2|futuro
Stalle|Selleria|soffitto|2|3|AMP2|in opera|potenziometro PT2 15 W
Segreteria|Attesa|soffitto|2|3|AMP2|in opera|potenziometro PT3 6 W
Segreteria|Ufficio|soffitto|1|3|AMP2|smontato
Segreteria|Aula|soffitto|4|3|AMP2|in opera|potenziometro PT4 20 W

AMP1 240 W, AMP2 120 W (sala quadri)
`)
		p.Bold("A1", "A4:H4")
		p.Filtered("A4:H14", "A", "Stalle", 5, 6, 7, 12, 13, 14)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Maneggio Fontanile", "a filter left on hides two of three zones; states in words; controls with rating in the remarks")
		t.Speakers("sheet=Rilievo; tap_v=100; line_v=100; zone=Campo coperto; amplifier=AMP1", `rows|room|count|tap_w|control
5|Lato lungo est|4|15|
6|Lato lungo ovest|4|15|
7|Giuria|1|6|PT1`)
		t.Speakers("sheet=Rilievo; tap_v=100; line_v=100; zone=Stalle; amplifier=AMP2", `rows|room|count|tap_w|control|status
8|Corridoio A|3|7.5||installed
9|Corridoio B|3|7.5||installed
10|Corridoio C|3|7.5||future
11|Selleria|2|3|PT2|installed`)
		t.Speakers("sheet=Rilievo; tap_v=100; line_v=100; zone=Segreteria; amplifier=AMP2", `rows|room|count|tap_w|control|status
12|Attesa|2|3|PT3|installed
13|Ufficio|1|3||removed
14|Aula|4|3|PT4|installed`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP1|240|126
AMP2|120|69`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP1|240|126
AMP2|120|69`)
		t.Controls("", `control|rated_w|load_w
PT1|15|6
PT2|15|6
PT3|6|6
PT4|20|12`)
		t.Left("Rilievo", `10|device|for later
13|device|taken down`)
	}},

	{File: "italia/censimento planetario.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("censimento")
		p.Put("A1", `
Planetario di Colle Alto - censimento altoparlanti
linea 100 V, amplificatore unico con 2 zone

N.|Dove|Cosa|Quanti|Watt|Zona|Annotazioni
1|Cupola|cassa parete|8|10|1
2|Cupola|soffitto|2|?|1|troppo alto, serve il trabattello
3|Regia|soffitto|1|3|1|regolatore 6 W
4|Atrio|soffitto|6|3 o 6|2|etichetta illeggibile
5|Corridoio|soffitto|4|3|2
6|Bagni|soffitto|4|1.5|2
7|Aula|soffitto|4|6|2|regolatore 36 W
8|Terrazza|tromba|2|15|2

Targa amplificatore: 240 W (zona 1: 120 W, zona 2: 120 W)
`)
		p.Bold("A1", "A4:G4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Planetario di Colle Alto", "a survey with one tap unknown and one of two values; the amplifier's outputs are called zones")
		t.Speakers("sheet=censimento; tap_v=100; line_v=100; zone=1; channel=1", `rows|tag|room|count|tap_w
5|1|Cupola|8|10
6|2|Cupola|2|
7|3|Regia|1|3`)
		t.Speakers("sheet=censimento; tap_v=100; line_v=100; zone=2; channel=2", `rows|tag|room|count|tap_w
8|4|Atrio|6|
9|5|Corridoio|4|3
10|6|Bagni|4|1.5
11|7|Aula|4|6
12|8|Terrazza|2|15`)
		t.Channels("line_v=100", `channel|rated_w|load_w|load_min_w|load_max_w
1|120||83|
2|120||90|108`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|`)
		t.Controls("note=unnamed", `zone|rated_w|load_w
Regia|6|3
Aula|36|24`)
		t.Asks("censimento", `6|asked|the tap is not known
8|asked|3 or 6 W`)
	}},
}
