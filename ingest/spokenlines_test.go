package ingest

import (
	"testing"

	"lineaudit/ingest/layout"
)

// A note may say of a line what feeds it and what its cable is. Common practice, no source.
func TestCablesInNotesOfLines(t *testing.T) {
	const rows = "room | quantity | tap[W] | circuit\nHall | 4 | 10 | 1\nShop | 6 | 5 | 2"
	for _, note := range []string{
		"Línea 1: etapa A salida 1, 120 W, 2x1,5 180 m; Línea 2: etapa B, 60 W, 2x2,5 70 m",
		"Line 1: 180 m of 2 x 1.5 mm²; line 2: 70 m, 2.5 mm²",
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : "+note+"\n"+rows))
		var got []string
		for _, c := range j.Cables {
			got = append(got, show(c.Length)+" m "+show(c.Area)+" mm²")
		}
		want(t, note, got, []string{"180 m 1.5 mm²", "70 m 2.5 mm²"})
	}
}
