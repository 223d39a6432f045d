package layout

import (
	"regexp"
	"strings"

	"lineaudit/ingest/vocabulary"
)

// reTimesUnit finds in a header what its cells are made of: "(Stk x W)", "qty × watts".
var reTimesUnit = regexp.MustCompile(`(?i)(\pL[\pL.]*)\s*[x×*@]\s*(?:w|watts?)\b`)

// reTimes is a cell of two figures and a mark between them: "6x3", "1 × 1,5".
var reTimes = regexp.MustCompile(`^\d{1,3}\s*[x×*@]\s*\d{1,3}(?:[.,]\d{1,2})?$`)

// countsWithWatts takes a column for one of taps, each with its count in front, where
// its header says so of cells that look alike for other things: "6x3" below
// "Loudspeakers (qty x W)".
func (h *heading) countsWithWatts() {
	if !strings.ContainsAny(h.words, "xX×*@") {
		return
	}
	m := reTimesUnit.FindStringSubmatch(h.words)
	if m == nil || vocabulary.NewScorer().Header(m[1]).Best().Field != vocabulary.Quantity {
		return
	}
	cells, hits := 0, 0
	for _, t := range h.cells.texts {
		if cells++; reTimes.MatchString(strings.TrimSpace(t)) {
			hits++
		}
	}
	if cells > 0 && 2*hits > cells {
		h.forced, h.unit, h.aside = vocabulary.Tap, "W", "counts with the watts of each"
	}
}
