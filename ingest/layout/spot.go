package layout

import (
	"unique"

	"lineaudit/audit/schedule"
)

// A Spot is the place of a cell in few bytes: a long register holds millions of
// values, and each says where it stands. The zero Spot names no place.
type Spot struct {
	sheet    unique.Handle[sheetOf]
	row, col int32
}

// sheetOf names a sheet of a file.
type sheetOf struct{ file, sheet string }

// SpotOf is a place as a value holds it.
func SpotOf(r schedule.Ref) Spot {
	if r.IsZero() {
		return Spot{}
	}
	return Spot{unique.Make(sheetOf{r.File, r.Sheet}), int32(r.Row), int32(r.Col)}
}

// Ref is the place as everybody names it.
func (s Spot) Ref() schedule.Ref {
	if s == (Spot{}) {
		return schedule.Ref{}
	}
	of := s.sheet.Value()
	return schedule.Ref{File: of.file, Sheet: of.sheet, Row: int(s.row), Col: int(s.col)}
}
