package ingest

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
	"lineaudit/ingest/watch"
)

// jobFacts takes over what the title blocks say of the job.
func (b *builder) jobFacts() {
	j := b.job
	for i := range b.facts {
		f := &b.facts[i]
		s := factSeen(f)
		if !s.had() {
			continue
		}
		switch f.Field {
		case vocabulary.Job:
			if !onlyTitleWords(s.text) { // "Final documents of the works: loudspeakers"
				setText(&j.Name, s.asText())
			}
		case vocabulary.JobNo:
			if f.Key == "" && !j.Number.Had() {
				b.take(s, "job number", s.text, schedule.LikelierReading, "a number in the title of the sheet")
			}
			setText(&j.Number, s.asText())
		case vocabulary.Site, vocabulary.Building:
			if f.Field == vocabulary.Site || !j.Site.Had() && !b.otherBuilding(f) {
				setText(&j.Site, s.asText())
			}
		case vocabulary.Revision:
			setText(&j.Revision, s.asText())
		case vocabulary.Date:
			setText(&j.Date, b.date(s))
		case vocabulary.LineVoltage:
			if x, _, ok := notation.LineVoltageIn(s.text); ok { // "Public address 100 V"
				set(b, &j.LineVolts, schedule.Exactly(schedule.Volts(x), s.source), "line voltage", "the job")
				break
			}
			v, s := b.volts(s)
			set(b, &j.LineVolts, oneVolt(v, s), "line voltage", "the job")
		case vocabulary.ChannelWatts, vocabulary.FrameWatts:
			if !b.ratesBlock(f, s) {
				b.ratingInTitle(f, s)
			}
		case vocabulary.Gauge, vocabulary.CableType, vocabulary.Cable, vocabulary.Material:
			if f.Key != layout.TitledCable {
				b.conductorInTitle(s)
			}
		case vocabulary.ControlWatts:
			if len(notation.PowersIn(s.text, notation.Auto)) > 1 || b.ratesBlock(f, s) {
				break // of several: see carriedIn
			}
			if out, s := b.rating(s); len(out) > 0 {
				b.controlTitle = append(b.controlTitle, ratedSeen{out, s})
			}
		case vocabulary.Override:
			if notation.AnswerOf(s.text) == notation.Yes || len(notation.Override(s.text)) > 0 {
				j.Override = schedule.Flag{Yes: true, Source: s.source}
			}
		}
		b.emergencyWords(f, s)
	}
	if !j.LineVolts.Had() {
		b.voltsInTitles()
	}
	b.controlHeaders()
	b.columnsOfJob()
	b.numberInNotes()
	b.siteInTitle()
	b.siteOfClient()
	b.siteInNotes()
}

// A titleReader takes the titles of the tables of a sheet apart: hundreds of tables side
// by side may all have the same thousands.
type titleReader struct {
	w             *watch.Watch
	titles, plain []layout.Fact // those of the last table, and what became of them
}

// read is plainFacts of titles; what it returns is shared.
func (r *titleReader) read(titles []layout.Fact) []layout.Fact {
	if !r.again(titles) {
		r.titles, r.plain = titles, slices.Clip(plainFacts(titles, r.w))
	}
	return r.plain
}

// again reports whether titles are those that were read last.
func (r *titleReader) again(titles []layout.Fact) bool {
	if len(titles) == 0 || len(titles) != len(r.titles) {
		return false
	}
	return &titles[0] == &r.titles[0] || slices.Equal(titles, r.titles)
}

// plainFacts takes facts apart that say two things: "A1: 5 x 240 W @ 100 V" is
// the name of an amplifier and the rating of its channels.
func plainFacts(facts []layout.Fact, w *watch.Watch) []layout.Fact {
	out := make([]layout.Fact, 0, len(facts))
	facts = pairedFacts(facts, w)
	for _, f := range facts {
		w.Step()
		if f.Field != vocabulary.Amplifier {
			out = append(out, f)
			continue
		}
		if notation.KeyOf(f.Text).Kind == notation.KeyZone {
			f.Field = vocabulary.Unknown // "Amplifier: zone 1 output 1, ..." names none: see routesIn
			out = append(out, f)
			continue
		}
		if list, err := notation.ParseRatingSentence(f.Key+": "+f.Text, notation.Auto); err == nil && (len(list) > 1 || list[0].Name == "" && list[0].Outputs > 0) {
			f.Field = vocabulary.Unknown // of several amplifiers, or of one without a name: see saidIn
			out = append(out, f)
			continue
		}
		if name, ok := sentenceName(&f); ok && f.Key != "" && strings.HasPrefix(f.Key, name) { // "N1 | 2 x 120 W": its rating: see saidIn
			f.Text, f.Key, f.Cell = name, "", nil
			out = append(out, f)
			continue
		}
		rating, at := f.Text, 0
		if i := strings.IndexAny(f.Text, ":,;–"); i >= 0 {
			at, rating = i, strings.TrimLeft(f.Text[i:], ":,;– ")
		}
		if _, err := notation.ParseRating(rating, notation.Auto); err != nil || !strings.ContainsAny(rating, "wW") {
			if name, ok := sentenceName(&f); ok { // its rating: see saidIn
				f.Text, f.Key, f.Cell = name, "", nil
			}
			out = append(out, f)
			continue
		}
		name := f
		name.Text, name.Cell = strings.TrimSpace(f.Text[:at]), nil
		if said := nameInside(&f, name.Text); said != "" { // "one, AMP1, 4 outputs of 60 W"
			name.Text = said
			out = append(out, name) // its rating: see saidIn
			continue
		}
		f.Field, f.Text, f.Key, f.Cell = vocabulary.ChannelWatts, rating, name.Text, nil
		if name.Text != "" {
			out = append(out, name)
		}
		out = append(out, f)
	}
	return out
}

// nameInside is the name that a sentence about an amplifier gives it behind its first
// words, "" if these are the name.
func nameInside(f *layout.Fact, first string) string {
	said, ok := sentenceName(f)
	if !ok || first == "" || namesOneAmp(first, said) {
		return ""
	}
	for part := range strings.FieldsFuncSeq(f.Text, func(r rune) bool { return strings.ContainsRune(",;:–", r) }) {
		if namesOneAmp(part, said) {
			return strings.TrimSpace(part)
		}
	}
	return ""
}

// pairScore is the score from which a text in a title block is the key of the
// text beside it.
const pairScore = 0.5

// hintScore is the score of a key that hints at a field.
const hintScore = 0.2

// pairedFacts makes key and value of two neighbouring texts of a title block
// of which the first names a field: "Cable | 2 x 2.5 mm²".
func pairedFacts(facts []layout.Fact, w *watch.Watch) []layout.Fact {
	out := make([]layout.Fact, 0, len(facts))
	for i := 0; i < len(facts); i++ {
		w.Step()
		f := keyed(facts[i])
		if i+1 < len(facts) && f.Field == vocabulary.Unknown && f.Key == "" && f.At.Row > 0 {
			v := facts[i+1]
			beside := v.Field == vocabulary.Unknown && v.Key == "" && v.At.Row == f.At.Row && v.At.Col > f.At.Col && v.At.Col <= f.At.Col+2
			if beside && measuredText.MatchString(v.Text) {
				v.Key = f.Text // "Measured at 1 kHz | 152 ohm"
				out = append(out, v)
				i++
				continue
			}
			if beside {
				if field := pairField(f.Text, v.Text); field != vocabulary.Unknown {
					v.Field, v.Key = field, f.Text
					out = append(out, v)
					i++
					continue
				}
			}
		}
		out = append(out, f)
	}
	return out
}

// measuredText is a figure with the unit of something that is measured, and no more.
var measuredText = regexp.MustCompile(`(?i)^[<>~≈ ]*\d+(?:[.,]\d+)?\s*(?:Ω|ohms?|kΩ|dB\(?A?\)?|mA|A|Hz|kHz|°C)$`)

// pairField is the field of a key and a value. A value that is a conductor's
// size needs no more than a hint of cables in its key, and none where its unit
// stands with it.
func pairField(key, value string) vocabulary.Field {
	c := vocabulary.Score(key)
	if len(c) > 0 && c[0].Score >= pairScore && (c[0].Field != vocabulary.LineVoltage || !pureRating(value)) { // "V2 | 60 W"
		return c[0].Field
	}
	p, err := notation.ParseConductor(value, notation.Auto, notation.HintNone)
	if err != nil || p.AWG == nil && p.AreaMM2 == 0 {
		return vocabulary.Unknown
	}
	if !p.Doubts.Has(notation.AWGTaken) && !p.Doubts.Has(notation.AreaTaken) && p.Cores > 0 && strings.Contains(strings.ToLower(value), "m") {
		return vocabulary.Gauge
	}
	for _, x := range c {
		switch x.Field {
		case vocabulary.Cable, vocabulary.CableType, vocabulary.Gauge, vocabulary.Length, vocabulary.Conductors, vocabulary.Circuit:
			if x.Score >= hintScore {
				return vocabulary.Gauge
			}
		}
	}
	return vocabulary.Unknown
}

// keyed takes a text of the form "key: value" apart, if the key names a field.
func keyed(f layout.Fact) layout.Fact {
	key, value, ok := strings.Cut(f.Text, ":")
	if f.Field != vocabulary.Unknown || f.Key != "" || !ok || strings.TrimSpace(value) == "" || countWords(key) > 4 || f.At.Row == 0 {
		return f
	}
	if c := vocabulary.Score(key); len(c) > 0 && c[0].Score >= 0.6 {
		f.Field, f.Key, f.Text, f.Cell = c[0].Field, strings.TrimSpace(key), strings.TrimSpace(value), nil
	}
	return f
}

// ratingInTitle notes a rating said for an amplifier, or for all of them, in a
// title block.
func (b *builder) ratingInTitle(f *layout.Fact, s seen) {
	out, s := b.rating(s)
	if len(out) == 0 {
		return
	}
	if f.Key != "" {
		if a := b.amps[b.ampNames.Find(f.Key).Key]; a != nil {
			b.ampRated[a] = append(b.ampRated[a], ratedSeen{out, s})
			return
		}
	}
	b.ampTitle = append(b.ampTitle, ratedSeen{out, s})
}

// conductorInTitle notes a cable size said for all cables in a title block.
func (b *builder) conductorInTitle(s seen) {
	var c schedule.Cable
	text, style := b.readable(&s, notation.GaugeColumn)
	if _, err := notation.ParseConductor(text, style, notation.HintNone); err != nil {
		return // the name of a cable, or words
	}
	if b.readConductor(&c, s, vocabulary.Gauge) && b.cableTitle == nil {
		b.cableTitle = &c
	}
}

// notOfTheSystem are the facts whose words name a place or a person, not what
// the system serves.
var notOfTheSystem = map[vocabulary.Field]bool{vocabulary.Site: true, vocabulary.Client: true, vocabulary.Room: true,
	vocabulary.Author: true, vocabulary.Zone: true, vocabulary.Building: true, vocabulary.Floor: true}

// emergencyWords looks for words for emergency use of the system in a fact.
func (b *builder) emergencyWords(f *layout.Fact, s seen) {
	if b.job.Emergency.Yes || notOfTheSystem[f.Field] {
		return
	}
	for _, text := range []string{f.Text, f.Key} {
		for _, m := range notation.Emergency(text) {
			if !m.Sure {
				continue
			}
			source := s.source
			if source.How == schedule.NotHad {
				source = schedule.Source{At: f.At, Written: f.Text, How: schedule.FromTitle}
			}
			b.job.Emergency = schedule.Flag{Yes: notation.AnswerOf(f.Text) != notation.No, Source: source}
			return
		}
	}
}

// titleFields are the fields of facts whose words may name the line voltage of
// all lines in passing.
var titleFields = map[vocabulary.Field]bool{vocabulary.Unknown: true, vocabulary.Job: true, vocabulary.Notes: true, vocabulary.Site: true,
	vocabulary.Building: true, vocabulary.Describe: true, vocabulary.Use: true, vocabulary.Kind: true}

// voltsInTitles finds the line voltage in titles that state nothing else, "100
// V line schedule", else in notes about all lines or loudspeakers, "All
// speakers 70 V". All of them must agree.
func (b *builder) voltsInTitles() {
	var titles, notes []schedule.Quantity[schedule.Volts]
	for i := range b.facts {
		f := &b.facts[i]
		if v, _, ok := notation.LineVoltageIn(f.Text); ok && titleFields[f.Field] {
			titles = append(titles, schedule.Exactly(schedule.Volts(v), factSeen(f).source))
		}
	}
	for _, s := range b.spoken {
		v, general, ok := notation.LineVoltageIn(s.text)
		if !ok {
			continue
		}
		few := countWords(s.text) <= 3 && len(notation.PowersIn(s.text, notation.Auto)) == 0
		if (general || few) && !notation.SpeaksOfAmplifier(s.text) || ofAllLines(s.text) {
			notes = append(notes, schedule.Exactly(schedule.Volts(v), schedule.Source{At: s.at, Written: s.text, How: schedule.FromTitle}))
		}
	}
	var front []schedule.Quantity[schedule.Volts] // lines of a front sheet that is no list: "System | Public address, all lines 100 V"
	for i := range b.outside {
		o := &b.outside[i]
		if o.Class != layout.NoDevice || len(o.Text) > longestSpoken {
			continue
		}
		if text := strings.ReplaceAll(o.Text, " | ", ", "); ofAllLines(text) {
			v, _, _ := notation.LineVoltageIn(text)
			front = append(front, schedule.Exactly(schedule.Volts(v), schedule.Source{At: o.At, Written: o.Text, How: schedule.FromTitle}))
		}
	}
	for _, list := range [][]schedule.Quantity[schedule.Volts]{titles, notes, front} {
		if len(list) == 0 {
			continue
		}
		for _, q := range list[1:] {
			if !sameClass(float64(q.Low), float64(list[0].Low)) {
				return
			}
		}
		b.job.LineVolts = list[0]
		return
	}
}

// ofAllLines reports whether some sentence of a note that names a line voltage
// speaks of no amplifier: "All speakers on 70 V. Amp A: 2 outputs." Behind a comma
// it speaks of all: "Public address, all speaker lines 100 V".
func ofAllLines(note string) bool {
	for sentence := range strings.SplitSeq(note, ". ") {
		if _, general, ok := notation.LineVoltageIn(sentence); ok && general && !notation.SpeaksOfAmplifier(sentence) {
			return true
		}
		for part := range strings.SplitSeq(sentence, ", ") {
			if _, general, ok := notation.LineVoltageIn(part); ok && general && allWords.begins(join.Fold(part)) && !notation.SpeaksOfAmplifier(part) {
				return true
			}
		}
	}
	return false
}

// date is a date in ISO form when its cell holds one, else as written.
func (b *builder) date(s seen) schedule.Text {
	t := s.asText()
	if s.cell != nil && s.cell.Number > 1 && s.cell.Kind == 3 {
		if iso := isoDate(s.cell.Number); iso != "" {
			t.Value = iso
		}
	} else if iso := isoText(t.Value); iso != "" {
		t.Value = iso
	}
	return t
}

// useOf reads what a row says that it serves. Only a column for it, and sure
// words in remarks, count.
func useOf(r *row) (schedule.Use, schedule.Flag) {
	if s := r.own(vocabulary.Use); s.had() {
		if len(notation.Emergency(s.text)) > 0 {
			return schedule.Emergency, schedule.Flag{Yes: true, Source: s.source}
		}
		folded := join.Fold(s.text)
		switch {
		case musicWords.in(folded):
			return schedule.Music, schedule.Flag{Source: s.source}
		case pagingWords.in(folded):
			return schedule.Paging, schedule.Flag{Source: s.source}
		}
		return schedule.AnyUse, schedule.Flag{}
	}
	for _, f := range []vocabulary.Field{vocabulary.Notes, vocabulary.Circuit} {
		s := r.own(f)
		if !s.had() {
			continue
		}
		for _, m := range notation.Emergency(s.text) {
			if m.Sure {
				return schedule.Emergency, schedule.Flag{Yes: true, Source: s.source}
			}
		}
	}
	return schedule.AnyUse, schedule.Flag{}
}
