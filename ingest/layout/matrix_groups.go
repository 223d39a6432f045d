package layout

import (
	"regexp"
	"slices"

	"lineaudit/ingest/vocabulary"
)

// Groups across: under the output, line or place that a row hangs on stands how many
// loudspeakers of how many watts it has, "4x6", "8 x 1.5 W".

// reGroup finds a count and a power: "4x6", "2 × 7,5 W", "4 @ 6W", "3 à 10 W".
var reGroup = regexp.MustCompile(`(?i)^\(?(\d{1,3})\)?\s*(?:[x×*]\s*(\d{1,3}(?:[.,]\d{1,2})?)|(?:@|à|á|at|je)\s*(\d{1,3}(?:[.,]\d{1,2})?))\s*(w(?:atts?)?\.?)?$`)

// groupField is the field of a label that may stand over groups, Unknown where it names none.
func groupField(label string) vocabulary.Field {
	if field := valueField(label); slices.Contains(tickedFields, field) {
		return field
	}
	return vocabulary.Unknown
}

// groupLabels counts the cells of a strip that name outputs, lines or places and
// stand over groups, and over what an output gives: labels rather than data.
func groupLabels(s *strip, below []line) int {
	labels, groups := 0, 0
	for _, sl := range s.slots {
		if groupField(sl.cell.line()) == vocabulary.Unknown {
			continue
		}
		fits := true
		for i := range below {
			switch c := below[i].at(sl.col); {
			case c.blank(), lookOf(c)&(lookMissing|lookWatts) != 0:
			case reGroup.MatchString(text(c)):
				groups++
			default:
				fits = false
			}
		}
		if fits {
			labels++
		}
	}
	if labels < 2 || groups < 2 {
		return 0
	}
	return labels
}

// groupsAcross finds columns of groups, nil if there are none. Cores and areas of
// cables look alike: without a unit some counts must be those of no cable.
func (f *finder) groupsAcross(cols []*heading) *crosstab {
	x := &crosstab{power: vocabulary.Tap, grouped: true}
	votes := map[vocabulary.Field]int{}
	told := false
	for i, h := range cols {
		if len(h.parts) == 0 || h.forced != vocabulary.Unknown || h.cells.cells == 0 {
			continue
		}
		field := groupField(h.parts[len(h.parts)-1])
		groups := 0
		for _, t := range h.cells.texts {
			m := reGroup.FindStringSubmatch(t)
			if m == nil {
				continue
			}
			groups++
			watts, _ := plainNumber(m[2] + m[3])
			if !tapValues[watts] {
				return nil
			}
			told = told || m[4] != "" || m[3] != "" || !cores[m[1]]
		}
		if field == vocabulary.Unknown || groups < h.cells.cells {
			continue
		}
		votes[field]++
		x.cols = append(x.cols, i)
	}
	n := len(x.cols)
	if n < 2 || !told || x.cols[n-1]-x.cols[0] != n-1 || len(votes) != 1 {
		return nil
	}
	for field := range votes {
		x.field = field
	}
	f.crossedLabels(x, cols)
	clear(x.taps)
	return x
}

// cores are how many conductors the cables of loudspeaker lines have. Common practice, no source.
var cores = map[string]bool{"1": true, "2": true, "3": true, "4": true, "5": true, "7": true}
