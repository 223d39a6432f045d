package ingest

import (
	"testing"

	"lineaudit/audit/schedule"
)

// ratedControls are the controls of a job with their ratings in watts.
func ratedControls(j *schedule.Job) []string {
	var out []string
	for _, k := range j.Controls {
		out = append(out, k.Name+" "+show(k.Rated))
	}
	return out
}

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
			want(t, "controls", ratedControls(j), c.controls)
			if j.Site.Value != c.site {
				t.Errorf("site %q, want %q", j.Site.Value, c.site)
			}
		})
	}
}

// Lines below the title of a zone may be its control and its cable, and the end of a sentence the control of its
// loudspeakers. Common practice, no source.
func TestControlsAndCablesToldBelowTitles(t *testing.T) {
	for _, c := range []struct{ name, sheet string }{
		{"English", `
Rink survey, 100 V

Zone 1 - Stands (amp ch1)
10 cabinet @ 10W
vol control 150W in the booth
cable 2.5mm 60m
Zone 2 - Foyer (amp ch2)
14 ceiling @ 6W
2 ceiling @ 3W in office on 10W control
cable 1.5mm 40m`},
		{"German", `
Eishalle, Aufnahme, 100 V

Zone 1 - Stands (Verstärker Kanal 1)
10 Boxen à 10 W
Lautstärkesteller 150 W in der Kabine
Kabel 2 x 2,5 mm² 60 m
Zone 2 - Foyer (Verstärker Kanal 2)
14 Decke à 6 W
2 Decke à 3 W im Büro mit Regler 10 W
Kabel 2 x 1,5 mm² 40 m`},
		{"French", `
Patinoire, relevé, 100 V

Zone 1 - Stands (ampli voie 1)
10 enceintes 10 W
atténuateur 150 W dans la cabine
câble 2 x 2,5 mm² 60 m
Zone 2 - Foyer (ampli voie 2)
14 HP plafond 6 W
2 HP plafond 3 W au bureau avec atténuateur 10 W
câble 2 x 1,5 mm² 40 m`},
	} {
		j := wholeJob(t, c.sheet)
		want(t, c.name, describe(j), []string{"10 x 10 W zone Zone 1 - Stands control control (Zone 1 - Stands) channel 1", "14 x 6 W zone Zone 2 - Foyer channel 2",
			"2 x 3 W zone Zone 2 - Foyer control control (Zone 2 - Foyer) channel 2"})
		want(t, c.name, ratedControls(j), []string{"control (Zone 1 - Stands) 150", "control (Zone 2 - Foyer) 10"})
		want(t, c.name, cablesOf(j), []string{" 60 m 2.5 mm² channel 1", " 40 m 1.5 mm² channel 2"})
	}
}
