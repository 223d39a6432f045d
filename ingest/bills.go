package ingest

import (
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Bills list cable by the metre: "Cable 2 x 1.5 mm², line 1 | m | 140". A row
// that is no device, tells the size of a conductor and the line or output that
// it is for, and counts metres or feet, is the cable of that line.

// billedCables enters such rows.
func (b *builder) billedCables() {
	var at map[string][]*schedule.Loudspeaker
	for _, t := range b.tables {
		for _, r := range t.rows {
			if (r.Class == layout.NoDevice || r.billed) && r.out != "" && !t.again && t.has(vocabulary.Describe) && t.has(vocabulary.Quantity) {
				if b.billedCable(r); r.used {
					continue
				}
				if at == nil {
					at = b.speakersByPlace()
				}
				b.billedByPlace(r, at)
				if !r.used {
					b.billedByChapter(r, at)
				}
			}
		}
	}
}

func (b *builder) billedCable(r *row) {
	s := r.own(vocabulary.Describe)
	size, _, ok := notation.ConductorIn(s.text, notation.Auto)
	channel := b.channelIn(s.text)
	if channel == nil && r.billed {
		if list := b.channelsOf(r); len(list) == 1 { // that of the section it stands in
			channel = list[0]
		}
	}
	length, has := b.billedLength(r)
	if !ok || channel == nil || !has {
		return
	}
	c := &schedule.Cable{At: r.At, Channel: channel, Reach: schedule.WholeLine, Length: length}
	if z := r.zoneText(); r.billed && z.had() {
		c.Zone = b.zones[b.zoneNames.Find(z.text).Key]
	}
	if item := r.first(vocabulary.Cable, vocabulary.Item, vocabulary.Tag); item.had() {
		c.Name, c.Key, c.At = tidy(item.text), item.key(), item.source.At
	}
	s.text, s.cell = size.String(), nil
	b.readConductor(c, s, vocabulary.Gauge)
	b.enterCable(c)
	r.kind, r.out, r.reason, r.used = cableRow, "", "", true
	for _, l := range b.job.Loudspeakers {
		if l.Channel == channel && l.Run == nil && l.Status == schedule.Installed {
			l.Run = c
		}
	}
	s.source.Written = r.Text
	b.take(s, "length", plain(float64(length.Low))+" m of the whole line "+channel.Label(), schedule.LikelierReading, "metres of a bill are those of the cable laid")
}

// isBilledCable reports whether a row of a bill is a cable by the metre or foot: its words
// are those for one, with a size, and its quantity is a length.
func (b *builder) isBilledCable(r *row) bool {
	s := r.own(vocabulary.Describe)
	if r.t.kind != layout.Mixed && r.t.kind != layout.Loudspeakers || r.own(vocabulary.Tap).had() || vocabulary.DeviceIn(s.text) != vocabulary.CableDevice {
		return false
	}
	_, _, sized := notation.ConductorIn(s.text, notation.Auto)
	_, long := b.billedLength(r)
	return sized && long
}

// longestUnit is the most letters of a unit of length: "metres".
const longestUnit = 6

// billedLength is the quantity of a row that counts metres or feet: the cell
// beside it, or the figure's own unit, says so.
func (b *builder) billedLength(r *row) (schedule.Quantity[schedule.Metres], bool) {
	n := r.own(vocabulary.Quantity)
	if !n.had() {
		return schedule.Quantity[schedule.Metres]{}, false
	}
	text, style := b.readable(&n, notDate)
	for i := range r.Values {
		v := strings.TrimSpace(r.Values[i].Text)
		if one, err := notation.ParseLength("1 "+v, notation.Auto, notation.UnitUnknown); err == nil && len(v) <= longestUnit && !anyDigit(v) && one.Unit != notation.UnitUnknown {
			text += " " + v
			break
		}
	}
	l, err := notation.ParseLength(text, style, notation.UnitUnknown)
	if err != nil {
		return schedule.Quantity[schedule.Metres]{}, false
	}
	low, high, ok := l.Metres()
	return schedule.Between(schedule.Metres(low), schedule.Metres(high), n.source), ok && low > 0
}

// channelIn is the one output of the job that a text names behind a word for a
// line or an output: "cable for output 1"; nil if it names none or several.
func (b *builder) channelIn(text string) *schedule.Channel {
	var found *schedule.Channel
	words := strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune(" ,;:()", r) })
	for i := 0; i+1 < len(words); i++ {
		switch notation.KeyOf(words[i] + " " + words[i+1]).Kind {
		case notation.KeyLine, notation.KeyChannel:
		default:
			continue
		}
		c := b.channelNamed(words[i+1])
		if c == nil || found != nil && found != c {
			return nil
		}
		found = c
	}
	return found
}
