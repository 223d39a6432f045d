package main

import "lineaudit/samples/typed"

// soundConsultant writes loudspeaker schedules for tender: performance columns around the few that an electrician needs.
var soundConsultant = []typed.Case{
	{File: "consultant/LS schedule Thornmere Planetarium P3.xlsx", Kind: "schedule", Book: sheets("LS Schedule", `
THORNMERE PLANETARIUM - PUBLIC ADDRESS AND VOICE ALARM
Loudspeaker schedule - Project 1146 - Revision P3 - issued for tender

Ref|Room|Room name|Type|Description|Mounting height (m)|Bracket|Colour|IP|Max SPL @ 1 m (dB)|Coverage (deg)|Transformer setting|Line|Circuit|Ceiling area (m2)|Calculated SPL (dBA)
LS-101|0.01|Foyer|T1|165 mm ceiling|3.2|bayonet|RAL 9010|21|96|180|6W|100V|VA1-A|64|82
LS-102|0.01|Foyer|T1|165 mm ceiling|3.2|bayonet|RAL 9010|21|96|180|6W|100V|VA1-B|64|82
LS-103|0.01|Foyer|T1|165 mm ceiling|3.2|bayonet|RAL 9010|21|96|180|6W|100V|VA1-A|64|82
LS-104|0.02|Cloakroom|T1|165 mm ceiling|2.7|bayonet|RAL 9010|21|90|180|1.5W|100V|VA1-B|18|76
LS-105|0.03|Dome|T4|column|4.5|tilt & swivel|RAL 9005|44|108|90 x 20|30W|100V|VA2-A|310|88
LS-106|0.03|Dome|T4|column|4.5|tilt & swivel|RAL 9005|44|108|90 x 20|30W|100V|VA2-B|310|88
LS-107|0.03|Dome|T4|column|4.5|tilt & swivel|RAL 9005|44|108|90 x 20|30W|100V|VA2-A|310|88
LS-108|0.03|Dome|T4|column|4.5|tilt & swivel|RAL 9005|44|108|90 x 20|30W|100V|VA2-B|310|88
LS-109|1.01|Meteorite store|T2|surface cabinet|2.4|wall plate|RAL 9010|32|92|120|3W|100V|VA1-A|22|78
LS-110|1.02|Roof terrace|T5|horn|3.0|U-bracket|RAL 7035|66|118|60 x 40|15W|100V|VA1-B|90|85

Notes
1. Final tap settings to be confirmed at commissioning against the speech intelligibility survey.
2. Each circuit is fed by its own amplifier output of 125 W; the four outputs VA1-A, VA1-B, VA2-A, VA2-B are not to be paralleled.
3. RAL colours subject to sample approval.
`), Truth: func(t *typed.Truth) {
		t.Is("1146", "Thornmere Planetarium", "heights, colours, levels and angles around the tap; the rating of the outputs in a note")
		t.Revision("P3", false)
		t.Speakers("tap_v=100; line_v=100; sheet=LS Schedule", `
rows|tag|room|model|tap_w|channel
5|LS-101|Foyer|T1|6|VA1-A
6|LS-102|Foyer|T1|6|VA1-B
7|LS-103|Foyer|T1|6|VA1-A
8|LS-104|Cloakroom|T1|1.5|VA1-B
9|LS-105|Dome|T4|30|VA2-A
10|LS-106|Dome|T4|30|VA2-B
11|LS-107|Dome|T4|30|VA2-A
12|LS-108|Dome|T4|30|VA2-B
13|LS-109|Meteorite store|T2|3|VA1-A
14|LS-110|Roof terrace|T5|15|VA1-B
`)
		t.Channels("line_v=100; rated_w=125", "channel|load_w\nVA1-A|15\nVA1-B|22.5\nVA2-A|60\nVA2-B|60")
	}},

	{File: "consultant/Orangery loudspeakers.csv", Kind: "schedule", Bytes: text(`
Quince Hill Botanic Garden;;;;;;;;;;;;
Orangery and fern pit: loudspeaker schedule, project 1151;;;;;;;;;;;;
All loudspeakers 100 V line, tapped as shown;;;;;;;;;;;;
;;;;;;;;;;;;
Zone;Type;Qty;Tapping;Sensitivity (1W/1m);Calculated level dB(A);Ambient noise dB(A);Margin dB;Throw (m);Spacing (m);Fixing;Finish;Amplifier channel
Orangery;C1;6;7,5 W;91;78;60;18;6,5;4,0;pole clamp;RAL 6003;A1.1
Fern pit;C1;2;7,5 W;91;77;58;19;4,0;4,0;pole clamp;RAL 6003;A1.1
Seed herbarium;D2;4;2,5 W;88;70;42;28;2,5;3,0;plaster ring;RAL 9016;A1.2
Members' room;D2;3;2,5 W;88;70;44;26;2,5;3,0;plaster ring;RAL 9016;A1.2
Palm stove;C3;4;15 W;93;84;66;18;8,0;6,0;pole clamp;RAL 6003;A2.1
;;;;;;;;;;;;
Members' room and seed herbarium each have a wall volume control (VCM and VCH, both 10 W).;;;;;;;;;;;;
Amplifier channels A1.1 and A1.2 are 80 W, A2.1 is 120 W.;;;;;;;;;;;;
`), Truth: func(t *typed.Truth) {
		t.Is("1151", "Quince Hill Botanic Garden", "semicolons and decimal commas in English; controls and ratings told in sentences")
		t.Speakers("tap_v=100; line_v=100", `
rows|zone|model|count|tap_w|amplifier|channel|control
6|Orangery|C1|6|7.5|A1|1|
7|Fern pit|C1|2|7.5|A1|1|
8|Seed herbarium|D2|4|2.5|A1|2|VCH
9|Members' room|D2|3|2.5|A1|2|VCM
10|Palm stove|C3|4|15|A2|1|
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nA1|1|80|60\nA1|2|80|17.5\nA2|1|120|60")
		t.Controls("rated_w=10", "control|zone|load_w\nVCM|Members' room|7.5\nVCH|Seed herbarium|10")
	}},

	{File: "consultant/1160 Saltings Boathouse LS types.xlsx", Kind: "schedule", Book: sheets("Types", `
Project 1160 - Saltings Boathouse - loudspeaker types

Type|Description|Rated power|Taps at 100 V|Impedance at 100 V taps (ohm)|Dispersion|Weight kg|IP
H1|re-entrant horn|30 W|30/15/7.5|333 / 667 / 1333|70 deg|2.4|66
B1|two-way cabinet|20 W|20/10/5|500 / 1000 / 2000|120 deg|3.1|54
C1|ceiling|6 W|6/3/1.5|1667 / 3333 / 6667|180 deg|0.9|20
`, "Schedule", `
Saltings Boathouse - loudspeaker schedule|||||||
No.|Space|Type|Tap|Aim (pan/tilt)|Height AFFL|Zone|Remarks
1|Slipway|H1|15|0 / -15|4000|1|
2|Slipway|H1|15|20 / -15|4000|1|
3|Landing stage|H1|30|0 / -10|4500|1|
4|Boat store|B1|10|0 / -20|3500|2|
5|Boat store|B1|10|0 / -20|3500|2|
6|Boat store|B1|10|180 / -20|3500|2|
7|Oar room|B1|5|0 / -20|3000|2|
8|Changing|C1|3|-|2600|3|
9|Changing|C1|3|-|2600|3|
10|Club room|C1|1.5|-|2600|3|
11|Club room|C1|1.5|-|2600|3|
`, "Zones", `
Zone|Amplifier|Output|Amplifier power|Speech level at 4 kHz
1|AMP1|1|125 W|-
2|AMP1|2|125 W|-
3|AMP2|1|60 W|-
100 V line throughout
`), Truth: func(t *typed.Truth) {
		t.Is("1160", "Saltings Boathouse", "types, schedule and zones on three sheets; pan, tilt and heights in mm between")
		t.Speakers("tap_v=100; line_v=100; sheet=Schedule", `
rows|tag|room|zone|model|tap_w|amplifier|channel
3..4|1..|Slipway|1|H1|15|AMP1|1
5|3|Landing stage|1|H1|30|AMP1|1
6..8|4..|Boat store|2|B1|10|AMP1|2
9|7|Oar room|2|B1|5|AMP1|2
10..11|8..|Changing|3|C1|3|AMP2|1
12..13|10..|Club room|3|C1|1.5|AMP2|1
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nAMP1|1|125|60\nAMP1|2|125|35\nAMP2|1|60|9")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAMP1|250|95\nAMP2|60|9")
	}},

	{File: "consultant/Botanische tuin Zwanenwaard luidsprekerstaat.xlsx", Kind: "schedule", Book: sheets("Luidsprekerstaat", `
Luidsprekerstaat|||||||||||
Object: Botanische tuin Zwanenwaard|||||Werknr. 8812|||Blad 1 van 1

Ruimtenr.|Ruimte|Code|Aantal|Aftakking (W)|Lijn (V)|Geluidsdruk dB(A)|Openingshoek|Hoogte (m)|Kleur|Kabel|Lengte (m)|Versterker|Groep
K.01|Tropische kas|Z1|5|10|100|82|120|4,5|RAL 6009|2x2,5 mm²|140|V1|1
K.02|Woestijnkas|Z1|3|10|100|82|120|4,5|RAL 6009|2x2,5 mm²|90|V1|2
K.03|Kweekkas|Z2|4|5|100|78|140|3,5|RAL 9010|2x1,5 mm²|65|V1|2
M.01|Museumwinkel|P1|6|3|100|72|180|2,8|RAL 9010|2x1,5 mm²|40|V2|1
M.02|Zadenzaal|P1|4|3|100|72|180|2,8|RAL 9010|2x1,5 mm²|55|V2|1

V1: 2 groepen van 120 W. V2: 1 groep van 60 W.
In de zadenzaal een volumeregelaar (VR1), 15 W.
`), Truth: func(t *typed.Truth) {
		t.Is("8812", "Botanische tuin Zwanenwaard", "Dutch consultant: levels, angles, colours; cable in the row; ratings and the control in sentences")
		t.Speakers("tap_v=100; line_v=100; sheet=Luidsprekerstaat", `
rows|room|model|count|tap_w|amplifier|channel|control
5|Tropische kas|Z1|5|10|V1|1|
6|Woestijnkas|Z1|3|10|V1|2|
7|Kweekkas|Z2|4|5|V1|2|
8|Museumwinkel|P1|6|3|V2|1|
9|Zadenzaal|P1|4|3|V2|1|VR1
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nV1|1|120|50\nV1|2|120|50\nV2|1|60|30")
		t.Amplifiers("", "amplifier|rated_w|load_w\nV1|240|100\nV2|60|30")
		t.Controls("", "control|zone|rated_w|load_w\nVR1|Zadenzaal|15|12")
		t.Lines("", "zone|length_m|area_mm2\nTropische kas|140|2.5\nWoestijnkas|90|2.5\nKweekkas|65|1.5\nMuseumwinkel|40|1.5\nZadenzaal|55|1.5")
	}},
}
