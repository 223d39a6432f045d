package ingest

import (
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
		cols := t.byField[vocabulary.Item]
		if len(cols) != 1 || !t.has(vocabulary.Room) || !numbersRooms(cols[0]) {
			continue
		}
		for _, r := range t.rows {
			if number := r.at(cols[0]); r.kind == loudspeakerRow && r.out == "" && number.had() {
				k := number.key()
				b.roomNumbers[k] = append(b.roomNumbers[k], r)
			}
		}
	}
	return b.roomNumbers
}

// numbersRooms reports whether the header of a column speaks of rooms: its numbers are theirs.
func numbersRooms(c *column) bool {
	return slices.Contains(vocabulary.NewScorer().Concepts(c.Header), "room")
}
