package grid

import (
	"hash/maphash"
	"slices"
	"strings"
)

// A Maker makes the cells and rows of a file. A cell that holds what one met
// lately does is that one, so that what repeats down a column is held once. The
// zero Maker is ready for use.
type Maker struct {
	table  *table
	recent []*Cell // by the hash of their texts
	texts  strings.Builder
	shapes [16]*shape // of rows made lately
	room   []uint32   // for rows to come
}

// How many cells are kept in mind, and how many bytes of text and cells of rows
// are asked for at a time: it grows with the file.
const (
	fewRecent  = 256
	manyRecent = 8192
	fewTexts   = 256
	manyTexts  = 2 << 10
	fewCells   = 128
	manyCells  = 8192
)

var textSeed = maphash.MakeSeed()

// Of returns a cell like c as rows share it.
func (m *Maker) Of(c Cell) *Cell {
	at := m.lately(maphash.String(textSeed, c.Text))
	if *at == nil || !(*at).Equal(c) {
		*at = m.New(c)
	}
	return *at
}

// Shown returns a cell like c that shows the text as rows share it; the bytes may
// change afterwards.
func (m *Maker) Shown(c Cell, text []byte) *Cell {
	at := m.lately(maphash.Bytes(textSeed, text))
	if p := *at; p != nil && p.Text == string(text) {
		if c.Text = p.Text; p.Equal(c) {
			return p
		}
	} else {
		c.Text = m.text(text)
	}
	*at = m.New(c)
	return *at
}

// New returns a cell like c for one place in a row, or several; it is not kept in mind.
func (m *Maker) New(c Cell) *Cell {
	if m.table == nil {
		m.table = new(table)
	}
	return m.table.add(c)
}

// lately is where a cell whose text has that hash is kept in mind.
func (m *Maker) lately(hash uint64) **Cell {
	if n := len(m.recent); n == 0 || n < manyRecent && m.table.len() > 4*n {
		m.recent = make([]*Cell, max(fewRecent, 2*n))
	}
	return &m.recent[hash%uint64(len(m.recent))]
}

// text is b as a string, of which many share one allocation.
func (m *Maker) text(b []byte) string {
	if len(b) > fewTexts {
		return string(b)
	}
	if m.texts.Cap()-m.texts.Len() < len(b) {
		size := fewTexts
		if m.table.len() > fewTexts {
			size = manyTexts
		}
		m.texts = strings.Builder{}
		m.texts.Grow(size)
	}
	from := m.texts.Len()
	m.texts.Write(b)
	return m.texts.String()[from:]
}

// Row returns a row of cells, which are in ascending column order. They may be of
// another's making.
func (m *Maker) Row(number int, cells []Placed) Row {
	n := len(cells)
	if n == 0 {
		return Row{Number: number}
	}
	if len(m.room) < n {
		m.room = make([]uint32, max(n, min(fewCells+2*m.table.len(), manyCells)))
	}
	ids := m.room[:n:n]
	m.room = m.room[n:]
	for i, c := range cells {
		if !m.table.holds(c.Cell) {
			c.Cell = m.New(*c.Cell)
		}
		ids[i] = c.id
	}
	return Row{Number: number, of: m.shape(cells), ids: ids}
}

// shape is that of a row of these cells.
func (m *Maker) shape(cells []Placed) *shape {
	sum := 0
	for i, c := range cells {
		sum += (i + 1) * c.Col
	}
	at := &m.shapes[uint(sum)%uint(len(m.shapes))]
	if p := *at; p != nil && slices.EqualFunc(p.cols, cells, func(col int32, c Placed) bool { return int(col) == c.Col }) {
		return p
	}
	p := &shape{cols: make([]int32, len(cells)), cells: m.table}
	for i, c := range cells {
		p.cols[i] = int32(c.Col)
	}
	*at = p
	return p
}

// A table holds cells by their numbers, which count from 0. They stay where they are.
type table struct {
	blocks [][]Cell // of blockSize each, all but the last full
}

const blockSize = 256

func (t *table) at(id uint32) *Cell { return &t.blocks[id/blockSize][id%blockSize] }

// len is the number of cells in the table, which may be nil.
func (t *table) len() int {
	if t == nil || len(t.blocks) == 0 {
		return 0
	}
	last := len(t.blocks) - 1
	return last*blockSize + len(t.blocks[last])
}

// holds reports whether c lies in the table, which may be nil.
func (t *table) holds(c *Cell) bool { return int(c.id) < t.len() && t.at(c.id) == c }

func (t *table) add(c Cell) *Cell {
	n := t.len()
	if n%blockSize == 0 {
		t.blocks = append(t.blocks, make([]Cell, 0, blockSize))
	}
	c.id = uint32(n)
	block := append(t.blocks[n/blockSize], c)
	t.blocks[n/blockSize] = block
	return &block[len(block)-1]
}
