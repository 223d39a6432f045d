package main

import "lineaudit/samples/typed"

func joins() []typed.Case {
	return []typed.Case{
		{File: "Orrin Gate/22-417 PA devices.xlsx", Kind: "schedule", Book: book("Devices", `
ORRIN GATE GARDENS|||||
Contract no. 22/417 - PA devices, 100 V line|||||

Device|Zone|Position|Kind|Qty|Tap
D-01|Zone 1|Bay 1|Column|3|10 W
D-02|Zone 1|Bay 2|Column|3|10 W
D-03|Zone 2|Hall|Ceiling|6|3 W
D-04|Zone 2|Desk|Ceiling|2|1.5 W
D-05|Zone 3|Lawn|Horn|4|15 W
D-06|Zone 3|Pond|Horn|2|15 W
`, bold("A1", "A4:F4"), and("Zones", `
Zone|Name|Fed by
Z-01|Orangery|Amp 1 / A
Z-02|Reception|Amp 1 / B
Z-03|Grounds|Amp 2 / A
`, bold("A1:C1")), and("Rack", `
Amplifier|Channel|Power
AMP-01|CH-A|120 W
AMP-01|CH-B|60 W
AMP-02|CH-A|120 W
AMP-02|CH-B|120 W
`, bold("A1:C1")), and("Volume controls", `
Control|Zone|Rating
VC-1|1 - Orangery|60 W
VC-2|2 - Reception|24 W
`, bold("A1:C1"))), Truth: func(t *typed.Truth) {
			t.Is("22/417", "Orrin Gate Gardens", "zones, amplifiers and outputs written differently on each of four sheets; a control takes its whole zone")
			t.Speakers("tap_v=100; line_v=100; sheet=Devices", `
rows|tag|zone|room|model|count|tap_w|amplifier|channel|control
5|D-01|Zone 1|Orangery|Column|3|10|Amp 1|A|VC-1
6|D-02|Zone 1|Orangery|Column|3|10|Amp 1|A|VC-1
7|D-03|Zone 2|Reception|Ceiling|6|3|Amp 1|B|VC-2
8|D-04|Zone 2|Reception|Ceiling|2|1.5|Amp 1|B|VC-2
9|D-05|Zone 3|Grounds|Horn|4|15|Amp 2|A|
10|D-06|Zone 3|Grounds|Horn|2|15|Amp 2|A|
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
Amp 1|A|120|60
Amp 1|B|60|21
Amp 2|A|120|90
Amp 2|B|120|0
`)
			t.Controls("", "control|zone|rated_w|load_w\nVC-1|Zone 1|60|60\nVC-2|Zone 2|24|21")
			t.Amplifiers("", "amplifier|rated_w|load_w\nAmp 1|180|81\nAmp 2|240|90")
		}},

		{File: "Saltgrass/09-033 wire schedule.xlsx", Kind: "schedule", Book: book("SPK", `
SALTGRASS BOTANICAL GARDEN - TRAM STOPS|||||
JOB NO. 09-033|70V|||||

TAG|STOP|TYPE|QTY|TAP|CKT
S1|MEADOW|WALL|2|10W|C1
S2|RIDGE|WALL|2|10W|C1
S3|DEPOT CANOPY|CEILING|6|5W|C2
S4|DEPOT OFFICE|CEILING|2|1.25W|C2
S5|OVERLOOK|HORN|3|15W|C3
S6|BIRD BLIND|HORN|1|7.5W|C3
`, bold("A1:A2", "A4:F4"), and("WIRE", `
CKT|AMP|CH|WIRE|LENGTH|PATH
C1|AMP-1|1|14-2 CCA|220 FT|DIRECT BURIAL
C2|AMP-1|2|18 AWG OFC|95'|ABOVE CEILING
C3|AMP-2|1|#12-2|1,180'|CONDUIT
`, bold("A1:F1")), and("AMP", `
AMP|RATING
AMP-1|2 x 120W @ 70V
AMP-2|1 x 240W @ 70V
`, bold("A1:B1"))), Truth: func(t *typed.Truth) {
			t.Is("09-033", "Saltgrass Botanical Garden", "conductors as 14-2 CCA, 18 AWG OFC and #12-2, a thousands mark in a length; ratings by frame")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=SPK; note=the circuit as a section for a zone is as good", `
rows|tag|room|model|count|tap_w|amplifier|channel
5|S1|MEADOW|WALL|2|10|AMP-1|1
6|S2|RIDGE|WALL|2|10|AMP-1|1
7|S3|DEPOT CANOPY|CEILING|6|5|AMP-1|2
8|S4|DEPOT OFFICE|CEILING|2|1.25|AMP-1|2
9|S5|OVERLOOK|HORN|3|15|AMP-2|1
10|S6|BIRD BLIND|HORN|1|7.5|AMP-2|1
`)
			t.Channels("line_v=70.7", `
amplifier|channel|rated_w|load_w
AMP-1|1|120|40
AMP-1|2|120|32.5
AMP-2|1|240|52.5
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nAMP-1|240|72.5\nAMP-2|240|52.5")
			t.Lines("note=one length a circuit", `
line|length_m|area_mm2|material
C1|67.056|2.0809|copper-clad aluminium
C2|28.956|0.823|copper
C3|359.664|3.3088|copper
`)
		}},

		{File: "Birkenrode/Kennblatt Rufkreise.csv", Kind: "schedule", Bytes: ansi(`
Eishalle Birkenrode - Kennblatt der Rufkreise;;;;
Betreiber: Stiftung, Stand Mai 2011;;;;
;;;;
Rufkreis;RK1;RK2;RK3;RK4
Bereich;Eisfläche;Tribünen;Foyer;Umkleiden
Lautsprecherart;Druckkammer;Tonsäule;Decke;Decke
Anzahl;6;10;14;12
Abgriff in W;30;20;3;1,5
Kreisleistung in W;180;200;42;18
Verstärker;V1;V2;V3;V3
Ausgang;1;1;1;2
Nennleistung in W;250;250;120;60
Linienspannung;100 V;100 V;100 V;100 V
Leitung;2x2,5 mm²;2x2,5 mm²;2x1,5 mm²;2x1,5 mm²
Länge in m;140;110;85;72,5
`), Truth: func(t *typed.Truth) {
			t.Is("", "Eishalle Birkenrode", "German text file on its side: a circuit a column")
			t.Speakers("tap_v=100; line_v=100", `
rows|zone|room|model|count|tap_w|amplifier|channel
B|RK1|Eisfläche|Druckkammer|6|30|V1|1
C|RK2|Tribünen|Tonsäule|10|20|V2|1
D|RK3|Foyer|Decke|14|3|V3|1
E|RK4|Umkleiden|Decke|12|1.5|V3|2
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
V1|1|250|180
V2|1|250|200
V3|1|120|42
V3|2|60|18
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nV1|250|180\nV2|250|200\nV3|180|60")
			t.Lines("material=copper; note=one length a circuit", `
zone|length_m|area_mm2
RK1|140|2.5
RK2|110|2.5
RK3|85|1.5
RK4|72.5|1.5
`)
		}},

		{File: "Lagoscuro/rimessa barche diffusori.xlsx", Kind: "schedule", Book: book("Diffusori", `
RIMESSA BARCHE DI LAGOSCURO|||||
Diffusori dell'impianto microfonico, linea 100 V|||||

PIANO TERRA - Amplificatore A, uscita 1 (120 W)|||||
Pos.|Locale|Diffusore|Q.tà|Presa|Totale
1|Deposito barche|Colonna|4|10 W|40 W
2|Officina|idem|2|10 W|20 W
3|Spogliatoi|Plafoniera|6|1,5 W|9 W
Totale|||12||69 W

PRIMO PIANO - Amplificatore A, uscita 2 (60 W)|||||
Pos.|Locale|Diffusore|Q.tà|Presa|Totale
4|Sala soci|Plafoniera|4|3 W|12 W
5|Segreteria|idem|1|1,5 W|1,5 W
6|Corridoio|idem|3|1,5 W|4,5 W
Totale|||8||20 W

PONTILE - Amplificatore B, uscita 1 (120 W)|||||
Pos.|Locale|Diffusore|Q.tà|Presa|Totale
7|Pontile|Tromba|4|15 W|60 W
8|Scivolo|idem|1|30 W|30 W
Totale|||5||90 W
`, bold("A1", "A4", "A5:F5", "A11", "A12:F12", "A18", "A19:F19")), Truth: func(t *typed.Truth) {
			t.Is("", "Rimessa barche di Lagoscuro", "Italian sections by output with its rating in the title, 'idem' for the kind above, one subtotal of 20 W where the rows come to 18 W")
			t.Speakers("tap_v=100; line_v=100; sheet=Diffusori; note=section for a zone is as good", `
rows|tag|room|model|count|tap_w|amplifier|channel
6|1|Deposito barche|Colonna|4|10|A|1
7|2|Officina|Colonna|2|10|A|1
8|3|Spogliatoi|Plafoniera|6|1.5|A|1
13|4|Sala soci|Plafoniera|4|3|A|2
14|5|Segreteria|Plafoniera|1|1.5|A|2
15|6|Corridoio|Plafoniera|3|1.5|A|2
20|7|Pontile|Tromba|4|15|B|1
21|8|Scivolo|Tromba|1|30|B|1
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
A|1|120|69
A|2|60|18
B|1|120|90
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nA|180|87\nB|120|90")
			t.Left("Diffusori", "9|total|right\n12|header|repeated\n16|total|wrong: 20 W for 18 W\n19|header|repeated\n22|total|right")
		}},

		{File: "central/relacion de obras.xlsx", Kind: "schedule", Book: book("Obras", `
Relación de obras de megafonía (todas en línea de 100 V)||||||||

Obra|Emplazamiento|Año|Zona|Altavoz|Uds.|W por ud.|Salida|W de la salida
M-101|Embarcadero Fuente Lirio|2003|Muelle|Bocina|4|15|1|120
|||Hangar|Caja mural|4|6|2|60
|||Vestuarios|Empotrable|5|1.5|3|60
M-107|Pista de hielo Sierra Alba|2005|Pista|Bocina|6|30|1|240
|||Gradas|Columna|8|10|2|120
M-112|Jardín Botánico de Peñarrota|2008|Rosaleda|Seta|6|15|1|120
|||Vivero|Columna|3|6|2|60
|||Acceso|Empotrable|4|3|2|60
`, bold("A1", "A3:I3"), merged("A4:A6", "B4:B6", "C4:C6", "A7:A8", "B7:B8", "C7:C8", "A9:A11", "B9:B11", "C9:C11")), Truth: func(t *typed.Truth) {
			t.Is("M-101", "Embarcadero Fuente Lirio", "a Spanish register of jobs, job, site and year merged over their rows")
			common := "tap_v=100; line_v=100; sheet=Obras"
			t.Speakers(common, `
rows|zone|model|count|tap_w|channel
4|Muelle|Bocina|4|15|1
5|Hangar|Caja mural|4|6|2
6|Vestuarios|Empotrable|5|1.5|3
`)
			t.Channels("line_v=100", "channel|rated_w|load_w\n1|120|60\n2|60|24\n3|60|7.5")
			t.Also("M-107", "Pista de hielo Sierra Alba", "second job")
			t.Speakers(common, `
rows|zone|model|count|tap_w|channel
7|Pista|Bocina|6|30|1
8|Gradas|Columna|8|10|2
`)
			t.Channels("line_v=100", "channel|rated_w|load_w\n1|240|180\n2|120|80")
			t.Also("M-112", "Jardín Botánico de Peñarrota", "third job")
			t.Speakers(common, `
rows|zone|model|count|tap_w|channel
9|Rosaleda|Seta|6|15|1
10|Vivero|Columna|3|6|2
11|Acceso|Empotrable|4|3|2
`)
			t.Channels("line_v=100", "channel|rated_w|load_w\n1|120|90\n2|60|30")
		}},

		{File: "Lindewaard/luidsprekers met status.xlsx", Kind: "schedule", Book: book("Status", `
Hortus Lindewaard - arboretum|||||||
Omroep 100 V, stand van zaken augustus 2022|||||||

Nr|Plaats|Type|Aantal|Tap (W)|Zone|Uitgang|Status
1|Poortgebouw|inbouw|4|3|Poort|1|bestaand
2|Poortgebouw, balie|inbouw|1|1,5|Poort|1|bestaand
3|Eikenlaan|zuil|6|10|Park|2|nieuw
4|Eikenlaan|hoorn|2|15|Park|2|vervalt
5|Vijver|zuil|3|10|Park|2|nieuw
6|Schuur|hoorn|1|15|Werf|3|bestaand
7|Speelveld|zuil|4|10|Park|2|toekomstig
8|Magazijn|zuil|2||||reserve
9|Kiosk|opbouw|2|6|||door derden

Uitgang|Vermogen (W)
1|60
2|120
3|60
`, bold("A1", "A4:H4", "A15:B15")), Truth: func(t *typed.Truth) {
			t.Is("", "Hortus Lindewaard", "a Dutch status column: existing, new, to go, future, spare, by others")
			t.Speakers("tap_v=100; line_v=100; sheet=Status", `
rows|tag|room|model|count|tap_w|zone|channel|status
5|1|Poortgebouw|inbouw|4|3|Poort|1|installed
6|2|Poortgebouw, balie|inbouw|1|1.5|Poort|1|installed
7|3|Eikenlaan|zuil|6|10|Park|2|installed
8|4|Eikenlaan|hoorn|2|15|Park|2|removed
9|5|Vijver|zuil|3|10|Park|2|installed
10|6|Schuur|hoorn|1|15|Werf|3|installed
11|7|Speelveld|zuil|4|10|Park|2|future
12|8|Magazijn|zuil|2||||spare
`)
			t.Channels("line_v=100", "channel|rated_w|load_w\n1|60|13.5\n2|120|90\n3|60|15")
			t.Left("Status", "8|removed|\n11|future|\n12|spare|\n13|by others|")
		}},

		{File: "Valbreuil/pavillon accueil avant travaux.xls", Kind: "schedule", Saved: "xls", Book: book("Relevé", `
Jardin botanique de Valbreuil - Pavillon d'accueil||||||||
État des lieux avant travaux - ligne 100 V||||||||
Dossier n° 2020-03||||||||

N°|Local|HP|Qté|Prise|Zone|Départ|Situation|Observations
1|Hall|Encastré|6 u|3 W|Accueil|D1|existant conservé|
2|'"|Encastré|2 u|1,5 W|'"|'"|existant conservé|bas plafond
3|Salle pédagogique|Encastré|4 u|3 W|Pédagogie|D2|neuf|
4|Salle d'exposition|Saillie|4 u|6 W|Pédagogie|D2|neuf|
5|Parvis|Projecteur|3 u|à confirmer|Extérieur|D3|neuf|selon essai sur place
6|Jardin d'hiver|Saillie|2 u|6 W|Extérieur|D3|existant conservé|
7|Couloir|Encastré|3 u|1,5 W|Pédagogie|D2|à déposer|
8|Parking|Pavillon|2 u|15 W|||hors lot|lot VRD
Total||||||||

Départ|Ampli|Puissance
D1|1 - sortie 1|60 W
D2|1 - sortie 2|60 W
D3|2 - sortie 1|120 W
`, bold("A1:A3", "A5:I5", "A16:C16")), Truth: func(t *typed.Truth) {
			t.Is("2020-03", "Jardin botanique de Valbreuil", "French survey: ditto marks, a tap to be confirmed, a situation column, an empty total; outputs by departure")
			t.Speakers("tap_v=100; line_v=100; sheet=Relevé", `
rows|tag|room|model|count|tap_w|zone|amplifier|channel|status
6|1|Hall|Encastré|6|3|Accueil|1|1|installed
7|2|Hall|Encastré|2|1.5|Accueil|1|1|installed
8|3|Salle pédagogique|Encastré|4|3|Pédagogie|1|2|installed
9|4|Salle d'exposition|Saillie|4|6|Pédagogie|1|2|installed
10|5|Parvis|Projecteur|3||Extérieur|2|1|installed
11|6|Jardin d'hiver|Saillie|2|6|Extérieur|2|1|installed
12|7|Couloir|Encastré|3|1.5|Pédagogie|1|2|removed
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w|load_min_w
1|1|60|21|
1|2|60|36|
2|1|120||12
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\n1|120|57\n2|120|")
			t.Left("Relevé", "12|removed|\n13|by others|another trade's\n14|total|empty")
			t.Asks("Relevé", "10|asked|tap of the projectors: to be confirmed")
		}},

		{File: "Seefurt/Bestand und Umbau.ods", Kind: "schedule", Saved: "ods", Book: book("Umbau", `
Bootshaus Seefurt - Umbau der Beschallung|||||||
Projekt 1612-2|100-V-Technik||||||

Pos|Ort|Lautsprecher|Stk|W|Bereich|Ausgang|Vermerk
1|Bootshalle|Wandlautsprecher|6|6|Halle|V1.1|vorh.
2|Werkstatt|wie vor|2|6|Halle|V1.1|vorh.
3|Steg 1|Druckkammer|2|15|Außen|V1.2|neu
4|Steg 2|wie vor|2|15|Außen|V1.2|entfällt
5|Slip|wie vor|1|30|Außen|V1.2|neu
6|Umkleide D|Deckenlautsprecher|4|1,5|Innen|V1.3|vorh.
7|Umkleide H|wie vor|4|1,5|Innen|V1.3|vorh.
8|Schulungsraum|wie vor|6|3|Innen|V1.3|neu
9|Zeltplatz|Druckkammer|2|15|||bauseits
10|Lager|Deckenlautsprecher|3|||| Reserve

V1: 3 Ausgänge zu je 80 W
`, bold("A1", "A4:H4")), Truth: func(t *typed.Truth) {
			t.Is("1612-2", "Bootshaus Seefurt", "German remarks for existing, dropped, by others and reserve; 'wie vor' for the kind above")
			t.Speakers("tap_v=100; line_v=100; sheet=Umbau", `
rows|tag|room|model|count|tap_w|zone|amplifier|channel|status
5|1|Bootshalle|Wandlautsprecher|6|6|Halle|V1|1|installed
6|2|Werkstatt|Wandlautsprecher|2|6|Halle|V1|1|installed
7|3|Steg 1|Druckkammer|2|15|Außen|V1|2|installed
8|4|Steg 2|Druckkammer|2|15|Außen|V1|2|removed
9|5|Slip|Druckkammer|1|30|Außen|V1|2|installed
10|6|Umkleide D|Deckenlautsprecher|4|1.5|Innen|V1|3|installed
11|7|Umkleide H|Deckenlautsprecher|4|1.5|Innen|V1|3|installed
12|8|Schulungsraum|Deckenlautsprecher|6|3|Innen|V1|3|installed
14|10|Lager|Deckenlautsprecher|3|||||spare
`)
			t.Channels("line_v=100; amplifier=V1; rated_w=80", "channel|load_w\n1|48\n2|60\n3|30")
			t.Amplifiers("amplifier=V1", "rated_w|load_w\n240|138")
			t.Left("Umbau", "8|cancelled|\n13|by others|\n14|spare|")
		}},
	}
}
