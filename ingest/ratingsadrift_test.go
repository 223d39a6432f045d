package ingest

import "testing"

// What an amplifier gives is asked about where no row names one. Common practice, no source.
func TestRatingsWithoutAmplifiers(t *testing.T) {
	j := wholeJob(t, "Zone | Qty | Tap W | Amp W\nSlip | 4 | 15 | 60\nBar | 3 | 6 | 60\nHall | 6 | 10 | 120")
	var asked []string
	for _, q := range j.Questions {
		asked = append(asked, q.Text)
	}
	want(t, "questions", asked, []string{
		"“60” is what an amplifier gives, and none is named: which of these loudspeakers hang on one output together?",
		"“120” is what an amplifier gives, and none is named: which of these loudspeakers hang on one output together?"})
	if j := wholeJob(t, "Zone | Qty | Tap W | Amp | Amp W\nSlip | 4 | 15 | A | 60\nBar | 3 | 6 | A | 60"); len(j.Questions) > 0 {
		t.Errorf("an amplifier that is named: asked %q", j.Questions[0].Text)
	}
}
