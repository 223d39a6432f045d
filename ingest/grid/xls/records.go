package xls

import (
	"encoding/binary"
	"io"
	"math"
)

// Record numbers, named as [MS-XLS] 2.3 names them.
const (
	recInteger2      = 0x0002 // cells of Excel 2, laid out otherwise
	recNumber2       = 0x0003
	recLabel2        = 0x0004
	recBoolErr2      = 0x0005
	recFormula       = 0x0006
	recEOF           = 0x000a
	recName          = 0x0018
	recNote          = 0x001c
	recDate1904      = 0x0022
	recFilePass      = 0x002f
	recFont          = 0x0031
	recContinue      = 0x003c
	recCodePage      = 0x0042
	recObj           = 0x005d
	recUncalced      = 0x005e
	recColInfo       = 0x007d
	recBoundSheet    = 0x0085
	recFilterMode    = 0x009b
	recFilterInfo    = 0x009d
	recMulRk         = 0x00bd
	recRString       = 0x00d6
	recXF            = 0x00e0
	recMergeCells    = 0x00e5
	recSST           = 0x00fc
	recLabelSST      = 0x00fd
	recTxO           = 0x01b6
	recNumber        = 0x0203
	recLabel         = 0x0204
	recBoolErr       = 0x0205
	recString        = 0x0207
	recRow           = 0x0208
	recFormula3      = 0x0206 // of Excel 3 and 4, which some programs write on
	recFormula4      = 0x0406
	recDefaultHeight = 0x0225
	recRK            = 0x027e
	recFormat        = 0x041e
	recBOF           = 0x0809
)

// A record is one record of a stream.
type record struct {
	id   uint16
	pos  int // offset of its header in the stream
	data []byte
}

// need returns an error when the record holds fewer than n bytes.
func (r record) need(n int) error {
	if len(r.data) < n {
		return damaged("the record at byte %d has %d bytes and needs %d", r.pos, len(r.data), n)
	}
	return nil
}

// A recordStream hands out the records of a stream one by one.
type recordStream struct {
	b   []byte
	pos int
}

// next returns the next record, or io.EOF after the last.
func (s *recordStream) next() (record, error) {
	if s.pos >= len(s.b) {
		return record{}, io.EOF
	}
	if len(s.b)-s.pos < 4 {
		return record{}, damaged("the stream ends inside a record at byte %d", s.pos)
	}
	n := int(u16(s.b[s.pos+2:]))
	if n > len(s.b)-s.pos-4 {
		return record{}, damaged("the stream ends inside a record at byte %d", s.pos)
	}
	r := record{id: u16(s.b[s.pos:]), pos: s.pos, data: s.b[s.pos+4 : s.pos+4+n]}
	s.pos += 4 + n
	return r, nil
}

// maxPieces bounds the records that continue another. At 8 KiB each they hold
// more than a file may.
const maxPieces = 1 << 16

// pieces returns the data of a record and of the Continue records behind it.
func (s *recordStream) pieces(r record) ([][]byte, error) {
	out := [][]byte{r.data}
	for s.pos+4 <= len(s.b) && u16(s.b[s.pos:]) == recContinue {
		c, err := s.next()
		if err != nil {
			return nil, err
		}
		if len(c.data) > 0 {
			out = append(out, c.data)
		}
		if len(out) > maxPieces {
			return nil, damaged("the record at byte %d is continued more than %d times", r.pos, maxPieces)
		}
	}
	return out, nil
}

func u16(b []byte) uint16 { return binary.LittleEndian.Uint16(b) }

func u32(b []byte) uint32 { return binary.LittleEndian.Uint32(b) }

func float(b []byte) float64 {
	return math.Float64frombits(binary.LittleEndian.Uint64(b))
}

// rk returns the value of an RkNumber ([MS-XLS] 2.5.122): the upper 30 bits of
// a float or a 30-bit integer, either perhaps times 100.
func rk(b []byte) float64 {
	v := u32(b)
	var f float64
	if v&2 != 0 {
		f = float64(int32(v) >> 2)
	} else {
		f = math.Float64frombits(uint64(v&^3) << 32)
	}
	if v&1 != 0 {
		f /= 100
	}
	return f
}
