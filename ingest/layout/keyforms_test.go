package layout

import (
	"fmt"
	"testing"
	"time"

	"lineaudit/ingest/grid"
)

// A long list of two columns is no form, and looking for one takes time linear in its lines.
func TestLongListsAreNoForms(t *testing.T) {
	s := &grid.Sheet{Name: "S"}
	for i := range maxFormLines {
		name := fmt.Sprintf("%c%c%c name", 'a'+i%26, 'a'+i/26%26, 'a'+i/676%26)
		if i%2 == 0 {
			name = fmt.Sprintf("Zone %c%c%c", 'A'+i%26, 'A'+i/26%26, 'A'+i/676%26) // may begin a form
		}
		s.Rows = append(s.Rows, grid.NewRow(i+1, grid.Cell{Kind: grid.String, Text: name}.In(1), grid.Cell{Kind: grid.String, Text: "word"}.In(2)))
	}
	began := time.Now()
	p := newPlane("f", s)
	if q := newFinder(p, nil, nil, nil).keyForms(); q != nil {
		t.Error("a form")
	}
	if took := time.Since(began); took > 20*time.Second {
		t.Errorf("took %v", took)
	}
}
