package xlsx

import (
	"archive/zip"
	"bytes"
	"fmt"
	"strings"
	"testing"
	"time"

	"lineaudit/ingest/grid"
)

// Packages that are odd or hostile as a whole. What does not concern the cells
// is neither unpacked nor an obstacle; what does is read right or refused, in
// little time.
func TestOddWholes(t *testing.T) {
	plain := workbookFiles(sheetOf(plainRows))
	many := func(s string, n int) string { return strings.Repeat(s, n) }
	with := func(more ...file) []byte { return pack(t, workbookFiles(sheetOf(plainRows), more...)) }
	inSheet := func(old, new string) []byte {
		return pack(t, workbookFiles(strings.Replace(sheetOf(plainRows), old, new, 1)))
	}
	for _, tt := range []struct {
		name  string
		data  []byte
		words string // "" if it is to be read
	}{
		{"a bomb among the pictures", with(file{name: "xl/media/image1.png", text: many("\x00", 64<<20)}), ""},
		{"a picture whose size is a lie", with(file{name: "xl/media/image1.png", text: "x", lie: func(h *zip.FileHeader) { h.UncompressedSize64 = 8 << 30 }}), ""},
		{"a bomb for a list of sheets", with(file{name: "xl/workbook.xml", text: head + `<workbook>` + many(" ", 32<<20) + `</workbook>`}), "times its size"},
		{"a bomb of texts", with(file{name: "xl/sharedStrings.xml", text: head + `<sst>` + many(" ", 32<<20) + `</sst>`}), "times its size"},
		{"a part listed a thousand times", overlapping(t, 1000), "two parts"},
		{"a dimension of the whole sheet", inSheet("<sheetData>", `<dimension ref="A1:XFD1048576"/><sheetData>`), ""},
		{"bad UTF-8 in a part about the author", with(file{name: "docProps/core.xml", text: "<a>\xff\xfe</b>"}), ""},
		{"a part about the author with a wrong checksum", with(file{name: "docProps/core.xml", text: "<a/>", lie: func(h *zip.FileHeader) { h.CRC32++ }}), ""},
		{"parts that climb out", with(file{name: "../../evil.txt", text: "x"}, file{name: "/etc/evil", text: "x"}, file{name: `..\..\evil.bat`, text: "x"}), ""},
		{"junk behind the zip", append(pack(t, plain), many("\x00junk", 100)...), ""},
		{"sheet name of 60 characters", with(file{name: "xl/workbook.xml", text: head + `<workbook xmlns="` + mainSpace + `" xmlns:r="` + relSpace + `"><sheets><sheet name="` + many("Orangery ", 7) + `" sheetId="1" r:id="rId1"/></sheets></workbook>`}), ""},
		{"zip without a workbook", pack(t, []file{{name: "a.txt", text: "x"}}), "no list of sheets"},
		{"empty zip", pack(t, nil), "no list of sheets"},
		{"50,000 merged areas", inSheet("</sheetData>", "</sheetData><mergeCells>"+areas(50_000)+"</mergeCells>"), ""},
	} {
		t.Run(tt.name, func(t *testing.T) {
			begin := time.Now()
			if tt.words != "" {
				mustRefuse(t, tt.data, grid.DefaultLimits(), tt.words)
			} else {
				wantPlain(t, mustRead(t, tt.data))
			}
			if took := time.Since(begin); took > 4*time.Second {
				t.Errorf("it took %v", took)
			}
		})
	}
}

// overlapping is a package whose directory lists one part n times more.
func overlapping(t *testing.T, n int) []byte {
	t.Helper()
	data := pack(t, workbookFiles(sheetOf(plainRows)))
	at := bytes.Index(data, []byte("PK\x01\x02"))
	end := bytes.Index(data, []byte("PK\x05\x06"))
	directory := data[at:end]
	entry := directory[bytes.LastIndex(directory, []byte("PK\x01\x02")):]
	out := append(bytes.Clone(data[:end]), bytes.Repeat(entry, n)...)
	size := len(out) - at
	tail := bytes.Clone(data[end:])
	count := bytes.Count(directory, []byte("PK\x01\x02")) + n
	for _, place := range []int{8, 10} {
		tail[place], tail[place+1] = byte(count), byte(count>>8)
	}
	for i := range 4 {
		tail[12+i] = byte(size >> (8 * i))
	}
	return append(out, tail...)
}

// areas are n merged areas of two cells each.
func areas(n int) string {
	var b strings.Builder
	for i := range n {
		fmt.Fprintf(&b, `<mergeCell ref="D%d:E%d"/>`, i+10, i+10)
	}
	return b.String()
}

// Long texts, long numbers and texts that look like formulas come as they are.
func TestOddValues(t *testing.T) {
	for name, tt := range map[string]struct {
		xml  string
		want grid.Cell
	}{
		"more digits than a number holds": {`<c r="A1"><v>12345678901234567890</v></c>`, grid.Cell{Kind: grid.Number, Text: "1.23457E+19", Number: 12345678901234567890}},
		"blanks around a number": {`<c r="A1"><v> 7.5
</v></c>`, grid.Cell{Kind: grid.Number, Text: "7.5", Number: 7.5}},
		"blanks around a shared text":   {`<c r="A1" t="s"><v> 0 </v></c>`, grid.Cell{Kind: grid.String, Text: "Zone"}},
		"blanks for a shared text":      {`<c r="A1" t="b"><v>1</v></c><c r="B1" t="s"><v> </v></c>`, grid.Cell{Kind: grid.Boolean, Text: "TRUE", Number: 1}},
		"a date beyond the calendar":    {`<c r="A1" s="2"><v>99999999</v></c>`, grid.Cell{Kind: grid.Date, Text: "99999999", Number: 99999999, Extra: grid.Extra{Format: "d-mmm"}.Share()}},
		"a formula that is text":        {`<c r="A1" t="str"><v>=cmd|' /C calc'!A0</v></c>`, grid.Cell{Kind: grid.String, Text: "=cmd|' /C calc'!A0"}},
		"a function that is text":       {`<c r="A1" t="inlineStr"><is><t>@SUM(1)</t></is></c>`, grid.Cell{Kind: grid.String, Text: "@SUM(1)"}},
		"a sign in front of text":       {`<c r="A1" t="str"><v>-1+1</v></c>`, grid.Cell{Kind: grid.String, Text: "-1+1"}},
		"markup that is text":           {`<c r="A1" t="str"><v>&lt;script&gt;</v></c>`, grid.Cell{Kind: grid.String, Text: "<script>"}},
		"right to left":                 {`<c r="A1" t="str"><v>` + "\u202eabc" + `</v></c>`, grid.Cell{Kind: grid.String, Text: "\u202eabc"}},
		"the longest text of a cell":    {`<c r="A1" t="str"><v>` + strings.Repeat("x", 32_767) + `</v></c>`, grid.Cell{Kind: grid.String, Text: strings.Repeat("x", 32_767)}},
		"longer than a cell may be":     {`<c r="A1" t="str"><v>` + strings.Repeat("x", 100_000) + `</v></c>`, grid.Cell{Kind: grid.String, Text: strings.Repeat("x", 100_000)}},
		"a circle of formulas":          {`<c r="A1"><f>B1+1</f><v>4</v></c><c r="B1"><f>A1+1</f><v>5</v></c>`, grid.Cell{Kind: grid.Number, Text: "4", Number: 4, Formula: true}},
		"a formula of another workbook": {`<c r="A1"><f>[1]Sheet1!A1</f><v>4</v></c>`, grid.Cell{Kind: grid.Number, Text: "4", Number: 4, Formula: true}},
		"a formula that would fetch":    {`<c r="A1" t="str"><f>WEBSERVICE("http://example.invalid")</f><v>x</v></c>`, grid.Cell{Kind: grid.String, Text: "x", Formula: true}},
		"a reference that is lost":      {`<c r="A1" t="e"><f>#REF!</f><v>#REF!</v></c>`, grid.Cell{Kind: grid.Error, Text: "#REF!", Formula: true}},
		"a spill that is blocked":       {`<c r="A1" t="e"><v>#SPILL!</v></c>`, grid.Cell{Kind: grid.Error, Text: "#SPILL!"}},
	} {
		t.Run(name, func(t *testing.T) {
			got := *cellAt(t, mustRead(t, pack(t, workbookFiles(sheetOf(`<row r="1">`+tt.xml+`</row>`)))), 0, "A1").Cell
			if len(got.Text) > 1000 && got.Text != tt.want.Text {
				t.Fatalf("%d bytes of text, want %d", len(got.Text), len(tt.want.Text))
			}
			if !got.Equal(tt.want) {
				t.Errorf("got  %+v\nwant %+v", got, tt.want)
			}
		})
	}
}
