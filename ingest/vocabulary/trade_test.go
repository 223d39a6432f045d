package vocabulary

import (
	"encoding/csv"
	"os"
	"strings"
	"testing"
)

// testdata/trade.csv is how installers, consultants, contractors and facility
// teams of six languages head the columns of such lists, by field; written from
// memory of the trade, not from the program's data. A header that means several
// things by itself ("Typ", "Nr.") stands under the field that it has beside
// loudspeakers, and it is enough that the words allow for it: the cells decide.
func TestHeadersOfTheTrade(t *testing.T) {
	const (
		allowed = 0.2  // how far behind the best reading the right one may be
		least   = 0.5  // and what it must score
		enough  = 0.97 // share of the headers understood
	)
	file, err := os.Open("testdata/trade.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	rows, err := csv.NewReader(file).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	s := NewScorer()
	headers, right, known := 0, 0, 0
	for _, row := range rows[1:] {
		want, err := fieldOf(row[0])
		if err != nil {
			t.Fatal(err)
		}
		for header := range strings.SplitSeq(row[2], ";") {
			header = strings.TrimSpace(header)
			headers++
			if Known(header) {
				known++
			}
			h := s.Header(header)
			if score := h.Of(want); score >= least && score >= h.Best().Score-allowed {
				right++
			} else {
				t.Logf("%s %q is %s, reads as %s %.2f (%.2f)", row[1], header, row[0], h.Best().Field, h.Best().Score, score)
			}
		}
	}
	t.Logf("%d of %d headers understood, %d of them are listed as they stand", right, headers, known)
	if float64(right) < enough*float64(headers) {
		t.Errorf("%d of %d headers understood, want %.0f %%", right, headers, 100*enough)
	}
}
