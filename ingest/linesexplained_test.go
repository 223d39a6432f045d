package ingest

import "testing"

// Names of lines that a note explains as amplifiers and outputs, and lists of what a rack holds with the amplifiers among
// it. Common practice, no source.
func TestLinesExplainedAndRacks(t *testing.T) {
	for _, c := range []struct{ head, note, rack, amp, other, fan string }{
		{"Zone | Qty | W each | Line", "Line 1/2 = amplifier 1, output 2. Lines at 100 V.", "Rack unit | Device | Outputs | W per output", "Amplifier", "microphone and player", "fan"},
		{"Zone | Stk | W je | Linie", "Linie 1/2 heißt Verstärker 1, Ausgang 2. Alles 100 V.", "HE | Gerät | Ausgänge | W je Ausgang", "Verstärker", "Mikrofon", "Lüfter"},
		{"Zone | Qté | W/HP | Ligne", "Ligne 1/2 : ampli 1, sortie 2. Lignes 100 V.", "Unité | Appareil | Sorties | W par sortie", "Ampli", "micro et lecteur", "ventilation"},
		{"Zona | Cant. | W c/u | Línea", "La línea 1/2 significa etapa 1, salida 2. Líneas de 100 V.", "Unidad | Equipo | Salidas | W por salida", "Etapa", "micrófono", "ventilador"},
		{"Zona | Q.tà | W cad. | Linea", "Linea 1/2 = uscita 2 dell'amplificatore 1. Linee a 100 V.", "Unità rack | Apparecchio | Uscite | W per uscita", "Amplificatore", "microfono e lettore", "ventilazione"},
		{"Zone | Aantal | W per stuk | Lijn", "Lijn 1/2 betekent versterker 1, uitgang 2. Lijnen 100 V.", "HE | Toestel | Uitgangen | W per uitgang", "Versterker", "microfoon", "ventilator"},
	} {
		j := wholeJob(t, "## A\nTram shed\n|\n"+c.head+"\nTracks | 8 | 15 | 1/1\nBench | 6 | 15 | 1/2\nDesk | 4 | 6 | 2/1\nYard | 2 | 15 | 2/2\n\n"+c.note+
			"\n\n## B\n"+c.rack+"\nU1-U3 | "+c.other+" | |\nU4-U6 | "+c.amp+" 1 | 2 | 240\nU7-U8 | "+c.amp+" 2 | 2 | 60\nU9 | "+c.fan+" | |")
		want(t, c.head, ratedOutputs(j), []string{c.amp + " 1 / 1 240 W", c.amp + " 1 / 2 240 W", c.amp + " 2 / 1 60 W", c.amp + " 2 / 2 60 W"})
		want(t, c.note, describe(j), []string{"8 x 15 W zone Tracks channel " + c.amp + " 1 / 1", "6 x 15 W zone Bench channel " + c.amp + " 1 / 2",
			"4 x 6 W zone Desk channel " + c.amp + " 2 / 1", "2 x 15 W zone Yard channel " + c.amp + " 2 / 2"})
	}
}
