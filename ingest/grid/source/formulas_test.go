package source

import (
	"context"
	"strings"
	"testing"
)

// A workbook whose formulas nobody worked out is read as it is, with a remark;
// one with another result among them, or with a few formulas, is not doubted.
func TestFormulasNeverWorkedOut(t *testing.T) {
	const head = `<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet><table:table table:name="Sheet1"><table:table-row>`
	const typed = `<table:table-cell office:value-type="float" office:value="0"><text:p>0</text:p></table:table-cell>`
	zero := strings.Replace(typed, "<table:table-cell ", `<table:table-cell table:formula="of:=[.A1]*2" `, 1)
	for _, tt := range []struct {
		name, cells string
		doubted     bool
	}{
		{"all 0", strings.Repeat(zero, 3), true},
		{"one that is not", strings.Repeat(zero, 3) + strings.ReplaceAll(zero, `value="0"`, `value="7.5"`), false},
		{"a text", strings.Repeat(zero, 3) + `<table:table-cell table:formula="of:=[.A1]" office:value-type="string"><text:p>Pier</text:p></table:table-cell>`, false},
		{"two", strings.Repeat(zero, 2), false},
		{"none", strings.Repeat(typed, 5), false},
	} {
		t.Run(tt.name, func(t *testing.T) {
			book, err := Parse(context.Background(), "a.fods", []byte(head+typed+tt.cells+`</table:table-row></table:table></office:spreadsheet></office:body></office:document>`), Options{})
			if err != nil {
				t.Fatal(err)
			}
			doubted := false
			for _, n := range book.Notes {
				doubted = doubted || n.Sheet == "Sheet1" && n.Row == 1 && n.Col == 2 && strings.Contains(n.Text, "worked them out")
			}
			if doubted != tt.doubted {
				t.Errorf("notes %+v", book.Notes)
			}
		})
	}
}
