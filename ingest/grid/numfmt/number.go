package numfmt

import (
	"math"
	"strconv"
)

// append shows v, whose sign is to be shown if it is negative.
func (s *section) append(dst []byte, v float64) []byte {
	switch {
	case s.date:
		return s.appendDate(dst, v)
	case s.slash >= 0:
		return s.appendFraction(dst, v)
	case s.exp >= 0:
		return s.appendExponent(dst, v)
	}
	for range s.percent {
		v *= 100
	}
	for range s.thousands {
		v /= 1000
	}
	neg := v < 0
	var room [40]byte
	whole, frac := rounded(room[:0], math.Abs(v), s.decimals)
	if neg && (len(whole) > 0 || anyDigit(frac)) && s.whole+s.decimals > 0 {
		dst = append(dst, '-')
	} else if neg && s.has(itemGeneral) {
		dst = append(dst, '-')
	}
	return s.place(dst, whole, frac, math.Abs(v), len(s.items))
}

// place writes the digits into the digit places of the items before end.
func (s *section) place(dst []byte, whole, frac []byte, v float64, end int) []byte {
	left := s.whole // digit places still to come before the point
	nd := 0
	lastShown := len(frac)
	for lastShown > 0 && frac[lastShown-1] == '0' {
		lastShown--
	}
	behind := false
	for i, it := range s.items[:end] {
		switch it.kind {
		case itemLiteral:
			dst = append(dst, it.lit...)
		case itemGeneral:
			dst = appendGeneral(dst, v)
		case itemPercent:
			dst = append(dst, '%')
		case itemText:
			dst = appendGeneral(dst, v)
		case itemPoint:
			if i == s.point {
				if s.whole == 0 { // ".00" still shows what stands before the point
					dst = append(dst, whole...)
				}
				behind = true
			}
			dst = append(dst, '.')
		case itemDigit:
			if behind {
				switch {
				case nd < lastShown || it.char == '0':
					dst = append(dst, frac[nd])
				case it.char == '?':
					dst = append(dst, ' ')
				}
				nd++
				continue
			}
			if left == s.whole { // the first place takes all digits that have no place of their own
				for k := len(whole); k > left; k-- {
					dst = s.digit(dst, whole[len(whole)-k], k)
				}
			}
			switch {
			case left <= len(whole):
				dst = s.digit(dst, whole[len(whole)-left], left)
			case it.char == '0':
				dst = s.digit(dst, '0', left)
			case it.char == '?':
				dst = append(dst, ' ')
			}
			left--
		}
	}
	return dst
}

// digit writes the digit that stands k places before the point.
func (s *section) digit(dst []byte, d byte, k int) []byte {
	dst = append(dst, d)
	if s.grouped && k > 1 && (k-1)%3 == 0 {
		dst = append(dst, ',')
	}
	return dst
}

func anyDigit(b []byte) bool {
	for _, c := range b {
		if c != '0' {
			return true
		}
	}
	return false
}

// rounded returns the decimal digits of v >= 0 before the point (none for 0)
// and exactly n behind it, both in room where they fit. Spreadsheets keep 15
// significant digits and round halves away from zero, so that 7.005 shown with
// two decimals is 7.01.
func rounded(room []byte, v float64, n int) (whole, frac []byte) {
	if n < len(tens) && v < 1e9 { // most numbers: whole steps of the last decimal, unless a half is near
		x := v * tens[n]
		steps := math.Floor(x)
		if part := x - steps; part < 0.499999 || part > 0.500001 {
			if part > 0.5 {
				steps++
			}
			return splitDigits(strconv.AppendUint(room, uint64(steps), 10), n)
		}
	}
	digits, exp := significant(v) // v = 0.d1d2d3... x 10^exp
	keep := exp + n               // digits that stay
	switch {
	case keep < 0:
		digits = digits[:0]
	case keep < len(digits):
		up := digits[keep] >= '5'
		digits = digits[:keep]
		if up {
			digits, exp = increased(digits, exp)
		}
	}
	digit := func(i int) byte {
		if i >= 0 && i < len(digits) {
			return digits[i]
		}
		return '0'
	}
	for i := range exp {
		whole = append(whole, digit(i))
	}
	for i := exp; i < exp+n; i++ {
		frac = append(frac, digit(i))
	}
	return whole, frac
}

var tens = [...]float64{1, 10, 100, 1000, 1e4, 1e5, 1e6}

// splitDigits cuts the digits of a whole number of steps of 10^-n.
func splitDigits(b []byte, n int) (whole, frac []byte) {
	if len(b) == 1 && b[0] == '0' {
		b = b[:0]
	}
	if len(b) < n {
		pad := n - len(b)
		b = append(b, "000000"[:pad]...)
		copy(b[pad:], b[:len(b)-pad])
		copy(b[:pad], "000000")
	}
	return b[:len(b)-n], b[len(b)-n:]
}

// increased adds one to the last of the digits of 0.d1d2d3... x 10^exp.
func increased(digits []byte, exp int) ([]byte, int) {
	for i := len(digits) - 1; i >= 0; i-- {
		if digits[i] != '9' {
			digits[i]++
			return digits, exp
		}
		digits[i] = '0'
	}
	return append([]byte{'1'}, digits...), exp + 1
}

// significant returns up to 15 significant digits of v >= 0 and the exponent
// such that v = 0.d1d2d3... x 10^exp. Zero has no digits.
func significant(v float64) (digits []byte, exp int) {
	if v == 0 || math.IsInf(v, 0) || math.IsNaN(v) {
		return nil, 0
	}
	var buf [32]byte
	b := strconv.AppendFloat(buf[:0], v, 'e', 14, 64) // d.dddddddddddddde±xx
	digits = append(digits, b[0])
	digits = append(digits, b[2:16]...)
	exp, _ = strconv.Atoi(string(b[17:]))
	for len(digits) > 0 && digits[len(digits)-1] == '0' {
		digits = digits[:len(digits)-1]
	}
	return digits, exp + 1
}

// appendExponent shows v as 1.2E+03; with several places before the point the
// exponent is a multiple of their number.
func (s *section) appendExponent(dst []byte, v float64) []byte {
	for range s.percent {
		v *= 100
	}
	if v < 0 {
		dst = append(dst, '-')
		v = -v
	}
	_, exp := significant(v)
	step := max(s.whole, 1)
	e := 0
	if v != 0 {
		e = exp - 1
		if step > 1 {
			e = int(math.Floor(float64(e)/float64(step))) * step
		}
	}
	whole, frac := rounded(nil, scaled(v, -e), s.decimals)
	if len(whole) > step { // rounding reached the next power of ten
		e += step
		whole, frac = rounded(nil, scaled(v, -e), s.decimals)
	}
	dst = s.place(dst, whole, frac, v, s.exp)
	it := s.items[s.exp]
	dst = append(dst, it.lit[0])
	if e < 0 {
		dst = append(dst, '-')
	} else if it.lit[1] == '+' {
		dst = append(dst, '+')
	}
	places := 0
	for _, it := range s.items[s.exp+1:] {
		if it.kind == itemDigit {
			places++
		}
	}
	t := strconv.Itoa(max(e, -e))
	for range places - len(t) {
		dst = append(dst, '0')
	}
	dst = append(dst, t...)
	for _, it := range s.items[s.exp+1:] {
		switch it.kind {
		case itemLiteral:
			dst = append(dst, it.lit...)
		case itemPercent:
			dst = append(dst, '%')
		}
	}
	return dst
}

// scaled returns v x 10^e, in two steps where 10^e alone is no number.
func scaled(v float64, e int) float64 {
	if e > 300 {
		return v * 1e300 * math.Pow10(e-300)
	}
	return v * math.Pow10(e)
}
