package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A German planner: numbered positions, Linien, a sheet a subject, abbreviations of the trade.
var german = []typed.Case{
	{File: "Projekt 19-044/ELA Lautsprecherliste 19-044.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Lautsprecher")
		p.Put("A1", `
Projekt:|19-044
Objekt:|Eissporthalle Birkenau am See
Gewerk:|Elektroakustische Anlage (ELA), 100 V
Index:|2

BMK|Raum|Linie|Lautsprecher|Bauart|Leistung (W)|Abgriff (W)|Lautstärkesteller
LS1.01|Eisfläche|1|Druckkammerlautsprecher|AP|30|15|
LS1.02|Eisfläche|1|Druckkammerlautsprecher|AP|30|15|
LS1.03|Eisfläche|1|Druckkammerlautsprecher|AP|30|15|
LS1.04|Eisfläche|1|Druckkammerlautsprecher|AP|30|15|
LS1.05|Eisfläche|1|Druckkammerlautsprecher|AP|30|15|
LS1.06|Eisfläche|1|Druckkammerlautsprecher|AP|30|15|
LS2.01|Tribüne Ost|2|Tonsäule|AP|40|20|
LS2.02|Tribüne Ost|2|Tonsäule|AP|40|20|
LS2.03|Tribüne West|2|Tonsäule|AP|40|20|
LS2.04|Tribüne West|2|Tonsäule|AP|40|20|
LS3.01|Foyer|3|Deckenlautsprecher|UP|6|6|LST 1
LS3.02|Foyer|3|Deckenlautsprecher|UP|6|6|LST 1
LS3.03|Foyer|3|Deckenlautsprecher|UP|6|6|LST 1
LS3.04|Foyer|3|Deckenlautsprecher|UP|6|6|LST 1
LS3.05|Kasse|3|Deckenlautsprecher|UP|6|1,5|LST 2
LS3.06|Schlittschuhverleih|3|Deckenlautsprecher|UP|6|3|LST 3
LS3.07|Schlittschuhverleih|3|Deckenlautsprecher|UP|6|3|LST 3
LS3.08|Schlittschuhverleih|3|Deckenlautsprecher|UP|6|3|LST 3
LS4.01|Umkleide 1|4|Deckenlautsprecher|UP|6|3|
LS4.02|Umkleide 2|4|Deckenlautsprecher|UP|6|3|
LS4.03|Umkleide 3|4|Deckenlautsprecher|UP|6|3|
LS4.04|Sanitätsraum|4|Deckenlautsprecher|UP|6|1,5|LST 4
LS4.05|Eismeister|4|Deckenlautsprecher|UP|6|3|LST 5
LS4.06|Garage|4|Druckkammerlautsprecher|AP|15|7,5|
`)
		v := p.Sheet("Verstärker")
		v.Put("A1", `
Verstärker|Ausgang|Linie|Nennleistung (W)|Leitung|Länge (m)
V1|A|1|120|NYM-J 3x2,5|92
V1|B|2|120|NYM-J 3x2,5|78
V2|A|3|60|NYM-J 3x1,5|55
V2|B|4|60|NYM-J 3x1,5|66
`)
		l := p.Sheet("Lautstärkesteller")
		l.Put("A1", `
BMK|Raum|Max. Anschlussleistung (W)|Pflichtempfang
LST 1|Foyer|35|ja
LST 2|Kasse|5|ja
LST 3|Schlittschuhverleih|10|ja
LST 4|Sanitätsraum|5|ja
LST 5|Eismeister|5|ja
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("19-044", "Eissporthalle Birkenau am See", "rated and tapped watts side by side; lines joined to a sheet of amplifiers")
		t.Revision("2", false)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100", `rows|tag|room|model|tap_w|control|amplifier|channel
7..12|LS1.01..|Eisfläche|Druckkammerlautsprecher|15||V1|A
13..14|LS2.01..|Tribüne Ost|Tonsäule|20||V1|B
15..16|LS2.03..|Tribüne West|Tonsäule|20||V1|B
17..20|LS3.01..|Foyer|Deckenlautsprecher|6|LST 1|V2|A
21|LS3.05|Kasse|Deckenlautsprecher|1.5|LST 2|V2|A
22..24|LS3.06..|Schlittschuhverleih|Deckenlautsprecher|3|LST 3|V2|A
25|LS4.01|Umkleide 1|Deckenlautsprecher|3||V2|B
26|LS4.02|Umkleide 2|Deckenlautsprecher|3||V2|B
27|LS4.03|Umkleide 3|Deckenlautsprecher|3||V2|B
28|LS4.04|Sanitätsraum|Deckenlautsprecher|1.5|LST 4|V2|B
29|LS4.05|Eismeister|Deckenlautsprecher|3|LST 5|V2|B
30|LS4.06|Garage|Druckkammerlautsprecher|7.5||V2|B`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|A|120|90
V1|B|120|80
V2|A|60|34.5
V2|B|60|21`)
		t.Amplifiers("", `amplifier|load_w
V1|170
V2|55.5`)
		t.Controls("", `control|rated_w|load_w
LST 1|35|24
LST 2|5|1.5
LST 3|10|9
LST 4|5|1.5
LST 5|5|3`)
		t.Lines("", `line|length_m|area_mm2
1|92|2.5
2|78|2.5
3|55|1.5
4|66|1.5`)
	}},

	{File: "Projekt 21-007/Mengen Botanischer Garten.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Mengengerüst")
		p.Put("A1", `
Mengengerüst Beschallung||||||||
Projekt 21-007|Botanischer Garten Hohenried|||||Spannung|100 V|

Pos.|Bereich|Lautsprecher|Stk|Abgriff|Summe W|Verstärker / Kanal|Leitung|m
1.1|Palmenhaus|Strahler 20 W|6|10 W|60|V1 / 1|2 x 2,5 mm²|74
1.2|Orchideenhaus|Strahler 20 W|4|5 W|20|V1 / 1|2 x 2,5 mm²|92
||Summe Kanal V1 / 1|10||80|||
2.1|Freigelände Nord|Pilzlautsprecher|5|20 W|100|V1 / 2|2 x 4 mm²|230
2.2|Freigelände Süd|Pilzlautsprecher|4|20 W|80|V1 / 2|2 x 4 mm²|185
||Summe Kanal V1 / 2|9||180|||
3.1|Eingang|Deckenlautsprecher|4|6 W|24|V2 / 1|2 x 1,5 mm²|38
3.2|Ausstellung|Deckenlautsprecher|8|3 W|24|V2 / 1|2 x 1,5 mm²|51
3.3|Seminarraum|Deckenlautsprecher|4|3 W|12|V2 / 1|2 x 1,5 mm²|66
||Summe Kanal V2 / 1|16||60|||
4.1|Samenbank|Deckenlautsprecher|2|1,5 W|3|V2 / 2|2 x 1,5 mm²|63
4.2|Werkhof|Druckkammer|3|15 W|45|V2 / 2|2 x 1,5 mm²|88
4.3|Maschinenhalle|Druckkammer|2|7,5 W|15|V2 / 2|2 x 1,5 mm²|97
||Summe Kanal V2 / 2|7||63|||
||Gesamt|42||383|||

Jeder Bereich hat seine eigene Leitung ab Verstärker.
Verstärker V1: 2 x 250 W
Verstärker V2: 2 x 60 W
`)
		p.Bold("A1", "A4:I4", "C7", "C10", "C14", "C18", "C19")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("21-007", "Botanischer Garten Hohenried", "subtotals a channel; amplifier and channel in one cell; ratings in lines below")
		t.Speakers("sheet=Mengengerüst; tap_v=100; line_v=100", `rows|zone|model|count|tap_w|amplifier|channel
5|Palmenhaus|Strahler 20 W|6|10|V1|1
6|Orchideenhaus|Strahler 20 W|4|5|V1|1
8|Freigelände Nord|Pilzlautsprecher|5|20|V1|2
9|Freigelände Süd|Pilzlautsprecher|4|20|V1|2
11|Eingang|Deckenlautsprecher|4|6|V2|1
12|Ausstellung|Deckenlautsprecher|8|3|V2|1
13|Seminarraum|Deckenlautsprecher|4|3|V2|1
15|Samenbank|Deckenlautsprecher|2|1.5|V2|2
16|Werkhof|Druckkammer|3|15|V2|2
17|Maschinenhalle|Druckkammer|2|7.5|V2|2`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|250|80
V1|2|250|180
V2|1|60|60
V2|2|60|63`)
		t.Amplifiers("", `amplifier|load_w
V1|260
V2|123`)
		t.Lines("", `from|to|length_m|area_mm2
V1 / 1|Palmenhaus|74|2.5
V1 / 1|Orchideenhaus|92|2.5
V1 / 2|Freigelände Nord|230|4
V1 / 2|Freigelände Süd|185|4
V2 / 1|Eingang|38|1.5
V2 / 1|Ausstellung|51|1.5
V2 / 1|Seminarraum|66|1.5
V2 / 2|Samenbank|63|1.5
V2 / 2|Werkhof|88|1.5
V2 / 2|Maschinenhalle|97|1.5`)
		t.Left("Mengengerüst", `7|subtotal|channel V1 / 1
10|subtotal|channel V1 / 2
14|subtotal|channel V2 / 1
18|subtotal|channel V2 / 2
19|total|all`)
	}},
}
