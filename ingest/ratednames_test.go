package ingest

import "testing"

// Lists of a rack with the ratings behind the names of amplifiers, and of controls with tag, power and place in one cell
// below a title. Common practice in six languages, no source.
func TestRatedNamesAndControlsInOneCell(t *testing.T) {
	for _, c := range []struct{ list, rack, controls string }{
		{"Building | Place | Qty | W each | Circuit", "Place | Device | Circuit\n1 | Amplifier VA (120 W) | 1\n2 | Amplifier VB (60 W) | 2", "Volume controls outside the rack:\nRA (20 W) meeting\nRB (5 W) desk"},
		{"Gebäude | Raum | Anzahl | W je Stück | Kreis", "HE | Gerät | Kreis\n1 | Verstärker VA, 120 W | 1\n2 | Verstärker VB, 60 W | 2", "Regler außerhalb des Schranks:\nRA 20 W meeting\nRB 5 W desk"},
		{"Bâtiment | Local | Nombre | Watts | Ligne", "Place | Appareil | Ligne\n1 | Ampli VA (120 W) | 1\n2 | Ampli VB (60 W) | 2", "Atténuateurs :\nRA, 20 W, meeting\nRB, 5 W, desk"},
		{"Edificio | Sala | Cantidad | W cada uno | Línea", "Posición | Equipo | Línea\n1 | Etapa VA (120 W) | 1\n2 | Etapa VB (60 W) | 2", "Reguladores de volumen\nRA meeting (20 W)\nRB desk (5 W)"},
		{"Edificio | Locale | Quantità | W cadauno | Linea", "Posto | Apparecchio | Linea\n1 | Finale VA da 120 W | 1\n2 | Finale VB da 60 W | 2", "Regolatori:\nRA - 20 W - meeting\nRB - 5 W - desk"},
		{"Gebouw | Plaats | Aantal | W per stuk | Lijn", "Plaats | Apparaat | Lijn\n1 | Versterker VA (120 W) | 1\n2 | Versterker VB (60 W) | 2", "Regelaars buiten de kast:\nRA (20 W) meeting\nRB (5 W) desk"},
	} {
		j := wholeJob(t, "## A\nDepot, 100 V\n|\n"+c.list+"\nGarage | wall | 4 | 10 | 1\nOffice | meeting | 4 | 3 | 2\nOffice | desk | 2 | 1.5 | 2\nOffice | stairs | 2 | 3 | 2\n## B\n"+c.rack+"\n|\n"+c.controls)
		want(t, c.rack, describe(j), []string{"4 x 10 W zone wall channel VA / 1", "4 x 3 W zone meeting control RA channel VB / 2",
			"2 x 1.5 W zone desk control RB channel VB / 2", "2 x 3 W zone stairs channel VB / 2"})
		want(t, c.rack, channelRatings(j), []string{"VA / 1 120 W 100 V", "VB / 2 60 W 100 V"})
		if got := controlsOf(j); got != "RA 20 W x1, RB 5 W x1" {
			t.Errorf("%s: %s", c.controls, got)
		}
	}
}

// The tag of a control may end in a letter behind a space, with its power behind it or at the end. Common practice, no source.
func TestTagsOfControlsInParts(t *testing.T) {
	for _, c := range []struct{ title, a, b string }{
		{"Atténuateurs hors de la baie :", "AT A (20 W) meeting", "AT B (5 W) desk"}, {"Volume controls", "VC A: 20 W meeting", "VC B: 5 W desk"}, {"Regler:", "LR A, 20 W, meeting", "LR B, 5 W, desk"},
		{"Reguladores:", "RG A meeting (20 W)", "RG B desk (5 W)"}, {"Attenuatori", "AT A - 20 W - meeting", "AT B - 5 W - desk"}, {"Regelaars", "VR A | 20 W | meeting", "VR B | 5 W | desk"},
	} {
		j := wholeJob(t, "Depot, 100 V\n|\nRoom | Speakers | Tap W | Circuit\nmeeting | 4 | 3 | 1\ndesk | 2 | 1.5 | 1\nhall | 4 | 6 | 2\n|\n"+c.title+"\n"+c.a+"\n"+c.b)
		a, b := c.a[:4], c.b[:4]
		if got := controlsOf(j); got != a+" 20 W x1, "+b+" 5 W x1" {
			t.Errorf("%s: %s", c.title, got)
		}
	}
}

// The places in a rack may stand under a word that means taps too; they are no powers. Common practice, no source.
func TestPlacesInARackUnderAWordForTaps(t *testing.T) {
	for _, rack := range []string{
		"Puesto | Equipo | Circuito\n1 | Etapa VA (120 W) | 1\n2 | Etapa VB (60 W) | 2", "Set | Device | Circuit\n1 | Amplifier VA (120 W) | 1\n3 | Amplifier VB (60 W) | 2",
		"Puesto | Etapa | Circuito\n6 | Etapa VA, 120 W | 1\n3 | Etapa VB, 60 W | 2", "Stufe | Gerät | Kreis\n1 | Verstärker VA 120 W | 1\n2 | Verstärker VB 60 W | 2",
	} {
		j := wholeJob(t, "Depot, 100 V\n|\nRoom | Speakers | Tap W | Circuit\nmeeting | 4 | 3 | 2\nhall | 4 | 10 | 1\n|\n"+rack)
		want(t, rack, channelRatings(j), []string{"VA / 1 120 W 100 V", "VB / 2 60 W 100 V"})
	}
}
