package ingest

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// controlsListed reads a list of controls by their tags, each with the power or the place in brackets
// behind it: "Attenuators: AT1 (30 W) for the shop only, AT2 (100 W) for the rose garden", "Volume
// controls: VR1 (hall, 24 W), VR2 (desk, 6 W)".
func (b *builder) controlsListed(s seen) []carried {
	text, headed := s.text, false
	if head, rest, ok := cutAny(text, ":", " = ", " - ", " – "); ok && (notation.IsControlWord(head) || vocabulary.DeviceIn(head) == vocabulary.ControlDevice && !anyDigit(head)) {
		text, headed = rest, true
	}
	if !strings.Contains(text, "(") {
		return nil
	}
	var out []carried
	for _, item := range outsideBrackets(text) {
		c, ok := b.controlListed(s, item, headed)
		if !ok {
			return nil
		}
		out = append(out, c)
	}
	for _, c := range out {
		b.controlNames.Add(c.controls[0], 0)
	}
	return out
}

// controlListed reads one item of such a list; ok is false where it has no tag, power and known place.
func (b *builder) controlListed(s seen, item string, headed bool) (c carried, ok bool) {
	head, rest, found := strings.Cut(strings.Trim(item, " ."), "(")
	inner, tail, closed := strings.Cut(rest, ")")
	words := strings.Fields(head)
	if !found || !closed || len(words) == 0 || strings.ContainsAny(tail, "()") {
		return carried{}, false
	}
	name, n := b.controlAhead(append(slices.Clip(words), "-"))
	if name == "" && (headed || b.dir.controls[join.Key(words[0])]) && (b.unusedTag(words[0]) || b.dir.controls[join.Key(words[0])]) {
		name, n = words[0], 1
	}
	watts, place := cutWatts(s, inner)
	if name == "" || !watts.had() {
		return carried{}, false
	}
	place = strings.Trim(strings.Join(append(slices.Clone(words[min(n, len(words)):]), place, tail), " "), " ,;")
	if first, rest, more := strings.Cut(place, " "); more && slices.Contains(onlyWords, join.Fold(first)) {
		place = rest // "nur für Halle"
	}
	served, _ := cutServes(place)
	for last := strings.LastIndexByte(served, ' '); last > 0 && slices.Contains(onlyWords, join.Fold(served[last+1:])); last = strings.LastIndexByte(served, ' ') {
		served = served[:last] // "the shop only"
	}
	at := b.placesIn(s, served)
	if !at.had() {
		if called := b.placeCalled(s, served); called != nil {
			at = *called
		}
	}
	return carried{controls: []string{name}, watts: watts, at: at}, at.had()
}

// controlTagged reads a tag with a word for a control behind it, and what it regulates: "RV1: volume control 24 W,
// regulates S1 to S3"; ok is false for other texts.
func (b *builder) controlTagged(s seen) (c carried, ok bool) {
	head, rest, found := cutAny(s.text, ":", " = ")
	if k := join.Key(head); !found || !isTag(head) || strings.Contains(head, " ") || len(head) > longestTag || b.namesAmp(head) || b.places.lines[k] {
		return carried{}, false
	}
	watts, rest := cutWatts(s, rest)
	words := strings.Fields(strings.Trim(rest, " ."))
	n := min(4, len(words)-1)
	for n > 0 && !notation.IsControlWord(isWord.ReplaceAllString(strings.Trim(strings.Join(words[:n], " "), " ,;"), "")) {
		n--
	}
	if n <= 0 {
		return carried{}, false
	}
	tail, said := cutServes(strings.TrimLeft(strings.Join(words[n:], " "), " ,;"))
	place := b.placesIn(s, tail)
	if !said || !place.had() {
		return carried{}, false
	}
	b.controlNames.Add(head, 0)
	return carried{controls: []string{head}, watts: watts, at: place}, true
}

// outsideBrackets parts a text at the commas and the words between items of a list that stand outside brackets.
func outsideBrackets(text string) []string {
	text = joinedItem.ReplaceAllString(text, ", $1")
	var out []string
	depth, start := 0, 0
	for i, r := range text {
		switch r {
		case '(':
			depth++
		case ')':
			depth--
		case ',', ';':
			if depth == 0 {
				out, start = append(out, text[start:i]), i+1
			}
		}
	}
	out = append(out, text[start:])
	return out
}

// joinedItem is a further item of such a list behind a word for "and": "and AT2 (20 W)".
var joinedItem = regexp.MustCompile(`(?i),?\s+(?:and|und|et|y|e|en)\s+(\S+\s*\()`)
