package main

import "lineaudit/samples/typed"

// soundPanels draws up the wall: attenuators, their boxes, what each serves, which have a priority relay.
var soundPanels = []typed.Case{
	{File: "panels/Control panel schedule Merewater.xlsx", Kind: "schedule", Book: sheets("Controls", `
CONTROL PANEL SCHEDULE - MEREWATER ROWING CENTRE - JOB 7140
Ref|Panel location|Attenuator|Rating (W)|Box|Gang|Priority relay|Serves|Fed by
WA1|Ergo room door|10-step, 3 dB|50|47 mm|1|24 V override|Ergo room|PA1
WA2|Changing corridor|10-step, 3 dB|20|35 mm|1|24 V override|Changing M and Changing W|PA1
WA3|Trophy museum|stepless|10|35 mm|2 (with source selector)|none|Trophy museum|PA2
WA4|Paddle store|10-step, 3 dB|10|35 mm|1|24 V override|not used
`, "Loudspeakers", `
Area|Type|Number off|Tapped at|W
Ergo room|cabinet|6|6|36
Changing M|ceiling|4|3|12
Changing W|ceiling|4|3|12
Trophy museum|ceiling|5|1.5|7.5
Landing|horn|4|15|60
`, "Amps", `
Amplifier|Power|System|Feeds
PA1|120 W|100 V|Ergo room, Changing M, Changing W
PA2|120 W|100 V|Trophy museum, Landing
`), Truth: func(t *typed.Truth) {
		t.Is("7140", "Merewater Rowing Centre", "controls by what they serve, two areas at one; an unused one; amplifiers by what they feed")
		t.Speakers("tap_v=100; line_v=100; sheet=Loudspeakers", `
rows|zone|model|count|tap_w|amplifier|control
2|Ergo room|cabinet|6|6|PA1|WA1
3|Changing M|ceiling|4|3|PA1|WA2
4|Changing W|ceiling|4|3|PA1|WA2
5|Trophy museum|ceiling|5|1.5|PA2|WA3
6|Landing|horn|4|15|PA2|
`)
		t.Channels("line_v=100; rated_w=120", "amplifier|load_w\nPA1|60\nPA2|67.5")
		t.Amplifiers("rated_w=120", "amplifier|load_w\nPA1|60\nPA2|67.5")
		t.Controls("", "control|rated_w|load_w\nWA1|50|36\nWA2|20|24\nWA3|10|7.5\nWA4|10|0")
	}},

	{File: "panels/Regelaars Plantage.csv", Kind: "schedule", Bytes: text(`
Regelaarlijst en luidsprekers Plantage Oudewater;;;;;;
Opdracht 3391;;;;;;
;;;;;;
Regelaar;Vermogen (W);Inbouwdoos;Noodoproeprelais;Ruimte;Luidsprekers;Instelling (W)
VR1;30;60 mm;24 V;Leeszaal;8;3
VR2;15;40 mm;24 V;Herbarium;3;3
VR3;15;40 mm;geen;Winkel;4;6
-;;;;Binnentuin;6;10
-;;;;Steiger;2;15
;;;;;;
Alles op een versterker van 240 W, 100 V;;;;;;
`), Truth: func(t *typed.Truth) {
		t.Is("3391", "Plantage Oudewater", "Dutch: the list of controls is the list of loudspeakers; a dash is no control")
		t.Speakers("tap_v=100; line_v=100", `
rows|room|count|tap_w|control
5|Leeszaal|8|3|VR1
6|Herbarium|3|3|VR2
7|Winkel|4|6|VR3
8|Binnentuin|6|10|
9|Steiger|2|15|
`)
		t.Channels("line_v=100", "rated_w|load_w\n240|147")
		t.Amplifiers("note=unnamed", "rated_w|load_w\n240|147")
		t.Controls("", "control|zone|rated_w|load_w\nVR1|Leeszaal|30|24\nVR2|Herbarium|15|9\nVR3|Winkel|15|24")
	}},

	{File: "panels/Tableau des réglages Planétarium de l'Ouche.xlsx", Kind: "schedule", Book: sheets("Réglages", `
Planétarium de l'Ouche - marché 27-19
Tableau des atténuateurs et des haut-parleurs

Local|HP|Nbre|Prise|Atténuateur|Puissance att.|Pot d'encastrement|Relais prioritaire|Ligne|Ampli
Hall|plafonnier|8|3 W|-||||L1|AMPLI 1
Boutique du musée|plafonnier|4|3 W|VA1|15 W|prof. 50|24 V|L1|AMPLI 1
Salle d'exposition|plafonnier|6|6 W|VA2|30 W|prof. 50|24 V|L1|AMPLI 1
Coupole|colonne|6|20 W|-||||L2|AMPLI 2
Terrasse d'observation|projecteur|4|10 W|VA3|50 W|étanche|24 V|L2|AMPLI 2
Amplis : AMPLI 1 = 120 W, AMPLI 2 = 240 W, lignes 100 V. La coupole n'a pas de réglage local.
`), Truth: func(t *typed.Truth) {
		t.Is("27-19", "Planétarium de l'Ouche", "French: controls with ratings, boxes and relays beside loudspeakers; ratings of amplifiers with equals signs")
		t.Speakers("tap_v=100; line_v=100; sheet=Réglages", `
rows|room|model|count|tap_w|amplifier|control
5|Hall|plafonnier|8|3|AMPLI 1|
6|Boutique du musée|plafonnier|4|3|AMPLI 1|VA1
7|Salle d'exposition|plafonnier|6|6|AMPLI 1|VA2
8|Coupole|colonne|6|20|AMPLI 2|
9|Terrasse d'observation|projecteur|4|10|AMPLI 2|VA3
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nAMPLI 1|120|72\nAMPLI 2|240|160")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAMPLI 1|120|72\nAMPLI 2|240|160")
		t.Controls("", "control|zone|rated_w|load_w\nVA1|Boutique du musée|15|12\nVA2|Salle d'exposition|30|36\nVA3|Terrasse d'observation|50|40")
	}},

	{File: "panels/Notes on Swanmere taps.csv", Kind: "schedule", Bytes: text(`
Swanmere Ice Pavilion,,,,
Speaker count per tap setting,,,,
,,,,
Area,@1.25W,@2.5W,@5W,@10W
Rink boards,,,4,12
Seating,,8,8,
Skate museum,6,2,,
Ticket store,4,,,
,,,,
Rink boards and seating are on amp output 1 (250 W), the rest on output 2 (60 W). 70 volt system.,,,,
The skate museum is behind a 10 watt wall attenuator marked SM.,,,,
`), Truth: func(t *typed.Truth) {
		t.Is("", "Swanmere Ice Pavilion", "counts by tap; outputs and the control told in sentences alone")
		t.Speakers("tap_v=70.7; line_v=70.7", `
rows|zone|count|tap_w|channel|control
5|Rink boards|4|5|1|
5|Rink boards|12|10|1|
6|Seating|8|2.5|1|
6|Seating|8|5|1|
7|Skate museum|6|1.25|2|SM
7|Skate museum|2|2.5|2|SM
8|Ticket store|4|1.25|2|
`)
		t.Channels("line_v=70.7", "channel|rated_w|load_w\n1|250|200\n2|60|17.5")
		t.Controls("", "control|zone|rated_w|load_w\nSM|Skate museum|10|12.5")
	}},
}
