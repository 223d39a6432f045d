package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// inspectors are people at a desk: a pool manager, a subcontractor, a technician and a surveyor in English, a librarian and a consultant in French.
var inspectors = []typed.Case{
	{File: "pool/Westmere Baths PA.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("PA")
		p.Put("A1", `
WESTMERE BATHS - public address (100 volt)||||||
||
||||Which amplifier||Volume control
Zone|Position|Speakers|Set to (W)|WET (240 W)|DRY (120 W)|(all are 36 W)
1|Main pool, deep end|4|15|x||
1|Main pool, shallow end|4|15|x||
1|Spectators' gallery|4|6|x||
2|Learner pool|4|10|x||VC1
3|Changing village|9|3||x|
3|Showers|4|3||x|
4|Reception|4|1.5||x|VC2
4|Duty manager|1|1.5||x|VC2
4|Staff room|2|1.5||x|VC3
5|Gym studio|4|6||x|VC4
5|Plant room|1|10||x|
`)
		p.Merge("E3:F3")
		p.Bold("A1", "A4:G4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Westmere Baths", "plain; amplifiers as two columns with crosses, their ratings and that of all controls in the header")
		t.Speakers("sheet=PA; tap_v=100; line_v=100; amplifier=WET", `rows|zone|room|count|tap_w|control
5|1|Main pool, deep end|4|15|
6|1|Main pool, shallow end|4|15|
7|1|Spectators' gallery|4|6|
8|2|Learner pool|4|10|VC1`)
		t.Speakers("sheet=PA; tap_v=100; line_v=100; amplifier=DRY", `rows|zone|room|count|tap_w|control
9|3|Changing village|9|3|
10|3|Showers|4|3|
11|4|Reception|4|1.5|VC2
12|4|Duty manager|1|1.5|VC2
13|4|Staff room|2|1.5|VC3
14|5|Gym studio|4|6|VC4
15|5|Plant room|1|10|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
WET|240|184
DRY|120|83.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
WET|240|184
DRY|120|83.5`)
		t.Controls("rated_w=36", `control|load_w
VC1|40
VC2|7.5
VC3|3
VC4|24`)
	}},

	{File: "rail/CVH-PA-SCH-0012 P02.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("LS schedule")
		p.Put("A1", `
Culverhay Station - PA loudspeaker schedule||||||P02
||
PA zone|Location|Mounting|Circuit A||Circuit B|
|||Qty|Tap (W)|Qty|Tap (W)
1|Platform 1, country end|column|6|6|6|6
1|Platform 1, under canopy|canopy|8|3|8|3
2|Platform 2, country end|column|5|6|6|6
2|Platform 2, under canopy|canopy|7|3|6|3
2|Platform 2, shelter|soffit|1|1.5|1|1.5
3|Subway|bulkhead|4|6|4|6
3|Stairs P1|bulkhead|2|3|2|3
3|Stairs P2|bulkhead|2|3|2|3
4|Booking hall|ceiling|6|1.5|6|1.5
4|Ticket office|ceiling|1|0.75||
4|Forecourt|column|2|10|1|10
|Total||44||42|
`)
		p.Merge("A3:A4", "B3:B4", "C3:C4", "D3:E3", "F3:G3")
		p.Bold("A1", "A3:G4", "B16:F16")
		q := p.Sheet("Amplifiers")
		q.Put("A1", `
100 V line amplifiers, SER rack 2
PA zone|Circuit|Amplifier|Rated output (W)
1|A|AMP 1A|120
1|B|AMP 1B|120
2|A|AMP 2A|120
2|B|AMP 2B|120
3|A|AMP 3A|60
3|B|AMP 3B|60
4|A|AMP 4A|60
4|B|AMP 4B|60
`)
		q.Bold("A2:D2")
		r := p.Sheet("Cables")
		r.Put("A1", `
Cable|From|Serves PA zone|Cores x mm²|Length m
C201|AMP 1A|1|2 x 2.5|185
C202|AMP 1B|1|2 x 2.5|190
C203|AMP 2A|2|2 x 4|240
C204|AMP 2B|2|2 x 4|245
C205|AMP 3A|3|2 x 1.5|70
C206|AMP 3B|3|2 x 1.5|75
C207|AMP 4A|4|2 x 1.5|55
C208|AMP 4B|4|2 x 1.5|60
`)
		r.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Culverhay Station", "A and B circuits side by side under a header of two rows, two records a row, one of them empty; amplifiers joined by zone and circuit")
		t.Revision("P02", false)
		t.Speakers("sheet=LS schedule; tap_v=100; line_v=100", `rows|zone|room|count|tap_w|amplifier
5|1|Platform 1, country end|6|6|AMP 1A
5|1|Platform 1, country end|6|6|AMP 1B
6|1|Platform 1, under canopy|8|3|AMP 1A
6|1|Platform 1, under canopy|8|3|AMP 1B
7|2|Platform 2, country end|5|6|AMP 2A
7|2|Platform 2, country end|6|6|AMP 2B
8|2|Platform 2, under canopy|7|3|AMP 2A
8|2|Platform 2, under canopy|6|3|AMP 2B
9|2|Platform 2, shelter|1|1.5|AMP 2A
9|2|Platform 2, shelter|1|1.5|AMP 2B
10|3|Subway|4|6|AMP 3A
10|3|Subway|4|6|AMP 3B
11|3|Stairs P1|2|3|AMP 3A
11|3|Stairs P1|2|3|AMP 3B
12|3|Stairs P2|2|3|AMP 3A
12|3|Stairs P2|2|3|AMP 3B
13|4|Booking hall|6|1.5|AMP 4A
13|4|Booking hall|6|1.5|AMP 4B
14|4|Ticket office|1|0.75|AMP 4A
15|4|Forecourt|2|10|AMP 4A
15|4|Forecourt|1|10|AMP 4B`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP 1A|120|60
AMP 1B|120|60
AMP 2A|120|52.5
AMP 2B|120|55.5
AMP 3A|60|36
AMP 3B|60|36
AMP 4A|60|29.75
AMP 4B|60|19`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP 1A|120|60
AMP 1B|120|60
AMP 2A|120|52.5
AMP 2B|120|55.5
AMP 3A|60|36
AMP 3B|60|36
AMP 4A|60|29.75
AMP 4B|60|19`)
		t.Lines("", `line|from|zone|length_m|area_mm2
C201|AMP 1A|1|185|2.5
C202|AMP 1B|1|190|2.5
C203|AMP 2A|2|240|4
C204|AMP 2B|2|245|4
C205|AMP 3A|3|70|1.5
C206|AMP 3B|3|75|1.5
C207|AMP 4A|4|55|1.5
C208|AMP 4B|4|60|1.5`)
		t.Left("LS schedule", `16|total|counts`)
	}},

	{File: "university/building C speakers.txt", Kind: "schedule", Bytes: func() []byte {
		return typed.Unicode16(typed.DOS(`
Building C teaching rooms: installed loudspeakers (AV team, walked in week 34)						

Room	Type	Fitted	Tap (70 V)	Amp	Output	Wall plate	Remark
C001 lecture theatre	ceiling	12	8 W	AMP-C1	1		
C001 lecture theatre	front pair, 8 ohm	2	none	-	-		own receiver in the lectern
C002 lecture theatre	ceiling	8	8 W	AMP-C1	2		
C003 seminar	ceiling	6	4 W	AMP-C1	3	WP1 (35 W)	
C004 seminar	ceiling	6	4 W	AMP-C1	3	WP2 (35 W)	
C005 seminar	surface	4	4 W	AMP-C1	4	WP3 (10 W)	swap plate for a bigger one
C006 seminar	surface	4	4 W	AMP-C1	4		plate removed, wired through
Ground corridor	ceiling	10	2 W	AMP-C1	4		
C101 computer lab	ceiling	8	4 W	AMP-C2	1		
C102 drawing studio	ceiling	6	4 W	AMP-C2	1		
C103 tutorial	ceiling	4	2 W	AMP-C2	2	WP4 (10 W)	
Upper landing	ceiling	12	2 W	AMP-C2	2		
Entrance canopy	horn	2	8 W	AMP-C2	2		

AMP-C1	4 x 100 W
AMP-C2	2 x 60 W
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Building C", "Unicode text; a pair of 8 ohm loudspeakers on a receiver of their own, a control that was taken out, ratings below the table as 4 x 100 W")
		t.Speakers("tap_v=70.7; line_v=70.7; amplifier=AMP-C1", `rows|room|count|tap_w|channel|control
4|C001 lecture theatre|12|8|1|
6|C002 lecture theatre|8|8|2|
7|C003 seminar|6|4|3|WP1
8|C004 seminar|6|4|3|WP2
9|C005 seminar|4|4|4|WP3
10|C006 seminar|4|4|4|
11|Ground corridor|10|2|4|`)
		t.Speakers("", `rows|room|count|low_ohm
5|C001 lecture theatre|2|8`)
		t.Speakers("tap_v=70.7; line_v=70.7; amplifier=AMP-C2", `rows|room|count|tap_w|channel|control
12|C101 computer lab|8|4|1|
13|C102 drawing studio|6|4|1|
14|C103 tutorial|4|2|2|WP4
15|Upper landing|12|2|2|
16|Entrance canopy|2|8|2|`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
AMP-C1|1|100|96
AMP-C1|2|100|64
AMP-C1|3|100|48
AMP-C1|4|100|52
AMP-C2|1|60|56
AMP-C2|2|60|48`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP-C1|400|260
AMP-C2|120|104`)
		t.Controls("", `control|rated_w|load_w
WP1|35|24
WP2|35|24
WP3|10|16
WP4|10|8`)
	}},

	{File: "insurance/MM-3307 sound equipment.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Schedule 4")
		p.Put("A1", `
Museum of Mills and Water|||
Cover note MM-3307, schedule 4: fixed sound equipment as seen on the visit of 9 May|||
||
Item|Description|Where|Sum insured £
'4.1|Amplifier A, 100 V line output, 240 W|Attendants' office|1450
'4.2|Amplifier B, 100 V line output, 60 W|Attendants' office|620
'4.3|12 ceiling loudspeakers set to 6 W, on amplifier A|Wheel gallery|1560
'4.4|8 cabinet loudspeakers set to 6 W, on amplifier A|Mill race room|1120
'4.5|4 ceiling loudspeakers set to 3 W, on amplifier A via volume control VC1|Model room|520
'4.6|6 ceiling loudspeakers set to 3 W, on amplifier B|Entrance hall|780
'4.7|4 ceiling loudspeakers set to 1.5 W, on amplifier B via volume control VC2|Museum shop|520
'4.8|2 horn loudspeakers set to 10 W, on amplifier B|Mill yard|310
'4.9|2 horn loudspeakers, boxed, not connected|Store|310
'4.10|Volume control VC1, 24 W|Model room|60
'4.11|Volume control VC2, 12 W|Museum shop|45
'4.12|Gooseneck microphone|Attendants' office|180
||Total|7475
`)
		p.Bold("A1", "A4:D4", "C17:D17")
		p.Format("#,##0", "D5:D17")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Museum of Mills and Water", "every fact in a sentence of the description: counts, taps, amplifier, control; sums insured beside; two in the store")
		t.Speakers("sheet=Schedule 4; tap_v=100; line_v=100; amplifier=A", `rows|room|count|tap_w|control
7|Wheel gallery|12|6|
8|Mill race room|8|6|
9|Model room|4|3|VC1`)
		t.Speakers("sheet=Schedule 4; tap_v=100; line_v=100; amplifier=B", `rows|room|count|tap_w|control
10|Entrance hall|6|3|
11|Museum shop|4|1.5|VC2
12|Mill yard|2|10|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
A|240|132
B|60|44`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A|240|132
B|60|44`)
		t.Controls("", `control|rated_w|load_w
VC1|24|12
VC2|12|6`)
		t.Left("Schedule 4", `13|spare|boxed, not connected
16|other|microphone
17|total|sum insured`)
	}},

	{File: "mediatheque/sonorisation état 2018.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Médiathèque des Trois Écluses;;;;;;;
Sonorisation (appels et fermeture), état au 03/04/2018;;;;;;;

Zone;Local;Nb HP;Réglage (W);Ampli;Voie;Atténuateur;Observations
Public;Hall d'entrée;6;3;AMP1;1;;
Public;Banque de prêt;2;1,5;AMP1;1;AT1;
Public;Section adultes;12;3;AMP1;2;;
Public;Section jeunesse;8;3;AMP1;3;AT2;
Public;Salle du conte;3;1,5;AMP1;3;AT3;Souvent coupé
Public;Espace musique;4;3;AMP1;3;;
Étage;Salle de travail;6;1,5;AMP1;4;AT4;
Étage;Auditorium;6;6;AMP1;4;;
Étage;Palier;2;1,5;AMP1;4;;
Service;Bureaux;5;0,75;AMP2;1;;un par bureau
Service;Magasin;3;3;AMP2;1;;
Service;Quai de livraison;1;10;AMP2;1;;Étanche

AMP1 : 4 voies de 60 W, AMP2 : 1 voie de 30 W, toutes les lignes en 100 V
Atténuateurs : AT1, AT3 et AT4 = 12 W, AT2 = 36 W
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Médiathèque des Trois Écluses", "plain; ratings of amplifiers and controls in two sentences below, an amplifier of one output")
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP1; zone=Public", `rows|room|count|tap_w|channel|control
5|Hall d'entrée|6|3|1|
6|Banque de prêt|2|1.5|1|AT1
7|Section adultes|12|3|2|
8|Section jeunesse|8|3|3|AT2
9|Salle du conte|3|1.5|3|AT3
10|Espace musique|4|3|3|`)
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP1; zone=Étage; channel=4", `rows|room|count|tap_w|control
11|Salle de travail|6|1.5|AT4
12|Auditorium|6|6|
13|Palier|2|1.5|`)
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP2; zone=Service; channel=1", `rows|room|count|tap_w
14|Bureaux|5|0.75
15|Magasin|3|3
16|Quai de livraison|1|10`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|1|60|21
AMP1|2|60|36
AMP1|3|60|40.5
AMP1|4|60|48
AMP2|1|30|22.75`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP1|240|145.5
AMP2|30|22.75`)
		t.Controls("", `control|rated_w|load_w
AT1|12|3
AT2|36|24
AT3|12|4.5
AT4|12|9`)
	}},

	{File: "bet/DPGF lot 12 Val-Berthier.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("DPGF 12.4")
		p.Put("A1", `
Patinoire du Val-Berthier - lot 12 courants faibles|||||
DPGF, chapitre 12.4 Sonorisation en ligne 100 V|||||
||
Art.|Désignation|U|Qté|PU HT|Total HT
'12.4.1|Amplification
'12.4.1.1|Amplificateur AMP-1, 240 W, alimentant la piste|u|1|890|890
'12.4.1.2|Amplificateur AMP-2, 120 W, alimentant les gradins et les vestiaires|u|1|640|640
'12.4.2|Piste
'12.4.2.1|Projecteur de son réglé à 20 W|u|8|145|1160
'12.4.2.2|Câble 2 x 2,5 mm²|ml|180|3.2|576
'12.4.3|Gradins
'12.4.3.1|Colonne réglée à 10 W|u|6|160|960
'12.4.3.2|Câble 2 x 2,5 mm²|ml|95|3.2|304
'12.4.4|Vestiaires
'12.4.4.1|Plafonnier 6 W réglé à 3 W|u|10|48|480
'12.4.4.2|Atténuateur ATT-1, 36 W, commandant tous les plafonniers|u|1|55|55
'12.4.4.3|Câble 2 x 1,5 mm²|ml|120|2.4|288
|Total HT|||| 5353
'12.4.5|Option non comprise au total
'12.4.5.1|Projecteur de son réglé à 15 W, parvis|u|2|145|290
`)
		p.Bold("A1", "A4:F4", "A5:B5", "A8:B8", "A11:B11", "A14:B14", "B18:F18", "A19:B19")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Patinoire du Val-Berthier", "bill of quantities: zones as numbered titles, nominal beside set watts, amplifiers told by zone, one length a zone, an option below the total")
		t.Speakers("sheet=DPGF 12.4; note=area as zone; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|control
9|Piste|8|20|AMP-1|
12|Gradins|6|10|AMP-2|
15|Vestiaires|10|3|AMP-2|ATT-1`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP-1|240|160
AMP-2|120|90`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP-1|240|160
AMP-2|120|90`)
		t.Controls("", `control|rated_w|load_w
ATT-1|36|30`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Piste|180|2.5
Gradins|95|2.5
Vestiaires|120|1.5`)
		t.Left("DPGF 12.4", `18|total|prices
20|future|option not in the total`)
	}},
}
