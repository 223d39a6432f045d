package ingest

import (
	"regexp"

	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// ampsInRacks takes what a list of a rack describes for the amplifiers where each row with a power describes another one
// by a name of its own, and what was taken for amplifiers are places in the rack: "Units | Device | Outputs | W per
// output" over "U4-U6 | Amplifier 1 | 2 | 240" and "U9 | fan". The other rows are no amplifiers.
func (t *table) ampsInRacks() {
	if t.kind != layout.Amplifiers && t.kind != layout.Channels || t.Matrix {
		return
	}
	places := t.byField[vocabulary.Amplifier]
	if len(places) > 1 || len(places) == 1 && !t.allCells(places[0], rackPlace.MatchString) {
		return
	}
	watts := append(append([]*column(nil), t.byField[vocabulary.ChannelWatts]...), t.byField[vocabulary.FrameWatts]...)
	if len(watts) != 1 {
		return
	}
	for _, f := range []vocabulary.Field{vocabulary.Describe, vocabulary.Kind, vocabulary.Model, vocabulary.Item, vocabulary.Unknown} {
		for _, c := range t.byField[f] {
			if !t.namesRated(c, watts[0]) {
				continue
			}
			if len(places) == 1 {
				t.become(places[0], vocabulary.Unknown, "places in the rack: another column names the amplifiers")
			}
			t.become(c, vocabulary.Amplifier, "it names another amplifier in each row with a power")
			for i := range t.Records {
				if r := &t.Records[i]; r.Class == layout.Device && r.Values[watts[0].i].Text == "" {
					r.Class, r.Reason = layout.NoDevice, "another device in the rack"
				}
			}
			return
		}
	}
}

// rackPlace is a place in a rack, in units: "U4-U6", "12", "7-8 HE".
var rackPlace = regexp.MustCompile(`(?i)^(?:u|he|ru|te|hu)?\s?\d{1,2}(?:\s?[-–/+.]+\s?(?:u|he|ru|te|hu)?\s?\d{1,2})?\s?(?:u|he|ru|te|hu)?$`)

// namesRated reports whether two rows or more have a power, each of them with the word for an amplifier and a name of its
// own in a column, and others have neither.
func (t *table) namesRated(c, watts *column) bool {
	seen := make(map[string]bool)
	rated := 0
	for i := range t.Records {
		r := &t.Records[i]
		if r.Class != layout.Device {
			continue
		}
		name := r.Values[c.i].Text
		amp := join.HasWord(join.Amplifier, name) && countWords(name) > 1
		if has := r.Values[watts.i].Text != ""; has != amp || amp && seen[join.Key(name)] {
			return false
		}
		if amp {
			rated++
			seen[join.Key(name)] = true
		}
	}
	return rated > 1 && rated < t.devices()
}
