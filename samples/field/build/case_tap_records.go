package main

import "lineaudit/samples/typed"

// tapRecords is a technician who records a visit: tap found, tap set, impedance, circuit tested.
var tapRecords = []typed.Case{
	{File: "visits/CR-0391 Thornby Pool.xlsx", Kind: "schedule", Book: sheets("Record", `
COMMISSIONING RECORD CR-0391||||||||||
Site|Thornby Pool||Engineer|R.D.||Date|12/03/2023
System|100 V line, amplifiers 1 and 2, 120 W each
|
Amp|Cct|Area served|L/S type|No.|Tap found (W)|Tap set (W)|Load (W)|Z meas (ohm)|Wall control|Cct tested
1|1|Main pool|Horn|8|7.5|10|80|122|none|OK
1|2|Fun pool|Horn|4|7.5|7.5|30|330|none|OK
2|1|Foyer|Ceiling|6|6|3|18|548|Foyer 25 W|OK
2|1|Corridor to changing|Ceiling|5|3|3|15|660|Foyer 25 W|OK
2|2|Fitness suite|Ceiling|8|6|6|48|205|Fitness 50 W|OK, relay proved
2|2|Fitness office|Ceiling|1|3|1.5|1.5|6650|Office 6 W|OK
2|2|Sauna|Ceiling|1|3|-|-|o/c|none|FAIL - speaker removed, to be replaced
|
Amp 1 total||||||110
Amp 2 total||||||82.5
Remarks: fitness control is bypassed by the fire relay, foyer control is not.
`), Truth: func(t *typed.Truth) {
		t.Is("CR-0391", "Thornby Pool", "taps found and set; impedance; controls called by places; circuits counted anew for each amplifier; one loudspeaker removed")
		t.Speakers("tap_v=100; line_v=100; sheet=Record", `
rows|amplifier|channel|room|model|count|tap_w|control|status
6|1|1|Main pool|Horn|8|10||installed
7|1|2|Fun pool|Horn|4|7.5||installed
8|2|1|Foyer|Ceiling|6|3|Foyer|installed
9|2|1|Corridor to changing|Ceiling|5|3|Foyer|installed
10|2|2|Fitness suite|Ceiling|8|6|Fitness|installed
11|2|2|Fitness office|Ceiling|1|1.5|Office|installed
`)
		t.Channels("line_v=100", "amplifier|channel|load_w\n1|1|80\n1|2|30\n2|1|33\n2|2|49.5")
		t.Amplifiers("", "amplifier|rated_w|load_w\n1|120|110\n2|120|82.5")
		t.Controls("", "control|rated_w|load_w\nFoyer|25|33\nFitness|50|48\nOffice|6|1.5")
		t.Left("Record", "12|removed|\n14|total|\n15|total|\n16|note|")
	}},

	{File: "visits/CR-0402 Glasshouse retap.csv", Kind: "schedule", Bytes: text(`
Commissioning record CR-0402→Linwood Glasshouse→→→→→→→
Amplifier: PA-A 240 W / 100 V→→→→→→→→
→→→→→→→→
Tag→Location→Tap found→Tap set→dB(A) before→dB(A) after→Attenuator→Polarity→Remarks
S1→Temperate house→10 W→15 W→72→74→→ok→
S2→Temperate house→10 W→15 W→71→74→→ok→
S3→Temperate house→10 W→15 W→72→74→→ok→
S4→Temperate house→open→15 W→-→74→→ok→tail re-made
S5→Propagation→3 W→1.5 W→74→70→ATT-P (6 W)→ok→staff complaint
S6→Propagation→3 W→1.5 W→74→70→ATT-P (6 W)→ok→
S7→Shop→6 W→6 W→70→70→ATT-S (12 W)→rev→phase corrected
S8→Shop→6 W→6 W→70→70→ATT-S (12 W)→ok→
S9→Seed store→3 W→off→68→-→→ok→disconnected at client's wish
→→→→→→→→
Load before 51 W, load after 75 W→→→→→→→→
`), Truth: func(t *typed.Truth) {
		t.Is("CR-0402", "Linwood Glasshouse", "found and set taps with sound levels; one switched off; tabs")
		t.Speakers("tap_v=100; line_v=100; amplifier=PA-A", `
rows|tag|room|tap_w|control
5..8|S1..|Temperate house|15|
9..10|S5..|Propagation|1.5|ATT-P
11..12|S7..|Shop|6|ATT-S
`)
		t.Channels("line_v=100; amplifier=PA-A", "rated_w|load_w\n240|75")
		t.Amplifiers("", "amplifier|rated_w|load_w\nPA-A|240|75")
		t.Controls("", "control|rated_w|load_w\nATT-P|6|3\nATT-S|12|12")
		t.Left("", "13|off|disconnected\n15|note|")
	}},

	{File: "visits/CR-0417 Eastwater Rink (70V).ods", Kind: "schedule", Saved: "ods", Book: sheets("Circuit tests", `
Eastwater Rink - CR-0417 - circuit tests after amplifier change
The new amplifier DA1 gives 70 V (4 x 150 W). The speakers stay, their taps are marked for 100 V.

Ch|Circuit|Speakers|Tap marked 100 V|Sum marked W|Sum at 70 V|Volume control|Cable|Length|Insulation|Result
1|Ice north|6|30 W|180 W|90 W|none|2.5 mm²|80 m|>100 M|pass
1|Ice south|6|15 W|90 W|45 W|none|2.5 mm²|95 m|>100 M|pass
2|Stand|8|15 W|120 W|60 W|none|2.5 mm²|60 m|>100 M|pass
3|Shop|4|6 W|24 W|12 W|VC1 (25 W)|1.5 mm²|40 m|>100 M|pass
3|Meeting room store|2|3 W|6 W|3 W|VC2 (10 W)|1.5 mm²|45 m|50 M|pass
4|spare||||||||
|||||210 W
`), Truth: func(t *typed.Truth) {
		t.Is("CR-0417", "Eastwater Rink", "100 V taps on a 70 V amplifier, both sums given; typed units in cells; a spare channel")
		t.Speakers("tap_v=100; line_v=70.7; sheet=Circuit tests; amplifier=DA1", `
rows|zone|channel|count|tap_w|control
5|Ice north|1|6|30|
6|Ice south|1|6|15|
7|Stand|2|8|15|
8|Shop|3|4|6|VC1
9|Meeting room store|3|2|3|VC2
`)
		t.Channels("line_v=70.7; rated_w=150; amplifier=DA1", "channel|load_w\n1|135\n2|60\n3|15\n4|0")
		t.Amplifiers("", "amplifier|rated_w|load_w\nDA1|600|210")
		t.Controls("", "control|rated_w|load_w\nVC1|25|12\nVC2|10|3")
		t.Lines("note=one length a circuit", "zone|length_m|area_mm2\nIce north|80|2.5\nIce south|95|2.5\nStand|60|2.5\nShop|40|1.5\nMeeting room store|45|1.5")
		t.Left("Circuit tests", "10|spare|\n11|total|")
	}},
}
