package ingest

import (
	"testing"

	"lineaudit/audit/schedule"
)

// Remarks in words of several trades that say that a whole row is gone, spare or not there yet; a part of a row asks. Common practice, no source.
func TestRemarksThatAllIsGone(t *testing.T) {
	const list = "Where | Kind | Qty | W | Amp | Remarks\nHall | ceiling | 4 | 6 | A | \nYard | horn | 2 | 15 | A | "
	for _, remark := range []string{
		"taken down when the pool went, hole plated over", "not in yet, goes up when the gate is rebuilt",
		"dismantled & handed over to stores", "supplied as spare", "lo sacaron junto con el muro", "heuer im Jänner demontiert (Wasserschaden)",
		"weggenomen voor nieuwe luifel, komt niet terug", "losgehaald door muizen, ligt in la", "démonté quand le toit a été refait", "smontato quando è caduto il muro",
	} {
		for _, l := range wholeJob(t, list+remark+"\nAmp A: 60 W").Loudspeakers {
			if (l.Status == schedule.Installed) != (l.Count.Low == 4) {
				t.Errorf("%s: %v", remark, l.Status)
			}
		}
	}
	for _, remark := range []string{"one taken down", "1 given to the school", "taken down when the roof leaked, back again since", "left one taken down when the pool went"} {
		want(t, remark, describe(wholeJob(t, list+remark+"\nAmp A: 60 W")), []string{"4 x 6 W zone Hall channel A / 1", "2 x 15 W zone Yard channel A / 1"})
	}
}
