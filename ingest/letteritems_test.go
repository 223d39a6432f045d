package ingest

import "testing"

// Chapters of a bill are numbered and their items lettered; the titles name the place and the output that feeds it, and
// the metres of cable are of its line. Common practice, no source.
func TestItemsByLetters(t *testing.T) {
	j := wholeJob(t, `
Fern Junction station, 100 V
|
Item | Description | Unit | Qty | Rate
7.1 | Platform 1: loudspeaker line from amplifier PA1 output 1 (250 W)
a | Projector loudspeaker on column, tapped at 10 W | nr | 12 | 84
b | Projector loudspeaker in shelter, tapped at 5 W | nr | 2 | 84
c | Cable 2 core 2.5 mm2, rack to end of line | m | 165 | 3
7.2 | Booking hall: loudspeaker line from amplifier PA2 (120 W)
a | Ceiling loudspeaker in concourse, tapped at 3 W | nr | 10 | 31
b | Cable 2 core 1.5 mm2, rack to end of line | m | 95 | 3`)
	want(t, "loudspeakers", describe(j), []string{"12 x 10 W zone Platform 1 channel amplifier PA1 / 1", "2 x 5 W zone Platform 1 channel amplifier PA1 / 1",
		"10 x 3 W zone Booking hall channel PA2 / 1"})
	want(t, "outputs", ratedOutputs(j), []string{"amplifier PA1 / 1 250 W", "PA2 / 1 120 W"})
	if len(j.Cables) != 2 {
		t.Errorf("%d cables, want 2", len(j.Cables))
	}
}

// Titles name outputs by letters and figures: "output U1". Common practice, no source.
func TestTitlesOfOutputsByCodes(t *testing.T) {
	for _, c := range []struct{ output, head string }{
		{"output U1", "Room | Speakers | Tap W"}, {"Ausgang U1", "Raum | Lautsprecher | Abgriff W"}, {"sortie U1", "Local | Haut-parleurs | Prise W"},
		{"salida U1", "Sala | Altavoces | Toma W"}, {"uscita U1", "Locale | Diffusori | Presa W"}, {"uitgang U1", "Ruimte | Luidsprekers | Stand W"},
	} {
		j := wholeJob(t, "Fern library, 100 V\n|\nLOWER HALL, "+c.output+"\n"+c.head+"\nFoyer | 4 | 3\nDesk | 2 | 1.5\n|\nUPPER HALL, "+c.output[:len(c.output)-1]+"2\n"+c.head+"\nStudy | 6 | 3\nShelves | 2 | 3")
		want(t, c.output, describe(j), []string{"4 x 3 W zone LOWER HALL channel U1", "2 x 1.5 W zone LOWER HALL channel U1", "6 x 3 W zone UPPER HALL channel U2", "2 x 3 W zone UPPER HALL channel U2"})
	}
}
