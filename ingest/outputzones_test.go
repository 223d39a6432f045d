package ingest

import "testing"

// An output may have a row for each of its zones: the control of a row is that of its
// zone. Common practice, no source.
func TestControlsOfZonesOnOneOutput(t *testing.T) {
	const heads = "## Köpfe\nZone | Raum | Lautsprecher | Anzahl | W\nFoyer | Kasse | Decke | 2 | 6\nFlur | Gang | Decke | 4 | 3\nFlur | WC | Decke | 1 | 1.5\nHof | Hof | Horn | 2 | 15\n## Ausgänge\nZone | Endstufe | Ausgang | W Ausgang | Regler | W Regler\n"
	for _, tt := range []struct{ outputs, want string }{
		{"Foyer | V1 | 1 | 60 | R1 | 20\nFlur | V1 | 1 | 60 | |\nHof | V1 | 2 | 60 | |", "R1 20 W x1"},
		{"Foyer | V1 | 1 | 60 | |\nFlur | V1 | 1 | 60 | R2 | 36\nHof | V1 | 2 | 60 | R3 | 50", "R2 36 W x2, R3 50 W x1"},
		{"Foyer | V1 | 1 | 60 | R1 | 20\nFlur | V1 | 1 | 60 | R2 | 36\nHof | V1 | 2 | 60 | R3 | 50", "R1 20 W x1, R2 36 W x2, R3 50 W x1"},
		{"Foyer, Flur | V1 | 1 | 60 | R1 | 50\nHof | V1 | 2 | 60 | |", "R1 50 W x3"},
	} {
		if got := controlsOf(wholeJob(t, heads+tt.outputs)); got != tt.want {
			t.Errorf("%s: got %s, want %s", tt.outputs, got, tt.want)
		}
	}
}
