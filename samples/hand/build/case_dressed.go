package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// dressed are sheets with what surrounds a list in real life: logos, boxes, legends, formulas, lists side by side.
func dressed() []typed.Case {
	return []typed.Case{
		{File: "Stanner Quay/PA schedule rev D.xlsx", Kind: "schedule", Saved: "xlsx", Book: stannerDressed, Truth: func(t *typed.Truth) {
			t.Is("", "Stanner Quay Boathouse", "the list starts at C9 under a logo, with a revision box beside it; totals are formulas; legend and amplifiers below at another column")
			t.Revision("D", false)
			t.Speakers("tap_v=100; line_v=100; sheet=Schedule", `
rows|tag|room|model|count|tap_w|amplifier|channel
10|1|Boat store|Cabinet 10W|4|5|A1|1
11|2|Repair bay|Cabinet 10W|2|10|A1|1
12|3|Crew room|Ceiling 6W|4|3|A1|2
13|4|Kit store|Ceiling 6W|2|1.5|A1|2
14|5|Training room|Ceiling 6W|6|3|A1|2
15|6|Landing stage|Horn 20W|2|20|A2|1
16|7|Hard standing|Horn 20W|3|10|A2|1
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w|note
A1|1|60|40|
A1|2|60|33|12 + 3 + 18
A2|1|120|70|
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
A1|120|73
A2|120|70
`)
			t.Left("Schedule", "17|total|formulas, right")
		}},

		{File: "Quillby Planetarium/schedule with amps beside.xlsx", Kind: "schedule", Book: book("AV-7", `
QUILLBY PLANETARIUM
SPEAKERS AND AMPLIFIERS, 70 V

SPEAKER SCHEDULE||||||||AMPLIFIER SCHEDULE
NO.|ROOM|TYPE|QTY|TAP (W)|CKT|||AMP|CKT|W RATED|CONTROL
1|LOBBY|C-8|10|2|1A|||AMP1|1A|60|-
2|TICKETS|C-8|2|1|1A|||AMP1|1B|60|VC-B 35W
3|EXHIBIT HALL|C-8|16|2|1B|||AMP2|2A|60|-
4|CORRIDOR|C-8|6|1|2A|||AMP2|2B|60|-
5|OFFICES|C-8|9|1|2A
6|SHOP|S-5|2|5|2A
7|ROOF DECK|H-15|3|10|2B
8|PARKING|H-15|2|10|2B
`, bold("A1:A2", "A4", "I4", "A5:L5")), Truth: func(t *typed.Truth) {
			t.Is("", "Quillby Planetarium", "two lists side by side joined by the circuit; the control of a whole circuit stands with the amplifier")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=AV-7", `
rows|tag|room|model|count|tap_w|amplifier|channel|control
6|1|LOBBY|C-8|10|2|AMP1|1A|
7|2|TICKETS|C-8|2|1|AMP1|1A|
8|3|EXHIBIT HALL|C-8|16|2|AMP1|1B|VC-B
9|4|CORRIDOR|C-8|6|1|AMP2|2A|
10|5|OFFICES|C-8|9|1|AMP2|2A|
11|6|SHOP|S-5|2|5|AMP2|2A|
12|7|ROOF DECK|H-15|3|10|AMP2|2B|
13|8|PARKING|H-15|2|10|AMP2|2B|
`)
			t.Channels("line_v=70.7; rated_w=60", `
amplifier|channel|load_w
AMP1|1A|22
AMP1|1B|32
AMP2|2A|25
AMP2|2B|50
`)
			t.Controls("", "control|zone|rated_w|load_w\nVC-B|EXHIBIT HALL|35|32")
			t.Amplifiers("", `
amplifier|rated_w|load_w
AMP1|120|54
AMP2|120|75
`)
		}},

		{File: "Wendle Boathouse/controls in the list.xls", Kind: "schedule", Saved: "xls", Book: book("Sheet1", `
Wendle Boathouse - what is on each amp, 100V
Amp 1, 60 watt
Item|Where|What|No.|Watts each
1|Boat hall|Wall speaker|4|6
2|Workshop|Wall speaker|1|3
3|Club room door|Volume control 24W||
3a|Club room|Ceiling speaker|6|3
4|Committee room|Volume control 6W||
4a|Committee room|Ceiling speaker|2|1.5
Amp 2, 60 watt
Item|Where|What|No.|Watts each
5|Slipway|Horn|1|15
6|Pontoon|Horn|2|15
7|Launch office|Volume control 6W||
7a|Launch office|Ceiling speaker|1|3
`, bold("A1", "A2", "A3:E3", "A10", "A11:E11")), Truth: func(t *typed.Truth) {
			t.Is("", "Wendle Boathouse", "a control is an item of its own, what hangs on it follows as 3a, 4a, 7a; sections by amplifier")
			t.Speakers("tap_v=100; line_v=100; sheet=Sheet1; amplifier=Amp 1", `
rows|room|model|count|tap_w|control
4|Boat hall|Wall speaker|4|6|
5|Workshop|Wall speaker|1|3|
7|Club room|Ceiling speaker|6|3|3
9|Committee room|Ceiling speaker|2|1.5|4
`)
			t.Speakers("tap_v=100; line_v=100; sheet=Sheet1; amplifier=Amp 2", `
rows|room|model|count|tap_w|control
12|Slipway|Horn|1|15|
13|Pontoon|Horn|2|15|
15|Launch office|Ceiling speaker|1|3|7
`)
			t.Channels("line_v=100; rated_w=60", "amplifier|load_w\nAmp 1|48\nAmp 2|48")
			t.Controls("note=named only by its item", `
control|zone|rated_w|load_w
3|Club room door|24|18
4|Committee room|6|3
7|Launch office|6|3
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nAmp 1|60|48\nAmp 2|60|48")
			t.Left("Sheet1", "2|title|amplifier\n6|control|\n8|control|\n10|title|amplifier\n11|header|repeated\n14|control|")
		}},

		{File: "Stiftung Gärten/Orangerie Lautsprecher.xlsx", Kind: "schedule", Book: book("LS-Liste", `
|Stiftung Gärten||||||
|Orangerie||||||Plan-Nr.|GA-331
|Lautsprecherliste (100-V-Linie)||||||Index|c
||||||||
|Nr.|Raum|Typ|Stk.|Leistung|Verstärker|Linie
|1|Saal|TS20|6|10 W|V1|1
|2|Saal Empore|dto.|4|dto.|dto.|dto.
|3|Foyer|DE6|5|3 W|dto.|2
|4|Garderobe|dto.|2|1,5 W|dto.|dto.
|5|WC|dto.|4|dto.|dto.|dto.
|6|Garten|GS15|6|7,5 W|V2|1
|7|Vorplatz|dto.|2|15 W|dto.|dto.
||||||||
|Legende|TS20 Tonsäule 20 W|||||
||DE6 Deckeneinbau 6 W|||||
||GS15 Gartensäule 15 W|||||
|V1|2 x 120 W|||||
|V2|1 x 120 W|||||
||||||||
|Index|Datum|Änderung|||||
|a|02.03.2010|Erstausgabe|||||
|b|17.05.2010|Foyer 5 statt 4|||||
|c|20.09.2010|Vorplatz ergänzt|||||
`, bold("B1:B3", "B5:H5")), Truth: func(t *typed.Truth) {
			t.Is("", "Orangerie", "'dto.' for the cell above, legend, amplifiers and a table of changes below, all one column in")
			t.Revision("c", false)
			t.Speakers("tap_v=100; line_v=100; sheet=LS-Liste", `
rows|tag|room|model|count|tap_w|amplifier|channel
6|1|Saal|TS20|6|10|V1|1
7|2|Saal Empore|TS20|4|10|V1|1
8|3|Foyer|DE6|5|3|V1|2
9|4|Garderobe|DE6|2|1.5|V1|2
10|5|WC|DE6|4|1.5|V1|2
11|6|Garten|GS15|6|7.5|V2|1
12|7|Vorplatz|GS15|2|15|V2|1
`)
			t.Channels("line_v=100; rated_w=120", `
amplifier|channel|load_w
V1|1|100
V1|2|24
V2|1|75
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
V1|240|124
V2|120|75
`)
		}},

		{File: "Planetario Sierra Alba/altavoces por tipo.ods", Kind: "schedule", Saved: "ods", Book: book("Altavoces", `
Planetario Sierra Alba - relación de altavoces|||||
|||||
Recinto|Tipo|Unidades|Línea|Etapa|Canal
Vestíbulo|TA|6|1|E1|1
Tienda|TA|3|1|E1|1
Aseos|TB|4|1|E1|1
Exposición|PA|6|2|E1|2
Biblioteca|TB|5|3|E2|1
Taller|PB|2|3|E2|1
Terraza|BA|2|4|E2|2
Aparcamiento|BA|1|4|E2|2
Aparcamiento|BB|1|4|E2|2
`, bold("A1", "A3:F3"), and("Tipos", `
Tipo|Descripción|Potencia nominal|Toma (100 V)
TA|Techo 6"|6 W|3 W
TB|Techo 6"|6 W|1,5 W
PA|Pared dos vías|20 W|10 W
PB|Pared dos vías|20 W|5 W
BA|Bocina|30 W|15 W
BB|Bocina|30 W|30 W
`), and("Etapas", `
Etapa|Potencia por canal
E1|60 W
E2|60 W
`)), Truth: func(t *typed.Truth) {
			t.Is("", "Planetario Sierra Alba", "the tap is told by the type, on another sheet, beside the rated watts")
			t.Speakers("tap_v=100; line_v=100; sheet=Altavoces", `
rows|room|model|count|tap_w|amplifier|channel
4|Vestíbulo|TA|6|3|E1|1
5|Tienda|TA|3|3|E1|1
6|Aseos|TB|4|1.5|E1|1
7|Exposición|PA|6|10|E1|2
8|Biblioteca|TB|5|1.5|E2|1
9|Taller|PB|2|5|E2|1
10|Terraza|BA|2|15|E2|2
11|Aparcamiento|BA|1|15|E2|2
12|Aparcamiento|BB|1|30|E2|2
`)
			t.Channels("line_v=100; rated_w=60", `
amplifier|channel|load_w|note
E1|1|33|18 + 9 + 6
E1|2|60|exactly its rating
E2|1|17.5|
E2|2|75|over its rating
`)
			t.Amplifiers("", `
amplifier|load_w
E1|93
E2|92.5
`)
		}},

		{File: "IJsbaan Hogeveld/meting en instelling.csv", Kind: "schedule", Bytes: utf8(`
"IJsbaan Hogeveld","","","","","",""
"Inspectie luidsprekers","","datum:","14-10-2019","","",""
"","","","","","",""
"Nr","Plaats","Luidspreker","Stand (W)","Lijn","Gemeten dB(A)","Bevinding"
"1","Hal","inbouw","3","A","78","goed"
"2","Hal","inbouw","3","A","79","goed"
"3","Hal","inbouw","3","A","0","draad los, niet aangesloten"
"4","Hal","inbouw","3","A","77","goed"
"5","Kassa","inbouw","1,5","A","70","goed"
"6","Verhuur","inbouw","3","A","75","rooster weg"
"7","Verhuur","inbouw","3","A","75","goed"
"8","Baan N1","zuil","15","B","92","goed"
"9","Baan N2","zuil","15","B","93","goed"
"10","Baan N3","zuil","30","B","96","stand te hoog, teruggezet naar 15"
"11","Baan Z1","zuil","15","C","92","goed"
"12","Baan Z2","zuil","15","C","91","goed"
"13","Baan Z3","zuil","","C","","verwijderd i.v.m. LED-scherm"
"","","","","","",""
"100V-systeem, lijn A: 60W, lijn B: 120W, lijn C: 120W","","","","","",""
`), Truth: func(t *typed.Truth) {
			t.Is("", "IJsbaan Hogeveld", "an inspection: sound levels beside the taps, findings in words that take one off the line, take one away and turn one down")
			t.Speakers("tap_v=100; line_v=100", `
rows|tag|room|model|tap_w|channel|status|note
5..6|1..|Hal|inbouw|3|A|installed|
7|3|Hal|inbouw|3|A|removed|not connected; spare is as good
8|4|Hal|inbouw|3|A|installed|
9|5|Kassa|inbouw|1.5|A|installed|
10..11|6..|Verhuur|inbouw|3|A|installed|
12|8|Baan N1|zuil|15|B|installed|
13|9|Baan N2|zuil|15|B|installed|
14|10|Baan N3|zuil|15|B|installed|turned down from 30 to 15
15|11|Baan Z1|zuil|15|C|installed|
16|12|Baan Z2|zuil|15|C|installed|
17|13|Baan Z3|zuil||C|removed|
`)
			t.Channels("line_v=100", `
channel|rated_w|load_w
A|60|16.5
B|120|45
C|120|30
`)
			t.Asks("", "14|assumed|15 W, as turned down, not the 30 W of the column\n7|assumed|not connected: in no load")
		}},
	}
}

func stannerDressed() *excelize.File {
	p := typed.NewBook("Schedule")
	p.Put("C2", `
[logo]|Wendle & Ravensmoor Sound Contractors
|Loudspeaker schedule||||Drawing no.|SQ/5120
|Stanner Quay Boathouse||||Rev|D
|100V line public address||||Date|08.02.2012
`)
	p.Put("M2", `
Rev|Date|By|Note
A|11.11.2011|pt|first issue
B|02.12.2011|pt|crew room added
C|20.01.2012|rs|horns retapped
D|08.02.2012|rs|training room added
`)
	p.Put("C9", `
Item|Location|Type|Qty|W each|W total|Amp|Ch|Remarks
1|Boat store|Cabinet 10W|4|5||A1|1|
2|Repair bay|Cabinet 10W|2|10||A1|1|
3|Crew room|Ceiling 6W|4|3||A1|2|
4|Kit store|Ceiling 6W|2|1.5||A1|2|
5|Training room|Ceiling 6W|6|3||A1|2|added rev D
6|Landing stage|Horn 20W|2|20||A2|1|
7|Hard standing|Horn 20W|3|10||A2|1|
|Total
`)
	for _, row := range []string{"10", "11", "12", "13", "14", "15", "16"} {
		p.Formula("H"+row, "F"+row+"*G"+row)
	}
	p.Formula("F17", "SUM(F10:F16)")
	p.Formula("H17", "SUM(H10:H16)")
	p.Put("E20", `
Amplifiers
A1|2 x 60W
A2|1 x 120W
`)
	p.Merge("D2:H2")
	p.Bold("D2:D5", "C9:K9")
	return p.File
}
