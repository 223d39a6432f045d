package ingest

import "testing"

// Notes below a list that say which line hangs on which amplifier, called by its looks or its place. Common practice,
// no source.
func TestLinesOnAmplifiersCalledByWords(t *testing.T) {
	const list = "Floor | Place | Qty | W | Circuit\nground | foyer | 2 | 3 | 1\nground | gym | 4 | 10 | 2\nfirst | corridor | 3 | 3 | 1\nfirst | hall | 4 | 6 | 2\n|\n"
	on := func(first, second string) []string {
		return []string{"2 x 3 W zone foyer channel " + first + " / 1", "4 x 10 W zone gym channel " + second + " / 2", "3 x 3 W zone corridor channel " + first + " / 1", "4 x 6 W zone hall channel " + second + " / 2"}
	}
	for _, c := range []struct{ notes, first, second string }{
		{"line 1 amplifier grey 60 W\nline 2 amplifier black 120 W", "amplifier grey", "amplifier black"},
		{"Circuit 1: grey amplifier, 60 W\nCircuit 2: black amplifier, 120 W", "grey amplifier", "black amplifier"},
		{"line 1 hangs on the grey amplifier (60 W)\nline 2 hangs on the one by the door", "", ""},
		{"Linie 1 = grauer Verstärker 60 W; Linie 2 = schwarzer Verstärker 120 W", "grauer Verstärker", "schwarzer Verstärker"},
		{"ampli du fond 60 W : ligne 1\nampli du bureau 120 W : ligne 2", "ampli du fond", "ampli du bureau"},
		{"linea 1 amplificatore grigio 60 W, linea 2 amplificatore nero 120 W", "amplificatore grigio", "amplificatore nero"},
		{"lijn 1 op de oude versterker (60 W)\nlijn 2 op de nieuwe versterker (120 W)", "oude versterker", "nieuwe versterker"},
		{"línea 1 amplificador gris 60 W\nlínea 2 amplificador negro 120 W", "amplificador gris", "amplificador negro"},
	} {
		j := wholeJob(t, list+c.notes)
		if c.first == "" {
			if len(j.Amplifiers) > 0 {
				t.Errorf("%s: amplifiers %d", c.notes, len(j.Amplifiers))
			}
			continue
		}
		want(t, c.notes, describe(j), on(c.first, c.second))
		want(t, c.notes, channelRatings(j), []string{c.first + " / 1 60 W ? V", c.second + " / 2 120 W ? V"})
	}
}

// An amplifier of two lines has its rating for both, and the same words behind all lines name none.
func TestLinesOnWordedAmplifiersOtherwise(t *testing.T) {
	const list = "Floor | Place | Qty | W | Circuit\nground | foyer | 2 | 3 | 1\nground | gym | 4 | 10 | 2\nfirst | corridor | 3 | 3 | 3\nfirst | hall | 4 | 6 | 3\n|\n"
	j := wholeJob(t, list+"grey amplifier 60 W: line 1\nblack amplifier 120 W: lines 2 and 3")
	want(t, "two lines", describe(j), []string{"2 x 3 W zone foyer channel grey amplifier / 1", "4 x 10 W zone gym channel black amplifier / 2", "3 x 3 W zone corridor channel black amplifier / 3", "4 x 6 W zone hall channel black amplifier / 3"})
	if j = wholeJob(t, list+"line 1 amplifier load 60 W\nline 2 amplifier load 120 W\nline 3 amplifier load 60 W"); len(j.Amplifiers) > 0 {
		t.Errorf("same words: amplifier %s", j.Amplifiers[0].Name)
	}
}
