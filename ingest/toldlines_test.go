package ingest

import "testing"

// Sentences in one column, below titles that name the amplifier of each group by a word;
// what was there, and is taken away, loads nothing. Common practice, no source.
func TestListsToldBelowTitlesOfAmplifiers(t *testing.T) {
	for _, c := range []struct {
		name, sheets, site string
		want, rated        []string
		controls           []string
	}{
		{"English", `
Wharf Pool, sound system walked in May. Everything is 100 volt.

Zone 1 (amplifier lower, 60 W)
Ticket desk: 2 ceiling at 3 W, volume knob 12 W
Lobby: 4 ceiling 6W
Changing: also 6 ceiling at 1.5 W
Zone 2 (amplifier upper, 120 W)
Pool: 4 horns at 15 W
Slide: was 1 horn at 10 W, taken away 2018`, "Wharf Pool",
			[]string{"2 x 3 W zone Zone 1 control control (Ticket desk) channel lower / 1", "4 x 6 W zone Zone 1 channel lower / 1", "6 x 1.5 W zone Zone 1 channel lower / 1",
				"4 x 15 W zone Zone 2 channel upper / 1", "? x 10 W zone Zone 2 channel upper / 1 removed"},
			[]string{"lower / 1 60 W", "upper / 1 120 W"}, []string{"control (Ticket desk) 12"}},
		{"German", `
Freibad Auenwiese

Gruppe 1 (Verstärker Keller, 120 W)
Kasse: 2 Decke auf 3 W
Halle: auch 4 Decke auf 6 W
Gruppe 2 (Verstärker Turm, 240 W)
Becken: 4 Horn auf 15 W`, "Freibad Auenwiese",
			[]string{"2 x 3 W zone Gruppe 1 channel Keller / 1", "4 x 6 W zone Gruppe 1 channel Keller / 1", "4 x 15 W zone Gruppe 2 channel Turm / 1"},
			[]string{"Keller / 1 120 W", "Turm / 1 240 W"}, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, c.sheets)
			want(t, "loudspeakers", describe(j), c.want)
			want(t, "outputs", ratedOutputs(j), c.rated)
			var rated []string
			for _, k := range j.Controls {
				rated = append(rated, k.Name+" "+show(k.Rated))
			}
			want(t, "controls", rated, c.controls)
			if j.Site.Value != c.site {
				t.Errorf("site %q, want %q", j.Site.Value, c.site)
			}
		})
	}
}
