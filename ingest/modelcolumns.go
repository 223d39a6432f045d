package ingest

import (
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// usualRatings are ratings that controls are made for, in W. Source: the
// ladders of published attenuator sheets (10, 35, 100; 5 to 100).
var usualRatings = []float64{3, 5, 6, 10, 12, 15, 20, 24, 30, 35, 36, 40, 50, 60, 75, 100, 120, 150, 200, 300}

// findModelColumns finds columns of controls that hold model names: a value
// that no table defines, contains a usual rating, and stands in several zones
// or rooms without being one of a numbered series. A value that is called by the
// place where it hangs, "Skate hire 36 W", is one control.
func (b *builder) findModelColumns() {
	defined := make(map[string]bool)
	for _, t := range b.tables {
		for _, r := range t.rows {
			if r.kind == controlRow && r.out == "" {
				if n := b.ownControlName(r); n.had() {
					defined[n.key()] = true
				}
			}
		}
	}
	for _, t := range b.tables {
		for _, c := range t.byField[vocabulary.Control] {
			said := b.controlsSaid(t, c, defined)
			several := slices.ContainsFunc(said, func(k *kindSaid) bool { return len(k.places) > 1 && !saysWhere(k.text) })
			if several && !calledByPlaces(said) {
				b.modelColumns[c] = true
			}
		}
	}
}

// A kindSaid is one text of a column of controls, and the zones or rooms it stands in.
type kindSaid struct {
	text   string
	places map[string]bool
}

// controlsSaid lists the texts of a column of controls; none where one of them is a tag.
func (b *builder) controlsSaid(t *table, c *column, defined map[string]bool) []*kindSaid {
	var list []*kindSaid
	known := make(map[string]*kindSaid)
	for _, r := range t.rows {
		s := r.at(c)
		if r.out != "" || r.kind == controlRow || !s.had() || r.Values[c.i].Merged {
			continue // a merged cell is said once
		}
		key := s.key()
		if defined[key] || !hasUsualRating(s.text) {
			return nil
		}
		if t := notation.ParseControlCell(s.text); t.Watts != "" && isTag(t.Name) && anyDigit(t.Name) && !hasUsualRating(t.Name) {
			return nil // "AT/2 15 W": a tag and its rating
		}
		k := known[key]
		if k == nil {
			k = &kindSaid{text: s.text, places: make(map[string]bool)}
			known[key], list = k, append(list, k)
		}
		place := r.zoneText().text
		if place == "" {
			place = r.own(vocabulary.Room).text
		}
		k.places[place] = true
	}
	return list
}

func usualRating(w float64) bool { return slices.Contains(usualRatings, w) }

func hasUsualRating(text string) bool {
	for _, m := range notation.ModelRatings(text) {
		if usualRating(m.W) && m.W >= 5 {
			return true
		}
	}
	return false
}

// fewestOfPlace is the fewest letters by which a control is called after a place.
const fewestOfPlace = 4

// calledByPlaces reports whether a text of a column of controls is called after one of
// the places it stands in. A word that is in every place tells none apart.
func calledByPlaces(said []*kindSaid) bool {
	places := make(map[string]bool)
	for _, k := range said {
		for p := range k.places {
			places[join.Fold(p)] = true
		}
	}
	for _, k := range said {
		name := placeInControl(k.text)
		if len(name) < fewestOfPlace {
			continue
		}
		own, other := false, false
		for p := range k.places {
			own = own || strings.Contains(join.Fold(p), name)
		}
		for p := range places {
			other = other || !strings.Contains(p, name)
		}
		if own && other {
			return true
		}
	}
	return false
}

// saysWhere reports whether a text of a control says where it hangs: "Knob at the
// desk (60 W)" is one control, wherever it is named.
func saysWhere(text string) bool {
	words := strings.Fields(join.Fold(notation.ParseControlCell(text).Name))
	for i, w := range words {
		if i > 0 && i+1 < len(words) && slices.Contains(whereWords, w) {
			return true
		}
	}
	return false
}

// saysOnlyWhere reports whether a text begins with where a control hangs: "at the bar, 12 W".
func saysOnlyWhere(text string) bool {
	first, _, more := strings.Cut(join.Fold(text), " ")
	return more && (slices.Contains(whereWords, first) || slices.Contains(withWords, first))
}

// placeInControl is what a text of a control says beside its rating and the words for
// a control: "tienda" of "Mando tienda 30 W".
func placeInControl(text string) string {
	words := strings.Fields(notation.ParseControlCell(text).Name)
	words = slices.DeleteFunc(words, notation.IsControlWord)
	return join.Fold(strings.Join(words, " "))
}
