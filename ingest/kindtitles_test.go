package ingest

import "testing"

// Bills head amplifiers and controls with their word; the rows below begin with their codes and have no such word. An
// amplifier may be for several places. Common practice, no source.
func TestAmplifiersBelowTheirTitle(t *testing.T) {
	for _, c := range []struct{ head, speakers, ceiling, horn, amps, a, b, controls, control string }{
		{"Item | Description | Unit | Qty | Price", "Loudspeakers", "Ceiling loudspeaker, tapped at 3 W", "Horn loudspeaker, tapped at 10 W", "Amplifiers",
			"AMP1, 1 output 240 W, for Yard and Gate", "AMP2, 1 output 60 W, for Lobby, Study and Store", "Controls", "Attenuator VC1, 20 W - Study"},
		{"Pos. | Beschreibung | Einheit | Menge | Preis", "Lautsprecher", "Deckenlautsprecher, eingestellt auf 3 W", "Hornlautsprecher, eingestellt auf 10 W", "Verstärker",
			"AMP1, 1 Ausgang 240 W, für Yard und Gate", "AMP2, 1 Ausgang 60 W, für Lobby, Study und Store", "Regler", "Lautstärkeregler VC1, 20 W - Study"},
		{"Art. | Désignation | U | Qté | Prix", "Haut-parleurs", "HP encastré, réglé à 3 W", "Projecteur de son, réglé à 10 W", "Amplificateurs",
			"AMP1, 1 sortie 240 W, pour Yard et Gate", "AMP2, 1 sortie 60 W, pour Lobby, Study et Store", "Commandes", "Atténuateur VC1, 20 W - Study"},
		{"Código | Descripción | Ud | Cantidad | Precio", "Altavoces", "Altavoz de techo, conectado a 3 W", "Altavoz de bocina, conectado a 10 W", "Amplificadores",
			"AMP1, 1 salida 240 W, para Yard y Gate", "AMP2, 1 salida 60 W, para Lobby, Study y Store", "Atenuadores", "Atenuador VC1, 20 W - Study"},
		{"Art. | Descrizione | U.M. | Quantità | Prezzo", "Diffusori", "Diffusore da soffitto, presa 3 W", "Diffusore a tromba, presa 10 W", "Amplificatori",
			"AMP1, 1 uscita 240 W, per Yard e Gate", "AMP2, 1 uscita 60 W, per Lobby, Study e Store", "Regolatori", "Attenuatore VC1, 20 W - Study"},
		{"Post | Omschrijving | Eenheid | Aantal | Prijs", "Luidsprekers", "Plafondluidspreker, ingesteld op 3 W", "Hoornluidspreker, ingesteld op 10 W", "Versterkers",
			"AMP1, 1 uitgang 240 W, voor Yard en Gate", "AMP2, 1 uitgang 60 W, voor Lobby, Study en Store", "Regelaars", "Volumeregelaar VC1, 20 W - Study"},
	} {
		j := wholeJob(t, "Slate theatre, loudspeakers, 100 V\n|\n"+c.head+"\n1.1 | "+c.speakers+"\n1.1.1 | "+c.horn+" - Yard | U | 10 | 9\n1.1.2 | "+c.horn+" - Gate | U | 6 | 9\n"+
			"1.1.3 | "+c.ceiling+" - Lobby | U | 4 | 9\n1.1.4 | "+c.ceiling+" - Study | U | 3 | 9\n1.1.5 | "+c.ceiling+" - Store | U | 2 | 9\n"+
			"1.2 | "+c.amps+"\n1.2.1 | "+c.a+" | U | 1 | 9\n1.2.2 | "+c.b+" | U | 1 | 9\n1.3 | "+c.controls+"\n1.3.1 | "+c.control+" | U | 1 | 9")
		want(t, c.head, describe(j), []string{"10 x 10 W zone Yard channel AMP1 / 1", "6 x 10 W zone Gate channel AMP1 / 1", "4 x 3 W zone Lobby channel AMP2 / 1",
			"3 x 3 W zone Study control VC1 channel AMP2 / 1", "2 x 3 W zone Store channel AMP2 / 1"})
		want(t, c.head, ratedOutputs(j), []string{"AMP1 / 1 240 W", "AMP2 / 1 60 W"})
	}
}
