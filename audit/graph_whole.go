package audit

import "lineaudit/audit/schedule"

// whole adds a cable that is the one length of a line.
func (g *graph) whole(k *schedule.Cable, rows []int) {
	s := single{k: k, channel: -1}
	channel := k.Channel
	if channel == nil {
		channel = k.From.Channel
	}
	if channel == nil && k.From.Amplifier != nil {
		channel = g.channelOn(k.From.Amplifier, k.To, k)
	}
	if channel != nil {
		if i := indexOf(g.c.channelAt, channel); i >= 0 {
			s.channel = g.c.head[i]
		}
	}
	control, zone := k.Control, k.Zone
	if control == nil {
		control = k.To.Control
	}
	if zone == nil {
		zone = k.To.Zone
	}
	var target string
	switch {
	case len(rows) > 0:
		for _, r := range rows {
			s.members = append(s.members, member{r, whole})
		}
		target = "rows of " + k.Key
	case k.To.Loudspeaker != nil:
		if r := g.c.positionOf(k.To.Loudspeaker); r >= 0 {
			s.members, target = []member{{r, whole}}, "row "+figure(float64(r))
		}
	case control != nil && indexOf(g.c.controlAt, control) >= 0:
		s.members, target = g.c.controls[g.c.controlAt[control]].members, controlKey(control)
	case zone != nil:
		s.members, target = g.zoneMembers(zone, s.channel), zoneKey(zone)
		if in := g.roomRows(k, s.channel); len(in) > 0 {
			s.members, target = in, target+"\x1f"+folded(k.To.Text.Value)
		}
	case s.channel >= 0:
		s.members, target = g.c.channels[s.channel].members, channelKey(channel)
	}
	if len(s.members) == 0 {
		g.loose = append(g.loose, k)
		return
	}
	if s.channel < 0 {
		if ch := g.c.rows[s.members[0].row].channels; len(ch) == 1 {
			s.channel = ch[0]
		}
	}
	g.addSingle(s, target)
}

// zoneMembers are the rows of a zone, or those that a channel feeds.
func (g *graph) zoneMembers(zone *schedule.Zone, channel int) []member {
	i := indexOf(g.c.zoneAt, zone)
	if i < 0 {
		return nil
	}
	all := g.c.zones[i].members
	if channel < 0 {
		return all
	}
	var out []member
	for _, m := range all {
		r := &g.c.rows[m.row]
		if position(r.channels, channel) >= 0 {
			out = append(out, member{m.row, r.shareOf()})
		}
	}
	if len(out) == 0 {
		return all
	}
	return out
}

// roomRows are the rows in the room that a cable's end names: of its zone, or,
// where it names none, of the channel that feeds it.
func (g *graph) roomRows(k *schedule.Cable, channel int) []member {
	if k.To.Text.Value == "" || k.To.Resolved() {
		return nil
	}
	zone := indexOf(g.c.zoneAt, k.Zone)
	room := folded(k.To.Text.Value)
	var out []member
	for i := range g.c.rows {
		r := &g.c.rows[i]
		if r.part == notCounted || folded(r.l.Room.Value) != room || zone >= 0 && r.zone != zone || channel >= 0 && position(r.channels, channel) < 0 {
			continue
		}
		share := whole
		if channel >= 0 {
			share = r.shareOf()
		}
		out = append(out, member{i, share})
	}
	return out
}

func (g *graph) addSingle(s single, target string) {
	g.targets[target] = append(g.targets[target], len(g.single))
	g.single = append(g.single, s)
}

// markShared marks lines that feed the same rows together: no one can say how
// they share them. One cable written again on every row of what it feeds is
// one line.
func (g *graph) markShared() {
	repeats := make([]bool, len(g.single))
	for _, list := range g.targets {
		different := 0
		for n, i := range list {
			for _, k := range list[:n] {
				if !repeats[k] && sameCable(g.single[k].k, g.single[i].k) {
					repeats[i] = true
					g.single[k].again = append(g.single[k].again, g.single[i].k)
					break
				}
			}
			if !repeats[i] {
				different++
			}
		}
		for _, i := range list {
			g.single[i].shared = different > 1
		}
	}
	kept := g.single[:0]
	for i, s := range g.single {
		if !repeats[i] {
			kept = append(kept, s)
		}
	}
	g.single = kept
}

// sameCable reports whether two rows say the same of one cable.
func sameCable(a, b *schedule.Cable) bool {
	return folded(a.Name) == folded(b.Name) && a.Length.Low == b.Length.Low && a.Length.High == b.Length.High && a.Length.Had() == b.Length.Had() &&
		a.Area.Low == b.Area.Low && a.Area.High == b.Area.High && a.AWG.Low == b.AWG.Low && a.Material.Value == b.Material.Value
}
