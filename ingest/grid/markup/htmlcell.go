package markup

import (
	"math"
	"strconv"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/numfmt"
	"lineaudit/ingest/grid/strike"
)

// A cellText gathers the text of a cell, with white space collapsed.
type cellText struct {
	text    strike.Builder
	space   bool // white space waits for text behind it
	parted  bool // a paragraph ended and waits for text behind it
	written bool // the line holds something
}

// collapse appends text as it stands in the page.
func (c *cellText) collapse(b []byte, struck bool) {
	var out strings.Builder
	for _, ch := range b {
		if ch == ' ' || ch == '\t' || ch == '\n' || ch == '\r' || ch == '\f' {
			c.space = c.written
			continue
		}
		switch {
		case c.parted && c.text.Len()+out.Len() > 0:
			out.WriteByte('\n')
		case c.space:
			out.WriteByte(' ')
		}
		c.space, c.parted, c.written = false, false, true
		out.WriteByte(ch)
	}
	c.text.Add(out.String(), struck)
}

// newLine begins a new line.
func (c *cellText) newLine(struck bool) {
	c.text.Add("\n", struck)
	c.space, c.parted, c.written = false, false, false
}

// part ends a paragraph: what follows, if anything, goes on a new line.
func (c *cellText) part() {
	c.parted = c.parted || c.written
	c.space, c.written = false, false
}

// fill gives the cell its text and strike-through and says whether it holds
// anything. A cell whose text is only white space, as no-break spaces keep
// empty ones open, is empty.
func (c *cellText) fill(cell *grid.Cell) bool {
	text := strings.Trim(c.text.String(), "\n")
	if strings.TrimSpace(text) == "" {
		text = ""
	}
	cell.Text = text
	cell.Strike(strike.Of(c.text.Runs()))
	switch cell.Kind {
	case grid.Blank:
		cell.Kind = grid.String
		return text != ""
	case grid.Number, grid.Date:
		if isError(text) { // saved as the number 0 with the error as its text
			cell.Kind, cell.Number = grid.Error, 0
			return true
		}
		if text == "" {
			cell.Text = numfmt.Compile(namedFormat(cell.Format())).Text(cell.Number)
		}
	}
	return true
}

// stored sets kind, number and format of a cell from the attributes with which
// spreadsheet programs save what the text does not tell: x:num, x:bool, x:err
// and x:fmla, or sdval and sdnum.
func (p *page) stored(c *grid.Cell, t tag) {
	c.SetFormat(p.css.of(t).format)
	_, c.Formula = t.attr["x:fmla"]
	value, ok := t.attr["sdval"]
	if ok {
		// sdnum is the language of the page, that of the format, and the format.
		if parts := strings.SplitN(t.attr["sdnum"], ";", 3); len(parts) == 3 {
			c.SetFormat(parts[2])
		}
		if strings.EqualFold(c.Format(), "BOOLEAN") {
			c.Kind = grid.Boolean
			c.SetFormat("")
		}
	} else {
		value, ok = t.attr["x:num"]
	}
	if _, isError := t.attr["x:err"]; isError {
		c.Kind = grid.Error
		return
	}
	if v, isBool := t.attr["x:bool"]; isBool {
		c.Kind = grid.Boolean
		if strings.EqualFold(v, "true") || v == "1" {
			c.Number = 1
		}
		return
	}
	v, err := strconv.ParseFloat(strings.TrimSpace(value), 64)
	if !ok || err != nil || math.IsNaN(v) || math.IsInf(v, 0) {
		return
	}
	c.Number = v
	if c.Kind == grid.Boolean {
		return
	}
	c.Kind = grid.Number
	if numfmt.Compile(namedFormat(c.Format())).IsDate() {
		c.Kind = grid.Date
	}
}
