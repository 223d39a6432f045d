package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// Four more who write Dutch: a service mechanic, a work planner, a head gardener, and a lighting technician (not a schedule).
var tradesDutch2 = []typed.Case{

	// Netherlands: a service mechanic's findings in a theatre; one transformer out of reach, one loudspeaker taken along.
	{File: "service/55120 schouwburg bevindingen.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Bevindingen")
		p.Put("A1", `
Order 55120|Schouwburg De Klaproos, jaarlijks onderhoud oproepinstallatie
Versterker PA-1, 120 W, één lijn 100 V
||
Nr.|Plaats|Aantal|Stand trafo|Regelaar|Bevinding
1|Foyer beneden|4|6 W|R1|in orde
2|Foyer boven|4|6 W|R1|in orde
3|Garderobe|2|3 W||in orde
4|Kleedkamers 1 t/m 5|5|3 W|R2|in orde
5|Kleedkamergang|2|3 W||rooster vervangen, in orde
6|Toneeltoren|2|niet af te lezen||hangt te hoog, hoogwerker nodig
7|Artiesteningang|1|3 W||stond op 6 W, op verzoek omgezet
8|Decormagazijn|1|10 W||spreekspoel stuk, meegenomen, nieuwe wordt nageleverd
9|Laadkuil|1|10 W||in orde
||
R1 is een regelaar van 60 W, R2 een van 24 W.
`)
		p.Bold("A1:B1", "A4:F4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("55120", "Schouwburg De Klaproos", "findings of a service round: a tap that could not be read, a loudspeaker taken along, a tap changed from 6 to 3 W in the remark")
		t.Speakers("sheet=Bevindingen; tap_v=100; line_v=100; amplifier=PA-1", `rows|room|count|tap_w|control
5|Foyer beneden|4|6|R1
6|Foyer boven|4|6|R1
7|Garderobe|2|3|
8|Kleedkamers 1 t/m 5|5|3|R2
9|Kleedkamergang|2|3|
10|Toneeltoren|2||
11|Artiesteningang|1|3|
13|Laadkuil|1|10|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_min_w
PA-1|120|88`)
		t.Amplifiers("", `amplifier|rated_w
PA-1|120`)
		t.Controls("", `control|rated_w|load_w
R1|60|48
R2|24|15`)
		t.Left("Bevindingen", `12|removed|taken along, a new one follows`)
		t.Asks("Bevindingen", `10|asked|tap of the two loudspeakers in the fly tower`)
	}},

	// Netherlands: a work planner prepares a railway station: loudspeakers, rack and cables on three sheets, joined by line number.
	{File: "werkvoorbereiding/station Veenwolde omroep.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Luidsprekers")
		p.Put("A1", `
Lijn|Locatie|Aantal|Type|Aftakking (W)|Belasting (W)|Regelaar
11|Perron 1, kap|10|lijnkast|6|60|
11|Perron 1, kop|2|hoorn|15|30|
12|Perron 2, kap|10|lijnkast|6|60|
12|Perron 2, kop|2|hoorn|15|30|
21|Reizigerstunnel|8|plafond|3|24|
21|Fietsenkelder|6|hoorn|5|30|
22|Stationshal|8|plafond|3|24|
22|Wachtkamer|4|plafond|3|12|VR22a (15 W)
22|Loket|1|plafond|1.5|1.5|VR22b (5 W)
22|Personeelsverblijf|2|plafond|1.5|3|VR22c (5 W)
`)
		p.Bold("A1:G1")
		q := p.Sheet("Rack")
		q.Put("A1", `
Station Veenwolde, werknr. 30417
Versterker|Uitgang|W|Lijn
VST1|1|120|11
VST1|2|120|12
VST2|1|60|21
VST2|2|60|22
Alle uitgangen 100 V
`)
		q.Bold("A1", "A2:D2")
		r := p.Sheet("Kabels")
		r.Put("A1", `
Lijn|Kabel|Doorsnede|Lengte
11|grond|2x4 mm²|210 m
12|grond|2x4 mm²|235 m
21|binnen|2x2,5 mm²|85 m
22|binnen|2x1,5 mm²|60 m
`)
		r.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("30417", "Station Veenwolde", "plain; three sheets joined by line number, the voltage at the foot of the rack sheet")
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; amplifier=VST1; channel=1", `rows|room|count|tap_w
2|Perron 1, kap|10|6
3|Perron 1, kop|2|15`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; amplifier=VST1; channel=2", `rows|room|count|tap_w
4|Perron 2, kap|10|6
5|Perron 2, kop|2|15`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; amplifier=VST2; channel=1", `rows|room|count|tap_w
6|Reizigerstunnel|8|3
7|Fietsenkelder|6|5`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; amplifier=VST2; channel=2", `rows|room|count|tap_w|control
8|Stationshal|8|3|
9|Wachtkamer|4|3|VR22a
10|Loket|1|1.5|VR22b
11|Personeelsverblijf|2|1.5|VR22c`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
VST1|1|120|90
VST1|2|120|90
VST2|1|60|54
VST2|2|60|40.5`)
		t.Amplifiers("", `amplifier|load_w
VST1|180
VST2|94.5`)
		t.Controls("", `control|rated_w|load_w
VR22a|15|12
VR22b|5|1.5
VR22c|5|3`)
		t.Lines("note=one length a line", `line|length_m|area_mm2
11|210|4
12|235|4
21|85|2.5
22|60|1.5`)
	}},

	// Belgium: the head gardener of a botanical garden types up his notebook, ditto marks and all.
	{File: "plantentuin/luidsprekers serres.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Blad1")
		p.Put("A1", `
Luidsprekers plantentuin Ter Bronnen
De versterker staat in het poortgebouw: 2 uitgangen van 120 W, 100 V
||
Plaats|Stuks|Stand|Knop
||
Serres (uitgang 1)
Palmenserre|4|10 W|
Orchideeënserre|3|6 W|
Varenserre|2|"|
Cactusserre|"|"|
Kweekserre|1 hoorn|10 W|
||
Gebouwen (uitgang 2)
Poortgebouw|2|3 W|
Herbarium|4|"|K1 (15 W)
Leslokaal|"|"|K2 (15 W)
Bureel|1|1,5 W|K3 (5 W)
Werkplaats|2|6 W|
Oude druivenserre|2|6 W|afgebroken, luidsprekers zijn weg
`)
		p.Bold("A1", "A4:D4", "A6", "A13")
		p.Strike("A19:C19")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "plantentuin Ter Bronnen", "ditto marks for count and tap, areas as titles with the output of the one amplifier, a struck-through row of a house pulled down")
		t.Speakers("sheet=Blad1; tap_v=100; line_v=100; zone=Serres; channel=1; note=area title as zone", `rows|room|count|tap_w
7|Palmenserre|4|10
8|Orchideeënserre|3|6
9|Varenserre|2|6
10|Cactusserre|2|6
11|Kweekserre|1|10`)
		t.Speakers("sheet=Blad1; tap_v=100; line_v=100; zone=Gebouwen; channel=2; note=area title as zone", `rows|room|count|tap_w|control
14|Poortgebouw|2|3|
15|Herbarium|4|3|K1
16|Leslokaal|4|3|K2
17|Bureel|1|1.5|K3
18|Werkplaats|2|6|`)
		t.Channels("line_v=100; rated_w=120", `amplifier|channel|load_w
|1|92
|2|43.5`)
		t.Amplifiers("", `amplifier|load_w
|135.5`)
		t.Controls("", `control|zone|rated_w|load_w
K1|Gebouwen|15|12
K2|Gebouwen|15|12
K3|Gebouwen|5|1.5`)
		t.Left("Blad1", `19|removed|struck out, house pulled down`)
	}},

	// Netherlands: the lighting technician of a museum lists spots by room, watts and dimmer: not a schedule of loudspeakers.
	{File: "museum/spots per zaal.csv", Kind: "not-a-schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Zaal;Zone;Aantal;Armatuur;Watt per stuk;Totaal W;Dimmerkanaal;Groep;Kabel (m)
Entree;A;6;inbouwspot;6;36;1.1;L1;22
Zaal 1;A;12;railspot;10;120;1.2;L1;34
Zaal 2;A;10;railspot;10;100;1.3;L2;41
Prentenkabinet;B;8;railspot;3;24;2.1;L2;37
Vitrinegang;B;14;vitrinelampje;1,5;21;2.2;L3;48
Trappenhuis;B;4;wandarmatuur;15;60;niet dimbaar;L3;30
Depot;C;6;tl-buis;18;108;niet dimbaar;L4;52
Gevel;C;4;schijnwerper;20;80;2.4;L4;65
Totaal;;64;;;549;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "", "spotlights by room and zone with watts, dimmer channels and cable lengths")
	}},
}
