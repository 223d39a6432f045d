package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// fachplaner are planners and service firms of Germany and Switzerland.
var fachplaner = []typed.Case{
	{File: "planung/P-2207 Planetarium Sternwies.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Abgänge")
		p.Put("A1", `
Objekt|Planetarium Sternwies||Projekt-Nr.|P-2207
Anlage|ELA 100 V||gez.|rk

Abgang|Verstärker|Kanal|Leistung [W]|Zone|Steller|Steller [W]
101|PA1|1|250|Kuppelsaal
102|PA1|2|250|Foyer|ST1|50
103|PA2|1|125|Ausstellung|ST2|50
104|PA2|2|125|Nebenräume
105|PA2|3|125|Reserve
`)
		a := p.Sheet("Apparate")
		a.Put("A1", `
Nr.|Abgang|Raum|Apparat|Anz.|Leistung [W]
L1|101|Kuppelsaal, Ring aussen|Box|8|10
L2|101|Kuppelsaal, Pult|Box|1|5
L3|101|Schleuse|Einbau|2|3
L4|102|Foyer|Einbau|6|6
L5|102|Foyer Galerie|Einbau|4|3
L6|103|Ausstellung EG|Einbau|8|3
L7|103|Ausstellung OG|Einbau|6|3
L8|104|WC-Anlage|Einbau|4|1.5
L9|104|Werkstatt|Aufbau|1|6
L10|104|Anlieferung|Druckkammer|1|10
L11|104|Büro|Einbau|2|3
`)
		l := p.Sheet("Leitungen")
		l.Put("A1", `
Abgang|Kabel|Länge [m]|Verlegeart
101|2x2.5 mm2|120|Trassee
102|2x1.5 mm2|45|Trassee
103|2x1.5 mm2|85|Rohr UP
104|2x1.5 mm2|60|Rohr AP
`)
		p.Bold("A4:G4")
		a.Bold("A1:F1")
		l.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("P-2207", "Planetarium Sternwies", "three sheets joined by the number of the outgoing line; the zone and its control stand with the line only")
		t.Speakers("sheet=Apparate; tap_v=100; line_v=100; zone=Kuppelsaal; amplifier=PA1; channel=1", `rows|tag|room|count|tap_w
2|L1|Kuppelsaal, Ring aussen|8|10
3|L2|Kuppelsaal, Pult|1|5
4|L3|Schleuse|2|3`)
		t.Speakers("sheet=Apparate; tap_v=100; line_v=100; zone=Foyer; amplifier=PA1; channel=2; control=ST1", `rows|tag|room|count|tap_w
5|L4|Foyer|6|6
6|L5|Foyer Galerie|4|3`)
		t.Speakers("sheet=Apparate; tap_v=100; line_v=100; zone=Ausstellung; amplifier=PA2; channel=1; control=ST2", `rows|tag|room|count|tap_w
7|L6|Ausstellung EG|8|3
8|L7|Ausstellung OG|6|3`)
		t.Speakers("sheet=Apparate; tap_v=100; line_v=100; zone=Nebenräume; amplifier=PA2; channel=2", `rows|tag|room|count|tap_w
9|L8|WC-Anlage|4|1.5
10|L9|Werkstatt|1|6
11|L10|Anlieferung|1|10
12|L11|Büro|2|3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
PA1|1|250|91
PA1|2|250|48
PA2|1|125|42
PA2|2|125|28`)
		t.Amplifiers("", `amplifier|load_w
PA1|139
PA2|70`)
		t.Controls("", `control|zone|rated_w|load_w
ST1|Foyer|50|48
ST2|Ausstellung|50|42`)
		t.Lines("", `line|zone|length_m|area_mm2
101|Kuppelsaal|120|2.5
102|Foyer|45|1.5
103|Ausstellung|85|1.5
104|Nebenräume|60|1.5`)
	}},

	{File: "planung/5518 Eishalle Nordkamp LS.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Mengen")
		p.Put("A1", `
Eishalle Nordkamp, Lautsprecher nach Abgriffen||||||Proj. 5518

Raum|Zone|Anzahl mit Abgriff (100 V)|||||Summe
||1,5 W|3 W|6 W|10 W|20 W|W
Eisfläche|1||||8|4|160
Bande und Spielerbänke|1|||4|||24
Tribüne Nord|2||||6||60
Tribüne Süd|2||||6||60
Foyer|3||6|2|||30
Schlittschuhverleih|3||4||||12
Kabinen 1-4|4|4|4||||18
Sanitäter|4||1||||3
Technik|4||||1||10
Summe||4|15|6|21|4|377

Zone|Verstärker|W|Regler
1|V1|250
2|V2|250
3|V3|60|R3 (50 W)
4|V4|60
`)
		p.Merge("C3:G3")
		p.Bold("A1", "A3:H4", "A14:H14", "A16:D16")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5518", "Eishalle Nordkamp", "a matrix of rooms and taps with counts in it, two header rows; zones and amplifiers in a table below")
		t.Speakers("sheet=Mengen; tap_v=100; line_v=100; zone=1; amplifier=V1", `rows|room|count|tap_w
5|Eisfläche|8|10
5|Eisfläche|4|20
6|Bande und Spielerbänke|4|6`)
		t.Speakers("sheet=Mengen; tap_v=100; line_v=100; zone=2; amplifier=V2", `rows|room|count|tap_w
7|Tribüne Nord|6|10
8|Tribüne Süd|6|10`)
		t.Speakers("sheet=Mengen; tap_v=100; line_v=100; zone=3; amplifier=V3; control=R3", `rows|room|count|tap_w
9|Foyer|6|3
9|Foyer|2|6
10|Schlittschuhverleih|4|3`)
		t.Speakers("sheet=Mengen; tap_v=100; line_v=100; zone=4; amplifier=V4", `rows|room|count|tap_w
11|Kabinen 1-4|4|1.5
11|Kabinen 1-4|4|3
12|Sanitäter|1|3
13|Technik|1|10`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
V1|250|184
V2|250|120
V3|60|42
V4|60|31`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|250|184
V2|250|120
V3|60|42
V4|60|31`)
		t.Controls("", `control|zone|rated_w|load_w
R3|3|50|42`)
		t.Left("Mengen", `14|total|sums`)
	}},

	{File: "wartung/Wartungsverzeichnis ELA Nord.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Lautsprecher")
		p.Put("A1", `
Obj.|Liegenschaft|Zone|Ort|LS|Stk.|Watt|Verst.|Kanal|Steller
G-12|Tropenhaus|1|Halle|Horn|4|10|V1|1
G-12|Tropenhaus|1|Galerie|Wand|3|6|V1|1|S1
G-12|Tropenhaus|2|Foyer|Decke|6|3|V1|2|S2
G-12|Tropenhaus|2|Kasse|Decke|1|1.5|V1|2
G-15|Ruderhaus|1|Bootshalle|Horn|4|7.5|V1|1
G-15|Ruderhaus|1|Umkleide|Decke|4|3|V1|1
G-15|Ruderhaus|1|Vorstandszimmer|Decke|2|3|V1|1|S1
G-21|Rollschuhbahn|1|Bahn|Horn|6|15|V1|1
G-21|Rollschuhbahn|2|Umkleide|Decke|4|3|V2|1|S1
G-21|Rollschuhbahn|2|Verleih|Decke|3|3|V2|1|S2
G-21|Rollschuhbahn|2|Büro|Decke|1|3|V2|1|S2
`)
		v := p.Sheet("Verstärker")
		v.Put("A1", `
Obj.|Verst.|Kanal|Nennleistung W|Spannung V|Baujahr
G-12|V1|1|120|100|2009
G-12|V1|2|60|100|2009
G-15|V1|1|60|100|1998
G-21|V1|1|120|100|2014
G-21|V2|1|60|100|2014
`)
		s := p.Sheet("Steller")
		s.Put("A1", `
Obj.|Steller|Nennleistung W|Einbauort
G-12|S1|36|Galerie Treppe
G-12|S2|36|Foyer Infotheke
G-15|S1|12|Vorstandszimmer
G-21|S1|20|Umkleide Flur
G-21|S2|12|Verleih Tresen
`)
		p.Bold("A1:J1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("G-12", "Tropenhaus", "a register of three jobs over three sheets whose amplifiers and controls have the same names")
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V1", `rows|zone|room|count|tap_w|channel|control
2|1|Halle|4|10|1|
3|1|Galerie|3|6|1|S1
4|2|Foyer|6|3|2|S2
5|2|Kasse|1|1.5|2|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|120|58
V1|2|60|19.5`)
		t.Amplifiers("", `amplifier|load_w
V1|77.5`)
		t.Controls("", `control|rated_w|load_w
S1|36|18
S2|36|18`)
		t.Also("G-15", "Ruderhaus", "second job of the register")
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V1; channel=1", `rows|zone|room|count|tap_w|control
6|1|Bootshalle|4|7.5|
7|1|Umkleide|4|3|
8|1|Vorstandszimmer|2|3|S1`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|60|48`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|60|48`)
		t.Controls("", `control|rated_w|load_w
S1|12|6`)
		t.Also("G-21", "Rollschuhbahn", "third job of the register")
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; channel=1", `rows|zone|room|count|tap_w|amplifier|control
9|1|Bahn|6|15|V1|
10|2|Umkleide|4|3|V2|S1
11|2|Verleih|3|3|V2|S2
12|2|Büro|1|3|V2|S2`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|120|90
V2|1|60|24`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|120|90
V2|60|24`)
		t.Controls("", `control|rated_w|load_w
S1|20|12
S2|12|12`)
	}},

	{File: "planung/1184_ELA_Spinnerei_C.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("LS-Liste")
		p.Put("A1", `
Technikmuseum Alte Spinnerei|||||Index C
ELA Lautsprecherliste, 100 V|||||Projekt 1184

Zone|LS|Raum|Bauform|Anz.|Trafo|Kanal
Z1 Halle|'1.1|Maschinenhalle Nord|Horn|3|20 W|VS1.1
|'1.2|Maschinenhalle Süd|Horn|3|20 W
|'1.3|Empore|Wand|4|10 W
|'1.4|Dampfmaschine|Wand|2
Z2 Eingang|'2.1|Foyer|Decke|6|6 W|VS1.2
|'2.2|Windfang|Decke|2|3 W
|'2.3|Kasse|Decke|1|3 W
Z3 Obergeschoss|'3.1|Weberei|Decke|8|3 W|VS1.3
|'3.2|Färberei|Decke|6|3 W
|'3.3|Seminarraum|Decke|4|6 W

Änderungen
Index B|Dampfmaschine ergänzt
Index C|Empore entfällt, Dampfmaschine von 10 auf 6 W umgestellt

Endstufe VS1: 4 x 125 W. Foyer mit Wandregler R2 (50 W), Seminarraum mit Wandregler R3 (30 W).
`)
		p.Corrected("F8", "10 W ", "6 W")
		p.Strike("B7:F7")
		p.Merge("A5:A8", "A9:A11", "A12:A14", "G5:G8", "G9:G11", "G12:G14")
		p.Bold("A1", "A4:G4", "A16")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("1184", "Technikmuseum Alte Spinnerei", "merged zones and outputs, a struck row and a corrected tap; amplifier and controls in a sentence; output 1 is overloaded")
		t.Revision("C", false)
		t.Speakers("sheet=LS-Liste; tap_v=100; line_v=100; zone=Z1 Halle; amplifier=VS1; channel=1", `rows|tag|room|count|tap_w
5|1.1|Maschinenhalle Nord|3|20
6|1.2|Maschinenhalle Süd|3|20
8|1.4|Dampfmaschine|2|6`)
		t.Speakers("sheet=LS-Liste; tap_v=100; line_v=100; zone=Z2 Eingang; amplifier=VS1; channel=2", `rows|tag|room|count|tap_w|control
9|2.1|Foyer|6|6|R2
10|2.2|Windfang|2|3|
11|2.3|Kasse|1|3|`)
		t.Speakers("sheet=LS-Liste; tap_v=100; line_v=100; zone=Z3 Obergeschoss; amplifier=VS1; channel=3", `rows|tag|room|count|tap_w|control
12|3.1|Weberei|8|3|
13|3.2|Färberei|6|3|
14|3.3|Seminarraum|4|6|R3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
VS1|1|125|132
VS1|2|125|45
VS1|3|125|66`)
		t.Amplifiers("", `amplifier|load_w
VS1|243`)
		t.Controls("", `control|rated_w|load_w
R2|50|36
R3|30|24`)
		t.Left("LS-Liste", `7|struck|dropped with index C
17|note|history
18|note|history
20|note|amplifier and controls`)
	}},

	{File: "planung/3071 Geraeteliste Torfkanal.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Geräte")
		p.Put("A1", `
Museum am Torfkanal - Geräteliste Schwachstrom nach Räumen||||Proj. 3071

Raum-Nr.|Raum|Gerät|Stück|Anschluss
'0.01|Foyer|Einbaulautsprecher 6 W|6|ELA Linie 1
'0.01|Foyer|Nebenuhr|1|Uhrenlinie
'0.01|Foyer|Lautstärkesteller LS1 50 W|1|ELA Linie 1
'0.02|Kasse|Einbaulautsprecher 3 W|1|ELA Linie 1
'0.02|Kasse|Sprechstelle|1|Bus
'0.03|Torfhalle|Hornlautsprecher 15 W|4|ELA Linie 2
'0.03|Torfhalle|Kamera|2|Netzwerk
'0.04|Werkstatt|Aufbaulautsprecher 6 W|2|ELA Linie 2
'0.04|Werkstatt|Signalhupe|1|Telefon
'0.05|Technik|Verstärker V1 2 x 120 W, 100 V|1|ELA Linie 1 und 2
'0.05|Technik|Verstärker V2 60 W, 100 V|1|ELA Linie 3
'0.05|Technik|Hauptuhr|1|Uhrenlinie
'1.01|Ausstellung|Einbaulautsprecher 3 W|8|ELA Linie 3
'1.01|Ausstellung|Lautstärkesteller LS2 30 W|1|ELA Linie 3
'1.02|Seminar|Einbaulautsprecher 6 W|4|ELA Linie 3
'1.02|Seminar|Lautstärkesteller LS3 30 W|1|ELA Linie 3
'1.02|Seminar|Beamer|1|Netzwerk
'1.03|WC|Einbaulautsprecher 1,5 W|2|ELA Linie 3
`)
		p.Bold("A1", "A3:E3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("3071", "Museum am Torfkanal", "a list of all weak-current devices by room: loudspeakers, controls and amplifiers stand as rows among clocks and cameras; taps and ratings in the description")
		t.Speakers("sheet=Geräte; tap_v=100; line_v=100; amplifier=V1", `rows|room|count|tap_w|channel|control
4|Foyer|6|6|1|LS1
7|Kasse|1|3|1|
9|Torfhalle|4|15|2|
11|Werkstatt|2|6|2|`)
		t.Speakers("sheet=Geräte; tap_v=100; line_v=100; amplifier=V2; channel=3", `rows|room|count|tap_w|control
16|Ausstellung|8|3|LS2
18|Seminar|4|6|LS3
21|WC|2|1.5|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|120|39
V1|2|120|72
V2|3|60|51`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1||111
V2|60|51`)
		t.Controls("", `control|rated_w|load_w
LS1|50|36
LS2|30|24
LS3|30|24`)
		t.Left("Geräte", `5|other|a clock
6|control|a control
8|other|a microphone station
10|other|cameras
12|other|a telephone horn
13|amplifier|an amplifier
14|amplifier|an amplifier
15|other|a clock
17|control|a control
19|control|a control
20|other|a projector`)
	}},

	{File: "wartung/Melderliste Kelterhaus.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Melder")
		p.Put("A1", `
Weinbaumuseum Kelterhaus - Melderliste BMA|||||Auftrag 23-880

Gruppe/Melder|Raum|Typ|Anz.|Ruhestrom mA|Linie|Bemerkung
1/1|Foyer|O|4|0.2|Ring 1
1/2|Kasse|O|1|0.2|Ring 1
2/1|Kelterhalle|T|6|0.1|Ring 1|Staub, Thermomelder
2/2|Keller|O|3|0.2|Ring 1|Decke 2,40 m
3/1|Ausstellung OG|O|6|0.2|Ring 2
3/2|Archiv|OT|2|0.3|Ring 2
4/1|Fluchttür Süd|DKM|1|0.1|Ring 2|Scheibe erneuert
4/2|Sirene Hof|Sockelsirene|2|3|Ring 2|85 dB

Zentrale 24 V, Akku 2 x 12 Ah, Ring 1 Leitung 2x0,8 mm 310 m, Ring 2 275 m
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "a list of fire detectors with rooms, loops, counts and cable lengths")
	}},
}
