package ingest

import "testing"

// A note rates all controls that a column only says are there, and some otherwise. Common practice, no source.
func TestNotesThatRateControlsWithExceptions(t *testing.T) {
	for _, c := range []struct{ head, yes, no, note string }{
		{"Room | Speakers | Tap | Knob?", "yes", "no", "Every knob is the same 6 W attenuator except the Weir's and those of ST 3 and Kiln, which are 12 W."},
		{"Raum | Lautsprecher | Abgriff | Regler?", "ja", "nein", "Alle Regler sind für 6 W, außer denen in Weir, ST 3 und Kiln (12 W)."},
		{"Local | HP | Prise | Atténuateur ?", "oui", "non", "Tous les atténuateurs sont de 6 W, sauf ceux de Weir, de ST 3 et de Kiln : 12 W."},
		{"Sala | Altavoces | Toma | ¿Atenuador?", "sí", "no", "Todos los atenuadores son de 6 W, excepto los de Weir, ST 3 y Kiln, que son de 12 W."},
		{"Locale | Diffusori | Presa | Attenuatore?", "sì", "no", "Tutti gli attenuatori sono da 6 W, tranne quelli di Weir, ST 3 e Kiln, che sono da 12 W."},
		{"Ruimte | Luidsprekers | Stand | Regelaar?", "ja", "nee", "Alle regelaars zijn 6 W, behalve die van Weir, ST 3 en Kiln, die 12 W zijn."},
	} {
		list := c.head + "\nST 1 | 1 | 3 W | " + c.yes + "\nST 3 (left) | 2 | 3 W | " + c.yes + "\nKiln | 2 | 3 W | " + c.yes + "\nWeir | 2 | 3 W | " + c.yes + "\nPorch | 4 | 1.5 W | " + c.no
		j := wholeJob(t, "Slate Theatre, 100 V\n|\n"+list+"\n|\n"+c.note)
		want(t, c.note, []string{controlsOf(j)}, []string{"control (ST 1) 6 W x1, control (ST 3 (left)) 12 W x1, control (Kiln) 12 W x1, control (Weir) 12 W x1"})
		if j.Loudspeakers[4].Control != nil {
			t.Errorf("%s: %v", c.note, describe(j))
		}
	}
	j := wholeJob(t, "Slate Theatre, 100 V\n|\nRoom | Speakers | Tap | Knob?\nST 1 | 1 | 3 W | yes\nKiln | 2 | 3 W | yes\n|\nEvery knob is 6 W except the one by the old stair, 12 W.")
	want(t, "unknown", []string{controlsOf(j)}, []string{"control (ST 1) ? W x1, control (Kiln) ? W x1"})
	if len(j.Questions) == 0 {
		t.Error("not asked")
	}
}
