package main

import (
	"lineaudit/samples/typed"

	"github.com/xuri/excelize/v2"
)

// onderhoud is a Dutch maintenance firm with a form of its own that nobody fills in the same way.
var onderhoud = []typed.Case{
	{File: "onderhoud/2012-45 Zwembad De Rietkraag.csv", Kind: "schedule", Bytes: text(`
Klant;Zwembad De Rietkraag
Werkbon;2012-45
Systeem;100V omroep
;
Groep;Ruimte;Soort;Aantal;Instelling;Totaal;Versterker;Opmerking
1;Wedstrijdbad;hoornluidspreker;8;15W;120W;V1;
1;Instructiebad;hoornluidspreker;4;7,5W;30W;V1;
2;Entree;plafondluidspreker;6;3W;18W;V2;volumeregelaar 20W bij balie
2;Kleedkamers;plafondluidspreker;12;1,5W;18W;V2;
2;Personeelsruimte;plafondluidspreker;2;3W;6W;V2;volumeregelaar 10W
3;Buitenbad;hoornluidspreker;6;15W;90W;V3;alleen zomer
3;Ligweide;hoornluidspreker;2;15W;30W;V3;alleen zomer
;
V1: 240W;V2: 60W;V3: 120W
`), Truth: func(t *typed.Truth) {
		t.Is("2012-45", "Zwembad De Rietkraag", "Dutch; ratings of three amplifiers across one line at the bottom; controls without names in remarks")
		t.Speakers("tap_v=100; line_v=100", `
rows|room|model|count|tap_w|amplifier|zone|note
6|Wedstrijdbad|hoornluidspreker|8|15|V1|1|
7|Instructiebad|hoornluidspreker|4|7.5|V1|1|
8|Entree|plafondluidspreker|6|3|V2|2|unnamed control
9|Kleedkamers|plafondluidspreker|12|1.5|V2|2|
10|Personeelsruimte|plafondluidspreker|2|3|V2|2|unnamed control
11|Buitenbad|hoornluidspreker|6|15|V3|3|
12|Ligweide|hoornluidspreker|2|15|V3|3|
`)
		t.Channels("line_v=100", "amplifier|rated_w|load_w\nV1|240|150\nV2|60|42\nV3|120|120")
		t.Amplifiers("", "amplifier|rated_w|load_w\nV1|240|150\nV2|60|42\nV3|120|120")
		t.Controls("note=unnamed", "zone|rated_w|load_w\nEntree|20|18\nPersoneelsruimte|10|6")
	}},

	{File: "onderhoud/Sterrenwacht Heidebos.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Opname")
		p.Put("A1", `
Opname geluidsinstallatie||||||||
Object: Sterrenwacht Heidebos|||Projectnr. 2018-009|||||
||||||||
Verd.|Ruimte|Luidsprekers||||Lijn|Regelaar||Opm.
||type|st.|W/st.|W tot.||code|W|
BG|Hal|LPL|4|3|12|A|VR1|20|
BG|Winkel|LPL|3|3|9|A|VR1|20|samen met hal
BG|Toiletten|LPL|2|1,5|3|A|||
1|Projectiezaal|KOL|4|10|40|B|VR2|36|
1|Foyer boven|LPL|4|3|12|B|VR3|12|
2|Koepel|KOL|2|5|10|B|||
Dak|Terras|HRN|2|15|30|C|||doorverbonden, staat altijd aan
||||||116||||

Lijn A: kanaal 1 (60 W). Lijn B: kanaal 2 (60 W). Lijn C: kanaal 3 (60 W), versterker 4 x 60 W / 100 V, kanaal 4 vrij.
`)
		p.Merge("C4:F4", "H4:I4", "A4:A5", "B4:B5", "G4:G5", "J4:J5")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2018-009", "Sterrenwacht Heidebos", "two header rows, a total without a word, lines and channels in a sentence below")
		t.Speakers("tap_v=100; line_v=100; sheet=Opname", `
rows|room|model|count|tap_w|channel|control
6|Hal|LPL|4|3|A|VR1
7|Winkel|LPL|3|3|A|VR1
8|Toiletten|LPL|2|1.5|A|
9|Projectiezaal|KOL|4|10|B|VR2
10|Foyer boven|LPL|4|3|B|VR3
11|Koepel|KOL|2|5|B|
12|Terras|HRN|2|15|C|
`)
		t.Channels("line_v=100; rated_w=60", "channel|load_w\nA|24\nB|62\nC|30")
		t.Controls("", "control|rated_w|load_w\nVR1|20|21\nVR2|36|40\nVR3|12|12")
		t.Left("Opname", "13|total|a sum without a word")
	}},

	{File: "onderhoud/IJsbaan Noorderplas tekeninglijst.xls", Kind: "schedule", Saved: "xls", Book: sheets("Luidsprekers", `
Project 2020-117 IJsbaan Noorderplas
Nr|Ruimtenr|Omschrijving|Type|Aftakking (W)|Zone
LS1|0.01|Inkomhal|plafond|3|Z1
LS2|0.01|Inkomhal|plafond|3|Z1
LS3|0.01|Inkomhal|plafond|3|Z1
LS4|0.02|Schaatsverhuur|plafond|3|Z1
LS5|0.02|Schaatsverhuur|plafond|3|Z1
LS6|0.10|IJshal|hoorn|20|Z2
LS7|0.10|IJshal|hoorn|20|Z2
LS8|0.10|IJshal|hoorn|20|Z2
LS9|0.10|IJshal|hoorn|20|Z2
LS10|0.10|IJshal|hoorn|20|Z2
LS11|0.10|IJshal|hoorn|20|Z2
LS12|1.01|Regiekamer|plafond|1.5|Z1
LS13|0.11|Dweilmachine|hoorn|10|Z2
`, "Zones", `
Zone|Omschrijving|Versterker|Uitgang|Vermogen uitgang|Kabel|Lengte (m)
Z1|Publieksruimten|AMP-1|1|60 W|2x1,5|65
Z2|IJs|AMP-1|2|120 W|2x2,5|140
`, "Regelaars", `
Regelaar|In ruimte|Regelt|Vermogen
R-1|0.02|LS4 + LS5|10 W
R-2|1.01|LS12|5 W

Spanning 100 V
`), Truth: func(t *typed.Truth) {
		t.Is("2020-117", "IJsbaan Noorderplas", "controls on a sheet of their own say which loudspeakers they control")
		t.Speakers("tap_v=100; line_v=100; sheet=Luidsprekers; amplifier=AMP-1", `
rows|tag|room|model|tap_w|zone|channel|control
3..5|LS1..|Inkomhal|plafond|3|Z1|1|
6..7|LS4..|Schaatsverhuur|plafond|3|Z1|1|R-1
8..13|LS6..|IJshal|hoorn|20|Z2|2|
14|LS12|Regiekamer|plafond|1.5|Z1|1|R-2
15|LS13|Dweilmachine|hoorn|10|Z2|2|
`)
		t.Channels("line_v=100; amplifier=AMP-1", "channel|rated_w|load_w\n1|60|16.5\n2|120|130")
		t.Amplifiers("", "amplifier|load_w\nAMP-1|146.5")
		t.Controls("", "control|rated_w|load_w\nR-1|10|6\nR-2|5|1.5")
		t.Lines("note=one length a zone", "line|zone|length_m|area_mm2\nZ1|Z1|65|1.5\nZ2|Z2|140|2.5")
	}},
}
