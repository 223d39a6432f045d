package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// strangers are files that lie among the schedules and are none.
func strangers() []typed.Case {
	none := func(note string) func(*typed.Truth) {
		return func(t *typed.Truth) { t.Is("", "", note) }
	}
	return []typed.Case{
		{File: "other/price list heads.xlsx", Kind: "not-a-schedule", Book: priceList, Truth: none("a price list with taps and watts: nothing is installed anywhere")},
		{File: "other/rota week 32.xlsx", Kind: "not-a-schedule", Book: rota, Saved: "xlsx", Truth: none("a staff rota with zones, areas and day marks")},
		{File: "other/Wash-down taps.xls", Kind: "not-a-schedule", Book: plumbing, Saved: "xls", Truth: none("a plumber's list: taps of 1/2 and 3/4 inch by house, with quantities and lengths")},
		{File: "other/Fixture schedule E2.xlsx", Kind: "not-a-schedule", Book: lighting, Truth: none("lamps in watts by room, circuit and dimmer channel")},
		{File: "other/Speaker schedule.ods", Kind: "not-a-schedule", Book: conference, Saved: "ods", Truth: none("the speakers are people: a day of talks with rooms, lines and amps of time")},
		{File: "other/drums in yard.csv", Kind: "not-a-schedule", Bytes: drums, Truth: none("an inventory of cable drums")},
		{File: "other/phones.csv", Kind: "not-a-schedule", Bytes: phones, Truth: none("a telephone list with paging zones")},
		{File: "other/radio plan.fods", Kind: "not-a-schedule", Book: radio, Saved: "fods", Truth: none("channels, watts and zones of hand-held radios")},
		{File: "other/irrigation controls.xlsx", Kind: "not-a-schedule", Book: irrigation, Truth: none("zones, controls, valves and volts of the watering")},
		{File: "other/Heizkabel Dachrinnen.csv", Kind: "not-a-schedule", Bytes: heating, Truth: none("heating cables in watts and metres by roof and circuit")},
	}
}

func priceList() *excelize.File {
	p := typed.NewBook("Prices")
	p.Put("A1", `
Heads we buy, prices from January

Model|Kind|Taps at 100 V|Rated W|Price each|Pack of
Sedge 6|flush|6/3/1.5|6|31.00|2
Tansy 8|pendant|10/5/2.5|10|44.50|2
Marl 20|column|20/10/5|20|118.00|1
Frost 40|column|40/20/10|40|176.00|1
Sleet 30|horn|30/15/7.5|30|89.00|1
VC 10|wall knob|-|10|24.00|1
VC 35|wall knob|-|35|33.00|1
PA 2120|amplifier 2 x 120 W|-|240|640.00|1
Prices without tax. Carriage on orders below 200.00
`)
	return p.File
}

func rota() *excelize.File {
	p := typed.NewBook("Week 32")
	p.Put("A1", `
Rota week 32|||||||zone leads in bold

Zone|Area|Mon|Tue|Wed|Thu|Fri|Sat
1|Palm house|A|A|B|B|A|C
1|Fern house|B|B|A|A|C|C
2|Boathouse 3|C|C|C|D|D|D
2|Boathouse 5|D|D|D|C|C|-
3|Ice rink, main|E 2x|E 2x|E 3x|E 2x|E 4x|E 4x
3|Ice rink, hire|F|F|F|F|F 2x|F 2x
Total on duty||7|7|8|7|10|9
A to F = teams; spare: team G
`)
	return p.File
}

func plumbing() *excelize.File {
	p := typed.NewBook("Taps")
	p.Put("A1", `
Thornwater Garden - wash-down points||||Job EQ-P12

Ref|House|Tap|Qty|Pipe run m|Branch
T1|Palm house|'1/2"|4|22|A
T2|Palm house|'3/4"|1|35|A
T3|Fern house|'1/2"|6|18|A
T4|Orchid house|'1/2"|5|12|B
T5|Potting shed|'1/2" hose union|2|40|B
T6|Yard|'1" standpipe|1|55|B
Total|||19|182
All taps to have double check valves. Line pressure 3 bar.
`)
	return p.File
}

func lighting() *excelize.File {
	p := typed.NewBook("E2")
	p.Put("A1", `
FIXTURE SCHEDULE E2 - KELDERBY PLANETARIUM|||||||Job EQ-E77

Mark|Fixture|Location|Qty|W each|Total W|Circuit|Dimmer ch.
F1|Recessed downlight, LED|Foyer|24|12|288|L1|DM1/1
F2|Recessed downlight, LED|Shop|10|12|120|L1|DM1/2
F3|Cove strip per m|Dome|60|8|480|L2|DM1/3
F4|Wall washer|Dome|16|20|320|L2|DM1/4
F5|Exit sign|All|9|3|27|EM|-
F6|Bulkhead|Plant|6|15|90|L3|-
TOTAL|||125||1325|
All 230 V, colour 3000 K. Dimmer DM1: 4 x 1000 W.
`)
	return p.File
}

func conference() *excelize.File {
	p := typed.NewBook("Speakers")
	p.Put("A1", `
Speaker schedule - glasshouse growers' day

Time|Speaker|Room|Title|Minutes|Chair
9:30|Dr Alder|Orangery|Watering by weight|30|R. Rowan
10:00|Prof. Hazel|Orangery|Heat in old houses|30|R. Rowan
10:45|Ms Linden|Dome|Stars over the fern valley|45|H. Holly
11:30|Mr Spindle|Dome|Ice and lilies|30|H. Holly
13:30|Dr Alder|Orangery|Panel, 5 speakers|60|R. Rowan
14:30|Ms Whitebeam|Boathouse 5|Walk to the lake|90|-
7 speakers, 3 rooms; microphones in all rooms
`)
	return p.File
}

func drums() []byte {
	return []byte(typed.DOS(`
Drum no.,Cable,Size,Left on drum (m),Where,Checked
D-01,speaker 2 core,2x1.5,185,yard bay 1,yes
D-02,speaker 2 core,2x2.5,60,yard bay 1,yes
D-03,speaker 2 core CCA,14/2,305,yard bay 2,no
D-04,mains 3 core,3x2.5,90,yard bay 2,yes
D-05,data,4x2xAWG24,410,store,yes
D-06,speaker 2 core fire,2x1.5,0,store,empty
,,,1050,,
`))
}

func phones() []byte {
	return []byte(typed.DOS(`
Ext.;Where;Line;Paging zone;Handset;Volume
201;Palm house;1;1;wall;7
202;Fern house;1;1;wall;5
203;Boathouse 3;2;2;desk;5
204;Boathouse 5;2;2;desk;5
205;Ice rink, hire;3;3;desk;10
206;Ice rink, office;3;3;desk;5
207;Planetarium desk;4;4;desk;5
*70;all-call;;all;;
`))
}

func radio() *excelize.File {
	p := typed.NewBook("Radios")
	p.Put("A1", `
Radio plan

Channel|Used by|Zone|Sets|Output W|MHz|Tone
1|Gardeners|Gardens|12|5|449.3125|67.0
2|Boat crews|Lake|8|5|449.4750|71.9
3|Rink marshals|Ice|10|1|449.3125|74.4
4|Planetarium|Dome|4|0.5|449.4750|77.0
5|All, emergency|all|34|5|449.4000|-
Base station 25 W, 12 V, on channel 5
`)
	return p.File
}

func irrigation() *excelize.File {
	p := typed.NewBook("Valves")
	p.Put("A1", `
Watering, valves by zone|||||Job EQ-W40

Zone|House|Control|Valves|V|W each|Wire|Run m
1|Palm house|C1|4|24|6|2x1.5|40
2|Fern house|C1|6|24|6|2x1.5|55
3|Orchid house|C2|5|24|3|2x0.75|30
4|Rose beds|C2|8|24|6|2x1.5|95
Total||||||23
C1 and C2: 60 W transformers
`)
	return p.File
}

func heating() []byte {
	return typed.Windows1252(typed.DOS(`
Heizkabel Dachrinnen;;;;;
Dach;Stromkreis;Länge m;W/m;Leistung W;Regler
Eishalle Nord;F1;60;20;1200;T1
Eishalle Süd;F2;60;20;1200;T1
Gewächshaus 1;F3;35;20;700;T2
Bootshaus;F4;28;25;700;T3
Summe;;183;;3800;
`))
}
