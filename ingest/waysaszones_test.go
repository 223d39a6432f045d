package ingest

import (
	"strings"
	"testing"
)

// Articles of bills that call the outputs of an amplifier by the zones hang these on them, and the cable of each
// zone is that of its output. Common practice, no source.
func TestOutputsCalledByTheZones(t *testing.T) {
	for _, c := range []struct{ heads, loudspeaker, amp, cable string }{
		{"No | Item | Room | Unit | Qty | Tap (W) | Zone", "Ceiling loudspeaker", "Amplifier AMP1, 3 x 60 W, outputs Z1, Z2 and Z3", "Cable"},
		{"Pos | Beschreibung | Raum | Einheit | Menge | Anzapfung (W) | Zone", "Deckenlautsprecher", "Endverstärker AMP1, 3 x 60 W, Ausgänge Z1, Z2 und Z3", "Kabel"},
		{"N° | Libellé | Local | U | Qté | Réglage (W) | Zone", "Haut-parleur encastré", "Amplificateur AMP1, 3 x 60 W, sorties Z1, Z2 et Z3", "Câble"},
		{"N.º | Descripción | Sala | Ud | Cantidad | Toma (W) | Zona", "Altavoz de techo", "Amplificador AMP1, 3 x 60 W, salidas Z1, Z2 y Z3", "Cable"},
		{"N. | Descrizione | Locale | U.M. | Quantità | Presa (W) | Zona", "Diffusore da incasso", "Amplificatore AMP1, 3 x 60 W, uscite Z1, Z2 e Z3", "Cavo"},
		{"Nr | Omschrijving | Lokaal | Eenh | Aantal | Tap (W) | Zone", "Inbouwluidspreker", "Versterker AMP1, 3 x 60 W, uitgangen Z1, Z2 en Z3", "Kabel"},
	} {
		list := "Kiosk 100 V\n|\n" + c.heads + "\n1 | " + c.loudspeaker + " | A | pc | 8 | 3 | Z1\n2 | " + c.loudspeaker + " | B | pc | 4 | 6 | Z2\n3 | " + c.loudspeaker + " | C | pc | 2 | 6 | Z3\n"
		j := wholeJob(t, list+"4 | "+c.amp+" | D | pc | 1 | |\n5 | "+c.cable+" 2 x 1,5 mm² | | m | 65 | | Z1\n6 | "+c.cable+" 2 x 2,5 mm² | | m | 40 | | Z2")
		want(t, c.amp, describe(j), []string{"8 x 3 W zone Z1 channel AMP1 / Z1", "4 x 6 W zone Z2 channel AMP1 / Z2", "2 x 6 W zone Z3 channel AMP1 / Z3"})
		want(t, c.amp, channelRatings(j), []string{"AMP1 / Z1 60 W 100 V", "AMP1 / Z2 60 W 100 V", "AMP1 / Z3 60 W 100 V"})
		var cables []string
		for _, k := range j.Cables {
			cables = append(cables, k.Zone.Name+" "+show(k.Length)+" "+show(k.Area))
		}
		want(t, c.cable, cables, []string{"Z1 65 1.5", "Z2 40 2.5"})
		j = wholeJob(t, list+"|\n"+c.amp+"\n"+strings.ReplaceAll(c.amp, "AMP1", "AMP2"))
		for _, l := range j.Loudspeakers {
			if l.Channel != nil {
				t.Errorf("%s, of two: %s", c.amp, l.Channel.Label())
			}
		}
	}
}
