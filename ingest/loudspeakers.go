package ingest

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// addLoudspeakers makes the loudspeakers of a row.
func (b *builder) addLoudspeakers(r *row) { b.addLoudspeakersTo(r, nil) }

// addLoudspeakersTo is addLoudspeakers for a row whose zone is known already.
func (b *builder) addLoudspeakersTo(r *row, zone *schedule.Zone) {
	list := b.loudspeakers(r, zone)
	if len(list) == 0 {
		if r.kind == loudspeakerRow {
			r.out, r.reason = schedule.EmptyRow, "says nothing of a loudspeaker"
		}
		return
	}
	if len(list) == 1 && noPiece(list[0]) {
		r.out, r.reason = schedule.EmptyRow, "no piece of them"
		return
	}
	if len(list) == 1 && b.listedBefore(r, list[0]) {
		return
	}
	r.used = true
	for _, l := range list {
		b.job.Loudspeakers = append(b.job.Loudspeakers, l)
		b.origin[l] = r
		if r.line != nil && l.Status == schedule.Installed {
			r.line.fed = append(r.line.fed, l)
		}
		for _, tag := range l.Tags {
			k := join.Key(tag)
			b.speakers[k] = append(b.speakers[k], l)
		}
	}
}

// loudspeakers works out the loudspeakers that a row describes, without
// entering them into the job: one, or one for each tap that its cell names,
// and one more for the spares written beside the count.
func (b *builder) loudspeakers(r *row, zone *schedule.Zone) []*schedule.Loudspeaker {
	l := &schedule.Loudspeaker{At: r.At, Rows: r.Rows, Status: r.status}
	if l.Status == schedule.Standby {
		l.Status = schedule.Installed
	}
	l.Model = r.own(vocabulary.Model).asText()
	l.Room = r.said(vocabulary.Room)
	l.Mounting = r.own(vocabulary.Mounting).asText()
	if r.kind != zoneRow {
		l.Tag = r.speakerTag().asText()
		l.Tags = r.tagList()
		if zone == nil {
			zone = b.zoneOf(r)
		}
	}
	l.Zone = zone
	list := b.channelsOf(r)
	if len(list) > 0 {
		l.Channel = list[0]
	} else {
		l.FeedUnread = b.outletOf(r).unread
	}
	if len(list) > 1 {
		l.Split = list
		if zone != nil && b.outletOf(r).ab {
			zone.ABCircuits = schedule.Flag{Yes: true, Source: b.outletOf(r).at.source}
		}
	}
	if !b.lookOnly {
		for _, c := range list {
			b.fillChannel(r, c)
		}
	}
	m := b.controlText(r)
	l.Control = b.controlSaid(r, &m, zone)
	if m.place.had() && !l.Room.Had() && zone == nil {
		l.Room = m.place.asText() // the control's title says where
		l.Zone = b.zone(m.place, m.place.text)
		b.take(m.place, "zone", m.place.text, schedule.LikelierReading, "the place that the control's title names")
	}
	b.readControlNotes(r, l)
	lineV := b.lineVoltsAt(l)
	stated, statedAt := b.volts(r.own(vocabulary.LineVoltage))
	if own := oneVolt(stated, statedAt); lineV == 0 {
		v, _ := own.Exact()
		lineV = float64(v)
	}
	t := b.tap(r, lineV)
	b.remarkedTap(r, &t)
	l.Tap, l.TapVolts, l.TapPosition, l.Rated = t.watts, t.volts, t.position, t.rated
	l.Offered = append(t.offered, b.offers(r.own(vocabulary.TapList))...)
	l.Rated = b.watts(r.own(vocabulary.RatedWatts)).Or(l.Rated)
	l.RowTotal = b.watts(r.first(vocabulary.TotalWatts, vocabulary.Load))
	if !l.TapVolts.Had() {
		l.TapVolts = b.tapVoltage(r)
	}
	if !l.TapVolts.Had() {
		l.TapVolts = oneVolt(stated, statedAt)
		if stated.Kind == notation.LowImpedanceLine && !t.had() {
			t.direct = directAt(stated.Ohms, statedAt.source)
		}
	}
	if len(t.others) > 0 {
		b.pickVolts(l, t, lineV)
	}
	b.direct(r, l, &t)
	e := b.typeOf(r)
	if e != nil {
		b.applyType(r, l, &t, e)
	}
	if !b.saysAnything(r, l, &t) {
		return nil
	}
	spare := b.count(r, l, &t)
	if spare > 0 && l.Count.Had() && l.Count.High == 0 { // nothing but spares
		l.Count.Low, l.Count.High, l.Status, spare = schedule.Pieces(spare), schedule.Pieces(spare), schedule.Spare, 0
	}
	if !l.Tap.Had() && l.RowTotal.Had() && l.Count.Had() && l.Count.Low > 0 && l.Count.Low == l.Count.High && !t.direct.Had() {
		src := l.RowTotal.Source
		src.How, src.Because = schedule.Computed, "the row’s total over its count"
		l.Tap = schedule.Between(l.RowTotal.Low/schedule.Watts(l.Count.Low), l.RowTotal.High/schedule.Watts(l.Count.Low), src)
	}
	if t.ohms > 0 || t.fraction > 0 {
		b.pending = append(b.pending, pendingTap{l, t})
	}
	if len(t.either) > 0 && !b.lookOnly {
		b.tapsAtVolts = append(b.tapsAtVolts, tapsAtVolts{l, &t})
	}
	b.moreOf(r, l)
	if !b.lookOnly {
		b.askOnlySome(r, l)
		b.askNotLeft(r, l)
	}
	if r.partOf != nil {
		b.takePart(r, l)
	}
	out := []*schedule.Loudspeaker{l}
	if len(t.groups) > 1 {
		out = b.groups(l, &t)
	}
	if z := l.LowImpedance; z.Low != z.High && !b.lookOnly {
		b.ask(z.At, vocabulary.Impedance.String(), "without a transformer: what is its impedance?", "what this loudspeaker draws from its line")
	}
	if spare > 0 {
		s := *l
		s.Status, s.Run = schedule.Spare, nil
		s.Count = schedule.Exactly(schedule.Pieces(spare), l.Count.Source)
		s.RowTotal, s.Tags = schedule.Quantity[schedule.Watts]{}, nil
		out = append(out, &s)
	}
	if e != nil && !b.lookOnly {
		e.rows = append(e.rows, out...)
	}
	return out
}

// tagList are the single tags of a row, which may name several or a range.
func (r *row) tagList() []string {
	tag := r.speakerTag().asText()
	if !tag.Had() {
		return nil
	}
	if !plainTag(tag.Value) {
		if t, err := notation.ParseTags(tag.Value); err == nil && (t.Doubts&hyphenDoubts == 0 || r.t.tagsAreRanges()) {
			return tagsOnly(t.List)
		}
	}
	return []string{tag.Value}
}

// hyphenDoubts are those of a hyphen that may belong to a tag ("1-2").
const hyphenDoubts = notation.RangeOrTag | notation.DateOrPair

// tagsAreRanges reports whether tags such as "1-4" in this table are ranges:
// they are not where two rows would have a device in common or a range would
// run backwards, as in "1-1, 1-2, 2-1", the loudspeakers of zones 1 and 2.
func (t *table) tagsAreRanges() bool {
	if t.ranges != 0 {
		return t.ranges == 1
	}
	t.ranges = 1
	devices := make(map[string]int)
	for i, r := range t.rows {
		s := r.own(vocabulary.Tag)
		if r.Class != layout.Device || !strings.Contains(s.text, "-") || plainTag(s.text) {
			continue
		}
		tags, err := notation.ParseTags(s.text)
		if err != nil {
			t.ranges = 2
			break
		}
		for _, d := range tags.List {
			k := join.Key(d)
			if first, had := devices[k]; had && first != i && tags.Doubts&hyphenDoubts != 0 {
				t.ranges = 2
			}
			devices[k] = i
		}
	}
	return t.ranges == 1
}

// plainTag reports whether a tag is letters, a separator and a number: most
// are, and name one device.
func plainTag(s string) bool {
	i := 0
	for i < len(s) && (s[i] >= 'A' && s[i] <= 'Z' || s[i] >= 'a' && s[i] <= 'z') {
		i++
	}
	if i == 0 || i > 4 {
		return false
	}
	if i < len(s) && (s[i] == '-' || s[i] == '_' || s[i] == ' ') {
		i++
	}
	start := i
	for i < len(s) && s[i] >= '0' && s[i] <= '9' {
		i++
	}
	return i == len(s) && i > start
}

// readControlNotes is for a row whose remarks name no control; nothing is
// inferred from a model name alone.
func (b *builder) readControlNotes(r *row, l *schedule.Loudspeaker) {
	if l.Control == nil || b.lookOnly {
		return
	}
	if flag := b.overrideOf(r); flag.Had() && !l.Control.Override.Had() {
		l.Control.Override = flag
	}
}

// lineVoltsAt is the line voltage at a loudspeaker as far as it is known now, 0 if not.
func (b *builder) lineVoltsAt(l *schedule.Loudspeaker) float64 {
	if c := l.Channel; c != nil {
		if v, ok := c.LineVolts.Exact(); ok {
			return float64(v)
		}
		if v, ok := b.ampLine[c.Amplifier].Exact(); ok {
			return float64(v)
		}
		if v := b.saidLine[c.Amplifier]; v > 0 {
			return v
		}
	}
	v, _ := b.job.LineVolts.Exact()
	return float64(v)
}

// pickVolts is for a tap named at several line voltages: the one for the line
// counts, the others are on offer.
func (b *builder) pickVolts(l *schedule.Loudspeaker, t tapped, lineV float64) {
	all := append([]notation.TapAt{{W: float64(l.Tap.Low), V: float64(l.TapVolts.Low)}}, t.others...)
	for _, o := range all {
		if lineV != 0 && o.V != 0 && sameClass(o.V, lineV) && o.W > 0 {
			l.Tap = schedule.Exactly(schedule.Watts(o.W), t.source)
			l.TapVolts = schedule.Exactly(schedule.Volts(o.V), t.source)
		}
		l.Offered = append(l.Offered, schedule.TapOffer{Watts: schedule.Watts(o.W), Volts: schedule.Volts(o.V)})
	}
}

func directAt(ohms float64, s schedule.Source) schedule.Quantity[schedule.Ohms] {
	if ohms > 0 {
		return schedule.Exactly(schedule.Ohms(ohms), s)
	}
	return schedule.Between[schedule.Ohms](directLow, directHigh, s)
}

// highestDirect is the highest impedance of a loudspeaker that hangs on an
// amplifier directly, lowestPrimary the lowest of a transformer's primary, in
// ohms. Source: usual values, common practice.
const highestDirect, lowestPrimary = 32, 40

// direct decides whether a row is a loudspeaker without a transformer: its tap
// cell says so, or it has no tap and is the exception in its column of impedances.
func (b *builder) direct(r *row, l *schedule.Loudspeaker, t *tapped) {
	if t.direct.Had() {
		l.LowImpedance = t.direct
	}
	s := r.own(vocabulary.Impedance)
	if !s.had() {
		return
	}
	z := b.ohms(s)
	v, ok := z.Exact()
	switch {
	case !ok:
	case l.LowImpedance.Had():
		if v <= highestDirect {
			l.LowImpedance = z
		}
	case t.had() && (l.Tap.Had() || t.ohms > 0 || t.fraction > 0 || t.position.Had()):
	case v >= lowestPrimary && !l.RowTotal.Had():
		t.ohms, t.source = float64(v), z.Source
	case v > 0 && v <= highestDirect && !l.RowTotal.Had() && r.t.tapsWithImpedance() == 0:
		l.LowImpedance = z
	}
}

// tapsWithImpedance counts the rows that state a tap and a direct impedance
// both: where there are any, the impedance is a figure of the data sheet.
func (t *table) tapsWithImpedance() int {
	if t.bothCount > 0 {
		return t.bothCount - 1
	}
	n := 0
	for _, r := range t.rows {
		if r.own(vocabulary.Tap).had() && r.own(vocabulary.Impedance).had() {
			n++
		}
	}
	t.bothCount = n + 1
	return n
}

// applyType fills what the row leaves out from the type that it names.
func (b *builder) applyType(r *row, l *schedule.Loudspeaker, t *tapped, e *typeEntry) {
	if !l.Tap.Had() && !l.RowTotal.Had() && !l.LowImpedance.Had() && t.ohms == 0 && t.fraction == 0 {
		l.Tap = e.tap.watts
		if !l.TapVolts.Had() {
			l.TapVolts = e.tap.volts
		}
		t.ohms, t.fraction = e.tap.ohms, e.tap.fraction
		if e.tap.had() {
			t.source = e.tap.source
		}
		if e.tap.direct.Had() {
			l.LowImpedance = e.tap.direct
		}
	}
	if len(l.Offered) == 0 {
		l.Offered = e.offered
	}
	l.Rated = l.Rated.Or(e.rated)
	setText(&l.Model, e.model)
	setText(&l.Mounting, e.mount)
}

// saysAnything reports whether a row is a loudspeaker at all: it states watts,
// a tap or an impedance, or it names a loudspeaker and stands in a place.
func (b *builder) saysAnything(r *row, l *schedule.Loudspeaker, t *tapped) bool {
	if q := r.own(vocabulary.Quantity); q.cell != nil && q.text == "0" && !t.had() {
		return false // none, in so many words
	}
	if saysNone(r, l) {
		return false
	}
	if t.had() || l.Tap.Had() || l.RowTotal.Had() || l.LowImpedance.Had() || len(l.Offered) > 0 || l.Rated.Had() {
		return true
	}
	if r.t.kind == layout.Mixed && !slices.ContainsFunc([]vocabulary.Field{vocabulary.Tap, vocabulary.TotalWatts, vocabulary.Quantity}, r.t.has) {
		return wordKind(r) == loudspeakerRow // of a rack: panels, mixers, power supplies
	}
	named := l.Tag.Had() || l.Model.Had() || describes(r.own(vocabulary.Describe).text) || r.own(vocabulary.Quantity).had() || r.own(vocabulary.Kind).had()
	return named && (r.own(vocabulary.Tap).text != "" || l.Zone != nil || l.Channel != nil || l.Control != nil || l.Room.Had() || wordKind(r) == loudspeakerRow)
}

// longestDescription is the most words of a description that has no word for a
// device; what is longer is prose: "Rates include brackets, boxes and testing ...".
const longestDescription = 10

// describes reports whether a text describes a thing rather than tell of many.
func describes(text string) bool {
	return text != "" && (countWords(text) <= longestDescription || kindInWords(text) != noKind)
}

// uniqueTag reports whether a tag stands once in the table: it names a device, not a type.
func (t *table) uniqueTag(tag string) bool {
	if t.tagCount == nil {
		t.tagCount = make(map[string]int)
		for _, r := range t.rows {
			if s := r.own(vocabulary.Tag); s.had() {
				t.tagCount[s.key()]++
			}
		}
	}
	return t.tagCount[join.Key(tag)] <= 1
}
