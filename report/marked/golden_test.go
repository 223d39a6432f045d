package marked_test

import (
	"errors"
	"strings"
	"testing"

	"lineaudit/ingest/grid"
	"lineaudit/report/marked"
	"lineaudit/report/reporttest"
)

func TestWholeCopy(t *testing.T) {
	p := small()
	got := parts(t, copied(t, "a.xlsx", pack(t, p), onB1()))
	var b strings.Builder
	for _, name := range []string{"xl/workbook.xml", "xl/worksheets/sheet1.xml", "xl/worksheets/findings1.xml", "xl/auditComments1.xml", "xl/drawings/auditNotes1.vml", "[Content_Types].xml"} {
		b.WriteString("== " + name + "\n" + strings.ReplaceAll(got[name], "><", ">\n<") + "\n")
	}
	reporttest.Golden(t, "copy", b.String())
}

func TestAFullDiskIsAnError(t *testing.T) {
	data := pack(t, small())
	src := marked.Source{Book: parse(t, "a.xlsx", data), Data: data, Read: func(b []byte) (*grid.Book, error) { return parse(t, "a.xlsx", b), nil }}
	for _, room := range []int{0, 1, 500} {
		if _, err := marked.Write(&reporttest.Disk{Room: room}, src, onB1()); !errors.Is(err, reporttest.ErrFull) {
			t.Errorf("room for %d: %v", room, err)
		}
	}
}
