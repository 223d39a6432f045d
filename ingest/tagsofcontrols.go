package ingest

import (
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A list of controls may be named by no row of the loudspeakers: "Ref. | Place | W" below the title "Line
// attenuators", "Tag | Place | W" with the tags ATT1 and ATT2, "Setting | Room | Power" with RG-A and RG-B.

// tagsOfControls takes lists of tags, places and powers for lists of controls where their title, their tags or the
// header of these say so, and another table lists loudspeakers with their taps.
func tagsOfControls(tables []*table) {
	lists := func(t *table) bool {
		return (t.kind == layout.Loudspeakers || t.kind == layout.Mixed) && (t.has(vocabulary.Tap) || t.has(vocabulary.TotalWatts))
	}
	for _, t := range tables {
		if !slices.ContainsFunc(tables, func(o *table) bool { return o != t && lists(o) }) || !t.mayTagControls() {
			continue
		}
		tags, watts := t.tagsBesidePower()
		if tags == nil || !t.titledControls() && !t.controlTags(tags) && tags.Field != vocabulary.Tap {
			continue
		}
		t.kind = layout.Controls
		if tags.Field != vocabulary.Control {
			t.become(tags, vocabulary.Control, "the tags of a list of controls")
		}
		t.become(watts, vocabulary.ControlWatts, "a list of controls: its watts are what they carry")
		t.itemsBehind(tables)
	}
}

// mayTagControls reports whether a table of places and powers may be a list of controls: it has no outputs, loads and
// words for loudspeakers, and counts nothing but under a header that speaks of loudspeakers.
func (t *table) mayTagControls() bool {
	switch t.kind {
	case layout.Loudspeakers, layout.Mixed, layout.Types, layout.Amplifiers:
	default:
		return false
	}
	if !t.has(vocabulary.Room) && !t.has(vocabulary.Zone) || slices.ContainsFunc([]vocabulary.Field{vocabulary.Channel, vocabulary.Circuit, vocabulary.TotalWatts,
		vocabulary.TapList, vocabulary.ControlWatts, vocabulary.Length}, t.has) {
		return false
	}
	for _, c := range t.byField[vocabulary.Quantity] {
		if !speaksOfSpeakers(c) {
			return false
		}
	}
	for i := range t.Records {
		r := &t.Records[i]
		for _, c := range t.columns {
			if r.Class == layout.Device && kindInWords(r.Values[c.i].Text) == loudspeakerRow {
				return false
			}
		}
	}
	return true
}

// speaksOfSpeakers reports whether the header of a column has a word for loudspeakers: "LS no. behind it".
func speaksOfSpeakers(c *column) bool {
	return slices.Contains(vocabulary.NewScorer().Concepts(c.Header), "speaker")
}

// tagsBesidePower are the one column of a table in which each device has another short tag, and its one column of
// powers; nil where it has not both.
func (t *table) tagsBesidePower() (tags, watts *column) {
	for _, c := range t.columns {
		switch c.Field {
		case vocabulary.Tag, vocabulary.Item, vocabulary.Model, vocabulary.Tap, vocabulary.RatedWatts, vocabulary.ChannelWatts, vocabulary.FrameWatts, vocabulary.Amplifier, vocabulary.Control, vocabulary.Unknown:
		default:
			continue
		}
		seen := make(map[string]bool)
		cells, tagged, powers := 0, true, true
		t.eachText(c, func(text string) {
			cells++
			tagged = tagged && isTag(text) && len(text) <= longestTag && !strings.ContainsAny(text, " /") && !seen[join.Key(text)]
			_, err := notation.ParseRating(text, notation.Auto)
			powers = powers && err == nil
			seen[join.Key(text)] = true
		})
		isPower := c.Field == vocabulary.Tap || c.Field == vocabulary.RatedWatts || c.Field == vocabulary.ChannelWatts || c.Field == vocabulary.FrameWatts
		switch {
		case cells < 2 || cells != t.devices():
		case tagged && onlyTags(seen):
			if tags != nil {
				return nil, nil
			}
			tags = c
		case powers && isPower:
			if watts != nil {
				return nil, nil
			}
			watts = c
		}
	}
	if tags == nil || watts == nil {
		return nil, nil
	}
	return tags, watts
}

// onlyTags reports whether keys of texts are no powers: "24w".
func onlyTags(keys map[string]bool) bool {
	for k := range keys {
		if onlyWatts(k) != "" {
			return false
		}
	}
	return true
}

// titledControls reports whether the title right over a table, or the name of its sheet where no title is there, is a
// word for controls.
func (t *table) titledControls() bool {
	controls := func(text string) bool {
		return !anyDigit(text) && countWords(text) <= fewWords && vocabulary.DeviceIn(text) == vocabulary.ControlDevice
	}
	if len(t.HeaderRows) == 0 {
		return false
	}
	if f := titleOver(t.Titles, t.Sheet, t.HeaderRows[0]); f != nil {
		return controls(f.Text)
	}
	return controls(t.Sheet)
}

// controlTags reports whether all tags of a column begin with a word for a control: "ATT1", "VC-2".
func (t *table) controlTags(c *column) bool {
	all := true
	t.eachText(c, func(text string) { all = all && notation.KeyOf(text).Kind == notation.KeyControl })
	return all
}

// itemsBehind takes a column under a header for loudspeakers for the items of those behind each control where the
// loudspeakers of these items are at the place of the control: "LS no. | Place" with "7 | Depot, east door".
func (t *table) itemsBehind(tables []*table) {
	places := make(map[string]string) // by item: the words of its row
	for _, o := range tables {
		if o == t || o.kind != layout.Loudspeakers && o.kind != layout.Mixed {
			continue
		}
		for _, c := range o.byField[vocabulary.Item] {
			for i := range o.Records {
				if r := &o.Records[i]; r.Class == layout.Device && r.Values[c.i].Text != "" {
					places[join.Key(r.Values[c.i].Text)] += "\n" + o.wordsOfPlace(r)
				}
			}
		}
	}
	for _, c := range t.byField[vocabulary.Quantity] {
		all := len(places) > 0
		for i := range t.Records {
			r := &t.Records[i]
			if r.Class != layout.Device {
				continue
			}
			place, _, _ := strings.Cut(t.wordsOfPlace(r), ",")
			all = all && place != "" && strings.Contains(places[join.Key(r.Values[c.i].Text)]+"\n", "\n"+place+"\n")
		}
		if all {
			t.become(c, vocabulary.Item, "its numbers are items of loudspeakers at these places")
			t.itemLists = &all
			return
		}
	}
}

// wordsOfPlace are the rooms, zones and descriptions of a record, folded, one a line.
func (t *table) wordsOfPlace(r *layout.Record) string {
	var out []string
	for _, f := range []vocabulary.Field{vocabulary.Room, vocabulary.Describe, vocabulary.Zone} {
		for _, c := range t.byField[f] {
			if text := r.Values[c.i].Text; text != "" {
				out = append(out, join.Fold(text))
			}
		}
	}
	return strings.Join(out, "\n")
}
