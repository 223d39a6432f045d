package ingest

import (
	"slices"
	"strings"
	"unicode/utf8"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// amplifier returns the amplifier that a text names, and makes it when it is new.
// It is nil when the name could be one of several, which is then a question.
func (b *builder) amplifier(s seen, name string) *schedule.Amplifier {
	f := b.ampNames.Find(name)
	if f.Key == "" {
		return nil
	}
	if f.Match == join.Unclear {
		b.unclear(s, "amplifier", name, f.Between)
		return nil
	}
	b.guessed(s, "amplifier", name, f)
	a := b.amps[f.Key]
	if a == nil && !b.lookOnly {
		a = &schedule.Amplifier{At: s.source.At, Key: f.Key, Name: tidy(f.Name)}
		b.amps[f.Key] = a
		b.job.Amplifiers = append(b.job.Amplifiers, a)
	}
	return a
}

// unclear asks which of several things a name means.
func (b *builder) unclear(s seen, what, name string, between []string) {
	b.ask(s.source.At, what, "“"+short(name)+"” could be "+strings.Join(quoted(between), " or ")+": which "+what+" is meant?",
		"which "+what+" this row belongs to")
}

// guessed notes that a name was matched by likeness.
func (b *builder) guessed(s seen, what, name string, f join.Found) {
	if f.Match == join.Guessed {
		s.source.Written = name
		b.take(s, what, f.Name, schedule.LikelierReading, "the only "+what+" with a name like it")
	}
}

func quoted(list []string) []string {
	out := make([]string, len(list))
	for i, s := range list {
		out[i] = "“" + short(s) + "”"
	}
	return out
}

// tidy is a name as people see it, without stray spaces.
func tidy(s string) string {
	before := byte(' ')
	for i := 0; i < len(s); i++ {
		if c := s[i]; c >= utf8.RuneSelf || asciiSpace(c) && (c != ' ' || before == ' ') {
			return strings.Join(strings.Fields(s), " ")
		}
		before = s[i]
	}
	if s != "" && before == ' ' {
		return strings.Join(strings.Fields(s), " ")
	}
	return s
}

// addAmplifier makes or completes the amplifier of a row.
func (b *builder) addAmplifier(r *row) {
	name, _ := b.ampName(r)
	if !name.had() {
		if o := b.outletOf(r); o.had() {
			b.addChannel(r)
			return
		}
		r.out, r.reason = schedule.NotUnderstood, "no name of an amplifier"
		return
	}
	tags := []string{name.text}
	if t, err := notation.ParseTags(name.text); err == nil && t.Ranged {
		tags = t.List
	}
	for _, tag := range tags {
		a := b.amplifier(name, tag)
		if a == nil {
			continue
		}
		r.used = true
		if a.At.Compare(name.source.At) != 0 && len(tags) == 1 && !strings.EqualFold(a.Name, tag) && a.At.Row == 0 {
			a.At = name.source.At
		}
		if r.status != schedule.Installed {
			a.Status = r.status
		}
		setText(&a.Model, r.own(vocabulary.Model).asText())
		setText(&a.Site, r.own(vocabulary.Room).asText())
		if n, _ := b.pieces(r.own(vocabulary.Quantity)); n.Had() && len(tags) == 1 {
			set(b, &a.Count, n, "quantity", "amplifier "+a.Name)
		}
		if s := r.own(vocabulary.FrameWatts); s.had() {
			if out, s := b.rating(s); len(out) > 0 {
				b.noteFrame(a, out, s)
			}
		}
		b.addAmpRating(r, a)
		b.ampHeaderVolts(name, a)
		if len(b.outletOf(r).channels) > 0 {
			list := b.channelsAt(r, a)
			for _, c := range list {
				b.fillChannel(r, c)
			}
			if len(list) == 1 {
				b.controlOnChannel(r, list[0])
				b.feedZones(r, list[0])
			}
			continue
		}
		b.ampVolts(r, a)
		if len(tags) == 1 && (r.service != nil || r.zoneText().had()) {
			for _, c := range b.onlyChannel(nil, &outlet{amp: a.Name, ampAt: name}, a) {
				b.controlOnChannel(r, c)
				b.feedZones(r, c)
			}
		}
	}
}

// addAmpRating notes the ratings written in an amplifier's row. Beside the name
// of an output they are that output's: see fillChannel.
func (b *builder) addAmpRating(r *row, a *schedule.Amplifier) {
	if len(b.outletOf(r).channels) > 0 {
		return
	}
	if out, s := b.rating(r.own(vocabulary.ChannelWatts)); len(out) > 0 {
		plain := s.col != nil && !speaksOfOutputs(s.col.Header) // "Power": 240 W
		switch n := b.channelsOfRow(r); {
		case plain && n == 0:
			b.besideOf(a, ratedSeen{out, s})
		case plain && n > 1 && !slices.ContainsFunc(out, func(o notation.RatedOutput) bool { return o.Channels > 0 || o.PerChannel || o.Total }):
			b.take(s, "channel rating", "that of each output", schedule.LikelierReading, "it stands beside the number of outputs")
			fallthrough
		default:
			b.ampRated[a] = append(b.ampRated[a], ratedSeen{out, s})
		}
	}
	b.noteBeside(a, r.own(vocabulary.RatedWatts))
	if len(b.ampRated[a]) > 0 || len(b.frameRated[a]) > 0 || len(b.beside[a]) > 0 {
		return
	}
	if out, s := b.ratingInRow(r); len(out) > 0 {
		b.besideOf(a, ratedSeen{out, s})
	}
}

// noteFrame notes the rating of a whole frame. "4 x 250 W" in a column of
// frame ratings is one of its channels too.
func (b *builder) noteFrame(a *schedule.Amplifier, out []notation.RatedOutput, s seen) {
	frame := slices.Clone(out)
	each := false
	for _, o := range out {
		each = each || o.Channels > 1 || o.PerChannel
	}
	if each {
		b.ampRated[a] = append(b.ampRated[a], ratedSeen{out, s})
		return
	}
	b.frameRated[a] = append(b.frameRated[a], ratedSeen{frame, s})
}

// ampVolts notes the line voltage that an amplifier's row states for all its channels.
func (b *builder) ampVolts(r *row, a *schedule.Amplifier) {
	v, s := b.volts(r.own(vocabulary.LineVoltage))
	if q := oneVolt(v, s); q.Had() {
		b.ampLineV(a, q)
	}
}

// channelsOfRow is the number of channels that a row of an amplifier states,
// in a column or in its rating ("4 x 250 W"); 0 if none.
func (b *builder) channelsOfRow(r *row) int {
	if s := r.own(vocabulary.ChannelCount); s.had() {
		if n, err := notation.ParseQuantity(s.text, notation.Auto); err == nil && n.Count > 0 && n.Count <= 64 {
			return n.Count
		}
	}
	for _, f := range slices.Concat([]vocabulary.Field{vocabulary.ChannelWatts, vocabulary.FrameWatts, vocabulary.RatedWatts}, ratingFields) {
		s := r.own(f)
		if !s.had() || s.cell != nil && s.cell.Kind == 2 {
			continue
		}
		text := s.text
		if f == vocabulary.Model && timesBare.MatchString(text) {
			text += " W"
		}
		outputs := ratingInText(text, notation.Auto)
		if len(outputs) == 0 {
			continue
		}
		n := outputs[0].Channels
		for _, o := range outputs {
			if o.Channels != n {
				return 0 // sold in several forms: which one is not said
			}
		}
		if n > 0 && n <= 64 {
			return n
		}
	}
	return 0
}

// channelsOf returns the channels that a row names. A channel without an
// amplifier is that of the only amplifier that has such a channel.
func (b *builder) channelsOf(r *row) []*schedule.Channel { return b.channelsAt(r, nil) }

func (b *builder) channelsAt(r *row, a *schedule.Amplifier) []*schedule.Channel {
	o := b.outletOf(r)
	if !o.had() {
		return nil
	}
	if a == nil && o.amp != "" {
		if a = b.amplifier(o.ampAt, o.amp); a == nil {
			return nil
		}
	}
	if len(o.channels) == 0 {
		return b.onlyChannel(r, o, a)
	}
	names := o.channels
	bridged := o.bridged || b.listedAsPair(a, names)
	if bridged && len(names) > 1 {
		names = []string{strings.Join(names, "+")}
	}
	var out []*schedule.Channel
	for _, name := range names {
		owner := a
		if owner == nil {
			var ok bool
			if owner, ok = b.ownerOf(o.at, name); !ok {
				continue
			}
		}
		c := b.channel(owner, name, o.at.source.At)
		if c == nil {
			continue
		}
		if bridged {
			b.notePartners(c, owner, o.channels)
		}
		out = append(out, c)
	}
	return out
}

// listedAsPair reports whether an amplifier has these outputs as one, "1+2",
// and not on their own: then "1+2" elsewhere means that one.
func (b *builder) listedAsPair(a *schedule.Amplifier, names []string) bool {
	if len(names) < 2 {
		return false
	}
	known := func(name string) bool {
		k := channelKey{channel: channelID(name)}
		if a == nil {
			return len(b.ampsOf[k.channel]) > 0
		}
		k.amp = a.Key
		return b.channels[k] != nil
	}
	pair := strings.Join(names, "+")
	return (known(pair) || b.saidPair(a, pair)) && !slices.ContainsFunc(names, known)
}

// saidPair reports whether a sentence tells that an amplifier has these outputs as one.
func (b *builder) saidPair(a *schedule.Amplifier, pair string) bool {
	return slices.ContainsFunc(b.said, func(s said) bool {
		return (s.Name == "" || a != nil && b.ampNames.Find(s.ampText()).Key == a.Key) &&
			slices.ContainsFunc(s.Ways, func(w notation.NamedWatts) bool { return channelID(w.Name) == channelID(pair) })
	})
}

// notePartners notes the channels whose outputs a bridged pair uses up, where
// they are there on their own.
func (b *builder) notePartners(c *schedule.Channel, a *schedule.Amplifier, names []string) {
	for _, name := range names {
		k := channelKey{channel: channelID(name)}
		if a != nil {
			k.amp = a.Key
		}
		if p := b.channels[k]; p != nil && p != c && !slices.Contains(c.Bridged, p) {
			c.Bridged = append(c.Bridged, p)
		}
	}
}

// ownerOf finds the amplifier of a channel that is named without one. The
// second result is false when several have such a channel.
func (b *builder) ownerOf(s seen, channel string) (*schedule.Amplifier, bool) {
	amps := b.ampsOf[channelID(channel)]
	switch {
	case len(amps) == 1:
		return b.amps[amps[0]], true
	case len(amps) == 0 && len(b.amps) == 1:
		for _, a := range b.amps {
			if b.feedsOthers(a, channel) {
				return nil, true
			}
			return a, true
		}
	case len(amps) == 0:
		return nil, true
	}
	var names []string
	for _, k := range amps {
		if a := b.amps[k]; a != nil {
			names = append(names, a.Name)
		}
	}
	b.unclear(s, "amplifier", "channel "+channel, names)
	return nil, false
}

// feedsOthers reports whether a sentence lists the lines that an amplifier feeds,
// and the channel is none of them.
func (b *builder) feedsOthers(a *schedule.Amplifier, channel string) bool {
	for i := range b.said {
		s := &b.said[i]
		if s.Name == "" || b.ampNames.Find(s.ampText()).Key != a.Key {
			continue
		}
		if ways := b.waysOwned(s); len(ways) > 0 && !slices.Contains(ways, channelID(channel)) {
			return true
		}
	}
	return false
}

// onlyChannel is the channel of a row that names only an amplifier, if that
// has no more than one, or one for each of its zones. The row may be nil.
func (b *builder) onlyChannel(r *row, o *outlet, a *schedule.Amplifier) []*schedule.Channel {
	if a == nil {
		return nil
	}
	known := 0
	var name string
	for ch, amps := range b.ampsOf {
		if slices.Contains(amps, a.Key) {
			known++
			name = ch
		}
	}
	if out := ratingInText(o.ampRated.seen().text, notation.Auto); len(out) == 1 {
		known = max(known, out[0].Channels) // "Amp A - 2 x 120 W"
	}
	if n := max(known, b.slots[a.Key]); n > 1 {
		if way := b.outputOfZone(r, a, n); way != "" {
			c := b.channel(a, way, o.ampAt.source.At)
			if c == nil {
				return nil
			}
			b.take(o.ampAt, "channel", c.Label(), schedule.LikelierReading, "it has as many zones as outputs, and no row names one")
			return []*schedule.Channel{c}
		}
		b.ask(o.ampAt.source.At, "channel", "which channel of amplifier "+a.Name+" is meant?", "the load of each channel of "+a.Name)
		return nil
	}
	if name == "" {
		name = "1"
	}
	if c := b.channel(a, name, o.ampAt.source.At); c != nil {
		return []*schedule.Channel{c}
	}
	return nil
}
