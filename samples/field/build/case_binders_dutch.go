package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Dutch hands: a garden's maintenance firm, a rink's snag list, a station's test book, a key list.
var bindersDutch = []typed.Case{

	{File: "binders/hortus/Omroep hortus Wilgenoord.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Voorblad")
		p.Put("A1", `
Omroepinstallatie Hortus Wilgenoord
Werknummer|W-20931
Opgesteld door|onderhoudsdienst
Lijnspanning|100 V
`)
		p.Bold("A1")
		s := p.Sheet("Luidsprekers")
		s.Put("A1", `
Zone|Plek|Soort|Aantal|Aftakking (W)
Palmenkas|Onder|wandkast|4|6
Palmenkas|Galerij|wandkast|4|6
Cactuskas|Pad|wandkast|3|6
Orchideeënkas|Voor|wandkast|2|6
Orchideeënkas|Achter|wandkast|2|3
Tuin|Hoofdlaan|paddenstoel|8|10
Tuin|Vijver|paddenstoel|4|10
Entreegebouw|Kassa|plafond|1|1.5
Entreegebouw|Hal|plafond|4|3
Entreegebouw|Leslokaal|plafond|4|3
Entreegebouw|Kantoor|plafond|1|1.5
Totaal|||37|
`)
		s.Bold("A1:E1", "A13:D13")
		v := p.Sheet("Versterker")
		v.Put("A1", `
Versterker zonder typeplaatje, 5 uitgangen, samen 500 W
||
Uitgang|Zone
1|Palmenkas
2|Cactuskas
3|Orchideeënkas
4|Tuin
5|Entreegebouw
`)
		v.Bold("A3:B3")
		r := p.Sheet("Regelaars")
		r.Put("A1", `
Regelaar|Zone|Regelt|Vermogen
VR1|Entreegebouw|Kassa|6 W
VR2|Entreegebouw|Leslokaal|24 W
VR3|Entreegebouw|Kantoor|6 W
VR4|Orchideeënkas|hele zone|24 W
`)
		r.Bold("A1:D1")
		c := p.Sheet("Bekabeling")
		c.Put("A1", `
Zone|Kabel|Meter vanaf versterker
Palmenkas|2 x 2,5 mm²|66
Cactuskas|2 x 1,5 mm²|48
Orchideeënkas|2 x 1,5 mm²|81
Tuin|2 x 4 mm²|210
Entreegebouw|2 x 1,5 mm²|15
`)
		c.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("W-20931", "Hortus Wilgenoord", "an amplifier without a name, five outputs by zone, rated only as a whole; regulators by place within a zone")
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; zone=Palmenkas; channel=1", `rows|room|count|tap_w
2|Onder|4|6
3|Galerij|4|6`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; zone=Cactuskas; channel=2", `rows|room|count|tap_w
4|Pad|3|6`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; zone=Orchideeënkas; channel=3; control=VR4", `rows|room|count|tap_w
5|Voor|2|6
6|Achter|2|3`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; zone=Tuin; channel=4", `rows|room|count|tap_w
7|Hoofdlaan|8|10
8|Vijver|4|10`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; zone=Entreegebouw; channel=5", `rows|room|count|tap_w|control
9|Kassa|1|1.5|VR1
10|Hal|4|3|
11|Leslokaal|4|3|VR2
12|Kantoor|1|1.5|VR3`)
		t.Channels("line_v=100", `channel|load_w
1|48
2|18
3|18
4|120
5|27`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|500|231`)
		t.Controls("", `control|zone|rated_w|load_w
VR1|Entreegebouw|6|1.5
VR2|Entreegebouw|24|12
VR3|Entreegebouw|6|1.5
VR4|Orchideeënkas|24|18`)
		t.Lines("note=home run, one a zone", `zone|length_m|area_mm2
Palmenkas|66|2.5
Cactuskas|48|1.5
Orchideeënkas|81|1.5
Tuin|210|4
Entreegebouw|15|1.5`)
		t.Left("Luidsprekers", `13|total|pieces`)
	}},

	{File: "binders/ijsbaan/opleverpunten ijsbaan.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Punten")
		p.Put("A1", `
Opname IJsbaan De Schraats, klus 4412, één versterker 240 W (100V)
||
Lsp|Ruimte|Stand|Bevinding
1|Baan noord|15 W|ok
2|Baan noord|15 W|ok
3|Baan zuid|15 W|ok
4|Baan zuid|15 W|beugel los
5|Bocht west|15 W|ok
6|Bocht oost|15 W|nog te plaatsen (fase 2)
7|Tribune|10 W|ok
8|Tribune|10 W|ok
9|Kleedkamer 1|3 W|ok
10|Kleedkamer 2|3 W|kraakt, regelaar R1 (6 W) nakijken
11|Kassa|1,5 W|ok, achter regelaar R2 (6 W)
12|Slijperij|6 W|ok
13|Schaatsverhuur|6 W|ok
14|Dweilgarage|15 W|verwijderd, gat dichtgemaakt
`)
		p.Bold("A1", "A3:D3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("4412", "IJsbaan De Schraats", "snag list: regulators named in remarks, one loudspeaker of a later phase, one removed")
		t.Speakers("sheet=Punten; tap_v=100; line_v=100", `rows|tag|room|tap_w|control
4|1|Baan noord|15|
5|2|Baan noord|15|
6|3|Baan zuid|15|
7|4|Baan zuid|15|
8|5|Bocht west|15|
10|7|Tribune|10|
11|8|Tribune|10|
12|9|Kleedkamer 1|3|
13|10|Kleedkamer 2|3|R1
14|11|Kassa|1.5|R2
15|12|Slijperij|6|
16|13|Schaatsverhuur|6|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|114.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|114.5`)
		t.Controls("", `control|rated_w|load_w
R1|6|3
R2|6|1.5`)
		t.Left("Punten", `9|future|still to be fitted, phase 2
17|removed|hole closed`)
	}},

	{File: "binders/station/Beproeving omroep station Hoogveen.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Luidsprekers")
		p.Put("A1", `
Station Hoogveen, omroep 100 V|||||Order 77-130
||
Nr|Zone|Locatie|Type|Stuks|W p/st
1|1|Perron 1 kap|hoorn|6|10
2|1|Perron 1 open|hoorn|3|15
3|2|Perron 2 kap|hoorn|6|10
4|2|Perron 2 open|hoorn|2|15
5|3|Stationshal|plafond|6|6
6|3|Wachtruimte|plafond|3|3
7|3|Kaartverkoop|plafond|1|1.5
8|4|Fietsenstalling|opbouw|6|6
9|4|Tunnel|opbouw|4|6
10|5|Personeelsverblijf|plafond|2|1.5
11|5|Technische ruimte|opbouw|1|6
`)
		p.Bold("A1", "A3:F3")
		q := p.Sheet("Kast")
		q.Put("A1", `
Zone|Eindversterker|Kanaal|Vermogen kanaal (W)|Regelaar|Vermogen regelaar (W)
1|EV1|1|125||
2|EV1|2|125||
3|EV2|1|125||
4|EV2|2|125||
5|EV3|1|60|VRP|12
||
VRP regelt alleen het personeelsverblijf.
`)
		q.Bold("A1:F1")
		r := p.Sheet("Beproeving")
		r.Put("A1", `
Zone|Gemeten Z (ohm)|Berekend W|Spraak verstaanbaar|Paraaf
1|96|104|ja|
2|112|89|ja|
3|213|47|matig|
4|168|60|ja|
5|1080|9|ja|
`)
		r.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("77-130", "Station Hoogveen", "zones by number over three sheets; a regulator of the zone that a sentence limits to one room; measured powers differ a little from the list")
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; zone=1; amplifier=EV1; channel=1", `rows|room|count|tap_w
4|Perron 1 kap|6|10
5|Perron 1 open|3|15`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; zone=2; amplifier=EV1; channel=2", `rows|room|count|tap_w
6|Perron 2 kap|6|10
7|Perron 2 open|2|15`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; zone=3; amplifier=EV2; channel=1", `rows|room|count|tap_w
8|Stationshal|6|6
9|Wachtruimte|3|3
10|Kaartverkoop|1|1.5`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; zone=4; amplifier=EV2; channel=2", `rows|room|count|tap_w
11|Fietsenstalling|6|6
12|Tunnel|4|6`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; zone=5; amplifier=EV3; channel=1", `rows|room|count|tap_w|control
13|Personeelsverblijf|2|1.5|VRP
14|Technische ruimte|1|6|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
EV1|1|125|105
EV1|2|125|90
EV2|1|125|46.5
EV2|2|125|60
EV3|1|60|9`)
		t.Amplifiers("", `amplifier|rated_w|load_w
EV1||195
EV2||106.5
EV3|60|9`)
		t.Controls("", `control|rated_w|load_w
VRP|12|3`)
		t.Left("Beproeving", `2|test|measured
3|test|measured
4|test|measured
5|test|measured
6|test|measured`)
	}},

	{File: "binders/manege/luidsprekers manege.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Manege Het Rietveld;;;;
Lijst voor de verzekering, polis 60-118;;;;
;;;;
Ruimte;Luidsprekers;Ingesteld op;Aangesloten op;Nieuwwaarde per stuk
Binnenbak;4 hoorns;10 W;versterker A;140
Buitenbak;4 hoorns;15 W;versterker A;140
Longeercirkel;1 hoorn;10 W;versterker A;140
Stalgang;5 kastjes;3 W;versterker B;65
Zadelkamer;1 kastje;1,5 W;versterker B;65
Foyer;4 inbouw;3 W;versterker B;48
Berging;2 hoorns;op de plank, reserve;;140
;;;;
Versterker A: 120 W, versterker B: 60 W, beide 100 V. De foyer heeft een regelaar van 20 W.;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("60-118", "Manege Het Rietveld", "an insurer's list: counts in words, ratings and an unnamed regulator in the closing line, spares on the shelf")
		t.Speakers("tap_v=100; line_v=100; amplifier=A", `rows|room|count|tap_w
5|Binnenbak|4|10
6|Buitenbak|4|15
7|Longeercirkel|1|10`)
		t.Speakers("tap_v=100; line_v=100; amplifier=B", `rows|room|count|tap_w|note
8|Stalgang|5|3|
9|Zadelkamer|1|1.5|
10|Foyer|4|3|unnamed`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|120|110
B|60|28.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|120|110
B|60|28.5`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|20|12`)
		t.Left("", `11|spare|on the shelf`)
	}},
}
