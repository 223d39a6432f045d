package ingest

import "testing"

// Lists for an insurer: what is insured is no watts, the insured is the site, columns of buildings that go on head
// nothing, and the name of an amplifier among other words is no part of its rating. Common practice, no source.
func TestListsOfAnInsurer(t *testing.T) {
	for _, c := range []struct{ insured, each, value string }{
		{"Insured: Fern House Museum", "Each (R)", "Insured (R)"},
		{"Versicherungsnehmer: Fern House Museum", "Stückpreis", "Versicherungswert"},
		{"Assuré : Fern House Museum", "Prix unitaire", "Valeur assurée"},
		{"Asegurado: Fern House Museum", "Precio", "Valor asegurado"},
		{"Assicurato: Fern House Museum", "Prezzo", "Valore assicurato"},
		{"Verzekerde: Fern House Museum", "Stuksprijs", "Verzekerd bedrag"},
	} {
		j := wholeJob(t, `
Electronic equipment, public address (100 V)
`+c.insured+`
|
Item | Building | Room | Description | Qty | Set at (W) | Fed by | `+c.each+` | `+c.value+`
1 | Main house | Entrance | Ceiling loudspeaker | 6 | 3 | Amp 1 | 950 | 5700
2 | Main house | Gallery | Ceiling loudspeaker | 10 | 3 | Amp 1 | 950 | 9500
3 | Main house | Lecture room | Wall loudspeaker | 4 | 6 | Amp 1, through VC1 | 1400 | 5600
4 | Main house | Lecture room | Volume control VC1, 30 W | 1 | | Amp 1 | 620 | 620
5 | Main house | Office | Amplifier, Amp 1, 120 W | 1 | | | 11800 | 11800
6 | Main house | Office | Desk microphone | 2 | | | 2300 | 4600
7 | Yard | Shed | Horn loudspeaker | 4 | 15 | Amp 2 | 1750 | 7000
8 | Yard | Gate | Horn loudspeaker | 2 | 15 | Amp 2 | 1750 | 3500
9 | Yard | Shed | Amplifier, Amp 2, 120 W | 1 | | | 11800 | 11800`)
		want(t, c.value, describe(j), []string{"6 x 3 W zone Entrance channel Amp 1 / 1", "10 x 3 W zone Gallery channel Amp 1 / 1",
			"4 x 6 W zone Lecture room control VC1 channel Amp 1 / 1", "4 x 15 W zone Shed channel Amp 2 / 1", "2 x 15 W zone Gate channel Amp 2 / 1"})
		want(t, c.value, ratedOutputs(j), []string{"Amp 1 / 1 120 W", "Amp 2 / 1 120 W"})
		if j.Site.Value != "Fern House Museum" {
			t.Errorf("%s: site %q", c.value, j.Site.Value)
		}
	}
}
