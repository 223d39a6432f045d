package main

import "lineaudit/samples/typed"

// coldFork are more lists of the American sites.
func coldFork() []typed.Case {
	return []typed.Case{
		{File: "Cold Fork Ice Center/27 51 16 speaker schedule.xlsx", Kind: "schedule", Book: book("E-601", `
COLD FORK ICE CENTER ADDITION||||||||||
PROJECT NO. 1322|||||DRAWN: TW||DATE: 6/4/2013||REV: 2|
SPEAKER SCHEDULE||||||||||
|LOCATION||SPEAKER||||AMPLIFIER|||
MARK|RM NO|ROOM|MFR TYPE|QTY|TAP (W)|TOTAL (W)|AMP|CH|WIRE|REV
SP1|A101|VESTIBULE|CLG-8|2|2.5|5|AMP-1|1|#16|
SP2|A102|LOBBY|CLG-8|10|5|50|AMP-1|1|#16|
SP3|A110|STUDIO -> MTG RM|CLG-8|4|2.5|10|AMP-1|2|#16|2
SP4|A112|SKATE RENTAL|CLG-8|3|5|15|AMP-1|2|#16|
SP5|A120|RINK EAST|ARR-12|6|40|240|AMP-2|1|#12|
SP6|A120|RINK WEST|ARR-12|6|40|240|AMP-2|2|#12|
SP7|A130|LOCKER 1|CLG-8|2|2.5|5|AMP-1|3|#16|
SP8|A131|LOCKER 2|CLG-8|2|2.5|5|AMP-1|3|#16|
SP9|A132|LOCKER 3|CLG-8|2|2.5|5|AMP-1|3|#16|
SP10|A140|COMPRESSOR RM|HRN|1|15|15|AMP-1|4|#16|2
SP11|A150|OFFICE|CLG-8|3|1.25|3.75|AMP-1|4|#16|
TOTALS||||41||593.75||||

NOTES:
1. ALL SPEAKERS 70.7V.
2. AMP-1: FOUR CHANNEL, 75 W/CH. AMP-2: TWO CHANNEL, 300 W/CH.
3. REV 2: ROOM RENAMED, COMPRESSOR RM TAP CHANGED FROM 7.5 W.
`, merged("B4:C4", "D4:G4", "H4:J4"), bold("A1:K5")), Truth: func(t *typed.Truth) {
			t.Is("1322", "Cold Fork Ice Center", "a consultant's sheet: merged group heads, title block, totals, numbered notes that hold voltage and ratings")
			t.Revision("2", false)
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=E-601", `
rows|tag|room|model|count|tap_w|amplifier|channel
6|SP1|VESTIBULE|CLG-8|2|2.5|AMP-1|1
7|SP2|LOBBY|CLG-8|10|5|AMP-1|1
8|SP3|STUDIO -> MTG RM|CLG-8|4|2.5|AMP-1|2
9|SP4|SKATE RENTAL|CLG-8|3|5|AMP-1|2
10|SP5|RINK EAST|ARR-12|6|40|AMP-2|1
11|SP6|RINK WEST|ARR-12|6|40|AMP-2|2
12|SP7|LOCKER 1|CLG-8|2|2.5|AMP-1|3
13|SP8|LOCKER 2|CLG-8|2|2.5|AMP-1|3
14|SP9|LOCKER 3|CLG-8|2|2.5|AMP-1|3
15|SP10|COMPRESSOR RM|HRN|1|15|AMP-1|4
16|SP11|OFFICE|CLG-8|3|1.25|AMP-1|4
`)
			t.Channels("line_v=70.7", `
amplifier|channel|rated_w|load_w
AMP-1|1|75|55
AMP-1|2|75|25
AMP-1|3|75|15
AMP-1|4|75|18.75
AMP-2|1|300|240
AMP-2|2|300|240
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
AMP-1|300|113.75
AMP-2|600|480
`)
			t.Left("E-601", "17|total|right")
		}},

		{File: "Bluestem/conservatory walkthrough.csv", Kind: "schedule", Bytes: plain(`
Conservatory speakers - walked 10/22/2016 by maintenance
Where,What,How many,Set at,Wired to,Working?
Palm court,8 inch in pole,6,10 W,amp 1 ch 1,yes
Desert room,rock speaker,3,15 W,amp 1 ch 1,yes
Fern grotto,rock speaker,2,15 W,amp 1 ch 2,1 dead
Orchid alcove,ceiling,4,5 W,amp 1 ch 2,yes
Ticket window,ceiling,1,1 W,amp 1 ch 2,yes
Propagation,horn,2,7.5 W,amp 2,yes
Bus stop,horn,1,30 W,amp 2,yes
Maint. shop,wall box,2,5 W,amp 2,yes
,,,,,
Amp 1 is the 2x120 at 70V in the closet,,,,,
Amp 2 is the old 60 W paging amp (70 V),,,,,
`), Truth: func(t *typed.Truth) {
			t.Is("", "Conservatory", "plain: a walk-through in everyday words; amplifiers in two sentences")
			t.Speakers("tap_v=70.7; line_v=70.7", `
rows|room|model|count|tap_w|amplifier|channel
3|Palm court|8 inch in pole|6|10|1|1
4|Desert room|rock speaker|3|15|1|1
5|Fern grotto|rock speaker|2|15|1|2
6|Orchid alcove|ceiling|4|5|1|2
7|Ticket window|ceiling|1|1|1|2
8|Propagation|horn|2|7.5|2|
9|Bus stop|horn|1|30|2|
10|Maint. shop|wall box|2|5|2|
`)
			t.Channels("line_v=70.7", `
amplifier|channel|rated_w|load_w|note
1|1|120|105|
1|2|120|51|the dead one still hangs on the line
2||60|55|
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
1|240|156
2|60|55
`)
		}},

		{File: "Otter Landing/by channel.xls", Kind: "schedule", Saved: "xls", Book: book("PA", `
OTTER LANDING BOATHOUSE
70V SPEAKERS BY AMPLIFIER CHANNEL

AMP 1 CH 1 - 125W
Location|Speaker|Qty|Tap W|Total
Boat bay 1|8" ceiling|4|5|20
Boat bay 2|8" ceiling|4|5|20
Erg room|Surface|4|7.5|30
||||70
AMP 1 CH 2 - 125W
Location|Speaker|Qty|Tap W|Total
Locker M|8" ceiling|3|2.5|7.5
Locker W|8" ceiling|3|2.5|7.5
Hall|8" ceiling|5|2.5|12.5
||||27.5
AMP 2 CH 1 - 60W
Location|Speaker|Qty|Tap W|Total
Dock A|Horn|2|15|30
Dock B|Horn|3|15|45
||||75
AMP 2 CH 2 - 60W
Location|Speaker|Qty|Tap W|Total
SPARE
`, bold("A4", "A10", "A16", "A21")), Truth: func(t *typed.Truth) {
			t.Is("", "Otter Landing Boathouse", "a table an output, whose title names amplifier, channel and rating; sums without a word; a spare output")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=PA", `
rows|room|model|count|tap_w|amplifier|channel
6|Boat bay 1|8" ceiling|4|5|AMP 1|1
7|Boat bay 2|8" ceiling|4|5|AMP 1|1
8|Erg room|Surface|4|7.5|AMP 1|1
12|Locker M|8" ceiling|3|2.5|AMP 1|2
13|Locker W|8" ceiling|3|2.5|AMP 1|2
14|Hall|8" ceiling|5|2.5|AMP 1|2
18|Dock A|Horn|2|15|AMP 2|1
19|Dock B|Horn|3|15|AMP 2|1
`)
			t.Channels("line_v=70.7", `
amplifier|channel|rated_w|load_w|note
AMP 1|1|125|70|
AMP 1|2|125|27.5|
AMP 2|1|60|75|over its rating
AMP 2|2|60|0|spare
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
AMP 1|250|97.5
AMP 2|120|75
`)
			t.Left("PA", "9|total|right\n11|header|repeated\n15|total|right\n17|header|repeated\n20|total|right\n22|header|repeated\n23|other|spare output")
		}},

		{File: "campus speakers, sheet per bldg.xlsx", Kind: "schedule", Book: book("Visitor Ctr", `
Bldg: Visitor Center|||||70V
Rm|Spkr|Qty|Tap|Amp/Ch|VC
Lobby|C8|6|2.5|VC-A/1|
Store|C8|4|2.5|VC-A/2|35W
Hall|C8|4|1.25|VC-A/1|
Sun deck|S5|2|10|VC-A/2|
`, bold("A2:F2"), and("Greenhouse", `
Bldg: Greenhouse|||||70V
Rm|Spkr|Qty|Tap|Amp/Ch|VC
Bay 1|S5|4|5|GH-A/1|
Bay 2|S5|4|5|GH-A/1|
Bay 3|S5|4|5|GH-A/2|
Head house|C8|2|2.5|GH-A/2|10W
`), and("Ice House", `
Bldg: Ice House|||||70V
Rm|Spkr|Qty|Tap|Amp/Ch|VC
Rink|H15|8|15|IH-A/1|
Warming room|C8|4|5|IH-A/2|35W
Ticket|C8|1|1.25|IH-A/2|
Machine rm|H15|1|7.5|IH-A/2|
`), and("Amps", `
Amp|Bldg|Ch|W/ch
VC-A|Visitor Ctr|2|60
GH-A|Greenhouse|2|60
IH-A|Ice House|2|120
`)), Truth: func(t *typed.Truth) {
			t.Is("", "", "plain: one sheet a building; controls told by their rating alone; amplifiers on a sheet of their own")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=Visitor Ctr; amplifier=VC-A", `
rows|room|model|count|tap_w|channel|control|note
3|Lobby|C8|6|2.5|1||
4|Store|C8|4|2.5|2||unnamed control of 35 W
5|Hall|C8|4|1.25|1||
6|Sun deck|S5|2|10|2||
`)
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=Greenhouse; amplifier=GH-A", `
rows|room|model|count|tap_w|channel|control|note
3|Bay 1|S5|4|5|1||
4|Bay 2|S5|4|5|1||
5|Bay 3|S5|4|5|2||
6|Head house|C8|2|2.5|2||unnamed control of 10 W
`)
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=Ice House; amplifier=IH-A", `
rows|room|model|count|tap_w|channel|control|note
3|Rink|H15|8|15|1||
4|Warming room|C8|4|5|2||unnamed control of 35 W
5|Ticket|C8|1|1.25|2||
6|Machine rm|H15|1|7.5|2||
`)
			t.Channels("line_v=70.7", `
amplifier|channel|rated_w|load_w
VC-A|1|60|20
VC-A|2|60|30
GH-A|1|60|40
GH-A|2|60|25
IH-A|1|120|120
IH-A|2|120|28.75
`)
			t.Controls("note=unnamed", `
zone|rated_w|load_w
Store|35|10
Head house|10|5
Warming room|35|20
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
VC-A|120|50
GH-A|120|65
IH-A|240|148.75
`)
		}},

		{File: "Quillby Planetarium/head end bid.xlsx", Kind: "schedule", Saved: "xlsx", Book: book("Bid", `
QUILLBY PLANETARIUM - SOUND REINFORCEMENT & PAGING BID
Bid no. 44-17
Item|Description|Qty|Unit|Unit $|Ext $
1|Ceiling speaker 8", 70V, tapped at 2.5W, zone 1 (exhibit level)|24|ea|85|2040
2|Ceiling speaker 8", 70V, tapped at 5W, zone 2 (lobby)|10|ea|85|850
3|Surface speaker, 70V, tapped at 10W, zone 3 (theater lobby)|6|ea|140|840
4|Paging horn, 70V, tapped at 15W, zone 4 (exterior)|4|ea|120|480
5|Volume control 35W, wall, zone 2|1|ea|60|60
6|Power amplifier 4 channel, 70V, 60W per channel (ch = zone)|1|ea|900|900
7|Speaker wire 16/2 plenum|2500|ft|0.35|875
8|Labor|40|hr|95|3800
|TOTAL||||9845
`, bold("A1", "A3:F3")), Truth: func(t *typed.Truth) {
			t.Is("44-17", "Quillby Planetarium", "a bid: tap and zone in the description, amplifier and control are items, wire in feet, hours")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=Bid", `
rows|zone|room|count|tap_w|channel|control|note
4|1|exhibit level|24|2.5|1||ch = zone
5|2|lobby|10|5|2||unnamed control of 35 W
6|3|theater lobby|6|10|3||
7|4|exterior|4|15|4||
`)
			t.Channels("line_v=70.7; rated_w=60", `
channel|load_w
1|60
2|50
3|60
4|60
`)
			t.Controls("note=unnamed", "zone|rated_w|load_w\n2|35|50")
			t.Amplifiers("", "rated_w|load_w|note\n240|230|unnamed")
			t.Left("Bid", "8|control|\n9|amplifier|\n10|cable|\n11|other|hours\n12|total|money")
		}},
	}
}
