package ingest

import (
	"slices"
	"strconv"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/vocabulary"
)

// A list of outputs or controls may name what hangs on each by the numbers of the items: "Channel 1 | 120 W | 1, 2, 6".

// servedNumbers are the rows of loudspeakers whose items a row of an output or a control lists, nil if it lists none.
func (b *builder) servedNumbers(r *row) *service {
	cols := r.t.byField[vocabulary.Item]
	if len(cols) != 1 || !slices.ContainsFunc([]vocabulary.Field{vocabulary.Channel, vocabulary.Amplifier, vocabulary.Circuit, vocabulary.Control}, r.t.has) || !b.listsItems(r.t, cols[0]) {
		return nil
	}
	s := r.at(cols[0])
	if !s.had() {
		return nil
	}
	v := &service{at: s}
	for _, part := range listParts.Of(s.text, byWords) {
		o := b.rowOfItem(r.t, part)
		if o == nil {
			return nil
		}
		v.rows = append(v.rows, o)
	}
	return v
}

// rowOfItem is the row of loudspeakers in another table that has an item, nil where none or several have it. Full stops
// and blanks within do not matter: "2c" is "2.c".
func (b *builder) rowOfItem(t *table, item string) *row {
	items := b.rowsByItem()
	rows := items[join.Key(item)]
	if len(rows) == 0 {
		rows = items[looseItem(item)]
	}
	if len(rows) != 1 || rows[0].t == t {
		return nil // of several lists, or of none
	}
	return rows[0]
}

// looseItem is the key of an item of figures and letters without what stands between them, "" for any other; it cannot
// be mistaken for a key.
func looseItem(item string) string {
	if !anyDigit(item) || !strings.ContainsFunc(item, isLetter) {
		return ""
	}
	return "\x00" + strings.ToLower(strings.NewReplacer(".", "", " ", "", "-", "").Replace(item))
}

// listsItems reports whether the cells of a column are items of loudspeakers in other tables, rather than numbers of its own
// rows: one lists several numbers, or each is such an item, with a letter in it or not counted on from row to row.
func (b *builder) listsItems(t *table, c *column) bool {
	if t.itemLists == nil {
		lists, all, cells, last := false, true, 0, 0
		counted := true
		t.eachText(c, func(text string) {
			parts := listParts.Of(text, byWords)
			lists = lists || len(parts) > 1 && !slices.ContainsFunc(parts, func(p string) bool { return p == "" || strings.Trim(p, "0123456789.") != "" })
			all = all && !slices.ContainsFunc(parts, func(p string) bool { return b.rowOfItem(t, p) == nil })
			n, err := strconv.Atoi(text)
			counted = counted && err == nil && (cells == 0 || n == last+1)
			cells, last = cells+1, n
		})
		lists = lists || all && cells > 1 && !counted
		t.itemLists = &lists
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
						if loose := looseItem(item.text); loose != "" {
							b.itemRows[loose] = append(b.itemRows[loose], r)
						}
					}
				}
			}
		}
	}
	return b.itemRows
}

// itemsBehindWords are the rows of loudspeakers of the row's own list whose items stand behind a word for what is served:
// "Waiting room, for A.2", where items have letters.
func (b *builder) itemsBehindWords(r *row, text string) []*row {
	var out []*row
	words := strings.Fields(text)
	for i := 1; i < len(words); i++ {
		item := strings.Trim(words[i], ",;:()")
		if !slices.Contains(feedingWords, join.Fold(words[i-1])) || !anyDigit(item) || !strings.ContainsFunc(item, isLetter) {
			continue
		}
		for _, o := range b.rowsByItem()[join.Key(item)] {
			if o.t == r.t {
				out = append(out, o)
			}
		}
	}
	return out
}
