package main

import "lineaudit/samples/typed"

// netherlands is an installer of sports halls: groups, counts with their kind in one cell.
func netherlands() []typed.Case {
	return []typed.Case{
		{File: "5521/geluidslijst.xlsx", Kind: "schedule", Book: sheets("Geluid", `
IJsbaan Waterhoek|||||Werknr. 5521
Geluidsinstallatie 100V|||||versie 3

groep|ruimte|luidsprekers|aftakking|totaal|volumeregelaar
1|ijsvloer|8 st. hoorn|20 W|160 W|
1|tribune|6 st. zuil|10 W|60 W|
2|kleedkamer 1|2 st. plafond|3 W|6 W|VR1
2|kleedkamer 2|2 st. plafond|3 W|6 W|VR2
2|kleedkamer 3|2 st. plafond|3 W|6 W|VR3
2|hal|6 st. plafond|6 W|36 W|
3|wedstrijdsecretariaat|1 st. plafond|3 W|3 W|VR4
3|fietsenstalling|2 st. hoorn|10 W|20 W|
`, "Versterker", `
groep|vermogen
1|250 W
2|100 W
3|50 W

volumeregelaars allemaal 12 W
`), Truth: func(t *typed.Truth) {
			t.Is("5521", "IJsbaan Waterhoek", "count and kind in one cell; groups are outputs, rated on another sheet; one rating for all controls")
			t.Revision("3", false)
			t.Speakers("tap_v=100; line_v=100; sheet=Geluid", `
rows|channel|room|model|count|tap_w|control
5|1|ijsvloer|hoorn|8|20|
6|1|tribune|zuil|6|10|
7|2|kleedkamer 1|plafond|2|3|VR1
8|2|kleedkamer 2|plafond|2|3|VR2
9|2|kleedkamer 3|plafond|2|3|VR3
10|2|hal|plafond|6|6|
11|3|wedstrijdsecretariaat|plafond|1|3|VR4
12|3|fietsenstalling|hoorn|2|10|
`)
			t.Channels("line_v=100", "channel|rated_w|load_w\n1|250|220\n2|100|54\n3|50|23")
			t.Amplifiers("note=unnamed", "rated_w|load_w\n400|297")
			t.Controls("rated_w=12", "control|load_w\nVR1|6\nVR2|6\nVR3|6\nVR4|3")
		}},

		{File: "5530/botenhuis.csv", Kind: "schedule", Bytes: text(`
Botenhuis Rietmeer→→→→
werknr. 5530, 100 volt, versterker V1 2 x 60 watt→→→→
nr→plek→watt→versterker→uitgang
1→steiger→15→V1→1
2→steiger→15→V1→1
3→loods→10→V1→1
4→loods→10→V1→1
5→kleedkamer→3→V1→2
6→kleedkamer→3→V1→2
7→leslokaal→6→V1→2
8→leslokaal→6→V1→2
9→reserve (in kast)→6→→
`), Truth: func(t *typed.Truth) {
			t.Is("5530", "Botenhuis Rietmeer", "tabs; job, voltage and amplifier in one sentence; a spare in the cupboard")
			t.Speakers("tap_v=100; line_v=100; amplifier=V1", `
rows|tag|room|tap_w|channel
4..5|1..|steiger|15|1
6..7|3..|loods|10|1
8..9|5..|kleedkamer|3|2
10..11|7..|leslokaal|6|2
`)
			t.Speakers("tap_v=100; line_v=100; status=spare", "rows|tag|tap_w\n12|9|6")
			t.Channels("line_v=100; amplifier=V1; rated_w=60", "channel|load_w\n1|50\n2|18")
			t.Amplifiers("", "amplifier|rated_w|load_w\nV1|120|68")
		}},
	}
}

// insurer is a surveyor: whole sentences, what was seen, what could not be.
func insurer() []typed.Case {
	return []typed.Case{
		{File: "7731/Schedule of loudspeakers.xlsx", Kind: "schedule", Book: sheets("Schedule", `
Survey reference: 7731/A
Premises: Thornmere Glasshouses
Surveyed 21 June 2021. Settings read from the transformer where accessible.

Item|Location|Description|Quantity|Setting read (W)|Fed from|Remarks
1|Entrance lodge|Flush ceiling loudspeaker|4|6|Amplifier 1 output 1|
2|Temperate house|Column loudspeaker|6|20|Amplifier 1 output 1|
3|Alpine house|Cabinet loudspeaker|4|10|Amplifier 1 output 2|
4|Lecture room|Flush ceiling loudspeaker|6|6|Amplifier 1 output 2|Attenuator marked 24 W
5|Propagation house|Horn loudspeaker|2|not accessible|Amplifier 2 output 1|
6|Car park|Horn loudspeaker|3|15|Amplifier 2 output 1|
7|Workshop|Horn loudspeaker|1|15|Amplifier 2 output 2|disconnected

Amplifier 1 rating plate: 2 x 150 W at 100 V
Amplifier 2 rating plate: 2 x 60 W at 100 V
`), Truth: func(t *typed.Truth) {
			t.Is("7731/A", "Thornmere Glasshouses", "a setting that could not be read; an attenuator without a name, over its mark; a disconnected horn")
			t.Speakers("tap_v=100; line_v=100; sheet=Schedule", `
rows|room|model|count|tap_w|amplifier|channel|note
6|Entrance lodge|Flush ceiling loudspeaker|4|6|1|1|
7|Temperate house|Column loudspeaker|6|20|1|1|
8|Alpine house|Cabinet loudspeaker|4|10|1|2|
9|Lecture room|Flush ceiling loudspeaker|6|6|1|2|unnamed control
10|Propagation house|Horn loudspeaker|2||2|1|
11|Car park|Horn loudspeaker|3|15|2|1|
`)
			t.Speakers("tap_v=100; line_v=100; sheet=Schedule; status=removed", "rows|room|model|count|tap_w|note\n12|Workshop|Horn loudspeaker|1|15|disconnected: draws nothing")
			t.Channels("line_v=100", "amplifier|channel|rated_w|load_w|load_min_w\n1|1|150|144|\n1|2|150|76|\n2|1|60||45\n2|2|60|0|")
			t.Amplifiers("", "amplifier|rated_w|load_w\n1|300|220\n2|120|")
			t.Controls("note=unnamed", "zone|rated_w|load_w\nLecture room|24|36")
			t.Asks("Schedule", "10|asked|the setting that could not be read")
		}},

		{File: "7731/Schedule of luminaires.xlsx", Kind: "not-a-schedule", Book: sheets("Schedule", `
Survey reference: 7731/C
Premises: Thornmere Glasshouses

Item|Location|Description|Quantity|Lamp (W)|Fed from|Remarks
1|Entrance lodge|Emergency bulkhead|4|8|Distribution board 1 way 3|
2|Temperate house|High-bay luminaire|6|150|Distribution board 1 way 4|
3|Lecture room|Recessed luminaire|12|36|Distribution board 2 way 1|Dimmer marked 500 W
4|Car park|Floodlight|3|70|Distribution board 2 way 2|

All circuits 230 V
`), Truth: func(t *typed.Truth) {
			t.Is("", "", "lamps in the same form as the loudspeakers")
		}},
	}
}
