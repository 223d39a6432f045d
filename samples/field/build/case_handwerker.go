package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Five hands in Germany.
var handwerker = []typed.Case{
	// Elektromeister Henning hat im Hallenbad das Aufmaß genommen, damit sein Büro die Schlussrechnung schreiben kann.
	{File: "handed in/Aufmass Hallenbad.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Aufmaß ELA-Anlage Hallenbad Brunnstedt;;;;;;
Auftrag 23-0418, 100-V-Technik;;;;;;
;;;;;;
Pos.;Raum;Bauart;Stück;Watt je Stück;Linie;Regler
1;Schwimmhalle Südseite;Druckkammer;4;15;1;
2;Schwimmhalle Nordseite;Druckkammer;4;15;1;
3;Sprungturm;Druckkammer;1;10;1;
4;Lehrschwimmbecken;Wandgehäuse;4;6;2;
5;Planschbecken;Wandgehäuse;2;6;2;R1 (24 W)
6;Umkleide Damen;Einbau;3;1,5;3;
7;Umkleide Herren;Einbau;3;1,5;3;
8;Sammelumkleiden;Einbau;4;3;3;
9;Kasse;Einbau;1;1,5;3;R2 (6 W)
10;Schwimmmeister;Einbau;1;1,5;3;R3 (6 W)
11;Liegewiese;Druckkammer;3;20;4;
12;Filterkeller;Druckkammer;2;10;4;
;Summe;;32;;;
;;;;;;
Linie;Verstärker;Ausgang;Nennleistung;Leitung;Länge;
1;V1;1;240 W;2 x 2,5 mm²;118 m;
2;V1;2;120 W;2 x 1,5 mm²;46,5 m;
3;V2;1;60 W;2 x 1,5 mm²;52 m;
4;V2;2;120 W;2 x 2,5 mm²;134 m;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("23-0418", "Hallenbad Brunnstedt", "plain; lines with outputs and cables in a second table below, decimal commas, control ratings in brackets")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|amplifier|channel|control
5|Schwimmhalle Südseite|4|15|V1|1|
6|Schwimmhalle Nordseite|4|15|V1|1|
7|Sprungturm|1|10|V1|1|
8|Lehrschwimmbecken|4|6|V1|2|
9|Planschbecken|2|6|V1|2|R1
10|Umkleide Damen|3|1.5|V2|1|
11|Umkleide Herren|3|1.5|V2|1|
12|Sammelumkleiden|4|3|V2|1|
13|Kasse|1|1.5|V2|1|R2
14|Schwimmmeister|1|1.5|V2|1|R3
15|Liegewiese|3|20|V2|2|
16|Filterkeller|2|10|V2|2|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|240|130
V1|2|120|36
V2|1|60|24
V2|2|120|80`)
		t.Amplifiers("", `amplifier|load_w
V1|166
V2|104`)
		t.Controls("", `control|rated_w|load_w
R1|24|12
R2|6|1.5
R3|6|1.5`)
		t.Lines("note=one length a line", `line|length_m|area_mm2
1|118|2.5
2|46.5|1.5
3|52|1.5
4|134|2.5`)
		t.Left("", `17|total|count of all`)
	}},

	// Frau Wiebke, Sachverständige eines Versicherers, nimmt nach einem Blitzschlag im Museum auf, was noch geht und was ersetzt ist.
	{File: "handed in/Schadenaufnahme Moormuseum.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Aufnahme")
		p.Put("A1", `
Moormuseum Osterbrook, Aufnahme nach Blitzschlag vom 11.07.2022
Lautsprecheranlage 100 V, ein Verstärker, eine Linie
||
Nr.|Raum|Gegenstand|Stück|Leistung (Abgriff)|Befund am 26.07.|Wert €
1|Foyer|Deckenlautsprecher|4|3 W|ohne Befund|
2|Garderobe|Deckenlautsprecher|2|1,5 W|ohne Befund|
3|Torfstichraum|Wandlautsprecher|4|6 W|Gehäuse verrußt, spielt|60
4|Lorenhalle|Hornlautsprecher|4|15 W|ohne Befund|
5|Lorenhalle|Hornlautsprecher|1|15 W|verbrannt, abgenommen und entsorgt|145
6|Vortragsraum|Deckenlautsprecher|6|3 W|ohne Befund|
7|Vortragsraum|Lautstärkeregler für Nr. 6|1|24 W|ohne Befund|
8|Technik|Verstärker|1|240 W|Ersatz vom 20.07., gleiche Leistung|690
9|Außengelände|Hornlautsprecher|2|10 W|ohne Befund|
10|Bohlenweg|Tonsäule|2|20 W|ohne Befund|
11|Kasse|Deckenlautsprecher|1|1,5 W|Ersatz vom 20.07., in Betrieb|48
||||||Summe|943
`)
		p.Bold("A1", "A4:G4", "F16:G16")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Moormuseum Osterbrook", "damage list of an insurer; findings as states, one loudspeaker gone, one replaced; control and amplifier as rows between the loudspeakers")
		t.Speakers("sheet=Aufnahme; tap_v=100; line_v=100", `rows|room|count|tap_w|note
5|Foyer|4|3|
6|Garderobe|2|1.5|
7|Torfstichraum|4|6|
8|Lorenhalle|4|15|
10|Vortragsraum|6|3|unnamed
13|Außengelände|2|10|
14|Bohlenweg|2|20|
15|Kasse|1|1.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|178.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|178.5`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|24|18`)
		t.Left("Aufnahme", `9|removed|burnt, taken down
11|control|
12|amplifier|
16|total|`)
	}},

	// Jannis, Azubi im zweiten Jahr, schreibt den Plan für die Schranktür: je Ausgang eine Spalte, so wie die Klemmen nebeneinander sitzen.
	{File: "handed in/4471 Reitstall Schrank.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Schranktür")
		p.Put("A1", `
Reitstall Erlenkamp, Auftrag 4471
ELA 100 V
||
Verstärker|V1|V1|V1|V2|V2|V2|V2|V2|V2
Ausgang|1|2|2|1|2|3|3|4|4
Ausgang max. W|240|120|120|60|60|60|60|60|60
Bereich|Reithalle|Tribüne|Richterturm|Stall A|Stall B|Sattelkammer|Schulungsraum|Führanlage|Longierhalle
Bauform|Horn|Wand|Wand|Wand|Wand|Decke|Decke|Horn|Horn
Anzahl LS|6|8|2|4|4|2|4|2|2
W je LS|15|6|3|6|6|3|3|10|10
W zusammen|90|48|6|24|24|6|12|20|20
Regler||Rg1|Rg2|||Rg3|Rg4||
Regler max. W||60|12|||12|24||
Kabel m|105|38|61|72|84|20|33|95|110
Kabel mm²|2.5|1.5|1.5|1.5|1.5|1.5|1.5|2.5|2.5
`)
		p.Bold("A1", "A4:A15")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("4471", "Reitstall Erlenkamp", "a table that runs across, a column an area; outputs with two areas repeat their rating")
		t.Speakers("sheet=Schranktür; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|channel|control
B|Reithalle|6|15|V1|1|
C|Tribüne|8|6|V1|2|Rg1
D|Richterturm|2|3|V1|2|Rg2
E|Stall A|4|6|V2|1|
F|Stall B|4|6|V2|2|
G|Sattelkammer|2|3|V2|3|Rg3
H|Schulungsraum|4|3|V2|3|Rg4
I|Führanlage|2|10|V2|4|
J|Longierhalle|2|10|V2|4|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|240|90
V1|2|120|54
V2|1|60|24
V2|2|60|24
V2|3|60|18
V2|4|60|40`)
		t.Amplifiers("", `amplifier|load_w
V1|144
V2|106`)
		t.Controls("", `control|zone|rated_w|load_w
Rg1|Tribüne|60|48
Rg2|Richterturm|12|6
Rg3|Sattelkammer|12|6
Rg4|Schulungsraum|24|12`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Reithalle|105|2.5
Tribüne|38|1.5
Richterturm|61|1.5
Stall A|72|1.5
Stall B|84|1.5
Sattelkammer|20|1.5
Schulungsraum|33|1.5
Führanlage|95|2.5
Longierhalle|110|2.5`)
	}},

	// Frau Petersen, Innendienst einer Wartungsfirma, führt für die Tourenplanung eine Liste aller Anlagen im Norden.
	{File: "handed in/Wartungsliste Nord.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Nord")
		p.Put("A1", `
Wartungsliste ELA Nord, Stand 02/2024 (alle Anlagen 100 V)
||
Obj.-Nr.|Objekt|Bereich|Anz.|Bauart|W|Verstärker|Bemerkung
N-03|Stadtbücherei Wesselhorn|Ausleihe|6|Decke|3|V1 120 W|
"|"|Lesesaal|4|Decke|1.5|"|Regler LR1, 12 W
"|"|Magazin|2|Wand|6|"|
"|"|Windfang|1|Decke|3|"|demontiert 6/2021
N-07|Eishalle Krummbek|Eisfläche|8|Horn|15|V1 240 W|
"|"|Tribüne|6|Wand|6|V2 120 W|
"|"|Kasse|1|Decke|1.5|"|
"|"|Umkleiden|4|Decke|3|"|
"|"|Eismeister|1|Wand|?|"|Gehäuse geht nicht auf, nächstes Mal Abgriff ablesen
N-11|Planetarium Heidloh|Kuppel|4|Wand|6|V1 60 W|
"|"|Foyer|4|Decke|3|"|Regler LR1, 24 W
"|"|Seminarraum|2|Decke|3|"|Regler LR2, 6 W
"|"|Werkstatt|1|Wand|6|"|kommt erst mit dem Anbau 2025
N-15|Botanischer Garten Lüttenau|Palmenhaus|4|Wand|6|V1 60 W|
"|"|Kassenhaus|1|Decke|1.5|"|
"|"|Freigelände|5|Horn|10|V2 120 W|
"|"|Betriebshof|1|Horn|10|"|
`)
		p.Bold("A1", "A3:H3")
		p.Strike("A7:H7")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("N-03", "Stadtbücherei Wesselhorn", "hard: register of four sites with ditto marks; amplifiers with rating in one cell, the same names on each site; one row struck through, one tap not readable, one to come")
		t.Speakers("sheet=Nord; tap_v=100; line_v=100; amplifier=V1", `rows|zone|count|tap_w|control
4|Ausleihe|6|3|
5|Lesesaal|4|1.5|LR1
6|Magazin|2|6|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
V1|120|36`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|120|36`)
		t.Controls("", `control|zone|rated_w|load_w
LR1|Lesesaal|12|6`)

		t.Also("N-07", "Eishalle Krummbek", "a tap that could not be read")
		t.Speakers("sheet=Nord; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier
8|Eisfläche|8|15|V1
9|Tribüne|6|6|V2
10|Kasse|1|1.5|V2
11|Umkleiden|4|3|V2
12|Eismeister|1||V2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w|load_min_w
V1|240|120|
V2|120||49.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|240|120
V2|120|`)
		t.Asks("Nord", `12|asked|tap of the loudspeaker of the ice master`)

		t.Also("N-11", "Planetarium Heidloh", "one loudspeaker of an extension to come")
		t.Speakers("sheet=Nord; tap_v=100; line_v=100; amplifier=V1", `rows|zone|count|tap_w|control
13|Kuppel|4|6|
14|Foyer|4|3|LR1
15|Seminarraum|2|3|LR2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
V1|60|42`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|60|42`)
		t.Controls("", `control|zone|rated_w|load_w
LR1|Foyer|24|12
LR2|Seminarraum|6|6`)

		t.Also("N-15", "Botanischer Garten Lüttenau", "plain")
		t.Speakers("sheet=Nord; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier
17|Palmenhaus|4|6|V1
18|Kassenhaus|1|1.5|V1
19|Freigelände|5|10|V2
20|Betriebshof|1|10|V2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
V1|60|25.5
V2|120|60`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|60|25.5
V2|120|60`)
		t.Left("Nord", `7|removed|taken down, struck through
16|future|extension of 2025`)
	}},

	// Obergärtner Dierk listet die elektrische Beheizung der Schauhäuser für den Energieberater auf: keine Lautsprecher darin.
	{File: "handed in/Heizgeräte Schauhäuser.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Heizung")
		p.Put("A1", `
Botanischer Garten, Schauhäuser: elektrische Beheizung
Stand Oktober 2020
||
Haus|Ort|Gerät|Stück|W je Stück|W gesamt|Regler|Verteiler / Abgang
Kakteenhaus|Tischreihe Nord|Heizmatte|6|100|600|TR1|UV2 / 3
Kakteenhaus|Tischreihe Süd|Heizmatte|6|100|600|TR1|UV2 / 3
Kakteenhaus|Anzucht|Bodenheizkabel|2|250|500|TR2|UV2 / 4
Orchideenhaus|Vitrinen|Heizplatte|8|30|240|TR3|UV2 / 5
Orchideenhaus|Decke|Strahler|4|700|2800|TR4|UV2 / 6
Sumpfhaus|Becken 1|Heizstab|2|300|600|TR5|UV3 / 1
Sumpfhaus|Becken 2|Heizstab|2|300|600|TR5|UV3 / 1
Überwinterung|Tor|Frostwächter|3|500|1500|TR6|UV3 / 2
Summe|||33||7440
`)
		p.Bold("A1", "A4:H4", "A13:F13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "heaters with watts, controllers and circuits: no loudspeakers, no line")
		t.Left("Heizung", `5|heater|
6|heater|
7|heater|
8|heater|
9|heater|
10|heater|
11|heater|
12|heater|
13|total|`)
	}},
}
