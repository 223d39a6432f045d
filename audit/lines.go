package audit

import (
	"fmt"
	"math"
	"slices"

	"lineaudit/audit/line"
	"lineaudit/audit/schedule"
)

// A network is one cable network that a channel feeds, or one length for a
// line, with what it loses.
type network struct {
	line    Line
	key     string
	place   string
	room    string
	use     schedule.Use
	members []member
	count   Interval
	judged  Interval // dB at the worst loudspeaker, over all readings
	worst   string   // the worst loudspeaker, for a tree
	presume float64  // dB at most with the thinnest usual wire, where a size is missing; +Inf: no bound
	missing []gap
	ring    bool
	loose   bool // nothing on it leads to an amplifier
	tree    *tree
	one     *oneLength
}

// oneLength is a line of which one length is known.
type oneLength struct {
	conduit conduit
	volts   float64
	watts   Interval // of one of its equal runs
	count   float64
	ratioDB float64 // insertion loss of the control that all of it hangs on
	device  bool    // it leads from an output to a row of loudspeakers
}

// networksOf builds and solves every line of the job.
func (c *circuit) networksOf() []*network {
	if len(c.job.Cables) == 0 {
		return nil
	}
	c.usualC, c.usualClass = c.conductorDefaults()
	c.assumeCopper()
	g := newGraph(c)
	c.graph = g
	var out []*network
	for _, o := range g.single {
		out = append(out, c.oneLengthLine(o))
	}
	out = append(out, g.trees()...)
	g.widenUnclear(out)
	g.widenUncovered(out)
	slices.SortStableFunc(out, func(a, b *network) int { return a.line.At.Compare(b.line.At) })
	return out
}

func (c *circuit) conductorDefaults() (tempC float64, class int) {
	t, ok := c.set.value("line-loss", "temperature", schedule.AnyUse)
	if !ok {
		t.Value = 20
	}
	k, _ := c.set.value("line-loss", "class", schedule.AnyUse)
	return t.Value, int(k.Value)
}

// assumeCopper records, once, that cables without a metal are taken as copper.
func (c *circuit) assumeCopper() {
	n := 0
	var first *schedule.Cable
	for _, k := range c.job.Cables {
		if k.Material.Value == "" && k.Status == schedule.Installed {
			if first == nil {
				first = k
			}
			n++
		}
	}
	if n == 0 {
		return
	}
	c.assumed = append(c.assumed, schedule.Assumption{At: placeOf(first.Gauge.Source, first.At), Field: copperField, TakenAs: "copper",
		How: schedule.Default, Because: "no metal is stated for " + counted(float64(n), "cable")})
}

const copperField = "conductor material"

// A single is a cable that is one length for a line, with the rows it feeds.
type single struct {
	k       *schedule.Cable
	members []member
	again   []*schedule.Cable // the same cable, written on other rows
	shared  bool              // other cables feed the same rows: the share is not known
	control bool              // the length ends at a control: all load is at its far end
	device  bool              // it leads from an output to a row of loudspeakers
	channel int
}

// oneLengthLine reads one length in the two usual ways.
func (c *circuit) oneLengthLine(s single) *network {
	k := s.k
	d := c.conduit(k)
	n := &network{key: cableKey(k), place: "line " + lineName(k), members: s.members, presume: math.Inf(1), count: Exact(0)}
	watts, marks := Exact(0), 0
	lineV, rooms := 0.0, ""
	control, same := -2, true
	for _, m := range s.members {
		r := &c.rows[m.row]
		if r.part != counts {
			continue
		}
		n.count = n.count.plus(r.count.times(m.share))
		n.line.Emergency = n.line.Emergency || r.emergency
		if r.out == lowImpedance || r.out == absurd {
			marks++
		}
		if r.out != notOut {
			continue
		}
		watts = watts.plus(r.each.times(r.units.times(m.share)))
		lineV = r.lineV
		if control == -2 {
			control, rooms = r.control, r.l.Room.Value
		}
		same = same && control == r.control
		if r.l.Room.Value != rooms {
			rooms = ""
		}
	}
	if s.channel >= 0 {
		lineV = c.channels[s.channel].lineV
		n.line.Channel = c.job.Channels[s.channel]
	}
	runs := 1.0
	if q, ok := k.Count.Exact(); ok && q > 1 {
		runs = float64(q)
	}
	if s.shared {
		watts.Low = 0
	} else if runs > 1 {
		watts.Low /= runs
		if n.count.exact() && n.count.Low == runs { // one loudspeaker on each run
			watts.High /= runs
			s.control = true
		}
	}
	n.room = rooms
	o := &oneLength{conduit: d, volts: lineV, watts: watts, count: 1, device: s.device}
	if n.count.bounded() && !s.control {
		o.count = math.Max(1, math.Round(n.count.High))
	}
	if same && control >= 0 {
		o.ratioDB = c.insertionDB(control)
	}
	n.one = o
	n.use = useOf(n.line.Emergency, k.Zone, n.line.Channel)
	n.line.Name, n.line.Zone, n.line.Control, n.line.Cables = lineName(k), k.Zone, k.Control, append([]*schedule.Cable{k}, s.again...)
	if n.line.Zone == nil && k.To.Zone != nil {
		n.line.Zone = k.To.Zone
	}
	n.line.At = placeOf(k.Length.Source, k.At)
	n.line.Reading, n.line.LengthM, n.line.AreaMM2, n.line.Material = "one length", d.length, d.areaOf(), metalOf(k)
	n.line.LoadW = watts
	n.line.LineV = voltsInterval(lineV)
	if d.loop.bounded() {
		n.line.LoopOhm = d.loop
	}
	if marks > 0 {
		n.line.Incomplete = counted(float64(marks), "row") + " kept out"
	}
	n.missing = c.lineGaps(n, &d, lineV)
	o.read(n)
	if marks > 0 {
		n.judged.High = math.Inf(1)
	}
	return n
}

// read works out the two readings and what is judged: both ends of both.
func (o *oneLength) read(n *network) {
	n.judged = Interval{}
	n.line.FarDB, n.line.EvenDB, n.line.WorstDB = Interval{}, Interval{}, Interval{}
	if o.volts <= 0 || !o.watts.Known || o.watts.High == 0 {
		return
	}
	loop := o.conduit.loop
	far := Interval{o.loss(o.watts.Low, loop.Low, 1), o.loss(o.watts.High, loop.High, 1), true}
	even := Interval{o.loss(o.watts.Low, loop.Low, o.count), o.loss(o.watts.High, loop.High, o.count), true}
	n.judged = between(math.Min(far.Low, even.Low), math.Max(far.High, even.High))
	if far.bounded() && even.bounded() {
		n.line.FarDB, n.line.EvenDB = far, even
		n.line.WorstDB = between(math.Max(far.Low, even.Low), math.Max(far.High, even.High))
	}
	if w := o.conduit.worstCase(); !loop.bounded() && w.bounded() {
		n.presume = math.Max(o.loss(o.watts.High, w.High, 1), o.loss(o.watts.High, w.High, o.count))
	}
}

// loss is the level drop in dB at the last of count loudspeakers.
func (o *oneLength) loss(watts, loop, count float64) float64 {
	switch {
	case math.IsInf(watts, 1) || math.IsInf(loop, 1):
		if watts == 0 || loop == 0 {
			return 0
		}
		return math.Inf(1)
	case watts == 0:
		return 0
	}
	ratio := math.Pow(10, -o.ratioDB/20)
	r, err := line.EvenlySpaced(o.volts, watts*ratio*ratio, loop, int(math.Min(count, line.MaxEven)))
	if err != nil {
		return math.Inf(1)
	}
	return r.LossDB + o.ratioDB
}

// mostInsertionDB is the most that a control may lose full on; more is a typing
// error. The house book refuses it as well.
const mostInsertionDB = 10

// insertionDB is the insertion loss of a control where the sheet or the house
// book states one, else 0.
func (c *circuit) insertionDB(control int) float64 {
	k := c.job.Controls[control]
	if db, ok := k.LossDB.Exact(); ok && db > 0 && db <= mostInsertionDB {
		return float64(db)
	}
	if m := c.set.model(k.Model, "control"); m != nil {
		if db, ok := m.row.LossDB.Exact(); ok && db > 0 {
			return float64(db)
		}
	}
	return 0
}

// lineGaps asks for what a line lacks.
func (c *circuit) lineGaps(n *network, d *conduit, lineV float64) []gap {
	out := c.cableGaps(d)
	name := "line " + lineName(d.k)
	if lineV <= 0 {
		out = append(out, gap{n.line.At, "line voltage", "What is the line voltage of " + name + "?"})
	}
	return append(out, c.rowGaps(&node{members: n.members})...)
}

// lineName is the name of a cable's line without the word for it.
func lineName(k *schedule.Cable) string {
	switch {
	case k.Name != "":
		return k.Name
	case k.Zone != nil:
		return k.Zone.Name
	case k.Control != nil:
		return k.Control.Name
	case k.Channel != nil:
		return k.Channel.Label()
	case k.From.Text.Value != "" || k.To.Text.Value != "":
		return fmt.Sprintf("%s - %s", k.From.Text.Value, k.To.Text.Value)
	}
	return "cable"
}
