package markup

import (
	"strconv"
	"strings"
)

// A cssStyle is what the reader wants to know of a style.
type cssStyle struct {
	struck bool
	hidden bool
	format string // number format code, "" for General
}

// A styleSheet holds the styles of a page's classes.
type styleSheet map[string]cssStyle

// maxClasses bounds the classes of a page.
const maxClasses = 10_000

// of returns the style of an element: its classes, then its own.
func (s styleSheet) of(t tag) cssStyle {
	var out cssStyle
	if class := t.attr["class"]; class != "" && len(s) > 0 {
		for name := range strings.FieldsSeq(class) {
			out.merge(s[strings.ToLower(name)])
		}
	}
	if own := t.attr["style"]; own != "" {
		out.merge(declarations(own))
	}
	return out
}

// merge lets another style add to this one.
func (c *cssStyle) merge(d cssStyle) {
	c.struck = c.struck || d.struck
	c.hidden = c.hidden || d.hidden
	if d.format != "" {
		c.format = d.format
	}
}

// read takes in the text of a style element. Of selectors only a class at the
// end counts: ".xl24", "td.xl24".
func (s styleSheet) read(text string) {
	for rule := range strings.SplitSeq(text, "}") {
		selectors, body, ok := strings.Cut(rule, "{")
		if !ok {
			continue
		}
		style := declarations(body)
		if style == (cssStyle{}) {
			continue
		}
		for sel := range strings.SplitSeq(selectors, ",") {
			dot := strings.LastIndexByte(sel, '.')
			if dot < 0 || len(s) >= maxClasses {
				continue
			}
			name := strings.ToLower(strings.TrimSpace(sel[dot+1:]))
			merged := s[name]
			merged.merge(style)
			s[name] = merged
		}
	}
}

// declarations reads the declarations of a style.
func declarations(body string) cssStyle {
	var out cssStyle
	for body != "" {
		var d string
		d, body = cutDeclaration(body)
		name, value, ok := strings.Cut(d, ":")
		if !ok {
			continue
		}
		value = strings.TrimSpace(value)
		switch strings.ToLower(strings.TrimSpace(name)) {
		case "text-decoration", "text-decoration-line", "mso-text-decoration":
			out.struck = strings.Contains(strings.ToLower(value), "line-through")
		case "text-line-through":
			out.struck = !strings.HasPrefix(strings.ToLower(value), "none")
		case "display":
			out.hidden = strings.HasPrefix(strings.ToLower(value), "none")
		case "mso-number-format":
			if out.format = namedFormat(unescape(value)); out.format == "General" {
				out.format = ""
			}
		}
	}
	return out
}

// cutDeclaration parts a style at the first semicolon outside quotes; a
// backslash takes its meaning from the character behind it.
func cutDeclaration(s string) (first, rest string) {
	var quote byte
	for i := 0; i < len(s); i++ {
		switch c := s[i]; {
		case c == '\\':
			i++
		case quote != 0:
			if c == quote {
				quote = 0
			}
		case c == '"' || c == '\'':
			quote = c
		case c == ';':
			return s[:i], s[i+1:]
		}
	}
	return s, ""
}

// unescape reads a CSS string or name: "0\.00\0022 W\0022" is 0.00" W".
func unescape(s string) string {
	if n := len(s); n >= 2 && (s[0] == '"' || s[0] == '\'') && s[n-1] == s[0] {
		s = s[1 : n-1]
	}
	var out strings.Builder
	for i := 0; i < len(s); i++ {
		if s[i] != '\\' || i+1 == len(s) {
			out.WriteByte(s[i])
			continue
		}
		n := 0
		for n < 6 && i+1+n < len(s) && isHex(s[i+1+n]) {
			n++
		}
		// Spreadsheet programs write four digits, and a space behind them
		// counts; fewer is an escaped digit.
		if n >= 4 {
			code, _ := strconv.ParseUint(s[i+1:i+5], 16, 32)
			out.WriteRune(rune(code))
			i += 4
			continue
		}
		i++
		out.WriteByte(s[i])
	}
	return out.String()
}

func isHex(c byte) bool {
	return c >= '0' && c <= '9' || c >= 'a' && c <= 'f' || c >= 'A' && c <= 'F'
}
