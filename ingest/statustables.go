package ingest

import (
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// What the states of all rows of a table say of one of them.

// fewToFit reports whether a small part of the rows of a table, in cells of remarks
// or states, say that they are to be fitted: the list is of what is there.
func (t *table) fewToFit() bool {
	if t.toFit == 0 {
		rows, said := 0, 0
		for _, r := range t.rows {
			if r.Class != layout.Device {
				continue
			}
			rows++
			for _, f := range []vocabulary.Field{vocabulary.Status, vocabulary.Notes} {
				if s := r.own(f); notation.MentionsStatus(s.text, notation.StatusToFit) {
					said++
					break
				}
			}
		}
		t.toFit = 1
		if rows >= 4 && 4*said <= rows {
			t.toFit = 2
		}
	}
	return t.toFit == 2
}

// saysInstalled reports whether a row of the table is installed in so many words.
func (t *table) saysInstalled() bool {
	if t.installed == 0 {
		t.installed = 1
		for _, r := range t.rows {
			if s := r.own(vocabulary.Status); notation.MentionsStatus(s.text, notation.StatusInstalled) {
				t.installed = 2
				break
			}
		}
	}
	return t.installed == 2
}

// newLater reports whether a remark says that what a row calls new comes later, and counts none of its pieces:
// "neu | kommt erst mit Bauabschnitt 3".
func (b *builder) newLater(r *row, state seen) bool {
	if list := notation.Statuses(state.text); len(list) != 1 || list[0].Kind != string(notation.StatusNew) {
		return false
	}
	for s := range r.every(vocabulary.Notes) {
		list := notation.Statuses(s.text)
		later := len(list) > 0 && countWords(s.text) <= fewWords && strings.Trim(s.text[:1], "0123456789") != ""
		for _, m := range list {
			later = later && m.Sure && !m.Negated && m.Kind == string(notation.StatusFuture)
		}
		if later {
			b.take(s, "status", "future", schedule.LikelierReading, "“"+short(s.text)+"” beside “"+short(state.text)+"”")
			return true
		}
	}
	return false
}
