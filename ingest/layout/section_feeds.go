package layout

import (
	"regexp"
	"strings"
	"unicode"

	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// What titles of sections say that feeds a place, or that an output feeds.

// cutFeeds parts a text such as "Amp B feeds the stands" at its verb, with at
// least so many words before it; the verb is "" where it has none.
func cutFeeds(t string, before int) (output, verb, places string) {
	words := strings.Fields(t)
	for i := before; i < len(words)-1; i++ {
		for n := min(3, len(words)-1-i); n > 0; n-- {
			if verb := strings.Join(words[i:i+n], " "); classOf(verb)&classFeeds != 0 {
				return strings.Join(words[:i], " "), verb, strings.Join(words[i+n:], " ")
			}
		}
		if before == 0 {
			break
		}
	}
	return t, "", t
}

// reOutputOf matches a key and words without figures: "Kanal 1: Palmenhaus". What is longer than
// longestKey says more than a name: "Amplifier 1, output A (120 W): Foyer and desk".
var reOutputOf = regexp.MustCompile(`^([^:=]{2,60}?)\s*:\s+(\pL[^:=\d]{2,60})$`)

// longestKey is the most bytes of a key that is only a name.
const longestKey = 24

// outputOfPlace takes a title apart whose key is an output, with its amplifier and what it gives maybe, and not what its
// value is a value of: "Kanal 1: Palmenhaus" is channel 1 of the palm house.
// What an amplifier with its rating feeds is a remark above rows with rooms: see fedPlaces.
func outputOfPlace(t string) (output, place Fact, ok bool) {
	m := reOutputOf.FindStringSubmatch(t)
	if m == nil || !feeders[sectionField(m[1])] || !anyDigit(m[1]) || vocabulary.DeviceIn(m[2]) != vocabulary.NoDevice {
		return Fact{}, Fact{}, false
	}
	output, place = Fact{Field: sectionField(m[1]), Text: m[1]}, Fact{Text: m[2]}
	if output.Field == vocabulary.Amplifier && reLabelWatts.MatchString(m[1]) && !joints.Of(m[1], 0) {
		place.Key = "feeds"
	}
	if len(m[1]) <= longestKey {
		return output, place, true
	}
	joint := joints.Of(m[1], 0)
	if joint {
		output.Field = vocabulary.Channel
	}
	_, _, place.Text = cutFeeds(place.Text, 0)
	return output, place, joint && !placesBeside(m[1])
}

// placeFed takes a title apart whose key is a place, and whose value is what feeds it: "Foyer:
// amp 1, one output of 120 W", "Platform 1: loudspeaker line from amplifier A1 output 1".
func placeFed(t string) (place, feeder string, ok bool) {
	place, feeder, ok = strings.Cut(t, ":")
	place, feeder = strings.TrimSpace(place), fromAmplifier(strings.TrimSpace(feeder))
	if !ok || len(place) < 3 || anyDigit(place) && !rePlaceNumber.MatchString(place) || !anyDigit(feeder) || sectionField(place) != vocabulary.Unknown && sectionField(place) != vocabulary.Room {
		return "", "", false
	}
	parts := titleParts(feeder)
	return place, feeder, len(parts) > 0 && sectionField(parts[0]) == vocabulary.Amplifier && !notation.SpeaksOfAmplifier(place)
}

// rePlaceNumber finds the name of a place that ends in a number: "Platform 1".
var rePlaceNumber = regexp.MustCompile(`^\pL{4,}(?: \pL+)* \d{1,2}$`)

// fromAmplifier is a text from the word for an amplifier on, without the words in front of it where they hold no figure:
// "amp A1, 120 W" of "loudspeaker line from amp A1, 120 W".
func fromAmplifier(t string) string {
	words := strings.Fields(t)
	for i := range words {
		if anyDigit(words[i]) {
			break
		}
		if i > 0 && notation.SpeaksOfAmplifier(words[i]) {
			return strings.Join(words[i:], " ")
		}
	}
	return t
}

// outputAtPlace takes a title apart whose two parts are an output by its number alone and a place that has a number
// of its own: "OUTPUT 1 - PLATFORM 1", "Ausgang 2 – Gleis 2".
func outputAtPlace(t string) (output, place string, ok bool) {
	parts := titleParts(t)
	if len(parts) != 2 || reChOnly.FindString(parts[0]) != parts[0] || !rePlaceNumber.MatchString(parts[1]) || feeders[sectionField(parts[1])] || sectionField(parts[1]) == vocabulary.Control {
		return "", "", false
	}
	return parts[0], parts[1], vocabulary.DeviceIn(parts[1]) == vocabulary.NoDevice
}

// feederAndPlace takes a title without marks apart: "amp 1 ch 2 exhibits 100w"
// is the output "amp 1 ch 2 (100w)" and the place "exhibits".
func feederAndPlace(t string) (output, place string, ok bool) {
	if reParts.MatchString(t) {
		return "", "", false
	}
	words := strings.Fields(t)
	for n := min(len(words)-1, 4); n >= 2; n-- {
		if !isOutputOf(words[:n]) {
			continue
		}
		output, rest := strings.Join(words[:n], " "), words[n:]
		if last := len(rest) - 1; last > 0 && reWattsOnly.MatchString(rest[last]) {
			output += " (" + rest[last] + ")"
			rest = rest[:last]
		}
		place = strings.Join(rest, " ")
		return output, place, strings.ContainsFunc(place, unicode.IsLetter) && !anyDigit(place)
	}
	return "", "", false
}

// isOutputOf reports whether words name an amplifier and an output of it, and
// nothing else: "amp 1 ch 2".
func isOutputOf(words []string) bool {
	for k := 1; k < len(words); k++ {
		amp, output := strings.Join(words[:k], " "), strings.Join(words[k:], " ")
		if reAmp.FindString(amp) == amp && reChOnly.FindString(output) == output {
			return true
		}
	}
	return false
}

// reLetteredAmp matches a word, two or three capitals, and a power maybe: "amp AB of 240 W".
var reLetteredAmp = regexp.MustCompile(`^(\pL+)\s+[A-Z]{2,3}(?:$|\s*[,;:(]|\s+(?:\p{Ll}{1,3}\s+)?\d+(?:[.,]\d+)?\s*[Ww]\b)`)

// namesAmpByLetters reports whether a text names an amplifier by two or three capitals behind a word for it that has none,
// or one: "ampli AB", "Verstärker WK, 60 W", but not "AMPLI DE 60 W".
func namesAmpByLetters(t string) bool {
	m := reLetteredAmp.FindStringSubmatch(t)
	return m != nil && m[1] != strings.ToUpper(m[1]) && notation.SpeaksOfAmplifier(m[1])
}

// onlyLooks reports whether all words of a text tell how old a thing is or what colour it has: "old grey one".
func onlyLooks(t string) bool {
	words := strings.Fields(t)
	for _, w := range words {
		if classOf(w)&(classAge|classFinish) == 0 {
			return false
		}
	}
	return len(words) > 0
}
