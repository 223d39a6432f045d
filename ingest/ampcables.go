package ingest

import "lineaudit/ingest/vocabulary"

// A list of amplifiers may state the cable from each of them, without a word of outputs: "Group | Amplifier | Watts |
// Cable from rack | Length".

// ampWithCable reports whether a row of an amplifier of one output states the length of a cable.
func (b *builder) ampWithCable(r *row) bool {
	name, _ := b.ampName(r)
	if !name.had() || !r.own(vocabulary.Length).had() || b.channelsOfRow(r) > 1 {
		return false
	}
	a := b.amplifier(name, name.text)
	return a != nil && b.slots[a.Key] <= 1 && len(a.Channels) <= 1
}
