package ingest

import (
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
)

// outputForLines reads "output 1 for L1", "uscita 2 da ... per L2 e L3": an output and, behind a word for
// feeding, the lines that rows name. The amplifier is that of the heading, if one names it.
func (b *builder) outputForLines(s seen, segment, amp string, watts seen) (out []route) {
	words := strings.Fields(segment)
	for i := 1; i+1 < len(words); i++ {
		if !slices.Contains(feedingWords, join.Fold(words[i])) {
			continue
		}
		tail := strings.Trim(strings.Join(words[i+1:], " "), " .:=–-")
		lines := b.linesNamed(tail)
		if line := b.lineNamed(tail); len(lines) == 0 && line != "" {
			lines = []string{line}
		}
		if len(lines) == 0 {
			return nil
		}
		head := words[:i]
		for len(head) > 1 && copulaWords.in(join.Fold(head[len(head)-1])) { // "output 1 of (120 W)"
			head = head[:len(head)-1]
		}
		feed := b.feedIn(s, strings.Join(head, " "))
		if feed == nil || len(feed.channels) == 0 || slices.Contains(lines, feed.channels[0]) {
			return nil
		}
		named := feed.amp != ""
		if !named && amp != "" {
			feed.amp, feed.ampAt = amp, s
		}
		for _, line := range lines {
			out = append(out, route{line: line, service: service{at: s}, outlet: *feed, named: named, watts: watts})
		}
		return out
	}
	return nil
}

// outputsToLines reads "Output 1: pool" and "output 1: pool, output 2: rest", where rows name the lines "Pool" and
// "Rest", or, by the number of the output and the words, "1 Pool" and "2 Rest"; nil where a part is anything else.
func (b *builder) outputsToLines(s seen) []route {
	var out []route
	headed := false // an amplifier without a name stands ahead: "Amplifier 240 W, two outputs, output 1: pool"
	for _, segment := range segments(strings.Trim(s.text, " .")) {
		watts, segment := cutWatts(s, segment)
		head, rest, ok := cutRoute(segment)
		headed = headed || len(out) == 0 && notation.SpeaksOfAmplifier(segment) && b.ampAhead(s, segment) == ""
		if !ok && headed && len(out) == 0 {
			continue
		}
		if !ok {
			return nil
		}
		feed := b.feedIn(s, head)
		if feed == nil || len(feed.channels) != 1 || feed.channels[0] == "" || b.places.lines[join.Key(head)] {
			return nil
		}
		line := b.lineOfOutput(feed.channels[0], rest)
		if line == "" {
			return nil
		}
		out = append(out, route{line: line, service: service{at: s}, outlet: *feed, named: feed.amp != "", watts: watts})
	}
	return out
}

// lineOfOutput is the line that rows call by some words, or by these and the number of the output that feeds it; "" if
// none is called so, or the words are a place.
func (b *builder) lineOfOutput(number, words string) string {
	if !hasLongWord(words) {
		return ""
	}
	for _, name := range []string{number + " " + words, words + " " + number, words} {
		if b.places.lines[join.Key(name)] && !b.places.zones[join.Parse(join.Zone, name).Full] {
			return name
		}
	}
	return ""
}
