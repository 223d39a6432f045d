package ingest

import (
	"strings"

	"lineaudit/audit/schedule"
)

// askMoreOutputs asks of amplifiers on which more outputs carry something than they are said to have: lines may share one.
func (b *builder) askMoreOutputs() {
	loaded := make(map[*schedule.Channel]bool)
	for _, l := range b.job.Loudspeakers {
		for _, c := range feeding(l) {
			loaded[c] = l.Status == schedule.Installed || loaded[c]
		}
	}
	for _, a := range b.job.Amplifiers {
		used := 0
		for _, c := range a.Channels {
			if loaded[c] {
				used++
			}
		}
		n := b.slots[a.Key]
		for _, rated := range b.ampRated[a] {
			for _, o := range rated.outputs {
				n = max(n, o.Channels)
			}
		}
		if n > 1 && used > n {
			b.ask(a.At, "channel", strings.TrimSpace("amplifier "+a.Name)+" has "+itoa(n)+" outputs, and loudspeakers hang on "+itoa(used)+": which share an output?", "the load of the outputs")
		}
	}
}
