package ingest

import "testing"

// A plain list calls its amplifiers by a word and where they stand, below a header that says little, with their
// rating where they are first named. Common practice, no source.
func TestAmplifiersOfPlainLists(t *testing.T) {
	for _, c := range []struct{ name, head, left, right string }{
		{"English", "Which cabinet | Room | Qty | W each", "left amplifier", "right amplifier"},
		{"German", "Welcher Kasten | Raum | Anzahl | Watt je Stück", "linker Verstärker", "rechter Verstärker"},
		{"French", "Quel coffret | Local | Nombre | Watts pièce", "ampli de gauche", "ampli de droite"},
		{"Spanish", "Qué caja | Sala | Cuántos | Vatios cada uno", "amplificador izquierdo", "amplificador derecho"},
		{"Italian", "Quale cassetta | Locale | Quanti | Watt ciascuno", "amplificatore sinistro", "amplificatore destro"},
		{"Dutch", "Welke kast | Ruimte | Hoeveel | Watt per stuk", "linkse versterker", "rechtse versterker"},
	} {
		j := wholeJob(t, "\nFern library, loudspeakers, 100 V\n|\n"+c.head+"\n"+c.left+" (120 W) | Atrium | 4 | 6\n"+c.left+" | Forum | 3 | 3\n"+c.right+" (240 W) | Studio | 3 | 15\n"+c.right+" | Archive | 2 | 10")
		want(t, c.name, describe(j), []string{"4 x 6 W zone Atrium channel " + c.left + " / 1", "3 x 3 W zone Forum channel " + c.left + " / 1",
			"3 x 15 W zone Studio channel " + c.right + " / 1", "2 x 10 W zone Archive channel " + c.right + " / 1"})
		want(t, c.name, channelRatings(j), []string{c.left + " / 1 120 W 100 V", c.right + " / 1 240 W 100 V"})
	}
}
