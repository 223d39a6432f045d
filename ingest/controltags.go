package ingest

import (
	"regexp"
	"slices"

	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// controlsBehindPlaces takes the tags in brackets behind names of places, "Hall (P1)", for
// controls where a note of the sheet speaks of controls and has these tags, or their letters:
// "P = volume control. P1 50 W, P2 12 W".
func controlsBehindPlaces(notes []spoken, t *layout.Table) {
	tags := t.TagsBehindPlaces()
	if len(tags) == 0 {
		return
	}
	for _, s := range notes {
		if len(s.text) <= longestSpoken && vocabulary.DeviceIn(s.text) == vocabulary.ControlDevice && hasTags(s.text, tags) {
			t.ControlsBehindPlaces()
			return
		}
	}
}

// hasTags reports whether a text has each of the tags as a word, or says of its letters alone
// that they stand for a control.
func hasTags(text string, tags []string) bool {
	words := make(map[string]bool)
	for _, w := range wordsAt(text) {
		words[join.Key(text[w[0]:w[1]])] = true
	}
	controls := make(map[string]bool)
	for _, m := range codeMeans.FindAllStringSubmatch(text, -1) {
		controls[join.Key(m[1])] = vocabulary.DeviceIn(m[2]) == vocabulary.ControlDevice
	}
	return !slices.ContainsFunc(tags, func(tag string) bool {
		letters, known := controls[join.Key(lettersIn(tag))]
		return known && !letters || !known && !words[join.Key(tag)]
	})
}

// codeMeans is a code of letters and what a legend says that it means: "P = volume control".
var codeMeans = regexp.MustCompile(`(?:^|[\s,;(|])(\pL{1,3})\s*[=:–]\s*(\pL[^=:;,.]{2,40})`)

// lettersIn is what stands before the figures of a tag.
func lettersIn(tag string) string {
	for i, r := range tag {
		if !isLetter(r) {
			return tag[:i]
		}
	}
	return tag
}
