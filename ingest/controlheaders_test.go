package ingest

import "testing"

// The header of a column of controls may say what each of them carries; a remark or a note says which one
// does not. Common practice, no source.
func TestHeadersThatRateControls(t *testing.T) {
	for _, c := range []struct{ header, note string }{
		{"Volume control (6 W each)", "R2 is 24 W"},
		{"Regler (je 6 W)", "R2 ist der große, 24 W"},
		{"Atténuateur (chacun 6 W)", "R2 : 24 W"},
		{"Atenuador (6 W c/u)", "R2 de 24 W"},
		{"Attenuatore (6 W cad.)", "R2 da 24 W"},
		{"Regelaar (6 W per stuk)", "R2 is 24 W"},
	} {
		j := wholeJob(t, "Slate Theatre, 100 V\n|\nRoom | Speakers | Tap | "+c.header+"\nST 1 | 1 | 3 W | R1\nKiln | 2 | 3 W | R2\nPorch | 4 | 1.5 W |\nWeir | 1 | 3 W | R3\n|\n"+c.note)
		want(t, c.header, []string{controlsOf(j)}, []string{"R1 6 W x1, R2 24 W x1, R3 6 W x1"})
	}
}

// A remark beside a loudspeaker may rate its control otherwise than the header does; one of its load does not. Common
// practice, no source.
func TestRemarksThatRateTheControl(t *testing.T) {
	for _, c := range []struct{ remark, want string }{
		{"R2 is the big one, 24 W", "R2 24 W"}, {"R2 ist der große, 24 W", "R2 24 W"}, {"R2 est le grand, 24 W", "R2 24 W"}, {"R2 es el grande, 24 W", "R2 24 W"},
		{"R2 è quello grande, 24 W", "R2 24 W"}, {"R2 is de grote, 24 W", "R2 24 W"}, {"R2 load 24 W", "R2 6 W"}, {"R2 stiff, was 24 W amplifier before", "R2 6 W"},
	} {
		j := wholeJob(t, "Slate Theatre, 100 V\n|\nRoom | Speakers | Tap | Volume control (6 W each) | Remarks\nST 1 | 1 | 3 W | R1 |\nKiln | 2 | 3 W | R2 | "+c.remark+"\nPorch | 4 | 1.5 W | |\nWeir | 1 | 3 W | R3 | ok")
		want(t, c.remark, []string{controlsOf(j)}, []string{"R1 6 W x1, " + c.want + " x1, R3 6 W x1"})
	}
}

// Controls without a name have one rating, and one that is named another. Two powers without names are asked.
// Common practice, no source.
func TestNotesThatRateControlsAtLarge(t *testing.T) {
	const list = "Slate Theatre, 100 V\n|\nRoom | Speakers | Tap | Volume control\nST 1 | 1 | 3 W | R1\nKiln | 2 | 3 W | R2\nPorch | 4 | 1.5 W |\nWeir | 1 | 3 W | R3\n|\n"
	for _, note := range []string{
		"1. Volume controls are rated 10 W, R2 is rated 35 W.",
		"Die Regler haben 10 W, R2 hat 35 W.",
		"Les atténuateurs sont de 10 W, R2 de 35 W.",
		"Los atenuadores tienen 10 W; R2 tiene 35 W",
		"Gli attenuatori sono da 10 W, R2 da 35 W",
		"De regelaars zijn 10 W, R2 is 35 W.",
	} {
		want(t, note, []string{controlsOf(wholeJob(t, list+note))}, []string{"R1 10 W x1, R2 35 W x1, R3 10 W x1"})
	}
	j := wholeJob(t, list+"Volume controls 10 W and 35 W.")
	want(t, "two powers", []string{controlsOf(j)}, []string{"R1 ? W x1, R2 ? W x1, R3 ? W x1"})
	if len(j.Questions) == 0 {
		t.Error("not asked")
	}
}

// A note may rate one control by its name and all others together. Common practice, no source.
func TestNotesThatRateTheOthers(t *testing.T) {
	const list = "Slate Theatre, 100 V\n|\nRoom | Speakers | Tap | Volume control\nST 1 | 1 | 3 W | R1\nKiln | 2 | 3 W | R2\nPorch | 4 | 1.5 W |\nWeir | 1 | 3 W | R3\n|\n"
	for _, note := range []string{
		"Controls: R1 5 W, the others 20 W", "Regler: R1 5 W, die übrigen 20 W", "Atténuateurs : R1 de 5 W, les autres de 20 W",
		"Atenuadores: R1 de 5 W, los demás de 20 W", "Regolatori: R1 da 5 W, gli altri da 20 W", "Regelaars: R1 5 W, de overige 20 W",
	} {
		want(t, note, []string{controlsOf(wholeJob(t, list+note))}, []string{"R1 5 W x1, R2 20 W x1, R3 20 W x1"})
	}
}
