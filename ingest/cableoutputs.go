package ingest

import (
	"slices"
	"strings"

	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// Lists of cables may tell in one cell which output each is of and which places it serves: "Amp A ch 1 -
// Rink, Stands".

// outputsOfCables takes such a column of a list of cables that names no ends, lines or outputs otherwise for
// one of outputs, and a series of tags beside it for the names of the cables.
func (b *builder) outputsOfCables() {
	other := []vocabulary.Field{vocabulary.From, vocabulary.To, vocabulary.Channel, vocabulary.Circuit, vocabulary.Amplifier}
	for _, t := range b.tables {
		if t.kind != layout.Cables {
			continue
		}
		i := slices.IndexFunc(t.columns, func(c *column) bool { return b.namesOutputsFirst(t, c) })
		if i < 0 || slices.ContainsFunc(t.columns, func(c *column) bool { return c != t.columns[i] && slices.Contains(other, c.Field) }) {
			continue
		}
		outputs := t.columns[i]
		for _, r := range t.rows {
			if v := &r.Values[outputs.i]; v.Text != "" {
				v.Text, v.Cell = outputFirst(v.Text), nil
				r.wordings[outputs.i] = wordings.Of(v.Text, 0)
			}
		}
		t.become(outputs, vocabulary.Channel, "its cells begin with outputs")
		if i := slices.IndexFunc(t.columns, t.seriesOfTags); i >= 0 && !t.has(vocabulary.Cable) {
			t.become(t.columns[i], vocabulary.Cable, "a tag in each row of a list of cables")
		}
	}
}

// namesOutputsFirst reports whether each cell of a column begins with an amplifier and its output, in words,
// and most go on.
func (b *builder) namesOutputsFirst(t *table, c *column) bool {
	cells, longer, all := 0, 0, true
	t.eachText(c, func(text string) {
		cells++
		head := outputFirst(text)
		all = all && b.wordedOutput(head)
		if len(head) < len(text) {
			longer++
		}
	})
	return all && cells > 1 && 2*longer > cells
}

// outputFirst is what stands in front of the first mark of a cell: "Amp A ch 1" of "Amp A ch 1 - Rink".
func outputFirst(text string) string {
	head, _, _ := cutAny(text, " - ", " – ", " — ", ": ", "→", "->")
	return strings.TrimSpace(head)
}
