package generate

import (
	"fmt"
	"slices"
	"strings"

	"lineaudit/samples/book"
)

// zoneFields are the columns of a table with a line a zone.
func (d *drawing) zoneFields(j *job) []string {
	fields := []string{"zone"}
	if d.chance(60) || d.needsTaps(j) {
		fields = append(fields, "model")
	} else {
		fields = append(fields, "desc")
	}
	fields = append(fields, "qty", "tap")
	if d.needsTaps(j) {
		fields = append(fields, "taps")
	}
	if d.chance(50) {
		fields = append(fields, "total")
	}
	if len(j.controls) > 0 {
		fields = append(fields, "control", "vcw")
	}
	return append(append(fields, d.outputFields()...), "chw", "gauge", "length")
}

func (d *drawing) zoneItems(j *job) []item {
	var items []item
	for _, z := range j.zones {
		items = append(items, item{kind: "zone", job: j, z: z})
	}
	return items
}

func drawZones(d *drawing, jobs []*job) {
	j := jobs[0]
	s := d.book.Add(d.say("zones"))
	row := d.titleBlock(s, j, 1, 1)
	items := d.zoneItems(j)
	if d.noise >= 1 && d.chance(50) {
		items = append(items, item{kind: "total", job: j, text: d.say("total")})
	}
	if d.noise >= 2 && d.chance(50) {
		items = append(items, item{kind: "note", text: d.say("note")})
	}
	d.drawDevices(s, d.reorder(append(d.zoneFields(j), d.extras()...)), items, row, 1)
}

func drawTransposed(d *drawing, jobs []*job) {
	j := jobs[0]
	s := d.book.Add(d.say("zones"))
	row := d.titleBlock(s, j, 1, 1)
	t := &table{d: d, sheet: s, fields: d.reorder(d.zoneFields(j)), items: d.zoneItems(j), zoneForm: d.zoneForm, transposed: true}
	t.draw(row, 1)
	s.Widths[1] = 26
}

// drawForms fills in one survey form a zone, one below the other.
func drawForms(d *drawing, jobs []*job) {
	j := jobs[0]
	s := d.book.Add(d.say("zones"))
	row := d.titleBlock(s, j, 1, 1)
	fields := d.zoneFields(j)
	for _, it := range d.zoneItems(j) {
		t := &table{d: d, sheet: s, fields: fields, items: []item{it}, zoneForm: d.zoneForm, transposed: true}
		t.draw(row, 1)
		for _, g := range j.groupsIn(it.z) {
			g.row.rows = fmt.Sprintf("%d-%d", row, row+len(fields)-1)
		}
		row += len(fields) + 1
	}
	s.Widths[1] = 26
}

// drawSections puts the loudspeakers below a title for every zone, room or
// amplifier output, which the rows below then leave out.
func drawSections(d *drawing, jobs []*job) {
	j := jobs[0]
	s := d.book.Add(d.say("loudspeakers"))
	row := d.titleBlock(s, j, 1, 1)
	by := []string{"zone", "output", "room"}[d.rng.IntN(3)]
	if planted(j, "total-mismatch") {
		by = "zone"
	}
	fields := slices.DeleteFunc(d.oneTableFields(j, "groups"), func(f string) bool {
		return f == by || by == "output" && (f == "amp" || f == "channel")
	})
	fields = d.reorder(fields)
	headEach := d.chance(50)
	subtotals := planted(j, "total-mismatch") || d.chance(60)
	var all []item
	for i, sec := range d.sections(j, by) {
		if i > 0 {
			all = append(all, item{kind: "blank"})
		}
		all = append(all, item{kind: "title", text: sec.title})
		if i > 0 && headEach {
			all = append(all, item{kind: "header"})
		}
		from := len(all)
		for _, g := range sec.groups {
			all = append(all, item{kind: "device", job: j, g: g})
		}
		if subtotals && by == "zone" {
			z := sec.groups[0].room.zone
			all = append(all, item{kind: "subtotal", job: j, z: z, from: from, text: d.say("subtotal"), wrong: z.total})
		}
	}
	d.drawn[by] = true
	t := &table{d: d, sheet: s, fields: fields, items: all, zoneForm: d.zoneForm, formulas: d.chance(70)}
	t.draw(row, 1)
}

type section struct {
	title  string
	groups []*group
}

// sections cuts the loudspeakers of a job where the subject changes.
func (d *drawing) sections(j *job, by string) []section {
	var out []section
	var last any
	for _, z := range j.zones {
		for _, g := range j.groupsIn(z) {
			var key any
			var title string
			switch by {
			case "zone":
				key = z
				if key != last {
					title = d.zoneName(z, d.zoneForm)
				}
			case "output":
				key = z.channel
				if key != last {
					title = d.outputName(z.channel)
				}
			default:
				key, title = g.room, g.room.name
			}
			if key != last {
				out = append(out, section{title: title})
				last = key
			}
			out[len(out)-1].groups = append(out[len(out)-1].groups, g)
		}
	}
	return out
}

// label writes the name of a small table above it.
func (d *drawing) label(s *book.Sheet, row, col int, phrase string) int {
	s.Set(row, col, book.Cell{Value: d.say(phrase), Style: book.Style{Bold: true, Size: 12}})
	return row + 1
}

func drawAbove(d *drawing, jobs []*job) {
	j := jobs[0]
	s := d.book.Add(d.say("title"))
	row := d.titleBlock(s, j, 1, 1)
	row = d.drawDevices(s, d.reorder(append(d.deviceFields(j, "flat"), d.extras()...)), d.deviceItems(j), row, 1)
	row = d.drawAmps(s, j, d.label(s, row+2, 1, "amplifiers"), 1)
	if len(j.controls) > 0 {
		row = d.drawControls(s, j, d.label(s, row+2, 1, "controls"), 1)
	}
	d.drawCables(s, j, d.label(s, row+2, 1, "cables"), 1)
}

func drawBeside(d *drawing, jobs []*job) {
	j := jobs[0]
	d.noHide = true
	s := d.book.Add(d.say("title"))
	row := d.titleBlock(s, j, 1, 1)
	fields := d.reorder(d.deviceFields(j, "groups"))
	d.drawDevices(s, fields, d.deviceItems(j), row, 1)
	col := len(fields) + 2
	below := d.drawAmps(s, j, row, col)
	if len(j.controls) > 0 {
		below = d.drawControls(s, j, below+2, col)
	}
	d.drawCables(s, j, below+2, col)
}

func drawSheetAZone(d *drawing, jobs []*job) {
	j := jobs[0]
	fields := slices.DeleteFunc(d.oneTableFields(j, "flat"), func(f string) bool { return f == "zone" || f == "chw" })
	fields = d.reorder(fields)
	d.drawn["zone"] = true
	for i, z := range j.zones {
		s := d.book.Add(sheetName(d.name(z, z.name), i))
		row := 1
		if i == 0 {
			row = d.titleBlock(s, j, 1, 1)
		}
		s.Set(row, 1, book.Cell{Value: d.zoneName(z, d.zoneForm), Style: book.Style{Bold: true, Size: 12}})
		var items []item
		for _, g := range j.groupsIn(z) {
			items = append(items, item{kind: "device", job: j, g: g})
		}
		if z.total > 0 || d.noise >= 1 {
			items = append(items, item{kind: "subtotal", job: j, z: z, text: d.say("subtotal"), wrong: z.total})
		}
		d.drawDevices(s, fields, items, row+2, 1)
	}
	d.drawAmps(d.book.Add(d.say("amplifiers")), j, 1, 1)
}

// sheetName makes a name that a workbook accepts.
func sheetName(name string, i int) string {
	name = strings.Map(func(r rune) rune {
		if strings.ContainsRune(`:\/?*[]'`, r) {
			return '-'
		}
		return r
	}, name)
	if r := []rune(name); len(r) > 28 {
		name = string(r[:25]) + fmt.Sprint(i)
	}
	return name
}

func drawSheetAJob(d *drawing, jobs []*job) {
	for _, j := range jobs {
		s := d.book.Add(j.number)
		row := d.titleBlock(s, j, 1, 1)
		d.drawDevices(s, d.oneTableFields(j, "groups"), d.deviceItems(j), row, 1)
	}
}

// drawRegister lists the loudspeakers of many jobs in one table.
func drawRegister(d *drawing, jobs []*job) {
	s := d.book.Add(d.say("loudspeakers"))
	s.Set(1, 1, book.Cell{Value: d.say("title"), Style: book.Style{Bold: true, Size: 14}})
	fields := []string{"job", "site", "volts"}
	var items []item
	for _, j := range jobs {
		for _, f := range d.oneTableFields(j, "groups") {
			if !slices.Contains(fields, f) {
				fields = append(fields, f)
			}
		}
		from := len(items)
		for _, it := range d.deviceItems(j) {
			if it.kind == "total" || it.kind == "note" || it.kind == "legend" {
				continue
			}
			it.from += from
			items = append(items, it)
		}
	}
	d.drawDevices(s, fields, items, 3, 1)
}

func drawGroupedHeader(d *drawing, jobs []*job) {
	j := jobs[0]
	s := d.book.Add(d.say("loudspeakers"))
	row := d.titleBlock(s, j, 1, 1)
	var fields []string
	for _, part := range [][]string{{"tag", "model", "desc", "qty", "tap", "total", "taps", "rated", "status"}, {"room", "zone"}, {"control", "vcw", "amp", "channel", "output", "chw"}, {"cable", "gauge", "length"}} {
		for _, f := range part {
			if slices.Contains(d.headersOf(j), f) {
				fields = append(fields, f)
			}
		}
	}
	t := &table{d: d, sheet: s, fields: fields, items: d.deviceItems(j), zoneForm: d.zoneForm, carry: d.carries(),
		groupHeads: true, unitRow: d.chance(50), formulas: d.chance(70)}
	t.filter(t.draw(row, 1))
}

// headersOf returns the columns for a job in one table, chosen once.
func (d *drawing) headersOf(j *job) []string {
	if d.fields == nil {
		d.fields = d.oneTableFields(j, "groups")
	}
	return d.fields
}

func drawOffset(d *drawing, jobs []*job) {
	j := jobs[0]
	s := d.book.Add(d.say("loudspeakers"))
	d.titleBlock(s, j, 2, 6)
	s.Put(12, 6, d.say("note"))
	d.drawDevices(s, d.reorder(d.oneTableFields(j, "flat")), d.deviceItems(j), 30, 6)
}

// drawTitleBlock leaves the amplifier and the cable to the title block.
func drawTitleBlock(d *drawing, jobs []*job) {
	j := jobs[0]
	s := d.book.Add(d.say("loudspeakers"))
	row := d.titleBlock(s, j, 1, 1) - 1
	a, l := j.amps[0], j.zones[0].line
	s.Set(row, 1, book.Cell{Value: d.header("amp", ""), Style: book.Style{Bold: true}})
	rating := fmt.Sprintf("%s: %d x %sW @%sV", a.tag, len(a.channels), d.num(a.channels[0].ratedW), voltText(j.lineV))
	s.Set(row, 2, book.Cell{Value: rating})
	for _, c := range a.channels {
		c.row = where{sheet: s.Name, row: row, col: 2}
	}
	row++
	s.Set(row, 1, book.Cell{Value: d.say("cables"), Style: book.Style{Bold: true}})
	cable := fmt.Sprintf("%d/2", l.awg)
	if l.awg == 0 {
		cable = "2x" + d.num(l.areaMM2) + " mm²"
	}
	s.Set(row, 2, book.Cell{Value: cable})
	fields := append(d.deviceFields(j, "groups"), "cable", "length")
	if len(j.controls) > 0 {
		fields = append(fields, "vcw")
	}
	d.drawDevices(s, d.reorder(append(fields, d.extras()...)), d.deviceItems(j), row+2, 1)
}
