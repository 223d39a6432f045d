package main

import "lineaudit/samples/typed"

// espanol are the lists of the Spanish-speaking foundation.
func espanol() []typed.Case {
	return []typed.Case{
		{File: "Jardín Botánico Fuentelar/Megafonía altavoces.ods", Kind: "schedule", Saved: "ods", Book: book("Altavoces", `
JARDÍN BOTÁNICO DE FUENTELAR|||||||
MEGAFONÍA - RELACIÓN DE ALTAVOCES|||||||
Obra:|1108/B||Línea:|100 V|||
|||||||
Nº|Ubicación|Modelo|Uds.|Potencia (W)|Total (W)|Zona|Etapa
1|Taquillas|Techo 6"|2|3|6|Z1|E1
2|Vestíbulo|Techo 6"|6|6|36|Z1|E1
3|Aseos|Techo 6"|4|1,5|6|Z1|E1
4|Invernadero tropical|Proyector 20 W|8|10|80|Z2|E2
5|Invernadero desértico|Proyector 20 W|4|10|40|Z2|E2
6|Paseo de las palmeras|Bocina 30 W|5|15|75|Z3|E3
7|Estanque|Bocina 30 W|3|15|45|Z3|E3
8|Taller|Caja acústica 10 W|2|5|10|Z1|E1
TOTAL|||34||298||
|||||||
Etapa|Potencia|Zona||||
E1|120 W|Z1||||
E2|120 W|Z2||||
E3|240 W|Z3||||
`, bold("A1:A2", "A5:H5", "A14:H14", "A16:C16")), Truth: func(t *typed.Truth) {
			t.Is("1108/B", "Jardín Botánico de Fuentelar", "plain: the list and a small table of the amplifiers, a zone each")
			t.Speakers("tap_v=100; line_v=100; sheet=Altavoces", `
rows|zone|room|model|count|tap_w|amplifier
6|Z1|Taquillas|Techo 6"|2|3|E1
7|Z1|Vestíbulo|Techo 6"|6|6|E1
8|Z1|Aseos|Techo 6"|4|1.5|E1
9|Z2|Invernadero tropical|Proyector 20 W|8|10|E2
10|Z2|Invernadero desértico|Proyector 20 W|4|10|E2
11|Z3|Paseo de las palmeras|Bocina 30 W|5|15|E3
12|Z3|Estanque|Bocina 30 W|3|15|E3
13|Z1|Taller|Caja acústica 10 W|2|5|E1
`)
			t.Channels("line_v=100", `
amplifier|rated_w|load_w|note
E1|120|58|6 + 36 + 6 + 10
E2|120|120|exactly its rating
E3|240|120|
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
E1|120|58
E2|120|120
E3|240|120
`)
			t.Left("Altavoces", "14|total|right")
		}},
	}
}
