package main

import "lineaudit/samples/typed"

// spain is a public works office: capitals, file numbers, amplifiers and attenuators in notes below.
func spain() []typed.Case {
	return []typed.Case{
		{File: "OB-2018-114/Megafonía.xlsx", Kind: "schedule", Book: sheets("Megafonía", `
SERVICIO DE OBRAS - INSTALACIONES
Expediente:|OB-2018/114||Edificio:|Invernadero de Valdemora
Revisión:|2

ORDEN|DEPENDENCIA|ALTAVOZ|UDS|TOMA (W)|LÍNEA|ETAPA|ATENUADOR|OBS.
1|Vestíbulo|techo|6|6|L1|E1||
2|Sala cactus|proyector|4|10|L1|E1||
3|Sala palmeras|proyector|6|10|L2|E1||
4|Aula|techo|4|3|L3|E2|AT-1|
5|Aseos|techo|4|1,5|L3|E2||
6|Oficina|techo|2|3|L3|E2|AT-2|
7|Explanada|bocina|3|15|L4|E2||
8|Almacén|techo|2|3|L4|E2||dado de baja

Etapa E1: 2 líneas de 120 W. Etapa E2: 2 líneas de 60 W. Tensión de línea 100 V.
Atenuadores: AT-1 24 W; AT-2 5 W
`), Truth: func(t *typed.Truth) {
			t.Is("OB-2018/114", "Invernadero de Valdemora", "lines are outputs of the stages, their ratings in a note; a row taken out of use")
			t.Revision("2", false)
			t.Speakers("tap_v=100; line_v=100; sheet=Megafonía", `
rows|room|model|count|tap_w|channel|amplifier|control|status
6|Vestíbulo|techo|6|6|L1|E1||installed
7|Sala cactus|proyector|4|10|L1|E1||installed
8|Sala palmeras|proyector|6|10|L2|E1||installed
9|Aula|techo|4|3|L3|E2|AT-1|installed
10|Aseos|techo|4|1.5|L3|E2||installed
11|Oficina|techo|2|3|L3|E2|AT-2|installed
12|Explanada|bocina|3|15|L4|E2||installed
13|Almacén|techo|2|3|L4|E2||removed
`)
			t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nE1|L1|120|76\nE1|L2|120|60\nE2|L3|60|24\nE2|L4|60|45")
			t.Amplifiers("", "amplifier|rated_w|load_w\nE1|240|136\nE2|120|69")
			t.Controls("", "control|rated_w|load_w\nAT-1|24|12\nAT-2|5|6")
		}},

		{File: "OB-2019-027/altavoces pista.csv", Kind: "schedule", Bytes: text(`
PISTA DE HIELO DE NAVALENZA;;;;
Relación de altavoces (línea 100 V);;;;
Expte. OB-2019/027;;;;
Zona;Altavoces;Potencia por altavoz (W);Potencia total (W);Amplificador
Pista;12;20;240;Amplificador 1 (360 W)
Gradas;8;10;80;Amplificador 1 (360 W)
Vestuarios;10;2,5;25;Amplificador 2 (120 W)
Taquilla;2;2,5;5;Amplificador 2 (120 W)
Enfermería;1;2,5;2,5;Amplificador 2 (120 W)
Accesos;4;10;40;Amplificador 2 (120 W)
TOTAL;37;;392,5;
`), Truth: func(t *typed.Truth) {
			t.Is("OB-2019/027", "PISTA DE HIELO DE NAVALENZA", "the column Altavoces holds the count; the rating behind the amplifier's name")
			t.Speakers("tap_v=100; line_v=100", `
rows|zone|count|tap_w|amplifier
5|Pista|12|20|Amplificador 1
6|Gradas|8|10|Amplificador 1
7|Vestuarios|10|2.5|Amplificador 2
8|Taquilla|2|2.5|Amplificador 2
9|Enfermería|1|2.5|Amplificador 2
10|Accesos|4|10|Amplificador 2
`)
			t.Channels("line_v=100", "amplifier|rated_w|load_w\nAmplificador 1|360|320\nAmplificador 2|120|72.5")
			t.Amplifiers("", "amplifier|rated_w|load_w\nAmplificador 1|360|320\nAmplificador 2|120|72.5")
			t.Left("", "11|total|right")
		}},
	}
}

// italy is an installer: small letters, one loudspeaker a row, a sheet an amplifier.
func italy() []typed.Case {
	return []typed.Case{
		{File: "0915/elenco diffusori.xlsx", Kind: "schedule", Book: sheets("Foglio1", `
Commessa 0915|Orto Botanico di Collefresco|||rev. 1

Impianto a 100 V - amplificatore A da 240 W (serra e vialetto), amplificatore B da 120 W (resto)

sigla|posizione|tipo|pot. impostata|ampl.|regolatore
D1|serra grande|tromba|15 W|A|
D2|serra grande|tromba|15 W|A|
D3|serra grande|tromba|15 W|A|
D4|serra grande|tromba|15 W|A|
D5|ingresso|plafoniera|6 W|B|
D6|aula|plafoniera|6 W|B|RV1 (12 W)
D7|aula|plafoniera|6 W|B|RV1 (12 W)
D8|biglietteria|plafoniera|3 W|B|RV2 (6 W)
D9|deposito|proiettore|10 W|B|
D10|vialetto|tromba|15 W|A|
`), Truth: func(t *typed.Truth) {
			t.Is("0915", "Orto Botanico di Collefresco", "amplifiers in a sentence above; the control's rating behind its name")
			t.Revision("1", false)
			t.Speakers("tap_v=100; line_v=100; sheet=Foglio1", `
rows|tag|room|model|tap_w|amplifier|control
6..9|D1..|serra grande|tromba|15|A|
10|D5|ingresso|plafoniera|6|B|
11..12|D6..|aula|plafoniera|6|B|RV1
13|D8|biglietteria|plafoniera|3|B|RV2
14|D9|deposito|proiettore|10|B|
15|D10|vialetto|tromba|15|A|
`)
			t.Channels("line_v=100", "amplifier|rated_w|load_w\nA|240|75\nB|120|31")
			t.Amplifiers("", "amplifier|rated_w|load_w\nA|240|75\nB|120|31")
			t.Controls("", "control|rated_w|load_w\nRV1|12|12\nRV2|6|3")
		}},

		{File: "1107/rimessa barche.xlsx", Kind: "schedule", Book: sheets("AMPLI 1", `
Rimessa barche di Lagobruno - commessa 1107
AMPLIFICATORE 1 - 120 W - 100 V
N.|LOCALE|W|CAVO|LUNGH. m
1|pontile|20|2x2,5|45
2|pontile|20|2x2,5|15
3|pontile|20|2x2,5|15
4|scivolo|20|2x2,5|30
`, "AMPLI 2", `
Rimessa barche di Lagobruno - commessa 1107
AMPLIFICATORE 2 - 60 W - 100 V
N.|LOCALE|W|CAVO|LUNGH. m
1|spogliatoi|3|2x1,5|18
2|spogliatoi|3|2x1,5|6
3|sala corsi|6|2x1,5|9
4|sala corsi|6|2x1,5|6
5|officina|10|2x1,5|22
`), Truth: func(t *typed.Truth) {
			t.Is("1107", "Rimessa barche di Lagobruno", "a sheet an amplifier, named in its title; a piece of cable a loudspeaker")
			t.Speakers("tap_v=100; line_v=100; sheet=AMPLI 1; tap_w=20; amplifier=1", `
rows|tag|zone
4..6|1..|pontile
7|4|scivolo
`)
			t.Speakers("tap_v=100; line_v=100; sheet=AMPLI 2; amplifier=2", `
rows|tag|zone|tap_w
4..5|1..|spogliatoi|3
6..7|3..|sala corsi|6
8|5|officina|10
`)
			t.Channels("line_v=100", "amplifier|rated_w|load_w\n1|120|80\n2|60|28")
			t.Amplifiers("", "amplifier|rated_w|load_w\n1|120|80\n2|60|28")
			t.Lines("material=copper", `
zone|length_m|area_mm2
pontile|45|2.5
pontile|15|2.5
pontile|15|2.5
scivolo|30|2.5
spogliatoi|18|1.5
spogliatoi|6|1.5
sala corsi|9|1.5
sala corsi|6|1.5
officina|22|1.5
`)
		}},
	}
}
