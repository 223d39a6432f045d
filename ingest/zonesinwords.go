package ingest

import (
	"regexp"
	"slices"
	"strings"
	"unicode/utf8"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/vocabulary"
)

// Records of measurements name zones with words more or less than the list of loudspeakers does: "Hall voyageurs" for
// "Hall", "Souterrain" for "Passage souterrain".

// zoneInOtherWords is the one zone whose name has all the words of what a row of an output names, or the other way round;
// nil where several do, or another row of the list names that zone too.
func (b *builder) zoneInOtherWords(r *row, s seen) *service {
	if r.kind != channelRow && r.kind != amplifierRow || s.col == nil || b.places.roomsZones || namesPlace(b.places.zones, join.Zone, s.text) {
		return nil
	}
	name := b.zoneOfWords(s.text)
	if name == "" || b.rowsNaming(r.t, s.col)[join.Fold(name)] > 1 {
		return nil
	}
	b.take(s, "zone", name, schedule.LikelierReading, "the only zone whose name has the same words, or these and more, and no other output names it")
	return &service{at: s, zones: []string{name}}
}

// rowsNaming counts the rows whose cells in a column name each zone, by the folded names of the zones.
func (b *builder) rowsNaming(t *table, c *column) map[string]int {
	if count := b.places.named[c]; count != nil {
		return count
	}
	if b.places.named == nil {
		b.places.named = make(map[*column]map[string]int)
	}
	count := make(map[string]int)
	b.places.named[c] = count
	for _, r := range t.rows {
		s := r.at(c)
		if r.out != "" || !s.had() {
			continue
		}
		name := b.zoneOfWords(s.text)
		if place, ok := b.places.texts[join.Fold(tidy(s.text))]; ok {
			name = place.text
		}
		if name != "" {
			count[join.Fold(name)]++
		}
	}
	return count
}

// zoneOfWords is the one zone whose name has all the words of a text and more, or all of whose words the text has, with
// the same numbers and letters that stand alone; "" if there is none or several.
func (b *builder) zoneOfWords(text string) string {
	if len(text) > longestTitle || len(listParts.Of(text, bySlashes)) > 1 || exceptWords.in(join.Fold(text)) || restWords.in(join.Fold(text)) || allWords.in(join.Fold(text)) {
		return ""
	}
	found := ""
	words := strings.Fields(withoutSmallWords(text))
	for _, w := range words {
		if utf8.RuneCountInString(w) < leastMention {
			continue
		}
		list := b.zonesWith()[w]
		if len(list) > mostAlike {
			return ""
		}
		for _, name := range list {
			if name == found || !haveSameWords(words, strings.Fields(withoutSmallWords(name))) {
				continue
			}
			if found != "" {
				return ""
			}
			found = name
		}
	}
	return found
}

// haveSameWords reports whether one list has all the words of the other, and what it has more are words of several letters.
func haveSameWords(x, y []string) bool {
	if len(x) > len(y) {
		x, y = y, x
	}
	for _, w := range x {
		if !slices.Contains(y, w) {
			return false
		}
	}
	return !slices.ContainsFunc(y, func(w string) bool { return !slices.Contains(x, w) && (anyDigit(w) || utf8.RuneCountInString(w) < 2) })
}

// zonesWith are the names of zones by the words in them.
func (b *builder) zonesWith() map[string][]string {
	if b.places.byWord != nil {
		return b.places.byWord
	}
	b.places.byWord = make(map[string][]string)
	for _, k := range sortedKeys(b.places.texts) {
		place := b.places.texts[k]
		if place.field != vocabulary.Zone {
			continue
		}
		for w := range strings.FieldsSeq(withoutSmallWords(place.text)) {
			if list := b.places.byWord[w]; !slices.Contains(list[max(0, len(list)-1):], place.text) {
				b.places.byWord[w] = append(list, place.text)
			}
		}
	}
	return b.places.byWord
}

// numberSign is what stands in front of a number and says no more than that it is one: "n°", "No.", "Nr.".
var numberSign = regexp.MustCompile(`\b(?:n°|n[or]\.?|num\.?)\s*(\d)`)
