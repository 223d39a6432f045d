package marked

import (
	"bytes"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"lineaudit/audit"
	"lineaudit/ingest/grid"
)

// sheetOrder is the order of the children of a worksheet part.
var sheetOrder = []string{"sheetPr", "dimension", "sheetViews", "sheetFormatPr", "cols", "sheetData", "sheetCalcPr", "sheetProtection", "protectedRanges",
	"scenarios", "autoFilter", "sortState", "dataConsolidate", "customSheetViews", "mergeCells", "phoneticPr", "conditionalFormatting", "dataValidations",
	"hyperlinks", "printOptions", "pageMargins", "pageSetup", "headerFooter", "rowBreaks", "colBreaks", "customProperties", "cellWatches", "ignoredErrors",
	"smartTags", "drawing", "legacyDrawing", "legacyDrawingHF", "drawingHF", "picture", "oleObjects", "controls", "webPublishItems", "tableParts", "extLst"}

// maxLinks is how many links one sheet takes; programs drop more.
const maxLinks = 60_000

// markSheet puts fills, links and notes on one sheet, the nth. A sheet without
// marks only gives up being the one that is open first.
func (b *workbook) markSheet(n int, s sheet, marks []mark, fills map[audit.Grade]int) error {
	a := b.archive
	content, err := a.read(s.part)
	if err != nil {
		return err
	}
	if len(marks) == 0 && !bytes.Contains(content, []byte("tabSelected")) {
		return nil
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
		drawing, err := b.addNotes(n, s, o, marks)
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
// cells. Ours come first, so that they show; those that are there keep their
// order behind them. Where a pivot table refers to formats by their priority,
// nothing is moved and ours come last.
func conditionalFormats(o *outline, content []byte, marks []mark, fills map[audit.Grade]int) []edit {
	at := o.afterLast(sheetOrder, "phoneticPr")
	priority := 0
	last, pivot := lastPriority(o)
	if pivot {
		priority = last
	}
	var out strings.Builder
	for _, g := range grades {
		var cells []string
		for _, m := range marks {
			if m.grade == g && !m.own {
				cells = append(cells, cellName(m.row, m.col))
			}
		}
		for chunk := range slices.Chunk(cells, 500) {
			priority++
			fmt.Fprintf(&out, `<%[1]sconditionalFormatting sqref="%[2]s"><%[1]scfRule type="expression" dxfId="%[3]d" priority="%[4]d"><%[1]sformula>TRUE</%[1]sformula></%[1]scfRule></%[1]sconditionalFormatting>`,
				o.prefix, strings.Join(chunk, " "), fills[g], priority)
		}
	}
	if out.Len() == 0 {
		return nil
	}
	edits := []edit{{at, at, out.String()}}
	if pivot {
		return edits
	}
	for _, c := range o.children {
		switch c.name {
		case "conditionalFormatting":
			for _, r := range c.elements {
				if n, err := strconv.Atoi(r.attr("priority")); err == nil {
					edits = append(edits, setAttr(content, r.start, r.inner, "priority", strconv.Itoa(n+priority)))
				}
			}
		case "extLst":
			edits = append(edits, moveExtended(content, c.inner, c.innerEnd, priority)...)
		}
	}
	return edits
}

// lastPriority returns the highest priority in use, and whether a pivot table
// refers to one.
func lastPriority(o *outline) (last int, pivot bool) {
	for _, c := range o.children {
		if c.name != "conditionalFormatting" {
			continue
		}
		if v := c.attr("pivot"); v == "1" || v == "true" {
			pivot = true
		}
		for _, r := range c.elements {
			if n, err := strconv.Atoi(r.attr("priority")); err == nil {
				last = max(last, n)
			}
		}
	}
	return last, pivot
}

// moveExtended moves the priorities of the conditional formats that newer
// programs keep in the extensions of a sheet.
func moveExtended(content []byte, start, end, by int) []edit {
	var edits []edit
	for at := start; at < end; {
		i := bytes.Index(content[at:end], []byte(":cfRule"))
		if i < 0 {
			break
		}
		i += at
		close := bytes.IndexByte(content[i:end], '>')
		if close < 0 {
			break
		}
		close += i + 1
		at = close
		open := bytes.LastIndexByte(content[start:i], '<')
		if open < 0 || content[start+open+1] == '/' {
			continue
		}
		open += start
		s, e, ok := findAttr(content[open:close], "priority")
		if !ok {
			continue
		}
		if n, err := strconv.Atoi(string(content[open+s : open+e])); err == nil {
			edits = append(edits, edit{open + s, open + e, strconv.Itoa(n + by)})
		}
	}
	return edits
}

// linkBack makes the first cell of every finding lead to its row on the
// findings sheet, where the cell has no link of its own.
func (b *workbook) linkBack(o *outline, content []byte, marks []mark) []edit {
	taken := map[string]bool{}
	var areas []string
	have, n := o.child("hyperlinks"), 0
	if have != nil {
		n = len(have.elements)
		for _, e := range have.elements {
			ref := strings.ToUpper(e.attr("ref"))
			if strings.Contains(ref, ":") {
				areas = append(areas, ref)
			} else {
				taken[ref] = true
			}
		}
	}
	var text strings.Builder
	for _, m := range marks {
		name := cellName(m.row, m.col)
		if m.leads == 0 || n >= maxLinks || taken[name] || slices.ContainsFunc(areas, func(ref string) bool { return covers(ref, m.row, m.col) }) {
			continue
		}
		n++
		fmt.Fprintf(&text, `<%shyperlink ref="%s" location="%s" tooltip="Finding %d"/>`, o.prefix, name,
			escape(quoteSheet(b.front)+"!A"+strconv.Itoa(m.leads+headingRow)), m.leads)
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

func cellName(row, col int) string { return grid.A1(row, col) }

// covers reports whether a reference such as "A1:C4" holds a cell.
func covers(ref string, row, col int) bool {
	from, to, _ := strings.Cut(ref, ":")
	r1, c1, err1 := grid.ParseA1(from)
	r2, c2, err2 := grid.ParseA1(to)
	return err1 == nil && err2 == nil && grid.Range{Row1: r1, Col1: c1, Row2: r2, Col2: c2}.Contains(row, col)
}
