package ingest

import "testing"

// One sentence rates all knobs, which the list only numbers. Common practice, no source.
func TestAllKnobsAlike(t *testing.T) {
	for _, c := range []struct{ head, knob, none, said string }{
		{"Where | Qty | Set to | Knob", "knob", "none", "All knobs are 20 W."},
		{"Wo | Anzahl | Eingestellt auf | Knopf", "Knopf", "keiner", "Alle Knöpfe sind 20 W."},
		{"Où | Nombre | Réglé sur | Bouton", "bouton", "aucun", "Tous les boutons font 20 W."},
		{"Dónde | Cantidad | Puesto en | Mando", "mando", "ninguno", "Todos los mandos son de 20 W."},
		{"Dove | Quantità | Regolato su | Manopola", "manopola", "nessuna", "Tutte le manopole sono da 20 W."},
		{"Waar | Hoeveel | Staat op | Knop", "knop", "geen", "Alle knoppen zijn 20 W."},
	} {
		j := wholeJob(t, "Stables 100 V\n|\n"+c.head+"\nA | 3 | 15 W | "+c.none+"\nB | 4 | 3 W | "+c.knob+" 1\nC | 2 | 3 W | "+c.knob+" 2\n|\n"+c.said)
		if got := controlsOf(j); got != c.knob+" 1 20 W x1, "+c.knob+" 2 20 W x1" {
			t.Errorf("%s: %s", c.said, got)
		}
	}
}

// A column of earth faults beside what was measured on each line names no outputs. Common practice, no source.
func TestEarthFaultsNameNoOutputs(t *testing.T) {
	for _, head := range []string{"Amplifier | Line | Rated (W) | Measured (W) | Earth fault", "Verstärker | Linie | Nennleistung (W) | Gemessen (W) | Erdschluss", "Ampli | Ligne | Puissance (W) | Mesuré (W) | Défaut de terre",
		"Amplificador | Línea | Potencia (W) | Medido (W) | Fuga a tierra", "Amplificatore | Linea | Potenza (W) | Misurato (W) | Dispersione a terra", "Versterker | Lijn | Nominaal (W) | Gemeten (W) | Aardsluiting"} {
		j := wholeJob(t, "Depot 100 V\n|\nAmp | Line | Where | Qty | Tap (W)\nV1 | 1 | A | 6 | 10\nV1 | 2 | B | 4 | 10\nV2 | 1 | C | 2 | 3\n|\n"+head+"\nV1 | 1 | 240 | 60 | -\nV1 | 2 | 120 | 42 | -\nV2 | 1 | 60 | 6 | -")
		want(t, head, channelRatings(j), []string{"V1 / 1 240 W 100 V", "V1 / 2 120 W 100 V", "V2 / 1 60 W 100 V"})
	}
}
