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
func (b *workbook) addFindings(fs []finding, marks map[string][]mark) error {
	a := b.archive
	part := a.free("xl/worksheets/findings", ".xml")
	a.write(part, findingsSheet(fs, b.strict, b.sheetNames()))
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

// addFills adds one differential format for each grade and returns their numbers.
// A conditional format leaves number formats and styles of the cell alone.
func (b *workbook) addFills() (map[audit.Grade]int, error) {
	a := b.archive
	rels, err := a.relations(b.part)
	if err != nil {
		return nil, err
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
			return nil, err
		}
		if _, err := a.relate(b.part, "styles", part, b.strict); err != nil {
			return nil, err
		}
	}
	content, err := a.read(part)
	if err != nil {
		return nil, err
	}
	o, err := locate(content)
	if err != nil {
		return nil, fmt.Errorf("part %s: %w", part, err)
	}
	p := o.prefix
	numbers := map[audit.Grade]int{}
	var text strings.Builder
	have := o.child("dxfs")
	first := 0
	if have != nil {
		first = len(have.elements)
	}
	for i, g := range []audit.Grade{audit.Danger, audit.Fault, audit.Caution, audit.Unknown} {
		numbers[g] = first + i
		fmt.Fprintf(&text, `<%[1]sdxf><%[1]sfill><%[1]spatternFill patternType="solid"><%[1]sfgColor rgb="%[2]s"/><%[1]sbgColor rgb="%[2]s"/></%[1]spatternFill></%[1]sfill></%[1]sdxf>`, p, fillColours[g])
	}
	if have != nil {
		edits := []edit{have.appendTo(content, text.String()), setAttr(content, have.start, have.inner, "count", strconv.Itoa(first+4))}
		if have.selfEnd { // the two edits would touch the same tag
			edits = []edit{{have.start, have.end, fmt.Sprintf(`<%sdxfs count="4">%s</%sdxfs>`, p, text.String(), p)}}
		}
		a.write(part, apply(content, edits))
		return numbers, nil
	}
	if o.selfEnd {
		return nil, fmt.Errorf("part %s holds no styles", part)
	}
	at := o.afterLast(styleOrder, "dxfs")
	a.write(part, apply(content, []edit{{at, at, fmt.Sprintf(`<%sdxfs count="4">%s</%sdxfs>`, p, text.String(), p)}}))
	return numbers, nil
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
		at := o.afterLast(sheetOrder, "conditionalFormatting")
		edits = append(edits, edit{at, at, conditionalFormats(o, marks, fills)})
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

// conditionalFormats writes one rule for each grade, always true, on its cells.
func conditionalFormats(o *outline, marks []mark, fills map[audit.Grade]int) string {
	priority := 0
	for _, c := range o.children {
		if c.name != "conditionalFormatting" {
			continue
		}
		for _, r := range c.elements {
			if n, err := strconv.Atoi(r.attr("priority")); err == nil {
				priority = max(priority, n)
			}
		}
	}
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
	return out.String()
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
