package layout

import (
	"regexp"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// A cell may hold a loudspeaker whole: its tag and its watts, "LS1/6W", one
// below the other, or several of them, "HP1 6 W, HP2 6 W". Sheets drawn like a
// plan, or with a line of such cells for each circuit, become a list of loudspeakers.

var (
	reTagged     = regexp.MustCompile(`(?i)^(\pL{1,5}[-_. ]?\d{1,4}\pL?)\s*[/:=@(,-]?\s*((?:\d+(?:[.,]\d+)?|½|1/2)\s*w(?:atts?)?)\.?\)?$`)
	reTaggedNext = regexp.MustCompile(`\s*[;\n]\s*|,\s+|\s+\+\s+`)
)

// A tagged is one loudspeaker of a cell.
type tagged struct{ tag, watts, remark string }

// taggedIn are the loudspeakers of a text that holds nothing else.
func taggedIn(t string) []tagged {
	if !anyDigit(t) {
		return nil
	}
	return taggedTexts.Of(t, 0)
}

func readTagged(t string) []tagged {
	if len(t) > maxText || !rePhraseW.MatchString(t) {
		return nil
	}
	parts := []string{t}
	if !reTagged.MatchString(oneLine(t)) {
		parts = reTaggedNext.Split(strings.TrimSpace(t), -1)
	}
	var out []tagged
	for _, part := range parts {
		m := reTagged.FindStringSubmatch(oneLine(part))
		if m == nil || sectionField(m[1]) != vocabulary.Unknown || classWithin(m[1])&classDevice != 0 {
			return nil // "V1 120 W" is an amplifier, "Horn 15 W" a type
		}
		out = append(out, tagged{tag: m[1], watts: m[2]})
	}
	return out
}

// fewestTagged is the fewest such cells that make a sheet a plan.
const fewestTagged = 4

// plan reads lines with several of such cells each. It returns nil where there are none.
func (f *finder) plan() (*Table, grid.Range) {
	lines := f.p.lines
	found := 0
	area := grid.Range{Col1: 1 << 20}
	for i := range lines {
		f.watch.Step()
		cells := 0
		for _, s := range lines[i].slots {
			if s.cell.says().is(oneLoudspeaker) {
				cells++
			}
		}
		if cells < 2 && (found == 0 || cells == 0) {
			continue
		}
		found += cells
		if area.Row1 == 0 {
			area.Row1 = lines[i].n
		}
		area.Row2 = lines[i].n
		for _, s := range lines[i].slots {
			area.Col1, area.Col2 = min(area.Col1, s.col), max(area.Col2, s.col)
		}
	}
	if found < fewestTagged {
		return nil, area
	}
	body := f.p.within(area.Row1, area.Row2)
	if !allTagged(body, found) {
		return nil, area
	}
	label := f.planLabel(body, area)
	at := f.p.ref(area.Row1, area.Col1)
	t := &Table{Sheet: f.p.sheet, Kind: Loudspeakers, Confidence: 0.6, Transposed: f.p.turned, Matrix: true, Range: f.p.area(area)}
	for _, field := range []vocabulary.Field{vocabulary.Tag, vocabulary.Tap, label} {
		t.Columns = append(t.Columns, Column{At: at, Field: field, Confidence: 0.7, Evidence: "a tag and watts in each cell"})
	}
	t.Columns[2].Evidence = "at the beginning of each line"
	for i := range body {
		f.planRecords(t, &body[i], label)
	}
	return t, area
}

// highestPlanned is more than most taps and less than most amplifiers give, in watts; from memory.
const highestPlanned = 50

// allTagged reports whether the cells behind the first ones are loudspeakers,
// with or without their watts, and hardly anything else; a figure that is none of them is too much.
func allTagged(body []line, found int) bool {
	others, high := 0, 0
	for i := range body {
		for k, s := range body[i].slots {
			t := s.cell.line()
			for _, x := range taggedIn(text(s.cell)) {
				if v, ok := leadingNumber(x.watts); ok && v > highestPlanned {
					high++
				}
			}
			switch {
			case k == 0, taggedIn(text(s.cell)) != nil, isMissing(t), lookText(t)&lookTag != 0 && sectionField(t) == vocabulary.Unknown:
			case anyDigit(t):
				return false
			default:
				others++
			}
		}
	}
	return 4*others <= found && 2*high < found
}

// planLabel is what the first cells of the lines name: a circuit or a zone, if
// they say so or a header above them does; Unknown where they number the lines.
func (f *finder) planLabel(body []line, area grid.Range) vocabulary.Field {
	field := vocabulary.Unknown
	for i := range body {
		s := body[i].slots[0]
		if taggedIn(text(s.cell)) != nil {
			continue
		}
		of := sectionField(s.cell.line())
		if of == vocabulary.Unknown || field != vocabulary.Unknown && of != field {
			field = vocabulary.Unknown
			break
		}
		field = of
	}
	if field != vocabulary.Unknown {
		return field
	}
	for _, l := range f.p.within(area.Row1-2, area.Row1-1) {
		if c := l.at(area.Col1); !c.blank() {
			if h := f.header(c); h.score >= headerScore && (placeOrType(h.field) == h.field || h.field == vocabulary.Circuit) {
				field = h.field
			}
		}
	}
	return field
}

// planRecords makes a record of each loudspeaker of a line.
func (f *finder) planRecords(t *Table, l *line, label vocabulary.Field) {
	base := Record{Rows: f.p.span(l.n, l.n), At: f.p.ref(l.n, l.slots[0].col), Class: Device, Text: summary(l.slots)}
	switch {
	case l.hidden == grid.HiddenByHand:
		base.Class, base.Reason = Hidden, "row hidden by hand"
	case allStruck(l.slots):
		base.Class, base.Reason = Struck, "struck through"
	}
	named := Value{At: base.At}
	if s := l.slots[0]; label != vocabulary.Unknown && taggedIn(text(s.cell)) == nil {
		named = Value{Cell: s.cell.Cell, At: base.At, Text: s.cell.line(), How: schedule.Stated}
	}
	made := false
	for k, s := range l.slots {
		list := taggedIn(text(s.cell))
		at := f.p.ref(l.n, s.col)
		if t := s.cell.line(); list == nil && k > 0 && anyDigit(t) && !isMissing(t) {
			list = []tagged{{tag: t}} // its watts are not stated
		}
		for _, x := range list {
			one := base
			one.At, one.Text = at, ""
			watts := Value{At: at}
			if x.watts != "" {
				watts = Value{Cell: s.cell.Cell, At: at, Text: x.watts, How: schedule.Stated, Because: "in the cell"}
			}
			one.Values = []Value{{Cell: s.cell.Cell, At: at, Text: x.tag, How: schedule.Stated, Because: "in the cell"}, watts, named}
			t.Records = append(t.Records, one)
			made = true
		}
	}
	if !made {
		base.Class, base.Reason, base.Values = Note, "a note", pad(nil, 3)
		t.Records = append(t.Records, base)
	}
}
