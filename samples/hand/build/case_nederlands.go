package main

import "lineaudit/samples/typed"

// nederlands are the lists of the Dutch-speaking foundation.
func nederlands() []typed.Case {
	return []typed.Case{
		{File: "Botenhuis Wierdermeer/luidsprekers per zone.xlsx", Kind: "schedule", Book: book("Zones", `
Botenhuis Wierdermeer
Omroepinstallatie 100V||||Werknr. 20164

Zone 1 - Hal en kleedkamers
Ruimte|Type luidspreker|Aantal|Aftakking|Vermogen
Entreehal|Plafond 6W|4|3W|12W
Kleedkamer dames|Plafond 6W|3|1,5W|4,5W
Kleedkamer heren|Plafond 6W|3|1,5W|4,5W
Kantoor|Plafond 6W|1|0,75W|0,75W
Subtotaal||11||21,75W

Zone 2 - Botenloods
Ruimte|Type luidspreker|Aantal|Aftakking|Vermogen
Loods|Projector 20W|6|10W|60W
Werkplaats|Opbouw 10W|2|5W|10W
Subtotaal||8||70W

Zone 3 - Steiger
Ruimte|Type luidspreker|Aantal|Aftakking|Vermogen
Steiger|Hoorn 15W|4|15W|60W
Parkeerplaats|Hoorn 15W|2|7,5W|15W
Subtotaal||6||75W

Versterker: zone 1 uitgang 1 (60W), zone 2 uitgang 2 (120W), zone 3 uitgang 3 (60W)
`, bold("A1", "A4", "A12", "A18")), Truth: func(t *typed.Truth) {
			t.Is("20164", "Botenhuis Wierdermeer", "a table a zone with its name above and a subtotal below; the outputs in one sentence")
			t.Speakers("tap_v=100; line_v=100; sheet=Zones", `
rows|zone|room|model|count|tap_w|channel
6|Zone 1 - Hal en kleedkamers|Entreehal|Plafond 6W|4|3|1
7|Zone 1 - Hal en kleedkamers|Kleedkamer dames|Plafond 6W|3|1.5|1
8|Zone 1 - Hal en kleedkamers|Kleedkamer heren|Plafond 6W|3|1.5|1
9|Zone 1 - Hal en kleedkamers|Kantoor|Plafond 6W|1|0.75|1
14|Zone 2 - Botenloods|Loods|Projector 20W|6|10|2
15|Zone 2 - Botenloods|Werkplaats|Opbouw 10W|2|5|2
20|Zone 3 - Steiger|Steiger|Hoorn 15W|4|15|3
21|Zone 3 - Steiger|Parkeerplaats|Hoorn 15W|2|7.5|3
`)
			t.Channels("line_v=100", `
channel|rated_w|load_w|note
1|60|21.75|
2|120|70|
3|60|75|over its rating
`)
			t.Left("Zones", "10|total|right\n13|header|repeated\n16|total|right\n19|header|repeated\n22|total|right")
		}},
	}
}
