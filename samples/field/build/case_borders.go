package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A Belgian office writes everything in two languages.
var belgian = []typed.Case{
	{File: "elzenvoort/2019-33 luidsprekers haut-parleurs.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Botanische tuin Elzenvoort / Jardin botanique Elzenvoort;;;;;;;
Dossier 2019-33;;;;;;;
100 V-lijn / ligne 100 V;;;;;;;
;;;;;;;
Zone;Lokaal / Local;Type;Aantal / Nombre;W per stuk / W par pièce;Totaal / Total W;Versterker / Amplificateur;Regelaar / Atténuateur
Z1;Inkomhal / Hall d'entrée;PL-6;4;3;12;V1;R1
Z1;Vestiaire;PL-6;2;1,5;3;V1;
Z1;Gang / Couloir;PL-6;5;1,5;7,5;V1;
Z2;Palmenserre / Serre aux palmiers;PJ-10;4;10;40;V1;
Z2;Varenserre / Serre aux fougères;PJ-10;2;5;10;V1;R2
Z3;Auditorium;PL-6;8;6;48;V2;R3
Z3;Leeszaal / Salle de lecture;PL-6;4;3;12;V2;R4
Z3;Archief / Archives;PL-6;2;1,5;3;V2;
Z4;Parking;HK-15;3;15;45;V2;
Totaal / Total;;;34;;180,5;;
;;;;;;;
Versterker / Amplificateur V1: 120 W;;;;;;;
Versterker / Amplificateur V2: 120 W;;;;;;;
Regelaar / Atténuateur R1: 20 W;;;;;;;
Regelaar / Atténuateur R2: 12 W;;;;;;;
Regelaar / Atténuateur R3: 60 W;;;;;;;
Regelaar / Atténuateur R4: 20 W;;;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("2019-33", "Botanische tuin Elzenvoort / Jardin botanique Elzenvoort", "every heading in Dutch and French; ratings in lines below")
		t.Speakers("tap_v=100; line_v=100; amplifier=V1", `rows|zone|room|model|count|tap_w|control
6|Z1|Inkomhal / Hall d'entrée|PL-6|4|3|R1
7|Z1|Vestiaire|PL-6|2|1.5|
8|Z1|Gang / Couloir|PL-6|5|1.5|
9|Z2|Palmenserre / Serre aux palmiers|PJ-10|4|10|
10|Z2|Varenserre / Serre aux fougères|PJ-10|2|5|R2`)
		t.Speakers("tap_v=100; line_v=100; amplifier=V2", `rows|zone|room|model|count|tap_w|control
11|Z3|Auditorium|PL-6|8|6|R3
12|Z3|Leeszaal / Salle de lecture|PL-6|4|3|R4
13|Z3|Archief / Archives|PL-6|2|1.5|
14|Z4|Parking|HK-15|3|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
V1|120|72.5
V2|120|108`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|120|72.5
V2|120|108`)
		t.Controls("", `control|rated_w|load_w
R1|20|12
R2|12|10
R3|60|48
R4|20|12`)
		t.Left("", `15|total|sums`)
	}},

	{File: "elzenvoort/2020-07 botenhuis Meerle.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Luidsprekers - HP")
		p.Put("A1", `
Botenhuis Meerle / Hangar à bateaux Meerle
Dossier 2020-07
Lijnspanning / tension de ligne: 100 V
||
Nr.⏎N°|Lokaal⏎Local|Type|Vermogen (W)⏎Puissance (W)|Uitgang⏎Sortie|Opmerking⏎Remarque
L01|Botenhal / Hangar|HK-15|7.5|1|
L02|Botenhal / Hangar|HK-15|7.5|1|
L03|Botenhal / Hangar|HK-15|7.5|1|
L04|Steiger / Ponton|HK-15|15|1|
L05|Steiger / Ponton|HK-15|15|1|
L06|Kleedkamer A / Vestiaire A|PL-6|3|2|
L07|Kleedkamer A / Vestiaire A|PL-6|3|2|
L08|Kleedkamer B / Vestiaire B|PL-6|3|2|
L09|Kleedkamer B / Vestiaire B|PL-6|3|2|
L10|Bureau|PL-6|1.5|2|
L11|EHBO / Premiers soins|PL-6|1.5|2|
L12|Magazijn / Dépôt|PL-6|3||reserve, niet aangesloten / réserve, non raccordé
`)
		p.Bold("A1", "A5:F5")
		a := p.Sheet("Versterker - Ampli")
		a.Put("A1", `
Versterker⏎Amplificateur|Uitgang⏎Sortie|Vermogen (W)⏎Puissance (W)
AV1|1|80
AV1|2|80
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2020-07", "Botenhuis Meerle / Hangar à bateaux Meerle", "headings of two languages on two lines of a cell; outputs named without the one amplifier")
		t.Speakers("sheet=Luidsprekers - HP; tap_v=100; line_v=100; amplifier=AV1; channel=1", `rows|tag|room|model|tap_w
6..8|L01..|Botenhal / Hangar|HK-15|7.5
9..10|L04..|Steiger / Ponton|HK-15|15`)
		t.Speakers("sheet=Luidsprekers - HP; tap_v=100; line_v=100; amplifier=AV1; channel=2", `rows|tag|room|model|tap_w
11..12|L06..|Kleedkamer A / Vestiaire A|PL-6|3
13..14|L08..|Kleedkamer B / Vestiaire B|PL-6|3
15|L10|Bureau|PL-6|1.5
16|L11|EHBO / Premiers soins|PL-6|1.5`)
		t.Speakers("sheet=Luidsprekers - HP; status=spare", `rows|tag|room|model|tap_w
17|L12|Magazijn / Dépôt|PL-6|3`)
		t.Channels("line_v=100; rated_w=80", `amplifier|channel|load_w
AV1|1|52.5
AV1|2|15`)
		t.Amplifiers("", `amplifier|load_w
AV1|67.5`)
	}},
}

// An Austrian office: floors as sections, subtotals, cable lists.
var austrian = []typed.Case{
	{File: "kaltenbrunn/Eishalle Lautsprecherliste.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Lautsprecher")
		p.Put("A1", `
Eishalle Kaltenbrunn||||Projekt 24-061
ELA-Anlage 100 V, Lautsprecherliste, Stand Jänner
||
Pos.|Raum|Typ|Stk.|W je Stk.|W gesamt|Verstärker|Ausgang|Regler
Erdgeschoß
1.01|Eisfläche Nord|HL-20|4|20|80|V1|1|
1.02|Eisfläche Süd|HL-20|4|20|80|V1|1|
1.03|Kassa|DL-6|1|1.5|1.5|V2|1|R1
1.04|Schlittschuhverleih|DL-6|4|3|12|V2|1|R2
1.05|Garderobe 1|DL-6|3|3|9|V2|1|
1.06|Garderobe 2|DL-6|3|3|9|V2|1|
|Zwischensumme||19||191.5
Obergeschoß
2.01|Stiegenhaus|WL-6|2|6|12|V2|2|
2.02|Galerie|WL-6|6|6|36|V2|2|R3
2.03|Sitzungszimmer|DL-6|4|1.5|6|V2|2|R4
2.04|Regie|DL-6|1|1.5|1.5|V2|2|
|Zwischensumme||13||55.5
|Summe||32||247
`)
		p.Bold("A1", "A4:I4", "A5", "A13")
		a := p.Sheet("Verstärker")
		a.Put("A1", `
Verstärker|Ausgänge|W je Ausgang
V1|1|250
V2|2|80
`)
		c := p.Sheet("Regler")
		c.Put("A1", `
Regler|Raum|Belastbarkeit W
R1|Kassa|6
R2|Schlittschuhverleih|20
R3|Galerie|36
R4|Sitzungszimmer|12
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("24-061", "Eishalle Kaltenbrunn", "floors as titles with subtotals; a title may be taken for the zone")
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100", `rows|room|model|count|tap_w|amplifier|channel|control
6|Eisfläche Nord|HL-20|4|20|V1|1|
7|Eisfläche Süd|HL-20|4|20|V1|1|
8|Kassa|DL-6|1|1.5|V2|1|R1
9|Schlittschuhverleih|DL-6|4|3|V2|1|R2
10|Garderobe 1|DL-6|3|3|V2|1|
11|Garderobe 2|DL-6|3|3|V2|1|
14|Stiegenhaus|WL-6|2|6|V2|2|
15|Galerie|WL-6|6|6|V2|2|R3
16|Sitzungszimmer|DL-6|4|1.5|V2|2|R4
17|Regie|DL-6|1|1.5|V2|2|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|250|160
V2|1|80|31.5
V2|2|80|55.5`)
		t.Amplifiers("", `amplifier|load_w
V1|160
V2|87`)
		t.Controls("", `control|rated_w|load_w
R1|6|1.5
R2|20|12
R3|36|36
R4|12|6`)
		t.Left("Lautsprecher", `5|title|a floor
12|subtotal|sums of a floor
13|title|a floor
18|subtotal|sums of a floor
19|total|sums`)
	}},

	{File: "kaltenbrunn/Bootshaus Leitungen.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Bootshaus Schilfau;;;;;;;;
Projekt 24-070;;;;;;;;
100-V-Lautsprecherleitungen, jede vom Verstärker weg;;;;;;;;
;;;;;;;;
Leitung;Verstärker;Ausgang;Bereich;Länge m;Querschnitt mm²;Lautsprecher;Anzahl;W je Lautsprecher
L1;V1;1;Bootshalle;38;1,5;Hornlautsprecher;4;7,5
L2;V1;1;Steg;64;2,5;Hornlautsprecher;3;15
L3;V1;1;Werkstatt;27,5;1,5;Wandlautsprecher;2;6
L4;V1;2;Umkleiden;41;1,5;Deckenlautsprecher;6;3
L5;V1;2;Büro;19;0,75;Deckenlautsprecher;1;1,5
L6;V1;2;Aufenthaltsraum;33;1,5;Deckenlautsprecher;4;3
L7;V2;1;Parkplatz;120;2,5;Hornlautsprecher;4;15
L8;V2;1;Zufahrt;155;2,5;Hornlautsprecher;1;15
L9;V2;2;Segellager;47;1,5;Wandlautsprecher;4;6
;;;;;;;;
Verstärker V1: 2 x 120 W;;;;;;;;
Verstärker V2: 2 x 120 W;;;;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("24-070", "Bootshaus Schilfau", "a row a cable with its load, decimal commas")
		t.Speakers("tap_v=100; line_v=100", `rows|zone|amplifier|channel|count|tap_w
6|Bootshalle|V1|1|4|7.5
7|Steg|V1|1|3|15
8|Werkstatt|V1|1|2|6
9|Umkleiden|V1|2|6|3
10|Büro|V1|2|1|1.5
11|Aufenthaltsraum|V1|2|4|3
12|Parkplatz|V2|1|4|15
13|Zufahrt|V2|1|1|15
14|Segellager|V2|2|4|6`)
		t.Channels("line_v=100; rated_w=120", `amplifier|channel|load_w
V1|1|87
V1|2|31.5
V2|1|75
V2|2|24`)
		t.Amplifiers("", `amplifier|load_w
V1|118.5
V2|99`)
		t.Lines("", `line|zone|length_m|area_mm2
L1|Bootshalle|38|1.5
L2|Steg|64|2.5
L3|Werkstatt|27.5|1.5
L4|Umkleiden|41|1.5
L5|Büro|19|0.75
L6|Aufenthaltsraum|33|1.5
L7|Parkplatz|120|2.5
L8|Zufahrt|155|2.5
L9|Segellager|47|1.5`)
	}},
}

// A Swiss-Italian installer: a plain list, and a sheet with zones across.
var ticino = []typed.Case{
	{File: "valmorena/giardino botanico altoparlanti.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Giardino botanico Valmorena;;;;;;;
Commessa 5104;;;;;;;
Linea 100 V;;;;;;;
;;;;;;;
Zona;Locale;Altoparlante;Quantità;Presa W;Amplificatore;Potenza amplificatore W;Regolatore
1;Serra tropicale;PR-10;4;10;A1;120;
1;Serra fredda;PR-10;3;5;A1;120;
1;Serra cactus;PR-10;2;5;A1;120;R1
2;Entrata;SF-6;4;3;A2;60;R2
2;Cassa;SF-6;1;1.5;A2;60;R3
2;Guardaroba;SF-6;2;1.5;A2;60;
2;Sala conferenze;SF-6;6;3;A2;60;R4
3;Posteggio;TR-15;3;15;A3;120;
3;Viale delle rose;TR-15;2;15;A3;120;
3;Deposito attrezzi;TR-15;1;7.5;A3;120;
;;;;;;;
Regolatore;Potenza W;Posizione;;;;;
R1;12;Serra cactus;;;;;
R2;12;Entrata;;;;;
R3;6;Cassa;;;;;
R4;20;Sala conferenze;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("5104", "Giardino botanico Valmorena", "amplifier rating repeated on each row; controls in a second table below; semicolons with decimal points")
		t.Speakers("tap_v=100; line_v=100", `rows|zone|room|model|count|tap_w|amplifier|control
6|1|Serra tropicale|PR-10|4|10|A1|
7|1|Serra fredda|PR-10|3|5|A1|
8|1|Serra cactus|PR-10|2|5|A1|R1
9|2|Entrata|SF-6|4|3|A2|R2
10|2|Cassa|SF-6|1|1.5|A2|R3
11|2|Guardaroba|SF-6|2|1.5|A2|
12|2|Sala conferenze|SF-6|6|3|A2|R4
13|3|Posteggio|TR-15|3|15|A3|
14|3|Viale delle rose|TR-15|2|15|A3|
15|3|Deposito attrezzi|TR-15|1|7.5|A3|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|120|65
A2|60|34.5
A3|120|82.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|120|65
A2|60|34.5
A3|120|82.5`)
		t.Controls("", `control|rated_w|load_w
R1|12|10
R2|12|12
R3|6|1.5
R4|20|18`)
	}},

	{File: "valmorena/planetario Monte Grigio.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Zone")
		p.Put("A1", `
Planetario Monte Grigio
Commessa 5120
Impianto di diffusione sonora, linea 100 V
||
Zona|Z1|Z2|Z3|Z4|Z5|Z6|Z7|Z8
Locale|Cupola|Atrio|Biblioteca|Aula|Corridoio|Officina|Belvedere|Posteggio
Altoparlante|PA-8|SF-6|SF-6|SF-6|SF-6|TR-15|TR-15|TR-15
Quantità|8|6|4|4|5|1|2|3
Presa (W)|6|3|1.5|3|1.5|15|15|15
Totale (W)|48|18|6|12|7.5|15|30|45
Amplificatore|A1|A1|A1|A1|A1|A2|A2|A2
Uscita|1|2|2|2|2|1|1|1
Regolatore|-|R1|R2|R3|-|-|-|-
Potenza regolatore (W)|-|35|12|12|-|-|-|-
Lunghezza cavo (m)|60|35|48|52|40|70|95|140
Sezione cavo (mm²)|2.5|1.5|1.5|1.5|1.5|1.5|2.5|2.5
||
Amplificatore|Uscita|Potenza (W)
A1|1|60
A1|2|60
A2|1|120
`)
		p.Bold("A1", "A5:A16", "A18:C18")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5120", "Planetario Monte Grigio", "zones run across; the amplifiers stand below in an ordinary table")
		t.Speakers("sheet=Zone; tap_v=100; line_v=100", `rows|zone|room|model|count|tap_w|amplifier|channel|control
B|Z1|Cupola|PA-8|8|6|A1|1|
C|Z2|Atrio|SF-6|6|3|A1|2|R1
D|Z3|Biblioteca|SF-6|4|1.5|A1|2|R2
E|Z4|Aula|SF-6|4|3|A1|2|R3
F|Z5|Corridoio|SF-6|5|1.5|A1|2|
G|Z6|Officina|TR-15|1|15|A2|1|
H|Z7|Belvedere|TR-15|2|15|A2|1|
I|Z8|Posteggio|TR-15|3|15|A2|1|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A1|1|60|48
A1|2|60|43.5
A2|1|120|90`)
		t.Amplifiers("", `amplifier|load_w
A1|91.5
A2|90`)
		t.Controls("", `control|zone|rated_w|load_w
R1|Z2|35|18
R2|Z3|12|6
R3|Z4|12|12`)
		t.Lines("", `zone|length_m|area_mm2
Z1|60|2.5
Z2|35|1.5
Z3|48|1.5
Z4|52|1.5
Z5|40|1.5
Z6|70|1.5
Z7|95|2.5
Z8|140|2.5`)
	}},
}

// A Catalan installer writes Spanish, with the names of the places in Catalan.
var catalan = []typed.Case{
	{File: "fontclara/megafonia jardi botanic.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Altavoces")
		p.Put("A1", `
Instalación:|Jardí botànic de Fontclara
Obra:|O-318
Tensión de línea:|100 V
||
Ref.|Ubicación|Modelo|Uds.|W por altavoz|Línea|Atenuador
1|Hivernacle tropical|CX-10|4|10|L1|
2|Hivernacle de cactus|CX-10|2|5|L1|
3|Vestíbul|TE-6|6|3|L2|AT1
4|Taquilles|TE-6|1|1.5|L2|AT2
5|Sala d'actes|TE-6|8|3|L2|AT3
6|Lavabos|TE-6|4|1.5|L2|
7|Passeig central|BO-15|4|15|L3|
8|Estany|BO-15|2|15|L3|
9|Aparcament|BO-15|3|15|L4|
10|Moll de càrrega|BO-15|1|7.5|L4|
`)
		p.Bold("A5:G5")
		e := p.Sheet("Etapas")
		e.Put("A1", `
Línea|Etapa|Canal|Potencia W
L1|E1|1|120
L2|E1|2|120
L3|E2|1|120
L4|E2|2|120
`)
		a := p.Sheet("Atenuadores")
		a.Put("A1", `
Atenuador|Ubicación|Potencia W
AT1|Vestíbul|36
AT2|Taquilles|6
AT3|Sala d'actes|36
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("O-318", "Jardí botànic de Fontclara", "loudspeakers name a line, a second sheet says which amplifier and channel feeds it")
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100", `rows|tag|room|model|count|tap_w|amplifier|channel|control
6|1|Hivernacle tropical|CX-10|4|10|E1|1|
7|2|Hivernacle de cactus|CX-10|2|5|E1|1|
8|3|Vestíbul|TE-6|6|3|E1|2|AT1
9|4|Taquilles|TE-6|1|1.5|E1|2|AT2
10|5|Sala d'actes|TE-6|8|3|E1|2|AT3
11|6|Lavabos|TE-6|4|1.5|E1|2|
12|7|Passeig central|BO-15|4|15|E2|1|
13|8|Estany|BO-15|2|15|E2|1|
14|9|Aparcament|BO-15|3|15|E2|2|
15|10|Moll de càrrega|BO-15|1|7.5|E2|2|`)
		t.Channels("line_v=100; rated_w=120", `amplifier|channel|load_w
E1|1|50
E1|2|49.5
E2|1|90
E2|2|52.5`)
		t.Amplifiers("", `amplifier|load_w
E1|99.5
E2|142.5`)
		t.Controls("", `control|rated_w|load_w
AT1|36|18
AT2|6|1.5
AT3|36|24`)
	}},

	{File: "fontclara/pista de gel.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Pista de gel Riudevall;;;;;;
Obra O-327;;;;;;
Megafonía, línea de 100 V, amplificador único de 240 W;;;;;;
;;;;;;
Zona;Altavoz;Cantidad;Potencia unitaria;Potencia total;Atenuador;Potencia atenuador
Pista, costat nord;bocina;4;15 W;60 W;no;
Pista, costat sud;bocina;4;15 W;60 W;no;
Vestidor 1;techo;3;3 W;9 W;AT-1;12 W
Vestidor 2;techo;3;3 W;9 W;AT-2;12 W
Lloguer de patins;techo;4;3 W;12 W;AT-3;12 W
Entrada;techo;4;1,5 W;6 W;no;
Oficina;techo;1;1,5 W;1,5 W;AT-4;6 W
Infermeria;techo;1;1,5 W;1,5 W;no;
Sala de màquines;bocina;1;7,5 W;7,5 W;no;
Total;;25;;166,5 W;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("O-327", "Pista de gel Riudevall", "one amplifier without a name, its rating in the title; units in the cells; the control's rating on the row")
		t.Speakers("tap_v=100; line_v=100", `rows|zone|count|tap_w|control
6|Pista, costat nord|4|15|
7|Pista, costat sud|4|15|
8|Vestidor 1|3|3|AT-1
9|Vestidor 2|3|3|AT-2
10|Lloguer de patins|4|3|AT-3
11|Entrada|4|1.5|
12|Oficina|1|1.5|AT-4
13|Infermeria|1|1.5|
14|Sala de màquines|1|7.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|166.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|166.5`)
		t.Controls("", `control|zone|rated_w|load_w
AT-1|Vestidor 1|12|9
AT-2|Vestidor 2|12|9
AT-3|Lloguer de patins|12|12
AT-4|Oficina|6|1.5`)
		t.Left("", `15|total|sums`)
	}},
}
