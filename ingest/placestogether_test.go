package ingest

import (
	"strings"
	"testing"
)

// Notes that hang places together behind one control. Common practice, no source.
func TestPlacesTogetherBehindOneControl(t *testing.T) {
	for _, note := range []string{"Hall and Yard on control R1 (75 W)", "Hall and Yard together on control R1 (75 W)", "Hall und Yard gemeinsam über Regler R1 (75 W)", "Hall et Yard ensemble sur atténuateur R1 (75 W)",
		"Hall y Yard juntos en atenuador R1 (75 W)", "Hall e Yard insieme su attenuatore R1 (75 W)", "Hall en Yard samen op regelaar R1 (75 W)", "Hall en Yard op regelaar R1 (75 W)"} {
		j := wholeJob(t, "Grebe hall, 100 V\n|\nRoom | Kind | Qty | W | Amp | Out\nHall | ceiling | 1 | 6 | V1 | 1\nYard | horn | 1 | 15 | V1 | 1\nLoft | ceiling | 2 | 3 | V1 | 2\n|\n"+note)
		want(t, note, []string{controlsOf(j)}, []string{"R1 75 W x2"})
	}
}

// Notes that list controls with their powers and what each is for. Common practice, no source.
func TestControlsListedWithPlaces(t *testing.T) {
	for _, note := range []string{"Controls: R1 24 W for Yard, R2 12 W for Hall", "Regler: R1 24 W für Yard, R2 12 W für Hall", "Atténuateurs : R1 24 W pour Yard, R2 12 W pour Hall",
		"Atenuadores: R1 24 W para Yard, R2 12 W para Hall", "Attenuatori: R1 24 W per Yard, R2 12 W per Hall", "Regelaars: R1 24 W voor Yard, R2 12 W voor Hall", "Regelaars: RG-A 24 W voor Yard, RG-B 12 W voor Hall"} {
		j := wholeJob(t, "Grebe hall, 100 V\n|\nRoom | Kind | Qty | W | Amp | Out\nHall | ceiling | 1 | 6 | V1 | 1\nYard | horn | 1 | 15 | V1 | 1\nLoft | ceiling | 2 | 3 | V1 | 2\n|\n"+note)
		want(t, note, []string{strings.NewReplacer("RG-A", "R1", "RG-B", "R2").Replace(controlsOf(j))}, []string{"R1 24 W x1, R2 12 W x1"})
	}
}
