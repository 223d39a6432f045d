package main

import "lineaudit/samples/typed"

// italian are the schedules of an Italian-speaking foundation, all text files.
func italian() []typed.Case {
	return []typed.Case{
		{File: "it/Palaghiaccio.xml", Kind: "schedule", Bytes: palaghiaccio, Truth: palaghiaccioTruth},
		{File: "it/Orto botanico.xls", Kind: "schedule", Bytes: orto, Truth: ortoTruth},
		{File: "it/Darsena tarature.csv", Kind: "schedule", Bytes: darsena, Truth: darsenaTruth},
	}
}

// SpreadsheetML 2003 as a database export writes it: skipped cells and rows by index, merged cells, numbers and texts.
func palaghiaccio() []byte {
	return []byte(`<?xml version="1.0" encoding="UTF-8"?>
<?mso-application progid="Excel.Sheet"?>
<Workbook xmlns="urn:schemas-microsoft-com:office:spreadsheet" xmlns:ss="urn:schemas-microsoft-com:office:spreadsheet">
 <Styles><Style ss:ID="S"><Font ss:StrikeThrough="1"/></Style></Styles>
 <Worksheet ss:Name="Diffusione sonora">
  <Table>
   <Row><Cell ss:MergeAcross="5"><Data ss:Type="String">Ente Monteluvio - Palaghiaccio, diffusione sonora</Data></Cell><Cell><Data ss:Type="String">Commessa EM-77</Data></Cell></Row>
   <Row ss:Index="3"><Cell><Data ss:Type="String">Diff.</Data></Cell><Cell><Data ss:Type="String">Dove</Data></Cell><Cell><Data ss:Type="String">Quanti</Data></Cell><Cell><Data ss:Type="String">Tarati a (W)</Data></Cell><Cell ss:MergeAcross="1"><Data ss:Type="String">Alimentati da</Data></Cell><Cell><Data ss:Type="String">Comando</Data></Cell></Row>
   <Row><Cell ss:Index="5"><Data ss:Type="String">finale</Data></Cell><Cell><Data ss:Type="String">uscita</Data></Cell></Row>
   <Row><Cell><Data ss:Type="String">Tromba 30</Data></Cell><Cell><Data ss:Type="String">Pista lato nord</Data></Cell><Cell><Data ss:Type="Number">6</Data></Cell><Cell><Data ss:Type="Number">15</Data></Cell><Cell><Data ss:Type="String">F1</Data></Cell><Cell><Data ss:Type="Number">1</Data></Cell></Row>
   <Row><Cell><Data ss:Type="String">Tromba 30</Data></Cell><Cell><Data ss:Type="String">Pista lato sud</Data></Cell><Cell><Data ss:Type="Number">6</Data></Cell><Cell><Data ss:Type="Number">15</Data></Cell><Cell><Data ss:Type="String">F1</Data></Cell><Cell><Data ss:Type="Number">2</Data></Cell></Row>
   <Row><Cell ss:MergeDown="1"><Data ss:Type="String">Plafoniera 6</Data></Cell><Cell><Data ss:Type="String">Spogliatoi</Data></Cell><Cell><Data ss:Type="Number">8</Data></Cell><Cell><Data ss:Type="String">1,5</Data></Cell><Cell><Data ss:Type="String">F1</Data></Cell><Cell><Data ss:Type="Number">3</Data></Cell><Cell><Data ss:Type="String">R1 da 10 W</Data></Cell></Row>
   <Row><Cell ss:Index="2"><Data ss:Type="String">Noleggio pattini</Data></Cell><Cell><Data ss:Type="Number">6</Data></Cell><Cell><Data ss:Type="Number">3</Data></Cell><Cell><Data ss:Type="String">F1</Data></Cell><Cell><Data ss:Type="Number">3</Data></Cell><Cell><Data ss:Type="String">R2 da 20 W</Data></Cell></Row>
   <Row><Cell ss:StyleID="S"><Data ss:Type="String">Colonna 20</Data></Cell><Cell ss:StyleID="S"><Data ss:Type="String">Tribuna vecchia</Data></Cell><Cell ss:StyleID="S"><Data ss:Type="Number">4</Data></Cell><Cell ss:StyleID="S"><Data ss:Type="Number">20</Data></Cell><Cell ss:StyleID="S"><Data ss:Type="String">F1</Data></Cell><Cell ss:StyleID="S"><Data ss:Type="Number">4</Data></Cell></Row>
   <Row><Cell><Data ss:Type="String">Colonna 20</Data></Cell><Cell><Data ss:Type="String">Tribuna nuova</Data></Cell><Cell><Data ss:Type="Number">5</Data></Cell><Cell><Data ss:Type="Number">10</Data></Cell><Cell><Data ss:Type="String">F1</Data></Cell><Cell><Data ss:Type="Number">4</Data></Cell></Row>
   <Row ss:Index="12"><Cell><Data ss:Type="String">F1: quattro uscite da 100 W a 100 V</Data></Cell></Row>
  </Table>
 </Worksheet>
</Workbook>
`)
}

func palaghiaccioTruth(t *typed.Truth) {
	t.Is("EM-77", "Palaghiaccio", "SpreadsheetML 2003 by an exporter: cells and rows skipped by index, two header rows, a merged kind, a struck row, ratings behind 'da'")
	t.Speakers("sheet=Diffusione sonora; tap_v=100; line_v=100; amplifier=F1", `
rows|zone|model|count|tap_w|channel|control
5|Pista lato nord|Tromba 30|6|15|1|
6|Pista lato sud|Tromba 30|6|15|2|
7|Spogliatoi|Plafoniera 6|8|1.5|3|R1
8|Noleggio pattini|Plafoniera 6|6|3|3|R2
10|Tribuna nuova|Colonna 20|5|10|4|
`)
	t.Channels("line_v=100; rated_w=100; amplifier=F1", "channel|load_w\n1|90\n2|90\n3|30\n4|50")
	t.Amplifiers("", "amplifier|rated_w|load_w\nF1|400|260")
	t.Controls("", "control|zone|rated_w|load_w|note\nR1|Spogliatoi|10|12|over its rating\nR2|Noleggio pattini|20|18|")
	t.Left("Diffusione sonora", "9|struck|\n12|amplifier|")
}

// An HTML table that calls itself a workbook: spanned cells, entities, a nested mark-up, a line break in a cell.
func orto() []byte {
	return typed.Latin1(`<html><head><meta http-equiv="Content-Type" content="text/html; charset=iso-8859-1"><title>Orto</title>
<style>td {mso-number-format:"\@"}</style></head><body>
<table border=1>
<tr><td colspan=7><b>Orto botanico di Monteluvio &ndash; altoparlanti</b></td></tr>
<tr><td colspan=4>Commessa EM&#45;81</td><td colspan=3>Linea&nbsp;100&nbsp;V</td></tr>
<tr><th rowspan=2>Sigla</th><th rowspan=2>Serra</th><th colspan=2>Altoparlante</th><th rowspan=2>Uscita</th><th colspan=2>Cavo</th></tr>
<tr><th>genere</th><th>presa<br>usata</th><th>sez.</th><th>percorso</th></tr>
<tr><td>O1</td><td rowspan=3>Felci</td><td>incasso</td><td>3&nbsp;W</td><td>U1</td><td>2&times;1,5</td><td>28 m</td></tr>
<tr><td>O2</td><td>incasso</td><td>3&nbsp;W</td><td>U1</td><td>2&times;1,5</td><td>34 m</td></tr>
<tr><td>O3</td><td>incasso</td><td><s>3</s> 1,5&nbsp;W</td><td>U1</td><td>2&times;1,5</td><td>41 m</td></tr>
<tr><td>O4</td><td rowspan=2>Cactus</td><td>tromba</td><td>7,5&nbsp;W</td><td>U1</td><td>2&times;1,5</td><td>60&nbsp;m</td></tr>
<tr><td>O5</td><td>tromba</td><td>7,5&nbsp;W</td><td>U1</td><td>2&times;1,5</td><td>66&nbsp;m</td></tr>
<tr><td>O6</td><td rowspan=4>Palme</td><td rowspan=4>colonna</td><td>10&nbsp;W</td><td>U2</td><td>2&times;2,5</td><td>72 m</td></tr>
<tr><td>O7</td><td>10&nbsp;W</td><td>U2</td><td>2&times;2,5</td><td>80 m</td></tr>
<tr><td>O8</td><td>10&nbsp;W</td><td>U2</td><td>2&times;2,5</td><td>88 m</td></tr>
<tr><td>O9</td><td>20&nbsp;W</td><td>U2</td><td>2&times;2,5</td><td>96 m</td></tr>
<tr><td colspan=3>Totale</td><td>72,5&nbsp;W</td><td></td><td></td><td></td></tr>
<tr><td colspan=7>Uscite U1 e U2 del finale: 60&nbsp;W ciascuna</td></tr>
</table></body></html>
`)
}

func ortoTruth(t *typed.Truth) {
	t.Is("EM-81", "Orto botanico di Monteluvio", "an HTML table named .xls: row and column spans, entities, a struck value before the valid one, decimal commas; one-way paths of growing length")
	t.Speakers("tap_v=100; line_v=100", `
rows|tag|zone|model|tap_w|channel|note
5..6|O1..O2|Felci|incasso|3|U1|
7|O3|Felci|incasso|1.5|U1|3 struck, 1.5 behind
8..9|O4..O5|Cactus|tromba|7.5|U1|
10..12|O6..O8|Palme|colonna|10|U2|
13|O9|Palme|colonna|20|U2|
`)
	t.Channels("line_v=100; rated_w=60", "channel|load_w|note\nU1|22.5|3+3+1.5+7.5+7.5\nU2|50|")
	t.Amplifiers("", "rated_w|load_w|note\n120|72.5|unnamed")
	t.Lines("material=copper; note=path from the amplifier: assumed", `
to|length_m|area_mm2
O1|28|1.5
O2|34|1.5
O3|41|1.5
O4|60|1.5
O5|66|1.5
O6|72|2.5
O7|80|2.5
O8|88|2.5
O9|96|2.5
`)
	t.Left("", "14|total|72.5 W, right\n15|amplifier|")
	t.Asks("", "5-13|assumed|the paths are from the amplifier")
}

// A list of tappings with the choice named behind the list.
func darsena() []byte {
	return typed.Windows1252(typed.DOS(`
Darsena – tarature;;;;EM-79
70 V;;;;
Zona;Pezzi;Trasformatore;Tarato;Note
1 Pontile;4;30-15-7,5 W;7,5;
2 Rimessa;8;12-6-3 W;6;
3 Spogliatoio;6;6-3-1,5 W;;tutti al minimo
4 Ufficio;2;6-3-1,5 W;mezzo watt;presa aggiunta
5 Officina;3;12-6-3 W;?;da verificare
6 Gru;1;30-15-7,5 W;30;
Totale;24;;;
;;;;
Booster B1: zone 1, 2 (80 W);;;;
Booster B2: zone 3, 4, 5, 6 (80 W);;;;
`))
}

func darsenaTruth(t *typed.Truth) {
	t.Is("EM-79", "Darsena", "tap lists with dashes beside the tap; a tap told in the remark ('all at the lowest'), one in words ('half a watt'), one open; boosters name their zones below")
	t.Speakers("tap_v=70.7; line_v=70.7", `
rows|zone|count|tap_w|amplifier|note
4|1 Pontile|4|7.5|B1|
5|2 Rimessa|8|6|B1|
6|3 Spogliatoio|6|1.5|B2|the lowest of 6-3-1.5
7|4 Ufficio|2|0.5|B2|half a watt, an added tap: not on the list
8|5 Officina|3||B2|open: 3, 6 or 12 W
9|6 Gru|1|30|B2|
`)
	t.Channels("line_v=70.7; rated_w=80", "amplifier|load_w|load_min_w|load_max_w|note\nB1|78|78|78|30+48: 97.5 %\nB2||49|76|9+1+30 known, 9 to 36 open: within 80 W in any case, but 61 to 95 %")
	t.Amplifiers("", "amplifier|rated_w|load_w\nB1|80|78\nB2|80|")
	t.Left("", "10|total|24 pieces: right\n12|amplifier|\n13|amplifier|")
	t.Asks("", "8|asked|tap of the three in the workshop\n6|assumed|'all at the lowest' taken as 1.5 W")
}
