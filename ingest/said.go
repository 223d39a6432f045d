package ingest

import (
	"cmp"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
	"lineaudit/ingest/watch"
)

// What a sentence outside the tables says of an amplifier ("PA1: two outputs,
// 60 W each") holds where the tables say nothing of it. A sentence counts for
// the amplifiers that a table names; the only one that a file names at all is
// the amplifier of its outputs.

// A said is one amplifier of a sentence.
type said struct {
	notation.RatedAmplifier
	source schedule.Source
	bare   bool // watts beside a name and no word that says what they are
}

// saidIn finds the sentences about amplifiers in the texts of a sheet, each
// alone or all of a row together.
func saidIn(cells []spoken, w *watch.Watch) []said {
	var out []said
	for len(cells) > 0 {
		w.Step()
		n := 1
		for n < len(cells) && cells[n].at.Row == cells[0].at.Row {
			n++
		}
		row := cells[:n]
		cells = cells[n:]
		var texts []string
		for _, c := range row {
			texts = append(texts, c.text)
		}
		whole := false
		for _, between := range []string{"; ", " "} {
			text := strings.Join(texts, between)
			if list := sentence(text, row[0].at); n > 1 && len(list) > 0 && list[0].Name != "" && (list[0].Worded || list[0].W > 0) {
				out, whole = append(out, list...), true
				break
			}
		}
		for _, c := range row {
			if !whole {
				out = append(out, sentence(c.text, c.at)...)
			}
		}
	}
	return out
}

func sentence(text string, at schedule.Ref) []said {
	list, err := notation.ParseRatingSentence(text, notation.Auto)
	if err != nil {
		return nil
	}
	var out []said
	for _, a := range list {
		s := said{RatedAmplifier: a, source: schedule.Source{At: at, Written: text, How: schedule.FromTitle}}
		s.bare = !a.Worded && a.Outputs == 0 && !a.PerOutput
		if a.Name == "" && s.bare && slices.ContainsFunc(a.Ways, func(w notation.NamedWatts) bool { return !usualOutput(w.W) }) {
			continue // loads, more likely
		}
		out = append(out, s)
	}
	return out
}

// ampText is the name of the amplifier of a sentence as the tables may have it.
func (s *said) ampText() string { return ampText(&s.RatedAmplifier) }

func ampText(a *notation.RatedAmplifier) string {
	if len(a.Name) == 1 {
		return "Amp " + a.Name // a bare figure or letter names nothing
	}
	return a.Name
}

// hearAmplifiers adds the names in sentences to those of the tables.
func (b *builder) hearAmplifiers() {
	for i := range b.said {
		if b.said[i].Name != "" {
			b.ampNames.Refer(b.said[i].ampText())
		}
		for _, zone := range b.said[i].Zones {
			if namesPlace(b.places.zones, join.Zone, zone) {
				b.zoneNames.Refer(zone)
			}
		}
	}
}

// keepSaid keeps the sentences about amplifiers that a table names, about all
// of them, and about the only one that the file names.
func (b *builder) keepSaid() {
	known := b.ampsInTables()
	worded, unworded := make(map[string]bool), make(map[string]bool)
	for i := range b.said {
		s := &b.said[i]
		switch k := b.ampNames.Find(s.ampText()).Key; {
		case s.Name == "":
		case s.Worded:
			worded[k] = true
		case s.Outputs > 0 || len(s.Ways) > 0:
			unworded[k] = true
		}
	}
	named := worded
	if len(worded) == 0 {
		named = unworded
	}
	only := len(known) == 0 && len(named) == 1
	b.said = slices.DeleteFunc(b.said, func(s said) bool {
		k := b.ampNames.Find(s.ampText()).Key
		if s.Name == "" || known[k] || only && named[k] || b.feedsKnown(&s) {
			return false
		}
		if s.Worded && s.W > 0 && len(known) == 0 {
			b.loose = append(b.loose, s)
		}
		return true
	})
	for i := range b.said {
		s := &b.said[i]
		if s.Name == "" {
			continue
		}
		name := seen{text: s.Name, field: vocabulary.Amplifier, source: s.source}
		a := b.amplifier(name, s.ampText())
		if a == nil {
			continue
		}
		if a.Name == s.ampText() && unicode.IsLetter([]rune(s.Name)[0]) {
			a.Name = s.Name
		}
		if only {
			a.Name = s.Name
			b.take(name, "amplifier", s.Name, schedule.LikelierReading, "the only amplifier that the file names")
		}
		if n := max(s.Outputs, len(s.Ways)); n > 0 && b.slots[a.Key] == 0 && b.numberedWays(s) && len(b.waysOwned(s)) == 0 {
			b.slots[a.Key] = n
		}
	}
}

// looseOutputs are the outputs that rows name without an amplifier.
func (b *builder) looseOutputs() map[string]bool {
	if b.looseIDs == nil {
		b.looseIDs = make(map[string]bool)
		for _, t := range b.tables {
			for _, r := range t.rows {
				if o := b.outletOf(r); r.out == "" && o.amp == "" {
					for _, ch := range o.channels {
						b.looseIDs[channelID(ch)] = true
					}
				}
			}
		}
	}
	return b.looseIDs
}

// waysOwned are the outputs that rows name without an amplifier and a sentence
// gives to one: "Amp A feeds lines 1 and 2", or by their first letter, "all A
// circuits are on amplifier 1" where the outputs are A1, A2, A3.
func (b *builder) waysOwned(s *said) []string {
	loose := b.looseOutputs()
	var out []string
	for _, w := range s.Ways {
		id := channelID(w.Name)
		if loose[id] {
			out = append(out, id)
			continue
		}
		for _, k := range sortedKeys(loose) {
			if len(id) == 1 && strings.HasPrefix(k, id) && strings.Trim(k[1:], "0123456789") == "" && len(k) > 1 && letterNumber(id) > 0 {
				out = append(out, k)
			}
		}
	}
	return out
}

// feedsKnown reports whether a sentence names an amplifier together with
// outputs or zones that rows name: then it is known by what it feeds.
func (b *builder) feedsKnown(s *said) bool {
	if !s.Worded || s.Name == "" {
		return false
	}
	for _, name := range s.Zones {
		if f := b.zoneNames.Find(name); f.Key == "" || f.Match == join.Unclear || !namesPlace(b.places.zones, join.Zone, name) {
			return false
		}
	}
	return len(s.Zones) > 0 || len(b.waysOwned(s)) > 0
}

// ampsInTables are the keys of the amplifiers that rows name.
func (b *builder) ampsInTables() map[string]bool {
	known := make(map[string]bool)
	for _, t := range b.tables {
		for _, r := range t.rows {
			if r.out != "" {
				continue
			}
			name := b.outletOf(r).amp
			if r.kind == amplifierRow || r.kind == channelRow {
				if own, _ := b.ampName(r); own.had() {
					name = own.text
				}
			}
			if name != "" {
				known[b.ampNames.Find(name).Key] = true
			}
		}
	}
	return known
}

// sentenceRows takes rows of a list of devices for what they are where they
// are sentences about an amplifier: "Amp EB2 | way 1 40 W | way 2 60 W".
func (b *builder) sentenceRows() {
	for _, t := range b.tables {
		for _, r := range t.rows {
			if r.Class == layout.Device && r.out == "" && statesOnly(r) {
				r.out, r.reason = schedule.NoteRow, "names and powers, and no device"
				for i := range r.Values {
					if v := &r.Values[i]; v.Text != "" && v.How == schedule.Stated {
						b.spoken = append(b.spoken, spoken{v.At, v.Text})
					}
				}
				continue
			}
			if r.out == "" && r.kind == amplifierRow && b.billedAmplifier(r) {
				continue
			}
			if r.out != "" || r.kind == channelRow || r.kind == amplifierRow && t.kind != layout.Loudspeakers {
				continue
			}
			if tap := r.own(vocabulary.Tap); tap.had() {
				if p, err := notation.ParseTap(tap.text, notation.Auto); err == nil && !p.Doubts.Has(notation.SplitRead) {
					continue
				}
			}
			var texts []string
			for i := range r.Values {
				if v := &r.Values[i]; v.Text != "" && v.How == schedule.Stated {
					texts = append(texts, v.Text)
				}
			}
			if len(texts) == 0 || !notation.SpeaksOfAmplifier(texts[0]) {
				continue
			}
			list := sentence(strings.Join(texts, " "), r.At)
			if len(list) > 0 && list[0].Worded && list[0].Name != "" && strings.Contains(texts[0], list[0].Name) && (list[0].W > 0 || list[0].TotalW > 0 || len(list[0].Ways) > 0) {
				b.said = append(b.said, list...)
				r.out, r.reason = schedule.NoteRow, "says what an amplifier gives"
			}
		}
	}
}

// statement is a name with a power: "POT-1: 30 W", "L2 = 2 x 60 W".
var statement = regexp.MustCompile(`(?i)^\s*\pL.{0,30}?\s*[:=]\s*(?:\d+\s*[x×]\s*)?\d+(?:[.,]\d+)?\s*k?w\b`)

// statesOnly reports whether all cells of a row are such statements.
func statesOnly(r *row) bool {
	n := 0
	for i := range r.Values {
		if v := &r.Values[i]; v.Text != "" && v.How == schedule.Stated {
			if !statement.MatchString(v.Text) {
				return false
			}
			n++
		}
	}
	return n > 0
}

// billedAmplifier takes a row of a bill whose description says what an
// amplifier gives, "Power amplifier, two outputs of 120 W", as that sentence,
// if no column names the amplifier.
func (b *builder) billedAmplifier(r *row) bool {
	for _, f := range []vocabulary.Field{vocabulary.Amplifier, vocabulary.Tag, vocabulary.Model, vocabulary.ChannelWatts, vocabulary.FrameWatts, vocabulary.Channel} {
		if r.own(f).had() {
			return false
		}
	}
	d := r.own(vocabulary.Describe)
	if n, _ := b.pieces(r.own(vocabulary.Quantity)); n.Had() && n.High > 1 {
		return false
	}
	list := sentence(d.text, d.source.At)
	if !d.had() || len(list) != 1 || !list[0].Worded || list[0].W == 0 || list[0].Outputs < 2 && len(list[0].Ways) == 0 {
		return false
	}
	b.said = append(b.said, list...)
	r.out, r.reason = schedule.NoteRow, "says what an amplifier gives"
	return true
}

// zonesInTurn gives each zone an output of the only amplifier that a sentence
// speaks of, where it says that each has one and no row names any: the output
// of the zone's number, else one after the other.
func (b *builder) zonesInTurn() {
	i := slices.IndexFunc(b.said, func(s said) bool { return s.Outputs > 1 && (s.PerZone || b.bareZones(s.Outputs)) })
	if i < 0 || len(b.said) > 1 || len(b.job.Channels) > 0 || len(b.job.Zones) == 0 {
		return
	}
	s := &b.said[i]
	numbers := make([]int, len(b.job.Zones))
	for k, z := range b.job.Zones {
		n := join.Parse(join.Zone, z.Name)
		numbers[k], _ = strconv.Atoi(cmp.Or(n.Number, n.Tail))
	}
	if slices.Min(numbers) < 1 || slices.Max(numbers) > s.Outputs {
		if len(numbers) > s.Outputs {
			return
		}
		for k := range numbers {
			numbers[k] = k + 1
		}
	}
	var a *schedule.Amplifier
	if len(b.job.Amplifiers) == 1 {
		a = b.job.Amplifiers[0]
	}
	for k, z := range b.job.Zones {
		if c := b.channel(a, itoa(numbers[k]), s.source.At); c != nil && z.Channel == nil {
			z.Channel, z.Channels = c, []*schedule.Channel{c}
		}
	}
	b.take(seen{text: s.source.Written, field: vocabulary.Channel, source: s.source}, "channel", "one output for each zone, in turn", schedule.LikelierReading, "the zones are not named beside the outputs")
}

// bareZones reports whether the zones have no names but the numbers of n outputs.
func (b *builder) bareZones(n int) bool {
	return !slices.ContainsFunc(b.job.Zones, func(z *schedule.Zone) bool {
		name := join.Parse(join.Zone, z.Name)
		number, err := strconv.Atoi(name.Number)
		return err != nil || !name.Bare() || number < 1 || number > n
	})
}

// numberedWays reports whether the outputs that a sentence names are numbers,
// which also holds if it names none.
func (b *builder) numberedWays(s *said) bool {
	return !slices.ContainsFunc(s.Ways, func(w notation.NamedWatts) bool {
		id := channelID(w.Name)
		return id == "" || id[0] < '0' || id[0] > '9'
	})
}

// applySaid gives amplifiers and their channels what sentences say of them,
// where nothing else does.
func (b *builder) applySaid() {
	for i := range b.said {
		s := &b.said[i]
		at := seen{text: s.source.Written, field: vocabulary.ChannelWatts, source: s.source}
		var amps []*schedule.Amplifier
		if s.Name == "" {
			amps = b.job.Amplifiers
		} else if a := b.amps[b.ampNames.Find(s.ampText()).Key]; a != nil {
			amps = []*schedule.Amplifier{a}
		}
		for _, a := range amps {
			b.applyTo(a, s, at)
		}
		if len(amps) == 0 {
			b.applyToLoose(s, at)
		}
		if d := s.Doubts & (notation.Bare | notation.OtherPower); d != 0 && s.W > 0 {
			for _, why := range d.Texts() {
				b.take(at, "channel rating", plain(s.W)+" W", schedule.LikelierReading, why)
			}
		}
	}
	b.applyEither()
}

// applyEither is for channels that name no amplifier under sentences about two
// or more: each may have the rating of any of them.
func (b *builder) applyEither() {
	if len(b.loose) < 2 {
		return
	}
	var ratings []notation.RatedOutput
	var names []string
	for i := range b.loose {
		s := &b.loose[i]
		if s.PerOutput || s.Outputs <= 1 {
			ratings = append(ratings, notation.RatedOutput{W: s.W})
			names = append(names, s.Name)
		}
	}
	first := &b.loose[0]
	at := seen{text: first.source.Written, field: vocabulary.ChannelWatts, source: first.source}
	asked := false
	for _, c := range b.job.Channels {
		if c.Amplifier != nil || len(b.channelRated[c]) > 0 || len(ratings) < 2 {
			continue
		}
		b.noteChannelRating(c, ratings, at)
		if !asked {
			asked = true
			b.ask(at.source.At, "amplifier", "the outputs are listed without an amplifier: which are those of "+strings.Join(quoted(names), " and which of ")+"?",
				"the rating of each output")
		}
	}
}

// hangOnOnly hangs all loudspeakers on the only output of the only amplifier
// that sentences name, or speak of, where no row names one.
func (b *builder) hangOnOnly() {
	if len(b.said) == 0 || len(b.job.Channels) > 0 || len(b.job.Loudspeakers) == 0 || len(b.loose) > 0 {
		return
	}
	var one *said
	for i := range b.said {
		s := &b.said[i]
		if s.Outputs > 1 || len(s.Ways) > 1 || s.Amplifiers > 1 {
			return
		}
		if !s.Worded || s.W == 0 && s.TotalW == 0 && s.Name == "" {
			continue
		}
		if one != nil && one.Name != s.Name {
			return
		}
		one = s
	}
	if one == nil || len(b.job.Amplifiers) > 1 || len(b.job.Amplifiers) == 1 && one.Name == "" {
		return
	}
	at := seen{text: one.source.Written, field: vocabulary.Channel, source: one.source}
	var a *schedule.Amplifier
	if one.Name != "" {
		a = b.amplifier(at, one.ampText())
	} else {
		a = &schedule.Amplifier{At: one.source.At, Key: "amplifier"}
		b.amps[a.Key] = a
		b.job.Amplifiers = append(b.job.Amplifiers, a)
	}
	if a == nil {
		return
	}
	a.Name = cmp.Or(one.Name, "amplifier")
	way := "1"
	if len(one.Ways) == 1 {
		way = one.Ways[0].Name
	}
	c := b.channel(a, way, one.source.At)
	for _, l := range b.job.Loudspeakers {
		if l.Channel == nil && (l.Zone == nil || len(l.Zone.Channels) == 0) {
			l.Channel = c
		}
	}
	b.take(at, "channel", c.Label(), schedule.LikelierReading, "the only amplifier that the file speaks of")
}

func (b *builder) applyTo(a *schedule.Amplifier, s *said, at seen) {
	if len(s.AtV) == 1 && !b.ampLine[a].Had() && len(s.Ways) != 1 {
		b.ampLineV(a, schedule.Exactly(schedule.Volts(s.AtV[0]), s.source))
	}
	if len(s.Zones) > 0 && len(a.Channels) == 0 {
		c := b.channel(a, "1", s.source.At)
		for _, name := range s.Zones {
			if z := b.zones[b.zoneNames.Find(name).Key]; z != nil && z.Channel == nil {
				z.Channel, z.Channels = c, []*schedule.Channel{c}
			}
		}
	}
	for _, w := range s.Ways {
		if k := (channelKey{a.Key, channelID(w.Name)}); b.channels[k] == nil && len(b.waysOwned(&said{RatedAmplifier: notation.RatedAmplifier{Ways: []notation.NamedWatts{w}}})) > 0 {
			continue // all circuits of one letter
		}
		c := b.channel(a, w.Name, s.source.At)
		if c == nil {
			continue
		}
		if w.W > 0 && len(b.channelRated[c]) == 0 {
			b.noteChannelRating(c, []notation.RatedOutput{{W: w.W}}, at)
		}
		if len(s.AtV) == 1 && len(s.Ways) == 1 && !c.LineVolts.Had() {
			c.LineVolts = schedule.Exactly(schedule.Volts(s.AtV[0]), s.source) // "way 2: 25 V": of that way alone
		}
	}
	if s.TotalW > 0 && len(b.frameRated[a]) == 0 {
		b.frameRated[a] = append(b.frameRated[a], ratedSeen{[]notation.RatedOutput{{W: s.TotalW, Total: true}}, at})
	}
	if s.W > 0 && len(b.ampRated[a]) == 0 {
		b.rateWhole(a, ratedSeen{[]notation.RatedOutput{{Channels: s.Outputs, W: s.W, PerChannel: s.PerOutput, Total: s.Outputs > 1 && !s.PerOutput}}, at})
	}
}

// applyToLoose is for channels without an amplifier, and for those of any
// amplifier that the sentence names.
func (b *builder) applyToLoose(s *said, at seen) {
	for _, w := range s.Ways {
		if c := b.channelNamed(w.Name); c != nil && w.W > 0 && len(b.channelRated[c]) == 0 {
			b.noteChannelRating(c, []notation.RatedOutput{{W: w.W}}, at)
			if s.bare {
				b.bare = append(b.bare, bareRating{c, w.W, at})
			}
		}
	}
	for _, c := range b.job.Channels {
		if c.Amplifier != nil {
			continue
		}
		named := slices.ContainsFunc(s.Ways, func(w notation.NamedWatts) bool { return channelID(w.Name) == channelID(c.Name) })
		if len(s.AtV) == 1 && !c.LineVolts.Had() && (named || len(s.Ways) == 0) {
			c.LineVolts = schedule.Exactly(schedule.Volts(s.AtV[0]), s.source)
		}
		if len(b.channelRated[c]) > 0 {
			continue
		}
		if n, err := strconv.Atoi(channelID(c.Name)); err == nil && s.Outputs > 0 && n > s.Outputs {
			continue // an output that the amplifier has not
		}
		if s.W > 0 && s.Name == "" && (s.PerOutput || len(b.job.Channels) == 1) {
			b.noteChannelRating(c, []notation.RatedOutput{{W: s.W}}, at)
		}
	}
}

// channelNamed is the only channel of a name: its own, or that of the line
// that it feeds; nil if there is none or several.
func (b *builder) channelNamed(name string) *schedule.Channel {
	var found *schedule.Channel
	for _, c := range b.job.Channels {
		if channelID(c.Name) != channelID(name) {
			continue
		}
		if found != nil {
			return nil
		}
		found = c
	}
	if e := b.dir.lines[join.Key(name)]; found == nil && e != nil && !e.several && len(e.outlet.channels) == 1 {
		var a *schedule.Amplifier
		if e.outlet.amp != "" {
			a = b.amps[b.ampNames.Find(e.outlet.amp).Key]
		}
		k := channelKey{channel: channelID(e.outlet.channels[0])}
		if a != nil {
			k.amp = a.Key
		}
		found = b.channels[k]
	}
	return found
}

// sentenceName is the name that a text of an amplifier gives it as a sentence:
// "Amp DOME: chan. 1 60 W, chan. 2 60 W" is DOME.
func sentenceName(f *layout.Fact) (string, bool) {
	text := f.Text
	if f.Key != "" {
		text = f.Key + ": " + text
	}
	list, err := notation.ParseRatingSentence(text, notation.Auto)
	if err != nil || len(list) != 1 || list[0].Name == "" {
		return "", false
	}
	return ampText(&list[0]), true
}
