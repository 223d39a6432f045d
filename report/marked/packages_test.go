package marked_test

import (
	"archive/zip"
	"bytes"
	"encoding/xml"
	"fmt"
	"io"
	"maps"
	"slices"
	"strings"
	"testing"
	"time"
	"unicode/utf16"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/source"
	"lineaudit/report/marked"
)

const (
	mainNS = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
	relNS  = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
	pkgNS  = "http://schemas.openxmlformats.org/package/2006/relationships"
	sheet1 = "xl/worksheets/sheet1.xml"
)

// small returns the parts of a small workbook: A1 "Tap", B1 7.5.
func small() map[string]string {
	return map[string]string{
		"[Content_Types].xml": `<?xml version="1.0" encoding="UTF-8"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/>` +
			`<Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/></Types>`,
		"_rels/.rels":                `<Relationships xmlns="` + pkgNS + `"><Relationship Id="rId1" Type="` + relNS + `/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
		"xl/workbook.xml":            `<workbook xmlns="` + mainNS + `" xmlns:r="` + relNS + `"><sheets><sheet name="Devices" sheetId="1" r:id="rId1"/></sheets></workbook>`,
		"xl/_rels/workbook.xml.rels": `<Relationships xmlns="` + pkgNS + `"><Relationship Id="rId1" Type="` + relNS + `/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
		sheet1:                       `<worksheet xmlns="` + mainNS + `" xmlns:r="` + relNS + `"><sheetData><row r="1"><c r="A1" t="inlineStr"><is><t>Tap</t></is></c><c r="B1"><v>7.5</v></c></row></sheetData></worksheet>`,
	}
}

// with replaces text in a part; a text that is not there breaks the test.
func with(t *testing.T, parts map[string]string, name, old, fresh string) {
	t.Helper()
	if !strings.Contains(parts[name], old) {
		t.Fatalf("%s has no %q", name, old)
	}
	parts[name] = strings.Replace(parts[name], old, fresh, 1)
}

func pack(t *testing.T, parts map[string]string) []byte {
	t.Helper()
	var b bytes.Buffer
	z := zip.NewWriter(&b)
	for _, name := range slices.Sorted(maps.Keys(parts)) {
		w, err := z.Create(name)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := io.WriteString(w, parts[name]); err != nil {
			t.Fatal(err)
		}
	}
	if err := z.Close(); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// onB1 is one finding on B1.
func onB1() []*audit.Finding {
	at := schedule.At("a.xlsx", "Devices", 1, 2)
	return []*audit.Finding{{Rule: audit.Rules()[0], Place: "control VC-1", Grade: audit.Danger, Certainty: audit.Certain, At: at, Message: "80 W on a 50 W control", Cells: []audit.Evidence{{At: at}}}}
}

// A part whose name would lead out of the folder that a copy is unpacked into
// is carried into no copy: the findings stand in a workbook of their own.
func TestPartsThatLeadOutAreNotCopied(t *testing.T) {
	for _, tt := range []struct {
		name string
		out  bool
	}{
		{"../evil.xml", true}, {"xl/../../evil.xml", true}, {"/evil.xml", true}, {`..\evil.xml`, true}, {`\evil.xml`, true}, {`C:\evil.xml`, true}, {"c:evil.xml", true},
		{"custom/..evil.xml", false}, {"custom/a:b.xml", false},
	} {
		t.Run(tt.name, func(t *testing.T) {
			parts := small()
			parts[tt.name] = "<evil/>"
			data := pack(t, parts)
			read := func(b []byte) (*grid.Book, error) { return source.Parse(t.Context(), "a.xlsx", b, source.Options{}) }
			b, err := read(data)
			if err != nil {
				t.Fatal(err)
			}
			var copied bytes.Buffer
			why, err := marked.Write(&copied, marked.Source{Book: b, Data: data, Read: read}, onB1())
			if err != nil {
				t.Fatal(err)
			}
			if strings.Contains(why, "leads out of it") != tt.out {
				t.Errorf("why: %q", why)
			}
			z, err := zip.NewReader(bytes.NewReader(copied.Bytes()), int64(copied.Len()))
			if err != nil {
				t.Fatal(err)
			}
			found := slices.ContainsFunc(z.File, func(f *zip.File) bool { return strings.Contains(f.Name, "evil") || strings.Contains(f.Name, "a:b") })
			if found == tt.out {
				t.Errorf("the part is in the copy: %v", found)
			}
		})
	}
}

// Each case is a workbook of a kind that some library loses something of; the
// copy is made in place, keeps every part that need not change byte by byte,
// and stays well-formed.
func TestKindsOfWorkbooks(t *testing.T) {
	vml := `<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel"><v:shape id="CheckBox28" type="#x"><br></v:shape><v:shape id="_x0000_s2049"/></xml>`
	sheetRels := "xl/worksheets/_rels/sheet1.xml.rels"
	rels := func(entries string) string {
		return `<Relationships xmlns="` + pkgNS + `">` + entries + `</Relationships>`
	}
	rel := func(id, kind, target string) string {
		return fmt.Sprintf(`<Relationship Id="%s" Type="%s/%s" Target="%s"/>`, id, relNS, kind, target)
	}
	tests := map[string]struct {
		change func(t *testing.T, p map[string]string)
		want   map[string][]string // texts that a part of the copy must hold
		not    map[string][]string // texts that it must not
	}{
		"no styles": {func(*testing.T, map[string]string) {}, map[string][]string{"xl/styles.xml": {"<dxfs count=\"4\">"}}, nil},
		"empty styles": {func(t *testing.T, p map[string]string) {
			p["xl/styles.xml"] = `<styleSheet xmlns="` + mainNS + `"/>`
			with(t, p, "xl/_rels/workbook.xml.rels", "</Rel", rel("rId2", "styles", "styles.xml")+"</Rel")
		}, map[string][]string{"xl/styles.xml": {"<dxfs count=\"4\">"}}, nil},
		"styles with a list of formats": {func(t *testing.T, p map[string]string) {
			p["xl/styles.xml"] = `<styleSheet xmlns="` + mainNS + `"><fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders><cellXfs count="2"><xf/><xf numFmtId="14"/></cellXfs><dxfs count="1"><dxf/></dxfs></styleSheet>`
			with(t, p, "xl/_rels/workbook.xml.rels", "</Rel", rel("rId2", "styles", "styles.xml")+"</Rel")
		}, map[string][]string{"xl/styles.xml": {`<dxfs count="5"><dxf/>`, `<xf/><xf numFmtId="14"/>`}, sheet1: {`dxfId="1"`}}, nil},
		"Strict": {func(t *testing.T, p map[string]string) {
			for name := range p {
				p[name] = strings.ReplaceAll(strings.ReplaceAll(p[name], mainNS, "http://purl.oclc.org/ooxml/spreadsheetml/main"), relNS, "http://purl.oclc.org/ooxml/officeDocument/relationships")
			}
		}, nil, map[string][]string{"*": {mainNS, relNS + "/"}}},
		"prefixed names": {func(t *testing.T, p map[string]string) {
			p[sheet1] = `<x:worksheet xmlns:x="` + mainNS + `"><x:sheetData><x:row r="1"><x:c r="B1"><x:v>7.5</x:v></x:c></x:row></x:sheetData></x:worksheet>`
			p["xl/workbook.xml"] = `<x:workbook xmlns:x="` + mainNS + `" xmlns:q="` + relNS + `"><x:sheets><x:sheet name="Devices" sheetId="1" q:id="rId1"/></x:sheets></x:workbook>`
		}, map[string][]string{sheet1: {"<x:cfRule", "<x:legacyDrawing"}, "xl/workbook.xml": {`<x:sheet name="Findings" sheetId="2" q:id=`}}, nil},
		"form controls": {func(t *testing.T, p map[string]string) {
			p["xl/drawings/vmlDrawing1.vml"] = vml
			p[sheetRels] = rels(rel("rId7", "vmlDrawing", "../drawings/vmlDrawing1.vml"))
			with(t, p, sheet1, "</worksheet>", `<legacyDrawing r:id="rId7"/></worksheet>`)
		}, map[string][]string{"xl/drawings/vmlDrawing1.vml": {strings.TrimSuffix(vml, "</xml>"), `id="_x0000_s2050"`}, sheet1: {`<legacyDrawing r:id="rId7"/>`}}, nil},
		"embedded object": {func(t *testing.T, p map[string]string) {
			p["xl/embeddings/oleObject1.bin"] = "\xd0\xcf\x11\xe0object"
			p["xl/drawings/vmlDrawing1.vml"] = vml
			p[sheetRels] = rels(rel("rId7", "vmlDrawing", "../drawings/vmlDrawing1.vml") + rel("rId8", "oleObject", "../embeddings/oleObject1.bin"))
			with(t, p, sheet1, "</worksheet>", `<legacyDrawing r:id="rId7"/><oleObjects><oleObject progId="Package" shapeId="2049" r:id="rId8"/></oleObjects></worksheet>`)
		}, map[string][]string{sheet1: {`<oleObjects><oleObject progId="Package" shapeId="2049" r:id="rId8"/></oleObjects>`}}, nil},
		"threaded comment": {func(t *testing.T, p map[string]string) {
			p["xl/comments1.xml"] = `<comments xmlns="` + mainNS + `"><authors><author>tc=1</author></authors><commentList><comment ref="B1" authorId="0" shapeId="0"><text><t>thread</t></text></comment></commentList></comments>`
			p["xl/threadedComments/threadedComment1.xml"] = `<ThreadedComments xmlns="http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments"><threadedComment ref="B1" id="{1}"><text>thread</text></threadedComment></ThreadedComments>`
			p["xl/drawings/vmlDrawing1.vml"] = vml
			p[sheetRels] = rels(rel("rId7", "vmlDrawing", "../drawings/vmlDrawing1.vml") + rel("rId8", "comments", "../comments1.xml") +
				`<Relationship Id="rId9" Type="http://schemas.microsoft.com/office/2017/10/relationships/threadedComment" Target="../threadedComments/threadedComment1.xml"/>`)
			with(t, p, sheet1, "</worksheet>", `<legacyDrawing r:id="rId7"/></worksheet>`)
		}, map[string][]string{"xl/comments1.xml": {"<t>thread</t></text></comment>"}, sheet1: {"<cfRule"}}, nil},
		"note with rich text": {func(t *testing.T, p map[string]string) {
			p["xl/comments1.xml"] = `<comments xmlns="` + mainNS + `"><authors><author>A</author></authors><commentList><comment ref="B1" authorId="0"><text><r><rPr><b/></rPr><t>measured</t></r></text></comment></commentList></comments>`
			p["xl/drawings/vmlDrawing1.vml"] = vml
			p[sheetRels] = rels(rel("rId7", "vmlDrawing", "../drawings/vmlDrawing1.vml") + rel("rId8", "comments", "../comments1.xml"))
			with(t, p, sheet1, "</worksheet>", `<legacyDrawing r:id="rId7"/></worksheet>`)
		}, map[string][]string{"xl/comments1.xml": {"<r><rPr><b/></rPr><t>measured</t></r><r>", "Finding 1, danger", "<author>A</author><author>lineaudit</author>"}, "xl/drawings/vmlDrawing1.vml": {vml}}, nil},
		"notes without a drawing": {func(t *testing.T, p map[string]string) {
			p["xl/comments1.xml"] = `<comments xmlns="` + mainNS + `"><authors/><commentList><comment ref="A1" authorId="0"><text><t>old</t></text></comment></commentList></comments>`
			p[sheetRels] = rels(rel("rId8", "comments", "../comments1.xml"))
		}, map[string][]string{"xl/drawings/auditNotes1.vml": {"<x:Row>0</x:Row><x:Column>0</x:Column>", "<x:Row>0</x:Row><x:Column>1</x:Column>"}, sheet1: {"<legacyDrawing r:id="}}, nil},
		"macros": {func(t *testing.T, p map[string]string) {
			p["xl/vbaProject.bin"] = "macros"
			with(t, p, "xl/_rels/workbook.xml.rels", "</Rel", `<Relationship Id="rId5" Type="http://schemas.microsoft.com/office/2006/relationships/vbaProject" Target="vbaProject.bin"/></Rel`)
		}, map[string][]string{"xl/workbook.xml": {`<bookViews><workbookView activeTab="1"/></bookViews><sheets><sheet name="Devices" sheetId="1" r:id="rId1"/><sheet name="Findings"`}}, nil},
		"names of sheets": {func(t *testing.T, p map[string]string) {
			with(t, p, "xl/workbook.xml", "</sheets>", `</sheets><definedNames><definedName name="taps" localSheetId="0">Devices!$B$1</definedName></definedNames>`)
			with(t, p, "xl/workbook.xml", "<sheets>", `<bookViews><workbookView activeTab="0" firstSheet="0"/><workbookView activeTab="0"/></bookViews><sheets>`)
		}, map[string][]string{"xl/workbook.xml": {`name="taps" localSheetId="1"`, `name="_xlnm.Print_Titles" localSheetId="0">&#39;Findings&#39;!$4:$4`}, "xl/worksheets/findings1.xml": {`workbookViewId="0"`, `workbookViewId="1"`}}, nil},
		"protected sheet": {func(t *testing.T, p map[string]string) {
			with(t, p, sheet1, "</sheetData>", `</sheetData><sheetProtection sheet="1" objects="1" scenarios="1"/>`)
		}, map[string][]string{sheet1: {`<sheetProtection sheet="1" objects="1" scenarios="1"/><conditionalFormatting`}}, nil},
		"conditional formats and their extensions": {func(t *testing.T, p map[string]string) {
			with(t, p, sheet1, "</worksheet>", `<conditionalFormatting sqref="B1"><cfRule type="dataBar" priority="2"><dataBar><cfvo type="min"/><cfvo type="max"/><color rgb="FF00FF00"/></dataBar></cfRule></conditionalFormatting>`+
				`<extLst><ext xmlns:x14="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main" uri="{78C0D931-6437-407d-A8EE-F0AAD7539E65}"><x14:conditionalFormattings><x14:conditionalFormatting><x14:cfRule type="iconSet" priority="1" id="{1}"><x14:iconSet/></x14:cfRule></x14:conditionalFormatting></x14:conditionalFormattings></ext></extLst></worksheet>`)
		}, map[string][]string{sheet1: {`type="dataBar" priority="3"`, `type="iconSet" priority="2"`, `type="expression" dxfId="0" priority="1"`}}, nil},
		"conditional formats of a pivot table": {func(t *testing.T, p map[string]string) {
			with(t, p, sheet1, "</worksheet>", `<conditionalFormatting pivot="1" sqref="B1"><cfRule type="top10" priority="4" rank="3"/></conditionalFormatting></worksheet>`)
		}, map[string][]string{sheet1: {`type="top10" priority="4"`, `type="expression" dxfId="0" priority="5"`}}, nil},
		"table on the sheet": {func(t *testing.T, p map[string]string) {
			p["xl/tables/table1.xml"] = `<table xmlns="` + mainNS + `" id="1" name="T" displayName="T" ref="A1:B1"><tableColumns count="2"><tableColumn id="1" name="Tap"/><tableColumn id="2" name="7.5"/></tableColumns></table>`
			p[sheetRels] = rels(rel("rId3", "table", "../tables/table1.xml"))
			with(t, p, sheet1, "</worksheet>", `<tableParts count="1"><tablePart r:id="rId3"/></tableParts></worksheet>`)
		}, map[string][]string{sheet1: {`/><tableParts count="1">`}}, nil},
		"link on the cell": {func(t *testing.T, p map[string]string) {
			with(t, p, sheet1, "</worksheet>", `<hyperlinks><hyperlink ref="A1:B2" location="Devices!A9"/></hyperlinks></worksheet>`)
		}, map[string][]string{sheet1: {`<hyperlinks><hyperlink ref="A1:B2" location="Devices!A9"/></hyperlinks>`}}, nil},
		"signed": {func(t *testing.T, p map[string]string) {
			p["_xmlsignatures/origin.sigs"] = "x"
			with(t, p, "_rels/.rels", "</Rel", `<Relationship Id="rId4" Type="http://schemas.openxmlformats.org/package/2006/relationships/digital-signature/origin" Target="_xmlsignatures/origin.sigs"/></Rel`)
		}, map[string][]string{"xl/worksheets/findings1.xml": {"no longer signed"}}, nil},
		"part names in other letters": {func(t *testing.T, p map[string]string) {
			p["xl/worksheets/Sheet1.XML"] = p[sheet1]
			delete(p, sheet1)
		}, map[string][]string{"xl/worksheets/Sheet1.XML": {"<cfRule"}}, nil},
		"a sheet called Findings": {func(t *testing.T, p map[string]string) {
			with(t, p, "xl/workbook.xml", "</sheets>", `<sheet name="findings" sheetId="2" r:id="rId1"/></sheets>`)
		}, map[string][]string{"xl/workbook.xml": {`name="Findings 2" sheetId="3"`}}, nil},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			p := small()
			tt.change(t, p)
			data := pack(t, p)
			got := parts(t, copied(t, "a.xlsx", data, onB1()))
			for part, content := range p {
				if _, ok := got[part]; !ok {
					t.Errorf("the part %s is gone", part)
				}
				ext := part[strings.LastIndexByte(part, '.'):]
				if must := strings.HasPrefix(part, "xl/tables") || ext == ".bin" || strings.HasPrefix(part, "xl/threaded"); must && got[part] != content {
					t.Errorf("the part %s has changed", part)
				}
			}
			for part, content := range got {
				if strings.HasSuffix(part, ".vml") {
					continue
				}
				if part != "_xmlsignatures/origin.sigs" && !strings.HasSuffix(part, ".bin") {
					for d := xml.NewDecoder(strings.NewReader(content)); ; {
						if _, err := d.Token(); err == io.EOF {
							break
						} else if err != nil {
							t.Fatalf("%s: %v", part, err)
						}
					}
				}
			}
			for part, texts := range tt.want {
				for _, text := range texts {
					if !strings.Contains(got[part], text) {
						t.Errorf("%s has no %q:\n%s", part, text, got[part])
					}
				}
			}
			for _, text := range tt.not["*"] {
				for part, content := range got {
					if strings.Contains(content, text) {
						t.Errorf("%s holds %q", part, text)
					}
				}
			}
		})
	}
}

// Names of parts with backslashes, folders as parts, and parts in UTF-16, which
// some exporters write, are copied in a form that every program reads.
func TestOddPackages(t *testing.T) {
	t.Run("backslashes and folders", func(t *testing.T) {
		p := map[string]string{"xl/": ""}
		for name, content := range small() {
			p[strings.ReplaceAll(name, "/", "\\")] = content
		}
		got := parts(t, copied(t, "a.xlsx", pack(t, p), onB1()))
		if _, ok := got["xl/worksheets/sheet1.xml"]; !ok || len(got) < len(p) {
			t.Errorf("parts %v", slices.Sorted(maps.Keys(got)))
		}
	})
	t.Run("UTF-16", func(t *testing.T) {
		p := small()
		for _, name := range []string{"xl/workbook.xml", "_rels/.rels"} {
			var b bytes.Buffer
			b.WriteString("\xff\xfe")
			for _, u := range utf16.Encode([]rune(`<?xml version="1.0" encoding="UTF-16"?>` + p[name])) {
				b.WriteByte(byte(u))
				b.WriteByte(byte(u >> 8))
			}
			p[name] = b.String()
		}
		got := parts(t, copied(t, "a.xlsx", pack(t, p), onB1()))
		if !strings.HasPrefix(got["xl/workbook.xml"], `<?xml version="1.0" encoding="UTF-8"`) || got["_rels/.rels"] != p["_rels/.rels"] {
			t.Errorf("workbook part %.80q", got["xl/workbook.xml"])
		}
	})
}

// A workbook that cannot be marked is left alone; its findings stand in one of their own that says why.
func TestWhatCannotBeMarked(t *testing.T) {
	p := small()
	with(t, p, sheet1, "</worksheet>", `<legacyDrawing r:id="rId99"/></worksheet>`)
	data := pack(t, p)
	var out bytes.Buffer
	why, err := marked.Write(&out, marked.Source{Book: parse(t, "a.xlsx", data), Data: data, Read: func(b []byte) (*grid.Book, error) { return parse(t, "a.xlsx", b), nil }}, onB1())
	if err != nil || !strings.Contains(why, "drawing of notes is missing") {
		t.Fatalf("%q, %v", why, err)
	}
	b := parse(t, "findings.xlsx", out.Bytes())
	if len(b.Sheets) != 1 || b.Sheets[0].Name != "Findings" || !strings.Contains(b.Sheets[0].Rows[2].At(0).Text, "left as it is") {
		t.Errorf("%+v", b.Sheets)
	}
}

// The reader of copies is asked: when a value would differ, no such copy is kept.
func TestACopyThatReadsOtherwiseIsNotKept(t *testing.T) {
	data := pack(t, small())
	var out bytes.Buffer
	why, err := marked.Write(&out, marked.Source{Book: parse(t, "a.xlsx", data), Data: data, Read: func(b []byte) (*grid.Book, error) {
		book := parse(t, "a.xlsx", b)
		for _, s := range book.Sheets {
			if s.Name == "Devices" {
				s.Rows[0].At(1).Number = 75
			}
		}
		return book, nil
	}}, onB1())
	if err != nil || !strings.Contains(why, "would change Devices!B1") {
		t.Errorf("%q, %v", why, err)
	}
}

// Fifty thousand merged areas and sixty thousand rows take seconds in a library that rewrites the sheet.
func TestLargeSheets(t *testing.T) {
	p := small()
	var rows, merges strings.Builder
	for r := 1; r <= 50_000; r++ {
		fmt.Fprintf(&rows, `<row r="%[1]d"><c r="A%[1]d" t="inlineStr"><is><t>LS-%[1]d</t></is></c><c r="B%[1]d"><v>7.5</v></c></row>`, r)
		fmt.Fprintf(&merges, `<mergeCell ref="C%[1]d:D%[1]d"/>`, r)
	}
	p[sheet1] = `<worksheet xmlns="` + mainNS + `"><sheetData>` + rows.String() + `</sheetData><mergeCells count="50000">` + merges.String() + `</mergeCells></worksheet>`
	data := pack(t, p)
	start := time.Now()
	copied(t, "a.xlsx", data, onB1())
	if took := time.Since(start); took > 5*time.Second && !slow {
		t.Errorf("the copy took %v", took)
	}
}

func TestHostileTextsInNotesAndNames(t *testing.T) {
	p := small()
	with(t, p, "xl/workbook.xml", `name="Devices"`, `name="It's &lt;b&gt; =1+1"`)
	fs := onB1()
	odd := schedule.At(fs[0].At.File(), "It's <b> =1+1", int(fs[0].At.Row), int(fs[0].At.Col))
	fs[0].At, fs[0].Cells[0].At = odd, odd
	fs[0].Message = "=cmd|' /C calc'!A0 </t></is><script>\x00\x1b[31m\u202e _x0041_ " + strings.Repeat("long ", 10_000)
	fs[0].Place = "@SUM(1)\xff"
	data := copied(t, "a.xlsx", pack(t, p), fs)
	b := parse(t, "copy.xlsx", data)
	for _, s := range b.Sheets {
		for _, r := range s.Rows {
			for c := range r.Cells() {
				if c.Formula && !strings.HasPrefix(c.Text, "It's <b> =1+1!") || len([]rune(c.Text)) > 32767 || strings.ContainsAny(c.Text+c.Note(), "\x00\x1b\u202e") {
					t.Errorf("%s!%s: %.80q", s.Name, grid.A1(r.Number, c.Col), c.Text)
				}
			}
		}
	}
	if text := b.Sheets[0].Rows[3].Cell(5).Text; !strings.HasPrefix(text, "=cmd|' /C calc'!A0 </t></is><script>") || !strings.Contains(text, " _x0041_ ") {
		t.Errorf("%.100q", text)
	}
}

// Whatever is marked, the copy reads as the original does or is refused.
func FuzzWrite(f *testing.F) {
	f.Add([]byte(small()[sheet1]))
	f.Add([]byte(`<x:worksheet xmlns:x="` + mainNS + `"><x:sheetData/><x:extLst><x:ext><a:cfRule priority="1"/></x:ext></x:extLst></x:worksheet>`))
	f.Add([]byte(`<worksheet xmlns="` + mainNS + `"><sheetData></sheetData><conditionalFormatting><cfRule priority='3'/></conditionalFormatting><hyperlinks/></worksheet>`))
	f.Fuzz(func(t *testing.T, sheet []byte) {
		p := small()
		p[sheet1] = string(sheet)
		data := pack(t, p)
		book, err := source.Parse(t.Context(), "a.xlsx", data, source.Options{})
		if err != nil {
			return
		}
		var out bytes.Buffer
		read := func(b []byte) (*grid.Book, error) { return source.Parse(t.Context(), "a.xlsx", b, source.Options{}) }
		if _, err := marked.Write(&out, marked.Source{Book: book, Data: data, Read: read}, onB1()); err != nil {
			t.Fatal(err)
		}
		if _, err := read(out.Bytes()); err != nil {
			t.Fatalf("the copy does not open: %v", err)
		}
	})
}
