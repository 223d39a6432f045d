package ingest

import (
	"lineaudit/audit/schedule"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// stateUntapped is the state that a remark or a description says among other words, of a row
// without a tap and without a state in a column for it, where most rows have taps: "horn
// removed, the cable is still there", "caja de repuesto, sin montar". It is taken aloud.
func (b *builder) stateUntapped(r *row, s seen, f vocabulary.Field) schedule.Status {
	if f != vocabulary.Notes && f != vocabulary.Describe || s.text == "" || anyDigit(s.text) || countWords(s.text) > 2*fewWords || ofAPiece(s.text) {
		return schedule.Installed
	}
	if f == vocabulary.Describe && stateOfDescribed(s.text) != schedule.Installed {
		return schedule.Installed // it is said by itself
	}
	if r.own(vocabulary.Tap).text != "" || r.own(vocabulary.Status).text != "" || r.kind != loudspeakerRow {
		return schedule.Installed
	}
	found := schedule.Installed
	for _, m := range notation.Statuses(s.text) {
		switch status := statuses[m.Kind]; {
		case !m.Sure:
		case m.Negated || !unloads[status]:
			return schedule.Installed // "removed and replaced by a new one"
		case found == schedule.Installed:
			found = status
		}
	}
	if found == schedule.Installed || !r.t.mostlyTapped() {
		return schedule.Installed
	}
	b.take(s, "status", found.String(), schedule.LikelierReading, "“"+short(s.text)+"”, and no tap is written, as in the other rows")
	return found
}

// mostlyTapped reports whether at least two of three rows of loudspeakers have something written
// in the column of taps.
func (t *table) mostlyTapped() bool {
	if t.tapped == 0 {
		rows, tapped := 0, 0
		for _, r := range t.rows {
			if r.kind != loudspeakerRow || r.out != "" {
				continue
			}
			rows++
			if r.own(vocabulary.Tap).text != "" {
				tapped++
			}
		}
		t.tapped = 1
		if tapped >= 3 && 3*tapped >= 2*rows {
			t.tapped = 2
		}
	}
	return t.tapped == 2
}
