package generate

import (
	"fmt"
	"slices"
	"strings"

	"lineaudit/samples/book"
)

// item is one row of a table: a thing, or words about things.
type item struct {
	kind  string // device, zone, channel, amp, control, line, type; or any of the rows that are no device
	job   *job
	g     *group
	z     *zone
	c     *control
	ch    *channel
	a     *amp
	l     *line
	k     *kind
	text  string
	hide  bool
	from  int       // of a total: index of the first item it adds up
	wrong float64   // of a total: the watts it states, 0 for the true sum
	ends  [2]string // of a cable: from, to
}

// table is a set of columns over a list of items.
type table struct {
	d          *drawing
	sheet      *book.Sheet
	fields     []string
	items      []item
	zoneForm   int
	carry      map[string]string // field: ditto, merge or blank
	groupHeads bool              // merged headings over the columns
	unitRow    bool              // a row of units below the headings
	transposed bool
	formulas   bool
	headings   []string // as written, filled by draw
	top        int
	left       int
}

// unit returns what belongs behind the heading of a field.
func (t *table) unit(field string) string {
	d := t.d
	switch field {
	case "tap":
		return wattUnit(d.tapWay())
	case "total":
		return "W"
	case "vcw", "chw", "framew":
		return wattUnit(d.ratingWay(field))
	case "length", "hop":
		return d.lengthUnit()
	case "gauge":
		return d.gaugeUnit()
	case "rated":
		return "W"
	case "measured":
		return d.ohm()
	case "height":
		return map[bool]string{true: "ft", false: "m"}[d.feet]
	}
	return ""
}

// at returns the cell of column i in line n of the table, 0 being the heading
// lines, turned over where the table lies on its side.
func (t *table) at(n, i int) (row, col int) {
	if t.transposed {
		return t.top + i, t.left + n
	}
	return t.top + n, t.left + i
}

func (t *table) set(n, i int, c book.Cell) {
	row, col := t.at(n, i)
	t.sheet.Set(row, col, c)
}

// filter puts a filter over a table of n lines if it hides rows: it was left
// on so that one zone does not show.
func (t *table) filter(n int) {
	zone, ok := t.column("zone")
	for i, it := range t.items {
		if !it.hide || it.kind != "device" || !ok {
			continue
		}
		text := t.d.plainZoneName(it.g.room.zone, t.zoneForm)
		t.set(n-len(t.items)+i, zone, book.Cell{Value: text})
		_, t.sheet.FilterCol = t.at(0, zone)
		t.sheet.FilterBy = fmt.Sprintf("x != %q", text)
		t.sheet.FilterAt = [4]int{t.top + n - len(t.items) - 1, t.left, t.top + n - 1, t.left + len(t.fields) - 1}
	}
}

// draw writes the table with its first heading at row top and column left and
// returns the number of lines used.
func (t *table) draw(top, left int) int {
	t.top, t.left = top, left
	if slices.ContainsFunc(t.items, func(it item) bool { return it.hide && it.kind == "device" }) {
		t.carry = nil
	}
	n := t.drawHeads()
	first := n
	for i := range t.items {
		t.drawItem(n, i, first)
		n++
	}
	t.mergeCarried(first)
	for i, f := range t.fields {
		if !t.transposed {
			t.sheet.Widths[left+i] = map[string]float64{"room": 22, "zone": 24, "desc": 22, "notes": 26, "tag": 16}[f]
			if t.sheet.Widths[left+i] == 0 {
				t.sheet.Widths[left+i] = 12
			}
		}
	}
	return n
}

var headLook = book.Style{Bold: true, Fill: "D9E1F2", Border: true, Wrap: true}

var headGroups = map[string]string{"tag": "grp_dev", "model": "grp_dev", "desc": "grp_dev", "qty": "grp_dev", "tap": "grp_dev", "total": "grp_dev", "taps": "grp_dev", "rated": "grp_dev", "status": "grp_dev",
	"room": "grp_where", "zone": "grp_where", "mount": "grp_where", "height": "grp_where",
	"amp": "grp_feed", "channel": "grp_feed", "output": "grp_feed", "chw": "grp_feed", "control": "grp_feed", "vcw": "grp_feed",
	"cable": "grp_cable", "gauge": "grp_cable", "length": "grp_cable", "hop": "grp_cable"}

func (t *table) drawHeads() int {
	n := 0
	if t.groupHeads {
		for i := 0; i < len(t.fields); {
			g, j := headGroups[t.fields[i]], i+1
			for j < len(t.fields) && headGroups[t.fields[j]] == g {
				j++
			}
			if g != "" {
				t.set(0, i, book.Cell{Value: t.d.say(g), Style: book.Style{Bold: true, Center: true, Fill: "BDD7EE", Border: true}})
				t.sheet.Merge(t.top, t.left+i, t.top, t.left+j-1)
			}
			i = j
		}
		n++
	}
	t.headings = t.headings[:0]
	for i, f := range t.fields {
		unit := t.unit(f)
		if t.unitRow {
			unit = ""
		}
		s := t.d.garbleHeader(t.d.header(f, unit))
		t.headings = append(t.headings, s)
		t.set(n, i, book.Cell{Value: s, Style: headLook})
	}
	n++
	if t.unitRow {
		for i, f := range t.fields {
			if u := t.unit(f); u != "" {
				t.set(n, i, book.Cell{Value: "(" + u + ")", Style: book.Style{Italic: true, Border: true}})
			}
		}
		n++
	}
	return n
}

// drawItem writes item i as line n.
func (t *table) drawItem(n, i, first int) {
	it := &t.items[i]
	row, _ := t.at(n, 0)
	if it.hide {
		t.sheet.Hide[row] = true
	}
	switch it.kind {
	case "blank":
		return
	case "title", "note", "legend":
		t.set(n, 0, book.Cell{Value: it.text, Style: book.Style{Bold: it.kind == "title", Italic: it.kind != "title"}})
		t.leftOut(row, it.kind, it.text)
		return
	case "header":
		for c, s := range t.headings {
			t.set(n, c, book.Cell{Value: s, Style: headLook})
		}
		t.leftOut(row, "header", strings.Join(t.headings, " "))
		return
	case "subtotal", "total":
		t.drawTotal(n, i, first)
		t.leftOut(row, it.kind, it.text)
		return
	}
	for c, f := range t.fields {
		if it.kind == "device" || it.kind == "zone" {
			t.d.drawn[f] = true
		}
		if t.carried(i, f) {
			if t.carry[f] == "ditto" {
				t.set(n, c, book.Cell{Value: t.d.ditto()})
			}
			continue
		}
		cell := t.cell(f, it)
		if it.kind == "struck" {
			cell.Style.Strike = true
			cell.Style.Color = "808080"
		}
		if cell.Value != nil || len(cell.Runs) > 0 {
			t.set(n, c, cell)
		}
		row, col := t.at(n, c)
		t.mark(f, it, row, col)
	}
	if it.kind == "struck" || it.kind == "hidden" {
		t.leftOut(row, it.kind, strings.Join(it.g.tags, " "))
		return
	}
	t.markRow(it, n)
}

func (t *table) leftOut(row int, kind, text string) {
	t.d.leftOut(t.sheet.Name, row, kind, text)
}

// drawTotal writes the sums of the items from it.from up to i.
func (t *table) drawTotal(n, i, first int) {
	it := &t.items[i]
	look := book.Style{Bold: true}
	count, watts := 0, 0.0
	for _, x := range t.items[it.from:i] {
		if x.kind != "device" && x.kind != "zone" {
			continue
		}
		groups := []*group{x.g}
		if x.g == nil {
			groups = x.job.groupsIn(x.z)
		}
		for _, g := range groups {
			count += g.counted()
			watts += g.stated()
		}
	}
	if it.wrong != 0 {
		watts = it.wrong
	}
	t.set(n, 0, book.Cell{Value: it.text, Style: look})
	_, single := t.column("qty")
	for c, f := range t.fields {
		var value any
		switch {
		case c == 0:
			continue
		case f == "qty":
			value = count
		case f == "total", f == "tap" && !single && t.summable():
			value = watts
		default:
			continue
		}
		cell := book.Cell{Value: value, Style: look}
		if t.formulas && it.wrong == 0 && it.kind == "subtotal" && t.plainBlock(it.from, i) {
			r1, c1 := t.at(first+it.from, c)
			r2, c2 := t.at(n-1, c)
			cell.Formula = fmt.Sprintf("SUM(%s:%s)", book.At(r1, c1), book.At(r2, c2))
		}
		t.set(n, c, cell)
		row, col := t.at(n, c)
		if f != "qty" {
			t.d.totalAt(it, t.sheet.Name, row, col)
		}
	}
}

// summable tells whether the taps are written as bare numbers that can be
// added in the column.
func (t *table) summable() bool {
	_, has := t.column("total")
	return !has
}

// plainBlock tells whether every item from a to b is a device that counts, as
// a formula over the block would add them all.
func (t *table) plainBlock(a, b int) bool {
	if t.d.noise >= 2 || t.d.tapWay() != 0 || t.d.countWay() != 0 {
		return false
	}
	for _, x := range t.items[a:b] {
		if x.kind != "device" || x.g.status != "installed" || x.g.lowOhm > 0 || x.g.tapV > 0 || x.g.asDate || x.g.absurd || x.g.untold {
			return false
		}
	}
	return true
}

func (t *table) column(field string) (int, bool) {
	for i, f := range t.fields {
		if f == field {
			return i, true
		}
	}
	return 0, false
}

// carried tells whether the cell of field in item i is left to the one above.
func (t *table) carried(i int, field string) bool {
	if t.carry[field] == "" || i == 0 {
		return false
	}
	a, b := t.same(field, &t.items[i-1]), t.same(field, &t.items[i])
	return a != nil && a == b
}

// same returns what a field of an item is about, nil where it has none.
func (t *table) same(field string, it *item) any {
	if it.g == nil || it.kind != "device" {
		return nil
	}
	switch field {
	case "zone":
		return it.g.room.zone
	case "room":
		return it.g.room
	case "control", "vcw":
		if it.g.control != nil {
			return it.g.control
		}
	case "amp":
		return it.g.room.zone.channel.amp
	case "channel", "output", "chw":
		return it.g.room.zone.channel
	case "model":
		return it.g.kind
	}
	return nil
}

func (t *table) mergeCarried(first int) {
	for c, f := range t.fields {
		if t.carry[f] != "merge" {
			continue
		}
		for i := 0; i < len(t.items); {
			j := i + 1
			for j < len(t.items) && t.carried(j, f) {
				j++
			}
			if j > i+1 {
				r1, c1 := t.at(first+i, c)
				r2, c2 := t.at(first+j-1, c)
				t.sheet.Merge(r1, c1, r2, c2)
			}
			i = j
		}
	}
}
