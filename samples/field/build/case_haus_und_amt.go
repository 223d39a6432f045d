package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// tabbed writes a block with tabs for its bars.
// hausUndAmt are German: a caretaker, an inspector, a council office, a planner, a museum technician and an electrical firm.
var hausUndAmt = []typed.Case{
	{File: "schule/Durchsage_Lautsprecher.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Grundschule am Mühlgrund - Lautsprecher für die Durchsage;;;;
aufgenommen vom Hausmeister in den Herbstferien;;;;
Verstärker im Sekretariat 240 W, Ausgang 100 V;;;;
;;;;
Raum;Anzahl;steht auf;Regler im Raum;Bemerkung
Eingangshalle;4;6 W;nein;
Flur EG;3;3 W;nein;
Flur OG;3;3 W;nein;
Sekretariat;1;1,5 W;ja, 6 W;
Lehrerzimmer;2;3 W;ja, 12 W;
Klasse 1a;1;3 W;nein;
Klasse 1b;1;3 W;nein;Gitter eingedrückt
Klasse 2a;1;3 W;nein;
Klasse 2b;1;3 W;nein;
Klasse 3;1;3 W;nein;
Klasse 4;1;3 W;nein;
Musikraum;2;6 W;ja, 24 W;
Turnhalle;4;10 W;nein;mit Ballschutz
Schulhof;2;15 W;nein;Horn an der Giebelwand
Werkraum Keller;1;6 W;nein;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Grundschule am Mühlgrund", "plain; one amplifier in a sentence above, controls in the room without a name, their rating in the yes/no column")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|note
6|Eingangshalle|4|6|
7|Flur EG|3|3|
8|Flur OG|3|3|
9|Sekretariat|1|1.5|unnamed
10|Lehrerzimmer|2|3|unnamed
11|Klasse 1a|1|3|
12|Klasse 1b|1|3|
13|Klasse 2a|1|3|
14|Klasse 2b|1|3|
15|Klasse 3|1|3|
16|Klasse 4|1|3|
17|Musikraum|2|6|unnamed
18|Turnhalle|4|10|
19|Schulhof|2|15|
20|Werkraum Keller|1|6|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|155.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|155.5`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|6|1.5
|12|6
|24|12`)
	}},

	{File: "prüfung/0418 Eishalle.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Linien")
		p.Put("A1", `
Prüfbericht zu Auftrag 0418
Eishalle Lüttenmoor, wiederkehrende Prüfung der Beschallung, 100-V-Technik
||
Linie|Bereich|Ausgang|Nennleistung [W]|Last Soll [W]|Z gemessen [Ω]|P aus Z [W]|Kabel|Länge [m]|Ergebnis
L1|Eisfläche|VM1.1|250|120|82|122|2 x 2,5 mm²|140|i. O.
L2|Tribünen|VM1.2|250|108|91|110|2 x 2,5 mm²|95|i. O.
L3|Foyer und Kasse|VM2.1|125|27|366|27|2 x 1,5 mm²|40|Mangel M1
L4|Kabinen|VM2.2|125|36|271|37|2 x 1,5 mm²|65|i. O.
L5|Technik|VM2.3|125|26|390|26|2 x 1,5 mm²|50|i. O.
`)
		p.Bold("A1", "A4:J4")
		q := p.Sheet("Lautsprecher")
		q.Put("A1", `
Linie|Ort|Bauart|St.|Anzapfung|P gesamt|Feststellung
L1|Längsseite Nord|Horn|4|15 W|60 W|
L1|Längsseite Süd|Horn|4|15 W|60 W|ein Halter locker
L2|Tribüne Ost|Gehäuse|8|6 W|48 W|
L2|Tribüne West|Gehäuse|10|6 W|60 W|
L3|Foyer|Decke|6|3 W|18 W|M1
L3|Kasse|Decke|2|1,5 W|3 W|
L3|Schlittschuhverleih|Decke|2|3 W|6 W|
L4|Kabinen 1 bis 4|Decke|8|3 W|24 W|
L4|Schiedsrichter|Decke|2|1,5 W|3 W|
L4|Kabinenflur|Decke|3|3 W|9 W|M2
L5|Eismeister|Gehäuse|1|6 W|6 W|
L5|Maschinenraum|Horn|2|10 W|20 W|
Summe|||52||317 W|
`)
		q.Bold("A1:G1", "A14:G14")
		r := p.Sheet("Mängel")
		r.Put("A1", `
Nr.|Feststellung|Frist
M1|Der Lautstärkesteller ST1 (24 W) vor den 6 Deckenlautsprechern im Foyer hat keine Pflichtempfangsschaltung.|4 Wochen
M2|Zwei Schutzgitter fehlen.|bis zur nächsten Prüfung
`)
		r.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("0418", "Eishalle Lüttenmoor", "outputs and measurements by line on one sheet, loudspeakers by line on the next; the only control is named in the list of defects; measured watts beside the stated ones")
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=VM1; channel=1", `rows|room|count|tap_w
2|Längsseite Nord|4|15
3|Längsseite Süd|4|15`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=VM1; channel=2", `rows|room|count|tap_w
4|Tribüne Ost|8|6
5|Tribüne West|10|6`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=VM2; channel=1", `rows|room|count|tap_w|control
6|Foyer|6|3|ST1
7|Kasse|2|1.5|
8|Schlittschuhverleih|2|3|`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=VM2; channel=2", `rows|room|count|tap_w
9|Kabinen 1 bis 4|8|3
10|Schiedsrichter|2|1.5
11|Kabinenflur|3|3`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=VM2; channel=3", `rows|room|count|tap_w
12|Eismeister|1|6
13|Maschinenraum|2|10`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
VM1|1|250|120
VM1|2|250|108
VM2|1|125|27
VM2|2|125|36
VM2|3|125|26`)
		t.Amplifiers("", `amplifier|load_w
VM1|228
VM2|89`)
		t.Controls("", `control|rated_w|load_w
ST1|24|18`)
		t.Lines("", `line|length_m|area_mm2
L1|140|2.5
L2|95|2.5
L3|40|1.5
L4|65|1.5
L5|50|1.5`)
		t.Left("Lautsprecher", `14|total|sum`)
	}},

	{File: "gemeinde/Bestandsverzeichnis Beschallung.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte("\ufeff" + typed.DOS(`
Gemeinde Niederwalde, Bauamt;Bestandsverzeichnis Beschallung;;;;;;
Objekt-Nr.;Objekt;Raum;Gegenstand;Stück;Watt;hängt an;Bemerkung
2103;Hallenbad;Technikraum;Verstärker HB-V1;1;240;;100 V
2103;Hallenbad;Schwimmhalle;Lautsprecher;8;10;HB-V1;
2103;Hallenbad;Lehrbecken;Lautsprecher;4;6;HB-V1;
2103;Hallenbad;Umkleide Damen;Lautsprecher;3;3;HB-V1;
2103;Hallenbad;Umkleide Herren;Lautsprecher;3;3;HB-V1;
2103;Hallenbad;Kasse;Lautsprecher;1;3;HB-V1;
2103;Hallenbad;Kasse;Mikrofon;1;;;
2117;Gemeindebücherei;Büro;Verstärker BÜ-V1;1;60;;100 V
2117;Gemeindebücherei;Leseraum;Lautsprecher;6;3;BÜ-V1;über BÜ-R1
2117;Gemeindebücherei;Kinderecke;Lautsprecher;2;1,5;BÜ-V1;
2117;Gemeindebücherei;Archiv;Lautsprecher;2;3;;nicht angeschlossen, Ersatz
2117;Gemeindebücherei;Leseraum;Lautstärkeregler BÜ-R1;1;24;;
2140;Bauhof;Büro;Verstärker BH-V1;1;120;;100 V
2140;Bauhof;Fahrzeughalle;Lautsprecher;4;15;BH-V1;
2140;Bauhof;Werkstatt;Lautsprecher;2;6;BH-V1;
2140;Bauhof;Hof;Lautsprecher;2;15;BH-V1;
2140;Bauhof;Salzhalle;Lautsprecher;1;15;BH-V1;ausgebaut, Rost
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("2103", "Hallenbad", "a register of three buildings; amplifiers, controls and a microphone as items among the loudspeakers; spare and removed by remark")
		t.Speakers("tap_v=100; line_v=100; amplifier=HB-V1", `rows|room|count|tap_w
4|Schwimmhalle|8|10
5|Lehrbecken|4|6
6|Umkleide Damen|3|3
7|Umkleide Herren|3|3
8|Kasse|1|3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
HB-V1|240|125`)
		t.Amplifiers("", `amplifier|rated_w|load_w
HB-V1|240|125`)
		t.Left("", `9|other|microphone`)
		t.Also("2117", "Gemeindebücherei", "second building")
		t.Speakers("tap_v=100; line_v=100; amplifier=BÜ-V1", `rows|room|count|tap_w|control
11|Leseraum|6|3|BÜ-R1
12|Kinderecke|2|1.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
BÜ-V1|60|21`)
		t.Amplifiers("", `amplifier|rated_w|load_w
BÜ-V1|60|21`)
		t.Controls("", `control|rated_w|load_w
BÜ-R1|24|18`)
		t.Left("", `13|spare|not connected`)
		t.Also("2140", "Bauhof", "third building")
		t.Speakers("tap_v=100; line_v=100; amplifier=BH-V1", `rows|room|count|tap_w
16|Fahrzeughalle|4|15
17|Werkstatt|2|6
18|Hof|2|15`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
BH-V1|120|102`)
		t.Amplifiers("", `amplifier|rated_w|load_w
BH-V1|120|102`)
		t.Left("", `19|removed|taken out`)
	}},

	{File: "planung/23-117 Hallenbad ELA Index b.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Lautsprecher")
		p.Put("A1", `
Hallenbad Ostufer, Neubau
Projekt 23-117|||ELA, 100-V-Linien, Index b
||
Zone|Raum||Lautsprecher|||Regler|
|Nr.|Bezeichnung|Typ|Stück|Abgriff⏎[W]|Kennz.|[W]
Z1 Schwimmhalle|'1.01|Sportbecken|TS-20|6|20||
|'1.02|Lehrbecken|TS-20|2|10||
|'1.03|Sprungbecken|TS-20|2|20||
Z2 Umkleiden|'1.10|Sammelumkleide 1|DL-6|2|3|R1|12
|'1.11|Sammelumkleide 2|DL-6|2|3|R2|12
|'1.12|Einzelumkleiden|DL-6|6|1.5||
|'1.13|Duschen Damen|DL-6F|2|3||
|'1.14|Duschen Herren|DL-6F|2|3||
Z3 Eingang|'0.01|Foyer|DL-6|8|3|R3|36
|'0.02|Kasse|DL-6|1|1.5|R4|6
|'0.03|Windfang|DL-6|1|3||
Z4 Sauna|'2.01|Ruheraum|DL-6|4|1.5|R5|12
|'2.02|Saunagang|DL-6F|3|3||
|'2.03|Tauchbecken|WH-15|2|7.5|R6|24
`)
		p.Bold("A1", "A4:H5")
		p.Merge("A4:A5", "B4:C4", "D4:F4", "G4:H4", "A6:A8", "A9:A13", "A14:A16", "A17:A19")
		q := p.Sheet("Verstärker")
		q.Put("A1", `
Verstärker|Kanal|Zone|Kanalleistung [W]|Anschlussleistung [W]|Reserve
VA1|1|Z1 Schwimmhalle|250|180|28 %
VA1|2|Z2 Umkleiden|125|33|74 %
VA1|3|Z3 Eingang|125|28.5|77 %
VA1|4|Z4 Sauna|125|30|76 %
`)
		q.Bold("A1:F1")
		r := p.Sheet("Leitungen")
		r.Put("A1", `
Zone|Leitung|Länge gesamt [m]
Z1 Schwimmhalle|NHXMH-J 3 x 2,5 mm²|165
Z2 Umkleiden|NHXMH-J 3 x 1,5 mm²|80
Z3 Eingang|NHXMH-J 3 x 1,5 mm²|70
Z4 Sauna|NHXMH-J 3 x 1,5 mm²|95
`)
		r.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("23-117", "Hallenbad Ostufer", "two header rows and merged zones; types with numbers that are no taps; amplifiers and cables by zone on other sheets")
		t.Revision("b", false)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; zone=Z1 Schwimmhalle; amplifier=VA1; channel=1", `rows|room|model|count|tap_w
6|Sportbecken|TS-20|6|20
7|Lehrbecken|TS-20|2|10
8|Sprungbecken|TS-20|2|20`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; zone=Z2 Umkleiden; amplifier=VA1; channel=2", `rows|room|model|count|tap_w|control
9|Sammelumkleide 1|DL-6|2|3|R1
10|Sammelumkleide 2|DL-6|2|3|R2
11|Einzelumkleiden|DL-6|6|1.5|
12|Duschen Damen|DL-6F|2|3|
13|Duschen Herren|DL-6F|2|3|`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; zone=Z3 Eingang; amplifier=VA1; channel=3", `rows|room|model|count|tap_w|control
14|Foyer|DL-6|8|3|R3
15|Kasse|DL-6|1|1.5|R4
16|Windfang|DL-6|1|3|`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; zone=Z4 Sauna; amplifier=VA1; channel=4", `rows|room|model|count|tap_w|control
17|Ruheraum|DL-6|4|1.5|R5
18|Saunagang|DL-6F|3|3|
19|Tauchbecken|WH-15|2|7.5|R6`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
VA1|1|250|180
VA1|2|125|33
VA1|3|125|28.5
VA1|4|125|30`)
		t.Amplifiers("", `amplifier|load_w
VA1|271.5`)
		t.Controls("", `control|zone|rated_w|load_w
R1|Z2 Umkleiden|12|6
R2|Z2 Umkleiden|12|6
R3|Z3 Eingang|36|24
R4|Z3 Eingang|6|1.5
R5|Z4 Sauna|12|6
R6|Z4 Sauna|24|15`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Z1 Schwimmhalle|165|2.5
Z2 Umkleiden|80|1.5
Z3 Eingang|70|1.5
Z4 Sauna|95|1.5`)
	}},

	{File: "museum/Rundgang Lautsprecher.txt", Kind: "schedule", Bytes: func() []byte {
		return typed.Unicode16(tabbed(typed.DOS(`
Stadtmuseum am Kornspeicher, Lautsprecher der Dauerausstellung
Endstufe E1 (100 V): vier Kanäle mit je 60 W, Zone 1 = Kanal 1, Zone 2 = Kanal 2 usw.

Nr.|Saal|Zone|Bauform|W|Regler|Zustand
M01|Foyer|1|Decke|6||ok
M02|Foyer|1|Decke|6||ok
M03|Garderobe|1|Decke|3|P1|ok
M04|Garderobe|1|Decke|3|P1|kratzt, Regler tauschen
M05|Steinzeit|2|Wand|6||ok
M06|Steinzeit|2|Wand|6||ok
M07|Bronzezeit|2|Wand|6|P2|ok
M08|Bronzezeit|2|Wand|6|P2|ok
M09|Bronzezeit|2|Wand|6|P2|abgebaut, Wand wird verputzt
M10|Münzkabinett|3|Decke|1,5|P3|ok
M11|Münzkabinett|3|Decke|1,5|P3|ok
M12|Sonderausstellung|3|Decke|6||ok
M13|Sonderausstellung|3|Decke|6||ok
M14|Treppenhaus|4|Wand|10||ok
M15|Treppenhaus|4|Wand|10||ok
M16|Innenhof|4|Horn|15||kommt erst im Frühjahr
M17|Werkstatt|4|Wand|3|P4|ok

Regler: P1 = 12 W, P2 = 20 W, P3 = 6 W, P4 = 6 W
`)))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Stadtmuseum am Kornspeicher", "tab-separated UTF-16; the amplifier and its channels by zone in a sentence above, the controls' ratings in a line below; one taken down, one to come")
		t.Speakers("tap_v=100; line_v=100; amplifier=E1; channel=1; zone=1", `rows|tag|room|tap_w|control
5..6|M01..|Foyer|6|
7..8|M03..|Garderobe|3|P1`)
		t.Speakers("tap_v=100; line_v=100; amplifier=E1; channel=2; zone=2", `rows|tag|room|tap_w|control
9..10|M05..|Steinzeit|6|
11..12|M07..|Bronzezeit|6|P2`)
		t.Speakers("tap_v=100; line_v=100; amplifier=E1; channel=3; zone=3", `rows|tag|room|tap_w|control
14..15|M10..|Münzkabinett|1.5|P3
16..17|M12..|Sonderausstellung|6|`)
		t.Speakers("tap_v=100; line_v=100; amplifier=E1; channel=4; zone=4", `rows|tag|room|tap_w|control
18..19|M14..|Treppenhaus|10|
21|M17|Werkstatt|3|P4`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
E1|1|60|18
E1|2|60|24
E1|3|60|15
E1|4|60|23`)
		t.Amplifiers("", `amplifier|load_w
E1|80`)
		t.Controls("", `control|rated_w|load_w
P1|12|6
P2|20|12
P3|6|3
P4|6|3`)
		t.Left("", `13|removed|taken down
20|future|comes in spring`)
	}},

	{File: "theater/Kabel Theater am Deich.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Kabel")
		p.Put("A1", `
Theater am Deich||Auftrag 5160|||
Kabel-Nr.|von|nach|Typ|Länge|geprüft
W101|V1/1|LS01|2x2,5|38 m|x
W102|LS01|LS02|2x2,5|7 m|x
W103|LS02|LS03|2x2,5|7 m|x
W104|LS03|LS04|2x2,5|7 m|x
W201|V1/2|LS05|2x1,5|22 m|x
W202|LS05|LS06|2x1,5|9 m|x
W203|LS06|LS07|2x1,5|12 m|
W301|V2|R1|2x1,5|15 m|x
W302|R1|LS08|2x1,5|6 m|x
W303|LS08|LS09|2x1,5|5 m|x
W304|V2|LS10|2x1,5|26 m|x
W305|LS10|LS11|2x1,5|11 m|
`)
		p.Bold("A1", "A2:F2")
		q := p.Sheet("Lautsprecher")
		q.Put("A1", `
LS|Standort|Leistung|an
LS01|Saal links vorn|20 W|V1/1
LS02|Saal links hinten|10 W|V1/1
LS03|Saal rechts hinten|10 W|V1/1
LS04|Saal rechts vorn|20 W|V1/1
LS05|Foyer|6 W|V1/2
LS06|Foyer|6 W|V1/2
LS07|Kasse|3 W|V1/2
LS08|Garderobe Damen|3 W|V2
LS09|Garderobe Herren|3 W|V2
LS10|Unterbühne|6 W|V2
LS11|Requisite|3 W|V2
`)
		q.Bold("A1:D1")
		r := p.Sheet("Geräte")
		r.Put("A1", `
Gerät|Beschreibung|Ort
V1|Verstärker 2 x 120 W, 100 V|Gestell Tonregie
V2|Verstärker 60 W, 100 V|Gestell Tonregie
R1|Lautstärkeregler 12 W, 100 V|Flur Garderoben
MT1|Mithörtaster|Inspizientenpult
`)
		r.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5160", "Theater am Deich", "a cable list from point to point; that two loudspeakers hang behind the control follows from the cables alone; ratings inside descriptions")
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V1; channel=1", `rows|tag|room|tap_w
2|LS01|Saal links vorn|20
3|LS02|Saal links hinten|10
4|LS03|Saal rechts hinten|10
5|LS04|Saal rechts vorn|20`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V1; channel=2", `rows|tag|room|tap_w
6|LS05|Foyer|6
7|LS06|Foyer|6
8|LS07|Kasse|3`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=V2", `rows|tag|room|tap_w|control
9|LS08|Garderobe Damen|3|R1
10|LS09|Garderobe Herren|3|R1
11|LS10|Unterbühne|6|
12|LS11|Requisite|3|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|120|60
V1|2|120|15
V2||60|15`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1||75
V2|60|15`)
		t.Controls("", `control|rated_w|load_w
R1|12|6`)
		t.Lines("", `from|to|length_m|area_mm2
V1/1|LS01|38|2.5
LS01|LS02|7|2.5
LS02|LS03|7|2.5
LS03|LS04|7|2.5
V1/2|LS05|22|1.5
LS05|LS06|9|1.5
LS06|LS07|12|1.5
V2|R1|15|1.5
R1|LS08|6|1.5
LS08|LS09|5|1.5
V2|LS10|26|1.5
LS10|LS11|11|1.5`)
		t.Left("Geräte", `5|other|monitor key`)
	}},
}
