package main

import (
	"time"

	"lineaudit/samples/typed"
)

func surveys() []typed.Case {
	return []typed.Case{
		{File: "Tamarack Bend/14-207 spkr runs.xlsx", Kind: "schedule", Book: book("SPKRS", `
TAMARACK BEND BOATHOUSE|||||||
70V PAGING AND BACKGROUND MUSIC - FIELD TAGS|||||||
JOB 14-207|||||||

TAGS|QTY|AREA|TAP|AMP / CH|VC|WIRE|HOMERUN
S101-S108, S110|9|Boat bay|5W|AMP 1 CH A||16/2|120'
S111-S114|4|Rigging shop|T-5|AMP 1 CH A||16/2|85'-6"
S201..S206|6|Lobby|2.5W|AMP 1 CH B|VC-2|18/2|64'
S207|1|Office|1/2 W|AMP 1 CH B|VC-1|18/2|40'
H301-H303|3|Dock|15W|AMP 2 CH A||14/2|310'
H304|1|Launch ramp|30W|AMP 2 CH A||14/2|402'-6"
H305|1|Finish tower|15W|AMP 2 CH A||12/2|1,250'
`, bold("A1:A3", "A5:H5"), and("RACK", `
AMP|CH|RATED
AMP 1|A|100W @ 70V
AMP 1|B|100W @ 70V
AMP 2|A|250W @ 70V
AMP 2|B|250W @ 4Ω

VC|RATED|LOCATION
VC-1|10W|Office
VC-2|35W|Front desk
`, bold("A1:C1", "A7:C7"))), Truth: func(t *typed.Truth) {
			t.Is("14-207", "Tamarack Bend Boathouse", "tags in ranges, taps as T-5 and 1/2 W, home runs in feet and inches, an output rated at 4 ohm only")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=SPKRS", `
rows|tag|room|count|tap_w|amplifier|channel|control
6|S101-S108, S110|Boat bay|9|5|AMP 1|A|
7|S111-S114|Rigging shop|4|5|AMP 1|A|
8|S201..S206|Lobby|6|2.5|AMP 1|B|VC-2
9|S207|Office|1|0.5|AMP 1|B|VC-1
10|H301-H303|Dock|3|15|AMP 2|A|
11|H304|Launch ramp|1|30|AMP 2|A|
12|H305|Finish tower|1|15|AMP 2|A|
`)
			t.Channels("", `
amplifier|channel|line_v|rated_w|load_w|note
AMP 1|A|70.7|100|65|
AMP 1|B|70.7|100|15.5|
AMP 2|A|70.7|250|90|
AMP 2|B|||0|rated at 4 ohm only, nothing on it
`)
			t.Controls("", "control|rated_w|load_w\nVC-1|10|0.5\nVC-2|35|15")
			t.Amplifiers("", "amplifier|load_w\nAMP 1|80.5\nAMP 2|90")
			t.Lines("material=copper", `
from|to|length_m|area_mm2|note
AMP 1 CH A|S101-S108, S110|36.576|1.3087|home run
AMP 1 CH A|S111-S114|26.0604|1.3087|home run
AMP 1 CH B|S201..S206|19.5072|0.823|home run
AMP 1 CH B|S207|12.192|0.823|home run
AMP 2 CH A|H301-H303|94.488|2.0809|home run
AMP 2 CH A|H304|122.682|2.0809|home run
AMP 2 CH A|H305|381|3.3088|home run
`)
		}},

		{File: "Skelby/survey of existing speakers.xlsx", Kind: "schedule", Book: book("Survey", `
Skelby Ice Rink||||||||
Loudspeaker survey before tender, 100 V system||||||||
Surveyed 9 Sept 2019||||||||

Item|Area|Make-up|No.|Tap|Zone|Amp ch|Status|Comment
1|Foyer|Ceiling, 6in|4 no.|3W|1 Front|A1.1|existing, keep|
2|'"|'"|2 no.|1.5W|'"|'"|'"|low ceiling by the lift
3|Skate hire|as above|3 no.|3W|1 Front|A1.1|existing, keep|
4|Studio|as above|4 no.|3W|2 Back|A1.2|existing, keep|
5|Ice pad|Horn|6 no.|TBC|3 Pad|A2.1|existing, keep|cannot be reached from the floor
6|Ice pad|Horn|2 no.|30W|3 Pad|A2.1|new|
7|Plant room|Horn|1 no.|15W|2 Back|A1.2|new|
8|Corridor|Ceiling, 6in|5 no.|1.5W|2 Back|A1.2|remove|
9|Curling store|Ceiling, 6in|2 no.|3W|2 Back|A1.2|future|
10|Car park|Horn|3 no.|15W|-|-|N.I.C.|car park operator's own system
11|Store shelf|Ceiling, 6in|2 no.|-|-|-|spare|

Amp|Outputs|Each output|
A1|2|120 W
A2|1|240 W
`, bold("A1:A3", "A5:I5", "A18:C18")), Truth: func(t *typed.Truth) {
			t.Is("", "Skelby Ice Rink", "ditto marks and 'as above', a tap to be confirmed, removed, future, spare and not in contract rows by a status column")
			t.Speakers("tap_v=100; line_v=100; sheet=Survey", `
rows|room|model|count|tap_w|zone|amplifier|channel|status
6|Foyer|Ceiling, 6in|4|3|1 Front|A1|1|installed
7|Foyer|Ceiling, 6in|2|1.5|1 Front|A1|1|installed
8|Skate hire|Ceiling, 6in|3|3|1 Front|A1|1|installed
9|Studio|Ceiling, 6in|4|3|2 Back|A1|2|installed
10|Ice pad|Horn|6||3 Pad|A2|1|installed
11|Ice pad|Horn|2|30|3 Pad|A2|1|installed
12|Plant room|Horn|1|15|2 Back|A1|2|installed
13|Corridor|Ceiling, 6in|5|1.5|2 Back|A1|2|removed
14|Curling store|Ceiling, 6in|2|3|2 Back|A1|2|future
16|Store shelf|Ceiling, 6in|2|||||spare
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w|load_min_w
A1|1|120|24|
A1|2|120|27|
A2|1|240||60
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nA1|240|51\nA2|240|")
			t.Left("Survey", "13|removed|to be removed\n14|future|\n15|by others|not in contract\n16|spare|")
			t.Asks("Survey", "10|asked|tap of the horns over the ice: to be confirmed")
		}},

		{File: "Hohenlinde/Lautsprecherkreise.xlsx", Kind: "schedule", Book: book("Kreise", `
Planetarium Hohenlinde|||||||
Lautsprecherkreise, 100-V-Technik|||||||
Projekt-Nr.|P-2217||||||

Verstärker 1, Ausgang 1 - Foyer|||||||
Nr.|Raum|Typ|Anzahl|Anzapfung|Summe W|Regler|Bemerkung
1.01|Foyer|D6|6x|3 W|18||
1.02|Garderobe|D6|2x|1,5 W|3||
1.03|Laden|D6|4x|3 W|12|LR1|
Zwischensumme|||12||33||

Verstärker 1, Ausgang 2 - Verwaltung|||||||
Nr.|Raum|Typ|Anzahl|Anzapfung|Summe W|Regler|Bemerkung
2.01|Büros|D6|7x|0,75 W|5,25|LR2|
2.02|Besprechung|D6|2x|1,5 W|3|LR3|
2.03|Flur|D6|5x|1,5 W|7,5||
Zwischensumme|||14||15,75||

Verstärker 2, Ausgang 1 - Ausstellung|||||||
Nr.|Raum|Typ|Anzahl|Anzapfung|Summe W|Regler|Bemerkung
3.01|Mondraum|W10|4x|7,5 W @ 100 V|30||
3.02|Sternenweg|W10|8x|5 W|40||
3.03|Technik|W10|1x|5 W|5||
Zwischensumme|||13||75||

Gesamt|||39||123,75||
`, bold("A1:A3", "A5", "A6:H6", "A12", "A13:H13", "A19", "A20:H20"), and("Zentrale", `
Verstärker|Ausgang|Nennleistung|Leitung|Länge
1|1|120 W|2x1,5 mm²|65 m
1|2|120 W|2x1,5 mm²|0,12 km
2|1|0,24 kW|2x2,5 mm²|95 m

Regler|Ort|Belastbarkeit
LR1|Laden|20 W
LR2|Büros|5 W
LR3|Besprechung|5 W
`, bold("A1:E1", "A6:C6"))), Truth: func(t *typed.Truth) {
			t.Is("P-2217", "Planetarium Hohenlinde", "German sections by output with the header repeated, subtotals and a grand total; cable lengths in m and km")
			t.Speakers("tap_v=100; line_v=100; sheet=Kreise; note=section for a zone is as good", `
rows|tag|room|model|count|tap_w|control|amplifier|channel
7|1.01|Foyer|D6|6|3||1|1
8|1.02|Garderobe|D6|2|1.5||1|1
9|1.03|Laden|D6|4|3|LR1|1|1
14|2.01|Büros|D6|7|0.75|LR2|1|2
15|2.02|Besprechung|D6|2|1.5|LR3|1|2
16|2.03|Flur|D6|5|1.5||1|2
21|3.01|Mondraum|W10|4|7.5||2|1
22|3.02|Sternenweg|W10|8|5||2|1
23|3.03|Technik|W10|1|5||2|1
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
1|1|120|33
1|2|120|15.75
2|1|240|75
`)
			t.Controls("", `
control|rated_w|load_w
LR1|20|12
LR2|5|5.25
LR3|5|3
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\n1|240|48.75\n2|240|75")
			t.Lines("material=copper; note=one length an output", `
length_m|area_mm2
65|1.5
120|1.5
95|2.5
`)
			t.Left("Kreise", "10|total|right\n13|header|repeated\n17|total|right\n20|header|repeated\n24|total|right\n26|total|right")
		}},

		{File: "Les Aulnes/comptage HP patinoire.xlsx", Kind: "schedule", Book: book("Comptage", `
Patinoire des Aulnes||||||
Comptage des haut-parleurs, lignes 100 V||||||

Type|Réglage|Z1 Hall|Z2 Piste|Z3 Tribunes|Z4 Vestiaires|Total
Plafonnier|3 W|8|||10|18
Plafonnier|1,5 W|2|||6|8
Projecteur|20 W||6|||6
Colonne|10 W|||8||8
Puissance (W)||27|120|80|39|266
Ampli / voie||A1-1|A1-2|A2-1|A2-2|
Puissance nominale (W)||60|240|120|120|540
`, bold("A1", "A4:G4", "A9:A11")), Truth: func(t *typed.Truth) {
			t.Is("", "Patinoire des Aulnes", "French matrix with kinds and taps down, zones across; the output of each zone in rows below the counts")
			t.Speakers("tap_v=100; line_v=100; sheet=Comptage", `
rows|model|tap_w|count|zone|amplifier|channel
C|Plafonnier|3|8|Z1 Hall|A1|1
F|Plafonnier|3|10|Z4 Vestiaires|A2|2
C|Plafonnier|1.5|2|Z1 Hall|A1|1
F|Plafonnier|1.5|6|Z4 Vestiaires|A2|2
D|Projecteur|20|6|Z2 Piste|A1|2
E|Colonne|10|8|Z3 Tribunes|A2|1
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
A1|1|60|27
A1|2|240|120
A2|1|120|80
A2|2|120|39
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nA1|300|147\nA2|240|119")
			t.Left("Comptage", "9|total|watts of each zone")
		}},

		{File: "Montearcilla/altavoces planetario.csv", Kind: "schedule", Bytes: ansi(`
Cód.	Planta	Sala	Modelo	Cant.	Pot. ajustada (W)	Zona	Etapa	Canal	Observaciones
ALT-01	Baja	Recepción	Techo 6"	4	3	1	E1	1	
ALT-02	Baja	Guardarropa	Techo 6"	1	1,5	1	E1	1	
ALT-03	Baja	Tienda	Techo 6"	3	3	1	E1	1	
ALT-04	Baja	Pasillo	Techo 6"	6	1,5	2	E1	2	
ALT-05	Primera	Sala Luna	Caja mural	4	6	3	E2	1	
ALT-06	Primera	Sala Marte	Caja mural	4	6	3	E2	1	
ALT-07	Primera	Taller escolar	Techo 6"	4	3	2	E1	2	
ALT-08	Segunda	Oficinas	Techo 6"	8	0,75	2	E1	2	
ALT-09	Cubierta	Terraza de telescopios	Bocina	3	15	4	E2	2	protegidas

Etapa	Canal	Potencia nominal (W)	Tensión (V)
E1	1	60	100
E1	2	60	100
E2	1	120	100
E2	2	120	100
`), Truth: func(t *typed.Truth) {
			t.Is("", "Montearcilla", "plain: Spanish, tab-separated Windows-1252, no title; outputs in a second table below an empty line; the site only in the folder's name")
			t.Speakers("tap_v=100; line_v=100", `
rows|tag|room|model|count|tap_w|zone|amplifier|channel
2|ALT-01|Recepción|Techo 6"|4|3|1|E1|1
3|ALT-02|Guardarropa|Techo 6"|1|1.5|1|E1|1
4|ALT-03|Tienda|Techo 6"|3|3|1|E1|1
5|ALT-04|Pasillo|Techo 6"|6|1.5|2|E1|2
6|ALT-05|Sala Luna|Caja mural|4|6|3|E2|1
7|ALT-06|Sala Marte|Caja mural|4|6|3|E2|1
8|ALT-07|Taller escolar|Techo 6"|4|3|2|E1|2
9|ALT-08|Oficinas|Techo 6"|8|0.75|2|E1|2
10|ALT-09|Terraza de telescopios|Bocina|3|15|4|E2|2
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
E1|1|60|22.5
E1|2|60|27
E2|1|120|48
E2|2|120|45
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nE1|120|49.5\nE2|240|93")
		}},

		{File: "Roccaverde/tabelle impianto.xlsx", Kind: "schedule", Book: book("Tabelle", `
ORTO BOTANICO DI ROCCAVERDE||||||
Impianto di diffusione sonora a tensione costante 100 V||||||
Commessa:|17/045|||||

DIFFUSORI||||||
Sigla|Posizione|Tipo|N.|Presa|Linea|Attenuatore
D1|Ingresso|incasso|4|3 W|LN1|
D2|Bookshop|incasso|3|3 W|LN1|AT-A
D3|Limonaia|colonna|4|10 W|LN2|AT-B
D4|Serra grande|colonna|6|10 W|LN2|
D5|Viale dei cipressi|da giardino|9|7,5 W|LN3|
D6|Parcheggio|tromba|2|15 W|LN3|

AMPLIFICATORI||||||
Linea|Amplificatore|Uscita|Potenza||Cavo|Lunghezza
LN1|AM1|1|0,06 kW||2x1,5 mm²|55 m
LN2|AM1|2|0,12 kW||2x1,5 mm²|82,5 m
LN3|AM2|1|0,24 kW||2x2,5 mm²|310 m

ATTENUATORI||||||
Sigla|Posizione|Potenza max||||
AT-A|Bookshop|10 W||||
AT-B|Limonaia|36 W||||
`, bold("A1:A3", "A5", "A6:G6", "A14", "A15:G15", "A20", "A21:C21")), Truth: func(t *typed.Truth) {
			t.Is("17/045", "Orto botanico di Roccaverde", "plain: Italian, three titled tables one above another, joined by line and by control; ratings in kW")
			t.Speakers("tap_v=100; line_v=100; sheet=Tabelle; note=the line as a section for a zone is as good", `
rows|tag|room|model|count|tap_w|control|amplifier|channel
7|D1|Ingresso|incasso|4|3||AM1|1
8|D2|Bookshop|incasso|3|3|AT-A|AM1|1
9|D3|Limonaia|colonna|4|10|AT-B|AM1|2
10|D4|Serra grande|colonna|6|10||AM1|2
11|D5|Viale dei cipressi|da giardino|9|7.5||AM2|1
12|D6|Parcheggio|tromba|2|15||AM2|1
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
AM1|1|60|21
AM1|2|120|100
AM2|1|240|97.5
`)
			t.Controls("", "control|rated_w|load_w\nAT-A|10|9\nAT-B|36|40")
			t.Amplifiers("", "amplifier|rated_w|load_w\nAM1|180|121\nAM2|240|97.5")
			t.Lines("material=copper; note=one length a line", `
line|length_m|area_mm2
LN1|55|1.5
LN2|82.5|1.5
LN3|310|2.5
`)
		}},

		{File: "De Koudehoek/omroep groepen.xlsx", Kind: "schedule", Book: book("Groepen", `
IJshal De Koudehoek|||||||||
Omroep 100V - overzicht per groep|||||||||
Werknr.|18.203||||||||

Groep|Omschrijving|Luidsprekers||||Versterker||Volumeregelaar|
||Soort|Aantal|Stand (W)|Totaal (W)|Nr.|Kanaal|Code|Max. (W)
1|IJsvloer|hoorn|8|20|160|V1|A||
2|Tribune|kolom|10|10|100|V1|B||
3|Hal en kassa|plafond|9|3|27|V2|A|VR-3|36
4|Kleedkamers|plafond|12|1,5|18|V2|B||
5|Bestuurskamer|plafond|2|3|6|V2|B|VR-5|12
6|Machinekamer|hoorn|1|15|15|V2|B||
Totaal|||42||326||||

Versterkers:|||||||||
V1|2 x 250 W|||||||||
V2|2 x 60 W|||||||||
`, bold("A1:A3", "A5:J6"), merged("C5:F5", "G5:H5", "I5:J5")), Truth: func(t *typed.Truth) {
			t.Is("18.203", "IJshal De Koudehoek", "plain: Dutch, one row a group, a merged group header above the names of the columns, amplifiers as two lines below")
			t.Speakers("tap_v=100; line_v=100; sheet=Groepen", `
rows|zone|room|model|count|tap_w|amplifier|channel|control
7|1|IJsvloer|hoorn|8|20|V1|A|
8|2|Tribune|kolom|10|10|V1|B|
9|3|Hal en kassa|plafond|9|3|V2|A|VR-3
10|4|Kleedkamers|plafond|12|1.5|V2|B|
11|5|Bestuurskamer|plafond|2|3|V2|B|VR-5
12|6|Machinekamer|hoorn|1|15|V2|B|
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
V1|A|250|160
V1|B|250|100
V2|A|60|27
V2|B|60|39
`)
			t.Controls("", "control|zone|rated_w|load_w\nVR-3|3|36|27\nVR-5|5|12|6")
			t.Amplifiers("", "amplifier|rated_w|load_w\nV1|500|260\nV2|120|66")
			t.Left("Groepen", "13|total|right")
		}},

		{File: "Hartsmere/education block LS schedule, marked up.xlsx", Kind: "schedule", Book: book("LS", `
Hartsmere Gardens - Education block|||||||
Loudspeaker schedule, 100 V, tender issue with site mark-up|||||||
Contract no.|LT/2015/021||||||

Ref|Room|Type|Qty|Tap|Zone|Amp/output|Remarks
E1|Reception|Ceiling|3|3 W|E-1|RA/1|
E2|Classroom 1|Ceiling|4||E-2|RA/2|too loud, turned down
E3|Classroom 2|Ceiling|4|3 W|E-2|RA/2|
E4|Classroom 3|Ceiling|4|3 W|E-2|RA/2|
E5|Herbarium|Wall|2|6 W|E-1|RA/1|
E6|Library|Ceiling|6|1.5 W|E-1|RA/1|
E7|Loading bay|Horn|1|15 W|E-3|RA/3|
E8|Seed bank|Wall|2|6 W|E-1|RA/1|cancelled, see VO 3
E9|Terrace|Horn|2|10 W|E-3|RA/3|by others
E10|Corridor|Ceiling|5|1.5 W|E-1|RA/1|

Amp/output|Rated
RA/1|60 W
RA/2|60 W
RA/3|60 W
`, bold("A1", "A5:H5", "A17:B17"), struck("A9:H9"),
			func(p typed.Page) { p.Corrected("E7", "3 W", " 1.5 W"); p.Hide(11) }), Truth: func(t *typed.Truth) {
			t.Is("LT/2015/021", "Hartsmere Gardens", "a struck row, a tap struck and typed anew in its cell, a row hidden by hand, a cancelled one and one by others")
			t.Speakers("tap_v=100; line_v=100; sheet=LS; amplifier=RA", `
rows|tag|room|model|count|tap_w|zone|channel
6|E1|Reception|Ceiling|3|3|E-1|1
7|E2|Classroom 1|Ceiling|4|1.5|E-2|2
8|E3|Classroom 2|Ceiling|4|3|E-2|2
10|E5|Herbarium|Wall|2|6|E-1|1
12|E7|Loading bay|Horn|1|15|E-3|3
15|E10|Corridor|Ceiling|5|1.5|E-1|1
`)
			t.Channels("line_v=100; amplifier=RA; rated_w=60", "channel|load_w\n1|28.5\n2|18\n3|15")
			t.Amplifiers("amplifier=RA", "rated_w|load_w\n180|61.5")
			t.Left("LS", "9|struck|whole row struck through\n11|hidden|hidden by hand\n13|cancelled|\n14|by others|")
		}},

		{File: "Moose Hollow/21-310 expansion speakers.xlsx", Kind: "schedule", Book: book("SPEAKERS", `
MOOSE HOLLOW ICE ARENA - EXPANSION||||||
70 V SYSTEM||||||
JOB: 21-310||||||

FLOOR|ROOM|SPKR|COUNT|WATTS EA|ZONE|AMP / CH
1|New rink|Horn|10 ea|30|R2|Amp 2 / ch 3+4 bridged
1|Penalty boxes|Ceiling|2 ea|5|R2|Amp 2 / ch 3+4 bridged
1|New lobby|Ceiling|8 ea|5|L2|Amp 2 / ch 1
2|Viewing gallery|Wall|6 ea|10|G2|Amp 2 / ch 2
2|Meeting rooms|Ceiling|6 ea|2.5|L2|Amp 2 / ch 1
1|Team rooms|Ceiling|10 ea|2.5|L2|Amp 2 / ch 1
2|Press row|Ceiling|3 ea|2.5|G2|Amp 2 / ch 2

AMP|CH|RATED @ 70V
Amp 2|1|300
Amp 2|2|300
Amp 2|3+4 bridged|600
`, bold("A1:A3", "A5:G5"), func(p typed.Page) { p.Filtered("A5:G12", "A", "1", 9, 10, 12) }, and("OLD", `
FLOOR|ROOM|SPKR|COUNT|WATTS EA|ZONE|AMP / CH
1|New rink|Horn|8 ea|30|R2|Amp 2 / ch 3
1|New lobby|Ceiling|6 ea|5|L2|Amp 2 / ch 1
`, func(p typed.Page) { typed.Must(p.File.SetSheetVisible(p.Name, false)) })), Truth: func(t *typed.Truth) {
			t.Is("21-310", "Moose Hollow Ice Arena", "a filter left on that hides rows which are installed, a hidden old sheet, a bridged pair of outputs")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=SPEAKERS; amplifier=Amp 2", `
rows|room|model|count|tap_w|zone|channel
6|New rink|Horn|10|30|R2|3+4
7|Penalty boxes|Ceiling|2|5|R2|3+4
8|New lobby|Ceiling|8|5|L2|1
9|Viewing gallery|Wall|6|10|G2|2
10|Meeting rooms|Ceiling|6|2.5|L2|1
11|Team rooms|Ceiling|10|2.5|L2|1
12|Press row|Ceiling|3|2.5|G2|2
`)
			t.Channels("line_v=70.7; amplifier=Amp 2", `
channel|rated_w|load_w
1|300|80
2|300|67.5
3+4|600|310
`)
			t.Amplifiers("amplifier=Amp 2", "rated_w|load_w\n1200|457.5")
			t.Left("OLD", "2|hidden|hidden sheet\n3|hidden|hidden sheet")
		}},

		{File: "Copperleaf/whisper posts taps.xlsx", Kind: "schedule", Book: book("Posts", `
COPPERLEAF PLANETARIUM - TALKING POSTS, 70.7 V||||
||||
POST|EXHIBIT|TAP (W)|AMP CH|NOTES
P1|Comets|1|5|
P2|Moons||5|
P3|Tides||5|
P4|Meteorites|1|5|
P5|Sundial|2|6|
P6|Eclipse||6|moved 2018
P7|Seasons|2|6|

Channels 5 and 6 are 30 W each.
`, bold("A1", "A3:E3"), func(p typed.Page) {
			p.Date("C5", 2017, time.January, 2, "d-mmm")
			p.Date("C6", 2017, time.January, 4, "d-mmm")
			p.Date("C9", 2017, time.January, 2, "d-mmm")
		}), Truth: func(t *typed.Truth) {
			t.Is("", "Copperleaf Planetarium", "taps of 1/2 and 1/4 W that the spreadsheet turned into days")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=Posts", `
rows|tag|room|tap_w|channel
4|P1|Comets|1|5
5|P2|Moons|0.5|5
6|P3|Tides|0.25|5
7|P4|Meteorites|1|5
8|P5|Sundial|2|6
9|P6|Eclipse|0.5|6
10|P7|Seasons|2|6
`)
			t.Channels("line_v=70.7; rated_w=30", "channel|load_w\n5|2.75\n6|4.5")
			t.Asks("Posts", "5|assumed|tap recovered from a date\n6|assumed|tap recovered from a date\n9|assumed|tap recovered from a date")
		}},
	}
}
