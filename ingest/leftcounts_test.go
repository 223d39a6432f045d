package ingest

import "testing"

// Of the counts before, of what went and of what is left, the last counts. Common practice, no source.
func TestCountsOfWhatIsLeft(t *testing.T) {
	for _, heads := range []string{"Before flood | Written off | In place now", "vorher | abgeschrieben | jetzt", "Avant | Déposés | Maintenant", "Antes | Baja | Ahora", "Prima | Tolti | Adesso", "Voorheen | Weg | Nu"} {
		j := wholeJob(t, "## S\nLoss report, 100 V\n\nItem | Location | Description | Tapping | "+heads+"\n"+
			"1 | Bay 1 | Wall cabinet | 6 W | 4 | 2 | 2\n2 | Gym | Ceiling | 3 W | 6 | 0 | 6\n3 | Slip | Horn | 15 W | 3 | 1 | 2\n4 | Stair | Ceiling | 1.5 W | 2 | 0 | 2")
		want(t, heads, describe(j), []string{"2 x 6 W zone Bay 1", "6 x 3 W zone Gym", "2 x 15 W zone Slip", "2 x 1.5 W zone Stair"})
	}
}
