package ingest

import "testing"

// Columns that say of each control where in its room it hangs and what it may carry. Common practice, no source.
func TestControlsNextToEachDoor(t *testing.T) {
	for _, c := range []struct{ gym, office, want string }{
		{"next to the door, 35 W", "next to the door, 10 W", "control (Gym) 35 W x1, control (Office) 10 W x1"},
		{"neben der Tür, 35 W", "neben der Tür, 10 W", "control (Gym) 35 W x1, control (Office) 10 W x1"},
		{"à côté de la porte (20 W)", "à côté de la porte (10 W)", "control (Gym) 20 W x1, control (Office) 10 W x1"},
		{"junto a la puerta, 20 W", "junto a la puerta, 10 W", "control (Gym) 20 W x1, control (Office) 10 W x1"},
		{"accanto alla porta, 20 W", "accanto alla porta, 10 W", "control (Gym) 20 W x1, control (Office) 10 W x1"},
		{"naast de deur, 35 W", "naast de deur, 10 W", "control (Gym) 35 W x1, control (Office) 10 W x1"},
		{"behind the counter, 35 W", "behind the counter, 10 W", "control (Gym) 35 W x1, control (Office) 10 W x1"},
	} {
		j := wholeJob(t, "Boathouse, 100 V\n|\nRoom | Qty | Tap | Volume control\nHall | 4 | 10 W\nGym | 4 | 6 W | "+c.gym+"\nOffice | 2 | 3 W | "+c.office+"\n|\nAmplifier 120 W")
		if got := controlsOf(j); got != c.want {
			t.Errorf("%s: %s, want %s", c.gym, got, c.want)
		}
	}
}
