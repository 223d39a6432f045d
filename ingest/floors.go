package ingest

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// Lists of outputs name the floors that each feeds, in full where the loudspeakers have them in short: "Rez-de-chaussée"
// for "RDC", "Sous-sol (R-1)" for "R-1", "1. Obergeschoss" for "OG1", "Étage" for the only one above the ground.

// A level is which floor a text names: 0 is the ground floor.
type level struct {
	n     int
	loose bool // no number: a floor above (n is 1) or below (n is -1) the ground
}

// Floors by their numbers: "R+1", "niveau -1"; "1st floor", "2. OG"; "OG 1", "étage 2".
var (
	signedFloor = regexp.MustCompile(`^([a-z]*)\.?\s*([+\-−–])\s?(\d{1,2})$`)
	aheadFloor  = regexp.MustCompile(`^(\d{1,2})\s?(?:\.|°|o|a|e|er|re|ere|eme|st|nd|rd|th)?\s?([a-z][a-z '.-]+)$`)
	behindFloor = regexp.MustCompile(`^([a-z][a-z '-]+?)\.?\s?(\d{1,2})$`)
)

// namedFloors are the words for whole names of floors with one number each.
var namedFloors = []struct {
	words wordList
	n     int
}{{groundFloorWords, 0}, {firstFloorWords, 1}, {secondFloorWords, 2}, {thirdFloorWords, 3}}

// levelOf is the floor that a text names and nothing else; nil if it names none. It is shared.
var levelOf = remember.New(2048, func(text string, _ int) *level {
	folded := strings.TrimSpace(join.Fold(tidy(text)))
	for _, f := range namedFloors {
		if slices.Contains(f.words, folded) {
			return &level{n: f.n}
		}
	}
	switch {
	case slices.Contains(upperFloorWords, folded):
		return &level{n: 1, loose: true}
	case slices.Contains(lowerFloorWords, folded):
		return &level{n: -1, loose: true}
	}
	if m := signedFloor.FindStringSubmatch(folded); m != nil && (m[1] == "" || slices.Contains(levelWords, m[1])) {
		n, _ := strconv.Atoi(m[3])
		if m[2] != "+" {
			n = -n
		}
		return &level{n: n}
	}
	words, number := "", ""
	if m := aheadFloor.FindStringSubmatch(folded); m != nil {
		number, words = m[1], m[2]
	} else if m := behindFloor.FindStringSubmatch(folded); m != nil {
		words, number = m[1], m[2]
	}
	if n, err := strconv.Atoi(number); err == nil && len(words) > 1 {
		switch words = strings.Trim(words, " .-"); {
		case slices.Contains(lowerFloorWords, words):
			return &level{n: -n}
		case slices.Contains(upperFloorWords, words), slices.Contains(levelWords, words):
			return &level{n: n}
		}
	}
	return nil
})

// A storey is one floor of the loudspeakers.
type storey struct {
	level *level // nil where its name tells none
	name  string // as its first row writes it
	rows  []*row
}

// storeys are the floors that the rows of loudspeakers name, in their order.
func (b *builder) storeys() []*storey {
	if b.places.storeysKnown {
		return b.places.storeys
	}
	b.places.storeysKnown = true
	byText := make(map[string]*storey)
	b.each(loudspeakerRow, func(r *row) {
		s := r.say(vocabulary.Floor)
		k := join.Fold(tidy(s.text))
		if !s.had() || byText[k] == nil && len(b.places.storeys) > mostAlike {
			return
		}
		if byText[k] == nil {
			byText[k] = &storey{level: levelOf.Of(s.text, 0), name: tidy(s.text)}
			if n, err := strconv.Atoi(k); err == nil { // "0", "1" below "Floor"
				byText[k].level = &level{n: n}
			}
			b.places.storeys = append(b.places.storeys, byText[k])
		}
		byText[k].rows = append(byText[k].rows, r)
	})
	return b.places.storeys
}

// storeysNamed are the floors of the loudspeakers that a text names: by the same name, by the same number, or without one
// where no other floor lies on that side of the ground. How says whether it was by the name.
func (b *builder) storeysNamed(text string) (found []*storey, byName bool) {
	key := join.Fold(tidy(text))
	at := levelOf.Of(text, 0)
	same := func(s *storey) bool {
		return s.level != nil && at != nil && s.level.n == at.n && !s.level.loose && !at.loose
	}
	side := func(s *storey) bool { return s.level != nil && at != nil && s.level.n*at.n > 0 && at.loose }
	loose := func(s *storey) bool { return s.level != nil && at != nil && s.level.n == at.n && s.level.loose }
	for i, is := range []func(s *storey) bool{func(s *storey) bool { return join.Fold(s.name) == key }, same, side, loose} {
		for _, s := range b.storeys() {
			if is(s) {
				found = append(found, s)
			}
		}
		if len(found) > 0 {
			return found, i == 0
		}
	}
	return nil, false
}

// floorServed are the loudspeakers on the floors that a row of an output names; nil where it names anything else, or
// another row of its list names the same floor.
func (b *builder) floorServed(r *row, s seen) *service {
	if len(b.storeys()) < 2 || len(s.text) > longestTitle {
		return nil
	}
	list, byName := b.floorsIn(s.text)
	if len(list) == 0 || !b.onlyOneOn(r, s, list) {
		return nil
	}
	v := &service{at: s}
	var names []string
	for _, f := range list {
		v.rows = append(v.rows, f.rows...)
		names = append(names, f.name)
	}
	if !byName {
		b.take(s, "floor", strings.Join(names, ", "), schedule.LikelierReading, "the floor of the loudspeakers that is called so too")
	}
	return v
}

// rowsOnFloors are the loudspeakers on the floors that a note names where they are on several: "Piano terra" of "Piano
// terra: finale FA da 120 W".
func (b *builder) rowsOnFloors(s seen, text string) (rows []*row) {
	if len(b.storeys()) < 2 || len(text) > longestTitle {
		return nil
	}
	list, byName := b.floorsIn(text)
	var names []string
	for _, f := range list {
		rows = append(rows, f.rows...)
		names = append(names, f.name)
	}
	if len(list) > 0 && !byName {
		b.take(s, "floor", strings.Join(names, ", "), schedule.LikelierReading, "the floor of the loudspeakers that is called so too")
	}
	return rows
}

// floorsIn are the floors of the loudspeakers in a text that names nothing but floors, each once; nil where any part of it
// is none, or may be several.
func (b *builder) floorsIn(text string) (list []*storey, byName bool) {
	if !strings.ContainsFunc(text, isLetter) {
		return nil, false
	}
	byName = true
	if found, named := b.storeysNamed(text); len(found) == 1 {
		return found, named
	}
	for _, part := range listParts.Of(text, bySlashes) {
		for _, one := range bracketMarks.Split(part, -1) {
			if one = cutOnThe(strings.TrimSpace(one)); one == "" {
				continue
			}
			found, named := b.storeysNamed(one)
			if len(found) != 1 {
				return nil, false
			}
			byName = byName && named
			if !slices.Contains(list, found[0]) {
				list = append(list, found[0])
			}
		}
	}
	return list, byName
}

// onlyOneOn reports whether no other row in the column of a cell names one of the floors: of two outputs on one floor
// nobody says which feeds what.
func (b *builder) onlyOneOn(r *row, s seen, list []*storey) bool {
	if s.col == nil {
		return false
	}
	if b.places.onFloors == nil {
		b.places.onFloors = make(map[*column]map[*storey]int)
	}
	count := b.places.onFloors[s.col]
	if count == nil {
		count = make(map[*storey]int)
		b.places.onFloors[s.col] = count
		for _, o := range r.t.rows {
			if other := o.at(s.col); o.out == "" && other.had() && len(other.text) <= longestTitle {
				floors, _ := b.floorsIn(other.text)
				for _, f := range floors {
					count[f]++
				}
			}
		}
	}
	return !slices.ContainsFunc(list, func(f *storey) bool { return count[f] > 1 })
}
