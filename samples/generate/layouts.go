package generate

import (
	"fmt"
	"slices"

	"lineaudit/samples/book"
)

// layouts lists every way of laying out a schedule.
var layouts = []layout{
	{name: "flat", draw: drawFlat, single: true, controls: true, cables: true, total: true, taps: true, tags: true},
	{name: "groups", draw: drawGroups, controls: true, cables: true, total: true, taps: true},
	{name: "zones", draw: drawZones, uniform: true, controls: true, cables: true, taps: true},
	{name: "sheets", draw: drawSheets, controls: true, cables: true, series: true, total: true, frames: true, ampRows: true, taps: true, tags: true, single: true, inCSV: "above"},
	{name: "sections", draw: drawSections, controls: true, cables: true, total: true, taps: true},
	{name: "above", draw: drawAbove, controls: true, cables: true, series: true, total: true, frames: true, ampRows: true, taps: true, tags: true, single: true},
	{name: "beside", draw: drawBeside, controls: true, cables: true, series: true, total: true, frames: true, ampRows: true, taps: true},
	{name: "transposed", draw: drawTransposed, uniform: true, controls: true, cables: true},
	{name: "matrix-types", draw: drawMatrixTypes, fixedTap: true, frames: true, ampRows: true},
	{name: "matrix-zones", draw: drawMatrixZones, fixedTap: true, frames: true, ampRows: true},
	{name: "sheet-a-zone", draw: drawSheetAZone, controls: true, cables: true, total: true, frames: true, ampRows: true, taps: true, tags: true, single: true, inCSV: "sections"},
	{name: "sheet-a-job", draw: drawSheetAJob, controls: true, cables: true, total: true, taps: true, jobs: 3, inCSV: "register"},
	{name: "register", draw: drawRegister, controls: true, cables: true, total: true, taps: true, jobs: 4},
	{name: "forms", draw: drawForms, uniform: true, controls: true, cables: true},
	{name: "titleblock", draw: drawTitleBlock, controls: true, cables: true, total: true, oneAmp: true},
	{name: "grouped-header", draw: drawGroupedHeader, controls: true, cables: true, total: true, taps: true},
	{name: "offset", draw: drawOffset, single: true, controls: true, cables: true, total: true, taps: true, tags: true},
}

// titleBlock writes the head of a sheet and returns the next free row. All
// that the table does not say of the job stands here.
func (d *drawing) titleBlock(s *book.Sheet, j *job, row, col int) int {
	s.Set(row, col, book.Cell{Value: d.say("title"), Style: book.Style{Bold: true, Size: 14}})
	row++
	pairs := [][2]string{{d.say("kv_site"), j.site}, {d.say("kv_job"), j.number}, {d.say("kv_rev"), j.rev},
		{d.say("kv_by"), d.place("person")}, {d.say("kv_volts"), voltText(j.lineV) + " V"}}
	if n := j.statedCount(d); n > 0 {
		pairs = append(pairs, [2]string{d.say("kv_count"), fmt.Sprint(n)})
		j.countAt = where{s.Name, row + len(pairs) - 1, col + 1, ""}
	}
	oneCell := d.noise >= 1 && d.chance(30)
	for _, p := range pairs {
		if oneCell {
			j.countAt.col = col
			s.Set(row, col, book.Cell{Value: p[0] + ": " + p[1]})
		} else {
			s.Set(row, col, book.Cell{Value: p[0], Style: book.Style{Bold: true}})
			s.Set(row, col+1, book.Cell{Value: p[1]})
		}
		row++
	}
	return row + 1
}

// statedCount is the number of loudspeakers that the title block gives, 0 for
// none. It leaves no doubt: where spares are listed too, it is not given.
func (j *job) statedCount(d *drawing) int {
	switch {
	case planted(j, "count-mismatch"):
		return j.loudspeakers() + 2
	case d.noise >= 1 && d.chance(20) && !d.needsStatus(j):
		return j.loudspeakers()
	}
	return 0
}

// extras are columns that tell the audit nothing.
func (d *drawing) extras() []string {
	if d.noise == 0 {
		return nil
	}
	all := []string{"price", "maker", "spl", "mount", "height", "notes"}
	d.rng.Shuffle(len(all), func(i, k int) { all[i], all[k] = all[k], all[i] })
	return all[:d.rng.IntN(2*d.noise-1)+1]
}

// reorder moves a few columns about, the first one excepted.
func (d *drawing) reorder(fields []string) []string {
	if d.noise == 0 || len(fields) < 3 {
		return fields
	}
	out := slices.Clone(fields)
	for range d.noise {
		i, k := 1+d.rng.IntN(len(out)-1), 1+d.rng.IntN(len(out)-1)
		out[i], out[k] = out[k], out[i]
	}
	return out
}

// deviceFields are the columns of a table of loudspeakers.
func (d *drawing) deviceFields(j *job, lay string) []string {
	fields := []string{"tag"}
	if d.chance(60) || d.needsTaps(j) {
		fields = append(fields, "model")
	}
	if d.chance(30) {
		fields = append(fields, "desc")
	}
	fields = append(fields, "room", "zone")
	if lay != "flat" {
		fields = append(fields, "qty")
	}
	fields = append(fields, "tap")
	switch {
	case planted(j, "tap-above-rating"):
		fields = append(fields, "rated")
	case d.needsTaps(j) || d.noise >= 1 && d.chance(15):
		fields = append(fields, "taps")
	}
	if lay != "flat" && (d.chance(50) || planted(j, "total-mismatch")) {
		fields = append(fields, "total")
	}
	if d.needsStatus(j) {
		fields = append(fields, "status")
	}
	if len(j.controls) > 0 {
		fields = append(fields, "control")
	}
	return append(fields, d.outputFields()...)
}

func (d *drawing) outputFields() []string {
	if d.combined {
		return []string{"output"}
	}
	return []string{"amp", "channel"}
}

func (d *drawing) needsTaps(j *job) bool {
	return planted(j, "tap-not-offered")
}

func planted(j *job, rule string) bool {
	return slices.ContainsFunc(j.planted, func(p plant) bool { return p.rule == rule })
}

func (d *drawing) needsStatus(j *job) bool {
	return slices.ContainsFunc(j.groups, func(g *group) bool { return g.status != "installed" })
}

// carries picks the columns whose repeated values are not written again.
func (d *drawing) carries() map[string]string {
	if d.noise < 2 {
		return nil
	}
	way := []string{"ditto", "merge", "blank"}[d.rng.IntN(3)]
	if d.plain && way == "merge" {
		way = "blank"
	}
	out := map[string]string{"zone": way}
	if way == "ditto" && d.chance(50) {
		out["room"], out["model"] = way, way
	}
	return out
}

// deviceItems lists the loudspeakers of a job zone by zone, with the rows
// between them that people add.
func (d *drawing) deviceItems(j *job) []item {
	var items []item
	subtotals := d.noise >= 1 && d.chance(50) || planted(j, "total-mismatch")
	gaps := d.noise >= 1 && d.chance(30)
	hiding := ""
	if d.noise >= 2 && !d.plain {
		hiding = []string{"", "hidden", "filtered", "struck"}[d.rng.IntN(4)]
	}
	if d.noHide && hiding != "struck" {
		hiding = ""
	}
	for i, z := range j.zones {
		from := len(items)
		for _, g := range j.groupsIn(z) {
			items = append(items, item{kind: "device", job: j, g: g, hide: hiding == "filtered" && g.room.zone.n == 2})
		}
		if (hiding == "hidden" || hiding == "struck") && d.chance(40) {
			old := *j.groupsIn(z)[0]
			old.tapW, old.asDate, old.lowOhm, old.absurd, old.untold, old.tapV = old.kind.taps[0], false, 0, false, false, 0
			items = append(items, item{kind: hiding, job: j, g: &old, hide: hiding == "hidden"})
		}
		if subtotals {
			items = append(items, item{kind: "subtotal", job: j, z: z, from: from, text: d.say("subtotal"), wrong: z.total})
		}
		if gaps && i+1 < len(j.zones) {
			items = append(items, item{kind: "blank"})
		}
	}
	if d.noise >= 1 && d.chance(40) {
		items = append(items, item{kind: "total", job: j, text: d.say("total")})
	}
	if d.noise >= 2 && d.chance(60) {
		items = append(items, item{kind: "note", text: d.say("note")})
	}
	if d.noise >= 2 && d.chance(40) {
		items = append(items, item{kind: "legend", text: d.say("legend")})
	}
	return items
}

// drawDevices draws a table of loudspeakers, with a filter over it where one
// hides some of them.
func (d *drawing) drawDevices(s *book.Sheet, fields []string, items []item, row, col int) int {
	t := &table{d: d, sheet: s, fields: fields, items: items, zoneForm: d.zoneForm, carry: d.carries(), formulas: d.chance(70)}
	n := t.draw(row, col)
	t.filter(n)
	return row + n
}

func drawFlat(d *drawing, jobs []*job)   { d.drawOne(jobs[0], "flat") }
func drawGroups(d *drawing, jobs []*job) { d.drawOne(jobs[0], "groups") }

// drawOne draws everything in one table: each loudspeaker row repeats the
// ratings and the cable that it hangs on.
func (d *drawing) drawOne(j *job, lay string) {
	s := d.book.Add(d.say("loudspeakers"))
	fields := d.oneTableFields(j, lay)
	row := d.titleBlock(s, j, 1, 1)
	d.drawDevices(s, d.reorder(fields), d.deviceItems(j), row, 1)
}

func (d *drawing) oneTableFields(j *job, lay string) []string {
	fields := d.deviceFields(j, lay)
	if len(j.controls) > 0 {
		fields = append(fields, "vcw")
	}
	fields = append(append(fields, "chw"), j.cableFields()...)
	return append(fields, d.extras()...)
}

// cableFields are the columns of a loudspeaker's cable: the whole of it, or
// the piece from the loudspeaker before.
func (j *job) cableFields() []string {
	if j.chainLen {
		return []string{"cable", "gauge", "hop"}
	}
	return []string{"cable", "gauge", "length"}
}

// drawSheets draws loudspeakers, amplifiers, controls and cables on a sheet
// each, joined by their tags.
func drawSheets(d *drawing, jobs []*job) {
	j := jobs[0]
	s := d.book.Add(d.say("loudspeakers"))
	row := d.titleBlock(s, j, 1, 1)
	d.drawDevices(s, d.reorder(append(d.deviceFields(j, "flat"), d.extras()...)), d.deviceItems(j), row, 1)
	d.newSheet()
	d.drawAmps(d.book.Add(d.say("amplifiers")), j, 1, 1)
	d.newSheet()
	if len(j.controls) > 0 {
		d.drawControls(d.book.Add(d.say("controls")), j, 1, 1)
	}
	d.drawCables(d.book.Add(d.say("cables")), j, 1, 1)
}

// drawAmps draws the amplifiers: a row each where their channels are alike,
// else a row for every channel. It returns the row below the table.
func (d *drawing) drawAmps(s *book.Sheet, j *job, row, col int) int {
	t := &table{d: d, sheet: s, zoneForm: d.sheetZoneForm()}
	framed := slices.ContainsFunc(j.amps, func(a *amp) bool { return a.frameW > 0 })
	if j.ampRated {
		t.fields = []string{"amp", "model", "chans", "chw"}
		if framed {
			t.fields = append(t.fields, "framew")
		}
		for _, a := range j.amps {
			t.items = append(t.items, item{kind: "amp", job: j, a: a})
		}
		return row + t.draw(row, col)
	}
	t.fields = append(d.outputFields(), "chw")
	if planted(j, "measured-load-differs") {
		t.fields = append(t.fields, "measured")
	}
	for _, a := range j.amps {
		for _, c := range a.channels {
			t.items = append(t.items, item{kind: "channel", job: j, ch: c})
		}
	}
	row += t.draw(row, col)
	if !framed {
		return row
	}
	f := &table{d: d, sheet: s, fields: []string{"amp", "model", "framew"}}
	for _, a := range j.amps {
		f.items = append(f.items, item{kind: "amp", job: j, a: a})
	}
	return row + 2 + f.draw(row+2, col)
}

func (d *drawing) drawControls(s *book.Sheet, j *job, row, col int) int {
	t := &table{d: d, sheet: s, zoneForm: d.sheetZoneForm(), fields: []string{"control", "model", "zone", "room", "vcw"}}
	if slices.ContainsFunc(j.controls, func(c *control) bool { return c.upstream != nil }) {
		t.fields = append(t.fields, "fedfrom")
	}
	for _, c := range j.controls {
		if !c.lost {
			t.items = append(t.items, item{kind: "control", job: j, c: c})
		}
	}
	return row + t.draw(row, col)
}

// drawCables draws one row a cable, or one row a piece where the cable goes
// from loudspeaker to loudspeaker.
func (d *drawing) drawCables(s *book.Sheet, j *job, row, col int) int {
	t := &table{d: d, sheet: s, zoneForm: d.sheetZoneForm(), fields: []string{"cable", "from", "to", "zone", "gauge", "length"}}
	for _, z := range j.zones {
		from := d.outputName(z.channel)
		if !j.chainLen {
			t.items = append(t.items, item{kind: "line", job: j, l: z.line, ends: [2]string{from, z.name}})
			continue
		}
		for _, g := range j.groupsIn(z) {
			t.items = append(t.items, item{kind: "line", job: j, l: z.line, g: g, ends: [2]string{from, g.tags[0]}})
			from = g.tags[0]
		}
	}
	return row + t.draw(row, col)
}
