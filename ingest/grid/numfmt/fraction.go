package numfmt

import (
	"math"
	"strconv"
	"strings"
)

// appendFraction shows v as "2 1/2" or, without a place for whole numbers, as
// "5/2". The bar's neighbours say how wide numerator and denominator are; a
// denominator written as a number is fixed.
func (s *section) appendFraction(dst []byte, v float64) []byte {
	numStart := s.slash // first item of the numerator: the digit places right before the bar
	for numStart > 0 && s.items[numStart-1].kind == itemDigit {
		numStart--
	}
	hasWhole := false
	for _, it := range s.items[:numStart] {
		hasWhole = hasWhole || it.kind == itemDigit
	}
	denPlaces, fixed, denEnd := s.denominator()

	for range s.percent {
		v *= 100
	}
	neg := v < 0
	v = math.Abs(v)
	if v >= 1e15 {
		return appendGeneral(dst, v)
	}
	whole := 0.0
	if hasWhole {
		whole = math.Floor(v)
	}
	num, den := fixed*(v-whole), fixed
	if fixed > 0 {
		num = math.Floor(num + 0.5)
	} else {
		num, den = nearest(v-whole, int(math.Pow10(min(denPlaces, 5)))-1)
	}
	if hasWhole && den > 0 && num >= den {
		whole += math.Floor(num / den)
		num = math.Mod(num, den)
	}
	if neg && whole+num > 0 {
		dst = append(dst, '-')
	}
	blank := hasWhole && num == 0 // "3" in `# ?/?` shows blanks for the fraction
	dst = s.wholeOfFraction(dst, whole, num, numStart)
	dst = pad(dst, strconv.FormatFloat(num, 'f', 0, 64), s.items[numStart:s.slash], blank, true)
	if blank {
		dst = append(dst, ' ')
	} else {
		dst = append(dst, '/')
	}
	t := strconv.FormatFloat(den, 'f', 0, 64)
	switch {
	case fixed > 0 && blank:
		dst = append(dst, strings.Repeat(" ", len(t))...)
	case fixed > 0:
		dst = append(dst, t...)
	default:
		dst = pad(dst, t, s.items[s.slash+1:denEnd], blank, false)
	}
	for i, it := range s.items[denEnd:] {
		if it.kind == itemLiteral {
			lit := it.lit
			if i == 0 && fixed > 0 { // the fixed denominator stands at the head of this literal
				lit = strings.TrimLeft(strings.TrimLeft(lit, " "), "0123456789")
			}
			dst = append(dst, lit...)
		} else if it.kind == itemPercent {
			dst = append(dst, '%')
		}
	}
	return dst
}

// wholeOfFraction writes the whole number and the literals before the numerator.
func (s *section) wholeOfFraction(dst []byte, whole, num float64, end int) []byte {
	var digits []byte
	if whole > 0 {
		digits = strconv.AppendFloat(nil, whole, 'f', 0, 64)
	} else if num == 0 {
		digits = []byte{'0'}
	}
	places := 0
	for _, it := range s.items[:end] {
		if it.kind == itemDigit {
			places++
		}
	}
	part := section{items: s.items, whole: places, grouped: s.grouped, point: -1, exp: -1, slash: -1}
	return part.place(dst, digits, nil, whole, end)
}

// denominator returns the digit places behind the bar, or the fixed number
// that stands there, and the index of the item where what follows begins.
func (s *section) denominator() (places int, fixed float64, end int) {
	i := s.slash + 1
	for i < len(s.items) && s.items[i].kind == itemDigit {
		places++
		i++
	}
	if places > 0 || i >= len(s.items) {
		return places, 0, i
	}
	t := strings.TrimLeft(s.items[i].lit, " ")
	n := 0
	for n < len(t) && n < 6 && t[n] >= '0' && t[n] <= '9' {
		n++
	}
	fixed, _ = strconv.ParseFloat(t[:n], 64)
	// "# ?/10": the zero is a digit place of its own behind the literal 1
	for n == len(t) && i+1 < len(s.items) && s.items[i+1].kind == itemDigit && s.items[i+1].char == '0' && fixed < 1e5 {
		fixed *= 10
		i++
		if i+1 < len(s.items) && s.items[i+1].kind != itemDigit {
			return 0, fixed, i + 1
		}
	}
	if s.items[i].kind == itemDigit {
		return 0, fixed, i + 1
	}
	return 0, fixed, i
}

// pad writes t into the digit places: '?' pads with blanks, '0' with noughts,
// on the left for a numerator and on the right for a denominator.
func pad(dst []byte, t string, places []item, blank, left bool) []byte {
	if blank {
		return append(dst, strings.Repeat(" ", max(len(places), 1))...)
	}
	var fill strings.Builder
	for _, it := range places[:max(0, len(places)-len(t))] {
		switch it.char {
		case '?':
			fill.WriteString(" ")
		case '0':
			if left {
				fill.WriteString("0")
			}
		}
	}
	if left {
		return append(append(dst, fill.String()...), t...)
	}
	return append(append(dst, t...), fill.String()...)
}

// nearest returns the fraction closest to v in 0..1 (or any v >= 0 for an
// improper fraction) whose denominator is at most maxDen, by continued
// fractions with the last convergent's best partial step.
func nearest(v float64, maxDen int) (num, den float64) {
	if maxDen < 1 {
		maxDen = 1
	}
	p0, q0, p1, q1 := 0.0, 1.0, 1.0, 0.0
	x := v
	for range 40 {
		a := math.Floor(x)
		p2, q2 := a*p1+p0, a*q1+q0
		if q2 > float64(maxDen) {
			// the largest partial step that fits may be closer than the convergent
			k := math.Floor((float64(maxDen) - q0) / q1)
			ps, qs := k*p1+p0, k*q1+q0
			if k > 0 && math.Abs(v-ps/qs) < math.Abs(v-p1/q1) {
				return ps, qs
			}
			return p1, q1
		}
		p0, q0, p1, q1 = p1, q1, p2, q2
		if x-a < 1e-10 || math.Abs(v-p1/q1) < 1e-13 {
			break
		}
		x = 1 / (x - a)
	}
	return p1, q1
}
