package layout

import (
	"slices"

	"lineaudit/ingest/vocabulary"
)

// numbersLines takes what comes once for each line as a bare number, "Line A" over "No." and "Line B" over
// "No.", for the name of the line of each row: several rows have the same, as no loudspeakers have.
func (p *pairing) numbersLines(cols []*heading) {
	if p.field != vocabulary.Circuit && p.field != vocabulary.Channel {
		return
	}
	number := -1
	for m, h := range p.shown {
		switch {
		case h.top == vocabulary.Circuit || h.top == vocabulary.Channel:
			return // these name them
		case !isNumberWord(h.words):
		case number >= 0:
			return
		default:
			number = m
		}
	}
	if number < 0 || !slices.ContainsFunc(p.labels, func(l string) bool { return feeders[sectionField(l)] }) {
		return
	}
	for l := range p.letters {
		if c := cols[p.index[[2]int{l, number}]].cells; c.cells > 0 && c.distinct == c.cells && c.cells >= fewestLines {
			return
		}
	}
	h := p.shown[number]
	h.forced, h.aside = p.field, "the number of the line over it"
}

// fewestLines is the fewest rows in which numbers that come once each are those of loudspeakers.
const fewestLines = 3

// isNumberWord reports whether a header says nothing but that it numbers something: "No.", "Nr.".
func isNumberWord(words string) bool {
	concepts := vocabulary.NewScorer().Concepts(words)
	return slices.Contains(concepts, "number") && !slices.ContainsFunc(concepts, func(c string) bool { return c != "number" && c != "negation" })
}
