package main

import "lineaudit/samples/typed"

// francais are the lists of the French-speaking foundation.
func francais() []typed.Case {
	return []typed.Case{
		{File: "Patinoire de Vaubrière/Sonorisation - liste HP.xlsx", Kind: "schedule", Saved: "xlsx", Book: book("HP", `
PATINOIRE DE VAUBRIÈRE
Sonorisation de sécurité - Nomenclature des haut-parleurs
Affaire n° 2217||Indice : C

Repère|Local|Désignation|Qté|Puissance (W)|P totale (W)|Ligne HP|Ampli
HP1|Hall d'entrée|HP plafond 6 W|4|3|12|L1|AMP 1
HP2|Caisses|HP plafond 6 W|2|1,5|3|L1|AMP 1
HP3|Vestiaires A|HP plafond 6 W|4|1,5|6|L1|AMP 1
HP4|Vestiaires B|HP plafond 6 W|4|1,5|6|L1|AMP 1
HP5|Piste côté nord|Colonne 30 W|6|15|90|L2|AMP 2
HP6|Piste côté sud|Colonne 30 W|6|15|90|L3|AMP 2
HP7|Gradins|Projecteur de son 20 W|8|10|80|L4|AMP 3
HP8|Local technique|HP mural 6 W|1|6|6|L1|AMP 1
HP9|Parking|Trompette 15 W|3|15|45|L4|AMP 3
|TOTAL||38||338

AMP 1 : 120 W - AMP 2 : 240 W - AMP 3 : 120 W sous 100 V
`, bold("A1:A3", "A5:H5", "B15:F15")), Truth: func(t *typed.Truth) {
			t.Is("2217", "Patinoire de Vaubrière", "plain: one row a place; amplifiers with one rating each in a line below; amplifier 2 feeds two lines")
			t.Revision("C", false)
			t.Speakers("tap_v=100; line_v=100; sheet=HP", `
rows|tag|room|model|count|tap_w|amplifier|channel
6|HP1|Hall d'entrée|HP plafond 6 W|4|3|AMP 1|L1
7|HP2|Caisses|HP plafond 6 W|2|1.5|AMP 1|L1
8|HP3|Vestiaires A|HP plafond 6 W|4|1.5|AMP 1|L1
9|HP4|Vestiaires B|HP plafond 6 W|4|1.5|AMP 1|L1
10|HP5|Piste côté nord|Colonne 30 W|6|15|AMP 2|L2
11|HP6|Piste côté sud|Colonne 30 W|6|15|AMP 2|L3
12|HP7|Gradins|Projecteur de son 20 W|8|10|AMP 3|L4
13|HP8|Local technique|HP mural 6 W|1|6|AMP 1|L1
14|HP9|Parking|Trompette 15 W|3|15|AMP 3|L4
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w|note
AMP 1|L1|120|33|one line, so the frame's
AMP 2|L2||90|the 240 W are the frame's, two lines on it
AMP 2|L3||90|
AMP 3|L4|120|125|over its rating
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w|note
AMP 1|120|33|
AMP 2|240|180|
AMP 3|120|125|over its rating
`)
			t.Left("HP", "15|total|right")
		}},
	}
}
