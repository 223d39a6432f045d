package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// layoutsGerman are four hands that write German.
var layoutsGerman = []typed.Case{
	// The caretaker of a library keeps a sheet per floor, all alike, and one for the cupboard.
	{File: "layouts/Bücherei Lautsprecher.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("EG")
		p.Put("A1", `
Stadtbibliothek Ellerbach
Geschoss|EG|Linie|1

Raum|Stück|Bauart|Anzapfung|Regler
Foyer|4|Decke|6 W|
Ausleihe|6|Decke|3 W|
Zeitschriften|3|Decke|3 W|R1
WC|2|Decke|1,5 W|
Summe|15
`)
		p.Bold("A1", "A4:E4", "A9:B9")
		q := p.Sheet("1. OG")
		q.Put("A1", `
Stadtbibliothek Ellerbach
Geschoss|1. OG|Linie|2

Raum|Stück|Bauart|Anzapfung|Regler
Romane|6|Decke|3 W|
Kinder|4|Decke|3 W|R2
Vorleseraum|2|Decke|3 W|R2
Treppe|1|Wand|6 W|
Summe|13
`)
		q.Bold("A1", "A4:E4", "A9:B9")
		r := p.Sheet("2. OG")
		r.Put("A1", `
Stadtbibliothek Ellerbach
Geschoss|2. OG|Linie|3

Raum|Stück|Bauart|Anzapfung|Regler
Sachbücher|8|Decke|3 W|
Lesesaal|6|Decke|1,5 W|R3
Verwaltung|4|Decke|1,5 W|
Magazin|1|Wand|6 W|
Summe|19
`)
		r.Bold("A1", "A4:E4", "A9:B9")
		s := p.Sheet("Zentrale")
		s.Put("A1", `
Schrank im Keller, 100-V-Anlage

Linie|Verstärker|Leistung
1|V1|120 W
2|V2|60 W
3|V3|60 W

Regler|Raum|Leistung
R1|Zeitschriften|12 W
R2|Kinder, Vorleseraum|35 W
R3|Lesesaal|24 W
`)
		s.Bold("A3:C3", "A8:C8")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Stadtbibliothek Ellerbach", "a sheet per floor of one layout, floor and line above the table; amplifiers and controls on a sheet of their own")
		t.Speakers("sheet=EG; tap_v=100; line_v=100; zone=EG; amplifier=V1; channel=1; note=floor as zone", `rows|room|count|tap_w|control
5|Foyer|4|6|
6|Ausleihe|6|3|
7|Zeitschriften|3|3|R1
8|WC|2|1.5|`)
		t.Speakers("sheet=1. OG; tap_v=100; line_v=100; zone=1. OG; amplifier=V2; channel=2; note=floor as zone", `rows|room|count|tap_w|control
5|Romane|6|3|
6|Kinder|4|3|R2
7|Vorleseraum|2|3|R2
8|Treppe|1|6|`)
		t.Speakers("sheet=2. OG; tap_v=100; line_v=100; zone=2. OG; amplifier=V3; channel=3; note=floor as zone", `rows|room|count|tap_w|control
5|Sachbücher|8|3|
6|Lesesaal|6|1.5|R3
7|Verwaltung|4|1.5|
8|Magazin|1|6|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|120|54
V2|2|60|42
V3|3|60|45`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|120|54
V2|60|42
V3|60|45`)
		t.Controls("", `control|rated_w|load_w
R1|12|9
R2|35|18
R3|24|9`)
		t.Left("EG", `9|total|sum`)
		t.Left("1. OG", `9|total|sum`)
		t.Left("2. OG", `9|total|sum`)
	}},

	// A planner's bill of quantities, to be priced by bidders: chapters, positions, a position on demand only.
	{File: "layouts/LV Eissporthalle ELA.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("LV")
		p.Put("A1", `
Eissporthalle Kaltenmoor - Leistungsverzeichnis Beschallung, Auszug
Projekt P-2231

OZ|Kurztext|Menge|ME|EP|GP
'01|Lautsprecher
'01.01|Eisfläche
'01.01.0010|Hornlautsprecher 30 W, 100 V, Anzapfung 15 W|8|St
'01.01.0020|Montagebügel für Horn|8|St
'01.02|Tribüne
'01.02.0010|Tonsäule 40 W, 100 V, Anzapfung 20 W|6|St
'01.02.0020|Bedarfsposition, nur auf Anordnung: Tonsäule wie vor, Gästeblock|2|St
'01.03|Umkleiden
'01.03.0010|Deckenlautsprecher 6 W, 100 V, Anzapfung 3 W|12|St
'01.04|Foyer
'01.04.0010|Deckenlautsprecher 6 W, 100 V, Anzapfung 6 W|8|St
'01.04.0020|Lautstärkeregler 60 W, 100 V, für alle Lautsprecher im Foyer|1|St
'02|Zentrale
'02.01.0010|Endstufe 4 x 250 W, 100 V. Ausgang 1 Eisfläche, Ausgang 2 Tribüne, Ausgang 3 Umkleiden, Ausgang 4 Foyer|1|St
'02.01.0020|Gestellschrank 24 HE|1|St
'03|Leitungen
'03.01.0010|NYM-J 3x1,5, Linie Eisfläche|180|m
'03.01.0020|NYM-J 3x1,5, Linie Tribüne|140|m
'03.01.0030|NYM-J 3x1,5, Linie Umkleiden|95|m
'03.01.0040|NYM-J 3x1,5, Linie Foyer|60|m
`)
		p.Bold("A1", "A4:F4", "A5:B6", "A9:B9", "A12:B12", "A14:B14", "A17:B17", "A20:B20")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("P-2231", "Eissporthalle Kaltenmoor", "bill of quantities: zones are chapters, taps stand beside the rating of the loudspeaker in the text, one amplifier and one control without names, a position on demand only")
		t.Speakers("sheet=LV; tap_v=100; line_v=100; note=chapter as zone", `rows|zone|count|tap_w|channel
7|Eisfläche|8|15|1
10|Tribüne|6|20|2
13|Umkleiden|12|3|3`)
		t.Speakers("sheet=LV; tap_v=100; line_v=100; note=unnamed", `rows|zone|count|tap_w|channel
15|Foyer|8|6|4`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
|1|250|120
|2|250|120
|3|250|36
|4|250|48`)
		t.Amplifiers("", `amplifier|load_w
|324`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Foyer|60|48`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Eisfläche|180|1.5
Tribüne|140|1.5
Umkleiden|95|1.5
Foyer|60|1.5`)
		t.Left("LV", `
8|other|brackets
11|optional|position on demand only
16|control|volume control
18|amplifier|power amplifier
19|other|rack`)
	}},

	// A service technician hands in what he reclamped in one shift: values before and after side by side.
	{File: "layouts/3391_Umklemmliste.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Tabelle1")
		p.Put("A1", `
Bahnhof Oberlind, Umklemmliste Lautsprecher, Auftrag 3391
100 V. Spalten "neu": leer = bleibt wie bisher. Alles ausgeführt am 22.5.

|||bisher|||neu||
Nr.|Ort|Stk.|W|Verst.|Ausg.|W|Verst.|Ausg.
1|Bahnsteig 1 Ost|6|10|V1|1|6||
2|Bahnsteig 1 West|6|10|V1|1|6||
3|Bahnsteig 2|8|10|V1|2||V2|1
4|Unterführung|4|6|V1|2|||
5|Halle|6|6|V2|1|3|V1|2
6|Warteraum|2|3|V2|1|1.5|V1|2
7|Vorplatz|2|15|V2|2|||
8|Fahrradhalle|2|6|V2|2|10||

Verstärker V1: 2 x 120 W
Verstärker V2: 2 x 120 W
`)
		p.Merge("D4:F4", "G4:I4")
		p.Bold("A1", "A4:I4", "A5:I5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("3391", "Bahnhof Oberlind", "was and is now side by side under two merged headers; a blank in the new columns keeps the old value; ratings below")
		t.Speakers("sheet=Tabelle1; tap_v=100; line_v=100", `rows|room|count|tap_w|amplifier|channel
6|Bahnsteig 1 Ost|6|6|V1|1
7|Bahnsteig 1 West|6|6|V1|1
8|Bahnsteig 2|8|10|V2|1
9|Unterführung|4|6|V1|2
10|Halle|6|3|V1|2
11|Warteraum|2|1.5|V1|2
12|Vorplatz|2|15|V2|2
13|Fahrradhalle|2|10|V2|2`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|120|72
V1|2|120|45
V2|1|120|80
V2|2|120|50`)
		t.Amplifiers("", `amplifier|load_w
V1|117
V2|130`)
	}},

	// An electrician's cable list, tabs, from and to; the loudspeakers stand where their cables end.
	{File: "layouts/Kabelliste ELA Hallenbad.txt", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Hallenbad Moorwiese	Kabelliste ELA
100-V-Technik, Verstärker V1 mit 2 Ausgängen zu je 120 W

Kabel	von	nach	Typ	Länge m	Raum	Anzapfung W	Bemerkung
W01	V1 Ausg. 1	LS 1	NYM-O 2x1,5	45	Schwimmhalle	10	
W02	LS 1	LS 2	NYM-O 2x1,5	12	Schwimmhalle	10	
W03	LS 2	LS 3	NYM-O 2x1,5	12	Schwimmhalle	10	
W04	LS 3	LS 4	NYM-O 2x1,5	12	Schwimmhalle	10	
W05	LS 4	LS 5	NYM-O 2x1,5	18	Lehrbecken	6	
W06	LS 5	LS 6	NYM-O 2x1,5	8	Lehrbecken	6	
W11	V1 Ausg. 2	LS 7	NYM-O 2x1,5	30	Umkleide Damen	3	
W12	LS 7	LS 8	NYM-O 2x1,5	14	Umkleide Herren	3	
W13	LS 8	R1	NYM-O 2x1,5	9	Meisterraum		Regler 12 W
W14	R1	LS 9	J-Y(St)Y 2x2x0,8	6	Meisterraum	1,5	
W15	LS 9	LS 10	J-Y(St)Y 2x2x0,8	5	Sanitätsraum	1,5	
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Hallenbad Moorwiese", "cable list from-to in chains, a loudspeaker at the far end of each cable, a control in the chain; tabs, decimal commas, diameter in a cable type")
		t.Speakers("tap_v=100; line_v=100; amplifier=V1; channel=1", `rows|tag|room|tap_w
5..8|LS 1..|Schwimmhalle|10
9..10|LS 5..|Lehrbecken|6`)
		t.Speakers("tap_v=100; line_v=100; amplifier=V1; channel=2", `rows|tag|room|tap_w|control
11|LS 7|Umkleide Damen|3|
12|LS 8|Umkleide Herren|3|
14|LS 9|Meisterraum|1.5|R1
15|LS 10|Sanitätsraum|1.5|R1`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|120|52
V1|2|120|9`)
		t.Amplifiers("", `amplifier|load_w
V1|61`)
		t.Controls("", `control|rated_w|load_w
R1|12|3`)
		t.Lines("", `line|from|to|length_m|area_mm2
W01|V1 Ausg. 1|LS 1|45|1.5
W02|LS 1|LS 2|12|1.5
W03|LS 2|LS 3|12|1.5
W04|LS 3|LS 4|12|1.5
W05|LS 4|LS 5|18|1.5
W06|LS 5|LS 6|8|1.5
W11|V1 Ausg. 2|LS 7|30|1.5
W12|LS 7|LS 8|14|1.5
W13|LS 8|R1|9|1.5
W14|R1|LS 9|6|0.503
W15|LS 9|LS 10|5|0.503`)
		t.Left("", `13|control|cable to the control, no loudspeaker`)
	}},
}
