package ingest

import "testing"

// A remark says that what is called new comes later; a number in it counts some of the row. Notes name the control before all
// loudspeakers of a place. Common practice, no source.
func TestNewThingsThatComeLater(t *testing.T) {
	for _, c := range []struct{ name, head, fresh, later, control string }{
		{"English", "Area | State | Qty | Tap | Amp/channel | Remark", "new", "to come with phase 3", "Control LR1 (20 W) sits before all loudspeakers of the Kiosk."},
		{"German", "Bereich | Stand | Stk. | Abgriff | Verst./Kanal | Vermerk", "neu", "kommt erst mit Bauabschnitt 3", "Regler LR1 (20 W) sitzt vor allen Lautsprechern der Kiosk."},
		{"French", "Zone | État | Nb | Prise | Ampli/voie | Remarque", "neuf", "phase 3", "L'atténuateur LR1 (20 W) est placé devant tous les haut-parleurs de la Kiosk."},
	} {
		j := wholeJob(t, "Garden, 100 V\n|\n"+c.head+"\nHut | "+c.fresh+" | 3 | 15 W | B/1\nBeds | "+c.fresh+" | 4 | 15 W | B/1 | "+c.later+"\nKiosk | "+c.fresh+" | 2 | 3 W | B/2\n|\n"+c.control)
		want(t, c.name, describe(j), []string{"3 x 15 W zone Hut channel B / 1", "4 x 15 W zone Beds channel B / 1 future", "2 x 3 W zone Kiosk control LR1 channel B / 2"})
	}
	j := wholeJob(t, "Garden, 100 V\n|\nArea | State | Qty | Tap | Amp/channel | Remark\nHut | new | 3 | 15 W | B/1 | 2 to come later\nKiosk | new | 2 | 3 W | B/2")
	want(t, "some of them", describe(j), []string{"3 x 15 W zone Hut channel B / 1", "2 x 3 W zone Kiosk channel B / 2"})
}
