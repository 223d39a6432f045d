package layout

import (
	"slices"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// formFields are the keys that make a sheet of keys and values a form for
// devices rather than a title block.
var formFields = [vocabulary.Fields]bool{vocabulary.Tap: true, vocabulary.Quantity: true, vocabulary.Zone: true, vocabulary.Room: true, vocabulary.Amplifier: true, vocabulary.Channel: true,
	vocabulary.Control: true, vocabulary.ControlWatts: true, vocabulary.ChannelWatts: true, vocabulary.TotalWatts: true, vocabulary.Load: true, vocabulary.Model: true, vocabulary.Tag: true,
	vocabulary.Length: true, vocabulary.Gauge: true, vocabulary.CableType: true, vocabulary.Describe: true}

// A form states one of these keys at least every formEvery lines, and a sheet
// of forms has no more than maxFormLines.
const (
	formEvery    = 60
	maxFormLines = 4000
)

// forms makes a table of a sheet that is filled in like a form, once or
// several times: keys and values, of which at least a tap or a load, and what it belongs to, are stated.
// The facts that became values are taken out of the sheet's facts.
func (sr *sheetReader) forms() {
	if len(sr.tables) > 0 {
		return
	}
	var facts []Fact
	for i := range sr.p.lines {
		sr.watch.Step()
		l := &sr.p.lines[i]
		if len(l.slots) > 12 || i > maxFormLines || len(facts) < i/formEvery {
			return
		}
		if _, numbered := sr.numberedNote(i); numbered {
			continue
		}
		found, _ := sr.f.lineFacts(l, l.slots)
		for _, fact := range found {
			if fact.Key != "" && formFields[fact.Field] && !sr.explains(&fact) {
				facts = append(facts, fact)
			}
		}
	}
	var columns []vocabulary.Field
	var rows [][]Fact
	for _, fact := range facts {
		if n := len(rows); n == 0 || fact.Field == rows[n-1][0].Field {
			rows = append(rows, nil)
		}
		n := len(rows) - 1
		if slices.ContainsFunc(rows[n], func(o Fact) bool { return o.Field == fact.Field }) {
			continue // said twice: the first counts
		}
		rows[n] = append(rows[n], fact)
		if !slices.Contains(columns, fact.Field) {
			columns = append(columns, fact.Field)
		}
	}
	has := func(f vocabulary.Field) bool { return slices.Contains(columns, f) }
	if !has(vocabulary.Tap) && !(has(vocabulary.TotalWatts) && has(vocabulary.Quantity)) || len(columns) < 4 || !has(vocabulary.Zone) && !has(vocabulary.Room) && !has(vocabulary.Tag) {
		return
	}
	t := &Table{Sheet: sr.p.sheet, SheetHidden: sr.sheet.Hidden, Kind: Loudspeakers, Confidence: 0.6, Form: true}
	for _, f := range columns {
		for _, fact := range facts {
			if fact.Field == f {
				h := sr.s.Header(fact.Key)
				t.Columns = append(t.Columns, Column{At: fact.At, Header: fact.Key, Field: f, Unit: h.Unit, Volts: h.Volts, Confidence: min(1, h.Of(f)+0.05),
					Evidence: "key “" + fact.Key + "” of a form"})
				break
			}
		}
	}
	for _, row := range rows {
		r := Record{At: row[0].At, Class: Device, Rows: schedule.Span{First: int(row[0].At.Row), Last: int(row[len(row)-1].At.Row)}, Values: make([]Value, len(columns))}
		for j, f := range columns {
			for _, fact := range row {
				if fact.Field == f {
					r.Values[j] = Value{Cell: fact.Cell, At: fact.At, Text: fact.Text, How: schedule.Stated}
				}
			}
			if r.Values[j].Text == "" {
				r.Values[j].At = r.At
			}
		}
		t.Records = append(t.Records, r)
		t.Range = around(t.Range, r)
	}
	sr.form = t
	sr.inForm = map[schedule.Ref]bool{}
	for i := range t.Records {
		for j := range t.Records[i].Values {
			if v := &t.Records[i].Values[j]; v.Text != "" {
				sr.inForm[v.At] = true
			}
		}
	}
}

// surelyWords is the score from which a value is a word for its own key.
const surelyWords = 0.6

// explains reports whether a value says no more than what its key means, as in a list of
// abbreviations: "Ch. | Channel".
func (sr *sheetReader) explains(f *Fact) bool {
	return !anyDigit(f.Text) && sr.s.Header(f.Text).Of(f.Field) >= surelyWords
}

// around widens a range to hold the values of a record.
func around(a grid.Range, r Record) grid.Range {
	for _, v := range r.Values {
		row, col := int(v.At.Row), int(v.At.Col)
		if a.Row1 == 0 {
			a = grid.Range{Row1: row, Col1: col, Row2: row, Col2: col}
		}
		a.Row1, a.Col1 = min(a.Row1, row), min(a.Col1, col)
		a.Row2, a.Col2 = max(a.Row2, row), max(a.Col2, col)
	}
	return a
}
