package ingest

import (
	"regexp"
	"slices"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// zone returns the zone that a text names, and makes it when it is new. It is
// nil when the name could be one of several, which is then a question.
func (b *builder) zone(s seen, name string) *schedule.Zone {
	if !s.had() {
		return nil
	}
	f := b.zoneNames.Find(name)
	if f.Key == "" {
		return nil
	}
	if f.Match == join.Unclear {
		b.unclear(s, "zone", name, f.Between)
		return nil
	}
	b.guessed(s, "zone", name, f)
	z := b.zones[f.Key]
	if z == nil && !b.lookOnly {
		z = &schedule.Zone{At: s.source.At, Key: f.Key, Name: tidy(f.Name)}
		b.zones[f.Key] = z
		b.job.Zones = append(b.job.Zones, z)
	}
	return z
}

// zoneOf is the zone that a row says it belongs to.
func (b *builder) zoneOf(r *row) *schedule.Zone {
	z := b.placeText(r)
	if !z.had() && r.kind == loudspeakerRow {
		if line := b.lineOf(r); line != nil && line.row != nil {
			z = line.row.zoneText() // that of its line
		}
	}
	if z.had() && z.field != vocabulary.Zone {
		s := z
		s.field = vocabulary.Zone
		b.take(s, "zone", "the "+z.field.String(), schedule.LikelierReading, "no zone is named anywhere")
	}
	return b.zone(z, z.text)
}

// addZone makes or completes the zone of a row of a zone table. What such a
// row says of loudspeakers is looked at later: see zoneGroups.
func (b *builder) addZone(r *row) {
	name, other := b.zoneName(r)
	if !name.had() && len(b.outletOf(r).channels) > 0 {
		r.kind = channelRow // an output that no zone hangs on
		b.addChannel(r)
		return
	}
	if !name.had() {
		r.out, r.reason = schedule.NotUnderstood, "no name of a zone"
		return
	}
	z := b.zone(name, name.text)
	if z == nil {
		r.out, r.reason = schedule.NotUnderstood, "the zone’s name could mean several"
		return
	}
	r.used = true
	switch {
	case r.own(vocabulary.Room).had():
		setText(&z.Room, r.own(vocabulary.Room).asText())
	case other.had():
		setText(&z.Room, other.asText())
	}
	o := b.outletOf(r)
	for _, c := range b.channelsOf(r) {
		b.fillChannel(r, c)
		if !slices.Contains(z.Channels, c) {
			z.Channels = append(z.Channels, c)
		}
	}
	if len(z.Channels) > 0 && z.Channel == nil {
		z.Channel = z.Channels[0]
	}
	if o.ab && len(z.Channels) > 1 {
		z.ABCircuits = schedule.Flag{Yes: true, Source: o.at.source}
	}
	if c := b.controlOf(r, z); c != nil {
		if z.Control == nil {
			z.Control = c
		}
		if c.Zone == nil {
			c.Zone = z
		}
	}
	if flag := b.overrideOf(r); flag.Had() {
		z.Override = flag
	}
	if use, flag := useOf(r); flag.Had() {
		z.Use = use
		if use == schedule.Emergency {
			z.Emergency = flag
		}
	}
	b.measure(r, schedule.Measurement{Zone: z})
	b.runAlong(r, &schedule.Cable{Zone: z, Channel: z.Channel, Control: z.Control, Reach: schedule.WholeLine})
}

// zoneGroups makes loudspeakers of the zone rows whose zone is listed nowhere
// else; where the loudspeakers are listed one by one, a zone row's count and
// load are claims about them.
func (b *builder) zoneGroups() {
	listed := make(map[*schedule.Zone]bool)
	for _, l := range b.job.Loudspeakers {
		if l.Zone != nil {
			listed[l.Zone] = true
		} else if z := b.zones[b.zoneNames.Find(l.Room.Value).Key]; z != nil {
			listed[z] = true // by a room that will be taken for its zone
		}
	}
	for _, t := range b.tables {
		for _, r := range t.rows {
			if r.kind != zoneRow || r.out != "" {
				continue
			}
			name, _ := b.zoneName(r)
			z := b.zone(name, name.text)
			if z == nil {
				continue
			}
			if !listed[z] {
				if r.own(vocabulary.Tap).had() || r.own(vocabulary.Quantity).had() || b.loads(r.own(vocabulary.TotalWatts)) || b.loads(r.own(vocabulary.Load)) {
					b.addLoudspeakersTo(r, z)
				}
				continue
			}
			count, _ := b.pieces(r.own(vocabulary.Quantity))
			z.Count = plus(z.Count, count)
			load := b.watts(r.own(vocabulary.TotalWatts))
			z.Stated = plus(z.Stated, load.Or(b.watts(r.own(vocabulary.Load))))
		}
	}
}

// loads reports whether a cell states a load, which 0 W is not.
func (b *builder) loads(s seen) bool {
	w := b.watts(s)
	return w.Had() && w.High > 0
}

// fewestOfRow is the fewest filled cells of a usual row beside which a row with
// a single one stands out.
const fewestOfRow = 4

// bareTitles finds rows of one cell that name an output of an amplifier
// ("A1.2") above the loudspeakers on it.
func (b *builder) bareTitles() {
	for _, t := range b.tables {
		if t.kind != layout.Loudspeakers && t.kind != layout.Mixed || t.has(vocabulary.Channel) || t.has(vocabulary.Amplifier) {
			continue
		}
		bare, full, devices := 0, 0, 0
		for _, r := range t.rows {
			if r.Class != layout.Device {
				continue
			}
			devices++
			switch n, text := r.stated(); {
			case n >= fewestOfRow:
				full++
			case n == 1:
				if c := b.channelRef(text); c.ok && c.ref.Amplifier != "" && len(c.ref.Channels) > 0 {
					bare++
				}
			}
		}
		if bare < 2 || bare+full < devices*9/10 {
			continue
		}
		var title *layout.Fact
		for _, r := range t.rows {
			if n, text := r.stated(); r.Class == layout.Device && n == 1 {
				r.isTitle = true
				title = &layout.Fact{Field: vocabulary.Channel, Text: text, At: r.At}
			}
			r.title = title
		}
	}
}

// stated counts the cells of a row that hold something of their own, and
// returns the text of the first.
func (r *row) stated() (n int, first string) {
	for i := range r.Values {
		if v := &r.Values[i]; v.How == schedule.Stated && v.Text != "" {
			if n == 0 {
				first = v.Text
			}
			n++
		}
	}
	return n, first
}

// firstSections is for tables that stand one below the other with the same
// header: the title right above the first header is a title like those above
// the repeated ones, and holds for the rows below it.
func (b *builder) firstSections() {
	for _, t := range b.tables {
		if len(t.HeaderRows) == 0 || t.Transposed || len(t.rows) == 0 || len(t.rows[0].Sections) > 0 {
			continue
		}
		title := titleOver(t.Titles, t.Sheet, t.HeaderRows[0])
		if title == nil {
			continue
		}
		field, ok := t.repeatsUnder(title.Field)
		if !ok {
			continue
		}
		first := *title
		first.Field = field
		for _, r := range t.rows {
			if len(r.Sections) > 0 {
				break
			}
			r.Sections = []layout.Fact{first}
		}
	}
}

// titleOver is the title in the line above a header, or above a blank line there.
func titleOver(titles []layout.Fact, sheet string, header int) *layout.Fact {
	for i := len(titles) - 1; i >= 0; i-- {
		f := &titles[i]
		if f.At.Sheet() == sheet && f.Key == "" && (int(f.At.Row) == header-1 || int(f.At.Row) == header-2) {
			return f
		}
	}
	return nil
}

// repeatsUnder reports whether the header comes again, each time right under a
// section title, and what field these titles are of: that of the title above
// the first header, if that says one.
func (t *table) repeatsUnder(f vocabulary.Field) (vocabulary.Field, bool) {
	repeated := 0
	for i, r := range t.rows {
		if r.Class != layout.Header {
			continue
		}
		if i+1 >= len(t.rows) || len(t.rows[i+1].Sections) != 1 {
			return f, false
		}
		s := t.rows[i+1].Sections[0]
		if f == vocabulary.Unknown && repeated == 0 {
			f = s.Field
		}
		if s.Field != f || int(s.At.Row) < r.Rows.First-2 || int(s.At.Row) >= r.Rows.First {
			return f, false
		}
		repeated++
	}
	return f, repeated > 0
}

// nameSections decides what section titles are that only name something:
// outputs of amplifiers where no column has them and all titles read as such
// ("A1.2"), else zones where nothing else names a zone.
func (b *builder) nameSections() {
	for _, t := range b.tables {
		if t.kind != layout.Loudspeakers && t.kind != layout.Mixed {
			continue
		}
		titles := make(map[string]bool)
		for _, r := range t.rows {
			for i := range r.Sections {
				if f := &r.Sections[i]; f.Field == vocabulary.Unknown {
					titles[f.Text] = true
				}
			}
		}
		if len(titles) == 0 {
			continue
		}
		outlets, kinds := true, false
		for text := range titles {
			kinds = kinds || headsKind(text)
			c := b.channelRef(text)
			outlets = outlets && c.ok && c.ref.Amplifier != "" && len(c.ref.Channels) > 0 && anyDigit(text)
		}
		switch {
		case outlets && !t.has(vocabulary.Channel) && !t.sectioned(vocabulary.Channel) && !t.sectioned(vocabulary.Amplifier):
			t.sectionAs = vocabulary.Channel
		case !outlets && !kinds && len(titles) > 1 && !t.has(vocabulary.Zone) && !t.sectioned(vocabulary.Zone) && !t.title(vocabulary.Zone).had():
			t.sectionAs = vocabulary.Zone
		}
	}
}

// kindConcepts are what words for the things of a list mean.
var kindConcepts = map[string]bool{"speaker": true, "amplifier": true, "control": true, "cable": true, "tap": true, "device": true}

// headsKind reports whether a title has no words but those for kinds of things:
// "Loudspeakers", "Amplifier and control", as the parts of a bill are headed.
func headsKind(title string) bool {
	concepts := vocabulary.NewScorer().Concepts(title)
	return len(concepts) > 0 && vocabulary.NewScorer().Header(title).Explained >= 1 &&
		!slices.ContainsFunc(concepts, func(c string) bool { return !kindConcepts[c] })
}

// sheetZones takes the title of each sheet, else its name, for a zone where
// several sheets list loudspeakers and nothing on them names a zone: one sheet
// for each zone.
func (b *builder) sheetZones() {
	var lists, weak []*table // weak: with a column that was hardly a zone and is mostly blank
	sheets := make(map[string]bool)
	for _, t := range b.tables {
		if t.kind != layout.Loudspeakers && t.kind != layout.Mixed || t.SheetHidden || t.outdated {
			continue
		}
		if cols := t.byField[vocabulary.Zone]; len(cols) == 1 && cols[0].Confidence < 0.5 && t.hardlyFilled(cols[0]) {
			weak = append(weak, t)
		} else if t.namesZones() {
			b.sheetsBesideZones()
			return
		}
		lists = append(lists, t)
		sheets[t.Sheet] = true
	}
	if len(sheets) < 2 || !alike(lists) || slices.ContainsFunc(lists, (*table).ofEquipment) {
		return
	}
	for _, t := range weak {
		t.become(t.byField[vocabulary.Zone][0], vocabulary.Unknown, "the sheets name the zones")
	}
	for i, name := range namesOfSheets(lists) {
		if name == nil {
			continue
		}
		t := lists[i]
		zone := *name
		zone.Field = vocabulary.Zone
		t.titles = append(slices.Clip(t.titles), zone)
		s := factSeen(&zone)
		b.take(s, "zone", zone.Text, schedule.LikelierReading, "a sheet for each zone")
	}
}

// inYear finds a year: a title with one says when a list was made, and names no zone.
var inYear = regexp.MustCompile(`\b(?:19|20)\d\d\b`)

// ofEquipment reports whether the sheet of a table is named after a rack or an amplifier:
// what it lists may lie in any zone.
func (t *table) ofEquipment() bool {
	return rackEnds.begins(join.Fold(t.Sheet)+" ") || join.HasWord(join.Amplifier, t.Sheet)
}

// alikeShare is the least share of the fields of two lists that both have, of
// all that either has, for lists of one form.
const alikeShare = 0.7

// alike reports whether lists have one form: what a sheet for each zone has,
// while lists of different things have columns of their own.
func alike(lists []*table) bool {
	fields := func(t *table) map[string]bool {
		m := make(map[string]bool)
		for f := range vocabulary.Field(vocabulary.Fields) {
			if f != vocabulary.Unknown && f != vocabulary.Ignored && t.has(f) {
				m[f.String()] = true
			}
		}
		return m
	}
	first := fields(lists[0])
	for _, t := range lists[1:] {
		other := fields(t)
		both := shared(first, other)
		if float64(both) < alikeShare*float64(len(first)+len(other)-both) {
			return false
		}
	}
	return true
}

// hardlyFilled reports whether a column says something of its own in less than
// half of the device rows, or always the same.
func (t *table) hardlyFilled(c *column) bool {
	n := 0
	texts := make(map[string]bool)
	for i := range t.Records {
		if r := &t.Records[i]; r.Class == layout.Device && r.Values[c.i].How == schedule.Stated && r.Values[c.i].Text != "" {
			n++
			texts[r.Values[c.i].Text] = true
		}
	}
	return 2*n < t.devices() || len(texts) == 1
}

// sectioned reports whether a section title of the table states the field.
func (t *table) sectioned(f vocabulary.Field) bool {
	for _, r := range t.rows {
		for i := range r.Sections {
			if r.Sections[i].Field == f {
				return true
			}
		}
	}
	return false
}

// plus adds what a further row states; the source is that of the first.
func plus[T ~float64](a, b schedule.Quantity[T]) schedule.Quantity[T] {
	if !a.Had() {
		return b
	}
	if b.Had() {
		a.Low, a.High, a.How, a.Because = a.Low+b.Low, a.High+b.High, schedule.Computed, "the sum of the rows of the zone"
	}
	return a
}

// zonesOfOutputs takes a list of outputs as one of zones where an output comes
// again for another zone with a load of its own: each load is that of a zone,
// and the output carries them all.
func (b *builder) zonesOfOutputs() {
	for _, t := range b.tables {
		if t.kind != layout.Channels || !t.has(vocabulary.Zone) || !t.has(vocabulary.Load) && !t.has(vocabulary.TotalWatts) {
			continue
		}
		zoneOf := make(map[string]string)
		again := false
		for _, r := range t.rows {
			zone, ch := r.own(vocabulary.Zone), r.own(vocabulary.Channel)
			if r.kind != channelRow || r.out != "" || !zone.had() || !ch.had() {
				continue
			}
			key := r.own(vocabulary.Amplifier).key() + "\x1f" + ch.key()
			if first, met := zoneOf[key]; met && first != zone.key() && r.first(vocabulary.Load, vocabulary.TotalWatts).had() {
				again = true
			} else if !met {
				zoneOf[key] = zone.key()
			}
		}
		for _, r := range t.rows {
			if again && r.kind == channelRow && r.own(vocabulary.Zone).had() {
				r.kind = zoneRow
			}
		}
	}
}
