package audit

import "lineaudit/audit/schedule"

// A cable may run along the loudspeakers of one row, from the first of them to the last: "HP 201 to HP 210", 135 m. The
// row then hangs at the far end of it, and what feeds the row leads to the near one.

// An alongKey is the tag of a loudspeaker, as an end of a cable names it, in its row.
type alongKey struct {
	row *schedule.Loudspeaker
	tag string
}

// ranAlong gathers the near ends of the cables that run along the loudspeakers of a row.
func (g *graph) ranAlong() {
	for _, k := range g.c.job.Cables {
		near := alongKey{k.From.Loudspeaker, folded(k.From.Text.Value)}
		if near.row != nil && near.row == k.To.Loudspeaker && near.tag != folded(k.To.Text.Value) && k.Status == schedule.Installed {
			if g.along == nil {
				g.along = make(map[alongKey]int)
			}
			g.along[near] = -1
		}
	}
}

// device is the place of loudspeakers that an end names: the near end of a cable along their row, else that of the row.
func (g *graph) device(e schedule.End) int {
	near := alongKey{e.Loudspeaker, folded(e.Text.Value)}
	i, ok := g.along[near]
	if !ok {
		return g.part(e.Loudspeaker)
	}
	if i < 0 {
		i = len(g.places)
		g.places = append(g.places, place{channel: -1, control: -1, zone: -1, row: g.c.positionOf(e.Loudspeaker), text: e.Text.Value})
		g.along[near] = i
	}
	return i
}

// joint reports whether a place is where cables meet, and no part of the system is.
func (p *place) joint() bool { return p.text != "" && p.row < 0 }
