package generate

import (
	"fmt"
	"slices"

	"lineaudit/samples/book"
)

// kindsOf lists the models of a job in the order in which they first occur.
func (j *job) kindsOf() []*group {
	var out []*group
	for _, g := range j.groups {
		if !slices.ContainsFunc(out, func(o *group) bool { return o.kind == g.kind }) {
			out = append(out, g)
		}
	}
	return out
}

// drawMatrixTypes lays rooms down and models across, with counts in between,
// and a small table of what each model is tapped at.
func drawMatrixTypes(d *drawing, jobs []*job) {
	j := jobs[0]
	s := d.book.Add(d.say("loudspeakers"))
	row := d.titleBlock(s, j, 1, 1)
	types := j.kindsOf()
	fields := append([]string{"zone", "room"}, d.outputFields()...)
	for i, f := range fields {
		s.Set(row, 1+i, book.Cell{Value: d.garbleHeader(d.header(f, "")), Style: headLook})
	}
	left := 1 + len(fields)
	for i, g := range types {
		s.Set(row, left+i, book.Cell{Value: g.kind.model, Style: headLook})
	}
	t := &table{d: d, sheet: s, zoneForm: d.zoneForm}
	row++
	first := row
	for _, r := range j.rooms() {
		it := &item{kind: "device", job: j, g: r[0]}
		for i, f := range fields {
			s.Set(row, 1+i, t.cell(f, it))
			d.drawn[f] = true
		}
		for _, g := range r {
			col := left + slices.IndexFunc(types, func(o *group) bool { return o.kind == g.kind })
			s.Set(row, col, book.Cell{Value: g.count})
			g.row = where{s.Name, row, col, fmt.Sprint(row)}
		}
		row++
	}
	if d.noise >= 1 {
		d.matrixTotal(s, row, first, left, len(types))
		row++
	}
	d.drawn["model"] = true
	row = d.drawTypes(s, j, types, row+2, 1)
	d.drawAmps(s, j, d.label(s, row+2, 1, "amplifiers"), 1)
}

// matrixTotal adds up the counts of each column.
func (d *drawing) matrixTotal(s *book.Sheet, row, first, left, n int) {
	text := d.say("total")
	s.Set(row, 1, book.Cell{Value: text, Style: book.Style{Bold: true}})
	for c := left; c < left+n; c++ {
		sum := 0
		for r := first; r < row; r++ {
			if v, ok := s.Get(r, c).Value.(int); ok {
				sum += v
			}
		}
		s.Set(row, c, book.Cell{Value: sum, Formula: fmt.Sprintf("SUM(%s:%s)", book.At(first, c), book.At(row-1, c)), Style: book.Style{Bold: true}})
	}
	d.leftOut(s.Name, row, "total", text)
}

// rooms groups the loudspeakers of a job by room. A second model in a room
// joins its line.
func (j *job) rooms() [][]*group {
	var out [][]*group
	for _, z := range j.zones {
		for _, g := range j.groupsIn(z) {
			n := len(out) - 1
			if n >= 0 && out[n][0].room == g.room && !slices.ContainsFunc(out[n], func(o *group) bool { return o.kind == g.kind }) {
				out[n] = append(out[n], g)
				continue
			}
			out = append(out, []*group{g})
		}
	}
	return out
}

// drawTypes is the small table of models and taps.
func (d *drawing) drawTypes(s *book.Sheet, j *job, types []*group, row, col int) int {
	t := &table{d: d, sheet: s, fields: []string{"model", "desc", "tap"}}
	if d.chance(50) {
		t.fields = append(t.fields, "taps")
	}
	for _, g := range types {
		t.items = append(t.items, item{kind: "type", job: j, k: g.kind, g: g})
	}
	row = d.label(s, row, col, "types")
	return row + t.draw(row, col)
}

// drawMatrixZones lays models down, each with its tap, and zones across.
func drawMatrixZones(d *drawing, jobs []*job) {
	j := jobs[0]
	s := d.book.Add(d.say("loudspeakers"))
	row := d.titleBlock(s, j, 1, 1)
	types := j.kindsOf()
	t := &table{d: d, sheet: s, fields: []string{"model", "desc", "tap"}}
	for i, f := range t.fields {
		s.Set(row, 1+i, book.Cell{Value: d.garbleHeader(d.header(f, t.unit(f))), Style: headLook})
	}
	left := 1 + len(t.fields)
	for i, z := range j.zones {
		s.Set(row, left+i, book.Cell{Value: d.zoneName(z, d.zoneForm), Style: headLook})
	}
	row++
	first := row
	for _, g := range types {
		it := &item{kind: "type", job: j, k: g.kind, g: g}
		for i, f := range t.fields {
			s.Set(row, 1+i, t.cell(f, it))
		}
		for zi, z := range j.zones {
			count := 0
			for _, o := range j.groupsIn(z) {
				if o.kind == g.kind {
					count += o.count
					o.row = where{s.Name, row, left + zi, fmt.Sprint(row)}
				}
			}
			if count > 0 {
				s.Set(row, left+zi, book.Cell{Value: count})
			}
		}
		row++
	}
	if d.noise >= 1 {
		d.matrixTotal(s, row, first, left, len(j.zones))
		row++
	}
	j.joinByZone()
	d.drawn["model"] = true
	row = d.drawZoneOutputs(s, j, row+2, 1)
	d.drawAmps(s, j, d.label(s, row+2, 1, "amplifiers"), 1)
}

// joinByZone makes one group of all loudspeakers of a model in a zone: the
// matrix knows no rooms.
func (j *job) joinByZone() {
	var out []*group
	for _, g := range j.groups {
		i := slices.IndexFunc(out, func(o *group) bool { return o.kind == g.kind && o.room.zone == g.room.zone })
		if i < 0 {
			out = append(out, g)
			continue
		}
		out[i].count += g.count
	}
	j.groups = out
}

// drawZoneOutputs is the small table of which output feeds which zone.
func (d *drawing) drawZoneOutputs(s *book.Sheet, j *job, row, col int) int {
	t := &table{d: d, sheet: s, zoneForm: d.zoneForm, fields: append([]string{"zone"}, d.outputFields()...)}
	for _, z := range j.zones {
		t.items = append(t.items, item{kind: "feed", job: j, z: z})
	}
	row = d.label(s, row, col, "zones")
	return row + t.draw(row, col)
}
