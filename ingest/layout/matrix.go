package layout

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/ingest/vocabulary"
)

var (
	reLabelWatts = regexp.MustCompile(`(?i)\b\d+(?:[.,]\d+)?\s*(?:w|watts?)\b`)
	reLabelSet   = regexp.MustCompile(`(?i)(?:set|tapped|tap|at|@|auf|gestellt auf|à|a|op|op stand|régl\S* (?:à|sur)|puest\S* a|tarat\S* a|ingesteld op)\s*:?\s*(\d+(?:[.,]\d+)?\s*(?:w|watts?))\b`)
	reOnlyWatts  = regexp.MustCompile(`(?i)^\W*(?:davon|dont|of which|di cui|waarvan|de ellos|de los cuales)?\s*(?:(?:set|tap(?:ped)?|gestellt|eingestellt|régl\S*|puest\S*|tarat\S*|ingesteld)?\s*(?:at|on|@|auf|à|a|op|sur)?\s*)?\d+(?:[.,]\d+)?\s*(?:w|watts?)\W*$`)
	reLettered   = regexp.MustCompile(`^\p{L}{3,}\.? \p{Lu}$`) // "Zone A"
	reLabelTag   = regexp.MustCompile(`^\p{L}{1,5}[- ]?\d{1,3}\p{L}?$`)
)

// A crosstab says which columns of a table are the values of one field, with counts in their cells.
type crosstab struct {
	cols    []int // indexes of the headings
	labels  []string
	field   vocabulary.Field // what the labels are
	taps    []string         // the watts that each label names, "" where it names none
	tapAt   []slot           // where they are written, for a row of taps
	sum     *heading         // the column of their sums, nil if none
	tapRow  int              // line number of that row, 0 when the labels name the taps
	said    []saidLine       // lines that speak of the places across
	power   vocabulary.Field // what the cells are where a column of its own counts the loudspeakers: Tap or TotalWatts
	orElse  vocabulary.Field // what else they could be
	grouped bool             // the cells are counts with powers
	feeds   bool             // the cells are ticks that tell which output feeds which place
	marks   bool             // the cells are ticks: each row has one tap, and its count, if any, is in a column of its own
}

// crossed looks for columns that are values: their headers are zones, rooms
// or types, their cells counts. body are the lines of the table.
func (f *finder) crossed(cols []*heading, body []line) *crosstab {
	if len(cols) < 3 {
		return nil
	}
	if x := f.tapsAcross(cols); x != nil {
		return x
	}
	if x := f.ticksAcross(cols, body); x != nil {
		return x
	}
	if x := f.groupsAcross(cols); x != nil {
		return x
	}
	if x := f.countedAcross(cols, body); x != nil {
		return x
	}
	for _, h := range cols {
		if h.top == vocabulary.Tag && h.score >= 0.8 && h.cells.share(lookTag|lookTagRange) >= 0.5 && 10*h.cells.distinct >= 9*h.cells.cells {
			return nil // a row for each device
		}
	}
	x := &crosstab{}
	sums := sumsOfTypes(cols)
	counts := f.countsBeside(cols, sums)
	counted := hasField(cols, vocabulary.Quantity) && sums == nil
	strong, words, blanks := 0, 0, 0
	votes := map[vocabulary.Field]int{}
	for i, h := range cols {
		if len(h.parts) == 0 || h.cells.cells == 0 {
			continue
		}
		label := h.parts[len(h.parts)-1]
		if h.cells.answered() || h == sums || isTotalText(label) || h.cells.countShare() < 0.8 && !(counts != nil && h.cells.tapNumbers()) || h == counts || h.forced != vocabulary.Unknown {
			continue
		}
		if h.unit != "" && h.unit != "W" && h.unit != "pcs" {
			continue // lengths and levels are no counts
		}
		if h.unit == "W" && classWithin(h.words)&(classEarlier|classLater|classPlanned) != 0 && h.cells.share(lookTapUsual|lookTapValue) >= 0.7 {
			continue // "Power before (W)": a state of the taps
		}
		named, best := h.best()
		if len(h.parts) > 1 { // a group over the values says what they are of
			own := f.s.Header(label).Best()
			named, best = own.Field, own.Score
		}
		field := sectionField(label)
		watts := reLabelWatts.MatchString(h.words)
		device := classWithin(label)&classDevice != 0
		tag := reLabelTag.MatchString(label) && best < headerScore
		switch {
		case field != vocabulary.Unknown && (anyDigit(label) || reLettered.MatchString(label)) && field != vocabulary.Control && (field != vocabulary.Amplifier || watts && counts == nil):
			votes[field]++
			strong++
		case watts && (device || len(strings.Fields(label)) > 1) || device && best < 0.9 && named != vocabulary.Quantity && len(strings.Fields(label)) > 1, tag:
			votes[vocabulary.Model]++
			strong++
		case device && !counted && (best < 0.75 || named == vocabulary.Tag || named == vocabulary.Describe || named == vocabulary.Mounting || named == vocabulary.Model):
			votes[vocabulary.Model]++
			strong++
		case named == vocabulary.Mounting && best < 0.8: // "ceiling", "wall" as names of types
			words++
		case best < 0.45 && !strings.ContainsAny(label, "%€$£"):
			words++
		case best < 0.9 && (named == vocabulary.Room || named == vocabulary.Zone || named == vocabulary.Building || named == vocabulary.Floor): // "Lecture Room" over counts is a room
			words++
		case best < headerScore && anyDigit(label):
			words++
		default:
			continue
		}
		x.cols = append(x.cols, i)
		blanks += len(body) - h.cells.total
	}
	x.absorb(cols)
	x.dropSums(cols)
	if x.sum == nil {
		x.sum = sums
	}
	n := len(x.cols)
	if n < 2 || 2*strong < n && (words < 3 || counted || hasField(cols, vocabulary.Tap) && !typed(cols)) {
		return nil
	}
	if strong == 0 && blanks*8 < n*len(body) && n < 4 {
		return nil
	}
	// The values stand beside each other.
	if x.cols[n-1]-x.cols[0] > n+1 {
		return nil
	}
	for fld, v := range votes {
		if v > votes[x.field] || v == votes[x.field] && fld < x.field {
			x.field = fld
		}
	}
	f.crossedLabels(x, cols)
	if x.field == vocabulary.Amplifier {
		clear(x.taps) // what they give, not what loudspeakers are set to
	}
	if !slices.ContainsFunc(x.labels, func(l string) bool { return !reOnlyWatts.MatchString(l) }) {
		x.field = vocabulary.Tap // the counts are by tap: there is nothing else to a label
	}
	if x.field == vocabulary.Unknown {
		x.field = f.crossedField(x, cols)
	}
	if counts != nil {
		x.power, x.orElse = x.powersBeside(counts, cols)
	}
	return x
}

// answered reports whether the cells of a column are words for yes and for no, which count nothing.
func (s *sample) answered() bool {
	return slices.ContainsFunc(s.texts, func(t string) bool { return !ticks[t] && classOf(t)&(classYes|classNo) == classYes }) &&
		slices.ContainsFunc(s.texts, func(t string) bool { return classOf(t)&classNo != 0 })
}

// absorb takes in columns between and right and left of the others that hold counts too and
// whose names mean something else than a figure.
func (x *crosstab) absorb(cols []*heading) {
	if len(x.cols) < 2 {
		return
	}
	fits := func(h *heading) bool {
		if len(h.parts) == 0 || h.cells.cells == 0 || h.forced != vocabulary.Unknown || h.cells.countShare() < 0.8 || isTotalText(h.parts[len(h.parts)-1]) {
			return false
		}
		return !figureFields[h.top] && h.top != vocabulary.Item && h.top != vocabulary.Channel && h.score < 0.8
	}
	for i := x.cols[0] - 1; i >= 0 && fits(cols[i]); i-- {
		x.cols = slices.Insert(x.cols, 0, i)
	}
	var all []int
	first, last := x.cols[0], x.cols[len(x.cols)-1]
	for i := first; i < len(cols); i++ {
		switch {
		case slices.Contains(x.cols, i):
		case i < last && !fits(cols[i]):
			continue
		case i > last && !fits(cols[i]):
			x.cols = all
			return
		}
		all = append(all, i)
	}
	x.cols = all
}

// countShare is the share of cells that are counts or ticks; one power among them,
// under the header, is what the type is tapped at.
func (s *sample) countShare() float64 {
	counts, watts := 0, 0
	for _, k := range s.looks {
		switch {
		case k&(lookSmall|lookCount|lookYes) != 0:
			counts++
		case k&lookWatts != 0:
			watts++
		}
	}
	for _, v := range s.numbers {
		if v == 0 {
			counts++ // none of them here
		}
	}
	cells := s.cells - min(watts, 1)
	if cells == 0 {
		return 0
	}
	return float64(counts) / float64(cells)
}

// dropSums takes a last column off that holds the sums of the others.
func (x *crosstab) dropSums(cols []*heading) {
	n := len(x.cols)
	if n < 3 {
		return
	}
	at := map[int]float64{}
	for _, i := range x.cols[:n-1] {
		c := cols[i].cells
		for j, v := range c.numbers {
			at[c.lines[c.numberAt[j]]] += v
		}
	}
	last := cols[x.cols[n-1]].cells
	hits, several := 0, 0
	for j, v := range last.numbers {
		if at[last.lines[last.numberAt[j]]] == v {
			hits++
		} else {
			several++
		}
	}
	if hits >= 3 && hits > 4*several {
		x.cols = x.cols[:n-1]
		x.sum = cols[x.cols[len(x.cols)-1]+1]
	}
}

// sumsOfTypes finds the column of quantities that are the sums of the columns
// under names of devices, nil if there is none.
func sumsOfTypes(cols []*heading) *heading {
	at := map[int]float64{}
	types := 0
	for _, h := range cols {
		if len(h.parts) == 0 || classWithin(h.parts[len(h.parts)-1])&classDevice == 0 || h.cells.countShare() < 0.8 {
			continue
		}
		types++
		for j, v := range h.cells.numbers {
			at[h.cells.lines[h.cells.numberAt[j]]] += v
		}
	}
	if types < 2 {
		return nil
	}
	for _, h := range cols {
		if field, score := h.best(); field != vocabulary.Quantity || score < 0.8 {
			continue
		}
		hits := 0
		for j, v := range h.cells.numbers {
			if at[h.cells.lines[h.cells.numberAt[j]]] == v {
				hits++
			}
		}
		if hits >= 3 && 10*hits >= 8*len(h.cells.numbers) {
			return h
		}
	}
	return nil
}

func hasField(cols []*heading, field vocabulary.Field) bool {
	for _, h := range cols {
		if b, s := h.best(); b == field && s >= 0.8 && !isTotalText(h.words) {
			return true
		}
	}
	return false
}

// typed reports whether a column names types of devices.
func typed(cols []*heading) bool {
	return slices.ContainsFunc(cols, func(h *heading) bool {
		return max(h.of(vocabulary.Model), h.of(vocabulary.Describe), h.of(vocabulary.Kind)) >= 0.8 && !isTotalText(h.words)
	})
}
