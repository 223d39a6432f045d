package marked

import (
	"bufio"
	"crypto/sha256"
	"encoding/binary"

	"lineaudit/ingest/grid"
)

// Content is a checksum of what the cells of a book say, in their places: that of
// a marked copy without its findings sheet is that of its original, whatever the
// formats of the two files.
func Content(b *grid.Book) (sum [sha256.Size]byte) {
	h := sha256.New()
	w := bufio.NewWriter(h)
	var number []byte
	put := func(n int) {
		number = binary.AppendUvarint(number[:0], uint64(n))
		w.Write(number)
	}
	for _, s := range b.Sheets {
		put(0)
		for i := range s.Rows {
			r := &s.Rows[i]
			for c := range r.Cells() {
				if c.Kind == grid.Blank || c.Kind == grid.NoValue || r.Number > maxSheetRows || c.Col > maxSheetCols {
					continue
				}
				if said := valueOf(c.Cell); said != "" {
					put(r.Number)
					put(c.Col)
					put(len(said))
					w.WriteString(said)
				}
			}
		}
	}
	w.Flush()
	h.Sum(sum[:0])
	return sum
}
