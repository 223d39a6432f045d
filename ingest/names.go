package ingest

import (
	"cmp"
	"regexp"
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// zoneText is what the row says of its zone.
func (r *row) zoneText() seen {
	z := r.say(vocabulary.Zone)
	if z.spare() {
		return seen{}
	}
	return z
}

// zoneName is the name of the zone that a row of a zone table describes, and
// the other name that the row gives it.
func (r *row) zoneName() (name, other seen) {
	var all []seen
	for _, f := range []vocabulary.Field{vocabulary.Zone, vocabulary.Tag, vocabulary.Describe, vocabulary.Room, vocabulary.Circuit} {
		if s := r.own(f); s.had() && !s.spare() {
			all = append(all, s)
		}
	}
	if len(all) == 0 {
		return r.zoneText(), seen{}
	}
	name = all[0]
	for _, s := range all[1:] {
		if s.field != vocabulary.Circuit {
			return name, s
		}
	}
	return name, seen{}
}

// zoneNumber is "Zone 2" where a row gives the number of its zone in a column
// of its own, beside the zone's name; "" if it does not.
func (r *row) zoneNumber(z seen) string {
	if z.field != vocabulary.Zone || join.Parse(join.Zone, z.text).Number != "" {
		return ""
	}
	item := r.own(vocabulary.Item)
	if !item.had() || !join.Parse(join.Zone, item.text).Bare() || !slices.Contains(vocabulary.NewScorer().Concepts(item.col.Header), "zone") {
		return ""
	}
	return "Zone " + item.text
}

// zoneName is the row's zone name, with its building where each has its own.
func (b *builder) zoneName(r *row) (name, other seen) {
	name, other = r.zoneName()
	return b.ofBuilding(r, name), other
}

// collectNames gathers every name of a zone, an amplifier and a control, and
// decides which of them name one thing.
func (b *builder) collectNames() {
	b.findModelColumns()
	b.outputsOfOne()
	b.forget()
	for _, t := range b.tables {
		for _, r := range t.rows {
			b.opts.watch.Step()
			if r.out == "" {
				b.collectRow(r)
			}
		}
	}
	b.hearAmplifiers()
	b.zoneNames.Settle()
	b.places.roomNames.Settle()
	b.ampNames.Settle()
	b.controlNames.Settle()
	b.keepSaid()
	b.collectChannels()
}

func (b *builder) collectRow(r *row) {
	if r.kind == zoneRow {
		b.collectZone(r)
	} else if r.kind.serves() {
		b.collectService(r)
	} else if z := b.placeText(r); z.had() && r.kind != typeRow && !(r.kind == controlRow && b.roomInZone(z) != nil) {
		b.zoneNames.Add(z.text, 0)
		if n := r.zoneNumber(z); n != "" {
			b.zoneNames.Alias(z.text, n, 0)
		}
	} else if m := b.controlText(r); m.place.had() && r.kind == loudspeakerRow {
		b.zoneNames.Refer(m.place.text)
	}
	if r.kind == amplifierRow || r.kind == channelRow {
		name, other := b.ampName(r)
		if name.had() {
			b.ampNames.Add(name.text, r.t.number)
			if other.had() {
				b.ampNames.Alias(name.text, other.text, r.t.number)
			}
		}
	} else if o := b.outletOf(r); o.amp != "" {
		b.ampNames.Add(o.amp, 0)
	}
	if r.kind == cableRow {
		b.collectEnds(r)
	}
	if r.kind == controlRow {
		if name := b.ownControlName(r); name.had() {
			b.controlNames.Add(name.text, r.t.number)
		}
	} else if c := b.controlText(r); c.name != "" {
		b.controlNames.Add(c.name, 0)
	}
	if r.feed != nil && r.passes && r.leadsToControl(r.own(vocabulary.Tag)) {
		b.controlNames.Add(r.own(vocabulary.Tag).text, 0)
	}
}

// collectZone defines the zone of a row of a zone table. The row may give it a
// number in one column and a name in another.
func (b *builder) collectZone(r *row) {
	name, other := b.zoneName(r)
	if !name.had() {
		return
	}
	b.zoneNames.Add(name.text, r.t.number)
	first := join.Parse(join.Zone, name.text)
	if other.had() && (name.field != vocabulary.Zone || first.Title == "" || join.Parse(join.Zone, other.text).Title == "") {
		b.zoneNames.Alias(name.text, other.text, r.t.number)
	}
	if item := r.own(vocabulary.Item); item.had() && first.Number == "" {
		if n := join.Parse(join.Zone, item.text); n.Bare() {
			b.zoneNames.Alias(name.text, "Zone "+item.text, r.t.number)
		}
	}
}

// ampName is the name of the amplifier that a row describes or belongs to,
// and another one if the row gives two.
func (b *builder) ampName(r *row) (name, other seen) {
	var all []seen
	fields := []vocabulary.Field{vocabulary.Amplifier, vocabulary.Tag}
	switch {
	case r.kind == channelRow:
		fields = fields[:1]
	case b.feedsRows(r, vocabulary.Amplifier):
		fields = fields[1:]
	}
	for _, f := range fields {
		if s := r.own(f); s.had() {
			all = append(all, s)
		}
	}
	if r.kind == amplifierRow && (len(all) == 0 || len(all) == 1 && all[0].field == vocabulary.Tag && !b.dir.feederKeys[all[0].key()]) {
		if s := b.equipmentName(r); s.had() { // as other rows name it
			if len(all) > 0 {
				other = all[0]
			}
			return s, other
		}
	}
	if len(all) == 0 {
		o := b.outletOf(r)
		if o.amp != "" {
			s := o.ampAt
			s.text = o.amp
			return s, seen{}
		}
		if r.kind == channelRow {
			return seen{}, seen{}
		}
		for _, f := range []vocabulary.Field{vocabulary.Describe, vocabulary.Item, vocabulary.Model} {
			s := r.own(f)
			if item := r.own(vocabulary.Item); f == vocabulary.Describe && item.had() && r.describedTwice(s) {
				s = item // two items of a bill that say the same are two amplifiers
			}
			if tag := cmp.Or(tagInRating(s.text), codeOfAmp(s.text, r.first(vocabulary.ChannelWatts, vocabulary.RatedWatts, vocabulary.Tap).had())); f == vocabulary.Describe && tag != "" {
				s.text = tag
				return s, seen{}
			}
			if s.had() && !(countWords(s.text) == 1 && kindInWords(s.text) == amplifierRow) { // "amplifier" names none
				return s, seen{}
			}
		}
		return r.first(vocabulary.Describe, vocabulary.Kind), seen{}
	}
	name = all[0]
	if m := findRatingBehind(name.text); m != nil {
		if tag := strings.TrimRight(m[1], " ,;(/:–-"); isTag(tag) && (anyDigit(tag) || tagOfLetters.MatchString(tag)) {
			name.text = tag // "V1 (2 x 120 W)"
		}
	}
	if c := b.channelRef(name.text); c.ok && c.ref.Amplifier != "" && len(c.ref.Channels) > 0 && !c.ref.Doubts.Has(notation.DateOrPair) && !b.besideOutputs(name) && !(name.field == vocabulary.Tag && r.t.sharesStem(name.text)) {
		name.text = withKindWord(name.text, c.ref.Amplifier) // "AMP 1 CH 2" is a channel of AMP 1
	}
	if len(all) > 1 {
		other = all[1]
	}
	return name, other
}

// shortTag is a tag as amplifiers have them, rather than the code of a model.
var shortTag = regexp.MustCompile(`^\pL{1,3}[ -]?\d{1,2}$`)

// tagInRating is the tag between the word for an amplifier and what it gives:
// "Amplifier V1 2 x 120 W"; "" if there is none.
func tagInRating(text string) string {
	if !mayStateWatts(text) {
		return ""
	}
	list, err := notation.ParseRatingSentence(text, notation.Auto)
	if err != nil || len(list) != 1 || !list[0].Worded || list[0].W == 0 || !shortTag.MatchString(list[0].Name) {
		return ""
	}
	return list[0].Name
}

// describedTwice reports whether another amplifier of the table is described in the same words, as another item.
func (r *row) describedTwice(s seen) bool {
	if !s.had() {
		return false
	}
	if r.t.described == nil {
		r.t.described = make(map[string]map[string]bool)
		for _, o := range r.t.rows {
			d := o.own(vocabulary.Describe)
			if o.kind != amplifierRow || o.out != "" || !d.had() {
				continue
			}
			if r.t.described[d.key()] == nil {
				r.t.described[d.key()] = make(map[string]bool)
			}
			r.t.described[d.key()][o.own(vocabulary.Item).key()] = true
		}
	}
	return len(r.t.described[s.key()]) > 1
}

// besideOutputs reports whether a text stands as the amplifier beside outputs in
// other rows: then "RK1-A" is the name of all of it.
func (b *builder) besideOutputs(s seen) bool {
	return b.dir.besideOutputs[s.key()]
}

// feedsRows reports whether other rows of the list name the tag of an amplifier's row
// under a field as what feeds them; what its own row names there feeds it ("mains").
func (b *builder) feedsRows(r *row, f vocabulary.Field) bool {
	tag, own := r.own(vocabulary.Tag).key(), r.own(f)
	if r.t.kind != layout.Mixed || tag == "" || !own.had() {
		return false
	}
	keys := b.feedKeys(r.t, f)
	at, _ := slices.BinarySearch(keys, tag) // all that begin with the tag stand from here on
	if strings.HasPrefix(own.key(), tag) {
		at++ // itself
	}
	return at < len(keys) && strings.HasPrefix(keys[at], tag)
}

// A tableField is a field of a table.
type tableField struct {
	t *table
	f vocabulary.Field
}

// feedKeys are the keys of what the rows of a table name under a field, in their
// order as text; see forget.
func (b *builder) feedKeys(t *table, f vocabulary.Field) []string {
	keys, known := b.feedsUnder[tableField{t, f}]
	if !known {
		for _, r := range t.rows {
			keys = append(keys, r.own(f).key())
		}
		slices.Sort(keys)
		b.feedsUnder[tableField{t, f}] = keys
	}
	return keys
}

// ownControlName is the tag of the control that a row of controls describes.
func (b *builder) ownControlName(r *row) seen {
	if s := controlAmongAmps(r); s.had() {
		return s
	}
	tag, ctl := r.own(vocabulary.Tag), r.own(vocabulary.Control)
	if _, at := b.servedTags(r); at.had() && at.col == ctl.col {
		ctl = seen{} // the loudspeakers that it controls
	}
	for _, s := range []seen{tag, ctl, r.own(vocabulary.Item), r.own(vocabulary.Model), r.own(vocabulary.ControlModel), r.own(vocabulary.Kind), r.own(vocabulary.Describe)} {
		if s.had() && b.dir.controls[s.key()] {
			return s // as other rows name it
		}
	}
	d := r.own(vocabulary.Describe) // "Volume control VC-2, 100 W"
	described := describedControl(d.text)
	if described != "" {
		d.text, d.cell = described, nil
	}
	if described != "" && b.dir.controls[d.key()] {
		return d
	}
	switch {
	case tag.had() && ctl.had() && notation.KeyOf(tag.text).Kind != notation.KeyControl && notation.KeyOf(ctl.text).Kind == notation.KeyControl:
		return ctl
	case tag.had():
		return tag
	case ctl.had():
		return ctl
	}
	if described != "" {
		return d
	}
	if item := r.own(vocabulary.Item); dottedItem.MatchString(item.text) {
		return item
	}
	return seen{}
}

// tagAheadOfKind is the tag ahead of the words for a control in its name, "VC-1" of "VC-1 volume control"; any
// other name stays as it is.
func tagAheadOfKind(name string) string {
	tag, kind, ok := strings.Cut(name, " ")
	if ok && plainTag(tag) && anyDigit(tag) && !anyDigit(kind) && vocabulary.DeviceIn(kind) == vocabulary.ControlDevice {
		return tag
	}
	return name
}

// codeOfBuilding is the tag of a device behind the letters of its building: "LB-R1".
var codeOfBuilding = regexp.MustCompile(`^\p{Lu}{1,4}-\p{Lu}{1,3}\d{1,2}$`)

// dottedItem is the number of an item in a bill of chapters, "9.5": what has no
// other name is known by it.
var dottedItem = regexp.MustCompile(`^\d+(?:\.\d+)+$`)
