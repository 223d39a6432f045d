package main

import (
	"strings"

	"lineaudit/samples/typed"

	"github.com/xuri/excelize/v2"
)

// estates is the facilities department of a trust: an asset register, and what its people add to it.
var estates = []typed.Case{
	{File: "estates office/asset export PA.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Unicode16(typed.DOS(strings.ReplaceAll(`
Asset ID→Parent→Class→Description→Building→Location→Qty→Setting→Status
00410→→PA.RACK→Paging rack→Lowfield Glasshouses→Plant room 2→1→→In service
00411→00410→PA.AMP→Amplifier 120 W 100 V→Lowfield Glasshouses→Plant room 2→1→→In service
00412→00410→PA.AMP→Amplifier 60 W 100 V→Lowfield Glasshouses→Plant room 2→1→→In service
00420→00411→PA.LS→Loudspeaker column→Lowfield Glasshouses→Temperate house→6→10 W→In service
00421→00411→PA.LS→Loudspeaker column→Lowfield Glasshouses→Cactus house→4→10 W→In service
00422→00411→PA.LS→Loudspeaker horn→Lowfield Glasshouses→Service yard→2→15 W→Decommissioned
00430→00412→PA.LS→Loudspeaker ceiling→Lowfield Glasshouses→Ticket hall→6→3 W→In service
00431→00412→PA.VC→Volume control 10 W→Lowfield Glasshouses→Classroom→1→→In service
00432→00431→PA.LS→Loudspeaker ceiling→Lowfield Glasshouses→Classroom→4→3 W→In service
00433→00412→PA.LS→Loudspeaker ceiling→Lowfield Glasshouses→Seed library→2→3 W→In service
00434→00412→PA.LS→Loudspeaker ceiling→Lowfield Glasshouses→Seed library→2→3 W→On order
`, "→", "\t")))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Lowfield Glasshouses", "an asset register with parents: the amplifier or the control above each")
		t.Speakers("tap_v=100; line_v=100", `
rows|tag|room|model|count|tap_w|amplifier|control
5|00420|Temperate house|column|6|10|00411|
6|00421|Cactus house|column|4|10|00411|
8|00430|Ticket hall|ceiling|6|3|00412|
10|00432|Classroom|ceiling|4|3|00412|00431
11|00433|Seed library|ceiling|2|3|00412|
`)
		t.Speakers("tap_v=100; line_v=100; status=removed", "rows|tag|room|model|count|tap_w|amplifier\n7|00422|Service yard|horn|2|15|00411")
		t.Speakers("tap_v=100; line_v=100; status=future", "rows|tag|room|model|count|tap_w|amplifier\n12|00434|Seed library|ceiling|2|3|00412")
		t.Channels("line_v=100", "amplifier|rated_w|load_w\n00411|120|100\n00412|60|36")
		t.Amplifiers("", "amplifier|rated_w|load_w\n00411|120|100\n00412|60|36")
		t.Controls("", "control|rated_w|load_w\n00431|10|12")
		t.Left("", "2|other|rack\n3|amplifier|no loudspeaker\n4|amplifier|no loudspeaker\n9|control|no loudspeaker")
	}},

	{File: "estates office/PA zones all sites.xlsx", Kind: "schedule", Book: sheets("PA zones", `
Public address - all sites, kept by the duty engineer||||||||||
Contract|Site|Zone|Speakers|Type|Tap|Zone load|Amp|Amp rating|Local vol.|Last test
P-301|Harrowby Ice Rink|Rink|12|horn|15 W|180 W|HR1|240 W|none|May 2020
P-301|Harrowby Ice Rink|Foyer|6|ceiling|3 W|18 W|HR2|60 W|20 W|May 2020
P-301|Harrowby Ice Rink|Changing|8|ceiling|1.5 W|12 W|HR2|60 W|none|May 2020
P-302|Thistledown Observatory|Lecture room|4|cabinet|6 W|24 W|TO1|60 W|30 W|June 2020
P-302|Thistledown Observatory|Exhibition|8|ceiling|3 W|24 W|TO1|60 W|24 W|June 2020
P-302|Thistledown Observatory|Dome|2|cabinet|3 W|6 W|TO1|60 W|none|June 2020
P-303|Mere Boathouse|Quay|3|horn|15 W|45 W|MB1|60 W|none|not tested
P-303|Mere Boathouse|Boat hall|4|cabinet|6 W|24 W|MB1|60 W|none|not tested

All systems 100 V.
`), Truth: func(t *typed.Truth) {
		common := "tap_v=100; line_v=100; sheet=PA zones"
		t.Is("P-301", "Harrowby Ice Rink", "a register of three jobs, whose column for a local control holds its rating or none")
		t.Speakers(common, `
rows|zone|count|model|tap_w|amplifier|note
3|Rink|12|horn|15|HR1|
4|Foyer|6|ceiling|3|HR2|unnamed control
5|Changing|8|ceiling|1.5|HR2|
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nHR1|240|180\nHR2|60|30")
		t.Amplifiers("", "amplifier|rated_w|load_w\nHR1|240|180\nHR2|60|30")
		t.Controls("note=unnamed", "zone|rated_w|load_w\nFoyer|20|18")
		t.Also("P-302", "Thistledown Observatory", "a register of three jobs")
		t.Speakers(common, `
rows|zone|count|model|tap_w|amplifier|note
6|Lecture room|4|cabinet|6|TO1|unnamed control
7|Exhibition|8|ceiling|3|TO1|unnamed control
8|Dome|2|cabinet|3|TO1|
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nTO1|60|54")
		t.Amplifiers("", "amplifier|rated_w|load_w\nTO1|60|54")
		t.Controls("note=unnamed", "zone|rated_w|load_w\nLecture room|30|24\nExhibition|24|24")
		t.Also("P-303", "Mere Boathouse", "a register of three jobs")
		t.Speakers(common, `
rows|zone|count|model|tap_w|amplifier
9|Quay|3|horn|15|MB1
10|Boat hall|4|cabinet|6|MB1
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nMB1|60|69")
		t.Amplifiers("", "amplifier|rated_w|load_w\nMB1|60|69")
	}},

	{File: "estates office/speakers Ashmoor baths (caretaker).xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Sheet1")
		p.Put("A1", `
Loudspeakers at Ashmoor Baths|||
Amp is in the cupboard by the boiler, 120 watt, wired 100v line|||
||||
where|how many|watts|knob
Main pool|5|10|no
Toddler pool|2|5|no
Front desk|1|3|yes (5 watt)
Waiting area|3|3|yes (12 watt)
Upstairs landing|2|3|no
Mens changing|3|3|no
Ladies changing|3|3|no
Old boiler room|1|10|no - not connected any more
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Ashmoor Baths", "a caretaker's plain words; whether there is a knob, and of how many watts")
		t.Speakers("tap_v=100; line_v=100; sheet=Sheet1", `
rows|room|count|tap_w|note
5|Main pool|5|10|
6|Toddler pool|2|5|
7|Front desk|1|3|unnamed control
8|Waiting area|3|3|unnamed control
9|Upstairs landing|2|3|
10|Mens changing|3|3|
11|Ladies changing|3|3|
`)
		t.Speakers("tap_v=100; line_v=100; sheet=Sheet1; status=removed", "rows|room|count|tap_w\n12|Old boiler room|1|10")
		t.Channels("line_v=100", "rated_w|load_w\n120|96")
		t.Amplifiers("note=unnamed", "rated_w|load_w\n120|96")
		t.Controls("note=unnamed", "zone|rated_w|load_w\nFront desk|5|3\nWaiting area|12|9")
	}},
}
