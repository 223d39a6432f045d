package ods

import (
	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/xmltok"
)

// maxParents bounds the chain of styles that styles rest on.
const maxParents = 32

// maxStyles bounds the styles of a document.
const maxStyles = 1 << 18

// styles are the styles of a document that change what a cell says.
type styles struct {
	byName map[styleName]style
	code   map[string]string // number format codes by name of the data style
}

// A styleName is a style's family, e.g. "table-cell", and name.
type styleName struct{ family, name string }

// A style holds what one style sets itself.
type style struct {
	parent    string
	struck    ternary
	hidden    bool   // of a sheet
	dataStyle string // name of the number format
}

// ternary is a property that a style sets or leaves to its parent.
type ternary uint8

const (
	unset ternary = iota
	no
	yes
)

func newStyles() *styles {
	return &styles{byName: map[styleName]style{}, code: map[string]string{}}
}

// read reads the children of a group of styles.
func (s *styles) read(r *xmltok.Reader) error {
	return r.Children(func(t xmltok.Token) error {
		if len(s.byName)+len(s.code) > maxStyles {
			return grid.TooLarge("more than %d styles", maxStyles)
		}
		switch t.Name {
		case "style:style", "style:default-style":
			return s.readStyle(r, t)
		case "number:number-style", "number:percentage-style", "number:currency-style",
			"number:date-style", "number:time-style", "number:boolean-style", "number:text-style":
			return s.readDataStyle(r, t)
		}
		return r.Skip()
	}, nil)
}

// readStyle reads one style; a default style has no name.
func (s *styles) readStyle(r *xmltok.Reader, t xmltok.Token) error {
	name := styleName{r.Attr(t, "style:family"), r.Attr(t, "style:name")}
	st := style{parent: r.Attr(t, "style:parent-style-name"), dataStyle: r.Attr(t, "style:data-style-name")}
	err := r.Children(func(t xmltok.Token) error {
		switch t.Name {
		case "style:text-properties":
			st.struck = lineThrough(r, t)
		case "style:table-properties":
			st.hidden = r.Attr(t, "table:display") == "false"
		}
		return r.Skip()
	}, nil)
	s.byName[name] = st
	return err
}

// lineThrough reads strike-through from text properties: a line of a style or
// type other than "none".
func lineThrough(r *xmltok.Reader, t xmltok.Token) ternary {
	out := unset
	for _, attr := range []string{"style:text-line-through-style", "style:text-line-through-type"} {
		switch v, ok := r.Lookup(t, attr); {
		case !ok:
		case v == "none":
			return no
		default:
			out = yes
		}
	}
	return out
}

// struck says whether a style strikes text through; inherited is the answer
// where it and its parents say nothing.
func (s *styles) struck(family, name string, inherited bool) bool {
	for range maxParents {
		st, ok := s.byName[styleName{family, name}]
		switch {
		case !ok:
			return inherited
		case st.struck != unset:
			return st.struck == yes
		case name == "":
			return inherited
		}
		name = st.parent // "" is the default style
	}
	return inherited
}

// format returns the number format code of a cell style, "" for General.
func (s *styles) format(name string) string {
	for range maxParents {
		st, ok := s.byName[styleName{"table-cell", name}]
		switch {
		case !ok:
			return ""
		case st.dataStyle != "":
			return s.code[st.dataStyle]
		case name == "":
			return ""
		}
		name = st.parent
	}
	return ""
}

// hidesSheet says whether a table style hides the sheet.
func (s *styles) hidesSheet(name string) bool {
	return s.byName[styleName{"table", name}].hidden
}
