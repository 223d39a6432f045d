package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// beheer are a consultant, an installer, a stable manager, a contractor, an inspector and a school caretaker, in Dutch.
var beheer = []typed.Case{
	{File: "advies/De Duiker bijlage 3 ruimtestaat.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Ruimtestaat")
		p.Put("A1", `
Waterstaatsmuseum De Duiker - ruimtestaat omroep, 100 V
Bijlage 3 bij het advies, versie 1.2
||
Ruimte|||Oproep-|Luidsprekers|||Regeling||Versterker|
nr.|naam|m²|zone|type|aantal|W per st.|code|W|nr.|uitg.
'0.01|Entreehal|180|Z1|plafond|8|3|||V1|1
'0.02|Garderobe|35|Z1|plafond|2|1.5|||V1|1
'0.03|Museumwinkel|60|Z1|plafond|4|3|R1|24|V1|1
'0.10|Zaal gemalen|320|Z2|opbouw|8|6|R2|60|V1|2
'0.11|Zaal sluizen|260|Z2|opbouw|6|6|R3|60|V1|2
'0.12|Filmzaal|90|Z2|plafond|4|6|R4|24|V1|2
'1.01|Kantoortuin|110|Z3|plafond|6|1.5|R5|12|V2|1
'1.02|Vergaderkamer|30|Z3|plafond|2|1.5|R6|12|V2|1
'1.03|Bibliotheek|75|Z3|plafond|4|1.5|||V2|1
'1.10|Depot|400|Z4|hoorn|4|6|||V2|2
'1.11|Atelier|85|Z4|opbouw|3|3|R7|12|V2|2
'1.12|Trappenhuis|40|||geen||||
||
V1: 2 x 120 W, V2: 2 x 60 W
`)
		p.Merge("A4:C4", "E4:G4", "H4:I4", "J4:K4")
		p.Bold("A1", "A4:K5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Waterstaatsmuseum De Duiker", "room data: two header rows, one word broken over both, square metres among the figures; a room without loudspeakers")
		t.Speakers("sheet=Ruimtestaat; tap_v=100; line_v=100; zone=Z1; amplifier=V1; channel=1", `rows|room|count|tap_w|control
6|Entreehal|8|3|
7|Garderobe|2|1.5|
8|Museumwinkel|4|3|R1`)
		t.Speakers("sheet=Ruimtestaat; tap_v=100; line_v=100; zone=Z2; amplifier=V1; channel=2", `rows|room|count|tap_w|control
9|Zaal gemalen|8|6|R2
10|Zaal sluizen|6|6|R3
11|Filmzaal|4|6|R4`)
		t.Speakers("sheet=Ruimtestaat; tap_v=100; line_v=100; zone=Z3; amplifier=V2; channel=1", `rows|room|count|tap_w|control
12|Kantoortuin|6|1.5|R5
13|Vergaderkamer|2|1.5|R6
14|Bibliotheek|4|1.5|`)
		t.Speakers("sheet=Ruimtestaat; tap_v=100; line_v=100; zone=Z4; amplifier=V2; channel=2", `rows|room|count|tap_w|control
15|Depot|4|6|
16|Atelier|3|3|R7`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|120|39
V1|2|120|108
V2|1|60|18
V2|2|60|33`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|240|147
V2|120|51`)
		t.Controls("", `control|rated_w|load_w
R1|24|12
R2|60|48
R3|60|36
R4|24|24
R5|12|9
R6|12|3
R7|12|9`)
		t.Left("Ruimtestaat", `17|other|no loudspeakers in the stairwell`)
	}},

	{File: "oplevering/Sporthal De Grutto.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Luidsprekers")
		p.Put("A1", `
Oplevering omroep Sporthal De Grutto, werk 20-341
100 V. Versterkers in de technische ruimte: V1 = 2 x 240 W, V2 = 2 x 60 W
||
Code|Ruimte|Aantal|W/st|W tot.|Uitgang|Regelaar
LS01-08|Hal 1|8|15|120|V1.1|
LS09-14|Hal 2|6|15|90|V1.2|VR1
LS15-18|Tribune|4|6|24|V1.2|
LS19-26|Kleedkamers 1 t/m 8|8|3|24|V2.1|
LS27-28|Gang|2|3|6|V2.1|
LS29-30|Toezicht|2|1.5|3|V2.1|VR2
LS31-34|Foyer|4|3|12|V2.2|VR3
LS35-36|Instructielokaal|2|3|6|V2.2|VR4
LS37|Berging|1|6|6|V2.2|
|Totaal|37||291||
`)
		p.Bold("A1", "A4:G4", "B14:E14")
		q := p.Sheet("Regelaars")
		q.Put("A1", `
Regelaar|Plaats|Max. W
VR1|Toezicht|100
VR2|Toezicht|6
VR3|Foyer|24
VR4|Instructielokaal|12
`)
		r := p.Sheet("Kabels")
		r.Put("A1", `
Kabel|Van|Naar|Aders|Lengte
K1|V1.1|LS01|2 x 2,5 mm2|42 m
K2|V1.2|VR1|2 x 2,5 mm2|18 m
K3|VR1|LS09|2 x 2,5 mm2|47 m
K4|V1.2|LS15|2 x 1,5 mm2|55 m
K5|V2.1|LS19|2 x 1,5 mm2|30 m
K6|V2.2|VR3|2 x 1,5 mm2|22 m
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("20-341", "Sporthal De Grutto", "plain; outputs written V1.2, ranges of codes beside counts, controls that hang elsewhere than their loudspeakers, cables piece by piece")
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; amplifier=V1", `rows|room|count|tap_w|channel|control
5|Hal 1|8|15|1|
6|Hal 2|6|15|2|VR1
7|Tribune|4|6|2|`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; amplifier=V2", `rows|room|count|tap_w|channel|control
8|Kleedkamers 1 t/m 8|8|3|1|
9|Gang|2|3|1|
10|Toezicht|2|1.5|1|VR2
11|Foyer|4|3|2|VR3
12|Instructielokaal|2|3|2|VR4
13|Berging|1|6|2|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|240|120
V1|2|240|114
V2|1|60|33
V2|2|60|24`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|480|234
V2|120|57`)
		t.Controls("", `control|rated_w|load_w
VR1|100|90
VR2|6|3
VR3|24|12
VR4|12|6`)
		t.Lines("", `line|from|to|length_m|area_mm2
K1|V1.1|LS01|42|2.5
K2|V1.2|VR1|18|2.5
K3|VR1|LS09|47|2.5
K4|V1.2|LS15|55|1.5
K5|V2.1|LS19|30|1.5
K6|V2.2|VR3|22|1.5`)
		t.Left("Luidsprekers", `14|total|sums`)
	}},

	{File: "manege/geluid stallen.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Latin1(typed.DOS(`
Waar;Wat;Hoeveel;Staat op (watt);Knop;Versterker
Binnenbak;hoorn;6;10;;grote
Tribune binnenbak;kastje;4;5;K1;grote
Buitenbak;hoorn;4;10;;grote
Losrijbak;hoorn;2;10;;grote
Stal noord;kastje;5;2,5;K2;kleine
Stal zuid;kastje;5;2,5;K3;kleine
Zadelkamer;kastje;1;2,5;K4;kleine
Kantoor;plafond;1;1,25;;kleine
Leslokaal;plafond;2;2,5;K5;kleine
Wasplaats;hoorn;1;5;;kleine
Kapotte hoorn, ligt op de hooizolder;hoorn;1;;;

Grote versterker 120 watt, kleine versterker 60 watt, allebei 100 volt
K1 = 25 watt, K2 en K3 = 15 watt, K4 en K5 = 6 watt
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "plain; amplifiers called the big and the small one, ratings in sentences below, a broken horn in the loft")
		t.Speakers("tap_v=100; line_v=100; amplifier=grote", `rows|room|count|tap_w|control
2|Binnenbak|6|10|
3|Tribune binnenbak|4|5|K1
4|Buitenbak|4|10|
5|Losrijbak|2|10|`)
		t.Speakers("tap_v=100; line_v=100; amplifier=kleine", `rows|room|count|tap_w|control
6|Stal noord|5|2.5|K2
7|Stal zuid|5|2.5|K3
8|Zadelkamer|1|2.5|K4
9|Kantoor|1|1.25|
10|Leslokaal|2|2.5|K5
11|Wasplaats|1|5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
grote|120|140
kleine|60|38.75`)
		t.Amplifiers("", `amplifier|rated_w|load_w
grote|120|140
kleine|60|38.75`)
		t.Controls("", `control|rated_w|load_w
K1|25|20
K2|15|12.5
K3|15|12.5
K4|6|2.5
K5|6|5`)
		t.Left("", `12|spare|broken, lies in the hay loft`)
	}},

	{File: "meerwerk/Hortus Lindewal MW07.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("MW07")
		p.Put("A1", `
Hortus Lindewal - meerwerk 07 omroepinstallatie
Uitgevoerd en opgeleverd 12-06-2020. Lijnen 100 V
||
||was||is nu||||
Zone|Plaats|st.|W/st.|st.|W/st.|W totaal nu|Eindtrap|Toelichting
Kassen|Palmenkas|4|10|6|10|60|ET1|2 bijgeplaatst
Kassen|Varenkas|4|6|4|3|12|ET1|te hard, lager gezet
Kassen|Cactuskas|2|6|2|6|12|ET1|
Kassen|Vlinderkas|2|6|0||0|ET1|vervallen, kas gesloopt
Buiten|Heemtuin|||4|15|60|ET2|nieuw
Buiten|Ingang|2|10|2|10|20|ET2|
Gebouw|Lezingenzaal|6|3|6|6|36|ET3|op regelaar LR1, nu 60 W (was 24 W)
Gebouw|Herbarium|2|3|2|3|6|ET3|
Gebouw|Kantoor|3|1.5|3|1.5|4.5|ET3|op regelaar LR2, 12 W
|Totaal|25||29||210.5||
||
Eindtrappen: ET1 120 W, ET2 nu 120 W (was 60 W), ET3 60 W
`)
		p.Merge("C4:D4", "E4:F4")
		p.Bold("A1", "A4:I5", "B15:G15")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Hortus Lindewal", "change order, done: was and is now side by side, one place gone, one new; controls and their ratings in remarks, old ratings in brackets")
		t.Speakers("sheet=MW07; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|amplifier|control
6|Kassen|Palmenkas|6|10|ET1|
7|Kassen|Varenkas|4|3|ET1|
8|Kassen|Cactuskas|2|6|ET1|
10|Buiten|Heemtuin|4|15|ET2|
11|Buiten|Ingang|2|10|ET2|
12|Gebouw|Lezingenzaal|6|6|ET3|LR1
13|Gebouw|Herbarium|2|3|ET3|
14|Gebouw|Kantoor|3|1.5|ET3|LR2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
ET1|120|84
ET2|120|80
ET3|60|46.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
ET1|120|84
ET2|120|80
ET3|60|46.5`)
		t.Controls("", `control|rated_w|load_w
LR1|60|36
LR2|12|4.5`)
		t.Left("MW07", `9|removed|hothouse pulled down
15|total|sums`)
	}},

	{File: "inspectie/remise ontruiming meting.tsv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Meetrapport gesproken ontruiming						
Object	Tramremise Oostkade					
Installatie	100 V, eindversterkers EV1 en EV2 elk 250 W, EV3 120 W					
						
Eindversterker	Ruimte	Luidsprekers	Stand	dB(A) gemeten	Eis dB(A)	Oordeel
EV1	Hal spoor 1-6	12	10 W	92	90	akkoord
EV1	Hal spoor 7-12	12	10 W	91	90	akkoord
EV2	Werkplaats	8	15 W	94	95	te laag, stand 20 W adviseren
EV2	Draaibankruimte	4	15 W	97	95	akkoord
EV2	Wasstraat	4	10 W	93	90	akkoord
EV3	Wachtlokaal	4	1,5 W	71	65	akkoord
EV3	Kantoren 1.01-1.09	9	1,5 W	70	65	akkoord
EV3	Kleedruimte	4	3 W	76	75	akkoord
EV3	Magazijn	6	3 W	78	75	akkoord
EV3	Gelijkrichterruimte	1	6 W	88	90	te laag, tweede luidspreker bijplaatsen
						
Gemeten met ruissignaal op 1,5 m hoogte, geluidmeter nr. 3						
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Tramremise Oostkade", "test record: sound levels beside settings; advice on a higher tap and on one more loudspeaker that is not followed yet")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|amplifier
6|Hal spoor 1-6|12|10|EV1
7|Hal spoor 7-12|12|10|EV1
8|Werkplaats|8|15|EV2
9|Draaibankruimte|4|15|EV2
10|Wasstraat|4|10|EV2
11|Wachtlokaal|4|1.5|EV3
12|Kantoren 1.01-1.09|9|1.5|EV3
13|Kleedruimte|4|3|EV3
14|Magazijn|6|3|EV3
15|Gelijkrichterruimte|1|6|EV3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
EV1|250|240
EV2|250|220
EV3|120|55.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
EV1|250|240
EV2|250|220
EV3|120|55.5`)
	}},

	{File: "school/luidsprekers Wilgenpoort.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Blad1")
		p.Put("A1", `
School De Wilgenpoort, luidsprekers voor de bel en de omroep
Versterker in de loge, 100 V: uitgang 1 bouwdeel A, uitgang 2 bouwdeel B, uitgang 3 buiten. Elke uitgang 60 W
||
Bouwdeel|Lokaal|Aantal|Stand|Regelaar
A|A01 t/m A06, 1 per lokaal|6|1,5 W|
|Gang A|4|3 W|
|Aula|6||
|Docentenkamer|2|1,5 W|R1 (5 W)
B|B01 t/m B05, 1 per lokaal|5|1,5 W|
|Gang B|4|3 W|
|Gymzaal|4|6 W|R2 (36 W)
|Tekenlokaal|2|3 W|
|Mediatheek|3|1,5 W|R3 (12 W)
Buiten|Plein|2|15 W|
|Fietsenstalling|1|10 W|
||
doorgestreept = weg
`)
		p.Corrected("D7", "3 W", " 6 W")
		p.Merge("A5:A8", "A9:A13", "A14:A15")
		p.Bold("A1", "A4:E4")
		p.Strike("B12:E12")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "School De Wilgenpoort", "merged parts of the building; outputs by part in one sentence; a row struck out, a tap struck out and written anew in the same cell")
		t.Speakers("sheet=Blad1; note=part of the building as zone; tap_v=100; line_v=100; zone=A; channel=1", `rows|room|count|tap_w|control
5|A01 t/m A06, 1 per lokaal|6|1.5|
6|Gang A|4|3|
7|Aula|6|6|
8|Docentenkamer|2|1.5|R1`)
		t.Speakers("sheet=Blad1; note=part of the building as zone; tap_v=100; line_v=100; zone=B; channel=2", `rows|room|count|tap_w|control
9|B01 t/m B05, 1 per lokaal|5|1.5|
10|Gang B|4|3|
11|Gymzaal|4|6|R2
13|Mediatheek|3|1.5|R3`)
		t.Speakers("sheet=Blad1; note=part of the building as zone; tap_v=100; line_v=100; zone=Buiten; channel=3", `rows|room|count|tap_w
14|Plein|2|15
15|Fietsenstalling|1|10`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
|1|60|60
|2|60|48
|3|60|40`)
		t.Amplifiers("", `amplifier|load_w
|148`)
		t.Controls("", `control|rated_w|load_w
R1|5|3
R2|36|24
R3|12|4.5`)
		t.Left("Blad1", `12|removed|struck out`)
	}},
}
