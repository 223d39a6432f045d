package layout

import (
	"fmt"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A saidLine is a line above or below the counts of a matrix that says
// something of the zones across: their channels, what these carry, their lengths.
type saidLine struct {
	n     int // number of the line
	label slot
	words string
	unit  string
	field vocabulary.Field
}

// saidOfPlaces are the fields that such a line may state.
var saidOfPlaces = [vocabulary.Fields]bool{vocabulary.Channel: true, vocabulary.Amplifier: true, vocabulary.ChannelWatts: true, vocabulary.Circuit: true,
	vocabulary.Tap: true, vocabulary.Control: true, vocabulary.ControlWatts: true, vocabulary.Length: true, vocabulary.Gauge: true, vocabulary.LineVoltage: true, vocabulary.Zone: true, vocabulary.CableType: true}

// saidLines finds the lines at either end of a body whose label is a header
// word for what belongs to a place, and returns the lines between them.
func (f *finder) saidLines(d *draft, body []line) (said []saidLine, rest []line) {
	take := func(l *line) bool {
		slots := l.between(d.from, d.to)
		if len(slots) < 3 || slots[0].cell.Kind != grid.String {
			return false
		}
		words := slots[0].cell.line()
		h := f.s.Header(words)
		best := h.Best()
		if powerOfAny[best.Field] && (l == &body[0] && (overGroups(slots, body[1:]) || allOverTicks(slots[1:], body[1:])) || l == &body[len(body)-1] && overGroups(slots, body[:len(body)-1])) {
			best.Field = vocabulary.ChannelWatts // of what stands across: the groups have their own, and ticks have none
		}
		if best.Score >= headerScore && besidePlaces[best.Field] && len(body) > 3 {
			best.Field = vocabulary.Ignored
			said = append(said, saidLine{n: l.n, label: slots[0], words: words, unit: h.Unit, field: best.Field})
			return true
		}
		if best.Score < headerScore || !saidOfPlaces[best.Field] || anyDigit(words) {
			return false
		}
		if best.Field == vocabulary.Tap && slices.ContainsFunc(slots[1:], func(s slot) bool { return lookOf(s.cell)&(lookNumber|lookWatts) == 0 }) {
			return false
		}
		if (best.Field == vocabulary.Control || best.Field == vocabulary.Amplifier) && lookOf(slots[1].cell)&lookNumber != 0 {
			return false // so many of them in each place
		}
		if best.Field == vocabulary.Amplifier && onlyPowers(slots[1:]) {
			best.Field = vocabulary.ChannelWatts // one for each place, without a name
		}
		said = append(said, saidLine{n: l.n, label: slots[0], words: words, unit: h.Unit, field: best.Field})
		return true
	}
	if line, ok := f.saidWithoutLabel(d, body); ok {
		said, body = append(said, line), body[1:]
	}
	for len(body) > 0 && take(&body[0]) {
		body = body[1:]
	}
	for len(body) > 0 && take(&body[len(body)-1]) {
		body = body[:len(body)-1]
	}
	return said, body
}

// besidePlaces are the fields of what comes of the counts and taps of a place, or was measured there.
var besidePlaces = [vocabulary.Fields]bool{vocabulary.Load: true, vocabulary.TotalWatts: true, vocabulary.MeasuredLoad: true, vocabulary.Measured: true,
	vocabulary.Headroom: true, vocabulary.Impedance: true}

// saysOfPlaces reports whether line i says something of the places that stand across further up in the same block:
// "Amplifier | Amp A | Amp A | Amp B" below "Room | Line 1 | Line 2 | Line 3" and some lines of counts.
func (f *finder) saysOfPlaces(i int, s *strip) bool {
	l := &f.p.lines[i]
	slots := l.between(s.from, s.to)
	if len(slots) < 3 {
		return false
	}
	if h := f.header(slots[0].cell); h.score < headerScore || !saidOfPlaces[h.field] || anyDigit(slots[0].cell.line()) {
		return false
	}
	for _, s := range slots[1:] {
		if f.header(s.cell).score >= headerScore && !namesOrRates(s.cell) {
			return false
		}
	}
	gaps := 0
	for n := i - 1; n >= max(0, i-mostAbove); n-- {
		if gap := f.p.lines[n+1].n - f.p.lines[n].n - 1; gap > 0 {
			gaps++
			if gap > 1 || gaps > 1 {
				return false
			}
		}
		if placesAcross(f.p.lines[n].between(slots[1].col, s.to)) >= len(slots)-1 {
			return i-n > 2
		}
	}
	return false
}

// withSaid joins a block of lines that all say something of the places across with the block above, where one blank line
// stands between them.
func (f *finder) withSaid(blocks []grid.Range) []grid.Range {
	var out []grid.Range
	for _, r := range blocks {
		last := len(out) - 1
		if last < 0 || r.Row1 != out[last].Row2+2 || r.Col1 != out[last].Col1 || r.Col2 > out[last].Col2 || !f.saidBlock(out[last], r) {
			out = append(out, r)
			continue
		}
		out[last].Row2 = r.Row2
	}
	return out
}

// saidBlock reports whether all lines of a block say something of the places that stand across at the top of the one above.
func (f *finder) saidBlock(above, r grid.Range) bool {
	heads, lines := f.p.within(above.Row1, above.Row2), f.p.within(r.Row1, r.Row2)
	if len(heads) < 3 || len(lines) > mostSaid {
		return false
	}
	places := 0
	for i := range heads[:min(3, len(heads))] {
		places = max(places, placesAcross(heads[i].between(r.Col1+1, r.Col2)))
	}
	for i := range lines {
		slots := lines[i].between(r.Col1, r.Col2)
		h := f.header(slots[0].cell)
		if slots[0].col != r.Col1 || len(slots) < 3 || len(slots)-1 > places || h.score < headerScore || !saidOfPlaces[h.field] && !powerOfAny[h.field] || anyDigit(slots[0].cell.line()) {
			return false
		}
	}
	return places > 1
}

// mostSaid is the most lines that say something of the places of a matrix.
const mostSaid = 12

// mostAbove is the most lines of counts between places across and what is said of them.
const mostAbove = 60

// placesAcross is how many of some cells name lines, zones or outputs.
func placesAcross(slots []slot) int {
	n := 0
	for _, s := range slots {
		switch notation.KeyOf(s.cell.line()).Kind {
		case notation.KeyLine, notation.KeyZone, notation.KeyChannel:
			n++
		}
	}
	return n
}

// namesOrRates reports whether a cell is a tag, a figure or a rating rather than a word.
func namesOrRates(c cell) bool {
	if lookOf(c)&(lookTag|lookAmp|lookNumber|lookWatts|lookLetter) != 0 || notation.KeyOf(c.line()).Kind != notation.KeyNone {
		return true
	}
	_, last, ok := strings.Cut(c.line(), " ")
	return ok && len(last) == 1 && last == strings.ToUpper(last) // "Fin. A"
}

// powerOfAny are the fields of words for a power that do not say whose it is.
var powerOfAny = [vocabulary.Fields]bool{vocabulary.Tap: true, vocabulary.RatedWatts: true, vocabulary.FrameWatts: true, vocabulary.ControlWatts: true}

// onlyPowers reports whether cells are powers with their units, or say that there is none.
func onlyPowers(slots []slot) bool {
	return !slices.ContainsFunc(slots, func(s slot) bool { return lookOf(s.cell)&(lookWatts|lookMissing) == 0 })
}

// overGroups reports whether cells of a line stand over counts with powers.
func overGroups(slots []slot, below []line) bool {
	over := 0
	for _, s := range slots[1:] {
		if slices.ContainsFunc(below[:min(len(below), lookAhead)], func(l line) bool { return reGroup.MatchString(text(l.at(s.col))) }) {
			over++
		}
	}
	return over >= 2
}

// crossedAmong looks for a matrix in a body with lines that speak of the
// places across; nil if there are none, or nothing stands across.
func (f *finder) crossedAmong(d *draft, sample []line, low, high int) ([]*heading, *crosstab) {
	said, counts := f.saidLines(d, sample)
	if len(said) == 0 || len(counts) < 2 {
		return nil, nil
	}
	cols := f.headings(d, counts, low, high)
	if outputs, _ := f.patched(cols); f.twins(cols) != nil || outputs != nil {
		return nil, nil
	}
	x := f.crossed(cols, counts)
	if x == nil || x.marks && x.field != vocabulary.Channel || !crossedPlaces[x.field] {
		return nil, nil
	}
	for _, s := range said {
		if s.field != x.field {
			x.said = append(x.said, s)
		}
	}
	return cols, x
}

// crossedPlaces are the fields of labels that a place has.
var crossedPlaces = [vocabulary.Fields]bool{vocabulary.Channel: true, vocabulary.Zone: true, vocabulary.Room: true, vocabulary.Floor: true, vocabulary.Building: true, vocabulary.Circuit: true}

// saidColumns are the columns that the lines about the places make.
func (f *finder) saidColumns(x *crosstab) []Column {
	var out []Column
	for _, s := range x.said {
		at := f.p.ref(s.n, s.label.col)
		out = append(out, Column{At: at, Header: s.words, Field: s.field, Unit: s.unit, Confidence: 0.8,
			Evidence: fmt.Sprintf("%q stands beside values for each of the headers", s.words)})
	}
	return out
}

// saidValues are what these lines state of one place.
func (f *finder) saidValues(x *crosstab, h *heading) []Value {
	var out []Value
	for _, s := range x.said {
		v := Value{At: f.p.ref(s.n, h.col)}
		if l := f.p.within(s.n, s.n); len(l) > 0 {
			if c := l[0].at(h.col); !c.blank() && text(c) != "" {
				v.Cell, v.Text, v.How = c.Cell, text(c), schedule.Stated
			}
		}
		out = append(out, v)
	}
	return out
}

// saidAt reports whether a line speaks of the places across, and what it says first.
func (x *crosstab) saidAt(n int) (saidLine, bool) {
	for _, s := range x.said {
		if s.n == n {
			return s, true
		}
	}
	return saidLine{}, false
}

// setInLabels gives the records of a matrix the watts that the labels of their
// rows say the type is set to, "Ceiling @ 3 W", where nothing else states a tap.
func setInLabels(t *Table) {
	label := -1
	for i, c := range t.Columns {
		switch c.Field {
		case vocabulary.Tap, vocabulary.TapList:
			return
		case vocabulary.Describe, vocabulary.Model, vocabulary.Kind:
			if label < 0 {
				label = i
			}
		}
	}
	if label < 0 {
		return
	}
	set := map[int]string{} // by record
	for i, r := range t.Records {
		if r.Class == Device {
			if w := phraseOf(r.Values[label].Text).set; w != "" {
				set[i] = w
			}
		}
	}
	if len(set) == 0 {
		return
	}
	c := t.Columns[label]
	t.Columns = append(t.Columns, Column{At: c.At, Header: "watts of the labels", Field: vocabulary.Tap, Unit: "W", Confidence: 0.8, Evidence: "the labels of the rows say what is set"})
	for i := range t.Records {
		r := &t.Records[i]
		v := Value{At: r.At}
		if w, ok := set[i]; ok {
			v = r.Values[label]
			v.Text = w
		}
		r.Values = append(r.Values, v)
	}
}
