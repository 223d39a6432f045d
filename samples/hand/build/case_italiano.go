package main

import "lineaudit/samples/typed"

// italiano are the lists of the Italian-speaking foundation.
func italiano() []typed.Case {
	return []typed.Case{
		{File: "Palaghiaccio Valsolina/elenco diffusori.csv", Kind: "schedule", Bytes: ansi(`
Palaghiaccio di Valsolina - Impianto di diffusione sonora;;;;;;;
Commessa 12-045;;;Tensione di linea 100 V;;;;
;;;;;;;
Sigla;Locale;Descrizione;Q.tà;Potenza impostata (W);Totale W;Linea;Regolatore
D1;Atrio;Plafoniera 6 W;6;3;18;1;
D2;Biglietteria;Plafoniera 6 W;1;1,5;1,5;1;R1
D3;Spogliatoi;Plafoniera 6 W;8;1,5;12;2;R2
D4;Noleggio pattini;Plafoniera 6 W;3;3;9;2;R3
D5;Pista lato est;Colonna sonora 24 W;5;12;60;3;
D6;Pista lato ovest;Colonna sonora 24 W;5;12;60;4;
D7;Tribuna;Proiettore 20 W;6;10;60;3;
D8;Piazzale;Tromba 25 W;2;25;50;4;
;;;36;;270,5;;
;;;;;;;
Linea;Amplificatore;Potenza nominale;;;;;
1;A1;60 W;;;;;
2;A2;60 W;;;;;
3;A3;120 W;;;;;
4;A4;120 W;;;;;
;;;;;;;
Regolatore;Potenza max;Posizione;;;;;
R1;6 W;biglietteria;;;;;
R2;12 W;corridoio spogliatoi;;;;;
R3;12 W;banco noleggio;;;;;
`), Truth: func(t *typed.Truth) {
			t.Is("12-045", "Palaghiaccio di Valsolina", "plain: a list, then amplifiers and controls in two small tables below")
			t.Speakers("tap_v=100; line_v=100", `
rows|tag|room|model|count|tap_w|control|amplifier|channel
5|D1|Atrio|Plafoniera 6 W|6|3||A1|1
6|D2|Biglietteria|Plafoniera 6 W|1|1.5|R1|A1|1
7|D3|Spogliatoi|Plafoniera 6 W|8|1.5|R2|A2|2
8|D4|Noleggio pattini|Plafoniera 6 W|3|3|R3|A2|2
9|D5|Pista lato est|Colonna sonora 24 W|5|12||A3|3
10|D6|Pista lato ovest|Colonna sonora 24 W|5|12||A4|4
11|D7|Tribuna|Proiettore 20 W|6|10||A3|3
12|D8|Piazzale|Tromba 25 W|2|25||A4|4
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
A1|1|60|19.5
A2|2|60|21
A3|3|120|120
A4|4|120|110
`)
			t.Controls("", `
control|zone|rated_w|load_w
R1|Biglietteria|6|1.5
R2|Spogliatoi|12|12
R3|Noleggio pattini|12|9
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
A1|60|19.5
A2|60|21
A3|120|120
A4|120|110
`)
			t.Left("", "13|total|right")
		}},
	}
}
