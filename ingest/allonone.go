package ingest

import (
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
)

// Notes may hang everything on one output: "Everything is on PA-2 ch 1 (100 W)", "Alle Lautsprecher an V1 Ausgang 1".

// mostBetween is the most words between "all" and the output in such a note.
const mostBetween = 6

// allOnOne reads such a note; nil where it hangs less than all on an output, or names no amplifier's.
func (b *builder) allOnOne(s seen) []route {
	watts, text := cutWatts(s, strings.Trim(s.text, " ."))
	words := strings.Fields(strings.Trim(text, " ,"))
	n := min(3, len(words)-1)
	for n > 0 && !slices.Contains(allWords, join.Fold(strings.Trim(strings.Join(words[:n], " "), ",:"))) {
		n--
	}
	if n <= 0 {
		return nil
	}
	words = words[n:]
	for i := range min(mostBetween+1, len(words)) {
		if feed := b.outputOfAll(s, strings.Trim(strings.Join(words[i:], " "), " ,()")); feed != nil && ampAlone(feed.amp) {
			feed.amp = ownCode(feed.amp)
			return []route{{service: service{at: s, rest: true}, outlet: *feed, named: true, watts: watts}}
		}
		if !hangsAll(words[i]) {
			return nil
		}
	}
	return nil
}

// outputOfAll is the output that a text names and nothing else, whether or not anything else names its amplifier.
func (b *builder) outputOfAll(s seen, text string) *outlet {
	if feed := b.feedIn(s, text); feed != nil {
		return feed
	}
	text = strings.TrimSpace(routeWord.ReplaceAllString(text, ""))
	if c := b.channelRef(text); c.ok && len(c.ref.Channels) == 1 && isTag(c.ref.Amplifier) {
		return &outlet{at: s, ampAt: s, amp: c.ref.Amplifier, channels: slices.Clone(c.ref.Channels)}
	}
	return nil
}

// ampAlone reports whether a name is that of an amplifier, without words that stand in front of it.
func ampAlone(name string) bool {
	n := countWords(name)
	return n == 1 || n == 2 && notation.SpeaksOfAmplifier(strings.Fields(name)[0])
}

// hangsAll reports whether a word leaves it open which loudspeakers are meant: "of", "the", "loudspeakers", "hang".
func hangsAll(word string) bool {
	folded := join.Fold(word)
	return loudspeakersWords.in(folded) || slices.Contains(articleWords, folded) || slices.Contains(copulaWords, folded) || slices.Contains(belongsWords, folded) || hangsWords.in(folded)
}
