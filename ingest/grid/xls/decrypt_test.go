package xls

import (
	"bytes"
	"math/bits"
	"os"
	"strings"
	"testing"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/gridtest"
)

// A workbook whose structure is protected is encrypted with a password that
// everybody's program knows. The fixture is gridtest's schedule, protected,
// saved by LibreOffice 7.4, which encrypts with RC4 ([MS-OFFCRYPTO] 2.3.6).
func TestProtectedStructure(t *testing.T) {
	data, err := os.ReadFile("testdata/protected.xls")
	if err != nil {
		t.Fatal(err)
	}
	if stream, err := workbookStream("a.xls", data); err != nil || !bytes.Contains(stream[:64], le16(recFilePass, 54)) {
		t.Fatalf("the fixture is not encrypted: %v", err)
	}
	checkSchedule(t, data)
	checkSchedule(t, gridtest.Convert(t, "protected.fods",
		bytes.Replace(gridtest.Schedule, []byte("<office:spreadsheet>"), []byte(`<office:spreadsheet table:structure-protected="true">`), 1), "xls"))

	i := bytes.Index(data, le16(recFilePass, 54))
	wrong := bytes.Clone(data)
	wrong[i+15]++ // the salt: the password does not fit any more
	if _, err := Read("a.xls", wrong, grid.DefaultLimits()); err == nil || !strings.Contains(err.Error(), "password") {
		t.Errorf("another password: %v", err)
	}
}

// The obfuscation of [MS-OFFCRYPTO] 2.3.7, done here the other way round by
// 2.3.7.3: rotate left by 5, then XOR with an array made of the password and
// its key 0xB359.
func TestXOR(t *testing.T) {
	plain := book{globals: rec(recFilePass, le16(0xb359, 0x9a0a)), sheets: [][]byte{
		join(cell(recLabel, 0, 0, le16(3), []byte("5 W")), cell(recNumber, 1, 1, le64(70.7))),
	}}.bytes()
	array := make([]byte, 0, 16)
	for i, c := range []byte("VelvetSweatshop\xbb") {
		array = append(array, bits.RotateLeft8(c^[]byte{0x59, 0xb3}[i%2], 7))
	}
	hidden := bytes.Clone(plain)
	for pos := 12 + 8; pos < len(hidden); { // behind BOF and FilePass
		id, n := u16(hidden[pos:]), int(u16(hidden[pos+2:]))
		data := hidden[pos+4 : pos+4+n]
		for i := range data {
			if id != recBOF && (id != recBoundSheet || i >= 4) {
				data[i] = bits.RotateLeft8(data[i], 5) ^ array[(pos+4+i+n)%16]
			}
		}
		pos += 4 + n
	}
	b, err := Read("a.xls", hidden, grid.DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	gridtest.Compare(t, gridtest.Read(b), []gridtest.Cell{in1("A1", grid.String, "5 W", 0), in1("B2", grid.Number, "70.7", 70.7)})
}
