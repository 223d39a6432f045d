package ingest

import "testing"

// A note lists the outputs of an amplifier, each with the building or place that it feeds right behind. Common practice, no source.
func TestOutputsWithWhatTheyFeedBehind(t *testing.T) {
	for _, c := range []struct{ head, note string }{
		{"Building | Room | Qty | Tap", "Amplifier in the lodge, 100 V: output 1 building A, output 2 building B, output 3 Yard. Each output 60 W"},
		{"Gebäude | Raum | Anzahl | Abgriff", "Verstärker in der Loge, 100 V: Ausgang 1 Gebäude A, Ausgang 2 Gebäude B, Ausgang 3 Yard. Jeder Ausgang 60 W"},
		{"Bâtiment | Local | Qté | Prise", "Amplificateur dans la loge, 100 V : sortie 1 bâtiment A, sortie 2 bâtiment B, sortie 3 Yard. Chaque sortie 60 W"},
		{"Edificio | Sala | Cantidad | Toma", "Amplificador en conserjería, 100 V: salida 1 edificio A, salida 2 edificio B, salida 3 Yard. Cada salida 60 W"},
		{"Edificio | Locale | Quantità | Presa", "Amplificatore in portineria, 100 V: uscita 1 edificio A, uscita 2 edificio B, uscita 3 Yard. Ogni uscita 60 W"},
		{"Bouwdeel | Lokaal | Aantal | Stand", "Versterker in de loge, 100 V: uitgang 1 bouwdeel A, uitgang 2 bouwdeel B, uitgang 3 Yard. Elke uitgang 60 W"},
	} {
		j := wholeJob(t, "Fern School\n"+c.note+"\n|\n"+c.head+"\nA | Alder | 6 | 1.5 W\nA | Birch | 4 | 3 W\nB | Cedar | 5 | 1.5 W\nYard | Gate | 2 | 15 W")
		want(t, c.note, describe(j), []string{"6 x 1.5 W zone Alder channel 1", "4 x 3 W zone Birch channel 1", "5 x 1.5 W zone Cedar channel 2", "2 x 15 W zone Gate channel 3"})
		want(t, c.note, ratedOutputs(j), []string{"1 60 W", "2 60 W", "3 60 W"})
	}
	j := wholeJob(t, "Fern School\nAmplifier V1, 100 V: output 1 Alder and Birch (120 W), output 2 Cedar (60 W)\n|\nRoom | Qty | Tap\nAlder | 6 | 1.5 W\nBirch | 4 | 3 W\nCedar | 5 | 1.5 W")
	want(t, "named", describe(j), []string{"6 x 1.5 W zone Alder channel Amplifier V1 / 1", "4 x 3 W zone Birch channel Amplifier V1 / 1", "5 x 1.5 W zone Cedar channel Amplifier V1 / 2"})
	want(t, "named", ratedOutputs(j), []string{"Amplifier V1 / 1 120 W", "Amplifier V1 / 2 60 W"})
}
