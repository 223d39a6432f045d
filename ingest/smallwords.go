package ingest

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/vocabulary"
)

// Small words tell no places apart: "Bureau chef de bassin" is the "Bureau du chef de bassin".

// withoutSmallWords is a folded text without its articles and the like: "bureau chef bassin". A letter that stands alone
// may tell places apart ("Salle D") and goes only with its apostrophe ("Salle d'attente"). "Quai n° 1" is "quai 1".
func withoutSmallWords(text string) string {
	folded := strings.ReplaceAll(strings.ReplaceAll(join.Fold(tidy(text)), "’", "'"), "'", "' ")
	folded = numberSign.ReplaceAllString(folded, "$1")
	words := strings.Fields(folded)
	words = slices.DeleteFunc(words, func(w string) bool { return slices.Contains(smallWords, w) })
	return strings.Join(words, " ")
}

// placeButSmallWords is the one place whose name differs from what a row says in small words alone; nil where there is
// none. Of several, it asks.
func (b *builder) placeButSmallWords(s seen) *service {
	if len(s.text) > longestTitle || namesPlace(b.places.zones, join.Zone, s.text) || namesPlace(b.places.rooms, join.Room, s.text) {
		return nil
	}
	if b.places.plain == nil {
		b.places.plain = make(map[string][]seen)
		for _, k := range sortedKeys(b.places.texts) {
			plain := withoutSmallWords(k)
			b.places.plain[plain] = append(b.places.plain[plain], b.places.texts[k])
		}
	}
	key := withoutSmallWords(s.text)
	list := b.places.plain[key]
	switch {
	case key == "" || len(list) == 0:
		return nil
	case len(list) > 1:
		var names []string
		for _, place := range list[:min(len(list), mostAlike)] {
			names = append(names, place.text)
		}
		b.unclear(s, "place", s.text, names)
		return nil
	}
	place := list[0]
	b.take(s, "place", place.text, schedule.LikelierReading, "the only place whose name is the same but for small words")
	if place.field == vocabulary.Zone || b.places.roomsZones {
		return &service{at: s, zones: []string{place.text}}
	}
	return &service{at: s, rooms: []string{place.text}}
}

// wholePlace is the place or floor of which a text says that it is served as a whole: "Lobby, all speakers", "all of the
// lobby", "alle Lautsprecher im Erdgeschoss"; nil where it names none.
func (b *builder) wholePlace(r *row, s seen) *service {
	if len(s.text) > longestTitle {
		return nil
	}
	words := strings.FieldsFunc(s.text, func(c rune) bool { return strings.ContainsRune(" ,;:()", c) })
	idle := func(w string) bool {
		w = join.Fold(w)
		return slices.Contains(smallWords, w) || slices.Contains(whereWords, w) || slices.Contains(onTheWords, w)
	}
	var rest []string
	all := false // the word before was one for all: an article may follow ("tutti i diffusori")
	for _, w := range words {
		folded := join.Fold(w)
		switch {
		case slices.Contains(allWords, folded):
			all = true
			continue
		case slices.Contains(loudspeakersWords, folded), all && slices.Contains(articleWords, folded):
		default:
			rest = append(rest, w)
		}
		all = false
	}
	for len(rest) > 0 && idle(rest[0]) {
		rest = rest[1:]
	}
	for len(rest) > 0 && idle(rest[len(rest)-1]) {
		rest = rest[:len(rest)-1]
	}
	if len(rest) == 0 {
		return nil
	}
	s.text = strings.Join(rest, " ")
	if s.text = cutOnThe(s.text); !namesPlace(b.places.zones, join.Zone, s.text) && !namesPlace(b.places.rooms, join.Room, s.text) {
		if v := b.placeButSmallWords(s); v != nil {
			return v
		}
		return b.floorServed(r, s)
	}
	s.field = vocabulary.To
	return b.listOfPlaces(s)
}
