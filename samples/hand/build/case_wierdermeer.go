package main

import "lineaudit/samples/typed"

// wierdermeer are more lists of the Dutch-speaking foundation.
func wierdermeer() []typed.Case {
	return []typed.Case{
		{File: "IJsbaan Hogeveld/luidsprekerlijst.csv", Kind: "schedule", Bytes: ansi(`
IJsbaan Hogeveld;;;;;;;
Luidsprekerlijst omroep en achtergrondmuziek;;;;;;;
Projectnummer;11-206;;Lijnspanning;100 V;;;
;;;;;;;
LS-nr.;Ruimte;Type;Aantal;Ingesteld vermogen;Totaal;Lijn;Volumeregelaar
1;Hal;Inbouw 6W;4;3 W;12 W;A;
2;Kassa;Inbouw 6W;1;1,5 W;1,5 W;A;VR1
3;Kleedkamers 1-6;Inbouw 6W;6;1,5 W;9 W;A;
4;Schaatsverhuur;Inbouw 6W;3;3 W;9 W;A;VR2
5;Baan noord;Geluidszuil 30W;6;15 W;90 W;B;
6;Baan zuid;Geluidszuil 30W;6;15 W;90 W;C;
7;Tribune;Projector 20W;5;10 W;50 W;C;
8;Dweilmachinestalling;Hoorn 15W;1;15 W;15 W;B;
;Totaal;;32;;276,5 W;;
;;;;;;;
Lijn;Versterker;Vermogen;;;;;
A;VA;60 W;;;;;
B;VB;120 W;;;;;
C;VC;120 W;;;;;
;;;;;;;
VR1 en VR2: 10 W;;;;;;;
`), Truth: func(t *typed.Truth) {
			t.Is("11-206", "IJsbaan Hogeveld", "plain: list, amplifiers by line below, the controls' rating in a sentence; VC is an amplifier")
			t.Speakers("tap_v=100; line_v=100", `
rows|tag|room|model|count|tap_w|control|amplifier|channel
6|1|Hal|Inbouw 6W|4|3||VA|A
7|2|Kassa|Inbouw 6W|1|1.5|VR1|VA|A
8|3|Kleedkamers 1-6|Inbouw 6W|6|1.5||VA|A
9|4|Schaatsverhuur|Inbouw 6W|3|3|VR2|VA|A
10|5|Baan noord|Geluidszuil 30W|6|15||VB|B
11|6|Baan zuid|Geluidszuil 30W|6|15||VC|C
12|7|Tribune|Projector 20W|5|10||VC|C
13|8|Dweilmachinestalling|Hoorn 15W|1|15||VB|B
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w|note
VA|A|60|31.5|
VB|B|120|105|
VC|C|120|140|over its rating
`)
			t.Controls("rated_w=10", `
control|zone|load_w
VR1|Kassa|1.5
VR2|Schaatsverhuur|9
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
VA|60|31.5
VB|120|105
VC|120|140
`)
			t.Left("", "14|total|right")
		}},

		{File: "Plantentuin Oosterwold/versterkerkast.xls", Kind: "schedule", Saved: "xls", Book: book("Kast", `
Plantentuin Oosterwold - versterkerkast K1|||||
|||||
Versterker|Kanaal|Max. belasting|Groep|Aangesloten|Reserve
EV1|1|120 W|Kas 1|80 W|40 W
EV1|2|120 W|Kas 2|60 W|60 W
EV2|1|60 W|Entree|34,5 W|25,5 W
EV2|2|60 W|Buitenterrein|60 W|0 W
`, bold("A1", "A3:F3"), and("Groepen", `
Groep|Luidspreker|Stuks|Aftakking (W)|Opmerking
Kas 1|Projector|8|10|
Kas 2|Projector|4|10|
Kas 2|Wandkast|4|5|
Entree|Inbouw|6|3|
Entree|Inbouw|6|1.5|toiletten
Entree|Wandkast|1|7.5|winkel
Buitenterrein|Hoorn|4|15|
Buitenterrein|Hoorn|2||nog te plaatsen
`, bold("A1:E1"))), Truth: func(t *typed.Truth) {
			t.Is("", "Plantentuin Oosterwold", "plain: a cabinet sheet and a group list joined by the group; two horns are still to be placed; no line voltage anywhere")
			t.Speakers("sheet=Groepen", `
rows|zone|model|count|tap_w|amplifier|channel
2|Kas 1|Projector|8|10|EV1|1
3|Kas 2|Projector|4|10|EV1|2
4|Kas 2|Wandkast|4|5|EV1|2
5|Entree|Inbouw|6|3|EV2|1
6|Entree|Inbouw|6|1.5|EV2|1
7|Entree|Wandkast|1|7.5|EV2|1
8|Buitenterrein|Hoorn|4|15|EV2|2
`)
			t.Speakers("sheet=Groepen; status=future", "rows|zone|model|count\n9|Buitenterrein|Hoorn|2")
			t.Channels("", `
amplifier|channel|rated_w|load_w
EV1|1|120|80
EV1|2|120|60
EV2|1|60|34.5
EV2|2|60|60
`)
			t.Amplifiers("", `
amplifier|load_w
EV1|140
EV2|94.5
`)
		}},
	}
}
