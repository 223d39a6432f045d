package audit

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"lineaudit/audit/schedule"
)

// Usual series of ratings in watts, for want of a better source: the ladders of
// controls that the fault catalogue of published sheets shows (10, 35, 100 W;
// 5, 10, 12, 20, 30, 40, 50, 75, 100 W) and amplifier sizes as commonly sold.
// Common practice, no source.
var (
	usualControls = [...]float64{5, 10, 12, 20, 35, 50, 75, 100, 150, 200}
	usualChannels = [...]float64{15, 30, 60, 120, 180, 240, 360, 480, 600, 1000, 1200, 1500, 2000}
)

const (
	usualControlsName = "usual control ratings (5 10 12 20 35 50 75 100 150 200 W), common practice"
	usualChannelsName = "usual amplifier ratings (15 to 2000 W), common practice"
)

// An available rating is one that could be bought or is in use.
type available struct {
	watts  float64
	model  string
	source string
}

// nextRating is the smallest rating of at least need watts: from the house
// book, else from this job, else from a usual series.
func (w *workshop) nextRating(kind string, need, lineV float64, usual []float64, usualName string) (available, bool) {
	key := ratingsFor{kind, lineV}
	known, ok := w.ratings[key]
	if !ok {
		known = [...][]available{ladder(w.c.houseRatings(kind, lineV)), ladder(w.c.ratingsInUse(kind, lineV))}
		w.ratings[key] = known
	}
	for _, list := range known {
		for _, a := range list {
			if !past(need, a.watts) {
				return a, true
			}
		}
	}
	for _, w := range usual {
		if !past(need, w) {
			return available{w, "", usualName}, true
		}
	}
	return available{}, false
}

// ratingsFor is what ratings are looked up for: kind of equipment and line voltage.
type ratingsFor struct {
	kind  string
	lineV float64
}

// ladder sorts ratings, and keeps the first source of each.
func ladder(list []available) []available {
	slices.SortStableFunc(list, func(a, b available) int {
		return cmp.Or(cmp.Compare(a.watts, b.watts), cmp.Compare(a.source, b.source))
	})
	return slices.CompactFunc(list, func(a, b available) bool { return a.watts == b.watts })
}

// houseRatings are the ratings that the house book has for a line voltage.
func (c *circuit) houseRatings(kind string, lineV float64) (out []available) {
	if c.set.House == nil {
		return nil
	}
	for i := range c.set.House.Ratings {
		row := &c.set.House.Ratings[i]
		m := &model{row: row, kind: folded(row.Kind.Value)}
		if m.kind != kind {
			continue
		}
		w, v := m.rated(lineV)
		if w.Had() && (v == 0 || lineV == 0 || math.Abs(v-lineV) <= 0.015*lineV) {
			out = append(out, available{float64(w.Low), row.Model.Value, "house book, " + row.At.String()})
		}
	}
	return out
}

// ratingsInUse are the ratings of the job's own controls or channels on lines of a voltage.
func (c *circuit) ratingsInUse(kind string, lineV float64) (out []available) {
	if kind == "control" {
		for i, k := range c.job.Controls {
			n := &c.controls[i]
			if k.Status == schedule.Installed && !k.Remote.Yes && n.rating.watts.exact() && n.rating.fit == fits && (n.lineV == lineV || n.lineV == 0) && !c.oddRating(i) {
				out = append(out, available{n.rating.watts.Low, k.Model.Value, "this job, " + k.Name})
			}
		}
		return out
	}
	for i, ch := range c.job.Channels {
		if n := &c.channels[i]; n.rating.watts.exact() && n.lineV == lineV && !odd(ch.Rated, 0, c.limits.channel) {
			model := ""
			if ch.Amplifier != nil {
				model = ch.Amplifier.Model.Value
			}
			out = append(out, available{n.rating.watts.Low, model, "this job, " + ch.Label()})
		}
	}
	return out
}

// largestControl is the largest control for a line voltage in the house book,
// else in the usual series.
func (c *circuit) largestControl(lineV float64) available {
	best := available{usualControls[len(usualControls)-1], "", usualControlsName}
	found := false
	if c.set.House == nil {
		return best
	}
	for i := range c.set.House.Ratings {
		row := &c.set.House.Ratings[i]
		m := &model{row: row, kind: folded(row.Kind.Value)}
		if m.kind != "control" {
			continue
		}
		w, v := m.rated(lineV)
		if w.Had() && (v == 0 || lineV == 0 || math.Abs(v-lineV) <= 0.015*lineV) && (!found || float64(w.Low) > best.watts) {
			best, found = available{float64(w.Low), row.Model.Value, "house book, " + row.At.String()}, true
		}
	}
	return best
}

func (c *circuit) oddRating(i int) bool { return odd(c.job.Controls[i].Rated, 0, c.limits.control) }

// nextControl proposes the smallest control that carries the load.
func (p *repair) nextControl(i int) {
	c := p.c
	n := &c.controls[i]
	if !n.load.Watts.bounded() {
		p.not("the load is not known")
		return
	}
	need := n.load.Watts.High / (c.lowestLimit("control-overload", n.emergency) / 100)
	a, ok := p.nextRating("control", c.withHeadroom(need), n.lineV, usualControls[:], usualControlsName)
	if !ok {
		a, ok = p.nextRating("control", need, n.lineV, usualControls[:], usualControlsName)
	}
	if !ok {
		p.not("no control on the list carries %s W", figure(need))
		return
	}
	k := p.x.Job.Controls[i]
	tried := p.try(func(j *trial) { setControl(j.Control(k), a, n.lineV) }, k)
	if tried == nil {
		p.not("a control of %s W would not cure it", figure(a.watts))
		return
	}
	part := ratedPart("control", a, n.lineV)
	m := tried.after.sameNode(p.f)
	p.keep(Remedy{Kind: "next-rating", Change: fmt.Sprintf("replace %s (%s) by one of %s W%s", controlName(p.x.Job.Controls[i]), n.rating.stated(), figure(a.watts), atVolts(n.lineV)),
		Short: figure(a.watts) + " W control", Part: part, Before: n.share(), After: m.share(), Unit: "% of rating", Effect: loadEffect(m), Source: a.source})
}

// withHeadroom adds the headroom that channels are held to.
func (c *circuit) withHeadroom(watts float64) float64 {
	if l := c.set.limits["headroom-short"].grade[schedule.AnyUse][Caution]; l != nil && l.Value > 0 && l.Value < 100 {
		return watts * 100 / l.Value
	}
	return watts
}

// stated is a rating with the voltages it is stated for.
func (r *rating) stated() string {
	if len(r.volts) == 0 {
		return span(r.nominal) + " W"
	}
	return span(r.nominal) + " W for " + voltsList(r.volts)
}

func atVolts(lineV float64) string {
	if lineV <= 0 {
		return ""
	}
	return " at " + volts(lineV)
}

func setControl(k *schedule.Control, a available, lineV float64) {
	k.Rated = stateQuantity(schedule.Watts(a.watts))
	k.RatedVolts = nil
	if lineV > 0 {
		k.RatedVolts = []schedule.Quantity[schedule.Volts]{stateQuantity(schedule.Volts(lineV))}
	}
	k.Model = schedule.Text{}
}

func ratedPart(kind string, a available, lineV float64) string {
	part := kind + ", " + figure(a.watts) + " W" + atVolts(lineV)
	if a.model != "" {
		part += " (such as " + a.model + ")"
	}
	return part
}

// nextChannel proposes the smallest channel rating that carries the load with headroom.
func (p *repair) nextChannel(i int) {
	c := p.c
	n := &c.channels[i]
	if !n.load.Watts.bounded() || !n.rating.watts.Known {
		return
	}
	need := n.load.Watts.High * 100 / c.channelLimit(i)
	a, ok := p.nextRating("amplifier", need, n.lineV, usualChannels[:], usualChannelsName)
	if !ok {
		p.not("no amplifier on the list gives %s W on one channel", figure(need))
		return
	}
	channel := p.x.Job.Channels[i]
	tried := p.try(func(j *trial) {
		ch := j.Channel(channel)
		grow := float64(ch.Rated.High)
		ch.Rated, ch.RatedBasis = stateQuantity(schedule.Watts(a.watts)), schedule.Text{}
		if ch.Amplifier == nil {
			return
		}
		ch.Amplifier.Model = schedule.Text{}
		if ch.Amplifier.Rated.Had() { // a larger frame comes with it
			more := schedule.Watts(math.Max(0, a.watts-grow))
			ch.Amplifier.Rated = stateQuantity(ch.Amplifier.Rated.High + more)
		}
	}, channel)
	if tried == nil {
		p.not("a channel of %s W would not cure it", figure(a.watts))
		return
	}
	m := tried.after.sameNode(p.f)
	p.keep(Remedy{Kind: "next-rating", Change: fmt.Sprintf("replace channel %s (%s W) by one of %s W", p.x.Job.Channels[i].Label(), span(n.rating.nominal), figure(a.watts)),
		Short: figure(a.watts) + " W channel", Part: ratedPart("amplifier channel", a, n.lineV), Before: n.share(), After: m.share(), Unit: "% of rating",
		Effect: loadEffect(m), Source: a.source})
}

// nextFrame proposes the smallest frame total that carries the load.
func (p *repair) nextFrame(i int) {
	c := p.c
	n := &c.amplifiers[i]
	if !n.load.Watts.bounded() {
		return
	}
	need := n.load.Watts.High / (c.lowestLimit("frame-overload", n.emergency) / 100)
	a := available{}
	for _, w := range usualChannels {
		if !past(need, w) {
			a = available{w, "", usualChannelsName}
			break
		}
	}
	if a.watts == 0 {
		p.not("no frame on the list gives %s W", figure(need))
		return
	}
	frame := p.x.Job.Amplifiers[i]
	tried := p.try(func(j *trial) {
		fresh := j.Amplifier(frame)
		fresh.Rated, fresh.Model = stateQuantity(schedule.Watts(a.watts)), schedule.Text{}
	}, frame)
	if tried == nil {
		return
	}
	m := tried.after.sameNode(p.f)
	p.keep(Remedy{Kind: "next-rating", Change: fmt.Sprintf("replace amplifier %s by a frame that gives %s W over all channels", p.x.Job.Amplifiers[i].Name, figure(a.watts)),
		Short: figure(a.watts) + " W frame", Part: ratedPart("amplifier frame", a, n.lineV), Before: n.share(), After: m.share(), Unit: "% of rating",
		Effect: loadEffect(m), Source: a.source})
}
