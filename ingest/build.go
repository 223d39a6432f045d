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

// A builder makes one job of the tables that belong to it. It works in three
// passes: what each row is; which names there are and which of them name one
// thing; and the parts themselves. The order of rows changes nothing but the
// order of the parts.
type builder struct {
	*account
	job     *schedule.Job
	opts    *Options
	tables  []*table
	facts   []layout.Fact // what the title blocks say, in reading order
	said    []said        // what sentences say of amplifiers
	loose   []said        // of two amplifiers or more that no row names
	spoken  []spoken      // the texts outside the tables
	routes  []route       // what they say of places and outputs
	carried []carried     // what they say of controls
	units   lengthEvidence

	zoneNames, ampNames, controlNames *join.Set
	zones                             map[string]*schedule.Zone
	amps                              map[string]*schedule.Amplifier
	controls                          map[string]*schedule.Control
	channels                          map[channelKey]*schedule.Channel
	speakers                          map[string][]*schedule.Loudspeaker // by key of each single tag
	types                             map[string]*typeEntry
	dir                               directory
	places                            places

	ampsOf       map[string][]string   // channel key -> keys of the amplifiers that have such a channel
	letters      map[channelKey]string // a lettered channel of an amplifier with numbered ones
	slots        map[string]int        // amplifier key -> number of its channels, when stated
	channelRated map[*schedule.Channel][]ratedSeen
	ampRated     map[*schedule.Amplifier][]ratedSeen // ratings of each of its channels
	frameRated   map[*schedule.Amplifier][]ratedSeen
	controlRated map[*schedule.Control][]ratedSeen
	ampLine      map[*schedule.Amplifier]schedule.Quantity[schedule.Volts] // for all channels of an amplifier
	ampTitle     []ratedSeen                                               // said for all channels in a title block
	controlTitle []ratedSeen                                               // said for all controls
	cableTitle   *schedule.Cable                                           // a size said for all cables
	claims       claims
	pending      []pendingTap
	origin       map[*schedule.Loudspeaker]*row
	modelColumns map[*column]bool // control columns that hold models, not tags
	parents      []parentText
	looseTags    map[string][]*schedule.Loudspeaker // tags without the word for a loudspeaker; nil until asked for

	lookOnly bool // while a row that does not count is worked out: create nothing
}

// A channelKey names a channel: keys of its amplifier ("" if none) and of itself.
type channelKey struct{ amp, channel string }

// A ratedSeen is a rating as read, before it is known which line voltage it
// has to hold for.
type ratedSeen struct {
	outputs []notation.RatedOutput
	at      seen
}

// A pendingTap is a tap whose watts need something that is known later: the
// line voltage, or the rated power.
type pendingTap struct {
	l *schedule.Loudspeaker
	t tapped
}

// A parentText is what a schedule says feeds a control.
type parentText struct {
	control *schedule.Control
	by      seen
}

func newBuilder(file string, opts *Options, p *part) *builder {
	tables := p.tables
	return &builder{account: newAccount(), job: &schedule.Job{File: file}, opts: opts, tables: tables, facts: p.facts, said: slices.Clone(p.said), spoken: p.spoken,
		zoneNames: join.NewSet(join.Zone), ampNames: join.NewSet(join.Amplifier), controlNames: join.NewSet(join.Control),
		zones: make(map[string]*schedule.Zone), amps: make(map[string]*schedule.Amplifier), controls: make(map[string]*schedule.Control),
		channels: make(map[channelKey]*schedule.Channel), speakers: make(map[string][]*schedule.Loudspeaker), types: make(map[string]*typeEntry),
		ampsOf: make(map[string][]string), letters: make(map[channelKey]string), slots: make(map[string]int),
		channelRated: make(map[*schedule.Channel][]ratedSeen), ampRated: make(map[*schedule.Amplifier][]ratedSeen),
		frameRated: make(map[*schedule.Amplifier][]ratedSeen), controlRated: make(map[*schedule.Control][]ratedSeen),
		origin: make(map[*schedule.Loudspeaker]*row), modelColumns: make(map[*column]bool)}
}

// build makes the job.
func (b *builder) build() *schedule.Job {
	b.cableBooks()
	b.bareTitles()
	b.nameSections()
	b.sheetZones()
	for _, t := range b.tables {
		for _, r := range t.rows {
			b.classify(r)
		}
	}
	b.sentenceRows()
	b.demoteSummaries()
	b.gatherDirectory()
	b.gatherPlaces()
	b.gatherLengthUnits()
	b.collectNames()
	b.jobFacts()
	b.each(typeRow, b.addType)
	b.each(amplifierRow, b.addAmplifier)
	b.each(channelRow, b.addChannel)
	b.each(zoneRow, b.addZone)
	b.each(controlRow, b.addControl)
	b.each(loudspeakerRow, b.addLoudspeakers)
	b.nearEnds()
	b.zoneGroups()
	b.each(channelRow, b.addChannelCable)
	b.each(cableRow, b.addCable)
	b.each(measurementRow, b.addMeasurement)
	b.applyRoutes()
	b.hangOnOnly()
	b.applySaid()
	b.link()
	b.leaveOut()
	b.totals()
	b.describeTables()
	b.prune()
	b.job.Assumptions = b.assumptions()
	b.job.Refused = b.refused()
	b.job.Questions = b.asked()
	return b.job
}

// each calls do for every row of a kind that counts.
func (b *builder) each(kind deviceKind, do func(*row)) {
	for _, t := range b.tables {
		for _, r := range t.rows {
			if r.kind == kind && r.out == "" {
				do(r)
			}
		}
	}
}

// classify decides what a row is and whether it counts.
func (b *builder) classify(r *row) {
	switch r.Class {
	case layout.Device:
		if r.isTitle {
			r.out, r.reason = schedule.TitleRow, "a title"
			return
		}
		r.kind = kindOf(r)
		r.status = b.statusOf(r)
		if r.t.SheetHidden {
			r.out, r.reason = schedule.HiddenRow, "on a hidden sheet"
		}
	case layout.Struck:
		r.kind, r.out = kindOf(r), schedule.StruckRow
	case layout.Hidden:
		r.kind, r.out = kindOf(r), schedule.HiddenRow
	default:
		r.out = rowKinds[r.Class]
		if r.out == "" {
			r.out = schedule.NotUnderstood
		}
	}
	if r.out != "" && r.reason == "" {
		r.reason = r.Reason
	}
	if r.out != "" && r.reason == "" {
		r.reason = string(r.out)
	}
}

// rowKinds are the reasons that the layout of a sheet gives.
var rowKinds = map[layout.Class]schedule.RowKind{
	layout.Title: schedule.TitleRow, layout.Header: schedule.HeaderRow, layout.UnitsRow: schedule.UnitRow,
	layout.Total: schedule.TotalRow, layout.Note: schedule.NoteRow, layout.NoDevice: schedule.EmptyRow, layout.Unclear: schedule.NotUnderstood,
}

// statuses are what a word of a schedule makes of a part.
var statuses = map[string]schedule.Status{
	string(notation.StatusSpare): schedule.Spare, string(notation.StatusFuture): schedule.Future,
	string(notation.StatusRemoved): schedule.Removed, string(notation.StatusByOthers): schedule.ByOthers,
	string(notation.StatusStandby): schedule.Standby,
}

// fewWords is the most words of a remark in which a status word is taken for
// the status of the row rather than part of a sentence.
const fewWords = 6

// statusOf finds out whether a part is installed. A column for it decides;
// else a sure word in a short remark, description or tag, or in a section title.
func (b *builder) statusOf(r *row) schedule.Status {
	if s := r.own(vocabulary.Status); s.text != "" {
		said := false
		for _, m := range notation.Statuses(s.text) {
			said = true
			if status := statuses[m.Kind]; status != schedule.Installed {
				return status // "existing, taken down" is taken down
			}
		}
		if said {
			return schedule.Installed
		}
		if s.missing == notation.MissingByOthers {
			return schedule.ByOthers
		}
	}
	for _, f := range []vocabulary.Field{vocabulary.Notes, vocabulary.Describe, vocabulary.Tag, vocabulary.Item, vocabulary.Model, vocabulary.Quantity, vocabulary.Tap, vocabulary.Control} {
		s := r.own(f)
		if s.text == "" {
			continue
		}
		if f == vocabulary.Tag && plainTag(s.text) {
			continue
		}
		if f == vocabulary.Notes && s.missing == notation.MissingByOthers {
			return schedule.ByOthers
		}
		if f == vocabulary.Quantity || f == vocabulary.Tap {
			if s.cell != nil && s.cell.Number != 0 || anyDigit(s.text) {
				continue // "3 + 1 spare" is a count
			}
		}
		for _, m := range notation.Statuses(s.text) {
			status, known := statuses[m.Kind]
			if !known || !m.Sure {
				continue
			}
			words, of := countWords(m.Text), countWords(s.text)
			if of <= fewWords && (2*words > of || strings.HasPrefix(join.Fold(s.text), join.Fold(m.Text))) {
				return status
			}
			b.ask(s.source.At, "status", "“"+short(s.text)+"” may mean that this row is "+status.String()+": is it installed?", "whether the row counts as load")
		}
	}
	for _, f := range []vocabulary.Field{vocabulary.Channel, vocabulary.Amplifier, vocabulary.Zone} {
		_, in, _ := strings.Cut(r.own(f).text, "(") // "A-3 (to follow)"
		for _, m := range notation.Statuses(in) {
			if status := statuses[m.Kind]; m.Sure && status != schedule.Installed {
				return status
			}
		}
	}
	for i := len(r.Sections) - 1; i >= 0; i-- {
		f := &r.Sections[i]
		if f.Field == vocabulary.Room || f.Field == vocabulary.Zone || countWords(f.Text) > fewWords {
			continue
		}
		for _, m := range notation.Statuses(f.Text) {
			if status, known := statuses[m.Kind]; known && m.Sure {
				return status
			}
		}
	}
	return schedule.Installed
}
