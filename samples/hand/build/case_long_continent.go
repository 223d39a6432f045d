package main

import "lineaudit/samples/typed"

// longContinent are whole buildings in other languages.
func longContinent() []typed.Case {
	return []typed.Case{
		{File: "Eissportzentrum Quellrode/ELA Bestand komplett.xls", Kind: "schedule", Saved: "xls", Book: book("Bestand", `
Eissportzentrum Quellrode||||||||
ELA Bestandsliste 100 V||||Datum 04/2019||||
||||||||
Geschoss|Raum-Nr.|Raum|LS-Typ|Anz.|Abgriff|Rufkreis|Verstärker/Ausgang|LSR
EG|E01|Eingangshalle|D6|6|3 W|1|V1/1|
EG|E02|Kasse|D6|1|1,5 W|1|V1/1|LSR 1
EG|E03|Garderobe|D6|2|3 W|1|V1/1|
EG|E04|Schlittschuhverleih|D6|3|3 W|1|V1/1|LSR 2
EG|E05|WC Damen|D6|2|1,5 W|1|V1/1|
EG|E06|WC Herren|D6|2|1,5 W|1|V1/1|
EG|E10|Kabine 1|D6|2|1,5 W|2|V1/2|
EG|E11|Kabine 2|D6|2|1,5 W|2|V1/2|
EG|E12|Kabine 3|D6|2|1,5 W|2|V1/2|
EG|E13|Kabine 4|D6|2|1,5 W|2|V1/2|
EG|E14|Schiedsrichter|D6|1|1,5 W|2|V1/2|
EG|E15|Sanitätsraum|D6|1|1,5 W|2|V1/2|
EG|E16|Schleifraum|W10|1|5 W|2|V1/2|
EG|E20|Eisfläche|T20|10|20 W|3|V2/1|
EG|E21|Strafbänke|W10|2|10 W|3|V2/1|
1.OG|101|Tribüne Nord|T20|6|10 W|4|V2/2|
1.OG|102|Tribüne Süd|T20|6|10 W|4|V2/2|
1.OG|103|Sprecherkabine|D6|1|0,75 W|4|V2/2|LSR 3
1.OG|104|Büro|D6|3|1,5 W|5|V1/3|
1.OG|105|Besprechung|D6|2|3 W|5|V1/3|LSR 4
Außen|A1|Vorplatz|H15|3|15 W|6|V1/4|
Außen|A2|Parkplatz|H15|2|7,5 W|6|V1/4|
Summe||||62||||
||||||||
V1: 4 x 60 W, V2: 2 x 250 W||||||||
LSR 1, 3: 6 W; LSR 2, 4: 12 W||||||||
`, bold("A1:A2", "A4:I4")), Truth: func(t *typed.Truth) {
			t.Is("", "Eissportzentrum Quellrode", "plain and long: floor, room number, room, paging circuit, output, control; the controls' ratings in a sentence")
			t.Speakers("tap_v=100; line_v=100; sheet=Bestand", `
rows|zone|room|model|count|tap_w|amplifier|channel|control
5|1|Eingangshalle|D6|6|3|V1|1|
6|1|Kasse|D6|1|1.5|V1|1|LSR 1
7|1|Garderobe|D6|2|3|V1|1|
8|1|Schlittschuhverleih|D6|3|3|V1|1|LSR 2
9|1|WC Damen|D6|2|1.5|V1|1|
10|1|WC Herren|D6|2|1.5|V1|1|
11|2|Kabine 1|D6|2|1.5|V1|2|
12|2|Kabine 2|D6|2|1.5|V1|2|
13|2|Kabine 3|D6|2|1.5|V1|2|
14|2|Kabine 4|D6|2|1.5|V1|2|
15|2|Schiedsrichter|D6|1|1.5|V1|2|
16|2|Sanitätsraum|D6|1|1.5|V1|2|
17|2|Schleifraum|W10|1|5|V1|2|
18|3|Eisfläche|T20|10|20|V2|1|
19|3|Strafbänke|W10|2|10|V2|1|
20|4|Tribüne Nord|T20|6|10|V2|2|
21|4|Tribüne Süd|T20|6|10|V2|2|
22|4|Sprecherkabine|D6|1|0.75|V2|2|LSR 3
23|5|Büro|D6|3|1.5|V1|3|
24|5|Besprechung|D6|2|3|V1|3|LSR 4
25|6|Vorplatz|H15|3|15|V1|4|
26|6|Parkplatz|H15|2|7.5|V1|4|
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w|note
V1|1|60|40.5|18 + 1.5 + 6 + 9 + 3 + 3
V1|2|60|20|12 + 1.5 + 1.5 + 5
V1|3|60|10.5|
V1|4|60|60|exactly its rating
V2|1|250|220|
V2|2|250|120.75|
`)
			t.Controls("", `
control|zone|rated_w|load_w
LSR 1|1|6|1.5
LSR 2|1|12|9
LSR 3|4|6|0.75
LSR 4|5|12|6
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
V1|240|131
V2|500|340.75
`)
			t.Left("Bestand", "27|total|right")
		}},

		{File: "Patinoire de Vaubrière/relevé complet.csv", Kind: "schedule", Bytes: utf8(`
PATINOIRE DE VAUBRIÈRE;;;;;;;
Relevé complet des haut-parleurs;;;;;;maj 2020;
Bât.;Niveau;Local;Type de HP;Nombre;Prise (W);Ligne;Atténuateur
A;RDC;Hall;encastré;6;3;L1;
A;RDC;Caisses;encastré;2;1,5;L1;AT1
A;RDC;Location patins;encastré;4;3;L1;AT2
A;RDC;Sanitaires public;encastré;4;1,5;L1;
A;RDC;Vestiaire 1;encastré;2;1,5;L2;
A;RDC;Vestiaire 2;encastré;2;1,5;L2;
A;RDC;Vestiaire 3;encastré;2;1,5;L2;
A;RDC;Vestiaire 4;encastré;2;1,5;L2;
A;RDC;Arbitres;encastré;1;1,5;L2;
A;RDC;Infirmerie;encastré;1;1,5;L2;AT3
A;R+1;Bureaux;encastré;4;1,5;L2;
A;R+1;Salle de réunion;encastré;2;3;L2;AT4
B;RDC;Piste travée 1;projecteur;4;15;L3;
B;RDC;Piste travée 2;projecteur;4;15;L3;
B;RDC;Piste travée 3;projecteur;4;15;L4;
B;RDC;Piste travée 4;projecteur;4;15;L4;
B;RDC;Gradins est;colonne;5;10;L5;
B;RDC;Gradins ouest;colonne;5;10;L5;
B;SS;Machinerie;pavillon;2;15;L6;
B;SS;Garage surfaceuse;pavillon;1;15;L6;
Ext.;;Parvis;pavillon;3;7,5;L6;
;;TOTAL;;64;;;
;;;;;;;
Ligne;Ampli;Puissance;;;;;
L1;AM1;60 W;;;;;
L2;AM2;60 W;;;;;
L3;AM3;120 W;;;;;
L4;AM4;120 W;;;;;
L5;AM5;120 W;;;;;
L6;AM6;60 W;;;;;
;;;;;;;
AT1, AT3 : 3 W max - AT2, AT4 : 12 W max;;;;;;;
`), Truth: func(t *typed.Truth) {
			t.Is("", "Patinoire de Vaubrière", "plain and long: six lines, an amplifier each in a table below, the controls' ratings in a line")
			t.Speakers("", `
rows|room|model|count|tap_w|amplifier|channel|control|note
4|Hall|encastré|6|3|AM1|L1||no voltage is stated
5|Caisses|encastré|2|1.5|AM1|L1|AT1|
6|Location patins|encastré|4|3|AM1|L1|AT2|
7|Sanitaires public|encastré|4|1.5|AM1|L1||
8|Vestiaire 1|encastré|2|1.5|AM2|L2||
9|Vestiaire 2|encastré|2|1.5|AM2|L2||
10|Vestiaire 3|encastré|2|1.5|AM2|L2||
11|Vestiaire 4|encastré|2|1.5|AM2|L2||
12|Arbitres|encastré|1|1.5|AM2|L2||
13|Infirmerie|encastré|1|1.5|AM2|L2|AT3|
14|Bureaux|encastré|4|1.5|AM2|L2||
15|Salle de réunion|encastré|2|3|AM2|L2|AT4|
16|Piste travée 1|projecteur|4|15|AM3|L3||
17|Piste travée 2|projecteur|4|15|AM3|L3||
18|Piste travée 3|projecteur|4|15|AM4|L4||
19|Piste travée 4|projecteur|4|15|AM4|L4||
20|Gradins est|colonne|5|10|AM5|L5||
21|Gradins ouest|colonne|5|10|AM5|L5||
22|Machinerie|pavillon|2|15|AM6|L6||
23|Garage surfaceuse|pavillon|1|15|AM6|L6||
24|Parvis|pavillon|3|7.5|AM6|L6||
`)
			t.Channels("", `
amplifier|channel|rated_w|load_w|note
AM1|L1|60|39|18 + 3 + 12 + 6
AM2|L2|60|27|12 + 1.5 + 1.5 + 6 + 6
AM3|L3|120|120|exactly its rating
AM4|L4|120|120|exactly its rating
AM5|L5|120|100|
AM6|L6|60|67.5|over its rating
`)
			t.Controls("", `
control|zone|rated_w|load_w
AT1|Caisses|3|3
AT2|Location patins|12|12
AT3|Infirmerie|3|1.5
AT4|Salle de réunion|12|6
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
AM1|60|39
AM2|60|27
AM3|120|120
AM4|120|120
AM5|120|100
AM6|60|67.5
`)
			t.Left("", "25|total|right")
		}},
	}
}
