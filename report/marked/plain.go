package marked

import (
	"archive/zip"
	"bytes"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/report"
)

// plainBook writes a workbook with the cells of a file: values where they
// stood, numbers with their format, hidden and merged cells as they were. It
// returns the names that its sheets have there, by their names in the file.
func plainBook(book *grid.Book) (data []byte, names map[string]string) {
	names = map[string]string{}
	var list, rels, types strings.Builder
	var parts []string
	styles := &plainStyles{}
	for i, s := range book.Sheets {
		name := sheetName(s.Name, i, names)
		if names[s.Name] == "" {
			names[s.Name] = name
		}
		names["\x00"+strconv.Itoa(i)] = name // so that a second sheet of the name gets another
		hidden := ""
		if s.Hidden {
			hidden = ` state="hidden"`
		}
		fmt.Fprintf(&list, `<sheet name="%s" sheetId="%d"%s r:id="rId%d"/>`, escape(name), i+1, hidden, i+1)
		fmt.Fprintf(&rels, `<Relationship Id="rId%d" Type="%s/worksheet" Target="worksheets/sheet%d.xml"/>`, i+1, looseRel, i+1)
		fmt.Fprintf(&types, `<Override PartName="/xl/worksheets/sheet%d.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/>`, i+1)
		parts = append(parts, plainSheet(s, styles))
	}
	for i := range book.Sheets {
		delete(names, "\x00"+strconv.Itoa(i))
	}
	var out bytes.Buffer
	z := zip.NewWriter(&out)
	put := func(name, content string) {
		if err := deflate(z, name, []byte(xmlHead+content)); err != nil {
			panic(err) // a buffer takes everything
		}
	}
	put("[Content_Types].xml", `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/>`+
		`<Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/><Override PartName="/xl/styles.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"/>`+types.String()+`</Types>`)
	put("_rels/.rels", `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="`+looseRel+`/officeDocument" Target="xl/workbook.xml"/></Relationships>`)
	put("xl/workbook.xml", `<workbook xmlns="`+looseMain+`" xmlns:r="`+looseRel+`"><sheets>`+list.String()+`</sheets></workbook>`)
	put("xl/_rels/workbook.xml.rels", `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">`+rels.String()+
		fmt.Sprintf(`<Relationship Id="rId%d" Type="%s/styles" Target="styles.xml"/></Relationships>`, len(book.Sheets)+1, looseRel))
	put("xl/styles.xml", styles.part())
	for i, p := range parts {
		put(fmt.Sprintf("xl/worksheets/sheet%d.xml", i+1), p)
	}
	if err := z.Close(); err != nil {
		panic(err)
	}
	return out.Bytes(), names
}

// sheetName makes a name that every spreadsheet program takes.
func sheetName(name string, i int, taken map[string]string) string {
	clean := strings.Map(func(r rune) rune {
		if strings.ContainsRune(`:\/?*[]`, r) {
			return '-'
		}
		return r
	}, strings.Trim(report.Plain(name), "' "))
	if r := []rune(clean); len(r) > 24 {
		if len([]rune(name)) > 31 || clean != name {
			clean = string(r[:24])
		}
	}
	clean = strings.Trim(clean, "' ")
	if clean == "" {
		clean = fmt.Sprintf("Sheet%d", i+1)
	}
	if strings.EqualFold(clean, "history") { // kept by some programs for themselves
		clean += " sheet"
	}
	for _, t := range taken {
		if strings.EqualFold(t, clean) {
			r := []rune(clean)
			return fmt.Sprintf("%s %d", string(r[:min(len(r), 24)]), i+1)
		}
	}
	return clean
}

// plainStyles are the cell formats of a plain workbook: one for each number
// format, text that is wrapped, text that is struck through.
type plainStyles struct {
	keys []string
}

const (
	wrapKey   = "\x00wrap"
	struckKey = "\x00struck"
)

// of returns the number of a format, making it if it is new.
func (s *plainStyles) of(format string) int {
	if format == "" || strings.EqualFold(format, "General") || len(s.keys) > maxCellFormats-100 {
		return 0
	}
	if i := slices.Index(s.keys, format); i >= 0 {
		return i + 1
	}
	s.keys = append(s.keys, format)
	return len(s.keys)
}

func (s *plainStyles) part() string {
	var numbers, cells strings.Builder
	count := 0
	for _, k := range s.keys {
		switch k {
		case wrapKey:
			cells.WriteString(`<xf numFmtId="0" fontId="0" fillId="0" borderId="0" applyAlignment="1"><alignment vertical="top" wrapText="1"/></xf>`)
		case struckKey:
			cells.WriteString(`<xf numFmtId="0" fontId="1" fillId="0" borderId="0" applyFont="1"/>`)
		default:
			fmt.Fprintf(&numbers, `<numFmt numFmtId="%d" formatCode="%s"/>`, 164+count, escape(k))
			fmt.Fprintf(&cells, `<xf numFmtId="%d" fontId="0" fillId="0" borderId="0" applyNumberFormat="1"/>`, 164+count)
			count++
		}
	}
	list := ""
	if count > 0 {
		list = fmt.Sprintf(`<numFmts count="%d">%s</numFmts>`, count, numbers.String())
	}
	return `<styleSheet xmlns="` + looseMain + `">` + list + `<fonts count="2"><font><sz val="10"/><name val="Liberation Sans"/><family val="2"/></font><font><strike/><sz val="10"/><name val="Liberation Sans"/><family val="2"/></font></fonts>` +
		`<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>` +
		`<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>` +
		fmt.Sprintf(`<cellXfs count="%d"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>%s</cellXfs></styleSheet>`, len(s.keys)+1, cells.String())
}

// widest is how wide a column is made for its texts, in digits.
const widest = 48.0

// plainSheet writes a worksheet part.
func plainSheet(s *grid.Sheet, styles *plainStyles) string {
	var b strings.Builder
	b.WriteString(`<worksheet xmlns="` + looseMain + `"><sheetPr><pageSetUpPr fitToPage="1"/></sheetPr><sheetFormatPr defaultRowHeight="13.5"/>` + plainColumns(s) + `<sheetData>`)
	for i := range s.Rows {
		row := &s.Rows[i]
		if row.Number > maxSheetRows {
			break
		}
		attrs := ""
		if row.Hidden != grid.Shown {
			attrs = ` hidden="1"`
		}
		if lines := tallest(row); lines > 1 {
			attrs += fmt.Sprintf(` ht="%g" customHeight="1"`, min(409, float64(lines)*lineHeight))
		}
		fmt.Fprintf(&b, `<row r="%d"%s>`, row.Number, attrs)
		for c := range row.Cells() {
			plainCell(&b, row.Number, c, styles)
		}
		b.WriteString(`</row>`)
	}
	b.WriteString(`</sheetData>`)
	if merges := apart(s.Merges); len(merges) > 0 {
		fmt.Fprintf(&b, `<mergeCells count="%d">`, len(merges))
		for _, m := range merges {
			fmt.Fprintf(&b, `<mergeCell ref="%s:%s"/>`, cellName(m.Row1, m.Col1), cellName(m.Row2, m.Col2))
		}
		b.WriteString(`</mergeCells>`)
	}
	b.WriteString(`<pageSetup paperSize="9" orientation="landscape" fitToHeight="0"/></worksheet>`)
	return b.String()
}

func tallest(row *grid.Row) int {
	lines := 1
	for c := range row.Cells() {
		if c.Kind == grid.String {
			lines = max(lines, 1+strings.Count(c.Text, "\n"))
		}
	}
	return lines
}

func plainCell(b *strings.Builder, row int, c grid.Placed, styles *plainStyles) {
	if c.Col > maxSheetCols {
		return
	}
	name := cellName(row, c.Col)
	switch c.Kind {
	case grid.Blank, grid.NoValue:
	case grid.Number, grid.Date:
		style := ""
		if n := styles.of(c.Format()); n > 0 {
			style = fmt.Sprintf(` s="%d"`, n)
		}
		if math.IsInf(c.Number, 0) || math.IsNaN(c.Number) {
			return
		}
		fmt.Fprintf(b, `<c r="%s"%s><v>%s</v></c>`, name, style, strconv.FormatFloat(c.Number, 'G', -1, 64))
	case grid.Boolean:
		fmt.Fprintf(b, `<c r="%s" t="b"><v>%d</v></c>`, name, int(c.Number))
	default:
		style := ""
		switch {
		case c.Struck == grid.WholeStruck:
			style = fmt.Sprintf(` s="%d"`, styles.of(struckKey))
		case strings.Contains(c.Text, "\n"):
			style = fmt.Sprintf(` s="%d"`, styles.of(wrapKey))
		}
		if text := report.CellText(c.Text); text != "" {
			fmt.Fprintf(b, `<c r="%s"%s t="inlineStr"><is><t xml:space="preserve">%s</t></is></c>`, name, style, cellText(text))
		}
	}
}

// plainColumns gives every column a width that fits most of its texts, and
// hides those that were hidden.
func plainColumns(s *grid.Sheet) string {
	var widths []float64
	for i := range s.Rows[:min(len(s.Rows), 2000)] {
		for c := range s.Rows[i].Cells() {
			if c.Col > maxSheetCols {
				continue
			}
			for len(widths) < c.Col {
				widths = append(widths, 0)
			}
			if alone := s.Rows[i].Len() == 1; alone { // a title, free to run over its neighbours
				continue
			}
			for line := range strings.SplitSeq(c.Text, "\n") {
				if len(line) > 200 {
					line = line[:200]
				}
				widths[c.Col-1] = max(widths[c.Col-1], min(widest, report.Measure(line)+2))
			}
		}
	}
	hidden := func(col int) string {
		if slices.ContainsFunc(s.HiddenCols, func(h grid.Span) bool { return h.First <= col && col <= h.Last }) {
			return ` hidden="1"`
		}
		return ""
	}
	var b strings.Builder
	for i, w := range widths {
		if w == 0 && hidden(i+1) == "" {
			continue
		}
		fmt.Fprintf(&b, `<col min="%[1]d" max="%[1]d" width="%.1[2]f" customWidth="1"%[3]s/>`, i+1, max(w, 8.5), hidden(i+1))
	}
	if b.Len() == 0 {
		return ""
	}
	return "<cols>" + b.String() + "</cols>"
}

// apart returns the merged areas that lie on the sheet and do not overlap, for
// a workbook with others needs repair. Areas of more than maxArea cells are left out.
func apart(merges []grid.Range) []grid.Range {
	const maxArea = 100_000
	var out []grid.Range
	taken := map[[2]int]bool{}
	for _, m := range merges {
		if m.Row2 > maxSheetRows || m.Col2 > maxSheetCols || m.Row1 < 1 || m.Col1 < 1 || m.Row1 > m.Row2 || m.Col1 > m.Col2 || (m.Row1 == m.Row2 && m.Col1 == m.Col2) {
			continue
		}
		area := (m.Row2 - m.Row1 + 1) * (m.Col2 - m.Col1 + 1)
		if area > maxArea || len(taken) > 4*maxArea || overlaps(m, taken) {
			continue
		}
		for r := m.Row1; r <= m.Row2; r++ {
			for c := m.Col1; c <= m.Col2; c++ {
				taken[[2]int{r, c}] = true
			}
		}
		out = append(out, m)
	}
	return out
}

func overlaps(m grid.Range, taken map[[2]int]bool) bool {
	for r := m.Row1; r <= m.Row2; r++ {
		for c := m.Col1; c <= m.Col2; c++ {
			if taken[[2]int{r, c}] {
				return true
			}
		}
	}
	return false
}
