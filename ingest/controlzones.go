package ingest

import "lineaudit/audit/schedule"

// controlsOfZones hangs a zone on the one control whose row names the zone,
// where neither the zone nor its loudspeakers name any.
func (b *builder) controlsOfZones() {
	of := make(map[*schedule.Zone][]*schedule.Control)
	for _, c := range b.job.Controls {
		if c.Zone != nil && c.Status == schedule.Installed {
			of[c.Zone] = append(of[c.Zone], c)
		}
	}
	named, in := make(map[*schedule.Zone]bool), make(map[*schedule.Zone][]*schedule.Loudspeaker)
	elsewhere := make(map[*schedule.Control]*schedule.Zone) // where loudspeakers that name a control are, if not in its zone
	for _, l := range b.job.Loudspeakers {
		if l.Control != nil && l.Zone != nil && l.Control.Zone != nil && l.Zone != l.Control.Zone {
			elsewhere[l.Control] = l.Zone
		}
		in[l.Zone] = append(in[l.Zone], l)
		if l.Control != nil || b.origin[l].saysNoControl() {
			named[l.Zone] = true
		}
	}
	b.placesOfControls(of, in)
	for _, z := range b.job.Zones {
		if z.Control == nil && !named[z] && len(of[z]) > 1 {
			b.controlsOfTheirRooms(of[z], in[z])
		}
		if z.Control != nil || named[z] || len(in[z]) == 0 || len(of[z]) != 1 {
			continue
		}
		if other := elsewhere[of[z][0]]; other != nil {
			c := of[z][0]
			b.ask(c.At, "control", "control "+c.Name+" stands beside zone "+z.Name+", but is named by loudspeakers of zone "+other.Name+": does it carry zone "+z.Name+" too?", "the load of "+c.Name)
			continue
		}
		if n, ok := of[z][0].Count.Exact(); ok && n > 1 {
			c := of[z][0]
			b.ask(c.At, "control", itoa(int(n))+" controls "+c.Name+" in zone "+z.Name+": which loudspeakers hang behind each?", "the load of each of these controls")
			continue
		}
		if b.controlOfRoom(of[z][0], in[z]) {
			continue
		}
		z.Control = of[z][0]
		s := seen{source: schedule.Source{At: z.Control.At, Written: z.Control.Name}}
		b.take(s, "loudspeakers behind the control", "zone "+z.Name, schedule.Computed, "the only control of the zone, and its loudspeakers name none")
	}
}
