package ingest

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// onlyListedAmp hangs all loudspeakers on the only output of the only amplifier of a list that
// has rows for both, as registers and bills have, where nothing says what feeds any of them.
func (b *builder) onlyListedAmp() {
	if len(b.job.Channels) != 1 || len(b.job.Amplifiers) != 1 || b.job.Channels[0].Amplifier != b.job.Amplifiers[0] {
		return
	}
	a, c := b.job.Amplifiers[0], b.job.Channels[0]
	if n, ok := a.Count.Exact(); ok && n != 1 || a.Status != schedule.Installed {
		return
	}
	var at seen
	for _, t := range b.tables {
		if t.has(vocabulary.Amplifier) || t.has(vocabulary.Channel) || t.has(vocabulary.Circuit) {
			return
		}
		for _, r := range t.rows {
			if r.out != "" || r.kind != amplifierRow {
				continue
			}
			if at.had() || t.kind != layout.Mixed && t.kind != layout.Loudspeakers || !t.has(vocabulary.Describe) && !t.has(vocabulary.Kind) || !t.has(vocabulary.Quantity) && !t.has(vocabulary.Tag) && !t.has(vocabulary.Item) {
				return
			}
			at, _ = b.ampName(r)
		}
	}
	fed := func(l *schedule.Loudspeaker) bool {
		return l.Channel != nil || len(feeding(l)) > 0 || l.FeedUnread || l.Zone != nil && len(l.Zone.Channels) > 0
	}
	if !at.had() || slices.ContainsFunc(b.job.Loudspeakers, fed) {
		return
	}
	for _, l := range b.job.Loudspeakers {
		if l.Status == schedule.Installed {
			l.Channel = c
		}
	}
	at.source.Written = at.text
	b.take(at, "channel", c.Label(), schedule.LikelierReading, "the only amplifier of the list, and nothing says what feeds its loudspeakers")
}

// ampsStandSomewhere reports whether a list of all kinds of things has loudspeakers in rooms in which no amplifier of it
// stands: the room of an amplifier is where it stands then, and not what it feeds.
func (t *table) ampsStandSomewhere() bool {
	if t.ampsApart != nil {
		return *t.ampsApart
	}
	apart := false
	t.ampsApart = &apart
	if t.kind != layout.Mixed || !t.has(vocabulary.Room) {
		return false
	}
	stand := make(map[string]bool)
	for _, r := range t.rows {
		if r.kind == amplifierRow && r.out == "" {
			stand[r.own(vocabulary.Room).key()] = true
		}
	}
	apart = slices.ContainsFunc(t.rows, func(r *row) bool {
		room := r.own(vocabulary.Room)
		return r.kind == loudspeakerRow && r.out == "" && room.had() && !stand[room.key()]
	})
	return apart
}

// sharesStem reports whether the tag of an amplifier or a control begins as those of loudspeakers of its
// list do: "L1/01" beside loudspeakers "L1/02" and "L1/03" is no output of L1, nor several things.
func (t *table) sharesStem(tag string) bool {
	if t.tagStems == nil {
		t.tagStems = make(map[string]bool)
		for _, r := range t.rows {
			if s := r.own(vocabulary.Tag); s.had() && r.kind == loudspeakerRow {
				t.tagStems[stemOfTag(s.text)] = true
			}
		}
		delete(t.tagStems, "")
	}
	return t.tagStems[stemOfTag(tag)]
}

// stemOfTag is a tag up to its last stroke, hyphen or full stop, "" if it has none.
func stemOfTag(tag string) string {
	i := strings.LastIndexAny(tag, "/-.")
	return join.Fold(tag[:max(i, 0)])
}
