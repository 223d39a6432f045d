package book

import (
	"bytes"
	"testing"

	"github.com/xuri/excelize/v2"
)

func TestXLSX(t *testing.T) {
	var b Book
	s := b.Add("One")
	s.Put(1, 1, "Tap", "Qty", "Total")
	s.Put(2, 1, 2.5, 4)
	s.Set(2, 3, Cell{Value: 10.0, Formula: "A2*B2", Style: Style{Strike: true, Format: `0" W"`}})
	s.Set(3, 1, Cell{Runs: []Run{{"10", true}, {" 5 W", false}}})
	s.Hide[3] = true
	s.Merge(4, 1, 4, 2)
	s.FilterAt, s.FilterCol, s.FilterBy = [4]int{1, 1, 3, 3}, 2, `x != "9"`
	b.Add("Two").Put(1, 1, "x")
	var out bytes.Buffer
	if err := b.XLSX(&out, ""); err != nil {
		t.Fatal(err)
	}
	f, err := excelize.OpenReader(&out)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	for _, tt := range []struct{ cell, want string }{{"A2", "2.5"}, {"C2", "10"}, {"A3", "10 5 W"}} {
		if got, err := f.GetCellValue("One", tt.cell, excelize.Options{RawCellValue: true}); err != nil || got != tt.want {
			t.Errorf("%s: got %q, want %q (%v)", tt.cell, got, tt.want, err)
		}
	}
	if got, _ := f.GetCellFormula("One", "C2"); got != "A2*B2" {
		t.Errorf("formula: got %q", got)
	}
	if visible, _ := f.GetRowVisible("One", 3); visible {
		t.Error("row 3 shows")
	}
	if merges, _ := f.GetMergeCells("One"); len(merges) != 1 {
		t.Errorf("%d merged areas, want 1", len(merges))
	}
}

func TestCSV(t *testing.T) {
	var b Book
	b.Add("One").Put(1, 1, "Länge", 7.5, `60'-6"`, "a;b")
	for _, tt := range []struct {
		name string
		d    Dialect
		want string
	}{
		{"continental", Dialect{Comma: ";", Decimal: ",", Windows: true, CRLF: true}, "L\xe4nge;7,5;\"60'-6\"\"\";\"a;b\"\r\n"},
		{"plain", Dialect{Comma: ",", Decimal: "."}, "Länge,7.5,\"60'-6\"\"\",a;b\n"},
		{"marked", Dialect{Comma: ",", Decimal: ".", BOM: true}, "\ufeffLänge,7.5,\"60'-6\"\"\",a;b\n"},
	} {
		var out bytes.Buffer
		if err := b.CSV(&out, tt.d); err != nil {
			t.Fatal(err)
		}
		if out.String() != tt.want {
			t.Errorf("%s: got %q, want %q", tt.name, out.String(), tt.want)
		}
	}
}
