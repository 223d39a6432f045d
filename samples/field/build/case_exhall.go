package main

import (
	"lineaudit/samples/typed"

	"github.com/xuri/excelize/v2"
)

// exhall is an old hand who wired halls for thirty years and types as he speaks.
var exhall = []typed.Case{
	{File: "old exercise books/no 12 Ferndale palm house.csv", Kind: "schedule", Bytes: text(`
Ferndale Palm House - job 977
100v line. 1 no. 120W amp (palms) 1 no. 60W amp (rest)

speakers,where,tap,which amp,how fed
6 no. columns,palm house ground,10W,120,direct
4 no. columns,palm house balcony,10W,120,direct
2 no. horns,yard,7.5W,60,direct
5 no. ceiling,tea room store and passage,3W,60,vc 1
2 no. ceiling,ticket office,1.5W,60,vc 2
3 no. cabinets,potting sheds,6W,60,direct

vc 1 is 15W
vc 2 is 5W
`), Truth: func(t *typed.Truth) {
		t.Is("977", "Ferndale Palm House", "amplifiers called by their watts; counts with the kind; ratings in lines below")
		t.Speakers("tap_v=100; line_v=100", `
rows|count|model|room|tap_w|amplifier|control
5|6|columns|palm house ground|10|120|
6|4|columns|palm house balcony|10|120|
7|2|horns|yard|7.5|60|
8|5|ceiling|tea room store and passage|3|60|vc 1
9|2|ceiling|ticket office|1.5|60|vc 2
10|3|cabinets|potting sheds|6|60|
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\n120|120|100\n60|60|51")
		t.Amplifiers("", "amplifier|rated_w|load_w\n120|120|100\n60|60|51")
		t.Controls("", "control|rated_w|load_w\nvc 1|15|15\nvc 2|5|3")
	}},

	{File: "old exercise books/no 15 Coldharbour rink.xlsx", Kind: "schedule", Book: sheets("rink", `
Coldharbour Rink, job 1043, as left Nov 2009||||||
||||||
AMP 1  (250W, 100V)  ICE||||||
qty|type|position|tap|watts||
10|horn|over ice|15|150||
4|horn|barrier|10|40||
|||tot|190||
||||||
AMP 2  (100W, 100V)  HOUSE||||||
qty|type|position|tap|watts|v/c|
6|clg|foyer|3|18|20W|
2|clg|shop|3|6|10W|
8|clg|changing|2|16||
4|wall|offices|2|8|4 x 5W|one each office
2|horn|car park|10|20||
|||tot|68||
||||||
Spare horn (15W) left on shelf.||||||
`), Truth: func(t *typed.Truth) {
		t.Is("1043", "Coldharbour Rink", "a block an amplifier, whose title tells name, rating and use; controls by their watts alone, four of them in one cell")
		t.Speakers("tap_v=100; line_v=100; sheet=rink", `
rows|count|model|room|tap_w|amplifier|note
5|10|horn|over ice|15|AMP 1|
6|4|horn|barrier|10|AMP 1|
11|6|clg|foyer|3|AMP 2|unnamed control
12|2|clg|shop|3|AMP 2|unnamed control
13|8|clg|changing|2|AMP 2|
14|4|wall|offices|2|AMP 2|unnamed control
15|2|horn|car park|10|AMP 2|
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nAMP 1|250|190\nAMP 2|100|68")
		t.Amplifiers("", "amplifier|rated_w|load_w\nAMP 1|250|190\nAMP 2|100|68")
		t.Controls("note=unnamed", "zone|rated_w|load_w\nfoyer|20|18\nshop|10|6")
		t.Left("rink", "7|total|tot\n16|total|tot")
	}},

	{File: "old exercise books/stock check 2010.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("stock")
		p.Put("A1", `
Stock check Jan 2010|||
Item|On shelf|Min|Order
6W ceiling spkr|22|20|
15W horn|9|10|5
30W column|4|4|
volume control 12W|7|6|
volume control 36W|2|4|4
120W mixer amp|1|1|
`)
		return p.File
	}, Truth: func(t *typed.Truth) { t.Is("", "", "what lies on the shelves") }},
}
