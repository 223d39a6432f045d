package main

import "lineaudit/samples/typed"

// valsolina are more lists of the Italian-speaking foundation.
func valsolina() []typed.Case {
	return []typed.Case{
		{File: "Orto botanico Collefiorito/EVAC zone.xlsx", Kind: "schedule", Saved: "xlsx", Book: book("Zone", `
ORTO BOTANICO DI COLLEFIORITO
Impianto EVAC - tabella zone|||||||Rev. 1
|||||||
Zona|Ambiente|N. diffusori|Tipo|Taratura|Carico linea A|Carico linea B|Canale
Z1|Serra grande|8|Proiettore|10 W|40 W|40 W|1
|Serra grande, galleria|4|Proiettore|5 W|10 W|10 W|1
Z2|Biglietteria|2|Incasso|3 W|3 W|3 W|2
|Bookshop|4|Incasso|3 W|6 W|6 W|2
|Servizi|2|Incasso|1,5 W|1,5 W|1,5 W|2
Z3|Vivaio|6|Tromba|15 W|45 W|45 W|3
Totale||26|||105,5 W|105,5 W|

Linea 100 V. Amplificatore a 3 canali da 120 W; linee A e B in parallelo sullo stesso canale.
`, merged("A5:A6", "A7:A9"), bold("A1", "A4:H4")), Truth: func(t *typed.Truth) {
			t.Is("", "Orto botanico di Collefiorito", "the row's watts are split over lines A and B, which hang on one channel; merged zone cells")
			t.Revision("1", false)
			t.Speakers("tap_v=100; line_v=100; sheet=Zone", `
rows|zone|room|model|count|tap_w|channel
5|Z1|Serra grande|Proiettore|8|10|1
6|Z1|Serra grande, galleria|Proiettore|4|5|1
7|Z2|Biglietteria|Incasso|2|3|2
8|Z2|Bookshop|Incasso|4|3|2
9|Z2|Servizi|Incasso|2|1.5|2
10|Z3|Vivaio|Tromba|6|15|3
`)
			t.Channels("line_v=100; rated_w=120", `
channel|load_w
1|100
2|21
3|90
`)
			t.Amplifiers("", "rated_w|load_w|note\n360|211|unnamed")
			t.Left("Zone", "11|total|right")
		}},

		{File: "Rimessa barche Portoriva/tabella cavi.fods", Kind: "schedule", Saved: "fods", Book: book("Cavi", `
Rimessa barche di Portoriva - diffusione sonora 100V|||||||
Tabella cavi e diffusori|||||||
|||||||
Cavo|Da|A|Formazione|Lunghezza m|Diffusore|W|Note
C1|Ampli uscita 1|D1|2x1,5|28|plafoniera|6|
C2|D1|D2|2x1,5|10|plafoniera|6|
C3|D2|D3|2x1,5|10|plafoniera|6|
C4|D3|D4|2x1,5|14|plafoniera|3|spogliatoio
C5|Ampli uscita 2|D5|2x2,5|75|tromba|15|molo
C6|D5|D6|2x2,5|40|tromba|15|molo
C7|D5|D7|2x2,5|22|tromba|15|scalo, derivato da D5
|||||||
Ampli: 2 uscite x 40 W|||||||
`, bold("A1:A2", "A4:H4")), Truth: func(t *typed.Truth) {
			t.Is("", "Rimessa barche di Portoriva", "the cable table is the loudspeaker list, with a branch at D5")
			t.Speakers("tap_v=100; line_v=100; sheet=Cavi", `
rows|tag|model|tap_w|channel
5..7|D1..|plafoniera|6|1
8|D4|plafoniera|3|1
9..11|D5..|tromba|15|2
`)
			t.Channels("line_v=100; rated_w=40", `
channel|load_w|note
1|21|
2|45|over its rating
`)
			t.Amplifiers("", "rated_w|load_w|note\n80|66|unnamed")
			t.Lines("material=copper", `
line|from|to|length_m|area_mm2
C1|Ampli uscita 1|D1|28|1.5
C2|D1|D2|10|1.5
C3|D2|D3|10|1.5
C4|D3|D4|14|1.5
C5|Ampli uscita 2|D5|75|2.5
C6|D5|D6|40|2.5
C7|D5|D7|22|2.5
`)
		}},
	}
}
