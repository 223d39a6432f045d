package xlsx

import (
	"strconv"
	"strings"

	"lineaudit/ingest/grid"
)

// A workbook is what its main part says.
type workbook struct {
	date904         bool
	sheets          []sheetEntry
	strings, styles string // parts, "" if there are none
}

// A sheetEntry is a line of the sheet list.
type sheetEntry struct {
	name     string
	hidden   bool
	id       string // of the relationship
	kind     string // of the relationship: worksheet, chartsheet ...
	part     string
	filtered grid.Range // the list that a filter was applied to, by its defined name
}

// readWorkbook follows the relationships from the package to the sheet list.
func readWorkbook(a *archive) (*workbook, error) {
	rels, err := a.relationships("")
	if err != nil {
		return nil, err
	}
	main := find(rels, "officeDocument")
	if main == "" {
		main = "xl/workbook.xml" // where every program puts it
	}
	if !a.has(main) {
		return nil, grid.Damaged("it has no list of sheets")
	}
	if rels, err = a.relationships(main); err != nil {
		return nil, err
	}
	s, err := a.open(main)
	if err != nil {
		return nil, err
	}
	defer s.release()
	w := &workbook{strings: find(rels, "sharedStrings"), styles: find(rels, "styles")}
	if err := w.read(s); err != nil {
		return nil, err
	}
	if len(w.sheets) == 0 {
		return nil, grid.Damaged("its list of sheets is empty")
	}
	byID := make(map[string]rel, len(rels))
	for _, r := range rels {
		byID[r.id] = r
	}
	for i := range w.sheets {
		sh := &w.sheets[i]
		if sh.id == "" { // a macro module of an old workbook, which has no part here
			sh.kind = "module"
			continue
		}
		r, ok := byID[sh.id]
		if !ok || r.target == "" {
			return nil, grid.Damaged("sheet %q is listed but not there", sh.name)
		}
		sh.kind, sh.part = r.kind, r.target
	}
	return w, nil
}

func (w *workbook) read(s *scanner) error {
	var (
		section string
		name    definedName
		inName  bool
	)
	for {
		if err := s.next(); err != nil {
			return err
		}
		switch s.kind {
		case endOfPart:
			return nil
		case startTag:
			switch s.depth() {
			case 1:
				if string(s.name) != "workbook" {
					return errOdd
				}
			case 2:
				section = string(s.name)
				if section == "workbookPr" {
					w.date904 = s.flag("date1904")
				}
			case 3:
				switch tag := string(s.name); {
				case section == "sheets" && tag == "sheet":
					if w.addSheet(s); s.lim.MaxSheets > 0 && len(w.sheets) > s.lim.MaxSheets {
						return grid.TooLarge("more than %d sheets", s.lim.MaxSheets)
					}
				case section == "definedNames" && tag == "definedName":
					name, inName = newDefinedName(s), true
				}
			}
		case charData:
			if inName && len(name.ref) < 200 {
				name.ref += string(s.raw)
			}
		case endTag:
			if inName && s.depth() == 2 {
				inName = false
				w.filterName(name)
			}
		}
	}
}

func (w *workbook) addSheet(s *scanner) {
	var sh sheetEntry
	for _, a := range s.attrs {
		switch string(a.name) {
		case "name":
			sh.name = a.text()
		case "id":
			if a.prefix { // r:id; a bare id is none of the standard's
				sh.id = a.text()
			}
		case "state":
			sh.hidden = string(a.value) == "hidden" || string(a.value) == "veryHidden"
		}
	}
	w.sheets = append(w.sheets, sh)
}

// A definedName is one name of the workbook.
type definedName struct {
	name  string
	sheet int // index of the sheet it belongs to, -1
	ref   string
}

func newDefinedName(s *scanner) definedName {
	n := definedName{sheet: -1}
	n.name, _ = s.attribute("name")
	if v, ok := s.attribute("localSheetId"); ok {
		if i, err := strconv.Atoi(v); err == nil {
			n.sheet = i
		}
	}
	return n
}

// filterName takes the hidden name that spreadsheet programs give to the list
// a filter works on, e.g. Loads!$A$1:$F$20. The sheets are listed before the names.
func (w *workbook) filterName(n definedName) {
	if n.name != "_xlnm._FilterDatabase" || n.sheet < 0 || n.sheet >= len(w.sheets) {
		return
	}
	ref := n.ref[strings.LastIndexByte(n.ref, '!')+1:]
	if area, ok := parseRange(ref); ok {
		w.sheets[n.sheet].filtered = area
	}
}

// parseRange reads B2:D9, B2, or whole columns and rows as B:D and 2:9;
// dollar signs do not matter.
func parseRange(ref string) (grid.Range, bool) {
	from, to, two := strings.Cut(strings.ReplaceAll(ref, "$", ""), ":")
	if !two {
		to = from
	}
	switch {
	case two && strings.Trim(from+to, "0123456789") == "":
		from, to = "A"+from, grid.Column(maxCol)+to
	case two && !strings.ContainsAny(from+to, "0123456789"):
		from, to = from+"1", to+strconv.Itoa(maxRow)
	}
	var g grid.Range
	var err1, err2 error
	g.Row1, g.Col1, err1 = grid.ParseA1(from)
	g.Row2, g.Col2, err2 = grid.ParseA1(to)
	if err1 != nil || err2 != nil {
		return grid.Range{}, false
	}
	if g.Row1 > g.Row2 {
		g.Row1, g.Row2 = g.Row2, g.Row1
	}
	if g.Col1 > g.Col2 {
		g.Col1, g.Col2 = g.Col2, g.Col1
	}
	return g, true
}
