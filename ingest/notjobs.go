package ingest

import (
	"slices"
	"strconv"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// The words for an order are near those for what something operates ("Commande" over "LS5, LS6"), and those for a
// contract stand over what it counts. Such columns divide no book into jobs.

// jobFields are the fields of columns by which a book may be divided into jobs.
var jobFields = []vocabulary.Field{vocabulary.JobNo, vocabulary.Job, vocabulary.Site}

// tagsNotJobs takes columns of jobs whose cells are tags of loudspeakers that other tables list for columns of these.
func tagsNotJobs(tables []*table) {
	var tagged map[string]*table
	for _, t := range tables {
		for _, f := range jobFields {
			for _, c := range slices.Clone(t.byField[f]) {
				if tagged == nil {
					tagged = tagsOfLists(tables)
				}
				if !t.citesTags(c, tagged) {
					continue
				}
				as := vocabulary.Tag
				if t.has(vocabulary.Tag) {
					as = vocabulary.Unknown // what rows serve is found in any column
				}
				t.become(c, as, "its cells are tags of loudspeakers of another table")
			}
		}
	}
}

// tagsOfLists are the keys of the tags of all lists of loudspeakers, and a table that has each.
func tagsOfLists(tables []*table) map[string]*table {
	out := make(map[string]*table)
	for _, t := range tables {
		if t.kind != layout.Loudspeakers && t.kind != layout.Mixed {
			continue
		}
		for _, c := range t.byField[vocabulary.Tag] {
			t.eachText(c, func(text string) {
				if list, err := notation.ParseTags(text); err == nil {
					for _, tag := range list.List {
						out[join.Key(tag)] = t
					}
				}
			})
		}
	}
	return out
}

// citesTags reports whether all cells of a column are tags of loudspeakers of another table: "HP5", "LS2, LS3".
func (t *table) citesTags(c *column, tagged map[string]*table) bool {
	cells, cited := 0, 0
	t.eachText(c, func(text string) {
		if cells++; cited < cells-1 || !strings.ContainsFunc(text, isLetter) {
			return // one of them is none
		}
		list, err := notation.ParseTags(text)
		if err == nil && len(list.List) > 0 && !slices.ContainsFunc(list.List, func(tag string) bool { return tagged[join.Key(tag)] == nil || tagged[join.Key(tag)] == t }) {
			cited++
		}
	})
	return cells > 0 && cited == cells
}

// countsNotJobs gives up columns of jobs that count: small whole numbers, in a list of counted loudspeakers, of which one
// comes back after another and many are those of the counts beside them. Rows of one job stand together.
func (t *table) countsNotJobs() {
	for _, f := range jobFields {
		for _, c := range slices.Clone(t.byField[f]) {
			if t.countsAgain(c) && slices.ContainsFunc(t.byField[vocabulary.Quantity], func(q *column) bool { return t.oftenEqual(c, q) }) {
				t.become(c, vocabulary.Unknown, "its cells are counts, in no order")
			}
		}
	}
}

// largestCount is the highest number that a row of a list may count.
const largestCount = 99

// countsAgain reports whether all cells of a column are whole numbers up to largestCount, and one comes back after
// another: 6, 6, 2, 6.
func (t *table) countsAgain(c *column) bool {
	cells, counts, again, last := 0, 0, false, ""
	seen := make(map[string]bool)
	t.eachText(c, func(text string) {
		cells++
		if n, err := strconv.Atoi(text); err != nil || n < 0 || n > largestCount {
			return
		}
		counts++
		again = again || text != last && seen[text]
		last, seen[text] = text, true
	})
	return cells > 0 && counts == cells && again
}

// oftenEqual reports whether two columns say the same in a third of the devices or more.
func (t *table) oftenEqual(c, o *column) bool {
	rows, equal := 0, 0
	for i := range t.Records {
		if r := &t.Records[i]; r.Class == layout.Device {
			if rows++; r.Values[c.i].Text == r.Values[o.i].Text {
				equal++
			}
		}
	}
	return 3*equal >= rows
}
