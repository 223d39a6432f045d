package layout

import "lineaudit/audit/schedule"

// A Spot is the place of a cell in few bytes: a long register holds millions of
// values, and each says where it stands. The zero Spot names no place.
type Spot struct {
	sheet    schedule.Sheet
	row, col int32
}

// SpotOf is a place as a value holds it.
func SpotOf(r schedule.Ref) Spot { return Spot{r.On(), int32(r.Row), int32(r.Col)} }

// Ref is the place as everybody names it.
func (s Spot) Ref() schedule.Ref { return s.sheet.Cell(int(s.row), int(s.col)) }
