package ingest

import "testing"

// Lines A and B of each zone side by side, each with its output, its count, its tap and what was
// measured of it: two groups of loudspeakers a row, whatever the record is of. Common practice, no source.
func TestLinesAAndBWithWhatWasMeasured(t *testing.T) {
	for _, c := range []struct {
		name, sheet string
		want        []string
	}{
		{"Italian", `
Verbale di collaudo - Teatro di Roccascura
Linee doppie A e B a 100 V, diffusori alternati
|
Zona | Linea A | | | | Linea B
 | Uscita | N. diff. | Presa | Z mis. (ohm) | Uscita | N. diff. | Presa | Z mis. (ohm)
Platea | U1.1 | 8 | 6 W | 205 | U1.2 | 8 | 6 W | 210
Palchi | U1.3 | 10 | 3 W | 330 | U1.4 | 9 | 3 W | n.m.
Scale | U2.1 | 4 | 3 W | 830 | U2.2 | 3 | 3 W | 1100
Totale | | 22 | | | | 20`,
			[]string{"8 x 6 W zone Platea channel U1 / 1", "8 x 6 W zone Platea channel U1 / 2", "10 x 3 W zone Palchi channel U1 / 3", "9 x 3 W zone Palchi channel U1 / 4",
				"4 x 3 W zone Scale channel U2 / 1", "3 x 3 W zone Scale channel U2 / 2"}},
		{"English", `
Test record - Slate Theatre, 100 V
|
Zone | Line A | | | | Line B
 | Output | Speakers | Tap | Meas. ohm | Output | Speakers | Tap | Meas. ohm
Stalls | A1.1 | 8 | 6 W | 205 | A1.2 | 8 | 6 W | 210
Circle | A1.3 | 10 | 3 W | 330 | A1.4 | 9 | 3 W | not measured`,
			[]string{"8 x 6 W zone Stalls channel A1 / 1", "8 x 6 W zone Stalls channel A1 / 2", "10 x 3 W zone Circle channel A1 / 3", "9 x 3 W zone Circle channel A1 / 4"}},
		{"German", `
Messprotokoll - Theater, 100 V
|
Zone | Linie A | | | | Linie B
 | Ausgang | Anzahl LS | Abgriff | Z gemessen (Ohm) | Ausgang | Anzahl LS | Abgriff | Z gemessen (Ohm)
Parkett | V1.1 | 8 | 6 W | 205 | V1.2 | 8 | 6 W | 210
Rang | V1.3 | 10 | 3 W | 330 | V1.4 | 9 | 3 W | n. gem.`,
			[]string{"8 x 6 W zone Parkett channel V1 / 1", "8 x 6 W zone Parkett channel V1 / 2", "10 x 3 W zone Rang channel V1 / 3", "9 x 3 W zone Rang channel V1 / 4"}},
		{"French", `
Procès-verbal d'essais - Théâtre, 100 V
|
Zone | Ligne A | | | | Ligne B
 | Sortie | Nb HP | Prise | Z mesurée (ohm) | Sortie | Nb HP | Prise | Z mesurée (ohm)
Parterre | A1.1 | 8 | 6 W | 205 | A1.2 | 8 | 6 W | 210
Balcon | A1.3 | 10 | 3 W | 330 | A1.4 | 9 | 3 W | n.m.`,
			[]string{"8 x 6 W zone Parterre channel A1 / 1", "8 x 6 W zone Parterre channel A1 / 2", "10 x 3 W zone Balcon channel A1 / 3", "9 x 3 W zone Balcon channel A1 / 4"}},
		{"Spanish", `
Acta de pruebas - Teatro, 100 V
|
Zona | Línea A | | | | Línea B
 | Salida | Nº altavoces | Toma | Z medida (ohm) | Salida | Nº altavoces | Toma | Z medida (ohm)
Patio | E1.1 | 8 | 6 W | 205 | E1.2 | 8 | 6 W | 210
Palcos | E1.3 | 10 | 3 W | 330 | E1.4 | 9 | 3 W | n.m.`,
			[]string{"8 x 6 W zone Patio channel E1 / 1", "8 x 6 W zone Patio channel E1 / 2", "10 x 3 W zone Palcos channel E1 / 3", "9 x 3 W zone Palcos channel E1 / 4"}},
		{"Dutch", `
Meetrapport - Theater, 100 V
|
Zone | Lijn A | | | | Lijn B
 | Uitgang | Aantal LS | Stand | Z gemeten (ohm) | Uitgang | Aantal LS | Stand | Z gemeten (ohm)
Zaal | V1.1 | 8 | 6 W | 205 | V1.2 | 8 | 6 W | 210
Balkon | V1.3 | 10 | 3 W | 330 | V1.4 | 9 | 3 W | niet gemeten`,
			[]string{"8 x 6 W zone Zaal channel V1 / 1", "8 x 6 W zone Zaal channel V1 / 2", "10 x 3 W zone Balkon channel V1 / 3", "9 x 3 W zone Balkon channel V1 / 4"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, c.sheet)
			want(t, "loudspeakers", describe(j), c.want)
			if len(j.Questions) > 0 {
				t.Errorf("asked: %v", j.Questions)
			}
		})
	}
}
