package ingest

import (
	"regexp"
	"strings"
	"unicode/utf8"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// Notes may explain what the cells of a column of taps mean: "Switch position: 1 = 20 W,
// 2 = 10 W", "Tap 1/2 = half of the rated power".

// tapKeyEntry is a code, a sign of equality and a power: "1 = 20 W", "B: 2,5 W".
var tapKeyEntry = regexp.MustCompile(`(?i)(?:^|[\s,;(|/])(\d{1,2}|\pL)\s*(?:=|:|→|->)\s*(\d{1,3}(?:[.,]\d{1,2})?)\s?W\b`)

// tapShareEntry is a share, a sign of equality and words: "1/2 = half power".
var tapShareEntry = regexp.MustCompile(`(?:^|[\s,;(|])(\d/\d)\s*(?:=|:|→|->)\s*\pL`)

// tapKeys has the codes in the tables of a sheet mean what its notes explain.
func tapKeys(notes []spoken, tables []*table) {
	for _, s := range notes {
		if len(s.text) > longestSpoken || !strings.ContainsAny(s.text, "=:→>") {
			continue
		}
		if list := tapShareEntry.FindAllString(s.text, 3); len(list) >= 2 {
			for _, t := range tables {
				t.shares = t.shares || t.has(vocabulary.Tap)
			}
			continue
		}
		at := tapKeyEntry.FindStringIndex(s.text)
		if at == nil {
			continue
		}
		watts := make(map[string]string)
		for _, m := range tapKeyEntry.FindAllStringSubmatch(s.text, -1) {
			watts[join.Key(m[1])] = m[2] + " W"
		}
		if len(watts) < 2 {
			continue
		}
		for _, t := range tables {
			if c := t.codedTaps(s.text[:at[0]], watts); c != nil {
				t.decodeTaps(c, watts, s)
			}
		}
	}
}

// codedTaps is the column of a list of loudspeakers whose cells are all codes of a note,
// and whose header has a word of the note's first ones, or its beginning: "Pos." of
// "Position of the switch"; nil if there is none.
func (t *table) codedTaps(head string, watts map[string]string) *column {
	if t.kind != layout.Loudspeakers && t.kind != layout.Mixed && (t.kind != layout.Zones || !t.has(vocabulary.Quantity)) {
		return nil
	}
	for _, c := range t.columns {
		if !t.mayCodeTaps(c) || !sharesWord(head, c.Header) {
			continue
		}
		cells, known := 0, 0
		t.eachText(c, func(text string) {
			cells++
			if watts[join.Key(text)] != "" {
				known++
			}
		})
		if cells > 1 && known == cells {
			return c
		}
	}
	return nil
}

// mayCodeTaps reports whether a column may hold taps: it is the one of taps, or where there
// is none, one of numbers and names or one that was hardly understood.
func (t *table) mayCodeTaps(c *column) bool {
	if t.has(vocabulary.Tap) {
		return c.Field == vocabulary.Tap
	}
	switch c.Field {
	case vocabulary.Item, vocabulary.Unknown, vocabulary.Model, vocabulary.Tag:
		return true
	}
	return c.Confidence < sureHeader
}

// sharesWord reports whether a word of a header, of three letters or more, is one of a
// text or begins one.
func sharesWord(text, header string) bool {
	words := strings.FieldsFunc(join.Fold(text), notLetter)
	for _, h := range strings.FieldsFunc(join.Fold(header), notLetter) {
		for _, w := range words {
			if utf8.RuneCountInString(h) >= 3 && strings.HasPrefix(w, h) {
				return true
			}
		}
	}
	return false
}

func notLetter(r rune) bool { return !isLetter(r) }

// decodeTaps has the codes of a column mean the powers of a note.
func (t *table) decodeTaps(c *column, watts map[string]string, s spoken) {
	if c.Field != vocabulary.Tap {
		t.become(c, vocabulary.Tap, "a note says what its codes mean")
	}
	t.kind = layout.Loudspeakers
	c.meant, c.meantBy = watts, "“"+short(s.text)+"”"
}

// decode puts what a note says that a text means in its place.
func (s *seen) decode(c *column) {
	if w := c.meant[join.Key(s.text)]; w != "" && s.had() {
		s.text, s.cell = w, nil
		s.source.How, s.source.Because = schedule.FromTitle, c.meantBy
	}
}
