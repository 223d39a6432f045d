package layout

import (
	"regexp"
	"strings"

	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// What feeds a place may stand behind its name in a title, and is no part of it.

// keyedPlaces are the fields of keys behind whose place may stand what feeds it.
var keyedPlaces = [vocabulary.Fields]bool{vocabulary.Zone: true, vocabulary.Room: true, vocabulary.Building: true, vocabulary.Floor: true}

// rePlaceEnd finds what may end the name of a place.
var rePlaceEnd = regexp.MustCompile(`\s+[-–—]\s+|\s*[,;(]\s*`)

// withoutFeed cuts what feeds a place off its name: "Reception - amp 1 output 1 (60
// W)". The title as a whole is read for it.
func withoutFeed(place string) string {
	for _, m := range rePlaceEnd.FindAllStringIndex(place, 4) {
		if m[0] == 0 {
			continue
		}
		switch sectionField(place[m[1]:]) {
		case vocabulary.Amplifier, vocabulary.Channel:
			return place[:m[0]]
		}
	}
	return place
}

// withoutCalledAmp cuts an amplifier that is called by a word, with what it gives, off the
// name of a place: "Zone 1 (amplifier left, 60 W)".
func withoutCalledAmp(place string) string {
	m := rePlaceEnd.FindStringIndex(place)
	if m == nil || m[0] == 0 {
		return place
	}
	first, rest, _ := strings.Cut(place[m[1]:], " ")
	if notation.SpeaksOfAmplifier(first) && reLabelWatts.MatchString(rest) {
		return place[:m[0]]
	}
	return place
}
