package main

import (
	"lineaudit/samples/typed"
)

var sundryGerman = []typed.Case{
	// A rink attendant who keeps his own list for when a visitor complains that nothing is heard.
	{File: "sundry/Eishalle Lautsprecherliste.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Eissporthalle Am Kaltenbach;;;;;
Lautsprecherliste, Stand Oktober;;;;;
;;;;;
Nr.;Wo;Stück;W je Stück;Verstärker;Bemerkung
1;Bande West;4;20;V1;Druckkammer
2;Bande Ost;4;20;V1;Druckkammer
3;Tribüne unten;6;10;V2;
4;Tribüne oben;6;7,5;V2;
5;Kasse;1;2,5;V3;Regler R1
6;Schlittschuhverleih;2;5;V3;Regler R2
7;Kabinen;4;2,5;V3;in jeder Kabine einer
8;Sanitätsraum;1;2,5;V3;Regler R3
9;Gang zu den Kabinen;3;2,5;V3;
;Summe;31;;;
;;;;;
V1 und V2 je 240 W, V3 60 W, alles 100 V;;;;;
Regler R1 und R3 je 5 W, R2 20 W;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Eissporthalle Am Kaltenbach", "plain; decimal commas, controls in the remarks, ratings in two lines below")
		t.Speakers("tap_v=100; line_v=100; amplifier=V1; tap_w=20", `rows|room|count
5|Bande West|4
6|Bande Ost|4`)
		t.Speakers("tap_v=100; line_v=100; amplifier=V2", `rows|room|count|tap_w
7|Tribüne unten|6|10
8|Tribüne oben|6|7.5`)
		t.Speakers("tap_v=100; line_v=100; amplifier=V3", `rows|room|count|tap_w|control
9|Kasse|1|2.5|R1
10|Schlittschuhverleih|2|5|R2
11|Kabinen|4|2.5|
12|Sanitätsraum|1|2.5|R3
13|Gang zu den Kabinen|3|2.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
V1|240|160
V2|240|105
V3|60|32.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|240|160
V2|240|105
V3|60|32.5`)
		t.Controls("", `control|rated_w|load_w
R1|5|2.5
R2|20|10
R3|5|2.5`)
		t.Left("", `14|total|sum of pieces`)
	}},
}
