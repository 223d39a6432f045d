package ingest

import (
	"strings"
	"testing"
)

// Forms with what is filled in below the labels, a form for each zone. Common practice, no source.
func TestFormsWithValuesBelowLabels(t *testing.T) {
	for _, w := range []string{
		"Zone | Loudspeaker type | Qty # Tap | Amplifier | Amplifier rating # Control | Control rating | Remarks # none",
		"Zone | Art Lautsprecher | Anzahl # Anzapfung | Verstärker | Leistung Verstärker # Regler | Leistung Regler | Bemerkung # ohne",
		"Zone | Type haut-parleur | Nombre # Prise | Ampli | Puissance ampli # Atténuateur | Puissance atténuateur | Remarque # aucun",
		"Zona | Tipo de altavoz | Cantidad # Toma | Amplificador | Potencia amplificador # Atenuador | Potencia atenuador | Observaciones # ninguno",
		"Zona | Tipo diffusore | Quantità # Presa | Amplificatore | Potenza amplificatore # Attenuatore | Potenza attenuatore | Note # nessuno",
		"Zone | Soort luidspreker | Aantal # Stand trafo | Versterker | Vermogen versterker # Regelaar | Vermogen regelaar | Opmerking # geen",
	} {
		f := strings.Split(w, " # ")
		r := strings.NewReplacer("L1", f[0], "L2", f[1], "L3", f[2], "NONE", f[3])
		j := wholeJob(t, r.Replace(`
Grebe riding school, 100 V
|
L1
Inner ring | horn | 4
L2
10 W | V1 | 120 W
L3
NONE
|
L1
Outer ring | horn | 6
L2
15 W | V2 | 240 W
L3
NONE
|
L1
Stables | box | 8
L2
6 W | V3 | 60 W
L3
RG1 | 75 W
`))
		want(t, w, describe(j), []string{"4 x 10 W zone Inner ring channel V1 / 1", "6 x 15 W zone Outer ring channel V2 / 1", "8 x 6 W zone Stables control RG1 channel V3 / 1"})
		want(t, w, ratedOutputs(j), []string{"V1 / 1 120 W", "V2 / 1 240 W", "V3 / 1 60 W"})
		if len(j.Controls) != 1 || show(j.Controls[0].Rated) != "75" {
			t.Errorf("%s: controls %v", w, j.Controls)
		}
		if at := j.Loudspeakers[1].Tap.At.Cell(); at != "A13" {
			t.Errorf("%s: the tap stands in %s", w, at)
		}
	}
}
