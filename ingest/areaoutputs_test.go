package ingest

import "testing"

// Titles of areas in the column of places, each with the output that feeds it in brackets; the amplifier has no
// name. Common practice, no source.
func TestAreasWithTheirOutputs(t *testing.T) {
	for _, c := range []struct{ amp, head, output string }{
		{"The amplifier stands in the gatehouse: 2 outputs of 120 W, 100 V", "Where | Qty | Tap | Knob", "output"},
		{"Der Verstärker steht im Torhaus: 2 Ausgänge zu 120 W, 100 V", "Ort | Anzahl | Abgriff | Knopf", "Ausgang"},
		{"L'ampli est dans la loge : 2 sorties de 120 W, 100 V", "Lieu | Qté | Prise | Bouton", "sortie"},
		{"El amplificador está en la portería: 2 salidas de 120 W, 100 V", "Lugar | Cant. | Toma | Mando", "salida"},
		{"L'amplificatore è in portineria: 2 uscite da 120 W, 100 V", "Luogo | Q.tà | Presa | Manopola", "uscita"},
		{"De versterker staat in het poortgebouw: 2 uitgangen van 120 W, 100 V", "Plaats | Stuks | Stand | Knop", "uitgang"},
	} {
		j := wholeJob(t, "Fern garden\n"+c.amp+"\n|\n"+c.head+"\n|\nGlass ("+c.output+" 1)\nPalms | 4 | 10 W\nOrchids | 3 | 6 W\nFerns | \" | \"\n|\nBrick ("+c.output+" 2)\nGate | 2 | 3 W\nOffice | 1 | 1.5 W | K3 (5 W)")
		want(t, c.output, describe(j), []string{"4 x 10 W zone Glass channel 1", "3 x 6 W zone Glass channel 1", "3 x 6 W zone Glass channel 1", "2 x 3 W zone Brick channel 2", "1 x 1.5 W zone Brick control K3 channel 2"})
		want(t, c.output, ratedOutputs(j), []string{"1 120 W", "2 120 W"})
		if len(j.Amplifiers) != 1 {
			t.Errorf("%s: %d amplifiers", c.output, len(j.Amplifiers))
		}
	}
}
