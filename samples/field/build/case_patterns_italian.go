package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// patternsItalian are a museum's technical office, an insurer's surveyor and an electrician.
var patternsItalian = []typed.Case{
	{File: "patterns/museo/impianto diffusione.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Diffusori")
		p.Put("A1", `
Sigle|Locale|Tipo|N.|Presa 100 V
D01÷D06|Sala delle carte|soffitto|6|3 W
D07÷D10|Sala dei globi|soffitto|4|3 W
D11÷D12|Corridoio|parete|2|6 W
D13|Libreria|soffitto|1|1,5 W
D14÷D15|Atrio|parete|2|6 W
D16÷D19|Cortile|tromba|4|15 W
D20|Portineria|soffitto|1|1,5 W
D21÷D24|Auditorium|parete|4|10 W
`)
		p.Bold("A1:E1")
		q := p.Sheet("Amplificatori")
		q.Put("A1", `
Amplificatore|Uscita|W uscita|Serve
FA1|1|60|da D01 a D12
FA1|2|60|da D13 a D15, D20
FA2|1|120|da D16 a D19
FA2|2|120|da D21 a D24
`)
		q.Bold("A1:D1")
		r := p.Sheet("Attenuatori")
		r.Put("A1", `
Locale|Attenuatore|W
Sala delle carte|VA1|24
Sala dei globi|VA2|20
Libreria|VA3|6
Auditorium|VA4|50
`)
		r.Bold("A1:C1")
		s := p.Sheet("Cavi")
		s.Put("A1", `
Da|A|Sezione mm²|Lunghezza m
FA1/1|D01|1.5|38
D06|D07|1.5|12
D10|D11|1.5|9
FA1/2|D13|1.5|22
D13|D14|1.5|14
D15|D20|1.5|11
FA2/1|D16|2.5|95
FA2/2|D21|2.5|52
`)
		s.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "ranges of tags by room; each output serves a range of tags on a second sheet; controls by room and cable runs by tag on two more")
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; amplifier=FA1; channel=1", `rows|room|count|tap_w|control
2|Sala delle carte|6|3|VA1
3|Sala dei globi|4|3|VA2
4|Corridoio|2|6|`)
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; amplifier=FA1; channel=2", `rows|room|count|tap_w|control
5|Libreria|1|1.5|VA3
6|Atrio|2|6|
8|Portineria|1|1.5|`)
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; amplifier=FA2; channel=1", `rows|room|count|tap_w
7|Cortile|4|15`)
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; amplifier=FA2; channel=2; control=VA4", `rows|room|count|tap_w
9|Auditorium|4|10`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
FA1|1|60|42
FA1|2|60|15
FA2|1|120|60
FA2|2|120|40`)
		t.Amplifiers("", `amplifier|load_w
FA1|57
FA2|100`)
		t.Controls("", `control|rated_w|load_w
VA1|24|18
VA2|20|12
VA3|6|1.5
VA4|50|40`)
		t.Lines("", `from|to|length_m|area_mm2
FA1/1|D01|38|1.5
D06|D07|12|1.5
D10|D11|9|1.5
FA1/2|D13|22|1.5
D13|D14|14|1.5
D15|D20|11|1.5
FA2/1|D16|95|2.5
FA2/2|D21|52|2.5`)
	}},

	{File: "patterns/perizia/scuderie censimento.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Censimento")
		p.Put("A1", `
Scuderie di Borgo Sterpi, perizia 88/19
Impianto a 100 V, un solo amplificatore da 240 W
||
Reparto|Soffitto|Parete|Colonna|Tromba|Attenuatore
Presa|3 W|6 W|10 W|15 W|
Maneggio coperto|||8||
Tribunetta||4|||sì, da 36 W
Selleria|2||||sì, da 10 W
Ufficio|1||||
Box A||2|||
Box B||2|||
Campo||||4|
Parcheggio||||2|
Totale pezzi|3|8|8|6|
Totale W|9|48|80|90|
`)
		p.Bold("A1", "A4:F5", "A14:F15")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("88/19", "Scuderie di Borgo Sterpi", "matrix of areas by kinds with a row of taps under the header and two rows of totals; controls without a name, told only by their rating; one amplifier without a name")
		t.Speakers("sheet=Censimento; tap_v=100; line_v=100", `rows|zone|count|tap_w|note
6|Maneggio coperto|8|10|
7|Tribunetta|4|6|unnamed
8|Selleria|2|3|unnamed
9|Ufficio|1|3|
10|Box A|2|6|
11|Box B|2|6|
12|Campo|4|15|
13|Parcheggio|2|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|227`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|227`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Tribunetta|36|24
|Selleria|10|6`)
		t.Left("Censimento", `5|note|taps
14|total|pieces
15|total|watts`)
	}},

	{File: "patterns/biblioteca/elenco apparati.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Biblioteca di Montescuro - elenco apparati, linee a 100 V;;;;
Apparato;Locale;Q.tà;W cad.;Collegato a
Amplificatore AM1;Rack piano terra;1;120;rete
Diffusore a soffitto;Atrio;4;3;AM1
Attenuatore AT1;Sala lettura;1;36;AM1
Diffusore a soffitto;Sala lettura;8;3;AT1
Attenuatore AT2;Emeroteca;1;20;AM1
Diffusore a soffitto;Emeroteca;4;3;AT2
Diffusore a soffitto;Servizi;2;1,5;AM1
Amplificatore AM2;Rack piano primo;1;60;rete
Attenuatore AT3;Sala ragazzi;1;24;AM2
Diffusore a soffitto;Sala ragazzi;4;3;AT3
Diffusore a soffitto;Corridoio;4;3;AM2
Tromba;Cortile;1;15;AM2
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Biblioteca di Montescuro", "amplifiers and attenuators as rows of the same list with their rating in the column of the watts; Collegato a names the amplifier or the attenuator above")
		t.Speakers("tap_v=100; line_v=100; amplifier=AM1", `rows|room|count|tap_w|control
4|Atrio|4|3|
6|Sala lettura|8|3|AT1
8|Emeroteca|4|3|AT2
9|Servizi|2|1.5|`)
		t.Speakers("tap_v=100; line_v=100; amplifier=AM2", `rows|room|count|tap_w|control
12|Sala ragazzi|4|3|AT3
13|Corridoio|4|3|
14|Cortile|1|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AM1|120|51
AM2|60|39`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AM1|120|51
AM2|60|39`)
		t.Controls("", `control|rated_w|load_w
AT1|36|24
AT2|20|12
AT3|24|12`)
		t.Left("", `3|other|amplifier
5|other|attenuator
7|other|attenuator
10|other|amplifier
11|other|attenuator`)
	}},
}
