package audit

import "lineaudit/audit/schedule"

// systemEmergency reports whether the schedule says that the system serves
// emergency use: it says so outright, it has interleaved A/B circuits, or some
// control or zone has an override. A room's name alone never says so, and a
// column of overrides that says no all the way down does not either.
func systemEmergency(j *schedule.Job) bool {
	if j.Emergency.Had() {
		return j.Emergency.Yes
	}
	if j.Override.Yes {
		return true
	}
	for _, z := range j.Zones {
		if z.ABCircuits.Yes || z.Override.Yes {
			return true
		}
	}
	for _, c := range j.Controls {
		if c.Override.Yes {
			return true
		}
	}
	return false
}

// rowEmergency reports whether a loudspeaker serves emergency use. What is
// said of the loudspeaker comes before what is said of its zone, its channel
// and the whole system; a music zone of a voice alarm system is music.
func (c *circuit) rowEmergency(l *schedule.Loudspeaker, ch *schedule.Channel) bool {
	if l.Emergency.Had() {
		return l.Emergency.Yes
	}
	if z := l.Zone; z != nil {
		if yes, said := zoneEmergency(z); said {
			return yes
		}
	}
	if ch != nil {
		switch {
		case ch.Emergency.Had():
			return ch.Emergency.Yes
		case ch.Use == schedule.Emergency:
			return true
		case ch.Use == schedule.Music:
			return false
		}
	}
	return c.emergency
}

// zoneEmergency is what is said of a zone itself, and whether anything is.
func zoneEmergency(z *schedule.Zone) (yes, said bool) {
	switch {
	case z.Emergency.Had():
		return z.Emergency.Yes, true
	case z.Use == schedule.Emergency, z.ABCircuits.Yes:
		return true, true
	case z.Use == schedule.Music:
		return false, true
	}
	return false, false
}

// useOf is the use whose limits hold for a node fed by a channel.
func useOf(emergency bool, z *schedule.Zone, ch *schedule.Channel) schedule.Use {
	switch {
	case emergency:
		return schedule.Emergency
	case z != nil && z.Use != schedule.AnyUse && z.Use != schedule.Emergency:
		return z.Use
	case ch != nil && ch.Use != schedule.Emergency:
		return ch.Use
	}
	return schedule.AnyUse
}
