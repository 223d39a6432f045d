package main

import "lineaudit/samples/typed"

// formulas writes formulas, to be worked out by the program that saves the workbook.
func formulas(pairs ...string) touch {
	return func(p typed.Page) {
		for i := 0; i < len(pairs); i += 2 {
			p.Formula(pairs[i], pairs[i+1])
		}
	}
}

func contractors() []typed.Case {
	watts := func(areas ...string) touch { return func(p typed.Page) { p.Format(`0.0" W"`, areas...) } }
	return []typed.Case{
		// A French technician of the site: walks, notes, numbers shown with their unit by the cell's format.
		{File: "Aulnes/releve sono 2016.xlsx", Kind: "schedule", Book: book("Relevé", `
Relevé sonorisation|Patinoire des Aulnes|||||||
Relevé le|12 octobre 2016|||||||
Ligne|100 V|||||||

N°|Lieu|Genre|Nb HP|Puissance sélectionnée|Zone|Ampli|Sortie|Remarque
1|Hall|plafond|8|3|Public|AMP A|1|
2|Caisse|plafond|1|1.5|Public|AMP A|1|
3|Location de patins|plafond|4|3|Public|AMP A|1|
4|Tribune nord|colonne|4|10|Tribunes|AMP A|2|
5|Tribune sud|colonne|4|10|Tribunes|AMP A|2|
6|Piste|projecteur|6|20|Piste|AMP B|1|
7|Vestiaires 1 à 4|plafond|8|1.5|Coulisses|AMP B|2|
8|Infirmerie|plafond|1|1.5|Coulisses|AMP B|2|
9|Local surfaceuse|pavillon|1|10|Coulisses|AMP B|2|
10|Bureau|plafond|2|0.75|Coulisses|AMP B|2|

Ampli|Sortie|Puissance de sortie||||||
AMP A|1|60||||||
AMP A|2|120||||||
AMP B|1|240||||||
AMP B|2|60||||||
`, bold("A1:A3", "A5:I5", "A17:C17"), watts("E6:E15", "C18:C21")), Truth: func(t *typed.Truth) {
			t.Is("", "Patinoire des Aulnes", "ordinary: numbers whose unit is in the cell's format; outputs below")
			t.Speakers("tap_v=100; line_v=100; sheet=Relevé", `
rows|tag|room|model|count|tap_w|zone|amplifier|channel
6|1|Hall|plafond|8|3|Public|AMP A|1
7|2|Caisse|plafond|1|1.5|Public|AMP A|1
8|3|Location de patins|plafond|4|3|Public|AMP A|1
9|4|Tribune nord|colonne|4|10|Tribunes|AMP A|2
10|5|Tribune sud|colonne|4|10|Tribunes|AMP A|2
11|6|Piste|projecteur|6|20|Piste|AMP B|1
12|7|Vestiaires 1 à 4|plafond|8|1.5|Coulisses|AMP B|2
13|8|Infirmerie|plafond|1|1.5|Coulisses|AMP B|2
14|9|Local surfaceuse|pavillon|1|10|Coulisses|AMP B|2
15|10|Bureau|plafond|2|0.75|Coulisses|AMP B|2
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
AMP A|1|60|37.5
AMP A|2|120|80
AMP B|1|240|120
AMP B|2|60|25
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nAMP A|180|117.5\nAMP B|300|145")
		}},

		{File: "Aulnes/circuits sono 2017.ods", Kind: "schedule", Saved: "ods", Book: book("Circuits", `
Circuits sonorisation|Patinoire des Aulnes, salle de curling||||||||
Mis à jour le|3 février 2017||||||||
Ligne|100 V||||||||

Circuit|Lieu|Genre|Nb HP|Puissance sélectionnée|Puissance du circuit|Ampli|Puissance de sortie|Câble|Longueur
C1|Salle de curling|colonne|8|20|160|AMP C|240|2 x 2,5 mm²|125
C2|Gradins|colonne|4|10|40|AMP D|60|2 x 1,5 mm²|90
C3|Vestiaires|plafond|6|1.5|9|AMP E|60|2 x 1,5 mm²|70
C4|Terrasse|projecteur|3|10|30|AMP F|60|2 x 1,5 mm²|110
Total|||21||239||||395
`, bold("A1:A3", "A5:J5"), watts("E6:F10", "H6:H9"), func(p typed.Page) { p.Format(`0" m"`, "J6:J10") }), Truth: func(t *typed.Truth) {
			t.Is("", "Patinoire des Aulnes, salle de curling", "ordinary: one row a circuit, watts and metres in the cells' formats, one amplifier a circuit")
			t.Speakers("tap_v=100; line_v=100; sheet=Circuits; note=the circuit as a section for a zone is as good", `
rows|room|model|count|tap_w|amplifier
6|Salle de curling|colonne|8|20|AMP C
7|Gradins|colonne|4|10|AMP D
8|Vestiaires|plafond|6|1.5|AMP E
9|Terrasse|projecteur|3|10|AMP F
`)
			t.Channels("line_v=100", `
amplifier|rated_w|load_w
AMP C|240|160
AMP D|60|40
AMP E|60|9
AMP F|60|30
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
AMP C|240|160
AMP D|60|40
AMP E|60|9
AMP F|60|30
`)
			t.Lines("material=copper; note=one length a circuit", `
line|length_m|area_mm2
C1|125|2.5
C2|90|1.5
C3|70|1.5
C4|110|1.5
`)
			t.Left("Circuits", "10|total|right")
		}},

		{File: "Valbreuil/releve sono serres 2018.xlsx", Kind: "schedule", Book: book("Serre tropicale", `
Relevé sonorisation|Jardin botanique de Valbreuil|||||
Relevé le|9 mai 2018|||||
Ligne|100 V|||||
Zone|Serre tropicale|||||

N°|Lieu|Genre|Nb HP|Puissance sélectionnée|Ampli|Sortie
1|Passerelle|colonne|4|6|AMP S|1
2|Bassin|colonne|2|6|AMP S|1
3|Entrée|colonne|1|3|AMP S|1
`, bold("A1:A4", "A6:G6"), watts("E7:E9"), and("Serre aride", `
Relevé sonorisation|Jardin botanique de Valbreuil|||||
Relevé le|9 mai 2018|||||
Ligne|100 V|||||
Zone|Serre aride|||||

N°|Lieu|Genre|Nb HP|Puissance sélectionnée|Ampli|Sortie
1|Allée centrale|colonne|3|6|AMP S|2
2|Réserve|colonne|1|3|AMP S|2
`, bold("A1:A4", "A6:G6"), watts("E7:E8")), and("Pépinière", `
Relevé sonorisation|Jardin botanique de Valbreuil|||||
Relevé le|9 mai 2018|||||
Ligne|100 V|||||
Zone|Pépinière|||||

N°|Lieu|Genre|Nb HP|Puissance sélectionnée|Ampli|Sortie
1|Hangar|pavillon|2|10|AMP S|3
2|Quai|pavillon|1|15|AMP S|3
`, bold("A1:A4", "A6:G6"), watts("E7:E8")), and("Baie", `
Ampli|Sortie|Puissance de sortie
AMP S|1|60
AMP S|2|60
AMP S|3|60
`, bold("A1:C1"), watts("C2:C4"))), Truth: func(t *typed.Truth) {
			t.Is("", "Jardin botanique de Valbreuil", "ordinary: one sheet a zone, each with its title block, outputs on a sheet of their own")
			common := "tap_v=100; line_v=100; amplifier=AMP S; sheet="
			t.Speakers(common+"Serre tropicale; zone=Serre tropicale; channel=1", `
rows|tag|room|model|count|tap_w
7|1|Passerelle|colonne|4|6
8|2|Bassin|colonne|2|6
9|3|Entrée|colonne|1|3
`)
			t.Speakers(common+"Serre aride; zone=Serre aride; channel=2", `
rows|tag|room|model|count|tap_w
7|1|Allée centrale|colonne|3|6
8|2|Réserve|colonne|1|3
`)
			t.Speakers(common+"Pépinière; zone=Pépinière; channel=3", `
rows|tag|room|model|count|tap_w
7|1|Hangar|pavillon|2|10
8|2|Quai|pavillon|1|15
`)
			t.Channels("line_v=100; amplifier=AMP S; rated_w=60", "channel|load_w\n1|39\n2|21\n3|35")
			t.Amplifiers("amplifier=AMP S", "rated_w|load_w\n180|95")
		}},

		// A Spanish installer: formulas for the sums, zones merged down, circuits named by zone.
		{File: "Penarrota 2015/Altavoces por zonas.xlsx", Kind: "schedule", Saved: "xlsx", Book: book("Altavoces", `
JARDÍN BOTÁNICO DE PEÑARROTA - AMPLIACIÓN||||||||
Megafonía en línea de 100 V||||||||
Ref. obra:|2015-07|||||||

Zona|Local|Tipo de altavoz|Ud.|P. unit. (W)|P. total (W)|Etapa|Línea|Atenuador
Accesos|Taquillas|Empotrable|2|3||ET1|1|
|Pórtico|Caja exterior|4|10||ET1|1|
|Aseos|Empotrable|4|1.5||ET1|1|
Umbráculo|Nave central|Columna|6|10||ET1|2|
|Nave lateral|Columna|4|5||ET1|2|
Aulas|Aula 1|Empotrable|4|3||ET2|1|AT-1
|Aula 2|Empotrable|4|3||ET2|1|AT-2
|Pasillo|Empotrable|3|1.5||ET2|1|
Jardín|Paseo del agua|Seta de jardín|10|15||ET2|2|
TOTAL||||||||
`, bold("A1:A3", "A5:I5", "A15:I15"), merged("A6:A8", "A9:A10", "A11:A13"),
			formulas("F6", "D6*E6", "F7", "D7*E7", "F8", "D8*E8", "F9", "D9*E9", "F10", "D10*E10", "F11", "D11*E11", "F12", "D12*E12", "F13", "D13*E13", "F14", "D14*E14",
				"D15", "SUM(D6:D14)", "F15", "SUM(F6:F14)"),
			and("Etapas", `
Etapa|Línea|Potencia nominal (W)|Carga (W)|Reserva
ET1|1|120||
ET1|2|120||
ET2|1|60||
ET2|2|240||

Atenuador|Potencia (W)
AT-1|24
AT-2|24
`, bold("A1:E1", "A7:B7"), formulas("D2", "SUM(Altavoces!F6:F8)", "D3", "SUM(Altavoces!F9:F10)", "D4", "SUM(Altavoces!F11:F13)", "D5", "Altavoces!F14",
				"E2", "C2-D2", "E3", "C3-D3", "E4", "C4-D4", "E5", "C5-D5"))), Truth: func(t *typed.Truth) {
			t.Is("2015-07", "Jardín Botánico de Peñarrota", "ordinary: zones merged down, sums by formula, saved by an office program")
			t.Speakers("tap_v=100; line_v=100; sheet=Altavoces", `
rows|zone|room|model|count|tap_w|amplifier|channel|control
6|Accesos|Taquillas|Empotrable|2|3|ET1|1|
7|Accesos|Pórtico|Caja exterior|4|10|ET1|1|
8|Accesos|Aseos|Empotrable|4|1.5|ET1|1|
9|Umbráculo|Nave central|Columna|6|10|ET1|2|
10|Umbráculo|Nave lateral|Columna|4|5|ET1|2|
11|Aulas|Aula 1|Empotrable|4|3|ET2|1|AT-1
12|Aulas|Aula 2|Empotrable|4|3|ET2|1|AT-2
13|Aulas|Pasillo|Empotrable|3|1.5|ET2|1|
14|Jardín|Paseo del agua|Seta de jardín|10|15|ET2|2|
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
ET1|1|120|52
ET1|2|120|80
ET2|1|60|28.5
ET2|2|240|150
`)
			t.Controls("", "control|zone|rated_w|load_w\nAT-1|Aulas|24|12\nAT-2|Aulas|24|12")
			t.Amplifiers("", "amplifier|rated_w|load_w\nET1|240|132\nET2|300|178.5")
			t.Left("Altavoces", "15|total|right")
		}},

		{File: "Montearcilla 2019/Altavoces por zonas.xlsx", Kind: "schedule", Saved: "xlsx", Book: book("Altavoces", `
PLANETARIO DE MONTEARCILLA - PLANTA SÓTANO||||||||
Megafonía en línea de 100 V||||||||
Ref. obra:|2019-31|||||||

Zona|Local|Tipo de altavoz|Ud.|P. unit. (W)|P. total (W)|Etapa|Línea|Atenuador
Talleres|Taller A|Empotrable|4|6||ET1|1|AT-1
|Taller B|Empotrable|4|6||ET1|1|AT-2
|Almacén|Empotrable|2|1.5||ET1|1|
Garaje|Garaje|Bocina|6|10||ET1|2|
|Rampa|Bocina|1|15||ET1|2|
Técnica|Sala de máquinas|Bocina|1|15||ET1|3|
|Pasillo técnico|Empotrable|5|1.5||ET1|3|
TOTAL||||||||
`, bold("A1:A3", "A5:I5", "A13:I13"), merged("A6:A8", "A9:A10", "A11:A12"),
			formulas("F6", "D6*E6", "F7", "D7*E7", "F8", "D8*E8", "F9", "D9*E9", "F10", "D10*E10", "F11", "D11*E11", "F12", "D12*E12",
				"D13", "SUM(D6:D12)", "F13", "SUM(F6:F12)"),
			and("Etapas", `
Etapa|Línea|Potencia nominal (W)|Carga (W)|Cable|Longitud (m)
ET1|1|60||2x1,5 mm²|45
ET1|2|120||2x2,5 mm²|160
ET1|3|60||2x1,5 mm²|72

Atenuador|Potencia (W)
AT-1|24
AT-2|24
`, bold("A1:F1", "A6:B6"), formulas("D2", "SUM(Altavoces!F6:F8)", "D3", "SUM(Altavoces!F9:F10)", "D4", "SUM(Altavoces!F11:F12)"))), Truth: func(t *typed.Truth) {
			t.Is("2019-31", "Planetario de Montearcilla", "ordinary: the same installer's form four years later, with cables of the outputs")
			t.Speakers("tap_v=100; line_v=100; sheet=Altavoces; amplifier=ET1", `
rows|zone|room|model|count|tap_w|channel|control
6|Talleres|Taller A|Empotrable|4|6|1|AT-1
7|Talleres|Taller B|Empotrable|4|6|1|AT-2
8|Talleres|Almacén|Empotrable|2|1.5|1|
9|Garaje|Garaje|Bocina|6|10|2|
10|Garaje|Rampa|Bocina|1|15|2|
11|Técnica|Sala de máquinas|Bocina|1|15|3|
12|Técnica|Pasillo técnico|Empotrable|5|1.5|3|
`)
			t.Channels("line_v=100; amplifier=ET1", "channel|rated_w|load_w\n1|60|51\n2|120|75\n3|60|22.5")
			t.Controls("", "control|zone|rated_w|load_w\nAT-1|Talleres|24|24\nAT-2|Talleres|24|24")
			t.Amplifiers("amplifier=ET1", "rated_w|load_w\n240|148.5")
			t.Lines("material=copper; note=one length an output", `
length_m|area_mm2
45|1.5
160|2.5
72|1.5
`)
			t.Left("Altavoces", "13|total|right")
		}},

		{File: "Fuente Lirio 2012/Altavoces por zonas.xls", Kind: "schedule", Saved: "xls", Book: book("Altavoces", `
EMBARCADERO FUENTE LIRIO||||||||
Megafonía en línea de 100 V||||||||
Ref. obra:|2012-18|||||||

Zona|Local|Tipo de altavoz|Ud.|P. unit. (W)|P. total (W)|Etapa|Línea|Atenuador
Muelle|Pantalán 1|Bocina|3|15||ET1|1|
|Pantalán 2|Bocina|3|15||ET1|1|
|Rampa|Bocina|2|30||ET1|1|
Hangar|Hangar|Caja mural|5|10||ET1|2|
|Taller|Caja mural|1|10||ET1|2|
Edificio|Vestíbulo|Empotrable|4|3||ET1|3|
|Vestuarios|Empotrable|6|1.5||ET1|3|
|Sala de socios|Empotrable|4|3||ET1|3|AT-1
TOTAL||||||||

Etapa ET1: 3 líneas; línea 1: 240 W, línea 2: 120 W, línea 3: 60 W||||||||
Atenuador AT-1: 24 W||||||||
`, bold("A1:A3", "A5:I5", "A14:I14"), merged("A6:A8", "A9:A10", "A11:A13"),
			formulas("F6", "D6*E6", "F7", "D7*E7", "F8", "D8*E8", "F9", "D9*E9", "F10", "D10*E10", "F11", "D11*E11", "F12", "D12*E12", "F13", "D13*E13",
				"D14", "SUM(D6:D13)", "F14", "SUM(F6:F13)")), Truth: func(t *typed.Truth) {
			t.Is("2012-18", "Embarcadero Fuente Lirio", "ordinary: the same installer's form in an old workbook, outputs of different ratings in one sentence")
			t.Speakers("tap_v=100; line_v=100; sheet=Altavoces; amplifier=ET1", `
rows|zone|room|model|count|tap_w|channel|control
6|Muelle|Pantalán 1|Bocina|3|15|1|
7|Muelle|Pantalán 2|Bocina|3|15|1|
8|Muelle|Rampa|Bocina|2|30|1|
9|Hangar|Hangar|Caja mural|5|10|2|
10|Hangar|Taller|Caja mural|1|10|2|
11|Edificio|Vestíbulo|Empotrable|4|3|3|
12|Edificio|Vestuarios|Empotrable|6|1.5|3|
13|Edificio|Sala de socios|Empotrable|4|3|3|AT-1
`)
			t.Channels("line_v=100; amplifier=ET1", "channel|rated_w|load_w\n1|240|150\n2|120|60\n3|60|33")
			t.Controls("", "control|zone|rated_w|load_w\nAT-1|Edificio|24|12")
			t.Amplifiers("amplifier=ET1", "rated_w|load_w\n420|243")
			t.Left("Altavoces", "14|total|right")
		}},

		// A Dutch installer: plain lists, small letters, a control list and a rack list as sheets of their own.
		{File: "Lindewaard 2020/luidsprekerstaat.xlsx", Kind: "schedule", Book: book("Luidsprekers", `
Luidsprekerstaat||||||||
Object|Hortus Lindewaard, nieuw entreegebouw|||||||
Projectnummer|20-114|||||||
Systeem|100V omroep|||||||

code|ruimte|verd.|soort|aantal|afgetapt op|groep|regelaar|opmerking
a|entreehal|bg|inbouw|8|3 W|G1||
b|kassa|bg|inbouw|2|1,5 W|G1||
c|museumwinkel|bg|inbouw|6|3 W|G2|R1|
d|garderobe|bg|inbouw|2|1,5 W|G1||
e|toiletten|bg|inbouw|4|1,5 W|G1||
f|leslokaal 1|1e|inbouw|4|3 W|G3|R2|
g|leslokaal 2|1e|inbouw|4|3 W|G3|R3|
h|kantoor|1e|inbouw|6|0,75 W|G3||
i|dakterras|2e|opbouw ip65|4|10 W|G4||
j|technische ruimte|2e|hoorn|1|15 W|G4||
`, bold("A1", "A6:I6"), and("Rack", `
groep|versterker|uitgang|vermogen
G1|VA|1|60 W
G2|VA|2|60 W
G3|VB|1|60 W
G4|VB|2|120 W
`, bold("A1:D1")), and("Regelaars", `
regelaar|plaats|belastbaar tot
R1|museumwinkel|24 W
R2|leslokaal 1|12 W
R3|leslokaal 2|10 W
`, bold("A1:C1"))), Truth: func(t *typed.Truth) {
			t.Is("20-114", "Hortus Lindewaard", "ordinary: three sheets joined by group and by control")
			t.Speakers("tap_v=100; line_v=100; sheet=Luidsprekers", `
rows|tag|room|model|count|tap_w|zone|control|amplifier|channel
7|a|entreehal|inbouw|8|3|G1||VA|1
8|b|kassa|inbouw|2|1.5|G1||VA|1
9|c|museumwinkel|inbouw|6|3|G2|R1|VA|2
10|d|garderobe|inbouw|2|1.5|G1||VA|1
11|e|toiletten|inbouw|4|1.5|G1||VA|1
12|f|leslokaal 1|inbouw|4|3|G3|R2|VB|1
13|g|leslokaal 2|inbouw|4|3|G3|R3|VB|1
14|h|kantoor|inbouw|6|0.75|G3||VB|1
15|i|dakterras|opbouw ip65|4|10|G4||VB|2
16|j|technische ruimte|hoorn|1|15|G4||VB|2
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
VA|1|60|36
VA|2|60|18
VB|1|60|28.5
VB|2|120|55
`)
			t.Controls("", "control|zone|rated_w|load_w\nR1|G2|24|18\nR2|G3|12|12\nR3|G3|10|12")
			t.Amplifiers("", "amplifier|rated_w|load_w\nVA|120|54\nVB|180|83.5")
		}},

		{File: "Koudehoek 2021/luidsprekerstaat.xlsx", Kind: "schedule", Book: book("Luidsprekers", `
Luidsprekerstaat||||||||
Object|IJshal De Koudehoek, tweede baan|||||||
Projectnummer|21-006|||||||
Systeem|100V omroep|||||||

code|ruimte|verd.|soort|aantal|afgetapt op|groep|regelaar|opmerking
a|ijsbaan|bg|hoorn|10|20 W|G1||
b|tribune oost|bg|kolom|5|10 W|G2||
c|tribune west|bg|kolom|5|10 W|G2||
d|kleedkamer 5|bg|inbouw|2|1,5 W|G3||
e|kleedkamer 6|bg|inbouw|2|1,5 W|G3||
f|ehbo|bg|inbouw|1|1,5 W|G3||
g|wedstrijdleiding|1e|inbouw|2|3 W|G3|R1|
h|gang|bg|inbouw|4|3 W|G3||
`, bold("A1", "A6:I6"), and("Rack", `
groep|versterker|uitgang|vermogen|kabel|lengte
G1|VA|1|250 W|2x2,5|180 m
G2|VA|2|250 W|2x2,5|140 m
G3|VB|1|60 W|2x1,5|96 m
reserve|VB|2|60 W||
`, bold("A1:F1")), and("Regelaars", `
regelaar|plaats|belastbaar tot
R1|wedstrijdleiding|12 W
`, bold("A1:C1"))), Truth: func(t *typed.Truth) {
			t.Is("21-006", "IJshal De Koudehoek", "ordinary: the same form for another job, with cables and a spare output on the rack sheet")
			t.Speakers("tap_v=100; line_v=100; sheet=Luidsprekers", `
rows|tag|room|model|count|tap_w|zone|control|amplifier|channel
7|a|ijsbaan|hoorn|10|20|G1||VA|1
8|b|tribune oost|kolom|5|10|G2||VA|2
9|c|tribune west|kolom|5|10|G2||VA|2
10|d|kleedkamer 5|inbouw|2|1.5|G3||VB|1
11|e|kleedkamer 6|inbouw|2|1.5|G3||VB|1
12|f|ehbo|inbouw|1|1.5|G3||VB|1
13|g|wedstrijdleiding|inbouw|2|3|G3|R1|VB|1
14|h|gang|inbouw|4|3|G3||VB|1
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
VA|1|250|200
VA|2|250|100
VB|1|60|25.5
VB|2|60|0
`)
			t.Controls("", "control|zone|rated_w|load_w\nR1|G3|12|6")
			t.Amplifiers("", "amplifier|rated_w|load_w\nVA|500|300\nVB|120|25.5")
			t.Lines("material=copper; note=one length a group", `
zone|length_m|area_mm2
G1|180|2.5
G2|140|2.5
G3|96|1.5
`)
		}},

		{File: "Rietkolk 2014/luidsprekers.csv", Kind: "schedule", Bytes: ansi(`
code;ruimte;soort;aantal;afgetapt op (W);groep;versterker;uitgang;regelaar;opmerking
a;botenloods;kolom;6;10;1;VA;1;;
b;steiger;hoorn;4;15;2;VA;2;;
c;kleedkamer heren;inbouw;3;1,5;3;VA;3;;
d;kleedkamer dames;inbouw;3;1,5;3;VA;3;;
e;ergometerzaal;opbouw;4;6;4;VA;4;R1;
f;clubkamer;inbouw;4;3;4;VA;4;R2;
g;gang;inbouw;3;1,5;3;VA;3;;
;;;;;;;;;
versterker;uitgang;vermogen (W);lijn (V);;;;;;
VA;1;120;100;;;;;;
VA;2;120;100;;;;;;
VA;3;60;100;;;;;;
VA;4;60;100;;;;;;
;;;;;;;;;
regelaar;belastbaar tot (W);;;;;;;;
R1;36;;;;;;;;
R2;12;;;;;;;;
`), Truth: func(t *typed.Truth) {
			t.Is("", "Rietkolk", "ordinary: no title, three small tables in one text file; the site only in the folder's name")
			t.Speakers("tap_v=100; line_v=100", `
rows|tag|room|model|count|tap_w|zone|amplifier|channel|control
2|a|botenloods|kolom|6|10|1|VA|1|
3|b|steiger|hoorn|4|15|2|VA|2|
4|c|kleedkamer heren|inbouw|3|1.5|3|VA|3|
5|d|kleedkamer dames|inbouw|3|1.5|3|VA|3|
6|e|ergometerzaal|opbouw|4|6|4|VA|4|R1
7|f|clubkamer|inbouw|4|3|4|VA|4|R2
8|g|gang|inbouw|3|1.5|3|VA|3|
`)
			t.Channels("line_v=100; amplifier=VA", "channel|rated_w|load_w\n1|120|60\n2|120|60\n3|60|13.5\n4|60|36")
			t.Controls("", "control|zone|rated_w|load_w\nR1|4|36|24\nR2|4|12|12")
			t.Amplifiers("amplifier=VA", "rated_w|load_w\n360|169.5")
		}},

		{File: "moose/keys and radios.csv", Kind: "not-a-schedule", Bytes: plain(`
moose hollow keys and radios,,,,
zn,rm,qty keys,radio ch,who
1,rink a,2,1,ice crew
3,lobby,4,2,front desk
4,trainer,1,2,trainer
5,resurfacer bay,2,1,ice crew
`), Truth: stranger("a list of keys and radios by zone and room")},
	}
}
