package ingest

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Who does not know the name of a control writes "own knob, 10 W" beside one room and "same knob" beside the next.

// controlSame reads a cell of controls, or a remark, that says no more than that the control is the same: as that of
// the row above, or of the place behind "as". It is asked where that has none.
func (b *builder) controlSame(r *row, s seen) (controlMention, bool) {
	folded := join.Fold(s.text)
	if first, rest, _ := strings.Cut(folded, " "); onItsWords.in(first) && sameWords.ahead(rest) != "" {
		folded = rest // "on the same control"
	}
	same := sameWords.ahead(folded)
	if same == "" || anyDigit(folded) || countWords(folded) > mostRemark {
		return controlMention{}, false
	}
	what := strings.Fields(strings.Trim(folded[len(same):], " .,;:()"))
	place := []string(nil)
	if at := slices.IndexFunc(what, func(w string) bool { return slices.Contains(asWords, w) }); at >= 0 {
		what, place = what[:at], what[at+1:]
	}
	inCell := s.col != nil && s.col.Field == vocabulary.Control
	if said := strings.Join(what, " "); said == "" && !inCell || said != "" && vocabulary.DeviceIn(said) != vocabulary.ControlDevice && !notation.IsControlWord(said) {
		return controlMention{}, false
	}
	if b.sharing {
		return controlMention{}, true // it has none of its own
	}
	for len(place) > 0 && linkWords[place[0]] {
		place = place[1:]
	}
	if len(place) == 0 {
		place = aboveWords[:1]
	}
	m := b.controlOfOther(r, s, strings.Join(place, " "))
	if !m.any {
		b.askCell(s, whichControl(s), "the load of this control")
		return m, true
	}
	b.take(s, "control", "that of row "+m.as.Rows.String(), schedule.LikelierReading, "“"+short(s.text)+"” behind it")
	return m, true
}

// volumeBy is a remark that begins with what sets the volume, with a word for a control in place of these words:
// "control RG1 at the desk" for "volume by RG1 at the desk".
func volumeBy(text string) string {
	words := strings.Fields(text)
	for n := min(4, len(words)-1); n > 1; n-- {
		if volumeByWords.in(join.Fold(strings.Join(words[:n], " "))) && isTag(strings.Trim(words[n], ",.;:")) && anyDigit(words[n]) {
			return "control " + strings.Join(words[n:], " ")
		}
	}
	return text
}
