package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// patternsDutch are an installer, a tram depot's facility office and a library's technician.
var patternsDutch = []typed.Case{
	{File: "patterns/zwembad/oplevering omroep.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Overzicht")
		p.Put("A1", `
Zwembad De Rietkraag, opleverdossier omroep
Werknummer 20417
||
Uitgang|Belasting W|Vermogen W
V1/1|104|120
V1/2|78|120
V2|33|60
`)
		p.Bold("A1", "A4:C4")
		q := p.Sheet("V1")
		q.Put("A1", `
Versterker V1, 2 uitgangen van 120 W, 100 V
||
Uitgang|Ruimte|Aantal|W per stuk|Regelaar
1|Wedstrijdbad|8|10|
|Tribune|4|6|
2|Recreatiebad|6|6|
|Glijbaan|2|6|
|Kleedkamers|10|3|VR1
`)
		q.Merge("A4:A5", "A6:A8")
		q.Bold("A1", "A3:E3")
		r := p.Sheet("V2")
		r.Put("A1", `
Versterker V2, 1 uitgang van 60 W, 100 V
||
Ruimte|Aantal|W per stuk|Regelaar
Hal|4|3|VR2
Kassa|1|1.5|
EHBO|1|1.5|VR3
Kantoor|2|1.5|VR4
Fietsenstalling|1|15|
`)
		r.Bold("A1", "A3:D3")
		s := p.Sheet("Regelaars")
		s.Put("A1", `
Regelaar|Vermogen|Plaats
VR1|36 W|gang kleedkamers
VR2|20 W|kassa
VR3|4 W|EHBO
VR4|4 W|kantoor
`)
		s.Bold("A1:C1")
		u := p.Sheet("Kabels")
		u.Put("A1", `
Van|Naar|Doorsnede|Lengte (m)
V1/1|Wedstrijdbad|2 x 2,5 mm²|60
Wedstrijdbad|Tribune|2 x 2,5 mm²|25
V1/2|Recreatiebad|2 x 2,5 mm²|75
Recreatiebad|Glijbaan|2 x 1,5 mm²|30
Recreatiebad|Kleedkamers|2 x 1,5 mm²|40
V2|Hal|2 x 1,5 mm²|20
Hal|Fietsenstalling|2 x 1,5 mm²|65
`)
		u.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("20417", "Zwembad De Rietkraag", "five sheets: an overview of loads, a sheet an amplifier with its ratings in the title, controls, cables; the two amplifier sheets differ in columns")
		t.Speakers("sheet=V1; tap_v=100; line_v=100; amplifier=V1; channel=1", `rows|room|count|tap_w
4|Wedstrijdbad|8|10
5|Tribune|4|6`)
		t.Speakers("sheet=V1; tap_v=100; line_v=100; amplifier=V1; channel=2", `rows|room|count|tap_w|control
6|Recreatiebad|6|6|
7|Glijbaan|2|6|
8|Kleedkamers|10|3|VR1`)
		t.Speakers("sheet=V2; tap_v=100; line_v=100; amplifier=V2", `rows|room|count|tap_w|control
4|Hal|4|3|VR2
5|Kassa|1|1.5|
6|EHBO|1|1.5|VR3
7|Kantoor|2|1.5|VR4
8|Fietsenstalling|1|15|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|120|104
V1|2|120|78
V2||60|33`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1||182
V2|60|33`)
		t.Controls("", `control|rated_w|load_w
VR1|36|30
VR2|20|12
VR3|4|1.5
VR4|4|3`)
		t.Lines("", `from|to|length_m|area_mm2
V1/1|Wedstrijdbad|60|2.5
Wedstrijdbad|Tribune|25|2.5
V1/2|Recreatiebad|75|2.5
Recreatiebad|Glijbaan|30|1.5
Recreatiebad|Kleedkamers|40|1.5
V2|Hal|20|1.5
Hal|Fietsenstalling|65|1.5`)
		t.Left("Overzicht", `5|total|load of an output
6|total|load of an output
7|total|load of an output`)
	}},

	{File: "patterns/remise/omroepgroepen.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Groepen")
		p.Put("A1", `
Tramremise Oosterveen, omroep 100 V
||
Groep|1|2|3|4|5
Ruimte|Werkplaats|Wasstraat|Opstelhal|Schaftlokaal|Kantoren
Luidsprekers|6|3|12|4|5
Soort|hoorn|hoorn|hoorn|plafond|plafond
Aftakking, W|15|15|10|3|1.5
Totaal, W|90|45|120|12|7.5
Versterker|A|A|B|C|C
Vermogen versterker, W|160|160|160|60|60
Regelaar||||VR4|VR5
Vermogen regelaar, W||||20|6
Kabel, mm²|2.5|2.5|2.5|1.5|1.5
Kabellengte, m|70|110|180|40|55
`)
		p.Bold("A1", "A3:F3", "A4:A14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Tramremise Oosterveen", "a table that runs across: a column a group, with amplifier, control and cable rows below; VR5 too small")
		t.Speakers("sheet=Groepen; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|amplifier|control
B|1|Werkplaats|6|15|A|
C|2|Wasstraat|3|15|A|
D|3|Opstelhal|12|10|B|
E|4|Schaftlokaal|4|3|C|VR4
F|5|Kantoren|5|1.5|C|VR5`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|160|135
B|160|120
C|60|19.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|160|135
B|160|120
C|60|19.5`)
		t.Controls("", `control|zone|rated_w|load_w
VR4|4|20|12
VR5|5|6|7.5`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
1|70|2.5
2|110|2.5
3|180|2.5
4|40|1.5
5|55|1.5`)
	}},

	{File: "patterns/bibliotheek/luidsprekers per zone.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Lijst")
		p.Put("A1", `
Zone|Ruimte|Type|Aantal|W|Som zone
Uitleen|Balie|plafond|1|1.5|37.5
"|Leestafels|"|6|3|
"|Kasten noord|"|3|3|
"|Kasten zuid|"|3|3|
Jeugd|Voorleeshoek|plafond|2|1.5|15
"|Computers|"|4|3|
Zaal|Lezingenzaal|wand|4|6|30
"|Foyer|plafond|2|3|
Buiten|Ingang|hoorn|1|15|30
"|Laadperron|"|1|"|
`)
		p.Bold("A1:F1")
		q := p.Sheet("Techniek")
		q.Put("A1", `
|Uitleen|Jeugd|Zaal|Buiten
Uitgang van versterker VA|1|2|3|4
Vermogen uitgang|60 W|60 W|60 W|60 W
Lijnspanning|100 V|100 V|100 V|100 V
Regelaar||RJ|RZ|
Vermogen regelaar||20 W|36 W|
Regelt||hele zone|alleen de lezingenzaal|
Kabel|2 x 1,5 mm²|2 x 1,5 mm²|2 x 1,5 mm²|2 x 2,5 mm²
Lengte|60 m|35 m|50 m|85 m
`)
		q.Bold("A1:E1", "A2:A9")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "ditto marks, the sum of a zone in the row of its first item; zones run across on the second sheet with output, control and cable; a control for one room only")
		t.Speakers("sheet=Lijst; tap_v=100; line_v=100; zone=Uitleen; amplifier=VA; channel=1", `rows|room|count|tap_w
2|Balie|1|1.5
3|Leestafels|6|3
4|Kasten noord|3|3
5|Kasten zuid|3|3`)
		t.Speakers("sheet=Lijst; tap_v=100; line_v=100; zone=Jeugd; amplifier=VA; channel=2; control=RJ", `rows|room|count|tap_w
6|Voorleeshoek|2|1.5
7|Computers|4|3`)
		t.Speakers("sheet=Lijst; tap_v=100; line_v=100; zone=Zaal; amplifier=VA; channel=3", `rows|room|count|tap_w|control
8|Lezingenzaal|4|6|RZ
9|Foyer|2|3|`)
		t.Speakers("sheet=Lijst; tap_v=100; line_v=100; zone=Buiten; amplifier=VA; channel=4", `rows|room|count|tap_w
10|Ingang|1|15
11|Laadperron|1|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
VA|1|60|37.5
VA|2|60|15
VA|3|60|30
VA|4|60|30`)
		t.Amplifiers("", `amplifier|load_w
VA|112.5`)
		t.Controls("", `control|zone|rated_w|load_w
RJ|Jeugd|20|15
RZ|Zaal|36|24`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Uitleen|60|1.5
Jeugd|35|1.5
Zaal|50|1.5
Buiten|85|2.5`)
	}},
}
