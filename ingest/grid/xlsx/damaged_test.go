package xlsx

import (
	"archive/zip"
	"bytes"
	"errors"
	"fmt"
	"runtime"
	"strings"
	"testing"
	"time"

	"lineaudit/ingest/grid"
)

// Rows enough that the sheet part spans several reads.
func manyRows(n int) string {
	var b strings.Builder
	for i := 1; i <= n; i++ {
		fmt.Fprintf(&b, `<row r="%d"><c r="A%d" t="s"><v>0</v></c><c r="B%d"><v>%d.5</v></c><c r="C%d" t="inlineStr"><is><t>Pier %d</t></is></c></row>`, i, i, i, i, i, i)
	}
	return b.String()
}

// A damaged part is an error, never a shorter or different sheet.
func TestDamagedParts(t *testing.T) {
	good := sheetOf(manyRows(3000))
	set := func(name string, lie func(*zip.FileHeader)) func() []file {
		return func() []file {
			files := workbookFiles(good)
			for i := range files {
				if files[i].name == name {
					files[i].lie = lie
				}
			}
			return files
		}
	}
	replace := func(name, old, new string) func() []file {
		return func() []file {
			files := workbookFiles(good)
			for i := range files {
				if files[i].name == name {
					changed := strings.Replace(files[i].text, old, new, 1)
					if changed == files[i].text {
						t.Fatalf("%q is not in %s", old, name)
					}
					files[i].text = changed
				}
			}
			return files
		}
	}
	cut := func(name string, keep float64) func() []file {
		return func() []file {
			files := workbookFiles(good)
			for i := range files {
				if files[i].name == name {
					files[i].text = files[i].text[:int(float64(len(files[i].text))*keep)]
				}
			}
			return files
		}
	}
	const sheet, texts = "xl/worksheets/sheet1.xml", "xl/sharedStrings.xml"
	wrongSum := func(h *zip.FileHeader) { h.CRC32 ^= 1 }
	for _, tt := range []struct {
		name  string
		files func() []file
		words string
	}{
		{"sheet with a wrong checksum", set(sheet, wrongSum), "checksum"},
		{"texts with a wrong checksum", set(texts, wrongSum), "checksum"},
		{"formats with a wrong checksum", set("xl/styles.xml", wrongSum), "checksum"},
		{"sheet longer than declared", set(sheet, func(h *zip.FileHeader) { h.UncompressedSize64 -= 5000 }), "longer"},
		{"sheet declared empty", set(sheet, func(h *zip.FileHeader) { h.UncompressedSize64 = 0 }), "longer"},
		{"sheet shorter than declared", set(sheet, func(h *zip.FileHeader) { h.UncompressedSize64 += 5 }), "shorter"},
		{"sheet cut in half", cut(sheet, 0.5), "breaks off"},
		{"sheet cut by its last tag", cut(sheet, 0.99999), "breaks off"},
		{"texts cut in half", cut(texts, 0.5), "breaks off"},
		{"sheet list cut", cut("xl/workbook.xml", 0.8), "breaks off"},
		{"relationships cut", cut("xl/_rels/workbook.xml.rels", 0.8), "breaks off"},
		{"stray ampersand in a text", replace(sheet, "Pier 2000", "Pier & 2000"), "XML does not allow"},
		{"stray ampersand in a value", replace(sheet, "<v>2000.5</v>", "<v>2000&5</v>"), "XML does not allow"},
		{"unknown entity", replace(sheet, "Pier 2000", "Pier &nbsp;"), "XML does not allow"},
		{"control byte in a text", replace(sheet, "Pier 2000", "Pier \x02"), "XML does not allow"},
		{"zero byte in a text", replace(sheet, "Pier 2000", "Pier \x00"), "XML does not allow"},
		{"control character by number", replace(sheet, "Pier 2000", "Pier &#2;"), "XML does not allow"},
		{"bytes that are not UTF-8", replace(sheet, "Pier 2000", "Pier \xff"), "UTF-8"},
		{"bytes that are not UTF-8 in the texts", replace(texts, "Zone", "Zo\xe9ne"), "UTF-8"},
		{"tag not closed", replace(sheet, `</row><row r="2000">`, `<row r="2000">`), "XML"},
		{"tag closed twice", replace(sheet, `</row><row r="2000">`, `</row></row><row r="2000">`), "XML"},
		{"tag closed by another", replace(sheet, `<v>2000.5</v>`, `<v>2000.5</w>`), "XML"},
		{"attribute without quotes", replace(sheet, `<row r="2000">`, `<row r=2000>`), "XML"},
		{"attribute without value", replace(sheet, `<row r="2000">`, `<row hidden>`), "XML"},
		{"attributes run together", replace(sheet, `<row r="2000">`, `<row r="2000"ht="5">`), "XML"},
		{"less-than in an attribute", replace(sheet, `<row r="2000">`, `<row r="2000" x="<">`), "XML"},
		{"text between rows", replace(sheet, `<row r="2000">`, `x<row r="2000">`), "between its rows"},
		{"text between cells", replace(sheet, `<row r="2000">`, `<row r="2000">x`), "between its cells"},
		{"text behind the root", replace(sheet, `</worksheet>`, `</worksheet>x`), "outside"},
		{"second root", replace(sheet, `</worksheet>`, `</worksheet><worksheet/>`), "root"},
		{"sheet without rows part", func() []file { return workbookFiles(head + `<worksheet xmlns="` + mainSpace + `"/>`) }, "no rows"},
		{"empty sheet part", func() []file { return workbookFiles("") }, "empty"},
		{"shared text past the last", replace(sheet, `<c r="A2000" t="s"><v>0</v></c>`, `<c r="A2000" t="s"><v>3</v></c>`), "A2000"},
		{"shared text below the first", replace(sheet, `<c r="A2000" t="s"><v>0</v></c>`, `<c r="A2000" t="s"><v>-1</v></c>`), "A2000"},
		{"shared text that is no number", replace(sheet, `<c r="A2000" t="s"><v>0</v></c>`, `<c r="A2000" t="s"><v>x</v></c>`), "A2000"},
		{"cell name that is none", replace(sheet, `r="A2000"`, `r="2A"`), "2A"},
		{"cell right of the last column", replace(sheet, `r="A2000"`, `r="XFE2000"`), "XFE2000"},
		{"cell below the last row", replace(sheet, `r="A2000"`, `r="A1048577"`), "A1048577"},
		{"row 0", replace(sheet, `<row r="2000">`, `<row r="0">`), "1,048,576"},
		{"row below the last", replace(sheet, `<row r="2000">`, `<row r="1048577">`), "1,048,576"},
		{"row numbered in words", replace(sheet, `<row r="2000">`, `<row r="x">`), "1,048,576"},
		{"merge of what is not there", replace(sheet, `</worksheet>`, `<mergeCells><mergeCell ref="A0:B1"/></mergeCells></worksheet>`), "merges"},
		{"sheet part missing", replace("xl/_rels/workbook.xml.rels", "worksheets/sheet1.xml", "worksheets/sheet9.xml"), "missing"},
		{"target outside the package", replace("xl/_rels/workbook.xml.rels", "worksheets/sheet1.xml", "../../../etc/passwd"), "missing"},
		{"target on the web", replace("xl/_rels/workbook.xml.rels", "worksheets/sheet1.xml", "http://example.invalid/sheet1.xml"), "missing"},
		{"external target", replace("xl/_rels/workbook.xml.rels", `Target="worksheets/sheet1.xml"`, `Target="sheet1.xml" TargetMode="External"`), "not there"},
		{"sheet without a relationship", replace("xl/workbook.xml", `r:id="rId1"`, `r:id="rId7"`), "not there"},
		{"no sheets", replace("xl/workbook.xml", `<sheet name="Loads" sheetId="1" r:id="rId1"/>`, ``), "empty"},
		{"no sheet list", func() []file { return []file{{name: "_rels/.rels", text: rels()}} }, "no list of sheets"},
		{"two parts of one name", func() []file { return append(workbookFiles(good), file{name: sheet, text: sheetOf("")}) }, "two parts"},
		{"two parts of one name but for the case", func() []file {
			return append(workbookFiles(good), file{name: "XL/Worksheets/Sheet1.xml", text: sheetOf("")})
		}, "two parts"},
		{"notes part missing", func() []file {
			return workbookFiles(good, file{name: "xl/worksheets/_rels/sheet1.xml.rels", text: rels(relTo("a", "comments", "../comments1.xml"))})
		}, "missing"},
		{"document type", replace(sheet, `<worksheet`, `<!DOCTYPE worksheet [<!ENTITY a "b">]><worksheet`), "document type"},
		{"document type in the texts", replace(texts, `<sst`, `<!doctype sst><sst`), "document type"},
		{"encrypted member", set(sheet, func(h *zip.FileHeader) { h.Flags |= 1 }), "password"},
		{"unknown packing", set(sheet, func(h *zip.FileHeader) { h.Method = 14 }), "packed"},
	} {
		t.Run(tt.name, func(t *testing.T) { mustRefuse(t, pack(t, tt.files()), grid.DefaultLimits(), tt.words) })
	}
}

// Cut short anywhere, and with any one byte of the packed sheet changed, a
// workbook is refused, or read exactly as it was.
func TestFlippedAndCut(t *testing.T) {
	data := pack(t, workbookFiles(sheetOf(manyRows(300))))
	want := dump(mustRead(t, data))
	for _, keep := range []int{0, 1, 4, 30, len(data) / 2, len(data) * 95 / 100, len(data) - 10, len(data) - 1} {
		if _, err := Read("x", data[:keep], grid.DefaultLimits()); err == nil {
			t.Errorf("cut to %d of %d bytes it was read", keep, len(data))
		}
	}
	changed, step := 0, 1
	if raceEnabled {
		step = 17
	}
	for i := 0; i < len(data); i += step {
		bad := bytes.Clone(data)
		bad[i] ^= 1 << (i % 8)
		book, err := Read("jobs/test.xlsx", bad, grid.DefaultLimits())
		if err != nil {
			var u *grid.Unreadable
			if !errors.As(err, &u) {
				t.Fatalf("byte %d: the error is %T %v", i, err, err)
			}
			changed++
			continue
		}
		if got := dump(book); got != want {
			t.Fatalf("with byte %d changed it reads otherwise, without an error", i)
		}
	}
	if changed < len(data)/step/2 {
		t.Errorf("only %d of %d changed bytes were noticed", changed, len(data)/step)
	}
}

// What is big on purpose is refused or read in little time and memory.
func TestHostile(t *testing.T) {
	small := grid.DefaultLimits()
	small.MaxInflated, small.MaxCells, small.MaxRows, small.MaxMerges, small.MaxText, small.MaxCellText, small.MaxSheets, small.MaxMembers = 12<<20, 50_000, 20_000, 1000, 1<<20, 100_000, 20, 200
	many := func(s string, n int) string { return strings.Repeat(s, n) }
	inSheet := func(rows string) func() []file { return func() []file { return workbookFiles(sheetOf(rows)) } }
	texts := func(body string) func() []file {
		return func() []file {
			return workbookFiles(sheetOf(plainRows), file{name: "xl/sharedStrings.xml", text: head + `<sst xmlns="` + mainSpace + `">` + body + `</sst>`})
		}
	}
	for _, tt := range []struct {
		name  string
		files func() []file
		words string // "" if it is to be read
		cells int
	}{
		{"bomb of blanks", inSheet(many(" ", 11<<20)), "times its size", 0},
		{"unpacks past the limit", inSheet(many(`<row r="1"><c r="A1"><v>`, 1) + many("1234567890qwertzuiop", 1<<20) + `</v></c></row>`), "unpack", 0},
		{"size that lies about a bomb", func() []file {
			f := workbookFiles(sheetOf(many(" ", 11<<20)))
			f[6].lie = func(h *zip.FileHeader) { h.UncompressedSize64 = 1000 }
			return f
		}, "longer", 0},
		{"a million empty cells in one row", inSheet(`<row r="1">` + many("<c/>", 1_000_000) + `</row>`), "16,384", 0},
		{"16,384 formatted empty cells a row", inSheet(many(`<row>`+many(`<c s="1"/>`, 16384)+`</row>`, 40)), "", 0},
		{"first and last column in many rows", inSheet(many(`<row><c r="A1"><v>1</v></c></row>`, 0) + wide(5000)), "", 10000},
		{"more cells than the limit", inSheet(many(`<row><c><v>1</v></c><c><v>2</v></c><c><v>2</v></c><c><v>2</v></c></row>`, 19_000)), "cells", 0},
		{"more rows than the limit", inSheet(many(`<row><c><v>1</v></c></row>`, 20_001)), "rows", 0},
		{"empty rows to the last", inSheet(many(`<row/>`, 1048575) + `<row><c><v>1</v></c></row>`), "", 1},
		{"more rows than a sheet", inSheet(many(`<row/>`, 1048577)), "more rows", 0},
		{"long text", inSheet(`<row><c t="inlineStr"><is><t>` + many("0123456789", 10_001) + `</t></is></c></row>`), "bytes", 0},
		{"long shared text", texts(`<si><t>` + many("0123456789", 10_001) + `</t></si>`), "bytes", 0},
		{"long text used often", inSheet(`<row>` + many(`<c t="str"><v>`+many("0123456789", 9000)+`</v></c>`, 12) + `</row>`), "text", 0},
		{"shared text used often", func() []file {
			return workbookFiles(sheetOf(`<row>`+many(`<c t="s"><v>0</v></c>`, 12)+`</row>`), file{name: "xl/sharedStrings.xml", text: head + `<sst><si><t>` + many("0123456789", 9000) + `</t></si></sst>`})
		}, "text", 0},
		{"empty shared texts", texts(many("<si/>", 1_000_000)), "text", 0},
		{"many rich runs", texts(`<si>` + many("<r><rPr><b/></rPr><t>a</t></r>", 50_000) + `</si><si><t>b</t></si><si><t/></si>`), "", 4},
		{"many escapes", texts(`<si><t>` + many("_x0041_", 14_000) + `</t></si>`), "", 4},
		{"nested a million deep", inSheet(`<row><c>` + many("<a>", 1_000_000)), "deep", 0},
		{"nested in the sheet list", func() []file {
			return workbookFiles(sheetOf(""), file{name: "xl/workbook.xml", text: head + `<workbook>` + many("<a>", 300) + many("</a>", 300) + `</workbook>`})
		}, "deep", 0},
		{"merges", func() []file {
			return workbookFiles(strings.Replace(sheetOf(plainRows), "</worksheet>", "<mergeCells>"+many(`<mergeCell ref="A1:B2"/>`, 1001)+"</mergeCells></worksheet>", 1))
		}, "merged", 0},
		{"sheets", func() []file {
			return workbookFiles(sheetOf(""), file{name: "xl/workbook.xml", text: head + `<workbook xmlns:r="x"><sheets>` + many(`<sheet name="a" r:id="rId1"/>`, 21) + `</sheets></workbook>`})
		}, "sheets", 0},
		{"members", func() []file {
			f := workbookFiles(sheetOf(plainRows))
			for i := range 200 {
				f = append(f, file{name: fmt.Sprint("xl/media/", i)})
			}
			return f
		}, "parts", 0},
		{"one sheet part listed often", func() []file {
			return workbookFiles(sheetOf(many(" ", 7<<20)+plainRows), file{name: "xl/workbook.xml", text: head + `<workbook xmlns:r="x"><sheets>` + many(`<sheet name="a" r:id="rId1"/>`, 20) + `</sheets></workbook>`})
		}, "unpack", 0},
		{"an attribute without end", inSheet(`<row r="` + many("1", 9<<20)), "times its size", 0},
		{"one row number often", inSheet(many(`<row r="1"><c r="A1"><v>1</v></c></row>`, 19_000)), "", 1},
		{"cells of another row often", inSheet(`<row r="2">` + many(`<c r="A1"><v>1</v></c>`, 19_000) + `</row>`), "", 1},
		{"notes on all columns", func() []file {
			var b strings.Builder
			for col := maxCol; col > 0; col-- {
				fmt.Fprintf(&b, `<comment ref="%s1"><text><t>n</t></text></comment>`, grid.Column(col))
			}
			return workbookFiles(sheetOf(plainRows), file{name: "xl/worksheets/_rels/sheet1.xml.rels", text: rels(relTo("a", "comments", "../c.xml"))},
				file{name: "xl/c.xml", text: `<comments><commentList>` + b.String() + `</commentList></comments>`})
		}, "", maxCol + 2},
		{"notes past the limit", func() []file {
			return workbookFiles(sheetOf(plainRows), file{name: "xl/worksheets/_rels/sheet1.xml.rels", text: rels(relTo("a", "comments", "../c.xml"))},
				file{name: "xl/c.xml", text: `<comments><commentList>` + many(`<comment ref="A1"/>`, 50_001) + `</commentList></comments>`})
		}, "notes", 0},
		{"formats", func() []file {
			return workbookFiles(sheetOf(plainRows), file{name: "xl/styles.xml", text: `<styleSheet><cellXfs>` + many("<xf/>", 100_001) + `</cellXfs></styleSheet>`})
		}, "formats", 0},
		{"relationships", func() []file {
			return workbookFiles(sheetOf(plainRows), file{name: "xl/_rels/workbook.xml.rels", text: rels(many(`<Relationship Id="a" Target="b"/>`, 100_001))})
		}, "parts", 0},
		{"filters", func() []file {
			var links []string
			more := []file{{name: "xl/t.xml", text: `<table><autoFilter ref="A1:B9"/></table>`}}
			for i := range 501 {
				links = append(links, relTo(fmt.Sprint("r", i), "table", "/xl/t.xml"))
			}
			return workbookFiles(sheetOf(plainRows), append(more, file{name: "xl/worksheets/_rels/sheet1.xml.rels", text: rels(links...)})...)
		}, "filters", 0},
		{"hidden columns", func() []file {
			return workbookFiles(strings.Replace(sheetOf(plainRows), "<sheetData>", "<cols>"+many(`<col min="1" max="2" hidden="1"/>`, maxCol+1)+"</cols><sheetData>", 1))
		}, "columns", 0},
		{"attributes", inSheet(`<row ` + many(`a="1" `, 2000) + `/>`), "well-formed", 0},
		{"a long name", inSheet(`<` + many("a", 2000) + `/>`), "well-formed", 0},
		{"empty runs", texts(`<si>` + many("<r><rPr/><t/></r>", 300_000) + `</si><si><t>b</t></si><si><t/></si>`), "", 3},
		{"the largest dimension", func() []file {
			return workbookFiles(strings.Replace(sheetOf(plainRows), "<sheetData>", `<dimension ref="A1:XFD1048576"/><sheetData>`, 1))
		}, "", 4},
	} {
		t.Run(tt.name, func(t *testing.T) {
			data := pack(t, tt.files())
			var before, after runtime.MemStats
			runtime.ReadMemStats(&before)
			start := time.Now()
			book, err := read("x.xlsx", data, nil, small, true)
			took := time.Since(start)
			runtime.ReadMemStats(&after)
			if used := (after.TotalAlloc - before.TotalAlloc) >> 20; used > 120 {
				t.Errorf("it took %d MiB in all", used)
			}
			if took > 5*time.Second {
				t.Errorf("it took %v", took)
			}
			if tt.words != "" {
				mustRefuse(t, data, small, tt.words)
				return
			}
			if err != nil {
				t.Fatal(err)
			}
			if n := cellCount(book); n != tt.cells {
				t.Errorf("%d cells, want %d", n, tt.cells)
			}
		})
	}
}

// wide makes n rows with a cell in the first and the last column.
func wide(n int) string {
	var b strings.Builder
	for i := 1; i <= n; i++ {
		fmt.Fprintf(&b, `<row r="%d"><c r="A%d"><v>1</v></c><c r="XFD%d"><v>2</v></c></row>`, i, i, i)
	}
	return b.String()
}

// A reader that is told to stop stops, within a sheet too, and says what it was told.
func TestStop(t *testing.T) {
	data := pack(t, workbookFiles(sheetOf(manyRows(30_000))))
	lim := grid.DefaultLimits()
	told := errors.New("enough")
	asked := 0
	lim.Stop = func() error {
		if asked++; asked > 5 {
			return told
		}
		return nil
	}
	if _, err := Read("x.xlsx", data, lim); !errors.Is(err, told) {
		t.Errorf("the error is %v, want %v", err, told)
	}
}
