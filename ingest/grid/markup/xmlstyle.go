package markup

import (
	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/numfmt"
	"lineaudit/ingest/grid/xmltok"
)

// maxParents bounds the chain of styles that styles rest on.
const maxParents = 32

// maxStyles bounds the styles of a workbook, as spreadsheet programs do.
const maxStyles = 1 << 16

// A cellStyle is what one style sets itself.
type cellStyle struct {
	parent       string
	setsStrike   bool
	struck       bool
	setsFormat   bool
	numberFormat *numfmt.Format
}

// general shows numbers where no style says how.
var general = numfmt.Compile("General")

// readStyle reads one ss:Style.
func (b *xmlBook) readStyle(t xmltok.Token) error {
	if t.Name != "ss:Style" {
		return b.r.Skip()
	}
	s := cellStyle{parent: b.attr(t, "Parent")}
	id := b.attr(t, "ID")
	if len(b.styles) >= maxStyles {
		return grid.TooLarge("more than %d styles", maxStyles)
	}
	err := b.r.Children(func(t xmltok.Token) error {
		switch t.Name {
		case "ss:Font":
			if v := b.attr(t, "StrikeThrough"); v != "" {
				s.setsStrike, s.struck = true, isTrue(v)
			}
		case "ss:NumberFormat":
			s.setsFormat = true
			s.numberFormat = numfmt.Compile(namedFormat(b.attr(t, "Format")))
		}
		return b.r.Skip()
	}, nil)
	b.styles[id] = s
	return err
}

func isTrue(s string) bool { return s == "1" || s == "true" || s == "True" }

// struck says whether a style strikes text through.
func (b *xmlBook) struck(id string) bool {
	for range maxParents {
		s, ok := b.styles[id]
		switch {
		case !ok:
			return false
		case s.setsStrike:
			return s.struck
		case id == "Default":
			return false
		}
		id = parentOr(s.parent, "Default")
	}
	return false
}

// format returns the number format of a style.
func (b *xmlBook) format(id string) *numfmt.Format {
	for range maxParents {
		s, ok := b.styles[id]
		switch {
		case !ok:
			return general
		case s.setsFormat:
			return s.numberFormat
		case id == "Default":
			return general
		}
		id = parentOr(s.parent, "Default")
	}
	return general
}

// parentOr returns a style, or the other where there is none.
func parentOr(parent, otherwise string) string {
	if parent == "" {
		return otherwise
	}
	return parent
}

// namedFormat returns the code of a number format that SpreadsheetML and HTML
// exports call by its English name, and others as they are.
func namedFormat(name string) string {
	switch name {
	case "", "General", "General Number":
		return "General"
	case "General Date":
		return "m/d/yyyy h:mm"
	case "Long Date":
		return "d-mmm-yy"
	case "Medium Date":
		return "d-mmm-yy"
	case "Short Date":
		return "m/d/yyyy"
	case "Long Time":
		return "h:mm:ss AM/PM"
	case "Medium Time":
		return "h:mm AM/PM"
	case "Short Time":
		return "h:mm"
	case "Currency":
		return numfmt.Builtin(8)
	case "Euro Currency":
		return "[$€-2] #,##0.00"
	case "Fixed":
		return "0.00"
	case "Standard":
		return "#,##0.00"
	case "Percent":
		return "0.00%"
	case "Scientific":
		return "0.00E+00"
	case "Yes/No":
		return `"Yes";"Yes";"No"`
	case "True/False":
		return `"True";"True";"False"`
	case "On/Off":
		return `"On";"On";"Off"`
	}
	return name
}
