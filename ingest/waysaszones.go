package ingest

import (
	"strings"
	"unicode"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/vocabulary"
)

// Sentences and articles of bills may call the outputs of an amplifier by the names of the zones: "Amplifier
// AMP1, 4 x 60 W, outputs Z1, Z2, Z3 and Z4" beside loudspeakers in zones Z1 to Z4.

// zonesOfWays hangs zones that nothing hangs elsewhere on the outputs that sentences call by their names.
// A name that two amplifiers give an output tells nothing.
func (b *builder) zonesOfWays() {
	outputs := make(map[string]*schedule.Channel)
	sources := make(map[string]schedule.Source)
	for i := range b.said {
		s := &b.said[i]
		a := b.amps[b.ampNames.Find(s.ampText()).Key]
		if s.Name == "" || a == nil {
			continue
		}
		for _, w := range s.Ways {
			k := join.Key(w.Name)
			c := b.channels[channelKey{a.Key, channelID(w.Name)}]
			if c == nil || !strings.ContainsFunc(k, unicode.IsLetter) || len(k) < 2 {
				continue
			}
			if was, known := outputs[k]; known && was != c {
				c = nil
			}
			outputs[k], sources[k] = c, s.source
		}
	}
	for _, z := range b.job.Zones {
		k := join.Key(z.Name)
		c := outputs[k]
		if c == nil || z.Channel != nil || len(z.Channels) > 0 {
			continue
		}
		z.Channel, z.Channels = c, []*schedule.Channel{c}
		b.take(seen{text: sources[k].Written, field: vocabulary.Channel, source: sources[k]}, "channel", c.Label()+" for zone "+z.Name, schedule.LikelierReading, "the output is called as the zone is")
	}
}
