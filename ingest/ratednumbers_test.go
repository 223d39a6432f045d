package ingest

import (
	"strings"
	"testing"
)

// Bills may number their amplifiers with a comma between the number and what each gives, and rate the controls of a zone
// without names, each for its room. Common practice, no source.
func TestNumbersOfAmplifiersAreNoRatings(t *testing.T) {
	for _, c := range []struct{ head, amp, speaker, control string }{
		{"Item | Description | Room | Zone | Tap | Unit | Qty", "Amplifier V%, ", "Ceiling loudspeaker", "Volume control "},
		{"Pos. | Beschreibung | Raum | Zone | Abgriff | Einh. | Menge", "Verstärker V%, ", "Einbaulautsprecher", "Lautstärkeregler "},
		{"Poste | Désignation | Local | Zone | Réglage | Unité | Qté", "Amplificateur V%, ", "Haut-parleur encastré", "Régleur de volume "},
		{"Partida | Descripción | Sala | Zona | Toma | Ud. | Cantidad", "Amplificador V%, ", "Altavoz empotrado", "Regulador de volumen "},
		{"Voce | Descrizione | Locale | Zona | Presa | U.M. | Quantità", "Amplificatore V%, ", "Diffusore da incasso", "Regolatore di volume "},
		{"Post | Omschrijving | Lokaal | Zone | Aftakking | Eenh. | VH", "Versterker V%, ", "Inbouwluidspreker", "Volumeregelaar "},
	} {
		amp := func(n string) string { return strings.Replace(c.amp, "%", n, 1) }
		j := wholeJob(t, "Library of the Moor, public address 100 V\n|\n"+c.head+
			"\n27.1 | "+amp("1")+"120 W | Rack | 1 | | st | 1\n27.2 | "+amp("2")+"60 W | Rack | 2 | | st | 1"+
			"\n27.10 | "+c.speaker+" | Hall | 1 | 6 W | st | 4\n27.11 | "+c.speaker+" | Desk | 1 | 3 W | st | 2"+
			"\n27.12 | "+c.speaker+" | Youth | 2 | 3 W | st | 8\n27.13 | "+c.speaker+" | Corner | 2 | 1.5 W | st | 2\n27.14 | "+c.speaker+" | Staff | 2 | 1.5 W | st | 1"+
			"\n27.20 | "+c.control+"12 W | Corner | 2 | | st | 1\n27.21 | "+c.control+"6 W | Staff | 2 | | st | 1")
		want(t, c.head, ratedOutputs(j), []string{"V1 / 1 120 W", "V2 / 1 60 W"})
		want(t, c.head, describe(j), []string{"4 x 6 W zone 1 channel V1 / 1", "2 x 3 W zone 1 channel V1 / 1", "8 x 3 W zone 2 channel V2 / 1",
			"2 x 1.5 W zone 2 control 27.20 channel V2 / 1", "1 x 1.5 W zone 2 control 27.21 channel V2 / 1"})
	}
}
