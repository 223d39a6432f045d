package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// installateur is a Dutch installer: groups, a sheet a job, remarks in short words.
var installateur = []typed.Case{
	{File: "werken/Zwembad De Waterlelie.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Luidsprekers")
		p.Put("A1", `
Zwembad De Waterlelie - omroepinstallatie|||||||||
Werknr. 2019-212||||Datum 06-02-2019
|
Groep|Ruimte|Aantal|Type|Aftakking|Totaal W|Volumeregelaar|Kabel|Lengte|Opmerking
1|Wedstrijdbad|8|hoorn|10 W|80|geen|2x2,5|60 m
1|Tribune|4|zuil|10 W|40|geen|2x2,5|25 m
2|Recreatiebad|6|hoorn|7,5 W|45|geen|2x2,5|75 m
3|Hal|6|plafond|3 W|18|VR1|2x1,5|30 m
3|Kassa|1|plafond|1,5 W|1,5|VR1|2x1,5|8 m
4|Kleedkamers|10|plafond IP|3 W|30|VR2|2x1,5|45 m|VR2 met noodrelais
4|Personeel|2|plafond|3 W|6|VR3|2x1,5|20 m
4|Oude sauna|2|plafond|3 W||||||vervallen
5|Ligweide|4|hoorn|15 W|||||toekomst, alleen buis
|
Totaal|||||220,5
`)
		p.Hide(12)
		q := p.Sheet("Versterkers")
		q.Put("A1", `
Versterker|Uitgang|Vermogen|Lijnspanning|Groep|Opmerking
V1|1|240 W|100 V|1
V1|2|240 W|100 V|2
V2|1|120 W|100 V|3
V2|2|120 W|100 V|4
V2|3|120 W|100 V||reserve
|
Regelaar|Vermogen
VR1|24 W
VR2|36 W
VR3|6 W
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2019-212", "Zwembad De Waterlelie", "groups join amplifier sheet and list; a hidden row that no longer holds; future loudspeakers")
		t.Speakers("tap_v=100; line_v=100; sheet=Luidsprekers", `
rows|room|count|model|tap_w|amplifier|channel|control|status
5|Wedstrijdbad|8|hoorn|10|V1|1||installed
6|Tribune|4|zuil|10|V1|1||installed
7|Recreatiebad|6|hoorn|7.5|V1|2||installed
8|Hal|6|plafond|3|V2|1|VR1|installed
9|Kassa|1|plafond|1.5|V2|1|VR1|installed
10|Kleedkamers|10|plafond IP|3|V2|2|VR2|installed
11|Personeel|2|plafond|3|V2|2|VR3|installed
13|Ligweide|4|hoorn|15||||future
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nV1|1|240|120\nV1|2|240|45\nV2|1|120|19.5\nV2|2|120|36\nV2|3|120|0")
		t.Amplifiers("", "amplifier|load_w\nV1|165\nV2|55.5")
		t.Controls("", "control|rated_w|load_w\nVR1|24|19.5\nVR2|36|30\nVR3|6|6")
		t.Lines("note=one length a room", "zone|length_m|area_mm2\nWedstrijdbad|60|2.5\nTribune|25|2.5\nRecreatiebad|75|2.5\nHal|30|1.5\nKassa|8|1.5\nKleedkamers|45|1.5\nPersoneel|20|1.5")
		t.Left("Luidsprekers", "12|removed|hidden\n15|total|")
	}},

	{File: "werken/ijsbaan lijst.csv", Kind: "schedule", Bytes: text(`
IJsbaan Noorderplas;;;;;;
Werk 2020-045;;;;;;
Versterker 1: 2 x 120 W, 100 V;;;;;;
;;;;;;
Lijn;Plaats;Aant.;Soort;W per stuk;W totaal;Regelaar
1;Baan binnenzijde;6;hoorn;10;60;
1;Baan buitenzijde;4;hoorn;10;40;
2;Schaatsverhuur;4;inbouw;6;24;Regelaar verhuur 35 W
2;EHBO;1;inbouw;3;3;
2;Jurykamer;2;inbouw;3;6;Regelaar jury 10 W
2;Slijperij;2;inbouw;6;12;Regelaar verhuur 35 W
;;19;;;145;
`), Truth: func(t *typed.Truth) {
		t.Is("2020-045", "IJsbaan Noorderplas", "controls named by places with ratings; a control over rooms that do not follow each other; a total without a word")
		t.Speakers("tap_v=100; line_v=100; amplifier=Versterker 1", `
rows|room|count|model|tap_w|channel|control
6|Baan binnenzijde|6|hoorn|10|1|
7|Baan buitenzijde|4|hoorn|10|1|
8|Schaatsverhuur|4|inbouw|6|2|Regelaar verhuur
9|EHBO|1|inbouw|3|2|
10|Jurykamer|2|inbouw|3|2|Regelaar jury
11|Slijperij|2|inbouw|6|2|Regelaar verhuur
`)
		t.Channels("line_v=100; amplifier=Versterker 1; rated_w=120", "channel|load_w\n1|100\n2|45")
		t.Amplifiers("", "amplifier|rated_w|load_w\nVersterker 1|240|145")
		t.Controls("", "control|rated_w|load_w\nRegelaar verhuur|35|36\nRegelaar jury|10|6")
		t.Left("", "12|total|")
	}},

	{File: "werken/Kassen Plantentuin revisie.xlsx", Kind: "schedule", Book: sheets("Revisie", `
Plantentuin Grotenhof - kassen|||||||
Werk 2021-090, revisie B, 14-09-2021|||||||
|
Zone|Kas|Luidsprekers|Kabel vanaf rek|Regelaar|Regelaar W|Versterker|Kanaal
1|Tropische kas|6 x 15 W, 2 x 7,5 W|2,5 mm² 110 m|||VA|1
2|Varenkas|4 x 7,5 W|2,5 mm² 85 m|R2|50|VA|2
3|Orchideeënkas|4 x 7,5 W|1,5 mm² 60 m|R3|35|VA|2
4|Winkel|4 x 6 W|1,5 mm² 30 m|R4|30|VB|1
4|Magazijn|1 x 3 W|1,5 mm² 12 m|R4|30|VB|1
5|Buitentuin|5 x 10 W|2,5 mm² 140 m|||VB|2
|
VA: 2 x 200 W, VB: 2 x 60 W, 100 V
`), Truth: func(t *typed.Truth) {
		t.Is("2021-090", "Plantentuin Grotenhof - kassen", "counts and taps in one cell, two taps in one house; size and length in one cell; amplifiers in a note")
		t.Revision("B", false)
		t.Speakers("tap_v=100; line_v=100; sheet=Revisie", `
rows|zone|room|count|tap_w|amplifier|channel|control
5|1|Tropische kas|6|15|VA|1|
5|1|Tropische kas|2|7.5|VA|1|
6|2|Varenkas|4|7.5|VA|2|R2
7|3|Orchideeënkas|4|7.5|VA|2|R3
8|4|Winkel|4|6|VB|1|R4
9|4|Magazijn|1|3|VB|1|R4
10|5|Buitentuin|5|10|VB|2|
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nVA|1|200|105\nVA|2|200|60\nVB|1|60|27\nVB|2|60|50")
		t.Amplifiers("", "amplifier|rated_w|load_w\nVA|400|165\nVB|120|77")
		t.Controls("", "control|zone|rated_w|load_w\nR2|2|50|30\nR3|3|35|30\nR4|4|30|27")
		t.Lines("note=home run", "zone|length_m|area_mm2\nTropische kas|110|2.5\nVarenkas|85|2.5\nOrchideeënkas|60|1.5\nWinkel|30|1.5\nMagazijn|12|1.5\nBuitentuin|140|2.5")
	}},
}
