package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

var sundryGerman2 = []typed.Case{
	// A draughtsman's extract of the room book for a museum wing; circuits tie the rooms to the rack on the second sheet.
	{File: "sundry/2031-7 Raumbuch Beschallung.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Raumbuch")
		p.Put("A1", `
Museum für Glas und Licht, Anbau Ost||||||Projekt|2031-7
Raumbuch, Auszug Beschallung, 100 V
Raum-Nr.|Raumname|Fläche m²|LS-Bauart|Stück|Stufe W|Steller|Kreis
E.01|Windfang|12|Einbau|1|3||K1
E.02|Foyer|140|Einbau|8|3||K1
E.03|Museumsladen|55|Einbau|4|3|ST1|K1
E.04|Garderobe|30|Einbau|2|1.5||K1
E.05|Lager|24|keine Beschallung
'1.01|Schausaal Glas|210|Säule|4|12||K2
'1.02|Schausaal Licht|180|Säule|4|12||K2
'1.03|Kabinett|40|Einbau|2|6|ST2|K2
'2.01|Werkstatt|90|Aufbau|4|6|ST3|K3
'2.02|Seminarraum|65|Einbau|4|3|ST4|K3
'2.03|Büro|22|Einbau|1|1.5||K3
'2.04|Technik|18|Aufbau|1|6||K3
`)
		p.Bold("A1", "A3:H3")
		q := p.Sheet("Zentrale")
		q.Put("A1", `
Verstärkergestell in Raum 2.04
Gerät|Ausgang|belegt mit|Nennleistung W
LV1|1|K1|80
LV1|2|K2|160
LV2|1|K3|80
LV2|2|Reserve|80

Lautstärkesteller
Bez.|Einbauort|Belastbarkeit W
ST1|E.03|20
ST2|'1.03|20
ST3|'2.01|50
ST4|'2.02|20
`)
		q.Bold("A1", "A2:D2", "A8", "A9:C9")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2031-7", "Museum für Glas und Licht, Anbau Ost", "a room book joined by circuits to the rack sheet, where a second table lists the controls; a room without sound, a free output")
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; amplifier=LV1; channel=1", `rows|room|count|tap_w|control
4|Windfang|1|3|
5|Foyer|8|3|
6|Museumsladen|4|3|ST1
7|Garderobe|2|1.5|`)
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; amplifier=LV1; channel=2", `rows|room|count|tap_w|control
9|Schausaal Glas|4|12|
10|Schausaal Licht|4|12|
11|Kabinett|2|6|ST2`)
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; amplifier=LV2; channel=1", `rows|room|count|tap_w|control
12|Werkstatt|4|6|ST3
13|Seminarraum|4|3|ST4
14|Büro|1|1.5|
15|Technik|1|6|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
LV1|1|80|42
LV1|2|160|108
LV2|1|80|43.5
LV2|2|80|0`)
		t.Amplifiers("", `amplifier|load_w
LV1|150
LV2|43.5`)
		t.Controls("", `control|rated_w|load_w
ST1|20|12
ST2|20|12
ST3|50|24
ST4|20|12`)
		t.Left("Raumbuch", `8|none|room without loudspeakers`)
	}},

	// An apprentice counts a school by the tap he reads on each transformer: a matrix of counts.
	{File: "sundry/Zählung Realschule.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Zählung")
		p.Put("A1", `
Realschule Am Mühlgraben, Zählung der Lautsprecher am 12.9.
Der Verstärker steht im Sekretariat, drei Linienausgänge, jeder 120 W bei 100 V

Raum|Linie|Anzahl Lautsprecher mit Abgriff||||Bemerkung
||1,5 W|3 W|6 W|15 W
Flur EG|1||6
Lehrerzimmer|1||2||||mit Drehregler 12 W
Toiletten EG|1|4
Aula|1|||6
Flur OG|2||6
Klassen 201 bis 208|2||8||||in jeder einer
Toiletten OG|2|4
Werkraum|2|||2
Turnhalle|3|||2|4|die mit 6 W in den Umkleiden
Pausenhof|3||||3|am Giebel
Summe||8|22|10|7
`)
		p.Merge("C4:F4", "A4:A5", "B4:B5", "G4:G5")
		p.Bold("A4:G5", "A16:F16")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Realschule Am Mühlgraben", "a matrix of counts by tap under a merged title; one amplifier without a name with three outputs; one control without a name")
		t.Speakers("sheet=Zählung; tap_v=100; line_v=100; channel=1", `rows|room|count|tap_w|note
6|Flur EG|6|3|
7|Lehrerzimmer|2|3|unnamed
8|Toiletten EG|4|1.5|
9|Aula|6|6|`)
		t.Speakers("sheet=Zählung; tap_v=100; line_v=100; channel=2", `rows|room|count|tap_w
10|Flur OG|6|3
11|Klassen 201 bis 208|8|3
12|Toiletten OG|4|1.5
13|Werkraum|2|6`)
		t.Speakers("sheet=Zählung; tap_v=100; line_v=100; channel=3", `rows|room|count|tap_w
14|Turnhalle|2|6
14|Turnhalle|4|15
15|Pausenhof|3|15`)
		t.Channels("line_v=100; rated_w=120", `amplifier|channel|load_w
|1|66
|2|60
|3|117`)
		t.Amplifiers("", `amplifier|load_w
|243`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|12|6`)
		t.Left("Zählung", `16|total|sums`)
	}},
}
