package layout

import (
	"slices"
	"strings"
	"unicode/utf8"

	"lineaudit/ingest/vocabulary"
)

// tradeLooks are the looks of what lines are tapped at.
const tradeLooks = lookWatts | lookTapSaid | lookHiZ

// tradeConcepts are what headers and titles of schedules speak of, and those of few other lists.
var tradeConcepts = map[string]bool{"speaker": true, "amplifier": true, "tap": true, "transformer": true, "power": true}

// linesATold is for how many lines one must have a word for a loudspeaker, or watts within its text, where nothing else
// tells the trade: a few may be names ("Head", "drivers") and addresses ("1200 W 5th St").
const linesATold = 20

// speaksOfTrade reports whether a book says anywhere what a schedule is about: watts with their unit, or
// words for loudspeakers, amplifiers, taps or powers. Columns of numbers, dates and tags that
// only look like outputs, taps and zones are lists of something else.
func speaksOfTrade(sheets []*sheetReader, name string, s *vocabulary.Scorer) bool {
	if ofTrade(s, name) {
		return true
	}
	told, lines := 0, 0
	for _, sr := range sheets {
		for _, t := range sr.tables {
			if ofTrade(s, t.t.Sheet) || slices.ContainsFunc(t.t.Columns, func(c Column) bool { return c.Unit == "W" || ofTrade(s, c.Header) }) {
				return true
			}
		}
		lines += len(sr.p.lines)
		for i := range sr.p.lines {
			for _, sl := range sr.p.lines[i].slots {
				w := sl.cell.says()
				if w.read().look&lookDevice != 0 || reLabelWatts.MatchString(w.line) {
					told++
				}
				if w.read().look&tradeLooks != 0 || w.is(lineVoltage) {
					return true
				}
			}
		}
	}
	return told > 1 && told*linesATold >= lines
}

// ofTrade reports whether words of a header or title speak of what a schedule is about. Single letters do not: "P1" is no power.
func ofTrade(s *vocabulary.Scorer, words string) bool {
	long := slices.DeleteFunc(strings.Fields(vocabulary.Fold(words)), func(w string) bool { return utf8.RuneCountInString(strings.TrimRight(w, "0123456789")) < 2 })
	return slices.ContainsFunc(s.Concepts(strings.Join(long, " ")), func(c string) bool { return tradeConcepts[c] })
}
