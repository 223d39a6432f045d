package ingest

import (
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// settleTaps decides, in tables with the tap that was found and the one that is
// to be, which of them each row is set to: what was found until the row says
// that the change is done. A table that says so of no row is asked about.
func (b *builder) settleTaps() {
	for _, t := range b.tables {
		if len(t.byField[vocabulary.TapBefore]) != 1 || len(t.byField[vocabulary.Tap]) != 1 {
			continue
		}
		before, tap := t.byField[vocabulary.TapBefore][0], t.byField[vocabulary.Tap][0]
		done := t.doneColumn()
		if done == nil {
			if tap.Planned {
				b.ask(tap.At, vocabulary.Tap.String(), "are the loudspeakers still set as “"+short(before.Header)+"” says, or as “"+short(tap.Header)+"”? They are taken as found.", "the load of every row whose tap is to be changed")
			}
			if !tap.Planned {
				continue
			}
		}
		for _, r := range t.rows {
			if r.Class == layout.Device {
				b.settleTap(r, before, tap, done)
			}
		}
	}
}

// settleTap puts the tap that was found in the place of the one that is to be,
// where the change is not done.
func (b *builder) settleTap(r *row, before, tap, done *column) {
	was, is := r.at(before), r.at(tap)
	because := "no word that the change is done"
	if done != nil {
		s := r.at(done)
		switch notation.DoneOf(s.text) {
		case notation.Yes:
			return
		case notation.No:
			because = "the change is told not to be done"
		default:
			if s.text != "" {
				if was.had() && strings.TrimSpace(was.text) != strings.TrimSpace(is.text) {
					b.askCell(s, "“"+short(s.text)+"”: is the tap changed from “"+short(was.text)+"”? It is counted as found.", "the tap of this row")
				}
				because = "“" + short(s.text) + "” does not say that the change is done"
			}
		}
	}
	switch {
	case was.had() && !anyDigit(was.text) && sureStatus(was.text) != schedule.Installed, nothingThere(was.text):
		r.absent = true // "missing": nothing hangs there yet
	case was.had() && strings.TrimSpace(was.text) != strings.TrimSpace(is.text):
		v := r.Values[before.i]
		v.How, v.Because = schedule.LikelierReading, because
		r.Values[tap.i], r.wordings[tap.i] = v, r.wordings[before.i]
		b.take(r.at(tap), vocabulary.Tap.String(), "what was found", schedule.LikelierReading, because)
	}
}

// nothingThere reports whether a text says in one word that a loudspeaker is not there, which would not be sure within
// a sentence: "fehlt", "gone".
func nothingThere(text string) bool {
	list := notation.Statuses(text)
	if len(list) != 1 || list[0].Negated || countWords(text) > 2 {
		return false
	}
	status, known := statuses[list[0].Kind]
	return known && (status == schedule.Removed || status == schedule.Future)
}

// doneColumn is the column of a table that says of most rows whether they are
// done, nil if there is none.
func (t *table) doneColumn() *column {
	for _, c := range t.columns {
		if c.Field != vocabulary.Status && notation.DoneOf(c.Header) != notation.Yes {
			continue
		}
		answers, cells := 0, 0
		for _, r := range t.rows {
			if s := r.at(c); r.Class == layout.Device && s.text != "" {
				cells++
				if notation.DoneOf(s.text) != notation.NoAnswer {
					answers++
				}
			}
		}
		if cells > 0 && 10*answers >= 8*cells {
			return c
		}
	}
	return nil
}
