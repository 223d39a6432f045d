package ingest

import "lineaudit/audit/schedule"

// askMoreOutputs asks of amplifiers on which more outputs carry something than they are said to have: lines may share one.
func (b *builder) askMoreOutputs() {
	loaded := make(map[*schedule.Channel]bool)
	for _, l := range b.job.Loudspeakers {
		for _, c := range feeding(l) {
			loaded[c] = l.Status == schedule.Installed || loaded[c]
		}
	}
	for _, a := range b.job.Amplifiers {
		var names []string
		for _, c := range a.Channels {
			if loaded[c] {
				names = append(names, c.Name)
			}
		}
		n := b.slots[a.Key]
		for _, rated := range b.ampRated[a] {
			for _, o := range rated.outputs {
				n = max(n, o.Channels)
			}
		}
		if n > 1 && len(names) > n {
			b.ask(a.At, "channel", "amplifier "+a.Name+" has "+itoa(n)+" outputs, and loudspeakers hang on "+itoa(len(names))+": which share an output?", "the load of the outputs")
		}
	}
}
