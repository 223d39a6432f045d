package audit

import (
	_ "embed"
	"fmt"
	"math"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
)

//go:embed doc/uneven-level.md
var unevenLevelDoc string

// unevenLevel finds loudspeakers of one kind in one room at far different taps.
var unevenLevel = &Rule{
	Name:  "uneven-level",
	Title: "loudspeakers of one kind in one room are tapped far apart",
	Why:   "One spot is loud while the next is quiet: most often a tap that was set wrong, or never set.",
	Doc:   unevenLevelDoc,
	Limits: []Limit{
		{Name: "caution", Grade: Caution, Default: 6.1, Unit: "dB", Source: "common practice, no source", Note: "just past two steps of 3 dB; one county bid wants 3 dB corrected (yumpu.com 20755792 p. 41)"},
	},
	Silent: []string{
		"the room, the model or the mounting differs, or the room is not stated",
		"the mounting heights differ",
		"they hang on different controls or channels",
		"a tap is missing, or stated for another line voltage: that is voltage-mismatch",
		"a bass loudspeaker is among them",
	},
	Cautions: []string{cautionPaper},
	OnSite:   "read the taps in the room; measure the level under each loudspeaker",
	Tool:     "sound level meter",
	Check:    checkUnevenLevel,
}

func checkUnevenLevel(x *Examination) error {
	c := x.circuit
	type alike struct {
		zone, control, channel, room, model, mounting int
		height                                        float64
	}
	type group struct{ low, high, rows int }
	at := map[alike]int{}
	var groups []group
	in := make([]int, len(c.rows)) // group of each row, from 1
	for i := range c.rows {
		r := &c.rows[i]
		l := r.l
		if r.part != counts || r.out != notOut || !r.tapped || !r.each.exact() || r.wrongV || l.Room.Value == "" || l.Model.Value == "" || l.Sub.Yes {
			continue
		}
		k := alike{zone: r.zone, control: r.control, channel: -1, room: r.room, model: r.model, mounting: r.mounting,
			height: float64(l.Height.Low)}
		if len(r.channels) > 0 {
			k.channel = r.channels[0]
		}
		g, ok := at[k]
		if !ok {
			g = len(groups)
			at[k] = g
			groups = append(groups, group{low: i, high: i})
		}
		p := &groups[g]
		p.rows++
		in[i] = g + 1
		if r.each.Low < c.rows[p.low].each.Low {
			p.low = i
		}
		if r.each.Low > c.rows[p.high].each.Low {
			p.high = i
		}
	}
	held := 0
	defer func() { x.passAll(held, "room", "loudspeakers of one kind tapped within the limit of each other") }()
	for i := range groups {
		g := &groups[i]
		if g.rows < 2 {
			continue
		}
		low, high := &c.rows[g.low], &c.rows[g.high]
		if x.holds(Exact(10*math.Log10(high.each.Low/low.each.Low)), schedule.AnyUse) {
			held++
			continue
		}
		var rows []int
		for k, group := range in {
			if group == i+1 {
				rows = append(rows, k)
			}
		}
		c.byPlace(rows)
		for _, k := range slices.Backward(rows) {
			if c.rows[k].each == low.each {
				low = &c.rows[k] // the first of the lowest, as written
			}
		}
		l := low.l
		db := 10 * math.Log10(high.each.Low/low.each.Low)
		cl := &claim{key: strings.Join([]string{"room", folded(l.Room.Value), modelKey(l.Model.Value), zoneKey(l.Zone), folded(l.Mounting.Value)}, "\x1f"),
			place: "room " + l.Room.Value, room: l.Room.Value, zone: zoneName(l.Zone), at: placeOf(low.l.Tap.Source, low.l.At), measured: Exact(db), unit: "dB",
			message: fmt.Sprintf("%s: taps from %s W to %s W, 10 log10(%s/%s) = %.1f dB apart", l.Model.Value, figure(low.each.Low), figure(high.each.Low),
				figure(high.each.Low), figure(low.each.Low), db),
			equipment: modelEquipment("loudspeaker model", l.Model)}
		for _, k := range rows {
			cl.pieces += pieceCount(&c.rows[k])
			cl.emergency = cl.emergency || c.rows[k].emergency
		}
		cl.cells = func() []Evidence {
			var cells []Evidence
			for _, k := range rows {
				cells = c.rows[k].evidence(cells)
			}
			return cells
		}
		x.judge(cl)
	}
	return nil
}
