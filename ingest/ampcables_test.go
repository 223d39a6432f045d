package ingest

import "testing"

// A sheet for each floor may say in its title which group its loudspeakers are on, under a header that calls what they
// are set to their connection; another sheet gives the amplifier and the cable of each group. Common practice, no source.
func TestCablesBesideAmplifiers(t *testing.T) {
	for _, c := range []struct{ head, group, list, controls string }{
		{"Tag | Room | Connection (W) | Remarks", "group", "Group | Amplifier | Power (W) | Cable from rack | Length (m)", "Control | Power (W) | Applies to"},
		{"Nr. | Raum | Anschluss (W) | Bem.", "Gruppe", "Gruppe | Verstärker | Leistung (W) | Kabel ab Rack | Länge (m)", "Regler | Leistung (W) | Gilt für"},
		{"Repère | Local | Raccordement (W) | Rem.", "groupe", "Groupe | Ampli | Puissance (W) | Câble depuis le rack | Longueur (m)", "Régleur | Puissance (W) | Valable pour"},
		{"Ref. | Sala | Conexión (W) | Obs.", "grupo", "Grupo | Amplificador | Potencia (W) | Cable desde el rack | Longitud (m)", "Regulador | Potencia (W) | Vale para"},
		{"Sigla | Locale | Collegamento (W) | Note", "gruppo", "Gruppo | Amplificatore | Potenza (W) | Cavo dal rack | Lunghezza (m)", "Regolatore | Potenza (W) | Vale per"},
		{"Tag | Ruimte | Aansluiting (W) | Opm.", "groep", "Groep | Versterker | Vermogen (W) | Kabel vanaf rack | Lengte (m)", "Regelaar | Vermogen (W) | Geldt voor"},
	} {
		j := wholeJob(t, "## Cellar\nMuseum of the Moor\n"+c.group+" 1\n|\n"+c.head+"\nK1 | Store | 6 |\nK2 | Store | 6 |\nK3 | Passage | 10 |\n"+
			"## Upstairs\nMuseum of the Moor\n"+c.group+" 2\n|\n"+c.head+"\nU1 | Foyer | 6 |\nU2 | Foyer | 3 |\nU3 | Desk | 1.5 |\n"+
			"## Riser\nPublic address 100 V\n|\n"+c.list+"\n1 | PA1 | 60 | 2 x 1.5 mm² | 30\n2 | PA2 | 120 | 2 x 2.5 mm² | 45\n|\n"+c.controls+"\nR2 | 50 | K1 - K2\nR3 | 12 | U3")
		want(t, c.head, describe(j), []string{"K1 1 x 6 W zone " + c.group + " 1 control R2 channel PA1 / 1", "K2 1 x 6 W zone " + c.group + " 1 control R2 channel PA1 / 1",
			"K3 1 x 10 W zone " + c.group + " 1 channel PA1 / 1", "U1 1 x 6 W zone " + c.group + " 2 channel PA2 / 1", "U2 1 x 3 W zone " + c.group + " 2 channel PA2 / 1",
			"U3 1 x 1.5 W zone " + c.group + " 2 control R3 channel PA2 / 1"})
		want(t, c.list, cablesOf(j), []string{" 30 m 1.5 mm² channel PA1 / 1", " 45 m 2.5 mm² channel PA2 / 1"})
		want(t, c.controls, []string{controlsOf(j)}, []string{"R2 50 W x2, R3 12 W x1"})
	}
}

// No output gives less than 10 W: powers below that are taps, whatever their header calls them and however much the tags
// look like those of outputs. Common practice, no source.
func TestSmallPowersAreTaps(t *testing.T) {
	for _, head := range []string{"Tag | Speaker location | Output (W)", "Nr. | Lautsprecher, Raum | Ausgang (W)", "Repère | Emplacement HP | Sortie (W)",
		"Ref. | Ubicación altavoz | Salida (W)", "Sigla | Posizione diffusore | Uscita (W)", "Tag | Plaats luidspreker | Uitgang (W)"} {
		j := wholeJob(t, "Museum of the Moor, 100 V\n|\n"+head+"\nK1 | Store | 6\nK2 | Passage | 3\nK3 | Yard | 10\nK4 | Desk | 1.5")
		want(t, head, describe(j), []string{"K1 1 x 6 W zone Store", "K2 1 x 3 W zone Passage", "K3 1 x 10 W zone Yard", "K4 1 x 1.5 W zone Desk"})
	}
}
