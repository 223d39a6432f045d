package ingest

import (
	"slices"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/vocabulary"
)

// askRatingsAdrift asks what hangs on which output where loudspeakers have the power of an amplifier in their rows, and no
// output is named anywhere: "Zone | Qty | Tap W | Amp W". It is asked once for each column and power.
func (b *builder) askRatingsAdrift() {
	if len(b.job.Channels) > 0 || len(b.job.Amplifiers) > 0 {
		return
	}
	var asked []string
	for _, l := range b.job.Loudspeakers {
		r := b.origin[l]
		if l.Status != schedule.Installed || r == nil {
			continue
		}
		s := r.first(vocabulary.ChannelWatts, vocabulary.FrameWatts)
		if !s.had() || slices.Contains(asked, s.text) || len(asked) >= mostUnheard {
			continue
		}
		asked = append(asked, s.text)
		b.ask(s.source.At, "channel", "“"+short(s.text)+"” is what an amplifier gives, and none is named: which of these loudspeakers hang on one output together?", "the load of this output")
	}
}
