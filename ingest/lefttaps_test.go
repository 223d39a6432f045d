package ingest

import "testing"

// Lists of taps that were found, are drawn and were left: what was left holds, and nothing where that is
// blank. Notes name the output of a wing by the column of wings. Common practice, no source.
func TestTapsFoundDrawnAndLeft(t *testing.T) {
	for _, c := range []struct{ found, drawn, left string }{
		{"Found (W)", "Per dwg (W)", "Left at (W)"}, {"Vorgefunden (W)", "Laut Plan (W)", "Belassen (W)"}, {"Trouvé (W)", "Selon plan (W)", "Laissé (W)"},
		{"Encontrado (W)", "Según plano (W)", "Dejado (W)"}, {"Trovato (W)", "Da disegno (W)", "Lasciato (W)"}, {"Aangetroffen (W)", "Volgens tekening (W)", "Gelaten (W)"},
	} {
		j := wholeJob(t, `
Slate School, 70 V, loudspeaker taps
No. | Room | Wing | Qty | `+c.found+" | "+c.drawn+" | "+c.left+` | Remarks
1 | 101 | East | 2 | 1/2 | 1 | 1 | retapped
2 | 102 | East | 2 | 2 | 1 | 1 | retapped
3 | 114 | East | 2 | | 1 | | not seen
4 | 201 | West | 6 | 1 | 2 | 2 | retapped
5 | Gym | West | 4 | 7.5 | 15 | 15 | retapped
|
Amp 1 ch 1 = East wing (100 W)
Amp 1 ch 2 = West wing (150 W)`)
		want(t, c.left, describe(j), []string{"2 x 1 W zone 101 channel Amp 1 / 1", "2 x 1 W zone 102 channel Amp 1 / 1", "2 x ? W zone 114 channel Amp 1 / 1",
			"6 x 2 W zone 201 channel Amp 1 / 2", "4 x 15 W zone Gym channel Amp 1 / 2"})
		if len(j.Questions) != 1 || j.Questions[0].At.Row != 5 {
			t.Errorf("%s: asked %v", c.left, j.Questions)
		}
		want(t, c.left, ratedOutputs(j), []string{"Amp 1 / 1 100 W", "Amp 1 / 2 150 W"})
	}
}

// The outputs of wings, in several languages.
func TestOutputsOfWings(t *testing.T) {
	for _, c := range []struct{ header, east, west, note string }{
		{"Gebäude", "Ost", "West", "Verstärker 1 Kanal 1 = Gebäude Ost (100 W)"}, {"Bâtiment", "Est", "Ouest", "Ampli 1 sortie 1 = Bâtiment Est (100 W)"},
		{"Edificio", "Este", "Oeste", "Etapa 1 canal 1 = Edificio Este (100 W)"}, {"Gebouw", "Oost", "West", "Versterker 1 kanaal 1 = Gebouw Oost (100 W)"},
	} {
		j := wholeJob(t, "School, loudspeakers 100 V\nRoom | "+c.header+" | Qty | Tap (W)\n101 | "+c.east+" | 2 | 3\n102 | "+c.east+" | 2 | 3\n201 | "+c.west+" | 4 | 6\n|\n"+c.note)
		fed := 0
		for _, l := range j.Loudspeakers {
			if l.Channel != nil {
				fed++
			}
		}
		if fed != 2 {
			t.Errorf("%s: %v", c.note, describe(j))
		}
	}
}
