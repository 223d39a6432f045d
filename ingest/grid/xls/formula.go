package xls

import "slices"

// textFunctions are functions that give nothing but text, by the numbers of
// [MS-XLS] 2.5.198.17 (Ftab).
var textFunctions = []uint16{
	13,  // DOLLAR
	14,  // FIXED
	30,  // REPT
	31,  // MID
	48,  // TEXT
	111, // CHAR
	112, // LOWER
	113, // UPPER
	114, // PROPER
	115, // LEFT
	116, // RIGHT
	118, // TRIM
	119, // REPLACE
	120, // SUBSTITUTE
	130, // T
	162, // CLEAN
	219, // ADDRESS
	336, // CONCATENATE
}

// Tokens of a formula ([MS-XLS] 2.5.198), those with a class by the first one.
const (
	tokenConcat  = 0x08
	tokenString  = 0x17
	tokenAttr    = 0x19
	tokenFunc    = 0x21
	tokenFuncVar = 0x22
)

// makesText reports whether a formula can only give text, by the operation
// done last. A program that saves a workbook without having calculated it
// stores 0 as the result of every formula; for such a formula 0 is no result.
// body is a Formula record behind the XF index.
func (w *workbook) makesText(body []byte) bool {
	const head = 14 // value, flags, unused
	if !w.biff8 || len(body) < head+2 {
		return false
	}
	n := int(u16(body[head:]))
	f := body[head+2:]
	if n > len(f) {
		return false
	}
	f = f[:n]
	var last []byte
	for len(f) > 0 {
		size := tokenSize(f)
		if size == 0 || size > len(f) {
			return false
		}
		last, f = f[:size], f[size:]
	}
	if len(last) == 0 {
		return false
	}
	switch tokenBase(last[0]) {
	case tokenConcat:
		return true
	case tokenFunc:
		return slices.Contains(textFunctions, u16(last[1:]))
	case tokenFuncVar:
		return slices.Contains(textFunctions, u16(last[2:]))
	}
	return false
}

// tokenBase returns the token without its class.
func tokenBase(t byte) byte {
	if t < 0x20 {
		return t
	}
	return t&0x1f | 0x20
}

// tokenSize returns the bytes of the token that f begins with, 0 if it is not
// known or cut off.
func tokenSize(f []byte) int {
	t := tokenBase(f[0])
	switch {
	case t >= 0x03 && t <= 0x16: // operators, parentheses, missing argument
		return 1
	case t == tokenString:
		if len(f) < 3 {
			return 0
		}
		return 3 + int(f[1])*(1+int(f[2]&1))
	case t == tokenAttr:
		const choose = 0x04
		if len(f) < 4 {
			return 0
		}
		if f[1]&choose != 0 {
			return 4 + 2*(int(u16(f[2:]))+1)
		}
		return 4
	}
	switch t {
	case 0x1c, 0x1d: // error, truth value
		return 2
	case 0x1e, tokenFunc, 0x29: // integer, function, reference subexpression
		return 3
	case tokenFuncVar:
		return 4
	case 0x01, 0x02, 0x23, 0x24, 0x2a, 0x2c: // shared formula, table, name, reference
		return 5
	case 0x26, 0x27, 0x28, 0x39, 0x3a, 0x3c: // reference subexpression, name or reference elsewhere
		return 7
	case 0x20: // array
		return 8
	case 0x1f, 0x25, 0x2b, 0x2d: // number, area
		return 9
	case 0x3b, 0x3d: // area elsewhere
		return 11
	}
	return 0
}
