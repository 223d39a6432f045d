package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// dutch are the schedules of a Dutch-speaking foundation.
func dutch() []typed.Case {
	return []typed.Case{
		{File: "nl/IJsbaan omroep.csv", Kind: "schedule", Bytes: ijsbaan, Truth: ijsbaanTruth},
		{File: "nl/Plantentuin kassen.ods", Kind: "schedule", Book: kassen, Saved: "ods", Truth: kassenTruth},
		{File: "nl/Botenhuis.xlsx", Kind: "schedule", Book: botenhuis, Truth: botenhuisTruth},
		{File: "nl/Sterrenwacht lijnen.xlsx", Kind: "schedule", Book: sterrenwacht, Saved: "xlsx", Truth: sterrenwachtTruth},
	}
}

// The first line names the separator; lengths from the rack; the word for the tap is a fraction of words.
func ijsbaan() []byte {
	return []byte("\ufeff" + typed.DOS(`
sep=;
Stichting Waterloof;;;;;;
IJsbaan, omroep;;;;;Werk W-501;
;;;;;;
Wat;Waar;St;Staat op;Vanaf kast;Draad;Uit
hoorn;baan noord;6;15 W;110 m;2x2,5;V1-1
hoorn;baan zuid;6;15 W;145 m;2x2,5;V1-2
id.;bocht oost;2;7,5 W;95 m;id.;V1-2
inbouw;kleedkamers;10;1,5 W;40 m;2x1,5;V1-3
id.;schaatsverhuur;6;3 W;55 m;id.;V1-3
id.;kassa (bestaand);1;3 W;60 m;2x0,75;V1-3
id.;werkplaats van derden;4;6 W;;;n.v.t.
;;35;;;;
V1: 3 x 120 W, 100 V;;;;;;
`))
}

func ijsbaanTruth(t *typed.Truth) {
	t.Is("W-501", "IJsbaan", "a 'sep=;' line and a byte-order mark (it may or may not count as a row: rows here count it); 'id.' per column; existing counts, a third party's does not; a total without a word")
	t.Speakers("tap_v=100; line_v=100; amplifier=V1", `
rows|zone|model|count|tap_w|channel|note
6|baan noord|hoorn|6|15|1|
7|baan zuid|hoorn|6|15|2|
8|bocht oost|hoorn|2|7.5|2|
9|kleedkamers|inbouw|10|1.5|3|
10|schaatsverhuur|inbouw|6|3|3|
11|kassa|inbouw|1|3|3|existing
`)
	t.Channels("line_v=100; rated_w=120; amplifier=V1", "channel|load_w|note\n1|90|\n2|105|90+15\n3|36|15+18+3")
	t.Amplifiers("", "amplifier|rated_w|load_w\nV1|360|231")
	t.Lines("material=copper; from=kast; note=each from the cabinet; metal not stated", `
to|length_m|area_mm2
baan noord|110|2.5
baan zuid|145|2.5
bocht oost|95|2.5
kleedkamers|40|1.5
schaatsverhuur|55|1.5
kassa|60|0.75
`)
	t.Left("", "12|by others|\n13|total|35 with the third party's four\n14|amplifier|")
}

// Two tables below each other, zones merged over their rows, the control in a merged cell as well.
func kassen() *excelize.File {
	p := typed.NewBook("Kassen")
	p.Put("A1", `
Plantentuin - kassen|||||W-488

Kas|Kop|Type|Stand|Regelaar|Lijn
Tropen|T1|zuil|10 W|R1 60 W|L1
|T2|zuil|10 W||L1
|T3|zuil|10 W||L1
|T4|zuil|20 W||L1
Woestijn|W1|inbouw|3 W||L1
|W2|inbouw|3 W||L1
Varens|V1|inbouw|1,5 W|R2 10 W|L2
|V2|inbouw|1,5 W||L2
|V3|inbouw|6 W||L2
|V4|inbouw|6 W|geen|L2

Lijn|Versterker|Kan leveren|Spanning|Lengte|Ader
L1|X1-1|60 W|100 V|85 m|2 x 1,5
L2|X1-2|60 W|100 V|120 m|2 x 1,5
`)
	p.Merge("A4:A7", "A8:A9", "A10:A13", "E4:E7", "E10:E12")
	return p.File
}

func kassenTruth(t *typed.Truth) {
	t.Is("W-488", "Plantentuin - kassen", "zones and controls merged over their rows, the control over fewer rows than the zone; R1 is a control, V1 a head, L1 a line; a second table below gives the lines")
	t.Speakers("sheet=Kassen; tap_v=100; line_v=100; amplifier=X1", `
rows|tag|zone|model|tap_w|control|channel
4..6|T1..T3|Tropen|zuil|10|R1|1
7|T4|Tropen|zuil|20|R1|1
8..9|W1..W2|Woestijn|inbouw|3||1
10..11|V1..V2|Varens|inbouw|1.5|R2|2
12|V3|Varens|inbouw|6|R2|2
13|V4|Varens|inbouw|6||2
`)
	t.Channels("line_v=100; rated_w=60; amplifier=X1", "channel|load_w|note\n1|56|50+6\n2|15|")
	t.Amplifiers("", "amplifier|load_w\nX1|71")
	t.Controls("", "control|zone|rated_w|load_w\nR1|Tropen|60|50\nR2|Varens|10|9")
	t.Lines("material=copper; note=metal not stated", "line|length_m|area_mm2\nL1|85|1.5\nL2|120|1.5")
}

// Two header rows; the channel is a day in one cell; pieces and taps share a cell.
func botenhuis() *excelize.File {
	p := typed.NewBook("Blad1")
	p.Put("B3", `
Botenhuis Waterloof|||||Werk W-512
alles 70 V|||||

Ruimte|Weergevers||Gevoed||Draai-
|soort|aantal @ stand|versterker|groep|knop
Botenhal|hoorn|4 @ 15 W|M1|1|
Botenhal|inbouw|6 @ 5 W|M1|1|k1 (35W)
Kleedruimte|inbouw|(8) à 2,5 W|M1|2|k2 (15W)
Steiger|hoorn|2x 7,5W|M1|3|
Vlaggenmast|hoorn|1 st. 15W|M1|3|
Berging|inbouw|2 reserve|-|-|

M1|4 groepen van 60 W; samen niet meer dan 180 W
`)
	p.Merge("C6:D6", "E6:F6", "B6:B7")
	return p.File
}

func botenhuisTruth(t *typed.Truth) {
	t.Is("W-512", "Botenhuis Waterloof", "count and tap in one cell in five spellings; a header word broken over two rows; 4 x 60 W with 180 W for the frame; spares in the count cell")
	t.Speakers("sheet=Blad1; tap_v=70.7; line_v=70.7; amplifier=M1", `
rows|zone|model|count|tap_w|channel|control|status|amplifier
8|Botenhal|hoorn|4|15|1||installed|M1
9|Botenhal|inbouw|6|5|1|k1|installed|M1
10|Kleedruimte|inbouw|8|2.5|2|k2|installed|M1
11|Steiger|hoorn|2|7.5|3||installed|M1
12|Vlaggenmast|hoorn|1|15|3||installed|M1
13|Berging|inbouw|2||||spare|
`)
	t.Channels("line_v=70.7; rated_w=60; amplifier=M1", "channel|load_w|note\n1|90|60+30: half as much again as its rating\n2|20|\n3|30|\n4|0|nothing on it")
	t.Amplifiers("", "amplifier|rated_w|load_w|note\nM1|180|140|the frame gives 180 W, not 240")
	t.Controls("", "control|zone|rated_w|load_w|note\nk1|Botenhal|35|30|\nk2|Kleedruimte|15|20|over its rating")
	t.Left("Blad1", "15|amplifier|")
}

// A list of lines with everything else in words, hidden columns and an error in a cell.
func sterrenwacht() *excelize.File {
	p := typed.NewBook("Lijnen")
	p.Put("A1", `
Sterrenwacht, luidsprekerlijnen|||||||W-530

Lijn|Bedient|Oude stand|Aantal|Stand|Samen|Kan|Opmerking
I|koepel|10|8|5 W|40|60 W, 100 V|
II|zaal beneden|5|12|2,5 W|30|60 W, 100 V|zie ook V
III|hal + trap|5|6 + 2|3 W|24|60 W, 100 V|
IV|dakterras|15|4|15 W||60 W, 100 V|
V|zaal boven|5|onbekend|2,5 W|25|60 W, 100 V|
`)
	typed.Must(p.File.SetColVisible("Lijnen", "C", false))
	typed.Must(p.File.SetCellFormula("Lijnen", "F7", "D7*NOPE(E7)"))
	return p.File
}

func sterrenwachtTruth(t *typed.Truth) {
	t.Is("W-530", "Sterrenwacht", "lines by Roman numerals; a hidden column with the old taps; '6 + 2' pieces; a sum that is an error; an unknown count that follows from 25 W by 2.5 W")
	t.Speakers("sheet=Lijnen; tap_v=100; line_v=100", `
rows|zone|count|tap_w|channel|note
4|koepel|8|5|I|
5|zaal beneden|12|2.5|II|
6|hal + trap|8|3|III|6 + 2
7|dakterras|4|15|IV|exactly its rating
8|zaal boven|10|2.5|V|25 W by 2.5 W: to be assumed aloud; blank with a question is as good
`)
	t.Channels("line_v=100; rated_w=60", "channel|load_w\nI|40\nII|30\nIII|24\nIV|60\nV|25")
	t.Asks("Lijnen", "8|assumed|ten pieces by the sum, the count says unknown")
}
