package source

import (
	"fmt"

	"lineaudit/ingest/grid"
)

// fewFormulas is how many results a workbook must have before they are suspected.
const fewFormulas = 3

// doubtFormulas remarks on a workbook in which every formula has the result 0:
// programs that write formulas without working them out store that.
func doubtFormulas(b *grid.Book) {
	zeros, first := 0, grid.Note{}
	for _, s := range b.Sheets {
		for i := range s.Rows {
			for c := range s.Rows[i].Cells() {
				switch {
				case !c.Formula || c.Kind == grid.NoValue:
				case c.Kind != grid.Number || c.Number != 0:
					return
				default:
					if zeros++; zeros == 1 {
						first = grid.Note{Sheet: s.Name, Row: s.Rows[i].Number, Col: c.Col}
					}
				}
			}
		}
	}
	if zeros < fewFormulas {
		return
	}
	first.Text = fmt.Sprintf("the results of all %d formulas, this one first, are 0: whatever saved the workbook may not have worked them out; open it in a spreadsheet program, save it, and run again", zeros)
	b.Notes = append(b.Notes, first)
}
