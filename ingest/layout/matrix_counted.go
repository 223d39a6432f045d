package layout

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// Counts with powers across, in words of any kind: under risers, wings or types stand
// "8 x 3 W", "2 x 6 W + 4 x 3 W", "2 x 6 W, via VC-B (24 W)".

// countsInWords are the texts that count loudspeakers with their watts, whatever else they
// say behind a comma.
var countsInWords = remember.New(4096, func(t string, _ int) bool {
	if len(t) > longestCounts || !strings.ContainsAny(t, "wW") || !strings.ContainsAny(t, "0123456789") {
		return false
	}
	list, err := notation.ParseGroups(beforeControl(t), notation.Auto)
	return err == nil && len(list) > 0
})

// beforeControl cuts off what a text says, behind a comma, a semicolon or in brackets, of a control that its
// loudspeakers hang on: "2 x 6 W, via VC-B (24 W)".
func beforeControl(t string) string {
	for i, r := range t {
		if !strings.ContainsRune(",;(", r) {
			continue
		}
		words := strings.Fields(vocabulary.Fold(t[i+1:]))
		if len(words) > 0 && (classAhead(words)&classBehind != 0 || vocabulary.DeviceIn(t[i+1:]) == vocabulary.ControlDevice) {
			return strings.TrimSpace(t[:i])
		}
	}
	return t
}

// longestCounts is the longest text, in bytes, that is looked at for counts with powers.
const longestCounts = 200

// fewestCounted is the fewest cells of counts with powers in each of two columns that make a matrix.
const fewestCounted = 2

// countedAcross finds columns of counts with their powers, nil if there are none. Columns of
// an older and a later state hold such counts too, and are none.
func (f *finder) countedAcross(cols []*heading, body []line) *crosstab {
	x := &crosstab{power: vocabulary.Tap, grouped: true}
	full := 0
	first := 0
	if len(body) > 0 {
		first = body[0].n
	}
	for i, h := range cols {
		counted, others := 0, 0
		for k, t := range h.cells.texts {
			switch {
			case countsInWords.Of(t, 0):
				counted++
			case h.cells.lines[k] != first || h.cells.looks[k]&(lookAmp|lookChannel|lookJoint|lookWatts|lookRating) == 0:
				others++
			}
		}
		if counted == 0 || others > 0 {
			continue
		}
		if len(h.parts) == 0 || h.forced != vocabulary.Unknown || !f.mayStandOver(h) {
			return nil
		}
		if counted >= fewestCounted {
			full++
		}
		x.cols = append(x.cols, i)
	}
	n := len(x.cols)
	if n < 2 || full < 2 || x.cols[n-1]-x.cols[0] != n-1 || x.cols[0] == 0 {
		return nil
	}
	x.field = f.countedField(x, cols)
	f.crossedLabels(x, cols)
	clear(x.taps)
	return x
}

// reYear finds a year.
var reYear = regexp.MustCompile(`\b(?:19|20)\d\d\b`)

// mayStandOver reports whether a header may name what hangs there: no state, no revision and
// no figure of its own.
func (f *finder) mayStandOver(h *heading) bool {
	label := h.parts[len(h.parts)-1]
	const states = classLater | classEarlier | classPlanned | classRevision | classStatus | classTotal
	if classWithin(label)&states != 0 || reYear.MatchString(label) {
		return false
	}
	best := f.s.Header(label).Best()
	return best.Score < headerScore || !countedFields[best.Field]
}

// countedFields are the fields of headers that speak of the counts, the powers or the rows themselves.
var countedFields = [vocabulary.Fields]bool{vocabulary.Tap: true, vocabulary.TapBefore: true, vocabulary.TapList: true, vocabulary.Quantity: true, vocabulary.TotalWatts: true,
	vocabulary.RatedWatts: true, vocabulary.Load: true, vocabulary.Measured: true, vocabulary.MeasuredLoad: true, vocabulary.ChannelWatts: true, vocabulary.FrameWatts: true,
	vocabulary.ControlWatts: true, vocabulary.Notes: true, vocabulary.Status: true, vocabulary.Revision: true, vocabulary.Date: true, vocabulary.Control: true}

// countedField is what the labels over counts with powers are: what all name with a word
// and a number, types of devices, lines, else places.
func (f *finder) countedField(x *crosstab, cols []*heading) vocabulary.Field {
	votes := map[vocabulary.Field]int{}
	for _, i := range x.cols {
		label := cols[i].parts[len(cols[i].parts)-1]
		field := groupField(label)
		best := f.s.Header(label).Best()
		switch {
		case field != vocabulary.Unknown:
		case sectionField(label) == vocabulary.Amplifier:
			field = vocabulary.Amplifier
		case classWithin(label)&(classDevice|classMounting) != 0:
			field = vocabulary.Model
		case best.Score >= headerScore && crossedPlaces[best.Field]:
			field = best.Field
		case f.namesLine(label):
			field = vocabulary.Circuit
		}
		votes[field]++
	}
	field, most := vocabulary.Unknown, 0
	for o, n := range votes {
		if o != vocabulary.Unknown && (n > most || n == most && o < field) {
			field, most = o, n
		}
	}
	if field == vocabulary.Circuit || field == vocabulary.Channel || field == vocabulary.Amplifier || 2*most > len(x.cols) {
		return field // "North riser | South riser | Core"
	}
	return vocabulary.Zone
}

// namesLine reports whether one of the words of a label is one for a line: "North riser".
func (f *finder) namesLine(label string) bool {
	return slices.ContainsFunc(strings.Fields(label), func(w string) bool {
		best := f.s.Header(w).Best()
		return best.Field == vocabulary.Circuit && best.Score >= headerScore
	})
}

// saidWithoutLabel reads a line above counts with powers that has no word of its own in front:
// what gives each column its power, "AMP N, 240 W", or the powers alone.
func (f *finder) saidWithoutLabel(d *draft, body []line) (saidLine, bool) {
	if len(body) < 2 {
		return saidLine{}, false
	}
	l := &body[0]
	slots := l.between(d.from, d.to)
	if len(slots) < 2 || slots[0].col == d.from || !overCounts(slots, body[1:]) {
		return saidLine{}, false
	}
	said := saidLine{n: l.n, label: slots[0], words: text(slots[0].cell), field: vocabulary.Amplifier}
	if onlyPowers(slots) {
		said.field = vocabulary.ChannelWatts
		return said, true
	}
	named := !slices.ContainsFunc(slots, func(s slot) bool {
		return s.cell.Kind != grid.String || sectionField(s.cell.line()) != vocabulary.Amplifier && lookOf(s.cell)&(lookAmp|lookMissing) == 0
	})
	return said, named
}

// overCounts reports whether cells of a line stand over counts with powers.
func overCounts(slots []slot, below []line) bool {
	over := 0
	for _, s := range slots {
		if slices.ContainsFunc(below[:min(len(below), lookAhead)], func(l line) bool { return countsInWords.Of(text(l.at(s.col)), 0) }) {
			over++
		}
	}
	return over >= 2
}
