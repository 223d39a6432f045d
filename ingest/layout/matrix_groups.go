package layout

import (
	"regexp"
	"slices"

	"lineaudit/ingest/remember"
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

// groupsIn remembers what reGroup finds in cells.
var groupsIn = remember.New(4096, func(t string, _ int) []string { return reGroup.FindStringSubmatch(t) })

// groupIn takes a cell apart into the parts of reGroup, nil where it is no group.
func groupIn(t string) []string {
	if t == "" || t[0] != '(' && (t[0] < '0' || t[0] > '9') {
		return nil
	}
	return groupsIn.Of(t, 0)
}

// groupLabels counts the cells of a strip that name outputs, lines or places and
// stand over groups, and over what an output gives: labels rather than data.
func groupLabels(s *strip, below []line) int {
	labels, groups := 0, 0
	for _, sl := range s.slots {
		n, fits := 0, true
		for i := range below {
			switch c := below[i].at(sl.col); {
			case c.blank(), lookOf(c)&(lookMissing|lookWatts) != 0, lookOf(c)&lookNumber != 0 && saysWatts(&below[i]):
			case groupIn(text(c)) != nil:
				n++
			default:
				fits = false
			}
		}
		if n == 0 && !fits || groupField(sl.cell.line()) == vocabulary.Unknown {
			continue
		}
		groups += n
		if fits {
			labels++
		}
	}
	if labels < 2 || groups < 2 {
		return 0
	}
	return labels
}

// saysWatts reports whether the first words of a line are for a power: "Rated W | 120 | 60".
func saysWatts(l *line) bool { return ofWatts(l.slots[0].cell.line()) }

// ofWatts reports whether the words in front of a line are for what outputs give or what hangs on them together.
func ofWatts(label string) bool {
	if label == "" || anyDigit(label) {
		return false
	}
	best := vocabulary.NewScorer().Header(label).Best()
	return best.Score >= headerScore && (powerOfAny[best.Field] || best.Field == vocabulary.ChannelWatts || loadsTogether[best.Field]) || isTotalText(label)
}

// loadsTogether are the fields of what hangs on an output together.
var loadsTogether = [vocabulary.Fields]bool{vocabulary.Load: true, vocabulary.TotalWatts: true, vocabulary.MeasuredLoad: true, vocabulary.Headroom: true}

// loadsOf reports whether a line below groups tells in figures what they come to, by its first words: "Load W | 80 | 76".
func loadsOf(l *line, x *crosstab, cols []*heading) bool {
	if !x.grouped || !ofWatts(l.slots[0].cell.line()) {
		return false
	}
	return !slices.ContainsFunc(x.cols, func(j int) bool { return reGroup.MatchString(text(l.at(cols[j].col))) })
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
		groups, others := 0, 0
		for k, t := range h.cells.texts {
			m := groupIn(t)
			if m == nil {
				if label, _ := cols[0].cells.in(h.cells.lines[k]); h.cells.looks[k]&(lookNumber|lookWatts) != 0 && ofWatts(label) {
					others++ // what the output gives, or what hangs on it together
				}
				continue
			}
			groups++
			watts, _ := plainNumber(m[2] + m[3])
			if !tapValues[watts] {
				return nil
			}
			told = told || m[4] != "" || m[3] != "" || !cores[m[1]]
		}
		if field == vocabulary.Unknown || groups == 0 || groups+others < h.cells.cells {
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
