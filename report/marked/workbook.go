package marked

import (
	"cmp"
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"lineaudit/audit"
)

// A workbook is the parts of a package that a copy has to change.
type workbook struct {
	archive *archive
	part    string
	strict  bool
	sheets  []sheet
	front   string // the name of the findings sheet
}

// A sheet is one worksheet and its part.
type sheet struct {
	name, part string
}

// readWorkbook finds the sheets and a free name for the findings sheet.
func readWorkbook(a *archive) (*workbook, error) {
	part, err := a.workbookPart()
	if err != nil {
		return nil, err
	}
	content, err := a.read(part)
	if err != nil {
		return nil, err
	}
	o, err := locate(content)
	if err != nil {
		return nil, fmt.Errorf("part %s: %w", part, err)
	}
	b := &workbook{archive: a, part: part, strict: o.name.Space == strictMain}
	if o.name.Space != strictMain && o.name.Space != looseMain {
		return nil, fmt.Errorf("part %s is of an unknown dialect", part)
	}
	list := o.child("sheets")
	if list == nil {
		return nil, errors.New("it lists no sheets")
	}
	rels, err := a.relations(part)
	if err != nil {
		return nil, err
	}
	var names []string
	for _, e := range list.elements {
		names = append(names, e.attr("name"))
		for _, r := range rels {
			if r.id == e.attr("id") && r.kind == "worksheet" && a.has(r.target) {
				b.sheets = append(b.sheets, sheet{e.attr("name"), r.target})
			}
		}
	}
	b.front = freeName(names)
	return b, nil
}

// freeName is "Findings", or "Findings 2" and so on where a sheet has that name.
func freeName(taken []string) string {
	for i := 1; ; i++ {
		name := "Findings"
		if i > 1 {
			name += " " + strconv.Itoa(i)
		}
		if !slices.ContainsFunc(taken, func(t string) bool { return strings.EqualFold(t, name) }) {
			return name
		}
	}
}

// addFindings adds the findings sheet in front of the others and opens it first.
func (b *workbook) addFindings(fs []finding, looks looks) error {
	a := b.archive
	part := a.free("xl/worksheets/findings", ".xml")
	a.write(part, findingsSheet(fs, b.strict, b.sheetNames(), looks))
	if err := a.declare("Override", "/"+part, "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"); err != nil {
		return err
	}
	id, err := a.relate(b.part, "worksheet", part, b.strict)
	if err != nil {
		return err
	}
	content, err := a.read(b.part)
	if err != nil {
		return err
	}
	o, err := locate(content)
	if err != nil {
		return err
	}
	list := o.child("sheets")
	next := 1
	for _, e := range list.elements {
		if n, err := strconv.Atoi(e.attr("sheetId")); err == nil {
			next = max(next, n+1)
		}
	}
	entry := fmt.Sprintf(`<%ssheet name="%s" sheetId="%d" xmlns:audit="%s" audit:id="%s"/>`, o.prefix, escape(b.front), next, relationNamespace(b.strict), id)
	edits := []edit{{list.inner, list.inner, entry}}
	if names := o.child("definedNames"); names != nil {
		for _, e := range names.elements {
			if n, err := strconv.Atoi(e.attr("localSheetId")); err == nil {
				edits = append(edits, setAttr(content, e.start, e.inner, "localSheetId", strconv.Itoa(n+1)))
			}
		}
	}
	if views := o.child("bookViews"); views != nil {
		for _, e := range views.elements {
			for _, name := range []string{"activeTab", "firstSheet"} {
				if e.attr(name) != "" {
					edits = append(edits, setAttr(content, e.start, e.inner, name, "0"))
				}
			}
		}
	}
	a.write(b.part, apply(content, edits))
	return nil
}

func (b *workbook) sheetNames() []string {
	var names []string
	for _, s := range b.sheets {
		names = append(names, s.name)
	}
	return names
}

// fillColours are the fills of the grades; the note says the grade in words.
var fillColours = map[audit.Grade]string{audit.Danger: "FFF4B6AE", audit.Fault: "FFFAD7A8", audit.Caution: "FFFBF0B2", audit.Unknown: "FFDDE3E9"}

// styleOrder is the order of the children of a styles part.
var styleOrder = []string{"numFmts", "fonts", "fills", "borders", "cellStyleXfs", "cellXfs", "cellStyles", "dxfs", "tableStyles", "colors", "extLst"}

// looks are the numbers of the formats that a copy adds: a fill for each grade,
// and the cell formats of the findings sheet (0, the workbook's own, if it has no list of them).
type looks struct {
	fills      map[audit.Grade]int
	wrap, bold int
}

// addLooks adds one differential format for each grade - a conditional format
// leaves number formats and styles of the cell alone - and two cell formats.
func (b *workbook) addLooks() (looks, error) {
	a := b.archive
	rels, err := a.relations(b.part)
	if err != nil {
		return looks{}, err
	}
	part := ""
	for _, r := range rels {
		if r.kind == "styles" && a.has(r.target) {
			part = r.target
		}
	}
	if part == "" {
		part = a.free("xl/auditstyles", ".xml")
		a.write(part, []byte(xmlHead+`<styleSheet xmlns="`+mainNamespace(b.strict)+`"><fonts count="1"><font><sz val="11"/><name val="Liberation Sans"/></font></fonts>`+
			`<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>`+
			`<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>`+
			`<cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs></styleSheet>`))
		if err := a.declare("Override", "/"+part, "application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"); err != nil {
			return looks{}, err
		}
		if _, err := a.relate(b.part, "styles", part, b.strict); err != nil {
			return looks{}, err
		}
	}
	content, err := a.read(part)
	if err != nil {
		return looks{}, err
	}
	o, err := locate(content)
	if err != nil {
		return looks{}, fmt.Errorf("part %s: %w", part, err)
	}
	if o.selfEnd {
		return looks{}, fmt.Errorf("part %s holds no styles", part)
	}
	l := looks{fills: map[audit.Grade]int{}}
	edits := l.addCellFormats(o, content)
	var text strings.Builder
	have, first := o.child("dxfs"), 0
	if have != nil {
		first = len(have.elements)
	}
	for i, g := range []audit.Grade{audit.Danger, audit.Fault, audit.Caution, audit.Unknown} {
		l.fills[g] = first + i
		fmt.Fprintf(&text, `<%[1]sdxf><%[1]sfill><%[1]spatternFill patternType="solid"><%[1]sfgColor rgb="%[2]s"/><%[1]sbgColor rgb="%[2]s"/></%[1]spatternFill></%[1]sfill></%[1]sdxf>`, o.prefix, fillColours[g])
	}
	if have != nil {
		edits = append(edits, have.grow(o.prefix, content, 4, text.String())...)
	} else {
		at := o.afterLast(styleOrder, "dxfs")
		edits = append(edits, edit{at, at, fmt.Sprintf(`<%sdxfs count="4">%s</%sdxfs>`, o.prefix, text.String(), o.prefix)})
	}
	a.write(part, apply(content, edits))
	return l, nil
}

// addCellFormats adds a bold font and the cell formats of the findings sheet.
func (l *looks) addCellFormats(o *outline, content []byte) []edit {
	fonts, formats := o.child("fonts"), o.child("cellXfs")
	if fonts == nil || formats == nil || len(fonts.elements) == 0 || len(formats.elements) == 0 {
		return nil
	}
	l.wrap, l.bold = len(formats.elements), len(formats.elements)+1
	return append(fonts.grow(o.prefix, content, 1, fmt.Sprintf(`<%[1]sfont><%[1]sb/><%[1]ssz val="11"/></%[1]sfont>`, o.prefix)),
		formats.grow(o.prefix, content, 2, fmt.Sprintf(`<%[1]sxf numFmtId="0" fontId="0" fillId="0" borderId="0" applyAlignment="1"><%[1]salignment vertical="top" wrapText="1"/></%[1]sxf>`+
			`<%[1]sxf numFmtId="0" fontId="%[2]d" fillId="0" borderId="0" applyFont="1"/>`, o.prefix, len(fonts.elements)))...)
}

// grow returns the edits that add n elements to a counted list.
func (e *element) grow(prefix string, content []byte, n int, text string) []edit {
	total := strconv.Itoa(len(e.elements) + n)
	if e.selfEnd { // the two edits would touch the same tag
		return []edit{{e.start, e.end, fmt.Sprintf(`<%s%s count="%s">%s</%s%s>`, prefix, e.name, total, text, prefix, e.name)}}
	}
	return []edit{setAttr(content, e.start, e.inner, "count", total), e.appendTo(content, text)}
}

// sheetOrder is the order of the children of a worksheet part.
var sheetOrder = []string{"sheetPr", "dimension", "sheetViews", "sheetFormatPr", "cols", "sheetData", "sheetCalcPr", "sheetProtection", "protectedRanges",
	"scenarios", "autoFilter", "sortState", "dataConsolidate", "customSheetViews", "mergeCells", "phoneticPr", "conditionalFormatting", "dataValidations",
	"hyperlinks", "printOptions", "pageMargins", "pageSetup", "headerFooter", "rowBreaks", "colBreaks", "customProperties", "cellWatches", "ignoredErrors",
	"smartTags", "drawing", "legacyDrawing", "legacyDrawingHF", "drawingHF", "picture", "oleObjects", "controls", "webPublishItems", "tableParts", "extLst"}

// markSheet puts fills, links and notes on one sheet. A sheet without marks
// only gives up being the one that is open first.
func (b *workbook) markSheet(s sheet, marks []mark, fills map[audit.Grade]int) error {
	a := b.archive
	content, err := a.read(s.part)
	if err != nil {
		return err
	}
	o, err := locate(content)
	if err != nil {
		return fmt.Errorf("part %s: %w", s.part, err)
	}
	if o.name.Local != "worksheet" || o.selfEnd {
		return nil
	}
	var edits []edit
	if views := o.child("sheetViews"); views != nil {
		for _, e := range views.elements {
			if v := e.attr("tabSelected"); v == "1" || v == "true" {
				edits = append(edits, setAttr(content, e.start, e.inner, "tabSelected", "0"))
			}
		}
	}
	if len(marks) > 0 {
		edits = append(edits, conditionalFormats(o, content, marks, fills)...)
		edits = append(edits, b.linkBack(o, content, marks)...)
		drawing, err := b.addNotes(s, o, marks)
		if err != nil {
			return err
		}
		if drawing != "" {
			at := o.afterLast(sheetOrder, "legacyDrawing")
			edits = append(edits, edit{at, at, drawing})
		}
	}
	if len(edits) > 0 {
		a.write(s.part, apply(content, edits))
	}
	return nil
}

// conditionalFormats writes one rule for each grade, always true, on its
// cells. Ours come first, so that they show; those that are there keep their order behind them.
func conditionalFormats(o *outline, content []byte, marks []mark, fills map[audit.Grade]int) []edit {
	at := o.afterLast(sheetOrder, "phoneticPr")
	priority := 0
	var out strings.Builder
	for _, g := range []audit.Grade{audit.Danger, audit.Fault, audit.Caution, audit.Unknown} {
		var cells []string
		for _, m := range marks {
			if m.grade == g {
				cells = append(cells, cellName(m.row, m.col))
			}
		}
		for chunk := range slices.Chunk(cells, 500) {
			priority++
			fmt.Fprintf(&out, `<%[1]sconditionalFormatting sqref="%[2]s"><%[1]scfRule type="expression" dxfId="%[3]d" priority="%[4]d"><%[1]sformula>TRUE</%[1]sformula></%[1]scfRule></%[1]sconditionalFormatting>`,
				o.prefix, strings.Join(chunk, " "), fills[g], priority)
		}
	}
	edits := []edit{{at, at, out.String()}}
	for _, c := range o.children {
		if c.name != "conditionalFormatting" {
			continue
		}
		for _, r := range c.elements {
			if n, err := strconv.Atoi(r.attr("priority")); err == nil {
				edits = append(edits, setAttr(content, r.start, r.inner, "priority", strconv.Itoa(n+priority)))
			}
		}
	}
	return edits
}

// linkBack makes the first cell of every finding lead to its row on the
// findings sheet, where the cell has no link of its own.
func (b *workbook) linkBack(o *outline, content []byte, marks []mark) []edit {
	var taken []string
	have := o.child("hyperlinks")
	if have != nil {
		for _, e := range have.elements {
			taken = append(taken, strings.ToUpper(e.attr("ref")))
		}
	}
	var text strings.Builder
	for _, m := range marks {
		name := cellName(m.row, m.col)
		if m.leads == 0 || slices.ContainsFunc(taken, func(ref string) bool { return covers(ref, m.row, m.col) }) {
			continue
		}
		fmt.Fprintf(&text, `<%shyperlink ref="%s" location="%s" tooltip="Finding %d"/>`, o.prefix, name,
			escape(quoteSheet(b.front)+"!A"+strconv.Itoa(m.leads+firstRow-1)), m.leads)
	}
	switch {
	case text.Len() == 0:
		return nil
	case have != nil:
		return []edit{have.appendTo(content, text.String())}
	}
	at := o.afterLast(sheetOrder, "hyperlinks")
	return []edit{{at, at, fmt.Sprintf("<%shyperlinks>%s</%shyperlinks>", o.prefix, text.String(), o.prefix)}}
}

func quoteSheet(name string) string { return "'" + strings.ReplaceAll(name, "'", "''") + "'" }

func sortMarks(ms []mark) {
	slices.SortStableFunc(ms, func(x, y mark) int { return cmp.Or(cmp.Compare(x.row, y.row), cmp.Compare(x.col, y.col)) })
}
