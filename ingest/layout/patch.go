package layout

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A patch sheet has a row for each amplifier and a column for each of its
// outputs, with the name of what hangs on it in the cell. It becomes a row for each output.

// isOutput reports whether header words name one output: "Ch 1", "Ausgang B".
func isOutput(words string) bool { return wordingOf(words).is(outputLabel) }

func namesOutput(words string) bool {
	return len(words) <= 16 && sectionField(words) == vocabulary.Channel && !reJoint.MatchString(words)
}

// outputLabels counts the cells of a strip that name outputs and stand over words, or all over powers.
func outputLabels(s *strip, below []line) int {
	return max(outputsOver(s, below, lookRoom|lookZone|lookStatus|lookMissing), outputsOver(s, below, lookWatts|lookMissing))
}

// outputsOver counts the cells of a strip that name outputs, where what stands below looks as asked for.
func outputsOver(s *strip, below []line, like look) int {
	labels := 0
	for _, sl := range s.slots {
		if !sl.cell.says().is(outputLabel) {
			continue
		}
		for i := range below {
			if i > 0 && below[i].n > below[i-1].n+1 {
				break // what follows is another list
			}
			if c := below[i].at(sl.col); !c.blank() && lookOf(c)&like == 0 {
				return 0
			}
		}
		labels++
	}
	if labels < 2 {
		return 0
	}
	return labels
}

// patched finds the columns of a patch sheet, in order; nil when the table is none. Below the outputs
// stand names, or all that they give: then the table has no other figures, as one of loads would.
func (f *finder) patched(cols []*heading) (out []int, field vocabulary.Field) {
	if out = outputColumns(cols, lookRoom|lookZone|lookStatus); len(out) > 0 {
		return out, vocabulary.Zone
	}
	if out = outputColumns(cols, lookWatts); len(out) > 0 && len(out) == len(cols)-1 {
		return out, vocabulary.ChannelWatts
	}
	return nil, vocabulary.Unknown
}

// outputColumns are columns beside each other whose headers name outputs and whose cells look as asked for,
// in a table of amplifiers; nil where there are fewer than two.
func outputColumns(cols []*heading, like look) []int {
	var out []int
	for i, h := range cols {
		if len(h.parts) == 0 || h.forced != vocabulary.Unknown || !isOutput(h.parts[len(h.parts)-1]) || h.cells.cells > 0 && h.cells.share(like) < 0.8 {
			continue
		}
		out = append(out, i)
	}
	if len(out) < 2 || out[len(out)-1]-out[0] != len(out)-1 || !setting(cols).claimed(vocabulary.Amplifier) && !listsAmplifiers(cols) {
		return nil
	}
	return out
}

// listsAmplifiers reports whether most cells of a column have a word for an amplifier.
func listsAmplifiers(cols []*heading) bool {
	return slices.ContainsFunc(cols, func(h *heading) bool {
		n := 0
		for _, t := range h.cells.texts {
			if notation.SpeaksOfAmplifier(t) {
				n++
			}
		}
		return n > 0 && 2*n >= h.cells.cells
	})
}

// nameAmplifiers takes the first column with another text in each row for the names
// of amplifiers where no column has them, and reports whether it had to.
func nameAmplifiers(t *Table, cols []*heading) bool {
	if slices.ContainsFunc(t.Columns, func(c Column) bool { return c.Field == vocabulary.Amplifier }) {
		return false
	}
	for i, h := range cols {
		if h.cells.cells > 0 && h.cells.distinct == h.cells.cells && h.cells.share(lookLong) == 0 {
			t.Columns[i].Field, t.Columns[i].Evidence = vocabulary.Amplifier, "a row for each amplifier"
			t.Columns[i].Confidence = max(t.Columns[i].Confidence, 0.6)
			break
		}
	}
	return true
}

// titledLoads reports whether a title above a draft speaks of loads: the powers below outputs are then
// not what these give.
func (f *finder) titledLoads(d *draft) bool {
	return slices.ContainsFunc(d.above, func(n int) bool {
		return slices.ContainsFunc(f.p.within(n, n), func(l line) bool {
			return slices.ContainsFunc(l.slots, func(s slot) bool { return slices.Contains(f.s.Concepts(s.cell.line()), "load") })
		})
	})
}

// buildPatched makes a table of outputs of a patch sheet, whose cells are of a field.
func (f *finder) buildPatched(d *draft, cols []*heading, outputs []int, field vocabulary.Field) *Table {
	rest := append(append([]*heading{}, cols[:outputs[0]]...), cols[outputs[len(outputs)-1]+1:]...)
	dec := decide(rest, map[Kind]float64{Amplifiers: 1.5}, nil)
	t := &Table{Sheet: f.p.sheet, Kind: Amplifiers, Confidence: 0.8, HeaderRows: d.header, Transposed: f.p.turned}
	for i, h := range rest {
		t.Columns = append(t.Columns, h.column(f.p, dec, i))
	}
	f.records(d, t, rest)
	t.Kind, t.Matrix = Channels, true
	worded := nameAmplifiers(t, rest)
	first := cols[outputs[0]]
	var labels []string
	for _, i := range outputs {
		labels = append(labels, cols[i].parts[len(cols[i].parts)-1])
	}
	at, header := f.p.ref(first.at, first.col), strings.Join(labels, ", ")
	channel := len(t.Columns)
	t.Columns = append(t.Columns,
		Column{At: at, Header: header, Field: vocabulary.Channel, Confidence: 0.85, Evidence: "the headers name outputs"},
		Column{At: at, Header: header, Field: field, Confidence: 0.8, Evidence: "what stands under the outputs"})
	var out []Record
	for _, r := range t.Records {
		lines := f.p.within(r.Rows.First, r.Rows.First)
		r.Values = pad(r.Values, len(t.Columns))
		if r.Class != Device && r.Class != Struck && r.Class != Hidden || len(lines) == 0 {
			out = append(out, r)
			continue
		}
		made := false
		for k, i := range outputs {
			c := lines[0].at(cols[i].col)
			if c.blank() || text(c) == "" || isMissing(text(c)) {
				continue
			}
			one := r
			one.Values = pad(r.Values, len(t.Columns))
			one.At = f.p.ref(r.Rows.First, cols[i].col)
			one.Values[channel] = Value{Cell: headerCellOf(f, cols[i]), At: f.p.ref(cols[i].at, cols[i].col), Text: labels[k], How: schedule.Stated}
			one.Values[channel+1] = Value{Cell: c.Cell, At: one.At, Text: text(c), How: schedule.Stated}
			if lookOf(c)&lookStatus != 0 { // "spare" is no zone
				one.Values[channel+1] = Value{At: one.At}
			}
			out = append(out, one)
			made = true
		}
		if !made && worded && !slices.ContainsFunc(r.Values, func(v Value) bool { return notation.SpeaksOfAmplifier(v.Text) }) {
			r.Class, r.Reason, r.Text = NoDevice, "no amplifier, and nothing on any output", summary(lines[0].slots)
		}
		if !made {
			out = append(out, r)
		}
	}
	t.Records = out
	return t
}
