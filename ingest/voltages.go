package ingest

import (
	"math"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// lineVolts settles line voltages that no one states of a channel: that of its
// amplifier; the one its rating is stated at; what its loudspeakers' rows say.
func (b *builder) lineVolts() {
	rows := make(map[*schedule.Channel][]schedule.Quantity[schedule.Volts])
	for _, l := range b.job.Loudspeakers {
		r := b.origin[l]
		if l.Channel != nil && !r.t.has(vocabulary.LineVoltage) {
			for i := len(r.Sections) - 1; i >= 0; i-- { // "Amp A, way 1 - 120 W, 100 V"
				f := &r.Sections[i]
				if v, _, ok := notation.LineVoltageIn(f.Text); ok && f.Field == vocabulary.LineVoltage {
					rows[l.Channel] = append(rows[l.Channel], schedule.Exactly(schedule.Volts(v), factSeen(f).source))
					break
				}
			}
			continue
		}
		if l.Channel == nil {
			continue
		}
		if v := b.rowVoltage(l); v.Had() {
			rows[l.Channel] = append(rows[l.Channel], v)
		}
	}
	for _, c := range b.job.Channels {
		if c.LineVolts.Had() {
			continue
		}
		if q := b.ampLine[c.Amplifier]; q.Had() {
			c.LineVolts = q
			continue
		}
		if v, s, ok := ratedVolts(slices.Concat(b.channelRated[c], b.ampRated[c.Amplifier], b.ampTitle)); ok && !c.LowImpedance.Yes {
			src := s.source
			src.How, src.Because = schedule.Computed, "the line voltage that the rating is stated at"
			c.LineVolts = schedule.Exactly(schedule.Volts(v), src)
			continue
		}
		if b.job.LineVolts.Had() {
			continue
		}
		c.LineVolts = agreed(rows[c], "what the rows of its loudspeakers say")
	}
	if b.job.LineVolts.Had() {
		return
	}
	var all []schedule.Quantity[schedule.Volts]
	for _, c := range b.job.Channels {
		if c.LineVolts.Had() {
			all = append(all, c.LineVolts)
		}
	}
	if len(all) == 0 {
		for _, l := range b.job.Loudspeakers {
			if v := b.rowVoltage(l); v.Had() {
				all = append(all, v)
			}
		}
	}
	b.job.LineVolts = agreed(all, "the line voltage of all parts that state one")
	if len(all) == 0 {
		b.voltsInPassing()
	}
	b.askMixedTaps()
}

// tapVoltage is the voltage that the tap of a row is marked for, in a column of its own.
func (b *builder) tapVoltage(r *row) schedule.Quantity[schedule.Volts] {
	if !r.t.has(vocabulary.TapVoltage) {
		return schedule.Quantity[schedule.Volts]{}
	}
	return oneVolt(b.volts(r.own(vocabulary.TapVoltage)))
}

// rowVoltage is the line voltage in a loudspeaker's row: where no column tells the voltage of
// its tap, the tap is marked for it.
func (b *builder) rowVoltage(l *schedule.Loudspeaker) schedule.Quantity[schedule.Volts] {
	s := b.origin[l].own(vocabulary.LineVoltage)
	switch {
	case !s.had():
	case b.origin[l].t.has(vocabulary.TapVoltage):
		return oneVolt(b.volts(s))
	case l.TapVolts.Had() && s.source.At == l.TapVolts.At:
		return l.TapVolts
	}
	return schedule.Quantity[schedule.Volts]{}
}

// askMixedTaps asks for the line voltage where the taps on one output are stated
// at several and nothing states that of the line: some are on the wrong one.
func (b *builder) askMixedTaps() {
	if b.job.LineVolts.Had() {
		return
	}
	first := make(map[*schedule.Channel]schedule.Quantity[schedule.Volts])
	for _, l := range b.job.Loudspeakers {
		if l.Channel == nil || l.Channel.LineVolts.Had() || !l.TapVolts.Had() {
			continue
		}
		had, ok := first[l.Channel]
		if !ok {
			first[l.Channel] = l.TapVolts
			continue
		}
		if !sameClass(float64(had.Low), float64(l.TapVolts.Low)) {
			b.ask(l.TapVolts.At, "line voltage", "the taps on "+l.Channel.Label()+" are stated at several line voltages: which is that of the line?", "what the loudspeakers draw")
			return
		}
	}
}

// wordFields are the fields of cells whose words may name the line voltage of
// their device: "ceiling loudspeaker with 70 V transformer".
var wordFields = []vocabulary.Field{vocabulary.Describe, vocabulary.Kind, vocabulary.Model, vocabulary.Notes, vocabulary.Item, vocabulary.Unknown}

// voltsInPassing takes the line voltage that texts name in passing, where none
// is stated and all that name one agree. What is said of a single device may
// not hold for the others, which makes it an assumption.
func (b *builder) voltsInPassing() {
	var found seen
	var volts float64
	agree := true
	hear := func(s seen) {
		if v, _, ok := notation.LineVoltageIn(s.text); ok && len(s.text) <= longestSpoken {
			agree = agree && (volts == 0 || sameClass(v, volts))
			if volts == 0 {
				volts, found = v, s
			}
		}
	}
	for _, s := range b.spoken {
		for sentence := range strings.SplitSeq(s.text, ". ") {
			if !notation.SpeaksOfAmplifier(sentence) { // else see applySaid
				hear(seen{text: sentence, source: schedule.Source{At: s.at, Written: s.text}})
			}
		}
	}
	for _, t := range b.tables {
		t.voltsInHeaders(hear)
		for _, r := range t.rows {
			for _, f := range wordFields {
				for _, c := range t.byField[f] {
					if s := r.at(c); s.had() && r.Class != layout.Struck {
						hear(s)
					}
				}
			}
			if n, text := r.stated(); n == 1 && r.Class == layout.Device { // a line below the list
				hear(seen{text: text, source: schedule.Source{At: r.At, Written: text}})
			}
		}
	}
	if volts == 0 || !agree || len(b.job.Loudspeakers) == 0 {
		return
	}
	src := found.source
	src.How, src.Because = schedule.LikelierReading, "the only line voltage that is named, in passing"
	b.job.LineVolts = schedule.Exactly(schedule.Volts(volts), src)
	b.take(found, "line voltage", plain(volts)+" V", schedule.LikelierReading, src.Because)
}

// ratedVolts is the one line voltage that ratings are stated at.
func ratedVolts(list []ratedSeen) (float64, seen, bool) {
	v := 0.0
	var at seen
	for _, r := range list {
		for _, o := range r.outputs {
			for _, x := range o.AtV {
				if v != 0 && !sameClass(v, x) {
					return 0, seen{}, false
				}
				v, at = x, r.at
			}
			if x := columnVolts(r.at); len(o.AtV) == 0 && x != 0 { // "rated watts @ 70 V"
				if v != 0 && !sameClass(v, x) {
					return 0, seen{}, false
				}
				v, at = x, r.at
			}
		}
	}
	return v, at, v != 0
}

// columnVolts is the line voltage in the header of a cell's column, 0 if none.
func columnVolts(s seen) float64 {
	if s.col == nil {
		return 0
	}
	return s.col.Volts
}

// agreed is the line voltage that at least nine of ten say, if there is one.
func agreed(list []schedule.Quantity[schedule.Volts], because string) schedule.Quantity[schedule.Volts] {
	if len(list) == 0 {
		return schedule.Quantity[schedule.Volts]{}
	}
	for _, candidate := range list {
		n := 0
		for _, q := range list {
			if sameClass(float64(q.Low), float64(candidate.Low)) {
				n++
			}
		}
		if n*10 >= len(list)*9 {
			src := candidate.Source
			src.How, src.Because = schedule.Computed, because
			return schedule.Exactly(candidate.Low, src)
		}
	}
	return schedule.Quantity[schedule.Volts]{}
}

// pendingTaps works out taps that are stated by impedance or as a share of the
// rated power.
func (b *builder) pendingTaps() {
	for _, p := range b.pending {
		if p.l.Tap.Had() {
			continue
		}
		src := p.t.source
		switch {
		case p.t.fraction > 0:
			if w, ok := p.l.Rated.Exact(); ok {
				src.How, src.Because = schedule.Computed, "its share of the rated power"
				p.l.Tap = schedule.Exactly(w*schedule.Watts(p.t.fraction), src)
			} else {
				b.ask(src.At, "tap", "“"+short(src.Written)+"” is a share of the rated power, which is not stated: how many watts?", "the load of this row")
			}
		case p.t.ohms > 0:
			v := p.l.TapVolts
			if !v.Had() {
				v = b.job.LineVoltsOf(p.l.Channel)
			}
			if x, ok := v.Exact(); ok {
				src.How, src.Because = schedule.Computed, "V²/Z at the line voltage"
				nominal := float64(x)
				if sameClass(nominal, 70) {
					nominal = 100 / math.Sqrt2
				}
				p.l.Tap = schedule.Exactly(schedule.Watts(nominal*nominal/p.t.ohms), src)
				p.l.TapVolts = v
			} else {
				b.ask(src.At, "line voltage", "“"+short(src.Written)+"” is the impedance of a tap: at which line voltage?", "the load of this row")
			}
		}
	}
}
