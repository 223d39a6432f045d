package ingest

import "testing"

// A number and a word for pieces ahead of a loudspeaker count it, also among descriptions without a number.
func TestPiecesAheadOfDescriptions(t *testing.T) {
	for _, c := range []string{"2 no. cabinets", "2no. horns", "2 off horns", "2 pcs ceiling speaker", "2 Stk. Deckenlautsprecher", "2 st. plafondluidsprekers", "2 uds. altavoz", "2 pz. diffusore", "2 pièces haut-parleur"} {
		j := wholeJob(t, "Where | Kind | Tap | Remarks\nHall | "+c+" | 6 W |\nYard | horn | 10 W | loud\nQuay | horn | 10 W |")
		want(t, c, describe(j), []string{"2 x 6 W zone Hall", "1 x 10 W zone Yard", "1 x 10 W zone Quay"})
	}
}
