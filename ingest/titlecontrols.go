package ingest

import (
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A title above a list may speak of some of its rows alone, by their items or tags: "AT2, 12 W,
// only for 2.3 and 2.4".

// concerns reports whether what a title says holds for a row: it names it, or no row of the list.
func (r *row) concerns(title seen) bool {
	if title.col != nil || !anyDigit(title.text) || len(title.text) > longestSpoken {
		return true
	}
	named, known := r.t.titleItems[title.text]
	if !known {
		if r.t.titleItems == nil {
			r.t.titleItems = make(map[string]map[string]bool)
		}
		named = r.t.itemsNamed(title)
		r.t.titleItems[title.text] = named
	}
	return len(named) == 0 || slices.ContainsFunc(itemFields, func(f vocabulary.Field) bool { return named[r.own(f).key()] })
}

// itemFields are what rows of a list go by.
var itemFields = []vocabulary.Field{vocabulary.Item, vocabulary.Tag}

// itemsNamed are the keys of the items or tags of a table that a title lists behind a word such
// as "for" or "only"; nil where one of the list is none of the table.
func (t *table) itemsNamed(title seen) map[string]bool {
	_, text := cutWatts(title, title.text)
	words := strings.Fields(strings.TrimRight(text, " .,;)"))
	for i := 1; i < len(words); i++ {
		before := join.Fold(strings.Trim(words[i-1], ",;:("))
		if !anyDigit(strings.Join(words[i:], " ")) {
			return nil
		}
		only := slices.Contains(onlyWords, before)
		if !only && !slices.Contains(servesWords, before) || !only && isWhole(strings.Join(words[i:], "")) {
			continue // "for 5" may count them
		}
		tags, err := notation.ParseTags(strings.Join(words[i:], " "))
		if err != nil {
			continue
		}
		named := make(map[string]bool)
		for _, tag := range tags.List {
			if !t.hasItem(join.Key(tag)) {
				named = nil
				break
			}
			named[join.Key(tag)] = true
		}
		if len(named) > 0 {
			return named
		}
	}
	return nil
}

// hasItem reports whether a row of the table goes by a key.
func (t *table) hasItem(key string) bool {
	return slices.ContainsFunc(t.rows, func(r *row) bool {
		return slices.ContainsFunc(itemFields, func(f vocabulary.Field) bool { return r.own(f).had() && r.own(f).key() == key })
	})
}

// deniesControl reports whether a title says that there is no control: "Without attenuator" is no place.
func deniesControl(text string) bool {
	return vocabulary.DeviceIn(text) == vocabulary.ControlDevice && notation.Denies(text)
}
