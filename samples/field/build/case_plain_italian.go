package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A site foreman, a surveyor who names nothing, a railway engineer with a transposed sheet, and a gardener's electrician.
var plainItalian = []typed.Case{
	typed.Case{File: "plain/Scuderie come eseguito.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Come eseguito")
		p.Put("A1", `
Centro ippico Valdorata - diffusione sonora
Commessa 88/16, stato di fatto, linee a 100 V
||
Edificio|Locale|Diffusore|Q.tà|Presa (W)|Amplificatore|Regolatore
Scuderia A|Corsia|proiettore|4|10|AMP A - 120 W|
Scuderia A|Selleria|da parete|1|3|AMP A - 120 W|RV1 - 10 W
Scuderia B|Corsia|proiettore|4|10|AMP A - 120 W|
Scuderia B|Lavaggio|proiettore|1|6|AMP A - 120 W|
Maneggio coperto|Pista|tromba|4|15|AMP B - 240 W|
Maneggio coperto|Tribuna|da parete|6|6|AMP B - 240 W|RV2 - 50 W
Campo esterno|Lato giuria|tromba|3|15|AMP B - 240 W|
Campo esterno|Lato parcheggio|tromba|3|15|AMP B - 240 W|
Club house|Segreteria|da soffitto|2|3|AMP C - 60 W|RV3 - 10 W
Club house|Sala soci|da soffitto|6|3|AMP C - 60 W|RV4 - 24 W
Club house|Spogliatoi|da soffitto|4|1.5|AMP C - 60 W|
`)
		p.Bold("A1", "A4:G4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("88/16", "Centro ippico Valdorata", "plain; ratings behind the names of amplifiers and controls in every row")
		t.Speakers("sheet=Come eseguito; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|amplifier|control
5|Scuderia A|Corsia|4|10|AMP A|
6|Scuderia A|Selleria|1|3|AMP A|RV1
7|Scuderia B|Corsia|4|10|AMP A|
8|Scuderia B|Lavaggio|1|6|AMP A|
9|Maneggio coperto|Pista|4|15|AMP B|
10|Maneggio coperto|Tribuna|6|6|AMP B|RV2
11|Campo esterno|Lato giuria|3|15|AMP B|
12|Campo esterno|Lato parcheggio|3|15|AMP B|
13|Club house|Segreteria|2|3|AMP C|RV3
14|Club house|Sala soci|6|3|AMP C|RV4
15|Club house|Spogliatoi|4|1.5|AMP C|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP A|120|89
AMP B|240|186
AMP C|60|30`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP A|120|89
AMP B|240|186
AMP C|60|30`)
		t.Controls("", `control|rated_w|load_w
RV1|10|3
RV2|50|36
RV3|10|6
RV4|24|18`)
	}},

	{File: "plain/rilievo biblioteca.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Biblioteca civica di Roccafonda;;;;;
Rilievo del 3 ottobre, pratica 1150. Linee a 100 V;;;;;
Zona;Sala;Diffusori;Presa;Uscita;Note
Piano terra;Atrio;4 da soffitto;6 W;1;
Piano terra;Prestito;3 da soffitto;3 W;1;
Piano terra;Guardaroba;1 da soffitto;3 W;1;
Lettura;Sala grande;10 da soffitto;3 W;2;con attenuatore da 50 W
Lettura;Emeroteca;4 da soffitto;3 W;2;
Ragazzi;Sala fiabe;3 da soffitto;3 W;3;con attenuatore da 20 W
Ragazzi;Laboratorio;2 da parete;6 W;3;
Depositi;Magazzino libri;2 trombe;10 W;4;
Depositi;Legatoria;1 da parete;6 W;4;
;;;;;
Uscita;Potenza;;;;
1;60 W;;;;
2;120 W;;;;
3;60 W;;;;
4;60 W;;;;
;;;;;
Le quattro uscite sono sullo stesso amplificatore, nel quadro dell'atrio.;;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("1150", "Biblioteca civica di Roccafonda", "survey; an amplifier without a name with four outputs, two controls without a name in the notes")
		t.Speakers("tap_v=100; line_v=100; zone=Piano terra; channel=1", `rows|room|count|tap_w
4|Atrio|4|6
5|Prestito|3|3
6|Guardaroba|1|3`)
		t.Speakers("tap_v=100; line_v=100; zone=Lettura; channel=2", `rows|room|count|tap_w|note
7|Sala grande|10|3|unnamed
8|Emeroteca|4|3|`)
		t.Speakers("tap_v=100; line_v=100; zone=Ragazzi; channel=3", `rows|room|count|tap_w|note
9|Sala fiabe|3|3|unnamed
10|Laboratorio|2|6|`)
		t.Speakers("tap_v=100; line_v=100; zone=Depositi; channel=4", `rows|room|count|tap_w
11|Magazzino libri|2|10
12|Legatoria|1|6`)
		t.Channels("line_v=100", `channel|rated_w|load_w
1|60|36
2|120|42
3|60|21
4|60|26`)
		t.Amplifiers("", `amplifier|load_w
|125`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Lettura|50|30
|Ragazzi|20|9`)
	}},

	{File: "plain/Stazione Fontalba.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Zone")
		p.Put("A1", `
Stazione di Fontalba - impianto a 100 V - progetto 3071
||
Zona|Marciapiede 1|Marciapiede 2|Sottopasso|Atrio|Sala d'attesa|Biglietteria|Deposito bici|Totale
Diffusore|tromba|tromba|da parete|da soffitto|da soffitto|da soffitto|tromba|
Quantità|8|8|6|6|4|2|2|36
Presa (W)|10|10|6|6|3|3|10|
Potenza zona (W)|80|80|36|36|12|6|20|270
Uscita|A.1|A.2|A.3|B.1|B.2|B.2|B.3|
Potenza uscita (W)|120|120|60|60|60|60|60|
Attenuatore||||AT1|AT2|||
Potenza attenuatore (W)||||50|24|||
Lunghezza linea (m)|160|185|70|45|30|25|90|
Sezione (mm²)|2.5|2.5|1.5|1.5|1.5|1.5|1.5|
`)
		p.Bold("A1", "A3:I3", "A4:A13")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("3071", "Stazione di Fontalba", "transposed: a zone a column, with output, control and cable below it; a column of totals")
		t.Speakers("sheet=Zone; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|channel|control
B|Marciapiede 1|8|10|A|1|
C|Marciapiede 2|8|10|A|2|
D|Sottopasso|6|6|A|3|
E|Atrio|6|6|B|1|AT1
F|Sala d'attesa|4|3|B|2|AT2
G|Biglietteria|2|3|B|2|
H|Deposito bici|2|10|B|3|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A|1|120|80
A|2|120|80
A|3|60|36
B|1|60|36
B|2|60|18
B|3|60|20`)
		t.Amplifiers("", `amplifier|load_w
A|196
B|74`)
		t.Controls("", `control|zone|rated_w|load_w
AT1|Atrio|50|36
AT2|Sala d'attesa|24|12`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Marciapiede 1|160|2.5
Marciapiede 2|185|2.5
Sottopasso|70|1.5
Atrio|45|1.5
Sala d'attesa|30|1.5
Biglietteria|25|1.5
Deposito bici|90|1.5`)
		t.Left("Zone", `I|total|sums`)
	}},

	{File: "plain/Orto botanico.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Diffusori")
		p.Put("A1", `
Orto botanico di Pratoverde
Lavoro 640 - tutto a 100 V
||
Sigla|Zona|Dove|Tipo|N.|Watt cad.|Ampli|Linea
D1|Serra calda|Vialetto|a fungo|6|6|AM1|1
D2|Serra calda|Ingresso|a parete|2|6|AM1|1
D3|Serra fredda|Vialetto|a fungo|4|6|AM1|2
D4|Serra fredda|Banchi|a parete|2|3|AM1|2
D5|Giardino|Roseto|a fungo|6|10|AM2|1
D6|Giardino|Laghetto|a fungo|4|10|AM2|1
D7|Aula didattica|Soffitto|da incasso|4|3|AM2|2
D8|Erbario|Soffitto|da incasso|3|3|AM2|2
`)
		p.Bold("A1", "A4:H4")
		q := p.Sheet("Amplificatori")
		q.Put("A1", `
Ampli|Linea|Potenza W
AM1|1|120
AM1|2|60
AM2|1|120
AM2|2|60
`)
		q.Bold("A1:C1")
		r := p.Sheet("Cavi")
		r.Put("A1", `
Cavo|Da|A|Tipo|Metri
K1|Armadio|D1|2x2,5|80
K2|D1|D2|2x2,5|35
K3|Armadio|D3|2x1,5|55
K4|D3|D4|2x1,5|28
K5|Armadio|D5|2x4|140
K6|D5|D6|2x4|65
K7|Armadio|D7|2x1,5|20
K8|D7|D8|2x1,5|16
`)
		r.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("640", "Orto botanico di Pratoverde", "plain; amplifiers and cables from-to on further sheets")
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100", `rows|tag|zone|room|count|tap_w|amplifier|channel
5|D1|Serra calda|Vialetto|6|6|AM1|1
6|D2|Serra calda|Ingresso|2|6|AM1|1
7|D3|Serra fredda|Vialetto|4|6|AM1|2
8|D4|Serra fredda|Banchi|2|3|AM1|2
9|D5|Giardino|Roseto|6|10|AM2|1
10|D6|Giardino|Laghetto|4|10|AM2|1
11|D7|Aula didattica|Soffitto|4|3|AM2|2
12|D8|Erbario|Soffitto|3|3|AM2|2`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AM1|1|120|48
AM1|2|60|30
AM2|1|120|100
AM2|2|60|21`)
		t.Amplifiers("", `amplifier|load_w
AM1|78
AM2|121`)
		t.Lines("note=from-to run", `line|from|to|length_m|area_mm2
K1|Armadio|D1|80|2.5
K2|D1|D2|35|2.5
K3|Armadio|D3|55|1.5
K4|D3|D4|28|1.5
K5|Armadio|D5|140|4
K6|D5|D6|65|4
K7|Armadio|D7|20|1.5
K8|D7|D8|16|1.5`)
	}},
}
