package ingest

import (
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
)

// feedCalled is the output or the amplifier that is called like a text, nil if none is.
func (b *builder) feedCalled(s seen, text string) *outlet {
	o := &outlet{at: s, ampAt: s}
	if known, ok := b.splitKnown(text); ok {
		o.amp, o.channels, o.bridged = known.Amplifier, known.Channels, known.Bridged
		return o
	}
	if name := (&outlet{}).cutRating(text, s); b.namesAmp(name) || name != text && notation.KeyOf(name).Kind == notation.KeyAmplifier { // its rating is read where sentences are
		o.amp = ownCode(name)
		return o
	}
	c := b.channelRef(text)
	if !c.ok {
		return nil
	}
	switch notation.KeyOf(text).Kind {
	case notation.KeyChannel, notation.KeyAmplifier, notation.KeyLine:
	default:
		if !b.wordedOutput(text) {
			return nil
		}
	}
	o.amp, o.channels, o.bridged = c.ref.Amplifier, slices.Clone(c.ref.Channels), c.ref.Bridged
	if o.amp != "" {
		o.amp = withKindWord(text, o.amp)
	}
	return o
}

// cutOnThe takes an article, or a preposition that has become one with it, off the front of a
// text: "l'ampli A", "am Verstärker A", "sull'amplificatore A".
func cutOnThe(text string) string {
	for range 2 { // "en el", "auf dem"
		i := strings.IndexAny(text, " '’")
		if i <= 0 || i > longestRouteWord || text[i] == ' ' && i == 1 { // "L 1" is a line
			return text
		}
		word := join.Fold(text[:i])
		if !slices.Contains(articleWords, word) && !slices.Contains(onTheWords, word) {
			return text
		}
		rest := strings.TrimLeft(text[i:], " '’")
		if rest == "" {
			return text
		}
		text = rest
	}
	return text
}
