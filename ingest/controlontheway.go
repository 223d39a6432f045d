package ingest

import (
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/vocabulary"
)

// controlOnTheWay is the control that a cell for what feeds a row names between the two, if rows of
// controls have it: "PA-001 via PA-030" under "Supplied by".
func (b *builder) controlOnTheWay(r *row) controlMention {
	for _, f := range []vocabulary.Field{vocabulary.Amplifier, vocabulary.Channel, vocabulary.Circuit, vocabulary.From} {
		s := r.own(f)
		if !s.had() || len(s.text) > longestSpoken {
			continue
		}
		words := strings.Fields(s.text)
		for i := 1; i+1 < len(words); i++ {
			name := strings.Join(words[i+1:], " ")
			k := join.Key(name)
			if list := b.dir.devices[k]; slices.Contains(viaWords, join.Fold(words[i])) && (b.dir.controls[k] || b.dir.ownControls[k] || len(list) == 1 && list[0].kind == controlRow) {
				return controlMention{name: tidy(name), at: s, any: true}
			}
		}
	}
	return controlMention{}
}
