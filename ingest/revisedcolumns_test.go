package ingest

import "testing"

// Lists that are revised keep what they said before in a column of its own: the later
// revision counts. Common practice, no source.
func TestColumnsOfRevisions(t *testing.T) {
	for _, tt := range []struct{ was, is string }{
		{"W (rev. 1)", "W (rev. 2)"}, {"Leistung Index A (W)", "Leistung Index B (W)"}, {"Puissance W indice C", "Puissance W indice D"}, {"Rev 09 W", "Rev 10 W"},
	} {
		want(t, tt.is, describe(wholeJob(t, "Tag|Room|Loudspeaker|Qty|"+tt.was+"|"+tt.is+"|Änderung\nC1|Quay|horn|2|15|10|\nC2|Shed|cabinet|1|6|6|\nC3|Loft|cabinet|1|6||entfallen\nC4|Lock|horn|2||15|neu\n")),
			[]string{"C1 2 x 10 W zone Quay", "C2 1 x 6 W zone Shed", "C3 1 x ? W zone Loft removed", "C4 2 x 15 W zone Lock"})
	}
	// the newer stands first
	want(t, "first", describe(wholeJob(t, "Tag|Room|Loudspeaker|Qty|W rev C|W rev B\nC1|Quay|horn|2|15|10\nC2|Shed|cabinet|1|6|3\nC3|Lock|horn|2|15|30\n")),
		[]string{"C1 2 x 15 W zone Quay", "C2 1 x 6 W zone Shed", "C3 2 x 15 W zone Lock"})
}
