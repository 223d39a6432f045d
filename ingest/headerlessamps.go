package ingest

import (
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Sheets of racks head no column over the names of the amplifiers: beside "Zone", "Power W", "Fuse" stand "Amp A",
// "Amp B", "Amp C". Such a list looks much like one of loudspeakers with places and watts.

// headerlessAmps takes a list with watts for one of amplifiers or outputs where a column without a heading has another
// one of these in each row, and nothing is counted.
func (t *table) headerlessAmps() {
	watts := t.byField[vocabulary.Tap]
	if t.kind != layout.Loudspeakers && t.kind != layout.Mixed || len(watts) != 1 || t.has(vocabulary.Quantity) || t.has(vocabulary.Control) || t.has(vocabulary.Amplifier) || t.has(vocabulary.Channel) {
		return
	}
	for _, c := range t.columns {
		if c.Header != "" {
			continue
		}
		field := t.namesOfAmps(c)
		if field == vocabulary.Unknown {
			continue
		}
		if t.kind = layout.Amplifiers; field == vocabulary.Channel {
			t.kind = layout.Channels
		}
		t.become(c, field, "its cells name another one in each row")
		t.become(watts[0], vocabulary.ChannelWatts, "beside the names of amplifiers or outputs: what they give")
		for _, f := range []vocabulary.Field{vocabulary.Model, vocabulary.Tag} {
			for _, o := range t.byField[f] {
				if o.Confidence < unsureHeader {
					t.become(o, vocabulary.Unknown, "hardly a name beside those of amplifiers") // the fuses
				}
			}
		}
		return
	}
}

// namesOfAmps is the field of a column whose cells are amplifiers or outputs with a word for them, each another one:
// "Amp A", "Amp B"; Unknown for any other.
func (t *table) namesOfAmps(c *column) vocabulary.Field {
	field, names, cells := vocabulary.Unknown, make(map[string]bool), 0
	t.eachText(c, func(text string) {
		cells++
		of := vocabulary.Unknown
		switch notation.KeyOf(text).Kind {
		case notation.KeyAmplifier:
			of = vocabulary.Amplifier
		case notation.KeyChannel:
			of = vocabulary.Channel
		}
		if cells == 1 {
			field = of
		}
		if field != of {
			field = vocabulary.Unknown
		}
		names[join.Key(text)] = true
	})
	if cells < 2 || len(names) != cells {
		return vocabulary.Unknown
	}
	return field
}
