package ingest

import "testing"

// A record of measurements that says what each output gives is a list of outputs where no loudspeakers are listed. Common
// practice, no source.
func TestMeasuredOutputs(t *testing.T) {
	for _, head := range []string{"Line | Amplifier | Rated | Load as drawn | Measured 1 kHz", "Linie | Verstärker | Nennleistung | Last | Messwert", "Ligne | Ampli | Puissance ampli | Charge | Impédance mesurée",
		"Línea | Etapa | Potencia etapa | Carga | Impedancia medida", "Linea | Finale | Potenza finale | Carico | Impedenza misurata", "Lijn | Versterker | Vermogen versterker | Belasting | Gemeten impedantie"} {
		j := wholeJob(t, "Public address measurements\n"+head+"\n1 | V1-A | 120 W | 96 W | 104 Ohm\n2 | V1-B | 120 W | 130 W | 77 Ohm\n3 | V2 | 60 W | 48 W | 210 Ohm")
		var got []string
		for _, c := range j.Channels {
			got = append(got, c.Label()+" "+show(c.Rated)+" carries "+show(c.Stated))
		}
		want(t, head, got, []string{"V1 / A 120 carries 96", "V1 / B 120 carries 130", "V2 / 3 60 carries 48"})
		if len(j.Measurements) != 3 {
			t.Errorf("%s: %d measurements", head, len(j.Measurements))
		}
	}
}
