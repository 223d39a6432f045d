package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

var bestekken = []typed.Case{
	// The fitter of a Dutch maintenance firm does the yearly check of a tram depot: what he saw, what he measured, what he could not reach.
	{File: "onderhoud/werkbon 48811 remise.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Controle")
		p.Put("A1", `
Remise Oostersluis|||||Werkbon 48811
Jaarlijkse controle omroep, lijnspanning 100 V

Versterker|Lijn|Locatie|Aantal|Tap (W)|Bevinding
V1|1|Opstelspoor 1-4|6|10|in orde
||Opstelspoor 5-8|6|10|in orde
|2|Werkplaats|4|10|in orde
||Wasstraat|2|?|niet te bereiken, hoogwerker nodig
V2|1|Kleedruimte|2|3|in orde
||Planning|2|1.5|in orde, via regelaar R1 (6 W)
||Instructielokaal|4|3|in orde, via regelaar R2 (20 W)
||Magazijn|2|6|1 defect, direct vervangen, staat weer op 6 W
||Oude portiersloge|1|3|afgekoppeld en meegenomen

Meting|||||
Versterker|Lijn|Nominaal (W)|Gemeten (W)|Aardsluiting|
V1|1|240|124|geen|
V1|2|120|63|geen|
V2|1|60|36|geen|
`)
		p.Strike("A13:F13")
		p.Bold("A1", "A4:F4", "A15", "A16:E16")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("48811", "Remise Oostersluis", "blank cells carry amplifier and line on; one tap out of reach, one struck row; measured loads in a second table")
		t.Speakers("sheet=Controle; tap_v=100; line_v=100", `rows|room|count|tap_w|amplifier|channel|control
5|Opstelspoor 1-4|6|10|V1|1|
6|Opstelspoor 5-8|6|10|V1|1|
7|Werkplaats|4|10|V1|2|
8|Wasstraat|2||V1|2|
9|Kleedruimte|2|3|V2|1|
10|Planning|2|1.5|V2|1|R1
11|Instructielokaal|4|3|V2|1|R2
12|Magazijn|2|6|V2|1|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w|load_min_w
V1|1|240|120|
V1|2|120||40
V2|1|60|33|`)
		t.Amplifiers("", `amplifier|load_w
V1|
V2|33`)
		t.Controls("", `control|rated_w|load_w
R1|6|3
R2|20|12`)
		t.Left("Controle", `13|removed|struck out, disconnected and taken along`)
		t.Asks("Controle", `8|asked|tap of the two loudspeakers in the wash`)
	}},

	// A Flemish electrician numbers every piece of cable in a station as he pulls it from loudspeaker to loudspeaker, and prints the list for the cable tags.
	{File: "kabels/station Heikant omroep.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("LS")
		p.Put("A1", `
LS|Plaats|W op 100 V|Kring
LS-101|Perron 1|6|VA/1
LS-102|Perron 1|6|VA/1
LS-103|Perron 1|6|VA/1
LS-104|Perron 1|6|VA/1
LS-105|Perron 1|6|VA/1
LS-201|Perron 2|6|VA/2
LS-202|Perron 2|6|VA/2
LS-203|Perron 2|6|VA/2
LS-204|Perron 2|6|VA/2
LS-301|Onderdoorgang|3|VB/1
LS-302|Onderdoorgang|3|VB/1
LS-303|Lokettenzaal|3|VB/1
LS-304|Lokettenzaal|3|VB/1
LS-305|Wachtzaal|3|VB/1
`)
		p.Bold("A1:D1")
		q := p.Sheet("Kabels")
		q.Put("A1", `
Kabel|Van|Naar|Sectie|Lengte (m)
K101|VA/1|LS-101|2x2,5 mm²|62
K102|LS-101|LS-102|2x2,5 mm²|15
K103|LS-102|LS-103|2x2,5 mm²|15
K104|LS-103|LS-104|2x2,5 mm²|15
K105|LS-104|LS-105|2x2,5 mm²|14
K201|VA/2|LS-201|2x2,5 mm²|85
K202|LS-201|LS-202|2x2,5 mm²|15
K203|LS-202|LS-203|2x2,5 mm²|15
K204|LS-203|LS-204|2x2,5 mm²|16
K301|VB/1|LS-301|2x1,5 mm²|38
K302|LS-301|LS-302|2x1,5 mm²|9
K303|LS-302|LS-303|2x1,5 mm²|22
K304|LS-303|LS-304|2x1,5 mm²|6
K305|LS-304|LS-305|2x1,5 mm²|11.5
`)
		q.Bold("A1:E1")
		r := p.Sheet("Rack")
		r.Put("A1", `
Kring|Versterker|W|HE
VA/1|VA|120|12
VA/2|VA|120|12
VB/1|VB|60|15
`)
		r.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "plain; three lists without titles, cables from loudspeaker to loudspeaker, the site only in the file's name")
		t.Speakers("sheet=LS; tap_v=100; line_v=100; tap_w=6; amplifier=VA", `rows|tag|room|channel
2..6|LS-101..|Perron 1|1
7..10|LS-201..|Perron 2|2`)
		t.Speakers("sheet=LS; tap_v=100; line_v=100; tap_w=3; amplifier=VB; channel=1", `rows|tag|room
11..12|LS-301..|Onderdoorgang
13..14|LS-303..|Lokettenzaal
15|LS-305|Wachtzaal`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
VA|1|120|30
VA|2|120|24
VB|1|60|15`)
		t.Amplifiers("", `amplifier|load_w
VA|54
VB|15`)
		t.Lines("", `line|from|to|length_m|area_mm2
K101|VA/1|LS-101|62|2.5
K102|LS-101|LS-102|15|2.5
K103|LS-102|LS-103|15|2.5
K104|LS-103|LS-104|15|2.5
K105|LS-104|LS-105|14|2.5
K201|VA/2|LS-201|85|2.5
K202|LS-201|LS-202|15|2.5
K203|LS-202|LS-203|15|2.5
K204|LS-203|LS-204|16|2.5
K301|VB/1|LS-301|38|1.5
K302|LS-301|LS-302|9|1.5
K303|LS-302|LS-303|22|1.5
K304|LS-303|LS-304|6|1.5
K305|LS-304|LS-305|11.5|1.5`)
	}},

	// A Dutch drawing office keeps the room book of a museum: every trade has its columns, the loudspeakers stand between sockets and data points.
	{File: "ruimteboek/museum Waterpoort ruimteboek.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Ruimten")
		p.Put("A1", `
Ruimtenr|Ruimte|m²|Plafond|WCD|Data|LS aantal|LS W|LS zone|LS regelaar
'0.01|Entreehal|120|systeem|8|2|6|6|Z1|
'0.02|Garderobe|30|systeem|2|0|2|3|Z1|
'0.03|Museumzaal 1|210|stuc|12|4|8|6|Z2|
'0.04|Museumzaal 2|180|stuc|12|4|6|6|Z2|
'0.05|Technische ruimte|12|beton|6|4|0|||
'0.06|Toiletten dames|14|systeem|2|0|1|1.5|Z1|
'0.07|Toiletten heren|14|systeem|2|0|1|1.5|Z1|
'1.01|Museumzaal 3|210|stuc|12|4|8|6|Z3|
'1.02|Filmzaal|95|akoestisch|8|4|4|10|Z3|VR-1
'1.03|Educatieruimte|60|systeem|10|6|4|3|Z4|VR-2
'1.04|Vergaderkamer|28|systeem|6|4|2|3|Z4|VR-3
'1.05|Kantoor conservator|18|systeem|6|4|1|1.5|Z4|VR-4
'1.06|Berging|9|beton|1|0|0|||
'1.07|Depot|75|beton|4|2|2|3|Z4|
`)
		p.Bold("A1:J1")
		q := p.Sheet("Omroep")
		q.Put("A1", `
LS zone|Versterker|Uitgang|W nominaal|Lijn
Z1|VS1|1|60|100 V
Z2|VS1|2|120|100 V
Z3|VS2|1|120|100 V
Z4|VS2|2|60|100 V
`)
		q.Bold("A1:E1")
		r := p.Sheet("Regelaars")
		r.Put("A1", `
Code|Ruimtenr|Vermogen
VR-1|'1.02|50 W
VR-2|'1.03|20 W
VR-3|'1.04|10 W
VR-4|'1.05|10 W
`)
		r.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "room book with columns of other trades, rooms without loudspeakers, zones and controls joined from two more sheets")
		t.Speakers("sheet=Ruimten; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|amplifier|channel|control
2|Z1|Entreehal|6|6|VS1|1|
3|Z1|Garderobe|2|3|VS1|1|
4|Z2|Museumzaal 1|8|6|VS1|2|
5|Z2|Museumzaal 2|6|6|VS1|2|
7|Z1|Toiletten dames|1|1.5|VS1|1|
8|Z1|Toiletten heren|1|1.5|VS1|1|
9|Z3|Museumzaal 3|8|6|VS2|1|
10|Z3|Filmzaal|4|10|VS2|1|VR-1
11|Z4|Educatieruimte|4|3|VS2|2|VR-2
12|Z4|Vergaderkamer|2|3|VS2|2|VR-3
13|Z4|Kantoor conservator|1|1.5|VS2|2|VR-4
15|Z4|Depot|2|3|VS2|2|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
VS1|1|60|45
VS1|2|120|84
VS2|1|120|88
VS2|2|60|25.5`)
		t.Amplifiers("", `amplifier|load_w
VS1|129
VS2|113.5`)
		t.Controls("", `control|rated_w|load_w
VR-1|50|40
VR-2|20|12
VR-3|10|6
VR-4|10|1.5`)
		t.Left("Ruimten", `6|other|room without loudspeakers
14|other|room without loudspeakers`)
	}},

	// The site manager of a Flemish contractor settles changes in a theatre with the client: ordered, less, more, new quantity.
	{File: "verrekening/4407 VR03 omroep.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Latin1(typed.DOS(`
Schouwburg De Lantaarn;;;;;;;;
Dossier 4407 - Verrekening 3, omroep 100 V;;;;;;;;
;;;;;;;;
Lokaal;Luidspreker;W;Besteld;Min;Meer;Nieuw aantal;Kring;Reden
Inkomhal;inbouw;6;6;;2;8;1;donkere hoek aan de trap
Vestiaire;inbouw;3;2;;;2;1;
Balkon;kast;10;4;;;4;2;
Artiestengang;inbouw;3;6;2;;4;3;verlaagd plafond vervalt deels
Loges 1 tot 6;inbouw;1,5;6;;;6;3;
Repetitiezaal;kast;10;0;;2;2;3;vraag directie, met volumeregelaar VR1 50 W
Decoratelier;hoorn;15;2;2;;0;2;geschrapt op vraag van de preventieadviseur
Laadkade;hoorn;15;1;;1;2;2;tweede poort
Regie;inbouw;1,5;1;;;1;3;
Totaal;;;28;4;5;29;;
;;;;;;;;
Kring;Versterker;Vermogen;;;;;;
1;EV1;120 W;;;;;;
2;EV2;120 W;;;;;;
3;EV3;60 W;;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("4407", "Schouwburg De Lantaarn", "a change order: the new quantity counts, one row goes down to nothing; circuits joined to amplifiers below")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|amplifier|channel|control
5|Inkomhal|8|6|EV1|1|
6|Vestiaire|2|3|EV1|1|
7|Balkon|4|10|EV2|2|
8|Artiestengang|4|3|EV3|3|
9|Loges 1 tot 6|6|1.5|EV3|3|
10|Repetitiezaal|2|10|EV3|3|VR1
12|Laadkade|2|15|EV2|2|
13|Regie|1|1.5|EV3|3|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
EV1|1|120|54
EV2|2|120|70
EV3|3|60|42.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
EV1|120|54
EV2|120|70
EV3|60|42.5`)
		t.Controls("", `control|rated_w|load_w
VR1|50|20`)
		t.Left("", `11|removed|struck from the order, new quantity 0
14|total|sums`)
	}},

	// An insurer's inspector takes the inventory of a rowing club's boathouse; the loudspeakers are items among the rest, with values.
	{File: "taxatie/botenhuis inventaris.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Inventaris")
		p.Put("A1", `
Roeivereniging De Wilgenstroom - inventaris botenhuis
Opname voor de opstalverzekering, maart 2017

Nr.|Omschrijving|Plaats|Aantal|Bouwjaar|Nieuwwaarde (€)
1|Mengversterker 120 W, 100 V-uitgang|kantoor|1|2009|650
2|Omroepmicrofoon op voet|kantoor|1|2009|140
3|Plafondluidspreker 100 V, ingesteld op 6 W|hal|4|2009|200
4|Plafondluidspreker 100 V, ingesteld op 3 W|kleedkamer dames|2|2009|90
5|Plafondluidspreker 100 V, ingesteld op 3 W|kleedkamer heren|2|2009|90
6|Plafondluidspreker 100 V, ingesteld op 3 W|instructiezaal|2|2011|90
7|Wandluidspreker 100 V, ingesteld op 6 W|ergometerzaal|4|2011|260
8|Volumeregelaar 50 W voor de wandluidsprekers|ergometerzaal|1|2011|55
9|Hoornluidspreker 100 V, ingesteld op 15 W|botenloods|2|2009|240
10|Hoornluidspreker 100 V, ingesteld op 15 W|vlot|1|2014|120
11|Hoornluidspreker 15 W, nieuw in doos (reserve)|berging|1|2014|80
12|Videoprojector 300 W|instructiezaal|1|2015|900
13|Roeiergometer|ergometerzaal|8|2013|9600
||||Totaal|12515
`)
		p.Bold("A1", "A4:F4", "E18:F18")
		p.Format("#,##0", "F5:F18")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Roeivereniging De Wilgenstroom", "inventory with goods of all kinds; taps in the description, one amplifier and a volume control as items, one horn in its box")
		t.Speakers("sheet=Inventaris; tap_v=100; line_v=100", `rows|room|count|tap_w|note
7|hal|4|6|
8|kleedkamer dames|2|3|
9|kleedkamer heren|2|3|
10|instructiezaal|2|3|
11|ergometerzaal|4|6|unnamed
13|botenloods|2|15|
14|vlot|1|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|120|111`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|120|111`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
||50|24`)
		t.Left("Inventaris", `6|other|microphone
15|spare|new in its box
16|other|projector
17|other|ergometers
18|total|sum`)
	}},

	// The network man of a Dutch school board lists cameras and access points by switch port with their PoE watts: looks like taps on amplifier outputs.
	{File: "netwerk/poe schoolgebouw.csv", Kind: "not-a-schedule", Bytes: func() []byte {
		return []byte(`Switch;Poort;Apparaat;Ruimte;PoE (W);Kabel;Lengte (m)
SW1;1;camera;hoofdingang;7;cat 6;42
SW1;2;camera;fietsenstalling;12;cat 6;71
SW1;3;access point;aula;16;cat 6;38
SW1;4;access point;lokaal 1;16;cat 6;25
SW1;5;access point;lokaal 4;16;cat 6;33
SW1;6;telefoon;receptie;4;cat 6;12
SW1;;budget 370 W;;71;;
SW2;1;camera;gymzaal;7;cat 6;55
SW2;2;camera;schoolplein;12;cat 6;66
SW2;3;access point;mediatheek;16;cat 6;29
SW2;4;access point;lokaal 11;16;cat 6;31
SW2;5;deurstation;zij-ingang;6;cat 6;48
SW2;;budget 185 W;;57;;
`)
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "network devices with watts a port and a budget a switch: no loudspeaker in it")
	}},
}
