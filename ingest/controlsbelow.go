package ingest

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Below a list there may be a short one of its controls without a header: "LINE ATTENUATORS" over "AT1 |
// 35 W | Shop". No other row need name them.

// headsControls reports whether the cells of a line are one title for controls.
func headsControls(cells []spoken) bool {
	return len(cells) == 1 && !anyDigit(cells[0].text) && countWords(cells[0].text) <= fewWords && vocabulary.DeviceIn(cells[0].text) == vocabulary.ControlDevice
}

// findControlsBelow finds the lines of such lists: a tag, a power and something else, right below a title for
// controls. No sentence about an amplifier stands in them.
func (b *builder) findControlsBelow() {
	headed := false
	for i := 0; i < len(b.spoken); {
		b.opts.watch.Step()
		n := i + 1
		for n < len(b.spoken) && b.spoken[n].at.Row == b.spoken[i].at.Row && b.spoken[n].at.Sheet() == b.spoken[i].at.Sheet() {
			n++
		}
		cells := b.spoken[i:n]
		beside := i > 0 && b.spoken[i-1].at.Sheet() == cells[0].at.Sheet() && cells[0].at.Row <= b.spoken[i-1].at.Row+1
		if line := controlLine(cells); headed && beside && line != nil {
			b.controlLines = append(b.controlLines, line)
		} else if line := placeLine(cells); headed && beside && line != nil {
			b.controlPlaces = append(b.controlPlaces, line)
		} else {
			headed = headsControls(cells)
		}
		i = n
	}
	if len(b.controlLines)+len(b.controlPlaces) == 0 {
		return
	}
	rows := make(map[schedule.Ref]bool)
	for _, line := range slices.Concat(b.controlLines, b.controlPlaces) {
		rows[rowOf(line[0].at)] = true
	}
	b.said = slices.DeleteFunc(b.said, func(s said) bool { return rows[rowOf(s.source.At)] })
}

// controlLine are the cells of a line that begins with a tag and holds a power and a third cell, nil for others.
func controlLine(cells []spoken) []spoken {
	cells = withKeyApart(cells)
	powered := func(c spoken) bool { return onlyWatts(c.text) != "" }
	if len(cells) < 3 || !isTagInParts(cells[0].text) || len(cells[0].text) > longestTag || !slices.ContainsFunc(cells[1:], powered) {
		return nil
	}
	return cells
}

// placeLine are the two cells of a line that is words and a power, "Riding hall | 60 W": a control without a tag, by the
// place that it serves. It is nil for others.
func placeLine(cells []spoken) []spoken {
	cells = withKeyApart(cells)
	if len(cells) != 2 || onlyWatts(cells[1].text) == "" || onlyWatts(cells[0].text) != "" || isTag(cells[0].text) {
		return nil
	}
	return cells
}

// ratedFirst and ratedLast are the only cell of a line that is a tag, a power and a place, in either order.
var (
	ratedFirst = regexp.MustCompile(`(?i)^(\S+(?: (?:\d{1,3}|(?-i:\p{Lu})))??)[\s(,:=–-]+(\d+(?:[.,]\d+)?\s?w(?:att)?s?)\)?\s*[,:=–-]?\s*(\pL.*)$`)
	ratedLast  = regexp.MustCompile(`(?i)^(\S+(?: (?:\d{1,3}|(?-i:\p{Lu})))?)[\s(,:=–-]+(\pL[^0-9]*?)\s*[(,:=–-]?\s*(\d+(?:[.,]\d+)?\s?w(?:att)?s?)\)?$`)
)

// withKeyApart parts the first cell of a line in two where it was read as a key, "AT1: 35 W", and the only one in a tag,
// a power and a place: "AT1 (35 W) shop", "AT1 shop, 35 W".
func withKeyApart(cells []spoken) []spoken {
	if len(cells) == 1 && mayStateWatts(cells[0].text) && len(cells[0].text) <= longestTitle {
		for _, form := range []*regexp.Regexp{ratedFirst, ratedLast} {
			m := form.FindStringSubmatch(strings.TrimRight(cells[0].text, "."))
			if m == nil {
				continue
			}
			m[1] = strings.TrimRight(m[1], "(,:=–-")
			if !isTagInParts(m[1]) {
				continue
			}
			out := make([]spoken, 0, len(m)-1)
			for _, text := range m[1:] {
				out = append(out, spoken{at: cells[0].at, text: text})
			}
			return out
		}
	}
	if tag, value, ok := strings.Cut(cells[0].text, ": "); ok {
		cells = slices.Clone(cells)
		cells[0].text = tag
		cells = slices.Insert(cells, 1, spoken{at: cells[0].at, text: value})
	}
	return cells
}

// isTagInParts reports whether a text is a tag, with a space before its last letter maybe: "AT1", "AT A".
func isTagInParts(text string) bool {
	stem, letter, _ := strings.Cut(text, " ")
	return isTag(text) || len(letter) == 1 && isTag(stem+"-"+letter)
}

// onlyWatts is the power that a text is, with a word or two beside it: "35 W max"; "" if it is none.
func onlyWatts(text string) string {
	if m := wattsIn.FindStringSubmatch(text); m != nil && len(m[0])+6 >= len(text) {
		return m[1]
	}
	return ""
}

// controlsBelow adds the controls of such lines that name a place of loudspeakers to those of the notes, and asks about others.
func (b *builder) controlsBelow() {
	for _, line := range b.controlLines {
		tag := line[0].text
		known := b.dir.controls[join.Key(tag)]
		if !b.isFree(tag) && notation.KeyOf(tag).Kind != notation.KeyControl && !known {
			continue
		}
		c := carried{controls: []string{tag}}
		for _, cell := range line[1:] {
			s := seen{text: cell.text, source: schedule.Source{At: cell.at, Written: cell.text, How: schedule.FromTitle}}
			if w := onlyWatts(cell.text); w != "" && !c.watts.had() {
				c.watts = s
				c.watts.text = w
			} else if place := b.placesIn(s, cell.text); place.had() && !c.at.had() {
				c.at = place
			}
		}
		if !c.at.had() && known {
			continue // rows tell what hangs behind it
		}
		if !c.at.had() {
			b.ask(line[0].at, "control", "“"+tag+"”: which loudspeakers hang behind this control?", "the load of this control")
			continue
		}
		b.controlNames.Add(tag, 0)
		b.carried = append(b.carried, c)
	}
	for _, line := range b.controlPlaces {
		b.controlOfPlace(line)
	}
}

// controlOfPlace adds the control that a line names by its place alone, and asks where no loudspeakers are there.
func (b *builder) controlOfPlace(line []spoken) {
	s := seen{text: line[1].text, source: schedule.Source{At: line[1].at, Written: line[1].text, How: schedule.FromTitle}}
	place := b.placesIn(s, line[0].text)
	if !place.had() {
		b.ask(line[0].at, "control", "“"+short(line[0].text)+"”: which loudspeakers hang behind this control?", "the load of this control")
		return
	}
	c := carried{controls: []string{"control (" + tidy(b.placeNamed(&place)) + ")"}, unnamed: true, watts: s, at: place}
	c.watts.text = onlyWatts(s.text)
	b.controlNames.Add(c.controls[0], 0)
	b.carried = append(b.carried, c)
}
