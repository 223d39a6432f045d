package ingest

import "testing"

// Floors or parts of a building head the rows of a short list and name the output that feeds them, in brackets or
// behind a mark; a note alone speaks of the amplifier. Common practice, no source.
func TestTitlesOfPlacesThatNameOutputs(t *testing.T) {
	for _, c := range []struct{ note, head, first, second string }{
		{"The amplifier is in the lodge and has 2 outputs at 100 V, 80 W each.", "Room | Speakers | Watts each | Remarks", "Ground floor (output 1)", "Basement (output 2)"},
		{"Der Verstärker steht beim Pförtner und hat 2 Ausgänge mit 100 V, je 80 W.", "Raum | Lautsprecher | Watt je Stück | Bemerkungen", "Erdgeschoss (Ausgang 1)", "Keller (Ausgang 2)"},
		{"L'amplificateur est à la loge et a 2 sorties en 100 V, de 80 W chacune.", "Salle | Haut-parleurs | Watts chacun | Observations", "Rez-de-chaussée (sortie 1)", "Sous-sol (sortie 2)"},
		{"El amplificador está en conserjería y tiene 2 salidas a 100 V, de 80 W cada una.", "Sala | Altavoces | Vatios cada uno | Observaciones", "Planta baja (salida 1)", "Sótano (salida 2)"},
		{"L'amplificatore è in portineria e ha 2 uscite a 100 V, da 80 W ciascuna.", "Sala | Diffusori | Watt ciascuno | Osservazioni", "Piano terra (uscita 1)", "Cantina (uscita 2)"},
		{"De versterker staat in de loge en heeft 2 uitgangen op 100 V, van 80 W elk.", "Zaal | Luidsprekers | Watt per stuk | Opmerkingen", "Gelijkvloers (uitgang 1)", "Kelder (uitgang 2)"},
		{"The amplifier has 2 outputs at 100 V, 80 W each.", "Room | Speakers | Watts each | Remarks", "Old wing - output 1", "New wing - output 2"},
	} {
		j := wholeJob(t, "Slate museum\n"+c.note+"\n|\n"+c.head+"\n"+c.first+"\nFoyer | 2 | 3 |\nDesk | 1 | 1.5 |\n"+c.second+"\nStore | 2 | 10 |\nWorkshop | 4 | 6 |")
		want(t, c.first, ratedOutputs(j), []string{"1 80 W", "2 80 W"})
		var got []string
		for _, l := range j.Loudspeakers {
			got = append(got, show(l.Count)+" x "+show(l.Tap)+" "+l.Room.Value+" "+channelID(l.Channel.Name))
		}
		want(t, c.first, got, []string{"2 x 3 Foyer 1", "1 x 1.5 Desk 1", "2 x 10 Store 2", "4 x 6 Workshop 2"})
	}
}

// A room that a list of rooms names with its output, and nothing else, is a room of which nothing else is known.
func TestRoomsThatNameOutputsAreNoTitles(t *testing.T) {
	j := wholeJob(t, "Slate museum, 100 V\n|\nRoom | Speakers | Watts each | Remarks\nFoyer (output 1) | 2 | 3 |\nDesk (output 1) | |  |\nStore (output 2) | 2 | 10 |\nLoft (output 2) | 2 | 10 |")
	if len(j.Loudspeakers) < 3 || j.Loudspeakers[1].Room.Value == "Store" {
		t.Errorf("loudspeakers %v", describe(j))
	}
}
