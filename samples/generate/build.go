package generate

import (
	"fmt"
	"math"
	"math/rand/v2"

	"lineaudit/samples/answer"
)

// kinds are invented models. Each offers its taps at any line voltage.
var kinds = []kind{
	{"CEI-6", "ceiling", []float64{6, 3, 1.5, 0.75}},
	{"CEI-10", "ceiling", []float64{10, 5, 2.5, 1.25}},
	{"WAL-6", "wall", []float64{6, 3, 1.5}},
	{"WAL-20", "wall", []float64{20, 10, 5, 2.5}},
	{"HRN-15", "horn", []float64{15, 10, 7.5, 5}},
	{"HRN-30", "horn", []float64{30, 15, 7.5}},
	{"COL-24", "column", []float64{24, 12, 6}},
	{"PEN-12", "pendant", []float64{12, 8, 4, 2}},
	{"CEI-1", "ceiling", []float64{1, 0.5, 0.25}},
}

// Ratings on sale, smallest first, in watts.
var (
	controlSeries = []float64{6, 12, 20, 35, 50, 75, 100, 150, 200, 300, 450, 600}
	channelSeries = []float64{30, 60, 120, 180, 240, 360, 480, 600, 900, 1200, 1800, 2400, 3600, 4800, 7200, 9600}
)

// share is how much of a rating a clean job uses at most; lossDB what a clean
// cable loses at most.
const (
	share  = 0.75
	lossDB = 0.45
)

func newJob(rng *rand.Rand, cfg Config, h *hand, lay *layout, n int) *job {
	j := &job{n: n, number: fmt.Sprintf("%c%04d", "JPKM"[rng.IntN(4)], 1000+n), site: h.place("site"),
		rev: string(rune('A' + rng.IntN(4))), lineV: cfg.LineV}
	if j.lineV == 0 {
		j.lineV = 100
		if h.feet && rng.IntN(4) > 0 {
			j.lineV = 70.7
		}
	}
	j.lineV = answer.Class(j.lineV)
	j.ampRated = rng.IntN(2) == 0
	j.chainLen = lay.cables && lay.single && rng.IntN(3) == 0
	if lay.oneAmp {
		j.ampRated = true
	}
	j.addZones(rng, cfg, h, lay)
	j.addChannels(rng, h, lay)
	faulty := rng.Float64() < cfg.Faults
	if faulty {
		j.plantLoads(rng, cfg, lay, h)
	}
	j.rate(rng)
	j.addLines(rng, h, lay)
	if faulty {
		j.plantRatings(rng, cfg, lay)
	}
	if cfg.Noise >= 2 {
		j.addIdle(rng, h, lay)
	}
	j.tagAll(rng, lay)
	return j
}

// addZones fills zones with rooms, controls and loudspeakers until the job
// has about as many loudspeakers as asked.
func (j *job) addZones(rng *rand.Rand, cfg Config, h *hand, lay *layout) {
	names := h.shuffledPlaces(rng, "zone")
	per := min(20, max(3, cfg.Loudspeakers/4))
	for left := cfg.Loudspeakers; left > 0; {
		z := &zone{n: len(j.zones) + 1}
		z.name = names[(z.n-1)%len(names)]
		if z.n > len(names) {
			z.name = fmt.Sprintf("%s %d", z.name, (z.n-1)/len(names)+1)
		}
		want := min(left, per/2+rng.IntN(per/2+1)+1)
		j.fillZone(rng, h, lay, z, want)
		left -= want
		j.zones = append(j.zones, z)
	}
}

func (j *job) fillZone(rng *rand.Rand, h *hand, lay *layout, z *zone, want int) {
	rooms := h.shuffledPlaces(rng, "room")
	parts := 1 + rng.IntN(3)
	if lay.uniform || want < 2*parts {
		parts = 1
	}
	for i := range parts {
		r := &room{name: rooms[i], zone: z}
		if parts == 1 && rng.IntN(2) == 0 {
			r.name = z.name
		}
		z.rooms = append(z.rooms, r)
		n := want / parts
		if i == 0 {
			n += want % parts
		}
		k := &kinds[rng.IntN(len(kinds))]
		tap := k.taps[rng.IntN(len(k.taps))]
		if lay.fixedTap {
			j.fillMixed(rng, r, k, n)
			continue
		}
		for float64(n)*tap > 150 && len(k.taps) > 1 && tap != k.taps[len(k.taps)-1] {
			tap = k.taps[len(k.taps)-1]
		}
		if lay.controls && rng.IntN(10) < 6 {
			r.control = &control{zone: z, room: r}
			r.control.tag = fmt.Sprintf("%s%d", h.controlPrefix, len(j.controls)+1)
			j.controls = append(j.controls, r.control)
		}
		if lay.single {
			for range n {
				j.groups = append(j.groups, &group{count: 1, kind: k, tapW: tap, room: r, control: r.control, status: "installed"})
			}
			continue
		}
		j.groups = append(j.groups, &group{count: n, kind: k, tapW: tap, room: r, control: r.control, status: "installed"})
	}
}

// fillMixed puts one or two models into a room, each at the tap that the whole
// job gives that model.
func (j *job) fillMixed(rng *rand.Rand, r *room, k *kind, n int) {
	add := func(k *kind, n int) {
		j.groups = append(j.groups, &group{count: n, kind: k, tapW: k.taps[j.n%len(k.taps)], room: r, status: "installed"})
	}
	if other := &kinds[rng.IntN(len(kinds))]; n > 3 && other != k && rng.IntN(2) == 0 {
		add(other, n/3)
		n -= n / 3
	}
	add(k, n)
}

// addChannels hands each zone a channel; now and then two share one.
func (j *job) addChannels(rng *rand.Rand, h *hand, lay *layout) {
	size := []int{1, 2, 4, 8}[rng.IntN(4)]
	if len(j.zones) < 3 {
		size = min(size, 2)
	}
	if lay.oneAmp {
		size = len(j.zones)
	}
	var c *channel
	var a *amp
	for i, z := range j.zones {
		if i > 0 && rng.IntN(6) == 0 && i+1 < len(j.zones) && j.channelLoad(c) < 200 {
			z.channel = c
			continue
		}
		if a == nil || len(a.channels) == size {
			a = &amp{tag: fmt.Sprintf("%s%d", h.ampPrefix, len(j.amps)+1)}
			j.amps = append(j.amps, a)
		}
		c = &channel{amp: a, name: h.channelName(len(a.channels))}
		a.channels = append(a.channels, c)
		z.channel = c
	}
}

// rate gives controls and channels ratings with room to spare, and half of
// the amplifiers a frame rating that their channels cannot exceed.
func (j *job) rate(rng *rand.Rand) {
	for _, c := range j.controls {
		c.ratedW = next(controlSeries, j.controlLoad(c)/share)
		c.model = fmt.Sprintf("VR-%g", c.ratedW)
	}
	for _, a := range j.amps {
		top, sum := 0.0, 0.0
		for _, c := range a.channels {
			c.ratedW = next(channelSeries, j.channelLoad(c)/share)
			top = max(top, c.ratedW)
		}
		for _, c := range a.channels {
			if j.ampRated {
				c.ratedW = top
			}
			sum += c.ratedW
		}
		a.model = fmt.Sprintf("PA-%d%02.0f", len(a.channels), top/10)
		if len(a.channels) > 1 && rng.IntN(2) == 0 {
			a.frameW = sum
		}
	}
}

func next(series []float64, want float64) float64 {
	for _, v := range series {
		if v >= want {
			return v
		}
	}
	return math.Ceil(want/1000) * 1000
}

// addLines gives each zone a cable whose loss is small.
func (j *job) addLines(rng *rand.Rand, h *hand, lay *layout) {
	if !lay.cables {
		return
	}
	for i, z := range j.zones {
		l := &line{zone: z, tag: fmt.Sprintf("%s%02d", h.cablePrefix, i+1), material: "copper", inFeet: h.feet}
		if h.mixed && h.noise >= 3 {
			l.inFeet = rng.IntN(2) == 0
		}
		for try := 0; ; try++ {
			if lay.oneAmp {
				try = 9
			}
			if h.awg {
				l.awg = []int{18, 16, 14, 12}[min(3, rng.IntN(3)+try/3)]
				l.areaMM2 = answer.AreaAWG(l.awg)
			} else {
				l.areaMM2 = []float64{1, 1.5, 2.5, 4}[min(3, rng.IntN(3)+try/3)]
			}
			if longest := j.longest(l, lossDB); longest > 12 {
				l.setLength(min(40+110*rng.Float64(), longest*(0.25+0.7*rng.Float64())))
				break
			}
		}
		z.line = l
		if j.chainLen {
			j.cutLine(l)
		}
	}
}

// longest returns the metres at which a line, with all its load at the far
// end, loses db.
func (j *job) longest(l *line, db float64) float64 {
	loop := j.lineV * j.lineV / max(j.zoneLoad(l.zone), 1) * (math.Pow(10, db/20) - 1)
	return loop / answer.LoopOhm(1, l.areaMM2, l.material)
}

func (l *line) setLength(m float64) {
	if l.inFeet {
		l.written = max(1, math.Floor(m/0.3048))
		l.lengthM = l.written * 0.3048
		return
	}
	l.written = max(1, math.Floor(m))
	l.lengthM = l.written
}

// cutLine splits a line into one piece a loudspeaker, the first a third of it.
func (j *job) cutLine(l *line) {
	groups := j.groupsIn(l.zone)
	total, sum := l.written, 0.0
	for i, g := range groups {
		w := math.Max(1, math.Floor(total*2/3/float64(max(1, len(groups)-1))))
		if i == 0 {
			w = math.Max(1, math.Floor(total/3))
		}
		m := w
		if l.inFeet {
			m *= 0.3048
		}
		g.step = &step{lengthM: m, written: w}
		sum += w
	}
	l.written = sum
	l.lengthM = sum
	if l.inFeet {
		l.lengthM = sum * 0.3048
	}
}

// addIdle adds loudspeakers that are listed but not installed.
func (j *job) addIdle(rng *rand.Rand, h *hand, lay *layout) {
	if lay.uniform || lay.fixedTap || j.chainLen {
		return
	}
	for _, status := range []string{"spare", "future", "removed"} {
		if rng.IntN(2) == 0 {
			continue
		}
		at := rng.IntN(len(j.groups))
		like := j.groups[at]
		g := *like
		g.status, g.asDate, g.absurd, g.untold, g.lowOhm, g.tapV = status, false, false, false, 0, 0
		if g.tapW > g.kind.taps[0] {
			g.tapW = g.kind.taps[0]
		}
		if lay.single {
			g.count = 1
		} else {
			g.count = 1 + rng.IntN(3)
		}
		j.groups = append(j.groups[:at+1], append([]*group{&g}, j.groups[at+1:]...)...)
	}
}

// tagAll numbers the loudspeakers.
func (j *job) tagAll(rng *rand.Rand, lay *layout) {
	prefix := []string{"LS-", "S", "SP-", "LS"}[rng.IntN(4)]
	form := "%s%02d"
	if j.loudspeakers() > 99 || rng.IntN(2) == 0 {
		form = "%s%03d"
	}
	n := 0
	for _, g := range j.groups {
		for range g.count {
			n++
			g.tags = append(g.tags, fmt.Sprintf(form, prefix, n))
		}
	}
	for _, p := range j.planted {
		if p.rule == "duplicate-tag" {
			j.copyTag(p.group)
		}
	}
}

// copyTag gives g the tag of the loudspeaker before it.
func (j *job) copyTag(g *group) {
	for i := 1; i < len(j.groups); i++ {
		if j.groups[i] == g {
			g.tags[0] = j.groups[i-1].tags[0]
		}
	}
}
