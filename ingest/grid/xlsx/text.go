package xlsx

import (
	"bytes"
	"strings"

	"lineaudit/ingest/grid"
)

// A run is a piece of text in one font.
type run struct {
	end    int // where it ends in the text
	strike runStrike
	strong bool // bold or underlined
}

type runStrike uint8

const (
	asCell   runStrike = iota // the run names no font: the cell's counts
	struck                    // struck through
	unstruck                  // the run's own font is not struck through
)

// A richText tells how a text of several runs reads when the cell's font is
// struck through (index 1) and when it is not (index 0), and what is kept or stands out of it.
type richText struct {
	strike [2]grid.Strike
	kept   [2]string
}

// readText appends the text of the element whose start tag was just handed
// out - a shared string, an inline string or a note - up to its end. Phonetic
// hints are left out. Runs are returned only if one of them names a font.
func (s *scanner) readText(dst []byte, runs []run) ([]byte, []run, error) {
	var (
		depth   = s.depth()
		start   = len(dst)
		first   = len(runs)
		strike  = asCell
		strong  = false
		fonts   = false
		inText  = 0 // depth of the open <t>
		ok      bool
		inFont  = 0
		textLen = 0
	)
	for {
		if err := s.next(); err != nil {
			return dst, runs, err
		}
		switch s.kind {
		case startTag:
			switch string(s.name) {
			case "t":
				if inText == 0 && inFont == 0 {
					inText = s.depth()
				}
			case "r":
				strike, strong = asCell, false
			case "rPr":
				inFont = s.depth()
				strike, fonts = unstruck, true
			case "strike":
				if inFont > 0 && s.isOn() {
					strike = struck
				}
			case "b", "u":
				strong = strong || inFont > 0 && s.isOn()
			case "rPh":
				if err := s.skip(); err != nil {
					return dst, runs, err
				}
			}
		case charData:
			if inText == 0 {
				break
			}
			if dst, ok = appendText(dst, s.raw, s.cdata); !ok {
				return dst, runs, s.broken("holds a character or an entity that XML does not allow")
			}
			if textLen = len(dst) - start; s.lim.MaxCellText > 0 && textLen > s.lim.MaxCellText {
				return dst, runs, grid.TooLarge("a text of more than %d bytes", s.lim.MaxCellText)
			}
		case endTag:
			switch d := s.depth() + 1; {
			case d == depth:
				if !fonts {
					runs = runs[:first]
				}
				return dst, runs, nil
			case d == inText:
				inText = 0
				if end := len(dst) - start; len(runs) == first || end > runs[len(runs)-1].end {
					runs = append(runs, run{end: end, strike: strike, strong: strong})
				}
				strike, strong = asCell, false
			case d == inFont:
				inFont = 0
			}
		}
	}
}

// isOn reports whether the property of a font whose tag was just handed out is set.
func (s *scanner) isOn() bool {
	v, set := s.attribute("val")
	return !set || v != "0" && v != "false" && v != "none"
}

// summary works out what is struck through and what stands out in a text of
// runs, nil if nothing can be, whatever the font of its cell.
func summary(text string, runs []run) *richText {
	if len(runs) == 0 {
		return nil
	}
	var r richText
	for cell := range r.strike {
		var kept strings.Builder
		from, gone := 0, false
		for _, x := range runs {
			piece := text[from:x.end]
			from = x.end
			if x.strike == struck || x.strike == asCell && cell == 1 {
				gone = gone || strings.TrimSpace(piece) != ""
				continue
			}
			kept.WriteString(piece)
		}
		switch {
		case !gone:
			r.kept[cell] = strongPart(text, runs)
		case strings.TrimSpace(kept.String()) == "":
			r.strike[cell] = grid.WholeStruck
		default:
			r.strike[cell] = grid.PartStruck
			r.kept[cell] = kept.String()
		}
	}
	return &r
}

// strongPart is what is bold or underlined in a text of runs of which others are not, else "".
func strongPart(text string, runs []run) string {
	var b strings.Builder
	from, plain := 0, false
	for _, x := range runs {
		piece := text[from:x.end]
		from = x.end
		if x.strong {
			b.WriteString(piece)
		} else {
			plain = plain || strings.TrimSpace(piece) != ""
		}
	}
	if !plain {
		return ""
	}
	return strings.TrimSpace(b.String())
}

// A stringTable holds the shared strings of a workbook.
type stringTable struct {
	text string
	ends []int
	rich map[int]*richText
	held []*grid.Cell // what the last cell with each string holds
}

// at returns string i.
func (t *stringTable) at(i int) string {
	from := 0
	if i > 0 {
		from = t.ends[i-1]
	}
	return t.text[from:t.ends[i]]
}

// last is where the value that the last cell with string i holds is kept in mind.
func (t *stringTable) last(i int) **grid.Cell {
	if t.held == nil {
		t.held = make([]*grid.Cell, len(t.ends))
	}
	return &t.held[i]
}

// readStrings reads the shared strings. Their whole is bounded by MaxText.
func readStrings(s *scanner) (*stringTable, error) {
	if err := s.root(); err != nil {
		return nil, err
	}
	if string(s.name) != "sst" {
		return nil, errOdd
	}
	t := &stringTable{}
	var all []byte
	var runs []run
	for {
		if err := s.compact(); err != nil {
			return nil, err
		}
		if s.lim.MaxText > 0 && int64(len(all))+8*int64(len(t.ends))+160*int64(len(t.rich)) > s.lim.MaxText {
			return nil, grid.TooLarge("more than %d MiB of text", s.lim.MaxText>>20)
		}
		if len(t.ends)&0xfff == 0 {
			if err := s.lim.Check(); err != nil {
				return nil, err
			}
		}
		if next, ok := s.plainString(all); ok {
			all = next
			t.ends = append(t.ends, len(all))
			continue
		}
		if err := s.next(); err != nil {
			return nil, err
		}
		switch {
		case s.kind == endOfPart:
			t.text = string(all)
			return t, nil
		case s.kind == startTag && string(s.name) == "si" && s.depth() == 2:
			from := len(all)
			var err error
			if all, runs, err = s.readText(all, runs[:0]); err != nil {
				return nil, err
			}
			if r := summary(string(all[from:]), runs); r != nil {
				if t.rich == nil {
					t.rich = map[int]*richText{}
				}
				t.rich[len(t.ends)] = r
			}
			t.ends = append(t.ends, len(all))
		}
	}
}

// plainString takes <si><t>text</t></si>, by far the most common form, when
// it stands whole at the reading position.
func (s *scanner) plainString(dst []byte) ([]byte, bool) {
	if s.depth() != 1 || s.empty {
		return dst, false
	}
	b := s.buf[s.pos:]
	switch {
	case bytes.HasPrefix(b, []byte("<si><t>")):
		b = b[len("<si><t>"):]
	case bytes.HasPrefix(b, []byte(`<si><t xml:space="preserve">`)):
		b = b[len(`<si><t xml:space="preserve">`):]
	default:
		return dst, false
	}
	e := bytes.IndexByte(b, '<')
	if e < 0 || s.lim.MaxCellText > 0 && e > s.lim.MaxCellText || !bytes.HasPrefix(b[e:], []byte("</t></si>")) {
		return dst, false
	}
	out, ok := appendText(dst, b[:e], false)
	if !ok {
		return dst, false // the long way says what is wrong
	}
	s.pos = len(s.buf) - len(b) + e + len("</t></si>")
	return out, true
}
