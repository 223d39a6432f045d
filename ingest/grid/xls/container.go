package xls

import (
	"bytes"
	"errors"
	"io"
	"path"
	"strings"

	"github.com/richardlehane/mscfb"

	"lineaudit/ingest/grid"
)

// oleMagic begins every compound file.
const oleMagic = "\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"

// directoryBudget bounds the bytes read while the directory of a compound file
// is opened: 128 bytes an entry, so 4,096 entries. A workbook with a picture
// on every row has a few hundred; the library's work grows with the square.
const directoryBudget = 512 << 10

// workbookStream returns the record stream of a file: the "Workbook" (or
// "Book") stream of a compound file, or the file itself where an old exporter
// wrote the records bare.
func workbookStream(file string, data []byte) ([]byte, error) {
	if !bytes.HasPrefix(data, []byte(oleMagic)) {
		if len(data) < 4 || data[0] != 0x09 {
			return nil, &grid.Unreadable{Reason: "the file is not an Excel 97-2003 workbook"}
		}
		return data, nil
	}
	dir := &metered{r: bytes.NewReader(data), left: directoryBudget, pad: true}
	doc, err := mscfb.New(dir)
	if err != nil {
		return nil, grid.Damaged("the container of the workbook cannot be opened (%s)", libraryWords(err))
	}
	dir.pad = false
	dir.left = 4 * (int64(len(data)) + directoryBudget)
	var workbook, book *mscfb.File
	for _, f := range doc.File {
		if len(f.Path) > 0 {
			continue
		}
		switch strings.ToLower(f.Name) {
		case "encryptedpackage", "encryptioninfo":
			return nil, passwordProtected()
		case "workbook":
			workbook = f
		case "book":
			book = f
		}
	}
	// A file saved for both Excel 95 and 97 holds both; the newer says more.
	if workbook == nil {
		workbook = book
	}
	if workbook == nil {
		return nil, &grid.Unreadable{
			Reason:  "the file is of the same family as Excel 97-2003 workbooks but holds no workbook",
			Advice:  "open it in the program that made it and save it as .xlsx",
			Foreign: !strings.HasPrefix(strings.ToLower(path.Ext(file)), ".xl"),
		}
	}
	return readStream(workbook, int64(len(data)))
}

// readStream reads the whole of one stream of a compound file of fileSize bytes.
func readStream(f *mscfb.File, fileSize int64) ([]byte, error) {
	if f.Size > fileSize {
		return nil, grid.Damaged("the workbook claims %d bytes in a file of %d: the file is cut short", f.Size, fileSize)
	}
	b := make([]byte, f.Size)
	if _, err := io.ReadFull(f, b); err != nil {
		return nil, grid.Damaged("the workbook is cut short (%s)", libraryWords(err))
	}
	return b, nil
}

// metered is a reader that gives up once it was asked for too many bytes, so
// that a container that goes round in circles ends.
type metered struct {
	r    *bytes.Reader
	left int64
	pad  bool
}

var errMetered = errors.New("its directory does not end")

// ReadAt reads as io.ReaderAt does, until the budget is spent. Some exporters
// leave out the unused end of the last sector; while pad is set it reads as
// 0xff, which the tables of a container take for "nothing here".
func (m *metered) ReadAt(p []byte, off int64) (int, error) {
	if m.left -= int64(len(p)); m.left < 0 {
		return 0, errMetered
	}
	n, err := m.r.ReadAt(p, off)
	if m.pad && errors.Is(err, io.EOF) && n > 0 {
		for i := n; i < len(p); i++ {
			p[i] = 0xff
		}
		return len(p), nil
	}
	return n, err
}

// libraryWords strips the library's name from its message.
func libraryWords(err error) string {
	return strings.TrimPrefix(err.Error(), "mscfb: ")
}

func passwordProtected() error {
	return &grid.Unreadable{
		Reason: "the workbook is protected by a password",
		Advice: "open it with the password and save a copy without one",
	}
}

func olderFormat(version string) error {
	return &grid.Unreadable{
		Reason: "the workbook is in an older format (" + version + ")",
		Advice: "open it in a spreadsheet program that still reads it and save it as .xlsx",
	}
}
