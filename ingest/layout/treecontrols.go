package layout

import (
	"slices"

	"lineaudit/ingest/vocabulary"
)

// GuessedControl is the reason of a device row that is a control by how it hangs, not by its words.
const GuessedControl = "loudspeakers hang on it, and it on an amplifier"

// guessControls takes rows for controls whose words tell nothing, which have watts and carry
// loudspeakers alone, and which hang on an amplifier or on an output of one: "SO-10 | Selector | 30 W | on
// SO-01". It returns them.
func (tr *tree) guessControls(t *Table) []int {
	alone := slices.Clone(tr.carries)
	for i, j := range tr.on {
		if j >= 0 && tr.roles[i] != Loudspeakers {
			alone[j] = false
		}
	}
	var out []int
	for i, j := range tr.on {
		if !alone[i] || tr.told(i) || j < 0 || tr.roles[j] != Amplifiers && tr.roles[j] != Channels {
			continue
		}
		if slices.ContainsFunc(powers, func(f vocabulary.Field) bool { return filledIn(t, tr.records[i].Values, f) }) {
			tr.roles[i] = Controls
			out = append(out, i)
		}
	}
	return out
}
