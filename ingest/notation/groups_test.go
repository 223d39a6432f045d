package notation

import (
	"testing"

	"github.com/google/go-cmp/cmp"
)

// The texts are invented in the ways installers write; common practice, no source.
func TestParseGroups(t *testing.T) {
	for _, tt := range []struct {
		in   string
		want []TapGroup
	}{
		{"8@2.5W clg, 2@5W wall", []TapGroup{{8, 2.5}, {2, 5}}},
		{"6@10W box", []TapGroup{{6, 10}}},
		{"6 x 10 W Säule", []TapGroup{{6, 10}}},
		{"8 x 1,5 W Decke + 2 x 3 W Decke", []TapGroup{{8, 1.5}, {2, 3}}},
		{"4 no. wall cabinets\ntapped 6W", []TapGroup{{4, 6}}},
		{"4 no. wall cabinets tapped 6W", []TapGroup{{4, 6}}},
		{"2x 6W encastrés", []TapGroup{{2, 6}}},
		{"8 x ceiling @ 4W", []TapGroup{{8, 4}}},
		{"(4) 5W ceiling", []TapGroup{{4, 5}}},
		{"4 8\" ceiling at 2.5 W", []TapGroup{{4, 2.5}}},
		{"6 plafonniers à 3 W et 2 projecteurs à 15 W", []TapGroup{{6, 3}, {2, 15}}},
		{"3 horns, weatherproof, 1/2 W", nil},
		{"60 W", nil},
		{"4 x 250 W @ 70 V", nil},
		{"6W ceiling", nil},
		{"two at 5 W", nil},
		{"30 W loudspeaker set to 15 W", nil},
		{"12 ceiling speakers 6 W tapped 3 W", nil},
	} {
		got, err := ParseGroups(tt.in, Auto)
		if d := cmp.Diff(tt.want, got); d != "" {
			t.Errorf("%q: %s (%v)", tt.in, d, err)
		}
	}
}

func FuzzParseGroups(f *testing.F) {
	for _, s := range []string{"8@2.5W clg, 2@5W wall", "(4) 5W", "4 no. horns\ntapped 15 W", "6 x 10 W Säule"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		list, err := ParseGroups(s, Auto)
		if (err == nil) != (len(list) > 0) {
			t.Fatalf("%q: %v, %v", s, list, err)
		}
		for _, g := range list {
			if g.Count < 1 || !(g.W > 0) {
				t.Fatalf("%q: %+v", s, g)
			}
		}
	})
}
