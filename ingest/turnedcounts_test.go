package ingest

import "testing"

// Tables that lie on their side and count the loudspeakers of each tap in a line of its own, with a
// unit behind the label or without, with sums below or without. Common practice, no source.
func TestTurnedCountsByTap(t *testing.T) {
	rows := []string{"6 x 15 W zone Quai 1 channel A1 / 1", "6 x 15 W zone Quai 2 channel A1 / 2", "6 x 6 W zone Hall channel A2 / 1", "2 x 3 W zone Hall channel A2 / 1", "4 x 3 W zone Bureaux channel A2 / 2"}
	for _, drawing := range []string{
		"| | Quai 1 | Quai 2 | Hall | Bureaux\nAmpli | | A1 | A1 | A2 | A2\nVoie | | 1 | 2 | 1 | 2\nHP 15 W | nb | 6 | 6 | |\nHP 6 W | nb | | | 6 |\nHP 3 W | nb | | | 2 | 4",
		"| Quai 1 | Quai 2 | Hall | Bureaux\nAmpli | A1 | A1 | A2 | A2\nVoie | 1 | 2 | 1 | 2\nHP 15 W | 6 | 6 | |\nHP 6 W | | | 6 |\nHP 3 W | | | 2 | 4",
		"| Quai 1 | Quai 2 | Hall | Bureaux\nAmpli | A1 | A1 | A2 | A2\nVoie | 1 | 2 | 1 | 2\nHP 15 W | 6 | 6 | |\nHP 6 W | | | 6 |\nHP 3 W | | | 2 | 4\nP totale (W) | 90 | 90 | 42 | 12",
	} {
		want(t, drawing, describe(wholeJob(t, drawing)), rows)
	}
}
