package main

import "lineaudit/samples/typed"

// soundIntegrator is a system integrator: a rack elevation first, then where each output goes.
var soundIntegrator = []typed.Case{
	{File: "integrator/SI-330 Frostholm rack and lines.xlsx", Kind: "schedule", Book: sheets("Rack ER-1", `
Frostholm Ice Rinks - rack ER-1 elevation (front)|||||
Job SI-330

U|Unit|Device|Outputs|Power per output|Mains (VA)|Heat (BTU/h)
42-41||blank
40|MX-1|zone mixer 8x8|-|-|40|120
38-37|PA-1|amplifier|2|240 W|900|1020
36-35|PA-2|amplifier|2|240 W|900|1020
33|PA-3|amplifier|4|60 W|600|680
30|MN-1|monitor panel|-|-|10|30
1|PS-1|mains distribution
`, "Line plan", `
Line plan - all outputs 100 V

Output|Line|Area|Loudspeakers|Watts total|Cable|Metres
PA-1/1|L01|Rink 1 east|8 x 20 W|160|2 x 4 mm2|210
PA-1/2|L02|Rink 1 west|8 x 20 W|160|2 x 4 mm2|235
PA-2/1|L03|Rink 2|10 x 15 W|150|2 x 4 mm2|180
PA-2/2|spare
PA-3/1|L04|Skate store|4 x 5 W|20|2 x 1.5 mm2|60
PA-3/2|L05|Changing rooms|12 x 2.5 W|30|2 x 1.5 mm2|95
PA-3/3|L06|Museum of skates|6 x 5 W|30|2 x 1.5 mm2|70
PA-3/4|spare
`), Truth: func(t *typed.Truth) {
		t.Is("SI-330", "Frostholm Ice Rinks", "rack elevation by height units, line plan with counts and taps in one cell")
		t.Speakers("tap_v=100; line_v=100; sheet=Line plan", `
rows|amplifier|channel|zone|count|tap_w
4|PA-1|1|Rink 1 east|8|20
5|PA-1|2|Rink 1 west|8|20
6|PA-2|1|Rink 2|10|15
8|PA-3|1|Skate store|4|5
9|PA-3|2|Changing rooms|12|2.5
10|PA-3|3|Museum of skates|6|5
`)
		t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w
PA-1|1|240|160
PA-1|2|240|160
PA-2|1|240|150
PA-2|2|240|0
PA-3|1|60|20
PA-3|2|60|30
PA-3|3|60|30
PA-3|4|60|0
`)
		t.Amplifiers("", "amplifier|rated_w|load_w\nPA-1|480|320\nPA-2|480|150\nPA-3|240|80")
		t.Lines("", `
line|zone|length_m|area_mm2
L01|Rink 1 east|210|4
L02|Rink 1 west|235|4
L03|Rink 2|180|4
L04|Skate store|60|1.5
L05|Changing rooms|95|1.5
L06|Museum of skates|70|1.5
`)
		t.Left("Line plan", "7|note|spare output\n11|note|spare output")
	}},

	{File: "integrator/SI-344 Glasshouse Quarter.xlsx", Kind: "schedule", Book: sheets("Outputs", `
Glasshouse Quarter - SI-344|||||||
Amplifier rack in the seed bank. Amps 1 to 3 are two-channel, 2 x 200 W into 70 V. Amp 3 is bridged: 400 W mono.

Amp|Channel|Feeds|Speaker model|Qty|Tap|Load
1|A|Cactus house|PM-30|4|30W|120W
1|B|Orchid house|PM-30|3|15W|45W
2|A|Lily house|PM-30|5|30W|150W
2|B|Potting sheds|IC-8|10|5W|50W
3|bridged|Amphitheatre lawn|HN-60|6|60W|360W
4|A|Lecture room|FX-8, 8 ohm|2||
4|B|Lecture room|FX-8, 8 ohm|2||
Amp 4 is a low-impedance stereo amplifier for the lecture room, 2 x 150 W at 8 ohms. It is not part of the 70 V system.
`), Truth: func(t *typed.Truth) {
		t.Is("SI-344", "Glasshouse Quarter", "70 V, a bridged amplifier, and a low-impedance amplifier beside it, all told in sentences")
		t.Speakers("tap_v=70.7; line_v=70.7; sheet=Outputs", `
rows|amplifier|channel|zone|model|count|tap_w
5|1|A|Cactus house|PM-30|4|30
6|1|B|Orchid house|PM-30|3|15
7|2|A|Lily house|PM-30|5|30
8|2|B|Potting sheds|IC-8|10|5
9|3||Amphitheatre lawn|HN-60|6|60
`)
		t.Speakers("sheet=Outputs; low_ohm=8; count=2; amplifier=4", "rows|channel|zone|model\n10|A|Lecture room|FX-8\n11|B|Lecture room|FX-8")
		t.Channels("line_v=70.7; rated_w=200", "amplifier|channel|load_w\n1|A|120\n1|B|45\n2|A|150\n2|B|50")
		t.Channels("line_v=70.7", "amplifier|channel|rated_w|load_w\n3||400|360")
		t.Channels("rated_w=150; load_w=0", "amplifier|channel\n4|A\n4|B")
		t.Amplifiers("", "amplifier|rated_w|load_w\n1|400|165\n2|400|200\n3|400|360")
		t.Left("Outputs", "12|note|the low-impedance amplifier")
	}},

	{File: "integrator/SI-351 chained amps.csv", Kind: "schedule", Bytes: text(`
"Heronsgate Boathouses - job SI-351, amplifier chain",,,,,,,
"Rack at Boathouse 1. Amp M1 takes the microphone; M2 and M3 are boosters linked from its line output, each drives its own speakers",,,,,,,
,,,,,,,
Unit,Linked from,Power (W),Line (V),Building,Speakers,Qty,Tap each (W)
M1,mixer,120,100,Boathouse 1,cabinet,8,10
M1,,,,Boathouse 1 pontoon,horn,2,15
M2,M1 link out,120,100,Boathouse 2,cabinet,10,10
M3,M2 link out,240,100,Regatta bank,horn,12,15
M3,,,,Starter's hut,cabinet,1,5
`), Truth: func(t *typed.Truth) {
		t.Is("SI-351", "Heronsgate Boathouses", "boosters linked one from another: a signal link, not a load; power once an amplifier")
		t.Speakers("tap_v=100; line_v=100", `
rows|amplifier|room|model|count|tap_w
5|M1|Boathouse 1|cabinet|8|10
6|M1|Boathouse 1 pontoon|horn|2|15
7|M2|Boathouse 2|cabinet|10|10
8|M3|Regatta bank|horn|12|15
9|M3|Starter's hut|cabinet|1|5
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nM1|120|110\nM2|120|100\nM3|240|185")
		t.Amplifiers("", "amplifier|rated_w|load_w\nM1|120|110\nM2|120|100\nM3|240|185")
	}},

	{File: "integrator/Baie et lignes Jardin des Hautes-Brumes.ods", Kind: "schedule", Saved: "ods", Book: sheets("Baie", `
Jardin des Hautes-Brumes - Affaire 5107
Baie de sonorisation, vue de face

Position|Repère|Matériel|Sorties|Puissance par sortie
U30|AP1|Amplificateur|2|120 W
U28|AP2|Amplificateur|1|240 W
U26||Panneau plein
U24|SEL|Sélecteur de zones
`, "Lignes", `
Ligne|Ampli|Sortie|Zone|HP|Nb|Réglage|Charge|Atténuateur|Longueur|Section
L1|AP1|1|Serre froide|Projecteur|6|10 W|60 W||120 m|2,5 mm²
L2|AP1|2|Serre aux orchidées|Projecteur|4|5 W|20 W||85 m|1,5 mm²
L2|AP1|2|Herbier|Encastré|5|3 W|15 W|AT1 (20 W)||
L3|AP2|1|Allées|Chambre de compression|10|15 W|150 W||340 m|4 mm²
L3|AP2|1|Embarcadère|Chambre de compression|4|15 W|60 W|||
Lignes en 100 V. L'atténuateur AT1 est équipé d'un relais de priorité 24 V.
`), Truth: func(t *typed.Truth) {
		t.Is("5107", "Jardin des Hautes-Brumes", "French: rack and lines; rating of the control in brackets")
		t.Speakers("tap_v=100; line_v=100; sheet=Lignes", `
rows|amplifier|channel|zone|model|count|tap_w|control
2|AP1|1|Serre froide|Projecteur|6|10|
3|AP1|2|Serre aux orchidées|Projecteur|4|5|
4|AP1|2|Herbier|Encastré|5|3|AT1
5|AP2|1|Allées|Chambre de compression|10|15|
6|AP2|1|Embarcadère|Chambre de compression|4|15|
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nAP1|1|120|60\nAP1|2|120|35\nAP2|1|240|210")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAP1|240|95\nAP2|240|210")
		t.Controls("", "control|zone|rated_w|load_w\nAT1|Herbier|20|15")
		t.Lines("", "line|length_m|area_mm2\nL1|120|2.5\nL2|85|1.5\nL3|340|4")
	}},
}
