package ingest

import (
	"strings"
	"testing"
)

// The title of a list may say which of its rows hang behind a control, by their items or tags;
// one that denies a control names no zone. Common practice, no source.
func TestTitlesOfControlsForSomeRows(t *testing.T) {
	for _, tt := range []struct{ title, want string }{
		{"Volume control VC2 12 W only for 2.3 and 2.4", "VC2 12 W x2"},
		{"Regler LR2 12 W nur für 2.4", "LR2 12 W x1"},
		{"Atténuateur AT2, 12 W, pour 2.1 à 2.3", "AT2 12 W x3"},
		{"Volumeregelaar VR2 12 W alleen voor LS4", "VR2 12 W x1"},
		{"Volume control VC2 24 W at the head of the line", "VC2 24 W x4"},
	} {
		j := wholeJob(t, strings.ReplaceAll("Line 2, amplifier AM2, 60 W, 100 V\nTITLE\n\nPos. | Tag | Room | Type | Power\n2.1 | LS1 | Foyer | ceiling | 3 W\n2.2 | LS2 | Foyer | ceiling | 3 W\n2.3 | LS3 | Class | ceiling | 3 W\n2.4 | LS4 | Class | ceiling | 3 W", "TITLE", tt.title))
		if got := controlsOf(j); got != tt.want {
			t.Errorf("%s: got %s, want %s", tt.title, got, tt.want)
		}
	}
	const list = "\nPos. | Raum | Typ | Leistung\n1 | Hof | Horn | 15 W\n2 | Hof | Horn | 15 W\n"
	for _, none := range []string{"Ohne Regler", "Kein Lautstärkeregler", "Sans atténuateur"} {
		j := wholeJob(t, "## L1\nHaus am See\nGarten"+list+"## L2\nHaus am See\n"+none+list)
		if got := strings.Join(zoned(j), ","); !strings.HasPrefix(got, "Garten,Garten,") || strings.Contains(got, none) {
			t.Errorf("%s: zones %s", none, got)
		}
	}
}
