package ingest

import (
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// What a row hangs on: the line that a list leads to an output, another device, the
// row above.

// knowLine enters the line that a row leads to an output: a row of a list of
// lines, outputs or cables that names both.
func (b *builder) knowLine(r *row) {
	name := r.own(vocabulary.Circuit)
	if !name.had() && r.kind == cableRow {
		name = r.first(vocabulary.Cable, vocabulary.Tag, vocabulary.Item)
	}
	if !name.had() {
		b.knowLinesServed(r)
		return
	}
	o := &outlet{}
	if r.say(vocabulary.Amplifier).had() || r.say(vocabulary.Channel).had() {
		o = b.outletOf(r)
	} else if from := r.own(vocabulary.From); r.kind == cableRow && b.wholeOutput(from.text) && !notOutputs[notation.KeyOf(from.text).Kind] && !b.isListedSpeaker(from) {
		b.readChannel(o, from, seen{})
	}
	if o.had() {
		b.enterLine(r, name, o)
	}
}

// isListedSpeaker reports whether a text is the tag of a loudspeaker that a row describes: "S-17".
func (b *builder) isListedSpeaker(s seen) bool {
	return slices.ContainsFunc(b.dir.devices[s.key()], func(r *row) bool { return r.kind == loudspeakerRow })
}

// knowLinesServed enters the lines that the row of an output says it serves, as the
// loudspeakers name them: "HR-1, HR-2", "Cct 1".
func (b *builder) knowLinesServed(r *row) {
	if r.kind != channelRow || !r.say(vocabulary.Channel).had() {
		return
	}
	for _, c := range r.t.columns {
		s := r.at(c)
		if !s.had() || c.Field == vocabulary.Channel || c.Field == vocabulary.Amplifier || !anyDigit(s.text) || !strings.ContainsFunc(s.text, isLetter) {
			continue
		}
		parts := splitAll(listMarks.Split(s.text, -1), listWords)
		if slices.ContainsFunc(parts, func(name string) bool { return !b.dir.circuits[join.Key(name)] && !b.dir.circuits[lineIdentity(name)] }) {
			continue
		}
		o := b.outletOf(r)
		if !o.had() {
			return
		}
		for _, name := range parts {
			line := s
			line.text = name
			b.enterLine(r, line, o)
		}
		return
	}
}

// enterLine enters a line and the output that it leads to.
func (b *builder) enterLine(r *row, name seen, o *outlet) {
	e := &lineEntry{name: name, row: r, outlet: o, rows: 1}
	if zoned := lineInZone(name.text, r.own(vocabulary.Zone).text); zoned != "" && b.dir.lines[zoned] == nil {
		b.dir.lines[zoned] = e
	}
	if first := b.dir.lines[name.key()]; first != nil {
		if !first.outlet.is(o) { // each zone has its circuit A
			first.several = true
			b.dir.byRow[r] = e
			return
		}
		first.rows++
		b.dir.byRow[r] = first
		return
	}
	b.dir.byRow[r] = e
	b.dir.lines[name.key()] = e
	if id := lineIdentity(name.text); id != "" {
		if _, twice := b.dir.lines[id]; twice {
			b.dir.lines[id] = nil
		} else {
			b.dir.lines[id] = e
		}
	}
}

// lineInZone is the key of a line of which each zone has its own; "" without a zone.
func lineInZone(line, zone string) string {
	n := join.Parse(join.Zone, zone)
	if n.Number == "" && n.Title == "" {
		return ""
	}
	return "zone\x00" + n.Number + "\x00" + n.Title + lineIdentity(line)
}

// is reports whether two outlets name the same output in the same words.
func (o *outlet) is(p *outlet) bool {
	return join.Key(o.amp) == join.Key(p.amp) && slices.EqualFunc(o.channels, p.channels, func(a, b string) bool { return channelID(a) == channelID(b) })
}

// notOutputs are the kinds of names that are no outputs of amplifiers.
var notOutputs = map[notation.KeyKind]bool{notation.KeyZone: true, notation.KeyControl: true, notation.KeyLoudspeaker: true, notation.KeyCable: true}

// lineIdentity is a line's name without the words for a line; it cannot be
// mistaken for a key.
func lineIdentity(name string) string {
	n := join.Parse(join.Cable, name)
	if n.Number == "" && n.Title == "" {
		return ""
	}
	return "\x00" + n.Number + "\x00" + n.Title
}

// lineOf finds the line of another table that a row says it hangs on.
func (b *builder) lineOf(r *row) *lineEntry {
	if len(b.dir.lines) == 0 || b.dir.byRow[r] != nil {
		return nil
	}
	for _, s := range []seen{r.say(vocabulary.Circuit), r.own(vocabulary.Channel), r.own(vocabulary.Cable)} {
		if !s.had() {
			continue
		}
		e := b.dir.lines[s.key()]
		if bare := strings.Trim(s.text, "0123456789 ") == ""; bare && s.field != vocabulary.Circuit {
			continue // an output's number
		}
		if e == nil && s.field != vocabulary.Cable {
			e = b.dir.lines[lineIdentity(s.text)]
		}
		if e != nil && e.several {
			zone := r.zoneText().text
			if e = b.dir.lines[lineInZone(s.text, zone)]; e == nil {
				continue // which one is meant is not said
			}
		}
		if e != nil && (e.row == nil || e.row.t != r.t) {
			return e
		}
	}
	return nil
}

// wordedOutput reports whether a text names an amplifier's output with a word
// for one of the two: "Ampli A voie 2".
func (b *builder) wordedOutput(text string) bool {
	c := b.channelRef(text)
	if !c.ok || c.ref.Amplifier == "" || len(c.ref.Channels) == 0 {
		return false
	}
	_, behind, _ := strings.Cut(text, c.ref.Amplifier)
	return notation.KeyOf(behind).Kind == notation.KeyChannel || notation.KeyOf(text).Kind == notation.KeyAmplifier && strings.Contains(text, " ")
}

// findNaming finds the columns of a table that say what a device hangs on and in
// which a cell is the tag of a device.
func (b *builder) findNaming(t *table) {
	t.naming, t.hangs = nil, nil
	for _, f := range feedFields {
		for _, c := range t.byField[f] {
			if slices.ContainsFunc(t.rows, func(r *row) bool {
				s := r.at(c)
				return s.had() && len(b.rowsNamed(s.key(), f)) > 0
			}) {
				t.naming = append(t.naming, c)
			}
		}
		if n := len(t.naming); n > 0 && t.naming[n-1].Field == f {
			t.hangs = append(t.hangs, f)
		}
	}
}

// rowsNamed are the rows that describe what a cell of a field names: by their tags, and controls
// by their names, in columns that are not for controls.
func (b *builder) rowsNamed(key string, f vocabulary.Field) []*row {
	if list := b.dir.devices[key]; len(list) > 0 || f == vocabulary.Control {
		return list
	}
	return b.dir.controlRows[key]
}

// feedersAreControls makes controls of the rows whose tags other rows name as
// what they hang on, unless words say that they are something else.
func (b *builder) feedersAreControls() {
	for _, t := range b.tables {
		for _, r := range t.rows {
			if r.out != "" || r.kind != loudspeakerRow {
				continue
			}
			own := r.own(vocabulary.Tag).key()
			for _, f := range t.hangs {
				s := r.own(f)
				if !s.had() {
					continue
				}
				k := s.key()
				if k == own || len(b.dir.devices[k]) != 1 {
					continue
				}
				d := b.dir.devices[k][0]
				if b.writtenAsOutput(s, d) || t.fromColumn != nil && d.own(vocabulary.Quantity).had() {
					continue // in a cable book the next place hangs on the one before
				}
				if d.kind != loudspeakerRow || d == r || sameLetters(k, own) || wordKind(d) == loudspeakerRow || f != vocabulary.Control && d.t != t {
					continue
				}
				d.kind = controlRow
				if f == vocabulary.Amplifier || b.severalOutputs(d) {
					d.kind = amplifierRow
					b.knowAmp(d.own(vocabulary.Tag).text)
				}
			}
		}
	}
}

// writtenAsOutput reports whether a text is an output of an amplifier of the job and
// written otherwise than the tag of a device whose key it has: "C/1" is no
// loudspeaker C1.
func (b *builder) writtenAsOutput(s seen, d *row) bool {
	if strings.EqualFold(s.text, d.own(vocabulary.Tag).text) {
		return false
	}
	_, known := b.splitAmp(s.text)
	return known
}

// sameLetters reports whether two keys of tags differ in their figures alone:
// such devices are of one kind, and one that hangs on the other is looped on from it.
func sameLetters(a, b string) bool {
	const figures = "0123456789."
	return strings.Trim(a, figures) == strings.Trim(b, figures)
}

// severalOutputs reports whether a row states the rating of several outputs: "2 x 120 W".
func (b *builder) severalOutputs(r *row) bool { return b.channelsOfRow(r) > 1 }

// hangsOn finds the device of the job that a row says it hangs on: a control,
// or a loudspeaker of its own table. f is where it says so.
func (b *builder) hangsOn(r *row) (d *row, at seen) {
	if d := b.subItemOf(r); d != nil {
		return d, r.own(vocabulary.Item)
	}
	if len(r.t.hangs) == 0 {
		return nil, seen{}
	}
	own := r.own(vocabulary.Tag).key()
	for _, f := range r.t.hangs {
		s := r.own(f)
		if !s.had() {
			continue
		}
		k := s.key()
		if numberOfOutput(s) {
			continue
		}
		if list := b.rowsNamed(k, f); k != own && len(list) == 1 && list[0] != r && !b.writtenAsOutput(s, list[0]) {
			switch {
			case list[0].kind == controlRow, list[0].kind == loudspeakerRow && list[0].t == r.t && f != vocabulary.Control && f != vocabulary.To:
				return list[0], s
			}
		}
	}
	return nil, seen{}
}

// numberOfOutput reports whether a cell is a bare number under a header for
// amplifiers, outputs or lines: amplifier 2, not the loudspeaker of that number.
func numberOfOutput(s seen) bool {
	if s.col == nil || strings.Trim(s.text, "0123456789") != "" {
		return false
	}
	switch f := headerField(s.col); f {
	case vocabulary.Amplifier, vocabulary.Channel, vocabulary.Circuit:
		return f == s.field
	}
	return false
}

// headerField is what the words of a column's header say that it is.
func headerField(c *column) vocabulary.Field {
	list := vocabulary.Score(c.Header)
	if len(list) == 0 || list[0].Score < sureHeader {
		return vocabulary.Unknown
	}
	return list[0].Field
}

// loopedOn finds the loudspeaker that a row is looped on from, nil if it hangs
// on something else or says of itself.
func (b *builder) loopedOn(r *row) *row {
	if d, _ := b.hangsOn(r); d != nil && d.kind == loudspeakerRow && r.kind != cableRow {
		return d
	}
	return nil
}

// speaker finds the row that tells the control of a row: the row itself, or,
// where that is looped on from a loudspeaker and names no control, what tells
// that one's. In a ring it is where the ring closes.
func (b *builder) speaker(r *row) *row {
	var path []*row
	for b.speaks[r] == nil {
		b.opts.watch.Step()
		path = append(path, r)
		b.speaks[r] = r
		if r.feed != nil && r.feed.control.had() && !r.own(vocabulary.Control).had() || r.say(vocabulary.Control).had() {
			break
		}
		d := b.loopedOn(r)
		if d == nil {
			break
		}
		r = d
	}
	last := b.speaks[r]
	for _, p := range path {
		b.speaks[p] = last
	}
	return last
}

// subItem is the number of the item that another belongs to, by its number: 3 of
// "3a" and "3.1"; "" if it belongs to none.
func subItem(text string) string {
	n := 0
	for n < len(text) && text[n] >= '0' && text[n] <= '9' {
		n++
	}
	switch behind := text[n:]; {
	case n == 0 || behind == "":
	case len(behind) == 1 && behind[0] >= 'a' && behind[0] <= 'h',
		len(behind) > 1 && len(behind) <= 3 && (behind[0] == '.' || behind[0] == '-') && strings.Trim(behind[1:], "0123456789") == "":
		return text[:n]
	}
	return ""
}

// subItemOf finds the control that a row is a part of by its number: item 3a
// hangs behind the control of item 3.
func (b *builder) subItemOf(r *row) *row {
	if r.kind != loudspeakerRow || !r.t.has(vocabulary.Item) {
		return nil
	}
	item := r.own(vocabulary.Item)
	of := ""
	if item.had() {
		of = subItem(item.text)
	}
	if of == "" {
		return nil
	}
	if r.t.items == nil {
		r.t.items = make(map[string][]*row)
		for _, o := range r.t.rows {
			if item := o.own(vocabulary.Item); item.had() {
				r.t.items[item.text] = append(r.t.items[item.text], o)
			}
		}
	}
	for _, o := range r.t.items[of] {
		b.opts.watch.Step()
		if o.kind == controlRow && o.out == "" {
			return o
		}
	}
	return nil
}

// forget lets go of what was remembered while one pass over the rows went on:
// the next may find rows to be of another kind.
func (b *builder) forget() {
	clear(b.speaks)
	clear(b.feedsUnder)
}
