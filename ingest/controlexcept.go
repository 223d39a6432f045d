package ingest

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Notes rate all controls at once, and some otherwise: "Every knob is the same 6 W attenuator except
// the stage's and those of rooms 3 and 4, which are 12 W", "Controls are rated 10 W, VC-5 is rated 35 W".

// controlsExcept reads such a note. It is asked where what stands behind the word for the exception is
// not all known, and nothing is taken from it then; ok is false for other notes.
func (b *builder) controlsExcept(s seen) (list []carried, ok bool) {
	head, tail, excepted := cutExcept(s.text)
	if !excepted {
		if head, tail, ok = cutRated(s.text); !ok || !controlsAtLarge(head) {
			return nil, false
		}
	}
	all, _ := cutWatts(s, head)
	worded := vocabulary.DeviceIn(head) == vocabulary.ControlDevice || slices.ContainsFunc(strings.Fields(head), notation.IsControlWord)
	if !all.had() || len(notation.PowersIn(head, notation.Auto)) != 1 || !worded || excepted && !everyWords.in(join.Fold(head)) {
		return nil, false
	}
	list = b.exceptions(s, tail)
	switch {
	case len(list) == 0 && !excepted:
		return nil, false
	case len(list) == 0:
		b.ask(s.source.At, "control rating", "“"+short(s.text)+"”: which controls are excepted, and what may they carry?", "the rating of the controls")
		return nil, true
	}
	for _, c := range list {
		b.controlNames.Add(c.controls[0], 0)
	}
	b.controlsAlike(all)
	return list, true
}

// cutExcept parts a text at a word for an exception: "Every knob 6 W" and "ST 3, 12 W".
func cutExcept(text string) (head, tail string, ok bool) {
	words := strings.Fields(text)
	for i := 1; i < len(words); i++ {
		for n := min(2, len(words)-i-1); n > 0; n-- {
			if said := strings.Join(words[i:i+n], " "); slices.Contains(exceptWords, join.Fold(strings.Trim(said, ",;:("))) {
				return strings.Trim(strings.Join(words[:i], " "), " ,;:("), strings.Join(words[i+n:], " "), true
			}
		}
	}
	return "", "", false
}

// cutRated parts a text behind its first power, where more follows: "Controls are rated 10 W" and "VC-5 is rated 35 W".
func cutRated(text string) (head, tail string, ok bool) {
	if !anyDigit(text) {
		return "", "", false
	}
	m := wattsIn.FindStringSubmatchIndex(text)
	if m == nil {
		return "", "", false
	}
	tail = strings.TrimLeft(text[m[1]:], " ")
	if tail == "" || !strings.ContainsRune(",;:(", rune(tail[0])) {
		return "", "", false
	}
	return text[:m[1]], strings.TrimLeft(tail, ",;:( "), true
}

// controlsAtLarge reports whether a text speaks of controls, none of them named, and of their rating: "Volume controls are rated 10 W".
func controlsAtLarge(text string) bool {
	_, rest := cutWatts(seen{}, noteNumber.ReplaceAllString(text, ""))
	words := strings.Fields(rest)
	return slices.ContainsFunc(words, notation.IsControlWord) && !slices.ContainsFunc(words, func(w string) bool { return !leadsOn(w) && !everyWords.in(join.Fold(w)) })
}

// exceptions are the controls that the tail of such a note names, by their tags or places, each with the
// power that follows them; nil where a part of it is not known.
func (b *builder) exceptions(s seen, tail string) []carried {
	var out []carried
	start, rated := 0, 0
	for _, m := range wattsIn.FindAllStringSubmatchIndex(tail, -1) {
		for _, part := range listParts.Of(tail[start:m[0]], byWords) {
			switch c, ok := b.controlPointedAt(s, part); {
			case !ok:
				return nil
			case len(c.controls) > 0:
				c.watts.text = tail[m[2]:m[3]]
				out = append(out, c)
			}
		}
		if len(out) == rated {
			return nil
		}
		start, rated = m[1], len(out)
	}
	if slices.ContainsFunc(strings.Fields(strings.Trim(tail[start:], " .,;:()")), func(w string) bool { return !leadsOn(w) }) {
		return nil
	}
	return out
}

// controlPointedAt is the control that a part of such a list means, "those of ST 3", "the stage's", "VC 4"; it has no
// control where the part only leads to the power, "which are". ok is false where it is not known.
func (b *builder) controlPointedAt(s seen, part string) (c carried, ok bool) {
	words := strings.Fields(strings.Trim(part, " .,;:=()–-"))
	for i := 0; i <= len(words); i++ {
		if i == len(words) {
			return carried{}, true
		}
		end := len(words) // words such as "are" or "with" lead to the power
		for end > i && leadsOn(words[end-1]) {
			end--
		}
		if end == i {
			return carried{}, true
		}
		name := strings.TrimRight(strings.Join(words[i:end], " "), ",;:")
		if b.dir.controls[join.Key(name)] && isTag(name) {
			return carried{controls: []string{name}, watts: s}, true
		}
		for _, text := range []string{name, strings.TrimSuffix(strings.TrimSuffix(name, "'s"), "’s"), strings.TrimSuffix(name, "s")} {
			if place := b.placeCalled(s, text); place != nil {
				return carried{controls: []string{"control (" + tidy(b.placeNamed(place)) + ")"}, unnamed: true, at: *place, watts: s}, true
			}
		}
		if !leadsOn(words[i]) {
			return carried{}, false
		}
	}
	return carried{}, false
}

// leadsOn reports whether a word says nothing of which place is meant: "those", "of", "the", "are", "knob".
func leadsOn(word string) bool {
	folded := join.Fold(strings.Trim(word, ",;:'’"))
	return folded == "" || slices.Contains(pointingWords, folded) || slices.Contains(articleWords, folded) || slices.Contains(copulaWords, folded) || notation.IsControlWord(word)
}

// placeCalled is the zone or room that a text names, without what stands in brackets behind its name
// maybe: "ST 3" where a row has "ST 3 (chorus)". Nil if none does, or several.
func (b *builder) placeCalled(s seen, text string) *service {
	folded := join.Fold(tidy(text))
	place, known := b.places.texts[folded]
	if !known {
		if b.places.called == nil {
			b.places.called = make(map[string]seen)
			for _, k := range sortedKeys(b.places.texts) {
				head := join.Fold(tidy(bracketsBehind.ReplaceAllString(b.places.texts[k].text, "")))
				if _, several := b.places.called[head]; several {
					b.places.called[head] = seen{}
					continue
				}
				b.places.called[head] = b.places.texts[k]
			}
		}
		place = b.places.called[folded]
	}
	switch {
	case !place.had():
		return nil
	case place.field == vocabulary.Zone || b.places.roomsZones:
		return &service{at: s, zones: []string{place.text}}
	}
	return &service{at: s, rooms: []string{place.text}}
}

// bracketsBehind is what stands in brackets behind a name.
var bracketsBehind = regexp.MustCompile(`\s*[(\[][^()\[\]]*[)\]]\s*$`)
