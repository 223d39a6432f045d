package audit

import (
	"math"
	"slices"

	"lineaudit/audit/line"
	"lineaudit/audit/schedule"
)

// A row is one loudspeaker, or a group that one row describes, with what it
// draws from its line.
type row struct {
	l        *schedule.Loudspeaker
	zone     int // position in circuit.zones, -1: none
	control  int // nearest control, remote ones included; -1: none
	channels []int
	lineV    float64 // nominal, 0: unknown
	tapV     float64 // nominal voltage the tap is marked for; that of the line when not said

	model     int // number of the model's key in circuit.words, 0 for none
	room      int // of the room
	mounting  int
	part      part
	repeats   bool          // listed on two sheets: the second one
	doubted   *schedule.Ref // the tap cell, where it holds what cannot be: only what its transformer offers bounds it
	out       exclusion
	count     Interval // loudspeakers
	units     Interval // what the watts are of: the count, or 1 where only the row's total is known
	lump      bool     // only the row's total is known
	tapped    bool     // a tap is stated, and not only estimated from other rows
	marked    Interval // watts of one loudspeaker as marked on its tap
	each      Interval // watts of one loudspeaker on this line
	lossDB    float64  // insertion loss of its transformer from the house book
	wrongV    bool     // marked for another line voltage, and not offered for this one
	emergency bool
	split     split
	offers    []offer // taps its transformer offers; nil when nothing is known of them
}

// part says what a row adds to.
type part uint8

const (
	notCounted part = iota // removed, by others, listed twice
	counts                 // installed
	growth                 // spare or future
)

// exclusion says why an installed row is kept out of the sums.
type exclusion uint8

const (
	notOut       exclusion = iota
	lowImpedance           // a direct loudspeaker on a line: a cause of its own
	offLine                // a direct loudspeaker on its own low-impedance output
	absurd                 // a value that cannot be: a cause of its own
)

// split says how a row on several channels is shared.
type split uint8

const (
	unsplit     split = iota
	evenly            // interleaved A/B circuits
	unknownHalf       // the schedule does not say
)

// An offer is a tap of a transformer: what it draws on the row's line, and how
// it is marked.
type offer struct {
	watts  float64 // on this line
	marked float64
	volts  float64 // 0: the line's
}

func (r *row) work(c *circuit) {
	l := r.l
	var ch *schedule.Channel
	if len(r.channels) > 0 {
		ch = c.job.Channels[r.channels[0]]
	}
	switch l.Status {
	case schedule.Installed:
		r.part = counts
		if r.repeats {
			r.part = notCounted
		}
	case schedule.Spare, schedule.Future:
		r.part = growth
	default:
		r.part = notCounted
	}
	r.emergency = c.rowEmergency(l, ch)
	r.model, r.room, r.mounting = c.word(l.Model.Value), c.word(l.Room.Value), c.word(l.Mounting.Value)
	r.count = countOf(l)
	r.units = r.count
	// What other rows say is no bound.
	r.tapped = l.Tap.Had() && l.Tap.How != schedule.Estimated && r.doubted == nil
	r.tapV = r.lineV
	if v, ok := l.TapVolts.Exact(); ok && v > 0 {
		r.tapV = line.Nominal(float64(v))
	}
	r.offers = c.offersOf(l, r.lineV, r.tapV)
	if r.tapped && len(r.offers) > 0 && odd(l.Tap, 0, c.limits.tap) {
		r.tapped, r.doubted = false, &l.Tap.At
	}
	r.mark()
	r.exclude(c, ch)
	r.draw(c)
	switch {
	case len(r.channels) < 2:
	case l.Zone != nil && l.Zone.ABCircuits.Yes:
		r.split = evenly
	default:
		r.split = unknownHalf
	}
}

// countOf is the number of loudspeakers of a row: the stated count, else the
// number of its tags, else one or more.
func countOf(l *schedule.Loudspeaker) Interval {
	switch {
	case l.Count.Had() && (l.Count.Low >= 0 && !math.IsInf(float64(l.Count.Low), 0)) && l.Count.High >= l.Count.Low:
		return quantity(l.Count)
	case l.Count.Had():
		return atLeast(0) // implausible
	case len(l.Tags) > 0:
		return Exact(float64(len(l.Tags)))
	}
	return atLeast(1)
}

// mark finds the watts of one loudspeaker as marked: its tap; else its row's
// total over its count; else the span of the taps its model offers; else unknown.
// The total of a row whose tap cannot be was worked out from that tap.
func (r *row) mark() {
	l := r.l
	switch {
	case r.tapped:
		r.marked = quantity(l.Tap)
	case r.doubted != nil && len(r.offers) == 0:
		r.marked = atLeast(0)
	case r.doubted != nil:
		r.marked = r.offered()
	case l.RowTotal.Had() && r.count.bounded() && r.count.Low > 0:
		r.marked = quantity(l.RowTotal).over(r.count)
	case l.RowTotal.Had():
		r.marked, r.units, r.lump = quantity(l.RowTotal), whole, true
	case len(r.offers) > 0:
		r.marked = r.offered()
	default:
		r.marked = atLeast(0)
	}
}

// offered is the span of the taps that its transformer offers, as marked.
func (r *row) offered() Interval {
	out := between(math.Inf(1), 0)
	for _, o := range r.offers {
		w := o.watts
		if r.lineV > 0 && r.tapV > 0 {
			w *= powerRatio(r.lineV, r.tapV)
		}
		out.Low, out.High = math.Min(out.Low, w), math.Max(out.High, w)
	}
	return out
}

// exclude decides whether an installed row is kept out of the sums.
func (r *row) exclude(c *circuit, ch *schedule.Channel) {
	l := r.l
	r.out = notOut
	if l.LowImpedance.Had() && !r.tapped && !l.RowTotal.Had() {
		r.out = lowImpedance
		if odd(l.LowImpedance, 0, math.Inf(1)) {
			r.out = absurd
			return
		}
		if ch != nil && ch.LowImpedance.Yes || c.onLowImpedanceOutput(l) {
			r.out = offLine
		}
		return
	}
	if r.doubted == nil && c.oddTap(l) || oddVolts(c, l.TapVolts) || c.oddCount(l) || c.oddTotal(r) {
		r.out = absurd
	}
}

func (c *circuit) onLowImpedanceOutput(l *schedule.Loudspeaker) bool {
	for _, a := range c.job.Amplifiers {
		if slices.Contains(a.LowImpedance, l) {
			return true
		}
	}
	return false
}

// draw works out what one loudspeaker takes from this line.
func (r *row) draw(c *circuit) {
	k := 1.0
	if r.lineV > 0 && r.tapV > 0 {
		k = powerRatio(r.tapV, r.lineV)
	}
	if m := c.set.model(r.l.Model, "loudspeaker"); m != nil && m.row.LossDB.Had() {
		r.lossDB = float64(m.row.LossDB.Low)
		k = line.WithInsertionLoss(k, r.lossDB)
	}
	r.each = r.marked
	if k != 1 {
		r.each = r.marked.scaled(k)
	}
	r.wrongV = r.lineV > 0 && r.tapV > 0 && !line.SameClass(r.tapV, r.lineV) && r.tapped && !r.offeredHere()
}

// powerRatio is the power that a tap marked for one line voltage draws from
// another, (V/Vt)^2, without the rounding of the last digits: 70.7 V on 100 V
// is 2, not 2.0000000000000004.
func powerRatio(tapV, lineV float64) float64 {
	k := line.TapWatts(1, tapV, lineV)
	if plain := math.Round(k*1000) / 1000; math.Abs(k-plain) < 1e-9 {
		return plain
	}
	return k
}

// offeredHere reports whether the transformer is made for this line as well
// and simply marked twice: 5 W at 70.7 V is 10 W at 100 V on one terminal.
func (r *row) offeredHere() bool {
	for _, o := range r.offers {
		if o.volts > 0 && line.SameClass(o.volts, r.lineV) && same(o.watts, r.each.Low) {
			return true
		}
	}
	return false
}

// total is what the installed or future loudspeakers of the row draw together.
func (r *row) total() Interval { return r.each.times(r.units) }

// shareOf is the part of the row that each of its channels carries.
func (r *row) shareOf() Interval {
	switch r.split {
	case evenly:
		return Exact(1 / float64(len(r.channels)))
	case unknownHalf:
		return between(0, 1)
	}
	return whole
}

// known reports whether the row's watts have an upper bound.
func (r *row) known() bool { return r.each.bounded() && r.units.bounded() }

// offersOf lists the taps that the schedule, else the house book, says a
// loudspeaker's transformer has.
func (c *circuit) offersOf(l *schedule.Loudspeaker, lineV, tapV float64) []offer {
	taps := l.Offered
	if len(taps) == 0 {
		m := c.set.model(l.Model, "loudspeaker")
		if m == nil {
			return nil
		}
		taps = m.row.Taps
	}
	if len(taps) == 0 {
		return nil
	}
	word := c.word(l.Model.Value)
	if known := c.offered[word]; word != 0 && known.lineV == lineV && known.tapV == tapV && slices.Equal(known.taps, taps) {
		return known.offers
	}
	out := make([]offer, 0, len(taps))
	for _, t := range taps {
		o := offer{watts: float64(t.Watts), marked: float64(t.Watts)}
		switch {
		case t.Volts > 0:
			o.volts = line.Nominal(float64(t.Volts))
		case tapV > 0 && tapV != lineV:
			o.volts = tapV // the list stands beside a tap stated for that voltage
		}
		if o.volts > 0 && lineV > 0 {
			o.watts = o.marked * powerRatio(o.volts, lineV)
		}
		out = append(out, o)
	}
	c.offered[word] = offerList{taps, lineV, tapV, out}
	return out
}

// An offerList is the offers of one model, kept for the next row that has it.
type offerList struct {
	taps        []schedule.TapOffer
	lineV, tapV float64
	offers      []offer
}

// countOnce finds loudspeakers that are listed on two sheets with the same tag
// and the same values: one device, counted once.
func (c *circuit) countOnce() {
	sheets := false
	for _, l := range c.job.Loudspeakers {
		sheets = sheets || l.At.Sheet() != c.job.Loudspeakers[0].At.Sheet()
	}
	if !sheets {
		return
	}
	first := make(map[string]*schedule.Loudspeaker, len(c.rows))
	for i := range c.rows {
		l := c.rows[i].l
		tag, ok := singleTag(l)
		if !ok || l.Status != schedule.Installed {
			continue
		}
		k := first[tag]
		if k == nil {
			first[tag] = l
			continue
		}
		if k.At.Sheet() != l.At.Sheet() && agree(k, l) {
			c.rows[i].repeats = true
			c.assumed = append(c.assumed, schedule.Assumption{At: l.At, Field: "loudspeaker", Written: l.Tag.Value,
				TakenAs: "the one in " + k.At.String() + ", counted once", How: schedule.Computed, Because: "same tag and same values on another sheet"})
		}
	}
}

// singleTag is the folded tag of a row that stands for one loudspeaker.
func singleTag(l *schedule.Loudspeaker) (string, bool) {
	tag := l.Tag.Value
	if len(l.Tags) == 1 {
		tag = l.Tags[0]
	}
	n, ok := l.Count.Exact()
	if tag == "" || len(l.Tags) > 1 || ok && n != 1 || sameModel(tag, l.Model.Value) {
		return "", false
	}
	return modelKey(tag), true
}

// agree reports whether two rows say nothing different of one device.
func agree(a, b *schedule.Loudspeaker) bool {
	sameText := func(x, y schedule.Text) bool {
		return x.Value == "" || y.Value == "" || folded(x.Value) == folded(y.Value)
	}
	sameTap := !a.Tap.Had() || !b.Tap.Had() || a.Tap.Low == b.Tap.Low && a.Tap.High == b.Tap.High
	sameZone := a.Zone == nil || b.Zone == nil || a.Zone == b.Zone
	return sameText(a.Model, b.Model) && sameText(a.Room, b.Room) && sameTap && sameZone
}
