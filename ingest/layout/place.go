package layout

import (
	"regexp"

	"lineaudit/ingest/vocabulary"
)

// placeBonus is what the place of a column among the others adds to a field
// that no header of the table names.
const placeBonus = 0.5

// named is the score from which header words claim a field for a table.
const named = 0.6

// places finds columns that their neighbours tell of, where no header names
// the field: numbers or letters beside an amplifier are its channels, tags in
// groups beside channels are amplifiers, names in groups beside rooms are zones.
// The result is by column.
func places(cols []*heading) map[int]vocabulary.Field {
	out := map[int]vocabulary.Field{}
	claimed := func(f vocabulary.Field) bool {
		for _, h := range cols {
			if h.forced == f || h.of(f) >= named && (h.top == f || h.of(f) > 0.85) && h.cells.of(f) > 0.1 {
				return true
			}
		}
		return false
	}
	is := func(i int, f vocabulary.Field) bool {
		if i < 0 || i >= len(cols) {
			return false
		}
		h := cols[i]
		return h.forced == f || h.of(f) >= named && h.of(f) >= h.score-0.1 && h.cells.of(f) > deniedBy
	}
	free := func(h *heading) bool {
		return h.forced == vocabulary.Unknown && h.credible() < sureWords && h.cells.cells > 0
	}
	channel, amplifier, zone := !claimed(vocabulary.Channel) && !claimed(vocabulary.Circuit), !claimed(vocabulary.Amplifier), !claimed(vocabulary.Zone)
	hasAmplifier := claimed(vocabulary.Amplifier)
	for i, h := range cols {
		if !free(h) {
			continue
		}
		s := h.cells
		switch {
		case channel && is(i-1, vocabulary.Amplifier) && s.share(lookSmall|lookLetter) > 0.8 && s.distinct <= 24:
			out[i] = vocabulary.Channel
			channel = false
		case channel && hasAmplifier && s.share(lookSmall|lookLetter) > 0.8 && s.distinct <= 24 && s.constantWithin(cols, vocabulary.Zone):
			out[i] = vocabulary.Channel
			channel = false
		case amplifier && is(i+1, vocabulary.Channel) && s.share(lookTag|lookAmp|lookLetter|lookSmall) > 0.8 && s.grouped():
			out[i] = vocabulary.Amplifier
			amplifier = false
		case amplifier && channel && i+1 < len(cols) && free(cols[i+1]) && s.grouped() && s.ampTags() && cols[i+1].cells.share(lookSmall|lookLetter) > 0.8 &&
			cols[i+1].cells.distinct <= 24:
			out[i], out[i+1] = vocabulary.Amplifier, vocabulary.Channel
			amplifier, channel = false, false
		case zone && s.cells >= 4 && s.distinct > 1 && 2*s.total >= h.rows && s.share(lookZone|lookRoom) > 0.8 && s.share(lookDevice|lookMounting|lookStatus) < 0.2 && s.grouped() &&
			(is(i-1, vocabulary.Room) || is(i+1, vocabulary.Room)):
			out[i] = vocabulary.Zone
			zone = false
		}
	}
	return out
}

// ampTag is how amplifiers are usually numbered: A for amplifier, V for
// Verstärker, E for Endstufe or etapa, F for finale, and the words themselves.
var ampTag = regexp.MustCompile(`(?i)^(a|v|e|f|pa|amp|ampli|end|eta)[-_. ]?\d{1,2}$`)

// ampTags reports whether the cells are numbered as amplifiers usually are.
func (s *sample) ampTags() bool {
	n := 0
	for _, t := range s.texts {
		if ampTag.MatchString(t) {
			n++
		}
	}
	return n > 0 && n*10 >= s.cells*8
}

// constantWithin reports whether the column holds one value for each value of
// the column that is named as the field, over at least two that come more than
// once: the channel of a zone is the same in all its rows, a count is not.
func (s *sample) constantWithin(cols []*heading, f vocabulary.Field) bool {
	for _, h := range cols {
		if h.of(f) < named || h.top != f || h.cells == s {
			continue
		}
		group := map[int]string{}
		for i, n := range h.cells.lines {
			group[n] = h.cells.texts[i]
		}
		values, groups := map[string]string{}, map[string]bool{}
		for i, n := range s.lines {
			g, ok := group[n]
			if !ok {
				continue
			}
			v, seen := values[g]
			switch {
			case !seen:
				values[g] = s.texts[i]
			case v != s.texts[i]:
				return false
			default:
				groups[g] = true
			}
		}
		return len(groups) >= 2 && len(values) >= 2
	}
	return false
}

// grouped reports whether equal cells of the column stand together.
func (s *sample) grouped() bool {
	return s.cells > 1 && s.distinct < s.cells && s.changes <= s.distinct+s.distinct/3
}
