package ingest

import "testing"

// A column that says how loudspeakers are fixed may say of controls too. Common practice, no source.
func TestControlsAmongFixings(t *testing.T) {
	for _, c := range []struct{ head, at, knob string }{
		{"Room | Speakers | Watts each | Held by", "ceiling", "ceiling, knob of 10 W behind the till"},
		{"Raum | Lautsprecher | Watt je Stück | Sitzt an", "Decke", "Decke, Drehregler 10 W hinter der Kasse"},
		{"Stanza | Casse | Watt ognuna | Dove", "soffitto", "soffitto, manopola da 10 W dietro la cassa"},
		{"Salle | Haut-parleurs | W/HP | Accroché à", "plafond", "plafond, bouton de volume 10 W derrière la caisse"},
		{"Sala | Altavoces | Vatios cada uno | Sujeto a", "techo", "techo, mando de 10 W detrás de la caja"},
		{"Ruimte | Luidsprekers | Watt per stuk | Vast aan", "plafond", "plafond, volumeknop 10 W achter de kassa"},
	} {
		j := wholeJob(t, "Paper museum, loudspeakers 100 V\n|\n"+c.head+"\nFoyer | 2 | 3 | "+c.at+"\nShop | 2 | 3 | "+c.knob+"\nLoft | 3 | 6 | "+c.at)
		if got := controlsOf(j); got == "" || len(j.Controls) != 1 || show(j.Controls[0].Rated) != "10" {
			t.Errorf("%s: controls %q", c.head, got)
		}
		if l := j.Loudspeakers; len(l) != 3 || l[1].Control == nil && (l[1].Zone == nil || l[1].Zone.Control == nil) || l[0].Control != nil {
			t.Errorf("%s: %v", c.head, describe(j))
		}
	}
}
