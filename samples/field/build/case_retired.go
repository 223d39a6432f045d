package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A retired radio engineer who looks after the planetarium: tables on their side, fractions, careful notes, feet.
var retired = []typed.Case{
	{File: "Wickersham notebook/zones side by side.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Zones")
		p.Put("A1", `
Wickersham Planetarium. 70.7 volt distribution. Job PL-3.

Zone|Foyer|Dome ring|Gallery|Shop|Classroom|Office wing|Roof deck|Loading dock|Stairs|Observatory
Loudspeakers|6|12|8|4|6|9|4|2|3|2
Type|8 in. ceiling|8 in. ceiling|8 in. ceiling|8 in. ceiling|8 in. ceiling|4 in. ceiling|Horn|Horn|4 in. ceiling|Horn
Tap, watts|4|2|4|2|2|1|15|7.5|1|7.5
Volume control|VC-1|VC-2|VC-3|VC-4|VC-5|none|none|none|none|VC-6
Control rating, watts|35|35|35|10|10|||||10
Amplifier|A|A|B|B|B|C|C|C|C|C
Channel|1|2|1|2|2|1|2|2|1|1
Channel rating, watts|60|60|60|60|60|60|100|100|60|60
Wire, AWG|16|16|16|18|18|18|14|14|18|16
Length, feet|90|140|165|75|120|210|260|310|130|190
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("PL-3", "Wickersham Planetarium", "a table on its side: zones as columns")
		t.Speakers("sheet=Zones; tap_v=70.7; line_v=70.7", `rows|zone|model|count|tap_w|control|amplifier|channel
B|Foyer|8 in. ceiling|6|4|VC-1|A|1
C|Dome ring|8 in. ceiling|12|2|VC-2|A|2
D|Gallery|8 in. ceiling|8|4|VC-3|B|1
E|Shop|8 in. ceiling|4|2|VC-4|B|2
F|Classroom|8 in. ceiling|6|2|VC-5|B|2
G|Office wing|4 in. ceiling|9|1||C|1
H|Roof deck|Horn|4|15||C|2
I|Loading dock|Horn|2|7.5||C|2
J|Stairs|4 in. ceiling|3|1||C|1
K|Observatory|Horn|2|7.5|VC-6|C|1`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
A|1|60|24
A|2|60|24
B|1|60|32
B|2|60|20
C|1|60|27
C|2|100|75`)
		t.Amplifiers("", `amplifier|load_w
A|48
B|52
C|102`)
		t.Controls("", `control|zone|rated_w|load_w
VC-1|Foyer|35|24
VC-2|Dome ring|35|24
VC-3|Gallery|35|32
VC-4|Shop|10|8
VC-5|Classroom|10|12
VC-6|Observatory|10|15`)
		t.Lines("", `zone|length_m|area_mm2
Foyer|27.432|1.3087
Dome ring|42.672|1.3087
Gallery|50.292|1.3087
Shop|22.86|0.8230
Classroom|36.576|0.8230
Office wing|64.008|0.8230
Roof deck|79.248|2.0809
Loading dock|94.488|2.0809
Stairs|39.624|0.8230
Observatory|57.912|1.3087`)
	}},

	{File: "Wickersham notebook/small loudspeakers.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Small ones")
		p.Put("A1", `
The small loudspeakers of the exhibit hall, Wickersham Planetarium, job PL-5
All on one 70.7 volt line from amplifier D, which is rated 35 watts.

Exhibit|Loudspeaker|Tap|Attenuator|Remarks
Tides|4 in. in case|1/2 W|AT-1|
Seasons|4 in. in case|1/2 W|AT-2|
Moon phases|4 in. in case|1/2 W|AT-3|moved one case to the left in spring
Eclipses|4 in. in case|1/2 W|AT-4|
Comets|4 in. in case|1/4 W|AT-5|visitors found it loud
Meteorites|4 in. in case|1/4 W|AT-6|
Aurora|8 in. overhead|1 W|AT-7|
Sundials|8 in. overhead|1 W|AT-8|
Star maps|8 in. overhead|1 W|AT-8|same attenuator as the sundials
Spectra|8 in. overhead|2 W|AT-9|
Telescope models|8 in. overhead|2 W|AT-9|same attenuator as the spectra
Entrance of the hall|8 in. overhead|4 W|none|
Exit of the hall|8 in. overhead|4 W|none|
Cloak alcove|8 in. overhead|1 W|none|

The attenuators AT-1 to AT-8 are rated 5 watts, AT-9 10 watts.
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("PL-5", "Wickersham Planetarium", "fractions of a watt as text; amplifier and ratings in sentences")
		t.Speakers("sheet=Small ones; tap_v=70.7; line_v=70.7; amplifier=D", `rows|room|model|tap_w|control
5|Tides|4 in. in case|0.5|AT-1
6|Seasons|4 in. in case|0.5|AT-2
7|Moon phases|4 in. in case|0.5|AT-3
8|Eclipses|4 in. in case|0.5|AT-4
9|Comets|4 in. in case|0.25|AT-5
10|Meteorites|4 in. in case|0.25|AT-6
11|Aurora|8 in. overhead|1|AT-7
12|Sundials|8 in. overhead|1|AT-8
13|Star maps|8 in. overhead|1|AT-8
14|Spectra|8 in. overhead|2|AT-9
15|Telescope models|8 in. overhead|2|AT-9
16|Entrance of the hall|8 in. overhead|4|
17|Exit of the hall|8 in. overhead|4|
18|Cloak alcove|8 in. overhead|1|`)
		t.Channels("line_v=70.7", `amplifier|rated_w|load_w
D|35|18.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
D|35|18.5`)
		t.Controls("", `control|rated_w|load_w
AT-1|5|0.5
AT-2|5|0.5
AT-3|5|0.5
AT-4|5|0.5
AT-5|5|0.25
AT-6|5|0.25
AT-7|5|1
AT-8|5|2
AT-9|10|4`)
	}},

	{File: "Wickersham notebook/terminal strip.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.Marks.Replace(`Job PL-6,Wickersham Planetarium annex,70.7 volt line,,,,,
,,,,,,,
Terminal,Goes to,Loudspeakers,Watts each,Watts,Amplifier,Wire,Feet
1-2,Library,4,2,8,E,16 AWG,80
3-4,Reading nook,1,1,1,E,18 AWG,95
5-6,Machine shop,3,4,12,E,16 AWG,150
7-8,Optics room,2,2,4,E,18 AWG,110
9-10,Archive,2,1,2,E,18 AWG,125
11-12,Lower corridor,6,1,6,E,18 AWG,140
13-14,Front walk,3,7.5,22.5,F,14 AWG,230
15-16,Back walk,2,7.5,15,F,14 AWG,280
17-18,Bicycle shed,1,4,4,F,14 AWG,300
19-20,Telescope field,4,15,60,F,12 AWG,420
,,Total E,,33,,,
,,Total F,,101.5,,,
,,,,,,,
Amplifier E,35 watts,,,,,,
Amplifier F,100 watts,,,,,,
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("PL-6", "Wickersham Planetarium annex", "terminals of a strip as a list of home runs")
		t.Speakers("tap_v=70.7; line_v=70.7", `rows|room|count|tap_w|amplifier
4|Library|4|2|E
5|Reading nook|1|1|E
6|Machine shop|3|4|E
7|Optics room|2|2|E
8|Archive|2|1|E
9|Lower corridor|6|1|E
10|Front walk|3|7.5|F
11|Back walk|2|7.5|F
12|Bicycle shed|1|4|F
13|Telescope field|4|15|F`)
		t.Channels("line_v=70.7", `amplifier|rated_w|load_w
E|35|33
F|100|101.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
E|35|33
F|100|101.5`)
		t.Lines("", `from|to|length_m|area_mm2
E|Library|24.384|1.3087
E|Reading nook|28.956|0.8230
E|Machine shop|45.72|1.3087
E|Optics room|33.528|0.8230
E|Archive|38.1|0.8230
E|Lower corridor|42.672|0.8230
F|Front walk|70.104|2.0809
F|Back walk|85.344|2.0809
F|Bicycle shed|91.44|2.0809
F|Telescope field|128.016|3.3088`)
		t.Left("", `14|subtotal|watts of amplifier E
15|subtotal|watts of amplifier F`)
	}},
}
