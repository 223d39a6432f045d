package main

import "lineaudit/samples/typed"

func takeoffs() []typed.Case {
	return []typed.Case{
		{File: "Hartsmere/LS schedule as fitted.xlsx", Kind: "schedule", Book: book("LS schedule", `
HARTSMERE GARDENS|||||||
Public address - loudspeakers as fitted|||||||
Contract no.|LT/2011/064||||||
Compiled|after commissioning, every tapping looked at||||||

L/S ref|Location|Zone|Unit|Tapping fitted|Circuit|Local control|Notes
LS01|Entrance porch|Entrance|Wall cabinet|3 W|C1||
LS02|Entrance hall|Entrance|150 mm ceiling|3 W|C1||
LS03|Entrance hall|Entrance|150 mm ceiling|3 W|C1||
LS04|Ticket desk|Entrance|150 mm ceiling|1.5 W|C1||
LS05|Shop|Entrance|150 mm ceiling|3 W|C1|VC1|
LS06|Shop|Entrance|150 mm ceiling|3 W|C1|VC1|
LS07|Stock room|Entrance|100 mm ceiling|0.75 W|C1||behind shop
LS08|Orchid house|Glasshouses|Column, IP55|6 W|C2|VC2|
LS09|Orchid house|Glasshouses|Column, IP55|6 W|C2|VC2|
LS10|Palm house|Glasshouses|Column, IP55|10 W|C2||high level
LS11|Palm house|Glasshouses|Column, IP55|10 W|C2||high level
LS12|Fernery|Glasshouses|Column, IP55|6 W|C2||
LS13|Rose walk|Grounds|Horn|15 W|C3||on lamp column 4
LS14|Rose walk|Grounds|Horn|15 W|C3||on lamp column 7
LS15|Lake terrace|Grounds|Horn|15 W|C3||
LS16|Car park|Grounds|Horn|30 W|C3||
LS17|Car park|Grounds|Horn|30 W|C3||
LS18|Bird hide|Grounds|Horn||C3||future - duct and draw rope only
`, bold("A1:A2", "A6:H6"), and("Amps + controls", `
Circuit|Amplifier|Output|Rated output|Line
C1|PA1|1|120 W|100 V
C2|PA1|2|120 W|100 V
C3|PA2|1|240 W|100 V

Control|Position|Rating|Serves
VC1|Shop counter|12 W|Shop
VC2|Orchid house door|24 W|Orchid house
`, bold("A1:E1", "A6:D6"))), Truth: func(t *typed.Truth) {
			t.Is("LT/2011/064", "Hartsmere Gardens", "plain: one row a loudspeaker, circuits and controls on a second sheet")
			t.Speakers("tap_v=100; line_v=100; sheet=LS schedule", `
rows|tag|room|zone|model|tap_w|amplifier|channel|control|status
7|LS01|Entrance porch|Entrance|Wall cabinet|3|PA1|1||installed
8..9|LS02..|Entrance hall|Entrance|150 mm ceiling|3|PA1|1||installed
10|LS04|Ticket desk|Entrance|150 mm ceiling|1.5|PA1|1||installed
11..12|LS05..|Shop|Entrance|150 mm ceiling|3|PA1|1|VC1|installed
13|LS07|Stock room|Entrance|100 mm ceiling|0.75|PA1|1||installed
14..15|LS08..|Orchid house|Glasshouses|Column, IP55|6|PA1|2|VC2|installed
16..17|LS10..|Palm house|Glasshouses|Column, IP55|10|PA1|2||installed
18|LS12|Fernery|Glasshouses|Column, IP55|6|PA1|2||installed
19..20|LS13..|Rose walk|Grounds|Horn|15|PA2|1||installed
21|LS15|Lake terrace|Grounds|Horn|15|PA2|1||installed
22..23|LS16..|Car park|Grounds|Horn|30|PA2|1||installed
24|LS18|Bird hide|Grounds|Horn||PA2|1||future
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
PA1|1|120|17.25
PA1|2|120|38
PA2|1|240|105
`)
			t.Controls("", `
control|zone|rated_w|load_w
VC1|Entrance|12|6
VC2|Glasshouses|24|12
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nPA1|240|55.25\nPA2|240|105")
		}},

		{File: "Saltgrass/07-112 speaker takeoff.csv", Kind: "schedule", Bytes: plain(`
SALTGRASS BOTANICAL GARDEN - PHASE 2,,,,,,,,
Job #,07-112,,,,,,,
Counts from sheets AV-201 thru AV-204,,,,,,,,
,,,,,,,,
Dwg,Rm No,Room,Spkr Type,Qty,Tap (W),Ext Watts,Amp,Ch
AV-201,100,Lobby,C1,6,5,30,AMP-1,A
AV-201,101,Classroom A,C1,4,2.5,10,AMP-1,A
AV-201,102,Classroom B,C1,4,2.5,10,AMP-1,A
AV-201,103,Seed library,C1,3,2.5,7.5,AMP-1,A
AV-201,104,Corridor,C2,5,1,5,AMP-1,A
AV-202,150,Conservatory,W1,8,10,80,AMP-1,B
AV-202,151,Propagation house,W1,4,10,40,AMP-1,B
AV-203,X1,Prairie trail,L1,12,16,192,AMP-2,A
AV-203,X2,Pond overlook,L1,4,16,64,AMP-2,A
AV-204,X3,Bus drop-off,H1,2,30,60,AMP-2,B
,,,TOTAL,52,,498.5,,
,,,,,,,,
Type,Description,,,,,,,
C1,"8"" ceiling speaker w/ backbox and 70V transformer",,,,,,,
C2,"4"" ceiling speaker w/ 70V transformer",,,,,,,
W1,"Surface mount, weather resistant",,,,,,,
L1,Landscape speaker,,,,,,,
H1,Horn,,,,,,,
,,,,,,,,
Amp,Description,,,,,,,
AMP-1,Two channel 150W/ch @ 70V,,,,,,,
AMP-2,Two channel 300W/ch @ 70V,,,,,,,
`), Truth: func(t *typed.Truth) {
			t.Is("07-112", "Saltgrass Botanical Garden", "plain: an estimator's takeoff, a drawing number first, amplifier ratings per channel in words below")
			t.Speakers("tap_v=70.7; line_v=70.7", `
rows|room|model|count|tap_w|amplifier|channel
6|Lobby|C1|6|5|AMP-1|A
7|Classroom A|C1|4|2.5|AMP-1|A
8|Classroom B|C1|4|2.5|AMP-1|A
9|Seed library|C1|3|2.5|AMP-1|A
10|Corridor|C2|5|1|AMP-1|A
11|Conservatory|W1|8|10|AMP-1|B
12|Propagation house|W1|4|10|AMP-1|B
13|Prairie trail|L1|12|16|AMP-2|A
14|Pond overlook|L1|4|16|AMP-2|A
15|Bus drop-off|H1|2|30|AMP-2|B
`)
			t.Channels("line_v=70.7", `
amplifier|channel|rated_w|load_w
AMP-1|A|150|62.5
AMP-1|B|150|120
AMP-2|A|300|256
AMP-2|B|300|60
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nAMP-1|300|182.5\nAMP-2|600|316")
			t.Left("", "16|total|right")
		}},

		{File: "Birkenrode/ELA_Lautsprecherliste.csv", Kind: "schedule", Bytes: ansi(`
Eishalle Birkenrode;ELA-Anlage 100 V;;;;;;
Auftrag:;06-0317;;;;;;
Stand:;14.03.2006;;;;;;
;;;;;;;
Pos.;Linie;Raum;Bauart;Stück;Watt je Stück;Watt gesamt;Bemerkung
1;L1;Eingangshalle;Einbaulautsprecher;8;3;24;
2;L1;Kasse;Einbaulautsprecher;1;1,5;1,5;
3;L1;Schuhverleih;Einbaulautsprecher;4;3;12;
4;L1;Sanitätsraum;Einbaulautsprecher;1;1,5;1,5;
5;L2;Eisfläche;Druckkammerlautsprecher;6;30;180;Höhe 8 m
6;L3;Tribüne Nord;Tonsäule;5;20;100;
7;L3;Tribüne Süd;Tonsäule;5;20;100;
8;L4;Umkleiden 1-6;Einbaulautsprecher;12;1,5;18;Pflichtempfang
9;L4;Duschen;Einbaulautsprecher feuchtraumgeeignet;4;1,5;6;
10;L4;Gang;Einbaulautsprecher;6;3;18;
;;;Summe;52;;461;
;;;;;;;
Linie;Verstärker;Kanal;Nennleistung [W];Leitung;Länge [m];;
L1;V1;1;125;NYM-O 2x1,5 mm²;85;;
L2;V1;2;250;NYM-O 2x2,5 mm²;140;;
L3;V2;1;250;NYM-O 2x2,5 mm²;110;;
L4;V2;2;125;NYM-O 2x1,5 mm²;72,5;;
`), Truth: func(t *typed.Truth) {
			t.Is("06-0317", "Eishalle Birkenrode", "plain: a German list of groups by line; amplifiers and cables of the lines in a second table; Windows-1252, decimal commas")
			t.Speakers("tap_v=100; line_v=100; note=the line as a section for a zone is as good", `
rows|room|model|count|tap_w|amplifier|channel
6|Eingangshalle|Einbaulautsprecher|8|3|V1|1
7|Kasse|Einbaulautsprecher|1|1.5|V1|1
8|Schuhverleih|Einbaulautsprecher|4|3|V1|1
9|Sanitätsraum|Einbaulautsprecher|1|1.5|V1|1
10|Eisfläche|Druckkammerlautsprecher|6|30|V1|2
11|Tribüne Nord|Tonsäule|5|20|V2|1
12|Tribüne Süd|Tonsäule|5|20|V2|1
13|Umkleiden 1-6|Einbaulautsprecher|12|1.5|V2|2
14|Duschen|Einbaulautsprecher feuchtraumgeeignet|4|1.5|V2|2
15|Gang|Einbaulautsprecher|6|3|V2|2
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
V1|1|125|39
V1|2|250|180
V2|1|250|200
V2|2|125|42
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nV1|375|219\nV2|375|242")
			t.Lines("material=copper; note=one length a line", `
line|length_m|area_mm2
L1|85|1.5
L2|140|2.5
L3|110|2.5
L4|72.5|1.5
`)
			t.Left("", "16|total|right")
		}},

		{File: "Valbreuil/DOE sonorisation - liste HP.xlsx", Kind: "schedule", Book: book("Liste HP", `
Jardin botanique de Valbreuil||||||
DOE - Sonorisation ligne 100 V - Nomenclature des haut-parleurs||||||
Affaire n° 0914||||||

Repère|Local|Type d'appareil|Nbre|Puissance raccordée|Puissance totale|Atténuateur
ZONE 1 - ACCUEIL (ampli 1, sortie 1)||||||
HP 1.1 à 1.6|Hall d'accueil|Plafonnier 165 mm|6|3 W|18 W|
HP 1.7 à 1.10|Boutique|Plafonnier 165 mm|4|1,5 W|6 W|AT1
HP 1.11|Vestiaire|Plafonnier 165 mm|1|1,5 W|1,5 W|
Sous-total zone 1|||11||25,5 W|

ZONE 2 - SERRES (ampli 1, sortie 2)||||||
HP 2.1 à 2.4|Serre tropicale|Colonne étanche|4|10 W|40 W|AT2
HP 2.5 à 2.6|Serre des cactées|Colonne étanche|2|10 W|20 W|AT3
HP 2.7|Serre de multiplication|Colonne étanche|1|5 W|5 W|
Sous-total zone 2|||7||65 W|

ZONE 3 - PARC (ampli 2, sortie 1)||||||
HP 3.1 à 3.8|Allée des tilleuls|Borne de jardin|8|15 W|120 W|
HP 3.9 à 3.10|Embarcadère|Pavillon à chambre de compression|2|15 W|30 W|
Sous-total zone 3|||10||150 W|
TOTAL GÉNÉRAL|||28||240,5 W|
`, bold("A1:A2", "A5:G5", "A6:G6", "A12:G12", "A18:G18"), merged("A6:G6", "A12:G12", "A18:G18"), and("Amplis et atténuateurs", `
Amplificateur|Sortie|Puissance nominale|Tension de ligne
1|1|120 W|100 V
1|2|120 W|100 V
2|1|240 W|100 V

Repère|Emplacement|Puissance admissible
AT1|Boutique, derrière la caisse|12 W
AT2|Serre tropicale|36 W
AT3|Serre des cactées|12 W
`, bold("A1:D1", "A6:C6"))), Truth: func(t *typed.Truth) {
			t.Is("0914", "Jardin botanique de Valbreuil", "plain: French sections by zone with subtotals, the output named in the section's title; amplifiers and attenuators on a second sheet")
			t.Speakers("tap_v=100; line_v=100; sheet=Liste HP", `
rows|tag|zone|room|model|count|tap_w|control|amplifier|channel
7|HP 1.1 à 1.6|ZONE 1 - ACCUEIL|Hall d'accueil|Plafonnier 165 mm|6|3||1|1
8|HP 1.7 à 1.10|ZONE 1 - ACCUEIL|Boutique|Plafonnier 165 mm|4|1.5|AT1|1|1
9|HP 1.11|ZONE 1 - ACCUEIL|Vestiaire|Plafonnier 165 mm|1|1.5||1|1
13|HP 2.1 à 2.4|ZONE 2 - SERRES|Serre tropicale|Colonne étanche|4|10|AT2|1|2
14|HP 2.5 à 2.6|ZONE 2 - SERRES|Serre des cactées|Colonne étanche|2|10|AT3|1|2
15|HP 2.7|ZONE 2 - SERRES|Serre de multiplication|Colonne étanche|1|5||1|2
19|HP 3.1 à 3.8|ZONE 3 - PARC|Allée des tilleuls|Borne de jardin|8|15||2|1
20|HP 3.9 à 3.10|ZONE 3 - PARC|Embarcadère|Pavillon à chambre de compression|2|15||2|1
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
1|1|120|25.5
1|2|120|65
2|1|240|150
`)
			t.Controls("", `
control|zone|rated_w|load_w
AT1|ZONE 1 - ACCUEIL|12|6
AT2|ZONE 2 - SERRES|36|40
AT3|ZONE 2 - SERRES|12|20
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\n1|240|90.5\n2|240|150")
			t.Left("Liste HP", "10|total|right\n16|total|right\n21|total|right\n22|total|right")
		}},

		{File: "Lindewaard/omroep per zone.ods", Kind: "schedule", Saved: "ods", Book: book("Entree", `
Hortus Lindewaard - omroepinstallatie
Zone:|Entree
Aangesloten op:|Versterker 1, uitgang 1

Nr.|Plaats|Soort luidspreker|Ingesteld op (W)
E1|Kassa|plafond|1,5
E2|Hal|plafond|3
E3|Hal|plafond|3
E4|Winkel|plafond|3
E5|Toiletten|plafond|0,75
`, and("Kassen", `
Hortus Lindewaard - omroepinstallatie
Zone:|Kassen
Aangesloten op:|Versterker 1, uitgang 2

Nr.|Plaats|Soort luidspreker|Ingesteld op (W)
K1|Palmenkas|kolom|10
K2|Palmenkas|kolom|10
K3|Vlinderkas|kolom|6
K4|Varenkas|kolom|6
`), and("Buiten", `
Hortus Lindewaard - omroepinstallatie
Zone:|Buiten
Aangesloten op:|Versterker 2, uitgang 1

Nr.|Plaats|Soort luidspreker|Ingesteld op (W)
B1|Steiger|hoorn|15
B2|Rozentuin|zuil|15
B3|Rozentuin|zuil|15
B4|Parkeerplaats|hoorn|30
`), and("Versterkers", `
Versterker|Uitgang|Vermogen (W)|Lijnspanning (V)
1|1|60|100
1|2|60|100
2|1|120|100
2|2|120|100
`)), Truth: func(t *typed.Truth) {
			t.Is("", "Hortus Lindewaard", "plain: one sheet a zone, its output in a title line; decimal commas as text; one output without loudspeakers")
			t.Speakers("tap_v=100; line_v=100; sheet=Entree; zone=Entree; amplifier=1; channel=1", `
rows|tag|room|model|tap_w
6|E1|Kassa|plafond|1.5
7|E2|Hal|plafond|3
8|E3|Hal|plafond|3
9|E4|Winkel|plafond|3
10|E5|Toiletten|plafond|0.75
`)
			t.Speakers("tap_v=100; line_v=100; sheet=Kassen; zone=Kassen; amplifier=1; channel=2", `
rows|tag|room|model|tap_w
6|K1|Palmenkas|kolom|10
7|K2|Palmenkas|kolom|10
8|K3|Vlinderkas|kolom|6
9|K4|Varenkas|kolom|6
`)
			t.Speakers("tap_v=100; line_v=100; sheet=Buiten; zone=Buiten; amplifier=2; channel=1", `
rows|tag|room|model|tap_w
6|B1|Steiger|hoorn|15
7|B2|Rozentuin|zuil|15
8|B3|Rozentuin|zuil|15
9|B4|Parkeerplaats|hoorn|30
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
1|1|60|11.25
1|2|60|32
2|1|120|75
2|2|120|0
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\n1|120|43.25\n2|240|75")
		}},

		{File: "Vallefredda/conteggio diffusori.xls", Kind: "schedule", Saved: "xls", Book: book("Diffusori", `
PALAGHIACCIO VALLEFREDDA||||||
Impianto di diffusione sonora a 100 V - conteggio diffusori||||||
Commessa 2009/118||||||

Ambiente|Zona|Plafoniera|Colonna|Tromba|Pezzi|Potenza (W)
||3 W|10 W|30 W||
Atrio|A|6|||6|18
Biglietteria|A|2|||2|6
Noleggio pattini|A|4|1||5|22
Spogliatoi|B|10|||10|30
Infermeria|B|1|||1|3
Pista|C|||6|6|180
Gradinate|D||8||8|80
Piazzale|D|||2|2|60
Totale||23|9|8|40|399

Zona|Amplificatore|Uscita|Potenza nominale (W)
A|AMP1|1|120
B|AMP1|2|120
C|AMP2|1|240
D|AMP2|2|240
`, bold("A1:A3", "A5:G6", "A17:D17")), Truth: func(t *typed.Truth) {
			t.Is("2009/118", "Palaghiaccio Vallefredda", "plain: Italian matrix, rooms down, kinds across with the tap in a second header row; outputs of the zones below")
			t.Speakers("tap_v=100; line_v=100; sheet=Diffusori", `
rows|zone|room|model|count|tap_w|amplifier|channel
7|A|Atrio|Plafoniera|6|3|AMP1|1
8|A|Biglietteria|Plafoniera|2|3|AMP1|1
9|A|Noleggio pattini|Plafoniera|4|3|AMP1|1
9|A|Noleggio pattini|Colonna|1|10|AMP1|1
10|B|Spogliatoi|Plafoniera|10|3|AMP1|2
11|B|Infermeria|Plafoniera|1|3|AMP1|2
12|C|Pista|Tromba|6|30|AMP2|1
13|D|Gradinate|Colonna|8|10|AMP2|2
14|D|Piazzale|Tromba|2|30|AMP2|2
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
AMP1|1|120|46
AMP1|2|120|33
AMP2|1|240|180
AMP2|2|240|140
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nAMP1|240|79\nAMP2|480|320")
			t.Left("Diffusori", "15|total|right")
		}},

		{File: "Penarrota/Relacion altavoces.xlsx", Kind: "schedule", Book: book("Relación", `
Obra:|Jardín Botánico de Peñarrota|||||
Expediente:|J-2014-22|||||
Instalación:|Megafonía, línea de 100 V|||||
Fecha:|mayo de 2014|||||

Zona|Dependencia|Altavoz|Uds.|Toma (W)|Regulador|Salida
Z1|Vestíbulo|Empotrado techo|8|3|RV1|1
Z1|Tienda|Empotrado techo|4|3|RV2|1
Z1|Aseos|Empotrado techo|4|1,5||1
Z2|Invernadero tropical|Columna|4|10|RV3|2
Z2|Invernadero desértico|Columna|3|10||2
Z3|Paseo de las palmeras|Proyector|10|10||3
Z3|Auditorio al aire libre|Proyector|6|20||3
Z4|Aparcamiento|Bocina|4|15||4

Amplificador de 4 salidas, 4 x 240 W a 100 V

Regulador|Potencia máx. (W)|Situación
RV1|36|Mostrador
RV2|12|Tienda
RV3|36|Puerta del invernadero
`, bold("A1:A4", "A6:G6", "A18:C18")), Truth: func(t *typed.Truth) {
			t.Is("J-2014-22", "Jardín Botánico de Peñarrota", "plain: Spanish key-value title block, groups, one amplifier of four outputs named in a sentence, table of controls")
			t.Speakers("tap_v=100; line_v=100; sheet=Relación", `
rows|zone|room|model|count|tap_w|control|channel
7|Z1|Vestíbulo|Empotrado techo|8|3|RV1|1
8|Z1|Tienda|Empotrado techo|4|3|RV2|1
9|Z1|Aseos|Empotrado techo|4|1.5||1
10|Z2|Invernadero tropical|Columna|4|10|RV3|2
11|Z2|Invernadero desértico|Columna|3|10||2
12|Z3|Paseo de las palmeras|Proyector|10|10||3
13|Z3|Auditorio al aire libre|Proyector|6|20||3
14|Z4|Aparcamiento|Bocina|4|15||4
`)
			t.Channels("line_v=100; rated_w=240", `
channel|load_w
1|42
2|70
3|220
4|60
`)
			t.Controls("", `
control|zone|rated_w|load_w
RV1|Z1|36|24
RV2|Z1|12|12
RV3|Z2|36|40
`)
			t.Amplifiers("", "rated_w|load_w|note\n960|392|unnamed")
		}},
	}
}
