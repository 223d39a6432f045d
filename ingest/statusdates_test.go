package ingest

import (
	"testing"

	"lineaudit/audit/schedule"
)

// A remark that says when a loudspeaker was taken away, or beside what was wrong with it that it was, leaves the
// row out; one that may be of some of several is asked about. Common practice, no source.
func TestStatesWithDates(t *testing.T) {
	for _, remark := range []string{"Beyond repair, taken down 14/1", "2022 demontiert", "déposé en mai 2021", "retirado el 3.4.2020",
		"rimosso nel 2019", "afgebroken plafond, verwijderd 12-3-2018", "condemned",
		"soaked, taken down on March 3rd", "durchnässt, abgebaut am 11. März", "noyé, déposé le 11 mars", "mojada, retirada el 4 de mayo", "bruciato, smontato il 2 giugno",
		"spreekspoel stuk, meegenomen, nieuwe volgt", "voice coil gone, taken along", "Spule defekt, mitgenommen", "membrane crevée, emporté", "cono rotto, portato via", "cono roto, llevado al taller"} {
		j := wholeJob(t, "Where | Kind | Qty | W | Amp | Remarks\nHall | ceiling | 4 | 6 | A |\nYard | horn | 2 | 15 | A | "+remark+"\nAmp A: 60 W")
		want(t, remark, describe(j), []string{"4 x 6 W zone Hall channel A / 1", "2 x 15 W zone Yard channel A / 1 removed"})
		if len(j.Questions) > 0 {
			t.Errorf("%s: asked %v", remark, asked(j))
		}
	}
	for _, remark := range []string{"1 of 2, taken down 14/1", "left one, taken down 14/1", "2 taken down May 3rd"} {
		j := wholeJob(t, "Where | Kind | Qty | W | Amp | Remarks\nHall | ceiling | 4 | 6 | A |\nYard | horn | 2 | 15 | A | "+remark+"\nAmp A: 60 W")
		want(t, remark, describe(j), []string{"4 x 6 W zone Hall channel A / 1", "2 x 15 W zone Yard channel A / 1"})
		if len(j.Questions) == 0 {
			t.Errorf("%s: not asked", remark)
		}
	}
}

// A day behind its month may be some of several where the row counts as many. Common practice, no source.
func TestDaysBehindMonths(t *testing.T) {
	for _, c := range []struct {
		count, remark, state string
	}{
		{"1", "taken down 8/14, hole patched, not coming back", " removed"}, {"6", "removed 10/22/2021", " removed"}, {"2", "pulled, taken down 8/31", " removed"},
		{"14", "taken down 8/14, they squeal a bit now and then", ""}, {"2", "taken down 8/14, put back by us on the wall 9/20", ""},
	} {
		j := wholeJob(t, "Where | Kind | Qty | W | Amp | Remarks\nHall | ceiling | 4 | 6 | A |\nYard | horn | "+c.count+" | 15 | A | "+c.remark+"\nAmp A: 60 W")
		want(t, c.remark, describe(j), []string{"4 x 6 W zone Hall channel A / 1", c.count + " x 15 W zone Yard channel A / 1" + c.state})
		if c.state == "" && len(j.Questions) == 0 {
			t.Errorf("%s: not asked", c.remark)
		}
	}
}

// A help point of a list of assets is no loudspeaker. Common practice, no source.
func TestHelpPoints(t *testing.T) {
	for _, kind := range []string{"HELP_POINT", "Notrufsäule", "Borne d'appel", "Poste SOS", "Colonnina SOS", "Noodzuil"} {
		j := wholeJob(t, "Tag | Type | Room | Tap W | Amp\n101 | Loudspeaker | Hall | 6 | A\n102 | Loudspeaker | Yard | 15 | A\n103 | "+kind+" | Yard |")
		if n := len(j.Loudspeakers); n != 2 {
			t.Errorf("%s: %d rows of loudspeakers", kind, n)
		}
	}
}

// A sentence of a state, with a season or the like, and what is left there says the same as the state. Common practice, no source.
func TestStatesToldInSentences(t *testing.T) {
	for _, remark := range []string{"taken down last summer - wire capped in the box", "has been removed", "wurde letzten Sommer demontiert, Leitung liegt noch", "ist demontiert",
		"a été déposé l'été dernier – câble laissé en attente de rien", "est déposé", "fue retirado el verano pasado, queda el cable", "ya está desmontado", "è stato rimosso l'estate scorsa - resta il cavo",
		"sono stati rimossi", "is weggehaald", "werd vorig jaar verwijderd - kabel hangt nog", "for later, conduit only", "a futuro, solo está el tubo", "für später, nur das Rohr liegt", "pour plus tard, seule la gaine est là",
		"per il futuro, c'è solo il tubo", "voor later, alleen de buis ligt er"} {
		j := wholeJob(t, "Where | Kind | Qty | W | Amp | Remarks\nHall | ceiling | 4 | 6 | A |\nYard | horn | 2 | 15 | A | "+remark+"\nAmp A: 60 W")
		if n := len(j.Loudspeakers); n == 2 && j.Loudspeakers[1].Status == schedule.Installed || len(j.Questions) > 0 {
			t.Errorf("%s: %v, asked %v", remark, describe(j), asked(j))
		}
	}
	for _, remark := range []string{"one taken down last summer", "taken down last summer, put back since", "cover removed last summer", "two are removed"} {
		j := wholeJob(t, "Where | Kind | Qty | W | Amp | Remarks\nHall | ceiling | 4 | 6 | A |\nYard | horn | 2 | 15 | A | "+remark+"\nAmp A: 60 W")
		want(t, remark, describe(j), []string{"4 x 6 W zone Hall channel A / 1", "2 x 15 W zone Yard channel A / 1"})
	}
}

// What was taken down and put back since is asked about, however it begins; what was not put back is gone. Common practice, no source.
func TestWhatWasPutBackIsAsked(t *testing.T) {
	for _, remark := range []string{"was taken down last summer, put back since", "were taken down for painting - rehung since", "wurde abgebaut, inzwischen wieder montiert", "a été déposé, remis en place depuis",
		"fue retirado, repuesto en mayo", "è stato rimosso, poi rimontato", "werd verwijderd, later teruggeplaatst"} {
		j := wholeJob(t, "Where | Kind | Qty | W | Amp | Remarks\nHall | ceiling | 4 | 6 | A |\nYard | horn | 2 | 15 | A | "+remark+"\nAmp A: 60 W")
		want(t, remark, describe(j), []string{"4 x 6 W zone Hall channel A / 1", "2 x 15 W zone Yard channel A / 1"})
		if len(j.Questions) == 0 {
			t.Errorf("%s: not asked", remark)
		}
	}
	for _, remark := range []string{"was taken down last summer", "was taken down last summer, never put back"} {
		j := wholeJob(t, "Where | Kind | Qty | W | Amp | Remarks\nHall | ceiling | 4 | 6 | A |\nYard | horn | 2 | 15 | A | "+remark+"\nAmp A: 60 W")
		if n := len(j.Loudspeakers); n == 2 && j.Loudspeakers[1].Status == schedule.Installed {
			t.Errorf("%s: %v", remark, describe(j))
		}
	}
}
