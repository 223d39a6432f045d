package layout

import (
	"strconv"
	"strings"

	"lineaudit/ingest/grid"
)

// mostNotes is the highest number of a note in a list of them.
const mostNotes = 60

// numberedNote reads a line of a numbered list of notes, its number in a cell of its own:
// "3 | Attenuators are rated 40 W". A number before or behind it stands on a line close by.
func (sr *sheetReader) numberedNote(i int) (Outside, bool) {
	n, said, ok := sr.noteAt(i)
	if !ok {
		return Outside{}, false
	}
	for _, k := range []int{i - 1, i + 1} {
		if m, _, ok := sr.noteAt(k); ok && m-n == k-i {
			l := &sr.p.lines[i]
			return Outside{At: sr.p.ref(l.n, said.col), Class: Note, Reason: "a numbered note", Text: strconv.Itoa(n) + ". " + said.cell.line()}, true
		}
	}
	return Outside{}, false
}

// noteAt is the number and the text of a line that has no more than these.
func (sr *sheetReader) noteAt(i int) (int, slot, bool) {
	if i < 0 || i >= len(sr.p.lines) {
		return 0, slot{}, false
	}
	l := &sr.p.lines[i]
	if len(l.slots) != 2 || l.hidden == grid.HiddenByHand || sr.covered(l.n, l.slots[0].col) {
		return 0, slot{}, false
	}
	said := l.slots[1]
	n, err := strconv.Atoi(strings.TrimRight(l.slots[0].cell.line(), ".):"))
	if err != nil || n < 1 || n > mostNotes || said.cell.Kind != grid.String || allStruck(l.slots) || len(strings.Fields(said.cell.line())) < 3 {
		return 0, slot{}, false
	}
	return n, said, true
}
