package ingest

import (
	"strings"
	"testing"
)

// A card for each amplifier, its rating behind a word beside its name. Common practice, no source.
func TestCardsOfAmplifiers(t *testing.T) {
	for _, c := range []struct{ amp, rating, header string }{
		{"AMP", "Rating", "Out | Feeds | Speakers | Tap W"},
		{"Verstärker", "Leistung", "Ausgang | Raum | Stk. | W"},
		{"Ampli", "Puissance", "Sortie | Local | Nombre | Prise W"},
		{"Etapa", "Potencia", "Salida | Sala | Cantidad | Toma W"},
		{"Ampli", "Potenza", "Uscita | Locale | Q.tà | Presa W"},
		{"Versterker", "Vermogen", "Uitgang | Ruimte | Aantal | Stand W"},
	} {
		j := wholeJob(t, strings.NewReplacer("AMP", c.amp, "RATING", c.rating, "HEADER", c.header).Replace(`
Grebe boat hall
all at 100 V
|
AMP 1 | RATING | 4 x 60 W
HEADER
1 | Bays north | 4 | 10
2 | Bays south | 4 | 10
3 | Workshop | 3 | 6
|
AMP 2 | RATING | 2 x 90 W
HEADER
1 | Training | 8 | 6
2 | Changing | 6 | 3
|
AMP 3 | RATING | 1 x 120 W
HEADER
1 | Landing | 4 | 15
1 | Slipway | 2 | 15
`))
		want(t, c.amp+" "+c.rating, describe(j), []string{"4 x 10 W zone Bays north channel " + c.amp + " 1 / 1", "4 x 10 W zone Bays south channel " + c.amp + " 1 / 2", "3 x 6 W zone Workshop channel " + c.amp + " 1 / 3",
			"8 x 6 W zone Training channel " + c.amp + " 2 / 1", "6 x 3 W zone Changing channel " + c.amp + " 2 / 2", "4 x 15 W zone Landing channel " + c.amp + " 3 / 1", "2 x 15 W zone Slipway channel " + c.amp + " 3 / 1"})
		want(t, c.amp+" rated", ratedOutputs(j), []string{c.amp + " 1 / 1 60 W", c.amp + " 1 / 2 60 W", c.amp + " 1 / 3 60 W", c.amp + " 2 / 1 90 W", c.amp + " 2 / 2 90 W", c.amp + " 3 / 1 120 W", c.amp + " 1 / 4 60 W"})
	}
}
