package audit

import (
	"fmt"
	"math"

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
	for _, size := range sizes {
		if size.AreaMM2 <= n.line.AreaMM2.Low {
			continue
		}
		loss := p.c.lossWith(n, size.AreaMM2)
		if past(loss, limit) {
			continue
		}
		after := p.try(func(j *schedule.Job) { p.recable(j, n, size.AreaMM2) })
		if after == nil {
			continue
		}
		text := fmt.Sprintf("replace %s m of %s by %s copper", metres(n.line.LengthM), n.wire(), size.Name)
		if allows != "" {
			note = "; " + allows
		}
		p.keep(Remedy{Kind: "cable", Change: text, Short: size.Name + " cable", Part: fmt.Sprintf("%s m cable, %s copper", metres(p.thinLength(n, size.AreaMM2)), size.Name),
			Before: n.judged.High, After: loss, Unit: "dB", Effect: fmt.Sprintf("loss %s, limit %s%s", decibels(loss), decibels(limit), note), Source: sizesName(wasAWG)})
		return
	}
	p.not("no standard conductor up to %s keeps %s", sizes[len(sizes)-1].Name, decibels(limit))
	if allows != "" {
		p.not("%s", allows)
	}
}

func sizesName(awg bool) string {
	if awg {
		return "American wire gauges as commonly sold"
	}
	return "nominal cross-sections of IEC 60228"
}

func (p *repair) network() *network {
	for _, n := range p.x.networks {
		if n.key == p.f.key {
			return n
		}
	}
	return nil
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

// lossWith is the loss of a line whose thinner cables are replaced by copper of
// an area, the upper end of all readings.
func (c *circuit) lossWith(n *network, areaMM2 float64) float64 {
	probe := network{one: n.one, members: n.members, presume: math.Inf(1)}
	if n.one != nil {
		one := *n.one
		one.conduit = c.conduit(replaced(one.conduit.k, areaMM2))
		probe.one = &one
		one.read(&probe)
		return probe.judged.High
	}
	t := &tree{volts: n.tree.volts}
	for _, b := range n.tree.nodes {
		if a := b.d.areaOf(); !a.Known || a.Low < areaMM2 {
			b.d = c.conduit(replaced(b.d.k, areaMM2))
		}
		t.nodes = append(t.nodes, b)
	}
	lumped, spread := c.solve(t, true, false), c.solve(t, true, true)
	if lumped == nil || spread == nil {
		return math.Inf(1)
	}
	return math.Max(lumped.worstDB, spread.worstDB)
}

// replaced is a cable with copper conductors of another area.
func replaced(k *schedule.Cable, areaMM2 float64) *schedule.Cable {
	out := *k
	setWire(&out, areaMM2)
	return &out
}

func setWire(k *schedule.Cable, areaMM2 float64) {
	k.Area = stateQuantity(schedule.SquareMM(areaMM2))
	k.AWG, k.Parallel, k.Class = schedule.Quantity[schedule.Pieces]{}, 0, 0
	k.Material = schedule.Text{Value: line.Copper.String(), Source: schedule.Source{How: schedule.Stated}}
}

// recable replaces the thinner cables of a line in a copied job.
func (p *repair) recable(j *schedule.Job, n *network, areaMM2 float64) {
	at := positions(p.x.Job.Cables)
	for _, k := range n.line.Cables {
		d := p.c.conduit(k)
		if a := d.areaOf(); !a.Known || a.Low < areaMM2 {
			setWire(j.Cables[at[k]], areaMM2)
		}
	}
}

// thinLength is the metres of cable that are replaced.
func (p *repair) thinLength(n *network, areaMM2 float64) Interval {
	sum := Exact(0)
	for _, k := range n.line.Cables {
		d := p.c.conduit(k)
		if a := d.areaOf(); !a.Known || a.Low < areaMM2 {
			pieces := 1.0
			if q, ok := k.Count.Exact(); ok && q > 1 {
				pieces = float64(q)
			}
			sum = sum.plus(d.length.scaled(pieces))
		}
	}
	return sum
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
