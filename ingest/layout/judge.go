package layout

import (
	"cmp"
	"fmt"
	"path"
	"slices"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// powerFields are the fields of which a schedule has at least one.
var powerFields = []vocabulary.Field{vocabulary.Tap, vocabulary.TotalWatts, vocabulary.RatedWatts, vocabulary.TapList, vocabulary.ChannelWatts,
	vocabulary.FrameWatts, vocabulary.ControlWatts, vocabulary.Load, vocabulary.MeasuredLoad, vocabulary.Measured}

// A case is what speaks for a table being part of a schedule.
type weighed struct {
	score   int  // above 1: it is about loudspeakers, their lines, amplifiers or controls
	power   bool // it states powers
	needs   bool // it has what a table of its kind must have
	counted bool // it counts loudspeakers
	bare    bool // it lists loudspeakers of a line, without a power
	foreign bool // it speaks of lamps, pumps or the like
	trade   bool // by its powers per metre, or the mains, it is of another trade
}

// judge decides which tables are parts of a schedule, marks the others, and
// returns the nearest miss when none is.
func judge(book *grid.Book, sheets []*sheetReader, s *vocabulary.Scorer) string {
	name := strings.TrimSuffix(path.Base(book.File), path.Ext(book.File))
	about := aboutWords(s, name)
	any, about2, powered, power, tables, foreign := false, false, false, false, 0, false
	cases := map[*placed]weighed{}
	for _, sr := range sheets {
		if sr.form != nil {
			c := weigh(sr.form, sr, s)
			any = any || c.needs && c.power && c.score+about >= 2
			tables++
		}
		for _, t := range sr.tables {
			tables++
			c := weigh(t.t, sr, s)
			c.score += about
			if c.trade && about == 0 {
				c.foreign, c.needs = true, false
			}
			cases[t] = c
			power = power || c.power
			foreign = foreign || c.foreign
			any = any || c.needs && c.score >= 5 && c.counted || c.bare && c.score >= 4
			about2 = about2 || c.needs && c.score >= 2
			powered = powered || c.needs && c.power && c.score >= 1
			any = any || c.needs && c.power && c.score >= 2
		}
	}
	any = (any || about2 && powered) && speaksOfTrade(sheets, name, s)
	have := map[vocabulary.Field]bool{}
	for _, sr := range sheets {
		for _, t := range sr.tables {
			c := cases[t]
			for _, col := range t.t.Columns {
				if col.Field != vocabulary.Unknown && col.Field != vocabulary.Ignored {
					have[col.Field] = true
				}
			}
			switch {
			case !any:
				t.drop = "part of a table, but the file is no schedule"
			case !c.needs && !c.bare:
				t.drop = "a table with nothing that an audit needs"
			case c.foreign && c.score < 2 && !ratesAmplifiers(t.t):
				t.drop = "a table of other devices"
			case c.score < 1 && !c.power && t.t.Kind != Cables && !equipmentInWords(t.t):
				t.drop = "a table with nothing that an audit needs"
			}
		}
	}
	if any {
		return ""
	}
	for _, sr := range sheets {
		sr.form, sr.inForm = nil, nil
	}
	var words []string
	for f := range have {
		words = append(words, f.String())
	}
	slices.Sort(words)
	found := ""
	if len(words) > 0 {
		found = " (found: " + strings.Join(words, ", ") + ")"
	}
	switch {
	case tables == 0:
		return "no table with a header row of loudspeakers, zones, amplifiers, controls or cables"
	case foreign && power:
		return "watts, but of other devices than loudspeakers" + found
	case !power:
		return "no column of taps or watts" + found
	}
	return fmt.Sprintf("watts, but no word of loudspeakers, zones, amplifiers or volume controls%s", found)
}

// aboutWords counts the words of a name that tell of loudspeakers.
func aboutWords(s *vocabulary.Scorer, text string) int {
	n := 0
	for _, c := range s.Concepts(text) {
		switch c {
		case "speaker", "amplifier", "paging", "control", "tap":
			n = 2
		}
	}
	return n
}

// weigh collects what speaks for one table.
func weigh(t *Table, sr *sheetReader, s *vocabulary.Scorer) weighed {
	var c weighed
	have := map[vocabulary.Field]*Column{}
	for i := range t.Columns {
		if f := t.Columns[i].Field; f != vocabulary.Unknown && have[f] == nil {
			have[f] = &t.Columns[i]
		}
	}
	c.needs = true
	if t.Matrix && have[vocabulary.Zone] == nil {
		have[vocabulary.Zone] = cmp.Or(have[vocabulary.Circuit], have[vocabulary.Amplifier]) // what stands across
	}
	for _, group := range needs[t.Kind] {
		if !slices.ContainsFunc(group, func(f vocabulary.Field) bool { return have[f] != nil }) {
			c.needs = false
		}
	}
	for _, f := range powerFields {
		if f == vocabulary.RatedWatts && have[f] != nil && have[f].Unit == "" && !columnWatts(t, f) {
			continue // a bare "Rating" may be one of anything
		}
		if col := have[f]; col != nil && columnFigures(t, f) && (col.Confidence >= 0.6 || col.Unit == "W" || t.Confidence <= 0.3 || columnWatts(t, f)) {
			c.power = true
		}
	}
	q := have[vocabulary.Quantity]
	c.counted = q != nil && q.Confidence >= 0.6 && columnFigures(t, vocabulary.Quantity)
	if c.counted && wattsInWords(t) || q != nil && t.Confidence <= 0.3 && groupsInCounts(t) {
		c.power = true
	}
	if have[vocabulary.Price] != nil && (!c.counted || isPriceList(s, t.Sheet)) && !slices.ContainsFunc(placeFields, func(f vocabulary.Field) bool { return have[f] != nil }) {
		c.needs = false // a price list
	}
	if have[vocabulary.Price] != nil && have[vocabulary.TapList] != nil && have[vocabulary.Tap] == nil && isPriceList(s, t.Sheet) {
		c.needs = false // one that tells which taps can be had, and the shelves
	}
	for _, col := range t.Columns {
		if col.Confidence < 0.55 && t.Confidence > 0.3 {
			// Understood by its cells alone: outputs of amplifiers prove something.
			if col.Field == vocabulary.Channel && lookShare(t, col.Field, lookJoint) > 0.5 {
				c.score++
			}
			continue
		}
		concepts := s.Concepts(col.Header)
		switch col.Field {
		case vocabulary.Zone, vocabulary.Channel, vocabulary.Circuit:
			c.score++
		case vocabulary.Amplifier, vocabulary.Control, vocabulary.ControlWatts, vocabulary.TapList, vocabulary.Override:
			c.score += 2
		case vocabulary.Tap, vocabulary.TotalWatts, vocabulary.RatedWatts, vocabulary.Load:
			if slices.Contains(concepts, "tap") || slices.Contains(concepts, "transformer") || col.Volts > 0 {
				c.score += 2
			}
		case vocabulary.LineVoltage:
			if lineVoltsIn(t, vocabulary.LineVoltage) {
				c.score += 2
			}
		}
		if slices.Contains(concepts, "speaker") {
			c.score += 2
		}
	}
	c.score += aboutWords(s, t.Sheet)
	if classWithin(t.Sheet)&classForeign != 0 {
		c.score -= 4
	}
	volts, lineTitle, ampBelow := 0, true, false
	for i := range sr.p.lines[:min(len(sr.p.lines), linesJudged)] {
		l := &sr.p.lines[i]
		if inside := l.n >= t.Range.Row1 && l.n <= t.Range.Row2 && !t.Transposed; inside && !t.otherwise(l.n) {
			continue
		}
		for _, sl := range l.slots {
			w := sl.cell.says()
			if len(w.line) > 120 {
				continue
			}
			if l.n < t.Range.Row1 {
				if w.is(aboutLines) {
					c.score += 2
				}
				if lineTitle && c.score <= 3 && w.is(foreignWords) {
					c.score -= 2
					lineTitle = false // once
				}
			}
			if l.n > t.Range.Row2 && !ampBelow && ratesAnAmplifier(w.line) {
				ampBelow = true // once
				c.score += 2
			}
			if w.is(lineVoltage) {
				volts = 1 + min(1, volts)
			}
		}
	}
	c.score += volts
	if volts > 0 && !c.foreign && !c.power {
		c.bare = listsLoudspeakers(t, s)
	}
	if volts == 0 && lowOnly(t) {
		c.needs = false // a cinema's loudspeakers, each on an amplifier of its own
	}
	if lookShare(t, vocabulary.Tap, lookWatts) > 0.5 && lookShare(t, vocabulary.Tap, lookTapUsual) > 0.7 {
		if c.score++; t.Matrix {
			c.score++ // counts by usual taps
		}
	}
	if tagsOfLines(t) || t.Matrix && lookShare(t, vocabulary.Tap, lookCountWatts) > 0.5 {
		c.score += 2
	}
	devices, amps, others, rows := 0, 0, 0, 0
	above := make([]struct {
		text  string
		words class
	}, len(t.Columns)) // of each column, what was looked at last: many cells say the same as the one above
	for i := range t.Records {
		r := &t.Records[i]
		if r.Class != Device {
			continue
		}
		if rows++; rows > 200 {
			break
		}
		var k class
		for j := range r.Values {
			v := r.Values[j].Text
			if v == "" || len(v) >= 100 || t.Columns[j].Field == vocabulary.Notes || t.laid(j) || isFigureOnly(v) {
				continue
			}
			if f := t.Columns[j].Field; describing[f] && vocabulary.DeviceIn(v) == vocabulary.AmplifierDevice {
				amps++
			}
			if a := &above[j]; a.text != v {
				a.text, a.words = v, classWithin(v)
			}
			if in := above[j].words; slices.Contains(placeFields, t.Columns[j].Field) || t.Columns[j].Field == vocabulary.Building {
				k |= in &^ classForeign // the pump house may well have loudspeakers
			} else {
				k |= in
			}
			if k&classDevice != 0 {
				break // whatever else the row names
			}
		}
		if k&classDevice != 0 {
			devices++
		}
		if k&classForeign != 0 && k&classDevice == 0 {
			others++
		}
	}
	if rows > 0 && 10*devices >= rows {
		c.score += 2
	}
	if onLines := loudspeakersOnLines(t); onLines >= fewestOnLines && onLines > others {
		c.score += 2 // whatever else the list has
	} else if rows > 0 && 5*others > rows {
		c.foreign = true
	}
	c.trade = volts == 0 && amps == 0 && others >= 2*devices && otherTrade(t, sr, s) // a lamp may be recessed as a loudspeaker is
	for _, col := range t.Columns {
		if col.Col > 0 && classWithin(col.Header)&classForeign != 0 && 3*amps < rows {
			c.foreign = true // not the heat of amplifiers in a rack
		}
	}
	if c.foreign {
		c.score -= 4
	}
	return c
}

// ratesAnAmplifier reports whether a note below a table speaks of an amplifier and of what it
// gives: "Amp F1: 120 W".
func ratesAnAmplifier(line string) bool {
	return notation.SpeaksOfAmplifier(line) && len(notation.PowersIn(line, notation.Auto)) > 0
}

// laid reports whether a column says how cables lie: in a pipe, maybe, which is then
// no device of another trade.
func (t *Table) laid(column int) bool {
	f := t.Columns[column].Field
	return f == vocabulary.Route || f == vocabulary.Mounting && t.Kind == Cables
}

// linesJudged is how many lines of a sheet are looked at for what its tables are about.
const linesJudged = 61

// otherwise reports whether one of the first records on a row is no device.
func (t *Table) otherwise(row int) bool {
	for i := range t.Records[:min(len(t.Records), maxSample)] {
		if r := &t.Records[i]; r.Rows.First == row && r.Class != Device {
			return true
		}
	}
	return false
}

// listsLoudspeakers reports whether the rows of a table are loudspeakers by
// the words of a header, and say where on a line they hang. Such a table becomes one of loudspeakers.
func listsLoudspeakers(t *Table, s *vocabulary.Scorer) bool {
	speakers, fed := false, false
	for _, c := range t.Columns {
		switch c.Field {
		case vocabulary.Tag, vocabulary.Model, vocabulary.Describe, vocabulary.Quantity:
			speakers = speakers || slices.Contains(s.Concepts(c.Header), "speaker")
		case vocabulary.Channel, vocabulary.Circuit, vocabulary.Amplifier:
			fed = true
		}
	}
	if !speakers || !fed || t.Matrix || t.Kind == Cables || t.Kind == Amplifiers {
		return false
	}
	t.Kind = Loudspeakers
	return true
}

// tagsOfLines reports whether the tags of most rows are those of loudspeakers,
// and a column beside them names amplifiers or controls: "SP-01" fed from
// "AMP1-2". Either alone may be of something else.
func tagsOfLines(t *Table) bool {
	tags, rows, fed := 0, 0, false
	tag := slices.IndexFunc(t.Columns, func(c Column) bool { return c.Field == vocabulary.Tag })
	if tag < 0 {
		return false
	}
	for i := range t.Records {
		r := &t.Records[i]
		if r.Class != Device || tag >= len(r.Values) {
			continue
		}
		if rows++; rows > maxSample {
			break
		}
		if notation.KeyOf(r.Values[tag].Text).Kind == notation.KeyLoudspeaker {
			tags++
		}
		for j := range r.Values {
			if !fed && j != tag && slices.Contains(placeFields, t.Columns[j].Field) && lookText(oneLine(r.Values[j].Text))&(lookAmp|lookJoint|lookControl) != 0 {
				fed = true
			}
		}
	}
	return fed && tags >= fewestHung && 2*tags > rows
}

// lowOnly reports whether all loudspeakers of a table have the impedance of a
// coil rather than of a line transformer, at most highestCoil.
func lowOnly(t *Table) bool {
	j := slices.IndexFunc(t.Columns, func(c Column) bool { return c.Field == vocabulary.Impedance })
	if j < 0 || slices.ContainsFunc(t.Columns, func(c Column) bool { return c.Field == vocabulary.TapList || c.Field == vocabulary.LineVoltage }) {
		return false
	}
	n := 0
	for i := range t.Records {
		r := &t.Records[i]
		if r.Class != Device || r.Values[j].Text == "" {
			continue
		}
		if v, ok := factor(r.Values[j].Text); !ok || v > highestCoil || strings.ContainsAny(r.Values[j].Text, "kK") {
			return false
		}
		n++
	}
	return n >= 2
}

// highestCoil is the highest usual impedance of a loudspeaker without a line transformer, in ohms; common practice.
const highestCoil = 16

// columnWatts reports whether the cells of a field are powers with their unit.
func columnWatts(t *Table, f vocabulary.Field) bool {
	return lookShare(t, f, lookWatts|lookCountWatts|lookRating|lookTapSaid) >= 0.4
}

// lookShare is the share of a field's first cells that have one of the looks.
func lookShare(t *Table, f vocabulary.Field, k look) float64 {
	hits, cells := 0, 0
	for j := range t.Columns {
		if t.Columns[j].Field != f {
			continue
		}
		for i := range t.Records {
			r := &t.Records[i]
			if r.Class != Device || r.Values[j].Text == "" || r.Values[j].Cell == nil || isMissing(r.Values[j].Text) {
				continue
			}
			if cells++; cells > 100 {
				break
			}
			if lookText(oneLine(r.Values[j].Text))&k != 0 {
				hits++
			}
		}
	}
	if cells == 0 {
		return 0
	}
	return float64(hits) / float64(cells)
}

// placeFields say where in a system a device belongs.
var placeFields = []vocabulary.Field{vocabulary.Zone, vocabulary.Room, vocabulary.Channel, vocabulary.Amplifier, vocabulary.Control, vocabulary.Circuit}

// isPriceList reports whether a name says that it is about prices.
func isPriceList(s *vocabulary.Scorer, name string) bool {
	return slices.Contains(s.Concepts(name), "price")
}

// lineVoltsWord reports whether a text names the voltage of a loudspeaker
// line; 25 and 50 V, which other things have too, count only beside the word "line".
func lineVoltsWord(t string) bool { return wordingOf(t).is(lineVoltage) }

func namesLineVolts(w string) bool {
	m := reAnyVolts.FindStringSubmatch(w)
	if m == nil {
		return false
	}
	switch m[1] {
	case "70", "70.7", "70,7", "71", "100":
		return true
	}
	return false
}

// lookOfValue is how a value looks: as its cell does, or as its own text where it
// is a part of what the cell says, or of another.
func lookOfValue(v *Value) look {
	if v.Cell == nil || v.Because != "" {
		return lookText(oneLine(v.Text))
	}
	return lookOf(cell{Cell: v.Cell})
}

// columnFigures reports whether the columns of a field hold figures.
func columnFigures(t *Table, f vocabulary.Field) bool {
	figures, cells := 0, 0
	for j := range t.Columns {
		if t.Columns[j].Field != f {
			continue
		}
		for i := range t.Records {
			r := &t.Records[i]
			if r.Class != Device || r.Values[j].Text == "" || isMissing(r.Values[j].Text) {
				continue
			}
			if cells++; cells > 100 {
				break
			}
			k := lookOfValue(&r.Values[j])
			if k&(lookNumber|lookWatts|lookCountWatts|lookTapList|lookFraction|lookRating|lookOhm|lookDate|lookControl) != 0 && k&lookForeign == 0 || t.Columns[j].Unit == "W" && reTimes.MatchString(r.Values[j].Text) {
				figures++
			}
		}
	}
	return figures > 0 && 2*figures >= cells
}

// lineVoltsIn reports whether a column holds voltages of loudspeaker lines.
func lineVoltsIn(t *Table, f vocabulary.Field) bool {
	for j := range t.Columns {
		if t.Columns[j].Field != f {
			continue
		}
		for i := range t.Records {
			if v := &t.Records[i].Values[j]; v.Cell != nil && t.Records[i].Class == Device {
				if k := lookOf(cell{Cell: v.Cell}); k&(lookVoltNum|lookHiZ) != 0 || reAnyVolts.MatchString(v.Text) {
					return true
				}
			}
		}
	}
	return false
}
