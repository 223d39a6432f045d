package ingest

import (
	"strings"
	"testing"
)

// Cards beside and below each other, keys and values over the loudspeakers of a line. Common practice, no source.
func TestCardsBesideEachOther(t *testing.T) {
	for _, w := range []string{
		"feeds|amp|amp size|volume|none|speaker|set to|output|this output", "Bereich|Verstärker|Leistung|Regler|ohne|Lautsprecher|Stufe|Ausgang|dieser Ausgang", "alimente|ampli|puissance|atténuateur|sans|haut-parleur|prise|sortie|cette sortie",
		"alimenta|etapa|potencia|atenuador|sin|altavoz|toma|salida|esta salida", "alimenta|amplificatore|potenza|regolatore|nessuno|diffusore|presa|uscita|questa uscita", "voedt|versterker|vermogen|regelaar|geen|luidspreker|stand|uitgang|deze uitgang",
	} {
		f := strings.Split(w, "|")
		r := strings.NewReplacer("FEEDS", f[0], "AMP", f[1], "SIZE", f[2], "VOL", f[3], "NONE", f[4], "SPK", f[5], "SET", f[6], "OUT", f[7], "THIS", f[8])
		j := wholeJob(t, r.Replace(`
CARD 1 | | | CARD 2
FEEDS | Rink, west side | | FEEDS | Stands
AMP | A1 | | AMP | A2
SIZE | 240 W | | SIZE | 120 W
VOL | NONE | | VOL | VC1 (60 W)
SPK | SET | | SPK | SET
Horn W1 | 15 W | | Box S1 | 6 W
Horn W2 | 15 W | | Box S2 | 6 W
 | | | Box S3 | 3 W
|
CARD 3 | | | CARD 4
FEEDS | Skate hire | | FEEDS | Lockers
AMP | A4 OUT 1 | | AMP | A4 OUT 2
SIZE | 120 W THIS | | SIZE | 120 W THIS
VOL | VC2 (24 W) | | VOL | NONE
SPK | SET | | SPK | SET
Dome H1 | 3 W | | Dome C1 | 1.5 W
Dome H2 | 3 W | | Dome C2 | 1.5 W
|
100 V
`))
		want(t, w, describe(j), []string{"Horn W1 1 x 15 W zone Rink, west side channel A1 / 1", "Horn W2 1 x 15 W zone Rink, west side channel A1 / 1", "Dome H1 1 x 3 W zone Skate hire control VC2 channel A4 / 1", "Dome H2 1 x 3 W zone Skate hire control VC2 channel A4 / 1",
			"Box S1 1 x 6 W zone Stands control VC1 channel A2 / 1", "Box S2 1 x 6 W zone Stands control VC1 channel A2 / 1", "Box S3 1 x 3 W zone Stands control VC1 channel A2 / 1", "Dome C1 1 x 1.5 W zone Lockers channel A4 / 2", "Dome C2 1 x 1.5 W zone Lockers channel A4 / 2"})
		want(t, w, ratedOutputs(j), []string{"A1 / 1 240 W", "A4 / 1 120 W", "A2 / 1 120 W", "A4 / 2 120 W"})
		if got := controlsOf(j); !strings.Contains(got, "VC1 60 W x3") || !strings.Contains(got, "VC2 24 W x2") {
			t.Errorf("%s: controls %s", w, got)
		}
	}
}

// Cards below each other, each with the place as its title. Common practice, no source.
func TestCardsUnderPlaces(t *testing.T) {
	j := wholeJob(t, `
STAND
amp | PA1 output 1
rating | 60 W
control | VC1 (36 W)
speaker | tap
Horn S1 | 6 W
Horn S2 | 6 W
|
SHOP
amp | PA1 output 2
rating | 60 W
control | none
speaker | tap
Box 1 | 3 W
Box 2 | 3 W
|
100 V
`)
	want(t, "places", describe(j), []string{"Horn S1 1 x 6 W zone STAND control VC1 channel PA1 / 1", "Horn S2 1 x 6 W zone STAND control VC1 channel PA1 / 1", "Box 1 1 x 3 W zone SHOP channel PA1 / 2", "Box 2 1 x 3 W zone SHOP channel PA1 / 2"})
	want(t, "rated", ratedOutputs(j), []string{"PA1 / 1 60 W", "PA1 / 2 60 W"})
}
