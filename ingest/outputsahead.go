package ingest

import (
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
)

// Notes list the outputs of an amplifier with what each feeds right behind: "Amplifier in the porter's
// lodge, 100 V: output 1 block A, output 2 block B, output 3 outside".

// outputsAhead reads such a list of two outputs or more; nil where a part of it is anything else.
func (b *builder) outputsAhead(s seen) []route {
	head, text, headed := strings.Cut(s.text, ":")
	amp := ""
	if !headed {
		text = s.text
	} else if amp = b.ampAhead(s, head); amp == "" && !notation.SpeaksOfAmplifier(head) {
		return nil
	}
	var out []route
	for _, segment := range segments(strings.Trim(text, " .")) {
		watts, segment := cutWatts(s, segment)
		r, ok := b.outputAhead(s, strings.Fields(segment))
		if !ok {
			return nil
		}
		if r.watts = watts; amp != "" {
			r.outlet.amp, r.outlet.ampAt, r.named = amp, s, true
		}
		out = append(out, r)
	}
	if len(out) < 2 {
		return nil
	}
	return out
}

// ampAhead is the name of the amplifier that the head of such a note speaks of, "" where it has none.
func (b *builder) ampAhead(s seen, head string) string {
	if name := b.feederIn(head); name != "" {
		return name
	}
	if list := sentence(head, s.source.At); len(list) == 1 && list[0].Worded && list[0].Name != "" {
		return list[0].ampText()
	}
	return ""
}

// outputAhead reads "output 1 block A", "output 2 feeds the hall": an output without an amplifier, and places.
func (b *builder) outputAhead(s seen, words []string) (route, bool) {
	for n := 1; n <= min(3, len(words)-1); n++ {
		feed := b.feedIn(s, strings.Join(words[:n], " "))
		if feed == nil || feed.amp != "" || len(feed.channels) == 0 {
			continue
		}
		rest := words[n:]
		for len(rest) > 1 && (slices.Contains(feedingWords, join.Fold(rest[0])) || slices.Contains(servesWords, join.Fold(rest[0]))) {
			rest = rest[1:]
		}
		if place := b.placesIn(s, strings.Join(rest, " ")); place.had() {
			return route{service: place, outlet: *feed}, true
		}
	}
	return route{}, false
}
