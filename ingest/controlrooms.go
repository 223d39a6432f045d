package ingest

import (
	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
)

// The only control of a chapter of a bill may be for one of its rooms: "Attenuator AT2, 6 W, for the office" below
// "Ceiling loudspeaker set to 3 W, changing room" and "Ceiling loudspeaker set to 1.5 W, office".

// controlOfRoom hangs the loudspeakers of a control's own room behind it, where all those of its zone say in which room
// they are and some are in another; ok is false where they do not.
func (b *builder) controlOfRoom(c *schedule.Control, ofZone []*schedule.Loudspeaker) (ok bool) {
	key := join.Key(c.Room.Value)
	if key == "" || key == join.Key(c.Zone.Name) || b.standElsewhere[placeColumn(c)] {
		return false
	}
	var in []*schedule.Loudspeaker
	others := false
	for _, l := range ofZone {
		switch {
		case l.Status != schedule.Installed:
		case !l.Room.Had():
			return false
		case join.Key(l.Room.Value) == key:
			in = append(in, l)
		default:
			others = true
		}
	}
	if len(in) == 0 || !others {
		return false
	}
	for _, l := range in {
		l.Control = c
	}
	s := seen{source: schedule.Source{At: c.At, Written: c.Name}}
	b.take(s, "loudspeakers behind the control", c.Room.Value, schedule.LikelierReading, "the control is for that room of the zone, and the others have none")
	return true
}

// A columnOfPlaces is a column of a sheet that says where controls are.
type columnOfPlaces struct {
	sheet schedule.Sheet
	col   int32
}

func placeColumn(c *schedule.Control) columnOfPlaces {
	return columnOfPlaces{c.Room.At.On(), c.Room.At.Col}
}

// placesOfControls finds the columns of places in which some control of a zone is at a place where the zone has no
// loudspeaker: they say where controls can be reached, not what they carry. "R1 | Z1 | Lodge", though Z1 is two halls.
func (b *builder) placesOfControls(of map[*schedule.Zone][]*schedule.Control, in map[*schedule.Zone][]*schedule.Loudspeaker) {
	b.standElsewhere = make(map[columnOfPlaces]bool)
	for z, controls := range of {
		if len(in[z]) == 0 {
			continue
		}
		rooms := make(map[string]bool)
		for _, l := range in[z] {
			rooms[join.Key(l.Room.Value)] = true
		}
		for _, c := range controls {
			if allOfItWords.ahead(join.Fold(c.Room.Value)) != "" {
				continue // "whole zone" is what it carries
			}
			if c.Room.How == schedule.Stated && !rooms[join.Key(c.Room.Value)] && join.Key(c.Room.Value) != join.Key(z.Name) {
				b.standElsewhere[placeColumn(c)] = true
			}
		}
	}
}

// controlsOfTheirRooms hangs the loudspeakers of a zone behind its several controls, where each control is for another room
// of the zone in which there are some: "Volume control 12 W, reading corner" and "Volume control 6 W, staff room".
func (b *builder) controlsOfTheirRooms(controls []*schedule.Control, ofZone []*schedule.Loudspeaker) {
	inRoom := make(map[string]bool)
	for _, l := range ofZone {
		inRoom[join.Key(l.Room.Value)] = inRoom[join.Key(l.Room.Value)] || l.Status == schedule.Installed
	}
	taken := make(map[string]bool)
	for _, c := range controls {
		key := join.Key(c.Room.Value)
		if n, counted := c.Count.Exact(); key == "" || !inRoom[key] || taken[key] || counted && n > 1 {
			return
		}
		taken[key] = true
	}
	for _, c := range controls {
		b.controlOfRoom(c, ofZone)
	}
}
