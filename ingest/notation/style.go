package notation

import (
	"math"
	"slices"
	"strconv"
	"strings"
)

// A Style is the decimal mark of a column.
type Style uint8

// The styles.
const (
	Auto  Style = iota // not known: each figure is judged alone
	Point              // 1,234.5
	Comma              // 1.234,5
)

// String returns the style as a person would name it.
func (s Style) String() string {
	switch s {
	case Point:
		return "decimal point"
	case Comma:
		return "decimal comma"
	}
	return "not decided"
}

// A figure is the reading of one run of digits and marks.
type figure struct {
	value, other float64 // other is the second reading, else equal to value
	doubts       Doubts
	whole        bool // no decimal mark in the reading taken
	bad          bool // a run that is no number: "1.2.3"
}

// readFigure reads the figure that starts at runes[i], a digit or a leading
// decimal mark, and returns it with the index behind it.
func readFigure(runes []rune, i int, style Style) (figure, int) {
	end := figureEnd(runes, i)
	if end == i { // a leading mark: ".5"
		end = figureEnd(runes, i+1)
		value, err := strconv.ParseFloat("0."+string(runes[i+1:end]), 64)
		bad := err != nil || strings.ContainsAny(string(runes[i+1:end]), ".,'")
		return figure{value: value, other: value, bad: bad}, end
	}
	f, length := resolve(string(runes[i:end]), style)
	end = i + length
	if next, ok := spaceGroups(runes, i, end); ok && (style != Point || next.decimals) && !f.bad {
		f, _ = resolve(next.text, style)
		f.doubts |= DecimalMark
		return f, next.end
	}
	if n, ok := fractionAt(runes, i, end); ok && f.whole {
		f.value /= n.value
		f.other, f.whole = f.value, false
		end = n.end
	}
	return f, end
}

// figureEnd returns the end of a run of digits in which a mark is followed by
// a digit.
func figureEnd(runes []rune, i int) int {
	for i < len(runes) {
		r := runes[i]
		if isDigit(r) || (r == '.' || r == ',' || r == '\'') && i > 0 && isDigit(runes[i-1]) && i+1 < len(runes) && isDigit(runes[i+1]) {
			i++
			continue
		}
		break
	}
	return i
}

func isDigit(r rune) bool { return '0' <= r && r <= '9' }

// A groupedRun is a figure whose thousands are set off by spaces.
type groupedRun struct {
	text     string // without the spaces
	end      int
	decimals bool
}

// spaceGroups extends a whole figure of at most three digits by groups of
// three digits behind single spaces: "1 200", "1 200,5".
func spaceGroups(runes []rune, start, end int) (groupedRun, bool) {
	if end-start > 3 || runes[start] == '0' || !allDigits(runes[start:end]) {
		return groupedRun{}, false
	}
	var text strings.Builder
	text.WriteString(string(runes[start:end]))
	grouped := false
	for end+3 < len(runes) && runes[end] == ' ' && allDigits(runes[end+1:end+4]) && (end+4 == len(runes) || !isDigit(runes[end+4])) {
		text.WriteString(string(runes[end+1 : end+4]))
		end += 4
		grouped = true
	}
	if !grouped {
		return groupedRun{}, false
	}
	run := groupedRun{text: text.String(), end: end}
	if tail := figureEnd(runes, end); tail > end {
		run.text += string(runes[end:tail])
		run.end, run.decimals = tail, true
	}
	return run, true
}

func allDigits(runes []rune) bool {
	for _, r := range runes {
		if !isDigit(r) {
			return false
		}
	}
	return len(runes) > 0
}

// A denominator is the lower figure of a fraction that was one character.
type denominator struct {
	value float64
	end   int
}

// maxDenominator is the largest lower figure of a fraction.
const maxDenominator = 64

func fractionAt(runes []rune, start, end int) (denominator, bool) {
	if end+1 >= len(runes) || runes[end] != fractionSlash || !isDigit(runes[end+1]) || !allDigits(runes[start:end]) {
		return denominator{}, false
	}
	stop := end + 1
	for stop < len(runes) && isDigit(runes[stop]) {
		stop++
	}
	value, err := strconv.ParseFloat(string(runes[end+1:stop]), 64)
	return denominator{value, stop}, err == nil && value > 0 && value <= maxDenominator
}

// resolve reads a run of ASCII digits and inner marks. It returns the figure
// and how much of the run belongs to it: marks that cannot be part of one
// figure end it ("30,15,7.5" is 30).
func resolve(run string, style Style) (figure, int) {
	if i := strings.IndexByte(run, '\''); i >= 0 {
		parts := strings.Split(run, "'")
		last := parts[len(parts)-1]
		frac := ""
		if k := strings.IndexAny(last, ".,"); k >= 0 {
			last, frac = last[:k], last[k:]
		}
		if areGroups(append(slices.Clone(parts[:len(parts)-1]), last)) && !strings.ContainsAny(strings.TrimLeft(frac, ".,"), ".,") {
			f := parsed(strings.Join(parts[:len(parts)-1], "")+last, strings.TrimLeft(frac, ".,"))
			return f, len(run)
		}
		run = run[:i] // feet and inches: 85'6
	}
	dots, commas := strings.Count(run, "."), strings.Count(run, ",")
	switch {
	case dots == 0 && commas == 0:
		return parsed(run, ""), len(run)
	case dots > 0 && commas > 0:
		return resolveMixed(run, dots, commas, style)
	}
	mark := "."
	if commas > 0 {
		mark = ","
	}
	parts := strings.Split(run, mark)
	grouped := areGroups(parts)
	if len(parts) > 2 {
		switch {
		case grouped:
			f := parsed(strings.Join(parts, ""), "")
			return f, len(run)
		case mark == ",":
			return parsed(parts[0], ""), len(parts[0])
		}
		return figure{bad: true}, len(run)
	}
	decimal := parsed(parts[0], parts[1])
	if !grouped {
		if mark == "," && style == Point || mark == "." && style == Comma {
			decimal.doubts |= DecimalMark
		}
		return decimal, len(run)
	}
	thousands := parsed(parts[0]+parts[1], "")
	f, other := decimal, thousands
	if mark == "," && style != Comma || mark == "." && style == Comma {
		f, other = thousands, decimal
	}
	if style == Auto {
		f.other = other.value
		f.doubts |= DecimalMark
	}
	return f, len(run)
}

// resolveMixed reads a run that has both marks: the last is the decimal mark
// if the others set off thousands, else the run is a list.
func resolveMixed(run string, dots, commas int, style Style) (figure, int) {
	last := strings.LastIndexAny(run, ".,")
	other := ","
	count := dots
	if run[last] == ',' {
		other, count = ".", commas
	}
	if count == 1 && areGroups(strings.Split(run[:last], other)) {
		f := parsed(strings.ReplaceAll(run[:last], other, ""), run[last+1:])
		if style == Point && other == "." || style == Comma && other == "," {
			f.doubts |= DecimalMark
		}
		return f, len(run)
	}
	// a list: the comma separates
	first := strings.IndexByte(run, ',')
	f, n := resolve(run[:first], style)
	return f, n
}

// areGroups reports whether the parts are thousands groups: the first of one
// to three digits without a leading zero, the others of three.
func areGroups(parts []string) bool {
	if len(parts) < 2 || len(parts[0]) < 1 || len(parts[0]) > 3 || parts[0][0] == '0' {
		return false
	}
	for _, p := range parts[1:] {
		if len(p) != 3 || strings.ContainsAny(p, ".,'") {
			return false
		}
	}
	return !strings.ContainsAny(parts[0], ".,'")
}

func parsed(whole, decimals string) figure {
	text := whole
	if decimals != "" {
		text += "." + decimals
	}
	v, err := strconv.ParseFloat(text, 64)
	if err != nil || math.IsInf(v, 0) || math.IsNaN(v) {
		return figure{bad: true}
	}
	return figure{value: v, other: v, whole: v == math.Trunc(v) && strings.Trim(decimals, "0") == ""}
}

// DetectStyle decides the decimal mark of a column from its cells. Figures
// that only one style can read decide ("7.5", "0,125", "1.200,50"). Where there
// are none, figures such as "1.200" are decided by the plain figures beside
// them: next to 850 and 940, it is 1200. It returns Auto when nothing decides
// it, or when more than one cell in ten contradicts the rest.
func DetectStyle(samples []string) Style {
	if !slices.ContainsFunc(samples, func(s string) bool { return strings.ContainsAny(s, ".,") || !isASCII(s) }) {
		return Auto // no mark
	}
	var point, comma int
	var plain []float64
	var doubtful []doubtfulFigure
	for _, s := range samples {
		runes := []rune(Clean(s))
		for i := 0; i < len(runes); i++ {
			leading := (runes[i] == '.' || runes[i] == ',') && i+1 < len(runes) && isDigit(runes[i+1])
			if !isDigit(runes[i]) && !leading {
				continue
			}
			if i > 0 && (isLetter(runes[i-1]) || isDigit(runes[i-1])) {
				if isDigit(runes[i]) { // inside a code
					i = figureEnd(runes, i) - 1
				}
				continue
			}
			if leading {
				if runes[i] == '.' {
					point++
				}
				i = figureEnd(runes, i+1) - 1
				continue
			}
			end := figureEnd(runes, i)
			run := string(runes[i:end])
			switch mark := decidedMark(run); {
			case mark == '.':
				point++
			case mark == ',':
				comma++
			case mark == '?':
				parts := strings.FieldsFunc(run, func(r rune) bool { return r == '.' || r == ',' })
				doubtful = append(doubtful, doubtfulFigure{strings.Contains(run, "."), parsed(parts[0], parts[1]).value})
			case !strings.ContainsAny(run, ".,'"):
				plain = append(plain, parsed(run, "").value)
			}
			i = end - 1
		}
	}
	switch {
	case point+comma == 0:
		return styleByScale(doubtful, plain)
	case comma*10 <= point && point > 0:
		return Point
	case point*10 <= comma && comma > 0:
		return Comma
	}
	return Auto
}

// decidedMark returns the decimal mark that a run proves, '?' for a run such as
// 1.200 that both styles read, and 0 for a run that proves nothing.
func decidedMark(run string) rune {
	dots, commas := strings.Count(run, "."), strings.Count(run, ",")
	switch {
	case strings.Contains(run, "'") || dots+commas == 0:
		return 0
	case dots > 0 && commas > 0:
		last := strings.LastIndexAny(run, ".,")
		other := map[byte]string{'.': ",", ',': "."}[run[last]]
		if strings.Count(run, string(run[last])) == 1 && areGroups(strings.Split(run[:last], other)) {
			return rune(run[last])
		}
		if commas > 1 || strings.IndexByte(run, '.') < strings.IndexByte(run, ',') {
			return '.' // a list with commas
		}
		return 0
	case dots > 1:
		if areGroups(strings.Split(run, ".")) {
			return ','
		}
		return 0
	case commas > 1:
		if areGroups(strings.Split(run, ",")) {
			return '.'
		}
		return 0
	}
	mark := '.'
	if commas == 1 {
		mark = ','
	}
	if areGroups(strings.Split(run, string(mark))) {
		return '?'
	}
	return mark
}

// A doubtfulFigure is a figure such as 1.200 with its decimal reading.
type doubtfulFigure struct {
	dot   bool
	value float64
}

// styleByScale decides figures such as 1.200 by the median of the plain figures
// beside them, if one reading is within a factor of ten of it and the other is
// not within a factor of a hundred.
func styleByScale(doubtful []doubtfulFigure, plain []float64) Style {
	if len(doubtful) == 0 || len(plain) < 2 {
		return Auto
	}
	slices.Sort(plain)
	median := plain[len(plain)/2]
	if median <= 0 {
		return Auto
	}
	var point, comma int
	for _, d := range doubtful {
		asDecimal, asThousands := math.Abs(math.Log10(d.value/median)), math.Abs(math.Log10(d.value*1000/median))
		switch {
		case asThousands <= 1 && asDecimal >= 2:
			if d.dot {
				comma++
			} else {
				point++
			}
		case asDecimal <= 1 && asThousands >= 2:
			if d.dot {
				point++
			} else {
				comma++
			}
		}
	}
	switch {
	case point > 0 && comma == 0:
		return Point
	case comma > 0 && point == 0:
		return Comma
	}
	return Auto
}
