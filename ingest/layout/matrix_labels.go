package layout

import (
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// crossedLabels takes the labels and the taps they name.
func (f *finder) crossedLabels(x *crosstab, cols []*heading) {
	group := cols[x.cols[0]].parts[0]
	for _, i := range x.cols {
		if p := cols[i].parts; len(p) < 2 || p[0] != group {
			group = ""
		}
	}
	for _, i := range x.cols {
		parts := cols[i].parts
		if group != "" {
			parts = parts[1:]
		}
		label := strings.Join(parts, " ")
		x.labels = append(x.labels, label)
		x.taps = append(x.taps, labelTap(label))
	}
	if group != "" && x.field == vocabulary.Unknown {
		x.field = placeOrType(f.s.Header(group).Best().Field)
	}
}

// labelTap is the power that a label says a type is tapped at: the only one it
// names, or the one behind a word for setting.
func labelTap(label string) string {
	if m := reLabelSet.FindStringSubmatch(label); m != nil {
		return m[1]
	}
	if all := reLabelWatts.FindAllString(label, 3); len(all) == 1 {
		return all[0]
	}
	return ""
}

func placeOrType(field vocabulary.Field) vocabulary.Field {
	switch field {
	case vocabulary.Zone, vocabulary.Room, vocabulary.Floor, vocabulary.Building, vocabulary.Circuit, vocabulary.Channel:
		return field
	case vocabulary.Model, vocabulary.Describe, vocabulary.Kind, vocabulary.Tag:
		return vocabulary.Model
	}
	return vocabulary.Unknown
}

// crossedField decides what plain words over counts are: the corner may say
// ("Room \ Type"); else they are types where the lines are places, and places where they are types.
func (f *finder) crossedField(x *crosstab, cols []*heading) vocabulary.Field {
	if x.cols[0] > 0 {
		corner := cols[x.cols[0]-1].words
		if a, b, ok := strings.Cut(strings.NewReplacer("\\", "/", "→", "/").Replace(corner), "/"); ok && a != "" {
			if field := placeOrType(f.s.Header(strings.TrimSpace(b)).Best().Field); field != vocabulary.Unknown {
				return field
			}
		}
	}
	zone := false
	for i, h := range cols {
		if i >= x.cols[0] {
			break
		}
		switch field, score := h.best(); {
		case score < 0.5:
		case typed(cols[i : i+1]):
			return vocabulary.Zone
		case field == vocabulary.Zone:
			zone = true
		case field == vocabulary.Model, field == vocabulary.Describe, field == vocabulary.Tag, field == vocabulary.Kind:
			return vocabulary.Zone
		}
	}
	if !zone {
		for i, h := range cols {
			if i < x.cols[0] && h.cells.share(lookDevice) > 0.4 {
				return vocabulary.Zone
			}
		}
	}
	return vocabulary.Model
}

// tapRow looks for a line under the header that says what each type is tapped at.
func (f *finder) tapRow(x *crosstab, cols []*heading, body []line) {
	if x.field != vocabulary.Model {
		return
	}
	for i := range body[:min(3, len(body))] {
		l := &body[i]
		named := false
		if first := l.slots[0]; first.col < cols[x.cols[0]].col && first.cell.Kind == grid.String {
			fld := f.keyField(first.cell.line())
			named = fld == vocabulary.Tap || fld == vocabulary.RatedWatts
		}
		watts, cells := 0, 0
		taps, at := make([]string, len(x.cols)), make([]slot, len(x.cols))
		for k, j := range x.cols {
			c := l.at(cols[j].col)
			if c.blank() {
				continue
			}
			cells++
			if look := lookOf(c); look&lookWatts != 0 || named && look&lookNumber != 0 {
				watts++
				taps[k], at[k] = text(c), slot{cols[j].col, c}
			}
		}
		if watts >= 2 && watts == cells {
			x.taps, x.tapAt, x.tapRow = taps, at, l.n
			return
		}
	}
}
