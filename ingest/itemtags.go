package ingest

import (
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// itemsWithLetters takes a column of tags for one of items in a bill that numbers all its rows through with the letters
// of their section ("W1", "W2" or "W.1" below "Item"), where the words of an amplifier or a control name it otherwise: item W1
// is "Amplifier PA1, four outputs", item W9 "Attenuator VC1 for item W7".
func (b *builder) itemsWithLetters() {
	for _, t := range b.tables {
		cols := t.byField[vocabulary.Tag]
		if len(cols) != 1 || t.has(vocabulary.Item) || !t.has(vocabulary.Describe) || t.kind != layout.Mixed && t.kind != layout.Loudspeakers || !headsItems(cols[0].Header) {
			continue
		}
		stems := make(map[string]bool)
		rows, named := 0, 0
		for _, r := range t.rows {
			s := r.at(cols[0])
			if r.Class != layout.Device || !s.had() {
				continue
			}
			rows++
			stems[strings.TrimRight(join.Fold(s.text), "0123456789.- ")] = true
			if namesItself(r.own(vocabulary.Describe).text) {
				named++
			}
		}
		if rows > 2 && named > 0 && !stems[""] && (len(stems) == 1 || t.outlined(stems)) {
			t.become(cols[0], vocabulary.Item, "its rows of equipment are named otherwise")
			t.lettered = true
		}
	}
}

// outlined reports whether each of some letters of items stands alone before a title: "B | Offices" above B1 and B2.
func (t *table) outlined(stems map[string]bool) bool {
	titles := 0
	for _, r := range t.rows {
		if letter, _, ok := strings.Cut(join.Fold(r.Text), " | "); ok && r.Class == layout.Title && stems[letter] {
			titles++
		}
	}
	return titles >= len(stems)
}

// headsItems reports whether a header is a word for the items of a bill.
func headsItems(header string) bool {
	return slices.ContainsFunc(vocabulary.Score(header), func(c vocabulary.Candidate) bool { return c.Field == vocabulary.Item && c.Score >= 0.7 })
}

// namesItself reports whether words name the amplifier or the control that they describe: "Amplifier PA1, four
// outputs", "Attenuator VC1, 36 W".
func namesItself(text string) bool {
	switch kindInWords(text) {
	case amplifierRow:
		return tagInRating(text) != "" || codeOfAmp(text, false) != ""
	case controlRow:
		name := notation.ParseControlCell(text).Name
		return name != text && plainTag(name)
	}
	return false
}

// speakerTag is the tag of the loudspeakers of a row.
func (r *row) speakerTag() seen {
	if tag := r.own(vocabulary.Tag); tag.had() || !r.t.lettered {
		return tag
	}
	return r.own(vocabulary.Item)
}
