package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// More of the same six people, on a day with more on the sheet.
var more = []typed.Case{
	{File: "5583 Carrickmoyle/loudspeaker list 3 pages.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("List")
		p.Put("A1", `
Contract 5583 - Carrickmoyle Ice Rink - 100 V line - page 1 of 3
Tags|Location|Type|Qty|Tap W|Watts|Amp|Channel
H1-H4|Rink north|Horn|4|15|60|A1|1
H5-H8|Rink south|Horn|4|15|60|A1|1
K1-K3|Stand left|Column|3|20|60|A1|2
K4-K6|Stand right|Column|3|20|60|A1|2
|Carried forward||14||240||
Contract 5583 - Carrickmoyle Ice Rink - 100 V line - page 2 of 3
Tags|Location|Type|Qty|Tap W|Watts|Amp|Channel
|Brought forward||14||240||
C1-C6|Foyer|Ceiling|6|6|36|A2|1
C7-C10|Skate hire|Ceiling|4|3|12|A2|1
C11|Till|Ceiling|1|3|3|A2|1
C12-C19|Changing 1 to 4|Ceiling|8|3|24|A2|2
C20|First aid|Ceiling|1|1.5|1.5|A2|2
|Carried forward||34||316.5||
Contract 5583 - Carrickmoyle Ice Rink - 100 V line - page 3 of 3
Tags|Location|Type|Qty|Tap W|Watts|Amp|Channel
|Brought forward||34||316.5||
H9|Plant|Horn|1|7.5|7.5|A2|2
H10-H12|Car park|Horn|3|15|45|A3|1
H13|Delivery|Horn|1|15|15|A3|1
|Total||39||384||

Amp|Channel|Rated W
A1|1|120
A1|2|120
A2|1|60
A2|2|60
A3|1|60
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("5583", "Carrickmoyle Ice Rink", "pages with repeated headers and sums carried forward; ranges of tags")
		t.Speakers("sheet=List; tap_v=100; line_v=100", `rows|tag|room|model|count|tap_w|amplifier|channel
3|H1-H4|Rink north|Horn|4|15|A1|1
4|H5-H8|Rink south|Horn|4|15|A1|1
5|K1-K3|Stand left|Column|3|20|A1|2
6|K4-K6|Stand right|Column|3|20|A1|2
11|C1-C6|Foyer|Ceiling|6|6|A2|1
12|C7-C10|Skate hire|Ceiling|4|3|A2|1
13|C11|Till|Ceiling|1|3|A2|1
14|C12-C19|Changing 1 to 4|Ceiling|8|3|A2|2
15|C20|First aid|Ceiling|1|1.5|A2|2
20|H9|Plant|Horn|1|7.5|A2|2
21|H10-H12|Car park|Horn|3|15|A3|1
22|H13|Delivery|Horn|1|15|A3|1`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
A1|1|120|120
A1|2|120|120
A2|1|60|51
A2|2|60|33
A3|1|60|60`)
		t.Amplifiers("", `amplifier|load_w
A1|240
A2|84
A3|60`)
		t.Left("List", `7|subtotal|carried forward
8|title|page
9|header|repeated
10|subtotal|brought forward
16|subtotal|carried forward
17|title|page
18|header|repeated
19|subtotal|brought forward
23|total|all`)
	}},

	{File: "inspections/I-230 Alderholt, two sites.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Boathouse")
		p.Put("A1", `
Job no.|I-230-1
Site|Alderholt Boathouse
Line voltage|100 V

Tag|Room|Type|Tap W|Amplifier|Output|Output W
B1|Boat store|Cabinet|10|A1|1|60
B2|Boat store|Cabinet|10|A1|1|60
B3|Boat store|Cabinet|10|A1|1|60
B4|Repair bench|Cabinet|5|A1|1|60
B5|Crew room|Ceiling|3|A1|2|60
B6|Crew room|Ceiling|3|A1|2|60
B7|Lobby|Ceiling|3|A1|2|60
B8|Jetty|Horn|15|A1|2|60
B9|Jetty|Horn|15|A1|2|60
`)
		g := p.Sheet("Water garden")
		g.Put("A1", `
Job no.|I-230-2
Site|Alderholt Water Garden
Line voltage|70.7 V

Tag|Room|Type|Tap W|Amplifier|Output|Output W
G1|Lily pond|Pillar|10|A1|1|100
G2|Lily pond|Pillar|10|A1|1|100
G3|Cascade|Pillar|20|A1|1|100
G4|Cascade|Pillar|20|A1|1|100
G5|Bog garden|Pillar|10|A1|1|100
G6|Entrance kiosk|Ceiling|2.5|A1|2|60
G7|Entrance kiosk|Ceiling|2.5|A1|2|60
G8|Lecture hut|Cabinet|7.5|A1|2|60
G9|Lecture hut|Cabinet|7.5|A1|2|60
G10|Pump house|Horn|5|A1|2|60
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("I-230-1", "Alderholt Boathouse", "two sites in one workbook, a sheet a site, amplifiers of the same name, two line voltages")
		t.Speakers("sheet=Boathouse; tap_v=100; line_v=100; amplifier=A1", `rows|tag|room|model|tap_w|channel
6..8|B1..|Boat store|Cabinet|10|1
9|B4|Repair bench|Cabinet|5|1
10..11|B5..|Crew room|Ceiling|3|2
12|B7|Lobby|Ceiling|3|2
13..14|B8..|Jetty|Horn|15|2`)
		t.Channels("line_v=100; amplifier=A1; rated_w=60", `channel|load_w
1|35
2|39`)
		t.Amplifiers("", `amplifier|load_w
A1|74`)
		t.Also("I-230-2", "Alderholt Water Garden", "the second sheet")
		t.Speakers("sheet=Water garden; tap_v=70.7; line_v=70.7; amplifier=A1", `rows|tag|room|model|tap_w|channel
6..7|G1..|Lily pond|Pillar|10|1
8..9|G3..|Cascade|Pillar|20|1
10|G5|Bog garden|Pillar|10|1
11..12|G6..|Entrance kiosk|Ceiling|2.5|2
13..14|G8..|Lecture hut|Cabinet|7.5|2
15|G10|Pump house|Horn|5|2`)
		t.Channels("line_v=70.7; amplifier=A1", `channel|rated_w|load_w
1|100|70
2|60|25`)
		t.Amplifiers("", `amplifier|load_w
A1|95`)
	}},

	{File: "VA-95 Ferncliff/VA-95 schedule P1.xlsx", Kind: "schedule", Book: func() *excelize.File {
		return ferncliff("P1", `
Entrance|1A|Ceiling|4|6|AMP-1|1|60
Entrance|1B|Ceiling|4|6|AMP-2|1|60
Fern gallery|2A|Projector|4|10|AMP-1|2|60
Fern gallery|2B|Projector|4|10|AMP-2|2|60
Moss house|2A|Projector|2|10|AMP-1|2|60
Moss house|2B|Projector|2|10|AMP-2|2|60
Offices|3A|Ceiling|5|3|AMP-1|3|60
Offices|3B|Ceiling|5|3|AMP-2|3|60
Boiler house|3A|Horn|1|10|AMP-1|3|60
Boiler house|3B|Horn|1|10|AMP-2|3|60
`)
	}, Truth: func(t *typed.Truth) {
		t.Is("VA-95", "Ferncliff Botanical Garden", "the first revision of two")
		t.Revision("P1", true)
		t.Speakers("sheet=VA; tap_v=100; line_v=100", `rows|room|model|count|tap_w|amplifier|channel
5|Entrance|Ceiling|4|6|AMP-1|1
6|Entrance|Ceiling|4|6|AMP-2|1
7|Fern gallery|Projector|4|10|AMP-1|2
8|Fern gallery|Projector|4|10|AMP-2|2
9|Moss house|Projector|2|10|AMP-1|2
10|Moss house|Projector|2|10|AMP-2|2
11|Offices|Ceiling|5|3|AMP-1|3
12|Offices|Ceiling|5|3|AMP-2|3
13|Boiler house|Horn|1|10|AMP-1|3
14|Boiler house|Horn|1|10|AMP-2|3`)
		t.Channels("line_v=100; rated_w=60", `amplifier|channel|load_w
AMP-1|1|24
AMP-2|1|24
AMP-1|2|60
AMP-2|2|60
AMP-1|3|25
AMP-2|3|25`)
		t.Amplifiers("", `amplifier|load_w
AMP-1|109
AMP-2|109`)
	}},

	{File: "VA-95 Ferncliff/VA-95 schedule P2.xlsx", Kind: "schedule", Book: func() *excelize.File {
		return ferncliff("P2", `
Entrance|1A|Ceiling|4|6|AMP-1|1|60
Entrance|1B|Ceiling|4|6|AMP-2|1|60
Fern gallery|2A|Projector|4|5|AMP-1|2|60
Fern gallery|2B|Projector|4|5|AMP-2|2|60
Moss house|2A|Projector|2|10|AMP-1|2|60
Moss house|2B|Projector|2|10|AMP-2|2|60
Offices|3A|Ceiling|5|3|AMP-1|3|60
Offices|3B|Ceiling|5|3|AMP-2|3|60
Boiler house|3A|Horn|1|10|AMP-1|3|60
Boiler house|3B|Horn|1|10|AMP-2|3|60
Lift lobby|3A|Ceiling|1|3|AMP-1|3|60
Lift lobby|3B|Ceiling|1|3|AMP-2|3|60
`)
	}, Truth: func(t *typed.Truth) {
		t.Is("VA-95", "Ferncliff Botanical Garden", "the second revision: taps of the gallery lowered, a lobby added")
		t.Revision("P2", false)
		t.Speakers("sheet=VA; tap_v=100; line_v=100", `rows|room|model|count|tap_w|amplifier|channel
5|Entrance|Ceiling|4|6|AMP-1|1
6|Entrance|Ceiling|4|6|AMP-2|1
7|Fern gallery|Projector|4|5|AMP-1|2
8|Fern gallery|Projector|4|5|AMP-2|2
9|Moss house|Projector|2|10|AMP-1|2
10|Moss house|Projector|2|10|AMP-2|2
11|Offices|Ceiling|5|3|AMP-1|3
12|Offices|Ceiling|5|3|AMP-2|3
13|Boiler house|Horn|1|10|AMP-1|3
14|Boiler house|Horn|1|10|AMP-2|3
15|Lift lobby|Ceiling|1|3|AMP-1|3
16|Lift lobby|Ceiling|1|3|AMP-2|3`)
		t.Channels("line_v=100; rated_w=60", `amplifier|channel|load_w
AMP-1|1|24
AMP-2|1|24
AMP-1|2|40
AMP-2|2|40
AMP-1|3|28
AMP-2|3|28`)
		t.Amplifiers("", `amplifier|load_w
AMP-1|92
AMP-2|92`)
	}},

	{File: "Wickersham notebook/dome.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Dome")
		p.Put("A1", `
Wickersham Planetarium, the dome. Job PL-7. Line voltage 70.7 V, except the booth monitor.

Position|Loudspeaker|Quantity|Setting|Fed by|Remarks
Ring, north half|12 in. column|4|15 W|G1|
Ring, south half|12 in. column|4|15 W|G2|
Zenith|8 in. ceiling|2|8 W|G1|above the projector
Aisle left|4 in. step|6|1 W|G3|
Aisle right|4 in. step|6|1 W|G3|
Doors|8 in. ceiling|4|4 W|G3|
Booth monitor|6 in. cabinet|1|8 ohm|M|low impedance, not on the line
Waiting line outside|Horn|2|15 W|G4|
Store|12 in. column|1|-|-|spare

G1 and G2 are 100 watt amplifiers, G3 and G4 are 60 watt amplifiers.
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("PL-7", "Wickersham Planetarium", "one low-impedance loudspeaker among the others, one spare")
		t.Speakers("sheet=Dome; tap_v=70.7; line_v=70.7", `rows|room|model|count|tap_w|amplifier
4|Ring, north half|12 in. column|4|15|G1
5|Ring, south half|12 in. column|4|15|G2
6|Zenith|8 in. ceiling|2|8|G1
7|Aisle left|4 in. step|6|1|G3
8|Aisle right|4 in. step|6|1|G3
9|Doors|8 in. ceiling|4|4|G3
11|Waiting line outside|Horn|2|15|G4`)
		t.Speakers("sheet=Dome", `rows|room|model|low_ohm|amplifier
10|Booth monitor|6 in. cabinet|8|M`)
		t.Speakers("sheet=Dome; status=spare", `rows|room|model
12|Store|12 in. column`)
		t.Channels("line_v=70.7", `amplifier|rated_w|load_w
G1|100|76
G2|100|60
G3|60|28
G4|60|30`)
		t.Channels("", `amplifier
M`)
		t.Amplifiers("", `amplifier|rated_w|load_w
G1|100|76
G2|100|60
G3|60|28
G4|60|30`)
	}},

	{File: "Obra 0341/planetario El Mirador.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Resumen")
		p.Put("A1", `
Obra 0341|Planetario El Mirador|Línea de 70 V

Área|Bocinas|Salida||Salida|Amplificador|Potencia
Vestíbulo|6 x 5 W|S1||S1|AMP-1|60 W
Guardarropa|2 x 2.5 W|S1||S2|AMP-1|120 W
Domo, anillo|8 x 10 W|S2||S3|AMP-2|60 W
Cabina|1 x 1 W|S2||S4|AMP-2|60 W
Sala de meteoritos|4 x 7.5 W|S3|||
Sala del sol|4 x 5 W|S3|||
Tienda|3 x 2.5 W|S3|||
Aulas|8 x 2.5 W|S3|||
Terraza|3 x 15 W|S4|||
Estacionamiento|2 x 15 W|S4|||
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("0341", "Planetario El Mirador", "count and tap in one cell; outputs in a second table beside the first")
		t.Speakers("sheet=Resumen; tap_v=70.7; line_v=70.7", `rows|room|count|tap_w|amplifier|channel
4|Vestíbulo|6|5|AMP-1|S1
5|Guardarropa|2|2.5|AMP-1|S1
6|Domo, anillo|8|10|AMP-1|S2
7|Cabina|1|1|AMP-1|S2
8|Sala de meteoritos|4|7.5|AMP-2|S3
9|Sala del sol|4|5|AMP-2|S3
10|Tienda|3|2.5|AMP-2|S3
11|Aulas|8|2.5|AMP-2|S3
12|Terraza|3|15|AMP-2|S4
13|Estacionamiento|2|15|AMP-2|S4`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
AMP-1|S1|60|35
AMP-1|S2|120|81
AMP-2|S3|60|77.5
AMP-2|S4|60|75`)
		t.Amplifiers("", `amplifier|load_w
AMP-1|116
AMP-2|152.5`)
	}},

	{File: "estate data/small_sites.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Job;Site;Amplifier;Rating (W);Line (V);Place;Type;Count;Tap (W)
E-431;Siskin Pond Boathouse;AMP1;60;100;Boat hall;cabinet;4;10
E-431;Siskin Pond Boathouse;AMP1;60;100;Office;ceiling;1;1.5
E-431;Siskin Pond Boathouse;AMP1;60;100;Jetty;horn;2;10
E-432;Brambling Alpine Garden;AMP1;120;100;Rock house;projector;4;10
E-432;Brambling Alpine Garden;AMP1;120;100;Scree path;pillar;3;20
E-432;Brambling Alpine Garden;AMP1;120;100;Gate;horn;1;7.5
E-433;Redpoll Outdoor Rink;AMP1;240;100;Rink;horn;8;15
E-433;Redpoll Outdoor Rink;AMP1;240;100;Skate cabin;ceiling;3;3
E-433;Redpoll Outdoor Rink;AMP1;240;100;Timekeeper;cabinet;1;5
E-433;Redpoll Outdoor Rink;AMP2;60;100;Car park;horn;4;15
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("E-431", "Siskin Pond Boathouse", "three jobs in one list, amplifiers of the same name")
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP1", `rows|room|model|count|tap_w
2|Boat hall|cabinet|4|10
3|Office|ceiling|1|1.5
4|Jetty|horn|2|10`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP1|60|61.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP1|60|61.5`)
		t.Also("E-432", "Brambling Alpine Garden", "the second job")
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP1", `rows|room|model|count|tap_w
5|Rock house|projector|4|10
6|Scree path|pillar|3|20
7|Gate|horn|1|7.5`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP1|120|107.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP1|120|107.5`)
		t.Also("E-433", "Redpoll Outdoor Rink", "the third job")
		t.Speakers("tap_v=100; line_v=100", `rows|room|model|count|tap_w|amplifier
8|Rink|horn|8|15|AMP1
9|Skate cabin|ceiling|3|3|AMP1
10|Timekeeper|cabinet|1|5|AMP1
11|Car park|horn|4|15|AMP2`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
AMP1|240|134
AMP2|60|60`)
		t.Amplifiers("", `amplifier|rated_w|load_w
AMP1|240|134
AMP2|60|60`)
	}},

	{File: "estate data/microphones.csv", Kind: "not-a-schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Asset,Site,Room,Item,Qty,Connector,Last test
M-001,Teal Street Ice Rink,Control room,Gooseneck microphone,1,XLR,2021-03-04
M-002,Teal Street Ice Rink,Control room,Hand microphone,2,XLR,2021-03-04
M-003,Teal Street Ice Rink,Medical room,Call station,1,RJ45,2021-03-04
M-004,Garganey Boathouses,Coaching office,Call station,1,RJ45,2021-04-11
M-005,Garganey Boathouses,Regatta tower,Hand microphone,1,XLR,2021-04-11
M-006,Dunnock Lake Botanical Garden,Reception,Call station,1,RJ45,2021-05-19
`))
	}, Truth: func(t *typed.Truth) { t.Is("", "", "a list of microphones") }},

	{File: "estate data/emergency_luminaires.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("luminaires")
		p.Put("A1", `
Emergency luminaires|Teal Street Ice Rink

Tag|Room|Type|Qty|Lamp W|Duration h|Circuit|Battery
EL-01|Ice hall|Bulkhead|8|8|3|DB2/4|NiCd
EL-02|Stand|Bulkhead|6|8|3|DB2/4|NiCd
EL-03|Hall|Downlight|4|3|3|DB1/7|NiMH
EL-04|Skate loan|Downlight|3|3|3|DB1/7|NiMH
EL-05|Changing 1|Bulkhead|1|8|3|DB1/8|NiCd
EL-06|Changing 2|Bulkhead|1|8|3|DB1/8|NiCd
EL-07|Exit doors|Sign|5|5|3|DB1/9|NiMH
`)
		return p.File
	}, Truth: func(t *typed.Truth) { t.Is("", "", "a list of luminaires") }},
}

// ferncliff writes one revision of the same schedule.
func ferncliff(revision, rows string) *excelize.File {
	p := typed.NewBook("VA")
	p.Put("A1", `
Voice alarm schedule|Project VA-95|Ferncliff Botanical Garden|100 V line
Revision|`+revision+`

Area|Circuit|Loudspeaker|Qty|Tap W|Amplifier|Output|Output W
`)
	p.Put("A5", rows)
	return p.File
}
