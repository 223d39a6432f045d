package ingest

import (
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// describedAmps takes what a list of outputs describes for the amplifiers, where each text is one for
// an amplifier and the outputs are numbered anew in each: "Device | Output | W" over "Power amp 1 | 1 | 120". What was
// taken for amplifiers are slots then, where it numbers the rows: "Module | Name | Output" over "2 | Power amp 1 | B".
func (t *table) describedAmps() {
	if t.kind != layout.Amplifiers && t.kind != layout.Channels || !t.has(vocabulary.Channel) || t.Matrix {
		return
	}
	numbers := t.byField[vocabulary.Amplifier]
	if len(numbers) > 1 || len(numbers) == 1 && !t.numbersRows(numbers[0]) {
		return
	}
	for _, f := range []vocabulary.Field{vocabulary.Describe, vocabulary.Unknown, vocabulary.Kind, vocabulary.Item} {
		for _, c := range t.byField[f] {
			amps := true
			t.eachText(c, func(text string) { amps = amps && join.HasWord(join.Amplifier, text) && countWords(text) > 1 })
			if amps && t.namesFew(c) && t.numberedAnew(c) {
				if len(numbers) == 1 {
					t.become(numbers[0], vocabulary.Item, "it numbers the rows, and another column describes the amplifiers")
				}
				t.become(c, vocabulary.Amplifier, "it describes amplifiers, and the outputs are numbered anew in each")
				return
			}
		}
	}
}

// numbersRows reports whether each cell of a column is another whole number.
func (t *table) numbersRows(c *column) bool {
	seen := make(map[string]bool)
	return t.allCells(c, func(text string) bool {
		again := seen[text]
		seen[text] = true
		return !again && text != "" && strings.Trim(text, "0123456789") == ""
	})
}
