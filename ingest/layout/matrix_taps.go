package layout

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// Taps across: the headers of neighbouring columns are the powers that a
// transformer can be tapped at, and each row ticks one of them, or writes the
// count of loudspeakers under each.

var reOnlyOhms = regexp.MustCompile(`(?i)^\W*\d{1,3}\s*(?:Ω|ω|ohms?)\W*$`)

// tapsAcross finds such columns. The cells under them may all be blank, as
// long as others of them are filled.
func (f *finder) tapsAcross(cols []*heading) *crosstab {
	best := &crosstab{}
	for i := 0; i < len(cols); {
		j := i
		x := &crosstab{field: vocabulary.Tap, marks: true}
		var bare []float64 // the labels without a unit
		powers, filled := 0, 0
		for ; j < len(cols); j++ {
			h := cols[j]
			if len(h.parts) == 0 || h.forced != vocabulary.Unknown || h.cells.cells > 0 && h.cells.countShare() < 0.8 {
				break
			}
			label := h.parts[len(h.parts)-1]
			v, number := plainNumber(label)
			switch {
			case !anyDigit(label):
				label = ""
			case reOnlyWatts.MatchString(label):
				powers++
			case number && tapValues[v]:
				if !f.powerGroup(h) {
					bare = append(bare, v)
				}
				powers++
			case reOnlyOhms.MatchString(label) && j > i: // bypassed, beside the taps
			default:
				number = false
				label = ""
			}
			if label == "" {
				break
			}
			x.cols = append(x.cols, j)
			x.marks = x.marks && h.cells.ticked()
			filled += h.cells.cells
		}
		if powers >= 2 && filled > 0 && (len(bare) == 0 || len(bare) >= 3 && x.marks && stepwise(bare)) && len(x.cols) > len(best.cols) {
			best = x
		}
		i = max(j, i+1)
	}
	if len(best.cols) == 0 {
		return nil
	}
	f.crossedLabels(best, cols)
	best.field = vocabulary.Tap
	if !best.marks {
		best.typesOverTaps(cols)
	}
	return best
}

// typesOverTaps takes the words over the powers of columns of counts for types where they differ from column to column:
// "Type A", "ceiling 6\"" and "3 W", each in a row of its own.
func (x *crosstab) typesOverTaps(cols []*heading) {
	types, taps := make([]string, len(x.cols)), make([]string, len(x.cols))
	known := make(map[string]bool)
	for k, i := range x.cols {
		parts := cols[i].parts
		last := len(parts) - 1
		types[k], taps[k] = strings.Join(parts[:last], " "), parts[last]
		if types[k] == "" || known[types[k]] || !reOnlyWatts.MatchString(taps[k]) {
			return
		}
		known[types[k]] = true
	}
	x.field, x.labels, x.taps = vocabulary.Model, types, taps
}

// powerGroup reports whether a group heading over a column speaks of powers or taps.
func (f *finder) powerGroup(h *heading) bool {
	if len(h.parts) < 2 {
		return false
	}
	return f.ofPowers(h.parts[0])
}

// ofPowers reports whether a header speaks of powers or taps.
func (f *finder) ofPowers(words string) bool {
	h := f.s.Header(words)
	return h.Unit == "W" || max(h.Of(vocabulary.Tap), h.Of(vocabulary.TapList)) >= named
}

// stepwise reports whether numbers only rise or only fall, as the taps of a transformer are listed.
func stepwise(v []float64) bool {
	up := slices.IsSortedFunc(v, func(a, b float64) int { return sign(a - b) })
	down := slices.IsSortedFunc(v, func(a, b float64) int { return sign(b - a) })
	return up || down
}

func sign(d float64) int {
	switch {
	case d < 0:
		return -1
	case d > 0:
		return 1
	}
	return 0
}

// ticked reports whether all cells of a column are ticks, words for yes or for no.
func (s *sample) ticked() bool {
	for _, k := range s.looks {
		if k&lookYes == 0 {
			return false
		}
	}
	return true
}

// isTick reports whether a cell ticks its header.
func isTick(c cell) bool {
	if c.blank() || noCount(c) || c.Kind == grid.Boolean && c.Number == 0 && strings.EqualFold(text(c), "false") {
		return false
	}
	return c.says().read().class&classNo == 0
}

// ticksAndTap are the tap that a row ticks and its cell: all that are ticked, one behind the
// other, when there are several, so that none of them is taken for the one that is set.
func (x *crosstab) ticksAndTap(l line, cols []*heading) (tap string, at int, n int) {
	var all []string
	at = -1
	for k, j := range x.cols {
		if isTick(l.at(cols[j].col)) {
			if at < 0 {
				at = k
			}
			all = append(all, x.labels[k])
		}
	}
	return strings.Join(all, " / "), at, len(all)
}

// valueLabels counts the cells of a strip that are powers over ticks or
// counts: labels of a table of taps rather than data. A bare number counts over ticks only.
func valueLabels(s *strip, below []line) int {
	labels, filled := 0, false
	for _, sl := range s.slots {
		w := sl.cell.says()
		number := w.read().isNumber
		if !w.is(onlyFigure) && !(number && tapValues[w.read().number]) {
			continue
		}
		fits := true
		for i := 0; i < len(below) && fits; i++ {
			c := below[i].at(sl.col)
			if c.blank() {
				continue
			}
			r := c.says().read()
			switch k := lookOf(c); {
			case k&lookYes != 0, !number && k&(lookSmall|lookCount) != 0:
				filled = true
			case k&lookMissing != 0, r.isNumber && r.number == 0:
			default:
				fits = false
			}
		}
		if fits {
			labels++
		}
	}
	if labels < 2 || !filled {
		return 0
	}
	return labels
}

// tapsUnderGroup reports whether a line below a header lists the taps of a
// transformer, each over ticks or counts, under one word for taps. Units of other
// columns may stand beside them.
func (f *finder) tapsUnderGroup(under *strip, head *line, at int) bool {
	sub := *under
	for n := len(sub.slots); n > 0 && f.unitUnder(head, sub.slots[n-1]); n-- {
		sub.slots = sub.slots[:n-1]
	}
	if len(sub.slots) < 3 {
		return false
	}
	group := head.at(sub.slots[0].col)
	if group.blank() || !f.ofPowers(group.line()) {
		return false
	}
	var values []float64
	for i, s := range sub.slots {
		v, ok := leadingNumber(s.cell.line())
		if !ok || !tapValues[v] || s.col != sub.slots[0].col+i || i > 0 && !head.at(s.col).blank() {
			return false
		}
		values = append(values, v)
	}
	end := at + 1
	for end < len(f.p.lines) && end <= at+lookAhead && f.p.lines[end].n == f.p.lines[end-1].n+1 {
		end++
	}
	return stepwise(values) && valueLabels(&sub, f.p.lines[at+1:end]) == len(sub.slots)
}
