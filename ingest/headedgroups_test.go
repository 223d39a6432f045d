package ingest

import (
	"slices"
	"testing"

	"lineaudit/audit/schedule"
)

// A row may list two kinds of loudspeakers side by side, each below a heading of its own with its count
// and its watts; rooms have numbers and names. Common practice, no source.
func TestKindsSideBySide(t *testing.T) {
	for _, c := range []struct {
		name, sheet string
		want        []string
	}{
		{"German, units below", `
Salinenhaus, Raumbuch ELA, 100 V
|
Raum-Nr. | Bezeichnung | Fläche | Decken-LS | | Wand-LS | | Linie
 | | m² | Stk. | W/Stk. | Stk. | W/Stk. |
0.01 | Eingangshalle | 112 | 6 | 3 | 2 | 6 | 1
0.02 | Kasse | 48 | 4 | 1.5 | | | 1
0.03 | Sudhaus | 260 | | | 8 | 10 | 2
 | Summe | 420 | 10 | | 10 | |`,
			[]string{"6 x 3 W zone Eingangshalle channel 1", "2 x 6 W zone Eingangshalle channel 1", "4 x 1.5 W zone Kasse channel 1", "8 x 10 W zone Sudhaus channel 2"}},
		{"English", `
Slate Museum, loudspeakers by room, 100 V
|
Room | Ceiling | | Horns | | Output
 | Qty | W each | Qty | W each |
Foyer | 6 | 3 | 2 | 15 | 1
Shop | 4 | 1.5 | | | 1`,
			[]string{"6 x 3 W zone Foyer channel 1", "2 x 15 W zone Foyer channel 1", "4 x 1.5 W zone Shop channel 1"}},
		{"French", `
Piscine, haut-parleurs 100 V
|
Local | HP plafond | | HP mural | | Sortie
 | Nbre | W/u | Nbre | W/u |
Hall | 6 | 3 | 2 | 6 | 1
Bassin | | | 8 | 15 | 2`,
			[]string{"6 x 3 W zone Hall channel 1", "2 x 6 W zone Hall channel 1", "8 x 15 W zone Bassin channel 2"}},
		{"Spanish", `
Piscina, altavoces 100 V
|
Local | Techo | | Pared | | Salida
 | Uds. | W/ud. | Uds. | W/ud. |
Vestíbulo | 6 | 3 | 2 | 6 | 1
Vaso | | | 8 | 15 | 2`,
			[]string{"6 x 3 W zone Vestíbulo channel 1", "2 x 6 W zone Vestíbulo channel 1", "8 x 15 W zone Vaso channel 2"}},
		{"Italian", `
Piscina, diffusori 100 V
|
Locale | A soffitto | | A parete | | Uscita
 | N. | W cad. | N. | W cad. |
Atrio | 6 | 3 | 2 | 6 | 1
Vasca | | | 8 | 15 | 2`,
			[]string{"6 x 3 W zone Atrio channel 1", "2 x 6 W zone Atrio channel 1", "8 x 15 W zone Vasca channel 2"}},
		{"Dutch", `
Zwembad, luidsprekers 100 V
|
Ruimte | Plafond | | Wand | | Uitgang
 | Aantal | W/st. | Aantal | W/st. |
Hal | 6 | 3 | 2 | 6 | 1
Bad | | | 8 | 15 | 2`,
			[]string{"6 x 3 W zone Hal channel 1", "2 x 6 W zone Hal channel 1", "8 x 15 W zone Bad channel 2"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			book := drawnBook(c.sheet)
			mergeGroups(book.Sheets[0], 3)
			jobs := Read(book, Options{}).Jobs
			if len(jobs) != 1 {
				t.Fatalf("%d jobs", len(jobs))
			}
			want(t, "loudspeakers", describe(jobs[0]), c.want)
			if models := slices.Collect(kinds(jobs[0])); len(models) != 2 {
				t.Errorf("kinds %v", models)
			}
		})
	}
}

// kinds are the different models of a job.
func kinds(j *schedule.Job) func(func(string) bool) {
	return func(yield func(string) bool) {
		seen := map[string]bool{}
		for _, l := range j.Loudspeakers {
			if m := l.Model.Value; !seen[m] {
				if seen[m] = true; !yield(m) {
					return
				}
			}
		}
	}
}
