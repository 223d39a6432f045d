package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A pool installer, a theatre manager, a draughtswoman at a third revision, and a ventilation firm with another kind of list.
var plainDutch = []typed.Case{
	typed.Case{File: "plain/Zwembad oplevering.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Luidsprekers")
		p.Put("A1", `
Zwembad De Waterhoek - opleverlijst omroep
Werknummer 31-0552, 100 V
||
Zone|Ruimte|Soort|Aantal|W per stuk|Kanaal|Regelaar
Wedstrijdbad|Lange zijde|hoorn|4|15|'1.1|
Wedstrijdbad|Tribune|hoorn|2|15|'1.1|
Recreatiebad|Glijbaan|hoorn|2|10|'1.2|
Recreatiebad|Peuterbad|wand|4|6|'1.2|
Kleedruimte|Dames|plafond|5|3|'2.1|
Kleedruimte|Heren|plafond|5|3|'2.1|
Kleedruimte|Douches|plafond|4|1.5|'2.1|
Entree|Kassa|plafond|2|3|'2.2|VR1
Entree|Hal|plafond|6|3|'2.2|VR2
Entree|Badmeester|wand|1|3|'2.2|
|Totaal||35|||
||
Kanaal|Vermogen (W)
'1.1|240
'1.2|120
'2.1|60
'2.2|60
||
VR1 is 10 W, VR2 is 24 W
`)
		p.Bold("A1", "A4:G4", "B15:D15", "A17:B17")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("31-0552", "Zwembad De Waterhoek", "plain; channels such as 1.2 as text, ratings of the controls in a sentence")
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|amplifier|channel|control
5|Wedstrijdbad|Lange zijde|4|15|1|1|
6|Wedstrijdbad|Tribune|2|15|1|1|
7|Recreatiebad|Glijbaan|2|10|1|2|
8|Recreatiebad|Peuterbad|4|6|1|2|
9|Kleedruimte|Dames|5|3|2|1|
10|Kleedruimte|Heren|5|3|2|1|
11|Kleedruimte|Douches|4|1.5|2|1|
12|Entree|Kassa|2|3|2|2|VR1
13|Entree|Hal|6|3|2|2|VR2
14|Entree|Badmeester|1|3|2|2|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
1|1|240|90
1|2|120|44
2|1|60|36
2|2|60|27`)
		t.Amplifiers("", `amplifier|load_w
1|134
2|63`)
		t.Controls("", `control|rated_w|load_w
VR1|10|6
VR2|24|18`)
		t.Left("Luidsprekers", `15|total|sum`)
	}},

	{File: "plain/Schouwburg omroep.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Versterker 1")
		p.Put("A1", `
Schouwburg Lindeveld
Versterker 1, 120 W, 100 V: artiesten en toneel
||
Plek|Luidspreker|Stuks|Stand|Regelaar
Kleedkamer 1|wandkastje|1|3 W|R1
Kleedkamer 2|wandkastje|1|3 W|R2
Kleedkamer 3|wandkastje|1|3 W|R3
Artiestenfoyer|wandkastje|2|6 W|R4
Gang achter toneel|plafond|4|1,5 W|
Toneelvloer|zuil|2|10 W|
Decoratelier|hoorn|1|zit te hoog, nog nakijken|
||
Regelaars R1 t/m R3 zijn 6 W, R4 is 24 W.
`)
		p.Bold("A1", "A4:E4")
		q := p.Sheet("Versterker 2")
		q.Put("A1", `
Schouwburg Lindeveld
Versterker 2, 240 W, 100 V: publiek
||
Plek|Luidspreker|Stuks|Stand|Regelaar
Foyer beneden|plafond|12|6 W|
Foyer boven|plafond|8|6 W|
Garderobe|plafond|4|3 W|
Kassa|plafond|1|3 W|R5
Toiletten|plafond|4|1,5 W|
Voorplein|hoorn|2|15 W|
||
Regelaar R5 is 6 W.
`)
		q.Bold("A1", "A4:E4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Schouwburg Lindeveld", "plain; a sheet an amplifier, its rating above, those of the controls below; one tap not yet looked up")
		t.Speakers("sheet=Versterker 1; tap_v=100; line_v=100; amplifier=Versterker 1", `rows|room|count|tap_w|control
5|Kleedkamer 1|1|3|R1
6|Kleedkamer 2|1|3|R2
7|Kleedkamer 3|1|3|R3
8|Artiestenfoyer|2|6|R4
9|Gang achter toneel|4|1.5|
10|Toneelvloer|2|10|
11|Decoratelier|1||`)
		t.Speakers("sheet=Versterker 2; tap_v=100; line_v=100; amplifier=Versterker 2", `rows|room|count|tap_w|control
5|Foyer beneden|12|6|
6|Foyer boven|8|6|
7|Garderobe|4|3|
8|Kassa|1|3|R5
9|Toiletten|4|1.5|
10|Voorplein|2|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w|load_min_w
Versterker 1|120||47
Versterker 2|240|171|`)
		t.Amplifiers("", `amplifier|rated_w|load_w
Versterker 1|120|
Versterker 2|240|171`)
		t.Controls("", `control|rated_w|load_w
R1|6|3
R2|6|3
R3|6|3
R4|24|12
R5|6|3`)
		t.Asks("Versterker 1", `11|asked|tap of the horn in the scenery workshop, too high to see`)
	}},

	{File: "plain/16088 revisie C.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Omroep")
		p.Put("A1", `
Scholengemeenschap De Esdoorn - omroepinstallatie 100 V
Project 16088, revisie C. Doorgehaald = vervallen
||
Nr.|Lokaal|Type|Aantal|Tap|Groep|Regelaar
1|Aula|wand|4|10 W|G1|VR1
2|Toneel|wand|2|10 W|G1|
3|Gang begane grond|plafond|6|3 W|G1|
4|Garderobe|plafond|4|3 W|G1|
5|Overblijf|plafond|4||G1|
6|Gymzaal|hoorn|2|15 W|G2|
7|Kleedkamers|plafond|4|1,5 W|G2|
8|Fietsenstalling|hoorn|1|10 W|G2|
9|Schoolplein|hoorn|3|10 W|G2|
10|Muzieklokaal|wand|2|6 W|G3|VR2
11|Lokalen 101-108|plafond|8|3 W|G3|
12|Lokalen 109-112|plafond|4|3 W|G3|
13|Bibliotheek|plafond|4|3 W|G3|VR3
||
Groep|Versterker|Uitgang|Vermogen
G1|OV1|1|120 W
G2|OV1|2|120 W
G3|OV2|1|120 W
||
Regelaar|Vermogen
VR1|50 W
VR2|20 W
VR3|15 W
`)
		p.Corrected("E9", "6 W", " 3 W")
		p.Strike("A8:G8", "A12:G12")
		p.Bold("A1", "A4:G4", "A19:D19", "A24:B24")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("16088", "Scholengemeenschap De Esdoorn", "struck-through rows, a tap struck out and written anew, outputs by group")
		t.Revision("C", false)
		t.Speakers("sheet=Omroep; tap_v=100; line_v=100", `rows|tag|room|count|tap_w|amplifier|channel|control
5|1|Aula|4|10|OV1|1|VR1
6|2|Toneel|2|10|OV1|1|
7|3|Gang begane grond|6|3|OV1|1|
9|5|Overblijf|4|3|OV1|1|
10|6|Gymzaal|2|15|OV1|2|
11|7|Kleedkamers|4|1.5|OV1|2|
13|9|Schoolplein|3|10|OV1|2|
14|10|Muzieklokaal|2|6|OV2|1|VR2
15|11|Lokalen 101-108|8|3|OV2|1|
16|12|Lokalen 109-112|4|3|OV2|1|
17|13|Bibliotheek|4|3|OV2|1|VR3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
OV1|1|120|90
OV1|2|120|66
OV2|1|120|60`)
		t.Amplifiers("", `amplifier|load_w
OV1|156
OV2|60`)
		t.Controls("", `control|rated_w|load_w
VR1|50|40
VR2|20|12
VR3|15|12`)
		t.Left("Omroep", `8|removed|struck through
12|removed|struck through`)
	}},

	{File: "plain/ventilatie sporthal.csv", Kind: "not-a-schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Sporthal De Meent;;;;;;
Ventilatoren en toerenregelaars - onderhoudslijst 2022;;;;;;
Zone;Ruimte;Ventilator;Aantal;W per stuk;Groep;Regelaar
Hal;Dak noord;dakventilator;2;250;K1;TR1 (600 W)
Hal;Dak zuid;dakventilator;2;250;K1;TR2 (600 W)
Kleedkamers;Kleedkamer 1 en 2;buisventilator;2;60;K2;TR3 (150 W)
Kleedkamers;Kleedkamer 3 en 4;buisventilator;2;60;K2;TR4 (150 W)
Kleedkamers;Douches;buisventilator;4;60;K2;
Berging;Toestellen;wandventilator;1;35;K3;
Technische ruimte;Ketel;wandventilator;1;35;K3;
;;;;;;
Filters vervangen in mei. Alle motoren 230 V.;;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Sporthal De Meent", "fans and their speed controllers: zones, watts and groups, but no loudspeakers")
	}},
}
