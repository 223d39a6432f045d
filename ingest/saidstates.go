package ingest

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// mostOfState is the most words of a note that say what has become of a line or a place.
const mostOfState = 8

// saidStates gives rows of loudspeakers the state that a note tells of all of their
// line, zone or room: "L4: to come in phase 2".
func (b *builder) saidStates() {
	for _, s := range b.spoken {
		if len(s.text) > longestSpoken {
			continue
		}
		for _, statement := range statements(s.text) {
			head, status := placeAndState(statement)
			if status == schedule.Installed {
				continue
			}
			said := seen{text: statement, source: schedule.Source{At: s.at, Written: s.text, How: schedule.FromTitle}}
			if b.giveState(head, status) {
				b.take(said, "status", status.String(), schedule.LikelierReading, "said of all of “"+short(head)+"”")
			}
		}
	}
}

// placeAndState parts a statement at a sign or at "is": "L4: to come in phase 2", "the
// potting shed horn is a spare, in its box". The word for a loudspeaker is no part of the place.
func placeAndState(statement string) (place string, status schedule.Status) {
	if head, tail, ok := cutAny(statement, " : ", ": ", " = ", " – ", " - "); ok {
		return head, stateOfAll(tail)
	}
	words := strings.Fields(statement)
	for i := 1; i+1 < len(words); i++ {
		if !slices.Contains(beingWords, join.Fold(words[i])) {
			continue
		}
		tail, _, _ := strings.Cut(strings.Join(words[i+1:], " "), ", ")
		return barePlace(words[:i]), stateOfAll(tail)
	}
	return "", schedule.Installed
}

// barePlace is a place in the words for a loudspeaker there: "the potting shed horn".
func barePlace(words []string) string {
	if len(words) > 1 && articleWords.begins(join.Fold(words[0])) {
		words = words[1:]
	}
	if n := len(words); n > 1 && kindInWords(words[n-1]) == loudspeakerRow {
		words = words[:n-1]
	}
	return strings.Join(words, " ")
}

// giveState gives a state to the rows that name something as line, output, zone or room,
// and reports whether there are any that count as installed.
func (b *builder) giveState(name string, status schedule.Status) bool {
	key, given := join.Key(name), false
	if key == "" {
		return false
	}
	for _, t := range b.tables {
		for _, r := range t.rows {
			if r.kind != loudspeakerRow || r.out != "" || r.status != schedule.Installed {
				continue
			}
			for _, f := range []vocabulary.Field{vocabulary.Circuit, vocabulary.Channel, vocabulary.Zone, vocabulary.Room} {
				if s := r.say(f); s.had() && s.key() == key {
					r.status, given = status, true
				}
			}
		}
	}
	return given
}

// stateOfAll is the state that all states of a short text agree on, one that keeps a part
// from loading its line. A figure may mean that it is said of some, a word for another
// device that it is said of that.
func stateOfAll(text string) schedule.Status {
	list := notation.Statuses(text)
	if countWords(text) > mostOfState || len(list) == 0 {
		return schedule.Installed
	}
	rest, all := text, schedule.Installed
	sure := slices.ContainsFunc(list, func(m notation.Mention) bool { return m.Sure })
	for _, m := range list {
		status, known := statuses[m.Kind]
		if m.Kind == string(notation.StatusToFit) {
			status, known = schedule.Future, true // said of one of them, the others are there
		}
		if !known || !sure || m.Negated || all != schedule.Installed && status != all {
			return schedule.Installed
		}
		all, rest = status, strings.Replace(rest, m.Text, "", 1)
	}
	if kind := kindInWords(rest); anyDigit(rest) || kind != noKind && kind != loudspeakerRow || join.HasWord(join.Control, rest) || slices.ContainsFunc(strings.Fields(rest), notation.IsControlWord) {
		return schedule.Installed
	}
	return all
}
