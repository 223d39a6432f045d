package xls

import (
	"slices"
	"strings"
	"unicode/utf16"

	"lineaudit/ingest/grid"
)

// place is a cell by row and column from 1.
type place struct{ row, col int }

// sheetNotes are the comments of a sheet. In BIFF8 their texts lie in drawing
// objects that a Note record points to by number; in BIFF5 in the record.
type sheetNotes struct {
	texts  map[int]string // by object number
	object map[place]int
	text   map[place]string
	order  []place
	last   place // where a long BIFF5 note goes on
	open   bool  // last is set
}

func newSheetNotes() sheetNotes {
	return sheetNotes{texts: map[int]string{}, object: map[place]int{}, text: map[place]string{}}
}

// objectNumber returns the number of a drawing object from the first part of
// its Obj record ([MS-XLS] 2.5.143), or -1.
func objectNumber(d []byte) int {
	const common = 0x15
	if len(d) < 8 || u16(d) != common {
		return -1
	}
	return int(u16(d[6:]))
}

// readObjectText keeps the text of the drawing object read last. The text is
// in the Continue records, which may belong to the drawing instead; what is
// not there is no cell's value, so a text cut off is kept as far as it goes.
func (r *sheetReader) readObjectText(rec record) error {
	pieces, err := r.s.pieces(rec)
	if err != nil {
		return err
	}
	if len(rec.data) < 12 || r.object < 0 {
		return nil
	}
	want := int(u16(rec.data[10:]))
	var units []uint16
	for _, p := range pieces[1:] {
		if len(units) >= want || len(p) == 0 {
			break
		}
		units = appendUnits(units, p[1:], p[0]&1 != 0)
	}
	text := clean(string(utf16.Decode(units[:min(want, len(units))])))
	r.object, r.notes.texts[r.object] = -1, text
	return r.spent.Text(len(text))
}

// maxNotes bounds the comments of a sheet.
const maxNotes = 200_000

// readNote takes in a Note record ([MS-XLS] 2.4.179).
func (r *sheetReader) readNote(rec record) error {
	if len(rec.data) < 6 {
		return nil
	}
	d, n := rec.data, &r.notes
	at := place{int(u16(d)) + 1, int(u16(d[2:])) + 1}
	if len(n.order) > maxNotes {
		return grid.TooLarge("more than %d notes on a sheet", maxNotes)
	}
	if r.w.biff8 {
		if len(d) < 8 {
			return nil
		}
		if _, ok := n.object[at]; !ok {
			n.order = append(n.order, at)
		}
		n.object[at] = int(u16(d[6:]))
		return nil
	}
	text := r.w.decode(d[6:])
	if u16(d) == 0xffff { // the note before goes on
		if n.open {
			n.text[n.last] += text
		}
	} else {
		if _, ok := n.text[at]; !ok {
			n.order = append(n.order, at)
		}
		n.last, n.open = at, true
		n.text[at] = text
	}
	return r.spent.Text(len(n.text[n.last]))
}

// attachNotes puts the comments on their cells, which need not hold a value.
func (r *sheetReader) attachNotes() error {
	n := &r.notes
	var bare []place // cells that hold nothing else
	for _, at := range n.order {
		text := n.text[at]
		if r.w.biff8 {
			text = n.texts[n.object[at]]
		}
		text = strings.TrimRight(clean(text), "\n")
		n.text[at] = text
		if !r.setNote(at, text) && text != "" {
			bare = append(bare, at)
		}
	}
	for _, at := range bare {
		if err := r.add(at.row, at.col, grid.Cell{Kind: grid.Blank, Extra: grid.Extra{Note: n.text[at]}.Share()}); err != nil {
			return err
		}
	}
	if len(bare) > 0 {
		r.sortCells()
	}
	return nil
}

// setNote gives the cell at the place a note, and says whether there is one.
func (r *sheetReader) setNote(at place, text string) bool {
	i, ok := r.rowAt[at.row]
	if !ok {
		return false
	}
	cells := r.rows[i].cells
	k, ok := slices.BinarySearchFunc(cells, at.col, func(c grid.Placed, col int) int { return c.Col - col })
	if ok {
		v := *cells[k].Cell
		v.SetNote(text)
		cells[k].Cell = r.w.maker.New(v)
	}
	return ok
}
