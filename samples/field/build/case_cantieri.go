package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

var cantieri = []typed.Case{
	// The technical assistant of an Italian school, asked by the head what hangs in the classrooms.
	{File: "scuola/altoparlanti aule.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Latin1(typed.DOS(`
Scuola media di Borgo Tresanti - altoparlanti;;;
Locale;N. altoparlanti;Watt;Regolatore a parete
Aula 1A;2;1,5;6 W
Aula 1B;2;1,5;6 W
Aula 2A;2;1,5;6 W
Aula 2B;2;1,5;6 W
Aula 3A;2;1,5;6 W
Aula 3B;2;1,5;6 W
Laboratorio di scienze;2;3;12 W
Aula magna;6;6;60 W
Palestra;4;10;no
Corridoio piano terra;5;3;no
Corridoio primo piano;5;3;no
Segreteria;1;1,5;6 W
Presidenza;1;1,5;6 W
Sala insegnanti;2;3;12 W
Cortile;2;15;no
;;;
L'amplificatore è in segreteria, 240 W, linea a 100 V, una sola linea per tutta la scuola;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Scuola media di Borgo Tresanti", "plain; a control without a name in most rooms, its watts only; the amplifier in a sentence")
		t.Speakers("tap_v=100; line_v=100; note=unnamed", `rows|room|count|tap_w
3|Aula 1A|2|1.5
4|Aula 1B|2|1.5
5|Aula 2A|2|1.5
6|Aula 2B|2|1.5
7|Aula 3A|2|1.5
8|Aula 3B|2|1.5
9|Laboratorio di scienze|2|3
10|Aula magna|6|6
14|Segreteria|1|1.5
15|Presidenza|1|1.5
16|Sala insegnanti|2|3`)
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w
11|Palestra|4|10
12|Corridoio piano terra|5|3
13|Corridoio primo piano|5|3
17|Cortile|2|15`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|169`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|169`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|Aula 1A|6|3
|Aula 1B|6|3
|Aula 2A|6|3
|Aula 2B|6|3
|Aula 3A|6|3
|Aula 3B|6|3
|Laboratorio di scienze|12|6
|Aula magna|60|36
|Segreteria|6|1.5
|Presidenza|6|1.5
|Sala insegnanti|12|6`)
	}},

	// A consultant's office: the tables that go with the design drawings of a museum.
	{File: "progetti/23-118 IS-07 diffusione sonora.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Diffusori")
		p.Put("A1", `
Museo della Carta di Fosderano
Commessa 23/118, elaborato IS-07: impianto di diffusione sonora a 100 V
||
Linea|Amplificatore|Uscita|Zona|Locale|Tipo|N.|P presa [W]|P tot [W]
L01|AMP1|1|Accoglienza|Atrio|incasso|6|3|18
L01|AMP1|1|Accoglienza|Biglietteria|incasso|2|1.5|3
L01|AMP1|1|Accoglienza|Guardaroba|incasso|1|1.5|1.5
L02|AMP1|2|Esposizione|Sala dei torchi|parete|4|6|24
L02|AMP1|2|Esposizione|Sala delle filigrane|parete|4|6|24
L02|AMP1|2|Esposizione|Sala dei timbri|parete|2|6|12
L03|AMP2|1|Didattica|Laboratorio|incasso|4|3|12
L03|AMP2|1|Didattica|Auletta|incasso|2|3|6
L04|AMP2|2|Servizi|Uffici|incasso|3|1.5|4.5
L04|AMP2|2|Servizi|Deposito|proiettore|2|6|12
L04|AMP2|2|Servizi|Servizi igienici|incasso|4|1.5|6
Totale||||||34||123
`)
		p.Bold("A1:A2", "A4:I4", "A16:I16")
		p.Format("0.0", "H5:I15")
		q := p.Sheet("Amplificatori")
		q.Put("A1", `
Amplificatore|N. uscite|P per uscita [W]|Ubicazione
AMP1|2|120|Locale tecnico, armadio 1
AMP2|2|60|Locale tecnico, armadio 1
`)
		q.Bold("A1:D1")
		r := p.Sheet("Attenuatori")
		r.Put("A1", `
Sigla|Locale servito|P nominale [W]
AT.1|Sala dei torchi|36
AT.2|Sala delle filigrane|36
AT.3|Laboratorio|24
AT.4|Auletta|12
AT.5|Uffici|12
`)
		r.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("23/118", "Museo della Carta di Fosderano", "plain; controls joined by room, output ratings joined by amplifier")
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; amplifier=AMP1", `rows|channel|zone|room|count|tap_w|control
5|1|Accoglienza|Atrio|6|3|
6|1|Accoglienza|Biglietteria|2|1.5|
7|1|Accoglienza|Guardaroba|1|1.5|
8|2|Esposizione|Sala dei torchi|4|6|AT.1
9|2|Esposizione|Sala delle filigrane|4|6|AT.2
10|2|Esposizione|Sala dei timbri|2|6|`)
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100; amplifier=AMP2", `rows|channel|zone|room|count|tap_w|control
11|1|Didattica|Laboratorio|4|3|AT.3
12|1|Didattica|Auletta|2|3|AT.4
13|2|Servizi|Uffici|3|1.5|AT.5
14|2|Servizi|Deposito|2|6|
15|2|Servizi|Servizi igienici|4|1.5|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|1|120|22.5
AMP1|2|120|60
AMP2|1|60|18
AMP2|2|60|22.5`)
		t.Amplifiers("", `amplifier|load_w
AMP1|82.5
AMP2|40.5`)
		t.Controls("", `control|rated_w|load_w
AT.1|36|24
AT.2|36|24
AT.3|24|12
AT.4|12|6
AT.5|12|4.5`)
		t.Left("Diffusori", `16|total|pieces and watts`)
	}},

	// A maintenance firm's technician: the yearly test record of an ice rink, a line of the table a loudspeaker line.
	{File: "verbali/1187 stadio del ghiaccio.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Verbale")
		p.Put("A1", `
Verbale di prova linee altoparlanti
Intervento n. 1187, Stadio del ghiaccio di Pontalbo, tensione di linea 100 V
||
Linea|Zona|Altop.|Presa (W)|Carico (W)|Z mis. (ohm)|Isol. (Mohm)|Esito|Finale
1|Pista lato tribuna|8|15|120|82|'>50|OK|F1
2|Pista lato opposto|8|15|120|80|'>50|OK|F2
3|Tribuna|10|6|60|165|35|OK|F3
4|Spogliatoi atleti|6|1.5|9|1090|'>50|OK|F4
5|Spogliatoi arbitri|2|1.5|3|3250|'>50|OK|F4
6|Infermeria e uffici|4|1.5|6|1640|'>50|OK|F4
7|Ingresso|5|3|15|660|'>50|OK|F4
8|Piazzale|4|10|40|245|12|isolamento basso, ricontrollare in primavera|F5
||
Potenziometro|Zona|W|Esito
P1|Ingresso|24|OK
P2|Spogliatoi atleti|12|gracchia
||
Finali F1 e F2 da 250 W, F3 e F4 da 120 W, F5 da 60 W
`)
		p.Bold("A1", "A4:I4", "A14:D14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("1187", "Stadio del ghiaccio di Pontalbo", "plain test record with measured impedances; several lines on one amplifier, ratings in a sentence")
		t.Speakers("sheet=Verbale; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|channel|control
5|Pista lato tribuna|8|15|F1|1|
6|Pista lato opposto|8|15|F2|2|
7|Tribuna|10|6|F3|3|
8|Spogliatoi atleti|6|1.5|F4|4|P2
9|Spogliatoi arbitri|2|1.5|F4|5|
10|Infermeria e uffici|4|1.5|F4|6|
11|Ingresso|5|3|F4|7|P1
12|Piazzale|4|10|F5|8|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
F1|1|250|120
F2|2|250|120
F3|3|120|60
F4|4||9
F4|5||3
F4|6||6
F4|7||15
F5|8|60|40`)
		t.Amplifiers("", `amplifier|rated_w|load_w
F1|250|120
F2|250|120
F3|120|60
F4|120|33
F5|60|40`)
		t.Controls("", `control|zone|rated_w|load_w
P1|Ingresso|24|15
P2|Spogliatoi atleti|12|9`)
	}},

	// An apprentice of an installer at some stables: what he wired, loudspeaker by loudspeaker, with the cable he pulled; saved as "Unicode text".
	{File: "cantieri/scuderie posa.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Unicode16(typed.DOS(`
Altop.	Posizione	Tipo	W (100 V)	Linea	Reg.	Cavo mmq	Cavo m
T01	Scuderia A box 1-4	tromba	10	L1		2x2,5	48
T02	Scuderia A box 5-8	tromba	10	L1		2x2,5	18
T03	Scuderia A box 9-12	tromba	10	L1		2x2,5	18
T04	Scuderia B box 1-6	tromba	10	L2		2x2,5	64
T05	Scuderia B box 7-12	tromba	10	L2		2x2,5	20
T06	Lavaggio cavalli	tromba	10	L2		2x2,5	16
T07	Maneggio angolo nord	colonna	20	L3		2x4	72
T08	Maneggio angolo est	colonna	20	L3		2x4	40
T09	Maneggio angolo sud	colonna	20	L3		2x4	25
T10	Maneggio angolo ovest	colonna	20	L3		2x4	40
T11	Selleria	soffitto	3	L4	RG1	2x1,5	15
T12	Ufficio	soffitto	3	L4	RG2	2x1,5	9
T13	Spogliatoio	soffitto	1,5	L4		2x1,5	7
T14	Fienile	tromba	10	L4		2x1,5	31

Cavo: metri dall'altoparlante prima, il primo di ogni linea dalla centrale
Centrale 4 linee da 120 W, RG1 e RG2 da 12 W
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "a line a loudspeaker, cable from the one before; ratings in the last line; UTF-16 with tabs")
		t.Speakers("tap_v=100; line_v=100", `rows|tag|room|tap_w|channel|control
2|T01|Scuderia A box 1-4|10|L1|
3|T02|Scuderia A box 5-8|10|L1|
4|T03|Scuderia A box 9-12|10|L1|
5|T04|Scuderia B box 1-6|10|L2|
6|T05|Scuderia B box 7-12|10|L2|
7|T06|Lavaggio cavalli|10|L2|
8|T07|Maneggio angolo nord|20|L3|
9|T08|Maneggio angolo est|20|L3|
10|T09|Maneggio angolo sud|20|L3|
11|T10|Maneggio angolo ovest|20|L3|
12|T11|Selleria|3|L4|RG1
13|T12|Ufficio|3|L4|RG2
14|T13|Spogliatoio|1.5|L4|
15|T14|Fienile|10|L4|`)
		t.Channels("line_v=100; rated_w=120", `channel|load_w
L1|30
L2|30
L3|80
L4|17.5`)
		t.Amplifiers("", `amplifier|load_w
|157.5`)
		t.Controls("", `control|rated_w|load_w
RG1|12|3
RG2|12|3`)
		t.Lines("note=from the loudspeaker before, the first of a line from the amplifier", `from|to|length_m|area_mm2
|T01|48|2.5
T01|T02|18|2.5
T02|T03|18|2.5
|T04|64|2.5
T04|T05|20|2.5
T05|T06|16|2.5
|T07|72|4
T07|T08|40|4
T08|T09|25|4
T09|T10|40|4
|T11|15|1.5
T11|T12|9|1.5
T12|T13|7|1.5
T13|T14|31|1.5`)
	}},

	// A clerk of an Italian library's works department: counted by room and kind, walking round with the plan.
	{File: "comune/biblioteca conteggio.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Conteggio")
		p.Put("A1", `
Biblioteca civica di Orsaia, conteggio diffusori
Linea unica a 100 V, amplificatore da 240 W
||
Sala|Incasso 1,5 W|Incasso 3 W|Parete 6 W|Colonna 15 W|Tot. pz|Reg.
Ingresso||4|||4|
Prestiti||6|||6|R1
Lettura||8|2||10|R2
Emeroteca|2|2|||4|R3
Ragazzi||4|2||6|R4
Conferenze|||4|2|6|R5
Depositi|||4||4|
Uffici|5||||5|R6
Servizi|4||||4|
Tot. pz|11|24|12|2|49|
Tot. W|16.5|72|72|30|190.5|
||
R1, R2 e R4 da 50 W
R3 e R6 da 12 W
R5 da 100 W
`)
		p.Bold("A1", "A4:G4", "A14:F15")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Biblioteca civica di Orsaia", "matrix: rooms down, kinds with their taps across; control ratings in footnotes")
		t.Speakers("sheet=Conteggio; tap_v=100; line_v=100", `rows|room|count|tap_w|control
5|Ingresso|4|3|
6|Prestiti|6|3|R1
7|Lettura|8|3|R2
7|Lettura|2|6|R2
8|Emeroteca|2|1.5|R3
8|Emeroteca|2|3|R3
9|Ragazzi|4|3|R4
9|Ragazzi|2|6|R4
10|Conferenze|4|6|R5
10|Conferenze|2|15|R5
11|Depositi|4|6|
12|Uffici|5|1.5|R6
13|Servizi|4|1.5|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
|240|190.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
|240|190.5`)
		t.Controls("", `control|zone|rated_w|load_w
R1|Prestiti|50|18
R2|Lettura|50|36
R3|Emeroteca|12|9
R4|Ragazzi|50|24
R5|Conferenze|100|54
R6|Uffici|12|7.5`)
		t.Left("Conteggio", `14|total|pieces
15|total|watts`)
	}},

	// An electrician at a museum: its lamps with their dimmers, not its loudspeakers.
	{File: "museo/faretti e dimmer.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Luci")
		p.Put("A1", `
Museo del Vetro Soffiato, corpi illuminanti (230 V)
||
Zona|Sala|Apparecchio|N.|W cad.|W tot|Linea|Dimmer|W dimmer
Ingresso|Atrio|faretto a incasso|8|7|56|Q1/1||
Ingresso|Cassa|plafoniera|2|18|36|Q1/1||
Piano primo|Sala 1|faretto su binario|12|15|180|Q1/2|D1|400
Piano primo|Sala 2|faretto su binario|12|15|180|Q1/3|D2|400
Piano primo|Sala 3|faretto su binario|9|15|135|Q1/4|D3|400
Piano primo|Corridoio|plafoniera|4|18|72|Q1/5||
Piano secondo|Sala 4|faretto su binario|10|15|150|Q2/1|D4|400
Piano secondo|Sala video|applique|4|6|24|Q2/2|D5|100
Piano secondo|Laboratorio|plafoniera|6|36|216|Q2/3||
Esterno|Facciata|proiettore|3|50|150|Q2/4||
Totale|||70||1199
`)
		p.Bold("A1", "A3:I3", "A14:F14")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Museo del Vetro Soffiato", "lamps with watts, lines and dimmers by zone, 230 V")
	}},

	// The office of a maintenance firm: one register of all systems under contract; tags begin anew with every site.
	{File: "ufficio/registro impianti.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Registro")
		p.Put("A1", `
Registro impianti a 100 V in manutenzione
||
Comm.|Impianto|Zona|Altop.|Presa W|Ampl.|Regol.|Note
'0451|Teatro Sociale di Marzeno|Foyer|4|3|A1 120 W|R1 20 W|
||Palchi primo ordine|6|3|A1||
||Palchi secondo ordine|6|3|A1||
||Camerini|8|1.5|A2 60 W|R2 20 W|
||Sala prove|2|6|A2|R3 20 W|
||Biglietteria vecchia|2|3|A2||smontati nel 2019
'0467|Stazione di Pietrabianca|Banchina 1|8|10|A1 240 W||
||Banchina 2|8|10|A1||
||Sala d'attesa|4|3|A1|R1 20 W|
||Sottopasso|6|?|A1||presa da verificare
'0502|Orto botanico di Casalvento|Serra calda|4|10|A1 120 W|R1 100 W|
||Serra fredda|4|10|A1|R1|
||Aula|2|6|A1|R2 24 W|
||Vialetti|6|15|A2 120 W||
||Ingresso|2|3|A2||
`)
		p.Merge("A4:A9", "B4:B9", "A10:A13", "B10:B13", "A14:A18", "B14:B18")
		p.Bold("A1", "A3:H3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("0451", "Teatro Sociale di Marzeno", "register of three jobs with the same tags; ratings at the first mention only; one row taken down")
		t.Speakers("sheet=Registro; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|control
4|Foyer|4|3|A1|R1
5|Palchi primo ordine|6|3|A1|
6|Palchi secondo ordine|6|3|A1|
7|Camerini|8|1.5|A2|R2
8|Sala prove|2|6|A2|R3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|120|48
A2|60|24`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|120|48
A2|60|24`)
		t.Controls("", `control|zone|rated_w|load_w
R1|Foyer|20|12
R2|Camerini|20|12
R3|Sala prove|20|12`)
		t.Left("Registro", `9|removed|taken down in 2019`)
		t.Also("0467", "Stazione di Pietrabianca", "one tap to be checked")
		t.Speakers("sheet=Registro; tap_v=100; line_v=100; amplifier=A1", `rows|zone|count|tap_w|control
10|Banchina 1|8|10|
11|Banchina 2|8|10|
12|Sala d'attesa|4|3|R1
13|Sottopasso|6||`)
		t.Channels("line_v=100", `amplifier|rated_w|load_min_w
A1|240|172`)
		t.Amplifiers("", `amplifier|rated_w
A1|240`)
		t.Controls("", `control|zone|rated_w|load_w
R1|Sala d'attesa|20|12`)
		t.Asks("Registro", `13|asked|tap in the subway`)
		t.Also("0502", "Orto botanico di Casalvento", "one control over two rows")
		t.Speakers("sheet=Registro; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|control
14|Serra calda|4|10|A1|R1
15|Serra fredda|4|10|A1|R1
16|Aula|2|6|A1|R2
17|Vialetti|6|15|A2|
18|Ingresso|2|3|A2|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A1|120|92
A2|120|96`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A1|120|92
A2|120|96`)
		t.Controls("", `control|rated_w|load_w
R1|100|80
R2|24|12`)
	}},
}
