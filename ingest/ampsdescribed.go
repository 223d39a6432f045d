package ingest

import (
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// describedAmps takes what a list of outputs describes for the amplifiers, where each text is one for
// an amplifier and the outputs are numbered anew in each: "Device | Output | W" over "Power amp 1 | 1 | 120". What was
// taken for amplifiers are slots then, where it numbers the rows: "Module | Name | Output" over "2 | Power amp 1 | B".
func (t *table) describedAmps() {
	if t.kind != layout.Amplifiers && t.kind != layout.Channels || !t.has(vocabulary.Channel) || t.Matrix {
		return
	}
	numbers := t.byField[vocabulary.Amplifier]
	if len(numbers) > 1 || len(numbers) == 1 && !t.numbersRows(numbers[0]) {
		return
	}
	for _, f := range []vocabulary.Field{vocabulary.Describe, vocabulary.Unknown, vocabulary.Kind, vocabulary.Item} {
		for _, c := range t.byField[f] {
			amps := true
			t.eachText(c, func(text string) { amps = amps && join.HasWord(join.Amplifier, text) && countWords(text) > 1 })
			if !amps {
				continue
			}
			if tags := t.tagsOfAmps(c); len(numbers) == 0 && tags != nil {
				t.become(tags, vocabulary.Amplifier, "another column describes amplifiers, and the outputs are numbered anew below each tag")
				return
			}
			if t.namesFew(c) && t.numberedAnew(c) {
				if len(numbers) == 1 {
					t.become(numbers[0], vocabulary.Item, "it numbers the rows, and another column describes the amplifiers")
				}
				t.become(c, vocabulary.Amplifier, "it describes amplifiers, and the outputs are numbered anew in each")
				return
			}
		}
	}
}

// tagsOfAmps is the column of a list of outputs that tags the amplifiers that another describes: every row has one, some
// stand on several rows, and no output comes twice below one: "AMP A | 2-way amplifier | 1" over "AMP A | | 2". A column
// that was not understood as tags must tell more amplifiers apart than the descriptions do.
func (t *table) tagsOfAmps(described *column) *column {
	for _, f := range []vocabulary.Field{vocabulary.Tag, vocabulary.Item, vocabulary.Model, vocabulary.Unknown, vocabulary.Room} {
		for _, c := range t.byField[f] {
			places := f == vocabulary.Room && !strings.HasPrefix(c.Evidence, "by its cells")
			if c != described && !places && t.tagsAmps(c) && (f == vocabulary.Tag || t.distinct(c) > t.distinct(described)) {
				return c
			}
		}
	}
	return nil
}

// distinct counts the different texts of a column.
func (t *table) distinct(c *column) int {
	texts := make(map[string]bool)
	t.eachText(c, func(text string) { texts[join.Key(text)] = true })
	return len(texts)
}

// tagsAmps reports whether each row of a list of outputs has a name of a column and another output of that name.
func (t *table) tagsAmps(tags *column) bool {
	if !t.namesFew(tags) || !t.numberedAnew(tags) || len(t.byField[vocabulary.Channel]) != 1 {
		return false
	}
	channel, seen := t.byField[vocabulary.Channel][0], make(map[[2]string]bool)
	for i := range t.Records {
		r := &t.Records[i]
		if r.Class != layout.Device {
			continue
		}
		k := [2]string{join.Key(r.Values[tags.i].Text), join.Key(r.Values[channel.i].Text)}
		if k[0] == "" || k[1] == "" || seen[k] {
			return false
		}
		seen[k] = true
	}
	return true
}

// numbersRows reports whether each cell of a column is another whole number.
func (t *table) numbersRows(c *column) bool {
	seen := make(map[string]bool)
	return t.allCells(c, func(text string) bool {
		again := seen[text]
		seen[text] = true
		return !again && text != "" && strings.Trim(text, "0123456789") == ""
	})
}
