package ingest

import "testing"

// A header may say that its cells are counts with the watts of each, which look like
// sizes of cables; controls are known by their ratings. Common practice, no source.
func TestCountsWithWatts(t *testing.T) {
	for _, c := range []struct {
		name, sheets, site string
		want, rated        []string
	}{
		{"French", `
Musée de la Mine - sonorisation
Sonorisation 100 V
Local | HP (nbre x W) | Atténuateur | Sortie
Accueil | 4x6 | 50 W | 1
Caisse | 1x1,5 | - | 1
Salle | 8x10 | - | 2`, "Musée de la Mine",
			[]string{"4 x 6 W zone Accueil control control (Accueil) channel 1", "1 x 1.5 W zone Caisse channel 1", "8 x 10 W zone Salle channel 2"},
			[]string{"control (Accueil) 50"}},
		{"English, a title with a word that begins like one for a building", `
Quarry Museum - paging
Blockwork survey, March
100 V line
Room | Speakers (qty × watts) | Output
Lobby | 6 × 3 | 1
Shop | 2 × 1.5 | 1`, "Quarry Museum", []string{"6 x 3 W zone Lobby channel 1", "2 x 1.5 W zone Shop channel 1"}, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, c.sheets)
			want(t, "loudspeakers", describe(j), c.want)
			var rated []string
			for _, k := range j.Controls {
				rated = append(rated, k.Name+" "+show(k.Rated))
			}
			want(t, "controls", rated, c.rated)
			if j.Site.Value != c.site {
				t.Errorf("site %q, want %q", j.Site.Value, c.site)
			}
		})
	}
}
