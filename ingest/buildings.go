package ingest

import (
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/vocabulary"
)

// Rows that say in which building or wing they stand: notes may name it for all of them, "East wing = amp 1".

// gatherBuildings notes the rows of loudspeakers of each building, by its key, and the words of the headers.
func (b *builder) gatherBuildings() {
	b.places.buildings = make(map[string][]*row)
	for _, t := range b.tables {
		if !t.has(vocabulary.Building) {
			continue
		}
		for w := range strings.FieldsSeq(join.Fold(t.byField[vocabulary.Building][0].Header)) {
			if hasLongWord(w) {
				b.places.buildingWords = append(b.places.buildingWords, w)
			}
		}
		for _, r := range t.rows {
			if s := r.own(vocabulary.Building); r.out == "" && r.kind == loudspeakerRow && s.had() {
				b.places.buildings[s.key()] = append(b.places.buildings[s.key()], r)
			}
		}
	}
}

// rowsOfBuilding are the rows of the building that a text names and nothing else, by its name or with the word
// of the header: "East", "East wing".
func (b *builder) rowsOfBuilding(text string) []*row {
	if len(b.places.buildings) == 0 || anyDigit(text) && strings.Trim(text, "0123456789") == "" {
		return nil
	}
	if rows := b.places.buildings[join.Key(text)]; len(rows) > 0 {
		return rows
	}
	words := strings.Fields(join.Fold(text))
	rest := slices.DeleteFunc(slices.Clone(words), func(w string) bool { return slices.Contains(b.places.buildingWords, w) })
	if len(rest) == len(words) || len(rest) == 0 {
		return nil
	}
	return b.places.buildings[join.Key(strings.Join(rest, " "))]
}
