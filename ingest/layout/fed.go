package layout

import (
	"slices"
	"strings"

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
	t.addControls(i, "some cells of \""+t.Columns[i].Header+"\" are tags of controls", func(r *Record) (rest, control Value) {
		v := r.Values[i]
		if !isControl(r) {
			return v, Value{}
		}
		return Value{At: v.At}, v
	})
}

// controlsInPlaces parts names of zones and rooms from the controls that they
// are said to hang on, "Office (via VC-2, 24 W)", where no column is for controls.
func controlsInPlaces(t *Table) {
	if t.Kind == Cables || t.Kind == Controls || slices.ContainsFunc(t.Columns, func(c Column) bool {
		return c.Field == vocabulary.Control || c.Field == vocabulary.ControlWatts || c.Field == vocabulary.ControlModel
	}) {
		return
	}
	for i := range t.Columns {
		c := &t.Columns[i]
		if c.Field != vocabulary.Zone && c.Field != vocabulary.Room || !slices.ContainsFunc(t.Records, func(r Record) bool {
			_, control := behindControl(r.Values[i].Text)
			return r.Class == Device && control != ""
		}) {
			continue
		}
		t.addControls(i, "behind some names of \""+c.Header+"\"", func(r *Record) (rest, control Value) {
			v := r.Values[i]
			place, name := behindControl(v.Text)
			if name == "" {
				return v, Value{}
			}
			rest, control = v, v
			rest.Text, control.Text, control.Cell = place, name, nil
			return rest, control
		})
		return
	}
}

// behindControl parts the name of a place from the one control that it is said
// to hang on; control is "" if there is none.
func behindControl(t string) (place, control string) {
	if len(t) > maxText || !anyDigit(t) {
		return "", ""
	}
	for at := 1; at < len(t); at++ {
		if t[at-1] != ' ' && t[at-1] != '(' {
			continue
		}
		word, rest, _ := strings.Cut(t[at:], " ")
		if wordList()[vocabulary.Fold(word)]&classBehind == 0 {
			continue
		}
		if list, err := notation.ParseControls(rest, notation.Auto); err == nil && len(list) == 1 && (list[0].Name != "" || list[0].W > 0) {
			return strings.TrimRight(t[:at], " ,;:(–-"), strings.Trim(rest, " ()")
		}
	}
	return "", ""
}

// addControls adds a column for the controls that the cells of column i name;
// part parts each of them.
func (t *Table) addControls(i int, why string, part func(r *Record) (rest, control Value)) {
	c := t.Columns[i]
	c.Field, c.RunnerUp, c.Evidence = vocabulary.Control, vocabulary.Unknown, why
	t.Columns = append(t.Columns, c)
	for k := range t.Records {
		r := &t.Records[k]
		rest, control := part(r)
		r.Values = append(pad(r.Values, len(t.Columns)-1), control)
		r.Values[i] = rest
	}
}
