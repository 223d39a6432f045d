package ingest

import "testing"

// A list of outputs that calls its amplifiers devices. Common practice, no source.
func TestAmplifiersUnderDevices(t *testing.T) {
	for _, c := range []struct{ device, output, amp string }{
		{"Device", "Output", "Power amp"}, {"Gerät", "Ausgang", "Endstufe"}, {"Appareil", "Sortie", "Ampli"},
		{"Equipo", "Salida", "Etapa"}, {"Apparecchio", "Uscita", "Finale"}, {"Apparaat", "Uitgang", "Eindversterker"},
	} {
		j := wholeJob(t, "## A\nElmfield hall\n|\nRoom | Type | Qty | Tap W | Line\nHall | horn | 6 | 15 W | 1.1\nStand | horn | 2 | 10 W | 1.2\nDesk | ceiling | 1 | 3 W | 2.1\n"+
			"## B\n"+c.device+" | "+c.output+" | Line | W\n"+c.amp+" 1 | 1 | 1.1 | 120 W\n"+c.amp+" 1 | 2 | 1.2 | 60 W\n"+c.amp+" 2 | 1 | 2.1 | 60 W\n"+c.amp+" 2 | 2 | 2.2 | 60 W\n")
		want(t, c.device, describe(j), []string{"6 x 15 W zone Hall channel " + c.amp + " 1 / 1", "2 x 10 W zone Stand channel " + c.amp + " 1 / 2", "1 x 3 W zone Desk channel " + c.amp + " 2 / 1"})
	}
}

// Headings for the stage that feeds a line, and for what turns it down. Common practice, no source.
func TestStagesAndWhatTurnsThemDown(t *testing.T) {
	for _, c := range []struct{ stage, by string }{
		{"Amp stage", "Regulated by"}, {"Verstärkerstufe", "Geregelt mit"}, {"Étage de puissance", "Se règle avec"},
		{"Etapa final", "Se regula con"}, {"Finale", "Si regola con"}, {"Versterkertrap", "Geregeld met"},
	} {
		j := wholeJob(t, "Elmfield hall\n|\nRoom | Type | Qty | Tap W | "+c.stage+" | "+c.by+"\nHall | horn | 6 | 15 W | A1 | P1\nStand | horn | 2 | 10 W | A1 | P2\nDesk | ceiling | 1 | 3 W | A2 | \n")
		want(t, c.stage, describe(j), []string{"6 x 15 W zone Hall control P1 channel A1 / 1", "2 x 10 W zone Stand control P2 channel A1 / 1", "1 x 3 W zone Desk channel A2 / 1"})
	}
}

// A list of outputs that tags its amplifiers and describes each once, or on every row. Common practice, no source.
func TestAmplifiersTaggedAndDescribed(t *testing.T) {
	for _, c := range []struct{ ref, device, output, of string }{
		{"Ref.", "Equipment", "Output", "amplifier 2 outputs"}, {"Kennz.", "Gerät", "Ausgang", "Verstärker 2 Kanäle"}, {"Rep.", "Matériel", "Voie", "ampli 2 voies"},
		{"Ref.", "Equipo", "Salida", "amplificador 2 salidas"}, {"Rif.", "Apparecchio", "Uscita", "amplificatore 2 uscite"}, {"Code", "Apparaat", "Uitgang", "versterker 2 kanalen"},
	} {
		for _, again := range []string{"", c.of} {
			j := wholeJob(t, "## A\nElmfield hall\n|\nZone | Room | Type | Qty | Tap W\nHall | Entry | horn | 6 | 15 W\nStand | Steps | horn | 2 | 10 W\nDesk | Office | ceiling | 1 | 3 W\n"+
				"## B\n"+c.ref+" | "+c.device+" | "+c.output+" | W | Zone\nAMP A | "+c.of+" | 1 | 120 W | Hall\nAMP A | "+again+" | 2 | 60 W | Stand\nAMP B | "+c.of+" | 1 | 60 W | Desk\n")
			want(t, c.device, describe(j), []string{"6 x 15 W zone Hall channel AMP A / 1", "2 x 10 W zone Stand channel AMP A / 2", "1 x 3 W zone Desk channel AMP B / 1"})
		}
	}
}
