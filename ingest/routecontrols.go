package ingest

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
)

// What notes say of controls: their ratings, by name, by kind or by place.

// carriedIn reads "VC-2, VC-3: 35 W - VC-4: 10 W": controls that rows name, or
// several amplifiers, with the power behind them.
func (b *builder) carriedIn(s seen) []carried {
	if tag, rest, ok := strings.Cut(s.text, ":"); ok && b.dir.controls[join.Key(tag)] { // "PT1: attenuator 50 W"
		if m := wattsIn.FindAllStringSubmatch(rest, -1); len(m) == 1 {
			c := carried{controls: []string{strings.TrimSpace(tag)}, watts: s}
			c.watts.text = m[0][1]
			return []carried{c}
		}
	}
	var out []carried
	start := 0
	for _, m := range wattsIn.FindAllStringSubmatchIndex(s.text, -1) {
		c := carried{watts: s}
		c.watts.text = s.text[m[2]:m[3]]
		before := strings.Trim(isWord.ReplaceAllString(strings.Trim(s.text[start:m[0]], " :=,;(–-"), ""), " :=,(–-")
		before = joinerAhead.ReplaceAllString(before, "")
		start = m[1]
		parts := listMarks.Split(before, -1)
		if tags, err := notation.ParseTags(before); err == nil && tags.Ranged {
			parts = tags.List // "P1 to P4"
		}
		for _, part := range parts {
			for _, tag := range listWords.Split(part, -1) {
				tag = strings.Trim(tag, " :=–-")
				if tag == "" {
					continue
				}
				if words := strings.Fields(tag); len(words) > 1 && b.dir.controls[join.Key(words[len(words)-1])] && notation.IsControlWord(strings.Join(words[:len(words)-1], " ")) {
					tag = words[len(words)-1] // "Regler R1"
				}
				switch k := join.Key(tag); {
				case b.dir.controls[k]:
					c.controls = append(c.controls, tag)
				case b.dir.ampRefs[k]:
					c.amps = append(c.amps, tag)
				default:
					return nil
				}
			}
		}
		if len(c.controls)+len(c.amps) == 0 || len(c.amps) == 1 {
			return nil
		}
		out = append(out, c)
	}
	return out
}

// controlsIn reads controls with their ratings among other words, "VC A and VC
// B are 6 W controls", and the places that they are said to be on.
func (b *builder) controlsIn(s seen) []carried {
	if list := b.controlsByPlace(s); len(list) > 0 {
		return list
	}
	list, err := notation.ParseControls(s.text, notation.Auto)
	if err != nil {
		return nil
	}
	var out []carried
	for _, k := range list {
		place := b.placesIn(s, k.Place)
		if rows := b.rowsOfItems(s.text); k.Name == "" && len(rows) > 0 && len(list) == 1 { // "Att. of the corridor: 6 W, item 3"
			head, _, _ := cutAny(s.text, ":", " = ", ",")
			k.Name, place = head, service{at: s, rows: rows}
		}
		if k.Name == "" && k.W > 0 && len(list) == 1 {
			c := carried{watts: s, at: place}
			c.watts.text = plain(k.W) + " W"
			if v := b.placeIn(s); v != nil { // "Volume control in the library, 50 W"
				c.at = *v
			}
			if c.at.had() {
				c.controls = []string{"control (" + tidy(b.placeNamed(&c.at)) + ")"}
				c.unnamed = true
				b.controlNames.Add(c.controls[0], 0)
				out = append(out, c)
			} else if allWords.in(join.Fold(s.text)) || len(b.dir.controls) > 0 {
				b.controlsAlike(c.watts) // "All controls 35 W"
			}
			continue
		}
		if k.W == 0 || k.Name == "" {
			continue
		}
		c := carried{controls: []string{k.Name}, watts: s, at: place}
		c.watts.text = plain(k.W) + " W"
		out = append(out, c)
		if c.at.had() {
			b.controlNames.Add(k.Name, 0)
		}
	}
	return out
}

// controlsAlike notes a rating said of controls without a name.
func (b *builder) controlsAlike(watts seen) {
	if out, s := b.rating(watts); len(out) > 0 {
		b.controlTitle = append(b.controlTitle, ratedSeen{out, s})
		b.take(s, "control rating", s.text, schedule.LikelierReading, "said of the controls without naming one")
	}
}

// controlsByPlace reads "Volume controls: Hall 35 W, Yard 20 W" and "VC1 Hall 35
// W, VC2 Yard 20 W": several controls by their places, each with a power.
func (b *builder) controlsByPlace(s seen) []carried {
	text, worded := s.text, false
	if head, rest, ok := cutAny(text, ":", " = "); ok && notation.IsControlWord(head) {
		text, worded = rest, true
	}
	var out []carried
	for _, segment := range segmentEnd.Split(text, -1) {
		watts, rest := cutWatts(s, segment)
		if !watts.had() {
			return nil
		}
		words := strings.Fields(strings.Trim(rest, " .()–-"))
		name, from := "", 0
		for n := min(2, len(words)-1); n > 0; n-- {
			head := strings.Join(words[:n], " ")
			if kind := notation.KeyOf(head).Kind; notation.IsControlWord(head) || kind == notation.KeyControl {
				from, worded = n, true
				if !notation.IsControlWord(head) {
					name = head
				}
				break
			}
		}
		place := b.placesIn(s, strings.Join(words[from:], " "))
		if !place.had() {
			return nil
		}
		c := carried{watts: watts, at: place, controls: []string{name}, unnamed: name == ""}
		if name == "" {
			c.controls[0] = "control (" + tidy(b.placeNamed(&place)) + ")"
		}
		out = append(out, c)
	}
	if !worded || len(out) < 2 {
		return nil
	}
	for _, c := range out {
		b.controlNames.Add(c.controls[0], 0)
	}
	return out
}

// controlAt is the one control that the loudspeakers of a place hang behind, nil
// if there is none or several.
func (b *builder) controlAt(v *service) *schedule.Control {
	var only *schedule.Control
	for _, l := range b.job.Loudspeakers {
		at := l.Zone != nil && slices.ContainsFunc(v.zones, func(name string) bool { return b.zoneNames.Find(name).Key == l.Zone.Key }) ||
			l.Room.Had() && slices.ContainsFunc(v.rooms, func(name string) bool { return join.Key(name) == join.Key(l.Room.Value) })
		if !at || l.Control == nil {
			continue
		}
		if only != nil && only != l.Control {
			return nil
		}
		only = l.Control
	}
	return only
}
