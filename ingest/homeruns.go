package ingest

import (
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// homeRun reports whether a length from the rack stands on one of several rows
// of its line alone: the run to the first loudspeaker, which carries them all.
func (r *row) homeRun(length seen) bool {
	if length.col == nil || !saysReach.Of(length.col.Header, 0).rack {
		return false
	}
	if r.t.onLine == nil {
		r.t.countLines(length.col)
	}
	n := r.t.onLine[r.lineKey()]
	return n.rows > 1 && n.lengths == 1
}

// A lineCount is how many rows of a list are on one line, and how many of them
// state a length.
type lineCount struct{ rows, lengths int }

func (t *table) countLines(length *column) {
	t.onLine = make(map[string]lineCount)
	for _, r := range t.rows {
		if r.Class != layout.Device {
			continue
		}
		n := t.onLine[r.lineKey()]
		n.rows++
		if r.at(length).had() {
			n.lengths++
		}
		t.onLine[r.lineKey()] = n
	}
}

// lineKey tells the lines of a list apart: by zone and output.
func (r *row) lineKey() string {
	return r.zoneText().key() + "\x00" + r.say(vocabulary.Amplifier).key() + "\x00" + r.say(vocabulary.Channel).key() + "\x00" + r.say(vocabulary.Circuit).key()
}
