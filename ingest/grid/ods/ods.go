// Package ods reads OpenDocument spreadsheets, zipped (.ods) or flat (.fods),
// by OASIS OpenDocument 1.2 and 1.3, part 3.
package ods

import (
	"bytes"
	"errors"
	"path"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/budget"
	"lineaudit/ingest/grid/xmltok"
)

// spaces gives the short prefixes of the name spaces the reader knows.
var spaces = map[string]string{
	"urn:oasis:names:tc:opendocument:xmlns:office:1.0":                     "office",
	"urn:oasis:names:tc:opendocument:xmlns:table:1.0":                      "table",
	"urn:oasis:names:tc:opendocument:xmlns:text:1.0":                       "text",
	"urn:oasis:names:tc:opendocument:xmlns:style:1.0":                      "style",
	"urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0":                  "number",
	"urn:oasis:names:tc:opendocument:xmlns:drawing:1.0":                    "draw",
	"urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0":          "fo",
	"urn:oasis:names:tc:opendocument:xmlns:manifest:1.0":                   "manifest",
	"urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0": "calcext",
	"urn:org:documentfoundation:names:experimental:office:xmlns:loext:1.0": "loext",
	"http://purl.org/dc/elements/1.1/":                                     "dc",
}

// Read reads the bytes of one .ods or .fods file. Every value is the one
// stored in the file; nothing is recalculated. The error is a
// *grid.Unreadable or comes from lim.Stop.
// Size and SHA256 of the book are left to the caller.
func Read(file string, data []byte, lim grid.Limits) (*grid.Book, error) {
	if lim.MaxBytes > 0 && int64(len(data)) > lim.MaxBytes {
		return nil, grid.TooLarge("%d bytes, the limit is %d", len(data), lim.MaxBytes)
	}
	d := &document{
		styles: newStyles(),
		spent:  budget.New(lim),
		book:   &grid.Book{File: file, Format: grid.FODS},
	}
	parts := [][]byte{data}
	if bytes.HasPrefix(data, []byte("PK")) {
		d.book.Format = grid.ODS
		var err error
		if parts, err = unpack(data, lim); err != nil {
			return nil, err
		}
	}
	for _, p := range parts {
		if err := d.readPart(p, lim); err != nil {
			return nil, err
		}
	}
	if !d.found {
		return nil, &grid.Unreadable{
			Reason:  "the OpenDocument file is not a spreadsheet",
			Advice:  "if it holds a schedule, copy the table into a spreadsheet",
			Foreign: !strings.Contains(strings.ToLower(path.Ext(file)), "ods"),
		}
	}
	return d.book, nil
}

// A document is what is gathered while its parts are read.
type document struct {
	book   *grid.Book
	styles *styles
	spent  *budget.Budget
	found  bool // there is a spreadsheet
	nested bool // the sheet at hand has a table within a cell
}

// readPart reads one XML document: styles, content, or all in one.
func (d *document) readPart(data []byte, lim grid.Limits) error {
	data, err := xmltok.Decode(data)
	if err != nil {
		return err
	}
	r, err := xmltok.New(data, spaces, lim)
	if err != nil {
		return err
	}
	if _, err := r.Root(); err != nil {
		return err
	}
	err = r.Children(func(t xmltok.Token) error {
		switch t.Name {
		case "office:styles", "office:automatic-styles":
			return d.styles.read(r)
		case "office:body":
			return r.Children(func(t xmltok.Token) error {
				if t.Name != "office:spreadsheet" {
					return r.Skip()
				}
				d.found = true
				return d.readSpreadsheet(r)
			}, nil)
		}
		return r.Skip()
	}, nil)
	if err != nil {
		return err
	}
	return r.Finish()
}

// readSpreadsheet reads the sheets and the areas of their filters.
func (d *document) readSpreadsheet(r *xmltok.Reader) error {
	return r.Children(func(t xmltok.Token) error {
		switch t.Name {
		case "table:table":
			if err := d.spent.Sheet(); err != nil {
				return err
			}
			return inSheet(r.Attr(t, "table:name"), d.readSheet(r, t))
		case "table:database-ranges":
			return r.Children(func(t xmltok.Token) error {
				if t.Name == "table:database-range" {
					d.readFilter(r, t)
				}
				return r.Skip()
			}, nil)
		}
		return r.Skip()
	}, nil)
}

// inSheet says which sheet damage was met in.
func inSheet(name string, err error) error {
	if u, ok := errors.AsType[*grid.Unreadable](err); ok {
		v := *u
		v.Reason += ` (in sheet "` + name + `")`
		return &v
	}
	return err
}
