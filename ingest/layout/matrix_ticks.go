package layout

import (
	"slices"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// Ticks across: the headers of neighbouring columns are values of one field -
// zones, lines, types, states - and each row ticks the one that is its own.

// fewestTicked is the fewest rows that make such a table.
const fewestTicked = 3

// ticksAcross finds such columns, nil if there are none.
func (f *finder) ticksAcross(cols []*heading, body []line) *crosstab {
	for from := 0; from < len(cols); from++ {
		to := from
		for to < len(cols) && cols[to].tickable() {
			to++
		}
		if to-from < 2 {
			continue
		}
		x := &crosstab{marks: true}
		for i := from; i < to; i++ {
			x.cols = append(x.cols, i)
		}
		if x.field = f.tickedField(cols[from:to]); x.field != vocabulary.Unknown && oneTickEach(cols[from:to], body) {
			f.crossedLabels(x, cols)
			return x
		}
		from = to
	}
	return nil
}

// tickable reports whether a column has header words and nothing but ticks under them.
func (h *heading) tickable() bool {
	if len(h.parts) == 0 || h.forced != vocabulary.Unknown || h.cells.cells == 0 {
		return false
	}
	for i, k := range h.cells.looks {
		if k&lookYes == 0 && h.cells.texts[i] != "1" {
			return false
		}
	}
	return true
}

// oneTickEach reports whether nearly every line that ticks any of the columns ticks
// exactly one, and most lines do.
func oneTickEach(cols []*heading, body []line) bool {
	one, ticked := 0, 0
	for i := range body {
		ticks := 0
		for _, h := range cols {
			if isTick(body[i].at(h.col)) {
				ticks++
			}
		}
		if ticks > 0 {
			ticked++
		}
		if ticks == 1 {
			one++
		}
	}
	return one >= fewestTicked && 10*one >= 9*ticked && 3*one >= 2*len(body)
}

// tickedField is the field of which all headers are values; Unknown when they
// are not, as "Override" and "Music" are things of their own.
func (f *finder) tickedField(cols []*heading) vocabulary.Field {
	field := vocabulary.Unknown
	for _, h := range cols {
		label := h.parts[len(h.parts)-1]
		of := valueField(label)
		if of == vocabulary.Unknown && len(h.parts) > 1 {
			over := f.s.Header(h.parts[0]).Best()
			if of = placeOrType(over.Field); feeders[over.Field] && over.Score >= headerScore {
				of = over.Field // "Which amplifier" over "WET (240 W)" and "DRY (120 W)"
			}
		}
		if best := f.s.Header(label).Best(); of == vocabulary.Unknown && !strings.ContainsAny(label, "%€$£?") && (best.Score < headerScore || placeNames[best.Field]) {
			of = vocabulary.Zone // a name, of a place most likely
		}
		if of == vocabulary.Unknown || field != vocabulary.Unknown && of != field {
			return vocabulary.Unknown
		}
		field = of
	}
	return field
}

// placeNames are the fields that words such as "Hall" may stand for, which are names of places over ticks.
var placeNames = [vocabulary.Fields]bool{vocabulary.Zone: true, vocabulary.Room: true, vocabulary.Floor: true, vocabulary.Building: true}

// valueField is the field of which a header is a value: "Zone 3", "Line B", "horn", "ceiling", "spare".
func valueField(label string) vocabulary.Field {
	if field := sectionField(label); strings.ContainsAny(label, "0123456789") || reLettered.MatchString(label) {
		if slices.Contains(tickedFields, field) {
			return field
		}
	}
	k := lookText(label)
	switch {
	case k&lookDevice != 0:
		return vocabulary.Model
	case classOf(label)&classStatus != 0:
		return vocabulary.Status
	case classOf(label)&classMounting != 0:
		return vocabulary.Mounting
	case lineVoltsWord(label):
		return vocabulary.LineVoltage
	}
	return vocabulary.Unknown
}

// tickedFields are the fields of places and outputs of which a device has one.
var tickedFields = []vocabulary.Field{vocabulary.Zone, vocabulary.Circuit, vocabulary.Channel, vocabulary.Room, vocabulary.Floor, vocabulary.Building}

// overTicks reports whether a column holds ticks and nothing else in some lines.
func overTicks(col int, lines []line) bool {
	ticks := 0
	for i := range lines {
		switch c := lines[i].at(col); {
		case c.blank():
		case lookOf(c)&lookYes != 0 && c.says().read().class&classNo == 0:
			ticks++
		default:
			return false
		}
	}
	return ticks > 0
}

// allOverTicks reports whether all cells stand over columns of ticks.
func allOverTicks(slots []slot, below []line) bool {
	return !slices.ContainsFunc(slots, func(s slot) bool { return !overTicks(s.col, below) })
}

// tickLabels counts the cells of a strip that stand over nothing but ticks:
// labels rather than data, whatever figures they hold.
func tickLabels(s *strip, below []line) int {
	if len(below) > 1 && figuresBehindLabel(below[0].between(s.from, s.to)) { // "Power W | 120 | 60" says something of the labels
		below = below[1:]
	}
	labels := 0
	for _, sl := range s.slots {
		if overTicks(sl.col, below) && valueField(sl.cell.line()) != vocabulary.Unknown {
			labels++
		}
	}
	if labels < 2 {
		return 0
	}
	return labels
}

// figuresBehindLabel reports whether cells are figures or powers, but for words in front of them.
func figuresBehindLabel(slots []slot) bool {
	return len(slots) > 2 && slots[0].cell.Kind == grid.String && !anyDigit(slots[0].cell.Text) &&
		!slices.ContainsFunc(slots[1:], func(s slot) bool { return lookOf(s.cell)&(lookNumber|lookWatts|lookMissing) == 0 })
}

// ticksFeed reports whether the ticks of a table tell which output feeds which place, and count nothing:
// nothing else in its rows, beside columns of those fields, is a loudspeaker.
func (x *crosstab) ticksFeed(cols []*heading, beside []vocabulary.Field) bool {
	if x.field != vocabulary.Channel || x.power != vocabulary.Unknown || slices.ContainsFunc(beside, func(f vocabulary.Field) bool { return ofOneLoudspeaker[f] }) {
		return false
	}
	if !slices.Contains(beside, vocabulary.Zone) && !slices.Contains(beside, vocabulary.Room) {
		return false
	}
	return !slices.ContainsFunc(x.cols, func(i int) bool { return cols[i].cells.share(lookYes) < 1 })
}

// ofOneLoudspeaker are the fields that say what a loudspeaker is, what it is set to or how many there are.
var ofOneLoudspeaker = [vocabulary.Fields]bool{vocabulary.Tag: true, vocabulary.Model: true, vocabulary.Describe: true, vocabulary.Quantity: true, vocabulary.Tap: true, vocabulary.TotalWatts: true,
	vocabulary.Kind: true, vocabulary.Mounting: true}
