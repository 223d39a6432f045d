package marked

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// A workbook is the parts of a package that a copy has to change.
type workbook struct {
	archive *archive
	part    string
	strict  bool
	sheets  []sheet
	front   string // the name of the findings sheet
	holes   bool   // it lists sheets that it does not hold
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
		there := false
		for _, r := range rels {
			if r.id != e.attr("id") || !a.has(r.target) {
				continue
			}
			there = true
			if r.kind == "worksheet" {
				b.sheets = append(b.sheets, sheet{e.attr("name"), r.target})
			}
		}
		b.holes = b.holes || !there
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

// workbookOrder is the order of the children of a workbook part.
var workbookOrder = []string{"fileVersion", "fileSharing", "workbookPr", "workbookProtection", "bookViews", "sheets", "functionGroups", "externalReferences", "definedNames"}

// addFindings adds the findings sheet and opens the workbook on it. It stands
// in front of the others; behind them in a workbook with macros, which may
// know its sheets by their place.
func (b *workbook) addFindings(fs []finding, looks looks, names map[string]string, note string) error {
	a := b.archive
	content, err := a.read(b.part)
	if err != nil {
		return err
	}
	o, err := locate(content)
	if err != nil {
		return err
	}
	views := o.child("bookViews")
	windows := 1
	if views != nil {
		windows = max(1, len(views.elements))
	}
	part := a.free("xl/worksheets/findings", ".xml")
	a.write(part, findingsSheet(fs, b, looks, names, note, windows))
	if err := a.declare("Override", "/"+part, "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"); err != nil {
		return err
	}
	id, err := a.relate(b.part, "worksheet", part, b.strict)
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
	place := 0
	if b.macros() {
		place = len(list.elements)
	}
	entry := fmt.Sprintf(`<%ssheet name="%s" sheetId="%d"%s/>`, o.prefix, escape(b.front), next, o.idAttr(b.strict, id))
	var edits []edit
	if place == 0 && !list.selfEnd {
		edits = append(edits, edit{list.inner, list.inner, entry})
	} else {
		edits = append(edits, list.appendTo(content, entry))
	}
	edits = append(edits, b.nameRows(o, content, place)...)
	switch {
	case views != nil:
		for _, e := range views.elements {
			if e.attr("activeTab") != "" || place > 0 {
				edits = append(edits, setAttr(content, e.start, e.inner, "activeTab", strconv.Itoa(place)))
			}
			if e.attr("firstSheet") != "" && place == 0 {
				edits = append(edits, setAttr(content, e.start, e.inner, "firstSheet", "0"))
			}
		}
	case place > 0:
		edits = append(edits, edit{list.start, list.start, fmt.Sprintf(`<%[1]sbookViews><%[1]sworkbookView activeTab="%[2]d"/></%[1]sbookViews>`, o.prefix, place)})
	}
	a.write(b.part, apply(content, edits))
	return nil
}

// nameRows repeats the header of the findings sheet on every printed page, and
// moves the names that belong to sheets behind it. Programs that count only the
// sheets that they can read trip over a name of ours: a Strict workbook, of
// which some read none, and one with holes get none.
func (b *workbook) nameRows(o *outline, content []byte, place int) []edit {
	title := fmt.Sprintf(`<%[1]sdefinedName name="_xlnm.Print_Titles" localSheetId="%[2]d">%[3]s!$%[4]d:$%[4]d</%[1]sdefinedName>`,
		o.prefix, place, escape(quoteSheet(b.front)), headingRow)
	names := o.child("definedNames")
	if b.strict || b.holes {
		title = ""
	}
	if names == nil && title == "" {
		return nil
	}
	if names == nil {
		at := o.afterLast(workbookOrder, "definedNames")
		return []edit{{at, at, fmt.Sprintf("<%[1]sdefinedNames>%[2]s</%[1]sdefinedNames>", o.prefix, title)}}
	}
	edits := []edit{names.appendTo(content, title)}
	for _, e := range names.elements {
		if n, err := strconv.Atoi(e.attr("localSheetId")); err == nil && n >= place {
			edits = append(edits, setAttr(content, e.start, e.inner, "localSheetId", strconv.Itoa(n+1)))
		}
	}
	return edits
}

// macros reports whether the workbook carries macros.
func (b *workbook) macros() bool {
	rels, err := b.archive.relations(b.part)
	return err == nil && slices.ContainsFunc(rels, func(r relation) bool { return r.kind == "vbaProject" || r.kind == "xlMacrosheet" })
}

func (b *workbook) sheetNames() []string {
	var names []string
	for _, s := range b.sheets {
		names = append(names, s.name)
	}
	return names
}

func quoteSheet(name string) string { return "'" + strings.ReplaceAll(name, "'", "''") + "'" }
