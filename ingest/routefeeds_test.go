package ingest

import "testing"

// Notes that hang buildings on amplifiers with articles, alone or grown together with the word ahead. Common practice, no source.
func TestAmplifiersBehindArticles(t *testing.T) {
	for _, c := range []struct{ head, note, a string }{
		{"Bâtiment", "Bâtiment A sur l'ampli A (120 W), bâtiment B sur l'ampli B (60 W).", "ampli"},
		{"Bâtiment", "Le bâtiment A est sur l’ampli A (120 W), le bâtiment B sur l’ampli B (60 W).", "ampli"},
		{"Edificio", "Edificio A en el amplificador A (120 W), edificio B en el amplificador B (60 W).", "amplificador"},
		{"Edificio", "Edificio A sull'amplificatore A (120 W), edificio B sull'amplificatore B (60 W).", "amplificatore"},
		{"Gebäude", "Gebäude A hängt am Verstärker A (120 W), Gebäude B auf dem Verstärker B (60 W).", "Verstärker"},
		{"Gebouw", "Gebouw A op de versterker A (120 W), gebouw B op de versterker B (60 W).", "versterker"},
		{"Block", "Block A is on the amp A (120 W), block B on the amp B (60 W).", "amp"},
	} {
		j := wholeJob(t, "Northfield\n"+c.note+"\n|\n"+c.head+" | Room | Qty | Tap\nA | Hall | 4 | 10 W\nA | Lobby | 2 | 3 W\nB | Gym | 4 | 6 W")
		want(t, c.note, channelRatings(j), []string{c.a + " A / 1 120 W ? V", c.a + " B / 1 60 W ? V"})
		want(t, c.note, describe(j), []string{"4 x 10 W zone Hall channel " + c.a + " A / 1", "2 x 3 W zone Lobby channel " + c.a + " A / 1", "4 x 6 W zone Gym channel " + c.a + " B / 1"})
	}
}

// What looks like an article may be the name itself.
func TestNamesLikeArticles(t *testing.T) {
	for _, tt := range []struct{ in, out string }{
		{"l'ampli A", "ampli A"}, {"L 1", "L 1"}, {"la", "la"}, {"dem Verstärker 2", "Verstärker 2"}, {"hall 3", "hall 3"}, {"all'amplificatore 2", "amplificatore 2"},
	} {
		if got := cutOnThe(tt.in); got != tt.out {
			t.Errorf("%q: %q", tt.in, got)
		}
	}
}
