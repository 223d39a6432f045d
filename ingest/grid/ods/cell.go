package ods

import (
	"math"
	"strconv"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/numfmt"
	"lineaudit/ingest/grid/strike"
	"lineaudit/ingest/grid/xmltok"
)

// readCell reads a table:table-cell or table:covered-table-cell whose start
// was read last and says whether it holds anything. Its style is the one
// given, and decides on strike-through and number format.
func (d *document) readCell(r *xmltok.Reader, t xmltok.Token, style string) (c grid.Cell, ok bool, err error) {
	text := &paragraphs{d: d, r: r}
	var note *paragraphs
	struck := d.styles.struck("table-cell", style, false)
	err = r.Children(func(t xmltok.Token) error {
		switch t.Name {
		case "office:annotation":
			note = &paragraphs{d: d, r: r}
			return note.block(false)
		case "table:table":
			d.nested = true
		}
		return text.part(t, struck)
	}, nil)
	if err != nil {
		return c, false, err
	}
	c.SetFormat(d.styles.format(style))
	d.setValue(&c, r, t, text)
	if note != nil {
		c.SetNote(note.text.String())
	}
	if c.Strike(strike.Of(text.text.Runs())); c.Kind == grid.Blank {
		return c, c.Note() != "", nil
	}
	if text.text.Len() == 0 && struck && c.Text != "" {
		c.Struck = grid.WholeStruck
	}
	return c, true, nil
}

// block reads the paragraphs of a comment, a list or a section, not who wrote
// it and when.
func (p *paragraphs) block(struck bool) error {
	return p.r.Children(func(t xmltok.Token) error { return p.part(t, struck) }, nil)
}

// part reads a paragraph, or the paragraphs that a list or a section holds.
func (p *paragraphs) part(t xmltok.Token, struck bool) error {
	switch t.Name {
	case "text:p", "text:h":
		return p.paragraph(t, struck)
	case "text:list", "text:list-header", "text:list-item", "text:numbered-paragraph", "text:section":
		return p.block(struck)
	}
	return p.r.Skip()
}

// setValue sets kind, number and text from the attributes of a cell and the
// text it shows.
func (d *document) setValue(c *grid.Cell, r *xmltok.Reader, t xmltok.Token, shown *paragraphs) {
	_, c.Formula = r.Lookup(t, "table:formula")
	c.Text = shown.text.String()
	kind := r.Attr(t, "office:value-type")
	if attr := valueAttrs[kind]; attr != "" {
		if _, stored := r.Lookup(t, attr); !stored { // the type alone is no value
			kind = ""
		}
	}
	switch kind {
	case "float", "currency", "percentage":
		v, err := strconv.ParseFloat(r.Attr(t, "office:value"), 64)
		if err != nil || math.IsNaN(v) || math.IsInf(v, 0) {
			c.Kind = grid.Error
			c.Text = firstOf(c.Text, "#VALUE!")
			return
		}
		c.Kind, c.Number = grid.Number, v
		if shown.count == 0 {
			c.Text = numfmt.Compile(firstOf(c.Format(), "General")).Text(v)
		}
	case "date":
		d.setDate(c, r.Attr(t, "office:date-value"), serialOfDate)
	case "time":
		d.setDate(c, r.Attr(t, "office:time-value"), serialOfTime)
	case "boolean":
		c.Kind = grid.Boolean
		v := r.Attr(t, "office:boolean-value")
		if v == "true" || v == "1" {
			c.Number = 1
		}
		c.Text = firstOf(c.Text, strings.ToUpper(v))
	case "string":
		c.Kind = grid.String
		if c.Text = writtenText(r, t, shown); c.Text == "" {
			c.Kind = grid.Blank
		}
	default:
		c.Text = writtenText(r, t, shown)
		switch {
		case c.Text != "":
			c.Kind = grid.String
		case c.Formula:
			c.Kind = grid.NoValue
		}
	}
	if r.Attr(t, "calcext:value-type") == "error" || c.Formula && isError(c.Text) {
		c.Kind, c.Number = grid.Error, 0
		c.Text = firstOf(c.Text, "#VALUE!")
	}
}

// valueAttrs are the attributes that hold the value of a cell, by its type.
var valueAttrs = map[string]string{
	"float": "office:value", "currency": "office:value", "percentage": "office:value",
	"date": "office:date-value", "time": "office:time-value", "boolean": "office:boolean-value",
}

// writtenText returns the text that a cell shows or, where it shows none, the
// one that it stores.
func writtenText(r *xmltok.Reader, t xmltok.Token, shown *paragraphs) string {
	if shown.count > 0 {
		return shown.text.String()
	}
	return r.Attr(t, "office:string-value")
}

// setDate makes c a date, or the text it shows where the value is no date.
func (d *document) setDate(c *grid.Cell, value string, parse func(string) (float64, bool)) {
	v, ok := parse(value)
	if !ok {
		c.Kind = grid.String
		c.Text = firstOf(c.Text, value)
		return
	}
	c.Kind, c.Number = grid.Date, v
	c.Text = firstOf(c.Text, value)
}

// isError reports whether a formula's text is an error value as spreadsheet
// programs write them.
func isError(s string) bool {
	switch s {
	case "#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A":
		return true
	}
	n, ok := strings.CutPrefix(s, "Err:")
	_, err := strconv.Atoi(n)
	return ok && err == nil
}

// firstOf returns a, or b where a is empty.
func firstOf(a, b string) string {
	if a != "" {
		return a
	}
	return b
}
