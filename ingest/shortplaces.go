package ingest

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/vocabulary"
)

// Lists of outputs have narrow columns: what the list of loudspeakers calls
// "Bahnsteig 1" is "Bstg. 1" there, "Block A" is "Blk A"; or it is the other way
// round.

// bracketMarks part what is written for the same place twice: "EG (Empfangsgeb.)".
var bracketMarks = regexp.MustCompile(`\s*[()\[\]]\s*`)

// mostAlike are the most zones with the same first letters and numbers that are
// looked at for one that a text is short of.
const mostAlike = 40

// shortPlace is the one zone whose name a row of an output has cut short, or that
// is a name of the row cut short; nil where there is none. Of several, it asks.
func (b *builder) shortPlace(r *row, s seen) *service {
	if r.kind != channelRow && r.kind != amplifierRow || len(s.text) > longestTitle || b.places.roomsZones ||
		namesPlace(b.places.zones, join.Zone, s.text) || namesPlace(b.places.rooms, join.Room, s.text) {
		return nil
	}
	var found []string
	for _, part := range bracketMarks.Split(s.text, -1) {
		if !strings.ContainsFunc(part, isLetter) {
			continue
		}
		list := b.zonesBeginning(part)
		if len(list) > mostAlike {
			return nil
		}
		for _, name := range list {
			if !slices.Contains(found, name) && (join.Shortens(part, name, wordOfPlace) || join.Shortens(name, part, wordOfPlace)) {
				found = append(found, name)
			}
		}
	}
	switch len(found) {
	case 0:
		return nil
	case 1:
		b.take(s, "zone", found[0], schedule.LikelierReading, "the only zone whose name is so in short")
		return &service{at: s, zones: found}
	}
	b.unclear(s, "zone", s.text, found)
	return nil
}

// wordOfPlace reports whether a folded word is one for a kind of place, said in full.
func wordOfPlace(word string) bool { return placeWords.in(word) }

// zonesBeginning are the names of zones whose words begin with the same letters
// as those of a text, in the order of letters, one for each key.
func (b *builder) zonesBeginning(text string) []string {
	if b.places.initials == nil {
		b.places.initials = make(map[string][]string)
		for _, k := range sortedKeys(b.places.texts) {
			place := b.places.texts[k]
			if place.field != vocabulary.Zone {
				continue
			}
			i := join.Initials(place.text)
			list := b.places.initials[i]
			if !slices.ContainsFunc(list[max(0, len(list)-1):], func(name string) bool { return join.Key(name) == join.Key(place.text) }) {
				b.places.initials[i] = append(list, place.text)
			}
		}
	}
	return b.places.initials[join.Initials(text)]
}
