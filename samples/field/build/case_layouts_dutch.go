package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// layoutsDutch are four hands that write Dutch.
var layoutsDutch = []typed.Case{
	// A museum's facility manager typed over the handwritten list in the cupboard, ditto marks and all; one row was struck out later.
	{File: "layouts/Natuurmuseum omroep.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Lijst")
		p.Put("A1", `
Natuurmuseum De Zilverreiger, omroepluidsprekers

Verdieping|Zaal|Soort|Aantal|Aftakking (W)|Versterker|Kanaal
Begane grond|Entreehal|plafond|6|6|V1|1
"|Garderobe|plafond|2|3|"|"
"|Vogelzaal|opbouw|6|6|"|2
"|Zoogdieren|opbouw|4|6|"|"
Eerste|Insecten|plafond|6|3|V2|1
"|Fossielen|plafond|5|3|"|"
"|Leeszaal|plafond|4|1.5|"|"
Zolder|Depot|opbouw|2|6|"|2
"|Werkplaats|opbouw|2|6|"|"
Buiten|Binnentuin|hoorn|2|15|"|"

V1: 2 x 120 W, V2: 2 x 60 W, alles 100 V
Vogelzaal en Zoogdieren samen op regelaar R1 (75 W)
Doorgestreept = weggehaald bij het schilderen, komt niet terug
`)
		p.Bold("A1", "A3:G3")
		p.Strike("A12:G12")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Natuurmuseum De Zilverreiger", "ditto marks in three columns, a struck-through row explained below, ratings and a control in sentences below")
		t.Speakers("sheet=Lijst; tap_v=100; line_v=100; zone=Begane grond; note=floor as zone; amplifier=V1", `rows|room|count|tap_w|channel|control
4|Entreehal|6|6|1|
5|Garderobe|2|3|1|
6|Vogelzaal|6|6|2|R1
7|Zoogdieren|4|6|2|R1`)
		t.Speakers("sheet=Lijst; tap_v=100; line_v=100; zone=Eerste; note=floor as zone; amplifier=V2; channel=1", `rows|room|count|tap_w
8|Insecten|6|3
9|Fossielen|5|3
10|Leeszaal|4|1.5`)
		t.Speakers("sheet=Lijst; tap_v=100; line_v=100; amplifier=V2; channel=2", `rows|zone|room|count|tap_w|note
11|Zolder|Depot|2|6|floor as zone
13|Buiten|Binnentuin|2|15|floor as zone`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|120|42
V1|2|120|60
V2|1|60|39
V2|2|60|42`)
		t.Amplifiers("", `amplifier|load_w
V1|102
V2|81`)
		t.Controls("", `control|rated_w|load_w
R1|75|60`)
		t.Left("Lijst", `12|removed|struck through: taken down`)
	}},

	// An installer's riser sheet for a theatre: a row a group, the rooms of the group in one cell, a line each.
	{File: "layouts/schouwburg stamblad.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Stamblad")
		p.Put("A1", `
Schouwburg Het Voetlicht, stamblad 100V-omroep, werk 17.206

Groep|Naam|Luidsprekers (aantal x stand)|Totaal W|Versterker|Uitgang|Kabel|Lengte stam
G1|Foyers|Foyer beneden: 6 x 6 W⏎Foyer boven: 5 x 6 W|66|PA-1 (2 x 120 W)|1|2 x 2,5 mm²|48 m
G2|Kleedkamers|Kleedkamer 1: 2 x 3 W⏎Kleedkamer 2: 2 x 3 W⏎Gang kleedkamers: 4 x 1,5 W|18|PA-1|2|2 x 1,5 mm²|62 m
G3|Toneelhuis|Zijtoneel: 2 x 10 W⏎Laaddok: 2 x 15 W|50|PA-2 (2 x 60 W)|1|2 x 2,5 mm²|35 m
G4|Kantoren|Kassa: 1 x 3 W⏎Administratie: 3 x 1,5 W⏎Vergaderzaal: 2 x 3 W|13.5|PA-2|2|2 x 1,5 mm²|70 m

Regelaars: RG-A 24 W voor Vergaderzaal, RG-B 12 W voor Kassa
`)
		p.Dress(excelize.Style{Alignment: &excelize.Alignment{WrapText: true, Vertical: "top"}}, "C4:C7")
		p.Bold("A1", "A3:H3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("17.206", "Schouwburg Het Voetlicht", "a row a group with a line a room in one cell; frame ratings in brackets where first named; controls by room in a sentence below")
		t.Speakers("sheet=Stamblad; tap_v=100; line_v=100; zone=Foyers; amplifier=PA-1; channel=1; rows=4", `room|count|tap_w
Foyer beneden|6|6
Foyer boven|5|6`)
		t.Speakers("sheet=Stamblad; tap_v=100; line_v=100; zone=Kleedkamers; amplifier=PA-1; channel=2; rows=5", `room|count|tap_w
Kleedkamer 1|2|3
Kleedkamer 2|2|3
Gang kleedkamers|4|1.5`)
		t.Speakers("sheet=Stamblad; tap_v=100; line_v=100; zone=Toneelhuis; amplifier=PA-2; channel=1; rows=6", `room|count|tap_w
Zijtoneel|2|10
Laaddok|2|15`)
		t.Speakers("sheet=Stamblad; tap_v=100; line_v=100; zone=Kantoren; amplifier=PA-2; channel=2; rows=7", `room|count|tap_w|control
Kassa|1|3|RG-B
Administratie|3|1.5|
Vergaderzaal|2|3|RG-A`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
PA-1|1|120|66
PA-1|2|120|18
PA-2|1|60|50
PA-2|2|60|13.5`)
		t.Amplifiers("", `amplifier|load_w
PA-1|84
PA-2|63.5`)
		t.Controls("", `control|rated_w|load_w
RG-A|24|6
RG-B|12|3`)
		t.Lines("note=one length a zone", `line|zone|length_m|area_mm2
G1|Foyers|48|2.5
G2|Kleedkamers|62|1.5
G3|Toneelhuis|35|2.5
G4|Kantoren|70|1.5`)
	}},

	// The asset register of an ice hall, exported for the insurer: every thing a row, tied together by what it is connected to.
	{File: "layouts/activa ijshal geluid.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Activanr;Soort;Omschrijving;Locatie;W;Aangesloten op;Status
IJ-101;Versterker;100 V, één uitgang;Technische ruimte;120;;in gebruik
IJ-102;Versterker;100 V, één uitgang;Technische ruimte;60;;in gebruik
IJ-103;Versterker;100 V, één uitgang;Technische ruimte;120;;reserve, op de plank
IJ-110;Volumeregelaar;wandmodel;Kassa;12;IJ-102;in gebruik
IJ-111;Volumeregelaar;wandmodel;Clublokaal;24;IJ-102;in gebruik
IJ-201;Luidspreker;hoorn;IJsbaan noord;15;IJ-101;in gebruik
IJ-202;Luidspreker;hoorn;IJsbaan noord;15;IJ-101;in gebruik
IJ-203;Luidspreker;hoorn;IJsbaan zuid;15;IJ-101;in gebruik
IJ-204;Luidspreker;hoorn;IJsbaan zuid;15;IJ-101;in gebruik
IJ-205;Luidspreker;hoorn;Dweilgarage;10;IJ-101;verwijderd 2017
IJ-206;Luidspreker;kast;Tribune;10;IJ-101;in gebruik
IJ-207;Luidspreker;kast;Tribune;10;IJ-101;in gebruik
IJ-208;Luidspreker;plafond;Kassa;3;IJ-110;in gebruik
IJ-209;Luidspreker;plafond;Clublokaal;6;IJ-111;in gebruik
IJ-210;Luidspreker;plafond;Clublokaal;6;IJ-111;in gebruik
IJ-211;Luidspreker;plafond;Schaatsverhuur;3;IJ-102;in gebruik
IJ-212;Luidspreker;plafond;Kleedkamers;3;IJ-102;in gebruik
IJ-213;Luidspreker;plafond;Magazijn;3;;reserve, in doos
;;;;;;
W = bij versterkers en regelaars het vermogen, bij luidsprekers de ingestelde aftakking;;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "asset register: amplifiers, controls and loudspeakers in one list, tied by asset number, two through a control; one watt column for all, told apart in a footnote; spares and one removed")
		t.Speakers("tap_v=100; line_v=100; amplifier=IJ-101", `rows|tag|room|tap_w
7..8|IJ-201..|IJsbaan noord|15
9..10|IJ-203..|IJsbaan zuid|15
12..13|IJ-206..|Tribune|10`)
		t.Speakers("tap_v=100; line_v=100; amplifier=IJ-102", `rows|tag|room|tap_w|control
14|IJ-208|Kassa|3|IJ-110
15..16|IJ-209..|Clublokaal|6|IJ-111
17|IJ-211|Schaatsverhuur|3|
18|IJ-212|Kleedkamers|3|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
IJ-101|120|80
IJ-102|60|21`)
		t.Amplifiers("", `amplifier|rated_w|load_w|note
IJ-101|120|80|
IJ-102|60|21|
IJ-103|120||spare, on the shelf`)
		t.Controls("", `control|rated_w|load_w
IJ-110|12|3
IJ-111|24|12`)
		t.Left("", `
2|amplifier|an amplifier
3|amplifier|an amplifier
4|amplifier|a spare amplifier
5|control|a volume control
6|control|a volume control
11|removed|removed in 2017
19|spare|in its box`)
	}},

	// A service engineer fills a form block a zone during the survey of stables; the values stand below their labels.
	{File: "layouts/opname manege.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Opname")
		p.Put("A1", `
Opnameformulier omroep|||Werknr. 5512
Manege De Hoefslag, 100V-lijnen

Zone|Soort luidspreker|Aantal
Binnenbak|hoorn|4
Stand trafo|Versterker|Vermogen versterker
10 W|V1|120 W
Regelaar|Vermogen regelaar|Opmerking
geen||

Zone|Soort luidspreker|Aantal
Buitenbak|hoorn|6
Stand trafo|Versterker|Vermogen versterker
15 W|V2|240 W
Regelaar|Vermogen regelaar|Opmerking
geen||

Zone|Soort luidspreker|Aantal
Stallen|klankkast|8
Stand trafo|Versterker|Vermogen versterker
6 W|V3|60 W
Regelaar|Vermogen regelaar|Opmerking
RG1|75 W|

Zone|Soort luidspreker|Aantal
Hooizolder|hoorn|2
Stand trafo|Versterker|Vermogen versterker
niet te zien|V4|60 W
Regelaar|Vermogen regelaar|Opmerking
geen||te hoog, hoogwerker nodig
`)
		for _, r := range []string{"4", "6", "8", "11", "13", "15", "18", "20", "22", "25", "27", "29"} {
			p.Dress(excelize.Style{Font: &excelize.Font{Italic: true, Size: 8, Color: "666666"}}, "A"+r+":C"+r)
		}
		p.Bold("A1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5512", "Manege De Hoefslag", "a form block a zone, three rows of labels each with the values below; one tap that could not be seen")
		t.Speakers("sheet=Opname; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|control
5|Binnenbak|4|10|V1|
12|Buitenbak|6|15|V2|
19|Stallen|8|6|V3|RG1
26|Hooizolder|2||V4|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
V1|120|40
V2|240|90
V3|60|48
V4|60|`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|120|40
V2|240|90
V3|60|48
V4|60|`)
		t.Controls("", `control|zone|rated_w|load_w
RG1|Stallen|75|48`)
		t.Asks("Opname", `26|asked|tap of the two horns in the hay loft`)
	}},
}
