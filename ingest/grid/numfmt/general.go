package numfmt

import (
	"math"
	"strconv"
)

// General shows v in the general format of a cell that is wide enough: at
// most eleven characters beside the sign, else an exponent with up to five
// decimals. The stored value keeps all its digits; see grid.Cell.
func General(v float64) string { return string(appendGeneral(nil, v)) }

func appendGeneral(dst []byte, v float64) []byte {
	if v == math.Trunc(v) && math.Abs(v) < 1e11 {
		return strconv.AppendInt(dst, int64(v), 10)
	}
	if v < 0 {
		dst = append(dst, '-')
		v = -v
	}
	digits, exp := significant(v)
	if len(digits) == 0 {
		return append(dst, '0')
	}
	if exp <= 11 && exp > -4 || exp <= -4 && len(digits)-exp <= 9 {
		decimals := 9
		if exp > 1 {
			decimals = max(0, 10-exp)
		}
		whole, frac := rounded(nil, v, decimals)
		if len(whole) <= 11 {
			if len(whole) == 0 {
				whole = append(whole, '0')
			}
			dst = append(dst, whole...)
			for len(frac) > 0 && frac[len(frac)-1] == '0' {
				frac = frac[:len(frac)-1]
			}
			if len(frac) > 0 {
				dst = append(append(dst, '.'), frac...)
			}
			return dst
		}
	}
	if len(digits) > 6 {
		up := digits[6] >= '5'
		if digits = digits[:6]; up {
			digits, exp = increased(digits, exp)
		}
	}
	dst = append(dst, digits[0])
	frac := digits[1:min(len(digits), 6)]
	for len(frac) > 0 && frac[len(frac)-1] == '0' {
		frac = frac[:len(frac)-1]
	}
	if len(frac) > 0 {
		dst = append(append(dst, '.'), frac...)
	}
	dst = append(dst, 'E')
	e := exp - 1
	if e < 0 {
		dst = append(dst, '-')
	} else {
		dst = append(dst, '+')
	}
	return padded(dst, int64(max(e, -e)), 2)
}
