package ingest

import "testing"

// A note tells the outputs of an amplifier without a name, what each gives and the line it is for; the room in which it
// stands is no name of it, and what a room is for names it beside its number. Common practice, no source.
func TestOutputsForLines(t *testing.T) {
	for _, c := range []struct{ name, head, note, cable string }{
		{"English", "Fern library | | works order no. 31\nRoom | Destination | Qty | W each | Line", "Amplifier at 100 V in room T02: output 1 of 120 W for L1, output 2 of 60 W for L2", "Cable"},
		{"German", "Farnbibliothek | | Auftrag Nr. 31\nRaum | Bestimmung | Stk. | W je | Linie", "Verstärker im Raum T02, 100 V: Ausgang 1 mit 120 W für L1, Ausgang 2 mit 60 W für L2", "Kabel"},
		{"French", "Bibliothèque des Fougères | | mission n° 31\nLocal | Destination | Nb | W | Ligne", "Amplificateur 100 V dans le local T02 : sortie 1 de 120 W pour L1, sortie 2 de 60 W pour L2", "Câble"},
		{"Spanish", "Biblioteca del Helecho | | encargo n.º 31\nLocal | Destino | Uds | W | Línea", "Amplificador a 100 V en el cuarto T02: salida 1 de 120 W para L1, salida 2 de 60 W para L2", "Cable"},
		{"Italian", "Biblioteca delle Felci | | incarico n. 31\nVano | Destinazione | N. diff. | W cad. | Linea", "Amplificatore a 100 V nel vano T02: uscita 1 da 120 W per L1, uscita 2 da 60 W per L2", "Cavo"},
		{"Dutch", "Varenbibliotheek | | opdracht nr. 31\nRuimte | Bestemming | Aantal | W | Lijn", "Versterker 100 V in ruimte T02: uitgang 1 van 120 W voor L1, uitgang 2 van 60 W voor L2", "Kabel"},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, "\n"+c.head+`
T01 | Atrium | 4 | 3 | L1
T02 | Kiosk | 1 | 1,5 | L1
T03 | Forum | 6 | 3 | L1
101 | Studio | 8 | 3 | L2
102 | Archiv | 4 | 1,5 | L2
|
`+c.note+`
|
`+c.cable+` L1: 2x1,5 mm², 145 m
`+c.cable+` L2: 2x1,5 mm², 120 m`)
			want(t, "loudspeakers", describe(j), []string{"4 x 3 W zone Atrium channel 1", "1 x 1.5 W zone Kiosk channel 1", "6 x 3 W zone Forum channel 1",
				"8 x 3 W zone Studio channel 2", "4 x 1.5 W zone Archiv channel 2"})
			want(t, "outputs", channelRatings(j), []string{"1 120 W 100 V", "2 60 W 100 V"})
			if len(j.Cables) != 2 || show(j.Cables[0].Length) != "145" {
				t.Errorf("cables %+v", j.Cables)
			}
			if j.Number.Value != "31" {
				t.Errorf("number %q", j.Number.Value)
			}
		})
	}
}
