package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A municipal technical office, a maintenance man and a contractor's estimator, in Italian.
var dossiersItalian = []typed.Case{

	{File: "dossiers/comune/Piscina di Pratolungo.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Vasche")
		p.Put("A1", `
Piscina comunale di Pratolungo - vasche
Pos.|Locale|Diffusori n.|W cad.|W tot.|Uscita
1|Vasca grande lato A|4|20|80|U1
2|Vasca grande lato B|4|20|80|U1
3|Vasca piccola|3|10|30|U2
4|Vasca bimbi|2|6|12|U2
|Totale|13||202
`)
		p.Bold("A1", "A2:F2", "B7:E7")
		s := p.Sheet("Spogliatoi")
		s.Put("A1", `
Piscina comunale di Pratolungo - spogliatoi
Pos.|Locale|Diffusori n.|W cad.|W tot.|Uscita
5|Spogliatoio uomini|3|3|9|U3
6|Spogliatoio donne|3|3|9|U3
7|Docce|2|3|6|U3
8|Infermeria|1|1,5|1,5|U3
|Totale|9||25,5
`)
		s.Bold("A1", "A2:F2", "B7:E7")
		r := p.Sheet("Tribuna")
		r.Put("A1", `
Piscina comunale di Pratolungo - tribuna e atrio
Pos.|Locale|Diffusori n.|W cad.|W tot.|Uscita
9|Gradinata|6|10|60|U4
10|Cabina giuria|1|3|3|U4
11|Atrio|4|6|24|U4
|Totale|11||87
`)
		r.Bold("A1", "A2:F2", "B6:E6")
		q := p.Sheet("Quadro audio")
		q.Put("A1", `
Amplificatore|Uscita|Potenza|Cavo|Lunghezza m
AMP1|U1|240 W|2 x 2,5 mm²|90
AMP1|U2|120 W|2 x 1,5 mm²|60
AMP2|U3|60 W|2 x 1,5 mm²|45
AMP2|U4|120 W|2 x 2,5 mm²|75

Attenuatore|Locale|Potenza
ATT-1|Infermeria|5 W
ATT-2|Cabina giuria|5 W
ATT-3|Atrio|50 W

Tutte le uscite a 100 V
`)
		q.Bold("A1:E1", "A7:C7")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Piscina comunale di Pratolungo", "a sheet a part of the building with totals, amplifiers with cables and controls by room on one more sheet")
		t.Speakers("sheet=Vasche; tap_v=100; line_v=100; amplifier=AMP1", `rows|room|count|tap_w|channel
3|Vasca grande lato A|4|20|U1
4|Vasca grande lato B|4|20|U1
5|Vasca piccola|3|10|U2
6|Vasca bimbi|2|6|U2`)
		t.Speakers("sheet=Spogliatoi; tap_v=100; line_v=100; amplifier=AMP2; channel=U3", `rows|room|count|tap_w|control
3|Spogliatoio uomini|3|3|
4|Spogliatoio donne|3|3|
5|Docce|2|3|
6|Infermeria|1|1.5|ATT-1`)
		t.Speakers("sheet=Tribuna; tap_v=100; line_v=100; amplifier=AMP2; channel=U4", `rows|room|count|tap_w|control
3|Gradinata|6|10|
4|Cabina giuria|1|3|ATT-2
5|Atrio|4|6|ATT-3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|U1|240|160
AMP1|U2|120|42
AMP2|U3|60|25.5
AMP2|U4|120|87`)
		t.Amplifiers("", `amplifier|load_w
AMP1|202
AMP2|112.5`)
		t.Controls("", `control|rated_w|load_w
ATT-1|5|1.5
ATT-2|5|3
ATT-3|50|24`)
		t.Lines("note=one length an output", `line|length_m|area_mm2
U1|90|2.5
U2|60|1.5
U3|45|1.5
U4|75|2.5`)
		t.Left("Vasche", `7|total|sums`)
		t.Left("Spogliatoi", `7|total|sums`)
		t.Left("Tribuna", `6|total|sums`)
	}},

	{File: "dossiers/manutenzione/giro Torre Vecchia.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Giro")
		p.Put("A1", `
Biblioteca della Torre Vecchia - giro diffusori
Piano terra: finale FA da 120 W. Primo piano: finale FB da 60 W. Linee a 100 V.

Piano|Sala|Diffusori e prese|Regolatore
Terra|Ingresso|D1 6 W + D2 3 W|
Terra|Sala lettura|D3 6 W⏎D4 6 W|RV1 (24 W)
Terra|Sala lettura, fondo|D5 6 W|RV1
Terra|Sala ragazzi|D6 3 W + D7 3 W|RV2 (12 W)
Terra|Cortile|D8 15 W|
Primo|Emeroteca|D9 3 W + D10 3 W|RV3 (12 W)
Primo|Sala corsi|D11 6 W + D12 6 W|RV4 (24 W)
Primo|Direzione|D13 1,5 W|RV5 (5 W)
Primo|Archivio|D14 3 W, tolto (umidità)|
`)
		p.Bold("A1", "A4:D4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Biblioteca della Torre Vecchia", "two loudspeakers in one cell, some with different taps; amplifiers by floor in a sentence; one taken down")
		t.Speakers("sheet=Giro; tap_v=100; line_v=100; zone=Terra; note=floor as zone; amplifier=FA", `rows|tag|room|tap_w|control
5|D1|Ingresso|6|
5|D2|Ingresso|3|
6|D3|Sala lettura|6|RV1
6|D4|Sala lettura|6|RV1
7|D5|Sala lettura, fondo|6|RV1
8|D6|Sala ragazzi|3|RV2
8|D7|Sala ragazzi|3|RV2
9|D8|Cortile|15|`)
		t.Speakers("sheet=Giro; tap_v=100; line_v=100; zone=Primo; note=floor as zone; amplifier=FB", `rows|tag|room|tap_w|control
10|D9|Emeroteca|3|RV3
10|D10|Emeroteca|3|RV3
11|D11|Sala corsi|6|RV4
11|D12|Sala corsi|6|RV4
12|D13|Direzione|1.5|RV5`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
FA|120|48
FB|60|19.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
FA|120|48
FB|60|19.5`)
		t.Controls("", `control|rated_w|load_w
RV1|24|18
RV2|12|6
RV3|12|6
RV4|24|12
RV5|5|1.5`)
		t.Left("Giro", `13|removed|taken down`)
	}},

	{File: "dossiers/offerte/2020-77 Teatro dei Mulini.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Copertina")
		p.Put("B2", `
Offerta 2020-77
Revisione 2
Teatro dei Mulini
Diffusione di servizio, linee a 100 V
`)
		p.Bold("B2:B4")
		u := p.Sheet("Punti")
		u.Put("A1", `
Zona|Ambiente|Tipo|Q.tà|Presa
Z1|Foyer|incasso|6|6 W
Z1|Guardaroba|incasso|2|3 W
Z2|Camerini|incasso|8|1,5 W
Z2|Corridoio camerini|incasso|3|3 W
Z3|Palco sinistra|cassa|1|10 W
Z3|Palco destra|cassa|1|10 W
Z3|Graticcia|tromba|2|15 W
Z4|Laboratorio scene|cassa|2|10 W
Z4|Sartoria|incasso|2|3 W
Z5|Uffici|incasso|4|1,5 W
`)
		u.Bold("A1:E1")
		z := p.Sheet("Zone")
		z.Put("A1", `
Zona|Finale|Uscita|W uscita|Attenuatore di zona|W att.|Cavo mm²|Lungh. m
Z1|F1|1|60|AZ1|60|2 x 1,5|35
Z2|F1|2|60|AZ2|30|2 x 1,5|50
Z3|F1|3|120|||2 x 2,5|40
Z4|F2|1|60|||2 x 1,5|80
Z5|F2|2|60|AZ5|12|2 x 1,5|65
`)
		z.Bold("A1:H1")
		c := p.Sheet("Computo")
		c.Put("A1", `
Voce|Descrizione|Q.tà|Prezzo unitario|Importo
1|Diffusore da incasso|25|31,00|775,00
2|Cassa a parete|4|58,00|232,00
3|Tromba|2|74,00|148,00
4|Attenuatore|3|26,00|78,00
|||Totale|1.233,00
`)
		c.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2020-77", "Teatro dei Mulini", "bid of four sheets: points by zone code, a zone sheet with amplifier, control and cable, and a bill that counts again")
		t.Revision("2", false)
		t.Speakers("sheet=Punti; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|amplifier|channel|control
2|Z1|Foyer|6|6|F1|1|AZ1
3|Z1|Guardaroba|2|3|F1|1|AZ1
4|Z2|Camerini|8|1.5|F1|2|AZ2
5|Z2|Corridoio camerini|3|3|F1|2|AZ2
6|Z3|Palco sinistra|1|10|F1|3|
7|Z3|Palco destra|1|10|F1|3|
8|Z3|Graticcia|2|15|F1|3|
9|Z4|Laboratorio scene|2|10|F2|1|
10|Z4|Sartoria|2|3|F2|1|
11|Z5|Uffici|4|1.5|F2|2|AZ5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
F1|1|60|42
F1|2|60|21
F1|3|120|50
F2|1|60|26
F2|2|60|6`)
		t.Amplifiers("", `amplifier|load_w
F1|113
F2|32`)
		t.Controls("", `control|zone|rated_w|load_w
AZ1|Z1|60|42
AZ2|Z2|30|21
AZ5|Z5|12|6`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Z1|35|1.5
Z2|50|1.5
Z3|40|2.5
Z4|80|1.5
Z5|65|1.5`)
		t.Left("Computo", `2|price|counted again
3|price|counted again
4|price|counted again
5|price|controls
6|total|sum`)
	}},
}
