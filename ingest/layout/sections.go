package layout

import (
	"slices"

	"lineaudit/ingest/vocabulary"
)

// Titles of sections, outermost first, are in force for the rows below them.

// plainField is what a title without a telling word names in this table: the
// room where zones are named otherwise, else the zone.
func (b *bodyReader) plainField(above []Fact) vocabulary.Field {
	zone, room := false, false
	for _, c := range b.t.Columns {
		zone = zone || c.Field == vocabulary.Zone
		room = room || c.Field == vocabulary.Room
	}
	for _, fact := range above {
		zone = zone || fact.Field == vocabulary.Zone
	}
	for i := range b.lines {
		if bl := &b.lines[i]; bl.class == Title {
			words := bl.slots[0]
			if bl.reason == letteredTitle {
				words = bl.slots[1]
			}
			switch sectionField(words.cell.line()) {
			case vocabulary.Zone:
				zone = true
			case vocabulary.Room:
				room = true
			}
		}
	}
	switch {
	case !zone:
		return vocabulary.Zone
	case !room:
		return vocabulary.Room
	}
	return vocabulary.Unknown
}

// fedPlaces settles what titles say that an output feeds, "feeds rink and
// stands": it names the place of rows that name none themselves, and is a remark
// on the output above rows that do.
func (b *bodyReader) fedPlaces(facts []Fact) []Fact {
	placed := slices.ContainsFunc(b.t.Columns, func(c Column) bool { return c.Field == vocabulary.Zone || c.Field == vocabulary.Room })
	out := facts[:0]
	for _, fact := range facts {
		if fact.Field == vocabulary.Unknown && classOf(fact.Key)&classFeeds != 0 {
			if placed {
				continue
			}
			fact.Key = ""
		}
		out = append(out, fact)
	}
	return out
}

// push puts the facts of a title on the stack of sections. A title replaces
// the last one of its own kind and what stood inside it; a title right under another stands inside that.
func push(stack, facts []Fact, fresh bool) []Fact {
	next := append([]Fact(nil), stack...)
	for i, fact := range facts {
		if fact.Field == vocabulary.Unknown && fact.Key == "" && level[fact.Field] == 0 {
			if !fresh && i == 0 {
				next = cut(next, 8)
			}
			next = append(next, fact)
			continue
		}
		if fact.Field == vocabulary.Channel && ofAnother(fact, next) {
			next = cut(next, level[vocabulary.Amplifier])
		}
		same := -1
		for j, s := range next {
			if s.Field == fact.Field {
				same = j
			}
		}
		switch {
		case same >= 0:
			at := next[same].At
			next = next[:same]
			if i == 0 && !fresh && namesAnother(facts) { // "HALL, amplifier AP2" after "GROUND FLOOR, amplifier AP1"
				next = slices.DeleteFunc(next, func(s Fact) bool { return s.At == at })
			}
		case !fresh && i == 0:
			next = cut(next, level[fact.Field])
		}
		next = append(next, fact)
	}
	return next
}

// namesAnother reports whether a title names a place beside what feeds it: it stands in no place that the
// title before it named so.
func namesAnother(facts []Fact) bool {
	return slices.ContainsFunc(facts, func(f Fact) bool { return f.Field == vocabulary.Zone || f.Field == vocabulary.Room }) &&
		slices.ContainsFunc(facts, func(f Fact) bool { return feeders[f.Field] })
}

// ofAnother reports whether the title of an output names another amplifier than the one in
// force: "Amp 4 single channel" below "Amp 3, 60 W".
func ofAnother(output Fact, stack []Fact) bool {
	named := reAmp.FindString(vocabulary.Fold(output.Text))
	return named != "" && slices.ContainsFunc(stack, func(s Fact) bool {
		in := reAmp.FindString(vocabulary.Fold(s.Text))
		return s.Field == vocabulary.Amplifier && in != "" && in != named
	})
}

// cut drops the sections at the level or inside it.
func cut(stack []Fact, at int) []Fact {
	for i, s := range stack {
		if l := level[s.Field]; l >= at || l == 0 {
			return stack[:i]
		}
	}
	return stack
}

// endControl takes the control in force off the stack: a title said that what follows has none.
func endControl(stack []Fact) []Fact {
	for i, s := range stack {
		if s.Field == vocabulary.Control {
			return stack[:i:i]
		}
	}
	return stack
}
