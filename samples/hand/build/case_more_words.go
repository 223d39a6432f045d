package main

import "lineaudit/samples/typed"

// moreWords are ordinary lists once more: schools of writing that were not met yet.
func moreWords() []typed.Case {
	return []typed.Case{
		{File: "Ostrey Planetarium/PA as commissioned.xls", Kind: "schedule", Saved: "xls", Book: book("As comm", `
Ostrey Planetarium|||||||
PA loudspeakers as commissioned 22/05/2014, 100V||||||Job OP/131|
LS ID|Floor|Room|LS type|Design tap|Final tap|Amp-Output|Engineer note
OP1|LG|Cloaks|6W ceiling|3W|3W|1-1|
OP2|LG|Cloaks|6W ceiling|3W|3W|1-1|
OP3|G|Foyer|6W ceiling|6W|3W|1-1|too loud
OP4|G|Foyer|6W ceiling|6W|3W|1-1|too loud
OP5|G|Foyer|6W ceiling|6W|3W|1-1|too loud
OP6|G|Tickets|6W ceiling|1.5W|1.5W|1-1|
OP7|G|Exhibition|15W pendant|7.5W|7.5W|1-2|
OP8|G|Exhibition|15W pendant|7.5W|7.5W|1-2|
OP9|G|Exhibition|15W pendant|7.5W|15W|1-2|over the machine
OP10|1|Terrace|15W horn|15W|7.5W|2-1|neighbours
OP11|1|Terrace|15W horn|15W|7.5W|2-1|neighbours
Amp 1: 2 x 60W. Amp 2: 1 x 30W.
`, bold("A1:A2", "A3:H3")), Truth: func(t *typed.Truth) {
			t.Is("OP/131", "Ostrey Planetarium", "the tap of the design and the final tap side by side: the final one counts")
			t.Speakers("tap_v=100; line_v=100; sheet=As comm", `
rows|tag|room|model|tap_w|amplifier|channel
4..5|OP1..|Cloaks|6W ceiling|3|1|1
6..8|OP3..|Foyer|6W ceiling|3|1|1
9|OP6|Tickets|6W ceiling|1.5|1|1
10..11|OP7..|Exhibition|15W pendant|7.5|1|2
12|OP9|Exhibition|15W pendant|15|1|2
13..14|OP10..|Terrace|15W horn|7.5|2|1
`)
			t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\n1|1|60|16.5\n1|2|60|30\n2|1|30|15")
			t.Amplifiers("", "amplifier|rated_w|load_w\n1|120|46.5\n2|30|15")
		}},

		{File: "Calder Fold/all PA gear.csv", Kind: "schedule", Bytes: utf8(`
Calder Fold Arboretum PA equipment,,,,,
Category,Item,Location,Qty,Setting,Connected to
Amplifier,CF1 mixer amp 60W 100V,Lodge office,1,,
Amplifier,CF2 slave amp 120W 100V,Lodge office,1,,
Loudspeaker,Ceiling 6W,Lodge hall,4,3W,CF1
Loudspeaker,Ceiling 6W,Reading room,3,1.5W,CF1
Loudspeaker,Cabinet 6W,Bird hide,1,3W,CF1
Loudspeaker,Horn 15W,Car park,4,15W,CF2
Loudspeaker,Horn 15W,Tree walk,6,7.5W,CF2
Control,Wall attenuator 6W,Reading room,1,,CF1
Microphone,Paging mic,Reception,1,,CF1
Source,CD/tuner,Lodge office,1,,CF1
`), Truth: func(t *typed.Truth) {
			t.Is("", "Calder Fold Arboretum", "all gear in one list, told apart by a category; rating and voltage in the amplifier's description")
			t.Speakers("tap_v=100; line_v=100", `
rows|room|model|count|tap_w|amplifier|note
5|Lodge hall|Ceiling 6W|4|3|CF1|
6|Reading room|Ceiling 6W|3|1.5|CF1|unnamed control of 6 W
7|Bird hide|Cabinet 6W|1|3|CF1|
8|Car park|Horn 15W|4|15|CF2|
9|Tree walk|Horn 15W|6|7.5|CF2|
`)
			t.Channels("line_v=100", "amplifier|rated_w|load_w\nCF1|60|19.5\nCF2|120|105")
			t.Controls("note=unnamed", "zone|rated_w|load_w\nReading room|6|4.5")
			t.Amplifiers("", "amplifier|rated_w|load_w\nCF1|60|19.5\nCF2|120|105")
			t.Left("", "3|amplifier|\n4|amplifier|\n10|control|\n11|other|microphone\n12|other|source")
		}},

		{File: "Otter Landing/speaker zones 2022.xlsx", Kind: "schedule", Saved: "xlsx", Book: book("Zones", `
Otter Landing Boathouse|Speaker zones|||||70V
Zone|Name|# of speakers|Watts per speaker|Total watts|Amp/Channel|Notes
Z1|Bays|12|7.5|90|A/1|
Z2|Locker rooms|8|2.5|20|A/2|
Z3|Offices & hall|9|2.5|22.5|A/2|
Z4|Docks|5|15|75|A/3|
Z5|Lawn|4|30|120|A/4|added 2022
Grand total||38||327.5||
Amp A = 4 x 125W
`, bold("A1:G1", "A2:G2")), Truth: func(t *typed.Truth) {
			t.Is("", "Otter Landing Boathouse", "plain: a zone a row")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=Zones; amplifier=A", `
rows|zone|room|count|tap_w|channel
3|Z1|Bays|12|7.5|1
4|Z2|Locker rooms|8|2.5|2
5|Z3|Offices & hall|9|2.5|2
6|Z4|Docks|5|15|3
7|Z5|Lawn|4|30|4
`)
			t.Channels("line_v=70.7; amplifier=A; rated_w=125", "channel|load_w\n1|90\n2|42.5\n3|75\n4|120")
			t.Amplifiers("amplifier=A", "rated_w|load_w\n500|327.5")
			t.Left("Zones", "8|total|right")
		}},

		{File: "Cold Fork Ice Center/punch list speakers.csv", Kind: "schedule", Bytes: plain(`
Cold Fork Ice Center - speaker punch list,,,,,
Item,Room,Device,As found tap,Required tap,Status
1,Lobby,8in clg #1,5W,5W,OK
2,Lobby,8in clg #2,5W,5W,OK
3,Lobby,8in clg #3,2.5W,5W,Retapped - OK
4,Office 101,8in clg,5W,1.25W,Retapped - OK
5,Office 102,8in clg,5W,1.25W,Open
6,Locker 1,8in clg #1,2.5W,2.5W,OK
7,Locker 1,8in clg #2,2.5W,2.5W,OK
8,Locker 2,8in clg,missing,2.5W,Open
"70V, all on amp A2 ch 1 (100 W)",,,,,
`), Truth: func(t *typed.Truth) {
			t.Is("", "Cold Fork Ice Center", "as found and required taps: what counts is as found where still open, as required where retapped; one is missing")
			t.Speakers("tap_v=70.7; line_v=70.7; amplifier=A2; channel=1", `
rows|tag|room|tap_w|note
3..4|1..|Lobby|5|
5|3|Lobby|5|retapped
6|4|Office 101|1.25|retapped
7|5|Office 102|5|still open: as found
8..9|6..|Locker 1|2.5|
`)
			t.Speakers("tap_v=70.7; line_v=70.7; amplifier=A2; channel=1; status=future", "rows|tag|room|tap_w|note\n10|8|Locker 2|2.5|missing")
			t.Channels("line_v=70.7", "amplifier|channel|rated_w|load_w\nA2|1|100|26.25")
			t.Amplifiers("", "amplifier|load_w\nA2|26.25")
			t.Asks("", "7|assumed|which of two taps")
		}},

		{File: "Planetarium Mooswalde/ELA Zonen und Verstärker.ods", Kind: "schedule", Saved: "ods", Book: book("Zonen", `
Planetarium Mooswalde - ELA-Zonen||||||
Zone|Bezeichnung|Lautsprecher (Stück)|W/Stück|Zonenlast (W)|Verstärkereinschub|max. W
1|Foyer und Kasse|8|3|24|Einschub 1|60
2|Ausstellung|8|6|48|Einschub 2|120
3|Büros|6|1,5|9|Einschub 3|30
4|Technik und Werkstatt|3|6|18|Einschub 3|30
5|Vorplatz|4|15|60|Einschub 4|60
Summe||29||159||
Alle Zonen 100 Volt, Einschübe je ein Ausgang||||||
`, bold("A1", "A2:G2")), Truth: func(t *typed.Truth) {
			t.Is("", "Planetarium Mooswalde", "plain: a zone a row with its amplifier module and its rating")
			t.Speakers("tap_v=100; line_v=100; sheet=Zonen", `
rows|zone|room|count|tap_w|amplifier
3|1|Foyer und Kasse|8|3|Einschub 1
4|2|Ausstellung|8|6|Einschub 2
5|3|Büros|6|1.5|Einschub 3
6|4|Technik und Werkstatt|3|6|Einschub 3
7|5|Vorplatz|4|15|Einschub 4
`)
			t.Channels("line_v=100", "amplifier|rated_w|load_w\nEinschub 1|60|24\nEinschub 2|120|48\nEinschub 3|30|27\nEinschub 4|60|60")
			t.Amplifiers("", "amplifier|rated_w|load_w\nEinschub 1|60|24\nEinschub 2|120|48\nEinschub 3|30|27\nEinschub 4|60|60")
			t.Left("Zonen", "8|total|right")
		}},

		{File: "Hangar à bateaux Ternay-le-Lac/fiche sono.csv", Kind: "schedule", Bytes: ansi(`
FICHE TECHNIQUE SONO;Hangar à bateaux de Ternay-le-Lac;;;;
Tension de ligne;100 V;;;;
Amplificateur;2 x 120 W;;;;
;;;;;
Zone;Lieu;HP (nb);W/HP;Charge;Sortie
1;Halle;6;10;60;1
1;Atelier;2;10;20;1
2;Vestiaires;4;1,5;6;2
2;Club;4;3;12;2
2;Ponton;2;20;40;2
;;18;;138;
`), Truth: func(t *typed.Truth) {
			t.Is("", "Hangar à bateaux de Ternay-le-Lac", "plain: the amplifier stands in the title block")
			t.Speakers("tap_v=100; line_v=100", `
rows|zone|room|count|tap_w|channel
6|1|Halle|6|10|1
7|1|Atelier|2|10|1
8|2|Vestiaires|4|1.5|2
9|2|Club|4|3|2
10|2|Ponton|2|20|2
`)
			t.Channels("line_v=100; rated_w=120", "channel|load_w\n1|80\n2|58")
			t.Amplifiers("", "rated_w|load_w|note\n240|138|unnamed")
			t.Left("", "11|total|right")
		}},

		{File: "Jardín Botánico Fuentelar/revisión anual.xlsx", Kind: "schedule", Book: book("Revisión", `
Jardín Botánico de Fuentelar - revisión anual de megafonía (100 V)
Equipo|Ubicación|Nº|Toma actual|Línea|Resultado
Altavoz techo|Taquillas|2|3 W|1|Conforme
Altavoz techo|Vestíbulo|6|6 W|1|Conforme
Altavoz techo|Aseos|4|1,5 W|1|1 ud. rota, pendiente
Proyector|Tropical|8|10 W|2|Conforme
Bocina|Estanque|3|15 W|3|Conforme
Bocina|Paseo|5|15 W|3|Conforme
Amplificador 60 W|Rack, línea 1|1|||Conforme
Amplificador 120 W|Rack, línea 2|1|||Conforme
Amplificador 240 W|Rack, línea 3|1|||Ventilador ruidoso
Micrófono|Taquillas|1|||Conforme
`, bold("A1", "A2:F2")), Truth: func(t *typed.Truth) {
			t.Is("", "Jardín Botánico de Fuentelar", "a yearly check: amplifiers are rows whose place names the line they feed")
			t.Speakers("tap_v=100; line_v=100; sheet=Revisión", `
rows|room|model|count|tap_w|channel
3|Taquillas|Altavoz techo|2|3|1
4|Vestíbulo|Altavoz techo|6|6|1
5|Aseos|Altavoz techo|4|1.5|1
6|Tropical|Proyector|8|10|2
7|Estanque|Bocina|3|15|3
8|Paseo|Bocina|5|15|3
`)
			t.Channels("line_v=100", "channel|rated_w|load_w\n1|60|48\n2|120|80\n3|240|120")
			t.Left("Revisión", "9|amplifier|\n10|amplifier|\n11|amplifier|\n12|other|microphone")
		}},

		{File: "Orto botanico Collefiorito/linee e carichi.xls", Kind: "schedule", Saved: "xls", Book: book("Linee", `
Orto botanico di Collefiorito||||||
Linee di diffusione a 100 V e carichi||||||
Linea n.|Zona servita|Tipo diffusore|N. diff.|Potenza/diff. (W)|Carico linea (W)|Ampl. (W)
1|Serra grande|Proiettore|8|10|80|120
2|Vivaio|Tromba|4|15|60|60
3|Ingresso e bookshop|Incasso|8|3|24|60
4|Uffici|Incasso|6|1,5|9|30
5|Parco|Colonna|6|10|60|120
|||32||233|
`, bold("A1:A2", "A3:G3")), Truth: func(t *typed.Truth) {
			t.Is("", "Orto botanico di Collefiorito", "plain: a line a row with the rating of its amplifier")
			t.Speakers("tap_v=100; line_v=100; sheet=Linee", `
rows|zone|model|count|tap_w|channel
4|Serra grande|Proiettore|8|10|1
5|Vivaio|Tromba|4|15|2
6|Ingresso e bookshop|Incasso|8|3|3
7|Uffici|Incasso|6|1.5|4
8|Parco|Colonna|6|10|5
`)
			t.Channels("line_v=100", "channel|rated_w|load_w\n1|120|80\n2|60|60\n3|60|24\n4|30|9\n5|120|60")
			t.Left("Linee", "9|total|right")
		}},
	}
}
