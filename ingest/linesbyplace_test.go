package ingest

import "testing"

// A report that measures each output under the place where its line goes, and the loudspeakers that stand on a line
// of that name. Common practice, no source.
func TestLinesCalledByTheirPlaces(t *testing.T) {
	for _, c := range []struct{ name, outputs, list string }{
		{"English", "Channel | Line to | Z at 1 kHz (ohm) | Drawn (W)", "Line | Place | Qty | Tap (W)"},
		{"German", "Kanal | Leitung nach | Z bei 1 kHz (Ohm) | Aufnahme (W)", "Linie | Ort | Stück | Abgriff (W)"},
		{"French", "Canal | Ligne vers | Z à 1 kHz (ohm) | Absorbée (W)", "Ligne | Emplacement | Qté | Réglage (W)"},
		{"Spanish", "Canal | Línea hacia | Z a 1 kHz (ohm) | Absorbida (W)", "Línea | Lugar | Cant. | Toma (W)"},
		{"Italian", "Canale | Linea verso | Z a 1 kHz (ohm) | Assorbita (W)", "Linea | Luogo | Q.tà | Presa (W)"},
		{"Dutch", "Kanaal | Lijn naar | Z bij 1 kHz (ohm) | Opgenomen (W)", "Lijn | Plaats | Stuks | Trafostand W"},
		{"zones", "Channel | Zone | Z at 1 kHz (ohm)", "Line | Place | Qty | Tap (W)"},
	} {
		j := wholeJob(t, "## Report\nKolba, 100 V\n## Outputs\n"+c.outputs+"\n1 | Palestra | 152 | 66\n2 | Garderoba | 600 | 15\n3 | Hal | 490 | 20\n4 | Piscina | 139 | 72\n"+
			"## Loudspeakers\n"+c.list+"\npalestra | Langa | 6 | 10\npalestra | Starta | 1 | 6\ngarderoben | Dusha | 3 | 5\nhal | Kassa | 4 | 3\npiscina | Glija | 2 | 15")
		want(t, c.name, describe(j), []string{"6 x 10 W zone Palestra channel 1", "1 x 6 W zone Palestra channel 1", "3 x 5 W zone Garderoba channel 2", "4 x 3 W zone Hal channel 3", "2 x 15 W zone Piscina channel 4"})
	}
}

// Lines with figures, or whose names the list of outputs has not, stay lines.
func TestLinesThatAreNotPlaces(t *testing.T) {
	for _, names := range [][2]string{{"L1", "L2"}, {"Tramontana", "Levante"}} {
		j := wholeJob(t, "## Outputs\nChannel | Room | Z at 1 kHz (ohm)\n1 | Palestra | 152\n2 | Garderoba | 600\n## Loudspeakers\nLine | Place | Qty | Tap (W)\n"+
			names[0]+" | Langa | 6 | 10\n"+names[1]+" | Dusha | 3 | 5")
		for _, l := range j.Loudspeakers {
			if l.Zone != nil && l.Zone.Name == names[0] {
				t.Errorf("%s is a zone", names[0])
			}
		}
	}
}
