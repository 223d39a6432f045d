package ingest

import (
	"testing"

	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"

	"lineaudit/audit/schedule"
)

func TestJobNumbersInTitles(t *testing.T) {
	fact := func(sheet string, row, col int, field vocabulary.Field, text string) layout.Fact {
		return layout.Fact{Field: field, Text: text, At: schedule.At("", sheet, row, col)}
	}
	const plain = vocabulary.Unknown
	for _, c := range []struct {
		name  string
		facts [][]layout.Fact // by sheet
		want  []string
	}{
		{"beside the title", [][]layout.Fact{{fact("A", 1, 1, plain, "Winter garden"), fact("A", 1, 5, plain, "JX-104")}}, []string{"JX-104"}},
		{"alone on the sheet", [][]layout.Fact{{fact("A", 1, 1, plain, "JX-104")}}, []string{""}},
		{"below the title", [][]layout.Fact{{fact("A", 1, 1, plain, "Winter garden"), fact("A", 2, 1, plain, "JX-104")}}, []string{""}},
		{"a tag of a loudspeaker", [][]layout.Fact{{fact("A", 1, 1, plain, "Winter garden"), fact("A", 1, 5, plain, "LS-104")}}, []string{""}},
		{"another on each sheet", [][]layout.Fact{
			{fact("A", 1, 1, plain, "Winter garden"), fact("A", 1, 5, plain, "JX-104")},
			{fact("B", 1, 1, plain, "Boathouse"), fact("B", 1, 5, plain, "JX-105")}}, []string{"", ""}},
		{"as another sheet writes its number", [][]layout.Fact{
			{fact("A", 1, 1, vocabulary.JobNo, "JX-104")},
			{fact("B", 1, 1, plain, "JX-105 Boathouse")}}, []string{"JX-104", "JX-105"}},
		{"not as another sheet writes its number", [][]layout.Fact{
			{fact("A", 1, 1, vocabulary.JobNo, "JX-104")},
			{fact("B", 1, 1, plain, "Boathouse"), fact("B", 1, 5, plain, "DW-105")}}, []string{"JX-104", ""}},
	} {
		all := make([]sheetPart, len(c.facts))
		for i := range all {
			all[i].facts = c.facts[i]
		}
		numberTitles(all)
		for i := range all {
			got := ""
			for _, f := range all[i].facts {
				if f.Field == vocabulary.JobNo {
					got = f.Text
				}
			}
			if got != c.want[i] {
				t.Errorf("%s: sheet %d has job number %q, want %q", c.name, i+1, got, c.want[i])
			}
		}
	}
}
