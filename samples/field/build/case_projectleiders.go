package main

import (
	"strings"

	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// projectleiders are an installer, a stable's office and a project leader with revisions, in Dutch.
var projectleiders = []typed.Case{
	{File: "tuinen/Zwaluwnest omroep.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Blad1")
		p.Put("A1", `
Plantentuin Het Zwaluwnest, omroep||||||||Werk 3390
100 V
||
Versterker 1, 120 W|||||Versterker 2, 60 W
Plaats|Aantal|Watt|Regelaar||Plaats|Aantal|Watt|Regelaar
Kas tropen|4|6|||Entree|2|3|R1
Kas subtropen|4|6|||Kaartverkoop|2|3|R1
Cactuskas|2|6|||Lezingenzaal|6|3|R2
Kwekerij|2|10|||Bibliotheek|2|1.5|R3
Parkeerterrein|2|10|||Kantoor|1|1.5|
Totaal||100|||Totaal||34.5
||
R1 = 24 W, R2 = 24 W, R3 = 6 W
`)
		p.Merge("A4:D4", "F4:I4")
		p.Bold("A1", "A4:I5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("3390", "Plantentuin Het Zwaluwnest", "two lists side by side, an amplifier each; the ratings of the controls in one line")
		t.Speakers("sheet=Blad1; tap_v=100; line_v=100; amplifier=1", `rows|room|count|tap_w
6|Kas tropen|4|6
7|Kas subtropen|4|6
8|Cactuskas|2|6
9|Kwekerij|2|10
10|Parkeerterrein|2|10`)
		t.Speakers("sheet=Blad1; tap_v=100; line_v=100; amplifier=2", `rows|room|count|tap_w|control
6|Entree|2|3|R1
7|Kaartverkoop|2|3|R1
8|Lezingenzaal|6|3|R2
9|Bibliotheek|2|1.5|R3
10|Kantoor|1|1.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
1|120|100
2|60|34.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
1|120|100
2|60|34.5`)
		t.Controls("", `control|rated_w|load_w
R1|24|12
R2|24|18
R3|6|3`)
		t.Left("Blad1", `11|total|sums`)
	}},

	{File: "maneges/kastanjehof.txt", Kind: "schedule", Bytes: func() []byte {
		return typed.Unicode16(typed.DOS(strings.ReplaceAll(`
Manege De Kastanjehof|opdracht 3377

Zone|Ruimte|Type|Aantal|Watt|Versterker|Regelaar|Regelaar W
A|Binnenbak lange zijde|kolom|4|10|V1||
A|Binnenbak korte zijde|kolom|2|10|V1||
B|Foyer|plafond|4|3|V2|VR1|20
B|Instructielokaal|plafond|2|3|V2|VR1|20
B|Kantoor|plafond|1|1,5|V2|VR2|5
C|Stalgang|hoorn|4|7,5|V1||
C|Buitenbak|hoorn|3|15|V1||
C|Wasplaats|hoorn|1|7,5|V1||

V1 is 250 W, V2 is 60 W, alles op 100 V
`, "|", "\t")))
	}, Truth: func(t *typed.Truth) {
		t.Is("3377", "Manege De Kastanjehof", "plain; Unicode text with tabs, amplifiers in a last sentence")
		t.Speakers("tap_v=100; line_v=100", `rows|zone|room|count|tap_w|amplifier|control
4|A|Binnenbak lange zijde|4|10|V1|
5|A|Binnenbak korte zijde|2|10|V1|
6|B|Foyer|4|3|V2|VR1
7|B|Instructielokaal|2|3|V2|VR1
8|B|Kantoor|1|1.5|V2|VR2
9|C|Stalgang|4|7.5|V1|
10|C|Buitenbak|3|15|V1|
11|C|Wasplaats|1|7.5|V1|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
V1|250|142.5
V2|60|19.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|250|142.5
V2|60|19.5`)
		t.Controls("", `control|zone|rated_w|load_w
VR1|B|20|18
VR2|B|5|1.5`)
	}},

	{File: "baden/De Wiel rev B.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Luidsprekers")
		p.Put("A1", `
Buitenbad De Wiel||||||Revisie B
Project 3402||||||100 V-lijn
||
Nr|Ruimte|Luidspreker|Aantal|Watt rev. A|Watt rev. B|Versterker|Wijziging
L1|Kassa|plafond|1|3|3|V1|
L2|Entree|plafond|2|6|3|V1|lager gezet
L3|Kleedkamers dames|plafond|4|3|3|V1|
L4|Kleedkamers heren|plafond|4|3|3|V1|
L5|EHBO|plafond|1|1.5||V1|vervallen
L6|Diep bad|hoorn|4|15|15|V2|
L7|Ondiep bad|hoorn|4|15|10|V2|lager gezet
L8|Peuterbad|hoorn|2||10|V2|nieuw
L9|Ligweide|hoorn|4|15|15|V2|
||
Versterkers: V1 60 W, V2 240 W
Volumeregelaars: VR1 (12 W) voor L1 en L2, VR2 (36 W) voor L3 en L4
`)
		p.Bold("A1", "A4:H4")
		p.Colour("FFFF99", "F6", "F11", "A12:H12")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("3402", "Buitenbad De Wiel", "watts of the last and of this revision side by side; one row dropped, one new; amplifiers and controls in sentences")
		t.Revision("B", false)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; amplifier=V1", `rows|tag|room|count|tap_w|control
5|L1|Kassa|1|3|VR1
6|L2|Entree|2|3|VR1
7|L3|Kleedkamers dames|4|3|VR2
8|L4|Kleedkamers heren|4|3|VR2`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; amplifier=V2", `rows|tag|room|count|tap_w
10|L6|Diep bad|4|15
11|L7|Ondiep bad|4|10
12|L8|Peuterbad|2|10
13|L9|Ligweide|4|15`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
V1|60|33
V2|240|180`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|60|33
V2|240|180`)
		t.Controls("", `control|rated_w|load_w
VR1|12|9
VR2|36|24`)
		t.Left("Luidsprekers", `9|removed|dropped in revision B`)
	}},
}
