package ingest

import (
	"slices"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A list of cables may say alone what feeds each loudspeaker: "AMP1 ch 1 - LS1", "LS1 - LS2",
// "AMP1 ch 2 - VC1", "VC1 - LS5".

// A cableFeed is what the cables that lead to a part come from.
type cableFeed struct {
	amplifier *schedule.Amplifier
	channel   *schedule.Channel
	control   *schedule.Control // the last on the way
}

// feedsOfCables hangs loudspeakers and controls that name nothing that feeds them on what the
// cables that lead to them come from.
func (b *builder) feedsOfCables() {
	into := make(map[any]*schedule.Cable) // by the part at the far end; nil where several lead there
	for _, c := range b.job.Cables {
		var at any
		switch {
		case !c.From.Resolved() || c.Status != schedule.Installed:
			continue
		case c.To.Loudspeaker != nil:
			at = c.To.Loudspeaker
		case c.To.Control != nil:
			at = c.To.Control
		case c.To.Zone != nil:
			at = c.To.Zone
		default:
			continue
		}
		if _, twice := into[at]; twice {
			c = nil
		}
		into[at] = c
	}
	if len(into) == 0 {
		return
	}
	feeds := make(map[any]*cableFeed)
	for _, c := range b.job.Controls {
		if f := feedOf(c, into, feeds); c.Channel == nil && c.Parent == nil && b.outputOf(f) != nil {
			c.Channel = f.channel
			if f.control != c {
				c.Parent = f.control
			}
		}
	}
	for _, l := range b.job.Loudspeakers {
		f := feedOf(l, into, feeds)
		if b.outputOf(f) == nil && f.control == nil && l.Zone != nil && into[l.Zone] != nil {
			f = feedOf(l.Zone, into, feeds)
		}
		if b.outputOf(f) != nil && l.Channel == nil && !l.FeedUnread && !b.origin[l].namesFeed() && (l.Zone == nil || l.Zone.Channel == nil) {
			l.Channel = f.channel
			b.ledTo(l, "channel", f.channel.Label())
		}
		if f.control != nil && l.Control == nil && !b.origin[l].saysNoControl() && (l.Zone == nil || l.Zone.Control == nil) {
			l.Control = f.control
			b.ledTo(l, "control", f.control.Name)
		}
	}
}

// feedOf follows the cables from a part to where they come from. What was found on the way is kept:
// a line may be as long as the sheet.
func feedOf(part any, into map[any]*schedule.Cable, feeds map[any]*cableFeed) *cableFeed {
	var path []any
	end := &cableFeed{}
	for at := part; ; {
		if f := feeds[at]; f != nil {
			if end = f; len(path) > 0 {
				end = f.behind(at)
			}
			break
		}
		path = append(path, at)
		feeds[at] = &cableFeed{} // in a ring it is where the ring closes
		c := into[at]
		if c == nil {
			break
		}
		if c.From.Loudspeaker != nil {
			at = c.From.Loudspeaker
		} else if c.From.Control != nil {
			at = c.From.Control
		} else if c.From.Zone != nil {
			at = c.From.Zone
		} else {
			end = &cableFeed{channel: c.From.Channel, amplifier: c.From.Amplifier}
			break
		}
	}
	for _, at := range slices.Backward(path) {
		f := *end
		feeds[at] = &f
		end = f.behind(at)
	}
	return feeds[part]
}

// outputOf is the output that the cables come from, that of an amplifier where it has only one.
func (b *builder) outputOf(f *cableFeed) *schedule.Channel {
	if f.channel == nil && f.amplifier != nil {
		at := seen{text: f.amplifier.Name, source: schedule.Source{At: f.amplifier.At}}
		if list := b.onlyChannel(nil, &outlet{amp: f.amplifier.Name, ampAt: at}, f.amplifier); len(list) == 1 {
			f.channel = list[0]
		}
	}
	return f.channel
}

// behind is what feeds the parts behind one that a cable leads to.
func (f *cableFeed) behind(part any) *cableFeed {
	if k, ok := part.(*schedule.Control); ok {
		return &cableFeed{f.amplifier, f.channel, k}
	}
	return f
}

// ledTo says of a loudspeaker that cables tell what it hangs on.
func (b *builder) ledTo(l *schedule.Loudspeaker, what, name string) {
	s := seen{t: b.origin[l].t, source: schedule.Source{At: l.At, Written: l.Tag.Value}}
	b.take(s, what, name, schedule.Computed, "the cables that lead to it come from there")
}

// collectEnds enters the names of amplifiers and controls that the ends of a cable give them.
func (b *builder) collectEnds(r *row) {
	switch from := r.own(vocabulary.From); {
	case b.nearOutput(from):
		b.ampNames.Add(withKindWord(from.text, b.channelRef(from.text).ref.Amplifier), 0)
	case b.nearAmp(from):
		b.ampNames.Add(from.text, 0)
	}
	for _, f := range []vocabulary.Field{vocabulary.From, vocabulary.To} {
		if s := r.own(f); s.had() && b.dir.controls[s.key()] && notation.KeyOf(s.text).Kind == notation.KeyControl {
			b.controlNames.Add(s.text, 0)
		}
	}
}

// nearAmp reports whether the near end of a cable names an amplifier by its word and nothing more: "Amp A",
// but not "AMP1-A" where loudspeakers hang on outputs of AMP1.
func (b *builder) nearAmp(s seen) bool {
	return s.field == vocabulary.From && s.had() && !b.wordedOutput(s.text) && !b.outputOfFeeder(s.text) && notation.SpeaksOfAmplifier(s.text) && notation.KeyOf(s.text).Kind == notation.KeyAmplifier
}

// outputOfFeeder reports whether a text is an output of an amplifier that rows of loudspeakers, zones or
// controls name.
func (b *builder) outputOfFeeder(text string) bool {
	c := b.channelRef(text)
	return c.ok && c.ref.Amplifier != "" && len(c.ref.Channels) > 0 && b.dir.feeders[ampIdentity(c.ref.Amplifier)]
}

// gatherEnds notes controls that the ends of a cable name.
func (b *builder) gatherEnds(r *row) {
	for _, f := range []vocabulary.Field{vocabulary.From, vocabulary.To} {
		if s := r.own(f); s.had() && isTag(s.text) && notation.KeyOf(s.text).Kind == notation.KeyControl {
			b.dir.controls[s.key()] = true
		}
	}
}
