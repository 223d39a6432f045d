package ingest

import (
	"testing"
)

// Surveys set what was found beside what is drawn: what was found counts, in whatever order the two stand, and a tap that
// nobody saw is asked. Common practice, no source.
func TestDrawnBesideFound(t *testing.T) {
	for _, w := range []struct{ place, qty, drawn, found string }{
		{"Area", "Qty", "As drawn", "As found"}, {"Raum", "Stk.", "Laut Plan", "Vor Ort gezählt"}, {"Local", "Nb", "Selon plan", "Constaté sur place"},
		{"Sala", "Uds.", "Según plano", "Comprobado"}, {"Locale", "N.", "Da progetto", "Rilevato"}, {"Ruimte", "Aantal", "Volgens tekening", "Aangetroffen"},
		{"Area", "No.", "Design", "Installed"}, {"Raum", "Anzahl", "Soll", "Ist"}, {"Room", "Count", "Per drawings", "Site check"},
	} {
		for name, table := range map[string]string{
			"two rows": w.place + " | " + w.drawn + " | | " + w.found + " | | Remark\n | " + w.qty + " | W | " + w.qty + " | W |\n" +
				"Hall | 4 | 10 | 4 | 15 |\nPit | 1 | 10 | 0 | |\nStore | 3 | 6 | 2 | 6 | \nMess | 2 | 3 | 2 | ? |\nDock | | | 1 | 6 |",
			"unmerged": w.place + " | " + w.drawn + " | | " + w.found + " | |\n | " + w.qty + " | W | " + w.qty + " | W |\n" +
				"Hall | 4 | 10 | 4 | 15 |\nPit | 1 | 10 | 0 | |\nStore | 3 | 6 | 2 | 6 | \nMess | 2 | 3 | 2 | ? |\nDock | | | 1 | 6 |",
			"found first": w.place + " | " + w.qty + " " + w.found + " | W " + w.found + " | " + w.qty + " " + w.drawn + " | W " + w.drawn + "\n" +
				"Hall | 4 | 15 | 4 | 10\nPit | 0 | | 1 | 10\nStore | 2 | 6 | 3 | 6\nMess | 2 | ? | 2 | 3\nDock | 1 | 6 | |",
			"by figures": w.place + " | " + w.drawn + " " + w.qty + " | " + w.found + " " + w.qty + " | " + w.drawn + " W | " + w.found + " W\n" +
				"Hall | 4 | 4 | 10 | 15\nPit | 1 | 0 | 10 | \nStore | 3 | 2 | 6 | 6\nMess | 2 | 2 | 3 | ?\nDock | | 1 | | 6",
		} {
			book := drawnBook("Loudspeakers, 100 V\n|\n" + table + "\n")
			if name == "two rows" {
				mergeGroups(book.Sheets[0], 3)
			}
			jobs := Read(book, Options{}).Jobs
			if len(jobs) != 1 {
				t.Errorf("%s %s: %d jobs", name, w.found, len(jobs))
				continue
			}
			j := jobs[0]
			if w.drawn == "Soll" && name == "found first" {
				continue // what is wanted may stand behind what is there
			}
			want(t, name+" "+w.found, describe(j), []string{"4 x 15 W zone Hall", "2 x 6 W zone Store", "2 x ? W zone Mess", "1 x 6 W zone Dock"})
			if len(asked(j)) == 0 {
				t.Errorf("%s %s: nothing asked", name, w.found)
			}
		}
	}
}

// Only the counts may differ, beside one column of watts. Common practice, no source.
func TestCountsDrawnBesideCountsFound(t *testing.T) {
	for _, heads := range []string{"Room | Qty drawn | Qty found", "Raum | Stk. laut Plan | Stk. gezählt", "Local | Nb plan | Nb relevé", "Sala | Uds. plano | Uds. comprobadas",
		"Locale | Q.tà progetto | Q.tà rilevata", "Ruimte | Aantal tekening | Aantal geteld", "Room | Qty found | Qty drawn"} {
		table := "Hall | 4 | 4 | 15\nPit | 1 | 0 | 10\nStore | 3 | 2 | 6\nDock | 2 | 3 | 3"
		if heads == "Room | Qty found | Qty drawn" {
			table = "Hall | 4 | 4 | 15\nPit | 0 | 1 | 10\nStore | 2 | 3 | 6\nDock | 3 | 2 | 3"
		}
		j := wholeJob(t, "Loudspeaker survey, 100 V\n|\n"+heads+" | W\n"+table)
		want(t, heads, describe(j), []string{"4 x 15 W zone Hall", "2 x 6 W zone Store", "3 x 3 W zone Dock"})
	}
}
