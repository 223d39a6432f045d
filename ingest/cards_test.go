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

// A card for each amplifier with the place in its title, and a key with its value in each of the lines above the
// header. Common practice, no source.
func TestCardsWithAKeyALine(t *testing.T) {
	for _, c := range []struct{ card, amp, cable, header string }{
		{"CARD", "Amplifier", "Cable", "Place | Speakers | Tap W | Control"},
		{"Blatt", "Verstärker", "Kabel", "Raum | Lautsprecher | Stufe W | Regler"},
		{"FICHE", "Amplificateur", "Câble", "Emplacement | HP | Prise | Régleur"},
		{"Ficha", "Etapa", "Cable", "Lugar | Altavoces | Toma W | Atenuador"},
		{"Scheda", "Amplificatore", "Cavo", "Locale | Diffusori | Presa W | Attenuatore"},
		{"Kaart", "Versterker", "Kabel", "Plaats | Luidsprekers | Stand W | Regelaar"},
	} {
		j := wholeJob(t, strings.NewReplacer("CARD", c.card, "AMP", c.amp, "CABLE", c.cable, "HEADER", c.header).Replace(`
Grebe station, all at 100 V
|
CARD 1 | Platforms
AMP | AQ1, 240 W
CABLE | 2 x 2.5 mm², 180 m
HEADER
Track 1 | 8 | 10 W |
Track 2 | 8 | 10 W |
|
CARD 2 | Main building
AMP | AQ2, 120 W
CABLE | 2 x 1.5 mm², 95 m
HEADER
Hall | 6 | 6 W |
Desks | 3 | 1.5 W | RG2 (12 W)
Left luggage | 1 | 3 W |
`))
		want(t, c.card, describe(j), []string{"8 x 10 W zone Platforms channel AQ1 / 1", "8 x 10 W zone Platforms channel AQ1 / 1", "6 x 6 W zone Main building channel AQ2 / 1",
			"3 x 1.5 W zone Main building control RG2 channel AQ2 / 1", "1 x 3 W zone Main building channel AQ2 / 1"})
		want(t, c.card, ratedOutputs(j), []string{"AQ1 / 1 240 W", "AQ2 / 1 120 W"})
	}
}
