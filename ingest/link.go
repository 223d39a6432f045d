package ingest

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// link lets the parts point at each other and settles what needs the whole
// job: line voltages, ratings that hold for them, taps by impedance.
func (b *builder) link() {
	b.zonesByRoom()
	b.feedsOfCables()
	b.applyServices()
	b.roomsOfControls()
	b.controlsOfZones()
	b.controlsOfRooms()
	b.zoneLinks()
	b.controlsOfChannels()
	b.controlLinks()
	b.claimedLoads()
	b.unusedChannels()
	b.onlyListedAmp()
	b.ratingsBeside()
	b.lineVolts()
	b.pickTapsAtVolts()
	b.loadsNotRatings()
	b.ratings()
	b.pendingTaps()
	b.addedLengths()
	b.chainsThroughRooms()
	b.reaches()
	b.sizesFromTitle()
	b.emergencyFromOverrides()
	for _, l := range b.job.Loudspeakers {
		if l.LowImpedance.Had() && l.Channel != nil && l.Channel.LowImpedance.Yes && l.Channel.Amplifier != nil {
			l.Channel.Amplifier.LowImpedance = append(l.Channel.Amplifier.LowImpedance, l)
		}
	}
	for _, e := range b.typeList() {
		if n := e.count; n.Had() && len(e.rows) > 0 {
			b.job.Totals = append(b.job.Totals, schedule.Total{At: n.At, Of: "type " + e.name, Count: n, Rows: e.rows})
		}
	}
}

// typeList is the types in the order of their rows.
func (b *builder) typeList() []*typeEntry {
	var out []*typeEntry
	for _, k := range sortedKeys(b.types) {
		if e := b.types[k]; !slices.Contains(out, e) {
			out = append(out, e)
		}
	}
	slices.SortStableFunc(out, func(x, y *typeEntry) int { return x.row.At.Compare(y.row.At) })
	return out
}

// roomsOfControls gives controls that name a room, where rooms stand for zones,
// that zone. Where a control stands says nothing of what hangs on it where that is known.
func (b *builder) roomsOfControls() {
	if !b.places.roomsZones {
		return
	}
	carries := make(map[*schedule.Control]bool)
	for _, l := range b.job.Loudspeakers {
		carries[l.Control] = true
	}
	for _, c := range b.job.Controls {
		if c.Zone == nil && c.Room.Had() && !carries[c] {
			c.Zone = b.zones[b.zoneNames.Find(c.Room.Value).Key]
		}
	}
}

// zonesByRoom gives loudspeakers that name only a room the one zone whose row
// names that room.
func (b *builder) zonesByRoom() {
	byRoom := make(map[string][]*schedule.Zone)
	for _, z := range b.job.Zones {
		if z.Room.Had() {
			byRoom[join.Key(z.Room.Value)] = append(byRoom[join.Key(z.Room.Value)], z)
		}
	}
	for _, z := range b.job.Zones {
		// a room may carry the zone's own name
		if k := join.Key(z.Name); len(byRoom[k]) == 0 {
			byRoom[k] = []*schedule.Zone{z}
		}
	}
	for _, l := range b.job.Loudspeakers {
		if l.Zone != nil || !l.Room.Had() {
			continue
		}
		if list := byRoom[join.Key(l.Room.Value)]; len(list) == 1 {
			l.Zone = list[0]
			r := b.origin[l]
			s := seen{t: r.t, field: vocabulary.Zone, source: l.Room.Source}
			b.take(s, "zone", "the zone of that room", schedule.LikelierReading, "the row names no zone")
		}
	}
}

// controlsOfRooms hangs the loudspeakers of rooms on the controls that stand there, where no
// loudspeaker names a control and every control stands in a room of its own that loudspeakers name.
func (b *builder) controlsOfRooms() {
	if len(b.job.Controls) == 0 || slices.ContainsFunc(b.tables, func(t *table) bool {
		return t.has(vocabulary.Control) && t.kind != layout.Controls
	}) {
		return
	}
	speakers := make(map[string][]*schedule.Loudspeaker)
	for _, l := range b.job.Loudspeakers {
		if l.Control != nil || l.Zone != nil && l.Zone.Control != nil {
			return
		}
		if l.Room.Had() && l.Status == schedule.Installed {
			speakers[join.Key(l.Room.Value)] = append(speakers[join.Key(l.Room.Value)], l)
		}
	}
	taken := make(map[string]bool)
	for _, c := range b.job.Controls {
		k := join.Key(c.Room.Value)
		n, counted := c.Count.Exact()
		if len(speakers[k]) == 0 || taken[k] || counted && n > 1 || !c.Room.Had() {
			return
		}
		taken[k] = true
	}
	for _, c := range b.job.Controls {
		for _, l := range speakers[join.Key(c.Room.Value)] {
			if c.Zone == nil || l.Zone == nil || c.Zone == l.Zone {
				l.Control = c
			}
		}
		s := seen{source: schedule.Source{At: c.At, Written: c.Name}}
		b.take(s, "loudspeakers behind the control", c.Room.Value, schedule.LikelierReading, "the control stands in that room, and no loudspeaker names one")
	}
}

// controlsOfChannels hangs the loudspeakers of an output, if none of them names
// a control, behind the one that its row names. Where other rows name other zones
// of the output, the control of a row is that of its own.
func (b *builder) controlsOfChannels() {
	for _, x := range b.onChannel {
		var all, own []*schedule.Loudspeaker
		for _, l := range b.job.Loudspeakers {
			if slices.Contains(feeding(l), x.channel) {
				all = append(all, l)
				if slices.Contains(x.zones, l.Zone) {
					own = append(own, l)
				}
			}
		}
		if len(own) > 0 && slices.ContainsFunc(b.zonesListed[x.channel], func(z *schedule.Zone) bool { return !slices.Contains(x.zones, z) }) {
			all = own
		}
		if slices.ContainsFunc(all, func(l *schedule.Loudspeaker) bool { return l.Control != nil }) {
			continue
		}
		for _, l := range all {
			if !b.origin[l].saysNoControl() {
				l.Control = x.control
			}
		}
	}
}

// zoneLinks hands channel and control down from zones to their loudspeakers,
// and up where all loudspeakers of a zone agree.
//
// A zone hangs on its control as a whole only where none of its loudspeakers
// names a control: beside one that does, a blank means none.
func (b *builder) zoneLinks() {
	names := make(map[*schedule.Zone]bool)
	for _, l := range b.job.Loudspeakers {
		if l.Control != nil {
			names[l.Zone] = true
		}
	}
	for _, l := range b.job.Loudspeakers {
		z := l.Zone
		if z == nil {
			continue
		}
		if l.Control == nil && z.Control != nil && !names[z] && !b.origin[l].saysNoControl() {
			l.Control = z.Control
		}
	}
	byZone := make(map[*schedule.Zone][]*schedule.Loudspeaker)
	for _, l := range b.job.Loudspeakers {
		if l.Zone != nil {
			byZone[l.Zone] = append(byZone[l.Zone], l)
		}
	}
	for _, z := range b.job.Zones {
		if len(z.Channels) == 0 {
			for _, l := range byZone[z] {
				for _, c := range feeding(l) {
					if !slices.Contains(z.Channels, c) {
						z.Channels = append(z.Channels, c)
					}
				}
			}
			if len(z.Channels) > 0 {
				z.Channel = z.Channels[0]
			}
		}
		if len(z.Channels) > 1 && !z.ABCircuits.Had() {
			b.noteAB(z)
		}
		for _, l := range byZone[z] {
			if l.Channel != nil || b.origin[l].namesFeed() {
				continue
			}
			l.Channel = z.Channel
			if len(z.Channels) > 1 {
				l.Split = z.Channels
			}
		}
	}
}

// namesFeed reports whether a row names what feeds it, understood or not.
func (r *row) namesFeed() bool {
	return r.own(vocabulary.Channel).had() || r.own(vocabulary.Amplifier).had()
}

// noteAB takes two channels whose names differ in a last A and B for a pair of
// interleaved circuits.
func (b *builder) noteAB(z *schedule.Zone) {
	if len(z.Channels) != 2 {
		return
	}
	x, y := join.Fold(z.Channels[0].Name), join.Fold(z.Channels[1].Name)
	if len(x) > 1 && len(x) == len(y) && x[:len(x)-1] == y[:len(y)-1] && x[len(x)-1] == 'a' && y[len(y)-1] == 'b' {
		z.ABCircuits = schedule.Flag{Yes: true, Source: schedule.Source{At: z.Channels[0].At, Written: z.Channels[0].Name + ", " + z.Channels[1].Name,
			How: schedule.Stated}}
	}
}

// feeding lists the channels that a loudspeaker's own row names.
func feeding(l *schedule.Loudspeaker) []*schedule.Channel {
	if len(l.Split) > 1 {
		return l.Split
	}
	if l.Channel != nil {
		return []*schedule.Channel{l.Channel}
	}
	return nil
}

// saysNoControl reports whether the row has a cell for its control that says
// that there is none.
func (r *row) saysNoControl() bool {
	s := r.own(vocabulary.Control)
	return s.missing == notation.MissingDash || s.missing == notation.MissingNotApplicable || notation.AnswerOf(s.text) == notation.No
}

// controlLinks finds what feeds each control, and its zone and channel by
// most of its loudspeakers.
func (b *builder) controlLinks() {
	for _, p := range b.parents {
		up := b.knownControl(p.by.text)
		switch {
		case up != nil && up != p.control:
			p.control.Parent = up
		case up == nil && p.control.Channel == nil:
			if ref := b.channelRef(p.by.text); ref.ok && len(ref.ref.Channels) == 1 {
				p.control.Channel = b.knownChannel(ref.ref.Amplifier, ref.ref.Channels[0])
			}
		}
	}
	zones := make(map[*schedule.Control]map[*schedule.Zone]int)
	channels := make(map[*schedule.Control]map[*schedule.Channel]int)
	for _, l := range b.job.Loudspeakers {
		c := l.Control
		if c == nil {
			continue
		}
		if zones[c] == nil {
			zones[c], channels[c] = make(map[*schedule.Zone]int), make(map[*schedule.Channel]int)
		}
		if l.Zone != nil {
			zones[c][l.Zone]++
		}
		if l.Channel != nil {
			channels[c][l.Channel]++
		}
	}
	zoneOrder, channelOrder := orderOf(b.job.Zones), orderOf(b.job.Channels)
	for _, c := range b.job.Controls {
		if c.Zone == nil {
			c.Zone = most(zoneOrder, zones[c])
		}
		if c.Channel == nil {
			c.Channel = most(channelOrder, channels[c])
		}
		if c.Channel == nil && c.Zone != nil && len(c.Zone.Channels) == 1 {
			c.Channel = c.Zone.Channel
		}
	}
	for _, c := range b.job.Controls {
		for up, hops := c.Parent, 0; c.Channel == nil && up != nil && hops < len(b.job.Controls); up, hops = up.Parent, hops+1 {
			c.Channel = up.Channel
		}
	}
	for _, l := range b.job.Loudspeakers {
		if l.Channel == nil && l.Control != nil {
			l.Channel = l.Control.Channel
		}
	}
}

// most is the part that is counted most often; the first in the order of the job where
// several are. Parts that the job does not list are none.
func most[T any](order map[*T]int, counts map[*T]int) *T {
	var best *T
	for p, n := range counts {
		at, listed := order[p]
		if listed && n > 0 && (best == nil || n > counts[best] || n == counts[best] && at < order[best]) {
			best = p
		}
	}
	return best
}

// orderOf is where each of several parts stands among them.
func orderOf[T any](all []*T) map[*T]int {
	out := make(map[*T]int, len(all))
	for i, p := range all {
		out[p] = i
	}
	return out
}

// unusedChannels adds the channels of an amplifier that its row counts and
// nothing names: they are room for growth.
func (b *builder) unusedChannels() {
	if len(b.job.Amplifiers) == 1 && len(b.ampTitle) > 0 {
		if o := b.ampTitle[0].outputs; len(o) == 1 && b.slots[b.job.Amplifiers[0].Key] == 0 {
			b.slots[b.job.Amplifiers[0].Key] = o[0].Channels
		}
	}
	for _, a := range b.job.Amplifiers {
		n := b.slots[a.Key]
		if n == 0 && len(a.Channels) == 0 && (len(b.ampRated[a]) > 0 || len(b.frameRated[a]) > 0 || len(b.beside[a]) > 0) {
			n = 1
		}
		names := make(map[string]bool)
		letters := true
		for _, c := range a.Channels {
			for one := range strings.SplitSeq(c.Name, "+") { // a bridged pair uses up two
				id := channelID(one)
				names[id] = true
				letters = letters && letterNumber(id) > 0
			}
		}
		letters = letters && len(a.Channels) > 0
		for _, c := range a.Channels {
			if len(c.Bridged) > 0 || len(names) > n {
				n = 0 // bridged or numbered some other way: which are left is not known
			}
		}
		for i := 1; i <= n; i++ {
			name := itoa(i)
			if letters {
				name = string(rune('A' + i - 1))
			}
			if names[channelID(name)] || n > 26 && letters {
				continue
			}
			if len(names) >= b.slots[a.Key] && b.slots[a.Key] > 0 {
				break
			}
			names[channelID(name)] = true
			b.channel(a, name, a.At)
		}
	}
}

// emergencyFromOverrides takes a column about emergency overrides for a sign
// of emergency use, if any control is said to have one.
func (b *builder) emergencyFromOverrides() {
	if b.job.Emergency.Had() {
		return
	}
	for _, c := range b.job.Controls {
		if c.Override.Yes && c.Override.At.Col > 0 && b.inColumn(c.Override.At, vocabulary.Override) {
			src := c.Override.Source
			src.Because = "there is a column for an emergency override"
			b.job.Emergency = schedule.Flag{Yes: true, Source: src}
			return
		}
	}
}

// inColumn reports whether a cell stands in a column of that field.
func (b *builder) inColumn(at schedule.Ref, f vocabulary.Field) bool {
	for _, t := range b.tables {
		for _, c := range t.byField[f] {
			if t.Sheet == at.Sheet() && (t.Form && c.At.Row == at.Row || !t.Transposed && c.Col == int(at.Col) || t.Transposed && c.Col == int(at.Row)) {
				return true
			}
		}
	}
	return false
}

// addedLengths takes the lengths of an output for those from the device before
// where others of it are written as added on to them: "40 m" before "+20 m".
func (b *builder) addedLengths() {
	type output struct {
		t       *table
		channel *schedule.Channel
	}
	added := make(map[output]bool)
	for _, l := range b.job.Loudspeakers {
		if l.Run != nil && l.Run.To.Loudspeaker == l && addsOn.Of(l.Run.Length.Written, 0) {
			added[output{b.origin[l].t, l.Channel}] = true
		}
	}
	if len(added) == 0 {
		return
	}
	for _, l := range b.job.Loudspeakers {
		if l.Run == nil || l.Run.To.Loudspeaker != l || l.Run.Reach != schedule.ReachUnknown || !added[output{b.origin[l].t, l.Channel}] {
			continue
		}
		l.Run.Reach = schedule.FromPrevious
		s := seen{t: b.origin[l].t, field: vocabulary.Length, source: l.Run.Length.Source}
		b.take(s, "what the length counts", reachNames[schedule.FromPrevious], schedule.LikelierReading, "further lengths of its line are added to it")
	}
}

// chainsThroughRooms joins pieces that are measured from the device before to one
// line of their output, through all rooms, where a table names no zones: a line
// does not begin anew in each room. Outputs with controls are left as they are.
func (b *builder) chainsThroughRooms() {
	type output struct {
		t       *table
		channel *schedule.Channel
	}
	controlled := make(map[*schedule.Channel]bool)
	for _, l := range b.job.Loudspeakers {
		if l.Control != nil {
			controlled[l.Channel] = true
		}
	}
	last := make(map[output]*schedule.Loudspeaker)
	for _, l := range b.job.Loudspeakers {
		r := b.origin[l]
		if l.Run == nil || l.Run.To.Loudspeaker != l || l.Run.Reach != schedule.FromPrevious || l.Channel == nil || controlled[l.Channel] ||
			l.Status != schedule.Installed || r.t.has(vocabulary.Zone) {
			continue
		}
		at := output{r.t, l.Channel}
		l.Run.Reach, l.Run.From = schedule.FromTo, schedule.End{Channel: l.Channel}
		if before := last[at]; before != nil {
			l.Run.From = schedule.End{Loudspeaker: before}
		}
		last[at] = l
	}
}

// reaches decides what per-device lengths count where no header says it: from
// the rack if they grow along the rows of a line, else from the device before.
func (b *builder) reaches() {
	type group struct {
		t       *table
		channel *schedule.Channel
		control *schedule.Control
		zone    *schedule.Zone
		line    string // one of several lines on its output
	}
	lines := make(map[group][]*schedule.Loudspeaker)
	var order []group
	for _, l := range b.job.Loudspeakers {
		if l.Run == nil || l.Run.To.Loudspeaker != l || l.Run.Reach != schedule.ReachUnknown {
			continue
		}
		g := group{b.origin[l].t, l.Channel, l.Control, l.Zone, b.sharedLine(b.origin[l])}
		if lines[g] == nil {
			order = append(order, g)
		}
		lines[g] = append(lines[g], l)
	}
	growing, falling := make(map[*table]int), make(map[*table]int)
	for _, g := range order {
		list := lines[g]
		for i := 1; i < len(list); i++ {
			if list[i].Run.Length.Low >= list[i-1].Run.Length.Low {
				growing[g.t]++
			} else {
				falling[g.t]++
			}
		}
	}
	for _, g := range order {
		list := lines[g]
		reach, because := schedule.FromPrevious, "the lengths do not grow along a line"
		if up, down := growing[g.t], falling[g.t]; up > 3 && up > 9*down {
			reach, because = schedule.FromRack, "the lengths grow along each line"
		}
		if up := growing[g.t]; up > 0 && reach == schedule.FromPrevious && falling[g.t] == 0 {
			because = "too few lengths grow along their lines to be from the rack"
		}
		if len(list) == 1 {
			if n, ok := list[0].Count.Exact(); !ok || n != 1 || growing[g.t]+falling[g.t] == 0 {
				reach, because = schedule.WholeLine, "one length for the line"
			}
		}
		for i, l := range list {
			l.Run.Reach = reach
			run := l.Run
			if g.line != "" && reach == schedule.FromPrevious { // each line begins at the output
				run.Reach, run.From = schedule.FromTo, schedule.End{Channel: g.channel}
				if i > 0 {
					run.From = schedule.End{Loudspeaker: list[i-1]}
				} else if run.Name == "" {
					run.Name = b.lineName(b.origin[l])
				}
			}
			if reach == schedule.WholeLine && l.Zone != nil {
				// the cable of its line, not of the loudspeaker it happens to stand beside
				run.To, run.Zone, run.Channel, run.Control = schedule.End{}, l.Zone, l.Channel, l.Control
				l.Run = nil
			}
			s := seen{t: g.t, field: vocabulary.Length, source: run.Length.Source}
			if cols := g.t.byField[vocabulary.Length]; len(cols) > 0 {
				s.col = cols[0]
			}
			b.take(s, "what the length counts", reachNames[reach], schedule.LikelierReading, because)
		}
	}
}

var reachNames = map[schedule.Reach]string{schedule.WholeLine: "the whole line", schedule.FromRack: "from the rack", schedule.FromPrevious: "from the device before"}
