package numfmt

import (
	"strconv"
	"strings"
	"unicode/utf8"
)

// A section is one of the up to four parts of a code between semicolons.
type section struct {
	items    []item
	op       byte // condition: 0 none, '<', '>', '=', 'l' (<=), 'g' (>=), 'n' (<>)
	bound    float64
	date     bool // shows a date or a time
	calendar bool // shows a day, month or year
	twelve   bool // has AM/PM
	subsec   int  // decimals of the seconds
	language int  // low ten bits of a Windows language code, 0 if none is named

	percent   int // each multiplies by 100
	thousands int // each divides by 1000
	grouped   bool
	whole     int // digit places before the point
	decimals  int // digit places behind the point
	point     int // index of the decimal point in items, -1
	exp       int // index of the exponent in items, -1
	slash     int // index of the fraction bar in items, -1
}

type itemKind uint8

const (
	itemLiteral itemKind = iota
	itemDigit            // char is 0, # or ?
	itemPoint
	itemPercent
	itemExp   // lit is "E+" or "E-"
	itemSlash // bar of a fraction, or a literal
	itemText  // @
	itemGeneral
	itemDate  // char is one of y m d h s, n repeats; minutes are 'M'
	itemSpan  // [h], [m], [s]: elapsed time, char likewise
	itemAMPM  // lit as written
	itemTicks // .0 behind seconds, n decimals
)

type item struct {
	kind itemKind
	char byte
	n    int
	lit  string
}

// split cuts a code at the semicolons that stand outside quotes and brackets.
func split(code string) []string {
	var out []string
	start := 0
	for i := 0; i < len(code); i++ {
		switch code[i] {
		case '"':
			i = closing(code, i, '"')
		case '[':
			i = closing(code, i, ']')
		case '\\', '_', '*':
			i++
		case ';':
			out = append(out, code[start:i])
			start = i + 1
		}
	}
	return append(out, code[min(start, len(code)):])
}

// closing returns the index of the next end byte behind i, or the last index.
func closing(s string, i int, end byte) int {
	if j := strings.IndexByte(s[i+1:], end); j >= 0 {
		return i + 1 + j
	}
	return len(s) - 1
}

func (s *section) has(k itemKind) bool {
	for _, it := range s.items {
		if it.kind == k {
			return true
		}
	}
	return false
}

func (s *section) literal(t string) {
	if n := len(s.items); n > 0 && s.items[n-1].kind == itemLiteral && s.items[n-1].char == 0 {
		s.items[n-1].lit += t
		return
	}
	s.items = append(s.items, item{kind: itemLiteral, lit: t})
}

// parse compiles one section.
func parse(p string) section {
	s := section{point: -1, exp: -1, slash: -1}
	if p == "" {
		return s
	}
	if strings.EqualFold(p, "general") {
		s.items = []item{{kind: itemGeneral}}
		return s
	}
	for i := 0; i < len(p); {
		_, size := utf8.DecodeRuneInString(p[i:])
		switch c := p[i]; {
		case c == '"':
			e := closing(p, i, '"')
			if t := strings.TrimSuffix(p[i+1:e+1], `"`); t != "" {
				s.literal(t)
			}
			i = e + 1
		case c == '\\' || c == '_' || c == '*':
			i++
			if i == len(p) {
				break
			}
			_, size = utf8.DecodeRuneInString(p[i:])
			switch c {
			case '\\':
				s.literal(p[i : i+size])
			case '_': // a gap as wide as the character
				s.literal(" ")
			} // '*' fills the width of the column: nothing to show
			i += size
		case c == '[':
			e := closing(p, i, ']')
			s.bracket(strings.TrimSuffix(p[i+1:e+1], "]"))
			i = e + 1
		case c == '0' || c == '#' || c == '?':
			s.items = append(s.items, item{kind: itemDigit, char: c})
			i++
		case c == '.':
			s.items = append(s.items, item{kind: itemPoint})
			i++
		case c == '%':
			s.items = append(s.items, item{kind: itemPercent})
			s.percent++
			i++
		case c == '/':
			s.items = append(s.items, item{kind: itemSlash, lit: "/"})
			i++
		case c == '@':
			s.items = append(s.items, item{kind: itemText})
			i++
		case c == ',':
			s.items = append(s.items, item{kind: itemLiteral, char: ',', lit: ","})
			i++
		case len(p) >= i+7 && strings.EqualFold(p[i:i+7], "general"):
			s.items = append(s.items, item{kind: itemGeneral})
			i += 7
		case len(p) >= i+5 && strings.EqualFold(p[i:i+5], "am/pm"):
			s.items = append(s.items, item{kind: itemAMPM, lit: p[i : i+5]})
			s.twelve, s.date = true, true
			i += 5
		case len(p) >= i+3 && strings.EqualFold(p[i:i+3], "a/p"):
			s.items = append(s.items, item{kind: itemAMPM, lit: p[i : i+3]})
			s.twelve, s.date = true, true
			i += 3
		case (c == 'E' || c == 'e') && i+1 < len(p) && (p[i+1] == '+' || p[i+1] == '-'):
			s.items = append(s.items, item{kind: itemExp, lit: string(c) + p[i+1:i+2]})
			i += 2
		case strings.IndexByte("yYmMdDhHsSeEbB", c) >= 0:
			i += s.dateRun(p[i:])
		default:
			s.literal(p[i : i+size])
			i += size
		}
	}
	if s.date {
		s.finishDate()
	} else {
		s.finishNumber()
	}
	return s
}

// dateRun takes a run of one date letter, upper or lower case alike.
func (s *section) dateRun(p string) int {
	c, n := p[0]|0x20, 0
	for n < len(p) && p[n]|0x20 == c {
		n++
	}
	width := n
	switch c {
	case 'e': // year of an era: shown as the year
		c, width = 'y', 4
	case 'b': // Buddhist year: shown as the common one
		c, width = 'y', n
	}
	s.items = append(s.items, item{kind: itemDate, char: c, n: width})
	s.date = true
	return n
}

// bracket takes what stands between [ and ].
func (s *section) bracket(t string) {
	if t == "" {
		return
	}
	low := strings.ToLower(t)
	switch {
	case t[0] == '$': // [$€-407]: currency and language
		sym, lang, _ := strings.Cut(t[1:], "-")
		if sym != "" {
			s.literal(sym)
		}
		if i := strings.IndexByte(lang, ','); i >= 0 {
			lang = lang[:i]
		}
		if n, err := strconv.ParseUint(lang, 16, 32); err == nil {
			s.language = int(n & 0x3ff)
		}
	case strings.Trim(low, "h") == "" || strings.Trim(low, "m") == "" || strings.Trim(low, "s") == "":
		s.items = append(s.items, item{kind: itemSpan, char: low[0], n: len(low)})
		s.date = true
	case t[0] == '<' || t[0] == '>' || t[0] == '=':
		op, rest := t[0], t[1:]
		switch {
		case strings.HasPrefix(t, "<="):
			op, rest = 'l', t[2:]
		case strings.HasPrefix(t, ">="):
			op, rest = 'g', t[2:]
		case strings.HasPrefix(t, "<>"):
			op, rest = 'n', t[2:]
		}
		if v, err := strconv.ParseFloat(strings.TrimSpace(rest), 64); err == nil {
			s.op, s.bound = op, v
		}
	} // colours and the rest show nothing
}

func (s *section) holds(v float64) bool {
	switch s.op {
	case '<':
		return v < s.bound
	case '>':
		return v > s.bound
	case '=':
		return v == s.bound
	case 'l':
		return v <= s.bound
	case 'g':
		return v >= s.bound
	default:
		return v != s.bound
	}
}

// negativeOnly reports whether the condition admits negative numbers alone;
// such a section writes its own sign.
func (s *section) negativeOnly() bool {
	return s.op == '<' && s.bound <= 0 || (s.op == 'l' || s.op == '=') && s.bound < 0
}

// finishNumber finds the parts of a number section.
func (s *section) finishNumber() {
	lastDigit := -1
	for i, it := range s.items {
		switch it.kind {
		case itemDigit:
			lastDigit = i
		case itemPoint:
			if s.point < 0 && s.exp < 0 {
				s.point = i
			} else {
				s.items[i] = item{kind: itemLiteral, lit: "."}
			}
		case itemExp:
			if s.exp < 0 && lastDigit >= 0 {
				s.exp = i
			} else {
				s.items[i].kind = itemLiteral
			}
		case itemSlash:
			if s.slash < 0 && lastDigit >= 0 && s.point < 0 && s.exp < 0 && s.denominatorAt(i+1) {
				s.slash = i
			} else {
				s.items[i].kind = itemLiteral
			}
		}
	}
	s.commas(lastDigit)
	for i, it := range s.items {
		if it.kind == itemDigit && (s.exp < 0 || i < s.exp) {
			if s.point >= 0 && i > s.point {
				s.decimals++
			} else {
				s.whole++
			}
		}
	}
}

// denominatorAt reports whether a digit place or a number follows at item i.
func (s *section) denominatorAt(i int) bool {
	for ; i < len(s.items); i++ {
		switch it := s.items[i]; it.kind {
		case itemDigit:
			return true
		case itemLiteral:
			t := strings.TrimLeft(it.lit, " ")
			if t == "" {
				continue
			}
			return t[0] >= '1' && t[0] <= '9'
		default:
			return false
		}
	}
	return false
}

// commas settles what each comma means: between digit places it groups by
// thousands, right behind the last one (or before the point) it divides by
// 1000, elsewhere it is a comma.
func (s *section) commas(lastDigit int) {
	kept := make([]item, 0, len(s.items))
	seen := false
	shift := func(at *int, i int) {
		if *at == i {
			*at = len(kept)
		}
	}
	for i, it := range s.items {
		shift(&s.point, i)
		shift(&s.exp, i)
		shift(&s.slash, i)
		if it.kind == itemDigit {
			seen = true
		}
		if it.kind == itemLiteral && it.char == ',' && seen {
			prev := i
			for prev > 0 && s.items[prev].char == ',' {
				prev--
			}
			next := i
			for next < len(s.items) && s.items[next].char == ',' {
				next++
			}
			behind := s.items[prev].kind == itemDigit || s.items[prev].kind == itemPoint
			switch {
			case behind && next < len(s.items) && s.items[next].kind == itemDigit && i < lastDigit:
				s.grouped = true
				continue
			case behind && (i > lastDigit || next < len(s.items) && s.items[next].kind == itemPoint):
				s.thousands++
				continue
			}
		}
		kept = append(kept, it)
	}
	s.items = kept
}

// finishDate tells minutes from months, joins decimals of seconds, and turns
// the rest into literals.
func (s *section) finishDate() {
	kept := s.items[:0:0]
	for i := 0; i < len(s.items); i++ {
		it := s.items[i]
		switch it.kind {
		case itemPoint:
			n := 0
			for i+1+n < len(s.items) && s.items[i+1+n].kind == itemDigit && s.items[i+1+n].char == '0' {
				n++
			}
			if n == 0 {
				it = item{kind: itemLiteral, lit: "."}
				break
			}
			it = item{kind: itemTicks, n: min(n, 3)}
			s.subsec = max(s.subsec, it.n)
			i += n
		case itemDigit:
			it = item{kind: itemLiteral, lit: string(it.char)}
		case itemPercent:
			it = item{kind: itemLiteral, lit: "%"}
		case itemExp, itemSlash:
			it.kind = itemLiteral
		}
		kept = append(kept, it)
	}
	s.items = kept
	for i := range s.items {
		it := &s.items[i]
		if it.kind != itemDate {
			continue
		}
		if it.char == 'm' && it.n <= 2 && (s.near(i, -1) == 'h' || s.near(i, 1) == 's') {
			it.char = 'M'
		}
		if it.char == 'y' || it.char == 'm' || it.char == 'd' {
			s.calendar = true
		}
	}
}

// near returns the letter of the next date item in direction step, or 0.
func (s *section) near(i, step int) byte {
	for i += step; i >= 0 && i < len(s.items); i += step {
		if k := s.items[i].kind; k == itemDate || k == itemSpan {
			return s.items[i].char
		}
	}
	return 0
}
