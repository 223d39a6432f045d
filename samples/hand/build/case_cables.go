package main

import "lineaudit/samples/typed"

// cables are lists that say how the loudspeakers are wired, each in its own way, and some that came by mail.
func cables() []typed.Case {
	return []typed.Case{
		{File: "Harrowmere/Grounds cables via JBs.xlsx", Kind: "schedule", Saved: "xlsx", Book: book("Speakers", `
Harrowmere grounds PA - loudspeakers, 100V line
Ref|Location|Type|Tap W|Line
G1|Long border|Horn|7.5|4
G2|Long border|Horn|7.5|4
G3|Lake north|Horn|15|4
G4|Lake south|Horn|15|4
G5|Play area|Horn|7.5|5
G6|Play area|Horn|7.5|5
Line 4 and line 5 are outputs of amplifier PA4, 60W each
`, bold("A1", "A2:E2"), and("Cables", `
Cable|From|To|Type|m
GC1|PA4 line 4|JB1|2c 4mm² SWA|140
GC2|JB1|G1|2c 2.5mm² SWA|25
GC3|JB1|G2|2c 2.5mm² SWA|40
GC4|JB1|JB2|2c 4mm² SWA|160
GC5|JB2|G3|2c 2.5mm² SWA|15
GC6|JB2|G4|2c 2.5mm² SWA|90
GC7|PA4 line 5|G5|2c 2.5mm² SWA|210
GC8|G5|G6|2c 2.5mm² SWA|20
`, bold("A1:E1"))), Truth: func(t *typed.Truth) {
			t.Is("", "Harrowmere", "cables branch in junction boxes that are no loudspeakers")
			t.Speakers("tap_v=100; line_v=100; sheet=Speakers; amplifier=PA4", `
rows|tag|room|model|tap_w|channel
3..4|G1..|Long border|Horn|7.5|4
5|G3|Lake north|Horn|15|4
6|G4|Lake south|Horn|15|4
7..8|G5..|Play area|Horn|7.5|5
`)
			t.Channels("line_v=100; amplifier=PA4; rated_w=60", "channel|load_w\n4|45\n5|15")
			t.Amplifiers("amplifier=PA4", "load_w\n60")
			t.Lines("material=copper", `
line|from|to|length_m|area_mm2
GC1|PA4 line 4|JB1|140|4
GC2|JB1|G1|25|2.5
GC3|JB1|G2|40|2.5
GC4|JB1|JB2|160|4
GC5|JB2|G3|15|2.5
GC6|JB2|G4|90|2.5
GC7|PA4 line 5|G5|210|2.5
GC8|G5|G6|20|2.5
`)
		}},

		{File: "Bluestem/trail speakers.csv", Kind: "schedule", Bytes: plain(`
Bluestem Botanical Garden - trail speakers,,,,,,,
"70V, direct burial cable, copper",,,,,,,
Loop,Speakers on loop,Tap (W),Loop load (W),Home run to first (ft),Spacing (ft),AWG,Amp ch
Prairie,8,7.5,60,350,60,12,1
Woodland,6,10,60,280,75,12,2
Pond,4,15,60,500,100,10,3
Garden rooms,10,5,50,120,40,14,4
"Amp: 4 ch x 80 W at 70V",,,,,,,
`), Truth: func(t *typed.Truth) {
			t.Is("", "Bluestem Botanical Garden", "length to the first loudspeaker and the spacing of the others; a loop is a line")
			t.Speakers("tap_v=70.7; line_v=70.7", `
rows|zone|count|tap_w|channel
4|Prairie|8|7.5|1
5|Woodland|6|10|2
6|Pond|4|15|3
7|Garden rooms|10|5|4
`)
			t.Channels("line_v=70.7; rated_w=80", "channel|load_w\n1|60\n2|60\n3|60\n4|50")
			t.Amplifiers("", "rated_w|load_w|note\n320|230|unnamed")
		}},

		{File: "Jardin des Estives/longueurs aller-retour.xls", Kind: "schedule", Saved: "xls", Book: book("Lignes", `
Jardin des Estives - lignes du parc, 100 V||||||
Ligne|Zone desservie|Nb HP|W par HP|Section|Longueur A/R (m)|Ampli
1|Roseraie|6|10|2,5 mm²|220|P1
2|Labyrinthe|4|10|2,5 mm²|360|P2
3|Lac|4|15|4 mm²|700|P3
4|Entrée|6|5|1,5 mm²|90|P4
P1 à P4 : 60 W||||||
Longueurs aller et retour : le chemin du câble en fait la moitié.||||||
`, bold("A1", "A2:G2")), Truth: func(t *typed.Truth) {
			t.Is("", "Jardin des Estives", "the lengths are there and back: the way is half of them; 'P1 à P4' rates four amplifiers")
			t.Speakers("tap_v=100; line_v=100; sheet=Lignes", `
rows|zone|count|tap_w|amplifier
3|Roseraie|6|10|P1
4|Labyrinthe|4|10|P2
5|Lac|4|15|P3
6|Entrée|6|5|P4
`)
			t.Channels("line_v=100; rated_w=60", "amplifier|load_w\nP1|60\nP2|40\nP3|60\nP4|30")
			t.Amplifiers("rated_w=60", "amplifier|load_w\nP1|60\nP2|40\nP3|60\nP4|30")
			t.Lines("material=copper", `
line|zone|length_m|area_mm2
1|Roseraie|110|2.5
2|Labyrinthe|180|2.5
3|Lac|350|4
4|Entrée|45|1.5
`)
		}},

		{File: "Palaghiaccio Valsolina/pista - unità sotto.xlsx", Kind: "schedule", Book: book("Pista", `
Palaghiaccio di Valsolina - pista, linee 100 V||||||||
Linea|Diffusori||||Cavo||Amplificatore|
|Posizione|N.|Taratura|Totale|Sezione|Lunghezza|Sigla|Potenza
|||W|W|mm²|m||W
1|lato est, campate 1-3|3|20|60|2,5|70|B1|240
|lato est, campate 4-6|3|20|60|2,5|35||
2|lato ovest, campate 1-3|3|20|60|2,5|95|B2|240
|lato ovest, campate 4-6|3|20|60|2,5|35||
3|tribuna|8|10|80|2,5|60|B3|120
|cabina|1|5|5|1,5|12||
`, merged("B2:E2", "F2:G2", "H2:I2", "A5:A6", "A7:A8", "A9:A10", "H5:H6", "H7:H8", "H9:H10", "I5:I6", "I7:I8", "I9:I10"), bold("A1", "A2:I4")), Truth: func(t *typed.Truth) {
			t.Is("", "Palaghiaccio di Valsolina", "three head rows, the last of units; line, amplifier and rating merged over two rows each")
			t.Speakers("tap_v=100; line_v=100; sheet=Pista", `
rows|room|count|tap_w|amplifier|channel
5|lato est, campate 1-3|3|20|B1|1
6|lato est, campate 4-6|3|20|B1|1
7|lato ovest, campate 1-3|3|20|B2|2
8|lato ovest, campate 4-6|3|20|B2|2
9|tribuna|8|10|B3|3
10|cabina|1|5|B3|3
`)
			t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nB1|1|240|120\nB2|2|240|120\nB3|3|120|85")
			t.Amplifiers("", "amplifier|rated_w|load_w\nB1|240|120\nB2|240|120\nB3|120|85")
		}},

		{File: "Quillby Planetarium/shop level.xlsx", Kind: "schedule", Saved: "xlsx", Book: book("Speakers", `
QUILLBY PLANETARIUM - LOWER LEVEL, 70V
SPKR|ROOM|TAP
S-1|LOBBY|2-1/2 W
S-2|LOBBY|2-1/2 W
S-3|HALL|1-1/4 W
S-4|SHOP|5 W
S-5|SHOP|5 W
S-6|SHOP|5 W
S-7|STOCK|.62 W
S-8|WORKROOM|1-1/4 W
S-9|WORKROOM|1-1/4 W
`, bold("A1", "A2:C2"), and("Controls", `
VOL. CONTROL|LOCATION|SERVES|MAX W
VC-1|SHOP, BEHIND REGISTER|S-4 THRU S-7|10
VC-2|WORKROOM|S-8, S-9|10
`), and("Amp", `
AMP CH|WATTS|SPEAKERS
1|35|S-1 THRU S-7
2|35|S-8 & S-9
`)), Truth: func(t *typed.Truth) {
			t.Is("", "Quillby Planetarium", "taps as mixed fractions; controls and channels name the loudspeakers they serve by ranges")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=Speakers", `
rows|tag|room|tap_w|channel|control
3..4|S-1..|LOBBY|2.5|1|
5|S-3|HALL|1.25|1|
6..8|S-4..|SHOP|5|1|VC-1
9|S-7|STOCK|0.62|1|VC-1
10..11|S-8..|WORKROOM|1.25|2|VC-2
`)
			t.Channels("line_v=70.7; rated_w=35", "channel|load_w\n1|21.87\n2|2.5")
			t.Controls("rated_w=10", "control|zone|load_w|note\nVC-1|SHOP|15.62|over its rating\nVC-2|WORKROOM|2.5|")
		}},

		{File: "Bootshaus Grauwehr/Altanlage JY(St)Y.csv", Kind: "schedule", Bytes: ansi(`
Bootshaus Grauwehr - Altanlage, 100 V
;;;;;;
LS;Ort;Watt;von;Kabel;m;Bemerkung
1;Halle Tor 1;6;Verstärker;J-Y(St)Y 2x2x0,8;22;2 Paare parallel
2;Halle Tor 2;6;LS 1;J-Y(St)Y 2x2x0,8;8;2 Paare parallel
3;Halle Tor 3;6;LS 2;J-Y(St)Y 2x2x0,8;8;2 Paare parallel
4;Werkstatt;3;LS 3;J-Y(St)Y 2x2x0,6;14;
5;Steg;15;Verstärker;NYY 3x1,5;75;
6;Steg;15;LS 5;NYY 3x1,5;30;
;;;;;;
Verstärker 60 W;;;;;;
`), Truth: func(t *typed.Truth) {
			t.Is("", "Bootshaus Grauwehr", "telephone cable by diameter, pairs in parallel by a remark; each row says where its cable comes from")
			t.Speakers("tap_v=100; line_v=100", `
rows|tag|room|tap_w
4|1|Halle Tor 1|6
5|2|Halle Tor 2|6
6|3|Halle Tor 3|6
7|4|Werkstatt|3
8..9|5..|Steg|15
`)
			t.Channels("line_v=100", "rated_w|load_w\n60|51")
			t.Amplifiers("", "rated_w|load_w|note\n60|51|unnamed")
			t.Lines("material=copper", `
from|to|length_m|area_mm2|note
Verstärker|1|22|1.0053|two cores of 0.8 mm in parallel
1|2|8|1.0053|two cores of 0.8 mm in parallel
2|3|8|1.0053|two cores of 0.8 mm in parallel
3|4|14|0.2827|
Verstärker|5|75|1.5|
5|6|30|1.5|
`)
		}},

		{File: "Wendle Boathouse/FW speakers for the insurer.csv", Kind: "schedule", Bytes: utf8(`
From: Facilities,,,,,
To: Insurance,,,,,
Subject: FW: speakers at Wendle,,,,,
,,,,,
"Hi, list as requested, counted on Tuesday. Everything is on the 100 volt amp in the cupboard (it says 120 watts on the back).",,,,,
,,,,,
Room,How many,What they look like,Dial at the back says,Volume knob?,Comment
Boat hall,4,grey boxes,6,no,
Workshop,1,grey box,3,no,
Changing rooms,4,round in ceiling,1.5,no,one rattles
Club room,6,round in ceiling,3,"yes, 24W",
Office,1,round in ceiling,0.75,no,
Slipway,3,horns,15,no,could not reach the third - assumed same
,,,,,
"Thanks, J.",,,,,
`), Truth: func(t *typed.Truth) {
			t.Is("", "Wendle", "a list in a forwarded mail, in everyday words; the amplifier in the letter; one tap is assumed")
			t.Speakers("tap_v=100; line_v=100", `
rows|room|model|count|tap_w|note
8|Boat hall|grey boxes|4|6|
9|Workshop|grey box|1|3|
10|Changing rooms|round in ceiling|4|1.5|
11|Club room|round in ceiling|6|3|unnamed control of 24 W
12|Office|round in ceiling|1|0.75|
13|Slipway|horns|3|15|the third is assumed
`)
			t.Channels("line_v=100", "rated_w|load_w\n120|96.75")
			t.Controls("note=unnamed", "zone|rated_w|load_w\nClub room|24|18")
			t.Amplifiers("", "rated_w|load_w|note\n120|96.75|unnamed")
		}},
	}
}
