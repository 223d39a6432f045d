package ingest

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A cable book lists the loudspeakers by the cables that lead to them: from the
// amplifier to the first, from the first to the second. The far end is then
// the tag of a loudspeaker, the near end what it hangs on.

// endFields are the fields that the two columns of ends may have been taken for.
var endFields = map[vocabulary.Field]bool{vocabulary.From: true, vocabulary.To: true, vocabulary.Channel: true, vocabulary.Amplifier: true,
	vocabulary.Circuit: true, vocabulary.Tag: true, vocabulary.Item: true, vocabulary.Control: true, vocabulary.Zone: true, vocabulary.Unknown: true}

// leastChained is the least share of near ends that are the far ends of other rows.
const leastChained = 0.3

// chainColumns finds the two columns of ends in a table of devices with taps,
// whatever their headers say.
func (t *table) chainColumns() {
	if !t.has(vocabulary.Tap) || t.Matrix || t.kind == layout.Types || !t.has(vocabulary.Length) && !t.has(vocabulary.Cable) && !t.has(vocabulary.Gauge) && !t.has(vocabulary.From) && !t.has(vocabulary.To) {
		return
	}
	var near, far *column
	best := 0.0
	ends := make([]endColumn, len(t.columns))
	for i, c := range t.columns {
		if endFields[c.Field] {
			ends[i] = t.endsIn(c)
		}
	}
	for i, f := range t.columns {
		if !ends[i].each {
			continue
		}
		for k, n := range t.columns {
			if n == f || !endFields[n.Field] {
				continue
			}
			share := t.chainedShare(n, &ends[k], &ends[i])
			if share == 0 {
				continue
			}
			if n.Field == vocabulary.To || f.Field == vocabulary.From {
				share -= 1
			}
			if n.Field == vocabulary.From || f.Field == vocabulary.To {
				share += 1
			}
			if share > best {
				near, far, best = n, f, share
			}
		}
	}
	if near != nil {
		t.chain(near, far)
	}
}

// An endColumn is a column that may hold ends of cables.
type endColumn struct {
	keys  []string // of the devices
	names map[string]bool
	each  bool // it has another name for each device
}

func (t *table) endsIn(c *column) endColumn {
	e := endColumn{keys: make([]string, 0, len(t.Records)), names: make(map[string]bool, len(t.Records)), each: true}
	for i := range t.Records {
		if r := &t.Records[i]; r.Class == layout.Device {
			text := r.Values[c.i].Text
			k := join.Key(text)
			e.each = e.each && text != "" && !e.names[k]
			e.keys, e.names[k] = append(e.keys, k), true
		}
	}
	e.each = e.each && len(e.keys) >= 3
	return e
}

// chainedShare is the share of the cells in one column that are the cells of
// other rows in another; 0 if it is too small, or if no cell is an outlet that
// a chain may begin with.
func (t *table) chainedShare(c *column, near, far *endColumn) float64 {
	cells, chained, device := 0, 0, -1
	for i, k := range near.keys {
		if k == "" {
			continue
		}
		cells++
		if k == far.keys[i] {
			return 0
		}
		if far.names[k] {
			chained++
		}
	}
	if chained == 0 || float64(chained) < leastChained*float64(cells) {
		return 0
	}
	roots, begins := 0, 0
	for i := range t.Records {
		r := &t.Records[i]
		if r.Class != layout.Device {
			continue
		}
		device++
		k := near.keys[device]
		if k == "" || far.names[k] {
			continue
		}
		roots++
		text := r.Values[c.i].Text
		kind := notation.KeyOf(text).Kind
		if c, err := notation.ParseChannel(text); err == nil && (c.Amplifier != "" || strings.Contains(text, " ")) || kind == notation.KeyAmplifier || kind == notation.KeyChannel || kind == notation.KeyControl || isRack(text) {
			begins++
		}
	}
	if roots == 0 || 2*begins < roots {
		return 0
	}
	return float64(chained) / float64(cells)
}

// chain gives the two columns of ends their fields: see cableBooks.
func (t *table) chain(near, far *column) {
	for _, end := range []struct {
		c *column
		f vocabulary.Field
	}{{near, vocabulary.From}, {far, vocabulary.To}} {
		for _, c := range slices.Clone(t.byField[end.f]) {
			if c != near && c != far {
				t.become(c, vocabulary.Unknown, "the ends of the cables stand in other columns")
			}
		}
		if end.c.Field != end.f {
			t.become(end.c, end.f, "the cables lead on from device to device")
		}
	}
}

// outputsOfOne takes "Ampli S1", "Ampli S2" for outputs of the one amplifier
// that a note gives that many outputs without a name.
func (b *builder) outputsOfOne() {
	n := 0
	for i := range b.said {
		if s := &b.said[i]; s.Name == "" && s.Outputs > 1 {
			n = s.Outputs
		}
	}
	if n == 0 || len(b.dir.amps) > 0 {
		return
	}
	names := make(map[string]bool)
	var outlets []*outlet
	for _, t := range b.tables {
		for _, r := range t.rows {
			if o := b.outletOf(r); r.out == "" && o.amp != "" && r.kind == loudspeakerRow {
				if len(o.channels) > 0 {
					return
				}
				names[join.Key(o.amp)] = true
				if !slices.Contains(outlets, o) {
					outlets = append(outlets, o)
				}
			}
		}
	}
	if len(names) != n {
		return
	}
	for _, o := range outlets {
		c := b.channelRef(o.amp)
		o.channels, o.at, o.amp = []string{o.amp}, o.ampAt, ""
		if c.ok && c.ref.Amplifier != "" && len(c.ref.Channels) == 0 {
			o.channels = []string{c.ref.Amplifier}
		}
		b.take(o.at, vocabulary.Channel.String(), o.channels[0], schedule.LikelierReading, "a note names one amplifier with "+itoa(n)+" outputs")
	}
}
