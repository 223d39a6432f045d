package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// tonguesDutch are a Flemish installer, a Dutch installer and the caretaker of a Dutch riding stable.
var tonguesDutch = []typed.Case{
	{File: "tongues/werven/21.114 De Wilgenhof opmeting.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("opmeting")
		p.Put("A1", `
Werf 21.114 - gemeentelijke basisschool De Wilgenhof
opmeting dd. 3/09/21, boxen op 100V

lokaal|aantal|type|tap|kring|potmeter|opm.
inkomhal|2 st.|opbouw|6W|K1|nee|
refter|6 st.|opbouw|6W|K1|ja, 50W|
turnzaal|4 st.|met korf|10W|K2|ja, 50W|potmeter in toestellenberging
leraarskamer|1 st.|inbouw|3W|K1|ja, 6W|
klassen 1A t/m 3B|6 st.|inbouw|3W|K1|nee|1 per klas
gang boven|4 st.|inbouw|3W|K1|nee|
speelplaats groot|2 st.|hoorn|15W|K2|nee|
speelplaats klein|1 st.|hoorn|15W|K2|nee|
fietsenstalling|1 st.|hoorn|15W|K2|nee|weggenomen voor nieuwe luifel, komt niet terug
bureel directie|1 st.|inbouw|1,5W|K1|nee|
container achteraan|2 st.|opbouw|6W|K1|nee|voorzien, container komt pas in januari

K1 zit op versterker V1 (120W), K2 op V2 (240W)
`)
		p.Bold("A1", "A4:G4")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("21.114", "gemeentelijke basisschool De Wilgenhof", "plain; unnamed controls as 'ja, 50W'; circuits to amplifiers in a sentence; classes as a range; one taken away, two foreseen")
		t.Speakers("sheet=opmeting; tap_v=100; line_v=100; amplifier=V1", `rows|room|count|tap_w|note
5|inkomhal|2|6|
6|refter|6|6|unnamed
8|leraarskamer|1|3|unnamed
9|klassen 1A t/m 3B|6|3|
10|gang boven|4|3|
14|bureel directie|1|1.5|`)
		t.Speakers("sheet=opmeting; tap_v=100; line_v=100; amplifier=V2", `rows|room|count|tap_w|note
7|turnzaal|4|10|unnamed
11|speelplaats groot|2|15|
12|speelplaats klein|1|15|`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
V1|120|82.5
V2|240|85`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|120|82.5
V2|240|85`)
		t.Controls("note=unnamed", `control|zone|rated_w|load_w
|refter|50|36
|turnzaal|50|40
|leraarskamer|6|3`)
		t.Left("opmeting", `13|removed|taken away
15|future|foreseen`)
	}},

	{File: "tongues/ijsbaan/werkbon 30418 omroep.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Speakers")
		p.Put("A1", `
Werkbon 30418|IJsbaan De Poelster, omroep 100V
||
Zone|Ruimte|St.|Afgetapt op|Regelaar|Opm.
Z1|Baan binnenbocht|6|20 W||
Z1|Baan buitenbocht|6|20 W||
Z2|Tribune laag|8|6 W||
Z2|Tribune hoog|6|6 W||2 st. hangen scheef
Z3|Hal/kassa|4|3 W|VR1|
Z3|Schaatsverhuur|3|3 W|VR2|
Z3|Slijperij|1|6 W||herrie
Z3|EHBO|1|1,5 W|VR3|
Z3|Gang kleedkamers|5|1,5 W||
Z3|Kleedkamer 1 t/m 8|8|1,5 W||
Z3|Bestuurskamer|2|3 W||vervallen i.v.m. verbouwing
Z4|Stalling dweilmachine|1|15 W||
Z4|Laaddek|2|10 W||
Z4|Parkeerterrein|3|15 W||fase 2, nog te plaatsen
`)
		p.Bold("A1", "A3:F3")
		q := p.Sheet("MER")
		q.Put("A1", `
Versterker|Uitg.|Verm. (W)|Zone
V1|1|240|Z1
V2|1|120|Z2
V2|2|120|Z3
V3|1|60|Z4

Regelaar|Verm. (W)
VR1|24
VR2|12
VR3|6
`)
		q.Bold("A1:D1", "A7:B7")
		r := p.Sheet("Kabel")
		r.Put("A1", `
Van|Naar|Type|mtr
V1.1|Baan binnenbocht|YMvK 2x4|160
V2.1|Tribune laag|YMvK 2x2,5|95
V2.2|Hal/kassa|YMvK 2x1,5|40
V3.1|Stalling dweilmachine|YMvK 2x2,5|125
`)
		r.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("30418", "IJsbaan De Poelster", "zones to outputs, controls and cable on further sheets; one output just full; rooms as a range; dropped because of rebuilding, still to be placed")
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; zone=Z1; amplifier=V1; channel=1", `rows|room|count|tap_w
4|Baan binnenbocht|6|20
5|Baan buitenbocht|6|20`)
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; zone=Z2; amplifier=V2; channel=1", `rows|room|count|tap_w
6|Tribune laag|8|6
7|Tribune hoog|6|6`)
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; zone=Z3; amplifier=V2; channel=2", `rows|room|count|tap_w|control
8|Hal/kassa|4|3|VR1
9|Schaatsverhuur|3|3|VR2
10|Slijperij|1|6|
11|EHBO|1|1.5|VR3
12|Gang kleedkamers|5|1.5|
13|Kleedkamer 1 t/m 8|8|1.5|`)
		t.Speakers("sheet=Speakers; tap_v=100; line_v=100; zone=Z4; amplifier=V3; channel=1", `rows|room|count|tap_w
15|Stalling dweilmachine|1|15
16|Laaddek|2|10`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|240|240
V2|1|120|84
V2|2|120|48
V3|1|60|35`)
		t.Amplifiers("", `amplifier|load_w
V1|240
V2|132
V3|35`)
		t.Controls("", `control|zone|rated_w|load_w
VR1|Z3|24|12
VR2|Z3|12|9
VR3|Z3|6|1.5`)
		t.Lines("", `from|to|length_m|area_mm2
V1.1|Baan binnenbocht|160|4
V2.1|Tribune laag|95|2.5
V2.2|Hal/kassa|40|1.5
V3.1|Stalling dweilmachine|125|2.5`)
		t.Left("Speakers", `14|removed|dropped
17|future|phase 2`)
	}},

	{File: "tongues/manege/speakers manege.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Manege De Hoefslag - waar hangt wat (voor de storingsmonteur);;;;
bijgewerkt 11 mrt 2020;;;;
;;;;
Plek;Speakers;Staat op;Draaiknop;Bijzonderheden
Grote rijhal, lange zijde A;4x hoorn;15 W;;
Grote rijhal, lange zijde B;4x hoorn;15 W;;
Kleine rijhal;3x hoorn;10 W;;
Stalgang links;3x kastje;3 W;knop 1;paarden schrikken, niet te hard
Stalgang rechts;3x kastje;3 W;knop 1;
Zadelkamer;1x kastje;3 W;knop 2;
Kantoor;1x inbouw;1,5 W;knop 3;
Voerzolder;1x kastje;3 W;;losgehaald door muizen, ligt in la
Buitenbak;2x hoorn;15 W;;
Longeercirkel;1x hoorn;weet ik niet;;Bas heeft die gehangen, navragen
;;;;
Versterker op kantoor: 240 W, 100 volt, alles zit op dezelfde uitgang;;;;
Knop 1 is 36 W, knop 2 en 3 zijn 6 W;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Manege De Hoefslag", "a caretaker's list; counts as 4x hoorn, knobs rated below, one amplifier without a name; one taken loose and put in a drawer, one tap not known")
		t.Speakers("tap_v=100; line_v=100", `rows|room|count|tap_w|control
5|Grote rijhal, lange zijde A|4|15|
6|Grote rijhal, lange zijde B|4|15|
7|Kleine rijhal|3|10|
8|Stalgang links|3|3|knop 1
9|Stalgang rechts|3|3|knop 1
10|Zadelkamer|1|3|knop 2
11|Kantoor|1|1.5|knop 3
13|Buitenbak|2|15|
14|Longeercirkel|1||`)
		t.Channels("line_v=100", `amplifier|rated_w|load_min_w
|240|202.5`)
		t.Amplifiers("", `amplifier|rated_w
|240`)
		t.Controls("", `control|rated_w|load_w
knop 1|36|18
knop 2|6|3
knop 3|6|1.5`)
		t.Left("", `12|removed|taken loose, in a drawer`)
		t.Asks("", `14|asked|tap at the lunging ring`)
	}},
}
