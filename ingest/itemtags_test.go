package ingest

import (
	"strings"
	"testing"
)

// A bill numbers its items through with the letters of its section; amplifiers and controls have names of their own, and controls say
// which items they are for. Common practice, no source.
func TestItemsNumberedWithLetters(t *testing.T) {
	for _, w := range []string{
		"Item|Description|Qty|Output|Amplifier PA1, two outputs, each 125 W at 100 V|Horn loudspeaker, yard, tapped at 10 W|Ceiling loudspeaker, hall, tapped at 6 W|Ditto, showers, tapped at 3 W|Attenuator VC1, 36 W, for item W3",
		"Pos.|Beschreibung|Menge|Ausgang|Verstärker PA1, zwei Ausgänge, je 125 W an 100 V|Hornlautsprecher, Hof, Abgriff 10 W|Deckenlautsprecher, Halle, Abgriff 6 W|dito, Flur, Abgriff 3 W|Lautstärkeregler VC1, 36 W, für Pos. W3",
		"Poste|Désignation|Qté|Sortie|Amplificateur PA1, deux sorties de 125 W chacune|Haut-parleur à pavillon, cour, réglé à 10 W|Haut-parleur plafond, hall, réglé à 6 W|Idem, couloir, réglé à 3 W|Atténuateur VC1, 36 W, pour poste W3",
		"Voce|Descrizione|Quantità|Uscita|Amplificatore PA1, due uscite da 125 W ciascuna|Tromba, cortile, presa 10 W|Diffusore a soffitto, sala, presa 6 W|Idem, corridoio, presa 3 W|Attenuatore VC1, 36 W, per voce W3",
	} {
		f := strings.Split(w, "|")
		j := wholeJob(t, strings.Join([]string{"Elmfield baths, 100 V", "|", f[0] + " | " + f[1] + " | " + f[2], "W1 | " + f[4] + " | 1", "| " + f[3] + " 1 - Yard",
			"W2 | " + f[5] + " | 6", "| " + f[3] + " 2 - Hall", "W3 | " + f[6] + " | 4", "W4 | " + f[7] + " | 5", "W5 | " + f[8] + " | 1"}, "\n"))
		want(t, w, ratedOutputs(j), []string{"PA1 / 2 125 W", "PA1 / 1 125 W"})
		if tag := j.Loudspeakers[0].Tag.Value; f[0] == "Item" && tag != "W2" {
			t.Errorf("tag %q", tag)
		}
		for _, l := range j.Loudspeakers {
			l.Tag.Value = ""
		}
		want(t, w, describe(j), []string{"6 x 10 W zone Yard channel PA1 / 1", "4 x 6 W zone Hall control VC1 channel PA1 / 2", "5 x 3 W zone Hall channel PA1 / 2"})
	}
	// amplifiers without names of their own are called by their tags
	j := wholeJob(t, "Elmfield baths, 100 V\n|\nItem | Description | Qty\nW1 | Amplifier, two outputs, each 125 W at 100 V | 1\n| Output 1 - Yard\nW2 | Horn loudspeaker, tapped at 10 W | 6\n| Output 2 - Hall\nW3 | Ceiling loudspeaker, tapped at 6 W | 4")
	want(t, "no names", ratedOutputs(j), []string{"W1 / 1 125 W", "W1 / 2 125 W"})
}
