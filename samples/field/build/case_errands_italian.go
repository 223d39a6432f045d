package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// errandsItalian are a theatre's contractor, a maintenance man at stables and an insurer's register.
var errandsItalian = []typed.Case{
	{File: "errands/collaudi/Teatro delle Saline 24-061.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Elenco diffusori")
		p.Put("A1", `
Teatro delle Saline, diffusione sonora a 100 V
Commessa 24/061
||
Piano terra
Linea|Locale|Tipo|N.|W|Regolatore
L.01|Foyer|incasso|6|6|RV1
L.01|Biglietteria|incasso|1|3|RV2
L.02|Platea|colonna|6|20|
L.03|Retropalco|parete|3|6|
L.03|Carico scene|tromba|1|15|
Piano primo
Linea|Locale|Tipo|N.|W|Regolatore
L.04|Galleria|colonna|4|10|
L.04|Ridotto (da posare in fase 2)|incasso|4|6|
L.05|Camerini 1-6|parete|6|3|RV3
L.05|Sala prove|parete|4|6|
L.05|Sartoria|parete|1|3|RV4
`)
		p.Bold("A1:A2", "A4:F5", "A11:F12")
		q := p.Sheet("Centrale")
		q.Put("A1", `
Apparecchio|Uscita|Potenza nominale|Linea
FIN-1|1|160 W|L.02
FIN-1|2|160 W|L.04
FIN-2|1|80 W|L.01
FIN-2|2|80 W|L.03
FIN-2|3|80 W|L.05
||
Regolatore|Portata
RV1|50 W
RV2|5 W
RV3|24 W
RV4|5 W
`)
		q.Bold("A1:D1", "A8:B8")
		r := p.Sheet("Cavi")
		r.Put("A1", `
Linea|Da|A|Sezione (mm²)|m
L.01|Centrale|Foyer|2x1,5|35
L.02|Centrale|Platea|2x2,5|50
L.03|Centrale|Retropalco|2x1,5|28
L.04|Centrale|Galleria|2x2,5|62
L.05|Centrale|Sala prove|2x1,5|75
`)
		r.Bold("A1:E1")
		s := p.Sheet("Collaudo")
		s.Put("A1", `
Linea|W calcolati|W misurati|Isolamento|Esito
L.01|39|40|> 20 MΩ|positivo
L.02|120|118|> 20 MΩ|positivo
L.03|33|33|> 20 MΩ|positivo
L.04|40|41|> 20 MΩ|positivo, senza ridotto
L.05|45|46|> 20 MΩ|positivo
`)
		s.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("24/061", "Teatro delle Saline", "four sheets joined by line numbers, outputs in another order than the lines; floors as titles with the header repeated, one row of a later phase, a test record with sums")
		t.Speakers("sheet=Elenco diffusori; tap_v=100; line_v=100; amplifier=FIN-2; channel=1; zone=Piano terra; note=floor as zone", `rows|room|count|tap_w|control
6|Foyer|6|6|RV1
7|Biglietteria|1|3|RV2`)
		t.Speakers("sheet=Elenco diffusori; tap_v=100; line_v=100; amplifier=FIN-1; channel=1; zone=Piano terra; note=floor as zone", `rows|room|count|tap_w
8|Platea|6|20`)
		t.Speakers("sheet=Elenco diffusori; tap_v=100; line_v=100; amplifier=FIN-2; channel=2; zone=Piano terra; note=floor as zone", `rows|room|count|tap_w
9|Retropalco|3|6
10|Carico scene|1|15`)
		t.Speakers("sheet=Elenco diffusori; tap_v=100; line_v=100; amplifier=FIN-1; channel=2; zone=Piano primo; note=floor as zone", `rows|room|count|tap_w
13|Galleria|4|10`)
		t.Speakers("sheet=Elenco diffusori; tap_v=100; line_v=100; amplifier=FIN-2; channel=3; zone=Piano primo; note=floor as zone", `rows|room|count|tap_w|control
15|Camerini 1-6|6|3|RV3
16|Sala prove|4|6|
17|Sartoria|1|3|RV4`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
FIN-1|1|160|120
FIN-1|2|160|40
FIN-2|1|80|39
FIN-2|2|80|33
FIN-2|3|80|45`)
		t.Amplifiers("", `amplifier|load_w
FIN-1|160
FIN-2|117`)
		t.Controls("", `control|rated_w|load_w
RV1|50|36
RV2|5|3
RV3|24|18
RV4|5|3`)
		t.Lines("note=from-to runs", `line|from|to|length_m|area_mm2
L.01|Centrale|Foyer|35|1.5
L.02|Centrale|Platea|50|2.5
L.03|Centrale|Retropalco|28|1.5
L.04|Centrale|Galleria|62|2.5
L.05|Centrale|Sala prove|75|1.5`)
		t.Left("Elenco diffusori", `14|future|to be laid in phase 2`)
		t.Left("Collaudo", `2|test|load of a line
3|test|load of a line
4|test|load of a line
5|test|load of a line
6|test|load of a line`)
	}},

	{File: "errands/manutenzione/Scuderie di Prato Lungo.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Diffusori")
		p.Put("A1", `
Cod.|Zona|Posizione|Tipo|Presa W
D1|Scuderia A|Corsia nord|tromba|10
D2|Scuderia A|Corsia sud|tromba|10
D3|Scuderia A|Selleria|parete|3
D4|Scuderia B|Corsia nord|tromba|10
D5|Scuderia B|Corsia sud|tromba|10
D6|Scuderia B|Fienile|tromba|15
D7|Maneggio coperto|Lato lungo|tromba|15
D8|Maneggio coperto|Lato lungo|tromba|15
D9|Maneggio coperto|Lato corto|tromba|15
D10|Maneggio coperto|Tribuna|parete|6
D11|Segreteria|Sportello|parete|3
D12|Segreteria|Ufficio|parete|1.5
D13|Infermeria veterinaria|Sala|parete|3
D14||di scorta, in magazzino|tromba|15
`)
		p.Bold("A1:E1")
		q := p.Sheet("Uscite")
		q.Put("A1", `
Scuderie di Prato Lungo
Un solo amplificatore a quattro uscite, linea 100 V
||
Uscita|Zona|Potenza massima|Attenuatore
1|Scuderia A|60 W|
2|Scuderia B|60 W|
3|Maneggio coperto|120 W|AT1 da 60 W
4|Segreteria|30 W|AT2 da 12 W
4|Infermeria veterinaria|(stessa uscita)|AT3 da 6 W
`)
		q.Bold("A1", "A4:D4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Scuderie di Prato Lungo", "two sheets joined by zone names; an amplifier without a name with four outputs, two zones on one output, control and rating in one cell, a spare horn in the list")
		t.Speakers("sheet=Diffusori; tap_v=100; line_v=100", `rows|tag|zone|room|tap_w|channel|control
2|D1|Scuderia A|Corsia nord|10|1|
3|D2|Scuderia A|Corsia sud|10|1|
4|D3|Scuderia A|Selleria|3|1|
5|D4|Scuderia B|Corsia nord|10|2|
6|D5|Scuderia B|Corsia sud|10|2|
7|D6|Scuderia B|Fienile|15|2|
8|D7|Maneggio coperto|Lato lungo|15|3|AT1
9|D8|Maneggio coperto|Lato lungo|15|3|AT1
10|D9|Maneggio coperto|Lato corto|15|3|AT1
11|D10|Maneggio coperto|Tribuna|6|3|AT1
12|D11|Segreteria|Sportello|3|4|AT2
13|D12|Segreteria|Ufficio|1.5|4|AT2
14|D13|Infermeria veterinaria|Sala|3|4|AT3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
|1|60|23
|2|60|35
|3|120|51
|4|30|7.5`)
		t.Amplifiers("", `amplifier|load_w
|116.5`)
		t.Controls("", `control|zone|rated_w|load_w
AT1|Maneggio coperto|60|51
AT2|Segreteria|12|4.5
AT3|Infermeria veterinaria|6|3`)
		t.Left("Diffusori", `15|spare|in the store`)
	}},

	{File: "errands/assicurazione/Registro beni planetario Colle Sereno.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Registro")
		p.Put("A1", `
Planetario di Colle Sereno, registro beni: diffusione sonora
N. inv.|Descrizione|Ubicazione|Q.tà|Potenza|Collegato a
3001|Amplificatore AM-A, 120 W, linea 100 V|Locale tecnico|1||
3002|Amplificatore AM-B, 60 W, linea 100 V|Locale tecnico|1||
3003|Diffusore a parete|Cupola|8|6 W|AM-A
3004|Diffusore a parete|Anello esterno|4|3 W|AM-A
3005|Diffusore da incasso|Biglietteria|2|3 W|AM-B
3006|Diffusore da incasso|Sala mostra|6|3 W|AM-B, tramite AT-1
3007|Diffusore da incasso|Aula|4|3 W|AM-B, tramite AT-2
3008|Tromba|Piazzale|1|non leggibile|AM-B
3009|Attenuatore AT-1, 24 W|Sala mostra|1||
3010|Attenuatore AT-2, 18 W|Aula|1||
3011|Microfono da tavolo|Cabina di regia|1||
3012|Armadio per apparati|Locale tecnico|1||
`)
		p.Bold("A1", "A2:F2")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Planetario di Colle Sereno", "register of assets: amplifiers, loudspeakers, controls and other things in one column, ratings in the descriptions, connections in words, one tap that cannot be read")
		t.Speakers("sheet=Registro; tap_v=100; line_v=100; amplifier=AM-A", `rows|room|count|tap_w
5|Cupola|8|6
6|Anello esterno|4|3`)
		t.Speakers("sheet=Registro; tap_v=100; line_v=100; amplifier=AM-B", `rows|room|count|tap_w|control
7|Biglietteria|2|3|
8|Sala mostra|6|3|AT-1
9|Aula|4|3|AT-2
10|Piazzale|1||`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w|load_min_w
AM-A|120|60|
AM-B|60||36`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AM-A|120|60
AM-B|60|`)
		t.Controls("", `control|rated_w|load_w
AT-1|24|18
AT-2|18|12`)
		t.Left("Registro", `3|other|amplifier
4|other|amplifier
11|other|control
12|other|control
13|other|microphone
14|other|rack`)
		t.Asks("Registro", `10|asked|tap of the horn on the forecourt`)
	}},
}
