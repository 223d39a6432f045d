package xls

import (
	"encoding/binary"
	"math"
	"unicode/utf16"
)

// The tests build streams record by record, by [MS-XLS] and, for BIFF5, by the
// OpenOffice.org documentation of the Excel file format.

// rec returns a record.
func rec(id uint16, parts ...[]byte) []byte {
	var data []byte
	for _, p := range parts {
		data = append(data, p...)
	}
	return append(append(le16(id), le16(len(data))...), data...)
}

func le16[T ~int | ~uint16](vs ...T) []byte {
	var out []byte
	for _, v := range vs {
		out = binary.LittleEndian.AppendUint16(out, uint16(v))
	}
	return out
}

func le32(v int) []byte { return binary.LittleEndian.AppendUint32(nil, uint32(v)) }

func le64(v float64) []byte {
	return binary.LittleEndian.AppendUint64(nil, math.Float64bits(v))
}

func wide(s string) []byte { return le16(utf16.Encode([]rune(s))...) }

// text8 is a BIFF8 text with a length of two bytes.
func text8(s string) []byte {
	u := utf16.Encode([]rune(s))
	return append(append(le16(len(u)), 1), wide(s)...)
}

// A book builds a stream of one or more sheets.
type book struct {
	biff8   bool
	globals []byte   // records before the list of sheets
	names   []string // of the sheets, "Sheet1" where there is none
	sheets  [][]byte // records of each
	shift   int      // error in the offsets of the list
	state   byte     // of the first sheet: 0 shown, 1 hidden, 2 very hidden
	kind    byte     // of the first sheet
}

func (b book) bof(kind int) []byte {
	if b.biff8 {
		return rec(recBOF, le16(0x0600, kind), make([]byte, 12))
	}
	return rec(recBOF, le16(0x0500, kind), make([]byte, 4))
}

func (b book) bytes() []byte {
	build := func(start int) (out []byte, end int) {
		out = append(b.bof(0x0005), b.globals...)
		for i, s := range b.sheets {
			name := "Sheet1"
			if i < len(b.names) {
				name = b.names[i]
			}
			flags := []byte{0, 0}
			if i == 0 {
				flags = []byte{b.state, b.kind}
			}
			entry := append(le32(start+b.shift), flags...)
			entry = append(entry, byte(len(name)))
			if b.biff8 {
				entry = append(entry, 0)
			}
			out = append(out, rec(recBoundSheet, entry, []byte(name))...)
			start += len(b.bof(0x0010)) + len(s) + 4
		}
		out = append(out, rec(recEOF)...)
		return out, len(out)
	}
	_, n := build(0)
	out, _ := build(n)
	for _, s := range b.sheets {
		out = append(out, b.bof(0x0010)...)
		out = append(out, s...)
		out = append(out, rec(recEOF)...)
	}
	return out
}

// one returns a BIFF8 workbook of one sheet.
func one(globals []byte, sheet ...[]byte) []byte {
	return book{biff8: true, globals: globals, sheets: [][]byte{join(sheet...)}}.bytes()
}

func join(parts ...[]byte) []byte {
	var out []byte
	for _, p := range parts {
		out = append(out, p...)
	}
	return out
}

// cell returns a cell record: row and column from 0, XF 0.
func cell(id uint16, row, col int, body ...[]byte) []byte {
	return rec(id, append([][]byte{le16(row, col, 0)}, body...)...)
}

// font returns a Font record, struck through or not.
func font(struck bool) []byte {
	options := 0
	if struck {
		options = 8
	}
	return rec(recFont, le16(200, options), make([]byte, 12))
}

// xf returns an XF record.
func xf(font, format int) []byte { return rec(recXF, le16(font, format), make([]byte, 16)) }

// formula returns a Formula record with the value of 8 bytes and the tokens.
func formula(row, col int, value []byte, tokens ...byte) []byte {
	return cell(recFormula, row, col, value, make([]byte, 6), le16(len(tokens)), tokens)
}
