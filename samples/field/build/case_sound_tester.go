package main

import "lineaudit/samples/typed"

// soundTester is a commissioning engineer: one sheet a system, what the bridge showed at 1 kHz beside what the drawing promised.
var soundTester = []typed.Case{
	{File: "tests/C-2081 Wrackham Lock.xlsx", Kind: "schedule", Book: sheets("Zone test", `
ZONE TEST SHEET|||||||||
Site:|Wrackham Lock|||Job no.:|C-2081
Amplifier:|PA-1, 4 x 120 W, 100 V line|||Tested:|3 May 2019
Method:|cables lifted at the rack, impedance bridge at 1 kHz, insulation at 500 V d.c.

Zone|Output|Qty|Loudspeaker|Tap|Design load W|Z calc ohm|Z meas 1 kHz ohm|Power at 100 V from Z meas|Insulation Mohm|Polarity|Result
Lock island|1|8|Horn HR-15|10 W|80|125|119|84|>200|ok|pass
Lock cottage shop|2|6|Ceiling CT-6|3 W|18|556|540|18.5|>200|ok|pass
Lock cottage map room|2|4|Ceiling CT-6|6 W|24|417|409|24.4|>200|ok|pass
Lower pier|3|4|Column CO-20|20 W|80|125|131|76.3|85|ok|pass, re-test after winter
Upper pier|3|2|Column CO-20|10 W|20|500|488|20.5|120|ok|pass
Tool store|4|1|Cabinet WB-10|10 W|10|1000|5|||fail|short in the field cable, to be re-pulled
TOTAL|||25 loudspeakers||232
`), Truth: func(t *typed.Truth) {
		t.Is("C-2081", "Wrackham Lock", "test columns: impedance calculated, measured, and watts worked back from it")
		t.Speakers("tap_v=100; line_v=100; sheet=Zone test; amplifier=PA-1", `
rows|zone|channel|count|model|tap_w
7|Lock island|1|8|Horn HR-15|10
8|Lock cottage shop|2|6|Ceiling CT-6|3
9|Lock cottage map room|2|4|Ceiling CT-6|6
10|Lower pier|3|4|Column CO-20|20
11|Upper pier|3|2|Column CO-20|10
12|Tool store|4|1|Cabinet WB-10|10
`)
		t.Channels("amplifier=PA-1; line_v=100; rated_w=120", "channel|load_w\n1|80\n2|42\n3|100\n4|10")
		t.Amplifiers("", "amplifier|rated_w|load_w\nPA-1|480|232")
		t.Left("Zone test", "13|total|")
	}},

	{File: "tests/C-2096 Elderwick Pier.ods", Kind: "schedule", Saved: "ods", Book: sheets("As built", `
Elderwick Pier - as-built taps and line test|||||||||
Job C-2096 - issue B - 70 V distribution throughout

Line|Amp / ch|Area|Tag|Type|Design tap|As-built tap|Vol. control|Rated|Line Z at 1 kHz
L1|A1 / 1|Pier head|S01|horn|15|30||
L1|A1 / 1|Pier head|S02|horn|15|30
L1|A1 / 1|Pier walk|S03|horn|15|15
L1|A1 / 1|Pier walk|S04|horn|15|15||||55.1
L2|A1 / 2|Museum store|S05|ceiling|4|2|VC-1|25 W
L2|A1 / 2|Museum store|S06|ceiling|4|2|VC-1|25 W
L2|A1 / 2|Museum store|S07|ceiling|4|4|VC-1|25 W
L2|A1 / 2|Kiosk|S08|ceiling|4|4|VC-2|10 W
L2|A1 / 2|Kiosk|S09|ceiling|4|8|VC-2|10 W||
L2|A1 / 2|Ticket hall|S10|column|16|16||||136

Amplifier A1: 2 x 150 W. The as-built column is what was found and left; the design column is from drawing E-14 and no longer holds.
`), Truth: func(t *typed.Truth) {
		t.Is("C-2096", "Elderwick Pier", "design and as-built taps in columns; a sentence says which holds; 70 V")
		t.Revision("B", false)
		t.Speakers("tap_v=70.7; line_v=70.7; sheet=As built; amplifier=A1", `
rows|channel|room|tag|model|tap_w|control
5..6|1|Pier head|S01..|horn|30|
7..8|1|Pier walk|S03..|horn|15|
9..10|2|Museum store|S05..|ceiling|2|VC-1
11|2|Museum store|S07|ceiling|4|VC-1
12|2|Kiosk|S08|ceiling|4|VC-2
13|2|Kiosk|S09|ceiling|8|VC-2
14|2|Ticket hall|S10|column|16|
`)
		t.Channels("amplifier=A1; line_v=70.7; rated_w=150", "channel|load_w\n1|90\n2|36")
		t.Amplifiers("", "amplifier|rated_w|load_w\nA1|300|126")
		t.Controls("", "control|zone|rated_w|load_w\nVC-1|Museum store|25|8\nVC-2|Kiosk|10|12")
	}},

	{File: "tests/Messprotokoll Sternwarte Hohenbruch.xls", Kind: "schedule", Saved: "xls", Book: sheets("Protokoll", `
Messprotokoll ELA - Sternwarte Hohenbruch|||||||||
Auftrag 24-0117|||Messgerät: Impedanzmesser 1 kHz|||Datum 11.06.2024

Kreis|Verstärker|Ausgang|Bereich|Anzahl|Typ|Leistung je LS [W]|Summe [W]|Z soll [Ω]|Z ist [Ω]|R Schleife [Ω]|Bemerkung
K1|VS1|1|Kuppelsaal|6|Wandlautsprecher|6|36|277,8|281|1,2
K2|VS1|2|Werkstatt|2|Wandlautsprecher|10|20|500|512|0,9
K2|VS1|2|Herbarium|8|Deckeneinbau|3|24|416,7|408|0,9|über Regler R1 (30 W)
K3|VS2|1|Außenterrasse|4|Druckkammer|15|60|166,7|160|3,4
K4|VS2|2|Museumsdepot|10|Deckeneinbau|1,5|15|666,7|659|1,1

VS1 und VS2 je 2 x 60 W an 100 V.
`), Truth: func(t *typed.Truth) {
		t.Is("24-0117", "Sternwarte Hohenbruch", "German test sheet: impedance wanted and found, a control in a remark")
		t.Speakers("tap_v=100; line_v=100; sheet=Protokoll", `
rows|amplifier|channel|zone|count|model|tap_w|control
5|VS1|1|Kuppelsaal|6|Wandlautsprecher|6|
6|VS1|2|Werkstatt|2|Wandlautsprecher|10|
7|VS1|2|Herbarium|8|Deckeneinbau|3|R1
8|VS2|1|Außenterrasse|4|Druckkammer|15|
9|VS2|2|Museumsdepot|10|Deckeneinbau|1.5|
`)
		t.Channels("line_v=100; rated_w=60", "amplifier|channel|load_w\nVS1|1|36\nVS1|2|44\nVS2|1|60\nVS2|2|15")
		t.Amplifiers("", "amplifier|rated_w|load_w\nVS1|120|80\nVS2|120|75")
		t.Controls("", "control|zone|rated_w|load_w\nR1|Herbarium|30|24")
	}},

	{File: "tests/C-2113 Withy Rink before and after.csv", Kind: "schedule", Bytes: text(`
Withy Ice Rink,,,,,,,,
Job C-2113 re-tap visit 9 Jan 2020,,,,,,,,
Rack amp is a single 250 W / 100 V unit,,,,,,,,
,,,,,,,,
Spk,Location,Found at (W),SPL found dBA,Left at (W),SPL left dBA,Attenuator,Atten. rating (W),Remark
1,Ice pad N,20,88,10,85,,,too loud at the bench
2,Ice pad E,20,88,10,85,,,
3,Ice pad S,20,87,20,88,,,
4,Ice pad W,10,84,20,87,,,
5,Skate hire,6,79,6,79,AT1,15,
6,Skate hire,6,79,6,79,AT1,15,
7,Skate hire,6,78,6,79,AT1,15,over the rating - bigger unit quoted
8,First aid,3,72,1.5,70,AT2,6,
,,,,,,,,
"Amplifier load before: 91 W, after: 79.5 W",,,,,,,,
`), Truth: func(t *typed.Truth) {
		t.Is("C-2113", "Withy Ice Rink", "found and left taps with sound levels between; a sum in a sentence")
		t.Speakers("tap_v=100; line_v=100", `
rows|tag|room|tap_w|control
6|1|Ice pad N|10|
7|2|Ice pad E|10|
8|3|Ice pad S|20|
9|4|Ice pad W|20|
10..12|5..|Skate hire|6|AT1
13|8|First aid|1.5|AT2
`)
		t.Channels("line_v=100", "rated_w|load_w\n250|79.5")
		t.Amplifiers("note=unnamed", "rated_w|load_w\n250|79.5")
		t.Controls("", "control|zone|rated_w|load_w\nAT1|Skate hire|15|18\nAT2|First aid|6|1.5")
	}},
}
