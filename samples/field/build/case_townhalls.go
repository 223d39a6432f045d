package main

import (
	"lineaudit/samples/typed"

	"github.com/xuri/excelize/v2"
)

// concejalia is the works office of a Spanish town.
var concejalia = []typed.Case{
	{File: "concejalía/Planetario - zonas megafonía.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Zonas")
		p.Put("A1", `
Planetario municipal de Valdecierzo||||||||
Exp. 2018/044 - megafonía, 100 V||||||||
Zona|Estancia|Altavoces||||Amplif.|Regulador local|
||Tipo|Nº|W|Total||Ref.|W
1|Hall|Techo|6|3|18|A-1||
1|Taquilla|Techo|1|3|3|A-1|R-1|6
2|Sala de proyección|Caja|6|10|60|A-2||
2|Cabina|Caja|1|5|5|A-2|R-2|6
3|Talleres|Techo|8|3|24|A-1|R-3|30
3|Aseos|Techo|4|1,5|6|A-1||
TOTAL|||26||116|||
||||||||
A-1 = 60 W; A-2 = 120 W||||||||
`)
		p.Merge("C3:F3", "H3:I3", "A3:A4", "B3:B4", "G3:G4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2018/044", "Planetario municipal de Valdecierzo", "merged headings in two rows; ratings in a note with signs of equality")
		t.Speakers("tap_v=100; line_v=100; sheet=Zonas", `
rows|zone|room|model|count|tap_w|amplifier|control
5|1|Hall|Techo|6|3|A-1|
6|1|Taquilla|Techo|1|3|A-1|R-1
7|2|Sala de proyección|Caja|6|10|A-2|
8|2|Cabina|Caja|1|5|A-2|R-2
9|3|Talleres|Techo|8|3|A-1|R-3
10|3|Aseos|Techo|4|1.5|A-1|
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nA-1|60|51\nA-2|120|65")
		t.Amplifiers("", "amplifier|rated_w|load_w\nA-1|60|51\nA-2|120|65")
		t.Controls("", "control|rated_w|load_w\nR-1|6|3\nR-2|6|5\nR-3|30|24")
		t.Left("Zonas", "11|total|TOTAL")
	}},

	{File: "concejalía/piscina altavoces uno a uno.csv", Kind: "schedule", Bytes: text(`
PISCINA CUBIERTA EL SOTILLO;;;;;;
Obra 77-2020;;;;;;
Nº;Tipo;Situación;W;Línea;Estado;Obs.
1;proyector;Vaso grande;10;1;bien;
2;proyector;Vaso grande;10;1;bien;
3;proyector;Vaso grande;10;1;bien;
4;proyector;Vaso grande;10;1;cono roto;sustituir
5;proyector;Vaso pequeño;5;1;bien;
6;techo;Vestíbulo;3;2;bien;
7;techo;Vestíbulo;3;2;bien;
8;techo;Oficina;3;2;bien;regulador de 6 W
9;techo;Vestuario;1,5;2;bien;
10;techo;Vestuario;1,5;2;no existe;nunca se llegó a montar
11;bocina;Jardín;15;3;bien;
12;bocina;Jardín;15;3;desmontada;
;;;;;;
Línea 1 y línea 2: amplificador de 120 W con dos salidas de 60 W. Línea 3: amplificador de 30 W.;;;;;;
Todo a 100 V;;;;;;
`), Truth: func(t *typed.Truth) {
		t.Is("77-2020", "Piscina cubierta El Sotillo", "a walk through, one by one; states in words; amplifiers told in a sentence")
		t.Speakers("tap_v=100; line_v=100", `
rows|tag|model|room|tap_w|channel|note
4..7|1..|proyector|Vaso grande|10|1|
8|5|proyector|Vaso pequeño|5|1|
9..10|6..|techo|Vestíbulo|3|2|
11|8|techo|Oficina|3|2|unnamed control
12|9|techo|Vestuario|1.5|2|
14|11|bocina|Jardín|15|3|
`)
		t.Speakers("tap_v=100; line_v=100; status=removed", "rows|tag|model|room|tap_w|channel\n13|10|techo|Vestuario|1.5|2\n15|12|bocina|Jardín|15|3")
		t.Channels("line_v=100", "channel|rated_w|load_w\n1|60|45\n2|60|10.5\n3|30|15")
		t.Controls("note=unnamed", "zone|rated_w|load_w\nOficina|6|3")
	}},
}

// gemeente is a Dutch municipality.
var gemeente = []typed.Case{
	{File: "gemeente/Sporthal en zwembad.xlsx", Kind: "schedule", Book: sheets("Zwembad", `
Zwembad De Plons, opdracht 30112
Versterker V-1 (240 W, 100 V)

Ruimte|Luidsprekers|Afgeregeld op|Totaal (W)
Wedstrijdbad|8 hoorns|15 W|120
Doelgroepenbad|4 hoorns|10 W|40
Kleedruimten|10 inbouw|1,5 W|15
Receptie|2 inbouw|3 W|6
`, "Sporthal", `
Sporthal De Plons, opdracht 30113
Versterker S-1 (120 W, 100 V)

Ruimte|Luidsprekers|Afgeregeld op|Totaal (W)
Zaal|6 kolommen|10 W|60
Tribune|2 kolommen|10 W|20
Kantine voorraad|1 inbouw|3 W|3
Vergaderruimte|2 inbouw|6 W (regelaar 20 W)|12
`), Truth: func(t *typed.Truth) {
		common := "tap_v=100; line_v=100"
		t.Is("30112", "Zwembad De Plons", "a sheet a job; counts with the kind; the amplifier in a title; a control in the cell of a tap")
		t.Speakers(common+"; sheet=Zwembad; amplifier=V-1", `
rows|room|count|model|tap_w
5|Wedstrijdbad|8|hoorns|15
6|Doelgroepenbad|4|hoorns|10
7|Kleedruimten|10|inbouw|1.5
8|Receptie|2|inbouw|3
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nV-1|240|181")
		t.Amplifiers("", "amplifier|rated_w|load_w\nV-1|240|181")
		t.Also("30113", "Sporthal De Plons", "a sheet a job")
		t.Speakers(common+"; sheet=Sporthal; amplifier=S-1", `
rows|room|count|model|tap_w|note
5|Zaal|6|kolommen|10|
6|Tribune|2|kolommen|10|
7|Kantine voorraad|1|inbouw|3|
8|Vergaderruimte|2|inbouw|6|unnamed control
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nS-1|120|95")
		t.Amplifiers("", "amplifier|rated_w|load_w\nS-1|120|95")
		t.Controls("note=unnamed", "zone|rated_w|load_w\nVergaderruimte|20|12")
	}},

	{File: "gemeente/sleutelplan.csv", Kind: "not-a-schedule", Bytes: text(`
Sleutelplan zwembad;;;
Sleutel;Ruimte;Uitgegeven aan;Zone
1;Technische ruimte;beheerder;A
2;Omroepkast;beheerder;A
3;Kassa;receptie;B
`), Truth: func(t *typed.Truth) { t.Is("", "", "keys") }},
}
