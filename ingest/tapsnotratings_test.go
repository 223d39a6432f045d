package ingest

import "testing"

// Lists that count loudspeakers with their taps on outputs are no lists of outputs. Common practice, no source.
func TestTapsOnOutputsAreNoRatings(t *testing.T) {
	for _, head := range []string{"Zone | Qty | W each | Output", "Zone | Stk | W je Stk. | Ausgang", "Zone | Qté | W/HP | Sortie", "Zona | Cant. | W c/u | Salida", "Zona | Q.tà | W cad. | Uscita", "Zone | Aantal | W per stuk | Uitgang"} {
		j := wholeJob(t, "Tram shed, 100 V\n|\n"+head+"\nTracks | 8 | 15 | 1/1\nBench | 6 | 15 | 1/2\nDesk | 4 | 6 | 2/1\nYard | 2 | 15 | 2/2")
		want(t, head, describe(j), []string{"8 x 15 W zone Tracks channel 1 / 1", "6 x 15 W zone Bench channel 1 / 2", "4 x 6 W zone Desk channel 2 / 1", "2 x 15 W zone Yard channel 2 / 2"})
	}
	j := wholeJob(t, "Tram shed, 100 V\n|\nZone | Outputs | Output W | Output\nTracks | 1 | 60 | 1/1\nBench | 1 | 60 | 1/2\nDesk | 1 | 30 | 2/1")
	if len(j.Loudspeakers) != 0 {
		t.Errorf("outputs are loudspeakers: %v", describe(j))
	}
}
