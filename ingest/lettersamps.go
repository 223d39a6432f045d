package ingest

import (
	"regexp"
	"slices"
	"strconv"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/vocabulary"
)

// letteredOutput is an output by the letter of its amplifier and its number: "A1", "B4". Other letters stand for outputs,
// lines, zones and the like.
var letteredOutput = regexp.MustCompile(`^([A-H])(\d{1,2})$`)

// ampsByLetters makes the amplifiers that a column about amplifiers and their outputs calls by letters, "A1", "A2", "B1"
// below "Amp ch", where all outputs of the job are called so, no amplifier is named otherwise, and the numbers of each
// letter run from 1 on.
func (b *builder) ampsByLetters() {
	if len(b.job.Amplifiers) > 0 || len(b.job.Channels) < 2 || slices.ContainsFunc(b.said, func(s said) bool { return s.Name != "" || s.Amplifiers > 1 }) {
		return
	}
	numbers := make(map[string][]int)
	for _, c := range b.job.Channels {
		m := letteredOutput.FindStringSubmatch(c.Name)
		if m == nil || c.Amplifier != nil || len(c.Bridged) > 0 || c.Pair {
			return
		}
		n, _ := strconv.Atoi(m[2])
		numbers[m[1]] = append(numbers[m[1]], n)
	}
	for _, list := range numbers {
		slices.Sort(list)
		if len(list) < 2 || list[0] != 1 || list[len(list)-1] != len(list) {
			return
		}
	}
	var of *column
	for _, t := range b.tables {
		if c := t.outputsOfAmplifier(); c != nil && (c.Field == vocabulary.Channel || c.Field == vocabulary.Circuit) {
			of = c
		}
	}
	if of == nil {
		return
	}
	for _, c := range b.job.Channels {
		m := letteredOutput.FindStringSubmatch(c.Name)
		key := join.Parse(join.Amplifier, m[1]).Full
		a := b.amps[key]
		if a == nil {
			a = &schedule.Amplifier{At: c.At, Key: key, Name: m[1]}
			b.amps[key] = a
			b.job.Amplifiers = append(b.job.Amplifiers, a)
		}
		c.Amplifier, c.Name = a, m[2]
		a.Channels = append(a.Channels, c)
		b.channels[channelKey{a.Key, channelID(c.Name)}] = c
	}
	header := seen{text: of.Header, field: vocabulary.Channel, col: of}
	header.source = schedule.Source{At: of.At, Written: of.Header, How: schedule.FromTitle}
	b.take(header, "amplifier", "the letter of each output", schedule.LikelierReading, "the header speaks of amplifiers and their outputs")
}
