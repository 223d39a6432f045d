package ingest

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A tapped is what a row says of its transformer setting.
type tapped struct {
	watts    schedule.Quantity[schedule.Watts]
	volts    schedule.Quantity[schedule.Volts]
	offered  []schedule.TapOffer
	rated    schedule.Quantity[schedule.Watts]
	count    schedule.Quantity[schedule.Pieces]
	groups   []notation.TapGroup
	others   []notation.TapAt // the same tap at further line voltages
	either   []notation.TapAt // the taps at each of several line voltages, where that of the line is not known
	eitherAt schedule.Ref     // the header of the first of them
	ohms     float64          // a tap set by its primary impedance, in ohms
	fraction float64          // a tap that is a share of the rated power
	position schedule.Text
	direct   schedule.Quantity[schedule.Ohms] // no transformer
	source   schedule.Source
}

// askUnseen asks for a tap of which the schedule itself says that it is not known: "?".
func (b *builder) askUnseen(r *row) {
	if b.lookOnly || r.status != schedule.Installed {
		return
	}
	for _, c := range r.t.byField[vocabulary.Tap] {
		if v := &r.Values[c.i]; r.at(c).missing == notation.MissingUnknown && v.Text != "" {
			b.ask(v.At, "tap", "“"+short(v.Text)+"”: what is the tap here?", "the load")
			return
		}
	}
}

// had reports whether the cell says anything of the setting.
func (t *tapped) had() bool { return t.source.Had() }

// directOhms are the ends of what a loudspeaker without a transformer may be,
// when its impedance is not written. Source: usual values, common practice.
const directLow, directHigh = 4, 16

// tap reads the tap of a row. With columns for several line voltages the one
// that is filled counts; if several are, that of the line's own voltage.
func (b *builder) tap(r *row, lineV float64) tapped {
	var few [2]seen
	filled := few[:0]
	for _, c := range r.t.byField[vocabulary.Tap] {
		if s := r.at(c); s.had() {
			filled = append(filled, s)
		}
	}
	if len(filled) == 0 {
		if s := r.say(vocabulary.Tap); s.had() {
			return b.readTap(s)
		}
		t := b.tapInWords(r)
		if !t.had() {
			b.askUnseen(r)
		}
		return t
	}
	pick := 0
	for i, s := range filled {
		if lineV != 0 && s.col.Volts != 0 && sameClass(s.col.Volts, lineV) {
			pick = i
			break
		}
	}
	t := b.readTap(filled[pick])
	if lineV == 0 && len(filled) > 1 {
		b.tapsOfUnknownLine(&t, filled)
		return t
	}
	for i, s := range filled {
		if i == pick || s.col.Volts == 0 {
			continue
		}
		if o := b.readTap(s); o.watts.Had() && o.watts.Low == o.watts.High {
			t.others = append(t.others, notation.TapAt{W: float64(o.watts.Low), V: s.col.Volts})
		}
	}
	return t
}

// tapsOfUnknownLine is for a row with a tap for each of several line voltages
// when nothing tells that of its line: the tap lies between them.
func (b *builder) tapsOfUnknownLine(t *tapped, filled []seen) {
	either := []notation.TapAt{{W: float64(t.watts.Low), V: filled[0].col.Volts}}
	for _, s := range filled[1:] {
		o := b.readTap(s)
		if !o.watts.Had() || !t.watts.Had() || s.col.Volts == 0 {
			return
		}
		t.watts.Low, t.watts.High = min(t.watts.Low, o.watts.Low), max(t.watts.High, o.watts.High)
		either = append(either, notation.TapAt{W: float64(o.watts.Low), V: s.col.Volts})
	}
	t.volts, t.either, t.eitherAt = schedule.Quantity[schedule.Volts]{}, either, filled[0].col.At
}

// tapsAtVolts are the taps of a loudspeaker at several line voltages.
type tapsAtVolts struct {
	speaker *schedule.Loudspeaker
	tap     *tapped
}

// pickTapsAtVolts takes the tap at the voltage of the line, once all that tells it
// is read; it is asked where nothing does.
func (b *builder) pickTapsAtVolts() {
	for _, p := range b.tapsAtVolts {
		v := b.lineVoltsAt(p.speaker)
		i := slices.IndexFunc(p.tap.either, func(t notation.TapAt) bool { return v != 0 && sameClass(t.V, v) })
		if i < 0 {
			b.askTapsAtVolts(p.tap)
			continue
		}
		src := p.speaker.Tap.Source
		src.How, src.Because = schedule.Computed, "the column of the voltage of its line"
		p.speaker.Tap = schedule.Exactly(schedule.Watts(p.tap.either[i].W), src)
		p.speaker.TapVolts = schedule.Exactly(schedule.Volts(p.tap.either[i].V), src)
	}
}

// askTapsAtVolts asks which line voltage holds, where taps are listed for several.
func (b *builder) askTapsAtVolts(t *tapped) {
	if len(t.either) > 0 {
		b.ask(t.eitherAt, "line voltage", "taps are listed for several line voltages: which is that of these lines?", "the load of every line")
	}
}

// tapInWords finds the taps of a row that has no cell for them among the words
// of its count, or of its description where no column holds counts.
func (b *builder) tapInWords(r *row) tapped {
	fields := []vocabulary.Field{vocabulary.Quantity}
	if !r.t.has(vocabulary.Tap) && !r.t.has(vocabulary.Quantity) {
		fields = []vocabulary.Field{vocabulary.Describe, vocabulary.Model, vocabulary.Kind, vocabulary.Tag}
	}
	for _, f := range fields {
		if s := r.own(f); s.had() {
			text, style := b.readable(&s, notDate)
			text, _ = splitControl(text)
			if list := groupsIn(text, style); len(list) > 0 {
				return grouped(list, s)
			}
		}
	}
	return tapped{}
}

// groupsIn are the groups of loudspeakers that a text tells in words.
func groupsIn(text string, style notation.Style) []notation.TapGroup {
	list, err := notation.ParseGroups(text, style)
	if err != nil {
		return nil
	}
	return list
}

// grouped is the setting of groups of loudspeakers.
func grouped(list []notation.TapGroup, s seen) tapped {
	t := tapped{source: s.source, groups: list}
	if len(list) == 1 {
		t.watts = schedule.Exactly(schedule.Watts(list[0].W), s.source)
		t.count = schedule.Exactly(schedule.Pieces(list[0].Count), s.source)
	}
	return t
}

// switchedOff reports whether a text says, instead of a setting, that nothing is drawn.
func switchedOff(text string) bool {
	if anyDigit(text) {
		return false
	}
	folded := strings.TrimSpace(join.Fold(text))
	return offWords.in(folded) && countWords(folded) <= 3 && !anyDigit(folded)
}

// readTap reads one cell of taps.
func (b *builder) readTap(s seen) tapped {
	if switchedOff(s.text) {
		b.take(s, vocabulary.Tap.String(), "0 W", schedule.LikelierReading, "switched off or not connected: it draws nothing")
		s.source.How, s.source.Because = schedule.LikelierReading, "switched off or not connected"
		return tapped{watts: schedule.Exactly[schedule.Watts](0, s.source), source: s.source}
	}
	text, style := b.readable(&s, notation.TapColumn)
	if watts, status := tapWithState(text); status != schedule.Installed {
		text = watts // what the state means, statusOf says
	}
	p, err := notation.ParseTap(text, style)
	if err != nil {
		head, _ := splitControl(text)
		if list := groupsIn(head, style); len(list) > 0 {
			return grouped(list, s)
		}
		b.misread(s, err)
		return tapped{}
	}
	pickStrong(&p, s.cell, style)
	t := tapped{source: s.source, groups: slices.Clip(p.Groups), others: slices.Clip(p.OtherW)} // what was parsed is shared
	scale := 1.0
	if p.Doubts.Has(notation.Bare) {
		scale = scaleOfWatts(s.unit())
	}
	watts := func(w float64) schedule.Watts { return schedule.Watts(w * scale) }
	switch p.Kind {
	case notation.TapWatts, notation.TapRange, notation.TapList:
		t.watts = schedule.Between(watts(p.LowW), watts(p.HighW), s.source)
	case notation.TapImpedance:
		t.ohms = p.Ohms
	case notation.TapPosition:
		t.position = schedule.Text{Value: strconv.Itoa(p.Position), Source: s.source}
	case notation.TapFraction:
		t.fraction = p.Fraction
	case notation.TapDirect:
		t.direct = schedule.Between[schedule.Ohms](directLow, directHigh, s.source)
		if p.Ohms > 0 {
			t.direct = schedule.Exactly(schedule.Ohms(p.Ohms), s.source)
		}
	}
	volts := 0.0
	switch {
	case len(p.AtV) == 1:
		volts = p.AtV[0]
		t.volts = schedule.Exactly(schedule.Volts(volts), s.source)
	case len(p.AtV) == 0 && s.col != nil && s.col.Volts != 0:
		volts = s.col.Volts
		t.volts = schedule.Exactly(schedule.Volts(volts),
			schedule.Source{At: s.col.At, Written: s.col.Header, How: schedule.FromTitle, Because: "said in the header"})
	}
	for _, w := range p.OfferedW {
		t.offered = append(t.offered, schedule.TapOffer{Watts: watts(w), Volts: schedule.Volts(volts)})
	}
	if p.RatedW > 0 {
		t.rated = schedule.Exactly(watts(p.RatedW), s.source)
	}
	if p.Count > 0 {
		t.count = schedule.Exactly(schedule.Pieces(p.Count), s.source)
	}
	if p.Kind == notation.TapList && notation.SaysOr(text) && s.source.How != schedule.FromHouseBook {
		b.askCell(s, "“"+short(s.text)+"”: which of them is set? It is counted as "+plain(p.LowW)+" to "+plain(p.HighW)+" W.", "the load of this row")
	}
	b.tapDoubts(s, &t, p)
	return t
}

// pickStrong picks the tap that is bold or underlined in a list of several.
func pickStrong(p *notation.Tap, c *grid.Cell, style notation.Style) {
	if p.Kind != notation.TapList || c == nil || c.Struck != grid.NotStruck || c.Kept() == "" {
		return
	}
	one, err := notation.ParseTap(c.Kept(), style)
	if err != nil || one.Kind != notation.TapWatts || !slices.Contains(p.OfferedW, one.LowW) {
		return
	}
	p.Kind, p.LowW, p.HighW = notation.TapWatts, one.LowW, one.LowW
	p.Doubts |= notation.MarkTaken
}

// tapDoubts notes what the parser took for granted of a tap. "1/2" is half a
// watt unless the rated power stands beside it and the column speaks in shares.
func (b *builder) tapDoubts(s seen, t *tapped, p notation.Tap) {
	d := p.Doubts
	if d == 0 {
		return
	}
	taken := plain(float64(t.watts.Low)) + " W"
	if t.watts.Low != t.watts.High {
		taken = plain(float64(t.watts.Low)) + " to " + plain(float64(t.watts.High)) + " W"
	}
	if d.Has(notation.FractionOfRated) && s.t != nil && s.t.shares {
		t.watts, t.fraction = schedule.Quantity[schedule.Watts]{}, p.Fraction
		d &^= notation.FractionOfRated
	}
	if d.Has(notation.FractionOfRated) && s.t != nil && s.t.sharesOfRated() {
		t.watts, t.fraction = schedule.Quantity[schedule.Watts]{}, p.Fraction
		taken = plain(p.Fraction*100) + " % of the rated power"
	}
	if p.Kind == notation.TapList || p.Kind == notation.TapRange {
		d &^= notation.RangeOrList // carried as bounds: nothing was taken
	}
	if s.source.How == schedule.RecoveredDate {
		return // said already
	}
	if d&^notation.Bare != 0 {
		if t.watts.Had() {
			t.watts.How = max(t.watts.How, schedule.LikelierReading)
		}
	}
	b.doubt(s, taken, d)
}

// sharesOfRated reports whether the table's tap column speaks in shares of the
// rated power: it holds "1/1" or "3/4" and there is a column of rated powers.
func (t *table) sharesOfRated() bool {
	if !t.has(vocabulary.RatedWatts) && !t.has(vocabulary.TapList) {
		return false
	}
	for _, c := range t.byField[vocabulary.Tap] {
		for i := range t.Records {
			switch t.Records[i].Values[c.i].Text {
			case "1/1", "3/4", "2/3":
				return true
			}
		}
	}
	return false
}

// offers reads a list of taps that a model offers.
func (b *builder) offers(s seen) []schedule.TapOffer {
	if !s.had() {
		return nil
	}
	text, style := b.readable(&s, notation.TapColumn)
	p, err := notation.ParseTap(text, style)
	if err != nil {
		b.misread(s, err)
		return nil
	}
	volts := 0.0
	if len(p.AtV) == 1 {
		volts = p.AtV[0]
	} else if len(p.AtV) == 0 && s.col != nil {
		volts = s.col.Volts
	}
	list := p.OfferedW
	if len(list) == 0 && p.Kind == notation.TapWatts {
		list = []float64{p.LowW}
	}
	var out []schedule.TapOffer
	for _, w := range list {
		out = append(out, schedule.TapOffer{Watts: schedule.Watts(w), Volts: schedule.Volts(volts)})
	}
	return out
}

// sameClass reports whether two line voltages are one nominal class: 70, 70.7
// and 71 V are.
func sameClass(a, b float64) bool {
	class := func(v float64) float64 {
		if v >= 69 && v <= 72 {
			return 70.7
		}
		return v
	}
	return math.Abs(class(a)-class(b)) < 0.5
}
