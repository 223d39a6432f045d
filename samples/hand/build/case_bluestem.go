package main

import "lineaudit/samples/typed"

// bluestem are the lists of the American sites.
func bluestem() []typed.Case {
	return []typed.Case{
		{File: "Bluestem/Visitor Ctr SPKR SCHED.xlsx", Kind: "schedule", Book: book("SPKR SCHED", `
BLUESTEM BOTANICAL GARDEN - VISITOR CENTER||||||||
SPEAKER SCHEDULE (70V)||||||||
TAG|ROOM #|ROOM NAME|TYPE|QTY|TAP|ZONE|AMP-CH|VC
S-1|101|LOBBY|A|8|2.5W|1|1-1|
S-2|102|GIFT SHOP|A|4|2.5W|2|1-2|VC-2
S-3|103|CORRIDOR|A|6|1.25W|1|1-1|
S-4|104|RESTROOM M|A|2|1.25W|1|1-1|
S-5|105|RESTROOM W|A|2|1.25W|1|1-1|
S-6|110|CLASSROOM|B|4|5W|3|1-3|VC-3
S-7|111|CLASSROOM|B|4|5W|3|1-3|VC-4
S-8|120|AUDITORIUM LOBBY|A|6|2.5W|1|1-1|
S-9|EXT|ENTRY PLAZA|C|4|15W|4|1-4|
S-10|EXT|LOADING DOCK|C|1|30W|4|1-4|

TYPE A: 6" CEILING SPEAKER W/ 70V XFMR, BACK CAN AND TILE BRIDGE
TYPE B: 8" CEILING SPEAKER W/ 70V XFMR
TYPE C: PAGING HORN, WEATHERPROOF
AMP-1: 4 CH x 125W @ 70V
VC-2, VC-3, VC-4: 35W ATTENUATOR, 1-GANG
VERIFY ALL TAPS IN FIELD.
`, bold("A1:A2", "A3:I3"), merged("A1:I1", "A2:I2")), Truth: func(t *typed.Truth) {
			t.Is("", "Bluestem Botanical Garden", "plain: a consultant's schedule, type legend, amplifier and controls in lines below")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=SPKR SCHED; amplifier=1", `
rows|tag|zone|room|model|count|tap_w|control|channel
4|S-1|1|LOBBY|A|8|2.5||1
5|S-2|2|GIFT SHOP|A|4|2.5|VC-2|2
6|S-3|1|CORRIDOR|A|6|1.25||1
7|S-4|1|RESTROOM M|A|2|1.25||1
8|S-5|1|RESTROOM W|A|2|1.25||1
9|S-6|3|CLASSROOM|B|4|5|VC-3|3
10|S-7|3|CLASSROOM|B|4|5|VC-4|3
11|S-8|1|AUDITORIUM LOBBY|A|6|2.5||1
12|S-9|4|ENTRY PLAZA|C|4|15||4
13|S-10|4|LOADING DOCK|C|1|30||4
`)
			t.Channels("line_v=70.7; amplifier=1; rated_w=125", `
channel|load_w|note
1|47.5|20 + 7.5 + 2.5 + 2.5 + 15
2|10|
3|40|
4|90|
`)
			t.Controls("rated_w=35", `
control|zone|load_w
VC-2|2|10
VC-3|3|20
VC-4|3|20
`)
			t.Amplifiers("amplifier=1", "rated_w|load_w\n500|187.5")
		}},

		{File: "Cold Fork Ice Center/AMP RACK.xls", Kind: "schedule", Saved: "xls", Book: book("Rack", `
COLD FORK ICE CENTER|||||
AMPLIFIER RACK AR-1 LOAD SHEET|||||
JOB # 08-226|||||

AMPLIFIER|CH|RATED WATTS @70V|ZONE|CONNECTED LOAD|SPARE
A1|1|250|RINK 1 ICE|180|70
A1|2|250|RINK 1 BLEACHERS|200|50
A2|1|250|RINK 2 ICE|180|70
A2|2|250|LOCKER ROOMS|50|200
A3|1|100|LOBBY & PRO SHOP|60|40
`, bold("A1:A3", "A5:F5"), and("Zones", `
ZONE|SPEAKER|QTY|TAP|WATTS
RINK 1 ICE|15 in arena horn|6|30|180
RINK 1 BLEACHERS|Two-way box|20|10|200
RINK 2 ICE|15 in arena horn|6|30|180
LOCKER ROOMS|8 in ceiling|20|2.5|50
LOBBY & PRO SHOP|8 in ceiling|8|5|40
LOBBY & PRO SHOP|Wall box|2|10|20
TOTAL||62||670
`, bold("A1:E1"))), Truth: func(t *typed.Truth) {
			t.Is("08-226", "Cold Fork Ice Center", "plain: an amplifier load sheet and a zone list on two sheets, joined by the zone's name")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=Zones", `
rows|zone|model|count|tap_w|amplifier|channel
2|RINK 1 ICE|15 in arena horn|6|30|A1|1
3|RINK 1 BLEACHERS|Two-way box|20|10|A1|2
4|RINK 2 ICE|15 in arena horn|6|30|A2|1
5|LOCKER ROOMS|8 in ceiling|20|2.5|A2|2
6|LOBBY & PRO SHOP|8 in ceiling|8|5|A3|1
7|LOBBY & PRO SHOP|Wall box|2|10|A3|1
`)
			t.Channels("line_v=70.7", `
amplifier|channel|rated_w|load_w
A1|1|250|180
A1|2|250|200
A2|1|250|180
A2|2|250|50
A3|1|100|60
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
A1|500|380
A2|500|230
A3|100|60
`)
			t.Left("Zones", "8|total|right")
		}},

		{File: "Otter Landing/cable schedule.csv", Kind: "schedule", Bytes: plain(`
OTTER LANDING BOATHOUSE - SPEAKER CABLE SCHEDULE,,,,,,,
70V DISTRIBUTED SYSTEM - ALL CABLE STRANDED COPPER 2 COND,,,,,,,
,,,,,,,
Cable,From,To,Device at far end,Tap,AWG,Length (ft),Remarks
C-01,AMP OUT 1,SP-1,8in ceiling spkr,5W,16,65,
C-02,SP-1,SP-2,8in ceiling spkr,5W,16,20,
C-03,SP-2,SP-3,8in ceiling spkr,5W,16,20,
C-04,SP-3,SP-4,8in ceiling spkr,2.5W,16,35,
C-05,AMP OUT 2,SP-5,Horn,15W,14,140,in conduit to dock
C-06,SP-5,SP-6,Horn,15W,14,80,
C-07,SP-6,SP-7,Horn,15W,14,80,
C-08,AMP OUT 3,SP-8,Wall box,10W,16,50,
C-09,SP-8,SP-9,Wall box,10W,16,25,
,,,,,,,
"AMP: 3 output paging amp, 60 watts per output",,,,,,,
`), Truth: func(t *typed.Truth) {
			t.Is("", "Otter Landing Boathouse", "plain: the cable schedule is the loudspeaker schedule, each cable ends at one loudspeaker; outputs are followed from cable to cable")
			t.Speakers("tap_v=70.7; line_v=70.7", `
rows|tag|model|tap_w|channel
5..7|SP-1..|8in ceiling spkr|5|1
8|SP-4|8in ceiling spkr|2.5|1
9..11|SP-5..|Horn|15|2
12..13|SP-8..|Wall box|10|3
`)
			t.Channels("line_v=70.7; rated_w=60", `
channel|load_w
1|17.5
2|45
3|20
`)
			t.Amplifiers("", "rated_w|load_w|note\n180|82.5|unnamed")
			t.Lines("material=copper", `
line|from|to|length_m|area_mm2
C-01|AMP OUT 1|SP-1|19.812|1.3087
C-02|SP-1|SP-2|6.096|1.3087
C-03|SP-2|SP-3|6.096|1.3087
C-04|SP-3|SP-4|10.668|1.3087
C-05|AMP OUT 2|SP-5|42.672|2.0809
C-06|SP-5|SP-6|24.384|2.0809
C-07|SP-6|SP-7|24.384|2.0809
C-08|AMP OUT 3|SP-8|15.24|1.3087
C-09|SP-8|SP-9|7.62|1.3087
`)
		}},

		{File: "Quillby Planetarium/speaker count by room.xlsx", Kind: "schedule", Book: book("Count", `
Quillby Planetarium - PA speaker count, 70 V
Project 2015-31

Room|Ceiling @ 1 W|Ceiling @ 2 W|Wall @ 5 W|Horn @ 10 W|Zone|Watts
Lobby||8|2||Public|26
Ticket booth|1||||Public|1
Exhibit hall||12|4||Public|44
Corridor 1st fl|6||||Public|6
Offices|9||||Staff|9
Shop|||1||Staff|5
Roof deck||||3|Outdoor|30
Parking lot||||4|Outdoor|40
Total|16|20|7|7||161

Amplifier channel: Public = ch 1 (100 W), Staff = ch 2 (35 W), Outdoor = ch 3 (100 W)
`, bold("A4:G4", "A13:G13")), Truth: func(t *typed.Truth) {
			t.Is("2015-31", "Quillby Planetarium", "matrix of counts with the tap in each column's head; the outputs in one sentence below")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=Count", `
rows|zone|room|model|count|tap_w|channel
5|Public|Lobby|Ceiling|8|2|1
5|Public|Lobby|Wall|2|5|1
6|Public|Ticket booth|Ceiling|1|1|1
7|Public|Exhibit hall|Ceiling|12|2|1
7|Public|Exhibit hall|Wall|4|5|1
8|Public|Corridor 1st fl|Ceiling|6|1|1
9|Staff|Offices|Ceiling|9|1|2
10|Staff|Shop|Wall|1|5|2
11|Outdoor|Roof deck|Horn|3|10|3
12|Outdoor|Parking lot|Horn|4|10|3
`)
			t.Channels("line_v=70.7", `
channel|rated_w|load_w
1|100|77
2|35|14
3|100|70
`)
			t.Left("Count", "13|total|right")
		}},
	}
}
