package ingest

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// What sentences say of amplifiers, given to the parts of the job.

// zonesInTurn gives each zone an output of the only amplifier that a sentence
// speaks of, where it says that each has one and no row names any: the output
// of the zone's number, else one after the other.
func (b *builder) zonesInTurn() {
	i := slices.IndexFunc(b.said, func(s said) bool { return s.Outputs > 1 && (s.PerZone || b.bareZones(s.Outputs)) })
	if i < 0 || slices.ContainsFunc(slices.Concat(b.said[:i], b.said[i+1:]), rates) || len(b.job.Channels) > 0 || len(b.job.Zones) == 0 {
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
	lettered := !slices.ContainsFunc(b.job.Zones, func(z *schedule.Zone) bool {
		return len(z.Name) != 1 || !isLetter(rune(z.Name[0]))
	})
	for k, z := range b.job.Zones {
		way := itoa(numbers[k])
		if lettered {
			way = z.Name // zones A and B on outputs that have no other names
		}
		if c := b.channel(a, way, s.source.At); c != nil && z.Channel == nil {
			z.Channel, z.Channels = c, []*schedule.Channel{c}
		}
	}
	b.take(seen{text: s.source.Written, field: vocabulary.Channel, source: s.source}, "channel", "one output for each zone, in turn", schedule.LikelierReading, "the zones are not named beside the outputs")
}

// rates reports whether a sentence says more of an amplifier than its line voltage.
func rates(s said) bool {
	return s.Name != "" || s.Outputs > 0 || s.W > 0 || s.TotalW > 0 || len(s.Ways) > 0
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

// namedFirst sets the sentences that name their amplifier before those said of all.
func (b *builder) namedFirst() {
	var named, rest []said
	for _, s := range b.said {
		if s.Name != "" {
			named = append(named, s)
		} else {
			rest = append(rest, s)
		}
	}
	b.said = append(named, rest...)
}

// applySaid gives amplifiers and their channels what sentences say of them,
// where nothing else does.
func (b *builder) applySaid() {
	b.namedFirst()
	frames := b.framesBySize()
	for i := range b.said {
		s := &b.said[i]
		at := seen{text: s.source.Written, field: vocabulary.ChannelWatts, source: s.source}
		var amps []*schedule.Amplifier
		if s.Name == "" {
			amps = b.job.Amplifiers
		} else if a := b.amps[b.ampNames.Find(s.ampText()).Key]; a != nil {
			amps = []*schedule.Amplifier{a}
		}
		if s.Name == "" && b.otherwiseElsewhere(s) {
			if a := frames[i]; a != nil {
				b.applyTo(a, s, at)
				b.take(at, "amplifier", a.Name, schedule.LikelierReading, "the only one that its outputs fit")
				continue
			}
			b.applyOnSheet(s, at)
			continue
		}
		if s.Name == "" && s.Doubts.Has(notation.OtherPower) && len(amps) > 1 {
			if b.namedByPower(s, at) {
				continue
			}
			b.ask(s.source.At, "channel rating", "“"+short(s.source.Written)+"”: which of the amplifiers has which of these powers?", "the rating of each amplifier")
			continue
		}
		for _, a := range amps {
			b.applyTo(a, s, at)
		}
		if len(amps) == 0 {
			b.applyToLoose(s, at)
		}
		if s.Doubts.Has(notation.InOrder) {
			b.take(at, "channel rating", "outputs 1, 2 ... in the order written", schedule.LikelierReading, "powers without the names of their outputs")
		}
		if d := s.Doubts & (notation.Bare | notation.OtherPower); d != 0 && s.W > 0 {
			for _, why := range d.Texts() {
				b.take(at, "channel rating", plain(s.W)+" W", schedule.LikelierReading, why)
			}
		}
	}
	b.applyEither()
}

// namedByPower rates amplifiers that are called by their watts, "the 120" and "the 60", where a
// sentence speaks of amplifiers of just these powers.
func (b *builder) namedByPower(s *said, at seen) bool {
	rated := make(map[*schedule.Amplifier]float64)
	for _, p := range notation.PowersIn(s.source.Written, notation.Auto) {
		for _, a := range b.job.Amplifiers {
			if join.Key(a.Name) == join.Key(plain(p.W)) {
				rated[a] = p.W
			}
		}
	}
	if len(rated) < len(b.job.Amplifiers) {
		return false
	}
	for _, a := range b.job.Amplifiers {
		one := *s
		one.W, one.Doubts = rated[a], 0
		b.applyTo(a, &one, at)
		b.take(at, "channel rating", plain(rated[a])+" W", schedule.LikelierReading, "the amplifier is called by its watts")
	}
	return true
}

// otherwiseElsewhere reports whether another sentence without a name states other
// watts: then each holds for its own sheet.
func (b *builder) otherwiseElsewhere(s *said) bool {
	return s.W > 0 && slices.ContainsFunc(b.said, func(o said) bool { return o.Name == "" && o.W > 0 && o.W != s.W })
}

// applyOnSheet gives the outputs that the sheet of a sentence names what it says,
// if no other sentence of that sheet says otherwise.
func (b *builder) applyOnSheet(s *said, at seen) {
	sheet := s.source.At.Sheet()
	if slices.ContainsFunc(b.said, func(o said) bool { return o.Name == "" && o.W > 0 && o.W != s.W && o.source.At.Sheet() == sheet }) {
		b.ask(s.source.At, "channel rating", "“"+short(s.source.Written)+"”: of which amplifier is this said?", "the rating of the outputs")
		return
	}
	var own []*schedule.Channel
	for _, c := range b.job.Channels {
		if c.At.Sheet() == sheet {
			own = append(own, c)
		}
	}
	for _, c := range own {
		if len(b.channelRated[c]) == 0 && (s.PerOutput || len(own) == 1) {
			b.noteChannelRating(c, []notation.RatedOutput{{W: s.W}}, at)
		}
	}
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
		if s.PerZone || len(s.Zones) > 0 {
			return // one for each zone, or for some
		}
		if one != nil && one.Name != s.Name {
			return
		}
		one = s
	}
	if one != nil && len(notation.PowersIn(one.source.Written, notation.Auto)) > 1 {
		return // of several things
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
		if l.Channel == nil && !l.FeedUnread && (l.Zone == nil || len(l.Zone.Channels) == 0) {
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
		owner, way := a, w.Name
		if whole, known := b.splitKnown(w.Name); known && len(whole.Channels) == 1 { // "A2.1 is 120 W": of amplifier A2
			owner, way = b.amps[b.ampNames.Find(whole.Amplifier).Key], whole.Channels[0]
		}
		if owner != a {
			continue
		}
		c := b.channel(a, way, s.source.At)
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
		c := b.channelNamed(w.Name)
		if c == nil && s.Doubts.Has(notation.InOrder) {
			c = b.channelNamed(letterOf(w.Name)) // outputs A, B, C in the order of their powers
		}
		if c != nil && w.W > 0 && len(b.channelRated[c]) == 0 {
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
	if w := max(s.W, s.TotalW); s.Name == "" && s.Worded && w > 0 && !s.PerOutput && !waysRated(s) && len(b.job.Channels) > 1 {
		if b.allOfOne(s, at) {
			return
		}
		b.ask(s.source.At, "frame rating", "“"+short(s.source.Written)+"”: which of the outputs share "+plain(w)+" W, or has each as much?", "the rating of the outputs")
	}
}

// allOfOne gives all outputs, which no row gives an amplifier, to the only amplifier that the
// sentences speak of, one without a name: "a single amplifier, 250 W, for both circuits". They share its watts.
func (b *builder) allOfOne(s *said, at seen) bool {
	others := slices.ContainsFunc(b.said, func(o said) bool { return o.source.At != s.source.At && (o.W > 0 || o.Name != "" || o.Outputs > 0) })
	rated := slices.ContainsFunc(b.job.Channels, func(c *schedule.Channel) bool { return len(b.channelRated[c]) > 0 })
	several := s.Outputs == 0 && s.TotalW == 0 && slices.ContainsFunc(statements(s.source.Written), func(part string) bool { // "amplifiers: 2 of 120 W, 1 of 60 W"
		return notation.SpeaksOfAmplifier(part) && len(notation.PowersIn(part, notation.Auto)) > 1
	})
	if several || others || rated || len(b.job.Amplifiers) > 0 || s.Amplifiers > 1 || len(b.loose) > 0 {
		return false
	}
	a := b.ampOfAll(s, "amplifier")
	b.frameRated[a] = append(b.frameRated[a], ratedSeen{totalOf(max(s.W, s.TotalW)), at})
	b.take(at, "amplifier", "all outputs share "+plain(max(s.W, s.TotalW))+" W", schedule.LikelierReading, "the only amplifier that the file speaks of")
	b.ask(s.source.At, "frame rating", "“"+short(s.source.Written)+"”: is it of each output or of all together? It is taken as of all.", "the rating of the outputs")
	return true
}

// ampOfAll makes an amplifier that a sentence speaks of, and gives it all outputs.
func (b *builder) ampOfAll(s *said, name string) *schedule.Amplifier {
	a := &schedule.Amplifier{At: s.source.At, Key: "amplifier", Name: name}
	b.amps[a.Key] = a
	b.job.Amplifiers = append(b.job.Amplifiers, a)
	for _, c := range b.job.Channels {
		c.Amplifier = a
		a.Channels = append(a.Channels, c)
		b.channels[channelKey{a.Key, channelID(c.Name)}] = c
	}
	return a
}

// totalOf is a rating of all outputs together.
func totalOf(w float64) []notation.RatedOutput { return []notation.RatedOutput{{W: w, Total: true}} }

// letterOf is the letter of a number, "B" of "2"; "" where there is none.
func letterOf(number string) string {
	n, err := strconv.Atoi(number)
	if err != nil || n < 1 || n > 26 {
		return ""
	}
	return string(rune('A' + n - 1))
}

// waysRated reports whether a sentence states the power of an output that it names.
func waysRated(s *said) bool {
	return slices.ContainsFunc(s.Ways, func(w notation.NamedWatts) bool { return w.W > 0 })
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
