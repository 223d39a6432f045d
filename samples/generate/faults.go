package generate

import (
	"math"
	"math/rand/v2"
	"slices"

	"lineaudit/samples/answer"
	"lineaudit/samples/book"
)

// Faults that change what is connected are planted before ratings and cables
// are chosen, so that nothing else goes wrong by them; faults of a rating, a
// cable or a sum are planted after.
var (
	loadRules   = []string{"voltage-mismatch", "low-impedance-on-line", "tap-not-offered", "tap-above-rating", "turned-into-date", "duplicate-tag", "implausible", "uneven-level", "controls-in-series", "cannot-check"}
	ratingRules = []string{"control-overload", "channel-overload", "headroom-short", "frame-overload", "line-loss", "total-mismatch", "control-voltage-mismatch", "clad-aluminium", "cannot-check", "measured-load-differs", "count-mismatch", "loose-end"}
)

// Rules lists the rules whose breach can be planted.
func Rules() []string {
	all := slices.Sorted(slices.Values(slices.Concat(loadRules, ratingRules)))
	return slices.Compact(all)
}

func wanted(cfg Config, rules []string) []string {
	if len(cfg.Rules) == 0 {
		return rules
	}
	var out []string
	for _, r := range rules {
		if slices.Contains(cfg.Rules, r) {
			out = append(out, r)
		}
	}
	return out
}

// plantLoads plants at most one fault of what is connected.
func (j *job) plantLoads(rng *rand.Rand, cfg Config, lay *layout, h *hand) {
	rules := wanted(cfg, loadRules)
	if len(rules) == 0 || len(cfg.Rules) == 0 && rng.IntN(2) == 0 {
		return
	}
	for range 6 {
		rule := rules[rng.IntN(len(rules))]
		for _, i := range rng.Perm(len(j.groups)) {
			if j.plantLoad(rule, j.groups[i], rng, lay) {
				return
			}
		}
	}
}

func (j *job) plantLoad(rule string, g *group, rng *rand.Rand, lay *layout) bool {
	switch rule {
	case "voltage-mismatch":
		if lay.fixedTap {
			return false
		}
		g.tapV = answer.Class(70)
		if j.lineV < 80 {
			g.tapV = 100
		}
	case "low-impedance-on-line":
		if lay.fixedTap || j.zoneCount(g.room.zone) <= g.count {
			return false
		}
		g.lowOhm = []float64{4, 8, 16}[rng.IntN(3)]
	case "tap-not-offered":
		if !lay.taps {
			return false
		}
		g.tapW = math.Floor(g.kind.taps[0]*0.8) + 0.3
	case "tap-above-rating":
		if !lay.taps {
			return false
		}
		g.tapW = 2 * g.kind.taps[0]
	case "turned-into-date":
		if lay.fixedTap || g.kind.model != "CEI-1" || g.tapW == 1 {
			return false
		}
		g.asDate = true
	case "duplicate-tag":
		if !lay.tags || g == j.groups[0] {
			return false
		}
	case "cannot-check":
		if lay.fixedTap || j.zoneCount(g.room.zone) <= g.count {
			return false
		}
		g.untold = true
	case "implausible":
		if lay.fixedTap || j.zoneCount(g.room.zone) <= g.count {
			return false
		}
		g.tapW, g.absurd = 5000, true
	case "uneven-level":
		return j.plantUneven(g, lay)
	case "controls-in-series":
		return j.plantSeries(lay)
	}
	j.planted = append(j.planted, plant{rule: rule, group: g, zone: g.room.zone})
	return true
}

// plantUneven sets one loudspeaker of a room far below its neighbours.
func (j *job) plantUneven(g *group, lay *layout) bool {
	last := len(g.kind.taps) - 1
	if !lay.single || g.kind.taps[0] < 7*g.kind.taps[last] {
		return false
	}
	mates := 0
	for _, o := range j.groups {
		if o.room == g.room && o != g {
			o.tapW = g.kind.taps[0]
			mates++
		}
	}
	if mates == 0 {
		return false
	}
	g.tapW = g.kind.taps[last]
	j.planted = append(j.planted, plant{rule: "uneven-level", group: g, zone: g.room.zone})
	return true
}

// plantSeries feeds one control from another of the same zone.
func (j *job) plantSeries(lay *layout) bool {
	if !lay.series {
		return false
	}
	for _, z := range j.zones {
		if all := j.controlsIn(z); len(all) > 1 {
			all[1].upstream = all[0]
			j.planted = append(j.planted, plant{rule: "controls-in-series", control: all[1], zone: z})
			return true
		}
	}
	return false
}

// plantRatings plants one or two faults of ratings, cables and sums.
func (j *job) plantRatings(rng *rand.Rand, cfg Config, lay *layout) {
	rules := wanted(cfg, ratingRules)
	if len(rules) == 0 {
		return
	}
	want := 1 + rng.IntN(2)
	for try := 0; try < 30 && want > 0; try++ {
		rule := rules[rng.IntN(len(rules))]
		if slices.ContainsFunc(j.planted, func(p plant) bool { return p.rule == rule }) {
			continue
		}
		if j.plantRating(rule, rng, lay) {
			want--
		}
	}
}

func (j *job) plantRating(rule string, rng *rand.Rand, lay *layout) bool {
	switch rule {
	case "control-overload", "control-voltage-mismatch", "loose-end":
		return j.plantControl(rule, rng, lay)
	case "count-mismatch":
		if lay.jobs > 1 && lay.name == "register" {
			return false
		}
		j.planted = append(j.planted, plant{rule: rule})
		return true
	case "channel-overload", "headroom-short", "cannot-check", "measured-load-differs":
		return j.plantChannel(rule, rng, lay)
	case "frame-overload":
		return j.plantFrame(rng, lay)
	case "line-loss", "clad-aluminium":
		return j.plantCable(rule, rng, lay)
	case "total-mismatch":
		if !lay.total {
			return false
		}
		z := j.zones[rng.IntN(len(j.zones))]
		sum := 0.0
		for _, g := range j.groupsIn(z) {
			sum += g.stated()
		}
		z.total = math.Round(sum*1.2) + 3
		j.planted = append(j.planted, plant{rule: rule, zone: z, stated: z.total})
		return true
	}
	return false
}

func (j *job) plantControl(rule string, rng *rand.Rand, lay *layout) bool {
	if !lay.controls || len(j.controls) == 0 {
		return false
	}
	c := j.controls[rng.IntN(len(j.controls))]
	load := j.controlLoad(c)
	if load < 8 || c.upstream != nil || j.hasSpecial(c.zone) || slices.ContainsFunc(j.planted, func(p plant) bool { return p.control != nil }) {
		return false
	}
	switch rule {
	case "loose-end":
		if !lay.series || len(j.controls) < 2 || planted(j, "controls-in-series") {
			return false
		}
		c.lost = true
	case "control-voltage-mismatch":
		// A control made for 70 V must not sit on 100 V at all. One made for
		// 100 V carries on 70 V only the current of its rating, 0.7 of the watts.
		c.ratedV, c.ratedW = answer.Class(70), next(controlSeries, 2*load/share)
		if j.lineV < 80 {
			c.ratedV, c.ratedW = 100, math.Ceil(1.1*load)
		}
	default:
		below := 0.0
		for _, w := range controlSeries {
			if w < load {
				below = w
			}
		}
		if below == 0 {
			return false
		}
		c.ratedW = below
	}
	j.planted = append(j.planted, plant{rule: rule, control: c, zone: c.zone})
	return true
}

// hasSpecial tells whether a zone holds a loudspeaker whose load is in doubt.
func (j *job) hasSpecial(z *zone) bool {
	for _, g := range j.groupsIn(z) {
		if g.lowOhm > 0 || g.absurd || g.untold || g.tapV > 0 {
			return true
		}
	}
	return false
}

// misreadBy is how far a planted meter reading lies off: the line draws two
// thirds more than its schedule says.
const misreadBy = 0.6

func (j *job) plantChannel(rule string, rng *rand.Rand, lay *layout) bool {
	if lay.oneAmp {
		return false
	}
	a := j.amps[rng.IntN(len(j.amps))]
	c := a.channels[rng.IntN(len(a.channels))]
	load := j.channelLoad(c)
	for _, z := range j.zones {
		if z.channel == c && j.hasSpecial(z) {
			return false
		}
	}
	if load < 10 || j.touched(c) {
		return false
	}
	if j.ampRated && lay.ampRows && len(a.channels) > 1 {
		j.ampRated = false
	}
	switch rule {
	case "measured-load-differs":
		if !lay.frames || j.ampRated {
			return false
		}
		c.misread = true
	case "cannot-check":
		if j.ampRated && lay.ampRows {
			return false
		}
		c.hidden = true
	case "headroom-short":
		c.ratedW = math.Max(math.Ceil(load), math.Floor(load/(0.85+0.1*rng.Float64())))
	default:
		c.ratedW = math.Max(1, math.Floor(load/(1.05+0.6*rng.Float64())))
	}
	j.planted = append(j.planted, plant{rule: rule, channel: c, amp: a})
	return true
}

// touched tells whether a channel or its frame already bears a planted fault.
func (j *job) touched(c *channel) bool {
	return slices.ContainsFunc(j.planted, func(p plant) bool { return p.channel == c || p.amp == c.amp })
}

func (j *job) plantFrame(rng *rand.Rand, lay *layout) bool {
	if !lay.frames {
		return false
	}
	a := j.amps[rng.IntN(len(j.amps))]
	load := j.ampLoad(a)
	if len(a.channels) < 2 || load < 20 || slices.ContainsFunc(j.planted, func(p plant) bool { return p.amp == a }) {
		return false
	}
	for _, c := range a.channels {
		for _, z := range j.zones {
			if z.channel == c && j.hasSpecial(z) {
				return false
			}
		}
	}
	a.frameW = math.Floor(load / (1.05 + 0.5*rng.Float64()))
	j.planted = append(j.planted, plant{rule: "frame-overload", amp: a})
	return true
}

func (j *job) plantCable(rule string, rng *rand.Rand, lay *layout) bool {
	if !lay.cables || j.chainLen {
		return false
	}
	z := j.zones[rng.IntN(len(j.zones))]
	l := z.line
	taken := func(p plant) bool {
		return p.zone == z && slices.Contains([]string{"line-loss", "clad-aluminium"}, p.rule)
	}
	if j.zoneLoad(z) < 10 || j.hasSpecial(z) || slices.ContainsFunc(j.planted, taken) {
		return false
	}
	if rule == "clad-aluminium" {
		if lay.oneAmp {
			return false
		}
		l.material = "copper-clad aluminium"
		l.setLength(min(l.lengthM, j.longest(l, lossDB)))
		j.planted = append(j.planted, plant{rule: rule, zone: z})
		return true
	}
	// Both readings of a single length must lie in the same grade: the evenly
	// spread one is at best just over half of the far-end one.
	db := []float64{2.5, 8}[rng.IntN(2)]
	l.setLength(j.longest(l, db))
	far := answer.LossFar(answer.LoopOhm(l.lengthM, l.areaMM2, l.material), j.lineV, j.zoneLoad(z))
	even := answer.LossEven(answer.LoopOhm(l.lengthM, l.areaMM2, l.material), j.lineV, j.zoneLoad(z), j.zoneCount(z))
	if !(even > 1.05 && far < 2.95) && !(even > 3.05) {
		l.setLength(j.longest(l, lossDB))
		return false
	}
	j.planted = append(j.planted, plant{rule: rule, zone: z})
	return true
}

// totalAt notes where a wrong total stands.
func (d *drawing) totalAt(it *item, sheet string, row, col int) {
	if it.wrong == 0 {
		return
	}
	for i := range it.job.planted {
		if p := &it.job.planted[i]; p.rule == "total-mismatch" && p.zone == it.z {
			p.at = where{sheet, row, col, ""}
		}
	}
}

func (w where) cell() string {
	if !w.drawn() {
		return ""
	}
	return book.At(w.row, w.col)
}
