package ingest

import (
	"math"
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// channel returns one channel, and makes it when it is new.
func (b *builder) channel(a *schedule.Amplifier, name string, at schedule.Ref) *schedule.Channel {
	id := channelID(name)
	k := channelKey{channel: id}
	if a != nil {
		k.amp = a.Key
		if n, ok := b.letters[k]; ok {
			k.channel = n
		}
	}
	c := b.channels[k]
	if c == nil && !b.lookOnly {
		c = &schedule.Channel{At: at, Key: k.channel, Name: channelName(name), Amplifier: a}
		c.Pair = strings.Contains(c.Name, "+")
		if a != nil {
			c.Key = k.amp + "/" + k.channel
			a.Channels = append(a.Channels, c)
		}
		b.channels[k] = c
		b.job.Channels = append(b.job.Channels, c)
	}
	return c
}

// letterNumbered is a name of one letter and a number: "K2".
var letterNumbered = regexp.MustCompile(`^\p{L}\d{1,2}$`)

// channelName is a channel's name without the words for a channel: "CH 02" is "2".
func channelName(name string) string {
	n := join.Parse(join.Channel, name)
	if n.Number != "" && n.Title == "" && !letterNumbered.MatchString(name) {
		return strings.ToUpper(n.Number)
	}
	if n.Number == "" && len(n.Title) == 1 {
		return strings.ToUpper(n.Title)
	}
	return tidy(name)
}

// addChannel makes or completes the channels of a row of channels.
func (b *builder) addChannel(r *row) {
	name, _ := b.ampName(r)
	var a *schedule.Amplifier
	if name.had() {
		a = b.amplifier(name, name.text)
	}
	o := b.outletOf(r)
	var list []*schedule.Channel
	switch {
	case len(o.channels) > 0:
		list = b.channelsAt(r, a)
	default:
		for _, f := range []vocabulary.Field{vocabulary.Tag, vocabulary.Item} {
			if s := r.own(f); s.had() {
				if c := b.channelRef(s.text); c.ok && len(c.ref.Channels) > 0 {
					if c.ref.Amplifier != "" && a == nil {
						b.ampNames.Find(c.ref.Amplifier)
					}
					for _, n := range c.ref.Channels {
						list = append(list, b.channel(a, n, s.source.At))
					}
				} else {
					list = append(list, b.channel(a, s.text, s.source.At))
				}
				break
			}
		}
		if len(list) == 0 && a != nil {
			list = b.onlyChannel(nil, o, a)
		}
		if z := r.own(vocabulary.Zone); len(list) == 0 && a == nil && z.had() && r.service == nil {
			b.take(z, "channel", "an output of its own", schedule.LikelierReading, "the list rates the amplifier of each zone, and names no outputs")
			list = []*schedule.Channel{b.channel(nil, z.text, z.source.At)}
		}
	}
	if len(list) == 0 {
		r.out, r.reason = schedule.NotUnderstood, "no name of a channel"
		return
	}
	r.used = true
	for _, c := range list {
		if c == nil {
			continue
		}
		b.fillChannel(r, c)
		if len(list) > 1 {
			continue
		}
		// a list of channels may say which zones each one feeds
		b.feedZones(r, c)
		b.controlOnChannel(r, c)
	}
	if a != nil {
		setText(&a.Model, r.own(vocabulary.Model).asText())
		if out, s := b.rating(r.own(vocabulary.FrameWatts)); len(out) > 0 {
			b.noteFrame(a, out, s)
		}
	}
}

// controlOnChannel notes the control that a row of an output names, or describes
// where the row counts its loudspeakers: all of the output hangs behind it, or
// what the row names of it.
func (b *builder) controlOnChannel(r *row, c *schedule.Channel) {
	m := b.controlText(r)
	if m.name == "" && !r.own(vocabulary.Quantity).had() {
		return
	}
	zones := b.zonesServed(r)
	var zone *schedule.Zone
	if len(zones) == 1 {
		zone = zones[0]
	}
	k := b.controlSaid(r, &m, zone)
	if k == nil {
		return
	}
	if k.Channel == nil {
		k.Channel = c
	}
	if m.name == "" && k.Zone == nil {
		k.Zone = zone
	}
	b.onChannel = append(b.onChannel, channelControl{c, k, zones})
}

// feedZones notes which zones a row says that its channel feeds.
func (b *builder) feedZones(r *row, c *schedule.Channel) {
	for _, z := range b.zonesServed(r) {
		feedZone(z, c, b.outletOf(r))
		b.zonesListed[c] = append(b.zonesListed[c], z)
	}
}

// feedZone notes that a channel feeds a zone.
func feedZone(z *schedule.Zone, c *schedule.Channel, o *outlet) {
	if !slices.Contains(z.Channels, c) {
		z.Channels = append(z.Channels, c)
	}
	if z.Channel == nil {
		z.Channel = c
	}
	if o.ab {
		z.ABCircuits = schedule.Flag{Yes: true, Source: o.at.source}
	}
}

// fillChannel takes over what a row says of its channel.
func (b *builder) fillChannel(r *row, c *schedule.Channel) {
	of := "channel " + c.Label()
	if out, s := b.rating(r.own(vocabulary.ChannelWatts)); len(out) > 0 {
		o := b.outletOf(r)
		several := r.kind == amplifierRow && len(o.channels) > 1 && s.col != nil && !speaksOfOutputs(s.col.Header)
		if c.Amplifier != nil && (several || speaksOfFrames(s.col)) && o.at.source.At != o.ampAt.source.At {
			b.frames = append(b.frames, frameCell{c, ratedSeen{out, s}})
		} else {
			b.noteChannelRating(c, out, s)
		}
	} else if r.kind == channelRow || r.kind == amplifierRow {
		if out, s := b.rating(r.own(vocabulary.RatedWatts)); len(out) > 0 {
			b.noteChannelRating(c, out, s)
		} else if out, s := b.rating(r.own(vocabulary.ControlWatts)); len(out) > 0 && r.t.Kind == layout.Mixed && !r.own(vocabulary.Control).had() {
			b.noteChannelRating(c, out, s) // "Max. load" of whatever the row lists
		} else if kindInWords(r.own(vocabulary.Describe).text) == amplifierRow || kindInWords(r.own(vocabulary.Kind).text) == amplifierRow {
			if out, s := b.ratingInRow(r); len(out) > 0 {
				b.noteChannelRating(c, out, s)
			}
		}
	}
	if o := b.outletOf(r); o.ampRated.seen().had() && c.Amplifier != nil {
		b.noteBeside(c.Amplifier, o.ampRated.seen())
	}
	if r.kind == loudspeakerRow && c.Amplifier != nil {
		b.ampInRemark(r, c.Amplifier)
	}
	if o := b.outletOf(r); o.rating.seen().had() && len(o.channels) <= 1 {
		if out, s := b.rating(o.rating.seen()); len(out) > 0 {
			b.noteChannelRating(c, out, s)
		}
	}
	if r.kind == channelRow || r.kind == amplifierRow || r.kind == zoneRow || r.kind == cableRow {
		v, s := b.volts(r.own(vocabulary.LineVoltage))
		set(b, &c.LineVolts, oneVolt(v, s), "line voltage", of)
		if v.Kind == notation.LowImpedanceLine {
			c.LowImpedance = schedule.Flag{Yes: true, Source: s.source}
		}
	}
	if r.kind == channelRow || r.kind == amplifierRow {
		load := b.watts(r.first(vocabulary.Load, vocabulary.TotalWatts))
		set(b, &c.Stated, load, "stated load", of)
		if load.Had() || r.own(vocabulary.Tap).had() && r.own(vocabulary.Quantity).had() {
			b.claims.ofChannel(c, r)
		}
		set(b, &c.Headroom, b.headroom(r), "headroom", of)
		b.measure(r, schedule.Measurement{Channel: c})
		if r.status == schedule.Standby {
			c.Standby = true
		}
		if use, flag := useOf(r); flag.Had() {
			c.Use = use
			if use == schedule.Emergency {
				c.Emergency = flag
			}
		}
	}
}

// noteChannelRating notes a rating, once for each text.
func (b *builder) noteChannelRating(c *schedule.Channel, out []notation.RatedOutput, s seen) {
	for _, had := range b.channelRated[c] {
		if had.at.source.Written == s.source.Written {
			return
		}
	}
	b.channelRated[c] = append(b.channelRated[c], ratedSeen{out, s})
}

// noteBeside notes a rating that stands beside the name of an amplifier, once
// for each text: see ratingsBeside.
func (b *builder) noteBeside(a *schedule.Amplifier, s seen) {
	if slices.ContainsFunc(b.beside[a], func(had ratedSeen) bool { return had.at.text == s.text }) {
		return
	}
	if out, s := b.rating(s); len(out) > 0 {
		b.besideOf(a, ratedSeen{out, s})
	}
}

func (b *builder) besideOf(a *schedule.Amplifier, r ratedSeen) {
	if b.beside == nil {
		b.beside = make(map[*schedule.Amplifier][]ratedSeen)
	}
	b.beside[a] = append(b.beside[a], r)
}

// speaksOfFrames reports whether a column of ratings is headed by a word for
// amplifiers and none for their outputs: "Amp watts".
func speaksOfFrames(c *column) bool {
	if c == nil || speaksOfOutputs(c.Header) {
		return false
	}
	concepts := vocabulary.NewScorer().Concepts(publicAddress.ReplaceAllString(c.Header, ""))
	return slices.Contains(concepts, "amplifier") || slices.Contains(concepts, "frame")
}

// speaksOfOutputs reports whether a header has a word for an output of an amplifier.
func speaksOfOutputs(header string) bool {
	return join.HasWord(join.Channel, header) || saysOutput.Of(header, 0)
}

// ampInRemark notes what a remark beside a loudspeaker says of the amplifier that
// feeds it: "amp is a 60 W".
func (b *builder) ampInRemark(r *row, a *schedule.Amplifier) {
	s := r.own(vocabulary.Notes)
	if !s.had() || !notation.SpeaksOfAmplifier(s.text) || slices.ContainsFunc(b.beside[a], func(had ratedSeen) bool { return had.at.text == s.text }) {
		return
	}
	list := sentence(s.text, s.source.At)
	if len(list) != 1 || !list[0].Worded || list[0].W == 0 || len(list[0].Ways) > 0 || list[0].Name != "" && !b.sameAmp(list[0].ampText(), a.Name) {
		return
	}
	x := &list[0]
	b.besideOf(a, ratedSeen{[]notation.RatedOutput{{Channels: x.Outputs, W: x.W, PerChannel: x.PerOutput}}, s})
	b.take(s, "channel rating", plain(x.W)+" W", schedule.LikelierReading, "a remark beside a loudspeaker on it")
}

// headroom reads a share that a brief wants free. What is free in watts, or the
// share that the row's own load leaves of its rating, is a result, not a demand.
func (b *builder) headroom(r *row) schedule.Quantity[schedule.Fraction] {
	s := r.own(vocabulary.Headroom)
	if !s.had() || s.unit() == "w" || s.unit() == "db" || s.cell != nil && s.cell.Formula {
		return schedule.Quantity[schedule.Fraction]{}
	}
	if text, style := b.readable(&s, notDate); !strings.Contains(text, "%") {
		if p, err := notation.ParseWatts(text, style); err == nil && !p.Doubts.Has(notation.Bare) {
			return schedule.Quantity[schedule.Fraction]{}
		}
	}
	q := b.fraction(s)
	load, _ := b.watts(r.first(vocabulary.Load, vocabulary.TotalWatts)).Exact()
	if out, _ := b.rating(r.first(vocabulary.ChannelWatts, vocabulary.RatedWatts)); len(out) == 1 && load > 0 && out[0].W > 0 {
		if math.Abs(1-float64(load)/out[0].W-float64(q.Low)) < 0.006 {
			return schedule.Quantity[schedule.Fraction]{}
		}
	}
	return q
}

// ampLineV gives all channels of an amplifier a line voltage, those to come included.
func (b *builder) ampLineV(a *schedule.Amplifier, q schedule.Quantity[schedule.Volts]) {
	if b.ampLine == nil {
		b.ampLine = make(map[*schedule.Amplifier]schedule.Quantity[schedule.Volts])
	}
	had := b.ampLine[a]
	set(b, &had, q, "line voltage", "amplifier "+a.Name)
	b.ampLine[a] = had
}
