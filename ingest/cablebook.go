package ingest

import (
	"math"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A cable book lists cables with the loudspeaker at the far end of each: it is
// a list of loudspeakers whose tags stand in the column "to", and each hangs on
// what stands in the column "from", which may be the loudspeaker before it.

// A feed is where the cable of a row in such a table comes from in the end.
type feed struct {
	root    seen // what stands at the near end of the first cable: an output, as a rule
	control seen // the last control on the way, if any
}

// cableBooks finds such tables and reads their columns so.
func (b *builder) cableBooks() {
	for _, t := range b.tables {
		if t.kind != layout.Cables && t.kind != layout.Loudspeakers && t.kind != layout.Mixed {
			continue
		}
		if near, far := t.chainedPlaces(); far != nil {
			t.follow(near, far)
			t.branchesAt(near, far)
			continue
		}
		if near, far := t.placesFromTags(); far != nil {
			t.branchesAt(near, far)
			continue
		}
		if near, far := t.placesOnOutputs(); far != nil {
			t.placesFrom = near
			continue
		}
		from, to := t.endColumns()
		if from == nil || to == nil || !t.watted() || !t.leadsToDevices(from, to) {
			continue
		}
		t.kind, t.fromColumn = layout.Loudspeakers, from
		for _, c := range t.byField[vocabulary.Tag] {
			t.retype(c, vocabulary.Describe) // what the device is: its own name stands at the far end
		}
		t.retype(from, vocabulary.From)
		t.retype(to, vocabulary.Tag)
		t.follow(from, to)
	}
}

// follow follows the cables of a cable book upstream from each row, and marks
// the rows that lead to a control or a joint.
func (t *table) follow(from, to *column) {
	byEnd := make(map[string]*row)
	behind := make(map[*row][]*row)
	for _, r := range t.rows {
		if s := r.at(to); r.Class == layout.Device && s.had() {
			byEnd[s.key()] = r
		}
	}
	// What is upstream of a row is worked out once: a line may be as long as the sheet.
	feeds := make(map[*row]*feed)
	upstream := func(r *row) *feed {
		var path []*row
		for at := r; at != nil && feeds[at] == nil; at = byEnd[feeds[at].root.key()] {
			feeds[at] = &feed{root: at.at(from)} // in a ring it is where the ring closes
			path = append(path, at)
		}
		for _, at := range slices.Backward(path) {
			f := feeds[at]
			own := f.root
			if up := byEnd[own.key()]; up != nil {
				f.root, f.control = feeds[up].root, feeds[up].control
			}
			if up := byEnd[own.key()]; up != nil && up.leadsToControl(up.at(to)) || notation.KeyOf(own.text).Kind == notation.KeyControl {
				f.control = own
			}
		}
		return feeds[r]
	}
	for _, r := range t.rows {
		if r.Class != layout.Device || !r.at(from).had() {
			continue
		}
		up := byEnd[r.at(from).key()]
		if up != nil && up != r {
			behind[up] = append(behind[up], r)
		}
		f := *upstream(r)
		if f.root.source.At == f.control.source.At {
			f.root = seen{} // a control that nothing leads to
		}
		f.root.field = vocabulary.Channel
		r.feed = &f
	}
	for r := range behind {
		r.passes = !r.own(vocabulary.Tap).had() && notation.KeyOf(r.at(to).text).Kind != notation.KeyLoudspeaker && sumOfRows(r, behind[r])
	}
	for _, r := range byEnd {
		r.passes = r.passes || r.leadsToControl(r.at(to))
	}
}

// leadsToControl reports whether the cable of a row leads to a control: by its tag, or by what is
// said to be there: "attenuator 24 W".
func (r *row) leadsToControl(to seen) bool {
	if note := r.own(vocabulary.Notes).text; !r.own(vocabulary.Tap).had() && notation.IsControlWord(firstWord(note)) {
		return true // "regulator 12 W" as a remark
	}
	return notation.KeyOf(to.text).Kind == notation.KeyControl || vocabulary.DeviceIn(r.own(vocabulary.Describe).text) == vocabulary.ControlDevice
}

func firstWord(text string) string {
	word, _, _ := strings.Cut(text, " ")
	return word
}

// sumOfRows reports whether a row states no watts, or those of the rows behind it.
func sumOfRows(r *row, behind []*row) bool {
	of := func(r *row) float64 {
		s := r.first(vocabulary.TotalWatts, vocabulary.Load, vocabulary.RatedWatts)
		if !s.had() {
			return 0
		}
		p, err := notation.ParseWatts(s.text, notation.Auto)
		if err != nil {
			return 0
		}
		return p.W
	}
	sum := 0.0
	for _, k := range behind {
		sum += of(k)
	}
	own := of(r)
	return own == 0 || math.Abs(own-sum) < 0.01*sum
}

// endColumns are the columns of the two ends of a cable.
func (t *table) endColumns() (from, to *column) {
	for _, f := range []vocabulary.Field{vocabulary.From, vocabulary.Channel, vocabulary.Circuit} {
		if list := t.byField[f]; len(list) > 0 && from == nil {
			from = list[0]
		}
	}
	if list := t.byField[vocabulary.To]; len(list) == 1 {
		to = list[0]
	}
	return from, to
}

// watted reports whether the rows state what hangs at the far end.
func (t *table) watted() bool {
	for _, f := range []vocabulary.Field{vocabulary.Tap, vocabulary.TotalWatts, vocabulary.Load, vocabulary.RatedWatts} {
		for _, r := range t.rows {
			if r.Class == layout.Device && r.own(f).had() {
				return true
			}
		}
	}
	return false
}

// leadsToDevices reports whether the far ends are devices, each named once, and
// none of them an amplifier, a control or a zone; joints may be among them. Where
// no near end is a far end of another row, the far ends must have the word for a
// loudspeaker.
func (t *table) leadsToDevices(from, to *column) bool {
	seen := make(map[string]bool)
	devices, loudspeakers := 0, 0
	for _, r := range t.rows {
		s := r.at(to)
		if r.Class != layout.Device || !s.had() {
			continue
		}
		k := s.key()
		if seen[k] {
			return false
		}
		seen[k] = true
		switch notation.KeyOf(s.text).Kind {
		case notation.KeyAmplifier, notation.KeyZone, notation.KeyChannel:
			return false
		case notation.KeyLoudspeaker:
			loudspeakers++
		}
		devices++
	}
	chained := 0
	for _, r := range t.rows {
		if s := r.at(from); r.Class == layout.Device && s.had() && seen[s.key()] {
			chained++
		}
	}
	return devices > 0 && (chained > 0 || 2*loudspeakers > devices)
}

// chainedPlaces are the columns of the two ends of cables whose far ends are the places of the loudspeakers, each named
// once, and most near ends the places before: "Da: AX uscita 1, Maneggio | A: Maneggio, Tribuna"; nil if the table has none.
func (t *table) chainedPlaces() (from, to *column) {
	if len(t.byField[vocabulary.From]) != 1 || t.has(vocabulary.To) || t.has(vocabulary.Tag) || t.has(vocabulary.Channel) || t.has(vocabulary.Amplifier) || !t.watted() {
		return nil, nil
	}
	from = t.byField[vocabulary.From][0]
	for _, f := range []vocabulary.Field{vocabulary.Room, vocabulary.Zone} {
		for _, c := range t.byField[f] {
			near, far := t.endsIn(from), t.endsIn(c)
			if far.each && t.chainedShare(from, &near, &far) > 0 {
				return from, c
			}
		}
	}
	return nil, nil
}

// retype takes a column for another field.
func (t *table) retype(c *column, f vocabulary.Field) {
	list := t.byField[c.Field]
	kept := make([]*column, 0, len(list))
	for _, o := range list {
		if o != c {
			kept = append(kept, o)
		}
	}
	t.byField[c.Field] = kept
	c.Field = f
	t.byField[f] = append(t.byField[f], c)
}

// nearEnds resolves the near ends of the cables in cable books, once all
// loudspeakers are there.
func (b *builder) nearEnds() {
	for _, l := range b.job.Loudspeakers {
		r := b.origin[l]
		if r.t.fromColumn == nil || l.Run == nil || l.Run.To.Loudspeaker != l {
			continue
		}
		if s := r.at(r.t.fromColumn); s.had() {
			l.Run.From, l.Run.Reach = b.end(r, s), schedule.FromTo
			l.Run.Control = nil // it hangs where its near end says
		}
	}
}

// fedControl is the control that a cable leads to. The cable's own control, if
// any, is the one ahead of it.
func (b *builder) fedControl(r *row, to seen, run *schedule.Cable) {
	k := b.control(to, to.text)
	if k == nil {
		return
	}
	if s := r.first(vocabulary.ControlWatts, vocabulary.RatedWatts, vocabulary.Tap); s.had() {
		b.noteControlRating(k, s)
	} else {
		b.ratingInWords(r, k)
	}
	if k.Channel == nil {
		k.Channel = run.Channel
	}
	if run.Control != nil && run.Control != k && k.Parent == nil {
		k.Parent = run.Control
	}
	run.Control = nil
}

// feedsFromRack reports whether the cables of a row begin at no more than a word for the rack, while the
// row itself names its output or line: "Line D1 | from rack".
func (r *row) feedsFromRack() bool {
	return slices.Contains(rackEnds, join.Fold(r.feed.root.text)) && (r.own(vocabulary.Circuit).had() || r.own(vocabulary.Channel).had())
}
