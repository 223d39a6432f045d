package main

import "lineaudit/samples/typed"

// deutsch are the lists of the German-speaking foundation.
func deutsch() []typed.Case {
	return []typed.Case{
		{File: "Eissportzentrum Quellrode/Lautsprecherliste.csv", Kind: "schedule", Bytes: ansi(`
Eissportzentrum Quellrode;;;;;;;
ELA-Anlage 100 V;;;;;;;
Lautsprecherliste;;;Stand: 03.11.2008;;;;
;;;;;;;
Lfd. Nr.;Raum;Stück;Typ;Anschlussleistung;Gesamt;Linie;Bemerkung
1;Eingangshalle;6;Deckenlautsprecher 6 W;3 W;18 W;1;
2;Kasse;1;Deckenlautsprecher 6 W;1,5 W;1,5 W;1;
3;Umkleide 1-4;8;Deckenlautsprecher 6 W;1,5 W;12 W;1;
4;Eisfläche;10;Tonsäule 20 W;20 W;200 W;2;
5;Tribüne;8;Tonsäule 20 W;10 W;80 W;3;
6;Schleifraum;1;Wandlautsprecher 10 W;5 W;5 W;1;
7;Parkplatz;2;Druckkammerlautsprecher 15 W;15 W;30 W;3;
;Summe;36;;;346,5 W;;
;;;;;;;
Linie;Verstärker;Leistung;;;;;
1;V1;120 W;;;;;
2;V2;240 W;;;;;
3;V3;120 W;;;;;
`), Truth: func(t *typed.Truth) {
			t.Is("", "Eissportzentrum Quellrode", "plain: decimal commas with units, an amplifier table below joined by line")
			t.Speakers("tap_v=100; line_v=100", `
rows|room|model|count|tap_w|amplifier|channel
6|Eingangshalle|Deckenlautsprecher 6 W|6|3|V1|1
7|Kasse|Deckenlautsprecher 6 W|1|1.5|V1|1
8|Umkleide 1-4|Deckenlautsprecher 6 W|8|1.5|V1|1
9|Eisfläche|Tonsäule 20 W|10|20|V2|2
10|Tribüne|Tonsäule 20 W|8|10|V3|3
11|Schleifraum|Wandlautsprecher 10 W|1|5|V1|1
12|Parkplatz|Druckkammerlautsprecher 15 W|2|15|V3|3
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
V1|1|120|36.5
V2|2|240|200
V3|3|120|110
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
V1|120|36.5
V2|240|200
V3|120|110
`)
			t.Left("", "13|total|right")
		}},
	}
}
