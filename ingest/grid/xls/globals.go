package xls

import (
	"errors"
	"io"
	"strconv"
	"strings"

	"golang.org/x/text/encoding"
	"golang.org/x/text/encoding/charmap"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/numfmt"
)

// A workbook is what all sheets of a file share.
type workbook struct {
	lim      grid.Limits
	stream   []byte
	maker    grid.Maker
	biff8    bool // else BIFF5
	codePage encoding.Encoding
	date1904 bool
	fonts    []bool // whether each font is struck through
	xfs      []cellFormat
	codes    map[int]string // number format codes of the file's own
	formats  map[int]*numfmt.Format
	strings  []richString
	sheets   []sheetEntry
	filters  map[int]grid.Range // by index into sheets
	notes    []grid.Note
}

// few returns an error when there are more of something than the limit, or
// when Limits.Stop says so.
func (w *workbook) few(what string, n, limit int) error {
	if limit > 0 && n > limit {
		return grid.TooLarge("more than %d %s", limit, what)
	}
	if n%4096 == 0 {
		return w.lim.Check()
	}
	return nil
}

// A cellFormat is what an XF record says of a cell.
type cellFormat struct{ font, numberFormat int }

// A sheetKind is the kind of a sheet as a BoundSheet8 record gives it.
type sheetKind byte

const worksheet sheetKind = 0

// String names the kind for a note.
func (k sheetKind) String() string {
	switch k {
	case worksheet:
		return "worksheet"
	case 1:
		return "macro sheet"
	case 2:
		return "chart sheet"
	case 6:
		return "program module"
	}
	return "sheet of an unknown kind"
}

// A sheetEntry is one line of the list of sheets.
type sheetEntry struct {
	name   string
	start  int // offset of its BOF record in the stream
	hidden bool
	kind   sheetKind
}

// readGlobals reads the records before the first sheet.
func readGlobals(stream []byte, lim grid.Limits) (*workbook, error) {
	w := &workbook{
		lim:      lim,
		stream:   stream,
		codePage: charmap.Windows1252,
		codes:    map[int]string{},
		formats:  map[int]*numfmt.Format{},
		filters:  map[int]grid.Range{},
	}
	s := &recordStream{b: stream}
	lone, err := w.readVersion(s)
	if err != nil {
		return nil, inWorkbook(err)
	}
	if lone {
		w.sheets = []sheetEntry{{name: "Sheet1"}}
	}
	for {
		r, err := s.next()
		if errors.Is(err, io.EOF) {
			return nil, inWorkbook(damaged("the stream ends before the list of sheets does"))
		}
		if err == nil && r.id != recEOF {
			err = w.readGlobal(s, r)
		}
		if err != nil {
			return nil, inWorkbook(err)
		}
		if r.id == recEOF {
			break
		}
	}
	w.findSheets(s)
	if len(w.sheets) == 0 {
		return nil, grid.Damaged("the workbook lists no sheet")
	}
	return w, nil
}

// findSheets mends a list of sheets that points beside them: sheets follow
// each other in the order of the list.
func (w *workbook) findSheets(s *recordStream) {
	right := true
	for _, e := range w.sheets {
		at := recordStream{b: w.stream, pos: e.start}
		r, err := at.next()
		right = right && err == nil && r.id == recBOF
	}
	if right {
		return
	}
	var starts []int
	for depth := 0; ; {
		r, err := s.next()
		if err != nil {
			break
		}
		switch r.id {
		case recBOF:
			if depth == 0 {
				starts = append(starts, r.pos)
			}
			depth++
		case recEOF:
			depth--
		}
	}
	if len(starts) != len(w.sheets) {
		return // reading the sheet will say what is wrong
	}
	for i := range w.sheets {
		w.sheets[i].start = starts[i]
	}
	w.notes = append(w.notes, grid.Note{Text: "the list of sheets points beside the sheets; they were taken in their order"})
}

// inWorkbook makes damage met before the first sheet readable.
func inWorkbook(err error) error {
	if d, ok := errors.AsType[*damage](err); ok {
		return grid.Damaged("%s", d.what)
	}
	return err
}

// readVersion reads the first record. lone says that the stream is a single
// sheet without anything around it.
func (w *workbook) readVersion(s *recordStream) (lone bool, err error) {
	r, err := s.next()
	if err != nil {
		return false, damaged("the stream is empty or cut short")
	}
	switch r.id {
	case 0x0009:
		return false, olderFormat("Excel 2")
	case 0x0209:
		return false, olderFormat("Excel 3")
	case 0x0409:
		return false, olderFormat("Excel 4")
	case recBOF:
	default:
		return false, damaged("the stream does not begin as a workbook does")
	}
	if err := r.need(4); err != nil {
		return false, err
	}
	switch v := u16(r.data); v {
	case 0x0600:
		w.biff8 = true
	case 0x0500:
	case 0x0200, 0x0300, 0x0400:
		return false, olderFormat("Excel " + strconv.Itoa(int(v>>8)))
	default:
		return false, olderFormat("unknown version " + strconv.Itoa(int(v)))
	}
	return u16(r.data[2:]) == 0x0010, nil
}

// readGlobal takes in one record.
func (w *workbook) readGlobal(s *recordStream, r record) error {
	switch r.id {
	case recFilePass:
		plain, ok := decrypt(w.stream, r, w.biff8)
		if !ok {
			return passwordProtected()
		}
		w.stream, s.b = plain, plain
	case recCodePage:
		return w.readCodePage(r)
	case recDate1904:
		if err := r.need(2); err != nil {
			return err
		}
		w.date1904 = u16(r.data) == 1
	case recFont:
		if err := r.need(4); err != nil {
			return err
		}
		w.fonts = append(w.fonts, r.data[2]&0x08 != 0)
	case recXF:
		if err := r.need(4); err != nil {
			return err
		}
		w.xfs = append(w.xfs, cellFormat{int(u16(r.data)), int(u16(r.data[2:]))})
	case recFormat:
		return w.readFormat(r)
	case recBoundSheet:
		return w.readSheetEntry(r)
	case recName:
		w.readFilterName(r)
	case recSST:
		return w.readSST(s, r)
	}
	return nil
}

func (w *workbook) readCodePage(r record) error {
	if err := r.need(2); err != nil {
		return err
	}
	n := u16(r.data)
	enc, ok := codePage(n)
	if !ok && !w.biff8 {
		w.notes = append(w.notes, grid.Note{Text: "code page " + strconv.Itoa(int(n)) + " is unknown; text was read as Windows-1252"})
	}
	w.codePage = enc
	return nil
}

func (w *workbook) readFormat(r record) error {
	if err := r.need(2); err != nil {
		return err
	}
	size := 1
	if w.biff8 {
		size = 2
	}
	code, err := w.text(r.data[2:], size)
	if err != nil { // spoils how a number looks, not the number
		w.notes = append(w.notes, grid.Note{Text: "a number format is cut off; its cells are shown in the general format"})
	}
	w.codes[int(u16(r.data))] = code
	return nil
}

func (w *workbook) readSheetEntry(r record) error {
	if err := r.need(7); err != nil {
		return err
	}
	name, err := w.text(r.data[6:], 1)
	if err != nil {
		return err
	}
	w.sheets = append(w.sheets, sheetEntry{
		name:   strings.TrimRight(name, "\x00"),
		start:  int(u32(r.data)),
		hidden: r.data[4]&3 != 0,
		kind:   sheetKind(r.data[5]),
	})
	return w.few("sheets", len(w.sheets), w.lim.MaxSheets)
}

// readSST reads the shared strings ([MS-XLS] 2.4.265).
func (w *workbook) readSST(s *recordStream, r record) error {
	if err := r.need(8); err != nil {
		return err
	}
	pieces, err := s.pieces(r)
	if err != nil {
		return err
	}
	// The count that the record begins with is wrong in files of several
	// exporters. What counts is what is there: a cell that refers to a text
	// that is not is damage.
	p := &pieceReader{pieces: pieces, pos: 8}
	for p.ready() {
		text, ok := p.richString()
		if !ok {
			break
		}
		w.strings = append(w.strings, text)
		if err := w.few("shared texts", len(w.strings), w.lim.MaxCells); err != nil {
			return err
		}
	}
	return nil
}

// richString reads an XLUnicodeRichExtendedString ([MS-XLS] 2.5.293) and
// returns false when it is cut off.
func (p *pieceReader) richString() (s richString, ok bool) {
	head := p.take(3)
	if head == nil {
		return s, false
	}
	runs, phonetic := 0, 0
	if head[2]&8 != 0 {
		b := p.take(2)
		if b == nil {
			return s, false
		}
		runs = int(u16(b))
	}
	if head[2]&4 != 0 {
		b := p.take(4)
		if b == nil {
			return s, false
		}
		phonetic = int(u32(b))
	}
	if s.text, ok = p.characters(int(u16(head)), head[2]&1 != 0); !ok {
		return s, false
	}
	for range runs {
		b := p.take(4)
		if b == nil {
			return s, false
		}
		s.runs = append(s.runs, fontRun{u16(b), u16(b[2:])})
	}
	return s, p.skip(phonetic)
}

// fontStruck says whether a font is struck through. There is no font 4: the
// numbers go from 3 to 5 ([MS-XLS] 2.5.129).
func (w *workbook) fontStruck(i int) bool {
	if i > 4 {
		i--
	}
	return i >= 0 && i < len(w.fonts) && w.fonts[i]
}

// format returns the number format of a cell, by the index of its XF record.
func (w *workbook) format(xf int) *numfmt.Format {
	id := 0
	if xf < len(w.xfs) {
		id = w.xfs[xf].numberFormat
	}
	f, ok := w.formats[id]
	if !ok {
		code, own := w.codes[id]
		if !own {
			code = numfmt.Builtin(id)
		}
		if code == "" {
			code = "General"
		}
		f = numfmt.Compile(code)
		w.formats[id] = f
	}
	return f
}

// struckXF says whether a cell's own font is struck through.
func (w *workbook) struckXF(xf int) bool {
	return xf < len(w.xfs) && w.fontStruck(w.xfs[xf].font)
}
