package ingest

import (
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
)

// Notes count the outputs of an amplifier and say by number what each feeds: "The amplifier has three outputs: 1 =
// basement, 2 = ground floor, 3 = first floor". What they name may be floors.

// numberedOutputs reads such a list of two outputs or more; nil where a part of it is anything else.
func (b *builder) numberedOutputs(s seen) []route {
	head, text, ok := strings.Cut(s.text, ":")
	if first, rest, two := strings.Cut(strings.TrimSpace(s.text), " "); !ok && two && slices.Contains(outputsWords, join.Fold(first)) {
		head, text, ok = first, rest, true // "Outputs A = store, B = foyer"
	}
	if !ok || !strings.ContainsAny(text, ",;") || !outputsWords.in(join.Fold(head)) && !outputWords.in(join.Fold(head)) && !(countWords(head) == 1 && notation.SpeaksOfAmplifier(head) && !anyDigit(head)) {
		return nil
	}
	amp := b.feederIn(head)
	var out []route
	for _, segment := range segments(strings.Trim(text, " .")) {
		watts, segment := cutWatts(s, segment)
		number, rest := bareOutput(segment)
		if number == "" {
			return nil
		}
		place := b.placesIn(s, rest)
		if !place.had() {
			place = service{at: s, rows: b.rowsOfFloor(rest)}
			place.at.text = rest
		}
		if !place.had() || slices.ContainsFunc(out, func(r route) bool { return r.outlet.channels[0] == number }) {
			return nil
		}
		r := route{service: place, outlet: outlet{channels: []string{number}, at: s}, watts: watts}
		if amp != "" {
			r.outlet.amp, r.outlet.ampAt, r.named = amp, s, true
		}
		out = append(out, r)
	}
	if len(out) < 2 {
		return nil
	}
	return out
}

// namesOutput reports whether what was said of an amplifier calls it by what a list of outputs calls one of them: the "A" of
// "Amplifier outputs: A = store, B = foyer".
func (s *said) namesOutput(list []route) bool {
	return s.Name != "" && slices.ContainsFunc(list, func(r route) bool { return r.outlet.amp == "" && slices.Contains(r.outlet.channels, s.Name) })
}

// bareOutput parts "1 = basement", "2 ground floor" or "A: hall" into the number or letter of an output and the rest; "" if
// a text has no such number.
func bareOutput(text string) (number, rest string) {
	number, rest, marked := cutRoute(text)
	if !marked {
		number, rest, _ = strings.Cut(strings.TrimSpace(text), " ")
		if !isWhole(number) {
			return "", ""
		}
	}
	if number = strings.TrimSpace(number); len(number) > 2 || !isWhole(number) && (len(number) != 1 || !isLetter(rune(number[0]))) {
		return "", ""
	}
	return number, strings.TrimSpace(rest)
}

// rowsOfFloor are the rows of loudspeakers on the floor that a text names, as the rows do or in other words, and nothing else.
func (b *builder) rowsOfFloor(text string) []*row {
	if b.places.floors == nil {
		b.places.floors = b.rowsOfFloors()
	}
	if rows := b.places.floors[join.Key(cutOnThe(text))]; len(rows) > 0 {
		return rows
	}
	var rows []*row
	list, _ := b.floorsIn(text)
	for _, f := range list {
		rows = append(rows, f.rows...)
	}
	return rows
}
