package main

import "lineaudit/samples/typed"

// soundBills is the trade with prices: bills of quantities and answers to tenders.
var soundBills = []typed.Case{
	{File: "bills/BoQ 3 Fernhythe greenhouses.xlsx", Kind: "schedule", Book: sheets("Bill 3", `
BILL No. 3 - PUBLIC ADDRESS||||||||
Project: Fernhythe greenhouses, contract 4418

Item|Description|Zone|Tap W|Unit|Qty|Rate|Amount
3.1|PREAMBLES
3.1.1|The system is 100 V line throughout. Rates include brackets, back boxes and testing.
3.2|LOUDSPEAKERS
3.2.1|Projector, IP 66, in tropical house on output A of amplifier 1|Tropical house|10|pcs|8|145.00|1160.00
3.2.2|Projector, IP 66, in alpine house on output B of amplifier 1|Alpine house|5|pcs|6|145.00|870.00
3.2.3|Ceiling loudspeaker in seed museum on output B of amplifier 1|Seed museum|3|pcs|10|48.00|480.00
3.2.4|Spare projector, handed over in box||10|pcs|2|145.00|290.00
3.3|CONTROL AND AMPLIFICATION
3.3.1|Wall attenuator 40 W for seed museum, with back box|Seed museum||pcs|1|62.00|62.00
3.3.2|Amplifier 1, two outputs of 120 W|Plant room||pcs|1|980.00|980.00
3.4|CABLE
3.4.1|Loudspeaker cable 2 x 2.5 mm2|||m|420|2.40|1008.00
3.4.2|Terminate, test and commission|||set|1|650.00|650.00
||||||Total|5500.00
`), Truth: func(t *typed.Truth) {
		t.Is("4418", "Fernhythe greenhouses", "bill of quantities: items, units, rates; outputs told in descriptions; spares; cable by the metre that is no line")
		t.Speakers("tap_v=100; line_v=100; sheet=Bill 3; amplifier=1", `
rows|zone|count|tap_w|channel|note
8|Tropical house|8|10|A|
9|Alpine house|6|5|B|
10|Seed museum|10|3|B|unnamed control
`)
		t.Speakers("tap_v=100; line_v=100; sheet=Bill 3; status=spare", "rows|count|tap_w\n11|2|10")
		t.Channels("line_v=100; amplifier=1; rated_w=120", "channel|load_w\nA|80\nB|60")
		t.Amplifiers("", "amplifier|rated_w|load_w\n1|240|140")
		t.Controls("note=unnamed", "zone|rated_w|load_w\nSeed museum|40|30")
		t.Left("Bill 3", "5|title|\n6|note|\n7|title|\n12|title|\n13|note|control\n14|note|amplifier\n15|title|\n16|note|cable\n17|note|labour\n18|total|")
	}},

	{File: "bills/Leistungsverzeichnis Orchideenhaus.xlsx", Kind: "schedule", Book: sheets("LV", `
Leistungsverzeichnis Los 7 ELA-Anlage||||||||
Orchideenhaus Wiesental||||Projekt 7-2208

Pos.|Kurztext|Raum|Menge|ME|Anschlusswert je Stück|EP (EUR)|GP (EUR)
7.1.10|Deckenlautsprecher EN 54-24|Kasse|2|Stk|3 W|55,00|110,00
7.1.20|Deckenlautsprecher EN 54-24|Museumsladen|6|Stk|3 W|55,00|330,00
7.1.30|Wandlautsprecher IP 65|Schauhaus 1|8|Stk|10 W|98,00|784,00
7.1.40|Wandlautsprecher IP 65|Schauhaus 2|4|Stk|10 W|98,00|392,00
7.1.50|Druckkammerlautsprecher|Hof|2|Stk|15 W|120,00|240,00
7.2.10|Lautstärkeregler 30 W, Up-Dose|Museumsladen|1|Stk||41,00|41,00
7.3.10|Leistungsverstärker 240 W, 100 V|Technik|1|Stk||890,00|890,00
7.4.10|Lautsprecherleitung J-Y(St)Y 2x2x0,8||260|m||1,10|286,00
7.4.20|Inbetriebnahme||1|psch||480,00|480,00
|||||Summe netto||3553,00
`), Truth: func(t *typed.Truth) {
		t.Is("7-2208", "Orchideenhaus Wiesental", "German bill: units, unit prices; one amplifier for all; a control bought for a room")
		t.Speakers("tap_v=100; line_v=100; sheet=LV", `
rows|room|model|count|tap_w|note
5|Kasse|Deckenlautsprecher EN 54-24|2|3|
6|Museumsladen|Deckenlautsprecher EN 54-24|6|3|unnamed control
7|Schauhaus 1|Wandlautsprecher IP 65|8|10|
8|Schauhaus 2|Wandlautsprecher IP 65|4|10|
9|Hof|Druckkammerlautsprecher|2|15|
`)
		t.Channels("line_v=100", "rated_w|load_w\n240|174")
		t.Amplifiers("note=unnamed", "rated_w|load_w\n240|174")
		t.Controls("note=unnamed", "zone|rated_w|load_w\nMuseumsladen|30|18")
		t.Left("LV", "10|note|control\n11|note|amplifier\n12|note|cable\n13|note|labour\n14|total|")
	}},

	{File: "bills/Tender response Lock 9.csv", Kind: "schedule", Bytes: text(`
Tender response - schedule of equipment offered,,,,,,
Employer: Otterburn Canal Museum (Lock 9),,,,Our ref T-905,,
,,,,,,
Employer's zone,Required level,Loudspeakers offered,Qty,Transformer tap offered,Amplifier offered,Comply (Y/N) and remarks
Z1 Lock side,80 dBA,15 W horn,6,15 W,TA-250 output 1,Y
Z2 Toll house,72 dBA,6 W ceiling,5,3 W,TA-250 output 2,Y
Z3 Boat store,75 dBA,10 W cabinet,4,10 W,TA-250 output 2,Y - 20 W wall attenuator included
Z4 Towpath,80 dBA,15 W horn,8,7.5 W,TA-250 output 1,N - 78 dBA offered
,,,,,,
Amplifier TA-250: two outputs of 250 W each on 100 V line.,,,,,,
Z3: please note that 4 x 10 W is more than the 20 W attenuator of your specification allows; we offer a 50 W one at extra cost.,,,,,,
`), Truth: func(t *typed.Truth) {
		t.Is("T-905", "", "answer to a tender: the rated watts in the name, the tap beside it; an attenuator in the remark")
		t.Speakers("tap_v=100; line_v=100; amplifier=TA-250", `
rows|zone|count|tap_w|channel|note
5|Z1 Lock side|6|15|1|
6|Z2 Toll house|5|3|2|
7|Z3 Boat store|4|10|2|unnamed control
8|Z4 Towpath|8|7.5|1|
`)
		t.Channels("line_v=100; amplifier=TA-250; rated_w=250", "channel|load_w\n1|150\n2|55")
		t.Amplifiers("", "amplifier|rated_w|load_w\nTA-250|500|205")
		t.Controls("note=unnamed", "zone|rated_w|load_w\nZ3 Boat store|20|40")
	}},

	{File: "bills/Mediciones Jardín Botánico Valdeluna.xls", Kind: "schedule", Saved: "xls", Book: sheets("Mediciones", `
Mediciones y presupuesto - megafonía||||||||
Jardín Botánico Valdeluna|||||Obra 1907

Partida|Ud.|Descripción|Ubicación|Cantidad|Potencia seleccionada|Etapa|Precio|Importe
1.01|ud|Altavoz de techo|Herbario|8|3 W|E1|42,00|336,00
1.02|ud|Altavoz de techo|Tienda del museo|4|3 W|E1|42,00|168,00
1.03|ud|Bocina|Estanque|6|15 W|E2|95,00|570,00
1.04|ud|Proyector|Invernadero|10|10 W|E2|88,00|880,00
1.05|ud|Etapa de potencia E1, 60 W, 100 V|Cuarto técnico|1|||450,00|450,00
1.06|ud|Etapa de potencia E2, 240 W, 100 V|Cuarto técnico|1|||920,00|920,00
1.07|m|Cable 2x2,5 mm²||350|||1,90|665,00
|||TOTAL|||||3989,00
`), Truth: func(t *typed.Truth) {
		t.Is("1907", "Jardín Botánico Valdeluna", "Spanish bill: amplifiers as items among the loudspeakers")
		t.Speakers("tap_v=100; line_v=100; sheet=Mediciones", `
rows|room|model|count|tap_w|amplifier
5|Herbario|Altavoz de techo|8|3|E1
6|Tienda del museo|Altavoz de techo|4|3|E1
7|Estanque|Bocina|6|15|E2
8|Invernadero|Proyector|10|10|E2
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nE1|60|36\nE2|240|190")
		t.Amplifiers("", "amplifier|rated_w|load_w\nE1|60|36\nE2|240|190")
		t.Left("Mediciones", "9|note|amplifier\n10|note|amplifier\n11|note|cable\n12|total|")
	}},
}
