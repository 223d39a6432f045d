package ingest

import (
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// Lists that stand side by side on a sheet may each have a title of their own: "PLATFORM 1" over
// the one and "PLATFORM 2", in the same line, over the other. Each is the zone of its rows.

// A besideKey is where the headers of tables stand that stand side by side.
type besideKey struct {
	sheet       string
	header, top int // rows of the header and of the titles
}

// titlesBeside takes the titles over tables side by side for zones, where nothing else names any.
func (b *builder) titlesBeside() {
	titles := make(map[*table]*layout.Fact)
	groups := make(map[besideKey][]*table)
	var order []besideKey
	for _, t := range b.tables {
		title := t.ownTitle()
		if title == nil {
			continue
		}
		k := besideKey{t.Sheet, t.HeaderRows[0], int(title.At.Row)}
		if groups[k] == nil {
			order = append(order, k)
		}
		titles[t], groups[k] = title, append(groups[k], t)
	}
	for _, k := range order {
		if len(groups[k]) < 2 {
			continue
		}
		texts := make(map[string]bool)
		for _, t := range groups[k] {
			texts[titles[t].Text] = true
		}
		if len(texts) < len(groups[k]) {
			continue
		}
		for _, t := range groups[k] {
			t.sectionsFrom(titles[t])
		}
	}
}

// ownTitle is the title right over the columns of a list of loudspeakers that names no zones, nil if it has none.
// A title of the kinds of things below it is none.
func (t *table) ownTitle() *layout.Fact {
	if t.kind != layout.Loudspeakers && t.kind != layout.Mixed || len(t.HeaderRows) == 0 || t.Transposed || len(t.rows) == 0 || len(t.rows[0].Sections) > 0 || t.has(vocabulary.Zone) || t.title(vocabulary.Zone).had() {
		return nil
	}
	f := titleOver(t.Titles, t.Sheet, t.HeaderRows[0])
	if f == nil || f.Field != vocabulary.Unknown || int(f.At.Col) < t.Range.Col1 || int(f.At.Col) > t.Range.Col2 || headsKind(f.Text) || vocabulary.DeviceIn(f.Text) == vocabulary.LoudspeakerDevice {
		return nil
	}
	return f
}

// sectionsFrom puts the rows of a table that stand in no section below its title, as a zone.
func (t *table) sectionsFrom(title *layout.Fact) {
	zone := *title
	zone.Field = vocabulary.Zone
	for _, r := range t.rows {
		if len(r.Sections) > 0 {
			return
		}
		r.Sections = []layout.Fact{zone}
	}
}
