package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// errandsDutch are a drawing office, a pool's caretaker and a contractor's handover list.
var errandsDutch = []typed.Case{
	{File: "errands/revisie/Station Veenmeer revisie B.xlsx", Kind: "schedule", Book: func() *excelize.File {
		c := typed.NewBook("Voorblad")
		c.Put("A1", `
Station Veenmeer
Omroepinstallatie, revisiegegevens
||
Werknummer|70315
Revisie|B
Lijnspanning|100 V
`)
		c.Bold("A1:A2")
		p := c.Sheet("Luidsprekers")
		p.Put("A1", `
Aantal luidsprekers per aftakking
Groep|Ruimte|1,5 W|3 W|6 W|10 W|Totaal W
G1|Perron 1||||8|80
G1|Trap perron 1|||2||12
G2|Perron 2||||8|80
G3|Stationshal|||6||36
G3|Reisinformatie|2|1|||6
G3|Wachtkamer||4|||12
G4|Personeelsruimte||2|||6
G4|Kantoor|1||||1.5
G4|Fietsenstalling|||4|2|44
|Totaal|3|7|12|18|277.5
`)
		p.Bold("A1", "A2:G2", "B12:G12")
		q := c.Sheet("Versterkers")
		q.Put("A1", `
Groep|Versterker|Kanaal|Vermogen
G1|V1|1|120 W
G2|V1|2|120 W
G3|V2|1|120 W
G4|V2|2|60 W
||
Volumeregelaar|Ruimte|Belastbaar
VR1|Reisinformatie|12 W
VR2|Wachtkamer|24 W
VR3|Personeelsruimte|12 W
VR4|Kantoor|3 W
`)
		q.Bold("A1:D1", "A7:C7")
		r := c.Sheet("Kabels")
		r.Put("A1", `
Groep|Kabel|Lengte
G1|2 x 2,5 mm²|180 m
G2|2 x 2,5 mm²|210 m
G3|2 x 1,5 mm²|60 m
G4|2 x 1,5 mm²|95 m
`)
		r.Bold("A1:C1")
		return c.File
	}, Truth: func(t *typed.Truth) {
		t.Is("70315", "Station Veenmeer", "matrix of counts by tap with decimal comma in the header, two taps in one room; outputs and cables by group, controls by room, voltage on the cover")
		t.Revision("B", false)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; amplifier=V1; channel=1", `rows|room|count|tap_w
3|Perron 1|8|10
4|Trap perron 1|2|6`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; amplifier=V1; channel=2", `rows|room|count|tap_w
5|Perron 2|8|10`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; amplifier=V2; channel=1", `rows|room|count|tap_w|control
6|Stationshal|6|6|
7|Reisinformatie|2|1.5|VR1
7|Reisinformatie|1|3|VR1
8|Wachtkamer|4|3|VR2`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; amplifier=V2; channel=2", `rows|room|count|tap_w|control
9|Personeelsruimte|2|3|VR3
10|Kantoor|1|1.5|VR4
11|Fietsenstalling|4|6|
11|Fietsenstalling|2|10|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|120|92
V1|2|120|80
V2|1|120|54
V2|2|60|51.5`)
		t.Amplifiers("", `amplifier|load_w
V1|172
V2|105.5`)
		t.Controls("", `control|rated_w|load_w
VR1|12|6
VR2|24|12
VR3|12|6
VR4|3|1.5`)
		t.Lines("note=one length a group", `line|length_m|area_mm2
G1|180|2.5
G2|210|2.5
G3|60|1.5
G4|95|1.5`)
		t.Left("Luidsprekers", `12|total|sums`)
	}},

	{File: "errands/beheer/zwembad De Zilverplas omroep.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Blad1")
		p.Put("A1", `
zwembad De Zilverplas, omroep 100 V, opname beheerder
||
ruimte|aantal|W per stuk|versterker|regelaar
wedstrijdbad lange zijde|6|15|V1 kanaal A|
wedstrijdbad korte zijde|2|15|V1 kanaal A|
doelgroepenbad|4|6|V1 kanaal B|VR1 50W
peuterbad|3|6|V1 kanaal B|VR2 24W
groepskleedruimte|4|3|V2 kanaal A|
kleedcabines|8|3|V2 kanaal A|
douches|2|3|V2 kanaal A|
entree|4|3|V2 kanaal B|VR3 18W
kassa|1|1.5|V2 kanaal B|VR4 3W
vergaderzaal|4|3|V2 kanaal B|VR5 18W
||
V1 is 2 x 240 W, V2 is 2 x 60 W
doorgestreept = weggehaald bij de verbouwing
`)
		p.Strike("A10:E10")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "zwembad De Zilverplas", "plain list in lower case; amplifier and output in one cell, control and rating in one cell, a row struck through and the legend below")
		t.Speakers("sheet=Blad1; tap_v=100; line_v=100; amplifier=V1", `rows|room|count|tap_w|channel|control
4|wedstrijdbad lange zijde|6|15|A|
5|wedstrijdbad korte zijde|2|15|A|
6|doelgroepenbad|4|6|B|VR1
7|peuterbad|3|6|B|VR2`)
		t.Speakers("sheet=Blad1; tap_v=100; line_v=100; amplifier=V2", `rows|room|count|tap_w|channel|control
8|groepskleedruimte|4|3|A|
9|kleedcabines|8|3|A|
11|entree|4|3|B|VR3
12|kassa|1|1.5|B|VR4
13|vergaderzaal|4|3|B|VR5`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|A|240|120
V1|B|240|42
V2|A|60|36
V2|B|60|25.5`)
		t.Amplifiers("", `amplifier|load_w
V1|162
V2|61.5`)
		t.Controls("", `control|rated_w|load_w
VR1|50|24
VR2|24|18
VR3|18|12
VR4|3|1.5
VR5|18|12`)
		t.Left("Blad1", `10|removed|struck through`)
	}},

	{File: "errands/oplevering/4410 bibliotheek Het Lindeblad.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Latin1(typed.DOS(`
Bibliotheek Het Lindeblad, opleverlijst omroep;;;;
werk 4410, versterker ZV-1, 100 V-lijnen;;;;
;;;;
Uitgang 1, 120 W;;;;
ruimte;stuks;aftakking W;regelaar;opmerking
Leeszaal boven;8;6;VR1 (60 W);
Leeszaal beneden;6;6;VR2 (60 W);één rooster nog schilderen
Tijdschriften;2;3;;
;;;;
Uitgang 2, 60 W;;;;
ruimte;stuks;aftakking W;regelaar;opmerking
Jeugd;5;3;VR3 (24 W);
Voorleeshoek;1;1,5;VR4 (3 W);
Computerzaal;4;3;;regelaar vervallen
;;;;
Uitgang 3, 60 W;;;;
ruimte;stuks;aftakking W;regelaar;opmerking
Expeditie;2;10;;
Magazijn;3;6;;
Lifthal;1;6;;nog niet gemonteerd, plafond ontbreekt
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("4410", "Bibliotheek Het Lindeblad", "CSV with a table an output, rating in the title of each and the amplifier's name above all; one loudspeaker not yet fitted")
		t.Speakers("tap_v=100; line_v=100; amplifier=ZV-1; channel=1", `rows|room|count|tap_w|control
6|Leeszaal boven|8|6|VR1
7|Leeszaal beneden|6|6|VR2
8|Tijdschriften|2|3|`)
		t.Speakers("tap_v=100; line_v=100; amplifier=ZV-1; channel=2", `rows|room|count|tap_w|control
12|Jeugd|5|3|VR3
13|Voorleeshoek|1|1.5|VR4
14|Computerzaal|4|3|`)
		t.Speakers("tap_v=100; line_v=100; amplifier=ZV-1; channel=3", `rows|room|count|tap_w
18|Expeditie|2|10
19|Magazijn|3|6`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
ZV-1|1|120|90
ZV-1|2|60|28.5
ZV-1|3|60|38`)
		t.Amplifiers("", `amplifier|load_w
ZV-1|156.5`)
		t.Controls("", `control|rated_w|load_w
VR1|60|48
VR2|60|36
VR3|24|15
VR4|3|1.5`)
		t.Left("", `20|future|not yet fitted`)
	}},
}
