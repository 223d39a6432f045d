package ingest

import (
	"strings"
	"testing"
)

// Bills whose sections have letters and their items a letter and a number: controls refer to items behind where they hang,
// amplifiers have no word but that of their title, cables lead from their outputs to zones, and some pieces are for
// stock. Common practice, no source.
func TestOutlinedBills(t *testing.T) {
	for _, c := range []struct{ head, ceiling, horn, controls, control, behind, amps, outputs, stock, cables, output string }{
		{"Item | Description | Location | Zone | Quantity | Tap (watts)", "Ceiling loudspeaker", "Weatherproof horn", "ATTENUATORS", "AT-1, 10 W wall attenuator", "Study, for A.2",
			"AMPLIFIERS", "PA-1, two outputs, 2 x 150 W", "For owner's stock", "Run | From | To | Zone | Length (m)", "PA-1 output "},
		{"Pos. | Beschreibung | Ort | Zone | Anzahl | Abgriff (W)", "Deckenlautsprecher", "Hornlautsprecher", "LAUTSTÄRKEREGLER", "AT-1, Lautstärkeregler 10 W", "Study, für A.2",
			"VERSTÄRKER", "PA-1, zwei Ausgänge, 2 x 150 W", "Für Lager", "Kabel | Von | Nach | Zone | Länge (m)", "PA-1 Ausgang "},
		{"Poste | Désignation | Emplacement | Zone | Quantité | Prise (W)", "Haut-parleur de plafond", "Haut-parleur à pavillon", "ATTÉNUATEURS", "AT-1, atténuateur mural 10 W", "Study, pour A.2",
			"AMPLIFICATEURS", "PA-1, deux sorties, 2 x 150 W", "Pour stock", "Câble | De | Vers | Zone | Longueur (m)", "PA-1 sortie "},
		{"Código | Descripción | Ubicación | Zona | Cantidad | Toma (W)", "Altavoz de techo", "Altavoz de bocina", "ATENUADORES", "AT-1, atenuador de pared 10 W", "Study, para A.2",
			"AMPLIFICADORES", "PA-1, dos salidas, 2 x 150 W", "Para almacén", "Cable | Desde | Hasta | Zona | Longitud (m)", "PA-1 salida "},
		{"Voce | Descrizione | Posizione | Zona | Quantità | Presa (W)", "Diffusore da soffitto", "Diffusore a tromba", "ATTENUATORI", "AT-1, attenuatore da parete 10 W", "Study, per A.2",
			"AMPLIFICATORI", "PA-1, due uscite, 2 x 150 W", "Per scorta", "Cavo | Da | A | Zona | Lunghezza (m)", "PA-1 uscita "},
		{"Post | Omschrijving | Plaats | Zone | Aantal | Aftakking (W)", "Plafondluidspreker", "Hoornluidspreker", "VOLUMEREGELAARS", "AT-1, volumeregelaar 10 W", "Study, voor A.2",
			"VERSTERKERS", "PA-1, twee uitgangen, 2 x 150 W", "Voor voorraad", "Kabel | Van | Naar | Zone | Lengte (m)", "PA-1 uitgang "},
	} {
		j := wholeJob(t, "## Bill\nSlate station, loudspeakers, 100 V\n|\n"+c.head+"\nA | CEILINGS\nA.1 | "+c.ceiling+" | Foyer | Inside | 8 | 6\nA.2 | "+c.ceiling+" | Study | Inside | 2 | 3\n"+
			"B | HORNS\nB.1 | "+c.horn+" | Yard | Yard | 9 | 10\nB.2 | "+c.horn+" | Bridge | Yard | 2 | 10\nB.3 | "+c.horn+" | "+c.stock+" | -- | 2 |\n"+
			"C | "+c.controls+"\nC.1 | "+c.control+" | "+c.behind+" | Inside | 1 |\nD | "+c.amps+"\nD.1 | "+c.outputs+" | Rack | | 1 |\n"+
			"## Cable\n"+c.cables+"\nK-1 | "+c.output+"1 | Foyer | Inside | 90\nK-2 | "+c.output+"2 | Yard | Yard | 120\n")
		var got []string
		for _, l := range describe(j) {
			ahead, _, _ := strings.Cut(l, " x ")
			got = append(got, l[strings.LastIndex(ahead, " ")+1:]) // with the item for a tag or without
		}
		want(t, c.head, got, []string{"8 x 6 W zone Inside channel PA-1 / 1", "2 x 3 W zone Inside control AT-1 channel PA-1 / 1",
			"9 x 10 W zone Yard channel PA-1 / 2", "2 x 10 W zone Yard channel PA-1 / 2", "2 x ? W spare"})
		want(t, c.head, ratedOutputs(j), []string{"PA-1 / 1 150 W", "PA-1 / 2 150 W"})
		want(t, c.head, ratedControls(j), []string{"AT-1 10"})
	}
}
