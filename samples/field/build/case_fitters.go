package main

import (
	"lineaudit/samples/typed"

	"github.com/xuri/excelize/v2"
)

// commissioner is a British engineer who sets systems to work and leaves test sheets.
var commissioner = []typed.Case{
	{File: "set to work/Test sheet TS-118 Calder baths.xlsx", Kind: "schedule", Book: sheets("Line tests", `
PA line tests - Calder Swimming Baths|||||||||
Sheet TS-118|||Engineer D.P.||||Date 11.6.18||
|||||||||
Line no|Amp / ch|Amp rating|Area|LS fitted|W/LS|Design load|Z meas (1k)|W meas|Pass?
1|A / 1|120 W|Pool hall north|6 x column|10|60|168|59.5|P
2|A / 2|120 W|Pool hall south|6 x column|10|60|170|58.8|P
3|B / 1|60 W|Entrance and stairs|7 x ceiling|3|21|480|20.8|P
4|B / 2|60 W|Wet side changing|12 x ceiling|1.5|18|410|24.4|F - two units found tapped 3W, reset
5|C / 1|60 W|Teaching pool|3 x column|10|30|330|30.3|P
6|C / 2|60 W|Not used|||||open|
|||||||||
100V line throughout. No volume controls on this job.|||||||||
`), Truth: func(t *typed.Truth) {
		t.Is("TS-118", "Calder Swimming Baths", "a test sheet of lines; an output not used; a measured load beside the design load")
		t.Speakers("tap_v=100; line_v=100; sheet=Line tests", `
rows|amplifier|channel|room|count|model|tap_w
5|A|1|Pool hall north|6|column|10
6|A|2|Pool hall south|6|column|10
7|B|1|Entrance and stairs|7|ceiling|3
8|B|2|Wet side changing|12|ceiling|1.5
9|C|1|Teaching pool|3|column|10
`)
		t.Channels("line_v=100", "amplifier|channel|rated_w|load_w\nA|1|120|60\nA|2|120|60\nB|1|60|21\nB|2|60|18\nC|1|60|30\nC|2|60|0")
		t.Amplifiers("", "amplifier|load_w\nA|120\nB|39\nC|30")
	}},

	{File: "set to work/Handover Tarn boathouse.csv", Kind: "schedule", Bytes: text(`
Handover list,Tarn Boathouse,Contract 6620,,,,
,,,,,,
Ref,Where fitted,Make up,Tapping,Line,Attenuator,Comment
T1,Slipway,2 off horn,15W,A,,
T2,Boat store,3 off projector,10W,A,,T3 looped off T2
T3,Workshop,1 off projector,6W,A,AT/1 15W,
T4,Club room,4 off ceiling,3W,B,AT/2 15W,
T5,Kitchenette store,1 off ceiling,3W,B,AT/2 15W,shares with club room
T6,Changing,4 off ceiling,1.5W,B,,
T7,Committee room,2 off ceiling,3W,B,AT/3 10W,
,,,,,,
Line A - 60W amplifier no 1,,,,,,
Line B - 60W amplifier no 2,,,,,,
Both 100V,,,,,,
`), Truth: func(t *typed.Truth) {
		t.Is("6620", "Tarn Boathouse", "counts with off; controls with a stroke; amplifiers of lines below")
		t.Speakers("tap_v=100; line_v=100", `
rows|tag|room|count|model|tap_w|amplifier|channel|control
4|T1|Slipway|2|horn|15|1|A|
5|T2|Boat store|3|projector|10|1|A|
6|T3|Workshop|1|projector|6|1|A|AT/1
7|T4|Club room|4|ceiling|3|2|B|AT/2
8|T5|Kitchenette store|1|ceiling|3|2|B|AT/2
9|T6|Changing|4|ceiling|1.5|2|B|
10|T7|Committee room|2|ceiling|3|2|B|AT/3
`)
		t.Channels("line_v=100; rated_w=60", "amplifier|channel|load_w\n1|A|66\n2|B|27")
		t.Amplifiers("rated_w=60", "amplifier|load_w\n1|66\n2|27")
		t.Controls("", "control|rated_w|load_w\nAT/1|15|6\nAT/2|15|15\nAT/3|10|6")
	}},
}

// ballparks is an American facility crew.
var ballparks = []typed.Case{
	{File: "crew/ice center PA 2019.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("PA")
		p.Put("A1", `
Lakemont Ice Center - PA speakers|||||||
WO 19-2204||||70 volt||||
Amp closet: Amp #1 250W Amp #2 125W Amp #3 125W|||||||
|||||||
Amp|Location|Qty|Kind|Each|Total|Vol knob?|Note
#1|Rink 1 east|5|horn|16W|80W||
#1|Rink 1 west|5|horn|16W|80W||
#1|Penalty boxes|2|box|4W|8W||
#2|Lobby|8|can|4W|32W|Y 50W|
#2|Pro shop|2|can|4W|8W|Y 10W|
#2|Prize storage|1|can|4W|4W||speaker pulled, hole patched
#2|Lockers 1-6|12|can|2W|24W||
#3|Rink 2|6|horn|16W|96W||
#3|Resurfacer bay|1|horn|8W|8W||
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("19-2204", "Lakemont Ice Center", "amplifiers and ratings in one line of the title; knobs with yes and watts; one pulled")
		t.Speakers("tap_v=70.7; line_v=70.7; sheet=PA", `
rows|amplifier|room|count|model|tap_w|note
6|#1|Rink 1 east|5|horn|16|
7|#1|Rink 1 west|5|horn|16|
8|#1|Penalty boxes|2|box|4|
9|#2|Lobby|8|can|4|unnamed control
10|#2|Pro shop|2|can|4|unnamed control
12|#2|Lockers 1-6|12|can|2|
13|#3|Rink 2|6|horn|16|
14|#3|Resurfacer bay|1|horn|8|
`)
		t.Speakers("tap_v=70.7; line_v=70.7; sheet=PA; status=removed", "rows|amplifier|room|count|model|tap_w\n11|#2|Prize storage|1|can|4")
		t.Channels("line_v=70.7", "amplifier|rated_w|load_w\n#1|250|168\n#2|125|64\n#3|125|104")
		t.Amplifiers("", "amplifier|rated_w|load_w\n#1|250|168\n#2|125|64\n#3|125|104")
		t.Controls("note=unnamed", "zone|rated_w|load_w\nLobby|50|32\nPro shop|10|8")
	}},

	{File: "crew/Gardens speaker runs.csv", Kind: "schedule", Bytes: text(`
Prairie Gardens Conservatory,,,,,
PO 88-417 speaker runs,,,,,
Run,From,To,Feet,Wire,Feeds
R1,Amp A out 1,Palm dome,180,12 AWG,8 pendants @ 7.5W
R2,Amp A out 2,Fern wing,140,14 AWG,6 pendants @ 3.75W
R3,Amp B out 1,Visitor lobby,60,16 AWG,10 ceiling @ 1.88W
R4,Amp B out 2,Education room via wall control (25W),95,16 AWG,4 ceiling @ 3.75W
,,,,,
"Amps A and B are 2 x 100W at 70.7V",,,,,
`), Truth: func(t *typed.Truth) {
		t.Is("88-417", "Prairie Gardens Conservatory", "runs with what they feed told in words; a control in the end of a run")
		t.Speakers("tap_v=70.7; line_v=70.7", `
rows|room|count|model|tap_w|amplifier|channel|note
4|Palm dome|8|pendants|7.5|A|1|
5|Fern wing|6|pendants|3.75|A|2|
6|Visitor lobby|10|ceiling|1.88|B|1|
7|Education room|4|ceiling|3.75|B|2|unnamed control
`)
		t.Channels("line_v=70.7; rated_w=100", "amplifier|channel|load_w\nA|1|60\nA|2|22.5\nB|1|18.8\nB|2|15")
		t.Amplifiers("", "amplifier|load_w\nA|82.5\nB|33.8")
		t.Controls("note=unnamed", "zone|rated_w|load_w\nEducation room|25|15")
		t.Lines("note=home runs", "line|length_m|area_mm2\nR1|54.864|3.3088\nR2|42.672|2.0809\nR3|18.288|1.3087\nR4|28.956|1.3087")
	}},
}
