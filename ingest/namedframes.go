package ingest

import (
	"slices"
	"strings"

	"lineaudit/ingest/join"
)

// namedFrames gives what sentences say of a central unit the tag right behind the word for it: "Centrale AC1, 100 V:
// uscita 1 da 120 W, uscita 2 da 60 W" is said of an amplifier AC1.
func (b *builder) namedFrames() {
	for i := range b.said {
		s := &b.said[i]
		if s.Name != "" || s.Amplifiers > 1 || len(s.Ways) == 0 && s.Outputs == 0 {
			continue
		}
		if tag := frameTag(s.source.Written); tag != "" {
			s.Name, s.Worded, s.bare = tag, true, false
		}
	}
}

// frameTag is the tag right behind the only word for a central unit in a text, "" if there is none.
func frameTag(text string) string {
	words := strings.Fields(text)
	tag := ""
	for i := 0; i+1 < len(words); i++ {
		alone := frameWords.in(join.Fold(words[i]))
		behind := i > 0 && slices.Contains(frameWords, join.Fold(words[i-1]+" "+words[i])) // "central unit"
		if !alone && !behind {
			continue
		}
		if tag != "" {
			return ""
		}
		if next := strings.Trim(words[i+1], ",;:()"); isTag(next) && anyDigit(next) && len(next) <= longestTag && next[0] > '9' {
			tag = next
		}
	}
	return tag
}
