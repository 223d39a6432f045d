package layout

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A column for each line or output may list what hangs on it, a loudspeaker in words in each cell: "Line 1 | Line 2" over
// "amp A, 240 W | amp B, 60 W" and "Yard north, horn 30 W | Office, ceiling 3 W".

// reWordedOne parts such a cell from the watts at its end: "Yard north, horn 30 W", "2 horns 15 W, quay".
var reWordedOne = regexp.MustCompile(`(?i)^(?:(\d{1,3})\s*(?:[x×]\s*)?)?(\pL.{2,80}?)[\s,:@(–-]+(\d{1,3}(?:[.,]\d{1,2})?)\s*w(?:atts?)?\.?\)?$`)

// A wordedOne is what such a cell says.
type wordedOne struct{ place, kind, count, watts string }

// wordedOneOf takes a cell apart; ok is false where it is none: one of its parts names a kind of loudspeaker, the other a place.
func wordedOneOf(t string) (one wordedOne, ok bool) {
	m := reWordedOne.FindStringSubmatch(t)
	if m == nil || strings.ContainsAny(t, "\n;") {
		return one, false
	}
	at := max(strings.LastIndex(m[2], ", "), strings.LastIndex(m[2], " - "), strings.LastIndex(m[2], " – "), strings.LastIndex(m[2], ": "))
	if at < 0 {
		return one, false
	}
	place, kind := strings.TrimSpace(m[2][:at]), strings.Trim(m[2][at:], " ,:–-")
	isKind := func(s string) bool {
		return vocabulary.DeviceIn(s) == vocabulary.LoudspeakerDevice || classWithin(s)&(classDevice|classMounting) != 0
	}
	if !isKind(kind) || isKind(place) || vocabulary.DeviceIn(place) != vocabulary.NoDevice || notation.SpeaksOfAmplifier(t) {
		return one, false
	}
	return wordedOne{place, kind, m[1], m[3]}, true
}

// wordedColumns finds such columns and makes a record of each cell; nil if there are none.
func (f *finder) wordedColumns() (*Table, grid.Range) {
	lines := f.p.lines
	for i := 0; i+2 < len(lines); i++ {
		f.watch.Step()
		field := columnsOf(&lines[i])
		if field == vocabulary.Unknown {
			continue
		}
		end := i + 1
		for end < len(lines) && lines[end].n == lines[end-1].n+1 {
			end++
		}
		if t, area := f.wordedTable(&lines[i], lines[i+1:end], field); t != nil {
			return t, area
		}
	}
	return nil, grid.Range{}
}

// columnsOf is what all cells of a line name, each another one: lines, outputs or amplifiers.
func columnsOf(l *line) vocabulary.Field {
	field, names := vocabulary.Unknown, map[string]bool{}
	for _, s := range l.slots {
		t := s.cell.line()
		of := sectionField(t)
		if s.cell.Kind != grid.String || !feeders[of] || field != vocabulary.Unknown && of != field || names[t] {
			return vocabulary.Unknown
		}
		field, names[t] = of, true
	}
	if len(names) < 2 {
		return vocabulary.Unknown
	}
	return field
}

// wordedTable reads the lines below the names of the columns. A first line of amplifiers, or of what they give, holds for
// its columns; all other cells are loudspeakers, or what they come to.
func (f *finder) wordedTable(head *line, body []line, field vocabulary.Field) (*Table, grid.Range) {
	area := grid.Range{Row1: head.n, Col1: head.slots[0].col, Row2: head.n, Col2: head.slots[len(head.slots)-1].col}
	var fed *line
	if len(body) > 0 && !slices.ContainsFunc(body[0].slots, func(s slot) bool {
		return !notation.SpeaksOfAmplifier(text(s.cell)) && lookOf(s.cell)&(lookRating|lookWatts|lookAmp) == 0
	}) {
		fed, body = &body[0], body[1:]
	}
	t := &Table{Sheet: f.p.sheet, Kind: Loudspeakers, Confidence: 0.7, Matrix: true, Transposed: f.p.turned, HeaderRows: []int{head.n}}
	at := f.p.ref(head.n, area.Col1)
	fields := []vocabulary.Field{field, vocabulary.Room, vocabulary.Describe, vocabulary.Quantity, vocabulary.Tap}
	if fed != nil {
		fields = append(fields, vocabulary.Amplifier)
	}
	for _, of := range fields {
		t.Columns = append(t.Columns, Column{At: at, Field: of, Confidence: 0.7, Evidence: "a loudspeaker in words in each cell"})
	}
	t.Columns[0].Evidence = "the lines stand over what hangs on them"
	t.Columns[4].Unit = "W"
	found := 0
	for i := range body {
		l := &body[i]
		for _, s := range l.slots {
			name := head.at(s.col)
			r := Record{Rows: f.p.span(l.n, l.n), At: f.p.ref(l.n, s.col), Class: Device}
			r.Values = pad(nil, len(t.Columns))
			one, ok := wordedOneOf(s.cell.line())
			switch {
			case s.cell.Struck == grid.WholeStruck:
				one, ok = wordedOneOf(oneLine(written(s.cell.Cell)))
				r.Class, r.Reason = Struck, "struck through"
			case isMissing(s.cell.line()):
				continue
			case !ok && !name.blank() && isTotalText(strings.TrimRight(reLabelWatts.ReplaceAllString(s.cell.line(), ""), " :=.")):
				r.Class, r.Reason, r.Text = Total, "what the column comes to", s.cell.line()
				t.Records = append(t.Records, r)
				continue
			}
			if !ok || name.blank() {
				return nil, area
			}
			put := func(j int, from *grid.Cell, at schedule.Ref, text string) {
				if text != "" {
					r.Values[j] = Value{Cell: from, At: at, Text: text, How: schedule.Stated, Because: "in the cell"}
				}
			}
			put(0, name.Cell, f.p.ref(head.n, s.col), name.line())
			for j, text := range []string{one.place, one.kind, one.count, one.watts} {
				put(j+1, s.cell.Cell, r.At, text)
			}
			if fed != nil && !fed.at(s.col).blank() {
				put(5, fed.at(s.col).Cell, f.p.ref(fed.n, s.col), fed.at(s.col).line())
			}
			t.Records = append(t.Records, r)
			found++
		}
		area.Row2 = l.n
	}
	if found < fewestTagged {
		return nil, area
	}
	t.countOrNone(3)
	t.Range = f.p.area(area)
	return t, area
}

// countOrNone takes a column of counts off a table that fills it nowhere; where some cells count, one that does not is one.
func (t *Table) countOrNone(j int) {
	counted := slices.ContainsFunc(t.Records, func(r Record) bool { return r.Values[j].Text != "" })
	for i := range t.Records {
		r := &t.Records[i]
		switch {
		case !counted:
			r.Values = slices.Delete(r.Values, j, j+1)
		case r.Values[j].Text == "" && r.Class != Total:
			r.Values[j] = r.Values[j+1]
			r.Values[j].Text, r.Values[j].Because = "1", "one in the cell"
		}
	}
	if !counted {
		t.Columns = slices.Delete(t.Columns, j, j+1)
	}
}
