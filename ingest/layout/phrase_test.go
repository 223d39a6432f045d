package layout

import (
	"strings"
	"testing"
)

// Sentences of bills and notes in six languages, from memory of the trade.
func TestPhraseOf(t *testing.T) {
	for _, tt := range []struct {
		text string
		want phrase // device left out
	}{
		{"Ceiling speaker 8\", 70V, tapped at 2.5W, zone 1 (lobby)", phrase{set: "2.5 W", zone: "zone 1", room: "lobby"}},
		{"Column loudspeaker 20 W, set to 10 W, in the orchard; amplifier B, output 2", phrase{set: "10 W", watts: "20 W", room: "orchard", amp: "B", output: "2"}},
		{"Horn 15 W, at full power, to service yard", phrase{watts: "15 W", full: true, room: "service yard"}},
		{"Ditto, but set to 1.5 W, in corridor", phrase{same: true, set: "1.5 W", room: "corridor"}},
		{"4 no. wall cabinets tapped 6W", phrase{count: "4", set: "6 W"}},
		{"6 ceilings at 3W", phrase{count: "6", set: "3 W", watts: "3 W"}},
		{"6 x 10 W Säule", phrase{count: "6", watts: "10 W"}},
		{"12/8/4/2W réglé 8", phrase{}}, // a list of taps counts nothing and is no rating
		{"Deckenlautsprecher 6/3/1,5 W, eingestellt auf 3 W", phrase{set: "3 W"}},
		{"wie vor, jedoch auf 20 W geschaltet, am Steg (Linie 2)", phrase{same: true, set: "20 W", line: "Linie 2", room: "Steg"}},
		{"HP de plafond 6 W, réglé sur 1,5 W, dans les vestiaires", phrase{set: "1,5 W", watts: "6 W", room: "vestiaires"}},
		{"Difusor de techo 6 W, puesto a 3 W, en galería, salida 1 de la etapa MG", phrase{set: "3 W", watts: "6 W", room: "galería", output: "1", amp: "MG"}},
		{"Diffusore 10 W tarato a 5 W, nella serra, uscita 3", phrase{set: "5 W", watts: "10 W", room: "serra", output: "3"}},
		{"Luidspreker 6 W, ingesteld op 3 W, in de kas, lijn 4", phrase{set: "3 W", watts: "6 W", room: "kas", line: "lijn 4"}},
		{"Deckenlautsprecher 6 W/100 V, Anzapfung 3 W, Zone Foyer", phrase{set: "3 W", watts: "6 W", zone: "Foyer"}},
		{"HP plafond 6 W branché sur 3 W, zone : Serre nord", phrase{set: "3 W", watts: "6 W", zone: "Serre nord"}},
		{"Horn 15 W, zone Dock, in the north shed", phrase{watts: "15 W", zone: "Dock", room: "north shed"}},
		{"Testing and commissioning", phrase{}},
	} {
		got := phraseOf(tt.text)
		got.device = tt.want.device
		if got != tt.want {
			t.Errorf("%q:\n got %+v\nwant %+v", tt.text, got, tt.want)
		}
	}
}

// What a sentence says stands in it.
func FuzzPhraseOf(f *testing.F) {
	f.Add("Ceiling loudspeaker 6 W, set to 3 W, in the hall; amplifier A, output 1")
	f.Add("6 x 10 W Säule + 2 x 3 W Decke")
	f.Fuzz(func(t *testing.T, s string) {
		p := phraseOf(s)
		for _, part := range []string{p.count, p.room, p.amp, p.output, p.zone, p.line} {
			if !strings.Contains(s, part) {
				t.Errorf("%q says %q", s, part)
			}
		}
	})
}
