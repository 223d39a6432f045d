package main

import (
	"strings"

	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// assetExports is a facilities manager: what the maintenance system gives out, one row an asset, most columns of no use here.
var assetExports = []typed.Case{
	{File: "assets/asset_register_kingsmere.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Latin1(typed.DOS(`
"Asset No","Description","Class","Parent Asset","Building","Level","Room","Criticality","Condition","Status","Installed","Next PPM","Rating","Rating UoM","Setting","Setting UoM","Comments"
"PA-0001","PA amplifier 2 channel 100V","AMPLIFIER","","KM01","00","Plant 2","B","2","In service","01/06/2014","06/2026","2 x 120","W","","","Battery set replaced 2023"
"PA-0002","Volume control sauna corridor","VOLUME CONTROL","PA-0001","KM01","00","Sauna corridor","C","2","In service","01/06/2014","06/2026","12","W","","","Channel 2"
"PA-0003","Volume control fitness","VOLUME CONTROL","PA-0001","KM01","01","Fitness","C","3","In service","01/06/2014","06/2026","35","W","","","Channel 2"
"PA-0101","Horn loudspeaker","LOUDSPEAKER","PA-0001","KM01","00","Main pool","B","2","In service","01/06/2014","06/2026","30","W","15","W","Channel 1"
"PA-0102","Horn loudspeaker","LOUDSPEAKER","PA-0001","KM01","00","Main pool","B","2","In service","01/06/2014","06/2026","30","W","15","W","Channel 1"
"PA-0103","Horn loudspeaker","LOUDSPEAKER","PA-0001","KM01","00","Main pool","B","4","In service","01/06/2014","06/2026","30","W","15","W","Channel 1 - corroded bracket"
"PA-0104","Horn loudspeaker","LOUDSPEAKER","PA-0001","KM01","00","Main pool","B","5","Decommissioned","01/06/2014","","30","W","15","W","Channel 1 - removed, see WO 88121"
"PA-0105","Horn loudspeaker","LOUDSPEAKER","PA-0001","KM01","00","Teaching pool","B","2","In service","01/06/2014","06/2026","30","W","10","W","Channel 1"
"PA-0106","Ceiling loudspeaker","LOUDSPEAKER","PA-0002","KM01","00","Sauna corridor","C","2","In service","01/06/2014","06/2026","6","W","3","W",""
"PA-0107","Ceiling loudspeaker","LOUDSPEAKER","PA-0002","KM01","00","Sauna corridor","C","2","In service","01/06/2014","06/2026","6","W","3","W",""
"PA-0108","Ceiling loudspeaker","LOUDSPEAKER","PA-0003","KM01","01","Fitness","C","2","In service","01/06/2014","06/2026","6","W","6","W",""
"PA-0109","Ceiling loudspeaker","LOUDSPEAKER","PA-0003","KM01","01","Fitness","C","2","In service","01/06/2014","06/2026","6","W","6","W",""
"PA-0110","Ceiling loudspeaker","LOUDSPEAKER","PA-0003","KM01","01","Fitness","C","2","In service","01/06/2014","06/2026","6","W","6","W",""
"PA-0111","Ceiling loudspeaker","LOUDSPEAKER","PA-0003","KM01","01","Studio","C","2","Planned","","","6","W","6","W","2027 programme"
"PA-0112","Ceiling loudspeaker","LOUDSPEAKER","","KM01","B1","Stores","C","1","Spare","","","6","W","","","on shelf"
"EL-2231","Emergency luminaire","LUMINAIRE","DB-04","KM01","00","Main pool","A","2","In service","11/02/2018","12/2025","8","W","","",""
"CC-0410","CCTV camera","CAMERA","NVR-1","KM01","00","Foyer","B","2","In service","03/03/2020","03/2026","12","W","","",""
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "an asset register: amplifier, controls and loudspeakers in one list, joined by the parent asset; other assets between them; states")
		t.Speakers("tap_v=100; line_v=100; amplifier=PA-0001", `
rows|tag|room|channel|model|tap_w|control|status
5..7|PA-0101..|Main pool|1|Horn loudspeaker|15||installed
8|PA-0104|Main pool|1|Horn loudspeaker|15||removed
9|PA-0105|Teaching pool|1|Horn loudspeaker|10||installed
10..11|PA-0106..|Sauna corridor|2|Ceiling loudspeaker|3|PA-0002|installed
12..14|PA-0108..|Fitness|2|Ceiling loudspeaker|6|PA-0003|installed
15|PA-0111|Studio|2|Ceiling loudspeaker|6|PA-0003|future
`)
		t.Channels("line_v=100; amplifier=PA-0001; rated_w=120", "channel|load_w\n1|55\n2|24")
		t.Amplifiers("", "amplifier|rated_w|load_w\nPA-0001|240|79")
		t.Controls("", "control|rated_w|load_w\nPA-0002|12|6\nPA-0003|35|18")
		t.Left("", "16|spare|on the shelf\n17|other|a luminaire\n18|other|a camera")
	}},

	{File: "assets/Export Marlhead Rink 2024-11.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Assets")
		p.Put("A1", `
Export: assets by system (PUBLIC ADDRESS)|||||||||||
Site: MARLHEAD ICE RINK|||Printed 18/11/2024|||User: FM2
|
Asset ID|Asset type|Location|Make|Serial no.|Parent|Output|Tap setting (W)|Max (W)|Line (V)|Operational status|Last inspection|Replacement cost
MIR-AMP-01|Amplifier|Rack room||S1190221||||240|100|Operational|03/09/2024|1450
MIR-AMP-02|Amplifier|Rack room||S1190222||||120|100|Operational|03/09/2024|980
MIR-VOL-01|Attenuator|Skate hire|||MIR-AMP-02|1||50|100|Operational|03/09/2024|65
MIR-VOL-02|Attenuator|Meeting room|||MIR-AMP-02|1||12|100|Operational|03/09/2024|65
MIR-SPK-01|Loudspeaker|Ice pad|||MIR-AMP-01|1|20|30|100|Operational|03/09/2024|210
MIR-SPK-02|Loudspeaker|Ice pad|||MIR-AMP-01|1|20|30|100|Operational|03/09/2024|210
MIR-SPK-03|Loudspeaker|Ice pad|||MIR-AMP-01|1|20|30|100|Operational|03/09/2024|210
MIR-SPK-04|Loudspeaker|Ice pad|||MIR-AMP-01|1|20|30|100|Operational - minor defect|03/09/2024|210
MIR-SPK-05|Loudspeaker|Stand|||MIR-AMP-01|1|10|30|100|Operational|03/09/2024|210
MIR-SPK-06|Loudspeaker|Stand|||MIR-AMP-01|1|10|30|100|Disposed|03/09/2021|210
MIR-SPK-07|Loudspeaker|Skate hire|||MIR-VOL-01||6|6|100|Operational|03/09/2024|48
MIR-SPK-08|Loudspeaker|Skate hire|||MIR-VOL-01||6|6|100|Operational|03/09/2024|48
MIR-SPK-09|Loudspeaker|Skate hire|||MIR-VOL-01||3|6|100|Operational|03/09/2024|48
MIR-SPK-10|Loudspeaker|Meeting room|||MIR-VOL-02||1.5|6|100|Operational|03/09/2024|48
MIR-SPK-11|Loudspeaker|Meeting room|||MIR-VOL-02||1.5|6|100|Operational|03/09/2024|48
MIR-SPK-12|Loudspeaker|Resurfacer bay|||MIR-AMP-02|1|15|15|100|Operational|03/09/2024|150
|
Records: 16
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "MARLHEAD ICE RINK", "an asset export with serials, dates and costs; parents that are amplifiers or controls; one disposed of")
		t.Speakers("tap_v=100; line_v=100; sheet=Assets; channel=1", `
rows|tag|room|amplifier|tap_w|control|status
9..12|MIR-SPK-01..|Ice pad|MIR-AMP-01|20||installed
13|MIR-SPK-05|Stand|MIR-AMP-01|10||installed
14|MIR-SPK-06|Stand|MIR-AMP-01|10||removed
15..16|MIR-SPK-07..|Skate hire|MIR-AMP-02|6|MIR-VOL-01|installed
17|MIR-SPK-09|Skate hire|MIR-AMP-02|3|MIR-VOL-01|installed
18..19|MIR-SPK-10..|Meeting room|MIR-AMP-02|1.5|MIR-VOL-02|installed
20|MIR-SPK-12|Resurfacer bay|MIR-AMP-02|15||installed
`)
		t.Channels("line_v=100; channel=1", "amplifier|rated_w|load_w\nMIR-AMP-01|240|90\nMIR-AMP-02|120|33")
		t.Amplifiers("", "amplifier|rated_w|load_w\nMIR-AMP-01|240|90\nMIR-AMP-02|120|33")
		t.Controls("", "control|rated_w|load_w\nMIR-VOL-01|50|15\nMIR-VOL-02|12|3")
		t.Left("Assets", "22|note|")
	}},

	{File: "assets/Equipment list Orchid House (maintenance system).txt", Kind: "schedule", Bytes: func() []byte {
		return typed.Unicode16(typed.DOS(strings.ReplaceAll(`
Equipment→Description→Functional location→Superior equipment→Sort field→User status→Characteristic 1→Value 1→Characteristic 2→Value 2
10004410→Amplifier PA hall→BG-ORC-00-012→→AMP1→OPER→RATED POWER→250 W→LINE VOLTAGE→100 V
10004411→Circuit 1 PA→BG-ORC-00-012→10004410→C1→OPER→→→→
10004412→Circuit 2 PA→BG-ORC-00-012→10004410→C2→OPER→→→→
10004420→Attenuator orchid house→BG-ORC-00-020→10004412→ATT1→OPER→RATED POWER→50 W→→
10004431→Loudspeaker→BG-ORC-00-001→10004411→LS01→OPER→TAP→15 W→→
10004432→Loudspeaker→BG-ORC-00-001→10004411→LS02→OPER→TAP→15 W→→
10004433→Loudspeaker→BG-ORC-00-001→10004411→LS03→OPER→TAP→15 W→→
10004434→Loudspeaker→BG-ORC-00-020→10004420→LS04→OPER→TAP→7.5 W→→
10004435→Loudspeaker→BG-ORC-00-020→10004420→LS05→OPER→TAP→7.5 W→→
10004436→Loudspeaker→BG-ORC-00-020→10004420→LS06→DISM→TAP→7.5 W→→
10004437→Loudspeaker→BG-ORC-00-031→10004412→LS07→OPER→TAP→5 W→→
`, "→", "\t")))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "equipment numbers with superior equipment three steps deep; taps in characteristic and value; a state in four letters")
		t.Speakers("tap_v=100; line_v=100; amplifier=10004410", `
rows|tag|room|channel|tap_w|control|status
6..8|LS01..|BG-ORC-00-001|10004411|15||installed
9..10|LS04..|BG-ORC-00-020|10004412|7.5|10004420|installed
11|LS06|BG-ORC-00-020|10004412|7.5|10004420|removed
12|LS07|BG-ORC-00-031|10004412|5||installed
`)
		t.Channels("line_v=100; amplifier=10004410", "channel|load_w\n10004411|45\n10004412|20")
		t.Amplifiers("", "amplifier|rated_w|load_w\n10004410|250|65")
		t.Controls("", "control|rated_w|load_w\n10004420|50|15")
	}},
}
