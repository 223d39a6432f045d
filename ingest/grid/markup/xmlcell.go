package markup

import (
	"math"
	"strconv"
	"strings"
	"time"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/strike"
	"lineaudit/ingest/grid/xmltok"
)

// date1904Days is how far the two date systems are apart.
const date1904Days = 1462

// cell reads the content of the ss:Cell whose start was read last and says
// whether it holds anything.
func (s *xmlSheet) cell(t xmltok.Token, style string) (c grid.Cell, ok bool, err error) {
	format := s.format(style)
	c.SetFormat(format.Code())
	c.Formula = s.attr(t, "Formula") != ""
	var data strike.Builder
	filled := false
	var kind string
	err = s.r.Children(func(t xmltok.Token) error {
		switch t.Name {
		case "ss:Data":
			kind = s.attr(t, "Type")
			filled = true
			return s.readStyled(&data, s.struck(style))
		case "ss:Comment":
			return s.r.Children(func(t xmltok.Token) error {
				if t.Name != "ss:Data" {
					return s.r.Skip()
				}
				var note strike.Builder
				err := s.readStyled(&note, false)
				c.SetNote(note.String())
				return err
			}, nil)
		}
		return s.r.Skip()
	}, nil)
	if err != nil {
		return c, false, err
	}
	if !filled {
		if c.Formula {
			c.Kind = grid.NoValue
		}
		return c, c.Formula || c.Note() != "", nil
	}
	c.Text = data.String()
	if err := s.setValue(&c, kind, style); err != nil {
		return c, false, err
	}
	c.Strike(strike.Of(data.Runs()))
	return c, c.Kind != grid.Blank || c.Note() != "", nil
}

// setValue sets kind, number and shown text of a cell from its stored text.
func (s *xmlSheet) setValue(c *grid.Cell, kind, style string) error {
	format := s.format(style)
	stored := strings.TrimSpace(c.Text)
	switch kind {
	case "Number":
		v, err := strconv.ParseFloat(stored, 64)
		if err != nil || math.IsNaN(v) || math.IsInf(v, 0) {
			return grid.Damaged("a number is stored as %q", stored)
		}
		if s.date1904 && format.IsCalendar() {
			v += date1904Days
		}
		c.Kind, c.Number = grid.Number, v
		if format.IsDate() {
			c.Kind = grid.Date
		}
		c.Text = format.Text(v)
	case "DateTime":
		v, ok := serialOf(stored)
		if !ok { // before 1900, which no date of a workbook can be
			c.Kind = grid.String
			return nil
		}
		c.Kind, c.Number = grid.Date, v
		if format.IsDate() {
			c.Text = format.Text(v)
		} else {
			c.Text = strings.TrimSuffix(strings.TrimSuffix(stored, ".000"), "T00:00:00")
		}
	case "Boolean":
		c.Kind, c.Text = grid.Boolean, "FALSE"
		if isTrue(stored) {
			c.Number, c.Text = 1, "TRUE"
		}
	case "Error":
		c.Kind, c.Text = grid.Error, stored
	default: // String
		if c.Formula && isError(stored) { // some exporters call them texts
			c.Kind, c.Text = grid.Error, stored
			return nil
		}
		if c.Text == "" {
			return nil
		}
		c.Kind = grid.String
		var hidden bool
		if c.Text, hidden = format.ShowText(c.Text); hidden && !s.textHidden {
			s.textHidden = true
			s.book.Notes = append(s.book.Notes, grid.Note{Sheet: s.sheet.Name, Text: "number formats hide texts; they were read all the same"})
		}
	}
	return nil
}

// isError reports whether a text is an error value of a spreadsheet program.
func isError(s string) bool {
	switch s {
	case "#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A":
		return true
	}
	n, ok := strings.CutPrefix(s, "Err:")
	_, err := strconv.Atoi(n)
	return ok && err == nil
}

// serialOf returns the days of a date such as "2026-01-02T08:30:00.000" in the
// 1900 system, whose 29 February 1900 never was. Hours may pass 24: durations
// count from 31 December 1899.
func serialOf(s string) (float64, bool) {
	day, clock, timed := strings.Cut(s, "T")
	date, err := time.Parse(time.DateOnly, day)
	if err != nil {
		return 0, false
	}
	zero := time.Date(1899, 12, 30, 0, 0, 0, 0, time.UTC)
	v := float64((date.Unix() - zero.Unix()) / 86400)
	if v < 61 {
		v--
	}
	if !timed {
		return v, v >= 0
	}
	unit := 1. / 24
	for part := range strings.SplitSeq(strings.TrimSuffix(clock, "Z"), ":") {
		n, err := strconv.ParseFloat(part, 64)
		if err != nil || n < 0 || n > 1e6 || unit < 1./86401 {
			return 0, false
		}
		v += n * unit
		unit /= 60
	}
	return v, v >= 0
}

// readStyled reads the content of an ss:Data element whose start was read
// last. HTML elements may strike part of it through.
func (b *xmlBook) readStyled(into *strike.Builder, struck bool) error {
	return b.r.Children(func(t xmltok.Token) error {
		switch strings.ToLower(t.Name) {
		case "html:s", "html:strike", "html:del":
			return b.readStyled(into, true)
		case "html:br":
			into.Add("\n", struck)
		}
		return b.readStyled(into, struck)
	}, func(t []byte) error {
		into.Add(lineEnds(string(t)), struck)
		return b.tooLong(into.Len())
	})
}

// lineEnds makes all line ends alike: exporters write &#13; and &#10;, or
// either alone.
func lineEnds(s string) string {
	if !strings.Contains(s, "\r") {
		return s
	}
	return strings.ReplaceAll(strings.ReplaceAll(s, "\r\n", "\n"), "\r", "\n")
}
