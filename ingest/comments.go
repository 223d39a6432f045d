package ingest

import (
	"regexp"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// Notes on cells, which spreadsheet programs call notes or comments, say something of the row
// as remarks beside it do, or of what its cell names: "H2 is the small type, 10 W".

// longestAuthor is the longest name in front of a comment, in bytes, that is taken for its author's.
const longestAuthor = 40

// ownFinding finds where the findings of an earlier audit begin in the note of a marked copy.
var ownFinding = regexp.MustCompile(`(?m)^Finding \d+, (?:possible )?(?:unknown|caution|fault|danger): `)

// commentText is what a note says, without the author's name in front of it and without what
// spreadsheet programs write about threads of comments; what an earlier audit wrote into a
// marked copy is none.
func commentText(note string) string {
	if m := ownFinding.FindStringIndex(note); m != nil {
		note = note[:m[0]]
	}
	if strings.HasPrefix(note, "[Threaded comment]") {
		if _, rest, ok := strings.Cut(note, "Comment:"); ok {
			note = rest
		}
	}
	if author, rest, ok := strings.Cut(note, ":\n"); ok && len(author) <= longestAuthor && !strings.ContainsAny(author, "\n0123456789") {
		note = rest
	}
	return tidy(note)
}

// hasComment reports whether a cell of a table carries a note.
func hasComment(t *layout.Table) bool {
	for i := range t.Records {
		for k := range t.Records[i].Values {
			if v := &t.Records[i].Values[k]; commented(v) {
				return true
			}
		}
	}
	return false
}

// commented reports whether a value stands in a cell of its own that carries a note.
func commented(v *layout.Value) bool {
	return v.Cell != nil && v.Cell.Extra != grid.Shared{} && v.How != schedule.CarriedDown && v.Cell.Note() != ""
}

// comments are what the notes on the cells of a row say.
func (r *row) comments(yield func(seen) bool) {
	for i := range r.Values {
		v := &r.Values[i]
		if !commented(v) {
			continue
		}
		note := v.Cell.Note()
		s := seen{text: commentText(note), t: r.t, field: vocabulary.Notes, source: schedule.Source{At: v.At, Written: note, How: schedule.Stated}}
		if s.text != "" && !yield(s) {
			return
		}
	}
}
