package ingest

import "testing"

// A note counts the outputs and says by number which floor or room each feeds; another says what stands on the only
// control. Common practice, no source.
func TestOutputsByNumber(t *testing.T) {
	for _, c := range []struct{ head, outputs, control string }{
		{"Floor | Room | Qty | Watts", "Amplifier has three outputs: 1 = UG, 2 = EG, 3 = OG", "Volume control in the Atrium only (36 W, it says LR on it)"},
		{"Geschoss | Ort | Anzahl | Watt", "Verstärker hat drei Ausgänge: 1 = Keller, 2 = Erdgeschoss, 3 = Obergeschoss", "Regler nur im Atrium (36 W, steht LR drauf)"},
		{"Étage | Local | Qté | Watts", "L'amplificateur a trois sorties : 1 : UG, 2 : EG, 3 : OG", "Atténuateur seulement dans l'Atrium (36 W, il y a écrit LR dessus)"},
		{"Planta | Sala | Cantidad | Vatios", "El amplificador tiene tres salidas: 1 = UG, 2 = EG, 3 = OG", "Regulador solo en el Atrium (36 W, pone LR encima)"},
		{"Piano | Locale | Quantità | Watt", "Amplificatore con tre uscite: 1 UG, 2 EG, 3 OG", "Regolatore solo nell'Atrium (36 W, c'è scritto LR)"},
		{"Verdieping | Ruimte | Aantal | Watt", "Versterker heeft drie uitgangen: 1 = UG, 2 = EG, 3 = OG", "Regelaar alleen in het Atrium (36 W, er staat LR op)"},
	} {
		j := wholeJob(t, "Fern School - loudspeakers\n|\n"+c.head+"\nUG | Store | 2 | 3\nEG | Foyer | 4 | 3\nEG | Shop | 1 | 1.5\nOG | Atrium | 2 | 10\n|\n"+c.outputs+"\n"+c.control)
		want(t, c.outputs, describe(j), []string{"2 x 3 W zone Store channel 1", "4 x 3 W zone Foyer channel 2", "1 x 1.5 W zone Shop channel 2", "2 x 10 W zone Atrium control LR channel 3"})
		want(t, c.control, ratedControls(j), []string{"LR 36"})
	}
}

// Rooms stand behind the numbers too, with the power of each output; a list that holds anything else is left alone.
func TestOutputsByNumberOfRooms(t *testing.T) {
	const list = "Fern School - loudspeakers\n|\nRoom | Qty | Watts\nStore | 2 | 3\nFoyer | 4 | 3\nShop | 1 | 1.5\n|\n"
	j := wholeJob(t, list+"Amplifier outputs: 1 = Store (60 W), 2 = Foyer and Shop (120 W)")
	want(t, "rooms", describe(j), []string{"2 x 3 W zone Store channel 1", "4 x 3 W zone Foyer channel 2", "1 x 1.5 W zone Shop channel 2"})
	want(t, "rooms", ratedOutputs(j), []string{"1 60 W", "2 120 W"})
	j = wholeJob(t, list+"Outputs: 1 = green lamp, 2 = red lamp")
	want(t, "lamps", describe(j), []string{"2 x 3 W zone Store", "4 x 3 W zone Foyer", "1 x 1.5 W zone Shop"})
}

// Letters of outputs are no amplifiers, whatever stands ahead of them.
func TestOutputsByLetter(t *testing.T) {
	const list = "Fern School - loudspeakers\n|\nRoom | Qty | Watts\nStore | 2 | 3\nFoyer | 4 | 3\n|\n"
	for _, note := range []string{
		"Outputs: A = Store, B = Foyer", "Amplifier outputs: A = Store, B = Foyer", "Outputs A = Store, B = Foyer", "Amplifier: A = Store, B = Foyer",
		"Verstärker, Ausgänge: A = Store, B = Foyer", "Sorties de l'amplificateur : A = Store, B = Foyer",
		"Salidas del amplificador: A = Store, B = Foyer", "Uscite dell'amplificatore: A = Store, B = Foyer", "Uitgangen versterker: A = Store, B = Foyer",
	} {
		j := wholeJob(t, list+note)
		want(t, note, describe(j), []string{"2 x 3 W zone Store channel A", "4 x 3 W zone Foyer channel B"})
	}
}
