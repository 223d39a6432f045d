package ingest

import "testing"

// Types stand over the powers that they are tapped at, in rows of their own, with marks in inches and with blanks beside
// them that no group reaches into. Common practice, no source.
func TestTypesOverTapsOfCounts(t *testing.T) {
	for _, c := range []struct{ head, types string }{
		{"Zone | Amp output | Type A | Type B | Type C | Qty | Load", `ceiling 6" | ceiling 8" | horn`},
		{"Zone | Ausgang | Typ A | Typ B | Typ C | Stk. | Last", `Decke 6" | Decke 8" | Horn`},
		{"Zone | Sortie | Type A | Type B | Type C | Qté | Charge", `plafond 6" | plafond 8" | trompe`},
		{"Zona | Salida | Tipo A | Tipo B | Tipo C | Cant. | Carga", `techo 6" | techo 8" | bocina`},
		{"Zona | Uscita | Tipo A | Tipo B | Tipo C | Q.tà | Carico", `soffitto 6" | soffitto 8" | tromba`},
		{"Zone | Uitgang | Type A | Type B | Type C | Aantal | Belasting", `plafond 6" | plafond 8" | hoorn`},
	} {
		j := wholeJob(t, "Slate museum, 100 V\n|\n"+c.head+"\n | | "+c.types+" | | \n | | 3 W | 6 W | 15 W | No. | W\n"+`Dome | 1 | | | 4 | 4 | 60
Lobby | 2 | 4 | 6 | | 10 | 48
Shop | 2 | 3 | | | 3 | 9
Loans | 3 | 2 | 2 | | 4 | 18
Total | | 9 | 8 | 4 | 21 | 135`)
		want(t, c.head, describe(j), []string{"4 x 15 W zone Dome channel 1", "4 x 3 W zone Lobby channel 2", "6 x 6 W zone Lobby channel 2",
			"3 x 3 W zone Shop channel 2", "2 x 3 W zone Loans channel 3", "2 x 6 W zone Loans channel 3"})
		if len(j.Questions) > 0 {
			t.Errorf("%s: asked %s", c.head, j.Questions[0].Text)
		}
	}
}
