package ingest

import (
	"strings"
	"testing"
)

// Loudspeakers of which nothing says what feeds them are asked about where the job has several outputs, and not
// where it has one or none. Common practice, no source.
func TestUnhungLoudspeakersAreAsked(t *testing.T) {
	const list = "Where | Kind | Qty | W | Amp\nQuay | horn | 2 | 15 |\nPier | horn | 1 | 15 |\nHall | ceiling | 4 | 6 | A1\nYard | horn | 2 | 15 | A2"
	for drawing, asks := range map[string]bool{
		"## List\nBoathouse, 100 V\n|\n" + list:                                        true,
		"## List\nBoathouse, 100 V\n|\n" + strings.ReplaceAll(list, "A2", "A1"):        false,
		"## List\nBoathouse, 100 V\n|\nWhere | Kind | Qty | W\nHall | ceiling | 4 | 6": false,
	} {
		asked := false
		for _, q := range wholeJob(t, drawing).Questions {
			asked = asked || q.Field == "channel" && q.At.Row == 4 && strings.Contains(q.Text, "2 rows")
		}
		if asked != asks {
			t.Errorf("%s: asked %v", drawing, asked)
		}
	}
}
