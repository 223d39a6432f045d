package main

import "lineaudit/samples/typed"

// long are whole buildings, twenty loudspeaker rows and more each.
func long() []typed.Case {
	return []typed.Case{
		{File: "Ravensmoor/arena one per row.xlsx", Kind: "schedule", Book: book("Page 1-2", `
Ravensmoor Ice Rink||||||Contract C5108
LOUDSPEAKER SCHEDULE||||||Sheet 1 of 2
Ref|Area|Type|Height (m)|Tap (W)|Amp|Cct
A01|Ice, row 1|CH30|7.5|30|PA1|1
A02|Ice, row 1|CH30|7.5|30|PA1|1
A03|Ice, row 1|CH30|7.5|30|PA1|1
A04|Ice, row 1|CH30|7.5|30|PA1|1
A05|Ice, row 2|CH30|7.5|30|PA1|2
A06|Ice, row 2|CH30|7.5|30|PA1|2
A07|Ice, row 2|CH30|7.5|30|PA1|2
A08|Ice, row 2|CH30|7.5|30|PA1|2
A09|Stand west|CH15|5|15|PA1|3
A10|Stand west|CH15|5|15|PA1|3
A11|Stand west|CH15|5|15|PA1|3
A12|Stand east|CH15|5|15|PA1|4
A13|Stand east|CH15|5|15|PA1|4
A14|Stand east|CH15|5|15|PA1|4
||||285||
Issue B 11.2012||||||
||||||
Ravensmoor Ice Rink||||||Contract C5108
LOUDSPEAKER SCHEDULE||||||Sheet 2 of 2
Ref|Area|Type|Height (m)|Tap (W)|Amp|Cct
B01|Foyer|CL6|3|3|PA2|1
B02|Foyer|CL6|3|3|PA2|1
B03|Foyer|CL6|3|3|PA2|1
B04|Foyer|CL6|3|3|PA2|1
B05|Skate hire|CL6|2.7|3|PA2|1
B06|Skate hire|CL6|2.7|3|PA2|1
B07|Changing 1|CL6|2.7|1.5|PA2|2
B08|Changing 2|CL6|2.7|1.5|PA2|2
B09|Changing 3|CL6|2.7|1.5|PA2|2
B10|Changing 4|CL6|2.7|1.5|PA2|2
B11|Referees|CL6|2.7|0.75|PA2|2
B12|First aid|CL6|2.7|0.75|PA2|2
B13|Plant|CH15|4|15|PA2|2
B14|Loading|CH15|4|15|PA2|2
||||55.5||
Issue B 11.2012||||||
||||||
PA1: 4 x 125W, PA2: 2 x 60W, 100V line||||||
`, bold("A1:A2", "A3:G3", "A21:A22", "A23:G23")), Truth: func(t *typed.Truth) {
			t.Is("C5108", "Ravensmoor Ice Rink", "two printed pages on one sheet: title and head again on the second, a sum and a foot on each; heights beside the taps")
			t.Revision("B", false)
			t.Speakers("tap_v=100; line_v=100; sheet=Page 1-2; amplifier=PA1", `
rows|tag|room|model|tap_w|channel
4..7|A01..|Ice, row 1|CH30|30|1
8..11|A05..|Ice, row 2|CH30|30|2
12..14|A09..|Stand west|CH15|15|3
15..17|A12..|Stand east|CH15|15|4
`)
			t.Speakers("tap_v=100; line_v=100; sheet=Page 1-2; amplifier=PA2", `
rows|tag|room|model|tap_w|channel
24..27|B01..|Foyer|CL6|3|1
28..29|B05..|Skate hire|CL6|3|1
30|B07|Changing 1|CL6|1.5|2
31|B08|Changing 2|CL6|1.5|2
32|B09|Changing 3|CL6|1.5|2
33|B10|Changing 4|CL6|1.5|2
34|B11|Referees|CL6|0.75|2
35|B12|First aid|CL6|0.75|2
36|B13|Plant|CH15|15|2
37|B14|Loading|CH15|15|2
`)
			t.Channels("line_v=100", `
amplifier|channel|rated_w|load_w|note
PA1|1|125|120|
PA1|2|125|120|
PA1|3|125|45|
PA1|4|125|45|
PA2|1|60|18|
PA2|2|60|37.5|6 + 1.5 + 30
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
PA1|500|330
PA2|120|55.5
`)
			t.Left("Page 1-2", "18|total|wrong: 330\n19|note|\n21|title|\n22|title|\n23|header|repeated\n38|total|right\n39|note|")
		}},

		{File: "Cold Fork Ice Center/arena list by zone.xlsx", Kind: "schedule", Saved: "xlsx", Book: book("Arena", `
COLD FORK ICE CENTER|||||||
SPEAKERS BY PAGING ZONE - 70.7V DISTRIBUTED|||||||
PAGING ZONE|LOCATION|SPEAKER|QTY|TAP|TOTAL W|AMP|OUTPUT
1 RINK 1|North half|15 in horn|3|30|90|A1|1
|South half|15 in horn|3|30|90|A1|1
|Players benches|Box|4|10|40|A1|1
|Penalty box|Box|2|10|20|A1|1
2 RINK 2|North half|15 in horn|3|30|90|A1|2
|South half|15 in horn|3|30|90|A1|2
|Players benches|Box|4|10|40|A1|2
3 PUBLIC|Lobby|8 in clg|10|5|50|A2|1
|Skate rental|8 in clg|4|5|20|A2|1
|Hallway|8 in clg|6|2.5|15|A2|1
|Restrooms|8 in clg|4|1.25|5|A2|1
4 LOCKERS|Lockers 1-4|8 in clg|8|2.5|20|A2|2
|Lockers 5-8|8 in clg|8|2.5|20|A2|2
|Coaches|8 in clg|2|1.25|2.5|A2|2
|Officials|8 in clg|2|1.25|2.5|A2|2
5 STAFF|Offices|8 in clg|5|1.25|6.25|A2|3
|Workshop|Box|2|5|10|A2|3
|Compressor room|Paging horn|1|15|15|A2|3
6 OUTSIDE|Entry canopy|8 in WP|4|5|20|A2|4
|Parking|Paging horn|3|15|45|A2|4
|Bus lane|Paging horn|2|7.5|15|A2|4
||TOTAL|83||706.25||
A1 = TWO CHANNEL, 250 W PER CHANNEL. A2 = FOUR CHANNEL, 100 W PER CHANNEL.|||||||
`, merged("A4:A7", "A8:A10", "A11:A14", "A15:A18", "A19:A21", "A22:A24"), bold("A1:A2", "A3:H3")), Truth: func(t *typed.Truth) {
			t.Is("", "Cold Fork Ice Center", "zones as merged cells down the first column; ratings in words")
			t.Speakers("tap_v=70.7; line_v=70.7; sheet=Arena", `
rows|zone|room|model|count|tap_w|amplifier|channel
4|1 RINK 1|North half|15 in horn|3|30|A1|1
5|1 RINK 1|South half|15 in horn|3|30|A1|1
6|1 RINK 1|Players benches|Box|4|10|A1|1
7|1 RINK 1|Penalty box|Box|2|10|A1|1
8|2 RINK 2|North half|15 in horn|3|30|A1|2
9|2 RINK 2|South half|15 in horn|3|30|A1|2
10|2 RINK 2|Players benches|Box|4|10|A1|2
11|3 PUBLIC|Lobby|8 in clg|10|5|A2|1
12|3 PUBLIC|Skate rental|8 in clg|4|5|A2|1
13|3 PUBLIC|Hallway|8 in clg|6|2.5|A2|1
14|3 PUBLIC|Restrooms|8 in clg|4|1.25|A2|1
15|4 LOCKERS|Lockers 1-4|8 in clg|8|2.5|A2|2
16|4 LOCKERS|Lockers 5-8|8 in clg|8|2.5|A2|2
17|4 LOCKERS|Coaches|8 in clg|2|1.25|A2|2
18|4 LOCKERS|Officials|8 in clg|2|1.25|A2|2
19|5 STAFF|Offices|8 in clg|5|1.25|A2|3
20|5 STAFF|Workshop|Box|2|5|A2|3
21|5 STAFF|Compressor room|Paging horn|1|15|A2|3
22|6 OUTSIDE|Entry canopy|8 in WP|4|5|A2|4
23|6 OUTSIDE|Parking|Paging horn|3|15|A2|4
24|6 OUTSIDE|Bus lane|Paging horn|2|7.5|A2|4
`)
			t.Channels("line_v=70.7", `
amplifier|channel|rated_w|load_w
A1|1|250|240
A1|2|250|220
A2|1|100|90
A2|2|100|45
A2|3|100|31.25
A2|4|100|80
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
A1|500|460
A2|400|246.25
`)
			t.Left("Arena", "25|total|right")
		}},

		{File: "Bluestem/device export.csv", Kind: "schedule", Bytes: func() []byte {
			return typed.Latin1(typed.DOS(`
DEVICE_ID	BLDG	FLOOR	ROOM	DEV_TYPE	MODEL_NO	WATTS_TAP	LINE_V	AMP	AMP_CH	VOL_CTRL	STATUS
BB-001	VC	1	Lobby	SPEAKER	CL8	2.5	70	RK1-A	1		ACTIVE
BB-002	VC	1	Lobby	SPEAKER	CL8	2.5	70	RK1-A	1		ACTIVE
BB-003	VC	1	Lobby	SPEAKER	CL8	2.5	70	RK1-A	1		ACTIVE
BB-004	VC	1	Lobby	SPEAKER	CL8	2.5	70	RK1-A	1		ACTIVE
BB-005	VC	1	Gift shop	SPEAKER	CL8	5	70	RK1-A	1	VC-11	ACTIVE
BB-006	VC	1	Gift shop	SPEAKER	CL8	5	70	RK1-A	1	VC-11	ACTIVE
BB-007	VC	1	Classroom A	SPEAKER	CL8	5	70	RK1-A	2	VC-12	ACTIVE
BB-008	VC	1	Classroom A	SPEAKER	CL8	5	70	RK1-A	2	VC-12	ACTIVE
BB-009	VC	1	Classroom B	SPEAKER	CL8	5	70	RK1-A	2	VC-13	ACTIVE
BB-010	VC	1	Classroom B	SPEAKER	CL8	5	70	RK1-A	2	VC-13	DEFECTIVE
BB-011	VC	2	Offices	SPEAKER	CL8	1.25	70	RK1-A	2		ACTIVE
BB-012	VC	2	Offices	SPEAKER	CL8	1.25	70	RK1-A	2		ACTIVE
BB-013	VC	2	Offices	SPEAKER	CL8	1.25	70	RK1-A	2		REMOVED
BB-014	GH	1	Palm court	SPEAKER	RK10	10	70	RK2-A	1		ACTIVE
BB-015	GH	1	Palm court	SPEAKER	RK10	10	70	RK2-A	1		ACTIVE
BB-016	GH	1	Palm court	SPEAKER	RK10	10	70	RK2-A	1		ACTIVE
BB-017	GH	1	Fern room	SPEAKER	RK10	5	70	RK2-A	1		ACTIVE
BB-018	GH	1	Fern room	SPEAKER	RK10	5	70	RK2-A	1		ACTIVE
BB-019	GH	1	Desert room	SPEAKER	RK10	10	70	RK2-A	2		ACTIVE
BB-020	GH	1	Desert room	SPEAKER	RK10	10	70	RK2-A	2		ACTIVE
BB-021	GH	1	Head house	SPEAKER	BX6	7.5	70	RK2-A	2		ACTIVE
BB-022	EXT	0	Plaza	SPEAKER	HN30	15	70	RK2-B	1		ACTIVE
BB-023	EXT	0	Plaza	SPEAKER	HN30	15	70	RK2-B	1		ACTIVE
BB-024	EXT	0	Lot 1	SPEAKER	HN30	30	70	RK2-B	1		PLANNED
BB-025	STOR	0	Shelf 3	SPEAKER	CL8		70				SPARE
BB-026	STOR	0	Shelf 3	SPEAKER	CL8		70				SPARE
BB-101	VC	1	Rack 1	AMPLIFIER	2X60		70	RK1-A			ACTIVE
BB-102	GH	1	Rack 2	AMPLIFIER	2X60		70	RK2-A			ACTIVE
BB-103	GH	1	Rack 2	AMPLIFIER	1X60		70	RK2-B			ACTIVE
BB-111	VC	1	Gift shop	VOLUME CONTROL	10W		70	RK1-A	1	VC-11	ACTIVE
BB-112	VC	1	Classroom A	VOLUME CONTROL	35W		70	RK1-A	2	VC-12	ACTIVE
BB-113	VC	1	Classroom B	VOLUME CONTROL	35W		70	RK1-A	2	VC-13	ACTIVE
`))
		}, Truth: func(t *typed.Truth) {
			t.Is("", "", "an export with underscores in its heads, tabs; amplifiers and controls are devices with their rating as model; a status column")
			t.Speakers("tap_v=70.7; line_v=70.7", `
rows|tag|room|model|tap_w|amplifier|channel|control|status
2..5|BB-001..|Lobby|CL8|2.5|RK1-A|1||installed
6..7|BB-005..|Gift shop|CL8|5|RK1-A|1|VC-11|installed
8..9|BB-007..|Classroom A|CL8|5|RK1-A|2|VC-12|installed
10..11|BB-009..|Classroom B|CL8|5|RK1-A|2|VC-13|installed
12..13|BB-011..|Offices|CL8|1.25|RK1-A|2||installed
14|BB-013|Offices|CL8|1.25|RK1-A|2||removed
15..17|BB-014..|Palm court|RK10|10|RK2-A|1||installed
18..19|BB-017..|Fern room|RK10|5|RK2-A|1||installed
20..21|BB-019..|Desert room|RK10|10|RK2-A|2||installed
22|BB-021|Head house|BX6|7.5|RK2-A|2||installed
23..24|BB-022..|Plaza|HN30|15|RK2-B|1||installed
25|BB-024|Lot 1|HN30|30|RK2-B|1||future
26..27|BB-025..|Shelf 3|CL8|||||spare
`)
			t.Channels("line_v=70.7; rated_w=60", `
amplifier|channel|load_w|note
RK1-A|1|20|
RK1-A|2|22.5|the defective one still hangs on the line
RK2-A|1|40|
RK2-A|2|27.5|
RK2-B|1|30|
`)
			t.Controls("", `
control|zone|rated_w|load_w
VC-11|Gift shop|10|10
VC-12|Classroom A|35|10
VC-13|Classroom B|35|10
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
RK1-A|120|42.5
RK2-A|120|67.5
RK2-B|60|30
`)
			t.Left("", "28|amplifier|\n29|amplifier|\n30|amplifier|\n31|control|\n32|control|\n33|control|")
		}},

		{File: "Harrowmere/PA zones whole garden.ods", Kind: "schedule", Saved: "ods", Book: book("Zones", `
HARROWMERE BOTANIC GARDEN
PA zones and loudspeakers - whole garden. Ref 7713/C. All 100V line.

Zone|Name|Room|Speaker|Off|Tap W|Cable|Length m|Amplifier
1|Glasshouses|Temperate house|W6|4|6|2c 1.5mm|60|PA1
1|Glasshouses|Alpine house|W6|2|6|2c 1.5mm|85|PA1
1|Glasshouses|Orchid house|C6|3|3|2c 1.5mm|75|PA1
1|Glasshouses|Cactus house|W6|2|3|2c 1.5mm|95|PA1
2|Visitor building|Entrance|C6|4|3|2c 1.0mm|25|PA2
2|Visitor building|Seed shop|C6|3|3|2c 1.0mm|30|PA2
2|Visitor building|WCs|C6|4|1.5|2c 1.0mm|35|PA2
2|Visitor building|Exhibition|C6|6|3|2c 1.0mm|45|PA2
2|Visitor building|Lecture room|W6|2|6|2c 1.0mm|50|PA2
3|Offices|Director|C6|1|0.75|2c 1.0mm|20|PA3
3|Offices|Open plan|C6|4|0.75|2c 1.0mm|30|PA3
3|Offices|Herbarium|C6|4|1.5|2c 1.0mm|55|PA3
3|Offices|Library|C6|3|1.5|2c 1.0mm|60|PA3
4|Grounds|Terrace|H15|3|10|2c 2.5mm SWA|110|PA4
4|Grounds|Long border|H15|4|7.5|2c 2.5mm SWA|180|PA4
4|Grounds|Lake|H15|3|15|2c 4.0mm SWA|320|PA4
4|Grounds|Play area|H15|2|7.5|2c 2.5mm SWA|240|PA4
5|Yard|Potting sheds|W6|3|6|2c 1.5mm|70|PA5
5|Yard|Machinery|H15|2|15|2c 1.5mm|90|PA5
5|Yard|Bothy|W6|1|3|2c 1.5mm|65|PA5
||||60||||

Amp|Output W
PA1|60
PA2|60
PA3|30
PA4|120
PA5|60
`, bold("A1:A2", "A4:I4", "A27:B27")), Truth: func(t *typed.Truth) {
			t.Is("7713", "Harrowmere Botanic Garden", "plain and long: zone number and name, room, a cable to each room, a table of five amplifiers below")
			t.Speakers("tap_v=100; line_v=100; sheet=Zones", `
rows|zone|room|model|count|tap_w|amplifier|note
5|1|Temperate house|W6|4|6|PA1|
6|1|Alpine house|W6|2|6|PA1|
7|1|Orchid house|C6|3|3|PA1|
8|1|Cactus house|W6|2|3|PA1|
9|2|Entrance|C6|4|3|PA2|
10|2|Seed shop|C6|3|3|PA2|
11|2|WCs|C6|4|1.5|PA2|
12|2|Exhibition|C6|6|3|PA2|
13|2|Lecture room|W6|2|6|PA2|
14|3|Director|C6|1|0.75|PA3|
15|3|Open plan|C6|4|0.75|PA3|
16|3|Herbarium|C6|4|1.5|PA3|
17|3|Library|C6|3|1.5|PA3|
18|4|Terrace|H15|3|10|PA4|
19|4|Long border|H15|4|7.5|PA4|
20|4|Lake|H15|3|15|PA4|
21|4|Play area|H15|2|7.5|PA4|
22|5|Potting sheds|W6|3|6|PA5|
23|5|Machinery|H15|2|15|PA5|
24|5|Bothy|W6|1|3|PA5|
`)
			t.Channels("line_v=100", `
amplifier|rated_w|load_w|note
PA1|60|51|24 + 12 + 9 + 6
PA2|60|57|12 + 9 + 6 + 18 + 12
PA3|30|14.25|0.75 + 3 + 6 + 4.5
PA4|120|120|30 + 30 + 45 + 15: exactly its rating
PA5|60|51|18 + 30 + 3
`)
			t.Amplifiers("", `
amplifier|rated_w|load_w
PA1|60|51
PA2|60|57
PA3|30|14.25
PA4|120|120
PA5|60|51
`)
			t.Lines("material=copper", `
zone|length_m|area_mm2
1|60|1.5
1|85|1.5
1|75|1.5
1|95|1.5
2|25|1
2|30|1
2|35|1
2|45|1
2|50|1
3|20|1
3|30|1
3|55|1
3|60|1
4|110|2.5
4|180|2.5
4|320|4
4|240|2.5
5|70|1.5
5|90|1.5
5|65|1.5
`)
			t.Left("Zones", "25|total|right")
		}},
	}
}
