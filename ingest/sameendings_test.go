package ingest

import "testing"

// A control in a bill serves the loudspeakers of its chapter whose descriptions end with the same place, where
// others end with none; what has a chapter number with a nought at its end is no amplifier. Common practice, no source.
func TestControlsByTheEndsOfDescriptions(t *testing.T) {
	for _, c := range []struct{ head, speaker, tapped, control, amp, rack, zone, room string }{
		{"Item | Description | Unit | Qty", "Surface loudspeaker", "tapped at", "Volume control", "Power amplifier", "Amplifier cabinet", "for zone", "classroom"},
		{"Pos. | Beschreibung | Einh. | Menge", "Aufbaulautsprecher", "angezapft auf", "Lautstärkeregler", "Endverstärker", "Verstärkerschrank", "für Zone", "Klasse"},
		{"Art. | Désignation | U | Qté", "Haut-parleur apparent", "réglé sur", "Atténuateur", "Amplificateur", "Baie d'amplification", "pour zone", "classe"},
		{"Partida | Descripción | Ud | Cantidad", "Altavoz de superficie", "ajustado a", "Atenuador", "Amplificador", "Armario de amplificadores", "para zona", "aula"},
		{"Voce | Descrizione | U.M. | Quantità", "Diffusore a parete", "regolato su", "Attenuatore", "Amplificatore", "Armadio amplificatori", "per zona", "aula"},
		{"Post | Omschrijving | Eenh. | Hoev.", "Opbouwluidspreker", "afgetakt op", "Volumeregelaar", "Eindversterker", "Versterkerkast", "voor zone", "leslokaal"},
	} {
		j := wholeJob(t, "Orangerie 100 V\n|\n"+c.head+"\n71.10 | Zone 1 Palmen | |\n71.11 | "+c.speaker+", "+c.tapped+" 10 W | st | 6\n71.12 | "+c.speaker+", "+c.tapped+" 6 W | st | 4\n"+
			"71.20 | Zone 2 Studio | |\n71.21 | "+c.speaker+", "+c.tapped+" 3 W, "+c.room+" 1 | st | 4\n71.22 | "+c.speaker+", "+c.tapped+" 3 W, "+c.room+" 2 | st | 5\n71.23 | "+c.control+" VR1, 24 W, "+c.room+" 1 | st | 1\n"+
			"71.50 | "+c.rack+" | |\n71.51 | "+c.amp+" EV1, 120 W, "+c.zone+" 1 | st | 1\n71.52 | "+c.amp+" EV2, 60 W, "+c.zone+" 2 | st | 1")
		want(t, c.control, describe(j), []string{"6 x 10 W zone Zone 1 Palmen channel EV1 / 1", "4 x 6 W zone Zone 1 Palmen channel EV1 / 1", "4 x 3 W zone Zone 2 Studio control VR1 channel EV2 / 1", "5 x 3 W zone Zone 2 Studio channel EV2 / 1"})
	}
}
