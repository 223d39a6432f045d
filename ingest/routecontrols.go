package ingest

import (
	"regexp"
	"slices"
	"strings"
	"unicode"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
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
	if !mayStateWatts(s.text) {
		return nil
	}
	var out []carried
	start := 0
	for _, m := range wattsIn.FindAllStringSubmatchIndex(s.text, -1) {
		c := carried{watts: s}
		c.watts.text = s.text[m[2]:m[3]]
		before := strings.Trim(isWord.ReplaceAllString(strings.Trim(s.text[start:m[0]], " :=,;/|·(–-"), ""), " :=,(–-")
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
	if list, ok := b.controlsExcept(s); ok {
		return list
	}
	if list := b.controlsListed(s); len(list) > 0 {
		return list
	}
	if c, ok := b.controlTagged(s); ok {
		return []carried{c}
	}
	if list := b.controlsByPlace(s); len(list) > 0 {
		return list
	}
	if list := b.placesBehind(s); len(list) > 0 {
		return list
	}
	if list := b.controlInEach(s); len(list) > 0 {
		return list
	}
	if b.controlsOfEach(s) {
		return nil
	}
	if list := b.controlsServing(s); len(list) > 0 {
		return list
	}
	if c, ok := b.controlServing(s); ok {
		return []carried{c}
	}
	list, err := notation.ParseControls(s.text, notation.Auto)
	if !slices.ContainsFunc(list, func(k notation.RatedControl) bool { return k.Place != "" }) {
		if rated := b.controlsRated(s); len(rated) > 0 {
			return rated
		}
	}
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
				if tag := b.tagGiven(s.text); tag != "" {
					c.controls = []string{tag}
				} else {
					c.controls, c.unnamed = []string{"control (" + tidy(b.placeNamed(&c.at)) + ")"}, true
				}
				b.controlNames.Add(c.controls[0], 0)
				out = append(out, c)
			} else if len(notation.PowersIn(s.text, notation.Auto)) > 1 {
				b.ask(s.source.At, "control rating", "“"+short(s.text)+"” states several powers: what may each control carry?", "the rating of the controls")
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

// tagGiven is the tag that a note gives the control of which it speaks, in front, in
// brackets or behind a word such as "marked": "a volume control (VR1), 15 W", "a
// 10 W attenuator marked SM", "it says LR on it"; "" if there is none.
func (b *builder) tagGiven(text string) string {
	if head, rest, ok := cutAny(text, "=", ":", " - ", " – "); ok && b.mayTagControl(head) && vocabulary.DeviceIn(rest) == vocabulary.ControlDevice {
		return head // "K1 = volume control of the hall, 30 W"
	}
	for _, m := range inBrackets.FindAllStringSubmatch(text, -1) {
		if tag := strings.TrimSpace(m[1]); b.mayTagControl(tag) {
			return tag
		}
	}
	words := strings.Fields(text)
	for i := range words[:max(0, len(words)-1)] {
		if tag := strings.Trim(words[i+1], ".,;:()'\"“”"); b.mayTagControl(tag) && (slices.Contains(markedWords, join.Fold(words[i])) || slices.Contains(showsWords, join.Fold(words[i])) && b.rowsOfFloor(tag) == nil) {
			return tag
		}
	}
	return ""
}

// mayTagControl reports whether a word may be the tag of a control that nothing else has.
func (b *builder) mayTagControl(tag string) bool {
	return tag != "" && tag == strings.ToUpper(tag) && !strings.ContainsAny(tag, " ,") && (b.freeTag(tag) || notation.KeyOf(tag).Kind == notation.KeyControl || len(tag) <= 3 && strings.IndexFunc(tag, notUpper) < 0)
}

func notUpper(r rune) bool { return !unicode.IsUpper(r) }

// controlServing reads "VC1 (60 W) serves zones 1 and 3", "Regler R2 für Halle":
// a control by its name, with or without a power, and the places behind it; and
// "Zones 1 and 3 share a 60 W control", where it has none.
func (b *builder) controlServing(s seen) (carried, bool) {
	watts, rest := cutWatts(s, s.text)
	words := strings.Fields(elided.ReplaceAllString(strings.TrimSpace(rest), "$1 "))
	if len(words) > 2 && slices.Contains(articleWords, join.Fold(words[0])) { // "the control LR1"
		words = words[1:]
	}
	name, n := b.controlAhead(words)
	if name == "" && len(words) > 1 && watts.had() && b.freeTag(words[0]) && regulateWords.begins(join.Fold(strings.Join(words[1:], " "))) {
		name, n = words[0], 1 // "K1 serves the hall, 40 W"
	}
	if name != "" {
		tail, said := cutServes(strings.TrimLeft(strings.Join(words[n:], " "), " ,:;=()–-"))
		place := b.placesIn(s, tail)
		if !place.had() && said {
			s.text = tail
			if v := b.placeIn(s); v != nil { // "VC1 serves the hall by the door"
				place = *v
			}
		}
		if place.had() {
			b.controlNames.Add(name, 0)
			return carried{controls: []string{name}, watts: watts, at: place}, true
		}
	}
	for n := 1; n < len(words) && watts.had(); n++ {
		place := b.placesIn(s, strings.Join(words[:n], " "))
		if tail, _ := cutServes(strings.Join(words[n:], " ")); place.had() && notation.IsControlWord(tail) {
			name := "control (" + strings.Trim(strings.Join(words[:n], " "), " :,;–-") + ")"
			b.controlNames.Add(name, 0)
			return carried{controls: []string{name}, unnamed: true, watts: watts, at: place}, true
		}
	}
	return carried{}, false
}

// elided is an article without its vowel: "L'atténuateur".
var elided = regexp.MustCompile(`^([Ll])['’]`)

// controlAhead is the name of the control that words begin with, and how many
// of them it takes: "VC 1", "Regler R2".
func (b *builder) controlAhead(words []string) (name string, n int) {
	for n := 1; n <= min(4, len(words)-1); n++ {
		head := strings.Trim(strings.Join(words[:n], " "), " ,:;=()–-")
		name := notation.ParseControlCell(head).Name
		switch {
		case name == "" || len(name) > longestTag || !anyDigit(name) && len(name) > 1:
		case name == head && notation.KeyOf(name).Kind != notation.KeyControl:
		case namesPlace(b.places.zones, join.Zone, name) || namesPlace(b.places.rooms, join.Room, name):
		default:
			return name, n
		}
	}
	return "", 0
}

// freeTag reports whether a word is a tag of letters and figures that names
// nothing else in the job.
func (b *builder) freeTag(word string) bool {
	return notation.KeyOf(word).Kind == notation.KeyNone && b.unusedTag(word)
}

// unusedTag is freeTag for a word that may be the tag of something else by its letters.
func (b *builder) unusedTag(word string) bool {
	return anyDigit(word) && strings.ContainsFunc(word, unicode.IsLetter) && b.isFree(word)
}

// isFree reports whether no amplifier, line or device goes by a short word.
func (b *builder) isFree(word string) bool {
	k := join.Key(word)
	return len(word) <= longestTag && !b.namesAmp(word) && !b.places.lines[k] && len(b.dir.devices[k]) == 0
}

// longestTag is the bytes of a tag in a note; what is longer is words.
const longestTag = 10

// cutServes takes the words for "serves" off the front of a text.
func cutServes(text string) (rest string, said bool) {
	for {
		words := strings.Fields(text)
		n := min(3, len(words)-1)
		for n > 0 && !slices.Contains(servesWords, join.Fold(strings.Join(words[:n], " "))) {
			n--
		}
		if n <= 0 {
			return text, said
		}
		text, said = strings.Join(words[n:], " "), true
	}
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
	text, worded, headed := s.text, false, false
	if head, rest, ok := cutAny(text, ":", " = ", " - ", " – "); ok && notation.IsControlWord(head) {
		text, worded, headed = rest, true, true
	}
	var out []carried
	var unknown []string // items of places that no row has
	for _, segment := range segments(text) {
		watts, rest := cutWatts(s, segment)
		words := strings.Fields(strings.Trim(rest, " .()–-"))
		if n := len(words) - 1; !watts.had() {
			if n > 0 && notation.AnswerOf(words[n]) == notation.No && b.placesIn(s, strings.Join(words[:n], " ")).had() {
				continue // "Yard none"
			}
			if sureStatus(segment) != schedule.Installed && len(out) > 0 {
				continue // "third one spare"
			}
			if headed && n >= 0 && len(out) > 0 && !anyDigit(segment) && (notation.Denies(segment) || notation.AnswerOf(words[0]) == notation.No || notation.AnswerOf(words[n]) == notation.No) {
				continue // "none elsewhere"
			}
			return nil
		}
		name, from := b.controlAhead(words)
		if name == "" && headed && len(words) > 1 && b.unusedTag(words[0]) {
			name, from = words[0], 1 // "Attenuators: A1 hall 20 W"
		}
		for n := min(2, len(words)-1); n > 0 && name == ""; n-- {
			if notation.IsControlWord(strings.Join(words[:n], " ")) {
				from, worded = n, true
				break
			}
		}
		worded = worded || name != ""
		served, _ := cutServes(strings.Join(words[from:], " "))
		place := b.placesIn(s, served)
		if !place.had() {
			place = b.placeInShort(s, served)
		}
		if !place.had() {
			if !headed || name != "" {
				return nil
			}
			unknown = append(unknown, strings.TrimSpace(segment))
			continue
		}
		c := carried{watts: watts, at: place, controls: []string{name}, unnamed: name == ""}
		if name == "" {
			c.controls[0] = "control (" + tidy(b.placeNamed(&place)) + ")"
		}
		out = append(out, c)
	}
	if !worded || len(out)+len(unknown) < 2 || len(out) == 0 {
		return nil
	}
	for _, c := range out {
		b.controlNames.Add(c.controls[0], 0)
	}
	for _, item := range unknown {
		b.ask(s.source.At, "control", "“"+short(item)+"” in “"+short(s.text)+"”: which loudspeakers hang behind this control?", "the load of this control")
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
