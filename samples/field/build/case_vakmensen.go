package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

var vakmensen = []typed.Case{
	// The work planner of a Dutch installer fills in the firm's own as-built form for an ice rink, tables one below the other to print on one page.
	{File: "revisie/P-0917 omroep ijsbaan.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Revisie")
		p.Put("A1", `
Project|IJsbaan De Scherpe Bocht
Projectnummer|P-0917
Onderdeel|Omroep 100 V, as-built
Datum|14-11-2018

Code|Zone|Ruimte|Uitvoering|Aftakking|Lijn|Regelaar
LS101|Baan|Lange zijde west|hoorn|15 W|L1|
LS102|Baan|Lange zijde west|hoorn|15 W|L1|
LS103|Baan|Lange zijde west|hoorn|15 W|L1|
LS104|Baan|Lange zijde west|hoorn|15 W|L1|
LS105|Baan|Lange zijde oost|hoorn|15 W|L1|
LS106|Baan|Lange zijde oost|hoorn|15 W|L1|
LS107|Baan|Lange zijde oost|hoorn|15 W|L1|
LS108|Baan|Lange zijde oost|hoorn|15 W|L1|
LS201|Tribune|Tribune laag|kast|10 W|L2|
LS202|Tribune|Tribune laag|kast|10 W|L2|
LS203|Tribune|Tribune hoog|kast|10 W|L2|
LS204|Tribune|Tribune hoog|kast|10 W|L2|
LS301|Entree|Hal|plafond|6 W|L3|VR1
LS302|Entree|Hal|plafond|6 W|L3|VR1
LS303|Entree|Kassa|plafond|3 W|L3|VR2
LS304|Entree|Schaatsverhuur|plafond|6 W|L3|
LS401|Kleedkamers|Kleedkamer 1|plafond|3 W|L4|
LS402|Kleedkamers|Kleedkamer 2|plafond|3 W|L4|
LS403|Kleedkamers|Kleedkamer 3|plafond|3 W|L4|
LS404|Kleedkamers|Scheidsrechters|plafond|1,5 W|L4|VR3
LS405|Kleedkamers|EHBO|plafond|1,5 W|L4|VR4

Lijn|Versterker|Uitgang|Vermogen|Kabel|Lengte
L1|V1|1|240 W|2x2,5 mm²|180 m
L2|V1|2|240 W|2x2,5 mm²|95 m
L3|V2|1|60 W|2x1,5 mm²|60 m
L4|V2|2|60 W|2x1,5 mm²|75 m

Regelaar|Vermogen
VR1|24 W
VR2|6 W
VR3|6 W
VR4|6 W
`)
		p.Bold("A1:A4", "A6:G6", "A29:F29", "A35:B35")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("P-0917", "IJsbaan De Scherpe Bocht", "plain; loudspeakers, lines and controls in three tables on one sheet, joined by line")
		t.Speakers("sheet=Revisie; tap_v=100; line_v=100; zone=Baan; amplifier=V1; channel=1", `rows|tag|room|tap_w
7..10|LS101..|Lange zijde west|15
11..14|LS105..|Lange zijde oost|15`)
		t.Speakers("sheet=Revisie; tap_v=100; line_v=100; zone=Tribune; amplifier=V1; channel=2", `rows|tag|room|tap_w
15..16|LS201..|Tribune laag|10
17..18|LS203..|Tribune hoog|10`)
		t.Speakers("sheet=Revisie; tap_v=100; line_v=100; zone=Entree; amplifier=V2; channel=1", `rows|tag|room|tap_w|control
19..20|LS301..|Hal|6|VR1
21|LS303|Kassa|3|VR2
22|LS304|Schaatsverhuur|6|`)
		t.Speakers("sheet=Revisie; tap_v=100; line_v=100; zone=Kleedkamers; amplifier=V2; channel=2", `rows|tag|room|tap_w|control
23|LS401|Kleedkamer 1|3|
24|LS402|Kleedkamer 2|3|
25|LS403|Kleedkamer 3|3|
26|LS404|Scheidsrechters|1.5|VR3
27|LS405|EHBO|1.5|VR4`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|240|120
V1|2|240|40
V2|1|60|21
V2|2|60|12`)
		t.Amplifiers("", `amplifier|load_w
V1|160
V2|33`)
		t.Controls("", `control|rated_w|load_w
VR1|24|12
VR2|6|3
VR3|6|1.5
VR4|6|1.5`)
		t.Lines("note=one length a line", `line|length_m|area_mm2
L1|180|2.5
L2|95|2.5
L3|60|1.5
L4|75|1.5`)
	}},

	// A Flemish design office writes the bill of quantities for a botanical garden, item numbers by zone, prices for the bidder.
	{File: "meetstaat/2015-031 plantentuin deel 70.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Meetstaat")
		p.Put("A1", `
Plantentuin Het Hofveld - heraanleg serres
Bestek 2015-031 - meetstaat deel 70 omroep 100 V

Post|Omschrijving|Aard|Eenh.|Hoev.|EP|Totaal
'70.10|Zone 1 Tropische serre
'70.11|Opbouwluidspreker, afgetakt op 10 W|VH|st|6
'70.12|Opbouwluidspreker, afgetakt op 6 W|VH|st|4
'70.13|Kabel 2x2,5 mm²|VH|m|110
'70.20|Zone 2 Woestijnserre
'70.21|Opbouwluidspreker, afgetakt op 6 W|VH|st|8
'70.22|Kabel 2x1,5 mm²|VH|m|85
'70.30|Zone 3 Onthaal en leslokalen
'70.31|Inbouwluidspreker, afgetakt op 3 W, onthaal|FH|st|4
'70.32|Inbouwluidspreker, afgetakt op 3 W, leslokaal 1|FH|st|4
'70.33|Inbouwluidspreker, afgetakt op 3 W, leslokaal 2|FH|st|4
'70.34|Volumeregelaar VR1, 24 W, leslokaal 1|FH|st|1
'70.35|Volumeregelaar VR2, 24 W, leslokaal 2|FH|st|1
'70.36|Kabel 2x1,5 mm²|VH|m|70
'70.40|Zone 4 Buitenpaden
'70.41|Zuilluidspreker IP65, afgetakt op 15 W|FH|st|9
'70.42|Kabel 2x2,5 mm²|VH|m|320
'70.50|Versterkerkast
'70.51|Eindversterker EV1, 120 W, voor zone 1|FH|st|1
'70.52|Eindversterker EV2, 120 W, voor zone 2|FH|st|1
'70.53|Eindversterker EV3, 60 W, voor zone 3|FH|st|1
'70.54|Eindversterker EV4, 240 W, voor zone 4|FH|st|1
'70.55|Omroepmicrofoon met 4 zonetoetsen|FH|st|1
`)
		p.Bold("A1", "A4:G4", "A5:B5", "A9:B9", "A12:B12", "A19:B19", "A22:B22")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2015-031", "Plantentuin Het Hofveld", "bill of quantities in sections; tap, room, rating and zone inside the wording of the items")
		t.Speakers("sheet=Meetstaat; tap_v=100; line_v=100; zone=Zone 1 Tropische serre; amplifier=EV1; note=title as zone", `rows|count|tap_w
6|6|10
7|4|6`)
		t.Speakers("sheet=Meetstaat; tap_v=100; line_v=100; zone=Zone 2 Woestijnserre; amplifier=EV2; note=title as zone", `rows|count|tap_w
10|8|6`)
		t.Speakers("sheet=Meetstaat; tap_v=100; line_v=100; zone=Zone 3 Onthaal en leslokalen; amplifier=EV3; note=title as zone", `rows|room|count|tap_w|control
13|onthaal|4|3|
14|leslokaal 1|4|3|VR1
15|leslokaal 2|4|3|VR2`)
		t.Speakers("sheet=Meetstaat; tap_v=100; line_v=100; zone=Zone 4 Buitenpaden; amplifier=EV4; note=title as zone", `rows|count|tap_w
20|9|15`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
EV1|120|84
EV2|120|48
EV3|60|36
EV4|240|135`)
		t.Amplifiers("", `amplifier|rated_w|load_w
EV1|120|84
EV2|120|48
EV3|60|36
EV4|240|135`)
		t.Controls("", `control|rated_w|load_w
VR1|24|12
VR2|24|12`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Zone 1 Tropische serre|110|2.5
Zone 2 Woestijnserre|85|1.5
Zone 3 Onthaal en leslokalen|70|1.5
Zone 4 Buitenpaden|320|2.5`)
		t.Left("Meetstaat", `27|other|microphone`)
	}},

	// A volunteer on the board of a riding school wrote down what hangs where before asking for a quotation.
	{File: "bestuur/luidsprekers manege.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Blad1")
		p.Put("A1", `
Manege Het Zwarte Veulen - luidsprekers
opgeschreven voor het bestuur, mei 2012

Waar|Hoeveel|Soort|Staat op|Knop|Opmerking
Rijhal links|3|hoorn|15 W|geen|
Rijhal rechts|3|"|"|geen|
Binnenbak|2|"|10 W|geen|
Stal A|4|kastje|3 W|knop 1|
Stal B|4|"|"|knop 2|
Stal C|2|"|"|geen|
Zadelkamer|1|"|1,5 W|geen|
Leslokaal|2|plafond|3 W|knop 3|
Kantoor|1|"|"|knop 4|
Wasplaats|1|hoorn|5 W|geen|
Buitenbak|2|"|15 W|geen|
Longeercirkel|1|"|10 W|geen|weggehaald in 2011

De versterker is 240 W (100 volt) en staat in het kantoor.
Alle knoppen zijn 20 W.
`)
		p.Bold("A1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Manege Het Zwarte Veulen", "ditto marks, one amplifier and the rating of all controls in sentences below, one horn taken away")
		t.Speakers("sheet=Blad1; tap_v=100; line_v=100", `rows|room|count|tap_w|control
5|Rijhal links|3|15|
6|Rijhal rechts|3|15|
7|Binnenbak|2|10|
8|Stal A|4|3|knop 1
9|Stal B|4|3|knop 2
10|Stal C|2|3|
11|Zadelkamer|1|1.5|
12|Leslokaal|2|3|knop 3
13|Kantoor|1|3|knop 4
14|Wasplaats|1|5|
15|Buitenbak|2|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|185.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|185.5`)
		t.Controls("", `control|rated_w|load_w
knop 1|20|12
knop 2|20|12
knop 3|20|6
knop 4|20|3`)
		t.Left("Blad1", `16|removed|taken away in 2011`)
	}},
}
