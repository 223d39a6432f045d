package ingest

import (
	"regexp"
	"slices"
	"strings"
	"unicode"

	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/remember"
)

// Notes say in a sentence which amplifier feeds which places: "Amplifier A1 (240 W) feeds the hall and the stage,
// A2 (120 W) the offices and the yard".

// A feedingAmp is one amplifier of such a sentence.
type feedingAmp struct {
	name   string
	watts  seen
	verb   bool // a word for feeding was read behind it
	places []string
}

// voltsBeside is a line voltage in a list with a rating: ", 100 V" of "A1 (240 W, 100 V)".
var voltsBeside = regexp.MustCompile(`(?i)\s*[,/]\s*\d{2,3}(?:[.,]\d)?\s*-?V(?:olts?)?\b(?:\s+line\b)?`)

// ampsFeeding reads such a sentence; nil where a part of it is anything else, or rows know none of a place.
func (b *builder) ampsFeeding(s seen) []route {
	text := s.text
	if !saysFeeding(text) {
		if text = markedFeeding(s.text); text == "" {
			return nil
		}
	}
	var amps []feedingAmp
	for _, segment := range segments(strings.Trim(voltsBeside.ReplaceAllString(text, ""), " .")) {
		if more := b.addFeeding(amps, s, segment); more != nil {
			amps = more
			continue
		}
		for _, part := range listWords.Split(segment, -1) { // "A1 feeds the hall and A2 the yard"
			if amps = b.addFeeding(amps, s, part); amps == nil {
				return nil
			}
		}
	}
	if text != s.text && len(notation.AmplifiersNamed(s.source.Written)) < 2 && (len(amps) != 1 || len(amps[0].places) < 2) {
		return nil // "Amp 1: office" may say where it stands
	}
	var out []route
	var rated []said
	for _, a := range amps {
		list := b.fedByOne(s, a)
		if len(list) == 0 {
			return nil
		}
		name := ownCode(a.name)
		out = append(out, list...)
		if a.watts.had() {
			rated = append(rated, said{RatedAmplifier: notation.RatedAmplifier{Name: name, W: wattsOf(a.watts), Worded: true}, source: s.source, routed: true})
		}
	}
	b.said = append(b.said, rated...)
	return out
}

// fedByOne hangs what an amplifier of such a sentence feeds on it: places, the rest, or lines that rows name.
func (b *builder) fedByOne(s seen, a feedingAmp) []route {
	fed := strings.Join(a.places, ", ")
	on := outlet{amp: ownCode(a.name), at: s, ampAt: s}
	place := service{at: s, rest: len(a.places) == 1 && restWords.in(join.Fold(a.places[0]))}
	if !place.rest {
		place = b.placesIn(s, fed)
	}
	if place.had() {
		return []route{{service: place, outlet: on, named: true, watts: a.watts}}
	}
	lines := b.listOfLines(fed)
	if len(lines) > 1 {
		a.watts = seen{} // of all its lines together
	}
	var out []route
	for _, line := range lines {
		o := on
		o.channels = []string{line}
		out = append(out, route{line: line, service: service{at: s}, outlet: o, named: true, watts: a.watts})
	}
	return out
}

// listOfLines are the lines that a text names and nothing else, one or several: "L1", "L2 + L3", "lines 1 and 2".
func (b *builder) listOfLines(text string) []string {
	if lines := b.linesNamed(text); len(lines) > 0 {
		return lines
	}
	if line := b.lineNamed(text); line != "" && strings.ContainsFunc(text, unicode.IsLetter) {
		return []string{line}
	}
	return nil
}

// ampMark finds the name of an amplifier with a mark behind it and words behind that: "Amp 1: nave", "; amp 2 = tower".
var ampMark = regexp.MustCompile(`(^|[;,.]\s*)(\pL{2,20}\.?\s+(?:\d{1,2}|[A-Z]\d{0,2}))(\s*[:=]\s*|\s+[-–]\s+)\pL`)

// markedFeeding is a text in which marks stand for what amplifiers do, with a word in place of each: "Amp 1: nave,
// choir" as "Amp 1 feeds nave, choir", without what stands before the first; "" where no amplifier has such a mark, or
// places go by numbers, as lines and outputs do.
func markedFeeding(text string) string {
	if !strings.ContainsAny(text, ":=-–") {
		return ""
	}
	return feedingMarks.Of(text, 0)
}

// feedingMarks remembers such texts with words in place of their marks.
var feedingMarks = remember.New(2048, func(text string, _ int) string { return wordsForMarks(text) })

func wordsForMarks(text string) string {
	var b, places strings.Builder
	end := 0
	for _, m := range ampMark.FindAllStringSubmatchIndex(text, -1) {
		if !notation.SpeaksOfAmplifier(text[m[4]:m[5]]) {
			continue
		}
		if end == 0 {
			end = m[4]
		}
		b.WriteString(text[end:m[5]] + " feeds ")
		places.WriteString(text[end:m[4]])
		end = m[7]
	}
	places.WriteString(text[end:])
	if end == 0 || anyDigit(wattsIn.ReplaceAllString(places.String(), "")) {
		return ""
	}
	return b.String() + text[end:]
}

// saysFeeding reports whether a text has a word for what an amplifier does for its loudspeakers.
func saysFeeding(text string) bool {
	for word := range strings.FieldsSeq(text) {
		if slices.Contains(feedingWords, join.Fold(word)) {
			return true
		}
	}
	return false
}

// addFeeding adds a part of such a sentence to a copy of its amplifiers: one with or without what it feeds, its rating,
// the verb, or a further place; nil where the part is anything else.
func (b *builder) addFeeding(amps []feedingAmp, s seen, part string) []feedingAmp {
	watts, text := cutWatts(s, part)
	words := strings.Fields(strings.Trim(text, " ,.()"))
	amps = slices.Clone(amps)
	if n := b.feederAhead(words, watts, amps); n > 0 {
		a := feedingAmp{name: strings.Join(words[max(0, n-2):n], " "), watts: watts}
		worded := notation.SpeaksOfAmplifier(a.name)
		if !worded {
			a.name = words[n-1]
		}
		if len(amps) > 0 && amps[len(amps)-1].verb { // "amp 1 feeds the hall, amp 2 the yard"
			a.verb = watts.had() || worded || nextCode(amps, a.name)
			if last := amps[len(amps)-1].name; !worded && nextCode(amps, a.name) {
				a.name = last[:strings.LastIndexByte(last, ' ')+1] + a.name // called by the same word
			}
		}
		amps, watts, words = append(amps, a), seen{}, words[n:]
	}
	if len(amps) == 0 {
		return nil
	}
	last := &amps[len(amps)-1]
	if watts.had() {
		if last.watts.had() || len(last.places) > 0 {
			return nil
		}
		last.watts = watts
	}
	if len(words) > 0 && len(last.places) == 0 && slices.Contains(feedingWords, join.Fold(words[0])) {
		last.verb, words = true, words[1:]
	}
	if len(words) == 0 {
		return amps
	}
	place := strings.Join(words, " ")
	if !b.places.zones[join.Parse(join.Zone, place).Full] && !restWords.in(join.Fold(place)) {
		for len(words) > 1 && slices.Contains(articleWords, join.Fold(words[0])) { // "the hall"
			words = words[1:]
		}
		place = strings.Join(words, " ")
	}
	if !last.verb || saysFeeding(place) && !b.places.zones[join.Parse(join.Zone, place).Full] {
		return nil
	}
	known := restWords.in(join.Fold(place)) || b.placesIn(s, place).had() || len(b.listOfLines(strings.Join(append(slices.Clip(last.places), place), ", "))) > 0
	if !known {
		return nil
	}
	last.places = append(slices.Clip(last.places), place)
	return amps
}

// feederAhead is the number of words at the beginning that name an amplifier, 0 if they name none: "Amplifier A1",
// "the amp 2"; or its code alone, where it is known, or a rating stands beside it and behind it a verb that is
// said of no control, or nothing but places where others went before, or where it goes on from their codes.
func (b *builder) feederAhead(words []string, watts seen, before []feedingAmp) int {
	skipped := 0
	for len(words) > 2 && slices.Contains(articleWords, join.Fold(words[0])) {
		words, skipped = words[1:], skipped+1
	}
	if len(words) > 1 && notation.SpeaksOfAmplifier(words[0]) && channelID(words[1]) != "" && (anyDigit(words[1]) || words[1] == strings.ToUpper(words[1])) {
		return skipped + 2
	}
	if len(words) == 0 || !shortTag.MatchString(words[0]) {
		return 0
	}
	code := words[0]
	switch k := join.Key(code); {
	case b.namesAmp(code), len(words) > 1 && nextCode(before, code):
		return skipped + 1
	case b.places.lines[k], b.placesIn(watts, code).had(), len(b.dir.devices[k]) > 0, b.dir.controls[k]:
		return 0
	}
	switch notation.KeyOf(code).Kind {
	case notation.KeyLine, notation.KeyZone, notation.KeyChannel, notation.KeyControl:
		return 0
	}
	verb := len(words) > 1 && slices.Contains(drivesWords, join.Fold(words[1]))
	if w := wattsOf(watts); w < leastAmplifier || !verb && len(before) == 0 {
		return 0
	}
	return skipped + 1
}

// nextCode reports whether a code goes on from that of the amplifier before, which feeds something: "A2" behind "A1 feeds the hall".
func nextCode(before []feedingAmp, code string) bool {
	if len(before) == 0 || !before[len(before)-1].verb {
		return false
	}
	last := before[len(before)-1].name
	return notation.GoesOn(last[strings.LastIndexByte(last, ' ')+1:], code)
}

// leastAmplifier is what a code that nothing else calls an amplifier has to give, to be taken for one: common practice,
// no source.
const leastAmplifier = 30.0
