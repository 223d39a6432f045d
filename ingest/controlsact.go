package ingest

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/vocabulary"
)

// Lists of controls tell what each acts on in a column of its own, beside where it hangs or the zone it belongs to:
// "Attenuator | Place | Acts on" with "R1 | ticket desk | whole line L3".

// actsOnWords are the words of the headers of such columns.
var actsOnWords = wordList(wordClasses["acts on"])

// allOfItWords are the words ahead of what a control acts on as a whole: "whole line L3".
var allOfItWords = wordList(wordClasses["all of it"])

// lineOfControl takes a tag of a line apart from the word for it: "Linie L3", "circuit 4".
var lineOfControl = regexp.MustCompile(`^(?:\pL{3,12}\.?\s+)?(\pL{0,3}[ -]?\d{1,3}\pL?)$`)

// actedOn is what a control's row says that it acts on: the loudspeakers of a line, or places other than that where it
// hangs; nil if no column tells, or no more than the zone of its row.
func (b *builder) actedOn(r *row) *service {
	if r.kind != controlRow {
		return nil
	}
	for _, c := range r.t.columns {
		if c.Field == vocabulary.Control || !actsOnWords.begins(join.Fold(c.Header)) {
			continue
		}
		s := r.at(c)
		if !s.had() || len(s.text) > longestTitle {
			continue
		}
		if v := b.lineActedOn(s); v != nil {
			return v
		}
		if r.own(vocabulary.Zone).had() && c.Field != vocabulary.Zone {
			return nil // a room within the zone, or all of it: see controlsOfZones
		}
		s.field = vocabulary.To
		s.text = withoutAllOfIt(s.text)
		return b.listOfPlaces(s)
	}
	return nil
}

// withoutAllOfIt is a text without the words for a whole ahead of it: "whole foyer" is the foyer.
func withoutAllOfIt(text string) string {
	words := strings.Fields(text)
	n := 0
	for n < len(words)-1 && (slices.Contains(allOfItWords, join.Fold(words[n])) || n > 0 && slices.Contains(smallWords, join.Fold(words[n]))) {
		n++
	}
	return strings.Join(words[n:], " ")
}

// lineActedOn are the loudspeakers of the line that a cell names, in tables with a column of lines.
func (b *builder) lineActedOn(s seen) *service {
	m := lineOfControl.FindStringSubmatch(withoutAllOfIt(s.text))
	if m == nil {
		return nil
	}
	id := lineIdentity(m[1])
	rows := b.rowsByLine()[id]
	if id == "" || len(rows) == 0 {
		return nil
	}
	return &service{at: s, rows: rows}
}

// rowsByLine are the rows of loudspeakers by the identity of the line in a column of their own.
func (b *builder) rowsByLine() map[string][]*row {
	if b.lineRows == nil {
		b.lineRows = make(map[string][]*row)
		b.each(loudspeakerRow, func(r *row) {
			if line := r.say(vocabulary.Circuit); line.had() {
				id := lineIdentity(line.text)
				b.lineRows[id] = append(b.lineRows[id], r)
			}
		})
	}
	return b.lineRows
}
