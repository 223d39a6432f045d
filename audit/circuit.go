package audit

import (
	"cmp"
	"slices"

	"lineaudit/audit/line"
	"lineaudit/audit/schedule"
)

// A circuit is one job as a network: which loudspeaker hangs on which control,
// channel and frame, and what each of those carries. It is worked out once a
// job; every rule reads it.
type circuit struct {
	job *schedule.Job
	set *Settings

	rows       []row // one for each of job.Loudspeakers
	zones      []node
	controls   []node
	channels   []node
	amplifiers []node

	zoneAt      map[*schedule.Zone]int
	controlAt   map[*schedule.Control]int
	channelAt   map[*schedule.Channel]int
	amplifierAt map[*schedule.Amplifier]int
	// head is, for each channel, the channel that stands for its bridged group.
	head []int
	// taken is, for each channel, whether a bridged one uses its output up.
	taken []bool
	// serves is the only control of each zone that no loudspeaker names a
	// control in, -1 for other zones: it is taken to carry the zone.
	serves []int
	// names is, for each zone, whether one of its loudspeakers names a control:
	// then those that name none hang on none.
	names []bool

	limits plausible
	common
	onlyTaken bool // that rows hang on the only channel has been noted
	assumed   []schedule.Assumption
	rings     []*schedule.Control // one control of each ring of controls

	usualC     float64 // conductor temperature where none is stated, degC
	usualClass int     // IEC 60228 class where none is stated, 0: resistivity
	graph      *graph  // nil without cables
	rowAt      map[*schedule.Loudspeaker]int
	keyed      *keyIndex // see byKey

	words map[string]int // names as written to the number of their key
	keys  map[string]int // keys to their number

	offered map[int]offerList // by model

	chain  []int // buffers of place
	feeds  []int
	shares []Interval

	alone  []int // every channel by its own, for rows that hang on one
	solver line.Solver
	nodes  []line.Node // buffers of solve
	last   []int
}

// common is what is said by a job as a whole.
type common struct {
	usualV      float64 // line voltage taken where none is stated; 0: unknown
	emergency   bool    // the schedule says that the system serves emergency use
	twoCircuits bool    // some zone has two circuits
	onlyChannel bool    // what names no channel hangs on the only one
}

// A node is one place that carries load: a zone, control, channel or frame.
type node struct {
	expected  int // members, about
	members   []member
	load      Load
	total     Interval // like load.Watts, before a group of equal controls is divided up
	marked    Interval // the load if taps of another line voltage drew what is marked on them
	lineV     float64  // 0: unknown
	emergency bool
	lowRows   int // rows kept out as low impedance
	oddRows   int // rows kept out as implausible
	openRows  int // rows without any bound
	rating    rating
	verdict   Verdict
	elsewhere bool  // past a limit only because of another cause
	downward  []int // controls: those fed directly by this one
}

// A member is a row that hangs on a node, with the share of it that does.
type member struct {
	row   int
	share Interval
}

var whole = Exact(1)

// newCircuit works the network of a job out. The job is not changed.
func newCircuit(job *schedule.Job, set *Settings) *circuit { return newCircuitOf(job, set, nil, nil) }

// newCircuitOf works the network of a job out that is a part of another one, or
// nil: the rows, in order, of the circuit of that whole, and any more. What the
// job says as a whole is then said by that.
func newCircuitOf(job *schedule.Job, set *Settings, all *circuit, rows []int) *circuit {
	c := &circuit{job: job, set: set,
		rows:       make([]row, len(job.Loudspeakers)),
		zones:      make([]node, len(job.Zones)),
		controls:   make([]node, len(job.Controls)),
		channels:   make([]node, len(job.Channels)),
		amplifiers: make([]node, len(job.Amplifiers)),
	}
	for _, nodes := range [][]node{c.zones, c.controls, c.channels, c.amplifiers} {
		for i := range nodes {
			nodes[i].expected = len(c.rows)/len(nodes) + 4
		}
	}
	c.limits = set.plausible()
	c.words, c.keys, c.offered = make(map[string]int), make(map[string]int), make(map[int]offerList)
	c.zoneAt = positions(job.Zones)
	c.controlAt = positions(job.Controls)
	c.channelAt = positions(job.Channels)
	c.amplifierAt = positions(job.Amplifiers)
	c.joinBridged()
	c.findSoleControls()
	if all != nil {
		c.common = all.common
	} else {
		c.common = c.saidOfAll()
	}
	c.nodeVolts()
	for i := range c.rows {
		c.rows[i].l = job.Loudspeakers[i]
		c.hang(&c.rows[i])
	}
	if all == nil {
		c.countOnce()
	}
	for i, at := range rows {
		c.rows[i].repeats = all.rows[at].repeats
	}
	c.doubt()
	for i := range c.rows {
		c.rows[i].work(c)
		c.place(i)
	}
	c.sum()
	c.rate()
	return c
}

// saidOfAll finds what the job says as a whole.
func (c *circuit) saidOfAll() common {
	return common{
		usualV: c.commonTapVolts(), emergency: systemEmergency(c.job),
		twoCircuits: slices.ContainsFunc(c.job.Zones, func(z *schedule.Zone) bool { return z.ABCircuits.Yes }),
		onlyChannel: len(c.job.Channels) == 1 && !otherAmplifier(c.job),
	}
}

// word is a number for a name, the same for every spelling of it; 0 for none.
func (c *circuit) word(name string) int {
	if name == "" {
		return 0
	}
	if n, ok := c.words[name]; ok {
		return n
	}
	key := modelKey(name)
	n, ok := c.keys[key]
	if !ok {
		n = len(c.keys) + 1
		c.keys[key] = n
	}
	c.words[name] = n
	return n
}

func positions[T any](all []*T) map[*T]int {
	at := make(map[*T]int, len(all))
	for i, p := range all {
		at[p] = i
	}
	return at
}

// indexOf looks p up; -1 for nil or a stranger.
func indexOf[T any](at map[*T]int, p *T) int {
	if p == nil {
		return -1
	}
	if i, ok := at[p]; ok {
		return i
	}
	return -1
}

// joinBridged lets one of several channels that name each other as bridged
// partners stand for all of them: the first by name, whatever their order in
// the schedule.
func (c *circuit) joinBridged() {
	c.head, c.taken, c.alone = make([]int, len(c.job.Channels)), make([]bool, len(c.job.Channels)), make([]int, len(c.job.Channels))
	for i := range c.head {
		c.head[i], c.alone[i] = i, i
	}
	for i, ch := range c.job.Channels {
		for _, partner := range ch.Bridged {
			if j := indexOf(c.channelAt, partner); j >= 0 && j != i && mentions(partner.Bridged, ch) {
				c.merge(c.head[i], c.head[j])
			}
		}
	}
	for i, ch := range c.job.Channels {
		for _, partner := range ch.Bridged {
			if j := indexOf(c.channelAt, partner); j >= 0 && c.head[j] != c.head[i] {
				c.taken[j] = true
			}
		}
		c.taken[i] = c.taken[i] || c.head[i] != i
	}
}

// merge lets the first of two heads stand for both groups.
func (c *circuit) merge(a, b int) {
	x, y := c.job.Channels[a], c.job.Channels[b]
	switch {
	case a == b:
		return
	case cmp.Or(cmp.Compare(channelKey(x), channelKey(y)), cmp.Compare(a, b)) > 0:
		a, b = b, a
	}
	for i := range c.head {
		if c.head[i] == b {
			c.head[i] = a
		}
	}
}

func mentions(list []*schedule.Channel, ch *schedule.Channel) bool {
	return slices.Contains(list, ch)
}

// findSoleControls finds the zones whose loudspeakers name no control although
// the zone has exactly one: a list of controls by zone beside a list of
// loudspeakers by zone says so.
func (c *circuit) findSoleControls() {
	c.serves, c.names = make([]int, len(c.job.Zones)), make([]bool, len(c.job.Zones))
	for i := range c.serves {
		c.serves[i] = -1
	}
	if len(c.job.Controls) == 0 || len(c.job.Zones) == 0 {
		return
	}
	const none, several = -1, -2
	for i, ctl := range c.job.Controls {
		z := indexOf(c.zoneAt, ctl.Zone)
		if z < 0 || ctl.Remote.Yes || ctl.Status != schedule.Installed {
			continue
		}
		if c.serves[z] == none && ctl.Zone.Control == nil {
			c.serves[z] = i
		} else {
			c.serves[z] = several
		}
	}
	for _, l := range c.job.Loudspeakers {
		if l.Control == nil {
			continue
		}
		if z := indexOf(c.zoneAt, l.Zone); z >= 0 {
			c.serves[z], c.names[z] = several, true
		}
		if z := indexOf(c.zoneAt, l.Control.Zone); z >= 0 && c.serves[z] >= 0 && c.job.Controls[c.serves[z]] == l.Control {
			c.serves[z] = several
		}
	}
	for z, ctl := range c.serves {
		if ctl < 0 {
			c.serves[z] = -1
			continue
		}
		k := c.job.Controls[ctl]
		c.assumed = append(c.assumed, schedule.Assumption{At: k.At, Field: "loudspeakers behind the control", Written: k.Name,
			TakenAs: "zone " + c.job.Zones[z].Name, How: schedule.Computed, Because: "the only control of the zone, and its loudspeakers name none"})
	}
}

// commonTapVolts is the line voltage that all taps agree on, for a job that
// states no line voltage.
func (c *circuit) commonTapVolts() float64 {
	missing := false
	for _, ch := range c.job.Channels {
		missing = missing || !c.job.LineVoltsOf(ch).Had()
	}
	if !missing && (len(c.job.Channels) > 0 || c.job.LineVolts.Had()) {
		return 0
	}
	common := 0.0
	var from schedule.Source
	for _, l := range c.job.Loudspeakers {
		v, ok := l.TapVolts.Exact()
		if !ok || v <= 0 {
			continue
		}
		nominal := line.Nominal(float64(v))
		if common != 0 && nominal != common {
			return 0
		}
		if common == 0 {
			common, from = nominal, l.TapVolts.Source
		}
	}
	if common != 0 {
		c.assumed = append(c.assumed, schedule.Assumption{At: from.At, Field: "line voltage", Written: from.Written,
			TakenAs: volts(common), How: schedule.Computed, Because: "not stated; every tap is given for this voltage"})
	}
	return common
}

// voltsOf is the nominal line voltage of a channel (nil: of the job), 0 when
// unknown or implausible.
func (c *circuit) voltsOf(ch *schedule.Channel) float64 {
	q := c.job.LineVoltsOf(ch)
	if oddVolts(c, q) {
		return 0
	}
	if v, ok := q.Exact(); ok && v > 0 {
		return line.Nominal(float64(v))
	}
	return c.usualV
}

// nodeVolts gives every channel its line voltage; other nodes get that of what feeds them.
func (c *circuit) nodeVolts() {
	for i, ch := range c.job.Channels {
		c.channels[i].lineV = c.voltsOf(ch)
	}
	for i, ctl := range c.job.Controls {
		c.controls[i].lineV = c.voltsOf(c.channelOfControl(ctl))
		if p := indexOf(c.controlAt, ctl.Parent); p >= 0 && p != i {
			c.controls[p].downward = append(c.controls[p].downward, i)
		}
	}
}

// channelOfControl is the channel that feeds a control: its own, else that of
// the control above it, else that of its zone. Nil when unknown.
func (c *circuit) channelOfControl(ctl *schedule.Control) *schedule.Channel {
	for k, hops := ctl, 0; k != nil && hops <= len(c.job.Controls); k, hops = k.Parent, hops+1 {
		if k.Channel != nil {
			return k.Channel
		}
	}
	for k, hops := ctl, 0; k != nil && hops <= len(c.job.Controls); k, hops = k.Parent, hops+1 {
		if k.Zone != nil && k.Zone.Channel != nil {
			return k.Zone.Channel
		}
	}
	return nil
}

// hang finds the control, zone and channels of a row.
func (c *circuit) hang(r *row) {
	l := r.l
	r.zone = indexOf(c.zoneAt, l.Zone)
	r.control = -1
	ctl := l.Control
	if ctl == nil && r.zone >= 0 && !c.names[r.zone] {
		ctl = l.Zone.Control
	}
	if ctl == nil && r.zone >= 0 && c.serves[r.zone] >= 0 {
		if k := c.job.Controls[c.serves[r.zone]]; k.Room.Value == "" || l.Room.Value == "" || folded(k.Room.Value) == folded(l.Room.Value) {
			ctl = k
		}
	}
	r.control = indexOf(c.controlAt, ctl)
	r.channels = c.channelsOf(l, ctl)
	var ch *schedule.Channel
	if len(r.channels) > 0 {
		ch = c.job.Channels[r.channels[0]]
	}
	r.lineV = c.voltsOf(ch)
}

// channelsOf lists the channels that feed a loudspeaker: more than one when it
// or its zone is split. A standby channel takes no share while another is there.
func (c *circuit) channelsOf(l *schedule.Loudspeaker, ctl *schedule.Control) []int {
	switch {
	case len(l.Split) > 1:
		return c.working(l.Split)
	case l.Channel != nil:
		return c.working([]*schedule.Channel{l.Channel})
	}
	if ctl != nil {
		for k, hops := ctl, 0; k != nil && hops <= len(c.job.Controls); k, hops = k.Parent, hops+1 {
			if k.Channel != nil {
				return c.working([]*schedule.Channel{k.Channel})
			}
		}
	}
	if z := l.Zone; z != nil {
		if len(z.Channels) > 1 {
			return c.working(z.Channels)
		}
		if z.Channel != nil {
			return c.working([]*schedule.Channel{z.Channel})
		}
	}
	if c.onlyChannel && len(c.job.Channels) == 1 && !l.FeedUnread {
		c.takeOnlyChannel()
		return []int{0}
	}
	return nil
}

// otherAmplifier reports whether a job has an amplifier besides that of its one
// channel: what has no channel may hang on that.
func otherAmplifier(j *schedule.Job) bool {
	return slices.ContainsFunc(j.Amplifiers, func(a *schedule.Amplifier) bool { return a != j.Channels[0].Amplifier })
}

// takeOnlyChannel records, once, that loudspeakers without a channel are taken
// to hang on the only one that the job lists.
func (c *circuit) takeOnlyChannel() {
	if c.onlyTaken {
		return
	}
	c.onlyTaken = true
	ch := c.job.Channels[0]
	c.assumed = append(c.assumed, schedule.Assumption{At: ch.At, Field: "channel of the loudspeakers", Written: ch.Name, TakenAs: ch.Label(),
		How: schedule.Computed, Because: "the only channel of the job"})
}

// working turns channels into positions, bridged partners into the one that
// stands for them, and leaves standby ones out while another is there.
func (c *circuit) working(list []*schedule.Channel) []int {
	if len(list) == 1 {
		if i := indexOf(c.channelAt, list[0]); i >= 0 {
			i = c.head[i]
			return c.alone[i : i+1 : i+1]
		}
		return nil
	}
	var out, standby []int
	for _, ch := range list {
		i := indexOf(c.channelAt, ch)
		if i < 0 {
			continue
		}
		i = c.head[i]
		if isStandby(ch) {
			standby = appendNew(standby, i)
		} else {
			out = appendNew(out, i)
		}
	}
	if len(out) == 0 {
		return standby
	}
	return out
}

func isStandby(ch *schedule.Channel) bool {
	return ch.Standby || ch.Amplifier != nil && ch.Amplifier.Status == schedule.Standby
}

func appendNew(list []int, v int) []int {
	if slices.Contains(list, v) {
		return list
	}
	return append(list, v)
}

// above fills c.chain with the positions of the controls on the path of a row,
// the nearest first. Controls that carry no loudspeaker power, and those that
// are not installed, are passed over.
func (c *circuit) above(control int) []int {
	c.chain = c.chain[:0]
	for i, hops := control, 0; i >= 0; hops++ {
		k := c.job.Controls[i]
		if hops > len(c.job.Controls) {
			c.noteRing(k)
			break
		}
		if !k.Remote.Yes && k.Status == schedule.Installed {
			c.chain = appendNew(c.chain, i)
		}
		i = indexOf(c.controlAt, k.Parent)
	}
	return c.chain
}

// noteRing remembers a control that is fed, in the end, by itself.
func (c *circuit) noteRing(k *schedule.Control) {
	first := k
	for i, p := 0, k; i <= len(c.job.Controls) && p != nil; i, p = i+1, p.Parent {
		if p.Key < first.Key {
			first = p
		}
	}
	if slices.Contains(c.rings, first) {
		return
	}
	c.rings = append(c.rings, first)
}

// inRing reports whether following what feeds a control leads back to it.
func (c *circuit) inRing(control int) bool {
	k := c.job.Controls[control]
	p := k.Parent
	for hops := 0; p != nil && hops <= len(c.job.Controls); hops++ {
		if p == k {
			return true
		}
		p = p.Parent
	}
	return false
}

// place enters a row into every node that carries it.
func (c *circuit) place(i int) {
	r := &c.rows[i]
	if r.part == notCounted {
		return
	}
	if r.zone >= 0 {
		c.zones[r.zone].add(i, whole, r)
		if c.zones[r.zone].lineV == 0 {
			c.zones[r.zone].lineV = r.lineV
		}
	}
	for _, k := range c.above(r.control) {
		n := &c.controls[k]
		n.add(i, whole, r)
		if n.lineV == 0 {
			n.lineV = r.lineV
		}
	}
	c.feeds, c.shares = c.feeds[:0], c.shares[:0]
	for _, ch := range r.channels {
		share := r.shareOf()
		c.channels[ch].add(i, share, r)
		a := indexOf(c.amplifierAt, c.job.Channels[ch].Amplifier)
		if a < 0 {
			continue
		}
		at := position(c.feeds, a)
		if at < 0 {
			c.feeds, c.shares = append(c.feeds, a), append(c.shares, share)
			continue
		}
		c.shares[at] = c.shares[at].plus(share)
	}
	for n, a := range c.feeds {
		share := c.shares[n]
		if len(c.feeds) == 1 {
			share = whole
		}
		share.High = min(share.High, 1)
		c.amplifiers[a].add(i, share, r)
	}
}

func position(list []int, v int) int {
	for i, x := range list {
		if x == v {
			return i
		}
	}
	return -1
}

func (n *node) add(i int, share Interval, r *row) {
	if n.members == nil {
		n.members = make([]member, 0, max(8, n.expected))
	}
	n.members = append(n.members, member{i, share})
	if r.part == counts {
		n.emergency = n.emergency || r.emergency
	}
}
