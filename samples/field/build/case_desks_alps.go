package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// desksAlps: an Austrian planner's room book and a Swiss school janitor's list.
var desksAlps = []typed.Case{
	{File: "desks/planung/Raumbuch Heimatmuseum.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Raumbuch")
		p.Put("A1", `
Heimatmuseum Oberalmtal||||||GZ 17/0342
ELA-Anlage, Lautsprecher lt. Raumbuch, 100-V-Technik
||
R.-Nr.|Bezeichnung|LS-Type|Stk.|Abgriff [W]|Summe [W]|LS-Kreis|LR
'E.01|Windfang|DL|1|3|3|K1|
'E.02|Kassa|DL|1|1.5|1.5|K1|LR1
'E.03|Foyer|DL|4|3|12|K1|
'E.04|Garderobe|DL|2|1.5|3|K1|
'E.05|Trachtensaal|WL|6|6|36|K2|LR2
'E.06|Stube|WL|2|3|6|K2|
'1.01|Stiegenhaus|WL|2|3|6|K1|
'1.02|Vortragssaal|TS|4|12|48|K3|LR3
'1.03|Bibliothek|DL|3|1.5|4.5|K3|LR4
'1.04|Gang|DL|3|1.5|4.5|K3|
'U.01|Depot|DL|4|3|12|K2|
|Summe||32||136.5||
||
DL = Deckenlautsprecher, WL = Wandlautsprecher, TS = Tonsäule, LR = Lautstärkeregler
`)
		p.Bold("A1", "A4:H4", "B16:F16")
		q := p.Sheet("Verstärker")
		q.Put("A1", `
Verstärker|LS-Kreis|Nennleistung
VE1|K1|60 W
VE2|K2|120 W
VE3|K3|60 W
`)
		q.Bold("A1:C1")
		r := p.Sheet("LR")
		r.Put("A1", `
LR|Montageort|Belastbarkeit
LR1|Kassa|6 W
LR2|Trachtensaal, bei der Tür|50 W
LR3|Vortragssaal, Rednerpult|50 W
LR4|Bibliothek|12 W
`)
		r.Bold("A1:C1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("17/0342", "Heimatmuseum Oberalmtal", "plain Austrian room book; amplifiers and controls on their own sheets; a legend at the foot")
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; amplifier=VE1; channel=K1", `rows|room|count|tap_w|control
5|Windfang|1|3|
6|Kassa|1|1.5|LR1
7|Foyer|4|3|
8|Garderobe|2|1.5|
11|Stiegenhaus|2|3|`)
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; amplifier=VE2; channel=K2", `rows|room|count|tap_w|control
9|Trachtensaal|6|6|LR2
10|Stube|2|3|
15|Depot|4|3|`)
		t.Speakers("sheet=Raumbuch; tap_v=100; line_v=100; amplifier=VE3; channel=K3", `rows|room|count|tap_w|control
12|Vortragssaal|4|12|LR3
13|Bibliothek|3|1.5|LR4
14|Gang|3|1.5|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
VE1|K1|60|25.5
VE2|K2|120|54
VE3|K3|60|57`)
		t.Amplifiers("", `amplifier|rated_w|load_w
VE1|60|25.5
VE2|120|54
VE3|60|57`)
		t.Controls("", `control|rated_w|load_w
LR1|6|1.5
LR2|50|36
LR3|50|48
LR4|12|4.5`)
		t.Left("Raumbuch", `16|total|sums
18|note|legend`)
	}},

	{File: "desks/abwart/Schulhaus Rietli Lautsprecher.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Schulhaus Rietli, Lautsprecher (Liste vom Abwart);;;;
Verstärker V1 im Lehrerzimmer 240 W, V2 im Geräteraum 120 W, alles 100 Volt;;;;
;;;;
Wo;Stück;Watt pro Stück;Verstärker;Bemerkungen
Parterre;;;;
Eingang;2;6;V1;
Gang;4;3;V1;
Schulzimmer 1 bis 4;4;3;V1;je 1 Stück
Lehrerzimmer;1;3;V1;Regler R1 (5 W)
WC Knaben;1;1.5;V1;
WC Mädchen;1;1.5;V1;
1. Stock;;;;
Gang;4;3;V1;
Schulzimmer 5 bis 10;6;3;V1;je 1 Stück
Singsaal;4;10;V1;Regler R2 (50 W) bei der Bühne
Estrich;1;3;V1;2019 demontiert
Turnhalle;;;;
Halle;6;15;V2;
Garderoben;4;3;V2;
Pausenplatz;2;15;V2;Hörner, gegen die Strasse
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Schulhaus Rietli", "Swiss janitor; floors as titles, amplifiers rated in a sentence, controls in remarks, one loudspeaker taken down; V2 carries more than it is rated for")
		t.Speakers("tap_v=100; line_v=100; amplifier=V1; zone=Parterre; note=floor as zone", `rows|room|count|tap_w|control
6|Eingang|2|6|
7|Gang|4|3|
8|Schulzimmer 1 bis 4|4|3|
9|Lehrerzimmer|1|3|R1
10|WC Knaben|1|1.5|
11|WC Mädchen|1|1.5|`)
		t.Speakers("tap_v=100; line_v=100; amplifier=V1; zone=1. Stock; note=floor as zone", `rows|room|count|tap_w|control
13|Gang|4|3|
14|Schulzimmer 5 bis 10|6|3|
15|Singsaal|4|10|R2`)
		t.Speakers("tap_v=100; line_v=100; amplifier=V2; zone=Turnhalle; note=area as zone", `rows|room|count|tap_w
18|Halle|6|15
19|Garderoben|4|3
20|Pausenplatz|2|15`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
V1|240|112
V2|120|132`)
		t.Amplifiers("", `amplifier|rated_w|load_w
V1|240|112
V2|120|132`)
		t.Controls("", `control|rated_w|load_w
R1|5|3
R2|50|40`)
		t.Left("", `16|removed|taken down in 2019`)
	}},
}
