package marked_test

import (
	"strings"
	"testing"

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
