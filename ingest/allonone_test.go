package ingest

import "testing"

// A note may hang everything on one output; one that speaks of some loudspeakers only, or leaves some out, does not.
// Common practice, no source.
func TestEverythingOnOneOutput(t *testing.T) {
	const list = "\n|\nTag | Location | Type | Tap (W)\nS-01 | Dome | wall | 5\nS-02 | Shop | ceiling | 2.5"
	for _, note := range []string{
		"Everything is on PA-2 ch 1 (100 W).", "All speakers on PA-2 ch 1, 100 W", "Alle Lautsprecher hängen an PA-2 Kanal 1 (100 W).",
		"Tous les haut-parleurs sont raccordés à PA-2 sortie 1 (100 W).", "Todo está en PA-2 salida 1 (100 W)", "Tutti i diffusori sono su PA-2 uscita 1 (100 W).",
		"Alles zit op PA-2 uitgang 1 (100 W).",
	} {
		j := wholeJob(t, "Planetarium 70 V\n"+note+list)
		want(t, note, describe(j), []string{"S-01 1 x 5 W zone Dome channel PA-2 / 1", "S-02 1 x 2.5 W zone Shop channel PA-2 / 1"})
		want(t, note, ratedOutputs(j), []string{"PA-2 / 1 100 W"})
	}
	for _, note := range []string{"All ceiling speakers on PA-2 ch 1 (100 W)", "All but the shop on PA-2 ch 1 (100 W)"} {
		want(t, note, describe(wholeJob(t, "Planetarium 70 V\n"+note+list)), []string{"S-01 1 x 5 W zone Dome", "S-02 1 x 2.5 W zone Shop"})
	}
}
