package ingest

import "testing"

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
