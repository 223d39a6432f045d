package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

var filingsDutch = []typed.Case{

	{File: "filings/beheer/luidsprekers bibliotheek.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Blad1")
		p.Put("A1", `
Luidsprekers bibliotheek De Wilgenhof
opgenomen door de beheerder, februari 2021
||
Ruimte|Aantal|Stand|Volumeknop|Opmerking
Leeszaal|6|6 W|V1|
Uitleen|4|3 W||
Jeugdhoek|3|3 W|V2|
Studiezaal|4|3 W|V3|
Trappenhuis|2|1,5 W||
Kantoor|1|1,5 W|V4|
Magazijn|1|?||zit achter de kast, stand niet te zien
Fietsenstalling|2|10 W||hoorn
||
Versterker 100 V, 120 W, in de meterkast
V1 en V3 zijn 50 W, V2 is 12 W, V4 is 6 W
`)
		p.Bold("A1", "A4:E4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "bibliotheek De Wilgenhof", "caretaker's list, one tap that could not be seen, one amplifier without a name, ratings of the knobs in a sentence")
		t.Speakers("sheet=Blad1; tap_v=100; line_v=100", `rows|room|count|tap_w|control
5|Leeszaal|6|6|V1
6|Uitleen|4|3|
7|Jeugdhoek|3|3|V2
8|Studiezaal|4|3|V3
9|Trappenhuis|2|1.5|
10|Kantoor|1|1.5|V4
11|Magazijn|1||
12|Fietsenstalling|2|10|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_min_w
|120|93.5`)
		t.Amplifiers("", `amplifier|rated_w
|120`)
		t.Controls("", `control|rated_w|load_w
V1|50|36
V2|12|9
V3|50|12
V4|6|1.5`)
		t.Asks("Blad1", `11|asked|tap of the loudspeaker in the store`)
	}},

	{File: "filings/revisie/4410 manege rev2.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Luidsprekerstaat")
		p.Put("A1", `
Luidsprekerstaat revisie||||Werk|4410
Manege Groot Ravelbos||||Rev.|2
||
Code|Ruimte|Type|St.|Aftakking|Groep|VR
LA|Binnenbak|hoorn|4|15 W|G1|
LB|Tribune|kast|4|6 W|G1|VR1
LC|Stal oost|kast|5|6 W|G2|
LD|Stal west|kast|5|6 W|G2|
LE|Zadelkamer|plafond|1|3 W|G2|VR2
LF|Hal|plafond|3|3 W|G3|
LG|Kantoor|plafond|1|1,5 W|G3|VR3
LH|Leslokaal|plafond|4|3 W|G3|VR4
LI|Buitenbak|hoorn|4|15 W|G4|
LJ|Parkeerplaats|hoorn|2|15 W|G4|vervallen rev. 2
||
VR1 50 W, VR2 6 W, VR3 6 W, VR4 24 W
`)
		p.Merge("A1:D1", "A2:D2")
		p.Bold("A1:A2", "A4:G4")
		p.Strike("A14:F14")
		q := p.Sheet("Groepenstaat")
		q.Put("A1", `
Groep|G1|G2|G3|G4
Versterker|V1|V1|V2|V2
Kanaal|1|2|1|2
Vermogen W|120|120|60|60
Lijnspanning|100 V|100 V|100 V|100 V
Kabel mm²|2.5|2.5|1.5|2.5
Lengte m|80|130|45|160
`)
		q.Bold("A1:E1", "A2:A7")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("4410", "Manege Groot Ravelbos", "groups across on the second sheet; one row struck through and cancelled by the revision; ratings of the controls below the list")
		t.Revision("2", false)
		t.Speakers("sheet=Luidsprekerstaat; tap_v=100; line_v=100", `rows|tag|room|count|tap_w|amplifier|channel|control
5|LA|Binnenbak|4|15|V1|1|
6|LB|Tribune|4|6|V1|1|VR1
7|LC|Stal oost|5|6|V1|2|
8|LD|Stal west|5|6|V1|2|
9|LE|Zadelkamer|1|3|V1|2|VR2
10|LF|Hal|3|3|V2|1|
11|LG|Kantoor|1|1.5|V2|1|VR3
12|LH|Leslokaal|4|3|V2|1|VR4
13|LI|Buitenbak|4|15|V2|2|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|120|84
V1|2|120|63
V2|1|60|22.5
V2|2|60|60`)
		t.Amplifiers("", `amplifier|load_w
V1|147
V2|82.5`)
		t.Controls("", `control|rated_w|load_w
VR1|50|24
VR2|6|3
VR3|6|1.5
VR4|24|12`)
		t.Lines("note=one length a line", `line|length_m|area_mm2
G1|80|2.5
G2|130|2.5
G3|45|1.5
G4|160|2.5`)
		t.Left("Luidsprekerstaat", `14|removed|struck through, cancelled`)
	}},

	{File: "filings/overig/verlichting busremise.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Armaturen")
		p.Put("A1", `
Armaturenlijst busremise Klaverdam, werk 5121
||
Zone|Ruimte|Armatuur|Aantal|W|Totaal W|Groep|Dimmer
Hal|Opstelstroken|LED-balk|24|36|864|2.1|
Hal|Put|LED-balk IP66|6|36|216|2.1|
Werkplaats|Banken|LED-balk|8|36|288|2.2|
Werkplaats|Magazijn|LED-balk|4|22|88|2.2|
Kantoor|Planning|paneel 60x60|6|30|180|3.1|D1 (300 W)
Kantoor|Gang|downlight|5|10|50|3.1|
Kantoor|Kleedruimte|downlight|4|10|40|3.1|
Buiten|Terrein|schijnwerper|5|100|500|3.2|
||Totaal|62||2226
||
Groepen 230 V uit verdeler LK2 en LK3
`)
		p.Bold("A1", "A3:H3", "C12:F12")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "busremise Klaverdam", "a list of luminaires with zones, watts, circuits and dimmers: no loudspeakers")
	}},
}
