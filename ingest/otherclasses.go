package ingest

import (
	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// Registers of all assets of a building tell the class of each in a column: PA, FE, HT. What is
// of another class than the loudspeakers, amplifiers and controls is none of them, though no word for it is known.

// classColumn is the column of a table that tells the class of each asset, nil if there is none.
func (t *table) classColumn() *column {
	for _, c := range t.columns {
		switch c.Field {
		case vocabulary.Model, vocabulary.Kind, vocabulary.Ignored, vocabulary.Unknown:
			if assetClassWords.in(join.Fold(c.Header)) {
				return c
			}
		}
	}
	return nil
}

// otherClasses leaves rows out that no word makes a loudspeaker, that state no watts and whose class is
// none of those of the loudspeakers, amplifiers and controls of their register. These must be of one class, or
// it tells something else: indoors and outdoors.
func (b *builder) otherClasses() {
	type register struct { // its lists of amplifiers, controls and loudspeakers may have been parted
		sheet string
		at    grid.Range
	}
	classes := make(map[register]map[string]bool)   // those of known devices
	kinds := make(map[register]map[deviceKind]bool) // and what these are
	each := func(do func(t *table, r *row, class seen)) {
		for _, t := range b.tables {
			c := t.classColumn()
			if c == nil || t.kind == layout.Cables || !t.has(vocabulary.Describe) {
				continue
			}
			for _, r := range t.rows {
				if class := r.at(c); r.out == "" && class.had() {
					do(t, r, class)
				}
			}
		}
	}
	each(func(t *table, r *row, class seen) {
		if k := kindInWords(r.own(vocabulary.Describe).text); k != noKind {
			of := register{t.Sheet, t.Range}
			if classes[of] == nil {
				classes[of], kinds[of] = make(map[string]bool), make(map[deviceKind]bool)
			}
			classes[of][class.key()], kinds[of][k] = true, true
		}
	})
	each(func(t *table, r *row, class seen) {
		of := register{t.Sheet, t.Range}
		known := classes[of]
		if len(known) != 1 || len(kinds[of]) < 2 || known[class.key()] || r.kind != loudspeakerRow || wordKind(r) != noKind || r.own(vocabulary.Tap).had() || r.own(vocabulary.TotalWatts).had() {
			return
		}
		r.out, r.reason = schedule.EmptyRow, "of another class than the loudspeakers"
	})
}
