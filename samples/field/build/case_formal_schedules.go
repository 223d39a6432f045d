package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// pelham is a consultant's schedule in one of its revisions.
func pelham(revision, shopTap, domeQty string) func() *excelize.File {
	return func() *excelize.File {
		p := typed.NewBook("Schedule")
		p.Put("A1", `
PELHAM DOWN PLANETARIUM
Public address: loudspeaker schedule
Document no.|4471-PA-201||Revision|`+revision+`
Job no.|4471||Status|For construction

Item|Room||Zone|Loudspeaker|||Amplifier||Attenuator|Notes
|No.|Name||Type|Qty|Tap W|Ref.|Ch.|Ref.
1|G.01|Foyer|PAZ-1|LS-A|8|3|PAA-1|1|ATT-1|1, 3
2|G.02|Shop|PAZ-1|LS-A|4|`+shopTap+`|PAA-1|1|ATT-2|1, 3
3|G.03|Cloakroom|PAZ-1|LS-A|2|1.5|PAA-1|1||1
4|G.04|Dome theatre|PAZ-2|LS-B|`+domeQty+`|15|PAA-1|2||2, 4
5|G.05|Dome plant|PAZ-3|LS-C|1|6|PAA-1|3||5
6|1.01|Gallery|PAZ-4|LS-A|6|6|PAA-1|4|ATT-3|1, 3
7|1.02|Library|PAZ-4|LS-A|4|1.5|PAA-1|4|ATT-4|1, 3
8|1.03|Learning room|PAZ-4|LS-A|4|3|PAA-1|4||8
`)
		p.Merge("B6:C6", "E6:G6", "H6:I6")
		p.Bold("A6:K7")
		n := p.Sheet("Notes")
		n.Put("A1", `
NOTES
1|LS-A: recessed ceiling loudspeaker, 165 mm, 100 V line, taps 6 / 3 / 1.5 W.
2|LS-B: column loudspeaker, 100 V line, taps 30 / 15 / 7.5 W.
3|Attenuators ATT-1 to ATT-3 are rated 40 W, ATT-4 12 W, all with 24 V d.c. emergency by-pass relay.
4|To be hung from the dome springing; co-ordinate with dome contractor.
5|LS-C: projector loudspeaker IP66, 100 V line, taps 12 / 6 W.
6|PAA-1: four channel amplifier, 4 x 125 W at 100 V, with battery standby.
7|All field cable 2 x 1.5 mm2 enhanced fire resisting, red.
8|Future; wire only, loudspeakers by others.
9|Do not scale.

ABBREVIATIONS
ATT|Attenuator
LS|Loudspeaker
PAA|Public address amplifier
PAZ|Public address zone
Ch.|Channel
IP|Ingress protection
W|Watts
V|Volts
d.c.|Direct current

REVISIONS
P01|14.03.22|First issue
P02|02.05.22|Shop tap and dome quantity revised
`)
		return p.File
	}
}

func pelhamTruth(revision string, old bool, shopTap, domeQty, shop, ch1, ch2, all string) func(*typed.Truth) {
	return func(t *typed.Truth) {
		t.Is("4471", "Pelham Down Planetarium", "two rows of headings; notes on another sheet rate attenuators and amplifier, one says future; abbreviations")
		t.Revision(revision, old)
		t.Speakers("tap_v=100; line_v=100; sheet=Schedule; amplifier=PAA-1", `
rows|zone|room|channel|model|count|tap_w|control|status
8|PAZ-1|Foyer|1|LS-A|8|3|ATT-1|installed
9|PAZ-1|Shop|1|LS-A|4|`+shopTap+`|ATT-2|installed
10|PAZ-1|Cloakroom|1|LS-A|2|1.5||installed
11|PAZ-2|Dome theatre|2|LS-B|`+domeQty+`|15||installed
12|PAZ-3|Dome plant|3|LS-C|1|6||installed
13|PAZ-4|Gallery|4|LS-A|6|6|ATT-3|installed
14|PAZ-4|Library|4|LS-A|4|1.5|ATT-4|installed
15|PAZ-4|Learning room|4|LS-A|4|3||future
`)
		t.Channels("line_v=100; amplifier=PAA-1; rated_w=125", "channel|load_w\n1|"+ch1+"\n2|"+ch2+"\n3|6\n4|42")
		t.Amplifiers("", "amplifier|rated_w|load_w\nPAA-1|500|"+all)
		t.Controls("", "control|zone|rated_w|load_w\nATT-1||40|24\nATT-2||40|"+shop+"\nATT-3||40|36\nATT-4||12|6")
	}
}

// formalSchedules is a consultant: document numbers, revisions, numbered notes, abbreviations.
var formalSchedules = []typed.Case{
	{File: "4471/4471-PA-201 P01.xlsx", Kind: "schedule", Book: pelham("P01", "3", "6"), Truth: pelhamTruth("P01", true, "3", "6", "12", "39", "90", "177")},
	{File: "4471/4471-PA-201 P02.xlsx", Kind: "schedule", Book: pelham("P02", "6", "8"), Truth: pelhamTruth("P02", false, "6", "8", "24", "51", "120", "219")},

	{File: "4490/4490-PA-301 C1.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Amplifiers")
		p.Put("A1", `
ASHCOMBE BOTANICAL GARDEN - PALM HOUSE AND GLASSHOUSES
Amplifier schedule|||||Job 4490|Rev. C1

Amplifier|Channel|Mode|Line voltage|Rated output (W)|Circuit|Serves
AMP-A|1-2|Bridged|100 V|400|C1|Palm house
AMP-A|3|Single|100 V|200|C2|Fern house, orchid house
AMP-A|4|Single|100 V|200|C3|Ticket office
AMP-B|1|Single|70 V|120|C4|Alpine house
AMP-B|2|Single|70 V|120|-|Spare
`)
		q := p.Sheet("Loudspeakers")
		q.Put("A1", `
ASHCOMBE BOTANICAL GARDEN - PALM HOUSE AND GLASSHOUSES
Loudspeaker schedule|||||||Job 4490|Rev. C1

Circuit|Location|Tag|Type|Tap (W)|Volume control|Rating (W)|Remarks
C1|Palm house, gallery|LS101-LS106|Projector|20
C1|Palm house, floor|LS107-LS114|Projector|20
C2|Fern house|LS201-LS204|Pendant|10|VC-201|60
C2|Orchid house|LS205-LS208|Pendant|5|VC-202|60
C3|Ticket office|LS301-LS302|Ceiling|6|VC-301|20|see note 2
C3|Ticket lobby|LS303-LS304|Ceiling|3|VC-301|20
C4|Alpine house|LS401-LS404|Pendant|8|||see note 3

Notes
1. Taps are for the voltage of the circuit that the loudspeaker hangs on.
2. VC-301 serves office and lobby.
3. The amplifier of the alpine house is kept from the former installation and gives 70 V.
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("4490", "Ashcombe Botanical Garden", "two amplifiers of different line voltage, a bridged pair, circuits join the sheets, ranges of tags")
		t.Revision("C1", false)
		t.Speakers("sheet=Loudspeakers", `
rows|room|tag|model|count|tap_w|control|amplifier|channel|tap_v|line_v
5|Palm house, gallery|LS101-LS106|Projector|6|20||AMP-A|1-2|100|100
6|Palm house, floor|LS107-LS114|Projector|8|20||AMP-A|1-2|100|100
7|Fern house|LS201-LS204|Pendant|4|10|VC-201|AMP-A|3|100|100
8|Orchid house|LS205-LS208|Pendant|4|5|VC-202|AMP-A|3|100|100
9|Ticket office|LS301-LS302|Ceiling|2|6|VC-301|AMP-A|4|100|100
10|Ticket lobby|LS303-LS304|Ceiling|2|3|VC-301|AMP-A|4|100|100
11|Alpine house|LS401-LS404|Pendant|4|8||AMP-B|1|70.7|70.7
`)
		t.Channels("", "amplifier|channel|line_v|rated_w|load_w\nAMP-A|1-2|100|400|280\nAMP-A|3|100|200|60\nAMP-A|4|100|200|18\nAMP-B|1|70.7|120|32\nAMP-B|2|70.7|120|0")
		t.Amplifiers("", "amplifier|load_w\nAMP-A|358\nAMP-B|32")
		t.Controls("", "control|rated_w|load_w\nVC-201|60|40\nVC-202|60|20\nVC-301|20|18")
		t.Left("Amplifiers", "9|spare|an output without a circuit")
	}},

	{File: "4502/4502 cable and loudspeaker schedule.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte("\ufeff" + typed.DOS(`
"Kestrel Point Observatory","","","","","","",""
"Cable schedule 4502-PA-401 rev B","","","","","","",""
"","","","","","","",""
"Cable","From","To","Cores","Size mm²","Length m","Zone",""
"PA-01","PA rack ch 1","LS-01","2","2.5","120","Telescope floor",""
"PA-02","PA rack ch 2","LS-05","2","1.5","45","Visitor centre",""
"PA-03","PA rack ch 3","LS-11","2","1.5","210","Car park",""
"","","","","","","",""
"Loudspeaker schedule 4502-PA-402 rev B","","","","","","",""
"","","","","","","",""
"Tag","Zone","Location","Type","Tap W","Cable","Attenuator","Attenuator W"
"LS-01 to LS-04","Telescope floor","Dome ring","Cabinet","10","PA-01","",""
"LS-05 to LS-08","Visitor centre","Hall","Ceiling","6","PA-02","AT-1","30"
"LS-09 to LS-10","Visitor centre","Desk","Ceiling","3","PA-02","AT-1","30"
"LS-11 to LS-13","Car park","Lamp posts","Horn","15","PA-03","",""
"LS-14","Car park","Barrier","Horn","15","PA-03","","not yet installed"
"","","","","","","",""
"PA rack: one amplifier, four channels of 60 W at 100 V. Channel 4 is spare.","","","","","","",""
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("4502", "Kestrel Point Observatory", "two tables in one text file; zones and cables join them; an amplifier in a sentence")
		t.Revision("B", false)
		t.Speakers("tap_v=100; line_v=100; amplifier=PA rack", `
rows|tag|zone|room|model|count|tap_w|control|channel|status
12|LS-01 to LS-04|Telescope floor|Dome ring|Cabinet|4|10||1|installed
13|LS-05 to LS-08|Visitor centre|Hall|Ceiling|4|6|AT-1|2|installed
14|LS-09 to LS-10|Visitor centre|Desk|Ceiling|2|3|AT-1|2|installed
15|LS-11 to LS-13|Car park|Lamp posts|Horn|3|15||3|installed
16|LS-14|Car park|Barrier|Horn|1|15||3|future
`)
		t.Channels("line_v=100; rated_w=60; amplifier=PA rack", "channel|load_w\n1|40\n2|30\n3|45\n4|0")
		t.Amplifiers("", "amplifier|rated_w|load_w\nPA rack|240|115")
		t.Controls("", "control|zone|rated_w|load_w\nAT-1|Visitor centre|30|30")
		t.Lines("", "line|zone|from|to|length_m|area_mm2\nPA-01|Telescope floor|PA rack ch 1|LS-01|120|2.5\nPA-02|Visitor centre|PA rack ch 2|LS-05|45|1.5\nPA-03|Car park|PA rack ch 3|LS-11|210|1.5")
	}},
}
