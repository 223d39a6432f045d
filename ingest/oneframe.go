package ingest

import (
	"slices"
	"strconv"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// oneFrame gives the outputs that no row gives an amplifier to the only amplifier that the file
// tells of, one of several outputs that has no name: "Amp 4 x 60 W, each line has its own output",
// "centrale con 6 uscite". It stays without one, and without a rating but that of all its outputs together.
func (b *builder) oneFrame() {
	s := b.soleFrame()
	if s == nil || len(b.job.Amplifiers) > 0 || len(b.job.Channels) == 0 || len(b.loose) > 0 {
		return
	}
	outputs := max(s.Outputs, len(s.Ways))
	if len(b.job.Channels) > outputs {
		return
	}
	for _, c := range b.job.Channels {
		if n, err := strconv.Atoi(channelID(c.Name)); c.Amplifier != nil || len(c.Bridged) > 0 || err == nil && n > outputs {
			return // an output that the amplifier has not
		}
	}
	a := b.ampOfAll(s, "")
	if s.TotalW > 0 {
		at := seen{text: s.source.Written, field: vocabulary.FrameWatts, source: s.source}
		b.frameRated[a] = append(b.frameRated[a], ratedSeen{totalOf(s.TotalW), at})
	}
	b.take(seen{text: s.source.Written, field: vocabulary.Amplifier, source: s.source}, "amplifier", "one amplifier of "+itoa(outputs)+" outputs",
		schedule.LikelierReading, "the only amplifier that the file speaks of")
}

// soleFrame is what the file says of an amplifier of several outputs without a name, nil where
// it tells of none or may have several.
func (b *builder) soleFrame() *said {
	all := slices.Concat(b.said, b.saidFrames())
	var one *said
	for i := range all {
		s := &all[i]
		if s.Name != "" || s.Amplifiers > 1 {
			return nil
		}
		if !s.Worded && !frameWords.in(join.Fold(s.source.Written)) && !notation.SpeaksOfAmplifier(s.source.Written) || max(s.Outputs, len(s.Ways)) < 2 {
			continue
		}
		if one != nil && (one.Outputs != s.Outputs || one.W != s.W || one.source.At.Row != s.source.At.Row) {
			return nil
		}
		one = s
	}
	if slices.ContainsFunc(b.tables, func(t *table) bool {
		return slices.ContainsFunc(t.rows, func(r *row) bool { return r.kind == amplifierRow && r.used })
	}) {
		return nil
	}
	return one
}

// saidFrames are what texts say of a central unit that they do not rate, "centrale con 6 uscite".
func (b *builder) saidFrames() []said {
	var out []said
	for _, n := range b.spoken {
		folded := join.Fold(n.text)
		if !frameWords.in(folded) || slices.ContainsFunc(b.said, func(s said) bool { return s.source.At == n.at }) {
			continue
		}
		for _, w := range frameWords {
			if i := strings.Index(folded, w); i >= 0 && apart(folded, i, i+len(w)) {
				out = append(out, sentence("amplifier"+folded[i+len(w):], n.at)...)
				break
			}
		}
	}
	for i := range out {
		out[i].Ways = nil // folded: only their number is asked for
	}
	return out
}
