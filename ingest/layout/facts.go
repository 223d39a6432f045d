package layout

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// titleFacts reads a title line, whether it stands in one cell or in several.
func (f *finder) titleFacts(l *line, from, to int) []Fact {
	slots := l.between(from, to)
	if len(slots) == 0 {
		return nil
	}
	if headsBlock(slots) {
		return f.blockFacts(l, slots)
	}
	if len(slots) == len(l.slots) && len(slots) > 1 && f.keyedLine(l) {
		return f.keyedFacts(l)
	}
	if f.numbersCard(l) {
		return f.cardFacts(l)
	}
	var facts []Fact
	for i := 0; i < len(slots); {
		s := slots[i]
		t := s.cell.line()
		if t == "" {
			i++
			continue
		}
		at := f.p.ref(l.n, s.col)
		if key, ok := strings.CutSuffix(t, ":"); ok && i+1 < len(slots) {
			var words []string
			first := slots[i+1]
			j := i + 1
			for j < len(slots) && !strings.HasSuffix(text(slots[j].cell), ":") {
				words = append(words, slots[j].cell.line())
				j++
			}
			if len(words) > 0 {
				facts = append(facts, f.pair(key, strings.Join(words, " "), f.p.ref(l.n, first.col), first.cell.Cell)...)
			}
			i = j
			continue
		}
		if cable, ok := cableBeside(slots[i:]); ok {
			facts = append(facts, f.sectionFacts(t, at, s.cell.Cell)...)
			facts = append(facts, placedAt([]Fact{{Field: vocabulary.CableType, Key: TitledCable, Text: cable}}, f.p.ref(l.n, slots[i+1].col), slots[i+1].cell.Cell)...)
			break
		}
		if title, cable, ok := cutCable(t); ok && i+1 == len(slots) {
			facts = append(facts, f.sectionFacts(title, at, s.cell.Cell)...)
			facts = append(facts, placedAt([]Fact{{Field: vocabulary.CableType, Key: TitledCable, Text: cable}}, at, s.cell.Cell)...)
			break
		}
		var words strings.Builder
		words.WriteString(t)
		j := i + 1
		for j < len(slots) && !strings.HasSuffix(text(slots[j].cell), ":") && !strings.Contains(t, ":") && !namesFeed(slots[j]) {
			words.WriteString(" " + slots[j].cell.line())
			j++
		}
		facts = append(facts, f.sectionFacts(words.String(), at, s.cell.Cell)...)
		i = j
	}
	return facts
}

// namesFeed reports whether a further cell of a title names by a word what feeds it, or its control, and is read by
// itself: "Zone 1 - Jetty | Amplifier VA, channel 1 (120 W)".
func namesFeed(s slot) bool {
	if s.cell.Kind != grid.String {
		return false
	}
	switch sectionField(s.cell.line()) {
	case vocabulary.Amplifier, vocabulary.Channel, vocabulary.Control:
		return true
	}
	return false
}

// placeAndFeed reports whether a line is a title and, in cells of their own, what feeds it.
func placeAndFeed(slots []slot) bool {
	return len(slots) > 1 && len(slots) <= mostTitles && slots[0].cell.Kind == grid.String && !namesFeed(slots[0]) &&
		!slices.ContainsFunc(slots[1:], func(s slot) bool { return !namesFeed(s) })
}

// fewestOfBlock is the fewest cells of a line that heads a block by more than a title.
const fewestOfBlock = 4

// headsBlock reports whether a line names an output, a line or an amplifier, and behind it a place, or
// pairs of keys and values: "LINE 2 | Boat halls | Measured | 252 ohm | Amp rating | 60 W", "AMP 1 | Rating | 4 x 60 W".
func headsBlock(slots []slot) bool {
	if len(slots) < fewestOfBlock && !ratedBeside(slots) || slots[0].cell.Kind != grid.String {
		return false
	}
	t := slots[0].cell.line()
	if !feeders[sectionField(t)] || !anyDigit(t) || len(strings.Fields(t)) > 3 {
		return false
	}
	for i := len(slots) - 2; i > 0; i -= 2 { // keys, from the right
		if key := slots[i].cell; key.Kind != grid.String || lookOf(key)&(lookNumber|lookWatts) != 0 {
			return false
		}
	}
	return true
}

// loadFields are what hangs on an output rather than what that gives.
var loadFields = [vocabulary.Fields]bool{vocabulary.Load: true, vocabulary.TotalWatts: true, vocabulary.MeasuredLoad: true, vocabulary.Measured: true}

// ratedBeside reports whether a line is a name, a word and a rating: "AMP 1 | Rating | 4 x 60 W".
func ratedBeside(slots []slot) bool {
	return len(slots) == 3 && slots[1].cell.Kind == grid.String && !anyDigit(slots[1].cell.Text) && lookOf(slots[2].cell)&(lookWatts|lookRating) != 0
}

// blockFacts reads such a line. What the output gives goes with its name.
func (f *finder) blockFacts(l *line, slots []slot) []Fact {
	head, rest := slots[0], slots[1:]
	facts := f.sectionFacts(head.cell.line(), f.p.ref(l.n, head.col), head.cell.Cell)
	if len(rest)%2 == 1 {
		facts = append(facts, Fact{Text: rest[0].cell.line(), At: f.p.ref(l.n, rest[0].col), Cell: rest[0].cell.Cell})
		rest = rest[1:]
	}
	for i := 0; i+1 < len(rest); i += 2 {
		value := rest[i+1]
		for _, fact := range f.pair(strings.TrimRight(rest[i].cell.line(), " :"), value.cell.line(), f.p.ref(l.n, value.col), value.cell.Cell) {
			if rated := ratedBeside(slots) && !loadFields[fact.Field] && !slices.Contains(f.s.Concepts(fact.Key), "control"); rated || fact.Field == vocabulary.ChannelWatts || fact.Field == vocabulary.FrameWatts {
				facts[0].Text += " - " + fact.Text
			}
			facts = append(facts, fact)
		}
	}
	return facts
}

// lineFacts reads a line outside all tables. It returns the facts and the
// slots that state none.
func (f *finder) lineFacts(l *line, slots []slot) (facts []Fact, rest []slot) {
	for i := 0; i < len(slots); i++ {
		s := slots[i]
		t := s.cell.line()
		at := f.p.ref(l.n, s.col)
		if t == "" || isPivotWord(t) { // "Number of heads by tap, 100 V lines" begins like the value of a pivot table
			facts = append(facts, f.voltsIn(t, at, s.cell.Cell)...)
			rest = append(rest, s)
			continue
		}
		beside := i+1 < len(slots) && f.isKey(s.cell, strings.HasSuffix(t, ":"))
		if !beside && isNoteText(t) && !reKey.MatchString(t) {
			facts = append(facts, f.voltsIn(t, at, s.cell.Cell)...)
			rest = append(rest, s)
			continue
		}
		if kv := f.keyValues(t, at, s.cell.Cell); len(kv) > 0 && s.cell.Kind == grid.String {
			facts = append(facts, kv...)
			continue
		}
		if beside && slots[i+1].col-f.lastColumn(l.n, s.col) <= 3 {
			v := slots[i+1]
			value := v.cell.line()
			if figuresBeside(slots[i+1:]) {
				rest = append(rest, s)
				continue // figures of several things, told apart by what stands above or below them
			}
			if value != "" && !strings.HasSuffix(value, ":") {
				key := strings.TrimRight(t, ": ")
				i++
				// A unit or a second part beside the value belongs to it.
				for i+1 < len(slots) && slots[i+1].col == slots[i].col+1 && len(f.voltsIn(slots[i+1].cell.line(), at, slots[i+1].cell.Cell)) == 0 && !f.isKey(slots[i+1].cell, strings.HasSuffix(text(slots[i+1].cell), ":")) {
					value += " " + slots[i+1].cell.line()
					i++
				}
				facts = append(facts, f.pair(key, value, f.p.ref(l.n, v.col), v.cell.Cell)...)
				continue
			}
		}
		if i+1 < len(slots) && slots[i+1].col == s.col+1 && s.cell.Kind == grid.String {
			// "CH1" and "120 W @ 70 V": a part of the system and its rating.
			if sect := sectionField(t); sect != vocabulary.Unknown && lookOf(slots[i+1].cell)&(lookWatts|lookRating|lookVolts) != 0 {
				v := slots[i+1]
				facts = append(facts, Fact{Field: sect, Text: v.cell.line(), Key: t, At: f.p.ref(l.n, v.col), Cell: v.cell.Cell})
				i++
				continue
			}
		}
		if s.cell.Kind == grid.String && len(t) <= maxText {
			facts = append(facts, f.sectionFacts(t, at, s.cell.Cell)...)
			continue
		}
		rest = append(rest, s)
	}
	return facts, rest
}

// figuresBeside reports whether slots begin with two figures or more in neighbouring cells.
func figuresBeside(slots []slot) bool {
	return len(slots) > 1 && slots[1].col == slots[0].col+1 && lookOf(slots[0].cell)&(lookNumber|lookWatts) != 0 && lookOf(slots[1].cell)&(lookNumber|lookWatts) != 0
}

// isKey reports whether a cell is the key of the value beside it.
func (f *finder) isKey(c cell, colon bool) bool {
	if c.Kind != grid.String {
		return false
	}
	if colon {
		return true
	}
	t := c.line()
	if len(t) > 40 || anyDigit(t) {
		return false
	}
	return f.s.Header(t).Best().Score >= 0.75
}

// voltsIn finds a line voltage in prose: "all taps at 100 V".
func (f *finder) voltsIn(t string, at schedule.Ref, c *grid.Cell) []Fact {
	m := reAnyVolts.FindStringSubmatch(t)
	if m == nil || reAnyVolts.FindAllString(t, 3) != nil && len(reAnyVolts.FindAllString(t, 3)) > 1 {
		return nil
	}
	return []Fact{{Field: vocabulary.LineVoltage, Text: strings.TrimSpace(m[0]), Key: "", At: at, Cell: c}}
}
