package ingest

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/vocabulary"
)

// Rows refer to notes by their numbers: "1, 3" in a column headed Notes, "see note 3"
// anywhere among the remarks.

// noteRefs are numbers of notes, and no more.
var noteRefs = regexp.MustCompile(`^\(?\d{1,2}\)?(?:\s*[,;/&+]\s*\(?\d{1,2}\)?)*$`)

// seeNote refers to notes among other words.
var seeNote = regexp.MustCompile(`(?i)\b(?:` + strings.Join(noteWords, "|") + `)\.?\s*(?:n[o°º]\.?\s*)?(\d{1,2}(?:\s*[,;/&+]\s*\d{1,2})*)`)

// gatherNotes notes the texts of numbered notes. A number that two lists have tells nothing.
func (b *builder) gatherNotes() {
	said := make(map[int][]spoken)
	for _, s := range b.spoken {
		if s.number > 0 && !slices.ContainsFunc(said[s.number], func(o spoken) bool { return o.text == s.text }) {
			said[s.number] = append(said[s.number], s)
		}
	}
	b.notes = make(map[string]spoken)
	for n, list := range said {
		if len(list) == 1 {
			b.notes[strconv.Itoa(n)] = list[0]
		}
	}
}

// notesOf are the numbered notes that a row refers to.
func (b *builder) notesOf(r *row) []spoken {
	if len(b.notes) == 0 {
		return nil
	}
	var out []spoken
	for s := range r.every(vocabulary.Notes) {
		refs := ""
		if m := seeNote.FindStringSubmatch(s.text); m != nil {
			refs = m[1]
		} else if r.t.refersToNotes(s.col) {
			refs = s.text
		}
		for _, n := range strings.FieldsFunc(refs, func(r rune) bool { return r < '0' || r > '9' }) {
			if note, ok := b.notes[strings.TrimLeft(n, "0")]; ok {
				out = append(out, note)
			}
		}
	}
	return out
}

// remarksOf are the remarks of a row, and the numbered notes that they refer to.
func (b *builder) remarksOf(r *row) []seen {
	out := slices.Collect(r.every(vocabulary.Notes))
	for _, n := range b.notesOf(r) {
		out = append(out, seen{text: n.text, source: schedule.Source{At: n.at, Written: n.text, How: schedule.FromTitle}})
	}
	return out
}

// refersToNotes reports whether the cells of a column of remarks are numbers and nothing else.
func (t *table) refersToNotes(c *column) bool {
	if c == nil {
		return false
	}
	if refers, known := t.noteColumns[c]; known {
		return refers
	}
	cells, numbers := 0, 0
	t.eachText(c, func(text string) {
		cells++
		if noteRefs.MatchString(strings.TrimSpace(text)) {
			numbers++
		}
	})
	if t.noteColumns == nil {
		t.noteColumns = make(map[*column]bool)
	}
	t.noteColumns[c] = cells > 0 && numbers == cells
	return t.noteColumns[c]
}

// statusByNote is the state that a numbered note begins with, "8. Future; wire only", of a
// row that refers to it.
func (b *builder) statusByNote(r *row) (schedule.Status, bool) {
	for _, n := range b.notesOf(r) {
		status := statusAhead(n.text)
		if status == schedule.Installed {
			status = statusAlone(n.text)
		}
		if status != schedule.Installed {
			for s := range r.every(vocabulary.Notes) {
				b.take(s, "status", status.String(), schedule.LikelierReading, "note "+strconv.Itoa(n.number)+": “"+short(n.text)+"”")
				return status, true
			}
		}
	}
	return schedule.Installed, false
}
