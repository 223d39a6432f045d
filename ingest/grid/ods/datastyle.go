package ods

import (
	"strconv"
	"strings"

	"lineaudit/ingest/grid/xmltok"
)

// maxDigits bounds the digits a number format may ask for.
const maxDigits = 30

// readDataStyle reads a number format (OpenDocument 1.3 part 3, 16.29) and
// keeps the code that other spreadsheets give it, such as 0.0" W" or d-mmm.
// Formats that choose another by a condition become codes of sections.
func (s *styles) readDataStyle(r *xmltok.Reader, t xmltok.Token) error {
	name := r.Attr(t, "style:name")
	if t.Name == "number:boolean-style" {
		return r.Skip()
	}
	f := formatReader{r: r, elapsed: r.Attr(t, "number:truncate-on-overflow") == "false"}
	var sections strings.Builder
	err := r.Children(func(t xmltok.Token) error {
		if t.Name != "style:map" {
			return f.read(t)
		}
		condition := strings.TrimPrefix(r.Attr(t, "style:condition"), "value()")
		if code, ok := s.code[r.Attr(t, "style:apply-style-name")]; ok && condition != "" {
			sections.WriteString("[" + condition + "]" + code + ";")
		}
		return r.Skip()
	}, nil)
	code := sections.String() + f.code.String()
	if len(code) <= 255 && code != "General" { // 255 is what a spreadsheet allows
		s.code[name] = code
	}
	return err
}

// A formatReader builds the code of one number format.
type formatReader struct {
	r       *xmltok.Reader
	code    strings.Builder
	elapsed bool // hours count on past 24
}

// read takes in one part of a format.
func (f *formatReader) read(t xmltok.Token) error {
	long := f.r.Attr(t, "number:style") == "long"
	switch t.Name {
	case "number:number":
		if _, set := f.r.Lookup(t, "number:decimal-places"); !set && f.digits(t, "number:min-integer-digits") <= 1 && f.r.Attr(t, "number:grouping") != "true" {
			f.code.WriteString("General")
			break
		}
		f.whole(t)
		f.decimals(t)
		f.scale(t)
	case "number:scientific-number":
		f.whole(t)
		f.decimals(t)
		f.code.WriteString("E+" + strings.Repeat("0", max(1, f.digits(t, "number:min-exponent-digits"))))
	case "number:fraction":
		if _, whole := f.r.Lookup(t, "number:min-integer-digits"); whole {
			f.code.WriteString("# ")
		}
		f.code.WriteString(strings.Repeat("?", max(1, f.digits(t, "number:min-numerator-digits"))) + "/")
		if v := f.r.Attr(t, "number:denominator-value"); v != "" {
			f.literal(v)
		} else {
			f.code.WriteString(strings.Repeat("?", max(1, f.digits(t, "number:min-denominator-digits"))))
		}
	case "number:text", "number:currency-symbol":
		return f.r.Children(func(xmltok.Token) error { return f.r.Skip() }, func(b []byte) error {
			f.literal(string(b))
			return nil
		})
	case "number:text-content":
		f.code.WriteString("@")
	case "number:day":
		f.letters("d", 1, long)
	case "number:day-of-week":
		f.letters("d", 3, long)
	case "number:month":
		if f.r.Attr(t, "number:textual") == "true" {
			f.letters("m", 3, long)
		} else {
			f.letters("m", 1, long)
		}
	case "number:year":
		f.code.WriteString(map[bool]string{false: "yy", true: "yyyy"}[long])
	case "number:hours":
		if f.elapsed {
			f.code.WriteString("[h]")
		} else {
			f.letters("h", 1, long)
		}
	case "number:minutes":
		f.letters("m", 1, long)
	case "number:seconds":
		f.letters("s", 1, long)
		if n := f.digits(t, "number:decimal-places"); n > 0 {
			f.code.WriteString("." + strings.Repeat("0", n))
		}
	case "number:am-pm":
		f.code.WriteString("AM/PM")
	}
	return f.r.Skip()
}

// digits returns an attribute that counts digits.
func (f *formatReader) digits(t xmltok.Token, attr string) int {
	n, err := strconv.Atoi(f.r.Attr(t, attr))
	if err != nil || n < 0 {
		return 0
	}
	return min(n, maxDigits)
}

// whole writes the digits before the decimal point.
func (f *formatReader) whole(t xmltok.Token) {
	n := f.digits(t, "number:min-integer-digits")
	switch {
	case f.r.Attr(t, "number:grouping") == "true":
		if n > 3 {
			f.code.WriteString(strings.Repeat("0", n-3) + ",000")
		} else {
			f.code.WriteString("#," + strings.Repeat("#", 3-n) + strings.Repeat("0", n))
		}
	case n == 0:
		f.code.WriteString("#")
	default:
		f.code.WriteString(strings.Repeat("0", n))
	}
}

// decimals writes the decimal point and the digits behind it, those that may
// be left out as #.
func (f *formatReader) decimals(t xmltok.Token) {
	n := f.digits(t, "number:decimal-places")
	if n == 0 {
		return
	}
	least := n
	if _, set := f.r.Lookup(t, "number:min-decimal-places"); set {
		least = min(f.digits(t, "number:min-decimal-places"), n)
	}
	f.code.WriteString("." + strings.Repeat("0", least) + strings.Repeat("#", n-least))
}

// scale writes a comma for each thousand that the number is divided by.
func (f *formatReader) scale(t xmltok.Token) {
	by, err := strconv.ParseFloat(f.r.Attr(t, "number:display-factor"), 64)
	for ; err == nil && by >= 1000 && by <= 1e12; by /= 1000 {
		f.code.WriteByte(',')
	}
}

// letters writes a date or time letter as often as its short or long form has it.
func (f *formatReader) letters(letter string, short int, long bool) {
	if long {
		short++
	}
	f.code.WriteString(strings.Repeat(letter, short))
}

// literal writes text that is shown as it is.
func (f *formatReader) literal(s string) {
	plain := strings.Trim(s, " -+/:()%0123456789") == ""
	if plain {
		f.code.WriteString(s)
		return
	}
	f.code.WriteString(`"` + strings.ReplaceAll(s, `"`, "") + `"`)
}
