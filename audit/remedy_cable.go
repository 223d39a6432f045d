package audit

import (
	"fmt"
	"math"
	"strings"

	"lineaudit/audit/line"
	"lineaudit/audit/schedule"
)

// cable proposes the thinnest standard conductor that keeps the loss limit, and
// says how long a run the present one allows.
func (p *repair) cable() {
	n := p.network()
	if n == nil || !n.judged.bounded() {
		p.not("the line is not known well enough")
		return
	}
	limit, note := p.lossLimit(n), ""
	sizes, wasAWG := line.MM2Sizes(), false
	for _, k := range n.line.Cables {
		if k.AWG.Had() {
			sizes, wasAWG = line.AWGSizes(), true
		}
	}
	allows := p.longest(n, limit)
	if allows != "" {
		note = "; " + allows
	}
	kept := false
	for _, size := range sizes {
		if size.AreaMM2 < n.line.AreaMM2.Low || size.AreaMM2 == n.line.AreaMM2.Low && n.line.Material == line.Copper.String() {
			continue
		}
		thicker := func(k *schedule.Cable) {
			if p.c.poorer(k, size.AreaMM2) {
				setWire(k, size.AreaMM2)
			}
		}
		loss := p.c.lossWith(n, thicker)
		if past(loss, limit) || !p.recable(n, thicker) {
			continue
		}
		bring := metres(p.replacedLength(n, size.AreaMM2))
		text := fmt.Sprintf("replace %s m of %s by %s copper", bring, n.wire(), size.Name)
		if n.tree != nil {
			text = fmt.Sprintf("replace the segments thinner than %s, %s m, by %s copper", size.Name, bring, size.Name)
		}
		p.keep(Remedy{Kind: "cable", Change: text, Short: size.Name + " cable", Part: fmt.Sprintf("%s m cable, %s copper", bring, size.Name),
			Before: n.judged.High, After: loss, Unit: "dB", Effect: fmt.Sprintf("loss %s, limit %s%s", decibels(loss), decibels(limit), note), Source: sizesName(wasAWG)})
		kept = true
		break
	}
	if p.secondRun(n, limit) || kept {
		return
	}
	p.not("no standard conductor up to %s keeps %s", sizes[len(sizes)-1].Name, decibels(limit))
	if allows != "" {
		p.not("%s", allows)
	}
}

// secondRun proposes a second cable of the present kind in parallel, which
// halves the loop and leaves what is installed in place.
func (p *repair) secondRun(n *network, limit float64) bool {
	doubled := func(k *schedule.Cable) { k.Parallel = 2 * max(k.Parallel, 1) }
	loss := p.c.lossWith(n, doubled)
	if past(loss, limit) || !p.recable(n, doubled) {
		return false
	}
	p.keep(Remedy{Kind: "cable", Change: fmt.Sprintf("lay a second run of the present cable in parallel over the same %s m", metres(n.line.LengthM)), Short: "second run",
		Part:   fmt.Sprintf("%s m cable, %s", metres(p.replacedLength(n, math.Inf(1))), n.wire()),
		Before: n.judged.High, After: loss, Unit: "dB", Effect: fmt.Sprintf("loss %s, limit %s", decibels(loss), decibels(limit)), Source: "the present cable"})
	return true
}

func sizesName(awg bool) string {
	if awg {
		return "American wire gauges as commonly sold"
	}
	return "nominal cross-sections of IEC 60228"
}

func (p *repair) network() *network {
	return p.networks[p.f.key]
}

// lossLimit is the mildest limit of the line's use.
func (p *repair) lossLimit(n *network) float64 {
	for g := Caution; g <= Danger; g++ {
		if l := p.c.set.limits["line-loss"].grade[n.use][g]; l != nil {
			return l.Value
		}
	}
	return math.Inf(1)
}

// lossWith is the loss of a line after a change of its cables, the upper end of
// all readings.
func (c *circuit) lossWith(n *network, change func(*schedule.Cable)) float64 {
	changed := func(k *schedule.Cable) conduit {
		out := *k
		change(&out)
		return c.conduit(&out)
	}
	probe := network{one: n.one, members: n.members, presume: math.Inf(1)}
	if n.one != nil {
		one := *n.one
		one.conduit = changed(one.conduit.k)
		probe.one = &one
		one.read(&probe)
		return probe.judged.High
	}
	t := &tree{volts: n.tree.volts}
	for _, b := range n.tree.nodes {
		d := changed(b.d.k)
		b.d = &d
		t.nodes = append(t.nodes, b)
	}
	lumped, spread := c.solve(t, true, false), c.solve(t, true, true)
	if lumped == nil || spread == nil {
		return math.Inf(1)
	}
	return math.Max(lumped.worstDB, spread.worstDB)
}

func setWire(k *schedule.Cable, areaMM2 float64) {
	k.Area = stateQuantity(schedule.SquareMM(areaMM2))
	k.AWG, k.Parallel, k.Class = schedule.Quantity[schedule.Pieces]{}, 0, 0
	k.Material = schedule.Text{Value: line.Copper.String(), Source: schedule.Source{How: schedule.Stated}}
}

// recable tries a change of a line's cables.
func (p *repair) recable(n *network, change func(*schedule.Cable)) bool {
	return p.try(func(j *trial) {
		for _, k := range n.line.Cables {
			change(j.Cable(k))
		}
	}, anyOf(n.line.Cables)...) != nil
}

// replacedLength is the metres of cable that a replacement by copper of an area takes.
func (p *repair) replacedLength(n *network, areaMM2 float64) Interval {
	sum := Exact(0)
	for _, k := range n.line.Cables {
		if p.c.poorer(k, areaMM2) {
			sum = sum.plus(p.c.laid(k))
		}
	}
	return sum
}

// laid is the metres of a cable, all its equal runs together.
func (c *circuit) laid(k *schedule.Cable) Interval {
	pieces := 1.0
	if q, ok := k.Count.Exact(); ok && q > 1 {
		pieces = float64(q)
	}
	return c.conduit(k).length.scaled(pieces)
}

// poorer reports whether a cable is thinner than an area, or no copper.
func (c *circuit) poorer(k *schedule.Cable, areaMM2 float64) bool {
	d := c.conduit(k)
	a, metal := d.areaOf(), metals[k.Material.Value]
	return !a.Known || a.Low < areaMM2 || metal == line.CopperCladAluminium || metal == line.Aluminium
}

// copper replaces copper-clad aluminium by copper of the same size.
func (p *repair) copper() {
	var cables []*schedule.Cable
	length := Exact(0)
	cells := make(map[schedule.Ref]bool, len(p.f.Cells))
	for _, e := range p.f.Cells {
		cells[e.At] = true
	}
	for _, k := range p.x.Job.Cables {
		if cells[k.Material.At] {
			cables = append(cables, k)
			length = length.plus(p.c.laid(k))
		}
	}
	if len(cables) == 0 || p.try(func(j *trial) {
		for _, k := range cables {
			j.Cable(k).Material = schedule.Text{Value: line.Copper.String(), Source: schedule.Source{How: schedule.Stated}}
		}
	}, anyOf(cables)...) == nil {
		return
	}
	d := p.c.conduit(cables[0])
	size := strings.TrimSuffix(d.wireName(), metalOf(cables[0])) + "copper"
	change, part := "replace "+counted(float64(len(cables)), "cable"), "cable, "+size
	if length.Known {
		change += ", " + metres(length) + " m,"
		part = metres(length) + " m " + part
	}
	p.keep(Remedy{Kind: "cable", Change: change + " by " + size, Short: size + " cable", Part: part, Before: float64(len(cables)), After: 0, Unit: "cables",
		Effect: "copper of the same size", Source: "the present size"})
}

// longest says how long a run the present cable allows with all load at its end.
func (p *repair) longest(n *network, limit float64) string {
	if n.one == nil || n.one.watts.High <= 0 || !n.one.conduit.perMetre.Known || limit <= n.one.ratioDB {
		return ""
	}
	ratio := math.Pow(10, -n.one.ratioDB/20)
	ohms := line.Impedance(n.one.volts, n.one.watts.High*ratio*ratio)
	metres, err := line.LongestRunM(n.one.conduit.wire, ohms, limit-n.one.ratioDB)
	if err != nil {
		return ""
	}
	return fmt.Sprintf("the present cable allows %s m with all load at its end", figure(math.Floor(metres)))
}
