package main

import (
	"lineaudit/samples/typed"
)

// offices typed or exported these far from the loudspeakers: estimators, clerks of works, asset managers.
var offices = []typed.Case{
	{File: "erp/BID_77120_LINES.csv", Kind: "schedule", Bytes: text(`
BID_NO,LINE,PHASE,ITEM_CD,DESCRIPTION,QTY,UOM,LINE_NOTE
77120,010,Z1 LOBBY,SPK-C6,"CEILING SPKR 6IN W/70V XFMR, TAP 5W",12.00,EA,
77120,020,Z1 LOBBY,VC-100,"VOLUME CONTROL 100W WALL 1-GANG",1.00,EA,
77120,030,Z2 GALLERIES,SPK-C6,"CEILING SPKR 6IN W/70V XFMR, TAP 2.5W",20.00,EA,
77120,040,Z2 GALLERIES,VC-35,"VOLUME CONTROL 35W WALL 1-GANG",1.00,EA,
77120,050,Z3 STORES,SPK-H15,"HORN W/70V XFMR, TAP 15W",4.00,EA,
77120,060,Z4 DOCK,SPK-H30,"HORN W/70V XFMR, TAP 30W",2.00,EA,ALTERNATE 2 - NOT IN BASE BID
77120,070,HEAD END,AMP-2120,"AMPLIFIER 2 X 120W 70V",1.00,EA,CH 1: Z1 + Z3  CH 2: Z2
77120,080,HEAD END,RACK-24,"RACK 24RU",1.00,EA,
77120,090,CABLE,WIRE-162,"16/2 PLENUM",2500.00,FT,
77120,100,LABOR,LAB-1,"ROUGH-IN",64.00,HR,
`), Truth: func(t *typed.Truth) {
		t.Is("77120", "", "bid lines of an office program: loudspeakers, controls, an amplifier and labour in one list, taps in descriptions, channels in a note")
		t.Speakers("tap_v=70.7; line_v=70.7", `
rows|zone|count|tap_w|channel|note|status
2|Z1 LOBBY|12|5|1|unnamed control|installed
4|Z2 GALLERIES|20|2.5|2|unnamed control|installed
6|Z3 STORES|4|15|1||installed
7|Z4 DOCK|2|30|||future
`)
		t.Channels("line_v=70.7", "channel|rated_w|load_w\n1|120|120\n2|120|50")
		t.Amplifiers("note=named only by its item", "rated_w|load_w\n240|170")
		t.Controls("note=unnamed", "zone|rated_w|load_w\nZ1 LOBBY|100|60\nZ2 GALLERIES|35|50")
		t.Left("", "3|control|\n5|control|\n8|amplifier|\n9|other|\n10|other|\n11|other|")
	}},

	{File: "erp/ASSET_DUMP.xlsx", Kind: "schedule", Book: sheets("ASSETS", `
SITE_ID|ASSET_ID|CLS|LOC|PARENT|ATTR1|ATTR2|STAT
S114|LS0001|LS|POLAR HOUSE|AC0001|7.5|100|A
S114|LS0002|LS|POLAR HOUSE|AC0001|7.5|100|A
S114|LS0003|LS|POLAR HOUSE|AC0001|7.5|100|D
S114|LS0004|LS|DESERT HOUSE|VC0001|5|100|A
S114|LS0005|LS|DESERT HOUSE|VC0001|5|100|A
S114|LS0006|LS|DESERT HOUSE|VC0001|5|100|A
S114|LS0007|LS|SEED BANK|AC0002|2.5|100|A
S114|LS0008|LS|SEED BANK|AC0002|2.5|100|P
S114|VC0001|VC|DESERT HOUSE|AC0001|12||A
S114|AC0001|AC|PLANT ROOM|AM0001|60||A
S114|AC0002|AC|PLANT ROOM|AM0001|60||A
S114|AM0001|AM|PLANT ROOM||120||A
`, "LEGEND", `
CODE|MEANING
LS|Loudspeaker: ATTR1 = tap W, ATTR2 = line V
VC|Volume control: ATTR1 = rating W
AC|Amplifier channel: ATTR1 = rating W
AM|Amplifier frame: ATTR1 = rating W
PARENT|Asset that feeds this one
STAT A|Active
STAT D|Disposed
STAT P|Planned
SITE S114|Wyndlesham Botanic Garden
`), Truth: func(t *typed.Truth) {
		t.Is("", "Wyndlesham Botanic Garden", "one list of assets of four classes with codes, told in a legend on a second sheet, each under its parent")
		t.Speakers("sheet=ASSETS; tap_v=100; line_v=100; amplifier=AM0001", `
rows|tag|room|tap_w|channel|control|status
2|LS0001|POLAR HOUSE|7.5|AC0001||installed
3|LS0002|POLAR HOUSE|7.5|AC0001||installed
4|LS0003|POLAR HOUSE|7.5|AC0001||removed
5|LS0004|DESERT HOUSE|5|AC0001|VC0001|installed
6|LS0005|DESERT HOUSE|5|AC0001|VC0001|installed
7|LS0006|DESERT HOUSE|5|AC0001|VC0001|installed
8|LS0007|SEED BANK|2.5|AC0002||installed
9|LS0008|SEED BANK|2.5|AC0002||future
`)
		t.Channels("line_v=100; amplifier=AM0001", "channel|rated_w|load_w\nAC0001|60|30\nAC0002|60|2.5")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAM0001|120|32.5")
		t.Controls("", "control|rated_w|load_w\nVC0001|12|15")
		t.Left("ASSETS", "10|control|\n11|channel|\n12|channel|\n13|amplifier|")
	}},

	{File: "trust/PA register 2011-2019.xlsx", Kind: "schedule", Book: sheets("Register", `
Register of public address installations, works department
All installations 100 V line

Job|Place|Zone|Spk|W each|Amp|Amp W|Att'r|Att'r W
W-1101|Rushmere Boathouse|Hall|6|6|1|60|R1|50
W-1101|Rushmere Boathouse|Oar store|2|3|1|60||
W-1101|Rushmere Boathouse|Slipway|2|10|2|30||
W-1304|Fen Observatory|Dome|4|6|1|60||
W-1304|Fen Observatory|Library|4|2.5|1|60|R1|6
W-1304|Fen Observatory|Car park|2|15|1|60||
W-1712|Quarry Garden|Lower walk|8|5|1|120||
W-1712|Quarry Garden|Upper walk|8|5|1|120||
W-1712|Quarry Garden|Croquet lawn|4|5|1|120|R1|24
`), Truth: func(t *typed.Truth) {
		t.Is("W-1101", "Rushmere Boathouse", "a register of three jobs by a column; every job has its own amplifier 1 and control R1")
		c := "sheet=Register; tap_v=100; line_v=100"
		t.Speakers(c, `
rows|zone|count|tap_w|amplifier|control
5|Hall|6|6|1|R1
6|Oar store|2|3|1|
7|Slipway|2|10|2|
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\n1|60|42\n2|30|20")
		t.Amplifiers("", "amplifier|rated_w|load_w\n1|60|42\n2|30|20")
		t.Controls("", "control|rated_w|load_w\nR1|50|36")
		t.Also("W-1304", "Fen Observatory", "second job of the register")
		t.Speakers(c, `
rows|zone|count|tap_w|amplifier|control
8|Dome|4|6|1|
9|Library|4|2.5|1|R1
10|Car park|2|15|1|
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\n1|60|64")
		t.Amplifiers("", "amplifier|rated_w|load_w\n1|60|64")
		t.Controls("", "control|rated_w|load_w\nR1|6|10")
		t.Also("W-1712", "Quarry Garden", "third job of the register")
		t.Speakers(c, `
rows|zone|count|tap_w|amplifier|control
11|Lower walk|8|5|1|
12|Upper walk|8|5|1|
13|Croquet lawn|4|5|1|R1
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\n1|120|100")
		t.Amplifiers("", "amplifier|rated_w|load_w\n1|120|100")
		t.Controls("", "control|rated_w|load_w\nR1|24|20")
	}},

	{File: "federal/Observatory - Observatoire.xlsx", Kind: "schedule", Book: sheets("Schedule - Tableau", `
MOUNT CARROW OBSERVATORY / OBSERVATOIRE DU MONT CARROW||||||||
Project / Projet :|R.088412|||System / Réseau :|70 V|||
||||||||
Item / Article|Room / Local|Zone|Qty / Qté|Tap (W) / Prise (W)|Amplifier / Amplificateur|Channel / Voie|Attenuator / Atténuateur|Remarks / Remarques
1|Lobby / Hall|PUB|6|4|A-1|1|ATT-1|
2|Exhibit / Exposition|PUB|10|2|A-1|1|ATT-2|
3|Lecture room / Salle de conférence|CONF|8|4|A-1|2|ATT-3|
4|Dome / Coupole|TECH|4|8|A-2|1||
5|Workshop / Atelier|TECH|2|8|A-2|1||
6|Loading dock / Quai|EXT|2|16|A-2|2||Future phase / Phase future
`, "Amp", `
Amplifier / Amplificateur|Channel / Voie|Power / Puissance (W)
A-1|1|60
A-1|2|60
A-2|1|100
A-2|2|100
`, "Att", `
Attenuator / Atténuateur|Rating / Capacité (W)
ATT-1|35
ATT-2|35
ATT-3|25
`), Truth: func(t *typed.Truth) {
		t.Is("R.088412", "Mount Carrow", "every header, room and remark in two languages")
		t.Speakers("sheet=Schedule - Tableau; tap_v=70.7; line_v=70.7", `
rows|room|zone|count|tap_w|amplifier|channel|control|status
5|Lobby / Hall|PUB|6|4|A-1|1|ATT-1|installed
6|Exhibit / Exposition|PUB|10|2|A-1|1|ATT-2|installed
7|Lecture room / Salle de conférence|CONF|8|4|A-1|2|ATT-3|installed
8|Dome / Coupole|TECH|4|8|A-2|1||installed
9|Workshop / Atelier|TECH|2|8|A-2|1||installed
10|Loading dock / Quai|EXT|2|16|A-2|2||future
`)
		t.Channels("line_v=70.7", "amplifier|channel|rated_w|load_w\nA-1|1|60|44\nA-1|2|60|32\nA-2|1|100|48\nA-2|2|100|0")
		t.Amplifiers("", "amplifier|rated_w|load_w\nA-1|120|76\nA-2|200|48")
		t.Controls("", "control|rated_w|load_w\nATT-1|35|24\nATT-2|35|20\nATT-3|25|32")
	}},

	{File: "québec/aréna des Aulnes.csv", Kind: "schedule", Bytes: text(`
Aréna des Aulnes;;;;;;
Dossier : 2020-117;;Ligne : 70 V;;;;
;;;;;;
Zone;Local;Haut-parleurs;Dérivation;Contrôle;Ampli;Canal
1;Patinoire - côté joueurs;8;16 W;;AMP-1;1
1;Patinoire - côté public;8;16 W;;AMP-1;1
2;Gradins;10;8 W;;AMP-1;2
3;Vestiaires 1 à 4;8;2 W;CV-1 (25 W);AMP-2;1
3;Vestiaire arbitres;1;2 W;CV-2 (10 W);AMP-2;1
4;Hall;6;4 W;CV-3 (25 W);AMP-2;2
4;Billetterie;1;2 W;CV-4 (10 W);AMP-2;2
;;;;;;
Amplis;;;;;;
AMP-1;2 canaux de 300 W;;;;;
AMP-2;2 canaux de 60 W;;;;;
`), Truth: func(t *typed.Truth) {
		t.Is("2020-117", "Aréna des Aulnes", "ratings of controls in brackets, of amplifiers in words below")
		t.Speakers("tap_v=70.7; line_v=70.7", `
rows|zone|room|count|tap_w|control|amplifier|channel
5|1|Patinoire - côté joueurs|8|16||AMP-1|1
6|1|Patinoire - côté public|8|16||AMP-1|1
7|2|Gradins|10|8||AMP-1|2
8|3|Vestiaires 1 à 4|8|2|CV-1|AMP-2|1
9|3|Vestiaire arbitres|1|2|CV-2|AMP-2|1
10|4|Hall|6|4|CV-3|AMP-2|2
11|4|Billetterie|1|2|CV-4|AMP-2|2
`)
		t.Channels("line_v=70.7", "amplifier|channel|rated_w|load_w\nAMP-1|1|300|256\nAMP-1|2|300|80\nAMP-2|1|60|18\nAMP-2|2|60|26")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAMP-1|600|336\nAMP-2|120|44")
		t.Controls("", "control|rated_w|load_w\nCV-1|25|16\nCV-2|10|2\nCV-3|25|24\nCV-4|10|2")
	}},

	{File: "suisse/Jardin Chantevigne HP.csv", Kind: "schedule", Bytes: text(`
N° affaire;4471;Objet;Jardin botanique de Chantevigne
Tension de ligne;100 V;Date;14.02.2017

Rep.;Emplacement;Type HP;Nb;W/HP;Potentiomètre;Ampli/sortie;Câble;Long. (m)
HP1;Serre tempérée;projecteur;4;10;;A/1;2x1,5;85
HP2;Serre chaude;projecteur;6;10;;A/1;2x1,5;120
HP3;Bibliothèque;encastré;6;3;PT1;A/2;2x1,5;40
HP4;Salle de cours;encastré;4;6;PT2;A/2;2x1,5;55
HP5;Herbier;applique;3;1,5;PT3;A/2;2x1,5;62
HP6;Pépinière;pavillon;2;15;;B/1;2x2,5;210
HP7;Parking;pavillon;2;15;;B/1;2x2,5;260
HP8;Réserve au dépôt;encastré;2;6;;;;
;;;;;;;;
PT1 20 W, PT2 20 W, PT3 5 W
Ampli A : 2 x 120 W ; ampli B : 1 x 60 W
`), Truth: func(t *typed.Truth) {
		t.Is("4471", "Chantevigne", "amplifier and output in one cell, two sentences of ratings, loudspeakers in reserve")
		t.Speakers("tap_v=100; line_v=100", `
rows|tag|room|count|tap_w|control|amplifier|channel|status
5|HP1|Serre tempérée|4|10||A|1|installed
6|HP2|Serre chaude|6|10||A|1|installed
7|HP3|Bibliothèque|6|3|PT1|A|2|installed
8|HP4|Salle de cours|4|6|PT2|A|2|installed
9|HP5|Herbier|3|1.5|PT3|A|2|installed
10|HP6|Pépinière|2|15||B|1|installed
11|HP7|Parking|2|15||B|1|installed
12|HP8||2|6||||spare
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nA|1|120|100\nA|2|120|46.5\nB|1|60|60")
		t.Amplifiers("", "amplifier|rated_w|load_w\nA|240|146.5\nB|60|60")
		t.Controls("", "control|rated_w|load_w\nPT1|20|18\nPT2|20|24\nPT3|5|4.5")
		t.Lines("note=one length", `
line|length_m|area_mm2
HP1|85|1.5
HP2|120|1.5
HP3|40|1.5
HP4|55|1.5
HP5|62|1.5
HP6|210|2.5
HP7|260|2.5
`)
	}},

	{File: "vlaanderen/Zonneweide luidsprekers.ods", Kind: "schedule", Saved: "ods", Book: sheets("lijst", `
Dossier|D-2216|||||
Gebouw|Plantentuin Zonneweide|||||
Lijnspanning|100 V|||||

Lokaal|Soort|Stuks|Watt per stuk|Volumeregelaar|Versterker|Opmerking
Inkom|inbouw|4|6|VR1|V1|
Onthaal|inbouw|2|3|VR2|V1|
Vergaderzaal|inbouw|4|6|VR3|V1|regelaar vervangen in 2019
Varenkas|opbouw|6|10||V2|
Palmenkas|opbouw|8|10||V2|
Orchideeënkas|opbouw|4|5||V2|niet aangesloten
Buitenpad|hoorn|6|15||V3|

Regelaars|||||
VR1|30 W||||
VR2|10 W||||
VR3|20 W||||

Versterkers|||||
V1|60 W||||
V2|240 W||||
V3|120 W||||
`), Truth: func(t *typed.Truth) {
		t.Is("D-2216", "Zonneweide", "two small lists below the table; loudspeakers that are not connected")
		t.Speakers("sheet=lijst; tap_v=100; line_v=100", `
rows|room|count|tap_w|control|amplifier|status
6|Inkom|4|6|VR1|V1|installed
7|Onthaal|2|3|VR2|V1|installed
8|Vergaderzaal|4|6|VR3|V1|installed
9|Varenkas|6|10||V2|installed
10|Palmenkas|8|10||V2|installed
11|Orchideeënkas|4|5||V2|removed
12|Buitenpad|6|15||V3|installed
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nV1|60|54\nV2|240|140\nV3|120|90")
		t.Amplifiers("", "amplifier|rated_w|load_w\nV1|60|54\nV2|240|140\nV3|120|90")
		t.Controls("", "control|rated_w|load_w\nVR1|30|24\nVR2|10|6\nVR3|20|24")
	}},
}
