package ods

import (
	"bytes"
	"strconv"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/strike"
	"lineaudit/ingest/grid/xmltok"
)

// A paragraphs gathers the text of a cell or a comment. Spaces stay as they
// are: OpenDocument 1.3 part 3, 6.1.2 would join them, but the spreadsheet
// programs that write most files neither escape nor join them.
type paragraphs struct {
	d       *document
	r       *xmltok.Reader
	text    strike.Builder
	count   int  // paragraphs so far
	blank   bool // the line holds nothing yet
	pending bool // a line break of the file was met and waits for text behind it
}

// add appends text in one style.
func (p *paragraphs) add(text string, struck bool) error {
	p.text.Add(text, struck)
	if limit := p.d.spent.Limits().MaxCellText; limit > 0 && p.text.Len() > limit {
		return grid.TooLarge("more than %d bytes of text in one cell", limit)
	}
	return nil
}

// collapse appends text as it stands in the file. White space with a line
// break in it is how some tools lay a file out: it is one space between words
// and nothing at the ends of a paragraph.
func (p *paragraphs) collapse(b []byte, struck bool) error {
	for len(b) > 0 {
		n := 0
		for n < len(b) && isSpace(b[n]) {
			n++
		}
		if n > 0 {
			if bytes.ContainsAny(b[:n], "\r\n") {
				p.pending = !p.blank
			} else if err := p.exact(string(b[:n]), struck); err != nil {
				return err
			}
			b = b[n:]
			continue
		}
		for n < len(b) && !isSpace(b[n]) {
			n++
		}
		if err := p.exact(string(b[:n]), struck); err != nil {
			return err
		}
		b = b[n:]
	}
	return nil
}

func isSpace(c byte) bool { return c == ' ' || c == '\t' || c == '\n' || c == '\r' }

// exact appends text that stays as it is.
func (p *paragraphs) exact(text string, struck bool) error {
	if p.pending {
		text = " " + text
	}
	p.pending, p.blank = false, false
	return p.add(text, struck)
}

// paragraph reads a text:p or text:h whose start was read last.
func (p *paragraphs) paragraph(t xmltok.Token, struck bool) error {
	if p.count++; p.count > 1 {
		if err := p.add("\n", struck); err != nil {
			return err
		}
	}
	p.blank, p.pending = true, false
	struck = p.d.styles.struck("paragraph", p.r.Attr(t, "text:style-name"), struck)
	return p.inline(struck)
}

// inline reads the content of a paragraph or of an element within one.
func (p *paragraphs) inline(struck bool) error {
	return p.r.Children(func(t xmltok.Token) error {
		switch t.Name {
		case "text:s":
			n, err := strconv.Atoi(p.r.Attr(t, "text:c"))
			if err != nil || n < 1 {
				n = 1
			}
			if err := p.exact(strings.Repeat(" ", min(n, 1<<16)), struck); err != nil {
				return err
			}
			return p.r.Skip()
		case "text:tab":
			if err := p.exact("\t", struck); err != nil {
				return err
			}
			return p.r.Skip()
		case "text:line-break":
			if err := p.exact("\n", struck); err != nil {
				return err
			}
			p.blank = true
			return p.r.Skip()
		case "text:span":
			return p.inline(p.d.styles.struck("text", p.r.Attr(t, "text:style-name"), struck))
		case "text:note", "text:ruby-text", "office:annotation", "office:annotation-end":
			return p.r.Skip()
		}
		if strings.HasPrefix(t.Name, "draw:") || strings.HasPrefix(t.Name, "?:") {
			return p.r.Skip()
		}
		return p.inline(struck) // links and fields
	}, func(b []byte) error { return p.collapse(b, struck) })
}
