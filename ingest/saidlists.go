package ingest

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// namedWatts is a name and watts: "Line 1: 60 W", "PA2 120 W".
var namedWatts = regexp.MustCompile(`^(\pL.{0,22}?)\s*[:=]?\s+(\d{1,4})\s*[wW]$`)

// usualOutputs are the ratings that outputs of amplifiers are made for, in W:
// common practice, no source.
var usualOutputs = []float64{10, 15, 20, 30, 35, 40, 50, 60, 75, 80, 100, 120, 125, 150, 160, 180, 200, 240, 250, 300, 350, 360, 400, 480, 500, 600, 650}

// hearLists reads lists of names and watts outside the tables, "Line 1: 60 W,
// line 2: 120 W", as ratings: each must name an amplifier or an output that the
// tables have, with the watts of a usual rating. Loads may be listed so too,
// which makes it an assumption.
func (b *builder) hearLists() {
	for _, s := range b.spoken {
		if _, err := notation.ParseRatingSentence(s.text, notation.Auto); err == nil {
			continue // see applySaid
		}
		parts := strings.FieldsFunc(s.text, func(r rune) bool { return r == ',' || r == ';' })
		at := seen{text: s.text, field: vocabulary.ChannelWatts, source: schedule.Source{At: s.at, Written: s.text, How: schedule.FromTitle}}
		var give []func()
		for _, part := range parts {
			f := b.ratedByName(strings.TrimSpace(part), at)
			if f == nil {
				give = nil
				break
			}
			give = append(give, f)
		}
		if len(give) < 2 {
			continue
		}
		for _, f := range give {
			f()
		}
		b.take(at, "channel rating", "ratings", schedule.LikelierReading, "watts beside the names of outputs, usual as ratings")
	}
}

// ratedByName returns what notes one entry of a list of ratings; nil where it
// names nothing that the tables have.
func (b *builder) ratedByName(entry string, at seen) func() {
	m := namedWatts.FindStringSubmatch(entry)
	if m == nil {
		return nil
	}
	w, err := strconv.ParseFloat(m[2], 64)
	if err != nil || !slices.Contains(usualOutputs, w) {
		return nil
	}
	if a := b.amps[b.ampNames.Find(m[1]).Key]; a != nil && len(a.Channels) > 0 {
		return func() { b.applyTo(a, &said{notation.RatedAmplifier{Name: a.Name, W: w}, at.source}, at) }
	}
	ref := b.channelRef(m[1])
	if !ref.ok || ref.ref.Amplifier != "" || len(ref.ref.Channels) != 1 {
		return nil
	}
	var one *schedule.Channel
	for _, c := range b.job.Channels {
		if channelID(c.Name) == channelID(ref.ref.Channels[0]) {
			if one != nil {
				return nil // of several amplifiers
			}
			one = c
		}
	}
	if one == nil {
		return nil
	}
	return func() {
		if len(b.channelRated[one]) == 0 {
			b.noteChannelRating(one, []notation.RatedOutput{{W: w}}, at)
		}
	}
}
