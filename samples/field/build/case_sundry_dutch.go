package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

var sundryDutch = []typed.Case{
	// An installer's project leader closes a swimming pool job with the list that goes into the rack door.
	{File: "sundry/5520 zwembad omroep.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Omroep")
		p.Put("A1", `
Zwembad De Lisdodde, omroepinstallatie 100 V||||||Werknr. 5520
Zone|Ruimte|Aantal|Aftakking|Versterker|Kanaal|Regelaar
Baden|Wedstrijdbad|8|10 W|V1|1
Baden|Instructiebad|4|10 W|V1|1
Baden|Tribune|4|5 W|V1|2
Kleedkamers|Dames|3|2,5 W|V1|2
Kleedkamers|Heren|3|2,5 W|V1|2
Kleedkamers|Groepskleedkamers|4|2,5 W|V1|2
Entree|Hal|4|5 W|V2|1|VR1 (30 W)
Entree|Kassa|1|2,5 W|V2|1|VR2 (5 W)
Entree|Kantoor|2|2,5 W|V2|1|VR3 (10 W)
Buiten|Ligweide|4|15 W|V2|2
Buiten|Fietsenstalling|1|15 W|V2|2

Versterker|Kanaal|Vermogen
V1|1|160 W
V1|2|80 W
V2|1|80 W
V2|2|80 W
`)
		p.Bold("A1", "A2:G2", "A15:C15")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5520", "Zwembad De Lisdodde", "plain; control ratings in brackets, amplifier channels in a table below")
		t.Speakers("sheet=Omroep; tap_v=100; line_v=100; zone=Baden; amplifier=V1", `rows|room|count|tap_w|channel
3|Wedstrijdbad|8|10|1
4|Instructiebad|4|10|1
5|Tribune|4|5|2`)
		t.Speakers("sheet=Omroep; tap_v=100; line_v=100; zone=Kleedkamers; amplifier=V1; channel=2; tap_w=2.5", `rows|room|count
6|Dames|3
7|Heren|3
8|Groepskleedkamers|4`)
		t.Speakers("sheet=Omroep; tap_v=100; line_v=100; zone=Entree; amplifier=V2; channel=1", `rows|room|count|tap_w|control
9|Hal|4|5|VR1
10|Kassa|1|2.5|VR2
11|Kantoor|2|2.5|VR3`)
		t.Speakers("sheet=Omroep; tap_v=100; line_v=100; zone=Buiten; amplifier=V2; channel=2; tap_w=15", `rows|room|count
12|Ligweide|4
13|Fietsenstalling|1`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|160|120
V1|2|80|45
V2|1|80|27.5
V2|2|80|75`)
		t.Amplifiers("", `amplifier|load_w
V1|165
V2|102.5`)
		t.Controls("zone=Entree", `control|rated_w|load_w
VR1|30|20
VR2|5|2.5
VR3|10|5`)
	}},

	// A contractor's administrator settles the extra work at an ice rink: what it was, what it has become, what it costs.
	{File: "sundry/2218 meerwerk 03 ijsbaan.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("MW03")
		p.Put("A1", `
Kunstijsbaan Rietvogelplas, project 2218
Meerwerkstaat 03, luidsprekers. Uitgevoerd en gereedgemeld 14 mei
Volledige lijst, ook wat gelijk bleef. Alles op de ene versterker van 240 W (100 V-lijn)

Plaats|Was||Wordt||Verrekening
|st.|W per st.|st.|W per st.|€
Binnenbocht|6|10|6|15|180
Buitenbocht|6|10|6|15|180
Krabbelbaan|2|10|3|10|145
Schaatsverhuur|2|5|vervalt||-60
EHBO-post|nieuw||1|2.5|95
Kleedruimte|4|2.5|4|2.5|0
Kassa|1|2.5|1|2.5|0
Totaal|||21||540
`)
		p.Merge("B5:C5", "D5:E5")
		p.Bold("A1", "A5:F6", "A14:F14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2218", "Kunstijsbaan Rietvogelplas", "a change order that has been carried out: counts and taps before and after under merged titles; one place given up, one new")
		t.Speakers("sheet=MW03; tap_v=100; line_v=100", `rows|room|count|tap_w
7|Binnenbocht|6|15
8|Buitenbocht|6|15
9|Krabbelbaan|3|10
11|EHBO-post|1|2.5
12|Kleedruimte|4|2.5
13|Kassa|1|2.5`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|225`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|225`)
		t.Left("MW03", `10|removed|given up by this change
14|total|sums`)
	}},

	// A work planner at a riding school: loudspeakers by line, and a cable list whose lines lead to the amplifiers.
	{File: "sundry/B-0931 manege.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Luidsprekers")
		p.Put("A1", `
Lijn|Waar|Luidspreker|Aantal|Vermogen (W)|Regelaar|Opmerking
1|Binnenbak oostzijde|projector|4|10
1|Binnenbak westzijde|projector|4|10
2|Stal noord|opbouw|6|6
2|Stal zuid|opbouw|6|6
2|Zadelkamer|opbouw|1|3|R1
3|Buitenbak|hoorn|4|15||op palen van 4 m
3|Parkeerterrein|hoorn|1|15
3|Longeercirkel|hoorn|2|15||fase 2, nog niet geplaatst
4|Leslokaal|inbouw|4|3|R2
4|Secretariaat|inbouw|1|1.5|R3
4|Gang|inbouw|3|1.5
`)
		p.Bold("A1:G1")
		q := p.Sheet("Lijnen")
		q.Put("A1", `
Manege De Vaalhengst, bestek B-0931. Kabelstaat omroep, 100 V

Lijn|Versterker|Uitgang|W uitgang|Kabel|Lengte m
1|VA|1|120|2 x 2,5 mm²|70
2|VA|2|120|2 x 2,5 mm²|95
3|VB|1|120|2 x 2,5 mm²|140
4|VB|2|60|2 x 0,8 mm ø|35

Regelaars R1 en R3 5 W, R2 20 W
`)
		q.Bold("A1", "A3:F3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("B-0931", "Manege De Vaalhengst", "loudspeakers joined to outputs by the number of the line; a cable given by its diameter; horns of a later phase")
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; amplifier=VA", `rows|room|count|tap_w|channel|control
2|Binnenbak oostzijde|4|10|1|
3|Binnenbak westzijde|4|10|1|
4|Stal noord|6|6|2|
5|Stal zuid|6|6|2|
6|Zadelkamer|1|3|2|R1`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; amplifier=VB", `rows|room|count|tap_w|channel|control
7|Buitenbak|4|15|1|
8|Parkeerterrein|1|15|1|
10|Leslokaal|4|3|2|R2
11|Secretariaat|1|1.5|2|R3
12|Gang|3|1.5|2|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
VA|1|120|80
VA|2|120|75
VB|1|120|75
VB|2|60|18`)
		t.Amplifiers("", `amplifier|load_w
VA|155
VB|93`)
		t.Controls("", `control|rated_w|load_w
R1|5|3
R2|20|12
R3|5|1.5`)
		t.Lines("note=one length a line", `line|length_m|area_mm2
1|70|2.5
2|95|2.5
3|140|2.5
4|35|0.503`)
		t.Left("Luidsprekers", `9|future|phase 2, not fitted`)
	}},
}
