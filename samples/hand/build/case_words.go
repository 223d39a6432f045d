package main

import "lineaudit/samples/typed"

// words are plain lists, each in the words of yet another hand.
func words() []typed.Case {
	return []typed.Case{
		{File: "Stanner Quay/main house speakers.xlsx", Kind: "schedule", Saved: "xlsx", Book: book("Speakers", `
Stanner Quay Boathouse - main house
Speaker Location|Spkr Ref|Qty|Tx Tap (W)|Sub-total (W)|Fed From|O/P
Entrance hall|A|4|3|12|MA-60|1
Ladies changing|A|3|1.5|4.5|MA-60|1
Gents changing|A|3|1.5|4.5|MA-60|1
Members lounge|A|6|3|18|MA-60|1
Training gallery|B|4|7.5|30|MA-120|1
Boat store|B|6|7.5|45|MA-120|1
Slipway|C|2|15|30|MA-120|2
Boat park|C|3|15|45|MA-120|2
|||Total|189
Speaker refs: A = 6W ceiling, B = 15W cabinet, C = 15W horn. All 100V.
MA-60: single output 60W. MA-120: two outputs 120W each.
`, bold("A1", "A2:G2")), Truth: func(t *typed.Truth) {
			t.Is("", "Stanner Quay Boathouse", "plain: 'Tx Tap', 'Fed From', 'O/P'; amplifiers in sentences")
			t.Speakers("tap_v=100; line_v=100; sheet=Speakers", `
rows|room|model|count|tap_w|amplifier|channel
3|Entrance hall|A|4|3|MA-60|1
4|Ladies changing|A|3|1.5|MA-60|1
5|Gents changing|A|3|1.5|MA-60|1
6|Members lounge|A|6|3|MA-60|1
7|Training gallery|B|4|7.5|MA-120|1
8|Boat store|B|6|7.5|MA-120|1
9|Slipway|C|2|15|MA-120|2
10|Boat park|C|3|15|MA-120|2
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
MA-60|1|60|39
MA-120|1|120|75
MA-120|2|120|75
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nMA-60|60|39\nMA-120|240|150")
			t.Left("Speakers", "11|total|right")
		}},

		{File: "Cold Fork Ice Center/SPEAKER TAKEOFF.xls", Kind: "schedule", Saved: "xls", Book: book("TAKEOFF", `
COLD FORK ICE CENTER RENOVATION - SPEAKER TAKEOFF FROM SHEET E-4||||||
SYM|DESCRIPTION|AREA|COUNT|WATTS EA|WATTS|HOMERUN
S1|8" FLUSH CLG SPKR W/ 70V XFMR|LOBBY|8|5|40|HR-1
S1|8" FLUSH CLG SPKR W/ 70V XFMR|TOILETS|4|2.5|10|HR-1
S1|8" FLUSH CLG SPKR W/ 70V XFMR|OFFICES|6|2.5|15|HR-1
S2|SURF MTD SPKR|WARMING AREA|4|10|40|HR-2
S2|SURF MTD SPKR|LOCKERS|8|5|40|HR-2
S3|HORN|RINK|10|15|150|HR-3
S3|HORN|EXTERIOR|4|15|60|HR-4
|TOTAL||44||355|
HR-1, HR-2, HR-4: 100W AMP CHANNEL. HR-3: 200W AMP CHANNEL.
`, bold("A1", "A2:G2")), Truth: func(t *typed.Truth) {
			t.Is("", "Cold Fork Ice Center", "plain: a contractor's takeoff with symbols and home runs")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=TAKEOFF", `
rows|room|count|tap_w|channel
3|LOBBY|8|5|HR-1
4|TOILETS|4|2.5|HR-1
5|OFFICES|6|2.5|HR-1
6|WARMING AREA|4|10|HR-2
7|LOCKERS|8|5|HR-2
8|RINK|10|15|HR-3
9|EXTERIOR|4|15|HR-4
`)
			t.Channels("line_v=70.7", "channel|rated_w|load_w\nHR-1|100|65\nHR-2|100|80\nHR-3|200|150\nHR-4|100|60")
			t.Left("TAKEOFF", "10|total|right")
		}},

		{File: "Stiftung Gärten/Tropenhaus ELA.csv", Kind: "schedule", Bytes: ansi(`
Tropenhaus;ELA-Anlage;;;;;
ELA-Kreis;Einbauort;Bestückung;Stückzahl;Trafoabgriff;Leistungsaufnahme;Endverstärker
1;Eingang;Einbau-LS 6 W;4;3 W;12 W;EV 1
1;Shop;Einbau-LS 6 W;3;3 W;9 W;EV 1
1;Toiletten;Einbau-LS 6 W;4;1,5 W;6 W;EV 1
2;Regenwald;Kugel-LS 15 W;8;7,5 W;60 W;EV 2
2;Mangroven;Kugel-LS 15 W;4;7,5 W;30 W;EV 2
3;Aquarien;Aufbau-LS 10 W;6;5 W;30 W;EV 2
4;Außenbecken;Horn-LS 20 W;4;10 W;40 W;EV 3
4;Zufahrt;Horn-LS 20 W;2;20 W;40 W;EV 3
Summe;;;35;;227 W;
EV 1: 60 W, EV 2: 120 W, EV 3: 120 W (100 V);;;;;;
`), Truth: func(t *typed.Truth) {
			t.Is("", "Tropenhaus", "plain: 'ELA-Kreis', 'Bestückung', 'Trafoabgriff', 'Leistungsaufnahme', 'Endverstärker'")
			t.Speakers("tap_v=100; line_v=100", `
rows|room|model|count|tap_w|amplifier|channel
3|Eingang|Einbau-LS 6 W|4|3|EV 1|1
4|Shop|Einbau-LS 6 W|3|3|EV 1|1
5|Toiletten|Einbau-LS 6 W|4|1.5|EV 1|1
6|Regenwald|Kugel-LS 15 W|8|7.5|EV 2|2
7|Mangroven|Kugel-LS 15 W|4|7.5|EV 2|2
8|Aquarien|Aufbau-LS 10 W|6|5|EV 2|3
9|Außenbecken|Horn-LS 20 W|4|10|EV 3|4
10|Zufahrt|Horn-LS 20 W|2|20|EV 3|4
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w|note
EV 1|1|60|27|
EV 2|2||90|two circuits on it
EV 2|3||30|
EV 3|4|120|80|
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nEV 1|60|27\nEV 2|120|120\nEV 3|120|80")
			t.Left("", "11|total|right")
		}},

		{File: "Jardin des Estives/Pavillon - implantation HP.xlsx", Kind: "schedule", Book: book("Implantation", `
PAVILLON D'ACCUEIL - IMPLANTATION DES HAUT-PARLEURS
Réf. dossier : JE-44|||Ligne 100 V|||
Emplacement|Modèle|Nbre HP|Puissance unitaire|Puissance cumulée|Départ|Raccordé sur
Porche|étanche 10 W|2|5 W|10 W|D1|Ampli A
Billetterie|encastré 6 W|2|1,5 W|3 W|D1|Ampli A
Hall|encastré 6 W|8|3 W|24 W|D1|Ampli A
Auditorium (hall)|encastré 6 W|4|3 W|12 W|D2|Ampli A
Bureaux|encastré 6 W|5|0,75 W|3,75 W|D2|Ampli A
Terrasse|étanche 10 W|4|10 W|40 W|D3|Ampli B
Aire de jeux|étanche 10 W|2|10 W|20 W|D3|Ampli B
Total||27||112,75 W||
Ampli A : 60 W par départ (2 départs) - Ampli B : 60 W (1 départ)
`, bold("A1", "A3:G3")), Truth: func(t *typed.Truth) {
			t.Is("JE-44", "Pavillon d'accueil", "plain: 'Nbre HP', 'Puissance unitaire', 'Puissance cumulée', 'Départ', 'Raccordé sur'")
			t.Speakers("tap_v=100; line_v=100; sheet=Implantation", `
rows|room|model|count|tap_w|amplifier|channel
4|Porche|étanche 10 W|2|5|Ampli A|D1
5|Billetterie|encastré 6 W|2|1.5|Ampli A|D1
6|Hall|encastré 6 W|8|3|Ampli A|D1
7|Auditorium (hall)|encastré 6 W|4|3|Ampli A|D2
8|Bureaux|encastré 6 W|5|0.75|Ampli A|D2
9|Terrasse|étanche 10 W|4|10|Ampli B|D3
10|Aire de jeux|étanche 10 W|2|10|Ampli B|D3
`)
			t.Channels("line_v=100; rated_w=60", "amplifier|channel|load_w\nAmpli A|D1|37\nAmpli A|D2|15.75\nAmpli B|D3|60")
			t.Amplifiers("", "amplifier|rated_w|load_w\nAmpli A|120|52.75\nAmpli B|60|60")
			t.Left("Implantation", "11|total|right")
		}},

		{File: "Pista de hielo Robleda/memoria altavoces.ods", Kind: "schedule", Saved: "ods", Book: book("Memoria", `
Pista de hielo de Robleda. Memoria de megafonía. Línea 100 V|||||||
|||||||
Circuito|Dependencia|Altavoz tipo|N.º|Vatios ud.|Vatios totales|Amplificador|Vatios amplif.
C1|Vestíbulo|Techo|6|3|18|Amp. 1|60
C1|Taquillas|Techo|2|1,5|3|Amp. 1|60
C1|Alquiler patines|Techo|4|3|12|Amp. 1|60
C2|Vestuarios|Techo|10|1,5|15|Amp. 2|60
C2|Enfermería|Techo|1|1,5|1,5|Amp. 2|60
C3|Pista|Bocina|12|15|180|Amp. 3|240
C4|Grada|Columna|8|10|80|Amp. 4|120
C5|Exterior|Bocina|3|15|45|Amp. 5|60
|||46||354,5||
`, bold("A1", "A3:H3")), Truth: func(t *typed.Truth) {
			t.Is("", "Robleda", "plain: 'Vatios ud.', 'Vatios totales', 'Vatios amplif.'")
			t.Speakers("tap_v=100; line_v=100; sheet=Memoria", `
rows|room|model|count|tap_w|amplifier|channel
4|Vestíbulo|Techo|6|3|Amp. 1|C1
5|Taquillas|Techo|2|1.5|Amp. 1|C1
6|Alquiler patines|Techo|4|3|Amp. 1|C1
7|Vestuarios|Techo|10|1.5|Amp. 2|C2
8|Enfermería|Techo|1|1.5|Amp. 2|C2
9|Pista|Bocina|12|15|Amp. 3|C3
10|Grada|Columna|8|10|Amp. 4|C4
11|Exterior|Bocina|3|15|Amp. 5|C5
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
Amp. 1|C1|60|33
Amp. 2|C2|60|16.5
Amp. 3|C3|240|180
Amp. 4|C4|120|80
Amp. 5|C5|60|45
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
Amp. 1|60|33
Amp. 2|60|16.5
Amp. 3|240|180
Amp. 4|120|80
Amp. 5|60|45
`)
			t.Left("Memoria", "12|total|right")
		}},

		{File: "Rimessa barche Portoriva/scheda impianto.csv", Kind: "schedule", Bytes: utf8(`
SCHEDA IMPIANTO;Rimessa barche di Portoriva;;;;;
Sistema a tensione costante;100 V;;;;;
Progressivo;Posizione;Tipo altoparlante;Numero;Potenza unitaria;Potenza complessiva;Circuito
1;Ingresso;soffitto;4;3 W;12 W;C1
2;Spogliatoio donne;soffitto;2;1,5 W;3 W;C1
3;Spogliatoio uomini;soffitto;2;1,5 W;3 W;C1
4;Palestra;parete;4;6 W;24 W;C2
5;Capannone barche;parete;6;6 W;36 W;C2
6;Pontile;tromba;3;15 W;45 W;C3
7;Parcheggio;tromba;2;7,5 W;15 W;C3
Totali;;;23;;138 W;
Centrale: 3 circuiti da 60 W;;;;;;
`), Truth: func(t *typed.Truth) {
			t.Is("", "Rimessa barche di Portoriva", "plain: 'Progressivo', 'Potenza unitaria', 'Potenza complessiva', 'Circuito'")
			t.Speakers("tap_v=100; line_v=100", `
rows|room|model|count|tap_w|channel
4|Ingresso|soffitto|4|3|C1
5|Spogliatoio donne|soffitto|2|1.5|C1
6|Spogliatoio uomini|soffitto|2|1.5|C1
7|Palestra|parete|4|6|C2
8|Capannone barche|parete|6|6|C2
9|Pontile|tromba|3|15|C3
10|Parcheggio|tromba|2|7.5|C3
`)
			t.Channels("line_v=100; rated_w=60", "channel|load_w\nC1|18\nC2|60\nC3|60")
			t.Amplifiers("", "rated_w|load_w|note\n180|138|unnamed")
			t.Left("", "11|total|right")
		}},

		{File: "IJsbaan Hogeveld/groepenlijst.xlsx", Kind: "schedule", Book: book("Groepen", `
IJsbaan Hogeveld - groepenlijst geluid (100 volt)
Groep|Omschrijving|Soort|St.|Trafo (W)|W p/groep|Eindversterker|Max W
1|Entree en hal|plafond|8|3|24|EV-1|60
2|Kleedkamers|plafond|12|1,5|18|EV-1|60
3|Wachtruimte|wand|4|6|24|EV-2|60
4|IJsvloer links|zuil|6|20|120|EV-3|240
5|IJsvloer rechts|zuil|6|20|120|EV-3|240
6|Buiten|hoorn|3|15|45|EV-2|60
Totaal|||39||351||
`, bold("A1", "A2:H2")), Truth: func(t *typed.Truth) {
			t.Is("", "IJsbaan Hogeveld", "plain: 'Trafo (W)', 'W p/groep', 'Eindversterker', 'Max W': two groups on each amplifier")
			t.Speakers("tap_v=100; line_v=100; sheet=Groepen", `
rows|zone|room|model|count|tap_w|amplifier
3|1|Entree en hal|plafond|8|3|EV-1
4|2|Kleedkamers|plafond|12|1.5|EV-1
5|3|Wachtruimte|wand|4|6|EV-2
6|4|IJsvloer links|zuil|6|20|EV-3
7|5|IJsvloer rechts|zuil|6|20|EV-3
8|6|Buiten|hoorn|3|15|EV-2
`)
			t.Channels("line_v=100", `
amplifier|rated_w|load_w|note
EV-1|60|42|
EV-2|60|69|over its rating
EV-3|240|240|exactly its rating
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nEV-1|60|42\nEV-2|60|69\nEV-3|240|240")
			t.Left("Groepen", "9|total|right")
		}},
	}
}
