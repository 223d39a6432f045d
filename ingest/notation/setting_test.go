package notation

import "testing"

// What remarks say of taps, in six languages; common practice, no source.
func TestSettingIn(t *testing.T) {
	for in, want := range map[string]Setting{
		"set to 5 W since Mar 2019": {W: 5}, "SET TO 5W": {W: 5}, "auf 3 W eingestellt": {W: 3}, "auf 6 W": {W: 6}, "réglé sur 3 W": {W: 3}, "puesto a 3 W": {W: 3}, "tarato a 3 W": {W: 3}, "staat op 3 W": {W: 3},
		"re-tapped to 2.5W after complaint": {W: 2.5}, "was 10 W, now 5 W": {W: 5}, "reduced to 3W 12/2019": {W: 3}, "eingestellt auf 1,5 W": {W: 1.5}, "tapped at 5 W, paint white": {W: 5},
		"gracchia, abbassata alla presa 5W": {W: 5}, "troppo forte, messa a 1,5W": {W: 1.5}, "trop fort, mis sur 3 W": {W: 3}, "zu laut, zurückgenommen auf 3 W": {W: 3}, "te luid, verlaagd tot 3 W": {W: 3}, "too loud, put on 3 W": {W: 3}, "dejado en 3 W": {W: 3},
		"full power": {Share: 1}, "volle Leistung": {Share: 1}, "auf halbe Leistung gestellt": {Share: 0.5}, "set to full power": {Share: 1},
		"2 of them now 3W": {W: 3, Count: 2}, "two set to 3 W": {W: 3, Count: 2}, "4 Stk auf 3 W": {W: 3, Count: 4},
		"should be set to 5 W": {W: 5, Pending: true}, "soll auf 3 W gestellt werden": {W: 3, Pending: true}, "to be set to 3 W": {W: 3, Pending: true}, "next visit: set to 3 W": {W: 3, Pending: true},
	} {
		if got, ok := SettingIn(in, Auto); !ok || got != want {
			t.Errorf("%q: %+v, %v; want %+v", in, got, ok, want)
		}
	}
	for _, in := range []string{"was 10 W", "10 W horn", "not set to 5 W", "taps 10/5/2.5 W", "set to 10/5 W", "now 5 W, later set to 3 W", "volume set to 5", "moved to store", "formerly set to 6 W", "bei Übergabe", "5 W", ""} {
		if got, ok := SettingIn(in, Auto); ok {
			t.Errorf("%q: %+v", in, got)
		}
	}
}
