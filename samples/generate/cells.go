package generate

import (
	"fmt"
	"math"
	"strings"

	"lineaudit/samples/book"
)

// about fills in what an item says through its parts: a device is in a zone,
// a zone on a channel.
func (it *item) about() (z *zone, c *control, ch *channel, l *line) {
	z, c, ch, l = it.z, it.c, it.ch, it.l
	if it.g != nil {
		z, c = it.g.room.zone, it.g.control
	}
	if it.c != nil && z == nil {
		z = it.c.zone
	}
	if it.l != nil && z == nil {
		z = it.l.zone
	}
	if z != nil {
		if ch == nil {
			ch = z.channel
		}
		if l == nil {
			l = z.line
		}
		if it.kind == "zone" && c == nil {
			if all := it.job.controlsIn(z); len(all) == 1 {
				c = all[0]
			}
		}
	}
	return z, c, ch, l
}

// cell writes one field of an item.
func (t *table) cell(field string, it *item) book.Cell {
	d := t.d
	z, c, ch, l := it.about()
	text := func(s string) book.Cell {
		if s == "" {
			return book.Cell{}
		}
		return book.Cell{Value: s}
	}
	switch field {
	case "job":
		return text(it.job.number)
	case "site":
		return text(it.job.site)
	case "volts":
		return voltsCell(it.job.lineV)
	case "tag", "desc", "qty", "tap", "total", "room", "status", "taps", "rated", "mount", "height", "price", "spl", "maker":
		return t.deviceCell(field, it)
	case "model":
		switch it.kind {
		case "amp", "channel":
			if it.a != nil {
				return text(it.a.model)
			}
			return text(it.ch.amp.model)
		case "control":
			return text(it.c.model)
		}
		return t.deviceCell(field, it)
	case "notes":
		if d.chance(12) {
			return text(d.say("note"))
		}
	case "zone":
		if z != nil {
			return text(d.zoneName(z, t.zoneForm))
		}
	case "control", "vcw", "vcv", "fedfrom":
		return t.controlCell(field, it, c)
	case "amp":
		if it.a != nil {
			return text(d.name(it.a, it.a.tag))
		}
		if ch != nil {
			return text(d.name(ch.amp, ch.amp.tag))
		}
	case "channel":
		if ch != nil {
			return text(d.name(ch, ch.name))
		}
	case "output":
		if ch != nil {
			return text(d.outputName(ch))
		}
	case "chw":
		return t.channelRating(it, ch)
	case "measured":
		return t.measuredCell(it)
	case "framew":
		if it.a != nil && it.a.frameW > 0 {
			return d.ratingCell("framew", it.a.frameW, 0, it.job.lineV)
		}
	case "chans":
		return book.Cell{Value: len(it.a.channels)}
	case "cable", "gauge", "length", "hop", "material", "from", "to":
		return t.cableCell(field, it, l)
	}
	return book.Cell{}
}

func (t *table) channelRating(it *item, ch *channel) book.Cell {
	switch {
	case ch == nil && it.a != nil:
		ch = it.a.channels[0]
	case ch == nil:
		return book.Cell{}
	}
	if ch.hidden {
		return book.Cell{}
	}
	return t.d.ratingCell("chw", ch.ratedW, 0, it.job.lineV)
}

// measuredCell writes what a meter read on a channel: the impedance of its
// load, or of far more than its load where a fault is planted.
func (t *table) measuredCell(it *item) book.Cell {
	load := it.job.channelLoad(it.ch)
	if load == 0 {
		return book.Cell{}
	}
	ohm := it.job.lineV * it.job.lineV / load
	if it.ch.misread {
		ohm *= misreadBy
	}
	return t.d.number(math.Round(ohm*10) / 10)
}

func (t *table) deviceCell(field string, it *item) book.Cell {
	d, g := t.d, it.g
	if it.kind == "zone" {
		g = it.job.groupsIn(it.z)[0]
	}
	if it.kind == "type" {
		switch field {
		case "model":
			return book.Cell{Value: it.k.model}
		case "desc":
			return book.Cell{Value: d.say(it.k.what)}
		case "taps":
			return book.Cell{Value: d.tapList(it.k)}
		case "tap":
			return d.tapCell(it.g, it.job.lineV)
		}
		return book.Cell{}
	}
	if field == "room" && it.c != nil {
		return book.Cell{Value: it.c.room.name}
	}
	if g == nil {
		return book.Cell{}
	}
	switch field {
	case "tag":
		if it.kind == "zone" {
			return book.Cell{}
		}
		return book.Cell{Value: d.tagText(g)}
	case "model":
		return book.Cell{Value: d.garble(g.kind.model)}
	case "desc":
		return book.Cell{Value: d.garble(d.say(g.kind.what))}
	case "qty":
		return d.countCell(g.count)
	case "tap":
		cell := d.tapCell(g, it.job.lineV)
		if text, ok := cell.Value.(string); ok && d.noise >= 3 && !d.plain && it.kind == "device" && d.chance(4) {
			old := g.kind.taps[0]
			if old == g.tapW {
				old = g.kind.taps[1]
			}
			cell = book.Cell{Runs: []book.Run{{Text: d.num(old) + " W", Strike: true}, {Text: " " + text}}}
		}
		return cell
	case "total":
		if g.lowOhm > 0 || g.untold || g.status != "installed" && d.chance(50) {
			return book.Cell{}
		}
		return d.number(float64(g.count) * g.tapW)
	case "room":
		return book.Cell{Value: d.garble(g.room.name)}
	case "status":
		if g.status == "installed" {
			return book.Cell{Value: d.say("installed")}
		}
		return book.Cell{Value: d.say(g.status)}
	case "taps":
		return book.Cell{Value: d.tapList(g.kind)}
	case "rated":
		return d.number(g.kind.taps[0])
	case "mount":
		return book.Cell{Value: d.say("m_" + g.kind.what)}
	case "height":
		return book.Cell{Value: map[bool]any{true: 9 + g.room.zone.n%4, false: 2.8 + float64(g.room.zone.n%4)*0.5}[d.feet]}
	case "price":
		return book.Cell{Value: 40 + float64(len(g.kind.model)*7%50) + 0.5, Style: book.Style{Format: "0.00"}}
	case "spl":
		return book.Cell{Value: 75 + g.room.zone.n%8}
	case "maker":
		return book.Cell{Value: "Norrick & Hale"}
	}
	return book.Cell{}
}

// tagText writes the tags of a group: one, or a range.
func (h *hand) tagText(g *group) string {
	first, last := g.tags[0], g.tags[len(g.tags)-1]
	if first == last {
		return first
	}
	switch h.way("tags", 0, 0, 1) {
	case 1:
		return first + " - " + last
	case 2:
		return first + ".." + last
	}
	return first + "-" + last
}

func (t *table) controlCell(field string, it *item, c *control) book.Cell {
	if c == nil {
		if field == "control" && t.d.noise >= 1 && t.d.chance(40) {
			return book.Cell{Value: t.d.none()}
		}
		return book.Cell{}
	}
	switch field {
	case "control":
		return book.Cell{Value: t.d.name(c, c.tag)}
	case "vcw":
		return t.d.ratingCell("vcw", c.ratedW, c.ratedV, it.job.lineV)
	case "vcv":
		if c.ratedV > 0 {
			return voltsCell(c.ratedV)
		}
		return voltsCell(it.job.lineV)
	case "fedfrom":
		if c.upstream != nil {
			return book.Cell{Value: c.upstream.tag}
		}
		return book.Cell{Value: t.d.outputName(c.zone.channel)}
	}
	return book.Cell{}
}

func (t *table) cableCell(field string, it *item, l *line) book.Cell {
	if l == nil {
		return book.Cell{}
	}
	switch field {
	case "cable":
		return book.Cell{Value: l.tag}
	case "gauge":
		return t.d.gaugeCell(l)
	case "length", "hop":
		if it.g != nil && it.g.step != nil {
			return t.d.lengthCell(it.g.step.written, l.inFeet)
		}
		return t.d.lengthCell(l.written, l.inFeet)
	case "material":
		if l.material == "copper" {
			return book.Cell{Value: "Cu"}
		}
		return book.Cell{Value: "CCA"}
	case "from":
		return book.Cell{Value: it.ends[0]}
	case "to":
		return book.Cell{Value: it.ends[1]}
	}
	return book.Cell{}
}

// mark remembers where the numbers that findings rest on were first written.
func (t *table) mark(field string, it *item, row, col int) {
	_, c, ch, l := it.about()
	at := where{t.sheet.Name, row, col, t.rowsAt(row, col)}
	switch {
	case it.kind == "struck" || it.kind == "hidden":
	case field == "control" && c != nil && it.kind == "device" && !c.tagAt.drawn():
		c.tagAt = at
	case field == "vcw" && c != nil && !c.row.drawn():
		c.row = at
	case field == "chw" && ch != nil && !ch.row.drawn() && !ch.hidden:
		ch.row = at
	case field == "chw" && ch == nil && it.a != nil:
		for _, ch := range it.a.channels {
			if !ch.row.drawn() {
				ch.row = at
			}
		}
	case field == "measured" && it.ch != nil:
		it.ch.measuredAt = at
	case field == "framew" && it.a != nil && it.a.frameW > 0:
		it.a.row = at
	case field == "amp" && it.a != nil && it.a.model != "" && t.has("model"):
		it.a.modelDrawn = true
	case (field == "length" || field == "hop") && l != nil && !l.row.drawn():
		l.row = at
	case field == "cable" && l != nil:
		l.tagDrawn = true
	case field == "tap" && it.kind == "device":
		it.g.row = at
	case field == "tap" && it.kind == "zone":
		it.job.groupsIn(it.z)[0].row = at
	}
}

func (t *table) has(field string) bool {
	_, ok := t.column(field)
	return ok
}

// rowsAt names the row of a cell, or its column where the table lies on its side.
func (t *table) rowsAt(row, col int) string {
	if t.transposed {
		return book.Letter(col)
	}
	return fmt.Sprint(row)
}

// markRow completes what mark noted once the whole line is drawn.
func (t *table) markRow(it *item, n int) {
	row, col := t.at(n, 0)
	if it.kind == "device" && !it.g.row.drawn() {
		it.g.row = where{t.sheet.Name, row, col, t.rowsAt(row, col)}
	}
	if it.kind == "amp" && strings.TrimSpace(it.a.tag) != "" && t.has("model") {
		it.a.modelDrawn = true
	}
}
