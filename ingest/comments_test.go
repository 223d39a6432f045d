package ingest

import (
	"testing"

	"lineaudit/audit/schedule"
)

// What people put into the notes of cells holds for the row, or for what the cell names. Common practice, no source.
func TestNotesOnCells(t *testing.T) {
	j := wholeJob(t, `## List
Ice rink, 100 V
|
Where | Kind | Qty | W | Control
Hall ^ removed 2019 | ceiling | 4 | 6 | R1
Yard | horn | 2 | 15 ^ set to 10 W in March |
Foyer | ceiling | 4 | 3 | R2 ^ R2 is the small type, 10 W
Office | ceiling | 1 | 3 |`)
	want(t, "rows", describe(j), []string{"4 x 6 W zone Hall control R1 removed", "2 x 10 W zone Yard", "4 x 3 W zone Foyer control R2", "1 x 3 W zone Office"})
	for _, c := range j.Controls {
		if c.Name == "R2" && show(c.Rated) != "10" {
			t.Errorf("R2 rated %s", show(c.Rated))
		}
	}
	if j.Loudspeakers[0].Status != schedule.Removed {
		t.Error("the note on a place is not its row's")
	}
}

func TestCommentText(t *testing.T) {
	for note, wanted := range map[string]string{
		"Stores:\nremoved 2019": "removed 2019",
		"[Threaded comment]\n\nYour version allows you to read this.\n\nComment:\n    set to 5 W": "set to 5 W",
		"W per piece:\n3 W": "3 W",
		"A 1:\n120 W":       "A 1:\n120 W",
		"set to 5 W":        "set to 5 W",
		"removed\nFinding 3, possible fault: load 96 W of 80 W\nRemedy: set them to 5 W": "removed",
		"Finding 1, caution: load 96 W of 100 W":                                         "",
	} {
		if got := commentText(note); got != tidy(wanted) {
			t.Errorf("%q: %q", note, got)
		}
	}
}
