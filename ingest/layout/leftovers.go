package layout

import (
	"slices"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// What stands outside all tables: facts of title blocks, short lists without a
// header, notes, and what is left.

// leftovers reads the rows outside all tables.
func (sr *sheetReader) leftovers(miss string) {
	areas := sr.tables[:0:0]
	for _, t := range sr.tables {
		if t.drop == "" {
			areas = append(areas, t)
		}
	}
	for i := range sr.p.lines {
		sr.watch.Step()
		l := &sr.p.lines[i]
		free := l.slots
		if len(areas) > 0 {
			free = nil
			for _, s := range l.slots {
				if !sr.covered(l.n, s.col) {
					free = append(free, s)
				}
			}
		}
		if len(free) == 0 {
			continue
		}
		if t := sr.dropped(l.n, free[0].col); t != nil {
			facts := sr.factsOfDropped(t, l, free)
			sr.facts = append(sr.facts, facts...)
			if len(facts) == 0 {
				sr.outside = append(sr.outside, Outside{At: sr.p.ref(l.n, free[0].col), Class: NoDevice, Reason: t.drop, Text: summary(free)})
			}
			continue
		}
		if l.hidden == grid.HiddenByHand {
			sr.outside = append(sr.outside, Outside{At: sr.p.ref(l.n, free[0].col), Class: Hidden, Reason: "row hidden by hand", Text: summary(free)})
			continue
		}
		if note, ok := sr.numberedNote(i); ok && len(free) == len(l.slots) {
			sr.outside = append(sr.outside, note)
			continue
		}
		if miss != "" && len(free) > 2 {
			sr.outside = append(sr.outside, Outside{At: sr.p.ref(l.n, free[0].col), Class: Unclear, Reason: "no part of a table that was understood", Text: summary(free)})
			continue
		}
		facts, rest := sr.f.lineFacts(l, free)
		if fact, ok := sr.definition(l.n, free); ok {
			facts, rest = []Fact{fact}, nil
		}
		for k := range facts {
			if facts[k].Key != "" && facts[k].Field != vocabulary.Unknown && sr.explains(&facts[k]) {
				facts[k].Field = vocabulary.Unknown
			}
		}
		if sr.form != nil {
			facts = slices.DeleteFunc(facts, func(fact Fact) bool { return sr.inForm[fact.At] })
		}
		sr.facts = append(sr.facts, facts...)
		if len(rest) == 0 && (saysMore(facts) || sr.belowTable(l.n) && namesFigures(facts)) {
			sr.outside = append(sr.outside, Outside{At: sr.p.ref(l.n, free[0].col), Class: Note, Reason: "a note outside the tables", Text: summary(free), Facts: true})
		}
		if len(rest) > 0 {
			sr.outside = append(sr.outside, sr.leave(l.n, rest))
		}
	}
}

// saysMore reports whether pairs of keys and values say figures of something else
// than a title block tells: like any note the line is listed, whatever becomes of it.
func saysMore(facts []Fact) bool {
	return slices.ContainsFunc(facts, func(f Fact) bool {
		return f.Key != "" && !titleFields[f.Field] && f.Field != vocabulary.LineVoltage && f.Field != vocabulary.Ignored && anyDigit(f.Text)
	})
}

// namesFigures reports whether a fact is a text of which nothing is known, with figures.
func namesFigures(facts []Fact) bool {
	return slices.ContainsFunc(facts, func(f Fact) bool { return f.Key == "" && f.Field == vocabulary.Unknown && anyDigit(f.Text) })
}

// belowTable reports whether a table ends above a line.
func (sr *sheetReader) belowTable(n int) bool {
	return slices.ContainsFunc(sr.tables, func(t *placed) bool { return t.area.Row2 < n })
}

// definition reads a line of a short list that says what a part of the system
// is: its tag, and a text with a power, "AMP-1 | two channel 150W/ch @ 70V". A
// heading may stand in front: "Amps: | AMP-1 | 4 x 60W".
func (sr *sheetReader) definition(n int, slots []slot) (Fact, bool) {
	if len(slots) == 3 && strings.HasSuffix(text(slots[0].cell), ":") {
		slots = slots[1:]
	}
	if len(slots) != 2 || lookOf(slots[0].cell)&(lookTag|lookAmp|lookControl) == 0 {
		return Fact{}, false
	}
	if strings.Contains(strings.TrimRight(oneLine(text(slots[0].cell)), ": "), ":") {
		return Fact{}, false // "Amp 1: L1 + L2": a sentence of its own
	}
	v := slots[1]
	t := v.cell.line()
	if v.cell.Kind != grid.String || len(t) > maxText || !reLabelWatts.MatchString(t) {
		return Fact{}, false
	}
	return Fact{Key: slots[0].cell.line(), Text: t, At: sr.p.ref(n, v.col), Cell: v.cell.Cell}, true
}

// leave makes an Outside of what a line holds beside all tables.
func (sr *sheetReader) leave(n int, slots []slot) Outside {
	o := Outside{At: sr.p.ref(n, slots[0].col), Class: Unclear, Reason: "stands outside all tables", Text: summary(slots)}
	switch {
	case allStruck(slots):
		o.Class, o.Reason = Struck, "struck through, outside the tables"
	case isNoteText(slots[0].cell.line()):
		o.Class, o.Reason = Note, "a note outside the tables"
	}
	return o
}

// dropped is the table at a place that was left out, nil if there is none.
func (sr *sheetReader) dropped(row, col int) *placed {
	for _, t := range sr.tables {
		if t.drop != "" && t.area.Contains(row, col) {
			return t
		}
	}
	return nil
}

// factsOfDropped are what a line of a table that was left out says by keys: a
// title block looks like a table, "JOB NO | J12 | DATE | 19/02/2018", and so
// does a short list of what the parts of the system are.
func (sr *sheetReader) factsOfDropped(t *placed, l *line, slots []slot) []Fact {
	if fact, ok := sr.definition(l.n, slots); ok {
		return []Fact{fact}
	}
	next := slices.IndexFunc(sr.tables, func(o *placed) bool { return o.drop == "" })
	if t.area.Row2-t.area.Row1 >= mostTitleRows || next < 0 || sr.tables[next].area.Row1 < t.area.Row1 {
		return nil // no title of anything
	}
	facts, _ := sr.f.lineFacts(l, slots)
	return slices.DeleteFunc(facts, func(f Fact) bool { return f.Key == "" || f.Field == vocabulary.Unknown })
}

// mostTitleRows is the most lines of a title block.
const mostTitleRows = 12
