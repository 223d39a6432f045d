package audit

import "lineaudit/audit/schedule"

// A cable may run along the loudspeakers of one row, from the first of them to the last: "HP 201 to HP 210", 135 m. The
// row then hangs at the end of it, and other cables meet the row at one of its tags.

// ranAlong gathers the rows that cables run along, each with the tag where the last of these cables ends.
func (g *graph) ranAlong() {
	for _, k := range g.c.job.Cables {
		if l := k.To.Loudspeaker; l != nil && l == k.From.Loudspeaker && k.Status == schedule.Installed && folded(k.From.Text.Value) != folded(k.To.Text.Value) {
			if g.along == nil {
				g.along = make(map[*schedule.Loudspeaker]string)
			}
			g.along[l] = folded(k.To.Text.Value)
		}
	}
}

// device is the place of loudspeakers that an end names: that of their row, or of one of its tags where a cable runs along them.
func (g *graph) device(e schedule.End) int {
	last, ok := g.along[e.Loudspeaker]
	if tag := folded(e.Text.Value); ok && tag != last {
		key := rowKey(e.Loudspeaker) + "\x1f" + tag
		i, made := g.byText[key]
		if !made {
			i = len(g.places)
			g.places = append(g.places, place{channel: -1, control: -1, zone: -1, row: g.c.positionOf(e.Loudspeaker), text: e.Text.Value})
			g.byText[key] = i
		}
		return i
	}
	return g.part(e.Loudspeaker)
}

// joint reports whether a place is where cables meet, and no part of the system is.
func (p *place) joint() bool { return p.text != "" && p.row < 0 }
