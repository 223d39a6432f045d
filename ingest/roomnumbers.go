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

// rowsOfRoomNumber are the rows of loudspeakers in the room of a number, with or without its name behind it, which may
// be cut short: "1.02 Meeting room", "1.02 M. room". The number of an item needs the name of its room.
func (b *builder) rowsOfRoomNumber(text string) []*row {
	numbers := b.rowsByRoomNumber()
	if rows := numbers[join.Key(text)]; len(rows) > 0 && !slices.ContainsFunc(rows, (*row).numbersItem) {
		return rows
	}
	number, name, ok := strings.Cut(strings.TrimSpace(text), " ")
	if !ok {
		return nil
	}
	var out []*row
	for _, o := range numbers[join.Key(strings.Trim(number, ",:;"))] {
		if o.inRoomCalled(strings.TrimLeft(name, " -–:")) {
			out = append(out, o)
		}
	}
	return out
}

// rowsByRoomNumber are the rows of loudspeakers that count, by the key of the number of their room or item, where a
// list has it beside the name of the room.
func (b *builder) rowsByRoomNumber() map[string][]*row {
	if b.roomNumbers != nil {
		return b.roomNumbers
	}
	b.roomNumbers = make(map[string][]*row)
	for _, t := range b.tables {
		c := t.roomNumberColumn()
		t.numbersRooms = c
		for _, r := range t.rows {
			if r.kind != loudspeakerRow || r.out != "" {
				continue
			}
			number, _ := numberAhead(r.own(vocabulary.Room).text)
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

// numberAhead parts the number of a room from the name behind it, "" where there is none, or where it begins a list:
// "A02 to A07 classrooms".
func numberAhead(text string) (number, name string) {
	m := numberedName.FindStringSubmatch(text)
	if m == nil || anyDigit(m[2]) {
		return "", ""
	}
	return m[1], m[2]
}

// roomNumberColumn is the column of the numbers of rooms or items of a table beside one of the names of rooms, nil if
// it has none.
func (t *table) roomNumberColumn() *column {
	if cols := t.byField[vocabulary.Item]; len(cols) == 1 && t.has(vocabulary.Room) {
		return cols[0]
	}
	if cols := t.byField[vocabulary.Room]; len(cols) == 1 && t.onlyFigures(cols[0]) && slices.ContainsFunc(namesBesideNumbers, t.has) {
		return cols[0]
	}
	if t.has(vocabulary.Room) && !t.has(vocabulary.Item) {
		for _, c := range t.byField[vocabulary.Unknown] {
			if numbersRooms(c) {
				return c
			}
		}
	}
	return nil
}

// onlyFigures reports whether no cell of a column has a word in it, and one has a figure: "0.01", "-1.02", "E12".
func (t *table) onlyFigures(c *column) bool {
	figures, words := false, false
	t.eachText(c, func(text string) {
		figures = figures || anyDigit(text)
		words = words || !anyDigit(text) || countWords(text) > 1
	})
	return figures && !words
}

// namesBesideNumbers are the fields of the columns in which the names of rooms may stand whose numbers are told as rooms.
var namesBesideNumbers = []vocabulary.Field{vocabulary.Describe, vocabulary.Model, vocabulary.Unknown}

// inRoomCalled reports whether a name is that of the room of a row, whose number stands beside it.
func (r *row) inRoomCalled(name string) bool {
	c := r.t.numbersRooms
	if c == nil {
		_, own := numberAhead(r.own(vocabulary.Room).text)
		return sameCutShort(name, own)
	}
	fields := []vocabulary.Field{vocabulary.Room}
	if c.Field == vocabulary.Room {
		fields = namesBesideNumbers
	}
	for _, f := range fields {
		for _, c := range r.t.byField[f] {
			if sameCutShort(name, r.at(c).text) {
				return true
			}
		}
	}
	return false
}

// numbersItem reports whether the number that a row has beside its room is of its item, and not of the room.
func (r *row) numbersItem() bool {
	c := r.t.numbersRooms
	return c != nil && c.Field == vocabulary.Item && !numbersRooms(c)
}

// sameCutShort reports whether a name is another one, of whose words it may cut some short with a full stop:
// "M. room" for "Meeting room".
func sameCutShort(short, name string) bool {
	if join.Key(short) == join.Key(name) {
		return name != ""
	}
	words, whole := strings.Fields(join.Fold(short)), strings.Fields(join.Fold(name))
	if len(words) != len(whole) || len(words) < 2 {
		return false
	}
	for i, w := range words {
		cut, stop := strings.CutSuffix(w, ".")
		if w != whole[i] && !(stop && cut != "" && strings.HasPrefix(whole[i], cut)) {
			return false
		}
	}
	return true
}

// numbersRooms reports whether the header of a column speaks of rooms: its numbers are theirs.
func numbersRooms(c *column) bool {
	return slices.Contains(vocabulary.NewScorer().Concepts(c.Header), "room")
}
