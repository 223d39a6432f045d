package audit

import (
	"math"

	"lineaudit/audit/line"
	"lineaudit/audit/schedule"
)

// A rating is what a node may carry at its line voltage.
type rating struct {
	watts   Interval // at this line voltage
	nominal Interval // as stated, whatever the voltage
	from    schedule.Source
	house   bool
	volts   []float64 // nominal voltages the rating is stated for; none: that of the line
	fit     fit
	ratedV  float64 // the stated voltage that the rating was derived from, 0: none
	note    string  // why the upper end only is known
}

// fit says how the voltage of a rating meets that of the line.
type fit uint8

const (
	fits     fit = iota // stated for this line, or for no voltage in particular
	derated             // stated for a higher line voltage: limited by current
	exceeded            // stated for lower line voltages only
)

// rate finds the ratings of all nodes.
func (c *circuit) rate() {
	for i := range c.controls {
		c.controls[i].rating = c.controlRating(c.job.Controls[i], c.controls[i].lineV)
	}
	for i, ch := range c.job.Channels {
		c.channels[i].rating = c.channelRating(ch, c.channels[i].lineV)
	}
	c.ratePairs()
	for i, a := range c.job.Amplifiers {
		c.amplifiers[i].rating = c.frameRating(a)
	}
}

// sane is a stated rating; unknown where it is implausible.
func sane(q schedule.Quantity[schedule.Watts], most float64) Interval {
	if odd(q, 0, most) {
		return Interval{}
	}
	return quantity(q)
}

// controlRating is the rating of a control at a line voltage (0: unknown).
//
// A control rated for a higher voltage is limited by its current, so that on a
// lower line it may carry rating x V/Vr watts (derived from P = V x I; no
// printed rule found). One rated for lower voltages only keeps its watts here;
// the rule control-voltage-mismatch speaks.
func (c *circuit) controlRating(k *schedule.Control, lineV float64) rating {
	r := rating{from: k.Rated.Source, nominal: sane(k.Rated, c.limits.control)}
	for _, v := range k.RatedVolts {
		if n, ok := v.Exact(); ok && n > 0 {
			r.volts = append(r.volts, line.Nominal(float64(n)))
		}
	}
	if m := c.set.model(k.Model, "control"); m != nil && weaker(k.Rated.How) {
		if w, v := m.rated(lineV); w.Had() {
			r.from, r.nominal, r.house, r.volts = w.Source, quantity(w), true, nil
			if v > 0 {
				r.volts = []float64{line.Nominal(v)}
			}
		}
	}
	r.watts = r.nominal
	if lineV <= 0 || len(r.volts) == 0 || !r.nominal.Known {
		return r
	}
	above := 0.0
	for _, v := range r.volts {
		if line.SameClass(v, lineV) {
			return r
		}
		if v > lineV && (above == 0 || v < above) {
			above = v
		}
	}
	if above == 0 {
		r.fit = exceeded
		return r
	}
	r.fit, r.ratedV = derated, above
	r.watts = r.nominal.scaled(lineV / above)
	return r
}

// channelRating is the continuous rating of a channel at its line voltage. A
// rating under another condition (peak, at 4 ohm) only says that the line
// rating is no higher.
func (c *circuit) channelRating(ch *schedule.Channel, lineV float64) rating {
	r := rating{from: ch.Rated.Source, nominal: sane(ch.Rated, c.limits.channel)}
	a := ch.Amplifier
	if a != nil && weaker(ch.Rated.How) {
		if m := c.set.model(a.Model, "amplifier"); m != nil && len(ch.Bridged) == 0 && !ch.Pair {
			if w, _ := m.rated(lineV); w.Had() {
				r.from, r.nominal, r.house = w.Source, quantity(w), true
			}
		}
		if !r.nominal.Known && len(a.Channels) == 1 && a.Rated.Had() {
			r.from, r.nominal = a.Rated.Source, sane(a.Rated, c.limits.channel)
		}
	}
	r.watts = r.nominal
	if ch.RatedBasis.Value != "" && !r.house && r.nominal.Known {
		r.watts.Low = 0
		r.note = "rated " + ch.RatedBasis.Value + ", which is no continuous rating at the line voltage"
	}
	return r
}

// ratePairs settles the ratings of channels that name each other as bridged
// partners. A rating beside one of them is that of the pair. Where several have
// one it may be that of each output or that of the pair written again: the pair
// gives at least the least of them and at most their sum.
func (c *circuit) ratePairs() {
	for i, h := range c.head {
		if h == i {
			continue
		}
		head, one := &c.channels[h].rating, &c.channels[i].rating
		switch {
		case !one.nominal.Known:
			continue
		case !head.nominal.Known:
			*head = *one
			continue
		}
		head.nominal = between(math.Min(head.nominal.Low, one.nominal.Low), head.nominal.High+one.nominal.High)
		head.watts.Low = math.Min(head.watts.Low, one.watts.Low)
		head.watts.High = head.nominal.High
		head.note = "bridged, and rated output by output: whether each or the pair gives that is not said"
	}
}

// frameRating is the total that a frame may give over all its channels. One that
// may as well be that of each output is at most that many times as much.
func (c *circuit) frameRating(a *schedule.Amplifier) rating {
	r := rating{from: a.Rated.Source, nominal: sane(a.Rated, c.limits.channel)}
	if m := c.set.model(a.Model, "amplifier"); m != nil && m.row.Frame.Had() && weaker(a.Rated.How) {
		r.from, r.nominal, r.house = m.row.Frame.Source, quantity(m.row.Frame), true
	}
	r.watts = r.nominal
	if a.Rated.How == schedule.LikelierReading && !r.house && len(a.Channels) > 1 {
		r.watts.High = r.nominal.High * float64(len(a.Channels))
		r.note = "whose rating may be that of each output"
	}
	return r
}
