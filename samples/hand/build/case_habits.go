package main

import "lineaudit/samples/typed"

// habits are lists with the habits of their trades: ranges of tags, patch sheets, readings, room books, taps offered, two languages at once.
func habits() []typed.Case {
	return []typed.Case{
		{File: "Calder Fold/Pavilion speakers.xlsx", Kind: "schedule", Saved: "xlsx", Book: book("Pavilion", `
Calder Fold Arboretum - visitor pavilion
Works order 6640

Tags|Position|Type|Tap|Amp/Out
LS1-LS6|Pavilion hall|CL6|3W|A/1
LS7, LS8|Pavilion office|CL6|1.5W|A/1
LS9 to LS12|Terrace|WB10|5W|A/2
LS13|Store|CL6|1.5W|A/1
LS14-17|Tree walk|HN15|7.5W|A/2
LS18 & LS19|Gate|HN15|15W|A/2

Amplifier A: 2 x 60W, 100V line
`, bold("A1", "A4:E4")), Truth: func(t *typed.Truth) {
			t.Is("6640", "Calder Fold Arboretum", "no quantity: the tags of a row tell how many, as range, list, 'to' and '&'")
			t.Speakers("tap_v=100; line_v=100; sheet=Pavilion; amplifier=A", `
rows|tag|room|model|count|tap_w|channel
5|LS1|Pavilion hall|CL6|6|3|1
6|LS7|Pavilion office|CL6|2|1.5|1
7|LS9|Terrace|WB10|4|5|2
8|LS13|Store|CL6|1|1.5|1
9|LS14|Tree walk|HN15|4|7.5|2
10|LS18|Gate|HN15|2|15|2
`)
			t.Channels("line_v=100; amplifier=A; rated_w=60", "channel|load_w|note\n1|22.5|\n2|80|over its rating")
			t.Amplifiers("amplifier=A", "rated_w|load_w\n120|102.5")
		}},

		{File: "Ravensmoor/zones and amp patch.xls", Kind: "schedule", Saved: "xls", Book: book("Loudspeakers", `
Ravensmoor Ice Rink - PA zones, 100V line|||||
|||||
Zone|Location|Type|Qty|Tap W
Ice A|Ice, entrance half|CH30|4|30
Ice B|Ice, plant half|CH30|4|30
Stand|Stand|CH15|8|10
Foyer|Foyer|CL6|8|3
Foyer|Skate shop|CL6|3|3
Changing|Changing 1-5|CL6|10|1.5
Offices|Offices|CL6|6|1.5
Outside|Car park|CH15|4|15
`, bold("A1", "A3:E3"), and("Amp patch", `
Amp|Ch 1|Ch 2|Ch 3|Ch 4|W per channel
AMP-1|Ice A|Ice B|Stand|spare|125
AMP-2|Foyer|Changing|Offices|Outside|60
`, bold("A1:F1"))), Truth: func(t *typed.Truth) {
			t.Is("", "Ravensmoor Ice Rink", "the patch: an amplifier a row, its channels across, zone names in the cells")
			t.Speakers("tap_v=100; line_v=100; sheet=Loudspeakers", `
rows|zone|room|model|count|tap_w|amplifier|channel
4|Ice A|Ice, entrance half|CH30|4|30|AMP-1|1
5|Ice B|Ice, plant half|CH30|4|30|AMP-1|2
6|Stand|Stand|CH15|8|10|AMP-1|3
7|Foyer|Foyer|CL6|8|3|AMP-2|1
8|Foyer|Skate shop|CL6|3|3|AMP-2|1
9|Changing|Changing 1-5|CL6|10|1.5|AMP-2|2
10|Offices|Offices|CL6|6|1.5|AMP-2|3
11|Outside|Car park|CH15|4|15|AMP-2|4
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
AMP-1|1|125|120
AMP-1|2|125|120
AMP-1|3|125|80
AMP-1|4|125|0
AMP-2|1|60|33
AMP-2|2|60|15
AMP-2|3|60|9
AMP-2|4|60|60
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nAMP-1|500|320\nAMP-2|240|117")
		}},

		{File: "Penholt Ice Arena/commissioning readings.csv", Kind: "schedule", Bytes: plain(`
Penholt Ice Arena,,,,,,,,
Commissioning record - 100V lines,,,,,Engineer: RS,,Date: 11/09/2015,
Line,Serving,No. of LS,Tap W,Calculated W,Impedance ohm,Measured W,Amp rating W,Pass/Fail
L1,Arena north,4,20,80,126,79,120,Pass
L2,Arena south,4,20,80,121,83,120,Pass
L3,Concourse,8,6,48,214,47,60,Pass
L4,Changing,6,1.5,9,1150,9,60,Pass
L5,Plant,1,15,15,330,30,60,Fail - found on 30W tap
L6,Scoreboard,2,15,30,335,30,60,Pass
,,25,,262,,,,
`), Truth: func(t *typed.Truth) {
			t.Is("", "Penholt Ice Arena", "a line a row; impedance and measured watts beside the calculated; one was found on another tap")
			t.Speakers("tap_v=100; line_v=100", `
rows|room|count|tap_w|channel
4|Arena north|4|20|L1
5|Arena south|4|20|L2
6|Concourse|8|6|L3
7|Changing|6|1.5|L4
9|Scoreboard|2|15|L6
`)
			t.Speakers("tap_v=100; line_v=100; note=found on 30 W; the schedule's 15 W is what the list says", "rows|room|count|tap_w|channel\n8|Plant|1|15|L5")
			t.Channels("line_v=100", `
channel|rated_w|load_w
L1|120|80
L2|120|80
L3|60|48
L4|60|9
L5|60|15
L6|60|30
`)
			t.Left("", "10|total|right")
		}},

		{File: "Harrowmere/Learning centre.xlsx", Kind: "schedule", Saved: "xlsx", Book: book("Zone 1", `
Harrowmere learning centre
Zone 1 - Public||Amp PA1, 60W 100V

Location|Speaker|Qty|Tap (W)
Entrance|C6|3|3
Exhibition|C6|8|3
Shop|C6|2|3
||13|
`, bold("A1", "A4:D4"), and("Zone 2", `
Harrowmere learning centre
Zone 2 - Classrooms||Amp PA2, 60W 100V

Location|Speaker|Qty|Tap (W)
Classroom 1|W6|2|6
Classroom 2|W6|2|6
Lab|W6|2|3
||6|
`, bold("A1", "A4:D4")), and("Zone 3", `
Harrowmere learning centre
Zone 3 - Outside||Amp PA3, 30W 100V

Location|Speaker|Qty|Tap (W)
Courtyard|H15|3|10
Bus stop|H15|1|7.5
||4|
`, bold("A1", "A4:D4"))), Truth: func(t *typed.Truth) {
			t.Is("", "Harrowmere learning centre", "a sheet a zone; zone and amplifier only in the heading of each")
			t.Speakers("tap_v=100; line_v=100; sheet=Zone 1; zone=Zone 1 - Public; amplifier=PA1", `
rows|room|model|count|tap_w
5|Entrance|C6|3|3
6|Exhibition|C6|8|3
7|Shop|C6|2|3
`)
			t.Speakers("tap_v=100; line_v=100; sheet=Zone 2; zone=Zone 2 - Classrooms; amplifier=PA2", `
rows|room|model|count|tap_w
5|Classroom 1|W6|2|6
6|Classroom 2|W6|2|6
7|Lab|W6|2|3
`)
			t.Speakers("tap_v=100; line_v=100; sheet=Zone 3; zone=Zone 3 - Outside; amplifier=PA3", `
rows|room|model|count|tap_w
5|Courtyard|H15|3|10
6|Bus stop|H15|1|7.5
`)
			t.Channels("line_v=100", `
amplifier|rated_w|load_w|note
PA1|60|39|
PA2|60|30|
PA3|30|37.5|over its rating
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nPA1|60|39\nPA2|60|30\nPA3|30|37.5")
			t.Left("Zone 1", "8|total|right")
			t.Left("Zone 2", "8|total|right")
			t.Left("Zone 3", "8|total|right")
		}},

		{File: "Bluestem/line sheet.fods", Kind: "schedule", Saved: "fods", Book: book("Lines", `
Bluestem paging lines, 70V||||
Line|Area|Speakers|Load|Amp
1|Lobby, halls|8@2.5W clg, 2@5W wall|30W|PA-1 60W
2|Classrooms|8@5W clg|40W|PA-2 60W
3|Greenhouse|6@10W box|60W|PA-3 60W
4|Plaza, lots|3@15W horn, 1@30W horn|75W|PA-4 100W
`, bold("A1", "A2:E2")), Truth: func(t *typed.Truth) {
			t.Is("", "Bluestem", "count and tap as 8@2.5W, two groups in some cells; the amplifier's rating behind its name")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=Lines", `
rows|room|model|count|tap_w|amplifier
3|Lobby, halls|clg|8|2.5|PA-1
3|Lobby, halls|wall|2|5|PA-1
4|Classrooms|clg|8|5|PA-2
5|Greenhouse|box|6|10|PA-3
6|Plaza, lots|horn|3|15|PA-4
6|Plaza, lots|horn|1|30|PA-4
`)
			t.Channels("line_v=70.7", `
amplifier|rated_w|load_w
PA-1|60|30
PA-2|60|40
PA-3|60|60
PA-4|100|75
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nPA-1|60|30\nPA-2|60|40\nPA-3|60|60\nPA-4|100|75")
		}},

		{File: "Cold Fork Ice Center/curling addition.xlsx", Kind: "schedule", Book: book("CURLING", `
COLD FORK ICE CENTER - CURLING ADDITION|||||||||
SPEAKER SCHEDULE - 70.7V|||||||||
TAG|ROOM|SPKR⏎MODEL|RATED⏎W|TAPS⏎AVAIL.|TAP⏎SET|QTY|TOTAL⏎W|AMP⏎CH|NOTES
C1|SHEETS 1-2|SRF-30|30|30/15/7.5|15|3|45|CA-1|1
C2|SHEETS 3-4|SRF-30|30|30/15/7.5|15|3|45|CA-1|1
C3|VIEWING|CLG-16|16|16/8/4/2|4|6|24|CA-2|2
C4|LEAGUE ROOM|CLG-16|16|16/8/4/2|8|4|32|CA-2|2
C5|LOCKERS|CLG-16|16|16/8/4/2|2|4|8|CA-3|
C6|PEBBLE RM|SRF-30|30|30/15/7.5|7.5|1|7.5|CA-3|
-|SPARE|-|-|-|-|-|-|CA-4|
TOTAL||||||21|161.5||

1 - MOUNT 16 FT AFF
2 - VOLUME CONTROL VC-V (35 W) ON VIEWING, VC-C (35 W) ON LEAGUE ROOM
AMPLIFIER CA: 4 CH AT 100 W, 70.7V
`, bold("A1:A2", "A3:J3")), Truth: func(t *typed.Truth) {
			t.Is("", "Cold Fork Ice Center", "rated watts, taps offered and tap set side by side, line breaks in the heads, a spare output, numbered notes that name controls")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=CURLING; amplifier=CA", `
rows|tag|room|model|count|tap_w|channel|control
4|C1|SHEETS 1-2|SRF-30|3|15|1|
5|C2|SHEETS 3-4|SRF-30|3|15|1|
6|C3|VIEWING|CLG-16|6|4|2|VC-V
7|C4|LEAGUE ROOM|CLG-16|4|8|2|VC-C
8|C5|LOCKERS|CLG-16|4|2|3|
9|C6|PEBBLE RM|SRF-30|1|7.5|3|
`)
			t.Channels("line_v=70.7; amplifier=CA; rated_w=100", "channel|load_w\n1|90\n2|56\n3|15.5\n4|0")
			t.Controls("rated_w=35", "control|zone|load_w\nVC-V|VIEWING|24\nVC-C|LEAGUE ROOM|32")
			t.Amplifiers("amplifier=CA", "rated_w|load_w\n400|161.5")
			t.Left("CURLING", "10|other|spare output\n11|total|right")
		}},

		{File: "Quillby Planetarium/old and new lines.csv", Kind: "schedule", Bytes: plain(`
Quillby Planetarium - what is on the old 25V rack and the new 70V rack
Rack,Output,Volts,Room,Speaker,How many,Tap
Old,1,25V,Workshop,wall box,3,2 W
Old,1,25V,Storage,wall box,1,1 W
Old,2,25V,Boiler room,horn,1,4 W
New,1,70V,Lobby,ceiling,10,2.5 W
New,1,70V,Tickets,ceiling,2,1.25 W
New,2,70V,Exhibits,ceiling,16,2.5 W
New,3,70V,Roof deck,horn,3,15 W
,,,,,,
Old rack: 2 outputs of 15 W. New rack: 4 outputs of 60 W.,,,,,,
`), Truth: func(t *typed.Truth) {
			t.Is("", "Quillby Planetarium", "two racks of two voltages, told apart by a word")
			t.Speakers("tap_v=25; line_v=25; amplifier=Old", `
rows|room|model|count|tap_w|channel
3|Workshop|wall box|3|2|1
4|Storage|wall box|1|1|1
5|Boiler room|horn|1|4|2
`)
			t.Speakers("tap_v=70.7; line_v=70.7; amplifier=New", `
rows|room|model|count|tap_w|channel
6|Lobby|ceiling|10|2.5|1
7|Tickets|ceiling|2|1.25|1
8|Exhibits|ceiling|16|2.5|2
9|Roof deck|horn|3|15|3
`)
			t.Channels("", `
amplifier|channel|line_v|rated_w|load_w
Old|1|25|15|7
Old|2|25|15|4
New|1|70.7|60|27.5
New|2|70.7|60|40
New|3|70.7|60|45
`)
			t.Amplifiers("", "amplifier|load_w\nOld|11\nNew|112.5")
		}},

		{File: "Planetarium Mooswalde/Raumbuch Elektro.csv", Kind: "schedule", Bytes: ansi(`
Planetarium Mooswalde;;;Raumbuch Elektro;;;;;;
Raum-Nr.;Raum;Fläche m²;Leuchten;Steckdosen;Datendosen;Lautsprecher Anz.;Lautsprecher Typ;Abgriff W;Linie
0.01;Foyer;180;24;8;2;6;Decke;3;L1
0.02;Kasse;12;3;6;4;1;Decke;1,5;L1
0.03;Garderobe;30;4;2;0;2;Decke;3;L1
0.04;WC Damen;18;4;1;0;2;Decke;1,5;L1
0.05;WC Herren;18;4;1;0;2;Decke;1,5;L1
0.06;Technik;25;4;12;6;1;Wand;6;L2
0.07;Putzraum;5;1;1;0;0;;;
1.01;Ausstellung;320;40;16;8;8;Kugel;6;L3
1.02;Büro;22;4;8;6;1;Decke;1,5;L2
1.03;Büro;22;4;8;6;1;Decke;1,5;L2
1.04;Teeküche;8;2;4;0;0;;;
1.05;Bibliothek;60;10;8;8;2;Decke;3;L2
Summe;;720;104;75;40;26;;;
;;;;;;;;;
Beschallung: 100-V-Technik, L1 60 W, L2 60 W, L3 60 W;;;;;;;;;
`), Truth: func(t *typed.Truth) {
			t.Is("", "Planetarium Mooswalde", "a room book of all trades: luminaires and sockets are counted beside the loudspeakers; rooms without any")
			t.Speakers("tap_v=100; line_v=100", `
rows|room|model|count|tap_w|channel
3|Foyer|Decke|6|3|L1
4|Kasse|Decke|1|1.5|L1
5|Garderobe|Decke|2|3|L1
6|WC Damen|Decke|2|1.5|L1
7|WC Herren|Decke|2|1.5|L1
8|Technik|Wand|1|6|L2
10|Ausstellung|Kugel|8|6|L3
11|Büro|Decke|1|1.5|L2
12|Büro|Decke|1|1.5|L2
14|Bibliothek|Decke|2|3|L2
`)
			t.Channels("line_v=100; rated_w=60", "channel|load_w\nL1|31.5\nL2|15\nL3|48")
			t.Left("", "9|other|no loudspeaker\n13|other|no loudspeaker\n15|total|right")
		}},

		{File: "Eissportzentrum Quellrode/Messprotokoll Linien.xlsx", Kind: "schedule", Book: book("Messung", `
Eissportzentrum Quellrode - Messprotokoll Lautsprecherlinien (100 V)

Linie|Verstärker|Nennleistung|Soll|Impedanz gemessen|Ist|Abweichung
1|V1|60 W|31,5 W|322 Ω|31,1 W|-1 %
2|V2|250 W|200 W|51 Ω|196 W|-2 %
3|V3|120 W|80 W|88 Ω|114 W|+42 %
`, bold("A1", "A3:G3"), and("Lautsprecher", `
Linie|Raum|Typ|Anz.|Abgriff
1|Eingang|Decke|6|3 W
1|Umkleiden|Decke|9|1,5 W
2|Eisfläche|Säule|10|20 W
3|Tribüne|Säule|8|10 W
`, bold("A1:E1"))), Truth: func(t *typed.Truth) {
			t.Is("", "Eissportzentrum Quellrode", "a measuring record: nominal, wanted and measured watts and ohms beside one another; the loudspeakers on a second sheet")
			t.Speakers("tap_v=100; line_v=100; sheet=Lautsprecher", `
rows|room|model|count|tap_w|amplifier|channel
2|Eingang|Decke|6|3|V1|1
3|Umkleiden|Decke|9|1.5|V1|1
4|Eisfläche|Säule|10|20|V2|2
5|Tribüne|Säule|8|10|V3|3
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
V1|1|60|31.5
V2|2|250|200
V3|3|120|80
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nV1|60|31.5\nV2|250|200\nV3|120|80")
		}},

		{File: "Botenhuis Wierdermeer/tweetalig - bilingue.xls", Kind: "schedule", Saved: "xls", Book: book("LS-HP", `
Hangar nautique / Botenhuis De Wiers
Luidsprekers / Haut-parleurs - 100 V
Dossier 2011-B-07

Lokaal / Local|Type|Aantal / Nombre|Vermogen / Puissance (W)|Lijn / Ligne|Versterker / Ampli
Inkom / Entrée|plafond|4|3|1|A1
Vestiaire D|plafond|2|1,5|1|A1
Vestiaire H|plafond|2|1,5|1|A1
Loods / Hangar|projector|6|10|2|A2
Atelier|muur / mural|2|6|2|A2
Steiger / Ponton|hoorn / pavillon|3|15|3|A3
Totaal / Total||19|||

A1 : 30 W, A2 : 120 W, A3 : 60 W
`, bold("A1:A2", "A5:F5")), Truth: func(t *typed.Truth) {
			t.Is("2011-B-07", "De Wiers", "two languages in every head and in many cells")
			t.Speakers("tap_v=100; line_v=100; sheet=LS-HP", `
rows|room|model|count|tap_w|amplifier|channel
6|Inkom / Entrée|plafond|4|3|A1|1
7|Vestiaire D|plafond|2|1.5|A1|1
8|Vestiaire H|plafond|2|1.5|A1|1
9|Loods / Hangar|projector|6|10|A2|2
10|Atelier|muur / mural|2|6|A2|2
11|Steiger / Ponton|hoorn / pavillon|3|15|A3|3
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
A1|1|30|18
A2|2|120|72
A3|3|60|45
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nA1|30|18\nA2|120|72\nA3|60|45")
			t.Left("LS-HP", "12|total|")
		}},

		{File: "Orto botanico Collefiorito/computo altoparlanti.ods", Kind: "schedule", Saved: "ods", Book: book("Computo", `
ORTO BOTANICO DI COLLEFIORITO - COMPUTO ALTOPARLANTI|||||
N. ord.|Designazione|Zona|U.M.|Q.tà|Presa W
1|Altoparlante da incasso 6 W|Z1 Ingresso|cad|6|3
2|Altoparlante da incasso 6 W|Z1 Servizi|cad|4|1,5
3|Proiettore sonoro 20 W|Z2 Serre|cad|8|10
4|Proiettore sonoro 20 W|Z2 Vivaio|cad|2|5
5|Tromba 30 W|Z3 Esterno|cad|4|15
6|Regolatore di volume 12 W per Z1 Servizi|Z1 Servizi|cad|1|
7|Amplificatore 3 x 120 W 100 V, un'uscita per zona|Locale tecnico|cad|1|
8|Cavo 2x1,5 mm²|-|m|650|
`, bold("A1", "A2:F2")), Truth: func(t *typed.Truth) {
			t.Is("", "Orto botanico di Collefiorito", "a bill with the set watts in a column of its own; control, amplifier and cable are items; an output a zone")
			t.Speakers("tap_v=100; line_v=100; sheet=Computo", `
rows|zone|room|model|count|tap_w|channel|note
3|Z1|Ingresso|Altoparlante da incasso 6 W|6|3|1|
4|Z1|Servizi|Altoparlante da incasso 6 W|4|1.5|1|unnamed control
5|Z2|Serre|Proiettore sonoro 20 W|8|10|2|
6|Z2|Vivaio|Proiettore sonoro 20 W|2|5|2|
7|Z3|Esterno|Tromba 30 W|4|15|3|
`)
			t.Channels("line_v=100; rated_w=120", "channel|load_w\n1|24\n2|90\n3|60")
			t.Controls("note=unnamed", "zone|rated_w|load_w\nServizi|12|6")
			t.Amplifiers("", "rated_w|load_w|note\n360|174|unnamed")
			t.Left("Computo", "8|control|\n9|amplifier|\n10|cable|")
		}},
	}
}
