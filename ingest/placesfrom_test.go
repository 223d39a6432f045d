package ingest

import "testing"

// Cables from place to place branch where several leave from one; central units have the tags right behind the words
// for them. Common practice, no source.
func TestCablesThatBranchAtPlaces(t *testing.T) {
	for _, c := range []struct{ unit, head, title string }{
		{"Central unit AC1, 100 V: output 1 of 120 W, output 2 of 60 W", "Cable | From | Room | Length m | Size | Speakers | W each", "Output"},
		{"Zentrale AC1, 100 V: Ausgang 1 mit 120 W, Ausgang 2 mit 60 W", "Kabel | Von | Raum | Länge m | Querschnitt | Lautsprecher | W je Stück", "Ausgang"},
		{"Centrale AC1, 100 V : sortie 1 de 120 W, sortie 2 de 60 W", "Câble | De | Local | Longueur m | Section | Haut-parleurs | W/HP", "Sortie"},
		{"Central AC1, 100 V: salida 1 de 120 W, salida 2 de 60 W", "Cable | Desde | Sala | Longitud m | Sección | Altavoces | W c/u", "Salida"},
		{"Centrale AC1, 100 V: uscita 1 da 120 W, uscita 2 da 60 W", "Cavo | Da | A | m | Sezione | Altoparlanti | W cad.", "Uscita"},
		{"Centrale AC1, 100 V: uitgang 1 van 120 W, uitgang 2 van 60 W", "Kabel | Van | Ruimte | Lengte m | Doorsnede | Luidsprekers | W per stuk", "Uitgang"},
	} {
		j := wholeJob(t, "Lime tree theatre\n"+c.unit+"\n|\n"+c.head+"\n"+c.title+" 1 - Stalls\nC1 | AC1 | Stalls right | 38 | 2x2.5 | 3 | 10\nC2 | Stalls right | Stalls left | 22 | 2x2.5 | 3 | 10\n"+
			c.title+" 2 - Front\nC3 | AC1 | Lobby | 45 | 2x1.5 | 4 | 6\nC4 | Lobby | Cloakroom | 12 | 2x1.5 | 1 | 3\nC5 | Lobby | Stairs | 18 | 2x1.5 | 2 | 3")
		want(t, c.unit, ratedOutputs(j), []string{"AC1 / 1 120 W", "AC1 / 2 60 W"})
		var from []string
		for _, k := range j.Cables {
			at := "?"
			switch {
			case k.From.Loudspeaker != nil:
				at = k.From.Loudspeaker.Room.Value
			case k.From.Amplifier != nil:
				at = k.From.Amplifier.Name
			}
			from = append(from, k.Name+" "+at)
		}
		want(t, c.head, from, []string{"C1 AC1", "C2 Stalls right", "C3 AC1", "C4 Lobby", "C5 Lobby"})
	}
}

// Cables from place to place whose rows name their outputs begin where they say, whatever the cabinet is called; a type
// that names the size of conductors is that of a cable. Common practice, no source.
func TestCablesFromPlaceToPlaceOnOutputs(t *testing.T) {
	for _, head := range []string{"Cable | From | To | Type | Length m | No. of speakers | W each | Amp/Output", "Kabel | von | nach | Typ | Länge m | Anz. LS | W je LS | Verst./Ausg.",
		"Câble | De | Vers | Type | Long. m | Nb HP | W par HP | Ampli/Sortie", "Cable | Desde | Hasta | Tipo | Longitud m | Nº altavoces | W c/u | Etapa/Salida",
		"Cavo | Da | A | Tipo | Lungh. m | N. diffusori | W cad. | Ampl./Uscita", "Kabel | van | naar | Type | Lengte m | Aantal LS | W per LS | Verst./Uitgang"} {
		j := wholeJob(t, "Lime baths, 100 V\n"+head+"\nC1 | Big cupboard | Pool north | XQ1 3x2,5 | 48 | 4 | 15 | V1/1\nC2 | Pool north | Pool south | XQ1 3x2,5 | 35 | 4 | 15 | V1/1\n"+
			"C3 | Big cupboard | Lobby | XQ1 3x1,5 | 18 | 4 | 3 | V1/2\nC4 | Lobby | Till | XQ1 3x1,5 | 9 | 1 | 1,5 | V1/2\nC5 | Lobby | Stairs | XQ1 3x1,5 | 12 | 2 | 1,5 | V1/2\n\nV1: 2 x 240 W")
		var from []string
		for _, k := range j.Cables {
			at := k.From.Text.Value
			if k.From.Loudspeaker != nil {
				at = "behind " + k.From.Loudspeaker.Room.Value
			}
			from = append(from, k.Name+" "+show(k.Length)+" m "+show(k.Area)+" mm² "+at)
		}
		want(t, head, from, []string{"C1 48 m 2.5 mm² Big cupboard", "C2 35 m 2.5 mm² behind Pool north", "C3 18 m 1.5 mm² Big cupboard", "C4 9 m 1.5 mm² behind Lobby", "C5 12 m 1.5 mm² behind Lobby"})
	}
}
