package ingest

import (
	"slices"
	"strings"
	"unicode"

	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
)

// What notes say of lines that rows name: which amplifier feeds them, and at which output.

// ampsHead reports whether an amplifier stands before a mark in every segment of a statement:
// "V1 = 240 W (hall), V2 = 120 W (stands)".
func (b *builder) ampsHead(s seen, text string) bool {
	list := segments(text)
	for _, segment := range list {
		head, _, ok := cutRoute(segment)
		if _, _, volts := notation.LineVoltageIn(segment); volts && !ok {
			continue
		}
		_, head = cutWatts(s, head)
		if head = strings.Trim(head, " ()"); !ok || !b.namesAmp(head) && !notation.SpeaksOfAmplifier(head) {
			return false
		}
	}
	return len(list) > 1
}

// linesNamed are the lines that a text lists and nothing else, as rows name them: "L1, L2",
// "lines 3 and 4"; nil where there are fewer than two.
func (b *builder) linesNamed(text string) []string {
	parts := slices.Clone(listParts.Of(text, byWords))
	if len(parts) < 2 {
		return nil
	}
	worded := false
	if words := strings.Fields(parts[0]); len(words) > 1 && !b.places.lines[join.Key(parts[0])] {
		kind := notation.KeyOf(parts[0]).Kind
		worded = kind == notation.KeyLine || kind == notation.KeyChannel
		if worded {
			parts[0] = words[len(words)-1]
		}
	}
	for i, part := range parts {
		if !b.places.lines[join.Key(part)] || !worded && !strings.ContainsFunc(part, unicode.IsLetter) {
			return nil
		}
		parts[i] = tidy(part)
	}
	return parts
}

// linesTogether reads "L1, L2: amp A 120 W", "lines 3 and 4: amp B 60 W": several lines that
// rows name and the amplifier that feeds them.
func (b *builder) linesTogether(s seen) []route {
	head, rest, ok := cutAny(s.text, ":", " = ", "->", "→")
	if !ok {
		return nil
	}
	parts := b.linesNamed(head)
	if len(parts) < 2 {
		return nil
	}
	watts, rest := cutWatts(s, rest)
	feed := b.feedIn(s, rest)
	if feed == nil || feed.amp == "" || len(feed.channels) > 0 {
		return nil
	}
	if watts.had() {
		b.said = append(b.said, said{RatedAmplifier: notation.RatedAmplifier{Name: feed.amp, W: wattsOf(watts), Worded: true}, source: s.source, routed: true})
	}
	var out []route
	for _, part := range parts {
		o := *feed
		o.channels = []string{part}
		out = append(out, route{line: part, service: service{at: s}, outlet: o, named: true})
	}
	return out
}

// fedBy reads "Amp 1 (60 W): Hall, Yard": an amplifier, its rating and the places
// that it feeds.
func (b *builder) fedBy(s seen) []route {
	head, rest, ok := cutAny(s.text, ":", " = ", "->", "→")
	if !ok {
		return nil
	}
	watts, name := cutWatts(s, head)
	if name = strings.Trim(name, " ,;()–-"); !b.namesAmp(name) && !notation.SpeaksOfAmplifier(name) {
		return nil
	}
	feed := b.feedIn(s, name)
	place := b.placesIn(s, rest)
	list := sentence(head, s.source.At)
	if feed == nil || feed.amp == "" || !place.had() || len(list) != 1 || list[0].W == 0 || list[0].Outputs > 0 || list[0].PerOutput || len(list[0].Ways) > 0 {
		return nil
	}
	return []route{{service: place, outlet: *feed, named: true, watts: watts}}
}

// linesFedBy reads "Line L1: amp 2": a line that rows name, or several, and the output that
// feeds it. Where only an amplifier is named, the line is its output.
func (b *builder) linesFedBy(s seen, segment string) ([]string, *outlet) {
	head, rest, ok := cutRoute(segment)
	if !ok {
		return nil, nil
	}
	lines := b.linesNamed(head)
	if len(lines) == 0 {
		if line := b.lineNamed(head); line != "" {
			lines = []string{line}
		}
	}
	if len(lines) == 0 {
		return nil, nil
	}
	if feed := b.feedIn(s, rest); feed != nil && feed.amp != "" {
		return lines, feed
	}
	return nil, nil
}

// lineNamed is the line that a text names, with a word for lines or without; "" where rows
// name none of that name.
func (b *builder) lineNamed(text string) string {
	name := strings.TrimSpace(text)
	if !b.places.lines[join.Key(name)] {
		words, kind := strings.Fields(name), notation.KeyOf(name).Kind
		worded := kind == notation.KeyLine || kind == notation.KeyChannel || len(words) == 2 && join.HasWord(join.Cable, words[0]) // "Cable L1"
		if len(words) < 2 || !worded || !b.places.lines[join.Key(words[len(words)-1])] {
			return ""
		}
		name = words[len(words)-1]
	}
	return name
}
