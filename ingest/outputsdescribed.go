package ingest

import (
	"slices"

	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// Lists of what stands in a rack describe outputs in the words of their devices: "Unit | Rated | Zone" over "Power amp E1,
// output 1 | 60 W | Hall".

// outputsDescribed takes what such a list describes for its outputs, and its watts for what they give, where each text is
// one for an amplifier, and half of them or more name one of its outputs, another in each row.
func (t *table) outputsDescribed() {
	switch t.kind {
	case layout.Loudspeakers, layout.Mixed, layout.Amplifiers, layout.Channels:
	default:
		return
	}
	if t.Matrix || slices.ContainsFunc([]vocabulary.Field{vocabulary.Channel, vocabulary.Amplifier, vocabulary.Circuit, vocabulary.Quantity, vocabulary.TotalWatts}, t.has) {
		return
	}
	var watts []*column
	for _, f := range []vocabulary.Field{vocabulary.RatedWatts, vocabulary.FrameWatts, vocabulary.ChannelWatts} {
		watts = append(watts, t.byField[f]...)
	}
	slots := t.byField[vocabulary.Tap]
	if len(watts) == 0 {
		watts, slots = slots, nil
	}
	if len(watts) != 1 {
		return
	}
	for _, f := range []vocabulary.Field{vocabulary.Describe, vocabulary.Kind, vocabulary.Item, vocabulary.Model, vocabulary.Unknown} {
		for _, c := range slices.Clone(t.byField[f]) {
			if !t.describesOutputs(c) {
				continue
			}
			t.kind = layout.Channels
			for _, slot := range slots {
				t.become(slot, vocabulary.Unknown, "outputs have no taps") // "Position" over 1, 1, 2
			}
			t.otherUnits(c)
			t.become(c, vocabulary.Channel, "it names amplifiers and their outputs in words")
			if watts[0].Field != vocabulary.ChannelWatts {
				t.become(watts[0], vocabulary.ChannelWatts, "a list of outputs: its watts are what they give")
			}
			return
		}
	}
}

// otherUnits takes the rows of a list whose cell in a column names other equipment for no devices: "Power supply".
func (t *table) otherUnits(c *column) {
	for i := range t.Records {
		r := &t.Records[i]
		if text := r.Values[c.i].Text; r.Class == layout.Device && vocabulary.DeviceIn(text) == vocabulary.OtherDevice && outputKey(text) == "" {
			r.Class, r.Reason = layout.NoDevice, "names other equipment"
		}
	}
}

// describesOutputs reports whether all cells of a column, but those for other equipment, name amplifiers in words, and half of
// them or more one output each, no two the same.
func (t *table) describesOutputs(c *column) bool {
	cells, outputs, amps := 0, 0, true
	seen := make(map[string]bool)
	t.eachText(c, func(text string) {
		if vocabulary.DeviceIn(text) == vocabulary.OtherDevice {
			return
		}
		cells++
		if amps = amps && join.HasWord(join.Amplifier, text); !amps {
			return
		}
		if key := outputKey(text); key != "" {
			outputs++
			seen[key] = true
		}
	})
	return amps && cells > 1 && 2*outputs >= cells && len(seen) == outputs
}
