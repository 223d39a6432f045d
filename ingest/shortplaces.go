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
		list := b.placesBeginning(vocabulary.Zone, part)
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

// placeInShort is the one zone or room whose name a text of a note cuts short; it names nothing where there is none or
// are several.
func (b *builder) placeInShort(s seen, text string) service {
	if len(text) > longestTitle || !strings.ContainsFunc(text, isLetter) {
		return service{}
	}
	cut := func(field vocabulary.Field) []string {
		list := b.placesBeginning(field, text)
		if len(list) > mostAlike {
			return nil
		}
		return slices.DeleteFunc(slices.Clone(list), func(name string) bool { return !join.Shortens(text, name, wordOfPlace) })
	}
	v := service{at: s, zones: cut(vocabulary.Zone), rooms: cut(vocabulary.Room)}
	if len(v.zones)+len(v.rooms) != 1 {
		return service{}
	}
	b.take(s, "place", strings.Join(append(v.zones, v.rooms...), ""), schedule.LikelierReading, "the only place whose name is “"+short(text)+"” in short")
	return v
}

// placesBeginning are the names of zones or of rooms whose words begin with the same letters
// as those of a text, in the order of letters, one for each key.
func (b *builder) placesBeginning(field vocabulary.Field, text string) []string {
	if b.places.initials == nil {
		b.places.initials = make(map[initialsOf][]string)
		for _, k := range sortedKeys(b.places.texts) {
			place := b.places.texts[k]
			i := initialsOf{place.field, join.Initials(place.text)}
			list := b.places.initials[i]
			if !slices.ContainsFunc(list[max(0, len(list)-1):], func(name string) bool { return join.Key(name) == join.Key(place.text) }) {
				b.places.initials[i] = append(list, place.text)
			}
		}
	}
	return b.places.initials[initialsOf{field, join.Initials(text)}]
}

// An initialsOf is a kind of place with the first letters of the words of a name.
type initialsOf struct {
	field    vocabulary.Field
	initials string
}
