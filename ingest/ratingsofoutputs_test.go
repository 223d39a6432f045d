package ingest

import (
	"fmt"
	"testing"
)

// A list of outputs names the control of some, with its own power. Common practice, no source.
func TestRatingsOfOutputsBesideControls(t *testing.T) {
	for _, c := range []struct{ output, rating, control, cell string }{
		{"Output", "Maximum power", "Attenuator", "AT1, 24 W"}, {"Ausgang", "Höchstleistung", "Regler", "AT1 mit 24 W"}, {"Sortie", "Puissance max.", "Atténuateur", "AT1 de 24 W"},
		{"Salida", "Potencia máxima", "Atenuador", "AT1 de 24 W"}, {"Uscita", "Potenza massima", "Attenuatore", "AT1 da 24 W"}, {"Uitgang", "Maximaal vermogen", "Regelaar", "AT1 van 24 W"},
	} {
		j := wholeJob(t, "## A\nElmfield hall\n|\nNo. | Zone | Room | Type | Tap W\nD1 | Stable | North | horn | 15\nD2 | Stable | South | horn | 15\nD3 | Ring | East | horn | 10\nD4 | Office | Desk | wall | 3\n"+
			"## B\nOne amplifier of three outputs, 100 V line\n|\n"+c.output+" | Zone | "+c.rating+" | "+c.control+"\n1 | Stable | 60 W | \n2 | Ring | 120 W | "+c.cell+"\n3 | Office | 30 W | \n")
		want(t, c.output, describe(j), []string{"D1 1 x 15 W zone Stable channel 1", "D2 1 x 15 W zone Stable channel 1", "D3 1 x 10 W zone Ring control AT1 channel 2", "D4 1 x 3 W zone Office channel 3"})
		var rated []string
		for _, ch := range j.Channels {
			w, _ := ch.Rated.Exact()
			rated = append(rated, fmt.Sprintf("%s %v", ch.Name, w))
		}
		for _, k := range j.Controls {
			w, _ := k.Rated.Exact()
			rated = append(rated, fmt.Sprintf("%s %v", k.Name, w))
		}
		want(t, c.output+", rated", rated, []string{"1 60", "2 120", "3 30", "AT1 24"})
	}
}
