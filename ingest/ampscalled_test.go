package ingest

import (
	"testing"
)

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

// What cells call amplifiers are amplifiers below any header, with ditto marks too; a note rates them. Common
// practice, no source.
func TestCellsThatCallAmplifiers(t *testing.T) {
	for _, c := range []struct{ head, word, one, two, note string }{
		{"No | Where | What | Tap | Slung off", "horn", "amp stables", "amp arena", "amp stables = 120 W, amp arena = 240 W, both used on the 100 V terminals"},
		{"Nr. | Wo | Was | Stufe | baumelt an", "Horn", "Verstärker Stall", "Verstärker Reithalle", "Verstärker Stall = 120 W, Verstärker Reithalle = 240 W, beide an den 100 V-Klemmen"},
		{"n° | où | quoi | prise | pendu à", "trompette", "ampli écuries", "ampli manège", "ampli écuries = 120 W, ampli manège = 240 W, les deux sur la borne 100 V"},
		{"nº | dónde | qué | toma | colgado de", "bocina", "ampli cuadras", "ampli picadero", "ampli cuadras = 120 W, ampli picadero = 240 W, los dos en el borne 100 V"},
		{"n° | dove | che tipo | presa | appeso a", "tromba", "ampli stalle", "ampli maneggio", "ampli stalle = 120 W, ampli maneggio = 240 W, tutti e due usati sul morsetto 100 V"},
		{"nr | waar | wat | aftakking | bungelt aan", "hoorn", "versterker stallen", "versterker rijhal", "versterker stallen = 120 W, versterker rijhal = 240 W, allebei op de 100 V-klem"},
	} {
		j := wholeJob(t, c.head+"\n1 | North | "+c.word+" | 7,5 W | "+c.one+"\n2 | South | "+c.word+" | 15 W | \"\n3 | East | "+c.word+" | 30 W | "+c.two+"\n4 | West | "+c.word+" | 30 W | \"\n5 | Office | "+c.word+" | 15 W | "+c.one+"\n|\n"+c.note)
		var got []string
		for _, ch := range j.Channels {
			got = append(got, ch.Amplifier.Name+" "+show(ch.Rated)+" W")
		}
		want(t, c.head, got, []string{c.one + " 120 W", c.two + " 240 W"})
	}
}
