package ingest

import (
	"slices"
	"strings"

	"lineaudit/ingest/join"
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
