package markup

import (
	"slices"

	"golang.org/x/net/html/atom"
)

// maxDeep bounds the open elements whose style is followed.
const maxDeep = 64

// An element is an open element that bears on the style of its text.
type element struct {
	name   atom.Atom
	raw    string
	struck bool
}

// startTag takes in a start tag.
func (p *page) startTag(t tag) error {
	switch t.name {
	case atom.Style:
		p.raw = styleText
		return nil
	case atom.Script, atom.Noscript, atom.Title, atom.Noembed, atom.Iframe, atom.Noframes:
		p.raw = otherText
		return nil
	case atom.Frameset:
		p.frame = true
	case atom.Table:
		return p.startTable()
	case atom.Col:
		p.column(t)
	case atom.Tr:
		return p.startRow(t)
	case atom.Td, atom.Th:
		return p.startCell(t)
	case atom.Br:
		return p.lineBreak()
	case 0:
		if t.raw == "comment" { // a note on the cell, as some programs save it
			p.noting = true
		}
	case atom.P, atom.Div, atom.Li, atom.Caption, atom.H1, atom.H2, atom.H3, atom.H4, atom.H5, atom.H6, atom.Hr, atom.Dt, atom.Dd, atom.Pre, atom.Center:
		if err := p.paragraph(false); err != nil {
			return err
		}
	}
	if !void(t.name) && len(p.deep) < maxDeep {
		p.deep = append(p.deep, element{t.name, t.raw, p.struckBy(t)})
	}
	return nil
}

// endTag takes in an end tag.
func (p *page) endTag(name atom.Atom, raw string) error {
	switch name {
	case atom.Table:
		if len(p.open) > 0 {
			return p.endTable()
		}
		return nil
	case 0:
		if raw == "comment" {
			p.noting = false
		}
	case atom.Tr:
		return p.endRow()
	case atom.Td, atom.Th:
		return p.endCell()
	case atom.P, atom.H1, atom.H2, atom.H3, atom.H4, atom.H5, atom.H6:
		if err := p.paragraph(true); err != nil {
			return err
		}
	case atom.Div, atom.Li, atom.Caption, atom.Dt, atom.Dd, atom.Pre, atom.Center:
		if err := p.paragraph(false); err != nil {
			return err
		}
	}
	for i := len(p.deep) - 1; i >= 0; i-- {
		if p.deep[i].name == name && p.deep[i].raw == raw {
			p.deep = p.deep[:i]
			break
		}
	}
	return nil
}

// void says whether an element never has an end tag.
func void(a atom.Atom) bool {
	return slices.Contains([]atom.Atom{atom.Img, atom.Input, atom.Hr, atom.Meta, atom.Link, atom.Base, atom.Area, atom.Wbr, atom.Embed, atom.Param, atom.Source, atom.Frame}, a)
}

// struck says whether text at the reading position is struck through.
func (p *page) struck() bool {
	if n := len(p.open); n > 0 && p.open[n-1].inCell && p.open[n-1].struck {
		return true
	}
	for _, e := range p.deep {
		if e.struck {
			return true
		}
	}
	return false
}

// struckBy says whether an element strikes its text through. A line through
// text cannot be undone by an element within, as CSS 2.1, 16.3.1 has it.
func (p *page) struckBy(t tag) bool {
	switch t.name {
	case atom.S, atom.Strike, atom.Del:
		return true
	}
	return p.css.of(t).struck
}

// lineBreak begins a new line in a cell, or a new row outside of tables.
func (p *page) lineBreak() error {
	into := p.sink()
	if into != &p.loose {
		into.newLine(p.struck())
		return nil
	}
	return p.flushLoose(false)
}

// paragraph ends or begins a paragraph: in a cell it parts the text, outside
// of tables it makes a row.
func (p *page) paragraph(gap bool) error {
	into := p.sink()
	if into != &p.loose {
		into.part()
		return nil
	}
	return p.flushLoose(gap)
}
