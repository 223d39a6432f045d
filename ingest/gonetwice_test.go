package ingest

import "testing"

// A remark that says in several words that a loudspeaker is gone leaves it out; a part that was put in for another is
// there, and of some that are gone nothing is known but that. Common practice, no source.
func TestRemarksOfWhatIsGone(t *testing.T) {
	for _, c := range []struct{ remark, want string }{
		{"burnt, taken away and disposed of", "4 x 6 W zone Hall removed"},
		{"verbrannt, abgenommen und entsorgt", "4 x 6 W zone Hall removed"},
		{"déposés le 4 mai et jetés", "4 x 6 W zone Hall removed"},
		{"quemada, retirada y tirada a la basura", "4 x 6 W zone Hall removed"},
		{"bruciata, rimossa e smaltita", "4 x 6 W zone Hall removed"},
		{"verbrand, verwijderd en weggegooid", "4 x 6 W zone Hall removed"},
		{"Ersatz vom 20.07., in Betrieb", "4 x 6 W zone Hall"},
		{"2 removed and disposed of", "4 x 6 W zone Hall"},
	} {
		j := wholeJob(t, "Moor Museum, 100 V\n|\nRoom | Loudspeakers | Tap | Remarks\nHall | 4 | 6 W | "+c.remark+"\nKiln | 2 | 3 W |\nPorch | 1 | 3 W |")
		want(t, c.remark, describe(j)[:1], []string{c.want})
	}
}
