package main

import "lineaudit/samples/typed"

// quellrode are more lists of the German-speaking foundation.
func quellrode() []typed.Case {
	return []typed.Case{
		{File: "Planetarium Mooswalde/SAA Lautsprecherkreise.xlsx", Kind: "schedule", Book: book("Kreise", `
Planetarium Mooswalde
Sprachalarmanlage - Übersicht Lautsprecherkreise
Projekt-Nr.:|18-0447|||Ersteller:|hk|||Index:|b

Kreis|Alarmierungsbereich|LS-Typ|Anzahl|Abgriff [W]|Last [W]|Endstufe|Kanal|max. Last [W]
1A|Foyer|Deckenlautsprecher|6|3|18|ES1|1|120
1B|Foyer|Deckenlautsprecher|6|3|18|ES2|1|120
2A|Ausstellung|Kugellautsprecher|5|10|50|ES1|1|120
2B|Ausstellung|Kugellautsprecher|5|10|50|ES2|1|120
3A|Treppenhaus|Wandlautsprecher|4|1,5|6|ES1|2|120
3B|Treppenhaus|Wandlautsprecher|3|1,5|4,5|ES2|2|120
4A|Technik UG|Druckkammer|2|15|30|ES1|2|120
4B|Technik UG|Druckkammer|2|15|30|ES2|2|120
Gesamt|||33||206,5

Linienspannung 100 V, alle Kreise überwacht, Leitung E30
`, bold("A1:A2", "A5:I5")), Truth: func(t *typed.Truth) {
			t.Is("18-0447", "Planetarium Mooswalde", "plain: voice alarm by circuits A and B, the output's rating in every row; two circuits on one output")
			t.Revision("b", false)
			t.Speakers("tap_v=100; line_v=100; sheet=Kreise", `
rows|zone|model|count|tap_w|amplifier|channel
6|Foyer|Deckenlautsprecher|6|3|ES1|1
7|Foyer|Deckenlautsprecher|6|3|ES2|1
8|Ausstellung|Kugellautsprecher|5|10|ES1|1
9|Ausstellung|Kugellautsprecher|5|10|ES2|1
10|Treppenhaus|Wandlautsprecher|4|1.5|ES1|2
11|Treppenhaus|Wandlautsprecher|3|1.5|ES2|2
12|Technik UG|Druckkammer|2|15|ES1|2
13|Technik UG|Druckkammer|2|15|ES2|2
`)
			t.Channels("line_v=100; rated_w=120", `
amplifier|channel|load_w
ES1|1|68
ES1|2|36
ES2|1|68
ES2|2|34.5
`)
			t.Amplifiers("", `
amplifier|load_w
ES1|104
ES2|102.5
`)
			t.Left("Kreise", "14|total|right")
		}},

		{File: "Bootshaus Grauwehr/Kabelliste ELA.xls", Kind: "schedule", Saved: "xls", Book: book("Kabel", `
Bootshaus Grauwehr, ELA 100 V - Kabelliste|||||||
|||||||
Kabel-Nr.|von|nach|Kabeltyp|Länge [m]|LS-Typ|Leistung [W]|Bemerkung
K01|Verstärker Ausgang 1|LS01|NYM 3x1,5|24|Deckeneinbau|6|
K02|LS01|LS02|NYM 3x1,5|7|Deckeneinbau|6|
K03|LS02|LS03|NYM 3x1,5|7|Deckeneinbau|3|Flur
K04|Verstärker Ausgang 2|LS04|NYY 2x2,5|65|Trichter|15|Steg
K05|LS04|LS05|NYY 2x2,5|30|Trichter|15|Steg
K06|LS05|LS06|NYY 2x2,5|30|Trichter|7,5|Zufahrt
|||||||
Verstärker 2 x 60 W / 100 V|||||||
`, bold("A1", "A3:H3")), Truth: func(t *typed.Truth) {
			t.Is("", "Bootshaus Grauwehr", "the cable list is the loudspeaker list: each cable ends at one; the third core is the earth")
			t.Speakers("tap_v=100; line_v=100; sheet=Kabel", `
rows|tag|model|tap_w|channel
4..5|LS01..|Deckeneinbau|6|1
6|LS03|Deckeneinbau|3|1
7..8|LS04..|Trichter|15|2
9|LS06|Trichter|7.5|2
`)
			t.Channels("line_v=100; rated_w=60", `
channel|load_w
1|15
2|37.5
`)
			t.Amplifiers("", "rated_w|load_w|note\n120|52.5|unnamed")
			t.Lines("material=copper", `
line|from|to|length_m|area_mm2
K01|Verstärker Ausgang 1|LS01|24|1.5
K02|LS01|LS02|7|1.5
K03|LS02|LS03|7|1.5
K04|Verstärker Ausgang 2|LS04|65|2.5
K05|LS04|LS05|30|2.5
K06|LS05|LS06|30|2.5
`)
		}},

		{File: "Stiftung Gärten/Palmenhaus Bestandsaufnahme.ods", Kind: "schedule", Saved: "ods", Book: book("Aufnahme", `
Palmenhaus - Bestandsaufnahme Beschallung||||||
aufgenommen: 14.06.2011, Hausmeisterei||||||
||||||
Raum|Lautsprecher|eingestellt auf|Lautstärkesteller|max.|angeschlossen an|Zustand
Kuppel|Tonsäule|10 W|||V1/1|ok
Kuppel|Tonsäule|10 W|||V1/1|ok
Kuppel|Tonsäule|10 W|||V1/1|brummt
Galerie|Aufbau|6 W|||V1/1|ok
Kakteenraum|Aufbau|3 W|LS 1|6 W|V1/2|ok
Kakteenraum|Aufbau|3 W|LS 1|6 W|V1/2|ok
Seminarraum|Decke|3 W|LS 2|10 W|V1/2|ok
Seminarraum|Decke|3 W|LS 2|10 W|V1/2|ok
Seminarraum|Decke|3 W|LS 2|10 W|V1/2|ok
Seminarraum|Decke|3 W|LS 2|10 W|V1/2|ok
Lager|Aufbau|6 W||||nicht angeschlossen
||||||
V1: Mischverstärker 2 x 60 W, 100-V-Technik||||||
`, bold("A1", "A4:G4")), Truth: func(t *typed.Truth) {
			t.Is("", "Palmenhaus", "plain: a survey, one loudspeaker a row; a control is loaded past its rating; one loudspeaker is not connected")
			t.Speakers("tap_v=100; line_v=100; sheet=Aufnahme", `
rows|room|model|tap_w|control|amplifier|channel
5..7|Kuppel|Tonsäule|10||V1|1
8|Galerie|Aufbau|6||V1|1
9..10|Kakteenraum|Aufbau|3|LS 1|V1|2
11..14|Seminarraum|Decke|3|LS 2|V1|2
`)
			t.Speakers("tap_v=100; line_v=100; sheet=Aufnahme; status=removed", `
rows|room|model|tap_w|note
15|Lager|Aufbau|6|not connected: draws nothing; spare is as good, installed without a channel is as good
`)
			t.Channels("line_v=100; amplifier=V1; rated_w=60", `
channel|load_w
1|36
2|18
`)
			t.Controls("", `
control|zone|rated_w|load_w|note
LS 1|Kakteenraum|6|6|exactly its rating
LS 2|Seminarraum|10|12|over its rating
`)
			t.Amplifiers("amplifier=V1", "rated_w|load_w\n120|54")
			t.Asks("Aufnahme", "15|assumed|the loudspeaker that is not connected is in no load")
		}},

		{File: "Eissportzentrum Quellrode/Matrix Räume Typen.xlsx", Kind: "schedule", Book: book("Matrix", `
Eissportzentrum Quellrode - Lautsprecher je Raum und Typ (100 V)
|||||||
|||Deckenlautsprecher||Tonsäule|Trichter|
Ebene|Raum|Kanal|3 W|6 W|20 W|15 W|Summe W
EG|Eingang|1|4|2|||24
EG|Kasse|1|1||||3
EG|Umkleiden|2|12||||36
EG|Eisfläche|3|||8||160
OG|Galerie|2|6||2||58
OG|Büro|1|2||||6
Außen|Parkplatz|4||||4|60
Außen|Rampe|4||||1|15
|Summe||25|2|10|5|362
|||||||
Kanal 1: 60 W, Kanal 2: 120 W, Kanal 3: 240 W, Kanal 4: 60 W
`, merged("D3:E3"), bold("A1", "A3:H4", "B13:H13")), Truth: func(t *typed.Truth) {
			t.Is("", "Eissportzentrum Quellrode", "matrix under two head rows: kind above, watts below; counts in the cells; ratings by channel in a sentence")
			t.Speakers("tap_v=100; line_v=100; sheet=Matrix", `
rows|room|model|count|tap_w|channel
5|Eingang|Deckenlautsprecher|4|3|1
5|Eingang|Deckenlautsprecher|2|6|1
6|Kasse|Deckenlautsprecher|1|3|1
7|Umkleiden|Deckenlautsprecher|12|3|2
8|Eisfläche|Tonsäule|8|20|3
9|Galerie|Deckenlautsprecher|6|3|2
9|Galerie|Tonsäule|2|20|2
10|Büro|Deckenlautsprecher|2|3|1
11|Parkplatz|Trichter|4|15|4
12|Rampe|Trichter|1|15|4
`)
			t.Channels("line_v=100", `
channel|rated_w|load_w|note
1|60|33|
2|120|94|
3|240|160|
4|60|75|over its rating
`)
			t.Left("Matrix", "13|total|right")
		}},
	}
}
