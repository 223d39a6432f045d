package layout

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// A block for each zone or amplifier may state, in lines of keys and values over the header of its loudspeakers, what
// they belong to: "Zone | Riding hall | Amp | AP1" and "Amp power | 120 W | Control | none" over "Type | Qty | Tap".

// mostKeyed is the most lines of keys and values that stand over a header.
const mostKeyed = 6

// keyedFields are the fields of which one key at least speaks.
var keyedFields = [vocabulary.Fields]bool{vocabulary.Zone: true, vocabulary.Room: true, vocabulary.Amplifier: true, vocabulary.Channel: true, vocabulary.Circuit: true, vocabulary.Control: true}

// isKeyed reports whether a line is keys, each with its value beside it, of which one names what devices belong to;
// one key alone may be any.
func (f *finder) isKeyed(slots []slot) bool {
	if len(slots) == 2 {
		key, value := slots[0], slots[1]
		_, ok := f.keysOf(slots)
		return ok && value.col == key.col+1 && value.cell.Kind == grid.String && !strings.HasSuffix(key.cell.line(), ":")
	}
	if len(slots) < 4 || len(slots)%2 != 0 || len(slots) > 8 {
		return false
	}
	names, ok := f.keysOf(slots)
	return ok && names
}

// keysOf reports whether cells are keys, each with its value beside it, and whether one names what devices belong to.
func (f *finder) keysOf(slots []slot) (names, ok bool) {
	for i := 0; i+1 < len(slots); i += 2 {
		key, value := slots[i].cell, slots[i+1].cell
		if key.Kind != grid.String || len(key.Text) > 40 || anyDigit(key.Text) {
			return false, false
		}
		h := f.header(key)
		if strings.HasSuffix(key.line(), ":") {
			h.field, h.score = f.keyField(key.line()), 1
		}
		if h.score < headerScore || value.Kind == grid.String && f.header(value).score >= headerScore {
			return false, false
		}
		names = names || keyedFields[h.field]
	}
	return names, true
}

// keyedLine reports whether line n is one of a block of such lines, with a header below the last.
func (f *finder) keyedLine(l *line) bool {
	if f.cardKeys[l.n] {
		return true
	}
	if !f.isKeyed(l.slots) {
		return false
	}
	for n := l.n + 1; n <= l.n+mostKeyed; n++ {
		next := f.p.within(n, n)
		if len(next) == 0 {
			return false
		}
		if f.isKeyed(next[0].slots) {
			continue
		}
		s := strip{slots: next[0].slots}
		f.weigh(&s)
		return s.distinct >= 3 && s.matched == len(s.slots) && (len(l.slots) > 2 || f.namesFeeder(l.n))
	}
	return false
}

// namesFeeder reports whether one of the lines of keys and values around line n names what feeds the loudspeakers:
// "Amplifier | AQ1, 240 W" beside "Cable | 2 x 2.5 mm², 180 m".
func (f *finder) namesFeeder(n int) bool {
	return slices.ContainsFunc(f.keyedBlock(n), func(l line) bool { return feeders[f.header(l.slots[0].cell).field] })
}

// keyedFacts reads a line of such a block, the outermost first. What the amplifier or the output gives, and the control
// carries, goes with its name, in whichever line of the block it stands.
func (f *finder) keyedFacts(l *line) []Fact {
	var block []Fact
	for _, o := range f.keyedBlock(l.n) {
		block = append(block, f.pairsOf(&o)...)
	}
	var out []Fact
	for _, fact := range f.pairsOf(l) {
		if of := ratedBy(fact.Field); slices.ContainsFunc(block, func(o Fact) bool { return slices.Contains(of, o.Field) }) {
			continue // it goes with the name
		}
		for _, o := range block {
			if slices.Contains(ratedBy(o.Field), fact.Field) && !isMissing(o.Text) {
				fact.Text += ", " + plainWatts(o.Text)
			}
		}
		out = append(out, fact)
	}
	slices.SortStableFunc(out, func(a, b Fact) int { return level[a.Field] - level[b.Field] })
	return out
}

// ratedBy are the fields of things that a power of a field rates.
func ratedBy(watts vocabulary.Field) []vocabulary.Field {
	switch watts {
	case vocabulary.ChannelWatts, vocabulary.FrameWatts, vocabulary.RatedWatts:
		return []vocabulary.Field{vocabulary.Amplifier, vocabulary.Channel}
	case vocabulary.ControlWatts:
		return []vocabulary.Field{vocabulary.Control}
	}
	return nil
}

// keyedBlock are the lines of keys and values around line n.
func (f *finder) keyedBlock(n int) []line {
	first, last := n, n
	keyed := func(n int) bool {
		l := f.p.within(n, n)
		return len(l) > 0 && (f.cardKeys[n] || f.isKeyed(l[0].slots))
	}
	for last-n < mostKeyed && keyed(last+1) {
		last++
	}
	for n-first < mostKeyed && keyed(first-1) {
		first--
	}
	return f.p.within(first, last)
}

// pairsOf are the keys of a line with their values.
func (f *finder) pairsOf(l *line) []Fact {
	var facts []Fact
	for i := 0; i+1 < len(l.slots); i += 2 {
		value := l.slots[i+1]
		facts = append(facts, f.pair(strings.TrimRight(l.slots[i].cell.line(), " :"), value.cell.line(), f.p.ref(l.n, value.col), value.cell.Cell)...)
	}
	if f.cardKeys[l.n] {
		for i := range facts {
			f.cardFact(&facts[i])
		}
	}
	return facts
}

// reCardNumber is a title that numbers blocks: "Card 3", "FICHE N° 2".
var reCardNumber = regexp.MustCompile(`(?i)^\pL{3,}\.?\s+(?:n[°ºr.]+\s*)?\d{1,3}$`)

// numbersCard reports whether a line numbers the block of keys and values below it and names nothing else but a place
// beside the number: "Card 3 | Platforms".
func (f *finder) numbersCard(l *line) bool {
	if len(l.slots) > 2 || len(l.slots) == 2 && (l.slots[1].cell.Kind != grid.String || anyDigit(l.slots[1].cell.Text) && sectionField(l.slots[1].cell.line()) == vocabulary.Unknown) || !reCardNumber.MatchString(l.slots[0].cell.line()) || sectionField(l.slots[0].cell.line()) != vocabulary.Unknown {
		return false
	}
	next := f.p.within(l.n+1, l.n+1)
	return len(next) > 0 && f.keyedLine(&next[0])
}

// cardFacts reads such a line: the place beside the number, whatever kind of place it is, is the zone of the block.
func (f *finder) cardFacts(l *line) []Fact {
	if len(l.slots) == 1 {
		return nil
	}
	place := l.slots[1]
	facts := f.sectionFacts(place.cell.line(), f.p.ref(l.n, place.col), place.cell.Cell)
	for i := range facts {
		if field := facts[i].Field; field == vocabulary.Unknown || field == vocabulary.Building || field == vocabulary.Floor || field == vocabulary.Room {
			facts[i].Field = vocabulary.Zone
		}
	}
	return facts
}
