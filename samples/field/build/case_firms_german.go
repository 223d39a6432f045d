package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Four people who write German: a consultant, a museum technician, an apprentice, a drafter.
var firmsGerman = []typed.Case{

	// Ein Fachplaner führt das Raumbuch eines Hallenbads; die Linien stehen auf einem zweiten Blatt.
	{File: "planung/2019-044 Raumbuch ELA.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Raumbuch")
		p.Put("A1", `
Hallenbad Schilfgrund|||||||Projekt 2019-044
Raumbuch ELA, Ausführungsplanung
||
Raum||Lautsprecher||||Linie|Pegelsteller
Nr.|Bezeichnung|Bauart|Anz.|Abgriff [W]|Σ [W]||
'0.01|Eingangshalle|Deckeneinbau|6|3|18|L3|
'0.02|Kasse|Deckeneinbau|1|1.5|1.5|L3|PS1
'0.05|Umkleide Damen|Deckeneinbau|4|3|12|L2|
'0.06|Umkleide Herren|Deckeneinbau|4|3|12|L2|
'0.07|Sammelumkleide|Deckeneinbau|2|3|6|L2|
'0.10|Duschen|Druckkammer IP65|4|5|20|L2|
'0.12|Schwimmhalle|Tonsäule IP65|8|20|160|L1|
'0.13|Lehrschwimmbecken|Tonsäule IP65|2|20|40|L1|PS2
'0.14|Schwimmmeister|Aufbau|1|3|3|L1|PS3
'1.01|Tribüne|Tonsäule|4|10|40|L4|
'1.02|Vereinsraum|Deckeneinbau|4|3|12|L4|PS4
'1.03|Flur OG|Deckeneinbau|3|1.5|4.5|L4|
Summe|||43||329||
`)
		p.Merge("A4:B4", "C4:F4", "G4:G5", "H4:H5")
		p.Bold("A1", "A4:H5", "A18:H18")
		q := p.Sheet("Linien")
		q.Put("A1", `
Linie|Bereich|Endstufe|Ausgang|Nennleistung [W]|Leitung|Länge [m]
L1|Becken|V1|1|250|NYM-O 2x2,5|85
L2|Umkleiden|V1|2|125|NYM-O 2x1,5|60
L3|Eingang|V2|1|60|NYM-O 2x1,5|35
L4|Obergeschoss|V2|2|125|NYM-O 2x1,5|70
||
Pegelsteller: PS1 6 W, PS2 60 W, PS3 6 W, PS4 30 W
Linienspannung 100 V
`)
		q.Bold("A1:G1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2019-044", "Hallenbad Schilfgrund", "two header rows; lines not in order of rooms, their areas and outputs on a second sheet, ratings of controls in a sentence there")
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; zone=Eingang; amplifier=V2; channel=1", `rows|room|count|tap_w|control
6|Eingangshalle|6|3|
7|Kasse|1|1.5|PS1`)
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; zone=Umkleiden; amplifier=V1; channel=2", `rows|room|count|tap_w
8|Umkleide Damen|4|3
9|Umkleide Herren|4|3
10|Sammelumkleide|2|3
11|Duschen|4|5`)
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; zone=Becken; amplifier=V1; channel=1", `rows|room|count|tap_w|control
12|Schwimmhalle|8|20|
13|Lehrschwimmbecken|2|20|PS2
14|Schwimmmeister|1|3|PS3`)
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; zone=Obergeschoss; amplifier=V2; channel=2", `rows|room|count|tap_w|control
15|Tribüne|4|10|
16|Vereinsraum|4|3|PS4
17|Flur OG|3|1.5|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|250|203
V1|2|125|50
V2|1|60|19.5
V2|2|125|56.5`)
		t.Amplifiers("", `amplifier|load_w
V1|253
V2|76`)
		t.Controls("", `control|rated_w|load_w
PS1|6|1.5
PS2|60|40
PS3|6|3
PS4|30|12`)
		t.Lines("note=one length a line", `line|zone|length_m|area_mm2
L1|Becken|85|2.5
L2|Umkleiden|60|1.5
L3|Eingang|35|1.5
L4|Obergeschoss|70|1.5`)
		t.Left("Raumbuch", `18|total|sums`)
	}},

	// Ein Museumstechniker protokolliert die jährliche Prüfung, Linie für Linie, mit gemessener Impedanz.
	{File: "haustechnik/Prüfung Durchsage 2023.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Protokoll")
		p.Put("A1", `
Museum der Flachsbrecher, jährliche Prüfung der Durchsageanlage
100-V-Anlage, Zentrale im Kellergeschoss
||
Linie 1: Verstärker VS1, 120 W
Ort|Anz.|Trafo auf|Steller|Ton i.O.
Foyer|4|6 W||ja
Garderobe|2|3 W|ST 1|ja
Museumsladen|2|3 W|ST 2|ja
Linienimpedanz gemessen 290 Ohm, rechnerisch 278 Ohm
||
Linie 2: Verstärker VS2, 120 W
Ort|Anz.|Trafo auf|Steller|Ton i.O.
Saal Webstühle|6|6 W||ja
Saal Spinnräder|6|6 W||einer stumm, Ader lose
Kinderwerkstatt|2|3 W|ST 3|ja
Linienimpedanz gemessen 141 Ohm, rechnerisch 128 Ohm
||
Linie 3: Verstärker VS3, 60 W
Ort|Anz.|Trafo auf|Steller|Ton i.O.
Innenhof|2|10 W||ja
Depot|1|10 W||ja
Werkstatt|1|6 W|ST 4|ja
Linienimpedanz gemessen 275 Ohm, rechnerisch 278 Ohm
||
Steller: ST 1, ST 2 und ST 4 je 12 W, ST 3 24 W
`)
		p.Bold("A1", "A4", "A11", "A18")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Museum der Flachsbrecher", "a section a line with the amplifier in its title, measured impedances between, a loudspeaker that is mute but there")
		t.Speakers("sheet=Protokoll; tap_v=100; line_v=100; amplifier=VS1; channel=1", `rows|room|count|tap_w|control
6|Foyer|4|6|
7|Garderobe|2|3|ST 1
8|Museumsladen|2|3|ST 2`)
		t.Speakers("sheet=Protokoll; tap_v=100; line_v=100; amplifier=VS2; channel=2", `rows|room|count|tap_w|control
13|Saal Webstühle|6|6|
14|Saal Spinnräder|6|6|
15|Kinderwerkstatt|2|3|ST 3`)
		t.Speakers("sheet=Protokoll; tap_v=100; line_v=100; amplifier=VS3; channel=3", `rows|room|count|tap_w|control
20|Innenhof|2|10|
21|Depot|1|10|
22|Werkstatt|1|6|ST 4`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
VS1|1|120|36
VS2|2|120|78
VS3|3|60|36`)
		t.Amplifiers("", `amplifier|rated_w|load_w
VS1|120|36
VS2|120|78
VS3|60|36`)
		t.Controls("", `control|rated_w|load_w
ST 1|12|6
ST 2|12|6
ST 3|24|6
ST 4|12|6`)
		t.Left("Protokoll", `9|note|measured impedance
16|note|measured impedance
23|note|measured impedance`)
	}},

	// Ein Azubi im zweiten Lehrjahr nimmt eine Reitanlage auf und spart sich das Abschreiben.
	{File: "aufmass/Reitanlage Aufmass.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Aufmaß Reitanlage Distelhof;;;;;
selber aufgenommen, mit der großen Leiter;;;;;
Gebäude;Wo genau;Stk;Watt am Trafo;Regler;Bemerkung
Reithalle;Bande Süd;3;15;;Horn
"-""-";Bande Nord;3;15;;Horn
"-""-";Richterturm;1;6;R1;Kasten
Stall A;Stallgasse;4;3;;Lautsprächer hängen am Balken
"-""-";Futterkammer;1;3;R2;
"-""-";Sattelkammer;1;1,5;R2;gleicher Regler
Stall B;Stallgasse;4;3;;
"-""-";Waschplatz;1;10;;Horn
"-""-";Heulager;1;?;;komm nicht dran, Ballen davor
Anbau;Schulungsraum;2;3;R3;Decke
dto.;Büro;1;1,5;R4;
dto.;WC;2;1,5;;je einer
;;;;;
Verstärker steht im Büro, 240 W, 100 V, nur ein Ausgang;;;;;
R1 10 W, R2 10 W, R3 20 W, R4 5 W;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Reitanlage Distelhof", "two kinds of ditto marks, decimal commas, Windows-1252, one tap that nobody has read")
		t.Speakers("tap_v=100; line_v=100; zone=Reithalle", `rows|room|count|tap_w|control
4|Bande Süd|3|15|
5|Bande Nord|3|15|
6|Richterturm|1|6|R1`)
		t.Speakers("tap_v=100; line_v=100; zone=Stall A", `rows|room|count|tap_w|control
7|Stallgasse|4|3|
8|Futterkammer|1|3|R2
9|Sattelkammer|1|1.5|R2`)
		t.Speakers("tap_v=100; line_v=100; zone=Stall B", `rows|room|count|tap_w
10|Stallgasse|4|3
11|Waschplatz|1|10
12|Heulager|1|`)
		t.Speakers("tap_v=100; line_v=100; zone=Anbau", `rows|room|count|tap_w|control
13|Schulungsraum|2|3|R3
14|Büro|1|1.5|R4
15|WC|2|1.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_min_w
|240|145`)
		t.Amplifiers("", `amplifier|rated_w
|240`)
		t.Controls("", `control|rated_w|load_w
R1|10|6
R2|10|4.5
R3|20|6
R4|5|1.5`)
		t.Asks("", `12|asked|tap in the hay store`)
	}},

	// Eine technische Zeichnerin liefert die Kabelzugliste der Revisionspläne, mit Lautsprechern und Zentrale.
	{File: "zeichenbüro/7731 Revision Kabelzug.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Kabelzugliste")
		p.Put("A1", `
Bibliothek am Wehr, Revisionsunterlage|||||Auftrag 7731
Kabel|von|nach|Länge m|Typ
K101|ELA-Zentrale|LS101|42|NYM 2x1,5
K102|LS101|LS102|6|NYM 2x1,5
K103|LS102|LS103|6|NYM 2x1,5
K104|LS103|LS104|6|NYM 2x1,5
K105|LS104|LS105|11|NYM 2x1,5
K201|ELA-Zentrale|LR1|25|NYM 2x1,5
K202|LR1|LS201|8|NYM 2x1,5
K203|LS201|LS202|5|NYM 2x1,5
K204|LS202|LS203|5|NYM 2x1,5
K205|LS203|LS204|9|NYM 2x1,5
K301|ELA-Zentrale|LS301|14|NYM 2x1,5
K302|LS301|LS302|4|NYM 2x1,5
K303|LS302|LS303|31|NYM 2x2,5
`)
		p.Bold("A1", "A2:E2")
		q := p.Sheet("Lautsprecher")
		q.Put("A1", `
BMK|Raum|Bauform|Watt|Kreis
LS101|Lesesaal|Pendelkugel|6|BK1
LS102|Lesesaal|Pendelkugel|6|BK1
LS103|Lesesaal|Pendelkugel|6|BK1
LS104|Freihand|Deckeneinbau|6|BK1
LS105|Freihand|Deckeneinbau|6|BK1
LS201|Kinderbücherei|Deckeneinbau|3|BK2
LS202|Kinderbücherei|Deckeneinbau|3|BK2
LS203|Kinderbücherei|Deckeneinbau|3|BK2
LS204|Vorleseraum|Deckeneinbau|3|BK2
LS301|Windfang|Deckeneinbau|1.5|BK3
LS302|Rückgabe|Deckeneinbau|1.5|BK3
LS303|Vorplatz|Horn|10|BK3
`)
		q.Bold("A1:E1")
		r := p.Sheet("Zentrale")
		r.Put("A1", `
Beschallungskreis|Verstärker|Ausgang|Nennleistung|Lautstärkeregler
BK1|ELA-1|A|60 W|keiner
BK2|ELA-1|B|60 W|LR1 (24 W) für den ganzen Kreis
BK3|ELA-2|A|120 W|keiner
||
Betriebsspannung 100 V
`)
		r.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("7731", "Bibliothek am Wehr", "from-to cables first, devices and outputs on two further sheets; a control in the head of one circuit")
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=ELA-1; channel=A; tap_w=6", `rows|tag|room
2..4|LS101..|Lesesaal
5..6|LS104..|Freihand`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=ELA-1; channel=B; tap_w=3; control=LR1", `rows|tag|room
7..9|LS201..|Kinderbücherei
10|LS204|Vorleseraum`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; amplifier=ELA-2; channel=A", `rows|tag|room|tap_w
11|LS301|Windfang|1.5
12|LS302|Rückgabe|1.5
13|LS303|Vorplatz|10`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
ELA-1|A|60|30
ELA-1|B|60|12
ELA-2|A|120|13`)
		t.Amplifiers("", `amplifier|rated_w|load_w
ELA-1||42
ELA-2|120|13`)
		t.Controls("", `control|rated_w|load_w
LR1|24|12`)
		t.Lines("note=from-to run", `line|from|to|length_m|area_mm2
K101|ELA-Zentrale|LS101|42|1.5
K102|LS101|LS102|6|1.5
K103|LS102|LS103|6|1.5
K104|LS103|LS104|6|1.5
K105|LS104|LS105|11|1.5
K201|ELA-Zentrale|LR1|25|1.5
K202|LR1|LS201|8|1.5
K203|LS201|LS202|5|1.5
K204|LS202|LS203|5|1.5
K205|LS203|LS204|9|1.5
K301|ELA-Zentrale|LS301|14|1.5
K302|LS301|LS302|4|1.5
K303|LS302|LS303|31|2.5`)
	}},
}
