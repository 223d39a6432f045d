// Package numfmt shows a stored number as the spreadsheet that stores it would,
// by its number format code: 6 under `0" W"` is "6 W", 46024 under `d-mmm` is
// "2-Jan", 0.5 under `# ?/?` is " 1/2".
//
// Codes are those of ECMA-376 part 1, section 18.8.31, which the older binary
// workbooks share. Points, commas and names of months are English unless the
// code names another language.
package numfmt

import "cmp"

// A Format is a compiled number format code. It is safe for concurrent use.
type Format struct {
	code     string
	sections []section
	text     *section // shows text; nil leaves text as it is
	general  bool
}

// Compile never fails: what makes no sense in a code is shown as it stands.
// "" and "General" are the general format. Only the first 255 bytes count,
// which is what a spreadsheet allows.
func Compile(code string) *Format {
	if len(code) > 255 {
		code = code[:255]
	}
	f := &Format{code: code}
	parts := split(cmp.Or(code, "General"))
	if len(parts) > 4 {
		parts = parts[:4]
	}
	for i, p := range parts {
		s := parse(p)
		if i == 3 || i == len(parts)-1 && s.has(itemText) {
			f.text = &s
			if i > 0 || !s.has(itemDigit) && !s.date {
				break
			}
		}
		f.sections = append(f.sections, s)
	}
	if len(f.sections) == 0 { // "@" alone: numbers show as in the general format
		f.sections = []section{{items: []item{{kind: itemGeneral}}}}
	}
	f.general = len(f.sections) == 1 && len(f.sections[0].items) == 1 && f.sections[0].items[0].kind == itemGeneral
	return f
}

// Code returns the code as it was given, "" for the general format.
func (f *Format) Code() string {
	if f.code == "General" || f.code == "GENERAL" || f.code == "general" {
		return ""
	}
	return f.code
}

// IsGeneral reports whether numbers are shown in the general format.
func (f *Format) IsGeneral() bool { return f.general }

// IsDate reports whether numbers are shown as a date or a time.
func (f *Format) IsDate() bool {
	for i := range f.sections {
		if f.sections[i].date {
			return true
		}
	}
	return false
}

// IsCalendar reports whether numbers are shown with a day, a month or a year,
// so that the date system of the workbook matters.
func (f *Format) IsCalendar() bool {
	for i := range f.sections {
		if f.sections[i].calendar {
			return true
		}
	}
	return false
}

// PlainText reports whether text is shown as it is.
func (f *Format) PlainText() bool {
	return f.text == nil || len(f.text.items) == 1 && f.text.items[0].kind == itemText
}

// Text shows v, a finite number; dates count days in the 1900 system. The
// result is "" where the format hides the number.
func (f *Format) Text(v float64) string { return string(f.Append(nil, v)) }

// Append appends what Text returns to dst.
func (f *Format) Append(dst []byte, v float64) []byte {
	if f.general {
		return appendGeneral(dst, v)
	}
	s, negative := f.choose(v)
	if s == nil {
		return append(dst, "########"...)
	}
	if v < 0 && !negative {
		v = -v
	}
	return s.append(dst, v)
}

// ShowText shows a text cell: `@" W"` makes "6" read "6 W". Where the format
// hides the text, or shows another in its place, it is hidden and returned as it is.
func (f *Format) ShowText(s string) (shown string, hidden bool) {
	if f.PlainText() {
		return s, false
	}
	hidden = true
	var dst []byte
	for _, it := range f.text.items {
		switch it.kind {
		case itemLiteral:
			dst = append(dst, it.lit...)
		case itemText, itemGeneral:
			dst = append(dst, s...)
			hidden = false
		}
	}
	if hidden {
		return s, s != ""
	}
	return string(dst), false
}

// choose returns the section that shows v, and whether it is to show the sign
// of a negative v itself. It returns nil when no section takes v.
func (f *Format) choose(v float64) (s *section, sign bool) {
	ss := f.sections
	conditional := false
	for i := range ss {
		conditional = conditional || ss[i].op != 0
	}
	if !conditional {
		switch {
		case len(ss) == 1:
			return &ss[0], true
		case v < 0:
			return &ss[1], false
		case v == 0 && len(ss) > 2:
			return &ss[2], false
		}
		return &ss[0], false
	}
	for i := range ss {
		switch {
		case ss[i].op != 0:
			if ss[i].holds(v) {
				return &ss[i], !ss[i].negativeOnly()
			}
		case i == 0: // an unconditional first section before a condition takes positive numbers
			if v > 0 || len(ss) == 1 {
				return &ss[i], false
			}
		case i == 1 && len(ss) > 2: // likewise the second takes negative ones
			if v < 0 {
				return &ss[i], false
			}
		default:
			return &ss[i], true
		}
	}
	return nil, false
}
