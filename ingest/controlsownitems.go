package ingest

import (
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// namesOwnControls reports whether a column of a list of controls, taken for their names by its cells alone, has a tag of
// its own on each row that no column of items elsewhere has: "Pos. | Power | For: D.1 | 10 W | Ticket office" where the
// loudspeakers are A.1 to C.3. Such a column names the controls, whatever its header means in another list.
func (t *table) namesOwnControls(c *column, tables []*table) bool {
	if t.kind != layout.Controls || c.Field != vocabulary.Control {
		return false
	}
	own, ok := make(map[string]bool), true
	t.eachText(c, func(text string) {
		k := join.Key(text)
		ok = ok && !own[k] && anyDigit(text) && strings.ContainsFunc(text, isLetter) && countWords(text) == 1
		own[k] = true
	})
	if !ok || len(own) != t.devices() {
		return false
	}
	for _, o := range tables {
		if o == t {
			continue
		}
		for _, x := range o.byField[vocabulary.Item] {
			o.eachText(x, func(text string) { ok = ok && !own[join.Key(text)] })
		}
	}
	return ok
}
