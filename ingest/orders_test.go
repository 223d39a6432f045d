package ingest

import "testing"

// What a list of things to buy counts hangs nowhere yet, where another sheet lists what
// does; the only list of a job is what there is. Common practice, no source.
func TestListsOfWhatIsOrdered(t *testing.T) {
	const list = `
## PA
Loudspeakers 100 V
Room | Type | Qty | Tap W
Hall | Horn | 4 | 15
Desk | Ceiling | 2 | 3
`
	const order = `## %s
Quantity | Item | For
2 | Horn 15 W | Hall, one on the shelf
1 | Volume control 35 W | Desk`
	for name, n := range map[string]int{"Spare parts": 2, "To order": 2} {
		j := wholeJob(t, list+"## "+name+order[len("## %s"):])
		if len(j.Loudspeakers) != n || len(j.Controls) != 0 {
			t.Errorf("%s: %d loudspeakers and %d controls, want %d and none", name, len(j.Loudspeakers), len(j.Controls), n)
		}
	}
	j := wholeJob(t, `
## Bestellung
Lautsprecher 100 V
Menge | Artikel | Ort
4 | Horn 15 W | Halle
2 | Deckenlautsprecher 3 W | Kasse`)
	if len(j.Loudspeakers) != 2 {
		t.Errorf("%d loudspeakers of the only list, want 2", len(j.Loudspeakers))
	}
}
