package ingest

import (
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// remarksOnControls takes columns of a list of loudspeakers that were not understood, or are of mountings, for ones of remarks where most
// cells are words and one of them speaks of a control and its power: "ceiling, knob of 10 W behind the till" under
// "Held by".
func (t *table) remarksOnControls() {
	if t.Kind != layout.Loudspeakers || t.has(vocabulary.Control) {
		return
	}
	for _, c := range t.columns {
		if c.Field != vocabulary.Unknown && c.Field != vocabulary.Mounting {
			continue
		}
		cells, words, controls := 0, 0, 0
		t.eachText(c, func(text string) {
			cells++
			if isLetter(rune(text[0])) {
				words++
			}
			if ratesControl(text) {
				controls++
			}
		})
		if controls > 0 && 2*words > cells {
			t.become(c, vocabulary.Notes, "a cell speaks of a control and its power")
		}
	}
}

// ratesControl reports whether a text of a few words speaks of one control and gives its power.
func ratesControl(text string) bool {
	if !mayStateWatts(text) || countWords(text) > mostTagged {
		return false
	}
	list, err := notation.ParseControls(text, notation.Auto)
	return err == nil && len(list) == 1 && list[0].W > 0
}

// behindDescribed reports whether what describes a row ends in a control with its power: "ceiling, knob of 10 W".
func behindDescribed(r *row) bool {
	_, tail := splitControl(r.own(vocabulary.Describe).text)
	return tail != "" && ratesControl(tail)
}
