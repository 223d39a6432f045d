package ingest

import (
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/vocabulary"
)

// collectChannels gathers which amplifier has which channels, so that a
// channel named without an amplifier can be found, and a lettered channel of
// an amplifier with numbered ones.
func (b *builder) collectChannels() {
	has := make(map[string]map[string]bool)
	for _, t := range b.tables {
		for _, r := range t.rows {
			if r.out != "" {
				continue
			}
			o := b.outletOf(r)
			name := o.amp
			if r.kind == amplifierRow || r.kind == channelRow {
				if own, _ := b.ampName(r); own.had() {
					name = own.text
				}
			}
			if name == "" {
				continue
			}
			amp := b.ampNames.Find(name).Key
			if has[amp] == nil {
				has[amp] = make(map[string]bool)
			}
			for _, ch := range o.channels {
				has[amp][channelID(ch)] = true
			}
			if r.kind == amplifierRow {
				for _, ch := range b.linesListed(r) {
					has[amp][ch] = true
				}
				if n := b.channelsOfRow(r); n > 0 {
					b.slots[amp] = n
				}
			}
		}
	}
	for i := range b.said {
		s := &b.said[i]
		if owned := b.waysOwned(s); s.Name != "" && len(owned) > 0 {
			amp := b.ampNames.Find(s.ampText()).Key
			if has[amp] == nil {
				has[amp] = make(map[string]bool)
			}
			for _, ch := range owned {
				has[amp][ch] = true
			}
		}
	}
	for _, amp := range sortedKeys(has) {
		numbered := b.slots[amp] > 0 && !lettered(has[amp])
		for ch := range has[amp] {
			numbered = numbered || ch != "" && ch[0] >= '1' && ch[0] <= '9'
		}
		if numbered {
			for ch := range has[amp] {
				if n := letterNumber(ch); n > 0 {
					b.letters[channelKey{amp, ch}] = itoa(n)
					delete(has[amp], ch)
					has[amp][itoa(n)] = true
				}
			}
			for n := 1; n <= b.slots[amp] && len(has[amp]) < b.slots[amp]; n++ { // where rows name fewer than it has
				has[amp][itoa(n)] = true
			}
		}
		for ch := range has[amp] {
			b.ampsOf[ch] = append(b.ampsOf[ch], amp)
		}
	}
}

// linesListed are the outputs that other rows name without an amplifier and the
// row of an amplifier lists in one cell: "Ice 1, Ice 2".
func (b *builder) linesListed(r *row) []string {
	for _, f := range []vocabulary.Field{vocabulary.Circuit, vocabulary.Channel, vocabulary.Zone, vocabulary.Notes, vocabulary.Describe} {
		var out []string
		parts := listMarks.Split(r.own(f).text, -1)
		for _, part := range parts {
			if id := channelID(part); id != "" && b.looseOutputs()[id] {
				out = append(out, id)
			}
		}
		if len(parts) > 1 && len(out) == len(parts) {
			return out
		}
	}
	return nil
}

// letterNumber is the place in the alphabet of a channel named by one letter, else 0.
func letterNumber(ch string) int {
	if len(ch) == 1 && ch[0] >= 'a' && ch[0] <= 'p' {
		return int(ch[0]-'a') + 1
	}
	return 0
}

// lettered reports whether there are channels and all of them are letters.
func lettered(channels map[string]bool) bool {
	for ch := range channels {
		if letterNumber(ch) == 0 {
			return false
		}
	}
	return len(channels) > 0
}

// channelID is the comparable form of a channel's name: "CH 02" is "2".
func channelID(name string) string {
	n := join.Parse(join.Channel, name)
	switch {
	case n.Number != "" && n.Title == "":
		return n.Number
	case n.Number == "" && n.Title != "":
		return strings.ReplaceAll(n.Title, " ", "")
	case n.Full == "":
		return strings.TrimSpace(join.Fold(name))
	}
	return n.Full
}
