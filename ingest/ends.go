package ingest

import (
	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// isRack reports whether an end is the place of the amplifiers.
func isRack(text string) bool { return text != "" && rackEnds.in(join.Fold(text)) }

// end finds the part of the job that an end of a cable names.
func (b *builder) end(r *row, s seen) schedule.End {
	e := schedule.End{Text: s.asText()}
	if !s.had() {
		return e
	}
	k := s.key()
	if list := b.speakers[k]; len(list) == 1 {
		e.Loudspeaker = list[0]
		return e
	} else if len(list) > 1 {
		for _, l := range list {
			if z := b.zoneOf(r); z != nil && l.Zone == z {
				e.Loudspeaker = l
				return e
			}
		}
	}
	kind := notation.KeyOf(s.text).Kind
	if c := b.controls[b.controlNames.Find(s.text).Key]; c != nil {
		e.Control = c
		return e
	}
	if ref := b.channelRef(s.text); ref.ok && len(ref.ref.Channels) == 1 && kind != notation.KeyZone && kind != notation.KeyControl && kind != notation.KeyLoudspeaker {
		amp := ref.ref.Amplifier
		if amp == "" {
			if a := r.say(vocabulary.Amplifier); a.had() {
				amp = a.text
			}
		}
		c := b.knownChannel(amp, ref.ref.Channels[0])
		if c == nil && b.nearOutput(s) {
			if a := b.amplifier(s, withKindWord(s.text, amp)); a != nil {
				c = b.channel(a, ref.ref.Channels[0], s.source.At)
			}
		}
		if c != nil {
			e.Channel, e.Amplifier = c, c.Amplifier
			return e
		}
	}
	if z := b.knownZone(s.text); z != nil && kind != notation.KeyAmplifier {
		e.Zone = z
		return e
	}
	a := b.knownAmp(s.text)
	if a == nil && b.nearAmp(s) && !b.lookOnly {
		a = b.amplifier(s, s.text)
	}
	if a != nil {
		e.Amplifier = a
		return e
	}
	if c := b.knownControl(s.text); c != nil {
		e.Control = c
		return e
	}
	if z := b.knownZone(s.text); z != nil {
		e.Zone = z
		return e
	}
	if l := b.looseSpeaker(s.text); l != nil {
		e.Loudspeaker = l
	} else if l := b.speakersIn(k); l != nil {
		e.Loudspeaker = l
	} else if b.dir.controls[k] && kind == notation.KeyControl {
		e.Control = b.control(s, s.text) // one that only the cables name
	}
	return e
}

// nearOutput reports whether the near end of a cable names an amplifier and its output in words:
// "AMP1 ch 1". No row need name that output.
func (b *builder) nearOutput(s seen) bool {
	return s.field == vocabulary.From && !b.lookOnly && b.wordedOutput(s.text)
}

// knownChannel finds a channel that is there already.
func (b *builder) knownChannel(amp, channel string) *schedule.Channel {
	id := channelID(channel)
	if amp != "" {
		a := b.knownAmp(amp)
		if a == nil {
			return nil
		}
		k := channelKey{a.Key, id}
		if n, ok := b.letters[k]; ok {
			k.channel = n
		}
		return b.channels[k]
	}
	if owners := b.ampsOf[id]; len(owners) == 1 {
		return b.channels[channelKey{owners[0], id}]
	}
	return b.channels[channelKey{"", id}]
}

// knownAmp, knownZone and knownControl find parts by names that were not
// gathered before, such as the ends of cables: by the same letters and digits,
// else by the only part whose name reduces to the same.
func (b *builder) knownAmp(text string) *schedule.Amplifier {
	return known(text, join.Amplifier, b.job.Amplifiers, b.amps, func(a *schedule.Amplifier) string { return a.Name })
}

func (b *builder) knownZone(text string) *schedule.Zone {
	return known(text, join.Zone, b.job.Zones, b.zones, func(z *schedule.Zone) string { return z.Name })
}

func (b *builder) knownControl(text string) *schedule.Control {
	return known(text, join.Control, b.job.Controls, b.controls, func(c *schedule.Control) string { return c.Name })
}

func known[T any](text string, kind join.Kind, all []*T, byKey map[string]*T, name func(*T) string) *T {
	n := join.Parse(kind, text)
	if p := byKey[n.Full]; p != nil || n.Full == "" {
		return p
	}
	var found *T
	for _, p := range all {
		m := join.Parse(kind, name(p))
		same := m.Number == n.Number && m.Title == n.Title ||
			n.Number != "" && m.Number == n.Number && (m.Title == "" || n.Title == "") && !n.Bare() ||
			n.Title != "" && m.Title == n.Title && (m.Number == "" || n.Number == "")
		if !same {
			continue
		}
		if found != nil {
			return nil
		}
		found = p
	}
	return found
}

// speakersIn are the loudspeakers of the only row in a room, nil where there is none or several.
func (b *builder) speakersIn(room string) *schedule.Loudspeaker {
	if b.roomSpeakers == nil {
		b.roomSpeakers = make(map[string]*schedule.Loudspeaker)
		for _, l := range b.job.Loudspeakers {
			if k := join.Key(l.Room.Value); k != "" && l.Status == schedule.Installed {
				if _, several := b.roomSpeakers[k]; several {
					l = nil
				}
				b.roomSpeakers[k] = l
			}
		}
	}
	return b.roomSpeakers[room]
}

// looseSpeaker finds a loudspeaker by its tag without the word for it.
func (b *builder) looseSpeaker(text string) *schedule.Loudspeaker {
	if b.looseTags == nil {
		b.looseTags = make(map[string][]*schedule.Loudspeaker)
		for _, l := range b.job.Loudspeakers {
			for _, tag := range l.Tags {
				n := join.Parse(join.Loudspeaker, tag)
				k := n.Number + " " + n.Title
				b.looseTags[k] = append(b.looseTags[k], l)
			}
		}
	}
	n := join.Parse(join.Loudspeaker, text)
	if list := b.looseTags[n.Number+" "+n.Title]; len(list) == 1 {
		return list[0]
	}
	return nil
}
