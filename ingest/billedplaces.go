package ingest

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Bills say behind the size of a cable where it lies: "2 core 1.5 mm², ground floor", "loudspeaker
// cable 2 x 1.5 mm², store to reading room".

// A billedRun is the place that such a row names, and the loudspeakers there.
type billedRun struct {
	from, to string // its ends, "" where the row names no more than a place
	place    string
	speakers []*schedule.Loudspeaker
}

// billedRunIn is the place in the last part of the description of a cable; ok is false where no
// loudspeaker of the job is there.
func (b *builder) billedRunIn(text string, at map[string][]*schedule.Loudspeaker) (run billedRun, ok bool) {
	i := max(strings.LastIndex(text, ", "), strings.LastIndex(text, " - "), strings.LastIndex(text, " – "))
	if i < 0 || len(text) > longestSpoken {
		return billedRun{}, false
	}
	run.place = strings.Trim(text[i:], " ,.–-")
	words := strings.Fields(run.place)
	for k := 1; k+1 < len(words); k++ {
		if slices.Contains(leadsToWords, join.Fold(words[k])) {
			run.from, run.to = strings.Join(words[:k], " "), strings.Join(words[k+1:], " ")
			run.place = run.to
			break
		}
	}
	run.speakers = at[join.Key(run.place)]
	return run, len(run.speakers) > 0
}

// speakersByPlace are the loudspeakers that are there by the keys of their zones, rooms and floors.
func (b *builder) speakersByPlace() map[string][]*schedule.Loudspeaker {
	out := make(map[string][]*schedule.Loudspeaker)
	for _, l := range b.job.Loudspeakers {
		r := b.origin[l]
		if l.Status != schedule.Installed || r == nil {
			continue
		}
		seenAt := make(map[string]bool)
		for _, f := range []vocabulary.Field{vocabulary.Zone, vocabulary.Room, vocabulary.Floor, vocabulary.Building} {
			if s := r.say(f); s.had() && !seenAt[s.key()] {
				seenAt[s.key()] = true
				out[s.key()] = append(out[s.key()], l)
			}
		}
	}
	return out
}

// billedByPlace enters a cable by the metre that names no line but a place of loudspeakers. Where all
// of these hang on one output, it is that output's, and their run.
func (b *builder) billedByPlace(r *row, at map[string][]*schedule.Loudspeaker) {
	if run, placed := b.billedRunIn(r.own(vocabulary.Describe).text, at); placed {
		b.enterBilledRun(r, run)
	}
}

// billedByChapter enters a cable by the metre whose words name nothing and that has a zone, or stands in its chapter:
// "Stands" over loudspeakers and "Cable 2 x 2.5 mm² | m | 95".
func (b *builder) billedByChapter(r *row, at map[string][]*schedule.Loudspeaker) {
	if zone := r.zoneText(); zone.had() && vocabulary.DeviceIn(r.own(vocabulary.Describe).text) == vocabulary.CableDevice {
		if run := (billedRun{place: tidy(zone.text), speakers: at[zone.key()]}); len(run.speakers) > 0 {
			b.enterBilledRun(r, run)
		}
	}
}

// enterBilledRun enters the cable of a row that tells its size and its length.
func (b *builder) enterBilledRun(r *row, run billedRun) {
	s := r.own(vocabulary.Describe)
	size, _, ok := notation.ConductorIn(s.text, notation.Auto)
	length, has := b.billedLength(r)
	if !ok || !has {
		return
	}
	first := run.speakers[0]
	c := &schedule.Cable{At: r.At, Zone: first.Zone, Channel: first.Channel, Reach: schedule.WholeLine, Length: length}
	for _, l := range run.speakers {
		if l.Zone != c.Zone {
			c.Zone = nil
		}
		if l.Channel != c.Channel {
			c.Channel = nil
		}
	}
	if run.to != "" {
		c.From, c.To = schedule.End{Text: schedule.Said(run.from, r.At)}, schedule.End{Text: schedule.Said(run.to, r.At)}
	}
	if item := r.first(vocabulary.Cable, vocabulary.Item, vocabulary.Tag); item.had() {
		c.Name, c.Key, c.At = tidy(item.text), item.key(), item.source.At
	}
	s.text, s.cell = size.String(), nil
	b.readConductor(c, s, vocabulary.Gauge)
	b.enterCable(c)
	r.kind, r.out, r.reason, r.used = cableRow, "", "", true
	for _, l := range run.speakers {
		if l.Run == nil && c.Channel != nil {
			l.Run = c
		}
	}
	s.source.Written = r.Text
	b.take(s, "length", plain(float64(length.Low))+" m to the last loudspeaker in "+short(run.place), schedule.LikelierReading, "metres of a bill are those of the cable laid")
}
