package ingest

import (
	"testing"
)

// What feeds the lines may be called a central unit, with a short name behind the word. Common practice, no source.
func TestCentralUnitsWithNames(t *testing.T) {
	for _, c := range []struct{ said, title, head string }{
		{"Main unit CD with outputs U1 and U2, 80 W each, 100 V line", "output", "Room | Speakers | Tap W | Control"},
		{"Zentrale CD mit den Ausgängen U1 und U2 je 80 W, 100-V-Linie", "Ausgang", "Raum | Lautsprecher Anz. | Abgriff W | Regler"},
		{"Centrale CD avec sorties U1 et U2 de 80 W chacune, ligne 100 V", "sortie", "Local | HP nb | Réglage W | Régleur"},
		{"Central CD con salidas U1 y U2 de 80 W cada una, línea de 100 V", "salida", "Sala | Altavoces cant. | Toma W | Regulador"},
		{"Centrale CD con uscite U1 e U2 da 80 W ciascuna, linea a 100 V", "uscita", "Ambiente | Diffusori n. | Presa W | Regolatore"},
		{"Centrale CD met uitgangen U1 en U2 van elk 80 W, 100 V-lijn", "uitgang", "Ruimte | Aantal luidsprekers | Aftakking W | Regelaar"},
	} {
		j := wholeJob(t, "Library of the Moor\n"+c.said+"\n|\nUPSTAIRS, "+c.title+" U1\n"+c.head+"\nHall | 4 | 3 |\nDesk | 2 | 1.5 | R1\n|\nCELLAR, "+c.title+" U2\n"+c.head+"\nStore | 6 | 6 |\nBay | 1 | 15 |")
		want(t, c.said, ratedOutputs(j), []string{"CD / U1 80 W", "CD / U2 80 W"})
	}
}

// Central units with a name and their outputs, in notes below the list. Common practice, no source.
func TestNamedCentralUnits(t *testing.T) {
	const list = "Site\n100 V\n|\nOutput | Room | Qty | Tap\nS1 | Hall | 4 | 10 W\nS2 | Gym | 4 | 6 W\n|\n"
	for _, c := range []struct {
		note string
		want []string
	}{
		{"Central CM1 de 2 salidas, 240 W en total", []string{"CM1 / S1 ? W 100 V", "CM1 / S2 ? W 100 V"}},
		{"La central CM1 tiene 2 salidas de 60 W", []string{"CM1 / S1 60 W 100 V", "CM1 / S2 60 W 100 V"}},
		{"Zentrale ZE1: 2 Ausgänge je 60 W", []string{"ZE1 / S1 60 W 100 V", "ZE1 / S2 60 W 100 V"}},
		{"Centrale sono CS1 : 2 sorties de 60 W", []string{"CS1 / S1 60 W 100 V", "CS1 / S2 60 W 100 V"}},
		{"Centrale CM1 a 2 uscite, 240 W in totale", []string{"CM1 / S1 ? W 100 V", "CM1 / S2 ? W 100 V"}},
		{"Omroepcentrale OC1 met 2 uitgangen, samen 240 W", []string{"OC1 / S1 ? W 100 V", "OC1 / S2 ? W 100 V"}},
		{"Central office C1, 240 W", []string{"S1 ? W 100 V", "S2 ? W 100 V"}},
	} {
		want(t, c.note, channelRatings(wholeJob(t, list+c.note)), c.want)
	}
}

// The rating of a named unit of all its outputs together is that of its frame.
func TestNamedUnitTogether(t *testing.T) {
	j := wholeJob(t, "Site\n100 V\n|\nOutput | Room | Qty | Tap\nS1 | Hall | 4 | 10 W\nS2 | Gym | 4 | 6 W\n|\nCentral CM1 de 2 salidas, 240 W en total")
	want(t, "frames", frames(j), []string{`"CM1" 240 W 2 outputs`})
}
