package join

import "testing"

func TestShortens(t *testing.T) {
	whole := func(w string) bool { return w == "hall" }
	for _, c := range []struct {
		text, name string
		want       bool
	}{
		{"Blk A", "Block A", true},
		{"Bstg. 1", "Bahnsteig 1", true},
		{"Unterf.", "Unterführung", true},
		{"Quai n° 2", "Quai n° 2", false}, // nothing is short
		{"Blk A", "Block B", false},
		{"Blk 1", "Block 2", false},
		{"Blk", "Block A", false},
		{"Hal. 1", "Halle 1", true},
		{"Hall 1", "Hallway 1", false}, // said in full
		{"Saal N", "Saal Nord", false}, // a letter may be anything
		{"EG", "Empfangsgebäude", false},
		{"Stand", "Standby", true},
		{"Boxes", "Bollards", false},
		{"gradas", "graderio sur", false},
		{"Umkl. Herren", "Umkleide Herren", true},
		{"Umkl. Herren", "Umkleide Damen", false},
	} {
		if got := Shortens(c.text, c.name, whole); got != c.want {
			t.Errorf("Shortens(%q, %q) = %v", c.text, c.name, got)
		}
		if c.want && Initials(c.text) != Initials(c.name) {
			t.Errorf("%q and %q begin with other letters", c.text, c.name)
		}
	}
	if got := Initials("Äußere Allee 12b"); got != "a a 12 b " {
		t.Errorf("initials %q", got)
	}
}
