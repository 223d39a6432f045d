package ingest

import "testing"

// Addenda fill in what changes, and leave blank what stays as the contract has it. Common practice, no source.
func TestBlanksOfAChangeStayAsTheyWere(t *testing.T) {
	for _, c := range []struct{ where, count, was, is string }{
		{"Room", "Qty", "As per contract", "As per amendment 2"}, {"Raum", "Stück", "Laut Vertrag", "Laut Nachtrag 2"}, {"Local", "Qté", "Selon marché", "Selon avenant n° 2"},
		{"Espacio", "Cant.", "Según contrato", "Según otrosí No. 2"}, {"Locale", "Q.tà", "Da contratto", "Da atto aggiuntivo 2"}, {"Ruimte", "Aantal", "Volgens bestek", "Volgens aanvulling 2"},
	} {
		book := drawnBook(`
Slate library, 70 V line
|
Item | ` + c.where + ` | ` + c.was + ` | | ` + c.is + ` | | Control
 | | ` + c.count + ` | W | ` + c.count + ` | W |
1 | Reading | 12 | 5 | 10 | 5 | VC1
2 | Papers | 6 | 5 | | | VC2
3 | Junior | 6 | 2.5 | | 5 | VC3
4 | Loft | 2 | 2.5 | 0 | |
5 | Aisles | 10 | 2.5 | 12 | |
6 | Annex | | | 2 | 5 |
7 | Square | 4 | 10 | 4 | 15 |`)
		mergeGroups(book.Sheets[0], 3)
		j := Read(book, Options{}).Jobs[0]
		want(t, c.is, describe(j), []string{"10 x 5 W zone Reading control VC1", "6 x 5 W zone Papers control VC2", "6 x 5 W zone Junior control VC3", "12 x 2.5 W zone Aisles",
			"2 x 5 W zone Annex", "4 x 15 W zone Square"})
		kept := 0
		for _, a := range j.Assumptions {
			if a.TakenAs == "what was there before" {
				kept++
			}
		}
		if kept == 0 {
			t.Errorf("%s: nothing said of what is kept", c.is)
		}
	}
}

// Taps as they were and as they are stand side by side; words beside them tell which are as before, gone or added.
// Common practice, no source.
func TestTapsAsTheyWereAndAre(t *testing.T) {
	for _, c := range []struct{ was, now, same, gone string }{
		{"Was (W)", "Now (W)", "NC", "REMOVED"}, {"Alt (W)", "Neu (W)", "unverändert", "entfernt"}, {"Avant (W)", "Après (W)", "inchangé", "supprimé"},
		{"Antes (W)", "Ahora (W)", "sin cambio", "retirado"}, {"Prima (W)", "Adesso (W)", "invariato", "rimosso"}, {"Oud (W)", "Nieuw (W)", "ongewijzigd", "verwijderd"},
	} {
		j := wholeJob(t, "Planetarium speakers 70 V, change order\n|\nTag | Location | "+c.was+" | "+c.now+"\nS-01 | Dome | 5 | 2.5\nS-02 | Lobby | 2.5 | "+c.same+
			"\nS-03 | Lab | 5 | "+c.gone+"\nS-04 | Hall | - | 10\nS-05 | Hall | 5 | 10")
		want(t, c.now, describe(j), []string{"S-01 1 x 2.5 W zone Dome", "S-02 1 x 2.5 W zone Lobby", "S-03 1 x ? W zone Lab removed", "S-04 1 x 10 W zone Hall", "S-05 1 x 10 W zone Hall"})
	}
}
