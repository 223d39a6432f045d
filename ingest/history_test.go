package ingest

import "testing"

// A history of revisions below a list is no part of it. Common practice, no source.
func TestHistoriesOfRevisions(t *testing.T) {
	for _, head := range []string{"Rev. | Date | Description", "Index | Datum | Änderung", "Ind. | Date | Objet", "Rev. | Fecha | Descripción", "Rev. | Data | Descrizione", "Rev. | Datum | Omschrijving"} {
		j := wholeJob(t, "Tag | Zone | Tap\nS1 | Track | 15 W\nS2 | Track | 15 W\n|\n"+head+"\nA | 12/03/2014 | first issue\nB | 30/06/2014 | S2 added")
		want(t, head, describe(j), []string{"S1 1 x 15 W zone Track", "S2 1 x 15 W zone Track"})
	}
}
