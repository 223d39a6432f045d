package main

import "lineaudit/samples/typed"

// soundDrawings is a drawing office: exports of block attributes, registers with drawing numbers, cable pull sheets.
var soundDrawings = []typed.Case{
	{File: "drawings/block attributes A-512.csv", Kind: "schedule", Bytes: text(`
HANDLE,BLOCKNAME,LAYER,X,Y,ROTATION,TAG,LEVEL,ROOM,WATTS,VOLTS,CKT,AMP
2A41,LS_CEIL,E-PA-SPKR,12450.0,8100.0,0,SP-01,L0,Entrance hall,3,70,1,AMP1
2A42,LS_CEIL,E-PA-SPKR,15450.0,8100.0,0,SP-02,L0,Entrance hall,3,70,1,AMP1
2A43,LS_CEIL,E-PA-SPKR,18450.0,8100.0,0,SP-03,L0,Entrance hall,3,70,1,AMP1
2A44,LS_WALL,E-PA-SPKR,22100.0,4300.0,90,SP-04,L0,Boat gallery,10,70,1,AMP1
2A45,LS_WALL,E-PA-SPKR,22100.0,9300.0,90,SP-05,L0,Boat gallery,10,70,1,AMP1
2A46,LS_HORN,E-PA-SPKR,30500.0,-1200.0,180,SP-06,L0,Quay,15,70,2,AMP1
2A47,LS_HORN,E-PA-SPKR,36500.0,-1200.0,180,SP-07,L0,Quay,15,70,2,AMP1
2A48,LS_CEIL,E-PA-SPKR,12450.0,8100.0,0,SP-08,L1,Reading room,1.5,70,2,AMP1
2A49,LS_CEIL,E-PA-SPKR,15450.0,8100.0,0,SP-09,L1,Reading room,1.5,70,2,AMP1
2A4C,VOL_CTRL,E-PA-CTRL,11900.0,7700.0,0,VC-01,L1,Reading room,10,,2,AMP1
2A50,AMP_RACK,E-PA-RACK,5000.0,2000.0,0,AMP1,L0,Plant room,2x100,70,,
`), Truth: func(t *typed.Truth) {
		t.Is("", "", "export of block attributes with handles and coordinates; amplifier and control are blocks too; which loudspeakers the control serves is its room's")
		t.Speakers("tap_v=70.7; line_v=70.7; amplifier=AMP1", `
rows|tag|room|model|tap_w|channel|control
2..4|SP-01..|Entrance hall|LS_CEIL|3|1|
5..6|SP-04..|Boat gallery|LS_WALL|10|1|
7..8|SP-06..|Quay|LS_HORN|15|2|
9..10|SP-08..|Reading room|LS_CEIL|1.5|2|VC-01
`)
		t.Channels("line_v=70.7; amplifier=AMP1; rated_w=100", "channel|load_w\n1|29\n2|33")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAMP1|200|62")
		t.Controls("", "control|zone|rated_w|load_w\nVC-01|Reading room|10|3")
		t.Left("", "11|note|the control\n12|note|the amplifier")
	}},

	{File: "drawings/DR-88 device register Tarn Hollow.xlsx", Kind: "schedule", Book: sheets("Register", `
Tarn Hollow Observatory and Herbarium
PA device register DR-88, all drawings at revision 4

Device|Dwg no.|Grid|Room no.|Room name|Device class|Tap W|Fed from|Remarks
L-001|PA-101|B3|G02|Telescope hall|loudspeaker|15|AMP-1/CH1|
L-002|PA-101|B5|G02|Telescope hall|loudspeaker|15|AMP-1/CH1|
L-003|PA-101|D3|G05|Control room|loudspeaker|5|AT-1|
L-004|PA-101|D4|G05|Control room|loudspeaker|5|AT-1|
AT-1|PA-101|D3|G05|Control room|attenuator 20 W||AMP-1/CH1|
L-005|PA-102|C2|101|Herbarium|loudspeaker|2.5|AT-2|
L-006|PA-102|C3|101|Herbarium|loudspeaker|2.5|AT-2|
L-007|PA-102|C4|101|Herbarium|loudspeaker|2.5|AT-2|
AT-2|PA-102|C2|101|Herbarium|attenuator 5 W||AMP-1/CH2|
L-008|PA-102|F1|108|Museum store|loudspeaker|5|AMP-1/CH2|
L-009|PA-103|A1|EXT|Car park mast|loudspeaker|30|AMP-1/CH2|
AMP-1|PA-101|A1|G01|Switch room|amplifier 2 x 80 W, 100 V||mains|
`), Truth: func(t *typed.Truth) {
		t.Is("DR-88", "Tarn Hollow Observatory and Herbarium", "register with drawing and room numbers; each device names what feeds it, controls too")
		t.Speakers("tap_v=100; line_v=100; sheet=Register; amplifier=AMP-1", `
rows|tag|room|tap_w|channel|control
5..6|L-001..|Telescope hall|15|CH1|
7..8|L-003..|Control room|5|CH1|AT-1
10..12|L-005..|Herbarium|2.5|CH2|AT-2
14|L-008|Museum store|5|CH2|
15|L-009|Car park mast|30|CH2|
`)
		t.Channels("line_v=100; amplifier=AMP-1; rated_w=80", "channel|load_w\nCH1|40\nCH2|42.5")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAMP-1|160|82.5")
		t.Controls("", "control|zone|rated_w|load_w\nAT-1|Control room|20|10\nAT-2|Herbarium|5|7.5")
		t.Left("Register", "9|note|attenuator\n13|note|attenuator\n16|note|amplifier")
	}},

	{File: "drawings/Pull sheet Osier Boathouse.xlsx", Kind: "schedule", Book: sheets("Speakers", `
Osier Boathouse - job 6120
Tag|Room|Tap|Line
LS1|Boat bay 1|10W|PA1
LS2|Boat bay 2|10W|PA1
LS3|Boat bay 3|10W|PA1
LS4|Pontoon|20W|PA2
LS5|Pontoon|20W|PA2
LS6|Finish hut|5W|PA2
70.7V. PA1 and PA2 are the two 75 W outputs of the amplifier in the bosun's store.
`, "Cable pull", `
Cable pull sheet, all 2 core flexible copper
Cable no.|From|To|Core 1|Core 2|Size|Run (ft)|Pulled by|Date
C-01|PA1|LS1|red = 70V|black = com|14 AWG|120|R.|6/2
C-02|LS1|LS2|red|black|14 AWG|45|R.|6/2
C-03|LS2|LS3|red|black|14 AWG|45|R.|6/2
C-04|PA2|LS4|red|black|12 AWG|310|T.|6/3
C-05|LS4|LS5|red|black|12 AWG|60|T.|6/3
C-06|LS5|LS6|red|black|14 AWG|85|T.|6/3
`), Truth: func(t *typed.Truth) {
		t.Is("6120", "Osier Boathouse", "from-to cables with cores and colours in AWG and ft; a size that changes on the way")
		t.Speakers("tap_v=70.7; line_v=70.7; sheet=Speakers", `
rows|tag|room|tap_w|channel
3|LS1|Boat bay 1|10|PA1
4|LS2|Boat bay 2|10|PA1
5|LS3|Boat bay 3|10|PA1
6..7|LS4..|Pontoon|20|PA2
8|LS6|Finish hut|5|PA2
`)
		t.Channels("line_v=70.7; rated_w=75", "channel|load_w\nPA1|30\nPA2|45")
		t.Lines("", `
line|from|to|length_m|area_mm2|material
C-01|PA1|LS1|36.576|2.0809|copper
C-02|LS1|LS2|13.716|2.0809|copper
C-03|LS2|LS3|13.716|2.0809|copper
C-04|PA2|LS4|94.488|3.3088|copper
C-05|LS4|LS5|18.288|3.3088|copper
C-06|LS5|LS6|25.908|2.0809|copper
`)
	}},

	{File: "drawings/Trekstaat Sluis Meerzicht.ods", Kind: "schedule", Saved: "ods", Book: sheets("Kabels", `
Trekstaat geluidsinstallatie Sluis Meerzicht - werk 4471
Kabelnr.|Van|Naar|Type|Aders|Lengte (m)|Opmerking
K1|versterker 1|sluishoofd noord|2x2,5|bruin/blauw|240|4 hoorns van 15 W
K2|versterker 1|sluishoofd zuid|2x2,5|bruin/blauw|310|4 hoorns van 15 W
K3|versterker 2|bedieningsgebouw|2x1,5|bruin/blauw|35|6 plafondluidsprekers van 3 W
K4|versterker 2|museumpje|2x1,5|bruin/blauw|80|5 plafondluidsprekers van 6 W
Versterker 1 is 240 W, versterker 2 is 60 W, beide 100 V.
`), Truth: func(t *typed.Truth) {
		t.Is("4471", "Sluis Meerzicht", "Dutch pull sheet whose remarks carry the loudspeakers")
		t.Speakers("tap_v=100; line_v=100; sheet=Kabels", `
rows|room|count|tap_w|amplifier|model
3|sluishoofd noord|4|15|versterker 1|hoorns
4|sluishoofd zuid|4|15|versterker 1|hoorns
5|bedieningsgebouw|6|3|versterker 2|plafondluidsprekers
6|museumpje|5|6|versterker 2|plafondluidsprekers
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nversterker 1|240|120\nversterker 2|60|48")
		t.Amplifiers("", "amplifier|rated_w|load_w\nversterker 1|240|120\nversterker 2|60|48")
		t.Lines("", "line|length_m|area_mm2\nK1|240|2.5\nK2|310|2.5\nK3|35|1.5\nK4|80|1.5")
	}},

	{File: "drawings/DR-93 three buildings.xlsx", Kind: "schedule", Book: sheets("All devices", `
Brackwater Gardens estate: PA devices of three buildings (DR-93)

Bldg|Building|Floor|Room no.|Room|Device no.|Kind|Tap (W)|Line voltage|Amplifier|Yards to previous|Conductor
1|Old Observatory|G|G.01|Hall|1-01|ceiling|5|100 V|OBS|40|18/0.25
1|Old Observatory|G|G.02|Library|1-02|ceiling|2.5|100 V|OBS|12|18/0.25
1|Old Observatory|1|1.01|Map store|1-03|ceiling|2.5|100 V|OBS|9|18/0.25
2|Lily Glasshouse|G|G.01|Pool side|2-01|projector|10|100 V|LILY|30|32/0.2
2|Lily Glasshouse|G|G.01|Pool side|2-02|projector|10|100 V|LILY|15|32/0.2
2|Lily Glasshouse|G|G.02|Boiler house|2-03|projector|20|100 V|LILY|25|32/0.2
3|Boat Shed|G|G.01|Bay A|3-01|horn|7.5|70 V|SHED|20|2.5 mm2
3|Boat Shed|G|G.02|Bay B|3-02|horn|7.5|70 V|SHED|10|2.5 mm2
Amplifiers: OBS 30 W, LILY 60 W, SHED 30 W, one line each
`), Truth: func(t *typed.Truth) {
		t.Is("DR-93", "Brackwater Gardens estate", "three buildings in one list, 100 V and 70 V; room numbers repeat from building to building; yards and strands")
		t.Speakers("sheet=All devices; tap_v=100; line_v=100", `
rows|tag|room|model|tap_w|amplifier
4|1-01|Hall|ceiling|5|OBS
5|1-02|Library|ceiling|2.5|OBS
6|1-03|Map store|ceiling|2.5|OBS
7..8|2-01..|Pool side|projector|10|LILY
9|2-03|Boiler house|projector|20|LILY
`)
		t.Speakers("sheet=All devices; tap_v=70.7; line_v=70.7; tap_w=7.5; model=horn; amplifier=SHED", "rows|tag|room\n10|3-01|Bay A\n11|3-02|Bay B")
		t.Channels("", "amplifier|line_v|rated_w|load_w\nOBS|100|30|10\nLILY|100|60|40\nSHED|70.7|30|15")
		t.Amplifiers("", "amplifier|rated_w|load_w\nOBS|30|10\nLILY|60|40\nSHED|30|15")
		t.Lines("note=yards; pieces of the line", `
to|length_m|area_mm2
1-01|36.576|0.8836
1-02|10.9728|0.8836
1-03|8.2296|0.8836
2-01|27.432|1.0053
2-02|13.716|1.0053
2-03|22.86|1.0053
3-01|18.288|2.5
3-02|9.144|2.5
`)
	}},
}
