package ingest

import (
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// cablesNotModels takes a column that may be of models for the types of cables where each of its cells names the size of
// conductors, beside lengths or ends of cables: "Type" over "NYM-J 3x2.5" and "NYM-J 3x1.5".
func (t *table) cablesNotModels() {
	if t.has(vocabulary.CableType) || t.has(vocabulary.Gauge) || !t.has(vocabulary.Length) && !t.has(vocabulary.From) && !t.has(vocabulary.Cable) {
		return
	}
	for _, c := range t.byField[vocabulary.Model] {
		cells, all := 0, true
		t.eachText(c, func(text string) {
			cells++
			_, _, ok := notation.ConductorIn(text, c.style)
			all = all && ok
		})
		if all && cells > 0 {
			t.become(c, vocabulary.CableType, "each cell names the size of a cable")
			return
		}
	}
}
