package ingest

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/vocabulary"
)

// A list of controls may name what hangs behind each by the numbers of rooms, which another list has beside the names
// of the rooms: "R1 | 0.01 and 0.02", "R2 | 0.05 Meeting room".

// servedRoomNumbers are the rows of loudspeakers in the rooms whose numbers a row of a control lists, nil if it
// lists anything else.
func (b *builder) servedRoomNumbers(r *row) *service {
	s := r.own(vocabulary.Room)
	if r.kind != controlRow || !s.had() || !anyDigit(s.text) || len(s.text) > longestSpoken {
		return nil
	}
	v := &service{at: s}
	for _, part := range listParts.Of(s.text, byWords) {
		rows := b.rowsOfRoomNumber(part)
		if len(rows) == 0 {
			return nil
		}
		v.rows = append(v.rows, rows...)
	}
	return v
}

// rowsOfRoomNumber are the rows of loudspeakers in the room of a number, with or without its name behind it.
func (b *builder) rowsOfRoomNumber(text string) []*row {
	numbers := b.rowsByRoomNumber()
	if rows := numbers[join.Key(text)]; len(rows) > 0 {
		return rows
	}
	number, name, ok := strings.Cut(strings.TrimSpace(text), " ")
	if !ok {
		return nil
	}
	var out []*row
	for _, o := range numbers[join.Key(strings.Trim(number, ",:;"))] {
		if o.own(vocabulary.Room).key() == join.Key(strings.TrimLeft(name, " -–:")) {
			out = append(out, o)
		}
	}
	return out
}

// rowsByRoomNumber are the rows of loudspeakers that count, by the key of the number of their room, where a list
// has it beside the name.
func (b *builder) rowsByRoomNumber() map[string][]*row {
	if b.roomNumbers != nil {
		return b.roomNumbers
	}
	b.roomNumbers = make(map[string][]*row)
	for _, t := range b.tables {
		c := t.roomNumbers()
		for _, r := range t.rows {
			if r.kind != loudspeakerRow || r.out != "" {
				continue
			}
			number := numberAhead(r.own(vocabulary.Room).text)
			if c != nil {
				number = r.at(c).text
			}
			if k := join.Key(number); k != "" {
				b.roomNumbers[k] = append(b.roomNumbers[k], r)
			}
		}
	}
	return b.roomNumbers
}

// numberedName is the number of a room before its name: "A01 aula", "0.12 - Store".
var numberedName = regexp.MustCompile(`^(\pL{0,2}\d[\d.]{0,5}\pL?)(?:\s+[-–]|,)?\s+(\pL{3,}.*)$`)

// numberAhead is the number before the name of a room, "" where there is none, or where it begins a list: "A02 to A07
// classrooms".
func numberAhead(text string) string {
	m := numberedName.FindStringSubmatch(text)
	if m == nil || anyDigit(m[2]) {
		return ""
	}
	return m[1]
}

// roomNumbers is the column of the numbers of rooms beside their names, nil if there is none: "Room | Description"
// over "0.01 | Hall" has its numbers below the word for rooms.
func (t *table) roomNumbers() *column {
	if !t.has(vocabulary.Room) {
		return nil
	}
	if cols := t.byField[vocabulary.Item]; len(cols) > 0 {
		if len(cols) == 1 && numbersRooms(cols[0]) {
			return cols[0]
		}
		return nil
	}
	for _, c := range t.byField[vocabulary.Unknown] {
		if numbersRooms(c) {
			return c
		}
	}
	return nil
}

// numbersRooms reports whether the header of a column speaks of rooms: its numbers are theirs.
func numbersRooms(c *column) bool {
	return slices.Contains(vocabulary.NewScorer().Concepts(c.Header), "room")
}
