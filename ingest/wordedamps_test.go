package ingest

import "testing"

// Titles of sections name a place, an amplifier by words alone, its output and what that gives. Common practice, no source.
func TestAmplifiersByWordsInTitles(t *testing.T) {
	for _, c := range []struct{ name, head, amp, output, ceiling string }{
		{"English", "Room | Speakers | Tap", "call amp", "output", "Studios"},
		{"German", "Raum | Lautsprecher | Abgriff", "Verstärker der Bühne", "Ausgang", "Garderoben"},
		{"French", "Local | HP | Prise", "ampli de scène", "sortie", "Loges"},
		{"Spanish", "Sala | Altavoces | Toma", "amplificador de escenario", "salida", "Camerinos"},
		{"Italian", "Locale | Diffusori | Presa", "amplificatore di scena", "uscita", "Camerini"},
		{"Dutch", "Ruimte | Luidsprekers | Stand", "versterker van het toneel", "uitgang", "Kleedkamers"},
	} {
		for _, title := range []func(place, output, watts string) string{
			func(place, output, watts string) string {
				return place + ": " + c.amp + ", " + output + " (" + watts + ")"
			},
			func(place, output, watts string) string {
				return place + " (" + c.amp + ", " + output + ", " + watts + ")"
			},
		} {
			j := wholeJob(t, "Slate Theatre, 100 V\n|\n"+title(c.ceiling, c.output+" 1", "60 W")+"\n"+c.head+"\nST 1 | 1 | 3 W\nST 2 | 4 | 1.5 W\n|\n"+
				title("Atelier", c.output+" 2", "120 W")+"\n"+c.head+"\nFly | 2 | 6 W\nDock | 1 | 10 W")
			want(t, c.name, describe(j), []string{"1 x 3 W zone ST 1 channel " + c.amp + " / 1", "4 x 1.5 W zone ST 2 channel " + c.amp + " / 1",
				"2 x 6 W zone Fly channel " + c.amp + " / 2", "1 x 10 W zone Dock channel " + c.amp + " / 2"})
			want(t, c.name, ratedOutputs(j), []string{c.amp + " / 1 60 W", c.amp + " / 2 120 W"})
		}
	}
}
