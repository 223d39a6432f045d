package audit

import (
	_ "embed"
	"fmt"
	"math"
	"slices"

	"lineaudit/audit/schedule"
)

//go:embed doc/implausible.md
var implausibleDoc string

// implausible finds single values that cannot be: they are findings with their
// cell, and stay out of the arithmetic.
var implausible = &Rule{
	Name:  "implausible",
	Title: "a value cannot be what was meant",
	Why:   "A typing error or a wrong unit makes every sum it enters worthless; such a value is shown and kept out of the sums.",
	Doc:   implausibleDoc,
	Limits: []Limit{
		{Name: "caution", Grade: Caution, Default: 0, Unit: "implausible values", Source: "common practice, no source"},
		{Name: "highest tap", Default: 1000, Unit: "W", Source: "common practice, no source", Note: "the largest line transformers of single loudspeakers are a few hundred watts"},
		{Name: "most in a row", Default: 2000, Unit: "pieces", Source: "common practice, no source"},
		{Name: "highest control rating", Default: 2000, Unit: "W", Source: "common practice, no source"},
		{Name: "highest channel rating", Default: 20000, Unit: "W", Source: "common practice, no source"},
		{Name: "longest run", Default: 50000, Unit: "m", Source: "common practice, no source", Note: "lines of more than a few kilometres are rare; a long one shows as a loss"},
		{Name: "thinnest conductor", Default: 0.05, Unit: "mm2", Source: "common practice, no source"},
		{Name: "thickest conductor", Default: 70, Unit: "mm2", Source: "common practice, no source"},
		{Name: "lowest line voltage", Default: 10, Unit: "V", Source: "common practice, no source"},
		{Name: "highest line voltage", Default: 250, Unit: "V", Source: "line voltages in use run from 25 to 200 V: Crown, Guide to Constant-Voltage Systems, history section"},
	},
	Silent: []string{
		"the value is at the bound itself",
		"the cell is blank: a blank is unknown, not zero",
		"the quantity is 0: nothing is installed there",
	},
	Cautions: []string{cautionPaper},
	OnSite:   "read the value from the device",
	Check:    checkImplausible,
}

// plausible holds the bounds of single values, looked up once a job.
type plausible struct {
	tap, count, control, channel, run, thin, thick, lowV, highV float64
}

func (s *Settings) plausible() plausible {
	v := func(name string, off float64) float64 {
		if l, ok := s.value("implausible", name, schedule.AnyUse); ok {
			return l.Value
		}
		return off
	}
	inf := math.Inf(1)
	return plausible{tap: v("highest tap", inf), count: v("most in a row", inf), control: v("highest control rating", inf),
		channel: v("highest channel rating", inf), run: v("longest run", inf), thin: v("thinnest conductor", 0),
		thick: v("thickest conductor", inf), lowV: v("lowest line voltage", 0), highV: v("highest line voltage", inf)}
}

// odd reports whether a value is not a number of the allowed range. The lower
// end itself is outside where least is 0: nothing has 0 W or 0 m.
func odd[T ~float64](q schedule.Quantity[T], least, most float64) bool {
	if !q.Had() {
		return false
	}
	low, high := float64(q.Low), float64(q.High)
	bad := math.IsNaN(low) || math.IsNaN(high) || math.IsInf(low, 0) || math.IsInf(high, 0)
	return bad || past(high, most) || below(low, least) || least == 0 && low <= 0
}

func (c *circuit) oddTap(l *schedule.Loudspeaker) bool {
	return odd(l.Tap, 0, c.limits.tap) || !l.Tap.Had() && odd(l.RowTotal, 0, c.limits.tap*c.limits.count)
}

// oddTotal reports whether a row's total makes a tap of each of its
// loudspeakers that cannot be.
func (c *circuit) oddTotal(r *row) bool {
	return !r.tapped && r.doubted == nil && r.l.RowTotal.Had() && r.units != whole && past(r.marked.Low, c.limits.tap)
}

// doubt marks the rows whose tap was refused by the reading.
func (c *circuit) doubt() {
	if len(c.job.Refused) == 0 {
		return
	}
	refused := refusalsOf(c.job)
	var found []int
	for i := range c.rows {
		l := c.rows[i].l
		if l.Tap.Had() && l.Tap.How != schedule.Computed {
			continue
		}
		found = refused.in(l, found[:0])
		slices.Sort(found)
		for _, k := range found {
			if f := &c.job.Refused[k]; f.Field == "tap" {
				c.rows[i].doubted = &f.At
			}
		}
	}
}

// refusals finds the positions of refused values by the rows and columns of
// their cells.
type refusals map[refusedIn][]int

type refusedIn struct {
	sheet   string
	columns bool
	n       int
}

func refusalsOf(j *schedule.Job) refusals {
	out := make(refusals, 2*len(j.Refused))
	for k, f := range j.Refused {
		row, col := refusedIn{f.At.Sheet(), false, int(f.At.Row)}, refusedIn{f.At.Sheet(), true, int(f.At.Col)}
		out[row], out[col] = append(out[row], k), append(out[col], k)
	}
	return out
}

// in appends the positions of the values that were refused in the cells of a loudspeaker.
func (r refusals) in(l *schedule.Loudspeaker, out []int) []int {
	if len(r) == 0 || l.Rows.First <= 0 {
		return out
	}
	for n := l.Rows.First; n <= max(l.Rows.First, l.Rows.Last); n++ {
		out = append(out, r[refusedIn{l.At.Sheet(), l.Rows.Columns, n}]...)
	}
	return out
}

func (c *circuit) oddCount(l *schedule.Loudspeaker) bool {
	n := float64(l.Count.Low)
	return l.Count.Had() && (n < 0 || math.IsNaN(n) || past(float64(l.Count.High), c.limits.count))
}

func oddVolts(c *circuit, q schedule.Quantity[schedule.Volts]) bool {
	return odd(q, c.limits.lowV, c.limits.highV)
}

func oddArea(c *circuit, k *schedule.Cable) bool { return odd(k.Area, c.limits.thin, c.limits.thick) }

func oddLength(c *circuit, k *schedule.Cable) bool { return odd(k.Length, 0, c.limits.run) }

func checkImplausible(x *Examination) error {
	c, b := x.circuit, x.circuit.limits
	for i, l := range x.Job.Loudspeakers {
		r := &c.rows[i]
		cl := func(what, text string, s schedule.Source) *claim {
			return &claim{key: rowKey(l) + "\x1f" + what, place: rowName(l), room: l.Room.Value, zone: zoneName(l.Zone), at: placeOf(s, l.At),
				message: text, pieces: 1, emergency: r.emergency, cells: func() []Evidence { return appendCell(nil, s, what) }}
		}
		switch {
		case r.doubted != nil && *r.doubted != l.Tap.At: // the cell of its tap was refused
		case odd(l.Tap, 0, b.tap):
			x.implausible(cl("tap", oddText("a tap of", l.Tap, "W", b.tap), l.Tap.Source))
		case !l.Tap.Had() && odd(l.RowTotal, 0, b.tap*b.count), c.oddTotal(r):
			x.implausible(cl("row total", oddText("a row total of", l.RowTotal, "W", b.tap*b.count), l.RowTotal.Source))
		}
		if c.oddCount(l) {
			x.implausible(cl("count", oddText("a quantity of", l.Count, "pieces", b.count), l.Count.Source))
		}
		if oddVolts(c, l.TapVolts) {
			x.implausible(cl("tap voltage", oddText("a tap for", l.TapVolts, "V", b.highV), l.TapVolts.Source))
		}
		if odd(l.LowImpedance, 0, math.Inf(1)) {
			x.implausible(cl("impedance", oddText("an impedance of", l.LowImpedance, "ohm", math.Inf(1)), l.LowImpedance.Source))
		}
	}
	x.implausibleRatings()
	x.implausibleCables()
	x.refused()
	return nil
}

// refused reports the cells whose value the reading kept out, those that say
// the same in one field together.
func (x *Examination) refused() {
	type same struct{ sheet, field, written, why string }
	at := map[same]int{}
	var groups [][]schedule.Refusal
	for _, f := range x.Job.Refused {
		k := same{f.At.Sheet(), f.Field, f.Written, f.Why}
		if i, ok := at[k]; ok {
			groups[i] = append(groups[i], f)
			continue
		}
		at[k] = len(groups)
		groups = append(groups, []schedule.Refusal{f})
	}
	for _, g := range groups {
		first := g[0]
		cl := &claim{key: "refused\x1f" + first.Field + "\x1f" + folded(first.Written), place: "the " + first.Field + " in " + first.At.String(), at: first.At, pieces: float64(len(g)),
			message: fmt.Sprintf("%s “%s” is %s; kept out of every sum", first.Field, first.Written, first.Why),
			cells: func() []Evidence {
				var cells []Evidence
				for _, f := range g {
					cells = append(cells, Evidence{At: f.At, Written: f.Written, Role: f.Field})
				}
				return cells
			}}
		if len(g) > 1 {
			cl.message += fmt.Sprintf(" (%d cells)", len(g))
		}
		if l := x.loudspeakerAt(first.At); l != nil {
			cl.place, cl.room, cl.zone = rowName(l), l.Room.Value, zoneName(l.Zone)
		}
		x.implausible(cl)
	}
}

func (x *Examination) implausibleRatings() {
	c, b := x.circuit, x.circuit.limits
	say := func(key, place, room, what string, at schedule.Ref, text string, s schedule.Source, n *node) {
		x.implausible(&claim{key: key + "\x1f" + what, place: place, room: room, at: placeOf(s, at), message: text, pieces: n.pieces(),
			emergency: n.emergency, cells: func() []Evidence { return appendCell(nil, s, what) }})
	}
	for i, k := range x.Job.Controls {
		if odd(k.Rated, 0, b.control) {
			say(controlKey(k), controlName(k), k.Room.Value, "rating", k.At, oddText("a control rated", k.Rated, "W", b.control), k.Rated.Source, &c.controls[i])
		}
	}
	for i, ch := range x.Job.Channels {
		if odd(ch.Rated, 0, b.channel) {
			say(channelKey(ch), channelName(ch), "", "rating", ch.At, oddText("a channel rated", ch.Rated, "W", b.channel), ch.Rated.Source, &c.channels[i])
		}
		if oddVolts(c, ch.LineVolts) {
			say(channelKey(ch), channelName(ch), "", "line voltage", ch.At, oddText("a line of", ch.LineVolts, "V", b.highV), ch.LineVolts.Source, &c.channels[i])
		}
	}
	if v := x.Job.LineVolts; oddVolts(c, v) {
		say("job", "the job", "", "line voltage", v.At, oddText("a line of", v, "V", b.highV), v.Source, &node{})
	}
	for i, a := range x.Job.Amplifiers {
		if odd(a.Rated, 0, b.channel) {
			say(amplifierKey(a), amplifierName(a), "", "rating", a.At, oddText("an amplifier rated", a.Rated, "W", b.channel), a.Rated.Source, &c.amplifiers[i])
		}
	}
}

func (x *Examination) implausibleCables() {
	c, b := x.circuit, x.circuit.limits
	for _, k := range x.Job.Cables {
		say := func(what, text string, s schedule.Source) {
			x.implausible(&claim{key: cableKey(k) + "\x1f" + what, place: cableName(k), zone: zoneName(k.Zone), at: placeOf(s, k.At), message: text,
				pieces: 1, cells: func() []Evidence { return appendCell(nil, s, what) }})
		}
		if oddLength(c, k) {
			say("length", oddText("a run of", k.Length, "m", b.run), k.Length.Source)
		}
		if oddArea(c, k) {
			say("area", oddText("a conductor of", k.Area, "mm2", b.thick), k.Area.Source)
		}
	}
}

// oddText says what is written and why it cannot be.
func oddText[T ~float64](what string, q schedule.Quantity[T], unit string, most float64) string {
	text := fmt.Sprintf("%s %s %s", what, span(quantity(q)), unit)
	of := "sums"
	if unit == "m" || unit == "mm2" {
		of = "losses"
	}
	if past(float64(q.High), most) {
		return fmt.Sprintf("%s is more than %s %s, the most that is plausible; kept out of the %s", text, figure(most), unit, of)
	}
	return text + " cannot be; kept out of the " + of
}

func (x *Examination) implausible(cl *claim) {
	cl.measured, cl.unit = Exact(1), "implausible values"
	x.judge(cl)
}

func cableKey(k *schedule.Cable) string {
	if k.Key != "" {
		return "cable\x1f" + k.Key
	}
	return "cable\x1f" + zoneKey(k.Zone) + "\x1f" + folded(k.From.Text.Value) + "\x1f" + folded(k.To.Text.Value)
}

func cableName(k *schedule.Cable) string {
	switch {
	case k.Name != "":
		return "cable " + k.Name
	case k.From.Text.Value != "" && k.To.Text.Value != "":
		return "cable from " + k.From.Text.Value + " to " + k.To.Text.Value
	case k.Zone != nil:
		return "cable of zone " + k.Zone.Name
	case k.Control != nil:
		return "cable of control " + k.Control.Name
	case k.Channel != nil:
		return "cable of channel " + k.Channel.Label()
	}
	return "cable"
}
