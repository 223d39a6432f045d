package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Italian hands: a system integrator's book, a station's electrician, a bill of quantities that knows the ratings.
var bindersItalian = []typed.Case{

	{File: "binders/teatro comunale/Impianto diffusione Teatro Selvarossa.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Copertina")
		p.Put("A1", `
Teatro comunale di Selvarossa
Impianto di diffusione di servizio
Commessa|C/1187
Tensione di linea|100 V
Fogli|Elenco, Armadio, Attenuatori, Cavi
`)
		p.Bold("A1")
		s := p.Sheet("Elenco")
		s.Put("A1", `
Sigle|Linea|Ambiente|Q.tà|Diffusore|Presa W|Tot. W
D1-D4|1|Camerini piano terra|4|incasso|1.5|6
D5-D8|1|Camerini primo piano|4|incasso|1.5|6
D9-D10|1|Sala trucco|2|incasso|3|6
D11-D13|2|Retropalco|3|parete|6|18
D14|2|Sottopalco|1|tromba|10|10
D15-D16|2|Graticcia|2|tromba|10|20
D17-D20|3|Ridotto|4|parete|6|24
D21-D24|3|Scalone|4|parete|6|24
D25-D26|3|Biglietteria|2|incasso|3|6
D27-D28|4|Laboratorio scene|2|tromba|15|30
D29|4|Carico e scarico|1|tromba|15|15
`)
		s.Bold("A1:G1")
		a := p.Sheet("Armadio")
		a.Put("A1", `
Unità|Apparecchio|Potenza|Linea
U1-U2|Finale F1|60 W|1
U3-U4|Finale F2|120 W|2
U5-U6|Finale F3|120 W|3
U7-U8|Finale F4|60 W|4
U9|Finale F5 (scorta)|120 W|
U10|Ventilazione||
`)
		a.Bold("A1:D1")
		r := p.Sheet("Attenuatori")
		r.Put("A1", `
Sigla|Posizione|Portata|Diffusori
A-1|Sala trucco|12 W|D9, D10
A-2|Ridotto|36 W|D17-D20
A-3|Biglietteria|12 W|D25, D26
`)
		r.Bold("A1:D1")
		c := p.Sheet("Cavi")
		c.Put("A1", `
Cavo|Linea|Da|A|Sezione|Lunghezza m
K1|1|Armadio|D1|2x1,5 mmq|38
K2|2|Armadio|D11|2x2,5 mmq|22
K3|3|Armadio|D17|2x2,5 mmq|71
K4|4|Armadio|D27|2x2,5 mmq|94
`)
		c.Bold("A1:F1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("C/1187", "Teatro comunale di Selvarossa", "rows of several tags, attenuators by tags and ranges, a spare amplifier in the rack, everything joined by line numbers")
		t.Speakers("sheet=Elenco; tap_v=100; line_v=100; amplifier=Finale F1", `rows|room|count|tap_w|control
2|Camerini piano terra|4|1.5|
3|Camerini primo piano|4|1.5|
4|Sala trucco|2|3|A-1`)
		t.Speakers("sheet=Elenco; tap_v=100; line_v=100; amplifier=Finale F2", `rows|room|count|tap_w
5|Retropalco|3|6
6|Sottopalco|1|10
7|Graticcia|2|10`)
		t.Speakers("sheet=Elenco; tap_v=100; line_v=100; amplifier=Finale F3", `rows|room|count|tap_w|control
8|Ridotto|4|6|A-2
9|Scalone|4|6|
10|Biglietteria|2|3|A-3`)
		t.Speakers("sheet=Elenco; tap_v=100; line_v=100; amplifier=Finale F4", `rows|room|count|tap_w
11|Laboratorio scene|2|15
12|Carico e scarico|1|15`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
Finale F1|60|18
Finale F2|120|48
Finale F3|120|54
Finale F4|60|45`)
		t.Amplifiers("", `amplifier|rated_w|load_w
Finale F1|60|18
Finale F2|120|48
Finale F3|120|54
Finale F4|60|45`)
		t.Controls("", `control|rated_w|load_w
A-1|12|6
A-2|36|24
A-3|12|6`)
		t.Lines("from=Armadio", `line|to|length_m|area_mm2
K1|D1|38|1.5
K2|D11|22|2.5
K3|D17|71|2.5
K4|D27|94|2.5`)
		t.Left("Armadio", `6|spare|spare amplifier
7|equipment|ventilation`)
	}},

	{File: "binders/stazione/rilievo annunci stazione.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
n.;dove;cosa;pezzi;W cad.;uscita;note
1;Marciapiede 1;tromba;5;10;1;
2;Marciapiede 2;tromba;5;10;2;
3;Marciapiede 3;tromba;4;10;2;
4;Sottopasso;parete;6;6;3;
5;Sala d'attesa;soffitto;3;3;4;con regolatore RV1 da 12 W
6;Biglietteria;soffitto;1;1,5;4;con regolatore RV2 da 5 W
7;Atrio;soffitto;4;6;4;
8;Deposito biciclette;tromba;1;?;3;etichetta illeggibile
9;Magazzino;tromba;1;10;;a terra nello scatolone, di riserva
;;;;;;
;Stazione di Campo Fiorito, rilievo del 9 maggio, ordine 33/B;;;;;
;Amplificatore nell'ufficio movimento, senza sigla: 4 uscite da 80 W, 100 V;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("33/B", "Stazione di Campo Fiorito", "an amplifier without a name with four outputs, in the last line; an unreadable tap; a spare on the floor; one output over its rating")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|channel|control
2|Marciapiede 1|5|10|1|
3|Marciapiede 2|5|10|2|
4|Marciapiede 3|4|10|2|
5|Sottopasso|6|6|3|
6|Sala d'attesa|3|3|4|RV1
7|Biglietteria|1|1.5|4|RV2
8|Atrio|4|6|4|
9|Deposito biciclette|1||3|`)
		t.Channels("line_v=100; rated_w=80", `channel|load_w|load_min_w
1|50|
2|90|
3||36
4|34.5|`)
		t.Amplifiers("", `amplifier|note
|load open, at least 210.5`)
		t.Controls("", `control|rated_w|load_w
RV1|12|9
RV2|5|1.5`)
		t.Left("", `10|spare|in a box on the floor`)
		t.Asks("", `9|asked|tap of the horn at the bicycle store`)
	}},

	{File: "binders/museo civico/Computo sonorizzazione museo.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Locali")
		p.Put("A1", `
Museo civico della Carta - diffusione sonora a 100 V - offerta 640
||
Zona A - Piano interrato
Locale|Diffusori|W a diffusore|Attenuatore
Archivio|2|3|
Officina del torchio|4|6|AT1
Zona B - Piano terra
Locale|Diffusori|W a diffusore|Attenuatore
Ingresso|2|6|
Sala delle filigrane|6|6|AT2
Sala dei mulini|6|6|AT3
Servizi|2|1.5|
Zona C - Primo piano
Locale|Diffusori|W a diffusore|Attenuatore
Sala conferenze|6|10|AT4
Uffici|4|1.5|AT5
Corridoio|3|3|
||
Totale diffusori|35
`)
		p.Bold("A1", "A3", "A7", "A13", "A19:B19")
		q := p.Sheet("Prezzi")
		q.Put("A1", `
Art.|Descrizione|Q.tà|Euro cad.|Euro
P1|Diffusore da parete con trasformatore|35|52|1820
P2|Amplificatore AM1 da 60 W per la zona A|1|310|310
P3|Amplificatore AM2 da 120 W per la zona B|1|420|420
P4|Amplificatore AM3 da 120 W per la zona C|1|420|420
P5|Attenuatore 36 W (AT1)|1|33|33
P6|Attenuatore 60 W (AT2, AT3)|2|39|78
P7|Attenuatore 100 W (AT4)|1|54|54
P8|Attenuatore 12 W (AT5)|1|27|27
P9|Cavo 2x1,5 mmq, al metro|260|1.6|416
||||3578
`)
		q.Bold("A1:E1", "E11")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("640", "Museo civico della Carta", "zones as titles on the list; amplifiers and the ratings of attenuators only on the price sheet")
		t.Speakers("sheet=Locali; tap_v=100; line_v=100; zone=A; amplifier=AM1; note=title above the rows, zone A or Piano interrato", `rows|room|count|tap_w|control
5|Archivio|2|3|
6|Officina del torchio|4|6|AT1`)
		t.Speakers("sheet=Locali; tap_v=100; line_v=100; zone=B; amplifier=AM2; note=title above the rows, zone B or Piano terra", `rows|room|count|tap_w|control
9|Ingresso|2|6|
10|Sala delle filigrane|6|6|AT2
11|Sala dei mulini|6|6|AT3
12|Servizi|2|1.5|`)
		t.Speakers("sheet=Locali; tap_v=100; line_v=100; zone=C; amplifier=AM3; note=title above the rows, zone C or Primo piano", `rows|room|count|tap_w|control
15|Sala conferenze|6|10|AT4
16|Uffici|4|1.5|AT5
17|Corridoio|3|3|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AM1|60|30
AM2|120|87
AM3|120|75`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AM1|60|30
AM2|120|87
AM3|120|75`)
		t.Controls("", `control|rated_w|load_w
AT1|36|24
AT2|60|36
AT3|60|36
AT4|100|60
AT5|12|6`)
		t.Left("Locali", `19|total|pieces`)
		t.Left("Prezzi", `2|price|the loudspeakers of the list again
11|total|price`)
	}},
}
