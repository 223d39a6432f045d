package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// hallenUndObras are a railway's rack list, an apprentice, a hall keeper and a light fitter, in German, and a site manager and a town hall, in Spanish.
var hallenUndObras = []typed.Case{
	{File: "bahnhof/Birkenkroog Linien A-B.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Lautsprecher")
		p.Put("A1", `
Bahnhof Birkenkroog, Beschallung, 100-V-Linien je Bereich wechselweise A und B
||
Bereich|Abschnitt|Linie A|||Linie B|||Bemerkung
||Nr.|St.|Abgriff|Nr.|St.|Abgriff|
Bahnsteig 1|Nord|11A|5|10 W|11B|5|10 W|
|Mitte|11A|5|10 W|11B|5|10 W|
|Süd|11A|4|10 W|11B|4|10 W|
Bahnsteig 2/3|Nord|21A|6|10 W|21B|6|10 W|
|Süd|21A|6|10 W|21B|5|10 W|Mast 14 unbestückt
Unterführung|Treppe West|31A|2|6 W|31B|2|6 W|
|Treppe Ost|31A|2|6 W|31B|2|6 W|
|Gang|31A|4|6 W|31B|3|6 W|
Empfangsgebäude|Halle|41A|6|3 W||||
|Warteraum|41A|4|3 W||||Steller S41, 20 W
|WC|41A|2|1,5 W||||
`)
		p.Bold("A1", "A3:I4")
		p.Merge("A3:A4", "B3:B4", "C3:E3", "F3:H3", "I3:I4", "A5:A7", "A8:A9", "A10:A12", "A13:A15")
		q := p.Sheet("Gestell")
		q.Put("A1", `
Einschub|Verstärker|Ausgang|Nennleistung|Linie
3|LV1|1|250 W|11A
3|LV1|2|250 W|21A
5|LV2|1|250 W|11B
5|LV2|2|250 W|21B
7|LV3|1|125 W|31A
7|LV3|2|125 W|41A
9|LV4|1|125 W|31B
`)
		q.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Bahnhof Birkenkroog", "two lines side by side in every row, each with its own count and tap; merged areas; outputs by line on the rack sheet; a control in a remark")
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; zone=Bahnsteig 1; tap_w=10", `rows|room|count|amplifier|channel
5|Nord|5|LV1|1
5|Nord|5|LV2|1
6|Mitte|5|LV1|1
6|Mitte|5|LV2|1
7|Süd|4|LV1|1
7|Süd|4|LV2|1`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; zone=Bahnsteig 2/3; tap_w=10", `rows|room|count|amplifier|channel
8|Nord|6|LV1|2
8|Nord|6|LV2|2
9|Süd|6|LV1|2
9|Süd|5|LV2|2`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; zone=Unterführung; tap_w=6", `rows|room|count|amplifier|channel
10|Treppe West|2|LV3|1
10|Treppe West|2|LV4|1
11|Treppe Ost|2|LV3|1
11|Treppe Ost|2|LV4|1
12|Gang|4|LV3|1
12|Gang|3|LV4|1`)
		t.Speakers("sheet=Lautsprecher; tap_v=100; line_v=100; zone=Empfangsgebäude; amplifier=LV3; channel=2", `rows|room|count|tap_w|control
13|Halle|6|3|
14|Warteraum|4|3|S41
15|WC|2|1.5|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
LV1|1|250|140
LV1|2|250|120
LV2|1|250|140
LV2|2|250|110
LV3|1|125|48
LV3|2|125|33
LV4|1|125|42`)
		t.Amplifiers("", `amplifier|load_w
LV1|260
LV2|250
LV3|81
LV4|42`)
		t.Controls("", `control|rated_w|load_w
S41|20|12`)
	}},

	{File: "azubi/KW38 Reithalle.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Tabelle1")
		p.Put("A1", `
KW 38, Reithalle Gut Ellerbruch, mit Geselle Lautsprecher gesetzt
||
Nr.|wo|was|Watt|Leitung|Regler
1|Halle Nordwand|Horn|15|1|
2|"|"|"|"|
3|"|"|"|"|
4|Halle Südwand|Horn|15|1|
5|"|"|"|"|
6|"|"|"|"|
7|Richterplatz|Box|6|1|
8|Stallgasse|Box|6|2|Drehregler 1
9|"|"|"|"|"
10|"|"|"|"|"
11|"|"|"|"|"
12|Sattelkammer|Decke|1.5|2|
13|Futterkammer|dto.|dto.|dto.|
14|Meldestelle|Decke|3|2|Drehregler 2
15|Unterrichtsraum|Decke|3|2|Drehregler 2
16|"|"|"|"|"
||
Verstärker: Leitung 1 an Ausgang 1 (120 W), Leitung 2 an Ausgang 2 (60 W)
Drehregler 1 = 36 W, Drehregler 2 = 12 W
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Reithalle Gut Ellerbruch", "a row a loudspeaker with ditto marks; outputs and ratings of the controls in two sentences at the end; the amplifier has no name and no voltage is stated")
		t.Speakers("sheet=Tabelle1; channel=1", `rows|room|tap_w
4..6|Halle Nordwand|15
7..9|Halle Südwand|15
10|Richterplatz|6`)
		t.Speakers("sheet=Tabelle1; channel=2", `rows|room|tap_w|control
11..14|Stallgasse|6|Drehregler 1
15|Sattelkammer|1.5|
16|Futterkammer|1.5|
17|Meldestelle|3|Drehregler 2
18..19|Unterrichtsraum|3|Drehregler 2`)
		t.Channels("", `amplifier|channel|rated_w|load_w
|1|120|96
|2|60|36`)
		t.Controls("", `control|rated_w|load_w
Drehregler 1|36|24
Drehregler 2|12|9`)
	}},

	{File: "stadthalle/Leistungsstufen.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Räume")
		p.Put("A1", `
Stadthalle Brockenrode, Lautsprecher je Raum und eingestellter Stufe
||
Raum|Kreis|1,5 W|3 W|6 W|10 W|20 W|zus. W
Großer Saal Parkett|K1||||8|4|160
Großer Saal Rang|K1|||8|||48
Bühne|K2||||4||40
Hinterbühne|K2||2|2|||18
Foyer|K3||6|6|||54
Garderobe|K3|4|||||6
Kleiner Saal|K4||4|6|||48
Besprechung|K4|2|2||||9
Künstlerzimmer|K5|6|||||9
Pforte|K5|1|||||1.5
Summe Stück||13|14|22|12|4|393.5
`)
		p.Bold("A1", "A3:H3", "A14:H14")
		q := p.Sheet("Kreise")
		q.Put("A1", `
Kreis|Verstärker|Kanal|Leistung|Steller
K1|V1|A|240 W|
K2|V1|B|120 W|
K3|V2|A|120 W|SK3, 80 W, für den ganzen Kreis
K4|V2|B|120 W|SK4, 60 W, nur Kleiner Saal
K5|V3|A|60 W|
||
Alle Kreise 100 V.
`)
		q.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Stadthalle Brockenrode", "a matrix of rooms and taps with counts in the cells; one control for a whole circuit, one for a room of a circuit")
		t.Speakers("sheet=Räume; tap_v=100; line_v=100; amplifier=V1; channel=A", `rows|room|count|tap_w
4|Großer Saal Parkett|8|10
4|Großer Saal Parkett|4|20
5|Großer Saal Rang|8|6`)
		t.Speakers("sheet=Räume; tap_v=100; line_v=100; amplifier=V1; channel=B", `rows|room|count|tap_w
6|Bühne|4|10
7|Hinterbühne|2|3
7|Hinterbühne|2|6`)
		t.Speakers("sheet=Räume; tap_v=100; line_v=100; amplifier=V2; channel=A; control=SK3", `rows|room|count|tap_w
8|Foyer|6|3
8|Foyer|6|6
9|Garderobe|4|1.5`)
		t.Speakers("sheet=Räume; tap_v=100; line_v=100; amplifier=V2; channel=B", `rows|room|count|tap_w|control
10|Kleiner Saal|4|3|SK4
10|Kleiner Saal|6|6|SK4
11|Besprechung|2|1.5|
11|Besprechung|2|3|`)
		t.Speakers("sheet=Räume; tap_v=100; line_v=100; amplifier=V3; channel=A", `rows|room|count|tap_w
12|Künstlerzimmer|6|1.5
13|Pforte|1|1.5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|A|240|208
V1|B|120|58
V2|A|120|60
V2|B|120|57
V3|A|60|10.5`)
		t.Amplifiers("", `amplifier|load_w
V1|266
V2|117
V3|10.5`)
		t.Controls("", `control|rated_w|load_w
SK3|80|60
SK4|60|48`)
		t.Left("Räume", `14|total|counts by tap`)
	}},

	{File: "bootshaus/Leuchtenliste.csv", Kind: "not-a-schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Bootshaus Rudergesellschaft;Leuchtenliste;Elektro Umbau;;;
Raum;Leuchte;Stück;W je Stück;Stromkreis;Dimmer
Bootshalle;Wannenleuchte;12;36;F1;
Werkstatt;Wannenleuchte;6;36;F1;
Umkleide 1;Deckenleuchte;4;18;F2;
Umkleide 2;Deckenleuchte;4;18;F2;
Flur;Deckenleuchte;5;12;F2;
Clubraum;Einbaustrahler;14;7;F3;D1, 200 W
Clubraum;Wandleuchte;4;9;F3;D1
Kraftraum;Deckenleuchte;8;24;F4;
Steg;Mastleuchte;3;40;F5;
Treppe;Wandleuchte;3;9;F5;neben dem Lautsprecher
Summe;;63;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Bootshaus Rudergesellschaft", "light fittings with watts, circuits and a dimmer; the word for loudspeaker occurs in a remark")
	}},

	{File: "obras/2318 piscina estado final.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Altavoces")
		p.Put("A1", `
Obra 2318 Piscina cubierta Fuenteparda
Megafonía, estado final frente a proyecto. Línea de 100 V
||
Zona|Local|Altavoz|Proyecto||Ejecutado||Motivo del cambio
|||Uds|W|Uds|W|
Vasos|Vaso grande|bocina|8|15|6|20|menos puntos de anclaje
Vasos|Vaso de enseñanza|bocina|4|10|4|10|
Vasos|Grada|proyector|4|10|6|10|grada ampliada
Vestuarios|Masculino|techo|3|3|3|3|
Vestuarios|Femenino|techo|3|3|3|3|
Vestuarios|Grupos|techo|0||2|1.5|orden de cambio 4
Acceso|Recepción|techo|2|3|2|1.5|lo pidió el cliente
Acceso|Vestíbulo|techo|6|6|6|6|
Acceso|Tienda|techo|2|3|0||local suprimido
Técnica|Depuradora|bocina|1|15|1|10|
`)
		p.Bold("A1", "A4:H5")
		p.Merge("D4:E4", "F4:G4")
		q := p.Sheet("Rack")
		q.Put("A1", `
Etapa|Salida|W|Zona
P1|1|240|Vasos
P1|2|60|Vestuarios
P2|1|120|Acceso
P2|2|60|Técnica
`)
		q.Bold("A1:D1")
		r := p.Sheet("Atenuadores")
		r.Put("A1", `
Código|Local|W|Ubicación
AT-1|Recepción|6|bajo el mostrador
AT-2|Vestíbulo|50|cuarto de conserjes
`)
		r.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2318", "Piscina cubierta Fuenteparda", "as designed beside as built under two header rows: the latter counts; controls by room, outputs by zone on other sheets")
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Vasos; amplifier=P1; channel=1", `rows|room|count|tap_w
6|Vaso grande|6|20
7|Vaso de enseñanza|4|10
8|Grada|6|10`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Vestuarios; amplifier=P1; channel=2", `rows|room|count|tap_w
9|Masculino|3|3
10|Femenino|3|3
11|Grupos|2|1.5`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Acceso; amplifier=P2; channel=1", `rows|room|count|tap_w|control
12|Recepción|2|1.5|AT-1
13|Vestíbulo|6|6|AT-2`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Técnica; amplifier=P2; channel=2", `rows|room|count|tap_w
15|Depuradora|1|10`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
P1|1|240|220
P1|2|60|21
P2|1|120|39
P2|2|60|10`)
		t.Amplifiers("", `amplifier|load_w
P1|241
P2|49`)
		t.Controls("", `control|rated_w|load_w
AT-1|6|3
AT-2|50|36`)
		t.Left("Altavoces", `14|removed|room dropped, none built`)
	}},

	{File: "ayuntamiento/inventario biblioteca.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Latin1(typed.DOS(`
Ayuntamiento de Valdecorza;Inventario de bienes;;;;;
Edificio: Biblioteca municipal;Expediente 78/2016;;;;;
Nº inv.;Dependencia;Bien;Potencia W;Regulador;Estado;Observaciones
4501;Conserjería;Amplificador AMP-1, línea 100 V;120;;en uso;
4502;Conserjería;Micrófono de sobremesa;;;en uso;
4503;Conserjería;Altavoz de techo;1,5;;en uso;
4504;Vestíbulo;Altavoz de techo;6;;en uso;
4505;Vestíbulo;Altavoz de techo;6;;en uso;
4506;Vestíbulo;Altavoz de techo;6;;baja;robado en 2014
4507;Sala infantil;Altavoz de techo;3;RV-1;en uso;
4508;Sala infantil;Altavoz de techo;3;RV-1;en uso;
4509;Sala infantil;Regulador RV-1;12;;en uso;
4510;Sala de lectura;Altavoz de techo;3;RV-2;en uso;
4511;Sala de lectura;Altavoz de techo;3;RV-2;en uso;
4512;Sala de lectura;Altavoz de techo;3;RV-2;en uso;
4513;Sala de lectura;Altavoz de techo;3;RV-2;en uso;
4514;Sala de lectura;Regulador RV-2;24;;en uso;
4515;Salón de actos;Altavoz de pared;10;;en uso;
4516;Salón de actos;Altavoz de pared;10;;en uso;
4517;Archivo;Altavoz de pared;10;;en almacén;sin montar, de repuesto
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("78/2016", "Biblioteca municipal", "an inventory, one item a row: amplifier, controls and a microphone share the watt column with the loudspeakers; one written off, one in store")
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP-1", `rows|tag|room|tap_w|control
6|4503|Conserjería|1.5|
7|4504|Vestíbulo|6|
8|4505|Vestíbulo|6|
10|4507|Sala infantil|3|RV-1
11|4508|Sala infantil|3|RV-1
13|4510|Sala de lectura|3|RV-2
14|4511|Sala de lectura|3|RV-2
15|4512|Sala de lectura|3|RV-2
16|4513|Sala de lectura|3|RV-2
18|4515|Salón de actos|10|
19|4516|Salón de actos|10|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP-1|120|51.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP-1|120|51.5`)
		t.Controls("", `control|rated_w|load_w
RV-1|12|6
RV-2|24|12`)
		t.Left("", `5|other|microphone
9|removed|stolen
20|spare|in store`)
	}},
}
