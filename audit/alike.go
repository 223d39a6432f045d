package audit

import (
	"slices"
	"strings"
)

// An alikeGroup is the rows of one model at one tap: what is wrong with one of
// them is wrong with all, and is one finding.
type alikeGroup struct {
	rows []int
}

// alikeRows gathers the installed rows with an exact tap by model and tap, in
// the order of their first row. keep says which rows to take.
func (c *circuit) alikeRows(keep func(*row) bool) []alikeGroup {
	type key struct {
		model     int
		tap, tapV float64
	}
	at := map[key]int{}
	var out []alikeGroup
	for i := range c.rows {
		r := &c.rows[i]
		if r.part != counts || r.out != notOut || !r.tapped || !r.marked.exact() || !keep(r) {
			continue
		}
		k := key{r.model, r.marked.Low, r.tapV}
		if k.model == 0 {
			k.model = -1 - i // nothing says that two such rows are alike
		}
		g, ok := at[k]
		if !ok {
			g = len(out)
			at[k] = g
			out = append(out, alikeGroup{})
		}
		out[g].rows = append(out[g].rows, i)
	}
	return out
}

// byPlace sorts rows by where they are written, so that the first of a group
// does not depend on the order in which a job lists them.
func (c *circuit) byPlace(rows []int) {
	slices.SortStableFunc(rows, func(a, b int) int { return c.rows[a].l.At.Compare(c.rows[b].l.At) })
}

// claim is a claim about a group of alike rows.
func (g *alikeGroup) claim(c *circuit) *claim {
	c.byPlace(g.rows)
	first := &c.rows[g.rows[0]]
	l := first.l
	cl := &claim{at: placeOf(l.Tap.Source, l.At), zone: zoneName(l.Zone), room: l.Room.Value,
		key:   strings.Join([]string{"alike", modelKey(l.Model.Value), figure(first.marked.Low), volts(first.tapV)}, "\x1f"),
		place: rowName(l), equipment: modelEquipment("loudspeaker model", l.Model)}
	if l.Model.Value == "" {
		cl.key = rowKey(l)
	}
	zones := []string{}
	for _, i := range g.rows {
		r := &c.rows[i]
		cl.pieces += pieceCount(r)
		cl.emergency = cl.emergency || r.emergency
		if r.l.Room.Value != cl.room {
			cl.room = ""
		}
		if n := zoneName(r.l.Zone); n != "" && !slices.Contains(zones, n) {
			zones = append(zones, n)
		}
	}
	if len(g.rows) > 1 {
		cl.place = "loudspeakers " + l.Model.Value + " at " + figure(first.marked.Low) + " W"
	}
	if len(zones) > 1 {
		cl.zone = ""
	}
	cl.cells = func() []Evidence {
		var cells []Evidence
		for _, i := range g.rows {
			cells = c.rows[i].evidence(cells)
		}
		return cells
	}
	return cl
}
