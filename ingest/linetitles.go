package ingest

import (
	"regexp"
	"strings"

	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// lineTitle is a title that begins with the name of a line and goes on with a place: "L1 Platform 1".
var lineTitle = regexp.MustCompile(`^(\pL{1,9}[ .-]{0,2}\d{1,3}\pL?)(?:\s*[:–-]\s*|\s+)(\pL{2}.*)$`)

// linesInTitles parts the titles of lists that all begin with the name of a line which another table
// leads to an output: "L1 Platform 1", "L2 Booking hall" beside "Line | Amp | Output".
func (b *builder) linesInTitles() {
	var lines map[string]bool
	for _, t := range b.tables {
		if t.kind != layout.Loudspeakers && t.kind != layout.Mixed || t.has(vocabulary.Circuit) || t.has(vocabulary.Channel) || t.has(vocabulary.Amplifier) {
			continue
		}
		for _, r := range t.rows {
			if len(r.Sections) == 0 {
				continue
			}
			if lines == nil {
				lines = linesWithOutputs(b.tables)
			}
			if len(lines) > 0 && t.titlesBeginWith(lines) {
				t.partLineTitles()
			}
			break
		}
	}
}

// linesWithOutputs are the identities of the lines that lists of outputs name in a column of their own.
func linesWithOutputs(tables []*table) map[string]bool {
	out := make(map[string]bool)
	for _, t := range tables {
		if t.kind != layout.Channels && t.kind != layout.Amplifiers || !t.has(vocabulary.Channel) && !t.has(vocabulary.Amplifier) {
			continue
		}
		for _, c := range t.byField[vocabulary.Circuit] {
			t.eachText(c, func(text string) { out[lineIdentity(text)] = true })
		}
	}
	delete(out, "")
	return out
}

// titlesBeginWith reports whether there are two titles of sections or more, and each begins with
// another of these lines.
func (t *table) titlesBeginWith(lines map[string]bool) bool {
	texts := make(map[string]bool)
	begun := make(map[string]bool)
	for _, r := range t.rows {
		if len(r.Sections) == 0 {
			continue
		}
		f := &r.Sections[len(r.Sections)-1]
		m := lineTitle.FindStringSubmatch(strings.TrimSpace(f.Text))
		if len(r.Sections) > 1 || m == nil || !lines[lineIdentity(m[1])] {
			return false
		}
		switch f.Field {
		case vocabulary.Unknown, vocabulary.Circuit, vocabulary.Zone, vocabulary.Room:
		default:
			return false
		}
		texts[f.Text], begun[lineIdentity(m[1])] = true, true
	}
	return len(texts) > 1 && len(texts) == len(begun)
}

// partLineTitles makes two titles of each: the line, and the place behind it.
func (t *table) partLineTitles() {
	for _, r := range t.rows {
		if len(r.Sections) == 0 {
			continue
		}
		line, place := r.Sections[0], r.Sections[0]
		m := lineTitle.FindStringSubmatch(strings.TrimSpace(line.Text))
		line.Field, line.Text = vocabulary.Circuit, m[1]
		if place.Text = m[2]; place.Field == vocabulary.Circuit {
			place.Field = vocabulary.Unknown
		}
		r.Sections = []layout.Fact{line, place}
	}
}
