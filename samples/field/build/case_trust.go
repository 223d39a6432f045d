package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// trustOfficers wrote in their own languages: a Mexican installer, an Italian registrar, an Austrian building office, a Bavarian boat club, a Dutch firm.
var trustOfficers = []typed.Case{
	{File: "méxico/Jardín Las Ceibas.xlsx", Kind: "schedule", Book: sheets("Bocinas", `
JARDÍN BOTÁNICO LAS CEIBAS||||||
Obra:|MX-0452|||Voltaje de línea:|70 V|
|||||||
Área|Bocina|Cant.|Derivación|Control de volumen|Amplificador|Salida
Entrada|plafón 6"|4|5 W|CV-1|AMP-1|1
Cafetal|plafón 6"|6|5 W|CV-2|AMP-1|1
Cactario|trompeta|4|15 W||AMP-1|2
Orquideario|plafón 6"|8|2.5 W|CV-3|AMP-1|2
Estacionamiento|trompeta|2|30 W||AMP-2|1
Bodega|trompeta|1|15 W (a futuro)||AMP-2|1
TOTAL||25||||
`, "Equipos", `
Equipo|Descripción|Watts
AMP-1|Amplificador 2 x 120 W|240
AMP-2|Amplificador 1 x 120 W|120
CV-1|Control de volumen de pared|35
CV-2|Control de volumen de pared|25
CV-3|Control de volumen de pared|10
`, "Cableado", `
De|A|Calibre|Longitud (m)
AMP-1 sal. 1|Entrada|2x16 AWG|30
Entrada|Cafetal|2x16 AWG|55
AMP-1 sal. 2|Cactario|2x14 AWG|140
Cactario|Orquideario|2x16 AWG|60
AMP-2 sal. 1|Estacionamiento|2x14 AWG|220
`), Truth: func(t *typed.Truth) {
		t.Is("MX-0452", "Las Ceibas", "one list of equipment rates amplifiers and controls; cables from place to place by gauge and metres")
		t.Speakers("sheet=Bocinas; tap_v=70.7; line_v=70.7", `
rows|room|count|tap_w|control|amplifier|channel|status
5|Entrada|4|5|CV-1|AMP-1|1|installed
6|Cafetal|6|5|CV-2|AMP-1|1|installed
7|Cactario|4|15||AMP-1|2|installed
8|Orquideario|8|2.5|CV-3|AMP-1|2|installed
9|Estacionamiento|2|30||AMP-2|1|installed
10|Bodega|1|15||AMP-2|1|future
`)
		t.Channels("line_v=70.7; rated_w=120", "amplifier|channel|load_w\nAMP-1|1|50\nAMP-1|2|80\nAMP-2|1|60")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAMP-1|240|130\nAMP-2|120|60")
		t.Controls("", "control|rated_w|load_w\nCV-1|35|20\nCV-2|25|30\nCV-3|10|20")
		t.Lines("", `
from|to|length_m|area_mm2
AMP-1 1|Entrada|30|1.309
Entrada|Cafetal|55|1.309
AMP-1 2|Cactario|140|2.081
Cactario|Orquideario|60|1.309
AMP-2 1|Estacionamiento|220|2.081
`)
		t.Left("Bocinas", "11|total|")
	}},

	{File: "italia/Deposito museale Roccaverde.xlsx", Kind: "schedule", Book: sheets("Diffusori", `
Deposito museale di Roccaverde
Commessa n. 1290/B - linea 100 V

Pos.|Locale|Diffusore|Q.tà|Presa [W]|Attenuatore|Linea
1|Ingresso|incasso|2|6|AT1 (12 W)|L1
2|Corridoio|incasso|8|3||L1
3|Sala consultazione|incasso|6|3|AT2 (12 W)|L1
4|Deposito tele|proiettore|6|10||L2
5|Deposito marmi|tromba|4|15||L2
6|Officina|tromba|2|15|AT3 (35 W)|L3
7|Cortile|tromba|2|30|eliminato|L3
8|Carico merci|tromba|1|30 (eliminata)||L3
`, "Linee", `
Linea|Amplificatore|Uscita|Potenza uscita|Cavo|Sviluppo
L1|AM1|1|60 W|2x1,5 mm²|75 m
L2|AM1|2|120 W|2x2,5 mm²|130 m
L3|AM2|1|120 W|2x2,5 mm²|180 m
`), Truth: func(t *typed.Truth) {
		t.Is("1290/B", "Roccaverde", "an attenuator that was removed and a loudspeaker that was removed, by the same word in different columns")
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100", `
rows|room|count|tap_w|control|amplifier|channel|status
5|Ingresso|2|6|AT1|AM1|1|installed
6|Corridoio|8|3||AM1|1|installed
7|Sala consultazione|6|3|AT2|AM1|1|installed
8|Deposito tele|6|10||AM1|2|installed
9|Deposito marmi|4|15||AM1|2|installed
10|Officina|2|15|AT3|AM2|1|installed
11|Cortile|2|30||AM2|1|installed
12|Carico merci|1|30||AM2|1|removed
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nAM1|1|60|54\nAM1|2|120|120\nAM2|1|120|90")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAM1|180|174\nAM2|120|90")
		t.Controls("", "control|rated_w|load_w\nAT1|12|12\nAT2|12|18\nAT3|35|30")
		t.Lines("note=one length", "line|length_m|area_mm2\nL1|75|1.5\nL2|130|2.5\nL3|180|2.5")
	}},

	{File: "österreich/Eishalle Föhrenau ELA.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("ELA")
		p.Put("A1", `
Eishalle Föhrenau|||||||Auftrag|EF-304
ELA-Anlage 100 V|||||||Stand|12.10.2018

Lautsprecher|||||Regler||Verstärker|
Raum|Bauform|Stk.|Leistung||Bez.|Nennlast|Nr.|Ausg.
|||eingest.|max.||||
Halle Nord|Trichter|6|15 W|30 W|||V1|1
Halle Süd|Trichter|6|15 W|30 W|||V1|2
Kassa|Einbau|1|1,5 W|6 W|LR1|5 W|V2|1
Garderobe|Einbau|8|3 W|6 W|LR2|20 W|V2|1
Schleiferei|Aufbau|2|6 W|10 W|LR3|10 W|V2|1
Aufenthalt|Einbau|4|3 W|6 W|LR4|12 W|V2|1
Technik|Trichter|1|15 W|30 W|||V1|1
Freifläche|Trichter|4|15 W|30 W|||entfällt|
`)
		p.Merge("A4:E4", "F4:G4", "H4:I4", "D5:E5")
		p.Sheet("Verstärker").Put("A1", `
Verstärker|Ausgänge|Leistung je Ausgang|Standort
V1|2|120 W|Technik
V2|1|60 W|Kassa
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("EF-304", "Föhrenau", "three rows of headers, the set tap beside the greatest, a row that is dropped in the column of the amplifier")
		t.Speakers("sheet=ELA; tap_v=100; line_v=100", `
rows|room|count|tap_w|control|amplifier|channel|status
7|Halle Nord|6|15||V1|1|installed
8|Halle Süd|6|15||V1|2|installed
9|Kassa|1|1.5|LR1|V2|1|installed
10|Garderobe|8|3|LR2|V2|1|installed
11|Schleiferei|2|6|LR3|V2|1|installed
12|Aufenthalt|4|3|LR4|V2|1|installed
13|Technik|1|15||V1|1|installed
14|Freifläche|4|15||||removed
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nV1|1|120|105\nV1|2|120|90\nV2|1|60|49.5")
		t.Amplifiers("", "amplifier|rated_w|load_w\nV1|240|195\nV2|60|49.5")
		t.Controls("", "control|rated_w|load_w\nLR1|5|1.5\nLR2|20|24\nLR3|10|12\nLR4|12|12")
	}},

	{File: "bayern/Bootshaus Weidach.csv", Kind: "schedule", Bytes: text(`
Objekt:→Bootshaus Weidach
Auftrags-Nr.:→2012/88
Netz:→100 V ELA, ein Verstärker mit 4 Linien, Gesamtleistung 240 W

Linie→Raum→LS→Anz.→Einstellung→Poti→Leitung→Länge
1→Bootshalle→Druckkammer→4→10→→2x1,5→45
1→Werkstatt→Aufbau→2→6→P1/20W→2x1,5→60
2→Vereinsraum→Einbau→6→3→P2/20W→2x1,5→25
2→Flur→Einbau→3→3→→2x1,5→30
3→Umkleide D→Einbau→2→1,5→P3/5W→2x1,5→40
3→Umkleide H→Einbau→2→1,5→P4/5W→2x1,5→42
4→Steg→Druckkammer→4→15→→2x2,5→160
→→→→→→→
Summe→→→23→→→→
Einstellung in Watt, Länge in m
`), Truth: func(t *typed.Truth) {
		t.Is("2012/88", "Weidach", "units in the last line; control and rating in one cell; one frame rated, its lines not")
		t.Speakers("tap_v=100; line_v=100", `
rows|room|count|tap_w|control|channel
6|Bootshalle|4|10||1
7|Werkstatt|2|6|P1|1
8|Vereinsraum|6|3|P2|2
9|Flur|3|3||2
10|Umkleide D|2|1.5|P3|3
11|Umkleide H|2|1.5|P4|3
12|Steg|4|15||4
`)
		t.Channels("line_v=100", "channel|rated_w|load_w\n1||52\n2||27\n3||6\n4||60")
		t.Amplifiers("note=unnamed", "rated_w|load_w\n240|145")
		t.Controls("", "control|rated_w|load_w\nP1|20|12\nP2|20|18\nP3|5|3\nP4|5|3")
		t.Lines("note=one length", `
zone|length_m|area_mm2
Bootshalle|45|1.5
Werkstatt|60|1.5
Vereinsraum|25|1.5
Flur|30|1.5
Umkleide D|40|1.5
Umkleide H|42|1.5
Steg|160|2.5
`)
		t.Left("", "14|total|")
	}},

	{File: "holland/IJsbaan De Wieken.xls", Kind: "schedule", Saved: "xls", Book: sheets("Omroep", `
IJsbaan De Wieken – omroepinstallatie 100 V
Werknr. 20.884

Groep|Ruimte|Ls|Tap|Regelaar|Max. regelaar
A|Baan noord|8|10W||
A|Baan zuid|8|10W||
B|Clubzaal|6|6W|R1|50W
B|Keuken|1|3W|R2|5W
B|Bestuurskamer|2|3W|R3|5W
C|Kleedkamer 1 t/m 6|6|3W||
C|EHBO|1|1,5W|R4|5W
D|Parkeerterrein|3|20W||
|reserve in kast|2|6W||

Versterker 1 = groep A (200W)
Versterker 2 = groep B en C (120W)
Versterker 3 = groep D (60W)
`), Truth: func(t *typed.Truth) {
		t.Is("20.884", "De Wieken", "amplifiers and their groups told in lines below; two groups share an amplifier; spares in a cupboard")
		t.Speakers("sheet=Omroep; tap_v=100; line_v=100", `
rows|zone|room|count|tap_w|control|amplifier|status
5|A|Baan noord|8|10||Versterker 1|installed
6|A|Baan zuid|8|10||Versterker 1|installed
7|B|Clubzaal|6|6|R1|Versterker 2|installed
8|B|Keuken|1|3|R2|Versterker 2|installed
9|B|Bestuurskamer|2|3|R3|Versterker 2|installed
10|C|Kleedkamer 1 t/m 6|6|3||Versterker 2|installed
11|C|EHBO|1|1.5|R4|Versterker 2|installed
12|D|Parkeerterrein|3|20||Versterker 3|installed
13||reserve in kast|2|6|||spare
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nVersterker 1|200|160\nVersterker 2|120|64.5\nVersterker 3|60|60")
		t.Amplifiers("", "amplifier|rated_w|load_w\nVersterker 1|200|160\nVersterker 2|120|64.5\nVersterker 3|60|60")
		t.Controls("", "control|rated_w|load_w\nR1|50|36\nR2|5|3\nR3|5|6\nR4|5|1.5")
	}},

	{File: "facilities/lamp list grotto.xlsx", Kind: "not-a-schedule", Book: sheets("Lamps", `
Grotto and fern walk - lamp replacement list
Transformer|240 V / 24 V

Position|Fitting|Qty|W each|Circuit|Dimmer
Grotto roof|spot|12|5|L1|D1
Grotto pool|underwater|4|10|L2|
Fern walk|spike|18|3|L3|D2
Steps|marker|22|1|L4|
`), Truth: func(t *typed.Truth) {
		t.Is("", "", "lamps, circuits and dimmers look like loudspeakers, lines and controls")
	}},

	{File: "facilities/Arboretum lodge tick sheet.xlsx", Kind: "schedule", Book: sheets("Ticks", `
Arboretum Lodge PA  ref AL-12  100V

Room|Spkrs|W (each)|Ch 1|Ch 2|Ch 3|Ch 4
Entrance|2|6|x|||
Ticket hall|4|6|x|||
Exhibition|8|3||x||
Lecture|6|6|||x|
Toilets|4|1.5||x||
Courtyard|3|15||||x
Workshop (spare outlet, no speaker fitted)|0|0||||

Channel rating, W|||60|30|30|60
`), Truth: func(t *typed.Truth) {
		t.Is("AL-12", "Arboretum Lodge", "channels as columns with crosses, their ratings in a last row under the crosses")
		t.Speakers("sheet=Ticks; tap_v=100; line_v=100", `
rows|room|count|tap_w|channel
4|Entrance|2|6|Ch 1
5|Ticket hall|4|6|Ch 1
6|Exhibition|8|3|Ch 2
7|Lecture|6|6|Ch 3
8|Toilets|4|1.5|Ch 2
9|Courtyard|3|15|Ch 4
`)
		t.Channels("line_v=100", "channel|rated_w|load_w\nCh 1|60|36\nCh 2|30|30\nCh 3|30|36\nCh 4|60|45")
		t.Left("Ticks", "10|empty|no loudspeaker fitted\n12|rating|")
	}},

	{File: "facilities/jumper frame list.csv", Kind: "schedule", Bytes: text(`
Fieldhead Nature Reserve Visitor Centre
Job ref,FH-410,,100V line
Frame,Pair,To,Fittings,Tap,Jumpered to
KF1,1,Foyer ceiling,4,3W,AMP2/Z1
KF1,2,Theatre walls,6,10W,AMP1/Z1
KF1,3,Theatre rear,2,10W,AMP1/Z1
KF1,4,Library,6,3W,AMP2/Z2
KF1,5,Shop,3,3W,AMP2/Z2
KF1,6,Hides path,5,15W,AMP1/Z2
KF1,7,spare,,,
KF1,8,spare,,,
,,,,,
Amp,Zone output,W,,,
AMP1,Z1,120,,,
AMP1,Z2,120,,,
AMP2,Z1,30,,,
AMP2,Z2,30,,,
`), Truth: func(t *typed.Truth) {
		t.Is("FH-410", "Fieldhead", "a distribution frame: pairs, what they go to, what they are jumpered to; spare pairs are no loudspeakers")
		t.Speakers("tap_v=100; line_v=100", `
rows|room|count|tap_w|amplifier|channel
4|Foyer ceiling|4|3|AMP2|Z1
5|Theatre walls|6|10|AMP1|Z1
6|Theatre rear|2|10|AMP1|Z1
7|Library|6|3|AMP2|Z2
8|Shop|3|3|AMP2|Z2
9|Hides path|5|15|AMP1|Z2
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nAMP1|Z1|120|80\nAMP1|Z2|120|75\nAMP2|Z1|30|12\nAMP2|Z2|30|27")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAMP1|240|155\nAMP2|60|39")
		t.Left("", "10|spare pair|\n11|spare pair|")
	}},
}
