package layout

import (
	"strings"

	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Titles of sections may call an amplifier by words alone and name its output behind them: "Rehearsal
// rooms: call amp, output 1 (60 W)", "Foyer (stage amplifier, output 3, 120 W)".

// mostAmpWords is the most words by which a title calls an amplifier.
const mostAmpWords = 4

// wordedOutput takes such a title apart into the output, with what stands behind it, and the place that
// it feeds, "" where the title names none.
func wordedOutput(t string) (output, place string, ok bool) {
	if !strings.ContainsAny(t, ",-–—(/|") || !anyDigit(t) {
		return "", "", false
	}
	place, rest, keyed := strings.Cut(t, ": ")
	if !keyed {
		place, rest = "", t
	}
	parts := titleParts(rest)
	at := 0
	if !keyed && len(parts) > 2 && !notation.SpeaksOfAmplifier(parts[0]) { // the place stands in front of a mark
		place, at = parts[0], 1
	}
	if len(parts) < at+2 || !CallsAmplifier(parts[at]) || sectionField(parts[at+1]) != vocabulary.Channel || joints.Of(parts[at+1], 0) {
		return "", "", false
	}
	place = strings.TrimSpace(place)
	if place != "" && (anyDigit(place) || notation.SpeaksOfAmplifier(place) || sectionField(place) != vocabulary.Unknown && sectionField(place) != vocabulary.Room) {
		return "", "", false
	}
	return strings.Join(parts[at:], " - "), place, true
}

// CallsAmplifier reports whether a part of a title calls an amplifier by words without a figure, more than
// its kind: "call amp", "Verstärker der Bühne".
func CallsAmplifier(part string) bool {
	n := len(strings.Fields(part))
	return n > 1 && n <= mostAmpWords && !anyDigit(part) && notation.SpeaksOfAmplifier(part) && sectionField(part) == vocabulary.Unknown
}
