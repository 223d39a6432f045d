package layout

import (
	"regexp"
	"slices"

	"lineaudit/ingest/vocabulary"
)

// reTagBehind finds a short tag in brackets behind a name: "Hall (P1)".
var reTagBehind = regexp.MustCompile(`^(.*\pL.*\S)\s*\((\pL{1,3}[- ]?\d{1,2})\)$`)

// TagsBehindPlaces are the tags in brackets behind names of places, where no column is for
// controls.
func (t *Table) TagsBehindPlaces() (tags []string) {
	if i := t.placesWithTags(); i >= 0 {
		for k := range t.Records {
			if m := reTagBehind.FindStringSubmatch(t.Records[k].Values[i].Text); m != nil && t.Records[k].Class == Device {
				tags = append(tags, m[2])
			}
		}
	}
	return tags
}

// ControlsBehindPlaces takes these tags for controls, because of what a note says.
func (t *Table) ControlsBehindPlaces() {
	i := t.placesWithTags()
	if i < 0 {
		return
	}
	c := t.Columns[i]
	c.Field, c.RunnerUp, c.Evidence = vocabulary.Control, vocabulary.Unknown, "in brackets behind \""+c.Header+"\"; a note says that they are controls"
	t.partColumn(i, c, func(text string) (place, control string) {
		if m := reTagBehind.FindStringSubmatch(text); m != nil {
			return m[1], m[2]
		}
		return "", ""
	})
}

// placesWithTags is the column of places behind which tags stand, -1 if there is none.
func (t *Table) placesWithTags() int {
	if t.Kind != Loudspeakers && t.Kind != Mixed && t.Kind != Zones || slices.ContainsFunc(t.Columns, func(c Column) bool { return c.Field == vocabulary.Control }) {
		return -1
	}
	for i, c := range t.Columns {
		if (c.Field == vocabulary.Room || c.Field == vocabulary.Zone) && slices.ContainsFunc(t.Records, func(r Record) bool {
			return r.Class == Device && reTagBehind.MatchString(r.Values[i].Text)
		}) {
			return i
		}
	}
	return -1
}
