package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A commissioning engineer: taps required and taps left, line readings, a record sheet a site.
var commissioning = []typed.Case{
	{File: "commissioning/CR-58 Dunmere arboretum.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Record")
		p.Put("A1", `
COMMISSIONING RECORD|Job no. CR-58
Site|Dunmere Arboretum
Line voltage|100 V

Tag|Location|Model|Tap as left (W)|SPL at 1 m (dB)|Line|Attenuator|Checked
LS01|Visitor centre|C6|6|88|1.1|AT1|yes
LS02|Visitor centre|C6|6|88|1.1|AT1|yes
LS03|Visitor centre|C6|6|87|1.1|AT1|yes
LS04|Visitor centre|C6|6|88|1.1|AT1|yes
LS05|Shop|C6|3|85|1.1|AT2|yes
LS06|Shop|C6|3|85|1.1|AT2|yes
LS07|Shop|C6|3|84|1.1|AT2|yes
LS08|Education room|W10|10|91|1.2|AT3|yes
LS09|Education room|W10|10|91|1.2|AT3|yes
LS10|Herbarium|C6|1.5|82|1.2|AT4|yes
LS11|Herbarium|C6|1.5|82|1.2|AT4|yes
LS12|Workshop|W10|5|88|1.2|-|yes
LS13|Main avenue|H20|20|104|2.1|-|yes
LS14|Main avenue|H20|20|104|2.1|-|yes
LS15|Main avenue|H20|20|103|2.1|-|yes
LS16|Oak circle|H20|10|101|2.1|-|yes
LS17|Oak circle|H20|10|101|2.1|-|yes
LS18|Car park|H20|20|104|2.2|-|yes
LS19|Car park|H20|20|104|2.2|-|yes
LS20|Coach bay|H20|10|101|2.2|-|yes
`)
		l := p.Sheet("Lines")
		l.Put("A1", `
Line|Amplifier|Output|Rated W|Cable mm²|Cable length m|Impedance measured at 1 kHz (ohm)|Insulation (Mohm)
1.1|AMP1|1|60|1.5|45|310|>200
1.2|AMP1|2|60|1.5|62|365|>200
2.1|AMP2|1|120|4|310|128|>200
2.2|AMP2|2|120|2.5|140|204|150
`)
		for row, text := range []string{"1.1", "1.2", "2.1", "2.2"} {
			at, err := excelize.CoordinatesToCellName(1, row+2)
			typed.Must(err)
			typed.Must(p.File.SetCellValue("Lines", at, text))
		}
		a := p.Sheet("Attenuators")
		a.Put("A1", `
Attenuator|Location|Rated W|Steps|Override tested
AT1|Visitor centre|36|10|yes
AT2|Shop|6|10|yes
AT3|Education room|24|10|yes
AT4|Herbarium|6|10|yes
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("CR-58", "Dunmere Arboretum", "taps as left, levels, lines joined to outputs with impedance readings")
		t.Speakers("sheet=Record; tap_v=100; line_v=100; amplifier=AMP1; channel=1", `rows|tag|room|model|tap_w|control
6..9|LS01..|Visitor centre|C6|6|AT1
10..12|LS05..|Shop|C6|3|AT2`)
		t.Speakers("sheet=Record; tap_v=100; line_v=100; amplifier=AMP1; channel=2", `rows|tag|room|model|tap_w|control
13..14|LS08..|Education room|W10|10|AT3
15..16|LS10..|Herbarium|C6|1.5|AT4
17|LS12|Workshop|W10|5|`)
		t.Speakers("sheet=Record; tap_v=100; line_v=100; amplifier=AMP2; channel=1; model=H20", `rows|tag|room|tap_w
18..20|LS13..|Main avenue|20
21..22|LS16..|Oak circle|10`)
		t.Speakers("sheet=Record; tap_v=100; line_v=100; amplifier=AMP2; channel=2; model=H20", `rows|tag|room|tap_w
23..24|LS18..|Car park|20
25|LS20|Coach bay|10`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|1|60|33
AMP1|2|60|28
AMP2|1|120|80
AMP2|2|120|50`)
		t.Amplifiers("", `amplifier|load_w
AMP1|61
AMP2|130`)
		t.Controls("", `control|rated_w|load_w
AT1|36|24
AT2|6|9
AT3|24|20
AT4|6|3`)
		t.Lines("", `line|length_m|area_mm2
1.1|45|1.5
1.2|62|1.5
2.1|310|4
2.2|140|2.5`)
	}},

	{File: "commissioning/CR-63 Brackwater rink.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Taps")
		p.Put("A1", `
COMMISSIONING RECORD|Job no. CR-63|Brackwater Ice Rink|100 V line
Taps found on arrival were changed to the required values; the last column is what the loudspeaker now stands at.

Zone|Loudspeaker|Qty|Tap required (W)|Tap found (W)|Tap left at (W)
1 Rink|Horn H30|6|15|30|15
1 Rink|Horn H30 ends|2|7.5|15|7.5
2 Seats|Column K40|8|20|20|20
3 Public|Ceiling C6 foyer|6|6|3|6
3 Public|Ceiling C6 skate hire|4|3|3|3
3 Public|Ceiling C6 desk|1|3|6|3
4 Changing|Ceiling C6 rooms|8|3|3|3
4 Changing|Ceiling C6 first aid|1|1.5|1.5|1.5
4 Changing|Horn H30 plant|1|7.5|15|7.5
5 Outside|Horn H30 car park|4|15|15|15
5 Outside|Horn H30 gate|1|15|7.5|15
`)
		r := p.Sheet("Readings")
		r.Put("A1", `
Zone|Amplifier|Channel|Amplifier rating (W)|Load calculated (W)|Load measured (W)
1 Rink|PA1|1|120|105|112
2 Seats|PA1|2|240|160|158
3 Public|PA2|1|60|51|52
4 Changing|PA2|2|60|33|36
5 Outside|PA2|3|120|75|74
`)
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("CR-63", "Brackwater Ice Rink", "taps required, found and left; loads calculated and measured")
		t.Speakers("sheet=Taps; tap_v=100; line_v=100", `rows|zone|count|tap_w|amplifier|channel
5|1 Rink|6|15|PA1|1
6|1 Rink|2|7.5|PA1|1
7|2 Seats|8|20|PA1|2
8|3 Public|6|6|PA2|1
9|3 Public|4|3|PA2|1
10|3 Public|1|3|PA2|1
11|4 Changing|8|3|PA2|2
12|4 Changing|1|1.5|PA2|2
13|4 Changing|1|7.5|PA2|2
14|5 Outside|4|15|PA2|3
15|5 Outside|1|15|PA2|3`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
PA1|1|120|105
PA1|2|240|160
PA2|1|60|51
PA2|2|60|33
PA2|3|120|75`)
		t.Amplifiers("", `amplifier|load_w
PA1|265
PA2|159`)
	}},
}
