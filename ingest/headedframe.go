package ingest

import (
	"slices"
	"strconv"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/vocabulary"
)

// headedFrame gives the outputs that no row gives an amplifier to the one that the header of their
// own list speaks of, "Sortie ampli" over 1, 2 and 3, where nothing else in the file speaks of amplifiers.
func (b *builder) headedFrame() {
	if len(b.said)+len(b.loose)+len(b.job.Amplifiers) > 0 || len(b.job.Channels) < 2 {
		return
	}
	if slices.ContainsFunc(b.spoken, func(s spoken) bool { return speaksOfAmplifier.Of(s.text, 0) || frameWords.in(join.Fold(s.text)) }) {
		return
	}
	for _, t := range b.tables {
		cols := t.byField[vocabulary.Channel]
		if len(cols) != 1 || !t.has(vocabulary.ChannelWatts) || !namesAmpOutput(cols[0].Header) {
			continue
		}
		if !b.numbersAll(t) {
			return
		}
		at := seen{text: cols[0].Header, field: vocabulary.Channel, col: cols[0], source: schedule.Source{At: cols[0].At, Written: cols[0].Header, How: schedule.FromTitle}}
		b.ampOfAll(&said{source: at.source}, "")
		b.take(at, "amplifier", "one amplifier of "+itoa(len(b.job.Channels))+" outputs", schedule.LikelierReading, "the header speaks of it, and the numbers of the outputs go on")
		return
	}
}

// namesAmpOutput reports whether a header speaks of an amplifier and of its output, in one word or in several.
func namesAmpOutput(header string) bool {
	if vocabulary.DeviceIn(header) != vocabulary.AmplifierDevice {
		return false
	}
	folded := join.Fold(header)
	return slices.Contains(vocabulary.NewScorer().Concepts(header), "channel") || slices.ContainsFunc(outputWords, func(w string) bool { return len(w) > 3 && strings.HasSuffix(folded, w) })
}

// numbersAll reports whether the rows of a table name all outputs of the job, each once, by the numbers from 1 on.
func (b *builder) numbersAll(t *table) bool {
	n := 0
	for _, r := range t.rows {
		s := r.own(vocabulary.Channel)
		if r.out != "" || !s.had() {
			continue
		}
		if n++; s.text != strconv.Itoa(n) {
			return false
		}
	}
	return n == len(b.job.Channels) && !slices.ContainsFunc(b.job.Channels, func(c *schedule.Channel) bool {
		k, err := strconv.Atoi(channelID(c.Name))
		return err != nil || k > n || c.Amplifier != nil || len(c.Bridged) > 0
	})
}
