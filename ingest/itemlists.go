package ingest

import (
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/vocabulary"
)

// A list of outputs or controls may name what hangs on each by the numbers of the items: "Channel 1 | 120 W | 1, 2, 6".

// servedNumbers are the rows of loudspeakers whose items a row of an output or a control lists, nil if it lists none.
func (b *builder) servedNumbers(r *row) *service {
	cols := r.t.byField[vocabulary.Item]
	if len(cols) != 1 || !slices.ContainsFunc([]vocabulary.Field{vocabulary.Channel, vocabulary.Amplifier, vocabulary.Circuit, vocabulary.Control}, r.t.has) || !r.t.listsItems(cols[0]) {
		return nil
	}
	s := r.at(cols[0])
	if !s.had() {
		return nil
	}
	v := &service{at: s}
	items := b.rowsByItem()
	for _, part := range listParts.Of(s.text, byWords) {
		rows := items[join.Key(part)]
		if len(rows) != 1 || rows[0].t == r.t {
			return nil // of several lists, or of none
		}
		v.rows = append(v.rows, rows[0])
	}
	return v
}

// listsItems reports whether a cell of a column lists several numbers, which no number of its row does.
func (t *table) listsItems(c *column) bool {
	if t.itemLists == nil {
		t.itemLists = new(bool)
		t.eachText(c, func(text string) {
			parts := listParts.Of(text, byWords)
			*t.itemLists = *t.itemLists || len(parts) > 1 && !slices.ContainsFunc(parts, func(p string) bool { return p == "" || strings.Trim(p, "0123456789.") != "" })
		})
	}
	return *t.itemLists
}

// rowsByItem are the rows of loudspeakers that count, by the key of their item.
func (b *builder) rowsByItem() map[string][]*row {
	if b.itemRows == nil {
		b.itemRows = make(map[string][]*row)
		for _, t := range b.tables {
			for _, r := range t.rows {
				if item := r.own(vocabulary.Item); r.kind == loudspeakerRow && r.out == "" && item.had() {
					k := item.key()
					if list := b.itemRows[k]; len(list) == 0 || list[len(list)-1].Rows != r.Rows || list[len(list)-1].t != r.t { // a row of several groups is one
						b.itemRows[k] = append(list, r)
					}
				}
			}
		}
	}
	return b.itemRows
}
