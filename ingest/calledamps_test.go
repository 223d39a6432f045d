package ingest

import "testing"

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
