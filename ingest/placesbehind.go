package ingest

import (
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// placesBehind reads "Foyer with wall control R2 (50 W), shop and bar behind knob R3
// (30 W)": places, each with the control that their loudspeakers hang behind.
func (b *builder) placesBehind(s seen) []carried {
	if _, tail := splitControl(s.text); tail == "" {
		return nil
	}
	var out []carried
	var waiting service // places whose control is named further on: "Foyer, shop with control R2"
	for _, segment := range b.withWhatFollows(s, segments(s.text)) {
		head, tail := splitControl(segment)
		place := b.placesIn(s, withoutTogether(head))
		if !place.had() {
			return nil
		}
		place.zones, place.rooms = append(waiting.zones, place.zones...), append(waiting.rooms, place.rooms...)
		if waiting = (service{}); tail == "" {
			waiting = place
			continue
		}
		list, err := notation.ParseControls(tail, notation.Auto)
		if err != nil || len(list) != 1 {
			return nil
		}
		c := carried{controls: []string{list[0].Name}, at: place, unnamed: list[0].Name == ""}
		if c.unnamed {
			c.controls[0] = "control (" + tidy(b.placeNamed(&place)) + ")"
		}
		if list[0].W > 0 {
			c.watts = s
			c.watts.text = plain(list[0].W) + " W"
		}
		out = append(out, c)
	}
	if waiting.had() {
		return nil
	}
	for _, c := range out {
		b.controlNames.Add(c.controls[0], 0)
	}
	return out
}

// withWhatFollows joins to the segment that names a control those behind it that name no place:
// "the hall has a volume knob", "V1", "rated 36 W".
func (b *builder) withWhatFollows(s seen, list []string) []string {
	var out []string
	for _, segment := range list {
		if n := len(out); n > 0 {
			if _, before := splitControl(out[n-1]); before != "" {
				head, tail := splitControl(segment)
				if place := b.placesIn(s, head); tail == "" && !place.had() {
					out[n-1] += " " + segment
					continue
				}
			}
		}
		out = append(out, segment)
	}
	return out
}

// controlInEach reads "A 20 W volume control each in the gym and the classroom (K1 and
// K2)": one control of that power in each of several places that rows name.
func (b *builder) controlInEach(s seen) []carried {
	if !mayStateWatts(s.text) || !notation.OneEach(s.text) || vocabulary.DeviceIn(s.text) != vocabulary.ControlDevice {
		return nil
	}
	powers := notation.PowersIn(s.text, notation.Auto)
	places := b.placesAmong(s)
	tags := b.tagsInBrackets(s.text)
	if len(powers) != 1 || len(places) < 2 || len(tags) > 0 && len(tags) != len(places) {
		return nil
	}
	var out []carried
	for i, place := range places {
		c := carried{controls: []string{"control (" + tidy(b.placeNamed(&place)) + ")"}, unnamed: len(tags) == 0, at: place, watts: s}
		if !c.unnamed {
			c.controls[0] = tags[i] // in turn
		}
		c.watts.text = plain(powers[0].W) + " W"
		b.controlNames.Add(c.controls[0], 0)
		out = append(out, c)
	}
	return out
}

// tagsInBrackets are the tags of controls that a text lists in brackets.
func (b *builder) tagsInBrackets(text string) []string {
	var out []string
	for _, m := range inBrackets.FindAllStringSubmatch(text, -1) {
		for _, part := range splitAll(listMarks.Split(m[1], -1), listWords) {
			if tag := strings.TrimSpace(part); b.mayTagControl(tag) {
				out = append(out, tag)
			}
		}
	}
	return out
}

// leastListed is the fewest letters of a place among several that a text names.
const leastListed = 3

// placesAmong are the places of rows that a text names among other words, in its order. What
// is a part of another name is none.
func (b *builder) placesAmong(s seen) []service {
	if len(s.text) > longestSpoken {
		return nil
	}
	type spot struct {
		from, to int
		place    seen
	}
	var spots []spot
	folded := join.Fold(s.text)
	for _, k := range sortedKeys(b.places.texts) {
		i := strings.Index(folded, k)
		if len(k) < leastListed || i < 0 || !apart(folded, i, i+len(k)) {
			continue
		}
		x := spot{i, i + len(k), b.places.texts[k]}
		within := func(o spot) bool { return o.from <= x.from && x.to <= o.to }
		if slices.ContainsFunc(spots, within) {
			continue
		}
		spots = append(slices.DeleteFunc(spots, func(o spot) bool { return x.from <= o.from && o.to <= x.to }), x)
	}
	slices.SortFunc(spots, func(x, y spot) int { return x.from - y.from })
	var out []service
	for _, x := range spots {
		if x.place.field == vocabulary.Zone || b.places.roomsZones {
			out = append(out, service{at: s, zones: []string{x.place.text}})
		} else {
			out = append(out, service{at: s, rooms: []string{x.place.text}})
		}
	}
	return out
}

// controlsOfEach notes the rating of controls that columns only say are there, where a note
// gives every place one: "Controls: one per room, 36 W".
func (b *builder) controlsOfEach(s seen) bool {
	head, rest, ok := strings.Cut(s.text, ":")
	if !ok || !notation.IsControlWord(head) || !notation.OneForEach(strings.TrimSpace(rest)) || !slices.ContainsFunc(b.tables, func(t *table) bool { return t.has(vocabulary.Control) }) {
		return false
	}
	powers := notation.PowersIn(rest, notation.Auto)
	if len(powers) != 1 {
		return false
	}
	s.text = plain(powers[0].W) + " W"
	b.controlsAlike(s)
	return true
}

// withoutTogether cuts a word for "together" off the end of places: "Stands and canteen together".
func withoutTogether(places string) string {
	words := strings.Fields(places)
	if n := len(words); n > 1 && slices.Contains(togetherWords, join.Fold(words[n-1])) {
		return strings.Join(words[:n-1], " ")
	}
	return places
}

// controlsServing reads several controls with what each serves, a comma between: "Controls: R1 24 W for the office,
// R2 12 W for the shop". None, where a part says less.
func (b *builder) controlsServing(s seen) []carried {
	text, word := s.text, ""
	if head, rest, ok := strings.Cut(text, ":"); ok && notation.IsControlWord(strings.TrimSpace(head)) {
		text, word = rest, head+": "
	}
	parts := segments(text)
	if len(parts) < 2 || vocabulary.DeviceIn(s.text) != vocabulary.ControlDevice {
		return nil
	}
	var out []carried
	for _, part := range parts {
		one := s
		one.text = strings.Trim(part, " .")
		c, ok := b.controlServing(one)
		if list, err := notation.ParseControls(word+one.text, notation.Auto); !ok && err == nil && len(list) == 1 && list[0].Name != "" && list[0].W > 0 { // a tag of letters alone: "RG-B"
			c, ok = carried{controls: []string{list[0].Name}, watts: one, at: b.placesIn(one, list[0].Place)}, true
			c.watts.text = plain(list[0].W) + " W"
			if !c.at.had() {
				return nil
			}
			b.controlNames.Add(list[0].Name, 0)
		}
		if !ok || c.unnamed || !c.watts.had() {
			return nil
		}
		out = append(out, c)
	}
	return out
}
