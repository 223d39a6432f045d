package main

import "lineaudit/samples/typed"

func drawingOffices() []typed.Case {
	return []typed.Case{
		// A drawing office of a British building services contractor: capitals, drawing numbers, zones merged down, amplifiers on a second sheet.
		{File: "J4471 Brackenholt/J4471-E-650_C02.xlsx", Kind: "schedule", Book: book("E-650", `
PROJECT|BRACKENHOLT ICE RINK - NORTH STAND||||||||DRG NO|J4471-E-650
TITLE|LOUDSPEAKER SCHEDULE||||||||REV|C02
JOB NO|J4471||||||||DATE|03/07/2017
SYSTEM|PUBLIC ADDRESS, 100V LINE||||||||BY|ENG DEPT

ZONE|REF|LEVEL|ROOM|LOUDSPEAKER TYPE|MOUNTING|QTY|TAPPING (W)|TOTAL (W)|AMPLIFIER|O/P
NORTH STAND|LS/1/01|1|SEATING BLOCK A|COLUMN|ROOF TRUSS|4|20|80|AMP-01|1
|LS/1/02|1|SEATING BLOCK B|COLUMN|ROOF TRUSS|4|20|80|AMP-01|1
|LS/1/03|1|SEATING BLOCK C|COLUMN|ROOF TRUSS|4|20|80|AMP-01|1
|LS/1/04|1|CAMERA PLATFORM|CABINET|WALL|1|6|6|AMP-01|1
CONCOURSE|LS/G/01|G|CONCOURSE EAST|RECESSED|SUSPENDED CEILING|8|3|24|AMP-01|2
|LS/G/02|G|CONCOURSE WEST|RECESSED|SUSPENDED CEILING|8|3|24|AMP-01|2
|LS/G/03|G|WC MALE|RECESSED|SUSPENDED CEILING|2|1.5|3|AMP-01|2
|LS/G/04|G|WC FEMALE|RECESSED|SUSPENDED CEILING|2|1.5|3|AMP-01|2
|LS/G/05|G|STAIR 1|CABINET|WALL|2|6|12|AMP-01|2
BACK OF HOUSE|LS/G/06|G|OFFICIALS|RECESSED|SUSPENDED CEILING|2|1.5|3|AMP-02|1
|LS/G/07|G|MEDICAL|RECESSED|SUSPENDED CEILING|1|1.5|1.5|AMP-02|1
|LS/G/08|G|PLANT ROOM|HORN|SOFFIT|1|10|10|AMP-02|1
|LS/G/09|G|STORE|CABINET|WALL|1|3|3|AMP-02|1
EXTERNAL|LS/X/01|G|ASSEMBLY POINT|HORN|WALL, 4.5M|3|15|45|AMP-02|2

NOTES
1. ALL DIMENSIONS IN MILLIMETRES UNLESS NOTED.
2. TAPPINGS ARE TO BE CONFIRMED TO THE ENGINEER IN WRITING AFTER SETTING.
`, bold("A1:A4", "J1:J4", "A6:K6", "A22"), merged("A7:A10", "A11:A15", "A16:A19"), and("AMPS", `
AMPLIFIER|O/P|RATED (W)|ZONE|LOAD (W)|SPARE (W)
AMP-01|1|300|NORTH STAND|246|54
AMP-01|2|120|CONCOURSE|66|54
AMP-02|1|60|BACK OF HOUSE|17.5|42.5
AMP-02|2|120|EXTERNAL|45|75
`, bold("A1:F1"))), Truth: func(t *typed.Truth) {
			t.Is("J4471", "Brackenholt Ice Rink - North Stand", "ordinary: zones merged down, title block on both sides, amplifiers on a second sheet")
			t.Revision("C02", false)
			t.Speakers("tap_v=100; line_v=100; sheet=E-650", `
rows|tag|zone|room|model|count|tap_w|amplifier|channel
7|LS/1/01|NORTH STAND|SEATING BLOCK A|COLUMN|4|20|AMP-01|1
8|LS/1/02|NORTH STAND|SEATING BLOCK B|COLUMN|4|20|AMP-01|1
9|LS/1/03|NORTH STAND|SEATING BLOCK C|COLUMN|4|20|AMP-01|1
10|LS/1/04|NORTH STAND|CAMERA PLATFORM|CABINET|1|6|AMP-01|1
11|LS/G/01|CONCOURSE|CONCOURSE EAST|RECESSED|8|3|AMP-01|2
12|LS/G/02|CONCOURSE|CONCOURSE WEST|RECESSED|8|3|AMP-01|2
13|LS/G/03|CONCOURSE|WC MALE|RECESSED|2|1.5|AMP-01|2
14|LS/G/04|CONCOURSE|WC FEMALE|RECESSED|2|1.5|AMP-01|2
15|LS/G/05|CONCOURSE|STAIR 1|CABINET|2|6|AMP-01|2
16|LS/G/06|BACK OF HOUSE|OFFICIALS|RECESSED|2|1.5|AMP-02|1
17|LS/G/07|BACK OF HOUSE|MEDICAL|RECESSED|1|1.5|AMP-02|1
18|LS/G/08|BACK OF HOUSE|PLANT ROOM|HORN|1|10|AMP-02|1
19|LS/G/09|BACK OF HOUSE|STORE|CABINET|1|3|AMP-02|1
20|LS/X/01|EXTERNAL|ASSEMBLY POINT|HORN|3|15|AMP-02|2
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
AMP-01|1|300|246
AMP-01|2|120|66
AMP-02|1|60|17.5
AMP-02|2|120|45
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\nAMP-01|420|312\nAMP-02|180|62.5")
		}},

		{File: "J4502 Hartsmere/J4502-E-660_C01.xlsx", Kind: "schedule", Book: book("E-660", `
PROJECT|HARTSMERE GARDENS - VISITOR BUILDING|||||||||DRG NO|J4502-E-660
TITLE|PA LINE SCHEDULE|||||||||REV|C01
JOB NO|J4502|||||||||DATE|19/02/2018
SYSTEM|PUBLIC ADDRESS, 100V LINE|||||||||BY|ENG DEPT

LINE|ZONE|LOUDSPEAKER TYPE|QTY|TAPPING (W)|TOTAL (W)|AMPLIFIER|O/P|O/P RATED (W)|CABLE|ROUTE (M)|ATTENUATOR
1|WELCOME HALL|RECESSED|12|3|36|AMP-01|1|120|2C 1.5MM² LSF|78|
2|SHOP|RECESSED|6|3|18|AMP-01|2|60|2C 1.5MM² LSF|64|VC-01
3|EXHIBITION|TRACK MOUNTED|8|6|48|AMP-01|3|60|2C 1.5MM² LSF|92|VC-02
4|OFFICES|RECESSED|10|1.5|15|AMP-01|4|60|2C 1.5MM² LSF|110|
5|TERRACE|CABINET|6|10|60|AMP-02|1|120|2C 2.5MM² ARMOURED|145|
6|CAR PARK|HORN|5|15|75|AMP-02|2|120|2C 2.5MM² ARMOURED|260|
|||47||252|||||749|

ATTENUATOR|RATED (W)|LOCATION
VC-01|24|TILL POINT
VC-02|60|EXHIBITION STORE
`, bold("A1:A4", "K1:K4", "A6:L6", "A15:C15")), Truth: func(t *typed.Truth) {
			t.Is("J4502", "Hartsmere Gardens - Visitor Building", "ordinary: one row a line with its output, cable and attenuator; an unlabelled row of sums")
			t.Revision("C01", false)
			t.Speakers("tap_v=100; line_v=100; sheet=E-660", `
rows|zone|model|count|tap_w|amplifier|channel|control
7|WELCOME HALL|RECESSED|12|3|AMP-01|1|
8|SHOP|RECESSED|6|3|AMP-01|2|VC-01
9|EXHIBITION|TRACK MOUNTED|8|6|AMP-01|3|VC-02
10|OFFICES|RECESSED|10|1.5|AMP-01|4|
11|TERRACE|CABINET|6|10|AMP-02|1|
12|CAR PARK|HORN|5|15|AMP-02|2|
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
AMP-01|1|120|36
AMP-01|2|60|18
AMP-01|3|60|48
AMP-01|4|60|15
AMP-02|1|120|60
AMP-02|2|120|75
`)
			t.Controls("", "control|zone|rated_w|load_w\nVC-01|SHOP|24|18\nVC-02|EXHIBITION|60|48")
			t.Amplifiers("", "amplifier|rated_w|load_w\nAMP-01|300|117\nAMP-02|240|135")
			t.Lines("material=copper; note=one length a line", `
line|zone|length_m|area_mm2
1|WELCOME HALL|78|1.5
2|SHOP|64|1.5
3|EXHIBITION|92|1.5
4|OFFICES|110|1.5
5|TERRACE|145|2.5
6|CAR PARK|260|2.5
`)
			t.Left("E-660", "13|total|right, unlabelled")
		}},

		{File: "J4390 Tolverne/J4390-E-640_T1.xlsx", Kind: "schedule", Book: book("E-640", `
PROJECT|TOLVERNE BOATHOUSE - UPPER FLOOR|||||||DRG NO|J4390-E-640
TITLE|LOUDSPEAKER SCHEDULE|||||||REV|T1
JOB NO|J4390|||||||DATE|11/11/2015
SYSTEM|PUBLIC ADDRESS, 100V LINE|||||||BY|ENG DEPT

REF|ROOM NO|ROOM|LOUDSPEAKER TYPE|TAPPING (W)|ZONE|AMPLIFIER|O/P|ATTENUATOR|REMARKS
LS/1/01|1.01|LANDING|RECESSED|1.5|CIRCULATION|AMP-01|1||
LS/1/02|1.01|LANDING|RECESSED|1.5|CIRCULATION|AMP-01|1||
LS/1/03|1.02|CORRIDOR|RECESSED|1.5|CIRCULATION|AMP-01|1||
LS/1/04|1.02|CORRIDOR|RECESSED|1.5|CIRCULATION|AMP-01|1||
LS/1/05|1.03|CREW ROOM|CABINET|6|CREW|AMP-01|2|VC-01|
LS/1/06|1.03|CREW ROOM|CABINET|6|CREW|AMP-01|2|VC-01|
LS/1/07|1.04|TRAINING ROOM|RECESSED|3|CREW|AMP-01|2|VC-02|
LS/1/08|1.04|TRAINING ROOM|RECESSED|3|CREW|AMP-01|2|VC-02|
LS/1/09|1.04|TRAINING ROOM|RECESSED|3|CREW|AMP-01|2|VC-02|
LS/1/10|1.05|KIT STORE|CABINET|3|CREW|AMP-01|2||
LS/1/11|1.06|BALCONY|HORN|10|BALCONY|AMP-01|3||IP66
LS/1/12|1.06|BALCONY|HORN|10|BALCONY|AMP-01|3||IP66
TOTAL||12 NO||50||||

AMPLIFIER|O/P|RATED (W)|||||||
AMP-01|1|30|||||||
AMP-01|2|60|||||||
AMP-01|3|60|||||||
||||||||
ATTENUATOR|RATED (W)||||||||
VC-01|12||||||||
VC-02|12||||||||
`, bold("A1:A4", "I1:I4", "A6:J6", "A21:C21", "A26:B26")), Truth: func(t *typed.Truth) {
			t.Is("J4390", "Tolverne Boathouse - Upper Floor", "ordinary: one row a loudspeaker, a total with the count under the rooms, two small tables below")
			t.Revision("T1", false)
			t.Speakers("tap_v=100; line_v=100; sheet=E-640; amplifier=AMP-01", `
rows|tag|room|model|tap_w|zone|channel|control
7..8|LS/1/01..|LANDING|RECESSED|1.5|CIRCULATION|1|
9..10|LS/1/03..|CORRIDOR|RECESSED|1.5|CIRCULATION|1|
11..12|LS/1/05..|CREW ROOM|CABINET|6|CREW|2|VC-01
13..15|LS/1/07..|TRAINING ROOM|RECESSED|3|CREW|2|VC-02
16|LS/1/10|KIT STORE|CABINET|3|CREW|2|
17..18|LS/1/11..|BALCONY|HORN|10|BALCONY|3|
`)
			t.Channels("line_v=100; amplifier=AMP-01", "channel|rated_w|load_w\n1|30|6\n2|60|24\n3|60|20")
			t.Controls("", "control|zone|rated_w|load_w\nVC-01|CREW|12|12\nVC-02|CREW|12|9")
			t.Amplifiers("amplifier=AMP-01", "rated_w|load_w\n150|50")
			t.Left("E-640", "19|total|right")
		}},

		// An American foreman: small letters, short words, no dressing.
		{File: "moose/rink spk list.csv", Kind: "schedule", Bytes: plain(`
moose hollow ice arena spk list,,,,,,,
all 70v,,,,,,,
zn,rm,qty,spk,xfmr w,amp,ch,v/c
1,rink a,8,horn,30,1,1,
2,bleachers a,10,wall,10,1,2,
3,lobby,9,clg,5,2,1,
3,ticket window,1,clg,2.5,2,1,
3,skate rental,4,clg,5,2,1,vc3
4,locker 1,2,clg,2.5,2,2,
4,locker 2,2,clg,2.5,2,2,
4,locker 3,2,clg,2.5,2,2,
4,locker 4,2,clg,2.5,2,2,
4,ref rm,1,clg,2.5,2,2,vc4
4,trainer,1,clg,2.5,2,2,
5,resurfacer bay,1,horn,15,2,3,
,,,,,,,
amp,ch,w @ 70v,,,,,
1,1,300,,,,,
1,2,300,,,,,
2,1,100,,,,,
2,2,100,,,,,
2,3,100,,,,,
2,4,100,,,,,
,,,,,,,
vc3 35w,,,,,,,
vc4 10w,,,,,,,
`), Truth: func(t *typed.Truth) {
			t.Is("", "moose hollow ice arena", "ordinary: a foreman's short words, an output table and two controls below")
			t.Speakers("tap_v=70.7; line_v=70.7", `
rows|zone|room|model|count|tap_w|amplifier|channel|control
4|1|rink a|horn|8|30|1|1|
5|2|bleachers a|wall|10|10|1|2|
6|3|lobby|clg|9|5|2|1|
7|3|ticket window|clg|1|2.5|2|1|
8|3|skate rental|clg|4|5|2|1|vc3
9|4|locker 1|clg|2|2.5|2|2|
10|4|locker 2|clg|2|2.5|2|2|
11|4|locker 3|clg|2|2.5|2|2|
12|4|locker 4|clg|2|2.5|2|2|
13|4|ref rm|clg|1|2.5|2|2|vc4
14|4|trainer|clg|1|2.5|2|2|
15|5|resurfacer bay|horn|1|15|2|3|
`)
			t.Channels("line_v=70.7", `
amplifier|channel|rated_w|load_w
1|1|300|240
1|2|300|100
2|1|100|67.5
2|2|100|25
2|3|100|15
2|4|100|0
`)
			t.Controls("", "control|zone|rated_w|load_w\nvc3|3|35|20\nvc4|4|10|2.5")
			t.Amplifiers("", "amplifier|rated_w|load_w\n1|600|340\n2|400|107.5")
		}},

		{File: "tamarack/loads by ch.xlsx", Kind: "schedule", Book: book("loads", `
tamarack bend boathouse||||||||
pa loads by channel 70v||||||||

amp|ch|ch w|area|spk|qty|xfmr w|load|wire|ft
1|1|100|boat bay|horn|4|15|60|16 ga|130
1|2|100|shop|surface|3|10|30|16 ga|90
1|3|60|locker rms|clg|8|2.5|20|18 ga|155
1|4|60|offices|clg|5|1.25|6.25|18 ga|70
2|1|250|docks|horn|6|30|180|12 ga|420
2|2|250|lawn|landscape|8|16|128|12 ga|365
`, bold("A4:J4")), Truth: func(t *typed.Truth) {
			t.Is("", "tamarack bend boathouse", "ordinary: one row an output, with rating, load, gauge and feet")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=loads; note=the area as a section for a zone is as good", `
rows|room|model|count|tap_w|amplifier|channel
5|boat bay|horn|4|15|1|1
6|shop|surface|3|10|1|2
7|locker rms|clg|8|2.5|1|3
8|offices|clg|5|1.25|1|4
9|docks|horn|6|30|2|1
10|lawn|landscape|8|16|2|2
`)
			t.Channels("line_v=70.7", `
amplifier|channel|rated_w|load_w
1|1|100|60
1|2|100|30
1|3|60|20
1|4|60|6.25
2|1|250|180
2|2|250|128
`)
			t.Amplifiers("", "amplifier|rated_w|load_w\n1|320|116.25\n2|500|308")
			t.Lines("material=copper; note=one length an output", `
length_m|area_mm2
39.624|1.3087
27.432|1.3087
47.244|0.823
21.336|0.823
128.016|3.3088
111.252|3.3088
`)
		}},

		{File: "copperleaf/spk count by circuit.xls", Kind: "schedule", Saved: "xls", Book: book("count", `
copperleaf planetarium||||
spk count by circuit 70v||||

amp 1 ch 1 public 100w||||
rm|spk|qty|xfmr w|load
lobby|clg|6|5|30
theater entry|clg|4|5|20
coats|clg|1|2.5|2.5
||11||52.5

amp 1 ch 2 exhibits 100w||||
rm|spk|qty|xfmr w|load
space hall|wall|6|10|60
kids lab|clg|4|2.5|10
||10||70

amp 1 ch 3 staff 60w||||
rm|spk|qty|xfmr w|load
offices|clg|8|1.25|10
loading|horn|1|7.5|7.5
break rm|clg|2|1.25|2.5
||11||20
`), Truth: func(t *typed.Truth) {
			t.Is("", "copperleaf planetarium", "ordinary: a section an output, its rating in the section's title, unlabelled sums")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=count; amplifier=1; note=the section for a zone is as good", `
rows|room|model|count|tap_w|channel
6|lobby|clg|6|5|1
7|theater entry|clg|4|5|1
8|coats|clg|1|2.5|1
13|space hall|wall|6|10|2
14|kids lab|clg|4|2.5|2
19|offices|clg|8|1.25|3
20|loading|horn|1|7.5|3
21|break rm|clg|2|1.25|3
`)
			t.Channels("line_v=70.7; amplifier=1", "channel|rated_w|load_w\n1|100|52.5\n2|100|70\n3|60|20")
			t.Amplifiers("amplifier=1", "rated_w|load_w\n260|142.5")
			t.Left("count", "9|total|right\n15|total|right\n22|total|right")
		}},

		// A German consulting engineer: exact words, indices, a head of key and value, terminals and circuits.
		{File: "1904 Birkenrode/1904_ELA_LS-Liste_Index-b.xlsx", Kind: "schedule", Book: book("LS-Liste", `
Bauvorhaben:|Eishalle Birkenrode, Anbau Curlinghalle|||||||
Gewerk:|Elektroakustische Anlage (ELA)|||||||
Projekt-Nr.:|1904|||Index:|b||Datum:|22.08.2019
Planinhalt:|Lautsprecherliste|||||||

Rufkreis|Rufbereich|Raum-Nr.|Raumbezeichnung|LS-Typ|Anz.|Abgriff [W]|Leistung [W]|Endstufe
RK 1|Curling|0.01|Curlinghalle|T1|8|20|160|ES 1
RK 2|Zuschauer|0.02|Zuschauergalerie|T2|6|10|60|ES 2
RK 2|Zuschauer|0.03|Windfang|T3|2|3|6|ES 2
RK 2|Zuschauer|0.04|Foyer|T3|6|3|18|ES 2
RK 3|Nebenräume|0.05|Umkleide Damen|T3|3|1.5|4.5|ES 3
RK 3|Nebenräume|0.06|Umkleide Herren|T3|3|1.5|4.5|ES 3
RK 3|Nebenräume|0.07|WC|T3|4|1.5|6|ES 3
RK 3|Nebenräume|0.08|Steinlager|T2|1|6|6|ES 3
RK 4|Außen|-|Vorplatz|T4|3|15|45|ES 4

Typ|Beschreibung|||||||
T1|Tonsäule 40 W, RAL 9010|||||||
T2|Wandlautsprecher 10 W|||||||
T3|Deckeneinbaulautsprecher 6 W|||||||
T4|Druckkammerlautsprecher 15 W, IP 66|||||||
`, bold("A1:A4", "A6:I6", "A17:B17"), func(p typed.Page) { p.Format("0.0", "G7:H15") }, and("Endstufen", `
Endstufe|Rufkreis|Nennleistung [W]|Ausgangsspannung [V]|Leitungstyp|Querschnitt [mm²]|Leitungslänge [m]
ES 1|RK 1|250|100|NYM-J|2.5|118
ES 2|RK 2|125|100|NYM-J|1.5|96
ES 3|RK 3|60|100|NYM-J|1.5|132
ES 4|RK 4|60|100|NYY-J|2.5|75
`, bold("A1:G1"))), Truth: func(t *typed.Truth) {
			t.Is("1904", "Eishalle Birkenrode", "ordinary: German list by circuit, type legend, one power amplifier a circuit on a second sheet with area and length in columns of their own")
			t.Revision("b", false)
			t.Speakers("tap_v=100; line_v=100; sheet=LS-Liste", `
rows|zone|room|model|count|tap_w|amplifier
7|Curling|Curlinghalle|T1|8|20|ES 1
8|Zuschauer|Zuschauergalerie|T2|6|10|ES 2
9|Zuschauer|Windfang|T3|2|3|ES 2
10|Zuschauer|Foyer|T3|6|3|ES 2
11|Nebenräume|Umkleide Damen|T3|3|1.5|ES 3
12|Nebenräume|Umkleide Herren|T3|3|1.5|ES 3
13|Nebenräume|WC|T3|4|1.5|ES 3
14|Nebenräume|Steinlager|T2|1|6|ES 3
15|Außen|Vorplatz|T4|3|15|ES 4
`)
			t.Channels("line_v=100", `
amplifier|rated_w|load_w
ES 1|250|160
ES 2|125|84
ES 3|60|21
ES 4|60|45
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
ES 1|250|160
ES 2|125|84
ES 3|60|21
ES 4|60|45
`)
			t.Lines("material=copper; note=one length a circuit", `
line|length_m|area_mm2
RK 1|118|2.5
RK 2|96|1.5
RK 3|132|1.5
RK 4|75|2.5
`)
		}},

		{File: "2107 Hohenlinde/2107_ELA_LS-Liste_Index-a.xlsx", Kind: "schedule", Book: book("LS-Liste", `
Bauvorhaben:|Planetarium Hohenlinde, Sternwarte|||||||||
Gewerk:|Elektroakustische Anlage (ELA)|||||||||
Projekt-Nr.:|2107|||Index:|a||Datum:|04.03.2021||
Planinhalt:|Lautsprecherliste|||||||||

LS-Nr.|Geschoss|Raumbezeichnung|LS-Typ|Abgriff [W]|Rufbereich|Verstärker|Ausgang|Lautstärkeregler|Bemerkung
LS 001|EG|Kassenhalle|Deckeneinbau|3|Besucher|VS 1|1||
LS 002|EG|Kassenhalle|Deckeneinbau|3|Besucher|VS 1|1||
LS 003|EG|Kassenhalle|Deckeneinbau|3|Besucher|VS 1|1||
LS 004|EG|Laden|Deckeneinbau|1.5|Besucher|VS 1|1|LR 01|
LS 005|EG|Laden|Deckeneinbau|1.5|Besucher|VS 1|1|LR 01|
LS 006|EG|Technik|Wand|6|Technik|VS 1|2||
LS 007|1.OG|Seminarraum|Deckeneinbau|3|Seminar|VS 1|3|LR 02|
LS 008|1.OG|Seminarraum|Deckeneinbau|3|Seminar|VS 1|3|LR 02|
LS 009|1.OG|Seminarraum|Deckeneinbau|3|Seminar|VS 1|3|LR 02|
LS 010|1.OG|Seminarraum|Deckeneinbau|3|Seminar|VS 1|3|LR 02|
LS 011|1.OG|Teeküche|Deckeneinbau|0.75|Technik|VS 1|2||
LS 012|2.OG|Beobachtungsplattform|Druckkammer|10|Plattform|VS 1|4||IP 66
LS 013|2.OG|Beobachtungsplattform|Druckkammer|10|Plattform|VS 1|4||IP 66

Verstärker VS 1: 4 Ausgänge, je 60 W / 100 V|||||||||
LR 01: 6 W, LR 02: 12 W|||||||||
`, bold("A1:A4", "A6:J6")), Truth: func(t *typed.Truth) {
			t.Is("2107", "Planetarium Hohenlinde", "ordinary: one row a loudspeaker; amplifier and two controls in sentences below")
			t.Revision("a", false)
			t.Speakers("tap_v=100; line_v=100; sheet=LS-Liste; amplifier=VS 1", `
rows|tag|room|model|tap_w|zone|channel|control
7..9|LS 001..|Kassenhalle|Deckeneinbau|3|Besucher|1|
10..11|LS 004..|Laden|Deckeneinbau|1.5|Besucher|1|LR 01
12|LS 006|Technik|Wand|6|Technik|2|
13..16|LS 007..|Seminarraum|Deckeneinbau|3|Seminar|3|LR 02
17|LS 011|Teeküche|Deckeneinbau|0.75|Technik|2|
18..19|LS 012..|Beobachtungsplattform|Druckkammer|10|Plattform|4|
`)
			t.Channels("line_v=100; amplifier=VS 1; rated_w=60", "channel|load_w\n1|12\n2|6.75\n3|12\n4|20")
			t.Controls("", "control|zone|rated_w|load_w\nLR 01|Besucher|6|3\nLR 02|Seminar|12|12")
			t.Amplifiers("amplifier=VS 1", "rated_w|load_w\n240|50.75")
		}},

		{File: "1612 Seefurt/1612_ELA_Kreisliste.csv", Kind: "schedule", Bytes: ansi(`
Bauvorhaben:;Bootshaus Seefurt;;;;;;;;
Gewerk:;Elektroakustische Anlage (ELA);;;;;;;;
Projekt-Nr.:;1612;;;;;;;;
;;;;;;;;;
Rufkreis;Rufbereich;LS-Typ;Anz.;Abgriff [W];Leistung [W];Verstärker;Ausgang;Nennleistung [W];Bemerkung
RK 1;Bootshalle;Wand;6;6;36;VS 1;1;60;
RK 2;Steg;Druckkammer;4;15;60;VS 1;2;120;seewasserfest
RK 3;Umkleiden;Deckeneinbau;8;1,5;12;VS 1;3;60;
RK 4;Vereinsraum;Deckeneinbau;6;3;18;VS 1;4;60;LR 01, 24 W
RK 5;Regattaturm;Druckkammer;2;30;60;VS 2;1;120;
;Summe;;26;;186;;;;
`), Truth: func(t *typed.Truth) {
			t.Is("1612", "Bootshaus Seefurt", "ordinary: one row a circuit with its output; a control with its rating in the remarks; no line voltage written (none asserted)")
			t.Speakers("", `
rows|zone|model|count|tap_w|amplifier|channel|control
6|Bootshalle|Wand|6|6|VS 1|1|
7|Steg|Druckkammer|4|15|VS 1|2|
8|Umkleiden|Deckeneinbau|8|1.5|VS 1|3|
9|Vereinsraum|Deckeneinbau|6|3|VS 1|4|LR 01
10|Regattaturm|Druckkammer|2|30|VS 2|1|
`)
			t.Channels("", `
amplifier|channel|rated_w|load_w
VS 1|1|60|36
VS 1|2|120|60
VS 1|3|60|12
VS 1|4|60|18
VS 2|1|120|60
`)
			t.Controls("", "control|zone|rated_w|load_w\nLR 01|Vereinsraum|24|18")
			t.Amplifiers("", "amplifier|rated_w|load_w\nVS 1|300|126\nVS 2|120|60")
			t.Left("", "11|total|right")
		}},
	}
}
