// Package zipdir opens the directory of a zip without letting its size cost
// more than a bound: the standard reader takes some 300 bytes of memory for
// every entry, however many there are.
package zipdir

import (
	"archive/zip"
	"errors"
	"io"
)

// ErrTooMany says that a zip has more members than allowed, or a directory
// too large for that many.
var ErrTooMany = errors.New("too many members")

const (
	searched = 512 << 10 // bytes that may be read to find the directory
	perEntry = 256       // bytes of directory allowed for each member
)

// Open reads the directory of the zip of the given size in r. Names that lead
// out of the archive are no error: nobody unpacks by name here. Its error is
// ErrTooMany or one of archive/zip. At most most members are allowed, any
// number if most is 0 or less.
func Open(r io.ReaderAt, size int64, most int) (*zip.Reader, error) {
	m := &meter{ReaderAt: r, left: searched + int64(most)*perEntry, on: most > 0}
	z, err := zip.NewReader(m, size)
	m.on = false
	switch {
	case m.spent:
		return nil, ErrTooMany
	case err != nil && !errors.Is(err, zip.ErrInsecurePath):
		return nil, err
	case most > 0 && len(z.File) > most:
		return nil, ErrTooMany
	}
	return z, nil
}

// A meter ends reading when its bytes are spent.
type meter struct {
	io.ReaderAt
	left  int64
	on    bool
	spent bool
}

func (m *meter) ReadAt(p []byte, off int64) (int, error) {
	if m.on {
		if m.left -= int64(len(p)); m.left < 0 {
			m.spent = true
			return 0, ErrTooMany
		}
	}
	return m.ReaderAt.ReadAt(p, off)
}
