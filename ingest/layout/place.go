package layout

import (
	"regexp"
	"slices"

	"lineaudit/ingest/vocabulary"
)

// placeBonus is what the place of a column among the others adds to a field
// that no header of the table names.
const placeBonus = 0.5

// named is the score from which header words claim a field for a table.
const named = 0.6

// mostOutputs is more channels than an amplifier has.
const mostOutputs = 24

// A setting is the columns of a table among which places are found.
type setting []*heading

// claimed reports whether a header names the field, and its cells do not deny it.
func (s setting) claimed(f vocabulary.Field) bool {
	return slices.ContainsFunc(s, func(h *heading) bool {
		return h.forced == f || h.of(f) >= named && (h.top == f || h.of(f) > 0.85) && h.cells.of(f) > 0.1
	})
}

// is reports whether column i is named as the field.
func (s setting) is(i int, f vocabulary.Field) bool {
	if i < 0 || i >= len(s) {
		return false
	}
	h := s[i]
	return h.forced == f || h.of(f) >= named && h.of(f) >= h.score-0.1 && h.cells.of(f) > deniedBy
}

func (s setting) beside(i int, f vocabulary.Field) bool { return s.is(i-1, f) || s.is(i+1, f) }

// open reports whether the header of a column leaves its field open.
func (h *heading) open() bool {
	return h.forced == vocabulary.Unknown && h.credible() < sureWords && h.cells.cells > 0
}

// places finds columns that the others tell of, where no header names the
// field: numbers or letters beside an amplifier, or constant within a zone, are
// its channels; tags in groups beside channels are amplifiers; names in groups
// beside rooms are zones. The result is by column.
func places(cols []*heading) map[int]vocabulary.Field {
	out := map[int]vocabulary.Field{}
	all := setting(cols)
	channel, amplifier, zone := !all.claimed(vocabulary.Channel) && !all.claimed(vocabulary.Circuit), !all.claimed(vocabulary.Amplifier), !all.claimed(vocabulary.Zone)
	control := !all.claimed(vocabulary.Control)
	hasAmplifier := !amplifier
	for i, h := range cols {
		if !h.open() {
			continue
		}
		s := h.cells
		switch {
		case control && s.cells >= 2 && s.share(lookTag|lookControl) > 0.8 && all.filledAlike(h, vocabulary.ControlWatts):
			out[i] = vocabulary.Control
			control = false
		case channel && s.outputs() && (all.is(i-1, vocabulary.Amplifier) || hasAmplifier && all.constantWithin(h, vocabulary.Zone)):
			out[i] = vocabulary.Channel
			channel = false
		case amplifier && s.grouped() && s.share(lookTag|lookAmp|lookLetter|lookSmall) > 0.8 && all.is(i+1, vocabulary.Channel),
			amplifier && s.ampTags && (all.beside(i, vocabulary.Channel) || all.constantWithin(h, vocabulary.Zone)):
			out[i] = vocabulary.Amplifier
			amplifier = false
		case amplifier && channel && i+1 < len(cols) && cols[i+1].open() && s.grouped() && s.ampTags && cols[i+1].cells.outputs():
			out[i], out[i+1] = vocabulary.Amplifier, vocabulary.Channel
			amplifier, channel = false, false
		case zone && s.cells >= 4 && s.distinct > 1 && 2*s.total >= h.rows && s.share(lookZone|lookRoom) > 0.8 &&
			s.share(lookDevice|lookMounting|lookStatus) < 0.2 && (s.grouped() && all.beside(i, vocabulary.Room) || all.fedAlike(h)):
			out[i] = vocabulary.Zone
			zone = false
		}
	}
	return out
}

// outputs reports whether the cells may be numbers or letters of an
// amplifier's outputs.
func (s *sample) outputs() bool {
	if s.share(lookSmall|lookLetter) <= 0.8 || s.distinct > mostOutputs {
		return false
	}
	return len(s.numbers) == 0 || slices.Max(s.numbers) <= mostOutputs
}

// constantWithin reports whether the column holds one value for each value of
// the column that is named as the field, over at least two that come more than
// once: the channel of a zone is the same in all its rows, a count is not. A
// blank under a value belongs to it.
func (s setting) constantWithin(of *heading, f vocabulary.Field) bool {
	for _, h := range s {
		if h.of(f) >= named && h.top == f && h != of {
			return of.constantIn(h)
		}
	}
	return false
}

// fedAlike reports whether a column divides the rows as zones do: amplifier and
// channel are the same for all rows of one value, and a room is named elsewhere.
func (s setting) fedAlike(by *heading) bool {
	fed, rooms := 0, false
	for _, h := range s {
		switch {
		case h == by:
		case h.of(vocabulary.Amplifier) >= named && h.top == vocabulary.Amplifier, h.of(vocabulary.Channel) >= named && h.top == vocabulary.Channel:
			if !h.constantIn(by) {
				return false
			}
			fed++
		case h.of(vocabulary.Room) >= named && h.top == vocabulary.Room:
			rooms = true
		}
	}
	return fed > 0 && rooms
}

// constantIn reports whether the column of holds one value for each value of h.
func (of *heading) constantIn(h *heading) bool {
	values, groups := map[string]string{}, map[string]bool{}
	at := -1
	for i, n := range of.cells.lines {
		for at+1 < len(h.cells.lines) && h.cells.lines[at+1] <= n {
			at++
		}
		if at < 0 {
			continue
		}
		g := h.cells.texts[at]
		v, seen := values[g]
		switch {
		case !seen:
			values[g] = of.cells.texts[i]
		case v != of.cells.texts[i]:
			return false
		default:
			groups[g] = true
		}
	}
	return len(groups) >= 2 && len(values) >= 2
}

// filledAlike reports whether the column is filled in just the rows in which
// the column named as the field is, and these are not all rows.
func (s setting) filledAlike(of *heading, f vocabulary.Field) bool {
	for _, h := range s {
		if h == of || h.of(f) < named || h.top != f {
			continue
		}
		return h.cells.total < h.rows && len(h.cells.lines) == h.cells.total && slices.Equal(h.cells.lines, of.cells.lines)
	}
	return false
}

// ampTag is how amplifiers are usually numbered: A for amplifier, V for
// Verstärker, E for Endstufe or etapa, F for finale, and the words themselves.
var ampTag = regexp.MustCompile(`(?i)^(a|v|e|f|pa|amp|ampli|end|eta)[-_. ]?\d{1,2}$`)

// grouped reports whether equal cells of the column stand together.
func (s *sample) grouped() bool {
	return s.cells > 1 && s.distinct < s.cells && s.changes <= s.distinct+s.distinct/3
}
