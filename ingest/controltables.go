package ingest

import (
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// controlsWithTags takes a list for one of controls where each row names
// another control, and the loudspeakers beside them are those that another
// table lists: "Attenuator | Loudspeakers | Watts". Its watts are theirs.
func controlsWithTags(tables []*table) {
	for _, t := range tables {
		controls, tags, watts := t.byField[vocabulary.Control], t.byField[vocabulary.Tag], t.byField[vocabulary.Tap]
		if t.kind != layout.Loudspeakers || len(controls) != 1 || len(tags) != 1 || len(watts) != 1 || t.has(vocabulary.Quantity) || t.has(vocabulary.ControlWatts) {
			continue
		}
		names := make(map[string]bool)
		t.eachText(controls[0], func(text string) { names[join.Key(text)] = true })
		if len(names) != t.devices() || !t.tagsStandIn(tags[0], tables) {
			continue
		}
		t.kind = layout.Controls
		t.become(watts[0], vocabulary.ControlWatts, "each row is another control, of loudspeakers that another table lists")
	}
}

// tagsStandIn reports whether other tables list all loudspeakers that the cells of a column name.
func (t *table) tagsStandIn(c *column, tables []*table) bool {
	listed := make(map[string]bool)
	for _, o := range tables {
		if o == t || o.kind != layout.Loudspeakers || !o.has(vocabulary.Tap) && !o.has(vocabulary.TotalWatts) {
			continue
		}
		for _, tag := range o.byField[vocabulary.Tag] {
			o.eachText(tag, func(text string) { listed[join.Key(text)] = true })
		}
	}
	if len(listed) == 0 {
		return false
	}
	all := true
	t.eachText(c, func(text string) {
		list, err := notation.ParseTags(text)
		if err != nil {
			all = false
			return
		}
		for _, tag := range list.List {
			all = all && listed[join.Key(tag)]
		}
	})
	return all
}

// namesOfControls takes the column of a list of controls whose cells are a series
// of tags for their names where those of the column of controls are none, but say
// of what sort they are: "WA1 | 10-step, 3 dB".
func (t *table) namesOfControls() {
	controls := t.byField[vocabulary.Control]
	if t.kind != layout.Controls || len(controls) != 1 || t.has(vocabulary.Tag) {
		return
	}
	named := false
	t.eachText(controls[0], func(text string) { named = named || plainTag(text) || notation.KeyOf(text).Kind == notation.KeyControl })
	if named {
		return
	}
	for _, f := range []vocabulary.Field{vocabulary.Model, vocabulary.Item, vocabulary.Unknown} {
		for _, c := range t.byField[f] {
			if t.seriesOfTags(c) {
				t.become(controls[0], vocabulary.ControlModel, "another column has the names of the controls")
				t.become(c, vocabulary.Control, "a tag in each row of a list of controls")
				return
			}
		}
	}
}

// seriesOfTags reports whether each device of the table has another tag in a
// column, all with the same letters.
func (t *table) seriesOfTags(c *column) bool {
	seen := make(map[string]bool)
	cells, letters, all := 0, "", true
	t.eachText(c, func(text string) {
		prefix := strings.TrimRight(text, "0123456789")
		if cells++; cells == 1 {
			letters = prefix
		}
		all = all && plainTag(text) && prefix == letters && !seen[text]
		seen[text] = true
	})
	return all && cells >= 2 && cells == t.devices()
}
