package ingest

import (
	"strings"
	"testing"
)

// A note that names an output and of which nothing came is asked about where loudspeakers hang nowhere, and only there.
// Common practice, no source.
func TestNotesOfOutputsThatSayNothing(t *testing.T) {
	asked := func(text string) bool {
		for _, q := range wholeJob(t, text).Questions {
			if q.Field == "channel" && strings.Contains(q.Text, "speaks of an output") {
				return true
			}
		}
		return false
	}
	for _, c := range []struct{ head, note string }{
		{"Room | Speakers | Tap | Amp | Output", "Mind the patching behind output 3 when the garden opens"},
		{"Raum | Lautsprecher | Abgriff | Verstärker | Ausgang", "Achtung bei Ausgang 3, wenn der Garten öffnet"},
		{"Local | Haut-parleurs | Prise | Ampli | Sortie", "Attention à la sortie 3 quand le jardin ouvre"},
		{"Sala | Altavoces | Toma | Amplificador | Salida", "Cuidado con la salida 3 cuando abre el jardín"},
		{"Locale | Diffusori | Presa | Amplificatore | Uscita", "Attenzione alla uscita 3 quando apre il giardino"},
		{"Ruimte | Luidsprekers | Stand | Versterker | Uitgang", "Let op bij uitgang 3 als de tuin opengaat"},
	} {
		if !asked("Fern Garden 100 V\n|\n" + c.head + "\nHall | 4 | 6 W | |\nKiln | 2 | 3 W | |\nPorch | 2 | 3 W | |\n|\n" + c.note) {
			t.Errorf("%s: not asked", c.note)
		}
		if asked("Fern Garden 100 V\n|\n" + c.head + "\nHall | 4 | 6 W | A1 | 1\nKiln | 2 | 3 W | A1 | 2\nPorch | 2 | 3 W | A1 | 2\n|\n" + c.note) {
			t.Errorf("%s: asked though everything hangs somewhere", c.note)
		}
	}
}
