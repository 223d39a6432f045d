package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// An asset database: exports with identifiers, parents and a row for each thing.
var database = []typed.Case{
	{File: "assets/PA_assets_MARSHWOOD.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
AssetID,AssetClass,SiteName,Room,Model,Amplifier,Output,Control,TapSetting_W,MaxLoad_W,LineVoltage_V,AssetStatus
AMP-01/1,Amplifier output,Marshwood Ice Rink,Plant room,,AMP-01,1,,,120,100,Live
AMP-01/2,Amplifier output,Marshwood Ice Rink,Plant room,,AMP-01,2,,,120,100,Live
AMP-02/1,Amplifier output,Marshwood Ice Rink,Plant room,,AMP-02,1,,,60,100,Live
ATT-01,Attenuator,Marshwood Ice Rink,Foyer,,AMP-01,2,,,24,100,Live
ATT-02,Attenuator,Marshwood Ice Rink,Skate hire,,AMP-01,2,,,12,100,Live
ATT-03,Attenuator,Marshwood Ice Rink,Control room,,AMP-02,1,,,6,100,Live
SPK-001,Loudspeaker,Marshwood Ice Rink,Rink hall,HRN-30,AMP-01,1,,15,,100,Live
SPK-002,Loudspeaker,Marshwood Ice Rink,Rink hall,HRN-30,AMP-01,1,,15,,100,Live
SPK-003,Loudspeaker,Marshwood Ice Rink,Rink hall,HRN-30,AMP-01,1,,15,,100,Live
SPK-004,Loudspeaker,Marshwood Ice Rink,Rink hall,HRN-30,AMP-01,1,,15,,100,Live
SPK-005,Loudspeaker,Marshwood Ice Rink,Rink hall,HRN-30,AMP-01,1,,15,,100,Decommissioned
SPK-006,Loudspeaker,Marshwood Ice Rink,Foyer,CLG-06,AMP-01,2,ATT-01,6,,100,Live
SPK-007,Loudspeaker,Marshwood Ice Rink,Foyer,CLG-06,AMP-01,2,ATT-01,6,,100,Live
SPK-008,Loudspeaker,Marshwood Ice Rink,Foyer,CLG-06,AMP-01,2,ATT-01,6,,100,Live
SPK-009,Loudspeaker,Marshwood Ice Rink,Foyer,CLG-06,AMP-01,2,ATT-01,6,,100,Live
SPK-010,Loudspeaker,Marshwood Ice Rink,Skate hire,CLG-06,AMP-01,2,ATT-02,3,,100,Live
SPK-011,Loudspeaker,Marshwood Ice Rink,Skate hire,CLG-06,AMP-01,2,ATT-02,3,,100,Live
SPK-012,Loudspeaker,Marshwood Ice Rink,Skate hire,CLG-06,AMP-01,2,ATT-02,3,,100,Live
SPK-013,Loudspeaker,Marshwood Ice Rink,Changing 1,CLG-06,AMP-02,1,,3,,100,Live
SPK-014,Loudspeaker,Marshwood Ice Rink,Changing 2,CLG-06,AMP-02,1,,3,,100,Live
SPK-015,Loudspeaker,Marshwood Ice Rink,Changing 3,CLG-06,AMP-02,1,,3,,100,Live
SPK-016,Loudspeaker,Marshwood Ice Rink,Control room,CLG-06,AMP-02,1,ATT-03,1.5,,100,Live
SPK-017,Loudspeaker,Marshwood Ice Rink,Loading bay,HRN-30,AMP-02,1,,7.5,,100,Live
SPK-018,Loudspeaker,Marshwood Ice Rink,Store,CLG-06,,,,,,100,Spare
MIC-01,Microphone,Marshwood Ice Rink,Control room,,,,,,,,Live
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Marshwood Ice Rink", "outputs, controls, loudspeakers and a microphone as rows of one table")
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP-01; channel=1; room=Rink hall; model=HRN-30; tap_w=15", `rows|tag|status
8..11|SPK-001..|installed
12|SPK-005|removed`)
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP-01; channel=2; model=CLG-06", `rows|tag|room|tap_w|control
13..16|SPK-006..|Foyer|6|ATT-01
17..19|SPK-010..|Skate hire|3|ATT-02`)
		t.Speakers("tap_v=100; line_v=100; amplifier=AMP-02; channel=1", `rows|tag|room|model|tap_w|control
20|SPK-013|Changing 1|CLG-06|3|
21|SPK-014|Changing 2|CLG-06|3|
22|SPK-015|Changing 3|CLG-06|3|
23|SPK-016|Control room|CLG-06|1.5|ATT-03
24|SPK-017|Loading bay|HRN-30|7.5|`)
		t.Speakers("line_v=100; tap_v=100; status=spare", `rows|tag|room|model
25|SPK-018|Store|CLG-06`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP-01|1|120|60
AMP-01|2|120|33
AMP-02|1|60|18`)
		t.Amplifiers("", `amplifier|load_w
AMP-01|93
AMP-02|18`)
		t.Controls("", `control|rated_w|load_w
ATT-01|24|24
ATT-02|12|9
ATT-03|6|1.5`)
		t.Left("", `2|other|an output
3|other|an output
4|other|an output
5|other|a control
6|other|a control
7|other|a control
26|other|a microphone`)
	}},

	{File: "assets/export_lakeside_boathouses.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Export")
		p.Put("A1", `
Work Order|Facility|Building|Asset Tag|Asset Type|Manufacturer Part|Quantity|Power Tap|System Voltage|Connected To|Port|Cable Length (ft)|Cable Gauge
WO-8812|Lakeside Boathouses|House A|0001|Loudspeaker|SF-10|3|5 W|70 V|RackAmp-1|1|180|14 AWG
WO-8812|Lakeside Boathouses|House A|0002|Loudspeaker|SF-10|4|5 W|70 V|RackAmp-1|1|205|14 AWG
WO-8812|Lakeside Boathouses|House A|0003|Loudspeaker|CE-08|6|2.5 W|70 V|RackAmp-1|2|95|16 AWG
WO-8812|Lakeside Boathouses|House A|0004|Loudspeaker|CE-08|2|1 W|70 V|RackAmp-1|2|130|16 AWG
WO-8812|Lakeside Boathouses|House B|0005|Loudspeaker|SF-10|6|10 W|70 V|RackAmp-1|3|240|14 AWG
WO-8812|Lakeside Boathouses|House B|0006|Loudspeaker|CE-08|5|2.5 W|70 V|RackAmp-1|4|110|16 AWG
WO-8812|Lakeside Boathouses|House B|0007|Loudspeaker|CE-08|3|2.5 W|70 V|RackAmp-1|4|145|16 AWG
WO-8812|Lakeside Boathouses|Dock|0008|Loudspeaker|HN-15|6|15 W|70 V|RackAmp-2|1|410|12 AWG
WO-8812|Lakeside Boathouses|Dock|0009|Loudspeaker|HN-15|2|7.5 W|70 V|RackAmp-2|1|460|12 AWG
WO-8812|Lakeside Boathouses|Launch ramp|0010|Loudspeaker|HN-15|4|15 W|70 V|RackAmp-2|2|365|12 AWG
WO-8812|Lakeside Boathouses|Judges' tower|0011|Loudspeaker|CE-08|2|1 W|70 V|RackAmp-2|2|390|12 AWG
`)
		// asset tags are text with leading zeros
		for i, tag := range []string{"0001", "0002", "0003", "0004", "0005", "0006", "0007", "0008", "0009", "0010", "0011"} {
			at, err := excelize.CoordinatesToCellName(4, i+2)
			typed.Must(err)
			typed.Must(p.File.SetCellValue("Export", at, tag))
		}
		a := p.Sheet("Amplifiers")
		a.Put("A1", `
Amplifier|Port|Port Rating
RackAmp-1|1|100 W
RackAmp-1|2|100 W
RackAmp-1|3|100 W
RackAmp-1|4|100 W
RackAmp-2|1|150 W
RackAmp-2|2|150 W
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("WO-8812", "Lakeside Boathouses", "export of groups with asset tags; amplifiers as what a group is connected to")
		t.Speakers("sheet=Export; tap_v=70.7; line_v=70.7", `rows|tag|room|model|count|tap_w|amplifier|channel
2|0001|House A|SF-10|3|5|RackAmp-1|1
3|0002|House A|SF-10|4|5|RackAmp-1|1
4|0003|House A|CE-08|6|2.5|RackAmp-1|2
5|0004|House A|CE-08|2|1|RackAmp-1|2
6|0005|House B|SF-10|6|10|RackAmp-1|3
7|0006|House B|CE-08|5|2.5|RackAmp-1|4
8|0007|House B|CE-08|3|2.5|RackAmp-1|4
9|0008|Dock|HN-15|6|15|RackAmp-2|1
10|0009|Dock|HN-15|2|7.5|RackAmp-2|1
11|0010|Launch ramp|HN-15|4|15|RackAmp-2|2
12|0011|Judges' tower|CE-08|2|1|RackAmp-2|2`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
RackAmp-1|1|100|35
RackAmp-1|2|100|17
RackAmp-1|3|100|60
RackAmp-1|4|100|20
RackAmp-2|1|150|105
RackAmp-2|2|150|62`)
		t.Amplifiers("", `amplifier|load_w
RackAmp-1|132
RackAmp-2|167`)
		t.Lines("", `from|to|length_m|area_mm2
RackAmp-1 1|0001|54.864|2.0809
RackAmp-1 1|0002|62.484|2.0809
RackAmp-1 2|0003|28.956|1.3087
RackAmp-1 2|0004|39.624|1.3087
RackAmp-1 3|0005|73.152|2.0809
RackAmp-1 4|0006|33.528|1.3087
RackAmp-1 4|0007|44.196|1.3087
RackAmp-2 1|0008|124.968|3.3088
RackAmp-2 1|0009|140.208|3.3088
RackAmp-2 2|0010|111.252|3.3088
RackAmp-2 2|0011|118.872|3.3088`)
	}},
}
