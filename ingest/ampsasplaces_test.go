package ingest

import "testing"

// Amplifiers across with counts and taps in the cells, zones down; the ratings and cables of the amplifiers are in a list of their
// own. Common practice, no source.
func TestAmplifiersAcrossByZones(t *testing.T) {
	for _, c := range []struct{ name, corner, amps, controls string }{
		{"English", "Zone", "Amplifier | Power | Cable | Metres", "Control | Power | Zone"},
		{"German", "Zone", "Verstärker | Leistung | Kabel | Meter", "Regler | Leistung | Zone"},
		{"French", "Zone", "Amplificateur | Puissance | Câble | Mètres", "Atténuateur | Puissance | Zone"},
		{"Spanish", "Zona", "Etapa | Potencia | Cable | Metros", "Regulador | Potencia | Zona"},
		{"Italian", "Zona", "Amplificatore | Potenza | Cavo | Metri", "Regolatore | Potenza | Zona"},
		{"Dutch", "Zone", "Versterker | Vermogen | Kabel | Meter", "Regelaar | Vermogen | Zone"},
	} {
		j := wholeJob(t, "## Matrix\nKolba, 100 V\n|\n"+c.corner+" | E1 | E2 | E3 | Total W\nHal | 2 x 6 W | 4 x 6 W | | 36\nLanga | 8 x 10 W | | | 80\nNorth | 8 x 10 W | | | 80\nDusha | | 10 x 3 W | | 30\nFoyer | | 2 x 1.5 W | | 3\nYard | | | 4 x 15 W | 60\nSheds | | | 2 x 15 W | 30\nKiosk | | 6 x 3 W | | 18\n## Amps\n"+
			c.amps+"\nE1 | 240 W | 2 x 2.5 mm² | 180\nE2 | 120 W | 2 x 1.5 mm² | 95\nE3 | 120 W | 2 x 2.5 mm² | 250\n## Controls\n"+c.controls+"\nRV-1 | 36 W | Dusha")
		want(t, c.name, describe(j), []string{"2 x 6 W zone Hal channel E1 / 1", "4 x 6 W zone Hal channel E2 / 1", "8 x 10 W zone Langa channel E1 / 1", "8 x 10 W zone North channel E1 / 1", "10 x 3 W zone Dusha control RV-1 channel E2 / 1",
			"2 x 1.5 W zone Foyer channel E2 / 1", "4 x 15 W zone Yard channel E3 / 1", "2 x 15 W zone Sheds channel E3 / 1", "6 x 3 W zone Kiosk channel E2 / 1"})
		want(t, c.name, ratedOutputs(j), []string{"E1 / 1 240 W", "E2 / 1 120 W", "E3 / 1 120 W"})
	}
}

// What stands across and is no amplifier of the list beside it stays what it is.
func TestPlacesAcrossStayPlaces(t *testing.T) {
	j := wholeJob(t, "## Matrix\nKolba, 100 V\n|\nRoom | Z1 | Z2\nLanga | 8 x 10 W | \nDusha | | 10 x 3 W\nHal | 2 x 6 W | 4 x 6 W\n## Amps\nAmplifier | Power\nE1 | 240 W\nE2 | 120 W")
	if len(j.Zones) != 2 {
		t.Errorf("%d zones", len(j.Zones))
	}
}
