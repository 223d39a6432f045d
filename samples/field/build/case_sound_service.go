package main

import "lineaudit/samples/typed"

// soundService is a rental and service firm: reports of what was found and what was done.
var soundService = []typed.Case{
	{File: "service/SR-7731 Gullhaven Pier.xlsx", Kind: "schedule", Book: sheets("Report", `
SERVICE REPORT SR-7731||||||||
Site:|Gullhaven Pier Pavilion|||Visit:|17 October 2018|||
System:|100 V, one amplifier 240 W ("the pier amp"), all lines on its only output

No|Place|Device|Tap found|What was found|What was done|Tap now|Control
1|Pier entrance|horn|15 W|corroded lid|cleaned, lid replaced|15 W|
2|Pier entrance|horn|15 W|dead|replaced like for like|15 W|
3|Deck west|horn|30 W|distorting|re-tapped|15 W|
4|Deck west|horn|30 W|distorting|re-tapped|15 W|
5|Deck east|horn|30 W|ok|nothing|30 W|
6|Shell museum store|cabinet|6 W|hum|earth fault in gland cleared|6 W|VC1
7|Shell museum store|cabinet|6 W|ok|nothing|6 W|VC1
8|Shell museum store|cabinet|6 W|torn cone|taken out, not replaced||VC1
9|Shell museum|cabinet|10 W|ok|nothing|10 W|VC2
10|Shell museum|cabinet|10 W|ok|nothing|10 W|VC2

VC1 is an old 10 W unit, VC2 a 15 W one (burnt smell, knob very warm - 15 W is too small for 20 W).
`), Truth: func(t *typed.Truth) {
		t.Is("SR-7731", "Gullhaven Pier Pavilion", "tap found and tap now; one taken out, told in what was done")
		t.Speakers("tap_v=100; line_v=100; sheet=Report", `
rows|tag|room|model|tap_w|control
6..7|1..|Pier entrance|horn|15|
8..9|3..|Deck west|horn|15|
10|5|Deck east|horn|30|
11..12|6..|Shell museum store|cabinet|6|VC1
14..15|9..|Shell museum|cabinet|10|VC2
`)
		t.Speakers("tap_v=100; line_v=100; sheet=Report; status=removed", "rows|tag|room|model\n13|8|Shell museum store|cabinet")
		t.Channels("line_v=100", "rated_w|load_w\n240|122")
		t.Amplifiers("note=unnamed", "rated_w|load_w\n240|122")
		t.Controls("", "control|rated_w|load_w\nVC1|10|12\nVC2|15|20")
	}},

	{File: "service/SR-7790 Larkfield observatory.csv", Kind: "schedule", Bytes: text(`
Maintenance record,,,,,,,
Larkfield Observatory - contract 7790,,,,,,,
,,,,,,,
Zone,Loudspeakers,Tap each,Zone load,Amplifier,Amp rating,Condition,Action / advice
Dome gallery,6 ceiling,3 W,18 W,Amp 1,60 W,good,none
Lecture room,4 ceiling,6 W,24 W,Amp 1,60 W,two grilles loose,refixed
Car park,4 horn,15 W,60 W,Amp 2,120 W,one horn water-filled,drained and sealed
Instrument store,2 cabinet,6 W,12 W,Amp 2,120 W,good,none
,,,,,,,
The lecture room has a 30 W attenuator beside the door; it crackles and should be replaced at the next visit.,,,,,,,
Amp 1 and Amp 2 both drive 100 volt line.,,,,,,,
`), Truth: func(t *typed.Truth) {
		t.Is("7790", "Larkfield Observatory", "count and type in one cell; an unnamed control in a sentence of advice")
		t.Speakers("tap_v=100; line_v=100", `
rows|zone|count|model|tap_w|amplifier|note
5|Dome gallery|6|ceiling|3|Amp 1|
6|Lecture room|4|ceiling|6|Amp 1|unnamed control
7|Car park|4|horn|15|Amp 2|
8|Instrument store|2|cabinet|6|Amp 2|
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nAmp 1|60|42\nAmp 2|120|72")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAmp 1|60|42\nAmp 2|120|72")
		t.Controls("note=unnamed", "zone|rated_w|load_w\nLecture room|30|24")
	}},

	{File: "service/Wartungsbericht Eishalle Tannau.xlsx", Kind: "schedule", Book: sheets("Wartung 2022", `
Wartungsbericht Beschallungsanlage|||||||||
Objekt: Eishalle Tannau|||Servicevertrag SV-518|||Datum: 08.09.2022

Zone|Bereich|Lautsprecher|Stück|Leistungsanzapfung|Endstufe|Befund|Maßnahme|Ersatzteil|Std.
1|Eisfläche|Hornlautsprecher|8|20 W|E1|i. O.|-|-|0,5
1|Tribüne|Tonsäule|4|20 W|E1|1 Stück ohne Ton|Übertrager getauscht|1 Übertrager|1,5
2|Umkleiden|Deckenlautsprecher|12|3 W|E2|i. O.|-|-|0,5
2|Schlittschuhverleih|Deckenlautsprecher|4|3 W|E2|zu laut|Regler L1 (20 W) nachgerüstet|1 Regler|1
2|Museum|Deckenlautsprecher|6|1,5 W|E2|i. O.|-|-|0,5

Endstufe E1: 250 W / 100 V. Endstufe E2: 125 W / 100 V.
`), Truth: func(t *typed.Truth) {
		t.Is("SV-518", "Eishalle Tannau", "German maintenance: a control fitted, told in the measure taken")
		t.Speakers("tap_v=100; line_v=100; sheet=Wartung 2022", `
rows|zone|room|model|count|tap_w|amplifier|control
5|1|Eisfläche|Hornlautsprecher|8|20|E1|
6|1|Tribüne|Tonsäule|4|20|E1|
7|2|Umkleiden|Deckenlautsprecher|12|3|E2|
8|2|Schlittschuhverleih|Deckenlautsprecher|4|3|E2|L1
9|2|Museum|Deckenlautsprecher|6|1.5|E2|
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nE1|250|240\nE2|125|57")
		t.Amplifiers("", "amplifier|rated_w|load_w\nE1|250|240\nE2|125|57")
		t.Controls("", "control|rated_w|load_w\nL1|20|12")
	}},

	{File: "service/stock of drums.csv", Kind: "not-a-schedule", Bytes: text(`
Cable drums in store,,,
Drum,Cable,On drum (m),Reserved for
D1,2 x 2.5 mm2,310,Gullhaven
D2,2 x 1.5 mm2,95,
D3,2 x 4 mm2,500,Frostholm
D4,microphone cable,120,
`), Truth: func(t *typed.Truth) { t.Is("", "", "cable drums of a store") }},

	{File: "service/SR-7802 Mossgate.xlsx", Kind: "schedule", Book: sheets("Sheet1", `
Mossgate Botanical Gardens|||SR-7802
Visit report, background music and paging

Amplifier|Output|Zone|Qty|Speaker|Tap|Watts|Remarks
A (120 W)|1|Visitor centre|12|ceiling|3 W|36|
A (120 W)|1|Museum store|6|ceiling|3 W|18|via attenuator AT-2, rated 20 W
A (120 W)|1|Rose pavilion|4|cabinet|6 W|24|via attenuator AT-3, rated 20 W
B (250 W)|1|Rose walk|10|pole column|10 W|100|2 more planned for next year
B (250 W)|1|Fountain court|6|pole column|20 W|120|
B (250 W)|1|Bonsai yard|4|pole column|10 W|40|taken out of use, cut off at the joint box
Both amplifiers are 100 V.
`), Truth: func(t *typed.Truth) {
		t.Is("SR-7802", "Mossgate Botanical Gardens", "ratings in brackets behind the amplifier, controls in remarks, a zone disconnected for now")
		t.Speakers("tap_v=100; line_v=100; sheet=Sheet1; channel=1", `
rows|amplifier|zone|count|model|tap_w|control
5|A|Visitor centre|12|ceiling|3|
6|A|Museum store|6|ceiling|3|AT-2
7|A|Rose pavilion|4|cabinet|6|AT-3
8|B|Rose walk|10|pole column|10|
9|B|Fountain court|6|pole column|20|
`)
		t.Speakers("tap_v=100; line_v=100; sheet=Sheet1; channel=1; status=removed", "rows|amplifier|zone|count|model|tap_w\n10|B|Bonsai yard|4|pole column|10")
		t.Channels("line_v=100; channel=1", "amplifier|rated_w|load_w\nA|120|78\nB|250|220")
		t.Amplifiers("", "amplifier|rated_w|load_w\nA|120|78\nB|250|220")
		t.Controls("rated_w=20", "control|zone|load_w\nAT-2|Museum store|18\nAT-3|Rose pavilion|24")
	}},
}
