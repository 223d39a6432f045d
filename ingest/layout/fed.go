package layout

import (
	"slices"

	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// controlsAmongOutputs parts a column that tells what loudspeakers are fed
// from, "VC-01" in some rows and "AMP 1-2" in others, where no column is for
// controls: the cells that are tags of controls go to a column of their own.
func controlsAmongOutputs(t *Table) {
	if t.Kind != Loudspeakers && t.Kind != Mixed || slices.ContainsFunc(t.Columns, func(c Column) bool { return c.Field == vocabulary.Control }) {
		return
	}
	i := slices.IndexFunc(t.Columns, func(c Column) bool { return c.Field == vocabulary.Channel || c.Field == vocabulary.Amplifier })
	if i < 0 {
		return
	}
	isControl := func(r *Record) bool {
		return r.Class == Device && notation.KeyOf(r.Values[i].Text).Kind == notation.KeyControl
	}
	if !slices.ContainsFunc(t.Records, func(r Record) bool { return isControl(&r) }) {
		return
	}
	c := t.Columns[i]
	c.Field, c.RunnerUp, c.Evidence = vocabulary.Control, vocabulary.Unknown, "some cells of \""+c.Header+"\" are tags of controls"
	t.Columns = append(t.Columns, c)
	for k := range t.Records {
		r := &t.Records[k]
		r.Values = pad(r.Values, len(t.Columns))
		if isControl(r) {
			r.Values[len(t.Columns)-1] = r.Values[i]
			r.Values[i] = Value{At: r.Values[i].At}
		}
	}
}
