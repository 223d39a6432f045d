package ingest

import "testing"

// Remarks that say by what the volume is set. Common practice, no source.
func TestVolumeByControls(t *testing.T) {
	for _, c := range []struct{ first, second string }{
		{"volume by RG1, which is at the desk", "volume by RG2"}, {"Lautstärke über RG1 am Pult", "Lautstärke mit RG2"}, {"volume par RG1 à l'accueil", "volume avec RG2"},
		{"volumen con RG1 junto a la puerta", "volumen con RG2"}, {"volume con RG1, che sta in portineria", "volume con RG2"}, {"volume met RG1 bij de deur", "volume via RG2"},
	} {
		j := wholeJob(t, "Gym 100 V\n|\nRoom | Speakers | Tap (W) | Remarks\nHall | 4 | 10 | "+c.first+"\nDesk | 1 | 3 |\nShop | 2 | 3 | "+c.second+"\n")
		if got := controlsOf(j); got != "RG1 ? W x1, RG2 ? W x1" {
			t.Errorf("%s: %s", c.first, got)
		}
	}
}
