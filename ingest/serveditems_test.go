package ingest

import "testing"

// Controls that name the loudspeakers behind them by the numbers these have in the list, beside a rack whose amplifiers
// are called by a word and a code, with a panel among them. Common practice, no source.
func TestControlsForNumberedLoudspeakers(t *testing.T) {
	for _, c := range []struct{ list, rack, amp, panel, controls string }{
		{"No. | Zone | Room | Tap 100 V", "U | Device | Zone | Power", "Power amplifier", "Monitoring panel", "Control | Behind | for speaker no. | Power"},
		{"Nr. | Zone | Raum | Leistungsstufe 100 V", "HE | Gerät | Zone | Leistung", "Leistungsverstärker", "Überwachungsfeld", "Steller | hinter | für Lautsprecher Nr. | Leistung"},
		{"N° | Zone | Local | Prise 100 V", "U | Appareil | Zone | Puissance", "Amplificateur", "Panneau de surveillance", "Atténuateur | Local | pour HP n° | Puissance"},
		{"Nº | Zona | Sala | Toma 100 V", "U | Equipo | Zona | Potencia", "Amplificador", "Panel de supervisión", "Atenuador | Sala | altavoces nº | Potencia"},
		{"N. | Zona | Locale | Presa 100 V", "U | Apparecchio | Zona | Potenza", "Amplificatore", "Pannello di supervisione", "Attenuatore | Locale | per diffusore n. | Potenza"},
		{"Nr. | Zone | Ruimte | Aftakking 100 V", "HE | Apparaat | Zone | Vermogen", "Eindversterker", "Bewakingspaneel", "Regelaar | Ruimte | voor luidspreker nr. | Vermogen"},
	} {
		j := wholeJob(t, "## A\n"+c.list+"\n01 | Stage | Left | 10 W\n02 | Stage | Right | 10 W\n03 | Back | Choir | 6 W\n04 | Back | Make-up | 3 W\n05 | Back | Corridor | 3 W\n"+
			"## B\n"+c.rack+"\n1-3 | "+c.amp+" LV1 | Stage | 120 W\n4-6 | "+c.amp+" LV2 | Back | 60 W\n7 | "+c.panel+" | |\n"+
			"## C\n"+c.controls+"\nG1 | Choir | 3 | 12 W\nG2 | Make-up | 4 | 6 W\n")
		want(t, c.list, describe(j), []string{"1 x 10 W at 100 V zone Stage channel LV1 / 1", "1 x 10 W at 100 V zone Stage channel LV1 / 1", "1 x 6 W at 100 V zone Back control G1 channel LV2 / 1",
			"1 x 3 W at 100 V zone Back control G2 channel LV2 / 1", "1 x 3 W at 100 V zone Back channel LV2 / 1"})
		want(t, c.rack, channelRatings(j), []string{"LV1 / 1 120 W ? V", "LV2 / 1 60 W ? V"})
	}
}
